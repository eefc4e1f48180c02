package rules

import "filmfurrow/rules/unit"

// monthlyMoves stand for the monthly lists of a case in the search for turning
// points. A list that is known is moved as a whole, by the same step in all twelve
// months: "nights 2 °C warmer". One that was left out, and so is estimated, is set
// to the same figure in every month: "wind of 5 m/s the year round". Rain changes
// no answer and has no row.
var monthlyMoves = func() (rows []*Input) {
	for _, m := range []struct {
		series           int
		name, less, more string
		kind             unit.Kind
		low, high, step  float64
	}{
		{0, "Nights", "cooler", "warmer", unit.KindWarming, -6, 6, 0.5},
		{1, "Days", "cooler", "warmer", unit.KindWarming, -6, 6, 0.5},
		{2, "Sun", "weaker", "stronger", unit.KindRadiation, -6, 6, 0.5},
		{4, "Wind", "weaker", "stronger", unit.KindSpeed, -4, 4, 0.5},
		{5, "Humidity", "lower", "higher", unit.KindShare, -40, 40, 5},
		// As far as a year's mean goes anywhere.
		{2, "Sun the year round", "", "", unit.KindRadiation, 2, 30, 1},
		{4, "Wind the year round", "", "", unit.KindSpeed, 0, 10, 0.5},
		{5, "Humidity the year round", "", "", unit.KindShare, 10, 100, 5},
	} {
		s, normals := &Climate[m.series], m.series < 2 // normals are a station's, too
		in := &Input{Name: s.Name, Label: m.name, Form: FormNumber, Kind: m.kind, Low: m.low, High: m.high, Step: m.step, Moves: [2]string{m.less, m.more}}
		in.Get = func(c *Case) (Value, bool) {
			_, given := s.Get(c)
			return Value{}, given || normals
		}
		in.Set = func(c *Case, v Value) {
			if normals {
				ownClimate(c)
			}
			var months [12]float64
			if m.less != "" {
				months, _ = s.Get(c)
			}
			for i := range months {
				months[i] = rounded(months[i] + v.Number)
			}
			s.Set(c, months)
		}
		rows = append(rows, in)
	}
	return rows
}()

// ownClimate turns the station's normals, at the height of the field, into a
// climate of the case's own, so that a part of it may be moved.
func ownClimate(c *Case) {
	p := c.Place
	if !p.Elevation.Given {
		p.Elevation = Known(p.StationAt)
	}
	n := normalsOf(&p)
	for m := range n.Minimum {
		n.Minimum[m], n.Maximum[m] = unit.Celsius(rounded(float64(n.Minimum[m]))), unit.Celsius(rounded(float64(n.Maximum[m])))
	}
	c.Place = Place{Own: true, HasNormals: true, TMin: n.Minimum, TMax: n.Maximum, Latitude: p.Latitude, Longitude: p.Longitude, Elevation: p.Elevation,
		Solar: p.Solar, Rain: p.Rain, Wind: p.Wind, Humidity: p.Humidity, LastFrost: p.LastFrost, FirstFrost: p.FirstFrost}
}

// turned is how many inputs are searched: those of the form and the monthly lists.
var turned = len(Inputs) + len(monthlyMoves)

func turnedInput(i int) *Input {
	if i < len(Inputs) {
		return &Inputs[i]
	}
	return monthlyMoves[i-len(Inputs)]
}

// Turn sets one input of a case to a value of the search. Another crop is started
// in its own usual way, as in the form; the sun of another latitude leaves the
// temperatures as they are.
func (in *Input) Turn(c Case, v Value) Case {
	switch in.Name {
	case "crop":
		c.Method = ""
	case "place.lat":
		ownClimate(&c)
	}
	in.Set(&c, v)
	return c
}
