//go:build !js

package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
)

// The pack that the room opens with is read by the reader of packs, with the lessons that a
// test of the pack holds the engine to.
func TestTheRoomsPackIsAPack(t *testing.T) {
	text, err := RoomPack()
	require.NoError(t, err)
	title, stops, err := casefile.DecodePack([]byte(text), landIDs(), nil)
	require.NoError(t, err)
	assert.Equal(t, "Eight invented farms", title)
	require.Len(t, stops, len(pack.Farms))
	for i, s := range stops {
		f := &pack.Farms[i]
		assert.Equal(t, f.ID, s.Farm)
		assert.Equal(t, f.Asks, s.Ask)
		assert.Equal(t, f.Asks.Key(f.Answer), s.Answer)
		assert.Equal(t, f.Asks.Key(f.Then), s.Then)
		assert.Equal(t, field.InputByName(f.Turn), s.Turn)
		assert.Equal(t, f.To, s.To)
		assert.Equal(t, f.Lesson, s.Lesson)
		assert.NotEmpty(t, s.Notes)
	}
}
