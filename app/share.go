package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
)

// linkMark stands before the share text in the address: behind the "#", so no
// server ever sees it.
const linkMark = "f="

// farmMark stands between an invented farm's field and its name, so that nobody takes it
// for somebody's own.
const farmMark = "~"

// openLink loads the field that an address carries. Nothing is loaded from a
// link that is cut or altered, and what the device keeps stays as it is until
// somebody types.
func (s *store) openLink(fragment string) {
	text, found := strings.CutPrefix(fragment, linkMark)
	if !found || fragment == s.opened {
		return
	}
	text, farm, _ := strings.Cut(text, farmMark)
	farm = strings.ReplaceAll(farm, "%20", " ")
	c, err := casefile.ReadLink(text, s.places)
	switch {
	case err == nil:
		s.waiting = ""
		if s.keep != nil { // a card has nothing to come back to
			s.touch("a field came with a link")
		}
		s.show(c)
		s.linked, s.opened = true, fragment
		s.note, s.noteBad = "Opened: a field came with a link, as a copy. Your own stays under “Your fields”.", false
		if casefile.GoodName(farm) {
			s.example, s.farm = true, farm
			s.note = "Opened from its card: " + farm + ", an invented farm. Your own field stays as it was."
		}
		s.work()
	case s.places == nil && !s.noPlace || s.askWorld(nil):
		s.waiting = fragment // its station is not here yet
		s.note, s.noteBad = "Opening the field of the link …", false
	default:
		s.waiting = ""
		why, _, _ := strings.Cut(err.Error(), "\n")
		s.note, s.noteBad = why+" Nothing was loaded.", true
	}
	s.tell(onAdvice | onForm | onPlaces | onUnits | onExample)
}

// show puts another field in place of the one in the form.
func (s *store) show(c field.Case) {
	s.c, s.example, s.own = c, false, false
	s.borrowed = map[string]bool{}
	s.typed, s.wrong = map[string]string{}, map[string]field.Error{}
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
	s.aside = deviceText(storageKey)
	s.dropLink()
	s.setAside()
}

// dropLink takes a link's field out of the address.
func (s *store) dropLink() {
	if !s.linked {
		return
	}
	s.linked, s.opened = false, ""
	at := app.Window().Get("location")
	app.Window().Get("history").Call("replaceState", nil, "", at.Get("pathname").String()+at.Get("search").String())
	app.Window().Call("onpopstate") // or the framework would take the same link, opened again, for where it is already
}

// link is the address of this page with the field inside.
func (s *store) link() string {
	at := app.Window().URL()
	return at.Scheme + "://" + at.Host + s.pageLink()
}

// withDays is ticked where a link is to carry the days that were written down.
const withDays = "share-days"

func linkText(s *store) string {
	if s.ticks[withDays] {
		if text, ok := casefile.LinkWithDays(&s.c); ok {
			return text
		}
	}
	return casefile.Link(&s.c)
}

// days asks whether the days go along.
func (p *sharePart) days() app.UI {
	s := p.S
	if s.c.Days == "" {
		return app.Div().Hidden(true)
	}
	says := ""
	if _, ok := casefile.LinkWithDays(&s.c); !ok {
		says = "There are too many days for a link: it carries the plan alone. A file of all fields, under “Your fields”, holds them."
	}
	return box("", box("taps", tap(withDays, "Take the days along", "", s.ticks[withDays] && says == "", func() {
		s.tick(withDays, !s.ticks[withDays])
	})), helpText(says))
}

// pageLink is the address of the whole page with the field inside.
func (s *store) pageLink() string {
	return app.Getenv("GOAPP_ROOT_PREFIX") + "/#" + linkMark + namedLink(s)
}

// namedLink is the field's letters, with the farm's name behind them as long as nothing of
// it was changed.
func namedLink(s *store) string {
	text := linkText(s)
	if s.example {
		text += farmMark + strings.ReplaceAll(s.farm, " ", "%20")
	}
	return text
}

const inAMoment = "The answers are still being worked out. Try again in a moment."

const mendFirst = "Correct what is marked first: a link carries only what is right."

// sharePart offers the field as a link and as a file.
type sharePart struct {
	app.Compo
	S    *store
	told string
	code bool // the QR code is shown
}

func (p *sharePart) OnMount(app.Context) { p.S.follow(p, onAdvice|onForm, p.Update) }
func (p *sharePart) OnDismount()         { p.S.leave(p) }

func (p *sharePart) Render() app.UI {
	return app.Section().ID("share").Class("share").Body(
		app.H1().Text("Take it along"),
		paragraph("The whole field fits into one link. It is read on the device that opens it; no server sees it."),
		box("buttons",
			button("share-copy", "Copy the link").OnClick(p.copy),
			button("share-code", "Show it as a QR code").OnClick(func(app.Context, app.Event) { p.code = !p.code }),
			button("share-card", "Copy the card for a web page").OnClick(p.copyCard),
			button("share-bed-words", "Copy the bed in words").OnClick(func(ctx app.Context, _ app.Event) {
				if p.S.advice == nil {
					p.told = inAMoment
					return
				}
				copyText(ctx, inOwnWords(bedWords(p.S.advice, p.S.system)), "Copied.", copyByHand, func(words string) { p.told = words })
			}),
			button("share-bed-svg", "Save the bed as a picture (SVG)").OnClick(func(app.Context, app.Event) {
				saveFile("film-and-furrow-bed.svg", "image/svg+xml", p.bed())
			}),
		),
		p.days(),
		app.P().Class("help").Role("status").ID("share-told").Text(p.told),
		p.qr(),
		only2(p.S.advice != nil, func() app.UI {
			return app.Figure().Class("tile bed").ID("bed-drawing").Body(app.Raw(bedSVG(p.S.advice, p.S.system, false)), app.FigCaption().Text(bedWords(p.S.advice, p.S.system)))
		}),
	)
}

// bed is the drawing as a file, once there is one.
func (p *sharePart) bed() string {
	if p.S.advice == nil {
		return ""
	}
	return drawnAlone("#bed-drawing svg")
}

// copyCard gives the frame that shows the answers on somebody's page.
func (p *sharePart) copyCard(ctx app.Context, _ app.Event) {
	if p.refused() {
		return
	}
	at := app.Window().URL()
	frame := `<iframe title="Film &amp; Furrow: the answers for one field" width="360" height="` + strconv.Itoa(CardHeight) + `" loading="lazy" src="` + at.Scheme + "://" + at.Host + app.Getenv("GOAPP_ROOT_PREFIX") + "/card#" + linkMark + namedLink(p.S) + `"></iframe>`
	copyText(ctx, frame, "The card is copied. Paste it into the page’s HTML.", "Copy this by hand: "+frame, func(words string) { p.told = words })
}

// refused leads to what is to be mended before a field can go anywhere.
func (p *sharePart) refused() bool {
	switch {
	case len(p.S.wrong) > 0:
		p.told = mendFirst
		toField(faultsID)
	case len(field.Check(&p.S.c)) > 0: // begun with nothing, and not told enough yet
		p.told = "Give crop, planting day, place and soil first: a link carries a whole field."
	default:
		return false
	}
	return true
}

func (p *sharePart) copy(ctx app.Context, _ app.Event) {
	if p.refused() {
		return
	}
	link := p.S.link()
	copyText(ctx, link, "The link is copied. Paste it into a message.", "Copy this by hand: "+link, func(words string) { p.told = words })
}

// qr draws the link as a QR code, once it is asked for.
func (p *sharePart) qr() app.UI {
	if !p.code {
		return app.Div().ID("share-qr").Hidden(true)
	}
	if len(p.S.wrong) > 0 {
		return app.Div().ID("share-qr").Body(para("error", mendFirst))
	}
	if p.S.advice == nil {
		return app.Div().ID("share-qr").Body(helpText(inAMoment))
	}
	drawing, ok := qrSVG(p.S.link(), "QR code of the link to this field")
	if !ok {
		return app.Div().ID("share-qr").Body(para("error", "The link is too long for a QR code. Copy it instead."))
	}
	return app.Div().ID("share-qr").Body(app.Raw(drawing),
		button("share-qr-save", "Save the QR code (SVG)").OnClick(func(app.Context, app.Event) {
			saveFile("film-and-furrow-link.svg", "image/svg+xml", drawing)
		}))
}

// drawnAlone is a drawing of the page with the look that the style sheet gives
// it written into it, so that it can stand in a file of its own.
func drawnAlone(selector string) string {
	document := app.Window().Get("document")
	drawing := document.Call("querySelector", selector)
	copied := drawing.Call("cloneNode", true)
	from, to := drawing.Call("querySelectorAll", "*"), copied.Call("querySelectorAll", "*")
	for i := range from.Length() {
		look := app.Window().Call("getComputedStyle", from.Index(i))
		for _, name := range []string{"fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "opacity", "font-family", "font-size", "font-weight"} {
			to.Index(i).Call("setAttribute", name, look.Call("getPropertyValue", name))
		}
	}
	return app.Window().Get("XMLSerializer").New().Call("serializeToString", copied).String()
}
