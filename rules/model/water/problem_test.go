package water

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/unit"
)

// Each bad input gives exactly one problem, with field, value, allowed range
// and mend, and no plan.
func TestBadInputs(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	cases := []struct {
		name                  string
		spoil                 func(*Input)
		field, value, allowed string
		mend                  string
	}{
		{"planted in the year 1", func(in *Input) { in.PlantOn = unit.On(1, 5, 1) }, "plant_on", "0001-05-01", "1900-01-01 to 2200-12-31", "Give the planting date as year-month-day."},
		{"planted in 2301", func(in *Input) { in.PlantOn = unit.On(2301, 1, 1) }, "plant_on", "2301-01-01", "1900-01-01 to 2200-12-31", "Give the planting date as year-month-day."},
		{"season of 5 days", func(in *Input) { in.Season = unit.Known(unit.Days(5)) }, "season_days", "5 days", "14 to 400 days", "Count the days from planting to the last harvest."},
		{"season of 2000 days", func(in *Input) { in.Season = unit.Known(unit.Days(2000)) }, "season_days", "2000 days", "14 to 400 days", "Count the days from planting to the last harvest."},
		{"coefficient 60", func(in *Input) { in.Coefficients.Value.Initial = 60 }, "kc_initial", "60", "0.1 to 1.5", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."},
		{"coefficient 0", func(in *Input) { in.Coefficients.Value.Mid = 0 }, "kc_mid", "0", "0.1 to 1.5", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."},
		{"coefficient fused with a footnote", func(in *Input) { in.Coefficients.Value.Mid = 1.52 }, "kc_mid", "1.52", "0.1 to 1.5", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."},
		{"coefficient not a number", func(in *Input) { in.Coefficients.Value.End = nan }, "kc_end", "not a number", "0.1 to 1.5", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."},
		{"stage of no days", func(in *Input) { in.Stages.Value[2] = 0 }, "stage_days", "0 days", "1 to 250 days", "Give the days of each stage: initial, development, mid-season, late."},
		{"film saves 90 %", func(in *Input) { in.FilmCut = unit.Known(Range{10, 90}) }, "film_cut_high_percent", "90 %", "0 to 50 %", "Film lowers the crop coefficient by 5 to 35 %."},
		{"film saves less than nothing", func(in *Input) { in.FilmCut = unit.Known(Range{-5, 10}) }, "film_cut_low_percent", "-5 %", "0 to 50 %", "Film lowers the crop coefficient by 5 to 35 %."},
		{"film range turned round", func(in *Input) { in.FilmCut = unit.Known(Range{30, 10}) }, "film_cut_low_percent", "30 %", "not above film_cut_high_percent, 10 %", "Swap the two."},
		{"roots 12 deep in inches", func(in *Input) { in.RootDepth = unit.Known(unit.Metres(12)) }, "root_depth_m", "12 m", "0.05 to 2.5 m", "Is this in cm or inches? Give meters: 12 in is 0.3 m."},
		{"depletion in percent", func(in *Input) { in.Depletion = unit.Known(40.0) }, "depletion", "40", "0.05 to 0.9", "Give the share of the available water that may be used, such as 0.4."},
		{"threshold 250", func(in *Input) { in.SaltThreshold.Value = 250 }, "salt_threshold_ds_m", "250 dS/m", "0.2 to 15 dS/m", "Take the crop's threshold of soil paste from a salt list."},
		{"salt slope 0", func(in *Input) { in.SaltSlope.Value = 0 }, "salt_slope_percent", "0 %", "0.5 to 50 %", "Take the crop's yield loss for 1 dS/m from a salt list."},
		{"a month's water as a day's", func(in *Input) { in.Usual.Value[6] = 150 }, "reference_usual_mm", "150 mm", "0 to 15 mm", "Give millimeters a day, not a month: the hottest deserts reach about 12."},
		{"negative evapotranspiration", func(in *Input) { in.Cool = unit.Known(Year{3: -1}) }, "reference_cool_mm", "-1 mm", "0 to 15 mm", "Give millimeters a day, not a month: the hottest deserts reach about 12."},
		{"endless dry year", func(in *Input) { in.Dry = unit.Known(Year{unit.Millimetres(inf)}) }, "reference_dry_mm", "endless mm", "0 to 15 mm", "Give millimeters a day, not a month: the hottest deserts reach about 12."},
		{"a year of zeros", func(in *Input) { in.Usual = unit.Known(Year{}) }, "reference_usual_mm", "0 mm in every month", "above 0 in some month", "Leave the year out where it is not known."},
		{"soil of sand and clay alone, twice", func(in *Input) { in.Soil.Value.Sand, in.Soil.Value.Clay = 0.8, 0.7 }, "texture", "no mixture of sand, silt and clay", "shares of 0 to 1 that make at most 1", "Choose one of the soils, or leave it out."},
		{"peat", func(in *Input) { in.OrganicMatter = unit.Known(unit.Percent(35)) }, "organic_percent", "35 %", "0 to 8 %", "The soil equations hold up to 8 %; peat and muck need a local table."},
		{"wetted width in cm", func(in *Input) { in.WettedWidth = unit.Known(unit.Metres(40)) }, "wetted_width_m", "40 m", "0.05 to 2 m", "Dig across the bed a few hours after a run and measure the wet soil."},
		{"no beds", func(in *Input) { in.Beds = unit.Known(0) }, "beds", "0 beds", "1 to 2000 beds", "Count whole beds, 1 or more."},
		{"beds below zero", func(in *Input) { in.Beds = unit.Known(-3) }, "beds", "-3 beds", "1 to 2000 beds", "Count whole beds, 1 or more."},
		{"bed of 300 ft typed as 3000 m", func(in *Input) { in.BedLength = unit.Known(unit.Metres(3000)) }, "bed_length_m", "3000 m", "1 to 1000 m", "Measure one bed from header to end."},
		{"bed of no length", func(in *Input) { in.BedLength = unit.Known(unit.Metres(0)) }, "bed_length_m", "0 m", "1 to 1000 m", "Measure one bed from header to end."},
		{"centers 72 in as meters", func(in *Input) { in.BedCentres = unit.Known(unit.Metres(72)) }, "bed_centres_m", "72 m", "0.5 to 6 m", "Measure from the middle of a bed to the middle of the next; 6 ft is 1.83 m."},
		{"bed top 30 in as meters", func(in *Input) { in.BedTop = unit.Known(unit.Metres(30)) }, "bed_top_m", "30 m", "0.15 to 2.5 m", "Measure the flat top of the bed; 30 in is 0.76 m."},
		{"bed wider than its centers", func(in *Input) { in.BedTop, in.BedCentres = unit.Known(unit.Metres(1.5)), unit.Known(unit.Metres(1.2)) }, "bed_top_m", "1.5 m", "not wider than bed_centres_m, 1.2 m", "Beds on these centers would overlap: check both."},
		{"slope 140 %", func(in *Input) { in.Slope = 140 }, "slope_percent", "140 %", "-20 to 20 %", "Slope is rise ÷ run × 100. Did you mean a tenth of it?"},
		{"no lines", func(in *Input) { in.Laterals = 0 }, "lines", "0 lines", "1 to 6 lines", "Count the lines of tape in one bed."},
		{"outlets 0 apart", func(in *Input) { in.Spacing = 0 }, "emitter_spacing_m", "0 m", "0.05 to 0.92 m", "Tape is made with outlets 2 to 36 in apart: check the unit."},
		{"outlets 120 in apart", func(in *Input) { in.Spacing = unit.FromInches(120) }, "emitter_spacing_m", "3.048 m", "0.05 to 0.92 m", "Tape is made with outlets 2 to 36 in apart: check the unit."},
		{"outlet of 25 gal/h", func(in *Input) {
			in.TapeFlow = unit.LitresPerHourPer100Metres(25 * unit.LitresPerGallon / float64(in.Spacing) * 100)
		}, "tape_flow_l_h_per_100m", "31048 L/h per 100 m", "50 to 1500 L/h per 100 m", "Tape gives 0.1 to 1.5 gpm for 100 ft at 8 psi: is this one outlet, or another unit?"},
		{"one outlet typed for the tape", func(in *Input) { in.TapeFlow = 1.02 }, "tape_flow_l_h_per_100m", "1.02 L/h per 100 m", "50 to 1500 L/h per 100 m", "Tape gives 0.1 to 1.5 gpm for 100 ft at 8 psi: is this one outlet, or another unit?"},
		{"big outlets far apart", func(in *Input) { in.TapeFlow, in.Spacing = 1400, 0.9 }, "outlet_flow_l_h", "12.6 L/h", "0.1 to 4 L/h", "One outlet of tape gives about 0.1 to 1 gal/h: is this flow for 100 ft?"},
		{"bore in mm", func(in *Input) { in.TapeBore = unit.Known(unit.Metres(16)) }, "tape_bore_m", "16 m", "0.008 to 0.05 m", "Tape is 10 to 35 mm wide inside; 5/8 in is 0.016 m."},
		{"exponent 5", func(in *Input) { in.Exponent = unit.Known(5.0) }, "exponent", "5", "0 to 1", "0.5 is a turbulent outlet, 1 a laminar one, 0 a compensating one."},
		{"variation in percent", func(in *Input) { in.MakersCV = unit.Known(5.0) }, "makers_cv", "5", "0 to 0.4", "The maker's variation is a share, such as 0.05 for 5 %."},
		{"60 psi into tape", func(in *Input) { in.TapePressure = unit.Known(unit.FromPSI(60)) }, "tape_pressure_kpa", "413.7 kPa", "27.58 to 103.4 kPa", "Tape bursts above its label: put a regulator ahead of it. Most tape runs at 4 to 15 psi."},
		{"1 psi into tape", func(in *Input) { in.TapePressure = unit.Known(unit.FromPSI(1)) }, "tape_pressure_kpa", "6.895 kPa", "27.58 to 103.4 kPa", "Tape bursts above its label: put a regulator ahead of it. Most tape runs at 4 to 15 psi."},
		{"spread of 100 %", func(in *Input) { in.FlowSpread = unit.Known(unit.Percent(100)) }, "flow_spread_percent", "100 %", "2 to 40 %", "10 % is the usual limit for a new line."},
		{"water from the moon", func(in *Input) { in.Supply = "moon" }, "source", "moon", "well, pond, stream, municipal, tank, none", "Choose where the water comes from, or leave it out."},
		{"0 gpm", func(in *Input) { in.Flow = unit.Known(unit.LitresPerHour(0)) }, "flow_l_h", "0 L/h", "1 to 2000000 L/h", "Time a bucket: liters ÷ seconds × 3,600. Without water there is no plan."},
		{"flow of 1e9", func(in *Input) { in.Flow = unit.Known(unit.LitresPerHour(1e9)) }, "flow_l_h", "1000000000 L/h", "1 to 2000000 L/h", "Time a bucket: liters ÷ seconds × 3,600. Without water there is no plan."},
		{"negative source pressure", func(in *Input) { in.Pressure = unit.Known(unit.Kilopascals(-20)) }, "pressure_kpa", "-20 kPa", "0 to 1500 kPa", "Read a gauge at the source while water runs; a house has 200 to 400 kPa."},
		{"lift below zero", func(in *Input) { in.Lift = unit.Known(unit.Metres(-4)) }, "lift_m", "-4 m", "0 to 300 m", "Measure from the water, drawn down by pumping, up to the pump."},
		{"rise of a kilometre", func(in *Input) { in.Rise = unit.Known(unit.Metres(1000)) }, "rise_m", "1000 m", "-200 to 300 m", "Measure from the source's outlet up to the beds; below zero where the beds lie lower."},
		{"header below zero", func(in *Input) { in.Header = unit.Known(unit.Metres(-1)) }, "header_m", "-1 m", "0 to 5000 m", "Measure the pipe from the source to the nearest bed."},
		{"30 hours a day", func(in *Input) { in.Hours = unit.Known(unit.Hours(30)) }, "hours_per_day", "30 h", "0.25 to 24 h", "A day has 24 hours."},
		{"no hours", func(in *Input) { in.Hours = unit.Known(unit.Hours(0)) }, "hours_per_day", "0 h", "0.25 to 24 h", "A day has 24 hours."},
		{"usable 0.8", func(in *Input) { in.UsableShare = unit.Known(unit.Percent(0.8)) }, "usable_percent", "0.8 %", "30 to 100 %", "Plan on 75 to 85 % of a tested flow."},
		{"efficiency 120 %", func(in *Input) { in.Efficiency = unit.Known(unit.Percent(120)) }, "efficiency_percent", "120 %", "40 to 100 %", "Drip keeps 85 to 95 % of its water at the roots."},
		{"filter takes 500 kPa", func(in *Input) { in.FilterLoss = unit.Known(unit.Kilopascals(500)) }, "filter_loss_kpa", "500 kPa", "0 to 200 kPa", "A dirty screen takes about 35 kPa (5 psi)."},
		{"injector takes -1", func(in *Input) { in.InjectorLoss = unit.Known(unit.Kilopascals(-1)) }, "injector_loss_kpa", "-1 kPa", "0 to 500 kPa", "Read the injector's label; many take a fifth of the pressure or more."},
		{"tank of 5 L", func(in *Input) { in.TankVolume = unit.Known(unit.Litres(5)) }, "tank_volume_l", "5 L", "50 to 10000000 L", "Give the liters that the tank holds; 60 gal is 227 L."},
		{"tank never refilled", func(in *Input) { in.TankRefill = unit.Known(unit.LitresPerHour(0)) }, "tank_refill_l_h", "0 L/h", "1 to 2000000 L/h", "Give the flow that fills the tank."},
		{"EC 45", func(in *Input) { in.Salt = unit.Known(unit.DecisiemensPerMetre(45)) }, "ec_ds_m", "45 dS/m", "0.02 to 15 dS/m", "Check the unit: 1 dS/m is 1 mS/cm, 1,000 µS/cm or 100 mS/m. Sea water is about 50 dS/m."},
		{"1.2 mS/m for 1.2 mS/cm", func(in *Input) { in.Salt = unit.Known(unit.DecisiemensPerMetre(0.012)) }, "ec_ds_m", "0.012 dS/m", "0.02 to 15 dS/m", "Check the unit: 1 dS/m is 1 mS/cm, 1,000 µS/cm or 100 mS/m. Sea water is about 50 dS/m."},
		{"pH 70", func(in *Input) { in.PH = unit.Known(70.0) }, "ph", "70", "3 to 11", "The pH of water for plants lies between 3 and 11."},
		{"iron 300", func(in *Input) { in.Iron = unit.Known(unit.MilligramsPerLitre(300)) }, "iron_mg_l", "300 mg/L", "0 to 50 mg/L", "Check the unit: 1 mg/L is 1 ppm."},
		{"hardness below zero", func(in *Input) { in.Hardness = unit.Known(unit.MilligramsPerLitre(-1)) }, "hardness_mg_l", "-1 mg/L", "0 to 3000 mg/L", "Check the unit: one grain a gallon is 17 mg/L."},
		{"sodium ratio 400", func(in *Input) { in.SodiumRatio = unit.Known(400.0) }, "sodium_ratio", "400", "0 to 40", "The sodium adsorption ratio stands on the water test."},
		{"nitrate 900", func(in *Input) { in.Nitrate = unit.Known(unit.MilligramsPerLitre(900)) }, "nitrate_n_mg_l", "900 mg/L", "0 to 200 mg/L", "Give nitrate as nitrogen: nitrate ÷ 4.4."},
		{"feed of a season in a day", func(in *Input) { in.FeedRate = unit.Known(120.0) }, "feed_kg_ha_day", "120 kg/ha", "0 to 20 kg/ha", "Give the nutrient of one day: 1 lb an acre and day is 1.12 kg/ha."},
		{"grade 0", func(in *Input) { in.FeedGrade = unit.Known(unit.Percent(0)) }, "feed_grade_percent", "0 %", "1 to 100 %", "The grade is printed on the bag: 20 for 20-20-20."},
		{"stock of syrup", func(in *Input) { in.Stock = unit.Known(9.0) }, "stock_kg_l", "9 kg/L", "0.005 to 2 kg/L", "The label says how much dissolves; 1 lb in a gallon is 0.12 kg/L."},
		{"injector 1 to 1", func(in *Input) { in.Injector = unit.Known(1.0) }, "injector_ratio", "1", "10 to 1000", "Give 100 for an injector of 1:100."},
		{"bleach of 100 %", func(in *Input) { in.Bleach = unit.Known(unit.Percent(100)) }, "bleach_percent", "100 %", "0.5 to 20 %", "The strength is printed on the bottle; household bleach has about 5 %."},
		{"chlorine 5000", func(in *Input) { in.Chlorine = unit.Known(unit.MilligramsPerLitre(5000)) }, "chlorine_mg_l", "5000 mg/L", "0.1 to 500 mg/L", "1 mg/L at the ends of the lines is the published level for running use; the label decides."},
		{"canopy of 9 m", func(in *Input) { in.Canopy = unit.Known(unit.Metres(9)) }, "canopy_m", "9 m", "0.15 to 6 m", "Measure the width of ground that full-grown plants cover."},
	}
	require.GreaterOrEqual(t, len(cases), 40)
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			in := tomatoField()
			c.spoil(&in)
			p, problems := Make(in)
			require.Len(t, problems, 1)
			got := problems[0]
			assert.Equal(t, c.field, got.Field)
			assert.Equal(t, c.value, got.Value)
			assert.Equal(t, c.allowed, got.Allowed)
			assert.Equal(t, c.mend, got.Mend)
			assert.True(t, strings.HasSuffix(got.Mend, ".") || strings.HasSuffix(got.Mend, "?"), got.Mend)
			assert.Nil(t, p.Demand)
			assert.Equal(t, Undecided, p.Verdict)
		})
	}
	t.Logf("%d bad inputs", len(cases))
}

// All problems come at once, in the order of the form.
func TestAllProblemsAtOnce(t *testing.T) {
	in := tomatoField()
	in.Season = unit.Known(unit.Days(3))
	in.Soil.Value.Clay = 2
	in.Beds = unit.Known(0)
	in.Laterals = 9
	in.Hours = unit.Known(unit.Hours(31))
	in.Salt = unit.Known(unit.DecisiemensPerMetre(45))
	_, problems := Make(in)
	fields := make([]string, len(problems))
	for i, p := range problems {
		fields[i] = p.Field
	}
	assert.Equal(t, []string{"season_days", "texture", "beds", "lines", "hours_per_day", "ec_ds_m"}, fields)
}

// Odd but possible inputs are planned, with a warning where it helps.
func TestOddButAllowed(t *testing.T) {
	for name, spoil := range map[string]func(*Input){
		"one bed":            func(in *Input) { in.Beds = unit.Known(1) },
		"2000 beds":          func(in *Input) { in.Beds = unit.Known(2000) },
		"2 m bed":            func(in *Input) { in.BedLength = unit.Known(unit.Metres(2)) },
		"1000 m bed":         func(in *Input) { in.BedLength = unit.Known(unit.Metres(1000)) },
		"six lines":          func(in *Input) { in.Laterals = 6 },
		"compensating":       func(in *Input) { in.Exponent = unit.Known(0.0) },
		"laminar":            func(in *Input) { in.Exponent = unit.Known(1.0) },
		"steep up":           func(in *Input) { in.Slope = 20 },
		"steep down":         func(in *Input) { in.Slope = -20 },
		"whole year":         func(in *Input) { in.Season = unit.Known(unit.Days(400)) },
		"over the new year":  func(in *Input) { in.PlantOn = unit.On(2027, 11, 20) },
		"a quarter hour":     func(in *Input) { in.Hours = unit.Known(unit.Hours(0.25)) },
		"5,000 gal/min":      func(in *Input) { in.Flow = unit.Known(unit.FromGallonsPerMinute(5000)) },
		"trickle":            func(in *Input) { in.Flow = unit.Known(unit.LitresPerHour(20)) },
		"film that does nil": func(in *Input) { in.FilmCut = unit.Known(Range{}) },
		"winter":             func(in *Input) { in.Usual = unit.Known(Year{6: 1}) },
	} {
		in := tomatoField()
		spoil(&in)
		p, problems := Make(in)
		assert.Empty(t, problems, name)
		if p.Verdict == DoesNotFit {
			assert.NotEmpty(t, p.Remedies, name)
		}
		assert.NotEmpty(t, p.Because, name)
	}
}
