package weather

import (
	"math"

	"filmfurrow/rules/unit"
)

// Year is the usual course of a place's weather, day by day. Index 0 is
// 1 January; 29 February shares the figures of 28 February, see [Index].
type Year struct {
	Minimum, Maximum             [YearDays]unit.Celsius
	SpreadMinimum, SpreadMaximum [YearDays]unit.CelsiusDegrees // standard deviation from one year to another on that day
	Coldest, Warmest             int                           // index of the day with the lowest and highest smooth mean
	nights                       float64
}

// NewYear spreads monthly normals over the year. Each month's days average to
// its normal exactly. The error is an [*InputError]: see [Normals.Check], and
// months that jump so much that a day's minimum would pass its maximum.
func NewYear(n Normals) (Year, error) {
	if err := n.Check(); err != nil {
		return Year{}, err
	}
	var y Year
	var low, high [12]float64
	for m := range 12 {
		low[m], high[m] = float64(n.Minimum[m]), float64(n.Maximum[m])
	}
	lows, highs := daily(&low), daily(&high)
	coldest := lows[0]
	for d := range YearDays {
		if highs[d] <= lows[d] {
			return Year{}, &InputError{"maximum around " + monthNames[monthOf(d)], highs[d], lows[d], lows[d] + widestRange, "°C",
				"neighboring months differ too much for a smooth year; check the figures of this month and the next"}
		}
		coldest = min(coldest, lows[d])
		y.Minimum[d], y.Maximum[d] = unit.Celsius(lows[d]), unit.Celsius(highs[d])
		if lows[d]+highs[d] < float64(y.Minimum[y.Coldest]+y.Maximum[y.Coldest]) {
			y.Coldest = d
		}
		if lows[d]+highs[d] > float64(y.Minimum[y.Warmest]+y.Maximum[y.Warmest]) {
			y.Warmest = d
		}
	}
	y.nights = 1
	if n.Nights > 0 {
		y.nights += (n.Nights - 1) * min(1, max(0, coldest/mildNight))
	}
	spread(&lows, &y.SpreadMinimum, spreadOfMinimum)
	spread(&highs, &y.SpreadMaximum, spreadOfMaximum)
	return y, nil
}

// Index gives the day's place in a [Year].
func Index(date unit.Date) int {
	_, month, day := date.Civil()
	return firstDay[month-1] + min(day, daysInMonth[month-1]) - 1
}

// DateOf gives the date of an index in a calendar year.
func DateOf(year, index int) unit.Date {
	m := monthOf(index)
	return unit.On(year, m+1, index-firstDay[m]+1)
}

// Evenly spreads monthly sums over the days of their months.
func Evenly(sums *[12]float64) (days [YearDays]float64) {
	for m, sum := range sums {
		for d := firstDay[m]; d < firstDay[m+1]; d++ {
			days[d] = sum / float64(daysInMonth[m])
		}
	}
	return days
}

func monthOf(index int) int {
	m := 0
	for index >= firstDay[m+1] {
		m++
	}
	return m
}

// On gives the usual minimum and maximum of a date.
func (y *Year) On(date unit.Date) (minimum, maximum unit.Celsius) {
	i := Index(date)
	return y.Minimum[i], y.Maximum[i]
}

// Season chooses among the years a grower may meet.
type Season uint8

// A cool and a warm year are those met once in ten years, over sixty days.
const (
	Usual Season = iota
	Cool
	Warm
)

// In gives the course of a cool, usual or warm year: each day moved by
// [Year.SeasonMargin].
func (y *Year) In(s Season) Year {
	out := *y
	if s == Usual {
		return out
	}
	for d := range YearDays {
		step := y.SeasonMargin(d)
		if s == Cool {
			step = -step
		}
		out.Minimum[d] = y.Minimum[d].Plus(step)
		out.Maximum[d] = y.Maximum[d].Plus(step)
	}
	return out
}

// SeasonMargin says by how much one year in ten is cooler (or warmer) than usual
// over the sixty days around an index. The mean of n days that remember one
// another (correlation r from day to day) scatters as that of n·(1−r)/(1+r)
// free days (common practice in climatology, no source); one year in ten lies
// beyond 1.28 standard deviations.
func (y *Year) SeasonMargin(index int) unit.CelsiusDegrees {
	const days, oneInTen = 60, 1.2816
	free := days * (1 - dayToDay) / (1 + dayToDay)
	mean := (y.SpreadMinimum[index] + y.SpreadMaximum[index]) / 2
	return mean * unit.CelsiusDegrees(oneInTen/math.Sqrt(free))
}
