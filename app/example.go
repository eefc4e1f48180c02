package app

import (
	"math"
	"strconv"

	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
)

// exampleCase is the worked example that the page shows before anything is
// typed: the first farm of the pack.
func exampleCase() field.Case { return pack.Farms[0].Case() }

// exampleName is what the page calls the example.
const exampleName = "Otter Bend, an invented farm"

func round2(v float64) float64 { return math.Round(v*100) / 100 }

func monthKey(kind string, month int) string { return "normals-" + kind + "-" + strconv.Itoa(month+1) }
