//go:build !js

package main

import (
	"fmt"
	"io"
	"strings"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// writeBefore prints what is done before the film goes down: the base fertiliser, and
// the row covers that win days.
func writeBefore(w io.Writer, a *plan.Advice, system unit.System) {
	line := func(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }
	water := a.WaterPlan()
	base := a.BaseFertiliser(&water)
	line("\nFertiliser before the film:")
	if base.Bare {
		line("  Film is not to be laid here. These sums are for bare ground.")
	}
	for _, s := range base.Says {
		line("  %s", s.In(system))
	}
	line("  Worked out:")
	for _, s := range base.Steps {
		line("    %s: %s = %s.", s.Title, s.Formula, s.Result.Quantity.In(system))
		inputs := make([]string, len(s.Inputs))
		for i, in := range s.Inputs {
			inputs[i] = in.Name + ": " + in.Quantity.In(system)
		}
		line("      %s [%s]", strings.Join(inputs, "; "), s.Source)
	}
	for _, c := range base.Cautions {
		line("  Take care: %s Last word: %s.", c.Text, c.LastWord)
	}
	writeSources(w, base.Sources)
	covers := a.Covers()
	if len(covers) == 0 {
		return
	}
	line("\nRow covers and low tunnels:")
	for i := range covers {
		for k, s := range covers[i].Says {
			indent := "    "
			if k == 0 {
				indent = "  "
			}
			line("%s%s", indent, s.In(system))
		}
	}
	writeSources(w, covers[0].Sources)
}

func writeSources(w io.Writer, list []*table.Source) {
	for _, s := range list {
		fmt.Fprintf(w, "  [%s] %s: %s, %s. %s. %s. %s\n", s.ID, s.Publisher, s.Title, s.Year, s.Where, s.Mark, s.Found())
	}
}
