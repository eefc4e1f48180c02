package trial

import "math"

// WantedPower is how likely a difference should be to show for a trial to count as able to
// show it: four times in five, as trial guides ask.
const WantedPower = 0.8

// CanShow is the least true difference between two ways that a trial of so many blocks shows
// four times in five, as a share of the mean: variation is the standard deviation of plots
// within a block as a share of the mean, above 0. It is false for fewer than two blocks or
// ways.
func CanShow(blocks, ways int, variation float64) (float64, bool) {
	freedom := float64((blocks - 1) * (ways - 1))
	if blocks < 2 || ways < 2 {
		return 0, false
	}
	t := tOf(Sure, freedom)
	of := func(difference float64) float64 {
		return powerPast(t, difference/(variation*math.Sqrt(2/float64(blocks))), freedom)
	}
	low, high := 0.0, variation
	for of(high) < WantedPower {
		high *= 2
	}
	for range 40 {
		if mid := (low + high) / 2; of(mid) < WantedPower {
			low = mid
		} else {
			high = mid
		}
	}
	return high, true
}

// measured is how much plots of a length differ: between two neighbours, and within blocks of
// four.
type measured struct{ length, two, four float64 }

// variations are standard deviations of plots within a block, as shares of the mean, by the
// length of plot in metres. Tomato: 384 plots of 24 by 6 ft, Indiana 1941, neighbours in one
// reach and blocks of four neighbouring rows, worked out again from the published data
// (agridat, hartman.tomato.uniformity). The others: Washington station 1956, after blocking
// (agridat, moore.*.uniformity).
var variations = map[string][]measured{
	"tomato":      {{7.3, 0.108, 0.135}, {29.3, 0.071, 0.095}, {87.8, 0.057, 0.075}},
	"snap-bean":   {{3, 0.067, 0.067}},
	"sweet-corn":  {{3, 0.136, 0.136}},
	"carrot":      {{1.5, 0.276, 0.276}},
	"cauliflower": {{3, 0.195, 0.195}},
}

// Where nobody measured a crop's plots, tomato's stand in for it.
const standIn = "tomato"

// Variation is how much plots of a crop differ within a block of two to four ways, as a share
// of the mean, and who measured it. Longer plots differ less; beyond what was measured nothing
// is gained.
func Variation(crop string, ways int, length float64) (share float64, source string) {
	rows, own := variations[crop]
	source = "Washington station 1956, after blocking"
	if !own {
		rows = variations[standIn]
	}
	if !own || crop == standIn {
		source = "384 plots of tomato side by side, Indiana 1941"
	}
	if !own {
		source += "; it stands in for this crop"
	}
	of := func(m measured) float64 { return m.two + (m.four-m.two)*float64(ways-2)/2 }
	for i, m := range rows {
		switch {
		case length > m.length:
		case i == 0:
			return of(m), source
		default:
			before := rows[i-1]
			along := math.Log(length/before.length) / math.Log(m.length/before.length)
			return of(before) + (of(m)-of(before))*along, source
		}
	}
	return of(rows[len(rows)-1]), source
}
