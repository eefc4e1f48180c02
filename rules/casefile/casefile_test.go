package casefile_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// stations reads the tables from their files, since the browser's build, in which
// these tests run too, does not carry them.
var stations = sync.OnceValues(func() (*normals.Table, error) {
	text, err := os.ReadFile("../table/normals/normals.csv")
	if err != nil {
		return nil, err
	}
	beside, err := os.ReadFile("../table/normals/beside.csv")
	if err != nil {
		return nil, err
	}
	table, err := normals.Parse(string(text))
	if err == nil {
		err = table.Beside(string(beside))
	}
	return table, err
})

func places(t testing.TB) *normals.Table {
	t.Helper()
	table, err := stations()
	require.NoError(t, err)
	return table
}

// packFiles reads the text of every case of the pack by its name.
func packFiles(t testing.TB) map[string][]byte {
	t.Helper()
	files, err := filepath.Glob("../../testdata/cases/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	all := map[string][]byte{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		all[strings.TrimSuffix(filepath.Base(file), ".json")] = data
	}
	return all
}

func TestWhatIsWrittenReadsBackTheSame(t *testing.T) {
	for id, data := range packFiles(t) {
		c, err := casefile.Decode(data, places(t))
		require.NoError(t, err, id)
		text := casefile.Encode(&c)
		require.True(t, json.Valid(text), "%s\n%s", id, text)
		again, err := casefile.Decode(text, places(t))
		require.NoError(t, err, "%s\n%s", id, text)
		assert.Equal(t, c, again, id)
		assert.Equal(t, string(text), string(casefile.Encode(&again)), id)
	}
}

// Frost days and rain are the station's alone: they come by its id or its place, do not
// travel, and are not there beside a climate of the grower's own. Rain that is typed
// wins. Figures: US NOAA NCEI, 1981–2010 U.S. Climate Normals of USC00274399 (last 32 °F
// of spring in half of the years 12 May, in nine of ten 29 April; 2.98 in of rain in
// January) and of USC00028112, where frost is rare and its days wrap round the new year.
func TestAStationBringsItsFrostAndRain(t *testing.T) {
	read := func(place, climate string) field.Case {
		c, err := casefile.Decode([]byte(`{"version":1,"crop":"tomato","plant_on":"2027-05-20",`+climate+`"place":`+place+`,"soil":{"texture":"loam"}}`), places(t))
		require.NoError(t, err)
		return c
	}
	c := read(`{"station":"USC00274399"}`, "")
	require.True(t, c.Place.StationFrost.Given)
	assert.Equal(t, weather.FrostDates{Ten: 144, Fifty: 131, Ninety: 118}, c.Place.StationFrost.Value.Spring)
	assert.Equal(t, weather.FrostDates{Ten: 262, Fifty: 272, Ninety: 282}, c.Place.StationFrost.Value.Autumn)
	assert.Equal(t, 75.7, c.Place.RainNormals().Value[0])
	assert.NotContains(t, string(casefile.Encode(&c)), "rain")

	byPlace := read(`{"lat":42.93,"lon":-72.32}`, "")
	assert.Equal(t, c.Place.StationFrost, byPlace.Place.StationFrost)

	rare := read(`{"station":"USC00028112"}`, "").Place.StationFrost.Value
	assert.Equal(t, weather.FrostDates{Ten: 59, Fifty: 29, Ninety: 364}, rare.Spring)
	assert.Equal(t, weather.FrostDates{Ten: 322, Fifty: 343, Ninety: 364}, rare.Autumn)

	kept, err := normals.Parse(c.Place.StationRow)
	require.NoError(t, err)
	again := field.Case{Place: field.Place{Station: "USC00274399"}}
	casefile.Locate(&again, kept)
	assert.Equal(t, c.Place, again.Place, "from the row that a device keeps")

	months := func(v string) string { return "[" + strings.Repeat(v+",", 11) + v + "]" }
	typed := read(`{"station":"USC00274399"}`, `"climate":{"rain_mm":`+months("5")+`},`)
	assert.Equal(t, 5.0, typed.Place.RainNormals().Value[0])
	own := read(`{"station":"USC00274399"}`, `"climate":{"tmin_c":`+months("5")+`,"tmax_c":`+months("15")+`},`)
	assert.False(t, own.Place.StationFrost.Given || own.Place.RainNormals().Given)
	field.Climate[0].Set(&c, [12]float64{})
	assert.False(t, c.Place.StationFrost.Given || c.Place.RainNormals().Given)
}

func TestAStationBringsItsNormals(t *testing.T) {
	st := places(t).All()[4000]
	c, err := casefile.Decode([]byte(`{"crop":"tomato","plant_on":"2027-05-20","place":{"station":"`+st.ID+`"}}`), places(t))
	require.NoError(t, err)
	assert.Equal(t, st.Newer.Value.Min, c.Place.TMin)
	assert.Equal(t, st.Elevation, c.Place.Elevation.Value)
	near, err := casefile.Decode([]byte(`{"crop":"tomato","plant_on":"2027-05-20","place":{"lat":42.45,"lon":-76.45,"elevation_m":300}}`), places(t))
	require.NoError(t, err)
	assert.Equal(t, unit.Metres(300), near.Place.Elevation.Value)
	assert.NotEmpty(t, near.Place.StationName)
	text := casefile.Encode(&near)
	again, err := casefile.Decode(text, places(t))
	require.NoError(t, err)
	assert.Equal(t, near, again)
}

// A soil series fills in texture and drainage where none are given, and says so; what the
// grower gives wins, and a name that no series has is an error. (NRCS, Official Soil Series
// Descriptions: Drummer has a surface of silty clay loam and is poorly drained.)
func TestASoilSeriesByName(t *testing.T) {
	embedded, err := normals.Embedded()
	require.NoError(t, err)
	read := func(soil string) (field.Case, error) {
		return casefile.Decode([]byte(`{"version":1,"crop":"tomato","plant_on":"2027-05-20","place":{"station":"USC00274399"},"soil":`+soil+`}`), embedded)
	}
	c, err := read(`{"series":"drummer"}`)
	require.NoError(t, err)
	filled, defaults := field.Fill(c)
	assert.Equal(t, []string{"silty-clay-loam", "slow"}, []string{filled.Soil.Texture, filled.Soil.Drainage})
	reasons := map[string]string{}
	for _, d := range defaults {
		reasons[d.Field] = d.Reason
	}
	assert.Equal(t, "of the soil series drummer", reasons["soil.texture"])
	linked, err := casefile.ReadLink(casefile.Link(&c), embedded)
	require.NoError(t, err)
	assert.Equal(t, c, linked)
	again, err := casefile.Decode(casefile.Encode(&c), embedded)
	require.NoError(t, err)
	assert.Equal(t, c, again)

	own, err := read(`{"series":"Drummer","texture":"loam"}`)
	require.NoError(t, err)
	assert.Equal(t, []string{"loam", "slow"}, []string{field.Filled(own).Soil.Texture, field.Filled(own).Soil.Drainage})
	_, err = read(`{"series":"Nowhereville"}`)
	assert.ErrorContains(t, err, "soil.series")
	field.InputByName("soil.series").Set(&c, field.Value{Word: "Nowhereville"})
	_, defaults = field.Fill(c)
	assert.Contains(t, fmt.Sprint(defaults), "not known of a soil series Nowhereville", "where the page has nothing of it")
	field.InputByName("soil.series").Clear(&c)
	assert.Equal(t, "loam", field.Filled(c).Soil.Texture)
}

// The newest normals stand where none were asked for; the older ones are asked for by
// name, and travel so in file and link. What only says the period moves no climate of the
// grower's own. Figures: the January minimum of USC00274399, 9.3 °F in 1981–2010 (US NOAA NCEI).
func TestTheYearsOfTheNormals(t *testing.T) {
	read := func(place string) field.Case {
		c, err := casefile.Decode([]byte(`{"version":1,"crop":"tomato","plant_on":"2027-05-20","place":`+place+`}`), places(t))
		require.NoError(t, err)
		return c
	}
	newest, older := read(`{"station":"USC00274399"}`), read(`{"station":"USC00274399","period":"1981-2010"}`)
	assert.Equal(t, newest.Place.Newer.Value.Min, newest.Place.TMin)
	assert.Equal(t, older.Place.Older.Value.Max, older.Place.TMax)
	assert.Equal(t, unit.Hundredth((9.3-32)/1.8), older.Place.TMin[0])
	assert.Equal(t, newest.Place.StationFrost, older.Place.StationFrost, "its normals are always those of the frost")
	for _, c := range []field.Case{newest, older, read(`{"lat":42.93,"lon":-72.32,"period":"1981-2010"}`)} {
		again, err := casefile.Decode(casefile.Encode(&c), places(t))
		require.NoError(t, err)
		assert.Equal(t, c, again)
		linked, err := casefile.ReadLink(casefile.Link(&c), places(t))
		require.NoError(t, err)
		assert.Equal(t, c, linked)
	}
	field.InputByName("place.period").Set(&newest, field.Value{Word: field.OlderYears})
	assert.Equal(t, older, newest, "chosen in the form")
	table, err := normals.Parse(normalsAlone)
	require.NoError(t, err)
	alone := field.Case{Place: field.Place{Station: "S"}}
	casefile.Locate(&alone, table)
	assert.True(t, alone.Place.IsOlder() && alone.Place.HasNormals, "where the newer ones could not be had")
	own := older
	field.Climate[0].Set(&own, [12]float64{})
	field.InputByName("place.period").Set(&own, field.Value{Word: field.NewerYears})
	assert.Equal(t, [12]unit.Celsius{}, own.Place.TMin)
}

// normalsAlone is a table of one station, with nothing beside it.
var normalsAlone = "S,N,NY,,,42,-76,100,C" + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + "\n"

// A climate of the grower's own takes the place of a station's normals, and the
// station still says where the field lies: in the file and in a link.
func TestOwnClimateAtAStation(t *testing.T) {
	st := places(t).All()[4000]
	c, err := casefile.Decode([]byte(`{"crop":"tomato","plant_on":"2027-05-20","place":{"station":"`+st.ID+`"},
		"climate":{"tmin_c":[-5,-4,0,5.5,11,16.5,19,18,14,7.5,2.5,-2.5],"tmax_c":[5,6.5,11.5,18,23,27.5,30,29,25.5,19,13,7]}}`), places(t))
	require.NoError(t, err)
	assert.True(t, c.Place.Own)
	assert.Equal(t, unit.Celsius(30), c.Place.TMax[6])
	assert.Equal(t, unit.Known(st.Latitude), c.Place.Latitude)
	assert.Equal(t, unit.Known(st.Elevation), c.Place.Elevation)
	again, err := casefile.Decode(casefile.Encode(&c), places(t))
	require.NoError(t, err)
	assert.Equal(t, c, again)
	linked, err := casefile.ReadLink(casefile.Link(&c), places(t))
	require.NoError(t, err)
	assert.Equal(t, c, linked)
	_, err = rules.Advise(c)
	assert.NoError(t, err)
}

func TestEveryBadFileGivesItsExactErrors(t *testing.T) {
	require.GreaterOrEqual(t, len(badCases), 60)
	for _, bad := range badCases {
		t.Run(bad.name, func(t *testing.T) {
			_, err := casefile.Decode([]byte(bad.file), places(t))
			require.Error(t, err)
			assert.Equal(t, bad.errors, err.Error())
			for _, e := range err.(field.Errors) {
				assert.NotEmpty(t, e.Field)
				assert.NotEmpty(t, e.Value)
				assert.NotEmpty(t, e.Allowed)
				assert.True(t, strings.HasSuffix(e.Mend, ".") || strings.HasSuffix(e.Mend, "?"), e.Mend)
			}
		})
	}
}

func TestAFileOfTwoMegabytesIsRefusedUnread(t *testing.T) {
	_, err := casefile.Decode(bytes.Repeat([]byte(" "), 2<<20), places(t))
	require.Error(t, err)
	assert.Equal(t, "file: 2097152 bytes is not allowed. Allowed: at most 65536 bytes. This is not a case file of ours.", err.Error())
}

func TestAllErrorsComeAtOnce(t *testing.T) {
	_, err := casefile.Decode([]byte(`{"crop":"tomatoe","plant_on":"2027-02-30","soil":{"slope_percent":99},"risk":"x","place":{"lat":95,"lon":0}}`), places(t))
	require.Error(t, err)
	assert.Len(t, err.(field.Errors), 5)
}

// Whatever is set through the inputs comes back through a file.
func TestAnyCaseSurvivesTheFile(t *testing.T) {
	base, err := casefile.Decode(packFiles(t)["least-known"], places(t))
	require.NoError(t, err)
	rapid.Check(t, func(rt *rapid.T) {
		c := anyCase(rt, base)
		again, err := casefile.Decode(casefile.Encode(&c), places(t))
		require.NoError(rt, err)
		assert.Equal(rt, c, again)
	})
}

// anyCase fills about a quarter of a case's fields, each with any value of its
// range.
func anyCase(rt *rapid.T, base field.Case) field.Case {
	c := base
	for i := range field.Inputs {
		in := &field.Inputs[i]
		if strings.HasPrefix(in.Name, "place.") || in.Name == "prices.currency" || rapid.IntRange(0, 3).Draw(rt, "fill") != 0 {
			continue
		}
		in.Set(&c, anyValue(rt, in))
	}
	if len(field.Check(&c)) > 0 {
		rt.Skip("fields that do not go together")
	}
	return c
}

func anyValue(rt *rapid.T, in *field.Input) field.Value {
	switch in.Form {
	case field.FormChoice:
		return field.Value{Word: in.Options[rapid.IntRange(0, len(in.Options)-1).Draw(rt, in.Name)].ID}
	case field.FormDay:
		return field.Value{Number: float64(rapid.IntRange(1, 12).Draw(rt, in.Name)*100 + rapid.IntRange(1, 28).Draw(rt, in.Name))}
	case field.FormNumber:
		return field.Value{Number: rapid.Float64Range(in.Low, in.High).Draw(rt, in.Name)}
	}
	return field.Value{Number: float64(rapid.IntRange(int(in.Low), int(in.High)).Draw(rt, in.Name))}
}

// FuzzDecode: no file makes the reader panic, and what it accepts it writes
// and reads back the same, and the engine answers it.
func FuzzDecode(f *testing.F) {
	for _, data := range packFiles(f) {
		f.Add(data)
	}
	for _, bad := range badCases {
		f.Add([]byte(bad.file))
	}
	table := places(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		c, err := casefile.Decode(data, table)
		if err != nil {
			if _, ok := err.(field.Errors); !ok {
				t.Fatalf("an error without a field: %v", err)
			}
			return
		}
		again, err := casefile.Decode(casefile.Encode(&c), table)
		if err != nil {
			t.Fatalf("cannot read what was written: %v", err)
		}
		if c != again {
			t.Fatalf("reads back as another case")
		}
		if _, err := rules.Advise(c); err != nil {
			if _, ok := err.(field.Errors); !ok {
				t.Fatalf("an error without a field: %v", err)
			}
		}
	})
}
