package water

import (
	"sort"

	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// Make works out a plan. With problems there is no plan, and all problems come
// at once, in the order of the form. A plan that does not work is still a
// plan: its verdict says so and its ways out are computed.
func Make(in Input) (Plan, []Problem) {
	if problems := check(in); len(problems) > 0 {
		return Plan{}, problems
	}
	w := &work{}
	w.in = fill(in)
	w.plan.Assumed = w.in.assumed()
	w.listMissing()
	w.quality() // before demand: salt sets the leaching
	w.demand()
	w.hydraulics()
	w.soil()
	w.schedule()
	if len(w.stops) > 0 {
		w.plan.Remedies = w.remedies()
	}
	w.months()
	w.feeding()
	w.chlorine()
	w.checks()
	w.verdict()
	w.cautions()
	said := w.plan.Warnings
	sort.SliceStable(said, func(a, b int) bool { return said[a].Severity < said[b].Severity })
	return w.plan, nil
}

// work carries a plan while it grows. Unrounded figures that later parts need
// stand here, rounded ones in the plan.
type work struct {
	in   filled
	plan Plan

	peakNet    float64 // L a day for a metre of bed
	peakGross  float64
	firstGross float64
	mostGross  float64
	longest    unit.Minutes
	bedFlow    float64 // L/h for a metre of bed, as it runs
	known      *drip.Known
	light      bool // a way out being tried: no steps, no longest lines, no ways out of its own
	noPush     bool // the source leaves too little pressure for any water
	stops      []unit.Phrase
	troubles   trouble
	cares      []unit.Phrase
}

// trouble sorts what stops a plan, so that only ways out that bear on it are
// tried.
type trouble uint8

const (
	ofSupply   trouble = 1 << iota // flow, hours or refill
	ofPressure                     // at the tape
	ofLine                         // along the bed
)

func (w *work) stop(t trouble, says unit.Phrase) {
	w.troubles |= t
	w.stops = append(w.stops, says)
}

func (w *work) missing(field, settles string) {
	w.plan.Missing = append(w.plan.Missing, Missing{field, settles})
}

func (w *work) listMissing() {
	in := &w.in
	for _, m := range []struct {
		given          bool
		field, settles string
	}{
		{in.Usual.Given, "climate", "reference evapotranspiration: how much water the crop needs"},
		{in.Coefficients.Given, "crop coefficients", "how much water this crop needs: no figure was found for it"},
		{in.Stages.Given, "crop stages", "when the crop needs most water: no figure was found for it"},
		{in.BedTop.Given, "bed_top_m", "the ground that the crop draws on"},
		{in.BedCentres.Given, "bed_centres_m", "the ground that the crop draws on, and the header"},
		{in.Soil.Given, "texture", "the longest single run and the runs a day"},
		{in.RootDepth.Given, "root depth", "the longest single run: no figure was found for this crop"},
		{in.Depletion.Given, "depletion", "the longest single run: no figure was found for this crop"},
		{in.BedLength.Given, "bed_length_m", "pressure along the bed, flow of a bed, zones"},
		{in.Beds.Given, "beds", "zones and hours"},
		{in.Supply != "" && in.Supply != "none", "source", "filter and pump"},
		{in.Flow.Given, "flow_l_h", "zones and hours: do a bucket test at the field's end of the pipe"},
		{in.Hours.Given, "hours_per_day", "whether the plan fits your day"},
		{in.Salt.Given, "ec_ds_m", "salt, leaching and infiltration"},
		{in.SaltThreshold.Given && in.SaltSlope.Given, "salt tolerance", "yield with this water: no figure was found for this crop"},
	} {
		if !m.given {
			w.missing(m.field, m.settles)
		}
	}
	if _, known := w.in.push(); !known && !in.Lift.Given && in.Supply != waterquality.Municipal && in.Supply != waterquality.Tank && in.Supply != "none" {
		w.missing("lift_m", "head and power of the pump")
	}
	if in.Supply == waterquality.Tank && !in.Pressure.Given && !in.Rise.Given {
		w.missing("rise_m", "what the tank's height pushes: measure from its water down to the beds")
	}
	if in.Supply == waterquality.Municipal && !in.Pressure.Given {
		w.missing("pressure_kpa", "whether the supply pushes enough: read a gauge while water runs")
	}
}

func (w *work) warn(id string, s Severity, source string, says unit.Phrase) {
	w.plan.Warnings = append(w.plan.Warnings, Warning{id, s, says, source})
}

func (w *work) step(id, title string, result Named, inputs ...Named) {
	if w.light {
		return
	}
	formula, source := stepText(id)
	w.plan.Steps = append(w.plan.Steps, Step{id, title, formula, inputs, result, source})
}

func named(name string, v any) Named { return Named{Name: name, Quantity: unit.Of(v)} }

func (w *work) verdict() {
	p := &w.plan
	switch {
	case len(w.stops) > 0:
		p.Verdict, p.Because = DoesNotFit, w.stops
	case p.Schedule == nil || !p.Schedule.HoursADay.Given:
		p.Verdict = Undecided
		p.Because = []unit.Phrase{unit.Say("Too little is known to say whether it fits: see what is missing.")}
	case len(w.cares) > 0:
		p.Verdict, p.Because = FitsTightly, w.cares
	default:
		p.Verdict = Fits
		p.Because = []unit.Phrase{unit.Say("On the day of peak use all zones together run {} of the {} that the source may run.", p.Schedule.HoursADay.Value, p.Schedule.HoursGiven)}
	}
}

func (w *work) cautions() {
	ids := []string{"backflow", "electricity", "not-drinking-water", "chlorine-acid", "chlorine-ammonia", "acid", "label", "shaft"}
	switch {
	case w.in.Supply == waterquality.Municipal:
		ids = append(ids, "drinking-water")
	case w.in.Supply == waterquality.Well:
		ids = append(ids, "well")
	case w.in.Supply.Surface():
		ids = append(ids, "surface-water-food")
	}
	if w.plan.Feeding != nil {
		ids = append(ids, "calcium-sulfate")
	}
	for _, id := range ids {
		if c, ok := feed.CautionOf(id); ok {
			w.plan.Cautions = append(w.plan.Cautions, c)
		}
	}
}
