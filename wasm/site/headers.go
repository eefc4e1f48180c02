//go:build !js

package site

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// policy is the Content-Security-Policy of every page: everything from this
// site alone, no script or style within the HTML, nothing evaluated but the
// compiled program.
const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; object-src 'none'"

// Framed reports whether other sites may show the page in a frame: the cards.
func Framed(address string) bool {
	return address == "/card" || strings.HasPrefix(address, "/card/")
}

// headers writes the header file that static hosts read. Hosts differ on what
// happens where two rules match: some send both values, some the nearer one.
// So the common rule's policy says nothing on frames and each page's own is whole:
// either way the page gets the policy and its frame rule. Whatever is not a page, such
// as an address that does not exist, has only the older header against frames, which
// a policy that names frames overrules (W3C Content Security Policy Level 3, § 6.4.2).
//
// What a page's first paint waits for is named beside it (RFC 8288; W3C Preload), so
// that all of it is asked for at once: a browser that finds a policy within the HTML
// reads ahead no further, and would ask for one after the other.
func headers(base string, pages []Page, files map[string][]byte) ([]byte, error) {
	var b strings.Builder
	fmt.Fprintf(&b, "%s/*\n", base)
	for _, line := range []string{
		"Content-Security-Policy: " + policy,
		"X-Frame-Options: DENY",
		"X-Content-Type-Options: nosniff",
		"Referrer-Policy: no-referrer",
		"Permissions-Policy: accelerometer=(), camera=(), geolocation=(self), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), usb=()",
		"Strict-Transport-Security: max-age=31536000",
		"Cross-Origin-Opener-Policy: same-origin",
		// The files are public; a sandboxed frame around the card has no
		// origin of its own and could not fetch them otherwise.
		"Cross-Origin-Resource-Policy: cross-origin",
		"Access-Control-Allow-Origin: *",
	} {
		fmt.Fprintf(&b, "  %s\n", line)
	}
	for _, p := range pages {
		frames := "'none'"
		if Framed(p.Path) {
			frames = "*"
		}
		early, err := waitedFor(files[fileOf(p.Path)])
		if err != nil {
			return nil, fmt.Errorf("page %s: %w", p.Path, err)
		}
		// A host also serves the page under its file's name.
		for _, address := range []string{p.Path, "/" + fileOf(p.Path)} {
			fmt.Fprintf(&b, "%s%s\n  Content-Security-Policy: %s; frame-ancestors %s\n", base, address, policy, frames)
			for _, link := range early {
				fmt.Fprintf(&b, "  Link: %s\n", link)
			}
		}
	}
	fmt.Fprintf(&b, "%s/assets/*\n  Cache-Control: public, max-age=31536000, immutable\n", base)
	return []byte(b.String()), nil
}

// waitedFor lists the files that a page is not shown without: style sheets, and the
// scripts that its reading waits for.
func waitedFor(page []byte) (links []string, err error) {
	doc, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		return nil, err
	}
	for n := range doc.Descendants() {
		switch {
		case n.DataAtom == atom.Link && attr(n, "rel") == "stylesheet":
			links = append(links, "<"+attr(n, "href")+">; rel=preload; as=style")
		case n.DataAtom == atom.Script && attr(n, "src") != "" && !slices.ContainsFunc(n.Attr, func(a html.Attribute) bool { return a.Key == "defer" || a.Key == "async" }):
			links = append(links, "<"+attr(n, "src")+">; rel=preload; as=script")
		}
	}
	return links, nil
}

// headerRule is one rule of a header file.
type headerRule struct {
	pattern string // a path, or a path that ends in /*
	headers [][2]string
}

func (r headerRule) matches(path string) bool {
	if prefix, ok := strings.CutSuffix(r.pattern, "*"); ok {
		return strings.HasPrefix(path, prefix)
	}
	return r.pattern == path
}

// parseHeaders reads a header file back, so that our own server and the tests
// send the very headers that are published.
func parseHeaders(file []byte) ([]headerRule, error) {
	var rules []headerRule
	for i, line := range strings.Split(string(file), "\n") {
		text := strings.TrimSpace(line)
		if text == "" || strings.HasPrefix(text, "#") {
			continue
		}
		if line[0] != ' ' {
			rules = append(rules, headerRule{pattern: text})
			continue
		}
		name, value, ok := strings.Cut(text, ":")
		if !ok || len(rules) == 0 {
			return nil, fmt.Errorf("_headers line %d: %q is neither a path nor a header below one", i+1, text)
		}
		last := &rules[len(rules)-1]
		last.headers = append(last.headers, [2]string{name, strings.TrimSpace(value)})
	}
	return rules, nil
}
