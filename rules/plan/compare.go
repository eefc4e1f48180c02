package plan

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// CompareRow is one thing that is said of each of several advices.
type CompareRow struct {
	What    string
	Cells   []unit.Phrase
	Differs bool
}

// compared lists what is set side by side, in the order of the work.
var compared = [...]struct {
	what string
	of   func(a *Advice) unit.Phrase
}{
	{"Crop", func(a *Advice) unit.Phrase { return unit.Say(a.Facts.Crop.Name) }},
	{"Planting day wanted", func(a *Advice) unit.Phrase { return unit.Say("{}", a.Facts.Wanted) }},
	{"Whether to lay", chosen(question.Verdict)},
	{"Why", func(a *Advice) unit.Phrase {
		if len(a.Gates) == 0 {
			return unit.Say("nothing speaks against it")
		}
		return a.Gates[0].Reason
	}},
	{"Film", chosen(question.Film)},
	{"Surface", chosen(question.Surface)},
	{"Thickness", chosen(question.Thickness)},
	{"Bed", chosen(question.Bed)},
	{"Film to buy, width", func(a *Advice) unit.Phrase { return unit.Say("{}", unit.Roll(a.Shape.FilmWidth)) }},
	{"Tape", chosen(question.Tape)},
	{"Lay on", func(a *Advice) unit.Phrase { return unit.Say("{}", a.WaitPlan.LayOn) }},
	{"Plant on", func(a *Advice) unit.Phrase { return unit.Say("{}", a.WaitPlan.PlantOn) }},
	{"What rules the wait", chosen(question.Wait)},
	{"Soil on the wanted morning", func(a *Advice) unit.Phrase { return unit.Say("{}", a.Facts.Under[a.Facts.ChosenCover()]) }},
	{"Soil in the first month", func(a *Advice) unit.Phrase { return unit.Say("{}", a.Facts.MeanUnder[a.Facts.ChosenCover()]) }},
	{"Days won against bare soil", func(a *Advice) unit.Phrase {
		if film, ok := a.Film.Best(); ok && a.Facts.WarmingPays {
			return unit.Say("{}", a.Facts.Gained[film])
		}
		return unit.Say("warmth does not count")
	}},
	{"Days too hot for roots, of 60", func(a *Advice) unit.Phrase {
		return unit.Say("{}", unit.Days(a.Facts.CeilingDays[a.Facts.ChosenCover()]))
	}},
	{"Film on a hot clear day", func(a *Advice) unit.Phrase {
		if film, ok := a.Film.Best(); ok {
			return unit.Say("{}", a.Facts.Surface[film])
		}
		return unit.Say("no film")
	}},
	{"Years with frost after planting", func(a *Advice) unit.Phrase { return unit.Say("{}", unit.PercentOf(a.Facts.FrostRisk)) }},
	{"Water on the day of peak use", func(a *Advice) unit.Phrase { return unit.Say("{}", unit.LitresPer100Metres(a.Water.PeakLitres)) }},
	{"Run of a zone on that day", func(a *Advice) unit.Phrase { return unit.Say("{}", a.Water.PeakMinutes) }},
}

func chosen(q question.Question) func(*Advice) unit.Phrase {
	return func(a *Advice) unit.Phrase {
		if o, ok := a.Choice(q).Best(); ok {
			return q.Says(o)
		}
		return unit.Say("none fits")
	}
}

// Compare sets two or more advices side by side: what differs comes first. The
// cells are in the order of the advices.
func Compare(list []*Advice) (rows []CompareRow) {
	var alike []CompareRow
	for i := range compared {
		row := CompareRow{What: compared[i].what}
		for _, a := range list {
			row.Cells = append(row.Cells, compared[i].of(a))
			row.Differs = row.Differs || row.Cells[0].In(unit.Metric) != row.Cells[len(row.Cells)-1].In(unit.Metric)
		}
		if row.Differs {
			rows = append(rows, row)
		} else {
			alike = append(alike, row)
		}
	}
	return append(rows, alike...)
}

// WithFilm is the case as if one film alone could be bought.
func WithFilm(c field.Case, film table.FilmID) field.Case {
	c.Practice.FilmOptions = 1 << film
	return c
}
