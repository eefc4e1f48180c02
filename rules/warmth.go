package rules

import (
	"math"

	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// WarmthAfter is the number of days from planting on for which a case looks at
// soil warmth.
const WarmthAfter = 140

// The look begins before planting, so that the days that film wins can be
// counted back.
const (
	warmthBefore = 60
	warmthDays   = warmthBefore + WarmthAfter
)

// Warmth is the course of soil temperature under each film and under bare
// ground, at the depth of the roots or seed, day by day around planting, with
// the crop's own shade. Morning is the day's lowest, when a probe should be
// read.
type Warmth struct {
	Mean, Morning, Peak [table.FilmCount + 1][warmthDays]unit.Celsius
	Low, High           [table.FilmCount + 1][warmthDays]unit.Celsius // band of the mean
}

// Of gives the temperatures of one day, counted from planting.
func (w *Warmth) Of(film int, day int) (mean, morning, peak unit.Celsius) {
	i := min(max(day+warmthBefore, 0), warmthDays-1)
	return w.Mean[film][i], w.Morning[film][i], w.Peak[film][i]
}

// warmthFrom reads the ground's year around a planting day. Leaves that close
// over the bed take away three quarters of a film's effect and cool the bed by
// up to 1.5 °C: the direction is published (film ends up near bare soil under
// pepper, below it under tomato: Ontario abstract), the size is our judgement.
func warmthFrom(g *Ground, plant unit.Date, depth int, closes int) *Warmth {
	w := &Warmth{}
	first := weather.Index(plant) - warmthBefore + weather.YearDays
	for i := range warmthDays {
		day := (first + i) % weather.YearDays
		shade := canopy(i-warmthBefore, closes)
		bare := g.Mean[Bare][depth][day]
		for film := range table.FilmCount + 1 {
			move := -0.75*shade*float64(g.Mean[film][depth][day]-bare) - 1.5*shade
			calm := 1 - 0.5*shade // leaves halve the swing
			mean := float64(g.Mean[film][depth][day])
			w.Mean[film][i] = hundredth(mean + move)
			w.Morning[film][i] = hundredth(mean + move - calm*(mean-float64(g.Low[film][depth][day])))
			w.Peak[film][i] = hundredth(mean + move + calm*(float64(g.High[film][depth][day])-mean))
			w.Low[film][i] = hundredth(float64(g.BandLow[film][depth][day]) + move)
			w.High[film][i] = hundredth(float64(g.BandHigh[film][depth][day]) + move)
		}
	}
	return w
}

func hundredth(t float64) unit.Celsius { return unit.Celsius(math.Round(t*100) / 100) }

// canopy is the share of the bed under leaves, days after planting.
func canopy(day, closes int) float64 {
	if day <= 0 || closes <= 0 {
		return 0
	}
	return math.Min(1, float64(day)/float64(closes)) * 0.8
}

// depthOf is the depth that a case looks at: roots of a transplant or seed.
func depthOf(seeded bool) int {
	if seeded {
		return heat.FiveCentimetres
	}
	return heat.TenCentimetres
}
