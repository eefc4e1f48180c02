package heat

import (
	"math"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// stepsPerDay and implicitness are the numerics of a run; tests halve and vary
// them.
const (
	stepsPerDay  = 36
	implicitness = 0.55
	spinUp       = 365 // days run before a season, so that the deep ground forgets its start
)

// Runner computes a Season in slices, so that a browser can stay awake. Make it
// with [NewRunner], call [Runner.Step] until it says done, then read
// [Runner.Season]. It allocates nothing after NewRunner.
type Runner struct {
	in      Input
	nature  nature
	covers  *Covers
	year    weather.Year
	place   site
	ground  grid
	open    bare
	albedo  float64
	wetness float64
	// turfShare is the share of the supply that turf at this place gives off.
	turfShare float64
	account   *account                   // nil where the rain is not known
	snow      float64                    // the share of cold that it keeps off
	roughness *[weather.YearDays]float64 // of what grows through the year; nil where it is one figure
	// The open ground's skin: its resistance to evaporation in s/m, and what it
	// gave off in the day, mm.
	resistance, evaporated float64
	columns                []column // open ground, then the covers
	hours                  [maxSteps]hour
	steps                  int
	first, day             int // first and next day to run; negative during the spin-up
	pure                   [][Depths]Track
	season                 Season
	keepAt                 int // day before which the open ground is kept, for another run
	kept                   openGround
	earlier                *Runner // whose open ground this one begins with
	done                   bool
}

// openGround is the state of the open ground at the start of a day.
type openGround struct {
	column     column
	resistance float64
}

// how is a way to run: the numerics, and the constants of nature.
type how struct {
	depths []float64
	steps  int
	theta  float64
	nature nature
}

var usualRun = how{nodeDepths[:], stepsPerDay, implicitness, usualNature}

// NewRunner checks the input and sets up a run of open ground and of covers, of
// which there may be none (nil). The error is a [*weather.InputError].
func NewRunner(in Input, covers *Covers) (*Runner, error) {
	return newRunner(in, covers, usualRun)
}

func newRunner(in Input, covers *Covers, how how) (*Runner, error) {
	if err := in.Check(); err != nil {
		return nil, err
	}
	year, err := weather.NewYear(in.Normals)
	if err != nil {
		return nil, err
	}
	if covers == nil {
		covers = &Covers{}
	}
	r := &Runner{in: in, nature: how.nature, covers: covers, resistance: 200, year: year.In(in.Season), steps: how.steps, first: -spinUp, keepAt: -spinUp - 1}
	if in.Rain.Given {
		r.account = newAccount(&r.year, in.Normals.Latitude, &in.Rain.Value)
	}
	bed, below := in.layers()
	r.place = site{in.Normals.Latitude, in.Normals.Height, in.SunFactor, float64(in.Wind), r.nature.roughness}
	r.albedo, r.wetness = skin(&in)
	r.snow = r.nature.snowShare
	boundary := float64(in.BedHeight)
	if in.Sod {
		bed, below, boundary = r.sod()
	}
	r.ground = newGrid(how.depths, bed, below, boundary, 86400/float64(r.steps), how.theta)
	all := 1 + len(covers.list)
	r.columns, r.pure = make([]column, all), make([][Depths]Track, all)
	r.season.Soil, r.season.Surface = make([][Depths]Track, all), make([][MaxDays]unit.Celsius, all)
	r.season.Start, r.season.Days, r.season.covers = in.Start, int(in.Days), covers
	r.start(-spinUp)
	return r, nil
}

// KeepAt asks a run to keep the open ground as it is at the start of a date of
// its season, for [Runner.Begin].
func (r *Runner) KeepAt(date unit.Date) { r.keepAt = int(date - r.in.Start) }

// Begin lets a run start from the open ground that an earlier run, of the same
// place and year, keeps for its first day: it then needs no spin-up. The earlier
// one must be done before this one steps.
func (r *Runner) Begin(earlier *Runner) { r.earlier, r.first, r.day = earlier, 0, 0 }

// skin gives the albedo of the open ground and how freely its water reaches the
// film. Wet soil turns back about a fifth less light (Amer. Soc. Hort. Sci.
// journal abstract on strawberry albedo: about 0.22, a fifth less when wet);
// sands, sand and loamy sand of the USDA triangle, are lighter.
func skin(in *Input) (albedo, wetness float64) {
	albedo, wetness = 0.18, 0.8
	switch in.Moisture {
	case Dry:
		albedo, wetness = 0.22, 0.3
	case Wet:
		albedo, wetness = 0.15, 1
	}
	if in.Soil.Sand > sandy {
		albedo += 0.04
	}
	return albedo, wetness
}

const sandy = 0.75

// start lays the annual wave into the ground: the year's mean and first
// harmonic of the air, damped and delayed with depth.
//
// The run then begins so many days (a negative number) before the season.
func (r *Runner) start(first int) {
	r.first, r.day = first, first
	c, s, mean := harmonic(&r.year)
	g := &r.ground
	diffusivity := (g.loose.conductivity / g.loose.capacity)
	omega := 2 * math.Pi / (weather.YearDays * 86400)
	damping := math.Sqrt(2 * diffusivity / omega)
	from := float64(weather.Index(r.in.Start.Plus(unit.Days(first))))
	for i := range g.nodes {
		z := g.depth[i] / damping
		phase := 2*math.Pi*from/weather.YearDays - z
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
// is complete. A day costs some ten to a hundred microseconds.
func (r *Runner) Step(days int) (done bool) {
	if !r.done && r.advance(days) {
		r.finish()
		r.done = true
	}
	return r.done
}

// advance runs days without making a season of them.
func (r *Runner) advance(days int) (all bool) {
	if r.earlier != nil {
		r.columns[Bare], r.resistance, r.earlier = r.earlier.kept.column, r.earlier.kept.resistance, nil
	}
	for ; days > 0 && r.day < r.season.Days; days-- {
		r.runDay()
		r.day++
	}
	return r.day >= r.season.Days
}

// Progress is the share of the work done, 0–1: a day of the season weighs by its
// columns against one of the spin-up.
func (r *Runner) Progress() float64 {
	each := len(r.columns)
	all := -r.first + each*r.season.Days
	if r.day < 0 {
		return float64(r.day-r.first) / float64(all)
	}
	return float64(-r.first+each*r.day) / float64(all)
}

// Season is the result; nil until Step has reported done.
func (r *Runner) Season() *Season {
	if !r.done {
		return nil
	}
	return &r.season
}

// Compute runs a whole season. The error is a [*weather.InputError].
func Compute(in Input, covers *Covers) (*Season, error) {
	r, err := NewRunner(in, covers)
	if err != nil {
		return nil, err
	}
	r.Step(spinUp + MaxDays)
	return &r.season, nil
}

func (r *Runner) airDay(date unit.Date) airDay {
	y := &r.year
	i := weather.Index(date)
	before, after := (i+weather.YearDays-1)%weather.YearDays, (i+1)%weather.YearDays
	low, high := float64(y.Minimum[i]), float64(y.Maximum[i])
	// Snow and litter keep the ground from feeling all of the frost.
	mild := r.snow * math.Max(0, -(low+high)/2)
	a := airDay{low + mild, high + mild, float64(y.Maximum[before]) + mild, float64(y.Minimum[after]) + mild, i + 1, 0, r.in.Canopy.shade(date)}
	a.drier = dewBelow(r.nature.dryness(low, high))
	return a
}

// supply is what the open ground can evaporate on a day, mm. Turf gives off what its
// climate lets it, and no more than the account of its water draws where the rain is
// known. Of a bed the grower has told how moist it is, so there half the dryness of the
// climate counts, in logarithms, that of the daily range as that of the account: a
// judgement. It comes only from the part that no leaf covers (FAO-56 equation 75 limits
// evaporation to the exposed share in the same way).
func (r *Runner) supply(a *airDay) float64 {
	s := r.nature.supply
	if r.in.Sod {
		s *= r.turfShare
	} else {
		s *= math.Exp(-math.Max(0, r.nature.dryness(a.minimum, a.maximum)/2))
	}
	if r.account != nil {
		most := math.Min(s, r.account.drawn[a.dayOfYear-1])
		if !r.in.Sod {
			most = math.Sqrt(s * most)
		}
		s = most
	}
	switch {
	case r.in.Sod:
	case r.in.Moisture == Dry:
		s *= 0.35
	case r.in.Moisture == Wet:
		s *= 2
	}
	return math.Max(leastSupply, s*(1-a.shade))
}

// leastSupply, mm a day, is what the driest ground still gives off.
const leastSupply = 0.1

// dry lets the skin close or open towards the supply: half the way, in
// logarithms, each day.
func (r *Runner) dry(supply float64) {
	r.resistance *= math.Sqrt(math.Max(leastSupply, r.evaporated) / supply)
	r.resistance = math.Max(r.nature.leastResistance, math.Min(r.nature.mostResistance, r.resistance))
}

func (r *Runner) runDay() {
	if r.day == r.keepAt {
		r.kept = openGround{r.columns[Bare], r.resistance}
	}
	date := r.in.Start.Plus(unit.Days(r.day))
	air := r.airDay(date)
	hours := r.hours[:r.steps]
	if r.roughness != nil {
		r.place.roughness = r.roughness[air.dayOfYear-1]
	}
	r.place.day(&air, hours)
	r.open = bare{albedo: r.albedo, resistance: r.resistance}
	covered := r.day >= 0 && date >= r.in.Laid
	if r.day >= 0 && date <= r.in.Laid {
		// Until the film goes on, its strip is bare ground.
		for f := Bare + 1; f < len(r.columns); f++ {
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
	for f := Bare + 1; f < len(r.columns); f++ {
		if !covered {
			for d := range Depths {
				r.pure[f][d].copyDay(&r.pure[Bare][d], r.day)
			}
			continue
		}
		if twin := r.covers.twin(f); twin != f { // films of the same optics are the same to the physics
			r.columns[f] = r.columns[twin]
			for d := range Depths {
				r.pure[f][d].copyDay(&r.pure[twin][d], r.day)
			}
			continue
		}
		v := newCover(r.covers.list[f-1].Optics, r.albedo, gap, r.wetness)
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
	start, before := c.temperature[0], c.temperature[0]
	for k := range hours {
		start, before = 2*c.temperature[0]-before, c.temperature[0] // as it went on in the last step
		c.advance(g, func(coefficient, rest float64) (t, flux float64) {
			start, flux = r.open.balance(&hours[k], coefficient, rest, g.theta, start)
			return start, flux
		})
		tally.add(c, g)
		r.evaporated += r.open.latent * g.step / latentHeat
	}
	if r.day >= 0 {
		tally.write(r, Bare)
	}
}

func (r *Runner) runCovered(f int, v *cover, hours []hour) {
	c, g := &r.columns[f], &r.ground
	var tally dayTally
	tally.reset()
	start, before, filmBefore := c.temperature[0], c.temperature[0], c.film
	for k := range hours {
		start, before = 2*c.temperature[0]-before, c.temperature[0] // as it went on in the last step
		c.film, filmBefore = 2*c.film-filmBefore, c.film
		c.advance(g, func(coefficient, rest float64) (t, flux float64) {
			c.film, start, flux = v.balance(&hours[k], coefficient, rest, g.theta, c.film, start)
			return start, flux
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
		if v < t.low[d] {
			t.low[d] = v
		}
		if v > t.high[d] {
			t.high[d] = v
		}
	}
}

func (t *dayTally) write(r *Runner, f int) {
	for d := range Depths {
		track := &r.pure[f][d]
		track.Mean[r.day] = unit.Celsius(t.sum[d] / t.steps)
		track.Low[r.day] = unit.Celsius(t.low[d])
		track.High[r.day] = unit.Celsius(t.high[d])
	}
}
