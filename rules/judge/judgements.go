package judge

import (
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// figure is a number that a rule weighs with and that no table of the trade gives: what
// it means, its unit and whose it is. A fit, which runs from −1 to +1, has no unit; a
// figure without a source is our judgment.
type figure struct {
	Value    float64
	id       string
	means    string
	measured string
	source   *table.Source
}

func (f *figure) row() unit.Judgement {
	j := unit.Judgement{ID: f.id, Means: f.means, Value: f.Value, Unit: f.measured}
	if f.source != nil {
		j.Source = f.source.Named()
	}
	return j
}

// The figures of the film rules. A "half" is where a consequence counts half of what
// its rule can weigh; it never goes flat, so that no two films tie far out.
var (
	daysHalf      = judged("film-days-half", "days earlier, or later, that count half", 20, "days", nil)
	heatHalf      = judged("film-heat-half", "days lost to heat that count half", 10, "days", nil)
	paleFrom      = judged("film-pale-from", "usual air at planting above which white begins to count under warm crops: in Delaware guides change in mid-June, at 22 °C", 21, "°C", &table.LateSwitch)
	paleTop       = judged("film-pale-top", "top of the best months of the crops that the guides name, tomato and pepper; what a crop bears beyond it puts white off as far", 24, "°C", &table.LateSwitch)
	paleHalf      = judged("film-pale-half", "degrees above it, or above a cool crop's best months, at which white counts half", 3, "°C", nil)
	silverPale    = judged("film-silver-in-heat", "what silver counts beside white in heat: guides name white, and keep silver for insects", 0.5, "share", nil)
	harvestLeft   = judged("film-short-harvest", "days of harvest before frost below which a season is short", 80, "days", nil)
	coldFull      = judged("film-cold-full", "degrees below its best roots, under black, at which a short season counts whole", 4, "°C", nil)
	hoursLight    = judged("film-weeding-light", "weeding of 100 ft of bare bed in a season, light weeds", 0.5, "h", nil)
	hoursModerate = judged("film-weeding-moderate", "weeding of 100 ft of bare bed in a season, moderate weeds", 1.5, "h", nil)
	hoursHeavy    = judged("film-weeding-heavy", "weeding of 100 ft of bare bed in a season, heavy weeds", 4, "h", nil)
	underFilm     = judged("film-weeding-under", "how many times longer a weed takes under film, where no hoe reaches", 2, "times", nil)
	underOrganic  = judged("film-weeding-under-organic", "the same where no spray may be used before laying", 3, "times", nil)
	hoursHalf     = judged("film-weeding-half", "hours of weeding saved on 100 ft of bed that count half", 3, "h", nil)
	sownFit       = judged("film-sown-fit", "clear film over seed", 0.5, "", nil)
	setOutFit     = judged("film-set-out-fit", "clear film over transplants, against", 0.6, "", nil)
	yellowBlack   = judged("film-yellow-black", "black against yellow nutsedge", 0.3, "", nil)
	yellowPale    = judged("film-yellow-pale", "white and silver against yellow nutsedge, against", 0.2, "", nil)
	yellowPaper   = judged("film-yellow-paper", "paper against yellow nutsedge, weeds light or moderate", 0.5, "", nil)
	yellowHeavy   = judged("film-yellow-paper-heavy", "paper against yellow nutsedge, weeds heavy: in Tennessee it was best", 1, "", &table.PaperNutsedge2018)
	purplePaper   = judged("film-purple-paper", "paper against purple nutsedge", 0.9, "", nil)
	purpleLight   = judged("film-purple-light", "film that passes light against purple nutsedge: trials differ", 0.3, "", nil)
	purplePlastic = judged("film-purple-plastic", "other plastic against purple nutsedge, against", 0.5, "", nil)
	virusSilver   = judged("film-virus-silver", "silver where carriers are and the crop takes their virus", 0.9, "", nil)
	virusOther    = judged("film-virus-white", "white where carriers are and the crop takes their virus", 0.4, "", nil)
	insectsOnly   = judged("film-insects-only", "silver where thrips are and the crop is an onion or its kin, which they harm by feeding", 0.6, "", &table.SilverOnion2006)
	mayCome       = judged("film-carriers-may-come", "silver where no insects were named", 0.1, "", nil)
	lateAir       = judged("film-late-air", "usual air at planting above which carriers are about, where none were named", 18, "°C", nil)
	thripsHere    = judged("film-thrips-here", "blue where thrips are, against", 1, "", nil)
	thripsMayCome = judged("film-thrips-may-come", "blue on a crop that takes virus from thrips, against", 0.5, "", nil)
	gainHalf      = judged("film-gain-half", "a yield gain on which trials agree that counts half", 30, "%", nil)
	gainDoubtHalf = judged("film-gain-doubt-half", "the best of gains on which trials disagree that counts half", 60, "%", nil)
	gainMixed     = judged("film-gain-mixed", "a film that lost in some trials on the crop, against", 0.3, "", nil)
	mixedFit      = judged("film-mixed-fit", "red and blue, against: trials disagree", 0.7, "", nil)
	priceHalf     = judged("film-price-half", "price beyond black's that counts half", 1.5, "times", nil)
	litterFit     = judged("film-litter-fit", "film that must be lifted and hauled, against", 0.3, "", nil)
	litterSoil    = judged("film-litter-soil", "mass of film as hauled, with soil, beside clean film", 2, "times", &table.PaperNutsedge2018)
	coverHalf     = judged("film-cover-half", "cover gone after two crops that counts half", 25, "%", nil)
	coverLeast    = judged("film-cover-least", "cover left below which a film cannot carry a second crop", 30, "%", nil)
	lifeHalf      = judged("film-life-half", "days that a film gives out before the harvest ends that count half", 25, "days", nil)
	secondPale    = judged("film-second-pale", "pale film where the second crop starts in summer", 0.3, "", nil)
	secondDark    = judged("film-second-dark", "dark film where the second crop starts in summer, against: it can be painted", 0.2, "", nil)
	commonFit     = judged("film-common-fit", "black, the film that is everywhere", 0.5, "", nil)
	windFit       = judged("film-wind-fit", "paper and thin film on a windy field, against", 0.6, "", nil)
	tearsFit      = judged("film-tears-fit", "paper, against: it tears wet, at the edge and in the setter", 0.5, "", nil)
	gasFit        = judged("film-gas-fit", "film that holds no gas on treated ground, against", 0.9, "", nil)
	springFit     = judged("film-summer-harvest-fit", "white under a berry set in spring that fruits all summer", 0.8, "", nil)
)

// The figures of the bed, surface and thickness rules stand beside their rules' needs.
var (
	slowFlat    = judged("bed-slow-flat", "flat ground that drains slowly, against", 0.9, "", nil)
	slowRaised  = judged("bed-slow-raised", "8 in and more on ground that drains slowly", 0.9, "", nil)
	quickRaised = judged("bed-quick-raised", "the highest bed on ground that drains quickly, against", 0.4, "", nil)
	heavyFrom   = judged("bed-heavy-from", "how heavy a soil must be for height to help: silt loam and heavier, not loam", 0.5, "of clay", nil)
	heavyFit    = judged("bed-heavy-fit", "8 in and more on clay", 0.6, "", nil)
	sandFit     = judged("bed-sand-fit", "the highest bed on sand, against", 0.4, "", nil)
	earlyHalf   = judged("bed-early-half", "degrees that bare ground lacks at which height counts half", 6, "°C", nil)
	usualHeight = judged("bed-usual-fit", "the height that most growers form", 0.6, "", nil)
	nearUsual   = judged("bed-near-usual-fit", "heights beside it", 0.3, "", nil)
	guideHeight = judged("bed-guide-fit", "a height that a guide names for the crop", 0.6, "", nil)
	guideHalf   = judged("bed-guide-half", "how far from a guide's height counts half", 0.15, "m", nil)
	rootsFit    = judged("bed-roots-fit", "the highest bed under deep roots", 0.5, "", nil)
	slopeHalf   = judged("bed-slope-half", "slope at which height counts half against", 10, "%", nil)
	shovelFit   = judged("bed-shovel-fit", "the highest bed where it must be shoveled, against", 0.8, "", nil)
	wetFit      = judged("bed-wet-fit", "8 in and more where the ground is wet at laying", 0.7, "", nil)
	shoulderFit = judged("bed-wind-fit", "the highest bed on a windy field, against", 0.6, "", nil)
	scarceFit   = judged("bed-scarce-fit", "the highest bed where water is scarce, against", 0.6, "", nil)
	scarceHours = judged("bed-scarce-hours", "hours of pumping a day at full leaf from which water is scarce", 8, "h", nil)
	simpleFit   = judged("bed-simple-fit", "flat ground that drains", 0.5, "", nil)
	costFit     = judged("bed-cost-fit", "film and power for the highest bed, against", 0.5, "", nil)
	weakHalf    = judged("bed-weak-half", "share of power lacking that counts half", 0.3, "share", nil)
)

var (
	hugsFit     = judged("surface-hugs-fit", "embossed film on a raised bed", 0.8, "", nil)
	flatFit     = judged("surface-flat-fit", "smooth film on flat ground", 0.8, "", nil)
	slackHalf   = judged("surface-slack-half", "hot days before harvest at which smooth film's slack counts half", 20, "days", nil)
	contactHalf = judged("surface-contact-half", "degrees that bare ground lacks at which tight contact counts half", 8, "°C", nil)
	cheapFit    = judged("surface-cheap-fit", "smooth film, which is cheaper", 0.5, "", nil)
	slidesFit   = judged("surface-slides-fit", "smooth film laid by hand", 0.5, "", nil)
	tightFit    = judged("surface-tight-fit", "embossed film on a windy field", 0.6, "", nil)

	oneSeason  = judged("thickness-one-season-fit", "1 to 1.25 mil for one season", 0.6, "", nil)
	stoutFit   = judged("thickness-stout-fit", "1.25 mil or more where something pierces or wears it", 0.5, "", nil)
	gasThick   = judged("thickness-gas-fit", "1.25 mil or more on treated ground", 0.6, "", nil)
	longBio    = judged("thickness-long-biodegradable-fit", "the thicker of films that rot, under a long crop", 0.4, "", nil)
	secondHalf = judged("thickness-second-half", "mil short of 1.25 for a second crop that count half", 0.2, "mil", nil)
	thinHalf   = judged("thickness-thin-half", "mil short of 1.25 against spears or gas that count half", 0.3, "mil", nil)
	stoneHalf  = judged("thickness-stone-half", "mil short of 1.25 on stones that count half", 0.4, "mil", nil)
	tearHalf   = judged("thickness-tear-half", "mil short of 1 at lifting that count half", 0.15, "mil", nil)
	stalkHalf  = judged("thickness-stalk-half", "mil beyond 0.6 over trash that count half", 0.6, "mil", nil)
	handHalf   = judged("thickness-handled-half", "mil beyond the thin films, handled, in wind or rotting, that count half", 0.5, "mil", nil)
	weightHalf = judged("thickness-weight-half", "mil beyond 1, bought and hauled, that count half against", 0.6, "mil", nil)
	longHalf   = judged("thickness-long-half", "mil beyond 1 under a crop that lies the winter that count half", 0.3, "mil", nil)
)

// The figures of the tape rules.
var (
	tapeSlack     = judged("tape-spacing-slack", "by which emitters may stand beyond the usual range before it counts", 0.01, "m", nil)
	gapHalf       = judged("tape-gap-half", "between emitters beyond the soil's widest, that count half", 0.1, "m", nil)
	closeHalf     = judged("tape-close-half", "between emitters short of the soil's closest, that count half", 0.3, "m", nil)
	farFrom       = judged("tape-far-from", "between emitters beyond the plants', from which some plants start far from water", 0.1, "m", nil)
	farHalf       = judged("tape-far-half", "the same that counts half", 0.3, "m", nil)
	tradeClosest  = judged("tape-trade-closest", "between emitters of what most growers use, at least: 8 in", 0.2, "m", &table.ClemsonTape)
	tradeWidest   = judged("tape-trade-widest", "the same, at most: 12 in", 0.31, "m", &table.ClemsonTape)
	tradeLow      = judged("tape-trade-low", "flow of what most growers use, at least", 0.4, "gal/min for 100 ft", &table.Practice)
	tradeHigh     = judged("tape-trade-high", "the same, at most: 0.5, and what rounding adds", 0.515, "gal/min for 100 ft", &table.Practice)
	tradeFit      = judged("tape-trade-fit", "emitters and flow that most growers use", 0.6, "", nil)
	tradeSpacing  = judged("tape-trade-spacing-fit", "emitters that most growers use, with another flow", 0.25, "", nil)
	lackHalf      = judged("tape-hours-lack-half", "hours a day that are not there that count half", 3, "h", nil)
	spareHalf     = judged("tape-hours-spare-half", "hours a day to spare that count half", 12, "h", nil)
	spareFit      = judged("tape-hours-spare-fit", "hours to spare, at most", 0.5, "", nil)
	unevenFit     = judged("tape-uneven-fit", "a line beyond the design limit, against", 0.6, "", nil)
	unevenMore    = judged("tape-uneven-more", "what a line may lose beyond that fit as it grows longer", 0.4, "", nil)
	unevenHalf    = judged("tape-uneven-half", "of flow lost beyond the design limit that counts half of it", 10, "%", nil)
	pulseFrom     = judged("tape-pulse-from", "longest run below which water must be given in pulses", 60, "min", nil)
	pulseHalf     = judged("tape-pulse-half", "minutes short of it that count half", 30, "min", nil)
	smallEmitter  = judged("tape-small-emitter", "flow of an emitter above which clogging does not count", 0.9, "L/h", nil)
	smallFrom     = judged("tape-small-from", "flow of an emitter from which clogging is counted", 0.95, "L/h", nil)
	smallHalf     = judged("tape-small-half", "flow short of it that counts half", 0.3, "L/h", nil)
	longRun       = judged("tape-long-run", "a day at full leaf from which a run is long", 3, "h", &table.Practice)
	longRunHalf   = judged("tape-long-run-half", "hours beyond it that count half", 4, "h", nil)
	slopeFrom     = judged("tape-slope-from", "slope from which less flow keeps the ends more alike", 2, "%", nil)
	slopeFit      = judged("tape-slope-fit", "flow on a slope, at most, against", 0.5, "", nil)
	flowHalf      = judged("tape-flow-half", "flow of tape that counts half, on a slope or at little pressure", 400, "L/h for 100 m", nil)
	closeFrom     = judged("tape-close-from", "between emitters up to which they cost a little more", 0.21, "m", nil)
	closeCostHalf = judged("tape-close-cost-half", "between emitters short of 12 in that costs half", 0.3, "m", nil)
	wideFit       = judged("tape-wide-fit", "tape of a wide bore, against", 0.8, "", nil)
	littlePush    = judged("tape-little-pressure", "pressure below which flow counts", 40, "kPa", nil)
)

// The figures of the wait.
var (
	waitHalf  = judged("wait-half", "days of waiting that show half", 60, "days", nil)
	dryWait   = judged("wait-dry", "to water dry ground through", 2, "days", nil)
	wetWait   = judged("wait-wet", "for wet ground to drain", 5, "days", nil)
	clearLead = judged("wait-clear", "by which the longest wait leads where the answer is clear", 7, "days", nil)
	labelDays = judged("wait-label-unknown", "from treatment to planting while the label is not known: pages name two to three weeks", 21, "days", &table.FumigantShort)
)

// Where the film, bed, surface and thickness rules begin to speak.
var (
	leastHours  = judged("film-least-hours", "of weeding saved that are worth a word", 0.1, "h", nil)
	passesSun   = judged("film-passes-sun", "of the sun passed from which film is said to pass it", 0.2, "share", nil)
	holdsAll    = judged("film-holds-all", "of the light passed below which film holds the annual weeds", 0.02, "share", nil)
	holdsNone   = judged("film-holds-none", "of the light held up to which film holds no weeds at all", 0.05, "share", nil)
	wholeCover  = judged("film-whole-cover", "cover left after two crops that counts as whole", 95, "%", nil)
	pastHarvest = judged("film-past-harvest", "that film must last beyond the latest harvest day", 10, "days", nil)
	usualWhole  = judged("film-usual-whole", "of film that is down, taken to be whole where nobody counted", 80, "%", nil)
	secondHot   = judged("film-second-hot", "hot days before harvest from which a second crop starts in summer", 10, "days", nil)
	litterWidth = judged("film-litter-width", "width of film that litter is told for: 4 ft", 4*unit.MetresPerFoot, "m", nil)
	sizeSlack   = judged("bed-size-slack", "by which a height may miss a guide's and still be it", 0.005, "m", nil)
	sandyTo     = judged("bed-sandy-to", "how heavy a soil may be and still count as sand", 0.2, "of clay", nil)
	sandFade    = judged("bed-sand-fade", "how fast sand's share of a rule falls as soil gets heavier", 2, "times", nil)
	deepRoots   = judged("bed-deep-roots", "depth of roots from which they use loose height", 0.45, "m", nil)
	levelTo     = judged("bed-level-to", "slope up to which height does not count against", 3, "%", nil)
	tellable    = judged("surface-tellable", "of soil warmth, the least difference that a sentence tells", 0.5, "K", nil)
	stoutMil    = judged("thickness-stout", "film that stands stones, spears, gas and a second crop", 1.25, "mil", nil)
	milSlack    = judged("thickness-slack", "by which a thickness may miss a round one and still be it", 0.01, "mil", nil)
	soldSlack   = judged("thickness-sold-slack", "by which a thickness may miss what is sold", 0.5, "µm", nil)
	stalkFrom   = judged("thickness-stalk-from", "film from which more stands more stalks, or is slower to rot", 0.6, "mil", nil)
	handFrom    = judged("thickness-handled-from", "film from which more is easier to handle and stands wind", 0.9, "mil", nil)
	longBioFrom = judged("thickness-long-biodegradable-from", "film that rots, thick enough for a long crop", 0.7, "mil", nil)
	longCrop    = judged("thickness-long-crop", "that a crop stands beyond which it is long, on film that rots", 100, "days", nil)
	winterCrop  = judged("thickness-winter-crop", "that a crop stands from which it lies the winter", 180, "days", nil)
)

// How scores are told.
var (
	leadHalf    = judged("weigh-lead-half", "points ahead that show half of a lead", 2, "points", nil)
	leastPoints = judged("weigh-least", "points below which a reason is not told: it shows as nothing beside it", 0.005, "points", nil)
)

// The figures that tell when film may not be laid, and those of tractors, are constants
// in their files, since other rooms read them too; [Judgements] lists them.

// judgements are all of them, for "explain".
var judgements = [...]*figure{
	&daysHalf, &heatHalf, &paleFrom, &paleTop, &paleHalf, &silverPale, &harvestLeft, &coldFull, &hoursLight, &hoursModerate, &hoursHeavy, &underFilm, &underOrganic, &hoursHalf,
	&sownFit, &setOutFit, &yellowBlack, &yellowPale, &yellowPaper, &yellowHeavy, &purplePaper, &purpleLight, &purplePlastic,
	&virusSilver, &virusOther, &insectsOnly, &mayCome, &lateAir, &thripsHere, &thripsMayCome, &gainHalf, &gainDoubtHalf, &gainMixed, &mixedFit,
	&priceHalf, &litterFit, &litterSoil, &coverHalf, &coverLeast, &lifeHalf, &secondPale, &secondDark, &commonFit, &windFit, &tearsFit, &gasFit, &springFit,
	&slowFlat, &slowRaised, &quickRaised, &heavyFrom, &heavyFit, &sandFit, &earlyHalf, &usualHeight, &nearUsual, &guideHeight, &guideHalf, &rootsFit, &slopeHalf,
	&shovelFit, &wetFit, &shoulderFit, &scarceFit, &scarceHours, &simpleFit, &costFit, &weakHalf,
	&hugsFit, &flatFit, &slackHalf, &contactHalf, &cheapFit, &slidesFit, &tightFit,
	&oneSeason, &stoutFit, &gasThick, &longBio, &secondHalf, &thinHalf, &stoneHalf, &tearHalf, &stalkHalf, &handHalf, &weightHalf, &longHalf,
	&tapeSlack, &gapHalf, &closeHalf, &farFrom, &farHalf, &tradeClosest, &tradeWidest, &tradeLow, &tradeHigh, &tradeFit, &tradeSpacing, &lackHalf,
	&spareHalf, &spareFit, &unevenFit, &unevenMore, &unevenHalf, &pulseFrom, &pulseHalf, &smallEmitter, &smallFrom, &smallHalf, &longRun, &longRunHalf,
	&slopeFrom, &slopeFit, &flowHalf, &closeFrom, &closeCostHalf, &wideFit, &littlePush, &waitHalf, &dryWait, &wetWait, &clearLead, &labelDays,
	&leastHours, &passesSun, &holdsAll, &holdsNone, &wholeCover, &pastHarvest, &usualWhole, &secondHot, &litterWidth, &sizeSlack, &sandyTo, &sandFade,
	&deepRoots, &levelTo, &tellable, &stoutMil, &milSlack, &soldSlack, &stalkFrom, &handFrom, &longBioFrom, &longCrop, &winterCrop, &leadHalf,
	&leastPoints,
}

// Judgements lists every figure that the rules weigh with and no table gives.
func Judgements() []unit.Judgement {
	list := make([]unit.Judgement, 0, 200)
	for _, f := range judgements {
		list = append(list, f.row())
	}
	list = append(list, []unit.Judgement{
		{ID: "weigh-slight", Means: "weight of a slight rule", Value: float64(Slight), Unit: "points"},
		{ID: "weigh-plain", Means: "weight of a plain rule", Value: float64(Plain), Unit: "points"},
		{ID: "weigh-strong", Means: "weight of a strong rule", Value: float64(Strong), Unit: "points"},
		{ID: "weigh-tie", Means: "ahead below which two answers are called a tie: a sixth of a plain rule", Value: TieMargin, Unit: "points"},
		{ID: "gate-many-holes", Means: "sown plants on a square metre of bed from which film is refused", Value: manyHoles},
		{ID: "gate-some-holes", Means: "the same from which film asks for care", Value: someHoles},
		{ID: "gate-steep", Means: "slope above which film is refused", Value: steepSlope, Unit: "%"},
		{ID: "gate-mild", Means: "slope above which film asks for care", Value: MildSlope, Unit: "%"},
		{ID: "gate-heavy-loss", Means: "of the yield lost to salt above which film is refused", Value: heavyLoss, Unit: "%"},
		{ID: "gate-some-loss", Means: "of the yield lost to salt above which film asks for care", Value: SomeLoss, Unit: "%"},
		{ID: "gate-light-tractor", Means: "tractor below which stones refuse film: 30 hp", Value: lightTractor, Unit: "kW"},
		{ID: "gate-rare-frost", Means: "of years with frost after the wanted day above which care is asked for", Value: rareFrost},
		{ID: "gate-cover-frost", Means: "of years with frost after planting above which tender crops want covers", Value: coverFrost},
		{ID: "gate-large-by-hand", Means: "of bed by hand above which care is asked for: half an acre", Value: float64(largeByHand), Unit: "m²"},
		{ID: "gate-out-of-season", Means: "from the wanted day to the next that will do above which it is out of season", Value: outOfSeason, Unit: "days"},
		{ID: "gate-short-season", Means: "thirds of the days to harvest that must be left before autumn frost", Value: shortThirds},
		{ID: "gate-hot-days", Means: "of the first 60 above the ceiling under white film above which care is asked for", Value: hotDays, Unit: "days"},
		{ID: "gate-worn", Means: "of the old film whole below which care is asked for", Value: wornCover, Unit: "%"},
		{ID: "gate-every-year", Means: "of years from which it is said to be nearly every year", Value: nearlyEvery},
		{ID: "bed-walk-power", Means: "power of the strongest walk-behind tractors", Value: float64(LeastWalk), Unit: "kW", Source: unit.FromMemory},
		{ID: "bed-power-slack", Means: "by which a tractor may miss the power for a bed", Value: PowerSlack, Unit: "kW"},
		{ID: "film-density", Means: "of polyethylene", Value: FilmDensity, Unit: "kg/m³", Source: table.FilmYieldConstant.Named()},
		{ID: "place-far-station", Means: "to the station beyond which it is said to be far", Value: farStation, Unit: "m"},
	}...)
	for o, power := range LeastPower {
		j := unit.Judgement{ID: "bed-power-" + question.Bed.Key(question.Option(o)), Means: "power that forms a bed of this height and lays on it in one pass", Value: float64(power), Unit: "kW"}
		switch o {
		case 0:
			j.Source = unit.FromMemory
		case 1, 2:
			j.Source = table.CompactLayers.Named()
		default:
			j.Source = unit.CommonPractice
		}
		list = append(list, j)
	}
	return list
}
