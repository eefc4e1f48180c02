//go:build !js

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

func TestTheListKeepsOursAndTheGrowers(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.WaitText("#shopping", "Rolls of film")
	p.Type("#f-shopping-film-rolls", "7")
	p.Type("#f-prices-currency", "USD")
	p.Type("#f-prices-film-roll", "150")
	p.WaitText("#costs", "USD 1050.00")
	p.WaitText("#costs", "in part: what has no price is left out")
	assert.Contains(t, p.Text("#shopping table"), "One roll of", "ours stays")
	p.Type("#f-prices-wage-hour", "-3")
	p.WaitText("#f-prices-wage-hour-error", "-3")
	p.Reload()
	p.WaitStarted()
	p.Wait("the grower's figure", `document.querySelector("#f-shopping-film-rolls").value === "7"`)
}

func TestTicksDecideReadyAndSurvive(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.WaitText("#laying-day .state", "NOT READY")
	p.Click("#sheet-es")
	p.WaitText("#laying-day .state", "NO LISTO")
	assert.Equal(t, "es", browsertest.Eval[string](p, `document.querySelector("#laying-day").lang`))
	p.Do(`document.querySelectorAll("#laying-day input[type=checkbox]").forEach((c) => { if (!c.checked) c.click() })`)
	p.WaitText("#laying-day .state", "LISTO")
	p.Reload()
	p.WaitStarted()
	p.WaitText("#laying-day .state", "READY")
	assert.NotContains(t, p.Text("#laying-day .state"), "NOT")
}

// The sheets print: each on a page of its own, and a stranger can order and lay
// from them.
func TestTheSheetsPrint(t *testing.T) {
	pdftotext, err := exec.LookPath("pdftotext")
	if err != nil {
		t.Skip("pdftotext is not here (Debian: apt-get install poppler-utils)")
	}
	b := browsertest.Open(t)
	for _, id := range []string{"pepper-cool-spring", "flowers-by-hand", "broccoli-late-summer"} {
		p := b.Page(820, "/#f="+linkOf(t, id))
		p.WaitText("#note", "came with a link")
		p.Wait("the soil", `!document.querySelector("#verdict .waiting")`)
		file := filepath.Join(t.TempDir(), id+".pdf")
		require.NoError(t, os.WriteFile(file, p.PrintPDF(id), 0o644))
		out, err := exec.Command(pdftotext, "-layout", file, "-").Output()
		require.NoError(t, err)
		text := strings.Join(strings.Fields(string(out)), " ")
		for n, page := range strings.Split(string(out), "\f") {
			if strings.Contains(page, "Laying day") && strings.Contains(page, "NOT READY") {
				assert.Contains(t, page, "Faults and mends", "the laying-day sheet is one sheet (page %d of %s)", n+1, id)
			}
		}
		for _, want := range []string{"What to buy", "Rolls of film", "Laying day", "NOT READY", "The order of the work", "The season’s dates", "The end of the film", "Take care", "Who says so"} {
			assert.Contains(t, text, want, id)
		}
		p.Close()
	}
}

func TestTheSeasonIsSavedAsACalendar(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.WaitText("#season", "Lay the film.")
	p.Do(`window.saved = []; URL.createObjectURL = (blob) => { blob.text().then((t) => saved.push(t)); return "#"; }; HTMLAnchorElement.prototype.click = function () { window.savedName = this.download; }`)
	p.Click("#season-ics")
	p.Wait("the file", `window.saved.length === 1 && saved[0].startsWith("BEGIN:VCALENDAR\r\n") && savedName.endsWith(".ics")`)
	p.Click("#shopping-csv")
	p.Wait("the table", `window.saved.length === 2 && saved[1].startsWith('"item","quantity","how"')`)
}
