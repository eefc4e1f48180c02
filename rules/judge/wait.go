package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// fortnight is how long a bed that never warms may be waited for.
const fortnight = 14

// waited turns days into a finding whose score keeps the order of the days.
func waited(days unit.Days, text string, values ...any) (Finding, bool) {
	return Finding{Fit: saturate(float64(days), 60), Reason: unit.Say(text, values...)}, true
}

// Waits gives the days from laying that each cause asks for; 0 is silent.
func Waits(f *facts.Facts) (days [5]unit.Days) {
	days[question.WaitSettling] = facts.Settling
	if f.WarmingPays {
		days[question.WaitWarming] = facts.WarmUp
		days[question.WaitWarming] = max(facts.WarmUp, workingDay(f)+f.Lead)
	}
	if f.FrostSafe > 0 {
		days[question.WaitFrost] = f.FrostSafe + f.Lead
	}
	p := &f.Case.Practice
	if p.FumigatedOn.Given && p.LabelInterval.Given {
		end := p.FumigatedOn.Value.Plus(unit.Days(p.LabelInterval.Value))
		days[question.WaitLabel] = max(0, end.Minus(f.Plant)+f.Lead)
	}
	switch f.Case.Soil.Wetness {
	case "dry":
		days[question.WaitMoisture] = 2
	case "wet":
		days[question.WaitMoisture] = 5
	}
	return days
}

// workingDay is when the bed under the chosen film holds the working floor,
// counted from the wanted planting day. Where it never does, waiting does not
// help: at most a fortnight, and the page says to read a probe.
func workingDay(f *facts.Facts) unit.Days {
	film := f.ChosenCover()
	if f.ReachWork[film] != facts.Never {
		return f.ReachWork[film]
	}
	return min(f.ReachEarly[film], fortnight-f.Lead)
}

// JudgeWait says how far the longest wait is ahead of the next, in days.
func (c *Choice) JudgeWait(f *facts.Facts) {
	days := Waits(f)
	first, second := days[c.Ranked[0].Option], days[c.Ranked[1].Option]
	c.Tied = false
	switch ahead := first - second; {
	case ahead <= 1:
		c.Confidence, c.Tied = Close, ahead == 0
	case ahead < 7:
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
			return waited(days, "{} for the bed to settle on the tape and the water test to be done.", days)
		}, &table.Practice),
	waitRule(question.WaitWarming, "wait-warming", "The bed warms", "Roots set in cold ground stand still.", "pepper-cool-spring",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			if days == 0 {
				return silent()
			}
			if f.Warmth.MeansOnly() { // a search, which reads no reasons
				return waited(days, "")
			}
			if f.ReachWork[f.ChosenCover()] == facts.Never {
				return waited(days, "{} to warm. The bed does not hold {} this season even under film, so read a probe before planting and have covers ready.", days, f.WorkFloor)
			}
			soonest, latest := f.Warmth.Reach(f.ChosenCover(), f.WorkFloor, facts.Between, +1), f.Warmth.Reach(f.ChosenCover(), f.WorkFloor, facts.Between, -1)
			if latest == facts.Never {
				return waited(days, "{}: at least 7 to 10 days to warm and settle, and three mornings at {} under the film (lists run from {} to {}). A warm spring brings those mornings by {}; a cool one may never do so: read a probe.", days, f.WorkFloor, f.EarlyFloor, f.SafeFloor, f.Plant.Plus(soonest))
			}
			return waited(days, "{}: at least 7 to 10 days to warm and settle, and three mornings at {} under the film (lists run from {} to {}). Those mornings come between {} and {}, in a warm or a cool spring.", days, f.WorkFloor, f.EarlyFloor, f.SafeFloor, f.Plant.Plus(soonest), f.Plant.Plus(latest))
		}, &table.Practice, &table.MinnesotaWait, &table.GeorgiaFloors, &table.KansasFloors),
	waitRule(question.WaitFrost, "wait-frost", "Frost", "Film does not protect leaves.", "tomato-frost-pocket",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			if days == 0 {
				return silent()
			}
			if f.Crop.Hardiness >= table.Tender {
				return waited(days, "{}: until the date after which frost comes in one year in ten. After your day it still freezes in {} of years.", days, unit.PercentOf(f.FrostRisk))
			}
			return waited(days, "{}: until the usual last frost that harms {} plants.", days, f.Crop.Hardiness.String())
		}, &table.Colorado720, &table.Normals),
	waitRule(question.WaitLabel, "wait-label", "The label's interval", "The label is law.", "tomato-fumigated",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			p := &f.Case.Practice
			switch {
			case !p.FumigatedOn.Given:
				return silent()
			case !p.LabelInterval.Given:
				return waited(0, "The ground was treated on {}. Type the days that the label names; we do not supply them.", p.FumigatedOn.Value)
			}
			return waited(days, "{}: the label's {} days from {}. Longer where the soil is cold or wet.", days, int(p.LabelInterval.Value), p.FumigatedOn.Value)
		}, &table.FumigantManual, &table.FumigantShort, &table.BarrierFilm2013),
	waitRule(question.WaitMoisture, "wait-moisture", "Moisture in the bed", "Film keeps the bed as it was when it was covered.", "cabbage-wet-clay",
		func(f *facts.Facts, days unit.Days) (Finding, bool) {
			switch f.Case.Soil.Wetness {
			case "dry":
				return waited(days, "{} to water dry ground through before it is covered.", days)
			case "wet":
				return waited(days, "{} for wet ground to drain until a squeezed ball breaks.", days)
			}
			return silent()
		}, &table.DryBeds, &table.Guide205),
}
