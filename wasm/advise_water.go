//go:build !js

package main

import (
	"fmt"
	"io"
	"strings"

	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// waterText prints one water plan in one system of units.
type waterText struct {
	w      io.Writer
	advice *plan.Advice
	plan   *plan.WaterPlan
	system unit.System
}

// writeWater prints the whole water plan: whether it fits, month by month, then
// each part, and last how it was worked out.
func writeWater(w io.Writer, a *plan.Advice, system unit.System) {
	plan := a.WaterPlan()
	t := waterText{w, a, &plan, system}
	t.line("\nWater: %s", a.Water.Says.In(system))
	t.words()
	t.months()
	t.schedule()
	t.tape()
	t.soil()
	t.supply()
	t.quality()
	t.feeding()
	t.rest()
}

func (t waterText) line(format string, args ...any) { fmt.Fprintf(t.w, format+"\n", args...) }

// figure prints a name and its value; nothing where the value is the zero of
// its kind, which stands for unknown.
func (t waterText) figure(name string, value any) {
	if q := unit.Of(value); q.SI != 0 {
		t.line("    %s: %s", name, q.In(t.system))
	}
}

func (t waterText) show(v any) string { return unit.Of(v).In(t.system) }

func (t waterText) words() {
	p := t.plan
	t.line("  Water plan: %s.", p.Verdict)
	for _, because := range p.Because {
		t.line("    %s", because.In(t.system))
	}
	if !p.Chosen {
		t.line("    No tape fits; the plan is for the tape of least flow: %s.", p.Row.Name)
	}
	for i, way := range p.Remedies {
		t.line("    Way out %d: %s %s", i+1, way.Change.In(t.system), way.Result.In(t.system))
	}
	for _, warning := range p.Warnings {
		t.line("    %s: %s (%s)", warning.Severity, warning.Says.In(t.system), warning.Source)
	}
	for _, missing := range p.Missing {
		t.line("    Missing: %s; it would settle %s.", missing.Field, missing.Settles)
	}
}

func (t waterText) months() {
	d := t.plan.Demand
	if d == nil {
		return
	}
	t.line("  Month by month, means of a day:")
	for i := range d.Months {
		m := &d.Months[i]
		text := fmt.Sprintf("%s %d (%s): crop uses %s (%s to %s), net %s, to pump %s", unit.MonthName(m.Month), m.Year, t.show(m.Days), t.show(m.Use), t.show(m.UseLow), t.show(m.UseHigh), t.show(m.Net), t.show(m.Gross))
		if m.GrossCool.Given && m.GrossDry.Given {
			text += fmt.Sprintf(" (cool year %s, dry year %s)", t.show(m.GrossCool.Value), t.show(m.GrossDry.Value))
		}
		if m.AllBeds.Given {
			text += ", all beds " + t.show(m.AllBeds.Value)
		}
		if m.Run > 0 {
			text += fmt.Sprintf("; each zone runs %s", t.show(m.Run))
			switch {
			case m.Runs > 1:
				text += fmt.Sprintf(" as %d × %s", m.Runs, t.show(m.EachRun))
			case m.Interval > 1:
				text += fmt.Sprintf(", or %s every %s", t.show(m.Together), t.show(m.Interval))
			}
		}
		if m.HoursADay.Given {
			text += fmt.Sprintf("; all zones %s a day, %s a week", t.show(m.HoursADay.Value), t.show(m.HoursAWeek.Value))
		}
		text += fmt.Sprintf("; reference %s by Penman-Monteith, %s by Hargreaves", t.show(unit.FineDepth(m.Reference)), t.show(unit.FineDepth(t.plan.Hargreaves[m.Month-1])))
		t.line("    %s.", text)
	}
	t.line("    Day of peak use, %s: crop uses %s, to pump %s, in a field as uneven as old systems %s.", d.Peak.On.In(t.system), t.show(d.Peak.Use), t.show(d.Peak.Gross), t.show(d.Peak.GrossPoor))
	t.line("    Season of %s: as much to pump as %s on the whole field. Rain is not counted.", t.show(d.Season), t.show(d.InField))
}

func (t waterText) schedule() {
	s := t.plan.Schedule
	if s == nil {
		return
	}
	t.line("  Zones and schedule:")
	for i := range s.Zones {
		z := &s.Zones[i]
		text := fmt.Sprintf("Zone %d: beds %d to %d, %s", z.Number, z.FirstBed, z.LastBed, t.show(z.Flow))
		if z.FromSource > 0 {
			text += ", " + t.show(z.FromSource) + " of pipe to it"
		}
		if z.LitresADay.Given {
			text += ", " + t.show(z.LitresADay.Value) + " on the day of peak use"
		}
		t.line("    %s.", text)
	}
	if len(s.Zones) == 0 {
		t.line("    Not even one bed can run on this flow.")
		return
	}
	if s.RunADay.Given {
		t.line("    Each zone, day of peak use: %s in %d × %s. All zones: %s of your %s a day, %s a week, %s of water.",
			t.show(s.RunADay.Value), s.Runs, t.show(s.EachRun), t.show(s.HoursADay.Value), t.show(s.HoursGiven), t.show(s.HoursAWeek.Value), t.show(s.LitresADay.Value))
	}
	for _, turn := range t.plan.Turns {
		t.line("    Open zone %d from %s to %s after the first opening (run %d).", turn.Zone, t.show(turn.From), t.show(turn.To), turn.Run)
	}
}

func (t waterText) tape() {
	p := &t.plan.Tape
	t.line("  Along one bed:")
	t.figure("label flow of all lines", p.LabelFlow)
	t.figure("pressure at the inlet", p.Pressure)
	r := p.Profile
	if r == nil {
		return
	}
	points := make([]string, len(r.Points))
	for i, at := range r.Points {
		points[i] = t.show(at.Pressure) + " at " + t.show(at.From)
	}
	t.line("    pressure along a line: %s", strings.Join(points, ", "))
	t.line("    lowest pressure: %s at %s", t.show(r.Lowest), t.show(r.LowestAt))
	t.figure("spread of flow", unit.FineShare(p.Spread))
	t.figure("spread if fed from the middle", unit.FineShare(p.FromMiddle))
	if other := t.plan.OtherEnd; other.Given {
		t.figure("spread if fed from the upper end", unit.FineShare(other.Value))
	}
	t.figure("emission uniformity as designed (old fields measure 65–80 %)", unit.FineShare(p.Uniformity))
	t.figure("longest bed for the allowed spread", p.Longest.Length)
	t.figure("longest bed with tape of a larger bore", p.LongestLargeBore.Length)
	t.figure("flow of one bed", p.BedFlow)
	t.figure("water in the lines of a bed", p.Fill)
}

func (t waterText) soil() {
	s := t.plan.Soil
	if s == nil || s.Longest == 0 {
		return
	}
	t.line("  Soil:")
	t.line("    longest single run: %s; with the other published figures %s", t.show(s.Longest), t.show(unit.Between(s.LongestLow, s.LongestHigh)))
	t.figure("available water by Saxton and Rawls (2006)", unit.FineShare(100*s.Water.Available))
	if s.GuideHigh > 0 {
		t.line("    available water in field guides: %s to %s", t.show(unit.FineShare(100*s.GuideLow)), t.show(unit.FineShare(100*s.GuideHigh)))
	}
	t.figure("roots in the bed", unit.Short(s.Depth))
	t.figure("used between runs", unit.FineShare(100*s.Depletion))
	t.figure("wet strip", unit.Short(s.Strip.Width))
	t.figure("store", s.Store)
}

func (t waterText) supply() {
	f := t.plan.Filter
	t.line("  Source, header, pump, filter:")
	t.line("    filter: %d mesh (%d µm)", f.Mesh.Count, int(f.Mesh.Opening))
	if f.MediaFirst {
		t.line("    a media or disc filter ahead of it: open water carries algae")
	}
	if f.SandFirst {
		t.line("    a sand separator first if the well lifts sand")
	}
	s := t.plan.Supply
	if s == nil {
		return
	}
	t.figure("usable of the tested flow", s.Usable)
	for i := range s.Trials {
		trial := &s.Trials[i]
		state := "fits"
		if !trial.Fits {
			state = "too small"
		}
		t.line("    header of %s in: water at %s, %s", trial.Bore.Name, t.show(unit.WaterSpeed(trial.Velocity)), state)
	}
	t.figure("loss in header and main", s.HeaderLoss)
	t.figure("pressure needed at the source", s.Needs)
	if s.SourceGives.Given {
		t.figure("the source leaves at the tape", s.SourceGives.Value)
	}
	if s.HeadKnown && s.Total > 0 {
		head := func(m unit.Metres) string { return unit.Quantity{Kind: unit.KindHead, SI: float64(m)}.In(t.system) }
		h := &s.Head
		t.line("    total head: %s = lift %s + rise %s + pipe %s + filter %s + injector %s + tape %s", head(s.Total), head(h.Lift), head(h.Rise), head(h.Friction), head(h.Filter), head(h.Injector), head(h.Operating))
	}
	if s.PumpNeeded && s.HeadKnown {
		t.figure("pump, at its shaft", unit.PumpPower(s.ShaftPower))
	}
	if k := s.Tank; k != nil {
		t.figure("the tank refills in", k.Refill)
		t.figure("the tank gives at most, a day", k.ADay)
	}
	if g := s.Gravity; g != nil {
		t.figure("by height alone, at the tape", g.Pressure)
		t.figure("longest bed by height alone", g.Longest.Length)
	}
}

func (t waterText) quality() {
	q := &t.plan.Quality
	if len(q.Clogging) > 0 || q.Restriction != waterquality.Unknown {
		t.line("  Water test:")
	}
	for _, f := range q.Clogging {
		t.line("    clogging by %s: %s risk at %s (%s)", f.Clogger.Name, f.Hazard, strings.TrimSpace(fmt.Sprint(f.Value, " ", f.Clogger.Unit)), f.Clogger.Source)
	}
	if q.HardnessWord != "" {
		t.line("    hardness: %s", q.HardnessWord)
	}
	if q.Restriction != waterquality.Unknown {
		t.line("    salt, any crop: %s restriction; soil taking water in: %s risk (after FAO Paper 29)", q.Restriction, q.Infiltration)
	}
	if q.Yield.Given {
		t.line("    yield expected: %s; this crop stands %s without loss; %s must pass the roots", t.show(q.Yield.Value), t.show(q.MostSalt.Value), t.show(unit.FineShare(t.plan.Demand.Leaching)))
	}
	if q.NitrogenCredit.Given {
		b := t.advice.BaseFertiliser(t.plan)
		t.line("    nitrogen that comes with the water over the season: %s with beds %s apart; the feed is reckoned without it", t.show(b.Nutrients[plan.Nitrogen].Water), t.show(b.Centres))
	}
}

func (t waterText) feeding() {
	if f := t.plan.Feeding; f != nil {
		t.line("  Feeding, one day: nutrient %s, product %s, stock %s; inject %s into the largest zone, then %s of clean water.",
			t.show(unit.FineMass(f.Nutrient)), t.show(unit.FineMass(f.Product)), t.show(unit.FineVolume(f.Stock)), t.show(f.ZoneInject), t.show(f.Rinse))
	}
	if c := t.plan.Chlorine; c != nil {
		t.line("  Chlorine: inject %s into the largest zone for %s. Only where the label and local code allow it; never with acid.", t.show(unit.SmallFlow(c.Inject)), t.show(c.Wanted))
	}
}

func (t waterText) rest() {
	t.line("  Beside rules of the trade:")
	for i := range t.plan.Checks {
		c := &t.plan.Checks[i]
		state := "within"
		if !c.Agrees {
			state = "outside"
		}
		t.line("    %s: %s (%s)", state, c.Says.In(t.system), c.Source)
	}
	t.line("  The plan takes for granted:")
	for _, a := range t.plan.Assumed {
		t.line("    %s: %s (%s)", a.Field, a.Value.In(t.system), a.Source)
	}
	t.line("  Worked out so:")
	for i := range t.plan.Steps {
		s := &t.plan.Steps[i]
		inputs := make([]string, len(s.Inputs))
		for j, in := range s.Inputs {
			inputs[j] = in.Name + ": " + in.Quantity.In(t.system)
		}
		t.line("    %s: %s (%s)", s.Title, s.Formula, s.Source)
		t.line("      %s", strings.Join(inputs, "; "))
		t.line("      Result: %s: %s", s.Result.Name, s.Result.Quantity.In(t.system))
	}
	t.line("  Take care with water:")
	for _, c := range t.plan.Cautions {
		t.line("    %s Last word: %s.", c.Text, c.LastWord)
	}
}
