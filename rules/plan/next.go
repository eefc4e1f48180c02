package plan

import (
	"filmfurrow/rules/judge"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Next is what the season asks for from a day on.
type Next struct {
	Step SeasonStep
	In   unit.Days // days until it; 0 is the day itself, or a step that is under way
}

// NextStep is the first dated step that lies on a day, after it, or is under way on
// it. It is false where the year is over. The weekly checks are left out: they come
// with the water. On a day long before the first step that step is next all the same.
func NextStep(steps []SeasonStep, today unit.Date) (Next, bool) {
	for _, s := range steps {
		if s.Weeks > 1 || s.On.Plus(max(s.Days, 1)-1) < today {
			continue
		}
		if s.ID == "wait" || s.ID == "harvest" && s.On < today {
			continue
		}
		return Next{Step: s, In: max(0, s.On.Minus(today))}, true
	}
	return Next{}, false
}

// nowFrom is how long before laying the season begins to be counted down.
const nowFrom = 60

// Now is what the season asks first of all on a day, from two months before laying to
// lifting, and the id of its step: lay, plant, water or lift. The id is empty on other
// days, and where no film is to be laid.
func (a *Advice) Now(p *WaterPlan, s *Shopping, today unit.Date) (says unit.Phrase, step string) {
	w := &a.WaitPlan
	last := a.LastWater(s)
	lift := a.filmEnds().Plus(dryDays)
	if a.Refused() || today < w.LayOn.Plus(-nowFrom) || today > lift.Plus(1) {
		return says, ""
	}
	verb, step, on := "Lay", "lay", w.LayOn
	if today > on || a.FilmDown() {
		verb, step, on = "Plant", "plant", w.PlantOn
	}
	switch {
	case today < on:
		return unit.Say(verb+" in {}", on.Minus(today)), step
	case today == on:
		return unit.Say(verb + " today"), step
	case today >= last && judge.FilmRow(a.Facts).Removal != table.LiftAndHaul:
		return unit.Say("Till the film in from {} on", unit.YearDay(lift)), "lift"
	case today >= last:
		return unit.Say("Lift from {} on", unit.YearDay(lift)), "lift"
	}
	k, ok := a.ThisWeek(p, s, today)
	switch {
	case !ok || len(k.Days) == 0:
		return says, ""
	case k.Days[0].Run == 0:
		return unit.Say("Nothing to run today"), "water"
	}
	return unit.Say("Water {} today", k.Days[0].Run), "water"
}

// GrownOn is how far the crop has come from planting to full leaf on a day, 0 to 1, by
// its stages in FAO 56, table 11.
func (a *Advice) GrownOn(day unit.Date) float64 {
	stages := &a.Facts.Crop.StageDays
	whole := 0
	for _, days := range stages {
		whole += days
	}
	if whole == 0 {
		return 0
	}
	leaf := float64(a.Facts.SeasonDays()) * float64(stages[0]+stages[1]) / float64(whole)
	return min(1, max(0, float64(day.Minus(a.WaitPlan.PlantOn))/max(1, leaf)))
}
