//go:build !js

package site

import (
	"bytes"
	"encoding/binary"
	"maps"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// raw is the program as the linker leaves it, linked once for the tests.
var raw = sync.OnceValues(func() ([]byte, error) {
	root, err := moduleRoot()
	if err != nil {
		return nil, err
	}
	return link(root, false)
})

func rawProgram(t *testing.T) []byte {
	t.Helper()
	program, err := raw()
	require.NoError(t, err)
	return program
}

// sections splits a program into its sections.
func sections(t *testing.T, program []byte) map[byte][][]byte {
	t.Helper()
	in := reader{b: program, at: 8}
	found := map[byte][][]byte{}
	for in.at < len(in.b) {
		id := in.byte()
		found[id] = append(found[id], in.bytes(int(in.unsigned())))
		require.NoError(t, in.err)
	}
	return found
}

// memoryOf is the memory that a program starts with.
func memoryOf(t *testing.T, program []byte) []byte {
	t.Helper()
	segments, err := readSegments(sections(t, program)[11][0])
	require.NoError(t, err)
	var memory []byte
	for _, s := range segments {
		memory = append(memory, make([]byte, int(s.at)+len(s.data)-len(memory))...)
		copy(memory[s.at:], s.data)
	}
	return memory
}

func TestSqueezeChangesOnlyWhatItSays(t *testing.T) {
	raw := rawProgram(t)
	before := memoryOf(t, raw)

	// A program of a release that is not known: segments are joined, memory is the same.
	joined, err := squeeze(raw, false)
	require.NoError(t, err)
	assert.True(t, bytes.Equal(before, memoryOf(t, joined)), "the memory at the start is unchanged")
	segments, err := readSegments(sections(t, joined)[11][0])
	require.NoError(t, err)
	assert.Less(t, len(segments), 2000)

	// Ours: only the tables of lines and inlined calls, and the references to them,
	// are blanked; 255 is the mark for "no table" of the functions' own tables.
	squeezed, err := squeeze(raw, true)
	require.NoError(t, err)
	after := memoryOf(t, squeezed)
	require.Len(t, after, len(before))
	assertStartAdded(t, raw, squeezed)
	code := reader{b: sections(t, squeezed)[10][0]}
	var last []byte
	for range code.unsigned() {
		last = code.bytes(int(code.unsigned()))
	}
	assert.Less(t, len(squeezed), len(raw)-3_000_000, "tables that count are left out")
	run(t, last, after) // from here on, the memory is that which Go finds
	table := bytes.Index(before, []byte{0xf1, 0xff, 0xff, 0xff, 0, 0, 1, 8})
	require.Positive(t, table)
	instructions, rows := table+int(binary.LittleEndian.Uint64(before[table+56:])), table+int(binary.LittleEndian.Uint64(before[table+64:]))
	end := rows + 8*int(binary.LittleEndian.Uint64(before[table+8:]))
	packed := func(i int) bool { return i >= instructions && i < rows } // read by assertStacksCanBeRead
	offsets := map[int]bool{}
	for i := rows; i < end; i += 8 {
		f := rows + int(binary.LittleEndian.Uint32(before[i+4:]))
		for _, at := range append([]int{f + 12, f + 16}, f+44, f+48, f+52, f+56, f+60) {
			for b := range 4 {
				offsets[at+b] = at < f+44+4*int(binary.LittleEndian.Uint32(before[f+28:]))
			}
		}
	}
	types := 0
	for i := range before[:table] {
		if before[i] != after[i] {
			require.Contains(t, "?0123456789", string(after[i]), "before the table only names are changed")
			types++
		}
	}
	assert.Greater(t, types, 15_000)
	parts := map[string]bool{}
	for at := 0; ; at++ {
		next := bytes.Index(before[at:table], []byte("*app."))
		if next < 0 {
			break
		}
		if at += next; after[at+1] < '0' || after[at+1] > '9' {
			continue // within another name
		}
		name := string(after[at:][:1+bytes.IndexByte(after[at+1:], '?')])
		require.False(t, parts[name], "%s is told twice", name)
		parts[name] = true
	}
	assert.Greater(t, len(parts), 100, "the page's parts keep apart")
	blanked := 0
	for i := table; i < len(before); i++ {
		if before[i] != after[i] {
			require.True(t, after[i] == 0 || after[i] == 0xff && i > end || packed(i) || offsets[i], "a byte is blanked or left, never altered")
			if i < end {
				blanked++
			}
		}
	}
	assert.Greater(t, blanked, 50_000)
	assertStacksCanBeRead(t, before[table:], after[table:])
	for id, list := range sections(t, raw) {
		if !slices.Contains([]byte{1, 3, 10, 11}, id) {
			assert.Equal(t, list, sections(t, squeezed)[id], "section %d", id)
		}
	}
	assertOnlyEmptied(t, raw, squeezed)
	_, err = squeeze(squeezed, true)
	assert.ErrorContains(t, err, "already")
}

// Beside what was there, a kind of function, a function of that kind, and the word that
// it runs at the start.
func assertStartAdded(t *testing.T, raw, squeezed []byte) {
	t.Helper()
	was, is := sections(t, raw), sections(t, squeezed)
	for _, id := range []byte{1, 3} {
		before, after := reader{b: was[id][0]}, reader{b: is[id][0]}
		n := before.unsigned()
		require.Equal(t, n+1, after.unsigned())
		require.True(t, bytes.HasPrefix(after.b[after.at:], before.b[before.at:]))
	}
	require.True(t, bytes.HasSuffix(is[1][0], []byte{0x60, 0, 0}), "it takes nothing and gives nothing")
	imports, own := reader{b: was[2][0]}, reader{b: was[3][0]}
	start := reader{b: is[8][0]}
	require.Equal(t, imports.unsigned()+own.unsigned(), start.unsigned())
}

// run does what the function at the start does, by the core specification 2.0, §4.4,
// for the few instructions that it has.
func run(t *testing.T, body, memory []byte) {
	t.Helper()
	require.Equal(t, []byte{1, 5, 0x7f}, body[:3])
	var locals [5]uint32
	var stack []uint32
	pop := func() uint32 { v := stack[len(stack)-1]; stack = stack[:len(stack)-1]; return v }
	push := func(v uint32) { stack = append(stack, v) }
	in := reader{b: body, at: 3}
	var labels []int // where a branch leads: back to a loop's beginning, or out of a block (-1)
	place := func() int { in.unsigned(); n := int(in.unsigned()); return n }
	for steps := 0; in.at < len(body); steps++ {
		require.Less(t, steps, 50_000_000, "it ends")
		switch op := in.byte(); op {
		case 0x20:
			push(locals[in.byte()])
		case 0x21:
			locals[in.byte()] = pop()
		case 0x22:
			locals[in.byte()] = stack[len(stack)-1]
		case 0x28:
			at := place() + int(pop())
			push(binary.LittleEndian.Uint32(memory[at:]))
		case 0x2d:
			at := place() + int(pop())
			push(uint32(memory[at]))
		case 0x36:
			v, at := pop(), place()
			binary.LittleEndian.PutUint32(memory[at+int(pop()):], v)
		case 0x41:
			push(uint32(in.signed()))
		case 0x46, 0x47, 0x49, 0x6a, 0x6c, 0x71, 0x74, 0x76:
			b, a := pop(), pop()
			truth := map[bool]uint32{true: 1}
			push([]uint32{0x46: truth[a == b], 0x47: truth[a != b], 0x49: truth[a < b], 0x6a: a + b, 0x6c: a * b, 0x71: a & b, 0x74: a << (b & 31), 0x76: a >> (b & 31)}[op])
		case 0x02:
			require.Equal(t, byte(0x40), in.byte())
			labels = append(labels, blockEnd(body, in.at))
		case 0x03:
			require.Equal(t, byte(0x40), in.byte())
			labels = append(labels, in.at)
		case 0x0d:
			require.Zero(t, in.unsigned())
			if pop() == 0 {
				break
			}
			if to := labels[len(labels)-1]; to < in.at {
				in.at = to
			} else {
				in.at, labels = to, labels[:len(labels)-1]
			}
		case 0x0b:
			labels = labels[:max(0, len(labels)-1)]
		default:
			t.Fatalf("an instruction %#x that is not told here", op)
		}
	}
	require.Empty(t, labels)
	require.Empty(t, stack)
}

// blockEnd is where a block that begins at a place has ended.
func blockEnd(body []byte, at int) int {
	in := reader{b: body, at: at}
	for depth := 1; depth > 0; {
		switch op := in.byte(); op {
		case 0x20, 0x21, 0x22, 0x0d:
			in.unsigned()
		case 0x28, 0x2d, 0x36:
			in.unsigned()
			in.unsigned()
		case 0x41:
			in.signed()
		case 0x02, 0x03:
			in.byte()
			depth++
		case 0x0b:
			depth--
		}
	}
	return in.at
}

// What never runs is empty, all else is as the linker left it, and nothing that a page
// needs is named among the empty.
func assertOnlyEmptied(t *testing.T, raw, squeezed []byte) {
	t.Helper()
	segments, err := readSegments(sections(t, raw)[11][0])
	require.NoError(t, err)
	names, err := functionNames(mergeSegments(segments))
	require.NoError(t, err)
	before, after := reader{b: sections(t, raw)[10][0]}, reader{b: sections(t, squeezed)[10][0]}
	count := before.unsigned()
	require.Equal(t, count+1, after.unsigned(), "and one that runs at the start")
	require.Len(t, names, int(count), "each function has a name")
	emptied, equals := 0, 0
	left := map[int]bool{} // what is called by what is left
	var own []int
	for i := range int(count) {
		was, is := before.bytes(int(before.unsigned())), after.bytes(int(after.unsigned()))
		if !bytes.Equal(nothing, is) || bytes.Equal(nothing, tightened(was)) {
			assertOnlyRenumbered(t, tightened(was), unentered(t, is, goFunctions+i), i, names[i])
			calls(is, int((&reader{b: sections(t, raw)[2][0]}).unsigned()), left)
			continue
		}
		emptied += len(was)
		if neverNames.MatchString(names[i]) {
			continue
		}
		require.Regexp(t, equalNames, names[i])
		require.NotContains(t, slices.Collect(maps.Values(names)), strings.Replace(names[i], ".eq.", ".hash.", 1), "a key of a map")
		equals += len(was)
		own = append(own, i)
	}
	for _, i := range own {
		assert.False(t, left[i], "%s is called", names[i])
	}
	assert.True(t, left[slices.IndexFunc(namesInOrder(names), func(name string) bool { return name == "runtime.growslice" })], "calls are seen")
	assert.Greater(t, equals, 50_000, "what compares the engine's types is no longer named so")
	require.NoError(t, before.err)
	require.NoError(t, after.err)
	assert.Equal(t, len(before.b), before.at)
	after.bytes(int(after.unsigned()))
	assert.Equal(t, len(after.b), after.at)
	assert.Greater(t, emptied, 100_000, "what never runs is no longer named so in Go's runtime")
	for _, name := range []string{"runtime.main", "runtime.traceAcquire", "runtime.saveAncestors", "runtime.mProf_Flush", "runtime.mProf_Malloc", "runtime.gopanic", "internal/bisect.init", "filmfurrow/app.Pages"} {
		assert.NotRegexp(t, neverNames, name)
	}
}

// namesInOrder are the functions' names by their place.
func namesInOrder(names map[int]string) []string {
	list := make([]string, len(names))
	for i := range list {
		list[i] = names[i]
	}
	return list
}

// The collector of garbage needs each function's own tables; they are as the linker left
// them. What is looked up by an address in the code is held by TestEachStackIsReadAsBefore.
func assertStacksCanBeRead(t *testing.T, before, after []byte) {
	t.Helper()
	word := func(b []byte, at int) uint32 { return binary.LittleEndian.Uint32(b[at:]) }
	functab := int(binary.LittleEndian.Uint64(before[64:]))
	for i := range int(binary.LittleEndian.Uint64(before[8:])) {
		f := functab + int(word(before, functab+8*i+4))
		data, own := int(word(before, f+28)), int(before[f+43])
		require.Equal(t, before[f:f+4], after[f:f+4], "entry")
		called := func(table []byte) string {
			name, _, _ := bytes.Cut(table[binary.LittleEndian.Uint64(before[32:])+uint64(word(table, f+4)):], []byte{0})
			return string(name)
		}
		if name := called(before); slices.ContainsFunc(named, func(begin string) bool { return strings.HasPrefix(name, begin) }) {
			require.Equal(t, name, called(after))
		} else {
			require.Zero(t, word(after, f+4), "%s has no name", name)
		}
		require.Equal(t, before[f+8:f+12], after[f+8:f+12], "arguments")
		if name := called(before); neverNames.MatchString(name) || equalNames.MatchString(name) && word(after, f+16) == 0 {
			continue // it is never on the stack
		}
		for _, kind := range []int{0, 1, 2, 4} { // arguments, locals, objects, open defers
			if kind < own {
				at := f + 44 + 4*(data+kind)
				require.Equal(t, word(before, at), word(after, at))
			}
		}
	}
}

// assertOnlyRenumbered holds that one body is the other with other numbers for the same blocks.
func assertOnlyRenumbered(t *testing.T, was, is []byte, place int, name string) {
	t.Helper()
	if bytes.Equal(was, is) {
		return
	}
	f, ok := readFlow(was)
	require.True(t, ok, name)
	g, ok := readFlow(is)
	require.True(t, ok, name)
	require.Equal(t, f.dispatch, g.dispatch, name)
	require.Len(t, g.list, len(f.list), name)
	for i := range f.list {
		switch {
		case i == f.dispatch:
		case f.returnsTo(i, goFunctions+place):
			require.True(t, g.returnsTo(i, goFunctions+place), name)
			require.Equal(t, f.table.of(f.number(i)&numberMask), g.table.of(g.number(i)&numberMask), "%s goes on at another block", name)
		case i > f.dispatch && f.op(i) == opI32Const && f.is(i+1, opLocalSet, nextBlock):
			require.Equal(t, f.table.of(f.number(i)), g.table.of(g.number(i)), "%s jumps to another block", name)
		default:
			require.Equal(t, f.bytes(i), g.bytes(i), name)
		}
	}
}

// unentered takes back what entered did.
func unentered(t *testing.T, body []byte, function int) []byte {
	t.Helper()
	f, ok := readBody(body)
	if !ok {
		return body
	}
	head := slices.Clone(body[:f.list[0].at])
	list := f.list
	if bytes.HasPrefix(body[list[0].at:], enters) {
		end := list[0].at + len(enters)
		list = list[slices.IndexFunc(list, func(i instruction) bool { return i.at == end }):]
	}
	f.list = list
	own := append(append([]byte{opI32Const}, signed(int64(function)<<numberBits)...), opLocalSet, ownNumber)
	rooted := len(list) > 4 && bytes.HasPrefix(body[list[2].at:], own)
	if rooted {
		in := reader{b: body}
		groups := in.unsigned()
		require.Equal(t, []byte{2, typeI32}, in.bytes(2))
		head = slices.Concat(unsigned(groups), []byte{1, typeI32}, body[in.at:f.list[0].at][:len(head)-in.at])
	}
	out, starts := head, []int(nil) // where each instruction that is left begins
	for i := 0; i < len(list); i++ {
		if rooted && i == 2 {
			i++
			continue
		}
		starts = append(starts, len(out))
		op, address := f.op(i), -1
		switch {
		case rooted && f.is(i, opLocalGet, ownNumber):
			require.True(t, f.op(i+1) == opI32Const && f.is(i+2, opI32Or))
			address = function<<numberBits + f.number(i+1)
			i += 2
		case op == opI32Const && f.number(i)>>numberBits == function && (f.op(i+1) == opCall || f.op(i+2) == opCallIndirect):
			address = f.number(i)
		case rooted && (op == opLocalGet || op == opLocalSet || op == opLocalTee) && f.number(i) > ownNumber:
			out = append(append(out, op), unsigned(uint64(f.number(i)-1))...)
		default:
			out = append(out, f.bytes(i)...)
		}
		if address >= 0 {
			at := len(out)
			if f.op(i+1) != opCall {
				at = starts[len(starts)-5] // before what finds the function
			}
			pushes := slices.Concat(lowers, []byte{opI64Const}, signed(int64(address)), []byte{opI64Store, 3, 0})
			out = append(slices.Insert(out, at, pushes...), opI32Const, 0)
		}
	}
	return out
}

// What Go looks up by an address on the stack is what it was by the address before: how large
// the frame is, which of its words are pointers, where to go on after a recovered panic.
func TestEachStackIsReadAsBefore(t *testing.T) {
	raw := rawProgram(t)
	squeezed, err := squeeze(raw, true)
	require.NoError(t, err)
	read := func(program []byte) (tables functable, bodies [][]byte) {
		segments, err := readSegments(sections(t, program)[11][0])
		require.NoError(t, err)
		memory := memoryOf(t, program)
		if start := sections(t, program)[8]; start != nil {
			code := reader{b: sections(t, program)[10][0]}
			var last []byte
			for range code.unsigned() {
				last = code.bytes(int(code.unsigned()))
			}
			run(t, last, memory)
		}
		tables, err = readFunctable([]segment{{0, memory}})
		require.NoError(t, err, "%d segments", len(segments))
		bodies, err = bodiesOf(sections(t, program)[10][0])
		require.NoError(t, err)
		for i, body := range bodies {
			bodies[i] = unentered(t, body, goFunctions+i)
		}
		return tables, bodies
	}
	was, before := read(raw)
	is, after := read(squeezed)
	require.Equal(t, was.count, is.count)
	calls, switched, changed := 0, 0, 0
	for i := range was.count {
		place, record := was.entry(i)-goFunctions, was.record(i)
		if bytes.Equal(after[place], nothing) {
			continue
		}
		require.Equal(t, record-was.rows, is.record(i)-is.rows)
		at := is.record(i)
		f, ok := readFlow(straightened(before[place])) // in which a call that can be switched is seen
		if !ok {
			continue
		}
		g, ok := readFlow(after[place])
		require.True(t, ok)
		value := func(t *functable, at, number int) int {
			if t.word(at) == 0 {
				return -1
			}
			list, err := t.values(t.word(at))
			if err != nil || number >= len(list) {
				return -1000 - number // Go would stop the program
			}
			return list[number]
		}
		largest := func(t *functable, at int) int {
			list, _ := t.values(t.word(at))
			return slices.Max(append(list, 0))
		}
		require.Equal(t, largest(&was, record+recordPCSP), largest(&is, at+recordPCSP))
		addresses := func(f *flow) (list []int) {
			for i := range f.list {
				if f.returnsTo(i, goFunctions+place) {
					list = append(list, i)
				}
			}
			return list
		}
		old, anew := addresses(&f), addresses(&g)
		require.Len(t, anew, len(old))
		for j := range old {
			from, to := f.number(old[j])&numberMask, g.number(anew[j])&numberMask
			require.Equal(t, value(&was, record+recordPCSP, from), value(&is, at+recordPCSP, to), "the frame at number %d", from)
			require.Equal(t, f.resumes(old[j]), g.resumes(anew[j]))
			calls++
			if from > 0 && f.resumes(old[j]) && was.pcdata(record) > 1 {
				require.Equal(t, value(&was, record+recordSize+4, from-1), value(&is, at+recordSize+4, to-1), "the pointers at number %d", from)
				switched++
			}
			if from != to {
				changed++
			}
		}
		back, goesOn := int(was.word(record+recordDeferReturn)), int(is.word(at+recordDeferReturn))
		require.Equal(t, back == 0, goesOn == 0)
		if back > 0 {
			require.Equal(t, f.table.anew(back), g.table.anew(goesOn))
			require.Equal(t, value(&was, record+recordSize+4, back), value(&is, at+recordSize+4, goesOn))
			require.Equal(t, value(&was, record+recordPCSP, back), value(&is, at+recordPCSP, goesOn))
		}
	}
	assert.Greater(t, switched, calls*3/4)
	assert.Greater(t, changed, calls/2)
}

func TestSqueezeRefusesWhatItDoesNotKnow(t *testing.T) {
	magic := "\x00asm\x01\x00\x00\x00"
	for name, program := range map[string]string{
		"nothing":               "",
		"not a program":         "<!DOCTYPE html>",
		"a section cut off":     magic + "\x0b\x05\x00",
		"a passive segment":     magic + "\x0b\x05\x01\x01\x02ab",
		"segments that overlap": magic + "\x0b\x0f\x02\x00\x41\x08\x0b\x02ab\x00\x41\x09\x0b\x02cd",
		"no function table":     magic + "\x0b\x08\x01\x00\x41\x08\x0b\x02ab",
	} {
		_, err := squeeze([]byte(program), true)
		assert.Error(t, err, name)
	}
}

func FuzzSqueeze(f *testing.F) {
	f.Add([]byte("\x00asm\x01\x00\x00\x00\x0b\x08\x01\x00\x41\x08\x0b\x02ab"))
	f.Add([]byte("\x00asm\x01\x00\x00\x00\x0b\x50\x01\x00\x41\x08\x0b\x4a\xf1\xff\xff\xff\x00\x00\x01\x08"))
	f.Fuzz(func(t *testing.T, program []byte) {
		squeezed, err := squeeze(program, true)
		if err == nil && len(squeezed) > 0 && string(squeezed[:4]) != "\x00asm" {
			t.Fatal("not a program any more")
		}
	})
}

func TestNumbersOfWebAssembly(t *testing.T) {
	// WebAssembly core specification 2.0, §5.2.2: LEB128, signed and unsigned.
	for n, want := range map[int64]string{0: "\x00", 63: "\x3f", 64: "\xc0\x00", -1: "\x7f", -64: "\x40", -65: "\xbf\x7f", 624485: "\xe5\x8e\x26", -123456: "\xc0\xbb\x78"} {
		assert.Equal(t, want, string(signed(n)), n)
		in := reader{b: []byte(want)}
		assert.Equal(t, n, in.signed())
	}
	assert.Equal(t, "\xe5\x8e\x26", string(unsigned(624485)))
}
