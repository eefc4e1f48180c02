package facts

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// SoilYear is the usual year of soil warmth at one place, in one soil, under
// every film: computed from heat flow once, then read for any crop and day. A
// caller may keep it as long as [SoilKey] of the case stays the same.
type SoilYear struct {
	Key SoilKey
	// Mean, Low and High are a day's figures; index: cover, depth, day of the
	// year as in [weather.Index]. Covers are in the order of the film table,
	// bare ground last.
	Mean, Low, High   [table.FilmCount + 1][heat.Depths][weather.YearDays]float32
	BandLow, BandHigh [table.FilmCount + 1][heat.Depths][weather.YearDays]float32 // of the mean
	Surface           [table.FilmCount + 1][weather.YearDays]float32
	Probe             heat.ProbeFinding
}

// Bare is the place of bare ground behind the films.
const Bare = table.FilmCount

// SoilKey is all of a case that soil warmth depends on, with defaults
// filled.
type SoilKey struct{ input heat.Input }

// KeyOf gives the key of a case that passes [field.Check].
func KeyOf(c field.Case) SoilKey {
	filled := field.Filled(c)
	return KeyOfFilled(&filled)
}

// groundBed is the bed that warmth is computed for: the height is answered
// later and makes a modest difference.
const groundBed = unit.Metres(0.15)

// KeyOfFilled is [KeyOf] for a case whose defaults stand already.
func KeyOfFilled(c *field.Case) SoilKey {
	in := heat.Usual(c.Place.Normals(), 0, 1)
	in.BedHeight, in.BedTop = groundBed, min(max(c.Field.BedTop.Value, 0.3), 2)
	in.Lie = heat.Embossed
	for i := range table.Soils {
		if table.Soils[i].ID == c.Soil.Texture {
			in.Texture = heat.Texture(i)
		}
	}
	switch c.Soil.Wetness {
	case "dry":
		in.Moisture = heat.Dry
	case "wet":
		in.Moisture = heat.Wet
	}
	switch c.Soil.Tilth {
	case "cloddy", "trashy":
		in.Tilth = heat.Cloddy
	}
	switch c.Risk {
	case "cool":
		in.Season = weather.Cool
	case "warm":
		in.Season = weather.Warm
	}
	if t := c.Soil.Temperature; t.Given && c.Soil.MeasuredOn.Given {
		in.Probe = heat.Probe{Given: true, Reading: t.Value, On: c.Soil.MeasuredOn.Value,
			Hour: unit.Hours(c.Soil.MeasuredHour.Or(8)), Depth: min(max(c.Soil.MeasuredDepth.Or(0.1), 0.02), 0.30)}
		if film, ok := table.FilmByID(c.Practice.ReuseFilm); ok {
			in.Probe.Film = heat.Film(film) + 1
		}
	}
	return SoilKey{in}
}

// The year is computed in two stretches that overlap, so that the days on
// which a stretch begins, with film just laid, are never shown. The first one
// begins in December and shows its days from the 15th on, the second its days
// from the 20th on: together a whole year.
const stretchDays = heat.MaxDays

// stretch is one of the two: the index of its first day, which may lie in the
// year before, and how many of its days are left to settle.
type stretch struct{ from, settling int }

var stretches = [2]stretch{{-20, 15}, {160, 20}}

// shows tells whether a day of the year is read from the stretch.
func (s stretch) shows(index int) bool {
	for _, day := range [2]int{index - s.from, index - weather.YearDays - s.from} {
		if day >= s.settling && day < stretchDays {
			return true
		}
	}
	return false
}

// any year does for a usual year: 2025 has no leap day.
const groundYear = 2025

// GroundWork computes a [SoilYear] in slices, so that a browser can stay awake.
type SoilYearWork struct {
	ground  *SoilYear
	runners [len(stretches)]*heat.Runner
	at      int
}

// NewGroundWork begins the work for a case that passes [field.Check]. The error is a
// [field.Errors].
func NewSoilYearWork(c field.Case) (*SoilYearWork, error) {
	filled := field.Filled(c)
	key := KeyOfFilled(&filled)
	w := &SoilYearWork{ground: &SoilYear{Key: key}}
	for i, s := range stretches {
		in := key.input
		in.Start = unit.On(groundYear, 1, 1).Plus(unit.Days(s.from))
		in.Days, in.Laid = stretchDays, in.Start
		if in.Probe.Given {
			in.Probe.Given = s.shows(weather.Index(in.Probe.On))
			in.Probe.On = sameDay(in.Probe.On, in.Start)
		}
		runner, err := heat.NewRunner(in)
		if err != nil {
			return nil, field.PlaceError(err)
		}
		w.runners[i] = runner
	}
	return w, nil
}

// sameDay moves a date to the first time that its day comes from a start on.
func sameDay(d, start unit.Date) unit.Date {
	year, _, _ := start.Civil()
	moved := weather.DateOf(year, weather.Index(d))
	if moved < start {
		moved = weather.DateOf(year+1, weather.Index(d))
	}
	return moved
}

// Step works for about so many days of weather and tells whether all is done.
func (w *SoilYearWork) Step(days int) bool {
	if w.at < len(w.runners) && w.runners[w.at].Step(days) {
		w.take(w.runners[w.at].Season(), stretches[w.at])
		w.at++
		if w.at == len(w.runners) {
			w.shift()
			w.ground.join()
		}
	}
	return w.at == len(w.runners)
}

// Progress is the share of the work done, 0–1.
func (w *SoilYearWork) Progress() float64 {
	if w.at == len(w.runners) {
		return 1
	}
	return (float64(w.at) + w.runners[w.at].Progress()) / float64(len(w.runners))
}

// Ground is the result; nil until Step says done.
func (w *SoilYearWork) Ground() *SoilYear {
	if w.at < len(w.runners) {
		return nil
	}
	return w.ground
}

// cover gives a film's place in the heat model, whose bare ground comes first.
func cover(film int) heat.Film {
	if film == Bare {
		return heat.Bare
	}
	return heat.Film(film) + 1
}

// take copies a stretch into the year, from its settled days on.
func (w *SoilYearWork) take(s *heat.Season, shown stretch) {
	g := w.ground
	if s.Probe.Given {
		g.Probe = s.Probe
	}
	for day := shown.settling; day < s.Days; day++ {
		i := (shown.from + day + weather.YearDays) % weather.YearDays
		for film := range table.FilmCount + 1 {
			for depth := range heat.Depths {
				track := &s.Soil[cover(film)][depth]
				g.Mean[film][depth][i] = float32(track.Mean[day])
				g.Low[film][depth][i] = float32(track.Low[day])
				g.High[film][depth][i] = float32(track.High[day])
				low, high := s.Band(cover(film), depth, day)
				g.BandLow[film][depth][i], g.BandHigh[film][depth][i] = float32(low), float32(high)
			}
			g.Surface[film][i] = float32(s.Surface[cover(film)][day])
		}
	}
}

// joinDays is how far from a seam the two stretches are bent towards each other.
const joinDays = 30

// join takes the small step out of the two seams, days 180 and 360. Under a film
// that has lain for half a year the depth is warmer than under one of three
// weeks, by up to half a degree under clear film; growers lie between. Half the
// step is taken from each side, fading over a month.
func (g *SoilYear) join() {
	for film := range table.FilmCount + 1 {
		for depth := range heat.Depths {
			for _, s := range stretches {
				g.bend(film, depth, (s.from+s.settling+weather.YearDays)%weather.YearDays)
			}
		}
	}
}

// bend makes a year even across the seam before one of its days: what its mean
// steps beyond the course to both sides is shared out.
func (g *SoilYear) bend(film, depth, seam int) {
	index := func(day int) int { return (seam + day + weather.YearDays) % weather.YearDays }
	at := func(day int) float32 { return g.Mean[film][depth][index(day)] }
	course := (at(-1) - at(-4) + at(3) - at(0)) / 6
	step := at(0) - at(-1) - course
	for day := -joinDays; day < joinDays; day++ {
		part := -step / 2 * float32(joinDays-day) / joinDays
		if day < 0 {
			part = step / 2 * float32(joinDays+day+1) / joinDays
		}
		i := index(day)
		for _, year := range [...]*float32{&g.Mean[film][depth][i], &g.Low[film][depth][i], &g.High[film][depth][i], &g.BandLow[film][depth][i], &g.BandHigh[film][depth][i]} {
			*year += part
		}
	}
}

// shift carries a believed probe reading to the stretch that did not hold it,
// where only its lasting part is left.
func (w *SoilYearWork) shift() {
	g := w.ground
	if !g.Probe.Given || g.Probe.Doubtful {
		return
	}
	on := weather.Index(g.Key.input.Probe.On)
	holder := stretches[0]
	if !holder.shows(on) {
		holder = stretches[1]
	}
	for i := range weather.YearDays {
		if holder.shows(i) {
			continue
		}
		away := after(on, i)
		by := float32(g.Probe.MoveAfter(min(away, weather.YearDays-away)))
		for film := range table.FilmCount + 1 {
			for depth := range heat.Depths {
				g.Mean[film][depth][i] += by
				g.Low[film][depth][i] += by
				g.High[film][depth][i] += by
				g.BandLow[film][depth][i] += by
				g.BandHigh[film][depth][i] += by
			}
		}
	}
}

// NewSoilYear computes the ground of a case at once. It takes about a tenth of a
// second; see [SoilYearWork] for slices.
func NewSoilYear(c field.Case) (*SoilYear, error) {
	w, err := NewSoilYearWork(c)
	if err != nil {
		return nil, err
	}
	for !w.Step(1000) {
	}
	return w.Ground(), nil
}
