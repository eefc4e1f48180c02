package water

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/unit"
)

// soil works out the longest single run. It needs the flow that the tape has.
func (w *work) soil() {
	in := &w.in
	if !in.Soil.Given {
		return
	}
	class := &in.Soil.Value
	s := &Soil{GuideLow: class.GuideLow, GuideHigh: class.GuideHigh}
	water := class.Of(in.OrganicMatter.Or(soilwater.UsualOrganicMatter))
	s.Water = soilwater.Water{
		WiltingPoint:  round(water.WiltingPoint, stepFactor),
		FieldCapacity: round(water.FieldCapacity, stepFactor),
		Saturation:    round(water.Saturation, stepFactor),
		Available:     round(water.Available, stepFactor),
		Conductivity:  round(water.Conductivity, stepVolume),
	}
	w.plan.Soil = s
	if !in.BedTop.Given {
		return
	}
	oneLine := in.WettedWidth.Or(class.Wet)
	s.Strip = soilwater.Wet(oneLine, in.BedTop.Value, in.Spacing, in.Laterals)
	if in.Spacing > soilwater.OverlapShare*in.WettedWidth.Or(class.WetHigh) && !w.light { // even the widest wetting on record leaves gaps
		w.warn("outlets-apart", Care, "spacing at most 0.8 of the wetted width (from memory, NRCS handbook 623 chapter 7)",
			unit.Say("Outlets {} apart may leave dry gaps: one line wets about {} here. Take {} or closer.", unit.Short(in.Spacing), unit.Short(oneLine), unit.Short(s.Strip.WidestStep)))
	}
	if s.Strip.Share < narrowStrip {
		w.warn("narrow-wet-strip", Note, "common practice, no source",
			unit.Say("The tape wets about {} of the bed top. Plant near the tape, or lay one more line.", s.Strip.Share))
	}
	if !in.RootDepth.Given || !in.Depletion.Given || w.bedFlow <= 0 {
		return
	}
	s.Depth = soilwater.DepthInBed(in.RootDepth.Value)
	use := soilwater.TableUse
	if w.plan.Demand != nil {
		use = w.plan.Demand.Peak.Use
	}
	s.Depletion = round(soilwater.DepletionOn(in.Depletion.Value, use), stepFactor)
	section := soilwater.Section{Available: s.Water.Available, Depth: s.Depth, Depletion: s.Depletion, Width: s.Strip.Width}
	s.Store = per100m(section.Store())
	w.longest = w.run(section)
	if w.light {
		return
	}
	s.Longest = round(w.longest, stepMinutes)
	s.LongestLow, s.LongestHigh = s.Longest, s.Longest
	for _, available := range [...]float64{s.Water.Available, class.GuideLow, class.GuideHigh} {
		for _, wet := range [...]unit.Metres{class.WetLow, oneLine, class.WetHigh} {
			if available == 0 || in.WettedWidth.Given && wet != oneLine {
				continue
			}
			other := section
			other.Available = available
			other.Width = soilwater.Wet(wet, in.BedTop.Value, in.Spacing, in.Laterals).Width
			run := round(w.run(other), stepMinutes)
			s.LongestLow, s.LongestHigh = min(s.LongestLow, run), max(s.LongestHigh, run)
		}
	}
	w.step("store", "Water that the wet strip may give",
		named("store", s.Store),
		named("available water, share of the soil", unit.FineShare(100*s.Water.Available)),
		named("root depth in the bed", unit.Short(s.Depth)),
		named("share that may be used", unit.FineShare(100*s.Depletion)),
		named("wetted width", unit.Short(s.Strip.Width)))
	w.step("longest-run", "Longest single run",
		named("longest run", s.Longest),
		named("store", s.Store),
		named("flow of the bed", unit.LitresPerHourPer100Metres(round(100*w.bedFlow, stepVolume))))
}

func (w *work) run(s soilwater.Section) unit.Minutes {
	return s.LongestRun(unit.LitresPerHourPer100Metres(100 * w.bedFlow))
}

// longestOn is the longest run on a day of another crop use.
func (w *work) longestOn(use unit.Millimetres) unit.Minutes {
	s := w.plan.Soil
	if s == nil || s.Depletion == 0 {
		return 0
	}
	return w.longest * unit.Minutes(soilwater.DepletionOn(w.in.Depletion.Value, use)/s.Depletion)
}
