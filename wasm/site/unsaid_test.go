//go:build !js

package site

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The runtime's own words leave the program; ours, and those of a program's own faults, stay.
func TestOnlyTheRuntimesWordsAreBlanked(t *testing.T) {
	goroot, err := toolchain("../..")
	require.NoError(t, err)
	texts, err := runtimeTexts(goroot)
	require.NoError(t, err)
	assert.Greater(t, len(texts), 800)
	program := built(t).Program
	for _, gone := range []string{"runqsteal: runq overflow", "/memory/classes/metadata/mspan/free:bytes"} {
		assert.Contains(t, texts, gone)
		assert.False(t, bytes.Contains(program, []byte(gone)), gone)
	}
	for _, stays := range []string{"index out of range [%x] with length %y", "invalid memory address or nil pointer dereference", "assignment to entry in nil map", "The ground drains slowly: on the flat the roots would stand in water."} {
		assert.NotContains(t, texts, stays)
		assert.True(t, bytes.Contains(program, []byte(stays)), stays)
	}
	const text = "twice the same, twice the same; a text that stands here once. short"
	once := "a text that stands here once"
	assert.Equal(t, strings.Replace(text, once, strings.Repeat(" ", len(once)), 1), string(unsaid([]byte(text), []string{once, "twice the same", "short"})))
}
