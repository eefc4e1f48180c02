package normals

import (
	"strconv"
	"strings"

	"filmfurrow/rules/unit"
)

// Spot is a place by its name or zip, from which the nearest station is looked for.
type Spot struct {
	Name                string
	Latitude, Longitude unit.Degrees
}

// Places are towns of the world and the middles of US zip areas: a table that is asked
// for when somebody searches. Contains data from GeoNames, CC BY 4.0; US Census Bureau,
// 2022 ZCTA Gazetteer, from weather-util-data 2.4.4 (ISC licence).
type Places struct{ text string }

// NewPlaces takes the table's text. Rows are read when they are found.
func NewPlaces(text string) Places {
	return Places{text}
}

// plain are letters that people type, each before the one that stands for it in the
// table's plain names.
const plain = "ÀAÁAÂAÃAÄAÅAÇCÈEÉEÊEËEÌIÍIÎIÏIÑNÒOÓOÔOÕOÖOØOÙUÚUÛUÜUÝYĂAĄAĆCČCĐDĘEĚEĞGİIŁLŃNŇNŐOŘRŚSŞSŠSŢTŤTŰUŮUŹZŻZŽZȘSȚT"

func plainly(typed string) string {
	var b strings.Builder
	for _, r := range strings.ToUpper(typed) {
		if letter := string(r); len(letter) > 1 {
			if _, after, ok := strings.Cut(plain, letter); ok {
				b.WriteByte(after[0])
				continue
			}
		}
		b.WriteRune(r)
	}
	return b.String()
}

// Find lists up to limit places, the largest first. Their names begin, word by word,
// with the words that were typed; a region or the two letters of a country may follow. A
// zip must be whole.
func (p *Places) Find(typed string, limit int) (list []Spot) {
	words := strings.Fields(plainly(strings.ReplaceAll(typed, ",", " ")))
	if len(words) == 0 || len(words[0]) < 2 || words[0][0] <= '9' && len(words[0]) != 5 {
		return nil
	}
	scan(p.text, words[0], func(start, end int) bool {
		var cell [6]string
		if _, ok := cut(p.text[start:end], cell[:]); !ok || p.text[start] == '#' || !matches(words[:1], cell[0], "", "", "") || !matches(words, cell[0], cell[3], "", cell[2]) {
			return true
		}
		name := cell[0]
		if cell[1] != "" {
			name = cell[1]
		}
		if cell[2] != "" {
			name += ", " + cell[2]
		}
		if s, ok := spotOf(cell[4], cell[5]); ok {
			s.Name = name + ", " + cell[3]
			list = append(list, s)
		}
		return len(list) < limit
	})
	return list
}

// Coordinates reads a latitude and a longitude in degrees, such as "42.45, -76.46";
// south and west are minus.
func Coordinates(typed string) (Spot, bool) {
	words := strings.Fields(strings.ReplaceAll(strings.ReplaceAll(typed, "−", "-"), ",", " "))
	if len(words) != 2 {
		return Spot{}, false
	}
	s, ok := spotOf(words[0], words[1])
	s.Name = words[0] + "°, " + words[1] + "°"
	return s, ok
}

func spotOf(latitude, longitude string) (Spot, bool) {
	lat, err1 := strconv.ParseFloat(latitude, 64)
	lon, err2 := strconv.ParseFloat(longitude, 64)
	return Spot{Latitude: unit.Degrees(lat), Longitude: unit.Degrees(lon)}, err1 == nil && err2 == nil && lat >= -farthest[0] && lat <= farthest[0] && lon >= -farthest[1] && lon <= farthest[1]
}
