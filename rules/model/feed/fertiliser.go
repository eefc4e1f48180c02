package feed

import "filmfurrow/rules/unit"

// ForBed turns a rate for an area of field into a mass for a length of bed.
// Guides mean the field area at a stated distance of beds: on wider centres
// the same rate gives more to a metre of bed. With the guide's own distance it is
// the linear-bed-foot method: each metre of bed gets the same, whatever the distance
// in the field. rate is kg/ha; 1 lb/acre is 1.121 kg/ha.
func ForBed(rate float64, centres, bed unit.Metres) unit.Kilograms {
	return unit.Kilograms(rate * float64(centres) * float64(bed) / 10000)
}

// KilogramsPerHectare for one pound on an acre.
const KilogramsPerHectare = unit.KilogramsPerPound / unit.SquareMetresPerAcre * 10000

// Product is the mass of a fertiliser that holds a mass of nutrient, by its
// grade in percent (above 0).
func Product(nutrient unit.Kilograms, grade unit.Percent) unit.Kilograms {
	return nutrient / unit.Kilograms(grade/100)
}

// Stock is the volume of stock solution that holds a product at a strength in
// kg/L (above 0). How much dissolves is on the product's label.
func Stock(product unit.Kilograms, strength float64) unit.Litres {
	return unit.Litres(float64(product) / strength)
}

// InjectMinutes is how long an injector takes: it draws flow ÷ ratio (100 for
// 1:100).
func InjectMinutes(stock unit.Litres, flow unit.LitresPerHour, ratio float64) unit.Minutes {
	return unit.Minutes(60 * float64(stock) * ratio / float64(flow))
}

// RinseTurns is how often the water of pipe and tape is changed after feeding: twice,
// since the far end of a line moves slowly (our reasoning, no source).
const RinseTurns = 2

// RinseMinutes is how long clean water must follow to push the feed to the end
// of the lines: [RinseTurns] times the volume that pipe and tape hold, ÷ flow.
func RinseMinutes(held unit.Litres, flow unit.LitresPerHour) unit.Minutes {
	return unit.Minutes(RinseTurns * 60 * float64(held) / float64(flow))
}

// NitrateCredit is the nitrogen that water brings by itself: 1 mg/L of
// nitrate-N is 1 kg in 1,000 m³ (FAO-29, chapter 5).
func NitrateCredit(nitrate unit.MilligramsPerLitre, water unit.Litres) unit.Kilograms {
	return unit.Kilograms(float64(nitrate) * float64(water) / 1e6)
}

// Fill is the most of a product that puts no nutrient beyond its need: the mass, and
// which nutrient ends it. needs are masses, grades percent; a nutrient that the product
// lacks does not count. It is 0 where the product holds what is not needed.
func Fill(needs [3]unit.Kilograms, grades [3]unit.Percent) (product unit.Kilograms, ends int) {
	ends = -1
	for i, grade := range grades {
		if grade <= 0 {
			continue
		}
		if most := Product(needs[i], grade); ends < 0 || most < product {
			product, ends = most, i
		}
	}
	return product, ends
}
