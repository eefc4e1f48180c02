package casefile

import (
	"strconv"
	"strings"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// Calendar writes the season as an iCalendar file (RFC 5545): all-day events,
// lines folded at 75 octets and ended by CR LF. The stamp is a date that the
// caller gives, since the engine knows no clock; say puts a text into the reader's
// language.
func Calendar(steps []plan.SeasonStep, name string, stamp unit.Date, system unit.System, say func(string) string) []byte {
	var b strings.Builder
	words := func(property, text string) { fold(&b, property+":"+escapeText(say(text))) }
	line := func(text string) { fold(&b, text) }
	line("BEGIN:VCALENDAR")
	line("VERSION:2.0")
	line("PRODID:-//Film & Furrow//season 1//EN")
	line("CALSCALE:GREGORIAN")
	words("X-WR-CALNAME", name)
	for i, s := range steps {
		line("BEGIN:VEVENT")
		line("UID:" + s.ID + "-" + strconv.Itoa(i) + "-" + compact(s.On) + "@film-and-furrow.invalid")
		line("DTSTAMP:" + compact(stamp) + "T000000Z")
		line("DTSTART;VALUE=DATE:" + compact(s.On))
		line("DTEND;VALUE=DATE:" + compact(s.On.Plus(max(1, s.Days))))
		if s.Weeks > 1 {
			line("RRULE:FREQ=WEEKLY;COUNT=" + strconv.Itoa(s.Weeks))
		}
		words("SUMMARY", s.What.In(system))
		words("DESCRIPTION", s.Why.In(system))
		line("CATEGORIES:" + string(s.Step))
		line("TRANSP:TRANSPARENT")
		line("END:VEVENT")
	}
	line("END:VCALENDAR")
	return []byte(b.String())
}

func compact(d unit.Date) string { return strings.ReplaceAll(d.String(), "-", "") }

var icalText = strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\r\n", `\n`, "\n", `\n`)

func escapeText(s string) string { return icalText.Replace(s) }

// fold breaks a content line at 75 octets, never inside a character.
func fold(b *strings.Builder, text string) {
	room := 75
	for _, r := range text {
		n := len(string(r))
		if n > room {
			b.WriteString("\r\n ")
			room = 74
		}
		b.WriteRune(r)
		room -= n
	}
	b.WriteString("\r\n")
}
