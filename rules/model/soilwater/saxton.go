package soilwater

import (
	"math"

	"filmfurrow/rules/unit"
)

// Water holds the water contents of a soil as shares of its volume, and how
// fast it takes water in when full.
type Water struct {
	WiltingPoint  float64 // at 1,500 kPa
	FieldCapacity float64 // at 33 kPa
	Saturation    float64
	Available     float64 // field capacity less wilting point
	Conductivity  float64 // saturated, mm/h
}

// UsualOrganicMatter is taken where none is given: the 2.5 % by mass of the
// class table of Saxton and Rawls.
const UsualOrganicMatter unit.Percent = 2.5

// Of gives the water of a soil from its sand and clay (shares of the mineral
// soil, 0–1) and its organic matter in percent of mass.
//
// Equations of K. E. Saxton and W. J. Rawls, "Soil water characteristic
// estimates by texture and organic matter for hydrologic solutions", Soil
// Science Society of America Journal 70:1569–1578 (2006): 1, 2, 3, 5 for the
// contents, 16 and 18 for conductivity. They were fitted to soils of at most
// 60 % clay and 8 % organic matter (limits from memory). One public copy has
// 1.238 where the paper has 1.283 in the field-capacity equation; the class
// table comes out only with 1.283.
func Of(sand, clay float64, organic unit.Percent) Water {
	s, c, o := sand, clay, float64(organic)
	t := -0.024*s + 0.487*c + 0.006*o + 0.005*s*o - 0.013*c*o + 0.068*s*c + 0.031
	wilting := t + (0.14*t - 0.02)
	t = -0.251*s + 0.195*c + 0.011*o + 0.006*s*o - 0.027*c*o + 0.452*s*c + 0.299
	capacity := t + (1.283*t*t - 0.374*t - 0.015)
	t = 0.278*s + 0.034*c + 0.022*o - 0.018*s*o - 0.027*c*o - 0.584*s*c + 0.078
	saturation := capacity + t + (0.636*t - 0.107) - 0.097*s + 0.043
	w := Water{WiltingPoint: wilting, FieldCapacity: capacity, Saturation: saturation, Available: capacity - wilting}
	if wilting > 0 && capacity > wilting && saturation > capacity {
		lambda := (math.Log(capacity) - math.Log(wilting)) / (math.Log(1500) - math.Log(33))
		w.Conductivity = 1930 * math.Pow(saturation-capacity, 3-lambda)
	}
	return w
}

// Of gives the water of a class at its class point.
func (c *Class) Of(organic unit.Percent) Water { return Of(c.Sand, c.Clay, organic) }
