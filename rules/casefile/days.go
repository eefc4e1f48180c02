package casefile

import (
	"encoding/binary"

	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
	"filmfurrow/rules/unit"
)

// days writes the days of the season, a line for each.
func (w *writer) days(rows []field.DayRow) {
	if len(rows) == 0 {
		return
	}
	w.name("days")
	w.b.WriteByte('[')
	w.depth++
	for i := range rows {
		if i > 0 {
			w.b.WriteByte(',')
		}
		w.line()
		w.b.WriteString(`{"on": ` + jsontext.Quote(rows[i].On.String()))
		for c, v := range rows[i].Values {
			if v.Given {
				w.b.WriteString(`, "` + field.DayColumns[c].Name + `": ` + figure(v.Value))
			}
		}
		w.b.WriteByte('}')
	}
	w.depth--
	w.line()
	w.b.WriteByte(']')
}

// days reads them strictly: all or none.
func (d *decoder) days(v any) {
	list, ok := v.([]any)
	if !ok || len(list) == 0 {
		d.fail("days", kindOf(v), "a list of days", "Write each day between braces, or leave the list out.")
		return
	}
	if len(list) > field.MostDays {
		d.errs = append(d.errs, field.CheckDays(make([]field.DayRow, len(list)), unit.Metric)[0])
		return
	}
	before := len(d.errs)
	rows := make([]field.DayRow, len(list))
	for i, item := range list {
		o, ok := item.(*jsontext.Object)
		if !ok {
			d.fail("days", kindOf(item), "an object for each day", `Write it such as {"on": "2027-06-01", "low_c": 12, "high_c": 26}.`)
			continue
		}
		text, _ := o.Get("on").(string)
		day, err := unit.ParseDate(text)
		if err != nil {
			d.fail("days.on", kindOf(o.Get("on")), "a day of the calendar, YYYY-MM-DD", "There is no such date; write it such as 2027-05-20.")
		}
		rows[i].On = day
		for k, name := range o.Names {
			d.dayValue(&rows[i], name, o.Values[k])
		}
	}
	if len(d.errs) > before {
		return
	}
	if wrong := field.CheckDays(rows, unit.Metric); len(wrong) > 0 {
		d.errs = append(d.errs, wrong...)
		return
	}
	d.c.Days = field.DaysOf(rows)
}

func (d *decoder) dayValue(row *field.DayRow, name string, v any) {
	if name == "on" {
		return
	}
	for c := range field.DayColumns {
		if field.DayColumns[c].Name != name {
			continue
		}
		x, err := finite(v)
		if err != nil {
			d.fail("days."+name, kindOf(v), "a number", "Write a number without quotes, or leave it out.")
			return
		}
		row.Values[c] = unit.Known(x)
		return
	}
	d.fail(join("days", name), "unknown field", "the columns of a day", "Check its spelling, or remove it.")
}

// LinkWithDays is [Link] with the days that were written down. It is false where they
// make it longer than what is read.
func LinkWithDays(c *field.Case) (string, bool) {
	text := link(c, true)
	return text, len(text) <= MaxLink
}

// linkPart is how many columns of the days one field of a link carries, a bit for each.
const linkPart = 8

// partOf is what rows say in the columns of a part, from the column on; days that say
// nothing there are left out.
func partOf(rows []field.DayRow, from int) (part []field.DayRow) {
	for _, row := range rows {
		some := false
		for c := range row.Values {
			if c < from || c >= from+linkPart {
				row.Values[c] = unit.Optional[float64]{}
			}
			some = some || row.Values[c].Given
		}
		if some {
			part = append(part, row)
		}
	}
	return part
}

// appendDays writes the number of days and, for each, how many days after the one before
// it comes, which columns of the part it gives, and their figures.
func appendDays(b []byte, rows []field.DayRow, from int) []byte {
	b = binary.AppendUvarint(b, uint64(len(rows)))
	last := unit.Date(0)
	for i := range rows {
		b = binary.AppendVarint(b, int64(rows[i].On-last))
		last = rows[i].On
		values := rows[i].Values[from:min(from+linkPart, len(rows[i].Values))]
		given := byte(0)
		for c, v := range values {
			if v.Given {
				given |= 1 << c
			}
		}
		b = append(b, given)
		for _, v := range values {
			if v.Given {
				b = appendNumber(b, v.Value)
			}
		}
	}
	return b
}

// takeDays reads what appendDays wrote; false where it would not write this.
func takeDays(b []byte, from int) (rows []field.DayRow, rest []byte, ok bool) {
	count, n := binary.Uvarint(b)
	if n <= 0 || count == 0 || count > field.MostDays {
		return nil, nil, false
	}
	b = b[n:]
	rows = make([]field.DayRow, count)
	last := int64(0)
	for i := range rows {
		step, n := binary.Varint(b)
		if n <= 0 || len(b) < n+1 || step < int64(unit.DateLow)-int64(unit.DateHigh) || step > int64(unit.DateHigh) {
			return nil, nil, false
		}
		last += step
		rows[i].On = unit.Date(last)
		given := b[n]
		b = b[n+1:]
		values := rows[i].Values[from:min(from+linkPart, len(rows[i].Values))]
		if given == 0 || given>>len(values) != 0 {
			return nil, nil, false
		}
		for c := range values {
			if given&(1<<c) == 0 {
				continue
			}
			var v float64
			if v, b, ok = takeNumber(b); !ok {
				return nil, nil, false
			}
			values[c] = unit.Known(v)
		}
	}
	return rows, b, len(field.CheckDays(rows, unit.Metric)) == 0
}

// daysName stands for the days among the fields of a link.
const daysName = "days"

// logName stands for what the days tell of the season: the columns behind the first
// [linkPart].
const logName = "days.log"

// daysFrom is the column that a field of a link begins with, where it carries days.
func daysFrom(name string) (column int, ok bool) {
	switch name {
	case daysName:
		return 0, true
	case logName:
		return linkPart, true
	}
	return 0, false
}
