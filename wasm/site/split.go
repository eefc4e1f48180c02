//go:build !js

package site

import (
	"bytes"
	"errors"
	"fmt"
	"regexp"
	"slices"
)

// A first visit waits for the program's bytes, and for the form only half of them
// are needed: the rest works out the answers and draws the sections below. So the
// program is parted in two files. Both hold every function, by the same number, and
// share memory, stack and table of functions; a function whose home is in the other
// file is a stub here that calls it through the table. The second file puts its own
// functions into the table when it comes. Until then the page keeps what is typed and
// asks nothing of the engine (app/pace.go); from then on it is one program.

// laterNames names the functions of the second file: models, weighing and texts of
// the engine, and the parts of the page that show them. Whatever is not named comes
// first, and so does what a first function calls by name or holds within: only a gate,
// which makes sure that the second file is there, may call into it.
var (
	laterNames = regexp.MustCompile(`^(filmfurrow/rules[./]|slices\..*filmfurrow/rules|type:\.eq\..*filmfurrow/rules|rsc\.io/qr|filmfurrow/app\.)`)
	withinName = regexp.MustCompile(`(\.func\d+|-fm|\.gowrap|\.deferwrap).*$`)
	gates      = regexp.MustCompile(`^filmfurrow/app\.(\(\*store\)\.(work|workOut|digFor|begin|start|calendar|beside)|\(\*(answersPart|laterPart|bedDrawing|probePart)\)|\(\*sharePart\)\.(Render\.func2$|qr))`)
	firstNames = regexp.MustCompile(`\.(map\.)?init(\.\d+)?$|^filmfurrow/rules/(casefile|jsontext|pack|unit|table)` +
		`|^filmfurrow/rules\.(init\.func|\(\*?(Input|Case|Choosable|Optional|FieldError|FieldErrors|Series|Films|Value)|[A-Za-z]+\[|choice|date|monthly|monthDay|number|own|price|text|whole|yesNo|chosen)` +
		`|^filmfurrow/app\.(\(\*?(home|notesPart|field|textBox|hand|unitSwitch|placePart|filmsPart|probePart|bucketPart|store|lane|laterPart|answersPart|bedDrawing|saved|sharePart|fieldsPart|svg)\)|init|Pages)`)
)

// goFunctions is where Go's table of functions begins (funcValueOffset in the
// linker's internal/wasm/asm.go): a function's place in it is also its address.
const goFunctions = 0x1000

// laterSection is the name of the section in which a program carries the list of its
// later functions: they are told by name before the names are squeezed out.
const laterSection = "later"

// neverNames names functions of Go's runtime that work only when it is asked to trace,
// to profile or to count, which nothing in a page can ask: they are left empty. That
// is 12 kB less to download.
var neverNames = regexp.MustCompile(`^runtime\.(initMetrics|schedtrace|traceAdvance|traceReadCPU|traceCPUFlush|traceWriter\.|traceEventWriter\.|traceLocker\.([A-Z]|event|start|emit|write)|\(\*trace|traceStack$|dumpStacksRec|dumpTypesRec|traceSyncBatch|traceRegisterLabels|hexdump|\(\*hexdumper|\(\*profBuf)`)

// markLater adds the list to a program, and empties what never runs.
func markLater(program, squeezed []byte) ([]byte, error) {
	m, err := readModule(program)
	if err != nil {
		return nil, err
	}
	names, err := m.names()
	if err != nil {
		return nil, err
	}
	lists := make([][]uint64, len(m.bodies))
	later, gate := make([]bool, len(m.bodies)), make([]bool, len(m.bodies))
	for i, name := range names {
		// Only Go's own kind of function, from an entry point to whether it yields.
		later[i] = m.kinds[i] == 0 && laterNames.MatchString(name) && !firstNames.MatchString(name)
		gate[i] = gates.MatchString(name)
		if lists[i], err = calls(m.bodies[i]); err != nil {
			return nil, fmt.Errorf("split: function %s: %w", name, err)
		}
	}
	within := map[string][]uint64{} // the functions that stand within another
	for i, name := range names {
		if at := withinName.FindStringIndex(name); at != nil {
			within[name[:at[0]]] = append(within[name[:at[0]]], uint64(m.imports+i))
		}
	}
	var first func(i int)
	first = func(i int) {
		for _, f := range append(within[names[i]], lists[i]...) {
			if own := int(f) - m.imports; own >= 0 && later[own] {
				later[own] = false
				if !gate[own] {
					first(own)
				}
			}
		}
	}
	for i := range names {
		if !later[i] && !gate[i] {
			first(i)
		}
	}
	code := unsigned(uint64(len(names)))
	small, err := readModule(squeezed)
	if err != nil || len(small.bodies) != len(names) {
		return nil, errors.Join(errors.New("split: squeezing has changed the functions"), err)
	}
	for i, name := range names {
		body := small.bodies[i]
		if neverNames.MatchString(name) {
			body = nothing
		}
		code = append(append(code, unsigned(uint64(len(body)))...), body...)
	}
	out := slices.Clone(squeezed[:8])
	for _, s := range small.sections {
		if s.id == 10 {
			s.body = code
		}
		out = append(append(append(out, s.id), unsigned(uint64(len(s.body)))...), s.body...)
	}
	body := append(unsigned(uint64(len(laterSection))), laterSection...)
	for i := range later {
		if later[i] {
			body = append(body, unsigned(uint64(i))...)
		}
	}
	return append(append(append(out, 0), unsigned(uint64(len(body)))...), body...), nil
}

// nothing is the body of a function that is never called: no locals, and a trap.
var nothing = []byte{0, 0x00, 0x0b}

// split parts a program; rest is nil where nothing of it comes later.
func split(program []byte) (now, rest []byte, err error) {
	m, err := readModule(program)
	if err != nil {
		return nil, nil, err
	}
	later := make([]bool, len(m.bodies))
	head := append(unsigned(uint64(len(laterSection))), laterSection...)
	m.sections = slices.DeleteFunc(m.sections, func(s section) bool {
		body, found := bytes.CutPrefix(s.body, head)
		if s.id != 0 || !found {
			return false
		}
		for in := (reader{b: body}); in.at < len(body) && in.err == nil; {
			if i := in.unsigned(); i < uint64(len(later)) {
				later[i] = true
			}
		}
		return true
	})
	if !slices.Contains(later, true) {
		return program, nil, nil
	}
	lists := make([][]uint64, len(m.bodies))
	for i := range m.bodies {
		if lists[i], err = calls(m.bodies[i]); err != nil {
			return nil, nil, fmt.Errorf("split: function %d: %w", i, err)
		}
	}
	called := [2][]bool{make([]bool, len(m.bodies)), make([]bool, len(m.bodies))} // by the first, by the rest
	for i, list := range lists {
		home := 0
		if later[i] {
			home = 1
		}
		for _, f := range list {
			if f >= uint64(m.imports) {
				called[home][f-uint64(m.imports)] = true
			}
		}
	}
	data, err := readSegments(m.section(11))
	if err != nil {
		return nil, nil, err
	}
	data = mergeSegments(data) // a copy: the program itself stays as it is
	table, err := readFunctable(data)
	if err != nil {
		return nil, nil, fmt.Errorf("split: %w", err)
	}
	recount, held, err := table.part(func(entry int) bool { i := entry - goFunctions; return i >= 0 && i < len(later) && later[i] })
	if err != nil {
		return nil, nil, fmt.Errorf("split: %w", err)
	}
	m.start, m.data = recount, [2][]byte{writeSegments(data), writeSegments(held)}
	var halves [2][]byte
	for home := range halves {
		code := unsigned(uint64(len(m.bodies)))
		for i, body := range m.bodies {
			if later[i] != (home == 1) {
				if body, err = m.stub(i, called[home][i]); err != nil {
					return nil, nil, err
				}
			}
			code = append(append(code, unsigned(uint64(len(body)))...), body...)
		}
		halves[home] = m.write(home, code, later)
	}
	return halves[0], halves[1], nil
}

// module is a program in its sections.
type module struct {
	program  []byte
	sections []section
	bodies   [][]byte
	kinds    []uint64  // the type of each function of its own
	imports  int       // functions that come from the browser
	start    []byte    // the function that runs when a half is in memory, if any
	data     [2][]byte // of each half
}

type section struct {
	id   byte
	body []byte
}

func readModule(program []byte) (*module, error) {
	const header = 8
	if len(program) < header || string(program[:4]) != "\x00asm" {
		return nil, errors.New("split: not a WebAssembly program")
	}
	m := &module{program: program}
	in := reader{b: program, at: header}
	for in.at < len(in.b) && in.err == nil {
		id := in.byte()
		m.sections = append(m.sections, section{id, in.bytes(int(in.unsigned()))})
	}
	if in.err != nil {
		return nil, fmt.Errorf("split: %w", in.err)
	}
	in = reader{b: m.section(2)}
	count := in.unsigned()
	for range count {
		in.bytes(int(in.unsigned()))
		in.bytes(int(in.unsigned()))
		if kind := in.byte(); kind != 0 {
			return nil, errors.New("split: the program takes more than functions from outside")
		}
		in.unsigned()
	}
	m.imports = int(count)
	kinds := reader{b: m.section(3)}
	code := reader{b: m.section(10)}
	n := code.unsigned()
	if kinds.unsigned() != n || in.err != nil {
		return nil, errors.New("split: functions are not as expected")
	}
	for range n {
		m.kinds = append(m.kinds, kinds.unsigned())
		m.bodies = append(m.bodies, code.bytes(int(code.unsigned())))
	}
	if kinds.err != nil || code.err != nil {
		return nil, errors.New("split: functions end too early")
	}
	// The table holds each function once, in order, as the linker writes it.
	table := reader{b: m.section(9)}
	want := []uint64{1, 0, 0x41}
	for _, w := range want {
		if table.unsigned() != w {
			return nil, errors.New("split: the table of functions is not as expected")
		}
	}
	if at := table.signed(); at != goFunctions || table.byte() != 0x0b || table.unsigned() != n {
		return nil, errors.New("split: the table of functions is not as expected")
	}
	for i := range n {
		if table.unsigned() != uint64(m.imports)+i {
			return nil, errors.New("split: the table of functions is not in order")
		}
	}
	return m, table.err
}

func (m *module) section(id byte) []byte {
	for _, s := range m.sections {
		if s.id == id {
			return s.body
		}
	}
	return nil
}

// names reads the functions' names from the program's own table of functions
// (see blankLines).
func (m *module) names() ([]string, error) {
	segments, err := readSegments(m.section(11))
	if err != nil {
		return nil, err
	}
	t, err := readFunctable(mergeSegments(segments))
	if err != nil {
		return nil, fmt.Errorf("split: %w", err)
	}
	list := make([]string, len(m.bodies))
	for i := range t.count {
		f, from := t.entry(i)-goFunctions, t.names+int(t.word(t.record(i)+recordName))
		if f < 0 || f >= len(list) || from >= t.files {
			return nil, errors.New("split: the table of functions is not as expected")
		}
		name, _, _ := bytes.Cut(t.bytes[from:t.files], []byte{0})
		list[f] = string(name)
	}
	return list, nil
}

// stub stands for a function of the other file: it calls it through the table, or
// is never called.
func (m *module) stub(i int, called bool) ([]byte, error) {
	if !called {
		return nothing, nil
	}
	params, err := m.params(m.kinds[i])
	if err != nil {
		return nil, err
	}
	body := []byte{0} // no locals
	for p := range params {
		body = append(append(body, 0x20), unsigned(uint64(p))...)
	}
	body = append(append(body, 0x41), signed(int64(goFunctions+i))...)
	body = append(append(body, 0x11), unsigned(m.kinds[i])...)
	return append(body, 0, 0x0b), nil
}

// params counts what a function of a kind takes.
func (m *module) params(kind uint64) (int, error) {
	in := reader{b: m.section(1)}
	for i := range in.unsigned() {
		if in.byte() != 0x60 {
			break
		}
		takes := in.bytes(int(in.unsigned()))
		in.bytes(int(in.unsigned()))
		if i == kind && in.err == nil {
			return len(takes), nil
		}
	}
	return 0, errors.New("split: a function of no known kind")
}

// write makes one of the halves: 0 is the program, which lends the other one its
// memory, table and globals.
func (m *module) write(home int, code []byte, later []bool) []byte {
	out := bytes.NewBuffer(slices.Clone(m.program[:8]))
	put := func(id byte, body []byte) {
		out.WriteByte(id)
		out.Write(unsigned(uint64(len(body))))
		out.Write(body)
	}
	globals := m.globals()
	name := func(b []byte, s string) []byte { return append(append(b, unsigned(uint64(len(s)))...), s...) }
	// The function that runs at the start comes after all others and is of a kind of its
	// own: it takes nothing and gives nothing.
	more := func(body, with []byte) []byte {
		if m.start == nil {
			return body
		}
		in := reader{b: body}
		n := in.unsigned()
		return slices.Concat(unsigned(n+1), body[in.at:], with)
	}
	kinds := reader{b: m.section(1)}
	kind := unsigned(kinds.unsigned())
	for _, s := range m.sections {
		if s.id == 9 && m.start != nil {
			put(8, unsigned(uint64(m.imports+len(m.bodies))))
		}
		switch {
		case s.id == 1:
			put(1, more(s.body, []byte{0x60, 0, 0}))
		case s.id == 3:
			put(3, more(s.body, kind))
		case s.id == 10:
			put(10, more(code, append(unsigned(uint64(len(m.start))), m.start...)))
		case s.id == 11:
			put(11, m.data[home])
		case home == 0 && s.id == 7:
			in := reader{b: s.body}
			n := in.unsigned()
			body := append(unsigned(n+1+uint64(len(globals))), s.body[in.at:]...)
			body = append(name(body, "table"), 1, 0)
			for i := range globals {
				body = append(append(name(body, fmt.Sprint("g", i)), 3), unsigned(uint64(i))...)
			}
			put(7, body)
		case home == 0:
			put(s.id, s.body)
		case s.id == 2:
			in := reader{b: s.body}
			n := in.unsigned()
			body := append(unsigned(n+2+uint64(len(globals))), s.body[in.at:]...)
			// The sections of table and memory hold one each, as an import wants it.
			body = append(append(name(name(body, "first"), "table"), 1), m.section(4)[1:]...)
			body = append(append(name(name(body, "first"), "mem"), 2), m.section(5)[1:]...)
			for i, kind := range globals {
				body = append(append(name(name(body, "first"), fmt.Sprint("g", i)), 3), kind[0], kind[1])
			}
			put(2, body)
		case s.id == 9:
			put(9, m.elements(later))
		}
	}
	return out.Bytes()
}

// globals gives type and mutability of each.
func (m *module) globals() (list [][2]byte) {
	in := reader{b: m.section(6)}
	for range in.unsigned() {
		kind := [2]byte{in.byte(), in.byte()}
		in.byte() // 0x41 or 0x42, a constant
		in.signed()
		in.byte()
		list = append(list, kind)
	}
	return list
}

// elements puts the later functions into the table, run by run.
func (m *module) elements(later []bool) []byte {
	var body []byte
	runs := 0
	for i := 0; i < len(later); i++ {
		from := i
		for i < len(later) && later[i] {
			i++
		}
		if i == from {
			continue
		}
		runs++
		body = append(append(append(body, 0, 0x41), signed(int64(goFunctions+from))...), 0x0b)
		body = append(body, unsigned(uint64(i-from))...)
		for f := from; f < i; f++ {
			body = append(body, unsigned(uint64(m.imports+f))...)
		}
	}
	return append(unsigned(uint64(runs)), body...)
}

// calls lists the functions that a body calls by number (WebAssembly core
// specification 2.0, §5.4: an instruction and what follows it at once).
func calls(body []byte) (list []uint64, err error) {
	in := reader{b: body}
	for range in.unsigned() { // locals
		in.unsigned()
		in.byte()
	}
	for in.at < len(in.b) && in.err == nil {
		switch op := in.byte(); {
		case op == 0x10: // call
			list = append(list, in.unsigned())
		case op >= 0x02 && op <= 0x04, op == 0x41, op == 0x42: // block, loop, if; constants
			in.signed()
		case op == 0x0c, op == 0x0d, op >= 0x20 && op <= 0x26: // branches, variables
			in.unsigned()
		case op == 0x0e: // br_table
			for range in.unsigned() + 1 {
				in.unsigned()
			}
		case op == 0x11, op >= 0x28 && op <= 0x3e: // call_indirect; loads and stores
			in.unsigned()
			in.unsigned()
		case op == 0x3f, op == 0x40: // memory.size, memory.grow
			in.byte()
		case op == 0x43:
			in.bytes(4)
		case op == 0x44:
			in.bytes(8)
		case op == 0xfc:
			switch more := in.unsigned(); {
			case more < 8: // conversions that saturate
			case more == 10: // memory.copy
				in.bytes(2)
			case more == 11: // memory.fill
				in.byte()
			default:
				return nil, fmt.Errorf("instruction 0xfc %d is not known here", more)
			}
		case op <= 0x01, op == 0x05, op == 0x0b, op == 0x0f, op == 0x1a, op == 0x1b, op >= 0x45 && op <= 0xc4:
		default:
			return nil, fmt.Errorf("instruction 0x%x is not known here", op)
		}
	}
	return list, in.err
}
