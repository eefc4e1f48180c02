//go:build !js

package main

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"path"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/app"
	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
)

// Every page, at tablet and telephone width, under the published headers. That
// no other origin is asked, the policy is kept and the console is clean is
// checked when each page closes.
func TestEveryPageUnderThePublishedHeaders(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	for i, listed := range app.Pages() {
		t.Run(listed.Path, func(t *testing.T) {
			p := b.Whole(320, listed.Path)
			defer p.Close()
			if i == 0 {
				p.WaitOffline()
			}
			for _, width := range []int{320, 820, 1920} {
				p.Resize(width, 1000)
				assert.NotEmpty(t, p.Text("h1"))
				assert.Equal(t, 1, browsertest.Eval[int](p, `document.querySelectorAll("h1").length`), "one heading of the first rank")
				// WCAG 2.2, 1.4.10 Reflow: no sideways scroll at 320 CSS pixels.
				assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth`), width, "no sideways scroll at %d px", width)
				p.Screenshot(fmt.Sprintf("page%s-%d", strings.ReplaceAll(listed.Path, "/", "-"), width))
			}
		})
	}
}

// The watch over the policy must itself be able to fail.
func TestPolicyStopsWhatItShould(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Breaches: true, Errors: true})
	// Run from a timer, since the debugger's own evaluation is let through.
	assert.Equal(t, "refused", browsertest.Eval[string](p, `new Promise((done) => setTimeout(() => { try { done(String(new Function("return 1")())); } catch { done("refused"); } }))`))
	assert.Equal(t, "no", browsertest.Eval[string](p, `new Promise((done) => setTimeout(() => {
		window.inline = "no";
		const script = document.createElement("script");
		script.textContent = "window.inline = 'yes'";
		document.head.append(script);
		done(window.inline);
	}))`))
	assert.Equal(t, "refused", browsertest.Eval[string](p, `fetch("https://elsewhere.invalid/").then(() => "sent", () => "refused")`))
	policy := browsertest.Eval[string](p, `fetch(location.href).then((r) => r.headers.get("content-security-policy"))`)
	assert.Contains(t, policy, "frame-ancestors 'none'")
	for _, header := range []string{"x-content-type-options", "referrer-policy", "permissions-policy"} {
		assert.NotEmpty(t, browsertest.Eval[string](p, fmt.Sprintf(`fetch(location.href).then((r) => r.headers.get(%q))`, header)), header)
	}
	assert.Equal(t, 0, browsertest.Eval[int](p, `document.cookie.length`))
}

// WCAG 2.2, 1.4.4 Resize Text: nothing may forbid zooming.
func TestZoomIsAllowed(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(390, "/")
	content := browsertest.Eval[string](p, `document.querySelector("meta[name=viewport]").content`)
	assert.Equal(t, "width=device-width, initial-scale=1, viewport-fit=cover", content)
}

// Nothing jumps while the program takes over: the Layout Instability
// specification's cumulative score stays below the 0.1 that is called good.
func TestNothingJumpsAtStart(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Tab(browsertest.Tab{Width: 390, Path: "/", Whole: true, Before: `
		window.shift = 0;
		new PerformanceObserver((list) => { for (const e of list.getEntries()) window.shift += e.value; }).observe({ type: "layout-shift", buffered: true });`})
	p.WaitOffline()
	assert.LessOrEqual(t, browsertest.Eval[float64](p, `window.shift`), 0.1)
}

// The strip lies over nothing that the reader is at the end of: scrolled down,
// the last line of the text stands above it.
func TestStripCoversNothing(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(404) }))
	for _, width := range []int{320, 820} {
		p := b.Tab(browsertest.Tab{Width: width, Height: 480, Path: "/", NoWait: true, Errors: true})
		p.WaitText("#strip", "could not be fetched")
		assert.True(t, browsertest.Eval[bool](p, `(() => {
			scrollTo({ top: document.documentElement.scrollHeight, behavior: "instant" });
			return document.body.firstElementChild.getBoundingClientRect().bottom <= document.querySelector("#strip").getBoundingClientRect().top + 1;
		})()`))
		assert.LessOrEqual(t, browsertest.Eval[float64](p, `document.querySelector("#strip").getBoundingClientRect().height`), 240.0, "half the small window stays free")
		assert.GreaterOrEqual(t, browsertest.Eval[float64](p, `document.querySelector("#strip button").getBoundingClientRect().height`), 48.0)
		p.Screenshot(fmt.Sprintf("strip-%d", width))
	}
}

func TestInstallable(t *testing.T) {
	t.Parallel()
	for _, base := range []string{"", "/sub/path"} {
		s := browsertest.Make(t, func(o *site.Options) { o.Base = base })
		b := browsertest.OpenSite(t, s)
		p := b.Page(820, "/")
		p.WaitOffline()
		for _, problem := range p.InstallProblems() {
			// A browser context of a test counts as a private window, where
			// no browser offers to install anything.
			assert.Equal(t, "in-incognito", problem, base)
		}
		p.Close()
	}
}

// What is shown first is the prerendered text, not the program's doing: the
// first contentful paint (W3C Paint Timing) comes, and the text can be read,
// while the program is still on its way.
func TestFirstPaintIsTheText(t *testing.T) {
	t.Parallel()
	program := browsertest.Make(t, nil).Program
	release := make(chan struct{})
	b := browsertest.Open(t)
	b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "application/wasm")
		<-release
		w.Write(program)
	}))
	p := b.Tab(browsertest.Tab{Width: 390, Path: "/", NoWait: true})
	p.Wait("the first paint", `performance.getEntriesByName("first-contentful-paint").length === 1`)
	assert.True(t, p.Visible("h1"))
	assert.Equal(t, "waking", browsertest.Eval[string](p, `filmfurrow.status.start`))
	p.WaitText("#strip", "waking up")
	close(release)
	p.WaitReady()
}

// The style sheet is asked for while the script that stands before it is on its way.
func TestStyleAndScriptComeTogether(t *testing.T) {
	t.Parallel()
	asked := make(chan struct{})
	once := sync.OnceFunc(func() { close(asked) })
	var waited atomic.Bool
	b := browsertest.Open(t)
	b.Fault(func(_ http.ResponseWriter, r *http.Request) bool {
		switch {
		case path.Ext(r.URL.Path) == ".css":
			once()
		case strings.Contains(r.URL.Path, "/assets/boot-"):
			select {
			case <-asked:
			case <-time.After(5 * time.Second):
				waited.Store(true)
			}
		}
		return false
	})
	b.Page(390, "/")
	assert.False(t, waited.Load(), "the style sheet was asked for only when the script had come")
}

// Tables beside the program are found by the name that the program asks for,
// with the network and without.
func TestTablesAreServed(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	read := `Promise.all(["normals.csv", "beside.csv"].map(async (name) => (await (await fetch(goappGetenv("file:" + name))).text()).split("\n").length))`
	lines := browsertest.Eval[[]int](p, read)
	require.Len(t, lines, 2)
	assert.Greater(t, min(lines[0], lines[1]), 7000)
	b.Stop()
	assert.Equal(t, lines, browsertest.Eval[[]int](p, read))
}

func TestMemoryAfterStart(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	memory := browsertest.Eval[int](p, `filmfurrow.memory()`)
	t.Logf("%d bytes of memory after the start", memory)
	assert.LessOrEqual(t, memory, 32<<20)
}

// What the reader sees before the program runs is what the program shows: the
// same field, bed and answers, so that nothing changes under the reader's eyes. The
// sections below the answers are named, and filled by the program; what would
// change an answer comes later still.
func TestProgramShowsThePrerenderedPage(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	before := b.Tab(browsertest.Tab{Path: "/", NoScript: true})
	after := b.Whole(820, "/")
	for _, part := range []string{".head", "#field", "#verdict", "#bed-we-make", "#wait", "#water"} {
		read := fmt.Sprintf(`(() => { document.querySelectorAll(".change").forEach((e) => e.remove()); return document.querySelector(%s).innerText; })()`, quoted(part))
		text := browsertest.Eval[string](before, read)
		assert.NotEmpty(t, text, part)
		assert.Equal(t, text, browsertest.Eval[string](after, read), part)
	}
}

func TestUnknownAddress(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/nowhere/at/all", NoWait: true, Errors: true})
	p.Wait("a heading", headingShown)
	assert.Equal(t, "Page not found", p.Text("h1"))
	assert.Equal(t, "en", browsertest.Eval[string](p, `document.documentElement.lang`))
	assert.NotEmpty(t, browsertest.Eval[string](p, `document.title`))
	p.Click("main a")
	p.WaitWhole()
}

// The framework takes clicks on links over; a file, a new tab and a fragment
// must still do what they say.
func TestLinksDoWhatTheySay(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Errors: true}) // a file shown alone makes the browser ask for an icon
	add := func(id, attributes string) {
		p.Do(fmt.Sprintf(`document.body.insertAdjacentHTML("beforeend", '<p><a id="%s" %s>link</a></p>')`, id, attributes))
	}
	add("same", `href="/#here"`)
	p.Click("#same")
	p.Wait("the fragment", `location.hash === "#here" && window.filmfurrow.status.start === "ready"`)

	add("tab", `href="/?new" target="_blank"`)
	before := b.Tabs()
	p.Click("#tab")
	require.Eventually(t, func() bool { return b.Tabs() == before+1 }, 20*time.Second, 100*time.Millisecond, "a new tab opens")
	assert.Equal(t, "", browsertest.Eval[string](p, `location.search`), "the old tab stays")

	add("file", `href="/manifest.webmanifest"`)
	p.Click("#file")
	p.Wait("the file itself", `location.pathname === "/manifest.webmanifest" && document.body.innerText.includes("start_url")`)
}

// Published in a folder of a site: everything stays within it, with the
// network and without, and a neighbour at the root is left alone.
func TestBelowAFolder(t *testing.T) {
	t.Parallel()
	s := browsertest.Make(t, func(o *site.Options) { o.Base = "/sub/path" })
	b := browsertest.OpenSite(t, s)
	for i, listed := range app.Pages() {
		p := b.Page(820, listed.Path)
		if i == 0 {
			p.WaitOffline()
		}
		outside := browsertest.Eval[[]string](p, `[...document.querySelectorAll("a[href], link[href], script[src], img[src]")]
			.map((el) => el.href || el.src).filter((u) => u.startsWith(location.origin) && !u.startsWith(location.origin + "/sub/path/"))`)
		assert.Empty(t, outside, "%s names addresses outside the folder", listed.Path)
		p.Close()
	}
	for _, asked := range b.Requests() {
		assert.True(t, strings.HasPrefix(asked, "/sub/path/"), asked)
	}
	b.Stop()
	for _, address := range []string{"/", "/?utm=1", "/#x=1"} {
		p := b.Tab(browsertest.Tab{Path: address, Whole: true, Errors: true})
		assert.NotEmpty(t, p.Text("h1"))
		p.Close()
	}
	p := b.Tab(browsertest.Tab{Path: "/nowhere", Errors: true, NoWait: true})
	p.Wait("a heading", headingShown)
	assert.Equal(t, "Page not found", p.Text("h1"))
	p.Click("main a")
	p.WaitWhole()
}

// The pages for framing open in another site's frame, also in a sandbox that
// gives them no origin and no storage; no other page does.
func TestFraming(t *testing.T) {
	t.Parallel()
	for _, address := range append(paths(), "/about", "/nowhere", "/card/nowhere", "/assets/") {
		t.Run(address, func(t *testing.T) {
			b := browsertest.Open(t)
			host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				w.Header().Set("Content-Type", "text/html")
				fmt.Fprintf(w, `<!DOCTYPE html><title>Newsletter</title><link rel="icon" href="data:,"><iframe sandbox="%s" src="%s%s"></iframe>`, r.URL.Query().Get("sandbox"), b.URL, address)
			}))
			defer host.Close()
			sandboxes := []string{"allow-scripts", "allow-scripts allow-same-origin"}
			if address != "/card" {
				sandboxes = sandboxes[1:] // what may not be shown even with an origin of its own
			}
			for _, sandbox := range sandboxes {
				b.Requests()
				p := b.Foreign(host.URL + "/?sandbox=" + strings.ReplaceAll(sandbox, " ", "+"))
				styled, started := false, false
				look := func() bool {
					for _, asked := range b.Requests() {
						styled = styled || path.Ext(asked) == ".css"
						started = started || path.Ext(asked) == ".wasm"
					}
					return styled && started
				}
				if address == "/card" {
					require.Eventually(t, look, 20*time.Second, 25*time.Millisecond, "sandbox %q", sandbox)
				} else {
					// A page that may not be shown is fetched, and nothing for it.
					p.Wait("the frame to load", `document.readyState === "complete" && new Promise((r) => setTimeout(() => r(true), 500))`)
					look()
					assert.False(t, styled || started, "sandbox %q", sandbox)
				}
				p.Close()
			}
		})
	}
}

// Firefox-like and older engines without streaming start too.
func TestWithoutStreaming(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `delete WebAssembly.compileStreaming`})
	require.NotEmpty(t, p.Text("h1"))
}

func TestWithoutServiceWorker(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t) // it has no workers
	p := b.Page(820, "/")
	p.WaitText("#strip", "needs a network each time")
}
