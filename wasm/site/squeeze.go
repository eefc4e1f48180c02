//go:build !js

package site

import (
	"bytes"
	"cmp"
	"encoding/binary"
	"errors"
	"fmt"
	"slices"
)

// Eleven things in a Go program for the browser cost much to download and serve no reader.
// Measured on this program, in bytes after brotli 11:
//
//   - the linker's tens of thousands of data segments of two bytes each, 83 kB: they are joined;
//   - the tables that map instructions to source lines, 109 kB, those that tell inlined calls
//     and arguments apart in a stack trace, 50 kB, and the names of functions and files, 50 kB:
//     blank, so that a stack trace says "?";
//   - jumps ahead that go back to the function's beginning first, and what stands after each
//     call, 91 kB (straight.go);
//   - what works only when Go is asked to trace or to profile, or never in a page, 45 kB (never.go);
//   - what each call does with the address that it returns to, 53 kB (returns.go);
//   - numbers within a function that only those tables needed, 27 kB (numbers.go);
//   - what can be counted when the program starts, 30 kB (recount.go);
//   - addresses on the stack worked out in 64 bits, or before they are needed, 15 kB (shorten.go);
//   - the names of types, 7 kB (typenames.go).

// mergeGap is the longest run of zeros, in bytes, that is written out to join
// two data segments. Memory is zero to begin with, so the result is the same. Of 24, 64,
// 200, 1,000 and 6,000 the fourth packs best, 2.9 kB better than the second.
const mergeGap = 1000

// section is a part of a WebAssembly program; the numbers are those of the core
// specification 2.0, §5.5.2.
type section struct {
	id   byte
	body []byte
}

const (
	sectionTypes, sectionImports, sectionFunctions = 1, 2, 3
	sectionStart, sectionElements                  = 8, 9
	sectionCode, sectionData                       = 10, 11
)

// squeeze makes the program smaller to download. Where its tables are not known (see
// goversion.go) they stay, and only segments are joined.
func squeeze(program []byte, known bool) ([]byte, error) {
	if !known {
		return squeezeWith(program, nil)
	}
	return squeezeWith(program, func(segments []segment, before []section) (less, start []byte, err error) {
		if less, start, err = squeezeCode(segments, before); err != nil {
			return nil, nil, err
		}
		return less, start, blankTypes(segments)
	})
}

// squeezeWith joins a program's segments; tables, where there is one, changes them and gives
// the section of code anew, and the body of what is to run before the program, if anything.
func squeezeWith(program []byte, tables func(segments []segment, before []section) (less, start []byte, err error)) ([]byte, error) {
	const header = 8 // magic and version
	if len(program) < header || string(program[:4]) != "\x00asm" {
		return nil, errors.New("squeeze: not a WebAssembly program")
	}
	var sections []section
	var start []byte
	in := reader{b: program, at: header}
	for in.at < len(in.b) && in.err == nil {
		s := section{in.byte(), in.bytes(int(in.unsigned()))}
		if in.err != nil {
			break
		}
		if s.id == sectionStart && tables != nil {
			return nil, errors.New("squeeze: the program has a function for its start; it may be squeezed already")
		}
		if s.id == sectionData {
			segments, err := readSegments(s.body)
			if err != nil {
				return nil, err
			}
			segments = mergeSegments(segments)
			if tables != nil {
				code := slices.IndexFunc(sections, func(s section) bool { return s.id == sectionCode })
				if code < 0 {
					return nil, errors.New("squeeze: data without code")
				}
				if sections[code].body, start, err = tables(segments, sections); err != nil {
					return nil, fmt.Errorf("squeeze: %w", err)
				}
			}
			s.body = writeSegments(splitSegments(segments))
		}
		sections = append(sections, s)
	}
	if in.err != nil {
		return nil, fmt.Errorf("squeeze: %w", in.err)
	}
	out := bytes.NewBuffer(append([]byte(nil), program[:header]...))
	for _, s := range withStart(sections, start) {
		out.WriteByte(s.id)
		out.Write(unsigned(uint64(len(s.body))))
		out.Write(s.body)
	}
	return out.Bytes(), nil
}

// squeezeCode takes out of a program's code, and of the tables about it in its memory, what
// no page needs; start is what is to run before it, if anything.
func squeezeCode(segments []segment, sections []section) (less, start []byte, err error) {
	names, err := functionNames(segments)
	if err != nil {
		return nil, nil, err
	}
	k, err := kindsOf(sections)
	if err != nil {
		return nil, nil, err
	}
	bodies, err := bodiesOf(bodyOf(sections, sectionCode))
	if err != nil {
		return nil, nil, err
	}
	if len(bodies) != len(k.of) {
		return nil, nil, errors.New("functions without code")
	}
	never := neverRuns(bodies, names, k.imports)
	for i, body := range bodies {
		if bodies[i] = nothing; !never[i] {
			bodies[i] = tightened(body)
		}
	}
	t, err := readFunctable(segments)
	if err != nil {
		return nil, nil, err
	}
	if err := t.blankLines(segments, never); err != nil {
		return nil, nil, err
	}
	if err := t.renumber(bodies, never); err != nil {
		return nil, nil, err
	}
	if err := t.pack(); err != nil {
		return nil, nil, err
	}
	finder, err := t.findFinder(segments)
	if err != nil {
		return nil, nil, err
	}
	start, err = t.uncount(finder)
	for i, body := range bodies {
		bodies[i] = k.entered(body, i)
	}
	return joined(bodies), start, err
}

// segment is a run of bytes that is in memory when the program starts.
type segment struct {
	at   int64
	data []byte
}

// readSegments reads a data section (WebAssembly core specification 2.0, §5.5.14)
// of active segments with constant addresses, as Go writes them, and puts them
// in rising order; they must not overlap, so the order does not matter.
func readSegments(body []byte) ([]segment, error) {
	in := reader{b: body}
	list := make([]segment, 0, min(in.unsigned(), uint64(len(body))))
	for in.at < len(in.b) && in.err == nil {
		kind, constant := in.unsigned(), in.byte()
		at := in.signed()
		end := in.byte()
		data := in.bytes(int(in.unsigned()))
		if in.err == nil && (kind != 0 || constant != 0x41 || end != 0x0b) {
			return nil, errors.New("squeeze: a data segment of a kind that Go does not write")
		}
		list = append(list, segment{at, data})
	}
	if in.err != nil {
		return nil, fmt.Errorf("squeeze: data section: %w", in.err)
	}
	slices.SortFunc(list, func(a, b segment) int { return cmp.Compare(a.at, b.at) })
	for i := 1; i < len(list); i++ {
		if before := list[i-1]; before.at+int64(len(before.data)) > list[i].at {
			return nil, errors.New("squeeze: data segments overlap")
		}
	}
	return list, nil
}

func mergeSegments(list []segment) []segment {
	var merged []segment
	for _, s := range list {
		if n := len(merged); n > 0 {
			last := &merged[n-1]
			if gap := s.at - last.at - int64(len(last.data)); gap <= mergeGap {
				last.data = append(append(last.data, make([]byte, gap)...), s.data...)
				continue
			}
		}
		merged = append(merged, segment{s.at, bytes.Clone(s.data)})
	}
	return merged
}

// splitSegments leaves out the long runs of zeros that taking things out leaves behind.
func splitSegments(list []segment) (split []segment) {
	none := make([]byte, mergeGap+1)
	for _, s := range list {
		for {
			zeros := bytes.Index(s.data, none)
			if zeros < 0 {
				break
			}
			if zeros > 0 {
				split = append(split, segment{s.at, s.data[:zeros]})
			}
			rest := bytes.TrimLeft(s.data[zeros:], "\x00")
			s = segment{s.at + int64(len(s.data)-len(rest)), rest}
		}
		if len(s.data) > 0 {
			split = append(split, s)
		}
	}
	return split
}

func writeSegments(list []segment) []byte {
	var out bytes.Buffer
	out.Write(unsigned(uint64(len(list))))
	for _, s := range list {
		out.Write([]byte{0, 0x41})
		out.Write(signed(s.at))
		out.WriteByte(0x0b)
		out.Write(unsigned(uint64(len(s.data))))
		out.Write(s.data)
	}
	return out.Bytes()
}

// blankLines takes the line and file tables out of the program's table of
// functions. Offset 0 is the runtime's own mark for "no table". The freed bytes become
// zeros, which pack to nothing. A function that never runs keeps no table.
func (t *functable) blankLines(segments []segment, never map[int]bool) error {
	blankNames(t.bytes[t.names:t.files])
	clear(t.bytes[t.files:t.pctab]) // the names of source files, and which unit has which
	const wordOfGofunc = 40
	module, err := module(segments, t.at, int64(t.names))
	if err != nil {
		return err
	}
	about := dataAt(segments, module(wordOfGofunc)) // the functions' own tables
	if about == nil {
		return errors.New("the functions' own tables are not as expected")
	}
	kept := map[uint32]bool{}
	var trees []tree
	for i := range t.count {
		at := t.record(i)
		f, data, own := t.bytes[at:], t.pcdata(at), t.funcdata(at)
		if never[t.entry(i)-goFunctions] {
			t.setWord(at+recordPCSP, 0)
			clear(f[recordSize:][:4*data])
			for d := range own {
				t.setWord(at+recordSize+4*(data+d), ^uint32(0))
			}
		}
		if f[recordFuncID] != funcIDWrapper {
			trees = append(trees, blankTrace(f[recordSize:], t.bytes[t.pctab:t.rows], data, own))
		}
		for d := range own {
			kept[t.word(at+recordSize+4*(data+d))] = true
		}
		// The runtime takes offset 0 for a function without a name, too.
		if name := t.names + int(t.word(at+recordName)); name >= t.files {
			return errors.New("a function's name is not as expected")
		} else if t.bytes[name] == 0 {
			t.setWord(at+recordName, 0)
		}
		for _, field := range []int{recordPCFile, recordPCLine, recordUnit, recordStartLine} {
			t.setWord(at+field, 0)
		}
	}
	for _, calls := range trees {
		if room := len(about) - int(calls.at); !kept[calls.at] && calls.bytes > 0 && calls.bytes <= room {
			clear(about[calls.at:][:calls.bytes])
		}
	}
	return nil
}

// named begin the names that stay, since the runtime itself looks at them: stubs of
// reflection (runtime/stkframe.go), and what its own goroutines begin with, by which
// it tells them from ours (isSystemGoroutine in runtime/traceback.go).
var named = []string{"reflect.makeFuncStub", "reflect.methodValueCall", "runtime.bg", "runtime.forcegchelper", "runtime.gcBgMarkWorker", "runtime.run"}

// blankNames takes away the names of all other functions. A stack trace says "?": to
// read one, build with -untrimmed.
func blankNames(names []byte) {
	for {
		end := bytes.IndexByte(names, 0)
		if end < 0 {
			return
		}
		if !slices.ContainsFunc(named, func(begin string) bool { return bytes.HasPrefix(names, []byte(begin)) }) {
			clear(names[:end])
		}
		names = names[end+1:]
	}
}

// module is the program's description of itself (runtime.moduledata), as words: the first
// one may be cut off, no other. It begins with the address of the function table and that of the names in it.
func module(segments []segment, table, names int64) (word func(i int) int64, err error) {
	const words = 41 // as many as are asked for
	head := binary.LittleEndian.AppendUint64(binary.LittleEndian.AppendUint64(nil, uint64(table)), uint64(table+names))
	// The linker leaves zeros out at the start of a segment, and an address may begin with one.
	seen := bytes.TrimLeft(head, "\x00")
	for _, s := range segments {
		at := bytes.Index(s.data, seen)
		if at < 0 {
			continue
		}
		at -= len(head) - len(seen)
		if at+8*words <= len(s.data) {
			return func(i int) int64 { return int64(binary.LittleEndian.Uint64(s.data[at+8*i:])) }, nil
		}
	}
	return nil, errors.New("the module's description is not as expected")
}

// dataAt is what lies at an address, up to the end of its segment; nil where nothing does.
func dataAt(segments []segment, address int64) []byte {
	for _, s := range segments {
		if address >= s.at && address < s.at+int64(len(s.data)) {
			return s.data[address-s.at:]
		}
	}
	return nil
}

// tree is the table of one function's inlined calls.
type tree struct {
	at    uint32
	bytes int
}

// blankTrace takes away what only stack traces read: which instruction came from
// which inlined function, and which arguments to print. Points at which a thread
// may be stopped are of no use in a browser, which has one thread. Wrappers are not
// given here, since recover counts frames through their inlined functions.
func blankTrace(f, pctab []byte, pcdata, funcdata int) (t tree) {
	const unsafePoint, inlineIndex, argumentLive = 0, 2, 3
	const inlineTree, argumentInfo, argumentLiveInfo, wrapInfo = 3, 5, 6, 7
	const inlinedCall = 16 // bytes of runtime.inlinedCall
	if inlineIndex < pcdata && inlineTree < funcdata {
		if offset := binary.LittleEndian.Uint32(f[4*inlineIndex:]); offset != 0 {
			t = tree{binary.LittleEndian.Uint32(f[4*(pcdata+inlineTree):]), inlinedCall * (highest(pctab, int(offset)) + 1)}
		}
	}
	for _, i := range []int{unsafePoint, inlineIndex, argumentLive} {
		if i < pcdata {
			binary.LittleEndian.PutUint32(f[4*i:], 0)
		}
	}
	for _, i := range []int{inlineTree, argumentInfo, argumentLiveInfo, wrapInfo} {
		if i < funcdata {
			binary.LittleEndian.PutUint32(f[4*(pcdata+i):], ^uint32(0))
		}
	}
	return t
}

// highest is the largest value of a table of instructions (runtime.step), which
// counts from -1.
func highest(pctab []byte, offset int) int {
	in := reader{b: pctab, at: offset}
	value, most := -1, -1
	for first := true; in.err == nil; first = false {
		change := in.unsigned()
		if change == 0 && !first {
			break
		}
		in.unsigned()
		value += int(change>>1) ^ -int(change&1)
		most = max(most, value)
	}
	return most
}

// reader reads WebAssembly's and the runtime's variable-length numbers
// (LEB128). The first fault stays in err.
type reader struct {
	b   []byte
	at  int
	err error
}

var (
	errEnds    = errors.New("it ends too early")
	errUnknown = errors.New("an instruction that Go did not write before")
)

func (r *reader) byte() byte {
	if r.err != nil || r.at >= len(r.b) {
		r.err = errEnds
		return 0
	}
	r.at++
	return r.b[r.at-1]
}

func (r *reader) bytes(n int) []byte {
	if r.err != nil || n < 0 || n > len(r.b)-r.at {
		r.err = errEnds
		return nil
	}
	r.at += n
	return r.b[r.at-n : r.at]
}

func (r *reader) unsigned() uint64 {
	var n uint64
	for shift := 0; shift < 64; shift += 7 {
		c := r.byte()
		n |= uint64(c&0x7f) << shift
		if c < 0x80 {
			break
		}
	}
	return n
}

func (r *reader) signed() int64 {
	var n int64
	for shift := 0; shift < 64; {
		c := r.byte()
		n |= int64(c&0x7f) << shift
		shift += 7
		if c < 0x80 {
			if c&0x40 != 0 && shift < 64 {
				n |= -1 << shift
			}
			break
		}
	}
	return n
}

func unsigned(n uint64) []byte { return binary.AppendUvarint(nil, n) }

func signed(n int64) []byte {
	var out []byte
	for {
		c := byte(n & 0x7f)
		n >>= 7
		if n == 0 && c&0x40 == 0 || n == -1 && c&0x40 != 0 {
			return append(out, c)
		}
		out = append(out, c|0x80)
	}
}
