//go:build !page

package judge

import (
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/question"
)

// sideTexts are what each row of sideRows says, outside the page's program.
var sideTexts = [len(sideRows)]string{
	"In Pennsylvania red gave about {} more tomatoes and eggplants; dark blue gave {} to {} more summer squash, cucumbers and muskmelons.",
	"Red gave up to {} more tomatoes, but not in every trial.",
	"Cucumbers did worst on blue: {} t/ha, against {} on silver-gray.",
	"In Mexico bell peppers gave {} more on black than on blue.",
	"Results with red and blue were not consistent.",
	"It cools, by {} in spring.",
	"It warms, by {} to {}, as black, blue, red and clear do.",
	"By {}, in Puerto Rico in February.",
	"By {} to {}, on five Virginia farms.",
	"By {} to {}, in a New England spring.",
	"Yes: it cut emergence by {} to {} in the field, since leaves open beneath it.",
	"No: in Tennessee nutsedge came through every plastic, and not through paper.",
	"In pots no: black and clear both cut the shoots by {}.",
	"In the field yes: white and silver let through up to twice the shoots of black, in one of two years.",
	"About {}, for vegetables in Georgia.",
	"Flat or raised, both work; flat needs ground that drains.",
}

func sideText(row int) string { return sideTexts[row] }

// RuleTexts are why each rule has its weight, a line each: its id behind "rule:", a tab, the
// text; behind "limit:" the limits that hold of
// every case; behind "side:" what sources say that disagree. The page's program is built without these texts.
func RuleTexts() string {
	var b strings.Builder
	for q := range question.Count {
		for _, r := range Rules(q) {
			b.WriteString("rule:" + r.ID + "\t" + r.Because + "\n")
		}
	}
	for _, l := range slices.Concat(warmthLimits(), waterLimits()) {
		b.WriteString("limit:" + l.ID + "\t" + l.Text.Text + "\n")
	}
	for i, text := range sideTexts {
		b.WriteString("side:" + strconv.Itoa(i) + "\t" + text + "\n")
	}
	return b.String()
}
