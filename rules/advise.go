package rules

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
)

// Advise answers every question for one case. It is total on cases that pass
// [field.Check]; otherwise the error is a [field.Errors] with all that is
// wrong.
//
// The questions are answered in the order of [question.Question], and each answer
// becomes a fact of the later ones: film, bed, surface, thickness, tape, wait.
//
// The soil's warmth takes most of the time: a caller that asks more than once
// of the same place, soil and bed keeps the [facts.SoilYear] and calls [AdviseOn].
func Advise(c field.Case) (plan.Advice, error) { return plan.Make(nil, nil, c) }

// AdviseOn is [Advise] with a soil year that was worked out before. One of another
// place or soil (or nil) is worked out anew, so the advice is always the same.
func AdviseOn(soil *facts.SoilYear, c field.Case) (plan.Advice, error) {
	return plan.Make(nil, soil, c)
}

// AdviseAfter is [AdviseOn] for one who changes one thing at a time: what cannot
// differ from the advice before is taken over, and the lines of tape that were solved
// stay known. The advice is the same. There need be none before.
func AdviseAfter(before *plan.Advice, soil *facts.SoilYear, c field.Case) (plan.Advice, error) {
	if before == nil {
		before = &plan.Advice{}
	}
	return plan.Make(before, soil, c)
}
