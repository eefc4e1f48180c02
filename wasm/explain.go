//go:build !js

package main

import (
	"bufio"
	"fmt"
	"io"

	"filmfurrow/rules"
	"filmfurrow/rules/table"
)

// explain prints what a rule, film, crop, soil, tape, input or source says,
// from the tables themselves, so that it cannot go stale.
func explain(args []string, _ io.Reader, out, errs io.Writer) int {
	w := bufio.NewWriter(out)
	defer w.Flush()
	if len(args) != 1 {
		fmt.Fprintln(errs, "Name one topic: rules, crops, films, soils, tapes, inputs, sources, cautions, or the id of one of them.")
		return 2
	}
	topic := args[0]
	if list, ok := lists[topic]; ok {
		list(w)
		return 0
	}
	if describe(w, topic) {
		return 0
	}
	fmt.Fprintf(errs, "There is no topic %q. Try rules, crops, films, soils, tapes, inputs, sources or cautions.\n", topic)
	return 2
}

var lists = map[string]func(io.Writer){
	"rules": func(w io.Writer) {
		for q := range rules.WaitQuestion + 1 {
			fmt.Fprintf(w, "%s\n", q)
			for _, r := range rules.Rules(q) {
				fmt.Fprintf(w, "  %-28s %s\n", r.ID, r.Title)
			}
		}
	},
	"crops": func(w io.Writer) {
		for i := range table.Crops {
			fmt.Fprintf(w, "%-20s %s (%s)\n", table.Crops[i].ID, table.Crops[i].Name, table.Crops[i].Group)
		}
	},
	"films": func(w io.Writer) {
		for i := range table.Films {
			fmt.Fprintf(w, "%-22s %s\n", table.Films[i].ID, table.Films[i].Name)
		}
	},
	"soils": func(w io.Writer) {
		for i := range table.Soils {
			fmt.Fprintf(w, "%-18s %s\n", table.Soils[i].ID, table.Soils[i].Name)
		}
	},
	"tapes": func(w io.Writer) {
		for i := range table.Tapes {
			fmt.Fprintf(w, "%-16s %s\n", table.Tapes[i].ID, table.Tapes[i].Name)
		}
	},
	"inputs": func(w io.Writer) {
		for i := range rules.Inputs {
			fmt.Fprintf(w, "%-30s %s: %s\n", rules.Inputs[i].Name, rules.Inputs[i].Label, rules.Inputs[i].Allowed())
		}
	},
	"sources": func(w io.Writer) {
		for _, s := range table.Sources {
			writeSource(w, s)
		}
	},
	"cautions": func(w io.Writer) {
		for _, c := range rules.Cautions() {
			fmt.Fprintf(w, "%-18s %s: %s Last word: %s.\n", c.ID, c.Step, c.Text, c.Defers)
		}
	},
}

func writeSource(w io.Writer, s *table.Source) {
	fmt.Fprintf(w, "[%s] %s: %s, %s. %s. %s.\n", s.ID, s.Publisher, s.Title, s.Year, s.Where, s.Mark)
}

func describe(w io.Writer, id string) bool {
	found := false
	for q := range rules.WaitQuestion + 1 {
		for _, r := range rules.Rules(q) {
			if r.ID == id {
				found = true
				fmt.Fprintf(w, "%s\n%s\nSpeaks to: %s. Weight: %s, our judgement. %s\nFires in: testdata/cases/%s.json\nSources:\n", r.ID, r.Title, q, r.Weight, r.Because, r.Fires)
				for _, s := range r.Sources {
					writeSource(w, s)
				}
			}
		}
	}
	if c := table.CropByID(id); c != nil {
		found = true
		describeCrop(w, c)
	}
	if film, ok := table.FilmByID(id); ok {
		found = true
		describeFilm(w, &table.Films[film])
	}
	if s := table.SoilByID(id); s != nil {
		found = true
		fmt.Fprintf(w, "%s\nsand %.0f %%, clay %.0f %%\n", s.Name, s.Sand*100, s.Clay*100)
		soil := rules.HeatSoil(s)
		fmt.Fprintf(w, "  for soil warmth, worked out from these: %.4g t/m³; water %.4g, %.4g and %.4g of the volume when dry, moist and wet\n",
			soil.Density, soil.Dry, soil.Moist, soil.Wet)
		figure(w, "water held, mm for each m", s.WaterHeld, "")
		figure(w, "water held by field guides, mm for each m", s.Guide, "")
		figure(w, "wetted width of a line of tape, m", s.Wetted, "")
		figure(w, "emitter spacing, m", s.Spacing, "")
	}
	for i := range table.Tapes {
		if t := &table.Tapes[i]; t.ID == id {
			found = true
			fmt.Fprintf(w, "%s\n%.1f L/h for 100 m at %.0f kPa; %.2f L/h each emitter. %s.\n", t.Name, t.Flow, table.TapePressure, t.Emitter(), t.Mark)
			writeSource(w, t.Source)
		}
	}
	for _, s := range table.Sources {
		if s.ID == id {
			found = true
			writeSource(w, s)
		}
	}
	if in := rules.InputByName(id); in != nil {
		found = true
		fmt.Fprintf(w, "%s\n%s\n%s\nAllowed: %s\n", in.Name, in.Label, in.Help, in.Allowed())
	}
	return found
}

// figure prints one figure with its range, its mark and its source.
func figure[T ~float64](w io.Writer, name string, f table.Figure[T], shift string) {
	if !f.Given() {
		fmt.Fprintf(w, "  %-34s not given\n", name)
		return
	}
	value := fmt.Sprintf("%.4g", float64(f.Value))
	if f.Low != f.High {
		value += fmt.Sprintf(" (%.4g to %.4g)", float64(f.Low), float64(f.High))
	}
	fmt.Fprintf(w, "  %-34s %-18s %s [%s] %s\n", name, value+shift, f.Mark, f.Source.ID, f.Note)
}

func describeCrop(w io.Writer, c *table.Crop) {
	fmt.Fprintf(w, "%s (%s, %s)\n", c.Name, c.Group, c.Family)
	fmt.Fprintf(w, "  %-34s %s\n", "frost class", c.Hardiness)
	figure(w, "weeks from the mean last frost", c.WeeksToFrost, "")
	figure(w, "soil to set out, risky", c.EarlyFloor, " °C")
	figure(w, "soil to set out, safe", c.SafeFloor, " °C")
	figure(w, "soil to sow, risky", c.SeedEarlyFloor, " °C")
	figure(w, "soil to sow, safe", c.SeedSafeFloor, " °C")
	figure(w, "root zone, best", c.RootBest, " °C")
	figure(w, "root zone, ceiling", c.RootCeiling, " °C")
	figure(w, "air by day, harm from", c.HeatDay, " °C")
	figure(w, "air by night, harm from", c.HeatNight, " °C")
	figure(w, "in the row", c.InRow, " m")
	figure(w, "rows on a bed", c.RowsPerBed, "")
	figure(w, "bed centres", c.Centres, " m")
	figure(w, "root depth", c.RootDepth, " m")
	figure(w, "share of water to use up", c.Depletion, "")
	figure(w, "crop coefficient at start", c.KcStart, "")
	figure(w, "crop coefficient at full leaf", c.KcMid, "")
	figure(w, "crop coefficient at the end", c.KcEnd, "")
	figure(w, "cut of the coefficient under film", c.FilmSaving, " %")
	figure(w, "days to first harvest", c.DaysToHarvest, "")
	figure(w, "salt threshold, soil paste", c.SaltThreshold, " dS/m")
	figure(w, "yield lost for each dS/m above", c.SaltSlope, " %")
}

func describeFilm(w io.Writer, f *table.Film) {
	fmt.Fprintf(w, "%s\n", f.Name)
	figure(w, "sunlight reflected", f.SunReflected, "")
	figure(w, "sunlight passed", f.SunPassed, "")
	figure(w, "heat radiation reflected", f.HeatReflected, "")
	figure(w, "heat radiation passed", f.HeatPassed, "")
	figure(w, "warming at 5 cm", f.WarmingAt5, " °C")
	figure(w, "warming at 10 cm", f.WarmingAt10, " °C")
	figure(w, "share of annual weeds held", f.Opaque, "")
	figure(w, "cover left after two crops", f.CoverLeft, " %")
	figure(w, "field life", f.Life, " days")
	figure(w, "price, black = 1", f.PriceClass, "")
	figure(w, "thickness sold", f.Thicknesses, " µm")
	fmt.Fprintf(w, "  organic: %s\n", f.OrganicNote)
	writeSource(w, f.OrganicFrom)
}
