// Package soil reads the measured soil temperatures that tests hold the model to.
// Nothing but tests imports it.
package soil

import (
	"bufio"
	"bytes"
	"compress/gzip"
	_ "embed"
	"math"
	"strconv"
	"strings"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

//go:embed stations-2020.csv.gz
var packed []byte

// Days of the leap year 2020.
const Days = 366

// Station is a station of the US Climate Reference Network: one year of air and of
// soil under what grows there. Missing days of soil are NaN; those of the air are
// bridged by straight lines.
type Station struct {
	ID, Name         string
	East             bool // of 97° W
	Minimum, Maximum [Days]float64
	Soil             [2][Days]float64 // at 5 and 10 cm, daily means
	// Monthly climates of the place: the means of 2020 itself, and the normals of
	// 1981–2010 and 1991–2020 of the station of the normals that stands beside it.
	Of2020, Old, New weather.Normals
	// Rain of the months, mm: that of 2020, and the normal of 1981–2010; not all stations
	// have them.
	Rain2020, RainNormal unit.Optional[[12]float64]
}

// Fitted tells whether the model's constants were fitted on a station: two of
// three in the order of their numbers. The third was never used.
func Fitted(place int) bool { return place%3 != 2 }

// MonthOf gives the month (0–11) of a day of 2020.
func MonthOf(day int) int {
	for m, n := range [12]int{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
		if day < n {
			return m
		}
		day -= n
	}
	panic("not a day of 2020")
}

// Stations are all stations, in the order of their numbers.
func Stations() (all []*Station) {
	unzipped, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		panic(err)
	}
	lines := bufio.NewScanner(unzipped)
	var s *Station
	var normals []*weather.Normals
	day := 0
	for lines.Scan() {
		if strings.HasPrefix(lines.Text(), "#") {
			continue
		}
		fields := strings.Split(lines.Text(), ",")
		switch len(fields) {
		case 7:
			s = &Station{ID: fields[0], Name: fields[2] + ", " + fields[3], East: number(fields[5]) > -97}
			all, day = append(all, s), 0
			for _, n := range [...]*weather.Normals{&s.Of2020, &s.Old, &s.New} {
				n.Latitude, n.Height = unit.Degrees(number(fields[4])), unit.Metres(number(fields[6]))
			}
			normals = []*weather.Normals{&s.Old, &s.New}
		case 24:
			if len(normals) == 0 {
				s.rain(fields)
				continue
			}
			for m := range 12 {
				normals[0].Minimum[m] = unit.FromFahrenheit(number(fields[m]) / 10)
				normals[0].Maximum[m] = unit.FromFahrenheit(number(fields[12+m]) / 10)
			}
			normals = normals[1:]
		default:
			s.Maximum[day], s.Minimum[day] = number(fields[0])/10, number(fields[1])/10
			s.Soil[0][day], s.Soil[1][day] = number(fields[2])/10, number(fields[3])/10
			day++
		}
	}
	for _, s := range all {
		s.months()
		bridge(&s.Minimum)
		bridge(&s.Maximum)
	}
	return all
}

// rain reads the months' rain: of 2020 in tenths of mm, of the normals in hundredths of
// an inch.
func (s *Station) rain(fields []string) {
	for k, rain := range [...]*unit.Optional[[12]float64]{&s.Rain2020, &s.RainNormal} {
		if fields[12*k] == "" {
			continue
		}
		rain.Given = true
		for m := range 12 {
			rain.Value[m] = number(fields[12*k+m]) * [...]float64{0.1, 0.254}[k]
		}
	}
}

func number(text string) float64 {
	if text == "" {
		return math.NaN()
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic(err)
	}
	return v
}

// months fills the monthly means of the days that have both extremes.
func (s *Station) months() {
	var low, high, n [12]float64
	for d := range Days {
		if m := MonthOf(d); !math.IsNaN(s.Minimum[d] + s.Maximum[d]) {
			low[m] += s.Minimum[d]
			high[m] += s.Maximum[d]
			n[m]++
		}
	}
	for m := range 12 {
		s.Of2020.Minimum[m], s.Of2020.Maximum[m] = unit.Celsius(low[m]/n[m]), unit.Celsius(high[m]/n[m])
	}
}

// bridge fills missing days by straight lines.
func bridge(v *[Days]float64) {
	last := -1
	for i := range v {
		if math.IsNaN(v[i]) {
			continue
		}
		for j := last + 1; j < i; j++ {
			v[j] = v[i]
			if last >= 0 {
				v[j] = v[last] + (v[i]-v[last])*float64(j-last)/float64(i-last)
			}
		}
		last = i
	}
	for j := last + 1; j < Days; j++ {
		v[j] = v[last]
	}
}
