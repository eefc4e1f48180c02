package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
)

// linkMark stands before the share text in the address: behind the "#", so no
// server ever sees it.
const linkMark = "f="

// openLink loads the field that an address carries. Nothing is loaded from a
// link that is cut or altered, and what the device keeps stays as it is until
// somebody types.
func (s *store) openLink(fragment string) {
	text, found := strings.CutPrefix(fragment, linkMark)
	if !found {
		return
	}
	c, err := casefile.ReadLink(text, s.places)
	switch {
	case err == nil:
		s.waiting = ""
		s.show(c)
		s.linked = true
		s.note, s.noteBad = "This field came with a link. Change anything and it is kept on this device.", false
		s.work()
	case s.places == nil && !s.noPlace:
		s.waiting = fragment // its station is not here yet
		s.note, s.noteBad = "Opening the field of the link …", false
	default:
		s.waiting = ""
		why, _, _ := strings.Cut(err.Error(), "\n")
		s.note, s.noteBad = why+" Nothing was loaded.", true
	}
	s.tell(onAdvice | onForm | onPlaces | onUnits)
}

// show puts another field in place of the one in the form.
func (s *store) show(c rules.Case) {
	s.c, s.example = c, false
	s.typed, s.wrong = map[string]string{}, map[string]rules.FieldError{}
	if s.c.Method == "" {
		s.usualStart()
	}
}

// leaveLink takes a link's field out of the address once somebody changes it: a
// reload must bring back what the device keeps, not the link again.
func (s *store) leaveLink() {
	if !s.linked {
		return
	}
	s.linked = false
	s.setAside()
	at := app.Window().Get("location")
	app.Window().Get("history").Call("replaceState", nil, "", at.Get("pathname").String()+at.Get("search").String())
}

// link is the address of this page with the field inside.
func (s *store) link() string {
	at := app.Window().URL()
	at.Fragment, at.RawQuery = "", ""
	return at.String() + "#" + linkMark + casefile.Link(&s.c)
}

// sharePart offers the field as a link and as a file.
type sharePart struct {
	app.Compo
	S    *store
	told string
}

func (p *sharePart) OnMount(app.Context) { p.S.follow(p, onAdvice|onForm, p.Update) }
func (p *sharePart) OnDismount()         { p.S.leave(p) }

func (p *sharePart) Render() app.UI {
	return app.Section().ID("share").Class("share").Body(
		app.H2().Text("Take it along"),
		app.P().Text("The whole field fits into one link. It is read on the device that opens it; no server sees it."),
		app.Div().Class("buttons").Body(
			app.Button().Type("button").Class("plain").ID("share-copy").Text("Copy the link").OnClick(p.copy),
			app.Button().Type("button").Class("plain").ID("share-print").Text("Print").OnClick(func(app.Context, app.Event) { app.Window().Call("print") }),
		),
		app.P().Class("help").Role("status").ID("share-told").Text(p.told),
	)
}

func (p *sharePart) copy(ctx app.Context, _ app.Event) {
	if len(p.S.wrong) > 0 {
		p.told = "Mend what is marked first: a link carries only what is right."
		return
	}
	link := p.S.link()
	copyText(ctx, link, "The link is copied. Paste it into a message.", "Copy this by hand: "+link, func(words string) { p.told = words })
}
