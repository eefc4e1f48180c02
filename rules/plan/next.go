package plan

import "filmfurrow/rules/unit"

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
