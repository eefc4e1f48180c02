//go:build !js

package main

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

// here is where the focus is, and what a reader who only has keys sees of it:
// WCAG 2.2, 2.4.7 Focus Visible, and 2.4.11 Focus Not Obscured.
type here struct {
	ID, Text        string
	Outlined, Shown bool
}

const lookHere = `(() => {
	const el = document.activeElement;
	if (!el || el === document.body) return { ID: "", Text: "", Outlined: true, Shown: true };
	const style = getComputedStyle(el), boxes = [...el.getClientRects()].filter((r) => r.width && r.height);
	const seen = (r) => [[r.left + 3, r.top + 3], [r.right - 3, r.top + 3], [r.left + 3, r.bottom - 3], [r.right - 3, r.bottom - 3], [r.left + r.width / 2, r.top + r.height / 2]].some(([x, y]) => {
		const top = document.elementFromPoint(x, y);
		return top !== null && (el.contains(top) || top.contains(el) || top.closest("label")?.control === el);
	});
	return {
		ID: el.id, Text: (el.id || el.getAttribute("aria-label") || el.textContent.trim().slice(0, 60) || el.tagName),
		Outlined: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2,
		Shown: el.type === "file" || boxes.some(seen),
	};
})()`

// tabTo presses Tab until the focus is on the element with the id. At each stop
// the focus must show and must not be hidden.
func tabTo(t *testing.T, p *browsertest.Page, id string) {
	t.Helper()
	for range 700 {
		p.Press("Tab")
		at := browsertest.Eval[here](p, lookHere)
		if !at.Shown { // a smooth scroll may be under way
			p.Wait("the focus to come into view at "+at.Text, lookHere+`.Shown`)
		}
		assert.True(t, at.Outlined, "the focus does not show at %s", at.Text)
		if at.ID == id {
			return
		}
	}
	t.Fatalf("Tab does not reach #%s", id)
}

// The whole job with keys alone: say what the field is, open what is folded, give a
// figure, mend a wrong one, read why, price the list, tick the laying-day sheet,
// save the calendar, name the field and copy the link. No mouse, no script.
func TestTheWholeJobByKeyboardAlone(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `
		window.savedFiles = [];
		HTMLAnchorElement.prototype.click = function () { window.savedFiles.push(this.download); };
		Object.defineProperty(navigator, "clipboard", { value: { writeText: (text) => { window.copied = text; return Promise.resolve(); } } });`})
	p.Media("", "prefers-reduced-motion", "reduce")
	p.Wait("the stations", ready)
	p.WaitText("#verdict h1", "black")

	// The first stop leads past the form, as every page of this kind should.
	p.Press("Tab")
	assert.Equal(t, "Skip to the view", browsertest.Eval[here](p, lookHere).Text)
	p.Press("Enter")
	p.Wait("the view to have the focus", `document.activeElement.id === "main"`)
	p.Reload()
	p.WaitWhole()
	p.Wait("the stations", ready)
	// go presses Tab until it stands on a link to the address, and Enter.
	goTo := func(path string) {
		t.Helper()
		for range 300 {
			p.Press("Tab")
			if browsertest.Eval[bool](p, fmt.Sprintf(`document.activeElement.matches('a[href$="%s"]')`, path)) {
				p.Press("Enter")
				p.Wait("the view "+path, fmt.Sprintf(`location.pathname === "%s"`, path))
				p.WaitDrawn()
				return
			}
		}
		t.Fatalf("Tab does not reach a link to %s", path)
	}
	openMenu := func() {
		t.Helper()
		for range 300 {
			p.Press("Tab")
			if browsertest.Eval[bool](p, `document.activeElement.closest("#menu > summary") !== null`) {
				p.Press("Enter")
				p.Wait("the menu", `document.querySelector("#menu").open`)
				return
			}
		}
		t.Fatal("Tab does not reach the menu")
	}

	openMenu()
	tabTo(t, p, "units-metric")
	p.Press("Space")
	p.WaitText("#bed-we-make .label-right", "cm high")
	tabTo(t, p, "f-crop")
	for range 3 {
		p.Press("ArrowDown")
	}
	p.Wait("another crop", `document.querySelector("#f-crop").value !== "bell-pepper"`)
	tabTo(t, p, "place-open")
	p.Press("Enter")
	p.Wait("the box to have the focus", `document.activeElement.id === "f-place"`)
	for _, key := range "ithaca ny" {
		p.Press(string(key))
	}
	p.WaitText(".results", "ITHACA")
	p.Press("ArrowDown")
	p.Press("Enter")
	p.WaitText("#place-open", "Ithaca")
	p.Wait("the soil to be worked out", `!document.querySelector("#verdict .waiting")`)

	// Read why, down to the sources.
	goTo("/why/film")
	for range 300 {
		p.Press("Tab")
		if browsertest.Eval[bool](p, `document.activeElement.closest("#film-balance > summary") !== null`) {
			break
		}
	}
	p.Press("Enter")
	p.Wait("the reasons to unfold", `document.querySelector("#film-balance").open`)

	// Open the folded part of the form, type a wrong figure, hear of it, mend it.
	openMenu()
	goTo("/details")
	for range 80 {
		p.Press("Tab")
		if browsertest.Eval[bool](p, `document.activeElement.closest("#more-field > summary") !== null`) {
			break
		}
	}
	p.Press("Enter")
	p.Wait("the beds to unfold", `document.querySelector("#more-field").open`)
	tabTo(t, p, "f-field-bed-length-m")
	replace := func(text string) {
		p.Press("Control+a")
		for _, key := range text {
			p.Press(string(key))
		}
	}
	replace("-5")
	p.WaitText("#f-field-bed-length-m-error", "-5")
	assert.Equal(t, "f-field-bed-length-m", browsertest.Eval[here](p, lookHere).ID, "the focus stays where the mend is")
	replace("150")
	p.Wait("the error to go", `document.querySelector("#f-field-bed-length-m-error").textContent === ""`)

	// The sheets.
	goTo("/buy")
	for range 300 {
		p.Press("Tab")
		if browsertest.Eval[bool](p, `document.activeElement.closest("#shopping-prices > summary") !== null`) {
			break
		}
	}
	p.Press("Enter")
	tabTo(t, p, "f-prices-film-roll")
	replace("150")
	p.WaitText("#costs", "150")
	goTo("/lay")
	for range 300 {
		p.Press("Tab")
		if browsertest.Eval[bool](p, `document.activeElement.matches("#laying-day input[type=checkbox]")`) {
			break
		}
	}
	p.Press("Space")
	p.Wait("a tick", `document.querySelectorAll("#laying-day input[type=checkbox]:checked").length === 1`)
	goTo("/year")
	tabTo(t, p, "season-ics")
	p.Press("Enter")
	p.Wait("the calendar", `window.savedFiles.some((name) => name.endsWith(".ics"))`)
	openMenu()
	goTo("/share")
	tabTo(t, p, "share-copy")
	p.Press("Enter")
	p.Wait("the link", `window.copied?.includes("#f=")`)
	p.WaitText("#share-told", "copied")
	tabTo(t, p, "field-now")
	p.Press("Enter")
	p.Wait("the fields", `document.querySelector("#field-name") !== null`)
	tabTo(t, p, "field-name")
	replace("North")
	tabTo(t, p, "field-keep")
	p.Press("Enter")
	p.WaitText("#fields-told", "Kept as “North”")
	p.Go("/details")
	p.WaitWhole()
	p.Wait("all of it to be there", `document.querySelector("#f-field-bed-length-m").value === "150" && document.querySelector("#place-now").textContent.includes("ITHACA")`)
}

// Every control has a name and, where it can be wrong, a place for its error that
// is read out when it comes; the focus goes in the order of the page.
func TestLabelsErrorsAndOrder(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	walk(b, paths(), func(p *browsertest.Page, _ string) {
		p.Do(unfold)
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("input, select, textarea")].filter((el) => el.checkVisibility())
			.filter((el) => !(el.labels?.length && [...el.labels].some((l) => l.textContent.trim())) && !el.getAttribute("aria-label") && !el.getAttribute("aria-labelledby")).map((el) => el.id)`), "controls without a label")
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("[tabindex]")].filter((el) => el.tabIndex > 0).map((el) => el.id || el.className)`), "nothing jumps the queue")
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("[aria-describedby], [aria-labelledby]")].flatMap((el) => (el.getAttribute("aria-describedby") ?? "").split(" ").concat((el.getAttribute("aria-labelledby") ?? "").split(" ")).filter((id) => id && !document.getElementById(id)).map((id) => el.id + " names " + id))`))
		// The error of a field that is typed into comes and goes with each key: it is read
		// out from one place when the typing has rested.
		silent := browsertest.Eval[[]string](p, `[...document.querySelectorAll("[id$=-error]")].filter((el) => (el.getAttribute("role") !== "alert") !== el.id.startsWith("f-")).map((el) => el.id)`)
		assert.Empty(t, silent, "errors that are not read out, or at each key")
	})
}

// A picture is drawn of shapes: no text in pictures, and each has a name.
func TestNoTextInPictures(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	walk(b, paths(), func(p *browsertest.Page, _ string) {
		p.Do(unfold)
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("img, picture, canvas, svg image, object, embed, video")].map((el) => el.outerHTML.slice(0, 80))`), "pictures of dots cannot be read out or enlarged")
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("svg")].filter((el) => !el.parentElement.closest("svg") && el.checkVisibility() && el.getAttribute("aria-hidden") !== "true" && !el.getAttribute("aria-label") && !el.getAttribute("aria-labelledby")).map((el) => el.outerHTML.slice(0, 80))`), "drawings without a name")
	})
}

// Printed in black and white: paper white, text dark, controls gone, the answers
// and the list there, and in the reader's own colours the drawings are drawn in them.
func TestPrintInBlackAndWhite(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, path := range []string{"/", "/buy", "/lay", "/water", "/year", "/why/film"} {
		p := b.Whole(820, path)
		p.Media("print", "prefers-color-scheme", "dark") // a dark screen must not print dark
		grey := browsertest.Eval[[]string](p, `[...document.querySelectorAll("body, main *")].filter((el) => el.checkVisibility() && !el.closest("svg")).flatMap((el) => {
		const style = getComputedStyle(el), [r, g, b, a = 1] = style.backgroundColor.match(/[\d.]+/g).map(Number);
		const own = [...el.childNodes].some((n) => n.nodeType === 3 && n.textContent.trim());
		const [tr, tg, tb] = style.color.match(/[\d.]+/g).map(Number);
		const out = [];
		if (a > 0 && Math.min(r, g, b) < 235) out.push("dark ground: " + el.tagName + "." + el.className + " " + style.backgroundColor);
		if (own && 0.2126 * tr + 0.7152 * tg + 0.0722 * tb > 110) out.push("pale text: " + el.tagName + "." + el.className + " " + style.color);
		return out;
	})`)
		assert.Empty(t, grey)
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("button, #strip, .skip")].filter((el) => el.checkVisibility()).map((el) => el.id || el.textContent)`), "controls on paper")
		assert.True(t, browsertest.Eval[bool](p, `document.querySelector("h1").checkVisibility()`), path)

		p.Media("", "forced-colors", "active")
		assert.Empty(t, browsertest.Eval[[]string](p, `(() => {
		const probe = document.createElement("span");
		document.body.append(probe);
		probe.className = "strip";
		const ink = getComputedStyle(probe).color;
		probe.remove();
		return [...document.querySelectorAll(".bed-svg text, .strip-svg text, .water-svg text")].filter((el) => getComputedStyle(el).fill !== ink).map((el) => el.textContent + " " + getComputedStyle(el).fill + " not " + ink);
	})()`), "labels that keep their own color")
		p.Close()
	}
}

// Text alone made twice as large (WCAG 2.2, 1.4.4): nothing is cut and nothing
// scrolls sideways.
func TestTextTwiceAsLarge(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	walk(b, viewPaths(), func(p *browsertest.Page, path string) {
		p.Do(unfold)
		before := browsertest.Eval[float64](p, `parseFloat(getComputedStyle(document.querySelector("main p, main h1")).fontSize)`)
		p.Do(`document.documentElement.style.fontSize = "200%"`)
		require.Equal(t, 2*before, browsertest.Eval[float64](p, `parseFloat(getComputedStyle(document.querySelector("main p, main h1")).fontSize)`))
		assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth`), 820, path)
		assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("main p, main h2, main h3, main button, main label, main summary")].filter((el) => el.checkVisibility() && getComputedStyle(el).overflow !== "visible" && getComputedStyle(el).clipPath === "none" && !el.closest(".for-readers") && !el.classList.contains("for-readers") && el.scrollHeight > el.clientHeight + 2).map((el) => el.id || el.className || el.textContent.slice(0, 40))`), "text that is cut on %s", path)
		p.Do(`document.documentElement.style.fontSize = ""`)
	})
}
