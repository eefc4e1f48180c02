package rules_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
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
			if line.ID == "set-hand" {
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

// Bulbs that are cured are left dry for two weeks, and every view of the field says so: the year,
// the week, the plan's months, what is due now. Feeding has ended by then.
func TestBulbsRipenDryInEveryView(t *testing.T) {
	cured := 0
	for _, f := range everyFarm(t) {
		if !f.a.Facts.Crop.Cured || f.a.Refused() {
			continue
		}
		cured++
		p := f.a.WaterPlan()
		seen := byID(f.a.Season(&f.s))
		stop, harvest := seen["stop"].On, seen["harvest"].On
		require.Equal(t, harvest.Plus(-14), stop, f.id)
		assert.Equal(t, stop, f.a.LastWater(&f.s), f.id)
		days := unit.Days(0)
		for _, m := range p.Plan.Demand.Months {
			days += m.Days
		}
		assert.Equal(t, stop.Minus(f.a.WaitPlan.PlantOn), days, "%s: the plan's months end with the water", f.id)
		for _, day := range []unit.Days{0, 3, 13} {
			_, ok := f.a.WaterWeekOf(&p, &f.s, stop.Plus(day))
			assert.False(t, ok, "%s: %d days after the last water", f.id, day)
			_, ok = f.a.ThisWeek(&p, &f.s, stop.Plus(day))
			assert.False(t, ok, "%s: %d days after the last water", f.id, day)
			_, step := f.a.Now(&p, &f.s, stop.Plus(day))
			assert.NotEqual(t, "water", step, f.id)
		}
		week, ok := f.a.WaterWeekOf(&p, &f.s, stop.Plus(-3))
		require.True(t, ok, f.id)
		assert.EqualValues(t, 3, week.Days, f.id)
		assert.Less(t, f.s.Base.From.Plus(unit.Days(7*(f.s.Base.Weeks-1))), stop.Plus(-21), "%s: no nitrogen while bulbs swell", f.id)
		assert.Greater(t, seen["lift"].On, harvest, f.id)
	}
	assert.GreaterOrEqual(t, cured, 2)
}

// What is hauled is told as coarsely as it is known: no more than two figures, within an eighth of
// the published two to ten times the clean film.
func TestHauledFilmIsToldCoarsely(t *testing.T) {
	told := 0
	for _, f := range everyFarm(t) {
		e := f.a.EndOfFilm(&f.s)
		if e.Least == 0 {
			continue
		}
		told++
		for _, system := range []unit.System{unit.Metric, unit.US} {
			said := e.Hauled().In(system)
			for _, number := range regexp.MustCompile(`[0-9,]+`).FindAllString(said, -1) {
				figures := strings.TrimRight(strings.ReplaceAll(number, ",", ""), "0")
				assert.LessOrEqual(t, len(figures), 2, "%s: %s", f.id, said)
			}
			low, err := unit.KindMass.Read(strings.Fields(said)[0], system)
			require.NoError(t, err)
			assert.InEpsilon(t, float64(e.Clean)*2, low, 0.13, "%s: %s", f.id, said)
		}
	}
	assert.Greater(t, told, 10)
}

// One rate, one distance of beds: a rate by the area names the beds that it is meant for, and what
// all beds take is told where they are known. Nitrogen that the water brings is told by the same beds.
func TestRatesNameTheirBeds(t *testing.T) {
	c := pack(t)["tomato-southern-spring"]
	c.Water.Nitrate = unit.Known(unit.MilligramsPerLitre(5))
	c.Field.Centres = unit.Known(unit.Metres(1.5))
	a := advise(t, c)
	water := a.WaterPlan()
	list := a.Shopping(&water)
	b := &list.Base
	require.NotEqual(t, a.Facts.Centres, b.Centres, "the guide's beds stand wider")
	n := &b.Nutrients[plan.Nitrogen]
	// 1 mg/L of nitrate nitrogen is 1 kg in 1,000 m³ (FAO-29): by the metre of bed the same, whatever the beds' distance.
	perMetre := 5e-6 * float64(water.Plan.Demand.Total) / 100
	assert.InEpsilon(t, perMetre*10000/float64(b.Centres), float64(n.Water), 0.01)
	feed := byID(a.Season(&list))["feed"]
	assert.Contains(t, feed.What.In(unit.US), "for all beds")
	mass := float64(b.AWeek) * float64(b.Centres) * float64(b.Bed) / 10000
	assert.InEpsilon(t, mass, feed.What.Quantities[0].SI, 0.01)
	c.Field.Beds = unit.Optional[float64]{}
	a = advise(t, c)
	water = a.WaterPlan()
	list = a.Shopping(&water)
	for _, step := range a.Season(&list) {
		if step.ID == "feed" || step.ID == "base-fertiliser" {
			assert.Contains(t, step.What.Text, "apart", step.ID)
		}
	}
}

// What a way out adds is no more than brings the tape to its full pressure, and it says why it is
// more than what is missing.
func TestAWayOutAddsNoMoreThanIsNeeded(t *testing.T) {
	c := pack(t)["melon-weak-well"]
	c.Water.Flow, c.Water.Hours, c.Water.Header = unit.Known(unit.LitresPerHour(4000)), unit.Known(12.0), unit.Known(unit.Metres(60))
	c.Water.Pressure = unit.Known(unit.Kilopascals(55))
	a := advise(t, c)
	p := a.WaterPlan()
	var more unit.Kilopascals
	for _, r := range p.Plan.Remedies {
		if r.ID == "booster" {
			require.True(t, r.Fits)
			more = unit.Kilopascals(r.Change.Quantities[0].SI)
			assert.Contains(t, r.Change.In(unit.US), "full 10 psi")
		}
	}
	require.Positive(t, more)
	gives := func(extra unit.Kilopascals) float64 {
		with := c
		with.Water.Pressure = unit.Known(55 + extra)
		b := advise(t, with)
		return supplied(&b)
	}
	const full = 10 * unit.KilopascalsPerPSI
	assert.GreaterOrEqual(t, gives(more), full-0.5)
	assert.Less(t, gives(more-2), full)
}

func supplied(a *plan.Advice) float64 {
	p := a.WaterPlan()
	return float64(p.Plan.Supply.SourceGives.Value)
}

// What is dug lies under the film: it is lifted first, and nothing follows on it.
func TestNothingFollowsOnFilmThatIsDugUp(t *testing.T) {
	dug := 0
	for _, f := range everyFarm(t) {
		if !f.a.Facts.Crop.Dug() || f.a.Refused() {
			continue
		}
		dug++
		assert.Contains(t, byID(f.a.Season(&f.s))["lift"].What.Text, "Then dig", f.id)
		for _, line := range f.a.After(&f.s) {
			assert.NotContains(t, line.ID, "second", f.id)
		}
	}
	assert.Positive(t, dug)
}
