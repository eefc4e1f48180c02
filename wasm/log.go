//go:build !js

package main

import (
	"bufio"
	"flag"
	"fmt"
	"io"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// seasonLog prints what the days that were written down tell of a season, and sets it
// beside an earlier field's. With -days it takes rows of a sheet first, as [week] does.
func seasonLog(args []string, in io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("log", flag.ContinueOnError)
	flags.SetOutput(errs)
	us := flags.Bool("us", false, "US units, also of the sheet")
	sheet := flags.String("days", "", "a file of daily rows under named columns, such as: date picked hours paid stage soil")
	if flags.Parse(args) != nil {
		return 2
	}
	if n := flags.NArg(); n != 1 && n != 2 {
		fmt.Fprintln(errs, "Name one case file, or - for standard input, and perhaps an earlier one.")
		return 2
	}
	system := unitsOf(*us)
	a, log, err := logOf(flags.Arg(0), *sheet, system, in)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	if log == nil {
		fmt.Fprintln(errs, "Nothing of the season is written down in this field: no stage, picking, hours, money, rolls, film or soil.")
		return 1
	}
	var before *plan.SeasonLog
	if flags.NArg() == 2 {
		if _, before, err = logOf(flags.Arg(1), "", system, in); err != nil {
			fmt.Fprintln(errs, err)
			return 2
		}
	}
	w := bufio.NewWriter(out)
	defer w.Flush()
	for _, says := range log.Says(a) {
		fmt.Fprintf(w, "%s\n", says.In(system))
	}
	for _, line := range log.Lines(before) {
		fmt.Fprintf(w, "%s: %s", line.What.In(system), line.Here.In(system))
		if before != nil {
			fmt.Fprintf(w, " (before: %s)", line.Before.In(system))
		}
		fmt.Fprintln(w)
	}
	return 0
}

// logOf reads a case and its log, which is nil where nothing was written down.
func logOf(name, sheet string, system unit.System, in io.Reader) (*plan.Advice, *plan.SeasonLog, error) {
	a, err := adviceWith(name, sheet, system, in)
	if err != nil {
		return nil, nil, err
	}
	water := a.WaterPlan()
	list := a.Shopping(&water)
	log, ok := a.Log(&water, &list)
	if !ok {
		return &a, nil, nil
	}
	return &a, &log, nil
}
