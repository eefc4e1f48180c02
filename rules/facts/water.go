package facts

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// sold is what the tape table says of tape, as the water model takes it: the printed
// classes in the common bore are what a remedy may name.
var sold = water.Sold{RatedAt: table.TapePressure, CommonBore: table.CommonBore, LargeBore: table.WideBore, Tapes: printedTapes()}

func printedTapes() (list []water.Candidate) {
	for i := range table.Tapes {
		if t := &table.Tapes[i]; t.Mark == table.Seen && t.Bore == table.CommonBore {
			list = append(list, water.Candidate{Class: t.Class, Spacing: t.Spacing, Flow: t.Flow, Bore: t.Bore})
		}
	}
	return list
}

// Irrigate asks the water model what each tape would make of a plan. The tape
// rules, the answer card, the gate and the plan itself all read these figures.
func (f *Facts) Irrigate() {
	f.Laterals = lateralsFor(f.Top, f.Soil, f.Rows)
	f.clogging()
	f.Stretches = 1
	in := water.Compared(f.WaterInput())
	if in == f.asked { // the facts of another case that the water model cannot tell apart
		f.Stretches = f.askedStretches
		return
	}
	f.asked = in
	candidates := make([]water.Candidate, len(table.Tapes))
	for i := range table.Tapes {
		candidates[i] = water.Candidate{Spacing: table.Tapes[i].Spacing, Flow: table.Tapes[i].Flow, Bore: table.Tapes[i].Bore}
	}
	var need water.Need
	plain := 0 // the first way that some tape waters evenly, though it leave dry gaps
	for _, f.Stretches = range bedStretches {
		need, _ = f.sketch(candidates)
		if f.reaches(true) || plain > 0 && f.Stretches >= 2*plain {
			break
		}
		if plain == 0 && f.reaches(false) {
			plain = f.Stretches
		}
	}
	if plain > 0 && !f.reaches(true) {
		f.Stretches = plain
		need, _ = f.sketch(candidates)
	}
	f.askedStretches = f.Stretches
	f.Start, f.Peak = need.FirstUse, need.PeakUse
	f.PeakLitres = unit.Litres(need.PeakDay)
	f.Usable = need.Usable
}

// bedStretches are the ways to cut a bed that no tape waters evenly from one end: fed from
// the middle, then split into two, three or four such stretches. For tape whose wet spots
// meet a bed is cut into twice as many as for any other, not more.
var bedStretches = [...]int{1, 2, 4, 6, 8}

// sketch asks the water model what each tape makes of the bed as it is cut.
func (f *Facts) sketch(candidates []water.Candidate) (water.Need, []water.Sketch) {
	need, sketches, _ := water.CompareKnowing(f.lines, water.Compared(f.WaterInput()), candidates) // a case that passes Check has no problems: a test holds it so
	copy(f.Sketch[:], sketches)
	return need, sketches
}

// WetsMeet tells whether tape has its emitters close enough for the soil.
func (f *Facts) WetsMeet(tape int) bool {
	return table.Tapes[tape].Spacing <= f.Soil.Spacing.High+SpacingSlack
}

// Reached tells whether some tape whose wet spots meet waters the bed within the design
// limit, as it is cut.
func (f *Facts) Reached() bool { return f.reaches(true) }

// reaches tells whether some tape (of those whose wet spots meet, or of all) waters the
// bed, as it is cut, within the design limit of the trade. Where the source feeds none of
// them, no cut helps.
func (f *Facts) reaches(meets bool) bool {
	if !f.Case.Field.BedLength.Given {
		return true
	}
	fed := false
	for i := range f.Sketch {
		s := &f.Sketch[i]
		if s.NoPush || s.NoBed {
			continue
		}
		if fed = true; s.Spread <= DesignSpread && (!meets || f.WetsMeet(i)) {
			return true
		}
	}
	return !fed
}

// lateral is the length of one line of tape: the bed, or its part where the bed is fed
// from the middle or split.
func (f *Facts) lateral() unit.Optional[unit.Metres] {
	length := f.Case.Field.BedLength
	length.Value /= unit.Metres(max(f.Stretches, 1))
	return length
}

// DesignSpread is the flow lost along a line that is designed for, in percent: a tenth.
// WorstSpread is what is seen in the crop: a fifth.
const (
	DesignSpread unit.Percent = 10
	WorstSpread  unit.Percent = 20
)

// driest is by how much the dew point of a dry year lies below the night's
// minimum: the low end of what FAO-56 (annex 6) gives for dry air.
const driest unit.CelsiusDegrees = 2

// SpacingSlack is by how much emitters may stand beyond the soil's usual range before it
// counts.
const SpacingSlack = unit.Metres(0.01)

// steepest is the slope at which the water model ends; the gates refuse half of it.
const steepest = 20

// mostOrganic is where the soil water equations end; peat needs a local table.
const mostOrganic = 8

// WaterInput is all that the water model reads of a case, without the tape.
func (f *Facts) WaterInput() water.Input {
	c, crop := &f.Case, f.Crop
	in := water.Input{
		PlantOn:   f.Plant,
		FilmCut:   unit.Known(f.filmCut()),
		Soil:      unit.Known(WaterClass(f.Soil)),
		BedLength: f.lateral(), BedCentres: unit.Known(f.Centres), BedTop: unit.Known(f.Top),
		Slope:    unit.Percent(math.Min(c.Soil.Slope.Value, steepest)),
		Laterals: f.Laterals, Sold: &sold,

		Supply: waterquality.Supply(c.Water.Source),
		Flow:   c.Water.Flow, Pressure: c.Water.Pressure,
		Lift: c.Water.Lift, Rise: c.Water.Rise, Header: c.Water.Header,
		TankVolume: c.Water.Tank, TankRefill: c.Water.Refill,

		Salt: c.Water.Salt, PH: c.Water.PH, Iron: c.Water.Iron,
		Hardness: c.Water.Hardness, SodiumRatio: c.Water.Sodium, Nitrate: c.Water.Nitrate,
		Injector: c.Feed.Injector, Chlorine: c.Feed.Chlorine,
	}
	in.Coefficients = unit.Known(water.Coefficients{Initial: crop.KcIni.Value, Mid: crop.KcMid.Value, End: crop.KcEnd.Value})
	var stages [4]unit.Days
	for i, days := range crop.StageDays {
		stages[i] = unit.Days(days)
	}
	in.Stages, in.Season = unit.Known(stages), unit.Known(f.SeasonDays())
	in.DryDays = f.DryDays()
	if crop.RootDepth.Given() {
		in.RootDepth = unit.Known(crop.RootDepth.Low)
	}
	if crop.Depletion.Given() {
		in.Depletion = unit.Known(crop.Depletion.Value)
	}
	if crop.SaltThreshold.Given() && crop.SaltSlope.Given() {
		in.SaltThreshold, in.SaltSlope = unit.Known(crop.SaltThreshold.Value), unit.Known(crop.SaltSlope.Value)
	}
	if o := c.Soil.Organic; o.Given {
		in.OrganicMatter = unit.Known(unit.Percent(math.Min(o.Value, mostOrganic)))
	}
	if o := c.Field.Beds; o.Given {
		in.Beds = unit.Known(int(o.Value) * f.Stretches)
	}
	if o := c.Water.Hours; o.Given {
		in.Hours = unit.Known(unit.Hours(o.Value))
	}
	if !f.years[0].Given {
		f.demands()
	}
	in.Usual, in.Cool, in.Dry = f.years[0], f.years[1], f.years[2]
	fd := &c.Feed
	if fd.Rate.Given {
		in.FeedRate = unit.Known(float64(fd.Rate.Value))
	}
	if fd.Grade.Given {
		in.FeedGrade = unit.Known(unit.Percent(fd.Grade.Value))
	}
	if fd.Stock.Given {
		in.Stock = unit.Known(float64(fd.Stock.Value))
	}
	if fd.Bleach.Given {
		in.Bleach = unit.Known(unit.Percent(fd.Bleach.Value))
	}
	return in
}

// demands works out the reference evapotranspiration of each month, from the
// middle of the month, in a usual, a cool and a dry year. Cool and warm are those
// met once in ten years; the dry one is a warm one whose air is drier too. They
// do not depend on the spring that the grower plans for.
func (f *Facts) demands() {
	for m := range 12 {
		date := unit.On(2001, m+1, 15)
		step := f.year.SeasonMargin(weather.Index(date))
		shift := f.usualAgain(step)
		f.years[0].Value[m] = f.demand(date, shift, 0)
		f.years[1].Value[m] = f.demand(date, shift-step, 0)
		f.years[2].Value[m] = f.demand(date, shift+step, driest)
	}
	for i := range f.years {
		f.years[i].Given = f.years[i].Value != water.Year{}
	}
}

// usualAgain is the way back from the spring that the grower plans for to the
// usual year.
func (f *Facts) usualAgain(step unit.CelsiusDegrees) unit.CelsiusDegrees {
	switch f.Case.Risk {
	case "cool":
		return step
	case "warm":
		return -step
	}
	return 0
}

// UsualHargreaves is the reference evapotranspiration of a date in a usual year by
// the simpler formula, mm a day to a hundredth.
func (f *Facts) UsualHargreaves(date unit.Date) unit.Millimetres {
	back := f.usualAgain(f.year.SeasonMargin(weather.Index(date)))
	return waterDepth(f.demandOn(date, back, 0).Hargreaves)
}

// demand is the reference evapotranspiration of a date, mm a day to a
// hundredth, with the air so much warmer and so much drier.
func (f *Facts) demand(date unit.Date, warmer, drier unit.CelsiusDegrees) unit.Millimetres {
	return waterDepth(f.demandOn(date, warmer, drier).PenmanMonteith)
}

// EstimateLoses is by how much the reference evapotranspiration of a day misses where sun,
// wind and humidity are estimated from temperatures: root mean square over the months of
// the stations that measured all three, mm. A test works it out again.
const EstimateLoses unit.Millimetres = 0.8

// mostDemand is what no climate on record evaporates in a day, mm: the water model
// takes no more.
const mostDemand = 15

// waterDepth rounds, and keeps to what the water model takes.
func waterDepth(v unit.Millimetres) unit.Millimetres {
	return unit.Millimetres(math.Min(mostDemand, math.Round(float64(v)*100)/100))
}

func (f *Facts) demandOn(date unit.Date, warmer, drier unit.CelsiusDegrees) sky.Demand {
	low, high := f.year.On(date)
	low, high = low.Plus(warmer), high.Plus(warmer)
	_, month, _ := date.Civil()
	w := sky.Weather{Minimum: low, Maximum: high, Latitude: f.Case.Place.Latitude.Value,
		Height: f.Case.Place.Elevation.Value, DayOfYear: date.DayOfYear(), Drier: drier}
	p := &f.Case.Place
	if o := p.StationSun; o.Given {
		w.Sunshine = unit.Known(unit.Hours(o.Value[month-1] / float64(unit.DaysIn(2001, month))))
	}
	if o := p.StationWind; o.Given {
		w.Wind = unit.Known(unit.MetresPerSecond(o.Value[month-1]))
	}
	if o := p.StationVapour; o.Given { // in a dry year less, as the dew point falls
		usual, dry := sky.ActualFromDewPoint(sky.DryDewPoint(low, 0)), sky.ActualFromDewPoint(sky.DryDewPoint(low, drier))
		w.Actual = unit.Known(min(unit.Kilopascals(o.Value[month-1])*dry/usual, sky.SaturationOfDay(low, high)))
	}
	if o := p.Solar; o.Given {
		w.Solar = unit.Known(unit.MegajoulesPerSquareMetre(o.Value[month-1]))
	}
	if o := p.Wind; o.Given {
		w.Wind = unit.Known(unit.MetresPerSecond(o.Value[month-1]))
	}
	if o := p.Humidity; o.Given {
		w.Actual = unit.Known(sky.ActualFromMeanHumidity(low, high, unit.Percent(o.Value[month-1])))
	}
	return sky.DemandOf(w)
}

// rowsPerLine are the rows that one line of tape may serve; mostLines, the lines that a
// bed takes.
const (
	rowsPerLine = 3
	mostLines   = 4
)

// lateralsFor counts the tapes on a bed: enough that the wetted strips meet under
// the rows, one more row pair where rows stand wide.
func lateralsFor(top unit.Metres, soil *table.Soil, rows int) int {
	if rows <= 1 {
		return 1
	}
	lines := int(math.Ceil(float64(top) / (2 * float64(soil.Wetted.Value))))
	return min(max(lines, (rows+rowsPerLine-1)/rowsPerLine), mostLines)
}

// filmCut is the share of the crop's water use that film saves; none on bare ground.
func (f *Facts) filmCut() water.Range {
	if f.Bare || f.Crop.KcUnderFilm {
		return water.Range{}
	}
	return water.Range{Low: f.Crop.FilmSaving.Low, High: f.Crop.FilmSaving.High}
}

// SaltLoss is the yield that a crop loses to salt in the water, by the two-line model
// of FAO Paper 61: nothing up to a threshold, then a slope.
func SaltLoss(crop *table.Crop, w unit.DecisiemensPerMetre) unit.Percent {
	tolerance := waterquality.Tolerance{Threshold: crop.SaltThreshold.Value, Slope: crop.SaltSlope.Value}
	return unit.Percent(unit.Thousandth(100 - float64(tolerance.YieldWith(w))))
}

// salt finds the yield lost. Soil paste holds more salt than the water, though 15–20 % of
// it drains through: [waterquality.SoilFromWater].
func (f *Facts) salt() {
	f.SoilSalt, f.YieldLost = 0, 0
	w := f.Case.Water.Salt
	if !w.Given {
		return
	}
	f.SoilSalt = unit.DecisiemensPerMetre(unit.Thousandth(waterquality.SoilFromWater * float64(w.Value)))
	f.YieldLost = SaltLoss(f.Crop, w.Value)
}

// What narrows small outlets, as shares of the risk: open water; iron, from a trace on
// by so much for each mg/L, to a most; lime.
const (
	openWaterClogs = 0.5
	ironFrom       = 0.1 // mg/L
	ironWhole      = 3.0 // mg/L
	ironMost       = 0.5
	limeClogs      = 0.3
)

// clogging gathers what narrows small outlets: open water, iron, lime.
func (f *Facts) clogging() {
	w := &f.Case.Water
	risk := 0.0
	if w.Source == "pond" || w.Source == "stream" {
		risk += openWaterClogs
	}
	if w.Iron.Value > ironFrom {
		risk += math.Min(ironMost, float64(w.Iron.Value)/ironWhole)
	}
	if waterquality.LimeLikely(w.Hardness.Value, w.PH.Value) {
		risk += limeClogs
	}
	f.ClogRisk = unit.Thousandth(math.Min(1, risk))
}
