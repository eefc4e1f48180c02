package app

import (
	"strconv"
	"strings"

	"filmfurrow/rules"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// coverName is a film or bare soil in a sentence.
func coverName(cover int) string {
	if cover == rules.Bare {
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

// dayWords is a date without its year: "20 May".
func dayWords(d unit.Date) string {
	_, month, day := d.Civil()
	return strconv.Itoa(day) + " " + unit.MonthName(month)
}

func dateOr(d rules.Optional[unit.Date], otherwise string) string {
	if !d.Given {
		return otherwise
	}
	return dayWords(d.Value)
}

// stripWords says what the strip shows, a sentence or two a line, number first.
func stripWords(a *rules.Advice, s *rules.SoilSeason, system unit.System) []string {
	f := a.Facts
	chosen := f.ChosenCover()
	m := &s.Marks[chosen]
	show := func(t unit.Celsius) string { return temperature(t, system) }
	name := coverName(chosen)

	now := show(m.Planting.Mean) + " is the soil’s daily mean on " + dayWords(f.Plant) + ", " + unit.Of(unit.Short(s.Depth)).In(system) + " deep under " + name +
		"; expect " + show(m.Planting.BandLow) + " to " + show(m.Planting.BandHigh) + "."
	if chosen == rules.Bare {
		now = strings.Replace(now, "under bare soil", "in bare soil", 1)
	} else {
		now += " Bare soil has " + show(s.Marks[rules.Bare].Planting.Mean) + "."
	}
	lines := []string{now, show(m.Planting.Low) + " to " + show(m.Planting.High) + " is the swing of that day."}

	if m.Early.Given {
		lines = append(lines, sentence(dayWords(m.Early.Value))+": the bed holds the early floor of "+show(f.EarlyFloor)+" from then on. Planting is a risk still.")
	} else {
		lines = append(lines, "The bed does not hold the early floor of "+show(f.EarlyFloor)+" in the months around that day.")
	}
	switch {
	case m.Safe.Given:
		lines = append(lines, dayWords(m.Safe.Value)+": the bed holds the safe floor of "+show(f.SafeFloor)+", on three mornings; by "+dayWords(m.SafeSoonest.Value)+" in a warm spring, "+coolDay(m.SafeLatest)+" in a cool one.")
	case m.SafeSoonest.Given:
		lines = append(lines, "In a usual year the mornings do not hold the safe floor of "+show(f.SafeFloor)+"; in a warm one they do by "+dayWords(m.SafeSoonest.Value)+".")
	default:
		lines = append(lines, "The mornings do not hold the safe floor of "+show(f.SafeFloor)+", not even in a warm year.")
	}
	lines = append(lines, overWords(m, "no day")+" of the first 60 has a mean above the ceiling of "+show(f.Ceiling)+"; "+strconv.Itoa(int(m.OverHours))+" hours lie above it.")
	if m.OverDays > 1 {
		lines[len(lines)-1] = strings.Replace(lines[len(lines)-1], "of the first 60 has", "of the first 60 have", 1)
	}
	lines[len(lines)-1] = sentence(lines[len(lines)-1])
	lines = append(lines, surfaceWords(chosen, m, system), layWords(a))
	if f.Probe.Given {
		lines = append(lines, probeWords(f, system))
	}
	lines = append(lines, "Each curve is drawn for a "+yearWord(f)+" year as if its cover lay all season, with the crop’s own shade after planting. The band is what another year, and the model’s own error, may bring.")
	for i := range lines {
		lines[i] = strings.ReplaceAll(lines[i], " °", "\u00a0°") // a figure and its unit stay on one line
	}
	return lines
}

func layWords(a *rules.Advice) string {
	w := &a.WaitPlan
	text := sentence(dayWords(w.LayOn)) + " is the day to lay"
	if a.Facts.Film == table.NoFilm {
		text = sentence(dayWords(w.LayOn)) + " is the day to have the bed ready"
	}
	if w.Moved > 0 {
		return text + ", and " + dayWords(w.PlantOn) + " the day to plant, later than you wanted."
	}
	return text + "."
}

func yearWord(f *rules.Facts) string {
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

func overWords(m *rules.SoilMarks, none string) string {
	if m.OverDays == 0 {
		return none
	}
	return unit.Of(unit.Days(m.OverDays)).In(unit.Metric)
}

func coolDay(d rules.Optional[unit.Date]) string {
	if !d.Given {
		return "perhaps never"
	}
	return "by " + dayWords(d.Value)
}

func surfaceWords(cover int, m *rules.SoilMarks, system unit.System) string {
	what := coverName(cover) + " itself"
	if cover == rules.Bare {
		what = "the soil’s own surface"
	}
	text := temperature(m.Surface, system) + " is what " + what + " reaches on a clear hot day within three weeks of planting"
	if m.BurnsStems {
		return text + ". Stems that touch it may burn: they do from " + temperature(rules.StemBurn, system) + " on."
	}
	return text + ". Stems that touch it burn from " + temperature(rules.StemBurn, system) + " on."
}

// probeWords says what a reading in the field did to the curves.
func probeWords(f *rules.Facts, system unit.System) string {
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

// stripTable gives what each film brings, one line a film.
func stripTable(a *rules.Advice, s *rules.SoilSeason, system unit.System) string {
	f := a.Facts
	t := &svg{}
	t.raw(`<div class="table-scroll" tabindex="0" role="region" aria-label="What each film brings"><table class="strip-table" id="strip-table"><caption>Soil `, escape(unit.Of(unit.Short(s.Depth)).In(system)), ` deep</caption><thead><tr>`)
	for _, head := range []string{"Cover", "Mean on " + dayWords(f.Plant), "Early floor " + temperature(f.EarlyFloor, system) + " from", "Safe floor " + temperature(f.SafeFloor, system) + " from",
		"Above " + temperature(f.Ceiling, system) + " in 60 days", "Surface, hot day"} {
		t.raw(`<th scope="col">`, escape(head), `</th>`)
	}
	t.raw(`</tr></thead><tbody>`)
	for cover := range s.Marks {
		m := &s.Marks[cover]
		row, mark := "", ""
		if cover == f.ChosenCover() {
			row, mark = ` class="chosen"`, " (chosen)"
		}
		t.raw(`<tr`, row, `><th scope="row">`, escape(sentence(coverName(cover))+mark), `</th>`)
		safe := dateOr(m.Safe, "not this season")
		if m.Safe.Given && m.SafeSoonest.Given {
			latest := "later"
			if m.SafeLatest.Given {
				latest = dayWords(m.SafeLatest.Value)
			}
			safe += " (" + dayWords(m.SafeSoonest.Value) + " to " + latest + ")"
		}
		burns := ""
		if m.BurnsStems {
			burns = ", may burn stems"
		}
		for _, cell := range []string{
			temperature(m.Planting.Mean, system) + " (" + unit.KindTemperature.Figure(float64(m.Planting.BandLow), system) + " to " + unit.KindTemperature.Figure(float64(m.Planting.BandHigh), system) + ")",
			dateOr(m.Early, "not this season"), safe,
			overWords(m, "0 days") + ", " + strconv.Itoa(int(m.OverHours)) + " h",
			temperature(m.Surface, system) + burns,
		} {
			t.raw(`<td>`, escape(cell), `</td>`)
		}
		t.raw(`</tr>`)
	}
	t.raw(`</tbody></table></div>`)
	return t.b.String()
}

// stripTwin is the strip as a table: mean, lowest and highest of every seventh
// day for each cover.
func stripTwin(s *rules.SoilSeason, system unit.System) string {
	t := &svg{}
	figure := func(v unit.Celsius) string { return unit.KindTemperature.Figure(float64(v), system) }
	t.raw(`<div class="table-scroll" tabindex="0" role="region" aria-label="The strip as a table"><table class="strip-table"><caption>Soil `, escape(unit.Of(unit.Short(s.Depth)).In(system)),
		` deep: mean (lowest to highest) of the day, `, unit.KindTemperature.Symbol(system), `</caption><thead><tr><th scope="col">Day</th>`)
	for cover := range s.Days {
		t.raw(`<th scope="col">`, escape(sentence(coverLabel(cover))), `</th>`)
	}
	t.raw(`</tr></thead><tbody>`)
	for day := 0; day < len(s.Days[rules.Bare]); day += 7 {
		t.raw(`<tr><th scope="row">`, dayWords(s.From.Plus(unit.Days(day))), `</th>`)
		for cover := range s.Days {
			d := &s.Days[cover][day]
			t.raw(`<td>`, figure(d.Mean), ` <span>(`, figure(d.Low), ` to `, figure(d.High), `)</span></td>`)
		}
		t.raw(`</tr>`)
	}
	t.raw(`</tbody></table></div>`)
	return t.b.String()
}
