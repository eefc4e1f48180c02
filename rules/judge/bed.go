package judge

import (
	"math"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// LeastPower is what forms a bed of each height and lays on it in one pass. Compact
// layers form 4 in behind 23–25 hp and take 4-ft film behind 30–35 hp
// ([table.CompactLayers]); 55 hp for 8 in and 60 hp for 10 in are common practice, no
// source; 20 hp on the flat is from memory.
var LeastPower = [len(question.Heights)]unit.Kilowatts{20 * unit.KilowattsPerHP, 23 * unit.KilowattsPerHP, 35 * unit.KilowattsPerHP, 55 * unit.KilowattsPerHP, 60 * unit.KilowattsPerHP}

// LeastWalk is the power of the strongest walk-behind tractors: 15 hp (from memory).
const LeastWalk = unit.Kilowatts(15 * unit.KilowattsPerHP)

// PowerSlack is how far below the power for a bed a tractor may lie and still do, kW: the
// figures are no finer.
const PowerSlack = 0.5

// BeyondTractor is the share of the power for a bed that the tractor at hand lacks: 0
// where it has enough, where none was named or where hands do the work. A walk-behind
// tractor lays narrow film on the flat, with a layer of its own.
func BeyondTractor(f *facts.Facts, o question.Option) float64 {
	p := f.Case.Practice.Tractor
	if f.Case.Practice.Laying == "hand" || f.Case.Practice.FilmDown() || !p.Given || p.Value+PowerSlack >= LeastPower[o] || o == 0 && p.Value <= LeastWalk {
		return 0
	}
	return 1 - float64(p.Value/LeastPower[o])
}

// raised is how far an option stands above flat ground, 0–1.
func raised(o question.Option) float64 {
	return float64(question.Heights[o]) / float64(question.Heights[len(question.Heights)-1])
}

// highBed is the place of 8 in among the heights.
const highBed = 3

// drains is how much of the drainage that height can give a bed gives, 0–1: what lies
// above 8 in drains no better.
func drains(o question.Option) float64 {
	return min(float64(question.Heights[o]/question.Heights[highBed]), 1)
}

// Across is the bed of an option, one of [question.Heights], cut across.
func Across(f *facts.Facts, o question.Option) profile.Bed {
	return profile.Across(question.Heights[o], f.Top, f.Centres, f.SideSlope, f.Case.Practice.FilmWidth)
}

// nearest is the place of the size in a list that lies nearest to one at hand.
func nearest[T ~float64](list []T, to T) question.Option {
	best := 0
	for i := range list {
		if math.Abs(float64(list[i]-to)) < math.Abs(float64(list[best]-to)) {
			best = i
		}
	}
	return question.Option(best)
}

// guided tells whether a guide names this height for the crop.
func guided(f *facts.Facts, o question.Option) bool {
	h := f.Crop.BedHeight
	return h.Given() && float64(question.Heights[o])+sizeSlack >= float64(h.Low) && float64(question.Heights[o]) <= float64(h.High)+sizeSlack
}

var bedRules = [...]*Rule{
	{ID: "bed-already-formed", Speaks: question.Bed, Weight: Strong, Title: "The bed is formed already",
		Because: "A bed under film is not formed anew.",
		Sources: []*table.Source{&table.Practice}, Fires: "squash-on-worn-film",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			h := f.Case.Practice.ReuseHeight
			if !h.Given || !f.Case.Practice.FilmDown() {
				return silent()
			}
			if nearest(question.Heights[:], h.Value) != o {
				return rulesOut("The bed stands at {}.", unit.Short(h.Value))
			}
			return speaksFor(1, "The bed stands at {} under the film that is down.", unit.Short(h.Value))
		}},
	{ID: "bed-film-too-narrow", Speaks: question.Bed, Weight: Strong, Title: "The roll must cover the bed",
		Because: "Film that is not buried blows off in the first wind.",
		Sources: []*table.Source{&table.FloridaCir805, &table.UtahGuide, &table.BuriedEdge}, Fires: "pepper-narrow-roll",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			b := Across(f, o)
			if b.Covers() || f.Case.Practice.FilmDown() {
				return silent()
			}
			if b.FilmWidth == 0 {
				return rulesOut("Top, sides and {} of tuck on each side need film {} wide; the widest roll sold is {}.", unit.Short(profile.LeastTuck), unit.Short(b.Needed), unit.Short(profile.RollWidths[len(profile.RollWidths)-1]))
			}
			return rulesOut("Top, sides and {} of tuck on each side need film {} wide; your roll of {} leaves {} to bury.", unit.Short(profile.LeastTuck), unit.Short(b.Needed), unit.Short(b.FilmWidth), unit.Short(b.Tuck))
		}},
	{ID: "bed-tractor-power", Speaks: question.Bed, Weight: Strong, Title: "The tractor must form it",
		Because: "A tractor that slips makes a crooked, loose bed.",
		Sources: []*table.Source{&table.CompactLayers, &table.Plasticulture, &table.Practice}, Fires: "pepper-stony-light",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			lack := BeyondTractor(f, o)
			if lack == 0 {
				return silent()
			}
			return against(saturate(lack, weakHalf), "To form and cover this bed in one pass takes about {}; your tractor has {}.", LeastPower[o], f.Case.Practice.Tractor.Value)
		}},
	{ID: "bed-drainage", Speaks: question.Bed, Weight: Strong, Title: "Drains the roots",
		Because: "Roots that stand in water for a day die back.",
		Sources: []*table.Source{&table.WhyRaised, &table.FlowerBed1998, &table.NewEngland}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch f.Case.Soil.Drainage {
			case "slow":
				if o == 0 {
					return against(slowFlat, "The ground drains slowly: on the flat the roots would stand in water.")
				}
				return speaksFor(drains(o)*slowRaised, "It lifts the roots {} above ground that drains slowly.", unit.Short(question.Heights[o]))
			case "quick":
				if o > 1 {
					return against(raised(o)*quickRaised, "The ground drains quickly: a bed this high dries at the shoulders.")
				}
			}
			return silent()
		}},
	{ID: "bed-heavy-soil", Speaks: question.Bed, Weight: Plain, Title: "Heavy soil",
		Because: "Clay warms and drains slowly; height helps with both.",
		Sources: []*table.Source{&table.WhyRaised, &table.RaisedBeds}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Soil.Heavy < heavyFrom {
				return silent()
			}
			if o == 0 {
				return against(f.Soil.Heavy*heavyFit, "On {} a flat bed stays wet and cold in spring.", f.Soil.Name)
			}
			return speaksFor(f.Soil.Heavy*drains(o)*heavyFit, "On {} a bed {} high drains and warms sooner.", f.Soil.Name, unit.Short(question.Heights[o]))
		}},
	{ID: "bed-sandy-soil", Speaks: question.Bed, Weight: Plain, Title: "Sandy soil dries out",
		Because: "A high sand bed is hard to keep wet from one tape, and slumps; Florida forms 6 to 8 in on sand all the same.",
		Sources: []*table.Source{&table.RaisedBeds, &table.DryBeds, &table.NewEnglandDrip, &table.Practice}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Soil.Heavy > sandyTo || o < highBed || guided(f, o) {
				return silent()
			}
			return against(sandFit*raised(o)*(1-sandFade*f.Soil.Heavy), "On {} a bed {} high dries at the sides and slumps.", f.Soil.Name, unit.Short(question.Heights[o]))
		}},
	{ID: "bed-early-warmth", Speaks: question.Bed, Weight: Plain, Title: "Warms earlier",
		Because: "Raised ground is drier and looser, and so warms sooner; no degrees were measured.",
		Sources: []*table.Source{&table.RaisedBeds, &table.WhyRaised}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			short := bareShort(f)
			if float64(short) < tellable || o == 0 || BeyondTractor(f, o) > 0 {
				return silent()
			}
			return speaksFor(saturate(float64(short), earlyHalf)*raised(o), "On planting day bare ground is {} cooler than the {} that planting waits for: a raised bed warms sooner.", short, f.WorkFloor)
		}},
	{ID: "bed-trade-height", Speaks: question.Bed, Weight: Plain, Title: "What most growers form",
		Because: "Layers and bed pans are made for it.",
		Sources: []*table.Source{&table.Practice, &table.Midwest2022, &table.UsingFilmDrip}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch o {
			case 2:
				return speaksFor(usualHeight, "Most vegetable beds are formed {} high, and bed pans are made for {}.", unit.Between(unit.Short(question.Heights[1]), unit.Short(question.Heights[3])), unit.Short(question.Heights[2]))
			case 1, 3:
				return speaksFor(nearUsual, "Many vegetable beds are formed {} high.", unit.Short(question.Heights[o]))
			}
			return silent()
		}},
	{ID: "bed-for-this-crop", Speaks: question.Bed, Weight: Strong, Title: "Published height for this crop",
		Because: "A guide that names a height has seen it work.",
		Sources: []*table.Source{&table.StrawberryBed, &table.Midwest2022, &table.FlowerBed1998}, Fires: "strawberry-autumn",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			h := f.Crop.BedHeight
			if !h.Given() {
				return silent()
			}
			says, values := "A guide gives {} for {}.", []any{unit.Between(unit.Short(h.Low), unit.Short(h.High)), f.Crop.Name}
			if guided(f, o) {
				return speaksFor(guideHeight, says, values...)
			}
			off := max(float64(h.Low-question.Heights[o]), float64(question.Heights[o]-h.High))
			return against(saturate(off, guideHalf), says, values...)
		}},
	{ID: "bed-root-depth", Speaks: question.Bed, Weight: Slight, Title: "Room for the roots",
		Because: "Loose depth is worth more to deep roots than to shallow ones.",
		Sources: []*table.Source{&table.F56T22, &table.FlowerBed1998}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == 0 || float64(f.Crop.RootDepth.Low) < deepRoots {
				return silent()
			}
			return speaksFor(raised(o)*rootsFit, "The roots of {} go {} deep and use the loose soil.", f.Crop.Name, unit.Short(f.Crop.RootDepth.Low))
		}},
	{ID: "bed-slope", Speaks: question.Bed, Weight: Plain, Title: "On a slope",
		Because: "High beds across a slope dam water until it breaks through.",
		Sources: []*table.Source{&table.RunoffRye, &table.Runoff}, Fires: "melon-hillside",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			slope := f.Case.Soil.Slope.Value
			if slope <= levelTo || o < 2 {
				return silent()
			}
			return against(saturate(slope, slopeHalf)*raised(o), "On a slope of {} a bed {} high collects water in the alley and may wash out.", unit.FineShare(slope), unit.Short(question.Heights[o]))
		}},
	{ID: "bed-by-hand", Speaks: question.Bed, Weight: Strong, Title: "Formed by hand",
		Because: "Shoveled beds cost hours for each inch.",
		Sources: []*table.Source{&table.Guide205, &table.HandLaying}, Fires: "flowers-by-hand",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.Laying != "hand" || o == 0 {
				return silent()
			}
			return against(raised(o)*shovelFit, "By hand, a bed {} high has to be shoveled up.", unit.Short(question.Heights[o]))
		}},
	{ID: "bed-wet-at-laying", Speaks: question.Bed, Weight: Slight, Title: "Wet ground in spring",
		Because: "Ground that is wet at laying time stays wet.",
		Sources: []*table.Source{&table.WhyRaised}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Wetness != "wet" || o == 0 {
				return silent()
			}
			return speaksFor(drains(o)*wetFit, "The ground is wet at laying time: a raised bed dries sooner.")
		}},
	{ID: "bed-wind", Speaks: question.Bed, Weight: Slight, Title: "Wind on the shoulder",
		Because: "A tall shoulder gives the wind a hold.",
		Sources: []*table.Source{&table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || o < 2 {
				return silent()
			}
			return against(raised(o)*shoulderFit, "Your field is windy, and wind pulls at shoulders {} high.", unit.Short(question.Heights[o]))
		}},
	{ID: "bed-scarce-water", Speaks: question.Bed, Weight: Slight, Title: "Little water",
		Because: "A lower bed loses less water at its sides.",
		Sources: []*table.Source{&table.RaisedBeds}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Case.Water.Flow.Given || f.BedMetres == 0 || o < 2 {
				return silent()
			}
			hours := float64(f.PeakLitres) * float64(f.BedMetres) / 100 / float64(f.Usable)
			if hours < scarceHours {
				return silent()
			}
			if hours > dayHours {
				return against(raised(o)*scarceFit, "Your source cannot give all that full leaf takes; a lower bed dries less.")
			}
			return against(raised(o)*scarceFit, "Your source must run {} a day at full leaf; a lower bed dries less.", unit.Hours(hours))
		}},
	{ID: "bed-flat-is-simple", Speaks: question.Bed, Weight: Slight, Title: "Flat is simple",
		Because: "Flat ground needs no former and less power, where it drains.",
		Sources: []*table.Source{&table.NewEngland}, Fires: "corn-short-season",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o != 0 || f.Case.Soil.Drainage == "slow" {
				return silent()
			}
			return speaksFor(simpleFit, "Both flat and raised beds work where the ground drains; flat is the least work.")
		}},
	{ID: "bed-film-and-power", Speaks: question.Bed, Weight: Slight, Title: "Film and power for each inch",
		Because: "Every inch of height takes wider film and a stronger tractor.",
		Sources: []*table.Source{&table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o < 2 || f.Case.Practice.Laying == "hand" || f.Case.Practice.FilmDown() {
				return silent()
			}
			b := Across(f, o)
			return against(raised(o)*costFit, "A bed {} high takes film {} wide and about {} to form.", unit.Short(question.Heights[o]), unit.Short(b.Needed), LeastPower[o])
		}},
}
