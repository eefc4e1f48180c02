package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// acre is a strip of an acre: 43,560 ft², a foot wide.
const acre = 43560

func hours(inches, feetWide, gpm float64) float64 {
	return float64(demand.HoursFor(unit.Millimetres(inches*25.4), unit.FromFeet(feetWide), unit.FromGallonsPerMinutePer100Feet(gpm)))
}

func gallons(inches, squareFeet float64) float64 {
	return float64(demand.VolumeFor(unit.Millimetres(inches*25.4), unit.FromFeet(1), unit.FromFeet(squareFeet))) / unit.LitresPerGallon
}

// Worked examples of drip bulletins, each to half of its last printed digit, or as it rounds
// on its way. None of them was used to make the sums.
func TestWorkedExamplesOfDrip(t *testing.T) {
	for _, x := range []struct {
		says, source string
		ours         float64
		printed, off float64
	}{
		{"0.2 in at 90 % on a tenth of an acre from 4.5 gal/min: 2 h 15 min a day (its five rows of 200 ft, 5 ft apart, are 15 % more)", "USDA NRCS, training slides on micro irrigation design, system capacity, read 2026 (https://slideplayer.com/amp/6079848)",
			gallons(0.2/0.9, acre*0.1) / 4.5 / 60, 2.25, 0.02},
		{"the same on an acre in 22 h: 4.5 gal/min", "the same", gallons(0.2/0.9, acre) / 22 / 60, 4.5, 0.1},
		{"five rows of 200 ft: 4.5 gal/min", "the same", 5 * 2 * 0.45, 4.5, 0.001},
		{"an inch on beds 2 ft apart, tape of 0.75 gal/min: 2.76 h", "University of California Santa Cruz, Teaching organic farming and gardening, unit 1.5, appendix 13, read 2026 (https://issuhub.com/view/index?id=3560&pageIndex=276)",
			hours(1, 2, 0.75), 2.76, 0.015},
		{"and 163.5 gal/min an acre", "the same, which takes 218 beds of 100 ft", acre / 2.0 / 100 * 0.75, 163.5, 0.3},
		{"a quarter of an inch on an acre: 6,789 gal", "North Carolina State University, in Delta Farm Press, 2000 (http://deltafarmpress.com/print/ag-engineer-says)", gallons(0.25, acre), 6789, 1},
		{"in 24 h 4.7 gal/min", "the same", gallons(0.25, acre) / 24 / 60, 4.7, 0.05},
		{"in 12 h 9.4", "the same", gallons(0.25, acre) / 12 / 60, 9.4, 0.05},
		{"in 4 h 28", "the same", gallons(0.25, acre) / 4 / 60, 28, 0.5},
		{"an inch on 100 ft²: 62.4 gal", "New Mexico State University, Yard and garden, 25 January 2014 (http://aces.nmsu.edu/ces/yard/archives/january-25-2014.html)", gallons(1, 100), 62.4, 0.1},
		{"lines 12 in apart, 0.53 gal/h every 12 in: 0.85 in an hour", "Carolinas Irrigation Association, subsurface drip, read 2026 (http://www.carolinasirr.org/shoot1.htm)", 1 / hours(1, 1, 0.53*100/60), 0.85, 0.005},
		{"5,000 ft of tape of 0.45 gal/min: 22.5 gal/min", "a tape seller's page, read 2026", 5000.0 / 100 * 0.45, 22.5, 0.001},
	} {
		assert.InDelta(t, x.printed, x.ours, x.off, "%s. Source: %s", x.says, x.source)
		t.Logf("%s: ours %.3f", x.says, x.ours)
	}
}

// The whole plan on the acre of the first example: ten zones of five rows, from a source of
// which the share that we use carries five of our rows.
func TestWorkedExampleOfZones(t *testing.T) {
	c := at(t, raleigh, "tomato", 5, 1)
	c.Field.BedLength, c.Field.Beds, c.Field.Centres = unit.Known(unit.FromFeet(200)), unit.Known(50.0), unit.Known(unit.FromFeet(5))
	c.Water.Source, c.Water.Flow = "well", unit.Known(unit.LitresPerHour(4.5*60*unit.LitresPerGallon))
	a := farms.Advise(t, c)
	p := a.WaterPlan()
	row := float64(p.Tape.BedFlow) / 60 / unit.LitresPerGallon
	assert.InDelta(t, 0.9, row, 0.15, "a row of 200 ft at 8 psi, and at the pressure that we ask for")
	assert.Greater(t, a.Water.Zones, 10, "we use 80 % of a tested source, the slides all of it")
	c.Water.Flow.Value = unit.LitresPerHour(5 * float64(p.Tape.BedFlow) / 0.8 * 1.001)
	b := farms.Advise(t, c)
	assert.Equal(t, 10, b.Water.Zones)
}

// Wide tape lets lines run 400 to 800 m (Hanson, Fipps and Martin, Drip irrigation of row crops: what is
// the state of the art?, about 2000: http://www.ksre.k-state.edu/sdi/Abstracts/Drip%20Irrigation%20of%20Row%20Crops.htm,
// bores up to 35 mm): low flow, 10 psi, 10 % less at the end.
func TestWideTapeRunsFar(t *testing.T) {
	run, err := drip.LongestRun(drip.Line{Spacing: unit.FromFeet(1), Bore: 0.035, Outlet: drip.EmitterOf(unit.FromGallonsPerMinutePer100Feet(0.22), table.TapePressure, unit.FromFeet(1), 0.5)}, unit.FromPSI(10), 10, 1500)
	require.NoError(t, err)
	assert.Greater(t, float64(run.Outlets)*0.3048, 400.0)
	assert.Less(t, float64(run.Outlets)*0.3048, 800.0)
}
