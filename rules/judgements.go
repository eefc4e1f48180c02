package rules

import (
	"slices"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/search"
	"filmfurrow/rules/trial"
	"filmfurrow/rules/unit"
)

// Judgements lists every figure that the engine decides with and that no table gives
// outright, room by room: the models' first, then those of facts, rules, plans and
// searches. "explain judgements" prints them.
func Judgements() []unit.Judgement {
	return slices.Concat(weather.Judgements(), heat.Judgements(), profile.Judgements(), water.Judgements(),
		facts.Judgements(), judge.Judgements(), plan.Judgements(), search.Judgements(), trial.Judgements())
}
