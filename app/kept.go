package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// storageKey is where the device keeps the field that is being worked on.
const storageKey = "film-furrow/field"

// saved is what the device keeps: the case file, the station's row (so that the
// page works before the table of stations has come), and every text that stands
// in a field.
type saved struct {
	Case     string
	Station  string
	Ticks    map[string]bool
	Typed    map[string]string
	System   unit.System
	Example  bool            // the case is an example still
	Own      bool            // an empty field is being filled
	Farm     string          // the example's name
	Borrowed map[string]bool // what is the example's and not confirmed
}

const schema = "2"

// keptMost is the longest text that is read back: far above any form's, and short
// of what a browser's storage could be stuffed with.
const keptMost = 256 << 10

// text is what is kept, as JSON.
func (k *saved) text() string {
	var b strings.Builder
	flags := func(name string, set map[string]bool) {
		b.WriteString(`},"` + name + `":{`)
		comma := ""
		for name, on := range set {
			b.WriteString(comma + jsontext.Quote(name) + ":" + strconv.FormatBool(on))
			comma = ","
		}
	}
	b.WriteString(`{"schema":` + schema + `,"case":` + jsontext.Quote(k.Case) + `,"station":` + jsontext.Quote(k.Station) +
		`,"system":` + strconv.Itoa(int(k.System)) + `,"example":` + strconv.FormatBool(k.Example) + `,"own":` + strconv.FormatBool(k.Own) + `,"farm":` + jsontext.Quote(k.Farm) + `,"typed":{`)
	comma := ""
	for name, text := range k.Typed {
		b.WriteString(comma + jsontext.Quote(name) + ":" + jsontext.Quote(text))
		comma = ","
	}
	flags("ticks", k.Ticks)
	flags("borrowed", k.Borrowed)
	b.WriteString("}}")
	return b.String()
}

// readSaved reads what an older visit kept. What is not as we write it is left
// out, since storage is anybody's.
func readSaved(text string) *saved {
	if len(text) > keptMost {
		return nil
	}
	v, err := jsontext.Parse([]byte(text), 4)
	o, ok := v.(*jsontext.Object)
	if err != nil || !ok {
		return nil
	}
	k := &saved{Typed: map[string]string{}, Ticks: map[string]bool{}, Borrowed: map[string]bool{}}
	k.Case, _ = o.Get("case").(string)
	k.Station, _ = o.Get("station").(string)
	k.Example, _ = o.Get("example").(bool)
	k.Own, _ = o.Get("own").(bool)
	k.Farm, _ = o.Get("farm").(string)
	if o.Get("system") == jsontext.Number(strconv.Itoa(int(unit.US))) {
		k.System = unit.US
	}
	if typed, ok := o.Get("typed").(*jsontext.Object); ok {
		for i, name := range typed.Names {
			if text, ok := typed.Values[i].(string); ok {
				k.Typed[name] = text
			}
		}
	}
	flags := func(name string, set map[string]bool) {
		if ticks, ok := o.Get(name).(*jsontext.Object); ok {
			for i, name := range ticks.Names {
				if ticks.Values[i] == true {
					set[name] = true
				}
			}
		}
	}
	flags("ticks", k.Ticks)
	flags("borrowed", k.Borrowed)
	return k
}

// deviceText reads one text that the device keeps.
func deviceText(key string) string {
	if text := app.Window().Get("localStorage").Call("getItem", key); text.Truthy() {
		return text.String()
	}
	return ""
}

// keepOnDevice is false where the storage is full or shut.
func keepOnDevice(key, text string) (ok bool) {
	defer func() {
		if recover() != nil {
			ok = false
		}
	}()
	app.Window().Get("localStorage").Call("setItem", key, text)
	return true
}

// save keeps the field once the typing rests.
func (s *store) save() {
	s.lane.unkept = true
	s.wakeIn(0)
}

func (s *store) keepNow() {
	if s.keep == nil {
		return
	}
	state := s.state()
	ok := s.keep(state)
	if !ok { // the field itself comes before what can be taken back
		keepOnDevice(undoKey, "")
		ok = s.keep(state)
	}
	s.keepUndo()
	if ok == s.unsaved {
		s.unsaved = !ok
		s.tell(onExample)
	}
}

// take brings back what the device kept. Fields that cannot be read stay as
// they were typed, with their error.
func (s *store) take(kept *saved) bool {
	var place *normals.Table
	if kept.Station != "" {
		place, _ = normals.Parse(kept.Station) // a damaged row: found again when the table comes
	}
	c, ok := casefile.Salvage([]byte(kept.Case), place)
	if !ok {
		return false
	}
	s.c, s.example, s.system, s.own = c, kept.Example, min(kept.System, unit.US), kept.Own
	if s.borrowed = kept.Borrowed; kept.Farm != "" {
		s.farm = kept.Farm
	}
	s.typed = map[string]string{}
	s.wrong = map[string]field.Error{}
	s.ticks = map[string]bool{}
	for key, on := range kept.Ticks {
		if on {
			s.ticks[key] = true
		}
	}
	for name, text := range kept.Typed {
		in := field.InputByName(name)
		if in == nil {
			if isBox(name) {
				s.typed[name] = text
			}
			continue
		}
		s.typed[name] = text
		if strings.TrimSpace(text) == "" {
			continue
		}
		if _, e := s.read(in, text); e != nil {
			s.wrong[name] = *e
		}
	}
	if s.own && !s.enough() {
		s.advice, s.ground, s.digging = nil, nil, false
		return true
	}
	s.work()
	if s.advice == nil && !s.digging && !s.own { // half a form: the example's answers stand until it is whole
		whole := *s
		whole.c, whole.wrong = exampleCase(), map[string]field.Error{}
		whole.dig = nil // what is worked out later would be the copy's alone
		whole.work()
		s.advice, s.ground, s.stale = whole.advice, whole.ground, true
	}
	return true
}

// followOtherTab shows what was typed in another tab, so that the last of two tabs
// to write loses nothing of the other's. A link's field stays until it is changed.
func (s *store) followOtherTab() {
	if kept := readSaved(deviceText(storageKey)); kept != nil && !s.linked && s.take(kept) {
		s.note, s.noteBad = "This field was changed in another tab; here it is.", false
		s.tell(onAdvice | onForm | onPlaces | onUnits | onExample)
	}
}

// setAside puts the field that the device kept among the named ones, once a link's
// field takes its place. Where the table of stations is yet to come, it waits for it.
func (s *store) setAside() {
	if s.aside == "" {
		return
	}
	old := readSaved(s.aside)
	if old == nil || old.Example {
		s.aside = ""
		return
	}
	c, err := casefile.Decode([]byte(old.Case), s.places)
	if err != nil {
		if s.places != nil && !s.askWorld(nil) { // half a field: it can be taken back, not named
			s.aside = ""
		}
		return
	}
	var fields []casefile.Field
	if text := deviceText(fieldsKey); text != "" {
		if fields, err = casefile.DecodeFields([]byte(text), s.places); err != nil {
			return
		}
	}
	s.aside = ""
	name := strings.TrimSpace(old.Typed[nameBox])
	if !casefile.GoodName(name) {
		name = "Before the link"
	}
	for n, base := 2, name; ; n++ {
		have := false
		for i := range fields {
			if fields[i].Name == name {
				if string(casefile.Encode(&fields[i].Case)) == string(casefile.Encode(&c)) {
					return // it is there already
				}
				have = true
			}
		}
		if !have {
			break
		}
		name = base + " " + strconv.Itoa(n)
	}
	if len(fields) < casefile.MaxFields {
		keepOnDevice(fieldsKey, string(casefile.EncodeFields(append(fields, casefile.Field{Name: name, Case: c}))))
		s.tell(onForm)
	}
}
