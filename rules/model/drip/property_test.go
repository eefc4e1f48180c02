package drip

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func anyLine(t *rapid.T) Line {
	return Line{
		Outlets: rapid.IntRange(1, 800).Draw(t, "outlets"),
		Spacing: unit.Metres(rapid.Float64Range(0.1, 0.9).Draw(t, "spacing")),
		Bore:    unit.Metres(rapid.Float64Range(0.010, 0.035).Draw(t, "bore")),
		Slope:   unit.Percent(rapid.Float64Range(-4, 4).Draw(t, "slope")),
		Outlet: Emitter{
			Rated:    unit.LitresPerHour(rapid.Float64Range(0.3, 3).Draw(t, "rated")),
			RatedAt:  table.TapePressure,
			Exponent: rapid.SampledFrom([]float64{0, 0.1, 0.4, 0.5, 0.6, 1}).Draw(t, "exponent"),
		},
		Friction: Friction{Law: rapid.SampledFrom([]Law{SmoothPipe, HazenWilliams, RoughPipe}).Draw(t, "law"), Roughness: 1.5e-6},
	}
}

func anyPressure(t *rapid.T) unit.Kilopascals {
	return unit.Kilopascals(rapid.Float64Range(10, 105).Draw(t, "inlet"))
}

// solve gives a profile, or false where the search could not resolve the line.
// That may only happen to a line in which the pressure collapses: half of it
// must already be far beyond any design limit.
func solve(t *rapid.T, line Line, inlet unit.Kilopascals) (Profile, bool) {
	p, err := line.Solve(inlet)
	if err == nil {
		return p, true
	}
	require.ErrorIs(t, err, ErrUnsolved)
	line.Outlets = (line.Outlets + 1) / 2
	half, err := line.Solve(inlet)
	if err == nil {
		require.Greater(t, float64(half.Highest-half.Lowest), 0.5*float64(inlet))
	}
	return Profile{}, false
}

// More pressure never gives less flow.
func TestMorePressureNeverLessFlow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line, inlet := anyLine(t), anyPressure(t)
		more := inlet + unit.Kilopascals(rapid.Float64Range(0.1, 30).Draw(t, "more"))
		a, ok := solve(t, line, inlet)
		b, alsoOK := solve(t, line, more)
		if !ok || !alsoOK {
			return
		}
		assert.GreaterOrEqual(t, float64(b.Flow), float64(a.Flow)*(1-1e-6))
	})
}

// A longer line is never more even, on any even slope: downhill as well, since
// the stretch below the lowest pressure keeps its gain while the pressure falls.
func TestLongerLineNeverMoreEven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line, inlet := anyLine(t), anyPressure(t)
		longer := line
		longer.Outlets += rapid.IntRange(1, 200).Draw(t, "more outlets")
		a, ok := solve(t, line, inlet)
		b, alsoOK := solve(t, longer, inlet)
		if !ok || !alsoOK {
			return
		}
		assert.GreaterOrEqual(t, float64(b.Spread), float64(a.Spread)-1e-4)
	})
}

// The outlets add up to the inlet, pressures obey the ends, and a solution
// starts from the pressure it was asked for.
func TestSolutionIsConsistent(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line, inlet := anyLine(t), anyPressure(t)
		p, ok := solve(t, line, inlet)
		if !ok {
			return
		}
		assert.InDelta(t, float64(p.Flow), float64(p.MeanOutlet)*float64(line.Outlets), 1e-6*float64(p.Flow)+1e-12)
		assert.LessOrEqual(t, p.Lowest, p.Highest)
		assert.LessOrEqual(t, float64(p.LeastOutlet), float64(p.LowQuarter)*(1+1e-12))
		assert.LessOrEqual(t, float64(p.LowQuarter), float64(p.MeanOutlet)*(1+1e-12))
		assert.LessOrEqual(t, float64(p.MeanOutlet), float64(p.MostOutlet)*(1+1e-12))
		assert.LessOrEqual(t, p.Sweeps, 130)
		if p.Spread > 50 {
			return // walking down a collapsing line loses all its digits
		}
		// Walking down the line again from the inlet, by the same law, must come
		// to the end pressure: this catches a wrong root as well as a wrong sum.
		g := line.Friction.gradient(line.Bore)
		head, flow := float64(inlet)*unit.MetresOfWaterPerKPa, float64(p.Flow)
		for range line.Outlets {
			head -= g.at(flow)*float64(line.Spacing) + float64(line.Spacing)*float64(line.Slope)/100
			flow -= float64(line.Outlet.Flow(kilopascals(head)))
		}
		assert.InDelta(t, 0, flow, 2e-3*float64(p.Flow)+1e-9)
	})
}

// Splitting the same beds over twice as many zones halves what runs at once:
// half the laterals on a header give half the flow where the header costs
// nothing.
func TestHalfTheLinesHalfTheFlow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 30).Draw(t, "laterals")
		lateral := Emitter{unit.LitresPerHour(rapid.Float64Range(100, 900).Draw(t, "flow")), table.TapePressure, 0.5}
		header := func(count int) float64 {
			p, err := Line{Outlets: count, Spacing: 1e-6, Bore: 0.2, Outlet: lateral}.Solve(69)
			require.NoError(t, err)
			return float64(p.Flow)
		}
		assert.InEpsilon(t, header(2*n)/2, header(n), 1e-3)
	})
}

// Hydraulics have no favourite units: a line typed in feet and psi equals the
// same line typed in metres and kPa.
func TestMetricEqualsUS(t *testing.T) {
	us := Line{Outlets: 300, Spacing: unit.FromInches(12), Bore: unit.FromInches(0.625), Outlet: Emitter{unit.FromGallonsPerMinute(0.0045), unit.FromPSI(8), 0.5}}
	si := Line{Outlets: 300, Spacing: 0.3048, Bore: 0.015875, Outlet: Emitter{1.02206118168, 55.158058345, 0.5}}
	a, err := us.Solve(unit.FromPSI(10))
	require.NoError(t, err)
	b, err := si.Solve(68.94757293)
	require.NoError(t, err)
	assert.InEpsilon(t, float64(a.Flow), float64(b.Flow), 1e-9)
	assert.InEpsilon(t, float64(a.End), float64(b.End), 1e-9)
}

// The longest run is the last length that keeps the spread.
func TestLongestRunIsTight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line, inlet := anyLine(t), anyPressure(t)
		limit := unit.Percent(rapid.Float64Range(2, 25).Draw(t, "limit"))
		run, err := LongestRun(line, inlet, limit, 600)
		require.NoError(t, err)
		line.Outlets = run.Outlets
		if run.Outlets > 0 {
			p, err := line.Solve(inlet)
			require.NoError(t, err)
			assert.LessOrEqual(t, float64(p.Spread), float64(limit)+1e-4)
		}
		if !run.AtLimit {
			line.Outlets++
			p, ok := solve(t, line, inlet)
			if !ok {
				return
			}
			assert.Greater(t, float64(p.Spread), float64(limit)-1e-4)
		}
	})
}

// A line that climbs more than its pressure reaches runs dry at the end, and
// says how many outlets.
func TestDryEnd(t *testing.T) {
	line := Line{Outlets: 400, Spacing: 0.3, Bore: table.CommonBore, Slope: 8, Outlet: Emitter{1, table.TapePressure, 0.5}}
	p, err := line.Solve(unit.FromPSI(10)) // 7.03 m of head, 9.6 m of climb
	require.NoError(t, err)
	assert.Greater(t, p.DryOutlets, 100)
	assert.Less(t, p.DryOutlets, 400)
	assert.EqualValues(t, 100, p.Spread)
	assert.Zero(t, p.LeastOutlet)
}

func TestLinesThatCannotBe(t *testing.T) {
	good := Line{Outlets: 10, Spacing: 0.3, Bore: 0.016, Outlet: Emitter{1, 55, 0.5}}
	_, err := good.Solve(50)
	require.NoError(t, err)
	for name, spoil := range map[string]func(*Line) unit.Kilopascals{
		"no outlets":       func(l *Line) unit.Kilopascals { l.Outlets = 0; return 50 },
		"too many outlets": func(l *Line) unit.Kilopascals { l.Outlets = MaxOutlets + 1; return 50 },
		"no spacing":       func(l *Line) unit.Kilopascals { l.Spacing = 0; return 50 },
		"negative bore":    func(l *Line) unit.Kilopascals { l.Bore = -1; return 50 },
		"NaN bore":         func(l *Line) unit.Kilopascals { l.Bore = unit.Metres(math.NaN()); return 50 },
		"no flow":          func(l *Line) unit.Kilopascals { l.Outlet.Rated = 0; return 50 },
		"no rating":        func(l *Line) unit.Kilopascals { l.Outlet.RatedAt = 0; return 50 },
		"exponent 2":       func(l *Line) unit.Kilopascals { l.Outlet.Exponent = 2; return 50 },
		"cliff":            func(l *Line) unit.Kilopascals { l.Slope = 300; return 50 },
		"no pressure":      func(*Line) unit.Kilopascals { return 0 },
		"suction":          func(*Line) unit.Kilopascals { return -20 },
		"endless pressure": func(*Line) unit.Kilopascals { return unit.Kilopascals(math.Inf(1)) },
	} {
		line := good
		inlet := spoil(&line)
		_, err := line.Solve(inlet)
		assert.ErrorIs(t, err, ErrLine, name)
	}
	_, err = LongestRun(Line{}, 50, 10, 100)
	assert.ErrorIs(t, err, ErrLine)
}

// Where the ground climbs faster than the pressure reaches, not one outlet
// gives: no length is even, and nothing divides by the flow that is not there.
func TestAWhollyDryLine(t *testing.T) {
	line := Line{Outlets: 20, Spacing: 1, Bore: table.CommonBore, Slope: 100, Outlet: Emitter{1, table.TapePressure, 0.5}}
	p, err := line.Solve(5)
	require.NoError(t, err)
	assert.Equal(t, 20, p.DryOutlets)
	assert.Zero(t, p.Flow)
	assert.EqualValues(t, 100, p.Spread)
	assert.Zero(t, EmissionUniformity(p, 0.05, 1))
	run, err := LongestRun(line, 5, 10, 50)
	require.NoError(t, err)
	assert.Zero(t, run.Outlets)
}

// A line that is many times too long for its bore is not even at any length
// worth the name, and the search for the longest still ends.
func TestLongestRunOfAThread(t *testing.T) {
	line := Line{Spacing: 0.1, Bore: 0.004, Outlet: Emitter{4, table.TapePressure, 0.5}}
	run, err := LongestRun(line, 69, 10, 1000)
	require.NoError(t, err)
	assert.Less(t, float64(run.Length), 5.0)
	_, err = LongestRun(line, 0, 10, 1000)
	assert.ErrorIs(t, err, ErrLine)
	_, err = FromTank(3, 0, line, 10, 0)
	assert.Error(t, err)
	_, err = SizeHeader(Header{Laterals: 0}, 69, HeaderLimits{}, NominalBores[:])
	assert.ErrorIs(t, err, ErrLine)
	assert.Zero(t, line.Outlet.PressureFor(0))
	assert.True(t, math.IsInf(float64(Emitter{1, table.TapePressure, 0}.PressureFor(2)), 1), "no pressure makes a compensating outlet give more")
}

// Whatever is typed, the solver ends within its bounded sweeps with an answer
// or an error, and never with a figure that is not a number.
func FuzzSolve(f *testing.F) {
	f.Add(400, 0.3048, 0.015875, 0.0, 1.02, 0.5, 69.0, uint8(0))
	f.Add(50000, 0.05, 0.004, -99.0, 90.0, 1.0, 1e6, uint8(1))
	f.Add(50000, 0.05, 0.05, 50.0, 1e-9, 0.0, 1e-9, uint8(2))
	f.Add(3000, 2.0, 0.003, -3.0, 20.0, 0.7, 900.0, uint8(0))
	f.Fuzz(func(t *testing.T, outlets int, spacing, bore, slope, rated, exponent, inlet float64, law uint8) {
		outlets = min(outlets, 5000) // keep a fuzzing worker quick; the bound itself is tested above
		line := Line{outlets, unit.Metres(spacing), unit.Metres(bore), unit.Percent(slope),
			Emitter{unit.LitresPerHour(rated), table.TapePressure, exponent}, Friction{Law: Law(law % 3), Roughness: 1e-6}}
		p, err := line.Solve(unit.Kilopascals(inlet))
		if err != nil {
			return
		}
		for _, v := range []float64{float64(p.Flow), float64(p.End), float64(p.Lowest), float64(p.Spread), float64(p.MeanOutlet)} {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("not a number: %+v from %+v", p, line)
			}
		}
		if p.Sweeps > 130 {
			t.Fatalf("%d sweeps", p.Sweeps)
		}
	})
}

func BenchmarkSolve400(b *testing.B) {
	line := Line{Outlets: 400, Spacing: 0.3048, Bore: table.CommonBore, Outlet: EmitterOf(table.Tapes[3].Flow, table.TapePressure, table.Tapes[3].Spacing, 0.5)}
	for b.Loop() {
		if _, err := line.Solve(69); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLongestRun(b *testing.B) {
	line := Line{Spacing: 0.3048, Bore: table.CommonBore, Outlet: EmitterOf(table.Tapes[3].Flow, table.TapePressure, table.Tapes[3].Spacing, 0.5)}
	for b.Loop() {
		if _, err := LongestRun(line, 69, 10, 500); err != nil {
			b.Fatal(err)
		}
	}
}
