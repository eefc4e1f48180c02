package sky

import (
	"math"

	"filmfurrow/rules/unit"
)

// WetBulbVentilated is the coefficient of a ventilated psychrometer at 5 m/s,
// per K (FAO-56 equation 16).
const WetBulbVentilated = 0.000662

// Pressure gives the air pressure at a height of −500 to 6,000 m (FAO-56
// equation 7).
func Pressure(height unit.Metres) unit.Kilopascals {
	return unit.Kilopascals(101.3 * math.Pow((293-0.0065*float64(height))/293, 5.26))
}

// Psychrometric gives the psychrometric constant γ in kPa/K (FAO-56 equation 8).
func Psychrometric(pressure unit.Kilopascals) float64 { return 0.665e-3 * float64(pressure) }

// Saturation gives the saturation vapour pressure e° over water at −60 to
// 60 °C (FAO-56 equation 11).
func Saturation(t unit.Celsius) unit.Kilopascals {
	return unit.Kilopascals(0.6108 * math.Exp(17.27*float64(t)/(float64(t)+237.3)))
}

// SaturationOfDay gives the mean saturation vapour pressure es of a day, the
// mean of those at its extremes (FAO-56 equation 12).
func SaturationOfDay(minimum, maximum unit.Celsius) unit.Kilopascals {
	return (Saturation(minimum) + Saturation(maximum)) / 2
}

// SaturationSlope gives Δ, the slope of the saturation curve in kPa/K (FAO-56
// equation 13).
func SaturationSlope(t unit.Celsius) float64 {
	d := float64(t) + 237.3
	return 4098 * float64(Saturation(t)) / (d * d)
}

// ActualFromDewPoint gives ea from the dew point (FAO-56 equation 14). With
// humidity missing, FAO-56 takes the day's minimum for the dew point (equation
// 48); [DryDewPoint] is its correction where the minimum stays above it.
func ActualFromDewPoint(dewPoint unit.Celsius) unit.Kilopascals { return Saturation(dewPoint) }

// DryDewPoint lowers the day's minimum by the K that the place's air is drier
// than saturated at dawn: 0 humid, 2–3 in an arid climate (FAO-56, annex 6).
func DryDewPoint(minimum unit.Celsius, drier unit.CelsiusDegrees) unit.Celsius {
	return minimum.Plus(-drier)
}

// ActualFromWetBulb gives ea from dry and wet bulb (FAO-56 equation 15).
func ActualFromWetBulb(dry, wet unit.Celsius, pressure unit.Kilopascals, coefficient float64) unit.Kilopascals {
	return Saturation(wet) - unit.Kilopascals(coefficient*float64(pressure)*float64(dry-wet))
}

// ActualFromHumidity gives ea from the day's extremes of temperature and of
// relative humidity, 0–100 % (FAO-56 equation 17).
func ActualFromHumidity(minimum, maximum unit.Celsius, lowest, highest unit.Percent) unit.Kilopascals {
	return (Saturation(minimum)*unit.Kilopascals(highest) + Saturation(maximum)*unit.Kilopascals(lowest)) / 200
}

// ActualFromMeanHumidity gives ea from the day's mean relative humidity, 0–100 %
// (FAO-56 equation 19).
func ActualFromMeanHumidity(minimum, maximum unit.Celsius, mean unit.Percent) unit.Kilopascals {
	return SaturationOfDay(minimum, maximum) * unit.Kilopascals(mean) / 100
}

// WindAtTwoMetres turns a wind measured at a height above 0.1 m into the wind
// at 2 m over grass (FAO-56 equation 47).
func WindAtTwoMetres(speed unit.MetresPerSecond, height unit.Metres) unit.MetresPerSecond {
	return speed * unit.MetresPerSecond(4.87/math.Log(67.8*float64(height)-5.42))
}
