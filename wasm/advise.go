//go:build !js

package main

import (
	"bufio"
	"flag"
	"fmt"
	"io"
	"os"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// advise prints the advice file of a case, or the same as a readable page. A
// wrong case gives one line for each bad field, and exit code 2.
func advise(args []string, in io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("advise", flag.ContinueOnError)
	flags.SetOutput(errs)
	text := flags.Bool("text", false, "print a readable page instead of the advice file")
	us := flags.Bool("us", false, "with -text: US units")
	deep := flags.Bool("deep", false, "search also the inputs that change the soil's warmth for what would change the answers, which takes seconds")
	many := flags.Bool("lines", false, "read one case a line from standard input and write one advice or one error a line")
	brief := flags.Bool("brief", false, "with -lines: the answers alone, without their reasons, at most 2 kB a line")
	if flags.Parse(args) != nil {
		return 2
	}
	if *many {
		encode := casefile.EncodeAdviceLine
		if *brief {
			encode = casefile.EncodeBrief
		}
		return adviseMany(flags.Args(), in, out, errs, encode)
	}
	if flags.NArg() != 1 {
		fmt.Fprintln(errs, "Name one case file, or - for standard input.")
		return 2
	}
	places, err := normals.Embedded()
	if err != nil {
		fmt.Fprintln(errs, err)
		return 1
	}
	data, err := readCase(flags.Arg(0), in)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	a, turner, err := adviceFor(data, places)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	seek(turner, *deep, errs)
	w := bufio.NewWriter(out)
	defer w.Flush()
	if *text {
		writeText(w, &a, turner.Points(), turner.Left(), unitsOf(*us))
		return 0
	}
	file, err := casefile.EncodeAdvice(&a, turner.Points(), turner.Left()...)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 1
	}
	w.Write(file)
	return 0
}

// adviseMany answers a whole table of cases.
func adviseMany(args []string, in io.Reader, out, errs io.Writer, encode encoding) int {
	if len(args) > 0 {
		fmt.Fprintln(errs, "-lines reads standard input; give no file.")
		return 2
	}
	places, err := normals.Embedded()
	if err == nil {
		err = adviseLines(in, out, places, encode)
	}
	if err != nil {
		fmt.Fprintln(errs, err)
		return 1
	}
	return 0
}

// unitsOf are the units that a command prints.
func unitsOf(us bool) unit.System {
	if us {
		return unit.US
	}
	return unit.Metric
}

// readCase reads a little more than the limit, so that a larger file is named
// as too large and never held whole.
func readCase(name string, in io.Reader) ([]byte, error) {
	if name == "-" {
		return io.ReadAll(io.LimitReader(in, casefile.MaxBytes+1))
	}
	file, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, casefile.MaxBytes+1))
}

// adviceFor gives the advice for a case file, and the search for what would change it.
func adviceFor(data []byte, places *normals.Table) (plan.Advice, *search.TurningSearch, error) {
	c, err := casefile.Decode(data, places)
	if err != nil {
		return plan.Advice{}, nil, err
	}
	ground, err := facts.NewSoilYear(c)
	if err != nil {
		return plan.Advice{}, nil, err
	}
	a, err := rules.AdviseOn(ground, c)
	if err != nil {
		return plan.Advice{}, nil, err
	}
	turner, _ := search.NewTurningSearch(ground, c, true)
	return a, turner, nil
}

// seek asks for what keeps the soil's warmth and, where deep, for all that changes
// it: each value of that needs a year of soil warmth of its own. It says how far it is.
// The first is shared among the processors, input by input.
func seek(turner *search.TurningSearch, deep bool, errs io.Writer) {
	var taken atomic.Int64
	next := func() int { return int(taken.Add(1)) - 1 }
	var wait sync.WaitGroup
	others := make([]*search.TurningSearch, runtime.GOMAXPROCS(0)-1)
	for i := range others {
		wait.Go(func() {
			others[i] = turner.Beside()
			near(others[i], next)
		})
	}
	near(turner, next)
	wait.Wait()
	turner.Gather(others...)
	all := len(turner.Left())
	for last := all; deep && !turner.Step(1); {
		if left := len(turner.Left()); left < last {
			last = left
			fmt.Fprintf(errs, "Searching what changes the soil's warmth: input %d of %d.\n", all-left, all)
		}
	}
}

func near(turner *search.TurningSearch, next func() int) {
	turner.Share(next)
	for !turner.Step(1) {
	}
}

// writeText prints the advice for reading: the number first, then the reasons.
func writeText(w io.Writer, a *plan.Advice, points []search.TurningPoint, left []*field.Input, system unit.System) {
	line := func(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }
	line("%s.", a.VerdictWords())
	for i := range a.Gates {
		line("  %s: %s [%s]", a.Gates[i].Rule.Title, a.Gates[i].Reason.In(system), sourceIDs(&a.Gates[i]))
	}
	for _, i := range a.Insteads() {
		line("  Instead: %s %s", i.What.In(system), i.Why.In(system))
	}
	if a.Refused() {
		line("\nIf you lay all the same:")
	}
	for _, c := range a.Choices() {
		if c.Question == question.Verdict {
			continue
		}
		o, ok := c.Best()
		answer := "none fits"
		if ok {
			answer = c.Question.Says(o).In(system)
		}
		line("\n%s: %s (%s answer)", c.Question, answer, c.Confidence)
		for i := range c.Ranked {
			r := &c.Ranked[i]
			state := fmt.Sprintf("%+.2f", r.Score)
			if r.RuledOutBy != nil {
				state = "ruled out"
			}
			line("  %s: %s", c.Question.Says(r.Option).In(system), state)
			for j := range r.Factors {
				f := &r.Factors[j]
				if f.RulesOut {
					line("    rules it out: %s [%s]", f.Reason.In(system), sourceIDs(f))
					continue
				}
				line("    %+.2f %s: %s [%s]", f.Points(), f.Rule.Weight, f.Reason.In(system), sourceIDs(f))
			}
		}
	}
	writeWater(w, a, system)
	writeBefore(w, a, system)
	if !a.Refused() {
		line("\n%s", a.DatesWords().In(system))
	}
	if w := &a.WaitPlan; w.Moved > 0 && w.Soonest.Given && w.Latest.Given && w.Soonest.Value != w.Latest.Value {
		line("In a warm spring you could plant on %s, in a cool one on %s.", w.Soonest.Value.In(system), w.Latest.Value.In(system))
	}
	for _, way := range a.CanBeDone() {
		line("  %s", way.In(system))
	}
	line("\nWhat would change it:")
	for i := range points {
		for _, q := range points[i].Changes() {
			line("  %s: %s", q, points[i].Says(q).In(system))
		}
	}
	if len(left) > 0 {
		names := make([]string, len(left))
		for i, in := range left {
			names[i] = in.Label
		}
		line("  Not searched, since each value of it needs soil warmth of its own: %s. -deep searches these too.", strings.Join(names, "; "))
	}
	line("\nWhere sources disagree:")
	for i := range a.Disputes {
		line("  %s", a.Disputes[i].About)
		for _, s := range a.Disputes[i].Sides {
			line("    %s [%s]", s.Says.In(system), s.Source.ID)
		}
	}
	line("\nTaken for granted:")
	for _, d := range a.Defaults {
		line("  %s: %s (%s)", d.Field, d.Used.In(system), d.Reason)
	}
	if learned := a.Learned(); len(learned) > 0 {
		line("\nFrom last season:")
		for _, says := range learned {
			line("  %s", says.In(system))
		}
	}
	line("\nTake care:")
	for i := range a.Cautions {
		line("  %s: %s Last word: %s.", a.Cautions[i].Step, a.Cautions[i].Text, a.Cautions[i].Defers)
	}
	line("\nNot known:")
	for _, l := range a.Limits {
		line("  %s", l.Text.In(system))
	}
	line("\nSources:")
	writeSources(w, a.Sources)
}

func sourceIDs(f *judge.Factor) string {
	ids := ""
	for i, s := range f.Rule.Sources {
		if i > 0 {
			ids += ", "
		}
		ids += s.ID
	}
	return ids
}
