//go:build !js

package site

import "slices"

// Each of 40,000 calls first puts the address on the stack to which it returns: a constant,
// the function's number above and a number within it below, in five or six bytes of which no
// other function has the same. So a function with two calls or more writes its own number once,
// into a local, and each call adds the lower one, which is small and most often one byte. Then
// nearly all that stands around a call is the same in all of them: 43 kB after brotli.

// ownNumber is the local that holds the first address of the function.
const ownNumber = 2

const (
	typeI32, typeI64 = 0x7f, 0x7e
	fewestCalls      = 2
)

// rooted is a function's body that adds up the addresses to which its calls return.
func rooted(body []byte, function int) []byte {
	f, ok := readBody(body)
	if !ok || !f.is(0, opGlobalGet, 0) || !f.is(1, opLocalSet, stackPointer) {
		return body
	}
	calls := 0
	for i := range f.list {
		if f.returnsTo(i, function) {
			calls++
		}
	}
	in := reader{b: body}
	groups := in.unsigned()
	// Its first local is the stack's pointer, alone of its kind.
	if calls < fewestCalls || in.unsigned() != 1 || in.byte() != typeI32 {
		return body
	}
	out := slices.Concat(unsigned(groups+1), []byte{1, typeI32, 1, typeI64}, body[in.at:f.list[2].at])
	out = append(append(out, opI64Const), signed(int64(function)<<numberBits)...)
	out = append(out, opLocalSet, ownNumber)
	for i := 2; i < len(f.list); i++ {
		switch op := f.op(i); {
		case f.returnsTo(i, function):
			out = append(append(out, opLocalGet, ownNumber, opI64Const), signed(int64(f.number(i)&numberMask))...)
			out = append(out, opI64Add)
		case op == opLocalGet || op == opLocalSet || op == opLocalTee:
			local := f.number(i)
			if local >= ownNumber {
				local++
			}
			out = append(append(out, op), unsigned(uint64(local))...)
		default:
			out = append(out, f.bytes(i)...)
		}
	}
	return out
}
