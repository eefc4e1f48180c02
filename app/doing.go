package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/unit"
)

// worked keeps what the doing sections share, until the advice changes.
type worked struct {
	of   *rules.Advice
	plan rules.WaterPlan
	list rules.Shopping
	cost rules.Cost
}

// workOut makes the plan, the list and the costs once for an advice.
func (s *store) workOut() *worked {
	if s.worked.of != s.advice {
		plan := s.advice.WaterPlan()
		list := s.advice.Shopping(&plan)
		s.worked = worked{s.advice, plan, list, s.advice.CostOf(&list)}
	}
	return &s.worked
}

// shopping gives the list and its costs.
func (s *store) shopping() (rules.Shopping, rules.Cost) {
	w := s.workOut()
	return w.list, w.cost
}

// calendar writes the season; the stamp is the laying day, so that the same
// field gives the same file.
func (s *store) calendar() string {
	name := "Film & Furrow: " + s.advice.Facts.Crop.Name
	stamp := s.advice.WaitPlan.LayOn
	if app.IsClient {
		now := app.Window().Get("Date").New()
		stamp = unit.On(now.Call("getFullYear").Int(), now.Call("getMonth").Int()+1, now.Call("getDate").Int())
	}
	return string(casefile.Calendar(s.advice.Season(&s.workOut().list), name, stamp, s.system))
}
