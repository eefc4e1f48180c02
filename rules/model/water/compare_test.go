package water

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/unit"
)

// A sketch holds the figures that a whole plan with that tape gives.
func TestASketchIsThePlanInShort(t *testing.T) {
	tapes := sold.Tapes
	for _, change := range []func(*Input){
		func(*Input) {},
		func(in *Input) { in.Slope = 1.5 },
		func(in *Input) { in.BedLength = unit.Known(unit.Metres(250)) },
		func(in *Input) { in.Pressure = unit.Known(unit.Kilopascals(60)) },
		func(in *Input) { in.Flow = unit.Known(unit.LitresPerHour(200)) },
		func(in *Input) { in.Hours = unit.Known(unit.Hours(1)) },
	} {
		in := tomatoField()
		change(&in)
		need, sketches, problems := Compare(in, tapes)
		require.Empty(t, problems)
		for i, tape := range tapes {
			in.Spacing, in.TapeFlow = tape.Spacing, tape.Flow
			p := plan(t, in)
			s := sketches[i]
			assert.Equal(t, p.Demand.Peak.Use, need.PeakUse)
			assert.Equal(t, p.Tape.BedFlow, s.BedFlow)
			assert.Equal(t, p.Tape.Spread, s.Spread)
			assert.Equal(t, p.Tape.Pressure, s.Pressure)
			assert.Equal(t, p.Soil.Longest, s.Longest)
			assert.Equal(t, len(p.Schedule.Zones), s.Zones)
			assert.Equal(t, p.Schedule.HoursADay, s.HoursADay)
			assert.Equal(t, p.Verdict == DoesNotFit, len(s.Stops) > 0)
			assert.Equal(t, p.Schedule.BedsAtOnce == 0, s.NoBed)
		}
	}
}

// What cannot be pushed through a tape has no run and no zones.
func TestASketchWithoutPressure(t *testing.T) {
	in := tomatoField()
	in.Pressure = unit.Known(unit.Kilopascals(20))
	p := plan(t, in)
	require.Equal(t, DoesNotFit, p.Verdict)
	_, sketches, problems := Compare(in, []Candidate{{Spacing: in.Spacing, Flow: in.TapeFlow}})
	require.Empty(t, problems)
	s := sketches[0]
	assert.True(t, s.NoPush)
	assert.Equal(t, max(p.Supply.SourceGives.Value, 0), s.Pressure)
	assert.Equal(t, p.Because, s.Stops)
	assert.Zero(t, s.PeakRun)
	assert.Zero(t, s.Zones)
	assert.False(t, s.HoursADay.Given)
}

func TestCompareSaysWhatIsWrong(t *testing.T) {
	_, sketches, problems := Compare(tomatoField(), nil)
	assert.Empty(t, sketches)
	assert.Empty(t, problems)
	in := tomatoField()
	in.Beds = unit.Known(0)
	_, sketches, problems = Compare(in, []Candidate{{Spacing: in.Spacing, Flow: in.TapeFlow}})
	assert.Empty(t, sketches)
	require.Len(t, problems, 1)
	assert.Equal(t, "beds", problems[0].Field)
}

// What is not known takes nothing else with it.
func TestAPlanOfWhatIsKnown(t *testing.T) {
	in := tomatoField()
	in.BedCentres = unit.Optional[unit.Metres]{}
	p := plan(t, in)
	require.NotNil(t, p.Schedule)
	require.NotEmpty(t, p.Schedule.Zones, "zones need flow and beds, not pipe")
	for _, z := range p.Schedule.Zones {
		assert.Zero(t, z.FromSource)
		assert.Positive(t, z.Flow)
	}
	assert.Nil(t, p.Supply)

	in = tomatoField()
	in.SaltThreshold = unit.Optional[unit.DecisiemensPerMetre]{}
	in.Salt = unit.Known(unit.DecisiemensPerMetre(4))
	p = plan(t, in)
	assert.Equal(t, "severe", p.Quality.Restriction.String())
	assert.False(t, p.Quality.Yield.Given, "no tolerance was found for this crop")

	in = tomatoField()
	in.BedTop = unit.Optional[unit.Metres]{}
	p = plan(t, in)
	require.NotNil(t, p.Soil)
	assert.Positive(t, p.Soil.Water.Available)
	assert.Zero(t, p.Soil.Longest)

	in = tomatoField()
	in.Soil = unit.Optional[soilwater.Class]{}
	in.Hours = unit.Known(unit.Hours(1))
	p = plan(t, in)
	assert.Equal(t, DoesNotFit, p.Verdict)
	assert.Len(t, p.Remedies, 3, "ways out do without the soil")
}

// Far too long a thread of tape: the pressure collapses, the plan says so and
// ends.
func TestACollapsingBed(t *testing.T) {
	in := tomatoField()
	in.BedLength, in.TapeBore, in.TapeFlow, in.Spacing = unit.Known(unit.Metres(1000)), unit.Known(unit.Metres(0.008)), 1500, 0.1
	p := plan(t, in)
	assert.Equal(t, DoesNotFit, p.Verdict)
	_, sketches, problems := Compare(in, []Candidate{{Spacing: in.Spacing, Flow: in.TapeFlow}})
	require.Empty(t, problems)
	assert.Greater(t, float64(sketches[0].Spread), 90.0)
	assert.NotEmpty(t, sketches[0].Stops)
}
