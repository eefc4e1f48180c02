//go:build !js

package pack

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Farm is one invented farm and its lesson. A test holds the engine to both answers that
// the lesson speaks of. The page's room reads the lessons from a file of their own.
type Farm struct {
	Land
	Lesson string // one or two plain sentences
	Asks   question.Question
	Answer question.Option // the engine's answer to it
	Turn   string          // the input to turn live
	To     field.Value     // turned to this,
	Then   question.Option // the answer becomes this
}

func on(month, day int) field.Value { return field.Value{Number: float64(unit.On(2027, month, day))} }

func word(w string) field.Value { return field.Value{Word: w} }

// about is the answer of a room that names a round day.
func about(month, day int) question.Option {
	return question.Nearest(unit.On(2027, month, day))
}

// Farms is the pack, in the order of a talk.
var Farms = [...]Farm{
	{Land: Lands[0],
		Lesson: "Film warms roots, never leaves. On this day the frost is over; set out three weeks sooner, the warm bed does not save the plants.",
		Asks:   question.Verdict, Answer: question.Lay, Turn: "plant_on", To: on(4, 29), Then: question.LayWithCare},
	{Land: Lands[1],
		Lesson: "The day chooses the color. Black film pays in spring, when roots want warmth; in summer they want it kept off, and the pale film wins.",
		Asks:   question.Film, Answer: question.Option(table.Black), Turn: "plant_on", To: on(6, 20), Then: question.Option(table.WhiteOnBlack)},
	{Land: Lands[2],
		Lesson: "Film buys days. Clear film buys the most, but it holds no weeds at all. Where weeds are heavy it is out, and planting waits for black film.",
		Asks:   question.Day, Answer: about(5, 10), Turn: "weeds.pressure", To: word("heavy"), Then: about(5, 20)},
	{Land: Lands[3],
		Lesson: "Some films are laid against insects, not for warmth. Silver turns aphids away while the plants are small; without aphids it loses.",
		Asks:   question.Film, Answer: question.Option(table.SilverOnBlack), Turn: "weeds.insect_pressure", To: word("none"), Then: question.Option(table.WhiteOnBlack)},
	{Land: Lands[4],
		Lesson: "A raised bed is a drain. Slow ground asks for a high one; quick ground dries out on it.",
		Asks:   question.Bed, Answer: 3, Turn: "soil.drainage", To: word("quick"), Then: 1},
	{Land: Lands[5],
		Lesson: "Thickness is bought for stones, wind and a second crop, not for warmth. Clean ground takes the thin film.",
		Asks:   question.Thickness, Answer: 4, Turn: "soil.stones", To: word("none"), Then: 3},
	{Land: Lands[6],
		Lesson: "Film sheds the rain, so the tape must bring it all. Time a bucket before you buy a roll: this well cannot keep up.",
		Asks:   question.Verdict, Answer: question.LayWithCare, Turn: "water.flow_l_h", To: field.Value{Number: 5000}, Then: question.Lay},
	{Land: Lands[7],
		Lesson: "Some weeds go through every plastic film. Learn to tell purple nutsedge from yellow before you order: one forbids film, the other asks for care.",
		Asks:   question.Verdict, Answer: question.DoNotLay, Turn: "weeds.nutsedge", To: word("yellow"), Then: question.LayWithCare},
}
