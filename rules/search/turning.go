package search

import (
	"cmp"
	"slices"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
)

// TurningPoint is the nearest value of one input at which an answer changes,
// and to what. It is exact to a day, or to the input's step.
type TurningPoint struct {
	Input   *field.Input
	At      field.Value // the first value with the new answer
	Before  field.Value // the last value with the old one; the case's own where it is a choice
	Above   bool        // the point lies above the case's value
	Unknown bool        // the input was left open
	Absent  bool        // the case has no value, and no default stands in: Before is none
	Old     question.Answers
	New     question.Answers
}

// Changes lists the questions whose answer changes at the point.
func (p *TurningPoint) Changes() (list []question.Question) {
	for q := range question.Count {
		if p.Old[q] != p.New[q] {
			list = append(list, q)
		}
	}
	return list
}

// TurningSearch finds the turning points of one case by asking the pure engine again.
// It tries every option of a choice and every day around the planting day. It
// goes through a number in strides, and halves the stride in which the answers
// change until the point is exact to the input's step. A number that was left
// open is gone through from end to end.
//
// One limit is known: where pipe, rise and pressure are all given, an answer may
// change and change back within a stride of the water's inputs, since pipes come in
// sizes. A test counts how often such a point is missed, one search in forty.
//
// It works in slices. Inputs that keep the ground come first; those that change
// it (the place, the soil, the spring, the bed top) need a year of soil warmth
// for each value. They are searched only with dig, and in a few strides.
type TurningSearch struct {
	asking
	base   field.Case
	ground *facts.SoilYear
	filled field.Case
	old    question.Answers
	own    judge.Leads
	dig    bool
	only   string
	input  int
	next   func() int // the input after this one, where others share the work
	deep   bool       // the inputs that change the ground are being searched
	sweeps []sweep
	points []TurningPoint
	opens  []Open
	left   []*field.Input
	asked  int
	other  *facts.SoilYear     // the last other ground
	used   *facts.SoilYear     // of the last question
	work   *facts.SoilYearWork // another ground, being dug
	blend  *facts.SoilYear     // between two others
}

// sweep is one search in one input.
type sweep struct {
	input   *field.Input
	tries   []try // to ask; the last comes first
	last    try   // the step before, with its answers
	above   bool
	unknown bool
	begun   bool
	kind    sweepKind
	parts   []part
}

type sweepKind uint8

const (
	outward sweepKind = iota // from the case's value to the first change
	through                  // an open number, from end to end
	each                     // every option of a choice
)

// try is one value, as its number of steps, and what the engine said of it.
type try struct {
	step    int
	value   field.Value // of a choice
	asked   bool
	answers question.Answers
	leads   judge.Leads
	ground  *facts.SoilYear // where each value has its own
	from    int             // the stride before it was looked through from this step on,
	seen    int             // and so many steps of it
}

// part is a stretch of steps with the same answers.
type part struct {
	from, to try
}

// refused stands for a case that is not right.
var refused = func() (a question.Answers) {
	for q := range a {
		a[q] = question.NoOption - 1
	}
	return a
}()

// NewTurningSearch begins the search. The ground must be the case's own. With dig,
// inputs that change the ground are searched too.
func NewTurningSearch(g *facts.SoilYear, c field.Case, dig bool) (*TurningSearch, bool) {
	t := &TurningSearch{base: c, ground: g, dig: dig}
	p, ok := prepare(c)
	if !ok || p.key != g.Key {
		return t, false
	}
	t.filled = p.filled
	t.old, ok = t.on(g, p)
	t.own = t.leads
	return t, ok
}

// Only narrows the search to one input, by its name.
func (t *TurningSearch) Only(name string) { t.only = name }

// Beside is another search of the same case, to share the work with.
func (t *TurningSearch) Beside() *TurningSearch {
	b, _ := NewTurningSearch(t.ground, t.base, t.dig)
	return b
}

// Share takes the inputs that keep the ground from a list that other searches of the case
// take from too: next gives each number once, from 0 on. The search ends with the list, and
// Gather puts together what they found.
func (t *TurningSearch) Share(next func() int) {
	t.next = next
	t.onward()
}

// Gather takes over what others found of a shared list, in the order of the inputs, once
// all of them are done with it. What changes the ground is left to this search.
func (t *TurningSearch) Gather(others ...*TurningSearch) {
	t.next, t.input = nil, turned
	for _, o := range others {
		t.points, t.opens, t.left, t.asked = append(t.points, o.points...), append(t.opens, o.opens...), append(t.left, o.left...), t.asked+o.asked
	}
	number := make(map[*field.Input]int, turned)
	for i := range turned {
		number[turnedInput(i)] = i
	}
	slices.SortStableFunc(t.points, func(a, b TurningPoint) int { return number[a.Input] - number[b.Input] })
	slices.SortStableFunc(t.opens, func(a, b Open) int {
		return cmp.Or(b.Weight-a.Weight, number[a.Input]-number[b.Input])
	})
	slices.SortFunc(t.left, func(a, b *field.Input) int { return number[a] - number[b] })
}

// onward goes to the next input.
func (t *TurningSearch) onward() {
	if t.next == nil {
		t.input++
		return
	}
	t.input = min(t.next(), turned)
}

// Points gives what was found so far.
func (t *TurningSearch) Points() []TurningPoint { return t.points }

// Left gives the inputs that change the soil's warmth and whose search has not begun.
// The list is whole once all others are done (Near).
func (t *TurningSearch) Left() []*field.Input { return t.left }

// Asked counts how often the engine was asked.
func (t *TurningSearch) Asked() int { return t.asked }

// Near tells whether all inputs that keep the ground are done.
func (t *TurningSearch) Near() bool { return t.deep || t.input == turned && len(t.sweeps) == 0 }

// digDays of another ground count as one question.
const digDays = 4

// Step asks the engine at most so many times and tells whether all is done.
func (t *TurningSearch) Step(times int) bool {
	for ; times > 0; times-- {
		if t.work != nil {
			if t.work.Step(digDays) {
				t.other, t.work = t.work.Year(), nil
			}
			continue
		}
		for len(t.sweeps) == 0 {
			if t.input == turned {
				if t.deep || !t.dig || t.next != nil {
					return true
				}
				t.input, t.deep = 0, true
			}
			t.begin(turnedInput(t.input))
			t.onward()
		}
		if s := &t.sweeps[len(t.sweeps)-1]; t.step(s) {
			t.finish(s)
			t.sweeps = t.sweeps[:len(t.sweeps)-1]
		}
	}
	return false
}

// begin sets out the sweeps of an input, where its turn has come.
func (t *TurningSearch) begin(in *field.Input) {
	if t.only != "" && t.only != in.Name {
		return
	}
	sweeps := sweepsOf(&t.base, &t.filled, in)
	deep := false
	for i := range sweeps {
		tries := sweeps[i].tries
		for k := range tries {
			if sweeps[i].kind == each || k == 0 || k == len(tries)/2 || k == len(tries)-1 {
				deep = deep || facts.KeyOf(in.Turn(t.base, at(in, tries[k]))) != t.ground.Key
			}
		}
	}
	switch {
	case deep && !t.deep:
		t.left = append(t.left, in)
	case deep:
		t.left = t.left[1:]
	}
	if deep != t.deep {
		return
	}
	t.sweeps = sweeps
	for i := range sweeps {
		sweeps[i].last.answers, sweeps[i].last.leads = t.old, t.own
		if deep {
			sweeps[i].last.ground = t.ground
			sweeps[i].thin()
		}
	}
}

// step asks for one value and tells whether the sweep is done.
func (t *TurningSearch) step(s *sweep) bool {
	if len(s.tries) == 0 {
		return true
	}
	now := &s.tries[len(s.tries)-1]
	if !now.asked {
		waits := false
		if now.answers, waits = t.ask(s.input.Turn(t.base, at(s.input, *now))); waits {
			return false
		}
		now.asked, now.leads = true, t.leads
		if t.deep {
			now.ground = t.used
		}
		t.asked++
	}
	gap := now.step - s.last.step
	same, stride := now.answers == s.last.answers, gap > 1 || gap < -1
	switch {
	case s.kind == each, s.kind == through && !s.begun:
		s.parts = append(s.parts, now.part())
	case stride && t.deep:
		step, changes := t.look(s, now)
		if step == now.step && same {
			s.reach(now)
			break
		}
		side := gap / max(gap, -gap)
		if step == now.step { // it changes at the stride's end
			s.tries = append(s.tries, try{step: step - side})
		} else if changes {
			s.tries = append(s.tries, try{step: step})
			if step -= side; step != s.last.step {
				s.tries = append(s.tries, try{step: step})
			}
		}
		return false
	case stride && (!same || close(&now.leads, &s.last.leads)): // halve the stride in which an answer changes, or may change and change back
		s.tries = append(s.tries, try{step: s.last.step + gap/2})
		return false
	case same:
		s.reach(now)
	default:
		s.parts = append(s.parts, now.part())
		if s.kind == outward {
			return true
		}
	}
	s.begun, s.last = true, *now
	s.tries = s.tries[:len(s.tries)-1]
	return len(s.tries) == 0
}

func (v *try) part() part {
	at := *v
	at.ground = nil // parts outlive the search, and a ground is large
	return part{at, at}
}

// reach lets the last part go on to a value.
func (s *sweep) reach(now *try) {
	if s.kind == through {
		s.parts[len(s.parts)-1].to = now.part().to
	}
}

// look goes through a stride, one step at a time, on ground blended from that of
// its two ends. It tells whether an answer seems to change at the step, for the
// search to ask in earnest; and gives the stride's end where none does before it.
func (t *TurningSearch) look(s *sweep, now *try) (step int, changes bool) {
	if now.from != s.last.step {
		now.from, now.seen = s.last.step, 0
	}
	now.seen++
	length, step := now.step-s.last.step, s.last.step+now.seen
	if length < 0 {
		length, step = -length, s.last.step-now.seen
	}
	if now.seen >= length {
		return now.step, false
	}
	p, ok := prepare(s.input.Turn(t.base, at(s.input, try{step: step})))
	if !ok {
		return step, s.last.answers != refused
	}
	ground := t.ground
	if p.key != ground.Key {
		ground = t.between(s.last.ground, now.ground, float32(now.seen)/float32(length))
	}
	answers, _ := t.on(ground, p)
	return step, answers != s.last.answers
}

// between blends what answers read of two grounds.
func (t *TurningSearch) between(a, b *facts.SoilYear, share float32) *facts.SoilYear {
	if a == nil || b == nil { // one end is a case that is not right
		if a == nil {
			a = t.ground
		}
		return a
	}
	if t.blend == nil {
		t.blend = &facts.SoilYear{}
	}
	for film := range a.Mean {
		for depth := range a.Mean[film] {
			for day := range a.Mean[film][depth] {
				t.blend.Mean[film][depth][day] = a.Mean[film][depth][day] + float32(share*(b.Mean[film][depth][day]-a.Mean[film][depth][day]))
				t.blend.Low[film][depth][day] = a.Low[film][depth][day] + float32(share*(b.Low[film][depth][day]-a.Low[film][depth][day]))
			}
		}
		for day := range a.Surface[film] {
			t.blend.Surface[film][day] = a.Surface[film][day] + float32(share*(b.Surface[film][day]-a.Surface[film][day]))
		}
	}
	return t.blend
}

// narrow is a lead within which a second answer may come up in the middle of a
// stride. The property test found it wide enough.
const narrow = 0.35

// close tells whether another answer may come up within a stride: where other
// options are ruled out at its two ends, or where some lead moves and is small.
func close(a, b *judge.Leads) bool {
	for q := range a.Ahead {
		if a.Out[q] != b.Out[q] || a.Ahead[q] != b.Ahead[q] && min(a.Ahead[q], b.Ahead[q]) < narrow {
			return true
		}
	}
	return false
}

// ask answers a case on the ground it needs, or waits for that ground.
func (t *TurningSearch) ask(c field.Case) (answers question.Answers, waits bool) {
	p, ok := prepare(c)
	if !ok {
		return refused, false
	}
	g := t.ground
	if g.Key != p.key {
		if g = t.other; g == nil || g.Key != p.key {
			work, err := facts.NewSoilYearWork(c)
			if err != nil {
				return refused, false
			}
			t.work = work
			return answers, true
		}
	}
	t.used = g
	if answers, ok = t.on(g, p); !ok {
		return refused, false
	}
	return answers, false
}

// finish turns what a sweep found into points, and into the spread of an open
// input.
func (t *TurningSearch) finish(s *sweep) {
	now, known := s.input.Get(&t.filled)
	note := func(found, before try, above bool) {
		p := TurningPoint{Input: s.input, At: at(s.input, found), Before: now, Above: above, Unknown: s.unknown, Absent: s.kind == each && !known, Old: t.old, New: found.answers}
		if s.kind == through || before.asked {
			p.Before = at(s.input, before)
		}
		if found.answers != refused {
			t.points = append(t.points, p)
		}
	}
	for i, p := range s.parts {
		switch {
		case s.kind == outward:
			note(p.from, s.last, s.above)
		case s.kind == each:
			if p.from.answers != t.old {
				note(p.from, try{}, false)
			}
		case p.from.answers == t.old && (!known || now.Number >= at(s.input, p.from).Number && now.Number <= at(s.input, p.to).Number):
			if i > 0 {
				note(s.parts[i-1].to, p.from, false)
			}
			if i+1 < len(s.parts) {
				note(s.parts[i+1].from, p.to, true)
			}
		}
	}
	if s.unknown {
		t.open(s)
	}
}
