package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func film(o question.Option) table.FilmID { return table.FilmID(o) }

func row(o question.Option) *table.Film { return &table.Films[o] }

// weedLevel is how much the ground grows, 0–1.
func weedLevel(f *facts.Facts) float64 {
	switch f.Case.Weeds.Pressure {
	case "light":
		return 0.3
	case "heavy":
		return 1
	}
	return 0.6
}

var filmRules = [...]*Rule{
	{ID: "film-reaches-floor", Speaks: question.Film, Weight: Strong, Title: "Warm enough on planting day",
		Because: "Below its floor the crop stands still or rots.",
		Sources: []*table.Source{&table.GeorgiaFloors, &table.KansasFloors, &table.PurdueTransplants, &table.NewEngland}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			short := f.SafeFloor.Minus(f.Under[o])
			if short <= 0 {
				return silent()
			}
			return against(saturate(float64(short), 6), "On the morning of planting day the bed is {} colder than the safe {}.", short, f.SafeFloor)
		}},
	{ID: "film-days-gained", Speaks: question.Film, Weight: Strong, Title: "Days won in spring",
		Because: "Earliness is what most growers buy film for.",
		Sources: []*table.Source{&table.NewEngland, &table.PennColours, &table.PuertoRico1968, &table.Georgia2002, &table.WarmthFalls2015}, Fires: "pepper-cloddy-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			days := f.Gained[o]
			if days == 0 || f.ReachWork[facts.Bare] < -20 {
				return silent()
			}
			if days < 0 {
				return against(saturate(float64(-days), 10), "The soil reaches {} {} later than bare ground.", f.WorkFloor, -days)
			}
			return speaksFor(saturate(float64(days), 10), "The soil reaches {} {} sooner than bare ground.", f.WorkFloor, days)
		}},
	{ID: "film-growing-warmth", Speaks: question.Film, Weight: Plain, Title: "Root warmth in the first month",
		Because: "Roots grow best in a band of temperature; the band is wide, so this counts less than the floor.",
		Sources: []*table.Source{&table.TomatoRoots1995, &table.Romaine2020, &table.RAE2020, &table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			best, mean := f.Crop.RootBest, f.MeanUnder[o]
			if cold := best.Low.Minus(mean); cold > 0 {
				return against(saturate(float64(cold), 6), "In the first month the root zone averages {}: {} below the best.", mean, cold)
			}
			if hot := mean.Minus(best.High); hot > 0 {
				return against(saturate(float64(hot), 6), "In the first month the root zone averages {}: {} above the best.", mean, hot)
			}
			return silent()
		}},
	{ID: "film-root-ceiling", Speaks: question.Film, Weight: Strong, Title: "Too hot for the roots",
		Because: "Above its ceiling growth and fruit set fall off fast.",
		Sources: []*table.Source{&table.PepperHeat2011, &table.Broccoli2009, &table.TomatoRoots1995}, Fires: "broccoli-late-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			days := f.CeilingDays[o]
			if days == 0 {
				return silent()
			}
			return against(saturate(float64(days), 15), "The root zone is above {} on {} of the first 60 days.", f.Ceiling, days)
		}},
	{ID: "film-stem-burn", Speaks: question.Film, Weight: Strong, Title: "Film that burns stems",
		Because: "A stem that touches hot film is girdled within a day; seed in the hole cooks.",
		Sources: []*table.Source{&table.HotFilm, &table.Films1993}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			over := f.Surface[o].Minus(facts.StemBurn)
			if over <= 0 || f.HotStart < 1 {
				return silent()
			}
			return against(saturate(f.HotStart*float64(over)/10, 6), "On a clear hot day the film reaches about {}, and about {} of the first 21 days are that hot. Stems that touch it die.", f.Surface[o], int(f.HotStart+0.5))
		}},
	{ID: "film-cools-hot-ground", Speaks: question.Film, Weight: Plain, Title: "Cools ground that is hot already",
		Because: "Where bare ground is above the best, each degree less helps.",
		Sources: []*table.Source{&table.LateSwitch, &table.FloridaCir805, &table.NewEngland}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			cooler := f.MeanUnder[facts.Bare].Minus(f.MeanUnder[o])
			if cooler <= 0 || f.MeanUnder[facts.Bare] <= f.Crop.RootBest.Value {
				return silent()
			}
			return speaksFor(saturate(float64(cooler), 2), "It keeps the root zone {} cooler than bare ground, which averages {}.", cooler, f.MeanUnder[facts.Bare])
		}},
	{ID: "film-weeds", Speaks: question.Film, Weight: Strong, Title: "Holds the weeds",
		Because: "Weeds under film cannot be hoed.",
		Sources: []*table.Source{&table.KansasWeeds, &table.Tomato2010, &table.ClearFilm2021}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			passes := 1 - row(o).Opaque.Value
			if passes < 0.02 {
				return silent()
			}
			return against(passes*weedLevel(f), "It lets light through: about {} of the annual weeds may grow under it, and yours are {}.", unit.PercentOf(passes), weedWord(f))
		}},
	{ID: "film-no-weed-control", Speaks: question.Film, Weight: Strong, Title: "Needs a weed plan beneath",
		Because: "Clear film is a greenhouse for weeds; under heavy pressure they lift it off the bed.",
		Sources: []*table.Source{&table.FloridaCir805, &table.NewEngland}, Fires: "pepper-yellow-nutsedge",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if row(o).Opaque.Value > 0.05 || f.Case.Weeds.Pressure != "heavy" {
				return silent()
			}
			return rulesOut("It holds no weeds at all, and yours are heavy: they would lift the film.")
		}},
	{ID: "film-organic-weeds", Speaks: question.Film, Weight: Plain, Title: "No spray to fall back on",
		Because: "On an organic field weeds beneath clear film can only be pulled by opening it.",
		Sources: []*table.Source{&table.OrganicRule}, Fires: "tomato-organic",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			passes := 1 - row(o).Opaque.Value
			if !f.Case.Practice.Organic.Value || passes < 0.1 {
				return silent()
			}
			return against(passes*(0.4+0.6*weedLevel(f)), "Organic rules leave no spray for the weeds under it.")
		}},
	{ID: "film-for-sown-crops", Speaks: question.Film, Weight: Plain, Title: "Made for sown crops",
		Because: "Clear film is slit over the seedlings after emergence; transplants gain less and scorch in the hole.",
		Sources: []*table.Source{&table.Practice, &table.SweetCornClear}, Fires: "corn-short-season",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !row(o).SeedOnly {
				return silent()
			}
			if f.Seeded {
				return speaksFor(0.5, "Seed can come up under it; it must be slit by hand when the leaves touch.")
			}
			return against(0.6, "It is mostly used over seed and must be opened after emergence. {} are set out.", unit.Capital(f.Crop.Name))
		}},
	{ID: "film-yellow-nutsedge", Speaks: question.Film, Weight: Plain, Title: "Yellow nutsedge",
		Because: "Opaque film held yellow nutsedge best; films that pass light let it open its leaves.",
		Sources: []*table.Source{&table.NutsedgeYellow2005, &table.NutsedgeGeorgia}, Fires: "pepper-yellow-nutsedge",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Weeds.Nutsedge != "yellow" {
				return silent()
			}
			switch film(o) {
			case table.Black:
				return speaksFor(0.5, "Black film cut yellow nutsedge shoots by 96 % in pots.")
			case table.Paper:
				return speaksFor(0.8, "Nutsedge did not get through paper in a field trial.")
			case table.WhiteOnBlack, table.SilverOnBlack:
				return against(0.3, "In mixed stands white and silver films had up to twice the shoots of black in one of two years.")
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
				return speaksFor(0.9, "Nutsedge did not get through paper in a field trial, but did through every plastic.")
			case table.Clear, table.InfraredTransmitting:
				return speaksFor(0.3, "Film that passes light cut purple nutsedge by 70 to 88 % in the field: its leaves open under the film. Other trials differ.")
			}
			return against(0.5, "Purple nutsedge came through black film nearly as on bare ground.")
		}},
	{ID: "film-virus-insects", Speaks: question.Film, Weight: Strong, Title: "Keeps virus carriers away",
		Because: "A virus caught young can take the whole crop; the effect ends when leaves cover about 60 % of the film.",
		Sources: []*table.Source{&table.SilverSquash1993, &table.SilverZucchini1995, &table.SilverThrips, &table.SilverWhitefly2023, &table.Gladiolus1965, &table.CanopyLimit}, Fires: "squash-virus",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			carrier := insectOf(f.Case.Weeds.Insects)
			if carrier == 0 || f.Crop.Virus&carrier == 0 || row(o).Repels&carrier == 0 {
				return silent()
			}
			fit := 0.9
			if film(o) != table.SilverOnBlack {
				fit = 0.4
			}
			return speaksFor(fit, "It turns {} away while the plants are small: virus came 7 to 13 days later on silver in squash trials.", f.Case.Weeds.Insects)
		}},
	{ID: "film-shows-off-insects", Speaks: question.Film, Weight: Slight, Title: "Carriers that may come",
		Because: "Even without a known outbreak, late plantings of a virus-prone crop meet more carriers.",
		Sources: []*table.Source{&table.ColourCompare, &table.SilverPumpkin}, Fires: "squash-virus",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Crop.Virus == 0 || film(o) != table.SilverOnBlack || f.Case.Weeds.Insects == "none" || !(f.AirMean > 18 || f.Autumn) {
				return silent()
			}
			return speaksFor(0.4, "{} catch virus from flying insects, more so when planted late.", unit.Capital(f.Crop.Name))
		}},
	{ID: "film-draws-thrips", Speaks: question.Film, Weight: Plain, Title: "Colour that draws thrips",
		Because: "Thrips fly to blue and carry virus to tomato and pepper.",
		Sources: []*table.Source{&table.ColourCompare}, Fires: "pepper-thrips",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if row(o).Draws == 0 || f.Crop.Virus&row(o).Draws == 0 {
				return silent()
			}
			if f.Case.Weeds.Insects == "thrips" {
				return against(1, "Blue draws thrips, and you have them.")
			}
			return against(0.5, "Blue draws thrips, which carry virus to {}.", f.Crop.Name)
		}},
	{ID: "film-trial-gain", Speaks: question.Film, Weight: Slight, Title: "Trials on this crop",
		Because: "A yield trial elsewhere is a hint, not a promise.",
		Sources: []*table.Source{&table.ColourCompare, &table.SilverPumpkin, &table.Zimbabwe2014, &table.KansasRed}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			for _, t := range f.Crop.Trials {
				if t.Gain.Source == nil || t.Film != film(o) {
					continue
				}
				if t.Agrees {
					return speaksFor(saturate(float64(t.Gain.Low), 30), "Trials on {} gave {} to {} more yield than the film they were set against.", f.Crop.Name, t.Gain.Low, t.Gain.High)
				}
				if t.Gain.Low < 0 {
					return against(0.3, "Trials on {} disagree: from {} less to {} more yield.", f.Crop.Name, -t.Gain.Low, t.Gain.High)
				}
				return speaksFor(saturate(float64(t.Gain.High), 60), "Some trials on {} gave up to {} more yield, others none.", f.Crop.Name, t.Gain.High)
			}
			return silent()
		}},
	{ID: "film-mixed-evidence", Speaks: question.Film, Weight: Plain, Title: "Evidence is mixed",
		Because: "Red and blue film won in some trials and lost in others.",
		Sources: []*table.Source{&table.NewEngland, &table.UtahGuide, &table.RedNematode1997}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !row(o).Experiment {
				return silent()
			}
			return against(0.7, "Trials of {} disagree. Try one short strip beside the film you trust.", row(o).Name)
		}},
	{ID: "film-price", Speaks: question.Film, Weight: Slight, Title: "Price of the film",
		Because: "The step in price is small beside the crop, but real.",
		Sources: []*table.Source{&table.NewEngland, &table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			class := row(o).PriceClass.Value
			if class <= 1 {
				return silent()
			}
			return against(saturate(class-1, 1.5), "It costs about {} times as much as plain black.", class)
		}},
	{ID: "film-removal", Speaks: question.Film, Weight: Slight, Title: "Getting it out of the field",
		Because: "Lifting and hauling is the hardest day of the film's life; many places refuse dirty film.",
		Sources: []*table.Source{&table.Retrieval2019, &table.CFR205, &table.RaspberryFilm2020}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch row(o).Removal {
			case table.TillIn:
				return speaksFor(0.6, "It rots in the soil; nothing is hauled away.")
			case table.TillInSlowly:
				return speaksFor(0.5, "It is tilled in, though pieces stay in the soil for a year or more.")
			}
			return silent()
		}},
	{ID: "film-next-crops", Speaks: question.Film, Weight: Strong, Title: "Lasts for the next crop",
		Because: "Film that has gone to pieces cannot carry a second crop.",
		Sources: []*table.Source{&table.Weathering, &table.GeorgiaBeds2019}, Fires: "tomato-two-crops",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			crops := f.Case.Practice.CropsOnFilm.Or(1)
			left := row(o).CoverLeft.Value
			if crops < 2 {
				return silent()
			}
			if left < 30 {
				return rulesOut("It does not last for {} crops: about {} of it is left after two.", int(crops), left)
			}
			return against(saturate(float64(95-left), 25), "About {} of its cover was left after two crops in a trial.", left)
		}},
	{ID: "film-lasts-the-crop", Speaks: question.Film, Weight: Strong, Title: "Lasts until harvest",
		Because: "Film that breaks up early lets weeds in at the worst time.",
		Sources: []*table.Source{&table.BioLaying, &table.EN17033}, Fires: "strawberry-autumn",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			need := float64(f.Crop.DaysToHarvest.High) + 10
			over := need - row(o).Life.Value
			if over <= 0 {
				return silent()
			}
			return against(saturate(over, 25), "The crop is on the film for about {} and this film holds for about {}.", unit.DaysOf(need), unit.DaysOf(row(o).Life.Value))
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
			if set == 0 || set&(1<<o) != 0 {
				return silent()
			}
			return rulesOut("You did not name it among the films you can buy.")
		}},
	{ID: "film-second-crop-heat", Speaks: question.Film, Weight: Plain, Title: "The second crop starts in summer",
		Because: "A second crop goes into film that lies in full summer sun.",
		Sources: []*table.Source{&table.FloridaCir805, &table.LateSwitch}, Fires: "tomato-two-crops",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.CropsOnFilm.Or(1) < 2 || f.HotSeason < 10 {
				return silent()
			}
			switch film(o) {
			case table.WhiteOnBlack, table.SilverOnBlack:
				return speaksFor(0.3, "The next crop is set in summer, when pale film is the safer bed.")
			case table.Black, table.BiodegradableBlack, table.Red, table.Blue:
				return against(0.2, "The next crop is set in summer heat; the film must be painted white for it.")
			}
			return silent()
		}},
	{ID: "film-commonest", Speaks: question.Film, Weight: Slight, Title: "The film everybody knows",
		Because: "The commonest film is to be had everywhere and its habits are known.",
		Sources: []*table.Source{&table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if film(o) != table.Black {
				return silent()
			}
			return speaksFor(0.5, "Black is the commonest film, easy to find, and the best at holding weeds.")
		}},
	{ID: "film-wind", Speaks: question.Film, Weight: Plain, Title: "Stands the wind",
		Because: "Paper and thin films tear at the shoulder where wind works them.",
		Sources: []*table.Source{&table.Plasticulture, &table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || row(o).Embossable {
				return silent()
			}
			return against(0.6, "Your field is windy, and {} tears at the edges.", row(o).Name)
		}},
	{ID: "film-autumn-warmth", Speaks: question.Film, Weight: Plain, Title: "Warmth for the autumn",
		Because: "A crop that grows into the cold gains from a bed that holds warmth.",
		Sources: []*table.Source{&table.NCStrawberry, &table.NewEngland}, Fires: "strawberry-autumn",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			best := f.Crop.RootBest.Low
			warmer := f.MeanUnder[o].Minus(f.MeanUnder[facts.Bare])
			if !f.Autumn || !f.Cooling || f.MeanSeason >= best || warmer <= 0 {
				return silent()
			}
			return speaksFor(saturate(float64(warmer), 2), "The season turns cold: it averages {} until harvest, and this film keeps the bed {} warmer.", f.MeanSeason, warmer)
		}},
	{ID: "film-fumigated", Speaks: question.Film, Weight: Plain, Title: "Must hold a fumigant",
		Because: "Gas that escapes neither works nor may be allowed: the label names the films.",
		Sources: []*table.Source{&table.BarrierFilm2013, &table.FumigantManual}, Fires: "tomato-fumigated",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Case.Practice.FumigatedOn.Given || row(o).Embossable {
				return silent()
			}
			return against(0.9, "The ground was treated: {} does not hold a gas. The label names the films that do.", row(o).Name)
		}},
	{ID: "film-already-down", Speaks: question.Film, Weight: Strong, Title: "Film already on the bed",
		Because: "Film that lies there and is whole costs nothing and wastes nothing.",
		Sources: []*table.Source{&table.Weathering, &table.Practice}, Fires: "squash-on-worn-film",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			p := &f.Case.Practice
			if p.ReuseFilm == "" || film(o).Key() != p.ReuseFilm {
				return silent()
			}
			return speaksFor(p.ReuseCover.Or(80)/100, "It is down already and {} of it is whole.", unit.PercentOf(p.ReuseCover.Or(80)/100))
		}},
	{ID: "film-rough-bed", Speaks: question.Film, Weight: Slight, Title: "Works through a rough bed",
		Because: "Opaque film warms soil only where it lies on it; film that passes the sun warms soil across a gap.",
		Sources: []*table.Source{&table.Contact, &table.TilthMichigan}, Fires: "pepper-cloddy-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Rough || row(o).SunPassed.Value < 0.2 || f.MeanUnder[facts.Bare] > f.Crop.RootBest.Low {
				return silent()
			}
			return speaksFor(0.4, "Clods or dry soil hold the film off the bed; film that passes sunlight still warms the soil beneath.")
		}},
	{ID: "film-warm-nights", Speaks: question.Film, Weight: Slight, Title: "Nights that stay warm",
		Because: "Where nights are hot and humid the crop needs every cooler hour.",
		Sources: []*table.Source{&table.IowaHeat, &table.NorthCarolinaHeat, &table.PurdueHeat, &table.FloridaCir805}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.WarmNights < 10 {
				return silent()
			}
			warmer := float64(f.MeanUnder[o].Minus(f.MeanUnder[facts.Bare]))
			if warmer > 0 {
				return against(saturate(warmer, 3), "Nights stay above {} on {} nights until harvest; this film adds warmth to them.", f.Crop.HeatNight.Value, int(f.WarmNights))
			}
			return speaksFor(saturate(-warmer, 3), "Nights stay above {} on {} nights until harvest; this film takes a little heat away.", f.Crop.HeatNight.Value, int(f.WarmNights))
		}},
}

func weedWord(f *facts.Facts) string {
	if w := f.Case.Weeds.Pressure; w != "" {
		return w
	}
	return "moderate"
}

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
