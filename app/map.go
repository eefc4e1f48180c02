package app

import (
	"strconv"
	"time"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// mapPart is the map of the decision: a year of planting days across, a second
// input up, and in each cell the film. Arrow keys or a finger move over it.
type mapPart struct {
	app.Compo
	S      *store
	second int // of search.MapInputs
	of     *plan.Advice
	m      *search.FilmMap
	took   time.Duration // the engine's share
	waits  string        // what is being done, where it takes long
	row    int
	day    int
}

func (p *mapPart) OnMount(ctx app.Context) {
	p.S.follow(p, onAdvice|onUnits, func() { p.work(); p.Update() })
	ctx.Defer(func(app.Context) { p.work(); p.Update() }) // the page itself is mounted after its parts
}
func (p *mapPart) OnDismount() { p.S.leave(p) }

// work fills the map anew in slices, where the advice is another one.
func (p *mapPart) work() {
	s := p.S
	if s.slices == nil || s.advice == nil || s.stale || s.digging || p.of == s.advice {
		return
	}
	of := s.advice
	p.of, p.took, p.waits = of, 0, ""
	work, ok := search.NewMap(s.ground, s.c, search.MapInputs[p.second])
	if !ok {
		return
	}
	row := -1
	s.slices(p, func() bool {
		if p.of != of {
			return true
		}
		if work.Deep() && work.Row() != row { // each row needs a year of soil warmth
			row = work.Row()
			p.waits = "This changes the soil’s warmth, which takes a while. Working out row " + strconv.Itoa(row+1) + " of " + strconv.Itoa(len(work.Map().Values)) + " …"
			p.Update()
		}
		began := time.Now()
		done := slice(func() bool { return work.Step(4) })
		p.took += time.Since(began)
		return done
	}, func() {
		if p.of == of {
			p.m, p.waits = work.Map(), ""
			p.row, p.day = p.m.Value, p.m.Day
			p.Update()
		}
	})
}

func filmWord(film table.FilmID) string {
	if film == table.NoFilm {
		return "do not lay"
	}
	return film.Name()
}

func (p *mapPart) Render() app.UI {
	names := make([]string, len(search.MapInputs))
	for i, name := range search.MapInputs {
		names[i] = field.InputByName(name).Label
	}
	section := app.Section().Class("sheet map").ID("map")
	head, second := heading2("A map of the decision"), picker("map-second", "Planting day across, and up:", names, p.second, p.choose)
	waits := p.waits
	if p.m == nil && waits == "" {
		waits = "Trying a year of planting days …"
	}
	waiting := para("waiting", waits)
	if p.m == nil {
		return section.Body(head, second, waiting)
	}
	return section.Body(head, second, waiting,
		app.Div().Class("map-plot").ID("map-plot").TabIndex(0).Attr("role", "application").Aria("label", "Map of the film by planting day and "+lower(p.m.Input.Label)+". Arrow keys move, Enter goes there.").Aria("describedby", "map-says").
			DataSet("ms", strconv.FormatInt(p.took.Milliseconds(), 10)).OnKeyDown(p.key).OnClick(p.click).Body(app.Raw(p.svg())),
		app.P().ID("map-says").Aria("live", "polite").Text(p.says()),
		box("buttons", press("map-go", "Go there", p.goThere)),
		app.Raw(p.legend()),
		app.Details().ID("map-table").Body(summary("The map as a table"), app.Raw(p.table())),
	)
}

func (p *mapPart) choose(second int) {
	p.second, p.of, p.m = second, nil, nil
	p.work()
}

func (p *mapPart) value(row int) string { return said(p.m.Input, p.m.Values[row], p.S.system) }

// says tells the cell that the cursor is on.
func (p *mapPart) says() string {
	text := dayOfYear(p.m.Days[p.day], p.S.system) + ", " + lower(p.m.Input.Label) + " " + p.value(p.row) + ": " + filmWord(p.m.FilmAt(p.row, p.day))
	if p.m.Tied[p.row][p.day] {
		text += ", a close call"
	}
	if p.row == p.m.Value && p.day == p.m.Day {
		text += ". This is your field"
	}
	return text + "."
}

// legend names the films that stand on the map.
func (p *mapPart) legend() string {
	seen := map[table.FilmID]bool{}
	w := &svg{}
	w.raw(`<div><ul class="legend">`)
	for row := range p.m.Cells {
		for day := range p.m.Days {
			if film := p.m.FilmAt(row, day); !seen[film] {
				seen[film] = true
				w.raw(`<li>`, swatch(filmKey(film)), ` `, escape(filmWord(film)), `</li>`)
			}
		}
	}
	w.raw(`</ul><p class="help">Outlined: your field. Each row stands for the value above it; a week a cell.</p></div>`)
	return w.b.String()
}

func (p *mapPart) key(ctx app.Context, e app.Event) {
	right, down := 0, 0
	switch e.Get("key").String() {
	case "ArrowLeft":
		right = -1
	case "ArrowRight":
		right = 1
	case "ArrowUp":
		down = -1
	case "ArrowDown":
		down = 1
	case "Home":
		right = -p.day
	case "End":
		right = len(p.m.Days)
	case "Enter":
		p.goThere()
		return
	default:
		ctx.PreventUpdate()
		return
	}
	e.PreventDefault()
	p.day = min(max(p.day+right, 0), len(p.m.Days)-1)
	p.row = min(max(p.row+down, 0), len(p.m.Values)-1)
}

func (p *mapPart) click(ctx app.Context, e app.Event) {
	box := ctx.JSSrc().Call("getBoundingClientRect")
	x := (e.Get("clientX").Float() - box.Get("left").Float()) / box.Get("width").Float()
	y := e.Get("clientY").Float() - box.Get("top").Float() - mapHead
	p.day = min(max(int(x*float64(len(p.m.Days))), 0), len(p.m.Days)-1)
	p.row = min(max(int(y/mapRow), 0), len(p.m.Values)-1)
}

// goThere sets the case to the cell.
func (p *mapPart) goThere() {
	p.S.c = p.m.Input.Turn(p.S.c, p.m.Values[p.row])
	if p.m.Input.Name == "crop" {
		p.S.usualStart()
	}
	delete(p.S.typed, p.m.Input.Name)
	delete(p.S.wrong, p.m.Input.Name)
	p.S.goTo(&search.TurningPoint{Input: field.InputByName("plant_on"), At: field.Value{Number: float64(p.m.Days[p.day])}})
}

// The plot is as wide as the page and its rows have a fixed height, so that its
// words keep their size.
const (
	mapHead = 28
	mapRow  = 56
	mapWord = 24 // of a row, for its value
)

func (p *mapPart) svg() string {
	w := &svg{}
	m := p.m
	across := func(day int) string { return percent(float64(day) / float64(len(m.Days))) }
	w.open("svg", "class", "map-svg", "height", strconv.Itoa(mapHead+mapRow*len(m.Values)+4), "aria-hidden", "true", "focusable", "false")
	_, last, _ := m.Days[0].Civil()
	for day, d := range m.Days {
		if _, month, _ := d.Civil(); month != last {
			w.raw(`<text class="m-month" x="`, across(day), `" y="20" data-of="`, unit.MonthName(month), `">`, unit.MonthName(month)[:1], `</text><line class="m-tick" x1="`, across(day), `" x2="`, across(day), `" y1="24" y2="100%"/>`)
			last = month
		}
	}
	box := func(class string, row, from, to int) {
		w.el("rect", "class", class, "x", across(from), "y", strconv.Itoa(mapHead+mapRow*row+mapWord), "width", across(to-from), "height", strconv.Itoa(mapRow-mapWord-4))
	}
	for row := range m.Values {
		w.raw(`<text class="m-value" x="0" y="`, strconv.Itoa(mapHead+mapRow*row+mapWord-6), `">`, escape(p.value(row)), `</text>`)
		for from := 0; from < len(m.Days); {
			to := from + 1
			for to < len(m.Days) && m.Cells[row][to] == m.Cells[row][from] {
				to++
			}
			box("m-film m-"+filmKey(m.FilmAt(row, from)), row, from, to)
			from = to
		}
	}
	box("m-halo", m.Value, m.Day, m.Day+1)
	box("m-own", m.Value, m.Day, m.Day+1)
	box("m-cursor", p.row, p.day, p.day+1)
	w.close("svg")
	return w.b.String()
}

// table is the same in words: a week a line.
func (p *mapPart) table() string {
	heads, rows := []string{"Week of"}, make([][]string, len(p.m.Days))
	for row := range p.m.Values {
		heads = append(heads, p.value(row))
	}
	for day, d := range p.m.Days {
		rows[day] = []string{dayOfYear(d, p.S.system)}
		for row := range p.m.Values {
			rows[day] = append(rows[day], filmWord(p.m.FilmAt(row, day)))
		}
	}
	return tableText("map-cells", "Film by planting day and "+lower(p.m.Input.Label), heads, rows)
}
