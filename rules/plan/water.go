package plan

import (
	"math"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// WaterPlan is the whole water plan of an advice.
type WaterPlan struct {
	water.Plan
	Problems []water.Problem // where there are any there is no plan; a case that passes Check has none
	Row      *table.Tape
	Chosen   bool // false where no tape fits: the plan then shows why, for the smallest
	Laterals int
	Climbs   unit.Percent // slope along the beds that is counted, away from the header
	// OtherEnd is the spread along a bed that is fed from its upper end.
	OtherEnd   unit.Optional[unit.Percent]
	Hargreaves [12]unit.Millimetres // reference evapotranspiration by the second formula
	// LeastPressure is the lowest pressure along a line that keeps the allowed
	// spread of flow, where the bed's length is known.
	LeastPressure unit.Kilopascals
	Turns         []Turn // the valves of the hungriest day, in order; none where there are more than mostTurns
}

// Turn is one opening of one zone's valve, in minutes from the first opening.
type Turn struct {
	Zone, Run int
	From, To  unit.Minutes
}

// mostTurns is as many openings as a person follows from a list.
const mostTurns = 24

// WaterPlan works out the water plan of the advice, from the facts and the tape
// that the answers rest on. It takes longer than all the answers together, so
// it stands apart: whoever shows it asks for it.
func (a *Advice) WaterPlan() WaterPlan {
	f := a.Facts
	_, chosen := a.Tape.Best()
	tape := &table.Tapes[f.Tape]
	in := f.WaterInput()
	in.Spacing, in.TapeFlow, in.TapeBore = tape.Spacing, tape.Flow, unit.Known(tape.Bore)
	p := WaterPlan{Row: tape, Chosen: chosen, Laterals: f.Laterals, Climbs: in.Slope}
	p.Plan, p.Problems = water.Make(in)
	if in.Slope > 0 && in.BedLength.Given && len(p.Problems) == 0 {
		in.Slope = -in.Slope
		if _, sketches, problems := water.Compare(in, []water.Candidate{{Spacing: tape.Spacing, Flow: tape.Flow, Bore: tape.Bore}}); len(problems) == 0 {
			p.OtherEnd = unit.Known(sketches[0].Spread)
		}
	}
	if r := p.Plan.Tape.Profile; r != nil {
		ratio := drip.PressureRatioFor(facts.DesignSpread, p.Plan.Tape.Emitter.Exponent)
		p.LeastPressure = unit.Kilopascals(math.Round(float64(r.Highest)*ratio*10) / 10)
	}
	p.Turns = turnsOf(p.Schedule)
	for m := range p.Hargreaves {
		p.Hargreaves[m] = f.UsualHargreaves(unit.On(2001, m+1, 15))
	}
	return p
}

// turnsOf lets each zone run in turn. Where a day takes more than one run, the
// rounds are spread over the hours that water may run, so that each bed rests
// between its runs.
func turnsOf(s *water.Schedule) (turns []Turn) {
	if s == nil || !s.RunADay.Given || len(s.Zones)*s.Runs > mostTurns {
		return nil
	}
	round := max(s.EachRun*unit.Minutes(len(s.Zones)), unit.Minutes(60*float64(s.HoursGiven)/float64(s.Runs)))
	for run := range s.Runs {
		from := round * unit.Minutes(run)
		for _, z := range s.Zones {
			to := from + s.EachRun
			turns = append(turns, Turn{Zone: z.Number, Run: run + 1, From: unit.Minutes(math.Round(float64(from))), To: unit.Minutes(math.Round(float64(to)))})
			from = to
		}
	}
	return turns
}

// Bucket is the flow of a bucket test, to a tenth of a litre an hour: volume ÷
// seconds. It is 0 for no time or no volume.
func Bucket(volume unit.Litres, seconds float64) unit.LitresPerHour {
	return unit.LitresPerHour(math.Round(float64(water.Bucket(max(volume, 0), seconds))*10) / 10)
}
