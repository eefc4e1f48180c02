package rules

import "filmfurrow/rules/table"

// NoOption stands for a question in which every option is ruled out.
const NoOption Option = 255

// Answers are the choices alone, without their reasons: what the search for
// turning points compares.
type Answers [questionCount]Option

// answer settles every question in order; each answer becomes a fact of the
// later ones. The choices are handed to keep, where it is not nil.
func (f *Facts) answer(keep func(Choice)) (a Answers) {
	settle := func(q Question) (Option, bool) {
		c := weigh(f, q)
		o, ok := c.Best()
		a[q] = o
		if !ok {
			a[q] = NoOption
		}
		if keep != nil {
			keep(c)
		}
		return o, ok
	}
	f.Film = table.NoFilm
	if o, ok := settle(FilmQuestion); ok {
		f.Film = table.FilmID(o)
	}
	bed, _ := settle(BedQuestion)
	f.Height = heights[bed]
	f.Bed = shapeOf(f.Height, f.Top, f.Centres, f.Case.Practice.FilmWidth)
	f.Surfacing, _ = settle(SurfaceQuestion)
	f.Thickness, _ = settle(ThicknessQuestion)
	tape, _ := settle(TapeQuestion)
	f.Tape = table.TapeID(tape)
	settle(WaitQuestion)
	settle(Verdict)
	return a
}

// asking gives bare answers to many cases that differ little, and keeps the
// facts of the first to save work.
type asking struct {
	before *Facts
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
	filled, _ := fill(c)
	return prepared{filled, keyOf(&filled)}, true
}

// on answers a case on the ground it needs.
func (k *asking) on(g *Ground, p prepared) (Answers, bool) {
	f, err := factsOf(p.filled, g, k.before)
	if err != nil {
		return Answers{}, false
	}
	if k.before == nil {
		first := *f
		k.before = &first
	}
	return f.answer(nil), true
}
