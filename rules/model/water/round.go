package water

import "math"

// Declared steps of the figures of a plan. Exp and Pow differ in their last
// bits between native and WebAssembly; rounding to these steps makes both
// print and decide the same.
const (
	stepDepth    = 0.01   // mm
	stepVolume   = 0.1    // L
	stepFlow     = 0.1    // L/h
	stepOutlet   = 0.0001 // L/h of one outlet
	stepPressure = 0.01   // kPa
	stepLength   = 0.01   // m
	stepHead     = 0.001  // m of water
	stepMinutes  = 0.1
	stepHours    = 0.01
	stepShare    = 0.01 // %
	stepFactor   = 0.001
	stepPower    = 0.001 // kW
	stepMass     = 0.001 // kg
	stepSpeed    = 0.001 // m/s
)

// round gives the nearest multiple of a step. Multiplying by the whole-number
// inverse keeps 0.3 printed as 0.3.
func round[T ~float64](v T, step float64) T {
	inverse := math.Round(1 / step)
	return T(math.Round(float64(v)*inverse) / inverse)
}
