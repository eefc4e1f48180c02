package rules

import (
	"math"

	"filmfurrow/rules/sheet"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// SheetLine is one sentence of the laying-day sheet: a key, so that it can be
// said in any of the sheet's languages, and its quantities.
type SheetLine struct {
	Key        sheet.Key
	Quantities []unit.Quantity
	Gate       bool // a box to tick before anyone lays
}

// In prints the line in a language and a system of units.
func (l *SheetLine) In(language sheet.Language, system unit.System) string {
	return unit.Phrase{Text: sheet.Text(language, l.Key), Quantities: l.Quantities}.In(system)
}

// Sheet is the laying-day sheet, part by part.
type Sheet struct {
	Go, Settings, Order, People, Checks, Faults, Care []SheetLine
	CheckEvery                                        unit.Metres
	ByHand                                            bool
	WalkBehind                                        bool // too little power to form and cover a bed in one pass
	NeedPower                                         unit.Kilowatts
}

// Figures of the sheet that are not answers.
const (
	windLimit  = unit.MetresPerSecond(5)              // 10–12 mph stops the work: from memory of the trade
	buryStart  = unit.Metres(8 * unit.MetresPerFoot)  // 6–10 ft of film buried before the tractor goes on: from memory
	walkBehind = unit.Metres(10 * unit.MetresPerFoot) // from memory
	tapeTail   = unit.Metres(3 * unit.MetresPerFoot)  // 3–5 ft left at each end: from memory
	checkEvery = unit.Metres(30)                      // our judgement
	leastWalk  = unit.Kilowatts(11)                   // 15 hp: what walk-behind machines have
)

// Sheet works out the laying-day sheet from the answers.
func (a *Advice) Sheet(s *Shopping) Sheet {
	p, b := &a.Case.Practice, a.Shape
	out := Sheet{CheckEvery: checkEvery, ByHand: p.Laying == "hand"}
	line := func(k sheet.Key, values ...any) SheetLine {
		l := SheetLine{Key: k}
		for _, v := range values {
			l.Quantities = append(l.Quantities, unit.Of(v))
		}
		return l
	}
	box := func(k sheet.Key, values ...any) {
		l := line(k, values...)
		l.Gate = true
		out.Go = append(out.Go, l)
	}
	bed, _ := a.Bed.Best()
	out.NeedPower = leastPower[bed]
	people := 3
	if out.ByHand {
		people = 2
	}
	if p.People.Given {
		people = max(2, int(p.People.Value))
	}
	box("go-ball")
	box("go-moist")
	box("go-wind", windLimit)
	box("go-people", people)
	box("go-parts", int(s.Lines[ItemFilm].Taken()))
	if out.ByHand {
		box("go-hand")
	} else {
		box("go-tractor", out.NeedPower)
		out.WalkBehind = p.Tractor.Given && p.Tractor.Value <= leastWalk
	}
	box("go-lines")
	box("go-backflow")
	if p.FumigatedOn.Given {
		box("go-label")
	}
	box("go-read")

	set := func(k sheet.Key, values ...any) { out.Settings = append(out.Settings, line(k, values...)) }
	if b.Height == 0 {
		set("set-flat")
	} else {
		set("set-height", unit.Short(b.Height))
		set("set-crown", unit.Short(b.Crown))
	}
	set("set-top", unit.Short(b.Top), unit.Short(b.Base), b.Centres)
	if t, ok := a.ThicknessChosen(); ok {
		set("set-film", unit.Short(b.FilmWidth), t)
	} else {
		set("set-film-by", unit.Short(b.FilmWidth))
	}
	set("set-tuck", unit.Short(b.Tuck), unit.Short(LeastTuck))
	if t := a.TapePlan.Tape; t != nil {
		set("set-tape", a.TapePlan.Lines, unit.Short(a.TapePlan.Depth), unit.Short(t.Spacing))
	}
	if a.TapePlan.Offset > 0 {
		set("set-offset", unit.Short(a.TapePlan.Offset))
	}
	set("set-tension")

	do := func(k sheet.Key, values ...any) { out.Order = append(out.Order, line(k, values...)) }
	if out.ByHand {
		do("do-trench")
	} else {
		do("do-soil")
		do("do-form")
	}
	do("do-tape", unit.Short(a.TapePlan.Depth))
	if !out.ByHand {
		do("do-film")
		do("do-tight")
		do("do-cover", unit.Short(LeastTuck))
	}
	do("do-end", tapeTail)

	out.People = []SheetLine{line("people-driver"), line("people-start", buryStart), line("people-never"), line("people-walk", walkBehind), line("people-third")}
	if out.ByHand {
		out.People = nil
	}
	out.Checks = []SheetLine{line("check-edge"), line("check-tape"), line("check-bed")}
	out.Faults = []SheetLine{line("fault-loose"), line("fault-tear"), line("fault-edge"), line("fault-twist"), line("fault-low"), line("fault-dry")}
	if !out.ByHand {
		out.Care = append(out.Care, line("care-tractor"))
	}
	out.Care = append(out.Care, line("care-knife"))
	if s.RollMass > 0 {
		out.Care = append(out.Care, line("care-lift", s.RollMass))
	}
	out.Care = append(out.Care, line("care-heat"), line("care-flame"))
	if p.FumigatedOn.Given {
		out.Care = append(out.Care, line("care-treated"))
	}
	return out
}

// SoilShare is how heavy used film is with its soil, as multiples of the clean
// film: 2 where half is soil (HortScience 53(3):288, 2018), up to 10 where nine
// tenths are (EN 13655:2018 scope).
var SoilShare = table.Figure[float64]{Low: 2, Value: 4, High: 10, Source: &table.EN13655, Mark: table.Seen}

// EndOfFilm is the film's last day in figures and duties.
type EndOfFilm struct {
	Clean, Least, Most unit.Kilograms // clean, and with soil at both ends of what was published
	Duty               unit.Phrase
	Organic            unit.Phrase
}

// EndOfFilm says what must leave the field.
func (a *Advice) EndOfFilm(s *Shopping) EndOfFilm {
	e := EndOfFilm{Clean: s.FilmMass, Least: mass(float64(s.FilmMass) * SoilShare.Low), Most: mass(float64(s.FilmMass) * SoilShare.High)}
	r := filmRow(a.Facts)
	switch r.Removal {
	case table.LiftAndHaul:
		e.Duty = unit.Say("Lift it dry, shake it, roll it, and haul it to a collector that you asked before laying. Never burn it, never bury it: both are banned in many places, and the smoke is poisonous.")
	case table.TillInSlowly:
		e.Duty = unit.Say("Mow, then till it in once. Pieces stay for a year and more: in one trial nine tenths of the buried film was still there after 18 months. Keep edges out of ditches and streams.")
	default:
		e.Duty = unit.Say("Mow, then till it in. It rots like straw.")
	}
	e.Organic = unit.Say(r.OrganicNote)
	return e
}

func mass(kg float64) unit.Kilograms { return unit.Kilograms(math.Round(kg*10) / 10) }
