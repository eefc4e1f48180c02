package unit

import (
	"errors"
	"math"
	"strconv"
	"strings"
)

// System is the reader's choice of units.
type System uint8

// The two systems.
const (
	Metric System = iota
	US
)

// measure says how one kind is shown in one system:
// shown = SI × scale + shift, rounded to decimals.
type measure struct {
	symbol   string
	scale    float64
	shift    float64
	decimals int
}

// measures is the one place where SI meets the reader's units.
// Index: kind, then system.
var measures = [...][2]measure{
	KindNumber:        {{"", 1, 0, 2}, {"", 1, 0, 2}},
	KindCount:         {{"", 1, 0, 0}, {"", 1, 0, 0}},
	KindTemperature:   {{"°C", 1, 0, 0}, {"°F", 1.8, 32, 0}},
	KindWarming:       {{"°C", 1, 0, 1}, {"°F", 1.8, 0, 0}},
	KindShort:         {{"cm", 100, 0, 0}, {"in", 1 / MetresPerInch, 0, 1}},
	KindLong:          {{"m", 1, 0, 1}, {"ft", 1 / MetresPerFoot, 0, 0}},
	KindThickness:     {{"µm", 1, 0, 0}, {"mil", 1 / MicrometresPerMil, 0, 2}},
	KindFlow:          {{"L/h", 1, 0, 0}, {"gpm", 1 / (LitresPerGallon * 60), 0, 1}},
	KindTapeFlow:      {{"L/h per 100 m", 1, 0, 0}, {"gpm per 100 ft", MetresPerFoot / (LitresPerGallon * 60), 0, 2}},
	KindPressure:      {{"kPa", 1, 0, 0}, {"psi", 1 / KilopascalsPerPSI, 0, 1}},
	KindPower:         {{"kW", 1, 0, 0}, {"hp", 1 / KilowattsPerHP, 0, 0}},
	KindMass:          {{"kg", 1, 0, 1}, {"lb", 1 / KilogramsPerPound, 0, 0}},
	KindDepth:         {{"mm", 1, 0, 1}, {"in", 0.001 / MetresPerInch, 0, 2}},
	KindVolume:        {{"L", 1, 0, 0}, {"gal", 1 / LitresPerGallon, 0, 0}},
	KindSalt:          {{"dS/m", 1, 0, 1}, {"dS/m", 1, 0, 1}},
	KindShare:         {{"%", 1, 0, 0}, {"%", 1, 0, 0}},
	KindDays:          {{"days", 1, 0, 0}, {"days", 1, 0, 0}},
	KindHours:         {{"h", 1, 0, 1}, {"h", 1, 0, 1}},
	KindMinutes:       {{"min", 1, 0, 0}, {"min", 1, 0, 0}},
	KindSpeed:         {{"km/h", 3.6, 0, 0}, {"mph", 3600 / MetresPerMile, 0, 0}},
	KindDensity:       {{"plants per m²", 1, 0, 0}, {"plants per 100 ft²", 100 * MetresPerFoot * MetresPerFoot, 0, 0}},
	KindConcentration: {{"mg/L", 1, 0, 1}, {"mg/L", 1, 0, 1}},
	KindRadiation:     {{"MJ/m² a day", 1, 0, 1}, {"MJ/m² a day", 1, 0, 1}},
	KindHead:          {{"m", 1, 0, 1}, {"ft", 1 / MetresPerFoot, 0, 0}},
	KindAngle:         {{"°", 1, 0, 2}, {"°", 1, 0, 2}},
	KindDate:          {{"", 1, 0, 0}, {"", 1, 0, 0}},
	KindYearDay:       {{"", 1, 0, 0}, {"", 1, 0, 0}},
	KindWord:          {{"", 1, 0, 0}, {"", 1, 0, 0}},
	KindPer100:        {{"L per 100 m", 1, 0, 0}, {"gal per 100 ft", MetresPerFoot / LitresPerGallon, 0, 1}},
	KindPumpPower:     {{"kW", 1, 0, 2}, {"hp", 1 / KilowattsPerHP, 0, 2}},
	KindWaterSpeed:    {{"m/s", 1, 0, 2}, {"ft/s", 1 / MetresPerFoot, 0, 1}},
	KindSmallFlow:     {{"L/h", 1, 0, 2}, {"gal/h", 1 / LitresPerGallon, 0, 3}},
	KindFineShare:     {{"%", 1, 0, 1}, {"%", 1, 0, 1}},
	KindFineDepth:     {{"mm", 1, 0, 2}, {"in", 0.001 / MetresPerInch, 0, 3}},
	KindFineMass:      {{"kg", 1, 0, 3}, {"lb", 1 / KilogramsPerPound, 0, 3}},
	KindFineVolume:    {{"L", 1, 0, 2}, {"gal", 1 / LitresPerGallon, 0, 2}},
	KindBore:          {{"mm", 1000, 0, 0}, {"in", 1 / MetresPerInch, 0, 3}},
	KindRoll:          {{"m", 1, 0, 1}, {"in", 1 / MetresPerInch, 0, 1}},
	KindRate:          {{"kg/ha", 1, 0, 2}, {"lb/acre", SquareMetresPerAcre / 10000 / KilogramsPerPound, 0, 2}},
	KindStrength:      {{"kg/L", 1, 0, 3}, {"lb/gal", LitresPerGallon / KilogramsPerPound, 0, 2}},
	KindPriceLong:     {{"per m", 1, 0, 4}, {"per ft", MetresPerFoot, 0, 4}},
	KindBedRate:       {{"m of bed per ha", 1, 0, 0}, {"ft of bed per acre", SquareMetresPerAcre / 10000 / MetresPerFoot, 0, 0}},
	KindPlantRate:     {{"plants per ha", 1, 0, 0}, {"plants per acre", SquareMetresPerAcre / 10000, 0, 0}},
	KindArea:          {{"ha", 1e-4, 0, 1}, {"acres", 1 / SquareMetresPerAcre, 0, 1}},
	KindFabric:        {{"g/m²", 1, 0, 0}, {"oz per square yard", 1 / GramsPerSquareYardOunce, 0, 2}},
	KindSpread:        {{"g/m²", 1000, 0, 0}, {"lb per 100 ft²", 100 * MetresPerFoot * MetresPerFoot / KilogramsPerPound, 0, 2}},
	KindPer100Mass:    {{"kg per 100 m", 1, 0, 2}, {"lb per 100 ft", MetresPerFoot / KilogramsPerPound, 0, 2}},
	KindRough:         {{"m", 1, 0, -1}, {"ft", 1 / MetresPerFoot, 0, -1}},
	KindRoughMass:     {{"kg", 1, 0, 0}, {"lb", 1 / KilogramsPerPound, 0, 0}},
	KindRoughVolume:   {{"L", 1, 0, 0}, {"gal", 1 / LitresPerGallon, 0, 0}},
	KindDistance:      {{"km", 0.001, 0, 0}, {"mi", 1 / MetresPerMile, 0, 0}},
	KindPriceMass:     {{"per t", 1, 0, 2}, {"per US ton", 2 * KilogramsPerPound, 0, 2}},
}

// Symbol is the unit that stands behind a number of this kind.
func (k Kind) Symbol(system System) string { return measures[k][system].symbol }

// Step is the smallest difference that is shown, in SI.
func (k Kind) Step(system System) float64 {
	m := measures[k][system]
	return math.Pow10(-m.decimals) / m.scale
}

// Shown turns an SI value into the number of the system, unrounded.
func (k Kind) Shown(si float64, system System) float64 {
	m := measures[k][system]
	return si*m.scale + m.shift
}

// Figure prints the number alone, rounded to the shown step.
func (k Kind) Figure(si float64, system System) string {
	return group(trimmed(k.Shown(si, system), measures[k][system].decimals))
}

// sold gives the round figure of the metric trade in place of a whole one of the US trade:
// film of 20 µm for 0.75 mil, 30 for 1.25, 40 for 1.5, tape of 200 µm for 8, and pressures
// of 70 kPa for 10 psi, 200 for 30.
func (k Kind) sold(si float64) float64 {
	for _, goods := range [...]struct {
		kind       Kind
		si, figure float64
	}{{KindThickness, 0.75 * MicrometresPerMil, 20}, {KindThickness, 1.25 * MicrometresPerMil, 30}, {KindThickness, 1.5 * MicrometresPerMil, 40},
		{KindThickness, 8 * MicrometresPerMil, 200}, {KindThickness, 10 * MicrometresPerMil, 250},
		{KindPressure, 10 * KilopascalsPerPSI, 70}, {KindPressure, 30 * KilopascalsPerPSI, 200}} {
		if k == goods.kind && math.Abs(si-goods.si) < 0.04 {
			return goods.figure
		}
	}
	return si
}

// longMinutes is the longest time that is told in minutes: four hours.
const longMinutes = 240

// In prints a quantity with its unit. A difference or share that is not zero
// but below the shown step says "less than", never 0.
func (q Quantity) In(system System) string {
	if q.along && system == Metric {
		q.SI, q.To = q.SI/MetresPerFoot, q.To/MetresPerFoot
	}
	switch q.Kind {
	case KindWord:
		return q.Word
	case KindDate:
		return Date(q.SI).In(system)
	case KindYearDay:
		return Date(q.SI).dayIn(system)
	case KindDays:
		return plural(q.SI, "day", "days")
	case KindMinutes:
		if max(q.SI, q.To) > longMinutes {
			q.Kind, q.SI, q.To = KindHours, q.SI/60, q.To/60
		}
	}
	m := measures[q.Kind][system]
	if low, high := q.Kind.said(q.SI, system), q.Kind.said(q.To, system); q.Range && low != high {
		return withSymbol(low+" to "+high, m.symbol)
	}
	shown := math.Abs(q.SI*m.scale + m.shift)
	step := math.Pow10(-m.decimals)
	if q.Kind != KindTemperature && shown > 0 && shown < step/2 {
		return withSymbol("less than "+trimmed(step, m.decimals), m.symbol)
	}
	return withSymbol(q.Kind.said(q.SI, system), m.symbol)
}

// said prints the number as a sentence says it: inches as a rule shows them, whole from
// ten on and quarters below, rates and fine masses to two figures, whole from ten on, and rough
// ones to one figure or two: 1,200, 1,300 and so on, then 2,000, 2,500, 3,000.
func (k Kind) said(si float64, system System) string {
	if system == Metric {
		si = k.sold(si)
	}
	shown, decimals := k.Shown(si, system), measures[k][system].decimals
	switch {
	case k == KindShort && system == US && math.Abs(shown) >= 10:
		decimals = 0
	case k == KindShort && system == US:
		shown, decimals = math.Round(4*shown)/4, 2
	case (k == KindRoughMass || k == KindRoughVolume) && shown >= 10:
		step := math.Pow10(int(math.Floor(math.Log10(shown))))
		if shown/step < 2 {
			step /= 10
		} else {
			step /= 2
		}
		shown = step * math.Round(shown/step)
	case k == KindRate || k == KindFineMass:
		switch size := math.Abs(shown); {
		case size >= 10:
			decimals = 0
		case size >= 1:
			decimals = 1
		case size >= 0.1:
			decimals = 2
		}
	}
	return group(trimmed(shown, decimals))
}

func withSymbol(figure, symbol string) string {
	switch symbol {
	case "":
		return figure
	case "%", "°":
		return figure + symbol
	}
	return figure + " " + symbol
}

func plural(n float64, one, many string) string {
	text := group(trimmed(n, 0))
	if text == "1" {
		return text + " " + one
	}
	return text + " " + many
}

// trimmed rounds to decimals and drops zeros behind the point; −1 rounds to tens.
func trimmed(v float64, decimals int) string {
	if decimals < 0 {
		v, decimals = 10*math.Round(v/10), 0
	}
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if decimals > 0 {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// group sets a comma before each three digits, from 1,000 on.
func group(s string) string {
	sign := ""
	if strings.HasPrefix(s, "-") {
		sign, s = "−", s[1:]
	}
	whole, fraction, pointed := strings.Cut(s, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if pointed {
		whole += "." + fraction
	}
	return sign + whole
}

// ErrNumber says that a text is not a usable number.
var ErrNumber = errors.New("not a usable number")

// Read turns what a person typed, in the units of a system, into SI. It takes
// a point or a single comma for decimals, commas as thousands marks, points where a
// decimal comma follows them, and a minus sign; it refuses NaN, infinities and exponents.
// A comma before three last figures marks thousands, unless nothing but a zero is before it.
func (k Kind) Read(text string, system System) (float64, error) {
	s := strings.TrimSpace(text)
	s = strings.ReplaceAll(s, "−", "-")
	thousands, decimal := ",", strings.LastIndexByte(s, '.')
	if comma := strings.LastIndexByte(s, ','); comma > decimal && strings.Count(s, ",") == 1 &&
		(decimal >= 0 || len(s)-comma != 4 || strings.Trim(s[:comma], "-0") == "") {
		thousands, decimal = ".", comma
	}
	if decimal >= 0 {
		s = s[:decimal] + strings.Replace(s[decimal:], ",", ".", 1)
	}
	whole := s
	if decimal >= 0 {
		whole = s[:decimal]
	}
	groups := strings.Split(whole, thousands)
	for _, group := range groups[1:] {
		if len(group) != 3 {
			return 0, ErrNumber
		}
	}
	s = strings.Join(groups, "") + s[len(whole):]
	if s == "" || strings.ContainsFunc(s, notInNumber) {
		return 0, ErrNumber
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil || math.IsInf(v, 0) || math.IsNaN(v) {
		return 0, ErrNumber
	}
	m := measures[k][system]
	return dusted((v - m.shift) / m.scale), nil
}

func notInNumber(r rune) bool { return (r < '0' || r > '9') && r != '.' && r != '-' }

var monthNames = [...]string{"January", "February", "March", "April", "May", "June", "July",
	"August", "September", "October", "November", "December"}

// MonthName gives the English name of month 1–12.
func MonthName(month int) string { return monthNames[month-1] }

// In writes a date with its month spelled out, since 03/04 reads differently from
// country to country, and as the readers of a system do: 10 June 2027, or June 10, 2027.
func (d Date) In(system System) string {
	year, _, _ := d.Civil()
	if system == US {
		return d.dayIn(US) + ", " + strconv.Itoa(year)
	}
	return d.dayIn(Metric) + " " + strconv.Itoa(year)
}

// dayIn leaves the year out.
func (d Date) dayIn(system System) string {
	_, month, day := d.Civil()
	if system == US {
		return monthNames[month-1] + " " + strconv.Itoa(day)
	}
	return strconv.Itoa(day) + " " + monthNames[month-1]
}
