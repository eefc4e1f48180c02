//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
	"filmfurrow/wasm/browsertest"
)

// fillIn writes into one box as a grower would.
func fillIn(p *browsertest.Page, id, text string) {
	p.Do(`(() => { const e = document.querySelector("#` + id + `"); e.value = ` + "`" + text + "`" + `; e.dispatchEvent(new Event("input", { bubbles: true })); })()`)
}

// settableClock makes the page's clock begin on the day that the test has left in the browser.
const settableClock = `{ const right = Date, off = new right((localStorage.getItem("test/day") ?? "2027-03-14") + "T08:00") - right.now();
	globalThis.Date = class extends right { constructor(...a) { if (a.length) super(...a); else super(right.now() + off); } static now() { return right.now() + off; } }; }`

// soilAt is a day of the log with a soil temperature, as it is typed.
func soilAt(on unit.Date, text string) field.DayRow {
	values, _ := field.ReadList(text, field.DaySoil, unit.US)
	row := field.DayRow{On: on}
	row.Values[field.DaySoil] = unit.Known(values[0])
	return row
}

// A whole invented season on one grower's device, by a clock that is set on: from ordering to the
// trial's result. Plan opens on what each day asks; bad entries get sentences and nothing is
// lost; the thermometer moves the dates; days of weather, runs and readings move the minutes; the
// log is told beside the plan; all of it is there on the next day, and opens next year's field.
func TestAWholeSeason(t *testing.T) {
	t.Parallel()
	farm, err := os.ReadFile("../testdata/cases/pepper-cloddy-spring.json")
	require.NoError(t, err)
	places, err := normals.Embedded()
	require.NoError(t, err)
	c, err := casefile.Decode(farm, places)
	require.NoError(t, err)
	c.Soil.Tilth, c.Soil.Texture = "", "loam"
	c.Practice.People, c.Practice.Tractor = unit.Known(3.0), unit.Known(unit.Kilowatts(45))
	a, err := rules.Advise(c)
	require.NoError(t, err)
	water := a.WaterPlan()
	list := a.Shopping(&water)
	lay, plant, lift := a.WaitPlan.LayOn, a.WaitPlan.PlantOn, a.LastWater(&list).Plus(8)

	kept, err := json.Marshal(map[string]any{"schema": 2, "case": string(casefile.Encode(&c)), "system": 1, "typed": map[string]string{}})
	require.NoError(t, err)
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: settableClock})
	assert.False(t, p.Visible("#verdict .now"), "the example is nobody's season")
	p.Do(`localStorage.setItem("film-furrow/field", ` + quoted(string(kept)) + `)`)
	on := func(day unit.Date, path string) {
		p.Do(fmt.Sprintf(`localStorage.setItem("test/day", %q)`, day.String()))
		p.Go(path)
		p.WaitWhole()
	}
	wide := func() {
		assert.LessOrEqual(t, browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"), 0)
	}
	// What the day asks stands large above the verdict, and leads to its view; the plan is one screen.
	asks := func(day unit.Date, says, path string) {
		on(day, "/")
		p.Wait("what the season asks", `document.querySelector("#verdict .now") !== null`)
		assert.Regexp(t, says, p.Text("#verdict .now"))
		for _, size := range []struct {
			wide, tall int
			screens    float64
		}{{820, 1180, 1}, {1280, 800, 1}, {1920, 1080, 1}, {390, 844, 2}} {
			p.Resize(size.wide, size.tall)
			place := browsertest.Eval[[]float64](p, `[document.querySelector("#verdict .now").getBoundingClientRect().bottom - document.querySelector("#verdict h1").getBoundingClientRect().top,
				document.querySelector("#verdict").getBoundingClientRect().bottom / innerHeight, document.documentElement.scrollHeight / innerHeight]`)
			assert.LessOrEqual(t, place[0], 1.0, "above the verdict")
			assert.LessOrEqual(t, place[1], 1.0)
			assert.LessOrEqual(t, place[2], size.screens, "%s at %d × %d", day, size.wide, size.tall)
		}
		p.Resize(820, 1180)
		p.Click("#verdict .now a")
		p.Wait("its view", fmt.Sprintf(`location.pathname === %q`, path))
		p.WaitDrawn()
	}
	enter := func(tap, day, amount string) {
		p.Wait("the log", `document.querySelector("#season-log summary") !== null`)
		p.Do(`document.querySelector("#season-log").open = true`)
		p.Click("#tap-log-what-" + tap)
		p.Wait("the tap", `document.querySelector("#tap-log-what-`+tap+`").getAttribute("aria-pressed") === "true"`)
		fillIn(p, "log-day", day)
		if amount != "" {
			fillIn(p, "log-amount", amount)
		}
		p.Click("#log-take")
	}

	// 1. Ordering.
	asks(lay.Plus(-55), `^Lay in 55 days$`, "/lay")
	view(p, "/buy")
	p.WaitText("#shopping", "Rolls of film")
	p.WaitText("#shopping", "Plants")
	p.Screenshot("season-1-order")

	// 2. The thermometer in open ground is colder than the curve: planting moves.
	on(lay.Plus(-4), "/year")
	before := p.Text("#season .steps")
	enter("7", lay.Plus(-4).String(), "900")
	p.WaitText("#log-errors", `"900" is not allowed`)
	assert.Equal(t, before, p.Text("#season .steps"))
	enter("7", lay.Plus(-4).String(), "47")
	p.WaitText("#log-says", "Your thermometer read 47 °F")
	p.WaitText("#log-says", "By it the bed holds")
	assert.NotEqual(t, before, p.Text("#season .steps"), "the dates moved")
	p.Screenshot("season-2-thermometer")
	p.Click("#take-back")
	p.Wait("the dates as they were", fmt.Sprintf(`document.querySelector("#season .steps").innerText === %s`, quoted(before)))
	enter("7", lay.Plus(-4).String(), "56")
	p.WaitText("#log-says", "Your thermometer read 56 °F")

	// 3. The laying day.
	on(lay, "/lay")
	p.Click("#tap-day-ball-breaks")
	p.Click("#tap-day-hand-outline")
	p.Type("#f-day-wind-m-s", "4")
	p.Type("#f-day-rolls", "9")
	p.Type("#f-day-people", "3")
	tickAll(p)
	p.Wait("ready", `document.querySelector("#laying-day .state").textContent === "Yes, lay today."`)
	p.Screenshot("season-3-lay")

	// 4. Planting: how it is done, which is fetched when it is unfolded, as the command line says it.
	on(plant, "/year")
	p.Do(`document.querySelector("#after-laying").open = true`)
	p.WaitText("#after-laying", "Punch ")
	told := p.Text("#after-laying")
	c = c.WithDays(field.DaysOf([]field.DayRow{soilAt(lay.Plus(-4), "56")}), lay, a.Facts.Film.Key())
	again, err := rules.Advise(c)
	require.NoError(t, err)
	water = again.WaterPlan()
	list = again.Shopping(&water)
	for _, line := range again.After(&list) {
		assert.Contains(t, told, line.Says.In(unit.US), "the command line says so")
	}
	assert.Empty(t, p.Axe())
	enter("0", plant.String(), "")
	p.WaitText("#log-told", "Written down: planted")
	p.Do(`document.querySelector("#season-log").open = false; document.querySelector("#after-laying").scrollIntoView()`)
	p.Screenshot("season-4-planting")

	// 5. The weeks in between: rows with bad figures, then good ones; a pasted sheet of another year and
	// one with words; a reading.
	today := plant.Plus(60)
	asks(today, `^Water \d+ min today$`, "/water")
	p.WaitText("#week-says", "It begins full on the morning of")
	usual := p.Text("#week-today")
	p.Do(`document.querySelector("#week-form").open = true`)
	p.Wait("a week before today", fmt.Sprintf(`document.querySelector("#week-first").value === %q`, today.Plus(-7).String()))
	fillIn(p, "week-highs", "92 95 900 warm 99 99 98 95 94 96 97 99 99 98")
	fillIn(p, "week-lows", "70 72 73 74 74 74 73")
	p.Click("#week-take")
	p.WaitText("#week-errors", `"900" is not allowed. Allowed: −76 to 140 °F.`)
	p.WaitText("#week-errors", `"warm" is not allowed`)
	assert.Equal(t, usual, p.Text("#week-today"))
	assert.Contains(t, browsertest.Eval[string](p, `document.querySelector("#week-highs").value`), "900 warm", "what was typed stands")
	fillIn(p, "week-highs", "92 95 97 98 99 99 98 95 94 96 97 99 99 98")
	p.Click("#week-take")
	p.WaitText("#week-errors", "14 highs and 7 lows")
	fillIn(p, "week-lows", "70\n72\n73\n74\n74\n74\n73\n72\n71\n72\n73\n74\n74\n73\n")
	fillIn(p, "week-runs", "60 0 0 150 60 60 60")
	p.Click("#week-take")
	p.WaitText("#week-kept", "16 days written down")
	p.WaitText("#week-says", "more than in usual weather")
	p.WaitText("#week-says", "that is its mean in usual weather")
	p.WaitText("#week-table", "72 °F – 95 °F")
	assert.NotEqual(t, usual, p.Text("#week-today"))
	assert.Empty(t, browsertest.Eval[string](p, `document.querySelector("#week-highs").value`))
	p.Do(`document.querySelector("#week-form").open = false`)
	assert.Len(t, regexp.MustCompile(`/Type\s*/Page[^s]`).FindAll(p.PrintLetter("print-week-letter"), -1), 1, "the week prints on one page")
	p.Screenshot("season-5-week")
	p.Do(`document.querySelector("#week-form").open = true`)
	for _, bad := range []struct{ sheet, says string }{
		{fmt.Sprintf("date high low\n%s 99 74\n", today.Plus(-365)), "not of this field’s season"},
		{fmt.Sprintf("date high low\n%s hot 74\n", today), `"hot" is not allowed`},
		{fmt.Sprintf("date high low\n%s 99 74\n%s 98 73\n", today, today.Plus(-1)), "Put the days in order."},
	} {
		fillIn(p, "week-sheet", bad.sheet)
		p.Click("#week-take")
		p.WaitText("#week-errors", bad.says)
		p.WaitText("#week-kept", "16 days written down")
	}
	fillIn(p, "week-sheet", "")
	p.Click("#tap-feel-4")
	p.Wait("the tap", `document.querySelector("#tap-feel-4").getAttribute("aria-pressed") === "true"`)
	p.Click("#week-take")
	p.WaitText("#week-says", "About 100% of the water for roots is left this morning")
	p.WaitText("#week-says", "The soil counts.")
	p.Resize(390, 844)
	wide()
	view(p, "/share")
	p.WaitText("#share", "Take the days along")
	require.Equal(t, "false", browsertest.Eval[string](p, `document.querySelector("#tap-share-days").getAttribute("aria-pressed")`))
	p.Click("#tap-share-days")
	p.Wait("the tick", `document.querySelector("#tap-share-days").getAttribute("aria-pressed") === "true"`)
	p.Resize(820, 1180)

	// 6. Picking.
	picked := plant.Plus(71)
	on(picked, "/year")
	enter("2", picked.String(), "ten")
	p.WaitText("#log-errors", `"ten" is not allowed`)
	assert.Equal(t, "ten", browsertest.Eval[string](p, `document.querySelector("#log-amount").value`))
	enter("2", picked.Plus(366).String(), "14")
	p.WaitText("#log-errors", "not of this field’s season")
	enter("2", picked.String(), "14")
	p.WaitText("#log-table", "71 days after planting")
	enter("6", picked.String(), "5")
	p.WaitText("#log-table", "Film torn or gone")
	p.WaitText("#log-says", "First picked 71 days after planting; lists say about")
	p.Do(`document.querySelector("#season-log").scrollIntoView()`)
	p.Screenshot("season-6-picking")
	p.Resize(390, 844)
	wide()
	p.Resize(820, 1180)

	// Every day from ordering to lifting, by the day picker: each stands among the dates.
	days := browsertest.Eval[[]string](p, fmt.Sprintf(`(async () => { const bad = [];
		for (let at = Date.parse(%q); at <= Date.parse(%q); at += 864e5) {
			const day = new Date(at).toISOString().slice(0, 10), box = document.querySelector("#year-day");
			box.value = day; box.dispatchEvent(new Event("change", { bubbles: true }));
			const says = "Today, " + new Date(at).toLocaleDateString("en-US", { month: "long", day: "numeric", timeZone: "UTC" }) + ".";
			for (let turns = 0; !document.querySelector("#today")?.innerText.startsWith(says); turns++) {
				if (turns === 100) { bad.push(day + ": " + document.querySelector("#today")?.innerText); break; }
				await new Promise((done) => setTimeout(done));
			}
		} return bad; })()`, lay.Plus(-55).String(), lift.String()))
	assert.Empty(t, days)

	// 7. Lifting, and what the trial showed.
	asks(lift, `^Lift from [A-Z][a-z]+ \d+ on$`, "/year")
	enter("8", lift.String(), "")
	p.WaitText("#log-table", "Film lifted")
	view(p, "/trial")
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
	p.Screenshot("season-7-trial")
	p.Reload()
	p.Wait("the tally", `[...document.querySelectorAll("#trial tbody input")].length > 0 && [...document.querySelectorAll("#trial tbody input")].every((box) => box.value !== "")`)
	p.Do(`(() => { const box = document.querySelector("#trial tbody input"); box.value = "many"; box.dispatchEvent(new Event("input", { bubbles: true })); })()`)
	p.Click("#trial-read")
	p.WaitText("#trial-told", "“many” is not a number")
	p.Resize(390, 844)
	wide()

	// Next year's field begins with what the log taught.
	on(lift.Plus(2), "/year")
	p.Wait("the log", `document.querySelector("#log-table") !== null`)
	p.Do(`document.querySelector("#season-log").open = true`)
	p.Click("#log-next")
	p.WaitText("#learned", "Last season 95% of the film came up whole")
	p.Wait("a year later", `document.querySelector("#log-table") === null`)
}
