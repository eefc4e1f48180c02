package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
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

// cards are the six things to look at on the day: a picture, what is asked, and what the
// answer stands for, a condition or a box. Those in the second list hold by hand.
var cards = [...][]dayCard{
	{{"ball", "ask-ball", ""}, {"wind", "", "day.wind_m_s"}, {"people", "", "day.people"}, {"rolls", "", "day.rolls"}, {"parts", "ask-parts", "go-parts"}, {"machine", "ask-machine", "go-weight"}},
	{{"ball", "ask-ball", ""}, {"wind", "", "day.wind_m_s"}, {"people", "", "day.people"}, {"rolls", "", "day.rolls"}, {"parts", "ask-parts", "go-parts"}, {"tools", "ask-tools", "go-tools"}},
}

type dayCard struct {
	picture, ask sheet.Key
	tells        string // the input that holds its figure, or the box that it ticks
}

func (p *layingPart) ticked(k sheet.Key) bool { return p.S.ticks[string(k)] }

func (p *layingPart) Render() app.UI {
	l := p.language
	if l == "" {
		l = sheet.English
	}
	list, _ := p.S.shopping()
	s := p.S.advice.Sheet(&list)
	s.Told(p.ticked)
	title := sheet.Key("lay-today")
	if s.Down { // nothing is laid: it is the day of planting
		title = s.Title()
	}
	items := func(list []plan.SheetLine) []app.UI {
		items := make([]app.UI, len(list))
		for i := range list {
			items[i] = item(list[i].In(l, p.S.system))
		}
		return items
	}
	part := func(head string, list []plan.SheetLine) app.UI {
		return app.Div().Hidden(len(list) == 0).Body(heading(head), app.Ul().Body(items(list)...))
	}
	if p.S.advice.Refused() {
		return app.Section().ID("laying-day").Class("sheet").Body(p.S.paperHead(),
			p.S.notNow("Do not lay film here.", "Nothing is to be brought and nobody is needed."))
	}
	order := make([]app.UI, len(s.Order))
	for i := range s.Order {
		order[i] = item(s.Order[i].In(l, p.S.system))
	}
	state, class, counts, because := p.say(l, "ready"), "state ready", "", ""
	if ready, no, open := s.Ready(p.ticked); !ready {
		state, class, counts = p.say(l, "not-ready"), "state not-ready", p.say(l, "counts", no, open)
		if line, ok := s.Because(p.ticked); ok {
			if because = line.In(l, p.S.system); strings.HasPrefix(string(line.Key), "go-") {
				because = p.say(l, "todo") + " " + because
			}
		}
	}
	bed, head := bedSVG(p.S.advice, p.S.system, false), p.S.paperHead()
	if l != sheet.English {
		bed, head = bedSpanish.Replace(bed), para("paper-head", p.spanishHead())
	}
	shown, boxes := p.cards(l, &s)
	return app.Section().ID("laying-day").Class("sheet").Lang(string(l)).Body(
		head,
		box("view-head", app.H1().Text(p.say(l, title)), para("sub", p.on(l)), p.languages(l), p.S.printButton("lay-print", p.say(l, "print"))),
		app.Div().Class(class).Role("status").Body(strong(state), span(because), app.Small().Text(counts)),
		app.Ul().Class("boxes conds").Body(shown...),
		heading(p.say(l, "head-before")),
		app.Div().Class("before").Body(app.Ul().Body(items(s.Bring)...), asked("", app.Ul().Class("boxes").Body(boxes...))),
		app.Raw(`<div class="paper-bed two"><figure class="bed">`+bed+`</figure>`+p.who(l, &s)+`</div>`),
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

// who is the drawing of who stands where with its words; empty where no tractor lays.
func (p *layingPart) who(l sheet.Language, s *plan.Sheet) string {
	if s.ByHand || s.Down {
		return ""
	}
	return `<figure>` + whoSVG(p.S.advice, p.S.system) + `<figcaption>` + escape(s.Who.In(l, p.S.system)) + `</figcaption></figure>`
}

// cards gives the day's cards, and the boxes that none of them ticks.
func (p *layingPart) cards(l sheet.Language, s *plan.Sheet) (shown, boxes []app.UI) {
	row := cards[0]
	if s.ByHand || s.Down {
		row = cards[1]
	}
	told := map[sheet.Key]bool{}
	for _, c := range row {
		reply, ask, first := plan.Yes, "", true
		if c.ask != "" {
			ask = p.say(l, c.ask)
		}
		text := &svg{}
		var body []app.UI
		says := func(r plan.Reply, words string, doubled bool) {
			reply, first = worse(reply, r), false
			class := string(r.Key())
			if doubled && r == plan.Unasked { // the question says it too
				class += " paper-only"
			}
			text.raw(`<p class="`, class, `"><b>`, p.say(l, r.Key()), `</b> `, escape(words), `</p>`)
		}
		flush := func(title string) {
			if title != "" {
				title = `<h2>` + escape(title) + `</h2>`
			}
			body = append(body, app.Raw(`<div>`+title+text.b.String()+`</div>`))
			text = &svg{}
		}
		var taps app.UI
		for i := range s.Go {
			g := &s.Go[i]
			if g.ID != c.picture && !(g.ID == "hand" && c.picture == "ball") && !(g.ID == "tractor" && c.picture == "machine") {
				continue
			}
			says(g.Reply, g.In(l, p.S.system), g.Ask.Key != "" || g.ID == "ball")
			switch {
			case c.picture == "ball":
				flush(ask)
				ask = ""
				body = append(body, p.choices(l, "day."+string(g.ID)))
			case g.Ask.Key != "":
				ask = g.Ask.In(l, p.S.system)
				taps = p.yesNo(l, g.ID+plan.TapYes, g.ID+plan.TapNo, g.Reply, c.tells)
			}
		}
		for i := range s.Boxes {
			if b := &s.Boxes[i]; b.Key == sheet.Key(c.tells) {
				told[b.Key] = true
				r := b.Reply(p.ticked)
				says(r, b.In(l, p.S.system), false)
				taps = p.yesNo(l, b.Key, b.Key+plan.TapNo, r, "")
			}
		}
		if first {
			continue
		}
		if c.picture != "ball" {
			text.raw(p.dayPicture(string(c.picture)))
			if c.picture == "people" && !s.ByHand && !s.Down {
				text.raw(`<p class="help">`, escape(s.Who.In(l, p.S.system)), `</p>`)
			}
			flush(ask)
		}
		if taps != nil {
			body = append(body, taps)
		}
		shown = append(shown, app.Li().Class("cond "+string(reply.Key())).Body(body...))
	}
	for i := range s.Boxes {
		b := &s.Boxes[i]
		if told[b.Key] {
			continue
		}
		key := string(b.Key)
		id := "tick-" + key
		boxes = append(boxes, app.Li().Body(app.Label().Class("tick").For(id).Body(
			app.Input().ID(id).Name(id).Type("checkbox").Checked(p.S.ticks[key]).OnChange(func(ctx app.Context, _ app.Event) {
				p.S.tick(key, ctx.JSSrc().Get("checked").Bool())
			}, key),
			span(b.In(l, p.S.system)))))
	}
	return shown, boxes
}

// worse is what two replies on one card come to: no before open before yes.
func worse(a, b plan.Reply) plan.Reply {
	if a == plan.No || b == plan.No {
		return plan.No
	}
	return min(a, b) // open stands before yes
}

// tap is a large button that is pressed or not; a second tap takes it back.
func tap(id, text, picture string, on bool, do func(), scope ...any) app.UI {
	var inside []app.UI
	if picture != "" {
		inside = append(inside, app.Raw(picture))
	}
	return app.Button().Type("button").Class("tap").ID("tap-"+id).Aria("pressed", strconv.FormatBool(on)).
		Body(append(inside, span(text))...).OnClick(func(app.Context, app.Event) { do() }, append(scope, id, on)...)
}

// yesNo are the two taps of a question, beside the box for its figure.
func (p *layingPart) yesNo(l sheet.Language, yes, no sheet.Key, reply plan.Reply, figure string) app.UI {
	one := func(key, other sheet.Key, says plan.Reply) app.UI {
		on := reply == says
		return tap(string(key), p.say(l, says.Key()), "", on, func() {
			delete(p.S.ticks, string(other))
			if figure != "" && p.S.shown(field.InputByName(figure)) != "" { // the word takes its place
				p.S.set(field.InputByName(figure), "")
				p.S.tell(onForm)
			}
			p.S.tick(string(key), !on)
		}, reply, figure)
	}
	taps := []app.UI{one(yes, no, plan.Yes), one(no, yes, plan.No)}
	if figure != "" {
		taps = append(taps, p.figure(l, figure))
	}
	return asked("taps", taps...)
}

// figure is the box for a figure of the day.
func (p *layingPart) figure(l sheet.Language, name string) app.UI {
	return &entry{S: p.S, Name: name, As: p.say(l, "head-figure"), Spanish: l != sheet.English}
}

// choices are an input's options as taps, with their pictures where they have one.
func (p *layingPart) choices(l sheet.Language, name string) app.UI {
	in := field.InputByName(name)
	now := p.S.shown(in)
	taps := make([]app.UI, len(in.Options))
	for i := range in.Options {
		id := in.Options[i].ID
		taps[i] = tap(fieldID(name)[2:]+"-"+id, p.say(l, sheet.Key("pick-"+id)), ball(id), now == id, func() {
			text := id
			if now == id {
				text = ""
			}
			p.S.set(in, text)
		}, now)
	}
	return box("taps", taps...)
}

// on says the day and the beds.
func (p *layingPart) on(l sheet.Language) string {
	day := p.S.advice.WaitPlan.LayOn
	if p.S.advice.FilmDown() {
		day = p.S.advice.WaitPlan.PlantOn
	}
	words := dayOfYear(day, p.S.system)
	if l != sheet.English {
		words = spanishDay(day)
	}
	return words + p.S.beds(l)
}

// beds are how many and how long, behind a comma; empty where they are not known.
func (s *store) beds(l sheet.Language) string {
	f := &s.c.Field
	if !f.Beds.Given || !f.BedLength.Given {
		return ""
	}
	return ", " + unit.Say(sheet.Text(l, "beds"), int(f.Beds.Value), f.BedLength.Value).In(s.system)
}

// say gives a sentence of the sheet.
//
//go:noinline
func (p *layingPart) say(l sheet.Language, k sheet.Key, values ...any) string {
	return unit.Say(sheet.Text(l, k), values...).In(p.S.system)
}

func (p *layingPart) languages(now sheet.Language) app.UI {
	buttons := []app.UI{app.Legend().Class("for-readers").Text("Language, idioma")}
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
