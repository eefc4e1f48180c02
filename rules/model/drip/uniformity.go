package drip

import (
	"errors"
	"math"

	"filmfurrow/rules/unit"
)

// EmissionUniformity is the design uniformity that counts the maker's
// variation as well as the hydraulics: 100·(1 − 1.27·CV/√n)·qmin/qmean, with n
// outlets for one plant (form of ASAE EP405). It does not count plugging.
func EmissionUniformity(p Profile, makersCV float64, outletsPerPlant float64) unit.Percent {
	if p.MeanOutlet <= 0 || outletsPerPlant <= 0 {
		return 0
	}
	made := 1 - 1.27*makersCV/math.Sqrt(outletsPerPlant)
	return unit.Percent(max(0, 100*made*float64(p.LeastOutlet/p.MeanOutlet)))
}

// Run is the longest line found.
type Run struct {
	Length  unit.Metres
	Outlets int
	AtLimit bool // the search ended at the length allowed, not at the spread
}

// LongestRun gives the longest line, in whole spacings, whose flow spread
// stays within a limit at an inlet pressure. The Outlets of l are ignored. A
// longer line is never more even, so a bracket closes on the answer. No run at
// all gives length 0.
func LongestRun(l Line, inlet unit.Kilopascals, limit unit.Percent, atMost unit.Metres) (Run, error) {
	if !(l.Spacing > 0) || !(atMost > 0) {
		return Run{}, ErrLine
	}
	most := int(min(float64(atMost)/float64(l.Spacing), MaxOutlets))
	good, bad := reach{0, 0}, reach{most + 1, 0}
	for n := min(64, most); n > good.outlets; n = min(2*n, most) {
		spread, err := l.spreadOf(n, inlet)
		if err != nil {
			return Run{}, err
		}
		if spread > float64(limit) {
			bad = reach{n, spread}
			break
		}
		good = reach{n, spread}
	}
	for trial := 0; bad.outlets-good.outlets > 1 && good.outlets < most; trial++ {
		n := good.towards(bad, float64(limit), trial)
		spread, err := l.spreadOf(n, inlet)
		if err != nil {
			return Run{}, err
		}
		if spread > float64(limit) {
			bad = reach{n, spread}
		} else {
			good = reach{n, spread}
		}
	}
	return Run{l.Spacing * unit.Metres(good.outlets), good.outlets, good.outlets == most}, nil
}

// reach is a length that was tried and its spread.
type reach struct {
	outlets int
	spread  float64
}

// towards picks the next length between a good and a bad one. Spread grows
// nearly as a power of length, so the first trials follow that power; later
// ones halve, so that the search ends whatever the shape.
func (good reach) towards(bad reach, limit float64, trial int) int {
	n := (good.outlets + bad.outlets) / 2
	if trial < 6 && good.spread > 0 && bad.spread > good.spread && bad.spread < 99 {
		power := math.Log(float64(bad.outlets)/float64(good.outlets)) / math.Log(bad.spread/good.spread)
		n = int(float64(good.outlets) * math.Pow(limit/good.spread, power))
	}
	return min(max(n, good.outlets+1), bad.outlets-1)
}

// spreadOf is the spread of a line of so many outlets. A line whose pressure
// collapses beyond solving spreads wholly.
func (l Line) spreadOf(outlets int, inlet unit.Kilopascals) (float64, error) {
	l.Outlets = outlets
	s, err := l.solver(inlet)
	if err != nil {
		return 0, err
	}
	end, err := s.search()
	if errors.Is(err, ErrUnsolved) {
		return 100, nil
	}
	if err != nil {
		return 0, err
	}
	least, most := s.extremes(end)
	if most <= 0 {
		return 100, nil
	}
	return 100 * (most - least) / most, nil
}
