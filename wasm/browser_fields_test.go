//go:build !js

package main

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

// give hands a text to the page as a chosen file.
func give(t *testing.T, p *browsertest.Page, name, text string) {
	t.Helper()
	quoted, err := json.Marshal(text)
	require.NoError(t, err)
	p.Do(`(() => { const d = new DataTransfer(); d.items.add(new File([` + string(quoted) + `], "` + name + `")); const i = document.querySelector("#fields-file"); i.files = d.files; i.dispatchEvent(new Event("change", {bubbles: true})); })()`)
}

func TestFieldsAreKeptAndNothingIsLostOnABadFile(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.Wait("the stations", ready)
	view(p, "/fields")
	p.Type("#field-name", "North slope")
	p.Click("#field-keep")
	p.WaitText("#fields-told", "Kept as “North slope”")
	view(p, "/")
	p.Choose("#f-crop", "okra")
	view(p, "/fields")
	p.Type("#field-name", "Creek side")
	p.Click("#field-keep")
	p.WaitText("#fields-told", "2 fields")
	kept := browsertest.Eval[string](p, `localStorage.getItem("film-furrow/fields")`)

	for name, text := range map[string]string{
		"cut": kept[:len(kept)/2], "empty": "", "words": "hello", "binary": "\x00\x01\x02", "a list": "[]", "null": "null", "a number": "7",
		"no version": `{"fields":[]}`, "newer": `{"version":9,"fields":[]}`, "no fields": `{"version":1,"fields":[]}`, "two": kept + kept,
		"a strange key": `{"version":1,"fields":[],"x":1}`, "fields a word": `{"version":1,"fields":"x"}`, "no name": `{"version":1,"fields":[{"case":{}}]}`,
		"no case": `{"version":1,"fields":[{"name":"a"}]}`, "case a word": `{"version":1,"fields":[{"name":"a","case":"x"}]}`,
		"wrong crop": `{"version":1,"fields":[{"name":"a","case":{"crop":"tomatoe"}}]}`, "wrong day": `{"version":1,"fields":[{"name":"a","case":{"crop":"tomato","plant_on":"2027-02-31"}}]}`,
		"markup": `<script>alert(1)</script>`, "deep": `{"version":1,"fields":[{"name":"a","case":{"soil":{"soil":{"soil":{"soil":{"soil":{"soil":{}}}}}}}}]}`,
		"half a list": `{"version":1,"fields":[{"name":"a"`,
	} {
		give(t, p, name, text)
		p.WaitText("#fields-told", "Nothing was changed: “"+name+"” is not right.")
		assert.Equal(t, kept, browsertest.Eval[string](p, `localStorage.getItem("film-furrow/fields")`), name)
	}

	p.Reload()
	p.WaitWhole()
	p.WaitText("#fields", "North slope")
	p.Click(`#fields [aria-label="Open it: North slope"]`)
	view(p, "/")
	p.Wait("its crop", `document.querySelector("#f-crop").value === "bell-pepper"`)
	view(p, "/fields")
	give(t, p, "neighbour.json", `{"version":1,"fields":[{"name":"From a neighbour","case":{"crop":"kale","plant_on":"2027-04-10","place":{"station":"USC00072730"}}}]}`)
	p.WaitText("#fields-told", "Opened from the file: 1 field.")
	p.Click(`#fields [aria-label="Open it: From a neighbour"]`)
	view(p, "/")
	p.WaitText("#place-open", "Dover")
	// What was in hand before can be come back to, step by step, over a reload too.
	p.Reload()
	p.WaitWhole()
	p.Click("#take-back")
	p.Wait("the field before", `document.querySelector("#f-crop").value === "bell-pepper"`)
}

func TestAFullStoreIsSaidAndSurvived(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.Wait("the stations", ready)
	p.Do(`Storage.prototype.setItem = function () { throw new DOMException("full", "QuotaExceededError") }`)
	p.Choose("#f-crop", "okra")
	p.WaitText(".notes", "does not keep what you type")
	p.WaitText("#verdict h1", "film")
	view(p, "/fields")
	p.Type("#field-name", "North slope")
	p.Click("#field-keep")
	p.WaitText("#fields-told", "no room")
	view(p, "/")
	p.Choose("#f-crop", "kale")
	p.Wait("the page to work on", `document.querySelector("#f-crop").value === "kale"`)
}

// What cannot be read is set aside, said in words and handed out; the page works.
func TestADamagedStoreIsSaidAndSurvived(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Before: `if (!sessionStorage.getItem("once")) { sessionStorage.setItem("once", "1"); localStorage.setItem("film-furrow/field", "{broken"); localStorage.setItem("film-furrow/fields", "[1,2"); }`})
	p.Wait("the stations", ready)
	p.WaitText("#verdict h1", "film")
	view(p, "/fields")
	p.WaitText("#fields", "cannot be read")
	p.Type("#field-name", "North slope")
	p.Click("#field-keep")
	p.WaitText("#fields-told", "nothing was changed")
	assert.Equal(t, "[1,2", browsertest.Eval[string](p, `localStorage.getItem("film-furrow/fields")`))
	view(p, "/")
	p.Choose("#f-crop", "okra")
	p.Wait("the field to be kept", `(localStorage.getItem("film-furrow/field") ?? "").includes("okra")`)
	assert.Equal(t, "{broken", browsertest.Eval[string](p, `localStorage.getItem("film-furrow/unread")`), "the damaged field is set aside, not lost")
	view(p, "/fields")
	assert.True(t, p.Visible("#fields-unread"))
	view(p, "/")
	p.Reload()
	p.WaitReady()
	p.Wait("the crop", `document.querySelector("#f-crop").value === "okra"`)
}
