//go:build !js

package site

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// The licences on the site's about page are those of the modules that are
// linked into the program, neither more nor fewer, each with its whole text.
func TestLicencesAreThoseOfWhatIsLinked(t *testing.T) {
	var listed []string
	for _, l := range licences {
		if l.Module != "" {
			listed = append(listed, l.Module)
		}
	}
	linked, err := clientModules(false)
	require.NoError(t, err)
	assert.ElementsMatch(t, linked, listed)

	page := built(t).Files["about.html"]
	doc, err := html.Parse(strings.NewReader(string(page)))
	require.NoError(t, err)
	text := textOf(find(doc, atom.Body))
	for _, l := range licences {
		assert.Contains(t, text, l.Name+": "+l.Terms)
	}
	for _, phrase := range []string{"TERMS AND CONDITIONS FOR USE", "The Go Authors", "Maxence Charriere", "Google Inc."} {
		assert.Contains(t, text, phrase)
	}
	assert.Contains(t, string(built(t).Files["index.html"]), `href="/about"`, "the page leads to it")
}

// clientModules lists the modules whose packages are linked into the program.
func clientModules(untrimmed bool) ([]string, error) {
	root, err := moduleRoot()
	if err != nil {
		return nil, err
	}
	out, err := clientList(root, untrimmed, "-f", "{{with .Module}}{{if not .Main}}{{.Path}}{{end}}{{end}}")
	slices.Sort(out)
	return slices.Compact(out), err
}
