//go:build !js

package site

import (
	"bytes"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// A drawing that stands in a file of its own has no style sheet, and the policy of our
// pages allows no style within a file. So what the sheet says of its classes is written
// onto its elements as attributes (SVG 2, § 6.6, presentation attributes). The sheet stays
// the one place that says what a thing looks like.
type look []rule

// rule is what the sheet says of one class.
type rule struct {
	class string
	attrs []html.Attribute
}

var (
	comments    = regexp.MustCompile(`(?s)/\*.*?\*/`)
	styleBlock  = regexp.MustCompile(`([^{}]+)\{([^{}]*)\}`)
	classAlone  = regexp.MustCompile(`^\.[\w-]+$`)
	variable    = regexp.MustCompile(`var\((--[\w-]+)\)`)
	fontPart    = regexp.MustCompile(`^(\d+) (\d+px) (.+)$`)
	pictureOnly = []string{"fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin", "opacity", "paint-order", "font-size", "font-weight"}
)

// looks reads the rules of single classes that hold everywhere, and the colors of light.
func looks(css string) look {
	css = comments.ReplaceAllString(css, "")
	// What stands within a condition, such as darkness or paper, is left out.
	var plain strings.Builder
	for css != "" {
		at := strings.Index(css, "@")
		if at < 0 {
			plain.WriteString(css)
			break
		}
		plain.WriteString(css[:at])
		end, depth := at, 0
		for end < len(css) {
			if css[end] == '{' {
				depth++
			} else if css[end] == '}' {
				if depth--; depth == 0 {
					break
				}
			}
			end++
		}
		css = css[min(end+1, len(css)):]
	}
	colors := map[string]string{}
	var l look
	for _, block := range styleBlock.FindAllStringSubmatch(plain.String(), -1) {
		for _, selector := range strings.Split(block[1], ",") {
			selector = strings.TrimSpace(selector)
			var attrs []html.Attribute
			for _, line := range strings.Split(block[2], ";") {
				key, value, ok := strings.Cut(line, ":")
				key, value = strings.TrimSpace(key), strings.TrimSpace(value)
				switch {
				case !ok:
				case selector == ":root" && strings.HasPrefix(key, "--"):
					colors[key] = value
				case slices.Contains(pictureOnly, key):
					attrs = append(attrs, html.Attribute{Key: key, Val: value})
				case key == "font":
					if part := fontPart.FindStringSubmatch(value); part != nil {
						attrs = append(attrs, html.Attribute{Key: "font-weight", Val: part[1]}, html.Attribute{Key: "font-size", Val: part[2]}, html.Attribute{Key: "font-family", Val: part[3]})
					}
				}
			}
			if classAlone.MatchString(selector) && len(attrs) > 0 {
				l = append(l, rule{selector[1:], attrs})
			}
		}
	}
	for i := range l {
		for k := range l[i].attrs {
			l[i].attrs[k].Val = variable.ReplaceAllStringFunc(l[i].attrs[k].Val, func(v string) string { return colors[variable.FindStringSubmatch(v)[1]] })
		}
	}
	return l
}

// dress writes the look onto all drawings below a node. A later rule of the sheet wins
// over an earlier one, and what an element says itself over all of them.
func (l look) dress(root *html.Node) {
	for n := range root.Descendants() {
		if n.Type != html.ElementNode || n.Namespace != "svg" {
			continue
		}
		classes := strings.Fields(attr(n, "class"))
		if len(classes) == 0 {
			continue
		}
		said := map[string]string{}
		for _, r := range l {
			if slices.Contains(classes, r.class) {
				for _, a := range r.attrs {
					said[a.Key] = a.Val
				}
			}
		}
		for _, a := range n.Attr {
			delete(said, a.Key)
		}
		if n.DataAtom != atom.Svg {
			n.Attr = slices.DeleteFunc(n.Attr, func(a html.Attribute) bool { return a.Key == "class" })
		}
		for _, key := range append(pictureOnly, "font-family") {
			if said[key] != "" {
				n.Attr = append(n.Attr, html.Attribute{Key: key, Val: said[key]})
			}
		}
	}
}

// alone is a drawing as a file.
func (l look) alone(drawing string) ([]byte, error) {
	body := &html.Node{Type: html.ElementNode, Data: "body", DataAtom: atom.Body}
	if err := addFragment(body, drawing); err != nil {
		return nil, err
	}
	l.dress(body)
	if body.FirstChild == nil || body.FirstChild.Data != "svg" {
		return nil, fmt.Errorf("no drawing: %.60q", drawing)
	}
	for n := range body.Descendants() {
		n.Attr = slices.DeleteFunc(n.Attr, func(a html.Attribute) bool { return a.Key == "class" })
	}
	var out bytes.Buffer
	if err := html.Render(&out, body.FirstChild); err != nil {
		return nil, err
	}
	out.WriteByte('\n')
	return out.Bytes(), nil
}
