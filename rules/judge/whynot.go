package judge

import "filmfurrow/rules/unit"

// WhyNot says for an option that did not win what decided against it: the rule
// that ruled it out, or the one that cost it most against the winner.
func (c *Choice) WhyNot(i int) (unit.Phrase, *Rule) {
	r := &c.Ranked[i]
	if r.RuledOutBy != nil {
		return r.RuledOutBy.Reason, r.RuledOutBy.Rule
	}
	winner := map[*Rule]*Factor{}
	for j := range c.Ranked[0].Factors {
		winner[c.Ranked[0].Factors[j].Rule] = &c.Ranked[0].Factors[j]
	}
	var worst *Factor
	most := 0.0
	note := func(f *Factor, loss float64) {
		if loss > most {
			worst, most = f, loss
		}
	}
	for j := range r.Factors {
		f := &r.Factors[j]
		loss := -f.Points()
		if w := winner[f.Rule]; w != nil {
			loss += w.Points()
			delete(winner, f.Rule)
		}
		if f.Points() < 0 {
			note(f, loss)
		} else if loss > 0 {
			note(c.factorOfWinner(f.Rule), loss)
		}
	}
	for _, f := range c.Ranked[0].Factors {
		if w := winner[f.Rule]; w != nil && w.Points() > 0 {
			note(w, w.Points())
		}
	}
	if worst == nil {
		return unit.Say("Nothing speaks against it; the first is a little ahead in all."), nil
	}
	return worst.Reason, worst.Rule
}

func (c *Choice) factorOfWinner(rule *Rule) *Factor {
	for j := range c.Ranked[0].Factors {
		if c.Ranked[0].Factors[j].Rule == rule {
			return &c.Ranked[0].Factors[j]
		}
	}
	return nil
}
