//go:build !js

package site

import (
	"bytes"
	"errors"
	"regexp"
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

// nothing is the body of a function that is never called: no locals, and a trap.
var nothing = []byte{0, 0x00, 0x0b}

// emptied is a program's section of code without the bodies of what never runs.
func emptied(code []byte, names map[int]string) ([]byte, error) {
	in := reader{b: code}
	count := in.unsigned()
	out := bytes.NewBuffer(unsigned(count))
	for i := range int(count) {
		body := in.bytes(int(in.unsigned()))
		if in.err != nil {
			return nil, errors.New("squeeze: functions end too early")
		}
		if neverNames.MatchString(names[i]) {
			body = nothing
		}
		out.Write(unsigned(uint64(len(body))))
		out.Write(body)
	}
	return out.Bytes(), nil
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
