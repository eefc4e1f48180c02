//go:build !js

package main

import (
	"encoding/csv"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/field"
	"filmfurrow/rules/sheet"
	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/tongue"
)

// Whether to lay at all stands before any colour, with the gate that decides, and
// a field where film must not be laid never prints ready.
func TestTheVerdictComesFirst(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/#f="+linkOf(t, "carrot-drill"))
	p.WaitText("#verdict", "Do not lay film here.")
	p.WaitText("#verdict .gates", "holes")
	assert.Equal(t, 3, browsertest.Eval[int](p, `document.querySelectorAll(".bar small").length`), "Buy, Lay and Water say not now")
	for path, says := range map[string]string{"/buy": "Nothing to buy for film.", "/water": "No drip under film now."} {
		view(p, path)
		p.WaitText("h1", says)
		assert.Zero(t, browsertest.Eval[int](p, `document.querySelectorAll("main table, main .clock").length`), path)
	}
	view(p, "/year")
	p.WaitText("h1", "without film")
	assert.NotContains(t, p.Text("#season"), "Lay the film")
	for _, path := range []string{"/why/film", "/why/wait"} {
		view(p, path)
		p.WaitText(".if", "not to be laid here")
	}
	view(p, "/lay")
	p.WaitText("h1", "Do not lay film here.")
	assert.Zero(t, browsertest.Eval[int](p, `document.querySelectorAll("#laying-day input, #laying-day .tap, #laying-day .state").length`), "there is nothing to tick")
}

func TestTheListKeepsOursAndTheGrowers(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/buy")
	p.Do(unfold)
	p.WaitText("#shopping", "Rolls of film")
	p.WaitText("#costs", "No total yet: give a price.")
	p.Type("#f-shopping-film-rolls", "7")
	p.Type("#f-prices-currency", "USD")
	p.Type("#f-prices-film-roll", "150")
	p.WaitText("#costs", "USD 1050.00")
	p.WaitText("#costs", "in part: what has no price is left out")
	p.WaitText("#shopping-how", "Rounded up once")                  // ours stays
	p.WaitText("#costs", "For scale only: a farm magazine of 2013") // dated context, no default
	p.Type("#f-prices-tape-m", "0.02")
	p.WaitText("#costs", "no price given")
	p.WaitText(`label[for="f-prices-tape-m"]`, "per ft") // US growers buy tape by the foot
	p.Type("#f-prices-wage-hour", "-3")
	p.WaitText("#f-prices-wage-hour-error", "-3")
	p.WaitText("#f-prices-wage-hour-error", "A price is 0 or more.")
	p.Reload()
	p.WaitWhole()
	p.Wait("the grower's figure", `document.querySelector("#f-shopping-film-rolls").value === "7"`)
}

// What was found on the day and the ticked boxes decide "ready"; both survive a
// reload, in both languages.
func TestTheDayAndTheTicksDecideReadyAndSurvive(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/lay#f="+sheetLink(t, "quarry-lane"))
	p.WaitText("#note", "came with a link")
	p.WaitText("#laying-day .state", "No: 2. Open:")
	p.WaitText("#laying-day .stop-no", "The hand is dry")
	tickAll(p)
	p.WaitText("#laying-day .state", "No: 2. Open: 1.")
	p.Click("#tap-day-hand-outline")
	p.Type("#f-day-wind-m-s", "4")
	p.WaitText("#laying-day .state", "No: 0. Open: 1.")
	p.Type("#f-day-rolls", "1")
	p.Wait("ready", `document.querySelector("#laying-day .state").textContent === "Yes, lay today."`)
	p.Click("#sheet-es")
	p.Wait("listo", `document.querySelector("#laying-day .state strong").textContent === "Sí, tienda hoy."`)
	assert.Equal(t, "es", browsertest.Eval[string](p, `document.querySelector("#laying-day").lang`))
	assert.Equal(t, "en", browsertest.Eval[string](p, `document.documentElement.lang`), "the sheet alone")
	p.Go("/lay") // the link's own address would open the link's field again
	p.WaitWhole()
	p.Wait("still ready, in the language that was chosen for the crew", `document.querySelector("#laying-day .state").textContent === "Sí, tienda hoy."`)
	p.Click("#sheet-en")
	p.Wait("still ready", `document.querySelector("#laying-day .state").textContent === "Yes, lay today."`)
	assert.Equal(t, 5, browsertest.Eval[int](p, `document.querySelectorAll("#laying-day input[type=checkbox]:checked, #laying-day .tap[id^=tap-go-][aria-pressed=true]").length`))
	p.Type("#f-day-wind-m-s", "35")
	p.WaitText("#laying-day .state", "No: 1.")
	p.Click("#tick-go-read")
	p.WaitText("#laying-day .state", "No: 1. Open: 1.")
	p.Click("#tap-wind-yes") // who looks and says so takes the figure's place
	p.Wait("no figure", `document.querySelector("#f-day-wind-m-s").value === ""`)
	p.WaitText("#laying-day .state", "Still to do: Everyone has read")
	p.Click("#tap-wind-no")
	p.WaitText("#laying-day .state", "Wait for calmer air.")
	p.Click("#tap-wind-no") // a second tap takes it back
	p.WaitText("#laying-day .state", "No: 0. Open: 2.")
	p.Click("#sheet-es")
	p.Type("#f-day-wind-m-s", "x")
	p.WaitText("#f-day-wind-m-s-error", "“x” no se puede usar. Se admite: ")
	assert.Empty(t, browsertest.Eval[[]string](p, `[...document.querySelectorAll("#laying-day label, #laying-day button, #laying-day h1, #laying-day h2, #laying-day h3, #laying-day .state, #laying-day figcaption, #laying-day svg text")].filter((e) => e.checkVisibility()).map((e) => e.textContent).filter((t) => /\b(the|of|is|lay|film|hand|wind|figure|tape|deep|high|each|Print|Yes|beds)\b/.test(t))`), "English in the Spanish sheet")
}

// tickAll says yes to every box, on a card or in the list.
func tickAll(p *browsertest.Page) {
	const next = `[...document.querySelectorAll("#laying-day input[type=checkbox]:not(:checked), #laying-day .tap[id^=tap-go-]:not([id$=-no])[aria-pressed=false]")]`
	p.Wait("every box", `(() => { const open = `+next+`; open[0]?.click(); return open.length === 0; })()`)
}

// sheetLink is the link of one of the farms whose sheets are golden.
func sheetLink(t *testing.T, id string) string {
	t.Helper()
	return linkOfFile(t, "../testdata/sheets/"+id+".json")
}

// The sheets of three invented farms, printed by Chromium: so many pages, the
// laying-day sheet on one, and every line of the golden text on them.
func TestTheSheetsPrint(t *testing.T) {
	t.Parallel()
	pdftotext, err := exec.LookPath("pdftotext")
	if err != nil {
		const missing = "pdftotext is not here (Debian: apt-get install poppler-utils)"
		require.NotEqual(t, "true", os.Getenv("CI"), missing)
		t.Skip(missing)
	}
	b := browsertest.Open(t)
	for _, farm := range []struct {
		id, units, language string
		ready               bool
	}{
		{"alder-bend", "US", "en", true},
		{"quarry-lane", "US", "es", false},
		{"terrace-south", "metric", "en", false},
	} {
		p := b.Whole(820, "/lay#f="+sheetLink(t, farm.id))
		p.WaitText("#note", "came with a link")
		p.Do(`document.querySelector("#menu").open = true`)
		p.Click("#units-" + farm.units)
		p.Do(`document.querySelector("#menu").open = false`)
		p.Click("#sheet-" + farm.language)
		p.Wait("all of its language", `"`+farm.language+`" === "en" || window.filmfurrow.words?.whole("`+farm.language+`")`)
		if farm.ready {
			tickAll(p)
		}
		state := map[string]string{"entrue": "Yes, lay today.", "enfalse": "Not yet.", "esfalse": "Todavía no."}[farm.language+strconv.FormatBool(farm.ready)]
		p.WaitText("#laying-day .state", state)
		read := func(name string, pdf []byte) (text string, pages int) {
			file := filepath.Join(t.TempDir(), farm.id+".pdf")
			require.NoError(t, os.WriteFile(file, pdf, 0o644))
			out, err := exec.Command(pdftotext, "-raw", file, "-").Output()
			require.NoError(t, err)
			return string(out), strings.Count(strings.TrimRight(string(out), "\f\n"), "\f") + 1
		}
		out, pages := read("lay", p.PrintPDF("sheets-"+farm.id+"-lay"))
		assert.Equal(t, 1, pages, "the laying-day sheet of %s is one page", farm.id)
		assert.Contains(t, out, state)
		last := sheet.Sentences["last-word"]
		if farm.language != "en" {
			c, err := tongue.Load(farm.language)
			require.NoError(t, err)
			last, _ = c.Say(last)
		}
		assert.Contains(t, tight(out), tight(last))
		for path, most := range map[string]int{"/buy": 3, "/year": 3} { // with all that is folded, also what comes as a file
			view(p, path)
			p.Do(`document.querySelectorAll("main details").forEach((d) => { d.open = true })`)
			p.Wait("the texts of "+path, `!/texts are not here yet|textos todavía/.test(document.querySelector("main").innerText)`)
			text, pages := read(viewName(path), p.PrintPDF("sheets-"+farm.id+"-"+viewName(path)))
			assert.LessOrEqual(t, pages, most, "%s of %s", path, farm.id)
			out += text
		}
		golden := readText(t, "testdata/sheets/"+farm.id+".txt")
		if farm.language != "en" {
			head, sheet, _ := strings.Cut(golden, "# laying day\n")
			_, rest, _ := strings.Cut(sheet, "# ")
			golden = head + "# laying day\n" + readText(t, "testdata/sheets/"+farm.id+"."+farm.language+".txt") + "# " + rest
		}
		all, part := tight(out), ""
		for line := range strings.Lines(golden) {
			line = strings.TrimSpace(line)
			if name, found := strings.CutPrefix(line, "# "); found {
				part = name
				continue
			}
			if part == "season" && dayAlone.MatchString(line) { // the page leaves the year to its heading and writes as the units do
				line = oneDay.ReplaceAllString(line, map[string]string{"US": "$1 $2", "metric": "$2 $1"}[farm.units])
			}
			assert.True(t, strings.Contains(all, tight(line)), "%s, %s: %s", farm.id, part, line)
		}
		p.Close()
	}
}

var (
	oneDay   = regexp.MustCompile(`([A-Z][a-z]+) (\d+), \d{4}`)
	dayAlone = regexp.MustCompile(`^(Every week from )?[A-Z][a-z]+ \d+, \d{4}( to [A-Z][a-z]+ \d+, \d{4})?$`)
)

// tight leaves out the white space, which a page breaks where it must, and the
// case, since the page begins its cells with a capital.
func tight(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), "")) }

func TestTheSeasonIsSavedAsACalendar(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/year")
	p.WaitText("#season", "Lay the film.")
	p.Do(`window.saved = []; URL.createObjectURL = (blob) => { blob.text().then((t) => saved.push(t)); return "#"; }; HTMLAnchorElement.prototype.click = function () { window.savedName = this.download; }`)
	p.Click("#season-ics")
	p.Wait("the file", `window.saved.length === 1 && saved[0].startsWith("BEGIN:VCALENDAR\r\n") && savedName.endsWith(".ics")`)
	assert.Contains(t, browsertest.Eval[string](p, `saved[0]`), "RRULE:FREQ=WEEKLY;COUNT=")
	view(p, "/buy")
	p.Click("#shopping-csv")
	p.Wait("the table", `window.saved.length === 2 && saved[1].startsWith('"item","ask for","quantity","how"')`)
	rows, err := csv.NewReader(strings.NewReader(browsertest.Eval[string](p, `saved[1]`))).ReadAll()
	require.NoError(t, err, "RFC 4180, by the standard library's reader")
	assert.Len(t, rows, 1+len(field.ItemKeys))
	p.Do(`navigator.clipboard.writeText = (t) => { window.copied = t; return Promise.resolve(); }`)
	p.Click("#shopping-copy")
	p.Wait("the text", `window.copied?.startsWith("Backflow device: 1")`)
	p.WaitText("#shopping", "Copied.")

	// And in another language, where the page is read in one.
	c, err := tongue.Load("es")
	require.NoError(t, err)
	es := func(text string) string {
		said, all := c.Say(text)
		require.True(t, all, text)
		return said
	}
	p.Do(`document.querySelector('[data-language="es"]').click()`)
	p.Wait("Spanish", `document.documentElement.lang === "es" && window.filmfurrow.words.whole("es")`)
	p.Click("#shopping-copy")
	p.Wait("the text", `window.copied?.startsWith(`+browsertest.Quote(es("Backflow device")+": 1")+`)`)
	p.Click("#shopping-csv")
	p.Wait("the table", `window.saved.length === 3 && saved[2].startsWith(`+browsertest.Quote(`"`+es("item")+`","`+es("ask for")+`"`)+`)`)
	view(p, "/year")
	p.Click("#season-ics")
	p.Wait("the file", `window.saved.length === 4`)
	assert.Contains(t, browsertest.Eval[string](p, `saved[3]`), "SUMMARY:"+es("Lay the film."))
}
