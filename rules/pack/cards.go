//go:build !js

package pack

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// MoreCards are two farms more, for newsletters alone: the workshop has eight, and what
// the page's program does not show it does not carry.
var MoreCards = [...]Farm{
	{Land: Land{ID: "wren-drill", Title: "Wren Drill, carrots sown by the row", place: &mildCoast, set: func(c *field.Case) {
		plants(c, "carrot", 5, 25)
		c.Method = "seed"
	}},
		Lesson: "Film wants plants that stand apart. Carrots in a drill would make it mostly holes; sown to summer squash, the same bed takes film.",
		Asks:   question.Verdict, Answer: question.DoNotLay, Turn: "crop", To: word("summer-squash"), Then: question.Lay},
	{Land: Land{ID: "rook-terrace", Title: "Rook Terrace, garlic for the winter", place: &coolValley, set: func(c *field.Case) { plants(c, "garlic", 10, 10) }},
		Lesson: "Film is not for spring alone. Garlic set in fall roots under it through the winter; cloves that are set in spring make small bulbs.",
		Asks:   question.Verdict, Answer: question.Lay, Turn: "plant_on", To: field.Value{Number: float64(unit.On(2027, 3, 28))}, Then: question.LayWithCare},
}
