package field

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Error says which field is wrong, what it holds, what is allowed and how
// to mend it.
type Error struct{ Field, Value, Allowed, Mend string }

// Error writes the four parts in one line.
func (e Error) Error() string {
	switch e.Value {
	case "missing", "unknown field", "given twice":
		return e.Field + ": " + e.Value + ". Allowed: " + e.Allowed + ". " + e.Mend
	}
	return e.Field + ": " + e.Value + " is not allowed. Allowed: " + e.Allowed + ". " + e.Mend
}

// Errors are all that is wrong with a case, in the order of the inputs.
type Errors []Error

// Error writes one error a line.
func (e Errors) Error() string {
	lines := make([]string, len(e))
	for i := range e {
		lines[i] = e[i].Error()
	}
	return strings.Join(lines, "\n")
}

// CheckValue tells whether one value is in the range of its input.
func (in *Input) CheckValue(v Value) *Error {
	switch in.Form {
	case FormChoice:
		for _, o := range in.Options {
			if o.ID == v.Word {
				return nil
			}
		}
		return &Error{in.Name, quote(v.Word), in.allowed(), in.mendChoice(v.Word)}
	case FormText:
		return nil
	case FormWhole:
		if v.Number != math.Trunc(v.Number) {
			return &Error{in.Name, plain(v.Number), in.allowed(), "Give a whole number."}
		}
	case FormDay:
		if m, d := int(v.Number)/100, int(v.Number)%100; m < 1 || m > 12 || d < 1 || d > unit.DaysIn(2000, m) {
			return &Error{in.Name, plain(v.Number), in.allowed(), "Write month and day, such as 05-14."}
		}
		return nil
	}
	if !(v.Number >= in.Low && v.Number <= in.High) { // also refuses NaN
		return &Error{in.Name, in.print(v.Number), in.allowed(), in.mendRange()}
	}
	return nil
}

// Allowed says in words what the input takes.
func (in *Input) Allowed() string { return in.allowed() }

func (in *Input) allowed() string {
	switch in.Form {
	case FormChoice, FormFilms:
		if len(in.Options) > 14 {
			return "one of " + strconv.Itoa(len(in.Options)) + " ids, see explain"
		}
		ids := make([]string, len(in.Options))
		for i, o := range in.Options {
			ids[i] = o.ID
		}
		return strings.Join(ids, ", ")
	case FormDate:
		return unit.DateLow.String() + " to " + unit.DateHigh.String()
	case FormDay:
		return "01-01 to 12-31"
	case FormYesNo:
		return "true or false"
	case FormText:
		return "a short text"
	}
	text := plain(in.Low) + " to " + plain(in.High)
	symbol := in.Kind.Symbol(unit.Metric)
	switch in.Kind { // the limits are in SI, and these are shown in another unit
	case unit.KindShort:
		symbol = "m"
	case unit.KindSpeed:
		symbol = "m/s"
	}
	if symbol != "" {
		text += " " + symbol
	}
	return text
}

func (in *Input) print(v float64) string {
	if in.Form == FormDate {
		return unit.Date(v).String()
	}
	return plain(v)
}

// String writes MM-DD.
func (d MonthDay) String() string {
	digits := strconv.Itoa(10000 + int(d))
	return digits[1:3] + "-" + digits[3:]
}

func plain(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

func quote(s string) string {
	if r := []rune(s); len(r) > 40 {
		s = string(r[:40]) + "…"
	}
	return strconv.Quote(s)
}

func (in *Input) mendRange() string {
	switch {
	case in.Mend != "":
		return in.Mend
	case in.Form == FormDate:
		return "Check the year."
	}
	return "Check the figure and its unit, or leave the field out."
}

// mendChoice offers the option that looks most like what was given.
func (in *Input) mendChoice(word string) string {
	best, least := "", min(4, 1+len(word)/3)
	for _, o := range in.Options {
		if d := distance(strings.ToLower(word), o.ID, least); d < least {
			best, least = o.ID, d
		}
	}
	if best != "" {
		return "Did you mean " + best + "?"
	}
	return "Choose one of the allowed ids, or leave the field out."
}

// distance counts the letters to change between two words, giving up at limit.
func distance(a, b string, limit int) int {
	if len(a)-len(b) > limit || len(b)-len(a) > limit || len(a) > 40 {
		return limit
	}
	last := make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		diagonal := last[0]
		last[0] = i
		for j := 1; j <= len(b); j++ {
			cost := diagonal
			if a[i-1] != b[j-1] {
				cost++
			}
			diagonal = last[j]
			last[j] = min(last[j]+1, last[j-1]+1, cost)
		}
	}
	return last[len(b)]
}

// Check finds everything that is wrong with a case; none means that [plan.Advise]
// will answer.
func Check(c *Case) Errors {
	var errs Errors
	for i := range Inputs {
		in := &Inputs[i]
		if v, given := in.Get(c); given {
			if e := in.CheckValue(v); e != nil {
				errs = append(errs, *e)
			}
		}
	}
	for i := range Climate {
		errs = append(errs, Climate[i].check(c)...)
	}
	errs = append(errs, checkRequired(c)...)
	return append(errs, checkTogether(c)...)
}

func (s *Series) check(c *Case) Errors {
	v, given := s.Get(c)
	if !given {
		return nil
	}
	return s.CheckValues(v)
}

// CheckValues tests each month of a series.
func (s *Series) CheckValues(v [12]float64) (errs Errors) {
	for m, x := range v {
		if !(x >= s.Low && x <= s.High) {
			errs = append(errs, Error{s.Name, plain(x) + " in " + unit.MonthName(m+1), plain(s.Low) + " to " + plain(s.High),
				"Check the figure and its unit: the file is in SI."})
		}
	}
	return errs
}

func checkRequired(c *Case) (errs Errors) {
	if c.Crop == "" {
		errs = append(errs, Error{"crop", "missing", "one of " + strconv.Itoa(len(table.Crops)) + " ids, see explain", "Choose a crop."})
	}
	if !c.PlantOn.Given {
		errs = append(errs, Error{"plant_on", "missing", unit.DateLow.String() + " to " + unit.DateHigh.String(), "Give the day you want to plant."})
	}
	if p := &c.Place; !p.HasNormals || p.Own && p.Station != "" && !p.Latitude.Given {
		value := "missing"
		if c.Place.Station != "" {
			value = quote(c.Place.Station)
		}
		errs = append(errs, Error{"place", value, "a station id, a latitude and longitude near a station, or your own climate", "Choose the place, or type twelve minima and maxima."})
		return errs
	}
	if !c.Place.Latitude.Given {
		errs = append(errs, Error{"place.lat", "missing", "-66 to 72 °", "The height of the sun needs a latitude."})
	}
	for m := range 12 {
		low, high := float64(c.Place.TMin[m]), float64(c.Place.TMax[m])
		if !(high > low) || high-low > 40 {
			errs = append(errs, Error{"climate.tmax_c", plain(high) + " in " + unit.MonthName(m+1), "above the minimum, " + plain(low) + ", by up to 40",
				"Look for two figures that changed places."})
		}
	}
	return errs
}

// checkTogether finds fields that are each right and wrong together.
func checkTogether(c *Case) (errs Errors) {
	add := func(field, value, allowed, mend string) {
		errs = append(errs, Error{field, value, allowed, mend})
	}
	f, p := &c.Field, &c.Practice
	if p.Organic.Value && p.FumigatedOn.Given {
		add("practice.fumigated_on", p.FumigatedOn.Value.String(), "not on a certified organic field", "Clear one of the two: fumigants lie outside the organic rule.")
	}
	if p.FumigatedOn.Given && c.PlantOn.Given {
		if d := c.PlantOn.Value.Minus(p.FumigatedOn.Value); d < 0 || d > 400 {
			add("practice.fumigated_on", p.FumigatedOn.Value.String(), "in the 400 days before planting", "Check both dates.")
		}
	}
	if p.LabelInterval.Given && !p.FumigatedOn.Given {
		add("practice.label_interval_days", plain(p.LabelInterval.Value), "only with practice.fumigated_on", "Give the day of treatment.")
	}
	if f.BedTop.Given && f.Centres.Given && f.BedTop.Value > f.Centres.Value-0.15 {
		add("field.bed_top_m", plain(float64(f.BedTop.Value)), "at least 0.15 m less than the bed centers", "Widen the centers or narrow the top.")
	}
	if p.FilmWidth.Given && f.BedTop.Given && f.BedTop.Value > p.FilmWidth.Value-2*profile.LeastTuck+0.0005 {
		add("field.bed_top_m", plain(float64(f.BedTop.Value)), "at most "+plain(unit.Thousandth(float64(p.FilmWidth.Value-2*profile.LeastTuck)))+" m under a roll of "+plain(float64(p.FilmWidth.Value))+" m",
			"A flat bed already needs the top and 0.127 m of tuck on each side: narrow the top or buy a wider roll.")
	}
	if least := f.BedLength.Value + 2*profile.EndAllowance; p.RollLength.Given && f.BedLength.Given && p.RollLength.Value < least {
		add("practice.roll_length_m", plain(float64(p.RollLength.Value)), "at least "+plain(math.Ceil(float64(least)*10)/10)+" m for a bed of "+plain(float64(f.BedLength.Value))+" m",
			"One roll must cover one bed and both buried ends: splices are not planned. Get a longer roll or split the bed.")
	}
	if !p.FilmDown() && (p.ReuseCover.Given || p.ReuseLaidOn.Given || p.ReuseHeight.Given || p.ReuseThick.Given) {
		add("practice.reuse.film", "missing", "the film that is down", "Say which film lies there, or clear the rest.")
	}
	if p.ReuseLaidOn.Given && c.PlantOn.Given && p.ReuseLaidOn.Value > c.PlantOn.Value {
		add("practice.reuse.laid_on", p.ReuseLaidOn.Value.String(), "before planting", "Check both dates.")
	}
	if c.Soil.Temperature.Given != c.Soil.MeasuredOn.Given {
		add("soil.measured_on", "one without the other", "a reading and its day", "Give both the temperature and the day, or neither.")
	}
	if c.Place.LastFrost.Given && c.Place.FirstFrost.Given && c.Place.LastFrost.Value == c.Place.FirstFrost.Value {
		add("climate.first_frost", c.Place.FirstFrost.Value.String(), "another day than the last frost", "Check both days.")
	}
	if crop := table.CropByID(c.Crop); crop != nil && c.Method != "" && !crop.Both && c.Method != string(crop.Start) && crop.Sown {
		add("method", quote(c.Method), string(crop.Start), "This crop is only sown.")
	}
	if sum := c.Feed.BaseNitrogen.Or(0) + c.Feed.BasePhosphate.Or(0) + c.Feed.BasePotash.Or(0); sum > 100 {
		add("feed.base_n_percent", plain(unit.Thousandth(sum))+" with its phosphate and potash", "up to 100 together", "A product cannot hold more than itself: copy the three figures from the bag.")
	}
	if c.Feed.BaseNitrogen.Given && c.Feed.BaseNitrogen.Value == 0 && c.Feed.BasePhosphate.Or(0) == 0 && c.Feed.BasePotash.Or(0) == 0 {
		add("feed.base_n_percent", "0", "above 0 for one of the three nutrients", "Copy the three figures from the bag, or leave all three out.")
	}
	if cur := c.Prices.Currency; cur != "" && !currencyCode(cur) {
		add("prices.currency", quote(cur), "three capital letters (ISO 4217)", "Write the code, such as USD.")
	}
	return errs
}

// PlaceError turns the weather model's complaint into a field error.
func PlaceError(err error) error {
	var in *weather.InputError
	if errors.As(err, &in) {
		return Errors{{"place", plain(in.Value), plain(in.Low) + " to " + plain(in.High) + " " + in.Unit + " for the " + in.Field, in.Mend}}
	}
	return err
}

func currencyCode(s string) bool {
	return len(s) == 3 && !strings.ContainsFunc(s, func(r rune) bool { return r < 'A' || r > 'Z' })
}
