package trial

import "filmfurrow/rules/unit"

// Judgements lists the figures that a trial is planned and read with.
func Judgements() []unit.Judgement {
	return []unit.Judgement{
		{ID: "trial-chance", Means: "chance of a wrong yes that a trial is read with", Value: Sure, Source: unit.CommonPractice},
		{ID: "trial-power", Means: "chance to show a difference from which a trial counts as able to", Value: WantedPower, Source: unit.CommonPractice},
		{ID: "trial-good-variation", Means: "by which plots of a block may differ in a good trial", Value: GoodVariation, Source: "Ohio State University SC166-99"},
		{ID: "trial-good-blocks", Means: "blocks that a trial should have, at least: guides ask for four to six", Value: goodBlocks, Source: "Mississippi State University P3930"},
		{ID: "trial-good-pairs", Means: "blocks of two ways that a trial should have, at least", Value: goodPairs, Source: "Practical Farmers of Iowa"},
		{ID: "trial-least-blocks", Means: "blocks without which there is no trial", Value: leastBlocks, Source: "Michigan State University: one strip each is a demonstration"},
		{ID: "trial-most-blocks", Means: "blocks that are tallied, at most", Value: mostBlocks},
		{ID: "trial-guards", Means: "beds at the edges that are not tallied", Value: guards, Source: unit.CommonPractice},
		{ID: "trial-least-plot", Means: "of bed that is tallied in a plot, at least", Value: leastPlot, Unit: "m"},
		{ID: "trial-end-guard", Means: "of bed at each end of a plot that is not tallied", Value: endGuard, Unit: "m", Source: unit.CommonPractice},
		{ID: "trial-most-reaches", Means: "parts that a bed is cut into, at most", Value: mostReaches},
		{ID: "trial-most-deals", Means: "ways of dealing that are all tried by a permutation", Value: mostDeals},
		{ID: "trial-sampled", Means: "ways of dealing that are tried where there are more", Value: sampled},
	}
}
