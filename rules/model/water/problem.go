package water

import (
	"math"
	"strconv"

	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// Problem says what is wrong with one field and how to mend it. Values are in
// the SI unit that the field's name ends with.
type Problem struct{ Field, Value, Allowed, Mend string }

// bound is a row of the table of allowed ranges.
type bound struct {
	field     string
	low, high float64
	unit      string
	mend      string
}

// The rows of the check, in the order of the form.
var (
	boundSeason     = bound{"season_days", 14, 400, "days", "Count the days from planting to the last harvest."}
	boundDryDays    = bound{"dry_days", 0, 60, "days", "Bulbs are left dry for two weeks before they are lifted."}
	boundInitial    = bound{"kc_initial", 0.1, 1.5, "", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."}
	boundMid        = bound{"kc_mid", 0.1, 1.5, "", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."}
	boundEnd        = bound{"kc_end", 0.1, 1.5, "", "Crop coefficients run from 0.1 to 1.5; FAO-56 table 12 lists them."}
	boundStage      = bound{"stage_days", 1, 250, "days", "Give the days of each stage: initial, development, mid-season, late."}
	boundCutLow     = bound{"film_cut_low_percent", 0, 50, "%", "Film lowers the crop coefficient by 5 to 35 %."}
	boundCutHigh    = bound{"film_cut_high_percent", 0, 50, "%", "Film lowers the crop coefficient by 5 to 35 %."}
	boundRoots      = bound{"root_depth_m", 0.05, 2.5, "m", "Is this in cm or inches? Give meters: 12 in is 0.3 m."}
	boundDepletion  = bound{"depletion", 0.05, 0.9, "", "Give the share of the available water that may be used, such as 0.4."}
	boundThreshold  = bound{"salt_threshold_ds_m", 0.2, 15, "dS/m", "Take the crop's threshold of soil paste from a salt list."}
	boundSaltSlope  = bound{"salt_slope_percent", 0.5, 50, "%", "Take the crop's yield loss for 1 dS/m from a salt list."}
	boundReference  = bound{"reference_mm", 0, 15, "mm", "Give millimeters a day, not a month: the hottest deserts reach about 12."}
	boundOrganic    = bound{"organic_percent", 0, 8, "%", "The soil equations hold up to 8 %; peat and muck need a local table."}
	boundWetted     = bound{"wetted_width_m", 0.05, 2, "m", "Dig across the bed a few hours after a run and measure the wet soil."}
	boundBeds       = bound{"beds", 1, 2000, "beds", "Count whole beds, 1 or more."}
	boundBedLength  = bound{"bed_length_m", 1, 1000, "m", "Measure one bed from header to end."}
	boundCentres    = bound{"bed_centres_m", 0.5, 6, "m", "Measure from the middle of a bed to the middle of the next; 6 ft is 1.83 m."}
	boundBedTop     = bound{"bed_top_m", 0.15, 2.5, "m", "Measure the flat top of the bed; 30 in is 0.76 m."}
	boundCanopy     = bound{"canopy_m", 0.15, 6, "m", "Measure the width of ground that full-grown plants cover."}
	boundSlope      = bound{"slope_percent", -20, 20, "%", "Slope is rise ÷ run × 100. Did you mean a tenth of it?"}
	boundLaterals   = bound{"lines", 1, 6, "lines", "Count the lines of tape in one bed."}
	boundSpacing    = bound{"emitter_spacing_m", 0.05, 0.92, "m", "Tape is made with outlets 2 to 36 in apart: check the unit."}
	boundTapeFlow   = bound{"tape_flow_l_h_per_100m", 50, 1500, "L/h per 100 m", "Tape gives 0.1 to 1.5 gpm for 100 ft at 8 psi: is this one outlet, or another unit?"}
	boundOutlet     = bound{"outlet_flow_l_h", 0.1, 4, "L/h", "One outlet of tape gives about 0.1 to 1 gal/h: is this flow for 100 ft?"}
	boundBore       = bound{"tape_bore_m", 0.008, 0.05, "m", "Tape is 10 to 35 mm wide inside; 5/8 in is 0.016 m."}
	boundExponent   = bound{"exponent", 0, 1, "", "0.5 is a turbulent outlet, 1 a laminar one, 0 a compensating one."}
	boundCV         = bound{"makers_cv", 0, 0.4, "", "The maker's variation is a share, such as 0.05 for 5 %."}
	boundTape       = bound{"tape_pressure_kpa", float64(leastTapePressure), float64(mostTapePressure), "kPa", "Tape bursts above its label: put a regulator ahead of it. Most tape runs at 4 to 15 psi."}
	boundSpread     = bound{"flow_spread_percent", 2, 40, "%", "10 % is the usual limit for a new line."}
	boundFlow       = bound{"flow_l_h", 1, 2e6, "L/h", "Time a bucket: liters ÷ seconds × 3,600. Without water there is no plan."}
	boundPressure   = bound{"pressure_kpa", 0, 1500, "kPa", "Read a gauge at the source while water runs; a house has 200 to 400 kPa."}
	boundLift       = bound{"lift_m", 0, 300, "m", "Measure from the water, drawn down by pumping, up to the pump."}
	boundRise       = bound{"rise_m", -200, 300, "m", "Measure from the source's outlet up to the beds; below zero where the beds lie lower."}
	boundHeader     = bound{"header_m", 0, 5000, "m", "Measure the pipe from the source to the nearest bed."}
	boundHours      = bound{"hours_per_day", 0.25, 24, "h", "A day has 24 hours."}
	boundUsable     = bound{"usable_percent", 30, 100, "%", "Plan on 75 to 85 % of a tested flow."}
	boundEfficiency = bound{"efficiency_percent", 40, 100, "%", "Drip keeps 85 to 95 % of its water at the roots."}
	boundFilterLoss = bound{"filter_loss_kpa", 0, 200, "kPa", "A dirty screen takes about 35 kPa (5 psi)."}
	boundInjectLoss = bound{"injector_loss_kpa", 0, 500, "kPa", "Read the injector's label; many take a fifth of the pressure or more."}
	boundTank       = bound{"tank_volume_l", 50, 1e7, "L", "Give the liters that the tank holds; 60 gal is 227 L."}
	boundRefill     = bound{"tank_refill_l_h", 1, 2e6, "L/h", "Give the flow that fills the tank."}
	boundSalt       = bound{"ec_ds_m", 0.02, 15, "dS/m", "Check the unit: 1 dS/m is 1 mS/cm, 1,000 µS/cm or 100 mS/m. Sea water is about 50 dS/m."}
	boundAcidity    = bound{"ph", 3, 11, "", "The pH of water for plants lies between 3 and 11."}
	boundIron       = bound{"iron_mg_l", 0, 50, "mg/L", "Check the unit: 1 mg/L is 1 ppm."}
	boundHardness   = bound{"hardness_mg_l", 0, 3000, "mg/L", "Check the unit: one grain a gallon is 17 mg/L."}
	boundSodium     = bound{"sodium_ratio", 0, 40, "", "The sodium adsorption ratio stands on the water test."}
	boundNitrate    = bound{"nitrate_n_mg_l", 0, 200, "mg/L", "Give nitrate as nitrogen: nitrate ÷ 4.4."}
	boundFeedRate   = bound{"feed_kg_ha_day", 0, 20, "kg/ha", "Give the nutrient of one day: 1 lb an acre and day is 1.12 kg/ha."}
	boundFeedGrade  = bound{"feed_grade_percent", 1, 100, "%", "The grade is printed on the bag: 20 for 20-20-20."}
	boundStock      = bound{"stock_kg_l", 0.005, 2, "kg/L", "The label says how much dissolves; 1 lb in a gallon is 0.12 kg/L."}
	boundBleach     = bound{"bleach_percent", 0.5, 20, "%", "The strength is printed on the bottle; household bleach has about 5 %."}
	boundChlorine   = bound{"chlorine_mg_l", 0.1, 500, "mg/L", "1 mg/L at the ends of the lines is the published level for running use; the label decides."}
	boundInjector   = bound{"injector_ratio", 10, 1000, "", "Give 100 for an injector of 1:100."}
)

// checker collects problems.
type checker struct{ problems []Problem }

func (c *checker) within(b bound, v float64) bool {
	if v >= b.low && v <= b.high {
		return true
	}
	value := number(v)
	if b.unit != "" {
		value += " " + b.unit
	}
	c.problems = append(c.problems, Problem{b.field, value, b.allowed(), b.mend})
	return false
}

func (b bound) allowed() string {
	text := number(b.low) + " to " + number(b.high)
	if b.unit != "" {
		text += " " + b.unit
	}
	return text
}

// number prints up to four significant digits, or a word for what is not a
// number.
func number(v float64) string {
	switch {
	case math.IsNaN(v):
		return "not a number"
	case math.IsInf(v, 0):
		return "endless"
	case math.Abs(v) >= 1000 && math.Abs(v) < 1e15:
		return strconv.FormatFloat(v, 'f', 0, 64)
	}
	return strconv.FormatFloat(v, 'g', 4, 64)
}

// optional checks a value that may be unknown.
func optional[T interface{ ~float64 | ~int }](c *checker, b bound, o unit.Optional[T]) bool {
	return !o.Given || c.within(b, float64(o.Value))
}

func (c *checker) add(field, value, allowed, mend string) {
	c.problems = append(c.problems, Problem{field, value, allowed, mend})
}

// check gives every problem at once, in the order of the form.
func check(in Input) []Problem {
	c := &checker{}
	if in.PlantOn < unit.DateLow || in.PlantOn > unit.DateHigh {
		c.add("plant_on", in.PlantOn.String(), unit.DateLow.String()+" to "+unit.DateHigh.String(), "Give the planting date as year-month-day.")
	}
	optional(c, boundSeason, in.Season)
	c.within(boundDryDays, float64(in.DryDays))
	if k := in.Coefficients.Value; in.Coefficients.Given {
		c.within(boundInitial, k.Initial)
		c.within(boundMid, k.Mid)
		c.within(boundEnd, k.End)
	}
	c.stages(in)
	if cut := in.FilmCut.Value; in.FilmCut.Given {
		low, high := c.within(boundCutLow, float64(cut.Low)), c.within(boundCutHigh, float64(cut.High))
		if low && high && cut.Low > cut.High {
			c.add("film_cut_low_percent", number(float64(cut.Low))+" %", "not above film_cut_high_percent, "+number(float64(cut.High))+" %", "Swap the two.")
		}
	}
	optional(c, boundRoots, in.RootDepth)
	optional(c, boundDepletion, in.Depletion)
	optional(c, boundThreshold, in.SaltThreshold)
	optional(c, boundSaltSlope, in.SaltSlope)
	c.year("reference_usual_mm", in.Usual)
	c.year("reference_cool_mm", in.Cool)
	c.year("reference_dry_mm", in.Dry)
	if s := in.Soil.Value; in.Soil.Given && !(s.Sand >= 0 && s.Clay >= 0 && s.Sand+s.Clay <= 1) {
		c.add("texture", "no mixture of sand, silt and clay", "shares of 0 to 1 that make at most 1", "Choose one of the soils, or leave it out.")
	}
	optional(c, boundOrganic, in.OrganicMatter)
	optional(c, boundWetted, in.WettedWidth)
	c.field(in)
	c.tape(in)
	c.source(in)
	c.test(in)
	return c.problems
}

func (c *checker) stages(in Input) {
	if !in.Stages.Given {
		return
	}
	for _, days := range in.Stages.Value {
		if !c.within(boundStage, float64(days)) {
			return
		}
	}
}

func (c *checker) year(field string, y unit.Optional[Year]) {
	if !y.Given {
		return
	}
	b := boundReference
	b.field = field
	any := false
	for _, v := range y.Value {
		if !c.within(b, float64(v)) {
			return
		}
		any = any || v > 0
	}
	if !any {
		c.add(field, "0 mm in every month", "above 0 in some month", "Leave the year out where it is not known.")
	}
}

func (c *checker) field(in Input) {
	optional(c, boundBeds, in.Beds)
	optional(c, boundBedLength, in.BedLength)
	centres := optional(c, boundCentres, in.BedCentres)
	top := optional(c, boundBedTop, in.BedTop)
	if centres && top && in.BedCentres.Given && in.BedTop.Given && in.BedTop.Value > in.BedCentres.Value {
		c.add("bed_top_m", number(float64(in.BedTop.Value))+" m", "not wider than bed_centres_m, "+number(float64(in.BedCentres.Value))+" m", "Beds on these centers would overlap: check both.")
	}
	optional(c, boundCanopy, in.Canopy)
	c.within(boundSlope, float64(in.Slope))
}

func (c *checker) tape(in Input) {
	c.within(boundLaterals, float64(in.Laterals))
	spacing := c.within(boundSpacing, float64(in.Spacing))
	if flow := c.within(boundTapeFlow, float64(in.TapeFlow)); spacing && flow {
		c.within(boundOutlet, float64(in.TapeFlow)*float64(in.Spacing)/100)
	}
	optional(c, boundBore, in.TapeBore)
	optional(c, boundExponent, in.Exponent)
	optional(c, boundCV, in.MakersCV)
	optional(c, boundTape, in.TapePressure)
	optional(c, boundSpread, in.FlowSpread)
}

func (c *checker) source(in Input) {
	switch in.Supply {
	case "", "none", waterquality.Well, waterquality.Pond, waterquality.Stream, waterquality.Municipal, waterquality.Tank:
	default:
		c.add("source", string(in.Supply), "well, pond, stream, municipal, tank, none", "Choose where the water comes from, or leave it out.")
	}
	optional(c, boundFlow, in.Flow)
	optional(c, boundPressure, in.Pressure)
	optional(c, boundLift, in.Lift)
	optional(c, boundRise, in.Rise)
	optional(c, boundHeader, in.Header)
	optional(c, boundHours, in.Hours)
	optional(c, boundUsable, in.UsableShare)
	optional(c, boundEfficiency, in.Efficiency)
	optional(c, boundFilterLoss, in.FilterLoss)
	optional(c, boundInjectLoss, in.InjectorLoss)
	optional(c, boundTank, in.TankVolume)
	optional(c, boundRefill, in.TankRefill)
}

func (c *checker) test(in Input) {
	optional(c, boundSalt, in.Salt)
	optional(c, boundAcidity, in.PH)
	optional(c, boundIron, in.Iron)
	optional(c, boundHardness, in.Hardness)
	optional(c, boundSodium, in.SodiumRatio)
	optional(c, boundNitrate, in.Nitrate)
	optional(c, boundFeedRate, in.FeedRate)
	optional(c, boundFeedGrade, in.FeedGrade)
	optional(c, boundStock, in.Stock)
	optional(c, boundInjector, in.Injector)
	optional(c, boundBleach, in.Bleach)
	optional(c, boundChlorine, in.Chlorine)
}
