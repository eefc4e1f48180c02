package plan

import (
	"math"
	"strconv"

	"filmfurrow/rules/field"
	"filmfurrow/rules/model/balance"
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/unit"
)

// rainShare is the share of rain that counts for the roots under film: what falls into
// holes and creeps under the edge. No page of the trade gives one; it is an assumption.
const rainShare = 0.1

// Rain of less than a fifth of the day's reference evapotranspiration is lost the same
// day (FAO-56, chapter 8).
const lightRain = 0.2

const (
	meterApart   = 0.2  // of what the minutes say
	readingApart = 0.1  // of the water for roots
	seasonMargin = 31.0 // days
)

// DayWater is one day of the running account. Shares are of the water that the wetted
// soil holds for roots, 0–100.
type DayWater struct {
	On        unit.Date
	Told      bool // low and high were written down; otherwise the day is a usual one
	Low, High unit.Celsius
	Reference unit.Millimetres // evapotranspiration of grass
	Usual     unit.Millimetres // the same on a usual such day
	Use       unit.Millimetres // what the crop takes, on the ground that it draws on
	RunTold   bool             // minutes or meter were written down
	Run       unit.Minutes     // that each zone ran, or is to run
	Runs      int              // that it is given in, a day; 0 where none
	Morning   unit.Percent     // left, after what a reading said
	Evening   unit.Percent
	Got       unit.Percent // of its use that the crop got
}

// ThisWeek is the running account of the water in the bed, and what follows from it.
type ThisWeek struct {
	Today  unit.Date
	Since  unit.Date    // morning on which the account begins
	Full   bool         // it begins with a full bed, for want of a reading
	Stage  string       // the crop's stage in the terms of FAO-56
	Day    unit.Days    // after planting
	Before []DayWater   // from Since to yesterday
	Days   []DayWater   // seven from today, or as many as are watered
	Mean   unit.Minutes // that each zone runs a day, over Days
	Plan   WaterWeek    // of these days in usual weather
	Left   unit.Percent // this morning
	Least  unit.Percent // that the crop wants to keep on such a day
	// Departs is by how much the crop's use in the seven days departs from the usual one,
	// where some of them were told.
	Departs unit.Optional[unit.Percent]
	Last    unit.Optional[unit.Percent] // the same of the seven days before
	// Lasts is how long the water for roots lasts from this morning, without a drop; it is
	// at least that where Outlasts.
	Lasts    unit.Hours
	Outlasts bool
	Missed   DayWater // tomorrow, where nothing runs today
	Turns    []Turn   // today's openings of the valves, in order; none where there are more than a person follows
	Due      []SeasonStep
	Notes    []unit.Phrase
}

// firstOpening is when the first valve is opened in the morning, where a clock is told:
// common practice.
const firstOpening = unit.Minutes(6 * 60)

// Clock is when the valve is opened and closed, where the first is opened at six.
func (t *Turn) Clock() (from, to string) {
	return clock(firstOpening + t.From), clock(firstOpening + t.To)
}

func clock(minutes unit.Minutes) string {
	n := int(math.Round(float64(minutes))) % (24 * 60)
	text := strconv.Itoa(n/60) + ":"
	if n%60 < 10 {
		text += "0"
	}
	return text + strconv.Itoa(n%60)
}

// account is what the running account is worked out with.
type account struct {
	a      *Advice
	p      *WaterPlan
	in     water.Input
	season demand.Season
	zone   balance.Zone
	width  float64      // m of bed that is wetted
	flow   float64      // L/h for 1 m of bed
	kept   float64      // share of what is pumped that stays with the roots
	most   unit.Minutes // that a zone can run in a day
	rows   map[unit.Date]*field.DayRow
}

// ThisWeek keeps the account of the water in the bed from the days that were written down:
// the crop's use from their lows and highs, what really ran, and what was read in the soil;
// days of which nothing is known are usual ones and watered as planned. It then says what
// each of the seven days from today needs, so that the bed is full in the evening, and how
// long it lasts without. It is false where [Advice.WaterWeekOf] is.
//
// A reading takes the place of the running figure on the morning of its day. Of several on
// one day the driest counts; where they or the account disagree, a note says so.
func (a *Advice) ThisWeek(p *WaterPlan, s *Shopping, today unit.Date) (ThisWeek, bool) {
	soil := p.Plan.Soil
	week, ok := a.WaterWeekOf(p, s, today)
	if !ok || soil == nil || soil.Water.Available <= 0 || soil.Strip.Width <= 0 || soil.Depletion <= 0 {
		return ThisWeek{}, false
	}
	in := a.Facts.WaterInput()
	k := account{a: a, p: p, in: in, season: seasonOf(&in), width: float64(soil.Strip.Width), flow: float64(p.Plan.Tape.Flow) / 100,
		zone: balance.Zone{Holds: unit.Millimetres(1000 * soil.Water.Available * float64(soil.Depth)), Fraction: in.Depletion.Value},
		kept: 1 / demand.Gross(1, demand.UsualEfficiency, p.Plan.Demand.Leaching),
		most: 24 * 60, rows: map[unit.Date]*field.DayRow{}}
	if sch := p.Plan.Schedule; sch != nil && len(sch.Zones) > 0 {
		k.most = unit.Minutes(math.Floor(60 * float64(sch.HoursGiven) / float64(len(sch.Zones))))
	}
	end := min(a.LastWater(s), in.PlantOn.Plus(p.Plan.Demand.Season))
	w := ThisWeek{Today: today, Full: true, Plan: week, Day: today.Minus(in.PlantOn)}
	rows := a.Case.Days.Rows()
	outside := 0
	w.Since = max(today, in.PlantOn)
	for i := range rows {
		on := rows[i].On
		k.rows[on] = &rows[i]
		switch {
		case on < in.PlantOn.Plus(-seasonMargin) || on > end.Plus(seasonMargin):
			outside++
		case on >= in.PlantOn && on < w.Since:
			w.Since = on
		}
	}
	if outside > 0 {
		w.note("{} that were written down lie outside this field’s season, {} to {}, and do not count. Check their year.", unit.Count(outside, "day", "days"), in.PlantOn, end)
	}
	missing := unit.Millimetres(0)
	for on := w.Since; on < today; on = on.Plus(1) {
		var day DayWater
		day, missing = k.past(&w, on, missing)
		w.Before = append(w.Before, day)
	}
	missing = k.read(&w, today, missing)
	w.Left = k.share(missing)
	var dry []balance.Day
	begin := missing
	for day := range unit.Days(weekDays) {
		on := today.Plus(day)
		if on < in.PlantOn || on >= end {
			continue
		}
		d, b := k.day(on)
		if len(w.Days) == 0 {
			w.Stage = stageOf(&k.season.Crop, int(on.Minus(in.PlantOn)))
			w.Least = unit.Percent(math.Round(100 * (1 - float64(k.zone.Ready(b.Use)/k.zone.Holds))))
		}
		dry = append(dry, b)
		missing = k.fill(&d, b, missing)
		w.Days = append(w.Days, d)
		w.Mean += d.Run
	}
	w.Mean = unit.Minutes(math.Round(float64(w.Mean) / float64(max(1, len(w.Days)))))
	if sch := p.Plan.Schedule; sch != nil && len(w.Days) > 0 && w.Days[0].Runs > 0 {
		that := *sch
		that.Runs, that.EachRun = w.Days[0].Runs, w.Days[0].Run/unit.Minutes(w.Days[0].Runs)
		that.RunADay = unit.Known(w.Days[0].Run)
		w.Turns = turnsOf(&that)
	}
	for _, step := range a.Season(s) {
		last := step.On.Plus(max(step.Days, 1) - 1)
		if step.Weeks > 1 {
			last = step.On.Plus(unit.Days(weekDays * (step.Weeks - 1)))
		}
		if last >= today && step.On < today.Plus(weekDays) {
			w.Due = append(w.Due, step)
		}
	}
	w.Departs, w.Last = departs(w.Days), departs(w.Before[max(0, len(w.Before)-weekDays):])
	lasts, short := k.zone.Lasts(begin, dry)
	w.Lasts, w.Outlasts = unit.Hours(math.Round(24*lasts)), !short
	if len(dry) > 1 {
		d, b := k.day(today.Plus(1))
		step := k.zone.On(begin, dry[0])
		k.fill(&d, b, step.End)
		w.Missed = d
	}
	return w, true
}

func (w *ThisWeek) note(text string, values ...any) {
	w.Notes = append(w.Notes, unit.Say(text, values...))
}

func (k *account) share(missing unit.Millimetres) unit.Percent {
	return unit.Percent(math.Round(100 * (1 - float64(missing/k.zone.Holds))))
}

// day is what the crop takes on a day, without water.
func (k *account) day(on unit.Date) (DayWater, balance.Day) {
	_, month, _ := on.Civil()
	d := DayWater{On: on, Usual: k.in.Usual.Value[month-1], Got: 100}
	d.Reference = d.Usual
	row := k.rows[on]
	if row != nil && row.Values[field.DayLow].Given && row.Values[field.DayHigh].Given {
		d.Told, d.Low, d.High = true, unit.Celsius(row.Values[field.DayLow].Value), unit.Celsius(row.Values[field.DayHigh].Value)
		d.Reference = k.a.Facts.ReferenceOn(on, d.Low, d.High)
	}
	season := k.season
	season.Reference[month-1] = d.Reference
	need := season.On(int(on.Minus(k.in.PlantOn)))
	d.Use = need.Use
	b := balance.Day{Use: need.Use, Need: unit.Millimetres(need.PerMetre / k.width)}
	if row != nil {
		if rain := unit.Millimetres(row.Values[field.DayRain].Value); rain >= lightRain*d.Reference {
			b.Rain = rainShare * rain
		}
	}
	return d, b
}

// depth is what minutes of a zone bring to the roots, as a depth over the wetted strip.
func (k *account) depth(run unit.Minutes) unit.Millimetres {
	return unit.Millimetres(float64(run) / 60 * k.flow * k.kept / k.width)
}

// minutes is how long a zone must run for a depth.
func (k *account) minutes(depth unit.Millimetres) unit.Minutes {
	return unit.Minutes(float64(depth) * k.width / k.kept / k.flow * 60)
}

func (k *account) runs(run unit.Minutes, use unit.Millimetres) int {
	if run <= 0 {
		return 0
	}
	return soilwater.RunsADay(run, longestOn(k.p.Plan.Soil, &k.in, use))
}

// past enters a day that is over.
func (k *account) past(w *ThisWeek, on unit.Date, missing unit.Millimetres) (DayWater, unit.Millimetres) {
	missing = k.read(w, on, missing)
	d, b := k.day(on)
	if row := k.rows[on]; row != nil {
		ran, metered := row.Values[field.DayRun], k.metered(row)
		if ran.Given {
			d.Run, d.RunTold = unit.Minutes(ran.Value), true
		}
		if metered.Given {
			if apart := float64(metered.Value - d.Run); ran.Given && math.Abs(apart) > meterApart*float64(max(d.Run, metered.Value)) {
				what := "less came than the minutes say: look for clogged emitters, a dirty filter or low pressure"
				if apart > 0 {
					what = "more came than the minutes say: look for a cut tape or an open end"
				}
				w.note("{}: each zone ran {}, and the meter stands for {}: {}. The meter counts.", on, d.Run, unit.Minutes(math.Round(float64(metered.Value))), what)
			}
			d.Run, d.RunTold = metered.Value, true
		}
	}
	if !d.RunTold { // as planned
		d.Run = k.minutes(unit.Millimetres(k.season.On(int(on.Minus(k.in.PlantOn))).PerMetre / k.width))
	}
	b.Water = k.depth(d.Run)
	step := k.zone.On(missing, b)
	d.Run = unit.Minutes(math.Round(float64(d.Run)))
	d.Runs = k.runs(d.Run, b.Use)
	d.Morning, d.Evening, d.Got = k.share(step.Begin), k.share(step.End), unit.Percent(math.Round(100*step.Kept))
	return d, step.End
}

// metered is how long the zones would have to run for what the meter counted.
func (k *account) metered(row *field.DayRow) (run unit.Optional[unit.Minutes]) {
	litres := row.Values[field.DayMeter]
	length := float64(k.in.BedLength.Value) * float64(k.in.Beds.Value)
	if litres.Given && length > 0 {
		run = unit.Known(unit.Minutes(litres.Value / length / k.flow * 60))
	}
	return run
}

// fill gives a day that is to come as much as leaves the bed full in its evening: no more
// than the hours allow, and nothing while a line would be watered unevenly and the roots
// have enough.
func (k *account) fill(d *DayWater, b balance.Day, missing unit.Millimetres) unit.Millimetres {
	want := k.minutes(max(0, missing+b.Need-b.Rain))
	if want < water.LeastRun(k.p.Plan.Tape.FillMinutes) && missing+b.Need <= k.zone.Ready(b.Use) {
		want = 0
	}
	run := unit.Minutes(math.Round(float64(min(want, k.most))))
	b.Water = k.depth(run)
	step := k.zone.On(missing, b)
	d.Run, d.Runs = run, k.runs(run, b.Use)
	d.Morning, d.Evening, d.Got = k.share(step.Begin), k.share(step.End), unit.Percent(math.Round(100*step.Kept))
	return step.End
}

// read puts what the soil was found to hold on a morning in the place of the account.
func (k *account) read(w *ThisWeek, on unit.Date, missing unit.Millimetres) unit.Millimetres {
	row := k.rows[on]
	if row == nil {
		return missing
	}
	said := 1 - float64(missing/k.zone.Holds)
	driest, wettest := math.Inf(1), math.Inf(-1)
	enter := func(left float64) {
		driest, wettest = min(driest, left), max(wettest, left)
	}
	if v := row.Values[field.DayFeel]; v.Given {
		enter(feelLeft[int(v.Value)-1])
	}
	if v := row.Values[field.DayTension]; v.Given {
		enter(k.a.TensionLeft(v.Value))
		if v.Value > gaugeWorks {
			w.note("{}: a tensiometer works up to {} centibars; beyond, air may have got in. Fill it again.", on, gaugeWorks)
		}
	}
	if v := row.Values[field.DayMoisture]; v.Given {
		water := &k.p.Plan.Soil.Water
		enter(min(1, max(0, (v.Value/100-water.WiltingPoint)/water.Available)))
	}
	if driest > wettest {
		return missing
	}
	if wettest-driest > readingApart {
		w.note("{}: the readings disagree, {} to {} of the water for roots. The driest counts; read again in three places.", on, unit.Percent(math.Round(100*driest)), unit.Percent(math.Round(100*wettest)))
	}
	if begun := on > w.Since; begun && math.Abs(driest-said) > readingApart {
		w.note("{}: the account said {} left, the soil says {}. The soil counts.", on, unit.Percent(math.Round(100*said)), unit.Percent(math.Round(100*driest)))
	} else if !begun {
		w.Full = false
	}
	return k.zone.Holds * unit.Millimetres(1-driest)
}

// departs compares the crop's use with the usual one, where some day was told.
func departs(days []DayWater) (share unit.Optional[unit.Percent]) {
	told, is, usual := false, 0.0, 0.0
	for i := range days {
		d := &days[i]
		told = told || d.Told
		is += float64(d.Use)
		if d.Reference > 0 {
			usual += float64(d.Use * d.Usual / d.Reference)
		}
	}
	if told && usual > 0 {
		share = unit.Known(unit.Percent(math.Round(100 * (is/usual - 1))))
	}
	return share
}

// stages are the stages of a crop in the terms of FAO-56.
var stages = [...]string{"initial", "crop development", "mid-season", "late season"}

func stageOf(c *demand.Crop, day int) string {
	for i, days := range c.Stages {
		if day -= int(days); day < 0 {
			return stages[i]
		}
	}
	return stages[len(stages)-1]
}

// CheckSeason refuses days that lie outside the season of this field, such as those of
// another year.
func (a *Advice) CheckSeason(s *Shopping, rows []field.DayRow) (errs field.Errors) {
	first, last := a.WaitPlan.PlantOn.Plus(-seasonMargin), a.LastWater(s).Plus(seasonMargin)
	for i := range rows {
		if on := rows[i].On; on < first || on > last {
			errs = append(errs, field.Error{Field: "days " + on.String(), Value: on.String(), Allowed: first.String() + " to " + last.String(), Mend: "These days are not of this field’s season. Check the year, or the planting day."})
			break // one sentence for a pasted month
		}
	}
	return errs
}

// Says tells the account in sentences, the number first.
func (w *ThisWeek) Says(a *Advice) (says []unit.Phrase) {
	say := (*sayings)(&says).say
	begins := "It begins full on the morning of {}."
	if !w.Full {
		begins = "It begins with the reading of {}."
	}
	say("About {} of the water for roots is left this morning; {} is the least for {}. "+begins, w.Left, w.Least, a.Facts.Crop.Name, w.Since)
	if len(w.Days) > 0 && (w.Plan.Every > 1 || w.Days[0].Run != w.Plan.Run) {
		say("The plan says {} for this week: that is its mean in usual weather. Today’s {} fill the bed for today’s use and what is missing.", RunWords(w.Plan.Every, w.Plan.Together), w.Days[0].Run)
	}
	say("It is day {} after planting, in the stage “{}”.", int(w.Day), w.Stage)
	compare := func(share unit.Optional[unit.Percent], when string) {
		switch {
		case !share.Given:
		case share.Value > 0:
			say(when+" {} more than in usual weather.", share.Value)
		case share.Value < 0:
			say(when+" {} less than in usual weather.", -share.Value)
		default:
			say(when + " as much as in usual weather.")
		}
	}
	compare(w.Last, "In the last days the crop used")
	compare(w.Departs, "In these seven days it uses")
	switch {
	case w.Outlasts:
		say("Without a drop it lasts {} and more.", unit.Count(len(w.Days), "day", "days"))
	case w.Lasts < 1:
		say("It does not last the day: roots run short from the morning on.")
	default:
		say("If the pump stands still from this morning, roots run short after about {}.", w.Lasts)
	}
	if w.Missed.Run > 0 && len(w.Days) > 1 {
		say("After a day missed, run each zone {} tomorrow, in {}, in place of {}.", w.Missed.Run, unit.Count(w.Missed.Runs, "run", "runs"), w.Days[1].Run)
	}
	if len(w.Before) > 0 {
		told := 0
		for i := range w.Before {
			if w.Before[i].RunTold {
				told++
			}
		}
		if told < len(w.Before) {
			say("For {} before today no minutes were written down; the plan’s are taken as run.", unit.Count(len(w.Before)-told, "day", "days"))
		}
	}
	return append(says, w.Notes...)
}
