package normals

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/unit"
)

// Source of every figure here: US NOAA NCEI, 1981–2010 U.S. Climate Normals.
func TestTheTableHoldsWhatWasPublished(t *testing.T) {
	table, err := Embedded()
	require.NoError(t, err)
	all := table.All()
	assert.Len(t, all, 7501)
	ithaca := table.ByID("USC00304174")
	require.NotNil(t, ithaca, "a northeastern station")
	frosts, rains := 0, 0
	for i := range all {
		s := &all[i]
		if s.Frost.Given {
			frosts++
		}
		if s.Rain.Given {
			rains++
		}
		require.NotEmpty(t, s.Name)
		require.Contains(t, "CSRPQ", string(s.Flag), s.ID)
		require.InDelta(t, 0, float64(s.Latitude), 90, s.ID)
		require.InDelta(t, 0, float64(s.Longitude), 180, s.ID)
		for m := range 12 {
			require.Less(t, s.TMin[m], s.TMax[m], "%s month %d", s.ID, m+1)
			require.InDelta(t, 5, float64(s.TMin[m]), 55, s.ID)
		}
	}
	assert.Equal(t, []int{5398, 6969}, []int{frosts, rains})
	assert.Equal(t, FrostDays{134, 120, 276, 290}, ithaca.Frost.Value)
	assert.InDelta(t, 2.08*25.4, ithaca.Rain.Value[0], 0.05)
}

func TestStationsAreFoundByNameZipAndPlace(t *testing.T) {
	table, err := Embedded()
	require.NoError(t, err)
	near, far := table.Nearest(42.45, -76.45)
	require.NotNil(t, near)
	assert.Equal(t, "NY", near.State)
	assert.Less(t, far, unit.Metres(15000))

	byName := table.Find("ithaca ny", 5)
	require.NotEmpty(t, byName)
	assert.Equal(t, "NY", byName[0].State)

	byZip := table.Find(byName[0].Zip, 5)
	require.NotEmpty(t, byZip)
	assert.Equal(t, byName[0].Zip, byZip[0].Zip)

	assert.Empty(t, table.Find("", 5))
	assert.Empty(t, table.Find("qqqq zz", 5))
	assert.LessOrEqual(t, len(table.Find("spring", 8)), 8)
}

// Zip areas that no station stands in, and their middles (US Census Bureau, 2022
// ZCTA Gazetteer): a station within 40 km is among those listed.
func TestAZipWithoutAStationFindsItsNeighbours(t *testing.T) {
	table, err := Embedded()
	require.NoError(t, err)
	for zip, middle := range map[string][2]unit.Degrees{"14853": {42.446, -76.481}, "60614": {41.923, -87.647}, "10025": {40.798, -73.968}, "97214": {45.514, -122.644}} {
		found := table.Find(zip, 8)
		require.Len(t, found, 8, zip)
		nearest := 1e9
		for _, s := range found {
			assert.NotEqual(t, zip, s.Zip, "choose a zip that no station has")
			nearest = min(nearest, haversine(middle[0], middle[1], s.Latitude, s.Longitude))
		}
		assert.Less(t, nearest, 40000.0, zip)
	}
	assert.Len(t, table.Find("00001", 3), 3, "no zip lies below")
	assert.Empty(t, table.Find("1485x", 8))
	assert.Empty(t, table.Find("999999", 8), "six digits are no zip")
	alone, err := Parse("S,N,NY,,,42,-76,100,C" + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + "\n")
	require.NoError(t, err)
	assert.Empty(t, alone.Find("14853", 8), "a table without zips")
}

func TestADamagedTableIsRefused(t *testing.T) {
	for _, text := range []string{"", "# only a comment\n", "a,b,c\n", "S,N,NY,1,P,1,2,3,C,1,2\n", "S,N,NY,1,P,1,2,3," + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + "\n",
		"S,N,NY,1,P,1,2,high,C" + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + "\n", "S,N,NY,1,P,1,2,3,C" + strings.Repeat(",300", 12) + strings.Repeat(",warm", 12) + "\n"} {
		_, err := Parse(text)
		assert.ErrorIs(t, err, ErrTable, "%q", text)
	}
	rain := strings.Repeat(",100", 12)
	for _, cells := range []string{"", ",,,,", "134,120,276,290", "134,120,276,290" + rain + ",1", "134,120,276," + rain, "134,120,276,366" + rain, "0,120,276,290" + rain,
		"134,120,276,290" + strings.Repeat(",100", 11) + ",", ",,," + strings.Repeat(",-1", 12), ",,," + strings.Repeat(",wet", 12)} {
		assert.ErrorIs(t, new(Table).Beside("S,"+cells+"\n"), ErrTable, "%q", cells)
		_, err := Parse("S,N,NY,1,P,1,2,3,C" + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + ",x" + cells + "\n")
		assert.ErrorIs(t, err, ErrTable, "%q", cells)
	}
	assert.NoError(t, new(Table).Beside("# frost\nS,,,,"+rain+"\nT,1,365,365,1"+strings.Repeat(",", 12)+"\n"), "either may be missing")
}

func BenchmarkParse(b *testing.B) {
	b.ReportAllocs()
	for range b.N {
		if _, err := Parse(Text); err != nil {
			b.Fatal(err)
		}
	}
}

// FuzzParse: no text makes the reader panic, and what it accepts lies on the
// earth and is as warm as it can be: a device keeps one row, and storage is
// anybody's.
func FuzzParse(f *testing.F) {
	lines := strings.Split(Text, "\n")
	for _, i := range []int{len(lines) / 3, len(lines) / 2, len(lines) - 2} {
		f.Add(lines[i])
		f.Add(lines[i] + ",134,120,276,290" + strings.Repeat(",100", 12))
		f.Add(strings.Replace(lines[i], ",4", ",NaN", 1))
	}
	f.Add("")
	f.Add("#,,,")
	f.Fuzz(func(t *testing.T, text string) {
		table, err := Parse(text)
		if err != nil {
			return
		}
		for _, s := range table.All() {
			if !(s.Latitude >= -90 && s.Latitude <= 90 && s.Longitude >= -180 && s.Longitude <= 180 && s.Elevation >= -9000 && s.Elevation <= 9000) {
				t.Fatalf("not on the earth: %v %v %v", s.Latitude, s.Longitude, s.Elevation)
			}
			for _, day := range []int{s.Frost.Value.Spring50, s.Frost.Value.Spring90, s.Frost.Value.Autumn50, s.Frost.Value.Autumn90} {
				if s.Frost.Given && (day < 1 || day > 365) {
					t.Fatalf("no day of the year: %d", day)
				}
			}
			for m := range 12 {
				if !(s.TMin[m] > -130 && s.TMax[m] < 100) {
					t.Fatalf("no such weather: %v to %v", s.TMin[m], s.TMax[m])
				}
			}
		}
	})
}
