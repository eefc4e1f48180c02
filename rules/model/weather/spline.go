package weather

// daysInMonth and firstDay lay out the year of 365 days; 29 February shares the
// figures of 28 February.
var (
	daysInMonth = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}
	firstDay    = [13]int{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365}
)

// YearDays is the length of the smooth year.
const YearDays = 365

// daily spreads twelve monthly means over 365 days so that the days of each
// month average to the month's mean exactly and the year closes on itself.
//
// The running sum of the year is known at thirteen month ends. A cubic spline
// through those points, periodic in its slope and curvature, is the smoothest
// curve there is; each day is the rise of that curve over the day, so the rises
// of a month add up to its sum whatever the curve does between. (The spline of
// a histogram: de Boor, C., A Practical Guide to Splines, Springer 1978,
// chapter VIII; the method is known in climatology as a mean-preserving
// spline.)
func daily(monthly *[12]float64) (days [YearDays]float64) {
	var curvature [13]float64
	solveCurvature(monthly, &curvature)
	for m := range 12 {
		h := float64(daysInMonth[m])
		// Rise of the cubic from its left end, at u days into the month.
		left, right := curvature[m], curvature[m+1]
		slope := monthly[m] - h*(2*left+right)/6
		rise := func(u float64) float64 {
			return u * (slope + u*(left/2+u*(right-left)/(6*h)))
		}
		before := 0.0
		for d := range daysInMonth[m] {
			after := rise(float64(d + 1))
			days[firstDay[m]+d] = after - before
			before = after
		}
	}
	return days
}

// solveCurvature finds the second derivatives of the running sum at the month
// ends from the condition that its slope is continuous there. The system is
// cyclic and strongly diagonal, so a few dozen sweeps of Gauss-Seidel settle it
// to the last bit.
func solveCurvature(monthly *[12]float64, curvature *[13]float64) {
	const sweeps = 60
	for range sweeps {
		for m := range 12 {
			previous, next := (m+11)%12, (m+1)%12
			hp, hm := float64(daysInMonth[previous]), float64(daysInMonth[m])
			jump := 6 * (monthly[m] - monthly[previous])
			curvature[m] = (jump - hp*curvature[previous] - hm*curvature[next]) / (2 * (hp + hm))
		}
	}
	curvature[12] = curvature[0]
}
