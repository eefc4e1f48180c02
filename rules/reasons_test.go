package rules_test

import (
	"math"
	"math/rand/v2"
	"regexp"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// What no reason may say: one of many, nothing of something, from a figure to the
// same figure, all or none of a hundred.
var (
	oneOfMany = regexp.MustCompile(`\b1 (days|hours|crops|people)\b`)
	nothing   = regexp.MustCompile(`(^|[^.\d])\b0 (days|h|°C|°F|in|cm|kg|lb)\b`)
	noShare   = regexp.MustCompile(`(^|[^.\d])\b(0|100) ?%`)
	fromTo    = regexp.MustCompile(`(\d[\d.]*) ?([^\s\d]*) to (\d[\d.]*)`)
)

// usualField draws a field as growers have them, on the ground of one of the farms, so
// that soil warmth is worked out once for each.
func usualField(r *rand.Rand, base field.Case) field.Case {
	pick := func(words ...string) string { return words[r.IntN(len(words))] }
	c := base
	for {
		crop := &table.Crops[r.IntN(len(table.Crops))]
		if c.Crop = crop.ID; !crop.Sown && !crop.Hilled {
			break
		}
	}
	c.Method = ""
	c.PlantOn = unit.Known(unit.On(2027, 3, 15).Plus(unit.Days(r.IntN(190))))
	c.Weeds = field.WeedCase{Pressure: pick("light", "moderate", "heavy"), Nutsedge: pick("none", "none", "none", "yellow", "purple"), Insects: pick("", "none", "aphids", "thrips", "whiteflies")}
	c.Field.Exposure = pick("open", "windy", "sheltered")
	c.Soil.Drainage = pick("fair", "quick", "slow")
	c.Practice = field.PracticeCase{Laying: pick("tractor", "tractor", "hand")}
	if r.IntN(3) == 0 {
		c.Practice.Tractor = unit.Known(unit.Kilowatts(12 + r.IntN(40)))
	}
	if r.IntN(5) == 0 {
		c.Practice.CropsOnFilm = unit.Known(2.0)
	}
	if r.IntN(6) == 0 {
		c.Practice.Organic = unit.Known(true)
	}
	if r.IntN(8) == 0 {
		c.Practice.ReuseFilm, c.Practice.ReuseCover = pick("black", "white-on-black"), unit.Known(float64(50+5*r.IntN(10)))
	}
	return c
}

// Every reason that the film, bed, surface and thickness rules give over many usual
// fields says something, and weighs something.
func TestReasonsSayWhatTheyWeigh(t *testing.T) {
	all := pack(t)
	names := make([]string, 0, len(all))
	for name := range all {
		names = append(names, name)
	}
	slices.Sort(names)
	r := rand.New(rand.NewPCG(17, 4))
	seen := map[string]bool{}
	for range long.Of(200, 2000) {
		c := usualField(r, all[names[r.IntN(len(names))]])
		if len(field.Check(&c)) > 0 {
			continue
		}
		a := farms.Advise(t, c)
		for _, choice := range []*judge.Choice{&a.Film, &a.Bed, &a.Surface, &a.Thickness} {
			if best, ok := choice.Best(); ok {
				require.GreaterOrEqual(t, choice.Ranked[0].Score, 0.0, "%s", choice.Question.Key(best))
			}
			for i := range choice.Ranked {
				for j := range choice.Ranked[i].Factors {
					f := &choice.Ranked[i].Factors[j]
					if !f.RulesOut {
						assert.GreaterOrEqual(t, math.Abs(f.Points()), 0.005, "%s weighs nothing: %s", f.Rule.ID, f.Reason.In(unit.US))
					}
					sounds(t, seen, f.Rule.ID, f.Reason)
				}
				if why, rule := choice.WhyNot(i); i > 0 && rule != nil {
					sounds(t, seen, "why not "+question.Question.Key(choice.Question, choice.Ranked[i].Option), why)
				}
			}
		}
	}
	t.Logf("%d sentences", len(seen))
}

// sounds reads one sentence in both systems.
func sounds(t *testing.T, seen map[string]bool, id string, p unit.Phrase) {
	for _, system := range []unit.System{unit.Metric, unit.US} {
		text := p.In(system)
		if seen[text] {
			continue
		}
		seen[text] = true
		assert.NotRegexp(t, oneOfMany, text, id)
		assert.NotRegexp(t, nothing, text, id)
		assert.NotRegexp(t, noShare, text, id)
		for _, m := range fromTo.FindAllStringSubmatch(text, -1) {
			assert.NotEqual(t, m[1], m[3], "%s: %s", id, text)
		}
	}
}
