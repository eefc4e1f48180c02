package heat

// maxNodes bounds the grid so that a column is a plain value without slices.
const maxNodes = 48

// nodeDepths are the standard depths in m. The two depths that growers measure,
// 5 and 10 cm, are nodes; spacing widens downwards with the damping of the
// daily wave, and the last node lies below the reach of the seasons.
var nodeDepths = [...]float64{0, 0.0125, 0.025, 0.05, 0.075, 0.10, 0.14, 0.20, 0.28, 0.40, 0.60, 0.90, 1.4, 2.2, 3.4}

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
	nodes     int
	step      float64 // s
	theta     float64
	depth     [maxNodes]float64
	storage   [maxNodes]float64 // C·V/dt, W/m²/K
	link      [maxNodes]float64 // conductance to the next node below, W/m²/K
	pivot     [maxNodes]float64 // 1 / (diagonal after elimination from below)
	alpha     [maxNodes]float64 // T[i] = alpha·T[i−1] + beta[i]
	surface   float64           // coefficient of the surface node after elimination
	latent    [maxNodes]float64 // heat to freeze the node's water, over dt, W/m²
	five, ten int               // nodes at 5 and 10 cm
	loose     layer
}

// newGrid lays the depths over two layers that meet at a boundary: the bed and
// the ground below it.
func newGrid(depths []float64, top, below layer, boundary, step, theta float64) grid {
	g := grid{nodes: len(depths), step: step, theta: theta, loose: top}
	copy(g.depth[:], depths)
	at := func(z float64) layer {
		if z < boundary {
			return top
		}
		return below
	}
	for i, z := range depths {
		var thickness float64
		if i > 0 {
			thickness += (z - depths[i-1]) / 2
		}
		if i < len(depths)-1 {
			gap := depths[i+1] - z
			thickness += gap / 2
			g.link[i] = at(z+gap/2).conductivity / gap
		}
		g.storage[i] = at(z).capacity * thickness / step
		// Part of the water stays liquid in fine pores well below 0 °C.
		const freezing, freezable = 3.34e8, 0.7
		g.latent[i] = at(z).water * freezable * freezing * thickness / step
		if z == 0.05 {
			g.five = i
		}
		if z == 0.10 {
			g.ten = i
		}
	}
	last := g.nodes - 1
	for i := last; i > 0; i-- {
		diagonal := g.storage[i] + theta*g.link[i-1]
		if i < last {
			diagonal += theta * g.link[i] * (1 - g.alpha[i+1])
		}
		g.pivot[i] = 1 / diagonal
		g.alpha[i] = theta * g.link[i-1] * g.pivot[i]
	}
	g.surface = g.storage[0] + theta*g.link[0]*(1-g.alpha[1])
	return g
}
