package app

import (
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// The pictures of laying day. All are sketches, written as they are drawn; the measures
// that stand in them ("{}") are the engine's. Words that say the same stand beside each.

const (
	pictureHead = `<svg class="pic" viewBox="0 0 300 84" aria-hidden="true">`
	floor       = `<path class="d-measure" d="M8 78H292"/>`

	// A ribbon on a stick: calm, at the limit, beyond.
	windShape   = floor + `<path class="d-flag" d="M60 14c10 6 2 20 8 30l-8 4c-4-12 2-22 0-34zM140 14c14 0 18 18 34 24l-4 9c-18-4-20-20-30-22zM220 14c14-6 24 6 44 0v11c-18 6-30-6-44 0z"/><path class="t-lay" d="M60 12V78M140 12V78M220 12V78"/>`
	peopleShape = floor + `<g class="d-tape"><circle cx="120" cy="20" r="10"/><rect x="108" y="32" width="24" height="46" rx="8"/><circle cx="180" cy="20" r="10"/><rect x="168" y="32" width="24" height="46" rx="8"/></g>`
	rollShape   = floor + `<path class="d-measure" d="M70 6v12M70 12h46M184 12h46M230 6v12"/><text x="150" y="18" class="t-label" text-anchor="middle">{}</text><path class="d-rim m-{film}" d="M70 28h160a12 24 0 0 1 0 48h-160z"/><ellipse class="d-soil d-rim" cx="70" cy="52" rx="12" ry="24"/><ellipse class="d-end" cx="70" cy="52" rx="4" ry="8"/>`
	reelShape   = `<circle class="d-tape" cx="70" cy="42" r="34"/><circle class="d-end" cx="70" cy="42" r="24"/><circle class="d-end" cx="70" cy="42" r="16"/><circle class="d-tape" cx="70" cy="42" r="6"/><path class="t-lay" d="M70 76h110"/><path class="d-drop" d="M120 78q-5 6 0 6q5 0 0-6M150 78q-5 6 0 6q5 0 0-6"/><text x="290" y="50" class="t-label" text-anchor="end">{}</text>`
	tractor     = floor + `<path class="d-leaf" d="M128 36h62q10 0 10 12v14h-80z"/><path class="t-lay" d="M112 40V6h22v30"/><path class="d-tape" d="M200 50h14v16h-14z"/><circle class="d-tape" cx="120" cy="54" r="24"/><circle class="d-end" cx="120" cy="54" r="10"/><circle class="d-tape" cx="186" cy="64" r="14"/><circle class="d-end" cx="186" cy="64" r="5"/>`
	toolShape   = `<path class="t-lay" d="M90 8v44M150 8v64M210 8v62"/><path class="d-tape" d="M78 50h24v16q-12 14-24 0zM130 68h40v8h-40zM206 66h8l-4 14z"/>`
	// From above: who stands where while a tractor lays, and, hatched, where nobody may.
	whoShape = `<path class="d-soil" d="M4 20h140v34H4z"/><path class="d-rim m-{film}" d="M4 25h140v24H4z"/><path class="d-end" d="M144 16h26v42h-26z"/><path class="d-never" d="M172 20h16v34h-16zm0 12l12-12m-12 24l16-16m-16 26l16-16M246 20h16v34h-16zm0 12l12-12m-12 24l16-16m-16 26l16-16"/>` +
		`<path class="d-leaf" d="M212 29h34v16h-34z"/><path class="d-tape" d="M188 12h24v10h-24zM188 52h24v10h-24zM232 18h12v7h-12zM232 49h12v7h-12z"/><path class="d-measure" d="M100 72v10M100 77h6M140 77h4M144 72v10"/><text x="123" y="82" class="t-small" text-anchor="middle">{}</text>` +
		`<g class="d-who"><circle cx="200" cy="37" r="10"/><circle cx="100" cy="62" r="10"/><circle cx="286" cy="37" r="10"/></g><g class="t-on" text-anchor="middle"><text x="200" y="42">1</text><text x="100" y="67">2</text><text x="286" y="42">3</text></g>`

	ballDry   = `<path class="d-soil d-rim" d="M22 46 q8 -24 30 -20 q10 -16 26 2 q16 -2 22 18 Z"/><circle class="d-soil d-rim" cx="14" cy="42" r="5"/><circle class="d-soil d-rim" cx="106" cy="36" r="4"/><circle class="d-soil d-rim" cx="92" cy="14" r="3"/>`
	ballRight = `<circle class="d-soil d-rim" cx="60" cy="28" r="22"/><path class="d-crack" d="M58 6 l6 14 -9 10 7 18"/>`
	ballRough = `<path class="d-soil d-rim" d="M40 40q-8-12 2-20q2-12 16-10q14-4 18 8q12 6 4 18q-4 10-18 8q-14 4-22-4zM30 48l6-6 4 7zM88 46l5-7 6 7zM18 50l3-4 5 4z"/>`
	ballDamp  = `<circle class="d-wetsoil d-rim" cx="60" cy="28" r="22"/>`
	ballSoft  = `<path class="d-wetsoil d-rim" d="M22 42q-2-28 38-28t38 28q-38 8-76 0z"/><path class="d-drop" d="M40 46q-5 8 0 9q5-1 0-9M60 46q-5 8 0 9q5-1 0-9M80 46q-5 8 0 9q5-1 0-9"/>`
	ballWet   = `<path class="d-wetsoil d-rim" d="M18 40 q0 -26 26 -26 q24 0 26 18 l34 -6 -6 12 -30 6 q-6 6 -22 6 q-24 0 -28 -10 Z"/><path class="d-drop" d="M84 46 q-5 8 0 9 q5 -1 0 -9"/>`
)

// ball is the squeezed soil in one of its states, by the words of the day's input and
// those of feelPictures; empty for all else.
func ball(state string) string {
	shape := ""
	switch state {
	case "crumbles":
		shape = ballDry
	case "breaks":
		shape = ballRight
	case "ribbons":
		shape = ballWet
	case "rough":
		shape = ballRough
	case "damp":
		shape = ballDamp
	case "soft":
		shape = ballSoft
	default:
		return ""
	}
	return `<svg class="pic" viewBox="0 0 120 56" aria-hidden="true">` + shape + `</svg>`
}

// dayPicture draws what a card of laying day asks about.
func (p *layingPart) dayPicture(name string) string {
	a, system := p.S.advice, p.S.system
	shape, measure := toolShape, ""
	switch name {
	case "wind":
		shape = windShape
	case "people":
		if p.S.c.Practice.Laying != "hand" {
			return whoSVG(a, system)
		}
		shape = peopleShape
	case "rolls":
		shape, measure = strings.Replace(rollShape, "{film}", filmKey(filmOf(a)), 1), unit.Of(unit.Roll(a.Shape.FilmWidth)).In(system)
	case "parts":
		shape = reelShape
		if long := p.S.workOut().list.Lines[field.ItemTape].Taken(); long > 0 {
			measure = quantityWords(long, unit.KindLong, system)
		}
	case "machine":
		shape = tractor
	}
	return pictureHead + strings.Replace(shape, "{}", escape(measure), 1) + `</svg>`
}

// whoSVG shows who stands where while a tractor lays.
func whoSVG(a *plan.Advice, system unit.System) string {
	return pictureHead + strings.NewReplacer("{}", unit.Of(plan.WalkBehind).In(system), "{film}", filmKey(filmOf(a))).Replace(whoShape) + `</svg>`
}
