package rules

// asking gives bare answers to many cases that differ little, and keeps the
// facts of the first to save work.
type asking struct {
	before *Facts
	facts  Facts // of the last case, written over by the next
	leads  leads // of the last case
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
	c = filled(c)
	return prepared{c, keyOf(&c)}, true
}

// on answers a case on the ground it needs.
func (k *asking) on(g *Ground, p prepared) (Answers, bool) {
	f := &k.facts
	if err := f.of(p.filled, g, k.before); err != nil {
		return Answers{}, false
	}
	if k.before == nil {
		k.before = f.forSearch()
	}
	a, leads := answer(f, nil)
	k.leads = leads
	return a, true
}
