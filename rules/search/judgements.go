package search

import (
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// Judgements lists what the searches rest on: how far they look, and how much it
// matters that an answer is open.
func Judgements() []unit.Judgement {
	list := []unit.Judgement{
		{ID: "search-farthest-day", Means: "that a day is moved in search of a turn, at most", Value: farthestDay, Unit: "days"},
		{ID: "search-other-frost", Means: "that a list from nearby may lie off the usual frost of the station", Value: otherFrost, Unit: "days"},
		{ID: "search-few", Means: "steps of a number up to which each is tried", Value: few},
		{ID: "search-strides", Means: "strides of a number where each needs a ground of its own", Value: mostStrides},
		{ID: "search-narrow", Means: "lead within which another answer may come up inside a stride", Value: narrow, Unit: "points"},
		{ID: "search-nearly-all", Means: "tenths of the weeks beyond which an answer fills the year", Value: nearlyAll},
		{ID: "search-rare-years", Means: "of ten years that are as cool, and as many as warm, as the year tried", Value: rareYears, Unit: "years"},
	}
	for q, weight := range weights {
		list = append(list, unit.Judgement{ID: "open-" + question.Question(q).String(), Means: "how much it matters that this answer is open", Value: float64(weight)})
	}
	return list
}
