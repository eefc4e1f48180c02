package judge

import (
	"cmp"

	"filmfurrow/rules/unit"
)

// WhyNot says for an option that did not win what decided against it: the rule
// that ruled it out, or the one that cost it most against the winner. Where that is
// something that speaks for the winner, that is said, so that its praise is not read as
// the other's.
func (c *Choice) WhyNot(i int) (unit.Phrase, *Rule) {
	r := &c.Ranked[i]
	if r.RuledOutBy != nil {
		return r.RuledOutBy.Reason, r.RuledOutBy.Rule
	}
	winner := map[*Rule]*Factor{}
	for j := range c.Ranked[0].Factors {
		winner[c.Ranked[0].Factors[j].Rule] = &c.Ranked[0].Factors[j]
	}
	var own, worst *Factor // of this option, and of the winner
	var rule *Rule
	most := 0.0
	note := func(ofOwn, ofWinner *Factor, loss float64) {
		if loss > most {
			own, worst, most = ofOwn, ofWinner, loss
			rule = cmp.Or(ofOwn, ofWinner).Rule
		}
	}
	for j := range r.Factors {
		f := &r.Factors[j]
		w := winner[f.Rule]
		loss := -f.Points()
		if w != nil {
			loss += w.Points()
			delete(winner, f.Rule)
		}
		if f.Points() < 0 {
			w = nil
		}
		note(f, w, loss)
	}
	for i := range c.Ranked[0].Factors {
		if w := winner[c.Ranked[0].Factors[i].Rule]; w != nil && w.Points() > 0 {
			note(nil, w, w.Points())
		}
	}
	switch {
	case rule == nil:
		return unit.Say("Nothing speaks against it; the first is a little ahead in all."), nil
	case worst == nil:
		return own.Reason, rule
	}
	return unit.Phrase{Text: "The chosen one does better: " + unit.Lower(worst.Reason.Text), Quantities: worst.Reason.Quantities}, rule
}
