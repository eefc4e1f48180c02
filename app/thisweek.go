package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// The boxes of the days. weekLists take one figure for each day in a row, from the day in
// weekFirst on.
const (
	weekFirst   = "week-first"
	weekSheet   = "week-sheet"
	weekTension = "week-tension"
)

var weekLists = [...]struct {
	id     string
	column field.DayColumn
	label  string
}{
	{"week-highs", field.DayHigh, "Highs"},
	{"week-lows", field.DayLow, "Lows"},
	{"week-rain", field.DayRain, "Rain, if any"},
	{"week-runs", field.DayRun, "Minutes each zone really ran, if you know"},
}

// weekPart tells what the bed holds and asks for the weather, what ran and what was read.
type weekPart struct {
	app.Compo
	S    *store
	errs field.Errors
	told string
}

func (p *weekPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits|onExample|onForm, p.Update) }
func (p *weekPart) OnDismount()         { p.S.leave(p) }

func (p *weekPart) Render() app.UI {
	s := p.S
	today, known := s.today()
	w := s.workOut()
	if !known {
		return app.Div().Hidden(true)
	}
	class, parts := "week-days", []app.UI{heading2("What your bed holds")}
	if k, ok := s.advice.ThisWeek(&w.plan, &w.list, today); ok && len(k.Days) > 0 {
		parts = append(parts, app.Raw(p.account(&k)))
	} else {
		class = "unwritten" // nothing to print yet
		parts = append(parts, paragraph("Days can be written down now; they count from planting to the last water."))
	}
	return app.Section().Class("tile " + class).ID("week-days").Body(append(parts, p.form())...)
}

// account says today's minutes, how the bed stands and the seven days.
func (p *weekPart) account(k *plan.ThisWeek) string {
	system := p.S.system
	show := func(v any) string { return unit.Of(v).In(system) }
	t := &svg{}
	first := &k.Days[0]
	t.raw(`<div id="week-account"><p class="number" id="week-today">`)
	if first.Run > 0 {
		t.raw(minutesWords(first.Run), ` today, in `, runs(first.Runs))
	} else {
		t.raw(`Nothing to run today`)
	}
	t.raw(`</p>`)
	if n := len(k.Days); n > 1 {
		t.raw(`<p class="help">`, minutesWords(k.Mean), ` a day over the `, escape(unit.Of(n).In(system)), ` days that follow.</p>`)
	}
	t.raw(`<ul id="week-says">`)
	for _, says := range k.Says(p.S.advice) {
		t.raw(`<li>`, escape(says.In(system)), `</li>`)
	}
	t.raw(`</ul>`)
	list := make([][]string, len(k.Days))
	for i := range k.Days {
		d := &k.Days[i]
		air, run := "usual", "none"
		if d.Told {
			air = show(d.Low) + " – " + show(d.High)
		}
		if d.Run > 0 {
			run = show(d.Run)
			if d.Runs > 1 {
				run += " in " + runs(d.Runs)
			}
		}
		list[i] = []string{dayOfYear(d.On, system), air, show(unit.FineDepth(d.Use)), run, show(d.Morning)}
	}
	t.raw(tableText("week-table", "Seven days", []string{"Day", "Low – high", "Crop uses", "Run each zone", "Left at dawn"}, list))
	if len(k.Turns) > 1 {
		t.raw(`<p class="help">Valves, begun at six:`)
		for i := range k.Turns {
			from, to := k.Turns[i].Clock()
			t.raw(` zone `, strconv.Itoa(k.Turns[i].Zone), ` `, from, `–`, to, `.`)
		}
		t.raw(`</p>`)
	}
	t.raw(`<p class="help">After FAO Irrigation and Drainage Paper 56. A day’s use is reckoned from its low and high; single days scatter, weeks less. Dig beside the tape: that decides.</p></div>`)
	return t.b.String()
}

// form asks for days in rows or as a sheet.
func (p *weekPart) form() app.UI {
	s := p.S
	area := func(id, label string) app.UI {
		return box("field", app.Label().For(id).Text(label), &textBox{S: s, ID: id, Type: "area", Describe: "week-told", Wrong: len(p.errs) > 0})
	}
	inside := []app.UI{box("field", app.Label().For(weekFirst).Text("First day of the rows"), &textBox{S: s, ID: weekFirst, Type: "date", Describe: "week-told"})}
	for i := range weekLists {
		l := &weekLists[i]
		label := l.label
		if symbol := field.DayColumns[l.column].Kind.Symbol(s.system); l.column != field.DayRun {
			label += ", " + symbol
		}
		inside = append(inside, area(l.id, label))
	}
	inside = append(inside, box("field", app.Label().For(weekTension).Text("Tensiometer this morning, centibars"), &textBox{S: s, ID: weekTension, Type: "text", Describe: "week-told"}),
		area(weekSheet, "Or paste a sheet: names first, such as date high low rain minutes"))
	rows := s.c.Days.Rows()
	kept := "No days are written down yet."
	if n := len(rows); n > 0 {
		kept = unit.Count(n, "day", "days").In(s.system) + " written down, " + dayOfYear(rows[0].On, s.system) + " to " + dayOfYear(rows[n-1].On, s.system) + ". A link carries them only if you say so under “Take it along”."
	}
	return app.Details().ID("week-form").Class("fold").Open(p.told != "").Body(
		summary("Write down weather, runs and readings"),
		helpText("One figure for each day, in a row or a column: last week’s, and the forecast behind it. What you tapped or typed as a reading above goes in for today."),
		asked("fields", inside...),
		box("buttons", press("week-take", "Take these days", p.take), only2(len(rows) > 0, func() app.UI { return press("week-forget", "Forget all days", p.forget) })),
		faultList("week-errors", p.errs),
		app.P().Class("help").ID("week-told").Role("status").Text(p.told),
		app.P().Class("help").ID("week-kept").Text(kept),
	)
}

// faultList reads errors out, one under the other.
func faultList(id string, errs field.Errors) app.UI {
	list := make([]app.UI, len(errs))
	for i := range errs {
		list[i] = item(errs[i].Error())
	}
	return app.Ul().Class("error").ID(id).Role("alert").Body(list...)
}

// fitDays lays rows over the days that are kept, and says where they do not fit the season
// or each other.
func (s *store) fitDays(rows []field.DayRow) (days field.Days, errs field.Errors) {
	if errs = s.advice.CheckSeason(&s.workOut().list, rows); len(errs) > 0 {
		return "", errs
	}
	days = s.c.Days.With(rows)
	return days, field.CheckDays(days.Rows(), s.system)
}

// takeDays puts days into the field, and the soil's last reading with them.
func (s *store) takeDays(days field.Days) {
	s.c = s.c.WithDays(days, s.advice.WaitPlan.LayOn, s.advice.Facts.Film.Key())
	for _, name := range [...]string{"soil.temperature_c", "soil.measured_on", "soil.measured_hour", "soil.measured_depth_m", "soil.measured_under"} {
		delete(s.typed, name)
		delete(s.wrong, name)
	}
}

// take puts what was typed into the field, all of it or nothing.
func (p *weekPart) take() {
	s := p.S
	today, _ := s.today()
	rows, errs := s.writtenDays(today)
	var days field.Days
	if len(errs) == 0 {
		days, errs = s.fitDays(rows)
	}
	p.errs, p.told = errs, "Nothing was taken: correct what is named, then take the days again."
	if len(errs) > 0 {
		return
	}
	p.told = unit.Count(len(rows), "day", "days").In(s.system) + " taken."
	if len(rows) == 0 {
		p.told = "Nothing is written here yet."
		return
	}
	s.touch("the days written down")
	s.takeDays(days)
	for i := range weekLists {
		delete(s.typed, weekLists[i].id)
	}
	delete(s.typed, weekSheet)
	delete(s.typed, weekTension)
	delete(s.typed, probeBox) // today's reading is among the days now, and is none of tomorrow's
	for i := range plan.Feels {
		delete(s.ticks, "feel-"+strconv.Itoa(i))
	}
	s.changed()
	s.tell(onForm)
}

func (p *weekPart) forget() {
	p.S.touch("the days written down")
	p.S.c.Days = ""
	p.errs, p.told = nil, "Forgotten. “Take back” brings them again."
	p.S.changed()
}

// writtenDays reads the boxes: rows from a first day on, a sheet, and today's readings.
func (s *store) writtenDays(today unit.Date) (rows []field.DayRow, errs field.Errors) {
	first, err := unit.ParseDate(s.boxText(weekFirst))
	var days field.Days
	counts := [2]int{}
	for i := range weekLists {
		l := &weekLists[i]
		values, wrong := field.ReadList(s.typed[l.id], l.column, s.system)
		errs = append(errs, wrong...)
		if len(values) > 0 && err != nil {
			errs = append(errs, field.Error{Field: "First day", Value: s.boxText(weekFirst), Allowed: "a day of the calendar", Mend: "Choose the day that the first figure belongs to."})
			err = nil
		}
		if i < len(counts) {
			counts[i] = len(values)
		}
		list := make([]field.DayRow, len(values))
		for k, v := range values {
			list[k].On = first.Plus(unit.Days(k))
			list[k].Values[l.column] = unit.Known(v)
		}
		days = days.With(list)
	}
	if counts[0] != counts[1] && len(errs) == 0 {
		errs = append(errs, field.Error{Field: "Highs and lows", Value: strconv.Itoa(counts[0]) + " highs and " + strconv.Itoa(counts[1]) + " lows", Allowed: "one of each for each day", Mend: "Add what is missing; both begin on the same day."})
	}
	if text := s.typed[weekSheet]; text != "" {
		sheet, wrong := field.ReadSheet(text, s.system)
		errs = append(errs, wrong...)
		days = days.With(sheet)
	}
	row := field.DayRow{On: today}
	read := func(c field.DayColumn, text string) {
		values, wrong := field.ReadList(text, c, s.system)
		errs = append(errs, wrong...)
		if len(values) > 0 {
			row.Values[c] = unit.Known(values[0])
		}
	}
	read(field.DayTension, s.typed[weekTension])
	read(field.DayMoisture, s.typed[probeBox])
	for i := range plan.Feels {
		if s.ticks["feel-"+strconv.Itoa(i)] {
			row.Values[field.DayFeel] = unit.Known(float64(i + 1))
		}
	}
	if row != (field.DayRow{On: today}) {
		days = days.With([]field.DayRow{row})
	}
	return days.Rows(), errs
}

// convertDays carries lists of figures that were not taken yet over to other units.
func (s *store) convertDays(from, to unit.System) {
	for i := range weekLists {
		l := &weekLists[i]
		values, errs := field.ReadList(s.typed[l.id], l.column, from)
		if len(errs) > 0 || len(values) == 0 {
			continue
		}
		text := ""
		for _, v := range values {
			text += fine(field.DayColumns[l.column].Kind, v, to) + " "
		}
		s.typed[l.id] = text
	}
}
