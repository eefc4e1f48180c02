package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Films, dates and fields side by side: what differs comes first, and only that
// is marked; each cell is what the advice itself says.
func TestSideBySide(t *testing.T) {
	all := pack(t)
	c := all["pepper-cool-spring"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	on := func(c field.Case) *plan.Advice {
		a, err := rules.AdviseOn(ground, c)
		require.NoError(t, err)
		return &a
	}
	later := c
	later.PlantOn.Value = later.PlantOn.Value.Plus(60)
	for name, list := range map[string][]*plan.Advice{
		"films":  {on(plan.WithFilm(c, table.Black)), on(plan.WithFilm(c, table.WhiteOnBlack)), on(plan.WithFilm(c, table.Clear)), on(plan.WithFilm(c, table.Paper))},
		"dates":  {on(c), on(later)},
		"fields": {on(c), on(all["melon-weak-well"])},
		"same":   {on(c), on(c)},
	} {
		rows := plan.Compare(list)
		same := false
		for _, row := range rows {
			require.Len(t, row.Cells, len(list))
			assert.False(t, same && row.Differs, "%s: %s differs and stands below what is alike", name, row.What)
			same = same || !row.Differs
			differs := false
			for i := range row.Cells {
				assert.True(t, row.Cells[i].Complete(), row.Cells[i].Text)
				differs = differs || row.Cells[i].In(unit.Metric) != row.Cells[0].In(unit.Metric)
			}
			if differs {
				assert.True(t, row.Differs, "%s: %s", name, row.What)
			}
			if row.What == "Film" && name == "films" {
				assert.Equal(t, "white-on-black film", row.Cells[1].In(unit.US))
				assert.True(t, row.Differs)
			}
		}
		if name == "same" {
			assert.False(t, rows[0].Differs)
		} else {
			assert.True(t, rows[0].Differs)
		}
	}
}
