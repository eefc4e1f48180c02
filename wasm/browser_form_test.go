//go:build !js

package main

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

const ready = `document.querySelector("#place-now")?.textContent.includes("Now:")`

func TestTheSentenceChangesTheAnswers(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.WaitText("#verdict h1", "black")
	p.WaitText(".example", "invented farm")

	p.Choose("#f-crop", "broccoli")
	p.Do(`(() => { const d = document.querySelector("#f-plant-on"); d.value = "2027-07-20"; d.dispatchEvent(new Event("change", {bubbles: true})); })()`)
	p.Wait("a pale film", `/white|silver|paper/.test(document.querySelector("#verdict h1").innerText)`)
	p.WaitText(".example", "From the example, yours?") // what was not changed is no grower's own

	p.Choose("#f-crop", "carrot")
	p.WaitText("#verdict h1", "Do not lay film here")
	p.WaitText(".gates", "mostly holes")
	p.WaitText("#instead", "stale seedbed")
	assert.False(t, browsertest.Eval[bool](p, `document.querySelector("#bed-drawing") !== null`), "nothing pretends that film is laid")
	p.WaitText(".bar", "not now")
}

func TestAWrongFigureStandsBesideItsFieldAndNothingIsLost(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/details")
	p.Do(`document.querySelector("#more-field").open = true`)
	p.Type("#f-field-bed-length-m", "-60")
	p.WaitText("#f-field-bed-length-m-error", "-60")
	// WCAG 2.2, 3.3.1 and 4.1.3: it is read out too, when the typing has rested.
	assert.Equal(t, "alert", browsertest.Eval[string](p, `document.querySelector("#read-out").getAttribute("role")`))
	p.WaitText("#read-out", "-60")
	assert.Equal(t, "true", browsertest.Eval[string](p, `document.querySelector("#f-field-bed-length-m").getAttribute("aria-invalid")`))
	view(p, "/")
	p.WaitText("#verdict", "last field that could be read") // the last good answers stay, marked as such
	p.WaitText("#verdict h1", "black")
	view(p, "/details")

	p.Reload()
	p.WaitReady()
	p.Wait("the wrong text to be there still", `document.querySelector("#f-field-bed-length-m").value === "-60"`)
	p.Do(`document.querySelector("#more-field").open = true`)
	p.WaitText("#f-field-bed-length-m-error", "-60")

	p.Type("#f-field-bed-length-m", "300")
	p.Wait("the error to go", `document.querySelector("#f-field-bed-length-m-error").textContent === ""`)
	view(p, "/")
	p.Wait("good answers", `!document.querySelector("#verdict").innerText.includes("last field")`)
}

func TestUnitsChangeWhatIsShownAndNeverTheCase(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.WaitText("#bed-we-make .label-right", "in high")
	p.Do(`document.querySelector("#menu").open = true`)
	p.Click("#units-metric")
	p.WaitText("#bed-we-make .label-right", "cm high")
	view(p, "/details")
	p.Wait("the field to follow", `document.querySelector("#f-field-bed-length-m").value === "61"`)
	p.WaitWhole() // nothing that is still to be drawn closes the menu or moves it
	p.Do(`document.querySelector("#menu").open = true`)
	p.Click("#units-US")
	p.Wait("the field to come back as it was", `document.querySelector("#f-field-bed-length-m").value === "200"`)
	p.Click("#units-metric")
	view(p, "/")
	p.Reload()
	p.WaitReady()
	p.WaitText("#bed-we-make .label-right", "cm high")
}

func TestThePlaceIsFoundByNameByZipAndByOwnFigures(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.Wait("the stations", ready)
	p.Click("#place-open")
	p.Type("#f-place", "ithaca ny")
	p.WaitText(".results", "ITHACA")
	p.Click(".results .result")
	p.WaitText("#place-open", "Ithaca")
	p.Wait("the soil to be worked out", `!document.querySelector("#verdict .waiting")`)
	first := p.Text("#verdict")

	// By the keyboard alone: the arrow keys point, Enter takes (WAI-ARIA Authoring
	// Practices, combobox).
	p.Do(`document.querySelector("#place-open").focus()`)
	p.Press("Enter")
	p.Wait("the box to have the focus", `document.activeElement.id === "f-place"`)
	for _, no := range []string{"00000", "99999"} {
		p.Type("#f-place", no)
		p.WaitText(".results-say", no+" is no zip code")
		assert.Equal(t, 0, browsertest.Eval[int](p, `document.querySelectorAll(".result").length`), "Alaska is no answer")
	}
	p.Type("#f-place", "33430")
	p.WaitText(".results", "FL")
	p.Press("ArrowDown")
	p.Wait("a station to be pointed at", `document.querySelector("#f-place").getAttribute("aria-activedescendant") === "place-1" && document.querySelector("#place-1").getAttribute("aria-selected") === "true"`)
	p.Press("Enter")
	p.WaitText("#place-open", "FL")
	p.Wait("other answers", `!document.querySelector("#verdict .waiting") && document.querySelector("#verdict").innerText !== `+quoted(first))

	view(p, "/details")
	p.Do(`document.querySelector("#more-place").open = true`)
	p.Do(`document.querySelector("#own-normals").open = true`)
	p.Type("#normals-min-3", "200")
	p.Type("#normals-latitude", "43")
	p.Click("#normals-use")
	p.WaitText("#own-normals", "Allowed")
	p.WaitText("#place-now", "FL") // nothing was changed
	p.Type("#normals-min-3", "40")
	p.Click("#normals-use")
	p.WaitText("#place-now", "your own monthly temperatures")
	p.Reload()
	p.WaitReady()
	p.Do(unfold)
	p.WaitText("#place-now", "your own monthly temperatures")
}

func quoted(s string) string { return browsertest.Quote(s) }

func TestWhatWasTypedSurvivesWithoutANetwork(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(390, "/")
	p.WaitText("#verdict h1", "black")
	p.Choose("#f-crop", "eggplant")
	p.Choose("#f-soil-texture", "clay")
	p.WaitOffline()
	b.Stop()
	p.Reload()
	p.WaitWhole()
	p.Wait("the crop to be there", `document.querySelector("#f-crop").value === "eggplant" && document.querySelector("#f-soil-texture").value === "clay"`)
	p.Wait("the stations from the device", ready)
	p.Click("#place-open")
	p.Type("#f-place", "dover")
	p.WaitText(".results", "DOVER")
}

// The sentence is completed with nothing but the keyboard.
func TestTheSentenceByKeyboardAlone(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.WaitText("#verdict h1", "black")
	focus := func() string { return browsertest.Eval[string](p, `document.activeElement?.id ?? ""`) }
	p.Do(`document.body.focus()`)
	reached := map[string]bool{}
	for range 60 {
		p.Press("Tab")
		id := focus()
		reached[id] = true
		if id == "f-crop" {
			p.Press("ArrowDown")
		}
	}
	for _, id := range []string{"field-now", "f-crop", "f-plant-on", "place-open", "f-soil-texture", "f-weeds-pressure", "start-own"} {
		assert.True(t, reached[id], "%s is not reached by Tab", id)
	}
	p.Wait("the next crop of the list", `document.querySelector("#f-crop").value !== "bell-pepper"`)
}

func TestEveryFactorLeadsToItsSource(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/why/film")
	p.WaitText("h1", "black")
	lost := browsertest.Eval[[]string](p, `[...document.querySelectorAll("cite a")].map((a) => a.getAttribute("href")).filter((h) => !document.querySelector(h))`)
	assert.Empty(t, lost)
	n := browsertest.Eval[int](p, `document.querySelectorAll("#film-balance .factors li").length`)
	require.Greater(t, n, 10)
	bare := browsertest.Eval[int](p, `[...document.querySelectorAll(".factors li")].filter((l) => !l.querySelector("cite a") && !l.textContent.includes("Nothing speaks")).length`)
	assert.Zero(t, bare, "factors without a source")
	p.Do(`document.querySelector("#sources-list").open = true`)
	p.WaitText("#sources-list", "https://") // the texts come as a file of their own
	assert.NotContains(t, p.Text("#sources-list"), "its title is loading")
}

// What the reader unfolds in a balance stays unfolded when the answer changes.
func TestABalanceStaysUnfolded(t *testing.T) {
	t.Parallel()
	p := browsertest.Open(t).Whole(820, "/why/film")
	state := `[...document.querySelectorAll("#film-balance .option")].map((o) => o.open).join()`
	options := browsertest.Eval[string](p, state)
	require.Regexp(t, `^true,false,false`, options, "the winner is unfolded")
	second := `document.querySelector("#film-balance .option:nth-child(2)").textContent`
	p.Do(`window.was = ` + second)
	p.Do(`document.querySelectorAll("#film-balance .option").forEach((o, i) => { o.open = i === 1 || i === 2; })`)
	p.Do(`(() => { const d = document.querySelector("#strip-plant-on"); d.value = "2027-06-20"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	p.Wait("the balance to change", second+` !== window.was`)
	assert.Regexp(t, `^false,true,true,false`, browsertest.Eval[string](p, state))
}

func TestEveryControlOfTheFormIsLargeEnough(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(390, "/details")
	p.Do(`document.querySelectorAll("details").forEach((d) => { d.open = true })`)
	small := browsertest.Eval[[]string](p, `[...document.querySelectorAll("button, select, input:not([type=checkbox]), summary, label.tick")]
		.filter((e) => e.checkVisibility()).filter((e) => e.getBoundingClientRect().height < 47.5)
		.map((e) => e.id || e.className || e.innerText)`)
	assert.Empty(t, small)
}

// Each redraw comes a frame after the key that caused it. A word typed slowly
// keeps the space at its end meanwhile, one typed fast on a slow tablet keeps every
// key, and boxes that stand outside the case are kept over a reload like the rest.
func TestNoKeyIsLost(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Wait("the stations", ready)
	p.Do(unfold)
	value := func(selector string) string {
		return browsertest.Eval[string](p, "document.querySelector("+quoted(selector)+").value")
	}
	p.Do(`document.querySelector("#f-place").focus()`)
	for _, key := range "ithaca ny" {
		p.Press(string(key))
		time.Sleep(60 * time.Millisecond)
	}
	assert.Equal(t, "ithaca ny", value("#f-place"))

	p.Do(`document.querySelectorAll("details").forEach((d) => { d.open = true })`)
	p.Type("#normals-min-3", "38.5")
	p.Slow(6)
	p.Type("#f-field-bed-length-m", "123.456") // the first of the case: the whole form is told
	p.Type("#f-practice-tractor-kw", "55.25")
	p.Slow(1)
	assert.Equal(t, "123.456", value("#f-field-bed-length-m"))
	assert.Equal(t, "55.25", value("#f-practice-tractor-kw"))
	assert.Equal(t, "38.5", value("#normals-min-3"), "another field's first key leaves own normals alone")

	p.Reload()
	p.WaitWhole()
	assert.Equal(t, "ithaca ny", value("#f-place"))
	assert.Equal(t, "38.5", value("#normals-min-3"))
	assert.Equal(t, "123.456", value("#f-field-bed-length-m"))
	p.Do(`document.querySelector("#menu").open = true`)
	p.Click("#units-metric")
	p.Wait("the box to follow the units", `document.querySelector("#normals-min-3").value === "3.61"`)
}

// What is to be mended stands together too, above the answers: it leads to each
// field in the words that stand beside it, takes the focus where something is asked
// for that a wrong figure forbids, and the title says so (GOV.UK Design System, error
// summary).
func TestWhatIsToBeMendedStandsTogether(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Do(unfold)
	title := browsertest.Eval[string](p, `document.title`)
	p.Type("#f-field-bed-length-m", "-60")
	p.Type("#f-water-ph", "70")
	p.Wait("both", `document.querySelectorAll("#faults a").length === 2`)
	for _, id := range []string{"f-field-bed-length-m", "f-water-ph"} {
		assert.True(t, browsertest.Eval[bool](p, `document.querySelector("#faults a[href$='#`+id+`']").textContent.endsWith(document.querySelector("#`+id+`-error").textContent)`), id)
	}
	assert.Equal(t, "Correct first: "+title, browsertest.Eval[string](p, `document.title`))
	view(p, "/share")
	p.Click("#share-copy")
	p.Wait("the summary to have the focus", `document.activeElement.id === "faults"`)
	view(p, "/")
	assert.Equal(t, 2, browsertest.Eval[int](p, `document.querySelectorAll("#faults a").length`), "the summary stands on Plan as well")
	view(p, "/details")
	p.Do(unfold)
	p.Click("#faults a[href$='#f-water-ph']")
	p.Wait("the field to have the focus", `document.activeElement.id === "f-water-ph"`)
	p.Type("#f-water-ph", "7")
	p.Type("#f-field-bed-length-m", "300")
	p.Wait("nothing to be mended", `!document.querySelector("#faults").checkVisibility()`)
	assert.Equal(t, title, browsertest.Eval[string](p, `document.title`))
}
