package facts

import (
	"math"
	"slices"

	"filmfurrow/rules/field"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// Days of frost come from the station where they were published. Our own, from twelve
// months and a spread, miss those of the station by some days; by as many we move what
// we work out for the field, which may lie higher, in a cooler spring or in a climate
// that has grown warmer.

// FrostMissed is how far our own days of 32 °F lie from those published of 5,398 stations,
// root mean square: the last of spring and the first of the fall in half of the years. A
// test works it out again.
var FrostMissed = struct{ Spring, Fall unit.Days }{8, 6}

// frostYear keeps the frost years that were asked for, one for each limit.
type frostYear struct {
	miss  *frostMiss // nil where nothing was published
	years [len(frostLimits)]*frostBoth
}

// frostBoth is a frost year as it counts, and the spring of it as we had worked it out.
type frostBoth struct {
	weather.Frost
	ours  weather.FrostDates
	risks [weather.YearDays]uint16 // of frost after each day, in years of a thousand, and 1; 0 where nobody asked
}

// frostLimits are the frosts that matter: 32 °F that harms tender leaves, 28 °F that
// harms hardy ones, and what hardened plants stand: 26 °F (half-hardy), 24 °F (hardy,
// from memory) and 20 °F (the hardiest) [table.ColdColumn].
var frostLimits = [...]unit.Celsius{weather.Freezing, weather.HardFreeze, halfHardyStands, hardyStands, hardiestStands}

const (
	halfHardyStands = unit.Celsius((26 - 32) / 1.8)
	hardyStands     = unit.Celsius((24 - 32) / 1.8)
	hardiestStands  = unit.Celsius((20 - 32) / 1.8) // of crops whose row says so
)

// frostMiss is a station's published days of 32 °F, and how many days they lie after
// those that we work out from its normals of the same years: for one year in ten, in two
// and nine in ten, where we have such a day.
type frostMiss struct {
	published    field.StationFrost
	spring, fall [3]unit.Optional[int]
}

func missOf(s field.StationFrost) (*frostMiss, error) {
	year, err := weather.NewYear(s.Normals)
	if err != nil {
		return nil, err
	}
	ours := year.Frost(weather.Freezing)
	by := func(published, ours weather.FrostDates) (miss [3]unit.Optional[int]) {
		for i, day := range inRow(ours) {
			if day >= 0 {
				miss[i] = unit.Known(apart(day, inRow(published)[i]))
			}
		}
		return miss
	}
	return &frostMiss{s, by(s.Spring, ours.Spring), by(s.Autumn, ours.Autumn)}, nil
}

func inRow(d weather.FrostDates) [3]int { return [3]int{d.Ten, d.Fifty, d.Ninety} }

// apart counts days from one index to another on the shorter way round the year.
func apart(from, to int) int {
	const half = weather.YearDays / 2
	return after(from, to+half) - half
}

// within keeps a day in a stretch of the year: what lies outside goes to the nearer end.
func within(day, from, to int) int {
	day = (day + weather.YearDays) % weather.YearDays
	span, at := after(from, to), after(from, day)
	switch {
	case at <= span:
		return day
	case at-span < weather.YearDays-at:
		return to
	}
	return from
}

// mend moves a frost year of ours. Only frosts of 32 °F are published: for harder ones
// the miss of one year in two stands in.
func (m *frostMiss) mend(f *weather.Frost, y *weather.Year) {
	hard := f.Limit != weather.Freezing
	move := func(ours, published weather.FrostDates, miss [3]unit.Optional[int], from, to int, spring bool) weather.FrostDates {
		days := inRow(ours)
		for _, i := range [3]int{1, 0, 2} {
			by := miss[i]
			if hard {
				by = miss[1]
			}
			switch {
			case days[i] >= 0:
				days[i] += by.Or(0)
			case hard || by.Given:
				continue // frost of that sort does not come here so often
			default:
				days[i] = inRow(published)[i]
			}
			first, last := from, to // the rare years lie on one side of the usual day, the frequent on the other
			if i != 1 && days[1] >= 0 {
				if (i == 0) == spring {
					first = days[1]
				} else {
					last = days[1]
				}
			}
			days[i] = within(days[i], first, last)
		}
		return weather.FrostDates{Ten: days[0], Fifty: days[1], Ninety: days[2]}
	}
	f.Spring = move(f.Spring, m.published.Spring, m.spring, y.Coldest, y.Warmest, true)
	f.Autumn = move(f.Autumn, m.published.Autumn, m.fall, y.Warmest, y.Coldest, false)
	if f.Kind != weather.FrostAlways && f.Spring.Ninety >= 0 && f.Autumn.Ninety >= 0 {
		f.Kind = weather.FrostUsual
	}
}

func (k *frostYear) both(y *weather.Year, limit unit.Celsius) *frostBoth {
	i := slices.Index(frostLimits[:], limit)
	if k.years[i] == nil {
		both := &frostBoth{Frost: y.Frost(limit)}
		both.ours = both.Spring
		if k.miss != nil {
			k.miss.mend(&both.Frost, y)
		}
		k.years[i] = both
	}
	return k.years[i]
}

func (k *frostYear) of(y *weather.Year, limit unit.Celsius) *weather.Frost {
	return &k.both(y, limit).Frost
}

// after is the share of years with a frost after a day of spring.
func (k *frostYear) after(y *weather.Year, limit unit.Celsius, index int) float64 {
	known := &k.both(y, limit).risks[index]
	if *known == 0 {
		*known = 1 + uint16(math.Round(1000*y.FrostAfter(limit, k.asOurs(y, limit, index))))
	}
	return float64(*known-1) / 1000
}

// asOurs is the day of our own spring that brings frost as often as a day of the mended
// one: as far from it as the nearest of its dates was moved, and between two of them in
// proportion.
func (k *frostYear) asOurs(y *weather.Year, limit unit.Celsius, index int) int {
	if k.miss == nil || after(y.Coldest, index) > after(y.Coldest, y.Warmest) {
		return index
	}
	both := k.both(y, limit)
	at := after(y.Coldest, index)
	day, before := at, [2]int{-1, 0} // of the mended spring and of ours, counted from the coldest day
	mended, ours := inRow(both.Spring), inRow(both.ours)
	for i := 2; i >= 0; i-- { // the frequent frosts first
		if mended[i] < 0 || ours[i] < 0 {
			continue
		}
		knot := [2]int{after(y.Coldest, mended[i]), after(y.Coldest, ours[i])}
		switch {
		case at >= knot[0]:
			day = at + knot[1] - knot[0]
		case before[0] >= 0:
			day = before[1] + (at-before[0])*(knot[1]-before[1])/(knot[0]-before[0])
			return within(y.Coldest+day, y.Coldest, y.Warmest)
		default:
			return within(y.Coldest+at+knot[1]-knot[0], y.Coldest, y.Warmest)
		}
		before = knot
	}
	return within(y.Coldest+day, y.Coldest, y.Warmest)
}

// usualFrosts are the days of the year that are taken for the usual last frost of spring
// and the usual first of the fall, the grower's own before the station's; −1 where half
// of the years have none.
func (f *Facts) usualFrosts() (last, first int) {
	frost := f.frosts.of(f.year, weather.Freezing)
	last, first = frost.Spring.Fifty, frost.Autumn.Fifty
	if day, ok := dayIndex(f.Case.Place.LastFrost); ok {
		last = day
	}
	if day, ok := dayIndex(f.Case.Place.FirstFrost); ok {
		first = day
	}
	return last, first
}

// FrostNear gives the days of the year 2000 (and of those beside it) among which a list
// from nearby may still name the usual last frost of spring, or the first of the fall: so
// many days off at most, and on the same side of the coldest day and of midwinter; false where half of the
// years have no such frost.
func FrostNear(c *field.Case, spring bool, days int) (from, to unit.Date, ok bool) {
	f := Facts{Case: *c}
	if err := f.yearOf(c); err != nil {
		return 0, 0, false
	}
	last, first := f.usualFrosts()
	day, before, past := first, days, min(days, after(first, f.year.Coldest))
	if spring {
		midwinter := 0 // 1 January, or 1 July
		if c.Place.Latitude.Value < 0 {
			midwinter = weather.YearDays / 2
		}
		day, before, past = last, min(days, after(f.year.Coldest, last), after(midwinter, last)), days
	}
	on := weather.DateOf(2000, max(day, 0))
	return on.Plus(unit.Days(-before)), on.Plus(unit.Days(past)), day >= 0
}
