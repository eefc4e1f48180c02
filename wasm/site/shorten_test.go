//go:build !js

package site

import (
	"encoding/binary"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// machine runs the few instructions that addresses are made of, as the WebAssembly core
// specification 2.0, §4.4, tells them, and keeps all that is left on the stack.
func machine(t require.TestingT, body []byte, locals []uint64, memory []byte) (stack []uint64) {
	in := reader{b: body}
	require.Zero(t, in.unsigned(), "no locals of its own")
	pop := func() uint64 { v := stack[len(stack)-1]; stack = stack[:len(stack)-1]; return v }
	for in.at < len(body) {
		switch op := in.byte(); op {
		case 0x23: // global.get
			require.Zero(t, in.unsigned())
			stack = append(stack, locals[stackPointer])
		case 0x21: // local.set
			locals[in.unsigned()] = pop()
		case opLocalGet:
			stack = append(stack, locals[in.unsigned()])
		case opI32Const:
			stack = append(stack, uint64(uint32(in.signed())))
		case opI64Const:
			stack = append(stack, uint64(in.signed()))
		case opI32Add:
			stack = append(stack, uint64(uint32(pop())+uint32(pop())))
		case opI64Add:
			stack = append(stack, pop()+pop())
		case opWrap:
			stack = append(stack, uint64(uint32(pop())))
		case opWiden: // as it is
		case 0x29: // i64.load
			in.unsigned()
			at := pop() + in.unsigned() // beyond 32 bits there is no memory
			require.Less(t, at, uint64(len(memory)-8))
			stack = append(stack, binary.LittleEndian.Uint64(memory[at:]))
		case 0x0b:
			require.Equal(t, len(body), in.at)
		default:
			require.Fail(t, "an instruction that is not told here", "%#x", op)
		}
	}
	require.NoError(t, in.err)
	return stack
}

// Shorter addresses are the same addresses, and what is read there is the same.
func TestShortenedAddressesAreTheSame(t *testing.T) {
	memory := make([]byte, 1<<14)
	for i := range memory {
		memory[i] = byte(i * 31)
	}
	shorter, tried := 0, 0 // rapid draws fewer with -short
	rapid.Check(t, func(rt *rapid.T) {
		body := []byte{0}
		if rapid.Bool().Draw(rt, "a function with a stack") {
			body = append(body, takesStack...)
		}
		for range rapid.IntRange(1, 6).Draw(rt, "pieces") {
			address := func(local byte, n int64) {
				body = append(append(append(body, opLocalGet, local, opWiden, opI64Const), signed(n)...), opI64Add, opWrap)
			}
			switch rapid.IntRange(0, 4).Draw(rt, "piece") {
			case 0: // an address on the stack
				address(stackPointer, rapid.Int64Range(-4000, 4000).Draw(rt, "n"))
			case 1: // what is read there
				address(stackPointer, rapid.Int64Range(-900, 4000).Draw(rt, "n"))
				body = append(append(body, 0x29, 3), unsigned(rapid.Uint64Range(0, 4000).Draw(rt, "offset"))...)
			case 2: // another local may hold anything
				address(0, rapid.Int64().Draw(rt, "n"))
			case 3:
				body = append(append(append(body, opI64Const), signed(rapid.Int64().Draw(rt, "n"))...), opWrap)
			case 4:
				body = append(body, opLocalGet, 0, opWiden, opWrap)
			}
		}
		body = append(body, 0x0b)
		locals := []uint64{uint64(rapid.Uint32().Draw(rt, "other")), rapid.Uint64Range(1000, 4000).Draw(rt, "stack pointer")}
		tried++
		is := shortened(body)
		if len(is) < len(body) {
			shorter++
		}
		assert.Equal(rt, machine(rt, body, locals, memory), machine(rt, is, locals, memory))
	})
	assert.Greater(t, shorter, tried/4)
	here := append(append([]byte{0}, takesStack...), opLocalGet, stackPointer, opWiden, opI64Const, 8, opI64Add, opWrap, 0x29, 3, 16, 0x0b)
	assert.Equal(t, append(append([]byte{0}, takesStack...), opLocalGet, stackPointer, 0x29, 3, 24, 0x0b), shortened(here))
	other := append([]byte{0}, opLocalGet, stackPointer, opWiden, opI64Const, 8, opI64Add, opWrap, 0x29, 3, 16, 0x0b)
	assert.Equal(t, append([]byte{0}, opLocalGet, stackPointer, opI32Const, 8, opI32Add, 0x29, 3, 16, 0x0b), shortened(other), "not the stack’s pointer: its sum may wrap around")
	unknown := []byte{0, opLocalGet, 0, opWiden, opI64Const, 8, opI64Add, opWrap, 0xfd, 0x0b}
	assert.Equal(t, unknown, shortened(unknown), "with an instruction that is not known all stays")
}
