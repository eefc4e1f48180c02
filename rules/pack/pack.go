// Package pack holds eight invented farms for a room full of growers. Each
// teaches one thing: what the engine answers, and one input that turns it. No
// farm, name or weather of it is real.
package pack

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/unit"
)

// Land is one invented farm: its field and weather. What it teaches is a [Farm], which the
// page's program does without.
type Land struct {
	ID    string // a word for addresses
	Title string
	set   func(*field.Case)
	place *place
}

// place is invented weather: the twelve months' mean minima and maxima.
type place struct {
	latitude, height float64
	low, high        [12]unit.Celsius
}

var (
	coolValley = place{42.5, 250,
		[12]unit.Celsius{-9, -8, -4, 1.5, 7.5, 13, 15.5, 14.5, 10.5, 4.5, -0.5, -5.5},
		[12]unit.Celsius{-0.5, 1, 6, 13.5, 20, 25, 27.5, 26.5, 22, 15, 8, 2}}
	shortSummer = place{46, 310,
		[12]unit.Celsius{-14, -13, -7, -0.5, 5.5, 11, 14, 13, 8.5, 2.5, -3.5, -10},
		[12]unit.Celsius{-4, -2.5, 3, 11, 18.5, 23.5, 26, 25, 20, 12.5, 5, -1}}
	mildCoast = place{39, 15,
		[12]unit.Celsius{-4.5, -3.5, 0.5, 6, 11.5, 17, 19.5, 18.5, 14.5, 8, 3, -2},
		[12]unit.Celsius{5.5, 7, 12, 18.5, 23.5, 28, 30.5, 29.5, 26, 19.5, 13.5, 7.5}}
	hotPlain = place{32, 90,
		[12]unit.Celsius{4, 5.5, 9, 13, 17.5, 21, 22.5, 22.5, 20, 14, 9, 5.5},
		[12]unit.Celsius{16, 18, 22, 26, 30, 33, 34, 34, 31.5, 27, 22, 17.5}}
)

// Case gives the farm's case.
func (f *Land) Case() field.Case {
	c := field.Case{Method: "transplant"}
	c.Place = field.Place{Own: true, HasNormals: true, TMin: f.place.low, TMax: f.place.high,
		Latitude: unit.Known(unit.Degrees(f.place.latitude)), Elevation: unit.Known(unit.Metres(f.place.height))}
	c.Soil = field.SoilCase{Texture: "sandy-loam", Drainage: "fair", Slope: unit.Known(1.0), Wetness: "moist", Tilth: "fine", Stones: "none"}
	c.Weeds = field.WeedCase{Pressure: "moderate", Nutsedge: "none", Insects: "none"}
	c.Field = field.FieldCase{Exposure: "open", BedLength: unit.Known(unit.FromFeet(200)), Beds: unit.Known(8.0)}
	c.Practice = field.PracticeCase{Laying: "tractor", Tractor: unit.Known(unit.FromHorsepower(55)), People: unit.Known(3.0)}
	c.Water = field.WaterCase{Source: "well", Flow: unit.Known(unit.FromGallonsPerMinute(20)), Hours: unit.Known(8.0)}
	f.set(&c)
	return c
}

func plants(c *field.Case, crop string, month, day int) {
	c.Crop, c.PlantOn = crop, unit.Known(unit.On(2027, month, day))
}

// Lands are the farms of the pack, in the order of a talk. The first is the page's worked
// example.
var Lands = [...]Land{
	{ID: "otter-bend", Title: "Otter Bend, peppers in a cool spring", place: &coolValley, set: func(c *field.Case) {
		plants(c, "bell-pepper", 5, 20)
		c.Weeds.Pressure = "heavy"
	}},
	{ID: "heron-flat", Title: "Heron Flat, melons in a hot place", place: &hotPlain, set: func(c *field.Case) { plants(c, "muskmelon", 4, 5) }},
	{ID: "lark-rise", Title: "Lark Rise, sweet corn in a short summer", place: &shortSummer, set: func(c *field.Case) {
		plants(c, "sweet-corn", 5, 20)
		c.Method, c.Soil.Texture, c.Soil.Drainage, c.Weeds.Pressure = "seed", "silt-loam", "quick", "light"
	}},
	{ID: "gull-meadow", Title: "Gull Meadow, late squash and aphids", place: &mildCoast, set: func(c *field.Case) {
		plants(c, "summer-squash", 7, 20)
		c.Method, c.Weeds.Insects = "seed", "aphids"
	}},
	{ID: "slow-acre", Title: "Slow Acre, wet ground that drains slowly", place: &mildCoast, set: func(c *field.Case) {
		plants(c, "cabbage", 4, 15)
		c.Soil.Texture, c.Soil.Drainage = "clay-loam", "slow"
	}},
	{ID: "quarry-piece", Title: "Quarry Piece, stones under the film", place: &hotPlain, set: func(c *field.Case) {
		plants(c, "tomato", 4, 5)
		c.Soil.Stones = "some"
	}},
	{ID: "dry-corner", Title: "Dry Corner, melons on a weak well", place: &hotPlain, set: func(c *field.Case) {
		plants(c, "muskmelon", 5, 5)
		c.Soil.Texture, c.Soil.Drainage, c.Field.Beds, c.Water.Flow, c.Water.Hours = "sand", "quick", unit.Known(12.0), unit.Known(unit.LitresPerHour(680)), unit.Known(10.0)
	}},
	{ID: "spear-field", Title: "Spear Field, purple nutsedge", place: &hotPlain, set: func(c *field.Case) {
		plants(c, "bell-pepper", 4, 20)
		c.Weeds.Pressure, c.Weeds.Nutsedge = "heavy", "purple"
	}},
}
