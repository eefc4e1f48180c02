//go:build !js

package site

import (
	framework "github.com/maxence-charriere/go-app/v9/pkg/app"
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"filmfurrow/app"
	"filmfurrow/rules/pack"
)

// cardPages are the addresses of the farms' cards, which are whole as they are:
// no program comes with them, so they show in a frame without any.
func cardPages() []Page {
	list := make([]Page, len(app.Cards))
	for i := range app.Cards {
		f := &app.Cards[i]
		list[i] = Page{Path: "/card/" + f.ID, Title: f.Title + " – " + siteName, Description: f.Lesson}
	}
	return list
}

// framedBody marks the pages that stand in a frame: below them no room is kept for the bar.
var framedBody = []html.Attribute{{Key: "class", Val: "framed"}}

// cardHTML is one farm's card as a page.
func cardHTML(f *pack.Farm, p Page, base, site string, links assets) ([]byte, error) {
	return plainPage(p, base, site, framework.HTMLString(app.Card(f, base)), links, func(doc *html.Node) {
		body := find(doc, atom.Body)
		body.Attr = framedBody
		joinLines(body)
	})
}
