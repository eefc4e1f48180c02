package rules

import (
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// FilmMap is a map of the decision: planting day across, a second input up,
// and in each cell the chosen film.
type FilmMap struct {
	Days   []unit.Date
	Input  *Input
	Values []Value
	Cells  [][]Option // [value][day]; NoOption where nothing fits or the case is not right
	Tied   [][]bool
	Day    int // the case's own cell
	Value  int // −1 where the case's own value is not among the values
}

// MapWork fills a map in slices.
type MapWork struct {
	base   Case
	ground *Ground
	m      FilmMap
	at     int
	facts  *Facts
}

// mapWeeks is a year of weeks.
const mapWeeks = 52

// NewMap sets out a map over a year around the case's own planting day. The
// second input must not change the ground.
func NewMap(g *Ground, c Case, second string) (*MapWork, bool) {
	in := InputByName(second)
	if in == nil || g.Key != KeyOf(c) {
		return nil, false
	}
	w := &MapWork{base: c, ground: g, m: FilmMap{Input: in, Value: -1}}
	filled, _ := fill(c)
	now, _ := in.Get(&filled)
	switch in.Form {
	case FormChoice, FormYesNo:
		w.m.Values = choicesOf(in)
	default:
		grid := gridOf(in)
		const most = 10
		for i := range min(most, len(grid)) {
			w.m.Values = append(w.m.Values, grid[i*(len(grid)-1)/max(1, min(most, len(grid))-1)])
		}
	}
	for i, v := range w.m.Values {
		if v == now {
			w.m.Value = i
		}
	}
	first := c.PlantOn.Value.Plus(-7 * (mapWeeks / 2))
	w.m.Day = mapWeeks / 2
	for k := range mapWeeks {
		w.m.Days = append(w.m.Days, first.Plus(unit.Days(7*k)))
	}
	w.m.Cells = make([][]Option, len(w.m.Values))
	w.m.Tied = make([][]bool, len(w.m.Values))
	for i := range w.m.Cells {
		w.m.Cells[i] = make([]Option, mapWeeks)
		w.m.Tied[i] = make([]bool, mapWeeks)
	}
	return w, true
}

// Step fills at most so many cells and tells whether the map is whole. The
// cells of one day follow each other, since they share the day's facts.
func (w *MapWork) Step(cells int) bool {
	rows := len(w.m.Values)
	for ; cells > 0 && w.at < rows*mapWeeks; cells-- {
		day, row := w.at/rows, w.at%rows
		w.at++
		if row == 0 {
			w.facts = nil
		}
		c := w.base
		c.PlantOn = Known(w.m.Days[day])
		w.m.Input.Set(&c, w.m.Values[row])
		w.m.Cells[row][day], w.m.Tied[row][day] = w.film(c)
	}
	return w.at == rows*mapWeeks
}

func (w *MapWork) film(c Case) (Option, bool) {
	p, ok := prepare(c)
	if !ok || p.key != w.ground.Key {
		return NoOption, false
	}
	f, err := factsOf(p.filled, w.ground, w.facts)
	if err != nil {
		return NoOption, false
	}
	w.facts = f
	choice := weigh(f, FilmQuestion)
	o, ok := choice.Best()
	if !ok {
		return NoOption, false
	}
	return o, choice.Tied
}

// Map is the result so far.
func (w *MapWork) Map() *FilmMap { return &w.m }

// FilmAt names the film of a cell.
func (m *FilmMap) FilmAt(value, day int) table.FilmID {
	if o := m.Cells[value][day]; o != NoOption {
		return table.FilmID(o)
	}
	return table.NoFilm
}
