package app

import (
	"math"
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

var answerTitles = map[question.Question]string{
	question.Film: "Film", question.Thickness: "Thickness", question.Bed: "Bed",
	question.Tape: "Drip tape", question.Wait: "Wait", question.Surface: "Surface", question.Verdict: "Verdict",
}

// balancePart is the balance of one answer. It has ten times the elements of the
// answer, so it is drawn after all the answers.
type balancePart struct {
	app.Compo
	S    *store
	Q    question.Question
	here bool
}

func (p *balancePart) OnMount(app.Context) {
	p.S.follow(p, onAnswer|onUnits, func() {
		p.here = true
		p.Update()
	})
	p.S.soon(p)
}

func (p *balancePart) OnDismount() { p.S.leave(p) }

func (p *balancePart) Render() app.UI {
	if !p.here && app.IsClient {
		return box("balance")
	}
	return balance(p.S.advice.Choice(p.Q), p.S.because, p.S.system, p.unfolded())
}

// unfolded reports which options are unfolded, by their place: the first is, until the
// reader folds it.
func (p *balancePart) unfolded() func(i int) bool {
	if app.IsClient {
		options := p.JSValue().Get("children")
		if n := options.Length(); n > 0 {
			return func(i int) bool { return i < n && options.Index(i).Get("open").Bool() }
		}
	}
	return func(i int) bool { return i == 0 }
}

// answerWords gives the answer, and a second line of figures.
func answerWords(a *plan.Advice, q question.Question, system unit.System) (lead, more string) {
	short := func(v unit.Metres) string { return unit.Of(unit.Short(v)).In(system) }
	c := a.Choice(q)
	best, ok := c.Best()
	if !ok {
		return "None fits", "Every one is ruled out: open the balance to see why."
	}
	switch q {
	case question.Film:
		surface, _ := a.Surface.Best()
		return sentence(table.FilmID(best).Name()), "Surface: " + question.Surface.Says(surface).In(system) + "."
	case question.Bed:
		b := a.Shape
		return sentence(q.Says(best).In(system)), "Top " + short(b.Top) + ", base " + short(b.Base) + ", crown " + short(b.Crown) +
			". Film " + unit.Of(unit.Roll(b.FilmWidth)).In(system) + " wide: top, sides and " + short(b.Tuck) + " buried on each side."
	case question.Tape:
		t := a.TapePlan.Tape
		lines := "One line"
		if a.TapePlan.Laterals > 1 {
			lines = strconv.Itoa(a.TapePlan.Laterals) + " lines"
		}
		return "Emitters " + short(t.Spacing) + " apart", unit.Of(t.Flow).In(system) + ". " + lines + " a bed, " + short(a.TapePlan.Depth) + " deep, emitters up, off the plant line."
	case question.Wait:
		w := &a.WaitPlan
		more = a.DatesWords().In(system)
		if w.Moved > 0 {
			more += " That is " + unit.Of(w.Moved).In(system) + " later than you wanted."
		}
		if w.CoversOn.Given && w.CoversOn != w.WarmOn {
			more += " Warm enough under covers from " + w.CoversOn.Value.In(system) + "."
		}
		if w.WarmOn.Given {
			more += " Warm enough without from " + w.WarmOn.Value.In(system) + "."
		}
		if w.WaitCosts.Text != "" {
			more += " " + w.WaitCosts.In(system)
		}
		return unit.Of(w.Days).In(system), more
	case question.Verdict:
		return a.VerdictWords(), ""
	}
	return sentence(q.Says(best).In(system)), ""
}

// mainReason is the factor that weighs most for the winner, or against the
// next where nothing speaks for it.
func mainReason(c *judge.Choice, system unit.System) string {
	if _, ok := c.Best(); !ok {
		return ""
	}
	if f := heaviest(c.Ranked[0].Factors, +1); f != nil {
		return f.Reason.In(system)
	}
	if len(c.Ranked) > 1 {
		if f := heaviest(c.Ranked[1].Factors, -1); f != nil {
			return "Against " + c.Question.Says(c.Ranked[1].Option).In(system) + ": " + f.Reason.In(system)
		}
	}
	return ""
}

func heaviest(factors []judge.Factor, sign float64) *judge.Factor {
	var best *judge.Factor
	for i := range factors {
		if factors[i].Points()*sign > 0 && (best == nil || factors[i].Points()*sign > best.Points()*sign) {
			best = &factors[i]
		}
	}
	return best
}

// balance shows every option with all that spoke for and against it. An option is
// text: hundreds of elements that nothing listens to would be minded one by one.
func balance(c *judge.Choice, because func(*judge.Rule) string, system unit.System, open func(i int) bool) app.UI {
	list := make([]app.UI, len(c.Ranked))
	for i := range c.Ranked {
		r := &c.Ranked[i]
		head := sentence(c.Question.Says(r.Option).In(system))
		if r.RuledOutBy != nil {
			head += ": ruled out"
		} else if c.Question != question.Wait {
			head += ": " + points(r.Score)
		}
		why := ""
		if i > 0 && c.Question != question.Wait {
			phrase, _ := c.WhyNot(i)
			why = "Why not: " + phrase.In(system)
		}
		if i > 0 && app.IsServer { // the prerendered page has the winner's balance whole
			list[i] = app.P().Class("option").Body(strong(head+". "), plain(why))
			continue
		}
		t := &svg{}
		t.raw(`<details class="option" id="`, c.Question.String(), "-", c.Question.Key(r.Option), `"`)
		if open(i) {
			t.raw(" open")
		}
		t.raw("><summary>", escape(head), `</summary><p class="whynot">`, escape(why), `</p><ul class="factors">`)
		for j := range r.Factors {
			factorRow(t, &r.Factors[j], c.Question, because, system)
		}
		if len(r.Factors) == 0 {
			t.raw("<li>Nothing speaks for or against it.</li>")
		}
		t.raw("</ul></details>")
		list[i] = app.Raw(t.b.String())
	}
	return box("balance", list...)
}

func factorRow(t *svg, f *judge.Factor, q question.Question, because func(*judge.Rule) string, system unit.System) {
	side, class := "for", "for"
	switch {
	case f.RulesOut:
		side, class = "rules it out", "out"
	case q == question.Wait:
		side, class = "asks", "asks"
	case f.Fit < 0:
		side, class = "against", "against"
	}
	weight := ""
	if !f.RulesOut && q != question.Wait {
		weight = " " + points(f.Points()) + " (" + f.Rule.Weight.String() + " weight" + because(f.Rule) + ")"
	}
	t.raw(`<li class="`, class, `"><span class="side">`, side, `</span><span><strong>`, escape(f.Rule.Title), `. </strong>`,
		escape(f.Reason.In(system)), `<span class="weight">`, escape(weight), `</span> `, cite(f.Rule.Sources), `</span></li>`)
}

func points(v float64) string {
	s := strconv.FormatFloat(math.Abs(v), 'f', 1, 64)
	if s == "0.0" {
		return "0"
	}
	if v < 0 {
		return "−" + s
	}
	return "+" + s
}

// sourced is a sentence with those who say so behind it.
func sourced(says unit.Phrase, list []*table.Source, system unit.System) app.UI {
	return app.Raw("<span>" + escape(says.In(system)) + " " + cite(list) + "</span>")
}

// sourceLinks leads to the list of sources at the foot of the page.
func sourceLinks(list []*table.Source) app.UI { return app.Raw(cite(list)) }

func cite(list []*table.Source) string {
	t := &svg{}
	t.raw("<cite>")
	told := ""
	for i, s := range list {
		if sourceName(s) == told { // another part of the same paper: the list at the foot has both
			continue
		}
		if i > 0 {
			t.raw(", ")
		}
		told = sourceName(s)
		t.raw(`<a href="#source-`, s.ID, `">`, escape(sourceName(s)), `</a>`)
	}
	t.raw("</cite>")
	return t.b.String()
}

func sourceName(s *table.Source) string {
	switch s.Mark {
	case table.CommonPractice:
		return "common practice, no source"
	case table.FromMemory:
		if s == &table.Memory {
			return "from memory"
		}
	}
	if s.Year[0] == 'r' { // read 2026: no year of its own
		return s.Publisher
	}
	return s.Publisher + " " + s.Year
}
