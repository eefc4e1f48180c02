package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// A gate decides whether film should be laid at all. It rules out Lay to ask
// for care, and LayWithCare too to say no. Nothing outvotes a gate.

// careful and forbidding say from which option on a gate acts.
func careful(o question.Option) bool    { return o == question.Lay }
func forbidding(o question.Option) bool { return o == question.Lay || o == question.LayWithCare }

func gate(id, title, because, fires string, judge func(*facts.Facts, question.Option) (Finding, bool), sources ...*table.Source) *Rule {
	return &Rule{ID: id, Speaks: question.Verdict, Title: title, Weight: Strong, Because: because, Sources: sources, Judge: judge, Fires: fires}
}

// layingGate speaks of the laying itself: of film that lies already it says nothing.
func layingGate(id, title, because, fires string, judge func(*facts.Facts, question.Option) (Finding, bool), sources ...*table.Source) *Rule {
	return gate(id, title, because, fires, func(f *facts.Facts, o question.Option) (Finding, bool) {
		if f.Case.Practice.FilmDown() {
			return silent()
		}
		return judge(f, o)
	}, sources...)
}

// Limits of the gates: our judgement, chosen wide.
const (
	manyHoles, someHoles  = 35, 15 // plants for each m² of bed top, sown
	steepSlope, MildSlope = 10, 5  // percent
	levelEnough           = 1      // percent, along which tape may run either way
	heavyLoss, SomeLoss   = 50, 10 // percent of yield
	lightTractor          = 22.0   // kW, 30 hp
	rareFrost, coverFrost = 0.1, 0.25
	anotherPlace          = 100_000 // m to the station
	largeByHand           = unit.SquareMetres(0.5 * unit.SquareMetresPerAcre)
	outOfSeason           = 75   // days from the wanted day to the next that will do
	crownDays             = 28   // that strawberries want before hard frost
	PickingPays           = 14   // days between the first harvest of a tender crop and frost
	mildWinter            = 10   // days of frost a year below which the day of the first says little
	fallSlows             = 14   // days that short, cool days add to a harvest
	springRises           = 1.5  // K from the coldest day's mean to that of the planting day
	hotDays               = 30   // of the first 60 above the ceiling under white film: half
	wornCover             = 70   // percent of the old film whole
	nearlyEvery           = 0.95 // share of years
)

// yearsOf says in how many years something comes, at the head of a sentence.
func yearsOf(share float64) unit.Quantity {
	if share >= nearlyEvery {
		return unit.Of("In nearly every year")
	}
	return unit.Of("In " + unit.Of(unit.PercentOf(share)).In(unit.Metric) + " of years")
}

var gates = [...]*Rule{
	gate("dense-seed", "Too many holes for film", "Film that is mostly holes holds no weeds, tears in wind and lets its warmth out.", "carrot-drill",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch {
			case f.Seeded && f.Density > manyHoles && forbidding(o):
				return rulesOut("Sown this close there are {} of bed: the film would be mostly holes. Grow it on bare ground, or set transplants farther apart.", f.Density)
			case f.Seeded && f.Density > someHoles && careful(o):
				return rulesOut("Sown at {} of bed it needs many holes. Sow in clumps, or set out transplants.", f.Density)
			}
			return silent()
		}, &table.Plasticulture),
	gate("drilled", "Sown in a drill, cut or pulled by the row", "Mechanized dense crops are poor fits for film.", "salad-drill",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Sown && f.Seeded && forbidding(o) {
				return rulesOut("A drill of {} leaves no film between the plants. Use bare ground with a stale seedbed, or a straw or paper strip between the rows.", f.Crop.Name)
			}
			return silent()
		}, &table.Plasticulture),
	gate("hilled", "Soil must be drawn up to it", "Film on the bed keeps the hiller out; greened tubers cannot be sold.", "potato-hilled",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Hilled && forbidding(o) {
				return rulesOut("Soil has to be drawn up to {} during the season. Film on the bed prevents it.", f.Crop.Name)
			}
			return silent()
		}, &table.Plasticulture),
	gate("seeded-root", "A root that swells where it was sown", "A thinned row of roots needs an open strip of soil.", "beet-seeded",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Root && f.Seeded && forbidding(o) {
				return rulesOut("The roots of {} swell in a thinned row. Holes cannot be cut for each one.", f.Crop.Name)
			}
			return silent()
		}, &table.Plasticulture, &table.Practice),
	gate("no-water", "No water for the tape", "Rain does not pass film: all water comes through the tape.", "tomato-no-water",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Water.Source == "none" && forbidding(o) {
				return rulesOut("Film sheds the rain. Without water for drip tape the crop dries out under it.")
			}
			return silent()
		}, &table.PennDrip2013, &table.Practice),
	gate("flow-short", "The source cannot keep up", "A plan that needs more hours than there are will fail in the first hot week.", "melon-weak-well",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			stops := f.Sketch[f.Tape].Stops
			if len(stops) == 0 || !careful(o) {
				return silent()
			}
			return Finding{RulesOut: true, Reason: unit.Phrase{Text: stops[0].Text + " The water plan shows three ways out.", Quantities: stops[0].Quantities}}, true
		}, &table.FAO56),
	gate("beds-too-long", "Longer than tape waters evenly", "The far end of a bed that is too long is short of water all season.", "melon-quarter-mile",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Stretches < 2 || !careful(o) {
				return silent()
			}
			long := f.Case.Field.BedLength.Value
			found, fires := rulesOut("No tape that suits {} waters {} evenly. Split each bed into stretches of {}, and feed each from its middle by a header across the beds.", f.Soil.Name, long, 2*long/unit.Metres(f.Stretches))
			if f.Stretches == 2 {
				found, fires = rulesOut("No tape that suits {} waters {} evenly from one end. Feed each bed from its middle: a header across the beds there, and two lines of {}.", f.Soil.Name, long, long/2)
			}
			if f.Case.Soil.Slope.Value >= levelEnough { // the water model takes beds to climb away from their header
				found.Reason.Text += " Beds that are fed from their upper end, or run across the slope, may be longer."
			}
			return found, fires
		}, &table.KansasTape, &table.PennDrip2013),
	gate("steep-slope", "Steep ground", "Film sheds most of the rain into the alleys, which cut into gullies on a slope; tractors overturn.", "melon-hillside",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			slope := f.Case.Soil.Slope.Value
			switch {
			case slope > steepSlope && forbidding(o):
				return rulesOut("The slope is {}. Film sheds the rain and the alleys will wash out. Lay across the slope on gentler ground.", unit.FineShare(slope))
			case slope > MildSlope && careful(o):
				return rulesOut("The slope is {}. Sow rye in the alleys or cover them with straw, and lay nearly along the contour.", unit.FineShare(slope))
			}
			return silent()
		}, &table.Runoff, &table.RunoffRye),
	gate("purple-nutsedge", "Purple nutsedge goes through film", "Purple nutsedge grew as well under black film as on bare ground.", "pepper-purple-nutsedge",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Weeds.Nutsedge != "purple" {
				return silent()
			}
			if f.Case.Weeds.Pressure == "heavy" && forbidding(o) {
				return rulesOut("Heavy purple nutsedge: its spears go through every plastic film, and one tuber made a patch {} across under black film. Clear the ground first.", unit.Between(unit.Metres(4), unit.Metres(5)))
			}
			if careful(o) {
				return rulesOut("Purple nutsedge goes through plastic film. Pull the first spears, or try paper, before it spreads.")
			}
			return silent()
		}, &table.NutsedgePurple2005, &table.Nutrition),
	gate("yellow-nutsedge-heavy", "Heavy yellow nutsedge", "Film held yellow nutsedge back by 96 % in pots, but those that come through multiply.", "pepper-yellow-nutsedge",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Weeds.Nutsedge == "yellow" && f.Case.Weeds.Pressure == "heavy" && careful(o) {
				return rulesOut("Opaque film holds most of it, but some shoots come through. Plan to pull them each week.")
			}
			return silent()
		}, &table.NutsedgeYellow2005),
	gate("salty-water", "Salt against the crop", "Salt in drip water builds up at the edge of the wet zone, where rain cannot reach it.", "bean-salty-water",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch {
			case f.YieldLost > heavyLoss && forbidding(o):
				return rulesOut("Water of {} would cost about {} of the yield of {}. Choose another crop or water.", f.Case.Water.Salt.Value, f.YieldLost, f.Crop.Name)
			case f.YieldLost > SomeLoss && careful(o):
				return rulesOut("Water of {} may cost about {} of the yield of {}. Leach before planting and keep the bed moist.", f.Case.Water.Salt.Value, f.YieldLost, f.Crop.Name)
			}
			return silent()
		}, &table.FAO61, &table.FAO29),
	gate("frost-on-planting-day", "Frost is likely after planting", "Film warms roots, never leaves.", "tomato-frost-pocket",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if free, ok := f.Season.NextFree(f.Wanted); ok && free > f.Wanted && f.WantedRisk > rareFrost && careful(o) {
				return rulesOut("{} it still freezes after {}. Film does not protect leaves: plant on {}.", yearsOf(f.WantedRisk), unit.YearDay(f.Wanted), f.Plant)
			}
			if f.FrostRisk > coverFrost && f.Crop.Hardiness >= table.Tender && careful(o) {
				return rulesOut("{} it still freezes after {}. Film does not protect leaves: have covers ready.", yearsOf(f.FrostRisk), unit.YearDay(f.Plant))
			}
			return silent()
		}, &table.Colorado720, &table.Covers2020, &table.Normals),
	gate("far-climate", "The climate of another place", "Every date and every film here goes by the climate.", "cabbage-far-station",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			p := &f.Case.Place
			if p.Own || p.StationAway <= anotherPlace || !careful(o) {
				return silent()
			}
			return rulesOut("The nearest station is {} away, {} high. Your climate may be another: type twelve months of your own, or at least your height.", unit.Distance(p.StationAway), p.StationAt)
		}, &table.Practice),
	gate("organic-film", "The organic rule", "A film that breaks the rule costs the certificate.", "tomato-organic-wrong-film",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			p := &f.Case.Practice
			if !p.Organic.Value {
				return silent()
			}
			allowed := p.FilmOptions == 0
			for film := range table.FilmCount {
				allowed = allowed || table.Films[film].OrganicUse && p.FilmOptions&(1<<film) != 0
			}
			switch {
			case !allowed && forbidding(o):
				return rulesOut("None of the films you can buy may lie on an organic field. Find polyethylene or paper, or mulch with straw.")
			case p.CropsOnFilm.Value > 1 && careful(o):
				return rulesOut("The organic rule lets plastic lie until the end of the growing or harvest season, so all {} crops must come off it within one.", p.CropsOnFilm.Value)
			}
			return silent()
		}, &table.OrganicRule, &table.OrganicMemo2015),
	gate("season-too-short", "Fall comes first", "A crop that frost or cold cuts off before harvest earns nothing.", "melon-too-late",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Overwinters() {
				return silent()
			}
			tender := f.Crop.Hardiness >= table.Tender
			left, slower := f.FreeDays, unit.Days(0)
			if !tender {
				left = f.StandDays
			}
			if f.Cooling() {
				slower = fallSlows
			}
			first, warm := f.CropDays, facts.Never
			if f.Crop.Warm && f.Cooling() {
				cold := f.Season.WithFloor(f.CoverFloor())
				warm = cold.HoldsFor(f.ChosenCover(), f.Plant)
			}
			// Where winter is mild the day of the first frost says little: growers plant through it with covers at hand.
			spared := warm >= first && f.FrostDays < mildWinter
			switch {
			case warm > 0 && warm < min(first+PickingPays, left) && careful(o): // where no frost comes, the bed grows too cold
				return rulesOut("The bed stays above {} for about {} more, and the first harvest of {} takes about {}. Plant sooner, or as days grow longer.", f.CoverFloor(), warm, f.Crop.Name, first)
			case left == facts.Never:
				return silent()
			case tender && left < first && !spared && forbidding(o):
				return rulesOut("Only {} are left before the usual first frost, and the first harvest of {} takes about {}.", left, f.Crop.Name, first)
			case tender && left < first+PickingPays && careful(o):
				return rulesOut("Only {} are left before the usual first frost, and the first harvest of {} takes about {}. Have covers ready.", left, f.Crop.Name, first)
			case tender && left < first+PickingPays+slower && careful(o):
				return rulesOut("{} are left before the usual first frost. The first harvest of {} takes about {}, and two weeks more as days grow short. Have covers ready.", left, f.Crop.Name, first)
			case !tender && left < first && (f.Cooling() && forbidding(o) || careful(o)):
				return rulesOut("Only {} are left before frost that kills {}, and the first harvest takes about {}.", left, f.Crop.Name, first)
			case !tender && left < first+slower && careful(o):
				return rulesOut("Only {} are left before frost that kills {}. The first harvest takes about {}, and two weeks more as days grow short. Have covers ready.", left, f.Crop.Name, first)
			}
			return silent()
		}, &table.VirginiaFall, &table.Normals, &table.TradeSeedList),
	gate("late-berries", "Late for crowns", "Yields fall with each week that planting is put off.", "berries-late",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Group == table.Berry && f.Cooling() && f.FreeDays < crownDays && careful(o) {
				return rulesOut("Only {} are left before the usual hard frost; published last days fall four to eight weeks before it. Lay row covers this fall, and expect fewer berries.", f.FreeDays)
			}
			return silent()
		}, &table.StrawberryDates),
	gate("cloves-in-spring", "Cloves want a winter", "Cloves form bulbs after two months of cold; set in spring they stay small.", "garlic-in-spring",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Group != table.Bulb || !f.Overwinters() || f.Autumn || f.Risen() < springRises {
				return silent()
			}
			_, mean, _ := f.Season.NextCool(f.Plant)
			switch {
			case f.HasFrostDate && f.Plant > f.SpringFrost && forbidding(o):
				return rulesOut("Set on {}, {} gets no cold and makes hardly a bulb. Set it in the fall, when the air averages {}.", f.Plant, f.Crop.Name, mean)
			case careful(o):
				return rulesOut("Set in spring, {} makes small bulbs. The usual time is the fall, when the air averages {}.", f.Crop.Name, mean)
			}
			return silent()
		}, &table.GarlicPlanting, &table.Practice),
	gate("always-frost", "No frost-free season", "Tender leaves need a season without frost.", "tomato-high-valley",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch tender := f.Crop.Hardiness >= table.Tender; {
			case f.FrostKind != weather.FrostAlways:
				return silent()
			case tender && forbidding(o):
				return rulesOut("Here it freezes even in the warmest month of most years. A tunnel is needed for {}, not film alone.", f.Crop.Name)
			case !tender && careful(o):
				return rulesOut("Here it freezes to {} even in the warmest month of most years. Harden {} well, and keep row covers at hand all season: film does not protect leaves.", f.FrostLimit, f.Crop.Name)
			}
			return silent()
		}, &table.Normals, &table.Colorado720),
	gate("never-warm", "No film makes this ground warm enough", "Below its floor the crop stands still or rots.", "okra-cold-coast",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Opening == facts.NeverOpen && (f.FrostKind != weather.FrostAlways || f.Crop.Hardiness < table.Tender) && forbidding(o) {
				return rulesOut("Under no film does the bed hold {} for three days this season. A warmer place or a tunnel is needed for {}.", f.CoverFloor(), f.Crop.Name)
			}
			if f.Opening == facts.OpenUnderCovers && careful(o) {
				return rulesOut("The bed reaches {} but does not hold {} in time. Plant under covers, on {} or later.", f.CoverFloor(), f.WorkFloor, f.Plant)
			}
			return silent()
		}, &table.GeorgiaFloors, &table.KansasFloors),
	gate("too-cool-a-summer", "Too cool a summer for it", "Where no month is warm enough, warm crops set few fruits and ripen late, whatever the bed.", "tomato-cool-highland",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			least := f.Crop.MonthLeast
			if !least.Given() || least.Value.Minus(f.MonthWarmest) < tellable || !careful(o) {
				return silent()
			}
			return rulesOut("The warmest month from planting to harvest averages {}; for {} a handbook wants {} or more. Take an early kind that sets fruit in the cool, or grow it in a tunnel.", f.MonthWarmest, f.Crop.Name, least.Value)
		}, &table.Knott1997),
	gate("out-of-season", "Not the season for it", "Film that lies for months before planting weathers, and the crop meets frost or cold ground.", "tomato-out-of-season",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if moved := f.Plant.Minus(f.Wanted); moved > outOfSeason && forbidding(o) {
				return rulesOut("{} is out of season for {} here. The next day that will do is {}: lay film a week or two before it.", f.Wanted, f.Crop.Name, f.Plant)
			}
			return silent()
		}, &table.Normals, &table.Colorado720),
	gate("label-unknown", "The label's interval is not known", "The label sets the days between treatment and planting, and it is law.", "pepper-treated-no-label",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.FumigatedOn.Given && !f.Case.Practice.LabelInterval.Given && careful(o) {
				return rulesOut("The ground was treated on {}. Read the label for the days until planting: no planting day is settled before that.", f.Case.Practice.FumigatedOn.Value)
			}
			return silent()
		}, &table.FumigantManual, &table.FumigantShort),
	layingGate("light-tractor-on-stones", "A light tractor on stony ground", "Stones lift the layer's discs and the film tears; a light tractor slips and is pulled sideways.", "pepper-stony-light",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.Laying == "hand" || f.Case.Soil.Stones != "many" {
				return silent()
			}
			if p := f.Case.Practice.Tractor; p.Given && p.Value < lightTractor && forbidding(o) {
				return rulesOut("Many stones and a tractor of {}: the layer will ride up and tear the film. Pick the stones first, or borrow a heavier tractor.", p.Value)
			}
			if careful(o) {
				return rulesOut("Many stones: pick them from the bed lines before laying, and go slowly.")
			}
			return silent()
		}, &table.Practice, &table.Plasticulture),
	layingGate("trashy-ground", "Trash in the soil", "Stalks and sod puncture film and hold it off the bed.", "cabbage-wet-clay",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Tilth == "trashy" && careful(o) {
				return rulesOut("There is crop trash in the soil. Bury it or rake it off first: it punctures the film and holds it off the soil.")
			}
			return silent()
		}, &table.TilthMichigan, &table.Contact),
	layingGate("cloddy-ground", "Clods hold the film off", "Air under the film loses most of the warming, and clods wear holes.", "pepper-cloddy-spring",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Tilth == "cloddy" && careful(o) {
				return rulesOut("The soil is cloddy. Work it fine while it is moist: air gaps under the film lose most of the warming.")
			}
			return silent()
		}, &table.Contact, &table.DryBeds),
	layingGate("bed-beyond-tractor", "The tractor is light for this bed", "A tractor that slips makes a crooked, loose bed.", "berries-spring-set",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			bed := f.HeightOption
			if BeyondTractor(f, bed) == 0 || !careful(o) {
				return silent()
			}
			if f.Height == 0 {
				return rulesOut("Laying film on flat ground takes about {}; your tractor has {}. Lay it by hand, or borrow a tractor for the day.", LeastPower[bed], f.Case.Practice.Tractor.Value)
			}
			return rulesOut("A bed {} high takes about {} to form and cover in one pass; your tractor has {}. Form it in one pass and lay in a second, draw the rest up by hand, or borrow a tractor for the day.", unit.Short(f.Height), LeastPower[bed], f.Case.Practice.Tractor.Value)
		}, &table.CompactLayers, &table.Plasticulture),
	layingGate("dry-at-laying", "The ground is dry", "Drip hardly re-wets a bed that was covered dry, least of all in sand.", "melon-weak-well",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Wetness == "dry" && careful(o) {
				return rulesOut("Dry soil at laying: water the ground to the depth of the bed first. Tape hardly wets a dry bed through.")
			}
			return silent()
		}, &table.DryBeds, &table.Guide205),
	layingGate("wet-at-laying", "The ground is too wet to work", "Wet soil smears and sets into clods that hold film off.", "cabbage-wet-clay",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Wetness == "wet" && careful(o) {
				return rulesOut("Wet soil smears and sets hard. Wait until a squeezed ball breaks when poked.")
			}
			return silent()
		}, &table.Guide205, &table.Practice),
	layingGate("driver-alone", "One person and a layer", "Nobody should both drive and bury the row start.", "tomato-lone-driver",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.Laying != "hand" && f.Case.Practice.People.Given && f.Case.Practice.People.Value < 2 && careful(o) {
				return rulesOut("One person cannot safely drive and bury the row start. Find a second for laying day.")
			}
			return silent()
		}, &table.Practice),
	gate("soil-too-hot", "Too hot under every film", "Roots above the crop's ceiling stop working: heads of cool crops stay small, button or bolt.", "lettuce-hot-summer",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if careful(o) && f.CeilingDays[table.WhiteOnBlack] > hotDays {
				return rulesOut("Even under white-on-black film the root zone is above {} on {} of the first 60 days. Plant earlier in spring or later for fall. If you plant now, shade the bed and water through the hot hours.", f.Ceiling, f.CeilingDays[table.WhiteOnBlack])
			}
			return silent()
		}, &table.PepperHeat2011, &table.Broccoli2009),
	layingGate("hand-laying-large", "A large field by hand", "More than half an acre by hand is slow and hard.", "flowers-large-by-hand",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			area := unit.SquareMetres(float64(f.BedMetres) * float64(f.Centres))
			if f.Case.Practice.Laying == "hand" && area > largeByHand && careful(o) {
				return rulesOut("{} of bed by hand, on {}, is slow and hard work. Borrow a layer, or lay over several days.", f.BedMetres, area)
			}
			return silent()
		}, &table.Guide205),
	gate("reused-dark-film", "Dark film that lies in summer sun", "Black film that carried a spring crop burns the next one's stems in summer.", "squash-on-worn-film",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !Painted(f) || !careful(o) {
				return silent()
			}
			there, _ := table.FilmByID(f.Case.Practice.ReuseFilm)
			return rulesOut("Paint the old film white before you plant: on {} of the first two weeks {} would kill stems that touch it.", unit.Days(f.Burning[there]), there.Name())
		}, &table.FloridaDouble2018, &table.HotFilm),
	gate("reused-film-holes", "The old film is worn", "Open film grows weeds and loses its warmth.", "squash-on-worn-film",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			p := &f.Case.Practice
			if p.FilmDown() && p.ReuseCover.Given && p.ReuseCover.Value < wornCover && careful(o) {
				return rulesOut("Only {} of the old film is whole. Weeds will come through; plan to patch it or lay afresh.", unit.PercentOf(p.ReuseCover.Value/100))
			}
			return silent()
		}, &table.Weathering),
}
