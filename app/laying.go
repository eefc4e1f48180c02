package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

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
		card := []app.UI{app.P().Body(app.B().Text(p.say(l, c.Reply.Key())), plain(" "+c.In(l, p.S.system)))}
		for _, name := range dayNames {
			if strings.HasPrefix(string(c.Key), name[len("day."):len("day.")+4]) {
				card = append(card, asked("ask-day", &entry{S: p.S, Name: name, Spanish: l != sheet.English}))
			}
		}
		found[i] = app.Li().Class("cond " + string(c.Reply.Key())).Body(card...)
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
	words := dayWordsOf[l]
	return app.Section().ID("laying-day").Class("sheet").Lang(string(l)).Body(
		p.S.paperHead(),
		only2(p.S.advice.Refused(), func() app.UI {
			return p.S.notNow("Do not lay film here.", "This sheet says so too, whatever is ticked.")
		}),
		box("view-head", only2(!p.S.advice.Refused(), func() app.UI { return app.H1().Text(dayTitle(words[0], &s, l)) }), app.P().Class(class).Role("status").Text(state), p.S.printButton("lay-print", words[1])),
		p.languages(l),
		app.Ul().Class("boxes conds").Body(found...),
		heading(p.say(l, "head-boxes")),
		asked("", app.Ul().Class("boxes").Body(boxes...)),
		app.Raw(`<figure class="bed paper-bed">`+bedSVG(p.S.advice, p.S.system, false)+`</figure>`),
		box("sheet-parts",
			part(p.say(l, "head-people"), s.People),
			part(p.say(l, "head-settings"), s.Settings),
			app.Div().Body(heading(p.say(l, s.Work())), app.Ol().Body(order...)),
			part(s.CheckHow.In(l, p.S.system), s.Checks),
			part(p.say(l, "head-faults"), s.Faults),
			part(p.say(l, "head-caution"), s.Care),
			helpText(p.say(l, "last-word"))),
	)
}

// dayTitle is the view's head: where film lies already, it asks for nothing to be laid.
func dayTitle(usual string, s *plan.Sheet, l sheet.Language) string {
	if s.Down {
		return sheet.Text(l, s.Title())
	}
	return usual
}

// dayWordsOf are the view's own words in the sheet's languages.
var dayWordsOf = map[sheet.Language][2]string{
	sheet.English: {"Lay today?", "Print the sheet"},
	"es":          {"¿Tender hoy?", "Imprimir la hoja"},
}

// daySpanish are the day's questions and their answers in Spanish, by the terms of the
// sheet.
var daySpanish = map[string]string{
	"day.ball": "Una bola de suelo, apretada y tocada", "crumbles": "se deshace", "breaks": "se sostiene y se rompe", "ribbons": "se alarga y brilla",
	"day.hand": "La mano que la apretó", "dry": "está seca", "outline": "muestra una huella húmeda", "water": "gotea",
	"day.wind_m_s": "Viento ahora", "day.people": "Personas aquí hoy", "day.rolls": "Rollos de plástico en la cabecera",
	"not known": "no se sabe",
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
