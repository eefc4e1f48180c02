package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// Sketch is the cheap answer: a damped sinusoid and the published offsets, no
// solver. Making one takes some tens of microseconds, reading a day some tens of
// nanoseconds; use it inside loops that ask many what-ifs, and [Compute] for
// what is shown. It knows neither wind nor evaporation: a test prints how far
// the two part.
type Sketch struct {
	mean, amplitude, phase float64                   // of the annual wave at the surface
	swing                  [weather.YearDays]float64 // half the day's range of air, K
	sun                    [weather.YearDays]float64 // Rs over 20 MJ/m²
	yearly, dailyDamping   float64                   // m
	contact                float64
	factor                 [Depths]float64
	laid                   unit.Date
	canopy                 Canopy
}

// swingFactor is how much wider than half the air's range the surface swings,
// under bare and covered ground: means of Compute's own runs at six places of
// its tests, May and June.
var swingFactor = [Films]float64{Bare: 1.43, Black: 1.33, Clear: 1.84, WhiteOnBlack: 0.94, SilverOnBlack: 0.90,
	InfraredTransmitting: 1.43, Red: 1.33, Blue: 1.33, BiodegradableBlack: 1.35, Paper: 0.94}

// Quick sketches the soil's warmth. The error is a [*weather.InputError].
func Quick(in Input) (Sketch, error) {
	if err := in.Check(); err != nil {
		return Sketch{}, err
	}
	year, err := weather.NewYear(in.Normals)
	if err != nil {
		return Sketch{}, err
	}
	year = year.In(in.Season)
	c, s, mean := harmonic(&year)
	bed, _ := in.layers()
	kappa := bed.conductivity / bed.capacity
	const day = 86400.0
	q := Sketch{
		// The surface's yearly mean lies above the air's: 2 K on moist ground,
		// 3.5 K where it dries (figures of the physics, April).
		mean: mean + 2, amplitude: math.Hypot(c, s), phase: math.Atan2(s, c),
		yearly: math.Sqrt(2 * kappa * weather.YearDays * day / (2 * math.Pi)), dailyDamping: math.Sqrt(2 * kappa * day / (2 * math.Pi)),
		contact: 1, laid: in.Laid, canopy: in.Canopy,
	}
	if in.Moisture == Dry {
		q.mean += 1.5
	}
	if in.gap(20) > 0.004 {
		q.contact = 0.4 // loose black film keeps two fifths of its effect
	}
	for d := range Depths {
		q.factor[d] = bedFactor(float64(in.BedTop), d) / bedFactor(referenceTop, d)
	}
	for d := range weather.YearDays {
		above := sky.Extraterrestrial(in.Normals.Latitude, d+1)
		solar := sky.FromTemperatureRange(year.Minimum[d], year.Maximum[d], in.SunFactor, above, sky.ClearSky(above, in.Normals.Height))
		q.sun[d] = float64(solar) / 20
		q.swing[d] = float64(year.Maximum[d]-year.Minimum[d]) / 2
	}
	return q, nil
}

// On gives the sketch of a day at 5 cm (FiveCentimetres) or 10 cm, °C to 0.01.
func (q *Sketch) On(f Film, depth int, date unit.Date) (mean, low, high unit.Celsius) {
	i := weather.Index(date)
	z := 0.05 * float64(depth+1)
	year := z / q.yearly
	level := q.mean + q.amplitude*math.Exp(-year)*math.Cos(2*math.Pi*float64(i)/weather.YearDays-q.phase-year)
	swing := q.swing[i] * math.Exp(-z/q.dailyDamping)
	if date < q.laid {
		f = Bare
	}
	open := 1 - q.canopy.shade(date)
	swing *= swingFactor[f] * (0.4 + 0.6*open)
	if f != Bare {
		offset := effects[f].at(depth) * q.sun[i] * q.factor[depth] * open
		if f != Clear {
			offset *= q.contact
		}
		level += offset
	}
	return unit.Celsius(round(level)), unit.Celsius(round(level - swing)), unit.Celsius(round(level + swing))
}

// FirstWarm gives the first day that ends three mornings in a row at or above a
// floor, looking at most so many days ahead.
func (q *Sketch) FirstWarm(f Film, depth int, floor unit.Celsius, from unit.Date, days unit.Days) (on unit.Date, ok bool) {
	run := 0
	for k := range days {
		_, low, _ := q.On(f, depth, from.Plus(k))
		if low < floor {
			run = 0
			continue
		}
		if run++; run == 3 {
			return from.Plus(k), true
		}
	}
	return 0, false
}
