package rules

// Open is an input that was left open, and what each possibility would bring.
type Open struct {
	Input    *Input
	Outcomes []Outcome
	Weight   int // how much it could change; the first to find out is the heaviest
}

// Outcome is a stretch of values with the same answers; a choice has one value.
type Outcome struct {
	From, To Value
	Answers  Answers
}

// weights say how much it matters that an answer is open: whether to lay at all,
// then what must be ordered first. Our judgement.
var weights = [questionCount]int{Verdict: 4, FilmQuestion: 3, BedQuestion: 1, SurfaceQuestion: 1, ThicknessQuestion: 1, TapeQuestion: 1, WaitQuestion: 1}

// open notes the spread of an open input, where it has one.
func (t *Turner) open(s *sweep) {
	o := Open{Input: s.input}
	var moved [questionCount]bool
	if now, known := s.input.Get(&t.filled); known && s.kind == each {
		o.Outcomes = append(o.Outcomes, Outcome{now, now, t.old})
	}
	for _, p := range s.parts {
		if p.from.answers == refused {
			continue
		}
		o.Outcomes = append(o.Outcomes, Outcome{s.input.at(p.from), s.input.at(p.to), p.from.answers})
		for q := range questionCount {
			moved[q] = moved[q] || p.from.answers[q] != t.old[q]
		}
	}
	for q, m := range moved {
		if m {
			o.Weight += weights[q]
		}
	}
	if o.Weight > 0 {
		t.opens = append(t.opens, o)
		for i := len(t.opens) - 1; i > 0 && t.opens[i-1].Weight < o.Weight; i-- {
			t.opens[i-1], t.opens[i] = o, t.opens[i-1]
		}
	}
}

// Opens lists the open inputs that could change an answer, the one most worth
// finding out first.
func (t *Turner) Opens() []Open { return append([]Open(nil), t.opens...) }

// Differs tells whether the answer to a question depends on the input.
func (o *Open) Differs(q Question) bool {
	for i := range o.Outcomes {
		if o.Outcomes[i].Answers[q] != o.Outcomes[0].Answers[q] {
			return true
		}
	}
	return false
}
