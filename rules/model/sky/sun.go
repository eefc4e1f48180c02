// Package sky computes the sun, the radiation, the humidity of the air and the
// reference evapotranspiration of a day from what a grower's weather table
// holds: minimum and maximum temperature, latitude, height and, where known,
// sunshine, humidity and wind.
//
// Every formula is that of Allen, R. G., Pereira, L. S., Raes, D. and Smith,
// M. (1998): Crop evapotranspiration, FAO Irrigation and Drainage Paper 56,
// Food and Agriculture Organization, Rome ("FAO-56" below, with the number of
// the equation). Functions are pure; where an input lies outside the range
// stated they still return a finite number, so the caller checks ranges first.
package sky

import (
	"math"

	"filmfurrow/rules/unit"
)

// solarConstant is Gsc of FAO-56 equation 21, in MJ/m² per minute.
const solarConstant = 0.0820

// minutesPerDay over π is the factor 24·60/π of FAO-56 equation 21.
const minutesPerDay = 24 * 60

// stefanBoltzmannPerDay is σ of FAO-56 equation 39, in MJ/m²/K⁴ per day.
const stefanBoltzmannPerDay = 4.903e-9

// radians turns an angle on the globe into rad (FAO-56 equation 22).
func radians(d unit.Degrees) float64 { return float64(d) * math.Pi / 180 }

// InverseRelativeDistance gives dr, the squared ratio of the mean to the
// present distance of the sun, about 0.967–1.033, for a day of the year 1–366
// (FAO-56 equation 23).
func InverseRelativeDistance(dayOfYear int) float64 {
	return 1 + 0.033*math.Cos(2*math.Pi/365*float64(dayOfYear))
}

// Declination gives the solar declination δ in rad, about ±0.409, for a day of
// the year 1–366 (FAO-56 equation 24).
func Declination(dayOfYear int) float64 {
	return 0.409 * math.Sin(2*math.Pi/365*float64(dayOfYear)-1.39)
}

// SunsetAngle gives the hour angle of sunset ωs in rad, for latitudes −90 to 90
// (FAO-56 equation 25). The cosine is held to ±1, so a day without sunrise
// gives 0 and a day without sunset gives π.
func SunsetAngle(latitude unit.Degrees, dayOfYear int) float64 {
	// tan(±90°) is huge but finite in floating point; the clip below settles it.
	cosine := -math.Tan(radians(latitude)) * math.Tan(Declination(dayOfYear))
	return math.Acos(math.Max(-1, math.Min(1, cosine)))
}

// DayLength gives the daylight hours N, 0–24 (FAO-56 equation 34). It counts
// the sun's centre over a flat horizon without refraction: almanacs, which see
// the upper limb through bent rays, give 8 to 16 minutes more at middle
// latitudes.
func DayLength(latitude unit.Degrees, dayOfYear int) unit.Hours {
	return unit.Hours(24 / math.Pi * SunsetAngle(latitude, dayOfYear))
}

// SinElevation gives the sine of the sun's height at an hour of solar time
// (0–24, noon 12), negative below the horizon (FAO-56 equation 46 with ω
// counted from noon).
func SinElevation(latitude unit.Degrees, dayOfYear int, solarHour float64) float64 {
	return ArcOf(latitude, dayOfYear).Sin(solarHour)
}

// Arc is the sun's way over one place on one day.
type Arc struct{ level, swing float64 }

// ArcOf works out an arc once, for many hours.
func ArcOf(latitude unit.Degrees, dayOfYear int) Arc {
	phi, delta := radians(latitude), Declination(dayOfYear)
	return Arc{math.Sin(phi) * math.Sin(delta), math.Cos(phi) * math.Cos(delta)}
}

// Sin is [SinElevation] at an hour of the arc.
func (a Arc) Sin(solarHour float64) float64 {
	return a.level + a.swing*math.Cos(math.Pi/12*(solarHour-12))
}

// Extraterrestrial gives Ra, the sun's energy on a level plane above the
// atmosphere over a day, 0 to 48 MJ/m² (FAO-56 equation 21).
func Extraterrestrial(latitude unit.Degrees, dayOfYear int) unit.MegajoulesPerSquareMetre {
	phi, delta := radians(latitude), Declination(dayOfYear)
	ws := SunsetAngle(latitude, dayOfYear)
	ra := minutesPerDay / math.Pi * solarConstant * InverseRelativeDistance(dayOfYear) *
		(ws*math.Sin(phi)*math.Sin(delta) + math.Cos(phi)*math.Cos(delta)*math.Sin(ws))
	return unit.MegajoulesPerSquareMetre(math.Max(0, ra))
}

// EquationOfTime gives the seasonal correction of solar time Sc in hours,
// about −0.24 to 0.27 (FAO-56 equations 32 and 33). Solar noon falls at clock
// noon of the local meridian minus this.
func EquationOfTime(dayOfYear int) unit.Hours {
	b := 2 * math.Pi * float64(dayOfYear-81) / 364
	return unit.Hours(0.1645*math.Sin(2*b) - 0.1255*math.Cos(b) - 0.025*math.Sin(b))
}

// almanacHorizon is the height of the sun's centre when the upper limb shows
// through the refraction of the air: 50 minutes of arc below the horizon, the
// convention of the almanacs (US Naval Observatory).
const almanacHorizon = -50.0 / 60

// Rise gives sunrise and sunset in hours of universal time, sunset after
// sunrise and so perhaps beyond 24, by the almanacs' horizon. ok is false on a
// day without one of the two. FAO-56's declination is good to a quarter of a
// degree, which is two or three minutes at middle latitudes.
func Rise(latitude, longitude unit.Degrees, dayOfYear int) (sunrise, sunset unit.Hours, ok bool) {
	phi, delta := radians(latitude), Declination(dayOfYear)
	cosine := (math.Sin(radians(almanacHorizon)) - math.Sin(phi)*math.Sin(delta)) / (math.Cos(phi) * math.Cos(delta))
	if !(cosine >= -1 && cosine <= 1) {
		return 0, 0, false
	}
	noon := 12 - float64(longitude)/15 - float64(EquationOfTime(dayOfYear))
	half := 12 / math.Pi * math.Acos(cosine)
	return unit.Hours(noon - half), unit.Hours(noon + half), true
}
