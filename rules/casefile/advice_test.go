package casefile_test

import (
	"bytes"
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/unit"
)

// dug keeps each ground, since many farms of the pack share one.
var dug = map[facts.SoilKey]*facts.SoilYear{}

// parsed gives the advice file of a case as plain JSON.
func parsed(t *testing.T, c field.Case) (map[string]any, plan.Advice) {
	t.Helper()
	key := facts.KeyOf(c)
	if dug[key] == nil {
		g, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		dug[key] = g
	}
	a, err := rules.AdviseOn(dug[key], c)
	require.NoError(t, err)
	text, err := casefile.EncodeAdvice(&a, nil)
	require.NoError(t, err)
	var file map[string]any
	require.NoError(t, json.Unmarshal(text, &file))
	return file, a
}

// at follows names into nested objects.
func at(file map[string]any, names ...string) any {
	var v any = file
	for _, name := range names {
		object, ok := v.(map[string]any)
		if !ok {
			return nil
		}
		v = object[name]
	}
	return v
}

// A farm that feeds through the tape from a tank, with its water tested and its
// own probe: each of these stands in the file as the plan has it.
func TestTheAdviceFileHoldsWhatWasAskedFor(t *testing.T) {
	c := packCases(t)["tomato-southern-spring"]
	c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(unit.Celsius(15)), unit.Known(c.PlantOn.Value.Plus(-10))
	c.Water.Source, c.Water.Flow, c.Water.Rise = "tank", unit.Known(unit.LitresPerHour(3000)), unit.Known(unit.Metres(-4))
	c.Water.Tank, c.Water.Refill = unit.Known(unit.Litres(8000)), unit.Known(unit.LitresPerHour(900))
	c.Water.Salt, c.Water.Nitrate, c.Water.Hardness, c.Water.Iron = unit.Known(unit.DecisiemensPerMetre(0.9)), unit.Known(unit.MilligramsPerLitre(6)), unit.Known(unit.MilligramsPerLitre(150)), unit.Known(unit.MilligramsPerLitre(0.4))
	c.Water.Pressure = unit.Optional[unit.Kilopascals]{}
	c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(30)), unit.Known(4.0)
	for name, v := range map[string]float64{"feed.rate_kg_ha_day": 1.5, "feed.grade_percent": 20, "feed.stock_kg_l": 0.1, "feed.injector_ratio": 100, "feed.bleach_percent": 10, "feed.chlorine_mg_l": 1} {
		field.InputByName(name).Set(&c, field.Value{Number: v})
	}
	require.Empty(t, field.Check(&c))
	file, a := parsed(t, c)
	plan := a.WaterPlan()
	require.NotNil(t, plan.Feeding)
	require.NotNil(t, plan.Chlorine)
	require.NotNil(t, plan.Supply.Tank)
	require.NotNil(t, plan.Supply.Gravity)
	for _, row := range []struct {
		want any
		path []string
	}{
		{float64(plan.Feeding.Nutrient), []string{"water_plan", "feeding", "nutrient_kg_day"}},
		{float64(plan.Feeding.ZoneInject), []string{"water_plan", "feeding", "inject_min_largest_zone"}},
		{plan.Feeding.Fits, []string{"water_plan", "feeding", "fits"}},
		{float64(plan.Chlorine.Inject), []string{"water_plan", "chlorine", "inject_l_h"}},
		{plan.Supply.Tank.Enough, []string{"water_plan", "supply", "tank_enough"}},
		{float64(plan.Supply.Gravity.Longest.Length), []string{"water_plan", "supply", "gravity_longest_m"}},
		{plan.Quality.NitrogenCredit.Value, []string{"water_plan", "quality", "nitrogen_kg_ha"}},
		{float64(plan.Quality.Yield.Value), []string{"water_plan", "quality", "yield_percent"}},
		{plan.Quality.HardnessWord, []string{"water_plan", "quality", "hardness"}},
		{float64(a.Facts.Probe.Shift), []string{"soil_warmth", "probe", "shift_k"}},
	} {
		assert.Equal(t, row.want, at(file, row.path...), "%v", row.path)
	}
	assert.NotEmpty(t, at(file, "water_plan", "quality", "clogging"))
}

// Every farm of the pack gives a whole file: each part of the layout, in
// figures that JSON can hold, and the same on one line.
func TestEveryFarmGivesAWholeFile(t *testing.T) {
	for id, c := range packCases(t) {
		if !long.Sample(id) {
			continue
		}
		file, a := parsed(t, c)
		for _, part := range []string{"version", "case", "defaults_used", "verdict", "film", "surface", "thickness", "bed", "tape", "wait", "soil_warmth", "water_plan", "shopping", "season", "laying_day", "cautions", "limits", "sources"} {
			if refused := at(file, "film", "if_laid") != nil; refused && part == "laying_day" { // nothing is laid
				assert.Nil(t, file[part], id)
				continue
			}
			assert.NotNil(t, file[part], "%s: %s", id, part)
		}
		assert.NotContains(t, file, "turning_points", "%s: none were given", id)
		if at(file, "film", "if_laid") != nil {
			assert.Empty(t, file["shopping"], id)
			assert.NotEmpty(t, file["instead"], id)
			continue
		}
		assert.Len(t, file["shopping"], field.ItemCount, id)
		if !a.FilmDown() { // or no machine is set
			assert.NotEmpty(t, at(file, "laying_day", "settings"), id)
		}
		for _, question := range []string{"film", "bed", "tape", "wait"} {
			for _, ranked := range at(file, question, "ranked").([]any) {
				for _, f := range ranked.(map[string]any)["factors"].([]any) {
					factor := f.(map[string]any)
					for _, part := range []string{"rule", "weight", "fit", "reason", "source"} {
						assert.NotNil(t, factor[part], "%s: %s of %v", id, part, factor["rule"])
					}
					facts, _ := factor["fact"].([]any)
					for _, fact := range facts {
						assert.Contains(t, factor["reason"], fact, "%s: %v", id, factor["rule"])
					}
				}
			}
		}
		line, err := casefile.EncodeAdviceLine(&a)
		require.NoError(t, err)
		assert.Equal(t, 1, bytes.Count(line, []byte("\n")), id)
		var again map[string]any
		require.NoError(t, json.Unmarshal(line, &again))
		assert.Equal(t, file, again, id)
	}
}

// Turning points carry values as the case file writes them, and both answers.
func TestTurningPointsInTheFile(t *testing.T) {
	a, err := rules.Advise(packCases(t)["pepper-cool-spring"])
	require.NoError(t, err)
	old, changed := a.Answers(), a.Answers()
	changed[question.Film], changed[question.Tape] = 5, question.NoOption
	var points []search.TurningPoint
	for name, values := range map[string][2]field.Value{
		"plant_on":              {{Number: float64(unit.On(2027, 6, 9))}, {Number: float64(unit.On(2027, 6, 8))}},
		"climate.last_frost":    {{Number: 514}, {Number: 513}},
		"soil.texture":          {{Word: "clay"}, {Word: "sandy-loam"}},
		"practice.organic":      {{Number: 1}, {Number: 0}},
		"practice.film_options": {{Number: 1}, {Number: 3}},
		"field.bed_length_m":    {{Number: 120.5}, {Number: 120}},
	} {
		points = append(points, search.TurningPoint{Input: field.InputByName(name), At: values[0], Before: values[1], Above: true, Old: old, New: changed})
	}
	text, err := casefile.EncodeAdvice(&a, points)
	require.NoError(t, err)
	var file struct {
		Points []struct {
			Input   string
			At      any
			Changes map[string]struct{ From, To, Says string }
		} `json:"turning_points"`
	}
	require.NoError(t, json.Unmarshal(text, &file))
	want := map[string]any{"plant_on": "2027-06-09", "climate.last_frost": "05-14", "soil.texture": "clay", "practice.organic": true, "practice.film_options": []any{"black"}, "field.bed_length_m": 120.5}
	for _, p := range file.Points {
		assert.Equal(t, want[p.Input], p.At, p.Input)
		delete(want, p.Input)
		assert.Equal(t, "red", p.Changes["film"].To)
		assert.Equal(t, "none", p.Changes["tape"].To)
		assert.Contains(t, p.Changes["tape"].Says, "nothing fits")
	}
	assert.Empty(t, want)
}
