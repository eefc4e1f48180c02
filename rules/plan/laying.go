package plan

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/question"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// SheetLine is one sentence of the laying-day sheet: its key and its quantities.
type SheetLine struct {
	Key        sheet.Key
	Quantities []unit.Quantity
}

//go:noinline
func line(k sheet.Key, values ...any) SheetLine {
	l := SheetLine{Key: k}
	for _, v := range values {
		l.Quantities = append(l.Quantities, unit.Of(v))
	}
	return l
}

// In prints the line in a system of units.
func (l *SheetLine) In(system unit.System) string {
	return unit.Phrase{Text: sheet.Sentences[l.Key], Quantities: l.Quantities}.In(system)
}

// Reply is what is known of one condition of laying day.
type Reply uint8

// The replies.
const (
	Unasked Reply = iota // nothing was entered: nobody starts on a guess
	Yes
	No
)

// replyKeys are the replies' words on the sheet.
var replyKeys = [...]sheet.Key{"stop-open", "stop-yes", "stop-no"}

// Key names the reply's word on the sheet.
func (r Reply) Key() sheet.Key { return replyKeys[r] }

// Condition is one thing that must hold before anyone lays, with the reply that
// follows from what was entered.
type Condition struct {
	SheetLine
	Reply Reply
	ID    sheet.Key // ball, hand, wind, people, rolls, tractor or verdict
	Ask   SheetLine // the question that yes or no answers; empty where a choice or a figure is needed
}

// Stage is one step of the work from soil to film: it takes what the stage
// before gives.
type Stage struct {
	Takes, Gives sheet.Key
	Does         SheetLine
}

// In prints the stage in a system of units.
func (s *Stage) In(system unit.System) string {
	return sheet.Sentences[s.Takes] + " → " + sheet.Sentences[s.Gives] + ": " + s.Does.In(system)
}

// Sheet is the laying-day sheet, part by part.
type Sheet struct {
	Go       []Condition // worked out from what was entered
	Bring    []SheetLine // what must lie on the headland
	Boxes    []SheetLine // to tick
	Settings []SheetLine
	Order    []Stage
	People   []SheetLine
	Who      SheetLine // the same in small, beside the drawing; empty by hand
	Checks   []SheetLine
	Faults   []SheetLine
	Care     []SheetLine
	CheckHow SheetLine
	ByHand   bool
	Down     bool // film lies already: the sheet is that of planting into it
}

// Title names the sheet, and Work the part of it that tells the work.
func (s *Sheet) Title() sheet.Key {
	if s.Down {
		return "title-down"
	}
	return "title"
}

// Work names the part that tells the work.
func (s *Sheet) Work() sheet.Key {
	if s.Down {
		return "head-order-down"
	}
	return "head-order"
}

// Ready tells whether everything says yes and every box is ticked; else how
// many conditions say no and how many conditions and boxes are open.
func (s *Sheet) Ready(ticked func(sheet.Key) bool) (ready bool, no, open int) {
	for i := range s.Go {
		switch s.Go[i].Reply {
		case No:
			no++
		case Unasked:
			open++
		}
	}
	for i := range s.Boxes {
		switch s.Boxes[i].Reply(ticked) {
		case No:
			no++
		case Unasked:
			open++
		}
	}
	return no+open == 0, no, open
}

// Figures of the sheet that are not answers.
const (
	windLimit = unit.MetresPerSecond(5)             // 10–12 mph stops the work: from memory of the trade
	buryStart = unit.Metres(8 * unit.MetresPerFoot) // 6–10 ft of film buried before the tractor goes on: from memory
	// WalkBehind is how far behind the layer the second person walks: from memory.
	WalkBehind = unit.Metres(10 * unit.MetresPerFoot)
	tapeTail   = unit.Metres(3 * unit.MetresPerFoot) // 3–5 ft left at each end: from memory
	checkEvery = unit.Metres(30)                     // our judgement
	checkFirst = unit.Metres(10)                     // before much is laid wrong: our judgement
	// ribboning is the share of clay from which soil at field capacity still ribbons
	// (University of Minnesota Extension, feel and appearance: clay loam), so that
	// the ball alone tells when it can be worked: our judgement.
	ribboning  = 0.27
	leastHands = 2 // a driver and one at the row start, or two by hand: common practice
)

// pick answers a condition that was chosen from a list with one good word.
func pick(id sheet.Key, word, good string) Condition {
	switch word {
	case "":
		return Condition{SheetLine: line(id + "-open"), ID: id}
	case good:
		return Condition{SheetLine: line(id + "-yes"), Reply: Yes, ID: id}
	}
	return Condition{SheetLine: line(id + "-" + sheet.Key(word)), Reply: No, ID: id}
}

// measured answers a condition that was counted or measured.
func measured(id sheet.Key, given, good bool, have, need any) Condition {
	switch {
	case !given:
		return Condition{SheetLine: line(id+"-open", need), ID: id}
	case good:
		return Condition{SheetLine: line(id+"-yes", have, need), Reply: Yes, ID: id}
	}
	return Condition{SheetLine: line(id+"-no", have, need), Reply: No, ID: id}
}

// asked gives a condition the question that a plain yes or no answers.
func (c Condition) asked(need any) Condition {
	c.Ask = line("ask-"+c.ID, need)
	return c
}

// goOrNoGo answers the conditions from what was found on the day.
func (a *Advice) goOrNoGo(s *Shopping) []Condition {
	d, p := &a.Case.Day, &a.Case.Practice
	list := a.verdictNo()
	people, rolls, needed := int(d.People.Value), int(d.Rolls.Value), int(s.Lines[field.ItemFilm].Taken())
	hand := pick("hand", d.Hand, "outline")
	if d.Ball == "breaks" && d.Hand == "dry" && a.Facts.Soil.Clay >= ribboning {
		hand.SheetLine, hand.Reply = line("hand-clay"), Yes
	}
	list = append(list, pick("ball", d.Ball, "breaks"), hand,
		measured("wind", d.Wind.Given, d.Wind.Value <= windLimit, d.Wind.Value, windLimit).asked(windLimit),
		measured("people", d.People.Given, people >= leastHands, people, leastHands).asked(leastHands))
	if needed > 0 {
		list = append(list, measured("rolls", d.Rolls.Given, rolls >= needed, rolls, needed).asked(needed))
	} else {
		list = append(list, Condition{SheetLine: line("rolls-unknown"), ID: "rolls"})
	}
	if p.Laying == "hand" {
		return list
	}
	power, need := p.Tractor.Value, a.NeedPower()
	if p.Tractor.Given && power <= judge.LeastWalk && a.Shape.Height == 0 && a.Shape.FilmWidth <= walkFilm {
		return append(list, Condition{SheetLine: line("tractor-walk", power, unit.Short(walkFilm)), Reply: Yes, ID: "tractor"})
	}
	return append(list, measured("tractor", p.Tractor.Given, power+judge.PowerSlack >= need, power, need))
}

//go:noinline
func (s *Sheet) do(takes, gives, k sheet.Key, values ...any) {
	s.Order = append(s.Order, Stage{takes, gives, line(k, values...)})
}

//go:noinline
func to(list *[]SheetLine, k sheet.Key, values ...any) { *list = append(*list, line(k, values...)) }

// Sheet works out the laying-day sheet from the answers.
func (a *Advice) Sheet(s *Shopping) Sheet {
	if a.FilmDown() {
		return a.sheetOfFilmDown()
	}
	p, b := &a.Case.Practice, a.Shape
	out := Sheet{ByHand: p.Laying == "hand", Go: a.goOrNoGo(s)}
	out.bring(s, b.FilmWidth)
	to(&out.Boxes, "go-parts")
	if out.ByHand {
		to(&out.Boxes, "go-tools")
	} else {
		if p.Tractor.Or(judge.LeastWalk+1) > judge.LeastWalk {
			to(&out.Boxes, "go-weight")
		}
		to(&out.Boxes, "go-signal")
	}
	to(&out.Boxes, "go-lines")
	to(&out.Boxes, "go-backflow")
	if p.FumigatedOn.Given {
		to(&out.Boxes, "go-label")
	}
	to(&out.Boxes, "go-read")

	if b.Height == 0 {
		to(&out.Settings, "set-flat")
	} else {
		to(&out.Settings, "set-height", unit.Short(b.Height))
		to(&out.Settings, "set-crown", unit.Short(b.Crown))
	}
	to(&out.Settings, "set-top", unit.Short(b.Top), unit.Short(b.Base), b.Centres)
	if t, ok := a.ThicknessChosen(); ok {
		to(&out.Settings, "set-film", unit.Roll(b.FilmWidth), t)
	} else {
		to(&out.Settings, "set-film-by", unit.Roll(b.FilmWidth))
	}
	switch a.Facts.Film {
	case table.WhiteOnBlack:
		to(&out.Settings, "set-white-up")
	case table.SilverOnBlack:
		to(&out.Settings, "set-silver-up")
	}
	to(&out.Settings, "set-tuck", unit.Short(b.Tuck), unit.Short(profile.LeastTuck))
	if t := a.TapePlan.Tape; t != nil {
		to(&out.Settings, "set-tape", a.TapePlan.Laterals, unit.Short(a.TapePlan.Depth), unit.Short(t.Spacing))
	}
	if a.TapePlan.Offset > 0 {
		to(&out.Settings, "set-offset", unit.Short(a.TapePlan.Offset))
	}
	to(&out.Settings, "set-tension")
	if w := a.WorkOf(); w.Laying > 0 && out.ByHand {
		to(&out.Settings, "set-work", w.Laying, w.LayingClock)
	} else if w.Laying > 0 {
		to(&out.Settings, "set-speed", layingSpeed, w.LayingClock)
	}

	depth := unit.Short(a.TapePlan.Depth)
	if out.ByHand {
		out.do("flow-soil", "flow-bed", "by-hand-bed")
		out.do("flow-bed", "flow-taped", "by-hand-tape", depth)
		out.do("flow-taped", "flow-draped", "by-hand-film")
		out.do("flow-draped", "flow-tight", "by-hand-tight")
		out.do("flow-tight", "flow-covered", "by-hand-cover", unit.Short(profile.LeastTuck))
	} else {
		if b.Height == 0 {
			out.do("flow-soil", "flow-bed", "do-flat")
		} else {
			out.do("flow-soil", "flow-ridge", "do-soil")
			out.do("flow-ridge", "flow-bed", "do-form")
		}
		out.do("flow-bed", "flow-taped", "do-tape", depth)
		out.do("flow-taped", "flow-draped", "do-film")
		out.do("flow-draped", "flow-tight", "do-tight")
		out.do("flow-tight", "flow-covered", "do-cover", unit.Short(profile.LeastTuck))
		out.People = []SheetLine{line("people-driver"), line("people-start", buryStart), line("people-never"), line("people-walk", WalkBehind), line("people-third")}
		out.Who = line("who", 1, 2, WalkBehind, 3)
	}
	out.do("flow-covered", "flow-closed", "do-end", tapeTail)

	out.CheckHow = a.checkHow()
	out.Checks = []SheetLine{line("check-edge"), line("check-tape"), line("check-bed")}
	out.Faults = []SheetLine{line("fault-loose"), line("fault-tear"), line("fault-edge"), line("fault-twist"), line("fault-low"), line("fault-dry")}
	if out.ByHand {
		out.Faults[0], out.Faults[2] = line("fault-loose-hand"), line("fault-edge-hand")
	} else {
		to(&out.Care, "care-tractor")
	}
	to(&out.Care, "care-knife")
	switch n := Lifters(s.RollMass); {
	case n > mostLifters:
		to(&out.Care, "care-lift-loader", s.RollMass)
	case n > 0:
		to(&out.Care, "care-lift", s.RollMass, n)
	}
	to(&out.Care, "care-heat")
	to(&out.Care, "care-flame")
	if p.FumigatedOn.Given {
		to(&out.Care, "care-treated")
	}
	return out
}

// verdictNo is the condition that an advice against film sets before all others.
func (a *Advice) verdictNo() (list []Condition) {
	if v, ok := a.Verdict.Best(); ok && v == question.DoNotLay {
		list = append(list, Condition{SheetLine: line("verdict-no"), Reply: No, ID: "verdict"})
	}
	return list
}

// checkHow says how often to look at a bed, and where: soon after its start, then every checkEvery;
// at the middle of a short bed.
func (a *Advice) checkHow() SheetLine {
	length := a.Case.Field.BedLength
	switch times := int(math.Round(float64(length.Value / checkEvery))); {
	case !length.Given:
		return line("head-checks", unit.Rough(checkEvery))
	case times < 2:
		return line("head-checks-once")
	default:
		return line("head-checks-bed", times, unit.Rough(checkFirst), unit.Rough(checkEvery))
	}
}

// sheetOfFilmDown is the sheet where film lies already: no soil is worked, no layer is
// set and no roll is carried. What counts is that film, edges and tape are whole.
func (a *Advice) sheetOfFilmDown() Sheet {
	out := Sheet{Down: true, CheckHow: a.checkHow(), Go: a.verdictNo()}
	people := a.Case.Day.People
	out.Go = append(out.Go, measured("people", people.Given, people.Value >= 1, int(people.Value), 1).asked(1))
	if judge.Painted(a.Facts) {
		to(&out.Boxes, "down-painted")
	}
	to(&out.Boxes, "down-whole")
	to(&out.Boxes, "down-tape")
	to(&out.Boxes, "go-backflow")
	if a.Case.Practice.FumigatedOn.Given {
		to(&out.Boxes, "go-label")
	}
	to(&out.Boxes, "go-read")
	out.do("flow-old", "flow-clear", "down-clear")
	out.do("flow-clear", "flow-patched", "down-patch")
	out.do("flow-patched", "flow-watered", "down-flush")
	out.do("flow-watered", "flow-planted", "down-plant")
	out.Checks = []SheetLine{line("check-edge"), line("down-check-hole"), line("down-check-tape")}
	out.Faults = []SheetLine{line("fault-edge-hand"), line("fault-dry")}
	to(&out.Care, "care-knife")
	to(&out.Care, "care-heat")
	to(&out.Care, "care-flame")
	if a.Case.Practice.FumigatedOn.Given {
		to(&out.Care, "care-treated")
	}
	return out
}

// Lifting: one person may lift 51 lb (23 kg) at the very best, close to the
// body, seldom and without a twist (OSHA on the NIOSH recommendation).
const (
	oneLifts     = unit.Kilograms(51 * unit.KilogramsPerPound)
	leastLifters = 2
	mostLifters  = 3
)

// Lifters is how many people a roll takes: two at least, since it is long and
// has no handles. It is 0 where the mass is not known.
func Lifters(roll unit.Kilograms) int {
	if roll <= 0 {
		return 0
	}
	return max(leastLifters, int(math.Ceil(float64(roll/oneLifts)-1e-9)))
}

// Machine is what the bed in hand asks of tractor and people.
type Machine struct {
	ByHand     bool
	Need       unit.Kilowatts
	Have       unit.Optional[unit.Kilowatts]
	Enough     Reply
	Beds       []BedPower
	WalkBehind bool // it forms the bed in one pass and lays in another
	Passes     int
	Speed      unit.MetresPerSecond
	Work       Work
	HandHours  unit.Hours  // of one person, if it were laid by hand
	Says       []AfterLine // their texts as those of [Advice.After]
}

// BedPower is the least power for one height of bed.
type BedPower struct {
	Height unit.Metres
	Least  unit.Kilowatts
	Can    Reply // of the tractor at hand
}

// walkFilm is the widest film that the layer of a walk-behind tractor takes: 3 and
// 4 ft (a dealer's page).
const walkFilm = unit.Metres(4 * unit.MetresPerFoot)

// NeedPower is the least tractor power for the bed in hand.
func (a *Advice) NeedPower() unit.Kilowatts {
	bed, _ := a.Bed.Best()
	return judge.LeastPower[bed]
}

// MachineOf works out what the bed in hand asks of tractor and people.
func (a *Advice) MachineOf() Machine {
	p := &a.Case.Practice
	m := Machine{ByHand: p.Laying == "hand", Need: a.NeedPower(), Have: p.Tractor, Speed: layingSpeed, Work: a.WorkOf(), Passes: 1,
		HandHours: halfHours(float64(a.Facts.BedMetres) * handHoursPerMetre)}
	if a.FilmDown() {
		(*after)(&m.Says).say("machine-covered")
		return m
	}
	can := func(least unit.Kilowatts) Reply {
		switch {
		case !p.Tractor.Given || m.ByHand:
			return Unasked
		case p.Tractor.Value+judge.PowerSlack >= least, p.Tractor.Value <= judge.LeastWalk && least == judge.LeastPower[0] && a.Shape.FilmWidth <= walkFilm:
			return Yes
		}
		return No
	}
	m.Enough = can(m.Need)
	for i, least := range judge.LeastPower {
		m.Beds = append(m.Beds, BedPower{question.Heights[i], least, can(least)})
	}
	if m.WalkBehind = !m.ByHand && p.Tractor.Given && p.Tractor.Value <= judge.LeastWalk; m.WalkBehind {
		m.Passes = 2
	}
	m.says()
	return m
}

// says puts the machine into sentences. Power and speeds are common practice or
// from memory; the work by hand is one farm's own count.
func (m *Machine) says() {
	l, w := (*after)(&m.Says), &m.Work
	if m.ByHand {
		l.say("machine-none")
		if w.Laying > 0 {
			l.say("machine-job-by-hand", w.Laying, w.LayingClock, w.People, handMetres)
		}
		return
	}
	switch {
	case m.WalkBehind && m.Enough == Yes:
		l.say("machine-walks", m.Have.Value)
	case m.Enough == Yes:
		l.say("machine-enough", m.Need, m.Have.Value)
	case m.Enough == No:
		l.say("machine-weak", m.Need, m.Have.Value)
	default:
		l.say("machine-needs", m.Need)
	}
	if w.Laying > 0 {
		l.say("machine-job", m.Speed, unit.Minutes(turnMinutes), w.LayingClock, w.Laying, w.People)
		l.say("machine-hand-hours", m.HandHours)
	}
	if m.WalkBehind {
		l.say("machine-two-passes")
	} else {
		l.say("machine-walk-behind", judge.LeastWalk)
	}
}

// EndOfFilm is the film's last day in figures and duties.
type EndOfFilm struct {
	Clean, Least, Most unit.Kilograms // clean, and with soil at both ends of what was published; no soil where nothing is hauled
	Duty               unit.Phrase
	Organic            unit.Phrase
	TilledIn           unit.Phrase // the same rule on biodegradable film, beside another
}

// Hauled is what leaves the field, as coarsely as it is known: what clings to film was published
// from as much as the film to nine times as much.
func (e *EndOfFilm) Hauled() unit.Quantity {
	return unit.Between(unit.RoughMass(e.Least), unit.RoughMass(e.Most))
}

// EndOfFilm says what must leave the field.
func (a *Advice) EndOfFilm(s *Shopping) EndOfFilm {
	e := EndOfFilm{Clean: s.FilmMass}
	r := judge.FilmRow(a.Facts)
	if r.Removal == table.LiftAndHaul {
		e.Least, e.Most = mass(float64(s.FilmMass)*table.FilmWithSoil.Low), mass(float64(s.FilmMass)*table.FilmWithSoil.High)
	}
	switch r.Removal {
	case table.LiftAndHaul:
		e.Duty = unit.Say("Lift it dry, shake it, roll it, and haul it to a collector that you asked before laying. Never burn it, never bury it: both are banned in many places, and the smoke is poisonous.")
	case table.TillInSlowly:
		e.Duty = unit.Say("Mow, then till it in once. Pieces stay for a year and more: in one trial nine tenths of the buried film was still there after 18 months. Keep edges out of ditches and streams.")
	default:
		e.Duty = unit.Say("Mow, then till it in. It rots like straw.")
	}
	e.Organic = unit.Say(r.OrganicNote)
	if a.Facts.Film != table.BiodegradableBlack {
		e.TilledIn = unit.Say(table.Films[table.BiodegradableBlack].OrganicNote)
	}
	return e
}

func mass(kg float64) unit.Kilograms { return unit.Kilograms(math.Round(kg*10) / 10) }
