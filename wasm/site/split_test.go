//go:build !js

package site

import (
	"bytes"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Between them the two halves hold each function once, under its own number, and
// nothing else differs from the program that was compiled.
func TestTheHalvesAreTheWhole(t *testing.T) {
	s := built(t)
	whole, err := readModule(s.Program)
	require.NoError(t, err)
	first, err := readModule(s.First)
	require.NoError(t, err)
	later := 0
	// The rest takes more than functions from outside, so it is read by hand.
	in := reader{b: s.Rest, at: 8}
	rest := map[byte][]byte{}
	for in.at < len(in.b) && in.err == nil {
		id := in.byte()
		rest[id] = in.bytes(int(in.unsigned()))
	}
	require.NoError(t, in.err)
	assert.Equal(t, whole.section(1), rest[1], "kinds of functions")
	assert.Equal(t, whole.section(3), rest[3], "which function is of which kind")
	for _, id := range []byte{1, 2, 3, 4, 5, 6, 9, 11} {
		assert.True(t, bytes.Equal(whole.section(id), first.section(id)), "section %d", id)
	}
	for _, id := range []byte{5, 6, 7, 8, 11} {
		assert.NotContains(t, rest, id, "memory, globals and data are the first half's alone")
	}
	code := reader{b: rest[10]}
	require.EqualValues(t, len(whole.bodies), code.unsigned())
	for i, body := range whole.bodies {
		there := code.bytes(int(code.unsigned()))
		here := bytes.Equal(body, first.bodies[i])
		if !here {
			later++
		}
		if !here && !bytes.Equal(body, there) {
			t.Errorf("function %d is in neither half", i)
		}
	}
	require.NoError(t, code.err)
	assert.Greater(t, later, 500)
	assert.Less(t, len(s.First), len(s.Program))
	assert.Contains(t, string(first.section(7)), "table")
}

// Another program, such as the framework's smallest, stays in one file.
func TestAProgramWithoutTheListStaysWhole(t *testing.T) {
	s := built(t)
	m, err := readModule(s.Program)
	require.NoError(t, err)
	plain := slices.Clone(s.Program[:8])
	for _, part := range m.sections {
		if part.id != 0 {
			plain = append(append(append(plain, part.id), unsigned(uint64(len(part.body)))...), part.body...)
		}
	}
	first, rest, err := split(plain)
	require.NoError(t, err)
	assert.True(t, bytes.Equal(plain, first))
	assert.Nil(t, rest)
}

func TestSplitRefusesWhatItDoesNotKnow(t *testing.T) {
	for name, program := range map[string][]byte{
		"nothing":         nil,
		"not a program":   []byte("<!DOCTYPE html>"),
		"cut off":         append([]byte("\x00asm\x01\x00\x00\x00"), 10, 200, 1),
		"no functions":    []byte("\x00asm\x01\x00\x00\x00"),
		"another's table": append([]byte("\x00asm\x01\x00\x00\x00"), 2, 1, 0, 3, 2, 1, 0, 9, 6, 1, 0, 0x41, 0, 0x0b, 0, 10, 4, 1, 2, 0, 0x0b),
	} {
		_, _, err := split(program)
		assert.Error(t, err, name)
	}
	_, err := calls([]byte{0, 0xfd, 0x0b})
	assert.ErrorContains(t, err, "0xfd")
}
