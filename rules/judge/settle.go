package judge

import (
	"slices"
	"sort"

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
// Where the bed does not hold the working floor in the season in which it holds that for
// planting under covers, the latter decides. Where it never holds either, the facts are
// those of the wanted day, and Facts.Opening says so.
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
	warm := f.Season
	late, opens, err := firstOpen(f, c, &warm, from, soil, before)
	if err != nil {
		return err
	}
	if opens && (late.Minus(from) <= outOfSeason || !f.Crop.Warm) {
		f.Opening = facts.OpenWarm
		return nil
	}
	if f.Crop.Warm {
		covered := warm.WithFloor(f.CoverFloor())
		soon, underCovers, err := firstOpen(f, c, &covered, from, soil, before)
		if err != nil {
			return err
		}
		// Counted from the day under covers, so that whoever asks for that day gets it.
		if underCovers && (!opens || late.Minus(soon) > outOfSeason) {
			f.Opening = facts.OpenUnderCovers
			return nil
		}
	}
	opening := facts.NeverOpen
	if opens {
		opening, from = facts.OpenWarm, late
	}
	err = f.Dry(c, from, soil, before)
	f.Opening = opening
	return err
}

// firstOpen is the first day from a day on that a season is open on, under the film that
// is best on that day, and leaves the facts at it.
func firstOpen(f *facts.Facts, c field.Case, season *facts.Season, from unit.Date, soil *facts.SoilYear, before *facts.Facts) (unit.Date, bool, error) {
	for _, day := range candidates(season, from) {
		if err := f.Dry(c, day, soil, before); err != nil {
			return 0, false, err
		}
		if season.Open(cover(f), day) {
			return day, true, nil
		}
	}
	return 0, false, nil
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
	sort.Slice(days, func(a, b int) bool { return days[a] < days[b] })
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
