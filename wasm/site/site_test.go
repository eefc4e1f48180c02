//go:build !js

package site

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image/png"
	"maps"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"filmfurrow/internal/long"
	"filmfurrow/wasm/tongue"
)

// once builds the plain site one time for the tests that only read it.
var once = sync.OnceValues(func() (*Site, error) { return Make(Options{Pages: Pages()}) })

func built(t *testing.T) *Site {
	t.Helper()
	s, err := once()
	require.NoError(t, err)
	return s
}

// Same input, same bytes: everything is compiled, rendered and drawn a second
// time, in another folder, and compared.
func TestSameInputSameBytes(t *testing.T) {
	first := built(t)
	second, err := Make(Options{Pages: Pages()})
	require.NoError(t, err)
	require.Equal(t, slices.Sorted(maps.Keys(first.Files)), slices.Sorted(maps.Keys(second.Files)))
	for name := range first.Files {
		assert.True(t, bytes.Equal(first.Files[name], second.Files[name]), "%s differs", name)
	}
	assert.Equal(t, first.Version, second.Version)

	once, err := withCompressed(map[string][]byte{"index.html": first.Files["index.html"]})
	require.NoError(t, err)
	twice, err := withCompressed(map[string][]byte{"index.html": first.Files["index.html"]})
	require.NoError(t, err)
	assert.Equal(t, once, twice)
}

func TestVersionFollowsContent(t *testing.T) {
	first := built(t)
	pages := Pages()
	pages[0].Description += " Changed."
	changed, err := Make(Options{Pages: pages, Program: first.Program})
	require.NoError(t, err)
	assert.NotEqual(t, first.Version, changed.Version)
	assert.NotEqual(t, first.Files["worker.js"], changed.Files["worker.js"])
}

// Make refuses such a site itself; this reads the result once more, so that
// the refusal cannot be lost unnoticed.
func TestNothingTellsOfTheMachine(t *testing.T) {
	root, err := moduleRoot()
	require.NoError(t, err)
	home, err := os.UserHomeDir()
	require.NoError(t, err)
	for name, body := range built(t).Files {
		for _, word := range []string{"127.0.0.1", "localhost:", root, workName, home + "/", "site.invalid"} {
			assert.NotContains(t, string(body), word, name)
		}
	}
	require.Error(t, clean(map[string][]byte{"index.html": []byte("http://127.0.0.1:4000/")}, root))
	require.Error(t, clean(map[string][]byte{"app.wasm": []byte("\x00" + root + "/app/app.go")}, root))
}

func TestClientLeavesOutWhatItDoesNotUse(t *testing.T) {
	linked, err := ClientPackages(false)
	require.NoError(t, err)
	require.Contains(t, linked, "filmfurrow/app")
	for _, name := range []string{"net/http", "crypto/tls", "text/template", "html/template", "regexp", "crypto/aes", "net", "fmt", "os", "internal/poll"} {
		assert.NotContains(t, linked, name)
	}
	// The comparison build does link them, which shows that the list above can fail.
	whole, err := ClientPackages(true)
	require.NoError(t, err)
	assert.Contains(t, whole, "net/http")
	assert.Contains(t, whole, "text/template")
}

func TestTrimRefusesAnotherFramework(t *testing.T) {
	require.NoError(t, rightFramework(frameworkVersion))
	for _, other := range []string{"", "v9.8.1", "v9.7.0", "v10.0.0", "v9.8.0-rc1"} {
		assert.ErrorContains(t, rightFramework(other), "-untrimmed", other)
	}
	_, err := trimmedFiles(t.TempDir())
	assert.ErrorContains(t, err, "http.go")
}

// Budgets of the whole product, in bytes after brotli 11.
const (
	programBudget  = 1_000_000
	pageBudget     = 30_000
	tableBudget    = 450_000 // each table beside the program
	languageBudget = 40_000  // each part of a language
)

func TestBudget(t *testing.T) {
	long.Test(t) // brotli at its best takes half a minute
	s := built(t)
	program, err := Brotli(s.Program)
	require.NoError(t, err)
	t.Logf("program: %d bytes raw, %d brotli", len(s.Program), len(program))
	assert.LessOrEqual(t, len(program), programBudget)

	for name, body := range data() {
		packed, err := Brotli(body)
		require.NoError(t, err)
		t.Logf("table %s: %d bytes brotli", name, len(packed))
		assert.LessOrEqual(t, len(packed), tableBudget, name)
	}

	parts := 0
	for name, body := range s.Files {
		stem, _, _ := strings.Cut(strings.TrimPrefix(name, "assets/"), "-")
		if slices.Contains(tongue.Names(), stem) && path.Ext(name) == ".txt" {
			packed, err := Brotli(body)
			require.NoError(t, err)
			t.Logf("%s: %d bytes brotli", name, len(packed))
			assert.LessOrEqual(t, len(packed), languageBudget, name)
			parts++
		}
	}
	assert.GreaterOrEqual(t, parts, 2)

	for _, p := range Pages() {
		sum := 0
		for _, name := range append(loadedBy(t, s, fileOf(p.Path)), fileOf(p.Path)) {
			if ext := path.Ext(name); ext == ".html" || ext == ".css" || ext == ".js" {
				packed, err := Brotli(s.Files[name])
				require.NoError(t, err)
				sum += len(packed)
			}
		}
		t.Logf("page %s: %d bytes brotli of HTML, CSS and JavaScript", p.Path, sum)
		assert.LessOrEqual(t, sum, pageBudget, p.Path)
	}
}

// references are the addresses that a page names in links, scripts and pictures.
func references(t *testing.T, body []byte) []string {
	t.Helper()
	doc, err := html.Parse(bytes.NewReader(body))
	require.NoError(t, err)
	var list []string
	for n := range doc.Descendants() {
		for _, a := range n.Attr {
			if n.Type == html.ElementNode && (a.Key == "href" || a.Key == "src" || a.Key == "action") {
				list = append(list, a.Val)
			}
		}
	}
	return list
}

// loadedBy are the files that a page names.
func loadedBy(t *testing.T, s *Site, page string) []string {
	var list []string
	for _, address := range references(t, s.Files[page]) {
		name := strings.TrimPrefix(strings.TrimPrefix(address, s.Base), "/")
		if _, ok := s.Files[name]; ok {
			list = append(list, name)
		}
	}
	return list
}

func TestEveryLinkLeadsSomewhere(t *testing.T) {
	for _, base := range []string{"", "/sub/path"} {
		s, err := Make(Options{Pages: Pages(), Base: base, Program: built(t).Program})
		require.NoError(t, err)
		server, err := NewServer(s.Files, base)
		require.NoError(t, err)
		for name, body := range s.Files {
			if path.Ext(name) != ".html" {
				continue
			}
			for _, address := range references(t, body) {
				if strings.HasPrefix(address, "#") || strings.HasPrefix(address, "https://") || strings.HasPrefix(address, "mailto:") {
					continue
				}
				where, _, _ := strings.Cut(address, "#")
				where, _, _ = strings.Cut(where, "?")
				_, status := server.find(where)
				assert.Equal(t, 200, status, "%s names %s below base %q", name, address, base)
			}
		}
	}
}

func TestPagesAreSound(t *testing.T) {
	s := built(t)
	for _, p := range Pages() {
		page := string(s.Files[fileOf(p.Path)])
		t.Run(p.Path, func(t *testing.T) {
			assert.True(t, strings.HasPrefix(page, `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"/><meta content="default-src `), "the policy comes first")
			assert.Contains(t, page, `content="width=device-width, initial-scale=1, viewport-fit=cover" name="viewport"`)
			assert.Contains(t, page, "<noscript>")
			assert.Contains(t, page, `<meta content="`+html.EscapeString(p.Description)+`" name="description"/>`)
			assert.Contains(t, page, "<h1")
			for _, wrong := range []string{"user-scalable", "maximum-scale", `content=""`, "goapp-app-info", "og:url", `="false" checked`, `checked="false"`, "style=", "onclick=", "githubusercontent"} {
				assert.NotContains(t, page, wrong)
			}
			assert.NotRegexp(t, regexp.MustCompile(`(?s)<script[^>]*>[^<]`), page, "no script within the page")
		})
	}
	withAddress, err := Make(Options{Pages: Pages(), Program: s.Program, Site: "https://films.test/"})
	require.NoError(t, err)
	assert.Contains(t, string(withAddress.Files["index.html"]), `<meta content="https://films.test/" property="og:url"/>`)
}

// A browser that does not know one selector drops the whole rule, and Firefox learned
// :has() with 121, later than what we ask for. So no rule needs it.
func TestNoStyleNeedsHas(t *testing.T) {
	sheets, err := filepath.Glob("../../static/*.css")
	require.NoError(t, err)
	require.NotEmpty(t, sheets)
	for _, name := range sheets {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		assert.NotContains(t, string(text), ":has(", name)
	}
}

func TestRewriteMakesBooleansTrue(t *testing.T) {
	source := `<html><head><title>T</title></head><body><main><button aria-pressed aria-label=""></button><input type="radio" checked="false" name="b" id="a"><input checked="true" disabled="true"><details open="false"></details><div hidden="true" aria-hidden="false" draggable="false" contenteditable="false"></div><svg viewBox="0 0 1 1"><rect width="1" class="x"/></svg></main><aside id="app-wasm-loader"><img src="x"></aside></body></html>`
	got, err := rewrite([]byte(source), Page{Path: "/", Title: "T"}, "", "", assets{})
	require.NoError(t, err)
	for _, want := range []string{
		`<button aria-label="" aria-pressed="true"></button>`, `<input id="a" name="b" type="radio"/>`, `<input checked="" disabled=""/>`, `<details></details>`,
		`<div aria-hidden="false" contenteditable="false" draggable="false" hidden=""></div>`, `<svg viewBox="0 0 1 1"><rect class="x" width="1"></rect></svg>`,
	} {
		assert.Contains(t, string(got), want)
	}
	assert.NotContains(t, string(got), "app-wasm-loader")
}

func TestRewriteLeavesNoGapsBetweenWords(t *testing.T) {
	source := "<html><head></head><body>\n<p>\nin \n<b>loam</b>\n, where\n<i>weeds</i>\n.\n</p>\n<pre>\na\nb\n</pre>\n</body></html>"
	got, err := rewrite([]byte(source), Page{Path: "/", Title: "T"}, "", "", assets{})
	require.NoError(t, err)
	assert.Contains(t, string(got), "<body><p>in <b>loam</b>, where<i>weeds</i>.</p><pre>a\nb\n</pre>")
}

func TestBase(t *testing.T) {
	for in, want := range map[string]string{"": "", "/": "", "sub": "/sub", "/sub/path/": "/sub/path", "/a.b/~c_d": "/a.b/~c_d"} {
		got, err := cleanBase(in)
		require.NoError(t, err, in)
		assert.Equal(t, want, got)
	}
	for _, in := range []string{"/a//b", "/a/../b", "/..", "/a b", `/a"b`, "/a<b", "/ä", "https://example.org/a", "/a?b"} {
		_, err := cleanBase(in)
		assert.Error(t, err, in)
	}
}

// W3C Web Application Manifest, members id, lang, scope, start_url and icons;
// purposes "any" and "maskable" from its icon section.
func TestManifestAndIcons(t *testing.T) {
	for _, base := range []string{"", "/sub/path"} {
		s, err := Make(Options{Pages: Pages(), Base: base, Program: built(t).Program})
		require.NoError(t, err)
		var m struct {
			ID, Name, Lang, Scope, Display string
			Start                          string `json:"start_url"`
			Icons                          []struct{ Src, Sizes, Type, Purpose string }
		}
		require.NoError(t, json.Unmarshal(s.Files["manifest.webmanifest"], &m))
		assert.Equal(t, []string{base + "/", base + "/", base + "/", "en", "standalone"}, []string{m.ID, m.Scope, m.Start, m.Lang, m.Display})
		seen := map[string]bool{}
		for _, icon := range m.Icons {
			seen[icon.Purpose+" "+icon.Sizes] = true
			body, ok := s.Files[strings.TrimPrefix(icon.Src, base+"/")]
			require.True(t, ok, icon.Src)
			if icon.Type == "image/png" {
				img, err := png.DecodeConfig(bytes.NewReader(body))
				require.NoError(t, err)
				assert.Equal(t, icon.Sizes, fmt.Sprintf("%dx%d", img.Width, img.Height))
			}
		}
		for _, want := range []string{"any 192x192", "any 512x512", "maskable 512x512", "any any"} {
			assert.True(t, seen[want], want)
		}
	}
}

func TestWorkerListsWhatIsServed(t *testing.T) {
	s := built(t)
	list := regexp.MustCompile(`"(/[^"]*)":"sha256-[A-Za-z0-9+/=]+"`).FindAllSubmatch(s.Files["worker.js"], -1)
	server, err := NewServer(s.Files, "")
	require.NoError(t, err)
	reached := map[string]bool{"_headers": true, "worker.js": true}
	for _, found := range list {
		address := string(found[1])
		name, status := server.find(address)
		assert.Equal(t, 200, status, address)
		reached[name] = true
	}
	for name := range s.Files {
		assert.True(t, reached[name], "%s is shipped but not kept for use without a network", name)
	}
}

func TestWriteAllLeavesForeignFoldersAlone(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "thesis.txt"), []byte("mine"), 0o644))
	assert.ErrorContains(t, writeAll(dir, map[string][]byte{"index.html": nil}), "-out")
	assert.FileExists(t, filepath.Join(dir, "thesis.txt"))

	site := filepath.Join(t.TempDir(), "public")
	require.NoError(t, writeAll(site, map[string][]byte{"worker.js": []byte("1"), "assets/old.js": []byte("1")}))
	require.NoError(t, writeAll(site, map[string][]byte{"worker.js": []byte("2")}))
	assert.NoFileExists(t, filepath.Join(site, "assets", "old.js"))
	files, err := ReadFolder(site)
	require.NoError(t, err)
	assert.Equal(t, map[string][]byte{"worker.js": []byte("2")}, files)
}
