//go:build !js

package site

import (
	"bytes"
	"cmp"
	"fmt"
	"slices"
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// booleans are HTML's boolean attributes: there means yes, whatever the value.
// The framework prints them as ="true" and ="false", and "false" means yes too.
var booleans = map[string]bool{
	"allowfullscreen": true, "async": true, "autofocus": true, "autoplay": true, "checked": true,
	"controls": true, "default": true, "defer": true, "disabled": true, "formnovalidate": true,
	"hidden": true, "inert": true, "ismap": true, "itemscope": true, "loop": true, "multiple": true,
	"muted": true, "nomodule": true, "novalidate": true, "open": true, "playsinline": true,
	"readonly": true, "required": true, "reversed": true, "selected": true,
}

const viewport = "width=device-width, initial-scale=1, viewport-fit=cover"

const withoutScript = "This page shows a worked example: the verdict, the bed and the six answers with their reasons. To work out your own field, switch JavaScript on and load the page again."

// rewrite turns the framework's HTML into the page that is published: zoom
// allowed, true booleans, a strict policy, our own scripts, and attributes in
// a fixed order.
func rewrite(source []byte, p Page, base, site string, links assets) ([]byte, error) {
	doc, err := html.Parse(bytes.NewReader(source))
	if err != nil {
		return nil, err
	}
	head, body := find(doc, atom.Head), find(doc, atom.Body)
	if head == nil || body == nil {
		return nil, fmt.Errorf("no head or body in the prerendered HTML")
	}

	description := map[string]string{}
	var title string
	for n := head.FirstChild; n != nil; n = n.NextSibling {
		switch n.DataAtom {
		case atom.Title:
			title = textOf(n)
		case atom.Meta:
			if content := attr(n, "content"); content != "" {
				description[cmp.Or(attr(n, "name"), attr(n, "property"))] = content
			}
		}
	}
	removeChildren(head)
	fillHead(head, base, site, p.Path, cmp.Or(title, p.Title), cmp.Or(description["description"], p.Description), links, true)

	if Framed(p.Path) {
		body.Attr = framedBody
	}
	joinLines(body)
	if old := byID(body, "app-wasm-loader"); old != nil {
		old.Parent.RemoveChild(old)
	}
	if err := addFragment(body, strip+`<noscript><p class="without-script">`+withoutScript+`</p></noscript>`); err != nil {
		return nil, err
	}
	return print(doc)
}

// joinLines takes out the line ends that the framework prints around each child
// of an element. Between words they would show as gaps, such as before a full
// stop, which are gone once the program has drawn the page itself.
func joinLines(body *html.Node) {
	var empty []*html.Node
	for n := range body.Descendants() {
		if n.Type != html.TextNode || n.Parent.DataAtom == atom.Pre || n.Parent.DataAtom == atom.Textarea {
			continue
		}
		n.Data = strings.TrimSuffix(strings.TrimPrefix(n.Data, "\n"), "\n")
		if n.Data == "" {
			empty = append(empty, n)
		}
	}
	for _, n := range empty {
		n.Parent.RemoveChild(n)
	}
}

// strip is the status line at the foot of the page. Without script it stays
// hidden. The percentage is outside the live region, so that it is not read
// out at each step.
const strip = `<div class="strip" id="strip" hidden=""><p><span id="strip-words" role="status"></span><span id="strip-percent" aria-hidden="true"></span></p><div class="strip-acts" id="strip-acts"></div></div>`

// fillHead writes the head of a page. The policy comes before anything that it
// governs; boot.js comes before anything it has to be early for.
func fillHead(head *html.Node, base, site, address, title, description string, links assets, program bool) {
	meta := func(key, name, content string) {
		if content != "" {
			head.AppendChild(element("meta", key, name, "content", content))
		}
	}
	head.AppendChild(element("meta", "charset", "utf-8"))
	head.AppendChild(element("meta", "http-equiv", "Content-Security-Policy", "content", policy))
	meta("name", "viewport", viewport)
	t := element("title")
	t.AppendChild(&html.Node{Type: html.TextNode, Data: title})
	head.AppendChild(t)
	meta("name", "description", description)
	meta("name", "theme-color", themeColor)
	meta("name", "referrer", "no-referrer")
	if program {
		meta("property", "og:type", "website")
		meta("property", "og:title", title)
		meta("property", "og:description", description)
		if site != "" {
			meta("property", "og:url", site+base+address)
			meta("property", "og:image", site+base+"/icons/icon-512.png")
			head.AppendChild(element("link", "rel", "canonical", "href", site+base+address))
		}
		head.AppendChild(element("script", "src", links.boot, "data-program", links.program))
	}
	head.AppendChild(element("link", "rel", "stylesheet", "href", links.style))
	head.AppendChild(element("link", "rel", "icon", "href", base+"/icons/icon.svg", "type", "image/svg+xml"))
	head.AppendChild(element("link", "rel", "apple-touch-icon", "href", base+"/icons/icon-192.png"))
	head.AppendChild(element("link", "rel", "manifest", "href", base+"/manifest.webmanifest"))
	head.AppendChild(element("script", "defer", "", "src", links.language))
	if Framed(address) {
		head.AppendChild(element("script", "defer", "", "src", links.card))
	}
	for _, own := range [...]struct{ page, script string }{{room, links.room}, {speaker.Path, links.speaker}, {takePath, links.picture}} {
		if address == own.page {
			head.AppendChild(element("script", "defer", "", "src", own.script))
		}
	}
	if address == room {
		head.AppendChild(element("link", "rel", "stylesheet", "href", links.roomStyle))
	}
	if program {
		// The first paint waits for the last of the page's text, some kilobytes: what was
		// painted in part would count as a larger paint when the program draws it whole.
		head.AppendChild(element("link", "rel", "expect", "blocking", "render", "href", "#strip"))
		head.AppendChild(element("script", "defer", "", "src", links.glue))
		head.AppendChild(element("script", "defer", "", "src", links.start))
		head.AppendChild(element("script", "defer", "", "src", links.old))
	}
}

// plainPage is a page that is whole without the program; dress may change its tree before
// it is written.
func plainPage(p Page, base, site, body string, links assets, dress func(doc *html.Node)) ([]byte, error) {
	doc, err := html.Parse(strings.NewReader("<!DOCTYPE html><html><head></head><body></body></html>"))
	if err != nil {
		return nil, err
	}
	find(doc, atom.Html).Attr = []html.Attribute{{Key: "lang", Val: siteLang}}
	fillHead(find(doc, atom.Head), base, site, p.Path, p.Title, p.Description, links, false)
	if err := addFragment(find(doc, atom.Body), body); err != nil {
		return nil, err
	}
	if dress != nil {
		dress(doc)
	}
	return print(doc)
}

// notFound is the page for an address that the site does not have.
func notFound(base string, links assets) ([]byte, error) {
	body := `<main class="not-found"><h1>Page not found</h1><p>There is no page at this address. It may be mistyped, or this device may be without a network and the page may not be part of this site.</p><p><a href="` + base + `/">Go to ` + html.EscapeString(siteName) + `</a></p></main>`
	return plainPage(Page{Title: "Page not found – " + siteName}, base, "", body, links, nil)
}

// print writes the tree with attributes in alphabetical order and booleans by
// presence alone: the framework keeps attributes in a map, so their order
// differs from run to run.
func print(doc *html.Node) ([]byte, error) {
	for n := range doc.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		kept := n.Attr[:0]
		for _, a := range n.Attr {
			if booleans[a.Key] && a.Namespace == "" {
				if a.Val == "false" {
					continue
				}
				if a.Val == "true" || a.Val == a.Key {
					a.Val = ""
				}
			}
			// The framework leaves "true" out everywhere, but without it these mean false.
			if a.Val == "" && slices.Contains([]string{"aria-pressed", "aria-hidden", "aria-invalid", "aria-expanded", "aria-current", "aria-selected", "aria-checked"}, a.Key) {
				a.Val = "true"
			}
			kept = append(kept, a)
		}
		n.Attr = kept
		slices.SortFunc(n.Attr, func(a, b html.Attribute) int {
			return cmp.Or(strings.Compare(a.Namespace, b.Namespace), strings.Compare(a.Key, b.Key))
		})
	}
	var out bytes.Buffer
	if err := html.Render(&out, doc); err != nil {
		return nil, err
	}
	out.WriteByte('\n')
	return out.Bytes(), nil
}

func element(tag string, pairs ...string) *html.Node {
	n := &html.Node{Type: html.ElementNode, Data: tag, DataAtom: atom.Lookup([]byte(tag))}
	for i := 0; i < len(pairs); i += 2 {
		n.Attr = append(n.Attr, html.Attribute{Key: pairs[i], Val: pairs[i+1]})
	}
	return n
}

func addFragment(parent *html.Node, source string) error {
	nodes, err := html.ParseFragment(strings.NewReader(source), &html.Node{Type: html.ElementNode, Data: "body", DataAtom: atom.Body})
	if err != nil {
		return err
	}
	for _, n := range nodes {
		parent.AppendChild(n)
	}
	return nil
}

func find(n *html.Node, tag atom.Atom) *html.Node {
	for d := range n.Descendants() {
		if d.DataAtom == tag {
			return d
		}
	}
	return nil
}

func byID(n *html.Node, id string) *html.Node {
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && attr(d, "id") == id {
			return d
		}
	}
	return nil
}

func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

func textOf(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return strings.TrimSpace(b.String())
}

func removeChildren(n *html.Node) {
	for n.FirstChild != nil {
		n.RemoveChild(n.FirstChild)
	}
}
