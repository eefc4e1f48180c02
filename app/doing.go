package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// worked keeps what the doing sections share, until the advice changes.
type worked struct {
	of   *plan.Advice
	plan plan.WaterPlan
	list plan.Shopping
	cost plan.Cost
	now  struct { // what the season asks, which two parts show
		on   unit.Date
		says unit.Phrase
		step string
	}
}

// workOut makes the plan, the list and the costs once for an advice.
func (s *store) workOut() *worked {
	if metric := s.system == unit.Metric; s.worked.of != s.advice || s.advice.SoldMetric != metric {
		s.advice.SoldMetric = metric
		plan := s.advice.WaterPlan()
		list := s.advice.Shopping(&plan)
		s.worked = worked{of: s.advice, plan: plan, list: list, cost: s.advice.CostOf(&list)}
		s.tell(onSums)
	}
	return &s.worked
}

// shopping gives the list and its costs.
func (s *store) shopping() (plan.Shopping, plan.Cost) {
	w := s.workOut()
	return w.list, w.cost
}

// calendar writes the season; the stamp is the laying day, so that the same
// entry gives the same file.
func (s *store) calendar() string {
	name := "Film & Furrow: " + s.advice.Facts.Crop.Name
	stamp := s.advice.WaitPlan.LayOn
	if app.IsClient {
		now := app.Window().Get("Date").New()
		stamp = unit.On(now.Call("getFullYear").Int(), now.Call("getMonth").Int()+1, now.Call("getDate").Int())
	}
	return string(casefile.Calendar(s.advice.Season(&s.workOut().list), name, stamp, s.system, inOwnWords))
}

// listed is a table under its heads, in a region that scrolls where it is too
// wide. The three helpers are called, not copied into their callers: copied, they
// would add kilobytes to what every grower downloads.
//
//go:noinline
func listed(class, label string, rows []app.UI, heads ...string) app.UI {
	cells := make([]app.UI, len(heads))
	for i, h := range heads {
		cells[i] = app.Th().Scope("col").Text(h)
	}
	return app.Div().Class(class).TabIndex(0).Role("region").Aria("label", label).Body(
		app.Table().Body(app.THead().Body(app.Tr().Body(cells...)), app.TBody().Body(rows...)))
}

// rowOf is a row of a table: its name, its figures, and a text.
//
//go:noinline
func rowOf(name, text string, figures ...string) app.UI {
	cells := make([]app.UI, 0, len(figures)+2)
	cells = append(cells, app.Th().Scope("row").Text(name))
	for _, f := range figures {
		cells = append(cells, app.Td().Class("figure").Text(f))
	}
	return app.Tr().Body(append(cells, app.Td().Text(text))...)
}

//go:noinline
func paragraph(text string) app.UI { return app.P().Text(text) }

//go:noinline
func heading(text string) app.UI { return app.H2().Class("part-head").Text(text) }

//go:noinline
func item(text string) app.UI { return app.Li().Text(text) }

// fieldsOf are controls of the form, by the names of their rows.
func fieldsOf(s *store, names []string) []app.UI {
	fields := make([]app.UI, len(names))
	for i, name := range names {
		fields[i] = &entry{S: s, Name: name}
	}
	return fields
}
