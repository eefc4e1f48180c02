//go:build !js

package site

import "slices"

// Each of 40,000 calls lowers the stack's pointer, puts the address there to which it returns,
// and calls with 0, which says: begin at the beginning. The address is a constant, the
// function's number above and a number within it below, in five or six bytes of which no other
// function has the same. So a function with two calls or more writes its own number once, into
// a local, to which each call adds the lower one, which is small and most often one byte. And
// what is the same for all calls is done once, where a function begins: it is called with the
// address instead of with 0, and puts it on the stack itself. It can tell one from the other,
// since a number within a function is below 1<<16 and an address above. 53 kB after brotli,
// and a tenth of the code.

// ownNumber is the local that holds the function's first address.
const ownNumber = 2

const (
	typeI32           = 0x7f
	opI32Or, opI32GtU = 0x72, 0x4b
	fewestCalls       = 2
)

// lowers makes room for an address on the stack, and leaves where that is.
var lowers = []byte{opLocalGet, stackPointer, opI32Const, 8, opI32Sub, opLocalTee, stackPointer, opGlobalSet, 0, opLocalGet, stackPointer}

// enters begins each function that is called with a number or an address: an address goes on
// the stack, and the number is 0.
var enters = slices.Concat(
	[]byte{opLocalGet, nextBlock, opI32Const}, signed(numberMask), []byte{opI32GtU, opIf, nothingGiven},
	[]byte{opGlobalGet, 0, opI32Const, 8, opI32Sub, opGlobalSet, 0},
	[]byte{opGlobalGet, 0, opLocalGet, nextBlock, opWiden, opI64Store, 3, 0},
	[]byte{opI32Const, 0, opLocalSet, nextBlock, opEnd},
)

// kinds tells which functions are called with a number within them or an address, as nearly
// all of Go's are.
type kinds struct {
	of       []int // each of the program's own functions
	imports  int   // functions that come before those
	numbered int   // the kind that is called so
}

// kindsOf reads a program's kinds of functions (core specification 2.0, §5.5.4 to §5.5.6).
func kindsOf(sections []section) (k kinds, err error) {
	k = kinds{numbered: -1, imports: int((&reader{b: bodyOf(sections, sectionImports)}).unsigned())} // functions alone, as Go writes them
	types := reader{b: bodyOf(sections, sectionTypes)}
	for kind := range types.unsigned() {
		from := types.at
		types.byte()
		types.bytes(int(types.unsigned()))
		types.bytes(int(types.unsigned()))
		if types.err != nil {
			return k, types.err
		}
		if slices.Equal(types.b[from:types.at], []byte{0x60, 1, typeI32, 1, typeI32}) {
			k.numbered = int(kind)
		}
	}
	own := reader{b: bodyOf(sections, sectionFunctions)}
	for range own.unsigned() {
		k.of = append(k.of, int(own.unsigned()))
		if own.err != nil {
			return k, own.err
		}
	}
	return k, nil
}

// bodyOf is a section of a program; nil where it has none.
func bodyOf(sections []section, id byte) []byte {
	for _, s := range sections {
		if s.id == id {
			return s.body
		}
	}
	return nil
}

// calls reports whether an instruction calls a function that may be called with an address.
func (k kinds) calls(f *flow, i int) bool {
	switch f.op(i) {
	case opCall:
		own := f.number(i) - k.imports
		return own >= 0 && own < len(k.of) && k.of[own] == k.numbered
	case opCallIndirect:
		return f.number(i) == k.numbered
	}
	return false
}

// call is where a call begins, in instructions: at, the address; zero, the 0 that it is
// called with; then the call.
type call struct{ at, zero int }

// callAt reads a call whose address stands at an instruction, where it can do without.
func (k kinds) callAt(f *flow, i, function int) (c call, ok bool) {
	if !f.returnsTo(i, function) || i < 6 || !slices.Equal(f.body[f.list[i-6].at:f.list[i].at], lowers) {
		return c, false
	}
	c = call{at: i, zero: i + 2}
	if f.is(c.zero, opI64Const, numberBits) { // a call of what a pointer names, which lies on the stack
		const shift, most = 0x88, 4 // i64.shr_u; then wrapped, and set aside
		if !f.is(i+3, shift) || !f.is(i+4, opWrap) || !f.is(i+5, opLocalSet, nextBlock) {
			return c, false
		}
		c.zero += most
		return c, f.is(c.zero, opI32Const, 0) && f.is(c.zero+1, opLocalGet, nextBlock) && f.op(c.zero+2) == opCallIndirect && k.calls(f, c.zero+2)
	}
	return c, f.is(c.zero, opI32Const, 0) && f.op(c.zero+1) == opCall && k.calls(f, c.zero+1)
}

// entered is a function's body that calls with the addresses to which it returns, and, where
// it is called so itself, puts that on the stack.
func (k kinds) entered(body []byte, place int) []byte {
	function := goFunctions + place
	f, ok := readBody(body)
	if !ok || slices.Equal(body, nothing) {
		return body
	}
	calls := map[int]call{} // by where they begin
	for i := range f.list {
		if c, ok := k.callAt(&f, i, function); ok {
			calls[i-6] = c
		}
	}
	in := reader{b: body}
	groups := in.unsigned()
	// Its first local is the stack's pointer, alone of its kind.
	rooted := len(calls) >= fewestCalls && in.unsigned() == 1 && in.byte() == typeI32 && f.is(0, opGlobalGet, 0) && f.is(1, opLocalSet, stackPointer)
	var out []byte
	if rooted {
		out = slices.Concat(unsigned(groups), []byte{2, typeI32}, body[in.at:f.list[0].at])
	} else {
		out = slices.Clone(body[:f.list[0].at])
	}
	if k.of[place] == k.numbered {
		out = append(out, enters...)
	}
	address := func(i int) []byte {
		if rooted {
			return slices.Concat([]byte{opLocalGet, ownNumber, opI32Const}, signed(int64(f.number(i)&numberMask)), []byte{opI32Or})
		}
		return append([]byte{opI32Const}, signed(int64(f.number(i)))...)
	}
	zeros := map[int]int{} // the address that stands for a 0
	for i := 0; i < len(f.list); i++ {
		if rooted && i == 2 {
			out = append(append(out, opI32Const), signed(int64(function)<<numberBits)...)
			out = append(out, opLocalSet, ownNumber)
		}
		if c, ok := calls[i]; ok {
			zeros[c.zero] = c.at
			i = c.at + 1 // the address, and its storing
			continue
		}
		if at, ok := zeros[i]; ok {
			out = append(out, address(at)...)
			continue
		}
		switch op := f.op(i); {
		case rooted && (op == opLocalGet || op == opLocalSet || op == opLocalTee) && f.number(i) >= ownNumber:
			out = append(append(out, op), unsigned(uint64(f.number(i)+1))...)
		default:
			out = append(out, f.bytes(i)...)
		}
	}
	return out
}
