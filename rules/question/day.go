package question

import "filmfurrow/rules/unit"

// Day is asked in a room alone, where dates are voted on: when may it be planted? Nothing is
// weighed for it, the planting day follows from the others; its options are the round days
// of a year.
const Day = Count

// roundDays are the days of each month that a grower names when asked for about when.
var roundDays = [...]int{1, 10, 20}

// daysOfYear is how many round days a year has.
const daysOfYear = Option(12 * len(roundDays))

// commonYear is any year: a day's word has none.
const commonYear = 2027

// LineDays is how many of them stand on one line to choose from.
const LineDays = 5

// On is a round day in a year. From 36 on it lies in the next one.
func (o Option) On(year int) unit.Date {
	n := int(o)
	return unit.On(year+n/int(daysOfYear), n/len(roundDays)%12+1, roundDays[n%len(roundDays)])
}

// Nearest is the round day nearest to a date, of two the earlier, and its year.
func Nearest(day unit.Date) (Option, int) {
	year, month, _ := day.Civil()
	best := Option((month - 1) * len(roundDays))
	for o := best; int(o) <= month*len(roundDays); o++ {
		if away(o.On(year), day) < away(best.On(year), day) {
			best = o
		}
	}
	return best % daysOfYear, year + int(best/daysOfYear)
}

func away(a, b unit.Date) unit.Days { return max(a.Minus(b), b.Minus(a)) }

// Line is the first of the [LineDays] round days, one after the other, that a room chooses
// from, and its year. A line begins with a month, so where on it the day lies is the
// calendar's doing; of two lines that hold it, it is the earlier one if that holds the
// other day too, such as that of bare ground.
func Line(day, other unit.Date) (Option, int) {
	o, year := Nearest(day)
	begins := o / Option(len(roundDays)) * Option(len(roundDays))
	if earlier := begins + daysOfYear - Option(len(roundDays)); o < begins+2 && other <= (earlier+LineDays-1).On(year-1).Plus(nearby) {
		return earlier % daysOfYear, year - 1 + int(earlier/daysOfYear)
	}
	return begins, year
}

// nearby is how far beyond the last of them a line goes on.
const nearby = 5
