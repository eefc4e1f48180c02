package water

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/drip"
)

// What [Compared] leaves out, and lines that are known from other inputs, change
// no sketch.
func TestComparingAlike(t *testing.T) {
	known := &drip.Known{}
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		tapes := []Candidate{{Spacing: in.Spacing, Flow: in.TapeFlow}}
		need, sketches, problems := Compare(in, tapes)
		for range 2 { // the second time every line is known
			again, like, none := CompareKnowing(known, Compared(in), tapes)
			assert.Equal(t, len(problems) > 0, len(none) > 0)
			assert.Equal(t, need, again)
			assert.Equal(t, sketches, like)
		}
	})
}
