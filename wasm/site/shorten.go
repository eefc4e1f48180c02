//go:build !js

package site

import (
	"bytes"
	"slices"
)

// Go works out the address of what lies on the stack in 64 bits: the stack's pointer is
// widened, a constant added, and the sum narrowed again. In 32 bits, where sums wrap
// around all the same, that is two instructions fewer, and where the value there is read
// at once, the constant can stand in the reading itself. A hundred thousand times over that
// is 8 kB after brotli. And where a value is stored there, the constant can stand in the
// storing: 64,000 times two instructions fewer, 4 kB. WebAssembly core specification 2.0,
// §4.3.2 and §5.4.

// The instructions that are told apart here.
const (
	opNothing                           = 0x01
	opBlock, opLoop, opIf               = 0x02, 0x03, 0x04
	opBranch, opBranchIf, opBranchTable = 0x0c, 0x0d, 0x0e
	opCall, opCallIndirect              = 0x10, 0x11
	opLocalGet, opGlobalSet             = 0x20, 0x24
	opFirstLoad, opLastLoad             = 0x28, 0x35
	opLastStore                         = 0x3e
	opMemorySize, opMemoryGrow          = 0x3f, 0x40
	opI32Const, opI64Const              = 0x41, 0x42
	opF32Const, opF64Const              = 0x43, 0x44
	opI32Add, opI64Add                  = 0x6a, 0x7c
	opWrap, opWiden                     = 0xa7, 0xad // i64 to i32; i32, as unsigned, to i64
	opLastPlain                         = 0xc4       // all from here down to i32.eqz have no immediate
	opFirstPlain                        = 0x45
	opMore                              = 0xfc
)

// stackPointer is the local in which a function of Go holds it, where its code begins with
// takesStack: global 0 into that local (hasLocalSP in cmd/internal/obj/wasm).
const stackPointer = 1

var takesStack = []byte{0x23, 0, 0x21, stackPointer}

// skip reads an instruction; an error of in is one that is not known here.
func skip(in *reader) (op byte) {
	switch op = in.byte(); {
	case op <= 0x01, op == 0x05, op == 0x0b, op == 0x0f, op == 0x1a, op == 0x1b, op >= opFirstPlain && op <= opLastPlain:
	case op >= opBlock && op <= opIf, op == opI32Const, op == opI64Const:
		in.signed()
	case op == opBranch, op == opBranchIf, op == opCall, op >= opLocalGet && op <= opGlobalSet, op == opMemorySize, op == opMemoryGrow:
		in.unsigned()
	case op == opBranchTable:
		for range in.unsigned() + 1 {
			in.unsigned()
			if in.err != nil {
				break
			}
		}
	case op == opCallIndirect, op >= opFirstLoad && op <= opLastStore:
		in.unsigned()
		in.unsigned()
	case op == opF32Const:
		in.bytes(4)
	case op == opF64Const:
		in.bytes(8)
	case op == opMore:
		switch kind := in.unsigned(); {
		case kind <= 7: // conversions
		case kind == 10: // memory.copy
			in.bytes(2)
		case kind == 11: // memory.fill
			in.bytes(1)
		default:
			in.err = errUnknown
		}
	default:
		in.err = errUnknown
	}
	return op
}

// shortened is a function's body with shorter addresses; as it was where something in it is
// not known.
func shortened(body []byte) []byte {
	in := reader{b: body}
	for range in.unsigned() { // its locals
		in.unsigned()
		in.byte()
		if in.err != nil {
			return body
		}
	}
	stack := bytes.HasPrefix(body[in.at:], takesStack)
	out := append([]byte(nil), body[:in.at]...)
	for in.at < len(body) {
		at := in.at
		op := skip(&in)
		if in.err != nil {
			return body
		}
		next := in
		switch {
		case op == opLocalGet && widened(&next):
			local := (&reader{b: body, at: at + 1}).unsigned()
			add, load := wrapped(body, in.at+1+1), next
			out = append(out, body[at:in.at]...)
			switch op := skip(&load); {
			case load.err == nil && op >= opFirstLoad && op <= opLastLoad && stack && local == stackPointer && add >= 0:
				out = append(out, op)
				read := reader{b: body, at: next.at + 1}
				out = append(out, unsigned(read.unsigned())...) // its alignment
				out = append(out, unsigned(read.unsigned()+uint64(add))...)
				next = load
			case add != 0:
				out = append(append(append(out, opI32Const), signed(int64(add))...), opI32Add)
			}
			in = next
		case op == opI64Const && next.byte() == opWrap && next.err == nil:
			out = append(append(out, opI32Const), signed(int64(wrapped(body, at+1)))...)
			in = next
		case op == opWiden && next.byte() == opWrap && next.err == nil:
			in = next
		default:
			out = append(out, body[at:in.at]...)
		}
	}
	return out
}

// widened reads: widen, a constant, add, wrap.
func widened(in *reader) bool {
	return skip(in) == opWiden && skip(in) == opI64Const && skip(in) == opI64Add && skip(in) == opWrap && in.err == nil
}

// wrapped reads a constant of 64 bits, and wraps it to 32.
func wrapped(body []byte, at int) int32 { return int32((&reader{b: body, at: at}).signed()) }

// settled is a function's body in which a constant that is added to the stack's pointer
// stands in the instruction that stores there, and what does nothing is left out.
func settled(body []byte) []byte {
	f, ok := readBody(body)
	if !ok {
		return body
	}
	stack := f.is(0, opGlobalGet, 0) && f.is(1, opLocalSet, stackPointer)
	more := map[int]int{} // what each storing adds to its address
	out := slices.Clone(body[:f.list[0].at])
	for i := 0; i < len(f.list); i++ {
		switch {
		case f.op(i) == opNothing:
		case more[i] > 0:
			in := reader{b: body, at: f.list[i].at + 1}
			out = append(append(out, f.op(i)), unsigned(in.unsigned())...)
			out = append(out, unsigned(in.unsigned()+uint64(more[i]))...)
		case stack && f.is(i, opLocalGet, stackPointer) && f.op(i+1) == opI32Const && f.number(i+1) > 0 && f.is(i+2, opI32Add):
			out = append(out, f.bytes(i)...)
			if at := f.storedBy(i + 3); at > 0 {
				more[at] = f.number(i + 1)
				i += 2
			}
		default:
			out = append(out, f.bytes(i)...)
		}
	}
	return out
}

// storedBy is the instruction that stores at the address that lies on top of the stack before
// instruction i; 0 where another one takes it, or where the way there is not a straight one.
func (f *flow) storedBy(i int) int {
	above := 0 // values over the address
	for ; i < len(f.list); i++ {
		taken, given, ok := effect(f.op(i))
		switch {
		case !ok:
			return 0
		case above >= taken:
			above += given - taken
		case f.op(i) > opLastLoad && f.op(i) <= opLastStore && above == 1:
			return i
		default:
			return 0
		}
	}
	return 0
}

// effect tells how many values an instruction takes from the stack and how many it puts there
// (WebAssembly core specification 2.0, §3.3), where it does no more and is one that stands
// between an address and what is stored there.
func effect(op byte) (taken, given int, ok bool) {
	const selects = 0x1b
	switch {
	case op == opLocalGet, op == opGlobalGet, op >= opI32Const && op <= opF64Const:
		return 0, 1, true
	case op == opLocalTee, op >= opFirstLoad && op <= opLastLoad:
		return 1, 1, true
	case op == opLocalSet:
		return 1, 0, true
	case op > opLastLoad && op <= opLastStore:
		return 2, 0, true
	case op == selects:
		return 3, 1, true
	case op >= opFirstPlain && op <= opLastPlain:
		if takesOne(op) {
			return 1, 1, true
		}
		return 2, 1, true
	}
	return 0, 0, false
}

// takesOne reports whether a plain instruction takes one value, and not two: tests for zero,
// counts of bits, roots and signs and roundings, conversions.
func takesOne(op byte) bool {
	switch {
	case op == 0x45, op == 0x50, op >= 0x67 && op <= 0x69, op >= 0x79 && op <= 0x7b:
		return true
	}
	return op >= 0x8b && op <= 0x91 || op >= 0x99 && op <= 0x9f || op >= 0xa7
}
