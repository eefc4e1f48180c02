// Package unit holds the named SI types that the engine computes in, dates,
// phrases that carry quantities, and the one table that prints and reads them
// in metric or US units.
//
// Inside the engine every figure is SI. A level and a difference of
// temperature are two types, so that the offset of 32 can never be applied to
// a difference.
package unit

import "math"

// Celsius is a temperature level in °C.
type Celsius float64

// CelsiusDegrees is a difference between two temperatures, in K (= °C steps).
type CelsiusDegrees float64

// Minus gives the difference between two levels.
func (t Celsius) Minus(other Celsius) CelsiusDegrees { return CelsiusDegrees(t - other) }

// Plus moves a level by a difference.
func (t Celsius) Plus(step CelsiusDegrees) Celsius { return t + Celsius(step) }

// Metres is a length in m.
type Metres float64

// Micrometres is a film thickness in µm; 1 mil is 25.4 µm.
type Micrometres float64

// Millimetres is a depth of water in mm; 1 mm on 1 m² is 1 litre.
type Millimetres float64

// Litres is a volume of water in L.
type Litres float64

// LitresPerHour is a flow in L/h.
type LitresPerHour float64

// LitresPerHourPer100Metres is the flow class of drip tape, L/h for 100 m.
type LitresPerHourPer100Metres float64

// Kilopascals is a pressure in kPa; 1 psi is 6.894757 kPa.
type Kilopascals float64

// Kilowatts is a power in kW.
type Kilowatts float64

// Kilograms is a mass in kg.
type Kilograms float64

// DecisiemensPerMetre is the electrical conductivity of water or of soil
// paste, in dS/m.
type DecisiemensPerMetre float64

// Percent is a share in hundredths, 0–100 unless the field says otherwise.
type Percent float64

// MetresPerSecond is a speed in m/s.
type MetresPerSecond float64

// MegajoulesPerSquareMetre is a daily sum of radiation in MJ/m².
type MegajoulesPerSquareMetre float64

// Degrees is an angle on the globe in degrees, north and east positive.
type Degrees float64

// Hours is a length of time in h.
type Hours float64

// Days is a whole number of days.
type Days int

// Abs is the number of days without its sign.
func (d Days) Abs() Days { return max(d, -d) }

// Exact factors, by definition of the inch, the pound, the US gallon and the
// standard acceleration of gravity (NIST Special Publication 811, appendix B).
const (
	MetresPerInch       = 0.0254
	MetresPerFoot       = 0.3048
	MetresPerMile       = 1609.344
	MicrometresPerMil   = 25.4
	LitresPerGallon     = 3.785411784
	KilopascalsPerPSI   = 6.894757293168361
	KilogramsPerPound   = 0.45359237
	KilowattsPerHP      = 0.7456998715822702
	MetresOfWaterPerKPa = 0.10197162129779283 // at 1,000 kg/m³
	SquareMetresPerAcre = 4046.8564224

	GramsPerSquareYardOunce = 28.349523125 / 0.83612736 // 1 oz on a square yard, in g/m²
)

// FromFahrenheit converts a level.
func FromFahrenheit(f float64) Celsius { return Celsius((f - 32) / 1.8) }

// FromFahrenheitDegrees converts a difference.
func FromFahrenheitDegrees(f float64) CelsiusDegrees { return CelsiusDegrees(f / 1.8) }

// FromInches converts a length.
func FromInches(in float64) Metres { return Metres(dusted(in * MetresPerInch)) }

// FromFeet converts a length.
func FromFeet(ft float64) Metres { return Metres(dusted(ft * MetresPerFoot)) }

// dusted takes the last bits off a product, so that 6 in are 0.1524 m and no less.
func dusted(v float64) float64 { return math.Round(v*1e9) / 1e9 }

// FromMil converts a film thickness.
func FromMil(mil float64) Micrometres { return Micrometres(mil * MicrometresPerMil) }

// FromGallonsPerMinute converts a flow.
func FromGallonsPerMinute(gpm float64) LitresPerHour {
	return LitresPerHour(gpm * LitresPerGallon * 60)
}

// FromGallonsPerMinutePer100Feet converts a tape flow class.
func FromGallonsPerMinutePer100Feet(gpm float64) LitresPerHourPer100Metres {
	return LitresPerHourPer100Metres(gpm * LitresPerGallon * 60 / MetresPerFoot)
}

// FromPSI converts a pressure.
func FromPSI(psi float64) Kilopascals { return Kilopascals(psi * KilopascalsPerPSI) }

// FromHorsepower converts a power.
func FromHorsepower(hp float64) Kilowatts { return Kilowatts(hp * KilowattsPerHP) }
