package drip

import (
	"math"

	"filmfurrow/rules/unit"
)

// Law names a friction law.
type Law uint8

const (
	// SmoothPipe is the default: laminar flow (f = 64/Re) below a Reynolds
	// number of 2,000, Blasius (f = 0.3164·Re^−0.25) above 3,000 and a straight
	// line between. Above Re 30,000 it is the larger of Blasius and the smooth
	// Swamee–Jain law, which crosses it near 80,000.
	SmoothPipe Law = iota
	// HazenWilliams is the older law of waterworks. Its usual C of 150 flatters
	// small bores: see [HazenWilliamsC].
	HazenWilliams
	// RoughPipe is Darcy–Weisbach with a wall roughness: laminar, Dunlop's cubic
	// between Re 2,000 and 4,000, Swamee–Jain above, as in the EPANET manual.
	RoughPipe
)

// Friction chooses the law and its parameters. The zero value is a smooth
// pipe with water at 60 °F.
type Friction struct {
	Law       Law
	C         float64     // Hazen–Williams only; 0 takes the C of the bore
	Roughness unit.Metres // rough pipe only
	Viscosity float64     // kinematic, m²/s; 0 takes ViscosityAt60F
}

// ViscosityAt60F is the kinematic viscosity of water at 60 °F (15.6 °C) in
// m²/s: 1.217e-5 ft²/s (from memory). Colder water is thicker and loses more.
const ViscosityAt60F = 1.217e-5 * unit.MetresPerFoot * unit.MetresPerFoot

// gravity is the standard acceleration in m/s².
const gravity = 9.80665

// hazenWilliamsSI turns 4.727·L·Q^1.852/(C^1.852·d^4.871) from feet and cubic
// feet a second, the form that EPANET uses, into metres and m³/s. The rounded
// 10.67 of many texts is 0.04 % more.
var hazenWilliamsSI = 4.727 * math.Pow(unit.MetresPerFoot, 4.871-3*1.852)

// HazenWilliamsC gives the C that the literature uses for polyethylene and
// PVC of a bore: 130 up to 5/8 in, 140 to 1¼ in, 150 from 1½ in (from memory;
// at 5/8 in, smooth-pipe friction agrees with a C of 130 to 134).
func HazenWilliamsC(bore unit.Metres) float64 {
	switch {
	case bore < 0.018:
		return 130
	case bore < 0.035:
		return 140
	}
	return 150
}

// gradient is a friction law made ready for one bore: metres of head lost on a
// metre of pipe, from a flow in L/h.
type gradient struct {
	law      Law
	reynolds float64 // Re = reynolds · flow
	kinetic  float64 // v²/(2·g·d) = kinetic · flow²
	laminar  float64 // laminar head = laminar · flow, exact for the smallest flow
	power    float64 // Hazen–Williams head = power · flow^1.852
	relative float64 // roughness ÷ 3.7 bores
}

func (f Friction) gradient(bore unit.Metres) gradient {
	viscosity := f.Viscosity
	if viscosity == 0 {
		viscosity = ViscosityAt60F
	}
	c := f.C
	if c == 0 {
		c = HazenWilliamsC(bore)
	}
	d := float64(bore)
	speed := 1 / (3.6e6 * area(bore)) // m/s for 1 L/h
	reynolds, kinetic := speed*d/viscosity, speed*speed/(2*gravity*d)
	return gradient{
		law:      f.Law,
		reynolds: reynolds,
		kinetic:  kinetic,
		laminar:  64 * kinetic / reynolds,
		power:    hazenWilliamsSI / math.Pow(3.6e6*c, 1.852) / math.Pow(d, 4.871),
		relative: float64(f.Roughness) / d / 3.7,
	}
}

func (g *gradient) at(flow float64) float64 {
	if flow <= 0 {
		return 0
	}
	if g.law == HazenWilliams {
		return g.power * math.Pow(flow, 1.852)
	}
	re := g.reynolds * flow
	switch {
	case re < laminarBelow:
		return g.laminar * flow
	case g.law == RoughPipe:
		return roughFactor(re, g.relative) * g.kinetic * flow * flow
	}
	return smoothFactor(re) * g.kinetic * flow * flow
}

// laminarBelow is the Reynolds number up to which f = 64/Re.
const laminarBelow = 2000

// Between laminar and turbulent flow the smooth factor is a straight line up to
// this Reynolds number.
const bridgeTo = 3000

var atBridge = blasius(bridgeTo)

// smoothFactor holds from laminarBelow up.
func smoothFactor(re float64) float64 {
	switch {
	case re < bridgeTo:
		const laminar = 64.0 / laminarBelow
		return laminar + (atBridge-laminar)*(re-laminarBelow)/(bridgeTo-laminarBelow)
	case re < 30000:
		return blasius(re)
	}
	return max(blasius(re), swameeJain(re, 0))
}

func blasius(re float64) float64 { return 0.3164 / math.Sqrt(math.Sqrt(re)) }

func swameeJain(re, relative float64) float64 {
	y := -2 * math.Log10(relative+5.74/math.Pow(re, 0.9))
	return 1 / (y * y)
}

// roughFactor holds from laminarBelow up. It follows the appendix on head loss of the EPANET 2 manual (US
// EPA); between laminar and turbulent flow it is the cubic of Dunlop (1991).
func roughFactor(re, relative float64) float64 {
	if re >= 4000 {
		return swameeJain(re, relative)
	}
	y2 := relative + 5.74/math.Pow(4000, 0.9)
	y3 := -2 * math.Log10(y2)
	fa := 1 / (y3 * y3)
	fb := fa * (2 - 0.00514215/(y2*y3))
	r := re / 2000
	x1 := 7*fa - fb
	x2 := 0.128 - 17*fa + 2.5*fb
	x3 := -0.128 + 13*fa - 2*fb
	x4 := 0.032 - 3*fa + 0.5*fb
	return x1 + r*(x2+r*(x3+r*x4))
}

func area(bore unit.Metres) float64 { return math.Pi / 4 * float64(bore) * float64(bore) }

// Pipe is a plain pipe without outlets.
type Pipe struct {
	Length, Bore unit.Metres // both above 0
	Friction     Friction
}

// Loss gives the head that friction takes at a flow, in metres of water.
func (p Pipe) Loss(flow unit.LitresPerHour) unit.Metres {
	g := p.Friction.gradient(p.Bore)
	return unit.Metres(g.at(float64(flow)) * float64(p.Length))
}

// Velocity gives the mean speed of the water in a bore.
func Velocity(flow unit.LitresPerHour, bore unit.Metres) unit.MetresPerSecond {
	return unit.MetresPerSecond(float64(flow) / 3.6e6 / area(bore))
}

// ChristiansenFactor is the share of a plain pipe's loss that a pipe with n
// equal outlets has, the first a full spacing from the inlet, for a loss that
// grows with flow to the power m: 1/(m+1) + 1/(2n) + √(m−1)/(6n²), and never
// above 1. It is here to check long-hand sums against: the solver does not
// use it, because outlets do not give equal flow along a line.
func ChristiansenFactor(outlets int, m float64) float64 {
	n := float64(outlets)
	return min(1, 1/(m+1)+1/(2*n)+math.Sqrt(m-1)/(6*n*n))
}
