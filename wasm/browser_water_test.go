//go:build !js

package main

import (
	"bytes"
	"fmt"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

// The water plan at three widths: it says first whether it fits, agrees with
// the answer card, and no part of it makes the page scroll sideways.
func TestWaterPlanAtThreeWidths(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, width := range []int{390, 820, 1920} {
		p := b.Whole(width, "/")
		told := regexp.MustCompile(`[\d,]+ min`).FindAllString(p.Text("#water .number"), -1)
		require.NotEmpty(t, told)
		minutes := told[len(told)-1] // at full leaf
		view(p, "/water")
		p.Do(`document.querySelector("#water-whole").open = true`)
		p.WaitText("#water-plan .number", "It fits")
		assert.LessOrEqual(t, browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"), 0, "%d px", width)
		p.WaitText("#water-schedule", minutes) // Plan and Water
		assert.Equal(t, 2, browsertest.Eval[int](p, `document.querySelectorAll("#water-plan svg[role=img][aria-label]").length`))
		small := browsertest.Eval[string](p, `[...document.querySelectorAll("#water-plan a, #water-plan button, #water-plan summary")].filter(e => e.checkVisibility() && e.matches("button, summary") && e.getBoundingClientRect().height < 48).map(e => e.innerText).join()`)
		assert.Empty(t, small, "targets below 48 px")
		p.Screenshot(fmt.Sprintf("water-%d", width))
		p.Close()
	}
}

// A source that cannot keep up is said in words first, with three computed ways
// out; and the verdict above says the same.
func TestWaterThatDoesNotFit(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(390, "/details")
	p.Do(`document.querySelector("#more-water").open = true`)
	p.Do(`document.querySelector("#more-field").open = true`)
	p.Type("#f-field-beds", "60")
	p.Type("#f-water-hours-per-day", "2")
	view(p, "/water")
	p.WaitText("#water-plan .number", "It does not fit:") // unfolded by itself
	assert.Equal(t, 3, browsertest.Eval[int](p, `document.querySelectorAll("#water-plan .ways li").length`))
	p.Screenshot("water-not-390")
	view(p, "/")
	p.WaitText("#water", "It does not fit")
}

// The bucket test fills the flow, which is kept over a reload like all else
// that was typed; without a flow nothing is invented.
func TestBucketFillsTheFlow(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Do(`document.querySelector("#more-water").open = true`)
	p.Type("#f-water-flow-l-h", " ")
	view(p, "/water")
	p.Do(unfold)
	p.WaitText("#water-plan .number", "Not settled yet")
	p.WaitText("#water-plan .water-missing", "bucket test")
	assert.NotContains(t, p.Text("#water-schedule"), "Zone 1")
	p.Click(`#water-missing a[href$="#f-water-flow-l-h"]`)
	p.Wait("the link to open the field that is missing", `document.activeElement.id === "f-water-flow-l-h" && document.querySelector("#more-water").open`)
	p.Type("#bucket-volume", "5")
	p.Type("#bucket-seconds", "0")
	p.Click("#bucket-use")
	p.WaitText("#bucket-says", "above 0")
	p.Type("#bucket-seconds", "20")
	p.Click("#bucket-use")
	p.WaitText("#bucket-says", "15 gpm")
	assert.Equal(t, "15", browsertest.Eval[string](p, `document.querySelector("#f-water-flow-l-h").value`))
	p.Do(`document.querySelector("#more-feed").open = true`)
	for field, text := range map[string]string{"rate-kg-ha-day": "1", "grade-percent": "20", "stock-kg-l": "1", "injector-ratio": "100", "bleach-percent": "5.25", "chlorine-mg-l": "1"} {
		p.Type("#f-feed-"+field, text)
	}
	view(p, "/water")
	p.Do(unfold)
	p.WaitText("#water-plan .number", "It fits")
	p.WaitText("#water-feeding", "Inject, largest zone")
	p.WaitText("#water-chlorine", "Never bring chlorine and acid together")
	p.WaitText("#water-feeding", "Last word: local plumbing code")
	p.Reload()
	p.WaitWhole()
	p.Do(unfold)
	p.WaitText("#water-feeding", "Inject, largest zone")
	// Metric shows the same plan.
	p.Do(`document.querySelector("#menu").open = true`)
	p.Click("#units-metric")
	p.Do(`document.querySelector("#menu").open = false`)
	p.WaitText("#water-schedule", "L/h")
	p.Do(`document.querySelectorAll("#water-plan details").forEach((d) => { d.open = true })`)
	p.WaitText("#water-step-gross", "L per 100 m")
	p.Screenshot("water-feeding-820")
}

// The section prints on one sheet of its own, in type that can be read: on one
// side for an ordinary farm with its water tested, on front and back where all
// there is to say is said (a pond, 60 beds, three ways out, feeding, chlorine).
func TestWaterPlanPrintsOnOneSheet(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/water")
	p.Do(`document.querySelector("#water-whole").open = true`)
	sheet := func(name string, most int) {
		p.Do(`(() => { window.apart = []; for (let e = document.querySelector("#water-plan"); e !== document.body; e = e.parentElement) for (const other of [...e.parentElement.children]) if (other !== e) { window.apart.push([other, other.hidden]); other.hidden = true; } })()`)
		for _, paper := range []string{"A4", "letter"} {
			p.Do(fmt.Sprintf(`(() => { const s = new CSSStyleSheet(); s.replaceSync("@page water { size: %s; margin: 6.5mm; }"); document.adoptedStyleSheets = [s]; })()`, paper))
			pdf := p.PrintPDF(name + "-" + paper)
			assert.True(t, bytes.HasPrefix(pdf, []byte("%PDF")))
			pages := len(regexp.MustCompile(`/Type\s*/Page[^s]`).FindAll(pdf, -1))
			assert.LessOrEqual(t, pages, most, "%s on %s", name, paper)
		}
		p.Media("print")
		small := browsertest.Eval[string](p, `[...document.querySelectorAll("#water-plan *")].filter((e) => e.checkVisibility() && [...e.childNodes].some((n) => n.nodeType === 3 && n.data.trim())).map((e) => [parseFloat(getComputedStyle(e).fontSize) * (e.getScreenCTM?.().a ?? 1) * 0.75, e.textContent]).filter(([points]) => points < 7.95).map(String).join("; ")`)
		p.Media("")
		assert.Empty(t, small, "%s: type below 8 pt", name)
		p.Do(`for (const [e, was] of window.apart) e.hidden = was`)
	}
	p.WaitText("#water-plan .number", "It fits")
	sheet("water-example", 1)
	more := func() {
		view(p, "/details")
		p.Do(unfold)
	}
	back := func() {
		view(p, "/water")
		p.Do(`document.querySelector("#water-whole").open = true`)
	}
	more()
	for field, text := range map[string]string{"#f-water-lift-m": "20", "#f-water-ec-ds-m": "1.2", "#f-water-ph": "7.8", "#f-water-iron-mg-l": "0.5", "#f-water-hardness-mg-l": "200",
		"#f-water-nitrate-mg-l": "5"} {
		p.Type(field, text)
	}
	back()
	p.WaitText("#water-quality", "Yield expected")
	sheet("water-tested", 1)
	more()
	p.Type("#f-water-hours-per-day", "2")
	p.Choose("#f-water-source", "pond")
	p.Type("#f-field-beds", "60")
	for field, text := range map[string]string{"rate-kg-ha-day": "1", "grade-percent": "20", "stock-kg-l": "1", "injector-ratio": "100", "bleach-percent": "5.25", "chlorine-mg-l": "1"} {
		p.Type("#f-feed-"+field, text)
	}
	back()
	p.WaitText("#water-chlorine", "Inject into the largest zone")
	p.WaitText("#water-plan .number", "It does not fit")
	sheet("water-all", 2)
}
