package water

import (
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

func (w *work) tolerance() waterquality.Tolerance {
	return waterquality.Tolerance{Threshold: w.in.SaltThreshold.Value, Slope: w.in.SaltSlope.Value}
}

const fao29 = "table after FAO Irrigation and Drainage Paper 29 rev. 1 (1985), PMC9128324"

// quality reads the water test and chooses the filter.
func (w *work) quality() {
	in, p := &w.in, &w.plan
	p.Filter = waterquality.FilterFor(drip.EmitterOf(in.TapeFlow, in.Sold.RatedAt, in.Spacing, in.exponent).Rated, in.Supply)
	q := &p.Quality
	find := func(id string, value float64) {
		c, _ := waterquality.CloggerOf(id)
		f := Finding{c, round(value, stepShare), c.Judge(value)}
		q.Clogging = append(q.Clogging, f)
		if f.Hazard == waterquality.Severe {
			w.cares = append(w.cares, unit.Say("The water test shows a severe risk of clogging by {}.", c.Name))
			w.warn("clogging-"+id, Care, c.Source, unit.Say("Outlets may clog by {}: ask for treatment before you buy tape.", c.Name))
		}
	}
	if in.PH.Given {
		find("ph", in.PH.Value)
	}
	if in.Iron.Given {
		find("iron", float64(in.Iron.Value))
	}
	if in.Salt.Given {
		find("dissolved_solids", waterquality.DissolvedSolids(float64(in.Salt.Value)))
	}
	if in.Hardness.Given {
		q.HardnessWord = waterquality.HardnessWord(float64(in.Hardness.Value))
		if in.PH.Given && waterquality.LimeLikely(in.Hardness.Value, in.PH.Value) {
			w.warn("lime", Care, "UC ANR, micro-irrigation maintenance: bicarbonate above 2 meq/L and pH above 7.5",
				unit.Say("Hard water of pH {} may leave lime in the outlets: have bicarbonate tested.", in.PH.Value))
		}
	}
	if in.Supply.Surface() {
		w.warn("surface-water", Note, "University of Florida WI009",
			unit.Say("Pond and stream water carries algae: put a media or disc filter before the screen."))
	}
	if !in.Salt.Given {
		return
	}
	w.salt()
}

func (w *work) salt() {
	in, q := &w.in, &w.plan.Quality
	q.Restriction = waterquality.Restriction(in.Salt.Value)
	q.Infiltration = waterquality.Infiltration(in.Salt.Value, in.SodiumRatio.Or(0))
	if q.Infiltration == waterquality.Severe {
		w.warn("infiltration", Care, fao29,
			unit.Say("Water of {} is so pure that soil may seal and take it in slowly.", in.Salt.Value))
	}
	if q.Restriction == waterquality.Severe {
		w.warn("salt", Care, fao29, unit.Say("Water of {} is too salty for most crops.", in.Salt.Value))
	}
	if !in.SaltThreshold.Given || !in.SaltSlope.Given {
		return
	}
	t := w.tolerance()
	yield := round(t.YieldWith(in.Salt.Value), stepShare)
	q.Yield, q.MostSalt = unit.Known(yield), unit.Known(round(t.MostWater(), stepShare))
	if yield < 100 {
		w.warn("salt-yield", Care, "FAO Irrigation and Drainage Paper 61, annex 1; soil paste 1.5 × the water",
			salted(yield, q.MostSalt.Value))
	}
	if yield < muchYieldLeft {
		w.cares = append(w.cares, unit.Say("Salt in the water costs about {} of the yield.", 100-yield))
	}
	w.step("salt", "What salt costs",
		named("yield expected", yield),
		named("conductivity of the water", in.Salt.Value),
		named("threshold", in.SaltThreshold.Value),
		named("slope for 1 dS/m", in.SaltSlope.Value))
	w.step("leaching", "Water that must wash salt down",
		named("leaching", unit.FineShare(round(t.Leaching(in.Salt.Value), stepShare))),
		named("conductivity of the water", in.Salt.Value),
		named("threshold", in.SaltThreshold.Value))
}

// feeding does the sums of one day's feed.
func (w *work) feeding() {
	in, p := &w.in, &w.plan
	if in.Nitrate.Given && p.Demand != nil {
		kilograms := feed.NitrateCredit(in.Nitrate.Value, unit.Litres(float64(p.Demand.InField)*10000))
		p.Quality.NitrogenCredit = unit.Known(float64(round(kilograms, stepVolume)))
	}
	if !in.FeedRate.Given || !in.FeedGrade.Given || !in.Stock.Given || !in.Injector.Given || p.Schedule == nil || len(p.Schedule.Zones) == 0 || !in.BedCentres.Given {
		return
	}
	bed := in.BedLength.Value * unit.Metres(in.Beds.Value)
	nutrient := feed.ForBed(in.FeedRate.Value, in.BedCentres.Value, bed)
	product := feed.Product(nutrient, in.FeedGrade.Value)
	stock := feed.Stock(product, in.Stock.Value)
	zone := p.Schedule.Zones[0]
	zoneStock := stock * unit.Litres(zone.Beds) / unit.Litres(in.Beds.Value)
	held := p.Tape.Fill * unit.Litres(zone.Beds)
	if p.Supply != nil {
		held += drip.FillVolume(p.Supply.Bore.Inside, zone.FromSource+in.BedCentres.Value*unit.Metres(zone.Beds))
	}
	f := &Feeding{
		Nutrient:   round(nutrient, stepMass),
		Product:    round(product, stepMass),
		Stock:      round(stock, stepShare),
		ZoneStock:  round(zoneStock, stepShare),
		ZoneInject: round(feed.InjectMinutes(zoneStock, zone.Flow, in.Injector.Value), stepMinutes),
		Rinse:      round(feed.RinseMinutes(held, zone.Flow), stepMinutes),
	}
	f.Fits = !p.Schedule.RunADay.Given || f.ZoneInject+f.Rinse <= p.Schedule.EachRun
	p.Feeding = f
	if !f.Fits {
		w.warn("feed-too-long", Care, "arithmetic",
			unit.Say("Injecting takes {} and rinsing {}: longer than the run of {}. Make the stock stronger or feed less often.", f.ZoneInject, f.Rinse, p.Schedule.EachRun))
	}
	w.step("feed", "Feed for one day",
		named("inject, largest zone", f.ZoneInject),
		named("rate a day", unit.KilogramsPerHectare(in.FeedRate.Value)), named("bed centers", in.BedCentres.Value), named("length of all beds", bed),
		named("nutrient", unit.FineMass(f.Nutrient)), named("grade", in.FeedGrade.Value), named("product", unit.FineMass(f.Product)),
		named("strength of the stock", unit.KilogramsPerLitre(in.Stock.Value)), named("stock", unit.FineVolume(f.Stock)),
		named("stock, largest zone", unit.FineVolume(f.ZoneStock)), named("injector, 1 to", in.Injector.Value), named("flow of the largest zone", zone.Flow),
		named("rinse after it", f.Rinse))
}

// chlorine does the sum for the largest zone.
func (w *work) chlorine() {
	in, p := &w.in, &w.plan
	if !in.Bleach.Given || !in.Chlorine.Given || p.Schedule == nil || len(p.Schedule.Zones) == 0 {
		return
	}
	flow := p.Schedule.Zones[0].Flow
	c := &Chlorine{Wanted: in.Chlorine.Value, ForIron: round(feed.ForIron(in.Iron.Value), stepShare)}
	c.Inject = round(feed.Bleach{Strength: in.Bleach.Value}.InjectFor(flow, in.Chlorine.Value), stepOutlet)
	p.Chlorine = c
	if in.PH.Given && in.PH.Value > weakChlorinePH {
		w.warn("chlorine-weak", Note, "UC ANR, micro-irrigation maintenance: at pH 8 about a quarter of the chlorine works, at pH 7 three quarters",
			unit.Say("At pH {} most of the chlorine does not work. Never add acid at the same point or from the same tank.", in.PH.Value))
	}
	w.step("chlorine", "Chlorine to inject",
		named("inject", unit.SmallFlow(c.Inject)),
		named("flow of the largest zone", flow),
		named("strength wanted", c.Wanted),
		named("bleach", in.Bleach.Value))
}

// checks set rules of the trade beside ours.
func (w *work) checks() {
	w.longestCheck()
	d := w.plan.Demand
	if d == nil {
		return
	}
	thumb := unit.FromGallonsPerMinutePer100Feet(0.5)
	hours := round(unit.Hours(float64(d.Peak.Gross)/float64(thumb)), stepHours)
	w.plan.Checks = append(w.plan.Checks, Check{
		ID:   "rule-of-thumb",
		Says: unit.Say("Rule of thumb for the mid-Atlantic summer: tape of {} runs 2 to 3 h a day for maturing vegetables. On your day of peak use such tape would run {}.", thumb, hours),
		Ours: unit.Of(hours), Low: unit.Of(unit.Hours(2)), High: unit.Of(unit.Hours(3)),
		Agrees: hours >= 2 && hours <= 3,
		Source: "common practice, no source",
	})
	week := round(7*d.Peak.Use, stepDepth)
	w.plan.Checks = append(w.plan.Checks, Check{
		ID:   "weekly-inch",
		Says: unit.Say("Penn State: {} to {} a week, counted on the bed top. Your peak week, counted the same way: {}.", unit.Millimetres(25.4), unit.Millimetres(38.1), week),
		Ours: unit.Of(week), Low: unit.Of(unit.Millimetres(25.4)), High: unit.Of(unit.Millimetres(38.1)),
		Agrees: week >= 25.4 && week <= 38.1,
		Source: "Penn State Extension (2013)",
	})
	w.youngCheck()
	if d.InField <= 0 {
		return
	}
	saved := round(w.savedAgainstSprinklers(), stepShare)
	amount := unit.Of(saved)
	if saved < 1 { // a salty water's leaching takes it all
		amount = unit.Of("none")
	}
	w.plan.Checks = append(w.plan.Checks, Check{
		ID:   "half-the-water",
		Says: unit.Say("Claim: drip can save up to half the water. Against sprinklers that use 70% well, on bare ground, yours saves {} over the season.", amount),
		Ours: unit.Of(saved), Low: unit.Of(unit.Percent(0)), High: unit.Of(unit.Percent(50)),
		Agrees: saved >= 0 && saved <= 50,
		Source: "common practice, no source",
	})
}

// youngCheck sets what was published for young plants under plastic beside the first
// week. Our sum is the book's, and low: it counts neither what leaves by the planting
// holes nor a root ball that is drier than the bed.
func (w *work) youngCheck() {
	week := round(7*w.plan.Demand.First.Use, stepDepth)
	w.plan.Checks = append(w.plan.Checks, Check{
		ID: "young-plants",
		Says: unit.Say("First week: your plants use {}, by FAO Paper 56 a tenth of the reference under plastic. Nothing is counted for drying at the planting holes. Watermelons in Texas were given {} a week in their first three weeks, counted on their ground; Florida’s best rate was 0.24 of a pan’s evaporation. Tomatoes in Michigan that got none until they flowered yielded more. So water each plant in, and dig beside a root ball before you change the run.",
			week, unit.Millimetres(14)),
		Ours: unit.Of(week), Low: unit.Of(unit.Millimetres(0)), High: unit.Of(unit.Millimetres(14)),
		Agrees: week <= 14,
		Source: "FAO-56 chapter 10; HortScience 35(4):556 (2000); Proceedings of the Florida State Horticultural Society, watermelon on plastic, 2001–2002; Agricultural Water Management 87:285 (2007)",
	})
}

func (w *work) savedAgainstSprinklers() unit.Percent {
	season := w.season(w.in.Usual.Value)
	season.Cut = demand.FilmCut{}
	months, _ := season.Months()
	bare := 0.0
	for _, m := range months {
		bare += demand.Gross(m.PerMetreField, 70, 0) * float64(m.Days)
	}
	return unit.Percent(100 * (1 - float64(w.plan.Demand.Total)/100/bare))
}

// longestCheck sets two editions of the published table of longest runs beside
// ours. Both grow with available water and shrink with flow; they differ by
// half because they assume other depths, shares and widths, which are not
// printed.
func (w *work) longestCheck() {
	s := w.plan.Soil
	if s == nil || s.Longest == 0 {
		return
	}
	edition := func(inchFeet float64) unit.Minutes {
		litres := 1000 * s.Water.Available * inchFeet * unit.MetresPerInch * unit.MetresPerFoot // for a metre of bed
		return round(unit.Minutes(60*litres/w.bedFlow), stepMinutes)
	}
	low, high := edition(3.27), edition(6.67)
	w.plan.Checks = append(w.plan.Checks, Check{
		ID:   "longest-run",
		Says: unit.Say("Two editions of a published table give {} for this soil and flow. Ours: {}, with roots {} deep, {} of the water used between runs and a wet strip {} wide.", unit.Between(low, high), s.Longest, unit.Short(s.Depth), unit.PercentOf(s.Depletion), unit.Short(s.Strip.Width)),
		Ours: unit.Of(s.Longest), Low: unit.Of(low), High: unit.Of(high),
		Agrees: s.Longest >= low && s.Longest <= high,
		Source: "NCAT/ATTRA after Penn State (157 min at 0.17 in/in and 0.45 gal/min for 100 ft); the lower edition from memory",
	})
}

// salted says what is left of the yield.
func salted(yield unit.Percent, most unit.DecisiemensPerMetre) unit.Phrase {
	if yield < 1 {
		return unit.Say("With this water expect no yield: the crop stands {} without loss.", most)
	}
	return unit.Say("With this water expect about {} of the yield: the crop stands {} without loss.", yield, most)
}
