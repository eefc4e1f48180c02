//go:build !js

package main

import (
	"encoding/csv"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/field"
	"filmfurrow/rules/sheet"
	"filmfurrow/wasm/browsertest"
)

// Whether to lay at all stands before any colour, with the gate that decides, and
// a field where film must not be laid never prints ready.
func TestTheVerdictComesFirst(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/#f="+linkOf(t, "carrot-drill"))
	p.WaitText("#verdict", "Do not lay film here.")
	p.WaitText("#verdict .gates", "holes")
	assert.True(t, browsertest.Eval[bool](p, `[...document.querySelectorAll(".answer, .sheet, .water-plan")].every((e) => document.querySelector("#verdict").compareDocumentPosition(e) & Node.DOCUMENT_POSITION_FOLLOWING)`))
	p.WaitText("#shopping", "if you laid it all the same")
	p.WaitText("#laying-day .stop-no", "do not lay film here")
	p.Do(`document.querySelectorAll("#laying-day input[type=checkbox]").forEach((c) => { if (!c.checked) c.click() })`)
	p.WaitText("#laying-day .state", "NOT READY. No: 1.")
}

func TestTheListKeepsOursAndTheGrowers(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.WaitText("#shopping", "Rolls of film")
	p.WaitText("#costs", "No total yet: give a price.")
	p.Type("#f-shopping-film-rolls", "7")
	p.Type("#f-prices-currency", "USD")
	p.Type("#f-prices-film-roll", "150")
	p.WaitText("#costs", "USD 1050.00")
	p.WaitText("#costs", "in part: what has no price is left out")
	p.WaitText("#shopping table", "Rounded up once")                // ours stays
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
	p := b.Whole(820, "/#f="+sheetLink(t, "quarry-lane"))
	p.WaitText("#note", "came with a link")
	p.WaitText("#laying-day .state", "NOT READY. No: 2. Open:")
	p.WaitText("#laying-day .stop-no", "The hand is dry")
	p.Do(`document.querySelectorAll("#laying-day input[type=checkbox]").forEach((c) => { if (!c.checked) c.click() })`)
	p.WaitText("#laying-day .state", "NOT READY. No: 2. Open: 1.")
	p.Choose("#f-day-hand", "outline")
	p.Type("#f-day-wind-m-s", "4")
	p.WaitText("#laying-day .state", "NOT READY. No: 0. Open: 1.")
	p.Type("#f-day-rolls", "1")
	p.Wait("ready", `document.querySelector("#laying-day .state").textContent === "READY"`)
	p.Click("#sheet-es")
	p.Wait("listo", `document.querySelector("#laying-day .state").textContent === "LISTO"`)
	assert.Equal(t, "es", browsertest.Eval[string](p, `document.querySelector("#laying-day").lang`))
	p.Go("/") // the link's own address would open the link's field again
	p.WaitWhole()
	p.Wait("still ready", `document.querySelector("#laying-day .state").textContent === "READY"`)
	assert.Equal(t, 5, browsertest.Eval[int](p, `document.querySelectorAll("#laying-day input[type=checkbox]:checked").length`))
	p.Type("#f-day-wind-m-s", "35")
	p.WaitText("#laying-day .state", "NOT READY. No: 1.")
	p.Click("#tick-go-read")
	p.WaitText("#laying-day .state", "NOT READY. No: 1. Open: 1.")
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
		p := b.Whole(820, "/#f="+sheetLink(t, farm.id))
		p.WaitText("#note", "came with a link")
		p.Wait("the soil", `!document.querySelector("#verdict .waiting")`)
		p.Click("#units-" + farm.units)
		p.Click("#sheet-" + farm.language)
		if farm.ready {
			p.Do(`document.querySelectorAll("#laying-day input[type=checkbox]").forEach((c) => { if (!c.checked) c.click() })`)
		}
		state := map[string]string{"entrue": "READY", "enfalse": "NOT READY", "esfalse": "NO LISTO"}[farm.language+strconv.FormatBool(farm.ready)]
		p.WaitText("#laying-day .state", state)
		file := filepath.Join(t.TempDir(), farm.id+".pdf")
		require.NoError(t, os.WriteFile(file, p.PrintPDF("sheets-"+farm.id), 0o644))
		out, err := exec.Command(pdftotext, "-raw", file, "-").Output()
		require.NoError(t, err)
		pages := strings.Split(strings.TrimRight(string(out), "\f\n"), "\f")
		t.Logf("%s: %d pages", farm.id, len(pages))
		assert.LessOrEqual(t, len(pages), 15, farm.id)
		at := func(head string) int {
			return slices.IndexFunc(pages, func(page string) bool { return strings.HasPrefix(page, head+"\n") })
		}
		head, last := sheet.Text(sheet.Language(farm.language), "title"), sheet.Text(sheet.Language(farm.language), "last-word")
		buy, lay, year := at("What to buy"), at(head), at("The season’s dates")
		require.True(t, buy > 0 && lay > buy && year > lay, "each begins a page of %s: %d, %d, %d", farm.id, buy, lay, year)
		assert.LessOrEqual(t, lay-buy, 2, "list, costs and tractor of %s are two pages", farm.id)
		assert.Contains(t, tight(pages[lay]), tight(last), "the laying-day sheet of %s is one page", farm.id)
		assert.Contains(t, pages[lay], state)
		assert.Contains(t, pages[year]+pages[year+1], "The end of the film", "dates and the end of the film of %s are two pages", farm.id)
		golden, err := os.ReadFile("../testdata/sheets/" + farm.id + ".txt")
		require.NoError(t, err)
		all, part := tight(string(out)), ""
		for line := range strings.Lines(string(golden)) {
			line = strings.TrimSpace(line)
			if name, found := strings.CutPrefix(line, "# "); found {
				part = name
				continue
			}
			if strings.HasPrefix(part, "laying day") && !strings.HasSuffix(part, farm.language) {
				continue
			}
			assert.Contains(t, all, tight(line), "%s, %s", farm.id, part)
		}
		p.Close()
	}
}

// tight leaves out the white space, which a page breaks where it must, and the
// case, since the page begins its cells with a capital.
func tight(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), "")) }

func TestTheSeasonIsSavedAsACalendar(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/")
	p.WaitText("#season", "Lay the film.")
	p.Do(`window.saved = []; URL.createObjectURL = (blob) => { blob.text().then((t) => saved.push(t)); return "#"; }; HTMLAnchorElement.prototype.click = function () { window.savedName = this.download; }`)
	p.Click("#season-ics")
	p.Wait("the file", `window.saved.length === 1 && saved[0].startsWith("BEGIN:VCALENDAR\r\n") && savedName.endsWith(".ics")`)
	assert.Contains(t, browsertest.Eval[string](p, `saved[0]`), "RRULE:FREQ=WEEKLY;COUNT=")
	p.Click("#shopping-csv")
	p.Wait("the table", `window.saved.length === 2 && saved[1].startsWith('"item","ask for","quantity","how"')`)
	rows, err := csv.NewReader(strings.NewReader(browsertest.Eval[string](p, `saved[1]`))).ReadAll()
	require.NoError(t, err, "RFC 4180, by the standard library's reader")
	assert.Len(t, rows, 1+len(field.ItemKeys))
	p.Do(`navigator.clipboard.writeText = (t) => { window.copied = t; return Promise.resolve(); }`)
	p.Click("#shopping-copy")
	p.Wait("the text", `window.copied?.startsWith("Rolls of film: ")`)
	p.WaitText("#shopping", "Copied.")
}
