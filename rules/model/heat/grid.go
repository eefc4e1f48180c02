package heat

// maxNodes bounds the grid so that a column is a plain value without slices.
const maxNodes = 52

// nodeDepths are the standard depths in m. The two depths that growers measure,
// 5 and 10 cm, are nodes; spacing widens downwards with the damping of the
// daily wave, but stays near a fifth of the depth as far as the ground may
// freeze, since a freezing front is only as sharp as the nodes are close. The
// last node lies below the reach of the seasons.
var nodeDepths = [...]float64{0, 0.0125, 0.025, 0.05, 0.075, 0.10, 0.13, 0.17, 0.22, 0.27, 0.33, 0.40, 0.48,
	0.57, 0.68, 0.80, 0.94, 1.10, 1.28, 1.5, 1.8, 2.2, 2.8, 3.6}

// layer is a stretch of ground with one conductivity (W/m/K), heat capacity
// (J/m³/K) and water share.
type layer struct {
	conductivity, capacity, water float64
}

// grid holds what the implicit step of a column needs and never changes during
// a run: it is worked out once and shared by all columns.
//
// Control volumes meet halfway between nodes; the surface node owns half a
// spacing. The step is the θ-method: θ = ½ is Crank-Nicolson, θ = 1 backward
// Euler.
type grid struct {
	nodes   int
	step    float64 // s
	theta   float64
	depth   [maxNodes]float64
	storage [maxNodes]float64 // C·V/dt, W/m²/K
	link    [maxNodes]float64 // conductance to the next node below, W/m²/K
	// The elimination from below of thawed ground, T[i] = alpha·T[i−1] + beta[i].
	// Old temperatures above, at and below a node, and the beta below it, enter
	// its beta by four coefficients.
	alpha                            [maxNodes]float64
	fromAbove, own, fromBelow, rises [maxNodes]float64
	surface                          float64           // coefficient of the surface node after elimination
	latent                           [maxNodes]float64 // heat to freeze what can freeze in the node, over dt, W/m²
	half                             float64           // K below 0 °C at which half of that is frozen
	five, ten                        int               // nodes at 5 and 10 cm
	loose                            layer
}

// newGrid lays the depths over two layers that meet at a boundary: the bed and
// the ground below it.
func newGrid(depths []float64, top, below layer, boundary, step, theta float64) grid {
	g := grid{nodes: len(depths), step: step, theta: theta, half: halfFrozen, loose: top}
	copy(g.depth[:], depths)
	// over adds up a property over a stretch that may lie in both layers.
	over := func(from, to float64, property func(layer) float64) float64 {
		split := min(max(boundary, from), to)
		return property(top)*(split-from) + property(below)*(to-split)
	}
	for i, z := range depths {
		from, to := z, z
		if i > 0 {
			from = (depths[i-1] + z) / 2
		}
		if i < len(depths)-1 {
			to = (z + depths[i+1]) / 2
			g.link[i] = 1 / over(z, depths[i+1], func(l layer) float64 { return 1 / l.conductivity })
		}
		g.storage[i] = over(from, to, func(l layer) float64 { return l.capacity }) / step
		g.latent[i] = over(from, to, func(l layer) float64 { return l.water * freezable * heatOfFusion }) / step
		if z == 0.05 {
			g.five = i
		}
		if z == 0.10 {
			g.ten = i
		}
	}
	explicit := 1 - theta
	for i := g.nodes - 1; i > 0; i-- {
		up, down := g.link[i-1], g.link[i] // the last node has no link down
		pivot := 1 / (g.storage[i] + theta*up + theta*down*(1-g.alpha[i+1]))
		g.alpha[i] = theta * up * pivot
		g.fromAbove[i], g.fromBelow[i] = explicit*up*pivot, explicit*down*pivot
		g.own[i] = (g.storage[i] - explicit*(up+down)) * pivot
		g.rises[i] = theta * down * pivot
	}
	g.surface = g.storage[0] + theta*g.link[0]*(1-g.alpha[1])
	return g
}
