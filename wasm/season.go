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

// season prints the year's dates, and how the work goes on once the film lies.
func season(args []string, in io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("season", flag.ContinueOnError)
	flags.SetOutput(errs)
	us := flags.Bool("us", false, "US units")
	if flags.Parse(args) != nil {
		return 2
	}
	if flags.NArg() != 1 {
		fmt.Fprintln(errs, "Name one case file, or - for standard input.")
		return 2
	}
	a, err := adviceWith(flags.Arg(0), "", unitsOf(*us), in)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	w := bufio.NewWriter(out)
	defer w.Flush()
	writeSeason(w, &a, unitsOf(*us))
	return 0
}

func writeSeason(w io.Writer, a *plan.Advice, system unit.System) {
	water := a.WaterPlan()
	list := a.Shopping(&water)
	steps := a.Season(&list)
	if len(steps) == 0 { // nothing is grown here then
		fmt.Fprintf(w, "%s.\n", unit.Capital(a.VerdictWords()))
		for _, instead := range a.Insteads() {
			fmt.Fprintf(w, "  %s %s\n", instead.What.In(system), instead.Why.In(system))
		}
	}
	for _, s := range steps {
		fmt.Fprintln(w, unit.Of(s.On).In(system))
		fmt.Fprintf(w, "  %s\n  %s\n", s.What.In(system), s.Why.In(system))
	}
	for _, line := range a.After(&list) {
		if line.From == "" {
			fmt.Fprintf(w, "\n%s\n", line.Says.In(system))
			continue
		}
		fmt.Fprintf(w, "  %s\n", line.Says.In(system))
	}
}
