package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// The boxes of an entry of the log.
const (
	logDay    = "log-day"
	logAmount = "log-amount"
	logWhat   = "log-what-" // and the entry's place in logEntries
)

// logEntries are what can be written down by one tap and, where it is an amount, a figure.
var logEntries = [...]struct {
	label  string
	column field.DayColumn
	stage  int // of field.DayStages, from 1 on; 0 asks for an amount
}{
	{"Planted", field.DayStage, 1},
	{"First bloom", field.DayStage, 2},
	{"Picked", field.DayPicked, 0},
	{"Hours", field.DayHours, 0},
	{"Money", field.DayPaid, 0},
	{"Rolls", field.DayRolls, 0},
	{"Film torn, %", field.DayTorn, 0},
	{"Soil temperature", field.DaySoil, 0},
	{"Film lifted", field.DayStage, 3},
}

// logPart takes the season's log, an entry in some seconds, and says what it came to,
// beside the plan and an earlier field.
type logPart struct {
	app.Compo
	S      *store
	errs   field.Errors
	told   string
	used   bool // the fold was written in, and stays open
	before *plan.SeasonLog
	name   string // of the field that before belongs to
	kept   string // the device's list as it was read last
	fields []casefile.Field
}

func (p *logPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits|onForm, p.Update) }
func (p *logPart) OnDismount()         { p.S.leave(p) }

// what is the entry that was tapped.
func (p *logPart) what() int {
	for i := range logEntries {
		if p.S.ticks[logWhat+strconv.Itoa(i)] {
			return i
		}
	}
	return 0
}

func (p *logPart) Render() app.UI {
	s := p.S
	chosen := p.what()
	taps := make([]app.UI, len(logEntries))
	for i := range logEntries {
		taps[i] = tap(logWhat+strconv.Itoa(i), logEntries[i].label, "", i == chosen, func() {
			delete(s.ticks, logWhat+strconv.Itoa(p.what()))
			p.errs, p.told, p.used = nil, "", true
			s.tick(logWhat+strconv.Itoa(i), true)
		})
	}
	asks := []app.UI{box("field", app.Label().For(logDay).Text("Day"), &textBox{S: s, ID: logDay, Type: "date", Describe: "log-told"})}
	if e := &logEntries[chosen]; e.stage == 0 {
		label := field.DayColumns[e.column].Label
		if symbol := field.DayColumns[e.column].Kind.Symbol(s.system); symbol != "" {
			label += ", " + symbol
		}
		asks = append(asks, box("field", app.Label().For(logAmount).Text(label), &textBox{S: s, ID: logAmount, Type: "text", Describe: "log-told", Wrong: len(p.errs) > 0}))
	}
	parts := []app.UI{summary("Season log"),
		helpText("One tap and one figure. It stays on this device, in the field’s file, and in a link only if you say so."),
		box("taps", taps...), asked("fields", asks...),
		box("buttons", press("log-take", "Write it down", p.take)),
		faultList("log-errors", p.errs),
		app.P().Class("help").ID("log-told").Role("status").Text(p.told)}
	w := s.workOut()
	if log, ok := s.advice.Log(&w.plan, &w.list); ok {
		says := make([]app.UI, 0, 4)
		for _, phrase := range log.Says(s.advice) {
			says = append(says, item(phrase.In(s.system)))
		}
		parts = append(parts, app.Ul().ID("log-says").Body(says...), app.Raw(p.table(&log)),
			box("buttons", append(p.earlier(), press("log-next", "Begin next year’s field", func() { p.nextYear(&log) }))...))
	}
	return app.Details().ID("season-log").Class("fold").Open(p.used).Body(parts...)
}

func (p *logPart) table(log *plan.SeasonLog) string {
	heads := []string{"What", "This season"}
	if p.before != nil {
		heads = append(heads, p.name)
	}
	var rows [][]string
	for _, line := range log.Lines(p.before) {
		row := []string{line.What.In(p.S.system), line.Here.In(p.S.system)}
		if p.before != nil {
			row = append(row, line.Before.In(p.S.system))
		}
		rows = append(rows, row)
	}
	if rows == nil {
		return `<div></div>`
	}
	return tableText("log-table", "What it came to", heads, rows)
}

// take writes the entry down, which takes the place of the same day's; amounts of one day
// are one figure.
func (p *logPart) take() {
	s := p.S
	e := &logEntries[p.what()]
	on, err := unit.ParseDate(s.boxText(logDay))
	p.errs, p.told, p.used = nil, "", true
	if err != nil {
		p.errs = field.Errors{{Field: "Day", Value: s.boxText(logDay), Allowed: "a day of the calendar", Mend: "Choose the day."}}
		return
	}
	row := field.DayRow{On: on}
	if e.stage > 0 {
		row.Values[e.column] = unit.Known(float64(e.stage))
	} else {
		values, wrong := field.ReadList(s.typed[logAmount], e.column, s.system)
		if p.errs = wrong; len(values) != 1 && len(wrong) == 0 {
			p.errs = field.Errors{{Field: e.label, Value: s.typed[logAmount], Allowed: "one plain number", Mend: "Type the day’s figure."}}
		}
		if len(p.errs) > 0 {
			return
		}
		row.Values[e.column] = unit.Known(values[0])
	}
	days, errs := s.fitDays([]field.DayRow{row})
	if p.errs = errs; len(errs) > 0 {
		return
	}
	s.touch("the season’s log")
	s.takeDays(days)
	delete(s.typed, logAmount)
	p.told = "Written down: " + lower(e.label) + ", " + dayOfYear(on, s.system) + ". “Take back” strikes it out."
	s.changed()
	s.tell(onForm)
}

// earlier offers the other fields of this device that have days.
func (p *logPart) earlier() (buttons []app.UI) {
	if kept := deviceText(fieldsKey); kept != p.kept {
		fields, err := casefile.DecodeFields([]byte(kept), p.S.places)
		if err != nil {
			return nil // the list of fields says what is wrong with it, or its stations have not come
		}
		p.kept, p.fields = kept, fields
	}
	for _, f := range p.fields {
		if f.Case.Days == "" || f.Case.Days == p.S.c.Days {
			continue
		}
		buttons = append(buttons, press("log-with-"+f.Name, "Set beside "+f.Name, func() {
			a, err := rules.Advise(f.Case)
			if err != nil {
				p.told = "“" + f.Name + "” holds a mistake; open it first."
				return
			}
			water := a.WaterPlan()
			list := a.Shopping(&water)
			if log, ok := a.Log(&water, &list); ok {
				p.before, p.name = &log, f.Name
			} else {
				p.told = "Nothing of a season is written down in “" + f.Name + "”."
			}
		}))
	}
	return buttons
}

// nextYear puts the field as it will be in a year in the form; this one can be taken back.
func (p *logPart) nextYear(log *plan.SeasonLog) {
	s := p.S
	p.used = true
	s.touch("next year’s field")
	s.c = log.NextYear(s.c)
	s.changed()
	s.tell(onForm)
	p.told = "This is next year’s field; what the log taught stands under “Last season on this field”. Save this year’s field under its name first: “Take back” brings it."
}
