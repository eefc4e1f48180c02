//go:build !js

package tongue_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/tongue"
)

func TestEachLanguageCanBeRead(t *testing.T) {
	require.NotEmpty(t, tongue.Names())
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err, name)
		for _, english := range []string{"8 to 10 in", "May 13", "13 May", "less than 0.5 mil", "June 1, 2027", "12.5 °C", "Monday, June 7"} {
			said, all := c.Say(english)
			assert.True(t, all, "%s: %s", name, english)
			assert.NotContains(t, said, "{", english)
		}
	}
	_, err := tongue.Load("xx")
	assert.ErrorContains(t, err, "Allowed: en, ")
}

// A language comes to the page in parts, all of it once, and none is large.
func TestThePartsOfALanguageAreTheWhole(t *testing.T) {
	texts := []string{"Buy", "8 to 10 in", "June 1, 2027"}
	for _, name := range tongue.Names() {
		whole, err := tongue.Page(name, nil)
		require.NoError(t, err)
		parts, err := tongue.Page(name, texts)
		require.NoError(t, err)
		lines := func(parts []string) []string {
			return slices.Sorted(strings.Lines(strings.Join(parts, "")))
		}
		assert.Equal(t, lines(whole), lines(parts))
		first, err := tongue.Parse(parts[0])
		require.NoError(t, err)
		all, err := tongue.Load(name)
		require.NoError(t, err)
		for _, text := range texts {
			want, _ := all.Say(text)
			said, known := first.Say(text)
			assert.True(t, known, text)
			assert.Equal(t, want, said)
		}
		assert.Less(t, len(parts[0]), 20_000, "the first part holds more than three texts need")
		for _, part := range parts {
			assert.LessOrEqual(t, len(part), 111_000)
		}
	}
}
