package app

import (
	"unsafe"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// session is the store of this visit: the views come and go, the field stays.
var session *store

// visit gives the store that all views share. On arrival it reads what the device
// kept, before anything is drawn: so the form is right from the first. With nothing
// kept it is the worked example, and what is right on the page already stays until
// the soil's year has been worked out again.
func visit() *store {
	if !app.IsClient {
		if session == nil {
			session = newStore(nil)
		}
		return session
	}
	if session != nil {
		return session
	}
	tellPage("whole", false)
	text := deviceText(storageKey)
	kept := readSaved(text)
	if kept == nil && text != "" {
		keepOnDevice(unreadKey, text) // what the page keeps next would lie over it
	}
	s := storeOf(exampleCase())
	s.example = true
	session = s
	s.undo = readUndo(deviceText(undoKey))
	if kept != nil {
		s.beside() // a device draws first and digs then
		if s.take(kept) {
			return s
		}
		s.example = true
	}
	s.abroad = app.Window().Get("filmfurrow").Get("metric").Truthy()
	s.before = map[string]string{}
	if el := app.Window().GetElementByID("view"); el.Truthy() {
		at := app.Window().URL().Path
		for i := range views {
			if at == rooted(views[i].path) {
				s.before[views[i].path] = el.Get("outerHTML").String()
			}
		}
	}
	return s
}

// live begins the work beside the typing, once the page is there.
func (s *store) live() {
	if s.keep != nil { // back from the workshop
		s.begin()
		return
	}
	s.keep = func(state saved) bool { return keepOnDevice(storageKey, state.text()) }
	if s.slices == nil {
		s.beside()
	}
	s.listen()
	switch {
	case s.advice != nil:
		s.begin()
	case !s.digging && !s.own:
		s.work()
	}
	loadNormals(s)
}

// loadNormals fetches the table of stations and what lies beside it, which the worker
// keeps for the field, and reads them in a quiet moment. Without the second a station has
// its older temperatures yet.
func loadNormals(s *store) {
	loadTable("beside.csv", func(beside string) {
		loadTable("normals.csv", func(text string) {
			table, err := normals.Open(text)
			if s.noPlace = err != nil; !s.noPlace {
				table.OpenBeside(beside)
				table.Partial = true
				s.places = table
			}
			s.tablesCame()
			if p := &s.c.Place; !p.HasNormals && (p.Station != "" || p.Longitude.Given) {
				s.askWorld(nil)
			}
		})
	})
}

// tablesCame goes on with what waited for stations.
func (s *store) tablesCame() {
	was := s.c.Place
	casefile.Locate(&s.c, s.places)
	if s.c.Place != was && !s.own { // what the device kept had less of its station
		s.work()
	}
	s.tell(onPlaces | onForm)
	s.openLink(s.waiting)
	s.setAside()
}

// askWorld fetches the stations of other countries where they are not there yet, and
// tells whether it had to; then is called once they are.
func (s *store) askWorld(then func()) bool {
	if s.places == nil || !s.places.Partial {
		return false
	}
	if then != nil {
		s.thenWorld = then
	}
	if s.asking {
		return true
	}
	s.asking = true
	loadTable("places.csv", func(text string) {
		s.spots = normals.NewPlaces(text)
		s.tell(onPlaces)
	})
	loadTable("world-beside.csv", func(beside string) {
		loadTable("world.csv", func(text string) {
			all := s.places.Join(&normals.Table{})
			if world, err := normals.Open(text); err == nil {
				world.OpenBeside(beside)
				all = s.places.Join(world)
			}
			s.places, s.asking = all, false
			s.tablesCame()
			if then := s.thenWorld; then != nil {
				s.thenWorld = nil
				then()
			}
		})
	})
	return true
}

// loadTable fetches a file of the site's tables by its name; what could not be had is
// empty. Its bytes are taken as they are: the browser's own text of them would be made for
// nothing, and read into a second copy.
func loadTable(name string, then func(text string)) {
	var read, answered app.Func
	done := func(text string) any {
		read.Release()
		answered.Release()
		then(text)
		return nil
	}
	read = app.FuncOf(func(_ app.Value, args []app.Value) any {
		if !args[0].Get("byteLength").Truthy() { // the connexion broke
			return done("")
		}
		from := app.Window().Get("Uint8Array").New(args[0])
		bytes := make([]byte, from.Length())
		app.CopyBytesToGo(bytes, from)
		return done(unsafe.String(unsafe.SliceData(bytes), len(bytes))) // nobody writes to them any more
	})
	// A callback cannot hand a promise back to the browser through the
	// framework, so the second step is chained here.
	answered = app.FuncOf(func(_ app.Value, args []app.Value) any {
		if !args[0].Get("ok").Truthy() { // an error has none
			return done("")
		}
		args[0].Call("arrayBuffer").Call("then", read).Call("catch", read)
		return nil
	})
	app.Window().Call("fetch", app.Getenv("file:"+name)).Call("then", answered).Call("catch", answered)
}

// pause is how long a half-typed figure may stand before its error, or what it moved,
// is read out.
const pause = 1000

// listen hears what else the browser tells.
func (s *store) listen() {
	window := app.Window()
	hear := func(event string, what func(app.Value)) {
		window.Call("addEventListener", event, app.FuncOf(func(_ app.Value, args []app.Value) any {
			what(args[0])
			return nil
		}))
	}
	hear("storage", func(e app.Value) {
		if e.Get("key").String() == storageKey {
			s.followOtherTab()
		}
	})
	hear("pagehide", func(app.Value) { s.flush() })
	var timer app.Value
	say := app.FuncOf(func(app.Value, []app.Value) any {
		spoken := ""
		s.faults(func(_, says string) { spoken += says + " " })
		heard := ""
		if s.moved != "" && spoken == "" && !s.digging {
			head, moves := s.movedWords()
			heard = head
			for _, m := range moves {
				heard += " " + m[0] + ": " + m[2] + "."
			}
		}
		if spoken != s.spoken || heard != s.heard {
			s.spoken, s.heard = spoken, heard
			s.tell(onSaid)
		}
		return nil
	})
	s.speak = func() {
		if timer != nil {
			window.Call("clearTimeout", timer)
		}
		timer = window.Call("setTimeout", say, pause)
	}
}

// today is the day that the page counts from: one that was set, or the device's. The
// prerendered page knows none.
func (s *store) today() (unit.Date, bool) {
	if s.day.Given || !app.IsClient {
		return s.day.Value, s.day.Given
	}
	now := app.Window().Get("Date").New()
	return unit.On(now.Call("getFullYear").Int(), now.Call("getMonth").Int()+1, now.Call("getDate").Int()), true
}

// setToday counts from another day: a device's clock may be wrong, and who plans
// wants to look ahead.
func (s *store) setToday(text string) {
	day, err := unit.ParseDate(text)
	s.day = unit.Optional[unit.Date]{Value: day, Given: err == nil}
	s.tell(onAdvice | onForm)
}
