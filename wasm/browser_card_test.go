//go:build !js

package main

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/table/normals"
	"filmfurrow/wasm/browsertest"
)

// newsletter is a page of another origin that frames a card and makes the frame
// as tall as the card says.
func newsletter(t *testing.T, card string) string {
	t.Helper()
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, `<!DOCTYPE html><title>News</title><iframe id="card" width="360" height="100" src="%s"></iframe>
			<script>window.said = []; addEventListener("message", (e) => { said.push(e.data); document.querySelector("#card").height = e.data; });</script>`, card)
	}))
	t.Cleanup(host.Close)
	return host.URL
}

// A card of the pack shows in a frame of another origin without any program, and
// says how tall it is: numbers and nothing else.
func TestACardOfThePackInAFrame(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Foreign(newsletter(t, b.URL+"/card/heron-flat"))
	p.Wait("a number", `said.length > 0 && said.every((n) => typeof n === "number" && n > 300 && n < 3000)`)
	p.Wait("the frame to fit", `Number(document.querySelector("#card").height) === said.at(-1)`)
	for _, asked := range b.Requests() {
		assert.NotContains(t, asked, ".wasm", "a card of the pack needs no program")
	}
	// One tap away its field opens as what it is, those that are for newsletters alone too.
	for id, farm := range map[string]string{"heron-flat": "Heron Flat", "wren-drill": "Wren Drill"} {
		card := b.Tab(browsertest.Tab{Path: "/card/" + id, NoWait: true})
		link := browsertest.Eval[string](card, `document.querySelector(".card-go").href`)
		card.Close()
		tool := b.Tab(browsertest.Tab{Path: strings.TrimPrefix(link, b.URL)})
		tool.WaitText("body", "Opened from its card: "+farm+", an invented farm.")
		tool.Close()
	}
}

// Each card of the pack is whole without script, at both widths.
func TestCardsAreWholeWithoutScript(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for i := range pack.Farms {
		f := &pack.Farms[i]
		for _, width := range []int{320, 700} {
			p := b.Tab(browsertest.Tab{Path: "/card/" + f.ID, Width: width, NoScript: true})
			p.WaitText("main", f.Lesson)
			answers := browsertest.Eval[int](p, `[...document.querySelectorAll("dd strong")].filter((e) => e.innerText.trim() !== "").length`)
			if strings.Contains(p.Text("main"), "Do not lay film here.") {
				assert.Zero(t, answers, "%s: nothing behind a refusal pretends that film is laid", f.ID)
				assert.NotEmpty(t, p.Text(".gates"), "%s says why not", f.ID)
				assert.NotEmpty(t, p.Text(".instead li"), "%s says what instead", f.ID)
			} else {
				assert.Equal(t, 6, answers, "six answers on %s", f.ID)
			}
			assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth - document.documentElement.clientWidth`), 0, "%s at %d px", f.ID, width)
			p.Screenshot(fmt.Sprintf("card-%s-%d", f.ID, width))
			p.Close()
		}
	}
}

// A card of somebody's own field reads it from the address, in a frame as well,
// and leads to the whole page with the same field.
func TestACardOfOnesOwnField(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	link := linkOf(t, "broccoli-late-summer")
	p := b.Page(360, "/card#f="+link)
	p.WaitText("#card", "Silver")
	p.WaitText("h1", "roccoli")
	assert.Equal(t, "null", browsertest.Eval[string](p, `String(localStorage.getItem("film-furrow/field"))`), "a card keeps nothing")
	p.Wait("the way to the whole page, with the field", fmt.Sprintf(`document.querySelector("#card a").href.startsWith(%s)`, quoted(b.URL+"/#f=1")))
	whole := b.Tab(browsertest.Tab{Path: browsertest.Eval[string](p, `document.querySelector("#card a").href`)[len(b.URL):]})
	whole.Wait("the same field", `document.querySelector("#f-crop").value === "broccoli"`)
	p.Screenshot("card-own-360")
	p.Click("#card a")
	p.WaitText("#verdict", "Lay silver-on-black film")
	assert.True(t, browsertest.Eval[bool](p, `document.querySelector("#verdict h1").getBoundingClientRect().bottom < innerHeight`), "the answer is on the first screen")
	p.Back()
	p.WaitText("#card", "Silver")

	places, err := normals.Embedded()
	require.NoError(t, err)
	c := pack.Farms[1].Case()
	c.Place = field.Place{Station: places.Find("ithaca ny", 1)[0].ID}
	casefile.Locate(&c, places)
	// Where the link names a station, the card waits for the table, and shows no other field meanwhile.
	station := b.Page(360, "/card#f="+casefile.Link(&c))
	station.Do(`window.seen = []; new MutationObserver(() => seen.push(document.querySelector("#card")?.innerText ?? "")).observe(document.body, { childList: true, subtree: true, characterData: true })`)
	station.Wait("the answers", `document.querySelectorAll("#card dd strong").length === 6`)
	assert.NotContains(t, station.Text("#card"), "invented farm")
	assert.NotContains(t, browsertest.Eval[string](station, `seen.join()`), "invented farm")

	news := b.Foreign(newsletter(t, b.URL+"/card#f="+link))
	news.Wait("a number from the program's card", `said.length > 0 && said.every((n) => typeof n === "number")`)

	// While the table is on its way the card is a line; no host's frame shrinks to that.
	b.Fault(func(_ http.ResponseWriter, r *http.Request) bool {
		if strings.Contains(r.URL.Path, "/normals-") {
			time.Sleep(2 * time.Second)
		}
		return false
	})
	news = b.Foreign(newsletter(t, b.URL+"/card#f="+casefile.Link(&c)))
	news.Wait("the answers’ height after the example's", `said.length > 1`)
	news.Wait("the frame to rest", `new Promise((r) => { const n = said.length; setTimeout(() => r(n === said.length), 3000); })`)
	for _, height := range browsertest.Eval[[]float64](news, `said`) {
		assert.GreaterOrEqual(t, height, 200.0)
	}
}

// The QR code of the link has the size that the standard gives for its length; what
// it says is read back by another library in package app.
func TestTheLinkAsAQRCode(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/share")
	p.Click("#share-code")
	p.Wait("the code", `document.querySelector("#share-qr svg path") !== null`)
	side := browsertest.Eval[int](p, `document.querySelector("#share-qr svg").viewBox.baseVal.width`)
	assert.Zero(t, (side-8-17)%4, "17 + 4 × version modules and 4 quiet ones on each side")
	assert.Equal(t, "Save the QR code (SVG)", p.Text("#share-qr-save"))
	p.Screenshot("share-qr")
}

// The drawing of the bed stands alone as a file: its look, title and description
// are in it.
func TestTheBedIsSavedAsAPicture(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/share")
	p.Do(`(() => { const make = URL.createObjectURL; URL.createObjectURL = (blob) => { blob.text().then((t) => { window.made = t; }); return make(blob); }; })()`)
	p.Click("#share-bed-svg")
	p.Wait("the file", `window.made?.includes("<svg")`)
	drawing := browsertest.Eval[string](p, `window.made`)
	assert.Contains(t, drawing, `>The bed cut across, to scale; plants are a sketch</title>`)
	assert.Contains(t, drawing, "embossed", "the description")
	assert.Contains(t, drawing, `stroke-width="`)
	assert.Equal(t, 0, browsertest.Eval[int](p, `new DOMParser().parseFromString(window.made, "image/svg+xml").querySelectorAll("parsererror").length`))
}
