package search

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
)

// Steps lists the values around a case's own that a plain search must try, at
// the input's own step: those above in rising order, those below in falling
// order. An input that is not to be turned has none.
func Steps(c field.Case, in *field.Input) (above, below, options []field.Value, open bool) {
	filled := field.Filled(c)
	sweeps := sweepsOf(&c, &filled, in)
	for _, s := range sweeps {
		switch s.kind {
		case each:
			for _, t := range s.tries {
				options = append(options, at(in, t))
			}
			return nil, nil, options, s.unknown
		case through:
			for k := s.tries[len(s.tries)-1].step; k <= s.tries[0].step; k++ {
				above = append(above, at(in, try{step: k}))
			}
			return above, nil, nil, true
		}
		if len(s.tries) == 0 {
			continue
		}
		if s.above {
			for k := s.last.step + 1; k <= s.tries[0].step; k++ {
				above = append(above, at(in, try{step: k}))
			}
		} else {
			for k := s.last.step - 1; k >= s.tries[0].step; k-- {
				below = append(below, at(in, try{step: k}))
			}
		}
	}
	return above, below, nil, false
}

// Turned lists every row that is searched: the inputs and the monthly lists.
func Turned() (list []*field.Input) {
	for i := range turned {
		list = append(list, turnedInput(i))
	}
	return list
}

// Turns tells whether an input of a case is searched.
var Turns = turns

// Asker keeps what two like cases share.
type Asker struct{ asking }

// On answers without reasons.
func (a *Asker) On(g *facts.SoilYear, c field.Case) (question.Answers, bool) {
	p, ok := prepare(c)
	if !ok || p.key != g.Key {
		return refused, false
	}
	return a.on(g, p)
}

// Refused stands for a case that is not right.
var Refused = refused

// FilmAsker keeps what two like cases share.
type FilmAsker struct{ filmAsking }

// AskFilm asks for films on a ground.
func AskFilm(g *facts.SoilYear) *FilmAsker { return &FilmAsker{filmAsking{ground: g}} }

// Of is the film of a case, if the ground is its own and the case is right.
func (a *FilmAsker) Of(c field.Case) (question.Option, bool) {
	p, ok := prepare(c)
	if !ok || p.key != a.ground.Key {
		return question.NoOption, false
	}
	film, _ := a.film(c)
	return film, true
}

// Move is one input set to one value.
type Move struct {
	Input *field.Input
	At    field.Value
}

// FilmMoves lists every other value of the choices that bear on the film.
func FilmMoves(c field.Case) (moves []Move) {
	filled := field.Filled(c)
	for _, name := range filmInputs {
		in := field.InputByName(name)
		now, _ := in.Get(&filled)
		values := []field.Value{{Number: 0}, {Number: 1}, {Number: 2}, {Number: 3}, {Number: 4}}
		if in.Form == field.FormChoice {
			values = nil
			for _, o := range in.Options {
				values = append(values, field.Value{Word: o.ID})
			}
		}
		for _, v := range values {
			if v != now && in.CheckValue(v) == nil {
				moves = append(moves, Move{in, v})
			}
		}
	}
	return moves
}
