//go:build !js

package main

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

// typeWeek writes into one box of the days as a grower would, a row at a time.
func typeWeek(p *browsertest.Page, id, text string) {
	p.Do(`(() => { const e = document.querySelector("#` + id + `"); e.value = ` + "`" + text + "`" + `; e.dispatchEvent(new Event("input", { bubbles: true })); })()`)
}

// Last week and the forecast, typed in rows: bad figures get sentences and nothing is
// lost; good ones move today's minutes; a reading counts for more than the account; the
// days are there after a reload, and go into a link only when asked.
func TestThisWeekFromDaysThatAreWrittenDown(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/water")
	p.Do(`(() => { const d = document.querySelector("#water-day"); d.value = "2027-07-24"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	p.WaitText("#week-says", "It begins full on the morning of July 24, 2027")
	usual := p.Text("#week-today")
	p.Do(`document.querySelector("#week-form").open = true`)
	p.Wait("a week before today", `document.querySelector("#week-first").value === "2027-07-17"`)

	typeWeek(p, "week-highs", "92 95 900 warm 99 99 98 95 94 96 97 99 99 98")
	typeWeek(p, "week-lows", "70 72 73 74 74 74 73")
	p.Click("#week-take")
	p.WaitText("#week-errors", "High of the day, figure 3")
	p.WaitText("#week-errors", `"900" is not allowed. Allowed: −76 to 140 °F.`)
	p.WaitText("#week-errors", `"warm" is not allowed`)
	assert.Equal(t, usual, p.Text("#week-today"))
	assert.Contains(t, browsertest.Eval[string](p, `document.querySelector("#week-highs").value`), "900 warm", "what was typed stands")
	assert.Contains(t, p.Text("#week-kept"), "No days are written down yet")

	typeWeek(p, "week-highs", "92 95 97 98 99 99 98 95 94 96 97 99 99 98")
	p.Click("#week-take")
	p.WaitText("#week-errors", "14 highs and 7 lows")
	typeWeek(p, "week-lows", "70\n72\n73\n74\n74\n74\n73\n72\n71\n72\n73\n74\n74\n73\n")
	typeWeek(p, "week-runs", "60 0 0 150 60 60 60")
	p.Click("#week-take")
	p.WaitText("#week-kept", "14 days written down")
	p.WaitText("#week-says", "more than in usual weather")
	p.WaitText("#week-table", "72 °F – 95 °F")
	assert.NotEqual(t, usual, p.Text("#week-today"))
	assert.Empty(t, browsertest.Eval[string](p, `document.querySelector("#week-highs").value`))
	p.Screenshot("week-820")
	p.Do(`document.querySelector("#week-form").open = false`)
	assert.Len(t, regexp.MustCompile(`/Type\s*/Page[^s]`).FindAll(p.PrintLetter("print-week-letter"), -1), 1, "the week prints on one page")

	p.Do(`document.querySelector("#week-form").open = true`)
	typeWeek(p, "week-sheet", "date high low\n2026-07-24 99 74\n")
	p.Click("#week-take")
	p.WaitText("#week-errors", "not of this field’s season")
	typeWeek(p, "week-sheet", "")
	p.Click("#tap-feel-1")
	p.Wait("the tap", `document.querySelector("#tap-feel-1").getAttribute("aria-pressed") === "true"`)
	p.Click("#week-take")
	p.WaitText("#week-says", "About 38% of the water for roots is left this morning")
	p.WaitText("#week-says", "The soil counts.")

	p.Reload()
	p.Wait("the form", `document.querySelector("#week-form") !== null`)
	p.Do(`document.querySelector("#week-form").open = true`)
	p.WaitText("#week-kept", "14 days written down")
	p.Resize(390, 844)
	assert.LessOrEqual(t, browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"), 0)
	p.Screenshot("week-390")

	view(p, "/share")
	p.WaitText("#share", "Take the days along")
	require.Equal(t, "false", browsertest.Eval[string](p, `document.querySelector("#tap-share-days").getAttribute("aria-pressed")`))
	p.Click("#tap-share-days")
	p.Wait("the tick", `document.querySelector("#tap-share-days").getAttribute("aria-pressed") === "true"`)
}

// The season's log: an entry is one tap and one figure; a wrong one gets a sentence and
// stands; what it came to is told beside the plan; next year's field opens with it, and all
// can be taken back.
func TestTheSeasonIsLogged(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/year")
	p.Wait("the log", `document.querySelector("#season-log summary") !== null`)
	p.Do(`document.querySelector("#season-log").open = true`)
	enter := func(tap, day, amount string) {
		p.Click("#tap-log-what-" + tap)
		p.Wait("the tap", `document.querySelector("#tap-log-what-`+tap+`").getAttribute("aria-pressed") === "true"`)
		typeWeek(p, "log-day", day)
		if amount != "" {
			typeWeek(p, "log-amount", amount)
		}
		p.Click("#log-take")
	}
	enter("0", "2027-07-01", "")
	p.WaitText("#log-told", "Written down: planted")
	enter("2", "2027-09-10", "ten")
	p.WaitText("#log-errors", `"ten" is not allowed`)
	assert.Equal(t, "ten", browsertest.Eval[string](p, `document.querySelector("#log-amount").value`))
	enter("2", "2028-09-10", "14")
	p.WaitText("#log-errors", "not of this field’s season")
	enter("2", "2027-09-10", "14")
	p.WaitText("#log-table", "September 10, 71 days after planting")
	enter("6", "2027-09-10", "5")
	p.WaitText("#log-table", "Film torn or gone")
	p.WaitText("#log-says", "First picked 71 days after planting; lists say about")
	p.Screenshot("log-820")
	p.Resize(390, 844)
	assert.LessOrEqual(t, browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"), 0)
	p.Screenshot("log-390")

	p.Reload()
	p.Wait("the log", `document.querySelector("#log-table") !== null`)
	p.Do(`document.querySelector("#season-log").open = true`)
	p.Click("#log-next")
	p.WaitText("#learned", "Last season 95% of the film came up whole")
	p.Wait("a year later", `document.querySelector("#log-table") === null`)
}
