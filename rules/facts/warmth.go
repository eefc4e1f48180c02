package facts

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
	WarmthBefore = 60
	warmthDays   = WarmthBefore + WarmthAfter
)

// Warmth is the course of soil temperature under each film and under bare
// ground, at the depth of the roots or seed, day by day around planting, with
// the crop's own shade. Morning is the day's lowest, when a probe should be
// read.
type Warmth struct {
	Mean, Morning, Peak [table.FilmCount + 1][warmthDays]unit.Celsius
	Low, High           [table.FilmCount + 1][warmthDays]unit.Celsius // band of the mean

	ground *SoilYear
	plant  unit.Date
	closes int  // days from planting until the leaves close
	bare   bool // the band was not worked out, for a search
}

// MeansOnly tells that the course was worked out for a search, which reads no
// reasons: without its band.
func (w *Warmth) MeansOnly() bool { return w.bare }

// Of gives the temperatures of one day, counted from planting.
func (w *Warmth) Of(film int, day int) (mean, morning, peak unit.Celsius) {
	i := min(max(day+WarmthBefore, 0), warmthDays-1)
	return w.Mean[film][i], w.Morning[film][i], w.Peak[film][i]
}

// Band gives the range to expect of one day's mean, counted from planting.
func (w *Warmth) Band(film int, day int) (low, high unit.Celsius) {
	i := min(max(day+WarmthBefore, 0), warmthDays-1)
	return w.Low[film][i], w.High[film][i]
}

// warmthFrom reads the ground's year around a planting day.
func warmthFrom(g *SoilYear, plant unit.Date, depth int, closes int) *Warmth {
	w := &Warmth{}
	w.from(g, plant, depth, closes)
	return w
}

func (w *Warmth) from(g *SoilYear, plant unit.Date, depth int, closes int) {
	w.ground, w.plant, w.closes = g, plant, closes
	first := weather.Index(plant) - WarmthBefore + weather.YearDays
	for i := range warmthDays {
		shade := canopy(i-WarmthBefore, closes)
		for film := range table.FilmCount + 1 {
			if w.bare {
				index := (first + i) % weather.YearDays
				w.Mean[film][i], w.Morning[film][i] = g.meanUnder(film, depth, index, shade)
				w.Peak[film][i] = g.peakUnder(film, depth, index, shade)
				continue
			}
			d := g.under(film, depth, (first+i)%weather.YearDays, shade)
			w.Mean[film][i], w.Morning[film][i], w.Peak[film][i], w.Low[film][i], w.High[film][i] = d.Mean, d.Low, d.High, d.BandLow, d.BandHigh
		}
	}
}

// SoilDay is one day's soil temperature: its mean, lowest and highest, and the
// range to expect of the mean.
type SoilDay struct{ Mean, Low, High, BandLow, BandHigh unit.Celsius }

// under reads one day of the year, index 0 to 364, beneath a share of leaves.
// [leafShelter] and its neighbours say what leaves do.
func (g *SoilYear) under(film, depth, index int, shade float64) SoilDay {
	mean := float64(g.Mean[film][depth][index])
	move := g.sheltered(mean, depth, index, shade)
	usual, morning := g.meanUnder(film, depth, index, shade)
	return SoilDay{
		Mean:     usual,
		Low:      morning,
		High:     g.peakUnder(film, depth, index, shade),
		BandLow:  unit.Hundredth(float64(g.BandLow[film][depth][index]) + move),
		BandHigh: unit.Hundredth(float64(g.BandHigh[film][depth][index]) + move),
	}
}

// sheltered is what a share of leaves moves a day's mean by.
func (g *SoilYear) sheltered(mean float64, depth, index int, shade float64) float64 {
	return -leafShelter*shade*(mean-float64(g.Mean[Bare][depth][index])) - leafCooling*shade
}

// peakUnder gives the highest of the day alone.
func (g *SoilYear) peakUnder(film, depth, index int, shade float64) unit.Celsius {
	mean := float64(g.Mean[film][depth][index])
	move := g.sheltered(mean, depth, index, shade)
	return unit.Hundredth(mean + move + (1-leafCalm*shade)*(float64(g.High[film][depth][index])-mean))
}

// meanUnder gives the mean and the lowest of the day alone.
func (g *SoilYear) meanUnder(film, depth, index int, shade float64) (usual, morning unit.Celsius) {
	mean := float64(g.Mean[film][depth][index])
	move := g.sheltered(mean, depth, index, shade)
	calm := 1 - leafCalm*shade
	return unit.Hundredth(mean + move), unit.Hundredth(mean + move - calm*(mean-float64(g.Low[film][depth][index])))
}

// At is the same course at 5 cm (0) or 10 cm (1).
func (w *Warmth) At(depth int) *Warmth { return warmthFrom(w.ground, w.plant, depth, w.closes) }

// Leaves that close over the bed take away three quarters of a film's effect, cool the
// bed by up to 1.5 °C and halve the swing of a day: the direction is published (film
// ends up near bare soil under pepper, below it under tomato: Ontario abstract), the
// sizes are our judgement. They close over four fifths of the bed, when two thirds of
// the days to harvest have passed.
const (
	leafShelter  = 0.75
	leafCooling  = 1.5 // °C
	leafCalm     = 0.5
	fullCanopy   = 0.8
	closesThirds = 2
)

// leavesClose is how many days after planting the leaves have closed.
func leavesClose(toHarvest unit.Days) int { return int(toHarvest) * closesThirds / 3 }

// canopy is the share of the bed under leaves, days after planting: a smooth
// rise to four fifths.
func canopy(day, closes int) float64 {
	if day <= 0 || closes <= 0 {
		return 0
	}
	x := math.Min(1, float64(day)/float64(closes))
	return x * x * (3 - 2*x) * fullCanopy
}

// depthOf is the depth that a case looks at: roots of a transplant or seed.
func depthOf(seeded bool) int {
	if seeded {
		return heat.FiveCentimetres
	}
	return heat.TenCentimetres
}
