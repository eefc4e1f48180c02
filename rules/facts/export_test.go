package facts

import (
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// SodYear is the year of open ground alone, with turf on it as on weather
// stations: the page's own path from monthly normals and rain, without films.
func SodYear(n weather.Normals, rain unit.Optional[[12]float64]) *SoilYear {
	in := heat.Usual(n, HeatSoil(table.SoilByID(usualLoam)), 0, 1)
	in.Sod, in.Rain = true, rain
	w, err := newSoilYearWork(SoilKey{in}, nil)
	if err != nil {
		panic(err)
	}
	for !w.Step(1000) {
	}
	return w.Year()
}

// FirstWarm is the day of the year of the first of three days in a row at a floor,
// along the curve (0) or the upper (+1) or lower (−1) edge of its band, looked for
// as a case planted on 1 May looks.
func (g *SoilYear) FirstWarm(depth int, floor unit.Celsius, edge Spring) (day int, ok bool) {
	f := Facts{index: weather.Index(unit.On(groundYear, 5, 1)), Season: Season{soil: g}}
	after := f.reach(depth, Bare, floor, edge)
	if after == Never {
		return 0, false
	}
	return f.index + int(after), true
}
