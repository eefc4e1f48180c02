//go:build !js

package site

import (
	"bytes"
	"encoding/binary"
	"errors"
	"slices"
)

// functable is the program's table of functions (runtime.pclntab; layout in the Go
// 1.26 source, runtime/symtab.go and runtime/runtime2.go): after a head of words come
// names, tables of instructions, and then, for each function, a row that says where it
// begins and where its record lies. The records follow the rows.
type functable struct {
	at    int64  // its address
	bytes []byte // from its beginning to the end of its segment
	count int    // functions
	names int    // where the names begin, counted from the table's beginning
	files int    // and end
	pctab int    // where the tables of instructions begin
	rows  int    // where the rows begin
}

// Fields of a record (runtime._func), in bytes from its start, and what its size is
// rounded up to.
const (
	recordName, recordPCSP, recordPCFile, recordPCLine      = 4, 16, 20, 24
	recordPCData, recordUnit, recordStartLine, recordFuncID = 28, 32, 36, 40
	recordFuncData, recordSize, recordAlign                 = 43, 44, 8
)

var errNoTable = errors.New("no table of functions, or not as expected")

// readFunctable finds the table in a program's data, and changes in its bytes are
// changes of the data.
func readFunctable(segments []segment) (t functable, err error) {
	const headSize = 8 + 8*8
	for _, s := range segments {
		at := bytes.Index(s.data, []byte{0xf1, 0xff, 0xff, 0xff, 0, 0, 1, 8})
		if at < 0 {
			continue
		}
		if t.bytes != nil || len(s.data) < at+headSize {
			return t, errNoTable
		}
		t.bytes, t.at = s.data[at:], s.at+int64(at)
	}
	if t.bytes == nil {
		return t, errNoTable
	}
	word := func(i int) int { return int(binary.LittleEndian.Uint64(t.bytes[8+8*i:])) }
	t.count, t.names, t.files, t.pctab, t.rows = word(0), word(3), word(4), word(6), word(7)
	order := []int{0, t.names, t.files, t.pctab, t.rows, len(t.bytes)}
	if t.count <= 0 || t.count > len(t.bytes) || !slices.IsSorted(order) || t.rows+8*t.count > len(t.bytes) {
		return t, errNoTable
	}
	for i := range t.count {
		if at := t.record(i); at < t.rows || at+recordSize > len(t.bytes) || at+t.size(at) > len(t.bytes) || t.pcdata(at) > 16 {
			return t, errNoTable
		}
	}
	return t, nil
}

func (t *functable) word(at int) uint32       { return binary.LittleEndian.Uint32(t.bytes[at:]) }
func (t *functable) setWord(at int, v uint32) { binary.LittleEndian.PutUint32(t.bytes[at:], v) }

// entry is where a function begins, counted from the first address that a function has.
func (t *functable) entry(i int) int { return int(t.word(t.rows + 8*i)) }

// record is where a function's record lies.
func (t *functable) record(i int) int { return t.rows + int(t.word(t.rows+8*i+4)) }

// A record ends in offsets: of its tables of instructions, and of its own tables.
func (t *functable) pcdata(record int) int   { return int(t.word(record + recordPCData)) }
func (t *functable) funcdata(record int) int { return int(t.bytes[record+recordFuncData]) }
func (t *functable) size(record int) int {
	return recordSize + 4*(t.pcdata(record)+t.funcdata(record))
}

// instructions is the table of instructions at an offset; none is there for 0.
func (t *functable) instructions(offset uint32) (from, to int, err error) {
	if offset == 0 {
		return 0, 0, nil
	}
	in := reader{b: t.bytes[t.pctab:t.rows], at: int(offset)}
	for first := true; in.err == nil; first = false {
		if in.unsigned() == 0 && !first {
			break
		}
		in.unsigned()
	}
	return t.pctab + int(offset), t.pctab + in.at, in.err
}

// counted reports whether the rows, and the word of each record that repeats its row,
// follow from the first row and the records' sizes: functions begin one after the
// other, and so do their records.
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

// recount is the body of a WebAssembly function that writes what counted reports of,
// before the program runs (core specification 2.0, §5.4).
func (t *functable) recount() []byte {
	rows, record := t.at+int64(t.rows), int64(t.record(0)-t.rows)
	const row, offset, entry = 0, 1, 2 // locals: address of the row, offset of the record, where the function begins
	const (
		get, set, tee              = 0x20, 0x21, 0x22
		load, loadByte, store      = 0x28, 0x2d, 0x36
		constant, add, shl, and    = 0x41, 0x6a, 0x74, 0x71
		notEqual, loop, branchIf   = 0x47, 0x03, 0x0d
		nothingGiven, end, aligned = 0x40, 0x0b, 2
	)
	body := []byte{1, 3, 0x7f} // three locals of 32 bits
	put := func(parts ...[]byte) { body = slices.Concat(append([][]byte{body}, parts...)...) }
	do := func(op ...byte) []byte { return op }
	number := func(n int64) []byte { return append([]byte{constant}, signed(n)...) }
	at := func(op, align byte, n int64) []byte { return append([]byte{op, align}, unsigned(uint64(n))...) }

	put(number(rows), do(set, row), number(record), do(set, offset), number(int64(t.entry(0))), do(set, entry))
	put(do(loop, nothingGiven))
	put(do(get, row, get, entry), at(store, aligned, 0))
	put(do(get, row, get, offset), at(store, aligned, 4))
	put(do(get, offset, get, entry), at(store, aligned, rows))
	put(do(get, offset, get, offset), at(load, aligned, rows+recordPCData), do(get, offset), at(loadByte, 0, rows+recordFuncData))
	put(do(add), number(2), do(shl, add), number(recordSize+recordAlign-1), do(add), number(-recordAlign), do(and, set, offset))
	put(do(get, entry), number(1), do(add, set, entry))
	put(do(get, row), number(8), do(add, tee, row), number(rows+8*int64(t.count)), do(notEqual, branchIf, 0))
	put(do(end, end))
	return body
}

// part takes out of the table what can be counted, and gives the function that counts
// it; and it takes out the records of some functions, with the tables of instructions
// that they alone have, and gives these as data for another file. Once they are put
// back, the table is to be counted again. A table that cannot be counted stays whole.
func (t *functable) part(later func(entry int) bool) (recount []byte, rest []segment, err error) {
	if !t.counted() {
		return nil, nil, nil
	}
	recount = t.recount()
	for i := range t.count {
		t.setWord(t.record(i), 0)
	}
	// What a record's size follows from stays.
	held, kept := make([]bool, len(t.bytes)), make([]bool, len(t.bytes))
	for i := range t.count {
		at := t.record(i)
		to := kept
		if later(t.entry(i)) {
			to = held
			spread(held, at, at+t.size(at))
			spread(kept, at+recordPCData, at+recordPCData+4)
			spread(kept, at+recordFuncID, at+recordFuncID+4)
		}
		offsets := t.bytes[at+recordSize:][:4*t.pcdata(at)]
		for offsets = append(slices.Clone(offsets), t.bytes[at+recordPCSP:][:4]...); len(offsets) > 0; offsets = offsets[4:] {
			from, end, err := t.instructions(binary.LittleEndian.Uint32(offsets))
			if err != nil {
				return nil, nil, err
			}
			spread(to, from, end)
		}
	}
	clear(t.bytes[t.rows : t.rows+8*t.count])
	// Runs that lie close are one, with what lies between them: it is the same anyway.
	const nearby = 8
	end := -nearby - 1 // of the last run
	for i := range t.bytes {
		if !held[i] || kept[i] || t.bytes[i] == 0 {
			continue
		}
		if i-end > nearby {
			rest = append(rest, segment{at: t.at + int64(i)})
			end = i
		}
		last := &rest[len(rest)-1]
		last.data = append(last.data, t.bytes[end:i+1]...)
		end = i + 1
	}
	for i := range t.bytes {
		if held[i] && !kept[i] {
			t.bytes[i] = 0
		}
	}
	return recount, rest, nil
}

func spread(list []bool, from, to int) {
	for i := from; i < to; i++ {
		list[i] = true
	}
}
