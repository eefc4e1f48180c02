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
	// New makes the page's root component; the framework clones its type for each visit.
	New func() app.Composer
}

// Pages lists every page of the site.
func Pages() []Page {
	return []Page{{
		Path:        "/",
		Title:       "Film & Furrow: plastic mulch, bed and drip worked out for your field",
		Description: "Film colour, thickness, bed, drip tape, waiting time and water for one crop, field and date, with every reason and source.",
		New:         func() app.Composer { return &home{} },
	}, {
		Path:        "/card",
		Title:       "Film & Furrow: the answers for one field, on a card",
		Description: "Film, bed, tape, wait and water for one field, small enough for a newsletter.",
		New:         func() app.Composer { return &card{} },
	}, {
		Path:        "/workshop",
		Title:       "Film & Furrow in a workshop: eight invented farms, one question at a time",
		Description: "Large type for a projector: the room guesses, the answer opens, and one thing is turned live.",
		New:         func() app.Composer { return &workshop{} },
	}}
}

func titleOf(path string) string {
	for _, p := range Pages() {
		if p.Path == path {
			return p.Title
		}
	}
	return ""
}

// Mount registers every page with the framework. It must run before the
// browser or the site generator starts.
func Mount() {
	for _, p := range Pages() {
		app.Route(p.Path, p.New())
	}
}
