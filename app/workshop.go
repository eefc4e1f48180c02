package app

import (
	"slices"
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// workshop is the page on a projector. What is shown, and when, is static/room.js's, which
// no other page carries; this answers what it asks of the engine: in text, a row a line and
// a tab between its cells, which weighs less than trees of values.
type workshop struct {
	app.Compo
	s      *store
	here   field.Place // the room's own
	places *placePart
	found  []hit
	args   []app.Value // of what the room waits for: its name, and last who is told
	asked  bool        // for the stations
	door   app.Func
}

// roomHTML is what stands there until the program and the script are.
const roomHTML = `<div class="room"><main id="main" class="room-main" tabindex="-1"><h1>Film &amp; Furrow in a workshop</h1><p>Eight invented farms, one question at a time.</p><p class="help">N goes to the next farm, P to the one before, A to another question, L to the lesson.</p></main>` + filmPatterns + `</div>`

func (w *workshop) OnNav(ctx app.Context) { ctx.Page().SetTitle(titleOf("/workshop")) }

func (w *workshop) Render() app.UI { return app.Raw(roomHTML) }

func (w *workshop) OnMount(app.Context) {
	w.s = storeOf(field.Case{})
	w.s.beside()
	w.s.follow(w, onAdvice|onPlaces, w.goOn)
	w.places = &placePart{S: w.s}
	w.door = app.FuncOf(func(_ app.Value, args []app.Value) any { return w.serve(args) })
	app.Window().Get("filmfurrow").Set("door", w.door)
	tellPage("room", true)
}

func (w *workshop) OnDismount() {
	if w.s == nil { // the site's generator mounts nothing
		return
	}
	w.s.leave(w)
	tellPage("room", false)
	w.door.Release()
}

// spoken are rows of cells.
type spoken struct{ svg }

func (r *spoken) add(cells ...string) { r.raw(strings.Join(cells, "\t"), "\n") }

// serve answers at once what needs no work, and tells the rest later, one thing at a time.
func (w *workshop) serve(args []app.Value) string {
	s, text, t := w.s, args[1].String(), &spoken{}
	switch args[0].String() {
	case "seal":
		return casefile.Sealed([]byte(text))
	case "unseal":
		body, _ := casefile.Unsealed(text)
		return string(body)
	case "qr":
		drawing, _ := qrSVG(text, "QR code")
		return drawing
	case "input":
		in := field.InputByName(text)
		t.add(in.Label)
		for _, o := range in.Options {
			t.add(o.ID, said(in, field.Value{Word: o.ID}, s.system))
		}
	case "find":
		w.stations()
		s.typed[placeBox] = text
		found, says := w.places.found()
		w.found = found
		t.add(says)
		for _, h := range found {
			t.add(h.words)
		}
	case "metric":
		s.system = unit.Metric
	case "before": // of the field that was asked last
		return w.before(question.Question(args[2].Int()), args[3].Int())
	case "year": // of the field that was asked last
		work := search.NewYear(s.ground, s.c)
		s.slices(w, func() bool { return slice(func() bool { return work.Step(1) }) }, func() {
			for _, span := range work.Spans() {
				t.add(span.From.String(), spanKey(span), spanWords(span))
			}
			args[len(args)-1].Invoke(t.b.String())
		})
	case "take":
		s.c.Place = field.Place{}
		w.found[args[2].Int()].take()
		fallthrough
	default:
		w.args = args
		w.goOn()
	}
	return t.b.String()
}

// goOn tries again what the room waits for: something came.
func (w *workshop) goOn() {
	args := w.args
	if args == nil {
		return
	}
	w.args = nil
	if text, ok := w.answer(args); ok {
		args[len(args)-1].Invoke(text)
	} else {
		w.args = args
	}
}

// answer is false where it is not there yet.
func (w *workshop) answer(args []app.Value) (string, bool) {
	s, t := w.s, &spoken{}
	var err error
	switch text := args[1].String(); args[0].String() {
	case "read": // what is wrong with a pack
		_, _, err = casefile.DecodePack([]byte(text), landIDs(), s.places)
	case "take":
		switch {
		case s.c.Place.HasNormals:
			w.here = s.c.Place
			t.add(w.places.now())
		case w.places.told != "":
			t.add("", w.places.told)
		default:
			return "", false
		}
	case "fields": // that the device keeps, by their names
		var fields []casefile.Field
		if text := deviceText(fieldsKey); text != "" {
			fields, err = casefile.DecodeFields([]byte(text), s.places)
		}
		for i := range fields {
			t.add(fields[i].Name, casefile.Link(&fields[i].Case))
		}
	default:
		err = w.ask(args, t)
		if err == nil && s.digging {
			return "", false
		}
	}
	if err != nil {
		return err.Error(), !w.stations() // it may be right once all stations are there
	}
	return t.b.String(), true
}

func landIDs() (ids []string) {
	for i := range pack.Lands {
		ids = append(ids, pack.Lands[i].ID)
	}
	return ids
}

// stations fetches their table, and tells whether it is on the way.
func (w *workshop) stations() bool {
	if !w.asked {
		w.asked = true
		loadNormals(w.s)
	}
	return w.s.places == nil && !w.s.noPlace || w.s.askWorld(nil)
}

// ask answers one question of one field: its farm or link, the question, an input and the
// word or figure that it is turned to (in SI), degrees of warmth on top, and whether it lies
// in the room's own place.
func (w *workshop) ask(args []app.Value, t *spoken) error {
	s, name := w.s, args[1].String()
	var c field.Case
	if i := slices.Index(landIDs(), name); i >= 0 {
		c = pack.Lands[i].Case()
	} else {
		var err error
		if c, err = casefile.ReadLink(name, s.places); err != nil {
			return err
		}
	}
	if args[7].Bool() && w.here.HasNormals {
		c.Place = w.here
	}
	if warmer := unit.Celsius(args[6].Float()); warmer != 0 {
		p := &c.Place
		*p = field.Place{Own: true, HasNormals: true, Latitude: p.Latitude, Elevation: p.Elevation, TMin: p.TMin, TMax: p.TMax}
		for m := range p.TMin {
			p.TMin[m], p.TMax[m] = p.TMin[m]+warmer, p.TMax[m]+warmer
		}
	}
	turned := ""
	if in := field.InputByName(args[3].String()); in != nil {
		v := field.Value{Word: args[4].String(), Number: args[5].Float()}
		in.Set(&c, v)
		turned = said(in, v, s.system)
	}
	clear(s.wrong)
	s.c, s.stale = c, false
	s.work()
	if s.stale {
		for _, e := range s.wrong {
			return e
		}
	}
	if !s.digging {
		w.tell(t, question.Question(args[2].Int()), turned)
	}
	return nil
}

// toldFacts are the inputs that a room is told of a farm.
var toldFacts = [...]string{"crop", "plant_on", "soil.texture", "soil.drainage", "weeds.pressure", "weeds.nutsedge", "weeds.insect_pressure", "soil.stones", "water.flow_l_h"}

// tell writes an answer: all of it in one row; what the room is told of the field; what decides
// the verdict; then each option, a row, with its reasons below.
func (w *workshop) tell(t *spoken, q question.Question, turned string) {
	s := w.s
	if q == question.Day {
		w.tellDay(t, turned)
		return
	}
	a := s.advice
	choice := a.Choice(q)
	told, key := a.Answers()[q], "none"
	if told != question.NoOption {
		key = q.Key(told)
	}
	text := mainReason(choice, s.system)
	if q == question.Verdict {
		switch {
		case len(a.Gates) > 0:
			text = a.Gates[0].Reason.In(s.system)
		case a.WaitPlan.Moved > 0: // so why not on the day that was wanted?
			text = mainReason(&a.Wait, s.system)
		default:
			text = "Nothing speaks against it."
		}
	}
	w.whole(t, key, roomSays(q, told, s.system), text, turned)
	for i, r := range choice.Ranked {
		not := ""
		if i > 0 && q != question.Wait {
			phrase, _ := choice.WhyNot(i)
			not = phrase.In(s.system)
		}
		t.add(strconv.Itoa(int(r.Option)), q.Key(r.Option), roomSays(q, r.Option, s.system), roomShort(q, r.Option, s.system), not)
		w.reasons(t, r.Factors)
	}
}

// tellDay writes when the field may be planted: in one row the day, the one on bare ground, the
// film that makes it and its name; below what decides the day.
func (w *workshop) tellDay(t *spoken, turned string) {
	s := w.s
	for n := 0; ; n++ {
		ask, more := rules.Sooner(s.advice, n)
		if !more {
			break
		}
		s.c.PlantOn.Value = ask
		s.work()
	}
	a := s.advice
	bare, ok := rules.Soonest(a)
	if !ok {
		w.whole(t, "none", "", "", turned)
		return
	}
	w.whole(t, "day", "", mainReason(&a.Wait, s.system), turned)
	film, _ := a.Film.Best() // one fits, or film is refused
	t.add("day", a.WaitPlan.PlantOn.String(), bare.String(), question.Film.Key(film), roomShort(question.Film, film, s.system))
	for _, r := range a.Wait.Ranked {
		if r.Option != question.WaitSettling && r.Option != question.WaitMoisture { // they move the laying
			w.reasons(t, r.Factors)
		}
	}
}

// whole writes the first row of an answer, and what decides the verdict.
func (w *workshop) whole(t *spoken, key, name, text, turned string) {
	s, a, dates := w.s, w.s.advice, ""
	if !a.Refused() && !a.FilmDown() {
		dates = "Lay " + dayOfYear(a.WaitPlan.LayOn, s.system) + ", plant " + dayOfYear(a.WaitPlan.PlantOn, s.system) + "."
	}
	t.add(key, name, text, bedSVG(a, s.system, false), verdictLine(a), dates, turned, s.c.PlantOn.Value.String())
	for _, name := range toldFacts {
		in := field.InputByName(name)
		v, _ := in.Get(&s.c)
		t.add("fact", unit.Capital(said(in, v, s.system)), in.Label, name)
	}
	w.reasons(t, a.Gates)
}

// before draws the bed with the film or the height that the room would have; below 0, the
// flat bare ground that was there first.
func (w *workshop) before(q question.Question, o int) string {
	a := w.s.advice
	shape, film, tape := a.Shape, a.Film.Ranked, a.TapePlan.Tape
	switch {
	case o < 0:
		a.Shape.Height, a.Shape.Crown, a.Film.Ranked, a.TapePlan.Tape = 0, 0, nil, nil
	case q == question.Film:
		a.Film.Ranked = []judge.Ranked{{Option: question.Option(o)}}
	default:
		a.Shape = judge.Across(a.Facts, question.Option(o))
	}
	drawn := bedSVG(a, w.s.system, false)
	a.Shape, a.Film.Ranked, a.TapePlan.Tape = shape, film, tape
	return drawn
}

func (w *workshop) reasons(t *spoken, factors []judge.Factor) {
	for i := range factors {
		f, out := &factors[i], ""
		if f.RulesOut {
			out = "out"
		}
		t.add("", f.Rule.Title, strconv.FormatFloat(f.Points(), 'f', 3, 64), out, f.Reason.In(w.s.system), sourceName(f.Rule.Sources[0]))
	}
}

// roomSays is an answer as a sentence begins.
func roomSays(q question.Question, o question.Option, system unit.System) string {
	if o == question.NoOption {
		return "None fits"
	}
	return sentence(q.Says(o).In(system))
}

// filmsInShort name the films on a wall, in the order of the table; one that is new there
// has its whole name.
var filmsInShort = [table.FilmCount]string{"Black", "Clear", "White", "Silver", "Green-brown", "Red", "Blue", "Black, tilled in", "Paper"}

// roomShort is an answer in the room's words.
func roomShort(q question.Question, o question.Option, system unit.System) string {
	switch {
	case q == question.Film && o < question.Option(table.FilmCount) && filmsInShort[o] != "":
		return filmsInShort[o]
	case q == question.Thickness && o == question.ByWeight:
		return "By weight"
	case q == question.Tape && int(o) < len(table.Tapes):
		t := &table.Tapes[o]
		short := unit.Of(unit.Short(t.Spacing)).In(system) + ", " + t.Class
		if t.Bore == table.WideBore {
			short += ", wide"
		}
		return short
	}
	return roomSays(q, o, system)
}
