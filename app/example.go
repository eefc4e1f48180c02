package app

import (
	"math"
	"strconv"

	"filmfurrow/rules"
	"filmfurrow/rules/unit"
)

// exampleCase is the worked example that the page shows before anything is
// typed: Otter Bend, an invented farm with invented weather.
func exampleCase() rules.Case {
	c := rules.Case{Crop: "bell-pepper", PlantOn: rules.Known(unit.On(2027, 5, 20)), Method: "transplant"}
	c.Place = rules.Place{Own: true, HasNormals: true, Latitude: rules.Known(unit.Degrees(42.5)), Elevation: rules.Known(unit.Metres(250)),
		TMin: [12]unit.Celsius{-9, -8, -4, 1.5, 7.5, 13, 15.5, 14.5, 10.5, 4.5, -0.5, -5.5},
		TMax: [12]unit.Celsius{-0.5, 1, 6, 13.5, 20, 25, 27.5, 26.5, 22, 15, 8, 2}}
	c.Soil = rules.SoilCase{Texture: "sandy-loam", Drainage: "fair", Slope: rules.Known(1.0), Wetness: "moist", Tilth: "fine", Stones: "none"}
	c.Weeds = rules.WeedCase{Pressure: "heavy", Nutsedge: "none", Insects: "none"}
	c.Field = rules.FieldCase{Exposure: "open", BedLength: rules.Known(unit.FromFeet(200)), Beds: rules.Known(8.0)}
	c.Practice = rules.PracticeCase{Laying: "tractor", Tractor: rules.Known(unit.FromHorsepower(55)), People: rules.Known(3.0)}
	c.Water = rules.WaterCase{Source: "well", Flow: rules.Known(unit.FromGallonsPerMinute(20)), Hours: rules.Known(8.0)}
	return c
}

// exampleName is what the page calls the example.
const exampleName = "Otter Bend, an invented farm"

func round2(v float64) float64 { return math.Round(v*100) / 100 }

func monthKey(kind string, month int) string { return "normals-" + kind + "-" + strconv.Itoa(month+1) }
