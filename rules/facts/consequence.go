package facts

import (
	"math"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// What a film's warmth means for the crop, in the grower's units: days earlier, days
// lost to heat. The soil curve is read here once; the rules weigh only what comes of
// it.

const (
	// longestWait caps the days that bare ground keeps a crop waiting: ground that
	// never warms would else win without end.
	longestWait = 30
	// hotHours is the part of a day for which a root zone that passes the ceiling only
	// in the afternoon is too warm, about four hours (our judgement).
	hotHours = 4.0 / 24
	// burnRamp is how far above [StemBurn] the computed surface must lie for a hot day
	// to count whole; the surface is a computed figure and may be some degrees out.
	burnRamp = 5.0
	// softDays is how long the stem of a new plant is soft enough to be girdled.
	softDays = 14
	// leastSpan keeps the growth of crops with a narrow band from jumping.
	leastSpan = 3.0
)

func (f *Facts) consequences() {
	for film := range table.FilmCount + 1 {
		f.Stalled[film] = f.stalled(film)
	}
	for film := range table.FilmCount {
		f.Ahead[film] = f.ahead(film)
		f.Burning[film] = f.burning(film)
	}
}

// ahead is how many days sooner the crop comes under a film than on bare ground: the
// days that bare ground would still keep it waiting on planting day, and the growth
// won until harvest. Growth runs from nothing at the crop's early floor to full at the
// lower end of its best root warmth. Where the film cools, it is less than nothing. A
// film that cools the first month wins no days by what it does later, under the leaves,
// nor does one lose days that warms it.
func (f *Facts) ahead(film int) unit.Days {
	wait := func(cover int) float64 { return float64(min(max(f.ReachWork[cover], 0), longestWait)) }
	days := wait(Bare) - wait(film)
	for day := range min(int(f.CropDays), WarmthAfter) {
		under, _, _ := f.Warmth.Of(film, day)
		bare, _, _ := f.Warmth.Of(Bare, day)
		days += f.growth(under) - f.growth(bare)
	}
	if warmer := float64(f.MeanUnder[film].Minus(f.MeanUnder[Bare])); days*warmer <= 0 {
		return 0
	}
	return unit.Days(math.Round(days))
}

// growth is the share of a full day's growth that roots of this warmth allow, 0–1.
func (f *Facts) growth(t unit.Celsius) float64 {
	span := max(float64(f.Crop.RootBest.Low.Minus(f.MinSoilTemperature)), leastSpan)
	return min(max(float64(t.Minus(f.MinSoilTemperature))/span, 0), 1)
}

// stalled counts the days of the first 60 on which the roots stand above the ceiling:
// whole where the daily mean does, for its hot hours where only the afternoon does.
func (f *Facts) stalled(cover int) int {
	days := 0.0
	for day := range ceilingDays {
		switch mean, _, peak := f.Warmth.Of(cover, day); {
		case mean > f.Ceiling:
			days++
		case peak > f.Ceiling:
			days += hotHours
		}
	}
	return int(math.Round(days))
}

// burning counts the hot days of the first two weeks on which stems that touch the
// film die.
func (f *Facts) burning(film int) int {
	part := min(max(float64(f.Surface[film].Minus(StemBurn))/burnRamp, 0), 1)
	return int(math.Round(f.HotYoung * part))
}
