package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Where sources disagree, every advice shows at least two sides, each with a source
// of its own that stands in the advice's list of sources.
func TestWhereSourcesDisagreeBothAreShown(t *testing.T) {
	fired := map[string]bool{}
	for id, c := range pack(t) {
		a := advise(t, c)
		listed := map[*table.Source]bool{}
		for _, s := range a.Sources {
			listed[s] = true
		}
		for _, d := range a.Disputes {
			fired[d.ID] = true
			require.GreaterOrEqual(t, len(d.Sides), 2, "%s: %s", id, d.ID)
			said, sources := map[string]bool{}, map[*table.Source]bool{}
			for _, s := range d.Sides {
				assert.True(t, s.Says.Complete(), s.Says.Text)
				assert.True(t, listed[s.Source], "%s: %s is not listed", id, s.Source.ID)
				said[s.Says.In(unit.US)], sources[s.Source] = true, true
			}
			assert.GreaterOrEqual(t, len(said), 2, d.ID)
			assert.GreaterOrEqual(t, len(sources), 2, "%s: %s has one source for both sides", id, d.ID)
		}
	}
	for _, id := range []string{"coloured-films", "silver-warmth", "black-warmth", "purple-nutsedge", "yellow-nutsedge", "bed-height", "floors"} {
		assert.True(t, fired[id], "no case of the pack shows %s", id)
	}
}

// The sides say what was read in their sources: New England Vegetable Management
// Guide, table 14; Journal of Agriculture of the University of Puerto Rico 52(1),
// 1968; Journal of Sustainable Agriculture 13(1), 1998; a conference abstract on
// tomato, 2010; University of Delaware, Weekly Crop Update 802, quoting
// Pennsylvania; Utah Vegetable Production Guide; Terra Latinoamericana 29(4), 2011;
// Journal of Global Innovations in Agricultural and Social Sciences 2(4), 2014;
// Weed Science 53(6), 2005; USDA ARS 218928, 2008; Weed Technology; HortScience
// 53(3), 2018; University of Georgia Extension, 2019.
func TestTheSidesSayWhatWasRead(t *testing.T) {
	want := map[string]map[string]string{
		"coloured-films": {
			"colour-compare-delaware": "In Pennsylvania red gave about 12% more tomatoes and eggplants; dark blue gave 20% to 35% more summer squash, cucumbers and muskmelons.",
			"utah-guide":              "Red gave up to 20% more tomatoes, but not in every trial.",
			"zimbabwe-2014":           "Cucumbers did worst on blue: 15.3 t/ha, against 37.9 on silver-gray.",
			"pepper-heat-2011":        "In Mexico bell peppers gave 60% more on black than on blue.",
			"new-england-guide":       "Results with red and blue were not consistent.",
		},
		"silver-warmth": {
			"new-england-guide": "It cools, by 2 °F in spring.",
			"tomato-2010":       "It warms, by 5 °F to 11 °F, as black, blue, red and clear do.",
		},
		"black-warmth": {
			"puerto-rico-1968":  "By 1 °F, in Puerto Rico in February.",
			"virginia-1998":     "By 2 °F to 4 °F, on five Virginia farms.",
			"new-england-guide": "By 3 °F to 5 °F, in a New England spring.",
		},
		"purple-nutsedge": {
			"nutsedge-translucent": "Yes: it cut emergence by 70% to 88% in the field, since leaves open beneath it.",
			"paper-nutsedge-2018":  "No: in Tennessee nutsedge came through every plastic, and not through paper.",
		},
		"yellow-nutsedge": {
			"nutsedge-yellow-2005": "In pots no: black and clear both cut the shoots by 96%.",
			"nutsedge-georgia":     "In the field yes: white and silver let through up to twice the shoots of black, in one of two years.",
		},
		"bed-height": {
			"georgia-beds-2019": "About 12 in, for vegetables in Georgia.",
			"new-england-guide": "Flat or raised, both work; flat needs ground that drains.",
			"midwest-2022":      "4 in to 6 in, for this crop.",
		},
		"floors": {
			"kansas-floors":       "At least 60 °F.",
			"georgia-floors-2000": "At least 70 °F, on three mornings.",
		},
	}
	for id, list := range want {
		c := pack(t)["pepper-cool-spring"]
		if id == "purple-nutsedge" {
			c.Weeds.Nutsedge = "purple"
		} else if id == "yellow-nutsedge" {
			c.Weeds.Nutsedge = "yellow"
		}
		got := map[string]string{}
		for _, d := range advise(t, c).Disputes {
			if d.ID == id {
				for _, s := range d.Sides {
					got[s.Source.ID] = s.Says.In(unit.US)
				}
			}
		}
		assert.Equal(t, list, got, id)
	}
}

// Wherever two published lists of soil temperatures differ for a crop, both stand
// in its advice, each with the source that the table of crops names.
func TestBothListsOfFloorsAreShown(t *testing.T) {
	differ := 0
	for i := range table.Crops {
		crop := &table.Crops[i]
		for _, method := range []table.Start{table.Transplant, table.Seed} {
			c := climate(42.5, 8, 14, 11)
			c.Crop, c.Method = crop.ID, string(method)
			if len(field.Check(&c)) > 0 {
				continue
			}
			early, safe := crop.MinSoilTemperature, crop.SafeSoilTemperature
			if method == table.Seed {
				early, safe = crop.SeedMinSoilTemperature, crop.SeedSafeSoilTemperature
			}
			var sides []judge.Side
			a, err := rules.AdviseOn(dug(t, c), c)
			require.NoError(t, err)
			for _, d := range a.Disputes {
				if d.ID == "floors" {
					sides = d.Sides
				}
			}
			if early.Value == safe.Value || early.Source == safe.Source {
				assert.Empty(t, sides, crop.ID)
				continue
			}
			differ++
			require.Len(t, sides, 2, crop.ID)
			assert.Equal(t, early.Source, sides[0].Source, crop.ID)
			assert.Equal(t, safe.Source, sides[1].Source, crop.ID)
			assert.InDelta(t, float64(early.Value), sides[0].Says.Quantities[0].SI, 0.006)
			assert.InDelta(t, float64(safe.Value), sides[1].Says.Quantities[0].SI, 0.006)
		}
	}
	assert.Greater(t, differ, 30)
}
