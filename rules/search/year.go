package search

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// YearSpan is a run of weeks with one answer for whoever wants to plant in them.
type YearSpan struct {
	From, To unit.Date    // first and last day
	Film     table.FilmID // NoFilm where film is not to be laid
	Later    bool         // the bed is not ready in that week: the plan moves the day
	Weeks    int
}

// same tells whether two runs say the same.
func (s YearSpan) same(other YearSpan) bool { return s.Film == other.Film && s.Later == other.Later }

// YearWork asks, week by week of a calendar year, what to lay for planting then. All
// else of the case stays.
type YearWork struct {
	filmAsking
	base  field.Case
	from  unit.Date
	at    int
	spans []YearSpan
}

// yearWeeks are 52 whole weeks; the last one has the rest of the year.
const yearWeeks = 52

// NewYear begins with the year of the case's own planting day.
func NewYear(g *facts.SoilYear, c field.Case) *YearWork {
	year, _, _ := c.PlantOn.Value.Civil()
	return &YearWork{filmAsking: filmAsking{ground: g}, base: c, from: unit.On(year, 1, 1)}
}

// Step asks of so many weeks at most and tells whether the year is whole.
func (w *YearWork) Step(weeks int) bool {
	for ; weeks > 0 && w.at < yearWeeks; weeks-- {
		on := w.from.Plus(unit.Days(7 * w.at))
		w.at++
		c := w.base
		c.PlantOn = unit.Known(on)
		span := YearSpan{From: on, To: on.Plus(6), Film: table.NoFilm, Weeks: 1}
		film, _ := w.film(c)
		switch {
		case film == question.NoOption || w.refused():
		case w.before.Plant > span.To:
			span.Later = true
		default:
			span.Film = table.FilmID(film)
		}
		if n := len(w.spans); n > 0 && w.spans[n-1].same(span) {
			w.spans[n-1].To = span.To
			w.spans[n-1].Weeks++
			continue
		}
		w.spans = append(w.spans, span)
	}
	if w.at < yearWeeks {
		return false
	}
	year, _, _ := w.from.Civil()
	w.spans[len(w.spans)-1].To = unit.On(year, 12, 31)
	return true
}

// Spans are the year's runs of weeks, in their order.
func (w *YearWork) Spans() []YearSpan { return w.spans }

// nearlyAll are the tenths of the weeks beyond which an answer is said to fill the year.
const nearlyAll = 9

// Fills gives the answer that holds in nearly all weeks, where one does.
func (w *YearWork) Fills() (YearSpan, bool) {
	for _, s := range w.spans {
		weeks := 0
		for _, other := range w.spans {
			if s.same(other) {
				weeks += other.Weeks
			}
		}
		if 10*weeks > nearlyAll*yearWeeks {
			s.Weeks = weeks
			return s, true
		}
	}
	return YearSpan{}, false
}
