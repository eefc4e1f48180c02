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
// silver, what shows through clear film, the grain of paper, bare ground. They stand on
// each page once.
const filmPatterns = `<svg class="film-patterns" width="0" height="0" aria-hidden="true"><defs><pattern id="sw-silver" width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(30)"><path fill="#b4bac0" d="M0 0h10v10h-10z"/><path fill="#fff" d="M0 0h4v10h-4z"/></pattern>` +
	`<pattern id="sw-clear" width="12" height="12" patternUnits="userSpaceOnUse"><path fill="#d8bd98" d="M0 0h12v12h-12z"/><path fill="#fff" d="M2 2h3v3h-3zM8 8h3v3h-3z"/></pattern>` +
	`<pattern id="sw-bio" width="12" height="12" patternUnits="userSpaceOnUse"><path fill="#2b2722" d="M0 0h12v12h-12z"/><path fill="#b08d66" d="M2 2h3v3h-3zM8 8h3v3h-3z"/></pattern>` +
	`<pattern id="sw-paper" width="14" height="8" patternUnits="userSpaceOnUse"><path fill="#d9bd8c" d="M0 0h14v8h-14z"/><path fill="#8a6a3a" d="M1 2h7v1.5h-7zM6 6h7v1.5h-7z"/></pattern>` +
	`<pattern id="sw-none" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path fill="#fff" d="M0 0h8v8h-8z"/><path fill="#8a1c12" d="M0 0h2.5v8h-2.5z"/></pattern>` +
	`<pattern id="sw-later" width="8" height="8" patternUnits="userSpaceOnUse"><path fill="#fff" d="M0 0h8v8h-8z"/><circle cx="4" cy="4" r="1.5" fill="#555"/></pattern></defs></svg>`

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

const yearTitle = "What to lay for planting when"

// yearFilms is what to lay for planting when, all else of the field as it is.
type yearFilms struct {
	of   *plan.Advice
	work *search.YearWork
	done bool
}

func (s *store) yearPart() app.UI {
	return &laterPart{S: s, ID: "year-films", Title: yearTitle, To: onAdvice | onUnits | onStudy, Part: s.year}
}

// year draws the year, and begins to work it out where the advice is another one.
func (s *store) year() app.UI {
	y := &s.films
	if s.slices != nil && s.advice != nil && !s.stale && !s.digging && y.of != s.advice {
		work := search.NewYear(s.ground, s.c)
		*y = yearFilms{of: s.advice, work: work}
		s.slices(y, func() bool { return y.work != work || slice(func() bool { return work.Step(1) }) }, func() {
			if y.work == work {
				y.done = true
				s.tell(onStudy)
			}
		})
	}
	class, text := "later", `<p class="waiting">Trying each week of the year …</p>`
	if y.done {
		class, text = "year-films", s.yearPicture()
	}
	return app.Raw(`<section id="year-films" class="tile ` + class + `"><h2>` + yearTitle + `</h2>` + text + `</section>`)
}

// spanWords says what holds in a run of weeks.
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

func (s *store) yearPicture() string {
	spans := s.films.work.Spans()
	if a, ok := s.films.work.Fills(); ok {
		return `<p>` + swatch(spanKey(a)) + ` <b>` + escape(sentence(spanWords(a))) + `</b> in ` + strconv.Itoa(a.Weeks) + ` of 52 weeks: the day hardly changes it.</p>`
	}
	first := spans[0].From
	t, legend := &svg{}, &svg{}
	at := func(d unit.Date) string { return percent(float64(d.Minus(first)) / 365) }
	line := func(class, d string) { t.raw(`<path class="`, class, `" d="`, d, `"/>`) }
	t.raw(`<svg class="year-svg" height="72" aria-hidden="true">`)
	for _, a := range spans {
		// What is drawn later lies over the rest of what was drawn before.
		rest := percent(1 - float64(a.From.Minus(first))/365)
		t.raw(`<rect class="m-film m-`, spanKey(a), `" x="`, at(a.From), `" width="`, rest, `" height="44"/>`)
		legend.raw(`<li>`, swatch(spanKey(a)), ` <span><b>`, escape(dayOfYear(a.From, s.system)+" to "+dayOfYear(a.To, s.system)), `:</b> `, escape(spanWords(a)), `</span></li>`)
	}
	year, _, _ := first.Civil()
	for m := 1; m <= 12; m++ {
		t.raw(`<svg class="m-at" x="`, at(unit.On(year, m, 1)), `">`)
		line("m-tick", "M0 44v8")
		t.raw(`<text class="m-month" x="4" y="68" data-of="`, unit.MonthName(m), `">`, unit.MonthName(m)[:1], `</text></svg>`)
	}
	t.raw(`<svg class="m-at" x="`, at(s.advice.Facts.Plant), `">`)
	line("m-halo", "M0 0v52")
	line("m-own", "M0 0v52")
	t.raw(`</svg></svg><ul class="legend">`, legend.b.String(), `</ul><p class="help">All else as it is. The line marks your planting day.</p>`)
	return t.b.String()
}
