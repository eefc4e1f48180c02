package profile

import "filmfurrow/rules/unit"

// Judgements lists the figures that a bed's section rests on and that no table gives
// outright.
func Judgements() []unit.Judgement {
	return []unit.Judgement{
		{ID: "bed-least-tuck", Means: "of film to bury on each side, at least: published pages give 4 to 6 in", Value: float64(LeastTuck), Unit: "m", Source: unit.CommonPractice},
		{ID: "bed-end-allowance", Means: "of film and tape at each end, to bury, cut and join", Value: float64(EndAllowance), Unit: "m", Source: "a farm's published rows"},
		{ID: "bed-side-slope", Means: "by which a bed's side leans out, for each measure of height", Value: UsualSideSlope, Source: unit.CommonPractice},
		{ID: "bed-nominal", Means: "that a roll may fall short of what the bed needs", Value: float64(nominal), Unit: "m"},
		{ID: "bed-crown", Means: "rise of a bed's middle, for each measure of its top", Value: crownRise, Source: unit.FromMemory},
	}
}
