package rules

import (
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/table"
)

// NoOption stands for a question in which every option is ruled out.
const NoOption Option = 255

// Answers are the choices alone, without their reasons: what the search for
// turning points compares.
type Answers [questionCount]Option

// answer settles every question in order; each answer becomes a fact of the
// later ones. The choices are handed to keep; where it is nil only the answers
// themselves are worked out.
func (f *Facts) answer(keep func(Choice)) (a Answers) {
	settle := func(q Question) Option {
		if keep == nil {
			a[q], f.leads.ahead[q], f.leads.out[q] = best(f, q)
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
	return a
}

// asking gives bare answers to many cases that differ little, and keeps the
// facts of the first to save work.
type asking struct {
	before *Facts
	facts  Facts // of the last case, written over by the next
	leads  leads // of the last case
}

// leads are how far each answer is ahead of the second, and which others are ruled
// out.
type leads struct {
	ahead [questionCount]float64
	out   [questionCount]uint32
}

// prepared is a case that was found right, with its defaults, and the key of
// the ground it needs.
type prepared struct {
	filled Case
	key    GroundKey
}

// prepare checks and fills a case once; false where it is not right.
func prepare(c Case) (prepared, bool) {
	if len(Check(&c)) > 0 {
		return prepared{}, false
	}
	fillIn(&c, nil)
	return prepared{c, keyOf(&c)}, true
}

// on answers a case on the ground it needs.
func (k *asking) on(g *Ground, p prepared) (Answers, bool) {
	f := &k.facts
	if err := f.of(p.filled, g, k.before); err != nil {
		return Answers{}, false
	}
	if k.before == nil {
		first := *f
		first.lines, first.spare = &drip.Known{}, &Warmth{bare: true}
		k.before = &first
	}
	a := f.answer(nil)
	k.leads = f.leads
	return a, true
}
