package app

import (
	"strconv"
	"strings"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// coverName is a film or bare soil in a sentence.
func coverName(cover int) string {
	if cover == facts.Bare {
		return "bare soil"
	}
	name := table.Films[cover].Name
	if i := strings.Index(name, " ("); i > 0 {
		rest := name[strings.Index(name, ")")+1:]
		name = name[:i] + rest
	}
	return name
}

// coverLabel is the shortest name that tells a line of the strip from the rest.
func coverLabel(cover int) string {
	switch table.FilmID(cover) {
	case table.InfraredTransmitting:
		return "infrared"
	case table.SilverOnBlack:
		return "silver"
	case table.WhiteOnBlack:
		return "white"
	case table.BiodegradableBlack:
		return "bio black"
	case table.NoFilm: // bare soil has the place behind the films
		return "bare soil"
	}
	return table.Films[cover].ID
}

func temperature(t unit.Celsius, system unit.System) string { return unit.Of(t).In(system) }

func dateOr(d unit.Optional[unit.Date], otherwise string, system unit.System) string {
	if !d.Given {
		return otherwise
	}
	return dayOfYear(d.Value, system)
}

// stripWords says what the strip shows, a sentence or two a line, number first.
func stripWords(a *plan.Advice, s *facts.SoilSeason, system unit.System) []string {
	f := a.Facts
	chosen := f.ChosenCover()
	m := &s.Marks[chosen]
	show := func(t unit.Celsius) string { return temperature(t, system) }
	name := coverName(chosen)

	now := show(m.Planting.Mean) + " is the soil’s daily mean on " + dayOfYear(f.Plant, system) + ", " + unit.Of(unit.Short(s.Depth)).In(system) + " deep under " + name +
		"; expect " + show(m.Planting.BandLow) + " to " + show(m.Planting.BandHigh) + "."
	if chosen == facts.Bare {
		now = strings.Replace(now, "under bare soil", "in bare soil", 1)
	} else {
		now += " Bare soil has " + show(s.Marks[facts.Bare].Planting.Mean) + "."
	}
	lines := []string{now, show(m.Planting.Low) + " to " + show(m.Planting.High) + " is the swing of that day."}

	if cover := f.CoverFloor(); cover < f.WorkFloor {
		if m.Covers.Given {
			lines = append(lines, sentence(dayOfYear(m.Covers.Value, system))+": the bed holds "+show(cover)+" from then on, enough to plant under covers.")
		} else {
			lines = append(lines, "The bed does not hold "+show(cover)+", the least for planting under covers, in the months around that day.")
		}
	}
	switch {
	case m.Warm.Given:
		lines = append(lines, sentence(dayOfYear(m.Warm.Value, system))+": the bed holds the "+show(f.WorkFloor)+" that planting waits for, as a daily mean"+springs(m, system)+".")
	case m.WarmSoonest.Given:
		lines = append(lines, "In a usual year the bed does not hold the "+show(f.WorkFloor)+" that planting waits for; in a warm one it does by "+dayOfYear(m.WarmSoonest.Value, system)+".")
	default:
		lines = append(lines, "The bed does not hold the "+show(f.WorkFloor)+" that planting waits for, not even in a warm year.")
	}
	lines = append(lines, overWords(m, "no day")+" of the first 60 has a mean above "+show(f.Ceiling)+", which is too hot"+overHours(m)+".")
	if m.OverDays > 1 {
		lines[len(lines)-1] = strings.Replace(lines[len(lines)-1], "of the first 60 has", "of the first 60 have", 1)
	}
	lines[len(lines)-1] = sentence(lines[len(lines)-1])
	lines = append(lines, surfaceWords(chosen, m, system), layWords(a, system))
	if f.Probe.Given {
		lines = append(lines, probeWords(f, system))
	}
	lines = append(lines, "Each curve is drawn for a "+yearWord(f)+" year as if its cover lay all season, with the crop’s own shade after planting. The band is what another year, and the model’s own error, may bring.")
	for i := range lines {
		lines[i] = strings.ReplaceAll(lines[i], " °", "\u00a0°") // a figure and its unit stay on one line
	}
	return lines
}

// springs says when a warm and a cool spring bring the bed there, where they differ from a usual one.
func springs(m *facts.SoilMarks, system unit.System) string {
	if m.WarmLatest == m.Warm && m.WarmSoonest == m.Warm {
		return ""
	}
	return "; by " + dayOfYear(m.WarmSoonest.Value, system) + " in a warm spring, " + coolDay(m.WarmLatest, system) + " in a cool one"
}

func overHours(m *facts.SoilMarks) string {
	if m.OverHours < 1 {
		return ""
	}
	return "; " + strconv.Itoa(int(m.OverHours)) + " hours lie above it"
}

func layWords(a *plan.Advice, system unit.System) string {
	w := &a.WaitPlan
	text := sentence(dayOfYear(w.LayOn, system)) + " is the day to lay"
	if a.Facts.Film == table.NoFilm || a.FilmDown() {
		text = sentence(dayOfYear(w.LayOn, system)) + " is the day to have the bed ready"
	}
	if w.Moved > 0 {
		return text + ", and " + dayOfYear(w.PlantOn, system) + " the day to plant, later than you wanted."
	}
	return text + "."
}

func yearWord(f *facts.Facts) string {
	if f.Case.Risk == "" {
		return "usual"
	}
	return f.Case.Risk
}

// stripList is the same as a list.
func stripList(words []string) string {
	w := &svg{}
	w.raw(`<ul class="strip-says">`)
	for _, line := range words {
		w.raw(`<li>`, escape(line), `</li>`)
	}
	w.raw(`</ul>`)
	return w.b.String()
}

func overWords(m *facts.SoilMarks, none string) string {
	if m.OverDays == 0 {
		return none
	}
	return unit.Of(unit.Days(m.OverDays)).In(unit.Metric)
}

func coolDay(d unit.Optional[unit.Date], system unit.System) string {
	if !d.Given {
		return "perhaps never"
	}
	return "by " + dayOfYear(d.Value, system)
}

func surfaceWords(cover int, m *facts.SoilMarks, system unit.System) string {
	what := coverName(cover) + " itself"
	if cover == facts.Bare {
		what = "the soil’s own surface"
	}
	text := temperature(m.Surface, system) + " is what " + what + " reaches on a clear hot day within three weeks of planting"
	if m.BurnsStems {
		return text + ". Stems that touch it may burn: they do from " + temperature(facts.StemBurn, system) + " on."
	}
	return text + ". Stems that touch it burn from " + temperature(facts.StemBurn, system) + " on."
}

// probeWords says what a reading in the field did to the curves.
func probeWords(f *facts.Facts, system unit.System) string {
	p := &f.Probe
	gap := p.Shift
	side, way := "above", "up"
	if gap < 0 {
		gap, side, way = -gap, "below", "down"
	}
	shown := func(k unit.CelsiusDegrees) string { return unit.Of(k).In(system) }
	if p.Doubtful {
		return "Your probe reading lies " + shown(gap) + " " + side + " the " + temperature(p.Expected, system) +
			" that we compute for that hour and depth. That is too far to believe, so the curves did not move. Read again in the shade, and check °C against °F."
	}
	later := p.MoveAfter(60)
	if later < 0 {
		later = -later
	}
	return "Your probe reading lies " + shown(gap) + " " + side + " the " + temperature(p.Expected, system) +
		" that we compute for that hour and depth: it moved the curves " + way + " by " + shown(gap) + " on its day, and by " + shown(later) + " two months away."
}
