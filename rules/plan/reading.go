package plan

import (
	"math"

	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// ReadingDepth is where the handful is taken, beside the tape: common practice.
const ReadingDepth = unit.Metres(6 * unit.MetresPerInch)

// Feels is how many classes of moisture a squeezed handful is told apart in.
const Feels = 5

// feelLeft is the middle of each class, as a share of the water that the soil holds for
// roots: 0–25, 25–50, 50–75 and 75–100 %, and field capacity ([table.FeelNRCS]).
var feelLeft = [Feels]float64{0.125, 0.375, 0.625, 0.875, 1}

// feels are the classes in words, for coarse, moderately coarse, medium and fine soil,
// after [table.FeelNRCS].
var feels = [...][Feels]string{
	{"loose grains, no ball", "a very weak ball, grains on the fingers", "a weak ball, fingers damp, no ribbon", "a weak ball, fingers wet, no ribbon", "wet outline on the hand, or free water"},
	{"a very weak ball that falls apart", "a weak ball, no damp on the fingers", "a ball with finger marks, fingers hardly damp", "a ball, fingers wet, a weak ribbon", "a soft ball, free water for a moment"},
	{"crumbles, fingers stay dry", "a weak, rough ball, no damp on the fingers", "a ball, a weak ribbon, fingers hardly damp", "a ball, ribbons, fingers wet", "a soft ball, free water for a moment"},
	{"hard clods, fingers stay dry", "a weak ball, clods flatten", "a smooth ball, ribbons, fingers damp", "a ball, ribbons easily, fingers coated", "a soft, sticky ball, free water"},
}

// FeelWords are the classes in words for the soil of this field, driest first.
func (a *Advice) FeelWords() *[Feels]string {
	return &feels[a.texture()]
}

// ReadingVerdict is what a reading asks for.
type ReadingVerdict uint8

// The verdicts.
const (
	SoilDry   ReadingVerdict = iota // more of the water is gone than the crop bears
	SoilRight                       // go on as planned
	SoilFull                        // at field capacity or above
)

// Reading is what the soil beside the tape tells.
type Reading struct {
	Left    float64 // share of the water for roots that is left, 0 to 1
	Least   float64 // share that the crop wants to keep
	Verdict ReadingVerdict
	Extra   unit.Minutes // for each zone, to fill the strip again; 0 unless dry
	Runs    int          // that the extra water is given in
	Says    unit.Phrase
}

// ReadFeel reads a squeezed handful by its class, 0 the driest. It is false where the
// plan knows no soil or flow, and for a class that is none.
func (a *Advice) ReadFeel(p *WaterPlan, class int) (Reading, bool) {
	if class < 0 || class >= Feels {
		return Reading{}, false
	}
	return a.read(p, feelLeft[class])
}

// ReadProbe reads a probe that shows the soil's water as a share of its volume, 0 to 1:
// what is left lies between the wilting point and the field capacity of this soil.
func (a *Advice) ReadProbe(p *WaterPlan, volume float64) (Reading, bool) {
	soil := p.Plan.Soil
	if soil == nil || soil.Water.Available <= 0 || !(volume >= 0 && volume <= 1) {
		return Reading{}, false
	}
	return a.read(p, min(1, max(0, (volume-soil.Water.WiltingPoint)/soil.Water.Available)))
}

// read compares what is left with what the crop bears (FAO 56), and gives what fills the
// wetted strip again at the flow of the tape.
func (a *Advice) read(p *WaterPlan, left float64) (Reading, bool) {
	soil, flow := p.Plan.Soil, float64(p.Plan.Tape.Flow)
	if a.Refused() || soil == nil || soil.Depletion <= 0 || soil.Store <= 0 || flow <= 0 {
		return Reading{}, false
	}
	r := Reading{Left: left, Least: 1 - soil.Depletion, Verdict: SoilRight}
	left = math.Round(100 * left)
	switch {
	case left >= 100:
		r.Verdict = SoilFull
		r.Says = unit.Say("The soil is full. Skip today, look again tomorrow, and run shorter if it is full again.")
	case r.Left >= r.Least:
		r.Says = unit.Say("About {} of the water for roots is left; {} is the least for {}. Go on as planned.", unit.Percent(left), unit.Percent(math.Round(100*r.Least)), a.Facts.Crop.Name)
	default:
		r.Verdict = SoilDry
		missing := demand.Gross(float64(soil.Store)/soil.Depletion*(1-r.Left), demand.UsualEfficiency, 0)
		r.Extra = unit.Minutes(math.Round(60 * missing / flow))
		r.Runs = soilwater.RunsADay(r.Extra, soil.Longest)
		r.Says = unit.Say("About {} of the water for roots is left; {} is the least for {}. Beside the plan, run each zone {} longer, in {}, to fill the strip again.",
			unit.Percent(left), unit.Percent(math.Round(100*r.Least)), a.Facts.Crop.Name, r.Extra, unit.Count(r.Runs, "run", "runs"))
	}
	return r, true
}

// FeelSource says who tells the classes apart.
var FeelSource = &table.FeelNRCS
