//go:build !js

package site

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The toolchain that go.mod pins is one whose tables are known, so whoever lets Go
// choose gets the small program.
func TestThePinnedGoIsKnown(t *testing.T) {
	root, err := moduleRoot()
	require.NoError(t, err)
	text, err := os.ReadFile(filepath.Join(root, "go.mod"))
	require.NoError(t, err)
	pinned := regexp.MustCompile(`(?m)^toolchain (go\S+)$`).FindSubmatch(text)
	require.NotNil(t, pinned, "go.mod names no toolchain")
	assert.True(t, knows(string(pinned[1])), "%s", pinned[1])
	for _, version := range []string{"go1.26", "go1.26.8", "go1.26.11"} {
		assert.True(t, knows(version), version)
	}
	for _, version := range []string{"", "go1.25.9", "go1.27rc1", "go1.27.0", "go1.260.1", "go1.26rc2", "devel go1.27-abcdef"} {
		assert.False(t, knows(version), version)
	}
}

// With another Go the site builds, larger, and one sentence says so; with ours nothing
// is said.
func TestAnotherGoBuildsALargerSiteAndSaysSo(t *testing.T) {
	var said []string
	say := func(words string) { said = append(said, words) }
	ours, err := shrink(rawProgram(t), squeezedGo+".8", say)
	require.NoError(t, err)
	assert.Empty(t, said)

	larger, err := shrink(rawProgram(t), "go1.99.1", say)
	require.NoError(t, err)
	require.Len(t, said, 1)
	for _, part := range []string{"larger", "go1.99.1", squeezedGo, "wasm/site/goversion.go"} {
		assert.Contains(t, said[0], part)
	}
	packed := func(program []byte) int {
		zipped, err := Gzip(program)
		require.NoError(t, err)
		return len(zipped)
	}
	// The sentence's figure is that of brotli; gzip, which takes a second, finds up to half as much again.
	assert.InDelta(t, 510_000, packed(larger)-packed(ours), 255_000)
	built, err := Make(Options{Pages: Pages(), Program: larger})
	require.NoError(t, err)
	assert.NotEmpty(t, built.Files["index.html"])

	// Segments of a kind that is not known stay as they are; ours must not have any.
	strange := []byte("\x00asm\x01\x00\x00\x00\x0b\x05\x01\x01\x02ab")
	said = nil
	whole, err := shrink(strange, "go1.99.1", say)
	require.NoError(t, err)
	assert.Equal(t, strange, whole)
	assert.Len(t, said, 1)
	_, err = shrink(strange, squeezedGo+".8", say)
	assert.Error(t, err)
}
