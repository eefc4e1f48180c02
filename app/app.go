// Package app is the page: go-app components that show what the engine says.
// It computes no agronomy.
package app

import "github.com/maxence-charriere/go-app/v9/pkg/app"

// Page is one address of the site that is prerendered as HTML.
type Page struct {
	// Path is the address below the site's root, such as "/".
	Path string
	// Title stands in the browser's title bar and in shared links.
	Title string
	// Description is the one-sentence summary for search and sharing.
	Description string
	// New makes the page's root component, anew for each visit.
	New func() app.Composer
}

// view is one row of the routes: an address, its words, and the room that is shown
// there within the shell.
type view struct {
	path, title, description string
	bar                      string // its name in the bar; empty for what is reached otherwise
	film                     bool   // it speaks of film that is laid, and so says "not now" where it is refused
	room                     func(s *store, at string) app.UI
	own                      bool // the room does without answers
}

// views are the routes of the field, a row each. A new view is a room and a row here.
var views = []view{
	{"/", "Film & Furrow: plastic mulch, bed and drip worked out for your field", "Film color, thickness, bed, drip tape, waiting time and water for one crop, field and date, with every reason and source.",
		"Plan", false, func(s *store, _ string) app.UI { return &planRoom{S: s} }, false},
	{"/buy", "What to buy", "Film, tape, fittings and plants for this field, with how each quantity was worked out.",
		"Buy", true, func(s *store, _ string) app.UI { return &buyRoom{S: s} }, false},
	{"/lay", "Lay today?", "What must hold before the film is laid, who stands where, and what to check, on one sheet.",
		"Lay", true, func(s *store, _ string) app.UI { return &layingPart{S: s} }, false},
	{"/water", "Water: how long this week", "Minutes a day for this week and the next four, and the whole water plan beneath.",
		"Water", true, func(s *store, _ string) app.UI { return &waterRoom{S: s} }, false},
	{"/year", "The year of this field", "Every date from the soil test to the end of the film, as a list and a calendar file.",
		"Year", false, func(s *store, _ string) app.UI { return &yearRoom{S: s} }, false},
	{"/details", "All that is known of this field", "Every input in its group, what was taken for granted, what is not known, and the sources.",
		"", false, func(s *store, _ string) app.UI { return &detailsRoom{S: s} }, true},
	{"/fields", "Your fields, side by side", "The fields on this device: open, keep, remove, save as a file, and compare.",
		"", false, func(s *store, _ string) app.UI { return &fieldsRoom{S: s} }, true},
	{"/share", "Take it along", "The field as a link, a QR code, a card or a picture.",
		"", false, func(s *store, _ string) app.UI { return &sharePart{S: s} }, true},
	{"/trial", "A strip trial of your own", "Two to four films side by side, dealt out over your beds by chance: what such a trial can show, the plan, the tally and what it showed.",
		"", true, func(s *store, _ string) app.UI { return &trialRoom{S: s} }, false},
	why("/why/film", "Why this film?", "What speaks for the film and against it, and what would change it."),
	why("/why/thickness", "Why this thickness?", "What speaks for the thickness of the film and against it, and what would change it."),
	why("/why/bed", "Why this bed?", "What speaks for the height of the bed and against it, and what would change it."),
	why("/why/tape", "Why this drip tape?", "What speaks for the drip tape and against it, and what would change it."),
	why("/why/wait", "Why this wait?", "What asks for the days between laying and planting, and what would change them."),
	why("/why/water", "Why so much water?", "What the crop uses, what the bed holds, and how the minutes follow."),
	why("/why/verdict", "Why lay film, or not?", "What decides whether film is laid here at all, and what would change it."),
}

func why(path, title, description string) view {
	return view{path, title, description, "", false, func(s *store, at string) app.UI { return &whyRoom{S: s, At: at} }, false}
}

// Pages lists every page of the site.
func Pages() []Page {
	list := make([]Page, 0, len(views)+2)
	for i := range views {
		v := &views[i]
		title := v.title
		if i > 0 {
			title += " – Film & Furrow"
		}
		list = append(list, Page{v.path, title, v.description, func() app.Composer { return &shell{At: v.path} }})
	}
	return append(list, Page{
		Path:        "/card",
		Title:       "Film & Furrow: the answers for one field, on a card",
		Description: "Film, bed, tape, wait and water for one field, small enough for a newsletter.",
		New:         func() app.Composer { return &card{} },
	}, Page{
		Path:        "/workshop",
		Title:       "Film & Furrow in a workshop: eight invented farms, one question at a time",
		Description: "Large type for a projector: the room guesses, the answer opens, and one thing is turned live.",
		New:         func() app.Composer { return &workshop{} },
	})
}

func titleOf(path string) string {
	for _, p := range Pages() {
		if p.Path == path {
			return p.Title
		}
	}
	return ""
}

// viewAt is the row of an address; Plan's for any other.
func viewAt(path string) *view {
	for i := range views {
		if views[i].path == path {
			return &views[i]
		}
	}
	return &views[0]
}

// Mount registers every page with the framework. It must run before the
// browser or the site generator starts.
func Mount() {
	for _, p := range Pages() {
		app.RouteFunc(p.Path, p.New)
	}
}
