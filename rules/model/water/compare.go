package water

import (
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/unit"
)

// Candidate is a tape that might be bought: outlet spacing and flow at 8 psi.
type Candidate struct {
	Class   string // as a shop says it, such as "low-flow"; read where a remedy names it
	Spacing unit.Metres
	Flow    unit.LitresPerHourPer100Metres
	Bore    unit.Metres // inside
}

// Need is what the crop needs, whatever the tape.
type Need struct {
	Known             bool
	FirstUse, PeakUse unit.Millimetres   // a day
	PeakDay           LitresPer100Metres // a day, gross
	Usable            unit.LitresPerHour // of the tested flow; 0 where unknown
}

// Sketch is what one tape would make of a plan: the figures that [Make] gives
// for that tape, without the parts that a choice between tapes does not need.
type Sketch struct {
	Pressure      unit.Kilopascals // at the tape's inlet
	BedFlow       unit.LitresPerHour
	Spread        unit.Percent // along a bed; 0 where its length is unknown
	FirstRun      unit.Minutes // a day and zone; 0 where the need is unknown
	FirstEvery    unit.Days    // the same in runs long enough to water a line evenly: see [First]
	FirstTogether unit.Minutes
	MostEvery     unit.Days // the most that young plants may take, likewise
	MostTogether  unit.Minutes
	PeakRun       unit.Minutes
	Longest       unit.Minutes // single run; 0 where soil or roots are unknown
	Runs          int          // on the hungriest day
	Zones         int          // 0 where beds or flow are unknown or no bed can run
	NoBed         bool         // flow and bed are known, and not even one bed can run
	NoPush        bool         // the source leaves too little pressure: no spread, runs or zones are told
	HoursADay     unit.Optional[unit.Hours]
	Hours         unit.Hours    // that water may run a day
	Stops         []unit.Phrase // why it does not fit; none where it fits or too little is known
}

// Compare sketches a plan for each of some tapes. The crop's need is worked out
// once. It has the problems of [Make]; the tape of the input is ignored.
func Compare(in Input, tapes []Candidate) (Need, []Sketch, []Problem) {
	return CompareKnowing(nil, in, tapes)
}

// CompareKnowing is [Compare] for a search that asks of many inputs that differ
// little: the lines that were solved stay known.
func CompareKnowing(known *drip.Known, in Input, tapes []Candidate) (Need, []Sketch, []Problem) {
	if len(tapes) == 0 {
		return Need{}, nil, nil
	}
	in.Cool, in.Dry = unit.Optional[Year]{}, unit.Optional[Year]{}
	first := &work{light: true, known: known}
	sketches := make([]Sketch, len(tapes))
	for i, tape := range tapes {
		in.Spacing, in.TapeFlow = tape.Spacing, tape.Flow
		if tape.Bore > 0 {
			in.TapeBore = unit.Known(tape.Bore)
		}
		if problems := check(in); len(problems) > 0 {
			return Need{}, nil, problems
		}
		w := first
		if i > 0 {
			w = &work{light: true, known: known, peakNet: first.peakNet, peakGross: first.peakGross, firstGross: first.firstGross, mostGross: first.mostGross}
			w.plan.Demand = first.plan.Demand
		}
		w.in = fill(in)
		if i == 0 {
			w.demand()
		}
		w.hydraulics()
		w.soil()
		w.schedule()
		sketches[i] = w.sketch()
	}
	need := Need{}
	if d := first.plan.Demand; d != nil {
		need = Need{true, d.First.Use, d.Peak.Use, d.Peak.Gross, 0}
	}
	need.Usable = round(first.usable(), stepFlow)
	return need, sketches, nil
}

// Compared leaves out of an input what [Compare] does not read, so that a caller
// can tell that two inputs compare alike.
func Compared(in Input) Input {
	in.Lift, in.SodiumRatio, in.Nitrate, in.PH, in.Iron, in.Hardness = unit.Optional[unit.Metres]{}, unit.Optional[float64]{}, unit.Optional[unit.MilligramsPerLitre]{}, unit.Optional[float64]{}, unit.Optional[unit.MilligramsPerLitre]{}, unit.Optional[unit.MilligramsPerLitre]{}
	in.FeedRate, in.FeedGrade, in.Stock, in.Bleach, in.Chlorine = unit.Optional[float64]{}, unit.Optional[unit.Percent]{}, unit.Optional[float64]{}, unit.Optional[unit.Percent]{}, unit.Optional[unit.MilligramsPerLitre]{}
	return in
}

func (w *work) sketch() Sketch {
	t := &w.plan.Tape
	if w.noPush {
		return Sketch{NoPush: true, Pressure: max(w.plan.Supply.SourceGives.Value, 0), Hours: w.in.hours, Stops: w.stops}
	}
	s := Sketch{Pressure: t.Pressure, BedFlow: t.BedFlow, Spread: t.Spread, Longest: round(w.longest, stepMinutes), Runs: 1, Hours: w.in.hours, Stops: w.stops}
	if w.bedFlow > 0 && w.peakGross > 0 {
		s.FirstRun = round(unit.Minutes(60*w.firstGross/w.bedFlow), stepMinutes)
		s.FirstEvery, s.FirstTogether = w.spaced(60*w.firstGross/w.bedFlow, w.plan.Demand.First.Use)
		s.MostEvery, s.MostTogether = w.spaced(60*w.mostGross/w.bedFlow, w.plan.Demand.First.UseMost)
		s.PeakRun = round(w.peakRun(), stepMinutes)
		s.Runs = soilwater.RunsADay(w.peakRun(), w.longest)
	}
	s.NoBed = w.in.Flow.Given && t.BedFlow > 0 && atOnce(w.usable(), t.BedFlow) == 0
	if w.in.BedLength.Given && t.Profile == nil { // the pressure collapses
		s.Spread = 100
	}
	if sch := w.plan.Schedule; sch != nil {
		s.Zones, s.HoursADay = len(sch.Zones), sch.HoursADay
	}
	return s
}
