// Package table holds what the trade and its published sources know, as plain
// rows: sources, crops, films, soils, tapes. Adding a row touches one place.
package table

import "strings"

// Mark says how far a figure may be trusted.
type Mark uint8

// The marks, best first.
const (
	Seen           Mark = iota // read in the text of the source
	StandIn                    // read, but for another crop that stands in
	Quoted                     // read in a source that quotes another
	Trade                      // read in press, trade or hobby text
	Recomputed                 // computed from seen figures
	CommonPractice             // a fact of the trade without a source
	FromMemory                 // known, but not looked up
)

var markWords = [...]string{"seen in the source", "stand-in from a related crop", "quoted by another source",
	"press or trade text", "recomputed from seen figures", "common practice, no source", "from memory"}

// String gives the mark in the words that stand beside a figure.
func (m Mark) String() string { return markWords[m] }

// Source is one publication, or one of the two honest absences of one:
// [Practice] and [Memory].
type Source struct {
	ID        string
	Publisher string
	Title     string
	Year      string // as printed, or "read 2026" for a page of the web without a date
	Where     string // table, page or section within the publication
	Address   string // where it stands on the web (https://…), or its number, volume and page
	NoAddress string // why there is no address; empty where there is one
	Mark      Mark
}

// Named is the publication in one line.
func (s *Source) Named() string { return s.Publisher + ": " + s.Title }

// Found says in words where the source stands, or why nobody can say.
func (s *Source) Found() string {
	if s.Address == "" {
		return "No address: " + s.NoAddress
	}
	return s.Address
}

// SourceTexts are the texts of all sources, a line each: id, title, where in it, and where it
// stands or why nobody can say, cut by tabs. In the page's program these are empty.
func SourceTexts() string {
	var b strings.Builder
	for _, s := range Sources {
		b.WriteString(s.ID + "\t" + s.Title + "\t" + s.Where + "\t" + s.Found() + "\n")
	}
	return b.String()
}

// Figure is one value with its range and where it comes from. A figure whose
// source is nil is not given.
type Figure[T ~float64] struct {
	Low, Value, High T
	Source           *Source
	Mark             Mark
	Note             string
}

// Given tells whether the figure is known at all.
func (f Figure[T]) Given() bool { return f.Source != nil }
