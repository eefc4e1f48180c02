// Package normals reads the climate normals of 7,501 stations of the United States and
// 4,860 of other countries, and finds the one nearest to a place. The table is data beside the program: the host
// build embeds it ([Embedded]), the page loads the same bytes as a file.
//
// Source: US NOAA National Centers for Environmental Information, 1981–2010
// U.S. Climate Normals. A work of the US government: public domain. Frost days and
// rain of the same stations, and their normals of 1991–2020, are a table of their own,
// which is laid beside them ([Table.Beside]). Stations elsewhere are tables of the same
// kind that are joined to these ([Table.Join]): World Meteorological Organization,
// Climatological Standard Normals 1991–2020 (NCEI accession 0253808, doi 10.25921/800j-vn07),
// published for public access.
package normals

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/table/series"
	"filmfurrow/rules/unit"
)

// Station is one row of the normals.
type Station struct {
	ID, Name, State, Zip, PostOffice string
	Latitude, Longitude              unit.Degrees
	Elevation                        unit.Metres
	Flag                             byte                    // weakest completeness flag: C, S, R, P or Q
	Older, Newer                     unit.Optional[Extremes] // 1981–2010 and 1991–2020
	Estimated                        bool                    // the newer ones, from the changes of stations around it
	Frost                            unit.Optional[FrostDays]
	Rain                             unit.Optional[[12]float64] // mm a month, rain and melted snow
	Vapour                           unit.Optional[[12]float64] // kPa, mean actual pressure
	Wind                             unit.Optional[[12]float64] // m/s at 2 m
	Sun                              unit.Optional[[12]float64] // hours of sunshine a month
	Row                              string                     // as it stands in the tables
}

// Extremes are twelve normal minima and maxima, January first.
type Extremes struct{ Min, Max [12]unit.Celsius }

// EstimateMissed is the root mean square error of a month of 1991–2020 that was
// estimated from the changes of the ten nearest stations, each of those that published
// both left out in turn; Untouched is that of the older month in its place. A test works
// both out again.
const EstimateMissed, Untouched = unit.CelsiusDegrees(0.42), unit.CelsiusDegrees(0.59)

// FrostDays are the published days of a station's frost of 32 °F, as days of the
// year from 1 to 365. Each is named by the share of years, in percent, with a frost
// beyond it: after it in spring, before it in autumn. Where frost is rare they lie on
// either side of the new year.
type FrostDays struct{ Spring50, Spring90, Autumn50, Autumn90 int }

// Label names the station as the page shows it.
func (s *Station) Label() string { return s.Name + ", " + s.State }

// Table is the list of stations. It keeps the texts and where each row begins, and
// reads a row when it is asked for: thousands of read rows would be minded by the
// garbage collector of a page that needs one.
type Table struct {
	parts   []part
	Soils   series.Table // that a case may name beside its place; empty where they are looked up apart
	Partial bool         // stations of other countries are yet to be joined: it does not know which is nearest
}

// part is one text of the table. Texts are never put together: a page has no room for a
// second copy of them.
type part struct {
	text   string
	begins []uint32
	beside string // what else is known of its stations
}

// columns are those of the normals; a row that a device keeps has those of the table
// beside it after them.
const columns, besideColumns, worldColumns = 9 + 24, 4 + 12 + 1 + 24, 4 * 12

// abroad tells a station of the world's table by its id: W and the digit of its region.
func abroad(id string) bool { return len(id) > 1 && id[0] == 'W' && id[1] >= '0' && id[1] <= '9' }

// ErrTable says that the bytes are not the normals table.
var ErrTable = errors.New("the table of climate normals is damaged")

// Parse checks every row of the table.
func Parse(text string) (*Table, error) {
	t, err := Open(text)
	if err != nil {
		return nil, err
	}
	p := &t.parts[0]
	for _, at := range p.begins {
		if _, err := parseLine(lineAt(p.text, at)); err != nil {
			return nil, err
		}
	}
	return t, nil
}

// Open takes a table whose rows were checked when the site was built: it looks at the number
// of their cells alone, since reading all would stop a slow page for a second. A row that is
// damaged all the same is none.
func Open(text string) (*Table, error) {
	p := part{text: text}
	at := 0
	for line := range strings.Lines(text) {
		if row := rowOf(line); row != "" && row[0] != '#' {
			if strings.Count(row, ",") < columns-1 {
				return nil, ErrTable
			}
			p.begins = append(p.begins, uint32(at))
		}
		at += len(line)
	}
	if len(p.begins) == 0 {
		return nil, ErrTable
	}
	return &Table{parts: []part{p}}, nil
}

// Beside lays the table of frost days, rain and newer normals beside the normals, after
// checking each of its rows.
func (t *Table) Beside(text string) error {
	for line := range strings.Lines(text) {
		row := rowOf(line)
		if row == "" || row[0] == '#' {
			continue
		}
		id, cells, _ := strings.Cut(row, ",")
		if err := (&Station{ID: id}).readBeside(cells, new([24]int)); err != nil {
			return err
		}
	}
	t.OpenBeside(text)
	return nil
}

// OpenBeside lays a table that was checked when the site was built. A row that is damaged
// all the same tells nothing.
func (t *Table) OpenBeside(text string) {
	for i := range t.parts {
		t.parts[i].beside = text
	}
}

// Join is a table with the stations of both.
func (t *Table) Join(other *Table) *Table {
	return &Table{parts: slices.Concat(t.parts, other.parts), Soils: t.Soils}
}

func rowOf(line string) string { return strings.TrimRight(line, "\r\n") }

func lineAt(text string, at uint32) string {
	line, _, _ := strings.Cut(text[at:], "\n")
	return rowOf(line)
}

// station reads the row at a place of the text, and what stands beside it; nil where the
// row is damaged.
func (p *part) station(at uint32) *Station {
	row := lineAt(p.text, at)
	id, _, _ := strings.Cut(row, ",")
	if _, after, found := strings.Cut(p.beside, "\n"+id+","); found {
		cells, _, _ := strings.Cut(after, "\n")
		if s, err := parseLine(row + "," + rowOf(cells)); err == nil {
			return &s
		}
	}
	s, err := parseLine(row)
	if err != nil {
		return nil
	}
	return &s
}

// farthest, hottest and wettest bound what a row may hold, since the row that a device
// keeps is anybody's: degrees, degrees, metres; tenths of °F; hundredths of an inch.
var farthest = [3]float64{90, 180, 9000}

const hottest, wettest = 1500, 12000

// cut reads the first cells of a row and gives what follows them; false where there
// are not as many.
func cut(row string, cell []string) (rest string, ok bool) {
	for i := range cell {
		before, after, found := strings.Cut(row, ",")
		if !found && i != len(cell)-1 {
			return "", false
		}
		cell[i], row = before, after
	}
	return row, true
}

func parseLine(line string) (Station, error) {
	var cell [columns]string
	rest, ok := cut(line, cell[:])
	if !ok {
		return Station{}, ErrTable
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
	var months [24]int
	if given, ok := whole(cell[9:], months[:], -hottest, hottest); !given || !ok {
		return Station{}, ErrTable
	}
	if abroad(s.ID) {
		s.Newer = unit.Known(extremes(&months))
	} else {
		s.Older = unit.Known(extremes(&months))
	}
	if rest == "" {
		return s, nil
	}
	return s, s.readBeside(rest, &months)
}

func extremes(months *[24]int) (e Extremes) {
	for m := range 12 {
		e.Min[m], e.Max[m] = tenths(months[m]), tenths(months[12+m])
	}
	return e
}

// whole reads whole numbers; cells may be empty all together.
func whole(cell []string, to []int, low, high int) (given, ok bool) {
	for i, text := range cell {
		if (text == "") != (cell[0] == "") {
			return false, false
		}
		if text == "" {
			continue
		}
		n, err := strconv.Atoi(text)
		if err != nil || n < low || n > high {
			return false, false
		}
		to[i] = n
	}
	return cell[0] != "", true
}

// readBeside reads the cells of frost days, rain and change beside the months of the
// normals. Each group may be empty as a whole.
func (s *Station) readBeside(cells string, months *[24]int) error {
	if abroad(s.ID) {
		return s.readWorld(cells)
	}
	var cell [besideColumns]string
	if rest, ok := cut(cells, cell[:]); !ok || rest != "" {
		return ErrTable
	}
	var days [4]int
	var rain [12]int
	var change [24]int
	frosts, ok := whole(cell[:4], days[:], 1, 365)
	rains, ok2 := whole(cell[4:16], rain[:], 0, wettest)
	changed, ok3 := whole(cell[17:], change[:], -hottest, hottest)
	if !ok || !ok2 || !ok3 {
		return ErrTable
	}
	if changed {
		for i := range change {
			change[i] += months[i]
		}
		s.Newer, s.Estimated = unit.Known(extremes(&change)), cell[16] != "P"
	}
	if frosts {
		s.Frost = unit.Known(FrostDays{days[0], days[1], days[2], days[3]})
	}
	if rains {
		s.Rain.Given = true
		for m, n := range rain {
			s.Rain.Value[m] = math.Round(float64(n)*2.54) / 10
		}
	}
	return nil
}

// tenths turns tenths of °F into °C, rounded to 0.01 °C so that every
// build prints the same figure.
func tenths(f int) unit.Celsius {
	return unit.Celsius(math.Round((float64(f)/10-32)/1.8*100) / 100)
}

// at2m is the wind at 2 m over that at a gauge of 10 m (FAO-56 equation 47).
const at2m = 0.748

// readWorld reads the cells beside a station of the world's table.
func (s *Station) readWorld(cells string) error {
	var cell [worldColumns]string
	if rest, ok := cut(cells, cell[:]); !ok || rest != "" {
		return ErrTable
	}
	for i, group := range [...]struct {
		to    *unit.Optional[[12]float64]
		most  int
		scale float64
	}{{&s.Rain, 3000, 1}, {&s.Vapour, 600, 0.01}, {&s.Wind, 250, at2m / 10}, {&s.Sun, 744, 1}} {
		var months [12]int
		given, ok := whole(cell[12*i:12*i+12], months[:], 0, group.most)
		if !ok {
			return ErrTable
		}
		group.to.Given = given
		for m := range months {
			group.to.Value[m] = math.Round(float64(months[m])*group.scale*1000) / 1000
		}
	}
	return nil
}

// All reads the stations in the order of the files.
func (t *Table) All() (list []Station) {
	for i := range t.parts {
		p := &t.parts[i]
		for _, at := range p.begins {
			if s := p.station(at); s != nil {
				list = append(list, *s)
			}
		}
	}
	return list
}

// ByID finds a station, or nil.
func (t *Table) ByID(id string) *Station {
	for i := range t.parts {
		p := &t.parts[i]
		for _, at := range p.begins {
			if rest, found := strings.CutPrefix(p.text[at:], id); found && strings.HasPrefix(rest, ",") {
				return p.station(at)
			}
		}
	}
	return nil
}

// doubtfulAway is how much farther a station may lie whose figures are sound, and
// heightAway how far away a metre of height counts, m: our judgment.
const doubtfulAway, heightAway = 10000, 200

// Nearest finds the station with the least great-circle distance, and that
// distance; one at another height than the field's, where that is known, or of doubtful
// figures counts as if it lay farther.
func (t *Table) Nearest(latitude, longitude unit.Degrees, height unit.Optional[unit.Metres]) (*Station, unit.Metres) {
	var best *part
	var from uint32
	least, score := 0.0, math.Inf(1)
	var cell [9]string
	for i := range t.parts {
		p := &t.parts[i]
		for _, at := range p.begins {
			cut(p.text[at:], cell[:])
			lat, err := strconv.ParseFloat(cell[5], 64)
			if math.Abs(lat-float64(latitude))*aDegree > score { // most lie too far north or south, whatever else holds
				continue
			}
			lon, err2 := strconv.ParseFloat(cell[6], 64)
			d := haversine(latitude, longitude, unit.Degrees(lat), unit.Degrees(lon))
			counts := d
			if cell[8] == "P" || cell[8] == "Q" {
				counts += doubtfulAway
			}
			if height.Given {
				stands, _ := strconv.ParseFloat(cell[7], 64)
				counts += heightAway * math.Abs(stands-float64(height.Value))
			}
			if counts < score && err == nil && err2 == nil {
				best, from, least, score = p, at, d, counts
			}
		}
	}
	if best == nil {
		return nil, 0
	}
	return best.station(from), unit.Metres(least)
}

// aDegree is less than a degree of latitude, m.
const aDegree = 111000

// haversine is the great-circle distance on a sphere of 6,371 km.
func haversine(lat1, lon1, lat2, lon2 unit.Degrees) float64 {
	const radian = math.Pi / 180
	a1, a2 := float64(lat1)*radian, float64(lat2)*radian
	dLat, dLon := a2-a1, (float64(lon2)-float64(lon1))*radian
	h := math.Sin(dLat/2)*math.Sin(dLat/2) + math.Cos(a1)*math.Cos(a2)*math.Sin(dLon/2)*math.Sin(dLon/2)
	return 2 * 6371000 * math.Asin(math.Sqrt(math.Min(1, h)))
}

// Find lists up to limit stations whose name, post office or zip code begins,
// word by word, with what was typed. A state's two letters or a country may follow. An
// exact zip comes first, then names in the order of the file. A zip that no station has
// is found as a place ([Places.Find]).
func (t *Table) Find(typed string, limit int) []*Station {
	words := strings.Fields(strings.ToUpper(strings.ReplaceAll(typed, ",", " ")))
	if len(words) == 0 {
		return nil
	}
	type found struct {
		p  *part
		at uint32
	}
	var first, second []found
	for i := range t.parts {
		p := &t.parts[i]
		scan(p.text, words[0], func(start, end int) bool {
			var cell [5]string
			if cut(p.text[start:end], cell[:]); p.text[start] == '#' {
				return true
			}
			switch name, state, zip, postOffice := cell[1], cell[2], cell[3], cell[4]; {
			case zip != "" && zip == words[0]:
				first = append(first, found{p, uint32(start)})
			case matches(words, name, state, zip, postOffice):
				second = append(second, found{p, uint32(start)})
			}
			return len(first) < limit && (len(second) < limit || words[0][0] <= '9')
		})
	}
	var list []*Station
	for _, f := range append(first, second...) {
		if s := f.p.station(f.at); s != nil && len(list) < limit {
			list = append(list, s)
		}
	}
	return list
}

// scan goes through the rows that a word of capitals stands in, for as long as it is told
// to. Plain letters may be small in the text: a second text of capitals would cost a page
// as much memory again.
func scan(text, word string, row func(start, end int) bool) {
	for at := 0; at+len(word) <= len(text); at++ {
		if c := text[at]; c != word[0] && (c < 'a' || c > 'z' || c-'a'+'A' != word[0]) || !startsUpper(text[at:], word) {
			continue
		}
		start := strings.LastIndexByte(text[:at], '\n') + 1
		end := len(text)
		if length := strings.IndexByte(text[start:], '\n'); length >= 0 {
			end = start + length
		}
		if !row(start, end) {
			return
		}
		at = end
	}
}

func matches(words []string, name, state, zip, postOffice string) bool {
	for _, w := range words {
		if !begins(name, w) && !begins(postOffice, w) && !(len(state) == len(w) && startsUpper(state, w)) && (len(state) == 2 || !begins(state, w)) && !strings.HasPrefix(zip, w) {
			return false
		}
	}
	return true
}

// startsUpper tells whether a name, its plain letters as capitals, starts with w.
// strings.EqualFold would bring tables of letters into the page's program, 2 kB of it.
func startsUpper(name, w string) bool {
	if len(name) < len(w) {
		return false
	}
	for i := range len(w) {
		c := name[i]
		if 'a' <= c && c <= 'z' {
			c -= 'a' - 'A'
		}
		if c != w[i] {
			return false
		}
	}
	return true
}

// begins tells whether one word of the name begins with w.
func begins(name, w string) bool {
	for {
		if startsUpper(name, w) {
			return true
		}
		_, after, found := strings.Cut(name, " ")
		if !found {
			return false
		}
		name = after
	}
}
