//go:build !js

package site

import (
	"bytes"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// What Go's runtime says on the console before it stops a program whose memory is broken,
// what it prints of itself when it is asked to trace, and the names of its counters, stand
// in every program. Nobody reads them on a page, which says in plain words that it has
// stopped; they are blanked, 5 kB less to download. What a program's own faults are called,
// such as an index out of range, stays.

// saysAloud are the runtime's functions whose texts these are.
var saysAloud = []string{"throw", "fatal", "print", "println"}

// leastUnsaid is the length from which a text is blanked: a shorter one may stand elsewhere
// by chance.
const leastUnsaid = 14

// runtimeTexts lists those texts of the Go at a root, the longest first.
func runtimeTexts(goroot string) (texts []string, err error) {
	for _, folder := range []string{"runtime", "internal/runtime"} {
		err := filepath.WalkDir(filepath.Join(goroot, "src", folder), func(file string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() || !strings.HasSuffix(file, ".go") || strings.HasSuffix(file, "_test.go") || strings.Contains(file, "testdata") {
				return err
			}
			tree, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
			if err != nil {
				return err
			}
			ast.Inspect(tree, func(n ast.Node) bool {
				switch n := n.(type) {
				case *ast.CallExpr:
					if f, ok := n.Fun.(*ast.Ident); ok && slices.Contains(saysAloud, f.Name) {
						for _, arg := range n.Args {
							if lit, ok := arg.(*ast.BasicLit); ok {
								texts = append(texts, unquoted(lit))
							}
						}
					}
				case *ast.BasicLit:
					if text := unquoted(n); strings.HasPrefix(text, "/") && strings.Contains(text, ":") { // "/gc/heap/live:bytes"
						texts = append(texts, text)
					}
				}
				return true
			})
			return nil
		})
		if err != nil {
			return nil, err
		}
	}
	slices.SortFunc(texts, func(a, b string) int { return len(b) - len(a) })
	return texts, nil
}

func unquoted(lit *ast.BasicLit) string {
	if lit.Kind != token.STRING {
		return ""
	}
	text, err := strconv.Unquote(lit.Value)
	if err != nil {
		return ""
	}
	return text
}

// unsaid blanks the texts in a program. One that stands there more than once may be part of
// another, and stays.
func unsaid(program []byte, texts []string) []byte {
	program = bytes.Clone(program)
	for _, text := range texts {
		if len(text) < leastUnsaid || bytes.Count(program, []byte(text)) != 1 {
			continue
		}
		at := bytes.Index(program, []byte(text))
		for i := range len(text) {
			program[at+i] = ' '
		}
	}
	return program
}
