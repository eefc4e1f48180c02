package casefile

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/table/series"
	"filmfurrow/rules/unit"
)

// Version is the newest case file that this program reads, and the one it
// writes.
const Version = 1

// Decode reads a case file strictly: an unknown field, a wrong type, a value
// out of range or an impossible date is a named error, and all come at once as
// [field.Errors]. Stations are looked up in places; with a nil table only
// cases that carry their own climate can be read.
func Decode(data []byte, places *normals.Table) (field.Case, error) {
	root, errs := parse(data)
	if root == nil {
		return field.Case{}, errs
	}
	return decodeTree(root, errs, places)
}

// decodeTree reads a case from its object; errs are those found so far.
func decodeTree(root *jsontext.Object, errs field.Errors, places *normals.Table) (field.Case, error) {
	d := decoder{errs: errs}
	d.object(root, "")
	d.climate()
	Locate(&d.c, places)
	if s := &d.c.Soil; places != nil && places.Soils != "" && s.Series != "" && s.OfSeries == (field.SeriesSoil{}) {
		d.fail("soil.series", strconv.Quote(s.Series), "the name of a US soil series", "Look at its spelling on the soil survey's map, or leave it out and give texture and drainage.")
	}
	// What is wrong by type is not in the case, so the checks that follow could
	// only repeat it as missing.
	for _, e := range field.Check(&d.c) {
		if !slices.ContainsFunc(d.errs, func(have field.Error) bool { return covers(have.Field, e.Field) }) {
			d.errs = append(d.errs, e)
		}
	}
	if len(d.errs) > 0 {
		return field.Case{}, d.errs
	}
	return d.c, nil
}

// Salvage reads the fields of a case file that are right by themselves, for what
// a device kept of a half-filled form. It is false where the text is no case file.
func Salvage(data []byte, places *normals.Table) (field.Case, bool) {
	root, _ := parse(data)
	if root == nil {
		return field.Case{}, false
	}
	d := decoder{}
	d.object(root, "")
	Locate(&d.c, places)
	return d.c, true
}

// covers tells whether an error on one field explains another.
func covers(have, field string) bool {
	return have == field || strings.HasPrefix(field, have+".") || strings.HasPrefix(have, field+".") ||
		(field == "place" && strings.HasPrefix(have, "climate"))
}

// Locate fills in the normals of a case's station, or of the station nearest
// to its latitude and longitude. A climate of the case's own takes the place of
// the normals: a station then only says where the field lies.
func Locate(c *field.Case, places *normals.Table) {
	if places != nil && places.Soils != "" {
		LocateSoil(c, places.Soils)
	}
	p := &c.Place
	if places == nil || p.Own && p.Station == "" {
		return
	}
	var s *normals.Station
	away := unit.Metres(0)
	switch {
	case p.Station != "":
		s = places.ByID(p.Station)
	case p.Latitude.Given && p.Longitude.Given && !places.Partial:
		s, away = places.Nearest(p.Latitude.Value, p.Longitude.Value, p.Elevation)
		if away > 500000 {
			s = nil
		}
	}
	if s == nil {
		return
	}
	p.StationAway = unit.Metres(math.Round(float64(away)))
	p.StationName, p.StationFlag, p.StationAt, p.StationRow = s.Label(), string(s.Flag), s.Elevation, s.Row
	if !p.Own { // a grower's own climate takes the place of the normals
		p.Older, p.Newer, p.Estimated = s.Older, s.Newer, s.Estimated
		p.Take()
		p.StationRain, p.StationFrost = s.Rain, stationFrost(s)
		p.StationVapour, p.StationWind, p.StationSun = s.Vapour, s.Wind, s.Sun
	}
	if p.Station == "" {
		return
	}
	p.Latitude, p.Longitude = unit.Known(s.Latitude), unit.Known(s.Longitude)
	if !p.Elevation.Given {
		p.Elevation = unit.Known(s.Elevation)
	}
}

// LocateSoil fills in what a case's soil series is known to be.
func LocateSoil(c *field.Case, soils series.Table) {
	s := &c.Soil
	s.OfSeries.Texture, s.OfSeries.Drainage, _ = soils.Find(s.Series)
}

// stationFrost counts a station's days from 0, and mirrors the day of nine years in ten
// about that of five.
func stationFrost(s *normals.Station) unit.Optional[field.StationFrost] {
	if !s.Frost.Given || !s.Older.Given {
		return unit.Optional[field.StationFrost]{}
	}
	dates := func(fifty, ninety int) weather.FrostDates {
		return weather.FrostDates{Ten: (2*fifty - ninety - 1 + 2*weather.YearDays) % weather.YearDays, Fifty: fifty - 1, Ninety: ninety - 1}
	}
	d := &s.Frost.Value
	return unit.Known(field.StationFrost{Spring: dates(d.Spring50, d.Spring90), Autumn: dates(d.Autumn50, d.Autumn90),
		Normals: weather.Normals{Minimum: s.Older.Value.Min, Maximum: s.Older.Value.Max, Latitude: s.Latitude, Height: s.Elevation}})
}

type decoder struct {
	c                field.Case
	errs             field.Errors
	seenMin, seenMax bool
}

func (d *decoder) fail(name, value, allowed, mend string) {
	d.errs = append(d.errs, field.Error{Field: name, Value: value, Allowed: allowed, Mend: mend})
}

// groups are the objects of a case file.
var groups = []string{"place", "climate", "soil", "weeds", "field", "practice", "practice.reuse", "water", "feed", "prices", "shopping", "day", "past"}

func (d *decoder) object(o *jsontext.Object, path string) {
	for i, name := range o.Names {
		at, v := join(path, name), o.Values[i]
		switch {
		case at == "version":
			d.version(v)
		case at == "days":
			d.days(v)
		case isGroup(at):
			if child, ok := v.(*jsontext.Object); ok {
				d.object(child, at)
			} else {
				d.fail(at, kindOf(v), "an object", "Write its fields between braces.")
			}
		case field.InputByName(at) != nil:
			d.input(field.InputByName(at), v)
		case seriesByName(at) != nil:
			d.series(seriesByName(at), v)
		default:
			d.fail(at, "unknown field", "the fields of a case file", nearest(at))
		}
	}
}

func isGroup(at string) bool { return slices.Contains(groups, at) }

func seriesByName(at string) *field.Series {
	for i := range field.Climate {
		if field.Climate[i].Name == at {
			return &field.Climate[i]
		}
	}
	return nil
}

// nearest points to a field whose last word is the same, which catches a field
// in the wrong object.
func nearest(at string) string {
	last := at[strings.LastIndexByte(at, '.')+1:]
	for i := range field.Inputs {
		name := field.Inputs[i].Name
		if last != "" && (strings.HasSuffix(name, "."+last) || strings.HasSuffix(at, "."+name)) {
			return "Did you mean " + name + "?"
		}
	}
	return "Check its spelling, or remove it."
}

func (d *decoder) version(v any) {
	n, ok := v.(jsontext.Number)
	version, err := strconv.Atoi(string(n))
	switch {
	case !ok || err != nil || version < 1:
		d.fail("version", kindOf(v), "1", "Write \"version\": 1.")
	case version > Version:
		d.fail("version", string(n), "1", "A newer Film & Furrow wrote this. Update the page, then open the file again.")
	}
}

func (d *decoder) input(in *field.Input, v any) {
	got, wrong := read(in, v)
	if wrong != nil {
		d.errs = append(d.errs, *wrong)
		return
	}
	if e := in.CheckValue(got); e != nil {
		d.errs = append(d.errs, *e)
		return
	}
	in.Set(&d.c, got)
}

var errType = errors.New("wrong type")

func read(in *field.Input, v any) (field.Value, *field.Error) {
	wrong := func(want, mend string) (field.Value, *field.Error) {
		return field.Value{}, &field.Error{Field: in.Name, Value: kindOf(v), Allowed: want, Mend: mend}
	}
	switch in.Form {
	case field.FormChoice, field.FormText:
		s, ok := v.(string)
		if !ok || s == "" || len(s) > 64 {
			return wrong(in.Allowed(), "Write an id between quotes, or leave the field out.")
		}
		return field.Value{Word: s}, nil
	case field.FormDate:
		s, _ := v.(string)
		day, err := unit.ParseDate(s)
		if err != nil {
			return wrong("a day of the calendar, YYYY-MM-DD", "There is no such date; write it such as 2027-05-20.")
		}
		return field.Value{Number: float64(day)}, nil
	case field.FormDay:
		s, _ := v.(string)
		day, err := unit.ParseMonthDay(s)
		if err != nil {
			return wrong("a day of the year, MM-DD", "Write it such as 05-14.")
		}
		return field.Value{Number: float64(day)}, nil
	case field.FormYesNo:
		b, ok := v.(bool)
		if !ok {
			return wrong("true or false", "Write true or false without quotes.")
		}
		if b {
			return field.Value{Number: 1}, nil
		}
		return field.Value{}, nil
	case field.FormFilms:
		return readFilms(v, wrong)
	}
	x, err := finite(v)
	if err != nil {
		return wrong("a number, "+in.Allowed(), "Write a number without quotes, or leave the field out.")
	}
	return field.Value{Number: x}, nil
}

func readFilms(v any, wrong func(want, mend string) (field.Value, *field.Error)) (field.Value, *field.Error) {
	list, ok := v.([]any)
	if !ok || len(list) == 0 {
		return wrong("a list of film ids", "Name at least one film, or leave the field out.")
	}
	var set field.Films
	for _, item := range list {
		s, _ := item.(string)
		film, known := table.FilmByID(s)
		if !known {
			return wrong("film ids, see explain films", "There is no film "+kindOf(item)+".")
		}
		set |= 1 << film
	}
	return field.Value{Number: float64(set)}, nil
}

func finite(v any) (float64, error) {
	n, ok := v.(jsontext.Number)
	if !ok {
		return 0, errType
	}
	x, err := strconv.ParseFloat(string(n), 64)
	if err != nil || math.IsInf(x, 0) || math.IsNaN(x) {
		return 0, errType
	}
	return x, nil
}

func (d *decoder) series(s *field.Series, v any) {
	d.seenMin = d.seenMin || s.Name == "climate.tmin_c"
	d.seenMax = d.seenMax || s.Name == "climate.tmax_c"
	list, ok := v.([]any)
	if !ok || len(list) != 12 {
		d.fail(s.Name, kindOf(v), "a list of 12 numbers, January first", "Give all twelve months.")
		return
	}
	var months [12]float64
	for i, item := range list {
		x, err := finite(item)
		if err != nil {
			d.fail(s.Name, kindOf(item)+" in "+unit.MonthName(i+1), "a number for each month", "Fill in the month.")
			return
		}
		months[i] = x
	}
	if errs := s.CheckValues(months); len(errs) > 0 {
		d.errs = append(d.errs, errs...)
		return
	}
	s.Set(&d.c, months)
}

// climate refuses half of a pair.
func (d *decoder) climate() {
	if d.seenMin != d.seenMax {
		missing := "climate.tmin_c"
		if d.seenMin {
			missing = "climate.tmax_c"
		}
		d.fail(missing, "missing", "12 numbers beside its partner", "Give both the minima and the maxima.")
	}
}
