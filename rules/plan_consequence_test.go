package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// What is drawn of a film in days, hours and lengths is what its reasons say in words; bare
// ground wins no days and costs nothing.
func TestConsequencesSayWhatTheReasonsSay(t *testing.T) {
	met := map[string]int{}
	for _, f := range everyFarm(t) {
		for _, c := range f.a.Consequences(question.Film) {
			bare := c.Of[len(c.Of)-1]
			assert.Equal(t, question.Option(facts.Bare), bare.Option)
			for i, of := range c.Of[:len(c.Of)-1] {
				for k := range f.a.Film.Ranked {
					if f.a.Film.Ranked[k].Option != of.Option {
						continue
					}
					for _, factor := range f.a.Film.Ranked[k].Factors {
						said := factor.Reason.Quantities
						title := c.Title.In(unit.US)
						switch {
						case factor.Rule.ID == "film-days-earlier" && title == "Days earlier than on bare ground":
							met[title]++
							assert.Zero(t, bare.Value.SI)
							assert.InDelta(t, max(of.Value.SI, -of.Value.SI), said[0].SI, 1e-9, f.id)
						case factor.Rule.ID == "film-weeds" && len(said) == 2:
							if title == "Hours of weeding on 100 ft of bed" {
								met[title]++
								less := bare.Value.SI - of.Value.SI
								assert.InDelta(t, max(less, -less), said[0].SI, 1e-9, "%s: %d", f.id, i)
							}
						case factor.Rule.ID == "film-price" && title == "Price for 100 ft of bed, as a length of plain black":
							met[title]++
							assert.Zero(t, bare.Value.SI)
							assert.Equal(t, said[2].SI, of.Value.SI, f.id)
						}
					}
				}
			}
		}
		waits := judge.Waits(f.a.Facts)
		for _, c := range f.a.Consequences(question.Wait) {
			met["wait"]++
			for _, of := range c.Of {
				assert.Equal(t, float64(waits[of.Option]), of.Value.SI, f.id)
				assert.Positive(t, of.Value.SI)
			}
		}
		assert.Empty(t, f.a.Consequences(question.Bed))
	}
	for _, what := range []string{"Days earlier than on bare ground", "Hours of weeding on 100 ft of bed", "Price for 100 ft of bed, as a length of plain black", "wait"} {
		assert.Greater(t, met[what], 10, what)
	}
}
