package field

import "filmfurrow/rules/unit"

// Series is one row for each list of twelve monthly figures.
type Series struct {
	Name      string
	Label     string
	Kind      unit.Kind
	Low, High float64
	Get       func(*Case) ([12]float64, bool)
	Set       func(*Case, [12]float64)
	Clear     func(*Case)
}

func monthly(name, label string, kind unit.Kind, low, high float64, at func(*Case) *unit.Optional[[12]float64]) Series {
	return Series{Name: name, Label: label, Kind: kind, Low: low, High: high,
		Get:   func(c *Case) ([12]float64, bool) { o := at(c); return o.Value, o.Given },
		Set:   func(c *Case, v [12]float64) { *at(c) = unit.Known(v) },
		Clear: func(c *Case) { *at(c) = unit.Optional[[12]float64]{} }}
}

func normal(name, label string, at func(*Case) *[12]unit.Celsius) Series {
	return Series{Name: name, Label: label, Kind: unit.KindTemperature, Low: -60, High: 60,
		Get: func(c *Case) (v [12]float64, given bool) {
			for i, t := range at(c) {
				v[i] = float64(t)
			}
			return v, c.Place.Own
		},
		Set: func(c *Case, v [12]float64) {
			for i := range v {
				at(c)[i] = unit.Celsius(v[i])
			}
			c.Place.Own, c.Place.HasNormals = true, true
			c.Place.StationFrost, c.Place.StationRain = unit.Optional[StationFrost]{}, unit.Optional[[12]float64]{}
		},
		Clear: func(c *Case) {
			*at(c) = [12]unit.Celsius{}
			c.Place.Own, c.Place.HasNormals = false, false
		}}
}

// Climate lists the monthly inputs of the case file's climate object.
var Climate = []Series{
	normal("climate.tmin_c", "Mean daily minimum", func(c *Case) *[12]unit.Celsius { return &c.Place.TMin }),
	normal("climate.tmax_c", "Mean daily maximum", func(c *Case) *[12]unit.Celsius { return &c.Place.TMax }),
	monthly("climate.solar_mj_m2_day", "Sun", unit.KindRadiation, 0, 45, func(c *Case) *unit.Optional[[12]float64] { return &c.Place.Solar }),
	monthly("climate.rain_mm", "Rain", unit.KindDepth, 0, 3000, func(c *Case) *unit.Optional[[12]float64] { return &c.Place.Rain }),
	monthly("climate.wind_m_s", "Wind at 2 m", unit.KindSpeed, 0, 20, func(c *Case) *unit.Optional[[12]float64] { return &c.Place.Wind }),
	monthly("climate.humidity_percent", "Humidity", unit.KindShare, 1, 100, func(c *Case) *unit.Optional[[12]float64] { return &c.Place.Humidity }),
}

// MonthlyMoves stand for the monthly lists of a case in the search for turning
// points. A list that is known is moved as a whole, by the same step in all twelve
// months: "nights 2 °C warmer". One that was left out, and so is estimated, is set
// to the same figure in every month: "wind of 5 m/s the year round". Rain changes
// no answer and has no row.
var MonthlyMoves = func() (rows []*Input) {
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
		if m.less != "" {
			in.Reach = int(m.high/m.step + 0.5)
		}
		in.Told = true
		in.Beside = func(c *Case) bool { // either the one row of a list or the other
			_, known := in.Get(c)
			return known == (m.less != "")
		}
		in.Get = func(c *Case) (Value, bool) {
			_, given := s.Get(c)
			return Value{}, given || normals
		}
		in.Set = func(c *Case, v Value) {
			frost, rain := c.Place.StationFrost, c.Place.StationRain
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
			c.Place.StationFrost, c.Place.StationRain = frost, rain // the same place yet
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
		p.Elevation = unit.Known(p.StationAt)
	}
	n := p.Normals()
	for m := range n.Minimum {
		n.Minimum[m], n.Maximum[m] = unit.Celsius(rounded(float64(n.Minimum[m]))), unit.Celsius(rounded(float64(n.Maximum[m])))
	}
	c.Place = Place{Own: true, HasNormals: true, TMin: n.Minimum, TMax: n.Maximum, Latitude: p.Latitude, Longitude: p.Longitude, Elevation: p.Elevation,
		Solar: p.Solar, Rain: p.Rain, Wind: p.Wind, Humidity: p.Humidity, LastFrost: p.LastFrost, FirstFrost: p.FirstFrost}
}

// Turn sets one input of a case to a value of the search. Another crop is started
// in its own usual way, as in the form; the sun of another latitude leaves the
// temperatures as they are.
func (in *Input) Turn(c Case, v Value) Case {
	if in.Before != nil {
		in.Before(&c)
	}
	in.Set(&c, v)
	return c
}
