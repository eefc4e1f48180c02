package facts

import (
	"slices"
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
			if modelled[film] != ([heat.Depths]float64{}) { // else worked out at each start
				assert.InDelta(t, effect[depth], modelled[film][depth], 1e-6, "%s", table.FilmID(film).Key())
			}
		}
	}
}

// Nothing but its row of the table is needed for a film to warm as the model says: with
// nothing kept, or one film missing, the covers are those that are kept.
func TestAFilmThatIsNotKeptIsWorkedOut(t *testing.T) {
	made := coverList()[table.Red]
	made.Transmit += 0.1
	list := append(coverList(), made)
	worked := coversOf(list, modelled[:]).Modelled()
	require.Len(t, worked, len(list))
	for film := range modelled {
		for depth := range heat.Depths {
			assert.InDelta(t, modelled[film][depth], worked[film][depth], 1e-6, "%s", table.FilmID(film).Key())
		}
	}
	assert.Greater(t, worked[table.FilmCount][0], worked[table.Red][0]+0.1, "it passes more sun than red, so it warms more")

	missing := slices.Clone(modelled[:])
	missing[table.Red] = [heat.Depths]float64{}
	assert.InDelta(t, modelled[table.Red][0], coversOf(coverList(), missing).Modelled()[table.Red][0], 1e-6)
}
