package rules_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func layable(t testing.TB) field.Case {
	c := pack(t)["tomato-organic"]
	c.Field.BedLength, c.Field.Beds = unit.Known(unit.FromFeet(100)), unit.Known(25.0)
	c.Practice.RollLength = unit.Known(unit.FromFeet(2400))
	c.Practice.Laying, c.Practice.Tractor = "tractor", unit.Known(unit.Kilowatts(45))
	c.Day = field.DayCase{Ball: "breaks", Hand: "outline", Wind: unit.Known(unit.MetresPerSecond(2)), People: unit.Known(3.0), Rolls: unit.Known(2.0)}
	return c
}

func sheetOf(t testing.TB, c field.Case) plan.Sheet {
	a := advise(t, c)
	s := a.Shopping(&plan.WaterPlan{})
	return a.Sheet(&s)
}

// flat makes a field that is laid on the flat: sand that drains by itself, a crop that
// asks for no bed, and a tractor that forms none.
func flat(c *field.Case) {
	c.Crop, c.Soil.Texture, c.Soil.Drainage = "winter-squash", "sand", "quick"
}

func all(sheet.Key) bool  { return true }
func none(sheet.Key) bool { return false }

// What to say to "lay today?" is worked out from what was found: each of these stops the work by
// itself, and says by what.
func TestGoOrNoGo(t *testing.T) {
	good := sheetOf(t, layable(t))
	ready, no, open := good.Ready(all)
	assert.True(t, ready)
	assert.Zero(t, no+open)
	for i := range good.Go {
		assert.Equal(t, plan.Yes, good.Go[i].Reply, string(good.Go[i].Key))
	}
	ready, _, open = good.Ready(none)
	assert.False(t, ready, "a box that is not ticked holds the sheet back")
	assert.Equal(t, len(good.Boxes), open)
	for i := range good.Boxes {
		ready, _, open = good.Ready(func(k sheet.Key) bool { return k != good.Boxes[i].Key && k != good.Boxes[i].Key+plan.TapNo })
		assert.False(t, ready)
		assert.Equal(t, 1, open)
	}

	for _, c := range []struct {
		what     string
		change   func(*field.Case)
		key      sheet.Key
		reply    plan.Reply
		en       string
		withUnit unit.System
	}{
		{"dust", func(c *field.Case) { c.Day.Ball = "crumbles" }, "ball-crumbles", plan.No, "too dry", unit.US},
		{"ribbon", func(c *field.Case) { c.Day.Ball = "ribbons" }, "ball-ribbons", plan.No, "too wet", unit.US},
		{"no ball", func(c *field.Case) { c.Day.Ball = "" }, "ball-open", plan.Unasked, "Squeeze", unit.US},
		{"dry hand", func(c *field.Case) { c.Day.Hand = "dry" }, "hand-dry", plan.No, "below field capacity", unit.US},
		{"dry hand on clay", func(c *field.Case) { c.Day.Hand, c.Soil.Texture = "dry", "clay-loam" }, "hand-clay", plan.Yes, "on clay that is moist enough", unit.US},
		{"dry hand and dust on clay", func(c *field.Case) { c.Day.Ball, c.Day.Hand, c.Soil.Texture = "crumbles", "dry", "clay-loam" }, "hand-dry", plan.No, "below field capacity", unit.US},
		{"dripping", func(c *field.Case) { c.Day.Hand = "water" }, "hand-water", plan.No, "above field capacity", unit.US},
		{"no hand", func(c *field.Case) { c.Day.Hand = "" }, "hand-open", plan.Unasked, "wet outline", unit.US},
		{"wind at the limit", func(c *field.Case) { c.Day.Wind.Value = 5 }, "wind-yes", plan.Yes, "Wind 11 mph; the limit is about 11 mph.", unit.US},
		{"35 mph", func(c *field.Case) { c.Day.Wind.Value = 35 * 0.44704 }, "wind-no", plan.No, "Wind 35 mph; the limit is about 11 mph.", unit.US},
		{"20 km/h", func(c *field.Case) { c.Day.Wind.Value = 20 / 3.6 }, "wind-no", plan.No, "Wind 20 km/h; the limit is about 18 km/h.", unit.Metric},
		{"no wind", func(c *field.Case) { c.Day.Wind.Given = false }, "wind-open", plan.Unasked, "Measure the wind.", unit.US},
		{"alone", func(c *field.Case) { c.Day.People.Value = 1 }, "people-no", plan.No, "People here: 1; needed: 2.", unit.US},
		{"two", func(c *field.Case) { c.Day.People.Value = 2 }, "people-yes", plan.Yes, "People here: 2", unit.US},
		{"not counted", func(c *field.Case) { c.Day.People.Given = false }, "people-open", plan.Unasked, "Needed: 2.", unit.US},
		{"a roll short", func(c *field.Case) { c.Day.Rolls.Value = 1 }, "rolls-no", plan.No, "Rolls of film here: 1; needed: 2.", unit.US},
		{"the grower's own rolls count", func(c *field.Case) { c.Shopping[field.ItemFilm] = unit.Known(4.0) }, "rolls-no", plan.No, "needed: 4", unit.US},
		{"no beds", func(c *field.Case) { c.Field.Beds.Given = false }, "rolls-unknown", plan.Unasked, "number of beds", unit.US},
		{"no tractor named", func(c *field.Case) { c.Practice.Tractor.Given = false }, "tractor-open", plan.Unasked, "at least", unit.US},
		{"a tractor too light", func(c *field.Case) { c.Practice.Tractor.Value = 12 }, "tractor-no", plan.No, "Tractor: 16 hp; this bed needs at least 23 hp.", unit.US},
		{"a walk-behind on the flat", func(c *field.Case) { flat(c); c.Practice.Tractor.Value = 8 }, "tractor-walk", plan.Yes, "Walk-behind tractor: 11 hp. Flat ground only, film up to 48 in wide", unit.US},
		{"a walk-behind and wide film", func(c *field.Case) {
			flat(c)
			c.Practice.Tractor.Value, c.Practice.FilmWidth = 8, unit.Known(unit.FromInches(60))
		}, "tractor-no", plan.No, "at least 20 hp", unit.US},
	} {
		base := layable(t)
		c.change(&base)
		s := sheetOf(t, base)
		var found *plan.Condition
		for i := range s.Go {
			if s.Go[i].Key == c.key {
				found = &s.Go[i]
			}
		}
		require.NotNil(t, found, "%s: %s", c.what, c.key)
		assert.Equal(t, c.reply, found.Reply, c.what)
		assert.Contains(t, found.In(c.withUnit), c.en, c.what)
		ready, no, open := s.Ready(all)
		assert.Equal(t, c.reply == plan.Yes, ready, c.what)
		if c.reply == plan.No {
			assert.Positive(t, no, c.what)
		} else if c.reply == plan.Unasked {
			assert.Positive(t, open, c.what)
		}
	}

	refused := layable(t)
	refused.Soil.Slope = unit.Known(20.0)
	s := sheetOf(t, refused)
	assert.Equal(t, sheet.Key("verdict-no"), s.Go[0].Key, "a field where film must not be laid never prints ready")
	ready, _, _ = s.Ready(all)
	assert.False(t, ready)

	hand := layable(t)
	hand.Practice.Laying, hand.Practice.Tractor.Given = "hand", false
	s = sheetOf(t, hand)
	ready, _, _ = s.Ready(all)
	assert.True(t, ready, "no tractor is needed by hand")
}

// The work is a flow: each stage takes what the one before gives, from loose
// soil to the finished bed, by tractor and by hand.
func TestTheWorkFlowsFromSoilToFilm(t *testing.T) {
	for _, by := range []string{"tractor", "hand"} {
		c := layable(t)
		c.Practice.Laying = by
		order := sheetOf(t, c).Order
		assert.Equal(t, sheet.Key("flow-soil"), order[0].Takes)
		for i := 1; i < len(order); i++ {
			assert.Equal(t, order[i-1].Gives, order[i].Takes, "%s, stage %d", by, i+1)
		}
		assert.Equal(t, sheet.Key("flow-closed"), order[len(order)-1].Gives)
		var gives []sheet.Key
		for _, s := range order {
			gives = append(gives, s.Gives)
		}
		assert.Subset(t, gives, []sheet.Key{"flow-bed", "flow-taped", "flow-draped", "flow-tight", "flow-covered"})
	}
	low := layable(t)
	flat(&low)
	low.Practice.Tractor.Value = 15
	order := sheetOf(t, low).Order
	assert.Equal(t, "loose soil → firm bed: level the strip and firm it. No clods, no hollow.", order[0].In(unit.US), "a flat bed")
	raised := sheetOf(t, planCase(t)).Order
	assert.Equal(t, "loose soil → ridge: discs draw soil in over the full width.", raised[0].In(unit.US))
}

// Who looks and taps yes or no need give no figure. A figure that is given counts for
// more, and what says no is named first.
func TestAYesOrNoStandsInForAFigure(t *testing.T) {
	c := layable(t)
	c.Day.Wind.Given, c.Day.People.Given, c.Day.Rolls = false, false, unit.Optional[float64]{}
	for told, want := range map[sheet.Key]plan.Reply{"-yes": plan.Yes, "-no": plan.No} {
		s := sheetOf(t, c)
		s.Told(func(k sheet.Key) bool { return strings.HasSuffix(string(k), string(told)) })
		for i := range s.Go {
			if g := &s.Go[i]; g.ID == "wind" || g.ID == "people" || g.ID == "rolls" {
				assert.Equal(t, want, g.Reply, string(g.ID))
				assert.NotContains(t, g.In(unit.US)+g.Ask.In(unit.US), "{}")
			} else {
				assert.Equal(t, plan.Yes, g.Reply, "%s is chosen or measured", g.ID)
			}
		}
	}
	s := sheetOf(t, c)
	s.Told(func(k sheet.Key) bool { return k == "people"+plan.TapNo })
	because, ok := s.Because(none)
	assert.True(t, ok)
	assert.Equal(t, "Needed: 2. Find help, or wait.", because.In(unit.US), "no goes before open")
	s = sheetOf(t, layable(t))
	s.Told(func(k sheet.Key) bool { return k == "wind"+plan.TapNo })
	_, no, _ := s.Ready(all)
	assert.Zero(t, no, "the figure counts")
	because, _ = s.Because(func(k sheet.Key) bool { return k == "go-weight"+plan.TapNo })
	assert.Equal(t, sheet.Key("go-weight"), because.Key)
	_, no, _ = s.Ready(func(k sheet.Key) bool { return k == "go-weight"+plan.TapNo })
	assert.Equal(t, 1, no)
	_, ok = s.Because(all)
	assert.False(t, ok)
}

func everyLine(s *plan.Sheet) (lines []plan.SheetLine) {
	for i := range s.Go {
		lines = append(lines, s.Go[i].SheetLine)
	}
	for i := range s.Order {
		lines = append(lines, s.Order[i].Does)
	}
	for _, part := range [][]plan.SheetLine{s.Boxes, s.Bring, s.Settings, s.People, s.Checks, s.Faults, s.Care, {s.CheckHow}} {
		lines = append(lines, part...)
	}
	return lines
}

// The settings are the answers' own numbers: tuck at least 5 in, tape 2–3 in
// deep (common practice, no source), and checks every 30 m.
func TestTheSheetSaysTheAnswersNumbers(t *testing.T) {
	for _, f := range everyFarm(t) {
		id, a, sh := f.id, f.a, f.a.Sheet(&f.s)
		if sh.Down { // nothing is set: see TestFilmThatIsDownIsNotLaid
			continue
		}
		text := ""
		for i := range sh.Settings {
			text += sh.Settings[i].In(unit.US) + "\n"
		}
		if a.Shape.Height > 0 {
			assert.Contains(t, text, "Bed height "+unit.Of(unit.Short(a.Shape.Height)).In(unit.US), id)
			assert.Contains(t, text, "Crown: the middle "+unit.Of(unit.Short(a.Shape.Crown)).In(unit.US), id)
		}
		assert.Contains(t, text, "never less than 5 in", id)
		if a.Shape.Covers() {
			assert.GreaterOrEqual(t, a.Shape.Tuck, profile.LeastTuck-0.002, id)
		}
		depth := float64(a.TapePlan.Depth) / inch
		assert.True(t, depth >= 2 && depth <= 3, "%s: tape %g in deep", id, depth)
		if a.TapePlan.Tape != nil {
			assert.Contains(t, text, "emitters up", id)
		}
		if a.TapePlan.Offset > 0 {
			assert.Contains(t, text, "off the plant line", id)
		}
		assert.Equal(t, "Check each bed 2 times: first 30 ft from its start, then every 100 ft", sh.CheckHow.In(unit.US), "%s: beds of 200 ft", id)
	}
}

// Every check that the sheet names lies on the bed, none of its stretches is longer than one and a
// half distances, and a bed of less than 100 ft is looked at too.
func TestTheChecksLieOnTheBed(t *testing.T) {
	c := planCase(t)
	const foot = unit.MetresPerFoot
	for _, feet := range []float64{12, 50, 99, 147, 149, 200, 300, 430, 1000} {
		c.Field.BedLength = unit.Known(unit.FromFeet(feet))
		how := sheetOf(t, c).CheckHow
		if feet < 148 {
			assert.Equal(t, "Check each bed once, at its middle", how.In(unit.US), "%g ft", feet)
			continue
		}
		times, first, every := how.Quantities[0].SI, how.Quantities[1].SI/foot, how.Quantities[2].SI/foot
		last := first + (times-1)*every
		assert.Less(t, last, feet, "%g ft: %s", feet, how.In(unit.US))
		assert.Less(t, feet-last, 1.5*every, "%g ft: %s", feet, how.In(unit.US))
	}
	c.Field.BedLength = unit.Optional[unit.Metres]{}
	how := sheetOf(t, c).CheckHow
	assert.Equal(t, "Check every 100 ft, a shorter bed once at its middle", how.In(unit.US))
}

// Where to stand, faults and cautions that the sheet must have.
func TestTheSheetIsWhole(t *testing.T) {
	keys := func(c field.Case) string {
		s := sheetOf(t, c)
		var b strings.Builder
		for _, l := range everyLine(&s) {
			b.WriteString(" " + string(l.Key))
		}
		return b.String() + " "
	}
	c := layable(t)
	c.Practice.Organic = unit.Optional[bool]{}
	c.Practice.FumigatedOn = unit.Known(c.PlantOn.Value.Plus(-40))
	tractor := keys(c)
	for _, want := range []string{"people-driver", "people-start", "people-never", "people-walk", "people-third",
		"fault-loose", "fault-tear", "fault-edge", "fault-twist", "fault-low", "fault-dry",
		"care-tractor", "care-knife", "care-lift", "care-heat", "care-flame", "care-treated", "go-label", "go-backflow", "go-lines", "go-read", "set-speed"} {
		assert.Contains(t, tractor, " "+want+" ")
	}
	c.Practice.FilmOptions = 1 << table.WhiteOnBlack
	assert.Contains(t, keys(c), " set-white-up ", "the black side down")
	c.Practice.Laying = "hand"
	hand := keys(c)
	for _, unwanted := range []string{"tractor", "people-never", "fault-edge "} {
		assert.NotContains(t, hand, unwanted, "by hand")
	}
	for _, want := range []string{"fault-edge-hand", "fault-loose-hand", "go-tools", "set-work"} {
		assert.Contains(t, hand, " "+want+" ")
	}
}

// No product, no active substance, no rate of one: the label and the licensed
// applicator decide.
func TestNoChemicalIsNamed(t *testing.T) {
	named := regexp.MustCompile(`(?i)metam|chloropicrin|dichloropropene|methyl bromide|glyphosate|paraquat|halosulfuron|metolachlor|metribuzin|pendimethalin|flumioxazin`)
	for _, f := range everyFarm(t) {
		id, a, s, sh := f.id, f.a, f.s, f.a.Sheet(&f.s)
		var b strings.Builder
		for _, l := range everyLine(&sh) {
			b.WriteString(l.In(unit.US))
		}
		for _, step := range a.Season(&s) {
			b.WriteString(step.What.In(unit.US) + step.Why.In(unit.US))
		}
		for _, caution := range a.Cautions {
			b.WriteString(caution.Text)
			assert.NotEmpty(t, caution.Defers, "%s defers to somebody", caution.ID)
		}
		for i := range s.Lines {
			b.WriteString(s.Lines[i].Name + s.Lines[i].How.In(unit.US) + s.Lines[i].Spec.In(unit.US))
		}
		assert.Empty(t, named.FindString(b.String()), id)
	}
}

// The cautions of the whole job, each at its step.
func TestCautionsStandAtTheStepWhereTheyBite(t *testing.T) {
	c := layable(t)
	c.Practice.Organic = unit.Optional[bool]{}
	c.Practice.FumigatedOn = unit.Known(c.PlantOn.Value.Plus(-40))
	c.Water.Source = "pond"
	a, s := list(t, c)
	at := map[string]judge.Step{}
	for _, caution := range a.Cautions {
		at[caution.ID] = caution.Step
	}
	for id, step := range map[string]judge.Step{
		"overturn": judge.StepField, "buried-lines": judge.StepField, "lifting-rolls": judge.StepOrder, "power-shaft": judge.StepGround,
		"run-over": judge.StepLaying, "knives": judge.StepLaying, "heat-work": judge.StepLaying, "treated-ground": judge.StepPlant,
		"flame": judge.StepPlant, "backflow": judge.StepWater, "electricity": judge.StepWater, "surface-water": judge.StepWater,
		"no-burning": judge.StepLifting, "lifting-film": judge.StepLifting,
	} {
		assert.Equal(t, step, at[id], id)
	}
	steps := map[judge.Step]bool{}
	for _, step := range a.Season(&s) {
		steps[step.Step] = true
	}
	for _, caution := range a.Cautions {
		assert.True(t, steps[caution.Step], "the season has a day for %s", caution.Step)
	}
}

// Where film lies already nothing is laid: no view speaks of a layer, a roll or a day
// to lay, and the bed, the film and its thickness are those that are there.
func TestFilmThatIsDownIsNotLaid(t *testing.T) {
	for id, c := range pack(t) {
		if c.Practice.ReuseFilm == "" {
			continue
		}
		c.Soil.Wetness, c.Soil.Tilth, c.Soil.Stones = "dry", "cloddy", "many"
		c.Practice.People, c.Practice.Tractor = unit.Known(1.0), unit.Known(unit.Kilowatts(10))
		a := advise(t, c)
		w := a.WaterPlan()
		list := a.Shopping(&w)
		s := a.Sheet(&list)
		assert.True(t, s.Down, id)
		assert.Empty(t, s.Settings, "%s: no layer is set", id)
		assert.Empty(t, s.People, id)
		words := a.VerdictWords() + " " + a.DatesWords().In(unit.US)
		for i := range s.Go {
			words += " " + s.Go[i].In(unit.US)
		}
		for _, lines := range [][]plan.SheetLine{s.Boxes, s.Checks, s.Faults, s.Care} {
			for i := range lines {
				words += " " + lines[i].In(unit.US)
			}
		}
		for i := range s.Order {
			words += " " + s.Order[i].In(unit.US)
		}
		for _, step := range a.Season(&list) {
			assert.NotContains(t, []string{"order", "ground", "moisture", "lay", "wait"}, step.ID, id)
			if step.ID != "haul" && step.ID != "lift" {
				words += " " + step.What.In(unit.US)
			}
		}
		for _, g := range a.Gates {
			words += " " + g.Reason.In(unit.US)
		}
		assert.NotRegexp(t, regexp.MustCompile(`(?i)\b(tractor|layer|roll|press wheel|lay (the )?film|before (you )?lay|day to lay)`), words, id)
		for _, item := range []field.Item{field.ItemFilm, field.ItemTape, field.ItemPins} {
			assert.Zero(t, list.Lines[item].Quantity, "%s: %s", id, field.ItemKeys[item])
		}
		assert.Zero(t, a.WorkOf().Laying, id)
	}
}
