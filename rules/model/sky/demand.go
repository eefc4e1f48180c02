package sky

import (
	"math"

	"filmfurrow/rules/unit"
)

// DefaultWind is the wind at 2 m where none is known: the mean of over 2,000
// stations (FAO-56 chapter 3, "Missing wind speed data").
const DefaultWind unit.MetresPerSecond = 2

// Weather is one day (or the mean day of a month) as the evapotranspiration
// formulas need it. What is missing is estimated as FAO-56 chapter 3 advises.
type Weather struct {
	Minimum, Maximum unit.Celsius
	Latitude         unit.Degrees        // −90 to 90
	Height           unit.Metres         // −500 to 6,000
	DayOfYear        int                 // 1–366
	Coefficient      float64             // kRs for a missing sun; 0 means InlandCoefficient
	Drier            unit.CelsiusDegrees // dew point below the minimum, for a missing humidity
	SoilHeat         unit.MegajoulesPerSquareMetre

	Sunshine unit.Optional[unit.Hours]
	Solar    unit.Optional[unit.MegajoulesPerSquareMetre]
	Actual   unit.Optional[unit.Kilopascals]     // actual vapour pressure
	Wind     unit.Optional[unit.MetresPerSecond] // at 2 m
}

// Demand is the reference evapotranspiration of a day with the steps that lead
// to it, so that a reader can follow them.
type Demand struct {
	Extraterrestrial, ClearSky, Solar  unit.MegajoulesPerSquareMetre
	NetShortwave, NetLongwave, NetGain unit.MegajoulesPerSquareMetre
	DayLength                          unit.Hours
	Actual, Saturation                 unit.Kilopascals
	Wind                               unit.MetresPerSecond
	PenmanMonteith, Hargreaves         unit.Millimetres // mm per day, never negative
}

// DemandOf computes the reference evapotranspiration of clipped grass by
// Penman-Monteith (FAO-56 equation 6) and by Hargreaves (equation 52). A
// missing sun comes from the sunshine hours or else the temperature range, a
// missing humidity from the minimum temperature, a missing wind is
// [DefaultWind].
func DemandOf(w Weather) Demand {
	var d Demand
	mean := (w.Minimum + w.Maximum) / 2
	d.Extraterrestrial = Extraterrestrial(w.Latitude, w.DayOfYear)
	d.DayLength = DayLength(w.Latitude, w.DayOfYear)
	d.ClearSky = ClearSky(d.Extraterrestrial, w.Height)
	d.Solar = solarOf(w, d)
	d.Actual = ActualFromDewPoint(DryDewPoint(w.Minimum, w.Drier))
	if w.Actual.Given {
		d.Actual = w.Actual.Value
	}
	d.Wind = DefaultWind
	if w.Wind.Given {
		d.Wind = w.Wind.Value
	}
	d.Saturation = SaturationOfDay(w.Minimum, w.Maximum)
	d.NetShortwave = NetShortwave(d.Solar, ReferenceAlbedo)
	d.NetLongwave = NetLongwave(w.Minimum, w.Maximum, d.Actual, d.Solar, d.ClearSky)
	d.NetGain = d.NetShortwave - d.NetLongwave

	slope := SaturationSlope(mean)
	gamma := Psychrometric(Pressure(w.Height))
	wind := float64(d.Wind)
	heat := 0.408 * slope * float64(d.NetGain-w.SoilHeat)
	air := gamma * 900 / (float64(mean) + 273) * wind * float64(d.Saturation-d.Actual)
	d.PenmanMonteith = unit.Millimetres(math.Max(0, (heat+air)/(slope+gamma*(1+0.34*wind))))
	d.Hargreaves = Hargreaves(w.Minimum, w.Maximum, mean, d.Extraterrestrial)
	return d
}

func solarOf(w Weather, d Demand) unit.MegajoulesPerSquareMetre {
	switch {
	case w.Solar.Given:
		return w.Solar.Value
	case w.Sunshine.Given:
		return FromSunshine(w.Sunshine.Value, d.DayLength, d.Extraterrestrial)
	}
	coefficient := w.Coefficient
	if coefficient == 0 {
		coefficient = InlandCoefficient
	}
	return FromTemperatureRange(w.Minimum, w.Maximum, coefficient, d.Extraterrestrial, d.ClearSky)
}

// Hargreaves gives the reference evapotranspiration in mm per day from
// temperatures alone (FAO-56 equation 52), never negative. It reads low above
// 3 m/s of wind and high in humid air.
func Hargreaves(minimum, maximum, mean unit.Celsius, extraterrestrial unit.MegajoulesPerSquareMetre) unit.Millimetres {
	span := math.Max(0, float64(maximum-minimum))
	water := float64(EvaporationOf(extraterrestrial))
	return unit.Millimetres(math.Max(0, 0.0023*(float64(mean)+17.8)*math.Sqrt(span)*water))
}
