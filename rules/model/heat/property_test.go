package heat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// RandomClimate draws a possible climate of 25–50° north.
func RandomClimate(t *rapid.T) weather.Normals {
	latitude := rapid.Float64Range(25, 50).Draw(t, "latitude")
	level := 38 - 0.6*latitude + rapid.Float64Range(-4, 4).Draw(t, "warmer")
	swing := 0.25*latitude + rapid.Float64Range(-2, 3).Draw(t, "swing")
	span := rapid.Float64Range(9, 16).Draw(t, "range")
	n := weather.Normals{Latitude: unit.Degrees(latitude), Height: unit.Metres(rapid.Float64Range(0, 1200).Draw(t, "height"))}
	for m := range 12 {
		low := level - span/2 - swing*math.Cos(float64(m)*math.Pi/6)
		n.Minimum[m], n.Maximum[m] = unit.Celsius(low), unit.Celsius(low+span)
	}
	return n
}

// Warmer bare ground, smaller effect, in a whole climate that is moved warmer,
// sun and temperature range as they were: film laid on 1 April, mean of 15 April
// to 10 June.
//
// It holds where bare ground has begun to dry: what it gives off is then bound by
// the water and not by the warmth, and a warmer film only loses more. Where its
// skin stays wet (cool or cloudy climates) bare ground gives off more when warmer
// and is cooled by it, so that black film may gain, by about a tenth of a degree
// for each degree: the physics asks for that, and no published row is from such a
// place. White-on-black, whose effect is near zero, hardly changes.
func TestEffectFallsInAWarmerClimate(t *testing.T) {
	const drySkin = 130 // s/m, on every day; a wet skin has 60
	films := []int{Clear, InfraredTransmitting, Black, WhiteOnBlack}
	effects := func(in Input) (change [4]float64, skin float64) {
		r, err := NewRunner(in, referenced)
		require.NoError(t, err)
		skin = usualNature.mostResistance
		for !r.Step(1) {
			if r.day >= 14 {
				skin = min(skin, r.resistance)
			}
		}
		for i, f := range films {
			change[i], _ = r.between(f, Bare, FiveCentimetres, mean, in.Start.Plus(14), in.Start.Plus(in.Days))
		}
		return change, skin
	}
	dried, wet, least, most := 0, 0, math.Inf(-1), math.Inf(-1)
	rapid.Check(t, func(t *rapid.T) {
		in := UsualLoam(RandomClimate(t), unit.On(2027, 4, 1), 71)
		in.Lie, in.Soil = Embossed, AnySoil(rapid.IntRange(0, len(table.Soils)-1).Draw(t, "texture"))
		degrees := unit.Celsius(rapid.Float64Range(2, 6).Draw(t, "degrees"))
		before, skin := effects(in)
		for m := range 12 {
			in.Normals.Minimum[m] += degrees
			in.Normals.Maximum[m] += degrees
		}
		after, _ := effects(in)
		for i, f := range films {
			gain := (after[i] - before[i]) / float64(degrees)
			switch {
			case skin < drySkin:
				most = max(most, gain)
				if gain > 0.2 {
					t.Fatalf("%s gains %.3f K a degree on wet ground (skin %.0f s/m)", NameOf(f), gain, skin)
				}
			case f == WhiteOnBlack:
				if math.Abs(gain) > 0.03 {
					t.Fatalf("%s changes by %.3f K a degree (skin %.0f s/m)", NameOf(f), gain, skin)
				}
			default:
				least = max(least, gain)
				if gain >= 0 {
					t.Fatalf("%s gains %.3f K a degree where bare ground dries (skin %.0f s/m)", NameOf(f), gain, skin)
				}
			}
		}
		if skin < drySkin {
			wet++
		} else {
			dried++
		}
	})
	t.Logf("a degree warmer: in %d climates whose bare ground dries every film gains less, at best %+.3f K; in %d whose ground stays wet it gains at most %+.3f K more", dried, least, wet, most)
	if !testing.Short() { // which draws five in all
		assert.Greater(t, dried, 5)
	}
}

// Nothing at 5 cm above the solarization records (1.27 and 1.28, see
// TestBelowSolarization) in any summer up to that of the hottest fields, Arizona's
// (a mean July maximum of 42.4 °C), in any soil, wet or dry, however film lies.
func TestBelowSolarizationInAnyClimate(t *testing.T) {
	top := unit.Celsius(0)
	rapid.Check(t, func(t *rapid.T) {
		n := weather.Normals{Latitude: unit.Degrees(rapid.Float64Range(0, 50).Draw(t, "latitude"))}
		hottest, span := rapid.Float64Range(25, 42.4).Draw(t, "July maximum"), rapid.Float64Range(7, 18).Draw(t, "range")
		swing := rapid.Float64Range(1, 15).Draw(t, "swing")
		for m := range 12 {
			high := hottest - swing*(1+math.Cos(float64(m)*math.Pi/6))
			n.Minimum[m], n.Maximum[m] = unit.Celsius(high-span), unit.Celsius(high)
		}
		in := UsualLoam(n, unit.On(2027, 6, 1), 75)
		in.Soil = AnySoil(rapid.IntRange(0, len(table.Soils)-1).Draw(t, "texture"))
		in.Moisture = Moisture(rapid.IntRange(0, int(moistures)-1).Draw(t, "moisture"))
		in.Lie, in.Tilth = Lie(rapid.IntRange(0, int(lies)-1).Draw(t, "lie")), Tilth(rapid.IntRange(0, int(tilths)-1).Draw(t, "tilth"))
		s, err := Compute(in, referenced)
		if err != nil {
			t.Fatal(err)
		}
		for f := range Films {
			for d := range s.Days {
				high := s.Soil[f][FiveCentimetres].High[d]
				top = max(top, high)
				if high > 63.4 {
					t.Fatalf("%s on day %d: %.1f °C", NameOf(f), d, high)
				}
			}
		}
	})
	t.Logf("1.27, 1.28 hottest at 5 cm: %.1f °C", top)
}
