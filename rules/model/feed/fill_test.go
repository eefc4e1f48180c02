package feed

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"filmfurrow/rules/unit"
)

// A published sum with two bags (backyardgardener.com, "How to replenish your soil"):
// 1 lb of P₂O₅ and 3 lb of N on 1,000 ft². 1 ÷ 0.55 = 1.8 lb of 11-55-0, which carries
// 0.2 lb of N; the 2.8 lb left ÷ 0.21 = 13.3 lb of ammonium sulphate.
func TestTheTwoBagSum(t *testing.T) {
	product, ends := Fill([3]unit.Kilograms{3, 1, 0}, [3]unit.Percent{11, 55, 0})
	assert.Equal(t, 1, ends, "phosphate fills first")
	assert.InDelta(t, 1.8, float64(product), 0.05)
	carried := float64(product) * 0.11
	assert.InDelta(t, 0.2, carried, 0.05)
	second, ends := Fill([3]unit.Kilograms{unit.Kilograms(3 - carried), 0, 0}, [3]unit.Percent{21, 0, 0})
	assert.Equal(t, 0, ends)
	assert.InDelta(t, 13.3, float64(second), 0.05)
}

// Published sums of bed feet: 200 lb of N from 10-10-10 is 2,000 lb; the Mid-Atlantic
// counts 7,260 ft of bed on an acre at 6 ft and 6,222 at 7 ft (Vegetable Growers News,
// 25 April 2021), so 100 lb/acre is 1.38 lb and 1.61 lb for 100 ft of bed.
func TestThePublishedBedFeet(t *testing.T) {
	assert.InDelta(t, 2000, float64(Product(200, 10)), 1e-9)
	pounds := func(perAcre, centresFeet, bedFeet float64) float64 {
		return float64(ForBed(perAcre*KilogramsPerHectare, unit.FromFeet(centresFeet), unit.FromFeet(bedFeet))) / unit.KilogramsPerPound
	}
	assert.InDelta(t, 100, pounds(100, 6, 7260), 0.001)
	assert.InDelta(t, 100, pounds(100, 7, 6222), 0.02)
	assert.InDelta(t, 1.38, pounds(100, 6, 100), 0.005)
	assert.InDelta(t, 1.61, pounds(100, 7, 100), 0.005)
}

// No nutrient of a product passes its need, and one that the product holds is full.
func TestAProductOverdoesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var needs [3]unit.Kilograms
		var grades [3]unit.Percent
		held := false
		for i := range needs {
			needs[i] = unit.Kilograms(rapid.Float64Range(0, 500).Draw(t, "need"))
			grades[i] = unit.Percent(rapid.IntRange(0, 33).Draw(t, "grade"))
			held = held || grades[i] > 0
		}
		product, ends := Fill(needs, grades)
		if !held {
			assert.Equal(t, -1, ends)
			assert.Zero(t, product)
			return
		}
		for i := range needs {
			assert.LessOrEqual(t, float64(product)*float64(grades[i])/100, float64(needs[i])+1e-9)
		}
		assert.InDelta(t, float64(needs[ends]), float64(product)*float64(grades[ends])/100, 1e-9)
	})
}
