package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/pack"
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
	name := "Worked out for this field"
	if s.example {
		name = s.farm + ", an invented farm"
	}
	link := app.Getenv("GOAPP_ROOT_PREFIX") + "/"
	if app.IsClient {
		link = s.pageLink()
	}
	return cardOf(s, name, "", link)
}

// Card is the card of one farm of the pack, with the address of the whole page.
func Card(f *pack.Farm, base string) app.UI {
	s := storeOf(f.Case())
	s.work()
	return cardOf(s, f.Title+": an invented farm", f.Lesson, base+"/#"+linkMark+linkText(s))
}

func cardOf(s *store, name, lesson, link string) app.UI {
	a := s.advice
	crop := table.CropByID(a.Case.Crop)
	rows := []app.UI{}
	for _, q := range []question.Question{question.Film, question.Thickness, question.Bed, question.Tape, question.Wait} {
		lead, _ := answerWords(a, q, s.system)
		why := mainReason(a.Choice(q), s.system)
		if rest, found := strings.CutPrefix(why, lead+": "); found {
			why = sentence(rest)
		}
		rows = append(rows, app.Dt().Text(answerTitles[q]), app.Dd().Body(strong(lead+". "), plain(why)))
	}
	rows = append(rows, app.Dt().Text("Water"), app.Dd().Body(strong(waterLead(a, s.system))))
	rest := box("", app.Figure().Class("bed").Body(app.Raw(bedSVG(a, s.system, false))), app.Dl().Body(rows...))
	if a.Refused() { // nothing behind a refusal pretends that film is laid
		rest = app.Raw(`<div class="instead">` + insteadHTML(a, s.system) + `</div>`)
	}
	return app.Main().Class("card").ID("card").Body(
		app.H1().Text(sentence(crop.Name)+", "+wholeDay(a.Facts.Plant, s.system)),
		helpText(name),
		app.P().Class(noteClass(s.noteBad)).Role("status").Text(s.note),
		paragraph(lesson),
		para("number", verdictLine(a)),
		app.Raw(`<div>`+gatesHTML(a, s.system, "")+`</div>`),
		rest,
		app.P().Body(app.A().Href(link).Target("_top").Text("Open it in Film & Furrow, with every reason and source")),
		helpText("Last word: labels, local codes and licensed practice."),
	)
}
