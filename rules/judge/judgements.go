package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The rules weigh with these figures, which no table of the trade gives. A fit runs from
// 0 to 1; a half is where a slope counts half. [Judgements] says of each what it means,
// in which unit, and whose it is.

// The figures of the film rules. A "half" is where a consequence counts half of what
// its rule can weigh; it never goes flat, so that no two films tie far out.
const (
	daysHalf      = 20
	heatHalf      = 10
	paleFrom      = 21
	paleTop       = 24
	paleHalf      = 3
	silverPale    = 0.5
	harvestLeft   = 80
	coldFull      = 3.9
	hoursLight    = 0.5
	hoursModerate = 1.5
	hoursHeavy    = 4
	underFilm     = 2.0
	underOrganic  = 3.0
	hoursHalf     = 3
	sownFit       = 0.5
	setOutFit     = 0.6
	yellowBlack   = 0.3
	yellowPale    = 0.2
	yellowPaper   = 0.5
	yellowHeavy   = 1
	purplePaper   = 0.9
	purpleLight   = 0.3
	purplePlastic = 0.5
	virusSilver   = 0.9
	virusOther    = 0.4
	insectsOnly   = 0.6
	mayCome       = 0.1
	lateAir       = 18
	thripsHere    = 1
	thripsMayCome = 0.5
	gainHalf      = 30
	gainDoubtHalf = 60
	gainMixed     = 0.3
	mixedFit      = 0.7
	priceHalf     = 1.5
	litterFit     = 0.3
	coverHalf     = 25
	coverLeast    = 30
	lifeHalf      = 25
	secondPale    = 0.3
	secondDark    = 0.2
	commonFit     = 0.5
	windFit       = 0.6
	tearsFit      = 0.5
	gasFit        = 0.9
	springFit     = 0.8
)

// The figures of the bed, surface and thickness rules stand beside their rules' needs.
const (
	slowFlat    = 0.9
	slowRaised  = 0.9
	quickRaised = 0.4
	heavyFrom   = 0.5
	heavyFit    = 0.6
	sandFit     = 0.4
	earlyHalf   = 6
	usualHeight = 0.6
	nearUsual   = 0.3
	guideHeight = 0.6
	guideHalf   = 0.15
	rootsFit    = 0.5
	slopeHalf   = 10
	shovelFit   = 0.8
	wetFit      = 0.7
	shoulderFit = 0.6
	scarceFit   = 0.6
	scarceHours = 8
	simpleFit   = 0.5
	costFit     = 0.5
	weakHalf    = 0.3
)

const (
	hugsFit     = 0.8
	flatFit     = 0.8
	slackHalf   = 20
	contactHalf = 8
	cheapFit    = 0.5
	slidesFit   = 0.5
	tightFit    = 0.6

	oneSeason  = 0.6
	stoutFit   = 0.5
	gasThick   = 0.6
	longBio    = 0.4
	secondHalf = 0.2
	thinHalf   = 0.3
	stoneHalf  = 0.4
	tearHalf   = 0.15
	stalkHalf  = 0.6
	handHalf   = 0.5
	weightHalf = 0.6
	longHalf   = 0.3
)

// The figures of the tape rules.
const (
	gapHalf       = 0.1
	gapFit        = 0.8
	closeHalf     = 0.3
	farFrom       = 0.1
	farHalf       = 0.3
	tradeClosest  = 0.2
	tradeWidest   = 0.31
	tradeLow      = 0.4
	tradeHigh     = 0.515
	tradeFit      = 0.6
	tradeSpacing  = 0.25
	lackHalf      = 3
	spareHalf     = 12
	spareFit      = 0.5
	unevenFit     = 0.6
	unevenMore    = 0.4
	unevenHalf    = 10
	pulseFrom     = 60
	pulseHalf     = 30
	smallEmitter  = 0.9
	smallFrom     = 0.95
	smallHalf     = 0.3
	longRun       = 3
	longRunHalf   = 4
	slopeFrom     = 2
	slopeFit      = 0.5
	flowHalf      = 400
	closeFrom     = 0.21
	closeCostHalf = 0.3
	wideFit       = 0.8
	littlePush    = 40
)

// The figures of the wait.
const (
	waitHalf  = 60
	dryWait   = 2
	wetWait   = 5
	clearLead = 7
	labelDays = 21
)

// Where the film, bed, surface and thickness rules begin to speak.
const (
	leastHours  = 0.1
	passesSun   = 0.2
	holdsAll    = 0.02
	holdsNone   = 0.05
	wholeCover  = 95
	pastHarvest = 10
	usualWhole  = 80
	secondHot   = 10
	litterWidth = 4 * unit.MetresPerFoot
	sizeSlack   = 0.005
	sandyTo     = 0.2
	sandFade    = 2
	deepRoots   = 0.45
	levelTo     = 3
	tellable    = 0.5
	noneLeft    = 99.5
	stoutMil    = 1.25
	milSlack    = 0.01
	soldSlack   = 0.5
	stalkFrom   = 0.6
	handFrom    = 0.9
	longBioFrom = 0.7
	longCrop    = 100
	winterCrop  = 180
)

// How scores are told.
const (
	leadHalf    = 2
	leastPoints = 0.005
)

// Judgements lists every figure that the rules weigh with and no table gives.
func Judgements() []unit.Judgement {
	list := []unit.Judgement{
		{ID: "film-days-half", Means: "days earlier, or later, that count half", Value: daysHalf, Unit: "days"},
		{ID: "film-heat-half", Means: "days lost to heat that count half", Value: heatHalf, Unit: "days"},
		{ID: "film-pale-from", Means: "usual air at planting above which white begins to count under warm crops (and cool ones, unless their best months end sooner), and below which spring keeps to black: in Delaware guides change in mid-June, at 22 °C", Value: paleFrom, Unit: "°C", Source: table.LateSwitch.Named()},
		{ID: "film-pale-top", Means: "top of the best months of the crops that the guides name, tomato and pepper; what a crop bears beyond it puts white off as far", Value: paleTop, Unit: "°C", Source: table.LateSwitch.Named()},
		{ID: "film-pale-half", Means: "degrees above it, or above a cool crop's best months, at which white counts half", Value: paleHalf, Unit: "°C"},
		{ID: "film-silver-in-heat", Means: "what silver counts beside white in heat: guides name white, and keep silver for insects", Value: silverPale, Unit: "share"},
		{ID: "film-short-harvest", Means: "days of harvest before frost below which a season is short", Value: harvestLeft, Unit: "days"},
		{ID: "film-cold-full", Means: "degrees below its best roots, under black, at which a short season counts whole: as many as the warmest film adds to black, 8 to 14 °F against 3 to 5", Value: coldFull, Unit: "°C", Source: table.NewEngland.Named()},
		{ID: "film-weeding-light", Means: "weeding of 100 ft of bare bed in a season, light weeds", Value: hoursLight, Unit: "h"},
		{ID: "film-weeding-moderate", Means: "weeding of 100 ft of bare bed in a season, moderate weeds", Value: hoursModerate, Unit: "h"},
		{ID: "film-weeding-heavy", Means: "weeding of 100 ft of bare bed in a season, heavy weeds", Value: hoursHeavy, Unit: "h"},
		{ID: "film-weeding-under", Means: "how many times longer a weed takes under film, where no hoe reaches", Value: underFilm, Unit: "times"},
		{ID: "film-weeding-under-organic", Means: "the same where no spray may be used before laying", Value: underOrganic, Unit: "times"},
		{ID: "film-weeding-half", Means: "hours of weeding saved on 100 ft of bed that count half", Value: hoursHalf, Unit: "h"},
		{ID: "film-sown-fit", Means: "clear film over seed", Value: sownFit},
		{ID: "film-set-out-fit", Means: "clear film over transplants, against", Value: setOutFit},
		{ID: "film-yellow-black", Means: "black against yellow nutsedge", Value: yellowBlack},
		{ID: "film-yellow-pale", Means: "white and silver against yellow nutsedge, against", Value: yellowPale},
		{ID: "film-yellow-paper", Means: "paper against yellow nutsedge, weeds light or moderate", Value: yellowPaper},
		{ID: "film-yellow-paper-heavy", Means: "paper against yellow nutsedge, weeds heavy: in Tennessee it was best", Value: yellowHeavy, Source: table.PaperNutsedge2018.Named()},
		{ID: "film-purple-paper", Means: "paper against purple nutsedge", Value: purplePaper},
		{ID: "film-purple-light", Means: "film that passes light against purple nutsedge: trials differ", Value: purpleLight},
		{ID: "film-purple-plastic", Means: "other plastic against purple nutsedge, against", Value: purplePlastic},
		{ID: "film-virus-silver", Means: "silver where carriers are and the crop takes their virus", Value: virusSilver},
		{ID: "film-virus-white", Means: "white where carriers are and the crop takes their virus", Value: virusOther},
		{ID: "film-insects-only", Means: "silver where thrips are and the crop is an onion or its kin, which they harm by feeding", Value: insectsOnly, Source: table.SilverOnion2006.Named()},
		{ID: "film-carriers-may-come", Means: "silver where no insects were named", Value: mayCome},
		{ID: "film-late-air", Means: "usual air at planting above which carriers are about, where none were named", Value: lateAir, Unit: "°C"},
		{ID: "film-thrips-here", Means: "blue where thrips are, against", Value: thripsHere},
		{ID: "film-thrips-may-come", Means: "blue on a crop that takes virus from thrips, against", Value: thripsMayCome},
		{ID: "film-gain-half", Means: "a yield gain on which trials agree that counts half", Value: gainHalf, Unit: "%"},
		{ID: "film-gain-doubt-half", Means: "the best of gains on which trials disagree that counts half", Value: gainDoubtHalf, Unit: "%"},
		{ID: "film-gain-mixed", Means: "a film that lost in some trials on the crop, against", Value: gainMixed},
		{ID: "film-mixed-fit", Means: "red and blue, against: trials disagree", Value: mixedFit},
		{ID: "film-price-half", Means: "price beyond black's that counts half", Value: priceHalf, Unit: "times"},
		{ID: "film-litter-fit", Means: "film that must be lifted and hauled, against", Value: litterFit},
		{ID: "film-cover-half", Means: "cover gone after two crops that counts half", Value: coverHalf, Unit: "%"},
		{ID: "film-cover-least", Means: "cover left below which a film cannot carry a second crop", Value: coverLeast, Unit: "%"},
		{ID: "film-life-half", Means: "days that a film gives out before the harvest ends that count half", Value: lifeHalf, Unit: "days"},
		{ID: "film-second-pale", Means: "pale film where the second crop starts in summer", Value: secondPale},
		{ID: "film-second-dark", Means: "dark film where the second crop starts in summer, against: it can be painted", Value: secondDark},
		{ID: "film-common-fit", Means: "black, the film that is everywhere", Value: commonFit},
		{ID: "film-wind-fit", Means: "paper and thin film on a windy field, against", Value: windFit},
		{ID: "film-tears-fit", Means: "paper, against: it tears wet, at the edge and in the setter", Value: tearsFit},
		{ID: "film-gas-fit", Means: "film that holds no gas on treated ground, against", Value: gasFit},
		{ID: "film-summer-harvest-fit", Means: "white under a berry set in spring that fruits all summer", Value: springFit},
		{ID: "bed-slow-flat", Means: "flat ground that drains slowly, against", Value: slowFlat},
		{ID: "bed-slow-raised", Means: "8 in and more on ground that drains slowly", Value: slowRaised},
		{ID: "bed-quick-raised", Means: "the highest bed on ground that drains quickly, against", Value: quickRaised},
		{ID: "bed-heavy-from", Means: "how heavy a soil must be for height to help: silt loam and heavier, not loam", Value: heavyFrom, Unit: "of clay"},
		{ID: "bed-heavy-fit", Means: "8 in and more on clay", Value: heavyFit},
		{ID: "bed-sand-fit", Means: "the highest bed on sand, against", Value: sandFit},
		{ID: "bed-early-half", Means: "degrees that bare ground lacks at which height counts half", Value: earlyHalf, Unit: "°C"},
		{ID: "bed-usual-fit", Means: "the height that most growers form", Value: usualHeight},
		{ID: "bed-near-usual-fit", Means: "heights beside it", Value: nearUsual},
		{ID: "bed-guide-fit", Means: "a height that a guide names for the crop", Value: guideHeight},
		{ID: "bed-guide-half", Means: "how far from a guide's height counts half", Value: guideHalf, Unit: "m"},
		{ID: "bed-roots-fit", Means: "the highest bed under deep roots", Value: rootsFit},
		{ID: "bed-slope-half", Means: "slope at which height counts half against", Value: slopeHalf, Unit: "%"},
		{ID: "bed-shovel-fit", Means: "the highest bed where it must be shoveled, against", Value: shovelFit},
		{ID: "bed-wet-fit", Means: "8 in and more where the ground is wet at laying", Value: wetFit},
		{ID: "bed-wind-fit", Means: "the highest bed on a windy field, against", Value: shoulderFit},
		{ID: "bed-scarce-fit", Means: "the highest bed where water is scarce, against", Value: scarceFit},
		{ID: "bed-scarce-hours", Means: "hours of pumping a day at full leaf from which water is scarce", Value: scarceHours, Unit: "h"},
		{ID: "bed-simple-fit", Means: "flat ground that drains", Value: simpleFit},
		{ID: "bed-cost-fit", Means: "film and power for the highest bed, against", Value: costFit},
		{ID: "bed-weak-half", Means: "share of power lacking that counts half", Value: weakHalf, Unit: "share"},
		{ID: "surface-hugs-fit", Means: "embossed film on a raised bed", Value: hugsFit},
		{ID: "surface-flat-fit", Means: "smooth film on flat ground", Value: flatFit},
		{ID: "surface-slack-half", Means: "hot days before harvest at which smooth film's slack counts half", Value: slackHalf, Unit: "days"},
		{ID: "surface-contact-half", Means: "degrees that bare ground lacks at which tight contact counts half", Value: contactHalf, Unit: "°C"},
		{ID: "surface-cheap-fit", Means: "smooth film, which is cheaper", Value: cheapFit},
		{ID: "surface-slides-fit", Means: "smooth film laid by hand", Value: slidesFit},
		{ID: "surface-tight-fit", Means: "embossed film on a windy field", Value: tightFit},
		{ID: "thickness-one-season-fit", Means: "1 to 1.25 mil for one season", Value: oneSeason},
		{ID: "thickness-stout-fit", Means: "1.25 mil or more where something pierces or wears it", Value: stoutFit},
		{ID: "thickness-gas-fit", Means: "1.25 mil or more on treated ground", Value: gasThick},
		{ID: "thickness-long-biodegradable-fit", Means: "the thicker of films that rot, under a long crop", Value: longBio},
		{ID: "thickness-second-half", Means: "mil short of 1.25 for a second crop that count half", Value: secondHalf, Unit: "mil"},
		{ID: "thickness-thin-half", Means: "mil short of 1.25 against spears or gas that count half", Value: thinHalf, Unit: "mil"},
		{ID: "thickness-stone-half", Means: "mil short of 1.25 on stones that count half", Value: stoneHalf, Unit: "mil"},
		{ID: "thickness-tear-half", Means: "mil short of 1 at lifting that count half", Value: tearHalf, Unit: "mil"},
		{ID: "thickness-stalk-half", Means: "mil beyond 0.6 over trash that count half", Value: stalkHalf, Unit: "mil"},
		{ID: "thickness-handled-half", Means: "mil beyond the thin films, handled, in wind or rotting, that count half", Value: handHalf, Unit: "mil"},
		{ID: "thickness-weight-half", Means: "mil beyond 1, bought and hauled, that count half against", Value: weightHalf, Unit: "mil"},
		{ID: "thickness-long-half", Means: "mil beyond 1 under a crop that lies the winter that count half", Value: longHalf, Unit: "mil"},
		{ID: "tape-spacing-slack", Means: "by which emitters may stand beyond the usual range before it counts", Value: float64(facts.SpacingSlack), Unit: "m"},
		{ID: "tape-gap-fit", Means: "dry gaps where tape with closer emitters waters the bed evenly, against", Value: gapFit},
		{ID: "tape-gap-half", Means: "between emitters beyond the soil's widest, that count half", Value: gapHalf, Unit: "m"},
		{ID: "tape-close-half", Means: "between emitters short of the soil's closest, that count half", Value: closeHalf, Unit: "m"},
		{ID: "tape-far-from", Means: "between emitters beyond the plants', from which some plants start far from water", Value: farFrom, Unit: "m"},
		{ID: "tape-far-half", Means: "the same that counts half", Value: farHalf, Unit: "m"},
		{ID: "tape-trade-closest", Means: "between emitters of what most growers use, at least: 8 in", Value: tradeClosest, Unit: "m", Source: table.ClemsonTape.Named()},
		{ID: "tape-trade-widest", Means: "the same, at most: 12 in", Value: tradeWidest, Unit: "m", Source: table.ClemsonTape.Named()},
		{ID: "tape-trade-low", Means: "flow of what most growers use, at least", Value: tradeLow, Unit: "gal/min for 100 ft", Source: table.Practice.Named()},
		{ID: "tape-trade-high", Means: "the same, at most: 0.5, and what rounding adds", Value: tradeHigh, Unit: "gal/min for 100 ft", Source: table.Practice.Named()},
		{ID: "tape-trade-fit", Means: "emitters and flow that most growers use", Value: tradeFit},
		{ID: "tape-trade-spacing-fit", Means: "emitters that most growers use, with another flow", Value: tradeSpacing},
		{ID: "tape-hours-lack-half", Means: "hours a day that are not there that count half", Value: lackHalf, Unit: "h"},
		{ID: "tape-hours-spare-half", Means: "hours a day to spare that count half", Value: spareHalf, Unit: "h"},
		{ID: "tape-hours-spare-fit", Means: "hours to spare, at most", Value: spareFit},
		{ID: "tape-uneven-fit", Means: "a line beyond the design limit, against", Value: unevenFit},
		{ID: "tape-uneven-more", Means: "what a line may lose beyond that fit as it grows longer", Value: unevenMore},
		{ID: "tape-uneven-half", Means: "of flow lost beyond the design limit that counts half of it", Value: unevenHalf, Unit: "%"},
		{ID: "tape-pulse-from", Means: "longest run below which water must be given in pulses", Value: pulseFrom, Unit: "min"},
		{ID: "tape-pulse-half", Means: "minutes short of it that count half", Value: pulseHalf, Unit: "min"},
		{ID: "tape-small-emitter", Means: "flow of an emitter above which clogging does not count", Value: smallEmitter, Unit: "L/h"},
		{ID: "tape-small-from", Means: "flow of an emitter from which clogging is counted", Value: smallFrom, Unit: "L/h"},
		{ID: "tape-small-half", Means: "flow short of it that counts half", Value: smallHalf, Unit: "L/h"},
		{ID: "tape-long-run", Means: "a day at full leaf from which a run is long", Value: longRun, Unit: "h", Source: table.Practice.Named()},
		{ID: "tape-long-run-half", Means: "hours beyond it that count half", Value: longRunHalf, Unit: "h"},
		{ID: "tape-slope-from", Means: "slope from which less flow keeps the ends more alike", Value: slopeFrom, Unit: "%"},
		{ID: "tape-slope-fit", Means: "flow on a slope, at most, against", Value: slopeFit},
		{ID: "tape-flow-half", Means: "flow of tape that counts half, on a slope or at little pressure", Value: flowHalf, Unit: "L/h for 100 m"},
		{ID: "tape-close-from", Means: "between emitters up to which they cost a little more", Value: closeFrom, Unit: "m"},
		{ID: "tape-close-cost-half", Means: "between emitters short of 12 in that costs half", Value: closeCostHalf, Unit: "m"},
		{ID: "tape-wide-fit", Means: "tape of a wide bore, against", Value: wideFit},
		{ID: "tape-little-pressure", Means: "pressure below which flow counts", Value: littlePush, Unit: "kPa"},
		{ID: "wait-half", Means: "days of waiting that show half", Value: waitHalf, Unit: "days"},
		{ID: "wait-dry", Means: "to water dry ground through", Value: dryWait, Unit: "days"},
		{ID: "wait-wet", Means: "for wet ground to drain", Value: wetWait, Unit: "days"},
		{ID: "wait-clear", Means: "by which the longest wait leads where the answer is clear", Value: clearLead, Unit: "days"},
		{ID: "wait-label-unknown", Means: "from treatment to planting while the label is not known: pages name two to three weeks", Value: labelDays, Unit: "days", Source: table.FumigantShort.Named()},
		{ID: "film-least-hours", Means: "of weeding saved that are worth a word", Value: leastHours, Unit: "h"},
		{ID: "film-passes-sun", Means: "of the sun passed from which film is said to pass it", Value: passesSun, Unit: "share"},
		{ID: "film-holds-all", Means: "of the light passed below which film holds the annual weeds", Value: holdsAll, Unit: "share"},
		{ID: "film-holds-none", Means: "of the light held up to which film holds no weeds at all", Value: holdsNone, Unit: "share"},
		{ID: "film-whole-cover", Means: "cover left after two crops that counts as whole", Value: wholeCover, Unit: "%"},
		{ID: "film-past-harvest", Means: "that film must last beyond the latest harvest day", Value: pastHarvest, Unit: "days"},
		{ID: "film-usual-whole", Means: "of film that is down, taken to be whole where nobody counted", Value: usualWhole, Unit: "%"},
		{ID: "film-second-hot", Means: "hot days before harvest from which a second crop starts in summer", Value: secondHot, Unit: "days"},
		{ID: "film-litter-width", Means: "width of film that litter is told for: 4 ft", Value: litterWidth, Unit: "m"},
		{ID: "bed-size-slack", Means: "by which a height may miss a guide's and still be it", Value: sizeSlack, Unit: "m"},
		{ID: "bed-sandy-to", Means: "how heavy a soil may be and still count as sand", Value: sandyTo, Unit: "of clay"},
		{ID: "bed-sand-fade", Means: "how fast sand's share of a rule falls as soil gets heavier", Value: sandFade, Unit: "times"},
		{ID: "bed-deep-roots", Means: "depth of roots from which they use loose height", Value: deepRoots, Unit: "m"},
		{ID: "bed-level-to", Means: "slope up to which height does not count against", Value: levelTo, Unit: "%"},
		{ID: "tape-none-left", Means: "spread along a line from which its end is said to get no water", Value: noneLeft, Unit: "%"},
		{ID: "surface-tellable", Means: "of soil warmth, the least difference that a sentence tells", Value: tellable, Unit: "K"},
		{ID: "thickness-stout", Means: "film that stands stones, spears, gas and a second crop", Value: stoutMil, Unit: "mil"},
		{ID: "thickness-slack", Means: "by which a thickness may miss a round one and still be it", Value: milSlack, Unit: "mil"},
		{ID: "thickness-sold-slack", Means: "by which a thickness may miss what is sold", Value: soldSlack, Unit: "µm"},
		{ID: "thickness-stalk-from", Means: "film from which more stands more stalks, or is slower to rot", Value: stalkFrom, Unit: "mil"},
		{ID: "thickness-handled-from", Means: "film from which more is easier to handle and stands wind", Value: handFrom, Unit: "mil"},
		{ID: "thickness-long-biodegradable-from", Means: "film that rots, thick enough for a long crop", Value: longBioFrom, Unit: "mil"},
		{ID: "thickness-long-crop", Means: "that a crop stands beyond which it is long, on film that rots", Value: longCrop, Unit: "days"},
		{ID: "thickness-winter-crop", Means: "that a crop stands from which it lies the winter", Value: winterCrop, Unit: "days"},
		{ID: "weigh-lead-half", Means: "points ahead that show half of a lead", Value: leadHalf, Unit: "points"},
		{ID: "weigh-least", Means: "points below which a reason is not told: it shows as nothing beside it", Value: leastPoints, Unit: "points"},
		{ID: "weigh-slight", Means: "weight of a slight rule", Value: float64(Slight), Unit: "points"},
		{ID: "weigh-plain", Means: "weight of a plain rule", Value: float64(Plain), Unit: "points"},
		{ID: "weigh-strong", Means: "weight of a strong rule", Value: float64(Strong), Unit: "points"},
		{ID: "weigh-tie", Means: "ahead below which two answers are called a tie: a sixth of a plain rule", Value: TieMargin, Unit: "points"},
		{ID: "gate-many-holes", Means: "sown plants on a square meter of bed from which film is refused", Value: manyHoles},
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
		{ID: "gate-crown-days", Means: "that strawberries want before the usual hard frost: eight published last days fall 29 to 55 days before it", Value: crownDays, Unit: "days", Source: table.StrawberryDates.Named()},
		{ID: "gate-picking-pays", Means: "between a tender crop's first harvest and frost, below which it asks for care", Value: PickingPays, Unit: "days", Source: table.VirginiaFall.Named()},
		{ID: "gate-mild-winter", Means: "of frost a year below which the day of the first says too little to refuse", Value: mildWinter, Unit: "days"},
		{ID: "gate-fall-slows", Means: "that short, cool days add to a harvest in the fall", Value: fallSlows, Unit: "days", Source: table.VirginiaFall.Named()},
		{ID: "gate-spring-rises", Means: "by which the planting day is warmer than the coldest of the year, from which on it is spring", Value: springRises, Unit: "K"},
		{ID: "gate-hot-days", Means: "of the first 60 above the ceiling under white film above which care is asked for", Value: hotDays, Unit: "days"},
		{ID: "gate-worn", Means: "of the old film whole below which care is asked for", Value: wornCover, Unit: "%"},
		{ID: "gate-every-year", Means: "of years from which it is said to be nearly every year", Value: nearlyEvery},
		{ID: "bed-walk-power", Means: "power of the strongest walk-behind tractors", Value: float64(LeastWalk), Unit: "kW", Source: unit.FromMemory},
		{ID: "bed-power-slack", Means: "by which a tractor may miss the power for a bed", Value: PowerSlack, Unit: "kW"},
		{ID: "film-density", Means: "of polyethylene", Value: FilmDensity, Unit: "kg/m³", Source: table.FilmYieldConstant.Named()},
		{ID: "place-other-height", Means: "of height between station and field from which it is told", Value: otherHeight, Unit: "m"},
		{ID: "gate-another-place", Means: "to the station beyond which its climate may be another", Value: anotherPlace, Unit: "m"},
		{ID: "place-far-station", Means: "to the station beyond which it is said to be far", Value: farStation, Unit: "m"},
	}
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
