package plan

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
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

// Lines set the log beside an earlier field's, which may be nil. What neither tells is
// left out.
func (l *SeasonLog) Lines(before *SeasonLog) (lines []LogLine) {
	blank := unit.Say("–")
	line := func(what unit.Phrase, of func(*SeasonLog) (unit.Phrase, bool)) {
		here, one := of(l)
		there, two := blank, false
		if before != nil {
			there, two = of(before)
		}
		if !one {
			here = blank
		}
		if !two {
			there = blank
		}
		if one || two {
			lines = append(lines, LogLine{what, here, there})
		}
	}
	day := func(what string, on func(*SeasonLog) unit.Optional[unit.Date]) {
		line(unit.Say(what), func(k *SeasonLog) (unit.Phrase, bool) {
			d := on(k)
			if k.Planted.Given && d.Value > k.Planted.Value {
				return unit.Say("{}, {} after planting", unit.YearDay(d.Value), d.Value.Minus(k.Planted.Value)), d.Given
			}
			return unit.Say("{}", unit.YearDay(d.Value)), d.Given
		})
	}
	sum := func(what string, of func(*SeasonLog) unit.Optional[float64]) {
		line(unit.Say(what), func(k *SeasonLog) (unit.Phrase, bool) {
			v := of(k)
			if each, ok := k.Hundred(v); ok {
				return unit.Say("{}; {} for each {} of bed", v.Value, each, judge.BedShown), true
			}
			return unit.Say("{}", v.Value), v.Given
		})
	}
	day("Planted", func(k *SeasonLog) unit.Optional[unit.Date] { return k.Planted })
	line(unit.Say("Soil {} and more, three readings in a row, from", l.Floor), func(k *SeasonLog) (unit.Phrase, bool) {
		return unit.Say("{}", unit.YearDay(k.Warm.Value)), k.Warm.Given
	})
	day("First bloom", func(k *SeasonLog) unit.Optional[unit.Date] { return k.Bloom })
	day("First picked", func(k *SeasonLog) unit.Optional[unit.Date] { return k.First })
	day("Half of it picked by", func(k *SeasonLog) unit.Optional[unit.Date] { return k.Half })
	day("Last picked", func(k *SeasonLog) unit.Optional[unit.Date] { return k.Last })
	sum("Picked", func(k *SeasonLog) unit.Optional[float64] { return k.Picked })
	sum("Hours", func(k *SeasonLog) unit.Optional[float64] { return k.Hours })
	sum("Money", func(k *SeasonLog) unit.Optional[float64] { return k.Paid })
	line(unit.Say("Money for each box or weight"), func(k *SeasonLog) (unit.Phrase, bool) {
		return unit.Say("{}", k.Paid.Value/k.Picked.Value), k.Paid.Given && k.Picked.Value > 0
	})
	sum("Rolls of film", func(k *SeasonLog) unit.Optional[float64] { return k.Rolls })
	line(unit.Say("Film torn or gone"), func(k *SeasonLog) (unit.Phrase, bool) {
		return unit.Say("{}", k.Torn.Value), k.Torn.Given
	})
	line(unit.Say("Water run, of what the plan says for those days"), func(k *SeasonLog) (unit.Phrase, bool) {
		if k.Planned <= 0 {
			return blank, false
		}
		return unit.Say("{}", unit.PercentOf(float64(k.Ran/k.Planned))), true
	})
	day("Film lifted", func(k *SeasonLog) unit.Optional[unit.Date] { return k.Lifted })
	return lines
}

// Says sets the log beside the plan, the number first.
func (l *SeasonLog) Says(a *Advice) (says []unit.Phrase) {
	say := func(text string, values ...any) { says = append(says, unit.Say(text, values...)) }
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
	if model := a.WaitPlan.WarmOn; l.Warm.Given && model.Given {
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
	c.Soil.MeasuredDepth, c.Soil.MeasuredHour = unit.Optional[unit.Metres]{}, unit.Optional[float64]{}
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
	say := func(text string, values ...any) { says = append(says, unit.Say(text, values...)) }
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
