//go:build !js

package site

import (
	"errors"
	"maps"
	"slices"
)

// A number in Go's code says where in a function a goroutine goes on: it is the lower half of
// each address to return to, which lies on the stack, and a table of branches at the function's
// beginning tells which block it stands for. Go gives numbers to more than blocks, since its
// tables of lines and of inlined calls need them too; those are blank here. So each block gets
// the number after the one before: then the tables of branches are beginnings of one and the
// same. What Go tells by number is written anew: how large the frame is, and which words of it
// are pointers. In all 27 kB after brotli.
//
// What Go reads by number, and what is therefore the same after as before (runtime/stkframe.go,
// traceback.go, stack.go, panic.go): the frame's size at each address to return to; the map of
// pointers at the number before it, where the goroutine can be switched in that call; the
// largest frame; where to go on after a recovered panic.

const (
	numberBits = 16 // of an address; above them stands the function's
	numberMask = 1<<numberBits - 1
	opI64Store = 0x37
)

// anew is the new number for an old one. Number 0 is the function's beginning; another one
// before the second block becomes 1, and from there on a block's number is one more than its
// place.
func (b blocks) anew(number int) int {
	block := b.of(number)
	if block == 0 {
		return min(number, 1)
	}
	return block + 1
}

// end is how many new numbers there are.
func (b blocks) end() int { return slices.Max(b) + 2 }

// branches is the new table of branches.
func (b blocks) branches() []byte {
	out := append([]byte{opBranchTable}, unsigned(uint64(b.end()-1))...)
	for number := range b.end() {
		out = append(out, unsigned(uint64(max(number-1, 0)))...)
	}
	return out
}

// returnsTo reports whether an instruction puts the address on the stack to which a call
// returns, in the function with a number of its own.
func (f *flow) returnsTo(i, function int) bool {
	return f.op(i) == opI64Const && f.number(i)>>numberBits == function &&
		f.is(i-2, opGlobalSet, 0) && f.is(i-1, opLocalGet, stackPointer) && f.is(i+1, opI64Store, 3, 0)
}

// resumes reports whether the call after an address to return to ends a block of the table's:
// there the goroutine can go on.
func (f *flow) resumes(i int) bool {
	for ; i < len(f.list); i++ {
		switch f.op(i) {
		case opCall, opCallIndirect:
			i++
			if f.is(i, opGlobalGet, 0) {
				i += 2
			}
			return f.is(i, opIf, nothingGiven) && f.is(i+1, opI32Const, 1) && f.op(i+2) == opReturn && f.op(i+3) == opEnd && f.op(i+4) == opEnd
		case opEnd, opIf, opBlock:
			return false
		}
	}
	return false
}

// strangers are the functions of which some address within is named other than by a call of
// their own.
func strangers(bodies [][]byte) map[int]bool {
	named := map[int]bool{}
	for place, body := range bodies {
		f, _ := readBody(body)
		for i := range f.list {
			if f.op(i) == opI64Const && f.number(i)&numberMask != 0 && !f.returnsTo(i, goFunctions+place) {
				named[f.number(i)>>numberBits-goFunctions] = true
			}
		}
	}
	return named
}

// renumber gives the functions' blocks numbers without gaps, in their code and in the tables
// about them. Where anything is not as expected, a function keeps its own.
func (t *functable) renumber(bodies [][]byte, never map[int]bool) error {
	foreign := strangers(bodies)
	for i := range t.count {
		place, record := t.entry(i)-goFunctions, t.record(i)
		if place < 0 || place >= len(bodies) {
			return errors.New("a function without code")
		}
		// The inlined calls of a wrapper stay, and name numbers.
		if never[place] || foreign[place] || t.bytes[record+recordFuncID] == funcIDWrapper {
			continue
		}
		f, ok := readFlow(bodies[place])
		if !ok {
			continue
		}
		tables, ok := t.renumbered(&f, i)
		if !ok {
			continue
		}
		bodies[place] = f.renumbered(goFunctions + place)
		for at, table := range tables {
			t.anew[at] = table
		}
		if deferred := int(t.word(record + recordDeferReturn)); deferred != 0 {
			t.setWord(record+recordDeferReturn, uint32(f.table.anew(deferred)))
		}
	}
	return nil
}

// renumbered is the function's body with the new numbers.
func (f *flow) renumbered(function int) []byte {
	out := slices.Clone(f.body[:f.list[0].at])
	for i := range f.list {
		switch {
		case i == f.dispatch:
			out = append(out, f.table.branches()...)
		case f.returnsTo(i, function):
			address := int64(function)<<numberBits | int64(f.table.anew(f.number(i)&numberMask))
			out = append(append(out, opI64Const), signed(address)...)
		case i > f.dispatch && f.op(i) == opI32Const && f.is(i+1, opLocalSet, nextBlock):
			out = append(append(out, opI32Const), signed(int64(f.table.anew(f.number(i))))...)
		default:
			out = append(out, f.bytes(i)...)
		}
	}
	return out
}

// renumbered are a function's tables of instructions for the new numbers, by the places that
// point at them.
func (t *functable) renumbered(f *flow, i int) (tables map[int][]byte, ok bool) {
	record := t.record(i)
	frames, pointers := record+recordPCSP, record+recordSize+4 // of its PCDATA tables abi.PCDATA_StackMapIndex, the second
	tables = map[int][]byte{}
	for _, at := range t.pointers(record) {
		if t.word(at) == 0 {
			continue
		}
		old, err := t.values(t.word(at))
		if err != nil || at != frames && at != pointers {
			return nil, false
		}
		anew := map[int]int{0: old.at(0)}
		tell := func(number, value int) bool {
			before, told := anew[number]
			anew[number] = value
			return number >= 0 && (!told || before == value)
		}
		for j := range f.list {
			if !f.returnsTo(j, t.entry(i)) {
				continue
			}
			number := f.number(j) & numberMask
			if at == frames && !tell(f.table.anew(number), old.at(number)) {
				return nil, false
			}
			if at == pointers && number > 0 && f.resumes(j) && !tell(f.table.anew(number)-1, old.at(number-1)) {
				return nil, false
			}
		}
		if back := int(t.word(record + recordDeferReturn)); at == pointers && back > 0 && !tell(f.table.anew(back), old.at(back)) {
			return nil, false
		}
		if most := slices.Max(old); at == frames && most != slices.Max(slices.Collect(maps.Values(anew))) && !tell(1, most) {
			return nil, false
		}
		list := make(values, f.table.end())
		for number := range list {
			value, told := anew[number]
			if !told {
				value = list[number-1] // nobody asks
			}
			list[number] = value
		}
		tables[at] = list.table()
	}
	return tables, true
}

// values is a table of instructions, read: what it tells for each number.
type values []int

// at is what a table tells for a number; beyond its end nobody asks.
func (v values) at(number int) int { return v[min(number, len(v)-1)] }

// values reads a table (runtime.step): by how much the value changes, from -1 on, doubled and
// with its sign in the last bit; and for how many numbers it holds.
func (t *functable) values(offset uint32) (list values, err error) {
	from, to, err := t.instructions(offset)
	if err != nil {
		return nil, err
	}
	in := reader{b: t.bytes[from:to]}
	value := -1
	for first := true; in.err == nil; first = false {
		change := in.unsigned()
		if change == 0 && !first {
			break
		}
		value += int(change>>1) ^ -int(change&1)
		for range min(in.unsigned(), 1<<numberBits) {
			list = append(list, value)
		}
	}
	if len(list) == 0 {
		in.err = errEnds
	}
	return list, in.err
}

// table writes a table as values reads it.
func (v values) table() (out []byte) {
	before := -1
	for from := 0; from < len(v); {
		to := from + 1
		for to < len(v) && v[to] == v[from] {
			to++
		}
		change := v[from] - before
		out = append(out, unsigned(uint64(change<<1^change>>63))...)
		out = append(out, unsigned(uint64(to-from))...)
		before, from = v[from], to
	}
	return append(out, 0)
}
