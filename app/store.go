package app

import (
	"encoding/json"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// store is the one place that changes. What was typed becomes a case; the
// case becomes advice; the parts of the page show it. Nothing flows back.
type store struct {
	c       rules.Case
	typed   map[string]string // text as it stands in each field
	wrong   map[string]rules.FieldError
	advice  *rules.Advice // the last good one
	stale   bool          // the advice is older than what stands in the form
	ground  *rules.Ground // soil warmth of the last place, soil and bed
	digging bool          // soil warmth for another place is being worked out
	wanted  rules.GroundKey
	// dig works in slices beside the typing and calls back when all is done;
	// without it (before the page runs) the work is done at once.
	dig func(*rules.GroundWork, func())
	// slices runs steps until one says that all is done, beside the typing.
	slices  func(step func() bool, done func())
	study   *study
	worked  worked
	ticks   map[string]bool // boxes of the laying-day sheet
	system  unit.System
	example bool // nothing of the grower's own has been typed yet
	places  *normals.Table
	noPlace bool   // the normals could not be loaded
	note    string // what the page has to tell, such as where the field came from
	noteBad bool
	waiting string // the address of a link whose station has not come yet
	unsaved bool   // the device refused to keep what was typed
	watched map[app.Composer]watch
	keep    func(saved) bool
}

// topic is what a part of the page listens to.
type topic uint8

const (
	onAdvice topic = 1 << iota
	onForm
	onPlaces
	onUnits
	onStudy
)

type watch struct {
	to     topic
	update func()
}

// newStore begins with what the device kept, or with the worked example.
func newStore(kept *saved) *store {
	s := &store{c: exampleCase(), example: true, system: unit.US,
		typed: map[string]string{}, wrong: map[string]rules.FieldError{}, ticks: map[string]bool{}, watched: map[app.Composer]watch{}}
	if kept == nil || !s.take(kept) {
		s.work()
	}
	return s
}

// follow makes a part redraw itself when one of its topics is told.
func (s *store) follow(part app.Composer, to topic, update func()) {
	s.watched[part] = watch{to, update}
}

func (s *store) leave(part app.Composer) { delete(s.watched, part) }

func (s *store) tell(t topic) {
	for _, w := range s.watched {
		if w.to&t != 0 {
			w.update()
		}
	}
}

// work asks the engine. Wrong fields leave the last good advice standing,
// marked as such. Where the soil's warmth must be worked out anew, the last
// advice stands until it is there.
func (s *store) work() {
	for field := range s.wrong {
		if s.wrong[field].Field != field { // errors that came from the whole case
			delete(s.wrong, field)
		}
	}
	if errs := rules.Check(&s.c); len(errs) > 0 {
		s.blame(errs)
		return
	}
	key := rules.KeyOf(s.c)
	if s.ground == nil || s.ground.Key != key {
		s.digFor(key)
		return
	}
	s.digging = false
	a, err := rules.AdviseOn(s.ground, s.c)
	if err != nil {
		s.blame(err)
		return
	}
	s.advice = &a
	s.stale = len(s.wrong) > 0
	s.study = nil
	s.begin()
}

// digFor works out the soil's warmth, and then the advice.
func (s *store) digFor(key rules.GroundKey) {
	if s.digging && s.wanted == key {
		return
	}
	work, err := rules.NewGroundWork(s.c)
	if err != nil {
		s.blame(err)
		return
	}
	s.digging, s.wanted = true, key
	done := func() {
		if s.wanted != key {
			return // somebody typed on; a newer work is under way
		}
		s.ground, s.digging = work.Ground(), false
		s.work()
	}
	if s.dig == nil {
		for !work.Step(1000) {
		}
		done()
		return
	}
	s.dig(work, func() {
		done()
		s.tell(onAdvice)
	})
}

// blame sets errors of the whole case beside their fields.
func (s *store) blame(err error) {
	s.stale = true
	list, ok := err.(rules.FieldErrors)
	if !ok {
		return
	}
	for _, e := range list {
		if _, have := s.wrong[e.Field]; !have {
			field := e.Field
			e.Field += " "
			s.wrong[field] = e
		}
	}
}

// set takes what was typed into one field.
func (s *store) set(in *rules.Input, text string) {
	s.typed[in.Name] = text
	delete(s.wrong, in.Name)
	if s.example {
		s.example = false
		s.tell(onForm | onPlaces)
	}
	if strings.TrimSpace(text) == "" {
		in.Clear(&s.c)
	} else if v, e := s.read(in, text); e != nil {
		s.wrong[in.Name] = *e
	} else {
		in.Set(&s.c, v)
	}
	if in.Name == "crop" {
		s.usualStart()
	}
	s.changed()
}

// usualStart sets the way in which the chosen crop is started most: set out or
// sown. The grower may change it after.
func (s *store) usualStart() {
	crop := table.CropByID(s.c.Crop)
	if crop == nil || s.c.Method == string(crop.Start) {
		return
	}
	s.c.Method = string(crop.Start)
	delete(s.typed, "method")
	delete(s.wrong, "method")
	s.tell(onForm)
}

func (s *store) changed() {
	s.work()
	s.save()
	s.tell(onAdvice)
}

// read turns text in the reader's units into a value in SI.
func (s *store) read(in *rules.Input, text string) (rules.Value, *rules.FieldError) {
	v := rules.Value{Word: text}
	switch in.Form {
	case rules.FormDate:
		day, err := unit.ParseDate(text)
		if err != nil {
			return v, &rules.FieldError{Field: in.Name, Value: text, Allowed: in.Allowed(), Mend: "There is no such day."}
		}
		v = rules.Value{Number: float64(day)}
	case rules.FormDay:
		day, err := unit.ParseMonthDay(text)
		if err != nil {
			return v, &rules.FieldError{Field: in.Name, Value: text, Allowed: in.Allowed(), Mend: "Write month and day, such as 05-14."}
		}
		v = rules.Value{Number: float64(day)}
	case rules.FormYesNo:
		v = rules.Value{}
		if text == "yes" {
			v.Number = 1
		}
	case rules.FormNumber, rules.FormWhole:
		x, err := in.Kind.Read(text, s.system)
		if err != nil {
			return v, &rules.FieldError{Field: in.Name, Value: text, Allowed: s.allowed(in), Mend: "Write a plain number."}
		}
		v = rules.Value{Number: settle(x, in)}
	}
	if e := in.CheckValue(v); e != nil {
		e.Value, e.Allowed = text, s.allowed(in)
		return v, e
	}
	return v, nil
}

// settle lets a figure that was typed at the shown limit of its range count as
// the limit, since the limit was rounded when it was shown.
func settle(x float64, in *rules.Input) float64 {
	slack := (in.High - in.Low) * 1e-6
	switch {
	case x > in.High && x < in.High+slack:
		return in.High
	case x < in.Low && x > in.Low-slack:
		return in.Low
	}
	return x
}

// allowed says an input's range in the reader's units.
func (s *store) allowed(in *rules.Input) string {
	if in.Form != rules.FormNumber && in.Form != rules.FormWhole {
		return in.Allowed()
	}
	text := in.Kind.Figure(in.Low, s.system) + " to " + in.Kind.Figure(in.High, s.system)
	if symbol := in.Kind.Symbol(s.system); symbol != "" {
		text += " " + symbol
	}
	return text
}

// shown is the text that stands in a field.
func (s *store) shown(in *rules.Input) string {
	if text, ok := s.typed[in.Name]; ok {
		return text
	}
	v, given := in.Get(&s.c)
	if !given {
		return ""
	}
	switch in.Form {
	case rules.FormChoice, rules.FormText:
		return v.Word
	case rules.FormDate:
		return unit.Date(v.Number).String()
	case rules.FormDay:
		return casefile.DayText(int(v.Number))
	case rules.FormYesNo:
		if v.Number == 1 {
			return "yes"
		}
		return "no"
	}
	return figure(in.Kind, v.Number, s.system)
}

// setUnits changes what is shown. The case stays as it is.
func (s *store) setUnits(system unit.System) {
	if s.system == system {
		return
	}
	s.convertBoxes(s.system, system)
	s.system = system
	for name := range s.typed {
		if _, bad := s.wrong[name]; !bad && !isBox(name) {
			delete(s.typed, name)
		}
	}
	s.save()
	s.tell(onAdvice | onForm | onUnits | onPlaces)
}

// choose takes a station's normals.
func (s *store) choose(st *normals.Station) {
	s.example = false
	elevation := s.c.Place.Elevation
	if s.c.Place.Station != "" || s.c.Place.Own {
		elevation = rules.Optional[unit.Metres]{}
	}
	s.c.Place = rules.Place{Station: st.ID, Elevation: elevation}
	s.locate()
}

// here takes the tablet's position.
func (s *store) here(latitude, longitude float64) {
	s.example = false
	s.c.Place = rules.Place{
		Latitude:  rules.Known(unit.Degrees(round2(latitude))),
		Longitude: rules.Known(unit.Degrees(round2(longitude))),
	}
	s.locate()
}

func (s *store) locate() {
	casefile.Locate(&s.c, s.places)
	for _, name := range []string{"place.lat", "place.lon", "place.elevation_m"} {
		delete(s.typed, name)
	}
	s.changed()
	s.tell(onForm | onPlaces)
}

// ownNormals takes twelve minima and maxima in the reader's units. It answers
// what is wrong, box by box; the case changes only when all are right.
func (s *store) ownNormals() map[string]string {
	wrong := map[string]string{}
	var low, high [12]unit.Celsius
	read := func(key string) unit.Celsius {
		v, err := unit.KindTemperature.Read(s.boxText(key), s.system)
		if err != nil {
			wrong[key] = "Write a number."
		} else if v < -60 || v > 60 {
			wrong[key] = "Allowed: " + unit.KindTemperature.Figure(-60, s.system) + " to " + unit.KindTemperature.Figure(60, s.system) + "."
		}
		return unit.Celsius(v)
	}
	for m := range 12 {
		least, most := monthKey("min", m), monthKey("max", m)
		low[m], high[m] = read(least), read(most)
		if wrong[least] == "" && wrong[most] == "" && low[m] >= high[m] {
			wrong[most] = "The maximum must lie above the minimum."
		}
	}
	lat, err := unit.KindAngle.Read(s.boxText(normalsLatitude), s.system)
	if err != nil || lat < -66 || lat > 72 {
		wrong[normalsLatitude] = "Degrees from −66 to 72; south is minus."
	}
	if len(wrong) > 0 {
		return wrong
	}
	s.example = false
	s.c.Place = rules.Place{Own: true, HasNormals: true, TMin: low, TMax: high, Latitude: rules.Known(unit.Degrees(lat)), Elevation: s.c.Place.Elevation}
	for name := range s.typed {
		if strings.HasPrefix(name, "normals-") {
			delete(s.typed, name) // they stand in the case now
		}
	}
	s.changed()
	s.tell(onForm | onPlaces)
	return nil
}

// saved is what the device keeps: the case file, the place's normals (so that
// the page works before the table of stations has come), and every text that
// stands in a field.
type saved struct {
	Schema  int               `json:"schema"`
	Case    string            `json:"case"`
	Place   rules.Place       `json:"place"`
	Ticks   map[string]bool   `json:"ticks"`
	Typed   map[string]string `json:"typed"`
	System  unit.System       `json:"system"`
	Example bool              `json:"example"` // the case is the worked example still
}

const schema = 1

func (s *store) save() {
	if s.keep == nil {
		return
	}
	ok := s.keep(saved{Schema: schema, Case: string(casefile.Encode(&s.c)), Place: s.c.Place, Typed: s.typed, Ticks: s.ticks, System: s.system, Example: s.example})
	if ok == s.unsaved {
		s.unsaved = !ok
		s.tell(onForm)
	}
}

// take brings back what the device kept. Fields that cannot be read stay as
// they were typed, with their error.
func (s *store) take(kept *saved) bool {
	c, ok := relaxed(kept.Case)
	if !ok {
		return false
	}
	c.Place = kept.Place
	s.c, s.example, s.system = c, kept.Example, min(kept.System, unit.US)
	s.typed = map[string]string{}
	s.wrong = map[string]rules.FieldError{}
	for key, on := range kept.Ticks {
		if on {
			s.ticks[key] = true
		}
	}
	for name, text := range kept.Typed {
		in := rules.InputByName(name)
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
	s.work()
	if s.advice == nil { // half a form: the example's answers stand until it is whole
		whole := *s
		whole.c, whole.wrong = exampleCase(), map[string]rules.FieldError{}
		whole.work()
		s.advice, s.ground, s.stale = whole.advice, whole.ground, true
	}
	return true
}

// relaxed reads the fields of a kept case that are right by themselves: a half
// filled form is no error. The page does not carry the strict reader of case
// files, which would add some 12 kB to what every grower downloads.
func relaxed(text string) (rules.Case, bool) {
	var c rules.Case
	var tree map[string]any
	if json.Unmarshal([]byte(text), &tree) != nil {
		return c, false
	}
	for i := range rules.Inputs {
		in := &rules.Inputs[i]
		v, found := dig(tree, strings.Split(in.Name, "."))
		if !found {
			continue
		}
		if value, ok := plainValue(in, v); ok && in.CheckValue(value) == nil {
			in.Set(&c, value)
		}
	}
	return c, true
}

func dig(tree map[string]any, path []string) (any, bool) {
	v, found := tree[path[0]]
	if !found || len(path) == 1 {
		return v, found
	}
	child, ok := v.(map[string]any)
	if !ok {
		return nil, false
	}
	return dig(child, path[1:])
}

func plainValue(in *rules.Input, v any) (rules.Value, bool) {
	switch v := v.(type) {
	case string:
		switch in.Form {
		case rules.FormDate:
			day, err := unit.ParseDate(v)
			return rules.Value{Number: float64(day)}, err == nil
		case rules.FormDay:
			day, err := unit.ParseMonthDay(v)
			return rules.Value{Number: float64(day)}, err == nil
		}
		return rules.Value{Word: v}, in.Form == rules.FormChoice || in.Form == rules.FormText
	case float64:
		return rules.Value{Number: v}, in.Form == rules.FormNumber || in.Form == rules.FormWhole
	case bool:
		if v {
			return rules.Value{Number: 1}, in.Form == rules.FormYesNo
		}
		return rules.Value{}, in.Form == rules.FormYesNo
	case []any:
		set := filmSet(v)
		return rules.Value{Number: float64(set)}, in.Form == rules.FormFilms && set != 0
	}
	return rules.Value{}, false
}
