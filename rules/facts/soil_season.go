package facts

import (
	"math"

	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Places of the two depths that soil warmth is known at, for [SoilSeasonOf].
const (
	AtFive = heat.FiveCentimetres
	AtTen  = heat.TenCentimetres
)

// Depths are the two depths.
var Depths = [heat.Depths]unit.Metres{AtFive: 0.05, AtTen: 0.10}

// ceilingDays is how long after planting a root zone that is too warm counts.
const ceilingDays = 60

// SoilSeason is soil warmth at one depth over any stretch of days: what the
// season strip draws and the advice file lists. Films are in the order of the
// film table, bare ground last.
type SoilSeason struct {
	Depth unit.Metres
	From  unit.Date
	Days  [table.FilmCount + 1][]SoilDay
	Marks [table.FilmCount + 1]SoilMarks
}

// SoilMarks are what a grower reads off one curve.
type SoilMarks struct {
	Early, Safe unit.Optional[unit.Date] // first of three days that hold the floor, looked for from 60 days before planting to 139 after
	// SafeSoonest and SafeLatest are that first day along the upper and the lower
	// edge of the band: a warm or a cool spring, and what the model may miss.
	SafeSoonest, SafeLatest unit.Optional[unit.Date]
	OverDays                int                 // of the first 60 days, those whose mean is above the ceiling
	OverHours               unit.Hours          // hours above it in those 60 days
	Surface                 unit.Celsius        // of the film, or of bare ground: see hottestSurface
	BurnsStems              bool                // the surface comes within half a degree of what stems that touch it bear
	Planting                SoilDay             // on the wanted planting day
	Warmer                  unit.CelsiusDegrees // than bare ground on that day, of the mean
}

// SoilSeasonOf reads the ground under an advice, at one of [Depths], for some
// days from a date on, at most a year.
func SoilSeasonOf(f *Facts, depth int, from unit.Date, days int) *SoilSeason {
	s := &SoilSeason{Depth: Depths[depth], From: from}
	w := f.Warmth
	if Depths[depth] != f.Depth {
		w = w.At(depth)
	}
	for film := range table.FilmCount + 1 {
		list := make([]SoilDay, min(max(days, 0), weather.YearDays))
		for i := range list {
			date := from.Plus(unit.Days(i))
			list[i] = w.ground.under(film, depth, weather.Index(date), canopy(int(date.Minus(f.Plant)), w.closes))
		}
		s.Days[film] = list
		s.Marks[film] = w.marks(f, film)
	}
	return s
}

func (w *Warmth) marks(f *Facts, film int) SoilMarks {
	m := SoilMarks{Surface: f.hottestSurface(w.ground, film)}
	m.BurnsStems = m.Surface >= StemBurn-0.5
	date := func(d unit.Days) unit.Optional[unit.Date] {
		if d == Never {
			return unit.Optional[unit.Date]{}
		}
		return unit.Known(w.plant.Plus(d))
	}
	m.Early = date(w.Reach(film, f.MinSoilTemperature, atMean, 0))
	m.Safe = date(w.Reach(film, f.SafeSoilTemperature, atMorning, 0))
	m.SafeSoonest = date(w.Reach(film, f.SafeSoilTemperature, atMorning, +1))
	m.SafeLatest = date(w.Reach(film, f.SafeSoilTemperature, atMorning, -1))
	hours := 0.0
	for day := range ceilingDays {
		mean, low, high := w.Of(film, day)
		if mean > f.Ceiling {
			m.OverDays++
		}
		hours += heat.HoursAbove(low, high, f.Ceiling)
	}
	m.OverHours = unit.Hours(math.Round(hours))
	m.Planting.Mean, m.Planting.Low, m.Planting.High = w.Of(film, 0)
	m.Planting.BandLow, m.Planting.BandHigh = w.Band(film, 0)
	bare, _, _ := w.Of(Bare, 0)
	m.Warmer = m.Planting.Mean.Minus(bare)
	return m
}

// Reach finds when the first three days running at or above a floor are to be
// expected, and gives the first of them, counted from planting; a bed that is warm
// from the first computed day gives its start. The course is that of a usual year
// without weather, so a spell of days is allowed for. hour leads from the day's mean (0) to its lowest (1); edge from the
// curve (0) to the upper (+1) or lower (−1) edge of its band.
func (w *Warmth) Reach(film int, floor unit.Celsius, hour float64, edge int) unit.Days {
	run := 0
	mean, morning := &w.Mean[film], &w.Morning[film]
	for i := range mean {
		t := mean[i] + unit.Celsius(hour*float64(morning[i]-mean[i])) + w.spell[i]
		switch edge {
		case +1:
			t += w.High[film][i] - mean[i]
		case -1:
			t -= mean[i] - w.Low[film][i]
		}
		if t < floor {
			run = 0
			continue
		}
		if run++; run == 3 {
			return unit.Days(i - 2 - WarmthBefore)
		}
	}
	return Never
}

// SeasonWindow is the stretch of days that a season strip shows for a planting
// day: six whole months, from one month before the planting month.
func SeasonWindow(plant unit.Date) (from unit.Date, days int) {
	year, month, _ := plant.Civil()
	start := func(m int) unit.Date { return unit.On(year+(m-1+12)/12-1, (m-1+12)%12+1, 1) }
	from = start(month - 1)
	return from, int(start(month + 5).Minus(from))
}
