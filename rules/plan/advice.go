package plan

import (
	"slices"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Advice is all that the engine says of one case: plain data, to be shown.
type Advice struct {
	Case     field.Case // as read, with defaults filled
	Defaults []field.Default
	Facts    *facts.Facts

	Verdict   judge.Choice
	Gates     []judge.Factor // what decided the verdict; empty where film may be laid
	Film      judge.Choice
	Bed       judge.Choice
	Surface   judge.Choice
	Thickness judge.Choice
	Tape      judge.Choice
	Wait      judge.Choice

	Shape    profile.Bed
	TapePlan TapePlan
	WaitPlan WaitPlan
	Water    WaterAnswer

	Cautions []judge.Caution
	Limits   []judge.Limit
	Disputes []judge.Dispute // where sources disagree, each side with its own
	Sources  []*table.Source // every source that the advice rests on

	// SoldMetric tells that film is bought where rolls are sold in round meters: the
	// length that stands in for a roll that nobody named is another one there.
	SoldMetric bool

	bare *facts.Facts // before any question was answered; nil but with AdviseAfter
}

// TapePlan is how the chosen tape lies in the bed.
type TapePlan struct {
	Tape     *table.Tape // nil where none fits
	Laterals int
	Depth    unit.Metres // below the film, emitters up
	Offset   unit.Metres // from the plant line; 0 for tape midway between rows
}

// WaitPlan is the wait in dates.
type WaitPlan struct {
	Days      unit.Days // from laying to planting
	LayOn     unit.Date
	PlantOn   unit.Date
	CoversOn  unit.Optional[unit.Date] // the bed holds the floor for planting under covers: see [facts.SoilMarks]
	WarmOn    unit.Optional[unit.Date] // the bed holds the floor that planting waits for
	Moved     unit.Days                // planting later than wanted
	Soonest   unit.Optional[unit.Date] // planting in a warm spring, where it is later than wanted
	Latest    unit.Optional[unit.Date] // and in a cool one
	WaitCosts unit.Phrase              // what waiting longer costs; empty where nothing
}

// WaterAnswer is how long to run the water.
type WaterAnswer struct {
	Start, Peak  unit.Millimetres // a day
	PeakLitres   unit.Litres      // for 100 m of bed a day
	StartMinutes unit.Minutes     // a day and zone: what the plants need
	StartEvery   unit.Days        // the same in runs that water a line evenly: every so many days
	StartRun     unit.Minutes
	MostEvery    unit.Days // the most that young plants may take under film, likewise
	MostRun      unit.Minutes
	PeakMinutes  unit.Minutes
	SingleRun    unit.Minutes // longest run before water passes the roots
	RunsADay     int          // at full leaf
	Zones        int          // 0 where the flow is unknown
	HoursADay    unit.Hours   // all zones, at full leaf; 0 where unknown
	HoursHad     unit.Hours
	Fits         bool
	Says         unit.Phrase
}

// Make answers every question for one case, on a soil year of its own or a given
// one, after an advice or none: see the door, package rules.
func Make(before *Advice, g *facts.SoilYear, c field.Case) (Advice, error) {
	if errs := field.Check(&c); len(errs) > 0 {
		return Advice{}, errs
	}
	filled, defaults := field.Fill(c)
	if g == nil || g.Key != facts.KeyOfFilled(&filled) {
		var err error
		if g, err = facts.NewSoilYear(c); err != nil {
			return Advice{}, err
		}
	}
	var known *facts.Facts
	if before != nil {
		known = before.bare
	}
	f := &facts.Facts{}
	if err := judge.Settle(f, filled, g, known); err != nil {
		return Advice{}, field.PlaceError(err)
	}
	a := Advice{Case: filled, Defaults: defaults, Facts: f}
	if before != nil {
		a.bare = f.Lending()
	}
	judge.Answer(f, func(c judge.Choice) { *a.Choice(c.Question) = c })
	if a.Refused() { // what is watered is bare ground
		f.Bare = true
		f.Irrigate()
	}
	a.Shape = f.Bed
	_, tapeFits := a.Tape.Best()
	a.TapePlan = tapePlan(f, tapeFits)
	a.Wait.JudgeWait(f)
	a.WaitPlan = waitPlan(f, &a.Wait)
	a.Water = waterAnswer(f, tapeFits)
	a.Gates = decided(&a.Verdict)
	a.Cautions = judge.CautionsFor(f)
	a.Limits = judge.Limits(f)
	a.Disputes = judge.Disputes(f)
	a.Sources = sourcesOf(&a)
	return a, nil
}

// decided lists the gates that forced the verdict: those that said no, or else
// those that asked for care.
func decided(v *judge.Choice) []judge.Factor {
	best, ok := v.Best()
	if !ok || best == question.Lay {
		return nil
	}
	refused := question.LayWithCare
	if best == question.LayWithCare {
		refused = question.Lay
	}
	for i := range v.Ranked {
		if v.Ranked[i].Option == refused {
			return v.Ranked[i].Factors
		}
	}
	return nil
}

// Tape lies so deep in the bed, and so far to the side of a lone row: common practice of
// the trade ([table.TapeOffset]).
const (
	tapeDepth  = unit.Metres(2.5 * unit.MetresPerInch)
	tapeOffset = unit.Metres(3 * unit.MetresPerInch)
)

func tapePlan(f *facts.Facts, ok bool) TapePlan {
	p := TapePlan{Laterals: f.Laterals, Depth: tapeDepth}
	if ok {
		p.Tape = &table.Tapes[f.Tape]
	}
	if f.Rows == 1 || f.Laterals == f.Rows { // no hole is punched over the tape
		p.Offset = tapeOffset
	}
	return p
}

func waitPlan(f *facts.Facts, c *judge.Choice) WaitPlan {
	w := WaitPlan{Days: f.Lead, PlantOn: f.Plant, Moved: f.Plant.Minus(f.Wanted)}
	if d := judge.Waits(f)[question.WaitMoisture]; d > w.Days {
		w.Days = d
	}
	w.LayOn = f.Plant.Plus(-w.Days)
	if treated := f.Case.Practice.FumigatedOn; treated.Given { // film goes over the treated ground at once
		w.LayOn = min(w.LayOn, treated.Value)
		w.Days = f.Plant.Minus(w.LayOn)
	}
	cooling := judge.Waits(f)[question.WaitCooling] > 0 // no spring decides
	from := f.Wanted
	if end, ok := judge.LabelEnds(&f.Case.Practice); ok {
		from = max(from, end)
	}
	if day, ok := f.Season.NextOpen(f.ChosenCover(), from, facts.WarmSpring); ok && w.Moved > 0 && !cooling {
		w.Soonest = unit.Known(day)
	}
	if day, ok := f.Season.NextOpen(f.ChosenCover(), from, facts.CoolSpring); ok && w.Moved > 0 && !cooling {
		w.Latest = unit.Known(day)
	}
	film := f.ChosenCover()
	if r := f.ReachCovers(film); r != facts.Never {
		w.CoversOn = unit.Known(f.Plant.Plus(r))
	}
	if r := f.ReachWork[film]; r != facts.Never {
		w.WarmOn = unit.Known(f.Plant.Plus(r))
	}
	if f.Film != table.NoFilm && table.Films[f.Film].Removal != table.LiftAndHaul {
		w.WaitCosts = unit.Say("Each day that {} lies before planting is taken from its field life of about {}. Lay it late.", f.Film.Name(), unit.DaysOf(table.Films[f.Film].Life.Value))
	}
	return w
}

func waterAnswer(f *facts.Facts, ok bool) WaterAnswer {
	s := &f.Sketch[f.Tape]
	w := WaterAnswer{Start: f.Start, Peak: f.Peak, PeakLitres: f.PeakLitres, HoursHad: s.Hours}
	if !ok {
		w.Says = unit.Say("No tape fits this source and these beds, so there is no run time to give.")
		return w
	}
	w.StartMinutes, w.PeakMinutes, w.SingleRun = s.FirstRun, s.PeakRun, s.Longest
	w.StartEvery, w.StartRun = s.FirstEvery, s.FirstTogether
	w.MostEvery, w.MostRun = s.MostEvery, s.MostTogether
	w.RunsADay, w.Zones, w.HoursADay = s.Runs, s.Zones, s.HoursADay.Value
	w.Fits = len(s.Stops) == 0
	switch {
	case !w.Fits:
		w.Says = unit.Phrase{Text: "It does not fit. " + s.Stops[0].Text, Quantities: s.Stops[0].Quantities}
	case w.Zones > 1:
		w.Says = unit.Say("{} at planting, {} a day at full leaf, for each of {} zones.", RunWords(w.StartEvery, w.StartRun), w.PeakMinutes, w.Zones)
	case w.Zones == 1:
		w.Says = unit.Say("{} at planting, {} a day at full leaf, for all beds together.", RunWords(w.StartEvery, w.StartRun), w.PeakMinutes)
	default:
		w.Says = unit.Say("{} at planting, {} a day at full leaf, for each zone.", RunWords(w.StartEvery, w.StartRun), w.PeakMinutes)
	}
	if most := RunWords(w.MostEvery, w.MostRun); w.Fits && most != RunWords(w.StartEvery, w.StartRun) {
		w.Says.Text += " Young plants may want up to {}: put your hand into the bed, what you feel decides."
		w.Says.Quantities = append(w.Says.Quantities, most)
	}
	return w
}

// FilmDown tells that film lies on the bed already: nothing is laid, formed or bought
// for it, and the crop goes into what is there.
func (a *Advice) FilmDown() bool { return a.Case.Practice.FilmDown() }

// VerdictWords is the verdict in words, also for film that lies already.
func (a *Advice) VerdictWords() string {
	best, _ := a.Verdict.Best()
	if a.FilmDown() {
		return [...]string{"Plant into the film that is down", "Plant into the film that is down, with care", "Do not plant into film here"}[best]
	}
	return question.Verdict.Says(best).Text
}

// DatesWords says when to lay and when to plant.
func (a *Advice) DatesWords() unit.Phrase {
	if a.FilmDown() {
		return unit.Say("The film is down. Plant on {}.", a.WaitPlan.PlantOn)
	}
	return unit.Say("Lay on {}, plant on {}.", a.WaitPlan.LayOn, a.WaitPlan.PlantOn)
}

// RunWords says how long to run and how often: 24 min every 3 days.
func RunWords(every unit.Days, run unit.Minutes) unit.Quantity {
	if every > 1 {
		return unit.Of(unit.Of(run).In(unit.Metric) + " every " + unit.Of(every).In(unit.Metric))
	}
	return unit.Of(unit.Of(run).In(unit.Metric) + " a day")
}

// sourcesOf gathers the sources of every factor, caution and figure that the
// advice shows, each once, in the order of the list.
func sourcesOf(a *Advice) []*table.Source {
	used := map[*table.Source]bool{&table.Normals: a.Case.Place.Older.Given && !a.Case.Place.Own, &table.NewerNormals: !a.Case.Place.Own && !a.Case.Place.IsOlder()}
	note := func(list []*table.Source) {
		for _, s := range list {
			used[s] = true
		}
	}
	for _, c := range a.Choices() {
		for i := range c.Ranked {
			for j := range c.Ranked[i].Factors {
				note(c.Ranked[i].Factors[j].Rule.Sources)
			}
		}
	}
	for i := range a.Cautions {
		note(a.Cautions[i].Sources)
	}
	for i := range a.Disputes {
		for _, s := range a.Disputes[i].Sides {
			used[s.Source] = true
		}
	}
	note([]*table.Source{&table.FAO56, &table.Saxton2006, a.Facts.Crop.KcMid.Source})
	list := make([]*table.Source, 0, len(used))
	for _, s := range table.Sources {
		if used[s] {
			list = append(list, s)
		}
	}
	return slices.Clip(list)
}

// Choice gives the answer of one question.
func (a *Advice) Choice(q question.Question) *judge.Choice {
	return [question.Count]*judge.Choice{question.Verdict: &a.Verdict, question.Film: &a.Film, question.Bed: &a.Bed, question.Surface: &a.Surface,
		question.Thickness: &a.Thickness, question.Tape: &a.Tape, question.Wait: &a.Wait}[q]
}

// Choices lists the seven answers in the order in which the page shows them.
func (a *Advice) Choices() [7]*judge.Choice {
	return [7]*judge.Choice{&a.Verdict, &a.Film, &a.Surface, &a.Thickness, &a.Bed, &a.Tape, &a.Wait}
}

// ThicknessChosen gives the thickness of the answer; false where the film is
// sold by weight or none fits.
func (a *Advice) ThicknessChosen() (unit.Micrometres, bool) {
	o, ok := a.Thickness.Best()
	if !ok || o == question.ByWeight {
		return 0, false
	}
	return question.Thicknesses[o], true
}

// Answers gives the choices alone.
func (a *Advice) Answers() (list question.Answers) {
	for _, c := range a.Choices() {
		o, ok := c.Best()
		if !ok {
			o = question.NoOption
		}
		list[c.Question] = o
	}
	return list
}
