package judge

import (
	"math"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func tapeOf(o question.Option) *table.Tape { return &table.Tapes[o] }

// dayHours are the hours of a day: no more can be watered in it.
const dayHours = 24

// hourSpan shows a daily run in the unit that suits it.
func hourSpan(run unit.Minutes) unit.Hours { return unit.Hours(math.Round(float64(run)/6) / 10) }

// zonesOf names the beds that are watered together.
func zonesOf(n int) unit.Quantity {
	if n == 1 {
		return unit.Of("all beds together")
	}
	return unit.Count(n, "zone", "zones")
}

var tapeRules = [...]*Rule{
	{ID: "tape-wetting", Speaks: question.Tape, Weight: Strong, Title: "Wet spots that meet",
		Because: "Where wet spots do not meet, plants between them go dry.",
		Sources: []*table.Source{&table.ClemsonTape, &table.NewEnglandDrip, &table.WetterNEH}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			s, low, high := tapeOf(o).Spacing, f.Soil.Spacing.Low, f.Soil.Spacing.High
			switch {
			case !f.WetsMeet(int(o)):
				fit := saturate(float64(s-high), gapHalf)
				if f.Reached() { // closer emitters would do
					fit = gapFit + fit*(1-gapFit)
				}
				return against(fit, "On {} one emitter wets about {}. Emitters {} apart leave dry gaps; {} is usual.", f.Soil.Name, unit.Short(f.Soil.Wetted.Value), unit.Short(s), unit.Between(unit.Short(low), unit.Short(high)))
			case s < low-facts.SpacingSlack:
				return against(saturate(float64(low-s), closeHalf), "On {} emitters {} apart are closer than they need to be; {} is usual.", f.Soil.Name, unit.Short(s), unit.Between(unit.Short(low), unit.Short(high)))
			}
			return silent()
		}},
	{ID: "tape-plant-spacing", Speaks: question.Tape, Weight: Plain, Title: "An emitter near each plant",
		Because: "A young root ball is the size of a fist.",
		Sources: []*table.Source{&table.Practice, &table.TapeOffset}, Fires: "onion-sets",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			s := tapeOf(o).Spacing
			if over := s - f.InRow; float64(over) > farFrom {
				return against(saturate(float64(over), farHalf), "Plants are {} apart and emitters {}: some plants start far from water.", unit.Short(f.InRow), unit.Short(s))
			}
			return silent()
		}},
	{ID: "tape-trade-range", Speaks: question.Tape, Weight: Plain, Title: "What most growers use",
		Because: "It is stocked everywhere, and how it behaves is well known.",
		Sources: []*table.Source{&table.Practice, &table.ClemsonTape}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			t := tapeOf(o)
			if float64(t.Spacing) < tradeClosest || float64(t.Spacing) > tradeWidest || t.Bore > table.CommonBore {
				return silent()
			}
			low, high := unit.FromGallonsPerMinutePer100Feet(tradeLow), unit.FromGallonsPerMinutePer100Feet(tradeHigh)
			if t.Flow >= low && t.Flow <= high {
				return speaksFor(tradeFit, "Most vegetables are grown on tape with emitters {} apart and a flow of about {}.", unit.Between(unit.Short(0.2032), unit.Short(0.3048)), unit.Between(low, unit.FromGallonsPerMinutePer100Feet(0.5)))
			}
			return speaksFor(tradeSpacing, "Most vegetables are grown on tape with emitters {} apart.", unit.Between(unit.Short(0.2032), unit.Short(0.3048)))
		}},
	{ID: "tape-one-bed-too-much", Speaks: question.Tape, Weight: Strong, Title: "The source must feed one bed",
		Because: "A zone cannot be smaller than a bed.",
		Sources: []*table.Source{&table.PennDrip2013}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if !f.Sketch[o].NoBed {
				return silent()
			}
			return rulesOut("One bed would draw {} more than the {} that your source gives to plan on.", max(f.Sketch[o].BedFlow-f.Usable, 0), f.Usable)
		}},
	{ID: "tape-hours-fit", Speaks: question.Tape, Weight: Strong, Title: "Fits the hours of the day",
		Because: "Hours that are not there cannot be watered.",
		Sources: []*table.Source{&table.FAO56, &table.PennDrip2013}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			s := &f.Sketch[o]
			if !s.HoursADay.Given {
				return silent()
			}
			day, have := s.HoursADay.Value, s.Hours
			if day > dayHours {
				return against(saturate(float64(day-have), lackHalf), "At full leaf {} need {} of running for each day: more than a day has.", zonesOf(s.Zones), day)
			}
			if day > have {
				return against(saturate(float64(day-have), lackHalf), "At full leaf {} need {} of running a day; you have {}.", zonesOf(s.Zones), day, have)
			}
			return speaksFor(saturate(float64(have-day), spareHalf)*spareFit, "At full leaf {} need {} of running a day, within the {} that the source may run.", zonesOf(s.Zones), day, have)
		}},
	{ID: "tape-run-length", Speaks: question.Tape, Weight: Strong, Title: "Reaches the end of the bed",
		Because: "A dry far end is the commonest fault of long beds.",
		Sources: []*table.Source{&table.KansasTape, &table.PennDrip2013}, Fires: "tomato-long-beds",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			spread := f.Sketch[o].Spread
			if !f.Case.Field.BedLength.Given || spread <= facts.DesignSpread {
				return silent() // what lies within the limit does not count
			}
			long := f.Case.Field.BedLength.Value / unit.Metres(f.Stretches)
			if spread >= noneLeft {
				return rulesOut("Along {} of tape the last plants would get no water at all.", long)
			}
			if spread > facts.WorstSpread {
				return rulesOut("Along {} of tape the driest plants would get {} less than the wettest. More than a fifth shows in the crop.", long, spread)
			}
			return against(unevenFit+saturate(float64(spread-facts.DesignSpread), unevenHalf)*unevenMore, "Along {} of tape the driest plants get {} less than the wettest; a tenth is the limit to design for.", long, spread)
		}},
	{ID: "tape-short-pulses", Speaks: question.Tape, Weight: Plain, Title: "Water that stays with the roots",
		Because: "A flow that passes the roots in minutes needs a timer and many pulses.",
		Sources: []*table.Source{&table.Drip1996, &table.NCATDrip, &table.Saxton2006}, Fires: "melon-weak-well",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			run := f.Sketch[o].Longest
			if float64(run) >= pulseFrom || run == 0 {
				return silent()
			}
			return against(saturate(pulseFrom-float64(run), pulseHalf), "After {} the water sinks below the roots on {}, so it must be given in short pulses.", run, f.Soil.Name)
		}},
	{ID: "tape-clogging", Speaks: question.Tape, Weight: Plain, Title: "Small outlets clog",
		Because: "Low-flow emitters have the narrowest passages.",
		Sources: []*table.Source{&table.ClogFlorida, &table.NewEnglandDrip}, Fires: "squash-virus",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.ClogRisk == 0 {
				return silent()
			}
			emitter := float64(tapeOf(o).Emitter())
			if emitter > smallEmitter {
				return silent()
			}
			return against(f.ClogRisk*saturate(smallFrom-emitter, smallHalf), "Its emitters give only {} each, and your water may clog them.", unit.SmallFlow(emitter))
		}},
	{ID: "tape-thirsty-crop", Speaks: question.Tape, Weight: Plain, Title: "Enough for a thirsty crop",
		Because: "Long hours leave no day for repairs.",
		Sources: []*table.Source{&table.FAO56, &table.Practice}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			day := hourSpan(f.Sketch[o].PeakRun)
			if float64(day) < longRun {
				return silent()
			}
			return against(saturate(float64(day)-longRun, longRunHalf), "At full leaf this tape must run {} a day for {} of water.", day, f.Peak)
		}},
	{ID: "tape-slope", Speaks: question.Tape, Weight: Slight, Title: "On a slope",
		Because: "Every foot of fall adds pressure, and tape of a high flow is the less even for it.",
		Sources: []*table.Source{&table.KansasTape}, Fires: "melon-hillside",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Soil.Slope.Value < slopeFrom {
				return silent()
			}
			return against(saturate(float64(tapeOf(o).Flow), flowHalf)*slopeFit, "On a slope of {} tape of a lower flow waters the two ends more evenly.", unit.FineShare(f.Case.Soil.Slope.Value))
		}},
	{ID: "tape-price", Speaks: question.Tape, Weight: Slight, Title: "Price",
		Because: "Closer emitters cost a little more for each meter.",
		Sources: []*table.Source{&table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if float64(tapeOf(o).Spacing) > closeFrom {
				return silent()
			}
			return against(saturate(tradeWidest-float64(tapeOf(o).Spacing), closeCostHalf), "Tape with emitters {} apart costs a little more.", unit.Short(tapeOf(o).Spacing))
		}},
	{ID: "tape-wide-bore", Speaks: question.Tape, Weight: Slight, Title: "A wide tape",
		Because: "Wide tape costs more and needs its own fittings; it pays where beds are long.",
		Sources: []*table.Source{&table.KansasTape, &table.Practice}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			t := tapeOf(o)
			if t.Bore <= table.CommonBore {
				return silent()
			}
			return against(wideFit, "Tape of {} costs more than the common {}, and takes fittings of its own.", unit.Bore(t.Bore), unit.Bore(table.CommonBore))
		}},
	{ID: "tape-low-pressure", Speaks: question.Tape, Weight: Plain, Title: "Little pressure",
		Because: "A tank on a stand gives a few kilopascals; high flow uses them up in the tape.",
		Sources: []*table.Source{&table.KansasTape}, Fires: "celosia-tank",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if s := &f.Sketch[o]; s.NoPush {
				return rulesOut("Your source leaves {} at the tape: too little to push water through it.", s.Pressure)
			}
			p := f.Case.Water.Pressure
			if !p.Given || float64(p.Value) >= littlePush {
				return silent()
			}
			return against(saturate(float64(tapeOf(o).Flow), flowHalf), "With only {} of pressure, a tape that draws less reaches further.", p.Value)
		}},
}
