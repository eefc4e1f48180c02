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

// burnMargin is how near a computed surface may come to [StemBurn] before it is said to
// burn: the surface is computed, and may be some degrees out.
const burnMargin = unit.Celsius(0.5)

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
	// Covers and Warm are the first of three days that hold the floor for planting
	// under covers and that of planting without, looked for from 60 days before planting
	// to 139 after. Of crops that covers do not help they are one.
	Covers, Warm unit.Optional[unit.Date]
	// WarmSoonest and WarmLatest are that first day along the upper and the lower
	// edge of the band: a warm or a cool spring, and what the model may miss.
	WarmSoonest, WarmLatest unit.Optional[unit.Date]
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
		s.Marks[film] = w.marks(f, depth, film)
	}
	return s
}

func (w *Warmth) marks(f *Facts, depth, film int) SoilMarks {
	m := SoilMarks{Surface: f.hottestSurface(w.ground, film)}
	m.BurnsStems = m.Surface >= StemBurn-burnMargin
	date := func(d unit.Days) unit.Optional[unit.Date] {
		if d == Never {
			return unit.Optional[unit.Date]{}
		}
		return unit.Known(w.plant.Plus(d))
	}
	m.Covers = date(f.reach(depth, film, f.CoverFloor(), UsualSpring))
	m.Warm = date(f.reach(depth, film, f.WorkFloor, UsualSpring))
	m.WarmSoonest = date(f.reach(depth, film, f.WorkFloor, WarmSpring))
	m.WarmLatest = date(f.reach(depth, film, f.WorkFloor, CoolSpring))
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

// reach finds the first day that holds a floor, with the two that follow, counted from
// planting and looked for from [WarmthBefore] days before it on: as [Season] does, so
// that strip, table and planting day speak of one course and one floor.
func (f *Facts) reach(depth, cover int, floor unit.Celsius, spring Spring) unit.Days {
	season := f.Season.WithFloor(floor)
	season.depth = depth
	for day := -WarmthBefore; day < WarmthAfter; day++ {
		if season.SoilHolds(cover, (f.index+day+weather.YearDays)%weather.YearDays, spring) {
			return unit.Days(day)
		}
	}
	return Never
}

// ReachCovers is the first of three days whose mean holds the floor for planting under
// covers, counted from planting.
func (f *Facts) ReachCovers(cover int) unit.Days {
	return f.reach(depthOf(f.Seeded), cover, f.CoverFloor(), UsualSpring)
}

// SeasonWindow is the stretch of days that a season strip shows for a planting
// day: six whole months, from one month before the planting month.
func SeasonWindow(plant unit.Date) (from unit.Date, days int) {
	year, month, _ := plant.Civil()
	start := func(m int) unit.Date { return unit.On(year+(m-1+12)/12-1, (m-1+12)%12+1, 1) }
	from = start(month - 1)
	return from, int(start(month + 5).Minus(from))
}
