package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// study is what the page works out after the answers are shown, in slices and
// off the typing path: how far each answer holds, what is worth finding out, and
// how the answers fare in doubt. It is dropped when the case changes.
type study struct {
	turner *search.TurningSearch
	points []search.TurningPoint
	opens  []search.Open
	pairs  []search.PairPoint
	fares  []search.Doubt
	deep   bool // what changes it, too
}

// deepRest is how many milliseconds pass before the inputs that change the ground are
// tried: that takes a minute on a slow device, and whoever is still filling in the
// form would have it begun, and thrown away, at each pause.
const deepRest = 2000

// begin starts the study of the advice that is shown. An older one ends by
// itself, since it is no longer the store's.
func (s *store) begin() {
	if s.slices == nil || s.keep == nil || s.advice == nil || s.stale {
		return
	}
	if s.abroad { // its reader has metric units, until another is chosen
		s.abroad = false
		s.setUnits(unit.Metric)
	}
	st := &study{}
	s.study = st
	var ok, near, both bool
	var pairs *search.PairWork
	var doubts *search.DoubtWork
	show := func() {
		s.studied = st
		st.points, st.opens, st.pairs, st.fares = st.turner.Points(), st.turner.Opens(), pairs.Points(), doubts.Doubts()
		s.tell(onStudy)
	}
	deepen := func() {
		if s.study != st {
			return
		}
		s.slices(s, func() bool {
			done := s.study != st || slice(func() bool { return st.turner.Step(1) })
			if !done && len(st.turner.Points()) > len(st.points) { // what was found is shown as it comes
				show()
			}
			return done
		}, func() {
			if s.study == st {
				st.deep = true
				show()
			}
		})
	}
	s.slices(s, func() bool {
		if s.study != st {
			return true
		}
		if st.turner == nil { // not before the typing rests
			if st.turner, ok = search.NewTurningSearch(s.ground, s.c, true); !ok {
				s.study = nil
				return true
			}
			return false
		}
		if doubts == nil {
			pairs, _ = search.NewPairs(s.ground, s.c)
			doubts = search.NewDoubts(s.ground, s.c)
			return false
		}
		if !near {
			if near = slice(func() bool { return st.turner.Near() || st.turner.Step(1) }); near {
				show() // pairs and doubts come later
			}
			return false
		}
		if !both {
			both = slice(func() bool { return pairs.Step(1) })
			return false
		}
		return slice(doubts.Step)
	}, func() {
		if s.study != st {
			return
		}
		show()
		inAWhile(deepRest, deepen)
	})
}

// changePart says under one answer what would change it.
type changePart struct {
	app.Compo
	S *store
	Q question.Question
}

func (p *changePart) OnMount(app.Context) { p.S.follow(p, onStudy|onUnits|onAdvice, p.Update) }
func (p *changePart) OnDismount()         { p.S.leave(p) }

// nearFew is how many turning points stand under an answer; the rest is folded.
const nearFew = 3

func (p *changePart) Render() app.UI {
	st := p.S.studied
	if st == nil {
		return box("change", helpText("Looking for what would change it …"), p.disputes())
	}
	points := p.mine(st.points)
	body := []app.UI{para("change-head", "What would change it")}
	if len(points) == 0 {
		body[0] = paragraph("Nothing you could change alone would change this answer.")
	} else {
		body = append(body, app.Ul().Class("turns").Body(p.rows(points[:min(nearFew, len(points))])...))
	}
	if len(points) > nearFew {
		body = append(body, app.Details().ID(p.Q.String()+"-turns").Body(
			summary("All that would change it"), app.Ul().Class("turns").Body(p.rows(points[nearFew:])...)))
	}
	if p.Q == question.Film && len(st.pairs) > 0 {
		rows := make([]app.UI, len(st.pairs))
		for i := range st.pairs {
			rows[i] = item(st.pairs[i].Says().In(p.S.system))
		}
		body = append(body, app.Details().ID("film-pairs").Body(
			summary("Two together that would change it"), app.Ul().Body(rows...)))
	}
	waits := ""
	if st != p.S.study { // it keeps its place till the new one is there
		waits = "This was so before the last change. Looking again …"
	} else if !st.deep {
		waits = "Still trying other places, soils and springs: each needs a year of soil warmth."
	}
	body = append(body, helpText(waits))
	for i := range st.fares {
		if d := &st.fares[i]; d.Question == p.Q {
			body = append(body, para("fares", d.Says().In(p.S.system)))
		}
	}
	return box("change", append(body, p.disputes())...)
}

// disputes are folded under the answer: what sources disagree on, each side with
// its own.
func (p *changePart) disputes() app.UI {
	var rows []app.UI
	for i := range p.S.advice.Disputes {
		d := &p.S.advice.Disputes[i]
		if d.Question != p.Q || app.IsServer { // the prerendered page leaves it to the program
			continue
		}
		rows = append(rows, app.Dt().Text(d.About))
		for k := range d.Sides {
			rows = append(rows, app.Dd().Body(sourced(d.Sides[k].Says, []*table.Source{d.Sides[k].Source}, p.S.system)))
		}
	}
	return app.Details().ID(p.Q.String()+"-disputes").Hidden(rows == nil).Body(summary("Where sources disagree"), app.Dl().Body(rows...))
}

// mine keeps the points of this answer: the planting day first, then what the
// grower left open, then the rest.
func (p *changePart) mine(all []search.TurningPoint) (list []*search.TurningPoint) {
	for i := range all {
		for _, q := range all[i].Changes() {
			if q == p.Q {
				list = append(list, &all[i])
			}
		}
	}
	for i := range list { // a few dozen at most
		for k := i; k > 0 && p.rank(list[k-1]) > p.rank(list[k]); k-- {
			list[k-1], list[k] = list[k], list[k-1]
		}
	}
	return list
}

func (p *changePart) rank(t *search.TurningPoint) int {
	switch {
	case t.Input.Form == field.FormDate:
		return 0
	case t.Unknown:
		return 1
	case t.Input.Name == "crop": // those with the same answer stand together
		return 3 + int(t.New[p.Q])
	}
	return 2
}

func (p *changePart) rows(list []*search.TurningPoint) []app.UI {
	rows := make([]app.UI, 0, len(list))
	crops := ""
	for i, t := range list {
		if t.Input.Name == "crop" {
			crops += ", " + said(t.Input, t.At, p.S.system)
			if i+1 == len(list) || list[i+1].New[p.Q] != t.New[p.Q] {
				rows = append(rows, item("Crop "+crops[2:]+": "+optionWords(p.Q, t.New[p.Q], p.S.system)+"."))
				crops = ""
			}
			continue
		}
		text := t.Says(p.Q).In(p.S.system)
		open := ""
		if t.Unknown {
			open = " You left this open: worth finding out. "
		}
		rows = append(rows, app.Li().Body(
			span(text+open),
			app.Button().Type("button").Class("go").Aria("label", "Try it: "+text).Text("Try it").
				Hidden(t.Input.EveryMonth() == "set to"). // the form has no field for it
				OnClick(func(app.Context, app.Event) { p.S.goTo(t) }, t.Input.Name, t.At.Word, t.At.Number)))
	}
	return rows
}

// optionWords is an answer within a sentence.
func optionWords(q question.Question, o question.Option, system unit.System) string {
	if o == question.NoOption {
		return "nothing fits"
	}
	return lower(q.Says(o).In(system))
}

// goTo sets the case to a turning point.
func (s *store) goTo(t *search.TurningPoint) {
	s.touch(lower(t.Input.Label), borrowedAs(t.Input.Name))
	s.c = t.Input.Turn(s.c, t.At)
	delete(s.typed, t.Input.Name)
	delete(s.wrong, t.Input.Name)
	s.changed()
	s.tell(onForm | onPlaces)
}
