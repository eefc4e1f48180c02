package water

import (
	"math"

	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

func (w *work) line(bore unit.Metres, length unit.Metres) drip.Line {
	in := &w.in
	return drip.Line{
		Outlets: max(1, int(float64(length/in.Spacing)+1e-9)),
		Spacing: in.Spacing, Bore: bore, Slope: in.Slope,
		Outlet: drip.EmitterOf(in.TapeFlow, in.Sold.RatedAt, in.Spacing, in.exponent),
	}
}

// hydraulics solves the tape, then header and pump, at the pressure asked for;
// where the source leaves less, once more at what it leaves.
func (w *work) hydraulics() {
	in := &w.in
	w.plan.Tape = w.tapeAt(in.pressure)
	w.bedFlow = float64(w.plan.Tape.Flow) / 100
	if w.plan.Tape.BedFlow <= 0 {
		return
	}
	w.supply()
	s := w.plan.Supply
	if s == nil || !s.SourceGives.Given || s.SourceGives.Value >= in.pressure {
		w.tapeSteps()
		return
	}
	left := s.SourceGives.Value
	asked := in.pressure
	switch {
	case left < workablePressure:
		w.noPush = true
		w.stop(ofPressure, unit.Say("The source leaves {} at the tape, which is too little to push water through it.", max(left, 0)))
		w.warn("no-pressure", Stop, "head = pressure left after rise, filter, injector and pipe",
			unit.Say("After rise, filter and pipe, {} is left at the tape. It needs about {}.", max(left, 0), asked))
		w.tapeSteps()
		return
	case left < leastTapePressure && in.Supply != waterquality.Tank:
		w.stop(ofPressure, unit.Say("The source leaves {} at the tape; most tape needs {}.", left, leastTapePressure))
	default:
		w.cares = append(w.cares, unit.Say("The source leaves {} at the tape, not the {} asked for.", left, asked))
	}
	w.warn("low-pressure", Care, "q = k·P^x",
		unit.Say("The tape gets {} instead of {}, so it gives less water. Run times below count that in.", left, asked))
	in.pressure = left
	w.plan.Tape = w.tapeAt(left)
	w.plan.Tape.Lowered = true
	w.bedFlow = float64(w.plan.Tape.Flow) / 100
	if w.plan.Tape.BedFlow > 0 {
		w.supply()
	}
	w.tapeSteps()
}

// workablePressure is about half a metre of water: below it even flat tape
// hardly gives (our reasoning, no source).
const workablePressure unit.Kilopascals = 5

func (w *work) tapeAt(pressure unit.Kilopascals) Tape {
	in := &w.in
	t := Tape{
		Emitter:   drip.EmitterOf(in.TapeFlow, in.Sold.RatedAt, in.Spacing, in.exponent),
		Pressure:  round(pressure, stepPressure),
		LabelFlow: in.bedFlow,
		Flow:      in.bedFlow,
	}
	if !in.BedLength.Given {
		return t
	}
	length := in.BedLength.Value
	p, err := w.known.Solve(w.line(in.tapeBore, length), pressure)
	if err != nil {
		w.collapses()
		return t
	}
	p = rounded(p)
	t.Profile = &p
	t.Spread = round(p.Spread, stepShare)
	t.Uniformity = round(drip.EmissionUniformity(p, in.makersCV, 1), stepShare)
	t.BedFlow = round(p.Flow*unit.LitresPerHour(in.Laterals), stepFlow)
	t.Flow = round(unit.LitresPerHourPer100Metres(100*float64(t.BedFlow)/float64(length)), stepFlow)
	t.Fill = round(drip.FillVolume(in.tapeBore, length)*unit.Litres(in.Laterals), stepVolume)
	t.FillMinutes = round(unit.Minutes(60*float64(t.Fill)/float64(max(t.BedFlow, 1))), stepMinutes)
	if w.light {
		return t
	}
	t.Longest = w.longestLine(in.tapeBore, pressure)
	t.LongestLargeBore = w.longestLine(max(in.Sold.LargeBore, in.tapeBore), pressure)
	if half, err := w.line(in.tapeBore, length/2).Solve(pressure); err == nil {
		t.FromMiddle = round(half.Spread, stepShare)
		if other := w.line(in.tapeBore, length/2); in.Slope != 0 {
			other.Slope = -other.Slope
			if p, err := other.Solve(pressure); err == nil {
				most := max(p.MostOutlet, half.MostOutlet)
				t.FromMiddle = round(unit.Percent(100*(most-min(p.LeastOutlet, half.LeastOutlet))/most), stepShare)
			}
		}
	}
	return t
}

func (w *work) longestLine(bore unit.Metres, pressure unit.Kilopascals) drip.Run {
	run, err := drip.LongestRun(w.line(bore, 1), pressure, w.in.spread, longestSought)
	if err != nil {
		return drip.Run{}
	}
	run.Length = round(run.Length, stepLength)
	return run
}

func (w *work) collapses() {
	w.stop(ofLine, unit.Say("The pressure collapses along the bed: the tape is many times too long for its bore."))
	w.warn("collapse", Stop, "stepwise solution",
		unit.Say("Water cannot reach the end of a bed of {} through this tape. Split the bed or take a larger bore.", w.in.BedLength.Value))
}

// tapeSteps writes the warnings and steps of the tape that will run.
func (w *work) tapeSteps() {
	in, t := &w.in, &w.plan.Tape
	if t.Profile == nil {
		return
	}
	p := t.Profile
	if p.DryOutlets > 0 {
		w.stop(ofLine, unit.Say("Water does not reach the last {} outlets of each line.", p.DryOutlets))
		w.warn("dry-end", Stop, "stepwise solution", unit.Say("The bed climbs more than the pressure can lift: the last {} outlets stay dry.", p.DryOutlets))
	} else if t.Spread > in.spread {
		w.cares = append(w.cares, unit.Say("Along one bed the flow differs by {}, more than the {} allowed.", t.Spread, in.spread))
		w.warn("bed-too-long", Care, "stepwise solution",
			unit.Say("A line of {} is too long for even watering: {} is the longest. Feeding it from the middle gives {}; a bore of {} reaches {}.",
				in.BedLength.Value, t.Longest.Length, t.FromMiddle, unit.Bore(in.Sold.LargeBore), t.LongestLargeBore.Length))
	}
	if p.Highest > mostTapePressure {
		w.stop(ofLine, unit.Say("Falling ground raises the pressure in the tape to {}, and tape bursts above about {}.", p.Highest, mostTapePressure))
		w.warn("bursts", Stop, "from memory: 8-mil tape stands 10–15 psi; read its label",
			unit.Say("At its lowest ground the tape holds {}. Lower the inlet pressure or split the bed.", p.Highest))
	}
	if t.Pressure > thinWallPressure {
		w.warn("thin-wall", Note, "from memory: 8-mil tape stands 10–15 psi; read its label",
			unit.Say("Thin tape may burst at {}: read the label.", t.Pressure))
	}
	if w.light { // the rest is to follow by hand
		return
	}
	atPressure := func(outlet unit.LitresPerHour) unit.LitresPerHourPer100Metres {
		return round(unit.LitresPerHourPer100Metres(100*float64(outlet)/float64(in.Spacing)), stepFlow)
	}
	w.step("outlet", "What the tape gives at the inlet pressure",
		named("flow at the inlet", atPressure(t.Emitter.Flow(t.Pressure))),
		named("rated flow", in.TapeFlow),
		named("pressure", t.Pressure),
		named("rated pressure", in.Sold.RatedAt),
		named("exponent", in.exponent))
	speed := drip.Velocity(p.Flow, in.tapeBore)
	const sample unit.Metres = 100
	w.step("friction", "Friction at the head of a line",
		named("loss, were it plain pipe of this length", round(drip.PressureOf(drip.Pipe{Length: sample, Bore: in.tapeBore}.Loss(p.Flow)), stepPressure)),
		named("length", sample),
		named("bore", unit.Bore(in.tapeBore)),
		named("flow of one line", round(p.Flow, stepFlow)),
		named("speed", unit.WaterSpeed(round(speed, stepSpeed))),
		named("Reynolds number", int(math.Round(float64(speed)*float64(in.tapeBore)/drip.ViscosityAt60F))))
	inputs := []Named{
		named("inlet pressure", t.Pressure),
		named("length", in.BedLength.Value),
		named("bore", unit.Bore(in.tapeBore)),
		named("slope", unit.FineShare(in.Slope)),
		named("lowest pressure", round(p.Lowest, stepPressure)),
		named("lowest at", round(p.LowestAt, stepLength)),
	}
	older := w.line(in.tapeBore, in.BedLength.Value)
	older.Friction.Law = drip.HazenWilliams
	if o, err := older.Solve(in.pressure); err == nil {
		inputs = append(inputs,
			named("beside it, end pressure by Hazen-Williams", round(o.End, stepPressure)),
			named("with C by bore", drip.HazenWilliamsC(in.tapeBore)))
	}
	w.step("line", "Pressure at the end of a line",
		named("end pressure", round(p.End, stepPressure)), inputs...)
	w.step("spread", "How evenly a line waters",
		named("spread", unit.FineShare(t.Spread)),
		named("most", atPressure(p.MostOutlet)),
		named("least", atPressure(p.LeastOutlet)),
		named("emission uniformity", unit.FineShare(t.Uniformity)))
	w.step("bed-flow", "Flow of one bed",
		named("bed flow", t.BedFlow),
		named("one line", round(p.Flow, stepFlow)),
		named("lines", in.Laterals))
}

// rounded brings a solved line to the declared steps.
func rounded(p drip.Profile) drip.Profile {
	p.Inlet, p.First, p.End = round(p.Inlet, stepPressure), round(p.First, stepPressure), round(p.End, stepPressure)
	p.Lowest, p.Highest = round(p.Lowest, stepPressure), round(p.Highest, stepPressure)
	p.LowestAt = round(p.LowestAt, stepLength)
	p.Flow = round(p.Flow, stepFlow)
	p.LeastOutlet, p.MostOutlet = round(p.LeastOutlet, stepOutlet), round(p.MostOutlet, stepOutlet)
	p.MeanOutlet, p.LowQuarter = round(p.MeanOutlet, stepOutlet), round(p.LowQuarter, stepOutlet)
	p.Spread, p.DistributionUniformity = round(p.Spread, stepShare), round(p.DistributionUniformity, stepShare)
	p.InletVelocity, p.FarVelocity = round(p.InletVelocity, stepSpeed), round(p.FarVelocity, stepSpeed)
	for i, at := range p.Points {
		p.Points[i] = drip.Point{From: round(at.From, stepLength), Pressure: round(at.Pressure, stepPressure)}
	}
	return p
}
