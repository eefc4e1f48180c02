package drip

import "filmfurrow/rules/unit"

// Head adds up what a pump or a supply must deliver, in metres of water
// (Texas A&M AgriLife B-6011; Florida Extension circular on pump head).
type Head struct {
	Lift      unit.Metres // water surface, drawn down, to the pump
	Rise      unit.Metres // pump to the inlet of the tape; below zero where the field lies lower
	Friction  unit.Metres // main and header
	Filter    unit.Metres
	Injector  unit.Metres
	Operating unit.Metres // pressure wanted at the tape
}

// Total is the total dynamic head.
func (h Head) Total() unit.Metres {
	return h.Lift + h.Rise + h.Friction + h.Filter + h.Injector + h.Operating
}

// WaterPower is the power that the water itself takes: density × gravity ×
// flow × head. (Flow in gal/min × head in ft ÷ 3,960 is the same in
// horsepower to one part in a thousand.)
func WaterPower(flow unit.LitresPerHour, head unit.Metres) unit.Kilowatts {
	if head <= 0 {
		return 0
	}
	return unit.Kilowatts(float64(flow) / 3.6e6 * float64(head) * gravity)
}

// UsualPumpEfficiency is used where the pump is not known ("Irrigation
// formulas" sheet; Utah State University, sprinkle and trickle lecture 11).
const UsualPumpEfficiency = 0.75

// ShaftPower is the power at the pump's shaft. Motors and engines must give
// more: follow the pump maker's curve.
func ShaftPower(flow unit.LitresPerHour, head unit.Metres, efficiency float64) unit.Kilowatts {
	return WaterPower(flow, head) / unit.Kilowatts(efficiency)
}

// HeadOf turns a pressure into metres of water.
func HeadOf(p unit.Kilopascals) unit.Metres { return unit.Metres(p * unit.MetresOfWaterPerKPa) }

// PressureOf turns metres of water into a pressure.
func PressureOf(head unit.Metres) unit.Kilopascals { return kilopascals(float64(head)) }

// GravityFeed is what a tank can do by its height alone.
type GravityFeed struct {
	Pressure unit.Kilopascals // at the tape inlet
	Line     Profile          // one line at that pressure
	Longest  Run              // within the flow spread
}

// FromTank works out what a tank whose water stands above the tape inlet
// feeds. Losses are those of filter, header and fittings. The Outlets of the
// line are those of the line in hand. ErrLine where nothing is left to push.
func FromTank(height, losses unit.Metres, line Line, limit unit.Percent, atMost unit.Metres) (GravityFeed, error) {
	left := height - losses
	if !(left > 0) {
		return GravityFeed{}, ErrLine
	}
	pressure := PressureOf(left)
	p, err := line.Solve(pressure)
	if err != nil {
		return GravityFeed{}, err
	}
	run, err := LongestRun(line, pressure, limit, atMost)
	return GravityFeed{pressure, p, run}, err
}
