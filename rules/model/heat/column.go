package heat

// column is the state of one strip of ground under one cover.
type column struct {
	temperature [maxNodes]float64 // °C
	// The elimination of one step: T[i] = alpha·T[i−1] + beta[i]. Only frozen
	// ground has an alpha of its own.
	alpha, beta [maxNodes]float64
	next        [maxNodes]float64 // the step's new temperatures; of frozen ground, its last guess
	// Of ground that may be frozen: the heat at that guess, W/m² over a step, its slope
	// in the temperature, and what the node would have if nothing flowed at the step's end.
	heat, slope, held [maxNodes]float64
	before            [maxNodes]float64 // temperatures before the last step, where that froze
	frozen            bool              // any node below 0 °C
	flux              float64           // heat into the ground at the end of the last step, W/m²
	film              float64           // film temperature, °C
	stored            float64           // sum of the fluxes that entered, J/m² (for the books)
}

// surface closes a step: from surface·T0 − rest = θ·G(T0), whose coefficient
// and rest it is given, it finds the surface temperature T0 and the flux G.
type surface func(coefficient, rest float64) (t, flux float64)

// advance takes the column one step on.
func (c *column) advance(g *grid, top surface) {
	flux, done, rest := 0.0, false, c.below(g)
	if !c.frozen {
		var t float64
		t, flux = top(g.surface, rest)
		done = c.settle(g, t)
	}
	if !done {
		flux = c.advanceFrozen(g, top)
	}
	c.stored += g.step * (g.theta*flux + (1-g.theta)*c.flux)
	c.flux = flux
}

// below eliminates the nodes under the surface from the bottom up, so that the
// surface node alone remains.
func (c *column) below(g *grid) (rest float64) {
	t, b := &c.temperature, &c.beta
	last := g.nodes - 1
	under, here, above := 0.0, t[last], t[last-1]
	beta := g.fromAbove[last]*above + g.own[last]*here
	b[last] = beta
	for i := last - 1; i > 0 && i < maxNodes; i-- { // what the next node needs stays at hand: to read it back costs more than to work it out
		under, here, above = here, above, t[i-1]
		beta = g.fromAbove[i]*above + g.own[i]*here + g.fromBelow[i]*under + g.rises[i]*beta
		b[i] = beta
	}
	explicit := 1 - g.theta
	return g.storage[0]*t[0] + explicit*(c.flux-g.link[0]*(t[0]-t[1])) + g.theta*g.link[0]*beta
}

// settle takes the new surface temperature and fills in the nodes below. If any
// falls below 0 °C it takes nothing and reports false: the step freezes.
func (c *column) settle(g *grid, surface float64) bool {
	n := &c.next
	n[0] = surface
	coldest, t := surface, surface
	for i := 1; i < g.nodes && i < maxNodes; i++ {
		t = g.alpha[i]*t + c.beta[i]
		n[i] = t
		if t < coldest {
			coldest = t
		}
	}
	if coldest < 0 {
		return false
	}
	copy(c.temperature[:g.nodes], n[:g.nodes])
	return true
}

// content gives the heat held above 0 °C liquid, J/m².
func (c *column) content(g *grid) (sum float64) {
	for i := range g.nodes {
		sum += g.step * g.heat(i, c.temperature[i])
	}
	return sum
}
