package question

import (
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Question is one of the things that the grower must settle.
type Question uint8

// The questions, in the order in which they are answered: where one answer
// needs another (film width needs the bed), the earlier one is a fact of the
// later.
const (
	Verdict Question = iota
	Film
	Bed
	Surface
	Thickness
	Tape
	Wait
	Count
)

var questionNames = [...]string{"verdict", "film", "bed", "surface", "thickness", "tape", "wait", Day: "day"}

// String gives the question's name in the advice file.
func (q Question) String() string { return questionNames[q] }

// Option is the place of an answer among the options of its question.
type Option uint8

// NoOption stands for a question in which every option is ruled out.
const NoOption Option = 255

// Answers are the choices alone, without their reasons: what the search for
// turning points compares.
type Answers [Count]Option

// Options of the verdict.
const (
	Lay Option = iota
	LayWithCare
	DoNotLay
)

// Options of the surface.
const (
	Embossed Option = iota
	Smooth
)

// Options of the wait: what rules it.
const (
	WaitSettling Option = iota
	WaitWarming
	WaitFrost
	WaitLabel
	WaitMoisture
	WaitCooling
)

// Thicknesses are the films on sale, thinnest first; the last option stands
// for sheets that are sold by weight.
var Thicknesses = [...]unit.Micrometres{
	unit.FromMil(0.6), unit.FromMil(0.75), unit.FromMil(0.9), unit.FromMil(1.0), unit.FromMil(1.25), unit.FromMil(1.5),
}

// ByWeight is the option of sheets that are sold by weight.
const ByWeight = Option(len(Thicknesses))

// Heights are the bed heights that are compared; 0 is flat ground.
var Heights = [...]unit.Metres{0, unit.FromInches(4), unit.FromInches(6), unit.FromInches(8), unit.FromInches(10)}

// Options gives the number of options of a question.
func (q Question) Options() int {
	switch q {
	case Verdict:
		return 3
	case Film:
		return table.FilmCount
	case Bed:
		return len(Heights)
	case Surface:
		return 2
	case Thickness:
		return len(Thicknesses) + 1
	case Tape:
		return len(table.Tapes)
	case Wait:
		return 6
	case Day:
		return aYear
	}
	return 0
}

var thicknessKeys = [...]string{"0.6-mil", "0.75-mil", "0.9-mil", "1-mil", "1.25-mil", "1.5-mil", "sold-by-weight"}
var bedKeys = [...]string{"flat", "4-in", "6-in", "8-in", "10-in"}
var waitKeys = [...]string{"settling", "warming", "frost", "label", "moisture", "cooling"}

// Key gives an option's id in the advice file.
func (q Question) Key(o Option) string {
	switch q {
	case Verdict:
		return [...]string{"lay", "lay_with_care", "do_not_lay"}[o]
	case Film:
		return table.FilmID(o).Key()
	case Bed:
		return bedKeys[o]
	case Surface:
		return [...]string{"embossed", "smooth"}[o]
	case Thickness:
		return thicknessKeys[o]
	case Tape:
		return table.Tapes[o].ID
	case Day:
		return o.day().String()[len("2027-"):]
	}
	return waitKeys[o]
}

// Says gives an option in words that carry its figures.
func (q Question) Says(o Option) unit.Phrase {
	switch q {
	case Verdict:
		return unit.Say([...]string{"Lay film", "Lay film, with care", "Do not lay film here"}[o])
	case Film:
		return unit.Say(table.FilmID(o).Name())
	case Bed:
		if o == 0 {
			return unit.Say("a flat bed")
		}
		return unit.Say("a bed {} high", unit.Short(Heights[o]))
	case Surface:
		return unit.Say([...]string{"embossed", "smooth"}[o])
	case Thickness:
		if o == ByWeight {
			return unit.Say("sold by weight, not by thickness")
		}
		return unit.Say("{}", Thicknesses[o])
	case Tape:
		t := &table.Tapes[o]
		return unit.Say("emitters {} apart, {}", unit.Short(t.Spacing), t.Flow)
	case Day:
		return unit.Say("{}", unit.YearDay(o.day()))
	}
	return unit.Say([...]string{"settling", "warming the bed", "frost", "the label's interval", "soil moisture", "cooler days"}[o])
}
