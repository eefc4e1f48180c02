//go:build !js

package main

import (
	"fmt"
	"net/http"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/app"
	"filmfurrow/internal/long"
	"filmfurrow/wasm/browsertest"
)

// unfold shows everything that can be unfolded.
const unfold = `document.querySelectorAll("details:not(#menu)").forEach((d) => { d.open = true })`

// states are those in which a reader meets a page; each is brought about in a page that
// is in the one before it. The first two belong to every page.
var states = []struct {
	name string
	on   string // what a page must hold to have this state
	make func(p *browsertest.Page)
}{
	{"as it opens", "main", func(*browsertest.Page) {}},
	{"all unfolded", "main", func(p *browsertest.Page) { p.Do(unfold) }},
	{"the menu", "#menu", func(p *browsertest.Page) { p.Do(`document.querySelector("#menu").open = true`) }},
	{"no film, metric", "#place-open", func(p *browsertest.Page) {
		p.Do(`document.querySelectorAll("#menu").forEach((m) => { m.open = false })`)
		p.Do(unfold)
		p.Do(`document.querySelector("#units-metric").click()`)
		p.Choose("#f-crop", "carrot")
		p.WaitText("#verdict h1", "Do not lay film here")
	}},
	{"Spanish sheet", "#sheet-es", func(p *browsertest.Page) { p.Do(`document.querySelector("#sheet-es").click()`) }},
	{"wrong figures", "#f-field-bed-length-m", func(p *browsertest.Page) {
		p.Do(unfold)
		p.Type("#f-field-bed-length-m", "-60")
		p.WaitText("#f-field-bed-length-m-error", "-60")
	}},
}

// modes are those in which a page is shown.
var modes = []struct {
	name, media string
	features    []string
	without     []string // rules of axe that do not hold there
}{
	{name: "light", features: []string{"prefers-color-scheme", "light"}},
	{name: "dark", features: []string{"prefers-color-scheme", "dark"}},
	// The reader's own colors are laid over the page's; the browser sees to their contrast
	// and axe sees the old ones.
	{name: "forced colors", features: []string{"forced-colors", "active"}, without: []string{"color-contrast", "color-contrast-enhanced"}},
	{name: "print", media: "print"},
}

// widths are in pixels; the last is 820 at 200 % zoom.
var widths = [...]int{320, 820, 1920, 2 * 820}

// shown asks axe of a page in one mode at one width.
func shown(t *testing.T, p *browsertest.Page, what string, mode, width int) {
	m := &modes[mode]
	t.Run(fmt.Sprintf("%s, %s at %d", what, m.name, widths[width]), func(t *testing.T) {
		if width == len(widths)-1 {
			p.Zoom(820, 1000, 2)
		} else {
			p.Resize(widths[width], 1000)
		}
		p.Media(m.media, m.features...)
		assert.Empty(t, p.Axe(m.without...))
		if m.media == "" {
			assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth - document.documentElement.clientWidth`), 0, "no sideways scroll")
		}
	})
}

// walk goes through pages as a reader does, in one tab as long as they are views of a field.
func walk(b *browsertest.Browser, paths []string, do func(p *browsertest.Page, path string)) {
	var tab *browsertest.Page
	for _, path := range paths {
		if !slices.ContainsFunc(fieldViews, func(v fieldView) bool { return v.path == path }) {
			p := b.Whole(820, path)
			do(p, path)
			p.Close()
			continue
		}
		if tab == nil {
			tab = b.Whole(820, path)
			defer tab.Close()
		} else {
			view(tab, path)
		}
		do(tab, path)
	}
}

// axe-core 4.14.1 finds nothing, in any state of any page, in light, dark, forced
// colors and print, at three widths and at 200 % zoom. Contrast is held to WCAG
// 2.2 level AAA (1.4.6). All that a page holds, unfolded, is asked in each mode, and each
// other state in one, in turn with the widths; FF_LONG=all asks every one at each.
func TestAxeFindsNothing(t *testing.T) {
	t.Parallel()
	turn := 0
	ask := func(p *browsertest.Page, path string, from, to int) {
		for k := from; k < to; k++ {
			state := &states[k]
			if !browsertest.Eval[bool](p, `document.querySelector("`+state.on+`") !== null`) {
				continue
			}
			p.Media("")
			p.Resize(820, 1000)
			state.make(p)
			turn++
			for mode := range modes {
				for width := range widths {
					if long.All() || width == (mode+turn)%len(widths) && (state.name == "all unfolded" || mode == turn/len(widths)%len(modes)) {
						shown(t, p, path+", "+state.name, mode, width)
					}
				}
			}
		}
		p.Media("")
		p.Resize(820, 1000)
	}
	b := browsertest.Open(t)
	walk(b, paths(), func(p *browsertest.Page, path string) { ask(p, path, 0, 2) })
	walk(b, paths(), func(p *browsertest.Page, path string) { ask(p, path, 2, len(states)) })
	alone := paths()
	if !long.All() {
		alone = []string{"/", "/water", "/why/film", "/card", "/workshop"}
	}
	for _, path := range alone {
		t.Run(path+" without the program", func(t *testing.T) {
			b := browsertest.Open(t)
			b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNotFound) }))
			p := b.Tab(browsertest.Tab{Path: path, NoWait: true, Errors: true})
			p.WaitText("#strip", "could not be fetched")
			assert.Empty(t, p.Axe())
		})
	}
	for _, path := range []string{"/about", "/trouble", "/nowhere"} {
		t.Run(path, func(t *testing.T) {
			b := browsertest.Open(t)
			p := b.Tab(browsertest.Tab{Path: path, NoWait: true, Errors: true})
			p.Wait("a heading", headingShown)
			p.Do(unfold)
			for _, width := range []int{320, 1920} {
				p.Resize(width, 1000)
				assert.Empty(t, p.Axe())
				assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth`), width, "no sideways scroll")
			}
			p.Media("", "prefers-color-scheme", "dark")
			assert.Empty(t, p.Axe())
		})
	}
}

// The watch must itself be able to fail.
func TestAxeFindsWhatIsPlanted(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.Do(`document.body.firstElementChild.insertAdjacentHTML("beforeend", '<img src="/icons/icon.svg"><input id="unnamed">')`)
	found := strings.Join(p.Axe(), "\n")
	require.Contains(t, found, "image-alt")
	require.Contains(t, found, "label")
}

// WCAG 2.2, 2.5.8 Target Size (Minimum) asks for 24 px and excepts links within
// a sentence; our own aim for every control, and every link that stands alone, is
// 48 px.
func TestTargetsAreLargeEnough(t *testing.T) {
	t.Parallel()
	small := func(p *browsertest.Page, path string) {
		p.Resize(390, 1000)
		p.Wait("a heading", headingShown)
		p.Do(unfold)
		small := browsertest.Eval[[]string](p, `[...document.querySelectorAll("button, input, select, textarea, summary, [role=button], [role=slider], a[href]")]
			.filter((el) => el.checkVisibility() && el.type !== "hidden")
			.filter((el) => el.tagName !== "A" || getComputedStyle(el).display !== "inline" && !el.closest("cite"))
			.map((el) => [el, (el.type === "checkbox" || el.type === "radio") && el.closest("label") || el])
			.filter(([, box]) => { const r = box.getBoundingClientRect(); return r.width < 48 || r.height < 47.5; })
			.map(([el, box]) => { const r = box.getBoundingClientRect(); return (el.id || el.name || el.textContent.trim().slice(0, 30) || el.tagName) + " " + Math.round(r.width) + "×" + Math.round(r.height); })`)
		assert.Empty(t, small, "controls below 48 px on %s", path)
	}
	b := browsertest.Open(t)
	walk(b, paths(), small)
	small(b.Tab(browsertest.Tab{Path: "/about", NoWait: true}), "/about")
}

// paths are the addresses of the site's pages.
func paths() (list []string) {
	for _, listed := range app.Pages() {
		list = append(list, listed.Path)
	}
	return list
}

func TestReducedMotionIsHeeded(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	moving := []string{"/", "/water", "/why/wait", "/year", "/card", "/workshop"} // one of each kind of drawing
	if long.All() {
		moving = paths()
	}
	for _, path := range moving {
		p := b.Tab(browsertest.Tab{Path: "/404", NoWait: true, Errors: true})
		p.Media("", "prefers-reduced-motion", "reduce")
		p.Go(path)
		p.WaitWhole()
		assert.Equal(t, 0, browsertest.Eval[int](p, `document.getAnimations().filter((a) => a.playState === "running").length`), path)
		p.Close()
	}
}
