package facts

import (
	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// leastUsual is as little as a usual day counts for in a comparison: below it, in the
// depth of winter, the share would say nothing (our judgement).
const leastUsual unit.Millimetres = 0.2

// ReferenceOn is the reference evapotranspiration of a day whose low and high are known,
// mm to a hundredth: Hargreaves on that day (FAO-56, equation 52), calibrated as FAO-56
// advises, here by what the plan reckons with in that month beside Hargreaves on a usual
// such day. So a day as warm as usual needs what the plan says. Hargreaves was made for
// means over five days and more; single days scatter.
func (f *Facts) ReferenceOn(date unit.Date, low, high unit.Celsius) unit.Millimetres {
	_, month, _ := date.Civil()
	that := sky.Hargreaves(low, high, (low+high)/2, sky.Extraterrestrial(f.Case.Place.Latitude.Value, date.DayOfYear()))
	if !f.years[0].Given {
		f.demands()
	}
	return waterDepth(f.years[0].Value[month-1] * that / max(f.UsualHargreaves(date), leastUsual))
}

// UsualAir is the mean low and high of a day in a usual year.
func (f *Facts) UsualAir(date unit.Date) (low, high unit.Celsius) {
	low, high = f.year.On(date)
	back := f.usualAgain(f.year.SeasonMargin(weather.Index(date)))
	return unit.Hundredth(float64(low.Plus(back))), unit.Hundredth(float64(high.Plus(back)))
}
