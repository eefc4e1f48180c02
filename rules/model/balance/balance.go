// Package balance keeps the books of the water in the wetted zone of the roots, day by
// day, after FAO Irrigation and Drainage Paper 56 (1998), chapter 8: what is missing to
// field capacity grows by what the crop takes and falls by what reaches the roots; what
// is too much drains; from some depletion on the crop takes less.
//
// All depths are millimetres over the wetted strip, not over the field: a metre of bed
// that is wetted 0.6 m wide and loses 3 L has lost 5 mm.
package balance

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/unit"
)

// Zone is the soil that the roots drink from.
type Zone struct {
	// Holds is the water between wilting point and field capacity over the depth of the
	// roots (FAO-56 equation 82), 1–500 mm. Nothing holds in a zone of 0.
	Holds unit.Millimetres
	// Fraction is the share of it that may be used without stress at a crop use of 5 mm a
	// day (FAO-56 table 22), 0.1–0.8.
	Fraction float64
	// Fixed keeps the fraction whatever the day's use; otherwise it moves by
	// [soilwater.DepletionOn].
	Fixed bool
}

// Day is what happens to the zone in a day.
type Day struct {
	Use   unit.Millimetres // crop evapotranspiration on the ground drawn on, by which the fraction moves
	Need  unit.Millimetres // the same water, as a depth over the zone
	Water unit.Millimetres // irrigation that reaches the zone, losses taken off
	Rain  unit.Millimetres // rain that reaches it
	// Early says that water and rain come before the crop drinks, in one go, so that what
	// passes field capacity is lost before the day's use (the table of FAO-56 example 38).
	// Otherwise they come in runs over the day, and only what is left of them in the
	// evening drains (the checkbook method).
	Early bool
}

// Step is what became of a day. Each is a depletion or a flow, 0 or more:
// Begin + Used + Drained = End + Water + Rain.
type Step struct {
	Begin, End    unit.Millimetres // missing to field capacity, morning and evening
	Used, Drained unit.Millimetres
	Kept          float64 // share of the need that the crop got (Ks where the water lasts), 0–1
}

// Ready is the water that may be used without stress on a day of such use (FAO-56
// equation 83).
func (z Zone) Ready(use unit.Millimetres) unit.Millimetres {
	p := z.Fraction
	if !z.Fixed {
		p = soilwater.DepletionOn(p, use)
	}
	return unit.Millimetres(p) * z.Holds
}

// Stress is the share of its use that a crop keeps up at a depletion (FAO-56 equation
// 84): 1 up to what is ready, falling to 0 where all is gone.
func (z Zone) Stress(depletion, use unit.Millimetres) float64 {
	ready := z.Ready(use)
	if depletion <= ready {
		return 1
	}
	if z.Holds <= ready {
		return 0
	}
	return min(max(float64((z.Holds-depletion)/(z.Holds-ready)), 0), 1)
}

// On works a day out that begins at a depletion of 0 to [Zone.Holds].
func (z Zone) On(begin unit.Millimetres, d Day) Step {
	comes := d.Water + d.Rain
	s := Step{Begin: begin, Kept: z.Stress(max(0, begin-comes), d.Use)}
	if d.Early {
		s.Drained = max(0, comes-begin)
		begin = max(0, begin-comes)
		comes = 0
	}
	want := unit.Millimetres(s.Kept) * d.Need
	s.Used = max(0, min(want, z.Holds-begin+comes))
	if d.Need > 0 {
		s.Kept = float64(s.Used / d.Need)
	}
	end := begin + s.Used - comes
	if end < 0 {
		s.Drained, end = -end, 0
	}
	s.End = end
	return s
}

// Lasts tells for how many of the days that follow the water for roots lasts, without a
// drop, until the crop begins to feel it: whole days and the part of the last one. It is
// false where it outlasts all of them.
func (z Zone) Lasts(begin unit.Millimetres, days []Day) (float64, bool) {
	for i, d := range days {
		left := z.Ready(d.Use) - begin
		if left < d.Need {
			return float64(i) + max(0, float64(left/d.Need)), true
		}
		begin += d.Need
	}
	return float64(len(days)), false
}
