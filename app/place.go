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
	Short bool // within the sentence: own temperatures stand on the page of details
	wrong map[string]string
	told  string
	at    int // the result that the arrow keys stand on, from 1; 0 is none
}

func (p *placePart) OnMount(app.Context) {
	p.S.follow(p, onPlaces|onUnits|onExample, func() {
		p.at = 0
		p.Update()
	})
}
func (p *placePart) OnDismount() { p.S.leave(p) }

// placeBox is the box that a place is searched in.
const placeBox = "f-place"

func (p *placePart) Render() app.UI {
	found, says := p.found()
	active := ""
	if p.at > len(found) {
		p.at = 0
	}
	if p.at > 0 {
		active = resultID(p.at)
	}
	return box("place",
		asked("field",
			app.Label().For(placeBox).Text("Find your place: town, station, zip code, or latitude and longitude"),
			app.Div().OnKeyDown(p.key).Body(&textBox{S: p.S, ID: placeBox, Type: "search", Describe: "place-now", List: "place-list", Active: active, Open: len(found) > 0}),
			para("results-say", says),
			p.results(found),
			app.P().Class("help").ID("place-now").Text(p.now()),
		),
		button("place-here", "Use this device’s position").OnClick(p.askPosition),
		app.P().Class("error").Role("alert").Text(p.told),
		only(!p.Short, p.own),
	)
}

func (p *placePart) own() app.UI {
	return app.Details().Class("more").ID("own-normals").Body(
		summary("Type your own monthly temperatures"),
		helpText("Mean daily minimum and maximum of each month, in "+unit.KindTemperature.Symbol(p.S.system)+". From your weather service, or a neighbor’s long record."),
		asked("own",
			box("field",
				app.Label().For(normalsLatitude).Text("Latitude, degrees north (south is minus)"),
				p.cell(normalsLatitude, ""),
			),
			box("months", p.rows()...),
		),
		button("normals-use", "Use these temperatures").OnClick(p.useOwn),
	)
}

func (p *placePart) now() string {
	pl := &p.S.c.Place
	switch {
	case p.S.example || p.S.borrowed[placeName] && pl.Own:
		return "Now: " + p.S.farm + ", an invented farm, with invented weather. Choose your own place."
	case pl.Own:
		return "Now: your own monthly temperatures."
	case pl.StationName != "":
		now := "Now: " + pl.StationName
		if pl.StationAway > 0 {
			now += ", " + unit.Of(unit.Distance(pl.StationAway)).In(p.S.system) + " away"
		}
		if height, where := pl.StationFromField(); height != 0 {
			now += ", " + unit.Quantity{Kind: unit.KindHead, SI: float64(height)}.In(p.S.system) + " " + where
		}
		switch {
		case pl.IsOlder():
			return now + ". Normals of 1981–2010."
		case pl.Estimated:
			return now + ". Normals of 1991–2020, estimated from stations around it."
		}
		return now + ". Normals of 1991–2020."
	case p.S.noPlace:
		return "The table of stations could not be loaded. Type your own temperatures under “Details”, or load the page again."
	case p.S.places == nil:
		return "The table of 7,501 stations is loading."
	}
	return "No place yet: choose one."
}

// zipFirst and zipLast bound the zip codes of the United States (from memory).
const zipFirst, zipLast = 501, 99950

// hit is one place that was found, and how it is taken.
type hit struct {
	words string
	take  func()
}

// mostFound is how many places are listed.
const mostFound = 8

// found are the places that match what stands in the box, and what is to be said of
// them: towns, zips and coordinates lead to the nearest station, a station is its own.
func (p *placePart) found() (found []hit, says string) {
	query := strings.TrimSpace(p.S.typed[placeBox])
	if query == "" {
		return nil, ""
	}
	if p.S.places == nil {
		return nil, "The table of stations is still loading."
	}
	zip, err := strconv.Atoi(query)
	isZip := err == nil && len(query) == 5
	if isZip && (zip < zipFirst || zip > zipLast) {
		return nil, query + " is no zip code: they run from 00501 to 99950. Check the digits, or type the town."
	}
	loading := p.S.askWorld(nil)
	spots := p.S.spots.Find(query, mostFound/2)
	if spot, ok := normals.Coordinates(query); ok {
		spots = []normals.Spot{spot}
	}
	stations := p.S.places.Find(query, mostFound)
	for _, spot := range spots {
		found = append(found, hit{spot.Name, func() { p.here(float64(spot.Latitude), float64(spot.Longitude)) }})
	}
	for _, st := range stations[:min(len(stations), mostFound-len(found))] {
		found = append(found, hit{stationWords(st, p.S.system), func() { p.S.choose(st) }})
	}
	switch {
	case len(found) == 0 && loading:
		says = "Stations and towns of other countries are loading."
	case len(found) == 0:
		says = "Nothing by that name. Try a town nearby, only its first letters, or latitude and longitude, such as 42.45, -76.46."
	}
	return found, says
}

func resultID(at int) string { return "place-" + strconv.Itoa(at) }

// results are a list to choose from by a tap, or by the arrow keys and Enter while the
// focus stays in the box (WAI-ARIA Authoring Practices, combobox).
func (p *placePart) results(found []hit) app.UI {
	list := make([]app.UI, 0, len(found))
	for i, h := range found {
		list = append(list, app.Li().ID(resultID(i+1)).Role("option").Class("result").Aria("selected", strconv.FormatBool(i+1 == p.at)).Text(h.words).
			OnClick(func(app.Context, app.Event) { p.choose(h) }, h.words))
	}
	return app.Ul().Class("results").ID("place-list").Role("listbox").Aria("label", "Places").Hidden(len(found) == 0).Body(list...)
}

func (p *placePart) choose(h hit) {
	p.S.typed[placeBox] = ""
	p.S.finding = false
	h.take()
	for _, id := range [...]string{"place-open", placeBox} {
		if el := app.Window().GetElementByID(id); el.Truthy() {
			el.Call("focus")
			break
		}
	}
}

// here takes a position and says where no station is near.
func (p *placePart) here(latitude, longitude float64) {
	if p.S.askWorld(func() { p.here(latitude, longitude) }) {
		return
	}
	p.told = ""
	if p.S.here(latitude, longitude); !p.S.c.Place.HasNormals {
		p.told = "No station lies within 500 km. Type your own temperatures below."
	}
	p.S.tell(onPlaces)
}

// key moves along the results, and takes one.
func (p *placePart) key(ctx app.Context, e app.Event) {
	found, _ := p.found()
	switch e.Get("key").String() {
	case "ArrowDown":
		p.at = min(p.at+1, len(found))
	case "ArrowUp":
		p.at = max(p.at-1, 0)
	case "Enter":
		if len(found) > 0 {
			p.choose(found[max(p.at-1, 0)])
		}
	case "Escape":
		p.S.typed[placeBox], p.S.finding = "", false
		p.S.tell(onPlaces)
	default:
		ctx.PreventUpdate()
		return
	}
	e.PreventDefault()
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
			p.here(lat, lon)
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
