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

// advanceFrozen takes a step of ground that is frozen or begins to freeze, after
// below, and gives the flux at its end. The heat of a node bends with its
// temperature, so the step is solved by Newton's method, each turn as the step of
// thawed ground is. Where a guess crosses 0 °C the next turn begins at the kink:
// from there the turns come nearer from one side and cannot jump to and fro.
//
// Only the nodes from the surface down to the lowest that freezes are gone through
// in each turn: below them the elimination of thawed ground holds.
func (c *column) advanceFrozen(g *grid, top surface) (flux float64) {
	var kept [maxNodes]float64
	frost := 1
	for i := range g.nodes {
		if c.temperature[i] < 0 {
			frost = i + 1
		}
	}
	for i := range frost {
		c.guess(g, i, c.goesOn(i))
		c.hold(g, i)
	}
	c.before = c.temperature
	for range mostGuesses {
		coefficient, rest := c.belowFrozen(g, frost)
		var t float64
		t, flux = top(coefficient, rest)
		agreed := true
		for i := range frost {
			if i > 0 {
				t = c.alpha[i]*t + c.beta[i]
			}
			guess := c.next[i]
			kept[i] = c.heat[i] + c.slope[i]*(t-guess)
			switch {
			case guess >= 0 && t < 0:
				agreed = agreed && math.Abs(g.temperature(i, kept[i])-t) < agreement
				c.guess(g, i, justFrozen)
			case guess < 0 && t > 0:
				agreed = agreed && math.Abs(g.temperature(i, kept[i])-t) < agreement
				c.guess(g, i, 0)
			default:
				c.guess(g, i, t)
				agreed = agreed && math.Abs(kept[i]-c.heat[i]) < agreement*c.slope[i]
			}
		}
		lowest := frost
		for i := frost; i < g.nodes; i++ {
			t = g.alpha[i]*t + c.beta[i]
			if c.next[i] = t; t < 0 {
				lowest = i + 1
			}
		}
		if lowest == frost && agreed {
			break
		}
		for ; frost < lowest; frost++ { // the front has gone down
			kept[frost] = g.storage[frost] * c.next[frost]
			if c.guess(g, frost, c.next[frost]); c.next[frost] < 0 {
				c.guess(g, frost, justFrozen)
			}
			c.hold(g, frost)
		}
	}
	c.frozen = false
	for i := range g.nodes {
		if c.temperature[i] = c.next[i]; i < frost {
			c.temperature[i] = g.temperature(i, kept[i])
			c.frozen = c.frozen || c.temperature[i] < 0
		}
	}
	return flux
}

// goesOn is the temperature that a frozen node reaches if it goes on as in the last
// step, where that stays below 0 °C; else its own.
func (c *column) goesOn(node int) float64 {
	t := c.temperature[node]
	if on := 2*t - c.before[node]; c.frozen && t < 0 && c.before[node] < 0 && on < 0 {
		return on
	}
	return t
}

// guess sets what a node's heat is drawn as: a straight line through a temperature.
func (c *column) guess(g *grid, node int, t float64) {
	c.next[node], c.heat[node], c.slope[node] = t, g.storage[node]*t, g.storage[node]
	if t < 0 {
		per := 1 / (g.half - t)
		share := g.latent[node] * per
		c.heat[node] += share * t
		c.slope[node] += share * g.half * per
	}
}

// hold works out what a node has at the end of a step if nothing flowed at that end.
func (c *column) hold(g *grid, node int) {
	t, flow := &c.temperature, c.flux
	if node > 0 {
		flow = g.link[node-1] * (t[node-1] - t[node])
	}
	if node < g.nodes-1 {
		flow -= g.link[node] * (t[node] - t[node+1])
	}
	c.held[node] = g.heat(node, t[node]) + (1-g.theta)*flow
}

// belowFrozen eliminates the nodes that are or may be frozen, so many from the
// surface down, with the heat of each as a straight line through the last guess.
func (c *column) belowFrozen(g *grid, frost int) (coefficient, rest float64) {
	alpha, beta := 0.0, 0.0
	if frost < g.nodes {
		alpha, beta = g.alpha[frost], c.beta[frost]
	}
	for i := frost - 1; ; i-- {
		down := g.theta * g.link[i]
		diagonal := c.slope[i] + down*(1-alpha)
		known := c.slope[i]*c.next[i] - c.heat[i] + c.held[i] + down*beta
		if i == 0 {
			return diagonal, known
		}
		up := g.theta * g.link[i-1]
		pivot := 1 / (diagonal + up)
		alpha, beta = up*pivot, known*pivot
		c.alpha[i], c.beta[i] = alpha, beta
	}
}
