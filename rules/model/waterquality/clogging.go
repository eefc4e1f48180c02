package waterquality

import "filmfurrow/rules/unit"

// Hazard sorts a finding.
type Hazard uint8

// The hazards, in rising order. Unknown stands for a value that was not given.
const (
	Unknown Hazard = iota
	Slight
	Moderate
	Severe
)

// String names the hazard as the tables do.
func (h Hazard) String() string {
	return [...]string{"not given", "slight", "moderate", "severe"}[h]
}

// Clogger is a row of the table of things that clog outlets: slight below
// Moderate, severe above Severe.
type Clogger struct {
	ID               string
	Name             string
	Unit             string // empty for pH
	Moderate, Severe float64
	Source           string
}

const fawn = "University of Florida, Florida Automated Weather Network, micro-irrigation maintenance, table 1"

// Cloggers is the table that goes back to a tentative scheme of 1979
// (Agricultural Water Management 2:149–162). The Florida page prints the
// severe cells of dissolved and suspended solids swapped; they are set right
// here after its own moderate column and the WateReuse salinity guide. The
// hardness row of that page repeats the calcium figures and is left out: see
// [HardnessWord].
var Cloggers = [...]Clogger{
	{"ph", "pH", "", 7.0, 7.5, fawn},
	{"dissolved_solids", "dissolved solids", "mg/L", 500, 2000, fawn + " (misprint corrected)"},
	{"suspended_solids", "suspended solids", "mg/L", 50, 100, fawn + " (misprint corrected)"},
	{"iron", "iron", "mg/L", 0.1, 1.5, fawn},
	{"manganese", "manganese", "mg/L", 0.1, 1.5, fawn},
	{"calcium", "calcium", "mg/L", 40, 80, fawn},
	{"hydrogen_sulfide", "hydrogen sulfide", "mg/L", 0.2, 2.0, fawn},
	{"bacteria", "bacteria", "per mL", 10000, 50000, fawn},
}

// CloggerOf finds a row by its id.
func CloggerOf(id string) (Clogger, bool) {
	for _, c := range Cloggers {
		if c.ID == id {
			return c, true
		}
	}
	return Clogger{}, false
}

// Judge sorts a value; the limits themselves count as moderate.
func (c Clogger) Judge(value float64) Hazard {
	switch {
	case value < c.Moderate:
		return Slight
	case value <= c.Severe:
		return Moderate
	}
	return Severe
}

// HardnessWord names hardness as CaCO₃ in mg/L: soft to 60, moderate to 120,
// hard to 180, then very hard (microirrigation management reference book).
func HardnessWord(milligrams float64) string {
	switch {
	case milligrams <= 60:
		return "soft"
	case milligrams <= 120:
		return "moderately hard"
	case milligrams <= 180:
		return "hard"
	}
	return "very hard"
}

// Lime may come out in the outlets above both of these together: UC ANR
// (micro-irrigation maintenance) names bicarbonate of 2 meq/L, about 120 mg/L of
// hardness, and a pH of 7.5.
const (
	LimeHardness unit.MilligramsPerLitre = 120
	LimePH       float64                 = 7.5
)

// LimeLikely tells whether lime may come out in the outlets.
func LimeLikely(hardness unit.MilligramsPerLitre, ph float64) bool {
	return hardness > LimeHardness && ph > LimePH
}

// DissolvedSolids gives mg/L from conductivity in dS/m: about 640 × EC (from
// memory).
func DissolvedSolids(conductivity float64) float64 { return 640 * conductivity }
