package app

import (
	"strconv"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
)

// listOrder is the list as the water meets its parts, from the source to the end of the
// tape, and then all else.
var listOrder = [field.ItemCount]field.Item{field.ItemBackflow, field.ItemInjector, field.ItemFilter, field.ItemGauge, field.ItemValves, field.ItemRegulators, field.ItemHeader,
	field.ItemTakeOffs, field.ItemTape, field.ItemEnds, field.ItemFilm, field.ItemPins, field.ItemPlants, field.ItemFertiliser, field.ItemCover, field.ItemHoops, field.ItemStakes, field.ItemString}

// inOrder are the lines that there is something to say of, in that order; their places
// are the numbers on the page.
func inOrder(list *plan.Shopping) (lines []*plan.Line) {
	for _, item := range listOrder {
		if l := &list.Lines[item]; l.Quantity > 0 || l.Own.Given || l.Missing != "" {
			lines = append(lines, l)
		}
	}
	return lines
}

// partShapes are the parts as sketches around the middle of the pipe.
var partShapes = [field.ItemCount]string{
	field.ItemBackflow:   `<path class="d-end" d="M-26-12h52v24h-52z"/><path class="d-tape" d="M-16-8l14 8-14 8zM2-8l14 8-14 8z"/>`,
	field.ItemInjector:   `<path class="d-end" d="M-9-34h18v26h-18z"/><path class="d-drop" d="M0-30q-9 16 0 17q9-1 0-17"/><path class="d-lead" d="M0-8V0"/>`,
	field.ItemFilter:     `<path class="d-end" d="M-24-9h48V5h-48zM-12 5h24v20q-12 12-24 0z"/><path class="d-lead" d="M-12 13h24M-12 21h24M-4 5v24M4 5v24"/>`,
	field.ItemGauge:      `<path class="t-lay" d="M0 0v-14"/><circle class="d-end" cy="-22" r="12"/><path class="d-lead" d="M0-22l6-6"/>`,
	field.ItemValves:     `<path class="d-end" d="M-20-12v24L20-12v24z"/><path class="t-lay" d="M0 0v-20M-12-20h24"/>`,
	field.ItemRegulators: `<path class="d-end" d="M-24-8h14v-7h20v7h14V8h-14v7h-20V8h-14z"/>`,
	field.ItemHeader:     `<path class="d-end" d="M-34-8h68V8h-68z"/><path class="d-lead" d="M-17-8V8M0-8V8M17-8V8"/>`,
	field.ItemTakeOffs:   `<path class="d-end" d="M-18-8h36V8h-9v18h-18V8h-9z"/>`,
	field.ItemTape:       `<path class="d-tape" d="M-60-5h120V5h-120z"/><path class="d-drop" d="M-24 10q-6 10 0 11q6-1 0-11M0 10q-6 10 0 11q6-1 0-11M24 10q-6 10 0 11q6-1 0-11"/>`,
	field.ItemEnds:       `<path class="d-tape" d="M-60-5h66a11 11 0 0 1 0 22h-12v-9h12a2 2 0 0 0 0-4h-66z"/>`,
}

// partsHTML lays the parts out in the order in which the water meets them, each with its
// number on the list.
func partsHTML(lines []*plan.Line) string {
	t := &svg{}
	for i, l := range lines {
		shape := partShapes[l.Item]
		if shape == "" {
			break
		}
		n := strconv.Itoa(i + 1)
		pipe := "-400 0H400"
		if l.Item == field.ItemEnds {
			pipe = "-400 0H-30"
		}
		t.raw(`<li><b>`, n, `</b><span class="for-readers">`, escape(l.Name), `</span><svg aria-hidden="true" viewBox="-40 -36 80 72"><path class="w-pipe-thin" d="M`, pipe, `"/>`, shape, `</svg></li>`)
	}
	return `<ol class="tile parts" aria-label="The parts, as the water meets them"><li><b>&nbsp;</b><span class="for-readers">The source</span><svg aria-hidden="true" viewBox="-40 -36 80 72"><path class="w-pipe-thin" d="M0 0H400"/><path class="w-zone-0 d-rim" d="M-24-14h48v34h-48z"/><path class="t-lay" d="M-30-16h60"/></svg></li>` + t.b.String() + `</ol>`
}
