package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Cool crops set into heat are laid "with care", and the reason is the crop's own
// ceiling. On the published first and last days of spring windows nothing is said, but
// for those that are listed here.
func TestCoolCropsSetIntoHeat(t *testing.T) {
	heat := func(f *facts.Facts) bool {
		for _, rule := range judge.Rules(question.Verdict) {
			if rule.ID == "soil-too-hot" {
				_, says := rule.Judge(f, question.Lay)
				return says
			}
		}
		return false
	}
	for _, row := range []struct {
		crop       string
		month, day int
		hot        bool
	}{{"broccoli", 4, 10, false}, {"broccoli", 6, 10, true}, {"broccoli", 6, 30, true}, {"broccoli", 8, 1, false}, {"cabbage", 6, 30, true}, {"cauliflower", 7, 10, true}, {"tomato", 6, 30, false}} {
		c := at(t, dover, row.crop, row.month, row.day)
		f, verdict := settled(t, c, dug(t, c), nil)
		assert.Equal(t, row.hot, heat(f), "%s at Dover on %v: %d days under white above %v", row.crop, c.PlantOn.Value, f.CeilingDays[table.WhiteOnBlack], f.Ceiling)
		if row.hot {
			assert.NotEqual(t, question.Lay, verdict, row.crop)
		}
	}
	read := 0
	for _, w := range windows(t, "1991-2020") {
		if table.CropByID(w.crop).Warm || w.season != "spring" {
			continue
		}
		soil, err := facts.NewSoilYear(w.asks)
		require.NoError(t, err)
		for _, day := range []unit.Optional[unit.Date]{unit.Known(w.first), w.last} {
			if !day.Given {
				continue
			}
			c := w.asks
			c.PlantOn = day
			f, _ := settled(t, c, soil, nil)
			read++
			if heat(f) {
				t.Logf("%s, %s, %v: %d days under white above %v", w.crop, w.place, day.Value, f.CeilingDays[table.WhiteOnBlack], f.Ceiling)
			}
			assert.Equal(t, intoHeat[w.crop+", "+w.place] == day.Value.String()[5:], heat(f), "%s, %s, %v", w.crop, w.place, day.Value)
		}
	}
	assert.Greater(t, read, 40)
}

// intoHeat are published last days on which the bed is above the crop's ceiling all the
// same.
var intoHeat = map[string]string{
	"cauliflower, North Alabama": "07-01",
	"kale, East North Carolina":  "06-30",
	"kale, East South Carolina":  "06-15",
}
