package judge

import (
	"math"
	"slices"
	"strings"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Weight is how heavily a rule counts. The direction of an effect has a
// source; its weight is our judgement, and the page says so.
type Weight uint8

// The three weights. Nobody tunes decimals.
const (
	Slight Weight = 1
	Plain  Weight = 2
	Strong Weight = 3
)

// String gives the weight in a word.
func (w Weight) String() string { return [...]string{"none", "slight", "plain", "strong"}[w] }

// Rule is one row: it reads the facts and speaks to the options of one
// question.
type Rule struct {
	ID      string // stable: golden files and "explain" use it
	Speaks  question.Question
	Title   string // one plain line
	Weight  Weight
	Because string // why that weight
	Sources []*table.Source
	Judge   func(*facts.Facts, question.Option) (Finding, bool) // false: nothing to say
	Fires   string                                              // a case in testdata/cases that fires it
}

// ask is what the rule says of an option, its fit to the thousandth; a reason without
// weight is none.
func (r *Rule) ask(f *facts.Facts, o question.Option) (Finding, bool) {
	finding, speaks := r.Judge(f, o)
	finding.Fit = math.Round(finding.Fit*1000) / 1000
	if speaks && !finding.RulesOut && math.Abs(float64(r.Weight)*finding.Fit) < leastPoints {
		return silent()
	}
	return finding, speaks
}

// Finding is what a rule says of one option.
type Finding struct {
	Fit      float64 // −1 speaks against, +1 speaks for
	RulesOut bool    // never outvoted
	Reason   unit.Phrase
}

// Factor is a finding with the rule that made it.
type Factor struct {
	Rule *Rule
	Finding
}

// Points are what the factor adds to the score.
func (f *Factor) Points() float64 { return float64(f.Rule.Weight) * f.Fit }

// RuleTexts are why each rule has its weight, a line each: its id behind "rule:", a tab, the
// text; and behind "limit:" the limits that hold of every case. The page's program is built without these texts.
func RuleTexts() string {
	var b strings.Builder
	for q := range question.Count {
		for _, r := range Rules(q) {
			b.WriteString("rule:" + r.ID + "\t" + r.Because + "\n")
		}
	}
	for _, l := range slices.Concat(warmthLimits(), waterLimits()) {
		b.WriteString("limit:" + l.ID + "\t" + l.Text.Text + "\n")
	}
	return b.String()
}

// Rules lists every rule of a question, in the order of their balance.
func Rules(q question.Question) []*Rule {
	switch q {
	case question.Verdict:
		return gates[:]
	case question.Film:
		return filmRules[:]
	case question.Bed:
		return bedRules[:]
	case question.Surface:
		return surfaceRules[:]
	case question.Thickness:
		return thicknessRules[:]
	case question.Tape:
		return tapeRules[:]
	}
	return waitRules[:]
}

// saturate maps x to −1…1 without ever going flat: half way at ±half. A clamp
// would make false ties between options that are all far off.
func saturate(x, half float64) float64 {
	if x < 0 {
		return x / (half - x)
	}
	return x / (half + x)
}

func against(fit float64, text string, values ...any) (Finding, bool) {
	return Finding{Fit: -fit, Reason: unit.Say(text, values...)}, true
}

func speaksFor(fit float64, text string, values ...any) (Finding, bool) {
	return Finding{Fit: fit, Reason: unit.Say(text, values...)}, true
}

func rulesOut(text string, values ...any) (Finding, bool) {
	return Finding{RulesOut: true, Reason: unit.Say(text, values...)}, true
}

func silent() (Finding, bool) { return Finding{}, false }
