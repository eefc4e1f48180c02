package heat

import "filmfurrow/rules/unit"

// Effect is the published difference between the daily mean under a film and
// under bare ground, in K at 5 cm, at the reference state (a New England
// spring), with its range. The tables do not say the hour; we take them for
// daily means.
type Effect struct {
	Value, Low, High unit.CelsiusDegrees
	Deep             float64 // the effect at 10 cm, as a share of that at 5 cm
	Graded           bool    // a number was seen in a source; else it is our reading of an ordering
	Source           string
}

const (
	newEngland = "New England Vegetable Management Guide, Plastic mulch films, table 14"
	// University of Massachusetts text quoting Pennsylvania research: black
	// +5 °F at 2 in, +3 °F at 4 in. The same over 5 to 15 cm: J. Amer. Soc. Hort.
	// Sci. 120(5):848, 1995.
	deepRatio = 0.6
	// From memory: Penn State plasticulture texts, clear +8 to +14 °F at 2 in and
	// +6 to +9 °F at 4 in.
	deepClear = 0.68
	likeBlack = "our reading: warms as black does (HortTechnology 20(1):224, 2010: black, blue and red above silver and white)"
)

// effects: °F of the sources turned into K.
var effects = [Films]Effect{
	Black:                {2.2, 1.7, 2.8, deepRatio, true, newEngland + ": +3 to +5 °F"},
	Clear:                {6.1, 4.4, 7.8, deepClear, true, newEngland + ": +8 to +14 °F"},
	WhiteOnBlack:         {-1.1, -2.2, 0, deepRatio, true, newEngland + ": −2 °F"},
	SilverOnBlack:        {0, -1.1, 3, deepRatio, true, newEngland + ": −2 °F, against +3 °C or more in a tomato trial of 2010; the sources disagree, so the middle is ours"},
	InfraredTransmitting: {2.8, 2.2, 3.3, deepRatio, true, newEngland + ": +4 to +6 °F"},
	Red:                  {2.2, 1.1, 3.3, deepRatio, false, likeBlack},
	Blue:                 {2.2, 1.1, 3.3, deepRatio, false, likeBlack},
	BiodegradableBlack:   {1.4, 0.7, 2.2, deepRatio, true, "Agronomy 10:1618, 2020: soil 4.5 % (of °C) cooler than under black polyethylene, taken at 18 °C"},
	Paper:                {-0.3, -1.5, 1, deepRatio, false, "J. Sustainable Agric. 13(1):55, 1998: kraft and black paper slightly below bare in the afternoon"},
}

// at gives the effect at 5 cm (0) or 10 cm (1).
func (e *Effect) at(depth int) float64 {
	if depth == FiveCentimetres {
		return float64(e.Value)
	}
	return float64(e.Value) * e.Deep
}

// carried brings the published effect to a place and day. black and film are
// the model's differences from bare ground there, of the day's mean, lowest or
// highest; the result is the difference to add to bare ground.
//
// Black travels by the ratio of the model's difference here to that at the
// reference state. Every other film travels by its distance from black, in the
// same way: so films keep their order where the model has them in order, and no
// film's own difference, which may be near zero, is ever divided by.
// Biodegradable film keeps its published share of black, since the model knows
// no reason for it to be cooler (it is thinner and tears).
func carried(f Film, depth int, black, film float64) float64 {
	reference := &referenceEffect
	blackHere := effects[Black].at(depth) * black / reference[Black][depth]
	switch f {
	case Bare:
		return 0
	case Black:
		return blackHere
	case BiodegradableBlack:
		return blackHere * effects[f].at(depth) / effects[Black].at(depth)
	}
	published := effects[f].at(depth) - effects[Black].at(depth)
	modelled := reference[f][depth] - reference[Black][depth]
	return blackHere + published/modelled*(film-black)
}

// bedFactor is how much of an endless film's effect remains in the middle of a
// bed, at 5 and 10 cm, by width of the film's top in m: a two-dimensional run of
// the same physics at 1.8 m centres (ours; edges heat less and narrow film less
// than wide: Soil Science, February 1981, 82–87).
func bedFactor(width float64, depth int) float64 {
	widths := [...]float64{0.30, 0.61, 0.76, 0.91, 1.80}
	factors := [2][5]float64{{0.62, 0.79, 0.81, 0.87, 1}, {0.50, 0.68, 0.73, 0.81, 1}}
	f := &factors[depth]
	if width >= widths[4] {
		return 1
	}
	for i := 1; i < len(widths); i++ {
		if width <= widths[i] {
			share := (width - widths[i-1]) / (widths[i] - widths[i-1])
			return f[i-1] + share*(f[i]-f[i-1])
		}
	}
	return 1
}

// referenceTop is the bed that published effects belong to: 30 in.
const referenceTop = 0.76
