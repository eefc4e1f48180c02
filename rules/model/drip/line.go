package drip

import (
	"errors"
	"math"
	"slices"
	"sort"

	"filmfurrow/rules/unit"
)

// Line is a tape, or a header with a lateral at every step, on an even slope.
// The first outlet lies one full spacing from the inlet.
type Line struct {
	Outlets  int          // 1–MaxOutlets
	Spacing  unit.Metres  // above 0
	Bore     unit.Metres  // above 0
	Slope    unit.Percent // rise ÷ run; positive where the line climbs away from its inlet
	Outlet   Emitter
	Friction Friction
}

// MaxOutlets bounds the work of one solution.
const MaxOutlets = 50000

// Errors of the solver.
var (
	// ErrLine says that a line or its inlet pressure is not a physical one:
	// no outlets or too many, a bore, spacing or pressure at or below zero, or a
	// figure that is not a number.
	ErrLine = errors.New("not a line that water can run through")
	// ErrUnsolved says that the bounded search ended without meeting the inlet
	// pressure. It happens only where the pressure collapses inside a line that
	// is many times too long for its bore, so that no end pressure that a
	// computer can write tells one inlet pressure from another.
	ErrUnsolved = errors.New("the pressure along the line was not found within the allowed steps")
)

// Profile is a solved line.
type Profile struct {
	Inlet, First, End          unit.Kilopascals
	Lowest, Highest            unit.Kilopascals // at the outlets
	LowestAt                   unit.Metres      // from the inlet
	Flow                       unit.LitresPerHour
	LeastOutlet, MostOutlet    unit.LitresPerHour
	MeanOutlet, LowQuarter     unit.LitresPerHour // LowQuarter: mean of the lowest quarter
	Spread                     unit.Percent       // (qmax − qmin)/qmax
	DistributionUniformity     unit.Percent       // lowest quarter ÷ mean
	InletVelocity, FarVelocity unit.MetresPerSecond
	DryOutlets                 int // outlets that the water does not reach
	Points                     []Point
	Sweeps                     int // how often the line was walked, outlet by outlet
}

// Point is the pressure at a distance from the inlet.
type Point struct {
	From     unit.Metres
	Pressure unit.Kilopascals
}

// profilePoints is how many points a picture of the line gets.
const profilePoints = 25

// Solve finds the pressure at every outlet for a pressure at the inlet.
//
// It walks from a trial pressure at the far end up to the inlet, adding
// outlet flows and friction, and moves the trial until the inlet pressure is
// met. The inlet pressure grows with the end pressure, so a bracket closes on
// the one answer. Where a line climbs so much that water does not reach its
// end, the trial is below zero and the dry outlets are counted.
func (l Line) Solve(inlet unit.Kilopascals) (Profile, error) {
	s, err := l.solver(inlet)
	if err != nil {
		return Profile{}, err
	}
	end, err := s.search()
	if err != nil {
		return Profile{}, err
	}
	return s.profile(end), nil
}

type solver struct {
	line   Line
	outlet law
	loss   gradient
	step   float64 // spacing in m
	rise   float64 // m climbed in one step
	target float64 // inlet head in m
	sweeps int
}

func (l Line) solver(inlet unit.Kilopascals) (*solver, error) {
	positive := [...]float64{float64(l.Spacing), float64(l.Bore), float64(l.Outlet.Rated), float64(l.Outlet.RatedAt), float64(inlet)}
	for _, v := range positive {
		if !(v > 0) || math.IsInf(v, 0) {
			return nil, ErrLine
		}
	}
	if l.Outlets < 1 || l.Outlets > MaxOutlets || !(l.Outlet.Exponent >= 0 && l.Outlet.Exponent <= 1) ||
		!(math.Abs(float64(l.Slope)) <= 100) {
		return nil, ErrLine
	}
	step := float64(l.Spacing)
	return &solver{
		line:   l,
		outlet: l.Outlet.law(),
		loss:   l.Friction.gradient(l.Bore),
		step:   step,
		rise:   step * float64(l.Slope) / 100,
		target: float64(inlet) * unit.MetresOfWaterPerKPa,
	}, nil
}

// inletFor walks from the end to the inlet and gives the inlet head. Once the
// head can only end above the target it stops and gives a head above it.
func (s *solver) inletFor(end float64) float64 {
	s.sweeps++
	head, flow := end, 0.0
	fall := min(s.rise, 0)
	for left := s.line.Outlets; left > 0; left-- {
		flow += s.outlet.flow(head)
		head += s.loss.at(flow)*s.step + s.rise
		if least := head + fall*float64(left-1); least > 2*s.target {
			return least
		}
	}
	return head
}

// roughly is [solver.inletFor] in growing strides, each by the flow and head of
// its middle.
func (s *solver) roughly(end float64) float64 {
	head, flow := end, 0.0
	fall := min(s.rise, 0)
	for left := s.line.Outlets; left > 0; {
		stride := min(1+(s.line.Outlets-left)/8, left)
		n := float64(stride)
		middle := head + (n-1)/2*(s.loss.at(flow+s.outlet.flow(head)*(n+1)/2)*s.step+s.rise)
		each := s.outlet.flow(middle)
		head += n * (s.loss.at(flow+each*(n+1)/2)*s.step + s.rise)
		flow += n * each
		left -= stride
		if least := head + fall*float64(left); least > 2*s.target {
			return least
		}
	}
	return head
}

// quickFrom is the number of outlets from which a rough walk pays for itself.
const quickFrom = 48

// search finds the end head. A long line is first walked roughly, and that
// answer mended by exact walks; where they do not meet the inlet head, or on a
// short line, a bracket closes on it by exact walks alone. Either way the
// answer is one of the exact walk.
func (s *solver) search() (float64, error) {
	if s.line.Outlets >= quickFrom {
		if end, ok := s.mend(); ok {
			return end, nil
		}
	}
	return s.enclose(s.inletFor, 1e-10)
}

// mend starts from the rough walk's answer, a few parts in 10,000 off or less,
// and takes secant steps: as a rule two exact walks meet the inlet head within
// one part in a hundred million.
func (s *solver) mend() (float64, bool) {
	end, err := s.enclose(s.roughly, 1e-6)
	if err != nil {
		return 0, false
	}
	aside := 1e-4 * max(math.Abs(end), 1e-9*s.target)
	inlet, above := s.inletForBoth(end, end+aside)
	slope := (above - inlet) / aside
	for range 6 {
		miss := inlet - s.target
		if math.Abs(miss) <= 1e-8*s.target {
			return end, true
		}
		next := end - miss/slope
		inlet = s.inletFor(next)
		if change := (inlet - s.target - miss) / (next - end); change > 0 {
			slope = change
		}
		end = next
	}
	return 0, false
}

// inletForBoth is [solver.inletFor] for two end heads. One walk mostly waits
// for its own square roots, so two at once take little longer.
func (s *solver) inletForBoth(end, other float64) (inlet, otherInlet float64) {
	s.sweeps++
	flow, otherFlow := 0.0, 0.0
	for range s.line.Outlets {
		flow += s.outlet.flow(end)
		otherFlow += s.outlet.flow(other)
		end += s.loss.at(flow)*s.step + s.rise
		other += s.loss.at(otherFlow)*s.step + s.rise
	}
	return end, other
}

// enclose closes a bracket on the end head: Chandrupatla's method (inverse
// quadratic steps where they are safe, halving where not; Advances in
// Engineering Software 28:145, 1997), then halving by bit pattern, which also
// reaches the very small end heads of very long lines. At most 42 + 80 walks.
func (s *solver) enclose(walk func(end float64) float64, tolerance float64) (float64, error) {
	total := s.rise * float64(s.line.Outlets)
	low, high := 0.0, s.target-total // friction only adds: the answer is not above high
	fLow := walk(low) - s.target
	if fLow > 0 { // water does not reach the end
		low, high, fLow = -total, 0, walk(-total)-s.target
	}
	fHigh := walk(high) - s.target
	if math.IsNaN(fLow) || math.IsNaN(fHigh) {
		return 0, ErrLine
	}
	best := bracket{walk, s.target, low, high, fLow, fHigh}.close(tolerance * s.target)
	if !(best.miss <= 1e-6*s.target) {
		return 0, ErrUnsolved
	}
	return best.end, nil
}

// bracket holds an end head that is too low and one that is too high, with the
// inlet heads that they miss by.
type bracket struct {
	walk        func(end float64) float64
	target      float64
	low, high   float64
	fLow, fHigh float64
}

type root struct{ end, miss float64 }

func (b bracket) close(tolerance float64) root {
	best := root{b.low, math.Abs(b.fLow)}
	best.offer(b.high, b.fHigh)
	// a is the newest point, c the other side of the bracket, old the point
	// that a replaced.
	a, fa, c, fc := b.high, b.fHigh, b.low, b.fLow
	part := 0.5
	for trial := 0; trial < 40 && best.miss > tolerance; trial++ {
		end := a + part*(c-a)
		if end == a || end == c {
			break
		}
		f := b.walk(end) - b.target
		best.offer(end, f)
		old, fOld := a, fa
		if (f > 0) != (fa > 0) {
			old, fOld, c, fc = c, fc, a, fa
		}
		a, fa = end, f
		part = 0.5
		xi, phi := (a-c)/(old-c), (fa-fc)/(fOld-fc)
		if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
			part = fa/(fc-fa)*fOld/(fc-fOld) + (old-a)/(c-a)*fa/(fOld-fa)*fc/(fOld-fc)
			part = min(max(part, 1e-12), 1-1e-12)
		}
	}
	low, high := min(a, c), max(a, c)
	for trial := 0; trial < 80 && best.miss > tolerance; trial++ {
		end := between(low, high)
		if end <= low || end >= high {
			break
		}
		f := b.walk(end) - b.target
		best.offer(end, f)
		if f < 0 {
			low = end
		} else {
			high = end
		}
	}
	return best
}

func (r *root) offer(end, f float64) {
	if miss := math.Abs(f); miss < r.miss {
		*r = root{end, miss}
	}
}

// between halves a bracket: by value below zero, by bit pattern from zero up,
// so that 1e-40 and 1 are equally easy to find.
func between(low, high float64) float64 {
	if low < 0 {
		return low + (high-low)/2
	}
	a, b := math.Float64bits(low), math.Float64bits(high)
	return math.Float64frombits(a + (b-a)/2)
}

func (s *solver) extremes(end float64) (least, most float64) {
	head, flow := end, 0.0
	lowest, highest := head, head
	for left := s.line.Outlets; left > 0; left-- {
		lowest, highest = min(lowest, head), max(highest, head)
		flow += s.outlet.flow(head)
		head += s.loss.at(flow)*s.step + s.rise
	}
	return s.outlet.flow(lowest), s.outlet.flow(highest)
}

// heads gives the head at every outlet, the first outlet first.
func (s *solver) heads(end float64) []float64 {
	heads := make([]float64, s.line.Outlets)
	head, flow := end, 0.0
	for i := len(heads) - 1; i >= 0; i-- {
		heads[i] = head
		flow += s.outlet.flow(head)
		head += s.loss.at(flow)*s.step + s.rise
	}
	return heads
}

func (s *solver) profile(end float64) Profile {
	n := s.line.Outlets
	heads := s.heads(end)
	flows := make([]float64, n)
	flow := 0.0
	for i, head := range heads {
		flows[i] = s.outlet.flow(head)
		flow += flows[i]
	}
	lowest, dry := 0, 0
	highest := 0
	for i, h := range heads {
		if h < heads[lowest] {
			lowest = i
		}
		if h > heads[highest] {
			highest = i
		}
		if h <= 0 {
			dry++
		}
	}
	sorted := slices.Clone(flows)
	sort.Slice(sorted, func(a, b int) bool { return sorted[a] < sorted[b] })
	quarter := sorted[:(n+3)/4]
	lowQuarter := 0.0
	for _, q := range quarter {
		lowQuarter += q
	}
	lowQuarter /= float64(len(quarter))
	mean := flow / float64(n)
	p := Profile{
		Inlet:         kilopascals(s.target),
		First:         kilopascals(heads[0]),
		End:           kilopascals(heads[n-1]),
		Lowest:        kilopascals(heads[lowest]),
		Highest:       kilopascals(heads[highest]),
		LowestAt:      unit.Metres(float64(lowest+1) * s.step),
		Flow:          unit.LitresPerHour(flow),
		LeastOutlet:   unit.LitresPerHour(sorted[0]),
		MostOutlet:    unit.LitresPerHour(sorted[n-1]),
		MeanOutlet:    unit.LitresPerHour(mean),
		LowQuarter:    unit.LitresPerHour(lowQuarter),
		InletVelocity: Velocity(unit.LitresPerHour(flow), s.line.Bore),
		FarVelocity:   Velocity(unit.LitresPerHour(flows[n-1]), s.line.Bore),
		DryOutlets:    dry,
		Sweeps:        s.sweeps,
	}
	if p.MostOutlet > 0 {
		p.Spread = unit.Percent(100 * float64((p.MostOutlet-p.LeastOutlet)/p.MostOutlet))
		p.DistributionUniformity = unit.Percent(100 * lowQuarter / mean)
	} else {
		p.Spread = 100
	}
	p.Points = append(p.Points, Point{0, p.Inlet})
	for k := 1; k < profilePoints; k++ {
		i := k * n / (profilePoints - 1)
		if i == 0 || (k > 1 && i == (k-1)*n/(profilePoints-1)) {
			continue
		}
		p.Points = append(p.Points, Point{unit.Metres(float64(i) * s.step), kilopascals(heads[i-1])})
	}
	return p
}

func kilopascals(head float64) unit.Kilopascals {
	return unit.Kilopascals(head / unit.MetresOfWaterPerKPa)
}
