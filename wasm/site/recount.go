//go:build !js

package site

import (
	"bytes"
	"encoding/binary"
	"slices"
)

// A third of the table of functions follows from the rest: where each function begins,
// which is one after the other; where its record lies, which follows from the sizes of
// those before; and where a table of instructions lies that no function before has named,
// which follows from the length of the last such one. It is left out, 18 kB, and so is the
// table in which Go looks for an instruction's function first (runtime.findfunctab), 12 kB:
// since each function has as many addresses as the next, it counts them. A function
// that runs when the program is in memory, and before anything of Go's does, writes both.

const recordAlign = 8

// finder is the table in which Go looks for an instruction's function: of so many rows, each
// of which begins with the first function that has an address among the row's.
type finder struct {
	at    int64
	bytes []byte
	rows  int
}

const (
	finderRow    = 20      // bytes: a word, and sixteen bytes that tell functions of one row apart
	finderBlocks = 1 << 12 // addresses to a row
	finderShift  = 4       // a function has 1<<16 of them, so 1<<4 rows
)

// findFinder finds the table; one that does not count, or none, has no rows.
func (t *functable) findFinder(segments []segment) (finder, error) {
	const wordOfFinder, wordOfFirst, wordOfEnd = 19, 20, 21 // runtime.moduledata: findfunctab, minpc, maxpc
	word, err := module(segments, t.at, int64(t.names))
	if err != nil {
		return finder{}, err
	}
	// Whole rows alone: the last one is cut off, and something else follows.
	f := finder{at: word(wordOfFinder), rows: int((word(wordOfEnd) - word(wordOfFirst)) / finderBlocks)}
	f.bytes = dataAt(segments, f.at)
	if f.rows < 0 || f.rows > len(f.bytes)/finderRow {
		return finder{}, nil
	}
	f.bytes = f.bytes[:f.rows*finderRow]
	for i := range f.rows {
		row := f.bytes[i*finderRow:][:finderRow]
		if binary.LittleEndian.Uint32(row) != uint32(i>>finderShift) || bytes.ContainsFunc(row[4:], func(r rune) bool { return r != 0 }) {
			return finder{}, nil
		}
	}
	return f, nil
}

// entry is where a function begins, counted from the first address that a function has.
func (t *functable) entry(i int) int { return int(t.word(t.rows + 8*i)) }

// counted reports whether the rows, and the word of each record that repeats its row,
// follow from the first row and the records' sizes.
func (t *functable) counted() bool {
	at := t.record(0)
	for i := range t.count {
		if t.record(i) != at || t.entry(i) != t.entry(0)+i || int(t.word(at)) != t.entry(i) {
			return false
		}
		at = t.rows + (at-t.rows+t.size(at)+recordAlign-1)&^(recordAlign-1)
	}
	return true
}

// theNext stands for a table of instructions that follows the last new one.
const theNext = 1

// uncount takes out of a packed table what can be counted, and gives the body of the
// function that counts it. A table that cannot be counted stays whole.
func (t *functable) uncount(f finder) ([]byte, error) {
	if !t.counted() {
		return nil, nil
	}
	body := t.recount(f)
	clear(f.bytes)
	next := firstPacked
	for i := range t.count {
		record := t.record(i)
		for _, at := range t.pointers(record) {
			if int(t.word(at)) != next {
				continue
			}
			_, end, err := t.instructions(uint32(next))
			if err != nil {
				return nil, err
			}
			next = end - t.pctab
			t.setWord(at, theNext)
		}
		t.setWord(record, 0)
	}
	clear(t.bytes[t.rows : t.rows+8*t.count])
	return body, nil
}

// recount is the body of a WebAssembly function that writes what uncount takes out
// (core specification 2.0, §5.4).
func (t *functable) recount(f finder) []byte {
	rows, record, tables := t.at+int64(t.rows), int64(t.record(0)-t.rows), t.at+int64(t.pctab)
	// Locals: address of the row, offset of the record, where the function begins, offset
	// of the next new table of instructions, and of the word that may ask for it.
	const row, offset, entry, next, word, locals = 0, 1, 2, 3, 4, 5
	const (
		get, set, tee                = 0x20, 0x21, 0x22
		load, loadByte, store        = 0x28, 0x2d, 0x36
		constant, add, mul, shl, and = 0x41, 0x6a, 0x6c, 0x74, 0x71
		equal, notEqual, less        = 0x46, 0x47, 0x49
		block, loop, branchIf        = 0x02, 0x03, 0x0d
		nothingGiven, end, aligned   = 0x40, 0x0b, 2
		more                         = 0x80 // a number goes on in the next byte
		shiftRight                   = 0x76
	)
	body := []byte{1, locals, 0x7f} // of 32 bits
	put := func(parts ...[]byte) { body = slices.Concat(append([][]byte{body}, parts...)...) }
	do := func(op ...byte) []byte { return op }
	number := func(n int64) []byte { return append([]byte{constant}, signed(n)...) }
	at := func(op, align byte, n int64) []byte { return append([]byte{op, align}, unsigned(uint64(n))...) }
	passNumber := func() {
		put(do(loop, nothingGiven, get, next), at(loadByte, 0, tables))
		put(do(get, next), number(1), do(add, set, next), number(more), do(and, branchIf, 0, end))
	}

	put(number(rows), do(set, row), number(record), do(set, offset), number(int64(t.entry(0))), do(set, entry))
	put(number(firstPacked), do(set, next))
	put(do(loop, nothingGiven))
	put(do(get, row, get, entry), at(store, aligned, 0))
	put(do(get, row, get, offset), at(store, aligned, 4))
	put(do(get, offset, get, entry), at(store, aligned, rows))

	put(do(get, offset), number(recordPCSP), do(add, set, word))
	put(do(loop, nothingGiven)) // over the record's words
	put(do(block, nothingGiven, get, word), at(load, aligned, rows), number(theNext), do(notEqual, branchIf, 0))
	put(do(get, word, get, next), at(store, aligned, rows))
	put(do(loop, nothingGiven)) // over the table's pairs of numbers, up to a zero
	passNumber()
	passNumber()
	put(do(get, next), at(loadByte, 0, tables), do(branchIf, 0, end))
	put(do(get, next), number(1), do(add, set, next, end))
	// The first word stands apart from the others.
	put(do(get, word), number(4), do(add, get, word, get, offset), number(recordPCSP), do(add, equal))
	put(number(recordSize-recordPCSP-4), do(mul, add, tee, word))
	put(do(get, offset), at(load, aligned, rows+recordPCData), number(2), do(shl, get, offset, add), number(recordSize), do(add))
	put(do(less, branchIf, 0, end))

	put(do(get, offset, get, offset), at(load, aligned, rows+recordPCData), do(get, offset), at(loadByte, 0, rows+recordFuncData))
	put(do(add), number(2), do(shl, add), number(recordSize+recordAlign-1), do(add), number(-recordAlign), do(and, set, offset))
	put(do(get, entry), number(1), do(add, set, entry))
	put(do(get, row), number(8), do(add, tee, row), number(rows+8*int64(t.count)), do(notEqual, branchIf, 0))
	put(do(end))

	if f.rows > 0 {
		put(number(0), do(set, row))
		put(do(loop, nothingGiven))
		put(do(get, row), number(finderRow), do(mul), do(get, row), number(finderShift), do(shiftRight), at(store, aligned, f.at))
		put(do(get, row), number(1), do(add, tee, row), number(int64(f.rows)), do(notEqual, branchIf, 0, end))
	}
	put(do(end))
	return body
}

// withStart adds a function that runs when a program is in memory. It comes after all
// others and is of a kind of its own: it takes nothing and gives nothing.
func withStart(sections []section, body []byte) []section {
	if body == nil {
		return sections
	}
	more := func(list, with []byte) (uint64, []byte) {
		in := reader{b: list}
		n := in.unsigned()
		return n, slices.Concat(unsigned(n+1), list[in.at:], with)
	}
	var kind, imports, own uint64
	out := make([]section, 0, len(sections)+1)
	for _, s := range sections {
		switch s.id {
		case sectionTypes:
			kind, s.body = more(s.body, []byte{0x60, 0, 0})
		case sectionImports: // functions alone, as Go writes them
			imports = (&reader{b: s.body}).unsigned()
		case sectionFunctions:
			own, s.body = more(s.body, unsigned(kind))
		case sectionElements: // the start comes before them
			out = append(out, section{sectionStart, unsigned(imports + own)})
		case sectionCode:
			_, s.body = more(s.body, append(unsigned(uint64(len(body))), body...))
		}
		out = append(out, s)
	}
	return out
}
