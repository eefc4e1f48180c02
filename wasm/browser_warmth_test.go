//go:build !js

package main

import (
	"testing"

	"filmfurrow/wasm/browsertest"
)

// alone leaves only the strip on the page, for a picture of it.
const alone = `document.querySelectorAll(".masthead, .two, #answers, .doing > :not(#season-strip), .end, .foot").forEach((el) => el.remove())`

func TestTheSeasonStripFitsThreeWidths(t *testing.T) {
	b := browsertest.Open(t)
	for _, width := range []int{390, 820, 1920} {
		p := b.Page(width, "/")
		p.WaitText("#season-strip h2", "Soil warmth")
		p.Do(alone)
		p.Screenshot(map[int]string{390: "strip-390", 820: "strip-820", 1920: "strip-1920"}[width])
		p.Close()
	}
}
