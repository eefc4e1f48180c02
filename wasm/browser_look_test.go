//go:build !js

package main

import (
	"fmt"
	"testing"

	"filmfurrow/wasm/browsertest"
)

// The page is looked at in three widths; pictures are kept only on request.
func TestThePageFitsThreeWidths(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, width := range []int{390, 820, 1920} {
		p := b.Whole(width, "/")
		p.WaitText("#verdict", "film")
		if sideways := browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"); sideways > 0 {
			t.Errorf("at %d px the page scrolls sideways by %d px", width, sideways)
		}
		p.Screenshot(map[int]string{390: "page-390", 820: "page-820", 1920: "page-1920"}[width])
		p.Close()
	}
}

// hour are the changes of an hour's use, view by view: what is typed, chosen, tapped and
// moved, units and languages, places near and far, and what takes them back.
var hour = []struct {
	path    string
	changes []string
}{
	{"/", []string{`choose("#f-crop", n)`, `choose("#f-soil-texture", n)`, `day("#f-plant-on", n)`, `choose("#f-weeds-pressure", n)`,
		`place(["ithaca", "fresno", "wellington", "98225"][n % 4])`, `tap("#take-back")`, `choose("#f-crop", 0)`}},
	{"/details", []string{`figure("field.bed_length_m", 40 + n % 50)`, `figure("field.beds", 3 + n % 9)`, `figure("water.flow_l_h", 10 + n % 20)`, `choose("[name='practice.laying']", n)`, `choose("[name='risk']", n)`}},
	{"/why/film", []string{`slide("#strip-day", n)`, `tap("#units-metric")`, `tap("#units-US")`, `slide("#strip-day", 30)`}},
	{"/water", []string{`day("#water-day", n)`, `tap(".squeeze .tap")`}},
	{"/lay", []string{`tap(".tap")`, `tap("#sheet-es")`, `tap("#sheet-en")`}},
	{"/year", []string{`day("#year-day", n)`}},
	{"/fields", []string{`choose("#compare select", n)`}},
	{"/trial", []string{`tap("#trial .tap:nth-child(3)")`}},
	{"/buy", []string{`tap("#take-back")`}},
}

const hourHands = `window.hands ??= (() => {
	const rest = () => new Promise((r) => setTimeout(r, 60));
	const give = async (e, value, ...kinds) => { e.value = value; for (const kind of kinds) e.dispatchEvent(new Event(kind, { bubbles: true })); await rest(); return 1; };
	const one = (what) => document.querySelector(what);
	return {
		choose: (what, n) => { const e = one(what); if (!e) return 0; const list = [...e.options].filter((o) => o.value); return give(e, list[n % list.length].value, "change"); },
		day: (what, n) => one(what) ? give(one(what), "2027-0" + (4 + n % 4) + "-1" + n % 10, "change") : 0,
		figure: (name, n) => give(one("[name='" + name + "']"), String(n), "input", "change"),
		slide: (what, n) => { const e = one(what); return e ? give(e, String(Number(e.min) + 20 + n % 90), "input", "change") : 0; },
		tap: async (what) => { const e = one(what); e?.click(); await rest(); return e ? 1 : 0; },
		place: async (words) => {
			if (document.querySelector("#place").hidden) document.querySelector("#place-open").click();
			await rest();
			await give(one("#f-place"), words, "input");
			for (let i = 0; i < 100 && !one("#place-list .result"); i++) await rest();
			const found = one("#place-list .result");
			found?.click();
			await rest();
			return found ? 1 : 0;
		},
	};
})()`

// BenchmarkAnHoursUse makes some five hundred changes of all kinds in all views, and tells
// how large the program's memory has grown. It never shrinks, so the last figure is the most;
// what is kept of each view that was left would show as growth that does not end.
func BenchmarkAnHoursUse(b *testing.B) {
	reader := browsertest.OpenKeeping(b)
	p := reader.Whole(820, "/")
	p.WaitOffline()
	for range b.N {
		mounted, made := browsertest.Eval[float64](p, `filmfurrow.memory()`), 0
		var after []float64
		for n := range 22 {
			for _, v := range hour {
				view(p, v.path)
				p.Do(hourHands)
				for k, change := range v.changes {
					made += browsertest.Eval[int](p, fmt.Sprintf(`(async () => { const n = %d, { choose, day, figure, slide, tap, place } = window.hands; return await %s; })()`, 7*n+3*k, change))
				}
				p.WaitDrawn()
			}
			after = append(after, browsertest.Eval[float64](p, `filmfurrow.memory()`))
		}
		b.Logf("memory: mounted %.0f, after %d changes %.0f bytes (round by round: %.0f)", mounted, made, after[len(after)-1], after)
		if grown := after[len(after)-1] - after[len(after)/2]; grown > 8<<20 {
			b.Errorf("the second half of the hour took %.0f bytes more", grown)
		}
		b.ReportMetric(float64(made), "changes")
		b.ReportMetric(mounted, "B-mounted")
		b.ReportMetric(after[len(after)-1], "B-hour")
	}
	b.ReportMetric(0, "ns/op")
}
