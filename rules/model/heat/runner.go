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
)

// Two constants of the open bed were calibrated once, by least squares on nine
// published figures together: black, clear, white-on-black and
// infrared-transmitting in the New England table, and the long-term averages of
// bare soil at 4 in over Illinois on five days from April to July. Every other
// published row tests them.
const (
	// bedRoughness is the roughness length of a field of beds and furrows, m: a
	// tenth of their height is the common rule (no source).
	bedRoughness = 0.02
	// moistSupply is the water that bare moist ground can give off between
	// rains, mm a day: its skin dries until it gives no more. The fit asks for
	// more than the 2 mm or so that FAO Irrigation and Drainage Paper 56 figure
	// 29 gives for rain once a week (from memory).
	moistSupply = 3.5
	// snowShare is the part of the air's cold below 0 °C, as a daily mean, that
	// does not reach the ground: half of it, between 0.1 where the wind sweeps the
	// snow away and 0.7 under deep snow (freezing n-factors, from memory).
	snowShare       = 0.5
	leastResistance = 60   // s/m, of a wet skin
	mostResistance  = 5000 // s/m, of a dry crust
)

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
	// The open ground's skin: its resistance to evaporation in s/m, and what it
	// gave off in the day, mm.
	resistance, evaporated float64
	columns                [Films]column
	hours                  [maxSteps]hour
	steps                  int
	day                    int // next day to run; negative during the spin-up
	pure                   [Films][Depths]Track
	season                 Season
	done                   bool
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
	r := &Runner{in: in, resistance: 200, year: year.In(in.Season), steps: steps, day: -spinUp}
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

func (r *Runner) airDay(date unit.Date) airDay {
	y := &r.year
	i := weather.Index(date)
	before, after := (i+weather.YearDays-1)%weather.YearDays, (i+1)%weather.YearDays
	low, high := float64(y.Minimum[i]), float64(y.Maximum[i])
	// Snow and litter keep the ground from feeling all of the frost.
	mild := snowShare * math.Max(0, -(low+high)/2)
	a := airDay{low + mild, high + mild, float64(y.Maximum[before]) + mild, float64(y.Minimum[after]) + mild, i + 1, 0, r.in.Canopy.shade(date)}
	a.drier = dewBelow(dryness(low, high, r.place.latitude, i+1))
	return a
}

// supply is what the open ground can evaporate on a day, mm: less in a dry
// climate (by half the dryness of the range, since the grower has told how moist
// the bed is: a judgement), and only from the part that no leaf covers (FAO-56 equation 75 limits
// evaporation to the exposed share in the same way).
func (r *Runner) supply(a *airDay) float64 {
	s := float64(moistSupply)
	switch r.in.Moisture {
	case Dry:
		s *= 0.35
	case Wet:
		s *= 2
	}
	drier := math.Max(0, drynessByRange/2*((a.maximum-a.minimum)-12)/6)
	return math.Max(0.1, s*(1-a.shade)*math.Exp(-drier))
}

// dry lets the skin close or open towards the supply: half the way, in
// logarithms, each day.
func (r *Runner) dry(supply float64) {
	r.resistance *= math.Sqrt(math.Max(0.1, r.evaporated) / supply)
	r.resistance = math.Max(leastResistance, math.Min(mostResistance, r.resistance))
}

func (r *Runner) runDay() {
	date := r.in.Start.Plus(unit.Days(r.day))
	air := r.airDay(date)
	hours := r.hours[:r.steps]
	r.place.day(&air, hours)
	r.open = bare{albedo: r.albedo, resistance: r.resistance}
	covered := r.day >= 0 && date >= r.in.Laid
	if r.day >= 0 && date <= r.in.Laid {
		// Until the film goes on, its strip is bare ground.
		for f := Bare + 1; f < Films; f++ {
			r.columns[f] = r.columns[Bare]
			r.columns[f].film = r.columns[Bare].temperature[0]
		}
	}
	r.runOpen(hours)
	r.dry(r.supply(&air))
	if r.day < 0 {
		return
	}
	minimum, maximum := r.year.On(date)
	r.season.Air.Low[r.day], r.season.Air.High[r.day] = unit.Celsius(round(float64(minimum))), unit.Celsius(round(float64(maximum)))
	gap := r.in.gap(air.maximum)
	for f := Bare + 1; f < Films; f++ {
		if !covered {
			for d := range Depths {
				r.pure[f][d].copyDay(&r.pure[Bare][d], r.day)
			}
			continue
		}
		v := newCover(optics[f], r.albedo, gap, r.wetness)
		r.runCovered(f, &v, hours)
	}
	r.hotHour(date, &air, gap)
}

func (t *Track) copyDay(from *Track, day int) {
	t.Mean[day], t.Low[day], t.High[day] = from.Mean[day], from.Low[day], from.High[day]
}

func (r *Runner) runOpen(hours []hour) {
	c, g := &r.columns[Bare], &r.ground
	var tally dayTally
	tally.reset()
	r.evaporated = 0
	for k := range hours {
		c.advance(g, func(coefficient, rest float64) (t, flux float64) {
			return r.open.balance(&hours[k], coefficient, rest, g.theta, c.temperature[0])
		})
		tally.add(c, g)
		r.evaporated += r.open.latent * g.step / latentHeat
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
		c.advance(g, func(coefficient, rest float64) (t, flux float64) {
			c.film, t, flux = v.balance(&hours[k], coefficient, rest, g.theta, c.film, c.temperature[0])
			return t, flux
		})
		tally.add(c, g)
	}
	tally.write(r, f)
}

// dayTally gathers a day's mean and extremes at the two depths.
type dayTally struct {
	sum, low, high [Depths]float64
	steps          float64
}

func (t *dayTally) reset() {
	*t = dayTally{low: [Depths]float64{math.Inf(1), math.Inf(1)}, high: [Depths]float64{math.Inf(-1), math.Inf(-1)}}
}

func (t *dayTally) add(c *column, g *grid) {
	t.steps++
	for d, node := range [Depths]int{g.five, g.ten} {
		v := c.temperature[node]
		t.sum[d] += v
		t.low[d] = min(t.low[d], v)
		t.high[d] = max(t.high[d], v)
	}
}

func (t *dayTally) write(r *Runner, f Film) {
	for d := range Depths {
		track := &r.pure[f][d]
		track.Mean[r.day] = unit.Celsius(t.sum[d] / t.steps)
		track.Low[r.day] = unit.Celsius(t.low[d])
		track.High[r.day] = unit.Celsius(t.high[d])
	}
}
