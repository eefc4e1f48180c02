package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// filmsInShort name the films on a wall, in the order of the table; one that is new there
// has its whole name.
var filmsInShort = [table.FilmCount]string{"Black", "Clear", "White", "Silver", "Green-brown", "Red", "Blue", "Black, tilled in", "Paper"}

// A ballot is a bed from which its film, or what stands for the answer, is drawn up as
// hands go up. The bed is a sketch; the height above it is the count.
const (
	ballotWide, ballotHigh = 120, 300
	ballotBed, ballotRise  = 40, 190
	fewestHands            = 8 // what fills a ballot's height at the least
)

// ballotLook is the class of what is drawn up, and how high its bed is drawn.
func ballotLook(q question.Question, o question.Option) (key string, bed int) {
	switch {
	case q == question.Film && o < question.Option(table.FilmCount):
		return filmKey(table.FilmID(o)), ballotBed
	case q == question.Verdict:
		return [...]string{"black", "later", "none"}[o], ballotBed
	case q == question.Bed:
		return "ballot", 12 + 16*int(o)
	}
	return "ballot", ballotBed
}

func ballotSVG(q question.Question, o question.Option, votes, most int, open bool) string {
	key, bed := ballotLook(q, o)
	top := ballotHigh - bed - 10 - ballotRise*votes/max(most, fewestHands)
	y := func(v int) string { return strconv.Itoa(v) }
	t := &svg{}
	t.raw(`<svg class="ballot-svg" viewBox="0 0 `, y(ballotWide), ` `, y(ballotHigh), `" preserveAspectRatio="xMidYMax meet" aria-hidden="true">`,
		`<path class="m-film m-`, key, `" d="M20 `, y(top), `Q60 `, y(top-9), ` 100 `, y(top), `L112 300H8Z"/>`,
		`<path class="d-soil" d="M20 300L30 `, y(ballotHigh-bed), `Q60 `, y(ballotHigh-bed-8), ` 90 `, y(ballotHigh-bed), `L100 300Z"/>`)
	if votes > 0 && !open { // else it is told beside the name
		t.raw(`<text x="60" y="`, y(top-16), `" text-anchor="middle">`, y(votes), `</text>`)
	}
	t.raw(`</svg>`)
	return t.b.String()
}

// short is an answer in the room's words.
func (w *workshop) short(o question.Option) string {
	switch {
	case w.q == question.Film && o < question.Option(table.FilmCount) && filmsInShort[o] != "":
		return filmsInShort[o]
	case w.q == question.Tape && int(o) < len(table.Tapes):
		t := &table.Tapes[o]
		return unit.Of(unit.Short(t.Spacing)).In(w.s.system) + ", " + t.Class
	}
	return w.says(o)
}

// hands is how many hands went up in all, and for the answer that got most.
func (w *workshop) hands() (all, most int) {
	for _, n := range w.votes {
		all, most = all+n, max(most, n)
	}
	return all, most
}

// holdForTen is how long a ballot is held for ten hands.
const holdForTen = 600 * 1e6 // nanoseconds

// ballots are the answers as pictures: a tap is a hand, held it is ten. Once the answer is
// open they only show how the room guessed.
func (w *workshop) ballots(open bool) app.UI {
	_, most := w.hands()
	list := make([]app.UI, w.q.Options())
	for i := range list {
		o, id := question.Option(i), "vote-"+strconv.Itoa(i)
		n := w.votes[o]
		label := w.short(o)
		if open {
			mark := ""
			if o == w.told {
				mark = " told"
			}
			if n > 0 {
				label += ": " + strconv.Itoa(n)
			}
			list[i] = box("ballot"+mark, app.Raw(ballotSVG(w.q, o, n, most, true)), span(label))
			continue
		}
		b := app.Button().Type("button").Class("ballot").ID(id).Aria("label", w.says(o)+": "+strconv.Itoa(n)).
			Body(app.Raw(ballotSVG(w.q, o, n, most, false)), span(label))
		list[i] = b.OnMouseDown(func(ctx app.Context, _ app.Event) { w.hold(ctx, o) }, w.q, w.farm, i).
			OnMouseUp(func(app.Context, app.Event) { w.held = 0 }, w.q, w.farm, i).
			OnClick(func(app.Context, app.Event) { w.vote(o, 1) }, w.q, w.farm, i)
	}
	return box("ballots", list...)
}

// hold counts ten where a ballot is still held after a while; the click that ends it counts
// none.
func (w *workshop) hold(ctx app.Context, o question.Option) {
	w.presses++
	mine := w.presses
	w.held, w.tens = mine, false
	ctx.After(holdForTen, func(app.Context) {
		if w.held == mine {
			w.vote(o, 10)
			w.tens = true
		}
	})
}

// vote counts hands; none where a click ends a hold.
func (w *workshop) vote(o question.Option, hands int) {
	if w.tens {
		w.tens = false
		return
	}
	w.votes[o] = max(0, w.votes[o]+hands)
	w.last = o
	w.Update()
}
