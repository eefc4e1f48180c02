package casefile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
)

// doingBase is a case that can be read; each bad part stands in for PART.
const doingBase = `{"version": 1, "crop": "tomato", "plant_on": "2027-05-20", "place": {"lat": 39.2, "lon": -75.8, "elevation_m": 20},
 "climate": {"tmin_c": [-5, -4, 0, 5.5, 11, 16.5, 19, 18, 14, 7.5, 2.5, -2.5], "tmax_c": [5, 6.5, 11.5, 18, 23, 27.5, 30, 29, 25.5, 19, 13, 7]}, PART}`

const (
	aPrice    = " A price is 0 or more. Leave it out where you have none."
	aQuantity = " A quantity is 0 or more. Leave it out to take ours."
	aNumber   = " Write a number without quotes, or leave the field out."
	aFigure   = " Check the figure and its unit, or leave the field out."
)

// badDoings are bad inputs of list, costs and laying day, each with exactly
// these errors. A number before a name is that of our own list of bad inputs.
var badDoings = []struct{ name, part, errors string }{
	// Prices (48, 49: a blank price is no error, see TestCostsAreTheGrowersOwn).
	{"48: a price below nought", `"prices": {"film_roll": -20}`, `prices.film_roll: -20 is not allowed. Allowed: 0 to 1000000.` + aPrice},
	{"a price of tape below nought", `"prices": {"tape_m": -0.01}`, `prices.tape_m: -0.01 is not allowed. Allowed: 0 to 1000000 per m.` + aPrice},
	{"a wage below nought", `"prices": {"wage_hour": -18}`, `prices.wage_hour: -18 is not allowed. Allowed: 0 to 1000000.` + aPrice},
	{"a wage of two millions", `"prices": {"wage_hour": 2000000}`, `prices.wage_hour: 2000000 is not allowed. Allowed: 0 to 1000000.` + aPrice},
	{"a wage in words", `"prices": {"wage_hour": "eighteen"}`, `prices.wage_hour: "eighteen" is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"a wage with its sign", `"prices": {"wage_hour": "$18"}`, `prices.wage_hour: "$18" is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"a price of nothing", `"prices": {"plant": null}`, `prices.plant: null is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"a price that is a list", `"prices": {"plant": [1, 2]}`, `prices.plant: a list of 2 is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"a price that is true", `"prices": {"plant": true}`, `prices.plant: true is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"43: a price without end", `"prices": {"plant": 1e999}`, `prices.plant: 1e999 is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"hauling below nought", `"prices": {"haul_tonne": -90}`, `prices.haul_tonne: -90 is not allowed. Allowed: 0 to 1000000 per t.` + aPrice},
	{"fittings below nought", `"prices": {"fittings_bed": -4}`, `prices.fittings_bed: -4 is not allowed. Allowed: 0 to 1000000.` + aPrice},
	{"a crop worth less than nothing", `"prices": {"crop_unit": -1}`, `prices.crop_unit: -1 is not allowed. Allowed: 0 to 1000000.` + aPrice},
	{"biodegradable film below nought", `"prices": {"roll_biodegradable": -400}`, `prices.roll_biodegradable: -400 is not allowed. Allowed: 0 to 1000000.` + aPrice},
	{"paper in words", `"prices": {"roll_paper": "cheap"}`, `prices.roll_paper: "cheap" is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"prices are a number", `"prices": 20`, `prices: 20 is not allowed. Allowed: an object. Write its fields between braces.`},
	{"a price of a thing we do not price", `"prices": {"tractor": 20000}`, `prices.tractor: unknown field. Allowed: the fields of a case file. Check its spelling, or remove it.`},
	{"a price twice", `"prices": {"plant": 1, "plant": 2}`, `prices.plant: given twice. Allowed: once. Remove one of the two.`},
	{"a currency in small letters", `"prices": {"currency": "usd"}`, `prices.currency: "usd" is not allowed. Allowed: three capital letters (ISO 4217). Write the code, such as USD.`},
	{"a currency of four letters", `"prices": {"currency": "EURO"}`, `prices.currency: "EURO" is not allowed. Allowed: three capital letters (ISO 4217). Write the code, such as USD.`},
	{"a currency by its sign", `"prices": {"currency": "$"}`, `prices.currency: "$" is not allowed. Allowed: three capital letters (ISO 4217). Write the code, such as USD.`},
	{"a currency with a figure", `"prices": {"currency": "US1"}`, `prices.currency: "US1" is not allowed. Allowed: three capital letters (ISO 4217). Write the code, such as USD.`},
	{"a currency that is a number", `"prices": {"currency": 840}`, `prices.currency: 840 is not allowed. Allowed: a short text. Write an id between quotes, or leave the field out.`},
	{"a currency that is empty", `"prices": {"currency": ""}`, `prices.currency: "" is not allowed. Allowed: a short text. Write an id between quotes, or leave the field out.`},

	// The grower's own quantities.
	{"rolls below nought", `"shopping": {"film_rolls": -1}`, `shopping.film_rolls: -1 is not allowed. Allowed: 0 to 1000000.` + aQuantity},
	{"a roll and a half", `"shopping": {"film_rolls": 1.5}`, `shopping.film_rolls: 1.5 is not allowed. Allowed: 0 to 1000000. Give a whole number.`},
	{"two million plants", `"shopping": {"plants": 2000000}`, `shopping.plants: 2000000 is not allowed. Allowed: 0 to 1000000.` + aQuantity},
	{"a plant in parts", `"shopping": {"plants": 0.5}`, `shopping.plants: 0.5 is not allowed. Allowed: 0 to 1000000. Give a whole number.`},
	{"tape below nought", `"shopping": {"tape_m": -300}`, `shopping.tape_m: -300 is not allowed. Allowed: 0 to 1000000 m.` + aQuantity},
	{"header with its unit", `"shopping": {"header_m": "40 m"}`, `shopping.header_m: "40 m" is not allowed. Allowed: a number, 0 to 1000000 m.` + aNumber},
	{"valves by word", `"shopping": {"valves": "two"}`, `shopping.valves: "two" is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"a filter, yes", `"shopping": {"filter": true}`, `shopping.filter: true is not allowed. Allowed: a number, 0 to 1000000.` + aNumber},
	{"a backflow device below nought", `"shopping": {"backflow_device": -1}`, `shopping.backflow_device: -1 is not allowed. Allowed: 0 to 1000000.` + aQuantity},
	{"a thing that is not on the list", `"shopping": {"shovels": 3}`, `shopping.shovels: unknown field. Allowed: the fields of a case file. Check its spelling, or remove it.`},
	{"a price among the quantities", `"shopping": {"film_roll": 150}`, `shopping.film_roll: unknown field. Allowed: the fields of a case file. Did you mean prices.film_roll?`},

	// Rolls, beds, people, tractor.
	{"29: a roll of nothing", `"practice": {"roll_length_m": 0}`, `practice.roll_length_m: 0 is not allowed. Allowed: 30 to 3000 m.` + aFigure},
	{"31: 4,000 ft taken for metres", `"practice": {"roll_length_m": 4000}`, `practice.roll_length_m: 4000 is not allowed. Allowed: 30 to 3000 m.` + aFigure},
	{"30: a roll shorter than a bed", `"practice": {"roll_length_m": 40}, "field": {"bed_length_m": 61}`,
		`practice.roll_length_m: 40 is not allowed. Allowed: at least 62.9 m for a bed of 61 m. One roll must cover one bed and both buried ends: splices are not planned. Get a longer roll or split the bed.`},
	{"a roll as long as the bed, nothing to bury", `"practice": {"roll_length_m": 60}, "field": {"bed_length_m": 60}`,
		`practice.roll_length_m: 60 is not allowed. Allowed: at least 61.9 m for a bed of 60 m. One roll must cover one bed and both buried ends: splices are not planned. Get a longer roll or split the bed.`},
	{"29: film without width", `"practice": {"film_width_m": 0}`, `practice.film_width_m: 0 is not allowed. Allowed: 0.3 to 4 m.` + aFigure},
	{"film of 48, in metres", `"practice": {"film_width_m": 48}`, `practice.film_width_m: 48 is not allowed. Allowed: 0.3 to 4 m.` + aFigure},
	{"32: two and a half beds", `"field": {"beds": 2.5}`, `field.beds: 2.5 is not allowed. Allowed: 1 to 2000. Give a whole number.`},
	{"beds below nought", `"field": {"beds": -4}`, `field.beds: -4 is not allowed. Allowed: 1 to 2000.` + aFigure},
	{"9: plants on top of each other", `"field": {"in_row_m": 0}`, `field.in_row_m: 0 is not allowed. Allowed: 0.01 to 3 m.` + aFigure},
	{"people in parts", `"practice": {"people": 2.5}`, `practice.people: 2.5 is not allowed. Allowed: 1 to 50. Give a whole number.`},
	{"a crowd", `"practice": {"people": 300}`, `practice.people: 300 is not allowed. Allowed: 1 to 50.` + aFigure},
	{"a tractor of 5,000 kW", `"practice": {"tractor_kw": 5000}`, `practice.tractor_kw: 5000 is not allowed. Allowed: 3 to 300 kW.` + aFigure},
	{"a tractor in horses", `"practice": {"tractor_kw": "55 hp"}`, `practice.tractor_kw: "55 hp" is not allowed. Allowed: a number, 3 to 300 kW.` + aNumber},
	{"laid by drone", `"practice": {"laying": "drone"}`, `practice.laying: "drone" is not allowed. Allowed: tractor, hand. Choose one of the allowed ids, or leave the field out.`},

	// Dates and label.
	{"27: an interval in words", `"practice": {"fumigated_on": "2027-04-20", "label_interval_days": "about 2 weeks"}`, `practice.label_interval_days: "about 2 weeks" is not allowed. Allowed: a number, 0 to 365.` + aNumber},
	{"an interval below nought", `"practice": {"fumigated_on": "2027-04-20", "label_interval_days": -7}`, `practice.label_interval_days: -7 is not allowed. Allowed: 0 to 365.` + aFigure},
	{"23: treated on 31 April", `"practice": {"fumigated_on": "2027-04-31"}`, `practice.fumigated_on: "2027-04-31" is not allowed. Allowed: a day of the calendar, YYYY-MM-DD. There is no such date; write it such as 2027-05-20.`},
	{"24: treated after planting", `"practice": {"fumigated_on": "2027-05-21"}`, `practice.fumigated_on: 2027-05-21 is not allowed. Allowed: in the 400 days before planting. Check both dates.`},
	{"44: organic and treated", `"practice": {"organic": true, "fumigated_on": "2027-04-20"}`, `practice.fumigated_on: 2027-04-20 is not allowed. Allowed: not on a certified organic field. Clear one of the two: fumigants lie outside the organic rule.`},

	// Laying day.
	{"a ball that bounces", `"day": {"ball": "bounces"}`, `day.ball: "bounces" is not allowed. Allowed: crumbles, breaks, ribbons. Choose one of the allowed ids, or leave the field out.`},
	{"a ball nearly spelled", `"day": {"ball": "break"}`, `day.ball: "break" is not allowed. Allowed: crumbles, breaks, ribbons. Did you mean breaks?`},
	{"a hand that is a number", `"day": {"hand": 1}`, `day.hand: 1 is not allowed. Allowed: dry, outline, water. Write an id between quotes, or leave the field out.`},
	{"wind below nought", `"day": {"wind_m_s": -3}`, `day.wind_m_s: -3 is not allowed. Allowed: 0 to 60 m/s. Check the unit: 1 m/s is 3.6 km/h or 2.2 mph.`},
	{"a storm that was never measured", `"day": {"wind_m_s": 150}`, `day.wind_m_s: 150 is not allowed. Allowed: 0 to 60 m/s. Check the unit: 1 m/s is 3.6 km/h or 2.2 mph.`},
	{"wind in words", `"day": {"wind_m_s": "a breeze"}`, `day.wind_m_s: "a breeze" is not allowed. Allowed: a number, 0 to 60 m/s.` + aNumber},
	{"half a person", `"day": {"people": 0.5}`, `day.people: 0.5 is not allowed. Allowed: 0 to 50. Give a whole number.`},
	{"people below nought", `"day": {"people": -1}`, `day.people: -1 is not allowed. Allowed: 0 to 50. Count those who are here, from 0 to 50.`},
	{"rolls in parts", `"day": {"rolls": 1.5}`, `day.rolls: 1.5 is not allowed. Allowed: 0 to 100000. Give a whole number.`},
	{"a day of another kind", `"day": {"rain_mm": 4}`, `day.rain_mm: unknown field. Allowed: the fields of a case file. Check its spelling, or remove it.`},
	{"a day that is a word", `"day": "sunny"`, `day: "sunny" is not allowed. Allowed: an object. Write its fields between braces.`},

	// More than one at once: all are told.
	{"three at once", `"prices": {"plant": -1}, "shopping": {"film_rolls": 0.5}, "day": {"people": 99}`,
		`prices.plant: -1 is not allowed. Allowed: 0 to 1000000.` + aPrice + `
shopping.film_rolls: 0.5 is not allowed. Allowed: 0 to 1000000. Give a whole number.
day.people: 99 is not allowed. Allowed: 0 to 50. Count those who are here, from 0 to 50.`},
}

func TestEveryBadDoingGivesItsExactErrors(t *testing.T) {
	require.GreaterOrEqual(t, len(badDoings), 40)
	_, err := casefile.Decode([]byte(strings.Replace(doingBase, "PART", `"day": {"people": 2}`, 1)), places(t))
	require.NoError(t, err, "the base is good")
	for _, bad := range badDoings {
		t.Run(bad.name, func(t *testing.T) {
			_, err := casefile.Decode([]byte(strings.Replace(doingBase, "PART", bad.part, 1)), places(t))
			require.Error(t, err)
			assert.Equal(t, bad.errors, err.Error())
			for _, e := range err.(field.Errors) {
				assert.True(t, e.Field != "" && e.Value != "" && e.Allowed != "" && e.Mend != "", "%+v", e)
			}
		})
	}
}
