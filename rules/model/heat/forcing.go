package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/unit"
)

// maxSteps bounds the steps of a day.
const maxSteps = 96

// airDay is one day's weather with its neighbours, in °C.
type airDay struct {
	minimum, maximum         float64
	maximumBefore, minimumAt float64 // yesterday's maximum, tomorrow's minimum
	dayOfYear                int     // 1–366
	drier                    float64 // K, dew point below the minimum
	shade                    float64 // share of the ground under leaves, 0–1
}

// site is what does not change from day to day.
type site struct {
	latitude  unit.Degrees
	height    unit.Metres
	sunFactor float64 // kRs of FAO-56 equation 50
	wind      float64 // m/s at 2 m, mean of day and night
	roughness float64 // m
}

// hottestHour is the hour of solar time of the day's maximum (common practice).
const hottestHour = 15

// day fills the hours of one day at the ends of its steps.
//
// The air runs in half cosines from yesterday's maximum to the minimum at
// sunrise, to the maximum at 15 h, towards tomorrow's minimum. The sun follows
// the sine of its height and adds up to the day's Rs, which FAO-56 draws from
// the temperature range. The sky radiates as Brutsaert, W. (1975), Water
// Resources Research 11:742–744 for the clear part and as a black body for the
// cloudy part (Crawford, T. M. and Duchon, C. E. (1999), Journal of Applied
// Meteorology 38:474–480; both from memory). Leaves stop sun and send down
// black radiation at air temperature.
func (s *site) day(d *airDay, hours []hour) {
	steps := len(hours)
	dt := 24 / float64(steps)
	above := sky.Extraterrestrial(s.latitude, d.dayOfYear)
	clear := sky.ClearSky(above, s.height)
	solar := sky.FromTemperatureRange(unit.Celsius(d.minimum), unit.Celsius(d.maximum), s.sunFactor, above, clear)
	cloud := 0.5
	if clear > 0 {
		cloud = math.Max(0, math.Min(1, 1-float64(solar/clear)))
	}
	vapour, _ := saturation(d.minimum - d.drier)
	// e_a in hPa over T in K, to the power 1/7; T at the day's mean.
	clearSky := 1.24 * math.Pow(vapour/100/((d.minimum+d.maximum)/2+kelvin), 1.0/7)
	emissivity := cloud + (1-cloud)*math.Min(1, clearSky)

	rise := 12 - float64(sky.DayLength(s.latitude, d.dayOfYear))/2
	rise = math.Max(3, math.Min(9, rise)) // polar day and night keep a mild rhythm
	high := 0.0
	arc := sky.ArcOf(s.latitude, d.dayOfYear)
	for k := range hours {
		sine := math.Max(0, arc.Sin(float64(k+1)*dt))
		high += sine
		hours[k].solar = sine // until what a sine is worth is known
	}
	perSine := 0.0
	if high > 0 {
		perSine = float64(solar) * 1e6 / (high * dt * 3600)
	}
	thin := thinAir(s.height)
	calm := thin * forcedConvection(0.7*s.wind, s.roughness)
	breezy := thin * forcedConvection(1.3*s.wind, s.roughness)
	open := 1 - d.shade
	for k := range hours {
		h := float64(k+1) * dt
		w := &hours[k]
		w.air = d.airAt(h, rise)
		sine := w.solar
		w.solar = open * perSine * sine
		black := w.air + kelvin
		black = stefanBoltzmann * black * black * black * black
		w.sky = black * (open*emissivity + d.shade)
		w.vapour, w.thin = vapour, thin
		forced := calm + (breezy-calm)*math.Min(1, 2*sine)
		forced *= 1 - 0.5*d.shade // leaves calm the air at the ground: assumption
		w.alone, w.forced = forced, forced*forced*forced
	}
}

// thinAir is the air's density at a height as a share of that at sea level: thin
// air carries less heat away. FAO-56 equation 7.
func thinAir(height unit.Metres) float64 { return float64(sky.Pressure(height) / sky.Pressure(0)) }

func (d *airDay) airAt(h, rise float64) float64 {
	from, to, share := d.maximumBefore, d.minimum, 0.0
	switch {
	case h < rise:
		share = (h + 24 - hottestHour) / (rise + 24 - hottestHour)
	case h < hottestHour:
		from, to = d.minimum, d.maximum
		share = (h - rise) / (hottestHour - rise)
	default:
		from, to = d.maximum, d.minimumAt
		share = (h - hottestHour) / (24 - hottestHour + rise)
	}
	return to + (from-to)*(1+math.Cos(math.Pi*share))/2
}
