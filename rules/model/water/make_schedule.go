package water

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/unit"
)

// schedule groups whole beds into zones and fits their runs into the day.
func (w *work) schedule() {
	in, t := &w.in, &w.plan.Tape
	w.supplySteps()
	if in.Supply == "none" || !in.Beds.Given || !in.Flow.Given || t.BedFlow <= 0 {
		return
	}
	sch := &Schedule{HoursGiven: in.hours}
	w.plan.Schedule = sch
	sch.BedsAtOnce = min(atOnce(w.usable(), t.BedFlow), in.Beds.Value)
	if sch.BedsAtOnce > 0 {
		if s := w.plan.Supply; s != nil {
			sch.Zones, s.zones = s.zones, nil
		} else {
			sch.Zones = w.zones(noHeader, divide(in.Beds.Value, sch.BedsAtOnce))
		}
	}
	w.step("beds-at-once", "Beds that run together",
		named("beds at once", sch.BedsAtOnce),
		named("tested flow", in.Flow.Value), named("usable share", in.usable), named("flow of one bed", t.BedFlow))
	if sch.BedsAtOnce == 0 {
		w.stop(ofSupply, unit.Say("Not even one bed can run: it takes {}, and {} is usable.", t.BedFlow, round(w.usable(), stepFlow)))
	}
	if w.peakGross <= 0 {
		return
	}
	for i := range sch.Zones {
		z := &sch.Zones[i]
		z.LitresADay = unit.Known(round(unit.Litres(w.peakGross*float64(in.BedLength.Value)*float64(z.Beds)), stepVolume))
	}
	run := w.peakRun()
	sch.Runs = soilwater.RunsADay(run, w.longest)
	sch.RunADay = unit.Known(round(run, stepMinutes))
	sch.EachRun = round(run/unit.Minutes(sch.Runs), stepMinutes)
	sch.LitresADay = unit.Known(round(unit.Litres(w.peakGross*float64(in.BedLength.Value)*float64(in.Beds.Value)), stepVolume))
	if len(sch.Zones) > 0 {
		hours := unit.Hours(float64(run) / 60 * float64(len(sch.Zones)))
		sch.HoursADay = unit.Known(round(hours, stepHours))
		sch.HoursAWeek = unit.Known(round(7*hours, stepHours))
		w.step("hours", "Hours a day",
			named("hours a day, all zones", sch.HoursADay.Value),
			named("run of one zone", sch.RunADay.Value),
			named("runs a day", sch.Runs),
			named("zones", len(sch.Zones)),
			named("gross need a day", per100m(w.peakGross)),
			named("flow of the bed", w.plan.Tape.Flow))
		if sch.HoursADay.Value > in.hours {
			w.stop(ofSupply, unit.Say("The day of peak use needs {} of running; you allow {}.", sch.HoursADay.Value, in.hours))
		}
	}
	w.tank()
	if t.FillMinutes > 0 && sch.EachRun < leastFills*t.FillMinutes {
		w.warn("short-runs", Note, "common practice, no source",
			unit.Say("A run of {} is short beside the {} that a line takes to fill: the near end gets more. Run less often, for longer.", sch.EachRun, t.FillMinutes))
	}
}

// tank sets a tank's content and refill against the zones.
func (w *work) tank() {
	in, sch, s := &w.in, w.plan.Schedule, w.plan.Supply
	if s == nil || !in.TankVolume.Given || !in.TankRefill.Given || len(sch.Zones) == 0 {
		return
	}
	k := &Tank{Refill: round(unit.Minutes(60*float64(in.TankVolume.Value)/float64(in.TankRefill.Value)), stepMinutes)}
	draw := sch.Zones[0].Flow
	if draw > in.TankRefill.Value {
		k.RunsDry = true
		k.UntilEmpty = round(unit.Minutes(60*float64(in.TankVolume.Value)/float64(draw-in.TankRefill.Value)), stepMinutes)
	}
	k.ADay = round(unit.Litres(24*float64(in.TankRefill.Value)), stepVolume)
	k.Enough = k.ADay >= sch.LitresADay.Value
	s.Tank = k
	if !k.Enough {
		w.stop(ofSupply, unit.Say("The tank refills by {} a day; the day of peak use takes {}.", k.ADay, sch.LitresADay.Value))
	} else if k.RunsDry && k.UntilEmpty < sch.EachRun {
		w.cares = append(w.cares, unit.Say("The tank is empty after {} of running, before the run of {} ends.", k.UntilEmpty, sch.EachRun))
		w.warn("tank-empties", Care, "arithmetic", unit.Say("Split each run: the tank lasts {} and takes {} to fill.", k.UntilEmpty, k.Refill))
	}
}
