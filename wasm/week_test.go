//go:build !js

package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The week of an invented farm: a sheet goes into the file, and the file alone says the same.
func TestTheWeekOnTheCommandLine(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	sheet := filepath.Join(dir, "days.csv")
	require.NoError(t, os.WriteFile(sheet, []byte("date,high,low,minutes,feel\n2027-07-21,95,72,0,\n2027-07-22,97,73,150,2\n2027-07-24,99,74,,\n"), 0o644))
	farm := cases + "pepper-cool-spring.json"
	code, out, errs := runCommand("week", "-us", "-today", "2027-07-24", "-days", sheet, farm)
	require.Equal(t, 0, code, errs)
	for _, part := range []string{"Run each zone ", "today, July 24, 2027", "of the water for roots is left this morning", "more than in usual weather", "After a day missed, run each zone ",
		"the account said", "zone 1, run 1: 6:00 to ", "2027-07-21: 72 °F to 95 °F", "no water", "Four weeks ahead", "Utah State University"} {
		assert.Contains(t, out, part)
	}
	code, file, errs := runCommand("week", "-us", "-days", sheet, "-file", farm)
	require.Equal(t, 0, code, errs)
	kept := filepath.Join(dir, "farm.json")
	require.NoError(t, os.WriteFile(kept, []byte(file), 0o644))
	code, again, errs := runCommand("week", "-us", "-today", "2027-07-24", kept)
	require.Equal(t, 0, code, errs)
	assert.Equal(t, out, again)

	for text, want := range map[string]string{
		"date,high,low\n2026-07-21,95,72\n":  "not of this field’s season",
		"date,high,low\n2027-07-21,900,72\n": "900 °F is not allowed",
	} {
		require.NoError(t, os.WriteFile(sheet, []byte(text), 0o644))
		code, out, errs = runCommand("week", "-us", "-days", sheet, farm)
		assert.Equal(t, 2, code)
		assert.Empty(t, out)
		assert.Contains(t, errs, want)
	}
	code, _, errs = runCommand("week", "-today", "2027-01-01", farm)
	assert.Equal(t, 1, code)
	assert.Contains(t, errs, "There is no week to tell")
}

// A season's log comes from a sheet or from the field, and is set beside an earlier one.
func TestTheLogIsTold(t *testing.T) {
	dir := t.TempDir()
	sheet, kept := filepath.Join(dir, "season.csv"), filepath.Join(dir, "before.json")
	require.NoError(t, os.WriteFile(sheet, []byte("date,stage,picked,hours,paid\n2027-07-06,1,,8,\n2027-09-14,,12,,\n2027-09-21,,20,2,96\n"), 0o644))
	farm := cases + "pepper-cool-spring.json"
	code, file, errs := runCommand("week", "-us", "-days", sheet, "-file", farm)
	require.Equal(t, 0, code, errs)
	require.NoError(t, os.WriteFile(kept, []byte(file), 0o644))
	code, out, errs := runCommand("log", "-us", "-days", sheet, farm, kept)
	require.Equal(t, 0, code, errs)
	for _, part := range []string{"Planted ", "First picked: September 14, 70 days after planting (before: September 14", "Picked: 32; ", "Hours: 10", "Money for each box or weight: 3 (before: 3)"} {
		assert.Contains(t, out, part)
	}
	code, _, errs = runCommand("log", farm)
	assert.Equal(t, 1, code)
	assert.Contains(t, errs, "Nothing of the season is written down")
	require.NoError(t, os.WriteFile(sheet, []byte("date,stage\n2027-07-06,7\n"), 0o644))
	code, _, errs = runCommand("log", "-days", sheet, farm)
	assert.Equal(t, 2, code)
	assert.Contains(t, errs, "1 planted, 2 first bloom, 3 film lifted")
}
