package heat

// column is the state of one strip of ground under one cover.
type column struct {
	temperature [maxNodes]float64 // °C
	beta        [maxNodes]float64
	ice         [maxNodes]float64 // latent heat already given off, W/m² over a step
	frozen      bool              // any ice at all
	flux        float64           // heat into the ground at the end of the last step, W/m²
	film        float64           // film temperature, °C
	stored      float64           // sum of the fluxes that entered, J/m² (for the books)
}

// below eliminates the nodes under the surface from the bottom up, so that the
// surface node alone remains: surface·T0 − rest = θ·G(T0).
func (c *column) below(g *grid) (rest float64) {
	t, explicit := &c.temperature, 1-g.theta
	last := g.nodes - 1
	// Heat that flows into node i from above, at the old temperatures.
	up := g.link[last-1] * (t[last-1] - t[last])
	c.beta[last] = (g.storage[last]*t[last] + explicit*up) * g.pivot[last]
	for i := last - 1; i > 0; i-- {
		above := g.link[i-1] * (t[i-1] - t[i])
		known := g.storage[i]*t[i] + explicit*(above-up) + g.theta*g.link[i]*c.beta[i+1]
		c.beta[i] = known * g.pivot[i]
		up = above
	}
	return g.storage[0]*t[0] + explicit*(c.flux-up) + g.theta*g.link[0]*c.beta[1]
}

// settle takes the new surface temperature and flux and fills in the nodes
// below.
func (c *column) settle(g *grid, surface, flux float64) {
	c.stored += g.step * (g.theta*flux + (1-g.theta)*c.flux)
	c.flux = flux
	t := &c.temperature
	t[0] = surface
	coldest := surface
	for i := 1; i < g.nodes; i++ {
		t[i] = g.alpha[i]*t[i-1] + c.beta[i]
		coldest = min(coldest, t[i])
	}
	if coldest < 0 || c.frozen {
		c.freeze(g)
	}
}

// freeze holds a node at 0 °C while its water freezes or thaws: what would cool
// it below (or warm it above) 0 °C goes into ice first.
func (c *column) freeze(g *grid) {
	c.frozen = false
	for i := range g.nodes {
		excess := g.storage[i] * c.temperature[i] // against 0 °C; negative freezes
		switch {
		case excess < 0 && c.ice[i] < g.latent[i]:
			turn := min(-excess, g.latent[i]-c.ice[i])
			c.ice[i] += turn
			c.temperature[i] += turn / g.storage[i]
		case excess > 0 && c.ice[i] > 0:
			turn := min(excess, c.ice[i])
			c.ice[i] -= turn
			c.temperature[i] -= turn / g.storage[i]
		}
		c.frozen = c.frozen || c.ice[i] > 0
	}
}

// content gives the heat held above 0 °C liquid, J/m².
func (c *column) content(g *grid) (sum float64) {
	for i := range g.nodes {
		sum += g.step * (g.storage[i]*c.temperature[i] - c.ice[i])
	}
	return sum
}
