package normals

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/unit"
)

// Source of every figure here: US NOAA NCEI, 1981–2010 U.S. Climate Normals.
func TestTheTableHoldsWhatWasPublished(t *testing.T) {
	table, err := read(Text, BesideText)
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
			for _, of := range []unit.Optional[Extremes]{s.Older, s.Newer} {
				require.True(t, of.Given)
				require.Less(t, of.Value.Min[m], of.Value.Max[m], "%s month %d", s.ID, m+1)
				require.InDelta(t, 5, float64(of.Value.Min[m]), 55, s.ID)
			}
		}
	}
	assert.Equal(t, []int{5398, 6969}, []int{frosts, rains})
	assert.Equal(t, FrostDays{134, 120, 276, 290}, ithaca.Frost.Value)
	assert.InDelta(t, 2.08*25.4, ithaca.Rain.Value[0], 0.05)
}

// Source: World Meteorological Organization, Climatological Standard Normals 1991–2020 (NCEI
// accession 0253808): Mendoza, Argentina, vapour pressure and wind of January as published,
// the wind brought from 10 m to 2 m.
func TestStationsOfOtherCountries(t *testing.T) {
	all, err := Embedded()
	require.NoError(t, err)
	world, measured := 0, 0
	for _, s := range all.All() {
		if s.Older.Given {
			require.False(t, abroad(s.ID), s.ID)
			continue
		}
		world++
		if s.Sun.Given && s.Wind.Given && s.Vapour.Given {
			measured++
		}
		require.True(t, s.Newer.Given && abroad(s.ID), s.ID)
		require.Contains(t, "SPQ", string(s.Flag), s.ID)
		for m := range 12 {
			require.Less(t, s.Newer.Value.Min[m], s.Newer.Value.Max[m], "%s month %d", s.ID, m+1)
		}
	}
	assert.Equal(t, []int{4860, 452}, []int{world, measured})
	near, away := all.Nearest(-32.88, -68.83, unit.Optional[unit.Metres]{})
	assert.Equal(t, "Argentina", near.State)
	assert.Less(t, away, unit.Metres(10000))
	us, far := all.Nearest(42.45, -76.45, unit.Optional[unit.Metres]{})
	assert.Equal(t, "NY", us.State, "%v", far)
	high, _ := all.Nearest(-11.9, -76.8, unit.Known(unit.Metres(4400)))
	assert.Greater(t, high.Elevation, unit.Metres(3500), "a field in the mountains has a station there before one by the sea: %s", high.Label())
	found := all.Find("mendoza argentina", 5)
	require.NotEmpty(t, found)
	assert.Equal(t, "Argentina", found[0].State)
	months := strings.Repeat(",100", 24)
	for _, cells := range []string{strings.Repeat(",", 46), strings.Repeat(",9999", 48), strings.Repeat(",1", 47) + ","} {
		assert.ErrorIs(t, new(Table).Beside("W1-1"+cells+"\n"), ErrTable, "%q", cells)
		_, err := Parse("W1-1,N,Nowhere,,,1,2,3,S" + strings.ReplaceAll(months, ",100", ",300")[:48] + cells)
		assert.ErrorIs(t, err, ErrTable)
	}
}

// Normals of 1991–2020 that no table published are those of 1981–2010 moved by the changes
// of the ten nearest of 490 stations that stand in both (World Meteorological Organization,
// Climatological Standard Normals 1991–2020, NCEI accession 0253808, less US NOAA NCEI's of
// 1981–2010), each weighed by 1/(km + 50)². Leaving out each of the 490 in turn tells how
// good that is; no change at all is what it must beat.
func TestTheNewerNormals(t *testing.T) {
	table, err := read(Text, BesideText)
	require.NoError(t, err)
	all := table.All()
	var known []*Station
	for i := range all {
		if !all[i].Estimated {
			known = append(known, &all[i])
		}
	}
	require.Len(t, known, 490)
	change := func(s *Station) (months [24]float64) {
		for m := range 12 {
			months[m] = float64(s.Newer.Value.Min[m] - s.Older.Value.Min[m])
			months[12+m] = float64(s.Newer.Value.Max[m] - s.Older.Value.Max[m])
		}
		return months
	}
	estimate := func(s *Station) (months [24]float64) {
		type near struct {
			of   *Station
			away float64
		}
		var list []near
		for _, k := range known {
			if k != s {
				list = append(list, near{k, haversine(s.Latitude, s.Longitude, k.Latitude, k.Longitude) / 1000})
			}
		}
		slices.SortStableFunc(list, func(a, b near) int { return cmp.Compare(a.away, b.away) })
		sum := 0.0
		for _, n := range list[:10] {
			w := 1 / ((n.away + 50) * (n.away + 50))
			sum += w
			for i, c := range change(n.of) {
				months[i] += w * c
			}
		}
		for i := range months {
			months[i] /= sum
		}
		return months
	}
	var missed, untouched, warmer float64
	for _, s := range known {
		got, was := estimate(s), change(s)
		for i := range got {
			missed += (got[i] - was[i]) * (got[i] - was[i])
			untouched += was[i] * was[i]
			warmer += was[i]
		}
	}
	n := float64(len(known) * 24)
	t.Logf("left out in turn: %.3f °C (%.2f °F) root mean square, %.3f (%.2f) untouched; warmer by %.2f °C on average", math.Sqrt(missed/n), 1.8*math.Sqrt(missed/n), math.Sqrt(untouched/n), 1.8*math.Sqrt(untouched/n), warmer/n)
	assert.InDelta(t, math.Sqrt(missed/n), float64(EstimateMissed), 0.006)
	assert.InDelta(t, math.Sqrt(untouched/n), float64(Untouched), 0.006)
	for i := 0; i < len(all); i += 37 {
		if s := &all[i]; s.Estimated {
			got, was := estimate(s), change(s)
			for m := range got {
				require.InDelta(t, got[m], was[m], 0.04, "%s month %d", s.Label(), m)
			}
		}
	}
}

func TestStationsAreFoundByNameZipAndPlace(t *testing.T) {
	table, err := read(Text, BesideText)
	require.NoError(t, err)
	near, far := table.Nearest(42.45, -76.45, unit.Optional[unit.Metres]{})
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

func TestADamagedTableIsRefused(t *testing.T) {
	for _, text := range []string{"", "# only a comment\n", "a,b,c\n", "S,N,NY,1,P,1,2,3,C,1,2\n", "S,N,NY,1,P,1,2,3," + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + "\n",
		"S,N,NY,1,P,1,2,high,C" + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + "\n", "S,N,NY,1,P,1,2,3,C" + strings.Repeat(",300", 12) + strings.Repeat(",warm", 12) + "\n"} {
		_, err := Parse(text)
		assert.ErrorIs(t, err, ErrTable, "%q", text)
	}
	rain, change := strings.Repeat(",100", 12), ",E"+strings.Repeat(",5", 24)
	for _, cells := range []string{"", ",,,,", "134,120,276,290" + rain, "134,120,276,290" + rain + change + ",1", "134,120,276," + rain + change, "134,120,276,366" + rain + change, "0,120,276,290" + rain + change,
		"134,120,276,290" + strings.Repeat(",100", 11) + "," + change, ",,," + strings.Repeat(",-1", 12) + change, ",,," + strings.Repeat(",wet", 12) + change, ",,," + rain + ",E" + strings.Repeat(",9999", 24)} {
		assert.ErrorIs(t, new(Table).Beside("S,"+cells+"\n"), ErrTable, "%q", cells)
		_, err := Parse("S,N,NY,1,P,1,2,3,C" + strings.Repeat(",300", 12) + strings.Repeat(",500", 12) + ",x" + cells + "\n")
		assert.ErrorIs(t, err, ErrTable, "%q", cells)
	}
	assert.NoError(t, new(Table).Beside("# frost\nS,,,,"+rain+strings.Repeat(",", 25)+"\nT,1,365,365,1"+strings.Repeat(",", 12)+change+"\n"), "either may be missing")
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
		f.Add(lines[i] + ",134,120,276,290" + strings.Repeat(",100", 12) + ",E" + strings.Repeat(",5", 24))
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
				for _, of := range []Extremes{s.Older.Value, s.Newer.Value} {
					if !(of.Min[m] > -220 && of.Max[m] < 180) { // two figures of a row at their bounds
						t.Fatalf("no such weather: %v to %v", of.Min[m], of.Max[m])
					}
				}
			}
		}
	})
}

// A table that was only opened finds what one that was checked finds, and a row that is
// damaged all the same is none.
func TestAnOpenedTableIsTheCheckedOne(t *testing.T) {
	checked, err := read(Text, BesideText)
	require.NoError(t, err)
	opened, err := Open(Text)
	require.NoError(t, err)
	opened.OpenBeside(BesideText)
	assert.Equal(t, checked.All(), opened.All())

	row := strings.SplitAfter(Text, "\n")[4]
	id, _, _ := strings.Cut(row, ",")
	for _, damaged := range []string{strings.Replace(row, ",", ",x", 9), strings.Replace(row, ",3", ",z", 20)} {
		table, err := Open(damaged + row)
		require.NoError(t, err)
		assert.Len(t, table.All(), 1)
		table, err = Open(damaged)
		require.NoError(t, err)
		assert.Nil(t, table.ByID(id))
		assert.Empty(t, table.All())
	}
	_, err = Open(row[:len(row)/2])
	assert.ErrorIs(t, err, ErrTable, "cut off")
}
