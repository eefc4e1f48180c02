package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/unit"
)

// entry is one control of the form, made from its input row: a label, the
// control, its help, and its error beside it.
type entry struct {
	app.Compo
	S      *store
	Name   string
	Inline bool   // a blank of the sentence: the label is for screen readers
	As     string // another label, in short
	ctx    app.Context
	hand   hand
	gone   bool
	face   face
}

// face is what of an entry may change.
type face struct {
	text, wrong   string
	system        unit.System
	borrowed, own bool
}

func (f *entry) now(in *field.Input) face {
	s := f.S
	return face{s.shown(in), f.error(), s.system, s.borrowed[borrowedAs(f.Name)], s.own}
}

func (f *entry) OnMount(ctx app.Context) {
	f.ctx = ctx
	f.S.follow(f, onForm|onUnits|onExample, func() {
		if f.face != f.now(field.InputByName(f.Name)) { // dozens stand in the form, and one has changed
			f.Update()
		}
		ctx.Defer(func(app.Context) { f.push() })
	})
}

func (f *entry) OnDismount() {
	f.gone = true
	f.S.leave(f)
}

// push writes the shown text into the control itself.
func (f *entry) push() {
	if !f.gone {
		f.hand.put(f.id(), f.S.shown(field.InputByName(f.Name)))
	}
}

func (f *entry) id() string { return fieldID(f.Name) }

// idMarks turns a field's name into what an id may hold without escapes in a selector.
var idMarks = strings.NewReplacer(".", "-", "_", "-")

func fieldID(name string) string { return "f-" + idMarks.Replace(name) }

// Render always makes the same elements with the same attributes: the
// framework replaces an element whose attributes come and go, and the focus
// would be lost while somebody types.
func (f *entry) Render() app.UI {
	in := field.InputByName(f.Name)
	f.face = f.now(in)
	bad := f.face.wrong != ""
	if f.hand.of != "" && f.hand.of != f.Name { // a list moved on
		f.ctx.Defer(func(app.Context) { f.push() })
	}
	label := app.Label().For(f.id()).Text(f.label(in))
	// A value that came with the example says so until it is confirmed or changed.
	class, whose, short, name := "", "", "", borrowedAs(f.Name)
	if f.face.borrowed {
		class, whose, short = " borrowed", "from the example, yours?", "yours?"
	}
	if f.Inline {
		return app.Span().Class("blank"+class).Body(label.Class("for-readers"), f.control(in, bad),
			app.Small().Class("in-words").Text(f.inWords(in)),
			app.Small().Class("whose-it-is").Text(short),
			app.Span().Class("error").ID(f.id()+"-error").Text(f.face.wrong))
	}
	help := in.Help
	if f.As != "" {
		help = ""
	}
	return box("field"+class, label, f.control(in, bad),
		app.Small().Class("whose-it-is").Text(whose),
		app.Button().Type("button").Class("plain mine").Text("Yes, mine").Aria("label", "Yes, mine: "+in.Label).Hidden(whose == "").OnClick(func(app.Context, app.Event) { f.S.mine(name) }, name),
		app.P().Class("help").ID(f.id()+"-help").Text(help),
		app.P().Class("error").ID(f.id()+"-error").Text(f.face.wrong))
}

// inWords says a date as people do, beside a control that writes it as the browser does.
func (f *entry) inWords(in *field.Input) string {
	if v, given := in.Get(&f.S.c); given && in.Form == field.FormDate {
		return dayOfYear(unit.Date(v.Number), f.S.system)
	}
	return ""
}

// error is what stands beside the field. It is not an alert, since it comes and
// goes with each key of a half-typed figure: notesPart has it read out later.
func (f *entry) error() string {
	if wrong, bad := f.S.wrong[f.Name]; bad {
		return errorText(&wrong)
	}
	return ""
}

func (f *entry) label(in *field.Input) string {
	words := in.Label
	if f.As != "" {
		words = f.As
	}
	if symbol := in.Kind.Symbol(f.S.system); symbol != "" && (in.Form == field.FormNumber || in.Form == field.FormWhole) {
		return words + " (" + symbol + ")"
	}
	return words
}

func (f *entry) control(in *field.Input, bad bool) app.UI {
	shown := f.face.text
	describe := f.id() + "-help " + f.id() + "-error"
	if f.Inline {
		describe = f.id() + "-error"
	}
	invalid := strconv.FormatBool(bad)
	switch in.Form {
	case field.FormChoice, field.FormYesNo:
		options := in.Options
		if in.Form == field.FormYesNo {
			options = []field.Choosable{{ID: "yes", Label: "yes"}, {ID: "no", Label: "no"}}
		}
		list := make([]app.UI, 0, len(options)+1)
		if in.Name != "crop" || f.S.own {
			list = append(list, app.Option().Value("").Text("not known").Selected(shown == ""))
		}
		for _, o := range options {
			list = append(list, app.Option().Value(o.ID).Text(o.Label).Selected(o.ID == shown))
		}
		return app.Select().ID(f.id()).Name(in.Name).Aria("describedby", describe).Aria("invalid", invalid).Body(list...).OnChange(f.typed)
	case field.FormDate:
		return app.Input().ID(f.id()).Name(in.Name).Type("date").Value(f.hand.start(in.Name, shown)).Aria("describedby", describe).Aria("invalid", invalid).OnChange(f.typed)
	}
	mode := "text"
	if in.Form == field.FormNumber || in.Form == field.FormWhole {
		mode = "decimal"
		if in.Low < 0 {
			mode = "text"
		}
	}
	return app.Input().ID(f.id()).Name(in.Name).Type("text").Attr("inputmode", mode).AutoComplete(false).Value(f.hand.start(in.Name, shown)).
		Aria("describedby", describe).Aria("invalid", invalid).OnInput(f.typed)
}

func (f *entry) typed(ctx app.Context, _ app.Event) {
	ctx.PreventUpdate() // the framework would compare the whole page around the field
	f.S.set(field.InputByName(f.Name), f.hand.heard(ctx.JSSrc()))
	f.Update()
}

// errorText is the error in one or two sentences.
func errorText(e *field.Error) string {
	value := e.Value
	if value == "missing" {
		return e.Mend
	}
	return "“" + strings.Trim(value, `"`) + "” cannot be used. Allowed: " + e.Allowed + ". " + e.Mend
}

// unitSwitch changes what is shown, never the case.
type unitSwitch struct {
	app.Compo
	S *store
}

func (u *unitSwitch) OnMount(app.Context) { u.S.follow(u, onUnits, u.Update) }
func (u *unitSwitch) OnDismount()         { u.S.leave(u) }

func (u *unitSwitch) Render() app.UI {
	return app.FieldSet().Class("units").Body(
		app.Legend().Text("Units"),
		u.button("US", "inches, °F, gallons", unit.US),
		u.button("metric", "cm, °C, liters", unit.Metric),
	)
}

func (u *unitSwitch) button(label, title string, system unit.System) app.UI {
	return app.Button().Type("button").Class("unit").ID("units-"+label).Title(title).Text(label).
		Aria("pressed", strconv.FormatBool(u.S.system == system)).
		OnClick(func(app.Context, app.Event) { u.S.setUnits(system) }, label)
}
