package normals

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/unit"
)

// Figures: GeoNames and the US Census Bureau's Gazetteer, as the table has them.
func TestPlacesAreFoundByName(t *testing.T) {
	p := NewPlaces(PlacesText)
	for typed, want := range map[string]Spot{
		"nagano": {"Nagano, Nagano, JP", 36.65, 138.18}, "SÃO PAULO": {"São Paulo, São Paulo, BR", -23.55, -46.64}, "sao paulo": {"São Paulo, São Paulo, BR", -23.55, -46.64},
		"örebro": {"Örebro, Örebro, SE", 59.27, 15.21}, "14853": {"14853, US", 42.45, -76.48}, "valencia es": {"Valencia, Valencia, ES", 39.47, -0.38}, "valencia, carabobo": {"Valencia, Carabobo, VE", 10.16, -68.0},
	} {
		found := p.Find(typed, 4)
		require.NotEmpty(t, found, typed)
		assert.Equal(t, want.Name, found[0].Name, typed)
		assert.InDelta(t, float64(want.Latitude), float64(found[0].Latitude), 0.05, typed)
		assert.InDelta(t, float64(want.Longitude), float64(found[0].Longitude), 0.05, typed)
	}
	assert.Len(t, p.Find("san", 4), 4)
	for _, typed := range []string{"", "x", "1485", "148530", "qqqqzz", "#", "CC BY", "columns", ",", "2026"} {
		assert.Empty(t, p.Find(typed, 4), typed)
	}
	empty := NewPlaces("")
	assert.Empty(t, empty.Find("nagano", 4))
}

// Every row holds a place on earth, and is found by its own name.
func TestEveryPlaceIsOnTheEarth(t *testing.T) {
	p := NewPlaces(PlacesText)
	rows := 0
	for line := range strings.Lines(PlacesText) {
		if line[0] == '#' {
			continue
		}
		rows++
		cell := strings.Split(strings.TrimSpace(line), ",")
		require.Len(t, cell, 6, line)
		_, ok := spotOf(cell[4], cell[5])
		require.True(t, ok, line)
		if rows%97 == 0 && len(cell[0]) > 1 {
			assert.NotEmpty(t, p.Find(cell[0], 8), line)
		}
	}
	assert.Equal(t, 23352+33791, rows)
}

func TestCoordinatesAreRead(t *testing.T) {
	for typed, want := range map[string][2]unit.Degrees{"42.45, -76.46": {42.45, -76.46}, "-45.9 170.5": {-45.9, 170.5}, "−33,18.4": {-33, 18.4}} {
		got, ok := Coordinates(typed)
		require.True(t, ok, typed)
		assert.Equal(t, want, [2]unit.Degrees{got.Latitude, got.Longitude}, typed)
	}
	for _, typed := range []string{"", "42", "91 0", "0 181", "NaN 0", "1 2 3", "north 3", "Inf 2"} {
		_, ok := Coordinates(typed)
		assert.False(t, ok, typed)
	}
}

// What a key costs in the search box, over all tables.
func BenchmarkFindEverywhere(b *testing.B) {
	p := NewPlaces(PlacesText)
	table, err := Embedded()
	require.NoError(b, err)
	for b.Loop() {
		p.Find("valen", 4)
		table.Find("valen", 8)
	}
}
