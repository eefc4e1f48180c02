package rules_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// Each input row sets, gives back and clears its own field and no other.
func TestEachInputRowHoldsItsOwnField(t *testing.T) {
	names := map[string]bool{}
	for i := range field.Inputs {
		in := &field.Inputs[i]
		assert.False(t, names[in.Name], in.Name)
		names[in.Name] = true
		assert.NotEmpty(t, in.Label, in.Name)
		v := field.Value{Number: in.High}
		switch in.Form {
		case field.FormChoice:
			require.NotEmpty(t, in.Options, in.Name)
			v = field.Value{Word: in.Options[len(in.Options)-1].ID}
		case field.FormText:
			v = field.Value{Word: "USD"}
		case field.FormDay:
			v = field.Value{Number: 514}
		}
		assert.Nil(t, in.CheckValue(v), in.Name)
		var c field.Case
		_, given := in.Get(&c)
		assert.False(t, given, "%s of an empty case", in.Name)
		in.Set(&c, v)
		got, given := in.Get(&c)
		assert.True(t, given, in.Name)
		assert.Equal(t, v, got, in.Name)
		for j := range field.Inputs {
			other := &field.Inputs[j]
			_, given := other.Get(&c)
			assert.Equal(t, i == j, given, "%s and %s", in.Name, other.Name)
		}
		in.Clear(&c)
		assert.Equal(t, field.Case{}, c, "%s leaves something behind", in.Name)
		assert.NotEmpty(t, in.Allowed(), in.Name)
	}
	assert.Nil(t, field.InputByName("moon.phase"))
}

// Each row of months holds its own twelve figures.
func TestEachSeriesHoldsItsOwnMonths(t *testing.T) {
	months := [12]float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
	for i := range field.Climate {
		s := &field.Climate[i]
		var c field.Case
		_, given := s.Get(&c)
		assert.False(t, given, s.Name)
		s.Set(&c, months)
		got, given := s.Get(&c)
		assert.True(t, given, s.Name)
		assert.Equal(t, months, got, s.Name)
		s.Clear(&c)
		_, given = s.Get(&c)
		assert.False(t, given, s.Name)
	}
}

// Values outside a row's range are refused with the allowed range and a mend.
func TestEachInputRefusesWhatLiesOutside(t *testing.T) {
	for i := range field.Inputs {
		in := &field.Inputs[i]
		var bad []field.Value
		switch in.Form {
		case field.FormText:
			continue
		case field.FormChoice:
			bad = []field.Value{{Word: "no-such-thing"}, {Word: ""}, {Word: strings.Repeat("long", 30)}}
		case field.FormDay:
			bad = []field.Value{{Number: 230}, {Number: 1301}, {Number: 0}, {Number: -514}}
		case field.FormWhole:
			bad = []field.Value{{Number: in.High + 1}, {Number: in.Low - 1}, {Number: in.Low + 0.5}, {Number: math.NaN()}}
		default:
			bad = []field.Value{{Number: in.High + 1}, {Number: in.Low - 1}, {Number: math.NaN()}, {Number: math.Inf(1)}}
		}
		for _, v := range bad {
			e := in.CheckValue(v)
			require.NotNil(t, e, "%s takes %v", in.Name, v)
			assert.Equal(t, in.Name, e.Field)
			assert.NotEmpty(t, e.Value)
			assert.NotEmpty(t, e.Allowed)
			assert.NotEmpty(t, e.Mend, in.Name)
		}
	}
}

// Every option of every question has words and an id of its own.
func TestEveryOptionHasWords(t *testing.T) {
	for q := range question.Day + 1 {
		keys := map[string]bool{}
		for o := range question.Option(q.Options()) {
			for _, system := range []unit.System{unit.Metric, unit.US} {
				words := q.Says(o).In(system)
				assert.NotEmpty(t, words, "%s %d", q, o)
				assert.NotContains(t, words, "{}")
			}
			assert.True(t, q.Says(o).Complete(), "%s %d", q, o)
			assert.False(t, keys[q.Key(o)], "%s %s", q, q.Key(o))
			keys[q.Key(o)] = true
		}
		assert.NotEmpty(t, keys, q)
	}
	assert.Zero(t, (question.Day + 1).Options())
}

// A grower's own wind, sun and humidity take the place of the fall-backs: more
// wind, more sun or drier air never asks for less water.
func TestOwnWeatherMovesTheNeed(t *testing.T) {
	base := pack(t)["pepper-cool-spring"]
	level := func(v float64) unit.Optional[[12]float64] {
		var months [12]float64
		for m := range months {
			months[m] = v
		}
		return unit.Known(months)
	}
	peak := func(set func(*field.Place)) float64 {
		c := base
		set(&c.Place)
		return float64(advise(t, c).Facts.Peak)
	}
	usual := peak(func(*field.Place) {})
	for name, pair := range map[string][2]func(*field.Place){
		"wind":     {func(p *field.Place) { p.Wind = level(1) }, func(p *field.Place) { p.Wind = level(5) }},
		"sun":      {func(p *field.Place) { p.Solar = level(8) }, func(p *field.Place) { p.Solar = level(24) }},
		"humidity": {func(p *field.Place) { p.Humidity = level(95) }, func(p *field.Place) { p.Humidity = level(30) }},
	} {
		low, high := peak(pair[0]), peak(pair[1])
		assert.Less(t, low, usual, name)
		assert.Greater(t, high, usual, name)
	}
}

// What the advice says of a station far away, of doubtful normals and of the
// grower's own probe.
func TestLimitsOfThePlace(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	c, err := casefile.Decode([]byte(`{"crop":"tomato","plant_on":"2027-05-20","place":{"lat":44.9,"lon":-66.2}}`), places)
	require.NoError(t, err)
	require.Greater(t, float64(c.Place.StationAway), 25000.0, "choose a point that lies farther from any station")
	far := advise(t, c)
	assert.NotEmpty(t, limit(far, "far-station"))
	assert.Equal(t, "the height of the station", defaults(far)["place.elevation_m"])
	own := pack(t)["least-known"]
	own.Place.Elevation = unit.Optional[unit.Metres]{}
	assert.Equal(t, "near the sea, for want of a height", defaults(advise(t, own))["place.elevation_m"])

	doubtful := ""
	for _, st := range places.All() {
		if st.Flag == 'Q' || st.Flag == 'P' {
			doubtful = st.ID
			break
		}
	}
	require.NotEmpty(t, doubtful)
	c, err = casefile.Decode([]byte(`{"crop":"tomato","plant_on":"2027-05-20","place":{"station":"`+doubtful+`"}}`), places)
	require.NoError(t, err)
	a := advise(t, c)
	assert.NotEmpty(t, limit(a, "doubtful-normals"))
	assert.Empty(t, limit(a, "probe-used"))

	c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(unit.Celsius(16)), unit.Known(unit.On(2027, 5, 10))
	a = advise(t, c)
	require.True(t, a.Facts.Probe.Given)
	if a.Facts.Probe.Doubtful {
		assert.NotEmpty(t, limit(a, "probe-doubted"))
	} else {
		assert.NotEmpty(t, limit(a, "probe-used"))
	}
	c.Soil.Temperature = unit.Known(unit.Celsius(45))
	assert.NotEmpty(t, limit(advise(t, c), "probe-doubted"), "nobody's soil is 45 °C in May")
}

// defaults gives the reason of each value that stood in for one not given.
func defaults(a plan.Advice) map[string]string {
	reasons := map[string]string{}
	for _, d := range a.Defaults {
		reasons[d.Field] = d.Reason
	}
	return reasons
}

// Frost days that the grower knows go before those computed, for hardy and for
// tender crops.
func TestOwnFrostDays(t *testing.T) {
	for _, id := range []string{"tomato-frost-pocket", "broccoli-spring", "lettuce-spring"} {
		c := pack(t)[id]
		c.Place.LastFrost, c.Place.FirstFrost = unit.Known(field.MonthDay(620)), unit.Known(field.MonthDay(825))
		year, _, _ := c.PlantOn.Value.Civil()
		f := advise(t, c).Facts
		assert.Equal(t, unit.On(year, 8, 25).Minus(f.Plant), f.FreeDays, id)
		later := c
		later.Place.LastFrost = unit.Known(field.MonthDay(705))
		assert.GreaterOrEqual(t, advise(t, later).Facts.Plant, f.Plant, id)
	}
}

// Each caution stands at the step of the work that can hurt, names who has the
// last word, and comes only where that work is done.
func TestCautionsStandWhereTheWorkIs(t *testing.T) {
	ids := func(c field.Case) map[string]judge.Step {
		found := map[string]judge.Step{}
		for _, caution := range advise(t, c).Cautions {
			assert.True(t, strings.HasSuffix(caution.Text, "."), caution.ID)
			assert.NotEmpty(t, caution.Defers, caution.ID)
			assert.NotEmpty(t, caution.Sources, caution.ID)
			found[caution.ID] = caution.Step
		}
		return found
	}
	farms := pack(t)
	tractor := ids(farms["pepper-cool-spring"])
	for id, step := range map[string]judge.Step{"overturn": judge.StepField, "power-shaft": judge.StepGround, "run-over": judge.StepLaying, "heat-work": judge.StepLaying,
		"flame": judge.StepPlant, "backflow": judge.StepWater, "electricity": judge.StepWater, "chlorine-acid": judge.StepWater, "no-burning": judge.StepLifting} {
		assert.Equal(t, step, tractor[id], id)
	}
	byHand := ids(farms["flowers-by-hand"])
	for _, id := range []string{"overturn", "power-shaft", "run-over", "lifting-film"} {
		assert.NotContains(t, byHand, id, "no tractor there")
	}
	for _, row := range []struct {
		id    string
		with  field.Case
		empty field.Case
	}{
		{"treated-ground", farms["tomato-fumigated"], farms["pepper-cool-spring"]},
		{"hot-film", farms["tomato-high-summer"], farms["okra-cold-coast"]},
	} {
		assert.Contains(t, ids(row.with), row.id)
		assert.NotContains(t, ids(row.empty), row.id)
	}
	pond := farms["pepper-cool-spring"]
	pond.Water.Source = "pond"
	assert.Contains(t, ids(pond), "surface-water")
	assert.NotContains(t, tractor, "surface-water")
}

// A share is shown to its own step: a turning point at half a percent is not told as 0%.
func TestASharesStepIsShown(t *testing.T) {
	shares := 0
	for _, in := range field.Inputs {
		if in.Form == field.FormNumber && in.Kind.Symbol(unit.Metric) == "%" {
			shares++
			assert.LessOrEqual(t, in.Kind.Step(unit.Metric), in.Step, in.Name)
		}
	}
	assert.Greater(t, shares, 3)
}
