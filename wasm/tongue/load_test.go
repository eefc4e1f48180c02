//go:build !js

package tongue_test

import (
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
