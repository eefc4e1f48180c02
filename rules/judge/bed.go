package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// LeastPower is what forms a bed of each height and carries the layer: 50–60 hp
// for a bed of 6–8 in is common practice; the lighter rows are from memory.
var LeastPower = [len(question.Heights)]unit.Kilowatts{15, 22, 37, 41, 45}

// LeastWalk is the power of the strongest walk-behind tractors: 15 hp (from memory).
const LeastWalk = unit.Kilowatts(15 * unit.KilowattsPerHP)

// raised is how far an option stands above flat ground, 0–1.
func raised(o question.Option) float64 {
	return float64(question.Heights[o]) / float64(question.Heights[len(question.Heights)-1])
}

var bedRules = [...]*Rule{
	{ID: "bed-film-too-narrow", Speaks: question.Bed, Weight: Strong, Title: "The roll must cover the bed",
		Because: "Film that is not buried blows off in the first wind.",
		Sources: []*table.Source{&table.FloridaCir805, &table.UtahGuide, &table.BuriedEdge}, Fires: "pepper-narrow-roll",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			b := profile.Across(question.Heights[o], f.Top, f.Centres, f.Case.Practice.FilmWidth)
			if b.Covers() {
				return silent()
			}
			if b.FilmWidth == 0 {
				return rulesOut("Top, sides and {} of tuck on each side need film {} wide; the widest roll sold is {}.", unit.Short(profile.LeastTuck), unit.Short(b.Needed), unit.Short(profile.RollWidths[len(profile.RollWidths)-1]))
			}
			return rulesOut("Top, sides and {} of tuck on each side need film {} wide; your roll of {} leaves {} to bury.", unit.Short(profile.LeastTuck), unit.Short(b.Needed), unit.Short(b.FilmWidth), unit.Short(b.Tuck))
		}},
	{ID: "bed-tractor-power", Speaks: question.Bed, Weight: Strong, Title: "The tractor must form it",
		Because: "A tractor that slips makes a crooked, loose bed.",
		Sources: []*table.Source{&table.Practice, &table.Plasticulture}, Fires: "pepper-stony-light",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			p := f.Case.Practice.Tractor
			if f.Case.Practice.Laying == "hand" || !p.Given || p.Value+0.5 >= LeastPower[o] || (o == 0 && p.Value <= LeastWalk) {
				return silent() // a walk-behind tractor lays narrow film on the flat, with a layer of its own
			}
			return rulesOut("Forming and covering this bed takes at least {}; your tractor has {}.", LeastPower[o], p.Value)
		}},
	{ID: "bed-drainage", Speaks: question.Bed, Weight: Strong, Title: "Drains the roots",
		Because: "Roots that stand in water for a day die back.",
		Sources: []*table.Source{&table.WhyRaised, &table.FlowerBed1998, &table.NewEngland}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch f.Case.Soil.Drainage {
			case "slow":
				if o == 0 {
					return against(0.9, "The ground drains slowly: on the flat the roots would stand in water.")
				}
				return speaksFor(raised(o)*0.9, "It lifts the roots {} above ground that drains slowly.", unit.Short(question.Heights[o]))
			case "quick":
				if o > 1 {
					return against(raised(o)*0.4, "The ground drains quickly: a bed this high dries at the shoulders.")
				}
			}
			return silent()
		}},
	{ID: "bed-heavy-soil", Speaks: question.Bed, Weight: Plain, Title: "Heavy soil",
		Because: "Clay warms and drains slowly; height helps with both.",
		Sources: []*table.Source{&table.WhyRaised, &table.RaisedBeds}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Soil.Heavy < 0.4 {
				return silent()
			}
			if o == 0 {
				return against(f.Soil.Heavy*0.6, "On {} a flat bed stays wet and cold in spring.", f.Soil.Name)
			}
			return speaksFor(f.Soil.Heavy*raised(o)*0.6, "On {} a bed {} high drains and warms sooner.", f.Soil.Name, unit.Short(question.Heights[o]))
		}},
	{ID: "bed-sandy-soil", Speaks: question.Bed, Weight: Strong, Title: "Sandy soil dries out",
		Because: "A high sand bed is hard to keep wet from one tape, and slumps.",
		Sources: []*table.Source{&table.RaisedBeds, &table.DryBeds, &table.NewEnglandDrip}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Soil.Heavy > 0.2 || o < 2 {
				return silent()
			}
			return against(raised(o)*(1-2*f.Soil.Heavy), "On {} a bed {} high dries at the sides and slumps.", f.Soil.Name, unit.Short(question.Heights[o]))
		}},
	{ID: "bed-early-warmth", Speaks: question.Bed, Weight: Plain, Title: "Warms earlier",
		Because: "Raised ground is drier and looser, and so warms sooner; no degrees were measured.",
		Sources: []*table.Source{&table.RaisedBeds, &table.WhyRaised}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			short := f.SafeFloor.Minus(f.Under[table.Black])
			if short <= 0 || o == 0 {
				return silent()
			}
			return speaksFor(saturate(float64(short), 6)*raised(o), "Under black film the bed is {} short of the safe floor on planting day; raised ground warms sooner.", short)
		}},
	{ID: "bed-trade-height", Speaks: question.Bed, Weight: Plain, Title: "What most growers form",
		Because: "Layers and bed pans are made for it.",
		Sources: []*table.Source{&table.Practice, &table.Midwest2022, &table.UsingFilmDrip}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			switch {
			case o == 2 || o == 3:
				return speaksFor(0.6, "Most vegetable beds are formed {} to {} high.", unit.Short(question.Heights[2]), unit.Short(question.Heights[3]))
			case o == 1:
				return speaksFor(0.3, "Published beds for fruiting vegetables run from {} to {}.", unit.Short(question.Heights[1]), unit.Short(question.Heights[2]))
			}
			return silent()
		}},
	{ID: "bed-for-this-crop", Speaks: question.Bed, Weight: Plain, Title: "Published height for this crop",
		Because: "A guide that names a height has seen it work.",
		Sources: []*table.Source{&table.StrawberryBed, &table.Midwest2022, &table.FlowerBed1998}, Fires: "strawberry-autumn",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			h := f.Crop.BedHeight
			if !h.Given() {
				return silent()
			}
			if question.Heights[o]+0.005 >= h.Low && question.Heights[o] <= h.High+0.005 {
				return speaksFor(0.6, "A guide gives {} to {} for {}.", unit.Short(h.Low), unit.Short(h.High), f.Crop.Name)
			}
			off := float64(h.Low - question.Heights[o])
			if off < 0 {
				off = float64(question.Heights[o] - h.High)
			}
			return against(saturate(off, 0.15), "A guide gives {} to {} for {}.", unit.Short(h.Low), unit.Short(h.High), f.Crop.Name)
		}},
	{ID: "bed-root-depth", Speaks: question.Bed, Weight: Slight, Title: "Room for the roots",
		Because: "Loose depth is worth more to deep roots than to shallow ones.",
		Sources: []*table.Source{&table.F56T22, &table.FlowerBed1998}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == 0 || f.Crop.RootDepth.Low < 0.45 {
				return silent()
			}
			return speaksFor(raised(o)*0.5, "Roots of {} go {} deep and use the loose height.", f.Crop.Name, unit.Short(f.Crop.RootDepth.Low))
		}},
	{ID: "bed-slope", Speaks: question.Bed, Weight: Plain, Title: "On a slope",
		Because: "High beds across a slope dam water until it breaks through.",
		Sources: []*table.Source{&table.RunoffRye, &table.Runoff}, Fires: "melon-hillside",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			slope := f.Case.Soil.Slope.Value
			if slope <= 3 || o < 2 {
				return silent()
			}
			return against(saturate(slope, 10)*raised(o), "On a slope of {} % a bed {} high gathers water in the alley and may breach.", slope, unit.Short(question.Heights[o]))
		}},
	{ID: "bed-by-hand", Speaks: question.Bed, Weight: Strong, Title: "Formed by hand",
		Because: "Shovelled beds cost hours for each inch.",
		Sources: []*table.Source{&table.Guide205, &table.HandLaying}, Fires: "flowers-by-hand",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.Laying != "hand" || o == 0 {
				return silent()
			}
			return against(raised(o)*0.8, "By hand, a bed {} high has to be shovelled up.", unit.Short(question.Heights[o]))
		}},
	{ID: "bed-wet-at-laying", Speaks: question.Bed, Weight: Slight, Title: "Wet ground in spring",
		Because: "Ground that is wet at laying time stays wet.",
		Sources: []*table.Source{&table.WhyRaised}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Wetness != "wet" || o == 0 {
				return silent()
			}
			return speaksFor(raised(o)*0.7, "The ground is wet at laying: height helps it dry.")
		}},
	{ID: "bed-wind", Speaks: question.Bed, Weight: Slight, Title: "Wind on the shoulder",
		Because: "A tall shoulder gives wind a hold.",
		Sources: []*table.Source{&table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || o < 2 {
				return silent()
			}
			return against(raised(o)*0.6, "Your field is windy: wind works at shoulders {} high.", unit.Short(question.Heights[o]))
		}},
	{ID: "bed-scarce-water", Speaks: question.Bed, Weight: Slight, Title: "Little water",
		Because: "A lower bed loses less water at its sides.",
		Sources: []*table.Source{&table.RaisedBeds}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Case.Water.Flow.Given || f.BedMetres == 0 || o < 2 {
				return silent()
			}
			hours := float64(f.PeakLitres) * float64(f.BedMetres) / 100 / float64(f.Usable)
			if hours < 8 {
				return silent()
			}
			return against(raised(o)*0.6, "Your source must run {} h a day at full leaf; a lower bed dries less.", hours)
		}},
	{ID: "bed-flat-is-simple", Speaks: question.Bed, Weight: Slight, Title: "Flat is simple",
		Because: "Flat ground needs no former and less power, where it drains.",
		Sources: []*table.Source{&table.NewEngland}, Fires: "corn-short-season",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o != 0 || f.Case.Soil.Drainage == "slow" {
				return silent()
			}
			return speaksFor(0.5, "Both flat and raised beds work where the ground drains; flat is the least work.")
		}},
	{ID: "bed-film-and-power", Speaks: question.Bed, Weight: Slight, Title: "Film and power for each inch",
		Because: "Every inch of height takes wider film and a stronger tractor.",
		Sources: []*table.Source{&table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o < 2 || f.Case.Practice.Laying == "hand" {
				return silent()
			}
			b := profile.Across(question.Heights[o], f.Top, f.Centres, f.Case.Practice.FilmWidth)
			return against(raised(o)*0.5, "A bed {} high takes film {} wide and about {} to form.", unit.Short(question.Heights[o]), unit.Short(b.Needed), LeastPower[o])
		}},
}
