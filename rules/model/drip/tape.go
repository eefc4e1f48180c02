package drip

import "filmfurrow/rules/unit"

// FlowClass is how much water a tape gives, in the words of the trade.
type FlowClass string

// The three classes of the Penn State table.
const (
	LowFlow    FlowClass = "low"
	MediumFlow FlowClass = "medium"
	HighFlow   FlowClass = "high"
)

// TapeClass is one row of the published table of tapes: a class, an emitter
// spacing and the flow at 8 psi.
type TapeClass struct {
	Class   FlowClass
	Spacing unit.Metres
	Flow    unit.LitresPerHourPer100Metres
}

// RatedPressure is the pressure at which the trade rates tape: 8 psi.
const RatedPressure unit.Kilopascals = 8 * unit.KilopascalsPerPSI

// TapeClasses lists the tapes of "Determining how long to run drip irrigation
// systems for vegetables" (Penn State Extension, 2013), 13.2 to 80.4 US
// gallons an hour for 100 ft at 8 psi, from least to most flow. All seven are
// one of three emitters (0.132, 0.204 and 0.27 gal/h) set closer or wider.
var TapeClasses = [...]TapeClass{
	{LowFlow, 12 * unit.MetresPerInch, gallonsPerHourPer100Feet(13.2)},
	{LowFlow, 8 * unit.MetresPerInch, gallonsPerHourPer100Feet(20.4)},
	{MediumFlow, 12 * unit.MetresPerInch, gallonsPerHourPer100Feet(20.4)},
	{HighFlow, 12 * unit.MetresPerInch, gallonsPerHourPer100Feet(27)},
	{MediumFlow, 8 * unit.MetresPerInch, gallonsPerHourPer100Feet(30.6)},
	{HighFlow, 8 * unit.MetresPerInch, gallonsPerHourPer100Feet(40.2)},
	{HighFlow, 4 * unit.MetresPerInch, gallonsPerHourPer100Feet(80.4)},
}

func gallonsPerHourPer100Feet(gallons float64) unit.LitresPerHourPer100Metres {
	return unit.LitresPerHourPer100Metres(gallons * unit.LitresPerGallon / unit.MetresPerFoot)
}

// EmitterOf gives the outlet behind a tape: flow for 100 m, spread over its
// outlets, 100 m ÷ spacing. (One farm manual counts 133 outlets on 100 ft at
// 8 inches to divide by and 150 to multiply by; 100 ft ÷ 8 in is 150.)
func EmitterOf(flow unit.LitresPerHourPer100Metres, spacing unit.Metres, exponent float64) Emitter {
	return Emitter{
		Rated:    unit.LitresPerHour(float64(flow) * float64(spacing) / 100),
		RatedAt:  RatedPressure,
		Exponent: exponent,
	}
}

// Bores of tape that the trade sells most: 16 mm (5/8 in) and 22 mm (7/8 in).
// The market runs from 10 to 35 mm (Kansas State University, "Drip irrigation
// of row crops: state of the art", table 1).
const (
	CommonTapeBore unit.Metres = 0.625 * unit.MetresPerInch
	LargeTapeBore  unit.Metres = 0.875 * unit.MetresPerInch
)

// FillVolume is the water that a tape or pipe holds when full.
func FillVolume(bore, length unit.Metres) unit.Litres {
	return unit.Litres(area(bore) * float64(length) * 1000)
}
