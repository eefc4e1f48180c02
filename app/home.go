package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table/normals"
)

// home is the page: first the field, then the bed we would make, the six
// answers, and what stands behind them.
type home struct {
	app.Compo
	s *store
}

func (h *home) store() *store {
	if h.s == nil {
		h.s = arrive()
	}
	return h.s
}

// prerendered are the parts of the page that stand as they came until their turn:
// the worked example's answers, and what follows them.
var prerendered = []string{"answers", "bed-drawing", "worth-knowing", "season-strip", "map", "compare", "shopping", "laying-day", "water-plan", "season", "end"}

// arrive reads what the device kept, before anything is drawn: so the form is right
// from the first. With nothing kept it is the worked example, and what is right
// on the page already stays until the soil's year has been worked out again.
func arrive() *store {
	if !app.IsClient {
		return newStore(nil)
	}
	tellPage("whole", false)
	text := deviceText(storageKey)
	kept := readSaved(text)
	if kept == nil && text != "" {
		keepOnDevice(unreadKey, text) // what the page keeps next would lie over it
	}
	before := map[string]string{}
	for _, id := range prerendered {
		if el := app.Window().GetElementByID(id); el.Truthy() {
			before[id] = el.Get("outerHTML").String()
		}
	}
	if kept != nil || before["answers"] == "" { // not the page's first visit, or reached from another page
		return newStore(kept)
	}
	return exampleStore(before)
}

// OnNav sets the title anew, since another page may have changed it.
// The address may carry a field, on arrival and when it is changed by hand.
func (h *home) OnNav(ctx app.Context) {
	s := h.store()
	s.title = titleOf("/")
	ctx.Page().SetTitle(s.title)
	s.titled()
	s.openLink(ctx.Page().URL().Fragment)
}

func (h *home) OnDismount() { tellPage("whole", true) }

// loadNormals fetches the table of stations, which the worker keeps for the
// field, and reads it in a quiet moment.
func loadNormals(ctx app.Context, s *store) {
	missing := func() {
		ctx.Dispatch(func(app.Context) {
			s.noPlace = true
			s.tell(onPlaces)
			s.openLink(s.waiting)
		})
	}
	fail := app.FuncOf(func(app.Value, []app.Value) any {
		missing()
		return nil
	})
	read := app.FuncOf(func(_ app.Value, args []app.Value) any {
		text := args[0].String()
		ctx.Dispatch(func(app.Context) {
			table, err := normals.Parse(text)
			s.places, s.noPlace = table, err != nil
			if !s.c.Place.HasNormals { // what the device kept had no station's row
				casefile.Locate(&s.c, table)
				s.work()
			}
			s.tell(onPlaces)
			s.openLink(s.waiting)
		})
		return nil
	})
	// A callback cannot hand a promise back to the browser through the
	// framework, so the second step is chained here.
	answered := app.FuncOf(func(_ app.Value, args []app.Value) any {
		if !args[0].Get("ok").Bool() {
			missing()
			return nil
		}
		args[0].Call("text").Call("then", read).Call("catch", fail)
		return nil
	})
	app.Window().Call("fetch", app.Getenv("file:normals.csv")).Call("then", answered).Call("catch", fail)
}

func (h *home) Render() app.UI {
	s := h.store()
	return box("page",
		app.A().Class("skip").Href("#answers").Text("Skip to the answers"),
		app.Header().Class("masthead").Body(
			app.H1().Text("Film & Furrow"),
			para("lead", "Plastic mulch, bed and drip, worked out for your field, with every reason."),
			&unitSwitch{S: s},
		),
		app.Main().ID("main").TabIndex(-1).Body(
			box("two",
				// The drawing comes first, as narrow screens show it: a browser that
				// paints before all has come would push the form down under it.
				app.Section().Class("bed-side").ID("bed-we-make").Body(
					heading2("The bed we would make"),
					&bedDrawing{S: s},
				),
				app.Section().Class("ask").ID("field").Body(
					heading2("Your field"),
					&notesPart{S: s},
					sentencePart(s),
					&placePart{S: s},
					moreFields(s),
					para("private", "Nothing you type is sent anywhere. It stays on this device."),
				),
			),
			&answersPart{S: s},
			&laterPart{S: s, I: openTurn},
			box("doing", doing(s)...),
			&fieldsPart{S: s},
			&sharePart{S: s},
			&laterPart{S: s, I: endTurn},
		),
		app.Footer().Class("foot").Body(
			app.P().Body(app.A().ID("to-workshop").Href(app.Getenv("GOAPP_ROOT_PREFIX")+"/workshop").Text("In front of a room: the workshop, in large type")),
			app.P().Text("Film & Furrow works without a network after the first visit. Demo farms and their weather are invented."),
			app.A().Href(app.Getenv("GOAPP_ROOT_PREFIX")+"/about").Text("About this site and its licences"),
		),
	)
}

func noteClass(bad bool) string {
	if bad {
		return "note note-bad"
	}
	return "note"
}

// sentencePart is the sentence that the grower completes.
func sentencePart(s *store) app.UI {
	blank := func(name string) app.UI { return &entry{S: s, Name: name, Inline: true} }
	return asked("sentence",
		plain("I want to "), blank("method"), plain(" "), blank("crop"), plain(" on "), blank("plant_on"),
		plain(", in "), blank("soil.texture"), plain(" where weeds are "), blank("weeds.pressure"), plain("."),
	)
}

// groups are the rest of the form, in the order of the work.
var groups = []struct {
	id, title string
	names     []string
}{
	{"more-soil", "Soil", []string{"soil.drainage", "soil.slope_percent", "soil.wetness_at_laying", "soil.tilth", "soil.stones", "soil.organic_percent"}},
	{"more-weeds", "Weeds and insects", []string{"weeds.nutsedge", "weeds.insect_pressure"}},
	{"more-field", "Beds and plants", []string{"field.bed_length_m", "field.beds", "field.bed_centres_m", "field.bed_top_m", "field.side_slope", "field.rows_per_bed", "field.in_row_m", "field.exposure"}},
	{"more-work", "How you work", []string{"practice.laying", "practice.tractor_kw", "practice.people", "practice.film_width_m", "practice.roll_length_m", "practice.crops_on_film", "practice.organic", "practice.fumigated_on", "practice.label_interval_days", "practice.reuse.film", "practice.reuse.cover_percent", "practice.reuse.height_m", "practice.reuse.thickness_um"}},
	{"more-water", "Water", []string{"water.source", "water.flow_l_h", "water.hours_per_day", "water.pressure_kpa", "water.lift_m", "water.rise_m", "water.header_m", "water.tank_l", "water.refill_l_h", "water.ec_ds_m", "water.ph", "water.iron_mg_l", "water.hardness_mg_l", "water.sodium_ratio", "water.nitrate_mg_l"}},
	{"more-feed", "Feeding and chlorine", []string{"feed.rate_kg_ha_day", "feed.grade_percent", "feed.stock_kg_l", "feed.injector_ratio", "feed.bleach_percent", "feed.chlorine_mg_l"}},
	{"more-probe", "Your own probe", []string{"soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour"}},
	{"more-weather", "Weather", []string{"risk", "climate.last_frost", "climate.first_frost", "place.elevation_m"}},
}

func moreFields(s *store) app.UI {
	list := make([]app.UI, 0, len(groups)+1)
	list = append(list, helpText("Leave open what you do not know. Each thing you add makes the answers surer."))
	for _, g := range groups {
		body := []app.UI{summary(g.title), asked("fields", fieldsOf(s, g.names)...)}
		if g.id == "more-work" {
			body = append(body, &filmsPart{S: s})
		}
		if g.id == "more-probe" {
			body = append(body, &probePart{S: s})
		}
		if g.id == "more-water" {
			body = append(body, &bucketPart{S: s})
		}
		list = append(list, app.Details().Class("more").ID(g.id).Body(body...))
	}
	return box("more-all", list...)
}

// notesPart is what the page has to tell of the form as a whole.
type notesPart struct {
	app.Compo
	S *store
}

func (p *notesPart) OnMount(ctx app.Context) {
	s := p.S
	s.keep = func(state saved) bool { return keepOnDevice(storageKey, state.text()) }
	s.follow(p, onForm|onAdvice|onExample, p.Update)
	s.beside()
	s.listen()
	if s.advice == nil {
		s.work()
	} else {
		s.begin()
	}
	loadNormals(ctx, s)
}

func (p *notesPart) OnDismount() {
	p.S.flush()
	p.S.leave(p)
	p.S.study = nil // nobody is there to read it
	for _, end := range p.S.hearing {
		end()
	}
	p.S.hearing = nil
}

// The elements are always there, shown or not: the framework matches elements by
// their place, and a missing one would renew those after it.
func (p *notesPart) Render() app.UI {
	s := p.S
	digging := ""
	if s.advice == nil && !s.example {
		digging = "Working out the answers for your field …"
	}
	return app.Div().Body(
		app.P().Class("example").Hidden(!s.example).Text("This is a worked example: "+exampleName+". Change anything and it becomes yours."),
		app.P().Class("error").Role("alert").Hidden(!s.unsaved).Text("This device does not keep what you type: its storage is full or shut. Print the page or note the answers before you close it."),
		app.P().Class("waiting").Role("status").Text(digging),
		app.P().Class(noteClass(s.noteBad)).ID("note").Role("status").Text(s.note),
		app.P().Class("for-readers").ID("read-out").Role("alert").Text(s.spoken),
	)
}

// pause is how long a half-typed figure may stand before its error is read out.
const pause = 1000

// listen hears what else the browser tells, until the page is left.
func (s *store) listen() {
	window := app.Window()
	hear := func(from app.Value, event string, what func(app.Value)) {
		heard := app.FuncOf(func(_ app.Value, args []app.Value) any {
			what(args[0])
			return nil
		})
		from.Call("addEventListener", event, heard)
		s.hearing = append(s.hearing, func() {
			from.Call("removeEventListener", event, heard)
			heard.Release()
		})
	}
	hear(window, "storage", func(e app.Value) {
		if e.Get("key").String() == storageKey {
			s.followOtherTab()
		}
	})
	hear(window, "pagehide", func(app.Value) { s.flush() })
	var timer app.Value
	say := app.FuncOf(func(app.Value, []app.Value) any {
		spoken := ""
		s.faults(func(_, says string) { spoken += says + " " })
		if spoken != s.spoken {
			s.spoken = spoken
			s.tell(onExample)
		}
		return nil
	})
	s.speak = func() {
		if timer != nil {
			window.Call("clearTimeout", timer)
		}
		timer = window.Call("setTimeout", say, pause)
	}
}

// answersPart is the verdict and the answers.
type answersPart struct {
	app.Compo
	S *store
}

func (p *answersPart) OnMount(app.Context) { p.S.follow(p, onStart, p.Update) }
func (p *answersPart) OnDismount()         { p.S.leave(p) }

func (p *answersPart) Render() app.UI {
	s := p.S
	if s.advice == nil {
		return app.Raw(s.before["answers"])
	}
	return app.Div().ID("answers").TabIndex(-1).Body(
		&verdictPart{S: s},
		&faultsPart{S: s},
		&changePart{S: s, Q: question.Verdict},
		box("answers",
			&answerPart{S: s, Q: question.Film},
			&answerPart{S: s, Q: question.Thickness},
			&answerPart{S: s, Q: question.Bed},
			&answerPart{S: s, Q: question.Tape},
			&answerPart{S: s, Q: question.Wait},
			&waterPart{S: s},
		),
	)
}

// sections follow the answers, in the order of the work: each is a part with an
// address of its own that prints on its own sheet. The prerendered page only names
// them and leaves their tables to the program: they would be half of what must come
// before anything can be read.
var sections = []struct {
	id, title string
	part      func(*store) app.UI
}{
	{"worth-knowing", "", func(s *store) app.UI { return &openPart{S: s} }},
	{"season-strip", "Soil warmth through the season", func(s *store) app.UI { return &stripPart{S: s} }},
	{"map", "A map of the decision", func(s *store) app.UI { return &mapPart{S: s} }},
	{"compare", "Side by side", func(s *store) app.UI { return &comparePart{S: s} }},
	{"shopping", "What to buy", func(s *store) app.UI { return &shoppingPart{S: s} }},
	{"laying-day", "Laying day", func(s *store) app.UI { return &layingPart{S: s} }},
	{"water-plan", "Water plan", func(s *store) app.UI { return &waterPlanPart{S: s} }},
	{"season", "The season’s dates", func(s *store) app.UI { return &seasonPart{S: s} }},
	{"end", "", func(s *store) app.UI { return &endPart{S: s} }},
}

// openTurn and endTurn are the sections that stand apart from the sheets.
const (
	openTurn = 0
	endTurn  = 8
)

func doing(s *store) []app.UI {
	list := make([]app.UI, endTurn-openTurn-1)
	for i := range list {
		list[i] = &laterPart{S: s, I: openTurn + 1 + i}
	}
	return list
}

// laterPart is one of the sections. It is drawn after all that answers the grower,
// when its turn comes; until then it stands as it was prerendered.
type laterPart struct {
	app.Compo
	S    *store
	I    int // in sections
	here bool
}

func (p *laterPart) OnMount(app.Context) {
	p.S.follow(p, onStart, func() {
		p.here = true
		p.Update()
	})
	if p.S.advice != nil {
		p.S.lane.due[p] = true
	}
}

func (p *laterPart) OnDismount() { p.S.leave(p) }

func (p *laterPart) Render() app.UI {
	of := &sections[p.I]
	switch {
	case p.here || app.IsServer && of.title == "": // the two are prerendered whole
		return of.part(p.S)
	case p.S.before[of.id] != "":
		return app.Raw(p.S.before[of.id])
	}
	return app.Section().ID(of.id).Body(heading2(of.title), helpText("Worked out as soon as the calculator runs."))
}
