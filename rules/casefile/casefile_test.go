package casefile_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table/normals"
)

func places(t testing.TB) *normals.Table {
	t.Helper()
	table, err := normals.Embedded()
	require.NoError(t, err)
	return table
}

// cases reads every case of the pack by its name.
func cases(t testing.TB) map[string]rules.Case {
	t.Helper()
	files, err := filepath.Glob("../../testdata/cases/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	all := map[string]rules.Case{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		c, errs := casefile.Decode(data, places(t))
		require.NoError(t, errs, file)
		all[strings.TrimSuffix(filepath.Base(file), ".json")] = c
	}
	return all
}
