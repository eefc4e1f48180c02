package app

import (
	"strconv"
	"time"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// stripPart is the strip of the season: the soil's warmth under every film,
// what the crop wants, and the planting day as a handle.
type stripPart struct {
	app.Compo
	S *store

	from  unit.Date // first day shown; it stays while the planting day moves within
	days  int
	depth int  // one of facts.Depths
	asked bool // the depth was chosen by hand
	all   bool // the other films are shown too
	turn  int  // counts the moves of the handle, so that only the last one is worked out

	drawn  stripState // what curves, svg and words were made from
	curves *facts.SoilSeason
	svg    string
	words  []string
	after  func() // has the tables drawn
}

// stripState is all that the drawn strip depends on.
type stripState struct {
	advice *plan.Advice
	system unit.System
	depth  int
	from   unit.Date
}

// The handle answers at once; the advice follows when the hand rests so long.
const restTime = 120 * time.Millisecond

// edgeDays is how near to the strip's ends the planting day may stand before
// the strip moves on.
const edgeDays = 28

func (p *stripPart) OnMount(ctx app.Context) {
	p.S.follow(p, onAdvice|onUnits, func() {
		p.Update()
		ctx.Defer(func(app.Context) { p.push() })
	})
	ctx.Defer(func(app.Context) { p.push() })
}

func (p *stripPart) OnDismount() { p.S.leave(p) }

// day is the planting day that stands in the form.
func (p *stripPart) day() unit.Date {
	if p.S.c.PlantOn.Given {
		return p.S.c.PlantOn.Value
	}
	return p.S.advice.Facts.Plant
}

// place chooses the stretch of the year that is shown.
func (p *stripPart) place() {
	day := p.day()
	if p.days == 0 || day < p.from.Plus(edgeDays) || day >= p.from.Plus(unit.Days(p.days-edgeDays)) {
		p.from, p.days = facts.SeasonWindow(day)
	}
}

// draw makes the drawing anew where anything under it changed, and has the tables
// follow.
func (p *stripPart) draw() {
	p.place()
	a := p.S.advice
	if !p.asked {
		p.depth = facts.AtTen
		if a.Facts.Seeded {
			p.depth = facts.AtFive
		}
	}
	state := stripState{a, p.S.system, p.depth, p.from}
	if p.drawn == state {
		return
	}
	p.drawn = state
	p.curves = facts.SoilSeasonOf(a.Facts, p.depth, p.from, p.days)
	p.words = stripWords(a, p.curves, p.S.system)
	p.svg = stripSVG(a, p.curves, p.S.system, p.words)
	if p.after != nil {
		p.after()
	}
}

func (p *stripPart) Render() app.UI {
	if p.S == nil || p.S.advice == nil {
		return app.Section().ID("season-strip")
	}
	p.draw()
	class := "season"
	if !p.all {
		class += " season-few"
	}
	waiting := ""
	if p.S.digging {
		class += " season-old"
		waiting = "The curves are those of the last place or soil; the new ones are being worked out."
	}
	day := p.day()
	return app.Section().Class(class).ID("season-strip").Aria("busy", strconv.FormatBool(p.S.digging)).Body(
		heading2("Soil warmth through the season"),
		box("strip-top",
			asked("field",
				app.Label().For("strip-plant-on").Text("Planting day"),
				app.Input().ID("strip-plant-on").Name("strip-plant-on").Type("date").Value(day.String()).OnChange(p.typed),
			),
			app.FieldSet().Class("units").Body(
				app.Legend().Text("Depth"),
				p.depthButton(facts.AtFive), p.depthButton(facts.AtTen),
			),
			app.Button().Type("button").Class("unit").ID("strip-all").Aria("pressed", strconv.FormatBool(p.all)).Text("The other films too").
				OnClick(func(app.Context, app.Event) { p.all = !p.all }),
		),
		para("waiting", waiting),
		app.Figure().Class("strip-figure").Body(
			asked("strip-plot",
				app.Raw(p.svg),
				app.Label().Class("for-readers").For("strip-day").Text("Planting day on the strip"),
				app.Input().ID("strip-day").Name("strip-day").Type("range").Attr("role", "slider").
					Min(strconv.Itoa(int(p.from))).Max(strconv.Itoa(int(p.from)+p.days-1)).Step(1).Value(strconv.Itoa(int(day))).
					Aria("valuetext", p.valueText(day)).Aria("describedby", "strip-help").
					OnInput(p.slid).OnChange(p.let).OnKeyDown(p.key),
			),
			app.P().Class("help").ID("strip-help").Text("Drag the handle, or use the arrow keys (a day) and Page Up and Page Down (a week). The answers follow."),
			app.FigCaption().Body(
				paragraph(p.words[0]),
				app.Details().ID("strip-in-words").Body(summary("The curves in words"), app.Raw(stripList(p.words))),
			),
		),
		app.Details().ID("strip-films").Body(summary("What each film brings, in figures"), &stripTables{Strip: p}),
	)
}

func (p *stripPart) depthButton(depth int) app.UI {
	return app.Button().Type("button").Class("unit").ID("strip-depth-"+[...]string{facts.AtFive: "5", facts.AtTen: "10"}[depth]).
		Text(unit.Of(unit.Short(facts.Depths[depth])).In(p.S.system)).
		Aria("pressed", strconv.FormatBool(p.depth == depth)).
		OnClick(func(app.Context, app.Event) { p.depth, p.asked = depth, true }, depth)
}

// valueText is what a screen reader says of the handle.
func (p *stripPart) valueText(day unit.Date) string {
	a := p.S.advice
	from, _ := facts.SeasonWindow(day)
	if i := int(day.Minus(p.from)); i >= 0 && i < p.days {
		from = p.from
	}
	i := int(day.Minus(from))
	s := facts.SoilSeasonOf(a.Facts, p.depth, day, 1)
	chosen := a.Facts.ChosenCover()
	if i < 0 || len(s.Days[chosen]) == 0 {
		return day.In(p.S.system)
	}
	text := day.In(p.S.system) + ". Soil under " + coverName(chosen) + " " + temperature(s.Days[chosen][0].Mean, p.S.system)
	if chosen != facts.Bare {
		text += ", bare " + temperature(s.Days[facts.Bare][0].Mean, p.S.system)
	}
	return text + "."
}

// slid follows the handle without working anything out.
func (p *stripPart) slid(ctx app.Context, _ app.Event) {
	ctx.PreventUpdate()
	day, ok := dayOf(ctx.JSSrc())
	if !ok {
		return
	}
	p.show(day)
	p.later(ctx, restTime, day)
}

// let takes the day on which the handle was let go.
func (p *stripPart) let(ctx app.Context, _ app.Event) {
	ctx.PreventUpdate()
	if day, ok := dayOf(ctx.JSSrc()); ok {
		p.later(ctx, restTime/4, day)
	}
}

// key adds the steps of a week, which a browser's own slider does not have.
func (p *stripPart) key(ctx app.Context, e app.Event) {
	ctx.PreventUpdate()
	step := map[string]unit.Days{"PageUp": 7, "PageDown": -7}[e.Get("key").String()]
	day, ok := dayOf(ctx.JSSrc())
	if step == 0 || !ok {
		return
	}
	e.PreventDefault()
	day = min(max(day.Plus(step), p.from), p.from.Plus(unit.Days(p.days-1)))
	ctx.JSSrc().Set("value", strconv.Itoa(int(day)))
	p.show(day)
	p.later(ctx, restTime/4, day)
}

func dayOf(slider app.Value) (unit.Date, bool) {
	n, err := strconv.Atoi(slider.Get("value").String())
	return unit.Date(n), err == nil
}

// later works the day out when nothing else has come in the meantime.
func (p *stripPart) later(ctx app.Context, wait time.Duration, day unit.Date) {
	p.turn++
	turn := p.turn
	ctx.After(wait, func(app.Context) {
		if turn == p.turn && day != p.day() {
			p.take(day.String())
		}
	})
}

// typed takes the day from the strip's own date field.
func (p *stripPart) typed(ctx app.Context, _ app.Event) {
	if text := ctx.JSSrc().Get("value").String(); text != "" {
		p.turn++
		p.take(text)
	}
}

// take hands the day to the case; the sentence shows it too.
func (p *stripPart) take(text string) {
	_, wrong := p.S.wrong["plant_on"]
	p.S.set(field.InputByName("plant_on"), text)
	if _, still := p.S.wrong["plant_on"]; wrong != still {
		p.S.tell(onForm)
	}
	setValue(fieldID("plant_on"), text)
}

// show moves the handle's line and words, nothing else.
func (p *stripPart) show(day unit.Date) {
	at := percent(float64(day.Minus(p.from)) / float64(p.days-1))
	if line := app.Window().GetElementByID("strip-now"); line.Truthy() {
		line.Call("setAttribute", "x1", at)
		line.Call("setAttribute", "x2", at)
	}
	if label := app.Window().GetElementByID("strip-now-label"); label.Truthy() {
		label.Call("setAttribute", "x", at)
		label.Call("setAttribute", "class", nowClass(day, p.from, p.days))
		label.Set("textContent", "plant "+dayOfYear(day, p.S.system))
	}
	if slider := app.Window().GetElementByID("strip-day"); slider.Truthy() {
		slider.Call("setAttribute", "aria-valuetext", p.valueText(day))
	}
	setValue("strip-plant-on", day.String())
}

// push writes the case's day into both controls: a browser does not follow a
// changed attribute once somebody has moved them.
func (p *stripPart) push() {
	if p.S.advice == nil {
		return
	}
	day := p.day()
	setValue("strip-plant-on", day.String())
	setValue("strip-day", strconv.Itoa(int(day)))
}

func setValue(id, text string) {
	if el := app.Window().GetElementByID(id); el.Truthy() && el.Get("value").String() != text {
		el.Set("value", text)
	}
}
