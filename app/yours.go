package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/unit"
)

// Values of the example are not the grower's. From the first change on, each that was
// not changed is marked as borrowed until it is confirmed, or changed: on the page, on
// paper, and in what the device keeps.

// placeName stands for the whole of the place among the borrowed.
const placeName = "place"

// borrowedAs is the name under which an input is borrowed: the place goes as one.
func borrowedAs(name string) string {
	if strings.HasPrefix(name, "place.") || strings.HasPrefix(name, "climate.") {
		return placeName
	}
	return name
}

// borrow marks all values that stand in the case.
func (s *store) borrow() {
	s.borrowed = map[string]bool{}
	for i := range field.Inputs {
		in := &field.Inputs[i]
		if _, given := in.Get(&s.c); given {
			s.borrowed[borrowedAs(in.Name)] = true
		}
	}
	s.borrowed[placeName] = true
}

// mine confirms borrowed values: those named, or all.
func (s *store) mine(names ...string) {
	for _, name := range names {
		delete(s.borrowed, name)
	}
	if len(names) == 0 {
		s.borrowed = map[string]bool{}
	}
	s.save()
	s.tell(onExample | onForm | onAdvice)
}

// startOwn empties the field: nothing in it is anybody else's.
func (s *store) startOwn() {
	s.touch("a field of your own, begun empty")
	s.c = field.Case{}
	s.typed, s.wrong, s.ticks = map[string]string{}, map[string]field.Error{}, map[string]bool{}
	s.borrowed = map[string]bool{}
	s.own, s.example = true, false
	s.advice, s.ground, s.study, s.studied, s.digging = nil, nil, nil, nil, false
	s.since = nil
	s.before = nil
	s.note, s.noteBad = "", false
	s.dropLink()
	s.save()
	s.tell(onStart | onAdvice | onForm | onPlaces | onUnits | onExample)
}

// whole tells whether an empty field has been told enough to be answered.
func (s *store) enough() bool {
	return s.c.Crop != "" && s.c.PlantOn.Given && s.c.Place.HasNormals && s.c.Soil.Texture != ""
}

// borrowedLabels names what is borrowed, in the order of the form.
func (s *store) borrowedLabels() (list []string) {
	if s.borrowed[placeName] {
		list = append(list, "place")
	}
	for i := range field.Inputs {
		if s.borrowed[field.Inputs[i].Name] {
			list = append(list, lower(field.Inputs[i].Label))
		}
	}
	return list
}

// yoursPart stands in each view while anything in it may be the example's: what it is
// of, and that it can be confirmed or left.
type yoursPart struct {
	app.Compo
	S *store
}

func (p *yoursPart) OnMount(app.Context) { p.S.follow(p, onExample|onForm, p.Update) }
func (p *yoursPart) OnDismount()         { p.S.leave(p) }

func (p *yoursPart) Render() app.UI {
	s := p.S
	labels := s.borrowedLabels()
	words := "A worked example: " + s.farm + ", an invented farm. Change anything."
	switch {
	case s.example:
	case len(labels) == 1:
		words = "From the example, yours? " + sentence(labels[0]) + "."
	case len(labels) > 4:
		words = "From the example, yours? " + sentence(strings.Join(labels[:4], ", ")) + " and " + unit.Of(len(labels)-4).In(s.system) + " more."
	default:
		words = "From the example, yours? " + sentence(strings.Join(labels, ", ")) + "."
	}
	return app.Section().ID("yours").Class("yours").Aria("label", "Whose values these are").Hidden(!s.example && len(labels) == 0).Body(
		para("example", words),
		box("buttons",
			button("yours-all", "All of it is mine").Hidden(s.example).OnClick(func(app.Context, app.Event) { s.mine() }),
			app.A().Class("act").Href(rooted("/details")).Text("See each").Hidden(s.example),
			press("start-own", "Start with my field", s.startOwn),
		),
	)
}
