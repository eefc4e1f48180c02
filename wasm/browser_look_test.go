//go:build !js

package main

import (
	"testing"

	"filmfurrow/wasm/browsertest"
)

// The page is looked at in three widths; pictures are kept only on request.
func TestThePageFitsThreeWidths(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, width := range []int{390, 820, 1920} {
		p := b.Whole(width, "/")
		p.WaitText("#verdict", "film")
		if sideways := browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"); sideways > 0 {
			t.Errorf("at %d px the page scrolls sideways by %d px", width, sideways)
		}
		p.Screenshot(map[int]string{390: "page-390", 820: "page-820", 1920: "page-1920"}[width])
		p.Close()
	}
}
