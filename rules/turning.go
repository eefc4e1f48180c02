package rules

import (
	"slices"
	"strings"

	"filmfurrow/rules/unit"
)

// TurningPoint is the nearest value of one input at which an answer changes,
// and to what.
type TurningPoint struct {
	Input   *Input
	At      Value // the first value with the new answer
	Before  Value // the last value with the old one; the case's own where it is a choice
	Above   bool  // the point lies above the case's value
	Unknown bool  // the input was left open, and a default stands in
	Old     Answers
	New     Answers
}

// Changes lists the questions whose answer changes at the point.
func (p *TurningPoint) Changes() (list []Question) {
	for q := range questionCount {
		if p.Old[q] != p.New[q] {
			list = append(list, q)
		}
	}
	return list
}

// Turner finds the turning points of one case by asking the pure engine again:
// it tries every option of a choice, and walks a number or a date outwards from
// the case, step by step, until an answer changes on each side. It works in
// slices. What changes the ground (texture, moisture, a probe) needs a new
// ground for each value; that is left to [NewTurner]'s caller, who says with
// dig whether to.
type Turner struct {
	asking
	base   Case
	ground *Ground
	filled Case
	old    Answers
	dig    bool
	dug    map[GroundKey]*Ground
	input  int
	only   string
	walks  []walk
	points []TurningPoint
	asked  int
}

// walk is one search in one input.
type walk struct {
	input   *Input
	values  []Value // in the order of asking
	at      int
	last    Value // the last value with the old answer
	above   bool
	unknown bool
	all     bool // a choice: every option is asked, and each that differs is a point
}

// NewTurner begins the search. The ground must be the case's own. With dig,
// inputs that change the ground are searched too, at a tenth of a second for
// each value.
func NewTurner(g *Ground, c Case, dig bool) (*Turner, bool) {
	t := &Turner{base: c, ground: g, dig: dig, dug: map[GroundKey]*Ground{}}
	p, ok := prepare(c)
	if !ok || p.key != g.Key {
		return t, false
	}
	t.filled = p.filled
	t.old, ok = t.on(g, p)
	return t, ok
}

// Step asks the engine at most so many times and tells whether all is done.
func (t *Turner) Step(times int) bool {
	for times > 0 {
		if len(t.walks) == 0 {
			if t.input == len(Inputs) {
				return true
			}
			if in := &Inputs[t.input]; t.only == "" || t.only == in.Name {
				t.walks = t.walksOf(in)
			}
			t.input++
			continue
		}
		w := &t.walks[len(t.walks)-1]
		if w.at == len(w.values) {
			t.walks = t.walks[:len(t.walks)-1]
			continue
		}
		v := w.values[w.at]
		w.at++
		times--
		t.asked++
		c := t.base
		w.input.Set(&c, v)
		answers, ok := t.ask(c)
		switch {
		case !ok:
			continue
		case answers == t.old:
			w.last = v
			continue
		}
		if w.unknown && !w.all && w.at == 1 {
			t.walks = t.walks[:len(t.walks)-1] // it differs from this end on; the other walk finds where
			continue
		}
		t.points = append(t.points, TurningPoint{Input: w.input, At: v, Before: w.last, Above: w.above, Unknown: w.unknown, Old: t.old, New: answers})
		if !w.all {
			t.walks = t.walks[:len(t.walks)-1]
		}
	}
	return t.input == len(Inputs) && len(t.walks) == 0
}

// ask answers a case on the ground it needs.
func (t *Turner) ask(c Case) (Answers, bool) {
	p, ok := prepare(c)
	if !ok {
		return Answers{}, false
	}
	g := t.ground
	if g.Key != p.key {
		if !t.dig {
			return Answers{}, false
		}
		if g = t.dug[p.key]; g == nil {
			var err error
			if g, err = Dig(c); err != nil {
				return Answers{}, false
			}
			t.dug[p.key] = g
		}
	}
	return t.on(g, p)
}

// Points gives what was found so far, in the order of the inputs.
func (t *Turner) Points() []TurningPoint { return t.points }

// Only narrows the search to one input, by its name.
func (t *Turner) Only(name string) { t.only = name }

// Asked counts how often the engine was asked.
func (t *Turner) Asked() int { return t.asked }

// farthestDay is how far a planting day is moved in search of a turn.
const farthestDay = 120

// walksOf sets out the searches of one input; the last is walked first.
func (t *Turner) walksOf(in *Input) []walk { return walksOf(&t.base, &t.filled, in) }

func walksOf(base, filled *Case, in *Input) []walk {
	if !turns(in) {
		return nil
	}
	_, given := in.Get(base)
	now, known := in.Get(filled)
	switch in.Form {
	case FormChoice, FormYesNo:
		values := make([]Value, 0, len(in.Options))
		for _, v := range choicesOf(in) {
			if v != now || !known {
				values = append(values, v)
			}
		}
		return []walk{{input: in, values: values, last: now, all: true, unknown: !given}}
	case FormDate:
		if in.Name != "plant_on" {
			return nil
		}
		var down, up []Value
		for d := 1; d <= farthestDay; d++ {
			down = append(down, Value{Number: now.Number - float64(d)})
			up = append(up, Value{Number: now.Number + float64(d)})
		}
		return []walk{{input: in, values: up, last: now, above: true}, {input: in, values: down, last: now}}
	}
	grid := gridOf(in)
	if !known {
		// Left open, with no default: walk in from both ends of its range.
		down := slices.Clone(grid)
		slices.Reverse(down)
		return []walk{{input: in, values: grid, above: true, unknown: true}, {input: in, values: down, unknown: true}}
	}
	var down, up []Value
	for i := range grid {
		if v := grid[len(grid)-1-i]; v.Number < now.Number {
			down = append(down, v)
		}
		if v := grid[i]; v.Number > now.Number {
			up = append(up, v)
		}
	}
	return []walk{{input: in, values: up, last: now, above: true, unknown: !given}, {input: in, values: down, last: now, unknown: !given}}
}

// turns leaves out what is not a choice of the grower's: the place, its
// weather, readings, prices, and fields that only count with another.
func turns(in *Input) bool {
	switch in.Form {
	case FormText, FormDay, FormFilms:
		return false
	}
	switch in.Name {
	case "crop", "place.lat", "place.lon", "place.elevation_m", "soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour",
		"practice.label_interval_days", "practice.fumigated_on", "practice.reuse.film", "practice.reuse.laid_on", "practice.reuse.cover_percent":
		return false
	}
	return !strings.HasPrefix(in.Name, "prices.") && !strings.HasPrefix(in.Name, "shopping.") && !strings.HasPrefix(in.Name, "day.") && in.Name != "practice.roll_length_m"
}

func choicesOf(in *Input) []Value {
	if in.Form == FormYesNo {
		return []Value{{Number: 0}, {Number: 1}}
	}
	values := make([]Value, len(in.Options))
	for i, o := range in.Options {
		values[i] = Value{Word: o.ID}
	}
	return values
}

// gridOf lists the values of a number that are worth trying: every step where
// there are few, and round numbers (1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8 and their tens)
// where there are many. A turning point is exact to this grid.
func gridOf(in *Input) []Value {
	const few = 48
	if n := (in.High - in.Low) / in.Step; n <= few {
		values := make([]Value, 0, few+1)
		for i := 0; i <= int(n+1e-9); i++ {
			values = append(values, Value{Number: rounded(in.Low + float64(i)*in.Step)})
		}
		return values
	}
	var values []Value
	for tens := 0.001; tens <= in.High; tens *= 10 {
		for _, m := range [...]float64{1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8} {
			v := rounded(m * tens)
			if v >= in.Low && v <= in.High && (in.Form != FormWhole || v == float64(int64(v))) {
				values = append(values, Value{Number: v})
			}
		}
	}
	return values
}

// rounded takes the dust off a decimal.
func rounded(v float64) float64 {
	const fine = 1e6
	return float64(int64(v*fine+0.5*sign(v))) / fine
}

func sign(v float64) float64 {
	if v < 0 {
		return -1
	}
	return 1
}

// Says puts the point in one sentence for one question.
func (p *TurningPoint) Says(q Question) unit.Phrase {
	what := unit.Say("nothing fits")
	if p.New[q] != NoOption {
		what = q.Says(p.New[q])
	}
	if q == Verdict {
		what.Text = lower(what.Text)
	}
	head, values := p.condition()
	return unit.Phrase{Text: head + what.Text + ".", Quantities: append(values, what.Quantities...)}
}

func (p *TurningPoint) condition() (string, []unit.Quantity) {
	in := p.Input
	switch in.Form {
	case FormChoice:
		for _, o := range in.Options {
			if o.ID == p.At.Word {
				return in.Label + " “" + o.Label + "”: ", nil
			}
		}
	case FormYesNo:
		if p.At.Number == 1 {
			return in.Label + ": ", nil
		}
		return "Not " + lower(in.Label) + ": ", nil
	case FormDate:
		q := []unit.Quantity{unit.Of(unit.Date(p.At.Number))}
		if p.Above {
			return "From {} on: ", q
		}
		return "Until {}: ", q
	}
	q := []unit.Quantity{{Kind: in.Kind, SI: p.At.Number}}
	if p.Above {
		return in.Label + " from {}: ", q
	}
	return in.Label + " down to {}: ", q
}
