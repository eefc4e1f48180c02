// The page writes no advice files, so its program is built without this.

//go:build !page

package casefile

import (
	"encoding/json"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/unit"
)

// The parts of the advice file that tell what to do: what would change the
// answers, what to buy, when, and how to lay.

type turnLine struct {
	Input   string              `json:"input"`
	At      json.RawMessage     `json:"at"`
	Before  json.RawMessage     `json:"before"`
	Months  string              `json:"every_month,omitempty"` // of a monthly list: moved by, or set to
	Unknown bool                `json:"case_left_it_open,omitempty"`
	Changes map[string]turnedTo `json:"changes"`
}

type turnedTo struct {
	From string `json:"from"`
	To   string `json:"to"`
	Says string `json:"says"`
}

func turning(points []search.TurningPoint) []turnLine {
	lines := make([]turnLine, len(points))
	for i := range points {
		p := &points[i]
		lines[i] = turnLine{Input: p.Input.Name, At: json.RawMessage(valueText(p.Input, p.At)), Before: json.RawMessage(valueText(p.Input, p.Before)), Months: p.Input.EveryMonth(), Unknown: p.Unknown, Changes: map[string]turnedTo{}}
		if p.Absent {
			lines[i].Before = json.RawMessage("null")
		}
		for _, q := range p.Changes() {
			lines[i].Changes[q.String()] = turnedTo{optionKey(q, p.Old[q]), optionKey(q, p.New[q]), p.Says(q).In(unit.Metric)}
		}
	}
	return lines
}

func optionKey(q question.Question, o question.Option) string {
	if o == question.NoOption {
		return "none"
	}
	return q.Key(o)
}

type shoppingLine struct {
	Item     string   `json:"item"`
	Name     string   `json:"name"`
	Quantity float64  `json:"quantity,omitempty"`
	Unit     string   `json:"unit"`
	Own      *float64 `json:"own_quantity,omitempty"`
	Spec     string   `json:"specification,omitempty"`
	How      string   `json:"how"`
	Missing  string   `json:"missing,omitempty"`
	Source   []string `json:"source,omitempty"`
}

func shopping(s *plan.Shopping) []shoppingLine {
	lines := make([]shoppingLine, len(s.Lines))
	for i := range s.Lines {
		l := &s.Lines[i]
		line := shoppingLine{Item: field.ItemKeys[l.Item], Name: l.Name, Quantity: four(l.Quantity), Unit: "piece", Spec: l.Spec.In(unit.Metric), How: l.How.In(unit.Metric), Missing: l.Missing}
		switch l.Kind {
		case unit.KindLong:
			line.Unit = "m"
		case unit.KindMass:
			line.Unit = "kg"
		}
		if l.Own.Given {
			line.Own = &l.Own.Value
		}
		for _, source := range l.Sources {
			line.Source = append(line.Source, source.ID)
		}
		lines[i] = line
	}
	return lines
}

type seasonLine struct {
	ID    string `json:"id"`
	On    string `json:"on"`
	Days  int    `json:"days"`
	Weeks int    `json:"weeks,omitempty"`
	What  string `json:"what"`
	Why   string `json:"why"`
	Step  string `json:"step"`
}

func season(steps []plan.SeasonStep) []seasonLine {
	lines := make([]seasonLine, len(steps))
	for i := range steps {
		s := &steps[i]
		lines[i] = seasonLine{s.ID, s.On.String(), int(s.Days), s.Weeks, s.What.In(unit.Metric), s.Why.In(unit.Metric), string(s.Step)}
	}
	return lines
}

type layingPart struct {
	Go       []conditionLine `json:"before"`
	Boxes    []string        `json:"before_to_tick"`
	Settings []string        `json:"settings"`
	Order    []string        `json:"during"`
	People   []string        `json:"people,omitempty"`
	CheckHow string          `json:"after_how_often"`
	Checks   []string        `json:"after"`
	Faults   []string        `json:"faults"`
	Care     []string        `json:"take_care"`
}

type conditionLine struct {
	Text  string `json:"text"`
	Reply string `json:"reply"`
}

func laying(s plan.Sheet) layingPart {
	part := layingPart{Boxes: sentences(s.Boxes), Settings: sentences(s.Settings), People: sentences(s.People), CheckHow: s.CheckHow.In(unit.Metric),
		Checks: sentences(s.Checks), Faults: sentences(s.Faults), Care: sentences(s.Care)}
	for i := range s.Go {
		part.Go = append(part.Go, conditionLine{s.Go[i].In(unit.Metric), sheet.Sentences[s.Go[i].Reply.Key()]})
	}
	for i := range s.Order {
		part.Order = append(part.Order, s.Order[i].In(unit.Metric))
	}
	return part
}

func sentences(list []plan.SheetLine) []string {
	texts := make([]string, len(list))
	for i := range list {
		texts[i] = list[i].In(unit.Metric)
	}
	return texts
}
