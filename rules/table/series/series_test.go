package series

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/table"
)

// Source: NRCS, Official Soil Series Descriptions: Norfolk has a surface of loamy sand and
// is well drained, Drummer of silty clay loam and is poorly drained.
func TestSeriesAreFoundByName(t *testing.T) {
	for name, want := range map[string][2]string{"Norfolk": {"loamy-sand", "fair"}, " norfolk ": {"loamy-sand", "fair"}, "Drummer": {"silty-clay-loam", "slow"}} {
		texture, drainage, ok := Table(Text).Find(name)
		assert.True(t, ok, name)
		assert.Equal(t, want, [2]string{texture, drainage}, name)
	}
	for _, name := range []string{"", " ", "Norfol", "Norfolk,loamy-sand", "#", "Aab\nab", "Nowhereville"} {
		texture, drainage, ok := Table(Text).Find(name)
		assert.False(t, ok || texture != "" || drainage != "", name)
	}
	_, _, ok := Table("").Find("Norfolk")
	assert.False(t, ok)
}

// Every row names a texture of ours, or none, and one of three drainages, or none.
func TestEverySeriesHasOurIDs(t *testing.T) {
	rows := 0
	for line := range strings.Lines(Text) {
		if line[0] == '#' {
			continue
		}
		rows++
		cell := strings.Split(strings.TrimSuffix(line, "\n"), ",")
		require.Len(t, cell, 3, line)
		assert.True(t, cell[1] == "" || table.SoilByID(cell[1]) != nil, line)
		assert.Contains(t, []string{"", "quick", "fair", "slow"}, cell[2], line)
	}
	assert.Equal(t, 24833, rows)
}
