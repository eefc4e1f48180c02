package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// filmPatterns are what films look like where a plain colour does not tell: the sheen of
// silver, what shows through clear film, the grain of paper, bare ground.
const filmPatterns = `<defs><pattern id="sw-silver" width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(30)"><path fill="#b4bac0" d="M0 0h10v10h-10z"/><path fill="#fff" d="M0 0h4v10h-4z"/></pattern>` +
	`<pattern id="sw-clear" width="12" height="12" patternUnits="userSpaceOnUse"><path fill="#d8bd98" d="M0 0h12v12h-12z"/><path fill="#fff" d="M2 2h3v3h-3zM8 8h3v3h-3z"/></pattern>` +
	`<pattern id="sw-bio" width="12" height="12" patternUnits="userSpaceOnUse"><path fill="#2b2722" d="M0 0h12v12h-12z"/><path fill="#b08d66" d="M2 2h3v3h-3zM8 8h3v3h-3z"/></pattern>` +
	`<pattern id="sw-paper" width="14" height="8" patternUnits="userSpaceOnUse"><path fill="#d9bd8c" d="M0 0h14v8h-14z"/><path fill="#8a6a3a" d="M1 2h7v1.5h-7zM6 6h7v1.5h-7z"/></pattern>` +
	`<pattern id="sw-none" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path fill="#fff" d="M0 0h8v8h-8z"/><path fill="#8a1c12" d="M0 0h2.5v8h-2.5z"/></pattern>` +
	`<pattern id="sw-later" width="8" height="8" patternUnits="userSpaceOnUse"><path fill="#fff" d="M0 0h8v8h-8z"/><circle cx="4" cy="4" r="1.5" fill="#555"/></pattern></defs>`

// swatch is a film as it looks, beside its name.
func swatch(key string) string {
	return `<svg class="swatch" width="40" height="24" aria-hidden="true"><rect class="m-film m-` + key + `" width="40" height="24"/></svg>`
}

func filmKey(film table.FilmID) string {
	if film == table.NoFilm {
		return "none"
	}
	return film.Key()
}

// yearPart shows what to lay for planting when, all else of the field as it is.
type yearPart struct {
	app.Compo
	S    *store
	of   *plan.Advice
	work *search.YearWork
	done bool
}

func (p *yearPart) OnMount(ctx app.Context) {
	p.S.follow(p, onAdvice|onUnits, func() { p.begin(); p.Update() })
	ctx.Defer(func(app.Context) { p.begin(); p.Update() })
}
func (p *yearPart) OnDismount() { p.S.leave(p) }

func (p *yearPart) begin() {
	s := p.S
	if s.slices == nil || s.advice == nil || s.stale || s.digging || p.of == s.advice {
		return
	}
	work := search.NewYear(s.ground, s.c)
	p.of, p.work, p.done = s.advice, work, false
	s.slices(p, func() bool { return p.work != work || slice(func() bool { return work.Step(1) }) }, func() {
		if p.work == work {
			p.done = true
			p.Update()
		}
	})
}

func (p *yearPart) Render() app.UI {
	body := app.Section().ID("year-films").Class("tile year-films")
	if !p.done {
		return body.Body(heading2("What to lay for planting when"), para("waiting", "Trying each week of the year …"))
	}
	return body.Body(heading2("What to lay for planting when"), app.Raw(p.picture()))
}

// words says what holds in a run of weeks.
func spanWords(s search.YearSpan) string {
	switch {
	case s.Later:
		return "do not lay yet: the bed is too cold or too hot"
	case s.Film == table.NoFilm:
		return "do not lay"
	}
	return s.Film.Name()
}

func spanKey(s search.YearSpan) string {
	if s.Later {
		return "later"
	}
	return filmKey(s.Film)
}

func (p *yearPart) picture() string {
	spans := p.work.Spans()
	t := &svg{}
	t.raw(`<div>`)
	if s, ok := p.work.Fills(); ok {
		t.raw(`<p>`, swatch(spanKey(s)), ` <b>`, escape(sentence(spanWords(s))), `</b> in `, strconv.Itoa(s.Weeks), ` of 52 weeks: the day hardly changes it.</p>`, filmDefs(), `</div>`)
		return t.b.String()
	}
	first, last := spans[0].From, spans[len(spans)-1].To
	at := func(d unit.Date) float64 { return 100 * float64(d.Minus(first)) / float64(last.Plus(1).Minus(first)) }
	t.raw(`<svg class="year-svg" height="72" aria-hidden="true">`, filmPatterns)
	for _, s := range spans {
		t.raw(`<rect class="m-film m-`, spanKey(s), `" x="`, num(at(s.From)), `%" y="0" width="`, num(at(s.To.Plus(1))-at(s.From)), `%" height="44"/>`)
	}
	year, _, _ := first.Civil()
	for m := 1; m <= 12; m++ {
		x := at(unit.On(year, m, 1))
		t.raw(`<line class="m-tick" x1="`, num(x), `%" x2="`, num(x), `%" y1="44" y2="52"/><text class="m-month" x="`, num(x+0.6), `%" y="68">`, unit.MonthName(m)[:1], `</text>`)
	}
	own := num(at(p.S.advice.Facts.Plant))
	t.raw(`<line class="m-own-halo" x1="`, own, `%" x2="`, own, `%" y2="52"/><line class="m-own" x1="`, own, `%" x2="`, own, `%" y2="52"/></svg><ul class="legend">`)
	for _, s := range spans {
		t.raw(`<li>`, swatch(spanKey(s)), ` <span><b>`, escape(dayOfYear(s.From, p.S.system)), ` to `, escape(dayOfYear(s.To, p.S.system)), `:</b> `, escape(spanWords(s)), `</span></li>`)
	}
	t.raw(`</ul><p class="help">All else as it is. The line marks your planting day.</p></div>`)
	return t.b.String()
}

// filmDefs holds the patterns where no drawing does.
func filmDefs() string {
	return `<svg width="0" height="0" aria-hidden="true">` + filmPatterns + `</svg>`
}
