package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"
)

// probePart says, beside the fields of a probe reading, what the reading did.
type probePart struct {
	app.Compo
	S *store
}

func (p *probePart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits|onForm, p.Update) }
func (p *probePart) OnDismount()         { p.S.leave(p) }

func (p *probePart) Render() app.UI {
	return app.P().Class("probe-says").ID("probe-says").Role("status").Text(p.words())
}

func (p *probePart) words() string {
	soil := &p.S.c.Soil
	switch {
	case !soil.Temperature.Given && !soil.MeasuredOn.Given:
		return "Push a probe into the bed at nine in the morning, shaded. One reading sets the curve right for your field."
	case !soil.MeasuredOn.Given:
		return "On which day did you read it? With the day, the reading moves the curve."
	case !soil.Temperature.Given:
		return "What did the probe show? With the temperature, the reading moves the curve."
	case p.S.digging:
		return "Working out the curve with your reading …"
	case p.S.advice == nil || !p.S.advice.Facts.Probe.Given:
		return "The curve moves as soon as all marked fields are corrected."
	}
	return probeWords(p.S.advice.Facts, p.S.system)
}
