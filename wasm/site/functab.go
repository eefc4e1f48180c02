//go:build !js

package site

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
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

	anew map[int][]byte // tables of instructions that are to be written anew, by the place that points at them
}

// Fields of a record (runtime._func), in bytes from its start.
const (
	recordName, recordDeferReturn                           = 4, 12
	recordPCSP, recordPCFile, recordPCLine                  = 16, 20, 24
	recordPCData, recordUnit, recordStartLine, recordFuncID = 28, 32, 36, 40
	recordFuncData, recordSize                              = 43, 44

	funcIDWrapper = 23 // abi.FuncIDWrapper
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
	t.anew = map[int][]byte{}
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

// pointers are the places of a record's offsets of tables of instructions.
func (t *functable) pointers(record int) []int {
	list := []int{record + recordPCSP}
	for d := range t.pcdata(record) {
		list = append(list, record+recordSize+4*d)
	}
	return list
}

// firstPacked is where packed tables begin: 0 says "no table", and 1 is free to say
// "the next one".
const firstPacked = 2

// pack puts the tables of instructions that are in use one behind the other, in the
// order in which the records first name them, and those that say the same only once.
func (t *functable) pack() error {
	packed := make([]byte, firstPacked, t.rows-t.pctab)
	moved := map[string]uint32{}
	for i := range t.count {
		for _, at := range t.pointers(t.record(i)) {
			table, anew := t.anew[at]
			if !anew {
				from, end, err := t.instructions(t.word(at))
				if err != nil {
					return fmt.Errorf("a table runs over its end: %w", err)
				}
				table = t.bytes[from:end]
			}
			if len(table) == 0 {
				continue // there is none
			}
			to, ok := moved[string(table)]
			if !ok {
				to = uint32(len(packed))
				moved[string(table)], packed = to, append(packed, table...)
			}
			t.setWord(at, to)
		}
	}
	area := t.bytes[t.pctab:t.rows]
	if len(packed) > len(area) {
		return errors.New("tables of instructions overlap")
	}
	clear(area)
	copy(area, packed)
	return nil
}
