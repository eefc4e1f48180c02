package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// undoKey is where the device keeps the steps that can be taken back.
const undoKey = "film-furrow/undo"

// mostUndo is how many steps are kept.
const mostUndo = 10

// undoStep is the field as it was before a change.
type undoStep struct {
	what string // what was changed, as its label says
	text string // as the device would keep it
}

// The marks between and within the steps, as the device keeps them: no text of ours
// holds control characters.
const betweenSteps, withinStep = "\x1e", "\x1f"

func readUndo(text string) (list []undoStep) {
	for _, step := range strings.Split(text, betweenSteps) {
		if what, was, ok := strings.Cut(step, withinStep); ok && readSaved(was) != nil {
			list = append(list, undoStep{what, was})
		}
	}
	return list[max(0, len(list)-mostUndo):]
}

func (s *store) keepUndo() { keepOnDevice(undoKey, undoText(s.undo)) }

// undoText is what readUndo reads.
func undoText(steps []undoStep) string {
	parts := make([]string, len(steps))
	for i, u := range steps {
		parts[i] = u.what + withinStep + u.text
	}
	return strings.Join(parts, betweenSteps)
}

// touch is called before anything of the case is changed. The field as it is can then
// be come back to, the inputs that are named become the grower's own, and all other
// values of an example are marked as such. Keys typed into one field are one step.
func (s *store) touch(what string, names ...string) {
	if s.step != what || len(names) == 0 {
		s.step = what
		state := s.state()
		s.undo = append(s.undo, undoStep{what, state.text()})
		s.undo = s.undo[max(0, len(s.undo)-mostUndo):]
		s.moved, s.since = what, s.advice
	}
	told := s.example
	if s.example {
		s.example = false
		s.borrow()
	}
	for _, name := range names {
		told = told || s.borrowed[name]
		delete(s.borrowed, name)
	}
	if told {
		s.tell(onExample)
	}
}

// takeBack brings back the field as it was before the last change.
func (s *store) takeBack() {
	if len(s.undo) == 0 {
		return
	}
	last := s.undo[len(s.undo)-1]
	s.undo = s.undo[:len(s.undo)-1]
	s.step, s.moved, s.since = "", "", nil
	if kept := readSaved(last.text); kept != nil {
		s.dropLink()
		s.take(kept)
		s.note, s.noteBad = "Taken back: "+last.what+".", false
	}
	s.save()
	s.tell(onAdvice | onForm | onPlaces | onUnits | onExample)
}

// movedPart says what a change moved, for as long as it is the last, and takes it back.
type movedPart struct {
	app.Compo
	S *store
}

func (p *movedPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onExample|onUnits, p.Update) }
func (p *movedPart) OnDismount()         { p.S.leave(p) }

func (p *movedPart) Render() app.UI {
	head, moves := p.S.movedWords()
	t := &svg{}
	for _, m := range moves {
		t.raw(`<li>`, escape(m[0]), ` <s>`, escape(m[1]), `</s> → <b>`, escape(m[2]), `</b></li>`)
	}
	return app.Section().ID("moved").Class("moved").Hidden(head == "").Body(
		app.Div().Body(strong(head), app.Raw(`<ul>`+t.b.String()+`</ul>`)),
		press("take-back", "Take it back", p.S.takeBack),
	)
}

// noteBeside tells that the note of a link stands beside the way to take it back: the two
// are one line.
func (s *store) noteBeside() bool { return s.linked && !s.noteBad && len(s.undo) > 0 }

// movedWords says what was changed last and what moved with it.
func (s *store) movedWords() (head string, moves [][3]string) {
	if s.noteBeside() {
		return s.note, nil
	}
	if n := len(s.undo); n > 0 {
		head = "Last change: " + s.undo[n-1].what + "."
		if s.moved != "" {
			head = "Changed: " + s.moved + "."
		}
	}
	if s.moved != "" && s.advice != nil && s.since != nil && s.since != s.advice && !s.digging {
		moves = movesOf(s.since, s.advice, s.system)
		head += " Moved with it:"
		if len(moves) == 0 {
			head = "Changed: " + s.moved + ". No answer moved."
		}
	}
	if s.at == "/lay" && len(moves) == 0 { // what was found on the day says so itself
		head = ""
	}
	return head, moves
}

// movesOf sets two advices side by side: each thing that differs, as it was and is.
func movesOf(was, is *plan.Advice, system unit.System) (list [][3]string) {
	move := func(name, before, after string) {
		if before != after {
			list = append(list, [3]string{name, before, after})
		}
	}
	move("verdict", lower(strings.TrimSuffix(verdictLine(was), ".")), lower(strings.TrimSuffix(verdictLine(is), ".")))
	if is.Refused() || was.Refused() {
		return list
	}
	move("lay", dayOfYear(was.WaitPlan.LayOn, system), dayOfYear(is.WaitPlan.LayOn, system))
	move("plant", dayOfYear(was.WaitPlan.PlantOn, system), dayOfYear(is.WaitPlan.PlantOn, system))
	for _, q := range [...]question.Question{question.Film, question.Thickness, question.Bed, question.Tape, question.Wait} {
		before, _ := answerWords(was, q, system)
		after, _ := answerWords(is, q, system)
		move(lower(answerTitles[q]), lower(before), lower(after))
	}
	move("water", waterLead(was, system), waterLead(is, system))
	return list
}

// state is the field as the device keeps it.
func (s *store) state() saved {
	return saved{Case: string(casefile.Encode(&s.c)), Station: s.c.Place.StationRow, Typed: s.typed, Ticks: s.ticks, System: s.system,
		Example: s.example, Own: s.own, Farm: s.farm, Borrowed: s.borrowed}
}
