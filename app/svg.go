package app

import (
	"strconv"
	"strings"
)

// svg gathers the text of a drawing. Everything that goes in is our own or
// escaped.
type svg struct{ b strings.Builder }

func (s *svg) raw(parts ...string) {
	for _, p := range parts {
		s.b.WriteString(p)
	}
}

// num writes a coordinate to a tenth.
func num(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }

// el writes an element; attributes come in pairs.
func (s *svg) el(name string, attributes ...string) {
	s.open(name, attributes...)
	s.raw("</", name, ">")
}

func (s *svg) open(name string, attributes ...string) {
	s.raw("<", name)
	for i := 0; i+1 < len(attributes); i += 2 {
		s.raw(" ", attributes[i], `="`, attributes[i+1], `"`)
	}
	s.raw(">")
}

func (s *svg) close(name string) { s.raw("</", name, ">") }

// text writes a label at a place. Anchor is start, middle or end.
func (s *svg) text(x, y float64, class, anchor, words string) {
	s.open("text", "x", num(x), "y", num(y), "class", class, "text-anchor", anchor)
	s.raw(escape(words))
	s.close("text")
}

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;")

func escape(s string) string { return escaper.Replace(s) }
