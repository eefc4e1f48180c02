package app

import (
	"math"
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// buyRoom is what to buy.
type buyRoom struct {
	app.Compo
	S *store
}

func (p *buyRoom) Render() app.UI { return &shoppingPart{S: p.S} }

// paperHead is the line above each sheet on paper: whose field, which crop, which days.
func (s *store) paperHead() app.UI {
	a := s.advice
	words := s.fieldName() + ": " + a.Facts.Crop.Name
	if a.Refused() {
		words += ", wanted for " + wholeDay(a.Facts.Wanted, s.system)
	} else if a.FilmDown() {
		words += ", film down, plant " + wholeDay(a.WaitPlan.PlantOn, s.system)
	} else {
		words += ", lay " + wholeDay(a.WaitPlan.LayOn, s.system) + ", plant " + wholeDay(a.WaitPlan.PlantOn, s.system) + s.beds()
	}
	if len(s.borrowed) > 0 {
		names, more := s.borrowedLabels(), ""
		if len(names) > paperNames+1 {
			more = " and " + strconv.Itoa(len(names)-paperNames) + " more, marked under “Details”"
			names = names[:paperNames]
		}
		words += ". Still from the example: " + strings.Join(names, ", ") + more
	}
	return para("paper-head", words)
}

// paperNames is how many names one line on paper holds.
const paperNames = 5

// notNow is what a view says where film is refused.
func (s *store) notNow(title, words string) app.UI {
	t := &svg{}
	t.raw(`<section class="verdict verdict-do_not_lay" id="not-now"><h1>`, title, `</h1><p>`, words, ` <a href="`, escape(s.way("/")), `">See what to do instead.</a></p></section>`)
	return app.Raw(t.b.String())
}

// printButton prints the view once all of it is drawn: what is on its way belongs on
// the paper.
func (s *store) printButton(id, words string) app.UI {
	return press(id, words, func() {
		s.lane.drawn = func() { app.Window().Call("print") }
		s.wakeIn(0)
	})
}

// yearRoom is the year's dates, as a list and as a calendar file, and the end of the film.
type yearRoom struct {
	app.Compo
	S *store
}

func (p *yearRoom) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *yearRoom) OnDismount()         { p.S.leave(p) }

func (p *yearRoom) Render() app.UI {
	s := p.S
	a, system := s.advice, s.system
	list, _ := s.shopping()
	steps := a.Season(&list)
	if len(steps) == 0 {
		return app.Section().ID("season").Class("sheet").Body(s.notNow("No dates yet.", "Film is not to be laid here, so nothing is to be done by a date."), s.paperHead(), s.yearPart())
	}
	title := "The year of this field"
	if a.Refused() {
		title = "The year without film"
	}
	end := a.EndOfFilm(&list)
	weight := ""
	if end.Least > 0 {
		weight = "Clean it weighs " + unit.Of(end.Clean).In(system) + ", lifted about " + end.Hauled().In(system) + ": soil and water cling to it (half of it in a US paper, up to nine tenths in the European standard)."
	}
	biodegradable := end.TilledIn.Text
	if biodegradable != "" {
		biodegradable = "Biodegradable film: " + biodegradable
	}
	return app.Section().ID("season").Class("sheet year").Body(
		s.paperHead(),
		box("view-head", app.H1().Text(title), box("buttons",
			button("season-ics", "Put in my calendar").OnClick(func(app.Context, app.Event) {
				saveFile("film-and-furrow-season.ics", "text/calendar", s.calendar())
			}),
			s.printButton("year-print", "Print"))),
		p.dayPicker(),
		app.Raw(p.steps(steps)),
		app.Raw(`<p class="crumb"><a href="`+rooted("/trouble")+`">Something looks wrong</a></p>`),
		only2(!a.Refused(), func() app.UI {
			return &laterPart{S: s, ID: "after-laying", Title: afterTitle, Part: func() app.UI { return &foldPart{S: s, ID: "after-laying", Title: afterTitle, Part: s.afterPart} }}
		}),
		p.learned(),
		&laterPart{S: s, ID: "season-log", Title: "Season log", Part: func() app.UI { return &logPart{S: s} }},
		s.yearPart(),
		para("paper-only", "Labels, local codes and licensed people overrule this page."),
		app.Details().ID("end-of-film").Hidden(a.Refused()).Body(
			summary("The end of the film"),
			paragraph(end.Duty.In(system)),
			paragraph(weight),
			helpText("Organic, by the US rule: "+end.Organic.In(system)),
			helpText(biodegradable),
		),
	)
}

// learned is what the field's last season taught.
func (p *yearRoom) learned() app.UI {
	var says []app.UI
	for _, phrase := range p.S.advice.Learned() {
		says = append(says, item(phrase.In(p.S.system)))
	}
	return only(len(says) > 0, func() app.UI { return app.Ul().ID("learned").Body(says...) })
}

// dayPicker sets the day that counts as today.
func (p *yearRoom) dayPicker() app.UI { return p.S.dayPicker("year-day") }

func (s *store) dayPicker(id string) app.UI {
	today, known := s.today()
	value, words := "", "Today is"
	if known {
		value, words = today.String(), "Today is "+dayOfYear(today, s.system)
	}
	return asked("day-picker",
		app.Label().For(id).Text(words),
		app.Input().ID(id).Name(id).Type("date").Value(value).OnChange(func(ctx app.Context, _ app.Event) { s.setToday(ctx.JSSrc().Get("value").String()) }))
}

// steps are the dates in their order; today stands among them, and each caution at the
// first step that it belongs to.
func (p *yearRoom) steps(steps []plan.SeasonStep) string {
	s := p.S
	today, known := s.today()
	t := &svg{}
	t.raw(`<ol class="steps">`)
	told := map[judge.Step]bool{}
	next, hasNext := plan.NextStep(steps, today)
	now := func() {
		t.raw(`<li class="today" id="today"><b>Today, `, escape(dayOfYear(today, s.system)), `.</b>`)
		if hasNext && next.In > 0 {
			t.raw(` Next in `, escape(unit.Of(next.In).In(s.system)), `.`)
		} else if !hasNext {
			t.raw(` This year is over.`)
		}
		t.raw(`</li>`)
		known = false
	}
	for i := range steps {
		step := &steps[i]
		if known && step.On > today {
			now()
		}
		when := dayOfYear(step.On, s.system)
		last := step.On.Plus(max(step.Days, 1) - 1)
		if step.Weeks > 1 {
			last = step.On.Plus(unit.Days(7 * (step.Weeks - 1)))
			when = "Every week from " + when + " to " + dayOfYear(last, s.system)
		} else if step.Days > 1 {
			when += " to " + dayOfYear(last, s.system)
		}
		class := ""
		if today, ok := s.today(); ok && last < today {
			class = ` class="past"`
		}
		switch step.ID {
		case "lay", "plant", "lift", "till-in":
			class += ` data-main="yes"`
		}
		t.raw(`<li`, class, `><span class="when">`, escape(when), `</span><span class="what"><b>`, escape(step.What.In(s.system)), `</b> `, escape(step.Why.In(s.system)))
		if !told[step.Step] {
			told[step.Step] = true
			for k := range s.advice.Cautions {
				if c := &s.advice.Cautions[k]; c.Step == step.Step {
					t.raw(`<span class="care">Take care: `, escape(c.Text), ` <span class="last-word">Last word: `, escape(c.Defers), `.</span></span>`)
				}
			}
		}
		t.raw(`</span></li>`)
	}
	if known {
		now()
	}
	t.raw(`</ol>`)
	return t.b.String()
}

// waterRoom says how long to run the water this week; the whole plan is folded beneath.
type waterRoom struct {
	app.Compo
	S *store
}

func (p *waterRoom) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits|onExample, p.Update) }
func (p *waterRoom) OnDismount()         { p.S.leave(p) }

func (p *waterRoom) Render() app.UI {
	s := p.S
	if s.advice.Refused() {
		return app.Section().ID("water-room").Class("sheet").Body(s.notNow("No drip under film now.", "Film is not to be laid here, so this plan of water does not hold."), s.paperHead())
	}
	w := s.workOut()
	v := waterView{plan: &w.plan, system: s.system, s: s}
	class := "water-plan"
	if w.plan.Verdict == water.DoesNotFit {
		class += " water-stop"
	}
	return app.Section().ID("water-room").Class("sheet water-view").TabIndex(-1).Body(
		s.paperHead(),
		s.dayPicker("water-day"),
		app.Raw(p.week()),
		s.reading(),
		&laterPart{S: s, To: onAdvice, ID: "week-days", Title: "What your bed holds", Part: func() app.UI { return &weekPart{S: s} }},
		only(s.c.Days == "", func() app.UI { // days that are written down take its place on the paper
			return app.Raw(`<section class="tile paper-only"><h2>Minutes a day, month by month</h2>` + monthsSVG(&w.plan, s.system) + `</section>`)
		}),
		app.Details().ID("water-whole").Open(w.plan.Verdict == water.DoesNotFit).Class("fold").Body(
			app.Summary().Body(plain("The whole plan: months, zones, pressure, soil, salt "), app.Small().Text(v.lead())),
			app.Div().Class(class).ID("water-plan").TabIndex(-1).Body(
				v.words(),
				v.lastWord(),
				v.byMonth(),
				box("water-grid",
					box("water-column", v.schedule(), v.line(), v.soil(), v.quality()),
					box("water-column", v.supply(), v.feeding(), v.chlorine()),
				),
				v.checks(),
				v.assumed(),
				v.steps(),
			)),
		box("buttons", s.printButton("water-print", "Print the week")),
	)
}

// fewWeeks is how many weeks are told after this one.
const fewWeeks = 4

// week says this week's minutes first, then those of the next four.
func (p *waterRoom) week() string {
	s := p.S
	w := s.workOut()
	today, known := s.today()
	plant, last := s.advice.WaitPlan.PlantOn, s.advice.LastWater(&w.list)
	lead, from := "This week", today
	t := &svg{}
	t.raw(`<div class="weeks-all"><section class="tile this-week" id="this-week">`)
	switch {
	case w.plan.Tape.Flow <= 0 || !w.plan.Chosen:
		t.raw(`<h1>No minutes yet</h1><p>No tape fits this source and these beds. See below what would make it fit.</p></section></div>`)
		return t.b.String()
	case !known || today < plant:
		lead, from = "From planting, "+dayOfYear(plant, s.system), plant
	case today >= last:
		t.raw(`<h1>No more water</h1><p>The dates of this field stop it on `, escape(wholeDay(last, s.system)), `, so that the bed dries before the film is lifted.</p></section></div>`)
		return t.b.String()
	}
	if s.c.Days != "" {
		lead += ", in usual weather"
	}
	week, ok := s.advice.WaterWeekOf(&w.plan, &w.list, from)
	if !ok {
		t.raw(`<h1>Not known yet</h1><p>The crop’s use is not known for this week.</p></section></div>`)
		return t.b.String()
	}
	show := func(v any) string { return escape(unit.Of(v).In(s.system)) }
	t.raw(clockSVG(week.Together, 200), `<div><p class="week-head">`, lead, `</p><h1>`, minutesWords(week.Together), ` `, perDay(week.Every, s.system), `</h1><p class="lead">in `, runs(week.Runs))
	if week.Runs > 1 {
		t.raw(` of `, show(week.EachRun))
	}
	zones := 1
	if w.plan.Schedule != nil {
		zones = max(1, len(w.plan.Schedule.Zones))
	}
	if zones > 1 {
		t.raw(`, each of `, strconv.Itoa(zones), ` zones in turn`)
	}
	t.raw(`.</p><p>`)
	if week.AllBeds.Given {
		t.raw(show(week.AllBeds.Value), ` a day for all beds. `)
	}
	t.raw(`Rain does not count: film sheds it.</p>`)
	if week.RunDry.Given && week.RunCool.Given {
		switch cool, dry := show(week.RunCool.Value), show(week.RunDry.Value); {
		case week.Every > 1 && cool == dry:
			t.raw(`<p class="help">By use alone it would be `, cool, ` a day, in a cool year as in a dry one. A shorter run than this does not water a line evenly.</p>`)
		case week.Every > 1:
			t.raw(`<p class="help">By use alone it would be `, cool, ` a day in a cool year, `, dry, ` in a dry one. A shorter run than this does not water a line evenly.</p>`)
		default:
			t.raw(`<p class="help">In a dry year `, dry, ` a day, in a cool one `, cool, `.</p>`)
		}
	}
	t.raw(`</div></section><section class="tile" id="next-weeks"><h2>Next four weeks</h2><ol class="weeks">`)
	for n := 1; n <= fewWeeks; n++ {
		on := from.Plus(unit.Days(7 * n))
		t.raw(`<li>`)
		if week, ok := s.advice.WaterWeekOf(&w.plan, &w.list, on); ok {
			t.raw(clockSVG(week.Together, 72), `<b>`, minutesWords(week.Together), `</b>`)
			t.raw(`<span>`, perDay(week.Every, s.system), `</span>`)
		} else {
			t.raw(`<b>no water</b>`)
		}
		t.raw(`<span>from `, escape(dayOfYear(on, s.system)), `</span></li>`)
	}
	t.raw(`</ol></section></div>`)
	return t.b.String()
}

// perDay says how often a run comes.
func perDay(every unit.Days, system unit.System) string {
	if every > 1 {
		return "every " + unit.Of(every).In(system)
	}
	return "a day"
}

// minutesWords says minutes as a clock would: "1 h 13 min".
func minutesWords(m unit.Minutes) string {
	n := int(m + 0.5)
	if n < 60 {
		return strconv.Itoa(n) + " min"
	}
	if n%60 == 0 {
		return strconv.Itoa(n/60) + " h"
	}
	return strconv.Itoa(n/60) + " h " + strconv.Itoa(n%60) + " min"
}

// detailsRoom is the whole form in its groups, what was taken for granted, what is not
// known, cautions and sources.
type detailsRoom struct {
	app.Compo
	S *store
}

func (p *detailsRoom) Render() app.UI {
	s := p.S
	return app.Div().Class("view details").Body(
		app.H1().Text("All that is known of this field"),
		helpText("Leave open what you do not know. Each thing you add makes the answers firmer."),
		moreFields(s),
		&laterPart{S: s, ID: "worth-knowing", Title: "Worth finding out first", Part: func() app.UI { return only2(s.advice != nil, func() app.UI { return &openPart{S: s} }) }},
		&stageEnd{S: s},
	)
}

func only2(holds bool, build func() app.UI) app.UI {
	if holds {
		return build()
	}
	return app.Div()
}

// stageEnd holds the foot of the details once there are answers.
type stageEnd struct {
	app.Compo
	S *store
}

func (p *stageEnd) OnMount(app.Context) { p.S.follow(p, onStart, p.Update) }
func (p *stageEnd) OnDismount()         { p.S.leave(p) }

func (p *stageEnd) Render() app.UI {
	if p.S.advice == nil || app.IsServer {
		return app.Div().ID("end")
	}
	return &endPart{S: p.S}
}

// groups are the form, in the order of the work.
var groups = []struct {
	id, title string
	names     []string
}{
	{"more-crop", "Crop and day", []string{"crop", "method", "plant_on"}},
	{"more-soil", "Soil", []string{"soil.series", "soil.texture", "soil.drainage", "soil.slope_percent", "soil.wetness_at_laying", "soil.tilth", "soil.stones", "soil.organic_percent"}},
	{"more-weeds", "Weeds and insects", []string{"weeds.pressure", "weeds.nutsedge", "weeds.insect_pressure"}},
	{"more-field", "Beds and plants", []string{"field.bed_length_m", "field.beds", "field.bed_centres_m", "field.bed_top_m", "field.side_slope", "field.rows_per_bed", "field.in_row_m", "field.exposure"}},
	{"more-work", "How you work", []string{"practice.laying", "practice.tractor_kw", "practice.people", "practice.film_width_m", "practice.roll_length_m", "practice.crops_on_film", "practice.organic", "practice.fumigated_on", "practice.label_interval_days", "practice.reuse.film", "practice.reuse.cover_percent", "practice.reuse.height_m", "practice.reuse.thickness_um"}},
	{"more-water", "Water", []string{"water.source", "water.flow_l_h", "water.hours_per_day", "water.pressure_kpa", "water.lift_m", "water.rise_m", "water.header_m", "water.tank_l", "water.refill_l_h", "water.ec_ds_m", "water.ph", "water.iron_mg_l", "water.hardness_mg_l", "water.sodium_ratio", "water.nitrate_mg_l"}},
	{"more-base", "Soil test and fertilizer under the film", []string{"soil.ph", "soil.test_p", "soil.test_k", "soil.lime_kg_ha", "feed.season_n_kg_ha", "feed.season_p2o5_kg_ha", "feed.season_k2o_kg_ha", "feed.base_n_percent", "feed.base_p2o5_percent", "feed.base_k2o_percent", "feed.base_spread"}},
	{"more-feed", "Feeding and chlorine", []string{"feed.rate_kg_ha_day", "feed.grade_percent", "feed.stock_kg_l", "feed.injector_ratio", "feed.bleach_percent", "feed.chlorine_mg_l"}},
	{"more-probe", "Your own probe", []string{"soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour", "soil.measured_under"}},
	{"more-weather", "Weather", []string{"risk", "climate.last_frost", "climate.first_frost", "place.elevation_m", "place.period"}},
	{"more-past", "Last season on this field", []string{"past.warm_on", "past.water_percent", "past.whole_percent"}},
}

func moreFields(s *store) app.UI {
	list := make([]app.UI, 0, len(groups)+1)
	list = append(list, app.Details().Class("more").ID("more-place").Body(summary("Place"), &placePart{S: s}))
	for i := range groups {
		g := &groups[i]
		body := []app.UI{&groupHead{S: s, I: i}, asked("fields", fieldsOf(s, g.names)...)}
		switch g.id {
		case "more-work":
			body = append(body, &filmsPart{S: s})
		case "more-probe":
			body = append(body, &laterPart{S: s, ID: "probe", Title: "What the reading says", Part: func() app.UI { return only2(s.advice != nil, func() app.UI { return &probePart{S: s} }) }})
		case "more-water":
			body = append(body, &bucketPart{S: s})
		}
		list = append(list, app.Details().Class("more").ID(g.id).Body(body...))
	}
	return box("more-all", list...)
}

// groupHead names a group and says how much of it is told.
type groupHead struct {
	app.Compo
	S *store
	I int
}

func (p *groupHead) OnMount(app.Context) { p.S.follow(p, onForm|onAdvice|onExample, p.Update) }
func (p *groupHead) OnDismount()         { p.S.leave(p) }

func (p *groupHead) Render() app.UI {
	g := &groups[p.I]
	told, borrowed := 0, 0
	for _, name := range g.names {
		if _, given := field.InputByName(name).Get(&p.S.c); given {
			told++
		}
		if p.S.borrowed[borrowedAs(name)] {
			borrowed++
		}
	}
	words := strconv.Itoa(told) + " of " + strconv.Itoa(len(g.names)) + " told"
	if told == 0 {
		words = "open"
	}
	if borrowed > 0 {
		words += ", " + strconv.Itoa(borrowed) + " from the example"
	}
	return app.Summary().Body(plain(g.title+" "), app.Small().Text(words))
}

// fieldsRoom holds the fields on this device and sets them side by side.
type fieldsRoom struct {
	app.Compo
	S *store
}

func (p *fieldsRoom) Render() app.UI {
	s := p.S
	return app.Div().Class("view").Body(
		&fieldsPart{S: s},
		&laterPart{S: s, ID: "compare", Title: "Side by side", Part: func() app.UI { return only2(s.advice != nil, func() app.UI { return &comparePart{S: s} }) }},
	)
}

// clockSVG shows minutes as on the face of a clock: one turn is an hour, what is more
// goes around outside.
func clockSVG(m unit.Minutes, size int) string {
	t := &svg{}
	side := strconv.Itoa(size)
	t.raw(`<svg class="clock" width="`, side, `" height="`, side, `" viewBox="-60 -60 120 120" role="img" aria-label="`, minutesWords(m), `">`)
	first := min(float64(m), 60) / 60
	t.raw(`<circle class="k-face" r="46"/>`)
	if first >= 1 {
		t.raw(`<circle class="k-fill" r="46"/>`)
	} else {
		x, y := around(first, 46)
		big := "0"
		if first > 0.5 {
			big = "1"
		}
		t.raw(`<path class="k-fill" d="M0 0 V-46 A46 46 0 `, big, ` 1 `, num(x), ` `, num(y), ` Z"/>`)
	}
	for i, hours := 1, (float64(m)-60)/60; hours > 0 && i < 3; i, hours = i+1, hours-1 {
		r := 46 + 5.5*float64(i)
		if hours >= 1 {
			t.raw(`<circle class="k-more" r="`, num(r), `"/>`)
			continue
		}
		x, y := around(hours, r)
		big := "0"
		if hours > 0.5 {
			big = "1"
		}
		t.raw(`<path class="k-more" d="M0 `, num(-r), ` A`, num(r), ` `, num(r), ` 0 `, big, ` 1 `, num(x), ` `, num(y), `"/>`)
	}
	for i := range 12 {
		x, y := around(float64(i)/12, 46)
		x2, y2 := around(float64(i)/12, 40)
		t.raw(`<path class="k-tick" d="M`, num(x), ` `, num(y), ` L`, num(x2), ` `, num(y2), `"/>`)
	}
	t.raw(`</svg>`)
	return t.b.String()
}

// around is a place on a clock's face: a share of a turn, from the top.
func around(share, r float64) (x, y float64) {
	sin, cos := math.Sincos(2 * math.Pi * share)
	return r * sin, -r * cos
}
