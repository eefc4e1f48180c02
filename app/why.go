package app

import (
	"math"
	"slices"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// whyRoom is one answer: what it is, why, a picture, what speaks for it and against,
// what would change it. Rules, points and sources are folded.
type whyRoom struct {
	app.Compo
	S  *store
	At string
}

func (p *whyRoom) OnMount(app.Context) { p.S.follow(p, onAnswer|onUnits, p.Update) }
func (p *whyRoom) OnDismount()         { p.S.leave(p) }

// asks is the question that the address names; false for water, which is reckoned and
// not weighed.
func (p *whyRoom) asks() (question.Question, bool) {
	name := strings.TrimPrefix(p.At, "/why/")
	for q := range answerTitles {
		if q.String() == name {
			return q, true
		}
	}
	return 0, false
}

func (p *whyRoom) Render() app.UI {
	s := p.S
	a, system := s.advice, s.system
	q, weighed := p.asks()
	head := &svg{}
	head.raw(`<div class="why-head"><p class="crumb"><a href="`, escape(s.way("/")), `">‹ Plan</a></p>`)
	if a.Refused() && (q != question.Verdict || !weighed) {
		head.raw(`<p class="if">Film is not to be laid here. This would hold for whoever laid it all the same.</p>`)
	}
	if !weighed {
		w := &a.Water
		show := func(v any) string { return escape(unit.Of(v).In(system)) }
		head.raw(`<h1>Why `, escape(waterLead(a, system)), `?</h1><p class="lead">The crop uses about `, show(w.Start), ` a day at planting and `, show(w.Peak), ` on its thirstiest day, and rain does not pass the film. `,
			escape(w.Says.In(system)), `</p></div>`)
		v := waterView{plan: &s.workOut().plan, system: system, s: s}
		return app.Article().Class("why").Body(app.Raw(head.b.String()),
			app.Section().Class("tile").Body(heading2("Minutes a day, month by month"), app.Raw(monthsSVG(v.plan, system))),
			app.Section().Class("tile").Body(v.soil()),
			v.assumed(), v.steps(),
			app.P().Body(sourceLinks([]*table.Source{&table.FAO56, a.Facts.Crop.KcMid.Source, &table.Saxton2006})),
			p.sources([]*table.Source{&table.FAO56, a.Facts.Crop.KcMid.Source, &table.Saxton2006}))
	}
	c := a.Choice(q)
	lead, more := answerWords(a, q, system)
	title, reason := "", mainReason(c, system)
	switch q {
	case question.Film:
		title = strings.TrimSuffix(strings.TrimPrefix(verdictLine(a), "Lay "), ".")
		title = strings.TrimSuffix(title, ", with care")
		if a.Refused() {
			title = lower(lead)
		}
	case question.Verdict:
		title, more = "lay film", ""
		if a.Refused() {
			title = "not lay film"
		}
		reason = "Nothing speaks against it on this field and day."
		if len(a.Gates) > 0 {
			reason = a.Gates[0].Reason.In(system)
		}
	case question.Wait:
		title, more = "wait "+lead, ""
	case question.Tape:
		title = "holes " + strings.TrimPrefix(lower(lead), "emitters ")
	default:
		title = lower(lead)
	}
	if q == question.Film && !a.Refused() {
		head.raw(swatch(filmKey(filmOf(a))))
	}
	head.raw(`<h1>Why `, escape(title), `?</h1><p class="lead">`, escape(reason), ` `, escape(stands(c, system)), `</p>`)
	if more != "" {
		head.raw(`<p>`, escape(more), `</p>`)
	}
	head.raw(`</div>`)
	body := []app.UI{app.Raw(head.b.String())}
	switch q {
	case question.Film, question.Wait:
		body = append(body, &laterPart{S: s, ID: "season-strip", Title: "Soil warmth through the season", Part: func() app.UI { return &stripPart{S: s} }})
	case question.Verdict:
		if a.Refused() {
			body = append(body, app.Section().ID("instead").Class("tile instead").Body(insteadParts(s)...))
		}
	default:
		body = append(body, app.Figure().Class("tile bed").ID("bed-drawing").Body(app.Raw(bedSVG(a, system, false)), app.FigCaption().Text(bedWords(a, system))))
	}
	factors := c.Ranked[0].Factors
	if q == question.Verdict {
		factors = a.Gates
	}
	body = append(body, app.Raw(consequences(a, q, system)), app.Raw(forAndAgainst(c, factors, system)),
		app.Section().Class("tile").Body(&changePart{S: s, Q: q}),
		app.Details().ID(p.name(q)+"-balance").Body(summary("Every reason, its rule and its weight"), &balancePart{S: s, Q: q}))
	if q == question.Film {
		body = append(body,
			app.Details().ID("surface-balance").Body(
				summary("Surface: "+question.Surface.Says(a.Surface.Ranked[0].Option).In(system)),
				para("firm", stands(&a.Surface, system)),
				&balancePart{S: s, Q: question.Surface}),
			s.yearPart(),
			app.Details().ID("map-more").Body(summary("A map of the decision: the year and one more thing"),
				&laterPart{S: s, ID: "map", Title: "A map of the decision", Part: func() app.UI { return &mapPart{S: s} }}))
	}
	sources := sourcesOf(c)
	for i := range a.Disputes {
		if d := &a.Disputes[i]; d.Question == q {
			for k := range d.Sides {
				sources = append(sources, d.Sides[k].Source)
			}
		}
	}
	body = append(body, p.sources(sources))
	return app.Article().Class("why").ID("why-" + p.name(q)).Body(body...)
}

func (p *whyRoom) name(q question.Question) string { return q.String() }

// stands says how well the answer stands, without its points.
func stands(c *judge.Choice, system unit.System) string {
	if _, ok := c.Best(); !ok || len(c.Ranked) < 2 || c.Question == question.Verdict || c.Question == question.Wait {
		return ""
	}
	second := lower(c.Question.Says(c.Ranked[1].Option).In(system))
	switch {
	case c.Ranked[1].RuledOutBy != nil:
		return "Every other is ruled out."
	case c.Confidence == judge.Close:
		return "A close call: " + second + " is nearly as good."
	case c.Confidence == judge.Leaning:
		return "One reason more or less would make it " + second + "."
	}
	return "Next comes " + second + "."
}

// consequences draws what comes of each option as bars in the grower's units.
func consequences(a *plan.Advice, q question.Question, system unit.System) string {
	t := &svg{}
	t.raw(`<div class="amounts">`)
	for _, c := range a.Consequences(q) {
		most := 0.0
		for i := range c.Of {
			most = max(most, math.Abs(c.Of[i].Value.SI))
		}
		t.raw(`<section class="tile"><h2>`, escape(c.Title.In(system)), `</h2><ul class="bars">`)
		for i := range c.Of {
			of := &c.Of[i]
			name, class := q.Says(of.Option).In(system), "bar-amount"
			if q == question.Film {
				name = coverName(int(of.Option))
			}
			if of.Value.SI < 0 {
				class = "bar-against"
			}
			t.raw(`<li><span>`, escape(sentence(name)), `</span><svg class="bar-svg" viewBox="0 0 100 16" preserveAspectRatio="none" aria-hidden="true"><rect class="`, class, `" width="`, num(96*math.Abs(of.Value.SI)/most), `" height="16"/></svg><b>`, escape(of.Value.In(system)), `</b></li>`)
		}
		t.raw(`</ul></section>`)
	}
	t.raw(`</div>`)
	return t.b.String()
}

// fewReasons is how many reasons stand on either side at first sight.
const fewReasons = 4

// forAndAgainst draws what speaks for the answer and against it as bars: the longer,
// the more it counts. The words carry this field's own figures.
func forAndAgainst(c *judge.Choice, factors []judge.Factor, system unit.System) string {
	points := func(f *judge.Factor) float64 {
		if c.Question == question.Verdict { // a gate is not weighed: each alone decides
			return -1
		}
		return f.Points()
	}
	most := 0.0
	for i := range factors {
		most = max(most, math.Abs(points(&factors[i])))
	}
	t := &svg{}
	t.raw(`<section class="tile for-against" id="for-against"><h2>For it, and against</h2><ul class="bars">`)
	for _, sign := range [...]float64{1, -1} {
		shown := 0
		for {
			var best *judge.Factor
			for i := range factors {
				f := &factors[i]
				if points(f)*sign > 0 && !strings.Contains(t.b.String(), `id="r-`+f.Rule.ID+`"`) && (best == nil || points(f)*sign > points(best)*sign) {
					best = f
				}
			}
			if best == nil || shown == fewReasons {
				break
			}
			shown++
			side, class := "for", "bar-for"
			if sign < 0 {
				side, class = "against", "bar-against"
			}
			if c.Question == question.Wait {
				side = "asks"
			}
			wide := num(max(4, 96*points(best)*sign/max(most, 0.01)))
			t.raw(`<li id="r-`, best.Rule.ID, `"><span class="side">`, side, `</span><svg class="bar-svg" viewBox="0 0 100 16" aria-hidden="true"><rect class="`, class, `" width="`, wide, `" height="16"/></svg><span>`, escape(best.Reason.In(system)), `</span></li>`)
		}
	}
	t.raw(`</ul>`)
	if len(factors) == 0 {
		t.raw(`<p>Nothing speaks against it here.</p>`)
	}
	if n := len(c.Ranked); n > 1 && c.Question != question.Wait && c.Question != question.Verdict {
		t.raw(`<h3>And the others?</h3><ul class="others">`)
		var heads, says []string   // what the same is said of stands together
		named := map[string]bool{} // tapes that differ in their holes alone are one
		for i := 1; i < min(n, 7); i++ {
			r := &c.Ranked[i]
			name := sentence(c.Question.Says(r.Option).In(system))
			if named[name] {
				continue
			}
			named[name] = true
			phrase, _ := c.WhyNot(i)
			out := ""
			if r.RuledOutBy != nil {
				out = " (ruled out)"
			}
			look := ""
			if c.Question == question.Film {
				look = swatch(filmKey(table.FilmID(r.Option))) + " "
			}
			head, text := look+`<b>`+escape(name)+out+`.</b> `, phrase.In(system)
			if k := slices.Index(says, text); k >= 0 {
				heads[k] += head
				continue
			}
			heads, says = append(heads, head), append(says, text)
		}
		for k := range says {
			t.raw(`<li>`, heads[k], escape(says[k]), `</li>`)
		}
		t.raw(`</ul>`)
	}
	t.raw(`</section>`)
	return t.b.String()
}

// sourcesOf lists those who say so, each once.
func sourcesOf(choices ...*judge.Choice) (list []*table.Source) {
	for _, c := range choices {
		for i := range c.Ranked {
			for k := range c.Ranked[i].Factors {
				list = append(list, c.Ranked[i].Factors[k].Rule.Sources...)
			}
		}
	}
	return list
}

// sources are folded at the foot; what cites one leads there and unfolds them.
func (p *whyRoom) sources(list []*table.Source) app.UI {
	if q, ok := p.asks(); ok && q == question.Film {
		list = append(list, sourcesOf(&p.S.advice.Surface)...)
	}
	if q, ok := p.asks(); ok && q == question.Verdict {
		for i := range p.S.advice.Gates {
			list = append(list, p.S.advice.Gates[i].Rule.Sources...)
		}
	}
	if app.IsServer { // the prerendered page leaves it to the program
		list = nil
	}
	return app.Details().ID("sources-list").Body(summary("Who says so"), app.Raw(p.S.sourcesHTML(list)))
}

// sourcesHTML is a list of sources, each once. Their texts come as a file when a list is
// first drawn; without it the list has names and years alone.
func (s *store) sourcesHTML(list []*table.Source) string {
	t := &svg{}
	told := map[*table.Source]bool{}
	t.raw(`<ul class="sources">`)
	for _, source := range list {
		if told[source] {
			continue
		}
		told[source] = true
		title, where, found := source.Title, source.Where, source.Found()
		if title == "" {
			title, where, found = s.sourceTexts(source.ID)
		}
		t.raw(`<li id="source-`, source.ID, `" tabindex="-1" translate="no">`, escape(source.Publisher), `: `, escape(title), `, `, escape(source.Year), `. `, escape(sentence(where)), `. <span translate="yes">`, escape(sentence(source.Mark.String())), `.</span> `)
		if strings.HasPrefix(found, "http") {
			t.raw(`<a href="`, escape(found), `">`, escape(found), `</a>`)
		} else {
			t.raw(escape(sentence(found)), `.`)
		}
		t.raw(`</li>`)
	}
	t.raw(`</ul>`)
	return t.b.String()
}

// because is why a rule has its weight, once the texts are there; the prerendered page has it.
func (s *store) because(r *judge.Rule) string {
	text := r.Because
	if text == "" {
		s.wantTexts()
		text = s.texts["rule:"+r.ID]
	}
	if text == "" {
		return ""
	}
	return ": " + text
}

func (s *store) wantTexts() {
	if s.texts == nil {
		s.texts = map[string]string{"": "its title is loading"}
		s.loadSources()
	}
}

// sourceTexts are title, place and address of a source, once they are there.
func (s *store) sourceTexts(id string) (title, where, found string) {
	s.wantTexts()
	title, rest, _ := strings.Cut(s.texts[id], "\t")
	where, found, _ = strings.Cut(rest, "\t")
	if title == "" {
		title = s.texts[""]
	}
	return title, where, found
}

// loadSources fetches the texts, which the worker keeps for the field, and has the lists
// drawn anew.
func (s *store) loadSources() {
	loadTable("sources.tsv", func(text string) {
		if text == "" {
			s.texts[""] = "its title could not be loaded"
		}
		for line := range strings.Lines(text) {
			id, rest, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "\t")
			s.texts[id] = rest
		}
		s.tell(onAdvice | onAnswer)
	})
}

// laterPart is a part that is drawn after all that answers the grower, when its turn
// comes; the prerendered page only names it.
type laterPart struct {
	app.Compo
	S         *store
	To        topic // it is drawn anew with
	ID, Title string
	Part      func() app.UI
	here      bool
}

func (p *laterPart) OnMount(app.Context) {
	p.S.follow(p, p.To, func() {
		p.here = true
		p.Update()
	})
	p.S.soon(p)
}

func (p *laterPart) OnDismount() { p.S.leave(p) }

func (p *laterPart) Render() app.UI {
	if p.here {
		return p.Part()
	}
	return app.Section().ID(p.ID).Class("tile later").Body(heading2(p.Title), helpText("Drawn as soon as the calculator runs."))
}
