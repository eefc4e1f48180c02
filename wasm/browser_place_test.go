//go:build !js

package main

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/wasm/browsertest"
)

// The device's own position finds the nearest station, under the published
// permissions policy and without a request to anyone; far out at sea there is
// none; and an owner may refuse.
func TestThePlaceIsFoundByTheDevicesPosition(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(390, "/")
	p.WaitOffline()
	p.Wait("the stations", ready)
	p.Position(true, 42.45, -76.46)
	b.Requests()
	p.Click("#place-open")
	p.Click("#place-here")
	p.WaitText("#place-open", "Ithaca")
	p.Wait("the advice for that place", `!document.querySelector("#verdict .waiting")`)
	assert.Empty(t, b.Requests(), "the position is sent nowhere")
	p.WaitText(".example", "yours?")

	// The page takes a position up to ten minutes old: a new one needs a new page.
	p.Position(true, -45, -130)
	p.Reload()
	p.WaitReady()
	p.Wait("the stations", ready)
	p.Click("#place-open")
	p.Click("#place-here")
	p.WaitText(".place [role=alert]", "No station lies within")

	p.Position(false, 42.45, -76.46)
	p.Reload()
	p.WaitReady()
	p.Wait("the stations", `/Now:|No place yet/.test(document.querySelector("#place-now")?.innerText)`)
	p.Click("#place-open")
	p.Click("#place-here")
	p.WaitText(".place [role=alert]", "did not give its position")
}

// A zip code that no station has lists the nearest numbers and says so.
func TestAZipWithoutAStation(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.Wait("the stations", ready)
	p.Click("#place-open")
	p.Type("#f-place", "14853")
	p.WaitText(".results-say", "No station has this zip code")
	assert.Equal(t, 8, browsertest.Eval[int](p, `document.querySelectorAll(".results .result").length`))
	p.Click(".results .result")
	p.Wait("a station to be taken", `!document.querySelector("#place-now").innerText.includes("invented")`)
}

// Towns, and stations of other countries, are asked for when somebody searches, and are there without
// a network; a field abroad is there again after a reload, and where its link is opened.
func TestAPlaceAbroad(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	p.Wait("the stations", ready)
	b.Stop()
	p.Click("#place-open")
	p.Type("#f-place", "nagano")
	p.WaitText(".results", "Japan")
	p.Click(".results .result")
	p.WaitText("#place-open", "Nagano")
	p.Wait("the advice for that place", `!document.querySelector("#verdict .waiting")`)
	p.Reload()
	p.WaitReady()
	p.WaitText("#place-open", "Nagano")

	p.Wait("the stations", ready)
	p.Click("#place-open")
	p.Type("#f-place", "-45.9, 170.5")
	p.WaitText(".results", "170.5°")
	p.Click(".results .result")
	p.WaitText("#place-now", "New Zealand")
	p.Wait("the advice for that place", `!document.querySelector("#verdict .waiting")`)
	p.Click("#place-open")
	p.Type("#f-place", "99, 200")
	p.WaitText(".results-say", "Nothing by that name")
}

// What was typed is there in a new tab after the old one was closed.
func TestAClosedTabLosesNothing(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/")
	p.WaitText("#verdict h1", "black")
	p.Choose("#f-crop", "okra")
	view(p, "/details")
	p.Do(`document.querySelector("#more-field").open = true`)
	p.Type("#f-field-beds", "37")
	p.Do(`document.querySelector("#menu").open = true`)
	p.Click("#units-metric")
	view(p, "/buy")
	p.WaitText(".whose", "For 37 beds")
	p.Close()
	again := b.Page(820, "/details")
	again.Wait("the field to come back", `document.querySelector("#f-crop").value === "okra" && document.querySelector("#f-field-beds").value === "37"`)
	view(again, "/")
	again.WaitText("#bed-we-make .label-right", "cm high")
	assert.Contains(t, again.Text(".example"), "yours?")
}
