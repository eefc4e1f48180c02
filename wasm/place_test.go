//go:build !js

package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestPlacesAreFoundOnTheCommandLine(t *testing.T) {
	for typed, want := range map[string]string{
		"nagano": "Nagano, Nagano, JP: \"lat\": 36.65", "14853": "14853, US: ", "-us 42.45, -76.46": "nearest station", "-- -45.9 170.5": "New Zealand",
		"ithaca ny": "station USC00304174", "São Paulo": "São Paulo, São Paulo, BR",
	} {
		var out, errs strings.Builder
		assert.Zero(t, run(append([]string{"place"}, strings.Fields(typed)...), nil, &out, &errs), typed)
		assert.Contains(t, out.String(), want)
		assert.Contains(t, out.String(), "high")
		assert.Empty(t, errs.String())
	}
	for _, nonsense := range []string{"", "qqqqzz", "99 200", "-- -91 0", "12 x"} {
		var out, errs strings.Builder
		assert.Equal(t, 2, run(append([]string{"place"}, strings.Fields(nonsense)...), nil, &out, &errs), nonsense)
		assert.Empty(t, out.String(), nonsense)
		assert.Contains(t, errs.String(), "Nothing is known by")
	}
}
