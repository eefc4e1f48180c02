package judge

import (
	"slices"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Settle works the facts out for the planting day: the first from the wanted one on
// that frost and label leave free and on which the bed is warm enough under the film
// that is best on that very day. So the day is a fixed point: whoever asks for it is
// moved nowhere, and whoever asks for an earlier one is moved to it.
//
// Where the bed never holds the working floor, the floor for planting under covers
// decides; where it does not even hold that, the facts are those of the wanted day and
// Facts.Opening says so.
func Settle(f *facts.Facts, c field.Case, soil *facts.SoilYear, before *facts.Facts) error {
	if err := SettleDry(f, c, soil, before); err != nil {
		return err
	}
	f.Irrigate()
	return nil
}

// SettleDry leaves the water out, for a search that asks for the film alone.
func SettleDry(f *facts.Facts, c field.Case, soil *facts.SoilYear, before *facts.Facts) error {
	from := c.PlantOn.Value
	if end, ok := LabelEnds(&c.Practice); ok {
		from = max(from, end)
	}
	if err := f.Dry(c, from, soil, before); err != nil {
		return err
	}
	if f.Season.Open(cover(f), from) {
		return nil
	}
	for _, opening := range [...]facts.Opening{facts.OpenWarm, facts.OpenUnderCovers} {
		season := f.Season
		if opening == facts.OpenUnderCovers {
			season = season.WithFloor(f.CoverFloor())
		}
		for _, day := range candidates(&season, from) {
			if err := f.Dry(c, day, soil, before); err != nil {
				return err
			}
			if season.Open(cover(f), day) {
				f.Opening = opening
				return nil
			}
		}
		if !f.Crop.Warm {
			break
		}
	}
	err := f.Dry(c, from, soil, before)
	f.Opening = facts.NeverOpen
	return err
}

// cover is the place of the film that is best in the facts: bare ground where none
// may be laid.
func cover(f *facts.Facts) int {
	if film, _, _ := Best(f, question.Film); film != question.NoOption {
		return int(film)
	}
	return facts.Bare
}

// candidates are the days on which the season opens under one film or another, the
// soonest first.
func candidates(season *facts.Season, from unit.Date) (days []unit.Date) {
	for cover := range table.FilmCount + 1 {
		if day, ok := season.NextOpen(cover, from, facts.UsualSpring); ok {
			days = append(days, day)
		}
	}
	slices.Sort(days)
	return slices.Compact(days)
}

// LabelEnds is the first day after a treatment on which the label lets a crop in. While
// the interval is not known, [labelDays] stands in, so that a day can be penciled in; the
// label overrules it, and the page says so.
func LabelEnds(p *field.PracticeCase) (unit.Date, bool) {
	if !p.FumigatedOn.Given {
		return 0, false
	}
	return p.FumigatedOn.Value.Plus(unit.Days(p.LabelInterval.Or(labelDays))), true
}
