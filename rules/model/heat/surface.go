package heat

import "math"

// Physical constants, SI. Textbook values.
const (
	stefanBoltzmann = 5.6704e-8 // W/m²/K⁴
	kelvin          = 273.15
	airCapacity     = 1200.0 // J/m³/K, ρ·cp of air
	latentHeat      = 2.45e6 // J/kg
	stillAir        = 0.026  // W/m/K, conductivity of air
	vapourDiffusion = 2.5e-5 // m²/s
	psychrometric   = 66.1   // Pa/K at sea level
	vapourGas       = 461.5  // J/kg/K
	soilEmissivity  = 0.95
)

// hour is the weather at one moment of a day.
type hour struct {
	air    float64 // °C
	solar  float64 // W/m² on the level, below any leaves
	sky    float64 // W/m², long-wave from sky and leaves
	vapour float64 // Pa, vapour pressure of the air
	forced float64 // W/m²/K cubed: forced convection, see exchange
	alone  float64 // W/m²/K: forced convection where no air rises by itself
	thin   float64 // density of the air, as a share of that at sea level
}

// saturation gives the saturation vapour pressure in Pa and its slope in Pa/K,
// −50 to 95 °C: the polynomial of Lowe, P. R. (1977), An approximating
// polynomial for the computation of saturation vapor pressure, Journal of
// Applied Meteorology 16:100–103 (from memory; checked against FAO-56 equation
// 11 by a test). It needs no exponential, so every machine gives the same bits.
func saturation(t float64) (e, slope float64) {
	if t > 95 { // min and max are calls in WebAssembly, a tenth of all this work
		t = 95
	} else if t < -50 {
		t = -50
	}
	const a0, a1, a2, a3, a4, a5, a6 = 610.7799961, 44.36518521, 1.428945805, 2.650648471e-2, 3.031240396e-4, 2.034080948e-6, 6.136820929e-9
	e = a0 + t*(a1+t*(a2+t*(a3+t*(a4+t*(a5+t*a6)))))
	slope = a1 + t*(2*a2+t*(3*a3+t*(4*a4+t*(5*a5+t*6*a6))))
	return e, slope
}

// exchange gives the heat transfer coefficient to the outside air in W/m²/K and
// its slope in the surface temperature. Forced and free convection join by the
// cube: free convection over a warm plate is 1.5·ΔT^⅓ at sea level, whose cube is
// 3.375·ΔT, and goes with the air's density to the power ⅔ (common practice; see
// the engineering handbooks on heated horizontal plates).
//
// near is what it was the turn before, from where one turn of Halley's method finds the
// cube root: it makes three right digits of each one.
func (w *hour) exchange(warmer, near float64) (h, slope float64) {
	if warmer <= 0 {
		return w.alone, 0
	}
	free := 3.375 * w.thin * w.thin
	cube := w.forced + free*warmer
	has := near * near * near
	h = near * (has + 2*cube) / (2*has + cube)
	return h, free / (3 * h * h)
}

// begin is a first guess at the transfer coefficient, good to some ten-thousandths.
func (w *hour) begin(warmer float64) float64 {
	h, _ := w.exchange(warmer, w.alone)
	h, _ = w.exchange(warmer, h)
	return h
}

// forcedConvection gives the forced part in W/m²/K for a wind in m/s at 2 m over
// a roughness in m, in air at sea level: turbulent transfer by the logarithmic
// wind profile.
func forcedConvection(wind, roughness float64) float64 {
	const karmanSquared, height = 0.16, 2.0
	l := math.Log(height / roughness)
	return airCapacity * karmanSquared * math.Max(0.3, wind) / (l * l)
}

// bare is the surface of open ground.
type bare struct {
	albedo     float64
	resistance float64 // s/m, of the drying surface to evaporation
	latent     float64 // W/m² of the last balance
}

const (
	mostTurns = 12
	// closeness, K: what Newton's method leaves after such a step is a thousandth of it
	// (a test compares with turns that go on).
	closeness = 1e-2
)

// balance finds the surface temperature that closes the energy balance of bare
// ground with the ground below: surface·T − rest = θ·G(T).
func (b *bare) balance(w *hour, coefficient, rest, theta, start float64) (t, flux float64) {
	t = start
	gain := w.solar*(1-b.albedo) + soilEmissivity*w.sky
	evaporation, h, hSlope := 0.0, w.begin(t-w.air), 0.0
	for range mostTurns {
		k := t + kelvin
		cube := k * k * k
		h, hSlope = w.exchange(t-w.air, h)
		e, eSlope := saturation(t)
		// Evaporation: ρcp/γ·(e_s−e_a)/(r_a+r_s) with r_a = ρcp/h. In thin air ρ
		// and γ shrink alike.
		ventilation := w.thin * airCapacity / h
		resistance := ventilation + b.resistance
		wet := airCapacity / psychrometric / resistance
		wetSlope := wet / resistance * ventilation / h * hSlope
		evaporation = wet * (e - w.vapour)
		flux = gain - soilEmissivity*stefanBoltzmann*cube*k - h*(t-w.air) - evaporation
		drying := wet*eSlope + wetSlope*(e-w.vapour)
		slope := -4*soilEmissivity*stefanBoltzmann*cube - h - hSlope*(t-w.air) - drying
		step := (theta*flux - coefficient*t + rest) / (coefficient - theta*slope)
		t += step
		evaporation += drying * step
		if step < closeness && step > -closeness {
			break
		}
	}
	b.latent = evaporation
	// The flux that the books see is the one the ground's equation demands.
	return t, (coefficient*t - rest) / theta
}

// cover is a film over ground, as numbers ready for the balance.
type cover struct {
	// Shares of the sun on film and soil, after all reflections between them.
	sunFilm, sunSoil float64
	// Long-wave: net gain of film and soil per W/m² of sky radiation, of black
	// radiation at film temperature and at soil temperature.
	skyFilm, hotFilm, soilFilm float64
	skySoil, filmSoil, hotSoil float64
	gap                        float64 // W/m²/K through the air under the film
	vapour                     float64 // J·m/s/kg…: latent heat per kg/m³ of vapour difference, W·m/kg
}

// Polyethylene without pigment lets long-wave through like a window; the water
// that condenses under it over moist ground is what closes it. So soil under
// clear film grows warmer the moister it is (measured and modelled: Soil Sci.
// Soc. Am. J. 48(2):362, 1984). Water is opaque to long-wave, so what passes is
// what finds its way between the drops.
const (
	// allDrops is the wetness, that of a moist bed, from which drops cover a film's
	// underside: a judgement.
	allDrops = 0.8
	// betweenDrops is what of the film they then leave free: drops that merge cover
	// some three quarters (from memory).
	betweenDrops = 0.25
)

// newCover works out the reflections. albedo is the soil's; gap the thickness
// of the still air between, m; wetness 0–1 how freely the soil's water reaches
// the film. The structure is that of Ham, J. M. and Kluitenberg, G. J. (1994),
// Agricultural and Forest Meteorology 71:403–424 (from memory); the algebra is
// derived here: light that bounces between film and soil is a geometric series.
func newCover(o Optics, albedo, gap, wetness float64) cover {
	drops := math.Min(1, wetness/allDrops)
	o.LongTransmit *= 1 - drops*(1-betweenDrops)
	short := 1 / (1 - o.ReflectUnder*albedo)
	absorbTop := 1 - o.ReflectTop - o.Transmit
	absorbUnder := 1 - o.ReflectUnder - o.Transmit
	long := 1 / (1 - o.LongReflectUnder*(1-soilEmissivity))
	emitTop := 1 - o.LongReflectTop - o.LongTransmit
	emitUnder := 1 - o.LongReflectUnder - o.LongTransmit
	r := 1 - soilEmissivity
	// Down-welling on the soil: sky, film and the soil's own returned.
	downSky, downFilm, downSoil := long*o.LongTransmit, long*emitUnder, long*o.LongReflectUnder*soilEmissivity
	// Up-welling on the film's underside: the soil's own plus the reflected.
	upSky, upFilm, upSoil := r*downSky, r*downFilm, soilEmissivity+r*downSoil
	return cover{
		sunFilm:  absorbTop + o.Transmit*albedo*absorbUnder*short,
		sunSoil:  o.Transmit * (1 - albedo) * short,
		skyFilm:  emitTop + emitUnder*upSky,
		hotFilm:  emitUnder*upFilm - emitTop - emitUnder,
		soilFilm: emitUnder * upSoil,
		skySoil:  soilEmissivity * downSky,
		filmSoil: soilEmissivity * downFilm,
		hotSoil:  soilEmissivity * (downSoil - 1),
		gap:      stillAir / gap,
		vapour:   latentHeat * vapourDiffusion / gap * wetness,
	}
}

// balance finds the film and soil surface temperatures together: the film holds
// no heat, the soil passes its gain to the ground below.
func (v *cover) balance(w *hour, coefficient, rest, theta, startFilm, startSoil float64) (film, soil, flux float64) {
	film, soil = startFilm, startSoil
	sunFilm := v.sunFilm*w.solar + v.skyFilm*w.sky
	sunSoil := v.sunSoil*w.solar + v.skySoil*w.sky
	h, hSlope := w.begin(film-w.air), 0.0
	for range mostTurns {
		kf, ks := film+kelvin, soil+kelvin
		cubeFilm, cubeSoil := stefanBoltzmann*kf*kf*kf, stefanBoltzmann*ks*ks*ks
		h, hSlope = w.exchange(film-w.air, h)
		// Condensation under the film; never the other way, since the film's
		// drops run back to the soil rather than dry it.
		es, esSlope := saturation(soil)
		ef, efSlope := saturation(film)
		ds, df := es/(vapourGas*ks), ef/(vapourGas*kf)
		latent, bySoil, byFilm := 0.0, 0.0, 0.0
		if ds > df {
			latent = v.vapour * (ds - df)
			bySoil = v.vapour * (esSlope/(vapourGas*ks) - ds/ks)
			byFilm = -v.vapour * (efSlope/(vapourGas*kf) - df/kf)
		}
		filmGain := sunFilm + v.hotFilm*cubeFilm*kf + v.soilFilm*cubeSoil*ks - h*(film-w.air) - v.gap*(film-soil) + latent
		flux = sunSoil + v.filmSoil*cubeFilm*kf + v.hotSoil*cubeSoil*ks + v.gap*(film-soil) - latent
		// Newton on both: [a b; c d]·step = −[filmGain, soilGain].
		a := 4*v.hotFilm*cubeFilm - h - hSlope*(film-w.air) - v.gap + byFilm
		b := 4*v.soilFilm*cubeSoil + v.gap + bySoil
		c := theta * (4*v.filmSoil*cubeFilm + v.gap - byFilm)
		d := theta*(4*v.hotSoil*cubeSoil-v.gap-bySoil) - coefficient
		soilGain := theta*flux - coefficient*soil + rest
		det := a*d - b*c
		stepFilm := (b*soilGain - d*filmGain) / det
		stepSoil := (c*filmGain - a*soilGain) / det
		film += stepFilm
		soil += stepSoil
		if stepFilm < closeness && stepFilm > -closeness && stepSoil < closeness && stepSoil > -closeness {
			break
		}
	}
	return film, soil, (coefficient*soil - rest) / theta
}
