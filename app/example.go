package app

import (
	"math"
	"strconv"
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
)

// exampleCase is the worked example that the page shows before anything is
// typed: the first farm of the pack.
func exampleCase() field.Case { return pack.Lands[0].Case() }

// farmName is what an invented farm is called, without what it teaches.
func farmName(land *pack.Land) string {
	name, _, _ := strings.Cut(land.Title, ",")
	return name
}

func round2(v float64) float64 { return math.Round(v*100) / 100 }

func monthKey(kind string, month int) string { return "normals-" + kind + "-" + strconv.Itoa(month+1) }
