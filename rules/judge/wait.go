package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// waited turns days into a finding whose score keeps the order of the days.
func waited(days unit.Days, text string, values ...any) (Finding, bool) {
	return Finding{Fit: saturate(float64(days), waitHalf), Reason: unit.Say(text, values...)}, true
}

// Waits gives the days that each cause asks for, from the laying for the wanted day:
// what it adds to the wanted day, and the lead from laying to planting; 0 is silent.
func Waits(f *facts.Facts) (days [6]unit.Days) {
	later := func(day unit.Date, ok bool) unit.Days {
		if !ok {
			return 0
		}
		return max(0, day.Minus(f.Wanted))
	}
	days[question.WaitSettling] = facts.Settling
	if soil := later(f.Season.NextWarm(f.ChosenCover(), f.Wanted)); f.WarmingPays || soil > 0 {
		days[question.WaitWarming] = soil + f.Lead
	}
	if frost := later(f.Season.NextFree(f.Wanted)); frost > 0 {
		days[question.WaitFrost] = frost + f.Lead
	}
	cool, _, ok := f.Season.NextCool(f.Wanted)
	if heat := later(cool, ok); heat > 0 {
		days[question.WaitCooling] = heat + f.Lead
	}
	if end, ok := LabelEnds(&f.Case.Practice); ok {
		days[question.WaitLabel] = max(1, end.Minus(f.Wanted)+f.Lead)
	}
	switch f.Case.Soil.Wetness {
	case "dry":
		days[question.WaitMoisture] = unit.Days(dryWait)
	case "wet":
		days[question.WaitMoisture] = unit.Days(wetWait)
	}
	return days
}

// JudgeWait says how far the longest wait is ahead of the next, in days.
func (c *Choice) JudgeWait(f *facts.Facts) {
	days := Waits(f)
	first, second := days[c.Ranked[0].Option], days[c.Ranked[1].Option]
	c.Tied = false
	switch ahead := first - second; {
	case ahead <= 1:
		c.Confidence, c.Tied = Close, ahead == 0
	case ahead < unit.Days(clearLead):
		c.Confidence = Leaning
	default:
		c.Confidence = Clear
	}
	c.Lead = 0
	if first > 0 {
		c.Lead = unit.Thousandth(float64(first-second) / float64(first))
	}
}

func waitRule(o question.Option, id, title, because, fires string, judge func(*facts.Facts, unit.Days) (Finding, bool), sources ...*table.Source) *Rule {
	return &Rule{ID: id, Speaks: question.Wait, Title: title, Weight: Slight, Because: because, Sources: sources, Fires: fires,
		Judge: func(f *facts.Facts, asked question.Option) (Finding, bool) {
			if asked != o {
				return silent()
			}
			return judge(f, Waits(f)[o])
		}}
}

var waitRules = [...]*Rule{
	waitRule(question.WaitSettling, "wait-settling", "The bed settles and takes water", "Never less than this, whatever the soil.", "tomato-high-summer",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			return waited(days, "{} for the bed to settle on the tape and for the water test.", days)
		}, &table.Practice),
	waitRule(question.WaitWarming, "wait-warming", "The bed warms", "Roots set in cold ground stop growing.", "pepper-cool-spring",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			if days == 0 {
				return silent()
			}
			if f.Warmth.MeansOnly() { // a search, which reads no reasons
				return waited(days, "")
			}
			switch f.Opening {
			case facts.NeverOpen:
				return waited(days, "The bed does not hold {} this season even under film. Read a probe before planting, and have covers ready.", f.CoverFloor())
			case facts.OpenUnderCovers:
				return waited(days, "Under the film the bed reaches {} but does not hold {} in time: plant under covers, from {} on.", f.CoverFloor(), f.WorkFloor, f.Plant)
			}
			day, ok := f.Season.NextWarm(f.ChosenCover(), f.Wanted)
			if !ok || day <= f.Wanted {
				return waited(days, "{} for the bed to warm and settle: by {} it holds a daily mean of {} under the film.", f.Lead, f.Plant, f.WorkFloor)
			}
			soonest, early := f.Season.NextOpen(f.ChosenCover(), f.Wanted, facts.WarmSpring)
			latest, late := f.Season.NextOpen(f.ChosenCover(), f.Wanted, facts.CoolSpring)
			switch {
			case early && late:
				return waited(days, "The bed holds a daily mean of {} under the film from {} on. A warm spring or a warm spell may let you plant as early as {}; a cool spring puts it off to {}.", f.WorkFloor, day, soonest, latest)
			case early:
				return waited(days, "The bed holds a daily mean of {} under the film from {} on. A warm spring or a warm spell may let you plant as early as {}; in a cool spring it may never get that warm: read a probe.", f.WorkFloor, day, soonest)
			}
			return waited(days, "The bed holds a daily mean of {} under the film from {} on.", f.WorkFloor, day)
		}, &table.Practice, &table.MinnesotaWait, &table.GeorgiaFloors, &table.KansasFloors, &table.DelawareEarly),
	waitRule(question.WaitFrost, "wait-frost", "Frost", "Film does not protect leaves.", "tomato-frost-pocket",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			if days == 0 {
				return silent()
			}
			free, _ := f.Season.NextFree(f.Wanted)
			switch past := free.Minus(f.SpringFrost); {
			case f.Mild:
				return waited(days, "Cold nights: planting waits until {}, {} after frost has become rare, one spring in ten. From then on {} in the bed is enough here.", free, unit.Days(facts.MildAfter), f.WorkFloor)
			case f.Crop.Hardiness >= table.Tender && past > 0 && !f.Seeded:
				return waited(days, "Frost: planting waits until {}, {} after the usual last frost: a {} crop stands none. {} it still freezes after {}.", free, past, f.Crop.Hardiness.String(), yearsOf(f.WantedRisk), unit.YearDay(f.Wanted))
			case f.Crop.Hardiness >= table.Tender:
				return waited(days, "Frost: planting waits until {}, the usual last frost. {} it still freezes after {}.", free, yearsOf(f.WantedRisk), unit.YearDay(f.Wanted))
			}
			return waited(days, "Frost: hardened plants of a {} crop can go out from {} on, about three weeks before the usual last frost.", f.Crop.Hardiness.String(), free)
		}, &table.Colorado720, &table.CaliforniaPeppers, &table.CaliforniaTomatoes, &table.Normals),
	waitRule(question.WaitCooling, "wait-cooling", "The air cools", "Strawberries set into heat make runners instead of crowns; garlic sprouts tall before winter.", "berries-in-august",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			if days == 0 {
				return silent()
			}
			cool, mean, _ := f.Season.NextCool(f.Wanted)
			if f.Crop.Group == table.Bulb {
				return waited(days, "Heat: from {} on the air usually averages {} or less. Set sooner, {} sprouts tall before winter.", cool, mean, f.Crop.Name)
			}
			return waited(days, "Heat: from {} on the air usually averages {} or less. Set into more, {} make runners instead of crowns.", cool, mean, f.Crop.Name)
		}, &table.StrawberryAir, &table.StrawberryDates, &table.GarlicPlanting),
	waitRule(question.WaitLabel, "wait-label", "The label's interval", "The label is law.", "tomato-fumigated",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			p := &f.Case.Practice
			switch {
			case !p.FumigatedOn.Given:
				return silent()
			case !p.LabelInterval.Given:
				return waited(days, "The ground was treated on {}. The label names the days until planting: type them. Until then we pencil in {}, since published pages name two to three weeks.", p.FumigatedOn.Value, unit.Days(labelDays))
			}
			return waited(days, "Planting waits until {}: the label's {} days from {}. Longer where the soil is cold or wet.", p.FumigatedOn.Value.Plus(unit.Days(p.LabelInterval.Value)), int(p.LabelInterval.Value), p.FumigatedOn.Value)
		}, &table.FumigantManual, &table.FumigantShort, &table.BarrierFilm2013),
	waitRule(question.WaitMoisture, "wait-moisture", "Moisture in the bed", "Film keeps the bed as it was when it was covered.", "cabbage-wet-clay",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			switch f.Case.Soil.Wetness {
			case "dry":
				return waited(days, "{} to water dry ground through before you cover it.", days)
			case "wet":
				return waited(days, "{} for wet ground to drain until a squeezed ball breaks.", days)
			}
			return silent()
		}, &table.DryBeds, &table.Guide205),
}
