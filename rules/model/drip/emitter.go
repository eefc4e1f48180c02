package drip

import (
	"math"

	"filmfurrow/rules/unit"
)

// Emitter is one outlet of a tape, by the law q = k·P^x that irrigation
// texts print for every outlet. An exponent of 0.5 is a turbulent emitter,
// 1 a laminar one, near 0 a pressure-compensating one; tapes lie mostly
// between 0.4 and 0.6 (classes from memory).
type Emitter struct {
	Rated    unit.LitresPerHour // flow at RatedAt, above 0
	RatedAt  unit.Kilopascals   // above 0; tapes are rated at 55.16 kPa (8 psi)
	Exponent float64            // 0–1
}

// Flow gives the flow at a pressure. At or below zero pressure nothing flows;
// between zero and 1 kPa, where no tape is measured, the law is replaced by a
// straight line to zero, so that flow has no jump for any exponent.
func (e Emitter) Flow(at unit.Kilopascals) unit.LitresPerHour {
	if at <= 0 {
		return 0
	}
	l := e.law()
	return unit.LitresPerHour(l.flow(float64(at) * unit.MetresOfWaterPerKPa))
}

// PressureFor gives the pressure at which the emitter gives a flow. It is
// +Inf for a fully compensating emitter (exponent 0).
func (e Emitter) PressureFor(flow unit.LitresPerHour) unit.Kilopascals {
	if flow <= 0 {
		return 0
	}
	if e.Exponent == 0 {
		return unit.Kilopascals(math.Inf(1))
	}
	return e.RatedAt * unit.Kilopascals(math.Pow(float64(flow/e.Rated), 1/e.Exponent))
}

// PressureRatioFor gives the lowest-to-highest pressure ratio that keeps a
// spread of flow (qmax − qmin)/qmax: (1 − v)^(1/x), exact algebra of the law.
func PressureRatioFor(flowSpread unit.Percent, exponent float64) float64 {
	return math.Pow(1-float64(flowSpread)/100, 1/exponent)
}

// law is an emitter made ready for the solver: litres an hour from metres of
// water. Square roots keep the usual turbulent emitter exact and quick.
type law struct {
	k, x  float64
	root  bool
	small float64 // slope of the straight part, L/h for 1 m
}

// straightBelow is the head in m (1 kPa) below which the law is a line.
const straightBelow = unit.MetresOfWaterPerKPa

func (e Emitter) law() law {
	head := float64(e.RatedAt) * unit.MetresOfWaterPerKPa
	k := float64(e.Rated) / math.Pow(head, e.Exponent)
	return law{k: k, x: e.Exponent, root: e.Exponent == 0.5, small: k * math.Pow(straightBelow, e.Exponent-1)}
}

func (l *law) flow(head float64) float64 {
	switch {
	case head <= 0:
		return 0
	case head < straightBelow:
		return l.small * head
	case l.root:
		return l.k * math.Sqrt(head)
	}
	return l.k * math.Pow(head, l.x)
}
