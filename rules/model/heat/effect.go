package heat

import (
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// The reference state of the published effects: a New England spring, film laid
// on 1 April on the usual bed of moist loam, mean of 15 April to 31 May.
//
// The climate is the 1981–2010 normals of Amherst, Massachusetts (NOAA National
// Centers for Environmental Information, station USC00190120), °F as published.
var (
	referenceMinimum = [12]float64{13.2, 15.9, 24.3, 34.5, 44.7, 54.6, 59.2, 57.6, 49.2, 37.5, 29.6, 19.9}
	referenceMaximum = [12]float64{33.1, 37.1, 45.3, 58.3, 69.2, 77.6, 82.2, 80.7, 73.3, 61.5, 49.4, 37.9}
)

const (
	referenceDays    = 61
	referenceSettles = 14 // days under film before the mean begins
	// referenceSpinUp is short: how warm the depth is moves bare ground and film
	// together.
	referenceSpinUp = 60
)

// ReferenceInput is the reference state on a soil, which should be moist loam.
func ReferenceInput(loam Soil) Input {
	var n weather.Normals
	for m := range 12 {
		n.Minimum[m], n.Maximum[m] = unit.FromFahrenheit(referenceMinimum[m]), unit.FromFahrenheit(referenceMaximum[m])
	}
	n.Latitude, n.Height = 42.3861, 43.3
	return Usual(n, loam, unit.On(2027, 4, 1), referenceDays)
}

// Reference works out the model's own effect of each film at the reference
// state, in slices: [Reference.Step] until it says done, then [Reference.Covers].
type Reference struct {
	runner *Runner
	covers *Covers
}

// NewReference begins with a list of covers, the place in it of the leader (the
// film of which most is published: black), and loam. The error is a
// [*weather.InputError].
func NewReference(list []Cover, leader int, loam Soil) (*Reference, error) {
	for i := range list {
		if err := list[i].Check(); err != nil {
			return nil, err
		}
	}
	covers := &Covers{list: list, leader: leader}
	r, err := newRunner(ReferenceInput(loam), covers, usualRun)
	if err != nil {
		return nil, err
	}
	r.start(-referenceSpinUp)
	return &Reference{r, covers}, nil
}

// CoversOf are covers whose own effects at the reference state are known: what
// [Covers.Modelled] of a [Reference] of the same list, leader and loam gave.
func CoversOf(list []Cover, leader int, modelled [][Depths]float64) *Covers {
	return &Covers{list, leader, modelled}
}

// Modelled is the model's own effect of each cover at the reference state, film minus
// bare, K at 5 and 10 cm; nil until its reference is done.
func (c *Covers) Modelled() [][Depths]float64 { return c.modelled }

// Step runs at most so many days and reports whether all is done.
func (r *Reference) Step(days int) (done bool) {
	if !r.runner.advance(days) {
		return false
	}
	if r.covers.modelled == nil {
		modelled := make([][Depths]float64, len(r.covers.list))
		for i := range modelled {
			for d := range Depths {
				modelled[i][d] = r.runner.difference(i+1, d, referenceSettles, referenceDays)
			}
		}
		r.covers.modelled = modelled
	}
	return true
}

// Covers is the result. Runs may be set up with it at once; Step must have
// reported done before one of them ends.
func (r *Reference) Covers() *Covers { return r.covers }

// difference gives film minus bare of the pure physics, mean over days.
func (r *Runner) difference(f, depth, from, to int) (mean float64) {
	for d := from; d < to; d++ {
		mean += float64(r.pure[f][depth].Mean[d] - r.pure[Bare][depth].Mean[d])
	}
	return mean / float64(to-from)
}

// carried brings the published effect of a film (its place in the results) to a
// place and day. leader and film are the model's differences from bare ground
// there, of the day's mean, lowest or highest; the result is the difference to
// add to bare ground.
//
// The leader travels by the ratio of the model's difference here to that at the
// reference state. Every other film travels by its distance from the leader, in
// the same way: so films keep their order where the model has them in order, and
// no film's own difference, which may be near zero, is ever divided by. Where the
// model puts a film on the other side of the leader than the trials do (it knows
// no reason for biodegradable film to be cooler: that is thinner and tears), the
// film keeps its published share of the leader's effect.
func (c *Covers) carried(f, depth int, leader, film float64) float64 {
	published := func(i int) float64 { return float64(c.list[i].Effect[depth].Value) }
	i, first := f-1, c.leader
	here := published(first) * leader / c.modelled[first][depth]
	if i == first {
		return here
	}
	apart, modelled := published(i)-published(first), c.modelled[i][depth]-c.modelled[first][depth]
	if apart*modelled < 0 {
		return here * published(i) / published(first)
	}
	if apart == 0 {
		return here
	}
	return here + apart/modelled*(film-leader)
}

// bedFactor is how much of an endless film's effect remains in the middle of a
// bed, at 5 and 10 cm, by width of the film's top in m: a two-dimensional run of
// the same physics at 1.8 m centres (ours; edges heat less and narrow film less
// than wide: Soil Science, February 1981, 82–87).
func bedFactor(width float64, depth int) float64 {
	widths := [...]float64{0.30, 0.61, 0.76, 0.91, 1.80}
	factors := [2][5]float64{{0.62, 0.79, 0.81, 0.87, 1}, {0.50, 0.68, 0.73, 0.81, 1}}
	f := &factors[depth]
	if width >= widths[4] {
		return 1
	}
	for i := 1; i < len(widths); i++ {
		if width <= widths[i] {
			share := (width - widths[i-1]) / (widths[i] - widths[i-1])
			return f[i-1] + share*(f[i]-f[i-1])
		}
	}
	return 1
}

// referenceTop is the bed that published effects belong to: 30 in.
const referenceTop = 0.76
