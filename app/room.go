//go:build !js

package app

import (
	"encoding/json"

	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// RoomPack is the pack that the room opens with, in the words of a pack's file: every lesson
// with what it promises, and for the speaker what to talk about.
func RoomPack() (string, error) {
	type stop struct {
		Farm   string `json:"farm"`
		Title  string `json:"title"`
		Ask    string `json:"ask"`
		Answer string `json:"answer"`
		Turn   string `json:"turn"`
		To     any    `json:"to"`
		Then   string `json:"then"`
		Lesson string `json:"lesson"`
		Notes  string `json:"notes"`
	}
	var stops []stop
	for i := range pack.Farms {
		f := &pack.Farms[i]
		var to any = f.To.Word
		switch field.InputByName(f.Turn).Form {
		case field.FormDate:
			to = unit.Date(f.To.Number).String()
		case field.FormNumber:
			to = f.To.Number
		}
		talk := toTalkAbout[f.ID]
		stops = append(stops, stop{f.ID, f.Title, f.Asks.String(), f.Asks.Key(f.Answer), f.Turn, to, f.Asks.Key(f.Then), f.Lesson, talk[0] + " " + talk[1]})
	}
	text, err := json.Marshal(map[string]any{"pack": 1, "title": "Eight invented farms", "stops": stops})
	return string(text), err
}

// RoomQuestion is one of them: its word in a pack, what is asked, and how each ballot is drawn:
// what is drawn up, how high its bed is, and what marks it.
type RoomQuestion [3]any

// RoomQuestions are the questions of a room.
func RoomQuestions() (list []RoomQuestion) {
	for _, q := range Ballots() {
		sketches := [][3]any{}
		for o := range question.Option(q.Options()) {
			if q != question.Day {
				key, bed := ballotLook(q, o)
				sketches = append(sketches, [3]any{key, bed, ballotMarks(q, o, bed)})
			}
		}
		list = append(list, RoomQuestion{q.String(), roomQuestions[q], sketches})
	}
	return list
}
