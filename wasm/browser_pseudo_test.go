//go:build !js

package main

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/internal/long"
	"filmfurrow/wasm/browsertest"
)

// pseudo puts the page into a language that there is not: each letter bears an accent, and
// each word is a third longer. What stays as it was is not said by the catalogue, and what
// is cut off would be cut off in a language of long words.
const pseudo = `(() => {
	const words = window.filmfurrow.words;
	words.parse = () => (text) => [text.replace(/\p{L}+/gu, (word) => [...word].map((r, i) => i % 3 === 2 ? r + "\u0301" + r + "\u0301" : r + "\u0301").join("")), true];
	words.learn("en-XA", "");
	words.speak("en-XA");
})()`

// forgotten lists the texts that are seen and have no accent.
const forgotten = `(() => {
	const kept = (e) => e.closest("script, style, noscript, textarea, code, pre, cite, option") !== null || e.closest("[translate]")?.translate === false || e.closest("[lang]") !== document.documentElement;
	const out = new Set(), walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let n = walk.nextNode(); n; n = walk.nextNode()) {
		const text = n.nodeValue.trim(), e = n.parentElement;
		if (/\p{L}/u.test(text) && !text.includes("\u0301") && !(text.includes("://") && !text.includes(" ")) && !kept(e) && e.checkVisibility()) out.add("forgotten: " + text.slice(0, 80));
	}
	return [...out];
})()`

// clipped lists the texts that do not fit: cut off by what holds them, out of their
// drawing, or over another label of it.
const clipped = `(() => {
	const out = new Set(), say = (what, e) => out.add(what + ": <" + e.localName + (e.id ? "#" + e.id : "") + (e.getAttribute("class") ? "." + e.getAttribute("class").replaceAll(" ", ".") : "") + "> in " + (e.parentElement.closest("[id]")?.id ?? "") + ": " + e.textContent.trim().replaceAll("\u0301", "").slice(0, 60));
	const forEars = (e) => e !== null && (getComputedStyle(e).clipPath === "inset(50%)" || forEars(e.parentElement));
	const seen = (e) => e.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !forEars(e);
	for (const e of document.querySelectorAll("body *")) {
		if (e.closest("svg, option, script, style, .for-readers") || ![...e.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && /\p{L}/u.test(n.nodeValue)) || !seen(e)) continue;
		const style = getComputedStyle(e);
		if (style.display !== "inline" && e.clientWidth > 1 && e.scrollWidth > e.clientWidth + 1 && !/auto|scroll/.test(style.overflowX)) say(style.overflowX === "visible" ? "spilled" : "clipped", e);
		if (style.overflowY === "hidden" && e.clientHeight > 1 && e.scrollHeight > e.clientHeight + 2) say("clipped below", e);
		const range = document.createRange();
		range.selectNodeContents(e);
		const own = range.getBoundingClientRect();
		for (let box = e.parentElement; box !== document.body && box; box = box.parentElement) {
			const s = getComputedStyle(box), at = box.getBoundingClientRect();
			if (/auto|scroll/.test(s.overflowX)) break;
			if (/hidden|clip/.test(s.overflowX) && at.width > 1 && own.width > 0 && (own.right > at.right + 1 || own.left < at.left - 1)) { say("clipped by " + box.localName + "." + box.className, e); break; }
		}
	}
	for (const drawing of document.querySelectorAll("svg")) {
		if (!seen(drawing)) continue;
		let holder = drawing; // it may draw into a margin that is left for it
		while (holder.closest("svg") && getComputedStyle(holder).overflow === "visible") holder = holder.parentElement;
		const frame = holder.getBoundingClientRect(), labels = [];
		for (const label of drawing.querySelectorAll("text")) {
			const r = label.getBoundingClientRect();
			if (r.width === 0 || !seen(label) || !/\p{L}/u.test(label.textContent)) continue;
			if (label.ownerSVGElement === drawing && (r.left < frame.left - 2 || r.right > frame.right + 2)) say("outside its drawing", label);
			for (const [other, o] of labels) if (Math.min(r.right, o.right) - Math.max(r.left, o.left) > 2 && Math.min(r.bottom, o.bottom) - Math.max(r.top, o.top) > r.height / 4) say("over “" + other.textContent.replaceAll("\u0301", "") + "”", label);
			labels.push([label, r]);
		}
	}
	if (document.documentElement.scrollWidth > document.documentElement.clientWidth) out.add("the page is wider than its window");
	return [...out];
})()`

// In a language of accents and long words every view has all of its text, and all of it
// is seen, on a phone, a tablet and a laptop.
func TestNoTextIsForgottenOrCutOff(t *testing.T) {
	t.Parallel()
	long.Test(t)
	b := browsertest.Open(t)
	for i, path := range slices.Concat(viewPaths(), []string{"/workshop", "/about", "/nowhere", "/trouble", "/takeaway", "/ballots", "/ballot/film", "/handout/mine"}) {
		p := b.Tab(browsertest.Tab{Path: path, NoWait: true, Errors: true, Before: `localStorage.setItem("film-furrow/language", "es")`})
		p.Wait("a heading", headingShown)
		p.WaitDrawn()
		p.Do(unfold)
		p.WaitDrawn()
		p.Wait("the script that says the page", spanish)
		if i%3 == 0 {
			assert.Empty(t, p.Axe(), path) // it knows the language
		}
		p.Do(pseudo)
		p.Wait("all of it", `window.filmfurrow.words.whole("en-XA")`)
		for _, size := range [][2]int{{390, 844}, {820, 1180}, {1280, 800}} {
			p.Resize(size[0], size[1])
			p.WaitDrawn()
			for _, wrong := range append(browsertest.Eval[[]string](p, forgotten), browsertest.Eval[[]string](p, clipped)...) {
				assert.Fail(t, wrong, "%s at %d", path, size[0])
			}
			p.Screenshot("pseudo-" + strings.Trim(viewName(path), "-") + "-" + strconv.Itoa(size[0]))
		}
		p.Close()
	}
}
