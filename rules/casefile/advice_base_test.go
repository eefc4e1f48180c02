package casefile_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// tested gives a farm a soil test, a bag and quantities of its own.
func tested(c field.Case) field.Case {
	c.Soil.Acidity, c.Soil.Phosphorus, c.Soil.Potassium, c.Soil.Lime = unit.Known(5.7), "very-high", "low", unit.Known(unit.KilogramsPerHectare(2240))
	c.Feed.SeasonNitrogen = unit.Known(unit.KilogramsPerHectare(134.5))
	c.Feed.BaseNitrogen, c.Feed.BasePhosphate, c.Feed.BasePotash, c.Feed.Spread = unit.Known(15.0), unit.Known(0.0), unit.Known(15.0), "field"
	c.Shopping[field.ItemFertiliser], c.Shopping[field.ItemCover], c.Shopping[field.ItemHoops] = unit.Known(50.0), unit.Known(120.0), unit.Known(40.0)
	return c
}

// The soil test, the bag and the own quantities come back from file and link.
func TestTheSoilTestTravels(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	c := tested(packCases(t)["pepper-cool-spring"])
	again, err := casefile.Decode(casefile.Encode(&c), places)
	require.NoError(t, err)
	assert.Equal(t, c, again)
	again, err = casefile.ReadLink(casefile.Link(&c), places)
	require.NoError(t, err)
	assert.Equal(t, c, again)
}

// The advice file carries the base fertiliser and the covers as the advice has them.
func TestTheFileHoldsFertiliserAndCovers(t *testing.T) {
	c := tested(packCases(t)["pepper-cool-spring"])
	a, err := rules.Advise(c)
	require.NoError(t, err)
	water := a.WaterPlan()
	want := a.BaseFertiliser(&water)
	text, err := casefile.EncodeAdvice(&a, nil)
	require.NoError(t, err)
	var file struct {
		Base struct {
			Nutrients map[string]struct {
				Basis string  `json:"basis"`
				Total float64 `json:"season_kg_ha"`
				Under float64 `json:"under_film_kg_ha"`
				Water float64 `json:"with_water_kg_ha"`
				Tape  float64 `json:"through_tape_kg_ha"`
			}
			Product float64 `json:"product_kg"`
			Spread  string  `json:"spread"`
			Lime    float64 `json:"lime_kg"`
			Says    []string
			Steps   []struct{ Formula, Result, Source string }
			Sources []struct{ ID, Address string }
		} `json:"base_fertiliser"`
		Covers []struct {
			Cover string `json:"cover"`
			First string `json:"first_day"`
			Says  []string
		}
		Shopping []struct {
			Item     string
			Quantity float64
			Unit     string
			Own      *float64 `json:"own_quantity"`
		}
	}
	require.NoError(t, json.Unmarshal(text, &file))
	b := &file.Base
	assert.Equal(t, "soil-test-report", b.Nutrients["n"].Basis)
	assert.Equal(t, "public-table", b.Nutrients["k2o"].Basis)
	assert.Equal(t, 134.5, b.Nutrients["n"].Total)
	assert.Zero(t, b.Nutrients["p2o5"].Total, "a soil very high in phosphorus is given none")
	for key, n := range b.Nutrients {
		assert.InDelta(t, n.Total, n.Under+n.Water+n.Tape, 0.003, key)
	}
	assert.Equal(t, float64(want.Product), b.Product)
	assert.Positive(t, b.Product)
	assert.Equal(t, "field", b.Spread)
	assert.Positive(t, b.Lime)
	assert.NotEmpty(t, b.Says)
	assert.NotEmpty(t, b.Sources)
	for _, s := range b.Steps {
		assert.NotEmpty(t, s.Formula)
		assert.NotEmpty(t, s.Result)
		assert.NotEmpty(t, s.Source)
	}
	list := a.Covers()
	require.Len(t, file.Covers, len(list))
	for i := range list {
		assert.Equal(t, list[i].Cover.ID, file.Covers[i].Cover)
		assert.Equal(t, list[i].First.String(), file.Covers[i].First)
		assert.Len(t, file.Covers[i].Says, len(list[i].Says))
	}
	line := file.Shopping[field.ItemFertiliser]
	assert.Equal(t, "base_fertiliser_kg", line.Item)
	assert.Equal(t, "kg", line.Unit)
	assert.InDelta(t, b.Product, line.Quantity, 1e-9)
	assert.Equal(t, 50.0, *line.Own)
}
