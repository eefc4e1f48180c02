package app

import (
	"time"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
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
		h.s = newStore(keptState())
	}
	return h.s
}

// keptState reads what the device kept, before anything is drawn: so the form
// is right from the first, and the soil's work is done for one place only.
func keptState() *saved {
	if !app.IsClient {
		return nil
	}
	text := deviceText(storageKey)
	kept := readSaved(text)
	if kept == nil && text != "" {
		keepOnDevice(unreadKey, text) // what the page keeps next would lie over it
	}
	return kept
}

// OnNav sets the title anew, since another page may have changed it.
// The address may carry a field, on arrival and when it is changed by hand.
func (h *home) OnNav(ctx app.Context) {
	ctx.Page().SetTitle(titleOf("/"))
	h.store().openLink(ctx.Page().URL().Fragment)
}

func (h *home) OnMount(ctx app.Context) {
	s := h.store()
	s.keep = func(state saved) bool { return keepOnDevice(storageKey, state.text()) }
	s.follow(h, onForm, h.Update)
	s.beside(ctx)
	s.begin()
	app.Window().Call("addEventListener", "storage", app.FuncOf(func(_ app.Value, args []app.Value) any {
		if args[0].Get("key").String() == storageKey {
			ctx.Dispatch(func(app.Context) { s.followOtherTab() })
		}
		return nil
	}))
	loadNormals(ctx, s)
}

// The soil's work goes on for about half a frame at a time. A browser's least
// pause is several milliseconds, so a slice is as long as it may be, and measured
// by time after every day: a day of the run-up costs a tenth of a day with films,
// and that a quarter of one with frozen ground (0.6 ms of one native core, several
// in a slow browser), by which a slice may run over.
const (
	daysAStep = 1
	sliceTime = 8 * time.Millisecond
)

func (h *home) OnDismount() { h.store().leave(h) }

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
					// These two are always there, shown or not: the framework matches
					// elements by their place, and a missing one would renew the form.
					app.P().Class("example").Hidden(!s.example).Text("This is a worked example: "+exampleName+". Change anything and it becomes yours."),
					app.P().Class("error").Role("alert").Hidden(!s.unsaved).Text("This device does not keep what you type: its storage is full or shut. Print the page or note the answers before you close it."),
					app.P().Class(noteClass(s.noteBad)).ID("note").Role("status").Text(s.note),
					sentencePart(s),
					&placePart{S: s},
					moreFields(s),
					para("private", "Nothing you type is sent anywhere. It stays on this device."),
				),
			),
			app.Div().ID("answers").TabIndex(-1).Body(
				&verdictPart{S: s},
				&changePart{S: s, Q: rules.Verdict},
				box("answers",
					&answerPart{S: s, Q: rules.FilmQuestion},
					&answerPart{S: s, Q: rules.ThicknessQuestion},
					&answerPart{S: s, Q: rules.BedQuestion},
					&answerPart{S: s, Q: rules.TapeQuestion},
					&answerPart{S: s, Q: rules.WaitQuestion},
					&waterPart{S: s},
				),
			),
			&openPart{S: s},
			box("doing", doing(s)...),
			&fieldsPart{S: s},
			&sharePart{S: s},
			&endPart{S: s},
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
	blank := func(name string) app.UI { return &field{S: s, Name: name, Inline: true} }
	return box("sentence",
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
	{"more-field", "Beds and plants", []string{"field.bed_length_m", "field.beds", "field.bed_centres_m", "field.bed_top_m", "field.rows_per_bed", "field.in_row_m", "field.exposure"}},
	{"more-work", "How you work", []string{"practice.laying", "practice.tractor_kw", "practice.people", "practice.film_width_m", "practice.roll_length_m", "practice.crops_on_film", "practice.organic", "practice.fumigated_on", "practice.label_interval_days", "practice.reuse.film", "practice.reuse.cover_percent"}},
	{"more-water", "Water", []string{"water.source", "water.flow_l_h", "water.hours_per_day", "water.pressure_kpa", "water.lift_m", "water.rise_m", "water.header_m", "water.tank_l", "water.refill_l_h", "water.ec_ds_m", "water.ph", "water.iron_mg_l", "water.hardness_mg_l", "water.sodium_ratio", "water.nitrate_mg_l"}},
	{"more-feed", "Feeding and chlorine", []string{"feed.rate_kg_ha_day", "feed.grade_percent", "feed.stock_kg_l", "feed.injector_ratio", "feed.bleach_percent", "feed.chlorine_mg_l"}},
	{"more-probe", "Your own probe", []string{"soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour"}},
	{"more-weather", "Weather", []string{"risk", "climate.last_frost", "climate.first_frost", "place.elevation_m"}},
}

func moreFields(s *store) app.UI {
	list := make([]app.UI, 0, len(groups)+1)
	list = append(list, helpText("Leave open what you do not know. Each thing you add makes the answers surer."))
	for _, g := range groups {
		fields := make([]app.UI, len(g.names))
		for i, name := range g.names {
			fields[i] = &field{S: s, Name: name}
		}
		body := []app.UI{summary(g.title), box("fields", fields...)}
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

// doing lists the sections that follow the answers, in the order of the work:
// each is a part with an address of its own that prints on its own sheet. The
// prerendered page names them and leaves their tables to the program: they would
// be half of what must come before anything can be read.
func doing(s *store) []app.UI {
	return []app.UI{
		later("season-strip", "Soil warmth through the season", &stripPart{S: s}),
		later("map", "A map of the decision", &mapPart{S: s}),
		later("compare", "Side by side", &comparePart{S: s}),
		later("shopping", "What to buy", &shoppingPart{S: s}),
		later("laying-day", "Laying day", &layingPart{S: s}),
		later("water-plan", "Water plan", &waterPlanPart{S: s}),
		later("season", "The season’s dates", &seasonPart{S: s}),
	}
}

// later is a section that the prerendered page only names.
func later(id, title string, part app.UI) app.UI {
	if app.IsClient {
		return part
	}
	return app.Section().ID(id).Body(heading2(title), helpText("Worked out as soon as the calculator runs."))
}
