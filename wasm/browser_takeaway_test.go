//go:build !js

package main

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	framework "github.com/maxence-charriere/go-app/v9/pkg/app"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/app"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table/normals"
	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
	"filmfurrow/wasm/tongue"
)

// taken is a site that knows its address. No program comes with what is taken along, so
// none is compiled.
func taken(t *testing.T) *site.Site {
	t.Helper()
	browsertest.Gate(t)
	built, err := site.Make(site.Options{Pages: site.Pages(), Program: []byte{0}, Site: "https://films.test"})
	require.NoError(t, err)
	return built
}

// Each handout is one page of Letter and of A4, in each language, and is read on a phone
// without going sideways.
func TestEachHandoutPrintsOnOnePage(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenSite(t, taken(t))
	names := []string{app.Mine}
	for i := range pack.Farms {
		names = append(names, pack.Farms[i].ID)
	}
	for _, language := range append([]string{"en"}, tongue.Names()...) {
		p := b.Tab(browsertest.Tab{Path: "/handout/mine", NoWait: true, Before: `localStorage.setItem("film-furrow/language", "` + language + `");`})
		for _, name := range names {
			p.Go("/handout/" + name)
			p.Wait("the language", `document.querySelector("main h1") !== null && document.documentElement.lang === "`+language+`"`)
			for paper, pdf := range map[string][]byte{"letter": p.PrintLetter("handout-" + name + "-" + language + "-letter"), "a4": p.PrintPDF("handout-" + name + "-" + language + "-a4")} {
				pages := len(regexp.MustCompile(`/Type\s*/Page[^s]`).FindAll(pdf, -1))
				assert.Equal(t, 1, pages, "%s on %s in %s", name, paper, language)
			}
			for _, width := range []int{320, 390} {
				p.Resize(width, 844)
				assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth`), width, "%s at %d px in %s", name, width, language)
			}
			if name == "heron-flat" || name == app.Mine || name == "spear-field" {
				p.Screenshot("handout-" + name + "-" + language + "-390")
				assert.Empty(t, p.Axe(), name)
			}
			p.Resize(820, 1000)
		}
		p.Go("/takeaway")
		p.Wait("the language", `document.documentElement.lang === "`+language+`"`)
		p.Screenshot("takeaway-" + language)
		p.Resize(320, 844)
		assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth`), 320, "the list in %s", language)
		assert.Empty(t, p.Axe(), "the list")
		p.Close()
	}
}

// A vote on a phone needs neither script nor server: a tap fills the screen with its picture,
// number and name, and one goes back to choose another.
func TestABallotFillsThePhone(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenSite(t, taken(t))
	for _, q := range app.Ballots() {
		p := b.Tab(browsertest.Tab{Path: "/ballot/" + q.String(), Width: 390, Height: 844, NoScript: true})
		assert.Equal(t, app.Choices(q), browsertest.Eval[int](p, `document.querySelectorAll(".votes li a").length`), q)
		for _, size := range [][2]int{{320, 568}, {390, 844}} {
			p.Resize(size[0], size[1])
			p.Do(`document.querySelector(".votes li:last-child a").click()`)
			p.Wait("the vote", `document.querySelector(".vote:target") !== null`)
			covers := browsertest.Eval[[]float64](p, `(({ x, y, width, height }) => [x, y, width, height])(document.querySelector(".vote:target").getBoundingClientRect())`)
			assert.Equal(t, []float64{0, 0, float64(size[0]), float64(size[1])}, covers, "%s fills the screen", q)
			within := browsertest.Eval[bool](p, `[...document.querySelectorAll(".vote:target > *")].every((el) => { const r = el.getBoundingClientRect(); return r.top >= -1 && r.bottom <= innerHeight + 1 && r.left >= -1 && r.right <= innerWidth + 1; })`)
			assert.True(t, within, "%s at %v: all in sight", q, size)
			assert.GreaterOrEqual(t, browsertest.Eval[float64](p, `document.querySelector(".vote:target .count").getBoundingClientRect().height`), 0.25*float64(size[1]), q)
			assert.GreaterOrEqual(t, browsertest.Eval[float64](p, `document.querySelector(".vote:target svg").getBoundingClientRect().height`), 0.25*float64(size[1]), q)
			if q == question.Bed { // held up, it speaks to readers of either system
				assert.Equal(t, "A bed 10 in high\nA bed 25 cm high", p.Text(".vote:target h2"))
			}
			if size[0] == 390 {
				p.Screenshot("ballot-" + q.String() + "-vote")
			}
			p.Do(`document.querySelector(".vote:target a").click()`)
			p.Wait("the choice again", `document.querySelector(".vote:target") === null`)
			assert.LessOrEqual(t, browsertest.Eval[int](p, `document.documentElement.scrollWidth`), size[0], q)
		}
		p.Screenshot("ballot-" + q.String())
		p.Close()
	}
	p := b.Tab(browsertest.Tab{Path: "/ballot/film#vote-3", Width: 390, NoWait: true})
	p.Wait("the vote", `document.querySelector(".vote:target h2").textContent === "White"`)
	assert.Empty(t, p.Axe())
	p.Go("/ballots")
	p.Wait("the codes", `document.querySelectorAll(".codes .qr").length === 8`)
	assert.Empty(t, p.Axe())
}

// Each of the ten cards is whole in the frame that an editor is given, at every width from
// 320 to 640 px, as a page of another site shows it, with some room to spare for other fonts.
func TestEachCardIsWholeInTheFrameThatIsOffered(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenSite(t, taken(t))
	var frames strings.Builder
	for i := range app.Cards {
		for _, width := range []int{320, 360, 480, 600, 640} {
			offered := site.CardFrame(b.URL, "", &app.Cards[i])
			frames.WriteString(strings.NewReplacer(`width="360"`, fmt.Sprintf(`width="%d"`, width), ` loading="lazy"`, "").Replace(offered))
		}
	}
	news := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, `<!DOCTYPE html><title>News</title><style>iframe { border: 0 }</style><script>window.said = new Map(); addEventListener("message", (e) => said.set(e.source, e.data));</script>%s`, frames.String())
	}))
	t.Cleanup(news.Close)
	p := b.Foreign(news.URL)
	p.Wait("each card's height", `said.size === document.querySelectorAll("iframe").length`)
	type measured struct {
		Card            string
		Width, High, Of int
	}
	most := map[int]measured{}
	for _, m := range browsertest.Eval[[]measured](p, `[...document.querySelectorAll("iframe")].map((f) => ({ Card: f.title, Width: Number(f.width), High: said.get(f.contentWindow), Of: f.clientHeight }))`) {
		assert.LessOrEqual(t, float64(m.High), 0.97*float64(m.Of), "%s at %d px", m.Card, m.Width)
		assert.Greater(t, m.High, 300, "%s at %d px is blank", m.Card, m.Width)
		if m.High > most[m.Width].High {
			most[m.Width] = m
		}
	}
	require.Len(t, most, 5)
	// A mail that shows no frame has the bed as a picture that every mail shows.
	list := b.Tab(browsertest.Tab{Path: "/takeaway", NoWait: true})
	list.Do(`HTMLAnchorElement.prototype.click = function () { window.saved = [this.download, this.href]; }; document.querySelector('[data-picture="heron-flat"]').dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }))`)
	list.Wait("the picture", `window.saved?.[0] === "heron-flat.png" && saved[1].startsWith("data:image/png;base64,") && saved[1].length > 10000`)
	for _, m := range most {
		t.Logf("at %d px the highest is %d of %d px: %s", m.Width, m.High, m.Of, m.Card)
	}
}

// So is a card of any field of one's own: every farm of the tests, refused ones too.
func TestACardOfAnyFieldIsWholeInItsFrame(t *testing.T) {
	t.Parallel()
	built := taken(t)
	b := browsertest.OpenSite(t, built)
	files, err := filepath.Glob("../testdata/cases/*.json")
	require.NoError(t, err)
	places, err := normals.Embedded()
	require.NoError(t, err)
	style := ""
	for name, body := range built.Files {
		if strings.HasPrefix(name, "assets/page-") && strings.HasSuffix(name, ".css") {
			style = string(body)
		}
	}
	require.NotEmpty(t, style)
	pages := map[string]string{}
	var frames strings.Builder
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		c, err := casefile.Decode(data, places)
		require.NoError(t, err)
		id := "/" + strings.TrimSuffix(filepath.Base(file), ".json")
		pages[id] = framework.HTMLString(app.CardOf(c))
		for _, width := range []int{320, 360, 600} {
			fmt.Fprintf(&frames, `<iframe title="%s" width="%d" height="%d" src="%s"></iframe>`, id, width, app.CardHeight, id)
		}
	}
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		if page, ok := pages[r.URL.Path]; ok {
			fmt.Fprintf(w, `<!DOCTYPE html><style>%s</style><body class="framed">%s`, style, page)
			return
		}
		fmt.Fprintf(w, `<!DOCTYPE html><title>Cards</title><style>iframe { border: 0 }</style>%s`, frames.String())
	}))
	t.Cleanup(host.Close)
	p := b.Foreign(host.URL + "/")
	type measured struct {
		Card            string
		Width, High, Of int
	}
	list := browsertest.Eval[[]measured](p, `[...document.querySelectorAll("iframe")].map((f) => ({ Card: f.title, Width: Number(f.width), High: Math.ceil(f.contentDocument.querySelector(".card").getBoundingClientRect().bottom), Of: f.clientHeight }))`)
	require.Len(t, list, 3*len(files))
	highest := measured{}
	for _, m := range list {
		assert.LessOrEqual(t, m.High, m.Of, "%s at %d px", m.Card, m.Width)
		if m.High > highest.High {
			highest = m
		}
	}
	assert.Greater(t, highest.High, 500)
	t.Logf("the highest is %s at %d px: %d of %d px", highest.Card, highest.Width, highest.High, highest.Of)
}

// No words of a poster lie on others or below its edge, in any language.
func TestNoWordsOfAPosterLieOnOthers(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenSite(t, taken(t))
	p := b.Tab(browsertest.Tab{Path: "/takeaway", NoWait: true, Width: 1200, Height: 900})
	wrong := browsertest.Eval[[]string](p, `Promise.all([...new Set([...document.querySelectorAll('a[href*="/poster/"]')].map((a) => a.href))].map(async (address) => {
		const drawing = document.body.appendChild(new DOMParser().parseFromString(await (await fetch(address)).text(), "image/svg+xml").documentElement), out = [], seen = [], whole = drawing.getBoundingClientRect();
		for (const label of drawing.querySelectorAll("text")) {
			const r = label.getBoundingClientRect(), rise = r.height / 5; // of a letter's box, what letters leave free
			if (r.left < whole.left || r.right > whole.right || r.bottom > whole.bottom) out.push(address + ": " + label.textContent + " leaves the sheet");
			for (const [other, o] of seen) if (Math.min(r.right, o.right) - Math.max(r.left, o.left) > 1 && Math.min(r.bottom, o.bottom) - Math.max(r.top, o.top) > rise) out.push(address + ": " + label.textContent + " over " + other.textContent);
			seen.push([label, r]);
		}
		drawing.remove();
		return seen.length > 3 ? out : [address + " has no words", ...out];
	})).then((all) => (window.posters = all.length, all.flat()))`)
	assert.Empty(t, strings.Join(wrong, "\n"))
	assert.Equal(t, 2*len(pack.Farms)*(1+len(tongue.Names())), browsertest.Eval[int](p, `window.posters`))
}
