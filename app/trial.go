package app

import (
	"math"
	"slices"
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/table"
	"filmfurrow/rules/trial"
	"filmfurrow/rules/unit"
)

// trialRoom plans a strip trial of films on the field's own beds, takes its tally, and says
// what it showed.
type trialRoom struct {
	app.Compo
	S    *store
	told []string
}

func (p *trialRoom) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *trialRoom) OnDismount()         { p.S.leave(p) }

// trialFilm is the tick of a film that is to be tried; trialBox, the box of a plot's yield.
func trialFilm(film table.FilmID) string { return "trial-film-" + table.Films[film].ID }
func trialBox(plot *trial.Plot) string {
	return "trial-yield-" + strconv.Itoa(plot.Bed) + "-" + strconv.Itoa(plot.Reach)
}

// tried are the films that were ticked, or the two that rank first.
func (p *trialRoom) tried(ways []table.FilmID) (films []table.FilmID) {
	for _, film := range ways {
		if p.S.ticks[trialFilm(film)] {
			films = append(films, film)
		}
	}
	if len(films) == 0 {
		films = slices.Clone(ways[:min(trial.LeastWays, len(ways))])
	}
	return films
}

func (p *trialRoom) Render() app.UI {
	s := p.S
	ways := rules.Ways(s.advice)
	films := p.tried(ways)
	t, err := rules.TryFilms(s.advice, films)
	if len(ways) == 0 {
		return app.Section().ID("trial").Class("sheet").Body(s.notNow("No trial of films now.", err.Error()), s.paperHead())
	}
	taps := make([]app.UI, len(ways))
	for i, film := range ways {
		on := slices.Contains(films, film)
		taps[i] = tap(trialFilm(film), unit.Capital(table.Films[film].Name), "", on, func() {
			for _, f := range p.tried(rules.Ways(s.advice)) { // those that ranked first become the grower's own
				s.ticks[trialFilm(f)] = true
			}
			p.told = nil
			s.tick(trialFilm(film), !on)
		})
	}
	parts := []app.UI{s.paperHead(),
		box("view-head", app.H1().Text("A strip trial of your own"), box("buttons", s.printButton("trial-print", "Print"))),
		helpText("Trials of films disagree. Which is best on your ground? Try two to four side by side, dealt out by chance."),
		box("taps", taps...)}
	if err != nil {
		return app.Section().ID("trial").Class("sheet").Body(append(parts, app.P().Class("error").ID("trial-told").Role("status").Text(err.Error()))...)
	}
	says := make([]app.UI, 0, 8)
	for _, phrase := range t.Says() {
		says = append(says, item(phrase.In(s.system)))
	}
	for i := range s.advice.Cautions {
		if c := &s.advice.Cautions[i]; c.Step == judge.StepLaying {
			says = append(says, item("Take care: "+c.Text+" Last word: "+c.Defers+"."))
		}
	}
	result := make([]app.UI, len(p.told))
	for i, text := range p.told {
		result[i] = paragraph(text)
	}
	parts = append(parts, para("lead", "Shows a difference of "+unit.Of(t.Least).In(s.system)+" or more"), app.Ul().ID("trial-says").Body(says...),
		heading2("What goes where, and what it gave"), p.plots(&t),
		box("buttons", press("trial-read", "What did it show?", p.read)),
		app.Div().Role("status").ID("trial-told").Body(result...))
	return app.Section().ID("trial").Class("sheet").Body(parts...)
}

// plots are the plots in the order of their blocks, each with a box for its yield.
func (p *trialRoom) plots(t *rules.FilmTrial) app.UI {
	list := make([]app.UI, len(t.Layout.Plots))
	for i := range t.Layout.Plots {
		plot := &t.Layout.Plots[i]
		from, to := unit.Of(unit.Metres(plot.From)).In(p.S.system), unit.Of(unit.Metres(plot.To)).In(p.S.system)
		name := table.Films[t.Films[plot.Way]].Name
		list[i] = app.Tr().Body(
			app.Th().Scope("row").Text(strconv.Itoa(plot.Block)), app.Td().Text(strconv.Itoa(plot.Bed)), app.Td().Text(name), app.Td().Text(from+" – "+to),
			app.Td().Body(asked("", &textBox{S: p.S, ID: trialBox(plot), Type: "text", Label: "Yield, bed " + strconv.Itoa(plot.Bed) + ", from " + from, Describe: "trial-told"})))
	}
	return listed("scroll", "Plots", list, "Block", "Bed", "Film", "From – to", "Yield, any unit")
}

// read analyses the boxes: whole blocks alone, each with a plain number in every box.
func (p *trialRoom) read() {
	t, err := rules.TryFilms(p.S.advice, p.tried(rules.Ways(p.S.advice)))
	if err != nil {
		return
	}
	p.told = nil
	say := func(text string) { p.told = append(p.told, text) }
	var yield [][]float64
	l := &t.Layout
	left := 0
	for first := 0; first < len(l.Plots); first += l.Ways {
		row, whole := make([]float64, l.Ways), true
		for i := range l.Ways {
			plot := &l.Plots[first+i]
			text := p.S.typed[trialBox(plot)]
			if text == "" {
				whole = false
				continue
			}
			v, err := unit.KindNumber.Read(text, p.S.system)
			if err != nil || v < 0 {
				say("Bed " + strconv.Itoa(plot.Bed) + ": “" + text + "” is not a number of 0 or more.")
				whole = false
			}
			row[plot.Way] = v
		}
		if whole {
			yield = append(yield, row)
		} else {
			left++
		}
	}
	a, ok := trial.Read(yield)
	if !ok {
		say("Fill in two whole blocks at least: one strip of each shows nothing.")
		return
	}
	if left > 0 {
		say(unit.Count(left, "block lacks", "blocks lack").In(p.S.system) + " a figure and did not count.")
	}
	names := make([]string, len(t.Films))
	for i, film := range t.Films {
		names[i] = table.Films[film].Name
	}
	for _, phrase := range a.Says(names) {
		say(phrase.In(p.S.system))
	}
	figure := func(v float64) string { return strconv.FormatFloat(math.Round(v*1000)/1000, 'f', -1, 64) }
	means := "Means of a plot: "
	for i, name := range names {
		if i > 0 {
			means += ", "
		}
		means += name + " " + strconv.FormatFloat(a.Means[i], 'g', 4, 64)
	}
	say(means + ". Randomized complete blocks: F " + figure(a.F) + " with " + figure(a.FreeWay) + " and " + figure(a.FreeError) + " degrees of freedom, chance " + figure(a.Chance) + "; permutation within blocks " + figure(a.Permutation) + ".")
}
