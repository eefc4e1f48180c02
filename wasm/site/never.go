//go:build !js

package site

import (
	"bytes"
	"errors"
	"regexp"
	"strings"
)

// neverNames names functions of Go's runtime that work only when it is asked to trace,
// to profile, to count or to check itself, and of the package that looks for a change
// of Go that broke a program; that say what is wrong with memory before they stop the
// program, or compare types of programs made of several modules; further what prints times of the standard library, which
// every context can be asked for, and what makes a function of a method by reflection. All
// of them wait for a setting or a call that nothing in a page can give (see goversion.go;
// TestThePagePrintsNoTimes), so they are left empty: should one be called all the same, the
// program stops there.
var neverNames = regexp.MustCompile(`^runtime\.(` +
	`initMetrics|schedtrace|printScavTrace|dumpScanStats|` +
	`traceAdvance|traceReadCPU|traceCPUFlush|traceWriter\.|traceEventWriter\.|traceLocker\.([A-Z]|event|start|emit|write)|\(\*trace|` +
	`traceStack$|dumpStacksRec|dumpTypesRec|traceSyncBatch|traceRegisterLabels|makeTraceFrame|fpunwindExpand|goStatusToTraceGoStatus|` +
	`hexdump|\(\*hexdumper|\(\*profBuf|mProf_Free|stkbucket|setprofilebucket|saveblockevent|` +
	`tryRecordGoroutineProfile$|doRecordGoroutineProfile|findGoroutineLeaks|findMaybeRunnableGoroutines|` +
	`checkFinalizersAndCleanups|setCheckmark|startCheckmarks|endCheckmarks|runCheckmark|` +
	`typesEqual$|printanycustomtype$|gcDumpObject$|\(\*mspan\)\.reportZombies$|` +
	`\(\*mspan\)\.setUserArenaChunkToFault|\(\*synctestBubble\))` +
	`|^internal/bisect\.([A-Z(]|append|print|fnv)` +
	`|^time\.(Time\.(append|AppendFormat|Format$|String$)|nextStdChunk$|append(Int|Nano)$|tz(set|rule))` +
	`|^reflect\.(callMethod$|makeMethodValue$|funcLayout$|newAbiDesc$|addTypeBits$|storeRcvr$|valueMethodName$|\(\*abiSeq\)|\(\*bitVector\))`)

// equalNames names the functions that tell whether two arrays, or two values of one of the
// engine's types, are equal.
var equalNames = regexp.MustCompile(`^type:\.eq\.(\[\d+\]|filmfurrow/rules/)`)

// neverRuns are the functions that never run, by their place: those of neverNames, and
// those of equalNames that no code calls. Such a one is kept for the case that two values
// are compared within interfaces, or looked up in a map by a key of that type. No key of a
// map has a type without a function that hashes it, and the page compares no such values
// within interfaces: should it, the program stops there.
func neverRuns(bodies [][]byte, names map[int]string, imports int) map[int]bool {
	never, hashed := map[int]bool{}, map[string]bool{}
	for i, name := range names {
		never[i] = neverNames.MatchString(name)
		if of, found := strings.CutPrefix(name, "type:.hash."); found {
			hashed[of] = true
		}
	}
	for more := true; more; { // what only such a function calls is not called either
		more = false
		called := map[int]bool{}
		for i, body := range bodies {
			if !never[i] {
				calls(body, imports, called)
			}
		}
		for i, name := range names {
			if !never[i] && !called[i] && equalNames.MatchString(name) && !hashed[strings.TrimPrefix(name, "type:.eq.")] {
				never[i], more = true, true
			}
		}
	}
	return never
}

// calls marks the functions that a body calls, and some more: it takes each byte that may
// be the instruction for one.
func calls(body []byte, imports int, called map[int]bool) {
	const call = 0x10
	for at, op := range body {
		if op == call {
			called[int((&reader{b: body, at: at + 1}).unsigned())-imports] = true
		}
	}
}

// bodiesOf are the functions of a program's section of code.
func bodiesOf(code []byte) ([][]byte, error) {
	in := reader{b: code}
	bodies := make([][]byte, min(in.unsigned(), uint64(len(code))))
	for i := range bodies {
		bodies[i] = in.bytes(int(in.unsigned()))
	}
	if in.err != nil {
		return nil, errors.New("squeeze: functions end too early")
	}
	return bodies, nil
}

// nothing is the body of a function that is never called: no locals, and a trap.
var nothing = []byte{0, 0x00, 0x0b}

// tightened is a function's body that does the same in fewer instructions.
func tightened(body []byte) []byte { return settled(straightened(shortened(body))) }

// joined is a program's section of code.
func joined(bodies [][]byte) []byte {
	out := bytes.NewBuffer(unsigned(uint64(len(bodies))))
	for _, body := range bodies {
		out.Write(unsigned(uint64(len(body))))
		out.Write(body)
	}
	return out.Bytes()
}

// goFunctions is where Go's table of functions begins (funcValueOffset in the
// linker's internal/wasm/asm.go): a function's place in it is also its address.
const goFunctions = 0x1000

// functionNames are the names of a program's own functions, by their place, as its
// table tells them before it is blanked.
func functionNames(segments []segment) (map[int]string, error) {
	t, err := readFunctable(segments)
	if err != nil {
		return nil, err
	}
	names := make(map[int]string, t.count)
	for i := range t.count {
		from := t.names + int(t.word(t.record(i)+recordName))
		if from >= t.files {
			return nil, errNoTable
		}
		name, _, _ := bytes.Cut(t.bytes[from:t.files], []byte{0})
		names[int(t.word(t.rows+8*i))-goFunctions] = string(name)
	}
	return names, nil
}
