package casefile

import (
	"bytes"
	"encoding/binary"
	"errors"
	"hash/fnv"
	"math"
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/table/normals"
)

// The share text holds a whole case in letters that survive being read aloud,
// typed and printed:
//
//	"1" + base32( length · fields · CRC-32 )
//
// A field is its number in linkFields, then its value: a choice as a hash of its
// id, a number as decimal digits and places, or as eight bytes where it has no
// short decimal form. The checksum finds every change of one letter; the length
// finds every cut.

// MaxLink is the longest share text that is looked at.
const MaxLink = 2000

// letters leave out i, l, o and u, which are misread or spell words.
const letters = "0123456789abcdefghjkmnpqrstvwxyz"

// spelled is base32 without padding (RFC 4648, §6) in our letters. The standard library's
// own serves streams too, and takes up 3 kB of the page's program.
func spelled(b []byte) string {
	text := make([]byte, 0, (8*len(b)+4)/5)
	bits, held := uint(0), uint(0) // held counts the bits that wait
	for _, c := range b {
		bits, held = bits<<8|uint(c), held+8
		for ; held >= 5; held -= 5 {
			text = append(text, letters[bits>>(held-5)&31])
		}
	}
	if held > 0 {
		text = append(text, letters[bits<<(5-held)&31])
	}
	return string(text)
}

// unspelled reads what spelled writes; false where it would not write this.
func unspelled(text string) ([]byte, bool) {
	b := make([]byte, 0, len(text)*5/8)
	bits, held := uint(0), uint(0)
	for i := range len(text) {
		at := strings.IndexByte(letters, text[i])
		if at < 0 {
			return nil, false
		}
		if bits, held = bits<<5|uint(at), held+5; held >= 8 {
			held -= 8
			b = append(b, byte(bits>>held))
		}
	}
	return b, spelled(b) == text
}

// linkFields numbers the fields of a share text. The list only grows at its
// end: links that are out in the world must keep their meaning.
var linkFields = [...]string{
	"crop", "plant_on", "method", "place.station", "place.lat", "place.lon", "place.elevation_m",
	"climate.last_frost", "climate.first_frost", "climate.tmin_c", "climate.tmax_c", "climate.solar_mj_m2_day",
	"climate.rain_mm", "climate.wind_m_s", "climate.humidity_percent",
	"soil.texture", "soil.drainage", "soil.organic_percent", "soil.slope_percent", "soil.wetness_at_laying",
	"soil.tilth", "soil.stones", "soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour",
	"weeds.pressure", "weeds.nutsedge", "weeds.insect_pressure",
	"field.exposure", "field.bed_length_m", "field.beds", "field.bed_centres_m", "field.bed_top_m", "field.rows_per_bed", "field.in_row_m",
	"practice.organic", "practice.crops_on_film", "practice.laying", "practice.tractor_kw", "practice.fumigated_on",
	"practice.label_interval_days", "practice.people", "practice.film_options", "practice.film_width_m",
	"practice.reuse.film", "practice.reuse.laid_on", "practice.reuse.cover_percent",
	"water.source", "water.flow_l_h", "water.pressure_kpa", "water.lift_m", "water.rise_m", "water.header_m",
	"water.hours_per_day", "water.ec_ds_m", "water.ph", "water.iron_mg_l", "water.hardness_mg_l",
	"prices.currency", "prices.film_roll", "prices.tape_m", "prices.plant", "prices.wage_hour", "prices.haul_tonne",
	"prices.fittings_bed", "prices.crop_unit", "risk",
	"water.sodium_ratio", "water.nitrate_mg_l", "water.tank_l", "water.refill_l_h",
	"feed.rate_kg_ha_day", "feed.grade_percent", "feed.stock_kg_l", "feed.injector_ratio", "feed.bleach_percent", "feed.chlorine_mg_l",
	"practice.roll_length_m", "shopping.film_rolls", "shopping.tape_m", "shopping.header_m", "shopping.take_offs", "shopping.line_ends",
	"shopping.valves", "shopping.regulators", "shopping.filter", "shopping.gauge", "shopping.backflow_device", "shopping.injector",
	"shopping.soil_bags", "shopping.plants",
	"prices.roll_biodegradable", "prices.roll_paper", "day.ball", "day.hand", "day.wind_m_s", "day.people", "day.rolls",
	"prices.system", "prices.laying_hours", "prices.lifting_hours",
	"field.side_slope", "practice.reuse.height_m", "practice.reuse.thickness_um",
	"soil.ph", "soil.test_p", "soil.test_k", "soil.lime_kg_ha",
	"feed.season_n_kg_ha", "feed.season_p2o5_kg_ha", "feed.season_k2o_kg_ha",
	"feed.base_n_percent", "feed.base_p2o5_percent", "feed.base_k2o_percent", "feed.base_spread",
	"shopping.base_fertiliser_kg", "shopping.row_cover_m", "shopping.hoops",
	daysName,
	"place.period",
	logName,
	"past.warm_on", "past.water_percent", "past.whole_percent",
	"soil.series",
	"shopping.stakes", "shopping.string_m", "soil.measured_under",
}

// Link writes a case as share text: the plan, without the days that were written down.
func Link(c *field.Case) string { return link(c, false) }

func link(c *field.Case, days bool) string {
	var body []byte
	for number, name := range linkFields {
		if from, ok := daysFrom(name); ok {
			if days {
				if rows := partOf(c.Days.Rows(), from); len(rows) > 0 {
					body = appendDays(append(body, byte(number)), rows, from)
				}
			}
			continue
		}
		if s := seriesByName(name); s != nil {
			if months, given := s.Get(c); given {
				body = append(body, byte(number))
				for _, v := range months {
					body = appendNumber(body, v)
				}
			}
			continue
		}
		if !kept(c, name) {
			continue
		}
		in := field.InputByName(name)
		v, given := in.Get(c)
		if !given {
			continue
		}
		body = append(body, byte(number))
		switch in.Form {
		case field.FormChoice:
			body = append(body, idHash(v.Word)...)
		case field.FormText:
			word := v.Word[:min(len(v.Word), 64)]
			body = append(append(body, byte(len(word))), word...)
		default:
			body = appendNumber(body, v.Number)
		}
	}
	return "1" + Sealed(body)
}

// kept leaves out what a station brings along anyhow.
func kept(c *field.Case, name string) bool {
	if c.Place.Station == "" {
		return true
	}
	switch name {
	case "place.lat", "place.lon":
		return false
	case "place.elevation_m":
		return c.Place.Elevation.Value != c.Place.StationAt
	}
	return true
}

// idHash names an option by its id, so that options may be added and reordered
// without breaking links. A test finds clashes.
func idHash(id string) []byte {
	h := fnv.New32a()
	h.Write([]byte(id))
	return h.Sum(nil)[1:]
}

const rawNumber = 15

// appendNumber writes a float as (places, digits) where that is exact.
func appendNumber(b []byte, v float64) []byte {
	for places := range 8 {
		scaled := math.Round(v * math.Pow10(places))
		if math.Abs(scaled) < 1<<48 && scaled/math.Pow10(places) == v {
			return binary.AppendVarint(append(b, byte(places)), int64(scaled))
		}
	}
	return binary.BigEndian.AppendUint64(append(b, rawNumber), math.Float64bits(v))
}

// ErrLink is wrapped by every error of [ReadLink].
var ErrLink = errors.New("nothing was loaded")

func linkError(text string) error { return errors.Join(errors.New(text), ErrLink) }

// ReadLink reads share text. Anything cut, altered or unknown is refused whole,
// with a sentence that says why: no half case is ever loaded.
func ReadLink(text string, places *normals.Table) (field.Case, error) {
	switch {
	case text == "":
		return field.Case{}, linkError("The link holds no field.")
	case len(text) > MaxLink:
		return field.Case{}, linkError("The link is too long to be one of ours.")
	case text[0] > '1' && text[0] <= '9':
		return field.Case{}, linkError("A newer Film & Furrow made this link. Update the page, then open it again.")
	case text[0] != '1':
		return field.Case{}, linkError("This is not a Film & Furrow link.")
	}
	body, err := Unsealed(text[1:])
	if err != nil {
		return field.Case{}, err
	}
	c, ok := readFields(body)
	if !ok {
		return field.Case{}, linkError("The link holds a field that this version does not know.")
	}
	Locate(&c, places)
	if errs := field.Check(&c); len(errs) > 0 {
		return field.Case{}, errors.Join(linkError("The link holds a field that is out of range."), errs)
	}
	return c, nil
}

func readFields(b []byte) (c field.Case, ok bool) {
	last := -1
	for len(b) > 0 {
		number := int(b[0])
		b = b[1:]
		if number <= last || number >= len(linkFields) {
			return c, false
		}
		last = number
		name := linkFields[number]
		if from, isDays := daysFrom(name); isDays {
			var rows []field.DayRow
			if rows, b, ok = takeDays(b, from); !ok {
				return c, false
			}
			c.Days = c.Days.With(rows)
			continue
		}
		if s := seriesByName(name); s != nil {
			var months [12]float64
			for m := range months {
				if months[m], b, ok = takeNumber(b); !ok {
					return c, false
				}
			}
			s.Set(&c, months)
			continue
		}
		in := field.InputByName(name)
		var v field.Value
		switch in.Form {
		case field.FormChoice:
			if len(b) < 3 {
				return c, false
			}
			v.Word, ok = optionOf(in, b[:3])
			b = b[3:]
		case field.FormText:
			if len(b) < 1 || len(b) < 1+int(b[0]) || b[0] > 64 || b[0] == 0 {
				return c, false
			}
			v.Word, ok = string(b[1:1+int(b[0])]), true
			b = b[1+int(b[0]):]
			ok = !strings.ContainsFunc(v.Word, func(r rune) bool { return r < ' ' || r > '~' })
		default:
			v.Number, b, ok = takeNumber(b)
			ok = ok && in.CheckValue(v) == nil
		}
		if !ok {
			return c, false
		}
		in.Set(&c, v)
	}
	return c, true
}

func optionOf(in *field.Input, hash []byte) (string, bool) {
	for _, o := range in.Options {
		if bytes.Equal(idHash(o.ID), hash) {
			return o.ID, true
		}
	}
	return "", false
}

func takeNumber(b []byte) (v float64, rest []byte, ok bool) {
	if len(b) == 0 {
		return 0, nil, false
	}
	if b[0] == rawNumber {
		if len(b) < 9 {
			return 0, nil, false
		}
		v = math.Float64frombits(binary.BigEndian.Uint64(b[1:]))
		return v, b[9:], !math.IsNaN(v) && !math.IsInf(v, 0)
	}
	digits, n := binary.Varint(b[1:])
	if b[0] > 7 || n <= 0 {
		return 0, nil, false
	}
	return float64(digits) / math.Pow10(int(b[0])), b[1+n:], true
}
