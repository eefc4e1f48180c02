package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"
)

// shell is the frame that all views of the field stand in: the name and the menu
// above, the room in the middle, the bar of the five views. It stays when a reader
// goes from view to view; only the room changes.
type shell struct {
	app.Compo
	At  string // the view's address
	s   *store
	was string // the address that was gone to last
}

func (h *shell) store() *store {
	if h.s == nil {
		h.s = visit()
	}
	return h.s
}

func (h *shell) OnMount(app.Context) { h.store().live() }

func (h *shell) OnDismount() {
	h.s.flush()
	h.s.study = nil // nobody is there to read it
	tellPage("whole", true)
}

// OnNav sets the title anew, since another page may have changed it. The address
// may carry a field, on arrival and when it is changed by hand. Whoever comes from
// another view begins at its top.
func (h *shell) OnNav(ctx app.Context) {
	s := h.store()
	s.at, s.title = h.At, titleOf(h.At)
	ctx.Page().SetTitle(s.title)
	s.titled()
	at := ctx.Page().URL()
	if at.RawQuery == "start=own" { // the shortcut of the manifest and of the cards
		s.startOwn()
	}
	s.openLink(at.Fragment)
	if h.was != "" && h.was != h.At {
		main := app.Window().GetElementByID("main")
		main.Call("focus", map[string]any{"preventScroll": true})
		app.Window().Call("scrollTo", map[string]any{"top": 0, "behavior": "instant"})
		if el := app.Window().GetElementByID(at.Fragment); el.Truthy() {
			toField(at.Fragment)
		}
	}
	h.was = h.At
}

func (h *shell) Render() app.UI {
	s := h.store()
	v := viewAt(h.At)
	var room app.UI = &stage{S: s, At: h.At}
	if v.own {
		room = v.room(s, h.At)
	}
	return box("page",
		app.A().Class("skip").Href("#main").Text("Skip to the view"),
		app.Raw(filmPatterns),
		&headPart{S: s, At: h.At},
		app.Main().ID("main").TabIndex(-1).Body(
			&notesPart{S: s},
			only(h.At == "/", func() app.UI { return &sentencePart{S: s} }),
			&faultsPart{S: s},
			&movedPart{S: s},
			room,
			&yoursPart{S: s},
		),
	)
}

// stage holds a view's room once there are answers to show. Until then a first
// visit sees what was prerendered, which is right: the worked example.
type stage struct {
	app.Compo
	S  *store
	At string
}

func (p *stage) OnMount(app.Context) { p.S.follow(p, onStart, p.Update) }
func (p *stage) OnDismount()         { p.S.leave(p) }

func (p *stage) Render() app.UI {
	v := viewAt(p.At)
	switch {
	case p.S.advice != nil:
		return app.Div().ID("view").Class("view").Body(v.room(p.S, p.At))
	case p.S.before[p.At] != "":
		return app.Raw(p.S.before[p.At])
	case p.S.own:
		return app.Div().ID("view").Class("view").Body(
			app.Section().Class("tile open-field").Body(app.H1().Text("Your field"),
				paragraph("Name the crop, the day, the place and the soil on Plan. The answers come as soon as they are there."),
				app.P().Body(app.A().Class("act").Href(rooted("/details")).Text("Everything that can be told"))))
	}
	return app.Div().ID("view").Class("view").Body(app.Section().Class("tile open-field").Body(app.H1().Text("One moment"),
		app.P().Class("waiting").Role("status").Text("Working out the answers for your field …")))
}

// rooted is an address of the site, wherever it is published.
func rooted(path string) string { return app.Getenv("GOAPP_ROOT_PREFIX") + path }

// way is the address of a view. A field that came with a link and is not kept yet
// goes along.
func (s *store) way(path string) string {
	if s.linked {
		return rooted(path) + "#" + s.opened
	}
	return rooted(path)
}

// headPart is the site's name, the field's, the menu, and the bar of the views. The
// links are text: nothing listens to them but the browser.
type headPart struct {
	app.Compo
	S  *store
	At string
}

func (p *headPart) OnMount(app.Context) { p.S.follow(p, onAnswer|onForm|onExample, p.Update) }
func (p *headPart) OnDismount()         { p.S.leave(p) }

// menu are the ways to what is not in the bar.
var menu = [...][2]string{
	{"/fields", "Your fields, side by side"}, {"/details", "All details of this field"}, {"/share", "Take it along: link, card, picture"},
	{"/trial", "Try films side by side: a strip trial"},
	{"/trouble", "Something looks wrong"}, {"/workshop", "In front of a room: the workshop"}, {"/about", "About this site"},
}

func (p *headPart) Render() app.UI {
	s := p.S
	t := &svg{}
	t.raw(`<nav class="bar" aria-label="Views">`)
	for i := range views {
		v := &views[i]
		if v.bar == "" {
			continue
		}
		t.raw(`<a href="`, escape(s.way(v.path)), `"`)
		if v.path == p.At || v.path == "/" && strings.HasPrefix(p.At, "/why/") {
			t.raw(` aria-current="page"`)
		}
		t.raw(`>`, v.bar)
		if v.film && s.advice != nil && s.advice.Refused() {
			t.raw(`<small>not now</small>`)
		}
		t.raw(`</a>`)
	}
	t.raw(`</nav>`)
	links := &svg{}
	links.raw(`<div><ul>`)
	for _, m := range menu {
		links.raw(`<li><a href="`, escape(rooted(m[0])), `">`, m[1], `</a></li>`)
	}
	links.raw(`</ul><p class="tongues"><button type="button" class="unit" data-language="en" lang="en">English</button><button type="button" class="unit" data-language="es" lang="es">Español</button></p></div>`)
	return app.Header().Class("head").Body(
		app.A().Class("brand").Href(s.way("/")).Text("Film & Furrow"),
		app.A().Class("field-name").Href(rooted("/fields")).ID("field-now").Text(s.fieldName()),
		app.Details().Class("menu").ID("menu").Body(
			summary("Menu"),
			box("menu-list", app.Raw(links.b.String()), &unitSwitch{S: s}, helpText("Nothing you type leaves this device.")),
		),
		app.Raw(t.b.String()),
	)
}

// fieldName is what the field in hand is called.
func (s *store) fieldName() string {
	switch {
	case s.example:
		return s.farm + " (invented)"
	case strings.TrimSpace(s.typed[nameBox]) != "":
		return strings.TrimSpace(s.typed[nameBox])
	}
	return "My field"
}

// notesPart is what the page has to tell of the form as a whole. The elements are
// always there, shown or not: the framework matches elements by their place, and a
// missing one would renew those after it.
type notesPart struct {
	app.Compo
	S *store
}

func (p *notesPart) OnMount(app.Context) { p.S.follow(p, onForm|onAdvice|onExample|onSaid, p.Update) }
func (p *notesPart) OnDismount()         { p.S.leave(p) }

func (p *notesPart) Render() app.UI {
	s := p.S
	class := noteClass(s.noteBad)
	if s.noteBeside() { // it is seen there, and heard here
		class = "for-readers"
	}
	return app.Div().Class("notes").Body(
		app.P().Class("error").Role("alert").Hidden(!s.unsaved).Text("This device does not keep what you type: its storage is full or shut. Print the page or note the answers before you close it."),
		app.P().Class(class).ID("note").Role("status").Text(s.note),
		app.P().Class("for-readers").ID("read-out").Role("alert").Text(s.spoken),
		app.P().Class("for-readers").ID("moved-out").Role("status").Text(s.heard),
	)
}

func noteClass(bad bool) string {
	if bad {
		return "note note-bad"
	}
	return "note"
}
