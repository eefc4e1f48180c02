package search

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// PairPoint is a change of two inputs together that changes the film, where
// neither of the two alone does.
type PairPoint struct {
	First, Second     *field.Input
	FirstAt, SecondAt field.Value
	Film              question.Option
	Days              unit.Days // how far the planting day is moved; 0 where it is none of the two
}

// move is one input set to one value.
type move struct {
	in *field.Input
	at field.Value
}

// PairWork finds, for the film, the nearest pairs: every two options of two
// choices, and for each option the nearest earlier and the nearest later planting
// day. It works in slices.
type PairWork struct {
	filmAsking
	base   field.Case
	old    question.Option
	tries  []move    // alone, to be asked
	moves  []move    // those that alone keep the film
	a, b   int       // the pair of moves
	side   unit.Days // −1 while earlier days are tried, then 1
	day    unit.Days // how far from the case's day
	left   []move    // that still seek their day on this side
	asked  int       // of those, on this day
	points []PairPoint
}

// filmInputs are the choices that the film's rules read and that keep the
// ground; a test tries that no other does.
var filmInputs = []string{"method", "weeds.pressure", "weeds.nutsedge", "weeds.insect_pressure", "field.exposure", "practice.organic", "practice.crops_on_film", "practice.laying"}

// NewPairs begins the search. The ground must be the case's own.
func NewPairs(g *facts.SoilYear, c field.Case) (*PairWork, bool) {
	w := &PairWork{filmAsking: filmAsking{ground: g}, base: c, side: -1}
	if g.Key != facts.KeyOf(c) || len(field.Check(&c)) > 0 {
		return w, false
	}
	w.old, _ = w.film(c)
	filled := field.Filled(c)
	for _, name := range filmInputs {
		in := field.InputByName(name)
		now, _ := in.Get(&filled)
		values := optionsOf(in, now)
		for k := 0; in.Form == field.FormWhole && float64(k) <= in.High-in.Low; k++ {
			values = append(values, at(in, try{step: k}))
		}
		for _, v := range values {
			if v != now {
				w.tries = append(w.tries, move{in, v})
			}
		}
	}
	return w, true
}

// Points gives what was found so far; the nearest days first.
func (w *PairWork) Points() []PairPoint { return append([]PairPoint(nil), w.points...) }

func (w *PairWork) with(moves ...move) field.Case {
	c := w.base
	for _, m := range moves {
		m.in.Set(&c, m.at)
	}
	return c
}

// Step asks for at most so many films and tells whether all is done.
func (w *PairWork) Step(times int) bool {
	for ; times > 0; times-- {
		switch {
		case len(w.tries) > 0:
			m := w.tries[0]
			w.tries = w.tries[1:]
			if film, _ := w.film(w.with(m)); film == w.old {
				w.moves = append(w.moves, m)
			}
		case w.a < len(w.moves):
			w.choices()
		case w.side > 1:
			return true
		default:
			w.days()
		}
	}
	return false
}

// choices asks for the next two options.
func (w *PairWork) choices() {
	if w.b++; w.b <= w.a || w.b >= len(w.moves) {
		if w.b >= len(w.moves) {
			w.a++
			w.b = w.a
		}
		return
	}
	first, second := w.moves[w.a], w.moves[w.b]
	if first.in != second.in {
		w.note(first, second, 0)
	}
}

// days asks for the next planting day, alone and then with each move. Where the
// day alone changes the film, no later one is a change of two.
func (w *PairWork) days() {
	day := move{field.InputByName("plant_on"), field.Value{Number: float64(w.base.PlantOn.Value + unit.Date(w.side*w.day))}}
	if w.day > 0 && w.asked < len(w.left) {
		if w.note(day, w.left[w.asked], w.side*w.day) {
			w.left = append(w.left[:w.asked], w.left[w.asked+1:]...)
		} else {
			w.asked++
		}
		return
	}
	if w.day == 0 {
		w.left = append([]move(nil), w.moves...)
	}
	w.day, w.asked = w.day+1, 0
	day.at.Number += float64(w.side)
	if film, _ := w.film(w.with(day)); film != w.old || w.day > farthestDay || len(w.left) == 0 {
		w.side, w.day = w.side+2, 0
	}
}

// note asks for a pair and keeps it where the film changes.
func (w *PairWork) note(first, second move, days unit.Days) bool {
	film, _ := w.film(w.with(first, second))
	if film == w.old || film == question.NoOption {
		return false
	}
	p := PairPoint{first.in, second.in, first.at, second.at, film, days}
	w.points = append(w.points, p)
	for i := len(w.points) - 1; i > 0 && w.points[i-1].Days.Abs() > days.Abs(); i-- {
		w.points[i-1], w.points[i] = p, w.points[i-1]
	}
	return true
}

// Says puts the pair in one sentence.
func (p *PairPoint) Says() unit.Phrase {
	text := ""
	var values []unit.Quantity
	for i, m := range [2]move{{p.First, p.FirstAt}, {p.Second, p.SecondAt}} {
		point := TurningPoint{Input: m.in, At: m.at, Above: p.Days > 0}
		head, q := point.condition()
		if m.in.Form == field.FormWhole {
			head, q = m.in.Says(m.at)
			head = m.in.Label + " " + head
		}
		if i > 0 {
			head = " and " + unit.Lower(head)
		}
		text, values = text+head, append(values, q...)
	}
	film := question.Film.Says(p.Film)
	return unit.Phrase{Text: text + ": " + film.Text + ".", Quantities: append(values, film.Quantities...)}
}
