//go:build !page

package table_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/table"
)

// Each row says what is seen, what it is and what to do, in sentences, with who says so;
// the rows of a part stand together, and each part has some.
func TestTroublesAreWhole(t *testing.T) {
	seen, last := map[string]bool{}, table.TroublePart(0)
	rows := map[table.TroublePart]int{}
	for i := range table.Troubles {
		r := &table.Troubles[i]
		assert.False(t, seen[r.ID], r.ID)
		seen[r.ID] = true
		assert.GreaterOrEqual(t, r.Part, last, "%s stands among another part's rows", r.ID)
		last = r.Part
		rows[r.Part]++
		for _, text := range append([]string{r.Sees, r.Is}, r.Do...) {
			assert.Regexp(t, `^[A-Z].*\.$`, text, r.ID)
		}
		if r.Care != "" {
			assert.Regexp(t, `^[A-Z].*\.$`, r.Care, r.ID)
		}
		assert.NotEmpty(t, r.Do, r.ID)
		assert.NotEmpty(t, r.Sources, r.ID)
		for _, source := range r.Sources {
			assert.True(t, (source.Address == "") != (source.NoAddress == ""), "%s: an address, or why there is none", source.ID)
			assert.NotEmpty(t, source.Year, source.ID)
		}
	}
	for _, part := range table.TroubleParts() {
		assert.Greater(t, rows[part], 1, part)
	}
}
