package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/unit"
)

// layingPart is the laying-day sheet: what was found on the day and what follows
// from it, boxes to tick, settings, the order of work, who stands where, checks,
// faults. It prints on one sheet, "ready" or "not ready".
type layingPart struct {
	app.Compo
	S        *store
	language sheet.Language
}

func (p *layingPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *layingPart) OnDismount()         { p.S.leave(p) }

func (p *layingPart) Render() app.UI {
	l := p.language
	if l == "" {
		l = sheet.English
	}
	list, _ := p.S.shopping()
	s := p.S.advice.Sheet(&list)
	found := make([]app.UI, len(s.Go))
	for i := range s.Go {
		c := &s.Go[i]
		found[i] = app.Li().Class(string(c.Reply.Key())).Body(app.B().Text(p.say(l, c.Reply.Key())), plain(" "+c.In(l, p.S.system)))
	}
	boxes := make([]app.UI, len(s.Boxes))
	for i := range s.Boxes {
		key := string(s.Boxes[i].Key)
		id := "tick-" + key
		boxes[i] = app.Li().Body(app.Label().Class("tick").For(id).Body(
			app.Input().ID(id).Name(id).Type("checkbox").Checked(p.S.ticks[key]).OnChange(func(ctx app.Context, _ app.Event) {
				p.S.tick(key, ctx.JSSrc().Get("checked").Bool())
			}, key),
			span(s.Boxes[i].In(l, p.S.system))))
	}
	state, class := p.say(l, "ready"), "state ready"
	if ready, no, open := s.Ready(func(k sheet.Key) bool { return p.S.ticks[string(k)] }); !ready {
		state, class = p.say(l, "not-ready", no, open), "state not-ready"
	}
	part := func(head string, list []plan.SheetLine) app.UI {
		items := make([]app.UI, len(list))
		for i := range list {
			items[i] = item(list[i].In(l, p.S.system))
		}
		return app.Div().Hidden(len(list) == 0).Body(heading(head), app.Ul().Body(items...))
	}
	order := make([]app.UI, len(s.Order))
	for i := range s.Order {
		order[i] = item(s.Order[i].In(l, p.S.system))
	}
	return app.Section().ID("laying-day").Class("sheet").Lang(string(l)).Body(
		heading2(p.say(l, "title")),
		app.P().Class(class).Role("status").Text(state),
		p.languages(l),
		app.Div().Lang("en").Body(asked("fields", fieldsOf(p.S, dayNames)...)),
		heading(p.say(l, "head-go")),
		app.Ul().Class("boxes").Body(found...),
		heading(p.say(l, "head-boxes")),
		asked("", app.Ul().Class("boxes").Body(boxes...)),
		box("sheet-parts",
			part(p.say(l, "head-settings"), s.Settings),
			app.Div().Body(heading(p.say(l, "head-order")), app.Ol().Body(order...)),
			part(p.say(l, "head-people"), s.People),
			part(s.CheckHow.In(l, p.S.system), s.Checks),
			part(p.say(l, "head-faults"), s.Faults),
			part(p.say(l, "head-caution"), s.Care)),
		helpText(p.say(l, "last-word")),
	)
}

// say gives a sentence of the sheet.
//
//go:noinline
func (p *layingPart) say(l sheet.Language, k sheet.Key, values ...any) string {
	return unit.Say(sheet.Text(l, k), values...).In(p.S.system)
}

// dayNames are what is found on laying day, in the order of asking.
var dayNames = []string{"day.ball", "day.hand", "day.wind_m_s", "day.people", "day.rolls"}

func (p *layingPart) languages(now sheet.Language) app.UI {
	buttons := []app.UI{app.Legend().Text("Language of this sheet")}
	for _, l := range sheet.Languages() {
		buttons = append(buttons, app.Button().Type("button").Class("unit").ID("sheet-"+string(l)).Lang(string(l)).Text(l.Name()).
			Aria("pressed", strconv.FormatBool(l == now)).OnClick(func(app.Context, app.Event) { p.language = l }, string(l)))
	}
	return app.FieldSet().Class("units").Body(buttons...)
}

// tick remembers a box; it survives a reload.
func (s *store) tick(key string, on bool) {
	if on {
		s.ticks[key] = true
	} else {
		delete(s.ticks, key)
	}
	s.save()
	s.tell(onAdvice)
}

// seasonPart is the year's dates, as a list and as a calendar file.
type seasonPart struct {
	app.Compo
	S *store
}

func (p *seasonPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *seasonPart) OnDismount()         { p.S.leave(p) }

func (p *seasonPart) Render() app.UI {
	a := p.S.advice
	list, _ := p.S.shopping()
	steps := a.Season(&list)
	rows := make([]app.UI, len(steps))
	told := map[judge.Step]bool{}
	for i, s := range steps {
		when := s.On.Words()
		if s.Weeks > 1 {
			when = "Every week from " + when + " to " + s.On.Plus(unit.Days(7*(s.Weeks-1))).Words()
		} else if s.Days > 1 {
			when += " to " + s.On.Plus(s.Days-1).Words()
		}
		what := []app.UI{plain(s.What.In(p.S.system))}
		if !told[s.Step] { // a step's cautions stand where it first bites
			told[s.Step] = true
			what = append(what, careOf(a, s.Step, ""))
		}
		rows[i] = app.Tr().Body(app.Th().Scope("row").Text(when), app.Td().Body(what...), app.Td().Text(s.Why.In(p.S.system)))
	}
	end := a.EndOfFilm(&list)
	weight := ""
	if end.Least > 0 {
		weight = "Clean it weighs " + unit.Of(end.Clean).In(p.S.system) + "; with soil on it from " + unit.Of(end.Least).In(p.S.system) + " to " + unit.Of(end.Most).In(p.S.system) + " (half soil in a US paper, up to nine tenths in the European standard)."
	}
	biodegradable := end.TilledIn.Text
	if biodegradable != "" {
		biodegradable = "Biodegradable film: " + biodegradable
	}
	return app.Section().ID("season").Class("sheet").Body(
		heading2("The season’s dates"),
		paragraph("Worked back and forth from planting on "+p.S.advice.WaitPlan.PlantOn.Words()+"."),
		listed("scroll stack", "The season’s dates", rows, "When", "What", "Why"),
		box("buttons", button("season-ics", "Save for a calendar (iCalendar)").OnClick(func(app.Context, app.Event) {
			saveFile("film-and-furrow-season.ics", "text/calendar", p.S.calendar())
		})),
		app.H3().ID("end-of-film").Text("The end of the film"),
		paragraph(end.Duty.In(p.S.system)),
		paragraph(weight),
		helpText("Organic, by the US rule: "+end.Organic.In(p.S.system)),
		helpText(biodegradable),
	)
}
