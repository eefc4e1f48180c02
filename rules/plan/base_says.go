// The page shows none of these sentences, so its program is built without them.

//go:build !page

package plan

import (
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/unit"
)

// say tells it all in sentences, the numbers first.
func (b *BaseFertiliser) say(a *Advice) {
	say := (*sayings)(&b.Says).say
	for i := range b.Nutrients {
		n, name := &b.Nutrients[i], unit.Capital(NutrientNames[i])
		switch {
		case n.Total == 0:
			say(name + ": none. The soil holds enough.")
		case b.Down:
			say(name+": {} for the season, all of it through the tape.", n.Total)
		case b.Bare && n.Tape == 0:
			say(name+": {} for the season, all of it before planting.", n.Total)
		case b.Bare:
			say(name+": {} for the season: {} before planting, {} later, beside the rows.", n.Total, n.Under, n.Tape)
		case n.Water > 0:
			say(name+": {} for the season: {} under the film, {} comes with the water, {} through the tape.", n.Total, some(n.Under), n.Water, some(n.Tape))
		case n.Tape == 0:
			say(name+": {} for the season, all of it under the film.", n.Total)
		default:
			say(name+": {} for the season: {} under the film, {} through the tape.", n.Total, some(n.Under), n.Tape)
		}
	}
	b.sayBasis(a, say)
	if b.Down {
		say("The film is down already: nothing can go under it now. Phosphorus through the tape clogs it with hard water: test a jar first.")
	} else {
		b.sayPlace(a, say)
		b.sayProduct(say)
	}
	n := &b.Nutrients[Nitrogen]
	if n.Tape > 0 && !b.Bare {
		text := "Through the tape: {} of nitrogen a week for {}, from {} on."
		if n.Under > 0 {
			text += " What goes under the film is subtracted already."
		}
		say(text, b.AWeek, unit.Count(b.Weeks, "week", "weeks"), b.From)
		if b.Late > 0 {
			say("That is the most that guides give in a week. The season is too short for the other {}: leave it out.", b.Late)
		}
	}
	if b.ByOwn > 0 && !b.Bare {
		say("Your own feed brings {} in that time, of the nutrient that you named; {} of nitrogen is left to the tape.", b.ByOwn, some(n.Tape))
	}
	if n.Tape > 0 && !b.Bare && !b.Down {
		say("If you do not feed through the tape, put all of the nitrogen under the film and cut it by a tenth or more: {} in place of {}.",
			unit.Between(rate(n.Total*(1-noTapeHigh)), rate(n.Total*(1-noTapeLow))), n.Total)
	}
	if organic := a.Case.Soil.Organic.Value; organic > richSoil && b.Nutrients[Nitrogen].Basis != ByReport {
		say("Your soil holds {} of organic matter. Above {} it may give most of the nitrogen that is left to the tape: watch the leaves, or have them tested.", unit.FineShare(organic), unit.Percent(richSoil))
	}
	if b.Nutrients[Nitrogen].Basis != ByReport {
		say("Clover, manure and compost feed the crop too: subtract what they bring.")
	}
	if a.Case.Practice.Organic.Value {
		say("You are certified: ask the certifier which products may be used. The sums are the same.")
	}
	b.sayLime(a, say)
}

func (b *BaseFertiliser) sayBasis(a *Advice, say func(string, ...any)) {
	tested, untested := [NutrientCount]bool{}, [NutrientCount]bool{}
	for i := range b.Nutrients {
		tested[i], untested[i] = b.Nutrients[i].Basis == ByReport, b.Nutrients[i].Basis == Untested
	}
	switch p, k := &b.Nutrients[Phosphate], &b.Nutrients[Potash]; {
	case tested == [NutrientCount]bool{true, true, true}:
		say("All three by your soil test’s report.")
		return
	case untested[Phosphate] && untested[Potash]:
		say("No soil test was given, so a medium one stands in. By soil test the table runs from {} to {} of phosphate and from {} to {} of potash. Test it before you buy.", some(p.Low), p.High, some(k.Low), k.High)
	case untested[Phosphate]:
		say("Phosphorus was not tested, so a medium soil stands in: the table runs from {} to {}.", some(p.Low), p.High)
	case untested[Potash]:
		say("Potassium was not tested, so a medium soil stands in: the table runs from {} to {}.", some(k.Low), k.High)
	default:
		say("By a public table for the classes of your soil test. Where your report names rates, enter them: they overrule any table.")
	}
	if b.For != "" {
		say("We found no table for {}. The one for {} stands in.", a.Facts.Crop.Name, b.For)
	}
}

func (b *BaseFertiliser) sayPlace(a *Advice, say func(string, ...any)) {
	if b.Bed > 0 {
		under := [NutrientCount]any{}
		for i := range b.Nutrients {
			under[i] = weighed(b.Nutrients[i].UnderMass)
		}
		say("For {} of bed that is nitrogen {}, phosphate {}, potash {}.", b.Bed, under[Nitrogen], under[Phosphate], under[Potash])
	}
	switch {
	case b.Bare:
		say("Spread it over the field and work it in shallow.")
	case b.OverField:
		say("Spread over the whole field, only about {} of it ends up under the film. The rest feeds weeds in the alleys: it does more on the bed strips.", unit.PercentOf(float64(a.Shape.Base/a.Facts.Centres)))
	default:
		say("Spread it on the bed strips alone, {} wide, and mix it in before the beds are formed. The rates are meant for beds {} apart, and each length of bed gets the same.", unit.Short(b.Width), b.Centres)
	}
}

func (b *BaseFertiliser) sayProduct(say func(string, ...any)) {
	switch {
	case !b.Told():
		say("Enter the grade of your product to see how much of it to spread.")
	case b.Bed == 0:
		say("Enter the length and number of beds to see how much product to buy.")
	case b.Product == 0:
		say("Your {} holds {}, and none of that is wanted here: take a product without it.", b.GradeWords(), NutrientNames[b.Ends])
	default:
		say("Of your {}: {}, that is {}, or {}. More would be too much {}.", b.GradeWords(), weighed(b.Product), b.Per100, b.Strip, NutrientNames[b.Ends])
		for i := range b.Nutrients {
			if rest := b.Nutrients[i].Rest; rest >= 0.05 {
				say("Still needed from another bag: {} of "+NutrientNames[i]+".", weighed(rest))
			}
		}
	}
}

func (b *BaseFertiliser) sayLime(a *Advice, say func(string, ...any)) {
	soil := &a.Case.Soil
	switch {
	case b.Lime > 0:
		say("Lime: {} for the field of these beds, worked in months before planting.", b.Lime)
	case soil.Lime.Given && soil.Lime.Value > 0:
		say("Lime: {}, worked in months before planting.", soil.Lime.Value)
	case soil.PH.Given && soil.PH.Value < lowAcidity:
		say("pH {} is low: most vegetables want {} to {}. The report’s lime figure decides how much; lime needs months to work.", soil.PH.Value, lowAcidity, highAcidity)
	}
}

// baseCautions stand beside every rate of fertiliser.
var baseCautions = [...]feed.Caution{
	{ID: "salt-burn", Text: "Fertilizer is salt, and burns young roots. Mix it well into the bed, and keep bands a good hand off the plant line: 6 in, 15 cm.", LastWord: "the soil test's report and the product's label", Source: "University of Delaware, Weekly Crop Update ?p=122"},
	{ID: "nutrient-law", Text: "Laws may forbid phosphorus without a soil test, and fertilizer near wells and streams.", LastWord: "the state's nutrient law", Source: "from memory"},
	{ID: "manure", Text: "Raw manure needs 90 to 120 days before harvest, and its nutrients count too: take them off.", LastWord: "the food-safety rule and the certifier", Source: "7 CFR 205.203, from memory"},
	{ID: "fertiliser-dust", Text: "Wear gloves and a dust mask, keep bags dry, and keep them from children and animals.", LastWord: "the product's label", Source: "from memory"},
}
