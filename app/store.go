package app

import (
	"strings"
	"time"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/table/series"
	"filmfurrow/rules/unit"
)

// store is the one place that changes. What was typed becomes a case; the
// case becomes advice; the parts of the page show it. Nothing flows back.
type store struct {
	c       field.Case
	typed   map[string]string // text as it stands in each field
	wrong   map[string]field.Error
	advice  *plan.Advice    // the last good one
	told    *plan.Advice    // the last that the parts were told of
	stale   bool            // the advice is older than what stands in the form
	ground  *facts.SoilYear // soil warmth of the last place, soil and bed
	digging bool            // soil warmth for another place is being worked out
	wanted  facts.SoilKey
	// dig works in slices beside the typing and calls back when all is done;
	// without it (before the page runs) the work is done at once.
	dig func(*facts.SoilYearWork, func())
	// slices runs steps until one says that all is done, beside the typing; a newer
	// work of the same owner takes its place.
	slices     func(of any, step func() bool, done func())
	study      *study // of the advice that is shown
	studied    *study // the last that came to an end
	worked     worked
	ticks      map[string]bool // boxes of the laying-day sheet
	system     unit.System
	example    bool // nothing of the grower's own has been typed yet
	places     *normals.Table
	texts      map[string]string // of sources and rules, by id: see sourceTexts
	asking     bool              // for the stations of other countries
	soils      series.Table      // once somebody names a series
	noSoil     string            // the series that was sought in it last and is not there
	askedSoils bool
	spots      normals.Places
	thenWorld  func() // what waits for them
	noPlace    bool   // the normals could not be loaded
	note       string // what the page has to tell, such as where the field came from
	noteBad    bool
	waiting    string // the address of a link whose station has not come yet
	linked     bool   // the field came with the address and is as it came
	abroad     bool   // a first visit from a country of metric units, which are yet to be shown
	unsaved    bool   // the device refused to keep what was typed
	watched    map[app.Composer]watch
	follows    int
	keep       func(saved) bool
	lane       lane
	before     map[string]string // parts as they were prerendered, shown until there is advice
	whole      bool              // every part of the page has been drawn
	spoken     string            // the errors that are read out
	heard      string            // what moved, as it is read out
	speak      func()            // has them read out when the typing has rested
	title      string            // of the page, as it was last set for them
	at         string            // the view that is shown
	farm       string            // the invented farm that the example is
	own        bool              // an empty field is being filled: there are no answers before there is enough
	opened     string            // the address's field that is open
	aside      string            // what the device kept before a link's field was changed, till it is among the named
	undo       []undoStep
	step       string       // what is being changed, so that its next key is no step of its own
	moved      string       // what was changed last
	since      *plan.Advice // the advice before that
	// borrowed are the inputs whose values came with the example and were neither
	// changed nor confirmed.
	borrowed map[string]bool
	day      unit.Optional[unit.Date] // that was set for today
	finding  bool                     // the place is being looked for
	films    yearFilms                // what to lay when, of the advice that is shown
}

// topic is what a part of the page listens to.
type topic uint16

const (
	onAdvice topic = 1 << iota
	onForm
	onPlaces
	onUnits
	onStudy
	onStart   // the first advice is there
	onExample // the field is no longer the worked example, or what the page has to tell changed
	onAnswer  // the advice is another, told with onAdvice: for parts that show nothing else
	onSaid    // what is read out changed
	onSums    // plan, list and costs of the advice are there
)

type watch struct {
	to     topic
	update func()
	turn   int // in the order of the page
}

// storeOf begins with a case that is yet to be worked out.
func storeOf(c field.Case) *store {
	return &store{c: c, system: unit.US, at: "/", farm: farmName(&pack.Lands[0]), borrowed: map[string]bool{}, lane: lane{due: map[app.Composer]bool{}},
		typed: map[string]string{}, wrong: map[string]field.Error{}, ticks: map[string]bool{}, watched: map[app.Composer]watch{}}
}

// newStore begins with what the device kept, or with the worked example.
func newStore(kept *saved) *store {
	s := storeOf(exampleCase())
	s.example = true
	if kept == nil || !s.take(kept) {
		s.work()
	}
	return s
}

// follow makes a part redraw itself when one of its topics is told.
func (s *store) follow(part app.Composer, to topic, update func()) {
	s.follows++
	turn := s.follows
	switch part.(type) {
	case *balancePart, *changePart:
		turn -= 1 << 20 // they stand within the answers, and are made when these come
	}
	s.watched[part] = watch{to, update, turn}
}

func (s *store) leave(part app.Composer) { delete(s.watched, part) }

// work asks the engine. Wrong fields leave the last good advice standing,
// marked as such. Where the soil's warmth must be worked out anew, the last
// advice stands until it is there.
func (s *store) work() {
	s.findSoil()
	for name := range s.wrong {
		if s.wrong[name].Field != name { // errors that came from the whole case
			delete(s.wrong, name)
		}
	}
	if s.own && s.advice == nil && !s.enough() {
		return
	}
	if errs := field.Check(&s.c); len(errs) > 0 {
		s.blame(errs)
		return
	}
	key := facts.KeyOf(s.c)
	if s.ground == nil || s.ground.Key != key {
		s.digFor(key)
		return
	}
	s.digging = false
	a, err := rules.AdviseAfter(s.advice, s.ground, s.c)
	if err != nil {
		s.blame(err)
		return
	}
	first := s.advice == nil
	s.advice = &a
	s.stale = len(s.wrong) > 0
	s.study = nil
	s.begin()
	if first {
		s.start()
	}
}

// findSoil looks a soil series up, in a table that is fetched for the first of them.
func (s *store) findSoil() {
	switch {
	case s.c.Soil.Series == "", s.c.Soil.OfSeries != (field.SeriesSoil{}), s.soils != "" && s.noSoil == s.c.Soil.Series:
	case s.soils != "":
		if casefile.LocateSoil(&s.c, s.soils); s.c.Soil.OfSeries == (field.SeriesSoil{}) {
			s.noSoil = s.c.Soil.Series
		}
	case !s.askedSoils:
		s.askedSoils = true
		loadTable("series.csv", func(text string) {
			s.soils = series.Table(text)
			s.work()
			s.tell(onForm)
		})
	}
}

// digFor works out the soil's warmth, and then the advice.
func (s *store) digFor(key facts.SoilKey) {
	if s.digging && s.wanted == key {
		return
	}
	work, err := facts.NewSoilYearWork(s.c)
	if err != nil {
		s.blame(err)
		return
	}
	s.digging, s.wanted = true, key
	s.study = nil // its slices would take turns with those of the soil
	done := func() {
		if s.wanted != key {
			return // somebody typed on; a newer work is under way
		}
		s.ground, s.digging = work.Year(), false
		s.work()
		if s.speak != nil {
			s.speak()
		}
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
	list, ok := err.(field.Errors)
	if !ok {
		return
	}
	for _, e := range list {
		if _, have := s.wrong[e.Field]; !have {
			name := e.Field
			e.Field += " "
			s.wrong[name] = e
		}
	}
}

// set takes what was typed into one field.
func (s *store) set(in *field.Input, text string) {
	s.touch(lower(in.Label), borrowedAs(in.Name))
	s.typed[in.Name] = text
	delete(s.wrong, in.Name)
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
	s.lane.key = time.Now()
	s.changed()
	s.mark()
}

// mark shows errors beside the fields that they came to or went from. They are read
// out when the typing has rested: at each key it would be noise.
func (s *store) mark() {
	for part := range s.watched {
		if f, ok := part.(*entry); ok && f.face.wrong != f.error() {
			f.Update()
		}
	}
	if s.speak != nil {
		s.titled()
	}
}

// titled says in the title that something is to be mended.
func (s *store) titled() {
	title := titleOf(s.at)
	if len(s.wrong) > 0 {
		title = "Correct first: " + title
	}
	if title == s.title { // the browser would tell all who listen, each time
		return
	}
	s.title = title
	app.Window().Get("document").Set("title", title)
}

// usualStart sets the way in which the chosen crop is started most: set out or
// sown. The grower may change it after.
func (s *store) usualStart() {
	crop := table.CropByID(s.c.Crop)
	if crop == nil || s.c.Method == string(crop.Start) {
		return
	}
	s.c.Method = string(crop.Start)
	delete(s.borrowed, "method")
	delete(s.typed, "method")
	delete(s.wrong, "method")
	for part, w := range s.watched {
		if f, ok := part.(*entry); ok && f.Name == "method" {
			w.update() // no other field shows it, and the answers wait
		}
	}
}

func (s *store) changed() {
	s.leaveLink()
	s.work()
	s.save()
	s.tell(onAdvice)
	if s.speak != nil {
		s.speak()
	}
}

// read turns text in the reader's units into a value in SI.
func (s *store) read(in *field.Input, text string) (field.Value, *field.Error) {
	v := field.Value{Word: text}
	switch in.Form {
	case field.FormDate:
		day, err := unit.ParseDate(text)
		if err != nil {
			return v, &field.Error{Field: in.Name, Value: text, Allowed: in.Allowed(), Mend: "There is no such day."}
		}
		v = field.Value{Number: float64(day)}
	case field.FormDay:
		day, err := unit.ParseMonthDay(text)
		if err != nil {
			return v, &field.Error{Field: in.Name, Value: text, Allowed: in.Allowed(), Mend: "Write month and day, such as 05-14."}
		}
		v = field.Value{Number: float64(day)}
	case field.FormYesNo:
		v = field.Value{}
		if text == "yes" {
			v.Number = 1
		}
	case field.FormNumber, field.FormWhole:
		x, err := in.Kind.Read(text, s.system)
		if err != nil {
			return v, &field.Error{Field: in.Name, Value: text, Allowed: s.allowed(in), Mend: "Write a plain number."}
		}
		switch strings.TrimSpace(text) { // the limits as the page says them, rounded
		case in.Kind.Figure(in.Low, s.system):
			x = max(x, in.Low)
		case in.Kind.Figure(in.High, s.system):
			x = min(x, in.High)
		}
		v = field.Value{Number: settle(x, in)}
	}
	if e := in.CheckValue(v); e != nil {
		e.Value, e.Allowed = text, s.allowed(in)
		return v, e
	}
	return v, nil
}

// settle lets a figure that was typed at the shown limit of its range count as
// the limit, since the limit was rounded when it was shown.
func settle(x float64, in *field.Input) float64 {
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
func (s *store) allowed(in *field.Input) string {
	if in.Form != field.FormNumber && in.Form != field.FormWhole {
		return in.Allowed()
	}
	text := in.Kind.Figure(in.Low, s.system) + " to " + in.Kind.Figure(in.High, s.system)
	if symbol := in.Kind.Symbol(s.system); symbol != "" {
		text += " " + symbol
	}
	return text
}

// shown is the text that stands in a field.
func (s *store) shown(in *field.Input) string {
	if text, ok := s.typed[in.Name]; ok {
		return text
	}
	v, given := in.Get(&s.c)
	if !given {
		return ""
	}
	switch in.Form {
	case field.FormChoice, field.FormText:
		return v.Word
	case field.FormDate:
		return unit.Date(v.Number).String()
	case field.FormDay:
		return casefile.DayText(int(v.Number))
	case field.FormYesNo:
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
		if e, bad := s.wrong[name]; (!bad || e.Field != name) && !isBox(name) { // an error of the whole case leaves a value to show
			delete(s.typed, name)
		}
	}
	s.save()
	s.tell(onAdvice | onForm | onUnits | onPlaces)
}

// choose takes a station's normals.
func (s *store) choose(st *normals.Station) {
	s.touch("place", placeName)
	elevation := s.c.Place.Elevation
	if s.c.Place.Station != "" || s.c.Place.Own {
		elevation = unit.Optional[unit.Metres]{}
	}
	s.c.Place = field.Place{Station: st.ID, Elevation: elevation, Period: s.c.Place.Period}
	s.locate()
}

// here takes a position; all stations must be there.
func (s *store) here(latitude, longitude float64) {
	s.touch("place", placeName)
	s.c.Place = field.Place{
		Latitude:  unit.Known(unit.Degrees(round2(latitude))),
		Longitude: unit.Known(unit.Degrees(round2(longitude))),
		Period:    s.c.Place.Period,
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
	s.touch("place", placeName)
	s.c.Place = field.Place{Own: true, HasNormals: true, TMin: low, TMax: high, Latitude: unit.Known(unit.Degrees(lat)), Elevation: s.c.Place.Elevation, Period: s.c.Place.Period}
	for name := range s.typed {
		if strings.HasPrefix(name, "normals-") {
			delete(s.typed, name) // they stand in the case now
		}
	}
	s.changed()
	s.tell(onForm | onPlaces)
	return nil
}
