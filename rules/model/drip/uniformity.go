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
// longer line is never more even, so doubling and halving find it. No run at
// all gives length 0.
func LongestRun(l Line, inlet unit.Kilopascals, limit unit.Percent, atMost unit.Metres) (Run, error) {
	if !(l.Spacing > 0) || !(atMost > 0) {
		return Run{}, ErrLine
	}
	most := int(min(float64(atMost)/float64(l.Spacing), MaxOutlets))
	good, bad := 0, most+1
	for n := min(64, most); good < most && n > good; n = min(2*n, most) {
		within, err := l.within(n, inlet, limit)
		if err != nil {
			return Run{}, err
		}
		if !within {
			bad = n
			break
		}
		good = n
	}
	for bad-good > 1 && good < most {
		middle := (good + bad) / 2
		within, err := l.within(middle, inlet, limit)
		if err != nil {
			return Run{}, err
		}
		if within {
			good = middle
		} else {
			bad = middle
		}
	}
	return Run{l.Spacing * unit.Metres(good), good, good == most}, nil
}

// within tells whether a line of so many outlets keeps the spread. A line whose
// pressure collapses beyond solving does not.
func (l Line) within(outlets int, inlet unit.Kilopascals, limit unit.Percent) (bool, error) {
	l.Outlets = outlets
	spread, err := l.spread(inlet)
	if errors.Is(err, ErrUnsolved) {
		return false, nil
	}
	return spread <= float64(limit), err
}
