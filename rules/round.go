package rules

import (
	"math"

	"filmfurrow/rules/unit"
)

// round3 rounds to a thousandth, the step to which facts without a unit of
// their own are kept.
func round3(v float64) float64 { return math.Round(v*1000) / 1000 }

// hundredth rounds a temperature to 0.01 °C, the step to which facts keep it.
func hundredth(t float64) unit.Celsius { return unit.Celsius(math.Round(t*100) / 100) }

// tenthMillimetre rounds a length in metres to the step of the tape measure that
// anybody would trust: 0.1 mm.
func tenthMillimetre(v float64) unit.Metres { return unit.Metres(math.Round(v*10000) / 10000) }
