package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func film(o question.Option) table.FilmID { return table.FilmID(o) }

func row(o question.Option) *table.Film { return &table.Films[o] }

// bedShown is the length of bed that hours and litter are judged for: 100 ft.
const bedShown = unit.Metres(100 * unit.MetresPerFoot)

// BedShown is as much as readers are told: 100 ft, or 100 m with what goes with that.
var BedShown = unit.Along(bedShown)

// mostEarlier is the most that trials saw film bring a crop forward: 7 to 21 days (Penn
// State; North Carolina State).
const mostEarlier = unit.Days(21)

// weeding is the work of a season's weeds on 100 ft of bare bed.
func weeding(f *facts.Facts) float64 {
	switch f.Case.Weeds.Pressure {
	case "light":
		return hoursLight
	case "heavy":
		return hoursHeavy
	}
	return hoursModerate
}

// Earlier is how many days sooner the crop comes under a film than on bare ground, as far
// as that can be told, and no more than trials saw.
func Earlier(f *facts.Facts, o question.Option) unit.Days {
	if by := float64(f.MeanUnder[o].Minus(f.MeanUnder[facts.Bare])); by > -tellable && by < tellable {
		return 0
	}
	return min(max(f.Ahead[o], -mostEarlier), mostEarlier)
}

// Weeding is the work of a season's weeds on [BedShown] under a film, in hours, or on bare
// ground.
func Weeding(f *facts.Facts, o question.Option) float64 {
	hours := weeding(f)
	switch {
	case int(o) == facts.Bare:
		return hours
	case f.Case.Practice.Organic.Value:
		return hours * (1 - row(o).Opaque.Value) * underOrganic
	}
	return hours * (1 - row(o).Opaque.Value) * underFilm
}

// Lengths is what a film costs for [BedShown], as a length that plain black costs.
func Lengths(o question.Option) unit.Metres {
	if int(o) == facts.Bare {
		return 0
	}
	return unit.Metres(row(o).PriceClass.Value) * bedShown
}

// The film rules weigh what comes of a film in the grower's own units: days earlier,
// days lost to heat, hours of weeding, price, what is left to haul. All of it is
// counted against bare ground, so that a film that gains nothing stands at nothing.
// The soil curve is read in facts, once; two rules tell what it means.
var filmRules = [...]*Rule{
	{ID: "film-days-earlier", Speaks: question.Film, Weight: Strong, Title: "Days earlier",
		Because: "Earliness is what most growers buy film for.",
		Sources: []*table.Source{&table.NewEngland, &table.PennColours, &table.PuertoRico1968, &table.Georgia2002, &table.WarmthFalls2015, &table.Contact, &table.GeorgiaFloors, &table.KansasFloors, &table.PurdueTransplants}, Fires: "pepper-cloddy-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if Earlier(f, o) == 0 {
				return silent()
			}
			switch days := f.Ahead[o]; {
			case days > mostEarlier && !f.Autumn: // a short season's heat sum would promise more than was ever seen
				return speaksFor(saturate(float64(days), daysHalf), "It warms the bed, and the crop may come {} earlier than on bare ground, the most that trials saw.", mostEarlier)
			case days < -mostEarlier:
				return against(-saturate(float64(days), daysHalf), "It cools the bed, and the crop comes more than {} later than on bare ground.", mostEarlier)
			case days < 0:
				return against(-saturate(float64(days), daysHalf), "It cools the bed, and the crop comes about {} later than on bare ground.", -days)
			case days > 0 && f.Autumn:
				return speaksFor(saturate(float64(days), daysHalf), "It keeps the bed warm in the fall, worth about {} of growth, compared with bare ground.", days)
			case days > 0:
				return speaksFor(saturate(float64(days), daysHalf), "It warms the bed, and the crop comes about {} earlier than on bare ground.", days)
			}
			return silent()
		}},
	{ID: "film-heat", Speaks: question.Film, Weight: Strong, Title: "Days lost to heat",
		Because: "A stem that touches hot film is girdled within a day; roots above their heat limit stop growing.",
		Sources: []*table.Source{&table.HotFilm, &table.Films1993, &table.PepperHeat2011, &table.Broccoli2009, &table.TomatoRoots1995, &table.Romaine2020}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			stems, roots, bare := f.Burning[o], f.Stalled[o], f.Stalled[facts.Bare]
			if f.MeanUnder[o] >= f.MeanUnder[facts.Bare] { // a film that warms the bed keeps no roots cool, though it takes the top off an afternoon
				roots = max(roots, bare)
			}
			fit := -saturate(float64(stems+roots-bare), heatHalf)
			switch {
			case stems == 0 && roots == bare:
				return silent()
			case stems == 0 && roots == 0:
				return speaksFor(fit, "It keeps the roots cool enough. On bare ground heat would stop their growth on {} of the first two months.", unit.Days(bare))
			case stems == 0 && roots < bare:
				return speaksFor(fit, "Heat stops root growth on {} of the first two months; on bare ground, on {}.", unit.Days(roots), unit.Days(bare))
			case stems == 0 && bare == 0:
				return speaksFor(fit, "Heat stops root growth on {} of the first two months; on bare ground, on none.", unit.Days(roots))
			case stems == 0:
				return speaksFor(fit, "Heat stops root growth on {} of the first two months; on bare ground, on {}.", unit.Days(roots), unit.Days(bare))
			case roots == bare:
				return speaksFor(fit, "It gets hot enough to kill stems that touch it on {} of the first two weeks.", unit.Days(stems))
			case roots == 0:
				return speaksFor(fit, "It gets hot enough to kill stems that touch it on {} of the first two weeks. But it keeps the roots cool enough, where on bare ground heat would stop their growth on {} of the first two months.", unit.Days(stems), unit.Days(bare))
			case bare == 0:
				return speaksFor(fit, "It gets hot enough to kill stems that touch it on {} of the first two weeks. Heat also stops root growth on {} of the first two months.", unit.Days(stems), unit.Days(roots))
			}
			return speaksFor(fit, "It gets hot enough to kill stems that touch it on {} of the first two weeks. Heat also stops root growth on {} of the first two months; on bare ground, on {}.", unit.Days(stems), unit.Days(roots), unit.Days(bare))
		}},
	{ID: "film-pale-in-heat", Speaks: question.Film, Weight: Plain, Title: "White for summer plantings",
		Because: "Guides change from black to white when plants are set into summer heat.",
		Sources: []*table.Source{&table.LateSwitch, &table.FloridaCir805, &table.KansasWeeds, &table.MidAtlanticPepper}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			from := unit.Celsius(paleFrom)
			switch best := f.Crop.MonthBest; {
			case best.Given() && f.Overwinters(): // set as the heat ends
				from = best.High
			case best.Given() && !f.Crop.Warm: // guides lay white for cool crops in summer no later than for warm ones
				from = min(from, best.High)
			case best.Given(): // okra and its like want more heat than tomatoes
				from += max(0, best.High-unit.Celsius(paleTop))
			}
			over := float64(f.AirSetting.Minus(from))
			if cool := paleFrom - float64(f.AirSetting); cool >= tellable && f.Crop.Warm && !f.Autumn && film(o) == table.WhiteOnBlack {
				return against(saturate(cool, paleHalf), "Air in the first weeks usually averages {}: guides lay black film until it is {}.", f.AirSetting, unit.Celsius(paleFrom))
			}
			if over < tellable {
				return silent()
			}
			fit := saturate(over, paleHalf)
			switch film(o) {
			case table.WhiteOnBlack:
				if !f.Crop.Warm && from < unit.Celsius(paleFrom) && f.MeanUnder[o] < f.MeanUnder[facts.Bare] {
					return speaksFor(fit, "Air in the first weeks usually averages {}, above the {} that suits {}: guides lay white film to keep the bed cool.", f.AirSetting, from, f.Crop.Name)
				}
				return speaksFor(fit, "Air in the first weeks usually averages {}: guides lay white film for {} set into such heat.", f.AirSetting, f.Crop.Name)
			case table.SilverOnBlack:
				return speaksFor(fit*silverPale, "Air in the first weeks usually averages {}, and silver stays cooler than dark film. Guides name white first.", f.AirSetting)
			}
			return silent()
		}},
	{ID: "film-short-season", Speaks: question.Film, Weight: Strong, Title: "A short, cool season",
		Because: "Where frost cuts the harvest short, the warmest film pays: black warms less than film that lets the sun through.",
		Sources: []*table.Source{&table.SaskatchewanFilms, &table.SaskatchewanColours, &table.AlaskaCorn1991, &table.QuebecMelon1998}, Fires: "corn-short-season",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			left, cold := max(f.FreeDays-f.CropDays, 0), f.Crop.RootBest.Low.Minus(f.MeanUnder[table.Black])
			if !f.Crop.Warm || !f.WarmingPays || f.FreeDays == facts.Never || f.Case.Weeds.Pressure == "heavy" || row(o).SunPassed.Value < passesSun || float64(left) >= harvestLeft || cold <= 0 || f.MeanUnder[o] <= max(f.MeanUnder[table.Black], f.MeanUnder[facts.Bare]) {
				return silent()
			}
			fit := (1 - float64(left)/harvestLeft) * min(float64(cold)/coldFull, 1)
			if left == 0 {
				return speaksFor(fit, "A short, cool season: frost comes before the harvest is over, and under black film the bed averages {} in the first month. Film that lets the sun through warms it most.", f.MeanUnder[table.Black])
			}
			return speaksFor(fit, "A short, cool season: only {} of picking before frost, and under black film the bed averages {} in the first month. Film that lets the sun through warms it most.", left, f.MeanUnder[table.Black])
		}},
	{ID: "film-weeds", Speaks: question.Film, Weight: Strong, Title: "Hours of weeding",
		Because: "Weeds under film cannot be hoed.",
		Sources: []*table.Source{&table.KansasWeeds, &table.Tomato2010, &table.ClearFilm2021, &table.OrganicRule}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			hours, passes := weeding(f), 1-row(o).Opaque.Value
			saved := hours - Weeding(f, o)
			fit := saturate(saved, hoursHalf)
			switch {
			case saved > -leastHours && saved < leastHours:
				return silent()
			case passes < holdsAll:
				return speaksFor(fit, "It holds the annual weeds: about {} less weeding on {} of bed.", unit.Along(unit.Hours(saved)), BedShown)
			case saved < 0:
				return against(-fit, "Weeds grow under it, where no hoe reaches: about {} more weeding on {} of bed than on bare ground.", unit.Along(unit.Hours(-saved)), BedShown)
			}
			return speaksFor(fit, "About {} of the annual weeds grow under it: it saves {} of weeding on {} of bed, where black saves {}.", unit.PercentOf(passes), unit.Along(unit.Hours(saved)), BedShown, unit.Along(unit.Hours(hours)))
		}},
	{ID: "film-no-weed-control", Speaks: question.Film, Weight: Strong, Title: "Needs a weed plan beneath",
		Because: "Clear film is a greenhouse for weeds; under heavy pressure they lift it off the bed.",
		Sources: []*table.Source{&table.FloridaCir805, &table.NewEngland}, Fires: "pepper-yellow-nutsedge",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if row(o).Opaque.Value > holdsNone || f.Case.Weeds.Pressure != "heavy" {
				return silent()
			}
			return rulesOut("It holds no weeds at all, and yours are heavy: they would lift the film.")
		}},
	{ID: "film-for-sown-crops", Speaks: question.Film, Weight: Plain, Title: "Made for sown crops",
		Because: "Clear film is slit over the seedlings after emergence; transplants gain less and scorch in the hole.",
		Sources: []*table.Source{&table.Practice, &table.SweetCornClear}, Fires: "corn-short-season",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !row(o).SeedOnly {
				return silent()
			}
			if f.Seeded {
				return speaksFor(sownFit, "Seed can come up under it; it must be slit by hand when the leaves touch.")
			}
			return against(setOutFit, "It is mostly used over seed and must be opened after emergence. Your {} will be set out as plants.", f.Crop.Name)
		}},
	{ID: "film-yellow-nutsedge", Speaks: question.Film, Weight: Strong, Title: "Yellow nutsedge",
		Because: "Opaque film held yellow nutsedge best of the plastics; paper held it in the field.",
		Sources: []*table.Source{&table.NutsedgeYellow2005, &table.NutsedgeGeorgia, &table.PaperNutsedge2018}, Fires: "pepper-yellow-nutsedge",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Weeds.Nutsedge != "yellow" {
				return silent()
			}
			switch film(o) {
			case table.Black:
				return speaksFor(yellowBlack, "Black film cut yellow nutsedge shoots by {} in pots.", unit.Percent(96))
			case table.Paper:
				if f.Case.Weeds.Pressure == "heavy" {
					return speaksFor(yellowHeavy, "Nutsedge did not get through paper in a field trial, and your weeds are heavy.")
				}
				return speaksFor(yellowPaper, "Nutsedge did not get through paper in a field trial.")
			case table.WhiteOnBlack, table.SilverOnBlack:
				return against(yellowPale, "In mixed stands white and silver films had up to twice the shoots of black in one of two years.")
			}
			return silent()
		}},
	{ID: "film-purple-nutsedge", Speaks: question.Film, Weight: Strong, Title: "Purple nutsedge",
		Because: "No plastic holds purple nutsedge; paper did.",
		Sources: []*table.Source{&table.NutsedgePurple2005, &table.PaperNutsedge2018, &table.NutsedgeTranslucent}, Fires: "pepper-purple-nutsedge",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Weeds.Nutsedge != "purple" {
				return silent()
			}
			switch film(o) {
			case table.Paper:
				return speaksFor(purplePaper, "Nutsedge did not get through paper in a field trial, but did through every plastic.")
			case table.Clear, table.InfraredTransmitting:
				return speaksFor(purpleLight, "Film that lets light through cut purple nutsedge by {} in the field: its leaves open under the film. Other trials differ.", unit.Between(unit.Percent(70), unit.Percent(88)))
			}
			return against(purplePlastic, "Purple nutsedge came through black film nearly as on bare ground.")
		}},
	{ID: "film-virus-insects", Speaks: question.Film, Weight: Strong, Title: "Keeps insects away",
		Because: "A virus caught young can take the whole crop; the effect ends when leaves cover about 60 % of the film.",
		Sources: []*table.Source{&table.SilverSquash1993, &table.SilverZucchini1995, &table.SilverThrips, &table.SilverWhitefly2023, &table.Gladiolus1965, &table.CanopyLimit, &table.SilverOnion2006}, Fires: "squash-virus",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			carrier := insectOf(f.Case.Weeds.Insects)
			switch {
			case carrier == 0 || row(o).Repels&carrier == 0:
				return silent()
			case f.Crop.Group == table.Bulb && carrier == table.Thrips && film(o) == table.SilverOnBlack:
				return speaksFor(insectsOnly, "Fewer thrips settle on young plants over it: in onions silver gave more than black on two farms of three.")
			case f.Crop.Virus&carrier == 0:
				return silent()
			case film(o) == table.SilverOnBlack:
				return speaksFor(virusSilver, "It turns {} away while the plants are small: virus came 7 to 13 days later on silver in squash trials.", f.Case.Weeds.Insects)
			}
			return speaksFor(virusOther, "It turns some {} away while the plants are small, though fewer than silver does.", f.Case.Weeds.Insects)
		}},
	{ID: "film-carriers-may-come", Speaks: question.Film, Weight: Slight, Title: "Carriers that may come",
		Because: "Even without a known outbreak, late plantings of a virus-prone crop meet more carriers.",
		Sources: []*table.Source{&table.ColourCompare, &table.SilverPumpkin}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Virus == 0 || film(o) != table.SilverOnBlack || f.Case.Weeds.Insects != "" || !f.Autumn && float64(f.AirMean) <= lateAir {
				return silent()
			}
			return speaksFor(mayCome, "Flying insects carry virus to {}, more of it in late plantings. Scout for them before you order.", f.Crop.Name)
		}},
	{ID: "film-draws-thrips", Speaks: question.Film, Weight: Plain, Title: "Color that draws thrips",
		Because: "Thrips fly to blue and carry virus to tomato and pepper.",
		Sources: []*table.Source{&table.ColourCompare}, Fires: "pepper-thrips",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if row(o).Draws == 0 || f.Crop.Virus&row(o).Draws == 0 {
				return silent()
			}
			if f.Case.Weeds.Insects == "thrips" {
				return against(thripsHere, "Blue draws thrips, and you have them.")
			}
			return against(thripsMayCome, "Blue draws thrips, which carry virus to {}.", f.Crop.Name)
		}},
	{ID: "film-trial-gain", Speaks: question.Film, Weight: Slight, Title: "Trials on this crop",
		Because: "A yield trial elsewhere is a hint, not a promise.",
		Sources: []*table.Source{&table.ColourCompare, &table.SilverPumpkin, &table.Zimbabwe2014, &table.KansasRed}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			for _, t := range f.Crop.Trials {
				if t.Gain.Source == nil || t.Film != film(o) {
					continue
				}
				switch {
				case t.Agrees && t.Gain.Low < t.Gain.High:
					return speaksFor(saturate(float64(t.Gain.Low), gainHalf), "In trials on {} it yielded {} more than the film it was compared with.", f.Crop.Name, unit.Between(t.Gain.Low, t.Gain.High))
				case t.Agrees:
					return speaksFor(saturate(float64(t.Gain.Low), gainHalf), "In trials on {} it yielded {} more than the film it was compared with.", f.Crop.Name, t.Gain.Low)
				case t.Gain.Low < 0:
					return against(gainMixed, "Trials on {} disagree: from {} less yield to {} more.", f.Crop.Name, -t.Gain.Low, t.Gain.High)
				}
				return speaksFor(saturate(float64(t.Gain.High), gainDoubtHalf), "In some trials on {} it yielded up to {} more, in others no more.", f.Crop.Name, t.Gain.High)
			}
			return silent()
		}},
	{ID: "film-mixed-evidence", Speaks: question.Film, Weight: Plain, Title: "Trials disagree",
		Because: "Red and blue film won in some trials and lost in others.",
		Sources: []*table.Source{&table.NewEngland, &table.UtahGuide, &table.RedNematode1997, &table.RAE2020}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !row(o).Experiment {
				return silent()
			}
			return against(mixedFit, "Trials of {} disagree. Try one short strip beside the film you trust.", row(o).Name)
		}},
	{ID: "film-summer-harvest", Speaks: question.Film, Weight: Strong, Title: "Set in spring to fruit all summer",
		Because: "Spring-set berries are handled as a different crop from fall-set ones: they fruit on the film from July to October.",
		Sources: []*table.Source{&table.MinnesotaBerries}, Fires: "berries-spring-set",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Group != table.Berry || f.Autumn || film(o) != table.WhiteOnBlack {
				return silent()
			}
			return speaksFor(springFit, "Day-neutral {} set in spring fruit through the summer heat; guides lay white-on-black for them.", f.Crop.Name)
		}},
	{ID: "film-price", Speaks: question.Film, Weight: Slight, Title: "Price of the film",
		Because: "The difference in price is small beside the value of the crop, but real.",
		Sources: []*table.Source{&table.NewEngland, &table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			class := row(o).PriceClass.Value
			if class <= 1 {
				return silent()
			}
			return against(saturate(class-1, priceHalf), "It costs about {} times as much as plain black: for {} of bed, what black costs for {}.", class, BedShown, unit.Along(Lengths(o)))
		}},
	{ID: "film-removal", Speaks: question.Film, Weight: Slight, Title: "What is left to haul",
		Because: "Lifting and hauling is the hardest day of the film's life; many places refuse dirty film.",
		Sources: []*table.Source{&table.Retrieval2019, &table.CFR205, &table.RaspberryFilm2020, &table.PaperNutsedge2018}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if row(o).Removal != table.LiftAndHaul {
				return silent()
			}
			return against(litterFit, "Each {} of bed leaves {} of dirty film to lift and haul, by how much soil clings to it.", BedShown, unit.Along(unit.Between(litter(table.FilmWithSoil.Low), litter(table.FilmWithSoil.High))))
		}},
	{ID: "film-next-crops", Speaks: question.Film, Weight: Strong, Title: "Lasts for the next crop",
		Because: "Film that has gone to pieces cannot carry a second crop.",
		Sources: []*table.Source{&table.Weathering, &table.GeorgiaBeds2019}, Fires: "tomato-two-crops",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			crops := f.Case.Practice.CropsOnFilm.Or(1)
			left := row(o).CoverLeft.Value
			if crops < 2 || lies(f, o) {
				return silent()
			}
			switch {
			case left == 0:
				return rulesOut("It does not last for {} crops: after one it is gone.", int(crops))
			case float64(left) < coverLeast:
				return rulesOut("It does not last for {} crops: about {} of it is left after two.", int(crops), left)
			}
			return against(saturate(wholeCover-float64(left), coverHalf), "About {} of its cover was left after two crops in a trial.", left)
		}},
	{ID: "film-lasts-the-crop", Speaks: question.Film, Weight: Strong, Title: "Lasts until harvest",
		Because: "Film that breaks up early lets weeds in at the worst time.",
		Sources: []*table.Source{&table.BioLaying, &table.EN17033}, Fires: "strawberry-autumn",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			need := float64(f.Crop.DaysToHarvest.High) + pastHarvest
			over := need - row(o).Life.Value
			if over <= 0 || lies(f, o) {
				return silent()
			}
			return against(saturate(over, lifeHalf), "The crop is on the film for about {}, and this film lasts about {}.", unit.DaysOf(need), unit.DaysOf(row(o).Life.Value))
		}},
	{ID: "film-organic", Speaks: question.Film, Weight: Strong, Title: "Organic rule",
		Because: "A film that breaks the rule costs the certificate.",
		Sources: []*table.Source{&table.OrganicRule, &table.OrganicMemo2015, &table.OrganicMemo2023}, Fires: "tomato-organic",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Case.Practice.Organic.Value || row(o).OrganicUse {
				return silent()
			}
			return rulesOut("{}", row(o).OrganicNote)
		}},
	{ID: "film-not-on-sale", Speaks: question.Film, Weight: Strong, Title: "Not among the films you can buy",
		Because: "The grower knows the shop.",
		Sources: []*table.Source{&table.Practice}, Fires: "pumpkin-biodegradable",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			set := f.Case.Practice.FilmOptions
			if set == 0 || set&(1<<o) != 0 || f.Case.Practice.FilmDown() {
				return silent()
			}
			return rulesOut("You did not name it among the films you can buy.")
		}},
	{ID: "film-already-down", Speaks: question.Film, Weight: Strong, Title: "Film already on the bed",
		Because: "Film that lies there and is whole costs nothing and wastes nothing.",
		Sources: []*table.Source{&table.Weathering, &table.FloridaDouble2018, &table.Practice}, Fires: "squash-on-worn-film",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			p := &f.Case.Practice
			switch {
			case !p.FilmDown():
				return silent()
			case !lies(f, o):
				there, _ := table.FilmByID(p.ReuseFilm)
				return rulesOut("The bed lies under {} already.", there.Name())
			case table.Films[o].Removal == table.LiftAndHaul && Painted(f):
				return speaksFor(whole(p), "It is down already and {} of it is whole. Paint it white before you plant: {} of the first two weeks would burn stems on it.", unit.PercentOf(whole(p)), unit.Days(f.Burning[o]))
			}
			return speaksFor(whole(p), "It is down already and {} of it is whole.", unit.PercentOf(whole(p)))
		}},
	{ID: "film-second-crop-heat", Speaks: question.Film, Weight: Plain, Title: "The second crop starts in summer",
		Because: "A second crop goes into film that lies in full summer sun.",
		Sources: []*table.Source{&table.FloridaCir805, &table.LateSwitch, &table.FloridaDouble2018}, Fires: "tomato-two-crops",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.CropsOnFilm.Or(1) < 2 || f.HotSeason < secondHot || f.Case.Practice.FilmDown() {
				return silent()
			}
			switch film(o) {
			case table.WhiteOnBlack, table.SilverOnBlack:
				return speaksFor(secondPale, "The next crop is set in summer, when pale film is the safer bed.")
			case table.Black, table.BiodegradableBlack, table.Red, table.Blue:
				return against(secondDark, "The next crop is set in summer heat; the film must be painted white for it.")
			}
			return silent()
		}},
	{ID: "film-commonest", Speaks: question.Film, Weight: Slight, Title: "The most common film",
		Because: "The commonest film is sold everywhere, and how it behaves is well known.",
		Sources: []*table.Source{&table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if film(o) != table.Black {
				return silent()
			}
			return speaksFor(commonFit, "Black is the most common film and easy to find.")
		}},
	{ID: "film-paper-tears", Speaks: question.Film, Weight: Plain, Title: "Paper tears",
		Because: "Paper pays where it is asked for or where nutsedge decides; otherwise it costs more and tears.",
		Sources: []*table.Source{&table.PaperSmall, &table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if film(o) != table.Paper {
				return silent()
			}
			return against(tearsFit, "It tears when wet, in the setter and at the buried edge; in a trial it was gone before the season ended.")
		}},
	{ID: "film-wind", Speaks: question.Film, Weight: Plain, Title: "Holds up in wind",
		Because: "Paper and thin films tear at the shoulder where wind works them.",
		Sources: []*table.Source{&table.Plasticulture, &table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || row(o).Embossable {
				return silent()
			}
			return against(windFit, "Your field is windy, and {} tears at the edges.", row(o).Name)
		}},
	{ID: "film-fumigated", Speaks: question.Film, Weight: Plain, Title: "Must hold a fumigant",
		Because: "Gas that escapes neither works nor may be allowed: the label names the films.",
		Sources: []*table.Source{&table.BarrierFilm2013, &table.FumigantManual}, Fires: "tomato-fumigated",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Case.Practice.FumigatedOn.Given || row(o).Embossable {
				return silent()
			}
			return against(gasFit, "The ground was treated: {} does not hold a gas. The label names the films that do.", row(o).Name)
		}},
}

// whole is the share of film that is down which is whole still.
func whole(p *field.PracticeCase) float64 { return p.ReuseCover.Or(usualWhole) / 100 }

// lies tells whether this film is on the bed already.
func lies(f *facts.Facts, o question.Option) bool { return film(o).Key() == f.Case.Practice.ReuseFilm }

// Painted tells whether dark film that is down already must be painted white before
// the crop goes in.
func Painted(f *facts.Facts) bool {
	there, ok := table.FilmByID(f.Case.Practice.ReuseFilm)
	return ok && f.Burning[there] > 0
}

// litter is the film of bedShown as it is hauled: 4 ft wide and 1 mil thick, so many
// times as heavy with its soil.
func litter(times float64) unit.Kilograms {
	return unit.Kilograms(float64(bedShown) * litterWidth * float64(unit.FromMil(1)) / 1e6 * FilmDensity * times)
}

// FilmDensity is that of polyethylene, kg/m³: the trade's 30,000 in² for a pound at 1 mil
// ([table.FilmYieldConstant]).
const FilmDensity = 920

func insectOf(word string) table.Insect {
	switch word {
	case "aphids":
		return table.Aphids
	case "thrips":
		return table.Thrips
	case "whiteflies":
		return table.Whiteflies
	}
	return 0
}
