package heat

import (
	"math"

	"filmfurrow/rules/unit"
)

// Depths that a Season reports.
const (
	FiveCentimetres = iota
	TenCentimetres
	Depths
)

// Track is one curve: the soil's mean, lowest and highest of each day in °C, to
// 0.01. Index 0 is the season's first day; entries past its days are zero.
type Track struct {
	Mean, Low, High [MaxDays]unit.Celsius
}

// Season is the answer of [Compute]. Soil and Surface hold open ground first
// ([Bare]), then the covers in their order.
type Season struct {
	Start unit.Date
	Days  int
	Soil  [][Depths]Track
	// Surface is the temperature of the film (or of bare soil) in the hottest
	// hour of a clear, hot, calm day of that date's season: one day in ten. °C.
	Surface [][MaxDays]unit.Celsius
	// Air is the usual course that drove it.
	Air struct{ Low, High [MaxDays]unit.Celsius }
	// Margin is half the width of the band from what is not the film's doing, that
	// holds eight of ten: the model's own error and a cool or warm year, K.
	Margin [Depths][MaxDays]unit.CelsiusDegrees
	// Spread is the standard deviation of a day's mean about the usual course, which
	// has no weather, K.
	Spread [Depths][MaxDays]unit.CelsiusDegrees
	Probe  ProbeFinding
	covers *Covers
}

// ProbeFinding says what a probe reading did.
type ProbeFinding struct {
	Given    bool
	Expected unit.Celsius        // what the curve said at that hour and depth
	Shift    unit.CelsiusDegrees // reading minus expected
	Doubtful bool                // too far off to believe: the curve was not moved
}

// MoveAfter is by how much the curve moves so many days before or after the
// reading: the part that is the place's stays, the part that was the weather's
// fades. A reading that is doubted moves nothing.
func (p *ProbeFinding) MoveAfter(days int) unit.CelsiusDegrees {
	if p.Doubtful {
		return 0
	}
	return p.Shift * unit.CelsiusDegrees(PlaceShare+(1-PlaceShare)*math.Exp(-math.Abs(float64(days))/FadeDays))
}

// round keeps results to 0.01 °C, the declared step, so that native and
// WebAssembly builds agree.
func round(v float64) float64 { return math.Round(v*100) / 100 }

// ModelError is the root mean square error of monthly means at 5 and 10 cm on the
// stations that were not used for fitting, driven by that year's own monthly
// minima, maxima and rain, K; ErrorWithoutRain the same where the rain is not known. A
// test of package facts works them out again.
var (
	ModelError       = [Depths]float64{1.69, 1.65}
	ErrorWithoutRain = [Depths]float64{1.91, 1.84}
)

// FromNormals is how the page's own path fared at those stations, with normals of
// 1991–2020, and of rain where it is published, for what was measured in 2020, March to
// September, at 5 and 10 cm: root mean square errors of days and of monthly means, and
// of a plain damped wave for the days; the mean error; K to 0.1. Worked out again by the
// same test.
var FromNormals = struct{ Days, Months, Wave, Bias [Depths]float64 }{
	Days: [Depths]float64{3.0, 2.7}, Months: [Depths]float64{2.3, 2.1}, Wave: [Depths]float64{3.7, 3.4}, Bias: [Depths]float64{-0.8, -0.6},
}

// SpreadShare is what of the spread of the air's daily mean is left in the soil's:
// the standard deviation about the smooth course of 2020's months at the fitted
// stations, over that which [weather.Year] gives for the air. Worked out again by
// the same test.
var SpreadShare = [Depths]float64{0.52, 0.43}

// Spell is by how many standard deviations the smooth course may lie below a floor
// when the first three days in a row above it are to be expected: spells of warm
// days come before the mean is there. A test lets days that remember one another
// run over a rising mean and counts.
const Spell = 0.32

// bandReach is how many standard deviations the band reaches to each side. Of
// errors of the usual shape 1.28 would hold eight in ten; those of places have
// longer tails, and the normals are older than the years one meets.
const bandReach = 1.4

// oneInTen is how many standard deviations one of ten lies beyond.
const oneInTen = 1.2816

// Band gives the range to expect of a day's mean: the model's own error, a cool
// or warm year, and the published range of the film's effect, as independent
// parts.
func (s *Season) Band(film, depth, day int) (low, high unit.Celsius) {
	mean := float64(s.Soil[film][depth].Mean[day])
	margin := float64(s.Margin[depth][day])
	down, up := 0.0, 0.0
	if film != Bare {
		e := &s.covers.list[film-1].Effect[FiveCentimetres]
		change := mean - float64(s.Soil[Bare][depth].Mean[day])
		// The published range grows and shrinks with the effect, but never below
		// a third of itself: where an effect is near zero its doubt is not.
		scale := math.Max(1.0/3, math.Min(2, math.Abs(change)/math.Max(0.5, math.Abs(float64(e.Value)))))
		down, up = float64(e.Value-e.Low)*scale, float64(e.High-e.Value)*scale
	}
	return unit.Celsius(round(mean - math.Hypot(margin, down))), unit.Celsius(round(mean + math.Hypot(margin, up)))
}

// HoursAbove gives the hours that a day stands above a ceiling: it takes the
// day for a sine between its lowest and highest.
func HoursAbove(low, high, ceiling unit.Celsius) float64 {
	switch {
	case ceiling >= high:
		return 0
	case ceiling < low:
		return 24
	}
	middle, half := float64(low+high)/2, float64(high-low)/2
	return 24 / math.Pi * math.Acos(math.Max(-1, math.Min(1, (float64(ceiling)-middle)/half)))
}

// StemBurn is the film temperature from which stems that touch it burn:
// University of Delaware, Weekly Crop Update (air over 90 °F under a clear sky
// puts black film over 140 °F).
const StemBurn unit.Celsius = 60
