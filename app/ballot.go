//go:build !js

package app

import (
	"strconv"
	"strings"

	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// A ballot for a reader's own phone: a page without script or server. A tap shows the vote
// as a picture and a number that fill the screen; held up, the room is counted by eye.

// roomQuestions are what a room is asked.
var roomQuestions = [...]string{
	question.Verdict: "Would you lay film here?", question.Film: "Which film?", question.Bed: "How high a bed?", question.Surface: "Embossed or smooth?",
	question.Thickness: "How thick?", question.Tape: "Which drip tape?", question.Wait: "What rules the wait before planting?",
	question.Day: "When may it be planted?",
}

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

func ballotSVG(q question.Question, o question.Option, votes, most int) string {
	key, bed := ballotLook(q, o)
	top := ballotHigh - bed - 10 - ballotRise*votes/max(most, fewestHands)
	y := func(v int) string { return strconv.Itoa(v) }
	t := &svg{}
	t.raw(`<svg class="ballot-svg" viewBox="0 0 `, y(ballotWide), ` `, y(ballotHigh), `" preserveAspectRatio="xMidYMax meet" aria-hidden="true">`,
		`<path class="m-film m-`, key, `" d="M20 `, y(top), `Q60 `, y(top-9), ` 100 `, y(top), `L112 300H8Z"/>`,
		`<path class="d-soil" d="M20 300L30 `, y(ballotHigh-bed), `Q60 `, y(ballotHigh-bed-8), ` 90 `, y(ballotHigh-bed), `L100 300Z"/>`)
	t.raw(ballotMarks(q, o, bed), `</svg>`)
	return t.b.String()
}

// ballotMarks show what is chosen where a color cannot: emitters as far apart as they are, an
// inch 1.7 pixels; a thick film as a thick line, an embossed one as a rough line.
func ballotMarks(q question.Question, o question.Option, bed int) string {
	t, top, y := &svg{}, strconv.Itoa(ballotHigh-bed), strconv.Itoa(302-bed/2)
	crown := ` d="M30 ` + top + `Q60 ` + strconv.Itoa(ballotHigh-bed-8) + ` 90 ` + top
	switch {
	case q == question.Tape && int(o) < len(table.Tapes):
		apart := unit.KindShort.Shown(float64(table.Tapes[o].Spacing), unit.US)
		each := int(24.01 / apart)
		t.raw(`<path class="ballot-mark" stroke-width="3" d="M18 `, y, `h84"/><path class="ballot-dots" d="`)
		for n := -each; n <= each; n++ {
			t.raw(`M`, num(60+1.7*apart*float64(n)), ` `, y, `h0`)
		}
		t.raw(`"/>`)
	case q == question.Thickness && o < question.ByWeight:
		t.raw(`<path class="ballot-mark" stroke-width="`, num(10*float64(question.Thicknesses[o])/unit.MicrometresPerMil), `"`, crown, `"/>`)
	case q == question.Surface && o == question.Embossed:
		t.raw(`<path class="ballot-mark" stroke-width="3" d="M30 `, top)
		for n := 1; n <= embossings; n++ {
			x := float64(n) / embossings
			t.raw(`L`, num(30+60*x), ` `, num(float64(ballotHigh-bed)-16*x*(1-x)-float64(6*(n%2))))
		}
		t.raw(`"/>`)
	case q == question.Surface:
		t.raw(`<path class="ballot-mark" stroke-width="3"`, crown, `"/>`)
	}
	return t.b.String()
}

// embossings are the rough places of an embossed film, half of them up.
const embossings = 16

// daysOnLine is how many days the room's script puts on a line.
const daysOnLine = 5

// daySVG is a line of days, one of them chosen.
func daySVG(n int) string {
	t := &svg{}
	t.raw(`<svg class="ballot-svg" viewBox="0 0 120 97" aria-hidden="true"><path class="d-soil" d="M0 74h120v8H0Z"/>`)
	for i := range daysOnLine {
		look, x, top := "m-film m-other", strconv.Itoa(4+24*i), "54"
		if i == n {
			look, top = "m-film m-ballot", "14"
		}
		t.raw(`<path class="`, look, `" d="M`, x, ` `, top, `h16V74h-16Z"/>`)
	}
	t.raw(`</svg>`)
	return t.b.String()
}

// daysInWords are the days of a line on a phone, which does not know them: they stand on the
// wall.
var daysInWords = [daysOnLine]string{"The first day on the line", "The second day on the line", "The third day on the line", "The fourth day on the line", "The last day on the line"}

// Ballots are the questions that a room votes on, each with its address.
func Ballots() (list []question.Question) {
	for q := range question.Day + 1 {
		list = append(list, q)
	}
	return list
}

// Choices is how many answers stand on the ballot of a question.
func Choices(q question.Question) int {
	if q == question.Day {
		return daysOnLine
	}
	return q.Options()
}

// BallotTitle is what a ballot asks.
func BallotTitle(q question.Question) string { return roomQuestions[q] }

// onPhone is an answer on a phone: its words in the units of both systems, and small and
// drawn up whole, as the room's bar is when all hands go to it.
func onPhone(q question.Question, i int) (words, metric, small, whole string) {
	if q == question.Day {
		return daysInWords[i], daysInWords[i], daySVG(i), daySVG(i)
	}
	o := question.Option(i)
	return roomShort(q, o, unit.US), roomShort(q, o, unit.Metric), strings.Replace(ballotSVG(q, o, 0, 0), "0 0 120 300", "0 205 120 97", 1), ballotSVG(q, o, fewestHands, fewestHands)
}

// Ballot is the ballot of one question.
func Ballot(q question.Question, base string) string {
	t := &svg{}
	t.raw(`<main class="votes">`, filmPatterns, `<h1 id="again">`, escape(BallotTitle(q)), `</h1><p>Tap your answer, then hold the screen up.</p>`)
	if q == question.Day {
		t.raw(`<p>The days stand on the wall, the first on the left.</p>`)
	}
	t.raw(`<ul>`)
	votes := &svg{}
	for i := range Choices(q) {
		n := strconv.Itoa(i + 1)
		words, metric, small, whole := onPhone(q, i)
		t.raw(`<li><a href="#vote-`, n, `">`, small, `<b>`, n, `</b> <span>`, escape(words), `</span>`)
		votes.raw(`<section class="vote" id="vote-`, n, `" tabindex="-1"><p class="count">`, n, `</p>`, whole, `<h2>`, escape(words))
		if metric != words {
			t.raw(` <small>`, escape(metric), `</small>`)
			votes.raw(` <small>`, escape(metric), `</small>`)
		}
		t.raw(`</a></li>`)
		votes.raw(`</h2><p><a href="#again">Another answer</a></p></section>`)
	}
	t.raw(`</ul>`, votes.b.String(), `<nav><a href="`, base, `/ballots">All ballots</a></nav></main>`)
	return t.b.String()
}

// BallotCodes are the codes that lead the room's phones to the ballots, each large enough
// to be projected.
func BallotCodes(base, site string) string {
	t := &svg{}
	t.raw(`<main class="codes"><h1>Vote with your own phone</h1><p>Show the code of the question. Each phone shows its vote as a picture and a number: count them by eye, and tap them in.</p>`)
	if site == "" {
		t.raw(`<p>This copy of the site does not know its own address, so no code stands here. Tell the room the address of the ballot.</p>`)
	}
	for _, q := range Ballots() {
		t.raw(`<section id="`, q.String(), `"><h2>`, escape(BallotTitle(q)), `</h2>`, theCode(site, base+"/ballot/"+q.String(), "QR code of the ballot"), `<p><a href="`, base, `/ballot/`, q.String(), `">The ballot</a> <code>`, escape(site+base), `/ballot/`, q.String(), `</code></p></section>`)
	}
	t.raw(`<nav><a href="`, base, `/takeaway">For teachers and editors</a> <a href="`, base, `/workshop">In front of a room: the workshop</a></nav></main>`)
	return t.b.String()
}
