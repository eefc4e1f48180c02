package field

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// DayColumn is one thing that may be written down of a day.
type DayColumn int

// The columns.
const (
	DayLow DayColumn = iota
	DayHigh
	DayRain
	DayRun
	DayMeter
	DayFeel
	DayTension
	DayMoisture
	DaySoil
	DayStage
	DayPicked
	DayHours
	DayPaid
	DayRolls
	DayTorn
	dayColumns
)

// DayColumns describe the columns: the name in the file, the label, how it is printed,
// what is allowed in SI, and the words by which a pasted sheet may head it.
var DayColumns = [dayColumns]struct {
	Name, Label string
	Kind        unit.Kind
	Low, High   float64
	Words       string
	Mend        string
}{
	{"low_c", "Low of the day", unit.KindTemperature, -60, 60, " low lows min minimum tmin ", "Check the figure and its unit."},
	{"high_c", "High of the day", unit.KindTemperature, -60, 60, " high highs max maximum tmax ", "Check the figure and its unit."},
	{"rain_mm", "Rain", unit.KindDepth, 0, 500, " rain precipitation ", "Rain of one day is 0 or more."},
	{"run_min", "Minutes that each zone ran", unit.KindMinutes, 0, 1440, " run minutes ran ", "A day has 1,440 minutes."},
	{"meter_l", "Water meter, all beds", unit.KindVolume, 0, 1e8, " meter volume ", "Give the day’s water, not the meter’s count."},
	{"feel", "Squeezed handful, 1 the driest to 5", unit.KindCount, 1, 5, " feel squeeze ", "Whole classes from 1, the driest, to 5, the wettest."},
	{"tension_kpa", "Tensiometer, kPa or centibars", unit.KindNumber, 0, 100, " tension tensiometer centibars kpa ", "Gauges end at 100; they work up to 80."},
	{"moisture_percent", "Moisture probe, % of volume", unit.KindNumber, 0, 100, " moisture probe ", "Percent of the soil’s volume, 0 to 100."},
	{"soil_c", "Soil where the roots are, in the morning", unit.KindTemperature, -20, 60, " soil ground ", "Check the figure and its unit."},
	{"stage", "What came: 1 planted, 2 first bloom, 3 film lifted", unit.KindCount, 1, float64(len(DayStages)), " stage ", "Whole numbers: 1 planted, 2 first bloom, 3 film lifted."},
	{"picked", "Picked, in boxes or in weight", unit.KindNumber, 0, 1e6, " picked harvest yield ", "What was picked on one day, always in the same boxes or weight."},
	{"hours", "Hours of weeding and other work", unit.KindNumber, 0, 1000, " hours work weeding ", "The hours of all people together."},
	{"paid", "Money spent", unit.KindNumber, 0, 1e7, " paid spent cost ", "In one currency."},
	{"rolls", "Rolls of film used", unit.KindNumber, 0, 1000, " rolls ", "Rolls, or parts of one."},
	{"torn_percent", "Film torn or gone, %", unit.KindNumber, 0, 100, " torn ", "Percent of the film, 0 to 100."},
}

// DayStages are what DayStage counts, from 1 on.
var DayStages = [...]string{"planted", "first bloom", "film lifted"}

// DayRow is one day as the grower wrote it down, in SI. What was not written is not given.
type DayRow struct {
	On     unit.Date
	Values [dayColumns]unit.Optional[float64]
}

// Days are rows in the order of their days, each day once. They are kept as text, so that
// a case stays comparable and is as cheap to copy as before; [DaysOf] writes it.
type Days string

// MostDays is as many days as a field keeps: a year and what hangs over.
const MostDays = 400

// DaysOf keeps rows, which [CheckDays] has found right.
func DaysOf(rows []DayRow) Days {
	var b strings.Builder
	for i := range rows {
		b.WriteString(strconv.Itoa(int(rows[i].On)))
		for _, v := range rows[i].Values {
			b.WriteByte(',')
			if v.Given {
				b.WriteString(plain(v.Value))
			}
		}
		b.WriteByte('\n')
	}
	return Days(b.String())
}

// Rows reads what DaysOf wrote.
func (d Days) Rows() []DayRow {
	if d == "" {
		return nil
	}
	rows := make([]DayRow, strings.Count(string(d), "\n"))
	rest := string(d)
	for i := range rows {
		var line, cell string
		line, rest, _ = strings.Cut(rest, "\n")
		cell, line, _ = strings.Cut(line, ",")
		day, _ := strconv.Atoi(cell)
		row := &rows[i]
		row.On = unit.Date(day)
		for c := range row.Values {
			if cell, line, _ = strings.Cut(line, ","); cell == "" {
				continue
			}
			if v, err := strconv.ParseFloat(cell, 64); err == nil {
				row.Values[c] = unit.Known(v)
			}
		}
	}
	return rows
}

// With writes rows over those that are kept: a column that a row gives takes the place of
// the older figure, and all else stays. Nothing of it is in order unless both were.
func (d Days) With(rows []DayRow) Days {
	list := d.Rows()
	for _, row := range rows {
		at, found := slices.BinarySearchFunc(list, row.On, func(r DayRow, on unit.Date) int { return int(r.On - on) })
		if !found {
			list = slices.Insert(list, at, row)
			continue
		}
		for c, v := range row.Values {
			if v.Given {
				list[at].Values[c] = v
			}
		}
	}
	return DaysOf(list)
}

// The hour and the depth at which a soil temperature of the log is read, where the field says
// nothing else: at ten, when soil is near its daily mean, where the roots or the seed are.
const (
	logHour      = 10
	logDepth     = unit.Metres(0.1)
	logSeedDepth = unit.Metres(0.05)
)

// WithDays is the case with other days, of a field where a film lies from a day on. The last soil temperature among them, no later than the
// day that was written down for planting, becomes the field's own reading where it is the newest,
// and so moves the soil's curve; later ones are of ground under leaves and move no date.
func (c Case) WithDays(days Days, laid unit.Date, film string) Case {
	c.Days = days
	soil := &c.Soil
	for _, row := range days.Rows() {
		if v := row.Values[DaySoil]; v.Given && row.On >= soil.MeasuredOn.Or(row.On) {
			soil.Temperature, soil.MeasuredOn = unit.Known(unit.Celsius(v.Value)), unit.Known(row.On)
			soil.MeasuredUnder = ""
			if _, lies := table.FilmByID(film); lies && row.On >= laid {
				soil.MeasuredUnder = film
			}
			if !soil.MeasuredHour.Given {
				soil.MeasuredHour = unit.Known(float64(logHour))
			}
			if !soil.MeasuredDepth.Given {
				soil.MeasuredDepth = unit.Known(logDepth)
				if c.Method == "seed" {
					soil.MeasuredDepth = unit.Known(logSeedDepth)
				}
			}
		}
		if row.Values[DayStage].Value == 1 {
			break
		}
	}
	return c
}

// CheckDays says what is wrong with rows, naming each by where it stands: days out of
// order or twice, figures that no day has, a low above its high.
func CheckDays(rows []DayRow, system unit.System) (errs Errors) {
	if len(rows) > MostDays {
		errs = append(errs, Error{"days", strconv.Itoa(len(rows)) + " days", "at most " + strconv.Itoa(MostDays), "Keep one season to a field."})
	}
	for i := range rows {
		row := &rows[i]
		at := "days " + row.On.String()
		if row.On < unit.DateLow || row.On > unit.DateHigh {
			errs = append(errs, Error{at, row.On.String(), unit.DateLow.String() + " to " + unit.DateHigh.String(), "Check the year."})
		}
		if i > 0 && row.On <= rows[i-1].On {
			errs = append(errs, Error{at, row.On.String() + " after " + rows[i-1].On.String(), "each day once, the earlier first", "Put the days in order."})
		}
		for c, v := range row.Values {
			if e := CheckDay(DayColumn(c), v, system); e != nil {
				e.Field = at + " " + e.Field
				errs = append(errs, *e)
			}
		}
		if low, high := row.Values[DayLow], row.Values[DayHigh]; low.Given && high.Given && low.Value > high.Value {
			kind := unit.KindTemperature
			errs = append(errs, Error{at, "low " + kind.Figure(low.Value, system) + " above high " + kind.Figure(high.Value, system) + " " + kind.Symbol(system), "a low that is not above its high", "The two may have changed places."})
		}
	}
	return errs
}

// CheckDay says what is wrong with one figure of a day, or nil.
func CheckDay(c DayColumn, v unit.Optional[float64], system unit.System) *Error {
	col := &DayColumns[c]
	if !v.Given || v.Value >= col.Low && v.Value <= col.High && (c != DayFeel && c != DayStage || v.Value == math.Trunc(v.Value)) {
		return nil
	}
	allowed := col.Kind.Figure(col.Low, system) + " to " + col.Kind.Figure(col.High, system)
	value := col.Kind.Figure(v.Value, system)
	if symbol := col.Kind.Symbol(system); symbol != "" {
		allowed, value = allowed+" "+symbol, value+" "+symbol
	}
	return &Error{col.Name, value, allowed, col.Mend}
}

// separated cuts text at spaces, tabs, commas, semicolons and line ends.
func separated(text string) []string {
	return strings.FieldsFunc(text, func(r rune) bool {
		return r == ' ' || r == '\t' || r == '\n' || r == '\r' || r == ';' || r == ',' || r == '\u00a0'
	})
}

// ReadList reads one figure a day, in a row or a column, in the reader's units. Degree
// signs and the unit's letter may stand behind a figure.
func ReadList(text string, c DayColumn, system unit.System) (values []float64, errs Errors) {
	col := &DayColumns[c]
	for i, word := range separated(text) {
		v, err := col.Kind.Read(strings.TrimRight(word, "°FCfc"), system)
		if err != nil {
			errs = append(errs, Error{col.Label + ", figure " + strconv.Itoa(i+1), quote(word), "plain numbers, one for each day", "Take out words and headings."})
			continue
		}
		if e := CheckDay(c, unit.Known(v), system); e != nil {
			e.Field, e.Value = col.Label+", figure "+strconv.Itoa(i+1), quote(word)
			errs = append(errs, *e)
		}
		values = append(values, v)
	}
	return values, errs
}

// ReadSheet reads rows of a table: a line that names its columns, one of them the date,
// and a line for each day, cut by tabs, semicolons, commas or spaces, in the reader's
// units. An empty cell is not given; a column that it does not know is left out. All is
// read or nothing: errors name line and column.
func ReadSheet(text string, system unit.System) (rows []DayRow, errs Errors) {
	var columns []int // of the sheet; −1 the date, −2 unknown
	wrong := func(line int, what, value, allowed, mend string) {
		errs = append(errs, Error{"line " + strconv.Itoa(line) + what, quote(value), allowed, mend})
	}
	line := 0
	for text := range strings.Lines(text) {
		line++
		text = strings.TrimRight(text, " \r\n")
		if strings.TrimSpace(text) == "" {
			continue
		}
		cells := cellsOf(text)
		if columns == nil {
			known, dated := 0, false
			for _, cell := range cells {
				c := columnNamed(cell)
				columns = append(columns, c)
				dated = dated || c == -1
				if c >= 0 {
					known++
				}
			}
			if !dated || known == 0 {
				return nil, Errors{{"line 1", quote(text), "names of columns, such as: date high low rain minutes", "Put a line with the names above the figures."}}
			}
			continue
		}
		var row DayRow
		dated := false
		for i, cell := range cells {
			switch {
			case i >= len(columns):
				wrong(line, "", cell, strconv.Itoa(len(columns))+" cells, as in the first line", "Take the extra cell out.")
			case columns[i] == -1:
				day, err := readDate(cell, system)
				if err != nil {
					wrong(line, ", date", cell, "a day of the calendar, such as 2027-06-01", "Write the year first.")
				}
				row.On, dated = day, true
			case columns[i] >= 0 && cell != "" && cell != "-" && cell != "–":
				col := &DayColumns[columns[i]]
				v, err := col.Kind.Read(cell, system)
				if err != nil {
					wrong(line, ", "+col.Label, cell, "a plain number", "Leave the cell empty where nothing was read.")
					continue
				}
				row.Values[columns[i]] = unit.Known(v)
			}
		}
		if !dated {
			wrong(line, "", text, "a date in each line", "Fill in the date.")
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 && errs == nil {
		errs = Errors{{"days", "no rows", "a line for each day", "Paste the lines of your sheet, names first."}}
	}
	if errs == nil {
		errs = CheckDays(rows, system)
	}
	if errs != nil {
		return nil, errs
	}
	return rows, nil
}

// cellsOf cuts a line where it is cut most strictly: at tabs, else at semicolons, else at
// commas, else at spaces.
func cellsOf(line string) []string {
	for _, mark := range [...]string{"\t", ";", ","} {
		if strings.Contains(line, mark) {
			cells := strings.Split(line, mark)
			for i := range cells {
				cells[i] = strings.Trim(cells[i], " \"")
			}
			return cells
		}
	}
	return strings.Fields(line)
}

func columnNamed(cell string) int {
	word, _, _ := strings.Cut(strings.ToLower(strings.TrimSpace(cell))+" ", " ")
	word, _, _ = strings.Cut(word, "(")
	if word == "date" || word == "day" {
		return -1
	}
	for c := range DayColumns {
		if col := &DayColumns[c]; word != "" && (word == col.Name || strings.Contains(col.Words, " "+word+" ")) {
			return c
		}
	}
	return -2
}

// readDate reads YYYY-MM-DD, and in US units also month/day/year.
func readDate(text string, system unit.System) (unit.Date, error) {
	if parts := strings.Split(text, "/"); system == unit.US && len(parts) == 3 && len(parts[2]) == 4 {
		for i := range 2 {
			if len(parts[i]) == 1 {
				parts[i] = "0" + parts[i]
			}
		}
		text = parts[2] + "-" + parts[0] + "-" + parts[1]
	}
	return unit.ParseDate(text)
}
