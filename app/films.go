package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/table"
)

// filmsPart lets the grower tick the films that can be bought.
type filmsPart struct {
	app.Compo
	S *store
}

func (p *filmsPart) OnMount(app.Context) { p.S.follow(p, onForm, p.Update) }
func (p *filmsPart) OnDismount()         { p.S.leave(p) }

func (p *filmsPart) Render() app.UI {
	list := []app.UI{app.Legend().Text("Films you can buy (none ticked: compare all)")}
	for i := range table.Films {
		bit := field.Films(1) << i
		id := "f-film-" + table.Films[i].ID
		list = append(list, app.Label().Class("tick").For(id).Body(
			app.Input().ID(id).Name(id).Type("checkbox").Checked(p.S.c.Practice.FilmOptions&bit != 0).
				OnChange(func(ctx app.Context, _ app.Event) { p.toggle(bit, ctx.JSSrc().Get("checked").Bool()) }, id),
			plain(" "+table.Films[i].Name)))
	}
	return asked("", app.FieldSet().Class("ticks").Body(list...))
}

func (p *filmsPart) toggle(bit field.Films, on bool) {
	p.S.touch("films you can buy", "practice.film_options")
	set := &p.S.c.Practice.FilmOptions
	if on {
		*set |= bit
	} else {
		*set &^= bit
	}
	p.S.changed()
}
