//go:build !js

package main

import (
	"fmt"
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/app"
	"filmfurrow/wasm/browsertest"
)

// axe-core 4.14.1 finds nothing, on any page, in any state of the start, in
// light, dark, forced colours and print, at three widths. Contrast is held to
// WCAG 2.2 level AAA (1.4.6).
func TestAxeFindsNothing(t *testing.T) {
	modes := map[string]struct {
		media    string
		features []string
	}{
		"light":         {"", []string{"prefers-color-scheme", "light"}},
		"dark":          {"", []string{"prefers-color-scheme", "dark"}},
		"forced colors": {"", []string{"forced-colors", "active"}},
		"print":         {"print", nil},
	}
	for _, listed := range app.Pages() {
		b := browsertest.Open(t)
		p := b.Page(820, listed.Path)
		p.WaitOffline()
		for name, mode := range modes {
			t.Run(fmt.Sprintf("%s %s", listed.Path, name), func(t *testing.T) {
				p.Media(mode.media, mode.features...)
				if name == "forced colors" {
					// The reader's own colours are laid over the page's; the
					// browser sees to their contrast and axe sees the old ones.
					assert.Empty(t, p.Axe("color-contrast", "color-contrast-enhanced"))
					return
				}
				assert.Empty(t, p.Axe())
			})
		}
		p.Media("")
		for _, width := range []int{320, 1920} {
			t.Run(fmt.Sprintf("%s at %d px", listed.Path, width), func(t *testing.T) {
				p.Resize(width, 900)
				assert.Empty(t, p.Axe())
			})
		}
		t.Run(listed.Path+" without the program", func(t *testing.T) {
			b := browsertest.Open(t)
			b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNotFound) }))
			p := b.Tab(browsertest.Tab{Path: listed.Path, NoWait: true, Errors: true})
			p.WaitText("#strip", "could not be fetched")
			assert.Empty(t, p.Axe())
		})
	}
	t.Run("page not found", func(t *testing.T) {
		b := browsertest.Open(t)
		p := b.Tab(browsertest.Tab{Path: "/nowhere", NoWait: true, Errors: true})
		p.Wait("a heading", headingShown)
		assert.Empty(t, p.Axe())
	})
}

// The watch must itself be able to fail.
func TestAxeFindsWhatIsPlanted(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.Do(`document.body.firstElementChild.insertAdjacentHTML("beforeend", '<img src="/icons/icon.svg"><input id="unnamed">')`)
	found := strings.Join(p.Axe(), "\n")
	require.Contains(t, found, "image-alt")
	require.Contains(t, found, "label")
}

// WCAG 2.2, 2.5.8 Target Size (Minimum) asks for 24 px and excepts links within
// a sentence; our own aim for every control is 48 px.
func TestTargetsAreLargeEnough(t *testing.T) {
	for _, listed := range app.Pages() {
		b := browsertest.Open(t)
		p := b.Page(390, listed.Path)
		small := browsertest.Eval[[]string](p, `[...document.querySelectorAll("button, input, select, textarea, summary, [role=button], [role=slider]")]
			.filter((el) => el.checkVisibility() && el.type !== "hidden")
			.map((el) => [el, (el.type === "checkbox" || el.type === "radio") && el.closest("label") || el])
			.filter(([, box]) => { const r = box.getBoundingClientRect(); return r.width < 48 || r.height < 48; })
			.map(([el, box]) => { const r = box.getBoundingClientRect(); return (el.id || el.name || el.textContent.trim().slice(0, 30) || el.tagName) + " " + Math.round(r.width) + "×" + Math.round(r.height); })`)
		assert.Empty(t, small, "controls below 48 px on %s", listed.Path)
	}
}

func TestReducedMotionIsHeeded(t *testing.T) {
	b := browsertest.Open(t)
	for _, listed := range app.Pages() {
		p := b.Tab(browsertest.Tab{Path: "/404", NoWait: true, Errors: true})
		p.Media("", "prefers-reduced-motion", "reduce")
		p.Go(listed.Path)
		p.WaitStarted()
		assert.Equal(t, 0, browsertest.Eval[int](p, `document.getAnimations().filter((a) => a.playState === "running").length`), listed.Path)
	}
}
