//go:build !js

package main

import (
	"fmt"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
)

const keptField = `localStorage.getItem("film-furrow/field")`

// A fault of ours while a field is being typed: the page says so calmly, what was
// typed before and after stands in the saved file, and it is there on the next visit.
func TestAStopKeepsTheTypedCaseAndOffersItAsAFile(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Errors: true, Stops: true, Before: `
		window.saved = [];
		const make = URL.createObjectURL;
		URL.createObjectURL = (blob) => { blob.text().then((text) => window.saved.push(text)); return make(blob); };`})
	p.WaitText("#verdict h1", "black")
	p.Choose("#f-crop", "okra")
	view(p, "/details")
	p.Do(`document.querySelectorAll("details").forEach((d) => { d.open = true })`)
	p.Type("#f-field-bed-length-m", "432")
	p.Wait("it to be kept", keptField+`.includes("432")`)
	p.Do(`setTimeout(() => goappNav())`) // a true Go panic: the framework's door without its argument
	p.WaitText("#strip", "The calculator stopped")
	words := p.Text("#strip")
	for _, calm := range []string{"a fault of ours", "What you typed is kept", "Load the page again"} {
		assert.Contains(t, words, calm)
	}
	assert.Equal(t, "status", browsertest.Eval[string](p, `document.querySelector("#strip-words").getAttribute("role")`), "and says it to a screen reader")
	p.Do(`document.querySelector("#f-practice-people").value = "3"`)
	p.Click("#strip button:nth-child(2)")
	p.Wait("the file", `window.saved.length === 1`)
	file := browsertest.Eval[map[string]any](p, `JSON.parse(window.saved[0])`)
	assert.Contains(t, fmt.Sprint(file["kept"]), "okra")
	assert.Contains(t, fmt.Sprint(file["kept"]), "432")
	assert.Equal(t, "3", file["typed"].(map[string]any)["f-practice-people"])
	p.Click("#strip button:nth-child(1)")
	p.Wait("the field to be back", `window.filmfurrow?.status.start === "ready" && document.querySelector("#f-crop").value === "okra" && document.querySelector("#f-field-bed-length-m").value === "432"`)
}

// Tablets lose their clock when the battery is flat. The page reads none for its
// answers, and keeping and renewing the site do not hang on it either.
func TestAWrongClockChangesNothing(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	right := b.Whole(820, "/")
	right.Wait("the soil", `!document.querySelector("#verdict .waiting")`)
	answers := right.Text("#verdict")
	right.Close()
	wrong := func(year int) string {
		return fmt.Sprintf(`{ const right = Date, off = right.UTC(%d, 0, 1) - right.now();
			globalThis.Date = class extends right { constructor(...a) { if (a.length) super(...a); else super(right.now() + off); } static now() { return right.now() + off; } }; }`, year)
	}
	for _, year := range []int{1970, 2099} {
		t.Run(fmt.Sprint(year), func(t *testing.T) {
			b := browsertest.OpenKeeping(t)
			p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: wrong(year)})
			require.Equal(t, year, browsertest.Eval[int](p, `new Date().getUTCFullYear()`))
			p.Wait("the soil", `!document.querySelector("#verdict .waiting")`)
			assert.Equal(t, answers, p.Text("#verdict"))
			p.WaitOffline()
			p.Choose("#f-crop", "okra")
			b.Publish(browsertest.NextVersion(t, true))
			browsertest.Eval[bool](p, look)
			p.Wait("the new version to be offered", offered)
			p.Click("#strip button")
			p.Wait("the new version", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
			b.Stop()
			p.Reload()
			p.WaitWhole()
			p.Wait("what was typed", `document.querySelector("#f-crop").value === "okra"`)
		})
	}
}

// The update below a folder, with a half-filled form: offered, refused when it
// does not arrive, taken when the reader says so, nothing typed lost, then offline.
func TestNewVersionBelowAFolder(t *testing.T) {
	t.Parallel()
	version := func(n string) *site.Site {
		return browsertest.Make(t, func(o *site.Options) {
			o.Base = "/sub/path"
			if n != "" {
				o.Pages = append([]site.Page(nil), o.Pages...)
				for i := range o.Pages {
					o.Pages[i].Description += " " + n
				}
				o.Program = append(append([]byte(nil), o.Program...), 0, 5, 4, 'n', 'e', 'x', 't')
			}
		})
	}
	newer := version(next)
	b := browsertest.OpenSite(t, version(""))
	p := b.Tab(browsertest.Tab{Path: "/details", Errors: true})
	p.WaitOffline()
	p.Do(`document.querySelectorAll("details").forEach((d) => { d.open = true })`)
	p.Type("#f-field-bed-length-m", "-") // not even a number yet
	b.Publish(newer)
	b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(500) }))
	browsertest.Eval[bool](p, look)
	p.Wait("the worker to give the version up", `navigator.serviceWorker.getRegistration().then((r) => !r.installing && !r.waiting)`)
	assert.False(t, browsertest.Eval[bool](p, offered))
	b.Fault(nil)
	browsertest.Eval[bool](p, look)
	p.Wait("the new version to be offered", offered)
	assert.Equal(t, "-", browsertest.Eval[string](p, `document.querySelector("#f-field-bed-length-m").value`), "nothing is swapped under the reader's hands")
	p.Click("#strip button")
	p.Wait("the new version", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
	p.Wait("what was typed", `document.querySelector("#f-field-bed-length-m").value === "-"`)
	b.Stop()
	p.Reload()
	p.WaitWhole()
	assert.True(t, isNext(t, p))
	assert.Equal(t, "-", browsertest.Eval[string](p, `document.querySelector("#f-field-bed-length-m").value`))
}

// Two tabs at once: each shows what the other typed, so that the last to write
// loses nothing. A field that came with a link puts the own one aside first.
func TestTwoTabsAndALinkLoseNothing(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	first := b.Whole(820, "/")
	second := b.Whole(820, "/")
	first.Wait("the stations", ready)
	first.Choose("#f-crop", "okra")
	second.Wait("the other tab's crop", `document.querySelector("#f-crop").value === "okra"`)
	second.WaitText("#note", "changed in another tab")
	second.Choose("#f-soil-texture", "clay")
	first.Wait("the other tab's soil", `document.querySelector("#f-soil-texture").value === "clay" && document.querySelector("#f-crop").value === "okra"`)

	view(first, "/fields")
	view(second, "/fields")
	first.Type("#field-name", "One")
	first.Click("#field-keep")
	first.WaitText("#fields-told", "Kept")
	second.Type("#field-name", "Two")
	second.Click("#field-keep")
	second.WaitText("#fields-told", "2 fields")

	linked := b.Whole(820, "/#f="+linkOf(t, "broccoli-late-summer"))
	linked.WaitText("#note", "came with a link")
	linked.Choose("#f-weeds-pressure", "light")
	linked.Wait("the link's field to be kept", keptField+`.includes("broccoli")`)
	view(linked, "/fields")
	linked.Wait("the field that was in hand to be in the list", `document.querySelectorAll("#fields .turns li").length >= 2`)
	linked.Do(`[...document.querySelectorAll("#fields .go")].find((e) => /^Open it: (Before the link|Two)/.test(e.getAttribute("aria-label"))).click()`)
	view(linked, "/")
	linked.Wait("the own field", `document.querySelector("#f-crop").value === "okra" && document.querySelector("#f-soil-texture").value === "clay"`)
}

// Damaged, cut, lengthened and invented links, one after the other in a page with
// a field of its own: none stops the program, none changes what the device keeps.
func TestFiftyBadLinks(t *testing.T) {
	t.Parallel()
	good := linkOf(t, "broccoli-late-summer")
	var bad []string
	for i := range 10 {
		at := 1 + i*(len(good)-2)/10
		bad = append(bad, good[:at], good[:at]+"0"+good[at:], good[:at]+good[at+1:], good[:at]+"%"+good[at:], strings.Repeat(good, i+2))
	}
	require.Len(t, bad, 50)
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.Wait("the stations", ready)
	p.Choose("#f-crop", "okra")
	p.Wait("it to be kept", keptField+`?.includes("okra")`)
	kept := browsertest.Eval[string](p, keptField)
	for i, text := range append(bad, strings.Repeat("A", 200_000)) {
		said := browsertest.Eval[bool](p, `new Promise((done) => {
			location.hash = `+quoted("f="+text)+`;
			setTimeout(() => done(filmfurrow.status.start === "ready" && document.querySelector("#note").textContent.includes("Nothing was loaded")), 40);
		})`)
		if i == 0 && !said { // the page draws the first a moment later
			p.WaitText("#note", "Nothing was loaded")
			continue
		}
		assert.True(t, said, "link %d: %.60s", i, text)
	}
	assert.Equal(t, kept, browsertest.Eval[string](p, keptField))
	assert.Equal(t, "okra", browsertest.Eval[string](p, `document.querySelector("#f-crop").value`))
	p.Do(`location.hash = ` + quoted("f="+good))
	p.WaitText("#note", "came with a link")
}

// What older versions of the page kept opens in this one: one fixture for each
// form that was ever written.
func TestWhatOlderVersionsKeptOpens(t *testing.T) {
	t.Parallel()
	fixtures, err := filepath.Glob("../testdata/kept/*.json")
	require.NoError(t, err)
	require.Len(t, fixtures, 2)
	for _, name := range fixtures {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		b := browsertest.Open(t)
		p := b.Tab(browsertest.Tab{Path: "/details", Before: `localStorage.setItem("film-furrow/field", ` + quoted(string(text)) + `)`})
		p.Wait(name, `document.querySelector("#f-crop").value === "okra" && document.querySelector("#f-field-bed-length-m").value === "321"`)
		view(p, "/")
		p.WaitText("#bed-we-make .label-right", "cm high")
		assert.False(t, p.Visible(".example"), name)
		p.Close()
	}
}

// The offer to install stands in the strip, and takes the browser's own prompt.
func TestTheOfferToInstall(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	assert.NotContains(t, p.Text("#strip"), "Install it")
	p.Do(`(() => { const e = new Event("beforeinstallprompt", { cancelable: true }); e.prompt = () => { window.asked = true; }; e.userChoice = Promise.resolve({ outcome: "accepted" }); window.dispatchEvent(e); window.stopped = e.defaultPrevented; })()`)
	assert.True(t, browsertest.Eval[bool](p, `window.stopped`), "the browser's own banner does not come at a time of its choosing")
	p.WaitText("#strip", "Install it on this device")
	p.Click("#strip button")
	p.Wait("the browser's prompt", `window.asked === true`)
	p.Wait("the offer to go", `!document.querySelector("#strip").innerText.includes("Install it")`)
}
