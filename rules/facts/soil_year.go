package facts

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/soilwater"
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
	// Spell is how far the mean may lie below a floor when the first three days in a row
	// above it are to be expected: see [heat.Spell]. Only the warm edge of a planting
	// range reads it.
	Spell [heat.Depths][weather.YearDays]float32
	Probe heat.ProbeFinding
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

// A probe reading without an hour or a depth is taken to be the trade's: at eight in the
// morning, 10 cm deep.
const (
	usualHour  = 8.0
	usualDepth = unit.Metres(0.1)
)

// KeyOfFilled is [KeyOf] for a case whose defaults stand already.
func KeyOfFilled(c *field.Case) SoilKey {
	soil := table.SoilByID(c.Soil.Texture)
	in := heat.Usual(c.Place.Normals(), HeatSoil(soil), 0, 1)
	in.Rain = c.Place.RainNormals()
	in.BedHeight, in.BedTop = groundBed, min(max(c.Field.BedTop.Value, 0.3), 2)
	in.Lie = heat.Embossed
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
			Hour: unit.Hours(c.Soil.MeasuredHour.Or(usualHour)), Depth: min(max(c.Soil.MeasuredDepth.Or(usualDepth), 0.02), 0.30)}
		for _, under := range [...]string{c.Practice.ReuseFilm, c.Soil.MeasuredUnder} {
			if film, ok := table.FilmByID(under); ok {
				in.Probe.Cover = cover(int(film))
			}
		}
	}
	return SoilKey{in}
}

// HeatSoil is a soil as the heat model takes it, and all of it follows from the
// row's sand and clay by Saxton and Rawls (2006): dry is the wilting point, moist
// the field capacity, wet half of the way on to saturation, and the bulk density
// that of mineral grains less the pores.
func HeatSoil(s *table.Soil) heat.Soil {
	w := soilwater.Of(s.Sand, s.Clay, soilwater.UsualOrganicMatter)
	return heat.Soil{Density: heat.ParticleDensity * (1 - w.Saturation), Sand: s.Sand, Dry: w.WiltingPoint, Moist: w.FieldCapacity, Wet: (w.FieldCapacity + w.Saturation) / 2}
}

// WaterClass is a soil as the water plan takes it.
func WaterClass(s *table.Soil) soilwater.Class {
	return soilwater.Class{Sand: s.Sand, Clay: s.Clay, GuideLow: s.Guide.Low / 1000, GuideHigh: s.Guide.High / 1000,
		WetLow: s.Wetted.Low, Wet: s.Wetted.Value, WetHigh: s.Wetted.High}
}

// HeatCover is a film as the heat model takes it.
func HeatCover(f *table.Film) heat.Cover {
	under := f.SunReflected.Value
	if f.BlackBelow {
		under = table.Films[table.Black].SunReflected.Value
	}
	effect := func(w *table.Figure[unit.CelsiusDegrees]) heat.Effect {
		return heat.Effect{Low: w.Low, Value: w.Value, High: w.High}
	}
	return heat.Cover{
		Optics: heat.Optics{ReflectTop: f.SunReflected.Value, ReflectUnder: under, Transmit: f.SunPassed.Value,
			LongReflectTop: f.HeatReflected.Value, LongReflectUnder: table.HeatReflectedBelow.Value, LongTransmit: f.HeatPassed.Value},
		Effect: [heat.Depths]heat.Effect{AtFive: effect(&f.WarmingAt5), AtTen: effect(&f.WarmingAt10)},
	}
}

func coverList() []heat.Cover {
	list := make([]heat.Cover, table.FilmCount)
	for i := range list {
		list[i] = HeatCover(&table.Films[i])
	}
	return list
}

// usualLoam is the soil that published effects belong to.
const usualLoam = "loam"

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

// SoilYearWork computes a [SoilYear] in slices, so that a browser can stay awake.
//
// Of the two stretches the second begins with the open ground of the first.
type SoilYearWork struct {
	ground  *SoilYear
	runners [len(stretches)]*heat.Runner
	at      int // the stretch in hand
}

// NewSoilYearWork begins the work for a case that passes [Check]. The error is a
// [field.Errors].
func NewSoilYearWork(c field.Case) (*SoilYearWork, error) {
	filled := field.Filled(c)
	return newSoilYearWork(KeyOfFilled(&filled), heatCovers())
}

func newSoilYearWork(key SoilKey, covers *heat.Covers) (*SoilYearWork, error) {
	w := &SoilYearWork{ground: &SoilYear{Key: key}}
	for i, s := range stretches {
		in := key.input
		in.Start = unit.On(groundYear, 1, 1).Plus(unit.Days(s.from))
		in.Days, in.Laid = stretchDays, in.Start
		if in.Probe.Given {
			in.Probe.Given = s.shows(weather.Index(in.Probe.On))
			in.Probe.On = sameDay(in.Probe.On, in.Start)
		}
		runner, err := heat.NewRunner(in, covers)
		if err != nil {
			return nil, field.PlaceError(err)
		}
		if i > 0 {
			w.runners[i-1].KeepAt(in.Start)
			runner.Begin(w.runners[i-1])
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
	all := len(w.runners)
	if w.at < all && w.runners[w.at].Step(days) {
		w.take(w.runners[w.at].Season(), stretches[w.at])
		if w.at++; w.at == all {
			w.shift()
			w.ground.join()
		}
	}
	return w.at == all
}

// Progress is the share of the work done, 0–1.
func (w *SoilYearWork) Progress() float64 {
	if w.at == len(w.runners) {
		return 1
	}
	return (float64(w.at) + w.runners[w.at].Progress()) / float64(len(w.runners))
}

// Year is the result; nil until Step says done.
func (w *SoilYearWork) Year() *SoilYear {
	if w.at < len(w.runners) {
		return nil
	}
	return w.ground
}

// cover gives a film's place in the heat model's results, whose bare ground comes
// first.
func cover(film int) int {
	if film == Bare {
		return heat.Bare
	}
	return heat.Bare + 1 + film
}

// take copies a stretch into the year, from its settled days on.
func (w *SoilYearWork) take(s *heat.Season, shown stretch) {
	g := w.ground
	if s.Probe.Given {
		g.Probe = s.Probe
	}
	for day := shown.settling; day < s.Days; day++ {
		i := (shown.from + day + weather.YearDays) % weather.YearDays
		for depth := range heat.Depths {
			g.Spell[depth][i] = heat.Spell * float32(s.Spread[depth][day])
		}
		for film := range table.FilmCount + 1 {
			if cover(film) >= len(s.Soil) {
				continue // a run of open ground alone
			}
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

// NewSoilYear computes the ground of a case at once. It takes a twentieth of a
// second; see [SoilYearWork] for slices.
func NewSoilYear(c field.Case) (*SoilYear, error) {
	w, err := NewSoilYearWork(c)
	if err != nil {
		return nil, err
	}
	for !w.Step(1000) {
	}
	return w.Year(), nil
}
