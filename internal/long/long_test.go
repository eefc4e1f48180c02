package long

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTheSwitch(t *testing.T) {
	skipped := func() (was bool) {
		t.Run("asks", func(t *testing.T) {
			defer func() { was = t.Skipped() }()
			Test(t)
		})
		return was
	}
	sampled := func() (n int) {
		for i := range 500 {
			if Sample(fmt.Sprint("farm ", i)) {
				n++
			}
		}
		return n
	}
	t.Setenv("FF_LONG", "")
	assert.True(t, skipped())
	assert.False(t, Asked() || All())
	assert.Equal(t, 3, Of(3, 30))
	assert.InDelta(t, 100, sampled(), 40)
	for _, word := range []string{"1", "all", "rest"} {
		t.Setenv("FF_LONG", word)
		assert.False(t, skipped())
		assert.True(t, Asked())
		assert.Equal(t, word == "all", All())
		assert.Equal(t, word == "rest", Rest())
		assert.Equal(t, 30, Of(3, 30))
		assert.Equal(t, 500, sampled())
	}
}
