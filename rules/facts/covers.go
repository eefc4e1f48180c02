package facts

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// SeasonUnder is the season of a crop that goes out under covers: its nights are
// warmer by what the cover gains, and a warm crop's bed needs no more than
// [Facts.CoverFloor]. The film warms the bed as without covers: by how much a cover
// adds to that was not found.
func (f *Facts) SeasonUnder(gain unit.CelsiusDegrees) Season {
	year := *f.year
	for d := range year.Minimum {
		year.Minimum[d] = year.Minimum[d].Plus(gain)
	}
	under := Facts{Case: f.Case, Crop: f.Crop, Seeded: f.Seeded, year: &year, frosts: &frostYear{miss: f.frosts.miss}}
	if day, ok := dayIndex(f.Case.Place.LastFrost); ok {
		under.Case.Place.LastFrost = unit.Known(monthDay(f.asCold(day, -1, gain)))
	}
	if day, ok := dayIndex(f.Case.Place.FirstFrost); ok {
		under.Case.Place.FirstFrost = unit.Known(monthDay(f.asCold(day, +1, gain)))
	}
	s := f.Season
	s.frost, s.floor = under.frostWindow(), f.CoverFloor()
	return s
}

// asCold moves a frost date of the grower's own to the day on which the usual night is
// colder by the gain: back in spring, on in autumn, no farther than the coldest day.
func (f *Facts) asCold(day, step int, gain unit.CelsiusDegrees) int {
	limit := f.year.Minimum[day].Plus(-gain)
	for f.year.Minimum[day] > limit && day != f.year.Coldest {
		day = (day + step + weather.YearDays) % weather.YearDays
	}
	return day
}

func monthDay(index int) field.MonthDay {
	_, month, day := weather.DateOf(2001, index).Civil()
	return field.MonthDay(month*100 + day)
}
