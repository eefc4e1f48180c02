//go:build !js

package site

import (
	"bytes"
	"errors"
	"strconv"
	"strings"
)

// A program carries the name of each of its types, which reflection prints: the page's
// program does so only in what it says of its own faults. Go tells a type by its address,
// so the names are written over with question marks, 8 kB. Those of the packages called
// app get a number each, since the framework tells a page's parts apart by them
// (component.go). The names of methods lie between them and stay: by these Go finds what a
// type can do.

// Names stand in runs, shortest first, with other things of their size between the runs.
// So long a run of what looks like names is nothing else, and so many there are.
const (
	fewestInRun = 20
	fewestTypes = 1000
)

// blankTypes writes over the names of types: those that begin with a star, which the
// compiler puts before each (internal/abi, TFlagExtraStar).
func blankTypes(segments []segment) error {
	types := 0
	for _, s := range segments {
		for from := 0; from < len(s.data); {
			names, length := namesAt(s.data[from:])
			if len(names) < fewestInRun {
				from++
				continue
			}
			from += length
			for _, name := range names {
				if name[0] == '*' {
					var number string
					if bytes.HasPrefix(name, []byte("*app.")) {
						number = strconv.Itoa(types)
					}
					copy(name[1:], number+strings.Repeat("?", len(name)-1-len(number)))
					types++
				}
			}
		}
	}
	if types < fewestTypes {
		return errors.New("the names of types are not as expected")
	}
	return nil
}

// namesAt reads names that follow each other (internal/abi, Name): a byte of flags, the
// length, the text; then a tag and where the name of the package is, where the flags say so.
func namesAt(data []byte) (names [][]byte, length int) {
	const exported, tagged, placed, embedded = 1, 2, 4, 8
	in := reader{b: data}
	for {
		flags := in.byte()
		name := in.bytes(int(in.unsigned()))
		if flags&tagged != 0 {
			in.bytes(int(in.unsigned()))
		}
		if flags&placed != 0 {
			in.bytes(4)
		}
		if in.err != nil || flags&^(exported|tagged|placed|embedded) != 0 || len(name) == 0 || bytes.ContainsFunc(name, func(r rune) bool { return r < ' ' }) {
			return names, length
		}
		names, length = append(names, name), in.at
	}
}
