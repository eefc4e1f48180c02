package app

import (
	"slices"
	"time"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/facts"
)

// What a key changes comes in two waves. The answers and the drawing follow the
// key at once. All else waits until the typing rests and then goes on one slice at
// a time, so that no frame is long: what the device keeps, the parts of the page
// from the top down, and what is studied beside them. The soil's work is slices
// too, but waits for nobody, since the answers wait for it.

// A browser's least pause is several milliseconds, so a slice is about half a
// frame, measured by time after every day: a day of the run-up costs a tenth of a day
// with films, and that a quarter of one with frozen ground (0.6 ms of one native core,
// several in a slow browser), by which a slice may run over.
const (
	daysAStep = 1
	sliceTime = 8 * time.Millisecond
	restMost  = 150 * time.Millisecond // between two keys of somebody who types on
	drawTime  = 12                     // milliseconds in which a part is drawn
)

// task is work in slices: step tells whether all is done.
type task struct {
	of   any // who wants it; of each, the newest wins
	step func() bool
	done func()
}

// lane holds what is to be done beside the typing.
type lane struct {
	soil, tasks []task
	due         map[app.Composer]bool // parts to draw anew
	drawn       func()                // what waits for all parts to be drawn
	unkept      bool                  // something typed is not on the device yet
	key         time.Time             // when the last key came
	wake        app.Func
	queue       app.Value // the browser's own, of tasks
	waking      bool
}

// prompt tells whether a part answers a key at once.
func (s *store) prompt(part app.Composer) bool {
	switch part.(type) {
	case *stripPart, *probePart: // they say that the soil is being worked out
		return s.digging
	case *stage, *movedPart, *verdictPart, *faultsPart, *bedPart, *notesPart, *entry, *textBox, *unitSwitch, *sentencePart, *placePart, *filmsPart, *bucketPart, *card, *workshop:
		return true
	}
	return false
}

// beside lets long work go on beside the typing.
func (s *store) beside() {
	l := &s.lane
	l.queue = app.Window().Get("scheduler")
	l.wake = app.FuncOf(func(app.Value, []app.Value) any {
		l.waking = false
		if wait := s.turn(); wait >= 0 {
			s.wakeIn(wait)
		}
		return nil
	})
	app.Window().Get("filmfurrow").Set("drawn", app.FuncOf(func(app.Value, []app.Value) any { return len(l.due) == 0 && len(l.soil) == 0 }))
	s.slices = func(of any, step func() bool, done func()) {
		l.tasks = append(slices.DeleteFunc(l.tasks, func(t task) bool { return t.of == of }), task{of, step, done})
		s.wakeIn(0)
	}
	s.dig = func(work *facts.SoilYearWork, done func()) {
		l.soil = []task{{s, func() bool { return slice(func() bool { return work.Step(daysAStep) }) }, done}}
		s.wakeIn(0)
	}
}

// wakeIn asks the browser for the next turn. Its own clock, and its own queue, give way to
// what the reader does; the clock lets four milliseconds pass between any two turns, a
// third of the time that work in slices takes, so the queue is asked where there is one.
func (s *store) wakeIn(milliseconds int) {
	if s.lane.wake == nil || s.lane.waking {
		return
	}
	s.lane.waking = true
	if queue := s.lane.queue; milliseconds == 0 && queue.Truthy() {
		queue.Call("postTask", s.lane.wake)
		return
	}
	app.Window().Call("setTimeout", s.lane.wake, milliseconds)
}

// soon has a part drawn when its turn comes.
func (s *store) soon(part app.Composer) {
	s.lane.due[part] = true
	s.wakeIn(0)
}

// inAWhile calls back in so many milliseconds, as soon as the browser says that it has
// nothing to do; not every browser can say so.
func inAWhile(milliseconds int, do func()) {
	window := app.Window()
	window.Call("setTimeout", once(func() {
		if window.Get("requestIdleCallback").Truthy() {
			window.Call("requestIdleCallback", once(do))
		} else {
			do()
		}
	}), milliseconds)
}

// once is a callback that the browser uses a single time.
func once(do func()) app.Func {
	var call app.Func
	call = app.FuncOf(func(app.Value, []app.Value) any {
		call.Release()
		do()
		return nil
	})
	return call
}

// turn does one slice of what comes first, and tells in how many milliseconds the
// next may come: less than 0 where nothing is left.
func (s *store) turn() int {
	l := &s.lane
	if advance(&l.soil) {
		return 0
	}
	if left := restMost - time.Since(l.key); left > 0 {
		if l.unkept || l.drawn != nil || len(l.due)+len(l.tasks) > 0 {
			return int(left/time.Millisecond) + 1
		}
		return -1
	}
	s.flush()
	if s.drawNext() {
		return drawTime
	}
	if l.drawn != nil {
		l.drawn()
		l.drawn = nil
	}
	if !s.whole && s.advice != nil {
		s.whole = true
		tellPage("whole", true)
	}
	if advance(&l.tasks) {
		return 0
	}
	return -1
}

// advance works a slice on the first of the tasks, which take turns.
func advance(list *[]task) bool {
	if len(*list) == 0 {
		return false
	}
	first := (*list)[0]
	(*list)[0] = task{} // or it and all it worked with would be kept
	*list = (*list)[1:]
	if first.step() {
		first.done()
	} else {
		*list = append(*list, first)
	}
	return true
}

// drawNext draws the first of the parts that are due.
func (s *store) drawNext() bool {
	var next app.Composer
	for part := range s.lane.due {
		if w, stays := s.watched[part]; !stays {
			delete(s.lane.due, part)
		} else if next == nil || w.turn < s.watched[next].turn {
			next = part
		}
	}
	if next == nil {
		return false
	}
	delete(s.lane.due, next)
	s.watched[next].update()
	return true
}

// slice works for about half a frame.
func slice(step func() bool) bool {
	for began := time.Now(); time.Since(began) < sliceTime; {
		if step() {
			return true
		}
	}
	return false
}

// tell lets the parts that listen to a topic draw themselves anew.
func (s *store) tell(t topic) {
	if t&onAdvice != 0 && s.told != s.advice {
		s.told = s.advice
		t |= onAnswer
	}
	for part, w := range s.watched {
		switch {
		case w.to&t == 0:
		case s.slices == nil || s.prompt(part):
			w.update()
		default:
			s.soon(part)
		}
	}
	s.wakeIn(0)
}

// start has the views drawn that waited for the first advice: in a turn of its own, since
// that and the advice are each as long as a turn may be on a slow device.
func (s *store) start() {
	if s.slices == nil {
		s.tell(onStart)
		return
	}
	for part, w := range s.watched {
		if w.to&onStart != 0 {
			s.soon(part)
		}
	}
}

// flush keeps on the device what is not kept yet. It also runs when the page is
// left.
func (s *store) flush() {
	if s.lane.unkept {
		s.lane.unkept = false
		s.keepNow()
	}
}

// tellPage tells the page's scripts.
func tellPage(what string, value any) {
	if app.IsClient {
		app.Window().Get("filmfurrow").Call("tell", map[string]any{what: value})
	}
}
