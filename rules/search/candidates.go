package search

import (
	"math"
	"slices"
	"sort"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// turned is how many inputs are searched: those of the form and the monthly lists.
var turned = len(field.Inputs) + len(field.MonthlyMoves)

func turnedInput(i int) *field.Input {
	if i < len(field.Inputs) {
		return &field.Inputs[i]
	}
	return field.MonthlyMoves[i-len(field.Inputs)]
}

// farthestDay is how far a day is moved in search of a turn.
const farthestDay = 120

// sweepsOf sets out the searches of one input; the last is done first.
func sweepsOf(base, filled *field.Case, in *field.Input) []sweep {
	if !turns(base, in) {
		return nil
	}
	_, given := in.Get(base)
	now, known := in.Get(filled)
	one := sweep{input: in, unknown: !given && !in.Told}
	if in.Period && !given {
		one.kind, one.tries = each, []try{{step: int(base.PlantOn.Value)}}
		return []sweep{one}
	}
	switch in.Form {
	case field.FormChoice, field.FormYesNo, field.FormFilms:
		one.kind = each
		for _, v := range optionsOf(in, now) {
			if v != now || !known {
				one.tries = append(one.tries, try{value: v})
			}
		}
		slices.Reverse(one.tries)
		return []sweep{one}
	}
	var steps []int
	switch in.Form {
	case field.FormDay:
		if steps = frostsNear(filled, in); steps == nil {
			return nil
		}
	case field.FormDate:
		for d := -farthestDay; d <= farthestDay; d++ {
			steps = append(steps, int(now.Number)+d)
		}
	default:
		steps = stepsOf(in)
	}
	if in.Reach > 0 {
		steps = around(in, now)
		given = true // by the station, where not by the grower
	} else if given {
		steps = append(steps, closeSteps(in, base)...)
		sort.Slice(steps, func(a, b int) bool { return steps[a] < steps[b] })
		steps = slices.Compact(steps)
	}
	if known { // to the grower, or a usual value stands in
		steps = plausible(in, now, steps)
	}
	if !given {
		one.kind, one.tries = through, make([]try, 0, len(steps))
		for _, k := range steps {
			one.tries = append(one.tries, try{step: k})
		}
		slices.Reverse(one.tries)
		return []sweep{one}
	}
	up, down := one, one
	up.above = true
	place := in.Place(now)
	up.last.step, down.last.step = int(math.Floor(place+1e-9)), int(math.Ceil(place-1e-9))
	below, _ := slices.BinarySearch(steps, down.last.step)
	up.tries, down.tries = make([]try, 0, len(steps)-below), make([]try, 0, below)
	for i := range steps {
		if k := steps[len(steps)-1-i]; k > up.last.step {
			up.tries = append(up.tries, try{step: k})
		}
		if k := steps[i]; k < down.last.step {
			down.tries = append(down.tries, try{step: k})
		}
	}
	return []sweep{up, down}
}

// turns leaves out what cannot change an answer by itself: what only plans, costs
// and sheets read (a test tries that), and what counts only beside another field.
func turns(c *field.Case, in *field.Input) bool {
	return !in.Inert && (in.Beside == nil || in.Beside(c))
}

// closeSteps lists steps to ask one by one, where an answer may change and change
// back from one to the next.
func closeSteps(in *field.Input, c *field.Case) (steps []int) {
	if in.Close == nil {
		return nil
	}
	low, high, ok := in.Close(c)
	if !ok {
		return nil
	}
	last := min(in.Place(field.Value{Number: in.High}), in.Place(field.Value{Number: high}))
	for k := max(0, math.Floor(in.Place(field.Value{Number: low}))); k <= last; k++ {
		steps = append(steps, int(k))
	}
	return steps
}

// plausible ends the steps where another farm would begin.
func plausible(in *field.Input, now field.Value, steps []int) []int {
	var least, most float64
	switch {
	case in.Times > 0:
		least, most = now.Number/in.Times, now.Number*in.Times
	case in.Apart > 0:
		least, most = now.Number-in.Apart, now.Number+in.Apart
	default:
		return steps
	}
	place := func(v float64) int {
		return int(math.Round(in.Place(field.Value{Number: min(max(v, in.Low), in.High)})))
	}
	low, high := place(least), place(most)
	inside := slices.DeleteFunc(steps, func(k int) bool { return k <= low || k >= high })
	return slices.Concat([]int{low}, inside, []int{high})
}

// around lists the steps within reach of a value.
func around(in *field.Input, now field.Value) (steps []int) {
	own := int(math.Round(in.Place(now)))
	for k := -in.Reach; k <= in.Reach; k++ {
		steps = append(steps, own+k)
	}
	return steps
}

// optionsOf lists what a choice may hold. Of films that can be bought, each is
// taken away or added.
func optionsOf(in *field.Input, now field.Value) []field.Value {
	switch in.Form {
	case field.FormYesNo:
		return []field.Value{{Number: 0}, {Number: 1}}
	case field.FormFilms:
		const all = 1<<table.FilmCount - 1
		set := uint(now.Number)
		if set == 0 {
			set = all
		}
		var values []field.Value
		for film := range table.FilmCount {
			if other := set ^ 1<<film; other != 0 {
				values = append(values, field.Value{Number: float64(other)})
			}
		}
		return values
	}
	values := make([]field.Value, len(in.Options))
	for i, o := range in.Options {
		values[i] = field.Value{Word: o.ID}
	}
	return values
}

// otherFrost is how many days a list from nearby may lie off the usual frost that the
// tool knows: a hollow freezes weeks after the slope above it.
const otherFrost = 30

// frostsNear lists the days, by threes, among which the usual frost may lie: it may change
// an answer for a few days alone. A place without a usual frost has none.
func frostsNear(c *field.Case, in *field.Input) (steps []int) {
	from, to, ok := facts.FrostNear(c, in.Name == "climate.last_frost", otherFrost)
	zero := unit.On(2000, 1, 1)
	for day := from; ok && day < to; day = day.Plus(3) {
		steps = append(steps, int(day.Minus(zero)))
	}
	if ok {
		steps = append(steps, int(to.Minus(zero)))
	}
	return steps
}

// few is how many steps a number may have to be gone through step by step.
const few = 16

// mostStrides are those of an open number where each needs a ground of its own.
const mostStrides = 6

// stepsOf lists the steps of a number, lowest first: all where there are few,
// else those near round figures (1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8 and their
// tens), since what counts is the ratio.
func stepsOf(in *field.Input) (steps []int) {
	n := int((in.High-in.Low)/in.Step + 1e-9)
	if in.OfMonths() { // the need for water grows evenly with each of them
		for k := 0; k < n; k += 4 {
			steps = append(steps, k)
		}
		return append(steps, n)
	}
	if n <= few {
		for k := range n + 1 {
			steps = append(steps, k)
		}
		return steps
	}
	steps = append(steps, 0, n)
	if in.Low <= 0 {
		steps = append(steps, int(math.Round(in.Place(field.Value{}))))
	}
	for tens := in.Step; tens <= max(in.High, -in.Low); tens *= 10 {
		for _, m := range [...]float64{1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8} {
			for _, v := range [2]float64{m * tens, -m * tens} {
				if k := int(math.Round(in.Place(field.Value{Number: v}))); k > 0 && k < n {
					steps = append(steps, k)
				}
			}
		}
	}
	if in.Kind == unit.KindPressure {
		// The header's bore steps down as pressure grows, and takes part of it back:
		// answers may change and change back within a round stride.
		for k := 4; k < min(n, 400); k += 4 {
			steps = append(steps, k)
		}
	}
	sort.Slice(steps, func(a, b int) bool { return steps[a] < steps[b] })
	return slices.Compact(steps)
}

// thin leaves few strides, where each value needs a ground of its own: outwards
// each four times as long as the one before, and five of an open number. What lies
// between is looked through on blended ground.
func (s *sweep) thin() {
	n := len(s.tries)
	switch {
	case s.kind == through && n > mostStrides:
		for i := range mostStrides {
			s.tries[i] = s.tries[i*(n-1)/(mostStrides-1)]
		}
		s.tries = s.tries[:mostStrides]
	case s.kind == outward && n > 0:
		far, side := s.tries[0].step-s.last.step, 1
		if far < 0 {
			far, side = -far, -1
		}
		d := 2
		for 4*d < far {
			d *= 4
		}
		s.tries = s.tries[:1] // the farthest
		for ; d > 1 && d < far; d /= 4 {
			s.tries = append(s.tries, try{step: s.last.step + side*d})
		}
	}
}

// at is the value of a try.
func at(in *field.Input, t try) field.Value {
	if in.Form == field.FormChoice || in.Form == field.FormYesNo || in.Form == field.FormFilms || in.Form == field.FormText {
		return t.value
	}
	return in.At(t.step)
}
