package heat

import (
	"math"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// stepsPerDay and implicitness are the numerics of a run; tests halve and vary
// them.
const (
	stepsPerDay  = 48
	implicitness = 0.55
	spinUp       = 365 // days run before the season, so that the deep ground forgets its start
	bedRoughness = 0.004
)

// moistResistance is the resistance of a moist spring surface to evaporation in
// s/m where the air is neither dry nor humid; a wet one has half, a dry one
// three times as much. It was calibrated once, by least squares on four rows of
// the New England table together (black, clear, white-on-black and
// infrared-transmitting); every other published row tests it.
const moistResistance = 160

// Runner computes a Season in slices, so that a browser can stay awake. Make it
// with [NewRunner], call [Runner.Step] until it says done, then read
// [Runner.Season]. It allocates nothing after NewRunner.
type Runner struct {
	in      Input
	year    weather.Year
	place   site
	ground  grid
	open    bare
	albedo  float64
	wetness float64
	columns [Films]column
	hours   [maxSteps]hour
	steps   int
	day     int // next day to run; negative during the spin-up
	pure    [Films][Depths]Track
	daytime [Films][Depths][MaxDays]float64 // 9–18 h
	season  Season
	done    bool
}

// NewRunner checks the input and sets up a run.
func NewRunner(in Input) (*Runner, error) {
	return newRunner(in, nodeDepths[:], stepsPerDay, implicitness)
}

func newRunner(in Input, depths []float64, steps int, theta float64) (*Runner, error) {
	if err := in.Check(); err != nil {
		return nil, err
	}
	year, err := weather.NewYear(in.Normals)
	if err != nil {
		return nil, err
	}
	r := &Runner{in: in, year: year.In(in.Season), steps: steps, day: -spinUp}
	r.place = site{in.Normals.Latitude, in.Normals.Height, in.SunFactor, float64(in.Wind), bedRoughness}
	bed, below := in.layers()
	r.ground = newGrid(depths, bed, below, float64(in.BedHeight), 86400/float64(steps), theta)
	r.albedo, r.wetness = skin(&in)
	r.start()
	r.season.Start, r.season.Days = in.Start, int(in.Days)
	return r, nil
}

// skin gives the albedo of the open ground and how freely its water reaches the
// film. Wet soil turns back about a fifth less light (Amer. Soc. Hort. Sci.
// journal abstract on strawberry albedo: about 0.22, a fifth less when wet);
// sands are lighter.
func skin(in *Input) (albedo, wetness float64) {
	albedo, wetness = 0.18, 0.8
	switch in.Moisture {
	case Dry:
		albedo, wetness = 0.22, 0.3
	case Wet:
		albedo, wetness = 0.15, 1
	}
	if in.Texture <= LoamySand {
		albedo += 0.04
	}
	return albedo, wetness
}

// start lays the annual wave into the ground: the year's mean and first
// harmonic of the air, damped and delayed with depth.
func (r *Runner) start() {
	c, s, mean := harmonic(&r.year)
	g := &r.ground
	diffusivity := (g.loose.conductivity / g.loose.capacity)
	omega := 2 * math.Pi / (weather.YearDays * 86400)
	damping := math.Sqrt(2 * diffusivity / omega)
	first := float64(weather.Index(r.in.Start.Plus(-spinUp)))
	for i := range g.nodes {
		z := g.depth[i] / damping
		phase := 2*math.Pi*first/weather.YearDays - z
		r.columns[Bare].temperature[i] = mean + 2 + math.Exp(-z)*(c*math.Cos(phase)+s*math.Sin(phase))
	}
}

// harmonic gives the cosine and sine amplitude of the smooth year's daily mean
// (index 0 as phase 0) and the annual mean, °C.
func harmonic(y *weather.Year) (c, s, mean float64) {
	for d := range weather.YearDays {
		t := float64(y.Minimum[d]+y.Maximum[d]) / 2
		phase := 2 * math.Pi * float64(d) / weather.YearDays
		c += t * math.Cos(phase)
		s += t * math.Sin(phase)
		mean += t
	}
	return 2 * c / weather.YearDays, 2 * s / weather.YearDays, mean / weather.YearDays
}

// Step runs at most so many days (of all covers) and reports whether the season
// is complete. A day costs some twenty to two hundred microseconds.
func (r *Runner) Step(days int) (done bool) {
	for ; days > 0 && r.day < r.season.Days; days-- {
		r.runDay()
		r.day++
	}
	if r.day >= r.season.Days && !r.done {
		r.finish()
		r.done = true
	}
	return r.done
}

// Progress is the share of the work done, 0–1: a day of the season, with every
// film, weighs as ten of the spin-up.
func (r *Runner) Progress() float64 {
	all := float64(spinUp + int(Films)*r.season.Days)
	if r.day < 0 {
		return float64(spinUp+r.day) / all
	}
	return float64(spinUp+int(Films)*r.day) / all
}

// Season is the result; nil until Step has reported done.
func (r *Runner) Season() *Season {
	if !r.done {
		return nil
	}
	return &r.season
}

// Compute runs a whole season. The error is a [*weather.InputError].
func Compute(in Input) (Season, error) {
	r, err := NewRunner(in)
	if err != nil {
		return Season{}, err
	}
	r.Step(spinUp + MaxDays)
	return r.season, nil
}

func (r *Runner) airDay(date unit.Date) (a airDay, dry float64) {
	y := &r.year
	i := weather.Index(date)
	before, after := (i+weather.YearDays-1)%weather.YearDays, (i+1)%weather.YearDays
	low, high := float64(y.Minimum[i]), float64(y.Maximum[i])
	a = airDay{low, high, float64(y.Maximum[before]), float64(y.Minimum[after]), i + 1, 0, r.in.Canopy.shade(date)}
	dry = dryness(low, high, r.place.latitude, i+1)
	a.drier = dewBelow(dry)
	return a, dry
}

// resistance of the open skin to evaporation on a day of so much dryness.
func (r *Runner) resistance(dry float64) float64 {
	base := float64(moistResistance)
	switch r.in.Moisture {
	case Dry:
		base *= 3
	case Wet:
		base /= 2
	}
	return math.Max(30, math.Min(4000, base*math.Exp(dry)))
}

func (r *Runner) runDay() {
	date := r.in.Start.Plus(unit.Days(r.day))
	air, dry := r.airDay(date)
	hours := r.hours[:r.steps]
	r.place.day(&air, hours)
	r.open = bare{r.albedo, r.resistance(dry)}
	covered := r.day >= 0 && date >= r.in.Laid
	if r.day >= 0 && date <= r.in.Laid {
		// Until the film goes on, its strip is bare ground.
		for f := Bare + 1; f < Films; f++ {
			r.columns[f] = r.columns[Bare]
			r.columns[f].film = r.columns[Bare].temperature[0]
		}
	}
	r.runOpen(hours)
	if r.day < 0 {
		return
	}
	r.season.Air.Low[r.day], r.season.Air.High[r.day] = unit.Celsius(round(air.minimum)), unit.Celsius(round(air.maximum))
	gap := r.in.gap(air.maximum)
	for f := Bare + 1; f < Films; f++ {
		if !covered {
			for d := range Depths {
				r.pure[f][d].copyDay(&r.pure[Bare][d], r.day)
				r.daytime[f][d][r.day] = r.daytime[Bare][d][r.day]
			}
			continue
		}
		v := newCover(optics[f], r.albedo, gap, r.wetness)
		r.runCovered(f, &v, hours)
	}
	r.hotHour(date, &air, dry, gap)
}

func (t *Track) copyDay(from *Track, day int) {
	t.Mean[day], t.Low[day], t.High[day] = from.Mean[day], from.Low[day], from.High[day]
}

func (r *Runner) runOpen(hours []hour) {
	c, g := &r.columns[Bare], &r.ground
	var tally dayTally
	tally.reset()
	for k := range hours {
		rest := c.below(g)
		t, flux := r.open.balance(&hours[k], g.surface, rest, g.theta, c.temperature[0])
		c.settle(g, t, flux)
		tally.add(c, g, k, len(hours))
	}
	if r.day >= 0 {
		tally.write(r, Bare)
	}
}

func (r *Runner) runCovered(f Film, v *cover, hours []hour) {
	c, g := &r.columns[f], &r.ground
	var tally dayTally
	tally.reset()
	for k := range hours {
		rest := c.below(g)
		film, soil, flux := v.balance(&hours[k], g.surface, rest, g.theta, c.film, c.temperature[0])
		c.film = film
		c.settle(g, soil, flux)
		tally.add(c, g, k, len(hours))
	}
	tally.write(r, f)
}

// dayTally gathers a day's mean, extremes and daytime mean at the two depths.
type dayTally struct {
	sum, low, high, bright [Depths]float64
	steps, brightSteps     float64
}

func (t *dayTally) reset() {
	*t = dayTally{low: [Depths]float64{math.Inf(1), math.Inf(1)}, high: [Depths]float64{math.Inf(-1), math.Inf(-1)}}
}

func (t *dayTally) add(c *column, g *grid, k, steps int) {
	hour := float64(k+1) * 24 / float64(steps)
	bright := hour > 9 && hour <= 18
	t.steps++
	if bright {
		t.brightSteps++
	}
	for d, node := range [Depths]int{g.five, g.ten} {
		v := c.temperature[node]
		t.sum[d] += v
		t.low[d] = min(t.low[d], v)
		t.high[d] = max(t.high[d], v)
		if bright {
			t.bright[d] += v
		}
	}
}

func (t *dayTally) write(r *Runner, f Film) {
	for d := range Depths {
		track := &r.pure[f][d]
		track.Mean[r.day] = unit.Celsius(t.sum[d] / t.steps)
		track.Low[r.day] = unit.Celsius(t.low[d])
		track.High[r.day] = unit.Celsius(t.high[d])
		r.daytime[f][d][r.day] = t.bright[d] / t.brightSteps
	}
}
