package rules_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/internal/sayings"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
)

// someFields are random usual fields, the same on every run.
func someFields(t *testing.T, n int) (list []field.Case) {
	farms := pack(t)
	var names []string
	for name := range farms {
		names = append(names, name)
	}
	slices.Sort(names)
	r := rand.New(rand.NewPCG(6, 2000))
	for len(list) < n {
		if c := sayings.AnyField(r, farms[names[r.IntN(len(names))]]); len(field.Check(&c)) == 0 {
			list = append(list, c)
		}
	}
	return list
}

// counted are the questions whose answers are counted.
var counted = [...]question.Question{question.Verdict, question.Film, question.Surface, question.Thickness, question.Bed, question.Tape, question.Wait}

// The spread of the answers over random usual fields: a table of the guide. A rule that
// moves one of the shares by more than a few points is a change of what growers are
// told: read why, then take the table anew from this test's log (-v, FF_LONG=1).
func TestTheSpreadOfAnswers(t *testing.T) {
	n := long.Of(300, 2000)
	shares := map[string]float64{}
	for _, c := range someFields(t, n) {
		a, err := rules.AdviseOn(dug(t, c), c)
		require.NoError(t, err)
		for _, q := range counted {
			key := "none fits"
			if o, ok := a.Choice(q).Best(); ok {
				key = q.Key(o)
			}
			shares[q.String()+" | "+key] += 100 / float64(n)
		}
	}
	var rows []string
	for key, share := range shares {
		rows = append(rows, fmt.Sprintf("| %s | %.1f |", key, share))
	}
	slices.Sort(rows)
	t.Log("\n" + strings.Join(rows, "\n"))
	page, err := os.ReadFile("VALIDATION.md")
	require.NoError(t, err)
	_, part, _ := strings.Cut(string(page), "## The spread of answers")
	part, _, _ = strings.Cut(part, "\n## ")
	held, off := 0, 12.0
	if n > 1000 {
		off = 4
	}
	for line := range strings.SplitSeq(part, "\n") {
		cells := strings.Split(line, "|")
		if len(cells) < 6 || strings.HasPrefix(line, "|---") || strings.HasPrefix(line, "| question") {
			continue
		}
		key := strings.TrimSpace(cells[1]) + " | " + strings.TrimSpace(cells[2])
		share, err := strconv.ParseFloat(strings.TrimSpace(cells[4]), 64)
		require.NoError(t, err, line)
		held++
		assert.LessOrEqual(t, math.Abs(shares[key]-share), off, "%s: %.1f %%, the guide says %.1f %%", key, shares[key], share)
	}
	assert.Greater(t, held, 25, "rows of the guide")
}

// TestFieldsAsFiles writes the fields as files, for a program of another day to answer.
func TestFieldsAsFiles(t *testing.T) {
	dir := os.Getenv("FF_FIELDS")
	if dir == "" {
		t.Skip("FF_FIELDS names no folder")
	}
	for i, c := range someFields(t, 2000) {
		require.NoError(t, os.WriteFile(fmt.Sprintf("%s/%04d.json", dir, i), casefile.Encode(&c), 0o644))
	}
}
