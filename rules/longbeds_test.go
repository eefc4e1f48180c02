package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// A bed of any length gets a tape and minutes, or a reason that is no length: what no
// tape waters from one end is fed from the middle or split, and the list follows.
func TestBedsOfAnyLengthAreWatered(t *testing.T) {
	base := pack(t)["pepper-cool-spring"]
	for _, metres := range []unit.Metres{30, 60, 91, 110, 150, 200, 300, 450, 600} {
		c := base
		c.Field.BedLength, c.Field.Beds = unit.Known(metres), unit.Known(4.0)
		c.Water.Flow = unit.Known(unit.LitresPerHour(30000))
		c.Soil.Slope = unit.Known(0.0)
		a := advise(t, c)
		f := a.Facts
		_, fits := a.Tape.Best()
		require.True(t, fits, "%v", metres)
		assert.LessOrEqual(t, f.Sketch[f.Tape].Spread, facts.WorstSpread, "%v", metres)
		assert.Positive(t, float64(a.Water.PeakMinutes), "%v", metres)
		water := a.WaterPlan()
		list := a.Shopping(&water)
		assert.InDelta(t, float64(4*f.Laterals*f.Stretches), list.Lines[field.ItemEnds].Quantity, 0.1, "%v", metres)
		best, _ := a.Verdict.Best()
		if f.Stretches > 1 {
			assert.NotEqual(t, question.Lay, best, "%v fed from the middle is laid with care", metres)
		}
		t.Logf("%v m: %s, lines %d end to end, spread %.1f %%", metres, question.Tape.Key(question.Option(f.Tape)), f.Stretches, float64(f.Sketch[f.Tape].Spread))
	}
}

// A source too weak for thirsty tapes does not hide that the others want a shorter line:
// no tape fits only where the source feeds none, or no cut is short enough.
func TestAWeakSourceDoesNotHideALongBed(t *testing.T) {
	none := 0
	for _, metres := range []unit.Metres{30, 60, 90, 150, 300} {
		for _, slope := range []float64{0, 3, 6, 9} {
			for _, flow := range []unit.LitresPerHour{300, 1000, 3000, 20000} {
				for _, id := range []string{"lettuce-spring", "tomato-southern-spring"} {
					c := pack(t)[id]
					c.Field.BedLength, c.Soil.Slope, c.Water.Flow = unit.Known(metres), unit.Known(slope), unit.Known(flow)
					a := advise(t, c)
					f, fed := a.Facts, false
					for i := range f.Sketch {
						fed = fed || !f.Sketch[i].NoPush && !f.Sketch[i].NoBed
					}
					if _, fits := a.Tape.Best(); !fits {
						none++
						assert.True(t, !fed || f.Stretches == 8, "%s: %v at %v %% and %v: cut into %d", id, metres, slope, flow, f.Stretches)
					}
				}
			}
		}
	}
	assert.Positive(t, none, "a source of 300 L/h feeds no bed of 300 m")
}

// What lies within the design limit does not count: the tape does not flip between beds
// that all of them water evenly.
func TestTheTapeDoesNotFlipWithinTheLimit(t *testing.T) {
	for _, id := range []string{"pepper-cool-spring", "tomato-southern-spring", "squash-virus"} {
		var before question.Option
		for i, metres := range []unit.Metres{45, 60, 75, 91, 110} {
			c := pack(t)[id]
			c.Field.BedLength, c.Soil.Slope = unit.Known(metres), unit.Known(0.0)
			c.Water.Flow = unit.Known(unit.LitresPerHour(60000))
			a := advise(t, c)
			tape, _ := a.Tape.Best()
			if i > 0 && a.Facts.Sketch[before].Spread <= facts.DesignSpread {
				assert.Equal(t, question.Tape.Key(before), question.Tape.Key(tape), "%s, %v", id, metres)
			}
			before = tape
		}
	}
}

// On sand a long bed gets emitters close enough for its wet spots to meet: wide tape, or a
// feed from the middle, before tape that leaves dry gaps.
func TestOnSandWetSpotsMeetInLongBedsToo(t *testing.T) {
	for _, texture := range []string{"sand", "loamy-sand"} {
		for _, metres := range []unit.Metres{60, 100, 150, 180, 200, 300} {
			c := pack(t)["pepper-cool-spring"]
			c.Soil.Texture, c.Soil.Slope = texture, unit.Known(0.0)
			c.Field.BedLength, c.Field.Beds = unit.Known(metres), unit.Known(4.0)
			c.Water.Flow = unit.Known(unit.LitresPerHour(30000))
			f := advise(t, c).Facts
			tape := &table.Tapes[f.Tape]
			assert.LessOrEqual(t, float64(tape.Spacing), 8*unit.MetresPerInch+1e-9, "%s, %v m: 4 to 8 in are usual, not %s", texture, metres, tape.Name)
			assert.LessOrEqual(t, f.Sketch[f.Tape].Spread, facts.DesignSpread, "%s, %v m", texture, metres)
			assert.LessOrEqual(t, f.Stretches, 2, "%s, %v m", texture, metres)
		}
	}
}

// The tape that is chosen needs no note against its own spacing.
func TestTheChosenTapeNeedsNoNote(t *testing.T) {
	for id, c := range pack(t) {
		if !long.Sample(id) {
			continue
		}
		a := advise(t, c)
		if _, fits := a.Tape.Best(); !fits {
			continue
		}
		for _, w := range a.WaterPlan().Warnings {
			assert.NotEqual(t, "outlets-apart", w.ID, id)
		}
	}
}
