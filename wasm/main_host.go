//go:build !js

// Command wasm is Film & Furrow itself: compiled for the browser it is the
// page's program, compiled for the host it builds and serves the site and
// answers on the command line.
package main

import (
	"fmt"
	"io"
	"os"
	"strings"
)

// command is one word of the command line. run takes the arguments after the
// word and returns the exit code.
type command struct {
	name  string
	usage string
	run   func(args []string, in io.Reader, out, errs io.Writer) int
}

// commands are tried in order; with no word given the first one runs.
var commands = []command{
	{"serve", "serve [-addr localhost:8080] [-compress]: build the site and serve it on this machine", serve},
	{"build", "build [-out public] [-base /sub/path] [-site https://…] [-compress] [-untrimmed]: build the site as plain files", build},
	{"advise", "advise [-deep] [-text [-us]] CASE.json|-: print the advice for a case, with -deep all that would change it; advise -lines [-brief]: a case a line in, an advice (or the answers alone) or an error a line out", advise},
	{"week", "week [-us] [-today 2027-07-01] [-days SHEET.csv [-file]] CASE.json|-: print this week's water from the days that were written down, or take those of a sheet into the file", week},
	{"log", "log [-us] [-days SHEET.csv] CASE.json|- [EARLIER.json]: print what the days that were written down tell of the season, beside an earlier field's", seasonLog},
	{"season", "season [-us] CASE.json|-: print the dates of the year, and how the work goes on once the film lies", season},
	{"trial", "trial [-us] [-films black,silver] [-sheet] CASE.json: plan a strip trial of films on the beds of a field, or print its tally sheet; trial -read TALLY.csv: say what it showed", stripTrial},
	{"place", "place [-us] WORDS: find a town, a US zip, a station, or latitude and longitude, and the station nearest to it", place},
	{"explain", "explain TOPIC: print what a rule, crop, film or source says", explain},
}

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

func run(args []string, in io.Reader, out, errs io.Writer) int {
	if len(args) == 0 || strings.HasPrefix(args[0], "-addr") || strings.HasPrefix(args[0], "-compress") {
		return commands[0].run(args, in, out, errs)
	}
	args, name, err := languageOf(args)
	if err != nil {
		fmt.Fprintln(errs, err)
		return 2
	}
	if name != "" {
		say, err := sayerOf(name)
		if err != nil {
			fmt.Fprintln(errs, err)
			return 2
		}
		said, wrong := &speaker{to: out, say: say}, &speaker{to: errs, say: say}
		defer said.flush()
		defer wrong.flush()
		out, errs = said, wrong
	}
	for _, c := range commands {
		if c.name == args[0] {
			return c.run(args[1:], in, out, errs)
		}
	}
	fmt.Fprintln(errs, "Commands, each also with -lang es for what is read:")
	for _, c := range commands {
		fmt.Fprintln(errs, "  go run ./wasm", c.usage)
	}
	if args[0] == "help" || args[0] == "-h" || args[0] == "-help" || args[0] == "--help" {
		return 0
	}
	fmt.Fprintf(errs, "There is no command %q; take one of those above.\n", args[0])
	return 2
}
