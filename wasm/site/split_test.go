//go:build !js

package site

import (
	"bytes"
	"encoding/binary"
	"errors"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// single is a program's sections, each once.
func single(t *testing.T, program []byte) map[byte][]byte {
	t.Helper()
	out := map[byte][]byte{}
	for id, list := range sections(t, program) {
		require.Len(t, list, 1, "section %d", id)
		out[id] = list[0]
	}
	return out
}

// Between them the two halves hold each function once, under its own number. Each has
// one function more, which counts the table of functions when its data is in memory,
// and nothing else differs from the program that was compiled.
func TestTheHalvesAreTheWhole(t *testing.T) {
	s := built(t)
	whole, err := readModule(s.Program)
	require.NoError(t, err)
	first, rest := single(t, s.First), single(t, s.Rest)
	grown := func(section, with []byte) []byte {
		in := reader{b: section}
		n := in.unsigned()
		return slices.Concat(unsigned(n+1), section[in.at:], with)
	}
	count := reader{b: whole.section(1)}
	kinds, of := grown(whole.section(1), []byte{0x60, 0, 0}), grown(whole.section(3), unsigned(count.unsigned()))
	for half, is := range []map[byte][]byte{first, rest} {
		assert.Equal(t, kinds, is[1], "kinds of functions, half %d", half)
		assert.True(t, bytes.Equal(of, is[3]), "which function is of which kind, half %d", half)
		assert.Equal(t, unsigned(uint64(whole.imports+len(whole.bodies))), is[8], "what runs at the start, half %d", half)
	}
	for _, id := range []byte{2, 4, 5, 6, 9} {
		assert.True(t, bytes.Equal(whole.section(id), first[id]), "section %d", id)
	}
	for _, id := range []byte{5, 6, 7} {
		assert.NotContains(t, rest, id, "memory and globals are the first half's alone")
	}
	here, there := reader{b: first[10]}, reader{b: rest[10]}
	require.EqualValues(t, len(whole.bodies)+1, here.unsigned())
	require.EqualValues(t, len(whole.bodies)+1, there.unsigned())
	later := 0
	for i, body := range whole.bodies {
		here, there := here.bytes(int(here.unsigned())), there.bytes(int(there.unsigned()))
		if !bytes.Equal(body, here) {
			later++
			if !bytes.Equal(body, there) {
				t.Errorf("function %d is in neither half", i)
			}
		}
	}
	assert.Equal(t, here.bytes(int(here.unsigned())), there.bytes(int(there.unsigned())))
	require.NoError(t, errors.Join(here.err, there.err))
	assert.Greater(t, later, 500)
	assert.Less(t, len(s.First), len(s.Program))
	assert.Contains(t, string(first[7]), "table")
}

// The data of both halves together is the program's, but for what is counted when they
// come: a Go version of that count, which the browser's is compared with in
// TestTheHalvesMakeTheMemory.
func TestTheFunctableIsCounted(t *testing.T) {
	s := built(t)
	segments, err := readSegments(sections(t, s.Program)[11][0])
	require.NoError(t, err)
	table, err := readFunctable(mergeSegments(segments))
	require.NoError(t, err)
	require.True(t, table.counted(), "the linker no longer writes functions and records one after the other")
	want, got := memoryOf(t, s.Program), memoryOf(t, s.First)
	got = append(got, make([]byte, len(want)-len(got))...)
	rest, err := readSegments(sections(t, s.Rest)[11][0])
	require.NoError(t, err)
	held := 0
	for _, s := range rest {
		held += len(s.data)
		copy(got[s.at:], s.data)
	}
	assert.Greater(t, held, 50_000, "bytes that only the second half needs")
	put := func(at int, v uint32) { binary.LittleEndian.PutUint32(got[int(table.at)+at:], v) }
	for i := range table.count {
		put(table.rows+8*i, uint32(table.entry(i)))
		put(table.rows+8*i+4, uint32(table.record(i)-table.rows))
		put(table.record(i), uint32(table.entry(i)))
	}
	assert.True(t, bytes.Equal(want, got))
}

// A table that another release of Go may write otherwise is left as it is.
func TestATableThatCannotBeCountedStaysWhole(t *testing.T) {
	s := built(t)
	segments, err := readSegments(sections(t, s.Program)[11][0])
	require.NoError(t, err)
	for name, change := range map[string]func(*functable){
		"a record out of turn":   func(f *functable) { f.setWord(f.rows+8*7+4, f.word(f.rows+8*9+4)) },
		"a function out of turn": func(f *functable) { f.setWord(f.rows+8*7, f.word(f.rows+8*7)+1) },
		"a record of another":    func(f *functable) { f.setWord(f.record(7), f.word(f.record(8))) },
	} {
		table, err := readFunctable(mergeSegments(segments))
		require.NoError(t, err)
		change(&table)
		before := bytes.Clone(table.bytes)
		recount, rest, err := table.part(func(int) bool { return true })
		require.NoError(t, err, name)
		assert.Nil(t, recount, name)
		assert.Empty(t, rest, name)
		assert.True(t, bytes.Equal(before, table.bytes), name)
	}
	_, err = readFunctable(nil)
	assert.ErrorIs(t, err, errNoTable)
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
