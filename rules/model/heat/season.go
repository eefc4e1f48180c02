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

// Season is the answer of [Compute]: about 110 kB, so pass it by pointer.
type Season struct {
	Start unit.Date
	Days  int
	Soil  [Films][Depths]Track
	// Surface is the temperature of the film (or of bare soil) in the hottest
	// hour of a clear, hot, calm day of that date's season: one day in ten. °C.
	Surface [Films][MaxDays]unit.Celsius
	// Air is the usual course that drove it.
	Air struct{ Low, High [MaxDays]unit.Celsius }
	// Margin is half the width of the band from what is not the film's doing:
	// the model's own error and one year in ten, K.
	Margin [MaxDays]unit.CelsiusDegrees
	Probe  ProbeFinding
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
	return p.Shift * unit.CelsiusDegrees(placeShare+(1-placeShare)*math.Exp(-math.Abs(float64(days))/fadeDays))
}

// round keeps results to 0.01 °C, the declared step, so that native and
// WebAssembly builds agree.
func round(v float64) float64 { return math.Round(v*100) / 100 }

// modelError is the root mean square error of the daily mean under open ground
// on stations not used for fitting, K (see the soil test).
const modelError = 1.9

// Band gives the range to expect of a day's mean: the model's own error, a cool
// or warm year, and the published range of the film's effect, as independent
// parts.
func (s *Season) Band(film Film, depth, day int) (low, high unit.Celsius) {
	mean := float64(s.Soil[film][depth].Mean[day])
	margin := float64(s.Margin[day])
	down, up := 0.0, 0.0
	if film != Bare {
		e := &effects[film]
		change := mean - float64(s.Soil[Bare][depth].Mean[day])
		// The published range grows and shrinks with the effect, but never below
		// a third of itself: where an effect is near zero its doubt is not.
		scale := math.Max(1.0/3, math.Min(2, math.Abs(change)/math.Max(0.5, math.Abs(float64(e.Value)))))
		down, up = float64(e.Value-e.Low)*scale, float64(e.High-e.Value)*scale
	}
	return unit.Celsius(round(mean - math.Hypot(margin, down))), unit.Celsius(round(mean + math.Hypot(margin, up)))
}

// FirstWarm gives the first day (index) that ends three mornings in a row at or
// above a floor, from an index on; ok is false if there is none. The morning is
// the day's lowest.
func (s *Season) FirstWarm(film Film, depth int, floor unit.Celsius, from int) (day int, ok bool) {
	const mornings = 3
	run := 0
	for d := max(from, 0); d < s.Days; d++ {
		if s.Soil[film][depth].Low[d] < floor {
			run = 0
			continue
		}
		if run++; run == mornings {
			return d, true
		}
	}
	return 0, false
}

// Over counts the days whose highest passes a ceiling, and the hours above it,
// between two indices (the last not included).
func (s *Season) Over(film Film, depth int, ceiling unit.Celsius, from, to int) (days int, hours unit.Hours) {
	t := &s.Soil[film][depth]
	sum := 0.0
	for d := max(from, 0); d < min(to, s.Days); d++ {
		if t.High[d] > ceiling {
			days++
		}
		sum += HoursAbove(t.Low[d], t.High[d], ceiling)
	}
	return days, unit.Hours(math.Round(sum*2) / 2)
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
