//go:build !js

package main

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/wasm/browsertest"
)

// A trial in the page: films are ticked, the plan is dealt out anew, and the tally says what
// was learned; figures stand over a reload, and one that is none gets a sentence.
func TestATrialInThePage(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/trial")
	p.WaitText("#trial-says", "four times in five")
	p.Click("#trial-read")
	p.WaitText("#trial-told", "Fill in two whole blocks at least")
	p.Click("#tap-trial-film-silver-on-black")
	p.WaitText("#trial table", "silver-on-black film")
	p.Do(`[...document.querySelectorAll("#trial tbody tr")].forEach((row, i) => {
		const box = row.querySelector("input");
		box.value = String(50 + 2 * Number(row.cells[0].innerText) + (row.cells[2].innerText.startsWith("silver") ? 12 : 0) + [0, 1, 1][i % 3]);
		box.dispatchEvent(new Event("input", { bubbles: true }));
	})`)
	p.Click("#trial-read")
	p.WaitText("#trial-told", "A difference was shown.")
	p.WaitText("#trial-told", "Silver-on-black film gave ")
	p.WaitText("#trial-told", "this field, this crop and this year")
	p.Screenshot("trial-820")
	p.Reload()
	p.Wait("the tally", `[...document.querySelectorAll("#trial tbody input")].length > 0 && [...document.querySelectorAll("#trial tbody input")].every((box) => box.value !== "")`)
	p.Do(`(() => { const box = document.querySelector("#trial tbody input"); box.value = "many"; box.dispatchEvent(new Event("input", { bubbles: true })); })()`)
	p.Click("#trial-read")
	p.WaitText("#trial-told", "“many” is not a number")
	p.Resize(390, 844)
	assert.LessOrEqual(t, browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"), 0)
}
