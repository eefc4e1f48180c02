//go:build !js

package site

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every room of the engine is compiled for size: one that is forgotten costs some 15 kB.
// Models are not, whose loops run a million times, nor are the tables, which would grow.
func TestEveryRoomIsCompiledForSize(t *testing.T) {
	rooms, err := os.ReadDir("../../rules")
	require.NoError(t, err)
	for _, room := range rooms {
		switch room.Name() {
		case "model", "table", "internal":
			continue
		}
		if room.IsDir() {
			assert.Contains(t, cold, "filmfurrow/rules/"+room.Name())
		}
	}
}
