//go:build !js

package main

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/sheet"
	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/tongue"
)

// texts lists what stands on a page to be read: its texts, and the attributes that are
// read out or shown, but for what words.js leaves alone, and for who is cited.
const texts = `(() => {
	const out = new Set();
	const kept = (e) => e.closest("script, style, noscript, textarea, code, pre, cite") !== null || e.closest("[translate]")?.translate === false || e.closest("[lang]") !== document.documentElement;
	const walk = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
	for (let n = walk.nextNode(); n; n = walk.nextNode()) {
		if (n.nodeType === Node.TEXT_NODE) { if (n.parentElement && !kept(n.parentElement) && /\p{L}/u.test(n.nodeValue)) out.add(n.nodeValue); }
		else if (!kept(n)) for (const name of ["aria-label", "title", "placeholder", "alt", "aria-valuetext"]) { const v = n.getAttribute(name); if (v && /\p{L}/u.test(v)) out.add(v); }
	}
	return [...out];
})()`

// initial is a month's first letter, which is another in another language.
var initial = regexp.MustCompile(`^[A-Z]$`)

// stays are the names of works, offices and licenses, and the initials of months.
var stays = regexp.MustCompile(`^(Film & Furrow|USDA Natural Resources Conservation Service|CC BY 4\.0|Go|go-app v[\d.]+|google/uuid v[\d.]+|rsc\.io/qr v[\d.]+|weather-util-data [\d.]+|[A-Z])$`)

// Every text of every view has its twin in each language, for fields that are laid,
// refused, open and far away, folded and unfolded.
func TestEveryTextOfThePageHasATwin(t *testing.T) {
	t.Parallel()
	long.Test(t)
	links := []string{"pepper-cool-spring", "broccoli-late-summer", "melon-weak-well", "tomato-high-summer", "berries-in-august", "tomato-fumigated"}
	if long.All() {
		links = append(links, "carrot-drill", "cabbage-wet-clay", "tomato-frost-pocket")
	}
	b := browsertest.Open(t)
	seen := map[string]string{}
	take := func(p *browsertest.Page, where string) {
		for _, text := range browsertest.Eval[[]string](p, texts) {
			if seen[text] == "" {
				seen[text] = where
			}
		}
	}
	for _, id := range links {
		p := b.Whole(820, "/#f="+linkOf(t, id))
		for i, v := range fieldViews {
			if i > 0 {
				view(p, v.path)
			}
			p.Do(unfold)
			time.Sleep(300 * time.Millisecond)
			p.WaitDrawn()
			take(p, id+" "+v.path)
		}
		p.Close()
	}
	for _, path := range []string{"/workshop", "/about", "/trouble", "/nowhere", "/card", "/takeaway", "/ballots", "/ballot/film", "/ballot/wait", "/handout/mine", "/handout/lark-rise"} {
		p := b.Tab(browsertest.Tab{Path: path, NoWait: true, Errors: true})
		p.Wait("a heading", headingShown)
		p.Do(unfold)
		time.Sleep(time.Second)
		take(p, path)
		p.Close()
	}
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err)
		var misses []string
		for text, where := range seen {
			if _, all := c.Say(text); !all && !stays.MatchString(strings.TrimSpace(text)) {
				misses = append(misses, strings.Join(strings.Fields(text), " ")+"\t"+where)
			}
		}
		slices.Sort(misses)
		t.Logf("%s: %d of %d texts of the page have no twin", name, len(misses), len(seen))
		if file := os.Getenv("FF_MISSES"); file != "" {
			require.NoError(t, os.WriteFile(file, []byte(strings.Join(misses, "\n")+"\n"), 0o644))
		}
		assert.Empty(t, misses)
	}
}

// The page goes from one language to another and back at once, by the menu, and says just
// what the command line says. Whoever comes back finds the language again, also without a
// network; a browser of that language begins with it, and a link keeps its reader's own.
func TestThePageGoesFromOneLanguageToTheOther(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Whole(820, "/why/film")
	p.WaitOffline()
	p.Do(unfold)
	p.WaitDrawn()
	p.Wait("what takes its time", `!/Trying|Working/.test(document.querySelector("main").textContent)`)
	english := slices.DeleteFunc(browsertest.Eval[[]string](p, texts), initial.MatchString)
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err)
		turn := func(to string) {
			p.Do(`document.querySelector("#menu").open = true`)
			p.Click(`[data-language="` + to + `"]`)
			p.Wait("the language "+to, `document.documentElement.lang === "`+to+`" && window.filmfurrow.words.whole("`+to+`")`)
			assert.True(t, browsertest.Eval[bool](p, `document.querySelector('[data-language="`+to+`"]').getAttribute("aria-pressed") === "true"`))
			p.Do(`document.querySelector("#menu").open = false`)
		}
		turn(name)
		want := make([]string, len(english))
		for i, text := range english {
			want[i], _ = c.Say(text)
		}
		said := func() []string {
			list := slices.DeleteFunc(browsertest.Eval[[]string](p, texts), initial.MatchString)
			return slices.Compact(slices.Sorted(slices.Values(list)))
		}
		assert.ElementsMatch(t, slices.Compact(slices.Sorted(slices.Values(want))), said())

		// Figures are those of the reader's country, as the command line writes them.
		for _, country := range []string{"AR", "ES", "MX"} {
			_, figures, err := tongue.Split(name + "-" + country)
			require.NoError(t, err)
			// What is seen is said at once, what lies out of sight soon after.
			p.Do(`(() => {
				scrollTo(0, 0);
				window.filmfurrow.words.speak("` + name + `", "` + name + "-" + country + `");
				window.sight = [...document.querySelectorAll("main *")].filter((el) => {
					const box = el.getBoundingClientRect();
					return el.childElementCount === 0 && el.textContent.trim() && box.width > 0 && box.bottom > 0 && box.top < innerHeight;
				}).map((el) => [el, el.textContent]);
			})()`)
			p.Wait("all of it", `window.filmfurrow.words.whole("`+name+`")`)
			assert.True(t, browsertest.Eval[bool](p, `sight.length > 5 && sight.every(([el, text]) => el.textContent === text)`), country)
			there := make([]string, len(want))
			for i, text := range want {
				there[i] = figures(text)
			}
			assert.Equal(t, country == "MX", slices.Equal(want, there))
			assert.ElementsMatch(t, slices.Compact(slices.Sorted(slices.Values(there))), said(), country)
		}

		// What comes later is said too.
		p.Go("/")
		p.WaitWhole()
		p.Wait("the page in "+name, `document.documentElement.lang === "`+name+`"`)
		p.Choose("#f-crop", "muskmelon")
		crop, all := c.Say("muskmelon")
		require.True(t, all)
		p.Wait("the crop in the answer", `document.querySelector("#view")?.textContent.toLowerCase().includes(`+browsertest.Quote(crop)+`)`)

		b.Stop()
		p.Go("/why/film")
		p.WaitWhole()
		p.Wait("the page in "+name+" without a network", `document.documentElement.lang === "`+name+`"`)
		b.Start()
		turn("en")
		p.Do(unfold)
		p.WaitDrawn()
		for _, text := range browsertest.Eval[[]string](p, texts) {
			if twin, all := c.Say(text); all && twin != text && strings.Contains(text, " ") {
				return // it is English again
			}
		}
		assert.Fail(t, "no English came back")
	}
}

// A first visit from another country is in its language, its units and its figures; units
// that are chosen stay.
func TestAReaderAbroadHasTheirUnitsAndFigures(t *testing.T) {
	t.Parallel()
	long.Test(t)
	c, err := tongue.Load("es")
	require.NoError(t, err)
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `for (const [name, value] of [["language", "es-AR"], ["languages", ["es-AR", "es"]]]) Object.defineProperty(Navigator.prototype, name, { get: () => value });`})
	p.Wait("Spanish", spanish)
	width, all := c.Say("top 76 cm wide")
	require.True(t, all)
	p.WaitText("#view", width)
	p.WaitText("#view", "1,5 m")
	p.Do(`document.querySelector("#menu").open = true`)
	p.Click("#units-US")
	p.Do(`document.querySelector("#menu").open = false`)
	inches, all := c.Say("top 30 in wide")
	require.True(t, all)
	p.WaitText("#view", inches)
	p.Reload()
	p.WaitWhole()
	p.WaitText("#view", inches)
}

// The laying sheet is in the page's language, and in another where the crew reads another:
// all of it, also what is drawn later, and nothing else of the page.
func TestTheSheetSpeaksForTheCrew(t *testing.T) {
	t.Parallel()
	long.Test(t)
	b := browsertest.Open(t)
	c, err := tongue.Load("es")
	require.NoError(t, err)
	es := func(text string) string {
		said, all := c.Say(text)
		require.True(t, all, text)
		return said
	}
	p := b.Whole(820, "/lay#f="+sheetLink(t, "quarry-lane"))
	ask := sheet.Sentences["ask-ball"]
	speaks := func(page, part, sentence string) {
		t.Helper()
		p.Wait("the sheet in "+part, `document.documentElement.lang === "`+page+`" && (window.filmfurrow.words?.whole("`+part+`") ?? "`+part+`" === "en") && document.querySelector("#laying-day h2").textContent === `+browsertest.Quote(sentence)+` && document.querySelector("#sheet-`+part+`").getAttribute("aria-pressed") === "true"`)
		assert.Equal(t, 1, browsertest.Eval[int](p, `document.querySelectorAll("#laying-day [data-sheet][aria-pressed=true]").length`))
		assert.Equal(t, part, browsertest.Eval[string](p, `document.querySelector("#laying-day").closest("[lang]").lang`))
	}
	whole := func() {
		t.Helper()
		for _, text := range browsertest.Eval[[]string](p, `[...document.querySelectorAll("#laying-day :is(h1, h2, h3, p, li, label, button:not([lang]), span, strong, figcaption, text)")].filter((e) => e.children.length === 0 && e.checkVisibility()).map((e) => e.textContent)`) {
			if twin, all := c.Say(text); all {
				assert.Equal(t, twin, text, "it is still in English")
			}
		}
	}
	speaks("en", "en", ask)
	p.Click("#sheet-es")
	speaks("en", "es", es(ask))
	whole()
	assert.Contains(t, p.Text(".bar"), "Water", "the page stays in its own")
	p.Click("#tap-day-hand-outline") // the program draws what has changed
	p.WaitText("#laying-day", es(sheet.Sentences["hand-yes"]))
	whole()
	view(p, "/water")
	view(p, "/lay") // and all of it anew
	speaks("en", "es", es(ask))
	whole()
	p.Click("#sheet-en")
	speaks("en", "en", ask)

	p.Do(`document.querySelector("#menu").open = true`)
	p.Click(`[data-language="es"]`)
	p.Do(`document.querySelector("#menu").open = false`)
	speaks("es", "en", ask) // whoever chose it for the crew keeps it
	assert.Contains(t, p.Text("#lay-print"), sheet.Sentences["print"])
	p.Click("#sheet-es")
	speaks("es", "es", es(ask))
	p.Reload()
	p.WaitWhole()
	speaks("es", "es", es(ask))
	whole()
	p.Click("#sheet-en")
	speaks("es", "en", ask)
	assert.Contains(t, p.Text(".bar"), es("Water"))
	p.Reload()
	p.WaitWhole()
	speaks("es", "en", ask) // the choice for the crew is kept
}
