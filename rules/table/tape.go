package table

import "filmfurrow/rules/unit"

// TapeID is a place in [Tapes].
type TapeID uint8

// Tape is one flow class of drip tape at 8 psi (55 kPa).
type Tape struct {
	ID      string
	Name    string
	Class   string                         // as a shop says it
	Spacing unit.Metres                    // between emitters
	Flow    unit.LitresPerHourPer100Metres // at 55 kPa
	Bore    unit.Metres                    // inside
	Source  *Source
	Mark    Mark
}

// Emitter gives the flow of one emitter at 55 kPa.
func (t Tape) Emitter() unit.LitresPerHour {
	return unit.LitresPerHour(float64(t.Flow) * float64(t.Spacing) / 100)
}

// TapePressure is the pressure at which the classes are stated: 8 psi.
const TapePressure = unit.Kilopascals(8 * unit.KilopascalsPerPSI)

// gpm is 1 gallon a minute on 100 ft. Rows write 12*inch and 0.22*gpm: see the makers in crop.go.
const gpm = unit.LitresPerGallon * 60 / unit.MetresPerFoot

func tape(id, class, name string, spacing unit.Metres, flow unit.LitresPerHourPer100Metres, bore unit.Metres, s *Source, m Mark) Tape {
	return Tape{ID: id, Class: class, Name: name, Spacing: spacing, Flow: flow, Bore: bore, Source: s, Mark: m}
}

// The two bores that are sold most: 5/8 in (16 mm) and 7/8 in (22 mm).
const (
	CommonBore = unit.Metres(0.625 * unit.MetresPerInch)
	WideBore   = unit.Metres(0.875 * unit.MetresPerInch)
)

// Tapes is the tape table. Seven rows are printed classes, three of
// them in both bores; two put the printed high-flow emitter (0.27 gph) at wider spacings.
var Tapes = [...]Tape{
	tape("12-in-low", "low-flow", "low-flow tape, emitters 12 in (30 cm) apart", 12*inch, 0.22*gpm, CommonBore, &PennDrip2013, Seen),
	tape("8-in-low", "low-flow", "low-flow tape, emitters 8 in (20 cm) apart", 8*inch, 0.34*gpm, CommonBore, &PennDrip2013, Seen),
	tape("12-in-medium", "medium-flow", "medium-flow tape, emitters 12 in (30 cm) apart", 12*inch, 0.34*gpm, CommonBore, &PennDrip2013, Seen),
	tape("12-in-high", "high-flow", "high-flow tape, emitters 12 in (30 cm) apart", 12*inch, 0.45*gpm, CommonBore, &PennDrip2013, Seen),
	tape("8-in-medium", "medium-flow", "medium-flow tape, emitters 8 in (20 cm) apart", 8*inch, 0.51*gpm, CommonBore, &PennDrip2013, Seen),
	tape("8-in-high", "high-flow", "high-flow tape, emitters 8 in (20 cm) apart", 8*inch, 0.67*gpm, CommonBore, &PennDrip2013, Seen),
	tape("4-in-high", "high-flow", "high-flow tape, emitters 4 in (10 cm) apart", 4*inch, 1.34*gpm, CommonBore, &PennDrip2013, Seen),
	tape("16-in-high", "high-flow", "high-flow tape, emitters 16 in (41 cm) apart", 16*inch, 0.3375*gpm, CommonBore, &PennDrip2013, Recomputed),
	tape("12-in-low-wide", "low-flow", "wide low-flow tape, emitters 12 in (30 cm) apart", 12*inch, 0.22*gpm, WideBore, &PennDrip2013, Seen),
	tape("12-in-medium-wide", "medium-flow", "wide medium-flow tape, emitters 12 in (30 cm) apart", 12*inch, 0.34*gpm, WideBore, &PennDrip2013, Seen),
	tape("8-in-medium-wide", "medium-flow", "wide medium-flow tape, emitters 8 in (20 cm) apart", 8*inch, 0.51*gpm, WideBore, &PennDrip2013, Seen),
	tape("24-in-high", "high-flow", "high-flow tape, emitters 24 in (61 cm) apart", 24*inch, 0.225*gpm, CommonBore, &PennDrip2013, Recomputed),
}
