//go:build !page

package plan

import (
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func named(name string, v any) water.Named { return water.Named{Name: name, Quantity: unit.Of(v)} }

func (b *BaseFertiliser) step(id, title, formula, source string, result water.Named, inputs ...water.Named) {
	b.Steps = append(b.Steps, water.Step{ID: id, Title: title, Formula: formula, Inputs: inputs, Result: result, Source: source})
}

// work writes down every sum, to be followed by hand.
func (b *BaseFertiliser) work(a *Advice, need *table.Need) {
	before := "under the film"
	if b.Bare {
		before = "before planting"
	}
	share := table.ShareOn(a.Facts.Soil)
	for i := range b.Nutrients {
		n, key, name := &b.Nutrients[i], NutrientKeys[i], NutrientNames[i]
		source := "your soil test's report"
		if n.Basis != ByReport {
			source = n.Sources[0].Publisher + ", " + n.Sources[0].Title
			if n.Note != "" {
				source += ". " + n.Note
			}
		}
		why := "phosphorus hardly moves in soil: all of it before planting"
		switch {
		case b.Down:
			why = "the film is down already"
		case Nutrient(i) == Nitrogen && need.Before.Given() && n.Basis != ByReport:
			why = need.Before.Source.Title
		case Nutrient(i) != Phosphate:
			why = share.Why
		}
		b.step("under-"+key, unit.Capital(name)+" "+before, "need of the season × share that goes "+before, source+"; "+why,
			named(before, n.Under), named("need of the season", n.Total), named("share", unit.FineShare(n.Share)))
		if n.Share < 100 {
			inputs := []water.Named{named("need of the season", n.Total), named(before, n.Under)}
			if Nutrient(i) == Nitrogen && n.Water > 0 {
				inputs = append(inputs, named("with the water", n.Water))
			}
			b.step("tape-"+key, unit.Capital(name)+" left to the tape", "need of the season − what goes "+before+" − what comes with the water; never below nothing", "arithmetic; nitrate in water: FAO Irrigation and Drainage Paper 29, chapter 5",
				named("through the tape", n.Tape), inputs...)
		}
		if b.Bed > 0 {
			b.step("beds-"+key, unit.Capital(name)+" for all beds", "rate × bed centers that it is meant for × length of all beds", table.BedFeet.Publisher+", "+table.BedFeet.Title,
				named(before, unit.FineMass(n.UnderMass)), named("rate", n.Under), named("bed centers", b.Centres), named("length of all beds", b.Bed))
		}
	}
	if b.Told() && b.Bed > 0 {
		inputs := []water.Named{}
		for i := range b.Nutrients {
			inputs = append(inputs, named(NutrientNames[i], unit.FineMass(b.Nutrients[i].UnderMass)), named("share of it in the bag", b.Grade[i]))
		}
		b.step("product", "Product of grade "+b.GradeWords(), "nutrient ÷ its share in the bag, and of the three the least, so that none is overdone", "arithmetic", named("product", unit.FineMass(b.Product)), inputs...)
		b.step("strip", "Product on the strip", "product ÷ (width × length of all beds)", "arithmetic", named("on the strip", b.Strip),
			named("product", unit.FineMass(b.Product)), named("width", unit.Short(b.Width)), named("length of all beds", b.Bed))
	}
	if n := &b.Nutrients[Nitrogen]; n.Tape > 0 {
		b.step("week", "Nitrogen a week", "nitrogen left to the tape ÷ weeks of feeding, 10 lb an acre at the most", b.weeksFrom(a),
			named("a week", b.AWeek), named("through the tape", n.Tape), named("weeks", b.Weeks))
	}
	if b.Lime > 0 {
		b.step("lime", "Lime for the field of these beds", "rate × own bed centers × length of all beds", "your soil test's report", named("lime", unit.FineMass(b.Lime)),
			named("rate", a.Case.Soil.Lime.Value), named("bed centers", a.Facts.Centres), named("length of all beds", b.Bed))
	}
}

// weeksFrom says where the weeks of feeding come from.
func (b *BaseFertiliser) weeksFrom(a *Advice) string {
	if overwinters(a) && a.Facts.Crop.Cured {
		return "from spring growth until the bulbs swell: Oregon State University Extension, by way of a newspaper, 2008; the days from memory"
	}
	if overwinters(a) {
		return "two months before the first picking, at 3 to 5 lb an acre a week: University of Delaware, Weekly Crop Update ?p=3899"
	}
	if a.Facts.Crop.Cured {
		return "from two weeks after planting until the bulbs swell: Texas A&M University, garden page; the days from memory"
	}
	return "from two weeks after planting to two weeks before the crop ends: common practice, no source; a guide names 5 to 10 lb an acre a week"
}
