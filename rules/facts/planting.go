package facts

import (
	"math"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The floors of a warm crop's bed, as a daily mean at the depth of roots or seed,
// under the film. Published first planting days of warm crops fall on 65 °F; from
// 60 °F planting is possible with covers, below it roots stand still.
const (
	warmFloor  = unit.Celsius((65 - 32) / 1.8)
	coverFloor = unit.Celsius((60 - 32) / 1.8)
)

// workFloor is the daily mean under the film that the planting day works to: the
// middle of what published lists name, between risky and thriving; of a warm crop no
// less than 65 °F. So melons, okra and sweet potatoes ask more of the ground than
// tomatoes do.
func workFloor(warm bool, risky, thrives unit.Celsius) unit.Celsius {
	floor := (risky + thrives) / 2
	if warm {
		floor = max(warmFloor, floor)
	}
	return unit.Hundredth(float64(floor))
}

// MildAfter is how long after the day past which frost comes in only one spring of ten the
// nights count as mild.
const MildAfter = 21

// soilRun is how many days in a row the bed must hold its floor.
const soilRun = 3

// frostWindow are the days of the year on which frost keeps a crop indoors: from the
// first frost of autumn to the day in spring from which growers set it out. Indices
// of the year; closed is false where frost keeps it indoors on no day.
type frostWindow struct {
	closed   bool
	from, to int // the first day that is kept indoors, and the first that is not
	soonest  int // as to, in a warm spring and in a cool one
	latest   int
	whole    bool // no day of the year is free
}

func (w *frostWindow) inside(index, to int) bool {
	return w.whole || w.closed && after(w.from, index) < after(w.from, to)
}

// Season says when a crop may go into the bed at a place: the soil under each film,
// and the frost. It does not depend on the day that the grower asked for.
type Season struct {
	soil  *SoilYear
	depth int
	floor unit.Celsius
	frost frostWindow
	air   *weather.Year
	risk  Spring
	cool  unit.Celsius // usual daily mean of the air above which it is too hot to set the crop; 0 of most crops
}

// Spring says which spring is meant: the usual, or the one year in ten that is
// warmer or cooler.
type Spring int

// The springs.
const (
	UsualSpring Spring = 0
	WarmSpring  Spring = +1
	CoolSpring  Spring = -1
)

// Opening says how the planting day was found.
type Opening uint8

// The ways.
const (
	OpenWarm        Opening = iota // the bed holds the working floor
	OpenUnderCovers                // it never does, but it holds the floor for planting under covers
	NeverOpen                      // no day of the year will do
)

// SoilHolds tells whether the bed under a cover (the place of a film, or [Bare])
// holds the floor on a day of the year and the two that follow, as a daily mean, with
// no leaves over it. A warm spring has its warm spells too: in it the first such days
// come before the mean is there.
func (s *Season) SoilHolds(cover, index int, spring Spring) bool {
	for k := range soilRun {
		i := (index + k) % weather.YearDays
		t := s.soil.Mean[cover][s.depth][i]
		switch spring {
		case WarmSpring:
			t = s.soil.BandHigh[cover][s.depth][i] + s.soil.Spell[s.depth][i]
		case CoolSpring:
			t = s.soil.BandLow[cover][s.depth][i]
		}
		if unit.Hundredth(float64(t)) < s.floor {
			return false
		}
	}
	return true
}

// Open tells whether a crop may go into the bed under a cover on a day.
func (s *Season) Open(cover int, on unit.Date) bool {
	return s.open(cover, weather.Index(on), UsualSpring)
}

func (s *Season) open(cover, index int, spring Spring) bool {
	to := s.frost.to
	switch spring {
	case WarmSpring:
		to = s.frost.soonest
	case CoolSpring:
		to = s.frost.latest
	}
	return !s.frost.inside(index, to) && s.isCool(index) && s.SoilHolds(cover, index, spring)
}

// isCool goes by the usual fall whichever spring was asked for: plants come by the calendar.
func (s *Season) isCool(index int) bool {
	if s.cool == 0 {
		return true
	}
	mean := (s.air.Minimum[index] + s.air.Maximum[index]) / 2
	return unit.Hundredth(float64(mean.Plus(-unit.CelsiusDegrees(s.risk)*s.air.SeasonMargin(index)))) <= s.cool
}

// NextCool is NextOpen for the heat alone, and the daily mean of the air that it waits for.
func (s *Season) NextCool(from unit.Date) (day unit.Date, mean unit.Celsius, ok bool) {
	day, ok = next(from, s.isCool)
	return day, s.cool, ok
}

// NextOpen is the first day from a date on, within a year, on which the crop may go
// into the bed under a cover.
func (s *Season) NextOpen(cover int, from unit.Date, spring Spring) (unit.Date, bool) {
	return next(from, func(index int) bool { return s.open(cover, index, spring) })
}

// NextWarm is NextOpen for the soil alone.
func (s *Season) NextWarm(cover int, from unit.Date) (unit.Date, bool) {
	return next(from, func(index int) bool { return s.SoilHolds(cover, index, UsualSpring) })
}

// NextFree is NextOpen for the frost alone.
func (s *Season) NextFree(from unit.Date) (unit.Date, bool) {
	return next(from, func(index int) bool { return !s.frost.inside(index, s.frost.to) })
}

// HoldsFor counts the days from a date on that the bed under a cover holds the floor;
// Never where it holds it all year.
func (s *Season) HoldsFor(cover int, from unit.Date) unit.Days {
	start := weather.Index(from)
	for k := range weather.YearDays {
		if !s.SoilHolds(cover, (start+k)%weather.YearDays, UsualSpring) {
			return unit.Days(k)
		}
	}
	return Never
}

// next finds the first day from a date on, within a year, of which something holds.
func next(from unit.Date, holds func(index int) bool) (unit.Date, bool) {
	year, _, _ := from.Civil()
	start := weather.Index(from)
	for k := range weather.YearDays {
		index := (start + k) % weather.YearDays
		if !holds(index) {
			continue
		}
		if index < start {
			year++
		}
		if k == 0 {
			return from, true // 29 February shares the figures of the day before
		}
		return weather.DateOf(year, index), true
	}
	return from, false
}

// FreeFrom is how many days lie between a day and the frost that ends the crop in
// autumn; Never where none does.
func (s *Season) FreeFrom(on unit.Date) unit.Days {
	if !s.frost.closed {
		return Never
	}
	return unit.Days(after(weather.Index(on), s.frost.from))
}

// season gathers what decides the planting day.
func (f *Facts) season(soil *SoilYear) Season {
	s := Season{soil: soil, depth: depthOf(f.Seeded), floor: f.WorkFloor, frost: f.frostWindow(), air: f.year}
	switch f.Case.Risk {
	case "warm":
		s.risk = WarmSpring
	case "cool":
		s.risk = CoolSpring
	}
	if hot := &f.Crop.SetBelow; hot.Given() {
		s.cool = hot.Low
		if f.FrostKind != weather.FrostUsual {
			s.cool = hot.High
		}
	}
	return s
}

// SeasonOf is when another crop may go into the same bed, in its usual way.
func (f *Facts) SeasonOf(crop *table.Crop) Season {
	other := *f
	other.Crop, other.Seeded = crop, crop.Start == table.Seed
	other.floors()
	other.mild(f.Season.soil)
	return other.season(f.Season.soil)
}

// MeanOn is the usual daily mean under a cover at the depth of roots or seed, no leaves over it.
func (s *Season) MeanOn(cover int, on unit.Date) unit.Celsius {
	return unit.Hundredth(float64(s.soil.Mean[cover][s.depth][weather.Index(on)]))
}

// WithFloor is the same season with another floor under the film.
func (s Season) WithFloor(floor unit.Celsius) Season {
	s.floor = floor
	return s
}

// mild finds out whether the ground alone keeps a warm crop waiting: whether frost has been
// rare for weeks before the bed holds the working floor. There growers set it out at the
// least that lists name, as peppers and tomatoes in California, at its coast and in its
// Central Valley alike ([table.CaliforniaPeppers]). Where spring comes fast the bed is warm
// by then, and nothing changes; nor where it never is: there covers are needed.
func (f *Facts) mild(soil *SoilYear) {
	f.Mild = false
	least, floor := unit.Hundredth(float64(max(coverFloor, f.MinSoilTemperature))), f.WorkFloor
	if !f.Crop.Warm || f.Crop.Hardiness < table.Tender || least >= floor {
		return
	}
	// Days of spring are counted from the coldest; before frost is past nothing opens.
	opens := func(s *Season) (days int, ok bool) {
		from := f.year.Coldest
		if s.frost.closed {
			from = s.frost.to
		}
		day, ok := s.NextOpen(int(table.Black), weather.DateOf(2000, from), UsualSpring)
		return after(f.year.Coldest, weather.Index(day)), ok
	}
	usual := f.season(soil)
	late, ok := opens(&usual)
	if !ok {
		return
	}
	f.Mild, f.WorkFloor = true, least
	sooner := f.season(soil)
	f.Mild = !sooner.frost.closed || after(f.year.Coldest, sooner.frost.to) < late
	if f.Mild {
		day, ok := opens(&sooner)
		f.Mild = ok && day < late
	}
	if !f.Mild {
		f.WorkFloor = floor
	}
}

// CoverFloor is the floor from which a warm crop may go out with covers over it.
func (f *Facts) CoverFloor() unit.Celsius {
	if f.Crop.Warm {
		return min(coverFloor, f.WorkFloor)
	}
	return f.WorkFloor
}

// frostWindow reads the crop's frost class: hardened plants of hardy and half-hardy
// crops stand from three weeks before the usual last frost, or from when frosts that
// kill them are past. Crops that sources hold back until the last frost or some weeks
// after it wait for that ([table.Crop].WeeksToFrost); their seed meets the frost only when
// it comes up.
func (f *Facts) frostWindow() frostWindow {
	w := frostWindow{}
	frost := f.frosts.of(f.year, weather.Freezing)
	last, first := f.usualFrosts()
	early, late := usualStep, usualStep
	if frost.Spring.Ten >= 0 && frost.Spring.Fifty >= 0 {
		late = after(frost.Spring.Fifty, frost.Spring.Ten)
	}
	if frost.Spring.Ninety >= 0 && frost.Spring.Fifty >= 0 {
		early = after(frost.Spring.Ninety, frost.Spring.Fifty)
	}
	tender := f.Crop.Hardiness >= table.Tender
	if frost.Kind == weather.FrostAlways && tender && last < 0 {
		w.whole = true
		return w
	}
	if last < 0 {
		return w
	}
	shift := func(day, by int) int { return (day + by + weather.YearDays) % weather.YearDays }
	w.closed, w.to, w.from = true, last, f.year.Coldest
	stands := f.stands()
	switch weeks := f.Crop.WeeksToFrost.Low; {
	case !tender && weeks < 0:
		w.to = f.sooner(shift(last, -hardenedBefore), stands)
	case f.Seeded:
		w.to = shift(last, heldBack(weeks, late)-emergence)
	default:
		w.to = shift(last, heldBack(weeks, late))
	}
	if f.Mild {
		w.to = shift(last, late+MildAfter)
	}
	if f.Crop.Group == table.Bulb && f.Overwinters() { // its cloves lie in the ground
		w.closed = false
		return w
	}
	if !tender {
		if autumn := f.frosts.of(f.year, stands).Autumn.Fifty; autumn >= 0 {
			w.from = shift(autumn, -rooting)
		}
	}
	w.soonest, w.latest = shift(w.to, -early), shift(w.to, late)
	if f.Mild { // the cool spring is in it already; in a warm one the ground decides
		w.soonest, w.latest = last, w.to
	}
	if tender && first >= 0 {
		w.from = first
	}
	return w
}

// Overwinters tells of a crop that is set in the fall and picked the next year.
func (f *Facts) Overwinters() bool { return f.Crop.DaysToHarvest.Low >= overwinters }

// overwinters is the days to harvest of such a crop.
const overwinters = 200

// heldBack is how many days after the usual last frost a crop goes out that sources hold
// back for some weeks: so long, or until frost comes in only one year of ten.
func heldBack(weeks float64, late int) int {
	return min(int(math.Round(7*max(0, weeks))), late)
}

// stands is the frost that hardened plants of a hardy or half-hardy crop stand.
func (f *Facts) stands() unit.Celsius {
	switch {
	case f.Crop.Stands.Given():
		return hardiestStands
	case f.Crop.Hardiness == table.HalfHardy:
		return halfHardyStands
	}
	return hardyStands
}

// sooner gives the sooner of two days in spring: one, and that from which half of the
// years bring no more frost of a limit.
func (f *Facts) sooner(day int, limit unit.Celsius) int {
	frost := f.frosts.of(f.year, limit)
	if frost.Spring.Fifty < 0 {
		return f.year.Coldest
	}
	if after(f.year.Coldest, frost.Spring.Fifty) < after(f.year.Coldest, day) {
		return frost.Spring.Fifty
	}
	return day
}

// usualStep stands in for the days from a usual spring to a warm or a cool one, where
// frost dates of the rare years are not known.
const usualStep = 7

// How long before the usual last frost hardened plants go out (the middle of two to four
// weeks; lists give half-hardy cauliflower the day of cabbage), and how long seed lies
// before it comes up.
const (
	hardenedBefore = 21
	emergence      = 8
	rooting        = 21 // days that hardy plants want before the frosts that kill them
)

// SeasonDays is how long the crop stands, from planting to the last picking: what the
// water plan, the season's dates and the end of the film all go by. Crops that are
// picked for weeks stand for the sum of their stages (FAO-56 table 11); others until
// three weeks after the latest published harvest day (common practice, no source), but for
// bulbs, which are lifted all at once.
// The first autumn frost ends a tender crop's season.
func (f *Facts) SeasonDays() unit.Days {
	last := unit.Days(f.Crop.DaysToHarvest.High) + pickingDays
	if f.Crop.Cured {
		last -= pickingDays
	}
	if f.Crop.Group == table.Fruiting || f.Crop.Group == table.Vine {
		stages := 0
		for _, days := range f.Crop.StageDays {
			stages += days
		}
		last = max(last, unit.Days(stages))
	}
	if f.Crop.Hardiness >= table.Tender && f.FreeDays != Never {
		last = min(last, f.FreeDays)
	}
	return max(last, shortestSeason)
}

// DryDays are those before the last picking on which the crop is no longer watered: bulbs that
// are cured ripen dry. A second crop on the film is watered to its end.
func (f *Facts) DryDays() unit.Days {
	if f.Crop.Cured && (f.Bare || f.Case.Practice.CropsOnFilm.Or(1) <= 1) {
		return CuredDry
	}
	return 0
}

// CuredDry are the days from the last water to the lifting of bulbs that are cured: garden pages
// of Texas A&M University say one to two weeks for onions.
const CuredDry unit.Days = 14

// pickingDays follow the latest published harvest day. shortestSeason is what the
// stages of a crop are never pressed into less than.
const (
	pickingDays    = 21
	shortestSeason = 30
)
