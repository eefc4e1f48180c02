//go:build !js

package site

import (
	"bytes"
	"slices"
)

// Go's compiler writes each jump within a function as: put the number of the block into
// local 0, go back to the loop around the whole function, and let a table of branches there
// go to the block. WebAssembly has no other way back, but ahead it has: the block that the
// table would branch to is still open there, and the branch can name it at once. So
// straightened names it, for nine jumps in ten: 24,000 of them, which cost three
// instructions, a turn of the loop and a table each.
//
// Two more of the same kind. Each call is followed by "if the goroutine is to be
// switched, branch to the end, which returns 1"; how far away the end is differs from call
// to call, and a number that differs packs badly, so the return stands there itself. And on
// return the stack's pointer moves twice, over the frame and over the address, and once is
// enough. In all 91 kB after brotli, and a program that runs faster.
//
// What is assumed of the compiler (preprocess in cmd/internal/obj/wasm/wasmobj.go) is looked
// for in each function, and one that is not as expected stays as it is.

// label is what a branch can name: a block, a loop or a condition that is open.
type label struct {
	op    byte
	block int // of the table's blocks, which one; else notOfTable
}

const notOfTable = -1

// flow is a function's body, read.
type flow struct {
	body     []byte
	list     []instruction
	dispatch int // the instruction that branches by the table
	table    blocks
	exit     bool // around all else stands a block for the end that returns 1
}

type instruction struct {
	op      byte
	at, end int
}

const (
	opEnd, opReturn, opUnreachable      = 0x0b, 0x0f, 0x00
	opLocalSet, opLocalTee, opGlobalGet = 0x21, 0x22, 0x23
	opI32Sub                            = 0x6b
	nothingGiven                        = 0x40 // the type of a block
	nextBlock                           = 0    // the local that holds the number of the block to go to
)

// readBody reads a body's instructions; ok is false where one is not known.
func readBody(body []byte) (f flow, ok bool) {
	f = flow{body: body, dispatch: -1}
	in := reader{b: body}
	for range in.unsigned() { // its locals
		in.unsigned()
		in.byte()
		if in.err != nil {
			return f, false
		}
	}
	for in.err == nil && in.at < len(body) {
		at := in.at
		op := skip(&in)
		f.list = append(f.list, instruction{op, at, in.at})
	}
	return f, in.err == nil && len(f.list) > 0
}

// readFlow reads a body; ok is false where it is not as Go's compiler writes one with jumps
// or calls.
func readFlow(body []byte) (f flow, ok bool) {
	if f, ok = readBody(body); !ok {
		return f, false
	}
	at := 0
	if f.is(0, opGlobalGet, 0) && f.is(1, opLocalSet, stackPointer) {
		at = 2
	}
	opened := at
	for f.is(at, opBlock, nothingGiven) || f.is(at, opLoop, nothingGiven) {
		at++
	}
	if !f.is(at, opLocalGet, nextBlock) || f.op(at+1) != opBranchTable {
		return f, false
	}
	f.dispatch = at + 1
	in := reader{b: body, at: f.list[f.dispatch].at + 1}
	most := 0
	for range in.unsigned() + 1 {
		f.table = append(f.table, int(in.unsigned()))
		most = max(most, f.table[len(f.table)-1])
	}
	// Around the table's blocks: nothing, a loop, a block for the end, or that and a loop.
	around := f.list[opened : at-min(at-opened, most+1)]
	f.exit = len(around) > 0 && around[0].op == opBlock
	if f.exit {
		around = around[1:]
	}
	loops := func(list []instruction) int {
		return len(slices.DeleteFunc(slices.Clone(list), func(i instruction) bool { return i.op != opLoop }))
	}
	last := len(f.list) - 1
	switch {
	case at-opened < most+1, len(around) > 1, loops(f.list[opened:at]) != len(around), !slices.IsSorted(f.table):
		return f, false
	case f.exit && !(f.is(last-3, opUnreachable) && f.is(last-2, opEnd) && f.is(last-1, opI32Const, 1) && f.is(last, opEnd)):
		return f, false
	}
	return f, f.onlyJumps()
}

// onlyJumps reports whether local 0 is read by the table alone, and by calls of what a
// pointer names, which put it there themselves.
func (f *flow) onlyJumps() bool {
	for i := range f.list {
		if f.is(i, opLocalGet, nextBlock) && i+1 != f.dispatch && !(f.is(i-2, opLocalSet, nextBlock) && f.is(i-1, opI32Const, 0)) {
			return false
		}
	}
	return true
}

func (f *flow) bytes(i int) []byte { return f.body[f.list[i].at:f.list[i].end] }

// op is the instruction at a place, and none beyond the end.
func (f *flow) op(i int) byte {
	if i < 0 || i >= len(f.list) {
		return opUnreachable
	}
	return f.list[i].op
}

// is reports whether an instruction is, byte for byte, the one given.
func (f *flow) is(i int, want ...byte) bool {
	return i >= 0 && i < len(f.list) && bytes.Equal(f.bytes(i), want)
}

// number is an instruction's constant, or the label that it names.
func (f *flow) number(i int) int {
	in := reader{b: f.body, at: f.list[i].at + 1}
	if f.list[i].op == opI32Const || f.list[i].op == opI64Const {
		return int(in.signed())
	}
	return int(in.unsigned())
}

// blocks tells which of a function's blocks belongs to a number in local 0; the last one to all
// higher ones.
type blocks []int

func (b blocks) of(number int) int { return b[min(uint(number), uint(len(b)-1))] }

// jumps reports whether a jump through the table begins at a place.
func (f *flow) jumps(i int, open []label) bool {
	if f.op(i) != opI32Const || !f.is(i+1, opLocalSet, nextBlock) || f.op(i+2) != opBranch {
		return false
	}
	around := 0 // where the loop around the whole function stands
	if f.exit {
		around = 1
	}
	return i > f.dispatch && f.number(i+2) == len(open)-1-around && open[around].op == opLoop
}

// unwinds reports whether an instruction branches to the end that returns 1.
func (f *flow) unwinds(i, open int) bool {
	return f.exit && f.op(i) == opBranchIf && f.number(i) == open-1
}

// straightened is a function's body that jumps ahead at once.
func straightened(body []byte) []byte {
	f, ok := readFlow(body)
	if !ok {
		return body
	}
	out := slices.Clone(body[:f.list[0].at])
	var open []label
	for i := 0; i < len(f.list); i++ {
		op := f.list[i].op
		switch {
		case op == opBlock || op == opLoop || op == opIf:
			open = append(open, label{op, notOfTable})
		case op == opEnd && len(open) > 0:
			open = open[:len(open)-1]
		case i == f.dispatch:
			for block := range slices.Max(f.table) + 1 {
				open[len(open)-1-block].block = block
			}
		}
		switch {
		case f.jumps(i, open):
			to := f.table.of(f.number(i))
			ahead := slices.IndexFunc(open, func(l label) bool { return l.block == to })
			if ahead < 0 {
				break // it lies behind
			}
			away := len(open) - 1 - ahead
			// A condition with the jump alone in it is a branch with a condition.
			if f.is(i-1, opIf, nothingGiven) && f.is(i+3, opEnd) {
				out = append(out[:len(out)-2], opBranchIf)
				out = append(out, unsigned(uint64(away-1))...)
				open = open[:len(open)-1]
				i += 3
				continue
			}
			out = append(append(out, opBranch), unsigned(uint64(away))...)
			i += 2
			continue
		case f.unwinds(i, len(open)):
			out = append(out, opIf, nothingGiven, opI32Const, 1, opReturn, opEnd)
			continue
		case f.releases(i) && f.releases(i+5) && f.number(i+6) == 8:
			// The frame's size and that of the address, added at once.
			out = append(append(out, opLocalGet, stackPointer, opI32Const), signed(int64(f.number(i+1)+8))...)
			i += 6
			continue
		}
		out = append(out, f.bytes(i)...)
	}
	return out
}

// releases reports whether five instructions raise the stack's pointer by a constant.
func (f *flow) releases(i int) bool {
	return f.is(i, opLocalGet, stackPointer) && f.op(i+1) == opI32Const && f.is(i+2, opI32Add) &&
		f.is(i+3, opLocalTee, stackPointer) && f.is(i+4, opGlobalSet, 0)
}
