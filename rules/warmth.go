package rules

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// WarmthAfter is the number of days from planting on for which soil warmth is
// computed.
const WarmthAfter = 140

// The computed season begins before planting, so that the days that film wins
// can be counted back.
const (
	warmthBefore = 60
	warmthDays   = warmthBefore + WarmthAfter
)

// Bare is the place of bare soil in a [Warmth], behind the films.
const Bare = table.FilmCount

// Warmth is the course of soil temperature under each film and under bare
// ground, at the depth of the roots or seed, day by day around planting.
// Morning is the day's lowest, when a probe should be read.
type Warmth struct {
	Mean, Morning, Peak [table.FilmCount + 1][warmthDays]unit.Celsius
	Low, High           unit.CelsiusDegrees // how far the truth may lie below or above
}

// Of gives the temperatures of one day, counted from planting.
func (w *Warmth) Of(film int, day int) (mean, morning, peak unit.Celsius) {
	i := min(max(day+warmthBefore, 0), warmthDays-1)
	return w.Mean[film][i], w.Morning[film][i], w.Peak[film][i]
}

// groundState is what the plain model needs to know of the bed.
type groundState struct {
	latitude unit.Degrees
	height   unit.Metres
	depth    unit.Metres
	damping  unit.Metres // depth at which the daily wave has fallen to 1/e
	contact  float64     // share of a film's effect that reaches the soil
	closes   int         // days from planting until leaves cover the film
}

// plainWarmth estimates soil warmth without solving for heat flow: bare soil
// follows the air of the last week and lies above it in the sun; each film
// adds its published effect, scaled by the sun of the day, by contact, by how
// warm the bare soil is already, and by the leaves that shade it.
//
// The sun scale (20 MJ/m² a day at the reference) and the daily swing factors
// are those of a prototype run; the fall of the effect with warmer soil is
// published in sign only ([table.WarmthFalls2015]).
func plainWarmth(y *weather.Year, plant unit.Date, g groundState) *Warmth {
	w := &Warmth{Low: -2.5, High: 2.5}
	reach := math.Exp(-float64(g.depth) / float64(g.damping))
	for i := range warmthDays {
		day := i - warmthBefore
		date := plant.Plus(unit.Days(day))
		air, low, high := airOfWeek(y, date)
		sun := sunOf(low, high, date, g)
		bare := air + 2.8*sun/20
		shade := canopy(day, g.closes)
		swing := (high - low) / 2 * reach
		for film := range table.FilmCount {
			effect := float64(filmEffect(table.FilmID(film), g.depth))
			effect *= sun / 20 * g.contact * (1 - 0.75*shade) * warmGround(bare)
			mean := bare + effect - 1.5*shade
			w.set(film, i, mean, swing*swingFactor(table.FilmID(film))*(1-0.5*shade))
		}
		w.set(Bare, i, bare-1.5*shade, swing*1.8*(1-0.5*shade))
	}
	return w
}

func (w *Warmth) set(film, i int, mean, swing float64) {
	w.Mean[film][i] = hundredth(mean)
	w.Morning[film][i] = hundredth(mean - swing)
	w.Peak[film][i] = hundredth(mean + swing)
}

func hundredth(t float64) unit.Celsius { return unit.Celsius(math.Round(t*100) / 100) }

// airOfWeek is the mean air of the seven days that end on a date, with the
// date's own minimum and maximum.
func airOfWeek(y *weather.Year, date unit.Date) (mean, low, high float64) {
	for k := range 7 {
		a, b := y.On(date.Plus(unit.Days(-k)))
		mean += float64(a+b) / 14
	}
	a, b := y.On(date)
	return mean, float64(a), float64(b)
}

func sunOf(low, high float64, date unit.Date, g groundState) float64 {
	day := date.DayOfYear()
	top := sky.Extraterrestrial(g.latitude, day)
	clear := sky.ClearSky(top, g.height)
	return float64(sky.FromTemperatureRange(unit.Celsius(low), unit.Celsius(high), sky.InlandCoefficient, top, clear))
}

// canopy is the share of the film that leaves shade, days after planting.
func canopy(day, closes int) float64 {
	if day <= 0 || closes <= 0 {
		return 0
	}
	return math.Min(1, float64(day)/float64(closes)) * 0.8
}

// warmGround makes a film's effect fall as the bare soil warms.
func warmGround(bare float64) float64 { return math.Max(0.4, 1.15-0.015*math.Max(0, bare)) }

func filmEffect(film table.FilmID, depth unit.Metres) unit.CelsiusDegrees {
	row := &table.Films[film]
	at := (float64(depth) - 0.05) / 0.05
	return row.WarmingAt5.Value + unit.CelsiusDegrees(at)*(row.WarmingAt10.Value-row.WarmingAt5.Value)
}

// swingFactor is the day–night swing at the surface as a multiple of half the
// air's range (prototype run).
func swingFactor(film table.FilmID) float64 {
	switch film {
	case table.Clear:
		return 2.17
	case table.WhiteOnBlack, table.Paper:
		return 1.22
	case table.SilverOnBlack:
		return 1.37
	}
	return 1.82
}
