//go:build !js

package main

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A trial from plan to result: the tally sheet follows the plan, and a filled one is read.
func TestATrialOnTheCommandLine(t *testing.T) {
	t.Parallel()
	farm := cases + "pepper-cool-spring.json"
	code, out, errs := runCommand("trial", "-us", "-films", "black,silver-on-black", farm)
	require.Equal(t, 0, code, errs)
	for _, part := range []string{"A trial of black, silver-on-black in 8 blocks", "four times in five", "Block 4:", "Guard beds", "Never burn or bury plastic film", "stands in for this crop"} {
		assert.Contains(t, out, part)
	}
	code, again, _ := runCommand("trial", "-us", "-films", "black,silver-on-black", farm)
	assert.Equal(t, 0, code)
	assert.Equal(t, out, again, "same field, same plan")

	code, sheet, errs := runCommand("trial", "-films", "black,silver-on-black", "-sheet", farm)
	require.Equal(t, 0, code, errs)
	rows, err := csv.NewReader(strings.NewReader(sheet)).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 17)
	for i, row := range rows[1:] {
		yield := 50 + i/2
		if row[3] == "silver-on-black" {
			yield += 9 + i%3
		}
		row[6], row[7] = strconv.Itoa(yield-20), "20"
	}
	file := filepath.Join(t.TempDir(), "tally.csv")
	write := func() {
		var text strings.Builder
		require.NoError(t, csv.NewWriter(&text).WriteAll(rows))
		require.NoError(t, os.WriteFile(file, []byte(text.String()), 0o644))
	}
	write()
	code, out, errs = runCommand("trial", "-read", file)
	require.Equal(t, 0, code, errs)
	for _, part := range []string{"Silver-on-black gave ", "more than black", "this field, this crop and this year", "analysis of variance", "permutation within blocks, all deals"} {
		assert.Contains(t, out, part)
	}
	rows[1][6] = "many"
	write()
	code, _, errs = runCommand("trial", "-read", file)
	assert.Equal(t, 2, code)
	assert.Contains(t, errs, `line 2, first picking: "many" is not allowed`)

	for _, films := range []string{"plaid,black", "black", "black,black"} {
		code, _, errs = runCommand("trial", "-films", films, farm)
		assert.Equal(t, 1, code, films)
		assert.NotEmpty(t, errs)
	}
	code, _, errs = runCommand("trial", cases+"melon-too-late.json")
	assert.Equal(t, 1, code)
	assert.Contains(t, errs, "no trial")
}
