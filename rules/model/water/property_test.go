package water

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// anyInput draws an input inside the allowed ranges, with gaps.
func anyInput(t *rapid.T) Input {
	number := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
	given := func(name string) bool { return rapid.IntRange(0, 9).Draw(t, name+" given") > 0 }
	metres := func(name string, low, high float64) unit.Optional[unit.Metres] {
		if !given(name) {
			return unit.Optional[unit.Metres]{}
		}
		return unit.Known(unit.Metres(number(name, low, high)))
	}
	in := tomatoField()
	in.PlantOn = unit.On(2027, 1, 1).Plus(unit.Days(rapid.IntRange(0, 364).Draw(t, "plant on")))
	in.Season = unit.Known(unit.Days(rapid.IntRange(14, 400).Draw(t, "season")))
	for m := range in.Usual.Value {
		in.Usual.Value[m] = unit.Millimetres(number("reference", 0.1, 12))
	}
	low := number("cut", 0, 40)
	in.FilmCut = unit.Known(Range{unit.Percent(low), unit.Percent(number("cut", low, 45))})
	in.Soil = soilOf(table.Soils[rapid.IntRange(0, len(table.Soils)-1).Draw(t, "texture")].ID)
	in.RootDepth = metres("roots", 0.05, 2.5)
	in.BedLength = metres("length", 2, 400)
	in.BedCentres = unit.Known(unit.Metres(number("centres", 1, 4)))
	in.BedTop = unit.Known(unit.Metres(number("top", 0.2, 1)))
	if given("beds") {
		in.Beds = unit.Known(rapid.IntRange(1, 120).Draw(t, "beds"))
	}
	in.Slope = unit.Percent(number("slope", -8, 8))
	in.Laterals = rapid.IntRange(1, 4).Draw(t, "lines")
	in.Spacing = unit.Metres(number("spacing", 0.1, 0.9))
	in.TapeFlow = unit.LitresPerHourPer100Metres(100 * number("outlet", 0.2, 3.9) / float64(in.Spacing))
	in.TapeFlow = min(max(in.TapeFlow, 50), 1500)
	if outlet := float64(in.TapeFlow) * float64(in.Spacing) / 100; outlet < 0.1 || outlet > 4 {
		in.TapeFlow = unit.LitresPerHourPer100Metres(100 / float64(in.Spacing))
	}
	in.Supply = rapid.SampledFrom([]waterquality.Supply{"", "none", "well", "pond", "stream", "municipal", "tank"}).Draw(t, "supply")
	if given("flow") {
		in.Flow = unit.Known(unit.LitresPerHour(number("flow", 20, 60000)))
	} else {
		in.Flow = unit.Optional[unit.LitresPerHour]{}
	}
	if given("pressure") {
		in.Pressure = unit.Known(unit.Kilopascals(number("pressure", 0, 600)))
	}
	in.Rise = metres("rise", -30, 30)
	in.Header = metres("header", 0, 800)
	in.Hours = unit.Known(unit.Hours(number("hours", 0.5, 24)))
	in.Salt = unit.Known(unit.DecisiemensPerMetre(number("salt", 0.02, 6)))
	if given("tank") && given("refill") {
		in.TankVolume, in.TankRefill = unit.Known(unit.Litres(number("tank", 60, 1e5))), unit.Known(unit.LitresPerHour(number("refill", 20, 20000)))
	}
	return in
}

// Whatever allowed input comes, the plan keeps its promises.
func TestPlanKeepsItsPromises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		p, problems := Make(in)
		require.Empty(t, problems)
		again, _ := Make(in)
		assert.Equal(t, p, again, "same input, same plan")
		_, err := json.Marshal(p)
		require.NoError(t, err, "a figure that is not a number")
		require.NotEmpty(t, p.Because)
		for _, b := range p.Because {
			assert.True(t, b.Complete(), b.Text)
		}
		for _, w := range p.Warnings {
			assert.True(t, w.Says.Complete(), w.Says.Text)
			assert.NotEmpty(t, w.Source, w.ID)
		}
		for i, w := range p.Warnings[min(1, len(p.Warnings)):] {
			assert.GreaterOrEqual(t, w.Severity, p.Warnings[i].Severity, "worst first")
		}
		for _, way := range p.Remedies {
			assert.True(t, way.Change.Complete() && way.Result.Complete(), way.ID)
		}
		if p.Verdict == DoesNotFit {
			assert.NotEmpty(t, p.Remedies)
			assert.LessOrEqual(t, len(p.Remedies), 3)
		} else {
			assert.Empty(t, p.Remedies)
		}
		if s := p.Schedule; s != nil && len(s.Zones) > 0 {
			beds, flow := 0, unit.LitresPerHour(0)
			for i, z := range s.Zones {
				assert.Equal(t, z.LastBed-z.FirstBed+1, z.Beds)
				assert.Equal(t, beds+1, z.FirstBed)
				assert.LessOrEqual(t, z.Beds, s.BedsAtOnce)
				assert.LessOrEqual(t, s.Zones[0].Beds-z.Beds, 1, "as even as whole beds allow")
				assert.Equal(t, i+1, z.Number)
				beds += z.Beds
				flow += z.Flow
			}
			assert.Equal(t, in.Beds.Value, beds)
			assert.InDelta(t, float64(p.Tape.BedFlow)*float64(beds), float64(flow), 0.06*float64(len(s.Zones)))
			assert.LessOrEqual(t, float64(s.Zones[0].Flow), float64(in.Flow.Value)*0.8+0.1)
			if p.Verdict == Fits || p.Verdict == FitsTightly {
				assert.LessOrEqual(t, s.HoursADay.Value, s.HoursGiven)
			}
		}
		if d := p.Demand; d != nil {
			for _, m := range d.Months {
				assert.LessOrEqual(t, m.Net, m.Gross)
				assert.LessOrEqual(t, m.Gross, d.Peak.Gross+0.1)
				if m.Runs > 1 && p.Soil != nil && p.Soil.Longest > 0 {
					assert.EqualValues(t, 1, m.Interval)
				}
			}
			assert.LessOrEqual(t, d.Peak.OnBedOnly, d.Peak.Gross+0.1)
		}
	})
}

// More flow never needs more hours, and never makes a plan that fits unfit.
func TestMoreFlowNeverWorse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := tomatoField()
		in.Pressure = unit.Optional[unit.Kilopascals]{}
		in.Beds = unit.Known(rapid.IntRange(1, 60).Draw(t, "beds"))
		in.Flow = unit.Known(unit.LitresPerHour(rapid.Float64Range(300, 20000).Draw(t, "flow")))
		a, _ := Make(in)
		in.Flow.Value *= unit.LitresPerHour(rapid.Float64Range(1, 5).Draw(t, "more"))
		b, _ := Make(in)
		if len(a.Schedule.Zones) > 0 {
			assert.LessOrEqual(t, b.Schedule.HoursADay.Value, a.Schedule.HoursADay.Value)
			assert.LessOrEqual(t, len(b.Schedule.Zones), len(a.Schedule.Zones))
		}
	})
}

// Twice the zones halve the flow: beds in equal zones of half the size take
// half the water at once and twice the hours.
func TestTwiceTheZonesHalfTheFlow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := tomatoField()
		perZone := 2 * rapid.IntRange(1, 12).Draw(t, "half a zone")
		zones := rapid.IntRange(1, 8).Draw(t, "zones")
		in.Beds = unit.Known(perZone * zones)
		first, _ := Make(in)
		bed := first.Tape.BedFlow
		in.Flow = unit.Known(bed * unit.LitresPerHour(perZone) * 1.001 / 0.8)
		a, _ := Make(in)
		in.Flow.Value /= 2
		b, _ := Make(in)
		require.Len(t, a.Schedule.Zones, zones)
		require.Len(t, b.Schedule.Zones, 2*zones)
		assert.InDelta(t, float64(a.Schedule.Zones[0].Flow)/2, float64(b.Schedule.Zones[0].Flow), 0.11)
		assert.InDelta(t, 2*float64(a.Schedule.HoursADay.Value), float64(b.Schedule.HoursADay.Value), 0.02)
	})
}

// The same field typed in metric gives the same plan.
func TestMetricEqualsUS(t *testing.T) {
	us := tomatoField()
	si := us
	si.BedLength, si.BedCentres, si.BedTop = unit.Known(unit.Metres(91.44)), unit.Known(unit.Metres(1.8288)), unit.Known(unit.Metres(0.762))
	si.Spacing, si.TapeFlow = 0.3048, 335.3219098425197
	si.Flow = unit.Known(unit.LitresPerHour(1816.99765632))
	si.TapePressure = unit.Known(unit.Kilopascals(68.94757293168361))
	us.TapePressure = unit.Known(unit.FromPSI(10))
	a, b := plan(t, us), plan(t, si)
	require.Equal(t, len(a.Steps), len(b.Steps))
	for i := range a.Steps {
		assert.InDelta(t, a.Steps[i].Result.Quantity.SI, b.Steps[i].Result.Quantity.SI, 1e-3*a.Steps[i].Result.Quantity.SI+1e-9, a.Steps[i].ID)
	}
	assert.Equal(t, a.Verdict, b.Verdict)
	assert.Equal(t, a.Schedule, b.Schedule)
}

// Input stays comparable, so that callers can use == and maps.
func TestInputIsComparable(t *testing.T) {
	a, b := tomatoField(), tomatoField()
	assert.True(t, a == b)
	b.Usual.Value[3] = 9
	assert.False(t, a == b)
	seen := map[Input]bool{a: true}
	assert.True(t, seen[tomatoField()])
}

// Any numbers at all: a plan or problems, never a panic or a figure that is not
// a number.
func FuzzMake(f *testing.F) {
	f.Add(10, 91.4, 1.83, 0.76, 0.5, 1, 0.3, 335.0, 69.0, 1800.0, 300.0, 10.0, 0.0, 30.0, 12.0, 0.6, 5.0, 0.5, uint8(1), uint8(2))
	f.Add(500, 1000.0, 5.0, 2.5, -20.0, 6, 0.05, 1500.0, 103.0, 20.0, 0.0, 300.0, -200.0, 5000.0, 24.0, 15.0, 15.0, 0.0, uint8(0), uint8(5))
	f.Add(1, 2.0, 0.5, 0.15, 20.0, 1, 0.92, 50.0, 28.0, 2e6, 1500.0, 0.0, 200.0, 0.0, 0.25, 0.02, 0.0, 1.0, uint8(11), uint8(4))
	f.Fuzz(func(t *testing.T, beds int, length, centres, top, slope float64, lines int, spacing, tapeFlow, tapePressure, flow, pressure, lift, rise, header, hours, salt, reference, exponent float64, texture, supply uint8) {
		in := tomatoField()
		in.Beds, in.BedLength, in.BedCentres, in.BedTop = unit.Known(beds), unit.Known(unit.Metres(length)), unit.Known(unit.Metres(centres)), unit.Known(unit.Metres(top))
		in.Slope, in.Laterals, in.Spacing, in.TapeFlow = unit.Percent(slope), lines, unit.Metres(spacing), unit.LitresPerHourPer100Metres(tapeFlow)
		in.TapePressure, in.Flow, in.Pressure = unit.Known(unit.Kilopascals(tapePressure)), unit.Known(unit.LitresPerHour(flow)), unit.Known(unit.Kilopascals(pressure))
		in.Lift, in.Rise, in.Header, in.Hours = unit.Known(unit.Metres(lift)), unit.Known(unit.Metres(rise)), unit.Known(unit.Metres(header)), unit.Known(unit.Hours(hours))
		in.Salt, in.Exponent = unit.Known(unit.DecisiemensPerMetre(salt)), unit.Known(exponent)
		for m := range in.Usual.Value {
			in.Usual.Value[m] = unit.Millimetres(reference)
		}
		in.Soil = soilOf(table.Soils[int(texture)%len(table.Soils)].ID)
		in.Supply = [...]waterquality.Supply{"", "none", "well", "pond", "stream", "municipal", "tank"}[supply%7]
		if supply > 127 {
			in.Pressure = unit.Optional[unit.Kilopascals]{}
		}
		p, problems := Make(in)
		for _, problem := range problems {
			if problem.Field == "" || problem.Value == "" || problem.Allowed == "" || problem.Mend == "" {
				t.Fatalf("half a problem: %+v", problem)
			}
		}
		if _, err := json.Marshal(p); err != nil {
			t.Fatal(err)
		}
		if len(problems) == 0 && len(p.Because) == 0 {
			t.Fatal("a verdict without a reason")
		}
	})
}

// sixtyZones is a field of 240 beds in 60 zones of four.
func sixtyZones() Input {
	in := tomatoField()
	in.Beds = unit.Known(240)
	in.Hours = unit.Known(unit.Hours(24))
	in.FeedRate, in.FeedGrade, in.Stock, in.Injector = unit.Known(1.12), unit.Known(unit.Percent(20)), unit.Known(0.12), unit.Known(100.0)
	return in
}

func TestSixtyZones(t *testing.T) {
	p := plan(t, sixtyZones())
	assert.Len(t, p.Schedule.Zones, 60)
	assert.Equal(t, DoesNotFit, p.Verdict)
	assert.Len(t, p.Remedies, 3)
}

func BenchmarkSixtyZones(b *testing.B) {
	in := sixtyZones()
	for b.Loop() {
		if _, problems := Make(in); len(problems) > 0 {
			b.Fatal(problems)
		}
	}
}

func BenchmarkTenBeds(b *testing.B) {
	in := tomatoField()
	for b.Loop() {
		if _, problems := Make(in); len(problems) > 0 {
			b.Fatal(problems)
		}
	}
}
