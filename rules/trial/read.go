package trial

import "math"

// Analysis is what the tally of a trial comes to.
type Analysis struct {
	Blocks, Ways                   int
	Mean                           float64
	Means                          []float64
	SumBlock, SumWay, SumError     float64 // sums of squares
	FreeBlock, FreeWay, FreeError  float64 // degrees of freedom
	F, Chance, FBlock, ChanceBlock float64
	Variation                      float64 // standard deviation within blocks ÷ mean
	Least                          float64 // least significant difference at [Sure], in the unit tallied
	Permutation                    float64 // chance of differences as large, had chance alone dealt the ways out
	Finest                         float64 // least chance that a permutation of so few blocks can come to
	Exact                          bool    // all ways of dealing were tried; otherwise a sample
	Pairs                          []Pair
}

// Pair compares two ways, block by block: B less A.
type Pair struct {
	A, B       int
	Difference float64
	Deviation  float64 // of the differences
	T, Chance  float64
	Low, High  float64 // of 19 trials in 20
}

// Read analyses yields, block by block and in each the ways in one order, as randomised
// complete blocks: analysis of variance, paired differences, and a permutation of the ways
// within blocks. It is false for fewer than two blocks or ways, or where all is alike.
func Read(yield [][]float64) (a Analysis, ok bool) {
	if len(yield) < leastBlocks || len(yield[0]) < LeastWays {
		return a, false
	}
	a.Blocks, a.Ways = len(yield), len(yield[0])
	b, k := float64(a.Blocks), float64(a.Ways)
	a.Means = make([]float64, a.Ways)
	blocks := make([]float64, a.Blocks)
	for i, row := range yield {
		for j, v := range row {
			a.Means[j] += v / b
			blocks[i] += v / k
			a.Mean += v / (b * k)
		}
	}
	for i, row := range yield {
		a.SumBlock += k * square(blocks[i]-a.Mean)
		for j, v := range row {
			a.SumError += square(v - blocks[i] - a.Means[j] + a.Mean)
		}
	}
	for _, m := range a.Means {
		a.SumWay += b * square(m-a.Mean)
	}
	a.FreeBlock, a.FreeWay, a.FreeError = b-1, k-1, (b-1)*(k-1)
	if a.SumError <= 0 || a.Mean == 0 {
		return a, false
	}
	within := a.SumError / a.FreeError
	a.F, a.FBlock = a.SumWay/a.FreeWay/within, a.SumBlock/a.FreeBlock/within
	a.Chance, a.ChanceBlock = chanceOfF(a.F, a.FreeWay, a.FreeError), chanceOfF(a.FBlock, a.FreeBlock, a.FreeError)
	a.Variation = math.Sqrt(within) / math.Abs(a.Mean)
	a.Least = tOf(Sure, a.FreeError) * math.Sqrt(2*within/b)
	for i := range a.Ways {
		for j := i + 1; j < a.Ways; j++ {
			a.Pairs = append(a.Pairs, pairOf(yield, i, j))
		}
	}
	a.Permutation, a.Exact = permuted(yield)
	a.Finest = 1 / dealsOf(a.Blocks, a.Ways)
	return a, true
}

func square(v float64) float64 { return v * v }

func pairOf(yield [][]float64, i, j int) Pair {
	p := Pair{A: i, B: j}
	n := float64(len(yield))
	for _, row := range yield {
		p.Difference += (row[j] - row[i]) / n
	}
	sum := 0.0
	for _, row := range yield {
		sum += square(row[j] - row[i] - p.Difference)
	}
	p.Deviation = math.Sqrt(sum / (n - 1))
	wide := p.Deviation / math.Sqrt(n)
	p.Chance, p.T = 0, math.Inf(1)
	if wide > 0 {
		p.T = p.Difference / wide
		p.Chance = chanceOfT(p.T, n-1)
	}
	half := tOf(Sure, n-1) * wide
	p.Low, p.High = p.Difference-half, p.Difference+half
	return p
}

// mostDeals is how many ways of dealing are all tried; sampled is how many are, of more.
const (
	mostDeals = 1 << 16
	sampled   = 20000
)

// dealsOf is in how many ways blocks can be dealt out. The first block may stay as it is: to
// rename the ways of all blocks changes nothing.
func dealsOf(blocks, ways int) float64 {
	return math.Pow(math.Gamma(float64(ways+1)), float64(blocks-1))
}

// permuted deals the ways of each block out anew, all ways or a sample, and tells how often
// the ways come to differ as much as they did: by the sum of squares of their totals, since
// all else stays as it was.
func permuted(yield [][]float64) (chance float64, exact bool) {
	ways := len(yield[0])
	orders := ordersOf(ways)
	deals := dealsOf(len(yield), ways)
	totals := make([]float64, ways)
	spread := func() (sum float64) {
		for _, t := range totals {
			sum += t * t
		}
		return sum
	}
	for _, row := range yield {
		for j, v := range row {
			totals[j] += v
		}
	}
	was := spread()
	was -= 1e-9 * math.Abs(was)
	as, all := 0, 0
	if deals <= mostDeals {
		copy(totals, yield[0])
		var deal func(block int)
		deal = func(block int) {
			if block == len(yield) {
				all++
				if spread() >= was {
					as++
				}
				return
			}
			before := [MostWays]float64{}
			copy(before[:], totals)
			for _, order := range orders {
				for j := range totals {
					totals[j] = before[j] + yield[block][order[j]]
				}
				deal(block + 1)
			}
			copy(totals, before[:ways])
		}
		deal(1)
		return float64(as) / float64(all), true
	}
	r := Random(uint64(len(yield))<<8 | uint64(ways))
	for range sampled {
		copy(totals, yield[0])
		for _, row := range yield[1:] {
			for j, from := range orders[r.Below(len(orders))] {
				totals[j] += row[from]
			}
		}
		if spread() >= was {
			as++
		}
	}
	return float64(1+as) / (1 + sampled), false
}

// ordersOf lists all orders of 0 to n−1.
func ordersOf(n int) (list [][]int) {
	if n == 0 {
		return [][]int{nil}
	}
	for _, shorter := range ordersOf(n - 1) {
		for at := range n {
			order := make([]int, 0, n)
			order = append(order, shorter[:at]...)
			order = append(order, n-1)
			list = append(list, append(order, shorter[at:]...))
		}
	}
	return list
}

// Verdict is what a trial has shown.
type Verdict uint8

// The verdicts.
const (
	NotShown Verdict = iota
	Unsure           // one way of reckoning says yes, the other no
	Shown
)

// Verdict asks both the table and the permutation; where the blocks are so few that no
// permutation of them could show anything, the table alone.
func (a *Analysis) Verdict() Verdict {
	table, dealt := a.Chance < Sure, a.Permutation < Sure
	if a.Finest >= Sure {
		dealt = table
	}
	switch {
	case table && dealt:
		return Shown
	case table || dealt:
		return Unsure
	}
	return NotShown
}
