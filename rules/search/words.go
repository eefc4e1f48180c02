package search

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Says puts the point in one sentence for one question.
func (p *TurningPoint) Says(q question.Question) unit.Phrase {
	what := unit.Say("nothing fits")
	if p.New[q] != question.NoOption {
		what = q.Says(p.New[q])
	}
	switch {
	case q == question.Verdict:
		what.Text = unit.Lower(what.Text)
	case q == question.Wait && p.New[q] != question.NoOption:
		what.Text = "the wait is set by " + what.Text
	}
	head, values := p.condition()
	return unit.Phrase{Text: head + ": " + what.Text + ".", Quantities: append(values, what.Quantities...)}
}

func (p *TurningPoint) condition() (string, []unit.Quantity) {
	in := p.Input
	switch in.Form {
	case field.FormFilms:
		film := uint(p.At.Number) ^ uint(p.Before.Number)
		if p.Before.Number == 0 {
			film = ^uint(p.At.Number) & (1<<table.FilmCount - 1)
		}
		for id := range table.FilmCount {
			if film == 1<<id && uint(p.At.Number)&film != 0 {
				return "With " + table.FilmID(id).Name() + " in the shop", nil
			} else if film == 1<<id {
				return "Without " + table.FilmID(id).Name() + " in the shop", nil
			}
		}
	case field.FormDate:
		q := []unit.Quantity{unit.Of(unit.Date(p.At.Number))}
		switch {
		case p.Absent:
			return in.Label + " {}", q
		case in.Name != "plant_on" && p.Above:
			return in.Label + " {} or later", q
		case in.Name != "plant_on":
			return in.Label + " {} or sooner", q
		case p.Above:
			return "From {} on", q
		}
		return "Until {}", q
	case field.FormYesNo:
		if p.At.Number == 1 {
			return in.Label, nil
		}
		return "Not " + unit.Lower(in.Label), nil
	}
	text, values := in.Says(p.At)
	switch {
	case in.Moves[0] != "":
		return text, values
	case in.Name == "place.lat" && p.Above:
		return "With the sun of latitude " + text + " or farther north", values
	case in.Name == "place.lat":
		return "With the sun of latitude " + text + " or farther south", values
	case in.Form == field.FormChoice:
		return in.Label + " “" + text + "”", nil
	case in.Form == field.FormDay && p.Above:
		return in.Label + " on " + text + " or later", nil
	case in.Form == field.FormDay:
		return in.Label + " on " + text + " or sooner", nil
	case in.Name == "water.rise_m":
		return rise(p.At.Number, p.Above)
	case p.Above:
		return in.Label + " " + text + " or more", values
	}
	return in.Label + " " + text + " or less", values
}

// rise says where the beds lie: nobody thinks of a fall as a rise below nothing.
func rise(at float64, above bool) (string, []unit.Quantity) {
	text := "Beds {} or less "
	if above == (at > 0) {
		text = "Beds {} or more "
	}
	switch q := []unit.Quantity{{Kind: unit.KindHead, SI: math.Abs(at)}}; {
	case at < 0:
		return text + "below the source", q
	case at > 0:
		return text + "above the source", q
	case above:
		return "Beds level with the source or above it", nil
	}
	return "Beds level with the source or below it", nil
}
