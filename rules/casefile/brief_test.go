package casefile_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/internal/farms"
)

// The brief line says what the advice file says, under the same names, and is short.
func TestTheBriefLineAgreesWithTheAdviceFile(t *testing.T) {
	for id, c := range farms.All(t) {
		if !long.Sample(id) {
			continue
		}
		a := farms.Advise(t, c)
		line, err := casefile.EncodeBrief(&a)
		require.NoError(t, err, id)
		assert.LessOrEqual(t, len(line), 2000, id)
		whole, err := casefile.EncodeAdviceLine(&a)
		require.NoError(t, err, id)
		var brief, file map[string]any
		require.NoError(t, json.Unmarshal(line, &brief), id)
		require.NoError(t, json.Unmarshal(whole, &file), id)
		for _, part := range []string{"film", "surface", "bed", "tape", "wait", "water_plan"} {
			for name, value := range brief[part].(map[string]any) {
				if !assert.Equal(t, file[part].(map[string]any)[name], value, "%s: %s.%s", id, part, name) {
					t.Log(string(line))
				}
			}
		}
		assert.Equal(t, file["verdict"].(map[string]any)["choice"], brief["verdict"], id)
		assert.Equal(t, file["case"].(map[string]any)["crop"], brief["crop"], id)
	}
}
