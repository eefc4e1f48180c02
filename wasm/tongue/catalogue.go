//go:build !js

// Package tongue says what the tool says in another language. A catalogue pairs each
// English sentence with its twin; "{}" marks what is put in, which is said on its own, by
// the same catalogue: so a language is its sentences and nothing else, and units, dates
// and plurals are pairs like any other. static/words.js does the same on the page.
package tongue

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Catalogue is one language. It remembers what it has said, and is not safe for use by
// several goroutines at once.
type Catalogue struct {
	exact map[string]string
	by    map[string][]*sentence // sentences with places, by their first word
	// Those that begin with a place, by their last byte; each list, and that of 0, also
	// holds those that end with one.
	ends map[byte][]*sentence
	said [deepest + 1]map[string]string // by depth; "" where there is no twin
	used map[string]bool                // the English of the pairs that helped, where that is asked
}

// sentence is an English sentence with places, and its twin.
type sentence struct {
	whole string   // as it stands in the catalogue
	texts []string // around the places: one more than there are
	ends  int      // how many sentences end within it
	marks []string // of each place: "*" takes anything, such as a name; "number" and "year" figures alone; "sentence" also a long one
	twin  []string // around the twin's places
	order []int    // which place of the sentence each of the twin's takes
}

// What is put in may itself hold something put in, so deep; it is part of a sentence, and
// not longer than this.
const (
	deepest = 4
	longest = 120
)

// ahead is how many sentences are looked through at once.
const ahead = 8

// Parse reads a catalogue: a line of English, then its twin behind "= ". Blank lines and
// lines that begin with "# " are for whoever reads the file. An error names the line.
func Parse(text string) (*Catalogue, error) {
	c := &Catalogue{exact: map[string]string{}, by: map[string][]*sentence{}, ends: map[byte][]*sentence{}}
	for depth := range c.said {
		c.said[depth] = map[string]string{}
	}
	var wrong []error
	english := ""
	for i, line := range strings.Split(text, "\n") {
		twin, isTwin := strings.CutPrefix(line, "= ")
		switch {
		case line == "" || strings.HasPrefix(line, "# "):
		case !isTwin && english != "":
			return nil, fmt.Errorf("line %d: %q follows %q, which has no twin yet: write the twin behind \"= \"", i+1, line, english)
		case !isTwin:
			english = line
		case english == "" || twin == "":
			return nil, fmt.Errorf("line %d: %q needs an English line above it and a text behind \"= \"", i+1, line)
		default:
			if err := c.add(english, twin); err != nil {
				wrong = append(wrong, fmt.Errorf("line %d: %w", i+1, err))
			}
			english = ""
		}
	}
	if english != "" {
		return nil, fmt.Errorf("the last line: %q has no twin: write it behind \"= \"", english)
	}
	for _, list := range c.by {
		slices.SortFunc(list, func(a, b *sentence) int { return cmp.Or(b.fixed()-a.fixed(), strings.Compare(a.whole, b.whole)) })
	}
	for _, s := range c.by[""] {
		c.ends[s.end()] = nil
	}
	for _, s := range c.by[""] {
		for end, list := range c.ends {
			if s.end() == 0 || s.end() == end {
				c.ends[end] = append(list, s)
			}
		}
	}
	return c, errors.Join(wrong...)
}

// end is a sentence's last byte, or 0 where it ends with a place.
func (s *sentence) end() byte {
	if last := s.texts[len(s.texts)-1]; last != "" {
		return last[len(last)-1]
	}
	return 0
}

// fixed is how much of a sentence is given, in characters: the fullest is tried first.
func (s *sentence) fixed() int {
	return utf8.RuneCountInString(strings.Join(s.texts, "") + strings.Join(s.marks, ""))
}

// add takes one pair in.
func (c *Catalogue) add(english, twin string) error {
	texts, marks := places(english)
	around, marksTwin := places(twin)
	if len(marks) != len(marksTwin) {
		return fmt.Errorf("%q has %d places, its twin %q has %d: each stands in both", english, len(marks), twin, len(marksTwin))
	}
	if len(marks) == 0 {
		if was, ok := c.exact[english]; ok && was != twin {
			return fmt.Errorf("%q has two twins, %q and %q: keep one", english, was, twin)
		}
		c.exact[english] = twin
		return nil
	}
	s := &sentence{whole: english, texts: texts, ends: strings.Count(strings.Join(texts, ""), ". "), marks: marks, twin: around}
	taken := make([]bool, len(marks))
	for i := range marks {
		place := i
		if n, err := strconv.Atoi(marksTwin[i]); err == nil {
			place = n - 1
		}
		if place < 0 || place >= len(marks) || taken[place] {
			return fmt.Errorf("%q: the twin's places are {} in order, or {1} to {%d}, each once", twin, len(marks))
		}
		taken[place] = true
		s.order = append(s.order, place)
	}
	word := firstWord(texts[0])
	for _, other := range c.by[word] {
		switch {
		case !slices.Equal(other.texts, texts) || !slices.Equal(other.marks, marks):
		case slices.Equal(other.twin, around):
			return nil
		default:
			return fmt.Errorf("%q has two twins: keep one", english)
		}
	}
	c.by[word] = append(c.by[word], s)
	return nil
}

// places cuts a text at its places, and gives what stands in their braces.
func places(text string) (texts, marks []string) {
	for {
		open := strings.IndexByte(text, '{')
		end := open + 1 + strings.IndexByte(text[open+1:], '}')
		if open < 0 || end <= open {
			return append(texts, text), marks
		}
		texts, marks = append(texts, text[:open]), append(marks, text[open+1:end])
		text = text[end+1:]
	}
}

// firstWord is the first whole word; a text without a space has none.
func firstWord(text string) string {
	word, _, found := strings.Cut(text, " ")
	if !found {
		return ""
	}
	return word
}

// Say gives the twin of a text, and false where it has none and stays as it is. A text
// of several sentences is said sentence by sentence; false where one of them has no twin.
func (c *Catalogue) Say(text string) (string, bool) {
	// A figure and its unit may be held together on a line.
	if loose := strings.ReplaceAll(text, "\u00a0", " "); loose != text {
		said, all := c.Say(loose)
		return strings.ReplaceAll(said, " °", "\u00a0°"), all
	}
	inner := strings.TrimSpace(text)
	if inner == "" || number(inner) || address(inner) {
		return text, true
	}
	if len(inner) <= 4*longest {
		if twin := c.whole(inner, 0); twin != "" {
			return strings.Replace(text, inner, twin, 1), true
		}
	}
	said, all := c.sentences(inner)
	return strings.Replace(text, inner, said, 1), all
}

// sentences says the longest stretches that have a twin, from the left; those that end
// where a sentence does come first.
func (c *Catalogue) sentences(text string) (said string, all bool) {
	all = true
	var b strings.Builder
	for text != "" {
		stops := stopsOf(text, ahead)
		twin, taken := "", 0
		for _, within := range [...]bool{false, true} {
			for i := len(stops) - 1; i >= 0 && twin == ""; i-- {
				if taken = stops[i]; within == (taken < len(text) && strings.IndexByte(".?!", text[taken-1]) < 0) {
					twin = c.put(text[:taken], "", 0)
				}
			}
		}
		if twin == "" {
			taken = stops[0]
			twin, all = text[:taken], false
		}
		b.WriteString(twin)
		rest := strings.TrimLeft(text[taken:], " ")
		b.WriteString(text[taken : len(text)-len(rest)])
		text = rest
	}
	return b.String(), all
}

// stopsOf lists where a sentence or a part of one may end: at ". ", "? ", "! ", ": ",
// "; ", ", ", before " (", and at the end; of a long text no more than some.
func stopsOf(text string, most int) (stops []int) {
	for i := 1; i < len(text); i++ {
		if len(stops) == most {
			return stops
		}
		if text[i] == ' ' && (strings.IndexByte(".?!:;,)", text[i-1]) >= 0 || i+1 < len(text) && text[i+1] == '(') {
			stops = append(stops, i)
		}
	}
	return append(stops, len(text))
}

// whole gives the twin of a text as one, or "". A capital at its head, a full stop or a
// colon at its end may differ from the catalogue's; a pair without places comes first.
func (c *Catalogue) whole(text string, depth int) string {
	if depth > deepest {
		return ""
	}
	if twin, ok := c.said[depth][text]; ok {
		return twin
	}
	bare, end := text, ""
	if last := len(text) - 1; last > 0 && strings.IndexByte(".:,;", text[last]) >= 0 {
		bare, end = text[:last], text[last:]
	}
	twin := c.pair(text)
	if twin == "" {
		if twin = c.pair(bare); twin != "" {
			twin += end
		}
	}
	if twin == "" {
		twin = c.head(text, depth)
	}
	if twin == "" && end != "" {
		if twin = c.head(bare, depth); twin != "" {
			twin += end
		}
	}
	if twin == "" && end == "" {
		twin = strings.TrimSuffix(c.head(text+".", depth), ".")
	}
	c.said[depth][text] = twin
	return twin
}

// known gives the twin of a pair without places, or "".
func (c *Catalogue) known(text string) string {
	twin := c.exact[text]
	if twin != "" {
		c.use(text)
	}
	return twin
}

func (c *Catalogue) use(english string) {
	if c.used != nil {
		c.used[english] = true
	}
}

// pair looks up a text without places, its first letter of either size.
func (c *Catalogue) pair(text string) string {
	if twin := c.known(text); twin != "" {
		return twin
	}
	first, size := utf8.DecodeRuneInString(text)
	if small := unicode.ToLower(first); small != first {
		return headed(c.known(string(small)+text[size:]), unicode.ToUpper)
	}
	if large := unicode.ToUpper(first); large != first {
		return headed(c.known(string(large)+text[size:]), unicode.ToLower)
	}
	return ""
}

// head tries a text as it is and with the other size of its first letter. A capital may
// be there for the sentence's sake alone, so what begins small is tried first.
func (c *Catalogue) head(text string, depth int) string {
	if twin := c.known(text); twin != "" {
		return twin
	}
	if twin := c.begun(text, depth); twin != "" {
		return twin
	}
	first, size := utf8.DecodeRuneInString(text)
	if small := unicode.ToLower(first); small != first {
		if twin := c.same(string(small)+text[size:], depth); twin != "" {
			return headed(twin, unicode.ToUpper)
		}
	}
	if twin := c.oneOf(c.open(text), text, depth); twin != "" {
		return twin
	}
	if large := unicode.ToUpper(first); large != first {
		return headed(c.same(string(large)+text[size:], depth), unicode.ToLower)
	}
	return ""
}

// headed turns the first letter of a text, past an inverted mark; a figure stays.
func headed(text string, turn func(rune) rune) string {
	for i, r := range text {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return text[:i] + string(turn(r)) + text[i+utf8.RuneLen(r):]
		}
	}
	return text
}

// same looks a text up as it is: as a pair without places, then by its first word.
func (c *Catalogue) same(text string, depth int) string {
	if twin := c.known(text); twin != "" {
		return twin
	}
	if twin := c.begun(text, depth); twin != "" {
		return twin
	}
	return c.oneOf(c.open(text), text, depth)
}

// begun tries the sentences that begin with a text's first word.
func (c *Catalogue) begun(text string, depth int) string {
	if word := firstWord(text); word != "" {
		return c.oneOf(c.by[word], text, depth)
	}
	return ""
}

// open lists the sentences that begin with a place and may end as a text does.
func (c *Catalogue) open(text string) []*sentence {
	if list, ok := c.ends[text[len(text)-1]]; ok {
		return list
	}
	return c.ends[0]
}

// oneOf gives the twin of the first sentence that fits.
func (c *Catalogue) oneOf(list []*sentence, text string, depth int) string {
	for _, s := range list {
		if twin := c.fits(s, text, depth); twin != "" {
			c.use(s.whole)
			return twin
		}
	}
	return ""
}

// fits gives a sentence's twin where the text is that sentence with something in its
// places that can be said, else "".
func (c *Catalogue) fits(s *sentence, text string, depth int) string {
	n := len(s.texts) - 1
	if s.ends != strings.Count(text, ". ") && !slices.Contains(s.marks, "*") {
		return ""
	}
	if !strings.HasPrefix(text, s.texts[0]) || !strings.HasSuffix(text, s.texts[n]) || len(text) < len(s.texts[0])+len(s.texts[n])+n {
		return ""
	}
	for _, part := range s.texts[1:n] {
		if !strings.Contains(text, part) {
			return ""
		}
	}
	puts := make([]string, n)
	if !c.fill(s, puts, 0, text[len(s.texts[0]):], depth) {
		return ""
	}
	var b strings.Builder
	for i, place := range s.order {
		b.WriteString(s.twin[i])
		b.WriteString(puts[place])
	}
	b.WriteString(s.twin[n])
	return b.String()
}

// fill finds what stands in the places from one on, where the rest of the text begins.
func (c *Catalogue) fill(s *sentence, puts []string, place int, rest string, depth int) bool {
	next := s.texts[place+1]
	if place == len(puts)-1 {
		end := len(rest) - len(next)
		if end < 1 || rest[end:] != next {
			return false
		}
		puts[place] = c.put(rest[:end], s.marks[place], depth+1)
		return puts[place] != ""
	}
	for end := 1; end+len(next) <= len(rest); end++ {
		if rest[end:end+len(next)] != next {
			continue
		}
		if puts[place] = c.put(rest[:end], s.marks[place], depth+1); puts[place] != "" && c.fill(s, puts, place+1, rest[end+len(next):], depth) {
			return true
		}
	}
	return false
}

// put says what stands in a place: a number stays, anything else needs a twin, or a place
// that takes anything.
func (c *Catalogue) put(text, mark string, depth int) string {
	switch {
	case mark == "number" && !number(text), mark == "year" && (len(text) != 4 || !number(text)):
		return ""
	case number(text):
		return text
	case mark != "*" && depth > 0 && (len(text) > longest && mark != "sentence" || strings.Contains(text, ". ")):
		return ""
	}
	if twin := c.whole(text, depth); twin != "" || mark != "*" {
		return twin
	}
	return text
}

// address tells whether a text is one of the web, which no language changes.
func address(text string) bool {
	return strings.Contains(text, "://") && !strings.Contains(text, " ")
}

// number tells whether a text is figures and signs alone, at least one figure among them;
// "3, 2027" is a day and a year, and "2027:" the end of something.
func number(text string) bool {
	if strings.Contains(text, ", ") || strings.IndexByte(".,:", text[len(text)-1]) >= 0 {
		return false
	}
	figure := false
	for _, r := range text {
		switch {
		case r >= '0' && r <= '9':
			figure = true
		case !strings.ContainsRune(" .,:+-–−±×/%°$½¼¾⅛⅜⅝⅞", r):
			return false
		}
	}
	return figure
}
