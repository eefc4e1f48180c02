package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/unit"
)

// hotHour finds each film's temperature in the hottest hour of a clear, calm day
// whose maximum is passed one day in ten. The ground answers the hour as a deep
// body that swings daily: its surface takes up the daily mean plus the flux over
// its admittance √(ωKC).
func (r *Runner) hotHour(date unit.Date, a *airDay, gap float64) {
	spread := float64(r.year.SpreadMaximum[a.dayOfYear-1])
	w := hour{air: a.maximum + oneInTen*spread}
	above := sky.Extraterrestrial(r.place.latitude, a.dayOfYear)
	w.solar = (1 - a.shade) * noonShare(r.place.latitude, a.dayOfYear) * float64(sky.ClearSky(above, r.place.height))
	vapour, _ := saturation(a.minimum - a.drier)
	w.vapour = vapour
	emissivity := math.Min(1, 1.24*math.Pow(vapour/100/(w.air+kelvin), 1.0/7))
	k := w.air + kelvin
	w.sky = stefanBoltzmann * k * k * k * k * (emissivity*(1-a.shade) + a.shade)
	const calm = 1.0 // m/s: a still noon
	w.thin = thinAir(r.place.height)
	forced := w.thin * forcedConvection(calm, r.nature.roughness)
	w.alone, w.forced = forced, forced*forced*forced

	omega := 2 * math.Pi / 86400
	admittance := math.Sqrt(omega * r.ground.loose.conductivity * r.ground.loose.capacity)
	warmer := oneInTen * spread // the ground under a hot spell is warmer too
	for f := range r.columns {
		c := &r.columns[f]
		rest := admittance * (float64(r.pure[f][FiveCentimetres].Mean[r.day]) + warmer)
		var surface float64
		if f == Bare || date < r.in.Laid {
			surface, _ = r.open.balance(&w, admittance, rest, 1, c.temperature[0])
		} else {
			v := newCover(r.covers.list[f-1].Optics, r.albedo, gap, r.wetness)
			surface, _, _ = v.balance(&w, admittance, rest, 1, c.film, c.temperature[0])
		}
		r.season.Surface[f][r.day] = unit.Celsius(surface)
	}
}

// noonShare turns the day's clear-sky sum (MJ/m²) into W/m² one hour past noon.
func noonShare(latitude unit.Degrees, dayOfYear int) float64 {
	const steps = 48
	sum, arc := 0.0, sky.ArcOf(latitude, dayOfYear)
	for k := range steps {
		sum += math.Max(0, arc.Sin((float64(k)+0.5)/2))
	}
	if sum == 0 {
		return 0
	}
	return math.Max(0, arc.Sin(13)) * 1e6 / (sum * 1800)
}
