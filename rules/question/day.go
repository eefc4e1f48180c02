package question

import "filmfurrow/rules/unit"

// Day is asked in a room alone, where dates are voted on: when may it be planted? Nothing is
// weighed for it, the planting day follows from the others. Its options are the round days
// of a year, which a grower names when asked for about when: the 1st, 10th and 20th of each
// month. The room's script (static/room.js) puts five of them on a line.
const Day = Count

const aMonth, aYear = 3, 36

// commonYear is any year: an option has none.
const commonYear = 2027

func (o Option) day() unit.Date {
	return unit.On(commonYear, int(o)/aMonth+1, max(1, 10*(int(o)%aMonth)))
}

// Nearest is the round day nearest to a date, of two the earlier.
func Nearest(day unit.Date) Option {
	year, month, d := day.Civil()
	o := (month - 1) * aMonth
	switch {
	case 2*d > 20+unit.DaysIn(year, month)+1: // nearer to the next month
		o += 3
	case d > 15:
		o += 2
	case d > 5:
		o++
	}
	return Option(o % aYear)
}
