//go:build !js

package main

import (
	"bufio"
	"flag"
	"fmt"
	"io"
	"os"
	"strconv"
	"time"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// week prints what the days that were written down ask of this week's water. With -days
// it takes rows of a sheet into the field first; with -file it prints the field's file
// with them instead.
func week(args []string, in io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("week", flag.ContinueOnError)
	flags.SetOutput(errs)
	us := flags.Bool("us", false, "US units, also of the sheet")
	day := flags.String("today", "", "the day to count from, year-month-day; without it this machine's")
	sheet := flags.String("days", "", "a file of daily rows under named columns, such as: date high low rain minutes")
	file := flags.Bool("file", false, "print the field's file with the days of the sheet in it")
	if flags.Parse(args) != nil {
		return 2
	}
	if flags.NArg() != 1 {
		fmt.Fprintln(errs, "Name one case file, or - for standard input.")
		return 2
	}
	system := unitsOf(*us)
	now := time.Now()
	today := unit.On(now.Year(), int(now.Month()), now.Day())
	if *day != "" {
		var err error
		if today, err = unit.ParseDate(*day); err != nil {
			fmt.Fprintf(errs, "-today %s: %v.\n", *day, err)
			return 2
		}
	}
	c, ground, err := caseWith(flags.Arg(0), *sheet, system, in)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	if *file {
		out.Write(casefile.Encode(&c))
		return 0
	}
	a, err := rules.AdviseOn(ground, c)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	w := bufio.NewWriter(out)
	defer w.Flush()
	if !writeWeek(w, &a, today, system) {
		fmt.Fprintf(errs, "There is no week to tell from %s: film is refused, no tape fits, or the day lies outside planting, %s, and the last water.\n", today, a.WaitPlan.PlantOn)
		return 1
	}
	return 0
}

// caseWith reads a case, and a sheet into it. The sheet is checked against the advice, whose
// soil year comes back for [rules.AdviseOn]; it is nil where no sheet was read.
func caseWith(name, sheet string, system unit.System, in io.Reader) (c field.Case, ground *facts.SoilYear, err error) {
	places, err := normals.Embedded()
	if err != nil {
		return c, nil, err
	}
	data, err := readCase(name, in)
	if err != nil {
		return c, nil, err
	}
	c, err = casefile.Decode(data, places)
	if err != nil || sheet == "" {
		return c, nil, err
	}
	text, err := os.ReadFile(sheet)
	if err != nil {
		return c, nil, err
	}
	rows, wrong := field.ReadSheet(string(text), system)
	if len(wrong) > 0 {
		return c, nil, wrong
	}
	if ground, err = facts.NewSoilYear(c); err != nil {
		return c, nil, err
	}
	a, err := rules.AdviseOn(ground, c)
	if err != nil {
		return c, nil, err
	}
	plan := a.WaterPlan()
	list := a.Shopping(&plan)
	if wrong := a.CheckSeason(&list, rows); len(wrong) > 0 {
		return c, nil, wrong
	}
	return c.WithDays(c.Days.With(rows), a.WaitPlan.LayOn, a.Facts.Film.Key()), ground, nil
}

// adviceWith is the advice of such a case.
func adviceWith(name, sheet string, system unit.System, in io.Reader) (a plan.Advice, err error) {
	c, ground, err := caseWith(name, sheet, system, in)
	if err != nil {
		return a, err
	}
	return rules.AdviseOn(ground, c)
}

// writeWeek prints the account and the seven days.
func writeWeek(w io.Writer, a *plan.Advice, today unit.Date, system unit.System) bool {
	water := a.WaterPlan()
	list := a.Shopping(&water)
	k, ok := a.ThisWeek(&water, &list, today)
	if !ok || len(k.Days) == 0 {
		return false
	}
	line := func(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }
	show := func(v any) string { return unit.Of(v).In(system) }
	first := &k.Days[0]
	switch {
	case first.Run > 0:
		line("Run each zone %s today, %s, in %s.", show(first.Run), first.On.In(system), unit.Count(first.Runs, "run", "runs").In(system))
	default:
		line("Nothing to run today, %s.", first.On.In(system))
	}
	if len(k.Days) > 1 {
		line("  %s a day over the %s that follow.", show(k.Mean), unit.Count(len(k.Days), "day", "days").In(system))
	}
	for _, says := range k.Says(a) {
		line("  %s", says.In(system))
	}
	if len(k.Turns) > 0 {
		line("\nValves, begun at six in the morning:")
		for i := range k.Turns {
			from, to := k.Turns[i].Clock()
			line("  zone %d, run %d: %s to %s", k.Turns[i].Zone, k.Turns[i].Run, from, to)
		}
	}
	writeDays(line, "Before", k.Before, system)
	writeDays(line, "Seven days", k.Days, system)
	line("\nFour weeks ahead, in usual weather:")
	for n := 1; n <= 4; n++ {
		on := today.Plus(unit.Days(7 * n))
		if next, ok := a.WaterWeekOf(&water, &list, on); ok {
			line("  from %s: %s", on.In(system), plan.RunWords(next.Every, next.Together).In(system))
		} else {
			line("  from %s: no water", on.In(system))
		}
	}
	if len(k.Due) > 0 {
		line("\nDue:")
		for i := range k.Due {
			line("  %s", k.Due[i].What.In(system))
		}
	}
	line("\nReadings: %s; %s. Use: FAO Irrigation and Drainage Paper 56, chapters 6 to 8.", plan.FeelSource.Named(), plan.TensionSource.Named())
	return true
}

func writeDays(line func(string, ...any), head string, days []plan.DayWater, system unit.System) {
	if len(days) == 0 {
		return
	}
	line("\n%s:", head)
	for i := range days {
		d := &days[i]
		air := "usual day"
		if d.Told {
			air = unit.Of(d.Low).In(system) + " to " + unit.Of(d.High).In(system)
		}
		run := "no water"
		if d.Run > 0 {
			run = unit.Of(d.Run).In(system)
			if d.Runs > 1 {
				run += " in " + strconv.Itoa(d.Runs) + " runs"
			}
		}
		if head == "Before" && !d.RunTold {
			run += ", as planned"
		}
		text := fmt.Sprintf("  %s: %s; crop uses %s; %s; %s left in the morning, %s in the evening", d.On, air, unit.Of(unit.FineDepth(d.Use)).In(system), run, unit.Of(d.Morning).In(system), unit.Of(d.Evening).In(system))
		if d.Got < 100 {
			text += fmt.Sprintf("; the crop gets %s of its use", unit.Of(d.Got).In(system))
		}
		line("%s.", text)
	}
}
