package heat

import "math"

// Soil water does not freeze all at once at 0 °C: the finer the pore, the colder
// it must be, and some never does. A node at a temperature T below 0 °C has
// frozen the share |T| / (|T| + halfFrozen) of what can freeze at all.
//
// Both constants were set once by the shape of the retention curves of Clapp and
// Hornberger (1978), Water Resources Research 14:601–604, for a moist loam, with
// the suction of ice at T (121 m of water per K; both from memory): of its water
// they freeze 0.27, 0.36 and 0.52 at −0.5, −1 and −5 °C; this freezes 0.23, 0.35
// and 0.58. Sand and clay freeze a little less.
const (
	halfFrozen   = 1.0    // K below 0 °C
	freezable    = 0.7    // of the water
	heatOfFusion = 3.34e8 // J per m³ of water
)

// heat gives what a node holds above liquid water at 0 °C, over a step, W/m².
func (g *grid) heat(node int, t float64) float64 {
	if t >= 0 {
		return g.storage[node] * t
	}
	return g.storage[node]*t + g.latent[node]*t/(g.half-t)
}

// slope is the derivative of heat, W/m²/K: at 0 °C that of thawed ground.
func (g *grid) slope(node int, t float64) float64 {
	if t >= 0 {
		return g.storage[node]
	}
	return g.storage[node] + g.latent[node]*g.half/((g.half-t)*(g.half-t))
}

// temperature is the inverse of heat.
func (g *grid) temperature(node int, heat float64) float64 {
	s := g.storage[node]
	if heat >= 0 {
		return heat / s
	}
	// With x = −t and q = −heat: s·x² + b·x − q·half = 0.
	q := -heat
	b := s*g.half + g.latent[node] - q
	root := math.Sqrt(b*b + 4*s*q*g.half)
	if b > 0 {
		return -2 * q * g.half / (b + root)
	}
	return (b - root) / (2 * s)
}

const (
	// agreement is how close a turn's temperatures must lie to those that its
	// heat gives, K. What is left of the difference stays in the books, since
	// the heat is kept and not the temperature.
	agreement   = 1e-3
	mostGuesses = 30
	justFrozen  = -1e-9 // °C: below the kink at 0 °C
)

// advanceFrozen takes a step of ground that is frozen or begins to freeze, and
// gives the flux at its end. The heat of a node bends with its temperature, so
// the step is solved by Newton's method, each turn as the step of thawed ground
// is. Where a guess crosses 0 °C the next turn begins at the kink: from there
// the turns come nearer from one side and cannot jump to and fro.
func (c *column) advanceFrozen(g *grid, top surface) (flux float64) {
	c.next = c.temperature
	var kept [maxNodes]float64
	for range mostGuesses {
		coefficient, rest := c.belowFrozen(g)
		var t float64
		t, flux = top(coefficient, rest)
		worst := 0.0
		for i := range g.nodes {
			if i > 0 {
				t = c.alpha[i]*t + c.beta[i]
			}
			guess := c.next[i]
			if guess >= 0 && t >= 0 { // thawed before and after: the straight line is the truth
				kept[i], c.next[i] = g.storage[i]*t, t
				continue
			}
			kept[i] = g.heat(i, guess) + g.slope(i, guess)*(t-guess)
			worst = max(worst, math.Abs(g.temperature(i, kept[i])-t))
			switch {
			case guess >= 0 && t < 0:
				c.next[i] = justFrozen
			case guess < 0 && t > 0:
				c.next[i] = 0
			default:
				c.next[i] = t
			}
		}
		if worst < agreement {
			break
		}
	}
	c.frozen = false
	for i := range g.nodes {
		c.temperature[i] = g.temperature(i, kept[i])
		c.frozen = c.frozen || c.temperature[i] < 0
	}
	return flux
}

// belowFrozen is below with the heat of each node as a straight line through
// the last guess.
func (c *column) belowFrozen(g *grid) (coefficient, rest float64) {
	t, explicit := &c.temperature, 1-g.theta
	up := 0.0
	for i := g.nodes - 1; ; i-- {
		guess := c.next[i]
		slope := g.slope(i, guess)
		diagonal, above := slope, c.flux
		if i > 0 {
			diagonal += g.theta * g.link[i-1]
			above = g.link[i-1] * (t[i-1] - t[i])
		}
		known := slope*guess - g.heat(i, guess) + g.heat(i, t[i]) + explicit*(above-up)
		if i < g.nodes-1 {
			diagonal += g.theta * g.link[i] * (1 - c.alpha[i+1])
			known += g.theta * g.link[i] * c.beta[i+1]
		}
		if i == 0 {
			return diagonal, known
		}
		pivot := 1 / diagonal
		c.alpha[i], c.beta[i] = g.theta*g.link[i-1]*pivot, known*pivot
		up = above
	}
}
