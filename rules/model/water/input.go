package water

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// Optional is a value that may be unknown; the zero value is unknown.
type Optional[T comparable] struct {
	Value T
	Given bool
}

// Known makes a given value.
func Known[T comparable](v T) Optional[T] { return Optional[T]{v, true} }

func (o Optional[T]) or(usual T) T {
	if o.Given {
		return o.Value
	}
	return usual
}

// Year holds reference evapotranspiration as mm a day, January first.
type Year [12]unit.Millimetres

// Input is everything that a plan reads: comparable, free to copy. Ranges are
// those of [Make]'s check.
type Input struct {
	// Season and crop.
	PlantOn       unit.Date              // required
	Season        Optional[unit.Days]    // planting to the end of harvest; unknown takes the sum of the stages
	Coefficients  Optional[Coefficients] // FAO-56 table 12
	Stages        Optional[[4]unit.Days] // FAO-56 table 11, scaled to the season
	FilmCut       Optional[Range]        // percent by which film lowers the coefficient; unknown takes 10–30
	RootDepth     Optional[unit.Metres]  // FAO-56 table 22, the smaller of the pair; the bed caps it
	Depletion     Optional[float64]      // FAO-56 table 22, p, share 0–1
	SaltThreshold Optional[unit.DecisiemensPerMetre]
	SaltSlope     Optional[unit.Percent] // of yield for 1 dS/m

	// Climate.
	Usual, Cool, Dry Optional[Year]

	// Soil.
	Soil          Optional[soilwater.Class]
	OrganicMatter Optional[unit.Percent]
	WettedWidth   Optional[unit.Metres] // by one line, measured with a shovel

	// Field.
	Beds       Optional[int]
	BedLength  Optional[unit.Metres]
	BedCentres Optional[unit.Metres]
	BedTop     Optional[unit.Metres]
	Canopy     Optional[unit.Metres] // width of ground that full-grown plants draw on; unknown takes the bed centres
	Slope      unit.Percent          // along the beds; positive climbs away from the header

	// Tape.
	Laterals     int // for a bed
	Spacing      unit.Metres
	TapeFlow     unit.LitresPerHourPer100Metres // at 8 psi, one line
	TapeBore     Optional[unit.Metres]          // unknown takes 16 mm
	Exponent     Optional[float64]              // unknown takes 0.5
	MakersCV     Optional[float64]              // manufacturer's variation, unknown takes 0.05
	TapePressure Optional[unit.Kilopascals]     // wanted at the tape's inlet; unknown takes 10 psi
	FlowSpread   Optional[unit.Percent]         // allowed along a line; unknown takes 10

	// Source.
	Supply       waterquality.Supply // "" is unknown
	Flow         Optional[unit.LitresPerHour]
	Pressure     Optional[unit.Kilopascals] // at that flow, at the source's outlet
	Lift         Optional[unit.Metres]      // water surface to pump
	Rise         Optional[unit.Metres]      // source's outlet to the beds; below zero where the field lies lower
	Header       Optional[unit.Metres]      // pipe from the source to the nearest bed's head
	Hours        Optional[unit.Hours]       // a day that water may run
	UsableShare  Optional[unit.Percent]     // of the tested flow; unknown takes 80
	Efficiency   Optional[unit.Percent]     // unknown takes 90
	FilterLoss   Optional[unit.Kilopascals] // dirty; unknown takes 5 psi
	InjectorLoss Optional[unit.Kilopascals] // unknown takes the usual one where there is an injector
	TankVolume   Optional[unit.Litres]
	TankRefill   Optional[unit.LitresPerHour]

	// Water test.
	Salt        Optional[unit.DecisiemensPerMetre]
	PH          Optional[float64] // pH
	Iron        Optional[unit.MilligramsPerLitre]
	Hardness    Optional[unit.MilligramsPerLitre] // as CaCO₃
	SodiumRatio Optional[float64]
	Nitrate     Optional[unit.MilligramsPerLitre] // as nitrogen

	// Feeding: the grower's own rate. All four or none.
	FeedRate  Optional[float64]      // kg of nutrient for a hectare of field and day
	FeedGrade Optional[unit.Percent] // of the product
	Stock     Optional[float64]      // kg of product in a litre of stock
	Injector  Optional[float64]      // 100 for 1:100

	// Chlorine: the grower's own bleach and the strength that the label allows.
	Bleach   Optional[unit.Percent] // available chlorine
	Chlorine Optional[unit.MilligramsPerLitre]
}

// Coefficients are crop coefficients.
type Coefficients struct{ Initial, Mid, End float64 }

// Range is a low and a high percentage.
type Range struct{ Low, High unit.Percent }

// Bucket is the flow of a bucket test: volume ÷ seconds. Do it at the field's
// end of the pipe, after the pump has run half an hour, with no other tap open.
// It is 0 for no time.
func Bucket(volume unit.Litres, seconds float64) unit.LitresPerHour {
	if seconds <= 0 {
		return 0
	}
	return unit.LitresPerHour(3600 * float64(volume) / seconds)
}
