package rules

import "filmfurrow/rules/table"

// answer settles every question in order; each answer becomes a fact of the
// later ones. The choices are handed to keep; where it is nil only the answers
// themselves are worked out.
func answer(f *Facts, keep func(Choice)) (a Answers, l leads) {
	settle := func(q Question) Option {
		if keep == nil {
			a[q], l.ahead[q], l.out[q] = best(f, q)
			return a[q]
		}
		c := weigh(f, q)
		a[q] = NoOption
		if o, ok := c.Best(); ok {
			a[q] = o
		}
		keep(c)
		return a[q]
	}
	// Where nothing fits, the later questions go by the first option, as they do
	// where it wins.
	first := func(o Option) Option {
		if o == NoOption {
			return 0
		}
		return o
	}
	f.Film = table.NoFilm
	if o := settle(FilmQuestion); o != NoOption {
		f.Film = table.FilmID(o)
	}
	f.Height = heights[first(settle(BedQuestion))]
	f.Bed = shapeOf(f.Height, f.Top, f.Centres, f.Case.Practice.FilmWidth)
	f.Surfacing = first(settle(SurfaceQuestion))
	f.Thickness = first(settle(ThicknessQuestion))
	f.Tape = table.TapeID(first(settle(TapeQuestion)))
	settle(WaitQuestion)
	settle(Verdict)
	return a, l
}

// leads are how far each answer is ahead of the second, and which others are ruled
// out.
type leads struct {
	ahead [questionCount]float64
	out   [questionCount]uint32
}
