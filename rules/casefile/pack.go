package casefile

import (
	"encoding/binary"
	"hash/crc32"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table/normals"
)

// A pack of a workshop is a JSON file:
//
//	{"pack": 1, "title": "Hot places", "stops": [
//	  {"farm": "heron-flat", "notes": "Who has burned a stem?"},
//	  {"field": "1abc…", "title": "By the creek", "ask": "film", "answer": "black",
//	   "turn": "plant_on", "to": "2027-06-20", "then": "white-on-black"}]}
//
// A stop is one farm of ours, by its word, or a field in the letters of a link. What it
// promises, answer and then, is worked out anew by whoever opens it; of a day it is the round
// one nearest to it, such as 05-20.

// Limits of a pack.
const (
	MaxPackBytes = 64 << 10
	MaxStops     = 40
	MaxWords     = 600 // letters of a lesson, or of the speaker's notes
)

// Stop is one field of a pack, in the order of a talk.
type Stop struct {
	Farm                 string     // one of ours, or
	Field                field.Case // a field of the pack's maker
	Title, Lesson, Notes string
	Ask                  question.Question
	Asked                bool   // the question is another than the farm's own
	Answer, Then         string // ids, "none" where nothing fits; empty where nothing is promised
	Turn                 *field.Input
	To                   field.Value
}

// stopNames are what a stop may have.
var stopNames = []string{"farm", "field", "title", "ask", "answer", "turn", "to", "then", "lesson", "notes"}

// DecodePack reads a pack strictly, all or nothing; errors name the field by its place.
// Farms are the words of ours.
func DecodePack(data []byte, farms []string, places *normals.Table) (title string, stops []Stop, err error) {
	root, errs := parseWithin(data, MaxPackBytes, maxDepth)
	if root == nil {
		return "", nil, errs
	}
	d := decoder{errs: errs}
	d.known(root, "", "pack", "title", "stops")
	if v := root.Get("pack"); v != jsontext.Number("1") {
		d.fail("pack", kindOf(v), "1", "Choose a file that “Save the pack” wrote, or update the page.")
	}
	title = d.words(root, "", "title", MaxName, true)
	list, _ := root.Get("stops").([]any)
	if n := len(list); n == 0 || n > MaxStops {
		d.fail("stops", kindOf(root.Get("stops")), "1 to "+strconv.Itoa(MaxStops)+" fields", "Choose at least one field.")
	}
	for i, item := range list {
		at := "stops[" + strconv.Itoa(i+1) + "]"
		if o, ok := item.(*jsontext.Object); ok {
			stops = append(stops, d.stop(o, at, farms, places))
		} else {
			d.fail(at, kindOf(item), "an object", "Write its fields between braces.")
		}
	}
	if len(d.errs) > 0 {
		return "", nil, d.errs
	}
	return title, stops, nil
}

// words reads a text without control characters, of so many letters at most.
func (d *decoder) words(o *jsontext.Object, at, name string, most int, needed bool) string {
	v := o.Get(name)
	if v == nil && !needed && !slices.Contains(o.Names, name) {
		return ""
	}
	text, _ := v.(string)
	if n := utf8.RuneCountInString(text); n == 0 || n > most || strings.ContainsFunc(text, func(r rune) bool { return r < ' ' || r == 0x7f }) {
		d.fail(join(at, name), kindOf(v), "1 to "+strconv.Itoa(most)+" letters on one line", "Write something shorter, or leave it out.")
	}
	return text
}

// oneOf reads a word that is one of a list.
func (d *decoder) oneOf(o *jsontext.Object, at, name string, list []string) int {
	v := o.Get(name)
	text, _ := v.(string)
	i := slices.Index(list, text)
	if i < 0 {
		d.fail(join(at, name), kindOf(v), strings.Join(list, ", "), "Write one of these.")
	}
	return i
}

func (d *decoder) stop(o *jsontext.Object, at string, farms []string, places *normals.Table) (s Stop) {
	d.known(o, at, stopNames...)
	has := func(name string) bool { return slices.Contains(o.Names, name) }
	own := has("field")
	switch {
	case own == has("farm"):
		d.fail(at, "farm and field", "one of the two", "Name a farm of ours, or give a field.")
	case own:
		text, _ := o.Get("field").(string)
		c, err := ReadLink(text, places)
		if err != nil {
			why, _, _ := strings.Cut(err.Error(), "\n")
			d.fail(at+".field", kindOf(o.Get("field")), "the letters of a link to a field", why)
		}
		s.Field = c
	default:
		if i := d.oneOf(o, at, "farm", farms); i >= 0 {
			s.Farm = farms[i]
		}
	}
	s.Title = d.words(o, at, "title", MaxName, own)
	s.Lesson = d.words(o, at, "lesson", MaxWords, false)
	s.Notes = d.words(o, at, "notes", MaxWords, false)
	if s.Asked = own || has("ask"); s.Asked {
		var names, answers []string
		for q := range question.Day + 1 {
			names = append(names, q.String())
		}
		i := d.oneOf(o, at, "ask", names)
		if i < 0 {
			return s
		}
		s.Ask = question.Question(i)
		for k := range s.Ask.Options() {
			answers = append(answers, s.Ask.Key(question.Option(k)))
		}
		answers = append(answers, "none")
		for i, to := range [...]*string{&s.Answer, &s.Then} {
			if name := [...]string{"answer", "then"}[i]; has(name) {
				if k := d.oneOf(o, at, name, answers); k >= 0 {
					*to = answers[k]
				}
			}
		}
	} else if has("answer") || has("then") {
		d.fail(at+".ask", "missing", "a question", "Say which question the answers are to.")
	}
	if has("turn") != has("to") || has("then") != has("turn") && s.Asked {
		d.fail(at+".turn", "missing", "turn, to and then", "Give all three, or none.")
		return s
	}
	if has("turn") {
		name, _ := o.Get("turn").(string)
		if s.Turn = field.InputByName(name); s.Turn == nil {
			d.fail(at+".turn", kindOf(o.Get("turn")), "the name of an input", nearest(name))
			return s
		}
		v, wrong := read(s.Turn, o.Get("to"))
		if wrong == nil {
			wrong = s.Turn.CheckValue(v)
		}
		if wrong != nil {
			wrong.Field = at + ".to"
			d.errs = append(d.errs, *wrong)
		}
		s.To = v
	}
	return s
}

// Sealed is a text in the letters of a link, with its length and a checksum.
func Sealed(body []byte) string {
	all := binary.AppendUvarint(nil, uint64(len(body)))
	all = append(all, body...)
	return spelled(binary.BigEndian.AppendUint32(all, crc32.ChecksumIEEE(all)))
}

// Unsealed reads what Sealed wrote; one that was cut or altered is refused.
func Unsealed(text string) ([]byte, error) {
	all, ok := unspelled(text)
	length, n := binary.Uvarint(all)
	if !ok || n <= 0 || length != uint64(len(all)-n-4) {
		return nil, linkError("The link was cut or mistyped.")
	}
	body := all[:len(all)-4]
	if crc32.ChecksumIEEE(body) != binary.BigEndian.Uint32(all[len(all)-4:]) {
		return nil, linkError("The link was altered or mistyped.")
	}
	return body[n:], nil
}
