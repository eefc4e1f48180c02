package water

import (
	"cmp"
	"math"
	"slices"

	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// change is a way out before it is tried: what the grower would do, and the
// input that follows from it.
type change struct {
	id     string
	effort float64 // share by which something changes
	says   unit.Phrase
	inputs []Input // more than one where both must work (two halves of a bed)
}

// waysOut makes every change that might help, plans each one again, and gives
// the best three: those that fit first, then by effort.
func (w *work) waysOut() []WayOut {
	changes := slices.Concat(
		w.fewerBeds(), w.moreFlow(), w.otherTape(), w.moreHours(), w.storage(), w.oneLineLess(),
		w.halfBeds(), w.largerBore(), w.booster(), w.higherTank(), w.lowerPressure(), w.moreRefill(),
	)
	ways := make([]WayOut, 0, len(changes))
	for _, c := range changes {
		ways = append(ways, w.try(c))
	}
	slices.SortStableFunc(ways, func(a, b WayOut) int {
		if a.Fits != b.Fits {
			if a.Fits {
				return -1
			}
			return 1
		}
		return cmp.Compare(a.Effort, b.Effort)
	})
	return ways[:min(3, len(ways))]
}

// try plans a change again: tape, header, zones and hours, for the same need.
func (w *work) try(c change) WayOut {
	out := WayOut{ID: c.id, Change: c.says, Effort: round(c.effort, stepFactor), Fits: true}
	var stop unit.Phrase
	for _, input := range c.inputs {
		again := &work{light: true, peakNet: w.peakNet, peakGross: w.peakGross, longest: w.longest}
		again.in, _ = fill(input)
		again.plan.Demand = w.plan.Demand
		again.hydraulics()
		again.schedule()
		if len(again.stops) > 0 && out.Fits {
			out.Fits, stop = false, again.stops[0]
		}
		if sch := again.plan.Schedule; sch != nil && sch.HoursADay.Given {
			out.Zones = max(out.Zones, len(sch.Zones))
			out.HoursADay = max(out.HoursADay, sch.HoursADay.Value)
		}
	}
	switch {
	case out.Fits && out.Zones > 0:
		out.Result = unit.Say("Then it fits: {} zones run {} a day in all.", out.Zones, out.HoursADay)
	case out.Fits:
		out.Result = unit.Say("Then it fits.")
	default:
		out.Result = unit.Phrase{Text: "That alone is not enough. " + stop.Text, Quantities: stop.Quantities}
	}
	return out
}

// balance is the daily sum of flow and hours, quick enough to search with.
type balance struct {
	beds    int
	bedFlow unit.LitresPerHour
	usable  unit.LitresPerHour
	perBed  float64 // L a day, gross
	hours   unit.Hours
}

func (w *work) balance() balance {
	in := &w.in
	return balance{in.Beds.Value, w.plan.Tape.BedFlow, w.usable(), w.peakGross * float64(in.BedLength.Value), in.hours}
}

// needs gives hours a day for all zones, and whether they fit.
func (b balance) needs() (unit.Hours, bool) {
	zones := len(divide(b.beds, min(atOnce(b.usable, b.bedFlow), b.beds)))
	if zones == 0 {
		return 0, false
	}
	hours := unit.Hours(float64(zones) * b.perBed / float64(b.bedFlow))
	return hours, round(hours, stepHours) <= b.hours
}

func (w *work) fewerBeds() []change {
	b := w.balance()
	had := b.beds
	for b.beds--; b.beds > 1; b.beds-- {
		if _, fits := b.needs(); fits {
			break
		}
	}
	if b.beds < 1 {
		return nil
	}
	input := w.in.Input
	input.Beds = Known(b.beds)
	return []change{{"fewer-beds", float64(had-b.beds) / float64(had), unit.Say("Plant fewer beds: {} instead of {}.", b.beds, had), []Input{input}}}
}

func (w *work) moreFlow() []change {
	b := w.balance()
	now := b.usable
	for beds := 1; beds <= b.beds; beds++ {
		b.usable = b.bedFlow * unit.LitresPerHour(beds)
		if _, fits := b.needs(); b.usable <= now || !fits && beds < b.beds {
			continue
		}
		// A little more than the beds take, so that rounding cannot miss it.
		tested := round(b.usable/unit.LitresPerHour(w.in.usable/100)*1.001, stepFlow)
		input := w.in.Input
		input.Flow = Known(tested)
		return []change{{"more-flow", float64(b.usable/now) - 1, unit.Say("Find a source that tests at {} instead of {}.", tested, w.in.Flow.Value), []Input{input}}}
	}
	return nil
}

// otherTape takes the row of the tape table that needs the fewest hours.
func (w *work) otherTape() []change {
	in := &w.in
	best, bestHours, bestFits := -1, unit.Hours(0), false
	for i, tape := range drip.TapeClasses {
		if math.Abs(float64(tape.Flow/in.TapeFlow)-1) < 0.02 && math.Abs(float64(tape.Spacing/in.Spacing)-1) < 0.02 || !w.joins(tape.Spacing) {
			continue
		}
		other := work{in: w.in}
		other.in.TapeFlow, other.in.Spacing = tape.Flow, tape.Spacing
		p, err := other.line(in.tapeBore, in.BedLength.Value).Solve(in.pressure)
		if err != nil || p.Spread > in.spread && p.Spread > w.plan.Tape.Spread {
			continue
		}
		b := w.balance()
		b.bedFlow = p.Flow * unit.LitresPerHour(in.Lines)
		hours, fits := b.needs()
		if hours == 0 {
			continue
		}
		if best < 0 || fits && !bestFits || fits == bestFits && hours < bestHours {
			best, bestHours, bestFits = i, hours, fits
		}
	}
	if best < 0 {
		return nil
	}
	tape := drip.TapeClasses[best]
	input := in.Input
	input.TapeFlow, input.Spacing = tape.Flow, tape.Spacing
	return []change{{"other-tape", otherTapeEffort, unit.Say("Buy {} tape: outlets {} apart, {}, instead of {}.", string(tape.Class)+"-flow", unit.Short(tape.Spacing), tape.Flow, in.TapeFlow), []Input{input}}}
}

// Efforts of changes that are not a share of something.
const (
	otherTapeEffort  = 0.1 // none is bought yet
	largerBoreEffort = 0.15
	pressureEffort   = 0.05 // a turn of the regulator
	boosterEffort    = 0.4
	halfBedsEffort   = 0.5
	storageEffort    = 0.6
)

// joins tells whether outlets so far apart wet a strip, where the soil is known.
func (w *work) joins(spacing unit.Metres) bool {
	class, ok := soilwater.ClassOf(w.in.Texture)
	if !ok {
		return true
	}
	widest := soilwater.OverlapShare * w.in.WettedWidth.or(class.Wet)
	return spacing <= max(widest, w.in.Spacing)
}

func (w *work) moreHours() []change {
	b := w.balance()
	hours, fits := b.needs()
	if fits || hours <= 0 || hours > 24 {
		return nil
	}
	hours = unit.Hours(math.Ceil(float64(hours)*10) / 10)
	input := w.in.Input
	input.Hours = Known(min(hours, 24))
	return []change{{"more-hours", float64(hours/b.hours) - 1, unit.Say("Run water {} a day instead of {}.", hours, b.hours), []Input{input}}}
}

// storage fills a tank around the clock and waters from it with a pump.
func (w *work) storage() []change {
	b := w.balance()
	daily, source := b.perBed*float64(b.beds), b.usable
	if daily <= 0 || daily > 24*float64(source) {
		return nil
	}
	for beds := 1; beds <= b.beds; beds++ {
		b.usable = b.bedFlow * unit.LitresPerHour(beds)
		hours, fits := b.needs()
		if !fits || b.usable <= source {
			continue
		}
		tank := round(unit.Litres(float64(b.usable-source)*float64(hours)), stepVolume)
		input := w.in.Input
		input.Flow = Known(b.usable / unit.LitresPerHour(w.in.usable/100) * 1.001)
		input.Pressure, input.Supply = Optional[unit.Kilopascals]{}, ""
		return []change{{"tank", storageEffort, unit.Say("Fill a tank of {} around the clock, and pump {} from it.", tank, round(b.usable, stepFlow)), []Input{input}}}
	}
	return nil
}

func (w *work) oneLineLess() []change {
	lines := w.in.Lines
	if lines < 2 {
		return nil
	}
	input := w.in.Input
	input.Lines--
	return []change{{"one-line-less", 1 / float64(lines), unit.Say("Lay {} lines in a bed instead of {}; less of the bed gets wet.", lines-1, lines), []Input{input}}}
}

// halfBeds feeds beds from the middle, one half at a time. On a slope one half
// climbs and one falls, and both must work.
func (w *work) halfBeds() []change {
	input := w.in.Input
	if input.BedLength.Value < 4*input.Spacing || 2*input.Beds.Value > 1000 {
		return nil
	}
	input.BedLength.Value /= 2
	input.Beds.Value *= 2
	both := []Input{input}
	if input.Slope != 0 {
		input.Slope = -input.Slope
		both = append(both, input)
	}
	return []change{{"half-beds", halfBedsEffort, unit.Say("Put the header across the middle of the beds, with a valve to each half."), both}}
}

func (w *work) largerBore() []change {
	if w.in.tapeBore >= drip.LargeTapeBore || w.plan.Tape.Profile == nil || w.plan.Tape.Spread <= w.in.spread {
		return nil
	}
	input := w.in.Input
	input.TapeBore = Known(drip.LargeTapeBore)
	return []change{{"larger-bore", largerBoreEffort, unit.Say("Buy tape of a larger bore: {} instead of {}.", unit.Short(drip.LargeTapeBore), unit.Short(w.in.tapeBore)), []Input{input}}}
}

// lack is the pressure that the source misses at the tape.
func (w *work) lack() unit.Kilopascals {
	s := w.plan.Supply
	if s == nil || !s.SourceGives.Given {
		return 0
	}
	return max(0, w.in.TapePressure.or(usualTapePressure)-s.SourceGives.Value)
}

// booster names the pump that makes up missing pressure.
func (w *work) booster() []change {
	lack := w.lack()
	if lack == 0 {
		return nil
	}
	// Running at full pressure the header loses more than at the low one: a
	// third more pressure makes up for it, and a regulator takes the rest.
	extra := round(lack*4/3+5, stepPressure)
	b := w.balance()
	power := round(drip.ShaftPower(b.usable, drip.HeadOf(extra), drip.UsualPumpEfficiency), stepPower)
	push, _ := w.push()
	input := w.in.Input
	input.Pressure, input.Rise = Known(push+extra), Optional[unit.Metres]{}
	return []change{{"booster", boosterEffort, unit.Say("Add a booster pump that gives {} more: about {} at its shaft.", extra, power), []Input{input}}}
}

func (w *work) higherTank() []change {
	lack := w.lack()
	if lack == 0 || !w.gravityOnly() {
		return nil
	}
	raise := round(unit.Metres(math.Ceil(float64(drip.HeadOf(lack*4/3))*10)/10), stepLength)
	input := w.in.Input
	input.Rise.Value -= raise
	return []change{{"higher-tank", float64(raise / -w.in.Rise.Value), unit.Say("Set the tank {} higher.", raise), []Input{input}}}
}

// lowerPressure turns the regulator down where falling ground would burst the
// tape.
func (w *work) lowerPressure() []change {
	p := w.plan.Tape.Profile
	if p == nil || p.Highest <= mostTapePressure {
		return nil
	}
	lower := round(w.in.pressure-(p.Highest-mostTapePressure)-1, stepPressure)
	if lower < leastTapePressure {
		return nil
	}
	input := w.in.Input
	input.TapePressure = Known(lower)
	return []change{{"lower-pressure", pressureEffort, unit.Say("Turn the regulator down to {}.", lower), []Input{input}}}
}

func (w *work) moreRefill() []change {
	in := &w.in
	if w.plan.Supply == nil || w.plan.Supply.Tank == nil || w.plan.Supply.Tank.Enough || in.Supply == waterquality.Municipal {
		return nil
	}
	refill := round(unit.LitresPerHour(math.Ceil(float64(w.plan.Schedule.LitresADay.Value)/24)), stepFlow)
	input := in.Input
	input.TankRefill = Known(refill)
	return []change{{"more-refill", float64(refill/in.TankRefill.Value) - 1, unit.Say("Refill the tank with {} instead of {}.", refill, in.TankRefill.Value), []Input{input}}}
}
