package water

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// Sold is what the trade sells of tape: what stands in and what a remedy may name.
type Sold struct {
	RatedAt    unit.Kilopascals // pressure at which flows are stated
	CommonBore unit.Metres      // taken where a tape's bore is unknown
	LargeBore  unit.Metres      // the next one
	Tapes      []Candidate      // of the common bore, from least to most flow
}

// Year holds reference evapotranspiration as mm a day, January first.
type Year [12]unit.Millimetres

// Input is everything that a plan reads: comparable, free to copy. Ranges are
// those of [Make]'s check.
type Input struct {
	// Season and crop.
	PlantOn       unit.Date                   // required
	Season        unit.Optional[unit.Days]    // planting to the end of harvest; unknown takes the sum of the stages
	DryDays       unit.Days                   // the last of them, which are not watered, 0–60: bulbs ripen dry
	Coefficients  unit.Optional[Coefficients] // FAO-56 table 12
	Stages        unit.Optional[[4]unit.Days] // FAO-56 table 11, scaled to the season
	FilmCut       unit.Optional[Range]        // percent by which film lowers the coefficient; unknown takes 10–30
	RootDepth     unit.Optional[unit.Metres]  // FAO-56 table 22, the smaller of the pair; the bed caps it
	Depletion     unit.Optional[float64]      // FAO-56 table 22, p, share 0–1
	SaltThreshold unit.Optional[unit.DecisiemensPerMetre]
	SaltSlope     unit.Optional[unit.Percent] // of yield for 1 dS/m

	// Climate.
	Usual, Cool, Dry unit.Optional[Year]

	// Soil.
	Soil          unit.Optional[soilwater.Class]
	OrganicMatter unit.Optional[unit.Percent]
	WettedWidth   unit.Optional[unit.Metres] // by one line, measured with a shovel

	// Field.
	Beds       unit.Optional[int]
	BedLength  unit.Optional[unit.Metres]
	BedCentres unit.Optional[unit.Metres]
	BedTop     unit.Optional[unit.Metres]
	Canopy     unit.Optional[unit.Metres] // width of ground that full-grown plants draw on; unknown takes the bed centres
	Slope      unit.Percent               // along the beds; positive climbs away from the header

	// Tape.
	Sold         *Sold // what can be bought; always given
	Laterals     int   // for a bed
	Spacing      unit.Metres
	TapeFlow     unit.LitresPerHourPer100Metres  // at 8 psi, one line
	TapeBore     unit.Optional[unit.Metres]      // unknown takes 16 mm
	Exponent     unit.Optional[float64]          // unknown takes 0.5
	MakersCV     unit.Optional[float64]          // manufacturer's variation, unknown takes 0.05
	TapePressure unit.Optional[unit.Kilopascals] // wanted at the tape's inlet; unknown takes 10 psi
	FlowSpread   unit.Optional[unit.Percent]     // allowed along a line; unknown takes 10

	// Source.
	Supply       waterquality.Supply // "" is unknown
	Flow         unit.Optional[unit.LitresPerHour]
	Pressure     unit.Optional[unit.Kilopascals] // at that flow, at the source's outlet
	Lift         unit.Optional[unit.Metres]      // water surface to pump
	Rise         unit.Optional[unit.Metres]      // source's outlet to the beds; below zero where the field lies lower
	Header       unit.Optional[unit.Metres]      // pipe from the source to the nearest bed's head
	Hours        unit.Optional[unit.Hours]       // a day that water may run
	UsableShare  unit.Optional[unit.Percent]     // of the tested flow; unknown takes 80
	Efficiency   unit.Optional[unit.Percent]     // unknown takes 90
	FilterLoss   unit.Optional[unit.Kilopascals] // dirty; unknown takes 5 psi
	InjectorLoss unit.Optional[unit.Kilopascals] // unknown takes the usual one where there is an injector
	TankVolume   unit.Optional[unit.Litres]
	TankRefill   unit.Optional[unit.LitresPerHour]

	// Water test.
	Salt        unit.Optional[unit.DecisiemensPerMetre]
	PH          unit.Optional[float64] // pH
	Iron        unit.Optional[unit.MilligramsPerLitre]
	Hardness    unit.Optional[unit.MilligramsPerLitre] // as CaCO₃
	SodiumRatio unit.Optional[float64]
	Nitrate     unit.Optional[unit.MilligramsPerLitre] // as nitrogen

	// Feeding: the grower's own rate. All four or none.
	FeedRate  unit.Optional[float64]      // kg of nutrient for a hectare of field and day
	FeedGrade unit.Optional[unit.Percent] // of the product
	Stock     unit.Optional[float64]      // kg of product in a litre of stock
	Injector  unit.Optional[float64]      // 100 for 1:100

	// Chlorine: the grower's own bleach and the strength that the label allows.
	Bleach   unit.Optional[unit.Percent] // available chlorine
	Chlorine unit.Optional[unit.MilligramsPerLitre]
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
