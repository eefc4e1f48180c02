package plan

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// Consequence is what comes of several options in one unit.
type Consequence struct {
	Title unit.Phrase
	Of    []Amount
}

// Amount is what comes of one option.
type Amount struct {
	Option question.Option
	Value  unit.Quantity
}

// mostSet is how many films are set beside bare ground.
const mostSet = 3

// Consequences set what comes of the options side by side, where it can be counted: of the
// first films and bare ground, and of what one waits for. What is alike for all is left out.
func (a *Advice) Consequences(q question.Question) (list []Consequence) {
	f := a.Facts
	add := func(title unit.Phrase, options []question.Option, of func(question.Option) any) {
		c := Consequence{Title: title}
		differs := false
		for _, o := range options {
			c.Of = append(c.Of, Amount{o, unit.Of(of(o))})
			differs = differs || c.Of[len(c.Of)-1].Value.SI != c.Of[0].Value.SI
		}
		if differs {
			list = append(list, c)
		}
	}
	switch q {
	case question.Wait:
		var options []question.Option
		days := judge.Waits(f)
		for i := range a.Wait.Ranked {
			if o := a.Wait.Ranked[i].Option; days[o] > 0 {
				options = append(options, o)
			}
		}
		add(unit.Say("Days asked for, from laying for the day you wanted"), options, func(o question.Option) any { return days[o] })
	case question.Film:
		var options []question.Option
		for i := range a.Film.Ranked {
			if r := &a.Film.Ranked[i]; r.RuledOutBy == nil && len(options) < mostSet {
				options = append(options, r.Option)
			}
		}
		options = append(options, question.Option(facts.Bare))
		if !f.Autumn {
			add(unit.Say("Days earlier than on bare ground"), options, func(o question.Option) any { return judge.Earlier(f, o) })
		}
		add(unit.Say("Days too hot for the roots, of the first 60"), options, func(o question.Option) any { return unit.Days(f.Stalled[o]) })
		add(unit.Say("Hours of weeding on {} of bed", judge.BedShown), options, func(o question.Option) any { return unit.Along(unit.Hours(judge.Weeding(f, o))) })
		add(unit.Say("Price for {} of bed, as a length of plain black", judge.BedShown), options, func(o question.Option) any { return unit.Along(judge.Lengths(o)) })
	}
	return list
}
