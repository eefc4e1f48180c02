package question_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

func TestTheNearestRoundDay(t *testing.T) {
	for day, want := range map[string]string{
		"2027-05-13": "05-10", "2027-05-15": "05-10", "2027-05-16": "05-20", "2027-05-25": "05-20", "2027-05-27": "06-01",
		"2027-12-27": "01-01", "2028-02-29": "03-01", "2028-02-25": "02-20", "2027-01-01": "01-01",
	} {
		d, err := unit.ParseDate(day)
		assert.NoError(t, err)
		assert.Equal(t, want, question.Day.Key(question.Nearest(d)), day)
	}
}

// No round day, of this year or the next, is nearer than the one that is named.
func TestNoRoundDayIsNearer(t *testing.T) {
	for d := unit.On(2027, 1, 1); d < unit.On(2029, 1, 1); d++ {
		year, _, _ := d.Civil()
		least, nearest := unit.Days(999), question.NoOption
		for of := year - 1; of <= year+1; of++ {
			for o := range question.Option(question.Day.Options()) {
				round, err := unit.ParseDate(unit.On(of, 1, 1).String()[:5] + question.Day.Key(o))
				assert.NoError(t, err)
				if away := max(d.Minus(round), round.Minus(d)); away < least {
					least, nearest = away, o
				}
			}
		}
		assert.Equal(t, nearest, question.Nearest(d), d)
	}
}
