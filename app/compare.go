package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// comparePart sets two to four films, planting days or fields side by side, what
// differs first.
type comparePart struct {
	app.Compo
	S     *store
	kind  int
	films [mostSides]int // in the film table; the last two may be open (−1)
	days  [mostSides]string
	farms [mostSides]int   // in what others gives; the first side is the field in the form
	other []casefile.Field // the fields on this device, then the pack
	read  string           // what the device's fields were read from, once their stations were there
	set   bool
	heads []string
	rows  []plan.CompareRow
	turn  int
}

const (
	mostSides  = 4
	ofFilms    = 0
	ofDays     = 1
	ofFields   = 2
	laterByDay = 30
)

var compareKinds = [...]string{"films", "planting days", "fields"}

func (p *comparePart) OnMount(ctx app.Context) {
	p.S.follow(p, onAdvice|onUnits, func() { p.work(); p.Update() })
	ctx.Defer(func(app.Context) { p.work(); p.Update() }) // the page itself is mounted after its parts
}
func (p *comparePart) OnDismount() { p.S.leave(p) }

// usual chooses what is compared before anybody chose: the film that won and the
// next, the wanted day and a month later, the field and the first of the pack.
func (p *comparePart) usual() {
	a := p.S.advice
	p.films = [mostSides]int{int(a.Film.Ranked[0].Option), int(a.Film.Ranked[1].Option), -1, -1}
	p.days = [mostSides]string{a.Facts.Plant.String(), a.Facts.Plant.Plus(laterByDay).String()}
	p.farms = [mostSides]int{-1, 0, -1, -1}
}

// others lists the fields that can stand beside the one in the form: those kept
// on this device, and the pack. They are read anew only where they changed.
func (p *comparePart) others() {
	text := deviceText(fieldsKey)
	if p.other != nil && text == p.read {
		return
	}
	p.other, p.read = nil, ""
	if text != "" {
		var err error
		if p.other, err = casefile.DecodeFields([]byte(text), p.S.places); err == nil {
			p.read = text
		}
	}
	for i := range pack.Lands {
		p.other = append(p.other, casefile.Field{Name: pack.Lands[i].Title, Case: pack.Lands[i].Case()})
	}
}

// sides lists the cases to set side by side.
func (p *comparePart) sides() (heads []string, cases []field.Case) {
	add := func(head string, c field.Case) { heads, cases = append(heads, head), append(cases, c) }
	c := p.S.c
	if p.kind == ofFields {
		add("Your field", c)
	}
	for i := range mostSides {
		switch {
		case p.kind == ofFilms && p.films[i] >= 0:
			film := table.FilmID(p.films[i])
			add(sentence(film.Name()), plan.WithFilm(c, film))
		case p.kind == ofDays && p.days[i] != "":
			if day, err := unit.ParseDate(p.days[i]); err == nil {
				at := c
				at.PlantOn = unit.Known(day)
				add(day.In(p.S.system), at)
			}
		case p.kind == ofFields && p.farms[i] >= 0 && p.farms[i] < len(p.other):
			add(p.other[p.farms[i]].Name, p.other[p.farms[i]].Case)
		}
	}
	return heads, cases
}

// work asks for each side; a field elsewhere needs its own year of soil warmth,
// which is worked out in slices.
func (p *comparePart) work() {
	s := p.S
	if s.slices == nil || s.advice == nil || s.stale || s.digging {
		return
	}
	if !p.set {
		p.usual()
	}
	if p.kind == ofFields {
		p.others()
	}
	p.turn++
	turn := p.turn
	heads, cases := p.sides()
	var list []*plan.Advice
	var dig *facts.SoilYearWork
	s.slices(p, func() bool {
		switch {
		case p.turn != turn || len(list) == len(cases):
			return true
		case dig != nil && !slice(func() bool { return dig.Step(daysAStep) }):
			return false
		}
		ground := s.ground
		if c := cases[len(list)]; dig != nil {
			ground, dig = dig.Year(), nil
		} else if facts.KeyOf(c) != s.ground.Key {
			dig, _ = facts.NewSoilYearWork(c)
			return dig == nil
		}
		a, err := rules.AdviseOn(ground, cases[len(list)])
		if err != nil {
			return true
		}
		list = append(list, &a)
		return false
	}, func() {
		if p.turn == turn && len(list) == len(cases) {
			p.heads, p.rows = heads, plan.Compare(list)
			p.Update()
		}
	})
}

func (p *comparePart) Render() app.UI {
	kinds := make([]app.UI, len(compareKinds))
	for i, name := range compareKinds {
		kinds[i] = app.Button().Type("button").Class("unit").ID("compare-"+strconv.Itoa(i)).Text(name).Aria("pressed", strconv.FormatBool(p.kind == i)).
			OnClick(func(app.Context, app.Event) { p.kind = i; p.work() }, i)
	}
	choices := make([]app.UI, 0, mostSides)
	if p.S.advice != nil && p.S.slices != nil {
		for i := range mostSides {
			choices = append(choices, p.choice(i))
		}
	}
	return app.Section().Class("sheet compare").ID("compare").Body(
		heading2("Side by side"),
		app.FieldSet().Class("units").Body(append([]app.UI{app.Legend().Text("Compare")}, kinds...)...),
		box("fields", choices...),
		app.Raw(p.table()))
}

// choice is the control of one side.
func (p *comparePart) choice(i int) app.UI {
	id, label := "side-"+strconv.Itoa(i), "Side "+strconv.Itoa(i+1)
	if p.kind == ofDays {
		return asked("field", app.Label().For(id).Text(label), app.Input().ID(id).Type("date").Value(p.days[i]).OnChange(func(ctx app.Context, _ app.Event) {
			p.days[i], p.set = ctx.JSSrc().Get("value").String(), true
			p.work()
		}, id))
	}
	at, names := &p.films, []string{"none"}
	if p.kind == ofFields {
		at = &p.farms
		if i == 0 {
			names[0] = "your field"
		} else {
			for k := range p.other {
				names = append(names, p.other[k].Name)
			}
		}
	} else {
		for k := range table.FilmCount {
			names = append(names, table.FilmID(k).Name())
		}
	}
	return picker(id, label, names, at[i]+1, func(n int) {
		at[i], p.set = n-1, true
		p.work()
	}, p.kind)
}

// table shows the rows: first what differs, then what is alike.
func (p *comparePart) table() string {
	if len(p.rows) == 0 {
		return `<p class="waiting">Working it out …</p>`
	}
	var rows [][]string
	for i := range p.rows {
		row := &p.rows[i]
		if i == 0 || row.Differs != p.rows[i-1].Differs {
			group := "Alike"
			if row.Differs {
				group = "Different"
			}
			rows = append(rows, []string{group})
		}
		line := []string{row.What}
		for _, cell := range row.Cells {
			line = append(line, cell.In(p.S.system))
		}
		rows = append(rows, line)
	}
	return tableText("compare-table", "Side by side", append([]string{"Of"}, p.heads...), rows)
}
