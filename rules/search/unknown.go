package search

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
)

// Open is an input that was left open, and what each possibility would bring.
type Open struct {
	Input    *field.Input
	Outcomes []Outcome
	Weight   int // how much it could change; the first to find out is the heaviest
}

// Outcome is a stretch of values with the same answers; a choice has one value.
type Outcome struct {
	From, To field.Value
	Answers  question.Answers
}

// weights say how much it matters that an answer is open: whether to lay at all,
// then what must be ordered first. Our judgement.
var weights = [question.Count]int{question.Verdict: 4, question.Film: 3, question.Bed: 1, question.Surface: 1, question.Thickness: 1, question.Tape: 1, question.Wait: 1}

// open notes the spread of an open input, where it has one.
func (t *TurningSearch) open(s *sweep) {
	o := Open{Input: s.input}
	var moved [question.Count]bool
	if now, known := s.input.Get(&t.filled); known && s.kind == each {
		o.Outcomes = append(o.Outcomes, Outcome{now, now, t.old})
	}
	for _, p := range s.parts {
		if p.from.answers == refused {
			continue
		}
		o.Outcomes = append(o.Outcomes, Outcome{at(s.input, p.from), at(s.input, p.to), p.from.answers})
		for q := range question.Count {
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
func (t *TurningSearch) Opens() []Open { return append([]Open(nil), t.opens...) }

// Differs tells whether the answer to a question depends on the input.
func (o *Open) Differs(q question.Question) bool {
	for i := range o.Outcomes {
		if o.Outcomes[i].Answers[q] != o.Outcomes[0].Answers[q] {
			return true
		}
	}
	return false
}
