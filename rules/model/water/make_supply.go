package water

import (
	"math"

	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// atOnce is how many whole beds a usable flow feeds.
func atOnce(usable, bedFlow unit.LitresPerHour) int {
	if bedFlow <= 0 {
		return 0
	}
	return int(min(math.Floor(round(float64(usable/bedFlow), 1e-6)), 1e6))
}

// divide shares beds out over the fewest zones of at most so many beds, as
// evenly as whole beds allow, larger zones first. No zones where not even one
// bed can run.
func divide(beds, most int) []int {
	if most < 1 {
		return nil
	}
	zones := (beds + most - 1) / most
	sizes := make([]int, zones)
	for i := range sizes {
		sizes[i] = beds / zones
		if i < beds%zones {
			sizes[i]++
		}
	}
	return sizes
}

func (w *work) usable() unit.LitresPerHour {
	return w.in.Flow.Value * unit.LitresPerHour(w.in.usable/100)
}

// supply sizes header and pump for the zone that lies farthest, on ground that
// is level along the header. It needs beds and a tested flow.
func (w *work) supply() {
	in, t := &w.in, &w.plan.Tape
	if !in.Flow.Given && w.gravityOnly() {
		// Height alone decides: no flow was tested, and none is needed to know
		// what one bed gets.
		s := &Supply{SourceGives: unit.Known(round(drip.PressureOf(-in.Rise.Value)-in.filterLoss-in.injectorLoss, stepPressure))}
		w.gravity(s, in.filterLoss)
		w.plan.Supply = s
		return
	}
	if !in.Beds.Given || !in.BedCentres.Given || !in.Flow.Given {
		return
	}
	s := &Supply{Usable: round(w.usable(), stepFlow)}
	w.plan.Supply = s
	most := atOnce(w.usable(), t.BedFlow)
	sizes := divide(in.Beds.Value, most)
	if len(sizes) == 0 {
		sizes = []int{1} // head and pump for a single bed, so that the ways out have numbers
	}
	w.bore(s, sizes)
	push, pushKnown := in.push()
	s.zones = w.zones(s.Bore, sizes)
	for _, z := range s.zones {
		s.HeaderLoss = max(s.HeaderLoss, z.Loss)
	}
	filter := in.filterLoss
	if pushKnown {
		s.SourceGives = unit.Known(round(push-filter-in.injectorLoss-s.HeaderLoss, stepPressure))
	}
	s.Needs = round(max(0, in.pressure+s.HeaderLoss+filter+in.injectorLoss+drip.PressureOf(in.Rise.Value)), stepPressure)
	s.Head = drip.Head{
		Lift:      in.Lift.Value,
		Rise:      in.Rise.Value,
		Friction:  round(drip.HeadOf(s.HeaderLoss), stepHead),
		Filter:    round(drip.HeadOf(filter), stepHead),
		Injector:  round(drip.HeadOf(in.injectorLoss), stepHead),
		Operating: round(drip.HeadOf(in.pressure), stepHead),
	}
	s.Total = round(s.Head.Total(), stepHead)
	flow := t.BedFlow * unit.LitresPerHour(sizes[0])
	s.PumpNeeded = in.Lift.Value > 0 || !pushKnown && in.Supply != waterquality.Municipal && in.Supply != waterquality.Tank
	s.HeadKnown = pushKnown || in.Lift.Given
	if s.PumpNeeded && s.HeadKnown {
		s.WaterPower = round(drip.WaterPower(flow, s.Total), stepPower)
		s.ShaftPower = round(drip.ShaftPower(flow, s.Total, drip.UsualPumpEfficiency), stepPower)
	}
	w.gravity(s, filter)
}

func (w *work) gravityOnly() bool {
	return w.in.Supply == waterquality.Tank && !w.in.Pressure.Given && w.in.Rise.Given && w.in.Rise.Value < 0
}

// lateral is a whole bed as one outlet of the header.
func (w *work) lateral() drip.Emitter {
	return drip.Emitter{Rated: w.plan.Tape.BedFlow, RatedAt: w.in.pressure, Exponent: w.in.exponent}
}

func (w *work) bore(s *Supply, sizes []int) {
	in := &w.in
	allowed := usualHeaderLoss
	if push, ok := in.push(); ok {
		spare := push - in.filterLoss - in.injectorLoss
		allowed = max(spare-in.pressure, spare*headerShare, leastHeaderLoss)
	}
	limits := drip.HeaderLimits{
		Velocity: drip.MaxVelocity,
		Spread:   max(in.spread-w.plan.Tape.Spread, in.spread*headerSpread),
		Loss:     allowed,
	}
	header := drip.Header{
		Plain:    in.Header.Value + in.BedCentres.Value*unit.Metres(in.Beds.Value-sizes[len(sizes)-1]),
		Laterals: sizes[0],
		Spacing:  in.BedCentres.Value,
		Lateral:  w.lateral(),
		Known:    w.known,
	}
	trials, err := drip.SizeHeader(header, in.pressure, limits, drip.NominalBores[:])
	if err != nil || len(trials) == 0 {
		s.Bore = drip.NominalBores[len(drip.NominalBores)-1]
		return
	}
	for i := range trials {
		r := &trials[i]
		r.Velocity, r.Spread, r.Flow = round(r.Velocity, stepSpeed), round(r.Spread, stepShare), round(r.Flow, stepFlow)
		r.PlainLoss, r.LateralLoss = round(r.PlainLoss, stepPressure), round(r.LateralLoss, stepPressure)
	}
	last := trials[len(trials)-1]
	s.Trials, s.Bore, s.BoreFits, s.Velocity = trials, last.Bore, last.Fits, last.Velocity
}

// noHeader stands where the bed centres are not known: zones without pipe.
var noHeader drip.Bore

// zones lays the zones out along the header and gives each its loss: friction
// in the pipe to its first bed, and from there to its lowest bed.
func (w *work) zones(bore drip.Bore, sizes []int) []Zone {
	in := &w.in
	zones := make([]Zone, 0, len(sizes))
	first, alongBeds, alongLoss := 1, 0, unit.Kilopascals(0)
	for i, beds := range sizes {
		z := Zone{
			Number: i + 1, FirstBed: first, LastBed: first + beds - 1, Beds: beds,
			Flow: round(w.plan.Tape.BedFlow*unit.LitresPerHour(beds), stepFlow),
		}
		first += beds
		if bore != noHeader {
			if beds != alongBeds { // sizes differ by one bed at most
				alongBeds, alongLoss = beds, w.alongLoss(bore, beds)
			}
			z.FromSource = round(in.Header.Value+in.BedCentres.Value*unit.Metres(z.FirstBed-1), stepLength)
			plain := drip.Pipe{Length: z.FromSource, Bore: bore.Inside}.Loss(z.Flow)
			z.Loss = round(drip.PressureOf(plain)+alongLoss, stepPressure)
		}
		zones = append(zones, z)
	}
	return zones
}

// alongLoss is the friction from a zone's first bed to its lowest.
func (w *work) alongLoss(bore drip.Bore, beds int) unit.Kilopascals {
	if beds < 2 {
		return 0
	}
	line := drip.Line{Outlets: beds, Spacing: w.in.BedCentres.Value, Bore: bore.Inside, Outlet: w.lateral()}
	p, err := w.known.Solve(line, w.in.pressure)
	if err != nil {
		return w.in.pressure
	}
	return p.Inlet - p.Lowest
}

func (w *work) gravity(s *Supply, filter unit.Kilopascals) {
	in := &w.in
	if !w.gravityOnly() {
		return
	}
	losses := drip.HeadOf(filter + in.injectorLoss + s.HeaderLoss)
	feed, err := drip.FromTank(-in.Rise.Value, losses, w.line(in.tapeBore, in.BedLength.Value), in.spread, longestSought)
	if err != nil {
		return
	}
	feed.Pressure, feed.Line = round(feed.Pressure, stepPressure), rounded(feed.Line)
	feed.Longest.Length = round(feed.Longest.Length, stepLength)
	s.Gravity = &feed
}

// supplySteps writes warnings and steps of header and pump, once, for the
// pressure that the plan ends with.
func (w *work) supplySteps() {
	in, s := &w.in, w.plan.Supply
	if w.light || s == nil || s.Bore.Inside == 0 {
		return
	}
	if !s.BoreFits && len(s.Trials) > 0 {
		w.cares = append(w.cares, unit.Say("No common header size keeps speed, evenness and pressure within limits."))
		w.warn("header-too-small", Care, "limits: 1.5 m/s (5 ft/s), flow spread, pressure at hand",
			unit.Say("Even a header of {} loses {}. Run smaller zones or bring the source nearer.", unit.Bore(s.Bore.Inside), s.HeaderLoss))
	}
	if in.Lift.Value > mostSuction && in.Supply != waterquality.Well {
		w.warn("suction", Care, "from memory: pumps draw up to about 7 m at sea level",
			unit.Say("A pump on the bank cannot draw {} up: set it in or near the water.", in.Lift.Value))
	}
	if in.Flow.Value > riverFlow {
		w.warn("river", Care, "range check", unit.Say("A flow of {} is that of a river: check the unit.", in.Flow.Value))
	}
	if s.SourceGives.Given && !w.plan.Tape.Lowered && s.SourceGives.Value > in.pressure {
		w.warn("regulator", Note, "a regulator is not a backflow preventer (2009 Uniform Plumbing Code list)",
			unit.Say("Set a pressure regulator ahead of the tape: {} would reach it, and it wants {}.", s.SourceGives.Value, in.pressure))
	}
	if len(s.Trials) > 0 {
		last := s.Trials[len(s.Trials)-1]
		w.step("header", "Header size",
			named("bore", unit.Bore(s.Bore.Inside)),
			named("flow of the largest zone", last.Flow),
			named("speed", unit.WaterSpeed(last.Velocity)),
			named("speed limit", unit.WaterSpeed(drip.MaxVelocity)),
			named("loss to the farthest bed", s.HeaderLoss))
	}
	title := "What the source must push"
	if !s.HeadKnown {
		title = "What the source must push, beside its lift, which was not given"
	}
	w.step("head", title,
		head("total head", s.Total),
		head("lift", s.Head.Lift), head("rise", s.Head.Rise), head("friction", s.Head.Friction),
		head("filter", s.Head.Filter), head("injector", s.Head.Injector), head("at the tape", s.Head.Operating))
	if s.PumpNeeded && s.HeadKnown {
		w.step("pump", "Pump power",
			named("shaft power", unit.PumpPower(s.ShaftPower)),
			named("power in the water", unit.PumpPower(s.WaterPower)),
			named("flow of the largest zone", w.largest()),
			head("head", s.Total),
			named("pump efficiency", unit.Percent(100*drip.UsualPumpEfficiency)))
	}
}

// largest is the flow of the largest zone, or of one bed where none can run.
func (w *work) largest() unit.LitresPerHour {
	if sch := w.plan.Schedule; sch != nil && len(sch.Zones) > 0 {
		return sch.Zones[0].Flow
	}
	if s := w.plan.Supply; s != nil && len(s.zones) > 0 {
		return s.zones[0].Flow
	}
	return w.plan.Tape.BedFlow
}

func head(name string, v unit.Metres) Named {
	return Named{Name: name, Quantity: unit.Quantity{Kind: unit.KindHead, SI: float64(v)}}
}
