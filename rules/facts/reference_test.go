package facts

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/table"
)

// What the model makes of the films of the table at the reference state is worked out
// anew; whoever changes a film, the loam or the model takes over what is printed.
func TestTheReferenceIsWhatTheModelGives(t *testing.T) {
	r, err := heat.NewReference(coverList(), int(table.Black), HeatSoil(table.SoilByID(usualLoam)))
	require.NoError(t, err)
	for !r.Step(1000) {
	}
	for film, effect := range r.Covers().Modelled() {
		t.Logf("	{%v, %v}, // %s", effect[AtFive], effect[AtTen], table.FilmID(film).Key())
		for depth := range heat.Depths {
			assert.InDelta(t, effect[depth], modelled[film][depth], 1e-6, "%s", table.FilmID(film).Key())
		}
	}
}
