package table

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/unit"
)

// Every crop finds a row; a richer soil is never given more; stand-ins say for whom.
func TestEveryCropFindsItsNeed(t *testing.T) {
	own := 0
	for i := range Crops {
		need, standsIn := NeedOf(&Crops[i])
		if standsIn {
			assert.NotEmpty(t, needStands[Crops[i].Group], Crops[i].ID)
		}
		assert.Equal(t, standsIn, need.Crop != Crops[i].ID, Crops[i].ID)
		if !standsIn {
			own++
		}
		assert.True(t, need.Nitrogen.Given(), need.Crop)
		assert.InDelta(t, 1.6, float64(need.Centres), 0.6, need.Crop)
		for _, row := range []ByTest{need.Phosphate, need.Potash} {
			for class := 1; class < int(TestClassCount); class++ {
				assert.LessOrEqual(t, row.Rates[class], row.Rates[class-1], need.Crop)
			}
			assert.NotNil(t, row.Source, need.Crop)
			if row.Mark == StandIn || row.Mark == Recomputed {
				assert.NotEmpty(t, row.Note, need.Crop)
			}
		}
	}
	assert.Equal(t, len(Needs), own, "a row is for no crop of the table")
}

// University of Delaware, Weekly Crop Update ?p=23222: broccoli 150–200 lb N an acre,
// cabbage and cauliflower 100–150; P₂O₅ and K₂O low 200, medium 100, high 50, very high 0.
func TestTheColeCropsOfDelaware(t *testing.T) {
	for id, nitrogen := range map[string][2]float64{"broccoli": {150, 200}, "cabbage": {100, 150}, "cauliflower": {100, 150}} {
		need, _ := NeedOf(CropByID(id))
		assert.InDelta(t, nitrogen[0], float64(need.Nitrogen.Low/lb), 1e-9, id)
		assert.InDelta(t, nitrogen[1], float64(need.Nitrogen.High/lb), 1e-9, id)
		for class, want := range []float64{200, 100, 50, 0} {
			assert.InDelta(t, want, float64(need.Phosphate.Rates[class]/lb), 1e-9, id)
			assert.InDelta(t, want, float64(need.Potash.Rates[class]/lb), 1e-9, id)
		}
	}
}

// Published bounds of what goes before planting: nitrogen 20 to 50 % (Midwest Vegetable
// Production Guide 2022, page 18), potash 30 to 75 % from sand to clay.
func TestTheSharesUnderTheFilm(t *testing.T) {
	for i := range Soils {
		share := ShareOn(&Soils[i])
		assert.GreaterOrEqual(t, share.Nitrogen, unit.Percent(20), Soils[i].ID)
		assert.LessOrEqual(t, share.Nitrogen, unit.Percent(100.0/3+1e-9), Soils[i].ID)
		assert.GreaterOrEqual(t, share.Potash, unit.Percent(30), Soils[i].ID)
		assert.LessOrEqual(t, share.Potash, unit.Percent(75), Soils[i].ID)
	}
	assert.Equal(t, &CoarseShare, ShareOn(SoilByID("loamy-sand")))
	assert.Equal(t, &MiddleShare, ShareOn(SoilByID("silt-loam")))
	assert.Equal(t, &HeavyShare, ShareOn(SoilByID("clay-loam")))
}

// New Mexico State University, guide H-251: 2 to 7 °F by material. The gain that counts,
// the least, lies inside for every cover.
func TestTheGainThatCountsIsPublished(t *testing.T) {
	last := 0.0
	for i := range Covers {
		c := &Covers[i]
		low := float64(c.Night.Low) * 1.8
		assert.GreaterOrEqual(t, low, 2-1e-9, c.ID)
		assert.LessOrEqual(t, low, 7.0, c.ID)
		assert.LessOrEqual(t, c.Night.Low, c.Night.Value, c.ID)
		assert.LessOrEqual(t, c.Night.Value, c.Night.High, c.ID)
		if c.Weight.Given() {
			assert.Greater(t, low, last, "%s gains no more than the lighter one", c.ID)
			last = low
		}
	}
}
