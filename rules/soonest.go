package rules

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// Soonest is asked by a room: when may this field be planted at the earliest, in the season
// that its own planting day lies in?
type Soonest struct {
	plan.Advice                          // of whoever asks somewhat before that day
	Bare        unit.Optional[unit.Date] // the day on bare ground, from when was asked
}

// Whoever waits two weeks for the answer is in the season; so is asked again and again, four
// months back at the most.
const soonestStep, soonestSteps = 14, 9

// SoonestOf asks sooner and sooner, until the day is moved. It is false where film is
// refused, where no day of the year will do, and where nothing keeps the crop back. Before
// and soil are as with [AdviseAfter].
func SoonestOf(before *plan.Advice, soil *facts.SoilYear, c field.Case) (s Soonest, ok bool) {
	for range soonestSteps {
		a, err := AdviseAfter(before, soil, c)
		if err != nil || a.Refused() || a.Facts.Opening == facts.NeverOpen {
			return s, false
		}
		if a.WaitPlan.Moved > 0 {
			s.Advice = a
			if bare, open := a.Facts.Season.NextOpen(facts.Bare, c.PlantOn.Value, facts.UsualSpring); open {
				s.Bare = unit.Known(bare)
			}
			return s, true
		}
		before = &a
		c.PlantOn = unit.Known(a.WaitPlan.PlantOn.Plus(-soonestStep))
	}
	return s, false
}
