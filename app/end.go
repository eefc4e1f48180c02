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
		groups = append(groups, heading(sentence(string(step))), app.Ul().Body(list...))
	}
	return app.Details().ID("cautions").Class("fold").Body(append([]app.UI{
		summary("Take care, at each step"),
		paragraph("Labels, local codes and licensed people overrule this page."),
	}, groups...)...)
}

func (p *endPart) defaults(a *plan.Advice) app.UI {
	if len(a.Defaults) == 0 {
		return app.Details().ID("defaults").Hidden(true)
	}
	list := make([]app.UI, len(a.Defaults))
	for i, d := range a.Defaults {
		label := d.Field
		if in := field.InputByName(d.Field); in != nil {
			label = in.Label
		}
		list[i] = item(label + ": " + d.Used.In(p.S.system) + " (" + d.Reason + ")")
	}
	return app.Details().ID("defaults").Class("fold").Body(
		summary("What was taken for granted"),
		paragraph("You left these open, so this stood in. Fill them in for a firmer answer."),
		app.Ul().Body(list...),
	)
}

func (p *endPart) limits(a *plan.Advice) app.UI {
	list := make([]app.UI, len(a.Limits))
	for i, l := range a.Limits {
		if l.Text.Text == "" {
			l.Text.Text = p.S.texts["limit:"+l.ID]
		}
		list[i] = item(l.Text.In(p.S.system))
	}
	return app.Details().ID("limits").Class("fold").Body(summary("What is not known"), app.Ul().Body(list...)).On("toggle", func(app.Context, app.Event) { p.S.wantTexts() })
}

func (p *endPart) sources(a *plan.Advice) app.UI {
	return app.Details().ID("sources-list").Class("fold").Body(summary("Who says so: all sources"), app.Raw(p.S.sourcesHTML(a.Sources)))
}
