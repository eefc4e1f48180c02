package search

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Doubt says how an answer fares when what nobody can know is moved through
// its range: the year and the films' effect.
type Doubt struct {
	Question question.Question
	Trials   []Whatif
	Own      question.Option // the advice's own answer
	Holds    int             // trials with that answer
}

// Whatif is one trial and its answer.
type Whatif struct {
	What   string
	Option question.Option
}

// The what-ifs. The cool and the warm year each come about one year in ten.
var whatIfs = []struct {
	what string
	risk string // the spring, which needs a ground of its own
	make func(g *facts.SoilYear) *facts.SoilYear
}{
	{what: "in a cool year", risk: "cool"},
	{what: "in a usual year", risk: "usual"},
	{what: "in a warm year", risk: "warm"},
	{what: "with films that warm at the low end of what was published", make: bandOf(false)},
	{what: "with films that warm at the high end of what was published", make: bandOf(true)},
}

// bandOf moves every film's mean to an end of its band, beyond what bare
// ground moves: so the film's own doubt is tried, not the year's.
func bandOf(high bool) func(*facts.SoilYear) *facts.SoilYear {
	return func(g *facts.SoilYear) *facts.SoilYear {
		moved := *g
		for film := range table.FilmCount {
			for depth := range heat.Depths {
				for day := range weather.YearDays {
					end, bare := g.BandLow[film][depth][day], g.BandLow[facts.Bare][depth][day]
					if high {
						end, bare = g.BandHigh[film][depth][day], g.BandHigh[facts.Bare][depth][day]
					}
					by := (end - g.Mean[film][depth][day]) - (bare - g.Mean[facts.Bare][depth][day])
					moved.Mean[film][depth][day] += by
					moved.Low[film][depth][day] += by
					moved.High[film][depth][day] += by
				}
			}
		}
		return &moved
	}
}

// Doubts tries every what-if. It digs two grounds more, so it takes a fifth of
// a second; see [DoubtWork] for slices.
func Doubts(g *facts.SoilYear, c field.Case) []Doubt {
	w := NewDoubts(g, c)
	for !w.Step() {
	}
	return w.Doubts()
}

// DoubtWork tries one what-if after another.
type DoubtWork struct {
	dig    *facts.SoilYearWork // the ground of another spring, being dug
	base   field.Case
	ground *facts.SoilYear
	old    question.Answers
	at     int
	trials []question.Answers
	whats  []string
}

// NewDoubts begins; the ground must be the case's own.
func NewDoubts(g *facts.SoilYear, c field.Case) *DoubtWork {
	w := &DoubtWork{base: c, ground: g}
	if p, ok := prepare(c); ok && p.key == g.Key {
		w.old, _ = (&asking{}).on(g, p)
	}
	return w
}

// Step tries one what-if, or works for a day of weather on the ground of one, and
// tells whether all are done.
func (w *DoubtWork) Step() bool {
	if w.at < len(whatIfs) {
		try := whatIfs[w.at]
		c, g := w.base, w.ground
		switch {
		case w.dig != nil:
			if !w.dig.Step(1) {
				return false
			}
			c.Risk, g, w.dig = try.risk, w.dig.Year(), nil
		case try.risk != "":
			c.Risk = try.risk
			if facts.KeyOf(c) == g.Key {
				break
			}
			var err error
			if w.dig, err = facts.NewSoilYearWork(c); err == nil {
				return false
			}
			c, w.dig = w.base, nil
		case try.make != nil:
			g = try.make(g)
		}
		w.at++
		if a, ok := answersOn(g, c); ok {
			w.trials, w.whats = append(w.trials, a), append(w.whats, try.what)
		}
	}
	return w.at == len(whatIfs)
}

// answersOn answers a case on a soil year that was moved within its range.
func answersOn(g *facts.SoilYear, c field.Case) (question.Answers, bool) {
	p, ok := prepare(c)
	if !ok {
		return question.Answers{}, false
	}
	f := &facts.Facts{}
	if err := judge.Settle(f, p.filled, g, nil); err != nil {
		return question.Answers{}, false
	}
	a, _ := judge.Answer(f, nil)
	return a, true
}

// Doubts gives, for each question, the trials and how many keep the answer.
func (w *DoubtWork) Doubts() []Doubt {
	list := make([]Doubt, 0, question.Count)
	for q := range question.Count {
		d := Doubt{Question: q, Own: w.old[q]}
		for i, a := range w.trials {
			d.Trials = append(d.Trials, Whatif{w.whats[i], a[q]})
			if a[q] == w.old[q] {
				d.Holds++
			}
		}
		list = append(list, d)
	}
	return list
}

// yearTrials are the trials of years, the first three; the rest are bands.
const yearTrials = 3

// rareYears of ten are as cool, and as many as warm, as the years that stand for them.
const rareYears = 1

// Years counts of ten years those with the answer: a cool and a warm one each
// come about one year in ten.
func (d *Doubt) Years() (years int) {
	for i, share := range [yearTrials]int{rareYears, 10 - 2*rareYears, rareYears} {
		if i < len(d.Trials) && d.Trials[i].Option == d.Own {
			years += share
		}
	}
	return years
}

// Says puts the doubt in one sentence.
func (d *Doubt) Says() unit.Phrase {
	says := func(o question.Option) unit.Phrase {
		if o == question.NoOption {
			return unit.Say("nothing fits")
		}
		return d.Question.Says(o)
	}
	own := says(d.Own)
	text, values := unit.Capital(own.Text)+" in about {} of 10 years", append(own.Quantities, unit.Of(d.Years()))
	if d.Holds == len(d.Trials) {
		text += ", and at both ends of what was published on films"
	}
	for _, t := range d.Trials {
		if t.Option != d.Own {
			other := says(t.Option)
			text, values = text+"; "+t.What+", "+unit.Lower(other.Text), append(values, other.Quantities...)
		}
	}
	return unit.Phrase{Text: text + ".", Quantities: values}
}
