package rules

import (
	"math"

	"filmfurrow/rules/model/water"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// WaterPlan is the whole water plan of an advice.
type WaterPlan struct {
	water.Plan
	Problems []water.Problem // where there are any there is no plan; a case that passes Check has none
	Row      *table.Tape
	Chosen   bool // false where no tape fits: the plan then shows why, for the smallest
	Lines    int
	Climbs   unit.Percent // slope along the beds that is counted, away from the header
	// OtherEnd is the spread along a bed that is fed from its upper end.
	OtherEnd   water.Optional[unit.Percent]
	Hargreaves [12]unit.Millimetres // reference evapotranspiration by the second formula
}

// WaterPlan works out the water plan of the advice, from the facts and the tape
// that the answers rest on. It takes longer than all the answers together, so
// it stands apart: whoever shows it asks for it.
func (a *Advice) WaterPlan() WaterPlan {
	f := a.Facts
	_, chosen := a.Tape.Best()
	tape := &table.Tapes[f.Tape]
	in := f.waterInput()
	in.Spacing, in.TapeFlow = tape.Spacing, tape.Flow
	p := WaterPlan{Row: tape, Chosen: chosen, Lines: f.Lines, Climbs: in.Slope}
	p.Plan, p.Problems = water.Make(in)
	if in.Slope > 0 && in.BedLength.Given && len(p.Problems) == 0 {
		in.Slope = -in.Slope
		if _, sketches, problems := water.Compare(in, []water.Candidate{{Spacing: tape.Spacing, Flow: tape.Flow}}); len(problems) == 0 {
			p.OtherEnd = water.Known(sketches[0].Spread)
		}
	}
	for m := range p.Hargreaves {
		date := unit.On(2001, m+1, 15)
		back := f.usualAgain(f.year.SeasonMargin(weather.Index(date)))
		p.Hargreaves[m] = waterDepth(f.demandOn(date, back, 0).Hargreaves)
	}
	return p
}

// Bucket is the flow of a bucket test, to a tenth of a litre an hour: volume ÷
// seconds. It is 0 for no time or no volume.
func Bucket(volume unit.Litres, seconds float64) unit.LitresPerHour {
	return unit.LitresPerHour(math.Round(float64(water.Bucket(max(volume, 0), seconds))*10) / 10)
}
