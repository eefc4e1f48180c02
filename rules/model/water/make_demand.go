package water

import (
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/unit"
)

func (w *work) season(year Year) demand.Season {
	in := &w.in
	k := in.Coefficients.Value
	crop := demand.Crop{Initial: k.Initial, Mid: k.Mid, End: k.End, Stages: in.Stages.Value}
	if in.Season.Given {
		crop = crop.Scaled(in.Season.Value)
	}
	return demand.Season{
		Crop:      crop,
		Cut:       demand.FilmCut{Low: in.filmCut.Low, High: in.filmCut.High},
		Ground:    in.ground,
		PlantOn:   in.PlantOn,
		Dry:       in.DryDays,
		Reference: year,
	}
}

func (w *work) gross(net float64) float64 {
	return demand.Gross(net, w.in.efficiency, w.plan.Demand.Leaching)
}

// per100m turns litres for a metre of bed into the plan's figure.
func per100m(perMetre float64) LitresPer100Metres {
	return round(LitresPer100Metres(100*perMetre), stepVolume)
}

func (w *work) demand() {
	in := &w.in
	if !in.Usual.Given || !in.Coefficients.Given || !in.Stages.Given || !in.BedTop.Given || !in.BedCentres.Given {
		return
	}
	season := w.season(in.Usual.Value)
	months, peak := season.Months()
	d := &Demand{Season: season.Crop.Season(), Stages: season.Crop.Stages}
	w.plan.Demand = d
	if in.Salt.Given && in.SaltThreshold.Given && in.SaltSlope.Given {
		d.Leaching = round(w.tolerance().Leaching(in.Salt.Value), stepShare)
	}
	cool, dry := w.otherYear(in.Cool), w.otherYear(in.Dry)
	total := 0.0
	for i, m := range months {
		if w.light {
			break
		}
		total += w.gross(m.PerMetre) * float64(m.Days)
		month := Month{
			Year: m.Year, Month: m.Month, Days: m.Days,
			Reference:   round(m.Reference, stepDepth),
			Coefficient: round(m.Coefficient, stepFactor),
			Use:         round(m.Use, stepDepth),
			UseLow:      round(m.UseLow, stepDepth),
			UseHigh:     round(m.UseHigh, stepDepth),
			Ground:      round(m.Ground, stepLength),
			Net:         per100m(m.PerMetre),
			Gross:       per100m(w.gross(m.PerMetre)),
			BedDepth:    round(unit.Millimetres(w.gross(m.PerMetre)/float64(in.BedTop.Value)), stepDepth),
		}
		if in.Beds.Given && in.BedLength.Given {
			month.AllBeds = unit.Known(round(unit.Litres(w.gross(m.PerMetre)*float64(in.BedLength.Value)*float64(in.Beds.Value)), stepVolume))
		}
		if cool != nil {
			month.GrossCool = unit.Known(per100m(w.gross(cool[i].PerMetre)))
		}
		if dry != nil {
			month.GrossDry = unit.Known(per100m(w.gross(dry[i].PerMetre)))
		}
		d.Months = append(d.Months, month)
	}
	d.Total = per100m(total)
	d.InField = round(unit.Millimetres(total/float64(in.BedCentres.Value)), stepDepth)
	w.peakNet, w.peakGross = peak.PerMetre, w.gross(peak.PerMetre)
	first := season.On(0)
	w.firstGross, w.mostGross = w.gross(first.PerMetre), w.gross(first.PerMetreMost)
	d.First = First{Use: round(first.Use, stepDepth), Net: per100m(first.PerMetre), Gross: per100m(w.firstGross), UseMost: round(first.Most, stepDepth)}
	d.Peak = Peak{
		On:        peak.Date,
		Use:       round(peak.Use, stepDepth),
		Net:       per100m(peak.PerMetre),
		Gross:     per100m(w.peakGross),
		OnBedOnly: per100m(w.gross(peak.PerMetreBed)),
		GrossPoor: per100m(demand.Gross(peak.PerMetre, poorUniformity, d.Leaching)),
	}
	if dry != nil {
		_, dryPeak := w.season(in.Dry.Value).Months()
		d.Peak.GrossDry = unit.Known(per100m(w.gross(dryPeak.PerMetre)))
	}
	day := int(peak.Date.Minus(in.PlantOn))
	coefficient, cover := season.Crop.At(day)
	_, month, _ := peak.Date.Civil()
	w.step("crop-use", "What the crop uses on its day of peak use",
		named("crop use a day", unit.FineDepth(d.Peak.Use)),
		named("day", d.Peak.On),
		named("reference evapotranspiration a day", unit.FineDepth(round(in.Usual.Value[month-1], stepDepth))),
		named("crop coefficient", round(coefficient, stepFactor)),
		named("film saves", unit.FineShare(round(season.Cut.At(cover), stepShare))))
	w.step("net", "Liters for the bed",
		named("net need a day", d.Peak.Net),
		named("crop use a day", unit.FineDepth(d.Peak.Use)),
		named("width", unit.Short(round(peak.Ground, stepLength))))
	w.step("gross", "Water to pump",
		named("gross need a day", d.Peak.Gross),
		named("net need a day", d.Peak.Net),
		named("stays with the roots", in.efficiency),
		named("leaching", unit.FineShare(d.Leaching)))
}

// poorUniformity is the middle of what field evaluations of working systems
// find: 65–80 % (CIGR agricultural engineering handbook, California).
const poorUniformity unit.Percent = 70

func (w *work) otherYear(y unit.Optional[Year]) []demand.Month {
	if !y.Given {
		return nil
	}
	months, _ := w.season(y.Value).Months()
	return months
}

// months fills in run times once flow, soil and zones are known.
func (w *work) months() {
	d := w.plan.Demand
	if d == nil || w.bedFlow <= 0 {
		return
	}
	zones := 0
	if w.plan.Schedule != nil {
		zones = len(w.plan.Schedule.Zones)
	}
	for i := range d.Months {
		m := &d.Months[i]
		run := unit.Minutes(60 * float64(m.Gross) / 100 / w.bedFlow)
		m.Run = round(run, stepMinutes)
		longest := w.longestOn(m.Use)
		m.Runs = soilwater.RunsADay(run, longest)
		m.EachRun = round(run/unit.Minutes(m.Runs), stepMinutes)
		m.Interval = 1
		if longest > 0 {
			m.Interval = soilwater.Interval(run, longest)
		}
		m.Together = round(run*unit.Minutes(m.Interval), stepMinutes)
		if zones > 0 {
			hours := unit.Hours(float64(run) / 60 * float64(zones))
			m.HoursADay = unit.Known(round(hours, stepHours))
			m.HoursAWeek = unit.Known(round(7*hours, stepHours))
		}
	}
	d.First.Run = round(unit.Minutes(60*w.firstGross/w.bedFlow), stepMinutes)
	d.First.Every, d.First.Together = w.spaced(60*w.firstGross/w.bedFlow, d.First.Use)
	d.First.MostEvery, d.First.MostTogether = w.spaced(60*w.mostGross/w.bedFlow, d.First.UseMost)
	d.Peak.Run = round(w.peakRun(), stepMinutes)
	d.Peak.Runs = soilwater.RunsADay(w.peakRun(), w.longest)
	d.Peak.EachRun = round(w.peakRun()/unit.Minutes(d.Peak.Runs), stepMinutes)
}

// A run that waters a line evenly lasts three times what the line takes to fill, and
// 20 minutes at the least: common practice, no source. That filling and emptying spoil
// short runs is published (Water 12(8):2276, 2020).
const (
	leastFills   = 3
	leastMinutes = unit.Minutes(20)
)

// LeastRun is the shortest run that waters a line evenly, where a line takes so long to
// fill.
func LeastRun(fill unit.Minutes) unit.Minutes { return max(leastFills*fill, leastMinutes) }

// spaced puts a day's run, in minutes, together with those of the days that follow.
func (w *work) spaced(day float64, use unit.Millimetres) (unit.Days, unit.Minutes) {
	every, run := soilwater.Spaced(unit.Minutes(day), LeastRun(w.plan.Tape.FillMinutes), w.longestOn(use))
	return every, round(run, stepMinutes)
}

// peakRun is how long a zone runs on the hungriest day.
func (w *work) peakRun() unit.Minutes { return unit.Minutes(60 * w.peakGross / w.bedFlow) }
