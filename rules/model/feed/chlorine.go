package feed

import "filmfurrow/rules/unit"

// Basis says what the percentage on a bottle counts.
type Basis uint8

// The two bases that sources use.
const (
	// AvailableChlorine counts chlorine itself; farm tables and most labels do.
	AvailableChlorine Basis = iota
	// SodiumHypochlorite counts the salt, of which chlorine is 95.25 % by
	// molecular mass (70.906 ÷ 74.442).
	SodiumHypochlorite
)

const chlorineInHypochlorite = 70.906 / 74.442

// Bleach is a chlorine solution: percent weight by volume, above 0.
type Bleach struct {
	Strength unit.Percent
	Basis    Basis
}

// milligrams of chlorine in a litre.
func (b Bleach) milligrams() float64 {
	m := 10000 * float64(b.Strength)
	if b.Basis == SodiumHypochlorite {
		m *= chlorineInHypochlorite
	}
	return m
}

// InjectFor gives the injection rate that brings a flow to a concentration. In
// US units gal/h = 0.006 × gal/min × ppm ÷ percent.
func (b Bleach) InjectFor(flow unit.LitresPerHour, wanted unit.MilligramsPerLitre) unit.LitresPerHour {
	return unit.LitresPerHour(float64(flow) * float64(wanted) / b.milligrams())
}

// ConcentrationOf gives what a volume of bleach makes of a volume of water.
func (b Bleach) ConcentrationOf(bleach, water unit.Litres) unit.MilligramsPerLitre {
	return unit.MilligramsPerLitre(float64(bleach) * b.milligrams() / float64(water))
}

// VolumeFor gives the bleach that brings a volume of water to a concentration.
func (b Bleach) VolumeFor(water unit.Litres, wanted unit.MilligramsPerLitre) unit.Litres {
	return unit.Litres(float64(water) * float64(wanted) / b.milligrams())
}

// ChlorineForIron is the chlorine that oxidises one part of iron (University of
// Florida, FAWN maintenance page).
const ChlorineForIron = 1.4

// ForIron is the chlorine that oxidises iron ahead of a fine filter. It does not work
// for manganese.
func ForIron(iron unit.MilligramsPerLitre) unit.MilligramsPerLitre { return ChlorineForIron * iron }

// Level is a use of chlorine in drip systems with its published strength in
// mg/L of free chlorine.
type Level struct {
	Use       string
	Low, High unit.MilligramsPerLitre
	Where     string
	Source    string
}

// Levels are the published strengths. Not a recommendation: the label and the
// local code say whether and how.
var Levels = [...]Level{
	{"continuous, against slime", 1, 1, "free chlorine at the ends of the lines", "University of Florida, FAWN micro-irrigation maintenance"},
	{"super-chlorination between crops, then flush, stand overnight, flush", 200, 500, "in the lines, with no plants on them", "University of Florida, FAWN micro-irrigation maintenance"},
}
