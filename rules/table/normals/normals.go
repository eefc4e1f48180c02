// Package normals reads the climate normals of 7,501 stations and finds the
// one nearest to a place. The table is data beside the program: the host
// build embeds it ([Embedded]), the page loads the same bytes as a file.
//
// Source: US NOAA National Centers for Environmental Information, 1981–2010
// U.S. Climate Normals. A work of the US government: public domain.
package normals

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/unit"
)

// Station is one row of the normals.
type Station struct {
	ID, Name, State, Zip, PostOffice string
	Latitude, Longitude              unit.Degrees
	Elevation                        unit.Metres
	Flag                             byte // weakest completeness flag: C, S, R, P or Q
	TMin, TMax                       [12]unit.Celsius
	Row                              string // as it stands in the table
}

// Label names the station as the page shows it.
func (s *Station) Label() string { return s.Name + ", " + s.State }

// Table is the list of stations, read once.
type Table struct {
	stations []Station
}

const columns = 9 + 24

// ErrTable says that the bytes are not the normals table.
var ErrTable = errors.New("the table of climate normals is damaged")

// Parse reads the table. It keeps the text and makes no copies of names.
func Parse(text string) (*Table, error) {
	t := &Table{stations: make([]Station, 0, 7600)}
	for line := range strings.Lines(text) {
		line = strings.TrimRight(line, "\r\n")
		if line == "" || line[0] == '#' {
			continue
		}
		s, err := parseLine(line)
		if err != nil {
			return nil, err
		}
		t.stations = append(t.stations, s)
	}
	if len(t.stations) == 0 {
		return nil, ErrTable
	}
	return t, nil
}

// farthest and hottest bound what a row may hold, since the row that a device
// keeps is anybody's: degrees, degrees, metres; tenths of °F.
var farthest = [3]float64{90, 180, 9000}

const hottest = 1500

func parseLine(line string) (Station, error) {
	var cell [columns]string
	rest := line
	for i := range cell {
		before, after, found := strings.Cut(rest, ",")
		if !found && i != columns-1 {
			return Station{}, ErrTable
		}
		cell[i], rest = before, after
	}
	s := Station{ID: cell[0], Name: cell[1], State: cell[2], Zip: cell[3], PostOffice: cell[4], Row: line}
	if cell[8] == "" {
		return Station{}, ErrTable
	}
	s.Flag = cell[8][0]
	var where [3]float64
	for i := range where {
		v, err := strconv.ParseFloat(cell[5+i], 64)
		if err != nil || !(math.Abs(v) <= farthest[i]) {
			return Station{}, ErrTable
		}
		where[i] = v
	}
	s.Latitude, s.Longitude, s.Elevation = unit.Degrees(where[0]), unit.Degrees(where[1]), unit.Metres(where[2])
	for m := range 12 {
		low, err1 := strconv.Atoi(cell[9+m])
		high, err2 := strconv.Atoi(cell[21+m])
		if err1 != nil || err2 != nil || max(low, high) > hottest || min(low, high) < -hottest {
			return Station{}, ErrTable
		}
		s.TMin[m] = tenths(low)
		s.TMax[m] = tenths(high)
	}
	return s, nil
}

// tenths turns tenths of °F into °C, rounded to 0.01 °C so that every
// build prints the same figure.
func tenths(f int) unit.Celsius {
	return unit.Celsius(math.Round((float64(f)/10-32)/1.8*100) / 100)
}

// All gives the stations in the order of the file. Do not change them.
func (t *Table) All() []Station { return t.stations }

// ByID finds a station, or nil.
func (t *Table) ByID(id string) *Station {
	for i := range t.stations {
		if t.stations[i].ID == id {
			return &t.stations[i]
		}
	}
	return nil
}

// Nearest finds the station with the least great-circle distance, and that
// distance.
func (t *Table) Nearest(latitude, longitude unit.Degrees) (*Station, unit.Metres) {
	best, least := -1, math.Inf(1)
	for i := range t.stations {
		if d := haversine(latitude, longitude, t.stations[i].Latitude, t.stations[i].Longitude); d < least {
			best, least = i, d
		}
	}
	if best < 0 {
		return nil, 0
	}
	return &t.stations[best], unit.Metres(least)
}

// haversine is the great-circle distance on a sphere of 6,371 km.
func haversine(lat1, lon1, lat2, lon2 unit.Degrees) float64 {
	const radian = math.Pi / 180
	a1, a2 := float64(lat1)*radian, float64(lat2)*radian
	dLat, dLon := a2-a1, (float64(lon2)-float64(lon1))*radian
	h := math.Sin(dLat/2)*math.Sin(dLat/2) + math.Cos(a1)*math.Cos(a2)*math.Sin(dLon/2)*math.Sin(dLon/2)
	return 2 * 6371000 * math.Asin(math.Sqrt(math.Min(1, h)))
}

// Find lists up to limit stations whose name, post office or zip code begins,
// word by word, with what was typed. A state's two letters may follow. An
// exact zip comes first, then names in the order of the file. For a zip code
// that no station has, the stations with the nearest numbers are listed: over
// the US census areas of 2022 the best of eight is half the time within 15 km,
// nine times in ten within 37 km (nearest station of all: 12 and 23 km).
func (t *Table) Find(typed string, limit int) []*Station {
	words := strings.Fields(strings.ToUpper(strings.ReplaceAll(typed, ",", " ")))
	if len(words) == 0 {
		return nil
	}
	var first, second []*Station
	for i := range t.stations {
		s := &t.stations[i]
		switch {
		case s.Zip != "" && s.Zip == words[0]:
			first = append(first, s)
		case matches(s, words):
			second = append(second, s)
		}
		if len(first) >= limit {
			break
		}
	}
	first = append(first, second...)
	if zip, err := strconv.Atoi(words[0]); err == nil && len(first) == 0 && len(words[0]) == 5 {
		first = t.nearZip(zip, limit)
	}
	if len(first) > limit {
		first = first[:limit]
	}
	return first
}

// nearZip lists the stations whose zip codes are nearest in number.
func (t *Table) nearZip(zip, limit int) (list []*Station) {
	away := func(s *Station) int {
		n, _ := strconv.Atoi(s.Zip)
		return max(n-zip, zip-n)
	}
	for i := range t.stations {
		s := &t.stations[i]
		if s.Zip == "" {
			continue
		}
		at := len(list)
		for at > 0 && away(list[at-1]) > away(s) {
			at--
		}
		if at < limit {
			list = slices.Insert(list, at, s)
			list = list[:min(len(list), limit)]
		}
	}
	return list
}

func matches(s *Station, words []string) bool {
	for _, w := range words {
		if !begins(s.Name, w) && !begins(s.PostOffice, w) && s.State != w && !strings.HasPrefix(s.Zip, w) {
			return false
		}
	}
	return true
}

// begins tells whether one word of the name begins with w.
func begins(name, w string) bool {
	upper := strings.ToUpper(name)
	for {
		if strings.HasPrefix(upper, w) {
			return true
		}
		_, after, found := strings.Cut(upper, " ")
		if !found {
			return false
		}
		upper = after
	}
}
