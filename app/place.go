package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// placePart asks where the field is: a station by name or zip, the tablet's
// own position, or twelve minima and maxima of the grower's own.
type placePart struct {
	app.Compo
	S     *store
	wrong map[string]string
	told  string
}

func (p *placePart) OnMount(app.Context) { p.S.follow(p, onPlaces|onUnits|onExample, p.Update) }
func (p *placePart) OnDismount()         { p.S.leave(p) }

// placeBox is the box that a place is searched in.
const placeBox = "f-place"

func (p *placePart) Render() app.UI {
	return box("place",
		asked("field",
			app.Label().For(placeBox).Text("Find your place: town, station or zip code"),
			&textBox{S: p.S, ID: placeBox, Type: "search", Describe: "place-now"},
			p.results(),
			app.P().Class("help").ID("place-now").Text(p.now()),
		),
		button("place-here", "Use this device’s position").OnClick(p.askPosition),
		app.P().Class("error").Role("alert").Text(p.told),
		app.Details().Class("more").ID("own-normals").Body(
			summary("Type your own monthly temperatures"),
			helpText("Mean daily minimum and maximum of each month, in "+unit.KindTemperature.Symbol(p.S.system)+". From your weather service, or a neighbour’s long record."),
			asked("own",
				box("field",
					app.Label().For(normalsLatitude).Text("Latitude, degrees north (south is minus)"),
					p.cell(normalsLatitude, ""),
				),
				box("months", p.rows()...),
			),
			button("normals-use", "Use these temperatures").OnClick(p.useOwn),
		),
	)
}

func (p *placePart) now() string {
	pl := &p.S.c.Place
	switch {
	case p.S.example:
		return "Now: " + exampleName + ", with invented weather."
	case pl.Own:
		return "Now: your own monthly temperatures."
	case pl.StationName != "" && pl.StationAway > 0:
		return "Now: " + pl.StationName + ", " + unit.Of(pl.StationAway).In(p.S.system) + " away. Normals of 1981–2010."
	case pl.StationName != "":
		return "Now: " + pl.StationName + ". Normals of 1981–2010."
	case p.S.noPlace:
		return "The table of stations could not be loaded. Type your own temperatures below, or load the page again."
	case p.S.places == nil:
		return "The table of 7,501 stations is loading."
	}
	return "No place yet: choose one."
}

func (p *placePart) results() app.UI {
	query := p.S.typed[placeBox]
	if strings.TrimSpace(query) == "" {
		return app.Ul().Class("results").Hidden(true)
	}
	if p.S.places == nil {
		return app.Ul().Class("results").Body(item("The table of stations is still loading."))
	}
	found := p.S.places.Find(query, 8)
	if len(found) == 0 {
		return app.Ul().Class("results").Body(item("No station by that name. Try a town nearby, or only its first letters."))
	}
	list := make([]app.UI, 0, len(found)+1)
	if zip := strings.TrimSpace(query); len(zip) == 5 && zip[0] <= '9' && zip != found[0].Zip {
		list = append(list, item("No station has this zip code. These have the nearest ones:"))
	}
	for _, st := range found {
		list = append(list, app.Li().Body(app.Button().Type("button").Class("result").Text(stationWords(st, p.S.system)).
			OnClick(func(ctx app.Context, _ app.Event) {
				p.S.typed[placeBox] = ""
				p.S.choose(st)
				if el := app.Window().GetElementByID(placeBox); el.Truthy() {
					el.Call("focus")
				}
			}, st.ID)))
	}
	return app.Ul().Class("results").Body(list...)
}

func stationWords(st *normals.Station, system unit.System) string {
	words := st.Label()
	if st.Zip != "" {
		words += " " + st.Zip
	}
	return words + ", " + unit.Quantity{Kind: unit.KindHead, SI: float64(st.Elevation)}.In(system) + " high"
}

func (p *placePart) rows() []app.UI {
	rows := []app.UI{span("Month"), span("Minimum"), span("Maximum")}
	for m := range 12 {
		name := unit.MonthName(m + 1)
		rows = append(rows, span(name),
			p.cell(monthKey("min", m), name+" minimum"),
			p.cell(monthKey("max", m), name+" maximum"))
	}
	return rows
}

func (p *placePart) cell(id, label string) app.UI {
	return app.Div().Body(
		&textBox{S: p.S, ID: id, Type: "text", Label: label, Describe: id + "-error", Wrong: p.wrong[id] != ""},
		app.P().Class("error").ID(id+"-error").Role("alert").Text(p.wrong[id]),
	)
}

func (p *placePart) useOwn(ctx app.Context, _ app.Event) {
	p.wrong = p.S.ownNormals()
	if len(p.wrong) > 0 {
		p.told = strconv.Itoa(len(p.wrong)) + " of the temperatures cannot be used: see beside them. Nothing was changed."
		return
	}
	p.told = ""
}

// askPosition asks the device, which asks its owner. The answer stays here.
func (p *placePart) askPosition(ctx app.Context, _ app.Event) {
	geo := app.Window().Get("navigator").Get("geolocation")
	if !geo.Truthy() {
		p.told = "This device does not tell its position. Type the town instead."
		return
	}
	p.told = ""
	var found, failed app.Func
	release := func() {
		found.Release()
		failed.Release()
	}
	found = app.FuncOf(func(_ app.Value, args []app.Value) any {
		at := args[0].Get("coords")
		lat, lon := at.Get("latitude").Float(), at.Get("longitude").Float()
		ctx.Dispatch(func(app.Context) {
			release()
			if p.S.places == nil {
				p.told = "The table of stations is still loading. Try again in a moment."
				return
			}
			p.S.here(lat, lon)
			if !p.S.c.Place.HasNormals {
				p.told = "No station lies within 500 km. Type your own temperatures below."
			}
		})
		return nil
	})
	failed = app.FuncOf(func(app.Value, []app.Value) any {
		ctx.Dispatch(func(app.Context) {
			release()
			p.told = "The device did not give its position. Type the town instead."
		})
		return nil
	})
	geo.Call("getCurrentPosition", found, failed, map[string]any{"timeout": 20000, "maximumAge": 600000})
}
