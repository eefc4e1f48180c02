package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
)

// card is the answers in small, for a frame on somebody's newsletter page. It
// reads its field from the address, keeps nothing, and tells the page around it
// its height and nothing else (static/card.js).
type card struct {
	app.Compo
	s *store
}

// store holds the example until the address is read: in the browser it is worked
// out only where no field comes.
func (c *card) store() *store {
	if c.s == nil {
		c.s = storeOf(exampleCase())
		c.s.example = true
		if !app.IsClient {
			c.s.work()
		}
	}
	return c.s
}

// OnNav loads the table of stations only for a link that names one.
func (c *card) OnNav(ctx app.Context) {
	s := c.store()
	defer c.Update()
	s.openLink(ctx.Page().URL().Fragment)
	switch {
	case s.waiting != "":
		if s.places == nil {
			loadNormals(s)
		}
		return
	case s.advice == nil:
		s.work()
	}
}

func (c *card) OnMount(app.Context) {
	s := c.store()
	s.follow(c, onAdvice|onForm, c.Update)
}

func (c *card) OnDismount() { c.s.leave(c) }

func (c *card) Render() app.UI {
	s := c.store()
	if s.advice == nil { // its station is on the way, or did not come
		return app.Main().Class("card").ID("card").Text(s.note)
	}
	if !s.noteBad {
		s.note = "" // a card has nothing to change or to keep
	}
	crop := table.CropByID(s.advice.Case.Crop)
	title, name := sentence(crop.Name)+", "+wholeDay(s.advice.Facts.Plant, s.system), "Worked out for this field."
	if s.example {
		name = s.farm + ", an invented farm"
	}
	link := app.Getenv("GOAPP_ROOT_PREFIX") + "/"
	if app.IsClient {
		link = s.pageLink()
	}
	return cardOf(s, title, name, "", link)
}

// CardHeight is how high a frame is offered for a card, in CSS pixels: enough at each
// width from 320 px.
const CardHeight = 900

// cardOf shows the six answers without their reasons, so that a frame of a phone's width
// holds them whole in some 700 px; the reasons are one tap away.
func cardOf(s *store, title, name, lesson, link string) app.UI {
	a := s.advice
	t, verdict := &svg{}, "number"
	if a.Refused() { // nothing behind a refusal pretends that film is laid
		verdict = "number refused"
		t.raw(`<div class="instead">`, insteadHTML(a, s.system), `</div>`)
	} else {
		t.raw(`<div><figure>`, bedSVG(a, s.system, false), `</figure><dl>`)
		for _, q := range [...]question.Question{question.Film, question.Thickness, question.Bed, question.Tape, question.Wait, question.Verdict} {
			head, lead := answerTitles[q], ""
			if lead, _ = answerWords(a, q, s.system); q == question.Verdict {
				head, lead = "Water", waterLead(a, s.system)
			}
			t.raw(`<div><dt>`, head, `</dt><dd><strong>`, escape(lead), `</strong></dd></div>`)
		}
		t.raw(`</dl></div>`)
	}
	return app.Main().Class("card").ID("card").Body(
		app.H1().Text(title),
		helpText(name),
		app.P().Class(noteClass(s.noteBad)).Role("status").Text(s.note),
		paragraph(lesson),
		para(verdict, verdictLine(a)),
		app.Raw(`<div>`+gatesHTML(a, s.system, "")+`</div>`),
		app.Raw(t.b.String()),
		app.A().Class("card-go").Href(link).Target("_top").Text("What about my field?"),
		helpText("Last word: labels, local codes and licensed practice."),
	)
}
