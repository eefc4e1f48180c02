package app

import (
	"sort"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
)

// study is what the page works out after the answers are shown, in slices and
// off the typing path: how far each answer holds, and how it fares in doubt. It
// is dropped when the case changes.
type study struct {
	turner *rules.Turner
	doubts *rules.DoubtWork
	points []rules.TurningPoint
	fares  []rules.Doubt
	done   bool
}

// asksASlice keeps a slice to a few milliseconds on a slow tablet.
const asksASlice = 2

// begin starts the study of the advice that is shown. An older one ends by
// itself, since it is no longer the store's.
func (s *store) begin() {
	if s.slices == nil || s.advice == nil || s.stale {
		return
	}
	st := &study{}
	s.study = st
	var ok bool
	if st.turner, ok = rules.NewTurner(s.ground, s.c, false); !ok {
		return
	}
	st.doubts = rules.NewDoubts(s.ground, s.c)
	turned := false
	s.slices(func() bool {
		switch {
		case s.study != st:
			return true
		case !turned:
			turned = st.turner.Step(asksASlice)
			return false
		}
		return st.doubts.Step()
	}, func() {
		if s.study != st {
			return
		}
		st.points, st.fares, st.done = st.turner.Points(), st.doubts.Doubts(), true
		s.tell(onStudy)
	})
}

// changePart says under one answer what would change it.
type changePart struct {
	app.Compo
	S *store
	Q rules.Question
}

func (p *changePart) OnMount(app.Context) { p.S.follow(p, onStudy|onUnits|onAdvice, p.Update) }
func (p *changePart) OnDismount()         { p.S.leave(p) }

// nearFew is how many turning points stand under an answer; the rest is folded.
const nearFew = 2

func (p *changePart) Render() app.UI {
	st := p.S.study
	if st == nil || !st.done {
		return app.Div().Class("change").Body(app.P().Class("help").Text("Looking for what would change it …"))
	}
	points := p.mine(st.points)
	if len(points) == 0 {
		return app.Div().Class("change").Body(
			app.P().Text("Nothing you could change alone would change this answer."),
			app.P().Class("help").Text(p.fares(st)))
	}
	first, rest := points, []*rules.TurningPoint(nil)
	if len(points) > nearFew {
		first, rest = points[:nearFew], points[nearFew:]
	}
	body := []app.UI{app.P().Class("change-head").Text("What would change it"), app.Ul().Class("turns").Body(p.rows(first)...)}
	if len(rest) > 0 {
		body = append(body, app.Details().ID(p.Q.String()+"-turns").Body(
			app.Summary().Text("All that would change it"), app.Ul().Class("turns").Body(p.rows(rest)...)))
	}
	body = append(body, app.P().Class("help").Text(p.fares(st)))
	return app.Div().Class("change").Body(body...)
}

func (p *changePart) fares(st *study) string {
	for i := range st.fares {
		if st.fares[i].Question == p.Q {
			return st.fares[i].Says().In(p.S.system)
		}
	}
	return ""
}

// mine keeps the points of this answer: the planting day first, then what the
// grower left open, then the rest.
func (p *changePart) mine(all []rules.TurningPoint) (list []*rules.TurningPoint) {
	for i := range all {
		for _, q := range all[i].Changes() {
			if q == p.Q {
				list = append(list, &all[i])
			}
		}
	}
	sort.SliceStable(list, func(a, b int) bool { return rankOf(list[a]) < rankOf(list[b]) })
	return list
}

func rankOf(t *rules.TurningPoint) int {
	switch {
	case t.Input.Form == rules.FormDate:
		return 0
	case t.Unknown:
		return 1
	}
	return 2
}

func (p *changePart) rows(list []*rules.TurningPoint) []app.UI {
	rows := make([]app.UI, len(list))
	for i, t := range list {
		text := t.Says(p.Q).In(p.S.system)
		open := ""
		if t.Unknown {
			open = " You left this open: worth finding out. "
		}
		rows[i] = app.Li().Body(
			app.Span().Text(text+open),
			app.Button().Type("button").Class("go").Aria("label", "Go there: "+text).Text("Go there").
				OnClick(func(app.Context, app.Event) { p.S.goTo(t) }, t.Input.Name, t.At.Word, t.At.Number))
	}
	return rows
}

// goTo sets the case to a turning point.
func (s *store) goTo(t *rules.TurningPoint) {
	t.Input.Set(&s.c, t.At)
	delete(s.typed, t.Input.Name)
	delete(s.wrong, t.Input.Name)
	s.example = false
	s.changed()
	s.tell(onForm | onPlaces)
}

// openPart lists what is worth finding out, and how.
type openPart struct {
	app.Compo
	S *store
}

func (p *openPart) OnMount(app.Context) { p.S.follow(p, onStudy|onUnits|onAdvice, p.Update) }
func (p *openPart) OnDismount()         { p.S.leave(p) }

func (p *openPart) Render() app.UI {
	st := p.S.study
	var rows []app.UI
	if st != nil && st.done {
		for _, found := range worthKnowing(st.points) {
			said := ""
			for i, t := range found {
				if i > 0 {
					said += "; "
				}
				for j, q := range t.Changes() {
					if j > 0 {
						said += ", "
					}
					said += shorten(t.Says(q).In(p.S.system))
				}
			}
			in := found[0].Input
			rows = append(rows, app.Li().Body(
				app.Strong().Text(in.Label+". "), app.Text(said+". "), app.Em().Text(in.Help)))
		}
	}
	return app.Section().ID("worth-knowing").Class("worth").Hidden(len(rows) == 0).Body(
		app.H2().Text("Worth finding out first"),
		app.P().Text("You left these open, and they could change the answers. The first matters most."),
		app.Ol().Body(rows...))
}

// worthKnowing groups the points of open inputs, those that change the most
// answers first.
func worthKnowing(points []rules.TurningPoint) [][]*rules.TurningPoint {
	var groups [][]*rules.TurningPoint
	at := map[string]int{}
	for i := range points {
		t := &points[i]
		if !t.Unknown {
			continue
		}
		k, have := at[t.Input.Name]
		if !have {
			k = len(groups)
			at[t.Input.Name] = k
			groups = append(groups, nil)
		}
		groups[k] = append(groups[k], t)
	}
	sort.SliceStable(groups, func(a, b int) bool { return weightOf(groups[a]) > weightOf(groups[b]) })
	if len(groups) > 5 {
		groups = groups[:5]
	}
	return groups
}

// weightOf counts the answers that an open input can change; the verdict and
// the film count most.
func weightOf(list []*rules.TurningPoint) int {
	sum := 0
	for _, t := range list {
		for _, q := range t.Changes() {
			switch q {
			case rules.Verdict:
				sum += 4
			case rules.FilmQuestion:
				sum += 3
			default:
				sum++
			}
		}
	}
	return sum
}

// shorten drops the full stop of a sentence that joins others.
func shorten(s string) string {
	if n := len(s); n > 0 && s[n-1] == '.' {
		return s[:n-1]
	}
	return s
}
