package judge

import (
	"math"
	"sort"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
)

// Confidence says how firmly an answer stands. It is not a probability.
type Confidence uint8

// The degrees.
const (
	Close   Confidence = iota // the first two are within the margin
	Leaning                   // one weight moved by one step would change the answer
	Clear                     // survives every single weight moved by one step
)

// String gives the word that stands beside the answer.
func (c Confidence) String() string { return [...]string{"close", "leaning", "clear"}[c] }

// TieMargin is the difference of scores below which two options are called a
// tie. It is a sixth of a plain rule's full weight: our judgement.
const TieMargin = 0.33

// Ranked is one option with all that spoke to it.
type Ranked struct {
	Option     question.Option
	Score      float64 // how many points it is ahead of the least fit option
	RuledOutBy *Factor
	Factors    []Factor
}

// Choice is the answer to one question.
type Choice struct {
	Question   question.Question
	Ranked     []Ranked // best first; those ruled out come last
	Lead       float64  // 0–1: how far the first is ahead of the second
	Confidence Confidence
	Tied       bool // the second is within the margin
}

// Best gives the winning option, and false where every option is ruled out.
func (c *Choice) Best() (question.Option, bool) {
	if len(c.Ranked) == 0 || c.Ranked[0].RuledOutBy != nil {
		return 0, false
	}
	return c.Ranked[0].Option, true
}

// weigh asks every rule of a question about every option. Nothing outvotes a
// rule that rules an option out. Ties keep the options' own order, which is
// stated in [question.Question]: the commoner or simpler thing first.
func weigh(f *facts.Facts, q question.Question) Choice {
	rules := Rules(q)
	n := q.Options()
	c := Choice{Question: q, Ranked: make([]Ranked, n)}
	factors := make([]Factor, 0, n*len(rules)/2)
	for o := range n {
		r := &c.Ranked[o]
		r.Option = question.Option(o)
		start := len(factors)
		ruled := -1
		for _, rule := range rules {
			finding, speaks := rule.ask(f, question.Option(o))
			if !speaks {
				continue
			}
			factors = append(factors, Factor{rule, finding})
			if finding.RulesOut && ruled < 0 {
				ruled = len(factors) - 1
			}
		}
		r.Factors = factors[start:len(factors):len(factors)]
		if ruled >= 0 {
			r.RuledOutBy = &r.Factors[ruled-start]
		}
		r.Score = scoreOf(r.Factors)
	}
	fromLeast(c.Ranked)
	sort.SliceStable(c.Ranked, func(a, b int) bool { return better(&c.Ranked[a], &c.Ranked[b]) })
	c.judgeConfidence()
	return c
}

// Best is the winner of [weigh] alone, how far it leads the second, and which are
// ruled out, a bit for each: for searches that ask thousands of times. NoOption
// where all are ruled out.
func Best(f *facts.Facts, q question.Question) (winner question.Option, ahead float64, out uint32) {
	winner = question.NoOption
	most, second := math.Inf(-1), math.Inf(-1)
options:
	for o := range question.Option(q.Options()) {
		sum := 0.0
		for _, rule := range Rules(q) {
			finding, speaks := rule.ask(f, o)
			if finding.RulesOut {
				out |= 1 << o
				continue options
			}
			if speaks {
				sum += float64(rule.Weight) * finding.Fit
			}
		}
		switch score := math.Round(sum*1000) / 1000; {
		case score > most:
			winner, most, second = o, score, most
		case score > second:
			second = score
		}
	}
	return winner, most - second, out
}

// fromLeast counts the scores from the least fit of the options that may be chosen. A
// sum of points has no natural nought: only its distance to another option says
// anything, and so the winner never reads as less than nothing.
func fromLeast(ranked []Ranked) {
	least := math.Inf(+1)
	for i := range ranked {
		if ranked[i].RuledOutBy == nil {
			least = min(least, ranked[i].Score)
		}
	}
	for i := range ranked {
		switch r := &ranked[i]; {
		case r.RuledOutBy != nil:
			r.Score = 0
		default:
			r.Score = math.Round((r.Score-least)*1000) / 1000
		}
	}
}

func scoreOf(factors []Factor) float64 {
	sum := 0.0
	for i := range factors {
		sum += factors[i].Points()
	}
	return math.Round(sum*1000) / 1000
}

// better tells whether an option stands before another: sort and not slices, whose
// sorts are compiled anew for each type, 7 kB of the page's program.
func better(a, b *Ranked) bool {
	if (a.RuledOutBy == nil) != (b.RuledOutBy == nil) {
		return a.RuledOutBy == nil
	}
	return a.Score > b.Score
}

func (c *Choice) judgeConfidence() {
	first, ok := c.Best()
	if !ok {
		return
	}
	if len(c.Ranked) < 2 || c.Ranked[1].RuledOutBy != nil {
		c.Lead, c.Confidence = 1, Clear
		return
	}
	ahead := c.Ranked[0].Score - c.Ranked[1].Score
	c.Lead = math.Round(saturate(ahead, leadHalf)*1000) / 1000
	if ahead < TieMargin {
		c.Confidence, c.Tied = Close, true
		return
	}
	c.Confidence = Clear
	for _, rule := range Rules(c.Question) {
		if c.winnerWith(rule, +1) != first || c.winnerWith(rule, -1) != first {
			c.Confidence = Leaning
			return
		}
	}
}

// winnerWith finds the winner if one rule's weight were moved by one step.
func (c *Choice) winnerWith(rule *Rule, step float64) question.Option {
	best, most := c.Ranked[0].Option, math.Inf(-1)
	for i := range c.Ranked {
		r := &c.Ranked[i]
		if r.RuledOutBy != nil {
			break
		}
		score := r.Score
		for j := range r.Factors {
			if r.Factors[j].Rule == rule {
				score += step * r.Factors[j].Fit
			}
		}
		if score > most {
			best, most = r.Option, score
		}
	}
	return best
}
