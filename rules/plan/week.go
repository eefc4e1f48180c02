package plan

import (
	"math"

	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/unit"
)

// WaterWeek is how long each zone runs in one week, as means over its days. The
// weather is the usual one of the place, as in the plan's months.
type WaterWeek struct {
	From    unit.Date
	Days    unit.Days    // of the seven, those on which the crop is watered
	Run     unit.Minutes // a day and zone
	Runs    int          // a day
	EachRun unit.Minutes
	// Every and Together are the same water in runs long enough to water a line evenly:
	// one run for so many days.
	Every    unit.Days
	Together unit.Minutes
	Gross    water.LitresPer100Metres
	AllBeds  unit.Optional[unit.Litres] // a day
	RunDry   unit.Optional[unit.Minutes]
	RunCool  unit.Optional[unit.Minutes]
}

// weekDays is a week.
const weekDays = 7

// LastWater is the day on which the season's dates stop the water, and so the last
// on which a week is worked out.
func (a *Advice) LastWater(s *Shopping) unit.Date {
	return a.filmEnds().Plus(-a.Facts.DryDays())
}

// filmEnds is the day after the last picking of the last crop on the film.
func (a *Advice) filmEnds() unit.Date {
	end, second := a.cropEnds()
	if second {
		end = end.Plus(secondCropDays)
	}
	return end
}

// cropEnds is the day after the last picking, and whether a second crop follows on the film.
func (a *Advice) cropEnds() (end unit.Date, second bool) {
	return a.WaitPlan.PlantOn.Plus(a.Facts.SeasonDays()), a.Case.Practice.CropsOnFilm.Or(1) > 1 && !a.Refused()
}

// seasonOf is the crop's demand under film in the usual year.
func seasonOf(in *water.Input) demand.Season {
	season := demand.Season{
		Crop:      demand.Crop{Initial: in.Coefficients.Value.Initial, Mid: in.Coefficients.Value.Mid, End: in.Coefficients.Value.End, Stages: in.Stages.Value},
		Cut:       demand.FilmCut{Low: in.FilmCut.Value.Low, High: in.FilmCut.Value.High},
		Ground:    demand.Ground{BedTop: in.BedTop.Value, Full: max(in.BedCentres.Value, in.BedTop.Value)},
		PlantOn:   in.PlantOn,
		Dry:       in.DryDays,
		Reference: in.Usual.Value,
	}
	if in.Season.Given {
		season.Crop = season.Crop.Scaled(in.Season.Value)
	}
	return season
}

// longestOn is the longest run that stays with the roots on a day of such use; 0 where it
// is not known.
func longestOn(soil *water.Soil, in *water.Input, use unit.Millimetres) unit.Minutes {
	if soil == nil || soil.Depletion <= 0 {
		return 0
	}
	return soil.Longest * unit.Minutes(soilwater.DepletionOn(in.Depletion.Value, use)/soil.Depletion)
}

// WaterWeekOf works the week out that begins on a day: the plan's own demand, day by
// day, where the plan shows means of months. It is false where no day of it lies
// between planting and the day on which the water is stopped or the crop's season of
// use ends, where the plan knows
// no flow, and where film is refused.
func (a *Advice) WaterWeekOf(p *WaterPlan, s *Shopping, from unit.Date) (WaterWeek, bool) {
	in := a.Facts.WaterInput()
	plan := &p.Plan
	flow := float64(plan.Tape.Flow) // L/h for 100 m of bed
	if a.Refused() || plan.Demand == nil || flow <= 0 || !in.Usual.Given {
		return WaterWeek{}, false
	}
	season := seasonOf(&in)
	last := min(a.LastWater(s), in.PlantOn.Plus(plan.Demand.Season))
	week := WaterWeek{From: from}
	var use unit.Millimetres
	gross := func(season demand.Season) (perMetre float64) {
		days := 0
		for day := range unit.Days(weekDays) {
			on := from.Plus(day)
			if on < in.PlantOn || on >= last {
				continue
			}
			d := season.On(int(on.Minus(in.PlantOn)))
			perMetre += demand.Gross(d.PerMetre, demand.UsualEfficiency, plan.Demand.Leaching)
			use = max(use, d.Use)
			days++
		}
		week.Days = unit.Days(days)
		return perMetre / float64(max(days, 1))
	}
	run := func(perMetre float64) unit.Minutes { return unit.Minutes(math.Round(60 * 100 * perMetre / flow)) }
	other := func(year unit.Optional[water.Year]) unit.Optional[unit.Minutes] {
		if !year.Given {
			return unit.Optional[unit.Minutes]{}
		}
		o := season
		o.Reference = year.Value
		return unit.Known(run(gross(o)))
	}
	week.RunDry, week.RunCool = other(in.Dry), other(in.Cool)
	use = 0
	usual := gross(season)
	if week.Days == 0 {
		return WaterWeek{}, false
	}
	week.Run = run(usual)
	week.Gross = water.LitresPer100Metres(math.Round(1000*usual) / 10)
	if in.Beds.Given && in.BedLength.Given {
		week.AllBeds = unit.Known(unit.Litres(math.Round(usual * float64(in.BedLength.Value) * float64(in.Beds.Value))))
	}
	longest := longestOn(plan.Soil, &in, use)
	week.Runs = soilwater.RunsADay(week.Run, longest)
	week.EachRun = unit.Minutes(math.Round(float64(week.Run) / float64(week.Runs)))
	week.Every, week.Together = soilwater.Spaced(week.Run, water.LeastRun(plan.Tape.FillMinutes), longest)
	week.Together = unit.Minutes(math.Round(float64(week.Together)))
	return week, true
}
