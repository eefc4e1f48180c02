package trial

import "math/bits"

// Random is a stream of numbers that follow from a seed alone (SplitMix64: Steele, Lea and
// Flood, 2014), so that the same field gives the same plan everywhere.
type Random uint64

// Next is the next of 2⁶⁴ numbers.
func (r *Random) Next() uint64 {
	*r += 0x9e3779b97f4a7c15
	z := uint64(*r)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// Below is a number from 0 to n−1, each alike: n is at least 1.
func (r *Random) Below(n int) int {
	high, _ := bits.Mul64(r.Next(), uint64(n))
	return int(high)
}

// shuffle puts 0 to n−1 in an order of chance.
func (r *Random) shuffle(n int) []int {
	list := make([]int, n)
	for i := range list {
		k := r.Below(i + 1)
		list[i] = list[k]
		list[k] = i
	}
	return list
}

// Limits of a trial.
const (
	LeastWays, MostWays = 2, 4
	leastBlocks         = 2   // fewer is a demonstration, no trial
	goodBlocks          = 4   // trial guides ask for four to six
	goodPairs           = 6   // of two ways: with fewer a permutation cannot show anything
	mostBlocks          = 8   // more take more tallying than they tell
	guards              = 2   // beds at the edges, which grow as no other
	leastPlot           = 6.0 // m, about 20 ft: enough plants for a mean (our judgement)
	endGuard            = 1.5 // m at the ends of a plot that is not tallied, about 5 ft
	mostReaches         = 4
)

// Plot is one strip.
type Plot struct {
	Block    int     // from 1
	Bed      int     // from 1, guards counted
	Reach    int     // part of the bed, from 1
	From, To float64 // m from the header that are tallied
	Way      int     // from 0
}

// Layout is where everything stands.
type Layout struct {
	Ways, Blocks int
	Wanted       int // blocks that a good trial of so many ways has, at least
	Reaches      int // that beds are parted into
	Plots        []Plot
	Guards       []int   // beds that are laid and not tallied
	Length       float64 // m that are tallied in each plot
}

// Refusal says why there is no trial.
type Refusal string

func (r Refusal) Error() string { return string(r) }

// Plan lays ways out in randomised blocks over so many beds of a length in metres. A block is
// as many neighbouring beds as there are ways; where the beds give fewer than four blocks,
// or six of two ways, they are parted lengthwise, as long as the parts are long enough. The first and the last
// bed are guards, and so are beds that fill no block.
func Plan(seed uint64, ways, beds int, length float64) (Layout, error) {
	if ways < LeastWays || ways > MostWays {
		return Layout{}, Refusal("A trial compares two to four ways.")
	}
	groups := (beds - guards) / ways
	if groups < 1 {
		return Layout{}, Refusal("There are too few beds: each way needs one, and the first and the last bed are guards.")
	}
	l := Layout{Ways: ways, Wanted: goodBlocks}
	if ways == LeastWays {
		l.Wanted = goodPairs
	}
	for l.Reaches = 1; groups*l.Reaches < l.Wanted && l.Reaches < mostReaches && length/float64(l.Reaches+1)-2*endGuard >= leastPlot; l.Reaches++ {
	}
	part := length / float64(l.Reaches)
	l.Length = part - 2*endGuard
	l.Blocks = min(groups*l.Reaches, mostBlocks)
	if l.Blocks < leastBlocks || l.Length < leastPlot {
		return Layout{}, Refusal("These beds give one block alone. One strip of each shows nothing: lay more beds, or longer ones.")
	}
	r := Random(seed)
	used := map[int]bool{}
	for block := range l.Blocks {
		group, reach := block%groups, block/groups
		for place, way := range r.shuffle(ways) {
			bed := 1 + guards/2 + group*ways + place
			used[bed] = true
			from := part*float64(reach) + endGuard
			l.Plots = append(l.Plots, Plot{Block: block + 1, Bed: bed, Reach: reach + 1, From: from, To: from + l.Length, Way: way})
		}
	}
	for bed := 1; bed <= beds; bed++ {
		if !used[bed] {
			l.Guards = append(l.Guards, bed)
		}
	}
	return l, nil
}
