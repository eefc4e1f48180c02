package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
)

// fieldsKey is where the device keeps the grower's named fields, as the same
// file that "Save all fields" writes; unreadKey, what it kept and cannot be read.
const (
	fieldsKey = "film-furrow/fields"
	unreadKey = "film-furrow/unread"
)

// fieldsPart keeps several named fields on one device, and carries them all as
// one file. Nothing is lost on a bad file: all or nothing.
type fieldsPart struct {
	app.Compo
	S      *store
	fields []casefile.Field
	state  listState
	told   string
	wrong  []string
}

func (p *fieldsPart) OnMount(app.Context) {
	read := func() {
		p.read()
		p.Update()
	}
	p.S.follow(p, onForm|onPlaces|onUnits, read)
	read()
}
func (p *fieldsPart) OnDismount() { p.S.leave(p) }

// listState says whether the device's list can be used.
type listState uint8

const (
	listGood    listState = iota
	listLoading           // its stations have not come yet
	listDamaged           // it cannot be read; it is left as it is
)

// read reads the device's list, once its stations are there.
func (p *fieldsPart) read() {
	text := deviceText(fieldsKey)
	p.fields, p.state = nil, listGood
	if text == "" {
		return
	}
	fields, err := casefile.DecodeFields([]byte(text), p.S.places)
	switch {
	case err == nil:
		p.fields = fields
	case p.S.places == nil && !p.S.noPlace || p.S.askWorld(nil):
		p.state = listLoading
	default:
		p.state = listDamaged
	}
}

// write puts a list on the device in place of the old one.
func (p *fieldsPart) write(fields []casefile.Field) bool {
	text := ""
	if len(fields) > 0 {
		text = string(casefile.EncodeFields(fields))
	}
	if !keepOnDevice(fieldsKey, text) {
		return false
	}
	p.fields = fields
	return true
}

// ready reads the list anew, which another tab may have changed, and says why it
// cannot be changed, where it cannot.
func (p *fieldsPart) ready() bool {
	p.read()
	switch p.state {
	case listLoading:
		p.say("The fields on this device are still being read. Try again in a moment.")
	case listDamaged:
		p.say("The list on this device cannot be read, so nothing was changed. Save what cannot be read as a file first.")
	}
	return p.state == listGood
}

// sound says what to mend, where the form holds no whole field.
func (p *fieldsPart) sound() bool {
	if len(p.S.wrong) > 0 || len(field.Check(&p.S.c)) > 0 {
		p.say("Correct what is marked in the form first.")
		return false
	}
	return true
}

// nameBox is the box for a field's name.
const nameBox = "field-name"

func (p *fieldsPart) Render() app.UI {
	rows := make([]app.UI, len(p.fields))
	for i := range p.fields {
		f := &p.fields[i]
		rows[i] = app.Li().Body(
			span(f.Name),
			app.Button().Type("button").Class("go").Text("Open it").Aria("label", "Open it: "+f.Name).OnClick(func(app.Context, app.Event) { p.open(f.Name) }, f.Name),
			app.Button().Type("button").Class("go").Text("Remove it").Aria("label", "Remove it: "+f.Name).OnClick(func(app.Context, app.Event) { p.remove(f.Name) }, f.Name))
	}
	faults := make([]app.UI, len(p.wrong))
	for i, w := range p.wrong {
		faults[i] = item(w)
	}
	unread := p.unread()
	state := ""
	if unread != "" {
		state = "Something that this device keeps for the page cannot be read. It is left as it is; save it as a file before you go on."
	}
	return app.Section().ID("fields").Class("share").Body(
		app.H1().Text("Your fields"),
		app.P().Class("error").Role("alert").Text(state),
		button("fields-unread", "Save what cannot be read").Hidden(unread == "").OnClick(func(app.Context, app.Event) {
			saveFile("film-and-furrow-unread.txt", "text/plain", p.unread())
		}),
		app.Ul().Class("turns").Body(rows...),
		asked("field",
			app.Label().For(nameBox).Text("Name of the field in hand"),
			&textBox{S: p.S, ID: nameBox, Type: "search", Describe: "fields-told"}),
		box("buttons",
			button("field-keep", "Keep it under this name").OnClick(p.keep),
			button("fields-save", "Save all fields as a file").OnClick(p.save)),
		asked("field",
			app.Label().For("fields-file").Text("Open a file of fields"),
			app.Input().ID("fields-file").Type("file").Accept(".json,application/json").OnChange(p.load)),
		app.P().Class("help").Role("status").ID("fields-told").Text(p.told),
		app.Ul().Class("faults error").Body(faults...),
	)
}

// unread is what the device keeps for us and cannot be read.
func (p *fieldsPart) unread() string {
	if !app.IsClient {
		return ""
	}
	if p.state == listDamaged {
		return deviceText(fieldsKey)
	}
	return deviceText(unreadKey)
}

func (p *fieldsPart) say(words string, wrong ...string) { p.told, p.wrong = words, wrong }

func (p *fieldsPart) keep(app.Context, app.Event) {
	name := strings.TrimSpace(p.S.typed[nameBox])
	switch {
	case !casefile.GoodName(name):
		p.say("Give the field a name first: 1 to " + strconv.Itoa(casefile.MaxName) + " characters.")
	case !p.sound() || !p.ready():
	case !p.write(append(without(p.fields, name), casefile.Field{Name: name, Case: p.S.c})):
		p.say("This device has no room, or does not let the page keep anything. Save the fields as a file.")
	default:
		p.say("Kept as “" + name + "”. On this device now: " + count(len(p.fields)) + ".")
	}
}

func count(n int) string {
	if n == 1 {
		return "1 field"
	}
	return strconv.Itoa(n) + " fields"
}

func without(fields []casefile.Field, name string) []casefile.Field {
	var rest []casefile.Field
	for _, f := range fields {
		if f.Name != name {
			rest = append(rest, f)
		}
	}
	return rest
}

func (p *fieldsPart) open(name string) {
	for _, f := range p.fields {
		if f.Name == name {
			p.S.touch("the field " + name + " was opened")
			p.S.show(f.Case)
			p.S.typed[nameBox] = name
			p.say("Opened “" + name + "”.")
			p.S.changed()
			p.S.tell(onForm | onPlaces | onUnits)
		}
	}
}

func (p *fieldsPart) remove(name string) {
	if p.ready() && p.write(without(p.fields, name)) {
		p.say("Removed “" + name + "”.")
	}
}

func (p *fieldsPart) save(app.Context, app.Event) {
	if !p.ready() {
		return
	}
	fields := p.fields
	if len(fields) == 0 {
		if !p.sound() {
			return
		}
		fields = []casefile.Field{{Name: "This field", Case: p.S.c}}
	}
	saveFile("film-and-furrow-fields.json", "application/json", string(casefile.EncodeFields(fields)))
	p.say("Saved as a file: " + count(len(fields)) + ".")
}

// load reads a file of fields. What the device holds changes only when every
// entry of the file is right.
func (p *fieldsPart) load(ctx app.Context, _ app.Event) {
	input := ctx.JSSrc()
	files := input.Get("files")
	if files.Length() == 0 {
		return
	}
	file := files.Index(0)
	if file.Get("size").Int() > casefile.MaxFieldsBytes {
		p.say("That file is too large to be one of ours. Nothing was changed.")
		return
	}
	if p.S.places == nil {
		p.say("The table of stations is still loading. Choose the file again in a moment.")
		return
	}
	read := app.FuncOf(func(_ app.Value, args []app.Value) any {
		text := args[0].String()
		ctx.Dispatch(func(app.Context) {
			input.Set("value", "")
			p.take(file.Get("name").String(), text)
		})
		return nil
	})
	failed := app.FuncOf(func(app.Value, []app.Value) any {
		ctx.Dispatch(func(app.Context) { p.say("The file could not be read. Nothing was changed.") })
		return nil
	})
	file.Call("text").Call("then", read, failed)
}

func (p *fieldsPart) take(name, text string) {
	added, err := casefile.DecodeFields([]byte(text), p.S.places)
	if err != nil {
		var wrong []string
		if list, ok := err.(field.Errors); ok {
			for _, e := range list[:min(len(list), 8)] {
				wrong = append(wrong, e.Error())
			}
		}
		p.say("Nothing was changed: “"+name+"” is not right.", wrong...)
		return
	}
	if !p.ready() {
		return
	}
	fields := p.fields
	for _, f := range added {
		fields = append(without(fields, f.Name), f)
	}
	if len(fields) > casefile.MaxFields || !p.write(fields) {
		p.say("This device has no room for all of them. Nothing was changed.")
		return
	}
	p.say("Opened from the file: " + count(len(added)) + ".")
}
