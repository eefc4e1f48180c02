package rules_test

import (
	"maps"
	"math"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/internal/sayings"
	"filmfurrow/rules"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// What no sentence may say, and why; what only the reasons of film and bed may not.
var unsaid = []struct {
	pattern *regexp.Regexp
	why     string
	reasons bool // of those alone: elsewhere it may be a figure
}{
	{regexp.MustCompile(`(^|[^\d.,])0 ?%`), "a share of nothing", false},
	{regexp.MustCompile(`(^|[^.\d])100 ?%`), "all of it", true},
	{regexp.MustCompile(`\b100 ?% of years`), "a certainty", false},
	{regexp.MustCompile(`(^|[^\d.,/:])1 (zones|beds|days|lines|rows|people|rolls|plants|runs|crops|nights|hours|weeks|films)\b`), "one of many", false},
	{regexp.MustCompile(`(^|[^.\d])\b0 (days|h|°C|°F|in|cm|kg|lb)\b`), "nothing of something", true},
	{regexp.MustCompile(`less than [\d.]+ °[CF] (cooler|warmer|colder)`), "a reason that is none", false},
	{regexp.MustCompile(`\{\}`), "a hole", false},
	{regexp.MustCompile(`  `), "two blanks", false},
	{regexp.MustCompile(`\bNaN\b|\bInf\b|[^\d]-0\b`), "no number", false},
	{regexp.MustCompile(`\b9[6-9]% of years`), "a certainty", false},
	{regexp.MustCompile(`(?i)\b(colour|neighbour|centres?|litres?|metres?|millimetres?|fertiliser|plough|shovelled|grey|judgement|mechanised|programmes)\b`), "British spelling", false},
	{regexp.MustCompile(`(?i)\b(the film sails|go or no-go|faults and mends|hungriest|surer|stand still|sail)\b`), "a turn of another language", false},
	{regexp.MustCompile(`\d %`), "a blank before the percent sign", false},
	{regexp.MustCompile(`\b(celery|ginger|lettuce|garlic|spinach|kale|basil|parsley|okra|broccoli|cauliflower|statice|stock|celosia|gomphrena|ageratum|lisianthus|Swiss chard) (need|are|suffer|do|stand|lie|have|were)\b`), "one crop spoken of as many", false},
	{regexp.MustCompile(`[.,;:]\.|,,`), "two marks", false},
}

// For readers of US units: the day's order, and lengths as a rule shows them.
var unsaidUS = []struct {
	pattern *regexp.Regexp
	why     string
}{
	{regexp.MustCompile(`\b\d{1,2} (January|February|March|April|May|June|July|August|September|October|November|December)\b`), "the day before the month"},
	{regexp.MustCompile(`\b\d\d+\.\d+ in\b`), "tenths of an inch"},
	{regexp.MustCompile(`\d °C\b|\d (cm|mm|m|kg|ha|L|kPa|kW)\b`), "metric words for US readers"},
}

// plausible bounds what a sentence may say of these: beyond it no educator would sign.
var plausible = []struct {
	pattern   *regexp.Regexp
	low, high float64
	what      string
}{
	{regexp.MustCompile(`([\d.,]+) h (?:of running )?a day`), 0, 24, "hours a day"},
	{regexp.MustCompile(`([\d.,]+)%`), 0.05, 100, "a share"},
	{regexp.MustCompile(`([\d.,]+) days? sooner`), 1, 21, "days that a cover wins"},
	{regexp.MustCompile(`([\d.,]+) days? (?:earlier|later) than`), 1, 45, "days that a film wins"},
	{regexp.MustCompile(`([\d.,]+) lb/acre of nitrogen a week`), 0.3, 20, "nitrogen a week"},
	{regexp.MustCompile(`([\d.,]+) min every`), 10, 240, "a run"},
	{regexp.MustCompile(`([\d.,]+) days? of the first two weeks`), 1, 14, "days of two weeks"},
	{regexp.MustCompile(`([\d.,]+) days? of the first two months`), 1, 60, "days of two months"},
	{regexp.MustCompile(`daily mean of ([\d.,]+) °F`), 33, 80, "a floor"},
}

var (
	spanned = regexp.MustCompile(`([\d.,]+) ?([^\d ]*) to ([\d.,]+)`)
	// ofTheBed are the reasons for film, bed, surface and thickness: a line of tape may
	// well lose all of its water.
	ofTheBed = regexp.MustCompile(`^(rule|why not) (film|bed|surface|thickness)`)
	usWords  = regexp.MustCompile(`\b(acre|feet|inch|inches|°F|gpm|psi)\b`)
)

// Every sentence of many usual fields can be read, and every reason weighs something.
func TestEverySentenceOfRandomFieldsCanBeRead(t *testing.T) {
	farms := pack(t)
	names := slices.Sorted(maps.Keys(farms))
	r := rand.New(rand.NewPCG(17, 17))
	bad, read := map[string]string{}, 0
	type reading struct {
		text   string
		system unit.System
		reason bool
		limit  bool
	}
	known := map[reading]bool{} // most sentences come again, word for word
	for i := range long.Of(250, 1200) {
		draw := sayings.AnyField
		if i%2 == 1 {
			draw = sayings.FullField
		}
		c := draw(r, farms[names[r.IntN(len(names))]])
		if len(field.Check(&c)) > 0 {
			continue
		}
		a, err := rules.AdviseOn(dug(t, c), c)
		if err != nil {
			continue
		}
		weighs(t, &a)
		for _, system := range []unit.System{unit.Metric, unit.US} {
			for name, text := range sayings.Of(&a, system) {
				reason := ofTheBed.MatchString(name)
				once := reading{text, system, reason, strings.HasPrefix(name, "limit")}
				if known[once] {
					continue
				}
				known[once] = true
				read++
				for _, u := range unsaid {
					if (reason || !u.reasons) && u.pattern.MatchString(text) {
						bad[u.why+": "+name] = text
					}
				}
				for _, m := range spanned.FindAllStringSubmatch(text, -1) {
					if m[1] == strings.TrimRight(m[3], ".,") {
						bad["from a to a: "+name] = text
					}
				}
				for _, u := range unsaidUS {
					if system == unit.US && !once.limit && u.pattern.MatchString(text) && !strings.Contains(text, "cm)") && !strings.Contains(text, "kg)") {
						bad[u.why+": "+name] = text
					}
				}
				for _, p := range plausible {
					for _, m := range p.pattern.FindAllStringSubmatch(text, -1) {
						v, err := strconv.ParseFloat(strings.TrimRight(strings.ReplaceAll(m[1], ",", ""), "."), 64)
						if system == unit.US && err == nil && (v < p.low || v > p.high) {
							bad[p.what+": "+name] = text
						}
					}
				}
				if system == unit.Metric && !once.limit && usWords.MatchString(text) {
					bad["US words for metric readers: "+name] = text
				}
			}
		}
	}
	t.Logf("%d sentences", read)
	for name, text := range bad {
		assert.Fail(t, name, text)
	}
}

// weighs holds that no reason of film, bed, surface and thickness weighs nothing, and
// that the best never reads as less than nothing.
func weighs(t *testing.T, a *plan.Advice) {
	for _, choice := range []*judge.Choice{&a.Film, &a.Bed, &a.Surface, &a.Thickness} {
		if best, ok := choice.Best(); ok {
			require.GreaterOrEqual(t, choice.Ranked[0].Score, 0.0, "%s", choice.Question.Key(best))
		}
		for i := range choice.Ranked {
			for j := range choice.Ranked[i].Factors {
				if f := &choice.Ranked[i].Factors[j]; !f.RulesOut {
					assert.GreaterOrEqual(t, math.Abs(f.Points()), 0.005, "%s weighs nothing: %s", f.Rule.ID, f.Reason.In(unit.US))
				}
			}
		}
	}
}
