//go:build !js

package main

import (
	"fmt"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table/normals"
	"filmfurrow/wasm/browsertest"
)

// fieldView is a view of a field, with what it shows first of all.
type fieldView struct{ path, shows string }

var fieldViews = []fieldView{
	{"/", "Lay "}, {"/buy", "Order by"}, {"/lay", "Lay today?"}, {"/water", " min"}, {"/year", "The year of this field"},
	{"/why/film", "Why"}, {"/why/thickness", "Why"}, {"/why/bed", "Why"}, {"/why/tape", "Why"}, {"/why/wait", "Why"}, {"/why/water", "Why"}, {"/why/verdict", "Why"},
	{"/details", "All that is known"}, {"/fields", "Your fields"}, {"/share", "Take it along"},
	{"/trial", "A strip trial of your own"},
}

func viewName(path string) string {
	if path == "/" {
		return "plan"
	}
	return strings.ReplaceAll(strings.TrimPrefix(path, "/"), "/", "-")
}

// Every view stands at an address of its own, says first what it is for, fits its
// width, and is four screens of a tablet at most while nothing is unfolded.
func TestEveryView(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, v := range fieldViews {
		p := b.Whole(820, v.path)
		p.WaitText("h1", v.shows)
		assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth - document.documentElement.clientWidth`), 0, v.path)
		screens := browsertest.Eval[float64](p, `document.documentElement.scrollHeight / 1180`)
		t.Logf("%s: %.1f screens", v.path, screens)
		assert.LessOrEqual(t, screens, 4.0, v.path)
		p.Screenshot("view-" + viewName(v.path) + "-820")
		p.Close()
	}
}

// The first view is one screen on tablet, laptop and projector, two on a phone, with
// few words and few controls; the verdict stands on the first screen everywhere.
func TestTheFirstViewIsOneScreen(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, size := range []struct {
		wide, tall int
		screens    float64
	}{{820, 1180, 1}, {1280, 800, 1}, {1920, 1080, 1}, {390, 844, 2}} {
		p := b.Tab(browsertest.Tab{Path: "/", Width: size.wide, Height: size.tall, Whole: true})
		p.WaitText("#verdict h1", "Lay ")
		screens := browsertest.Eval[float64](p, `document.documentElement.scrollHeight / innerHeight`)
		words := browsertest.Eval[int](p, `document.body.innerText.split(/\s+/).filter((w) => /\w/.test(w)).length
			- [...document.querySelectorAll("select")].reduce((n, s) => n + s.innerText.split(/\s+/).filter((w) => /\w/.test(w)).length - s.selectedOptions[0].text.split(/\s+/).length, 0)`)
		controls := browsertest.Eval[[]string](p, `[...document.querySelectorAll("main input, main select, main button, main summary")].filter((e) => e.checkVisibility()).map((e) => e.id)`)
		bottom := browsertest.Eval[float64](p, `document.querySelector("#verdict").getBoundingClientRect().bottom / innerHeight`)
		t.Logf("%d × %d: %.2f screens, %d words, %d controls %v, verdict ends at %.2f", size.wide, size.tall, screens, words, len(controls), controls, bottom)
		assert.LessOrEqual(t, screens, size.screens, "at %d × %d", size.wide, size.tall)
		assert.LessOrEqual(t, words, 250)
		assert.LessOrEqual(t, len(controls), 7, "%v", controls)
		assert.LessOrEqual(t, bottom, 1.0)
		p.Screenshot(fmt.Sprintf("plan-%d", size.wide))
		p.Close()
	}
	for _, id := range []string{"pepper-cool-spring", "tomato-southern-spring"} { // a link's note and the way back are one line
		p := b.Tab(browsertest.Tab{Path: "/#f=" + linkOf(t, id), Height: 1180, Whole: true})
		p.WaitText("#moved", "came with a link")
		assert.True(t, p.Visible("#take-back"))
		assert.LessOrEqual(t, browsertest.Eval[float64](p, `document.documentElement.scrollHeight / innerHeight`), 1.0, id)
		p.Close()
	}
}

// The buying list, the laying sheet and this week's minutes are one tap away, and each
// sheet's print two: what is asked for stands on the first screen.
func TestEachSheetIsOneTapAway(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, v := range []struct{ path, shows, print string }{
		{"/buy", "#shopping tbody tr", "#shopping-print"}, {"/lay", "#laying-day .tap", "#lay-print"}, {"/water", "#this-week h1", "#water-print"}, {"/year", "#season .steps li", "#year-print"},
	} {
		p := b.Tab(browsertest.Tab{Path: "/", Height: 1180, Whole: true})
		p.Do(`window.printed = 0; window.print = () => { window.printed++; }`)
		p.Click(`.bar a[href$="` + v.path + `"]`)
		p.Wait("what is asked for, on the first screen", fmt.Sprintf(`(() => { const e = document.querySelector(%q); return e && e.checkVisibility() && e.getBoundingClientRect().bottom < innerHeight - 64; })()`, v.shows))
		p.Click(v.print)
		p.Wait("the print", `window.printed === 1`)
		if v.path == "/year" { // what to do where something looks wrong is one tap from there
			p.Click(`#season a[href$="/trouble"]`)
			p.Wait("the page of troubles", `location.pathname === "/trouble" && document.querySelector("h1")?.textContent === "Something looks wrong"`)
		}
		p.Close()
	}
}

// What is carried to the field prints on one page, on Letter as on A4, headed by field,
// crop and days.
func TestEachSheetPrintsOnOnePage(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	prints := func(p *browsertest.Page, path, language string) {
		for name, pdf := range map[string][]byte{"letter": p.PrintLetter("print-" + viewName(path) + "-letter" + language), "a4": p.PrintPDF("print-" + viewName(path) + "-a4" + language)} {
			pages := len(regexp.MustCompile(`/Type\s*/Page[^s]`).FindAll(pdf, -1))
			assert.Equal(t, 1, pages, "%s on %s %s", path, name, language)
		}
	}
	south := southernLink(t)
	for _, path := range []string{"/buy", "/lay", "/water", "/year"} {
		p := b.Tab(browsertest.Tab{Path: path, Whole: true, Before: `localStorage.setItem("film-furrow/language", "en")`})
		p.WaitDrawn()
		prints(p, path, "")
		p.Media("print")
		assert.Regexp(t, `^Otter Bend \(invented\): bell peppers, lay May \d+, 2027, plant May \d+, 2027`, p.Text(".paper-head"), path)
		p.Close()
		// And in the south of the earth, in its language.
		p = b.Tab(browsertest.Tab{Path: path + "#f=" + south, Whole: true, Before: `localStorage.setItem("film-furrow/language", "es")`})
		p.WaitDrawn()
		p.Wait("Spanish", spanish)
		prints(p, path, "-es")
		p.Close()
	}
}

// spanish holds where all of the page has been said in Spanish.
const spanish = `document.documentElement.lang === "es" && window.filmfurrow.words.whole("es")`

// southernLink carries a field at Mendoza, Argentina, planted in the spring there.
func southernLink(t *testing.T) string {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	c, err := casefile.Decode([]byte(`{"version":1,"crop":"tomato","plant_on":"2027-10-01","place":{"lat":-32.88,"lon":-68.83},"soil":{"texture":"loam"}}`), places)
	require.NoError(t, err)
	return casefile.Link(&c)
}

// view goes to another view as a reader does, by a link of the site.
func view(p *browsertest.Page, path string) {
	p.Do(fmt.Sprintf(`(() => { const a = document.createElement("a"); a.href = %q; document.body.append(a); a.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true })); a.remove(); })()`, path))
	path, _, _ = strings.Cut(path, "#")
	p.Wait("the view "+path, fmt.Sprintf(`location.pathname === %q && document.querySelector("main h1, main #place-open") !== null`, path))
	p.WaitDrawn()
}

// viewPaths are the addresses of a field's views.
func viewPaths() (list []string) {
	for _, v := range fieldViews {
		list = append(list, v.path)
	}
	return list
}

// A view is drawn whole also where nothing else is under way that would wake the page: no
// study follows a refused field with a wrong figure.
func TestAViewIsDrawnWholeWhileThePageRests(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Choose("#f-crop", "carrot")
	p.WaitText("#moved", "do not lay film here")
	p.Do(unfold)
	p.Type("#f-field-bed-length-m", "-60")
	p.WaitText("#f-field-bed-length-m-error", "-60")
	view(p, "/buy")
	time.Sleep(2 * time.Second) // longer than any pause of the page's own
	view(p, "/why/verdict")
	assert.NotEmpty(t, p.Text("#verdict-balance"))
}
