package search

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// FilmMap is a map of the decision: planting day across, a second input up,
// and in each cell the chosen film.
type FilmMap struct {
	Days   []unit.Date
	Input  *field.Input
	Values []field.Value
	Cells  [][]question.Option // [value][day]; NoOption where nothing fits or the case is not right
	Tied   [][]bool            // the second film is within the margin
	Day    int                 // the case's own cell
	Value  int                 // the value nearest to the case's own
}

// MapWork fills a map in slices.
type MapWork struct {
	filmAsking
	base field.Case
	m    FilmMap
	at   int
	dig  *facts.SoilYearWork // the ground of the next row
	deep bool                // each row has a ground of its own
}

// filmAsking asks of many cases the film alone, which is answered first and
// needs no water.
type filmAsking struct {
	ground *facts.SoilYear
	before *facts.Facts   // of the last case
	facts  [2]facts.Facts // that before points to in turn
}

func (k *filmAsking) film(c field.Case) (film question.Option, ahead float64) {
	p, ok := prepare(c)
	if !ok || p.key != k.ground.Key {
		return question.NoOption, 0
	}
	f := &k.facts[0]
	if k.before == f {
		f = &k.facts[1]
	}
	if err := judge.SettleDry(f, p.filled, k.ground, k.before); err != nil {
		return question.NoOption, 0
	}
	if k.before == nil {
		f.ForgetReasons()
	}
	k.before = f
	film, ahead, _ = judge.Best(f, question.Film)
	return film, ahead
}

// refused tells whether the case that was asked last may have no film at all: a map of
// a refused field says no. Of the gates that refuse, none reads the tape.
func (k *filmAsking) refused() bool {
	verdict, _, _ := judge.Best(k.before, question.Verdict)
	return verdict == question.DoNotLay
}

const (
	mapWeeks = 52 // a year of weeks across
	mapRows  = 10
)

// MapInputs are the second inputs that a map offers: those that bear on the film
// and keep the ground, two that bear on other answers alone, the crop, and those
// that change the ground, for which each row needs a year of soil warmth of its
// own. Left out are those that name a film or a reading, those that only move the
// bed top, and those that would show the same film in every row; a test tries that.
var MapInputs = append(append([]string(nil), filmInputs[1:]...), "method", "soil.slope_percent", "field.bed_length_m", "crop",
	"soil.texture", "soil.wetness_at_laying", "soil.tilth", "risk", "field.bed_top_m", "place.elevation_m", "place.lat")

// NewMap sets out a map over a year around the case's own planting day.
func NewMap(g *facts.SoilYear, c field.Case, second string) (*MapWork, bool) {
	in := field.InputByName(second)
	if in == nil || g.Key != facts.KeyOf(c) {
		return nil, false
	}
	w := &MapWork{filmAsking: filmAsking{ground: g}, base: c, m: FilmMap{Input: in, Day: mapWeeks / 2}}
	filled := field.Filled(c)
	now, _ := in.Get(&filled)
	if in.Form == field.FormChoice || in.Form == field.FormYesNo {
		w.m.Values = optionsOf(in, field.Value{})
	} else {
		steps, rows := stepsOf(in), mapRows
		if in.Reach > 0 {
			steps, rows = around(in, now), mapRows-1 // the field's own in the middle
		}
		rows = min(rows, len(steps))
		for i := range rows {
			if v := at(in, try{step: steps[i*(len(steps)-1)/max(1, rows-1)]}); in.CheckValue(v) == nil {
				w.m.Values = append(w.m.Values, v)
			}
		}
	}
	for i, v := range w.m.Values {
		if v == now || in.Form != field.FormChoice && gap(v, now) < gap(w.m.Values[w.m.Value], now) {
			w.m.Value = i
		}
		w.deep = w.deep || facts.KeyOf(in.Turn(c, v)) != g.Key
	}
	rows := len(w.m.Values)
	w.m.Cells, w.m.Tied = make([][]question.Option, rows), make([][]bool, rows)
	for i := range rows {
		w.m.Cells[i], w.m.Tied[i] = make([]question.Option, mapWeeks), make([]bool, mapWeeks)
	}
	for k := range mapWeeks {
		w.m.Days = append(w.m.Days, c.PlantOn.Value.Plus(unit.Days(7*(k-mapWeeks/2))))
	}
	return w, true
}

// Deep tells whether each row needs a ground of its own, which takes longer.
func (w *MapWork) Deep() bool { return w.deep }

// Row is the row that is being filled, where the map is filled row by row.
func (w *MapWork) Row() int { return min(w.at/mapWeeks, len(w.m.Values)-1) }

func gap(a, b field.Value) float64 { return max(a.Number-b.Number, b.Number-a.Number) }

// Step fills at most so many cells and tells whether the map is whole. The cells
// of one day follow each other, since they share the day's facts; where rows have
// a ground of their own, those of one row do.
func (w *MapWork) Step(cells int) bool {
	rows := len(w.m.Values)
	for ; cells > 0 && w.at < rows*mapWeeks; cells-- {
		day, row := w.at/rows, w.at%rows
		if w.deep {
			row, day = w.at/mapWeeks, w.at%mapWeeks
			if day == 0 && !w.ready(w.m.Input.Turn(w.base, w.m.Values[row])) {
				continue
			}
		}
		w.at++
		c := w.m.Input.Turn(w.base, w.m.Values[row])
		c.PlantOn = unit.Known(w.m.Days[day])
		film, ahead := w.film(c)
		if film != question.NoOption && w.refused() {
			film = question.NoOption
		}
		w.m.Cells[row][day], w.m.Tied[row][day] = film, film != question.NoOption && ahead < judge.TieMargin
	}
	return w.at == rows*mapWeeks
}

// ready digs a while at the ground of a row and tells whether it is there. A row
// whose case is not right needs none.
func (w *MapWork) ready(c field.Case) bool {
	if w.dig == nil {
		if p, ok := prepare(c); !ok || p.key == w.ground.Key {
			return true
		}
		w.dig, _ = facts.NewSoilYearWork(c)
	}
	if w.dig != nil {
		if !w.dig.Step(digDays) {
			return false
		}
		w.ground, w.dig = w.dig.Year(), nil
	}
	return true
}

// Map is the result so far.
func (w *MapWork) Map() *FilmMap { return &w.m }

// FilmAt names the film of a cell.
func (m *FilmMap) FilmAt(value, day int) table.FilmID {
	if o := m.Cells[value][day]; o != question.NoOption {
		return table.FilmID(o)
	}
	return table.NoFilm
}
