package trial

import (
	"math"
	"strconv"

	"filmfurrow/rules/unit"
)

// GoodVariation is the goal of trial guides for plots within a block (Ohio State SC166-99).
const GoodVariation = 0.12

// Says tells in sentences what was learned and what was not; names are those of the ways.
func (a *Analysis) Says(names []string) (says []unit.Phrase) {
	say := func(text string, values ...any) { says = append(says, unit.Say(text, values...)) }
	percent := func(share float64) unit.Percent { return unit.Percent(math.Round(100 * share)) }
	switch a.Verdict() {
	case Shown:
		say("A difference was shown. Were all alike, chance would give one as large in {} of 1,000 trials.", perThousand(a.Chance))
		for _, p := range a.Pairs {
			first, second := p.A, p.B
			if p.Difference < 0 {
				first, second = second, first
				p.Difference, p.Low, p.High = -p.Difference, -p.High, -p.Low
			}
			if p.Chance >= Sure {
				say("Between {} and {} no difference was shown.", names[first], names[second])
				continue
			}
			of := math.Abs(a.Means[first])
			say("{} gave {} more than {}: in 19 trials of 20 like this one the true figure lies between {} and {}.", unit.Capital(names[second]), percent(p.Difference/of), names[first], percent(p.Low/of), percent(p.High/of))
		}
	case Unsure:
		say("Too near to call: the table gives a chance of {} in 1,000, a permutation of the blocks {}; at 50 the line is drawn. Do it again next year.", perThousand(a.Chance), perThousand(a.Permutation))
	default:
		say("No difference was shown: were all alike, chance would give one as large in {} of 1,000 trials.", perThousand(a.Chance))
	}
	if least, ok := CanShow(a.Blocks, a.Ways, a.Variation); ok && a.Verdict() != Shown {
		say("That does not mean that there is none. With {} and plots like these a true difference of {} shows four times in five; a smaller one is easily missed.", unit.Count(a.Blocks, "block", "blocks"), percent(least))
	}
	if a.Finest >= Sure {
		say("These blocks are too few for a permutation to say anything: the table rests on plots that differ as a bell curve does. Six blocks of two ways, or four of more, would tell by themselves.")
	}
	if a.Variation > GoodVariation {
		say("Plots of one block differed by {}; good trials stay within {}. More blocks, longer plots or more care in picking help.", percent(a.Variation), percent(GoodVariation))
	}
	if a.ChanceBlock < Sure {
		say("Blocks differed more than by chance: to compare within them was worth it.")
	}
	say("It holds for this field, this crop and this year.")
	return says
}

func perThousand(chance float64) string {
	if n := math.Round(1000 * chance); n >= 1 {
		return strconv.Itoa(int(n))
	}
	return "less than 1"
}
