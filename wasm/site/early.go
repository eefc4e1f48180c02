//go:build !js

package site

import (
	"bytes"
	"maps"
	"slices"

	"golang.org/x/net/html"

	"filmfurrow/app"
	"filmfurrow/rules/pack"
)

// said are the attributes that are read out or shown, as in static/words.js.
var said = []string{"aria-label", "title", "placeholder", "alt", "aria-valuetext", "content"}

// firstTexts lists what stands on the views of the example and on the handouts of the
// farms: what another language has to say first.
func firstTexts(rendered map[string][]byte) ([]string, error) {
	var texts []string
	take := func(page []byte) error {
		doc, err := html.Parse(bytes.NewReader(page))
		if err != nil {
			return err
		}
		for n := range doc.Descendants() {
			switch {
			case n.Type == html.TextNode && n.Parent.Data != "script" && n.Parent.Data != "style":
				texts = append(texts, n.Data)
			case n.Type == html.ElementNode:
				for _, a := range n.Attr {
					if slices.Contains(said, a.Key) {
						texts = append(texts, a.Val)
					}
				}
			}
		}
		return nil
	}
	for _, address := range slices.Sorted(maps.Keys(rendered)) {
		if err := take(rendered[address]); err != nil {
			return nil, err
		}
	}
	for i := range pack.Farms {
		if err := take([]byte(app.Handout(&pack.Farms[i], "", ""))); err != nil {
			return nil, err
		}
	}
	return texts, nil
}
