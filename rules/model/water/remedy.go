package water

import (
	"math"
	"slices"
	"sort"

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

// remedies makes every change that might help, plans each one again, and gives
// the best three: those that fit first, then by effort.
func (w *work) remedies() []Remedy {
	var changes []change
	if w.troubles&ofSupply != 0 {
		changes = slices.Concat(changes, w.fewerBeds(), w.moreFlow(), w.otherTape(), w.moreHours(), w.storage(), w.oneLineLess(), w.oneLineMore(), w.halfBeds(), w.smallerPlanting(), w.moreRefill())
	}
	if w.troubles&ofPressure != 0 {
		changes = slices.Concat(changes, w.booster(), w.morePressure(), w.higherTank(), w.oneBedAtOnce())
	}
	if w.troubles&ofLine != 0 {
		changes = slices.Concat(changes, w.shorterLines(), w.otherEnd(), w.alongContour(), w.largerBore(), w.lowerPressure(), w.gentlerTape())
	}
	ways := make([]Remedy, 0, len(changes))
	for _, c := range changes {
		ways = append(ways, w.try(c))
	}
	sort.SliceStable(ways, func(a, b int) bool {
		if ways[a].Fits != ways[b].Fits {
			return ways[a].Fits
		}
		return ways[a].Effort < ways[b].Effort
	})
	return ways[:min(3, len(ways))]
}

// try plans a change again: tape, header, zones and hours, for the same need.
func (w *work) try(c change) Remedy {
	out := Remedy{ID: c.id, Change: c.says, Effort: round(c.effort, stepFactor), Fits: true}
	var stop unit.Phrase
	for _, input := range c.inputs {
		again := w.again(input)
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
		out.Result = unit.Say("Then it fits. Zones: {}. Running a day in all: {}.", out.Zones, out.HoursADay)
	case out.Fits:
		out.Result = unit.Say("Then it fits.")
	default:
		out.Result = unit.Phrase{Text: "That alone is not enough. " + stop.Text, Quantities: stop.Quantities}
	}
	return out
}

// again works out tape and header of another input, for the same need.
func (w *work) again(input Input) *work {
	again := &work{light: true, peakNet: w.peakNet, peakGross: w.peakGross, longest: w.longest}
	again.in = fill(input)
	again.plan.Demand = w.plan.Demand
	again.hydraulics()
	return again
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

// fewerBeds finds the most beds that the flow, the hours and a tank's refill
// can water; where this tape does not fit at all, with the tape that fits most.
func (w *work) fewerBeds() []change {
	b := w.balance()
	had := b.beds
	most := w.mostBeds(b)
	if most > 0 {
		input := w.in.Input
		input.Beds = unit.Known(most)
		return []change{{"fewer-beds", float64(had-most) / float64(had), unit.Say("Plant fewer beds: {} instead of {}.", most, had), []Input{input}}}
	}
	best := -1
	for i, tape := range w.in.Sold.Tapes {
		flow, even := w.bedFlowWith(tape)
		if !even || !w.joins(tape.Spacing) {
			continue
		}
		b.bedFlow = flow
		if n := w.mostBeds(b); n > most {
			best, most = i, n
		}
	}
	if best < 0 {
		return nil
	}
	tape := w.in.Sold.Tapes[best]
	input := w.in.Input
	input.Beds, input.TapeFlow, input.Spacing = unit.Known(most), tape.Flow, tape.Spacing
	return []change{{"fewer-beds-other-tape", float64(had-most)/float64(had) + otherTapeEffort,
		unit.Say("Plant fewer beds, {} instead of {}, on {} tape: outlets {} apart, {}.", most, had, tape.Class, unit.Short(tape.Spacing), tape.Flow), []Input{input}}}
}

// mostBeds is the largest number of beds, below those in hand, that fits.
func (w *work) mostBeds(b balance) int {
	refilled := math.Inf(1)
	if w.in.TankVolume.Given && w.in.TankRefill.Given {
		refilled = 24 * float64(w.in.TankRefill.Value)
	}
	for b.beds--; b.beds >= 1; b.beds-- {
		if _, fits := b.needs(); fits && b.perBed*float64(b.beds) <= refilled {
			return b.beds
		}
	}
	return 0
}

// bedFlowWith gives a bed's flow with another tape, and whether it waters
// evenly, or at least not worse than the tape in hand.
func (w *work) bedFlowWith(tape Candidate) (unit.LitresPerHour, bool) {
	other := work{in: w.in}
	other.in.TapeFlow, other.in.Spacing = tape.Flow, tape.Spacing
	p, err := other.line(w.in.tapeBore, w.in.BedLength.Value).Solve(w.in.pressure)
	if err != nil {
		return 0, false
	}
	return p.Flow * unit.LitresPerHour(w.in.Laterals), p.Spread <= max(w.in.spread, w.plan.Tape.Spread)
}

func (w *work) moreFlow() []change {
	b := w.balance()
	now := b.usable
	for beds := 1; beds <= b.beds; beds++ {
		b.usable = b.bedFlow * unit.LitresPerHour(beds)
		if _, fits := b.needs(); b.usable <= now || !fits && beds < b.beds {
			continue
		}
		tested := round(b.usable/unit.LitresPerHour(w.in.usable/100)*aLittleMore, stepFlow)
		input := w.in.Input
		input.Flow = unit.Known(tested)
		return []change{{"more-flow", float64(b.usable/now) - 1, unit.Say("Find a source that tests at {} instead of {}.", tested, w.in.Flow.Value), []Input{input}}}
	}
	return nil
}

// otherTape takes the row of the tape table that needs the fewest hours.
func (w *work) otherTape() []change {
	in := &w.in
	best, bestHours, bestFits := -1, unit.Hours(0), false
	for i, tape := range w.in.Sold.Tapes {
		if math.Abs(float64(tape.Flow/in.TapeFlow)-1) < sameTape && math.Abs(float64(tape.Spacing/in.Spacing)-1) < sameTape || !w.joins(tape.Spacing) {
			continue
		}
		flow, even := w.bedFlowWith(tape)
		if !even {
			continue
		}
		b := w.balance()
		b.bedFlow = flow
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
	tape := w.in.Sold.Tapes[best]
	input := in.Input
	input.TapeFlow, input.Spacing = tape.Flow, tape.Spacing
	return []change{{"other-tape", otherTapeEffort, unit.Say("Buy {} tape: outlets {} apart, {}, instead of {}.", tape.Class, unit.Short(tape.Spacing), tape.Flow, in.TapeFlow), []Input{input}}}
}

// Efforts of changes that are not a share of something.
const (
	otherTapeEffort  = 0.1 // none is bought yet
	largerBoreEffort = 0.15
	pressureEffort   = 0.05 // a turn of the regulator
	boosterEffort    = 0.4
	halfBedsEffort   = 0.5
	storageEffort    = 0.6
	eachCutEffort    = 0.2 // a header for each
	otherEndEffort   = 0.3
	contourEffort    = 0.25
	oneBedEffort     = 0.35
)

// How remedies are sized.
const (
	aLittleMore = 1.001   // than the beds take, so that rounding cannot miss it
	sameTape    = 0.02    // a tape whose flow and spacing differ by no more is the same
	keptBack    = 0.97    // of the flow, where beds are cut to what it can push
	mostPieces  = 8       // that a bed is cut into
	fewOutlets  = 4       // that a line of tape must have
	mostBeds    = 1000    // after cutting
	gentleFall  = 2       // percent, along which beds still count as level: common practice
	headerMore  = 4.0 / 3 // of missing pressure: at full pressure the header loses more
	oneBedMore  = 1.5     // of a bed's flow, so that one bed runs and not two
)

// joins tells whether outlets so far apart wet a strip, where the soil is known.
func (w *work) joins(spacing unit.Metres) bool {
	if !w.in.Soil.Given {
		return true
	}
	widest := soilwater.OverlapShare * w.in.WettedWidth.Or(w.in.Soil.Value.Wet)
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
	input.Hours = unit.Known(min(hours, 24))
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
		input.Flow = unit.Known(b.usable / unit.LitresPerHour(w.in.usable/100) * aLittleMore)
		input.Pressure, input.Supply = unit.Optional[unit.Kilopascals]{}, ""
		return []change{{"tank", storageEffort, unit.Say("Fill a tank of {} around the clock, and pump {} from it.", tank, round(b.usable, stepFlow)), []Input{input}}}
	}
	return nil
}

func (w *work) oneLineLess() []change {
	lines := w.in.Laterals
	if lines < 2 {
		return nil
	}
	input := w.in.Input
	input.Laterals--
	return []change{{"one-line-less", 1 / float64(lines), unit.Say("Lay {} in a bed instead of {}; less of the bed gets wet.", unit.Count(lines-1, "line", "lines"), lines), []Input{input}}}
}

// oneLineMore helps where one run alone is longer than the day.
func (w *work) oneLineMore() []change {
	b := w.balance()
	if b.perBed/float64(b.bedFlow) <= float64(b.hours) || w.in.Laterals+1 > int(boundLaterals.high) {
		return nil
	}
	input := w.in.Input
	input.Laterals++
	return []change{{"one-line-more", 1 / float64(input.Laterals), unit.Say("Lay {} lines in a bed instead of {}, to water faster.", input.Laterals, w.in.Laterals), []Input{input}}}
}

// smallerPlanting shortens beds to what the flow can push and keeps as many as
// the hours allow.
func (w *work) smallerPlanting() []change {
	b := w.balance()
	perMetre := float64(b.bedFlow) / float64(w.in.BedLength.Value)
	length := math.Floor(2*keptBack*float64(b.usable)/perMetre) / 2
	length = min(length, float64(w.in.BedLength.Value))
	zones := math.Floor(float64(b.hours) / (b.perBed / float64(b.bedFlow)))
	if length < float64(fewOutlets*w.in.Spacing) || zones < 1 {
		return nil
	}
	beds := min(b.beds, int(zones)*max(1, atOnce(b.usable, unit.LitresPerHour(perMetre*length))))
	area := float64(beds) * length / (float64(b.beds) * float64(w.in.BedLength.Value))
	if area >= 1 || length == float64(w.in.BedLength.Value) { // full beds: see fewerBeds
		return nil
	}
	input := w.in.Input
	input.Beds, input.BedLength = unit.Known(beds), unit.Known(unit.Metres(length))
	return []change{{"smaller-planting", 1 - area, unit.Say("Plant {} of {} instead of {} of {}.", unit.Count(beds, "bed", "beds"), unit.Metres(length), unit.Count(b.beds, "bed", "beds"), w.in.BedLength.Value), []Input{input}}}
}

// halfBeds feeds beds from the middle, one half at a time. On a slope one half
// climbs and one falls, and both must work.
func (w *work) halfBeds() []change {
	input := w.in.Input
	if input.BedLength.Value < fewOutlets*input.Spacing || 2*input.Beds.Value > mostBeds {
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
	if w.in.tapeBore >= w.in.Sold.LargeBore || w.plan.Tape.Profile != nil && w.plan.Tape.Spread <= w.in.spread {
		return nil
	}
	input := w.in.Input
	input.TapeBore = unit.Known(w.in.Sold.LargeBore)
	return []change{{"larger-bore", largerBoreEffort, unit.Say("Buy tape of a larger bore: {} instead of {}.", unit.Bore(w.in.Sold.LargeBore), unit.Bore(w.in.tapeBore)), []Input{input}}}
}

// shorterLines cuts the beds into pieces, each with its own header, until the
// pieces work: on a slope both ways along it, since a header may feed both.
func (w *work) shorterLines() []change {
	for pieces := 2; pieces <= mostPieces; pieces++ {
		input := w.in.Input
		input.BedLength.Value /= unit.Metres(pieces)
		input.Beds.Value *= pieces
		if input.BedLength.Value < fewOutlets*input.Spacing || input.Beds.Value > mostBeds {
			return nil
		}
		c := change{"shorter-lines", eachCutEffort * float64(pieces-1), unit.Say("Cut each bed into {} lines, each fed by its own header.", pieces), []Input{input}}
		if w.try(c).Fits || pieces == mostPieces {
			return []change{c}
		}
	}
	return nil
}

// gentlerTape takes the row of the tape table with the least flow that still
// joins: less friction along the line.
func (w *work) gentlerTape() []change {
	for _, tape := range w.in.Sold.Tapes { // from least to most flow
		if tape.Flow >= w.in.TapeFlow*(1-sameTape) {
			return nil
		}
		if w.joins(tape.Spacing) {
			input := w.in.Input
			input.TapeFlow, input.Spacing = tape.Flow, tape.Spacing
			return []change{{"gentler-tape", otherTapeEffort, unit.Say("Buy {} tape: outlets {} apart, {}, instead of {}.", tape.Class, unit.Short(tape.Spacing), tape.Flow, w.in.TapeFlow), []Input{input}}}
		}
	}
	return nil
}

// otherEnd feeds the beds from their other end.
func (w *work) otherEnd() []change {
	if w.in.Slope == 0 {
		return nil
	}
	input := w.in.Input
	input.Slope = -input.Slope
	return []change{{"other-end", otherEndEffort, unit.Say("Feed the beds from their other end."), []Input{input}}}
}

// alongContour lays the beds nearly level: a gentle fall still drains them.
func (w *work) alongContour() []change {
	if math.Abs(float64(w.in.Slope)) <= gentleFall {
		return nil
	}
	input := w.in.Input
	input.Slope = -1
	return []change{{"along-contour", contourEffort, unit.Say("Lay the beds across the slope, with a fall of about {}.", unit.Percent(1)), []Input{input}}}
}

// lack is the pressure that the source misses at the tape.
func (w *work) lack() unit.Kilopascals {
	s := w.plan.Supply
	if s == nil || !s.SourceGives.Given {
		return 0
	}
	return max(0, w.in.TapePressure.Or(usualTapePressure)-s.SourceGives.Value)
}

// extra is the least pressure to add with which the tape gets all that it is rated at, or all that
// was tried. It is more than what is missing now: at full pressure the tape takes more water, and
// filter and header lose more.
func (w *work) extra() unit.Kilopascals {
	want, extra := w.in.TapePressure.Or(usualTapePressure), w.lack()
	for range mostTries {
		s := w.again(w.pushed(extra)).plan.Supply
		if s == nil || !s.SourceGives.Given || s.SourceGives.Value >= want {
			break
		}
		extra += want - s.SourceGives.Value
	}
	return unit.Kilopascals(math.Ceil(float64(extra)))
}

// mostTries is how often a pressure is tried.
const mostTries = 8

// booster names the pump that makes up missing pressure.
func (w *work) booster() []change {
	if w.lack() == 0 {
		return nil
	}
	extra := w.extra()
	power := round(drip.ShaftPower(w.usable(), drip.HeadOf(extra), drip.UsualPumpEfficiency), stepPower)
	return []change{{"booster", boosterEffort, unit.Say("Add a booster pump: {} more pressure, {} at its shaft. Then the tape gets its full {}.", extra, power, w.in.TapePressure.Or(usualTapePressure)), []Input{w.pushed(extra)}}}
}

func (w *work) morePressure() []change {
	if w.lack() == 0 || w.gravityOnly() {
		return nil
	}
	extra := w.extra()
	had := w.in.Pressure.Value
	return []change{{"more-pressure", float64(extra / max(had, 1)), unit.Say("Use a source that holds {} while water runs, instead of {}. Then the tape gets its full {}.", had+extra, had, w.in.TapePressure.Or(usualTapePressure)), []Input{w.pushed(extra)}}}
}

func (w *work) pushed(extra unit.Kilopascals) Input {
	push, _ := w.in.push()
	input := w.in.Input
	input.Pressure, input.Rise = unit.Known(push+extra), unit.Optional[unit.Metres]{}
	return input
}

// oneBedAtOnce loses the least pressure in the header.
func (w *work) oneBedAtOnce() []change {
	s := w.plan.Schedule
	if s == nil || s.BedsAtOnce < 2 {
		return nil
	}
	input := w.in.Input
	input.Flow = unit.Known(w.plan.Tape.BedFlow * oneBedMore / unit.LitresPerHour(w.in.usable/100))
	return []change{{"one-bed-at-once", oneBedEffort, unit.Say("Run one bed at a time, so that the header loses less pressure."), []Input{input}}}
}

func (w *work) higherTank() []change {
	lack := w.lack()
	if lack == 0 || !w.gravityOnly() {
		return nil
	}
	raise := round(unit.Metres(math.Ceil(float64(drip.HeadOf(lack*headerMore))*10)/10), stepLength)
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
	input.TapePressure = unit.Known(lower)
	return []change{{"lower-pressure", pressureEffort, unit.Say("Turn the regulator down to {}.", lower), []Input{input}}}
}

func (w *work) moreRefill() []change {
	in := &w.in
	if w.plan.Supply == nil || w.plan.Supply.Tank == nil || w.plan.Supply.Tank.Enough || in.Supply == waterquality.Municipal {
		return nil
	}
	refill := round(unit.LitresPerHour(math.Ceil(float64(w.plan.Schedule.LitresADay.Value)/24)), stepFlow)
	input := in.Input
	input.TankRefill = unit.Known(refill)
	return []change{{"more-refill", float64(refill/in.TankRefill.Value) - 1, unit.Say("Refill the tank with {} instead of {}.", refill, in.TankRefill.Value), []Input{input}}}
}
