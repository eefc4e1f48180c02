package rules_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

const (
	foot  = unit.MetresPerFoot
	inch  = unit.MetresPerInch
	pound = unit.KilogramsPerPound
)

// Worked examples. "Recomputed" ones follow from the formula shown beside the
// figure in our shared sheet; the others were printed by the source named.
func TestWorkedExamplesOfFilmAndBed(t *testing.T) {
	perAcre := func(centres float64) float64 { return 43560 / centres } // bed feet
	massPerAcre := func(widthFeet, mil, centres float64) float64 {
		return float64(rules.FilmMass(unit.FromFeet(widthFeet), unit.FromFeet(perAcre(centres)), unit.FromMil(mil))) / pound
	}
	for _, c := range []struct {
		what, source     string
		want, got, slack float64
	}{
		{"bed feet per acre, 6-ft centres", "Mid-Atlantic guide via Vegetable Growers News, April 2021", 7260, bedFeetPerAcre(6), 0.5},
		{"bed feet per acre, 7-ft centres (printed 6,222)", "same", 6222.86, bedFeetPerAcre(7), 0.5},
		{"4 ft", "recomputed", 10890, bedFeetPerAcre(4), 0.5},
		{"4.5 ft", "recomputed", 9680, bedFeetPerAcre(4.5), 0.5},
		{"5 ft", "recomputed", 8712, bedFeetPerAcre(5), 0.5},
		{"5.5 ft", "recomputed", 7920, bedFeetPerAcre(5.5), 0.5},
		{"8 ft", "recomputed", 5445, bedFeetPerAcre(8), 0.5},
		{"Maine pepper, single row, 12 in: plants per acre", "HortTechnology 17(2):214, 2007", 7260, bedFeetPerAcre(6), 0.5},
		{"film 4 ft, 1.0 mil, 6-ft centres, lb per acre", "recomputed", 139, massPerAcre(4, 1, 6), 0.6},
		{"film 4 ft, 1.0 mil, 5-ft centres", "recomputed", 167, massPerAcre(4, 1, 5), 0.6},
		{"film 4 ft, 0.6 mil, 6-ft centres", "recomputed", 84, massPerAcre(4, 0.6, 6), 0.7},
		{"film 5 ft, 1.25 mil, 5-ft centres", "recomputed", 261, massPerAcre(5, 1.25, 5), 0.9},
		{"film 5 ft, 1.25 mil, 6-ft centres", "recomputed", 217, massPerAcre(5, 1.25, 6), 0.9},
		{"a maker's 30,000 in² for a pound at 1 mil", "a film maker's user manual; ours gives 30,087", 30000, inch2PerPound(), 100},
		{"rolls of 2,400 ft, an acre at 5-ft centres", "recomputed: 3.63", 4, float64(rules.RollsByLength(unit.FromFeet(8712), unit.FromFeet(2400))), 0},
		{"rolls of 4,000 ft, an acre at 6-ft centres", "recomputed: 1.815", 2, float64(rules.RollsByLength(unit.FromFeet(7260), unit.FromFeet(4000))), 0},
		{"rolls of 4,000 ft, ten acres: round once", "recomputed: 18.15", 19, float64(rules.RollsByLength(unit.FromFeet(72600), unit.FromFeet(4000))), 0},
		{"2,400-ft roll, 100-ft rows, no end waste", "a farm's weblog", 24, float64(rules.RowsPerRoll(unit.FromFeet(2400), unit.FromFeet(100), 0)), 0},
		{"2,400-ft roll, 100-ft rows, 3 ft at each end", "recomputed", 22, float64(rules.RowsPerRoll(unit.FromFeet(2400), unit.FromFeet(100), unit.FromFeet(3))), 0},
		{"0.6 mil in µm", "recomputed", 15.2, float64(unit.FromMil(0.6)), 0.05},
		{"0.75 mil", "recomputed", 19.1, float64(unit.FromMil(0.75)), 0.06},
		{"1.0 mil", "recomputed", 25.4, float64(unit.FromMil(1)), 0.01},
		{"1.25 mil", "HortScience note prints 31.5", 31.75, float64(unit.FromMil(1.25)), 0.3},
		{"1.5 mil", "recomputed", 38.1, float64(unit.FromMil(1.5)), 0.01},
		{"2 × 3 ft: plants per acre", "Farm and Garden Rule Book", 7260, 43560 / 6.0, 0.5},
		{"3 × 6 in", "Farm and Garden Rule Book", 348480, 43560 / (0.25 * 0.5), 0.5},
		{"34-in rows × 6 in", "potato trade table, March 2021", 30748, 43560 / (34.0 / 12 * 0.5), 1},
		{"36 × 8 in", "same", 21780, 43560 / (3 * 8.0 / 12), 1},
		{"38 × 14 in", "same", 11791, 43560 / (38.0 / 12 * 14 / 12), 1},
		{"strawberry, 5-ft centres, double row, 12 in", "recomputed; common in print", 17424, bedFeetPerAcre(5) * 2, 0.5},
	} {
		assert.InDelta(t, c.want, c.got, c.slack, "%s (%s)", c.what, c.source)
	}
}

func inch2PerPound() float64 {
	metre2 := pound / (920 * unit.MicrometresPerMil / 1e6)
	return metre2 / (inch * inch)
}

// Bed and roll, by the formula of the sheet: top + two sides + two tucks.
func TestWorkedExamplesOfTheRoll(t *testing.T) {
	needed := func(top, height, out, tuck float64) float64 { return top + 2*math.Hypot(height, out) + 2*tuck }
	assert.InDelta(t, 52.6, needed(30, 6, 2, 5), 0.1, "30 in top, 6 in high, 2 in batter: a 60-in roll, not 48")
	assert.InDelta(t, 57.1, needed(30, 8, 3, 5), 0.1, "30 × 8, 3 in batter: a 60-in roll")
	assert.InDelta(t, 36, needed(24, 0, 0, 6), 0.1, "flat 24-in strip")
	assert.InDelta(t, 48, needed(24, 6, 0, 6), 0.1, "24 in top, straight sides, 6 in tuck: the Florida figure")
	a := advise(t, planCase(t))
	assert.InDelta(t, 52.6, float64(a.Shape.Needed)/inch, 0.1, "our bed of 30 × 6 in")
	assert.InDelta(t, 60, float64(a.Shape.FilmWidth)/inch, 0.01)
}

func planCase(t testing.TB) rules.Case {
	c := pack(t)["least-known"]
	c.Field.BedLength, c.Field.Beds = rules.Known(unit.FromFeet(100)), rules.Known(25.0)
	c.Field.BedTop = rules.Known(unit.FromInches(30))
	c.Practice.RollLength = rules.Known(unit.FromFeet(2400))
	return c
}

func list(t testing.TB, c rules.Case) (rules.Advice, rules.Shopping) {
	a := advise(t, c)
	plan := a.WaterPlan()
	return a, a.Shopping(&plan)
}

func TestTheListSaysHowItWasWorkedOut(t *testing.T) {
	_, s := list(t, planCase(t))
	assert.EqualValues(t, 2, s.Lines[rules.ItemFilm].Quantity, "22 whole beds of 100 ft on a 2,400-ft roll, so 25 take 2")
	assert.Equal(t, 22, s.RowsARoll)
	for _, l := range s.Lines {
		assert.NotEmpty(t, l.Name)
		assert.True(t, l.How.Complete(), l.How.Text)
		if l.Missing == "" {
			assert.NotEmpty(t, l.Sources, l.Name)
		}
	}
	c := planCase(t)
	c.Shopping[rules.ItemFilm] = rules.Known(5.0)
	_, own := list(t, c)
	assert.EqualValues(t, 2, own.Lines[rules.ItemFilm].Quantity, "ours is kept")
	assert.EqualValues(t, 5, own.Lines[rules.ItemFilm].Taken(), "the grower's counts")
	open := pack(t)["least-known"]
	_, unknown := list(t, open)
	assert.Equal(t, "the length of a bed and the number of beds", unknown.Lines[rules.ItemFilm].Missing)
}

func TestCostsAreTheGrowersOwn(t *testing.T) {
	c := planCase(t)
	a, s := list(t, c)
	none := a.CostOf(&s)
	assert.True(t, none.Partial)
	assert.Zero(t, none.Total)
	c.Prices = rules.PriceCase{Currency: "USD", FilmRoll: rules.Known(150.0), TapeMetre: rules.Known(0.1), PlantEach: rules.Known(0.3), WageHour: rules.Known(18.0),
		HaulTonne: rules.Known(90.0), FittingBed: rules.Known(4.0), CropUnit: rules.Known(12.0)}
	a, s = list(t, c)
	cost := a.CostOf(&s)
	assert.False(t, cost.Partial)
	sum := 0.0
	for _, l := range cost.Lines {
		assert.True(t, l.How.Complete(), l.Name)
		sum += l.Amount
	}
	assert.InDelta(t, sum, cost.Total, 0.011)
	assert.InDelta(t, cost.Total/float64(a.Facts.BedMetres), cost.PerMetre, 0.006)
	assert.Equal(t, math.Ceil(cost.Total/12), cost.BreakEven)
	assert.GreaterOrEqual(t, len(cost.Films), 3)
}

// One farm: two people, at least two hours for a row of 150 ft.
func TestHandLayingAgainstTheFarmThatCounted(t *testing.T) {
	c := planCase(t)
	c.Practice.Laying, c.Field.BedLength, c.Field.Beds = "hand", rules.Known(unit.FromFeet(50)), rules.Known(6.0)
	w := advicePointer(advise(t, c)).WorkOf()
	assert.EqualValues(t, 8, w.Laying, "300 ft ÷ 150 × 4 hours of one person")
	assert.Equal(t, 2, w.People)
}

func TestTheSheetSaysTheAnswersNumbers(t *testing.T) {
	for id, c := range pack(t) {
		c.Field.BedLength, c.Field.Beds = rules.Known(unit.Metres(60)), rules.Known(4.0)
		a, s := list(t, c)
		sh := a.Sheet(&s)
		for _, part := range [][]rules.SheetLine{sh.Go, sh.Settings, sh.Order, sh.People, sh.Checks, sh.Faults, sh.Care} {
			for _, l := range part {
				for _, language := range sheet.Languages {
					text := l.In(language, unit.US)
					assert.NotEmpty(t, text, "%s %s", id, l.Key)
					assert.NotContains(t, text, "{}", "%s %s", id, l.Key)
				}
			}
		}
		assert.NotEmpty(t, sh.Go)
		assert.Equal(t, c.Practice.Laying == "hand", sh.ByHand)
	}
}

func TestTheSeasonIsInOrderAndHangsOnPlanting(t *testing.T) {
	for id, c := range pack(t) {
		a := advise(t, c)
		steps := a.Season()
		require.NotEmpty(t, steps)
		seen := map[string]unit.Date{}
		for i, s := range steps {
			assert.True(t, s.What.Complete(), s.What.Text)
			assert.True(t, s.Why.Complete(), s.Why.Text)
			assert.Positive(t, int(s.Days))
			if i > 0 {
				assert.GreaterOrEqual(t, s.On, steps[i-1].On, id)
			}
			if _, have := seen[s.ID]; !have {
				seen[s.ID] = s.On
			}
		}
		assert.Less(t, seen["order"], seen["lay"], id)
		assert.Less(t, seen["lay"], seen["water-test"], id)
		assert.LessOrEqual(t, seen["water-test"], seen["plant"], id)
		assert.Equal(t, a.WaitPlan.PlantOn, seen["plant"], id)
		assert.Equal(t, a.WaitPlan.LayOn, seen["lay"], id)
	}
}

func TestDatesCrossYearsAndLeapDays(t *testing.T) {
	c := pack(t)["tomato-southern-spring"]
	for _, day := range []unit.Date{unit.On(2027, 1, 3), unit.On(2028, 2, 29), unit.On(2028, 3, 1), unit.On(2100, 2, 28), unit.On(2027, 12, 31)} {
		c.PlantOn = rules.Known(day)
		a := advise(t, c)
		assert.Equal(t, a.WaitPlan.Days, a.WaitPlan.PlantOn.Minus(a.WaitPlan.LayOn))
		assert.NotEmpty(t, a.Season())
	}
}

func TestMoreBedsNeverFewerRollsAndUnitsDoNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		beds := rapid.IntRange(1, 400).Draw(t, "beds")
		bed := unit.Metres(rapid.Float64Range(5, 200).Draw(t, "bed"))
		roll := unit.Metres(rapid.Float64Range(210, 1300).Draw(t, "roll"))
		rows := rules.RowsPerRoll(roll, bed, 0.9144)
		if rows < 1 {
			t.Fatal("a roll longer than a bed covers one")
		}
		n := rules.Rolls(beds, rows)
		if rules.Rolls(beds+1, rows) < n {
			t.Fatal("one bed more took fewer rolls")
		}
		if n < rules.RollsByLength(unit.Metres(float64(beds)*float64(bed)), roll) {
			t.Fatal("whole beds can never take fewer rolls than the plain length")
		}
		feet := rules.FilmMass(unit.FromFeet(4), unit.FromFeet(float64(bed)/foot), unit.FromMil(1))
		metric := rules.FilmMass(1.2192, bed, 25.4)
		if math.Abs(float64(feet-metric)) > 1e-9*float64(metric) {
			t.Fatal("metric and US differ")
		}
	})
}

func TestTheEndOfTheFilm(t *testing.T) {
	c := planCase(t)
	a, s := list(t, c)
	e := a.EndOfFilm(&s)
	assert.InDelta(t, 2*float64(e.Clean), float64(e.Least), 0.1, "half soil: HortScience 53(3):288, 2018")
	assert.InDelta(t, 10*float64(e.Clean), float64(e.Most), 0.2, "nine tenths soil: EN 13655:2018 scope")
	assert.Contains(t, e.Duty.Text, "Never burn it, never bury it")
	assert.Equal(t, &table.CFR205, table.Films[a.Facts.Film].OrganicFrom)
}
