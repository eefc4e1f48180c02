package rules_test

import (
	"flag"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

var update = flag.Bool("update", false, "write the golden sheets anew; look at them before you commit")

// The sheets of three invented farms, word for word: a field by tractor that is
// ready but for its boxes, flowers by hand on a windy day, and melons south of
// the equator with a tractor too light. A browser test holds the printed pages
// against the same files. They were read by eye when they were written.
func TestGoldenSheets(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	files, err := filepath.Glob("../testdata/sheets/*.json")
	require.NoError(t, err)
	require.Len(t, files, 3)
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		c, err := casefile.Decode(data, places)
		require.NoError(t, err, file)
		system := unit.US
		if c.Place.Latitude.Value < 0 {
			system = unit.Metric
		}
		got := sheetText(t, c, system)
		golden := strings.TrimSuffix(file, ".json") + ".txt"
		if *update {
			require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
		}
		want, err := os.ReadFile(golden)
		require.NoError(t, err)
		assert.Equal(t, string(want), got, golden)
	}
}

// sheetText writes all sheets of a case, a sentence or a cell a line, under
// headings that begin with "#".
func sheetText(t testing.TB, c field.Case, system unit.System) string {
	a, s := list(t, c)
	cost := a.CostOf(&s)
	var b strings.Builder
	say := func(lines ...string) {
		for _, l := range lines {
			if l != "" {
				b.WriteString(l + "\n")
			}
		}
	}
	in := func(p unit.Phrase) string {
		require.True(t, p.Complete(), p.Text)
		return p.In(system)
	}
	money := func(v float64) string { return c.Prices.Currency + " " + strconv.FormatFloat(v, 'f', 2, 64) }
	say("# shopping")
	for i := range s.Lines {
		l := &s.Lines[i]
		say(l.Name, in(l.Spec))
		if l.Missing != "" {
			say("Needs " + l.Missing + ".")
			continue
		}
		say(unit.Quantity{Kind: l.Kind, SI: l.Quantity}.In(system), in(l.How))
	}
	say(in(s.Layout))
	say("# costs")
	for _, l := range cost.Lines {
		say(l.Name)
		if l.Priced {
			say(money(l.Amount))
		} else {
			say(l.NoSum)
		}
		say(in(l.How))
	}
	say("Total "+money(cost.Total), money(cost.PerPlant)+" for each plant")
	for _, f := range cost.Films {
		say(f.Name)
		for _, part := range []unit.Optional[float64]{f.Film, f.Laying, f.Lifting, f.Haul} {
			if part.Given {
				say(money(part.Value))
			} else {
				say("no price")
			}
		}
		say(money(f.Total), in(f.Note))
		if f.UpTo.Given {
			say("Up to " + money(f.UpTo.Value) + " a roll it is no dearer than the first.")
		}
	}
	m := a.MachineOf()
	say("# tractor")
	for i := range m.Says {
		say(in(m.Says[i].Says))
	}
	sh := a.Sheet(&s)
	say("# laying day")
	for i := range sh.Go {
		say(sheet.Sentences[sh.Go[i].Reply.Key()] + " " + sh.Go[i].In(system))
	}
	lines := func(list []plan.SheetLine) {
		for i := range list {
			say(list[i].In(system))
		}
	}
	lines(sh.Boxes)
	lines(sh.Settings)
	for i := range sh.Order {
		say(sh.Order[i].In(system))
	}
	lines(sh.People)
	lines([]plan.SheetLine{sh.CheckHow})
	lines(sh.Checks)
	lines(sh.Faults)
	lines(sh.Care)
	say("# season")
	for _, step := range a.Season(&s) {
		when := step.On.In(unit.US)
		if step.Weeks > 1 {
			when = "Every week from " + when + " to " + step.On.Plus(unit.Days(7*(step.Weeks-1))).In(unit.US)
		} else if step.Days > 1 {
			when += " to " + step.On.Plus(step.Days-1).In(unit.US)
		}
		say(when, in(step.What), in(step.Why))
	}
	e := a.EndOfFilm(&s)
	say("# end of the film", in(e.Duty), in(e.Organic), in(e.TilledIn))
	if e.Least > 0 {
		say(unit.Of(e.Clean).In(system), e.Hauled().In(system))
	}
	return b.String()
}
