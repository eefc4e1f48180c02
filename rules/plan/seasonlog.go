package plan

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/unit"
)

// SeasonLog is what the days that were written down tell of a season: dates that came,
// and sums. Amounts picked are in the grower's own boxes or weight.
type SeasonLog struct {
	Planted, Bloom, First, Half, Last, Lifted unit.Optional[unit.Date]
	// Warm is the first of three readings in a row at or above Floor, the bed's own.
	Warm  unit.Optional[unit.Date]
	Floor unit.Celsius

	Picked, Hours, Paid, Rolls unit.Optional[float64]
	Torn                       unit.Optional[unit.Percent] // as it was told last
	// Ran are the minutes that each zone ran on the days on which they were written down;
	// Planned are those of the plan for the same days, in usual weather.
	Ran, Planned unit.Minutes

	Bed unit.Metres // of all beds; 0 is not known
}

// warmRun is how many readings in a row must hold the floor.
const warmRun = 3

// Log gathers the season's log; false where nothing of it was written down.
func (a *Advice) Log(p *WaterPlan, s *Shopping) (log SeasonLog, ok bool) {
	log = SeasonLog{Floor: a.Facts.WorkFloor, Bed: a.Facts.BedMetres}
	rows := a.Case.Days.Rows()
	stages := [...]*unit.Optional[unit.Date]{&log.Planted, &log.Bloom, &log.Lifted}
	sums := [...]struct {
		column field.DayColumn
		sum    *unit.Optional[float64]
	}{{field.DayPicked, &log.Picked}, {field.DayHours, &log.Hours}, {field.DayPaid, &log.Paid}, {field.DayRolls, &log.Rolls}}
	warm := 0
	var since unit.Date
	for i := range rows {
		row := &rows[i]
		for k := range sums {
			if v := row.Values[sums[k].column]; v.Given {
				*sums[k].sum = unit.Known(sums[k].sum.Value + v.Value)
				ok = true
			}
		}
		if v := row.Values[field.DayStage]; v.Given {
			if at := stages[int(v.Value)-1]; !at.Given {
				*at = unit.Known(row.On)
			}
			ok = true
		}
		if v := row.Values[field.DayTorn]; v.Given {
			log.Torn, ok = unit.Known(unit.Percent(v.Value)), true
		}
		if v := row.Values[field.DaySoil]; v.Given {
			if ok = true; unit.Celsius(v.Value) < log.Floor {
				warm = 0
			} else if warm++; warm == 1 {
				since = row.On
			}
			if warm == warmRun && !log.Warm.Given {
				log.Warm = unit.Known(since)
			}
		}
		if v := row.Values[field.DayPicked]; v.Given && v.Value > 0 {
			if !log.First.Given {
				log.First = unit.Known(row.On)
			}
			log.Last = unit.Known(row.On)
		}
		if v := row.Values[field.DayRun]; v.Given {
			if week, known := a.WaterWeekOf(p, s, row.On); known {
				log.Ran += unit.Minutes(v.Value)
				log.Planned += week.Run
			}
		}
	}
	picked := 0.0
	for i := range rows {
		if picked += rows[i].Values[field.DayPicked].Value; log.Picked.Value > 0 && picked >= log.Picked.Value/2 {
			log.Half = unit.Known(rows[i].On)
			break
		}
	}
	return log, ok
}

// Hundred is an amount for each [judge.BedShown]; false where the beds are not known.
func (l *SeasonLog) Hundred(amount unit.Optional[float64]) (unit.Quantity, bool) {
	return unit.Along(amount.Value / float64(l.Bed) * judge.BedShown.SI), amount.Given && l.Bed > 0
}

// LogLine is one figure of the log, as it is set beside another year's.
type LogLine struct{ What, Here, Before unit.Phrase }

// logFigures is how many figures a log may have.
const logFigures = 14

// figures are what the log tells, each in its place; what it does not tell has no text.
func (l *SeasonLog) figures() (list [logFigures]LogLine) {
	n := 0
	put := func(what unit.Phrase, told bool, says unit.Phrase) {
		if list[n].What = what; told {
			list[n].Here = says
		}
		n++
	}
	day := func(what string, on *unit.Optional[unit.Date]) {
		says := unit.Say("{}", unit.YearDay(on.Value))
		if l.Planted.Given && on.Value > l.Planted.Value {
			says = unit.Say("{}, {} after planting", unit.YearDay(on.Value), on.Value.Minus(l.Planted.Value))
		}
		put(unit.Say(what), on.Given, says)
	}
	day("Planted", &l.Planted)
	put(unit.Say("Soil {} and more, three readings in a row, from", l.Floor), l.Warm.Given, unit.Say("{}", unit.YearDay(l.Warm.Value)))
	for i, on := range [...]*unit.Optional[unit.Date]{&l.Bloom, &l.First, &l.Half, &l.Last} {
		day([...]string{"First bloom", "First picked", "Half of it picked by", "Last picked"}[i], on)
	}
	for i, sum := range [...]*unit.Optional[float64]{&l.Picked, &l.Hours, &l.Paid, &l.Rolls} {
		says := unit.Say("{}", sum.Value)
		if each, ok := l.Hundred(*sum); ok {
			says = unit.Say("{}; {} for each {} of bed", sum.Value, each, judge.BedShown)
		}
		put(unit.Say([...]string{"Picked", "Hours", "Money", "Rolls of film"}[i]), sum.Given, says)
	}
	put(unit.Say("Money for each box or weight"), l.Paid.Given && l.Picked.Value > 0, unit.Say("{}", l.Paid.Value/l.Picked.Value))
	put(unit.Say("Film torn or gone"), l.Torn.Given, unit.Say("{}", l.Torn.Value))
	put(unit.Say("Water run, of what the plan says for those days"), l.Planned > 0, unit.Say("{}", unit.PercentOf(float64(l.Ran/l.Planned))))
	day("Film lifted", &l.Lifted)
	return list
}

// Lines set the log beside an earlier field's, which may be nil. What neither tells is
// left out.
func (l *SeasonLog) Lines(before *SeasonLog) (lines []LogLine) {
	if before == nil {
		before = &SeasonLog{}
	}
	here, there := l.figures(), before.figures()
	for i, line := range here {
		if line.Before = there[i].Here; line.Here.Text == "" && line.Before.Text == "" {
			continue
		}
		for _, says := range [...]*unit.Phrase{&line.Here, &line.Before} {
			if says.Text == "" {
				*says = unit.Say("–")
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// Says sets the log beside the plan, the number first.
func (l *SeasonLog) Says(a *Advice) (says []unit.Phrase) {
	say := (*sayings)(&says).say
	if on := l.Planted; on.Given {
		switch late := on.Value.Minus(a.WaitPlan.PlantOn); {
		case late > 0:
			say("Planted {} after the plan’s {}.", late, unit.YearDay(a.WaitPlan.PlantOn))
		case late < 0:
			say("Planted {} before the plan’s {}.", -late, unit.YearDay(a.WaitPlan.PlantOn))
		default:
			say("Planted on the plan’s day.")
		}
		if l.First.Given {
			say("First picked {} after planting; lists say about {}.", l.First.Value.Minus(on.Value), a.Facts.CropDays)
		}
	}
	model := a.WaitPlan.WarmOn
	if probe := &a.Facts.Probe; probe.Given && !probe.Doubtful {
		say("Your thermometer read {} on {}, where the curve of a usual year said {}. The curve was moved there: {} of the difference stays with the place, the rest fades in about {}.",
			a.Case.Soil.Temperature.Value, unit.YearDay(a.Case.Soil.MeasuredOn.Value), probe.Expected, unit.PercentOf(heat.PlaceShare), unit.DaysOf(heat.FadeDays))
		if model.Given {
			say("By it the bed holds {} from {} on.", l.Floor, unit.YearDay(model.Value))
		}
	} else if probe.Given {
		say("Your thermometer read {} on {}, {} from the curve: too far to believe, so nothing was moved. Read again, in the shade.", a.Case.Soil.Temperature.Value, unit.YearDay(a.Case.Soil.MeasuredOn.Value), probe.Shift)
	} else if l.Warm.Given && model.Given {
		switch later := l.Warm.Value.Minus(model.Value); {
		case later > 0:
			say("Your bed held {} {} later than the usual year that we work out. Trust your thermometer.", l.Floor, later)
		case later < 0:
			say("Your bed held {} {} sooner than the usual year that we work out. Trust your thermometer.", l.Floor, -later)
		}
	}
	return says
}

// NextYear is the field a year later, with what this log taught. What belonged to one
// season alone is open again: days, readings, treatments, the laying day, film that lay.
func (l *SeasonLog) NextYear(c field.Case) field.Case {
	if c.PlantOn.Given {
		c.PlantOn.Value = yearLater(c.PlantOn.Value)
	}
	c.Past = field.PastCase{}
	if l.Warm.Given {
		_, month, day := l.Warm.Value.Civil()
		c.Past.WarmOn = unit.Known(field.MonthDay(100*month + day))
	}
	if l.Planned > 0 {
		c.Past.Water = unit.Known(math.Round(min(float64(100*l.Ran/l.Planned), mostRun)))
	}
	if l.Torn.Given {
		c.Past.Whole = unit.Known(100 - float64(l.Torn.Value))
	}
	c.Days, c.Day = "", field.DayCase{}
	c.Soil.Temperature, c.Soil.MeasuredOn = unit.Optional[unit.Celsius]{}, unit.Optional[unit.Date]{}
	c.Soil.MeasuredDepth, c.Soil.MeasuredHour, c.Soil.MeasuredUnder = unit.Optional[unit.Metres]{}, unit.Optional[float64]{}, ""
	p := &c.Practice
	p.FumigatedOn, p.LabelInterval = unit.Optional[unit.Date]{}, unit.Optional[float64]{}
	p.ReuseFilm, p.ReuseLaidOn, p.ReuseCover = "", unit.Optional[unit.Date]{}, unit.Optional[float64]{}
	p.ReuseHeight, p.ReuseThick = unit.Optional[unit.Metres]{}, unit.Optional[unit.Micrometres]{}
	return c
}

// mostRun is the most that a field keeps of water run, in percent of the plan.
const mostRun = 400

// yearLater is the same day of the next year; 28 February follows on the 29th.
func yearLater(on unit.Date) unit.Date {
	year, month, day := on.Civil()
	if next := unit.On(year+1, month, day); next <= unit.DateHigh {
		if _, m, _ := next.Civil(); m != month {
			return next.Plus(-1)
		}
		return next
	}
	return on
}

// Learned says what the field's last season taught, beside what is worked out.
func (a *Advice) Learned() (says []unit.Phrase) {
	say := (*sayings)(&says).say
	past := &a.Case.Past
	if past.WarmOn.Given {
		year, _, _ := a.WaitPlan.PlantOn.Civil()
		day := unit.YearDay(unit.On(year, int(past.WarmOn.Value)/100, int(past.WarmOn.Value)%100))
		if model := a.WaitPlan.WarmOn; model.Given {
			say("Last season this bed held its floor from {} on; for a usual year we work out {}. Put the thermometer in before either.", day, unit.YearDay(model.Value))
		} else {
			say("Last season this bed held its floor from {} on. Put the thermometer in before.", day)
		}
	}
	if past.Water.Given {
		say("Last season you ran {} of the plan’s water. If the crop did well, begin there, and let the probe decide.", unit.Percent(past.Water.Value))
	}
	if past.Whole.Given {
		say("Last season {} of the film came up whole.", unit.Percent(past.Whole.Value))
	}
	return says
}
