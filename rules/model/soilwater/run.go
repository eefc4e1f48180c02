package soilwater

import (
	"math"

	"filmfurrow/rules/unit"
)

// Section is the soil under one metre of bed that the roots may drink from.
type Section struct {
	Available float64     // share of volume
	Depth     unit.Metres // of the roots in the wetted bed
	Depletion float64     // share of the available water that may be used, 0–1
	Width     unit.Metres // wetted, not the bed's
}

// Store is the water that a metre of bed may give before the plants feel it,
// and so the most that one run may put back: L/m.
func (s Section) Store() float64 {
	return 1000 * s.Available * float64(s.Depth) * s.Depletion * float64(s.Width)
}

// LongestRun is how long tape may run before water passes the roots, where it
// starts at the allowed depletion: store ÷ tape flow. flow is that of all the
// lines in the bed together. In US units, minutes = 0.6234 × available water
// (in/in) × depth (in) × depletion × width (ft) × 100 ÷ gal/min for 100 ft.
func (s Section) LongestRun(flow unit.LitresPerHourPer100Metres) unit.Minutes {
	return unit.Minutes(60 * s.Store() / (float64(flow) / 100))
}

// RunsADay is how many equal runs a day's water needs so that none is longer
// than the longest; at least one.
func RunsADay(day, longest unit.Minutes) int {
	if longest <= 0 || day <= longest {
		return 1
	}
	return int(math.Ceil(float64(day/longest) - 1e-9))
}

// MostDays is the longest interval that the plan offers: cycles run from three
// a day on sand to one in three days on heavy soil (HortTechnology 6(3):155,
// 1996).
const MostDays = 3

// Interval is how many days may pass between runs: 1 to 3.
func Interval(day, longest unit.Minutes) unit.Days {
	if day <= 0 {
		return MostDays
	}
	return unit.Days(min(max(math.Floor(float64(longest/day)+1e-9), 1), MostDays))
}

// Spaced puts runs that are too short to water a line evenly together: on every how
// many days to run, 1 to 3, and for how long. A run is never longer than the longest
// that stays with the roots, 0 where that is not known.
func Spaced(day, least, longest unit.Minutes) (every unit.Days, run unit.Minutes) {
	if day <= 0 || day >= least {
		return 1, day
	}
	every = unit.Days(min(math.Ceil(float64(least/day)-1e-9), MostDays))
	run = max(day*unit.Minutes(every), least)
	if longest > 0 && run > longest {
		run = max(longest, day)
		every = Interval(day, run)
	}
	return every, run
}

// BedRootDepth is the depth of soil that roots use in a film bed under tape,
// whatever the crop's roots could do in deep soil: about 0.3 m (common
// practice, no source; one extension schedule for drip assumes 12 in).
const BedRootDepth unit.Metres = 0.30

// DepthInBed caps the root depth of a table by the bed.
func DepthInBed(table unit.Metres) unit.Metres { return min(table, BedRootDepth) }

// TableUse is the crop use of a day that table 22 of FAO-56 holds for.
const TableUse unit.Millimetres = 5

// DepletionOn adjusts the allowed depletion p of FAO-56 table 22 to a crop use:
// p + 0.04·(5 − ETc), within 0.1 and 0.8 (from memory).
func DepletionOn(table float64, cropUse unit.Millimetres) float64 {
	return min(max(table+0.04*float64(TableUse-cropUse), 0.1), 0.8)
}

// OverlapShare is the share of a wetted width within which outlets must stand
// so that their wet circles join into a strip: 0.8 (from memory, NRCS National
// Engineering Handbook 623, chapter 7).
const OverlapShare = 0.8

// Strip is what lines of tape wet in a bed.
type Strip struct {
	Width      unit.Metres  // wetted, all lines, not more than the bed
	Continuous bool         // whether outlets stand close enough to join
	Share      unit.Percent // of the bed top
	OneLine    unit.Metres  // wetted by one line
	WidestStep unit.Metres  // widest outlet spacing that still joins
}

// Wet gives the strip that lines wet in a bed.
func Wet(oneLine, bedTop, spacing unit.Metres, lines int) Strip {
	width := min(oneLine*unit.Metres(lines), bedTop)
	return Strip{
		Width:      width,
		Continuous: spacing <= OverlapShare*oneLine,
		Share:      unit.Percent(100 * width / bedTop),
		OneLine:    oneLine,
		WidestStep: OverlapShare * oneLine,
	}
}
