package app

import (
	"math"
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// workshop is the page on a projector: one question at a time. The room guesses,
// the answer opens, then its balance factor by factor, and one input is turned
// live. Space, the arrows and a clicker's Page Down go on; Shift and Space and
// Page Up go back; Escape leaves.
type workshop struct {
	app.Compo
	s       *store
	farm    int
	q       question.Question
	step    int
	votes   map[question.Option]int
	factors []judge.Factor  // of the farm as it is, heaviest first
	told    question.Option // its answer
	opened  bool            // both are known
	keys    app.Func

	presses, held int             // of ballots, counted; the one that is held, or 0
	tens          bool            // the press that ends has counted ten
	last          question.Option // that a hand was counted for
}

// The steps. The factors stand between the bed and the turn, then the lesson.
const (
	stepMeet = iota
	stepGuess
	stepAnswer
	stepBed
	stepFactors
)

var roomQuestions = [...]string{
	question.Verdict: "Would you lay film here?", question.Film: "Which film?", question.Bed: "How high a bed?", question.Surface: "Embossed or smooth?",
	question.Thickness: "How thick?", question.Tape: "Which drip tape?", question.Wait: "What rules the wait before planting?",
}

func (w *workshop) store() *store {
	if w.s == nil {
		w.s = storeOf(field.Case{})
		if app.IsClient { // which draws the farm first and digs then
			w.s.beside()
		}
		w.meet(0)
	}
	return w.s
}

func (w *workshop) OnNav(ctx app.Context) { ctx.Page().SetTitle(titleOf("/workshop")) }

func (w *workshop) OnMount(ctx app.Context) {
	s := w.store()
	s.follow(w, onAdvice|onUnits, w.Update)
	w.keys = app.FuncOf(func(_ app.Value, args []app.Value) any {
		w.key(ctx, args[0])
		return nil
	})
	app.Window().Get("document").Call("addEventListener", "keydown", w.keys)
	inRoom(true)
}

// inRoom keeps the site's own notices off the wall.
func inRoom(on bool) {
	app.Window().Get("document").Get("body").Get("classList").Call("toggle", "in-room", on)
}

func (w *workshop) OnDismount() {
	if w.keys == nil { // the site's generator mounts nothing
		return
	}
	w.s.leave(w)
	inRoom(false)
	app.Window().Get("document").Call("removeEventListener", "keydown", w.keys)
	w.keys.Release()
}

// meet opens a farm of the pack, at its own question.
func (w *workshop) meet(farm int) {
	w.farm, w.q = farm, pack.Farms[farm].Asks
	w.again(stepMeet)
}

// again sets the farm back to what it is.
func (w *workshop) again(step int) {
	w.step, w.votes, w.opened = step, map[question.Option]int{}, false
	w.restore()
}

func (w *workshop) restore() {
	s := w.s
	s.c = pack.Farms[w.farm].Case()
	clear(s.typed)
	clear(s.wrong)
	s.work()
	s.tell(onForm)
}

// open reads the farm's own answer and what decided it.
func (w *workshop) open() {
	a := w.s.advice
	if w.s.digging || w.opened {
		return
	}
	c := a.Choice(w.q)
	w.told, w.opened = a.Answers()[w.q], true
	all := c.Ranked[0].Factors
	if w.q == question.Verdict {
		all = a.Gates
	}
	w.factors = nil
	for _, f := range all {
		w.factors = append(w.factors, f)
		for i := len(w.factors) - 1; i > 0 && math.Abs(w.factors[i-1].Points()) < math.Abs(f.Points()); i-- {
			w.factors[i-1], w.factors[i] = f, w.factors[i-1]
		}
	}
}

func (w *workshop) turning() int { return stepFactors + len(w.factors) }

// key hears the whole page. A field keeps the keys that it needs itself.
func (w *workshop) key(ctx app.Context, e app.Value) {
	name, on := e.Get("key").String(), e.Get("target").Get("tagName").String()
	field := on == "INPUT" || on == "SELECT"
	by := 0
	switch {
	case name == "PageDown", !field && (name == "ArrowRight" || name == "ArrowDown"):
		by = 1
	case name == "PageUp", !field && (name == "ArrowLeft" || name == "ArrowUp"), name == " " && !field && e.Get("shiftKey").Bool():
		by = -1
	case name == " " && !field && on != "BUTTON" && on != "A":
		by = 1
	case name == "Escape":
		app.Window().GetElementByID("room-leave").Call("click")
		return
	default:
		return
	}
	e.Call("preventDefault")
	ctx.Dispatch(func(app.Context) { w.move(by) })
}

// move goes on or back; past the lesson comes the next farm.
func (w *workshop) move(by int) {
	w.open()
	turned := w.step >= w.turning()
	w.step += by
	switch last := w.turning() + 1; {
	case w.step < 0 && w.farm > 0:
		w.meet(w.farm - 1)
	case w.step > last && w.farm+1 < len(pack.Farms):
		w.meet(w.farm + 1)
	case turned && w.step < w.turning():
		w.restore()
	}
	w.step = min(max(w.step, 0), w.turning()+1)
	w.Update()
}

func (w *workshop) says(o question.Option) string {
	if o == question.NoOption {
		return "None fits"
	}
	return sentence(w.q.Says(o).In(w.s.system))
}

func (w *workshop) Render() app.UI {
	w.store()
	w.open()
	farms := make([]string, len(pack.Farms))
	for i := range pack.Farms {
		farms[i] = strconv.Itoa(i+1) + ". " + pack.Farms[i].Title
	}
	return box("room", app.Raw(filmPatterns),
		app.Header().Class("room-top").Body(
			app.H1().Class("for-readers").Text("Film & Furrow in a workshop"),
			picker("room-farm", "Farm", farms, w.farm, w.meet),
			picker("room-question", "Question", roomQuestions[:], int(w.q), func(q int) {
				w.q = question.Question(q)
				w.again(stepGuess)
			}),
		),
		app.Main().ID("main").TabIndex(-1).Class("room-main").Aria("live", "polite").Body(w.scene(&pack.Farms[w.farm])...),
		app.Footer().Class("room-foot").Body(
			press("room-back", "Back", func() { w.move(-1) }),
			app.Span().ID("room-step").Text(strconv.Itoa(w.step+1)+" of "+strconv.Itoa(w.turning()+2)),
			app.A().Class("room-leave").ID("room-leave").Href(app.Getenv("GOAPP_ROOT_PREFIX")+"/").Text("Leave"),
			press("room-next", "Next", func() { w.move(1) }),
		),
	)
}

// scene is what the room sees: up to five lines, and what is to be done between.
func (w *workshop) scene(f *pack.Farm) []app.UI {
	a := w.s.advice
	var head, big, text, sum, help string
	var doing []app.UI
	class, bed := "room-answer", "<div></div>"
	switch {
	case w.step == stepMeet:
		head, doing, help = f.Title, w.field(), "An invented farm with invented weather."
	case w.s.digging:
		text = "Working out the soil’s warmth of this farm …"
	case w.step == stepGuess:
		all, _ := w.hands()
		head, text = roomQuestions[w.q], "Show of hands: tap for each, hold for ten."
		doing = []app.UI{w.ballots(false)}
		if all > 0 {
			text = unit.Count(all, "hand", "hands").In(w.s.system) + ". Tap for each, hold for ten."
			doing = append(doing, press("room-less", "One less", func() { w.tens = false; w.vote(w.last, -1) }))
		}
	case w.step == stepAnswer:
		head, big, text = roomQuestions[w.q], w.says(w.told)+".", mainReason(a.Choice(w.q), w.s.system)
		if w.q == question.Verdict {
			text = "Nothing speaks against it."
			if len(a.Gates) > 0 {
				text = a.Gates[0].Reason.In(w.s.system)
			}
		}
		if all, _ := w.hands(); all > 0 {
			sum = strconv.Itoa(w.votes[w.told]) + " of " + strconv.Itoa(all) + " of you said so."
			doing = []app.UI{w.ballots(true)}
		}
	case w.step == stepBed:
		head, bed = "The bed we would make", `<div class="room-bed">`+bedSVG(a, w.s.system, false)+`</div>`
	case w.step < w.turning():
		i := w.step - stepFactors
		factor := &w.factors[i]
		sum = strconv.Itoa(i+1) + " of " + strconv.Itoa(len(w.factors)) + ": what counts most comes first."
		head = "For "
		if factor.Points() < 0 {
			head = "Against "
		}
		head += lower(w.says(w.told))
		if factor.RulesOut || w.q == question.Wait {
			head, sum = "What decides it", ""
		}
		big, text, help = factor.Rule.Title, factor.Reason.In(w.s.system), sourceName(factor.Rule.Sources[0])
	case w.step == w.turning():
		now := a.Answers()[w.q]
		in := field.InputByName(f.Turn)
		head, text, big = "Turn one thing", "At first: "+w.says(w.told)+".", "Still: "
		if now != w.told {
			big = "Now: "
		}
		big += w.says(now) + "."
		doing = []app.UI{&entry{S: w.s, Name: f.Turn}, press("room-turn", "Set it to "+said(in, f.To, w.s.system), func() {
			in.Set(&w.s.c, f.To)
			delete(w.s.typed, f.Turn)
			w.s.work()
			w.s.tell(onForm | onAdvice)
		}), app.Raw(`<div class="room-bare">` + bedSVG(a, w.s.system, false) + `</div>`)}
	default:
		head, big, class = "The lesson of "+f.Title, f.Lesson, "room-lesson"
	}
	return []app.UI{heading2(head), app.P().Class(class).ID("room-answer").Text(big), para("room-text", text), para("room-sum", sum), app.Raw(bed),
		app.Div().Class("room-doing room-step-" + strconv.Itoa(min(w.step, stepFactors))).Body(doing...), para("help", help)}
}

// field tells the farm, a tile for each thing that the page asks.
func (w *workshop) field() []app.UI {
	t := &svg{}
	t.raw(`<ul class="room-facts">`)
	for _, name := range [...]string{"crop", "plant_on", "soil.texture", "soil.drainage", "weeds.pressure", "weeds.nutsedge", "weeds.insect_pressure", "soil.stones", "water.flow_l_h"} {
		in := field.InputByName(name)
		v, _ := in.Get(&w.s.c)
		t.raw(`<li><b>`, escape(unit.Capital(said(in, v, w.s.system))), `</b> `, escape(in.Label), `</li>`)
	}
	t.raw(`</ul>`)
	away := func(to, words string) app.UI {
		return app.A().Href(app.Getenv("GOAPP_ROOT_PREFIX") + to).Target("_blank").Text(words)
	}
	return []app.UI{app.Raw(t.b.String()), away("/handout/"+pack.Farms[w.farm].ID, "Handout"), away("/ballots#"+w.q.String(), "Vote with your own phone")}
}
