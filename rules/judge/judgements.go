package judge

import "filmfurrow/rules/table"

// Judgement is a figure that a rule weighs with and that no table of the trade gives:
// what it means, and whose it is. Where a source names it, that stands beside it.
type Judgement struct {
	ID     string
	Means  string
	Value  float64
	Unit   string        // "" for a fit, which runs from −1 to +1
	Source *table.Source // nil: our judgement
}

// Whose tells where the figure comes from.
func (j *Judgement) Whose() string {
	if j.Source == nil {
		return "our judgment"
	}
	return j.Source.Publisher + ": " + j.Source.Title
}

// The figures of the film rules. A "half" is where a consequence counts half of what
// its rule can weigh; it never goes flat, so that no two films tie far out.
var (
	daysHalf      = Judgement{ID: "film-days-half", Means: "days earlier, or later, that count half", Value: 20, Unit: "days"}
	heatHalf      = Judgement{ID: "film-heat-half", Means: "days lost to heat that count half", Value: 10, Unit: "days"}
	paleFrom      = Judgement{ID: "film-pale-from", Means: "usual air at planting above which white begins to count under warm crops: in Delaware guides change in mid-June, at 22 °C", Value: 21, Unit: "°C", Source: &table.LateSwitch}
	paleTop       = Judgement{ID: "film-pale-top", Means: "top of the best months of the crops that the guides name, tomato and pepper; what a crop bears beyond it puts white off as far", Value: 24, Unit: "°C", Source: &table.LateSwitch}
	paleHalf      = Judgement{ID: "film-pale-half", Means: "degrees above it, or above a cool crop's best months, at which white counts half", Value: 3, Unit: "°C"}
	silverPale    = Judgement{ID: "film-silver-in-heat", Means: "what silver counts beside white in heat: guides name white, and keep silver for insects", Value: 0.5, Unit: "share"}
	harvestLeft   = Judgement{ID: "film-short-harvest", Means: "days of harvest before frost below which a season is short", Value: 80, Unit: "days"}
	coldFull      = Judgement{ID: "film-cold-full", Means: "degrees below its best roots, under black, at which a short season counts whole: as many as the warmest film adds to black, 8 to 14 °F against 3 to 5", Value: 3.9, Unit: "°C", Source: &table.NewEngland}
	hoursLight    = Judgement{ID: "film-weeding-light", Means: "weeding of 100 ft of bare bed in a season, light weeds", Value: 0.5, Unit: "h"}
	hoursModerate = Judgement{ID: "film-weeding-moderate", Means: "weeding of 100 ft of bare bed in a season, moderate weeds", Value: 1.5, Unit: "h"}
	hoursHeavy    = Judgement{ID: "film-weeding-heavy", Means: "weeding of 100 ft of bare bed in a season, heavy weeds", Value: 4, Unit: "h"}
	underFilm     = Judgement{ID: "film-weeding-under", Means: "how many times longer a weed takes under film, where no hoe reaches", Value: 2, Unit: "times"}
	underOrganic  = Judgement{ID: "film-weeding-under-organic", Means: "the same where no spray may be used before laying", Value: 3, Unit: "times"}
	hoursHalf     = Judgement{ID: "film-weeding-half", Means: "hours of weeding saved on 100 ft of bed that count half", Value: 3, Unit: "h"}
	sownFit       = Judgement{ID: "film-sown-fit", Means: "clear film over seed", Value: 0.5}
	setOutFit     = Judgement{ID: "film-set-out-fit", Means: "clear film over transplants, against", Value: 0.6}
	yellowBlack   = Judgement{ID: "film-yellow-black", Means: "black against yellow nutsedge", Value: 0.3}
	yellowPale    = Judgement{ID: "film-yellow-pale", Means: "white and silver against yellow nutsedge, against", Value: 0.2}
	yellowPaper   = Judgement{ID: "film-yellow-paper", Means: "paper against yellow nutsedge, weeds light or moderate", Value: 0.5}
	yellowHeavy   = Judgement{ID: "film-yellow-paper-heavy", Means: "paper against yellow nutsedge, weeds heavy: in Tennessee it was best", Value: 1, Source: &table.PaperNutsedge2018}
	purplePaper   = Judgement{ID: "film-purple-paper", Means: "paper against purple nutsedge", Value: 0.9}
	purpleLight   = Judgement{ID: "film-purple-light", Means: "film that passes light against purple nutsedge: trials differ", Value: 0.3}
	purplePlastic = Judgement{ID: "film-purple-plastic", Means: "other plastic against purple nutsedge, against", Value: 0.5}
	virusSilver   = Judgement{ID: "film-virus-silver", Means: "silver where carriers are and the crop takes their virus", Value: 0.9}
	virusOther    = Judgement{ID: "film-virus-white", Means: "white where carriers are and the crop takes their virus", Value: 0.4}
	insectsOnly   = Judgement{ID: "film-insects-only", Means: "silver where thrips are and the crop is an onion or its kin, which they harm by feeding", Value: 0.6, Source: &table.SilverOnion2006}
	mayCome       = Judgement{ID: "film-carriers-may-come", Means: "silver where no insects were named", Value: 0.1}
	lateAir       = Judgement{ID: "film-late-air", Means: "usual air at planting above which carriers are about, where none were named", Value: 18, Unit: "°C"}
	thripsHere    = Judgement{ID: "film-thrips-here", Means: "blue where thrips are, against", Value: 1}
	thripsMayCome = Judgement{ID: "film-thrips-may-come", Means: "blue on a crop that takes virus from thrips, against", Value: 0.5}
	gainHalf      = Judgement{ID: "film-gain-half", Means: "a yield gain on which trials agree that counts half", Value: 30, Unit: "%"}
	gainDoubtHalf = Judgement{ID: "film-gain-doubt-half", Means: "the best of gains on which trials disagree that counts half", Value: 60, Unit: "%"}
	gainMixed     = Judgement{ID: "film-gain-mixed", Means: "a film that lost in some trials on the crop, against", Value: 0.3}
	mixedFit      = Judgement{ID: "film-mixed-fit", Means: "red and blue, against: trials disagree", Value: 0.7}
	priceHalf     = Judgement{ID: "film-price-half", Means: "price beyond black's that counts half", Value: 1.5, Unit: "times"}
	litterFit     = Judgement{ID: "film-litter-fit", Means: "film that must be lifted and hauled, against", Value: 0.3}
	litterSoil    = Judgement{ID: "film-litter-soil", Means: "mass of film as hauled, with soil, beside clean film", Value: 2, Unit: "times", Source: &table.PaperNutsedge2018}
	coverHalf     = Judgement{ID: "film-cover-half", Means: "cover gone after two crops that counts half", Value: 25, Unit: "%"}
	coverLeast    = Judgement{ID: "film-cover-least", Means: "cover left below which a film cannot carry a second crop", Value: 30, Unit: "%"}
	lifeHalf      = Judgement{ID: "film-life-half", Means: "days that a film gives out before the harvest ends that count half", Value: 25, Unit: "days"}
	secondPale    = Judgement{ID: "film-second-pale", Means: "pale film where the second crop starts in summer", Value: 0.3}
	secondDark    = Judgement{ID: "film-second-dark", Means: "dark film where the second crop starts in summer, against: it can be painted", Value: 0.2}
	commonFit     = Judgement{ID: "film-common-fit", Means: "black, the film that is everywhere", Value: 0.5}
	windFit       = Judgement{ID: "film-wind-fit", Means: "paper and thin film on a windy field, against", Value: 0.6}
	tearsFit      = Judgement{ID: "film-tears-fit", Means: "paper, against: it tears wet, at the edge and in the setter", Value: 0.5}
	gasFit        = Judgement{ID: "film-gas-fit", Means: "film that holds no gas on treated ground, against", Value: 0.9}
	springFit     = Judgement{ID: "film-summer-harvest-fit", Means: "white under a berry set in spring that fruits all summer", Value: 0.8}
)

// The figures of the bed, surface and thickness rules stand beside their rules' needs.
var (
	slowFlat    = Judgement{ID: "bed-slow-flat", Means: "flat ground that drains slowly, against", Value: 0.9}
	slowRaised  = Judgement{ID: "bed-slow-raised", Means: "8 in and more on ground that drains slowly", Value: 0.9}
	quickRaised = Judgement{ID: "bed-quick-raised", Means: "the highest bed on ground that drains quickly, against", Value: 0.4}
	heavyFrom   = Judgement{ID: "bed-heavy-from", Means: "how heavy a soil must be for height to help: silt loam and heavier, not loam", Value: 0.5, Unit: "of clay"}
	heavyFit    = Judgement{ID: "bed-heavy-fit", Means: "8 in and more on clay", Value: 0.6}
	sandFit     = Judgement{ID: "bed-sand-fit", Means: "the highest bed on sand, against", Value: 0.4}
	earlyHalf   = Judgement{ID: "bed-early-half", Means: "degrees that bare ground lacks at which height counts half", Value: 6, Unit: "°C"}
	usualHeight = Judgement{ID: "bed-usual-fit", Means: "the height that most growers form", Value: 0.6}
	nearUsual   = Judgement{ID: "bed-near-usual-fit", Means: "heights beside it", Value: 0.3}
	guideHeight = Judgement{ID: "bed-guide-fit", Means: "a height that a guide names for the crop", Value: 0.6}
	guideHalf   = Judgement{ID: "bed-guide-half", Means: "how far from a guide's height counts half", Value: 0.15, Unit: "m"}
	rootsFit    = Judgement{ID: "bed-roots-fit", Means: "the highest bed under deep roots", Value: 0.5}
	slopeHalf   = Judgement{ID: "bed-slope-half", Means: "slope at which height counts half against", Value: 10, Unit: "%"}
	shovelFit   = Judgement{ID: "bed-shovel-fit", Means: "the highest bed where it must be shoveled, against", Value: 0.8}
	wetFit      = Judgement{ID: "bed-wet-fit", Means: "8 in and more where the ground is wet at laying", Value: 0.7}
	shoulderFit = Judgement{ID: "bed-wind-fit", Means: "the highest bed on a windy field, against", Value: 0.6}
	scarceFit   = Judgement{ID: "bed-scarce-fit", Means: "the highest bed where water is scarce, against", Value: 0.6}
	scarceHours = Judgement{ID: "bed-scarce-hours", Means: "hours of pumping a day at full leaf from which water is scarce", Value: 8, Unit: "h"}
	simpleFit   = Judgement{ID: "bed-simple-fit", Means: "flat ground that drains", Value: 0.5}
	costFit     = Judgement{ID: "bed-cost-fit", Means: "film and power for the highest bed, against", Value: 0.5}
	weakHalf    = Judgement{ID: "bed-weak-half", Means: "share of power lacking that counts half", Value: 0.3, Unit: "share"}
)

var (
	hugsFit     = Judgement{ID: "surface-hugs-fit", Means: "embossed film on a raised bed", Value: 0.8}
	flatFit     = Judgement{ID: "surface-flat-fit", Means: "smooth film on flat ground", Value: 0.8}
	slackHalf   = Judgement{ID: "surface-slack-half", Means: "hot days before harvest at which smooth film's slack counts half", Value: 20, Unit: "days"}
	contactHalf = Judgement{ID: "surface-contact-half", Means: "degrees that bare ground lacks at which tight contact counts half", Value: 8, Unit: "°C"}
	cheapFit    = Judgement{ID: "surface-cheap-fit", Means: "smooth film, which is cheaper", Value: 0.5}
	slidesFit   = Judgement{ID: "surface-slides-fit", Means: "smooth film laid by hand", Value: 0.5}
	tightFit    = Judgement{ID: "surface-tight-fit", Means: "embossed film on a windy field", Value: 0.6}

	oneSeason  = Judgement{ID: "thickness-one-season-fit", Means: "1 to 1.25 mil for one season", Value: 0.6}
	stoutFit   = Judgement{ID: "thickness-stout-fit", Means: "1.25 mil or more where something pierces or wears it", Value: 0.5}
	gasThick   = Judgement{ID: "thickness-gas-fit", Means: "1.25 mil or more on treated ground", Value: 0.6}
	longBio    = Judgement{ID: "thickness-long-biodegradable-fit", Means: "the thicker of films that rot, under a long crop", Value: 0.4}
	secondHalf = Judgement{ID: "thickness-second-half", Means: "mil short of 1.25 for a second crop that count half", Value: 0.2, Unit: "mil"}
	thinHalf   = Judgement{ID: "thickness-thin-half", Means: "mil short of 1.25 against spears or gas that count half", Value: 0.3, Unit: "mil"}
	stoneHalf  = Judgement{ID: "thickness-stone-half", Means: "mil short of 1.25 on stones that count half", Value: 0.4, Unit: "mil"}
	tearHalf   = Judgement{ID: "thickness-tear-half", Means: "mil short of 1 at lifting that count half", Value: 0.15, Unit: "mil"}
	stalkHalf  = Judgement{ID: "thickness-stalk-half", Means: "mil beyond 0.6 over trash that count half", Value: 0.6, Unit: "mil"}
	handHalf   = Judgement{ID: "thickness-handled-half", Means: "mil beyond the thin films, handled, in wind or rotting, that count half", Value: 0.5, Unit: "mil"}
	weightHalf = Judgement{ID: "thickness-weight-half", Means: "mil beyond 1, bought and hauled, that count half against", Value: 0.6, Unit: "mil"}
	longHalf   = Judgement{ID: "thickness-long-half", Means: "mil beyond 1 under a crop that lies the winter that count half", Value: 0.3, Unit: "mil"}
)

// judgements lists them for "explain".
var judgements = [...]*Judgement{
	&daysHalf, &heatHalf, &paleFrom, &paleTop, &paleHalf, &silverPale, &harvestLeft, &coldFull, &hoursLight, &hoursModerate, &hoursHeavy, &underFilm, &underOrganic, &hoursHalf,
	&sownFit, &setOutFit, &yellowBlack, &yellowPale, &yellowPaper, &yellowHeavy, &purplePaper, &purpleLight, &purplePlastic,
	&virusSilver, &virusOther, &insectsOnly, &mayCome, &lateAir, &thripsHere, &thripsMayCome, &gainHalf, &gainDoubtHalf, &gainMixed, &mixedFit,
	&priceHalf, &litterFit, &litterSoil, &coverHalf, &coverLeast, &lifeHalf, &secondPale, &secondDark, &commonFit, &windFit, &tearsFit, &gasFit, &springFit,
	&slowFlat, &slowRaised, &quickRaised, &heavyFrom, &heavyFit, &sandFit, &earlyHalf, &usualHeight, &nearUsual, &guideHeight, &guideHalf, &rootsFit, &slopeHalf,
	&shovelFit, &wetFit, &shoulderFit, &scarceFit, &scarceHours, &simpleFit, &costFit, &weakHalf,
	&hugsFit, &flatFit, &slackHalf, &contactHalf, &cheapFit, &slidesFit, &tightFit,
	&oneSeason, &stoutFit, &gasThick, &longBio, &secondHalf, &thinHalf, &stoneHalf, &tearHalf, &stalkHalf, &handHalf, &weightHalf, &longHalf,
}

// Judgements lists every figure that the rules weigh with and no table gives.
func Judgements() []*Judgement { return judgements[:] }
