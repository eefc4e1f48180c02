package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
)

// endPart is the foot of the page: cautions, defaults, limits and sources.
type endPart struct {
	app.Compo
	S *store
}

func (p *endPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *endPart) OnDismount()         { p.S.leave(p) }

func (p *endPart) Render() app.UI {
	a := p.S.advice
	return app.Div().ID("end").Class("end").Body(
		p.cautions(a),
		p.defaults(a),
		p.limits(a),
		p.sources(a),
	)
}

func (p *endPart) cautions(a *plan.Advice) app.UI {
	var groups []app.UI
	for i := 0; i < len(a.Cautions); {
		step := a.Cautions[i].Step
		var list []app.UI
		for ; i < len(a.Cautions) && a.Cautions[i].Step == step; i++ {
			c := &a.Cautions[i]
			list = append(list, app.Li().Body(plain(c.Text+" "), app.Em().Text("Last word: "+c.Defers+".")))
		}
		groups = append(groups, heading3(sentence(string(step))), app.Ul().Body(list...))
	}
	return app.Section().ID("cautions").Class("cautions").Body(append([]app.UI{
		heading2("Take care"),
		paragraph("Labels, local codes and licensed people overrule this page."),
	}, groups...)...)
}

func (p *endPart) defaults(a *plan.Advice) app.UI {
	if len(a.Defaults) == 0 {
		return app.Section().ID("defaults").Hidden(true)
	}
	list := make([]app.UI, len(a.Defaults))
	for i, d := range a.Defaults {
		label := d.Field
		if in := field.InputByName(d.Field); in != nil {
			label = in.Label
		}
		list[i] = item(label + ": " + d.Used.In(p.S.system) + " (" + d.Reason + ")")
	}
	return app.Section().ID("defaults").Body(
		heading2("What we took for granted"),
		paragraph("You left these open, so this stood in. Fill them in to be surer."),
		app.Ul().Body(list...),
	)
}

func (p *endPart) limits(a *plan.Advice) app.UI {
	list := make([]app.UI, len(a.Limits))
	for i, l := range a.Limits {
		list[i] = item(l.Text.In(p.S.system))
	}
	return app.Section().ID("limits").Body(heading2("What we do not know"), app.Ul().Body(list...))
}

func (p *endPart) sources(a *plan.Advice) app.UI {
	list := make([]app.UI, len(a.Sources))
	for i, s := range a.Sources {
		says := []app.UI{plain(s.Publisher + ": " + s.Title + ", " + s.Year + ". " + sentence(s.Where) + ". " + sentence(s.Mark.String()) + ". ")}
		if s.Linked() {
			says = append(says, app.A().Href(s.Address).Text(s.Address))
		} else {
			says = append(says, plain(sentence(s.Found())+"."))
		}
		list[i] = app.Li().ID("source-" + s.ID).TabIndex(-1).Body(says...)
	}
	return app.Section().ID("sources").Body(
		app.Details().ID("sources-list").Open(true).Body(app.Summary().Body(heading2("Who says so")), app.Ul().Class("sources").Body(list...)),
	)
}
