package unit

import (
	"errors"
	"strconv"
)

// Date is a day of the proleptic Gregorian calendar, counted from 1 January
// 1970 (day 0). It knows no clock and no time zone.
type Date int32

// ErrDate says that a text is not a day of the calendar written YYYY-MM-DD.
var ErrDate = errors.New("not a day of the calendar written year-month-day, such as 2027-05-20")

// DateLow and DateHigh bound every date that the engine reckons with.
var (
	DateLow  = On(1900, 1, 1)
	DateHigh = On(2200, 12, 31)
)

// On gives the date of a civil day. It does not check: see [ParseDate].
// The arithmetic counts years from March so that the leap day comes last.
func On(year, month, day int) Date {
	if month <= 2 {
		year--
		month += 12
	}
	era := floorDiv(year, 400)
	yearOfEra := year - era*400
	dayOfYear := (153*(month-3)+2)/5 + day - 1
	dayOfEra := yearOfEra*365 + yearOfEra/4 - yearOfEra/100 + dayOfYear
	return Date(era*146097 + dayOfEra - 719468)
}

// Civil gives year, month 1–12 and day 1–31.
func (d Date) Civil() (year, month, day int) {
	z := int(d) + 719468
	era := floorDiv(z, 146097)
	dayOfEra := z - era*146097
	yearOfEra := (dayOfEra - dayOfEra/1460 + dayOfEra/36524 - dayOfEra/146096) / 365
	dayOfYear := dayOfEra - (365*yearOfEra + yearOfEra/4 - yearOfEra/100)
	shifted := (5*dayOfYear + 2) / 153
	day = dayOfYear - (153*shifted+2)/5 + 1
	month = shifted + 3
	year = yearOfEra + era*400
	if month > 12 {
		month -= 12
		year++
	}
	return year, month, day
}

// Plus moves a date by whole days.
func (d Date) Plus(days Days) Date { return d + Date(days) }

// Minus counts the days from other to d.
func (d Date) Minus(other Date) Days { return Days(d - other) }

// DayOfYear counts 1 January as 1.
func (d Date) DayOfYear() int {
	year, _, _ := d.Civil()
	return int(d-On(year, 1, 1)) + 1
}

// String writes the date as YYYY-MM-DD (ISO 8601).
func (d Date) String() string {
	year, month, day := d.Civil()
	b := make([]byte, 0, 10)
	for limit := 1000; year < limit && limit > 1; limit /= 10 {
		b = append(b, '0')
	}
	b = strconv.AppendInt(b, int64(year), 10)
	b = appendTwo(append(b, '-'), month)
	b = appendTwo(append(b, '-'), day)
	return string(b)
}

// ParseDate reads YYYY-MM-DD and refuses days that the calendar lacks.
func ParseDate(s string) (Date, error) {
	if len(s) != 10 || s[4] != '-' || s[7] != '-' {
		return 0, ErrDate
	}
	year, ok1 := digits(s[0:4])
	month, ok2 := digits(s[5:7])
	day, ok3 := digits(s[8:10])
	if !ok1 || !ok2 || !ok3 || month < 1 || month > 12 || day < 1 || day > DaysIn(year, month) {
		return 0, ErrDate
	}
	return On(year, month, day), nil
}

// ParseMonthDay reads MM-DD, a day of any year, as month × 100 + day.
func ParseMonthDay(s string) (int, error) {
	day, err := ParseDate("2000-" + s) // a leap year, so that 02-29 is a day
	if err != nil {
		return 0, err
	}
	_, month, dayOfMonth := day.Civil()
	return month*100 + dayOfMonth, nil
}

// DaysIn gives the length of a month.
func DaysIn(year, month int) int {
	if month == 12 {
		return 31
	}
	return int(On(year, month+1, 1) - On(year, month, 1))
}

func digits(s string) (n int, ok bool) {
	for i := 0; i < len(s); i++ {
		if s[i] < '0' || s[i] > '9' {
			return 0, false
		}
		n = n*10 + int(s[i]-'0')
	}
	return n, true
}

func appendTwo(b []byte, n int) []byte {
	return append(b, byte('0'+n/10), byte('0'+n%10))
}

func floorDiv(a, b int) int {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}
