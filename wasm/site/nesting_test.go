//go:build !js

package site

import (
	"bytes"
	"fmt"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
)

// intended lists the elements of a page as paths of tags, as the framework
// nested them. The framework closes every element that may hold others.
func intended(t *testing.T, source []byte) []string {
	t.Helper()
	var open, paths []string
	for z := html.NewTokenizer(bytes.NewReader(source)); ; {
		switch z.Next() {
		case html.ErrorToken:
			require.ErrorIs(t, z.Err(), io.EOF)
			return paths
		case html.StartTagToken:
			token := z.Token()
			open = append(open, token.Data)
			paths = append(paths, tagPath(open, token.Attr))
			if void[token.Data] {
				open = open[:len(open)-1]
			}
		case html.SelfClosingTagToken:
			token := z.Token()
			paths = append(paths, tagPath(append(open, token.Data), token.Attr))
		case html.EndTagToken:
			name, _ := z.TagName()
			if len(open) > 0 && open[len(open)-1] == string(name) {
				open = open[:len(open)-1]
			}
		}
	}
}

var void = map[string]bool{
	"area": true, "base": true, "br": true, "col": true, "embed": true, "hr": true, "img": true, "input": true,
	"link": true, "meta": true, "source": true, "track": true, "wbr": true,
}

func tagPath(open []string, attributes []html.Attribute) string {
	// The framework writes attributes in any order, and the parser may change it.
	id := ""
	for _, key := range []string{"class", "id"} {
		for _, a := range attributes {
			if a.Key == key {
				id += fmt.Sprintf(" %s=%q", a.Key, a.Val)
			}
		}
	}
	return strings.ToLower(strings.Join(open, " > ")) + id
}

// understood lists the elements as a browser nests them (HTML standard, §13.2).
func understood(t *testing.T, source []byte) []string {
	t.Helper()
	doc, err := html.Parse(bytes.NewReader(source))
	require.NoError(t, err)
	var paths []string
	for n := range doc.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		var open []string
		for up := n; up.Type == html.ElementNode; up = up.Parent {
			open = append([]string{up.Data}, open...)
		}
		paths = append(paths, tagPath(open, n.Attr))
	}
	return paths
}

// A paragraph within a paragraph, a block within a phrase: the browser moves
// what it may not find there, and the prerendered page is then another than the
// program draws.
func TestPagesNestAsHTMLAllows(t *testing.T) {
	pages := Pages()
	rendered, err := prerender(pages, "")
	require.NoError(t, err)
	for _, p := range pages {
		want, got := intended(t, rendered[p.Path]), understood(t, rendered[p.Path])
		for i := range min(len(want), len(got)) {
			if want[i] != got[i] {
				t.Errorf("page %s: written as\n\t%s\nbut a browser understands\n\t%s\nafter\n\t%s", p.Path, want[i], got[i], want[max(0, i-1)])
				break
			}
		}
		assert.Equal(t, len(want), len(got), "elements on page %s", p.Path)
	}
}
