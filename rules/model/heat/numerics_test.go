package heat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

const diffusivity = 0.5e-6 // m²/s: K 1 W/m/K, C 2 MJ/m³/K, as in the SciPy run

func testLayer() layer { return layer{conductivity: 1, capacity: 2e6} }

// fineDepths are close nodes to 3 m for checks against exact solutions; 5.08 and
// 10.16 cm are 2 and 4 in.
func fineDepths() (out []float64) {
	out = []float64{0, 0.005, 0.01, 0.016, 0.0254, 0.036, 0.0508, 0.065, 0.083, 0.1016, 0.12, 0.145, 0.175, 0.215, 0.26, 0.3048}
	for z, step := 0.36, 0.07; z < 3; z, step = z+step, step*1.17 {
		out = append(out, z)
	}
	return out
}

// hold drives a column by a given surface temperature.
func hold(c *column, g *grid, surface float64) {
	c.advance(g, func(coefficient, rest float64) (t, flux float64) {
		return surface, (coefficient*surface - rest) / g.theta
	})
}

// A wave of surface temperature goes down as A·e^(−z/D)·sin(ωt − z/D) with
// D = √(2κ/ω) (Carslaw and Jaeger, Conduction of Heat in Solids, §2.6): three
// depths, a day and a year.
func TestDampedWave(t *testing.T) {
	depths := fineDepths()
	for _, c := range []struct {
		name           string
		period, step   float64
		cycles         int
		nodes          []int
		allowed        float64
		deepest        float64
		printedDamping float64
	}{
		{"day", 86400, 900, 8, []int{6, 9, 15}, 0.06, 3, 0.1173},
		{"year", 365 * 86400, 6 * 3600, 6, []int{6, 9, 15}, 0.06, 30, 2.241},
	} {
		z := depths
		if c.deepest > 3 {
			z = append(append([]float64{}, depths...), 3.6, 4.3, 5.2, 6.4, 8, 10, 13, 17, 22, 30)
		}
		g := newGrid(z, testLayer(), testLayer(), 1, c.step, 0.5)
		omega := 2 * math.Pi / c.period
		damping := math.Sqrt(2 * diffusivity / omega)
		assert.InDelta(t, c.printedDamping, damping, 0.001, "damping depth of the figures")
		var col column
		for i := range g.nodes {
			col.temperature[i] = 10 * math.Exp(-z[i]/damping) * math.Sin(-z[i]/damping)
		}
		steps := int(c.period/c.step) * c.cycles
		worst := map[int]float64{}
		for k := 1; k <= steps; k++ {
			now := float64(k) * c.step
			hold(&col, &g, 10*math.Sin(omega*now))
			if k > steps-int(c.period/c.step) {
				for _, n := range c.nodes {
					exact := 10 * math.Exp(-z[n]/damping) * math.Sin(omega*now-z[n]/damping)
					worst[n] = math.Max(worst[n], math.Abs(col.temperature[n]-exact))
				}
			}
		}
		for _, n := range c.nodes {
			t.Logf("%s wave of ±10 K at %.4f m: largest error %.4f K", c.name, z[n], worst[n])
			assert.Less(t, worst[n], c.allowed)
		}
	}
}

// The grid and step that a season uses, on the daily wave.
func TestDampedWaveAsRun(t *testing.T) {
	g := newGrid(nodeDepths[:], testLayer(), testLayer(), 1, 86400.0/stepsPerDay, implicitness)
	omega := 2 * math.Pi / 86400
	damping := math.Sqrt(2 * diffusivity / omega)
	var col column
	worst := [Depths]float64{}
	for k := 1; k <= 20*stepsPerDay; k++ {
		now := float64(k) * g.step
		hold(&col, &g, 10*math.Sin(omega*now))
		if k > 15*stepsPerDay {
			for d, n := range [Depths]int{g.five, g.ten} {
				exact := 10 * math.Exp(-g.depth[n]/damping) * math.Sin(omega*now-g.depth[n]/damping)
				worst[d] = math.Max(worst[d], math.Abs(col.temperature[n]-exact))
			}
		}
	}
	t.Logf("daily wave of ±10 K on the season's own grid and step: largest error %.3f K at 5 cm, %.3f K at 10 cm", worst[0], worst[1])
	assert.Less(t, worst[0], 0.35)
	assert.Less(t, worst[1], 0.35)
}

// A sudden change of surface temperature: T = erfc(z/(2√κt)) (Carslaw and
// Jaeger, §2.4); the three values are those of the figures.
func TestStepOfTemperature(t *testing.T) {
	g := newGrid(fineDepths(), testLayer(), testLayer(), 1, 60, 1)
	var col column
	for k := 1; k <= 24*60; k++ {
		hold(&col, &g, 1)
		switch k {
		case 6 * 60:
			assert.InDelta(t, 0.7296, col.temperature[6], 0.003, "2 in, 6 h")
			assert.InDelta(t, 0.4894, col.temperature[9], 0.003, "4 in, 6 h")
		case 24 * 60:
			assert.InDelta(t, 0.7296, col.temperature[9], 0.003, "4 in, 24 h")
			assert.InDelta(t, math.Erfc(0.3048/(2*math.Sqrt(diffusivity*86400))), col.temperature[15], 0.003, "12 in, 24 h")
		}
	}
}

// A steady flux from time 0: the surface warms by 2F/K·√(κt/π) (Carslaw and
// Jaeger, §2.9).
func TestSteadyFlux(t *testing.T) {
	g := newGrid(fineDepths(), testLayer(), testLayer(), 1, 120, 0.5)
	var col column
	const flux = 100.0
	col.flux = flux
	for k := 1; k <= 720; k++ {
		col.advance(&g, func(coefficient, rest float64) (float64, float64) {
			return (rest + g.theta*flux) / coefficient, flux
		})
	}
	exact := 2 * flux / 1 * math.Sqrt(diffusivity*86400/math.Pi)
	t.Logf("100 W/m² for a day: surface %.3f K, exact %.3f K", col.temperature[0], exact)
	assert.InDelta(t, exact, col.temperature[0], 0.06)
	assert.InDelta(t, flux*86400, col.content(&g), 1e-6*flux*86400)
}

// SciPy 1.10.1, LSODA, 401 nodes, K 1, C 2e6, surface 20 + 10 sin ωt from a
// uniform 20 °C, after 2.25 days: 25.8858 °C at 0.0508 m, 22.7230 °C at
// 0.1016 m. (The figures also give the periodic solution, 25.8853 and 22.7227.)
func TestAgainstSciPy(t *testing.T) {
	g := newGrid(fineDepths(), testLayer(), testLayer(), 1, 300, 0.5)
	omega := 2 * math.Pi / 86400
	damping := math.Sqrt(2 * diffusivity / omega)
	var col column
	for i := range g.nodes {
		z := g.depth[i] / damping
		col.temperature[i] = 20 + 10*math.Exp(-z)*math.Sin(-z)
	}
	for k := 1; k <= 648; k++ {
		hold(&col, &g, 20+10*math.Sin(omega*float64(k)*300))
	}
	t.Logf("2 in %.4f °C (SciPy 25.8858), 4 in %.4f °C (22.7230)", col.temperature[6], col.temperature[9])
	assert.InDelta(t, 25.8858, col.temperature[6], 0.03)
	assert.InDelta(t, 22.7230, col.temperature[9], 0.03)
}

// Heat is neither made nor lost: what entered the surface over a season is what
// the ground holds more, bare and under each film, with frozen ground in it.
func TestEnergyCloses(t *testing.T) {
	in := newEnglandSpring()
	in.Start, in.Laid = unit.On(2027, 1, 10), unit.On(2027, 1, 10)
	in.Days = 120
	r, err := NewRunner(in, referenced)
	assert.NoError(t, err)
	r.Step(spinUp)
	before, entered := r.columns[Bare].content(&r.ground), r.columns[Bare].stored
	r.Step(1000)
	var moved float64
	for f := range Films {
		c := &r.columns[f]
		c.stored -= entered
		gain := c.content(&r.ground) - before
		scale := math.Max(math.Abs(gain), 1e6)
		miss := math.Abs(gain-c.stored) / scale
		t.Logf("%s: stored %.3f MJ/m², entered %.3f, relative miss %.1e", NameOf(f), gain/1e6, c.stored/1e6, miss)
		assert.Less(t, miss, 1e-6)
		moved += math.Abs(gain)
	}
	assert.Greater(t, moved, 1e7, "the season moved heat at all")
}

// The balances close too: at the solution the fluxes at the surface sum to what
// the ground takes up.
func TestSurfaceBalancesClose(t *testing.T) {
	w := hour{air: 22, solar: 700, sky: 330, vapour: 1200, forced: 8 * 8 * 8, alone: 8, thin: 1}
	b := bare{albedo: 0.18, resistance: 200}
	soil, flux := b.balance(&w, 40, 40*20, 1, 20)
	e, _ := saturation(soil)
	h := math.Cbrt(w.forced + 3.375*w.thin*w.thin*max(0, soil-w.air))
	k := soil + kelvin
	sum := w.solar*0.82 + soilEmissivity*(w.sky-stefanBoltzmann*k*k*k*k) - h*(soil-w.air) - airCapacity/psychrometric*(e-w.vapour)/(airCapacity/h+200)
	assert.InDelta(t, sum, flux, 1e-6*math.Abs(w.solar))
	for f := Bare + 1; f < Films; f++ {
		o := referenced.list[f-1].Optics
		v := newCover(o, 0.18, 0.003, allDrops)
		o.LongTransmit *= betweenDrops // the rest is under drops
		film, soil, flux := v.balance(&w, 40, 40*20, 1, 22, 20)
		kf, ks := film+kelvin, soil+kelvin
		emit := stefanBoltzmann * kf * kf * kf * kf
		up := soilEmissivity * stefanBoltzmann * ks * ks * ks * ks
		r := 1 - soilEmissivity
		emitUnder := 1 - o.LongReflectUnder - o.LongTransmit
		emitTop := 1 - o.LongReflectTop - o.LongTransmit
		down := (o.LongTransmit*w.sky + emitUnder*emit + o.LongReflectUnder*up) / (1 - o.LongReflectUnder*r)
		es, _ := saturation(soil)
		ef, _ := saturation(film)
		latent := allDrops * latentHeat * vapourDiffusion / 0.003 * math.Max(0, es/(vapourGas*ks)-ef/(vapourGas*kf))
		gap := stillAir / 0.003 * (film - soil)
		short := w.solar / (1 - o.ReflectUnder*0.18)
		ground := short*o.Transmit*0.82 + soilEmissivity*down - up + gap - latent
		assert.InDelta(t, ground, flux, 1e-6*w.solar, "%s: soil", NameOf(f))
		h := math.Cbrt(w.forced + 3.375*w.thin*w.thin*max(0, film-w.air))
		sunFilm := w.solar*(1-o.ReflectTop-o.Transmit) + short*o.Transmit*0.18*(1-o.ReflectUnder-o.Transmit)
		upward := up + r*down
		balance := sunFilm + emitTop*w.sky + emitUnder*upward - (emitTop+emitUnder)*emit - h*(film-w.air) - gap + latent
		assert.InDelta(t, 0, balance, 1e-6*w.solar, "%s: film", NameOf(f))
	}
}

// A closed black room at one temperature: no net long-wave anywhere.
func TestIsothermalEnclosure(t *testing.T) {
	for f := Bare + 1; f < Films; f++ {
		v := newCover(referenced.list[f-1].Optics, 0.18, 0.003, 0)
		assert.InDelta(t, 0, v.skyFilm+v.hotFilm+v.soilFilm, 1e-12, "%s: film", NameOf(f))
		assert.InDelta(t, 0, v.skySoil+v.filmSoil+v.hotSoil, 1e-12, "%s: soil", NameOf(f))
	}
}

// Film that lets everything through and touches the soil is no film.
func TestNoFilmIsBareGround(t *testing.T) {
	w := hour{air: 20, solar: 600, sky: 320, vapour: 1000, forced: 7 * 7 * 7, alone: 7, thin: 1}
	v := newCover(Optics{Transmit: 1, LongTransmit: 1}, 0.18, 1e-6, 0)
	_, covered, _ := v.balance(&w, 40, 40*20, 1, 20, 20)
	b := bare{albedo: 0.18, resistance: 1e12}
	open, _ := b.balance(&w, 40, 40*20, 1, 20)
	assert.InDelta(t, open, covered, 0.01)
}

// A warm wet ground whose surface is suddenly held below freezing freezes to the
// depth 2λ√(κt), with λ·exp(λ²)·erf(λ) = Stefan number/√π, and its temperature
// above the front is that of an error function (Neumann's solution for ground at
// its melting point: Carslaw and Jaeger, §11.2). The water of that solution
// freezes all at once, so the curve is drawn as narrow as 0.01 K here.
func TestFreezingFront(t *testing.T) {
	wet := layer{conductivity: 1, capacity: 2e6, water: 0.3}
	var depths []float64
	for z := 0.0; z < 0.5; z += 0.01 {
		depths = append(depths, z)
	}
	g := newGrid(depths, wet, wet, 1, 900, 1)
	g.half = 0.01
	const cold = -5.0
	stefan := wet.capacity * -cold / (wet.water * freezable * heatOfFusion)
	lambda := 0.0
	for step := 0.5; step > 1e-9; step /= 2 {
		if l := lambda + step; l*math.Exp(l*l)*math.Erf(l) < stefan/math.Sqrt(math.Pi) {
			lambda = l
		}
	}
	var col column
	for k := 1; k <= 4*96; k++ {
		hold(&col, &g, cold)
		if k%96 != 0 {
			continue
		}
		root := math.Sqrt(diffusivity * float64(k) * 900)
		front, worst := 2*lambda*root, 0.0
		for i, z := range depths {
			exact := 0.0
			if z < front {
				exact = cold * (1 - math.Erf(z/(2*root))/math.Erf(lambda))
			}
			worst = math.Max(worst, math.Abs(col.temperature[i]-exact))
		}
		t.Logf("frozen for %d days: front at %.3f m, largest error %.3f K of 5", k/96, front, worst)
		assert.Less(t, worst, 0.2)
	}
}

// The heat of a node and its temperature are each other's inverse, and the slope
// is that of the heat.
func TestFreezingCurve(t *testing.T) {
	g := newGrid(nodeDepths[:], layer{1.2, 2e6, 0.25}, layer{1.2, 2e6, 0.25}, 1, 1800, 0.5)
	last := math.Inf(-1)
	for c := -40.0; c <= 5; c += 0.05 {
		heat := g.heat(3, c)
		assert.Greater(t, heat, last)
		last = heat
		assert.InDelta(t, c, g.temperature(3, heat), 1e-9)
		if math.Abs(c) > 0.02 {
			var col column
			col.guess(&g, 3, c)
			assert.InDelta(t, heat, col.heat[3], 1e-9*math.Abs(heat))
			assert.InEpsilon(t, (g.heat(3, c+0.001)-g.heat(3, c-0.001))/0.002, col.slope[3], 1e-4)
		}
	}
	for _, c := range []float64{0.5, 1, 5} {
		t.Logf("at −%v °C frozen: %.2f of the water", c, freezable*c/(c+halfFrozen))
	}
}

// Half the step moves no daily mean by more than 0.03 °C, half the spacing none by
// 0.05, bare or under any film, as the page shows them: in the spring of the reference, and where the ground freezes,
// thaws in its hardest weeks, or stays frozen below.
func TestFinerRunsAgree(t *testing.T) {
	var halved []float64
	for i, z := range nodeDepths {
		if i > 0 {
			halved = append(halved, (nodeDepths[i-1]+z)/2)
		}
		halved = append(halved, z)
	}
	from := func(place weather.Normals, month int, days unit.Days) Input {
		return UsualLoam(place, unit.On(2027, month, 1), days)
	}
	clay := from(places["Ontario"], 1, MaxDays)
	clay.Soil = SoilOf("clay")
	wet := from(places["New Hampshire"], 1, MaxDays)
	wet.Moisture = Wet
	north := weather.Normals{Latitude: 52}
	for m := range 12 {
		wave := unit.Celsius(16 * math.Cos(float64(m)*math.Pi/6))
		north.Minimum[m], north.Maximum[m] = -8-wave, 4-wave
	}
	for _, place := range []struct {
		name string
		in   Input
	}{
		{"New England spring", newEnglandSpring()},
		{"wet loam, New Hampshire, winter to summer", wet},
		{"clay, Ontario, winter to summer", clay},
		{"loam, New Hampshire, autumn to spring", from(places["New Hampshire"], 9, MaxDays)},
		{"an invented north that thaws on top only, spring", from(north, 4, 100)},
	} {
		base := run(t, place.in)
		for _, c := range []struct {
			name   string
			depths []float64
			steps  int
			most   float64
		}{{"half the step", nodeDepths[:], 2 * stepsPerDay, 0.031}, {"half the spacing", halved, stepsPerDay, 0.05}} {
			fine, err := newRunner(place.in, referenced, how{c.depths, c.steps, implicitness, usualNature})
			assert.NoError(t, err)
			fine.Step(1000)
			mean, extreme := 0.0, 0.0
			for f := range Films {
				for d := range Depths {
					a, b := &base.season.Soil[f][d], &fine.season.Soil[f][d]
					for day := range int(place.in.Days) {
						mean = math.Max(mean, math.Abs(float64(a.Mean[day]-b.Mean[day])))
						extreme = math.Max(extreme, math.Abs(float64(a.High[day]-b.High[day])))
						extreme = math.Max(extreme, math.Abs(float64(a.Low[day]-b.Low[day])))
					}
				}
			}
			t.Logf("%s, %s: daily means move by at most %.3f °C, lowests and highests by %.3f °C", place.name, c.name, mean, extreme)
			assert.Less(t, mean, c.most, "%s, %s", place.name, c.name)
			assert.Less(t, extreme, 0.5, "%s, %s", place.name, c.name)
		}
	}
}

// The polynomial against FAO-56 equation 11 and its own difference quotient.
func TestSaturation(t *testing.T) {
	for c := -30.0; c <= 85; c += 5 {
		e, slope := saturation(c)
		exact := 1000 * float64(sky.Saturation(unit.Celsius(c)))
		assert.InDelta(t, 1, e/exact, 0.013, "%v °C", c)
		up, _ := saturation(c + 0.01)
		down, _ := saturation(c - 0.01)
		assert.InDelta(t, 1, slope/((up-down)/0.02), 1e-4, "%v °C", c)
	}
}

// Prototype rows of the figures: Lu 2007 conductivity and de Vries heat
// capacity for typical densities and water contents, printed to 0.01.
func TestSoilProperties(t *testing.T) {
	for _, c := range []struct {
		name                                  string
		density, water, sand, conduct, capape float64
	}{
		{"sand, dry", 1.60, 0.04, 0.92, 0.93, 1.33},
		{"loam, moist", 1.40, 0.25, 0.40, 1.24, 2.06},
		{"silt loam, moist", 1.35, 0.28, 0.20, 1.24, 2.15},
		{"clay, wet", 1.25, 0.46, 0.20, 1.34, 2.83},
	} {
		k, heat := Conductivity(c.density, c.water, c.sand), HeatCapacity(c.density, c.water)/1e6
		t.Logf("%s: K %.2f (figures %.2f), C %.2f (%.2f)", c.name, k, c.conduct, heat, c.capape)
		assert.InDelta(t, c.conduct, k, 0.12, c.name)
		assert.InDelta(t, c.capape, heat, 0.12, c.name)
	}
	for _, row := range table.Soils {
		in := Input{Soil: SoilOf(row.ID)}
		assert.NoError(t, in.Soil.Check(), row.ID)
		var conductivity []float64
		for _, in.Moisture = range []Moisture{Dry, Moist, Wet} {
			_, l := in.layers()
			assert.Greater(t, l.conductivity, 0.3)
			assert.Less(t, l.conductivity, 2.4)
			assert.Greater(t, l.capacity, 1.2e6)
			assert.Less(t, l.capacity, 3.2e6)
			conductivity = append(conductivity, l.conductivity)
		}
		assert.IsIncreasing(t, conductivity, row.ID)
	}
}

// Where a balance stops, turns that go on move it by no more than a thousandth of
// [closeness]: over bare ground and under every film, by day and by night, from
// starts as far off as a step's.
func TestABalanceStopsClose(t *testing.T) {
	worst := 0.0
	far := func(a, b float64) { worst = math.Max(worst, math.Abs(a-b)) }
	for _, w := range []hour{
		{air: 22, solar: 700, sky: 330, vapour: 1200, forced: 8 * 8 * 8, alone: 8, thin: 1},
		{air: 34, solar: 900, sky: 400, vapour: 2500, forced: 3 * 3 * 3, alone: 3, thin: 1},
		{air: 4, solar: 0, sky: 260, vapour: 700, forced: 4 * 4 * 4, alone: 4, thin: 0.8},
		{air: -12, solar: 300, sky: 200, vapour: 200, forced: 6 * 6 * 6, alone: 6, thin: 1},
	} {
		for _, off := range []float64{-8, -1, -0.1, -0.011, 0.009, 0.3, 3, 12} {
			const coefficient = 40
			rest := coefficient * (w.air + 3)
			b := bare{albedo: 0.18, resistance: 300}
			first, _ := b.balance(&w, coefficient, rest, implicitness, w.air+3+off)
			on := first
			for range 5 {
				on, _ = b.balance(&w, coefficient, rest, implicitness, on)
			}
			far(first, on)
			for f := Bare + 1; f < Films; f++ {
				v := newCover(referenced.list[f-1].Optics, 0.18, 0.003, 0.8)
				film, soil, _ := v.balance(&w, coefficient, rest, implicitness, w.air+6+off, w.air+3-off)
				onFilm, onSoil := film, soil
				for range 5 {
					onFilm, onSoil, _ = v.balance(&w, coefficient, rest, implicitness, onFilm, onSoil)
				}
				far(film, onFilm)
				far(soil, onSoil)
			}
		}
	}
	t.Logf("turns that go on move a balance by at most %.2g K", worst)
	assert.Less(t, worst, closeness/1000)
}
