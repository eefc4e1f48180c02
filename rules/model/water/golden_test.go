package water

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/unit"
)

var update = flag.Bool("update", false, "write the golden plan again")

// The plan of the invented tomato field, with too few hours, byte for byte: run
// natively and as js/wasm it must be the same file.
func TestGoldenPlan(t *testing.T) {
	in := sixtyZones()
	in.Beds = unit.Known(30)
	in.Hours = unit.Known(unit.Hours(20))
	p := plan(t, in)
	got, err := json.MarshalIndent(p, "", " ")
	require.NoError(t, err)
	got = append(got, '\n')
	if *update {
		require.NoError(t, os.WriteFile("testdata/plan.golden.json", got, 0o644))
	}
	want, err := os.ReadFile("testdata/plan.golden.json")
	require.NoError(t, err)
	assert.True(t, bytes.Equal(want, got), "the plan changed: run with -update and read the difference before you commit it")
}
