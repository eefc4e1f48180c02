//go:build !js

package main

import (
	"bufio"
	"encoding/csv"
	"flag"
	"fmt"
	"io"
	"os"
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/trial"
	"filmfurrow/rules/unit"
)

// stripTrial plans a trial of films on a field's own beds, prints its tally sheet, or reads
// one that was filled in.
func stripTrial(args []string, in io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("trial", flag.ContinueOnError)
	flags.SetOutput(errs)
	us := flags.Bool("us", false, "US units")
	films := flags.String("films", "", "two to four films by their ids, such as black,silver; without it the two best ranked")
	sheet := flags.Bool("sheet", false, "print the tally sheet alone, as a table for a spreadsheet")
	tally := flags.String("read", "", "a tally sheet that was filled in, to be analysed")
	if flags.Parse(args) != nil {
		return 2
	}
	w := bufio.NewWriter(out)
	defer w.Flush()
	if *tally != "" {
		if err := readTally(w, *tally); err != nil {
			fmt.Fprintln(errs, err)
			return 2
		}
		return 0
	}
	if flags.NArg() != 1 {
		fmt.Fprintln(errs, "Name one case file, or - for standard input; or give -read a tally sheet.")
		return 2
	}
	system := unitsOf(*us)
	c, _, err := caseWith(flags.Arg(0), "", system, in)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	a, err := rules.Advise(c)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	if err := planTrial(w, &a, *films, *sheet, system); err != nil {
		fmt.Fprintln(errs, err)
		return 1
	}
	return 0
}

// waysOf are the films that are compared.
func waysOf(a *plan.Advice, ids string) (films []table.FilmID, err error) {
	ways := rules.Ways(a)
	if ids == "" {
		return ways[:min(len(ways), trial.LeastWays)], nil
	}
	for _, id := range strings.Split(ids, ",") {
		film, known := table.FilmByID(strings.TrimSpace(id))
		switch {
		case !known:
			return nil, fmt.Errorf("there is no film %q; see explain films", id)
		case len(ways) > 0 && !slices.Contains(ways, film):
			return nil, fmt.Errorf("%s is ruled out for this field; advise tells why", table.Films[film].Name)
		case slices.Contains(films, film):
			return nil, fmt.Errorf("%s is named twice", table.Films[film].Name)
		}
		films = append(films, film)
	}
	return films, nil
}

func planTrial(w io.Writer, a *plan.Advice, ids string, sheet bool, system unit.System) error {
	films, err := waysOf(a, ids)
	if err != nil {
		return err
	}
	t, err := rules.TryFilms(a, films)
	if err != nil {
		return err
	}
	l := &t.Layout
	names := make([]string, len(films))
	for i, film := range films {
		names[i] = table.Films[film].ID
	}
	show := func(v any) string { return unit.Of(v).In(system) }
	if sheet {
		c := csv.NewWriter(w)
		c.Write([]string{"block", "bed", "part", "way", "from", "to", "first picking", "picking 2", "picking 3", "picking 4", "picking 5", "picking 6"})
		for _, p := range l.Plots {
			c.Write([]string{strconv.Itoa(p.Block), strconv.Itoa(p.Bed), strconv.Itoa(p.Reach), names[p.Way], show(unit.Metres(p.From)), show(unit.Metres(p.To)), "", "", "", "", "", ""})
		}
		c.Flush()
		return c.Error()
	}
	line := func(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }
	line("A trial of %s in %s.", strings.Join(names, ", "), unit.Count(l.Blocks, "block", "blocks").In(system))
	for _, says := range t.Says() {
		line("  %s", says.In(system))
	}
	if ids == "" {
		line("  The films are the two that rank first for this field; -films chooses others.")
	}
	line("\nWhat goes where, in an order of chance:")
	for i, p := range l.Plots {
		if i == 0 || l.Plots[i-1].Block != p.Block {
			line("  Block %d:", p.Block)
		}
		part := ""
		if l.Reaches > 1 {
			part = fmt.Sprintf(", part %d", p.Reach)
		}
		line("    bed %d%s: %s; tally from %s to %s from the header", p.Bed, part, names[p.Way], show(unit.Metres(p.From)), show(unit.Metres(p.To)))
	}
	line("\nTake care:")
	for i := range a.Cautions {
		if c := &a.Cautions[i]; c.Step == judge.StepLaying || c.Step == judge.StepLifting {
			line("  %s: %s Last word: %s.", c.Step, c.Text, c.Defers)
		}
	}
	return nil
}

// readTally analyses a filled sheet: columns block and way, and any number of pickings,
// which are added up. A block that lacks a way is left out.
func readTally(w io.Writer, name string) error {
	file, err := os.Open(name)
	if err != nil {
		return err
	}
	defer file.Close()
	rows, err := csv.NewReader(io.LimitReader(file, 1<<20)).ReadAll()
	if err != nil {
		return err
	}
	if len(rows) < 2 {
		return fmt.Errorf("%s: no rows. Write a line with the names of the columns and a line for each plot", name)
	}
	head := rows[0]
	block, way := slices.Index(head, "block"), slices.Index(head, "way")
	if block < 0 || way < 0 {
		return fmt.Errorf("%s: the first line lacks block or way. It names the columns: block, way and the pickings", name)
	}
	where := map[string]bool{"block": true, "bed": true, "part": true, "way": true, "from": true, "to": true}
	var blocks, ways []string
	sums := map[[2]string]float64{}
	for i, row := range rows[1:] {
		key := [2]string{row[block], row[way]}
		given := false
		for c, cell := range row {
			if where[head[c]] || strings.TrimSpace(cell) == "" {
				continue
			}
			v, err := unit.KindNumber.Read(cell, unit.Metric)
			if err != nil || v < 0 {
				return fmt.Errorf("%s, line %d, %s: %q is not allowed. Allowed: a plain number of 0 or more. Leave the cell empty where nothing was picked", name, i+2, head[c], cell)
			}
			sums[key] += v
			given = true
		}
		if !given {
			continue
		}
		if !slices.Contains(blocks, key[0]) {
			blocks = append(blocks, key[0])
		}
		if !slices.Contains(ways, key[1]) {
			ways = append(ways, key[1])
		}
	}
	slices.Sort(ways)
	if len(ways) > trial.MostWays {
		return fmt.Errorf("%s: %d ways, %s. Allowed: two to four. Check their spelling", name, len(ways), strings.Join(ways, ", "))
	}
	line := func(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }
	var yield [][]float64
	for _, b := range blocks {
		row := make([]float64, len(ways))
		whole := true
		for i, name := range ways {
			v, ok := sums[[2]string{b, name}]
			row[i], whole = v, whole && ok
		}
		if !whole {
			line("Block %s lacks a way and is left out.", b)
			continue
		}
		yield = append(yield, row)
	}
	a, ok := trial.Read(yield)
	if !ok {
		return fmt.Errorf("%s: fewer than two whole blocks of two ways, or all plots alike. One strip of each shows nothing", name)
	}
	for _, says := range a.Says(ways) {
		line("%s", says.In(unit.Metric))
	}
	line("\nMeans of a plot:")
	for i, name := range ways {
		line("  %-20s %.4g", name, a.Means[i])
	}
	line("\nRandomized complete blocks, analysis of variance:")
	line("  %-8s %4s %14s %10s %8s", "", "df", "sum of squares", "F", "chance")
	line("  %-8s %4.0f %14.6g %10.4g %8.4f", "blocks", a.FreeBlock, a.SumBlock, a.FBlock, a.ChanceBlock)
	line("  %-8s %4.0f %14.6g %10.4g %8.4f", "ways", a.FreeWay, a.SumWay, a.F, a.Chance)
	line("  %-8s %4.0f %14.6g", "error", a.FreeError, a.SumError)
	how := "a sample of 20,000 deals"
	if a.Exact {
		how = "all deals"
	}
	line("  permutation within blocks, %s: %.4f; plots of a block differ by %.1f %%; least significant difference %.4g", how, a.Permutation, 100*a.Variation, a.Least)
	line("\nPaired differences:")
	for _, p := range a.Pairs {
		line("  %s less %s: %.4g (95 of 100: %.4g to %.4g), t %.3f, chance %.4f", ways[p.B], ways[p.A], p.Difference, p.Low, p.High, p.T, p.Chance)
	}
	return nil
}
