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
	S *store
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
			items[i] = item(list[i].In(p.S.system))
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
		order[i] = item(s.Order[i].In(p.S.system))
	}
	state, class, counts, because := p.say("ready"), "state ready", "", ""
	if ready, no, open := s.Ready(p.ticked); !ready {
		state, class, counts = p.say("not-ready"), "state not-ready", p.say("counts", no, open)
		if line, ok := s.Because(p.ticked); ok {
			if because = line.In(p.S.system); strings.HasPrefix(string(line.Key), "go-") {
				because = p.say("todo") + " " + because
			}
		}
	}
	shown, boxes := p.cards(&s)
	return app.Section().ID("laying-day").Class("sheet").Body(
		p.S.paperHead(),
		box("view-head", app.H1().Text(p.say(title)), para("sub", p.on()), app.Raw(sheetLanguages), p.S.printButton("lay-print", p.say("print"))),
		app.Div().Class(class).Role("status").Body(strong(state), span(because), app.Small().Text(counts)),
		app.Ul().Class("boxes conds").Body(shown...),
		heading(p.say("head-before")),
		app.Div().Class("before").Body(app.Ul().Body(items(s.Bring)...), asked("", app.Ul().Class("boxes").Body(boxes...))),
		app.Raw(`<div class="paper-bed two"><figure class="bed">`+bedSVG(p.S.advice, p.S.system, false)+`</figure>`+p.who(&s)+`</div>`),
		box("sheet-parts",
			part(p.say("head-people"), s.People),
			part(p.say("head-settings"), s.Settings),
			app.Div().Body(heading(p.say(s.Work())), app.Ol().Body(order...)),
			part(s.CheckHow.In(p.S.system), s.Checks),
			part(p.say("head-faults"), s.Faults),
			part(p.say("head-caution"), s.Care),
			helpText(p.say("last-word"))),
	)
}

// who is the drawing of who stands where with its words; empty where no tractor lays.
func (p *layingPart) who(s *plan.Sheet) string {
	if s.ByHand || s.Down {
		return ""
	}
	return `<figure>` + whoSVG(p.S.advice, p.S.system) + `<figcaption>` + escape(s.Who.In(p.S.system)) + `</figcaption></figure>`
}

// cards gives the day's cards, and the boxes that none of them ticks.
func (p *layingPart) cards(s *plan.Sheet) (shown, boxes []app.UI) {
	row := cards[0]
	if s.ByHand || s.Down {
		row = cards[1]
	}
	told := map[sheet.Key]bool{}
	for _, c := range row {
		reply, ask, first := plan.Yes, "", true
		if c.ask != "" {
			ask = p.say(c.ask)
		}
		text := &svg{}
		var body []app.UI
		says := func(r plan.Reply, words string, doubled bool) {
			reply, first = worse(reply, r), false
			class := string(r.Key())
			if doubled && r == plan.Unasked { // the question says it too
				class += " paper-only"
			}
			text.raw(`<p class="`, class, `"><b>`, p.say(r.Key()), `</b> `, escape(words), `</p>`)
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
			says(g.Reply, g.In(p.S.system), g.Ask.Key != "" || g.ID == "ball")
			switch {
			case c.picture == "ball":
				flush(ask)
				ask = ""
				body = append(body, p.choices("day."+string(g.ID)))
			case g.Ask.Key != "":
				ask = g.Ask.In(p.S.system)
				taps = p.yesNo(g.ID+plan.TapYes, g.ID+plan.TapNo, g.Reply, c.tells)
			}
		}
		for i := range s.Boxes {
			if b := &s.Boxes[i]; b.Key == sheet.Key(c.tells) {
				told[b.Key] = true
				r := b.Reply(p.ticked)
				says(r, b.In(p.S.system), false)
				taps = p.yesNo(b.Key, b.Key+plan.TapNo, r, "")
			}
		}
		if first {
			continue
		}
		if c.picture != "ball" {
			text.raw(p.dayPicture(string(c.picture)))
			if c.picture == "people" && !s.ByHand && !s.Down {
				text.raw(`<p class="help">`, escape(s.Who.In(p.S.system)), `</p>`)
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
			span(b.In(p.S.system)))))
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
func (p *layingPart) yesNo(yes, no sheet.Key, reply plan.Reply, figure string) app.UI {
	one := func(key, other sheet.Key, says plan.Reply) app.UI {
		on := reply == says
		return tap(string(key), p.say(says.Key()), "", on, func() {
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
		taps = append(taps, p.figure(figure))
	}
	return asked("taps", taps...)
}

// figure is the box for a figure of the day.
func (p *layingPart) figure(name string) app.UI {
	return &entry{S: p.S, Name: name, As: p.say("head-figure")}
}

// choices are an input's options as taps, with their pictures where they have one.
func (p *layingPart) choices(name string) app.UI {
	in := field.InputByName(name)
	now := p.S.shown(in)
	taps := make([]app.UI, len(in.Options))
	for i := range in.Options {
		id := in.Options[i].ID
		taps[i] = tap(fieldID(name)[2:]+"-"+id, p.say(sheet.Key("pick-"+id)), ball(id), now == id, func() {
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
func (p *layingPart) on() string {
	day := p.S.advice.WaitPlan.LayOn
	if p.S.advice.FilmDown() {
		day = p.S.advice.WaitPlan.PlantOn
	}
	return dayOfYear(day, p.S.system) + p.S.beds()
}

// beds are how many and how long, behind a comma; empty where they are not known.
func (s *store) beds() string {
	f := &s.c.Field
	if !f.Beds.Given || !f.BedLength.Given {
		return ""
	}
	return ", " + unit.Say(sheet.Sentences["beds"], int(f.Beds.Value), f.BedLength.Value).In(s.system)
}

// say gives a sentence of the sheet.
//
//go:noinline
func (p *layingPart) say(k sheet.Key, values ...any) string {
	return unit.Say(sheet.Sentences[k], values...).In(p.S.system)
}

// sheetLanguages are for a crew that reads another language than the page is in:
// static/language.js does what they say.
const sheetLanguages = `<fieldset class="units"><legend class="for-readers">Language of this sheet</legend><button type="button" class="unit" id="sheet-en" data-sheet="en" lang="en">English</button><button type="button" class="unit" id="sheet-es" data-sheet="es" lang="es">Español</button></fieldset>`

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
