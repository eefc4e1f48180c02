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

// RoomQuestions are the questions of a room, by their words in a pack.
func RoomQuestions() (list [][2]string) {
	for q := range question.Count {
		list = append(list, [2]string{q.String(), roomQuestions[q]})
	}
	return list
}
