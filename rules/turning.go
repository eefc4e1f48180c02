package rules

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// TurningPoint is the nearest value of one input at which an answer changes,
// and to what. It is exact to a day, or to the input's step.
type TurningPoint struct {
	Input   *Input
	At      Value // the first value with the new answer
	Before  Value // the last value with the old one; the case's own where it is a choice
	Above   bool  // the point lies above the case's value
	Unknown bool  // the input was left open
	Absent  bool  // the case has no value, and no default stands in: Before is none
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

// Turner finds the turning points of one case by asking the pure engine again.
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
type Turner struct {
	asking
	base   Case
	ground *Ground
	filled Case
	old    Answers
	own    leads
	dig    bool
	only   string
	input  int
	deep   bool // the inputs that change the ground are being searched
	sweeps []sweep
	points []TurningPoint
	opens  []Open
	left   []*Input
	asked  int
	other  *Ground     // the last other ground
	used   *Ground     // of the last question
	work   *GroundWork // another ground, being dug
	blend  *Ground     // between two others
}

// sweep is one search in one input.
type sweep struct {
	input   *Input
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
	value   Value // of a choice
	asked   bool
	answers Answers
	leads   leads
	ground  *Ground // where each value has its own
	from    int     // the stride before it was looked through from this step on,
	seen    int     // and so many steps of it
}

// part is a stretch of steps with the same answers.
type part struct {
	from, to try
}

// refused stands for a case that is not right.
var refused = func() (a Answers) {
	for q := range a {
		a[q] = NoOption - 1
	}
	return a
}()

// NewTurner begins the search. The ground must be the case's own. With dig,
// inputs that change the ground are searched too.
func NewTurner(g *Ground, c Case, dig bool) (*Turner, bool) {
	t := &Turner{base: c, ground: g, dig: dig}
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
func (t *Turner) Only(name string) { t.only = name }

// Points gives what was found so far.
func (t *Turner) Points() []TurningPoint { return t.points }

// Left gives the inputs that change the ground and whose search has not begun. The
// list is whole once all others are done (Near).
func (t *Turner) Left() []*Input { return t.left }

// Asked counts how often the engine was asked.
func (t *Turner) Asked() int { return t.asked }

// Near tells whether all inputs that keep the ground are done.
func (t *Turner) Near() bool { return t.deep || t.input == turned && len(t.sweeps) == 0 }

// digDays of another ground count as one question.
const digDays = 4

// Step asks the engine at most so many times and tells whether all is done.
func (t *Turner) Step(times int) bool {
	for ; times > 0; times-- {
		if t.work != nil {
			if t.work.Step(digDays) {
				t.other, t.work = t.work.Ground(), nil
			}
			continue
		}
		for len(t.sweeps) == 0 {
			if t.input == turned {
				if t.deep || !t.dig {
					return true
				}
				t.input, t.deep = 0, true
			}
			t.begin(turnedInput(t.input))
			t.input++
		}
		if s := &t.sweeps[len(t.sweeps)-1]; t.step(s) {
			t.finish(s)
			t.sweeps = t.sweeps[:len(t.sweeps)-1]
		}
	}
	return false
}

// begin sets out the sweeps of an input, where its turn has come.
func (t *Turner) begin(in *Input) {
	if t.only != "" && t.only != in.Name {
		return
	}
	sweeps := sweepsOf(&t.base, &t.filled, in)
	deep := false
	for i := range sweeps {
		tries := sweeps[i].tries
		for k := range tries {
			if sweeps[i].kind == each || k == 0 || k == len(tries)/2 || k == len(tries)-1 {
				deep = deep || KeyOf(in.Turn(t.base, in.at(tries[k]))) != t.ground.Key
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
func (t *Turner) step(s *sweep) bool {
	if len(s.tries) == 0 {
		return true
	}
	now := &s.tries[len(s.tries)-1]
	if !now.asked {
		waits := false
		if now.answers, waits = t.ask(s.input.Turn(t.base, s.input.at(*now))); waits {
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
func (t *Turner) look(s *sweep, now *try) (step int, changes bool) {
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
	p, ok := prepare(s.input.Turn(t.base, s.input.at(try{step: step})))
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
func (t *Turner) between(a, b *Ground, share float32) *Ground {
	if a == nil || b == nil { // one end is a case that is not right
		if a == nil {
			a = t.ground
		}
		return a
	}
	if t.blend == nil {
		t.blend = &Ground{}
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
func close(a, b *leads) bool {
	for q := range a.ahead {
		if a.out[q] != b.out[q] || a.ahead[q] != b.ahead[q] && min(a.ahead[q], b.ahead[q]) < narrow {
			return true
		}
	}
	return false
}

// ask answers a case on the ground it needs, or waits for that ground.
func (t *Turner) ask(c Case) (answers Answers, waits bool) {
	p, ok := prepare(c)
	if !ok {
		return refused, false
	}
	g := t.ground
	if g.Key != p.key {
		if g = t.other; g == nil || g.Key != p.key {
			work, err := NewGroundWork(c)
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
func (t *Turner) finish(s *sweep) {
	now, known := s.input.Get(&t.filled)
	note := func(at, before try, above bool) {
		p := TurningPoint{Input: s.input, At: s.input.at(at), Before: now, Above: above, Unknown: s.unknown, Absent: s.kind == each && !known, Old: t.old, New: at.answers}
		if s.kind == through || before.asked {
			p.Before = s.input.at(before)
		}
		if at.answers != refused {
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
		case p.from.answers == t.old && (!known || now.Number >= s.input.at(p.from).Number && now.Number <= s.input.at(p.to).Number):
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

// farthestDay is how far a day is moved in search of a turn.
const farthestDay = 120

// sweepsOf sets out the searches of one input; the last is done first.
func sweepsOf(base, filled *Case, in *Input) []sweep {
	if !turns(base, in) {
		return nil
	}
	_, given := in.Get(base)
	now, known := in.Get(filled)
	one := sweep{input: in, unknown: !given && !told(in)}
	if in.Name == "practice.fumigated_on" && !given { // any day will do, until the label's days are known
		one.kind, one.tries = each, []try{{step: int(base.PlantOn.Value)}}
		return []sweep{one}
	}
	switch in.Form {
	case FormChoice, FormYesNo, FormFilms:
		one.kind = each
		for _, v := range optionsOf(in, now) {
			if v != now || !known {
				one.tries = append(one.tries, try{value: v})
			}
		}
		slices.Reverse(one.tries)
		return []sweep{one}
	}
	steps := stepsOf(in)
	if in.Form == FormDate {
		steps = nil
		for d := -farthestDay; d <= farthestDay; d++ {
			steps = append(steps, int(now.Number)+d)
		}
	}
	if in.reach() > 0 {
		steps = in.around(now)
		given = true // by the station, where not by the grower
	} else if given {
		steps = append(steps, in.pushes(base)...)
		slices.Sort(steps)
		steps = slices.Compact(steps)
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
	place := in.place(now)
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

// told tells whether leaving an input out says something: that there is no such
// thing, or that an estimate stands. Nobody must find it out.
func told(in *Input) bool {
	switch in.Name {
	case "practice.film_options", "practice.fumigated_on", "practice.reuse.film", "feed.injector_ratio", "place.elevation_m":
		return true
	}
	return in.ofMonths()
}

// ofMonths tells whether a row stands for a monthly list.
func (in *Input) ofMonths() bool { return in.Form == FormNumber && in.Clear == nil }

// EveryMonth tells of a row that stands for a monthly list what its value does to
// all twelve figures; empty for other rows.
func (in *Input) EveryMonth() string {
	switch {
	case !in.ofMonths():
		return ""
	case in.Moves[0] != "":
		return "moved by"
	}
	return "set to"
}

// mostPush is more than tape, filter and header take together: beyond it nothing
// changes with what the source pushes.
const mostPush unit.Kilopascals = 800

// mostPipe and mostBeds end the steps that are asked one by one.
const (
	mostPipe = unit.Metres(1000)
	mostBeds = 500
)

// pushes lists steps to ask one by one where the source's push is known: among
// known pipes the header's bore and whole zones let an answer change and change
// back from one step to the next. Of pressure and rise it lists those at which some
// water is pushed to the beds and no more than mostPush. It is empty for other
// inputs.
func (in *Input) pushes(c *Case) (steps []int) {
	w := &c.Water
	if !w.Flow.Given || !c.Field.Beds.Given || !w.Pressure.Given {
		return nil
	}
	low, high := in.Low, 0.0
	switch in.Name {
	case "water.pressure_kpa":
		low = float64(drip.PressureOf(w.Rise.Value))
		high = low + float64(mostPush)
	case "water.rise_m":
		high = float64(drip.HeadOf(w.Pressure.Value))
		low = high - float64(drip.HeadOf(mostPush))
	case "water.header_m":
		high = float64(mostPipe)
	case "field.beds":
		high = mostBeds
	default:
		return nil
	}
	last := min(in.place(Value{Number: in.High}), in.place(Value{Number: high}))
	for k := max(0, math.Floor(in.place(Value{Number: low}))); k <= last; k++ {
		steps = append(steps, int(k))
	}
	return steps
}

// reach is how many steps to either side an input of the place is moved: 1,500 m
// of height and 10 degrees of latitude, as far as the same weather may be thought
// of, and the whole range of a shift.
func (in *Input) reach() int {
	switch {
	case in.Name == "place.elevation_m":
		return 150
	case in.Name == "place.lat":
		return 100
	case in.Moves[0] != "":
		return int(in.High/in.Step + 0.5)
	}
	return 0
}

// around lists the steps within reach of a value.
func (in *Input) around(now Value) (steps []int) {
	own, reach := int(math.Round(in.place(now))), in.reach()
	for k := -reach; k <= reach; k++ {
		steps = append(steps, own+k)
	}
	return steps
}

// turns leaves out what cannot change an answer by itself: what only plans, costs
// and sheets read (a test tries that), and what counts only beside another field.
func turns(c *Case, in *Input) bool {
	switch in.Name {
	case "practice.label_interval_days":
		return c.Practice.FumigatedOn.Given
	case "practice.reuse.cover_percent":
		return c.Practice.ReuseFilm != ""
	case "water.tank_l":
		return c.Water.Refill.Given
	case "water.refill_l_h":
		return c.Water.Tank.Given
	case "soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour":
		return c.Soil.Temperature.Given
	}
	if in.ofMonths() { // either the one row of a list or the other
		_, known := in.Get(c)
		return known == (in.Moves[0] != "")
	}
	return !inert(in)
}

// inert inputs change plans, sheets and costs, but no answer. A station is only a
// name: its figures are searched as latitude, height and shifts of its months.
func inert(in *Input) bool {
	switch in.Name {
	case "place.station", "place.lon", "practice.roll_length_m", "practice.reuse.laid_on", "water.lift_m", "water.sodium_ratio", "water.nitrate_mg_l":
		return true
	}
	head, _, _ := strings.Cut(in.Name, ".")
	return head == "prices" || head == "shopping" || head == "day" || head == "feed" && in.Name != "feed.injector_ratio"
}

// optionsOf lists what a choice may hold. Of films that can be bought, each is
// taken away or added.
func optionsOf(in *Input, now Value) []Value {
	switch in.Form {
	case FormYesNo:
		return []Value{{Number: 0}, {Number: 1}}
	case FormFilms:
		const all = 1<<table.FilmCount - 1
		set := uint(now.Number)
		if set == 0 {
			set = all
		}
		var values []Value
		for film := range table.FilmCount {
			if other := set ^ 1<<film; other != 0 {
				values = append(values, Value{Number: float64(other)})
			}
		}
		return values
	}
	values := make([]Value, len(in.Options))
	for i, o := range in.Options {
		values[i] = Value{Word: o.ID}
	}
	return values
}

// few is how many steps a number may have to be gone through step by step.
const few = 16

// stepsOf lists the steps of a number, lowest first: all where there are few,
// else those near round figures (1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8 and their
// tens), since what counts is the ratio. Days of the year go by fortnights.
func stepsOf(in *Input) (steps []int) {
	if in.Form == FormDay {
		for k := 0; k < 366; k += 14 {
			steps = append(steps, k)
		}
		return append(steps, 365)
	}
	n := int((in.High-in.Low)/in.Step + 1e-9)
	if in.ofMonths() { // the need for water grows evenly with each of them
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
		steps = append(steps, int(math.Round(in.place(Value{}))))
	}
	for tens := in.Step; tens <= max(in.High, -in.Low); tens *= 10 {
		for _, m := range [...]float64{1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8} {
			for _, v := range [2]float64{m * tens, -m * tens} {
				if k := int(math.Round(in.place(Value{Number: v}))); k > 0 && k < n {
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
	slices.Sort(steps)
	return slices.Compact(steps)
}

// thin leaves few strides, where each value needs a ground of its own: outwards
// each four times as long as the one before, and five of an open number. What lies
// between is looked through on blended ground.
func (s *sweep) thin() {
	const most = 6
	n := len(s.tries)
	switch {
	case s.kind == through && n > most:
		for i := range most {
			s.tries[i] = s.tries[i*(n-1)/(most-1)]
		}
		s.tries = s.tries[:most]
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
func (in *Input) at(t try) Value {
	switch in.Form {
	case FormNumber, FormWhole:
		return Value{Number: rounded(in.Low + float64(float64(t.step)*in.Step))}
	case FormDate:
		return Value{Number: float64(t.step)}
	case FormDay:
		_, month, day := unit.On(2000, 1, 1).Plus(unit.Days(t.step)).Civil()
		return Value{Number: float64(100*month + day)}
	}
	return t.value
}

// place counts the steps up to a value.
func (in *Input) place(v Value) float64 {
	switch in.Form {
	case FormDate:
		return v.Number
	case FormDay:
		return float64(unit.On(2000, int(v.Number)/100, int(v.Number)%100).Minus(unit.On(2000, 1, 1)))
	}
	return (v.Number - in.Low) / in.Step
}

// rounded takes the dust off a decimal.
func rounded(v float64) float64 { return math.Round(v*1e6) / 1e6 }

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
	return unit.Phrase{Text: head + ": " + what.Text + ".", Quantities: append(values, what.Quantities...)}
}

func (p *TurningPoint) condition() (string, []unit.Quantity) {
	in := p.Input
	switch in.Form {
	case FormFilms:
		film := uint(p.At.Number) ^ uint(p.Before.Number)
		if p.Before.Number == 0 {
			film = ^uint(p.At.Number) & (1<<table.FilmCount - 1)
		}
		for id := range table.FilmCount {
			if film == 1<<id && uint(p.At.Number)&film != 0 {
				return "With " + table.FilmID(id).Name() + " in the shop", nil
			} else if film == 1<<id {
				return "Without " + table.FilmID(id).Name() + " in the shop", nil
			}
		}
	case FormDate:
		q := []unit.Quantity{unit.Of(unit.Date(p.At.Number))}
		switch {
		case p.Absent:
			return in.Label + " {}", q
		case in.Name != "plant_on" && p.Above:
			return in.Label + " {} or later", q
		case in.Name != "plant_on":
			return in.Label + " {} or sooner", q
		case p.Above:
			return "From {} on", q
		}
		return "Until {}", q
	case FormYesNo:
		if p.At.Number == 1 {
			return in.Label, nil
		}
		return "Not " + lower(in.Label), nil
	}
	text, values := in.Says(p.At)
	switch {
	case in.Moves[0] != "":
		return text, values
	case in.Name == "place.lat" && p.Above:
		return "With the sun of latitude " + text + " or farther north", values
	case in.Name == "place.lat":
		return "With the sun of latitude " + text + " or farther south", values
	case in.Form == FormChoice:
		return in.Label + " “" + text + "”", nil
	case in.Form == FormDay && p.Above:
		return in.Label + " on " + text + " or later", nil
	case in.Form == FormDay:
		return in.Label + " on " + text + " or sooner", nil
	case p.Above:
		return in.Label + " from " + text, values
	}
	return in.Label + " down to " + text, values
}

// Says gives a value of the input in words.
func (in *Input) Says(v Value) (string, []unit.Quantity) {
	if in.Moves[0] != "" {
		way := 0
		if v.Number > 0 {
			way = 1
		}
		return in.Label + " {} " + in.Moves[way], []unit.Quantity{{Kind: in.Kind, SI: math.Abs(v.Number)}}
	}
	switch in.Form {
	case FormChoice, FormText:
		for _, o := range in.Options {
			if o.ID == v.Word {
				return o.Label, nil
			}
		}
		return v.Word, nil
	case FormYesNo:
		return [...]string{"no", "yes"}[int(v.Number)], nil
	case FormDay:
		return strconv.Itoa(int(v.Number)%100) + " " + unit.MonthName(int(v.Number)/100), nil
	case FormDate:
		return "{}", []unit.Quantity{unit.Of(unit.Date(v.Number))}
	}
	return "{}", []unit.Quantity{{Kind: in.Kind, SI: v.Number}}
}
