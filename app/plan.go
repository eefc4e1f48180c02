package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// planRoom is the first view: verdict, bed, wait, water, and what comes next.
type planRoom struct {
	app.Compo
	S *store
}

func (p *planRoom) Render() app.UI {
	return box("plan",
		&verdictPart{S: p.S},
		&bedPart{S: p.S},
		&tilesPart{S: p.S},
	)
}

// dayOfYear is a date without its year, as the reader's country writes it.
func dayOfYear(d unit.Date, system unit.System) string {
	_, month, day := d.Civil()
	if system == unit.US {
		return unit.MonthName(month) + " " + strconv.Itoa(day)
	}
	return strconv.Itoa(day) + " " + unit.MonthName(month)
}

// wholeDay is a date with its year.
func wholeDay(d unit.Date, system unit.System) string {
	year, _, _ := d.Civil()
	if system == unit.US {
		return dayOfYear(d, system) + ", " + strconv.Itoa(year)
	}
	return dayOfYear(d, system) + " " + strconv.Itoa(year)
}

// sentencePart is the sentence that the grower completes.
type sentencePart struct {
	app.Compo
	S *store
}

func (p *sentencePart) OnMount(app.Context) { p.S.follow(p, onPlaces|onForm|onExample, p.Update) }
func (p *sentencePart) OnDismount()         { p.S.leave(p) }

func (p *sentencePart) Render() app.UI {
	s := p.S
	blank := func(name string) app.UI { return &entry{S: s, Name: name, Inline: true} }
	verb := "Set out "
	if s.c.Method == "seed" {
		verb = "Sow "
	}
	class, yours := "place-now", ""
	if s.borrowed[placeName] {
		class, yours = "place-now borrowed", "yours?"
	}
	open := "false"
	if s.finding {
		open = "true"
	}
	return app.Section().ID("field").Aria("label", "Your field").Body(
		asked("sentence",
			plain(verb), blank("crop"), plain(" on "), blank("plant_on"), plain(" near "),
			app.Span().Class("blank").Body(app.Button().Type("button").Class(class).ID("place-open").Aria("expanded", open).Aria("controls", "place").Text(s.placeName()).
				OnClick(func(ctx app.Context, _ app.Event) {
					s.finding = !s.finding
					s.tell(onPlaces)
					if s.finding {
						ctx.Defer(func(app.Context) { toField(placeBox) })
					}
				}), app.Small().Class("whose-it-is").Text(yours)),
			plain(" in "), blank("soil.texture"), plain(", weeds "), app.Span().Class("last").Body(blank("weeds.pressure"), plain(".")),
		),
		app.Div().ID("place").Hidden(!s.finding).Body(&placePart{S: s, Short: true}),
	)
}

// placeName is where the field lies, in two or three words.
func (s *store) placeName() string {
	pl := &s.c.Place
	switch {
	case s.example || s.borrowed[placeName] && pl.Own:
		return s.farm
	case pl.Own:
		return "own weather"
	case pl.StationName != "":
		words := strings.Fields(pl.StationName)
		for i, w := range words {
			if len(strings.Trim(w, ",")) > 2 {
				words[i] = w[:1] + strings.ToLower(w[1:])
			}
		}
		return strings.Join(words, " ")
	}
	return "choose a place"
}

// verdictPart says first of all whether to lay film, and on which days.
type verdictPart struct {
	app.Compo
	S *store
}

func (v *verdictPart) OnMount(app.Context) {
	v.S.follow(v, onAdvice|onUnits|onSums, v.Update)
	v.S.soon(v) // the first sums are there once the tiles are drawn
}
func (v *verdictPart) OnDismount() { v.S.leave(v) }

func (v *verdictPart) Render() app.UI {
	a, system := v.S.advice, v.S.system
	best, _ := a.Verdict.Best()
	t := &svg{}
	why := ` <a class="why-link" href="` + escape(v.S.way("/why/verdict")) + `">Why?</a>`
	now, _ := v.S.nowHTML()
	t.raw(`<div>`, now, `<h1>`, escape(verdictLine(a)), `</h1>`, gatesHTML(a, system, why), `</div>`)
	return app.Section().Class("verdict verdict-"+question.Verdict.Key(best)).ID("verdict").Body(
		only(v.S.digging, func() app.UI {
			return app.P().Class("waiting").Role("status").Text("Working out the soil’s warmth for this place …")
		}),
		only(v.S.stale, func() app.UI {
			return para("stale", "These answers are for the last field that could be read. Correct what is marked.")
		}),
		v.S.paperHead(),
		app.Raw(t.b.String()),
	)
}

// gatesHTML is what stands below the verdict: the days and what asks for care, or why not.
func gatesHTML(a *plan.Advice, system unit.System, why string) string {
	t := &svg{}
	if a.Refused() {
		for i := range a.Gates {
			if a.Gates[i].RulesOut {
				t.raw(`<p class="gates">`, escape(a.Gates[i].Reason.In(system)), why, `</p>`)
				break
			}
		}
		return t.b.String()
	}
	t.raw(`<p class="dates">`, datesHTML(a, system), why, `</p>`)
	// The first is told whole, the others by their titles: "Why?" tells them all.
	for i := range a.Gates {
		switch i {
		case 0:
			t.raw(`<p class="gates">`, escape(a.Gates[0].Reason.In(system)), `</p>`)
		case 1:
			t.raw(`<p class="gates"><span>Also:</span>`)
			fallthrough
		default:
			t.raw(` <b>`, escape(a.Gates[i].Rule.Title), `.</b>`)
		}
	}
	if len(a.Gates) > 1 {
		t.raw(`</p>`)
	}
	return t.b.String()
}

// insteadHTML is what to do where film is refused.
func insteadHTML(a *plan.Advice, system unit.System) string {
	t := &svg{}
	t.raw(`<h2>Instead</h2><ol>`)
	for _, i := range a.Insteads() {
		t.raw(`<li><b>`, escape(i.What.In(system)), `</b> `, escape(i.Why.In(system)), `</li>`)
	}
	t.raw(`</ol>`)
	return t.b.String()
}

// verdictLine is the verdict in a sentence.
func verdictLine(a *plan.Advice) string {
	if a.FilmDown() {
		return a.VerdictWords() + "."
	}
	best, _ := a.Verdict.Best()
	film, ok := a.Film.Best()
	words := "film"
	if ok {
		words = coverName(int(film))
	}
	switch best {
	case question.DoNotLay:
		return "Do not lay film here."
	case question.LayWithCare:
		return "Lay " + words + ", with care."
	}
	return "Lay " + words + "."
}

// datesHTML says when to lay and when to plant, and how the spring moves it.
func datesHTML(a *plan.Advice, system unit.System) string {
	w := &a.WaitPlan
	day := func(d unit.Date) string { return dayOfYear(d, system) }
	t := &svg{}
	if a.FilmDown() {
		t.raw(`The film is down. Plant <b>`, day(w.PlantOn), `</b>.`)
	} else {
		t.raw(`Lay <b>`, day(w.LayOn), `</b>, plant <b>`, day(w.PlantOn), `</b>.`)
	}
	if w.Moved > 0 {
		t.raw(` That is `, escape(unit.Of(w.Moved).In(system)), ` later than you wanted.`)
	}
	switch {
	case w.Soonest.Given && w.Latest.Given && w.Soonest.Value != w.Latest.Value:
		t.raw(` In a warm spring from `, day(w.Soonest.Value), `, in a cool one from `, day(w.Latest.Value), `.`)
	case w.WarmOn.Given && w.WarmOn.Value > w.PlantOn:
		t.raw(` The bed is warm enough without covers from `, day(w.WarmOn.Value), `.`)
	}
	return t.b.String()
}

// bedPart is the bed we would make; its labels lead to their reasons. Where film is
// refused it is what to do instead.
type bedPart struct {
	app.Compo
	S *store
}

func (p *bedPart) OnMount(app.Context) { p.S.follow(p, onAnswer|onUnits, p.Update) }
func (p *bedPart) OnDismount()         { p.S.leave(p) }

func (p *bedPart) Render() app.UI {
	if p.S.advice.Refused() {
		return app.Section().ID("instead").Class("tile instead").Body(insteadParts(p.S)...)
	}
	return app.Section().ID("bed-we-make").Class("tile bed-side").Body(app.Raw(bedHTML(p.S)))
}

// insteadParts say what to do where film is refused, and fold away what would hold
// for whoever laid it all the same.
func insteadParts(s *store) []app.UI {
	a, system := s.advice, s.system
	t := &svg{}
	t.raw(`<div>`, insteadHTML(a, system), `<details id="all-the-same"><summary>If you lay all the same</summary><dl>`)
	for _, q := range [...]question.Question{question.Film, question.Thickness, question.Bed, question.Tape, question.Wait} {
		lead, _ := answerWords(a, q, system)
		t.raw(`<dt><a href="`, escape(s.way("/why/"+q.String())), `">`, answerTitles[q], `</a></dt><dd>`, escape(lead), `</dd>`)
	}
	t.raw(`</dl></details></div>`)
	return []app.UI{app.Raw(t.b.String())}
}

// grown is how far the crop has come today.
func (s *store) grown() float64 {
	today, _ := s.today() // the prerendered page knows none: it draws the day of planting
	return s.advice.GrownOn(today)
}

// bedHTML is the drawing between its labels.
func bedHTML(s *store) string {
	a, system := s.advice, s.system
	b := a.Shape
	short := func(v unit.Metres) string { return unit.Of(unit.Short(v)).In(system) }
	t := &svg{}
	label := func(class, to, lead, more string) {
		t.raw(`<p class="`, class, `"><a href="`, escape(s.way("/why/"+to)), `">`, escape(lead), `</a>`, more, `</p>`)
	}
	film, _ := a.Film.Best()
	name := sentence(coverName(int(film)))
	thickness := ""
	if th, ok := a.ThicknessChosen(); ok {
		thickness = `<a href="` + escape(s.way("/why/thickness")) + `">` + escape(unit.Of(th).In(system)) + ` thick</a>`
	}
	height := "Flat bed"
	if b.Height > 0 {
		height = short(b.Height) + " high"
	}
	t.raw(`<div><div class="labels">`)
	label("label-left", "film", name, `<span>`+thickness+`, `+escape(question.Surface.Says(a.Facts.Surfacing).In(system))+`</span>`)
	label("label-right", "bed", height, `<span>top `+escape(short(b.Top))+` wide</span>`)
	t.raw(`</div><figure class="bed" id="bed-drawing">`, bedOn(a, system, true, s.grown()), `</figure><div class="labels">`)
	label("label-left", "bed", short(b.Tuck)+" buried", `<span>each side; roll `+escape(unit.Of(unit.Roll(b.FilmWidth)).In(system))+` wide</span>`)
	if tape := a.TapePlan.Tape; tape != nil {
		label("label-right", "tape", "Tape, holes every "+short(tape.Spacing), `<span>`+escape(short(a.TapePlan.Depth))+` deep, `+escape(lines(a.TapePlan.Laterals))+`</span>`)
	} else {
		label("label-right", "tape", "No tape fits", "")
	}
	t.raw(`</div></div>`)
	return t.b.String()
}

func lines(n int) string {
	if n == 1 {
		return "one line"
	}
	return strconv.Itoa(n) + " lines"
}

// tilesPart is the wait, the water and the next step, in small.
type tilesPart struct {
	app.Compo
	S *store
}

func (p *tilesPart) OnMount(app.Context) {
	p.S.follow(p, onAdvice|onUnits, func() {
		if s := p.S; s.slices != nil && s.advice != nil && s.worked.of != s.advice { // the sums take a turn of their own
			s.workOut()
			s.soon(p)
			return
		}
		p.Update()
	})
}
func (p *tilesPart) OnDismount() { p.S.leave(p) }

func (p *tilesPart) Render() app.UI {
	s := p.S
	t := &svg{}
	t.raw(`<div class="tiles">`)
	if !s.advice.Refused() {
		t.raw(`<section class="tile" id="wait"><h2><a href="`, escape(s.way("/why/wait")), `">Wait</a></h2><p class="number">`, escape(unit.Of(s.advice.WaitPlan.Days).In(s.system)), `</p>`,
			waitSVG(s.advice, s.system), `<p class="help">`, escape(unit.Say("Read a probe at ten: plant from {} on.", s.advice.Facts.WorkFloor).In(s.system)), `</p></section><section class="tile" id="water"><h2><a href="`, escape(s.way("/water")), `">Water</a></h2>`, s.waterTile(), `</section>`)
	}
	t.raw(s.nextHTML(), `</div>`)
	return app.Raw(t.b.String())
}

// waterTile is this week's mean minutes where the crop is growing, and the months' else.
func (s *store) waterTile() string {
	w := s.workOut()
	lead := waterLead(s.advice, s.system)
	if d := w.plan.Demand; d != nil && w.plan.Chosen && d.Peak.Run > 0 {
		lead = plan.RunWords(d.First.Every, d.First.Together).In(s.system) + " → " + unit.Of(d.Peak.Run).In(s.system) + " a day"
	}
	if w.plan.Verdict == water.DoesNotFit {
		lead = "It does not fit"
	} else if today, ok := s.today(); ok {
		if week, ok := s.advice.WaterWeekOf(&w.plan, &w.list, today); ok {
			lead = plan.RunWords(week.Every, week.Together).In(s.system) + " on average"
		}
	}
	return `<p class="number">` + escape(lead) + `</p>` + monthsSVG(&w.plan, s.system)
}

// nowHTML is what the season asks of the grower's own field today, with the way to it,
// and the id of that step.
func (s *store) nowHTML() (text, step string) {
	today, known := s.today()
	if s.example || s.linked || !known || s.worked.of != s.advice {
		return "", ""
	}
	if n := &s.worked.now; n.on != today {
		n.on = today
		n.says, n.step = s.advice.Now(&s.worked.plan, &s.worked.list, today)
	}
	says, step := s.worked.now.says, s.worked.now.step
	view := step
	switch step {
	case "":
		return "", ""
	case "plant", "lift":
		view = "year"
	}
	return `<p class="now"><a href="` + rooted("/"+view) + `">` + escape(says.In(s.system)) + `</a></p>`, step
}

// nextHTML says what the season asks next and by when, and which two answers would
// settle the most.
func (s *store) nextHTML() string {
	t := &svg{}
	t.raw(`<section class="next" id="next">`)
	a := s.advice
	steps := a.Season(&s.workOut().list)
	today, known := s.today()
	if !known && len(steps) > 0 {
		today = steps[0].On
	}
	_, step := s.nowHTML()
	class := ""
	if step != "" { // a phone's screen holds but the first
		class = ` class="next-too"`
	}
	theirs := s.linked && !s.example                                                    // another's season asks nothing of the reader
	if next, ok := plan.NextStep(steps, today); ok && next.Step.ID != step && !theirs { // or it stands above the verdict
		when := "on " + dayOfYear(next.Step.On, s.system)
		switch {
		case next.Step.Days > 1 && next.In > 0:
			when = "from " + dayOfYear(next.Step.On, s.system)
		case next.Step.Days > 1:
			when = "by " + dayOfYear(next.Step.On.Plus(next.Step.Days-1), s.system)
		case known && next.In == 0:
			when = "today"
		}
		if known && next.In > 0 && next.In < 60 {
			when += ", in " + unit.Of(next.In).In(s.system)
		}
		t.raw(`<p`, class, `><b>Next, `, escape(when), `:</b> `, escape(next.Step.What.In(s.system)), `</p>`)
	} else if !ok && len(steps) > 0 && !theirs {
		t.raw(`<p><b>This year is over.</b> Set the planting day to the coming one.</p>`)
	}
	if open := s.worthAsking(); len(open) > 0 {
		t.raw(`<p class="help">Worth finding out: `)
		for i, in := range open {
			if i > 0 {
				t.raw(`, `)
			}
			t.raw(`<a href="`, escape(rooted("/details")), `#`, fieldID(in.Name), `">`, escape(lower(in.Label)), `</a>`)
		}
		t.raw(`.</p>`)
	}
	t.raw(`</section>`)
	return t.b.String()
}

// worthAsking are the two open inputs that could change most.
func (s *store) worthAsking() (list []*field.Input) {
	if st := s.studied; st != nil {
		for i := range st.opens[:min(2, len(st.opens))] {
			list = append(list, st.opens[i].Input)
		}
	}
	return list
}

// waitSVG is the line from laying to planting, a mark for each day, the last mornings
// of the probe among them.
func waitSVG(a *plan.Advice, system unit.System) string {
	w := &a.WaitPlan
	const wide, y = 320.0, 44.0
	left, right := 30.0, wide-30
	t := &svg{}
	words := "Lay on " + dayOfYear(w.LayOn, system) + ", plant on " + dayOfYear(w.PlantOn, system) + "."
	start := "Lay "
	if a.FilmDown() {
		words, start = a.DatesWords().In(system), "Ready "
	}
	t.raw(`<svg class="line-svg" viewBox="0 0 320 84" role="img" aria-label="`, escape(words), `"><path class="d-measure" d="M4 44 H316"/>`)
	if w.Days == 0 {
		t.raw(`<path class="t-plant" d="M160 28 v32"/>`)
		t.text(160, 20, "t-label", "middle", "Lay and plant "+dayOfYear(w.PlantOn, system))
		t.raw(`</svg>`)
		return t.b.String()
	}
	t.raw(`<rect class="t-wait" x="`, num(left), `" y="36" width="`, num(right-left), `" height="16"/>`)
	if w.Days <= 40 {
		for d := 1; d < int(w.Days); d++ {
			x := left + (right-left)*float64(d)/float64(w.Days)
			t.raw(`<path class="t-day" d="M`, num(x), ` 36 v16"/>`)
		}
	}
	t.raw(`<path class="t-lay" d="M`, num(left), ` 28 v32"/><path class="t-plant" d="M`, num(right), ` 28 v32"/>`)
	t.text(4, 20, "t-label", "start", start+dayOfYear(w.LayOn, system))
	t.text(wide-4, 78, "t-label", "end", "Plant "+dayOfYear(w.PlantOn, system))
	t.raw(`</svg>`)
	return t.b.String()
}

// monthsSVG is the water of the season's months as bars, minutes a day and zone.
func monthsSVG(p *plan.WaterPlan, system unit.System) string {
	if p.Demand == nil || len(p.Demand.Months) == 0 || p.Demand.Months[0].Run == 0 {
		return ""
	}
	months := p.Demand.Months
	most := unit.Minutes(1)
	words := "Minutes a day:"
	for i := range months {
		most = max(most, months[i].Run)
		words += " " + unit.MonthName(months[i].Month) + " " + unit.KindMinutes.Figure(float64(months[i].Run), system) + ";"
	}
	t := &svg{}
	t.raw(`<svg class="line-svg" viewBox="0 0 320 104" role="img" aria-label="`, escape(words), `">`)
	step := 312 / float64(len(months))
	for i := range months {
		m := &months[i]
		tall := 52 * float64(m.Run/most)
		x := 4 + step*float64(i)
		t.raw(`<rect class="t-water" x="`, num(x+step*0.1), `" y="`, num(78-tall), `" width="`, num(step*0.8), `" height="`, num(tall), `"/>`)
		if len(months) <= 7 {
			t.text(x+step/2, 72-tall, "t-figure", "middle", unit.KindMinutes.Figure(float64(m.Run), system))
			t.text(x+step/2, 98, "t-month", "middle", unit.MonthName(m.Month)[:3])
		} else if m.Run == most {
			t.text(x+step/2, 72-tall, "t-figure", "middle", unit.KindMinutes.Figure(float64(m.Run), system))
		}
		if len(months) > 7 && i%3 == 0 {
			t.text(x+step/2, 98, "t-month", "middle", unit.MonthName(m.Month)[:3])
		}
	}
	t.raw(`<path class="d-measure" d="M4 78 H316"/></svg>`)
	return t.b.String()
}

// faults goes through what cannot be read, in the order of the form.
func (s *store) faults(each func(name, says string)) {
	for i := range field.Inputs {
		name := field.Inputs[i].Name
		if wrong, bad := s.wrong[name]; bad {
			each(name, field.Inputs[i].Label+": "+errorText(&wrong))
		}
	}
}

// faultsPart is the summary of what cannot be read: it leads to each field that is
// to be corrected, in the words that stand beside it. It is outside the live region,
// since it changes with each key.
type faultsPart struct {
	app.Compo
	S *store
}

func (p *faultsPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits|onForm, p.Update) }
func (p *faultsPart) OnDismount()         { p.S.leave(p) }

const faultsID = "faults"

func (p *faultsPart) Render() app.UI {
	var list []app.UI
	p.S.faults(func(name, says string) {
		list = append(list, app.Li().Body(app.A().Href(rooted("/details")+"#"+fieldID(name)).Text(says).OnClick(func(_ app.Context, e app.Event) {
			if toField(fieldID(name)) {
				e.PreventDefault()
				e.StopImmediatePropagation()
			}
		}, name)))
	})
	return app.Ul().ID(faultsID).TabIndex(-1).Aria("label", "To be corrected").Hidden(len(list) == 0).Body(list...)
}
