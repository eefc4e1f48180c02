package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"
)

// Controls that several parts share: each is built once in the program.

// picker is a labelled list to choose from by place. A scope tells like pickers
// apart whose meaning changes.
func picker(id, label string, names []string, at int, on func(int), scope ...any) app.UI {
	options := make([]app.UI, len(names))
	for i, name := range names {
		options[i] = app.Option().Value(strconv.Itoa(i)).Text(name).Selected(i == at)
	}
	return asked("field", app.Label().For(id).Text(label),
		app.Select().ID(id).Body(options...).OnChange(func(ctx app.Context, _ app.Event) {
			if n, err := strconv.Atoi(ctx.JSSrc().Get("value").String()); err == nil {
				on(n)
			}
		}, append(scope, id)...))
}

// press is a plain button.
func press(id, text string, on func(), scope ...any) app.UI {
	return button(id, text).OnClick(func(app.Context, app.Event) { on() }, append(scope, id)...)
}

// para is a paragraph; an empty one takes no room.
func para(class, text string) app.UI { return app.P().Class(class).Text(text) }

// tableText is a table in text, with a heading for each column and row. A row of
// one cell is the heading of a group.
func tableText(id, label string, heads []string, rows [][]string) string {
	t := &svg{}
	t.raw(`<div class="scroll" tabindex="0" role="region" aria-label="`, escape(label), `"><table id="`, id, `"><thead><tr>`)
	for _, head := range heads {
		t.raw(`<th scope="col">`, escape(head), `</th>`)
	}
	t.raw(`</tr></thead>`)
	for i, row := range rows {
		if i == 0 || len(row) == 1 {
			t.raw(`<tbody>`)
		}
		t.raw(`<tr>`)
		for k, cell := range row {
			switch {
			case len(row) == 1:
				t.raw(`<th scope="rowgroup" class="group" colspan="`, strconv.Itoa(len(heads)), `">`, escape(cell), `</th>`)
			case k == 0:
				t.raw(`<th scope="row">`, escape(cell), `</th>`)
			default:
				t.raw(`<td>`, escape(cell), `</td>`)
			}
		}
		t.raw(`</tr>`)
	}
	t.raw(`</table></div>`)
	return t.b.String()
}

// The plainest elements, each of which would else be built anew at every place.

func plain(text string) app.UI    { return app.Text(text) }
func span(text string) app.UI     { return app.Span().Text(text) }
func strong(text string) app.UI   { return app.Strong().Text(text) }
func summary(text string) app.UI  { return app.Summary().Text(text) }
func heading2(text string) app.UI { return app.H2().Text(text) }
func heading3(text string) app.UI { return app.H3().Text(text) }
func helpText(text string) app.UI { return para("help", text) }

func box(class string, inside ...app.UI) app.UI { return app.Div().Class(class).Body(inside...) }

// asked is a box of controls that belong together, as a form of its own. After each
// key a browser reads the whole form that the control belongs to, all of the page's
// controls where they are in none, for its own filling-in: that took longer than our
// answer. The method is the one that sends nothing, wherever Enter is pressed.
func asked(class string, inside ...app.UI) app.UI {
	return app.Form().Class(class).Method("dialog").NoValidate(true).Body(inside...)
}

func button(id, text string) app.HTMLButton {
	return app.Button().Type("button").Class("plain").ID(id).Text(text)
}
