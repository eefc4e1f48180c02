//go:build !js

package main

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/wasm/browsertest"
)

// After the first change every value that came with the example is marked as such: in
// the form, in the sentence, where things are bought, and on paper. It is the grower's
// only once it is changed or confirmed, over a reload too.
func TestTheExampleNeverTurnsSilentlyIntoYours(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.Wait("the stations", ready)
	p.WaitText("#yours", "an invented farm")
	p.Choose("#f-crop", "tomato")
	p.WaitText("#yours", "From the example, yours? Place,")
	unmarked := `[...document.querySelectorAll("main .blank, main .field")].filter((e) => { const c = e.querySelector("select, input"); return c && c.value && !e.classList.contains("borrowed"); }).map((e) => e.querySelector("select, input").id)`
	assert.Equal(t, []string{"f-crop"}, browsertest.Eval[[]string](p, unmarked), "the crop alone was changed")
	assert.True(t, browsertest.Eval[bool](p, `document.querySelector("#place-open").classList.contains("borrowed")`))

	view(p, "/details")
	p.Do(unfold)
	assert.Equal(t, []string{"f-crop"}, browsertest.Eval[[]string](p, `(`+unmarked+`).filter((id) => !["f-place", "f-method"].includes(id) && !id.startsWith("normals-"))`))
	p.WaitText("#place-now", "an invented farm, with invented weather")
	assert.NotContains(t, p.Text("#place-now"), "your own monthly")

	view(p, "/buy")
	p.WaitText(".whose", "For 8 beds of 200 ft. From the example. Yours?")
	p.Media("print")
	p.WaitText(".paper-head", "Still from the example: place,")
	p.Media("")
	p.Click("#beds-mine")
	p.Wait("the beds to be the grower's", `!document.querySelector(".whose").innerText.includes("example")`)

	p.Reload()
	p.WaitWhole()
	p.Wait("the beds to stay the grower's", `!document.querySelector(".whose").innerText.includes("example")`)
	p.WaitText("#yours", "From the example, yours? Place,")
	p.Click("#yours-all")
	p.Wait("nothing to be the example's", `!document.querySelector("#yours").checkVisibility()`)
}

// A first visit can begin with an empty field: nothing is answered, dated or bought
// before crop, day, place and soil are told, and nothing of the example is left.
func TestAFieldOfOnesOwnBeginsEmpty(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.Wait("the stations", ready)
	p.Click("#start-own")
	p.WaitText("h1", "Your field")
	assert.False(t, browsertest.Eval[bool](p, `document.querySelector("#yours").checkVisibility()`))
	assert.Equal(t, []string{"", "", ""}, browsertest.Eval[[]string](p, `["f-crop", "f-plant-on", "f-soil-texture"].map((id) => document.getElementById(id).value)`))
	p.Screenshot("own-empty")
	view(p, "/buy")
	p.WaitText("h1", "Your field")
	assert.Zero(t, browsertest.Eval[int](p, `document.querySelectorAll("main table").length`))
	p.Reload()
	p.WaitReady()
	p.WaitText("h1", "Your field")
	view(p, "/")
	p.Choose("#f-crop", "okra")
	p.Do(`(() => { const d = document.querySelector("#f-plant-on"); d.value = "2027-06-10"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	p.Wait("the stations", `filmfurrow.status.start === "ready" && document.querySelector("#place-now").textContent.includes("No place yet")`)
	p.Click("#place-open")
	p.Type("#f-place", "ithaca ny")
	p.Press("Enter")
	p.WaitText("#place-open", "Ithaca")
	p.Choose("#f-soil-texture", "loam")
	p.WaitText("#verdict h1", "ay")
	assert.False(t, browsertest.Eval[bool](p, `document.querySelector("#yours").checkVisibility()`))
	view(p, "/buy")
	p.WaitText(".whose", "How many beds, and how long?")
}

// A change says what it moved and can be taken back: ten steps, over a reload too.
func TestWhatMovedAndTakingItBack(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	set := func(day string) {
		p.Do(`(() => { const d = document.querySelector("#f-plant-on"); d.value = "` + day + `"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	}
	set("2027-07-10")
	p.WaitText("#moved", "Changed: planting day. Moved with it:")
	p.Wait("the day as it was and is", `/plant May \d+ → July 10/.test(document.querySelector("#moved").innerText)`)
	p.WaitText("#moved-out", "Changed: planting day. Moved with it:")
	assert.Equal(t, "status", browsertest.Eval[string](p, `document.querySelector("#moved-out").role`), "and is read out politely")
	p.Screenshot("plan-moved-820")
	p.Click("#take-back")
	p.Wait("the day as it was", `document.querySelector("#f-plant-on").value === "2027-05-20"`)
	p.WaitText("#verdict", "plant May")
	p.WaitText("#yours", "an invented farm")

	crops := []string{"okra", "kale", "tomato", "eggplant", "broccoli", "cucumber", "muskmelon", "watermelon", "cabbage", "lettuce"}
	for i, crop := range crops {
		p.Choose("#f-crop", crop)
		p.Choose("#f-weeds-pressure", []string{"light", "moderate"}[i%2])
	}
	p.Wait("it to be kept", keptField+`.includes("lettuce")`)
	p.Reload()
	p.WaitWhole()
	p.WaitText("#moved", "Last change: weeds.")
	for n := range 10 {
		p.Wait(fmt.Sprint("step ", n), `document.querySelector("#moved").checkVisibility()`)
		p.Click("#take-back")
		want := crops[len(crops)-1-(n+1)/2]
		p.Wait("the field of step "+fmt.Sprint(n), fmt.Sprintf(`document.querySelector("#f-crop").value === %q`, want))
	}
	p.Wait("nothing more to take back", `!document.querySelector("#moved").checkVisibility()`)
}

// A link opens as a copy. The field in hand is never lost: it stays as it was until the
// copy is changed, and then it is in the list; each time under a name of its own.
func TestALinkIsACopy(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.Wait("the stations", ready)
	for i, mine := range []string{"okra", "kale"} {
		p.Choose("#f-crop", mine)
		p.Wait("it to be kept", keptField+`.includes(`+quoted(mine)+`)`)
		kept := browsertest.Eval[string](p, keptField)
		p.Do(`location.hash = "f=` + linkOf(t, "broccoli-late-summer") + `"`)
		p.WaitText("#note", "came with a link, as a copy")
		assert.Equal(t, kept, browsertest.Eval[string](p, keptField), "the own field is as it was")
		view(p, "/buy#"+browsertest.Eval[string](p, `location.hash.slice(1)`))
		p.WaitText("#shopping", "broccoli") // the bar takes the copy along
		view(p, "/#"+browsertest.Eval[string](p, `location.hash.slice(1)`))
		p.Choose("#f-weeds-pressure", []string{"heavy", "moderate"}[i])
		p.Wait("the copy to be kept", keptField+`.includes("broccoli")`)
		view(p, "/fields")
		p.Wait("the own fields in the list", fmt.Sprintf(`document.querySelectorAll("#fields .turns li").length === %d`, i+1))
		view(p, "/")
	}
	assert.Contains(t, browsertest.Eval[string](p, `localStorage.getItem("film-furrow/fields")`), "okra")
	assert.Contains(t, browsertest.Eval[string](p, `localStorage.getItem("film-furrow/fields")`), "kale")
}
