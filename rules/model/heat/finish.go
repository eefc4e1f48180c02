package heat

import (
	"math"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// finish carries the published effects to this place, moves the curves by the
// probe, and rounds.
func (r *Runner) finish() {
	// The means of thirty days scatter more than the sixty of a season's margin.
	const month = math.Sqrt2
	s := &r.season
	missed := &ModelError
	if !r.in.Rain.Given {
		missed = &ErrorWithoutRain
	}
	for d := range Depths {
		factor := bedFactor(float64(r.in.BedTop), d) / bedFactor(referenceTop, d)
		open := &r.pure[Bare][d]
		s.Soil[Bare][d] = *open
		for f := Bare + 1; f < len(r.columns); f++ {
			for day := range s.Days {
				r.carryDay(f, d, day, factor)
			}
		}
	}
	for day := range s.Days {
		index := weather.Index(s.Start.Plus(unit.Days(day)))
		air := float64(r.year.SpreadMinimum[index]+r.year.SpreadMaximum[index]) / 2
		for d := range Depths {
			s.Spread[d][day] = unit.CelsiusDegrees(round(SpreadShare[d] * air))
			s.Margin[d][day] = unit.CelsiusDegrees(round(bandReach * math.Hypot(missed[d], month/oneInTen*float64(r.year.SeasonMargin(index)))))
		}
	}
	r.probe()
	for f := range r.columns {
		for d := range Depths {
			s.Soil[f][d].round(s.Days)
		}
		for day := range s.Days {
			s.Surface[f][day] = unit.Celsius(math.Round(float64(s.Surface[f][day])*10) / 10)
		}
	}
}

func (t *Track) round(days int) {
	for day := range days {
		t.Mean[day] = unit.Celsius(round(float64(t.Mean[day])))
		t.Low[day] = unit.Celsius(round(float64(t.Low[day])))
		t.High[day] = unit.Celsius(round(float64(t.High[day])))
	}
}

// effectDays is the stretch over which a film's modelled effect is averaged
// before it is carried, so many days to both sides. Published effects are means
// of weeks, and a carried difference can be up to three times the modelled one:
// without this a day's more or less of frost in the ground, which thaws sooner
// under one film than under another, would be magnified into steps of 1 K.
const effectDays = 3

func (r *Runner) carryDay(f, depth, day int, factor float64) {
	open, out := &r.pure[Bare][depth], &r.season.Soil[f][depth]
	laid := int(max(0, r.in.Laid-r.season.Start))
	if day < laid {
		out.copyDay(open, day)
		return
	}
	first, last := max(laid, day-effectDays), min(r.season.Days-1, day+effectDays)
	black, film := r.effect(r.covers.leader+1, depth, first, last), r.effect(f, depth, first, last)
	change := func(i int, open unit.Celsius) unit.Celsius {
		return open + unit.Celsius(factor*r.covers.carried(f, depth, black[i], film[i]))
	}
	out.Mean[day] = change(0, open.Mean[day])
	// On freezing and thawing ground the three differences are carried unevenly;
	// a lowest never lies above its mean, nor a highest below.
	out.Low[day] = min(change(1, open.Low[day]), out.Mean[day])
	out.High[day] = max(change(2, open.High[day]), out.Mean[day])
}

// effect is a film's modelled difference from bare ground, K, of the day's
// mean, lowest and highest, as the mean of a few days, first to last.
func (r *Runner) effect(f, depth, first, last int) (e [3]float64) {
	open, film := &r.pure[Bare][depth], &r.pure[f][depth]
	for day := first; day <= last; day++ {
		e[0] += float64(film.Mean[day] - open.Mean[day])
		e[1] += float64(film.Low[day] - open.Low[day])
		e[2] += float64(film.High[day] - open.High[day])
	}
	n := float64(last - first + 1)
	for i := range e {
		e[i] /= n
	}
	return e
}

// A probe's gap to the curve is part the place, which stays, and part the
// weather, which fades. At the fitting stations of the soil test the lasting
// part is 0.39 of the errors' variance, and a daily error keeps 0.43 of
// itself after a week.
const (
	PlaceShare  = 0.39
	FadeDays    = 8.3
	doubtBeyond = 8.0 // K: some four times the model's error
)

func (r *Runner) probe() {
	p, s := &r.in.Probe, &r.season
	if !p.Given {
		return
	}
	day := int(p.On - s.Start)
	expected := s.at(p.Cover, day, float64(p.Depth), float64(p.Hour))
	shift := float64(p.Reading) - expected
	s.Probe = ProbeFinding{true, unit.Celsius(round(expected)), unit.CelsiusDegrees(round(shift)), math.Abs(shift) > doubtBeyond}
	if s.Probe.Doubtful {
		return
	}
	for d := range s.Days {
		move := unit.Celsius(s.Probe.MoveAfter(d - day))
		for f := range r.columns {
			for depth := range Depths {
				t := &s.Soil[f][depth]
				t.Mean[d] += move
				t.Low[d] += move
				t.High[d] += move
			}
		}
	}
}

// at reads a curve at a depth and hour: a cosine about the day's mean, up to its
// highest and down to its lowest, with the highest at 15 h at 5 cm and half past
// 16 at 10 cm (World Vegetable Center record 397: at 10 cm most often 16:00; a
// test prints the model's own), and a straight line in the depth.
func (s *Season) at(f, day int, depth, hour float64) float64 {
	read := func(d int, highest float64) float64 {
		t := &s.Soil[f][d]
		wave := math.Cos(2 * math.Pi * (hour - highest) / 24)
		reach := t.High[day] - t.Mean[day]
		if wave < 0 {
			reach = t.Mean[day] - t.Low[day]
		}
		return float64(t.Mean[day]) + float64(reach)*wave
	}
	five, ten := read(FiveCentimetres, 15), read(TenCentimetres, 16.5)
	share := math.Max(-0.6, math.Min(2, (depth-0.05)/0.05))
	return five + share*(ten-five)
}
