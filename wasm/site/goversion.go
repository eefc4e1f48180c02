//go:build !js

package site

import (
	"fmt"
	"strings"
)

// squeezedGo is the release of Go whose tables this package knows. go.mod names the
// exact toolchain. With any other release the site builds all the same, some 510 kB
// larger after brotli, and the build says so.
//
// What is assumed of the release, and what to check before another one is named here,
// in its source:
//
//   - internal/abi/symtab.go: the magic number of the table of functions
//     (runtime.pclntab), 0xfffffff1; the numbers of PCDATA and FUNCDATA tables that
//     blankTrace blanks; FuncIDWrapper.
//   - runtime/symtab.go (pcHeader, functab, pcvalue, step) and runtime/runtime2.go
//     (_func): the layout that readFunctable reads, and that offset 0, or all ones
//     for a function's own tables, means "no table".
//     Tables of instructions are found through a record's words alone, so they may move (pack).
//     cmd/link/internal/ld/pcln.go: that records follow each other in the order of their
//     rows, in steps of 8 bytes (counted looks after that itself).
//   - runtime/symtab.go (moduledata): the first two words, and that gofunc is word 40
//     (functionData). runtime/symtabinl.go: an inlined call has 16 bytes.
//   - runtime/stkframe.go and runtime/traceback.go: the names of functions that the
//     runtime itself looks at (named).
//   - internal/abi/type.go (Name): how a name is written, and that a type's begins with a
//     star; runtime and reflect: that a type is told by its address (namesAt, blankTypes).
//   - runtime and internal/bisect: that the functions of neverNames run only for tracing,
//     profiles, metrics, GODEBUG settings or synctest, which a page cannot ask for; look
//     for callers without such a guard. time and reflect: that nothing but what the names
//     tell calls what prints times and makes functions of methods. runtime/mgcpacer.go: that
//     setGCPercent bears its linker's name (wasm/main_js.go). cmd/link/internal/wasm/asm.go: funcValueOffset, and
//     that functions stand in the order of their numbers (goFunctions).
//   - cmd/internal/obj/wasm (preprocess, assemble): that a function's first local is the
//     stack's pointer (shorten.go); how jumps, calls and returns are written (straight.go): what
//     is written otherwise stays as it is.
//   - runtime/stkframe.go, traceback.go, stack.go, panic.go: what is looked up by an address,
//     and at which number (numbers.go). runtime/symtab.go (findfunc): the first table that an
//     address is looked up in (findFinder).
//   - cmd/link/internal/wasm/asm.go: data segments that are active and begin at a
//     constant (readSegments). Where another release writes others, nothing is squeezed.
//
// Then: name it here and in go.mod, run go test ./wasm/site (TestSqueezeChangesOnlyWhatItSays
// compares the tables before and after; TestBudget prints the size) and the browser tests
// with FF_LONG=1, in which the collector of garbage walks the squeezed tables for minutes.
const squeezedGo = "go1.26"

// knows reports whether a version of Go belongs to the release that is known here.
func knows(goVersion string) bool {
	return goVersion == squeezedGo || strings.HasPrefix(goVersion, squeezedGo+".")
}

// shrink squeezes a program that was compiled by some version of Go, and says in a
// sentence what could not be done.
func shrink(program []byte, goVersion string, say func(string)) ([]byte, error) {
	squeezed, err := squeeze(program, knows(goVersion))
	if knows(goVersion) {
		return squeezed, err
	}
	if err != nil {
		squeezed = program
	}
	say(fmt.Sprintf("The program is about 510 kB larger to download than it need be, since this is %s and only the tables of %s are known (see wasm/site/goversion.go).", goVersion, squeezedGo))
	return squeezed, nil
}
