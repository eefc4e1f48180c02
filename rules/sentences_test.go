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
	"filmfurrow/rules"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// anyField is a random usual field at one of the farms' places: some things told, some
// not, as growers fill a form in.
func anyField(r *rand.Rand, base field.Case) field.Case {
	c := field.Case{Place: base.Place, Soil: base.Soil, Crop: table.Crops[r.IntN(len(table.Crops))].ID}
	c.PlantOn = unit.Known(unit.On(2027, 1, 1).Plus(unit.Days(r.IntN(365))))
	word := func(at *string, words ...string) {
		if r.IntN(2) == 0 {
			*at = words[r.IntN(len(words))]
		}
	}
	word(&c.Weeds.Pressure, "light", "moderate", "heavy")
	word(&c.Weeds.Nutsedge, "none", "yellow", "purple")
	word(&c.Weeds.Insects, "none", "aphids", "thrips", "whiteflies")
	word(&c.Field.Exposure, "sheltered", "open", "windy")
	word(&c.Practice.Laying, "tractor", "hand")
	word(&c.Water.Source, "well", "pond", "stream", "municipal", "tank")
	if r.IntN(2) == 0 {
		c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(15+r.IntN(185))), unit.Known(float64(1+r.IntN(30)))
	}
	if r.IntN(2) == 0 {
		c.Water.Flow, c.Water.Hours = unit.Known(unit.LitresPerHour(300+r.IntN(12000))), unit.Known(float64(2+r.IntN(14)))
	}
	if r.IntN(4) == 0 {
		c.Water.Salt = unit.Known(unit.DecisiemensPerMetre(float64(r.IntN(50)) / 10))
	}
	if r.IntN(3) == 0 {
		c.Soil.Slope = unit.Known(float64(r.IntN(14)))
	}
	if r.IntN(3) == 0 {
		c.Practice.Tractor = unit.Known(unit.FromHorsepower(float64(15 + r.IntN(80))))
	}
	if r.IntN(5) == 0 {
		c.Practice.Organic = unit.Known(true)
	}
	return c
}

// fullField is a farm's own field with another crop, day and grower: what anyField leaves
// out is told.
func fullField(r *rand.Rand, base field.Case) field.Case {
	some := anyField(r, base)
	c := base
	c.Crop, c.Method, c.PlantOn, c.Weeds, c.Practice = some.Crop, "", some.PlantOn, some.Weeds, some.Practice
	c.Field.Exposure, c.Soil.Slope = some.Field.Exposure, some.Soil.Slope
	c.Soil.Drainage = []string{"fair", "quick", "slow"}[r.IntN(3)]
	if r.IntN(4) == 0 {
		c.Practice.CropsOnFilm = unit.Known(2.0)
	}
	if r.IntN(6) == 0 {
		c.Practice.ReuseFilm = []string{"black", "white-on-black"}[r.IntN(2)]
		c.Practice.ReuseCover = unit.Known(float64(50 + 5*r.IntN(10)))
	}
	return c
}

// sayings are all sentences of an advice, in a reader's units, each under its name.
func sayings(a *plan.Advice, system unit.System) map[string]string {
	said := map[string]string{}
	note := func(name string, p unit.Phrase) { said[name] = p.In(system) }
	for _, choice := range a.Choices() {
		for place, ranked := range choice.Ranked {
			for i := range ranked.Factors {
				note("rule "+ranked.Factors[i].Rule.ID+" on "+choice.Question.Key(ranked.Option), ranked.Factors[i].Reason)
			}
			if why, rule := choice.WhyNot(place); place > 0 && rule != nil {
				note("why not "+choice.Question.String()+": "+choice.Question.Key(ranked.Option), why)
			}
		}
	}
	for i, s := range a.Insteads() {
		note("instead "+string(rune('a'+i)), s.What)
		note("instead why "+string(rune('a'+i)), s.Why)
	}
	for _, l := range a.Limits {
		note("limit "+l.ID, l.Text)
	}
	for _, d := range a.Defaults {
		if d.Field != "soil.slope_percent" { // level ground is a figure, not a share
			note("default "+d.Field, d.Used)
		}
	}
	water := a.WaterPlan()
	list := a.Shopping(&water)
	for i := range list.Lines {
		note("shopping how "+field.ItemKeys[i], list.Lines[i].How)
		note("shopping spec "+field.ItemKeys[i], list.Lines[i].Spec)
	}
	for _, s := range a.Season(&list) {
		note("season "+s.ID, s.What)
		note("season why "+s.ID, s.Why)
	}
	for i, s := range list.Base.Says {
		note("base "+string(rune('a'+i)), s)
	}
	for i, s := range a.CanBeDone() {
		note("can be done "+string(rune('a'+i)), s)
	}
	for i := range list.Covers {
		for k, s := range list.Covers[i].Says {
			note("cover "+list.Covers[i].Cover.ID+" "+string(rune('a'+k)), s)
		}
	}
	note("water", a.Water.Says)
	for i := range a.Disputes {
		for k := range a.Disputes[i].Sides {
			note("dispute "+a.Disputes[i].ID+" "+string(rune('a'+k)), a.Disputes[i].Sides[k].Says)
		}
	}
	for i, s := range a.MachineOf().Says {
		note("machine "+string(rune('a'+i)), s)
	}
	end := a.EndOfFilm(&list)
	note("end", end.Duty)
	note("end organic", end.Organic)
	for i, s := range water.Because {
		note("water because "+string(rune('a'+i)), s)
	}
	for i := range water.Warnings {
		note("water warning "+water.Warnings[i].ID, water.Warnings[i].Says)
	}
	for i := range water.Checks {
		note("water check "+water.Checks[i].ID, water.Checks[i].Says)
	}
	for i := range water.Remedies {
		note("water way "+water.Remedies[i].ID+" change", water.Remedies[i].Change)
		note("water way "+water.Remedies[i].ID+" result", water.Remedies[i].Result)
	}
	said["verdict"], said["dates"] = a.VerdictWords(), a.DatesWords().In(system)
	day := a.Sheet(&list)
	for _, lines := range [][]plan.SheetLine{day.Boxes, day.Settings, day.People, day.Checks, day.Faults, day.Care} {
		for i := range lines {
			said["sheet "+string(lines[i].Key)] = lines[i].In(system)
		}
	}
	for i := range day.Go {
		said["sheet "+string(day.Go[i].Key)] = day.Go[i].In(system)
	}
	for _, c := range a.Cautions {
		said["caution "+c.ID] = c.Text
	}
	return said
}

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
	for i := range long.Of(250, 2000) {
		draw := anyField
		if i%2 == 1 {
			draw = fullField
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
			for name, text := range sayings(&a, system) {
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
