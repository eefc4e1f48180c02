//go:build !js

package site

import (
	"encoding/xml"
	"io"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"filmfurrow/app"
	"filmfurrow/rules/pack"
	"filmfurrow/wasm/tongue"
)

// madeWith builds what is taken along for a public address, without compiling a program.
func madeWith(t *testing.T, address string) *Site {
	t.Helper()
	s, err := Make(Options{Pages: Pages(), Program: []byte{0}, Site: address, Base: "/sub"})
	require.NoError(t, err)
	return s
}

// Every text of handouts, cards and their list has its Spanish twin, whether the site
// knows its address or not.
func TestWhatIsTakenAlongHasTwins(t *testing.T) {
	for _, address := range []string{"", "https://films.test"} {
		s := madeWith(t, address)
		for _, name := range tongue.Names() {
			c, err := tongue.Load(name)
			require.NoError(t, err)
			var misses []string
			for file, body := range s.Files {
				if !strings.HasPrefix(file, "handout/") && !strings.HasPrefix(file, "ballot") && file != "takeaway.html" && (!strings.HasPrefix(file, "card/") || !strings.HasSuffix(file, ".html")) {
					continue
				}
				doc, err := html.Parse(strings.NewReader(string(body)))
				require.NoError(t, err)
				miss := func(text string) {
					if _, all := c.Say(text); !all && !slices.Contains(misses, text) {
						misses = append(misses, text)
					}
				}
				for n := range doc.Descendants() {
					for _, a := range n.Attr {
						if slices.Contains([]string{"aria-label", "title", "alt"}, a.Key) || a.Key == "content" && attr(n, "name") == "description" {
							miss(a.Val)
						}
					}
					text := strings.TrimSpace(n.Data)
					if n.Type != html.TextNode || !strings.ContainsFunc(text, unicode.IsLetter) || slices.Contains([]atom.Atom{atom.Pre, atom.Code, atom.Style, atom.Script}, n.Parent.DataAtom) || attr(n.Parent, "translate") == "no" || attr(n.Parent, "lang") != "" {
						continue
					}
					miss(text)
				}
			}
			slices.Sort(misses)
			assert.Empty(t, strings.Join(misses, "\n"), name)
		}
	}
}

// What the room's scripts say has its twin too: every text in them that begins like a
// sentence, with a figure where something is put in.
func TestWhatTheRoomSaysHasTwins(t *testing.T) {
	keys := regexp.MustCompile(`^(Arrow|Page|Enter|Escape|Backspace|M[123])`)
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err)
		said := 0
		for _, file := range []string{"room.js", "slides.js", "line.js", "place.js", "pack.js", "speaker.js"} {
			text, err := os.ReadFile("../../static/" + file)
			require.NoError(t, err)
			for _, found := range regexp.MustCompile("\"([A-Z][^\"\n]*)\"|`((?:[A-Z]|\\$\\{[^}]*\\}[:.]? [a-z(°])[^`\n]*)`").FindAllStringSubmatch(string(text), -1) {
				words := regexp.MustCompile(`\$\{[^}]*\}`).ReplaceAllString(found[1]+found[2], "3")
				if strings.HasSuffix(words, ": ") {
					words += "3"
				}
				if words == "" || keys.MatchString(words) || strings.ContainsAny(words, "<{") {
					continue
				}
				said++
				_, all := c.Say(words)
				assert.True(t, all, "%s in %s: %s", file, name, words)
			}
		}
		assert.Greater(t, said, 60)
	}
}

// A poster or a picture is whole in its file: it can be read as XML, is drawn with
// attributes alone, carries no script and asks for no other file.
func TestPostersStandAlone(t *testing.T) {
	s := madeWith(t, "")
	seen := 0
	for name, body := range s.Files {
		if !strings.HasPrefix(name, "poster/") && !(strings.HasPrefix(name, "card/") && strings.HasSuffix(name, ".svg")) {
			continue
		}
		seen++
		text := string(body)
		for d := xml.NewDecoder(strings.NewReader(text)); ; {
			if _, err := d.Token(); err == io.EOF {
				break
			} else {
				require.NoError(t, err, name)
			}
		}
		for _, never := range []string{"class=", "style", "<script", "href", "var(", "NaN"} {
			assert.NotContains(t, text, never, name)
		}
		assert.Contains(t, text, `xmlns="http://www.w3.org/2000/svg"`, name)
		assert.Contains(t, text, "</title>", name)
		for _, used := range regexp.MustCompile(`url\(#([\w-]+)\)`).FindAllStringSubmatch(text, -1) {
			assert.Contains(t, text, `id="`+used[1]+`"`, name)
		}
	}
	assert.Equal(t, 2*len(pack.Farms)*(1+len(tongue.Names()))+len(app.Cards), seen)
	for i := range pack.Farms {
		f := &pack.Farms[i]
		for _, kind := range []string{"bed", "year"} {
			text := string(s.Files["poster/"+kind+"-"+f.ID+".svg"])
			assert.Contains(t, text, "An invented farm<", f.ID)
			assert.Contains(t, text, ">"+f.Title+"<", f.ID)
			assert.Contains(t, text, `width="420.0mm"`, f.ID)
			assert.Regexp(t, `(lay|Lay|sked for) [A-Z][a-z]+ \d+`, text, f.ID)
		}
	}
}

// A poster in another language has all of its words in it.
func TestPostersHaveTwins(t *testing.T) {
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err)
		say := func(words string) string {
			said, all := c.Say(words)
			assert.True(t, all || !strings.ContainsFunc(words, unicode.IsLetter), words)
			return said
		}
		for i := range pack.Farms {
			assert.Contains(t, app.BedPoster(&pack.Farms[i], say)+app.YearPoster(&pack.Farms[i], say), say("An invented farm")+"<")
		}
		assert.NotEmpty(t, postersInItself[name][0])
	}
}

// The words for a mail are at most 120, say that the farm is invented, and lead to the card.
func TestTheWordsOfACardAreFew(t *testing.T) {
	s := madeWith(t, "https://films.test")
	for i := range app.Cards {
		f := &app.Cards[i]
		text := string(s.Files["card/"+f.ID+".txt"])
		assert.LessOrEqual(t, len(strings.Fields(text)), 120, f.ID)
		assert.Contains(t, text, "An invented farm", f.ID)
		assert.Contains(t, text, "https://films.test/sub/card/"+f.ID, f.ID)
		assert.Contains(t, text, f.Lesson, f.ID)
		assert.Regexp(t, `asked for [A-Z][a-z]+ \d+, \d{4}`, text, f.ID)
		if !strings.Contains(text, "Do not lay film here.") {
			assert.Regexp(t, `Lay [A-Z][a-z]+ \d+, \d{4}, plant [A-Z][a-z]+ \d+, \d{4}\.`, text, f.ID)
		}
	}
	assert.Len(t, app.Cards, 10)
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err)
		assert.NotEmpty(t, inItself[name], "the language's own name for the words")
		for i := range app.Cards {
			id := app.Cards[i].ID
			said := string(s.Files["card/"+id+"."+name+".txt"])
			assert.LessOrEqual(t, len(strings.Fields(said)), 150, "%s in %s, which is a quarter longer", id, name)
			for line := range strings.Lines(string(s.Files["card/"+id+".txt"])) {
				twin, all := c.Say(strings.TrimSpace(line))
				assert.True(t, all, line)
				assert.Contains(t, said, twin, id)
			}
		}
	}
}

// A handout has its code where the site knows its address, and says where it does not.
func TestAHandoutHasItsCodeOrSaysWhy(t *testing.T) {
	known, unknown := madeWith(t, "https://films.test"), madeWith(t, "")
	for i := range pack.Farms {
		name := "handout/" + pack.Farms[i].ID + ".html"
		assert.Contains(t, string(known.Files[name]), `class="qr"`, name)
		assert.NotContains(t, string(unknown.Files[name]), `class="qr"`, name)
		assert.Contains(t, string(unknown.Files[name]), "does not know its own address", name)
		asks := strings.Count(string(known.Files[name]), "?</li>")
		assert.Equal(t, 2, asks, "%s asks two questions", name)
	}
	assert.Contains(t, string(known.Files["handout/mine.html"]), `class="qr"`)
}
