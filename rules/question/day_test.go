package question_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

func TestTheNearestRoundDay(t *testing.T) {
	for day, want := range map[string]string{
		"2027-05-13": "2027-05-10", "2027-05-15": "2027-05-10", "2027-05-16": "2027-05-20", "2027-05-25": "2027-05-20", "2027-05-27": "2027-06-01",
		"2027-12-27": "2028-01-01", "2028-02-29": "2028-03-01", "2028-02-25": "2028-02-20", "2027-01-01": "2027-01-01",
	} {
		d, err := unit.ParseDate(day)
		assert.NoError(t, err)
		o, year := question.Nearest(d)
		assert.Equal(t, want, o.On(year).String(), day)
		assert.Equal(t, want[5:], question.Day.Key(o), day)
	}
}

// Whatever the day, it lies on its line, whose days follow one another; the other day lies
// on it too where a line of the two months can hold both. Where on the line the answer lies
// is no hint: each of the five places has a share of the days, none more than two in five.
func TestALineGivesNothingAway(t *testing.T) {
	places := map[int]int{}
	for d := unit.On(2027, 1, 1); d < unit.On(2031, 1, 1); d++ {
		for gain := range unit.Days(30) {
			first, year := question.Line(d, d.Plus(gain))
			nearest, of := question.Nearest(d)
			at := -1
			for n := range question.LineDays {
				day := (first + question.Option(n)).On(year)
				if day == nearest.On(of) {
					at = n
				}
				if n > 0 {
					assert.Greater(t, day, (first + question.Option(n-1)).On(year))
				}
			}
			if at < 0 {
				t.Fatalf("%s is not on its line from %s on", d, first.On(year))
			}
			places[at]++
		}
	}
	all := 0
	for _, n := range places {
		all += n
	}
	for at := range question.LineDays {
		share := float64(places[at]) / float64(all)
		assert.Greater(t, share, 0.05, at)
		assert.Less(t, share, 0.40, at)
	}
}

func TestALineHoldsBothDaysWhereItCan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := unit.On(2027, 1, 1).Plus(unit.Days(rapid.IntRange(0, 1500).Draw(t, "day")))
		other := d.Plus(unit.Days(rapid.IntRange(0, 19).Draw(t, "gain")))
		first, year := question.Line(d, other)
		last := (first + question.LineDays - 1).On(year)
		assert.LessOrEqual(t, other, last.Plus(6))
		assert.GreaterOrEqual(t, d, first.On(year).Plus(-6))
	})
}
