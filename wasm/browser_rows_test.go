//go:build !js

package main

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/app"
	"filmfurrow/wasm/browsertest"
)

// A link and a page that were never opened before open without a network.
func TestALinkAndThePagesOpenForTheFirstTimeWithoutANetwork(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	p.Close()
	b.Stop()
	p = b.Page(820, "/?utm=1#f="+linkOf(t, "broccoli-late-summer"))
	p.WaitText("#note", "came with a link")
	p.WaitText("#verdict h1", "silver")
	p.Close()
	p = b.Tab(browsertest.Tab{Path: "/about", NoWait: true})
	p.Wait("a heading", headingShown)
	assert.Contains(t, p.Text("h1"), "About")
	assert.Contains(t, p.Text("main"), "go-app")
}

// Six kinds of rubbish where the kept field should be: the page starts each time,
// shows the worked example, and what stood there is handed out or harmless.
func TestSixDamagedStores(t *testing.T) {
	t.Parallel()
	for name, text := range map[string]string{
		"half": `{"schema":2,"case":"{\"version\": 1,\"crop\":`, "null": "null", "a list": `[1,2]`, "another's": `{"theme":"dark","user":7}`,
		"wrong types": `{"schema":2,"case":5,"typed":[],"ticks":"x","system":"US"}`, "far too long": `{"case":"` + strings.Repeat("x", 300_000) + `"}`,
	} {
		t.Run(name, func(t *testing.T) {
			b := browsertest.Open(t)
			p := b.Tab(browsertest.Tab{Path: "/", Before: `if (!sessionStorage.getItem("once")) { sessionStorage.setItem("once", "1"); localStorage.setItem("film-furrow/field", ` + quoted(text) + `); }`})
			p.WaitText("#verdict h1", "black")
			assert.Contains(t, p.Text(".example"), "A worked example")
			p.Choose("#f-crop", "okra")
			p.Wait("the new field to be kept", keptField+`.includes("okra")`)
			p.Reload()
			p.WaitReady()
			p.Wait("the crop", `document.querySelector("#f-crop").value === "okra"`)
		})
	}
}

// From page to page: the title says where one is, a screen reader's focus stands at
// the top of the new page, and Back brings both back.
func TestGoingFromPageToPage(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `window.hearing = 0;
		for (const [name, more] of [["addEventListener", 1], ["removeEventListener", -1]]) {
			const own = EventTarget.prototype[name];
			EventTarget.prototype[name] = function (event, ...rest) {
				if (["storage", "filmfurrow", "pagehide"].includes(event)) window.hearing += more;
				return own.call(this, event, ...rest);
			};
		}`})
	title := browsertest.Eval[string](p, `document.title`)
	hearing := browsertest.Eval[int](p, `hearing`)
	assert.GreaterOrEqual(t, hearing, 3)
	for _, listed := range app.Pages()[1:] {
		if !browsertest.Eval[bool](p, fmt.Sprintf(`document.querySelector('a[href="%s"]') !== null`, listed.Path)) {
			continue // a page that nothing on this one leads to
		}
		p.Do(fmt.Sprintf(`document.querySelector("#menu").open = document.querySelector('a[href="%s"]').closest("#menu") !== null`, listed.Path))
		p.Click(fmt.Sprintf(`a[href="%s"]`, listed.Path))
		p.Wait("the page "+listed.Path, fmt.Sprintf(`location.pathname === %q && window.filmfurrow?.status.start === "ready" && document.title === %q`, listed.Path, listed.Title))
		assert.Equal(t, 1, browsertest.Eval[int](p, `document.querySelectorAll("h1").length`), listed.Path)
		beginning := "main"
		if listed.Path == "/workshop" { // a page of its own: the browser begins at its top
			beginning = "body"
		}
		p.Wait("the focus to be at the new page's beginning", `document.activeElement === document.querySelector("`+beginning+`")`)
		p.Back()
		p.Wait("the first page again", `location.pathname === "/" && document.querySelector("#place-open") !== null`)
		p.WaitDrawn()
		p.Wait("its title", fmt.Sprintf(`document.title === %q`, title))
		if beginning == "body" { // all began anew
			p.WaitWhole()
			hearing = browsertest.Eval[int](p, `hearing`)
		}
		assert.Equal(t, hearing, browsertest.Eval[int](p, `hearing`), "listeners that the page left behind")
	}
}

// WCAG 2.2, 3.3.7 Redundant Entry: no question stands in the form twice.
func TestNothingIsAskedTwice(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	walk(b, viewPaths(), func(p *browsertest.Page, path string) {
		p.Do(unfold)
		assert.Empty(t, browsertest.Eval[[]string](p, `(() => { const seen = new Map(); for (const el of document.querySelectorAll("input[name], select[name]")) seen.set(el.name, (seen.get(el.name) ?? 0) + 1); return [...seen].filter(([, n]) => n > 1).map(([name]) => name); })()`))
		assert.Empty(t, browsertest.Eval[[]string](p, `(() => { const seen = new Map(); for (const el of document.querySelectorAll("[id]")) seen.set(el.id, (seen.get(el.id) ?? 0) + 1); return [...seen].filter(([, n]) => n > 1).map(([name]) => name); })()`), "ids of %s", path)
	})
}

// What changes is read out politely, and not at every key: while a figure is typed
// that leaves the answers as they are, no live region changes.
func TestAnswersAreReadOutPolitely(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Wait("the soil", `!document.querySelector("#verdict .waiting")`)
	p.Do(unfold)
	p.Type("#f-practice-people", "2")
	p.WaitText("#moved-out", "people")
	p.Do(`window.spoken = []; for (const region of document.querySelectorAll("[aria-live=polite], [role=status], [role=alert]")) {
		let last = region.innerText;
		new MutationObserver(() => { if (region.innerText !== last) { last = region.innerText; window.spoken.push((region.id || region.className) + ": " + last.slice(0, 60)); } }).observe(region, { subtree: true, childList: true, characterData: true });
	}`)
	p.Type("#f-field-bed-length-m", "312") // 3 and 31 are lengths too
	p.Wait("it to be kept", keptField+`.includes("312")`)
	p.WaitText("#moved-out", "bed length")
	assert.LessOrEqual(t, len(browsertest.Eval[[]string](p, `window.spoken`)), 1, "%v", browsertest.Eval[[]string](p, `window.spoken`))
	p.Choose("#f-crop", "carrot")
	p.WaitText("#moved-out", "do not lay film here")
	assert.Contains(t, fmt.Sprint(browsertest.Eval[[]string](p, `window.spoken`)), "moved", "what moved is read out")
	assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("[aria-live=assertive]")].map((el) => el.id)`))
}
