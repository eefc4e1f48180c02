package weather

import (
	"math"

	"filmfurrow/rules/unit"
)

// Common limits of frost tables: 32 °F and 28 °F.
const (
	Freezing   unit.Celsius = 0
	HardFreeze unit.Celsius = -2.2
)

// FrostKind says what sort of frost year a place has.
type FrostKind uint8

const (
	FrostUsual  FrostKind = iota // frost in winter, a free season in summer
	FrostSome                    // fewer than nine years in ten have any
	FrostNever                   // fewer than one year in a hundred has any
	FrostAlways                  // half of the years have frost within the warmest thirty days
)

// FrostDates are indices into the [Year]; −1 where no such day exists.
// The number is the share of years, in percent, with a frost beyond the day:
// after it in spring, before it in autumn.
type FrostDates struct{ Ten, Fifty, Ninety int }

// Frost is the frost year of a place for one limit.
type Frost struct {
	Limit          unit.Celsius
	Kind           FrostKind
	Spring, Autumn FrostDates
	Days           float64 // mean number of days a year at or below the limit, to 0.1
	Share          float64 // share of years with at least one, to 0.001
}

var noDates = FrostDates{-1, -1, -1}

// Frost computes the frost dates for a limit in °C at thermometer height (1.5 m;
// the ground and low ground are colder).
//
// Minima scatter normally about the smooth minimum with the year's spread, and
// the chance of a frost-free stretch is that of a chain in which each night
// remembers the one before (correlation 0.57). Spring runs from the coldest to
// the warmest day of the smooth year, autumn from the warmest to the coldest, so
// both hemispheres work alike.
func (y *Year) Frost(limit unit.Celsius) Frost {
	f := Frost{Limit: limit, Spring: noDates, Autumn: noDates}
	for d := range YearDays {
		f.Days += chanceBelow(y, d, limit)
	}
	f.Days = round(f.Days, 10)
	f.Share = round(1-y.chanceFree(limit, y.Warmest, YearDays), 1000)
	switch {
	case f.Share < 0.01:
		f.Kind = FrostNever
		return f
	case y.chanceFree(limit, y.Warmest-15, 30) < 0.5:
		f.Kind = FrostAlways
		return f
	case f.Share < 0.9:
		f.Kind = FrostSome
	}
	f.Spring = y.datesFrom(limit, -1, distance(y.Coldest, y.Warmest))
	f.Autumn = y.datesFrom(limit, +1, distance(y.Warmest, y.Coldest))
	return f
}

// datesFrom walks away from the warmest day, back for spring and on for autumn,
// so that the chance of a frost beyond the day only grows.
func (y *Year) datesFrom(limit unit.Celsius, step, days int) FrostDates {
	dates := noDates
	free := chain{limit: limit}
	for k := 0; k <= days; k++ {
		d := wrap(y.Warmest + step*k)
		risk := 1 - free.add(y, d)
		dates.note(risk, d)
	}
	return dates
}

func (f *FrostDates) note(risk float64, day int) {
	risk = round(risk, 1e9)
	if f.Ten < 0 && risk >= 0.1 {
		f.Ten = day
	}
	if f.Fifty < 0 && risk >= 0.5 {
		f.Fifty = day
	}
	if f.Ninety < 0 && risk >= 0.9 {
		f.Ninety = day
	}
}

// FrostAfter gives the share of years, 0–1 to 0.001, with a minimum at or below
// the limit after the day and before the next warmest time of the year: the
// spring question.
func (y *Year) FrostAfter(limit unit.Celsius, index int) float64 {
	return round(1-y.chanceFree(limit, index+1, distance(index, y.Warmest)), 1000)
}

// FrostBefore gives the share of years, 0–1 to 0.001, with a minimum at or below
// the limit between the last warmest time of the year and the day: the autumn
// question.
func (y *Year) FrostBefore(limit unit.Celsius, index int) float64 {
	return round(1-y.chanceFree(limit, y.Warmest, distance(y.Warmest, index)), 1000)
}

// HotDays gives the mean number of days, to 0.1, whose maximum reaches the
// limit, in a stretch of days from an index on.
func (y *Year) HotDays(limit unit.Celsius, from int, days int) float64 {
	sum := 0.0
	for k := range days {
		d := wrap(from + k)
		sum += normal(float64(y.Maximum[d]-limit) / float64(y.SpreadMaximum[d]))
	}
	return round(sum, 10)
}

func (y *Year) chanceFree(limit unit.Celsius, from, days int) float64 {
	free := chain{limit: limit}
	chance := 1.0
	for k := range days {
		chance = free.add(y, wrap(from+k))
	}
	return chance
}

// chain carries the chance that every night so far stayed above the limit.
type chain struct {
	limit    unit.Celsius
	started  bool
	chance   float64
	margin   float64 // of the last night, in spreads
	lastFree float64
}

// add takes one more night and returns the chance that all stayed free.
func (c *chain) add(y *Year, day int) float64 {
	margin := -y.below(day, c.limit)
	free := normal(margin)
	switch {
	case !c.started:
		c.chance, c.started = free, true
	case c.lastFree > 0:
		c.chance *= math.Min(1, bothAbove(c.margin, margin)/c.lastFree)
	}
	c.margin, c.lastFree = margin, free
	return c.chance
}

func chanceBelow(y *Year, d int, limit unit.Celsius) float64 {
	return normal(y.below(d, limit))
}

// below is how far a limit lies above a day's usual minimum, in spreads of cold nights.
func (y *Year) below(day int, limit unit.Celsius) float64 {
	return float64(limit-y.Minimum[day]) / (y.nights * float64(y.SpreadMinimum[day]))
}

// normal is the standard normal distribution function.
func normal(z float64) float64 { return 0.5 * math.Erfc(-z/math.Sqrt2) }

// bothAbove gives the chance that two standard normal values with correlation
// [dayToDay] both stay below a and b (the same as both nights staying above the
// limit by those margins): the single product plus the integral of the bivariate
// density over the correlation (Sheppard 1900; Drezner, Z. and Wesolowsky, G. O.,
// Journal of Statistical Computation and Simulation 35, 1990), by five-point
// Gauss-Legendre.
func bothAbove(a, b float64) float64 {
	sum := 0.0
	for i, x := range gaussNodes {
		r := dayToDay * (1 + x) / 2
		s := 1 - r*r
		sum += gaussWeights[i] * math.Exp(-(a*a-2*r*a*b+b*b)/(2*s)) / math.Sqrt(s)
	}
	return normal(a)*normal(b) + sum*dayToDay/2/(2*math.Pi)
}

var (
	gaussNodes   = [5]float64{-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640}
	gaussWeights = [5]float64{0.2369268850561891, 0.4786286704993665, 0.5688888888888889, 0.4786286704993665, 0.2369268850561891}
)

func wrap(day int) int { return (day%YearDays + YearDays) % YearDays }

// distance counts the days from one index forward to another, 0–364.
func distance(from, to int) int { return wrap(to - from) }

// round keeps a published figure to so many steps per unit, so that native and
// WebAssembly builds, whose exponentials differ in the last bit, agree.
func round(v, perUnit float64) float64 { return math.Round(v*perUnit) / perUnit }
