package rules_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// What an extension educator would not sign: a plan that works against itself.

// Garlic set in the fall rests in winter: it is fed from spring growth until its bulbs swell, and
// left dry before it is lifted (Oregon State University Extension feeds in early spring and in
// mid-May, and tapers water off before the harvest). Cloves have no root ball and no tray.
func TestGarlicIsFedInSpringAndRipensDry(t *testing.T) {
	c := pack(t)["strawberry-autumn"]
	c.Crop, c.PlantOn = "garlic", unit.Known(unit.On(2027, 10, 15))
	a, all, by := afterOf(t, c, unit.US)
	require.False(t, a.Refused())
	water := a.WaterPlan()
	list := a.Shopping(&water)
	seen := byID(a.Season(&list))
	_, month, _ := list.Base.From.Civil()
	assert.Contains(t, []int{2, 3, 4}, month, "fed when it grows again")
	harvest := seen["harvest"].On
	last := list.Base.From.Plus(unit.Days(7 * (list.Base.Weeks - 1)))
	assert.GreaterOrEqual(t, harvest.Minus(last), unit.Days(40), "no nitrogen while bulbs swell")
	assert.GreaterOrEqual(t, harvest.Minus(seen["stop"].On), unit.Days(14))
	assert.Greater(t, seen["lift"].On, harvest, "film comes up after the bulbs")
	assert.NotContains(t, all, "root ball")
	assert.NotContains(t, by, "starter")
	assert.NotContains(t, by, "set-setter")
	assert.Contains(t, by, "pieces")
	assert.NotContains(t, seen["first-water"].Why.Text, "root ball")
	assert.Contains(t, seen, "plants", "somebody must order the cloves")
}

// Verticillium wilt: no tomatoes, peppers or eggplants after strawberries (University of
// Connecticut's list of rotations names each for the other).
func TestNoNightshadesAfterStrawberries(t *testing.T) {
	a, _, by := afterOf(t, pack(t)["strawberry-autumn"], unit.US)
	water := a.WaterPlan()
	list := a.Shopping(&water)
	seconds := 0
	for _, line := range a.After(&list) {
		if line.ID != "second-crop" && line.ID != "second-crop-now" {
			continue
		}
		seconds++
		for i := range table.Crops {
			if crop := &table.Crops[i]; unit.Capital(crop.Name) == line.Says.Quantities[0].Word {
				assert.NotEqual(t, "Solanaceae", crop.Family, crop.ID)
			}
		}
	}
	assert.Positive(t, seconds)
	assert.Contains(t, by["second-wilt"], "Verticillium")
	// Open flowers are hurt at 30 °F and tight buds at 25 °F (University of Maine, 2023).
	assert.Contains(t, by["bloom-frost"], "Open ones die at 30 °F, tight buds at 25 °F")
}

// Nobody is sent into treated ground, and no spring plants before the label.
func TestTheLabelKeepsPeopleOut(t *testing.T) {
	for _, f := range everyFarm(t) {
		end, ok := judge.LabelEnds(&f.a.Case.Practice)
		if !ok {
			continue
		}
		for _, day := range []unit.Optional[unit.Date]{f.a.WaitPlan.Soonest, f.a.WaitPlan.Latest} {
			if day.Given {
				assert.GreaterOrEqual(t, day.Value, end, f.id)
			}
		}
		seen := byID(f.a.Season(&f.s))
		if flush, have := seen["water-test"]; have {
			assert.GreaterOrEqual(t, flush.On, end, f.id)
		}
		if wait, have := seen["wait"]; have {
			assert.Contains(t, wait.What.Text, "Keep out", f.id)
		}
	}
}

// Bees and flowers are a reason to take covers off fruit, not off lettuce; covers that win a day or
// two are not told; and one work is not told with two counts of hours.
func TestOneFieldOneStory(t *testing.T) {
	hours := regexp.MustCompile(`[0-9.,]+ to [0-9.,]+ h of work|[0-9.,]+ h of work`)
	compared := 0
	for _, f := range everyFarm(t) {
		seen := byID(f.a.Season(&f.s))
		crop := f.a.Facts.Crop
		if off, have := seen["covers-off"]; have {
			fruit := crop.Group == table.Vine || crop.Group == table.Fruiting || crop.Group == table.Berry
			text := off.What.Text + off.Why.Text
			assert.Equal(t, fruit, regexp.MustCompile("flower").MatchString(text), "%s: %s", f.id, text)
		}
		for _, c := range f.a.Covers() {
			if c.Bare.Given {
				assert.GreaterOrEqual(t, c.Won, unit.Days(3), f.id)
			}
		}
		if order, have := seen["order"]; have && f.a.Case.Practice.Laying == "hand" {
			assert.NotContains(t, order.What.Text, "layer", f.id)
		}
		if f.a.Facts.Seeded && seen["plant"].Why.Text != "" && !f.a.Refused() {
			assert.NotContains(t, seen["plant"].Why.Text, "stems", f.id)
		}
		for _, line := range f.a.After(&f.s) {
			if line.ID == "set-setter" {
				compared++
				assert.Equal(t, hours.FindString(line.Says.In(unit.US)), hours.FindString(seen["plant"].Why.In(unit.US)), f.id)
			}
		}
	}
	assert.Greater(t, compared, 10)
}

// The settings of one crop begin with the field's own.
func TestAgainBeginsWithTheFieldsOwnDay(t *testing.T) {
	told := 0
	for _, f := range everyFarm(t) {
		for _, line := range f.a.After(&f.s) {
			if line.ID == "again-set" && line.Says.Quantities[0].SI == 1 {
				told++
				assert.Equal(t, f.a.WaitPlan.PlantOn, unit.Date(line.Says.Quantities[2].SI), f.id)
			}
		}
	}
	assert.Positive(t, told)
}

// Where film lies already, its holes are used, and no width of film is weighed against the bed.
func TestFilmThatLiesHasHoles(t *testing.T) {
	a, _, by := afterOf(t, pack(t)["squash-on-worn-film"], unit.US)
	require.False(t, a.Refused())
	assert.Contains(t, by["holes-there"], "Use the holes that are there")
	for _, o := range a.Bed.Ranked {
		for i := range o.Factors {
			assert.NotEqual(t, "bed-film-and-power", o.Factors[i].Rule.ID)
		}
	}
}
