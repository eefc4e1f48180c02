package unit

import (
	"math"
)

// Thousandth rounds to a thousandth, the step to which facts without a unit of
// their own are kept.
func Thousandth(v float64) float64 { return math.Round(v*1000) / 1000 }

// Hundredth rounds a temperature to 0.01 °C, the step to which facts keep it.
func Hundredth(t float64) Celsius { return Celsius(math.Round(t*100) / 100) }

// TenthMillimetre rounds a length in metres to the step of the tape measure that
// anybody would trust: 0.1 mm.
func TenthMillimetre(v float64) Metres { return Metres(math.Round(v*10000) / 10000) }
