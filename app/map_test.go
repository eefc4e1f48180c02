//go:build !js

package app

import (
	"os"
	"strings"
	"testing"

	framework "github.com/maxence-charriere/go-app/v9/pkg/app"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// heard writes what a screen reader gives of a piece of the page: names and roles
// where they are set, texts, a table row by row, and nothing of what is hidden
// from it.
func heard(t *testing.T, source string) string {
	doc, err := html.Parse(strings.NewReader(source))
	require.NoError(t, err)
	var out strings.Builder
	line := func() {
		if s := out.String(); s != "" && !strings.HasSuffix(s, "\n") {
			out.WriteString("\n")
		}
	}
	var walk func(n *html.Node)
	walk = func(n *html.Node) {
		attributes := map[string]string{}
		for _, a := range n.Attr {
			attributes[a.Key] = a.Val
		}
		if attributes["aria-hidden"] == "true" {
			return
		}
		if n.Type == html.TextNode {
			if text := strings.Join(strings.Fields(n.Data), " "); text != "" {
				out.WriteString(text)
			}
			return
		}
		switch n.Data {
		case "option":
			if chosen, said := attributes["selected"]; !said || chosen == "false" {
				return
			}
		case "p", "h2", "li", "label", "select", "button", "summary", "tr", "div", "details":
			line()
		case "td", "th":
			if n.PrevSibling != nil {
				out.WriteString(" | ")
			}
		}
		if name := attributes["aria-label"]; name != "" {
			out.WriteString("[" + attributes["role"] + ": " + name + "]\n")
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c)
		}
	}
	walk(doc)
	line()
	return out.String()
}

// What a screen reader is given of the decision map, word for word, with nutsedge
// and with insects up: what sighted people see of it, which film where and how far the
// entry stands from the next, is in the words.
func TestTheMapsWords(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	data, err := os.ReadFile("../testdata/cases/pepper-cool-spring.json")
	require.NoError(t, err)
	c, err := casefile.Decode(data, places)
	require.NoError(t, err)
	ground, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	var out strings.Builder
	for _, second := range []int{1, 2} {
		work, ok := search.NewMap(ground, c, search.MapInputs[second])
		require.True(t, ok)
		for !work.Step(1000) {
		}
		s := storeOf(c)
		s.system = unit.Metric
		p := &mapPart{S: s, second: second, m: work.Map()}
		p.row, p.day = p.m.Value, p.m.Day
		text := heard(t, framework.HTMLString(p.Render()))
		out.WriteString(text + "\n")

		// The words hold each cell of the drawing.
		assert.Contains(t, p.says(), "This is your field")
		for row := range p.m.Values {
			for day := range p.m.Days {
				p.row, p.day = row, day
				assert.Contains(t, p.says(), filmWord(p.m.FilmAt(row, day)))
				assert.Equal(t, p.m.Tied[row][day], strings.Contains(p.says(), "a close call"))
			}
		}
		assert.Equal(t, len(p.m.Days)*len(p.m.Values), strings.Count(text, " | ")-len(p.m.Values), "a cell of the table for each of the map")
		// Each swatch that is drawn is named.
		for film := range table.FilmID(table.FilmCount + 1) {
			if strings.Contains(p.svg(), "m-"+filmKey(film)+`"`) {
				assert.Contains(t, text, filmWord(film))
			}
		}
	}
	const file = "testdata/map.golden.txt"
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(out.String()), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, string(want), out.String(), "run with -update if this is meant, and read the difference")
}
