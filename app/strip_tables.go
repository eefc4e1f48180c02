package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// stripTables are the strip in figures. They have most of its words and most of its
// elements, so they are drawn after it, in a turn of their own.
type stripTables struct {
	app.Compo
	Strip *stripPart

	table string
	twin  string
}

// OnMount has the tables drawn after the strip, now and each time that it is drawn
// anew.
func (t *stripTables) OnMount(app.Context) {
	s := t.Strip.S
	s.follow(t, 0, func() {
		of := &t.Strip.drawn // a key may have come since
		t.table = stripTable(of.advice, t.Strip.curves, of.system)
		t.twin = stripTwin(t.Strip.curves, of.system)
		t.Update()
	})
	t.Strip.after = func() { s.soon(t) }
	t.Strip.after()
}

func (t *stripTables) OnDismount() {
	t.Strip.after = nil
	t.Strip.S.leave(t)
}

func (t *stripTables) Render() app.UI {
	if t.table == "" {
		return app.Div()
	}
	return app.Div().Body(
		app.Raw(t.table),
		app.Details().ID("strip-twin").Body(
			summary("The strip as a table, every seventh day"),
			app.Raw(t.twin),
		),
	)
}

// stripTable gives what each film brings, one line a film.
func stripTable(a *plan.Advice, s *facts.SoilSeason, system unit.System) string {
	f := a.Facts
	t := &svg{}
	t.raw(`<div class="table-scroll" tabindex="0" role="region" aria-label="What each film brings"><table class="strip-table" id="strip-table"><caption>Soil `, escape(unit.Of(unit.Short(s.Depth)).In(system)), ` deep</caption><thead><tr>`)
	for _, head := range []string{"Cover", "Mean on " + dayOfYear(f.Plant, system), "Under covers, " + temperature(f.CoverFloor(), system) + " from", "Warm enough, " + temperature(f.WorkFloor, system) + " from",
		"Above " + temperature(f.Ceiling, system) + " in 60 days", "Surface, hot day"} {
		t.raw(`<th scope="col">`, escape(head), `</th>`)
	}
	t.raw(`</tr></thead><tbody>`)
	for cover := range s.Marks {
		m := &s.Marks[cover]
		row, mark := "", ""
		if cover == f.ChosenCover() {
			row, mark = ` class="chosen"`, " (chosen)"
		}
		t.raw(`<tr`, row, `><th scope="row">`, escape(sentence(coverName(cover))+mark), `</th>`)
		safe := dateOr(m.Warm, "not this season", system)
		if m.Warm.Given && m.WarmSoonest.Given {
			latest := "later"
			if m.WarmLatest.Given {
				latest = dayOfYear(m.WarmLatest.Value, system)
			}
			safe += " (" + dayOfYear(m.WarmSoonest.Value, system) + " to " + latest + ")"
		}
		burns := ""
		if m.BurnsStems {
			burns = ", may burn stems"
		}
		for _, cell := range []string{
			temperature(m.Planting.Mean, system) + " (" + unit.KindTemperature.Figure(float64(m.Planting.BandLow), system) + " to " + unit.KindTemperature.Figure(float64(m.Planting.BandHigh), system) + ")",
			dateOr(m.Covers, "not this season", system), safe,
			overWords(m, "0 days") + ", " + strconv.Itoa(int(m.OverHours)) + " h",
			temperature(m.Surface, system) + burns,
		} {
			t.raw(`<td>`, escape(cell), `</td>`)
		}
		t.raw(`</tr>`)
	}
	t.raw(`</tbody></table></div>`)
	return t.b.String()
}

// stripTwin is the strip as a table: mean, lowest and highest of every seventh
// day for each cover.
func stripTwin(s *facts.SoilSeason, system unit.System) string {
	t := &svg{}
	figure := func(v unit.Celsius) string { return unit.KindTemperature.Figure(float64(v), system) }
	t.raw(`<div class="table-scroll" tabindex="0" role="region" aria-label="The strip as a table"><table class="strip-table"><caption>Soil `, escape(unit.Of(unit.Short(s.Depth)).In(system)),
		` deep: mean (lowest to highest) of the day, `, unit.KindTemperature.Symbol(system), `</caption><thead><tr><th scope="col">Day</th>`)
	for cover := range s.Days {
		t.raw(`<th scope="col">`, escape(sentence(coverLabel(cover))), `</th>`)
	}
	t.raw(`</tr></thead><tbody>`)
	for day := 0; day < len(s.Days[facts.Bare]); day += 7 {
		t.raw(`<tr><th scope="row">`, dayOfYear(s.From.Plus(unit.Days(day)), system), `</th>`)
		for cover := range s.Days {
			d := &s.Days[cover][day]
			t.raw(`<td>`, figure(d.Mean), ` <span>(`, figure(d.Low), ` to `, figure(d.High), `)</span></td>`)
		}
		t.raw(`</tr>`)
	}
	t.raw(`</tbody></table></div>`)
	return t.b.String()
}
