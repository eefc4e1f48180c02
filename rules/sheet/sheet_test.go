package sheet

import (
	"encoding/csv"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestEveryLanguageSaysEverythingWithTheSameQuantities(t *testing.T) {
	require.Greater(t, len(english), 40)
	for _, k := range Keys() {
		en, es := english[k], spanish[k]
		require.NotEmpty(t, es, "%s is missing in Spanish", k)
		assert.Equal(t, strings.Count(en, "{}"), strings.Count(es, "{}"), string(k))
		assert.NotEqual(t, en, es, string(k))
	}
	assert.Len(t, spanish, len(english))
}

// The Spanish terms are those of the glossary.
func TestTheGlossaryIsFollowed(t *testing.T) {
	file, err := os.Open("../../testdata/glossary-es.csv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment, r.FieldsPerRecord = '#', -1
	rows, err := r.ReadAll()
	require.NoError(t, err)
	var all strings.Builder
	for _, s := range spanish {
		all.WriteString(strings.ToLower(s) + "\n")
	}
	for _, row := range rows {
		words := strings.Fields(row[1])
		assert.Contains(t, all.String(), words[0], "the glossary's %q for %q", row[1], row[0])
	}
}
