package unit

import "strings"

// Phrase is a sentence with places "{}" for quantities. Rules speak in
// phrases, so that the same reason can be read in metric or in US units.
type Phrase struct {
	Text       string
	Quantities []Quantity
}

// Say makes a phrase; each value fills one "{}" in order.
func Say(text string, values ...any) Phrase {
	if len(values) == 0 {
		return Phrase{Text: text}
	}
	q := make([]Quantity, len(values))
	for i, v := range values {
		q[i] = Of(v)
	}
	return Phrase{Text: text, Quantities: q}
}

// In prints the phrase in one system of units.
func (p Phrase) In(system System) string {
	var b strings.Builder
	rest := p.Text
	for _, q := range p.Quantities {
		before, after, found := strings.Cut(rest, "{}")
		if !found {
			break
		}
		b.WriteString(before)
		b.WriteString(q.In(system))
		rest = after
	}
	b.WriteString(rest)
	return b.String()
}

// Complete tells whether each "{}" has a quantity and each quantity a "{}".
func (p Phrase) Complete() bool {
	if strings.Count(p.Text, "{}") != len(p.Quantities) {
		return false
	}
	for _, q := range p.Quantities {
		if q.Kind == KindWord && q.Word == "" {
			return false
		}
	}
	return true
}
