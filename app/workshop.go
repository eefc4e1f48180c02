package app

import (
	"math"
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/pack"
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
	q       rules.Question
	step    int
	votes   map[rules.Option]int
	factors []rules.Factor // of the farm as it is, heaviest first
	told    rules.Option   // its answer
	opened  bool           // both are known
	keys    app.Func
}

// The steps. The factors stand between the answer and the turn, then the lesson.
const (
	stepMeet = iota
	stepGuess
	stepAnswer
	stepFactors
)

var roomQuestions = [...]string{
	rules.Verdict: "Would you lay film here?", rules.FilmQuestion: "Which film?", rules.BedQuestion: "How high a bed?", rules.SurfaceQuestion: "Embossed or smooth?",
	rules.ThicknessQuestion: "How thick?", rules.TapeQuestion: "Which drip tape?", rules.WaitQuestion: "What rules the wait before planting?",
}

func (w *workshop) store() *store {
	if w.s == nil {
		w.s = &store{system: unit.US, typed: map[string]string{}, wrong: map[string]rules.FieldError{}, ticks: map[string]bool{}, watched: map[app.Composer]watch{}}
		w.meet(0)
	}
	return w.s
}

func (w *workshop) OnNav(ctx app.Context) { ctx.Page().SetTitle(Pages()[1].Title) }

func (w *workshop) OnMount(ctx app.Context) {
	s := w.store()
	s.beside(ctx)
	s.follow(w, onAdvice|onUnits, w.Update)
	w.keys = app.FuncOf(func(_ app.Value, args []app.Value) any {
		w.key(ctx, args[0])
		return nil
	})
	app.Window().Get("document").Call("addEventListener", "keydown", w.keys)
}

func (w *workshop) OnDismount() {
	if w.keys == nil { // the site's generator mounts nothing
		return
	}
	w.s.leave(w)
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
	w.step, w.votes, w.opened = step, map[rules.Option]int{}, false
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
	if w.q == rules.Verdict {
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

func (w *workshop) says(o rules.Option) string {
	if o == rules.NoOption {
		return "None fits"
	}
	return sentence(w.q.Says(o).In(w.s.system))
}

func (w *workshop) Render() app.UI {
	w.store()
	w.open()
	f := &pack.Farms[w.farm]
	farms := make([]app.UI, len(pack.Farms))
	for i := range pack.Farms {
		farms[i] = app.Option().Value(strconv.Itoa(i)).Text(strconv.Itoa(i+1) + ". " + pack.Farms[i].Title).Selected(i == w.farm)
	}
	questions := make([]app.UI, len(roomQuestions))
	for i, text := range roomQuestions {
		questions[i] = app.Option().Value(strconv.Itoa(i)).Text(text).Selected(rules.Question(i) == w.q)
	}
	return app.Div().Class("room").Body(
		app.Header().Class("room-top").Body(
			app.H1().Class("for-readers").Text("Film & Furrow in a workshop"),
			app.Label().Class("for-readers").For("room-farm").Text("Farm"),
			app.Select().ID("room-farm").Body(farms...).OnChange(func(ctx app.Context, _ app.Event) {
				w.meet(selected(ctx))
			}),
			app.Label().Class("for-readers").For("room-question").Text("Question"),
			app.Select().ID("room-question").Body(questions...).OnChange(func(ctx app.Context, _ app.Event) {
				w.q = rules.Question(selected(ctx))
				w.again(stepGuess)
			}),
		),
		app.Main().ID("main").TabIndex(-1).Class("room-main").Aria("live", "polite").Body(w.scene(f)...),
		app.Footer().Class("room-foot").Body(
			app.Button().Type("button").Class("plain").ID("room-back").Text("Back").OnClick(func(app.Context, app.Event) { w.move(-1) }),
			app.Span().ID("room-step").Text(strconv.Itoa(w.step+1)+" of "+strconv.Itoa(w.turning()+2)),
			app.A().Class("room-leave").ID("room-leave").Href(".").Text("Leave"),
			app.Button().Type("button").Class("plain").ID("room-next").Text("Next").OnClick(func(app.Context, app.Event) { w.move(1) }),
		),
	)
}

func selected(ctx app.Context) int {
	n, _ := strconv.Atoi(ctx.JSSrc().Get("value").String())
	return n
}

// scene is what the room sees.
func (w *workshop) scene(f *pack.Farm) []app.UI {
	a := w.s.advice
	switch {
	case w.s.digging:
		return []app.UI{app.P().Class("waiting").Role("status").Text("Working out the soil’s warmth of this farm …")}
	case w.step == stepMeet:
		return []app.UI{app.H2().Text(f.Title), app.P().Text(w.field()), app.P().Class("help").Text("An invented farm with invented weather.")}
	case w.step == stepGuess:
		return []app.UI{app.H2().Text(roomQuestions[w.q]), app.P().Text("Show of hands. Type the counts, or go on."), app.Div().Class("room-votes").Body(w.ballots()...)}
	case w.step == stepAnswer:
		c := a.Choice(w.q)
		why := mainReason(c, w.s.system)
		if w.q == rules.Verdict && len(a.Gates) > 0 {
			why = a.Gates[0].Reason.In(w.s.system)
		} else if w.q == rules.Verdict {
			why = "Nothing speaks against it."
		}
		return []app.UI{app.H2().Text(roomQuestions[w.q]), app.P().Class("room-answer").ID("room-answer").Text(w.says(w.told) + "."), app.P().Text(why), app.Ul().Class("room-bars").Body(w.bars()...)}
	case w.step < w.turning():
		i := w.step - stepFactors
		factor := &w.factors[i]
		sum := 0.0
		for k := range i + 1 {
			sum += w.factors[k].Points()
		}
		side := "For " + lower(w.says(w.told))
		switch {
		case factor.RulesOut:
			side = "What decides it"
		case w.q == rules.WaitQuestion:
			side = "What asks for the wait"
		case factor.Points() < 0:
			side = "Against " + lower(w.says(w.told))
		}
		line := ""
		if !factor.RulesOut && w.q != rules.WaitQuestion {
			line = points(factor.Points()) + " points; together so far " + points(sum) + " (" + strconv.Itoa(i+1) + " of " + strconv.Itoa(len(w.factors)) + ")"
		}
		source := ""
		for _, s := range factor.Rule.Sources[:1] {
			source = sourceName(s)
		}
		return []app.UI{app.H2().Text(side), app.P().Class("room-answer").Text(factor.Rule.Title), app.P().Text(factor.Reason.In(w.s.system)), app.P().Class("room-sum").Text(line), app.P().Class("help").Text(source)}
	case w.step == w.turning():
		now := a.Answers()[w.q]
		in := rules.InputByName(f.Turn)
		was := "Still: "
		if now != w.told {
			was = "Now: "
		}
		return []app.UI{app.H2().Text("Turn one thing"),
			&field{S: w.s, Name: f.Turn},
			app.Div().Class("buttons").Body(app.Button().Type("button").Class("plain").ID("room-turn").Text("Set it to " + said(in, f.To, w.s.system)).OnClick(func(app.Context, app.Event) {
				in.Set(&w.s.c, f.To)
				delete(w.s.typed, f.Turn)
				w.s.work()
				w.s.tell(onForm | onAdvice)
			})),
			app.P().Text("At first: " + w.says(w.told) + "."),
			app.P().Class("room-answer").ID("room-now").Text(was + w.says(now) + ".")}
	}
	return []app.UI{app.H2().Text("What " + f.Title[:cut(f.Title)] + " teaches"), app.P().Class("room-lesson").Text(f.Lesson)}
}

// cut is the length of a farm's name before the comma.
func cut(title string) int {
	for i := range title {
		if title[i] == ',' {
			return i
		}
	}
	return len(title)
}

// field says the farm in one sentence, as the page asks it.
func (w *workshop) field() string {
	c := &w.s.c
	word := func(name string) string {
		in := rules.InputByName(name)
		v, _ := in.Get(c)
		return said(in, v, w.s.system)
	}
	return "They want to " + word("method") + " " + word("crop") + " on " + dayWords(c.PlantOn.Value) + ", in " + word("soil.texture") + " that drains " + word("soil.drainage") +
		". Weeds are " + word("weeds.pressure") + ", nutsedge: " + word("weeds.nutsedge") + ", stones: " + word("soil.stones") + ", virus-carrying insects: " + word("weeds.insect_pressure") +
		". " + sentence(word("water.source")) + ", " + word("water.flow_l_h") + "."
}

// ballots are the counts of hands, one for each answer.
func (w *workshop) ballots() []app.UI {
	list := make([]app.UI, w.q.Options())
	for i := range list {
		o, id := rules.Option(i), "vote-"+strconv.Itoa(i)
		shown := ""
		if n := w.votes[o]; n > 0 {
			shown = strconv.Itoa(n)
		}
		list[i] = app.Label().For(id).Body(
			app.Input().ID(id).Type("text").Attr("inputmode", "numeric").AutoComplete(false).Value(shown).OnInput(func(ctx app.Context, _ app.Event) {
				n, _ := strconv.Atoi(ctx.JSSrc().Get("value").String())
				w.votes[o] = max(0, n)
			}, int(w.q), w.farm, i),
			app.Span().Text(w.says(o)))
	}
	return list
}

// bars show how the room guessed, where anybody did.
func (w *workshop) bars() (list []app.UI) {
	all := 0
	for _, n := range w.votes {
		all += n
	}
	for o := range rules.Option(w.q.Options()) {
		if n := w.votes[o]; n > 0 {
			text := w.says(o) + ": " + strconv.Itoa(n)
			if o == w.told {
				text += " ✓"
			}
			list = append(list, app.Li().Body(app.Span().Text(text), app.Raw(`<progress max="`+strconv.Itoa(all)+`" value="`+strconv.Itoa(n)+`" aria-label="`+escape(text)+`"></progress>`)))
		}
	}
	return list
}
