package rules

import (
	"math"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Shares that the water facts rest on.
const (
	dripEfficiency = 0.90 // of the water that leaves the tape, what the roots get: 85–95 %
	usableFlow     = 0.80 // of a tested flow, what to plan on: from memory of the trade
	defaultHours   = 12.0 // a day, where the grower does not say
)

func (f *Facts) water() {
	c := &f.Case
	saving := 1 - float64(f.Crop.FilmSaving.Value)/100
	full := f.Plant.Plus(unit.Days(f.Crop.StageDays[0] + f.Crop.StageDays[1]))
	f.Start = unit.Millimetres(round3(float64(f.demand(f.Plant)) * f.Crop.KcStart.Value * saving))
	f.Peak = unit.Millimetres(round3(float64(f.demand(full)) * f.Crop.KcMid.Value * saving))
	f.PeakLitres = unit.Litres(round3(float64(f.Peak) * float64(f.Centres) * 100 / dripEfficiency))

	f.Lines = linesFor(f.Top, f.Soil, f.Rows)
	f.Usable = unit.LitresPerHour(round3(float64(c.Water.Flow.Value) * usableFlow))
	for i := range table.Tapes {
		t := &table.Tapes[i]
		bedFlow := float64(t.Flow) * float64(f.Lines)
		f.WeekHours[i] = unit.Hours(round3(7 * float64(f.PeakLitres) / bedFlow))
		f.LongestRun[i], f.Spread[i] = runOf(t, c.Field.BedLength.Value, bedFall(c.Soil.Slope.Value))
		f.SingleRun[i] = f.singleRun(t)
		if c.Water.Flow.Given && f.BedMetres > 0 {
			perBed := bedFlow * float64(c.Field.BedLength.Value) / 100
			atOnce := math.Floor(float64(f.Usable) / perBed)
			if atOnce >= 1 {
				f.Zones[i] = int(math.Ceil(c.Field.Beds.Value / atOnce))
				f.HoursADay[i] = unit.Hours(round3(float64(f.WeekHours[i]) / 7 * float64(f.Zones[i])))
			}
		}
	}
	f.salt()
	f.clogging()
}

// bedFall is the slope along the beds: on steeper ground they are laid nearly
// along the contour, with the 2 % at most that drains without washing.
func bedFall(slope float64) float64 { return math.Min(slope, 2) }

// linesFor counts the tapes on a bed: enough that the wetted strips meet under
// the rows, one more row pair where rows stand wide.
func linesFor(top unit.Metres, soil *table.Soil, rows int) int {
	if rows <= 1 {
		return 1
	}
	lines := int(math.Ceil(float64(top) / (2 * float64(soil.Wetted.Value))))
	return min(max(lines, (rows+2)/3), 4)
}

// runOf estimates the longest run for a tenth of the flow lost on level ground
// and the flow lost along a bed. Friction of smooth pipe grows with flow to the
// power 1.75, so the run shortens with the flow class to the power 1.75/2.75,
// and the loss grows with length to the power 2.75, from the published-figure
// run of 585 ft at 0.22 gpm per 100 ft in 5/8 in tape. The water plan solves
// the line step by step; a test holds this estimate against it.
func runOf(t *table.Tape, bed unit.Metres, slope float64) (longest unit.Metres, lost unit.Percent) {
	const reference = 0.22 / 0.3048 * 3.785411784 * 60 // L/h for 100 m
	run := 585 * unit.MetresPerFoot * math.Pow(reference/float64(t.Flow), 1.75/2.75)
	longest = unit.Metres(math.Round(run*10) / 10)
	if bed <= 0 {
		return longest, 0
	}
	friction := 10 * math.Pow(float64(bed)/run, 2.75)
	rise := math.Abs(slope) / 100 * float64(bed) * 9.80665 / (10 * unit.KilopascalsPerPSI)
	return longest, unit.Percent(math.Round((friction+50*rise)*10) / 10)
}

// singleRun is the longest run before water passes the roots: what the wetted
// strip under one tape may hold, divided by the tape's flow.
func (f *Facts) singleRun(t *table.Tape) unit.Minutes {
	depth := math.Min(float64(f.Crop.RootDepth.Low), 0.3)
	held := f.Soil.WaterHeld.Value * depth * f.Crop.Depletion.Value // mm
	litres := held * float64(f.Soil.Wetted.Value) * 100
	return unit.Minutes(math.Round(litres / float64(t.Flow) * 60))
}

// salt finds the yield lost by the two-line model of FAO Paper 61: nothing up
// to a threshold, then a slope. Soil paste holds 1.5 times the salt of the
// water where 15–20 % of it drains through (FAO Paper 29).
func (f *Facts) salt() {
	w := f.Case.Water.Salt
	if !w.Given {
		return
	}
	f.SoilSalt = unit.DecisiemensPerMetre(round3(1.5 * float64(w.Value)))
	over := float64(f.SoilSalt - f.Crop.SaltThreshold.Value)
	f.YieldLost = unit.Percent(math.Min(100, math.Max(0, round3(over*float64(f.Crop.SaltSlope.Value)))))
}

// clogging gathers what narrows small outlets: open water, iron, lime.
func (f *Facts) clogging() {
	w := &f.Case.Water
	risk := 0.0
	if w.Source == "pond" || w.Source == "stream" {
		risk += 0.5
	}
	if w.Iron.Value > 0.1 {
		risk += math.Min(0.5, float64(w.Iron.Value)/3)
	}
	if w.Acidity.Value > 7.5 && w.Hardness.Value > 120 {
		risk += 0.3
	}
	f.ClogRisk = round3(math.Min(1, risk))
}
