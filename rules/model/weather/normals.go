// Package weather turns twelve monthly minima and maxima into a smooth year of
// days, with the day-to-day spread, frost dates, hot days and cool or warm
// years that follow from it.
//
// The way through: [Normals] (what the grower or a station table gives) →
// [NewYear] → [Year], whose methods answer questions. All is pure arithmetic
// on values; a Year is about 12 kB and is best passed by pointer.
package weather

import (
	"math"
	"strconv"

	"filmfurrow/rules/unit"
)

// Normals are the long-term monthly means of the daily minimum and maximum air
// temperature at a place. The zero value is refused by [Normals.Check].
type Normals struct {
	Minimum  [12]unit.Celsius // January first; NaN marks a gap
	Maximum  [12]unit.Celsius
	Latitude unit.Degrees // −90 to 90, south negative
	Height   unit.Metres  // of the place the temperatures belong to, −500 to 6,000
	Nights   float64      // how many times as wide cold nights scatter as in the United States; 0 is as there: [ColdNights]
}

// Allowed ranges. The temperatures are the extremes that monthly means reach on
// inhabited land, with room to spare.
const (
	coldestMonth, hottestMonth = -70, 55
	widestRange                = 40
	lowestLand, highestLand    = -500, 6000
)

// LapseRate is how much colder air is per metre of height: 6.5 K per km, the
// standard atmosphere of FAO Irrigation and Drainage Paper 56 equation 7.
// Minima on valley floors do not follow it.
const LapseRate = 0.0065

var monthNames = [12]string{"January", "February", "March", "April", "May", "June",
	"July", "August", "September", "October", "November", "December"}

// InputError says which figure cannot be used, what it is, what is allowed, and
// how to mend it.
type InputError struct {
	Field     string
	Value     float64
	Low, High float64
	Unit      string
	Mend      string
}

// Error writes the field, the value, the range and the mend in one sentence.
func (e *InputError) Error() string {
	value := "is missing"
	if !math.IsNaN(e.Value) {
		value = "is " + number(e.Value) + " " + e.Unit
	}
	return e.Field + " " + value + "; allowed is " + number(e.Low) + " to " + number(e.High) + " " + e.Unit + ": " + e.Mend
}

func number(v float64) string { return strconv.FormatFloat(math.Round(v*100)/100, 'f', -1, 64) }

// Check returns nil or an [*InputError] for the first figure that is missing,
// out of range or at odds with its partner.
func (n *Normals) Check() error {
	if err := within("latitude", float64(n.Latitude), -90, 90, "degrees", "count south as negative"); err != nil {
		return err
	}
	if err := within("height", float64(n.Height), lowestLand, highestLand, "m", "give the height of the field above the sea"); err != nil {
		return err
	}
	for m := range 12 {
		low, high := float64(n.Minimum[m]), float64(n.Maximum[m])
		if err := within(monthNames[m]+" minimum", low, coldestMonth, hottestMonth, "°C", "fill in the mean daily minimum of the month"); err != nil {
			return err
		}
		if err := within(monthNames[m]+" maximum", high, coldestMonth, hottestMonth, "°C", "fill in the mean daily maximum of the month"); err != nil {
			return err
		}
		if high <= low || high-low > widestRange {
			return &InputError{monthNames[m] + " maximum", high, low, low + widestRange, "°C",
				"the maximum must lie above the minimum; look for two figures that changed places"}
		}
	}
	return nil
}

func within(field string, v, low, high float64, unitName, mend string) error {
	if v >= low && v <= high { // false for NaN
		return nil
	}
	return &InputError{field, v, low, high, unitName, mend}
}

// AtHeight moves the normals from the station's height to the field's by
// [LapseRate].
func (n Normals) AtHeight(field unit.Metres) Normals {
	step := unit.CelsiusDegrees(LapseRate * float64(n.Height-field))
	for m := range 12 {
		n.Minimum[m] = n.Minimum[m].Plus(step)
		n.Maximum[m] = n.Maximum[m].Plus(step)
	}
	n.Height = field
	return n
}
