package rules

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// Whoever waits two weeks for the answer is in the season; so is asked again and again, four
// months back at the most.
const soonestStep, soonestSteps = 14, 9

// Sooner helps a room to ask: when may this field be planted at the earliest, in the season
// that its own planting day lies in? After an advice, and so many before it, it says for which
// day to ask next; that is over when the day is moved.
func Sooner(a *plan.Advice, before int) (ask unit.Date, more bool) {
	return a.WaitPlan.PlantOn.Plus(-soonestStep), before < soonestSteps && a.WaitPlan.Moved <= 0 && inSeason(a)
}

func inSeason(a *plan.Advice) bool { return !a.Refused() && a.Facts.Opening != facts.NeverOpen }

// Soonest tells whether the advice that was asked for last is of the soonest day, and what the
// day would be on bare ground: [unit.DateHigh] where none of the year will do. There is no
// soonest day where film is refused, where none will do under film, and where nothing keeps
// the crop back.
func Soonest(a *plan.Advice) (bare unit.Date, ok bool) {
	bare, opens := a.Facts.Season.NextOpen(facts.Bare, a.Facts.Wanted, facts.UsualSpring)
	if !opens {
		bare = unit.DateHigh
	}
	return bare, a.WaitPlan.Moved > 0 && inSeason(a)
}
