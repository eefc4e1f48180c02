package casefile

import (
	"bytes"
	"strconv"
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Encode writes a case file: only what is known, in the order of the inputs,
// the same bytes for the same case.
func Encode(c *field.Case) []byte {
	w := writer{}
	w.open()
	w.field("version", strconv.Itoa(Version))
	group := ""
	for _, name := range order() {
		text, given := written(c, name)
		if !given {
			continue
		}
		parent, leaf := "", name
		if i := strings.LastIndexByte(name, '.'); i >= 0 {
			parent, leaf = name[:i], name[i+1:]
		}
		group = w.enter(group, parent)
		w.field(leaf, text)
	}
	w.enter(group, "")
	w.days(c.Days.Rows())
	w.close()
	w.b.WriteByte('\n')
	return w.b.Bytes()
}

// order lists every field of the file; the monthly lists stand with the rest of
// the climate.
func order() []string {
	var names []string
	for i := range field.Inputs {
		names = append(names, field.Inputs[i].Name)
		if field.Inputs[i].Name == "climate.first_frost" {
			for j := range field.Climate {
				names = append(names, field.Climate[j].Name)
			}
		}
	}
	return names
}

func written(c *field.Case, name string) (string, bool) {
	if s := seriesByName(name); s != nil {
		months, given := s.Get(c)
		if !given {
			return "", false
		}
		parts := make([]string, 12)
		for i, v := range months {
			parts[i] = figure(v)
		}
		return "[" + strings.Join(parts, ", ") + "]", true
	}
	// A station stands for its place; a nearest station is found again.
	if strings.HasPrefix(name, "place.") && name != "place.station" && name != "place.elevation_m" && name != "place.period" && c.Place.Station != "" {
		return "", false
	}
	if name == "place.elevation_m" && c.Place.Station != "" && c.Place.Elevation.Value == c.Place.StationAt {
		return "", false
	}
	in := field.InputByName(name)
	v, given := in.Get(c)
	if !given {
		return "", false
	}
	return valueText(in, v), true
}

// valueText writes one value as the case file has it.
func valueText(in *field.Input, v field.Value) string {
	switch in.Form {
	case field.FormChoice, field.FormText:
		return jsontext.Quote(v.Word)
	case field.FormDate:
		return jsontext.Quote(unit.Date(v.Number).String())
	case field.FormDay:
		return jsontext.Quote(DayText(int(v.Number)))
	case field.FormYesNo:
		return strconv.FormatBool(v.Number == 1)
	case field.FormFilms:
		var ids []string
		for i := range table.Films {
			if field.Films(v.Number)&(1<<i) != 0 {
				ids = append(ids, jsontext.Quote(table.Films[i].ID))
			}
		}
		return "[" + strings.Join(ids, ", ") + "]"
	}
	return figure(v.Number)
}

// DayText writes a month and day as MM-DD.
func DayText(monthDay int) string { return field.MonthDay(monthDay).String() }

func figure(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// writer indents by two spaces and sets the commas.
type writer struct {
	b     bytes.Buffer
	depth int
	first bool
}

func (w *writer) open() {
	w.b.WriteByte('{')
	w.depth++
	w.first = true
}

func (w *writer) close() {
	w.depth--
	w.line()
	w.b.WriteByte('}')
	w.first = false
}

func (w *writer) line() { w.b.WriteString("\n" + strings.Repeat("  ", w.depth)) }

func (w *writer) name(name string) {
	if !w.first {
		w.b.WriteByte(',')
	}
	w.first = false
	w.line()
	w.b.WriteString(jsontext.Quote(name) + ": ")
}

func (w *writer) field(name, text string) {
	w.name(name)
	w.b.WriteString(text)
}

// enter closes and opens objects on the way from one group to another.
func (w *writer) enter(from, to string) string {
	for from != "" && from != to && !strings.HasPrefix(to, from+".") {
		w.close()
		if i := strings.LastIndexByte(from, '.'); i >= 0 {
			from = from[:i]
		} else {
			from = ""
		}
	}
	for from != to {
		rest := strings.TrimPrefix(strings.TrimPrefix(to, from), ".")
		head, _, _ := strings.Cut(rest, ".")
		w.name(head)
		w.open()
		if from == "" {
			from = head
		} else {
			from += "." + head
		}
	}
	return to
}
