package drip

import "filmfurrow/rules/unit"

// Bore is a nominal size of header hose.
type Bore struct {
	Name   string // as the trade says it, in inches
	Inside unit.Metres
}

// NominalBores lists the common sizes of lay-flat header hose, whose nominal
// size is its inside (common practice, no source). Rigid pipe of the same name
// is often a little wider inside, so these err on the safe side: read the
// inside diameter that is printed on the pipe.
var NominalBores = [...]Bore{
	{"3/4", 0.75 * unit.MetresPerInch},
	{"1", 1 * unit.MetresPerInch},
	{"1 1/4", 1.25 * unit.MetresPerInch},
	{"1 1/2", 1.5 * unit.MetresPerInch},
	{"2", 2 * unit.MetresPerInch},
	{"2 1/2", 2.5 * unit.MetresPerInch},
	{"3", 3 * unit.MetresPerInch},
	{"4", 4 * unit.MetresPerInch},
	{"6", 6 * unit.MetresPerInch},
	{"8", 8 * unit.MetresPerInch},
}

// MaxVelocity is the ceiling of speed in a main or header: 5 ft/s
// ("Irrigation formulas" sheet), against water hammer and wasted pressure.
const MaxVelocity unit.MetresPerSecond = 1.524

// Header is a pipe that first carries a whole zone's water over Plain metres
// and then feeds Laterals, one every Spacing.
type Header struct {
	Plain    unit.Metres // 0 or more
	Laterals int         // 1 or more
	Spacing  unit.Metres
	Slope    unit.Percent // along the part with laterals
	Lateral  Emitter      // a whole lateral as one outlet: its flow at a pressure and the tape's exponent
	Friction Friction
	Known    *Known // lines solved before; nil where there are none
}

// HeaderLimits are what a bore must meet.
type HeaderLimits struct {
	Velocity unit.MetresPerSecond
	Spread   unit.Percent     // of flow between the laterals
	Loss     unit.Kilopascals // friction in the plain part and down to the lowest lateral
}

// HeaderTrial is what one bore does. Fits is whether it meets every limit; the
// three flags say which it breaks.
type HeaderTrial struct {
	Bore                                Bore
	Velocity                            unit.MetresPerSecond
	PlainLoss, LateralLoss              unit.Kilopascals
	Spread                              unit.Percent
	Flow                                unit.LitresPerHour
	TooFast, TooUneven, TooMuchPressure bool
	Fits                                bool
}

// SizeHeader tries bores from the list in order and returns every trial up to
// and including the first that fits. When none fits, the last trial has Fits
// false. The inlet pressure is that of the first lateral's end of the header.
func SizeHeader(h Header, inlet unit.Kilopascals, limits HeaderLimits, bores []Bore) ([]HeaderTrial, error) {
	var trials []HeaderTrial
	for _, bore := range bores {
		line := Line{Outlets: h.Laterals, Spacing: h.Spacing, Bore: bore.Inside, Slope: h.Slope, Outlet: h.Lateral, Friction: h.Friction}
		p, err := h.Known.Solve(line, inlet)
		if err != nil {
			return trials, err
		}
		t := HeaderTrial{
			Bore:        bore,
			Velocity:    p.InletVelocity,
			LateralLoss: p.Inlet - p.Lowest,
			Spread:      p.Spread,
			Flow:        p.Flow,
		}
		if h.Plain > 0 {
			t.PlainLoss = kilopascals(float64(Pipe{h.Plain, bore.Inside, h.Friction}.Loss(p.Flow)))
		}
		t.TooFast = t.Velocity > limits.Velocity
		t.TooUneven = t.Spread > limits.Spread
		t.TooMuchPressure = t.PlainLoss+t.LateralLoss > limits.Loss
		t.Fits = !t.TooFast && !t.TooUneven && !t.TooMuchPressure
		trials = append(trials, t)
		if t.Fits {
			break
		}
	}
	return trials, nil
}
