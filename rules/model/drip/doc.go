// Package drip holds the hydraulics of drip tape under film: what an emitter
// gives at a pressure, what pipe friction takes, how the pressure runs along a
// line, how long a line may be, and what header, pump or tank feeds it.
//
// Everything is a plain function of its arguments, in SI. Pressure is gauge
// pressure in kPa; inside the line solver it is a head in metres of water.
// Lines are solved step by step, one emitter after another, from the far end
// to the inlet: no average outlet factor, and no guess about where the lowest
// pressure lies.
//
// Computed uniformity is the best that a new and clean line can do. Models
// predict more than fields show, because they hold no plugged emitter
// (comparison of uniformity measures, ASAE, systems of 1984–1992, abstract);
// evaluations of working systems usually find 65–80 % (Agricultural
// engineering handbook, CIGR series).
package drip
