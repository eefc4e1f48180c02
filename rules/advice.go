package rules

import (
	"slices"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Advice is all that the engine says of one case: plain data, to be shown.
type Advice struct {
	Case     Case // as read, with defaults filled
	Defaults []Default
	Facts    *Facts

	Verdict   Choice
	Gates     []Factor // what decided the verdict; empty where film may be laid
	Film      Choice
	Bed       Choice
	Surface   Choice
	Thickness Choice
	Tape      Choice
	Wait      Choice

	Shape    BedShape
	TapePlan TapePlan
	WaitPlan WaitPlan
	Water    WaterAnswer

	Cautions []Caution
	Limits   []Limit
	Disputes []Dispute       // where sources disagree, each side with its own
	Sources  []*table.Source // every source that the advice rests on

	bare *Facts // before any question was answered; nil but with AdviseAfter
}

// TapePlan is how the chosen tape lies in the bed.
type TapePlan struct {
	Tape   *table.Tape // nil where none fits
	Lines  int
	Depth  unit.Metres // below the film, emitters up
	Offset unit.Metres // from the plant line, for a single row
}

// WaitPlan is the wait in dates.
type WaitPlan struct {
	Days      unit.Days // from laying to planting
	LayOn     unit.Date
	PlantOn   unit.Date
	EarlyOn   Optional[unit.Date] // the bed holds the risky floor
	SafeOn    Optional[unit.Date] // the bed holds the safe floor
	Moved     unit.Days           // planting later than wanted
	WaitCosts unit.Phrase         // what waiting longer costs; empty where nothing
}

// WaterAnswer is how long to run the water.
type WaterAnswer struct {
	Start, Peak  unit.Millimetres // a day
	PeakLitres   unit.Litres      // for 100 m of bed a day
	StartMinutes unit.Minutes     // a day and zone
	PeakMinutes  unit.Minutes
	SingleRun    unit.Minutes // longest run before water passes the roots
	RunsADay     int          // at full leaf
	Zones        int          // 0 where the flow is unknown
	HoursADay    unit.Hours   // all zones, at full leaf; 0 where unknown
	HoursHad     unit.Hours
	Fits         bool
	Says         unit.Phrase
}

// Advise answers every question for one case. It is total on cases that pass
// [Check]; otherwise the error is a [FieldErrors] with all that is wrong.
//
// The questions are answered in the order of [Question], and each answer
// becomes a fact of the later ones: film, bed, surface, thickness, tape, wait.
//
// The soil's warmth takes most of the time: a caller that asks more than once
// of the same place, soil and bed keeps the [Ground] and calls [AdviseOn].
func Advise(c Case) (Advice, error) { return AdviseOn(nil, c) }

// AdviseOn is [Advise] with a ground that was dug before. A ground of another
// place or soil (or nil) is dug anew, so the advice is always the same.
func AdviseOn(g *Ground, c Case) (Advice, error) { return advise(nil, g, c) }

// AdviseAfter is [AdviseOn] for one who changes one thing at a time: what cannot
// differ from the advice before is taken over, and the lines of tape that were solved
// stay known. The advice is the same. There need be none before.
func AdviseAfter(before *Advice, g *Ground, c Case) (Advice, error) {
	if before == nil {
		before = &Advice{}
	}
	return advise(before, g, c)
}

func advise(before *Advice, g *Ground, c Case) (Advice, error) {
	if errs := Check(&c); len(errs) > 0 {
		return Advice{}, errs
	}
	filled, defaults := fill(c)
	if g == nil || g.Key != keyOf(&filled) {
		var err error
		if g, err = Dig(c); err != nil {
			return Advice{}, err
		}
	}
	var known *Facts
	if before != nil {
		known = before.bare
	}
	f, err := factsOf(filled, g, known)
	if err != nil {
		return Advice{}, placeError(err)
	}
	a := Advice{Case: filled, Defaults: defaults, Facts: f}
	if before != nil {
		a.bare = f.lending()
	}
	answer(f, func(c Choice) { *a.Choice(c.Question) = c })
	a.Shape = f.Bed
	_, tapeFits := a.Tape.Best()
	a.TapePlan = tapePlan(f, tapeFits)
	a.Wait.judgeWait(f)
	a.WaitPlan = waitPlan(f, &a.Wait)
	a.Water = waterAnswer(f, tapeFits)
	a.Gates = decided(&a.Verdict)
	a.Cautions = cautionsOf(f)
	a.Limits = limitsOf(f)
	a.Disputes = disputesOf(f)
	a.Sources = sourcesOf(&a)
	return a, nil
}

// decided lists the gates that forced the verdict: those that said no, or else
// those that asked for care.
func decided(v *Choice) []Factor {
	best, ok := v.Best()
	if !ok || best == Lay {
		return nil
	}
	refused := LayWithCare
	if best == LayWithCare {
		refused = Lay
	}
	for i := range v.Ranked {
		if v.Ranked[i].Option == refused {
			return v.Ranked[i].Factors
		}
	}
	return nil
}

// judgeWait says how far the longest wait is ahead of the next, in days.
func (c *Choice) judgeWait(f *Facts) {
	days := waits(f)
	first, second := days[c.Ranked[0].Option], days[c.Ranked[1].Option]
	c.Tied = false
	switch ahead := first - second; {
	case ahead <= 1:
		c.Confidence, c.Tied = Close, ahead == 0
	case ahead < 7:
		c.Confidence = Leaning
	default:
		c.Confidence = Clear
	}
	c.Lead = 0
	if first > 0 {
		c.Lead = round3(float64(first-second) / float64(first))
	}
}

func tapePlan(f *Facts, ok bool) TapePlan {
	p := TapePlan{Lines: f.Lines, Depth: unit.FromInches(2.5)}
	if ok {
		p.Tape = &table.Tapes[f.Tape]
	}
	if f.Rows == 1 {
		p.Offset = unit.FromInches(3)
	}
	return p
}

func waitPlan(f *Facts, c *Choice) WaitPlan {
	days := waits(f)
	w := WaitPlan{Days: days[c.Ranked[0].Option]}
	w.LayOn = f.Plant.Plus(-f.Lead)
	if w.Days < f.Lead {
		w.LayOn = f.Plant.Plus(-w.Days)
	}
	w.PlantOn = w.LayOn.Plus(w.Days)
	w.Moved = w.PlantOn.Minus(f.Plant)
	film := f.ChosenCover()
	if r := f.ReachEarly[film]; r != Never {
		w.EarlyOn = Known(f.Plant.Plus(r))
	}
	if r := f.ReachSafe[film]; r != Never {
		w.SafeOn = Known(f.Plant.Plus(r))
	}
	if f.Film != table.NoFilm && table.Films[f.Film].Removal != table.LiftAndHaul {
		w.WaitCosts = unit.Say("Each day that {} lies before planting is taken from its field life of about {}. Lay it late.", f.Film.Name(), daysOf(table.Films[f.Film].Life.Value))
	}
	return w
}

func waterAnswer(f *Facts, ok bool) WaterAnswer {
	s := &f.Sketch[f.Tape]
	w := WaterAnswer{Start: f.Start, Peak: f.Peak, PeakLitres: f.PeakLitres, HoursHad: s.Hours}
	if !ok {
		w.Says = unit.Say("No tape fits this source and these beds, so there is no run time to give.")
		return w
	}
	w.StartMinutes, w.PeakMinutes, w.SingleRun = s.FirstRun, s.PeakRun, s.Longest
	w.RunsADay, w.Zones, w.HoursADay = s.Runs, s.Zones, s.HoursADay.Value
	w.Fits = len(s.Stops) == 0
	switch {
	case !w.Fits:
		w.Says = unit.Phrase{Text: "It does not fit. " + s.Stops[0].Text, Quantities: s.Stops[0].Quantities}
	case w.Zones > 1:
		w.Says = unit.Say("{} a day at planting, {} a day at full leaf, for each of {} zones.", w.StartMinutes, w.PeakMinutes, w.Zones)
	case w.Zones == 1:
		w.Says = unit.Say("{} a day at planting, {} a day at full leaf, for all beds together.", w.StartMinutes, w.PeakMinutes)
	default:
		w.Says = unit.Say("{} a day at planting, {} a day at full leaf, for each zone.", w.StartMinutes, w.PeakMinutes)
	}
	return w
}

// sourcesOf gathers the sources of every factor, caution and figure that the
// advice shows, each once, in the order of the list.
func sourcesOf(a *Advice) []*table.Source {
	used := map[*table.Source]bool{&table.Normals: !a.Case.Place.Own}
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
func (a *Advice) Choice(q Question) *Choice {
	return [questionCount]*Choice{Verdict: &a.Verdict, FilmQuestion: &a.Film, BedQuestion: &a.Bed, SurfaceQuestion: &a.Surface,
		ThicknessQuestion: &a.Thickness, TapeQuestion: &a.Tape, WaitQuestion: &a.Wait}[q]
}

// Choices lists the seven answers in the order in which the page shows them.
func (a *Advice) Choices() [7]*Choice {
	return [7]*Choice{&a.Verdict, &a.Film, &a.Surface, &a.Thickness, &a.Bed, &a.Tape, &a.Wait}
}

// ThicknessChosen gives the thickness of the answer; false where the film is
// sold by weight or none fits.
func (a *Advice) ThicknessChosen() (unit.Micrometres, bool) {
	o, ok := a.Thickness.Best()
	if !ok || o == byWeight {
		return 0, false
	}
	return thicknesses[o], true
}

// Answers gives the choices alone.
func (a *Advice) Answers() (list Answers) {
	for _, c := range a.Choices() {
		o, ok := c.Best()
		if !ok {
			o = NoOption
		}
		list[c.Question] = o
	}
	return list
}
