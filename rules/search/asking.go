package search

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
)

// asking gives bare answers to many cases that differ little, and keeps the
// facts of the first to save work.
type asking struct {
	before *facts.Facts
	facts  facts.Facts // of the last case, written over by the next
	leads  judge.Leads // of the last case
}

// prepared is a case that was found right, with its defaults, and the key of
// the ground it needs.
type prepared struct {
	filled field.Case
	key    facts.SoilKey
}

// prepare checks and fills a case once; false where it is not right.
func prepare(c field.Case) (prepared, bool) {
	if len(field.Check(&c)) > 0 {
		return prepared{}, false
	}
	c = field.Filled(c)
	return prepared{c, facts.KeyOfFilled(&c)}, true
}

// on answers a case on the ground it needs.
func (k *asking) on(g *facts.SoilYear, p prepared) (question.Answers, bool) {
	f := &k.facts
	if err := judge.Settle(f, p.filled, g, k.before); err != nil {
		return question.Answers{}, false
	}
	if k.before == nil {
		k.before = f.ForSearch()
	}
	a, leads := judge.Answer(f, nil)
	k.leads = leads
	return a, true
}
