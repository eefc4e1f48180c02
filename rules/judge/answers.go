package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
)

// Answer settles every question in order; each answer becomes a fact of the
// later ones. The choices are handed to keep; where it is nil only the answers
// themselves are worked out.
func Answer(f *facts.Facts, keep func(Choice)) (a question.Answers, l Leads) {
	settle := func(q question.Question) question.Option {
		if keep == nil {
			a[q], l.Ahead[q], l.Out[q] = Best(f, q)
			return a[q]
		}
		c := weigh(f, q)
		a[q] = question.NoOption
		if o, ok := c.Best(); ok {
			a[q] = o
		}
		keep(c)
		return a[q]
	}
	// Where nothing fits, the later questions go by the first option, as they do
	// where it wins.
	first := func(o question.Option) question.Option {
		if o == question.NoOption {
			return 0
		}
		return o
	}
	f.Film = table.NoFilm
	if o := settle(question.Film); o != question.NoOption {
		f.Film = table.FilmID(o)
	}
	bed := first(settle(question.Bed))
	f.HeightOption, f.Height, f.Bed = bed, question.Heights[bed], Across(f, bed)
	f.Surfacing = first(settle(question.Surface))
	f.Thickness = first(settle(question.Thickness))
	f.Tape = table.TapeID(first(settle(question.Tape)))
	settle(question.Wait)
	settle(question.Verdict)
	return a, l
}

// Leads are how far each answer is ahead of the second, and which others are ruled
// out.
type Leads struct {
	Ahead [question.Count]float64
	Out   [question.Count]uint32
}
