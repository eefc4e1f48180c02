//go:build !js

package main

import (
	"bufio"
	"fmt"
	"io"
	"reflect"
	"strings"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// explain prints what a rule, film, crop, soil, tape, input or source says,
// from the tables themselves, so that it cannot go stale.
func explain(args []string, _ io.Reader, out, errs io.Writer) int {
	w := bufio.NewWriter(out)
	defer w.Flush()
	if len(args) != 1 {
		fmt.Fprintln(errs, "Name one topic: rules, crops, films, soils, tapes, inputs, sources, judgements, cautions, or the id of one of them.")
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
	fmt.Fprintf(errs, "There is no topic %q. Try rules, crops, films, soils, tapes, inputs, sources, judgements or cautions.\n", topic)
	return 2
}

var lists = map[string]func(io.Writer){
	"rules": func(w io.Writer) {
		for q := range question.Wait + 1 {
			fmt.Fprintf(w, "%s\n", q)
			for _, r := range judge.Rules(q) {
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
		for i := range field.Inputs {
			fmt.Fprintf(w, "%-30s %s: %s\n", field.Inputs[i].Name, field.Inputs[i].Label, field.Inputs[i].Allowed())
		}
		fmt.Fprintf(w, "%-30s %s\n", "days", "A list of days of the season, in order, each with \"on\", its date, and any of:")
		for i := range field.DayColumns {
			c := &field.DayColumns[i]
			fmt.Fprintf(w, "  %-28s %s: %g to %g\n", c.Name, c.Label, c.Low, c.High)
		}
	},
	"sources": func(w io.Writer) {
		for _, s := range table.Sources {
			writeSource(w, s)
		}
	},
	"judgements": func(w io.Writer) {
		for _, j := range rules.Judgements() {
			fmt.Fprintf(w, "%-32s %s: %s. %s.\n", j.ID, strings.TrimSpace(fmt.Sprintf("%.4g %s", j.Value, j.Unit)), j.Means, j.Whose())
		}
	},
	"cautions": func(w io.Writer) {
		for _, c := range judge.Cautions() {
			fmt.Fprintf(w, "%-18s %s: %s Last word: %s.\n", c.ID, c.Step, c.Text, c.Defers)
		}
	},
}

func writeSource(w io.Writer, s *table.Source) {
	fmt.Fprintf(w, "[%s] %s: %s, %s. %s. %s. %s\n", s.ID, s.Publisher, s.Title, s.Year, s.Where, s.Mark, s.Found())
}

func describe(w io.Writer, id string) bool {
	found := false
	for q := range question.Wait + 1 {
		for _, r := range judge.Rules(q) {
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
		soil := facts.HeatSoil(s)
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
	if in := field.InputByName(id); in != nil {
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
	value := fmt.Sprintf("%.4g", float64(f.Value)) + shift
	if f.Low != f.High {
		value += " (" + span(float64(f.Low), float64(f.High)) + ")"
	}
	switch any(f.Value).(type) { // as the source printed it, where that was in US units
	case unit.Celsius:
		value += ", " + span(float64(f.Low)*1.8+32, float64(f.High)*1.8+32) + " °F"
	case unit.Metres:
		value += ", " + span(float64(f.Low)/unit.MetresPerInch, float64(f.High)/unit.MetresPerInch) + " in"
	}
	fmt.Fprintf(w, "  %-34s %-36s %s\n", name, value, basis(f.Mark, f.Source, f.Note))
}

func span(low, high float64) string {
	if low == high {
		return fmt.Sprintf("%.3g", low)
	}
	return fmt.Sprintf("%.3g to %.3g", low, high)
}

// basis says how far a figure may be trusted and who gives it; for a stand-in,
// for which crop it was read.
func basis(m table.Mark, s *table.Source, note string) string {
	switch {
	case m == table.StandIn && note != "":
		return fmt.Sprintf("stand-in, read for %s [%s]", note, s.ID)
	case note != "":
		return fmt.Sprintf("%s [%s]; %s", m, s.ID, strings.TrimSuffix(note, "."))
	}
	return fmt.Sprintf("%s [%s]", m, s.ID)
}

func describeCrop(w io.Writer, c *table.Crop) {
	fmt.Fprintf(w, "%s (%s, %s)\n", c.Name, c.Group, c.Family)
	fmt.Fprintf(w, "  %-34s %-36s %s\n", "frost class", c.Hardiness, basis(c.HardinessFrom.Mark, c.HardinessFrom.Source, c.HardinessFrom.Note))
	figure(w, "weeks from the mean last frost", c.WeeksToFrost, "")
	figure(w, "weeks in the tray", c.TrayWeeks, "")
	figure(w, "soil to set out, risky", c.MinSoilTemperature, " °C")
	figure(w, "soil to set out, safe", c.SafeSoilTemperature, " °C")
	figure(w, "soil to sow, risky", c.SeedMinSoilTemperature, " °C")
	figure(w, "soil to sow, safe", c.SeedSafeSoilTemperature, " °C")
	figure(w, "root zone, best", c.RootBest, " °C")
	figure(w, "root zone, ceiling", c.RootCeiling, " °C")
	figure(w, "air by day, harm from", c.HeatDay, " °C")
	figure(w, "air by night, harm from", c.HeatNight, " °C")
	figure(w, "monthly mean air, best", c.MonthBest, " °C")
	figure(w, "in the row", c.InRow, " m")
	figure(w, "rows on a bed", c.RowsPerBed, "")
	figure(w, "bed centres", c.Centres, " m")
	figure(w, "root depth", c.RootDepth, " m")
	figure(w, "share of water to use up", c.Depletion, "")
	figure(w, "crop coefficient at start", c.KcIni, "")
	figure(w, "crop coefficient at full leaf", c.KcMid, "")
	figure(w, "crop coefficient at the end", c.KcEnd, "")
	stages, mark := fmt.Sprintf("%d, %d, %d, %d", c.StageDays[0], c.StageDays[1], c.StageDays[2], c.StageDays[3]), c.StageSource.Mark
	if c.StageNote != "" {
		mark = table.StandIn
	}
	fmt.Fprintf(w, "  %-34s %-36s %s\n", "days of the four stages", stages, basis(mark, c.StageSource, c.StageNote))
	figure(w, "height", c.Height, " m")
	figure(w, "cut of the coefficient under film", c.FilmSaving, " %")
	figure(w, "days to first harvest", c.DaysToHarvest, "")
	figure(w, "salt threshold, soil paste", c.SaltThreshold, " dS/m")
	figure(w, "yield lost for each dS/m above", c.SaltSlope, " %")
	figure(w, "bed height", c.BedHeight, " m")
	fmt.Fprintf(w, "Sources:\n")
	cited := citedBy(c)
	for _, s := range table.Sources {
		if cited[s] {
			writeSource(w, s)
		}
	}
}

// citedBy gathers the sources of all figures of a crop, so that a column more
// needs no line here.
func citedBy(c *table.Crop) map[*table.Source]bool {
	cited := map[*table.Source]bool{c.StageSource: true}
	for row, i := reflect.ValueOf(c).Elem(), 0; i < row.NumField(); i++ {
		if f := row.Field(i); f.Kind() == reflect.Struct {
			if s, ok := f.FieldByName("Source").Interface().(*table.Source); ok {
				cited[s] = true
			}
		}
	}
	return cited
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
