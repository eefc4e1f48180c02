//go:build !js

package site

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Texts that the page shows only when something is unfolded, or never, stand in the rules'
// rows, where one wants them; the program is built from a copy of those files in which they
// are empty, 3 kB less to download. The page fetches those that it shows (judge.RuleTexts).
const (
	leftPackage = "rules/judge"
	leftBecause = "because" // why a rule has its weight
	leftFires   = "fires"   // the case that fires it, for the tests
	leftLimits  = "limits"  // what is not known, of every case
)

func left(name string) bool {
	return strings.EqualFold(name, leftBecause) || strings.EqualFold(name, leftFires) || name == leftLimits
}

// overlay writes those copies into a folder, and the file that tells a go command of them.
func overlay(root, work string) (string, error) {
	files, err := filepath.Glob(filepath.Join(root, filepath.FromSlash(leftPackage), "*.go"))
	if err != nil {
		return "", err
	}
	files = slices.DeleteFunc(files, func(file string) bool { return strings.HasSuffix(file, "_test.go") })
	set := token.NewFileSet()
	var trees []*ast.File
	for _, file := range files {
		tree, err := parser.ParseFile(set, file, nil, parser.SkipObjectResolution)
		if err != nil {
			return "", err
		}
		trees = append(trees, tree)
	}
	makers := makersIn(trees)
	replace := map[string]string{}
	for i, tree := range trees {
		body, err := os.ReadFile(files[i])
		if err != nil {
			return "", err
		}
		empty := withoutTexts(tree, set, body, makers)
		if len(empty) == len(body) {
			continue
		}
		replace[files[i]] = filepath.Join(work, filepath.Base(files[i]))
		if err := write(replace[files[i]], empty); err != nil {
			return "", err
		}
	}
	list, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	file := filepath.Join(work, "overlay.json")
	return file, write(file, list)
}

// makersIn lists, of functions that are handed such a text, at which places.
func makersIn(trees []*ast.File) map[string][]int {
	makers := map[string][]int{}
	for _, tree := range trees {
		for _, decl := range tree.Decls {
			f, ok := decl.(*ast.FuncDecl)
			if !ok {
				continue
			}
			at := 0
			for _, field := range f.Type.Params.List {
				for _, name := range field.Names {
					if left(name.Name) {
						makers[f.Name.Name] = append(makers[f.Name.Name], at)
					}
					at++
				}
			}
		}
	}
	return makers
}

// withoutTexts is a file's text with those literals empty.
func withoutTexts(tree *ast.File, set *token.FileSet, body []byte, makers map[string][]int) []byte {
	var literals []*ast.BasicLit
	take := func(e ast.Expr) {
		if lit, ok := e.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			literals = append(literals, lit)
		}
	}
	ast.Inspect(tree, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.KeyValueExpr:
			if key, ok := n.Key.(*ast.Ident); ok && left(key.Name) {
				take(n.Value)
			}
		case *ast.CallExpr:
			if f, ok := n.Fun.(*ast.Ident); ok {
				for _, at := range makers[f.Name] {
					take(n.Args[at])
				}
			}
		}
		return true
	})
	slices.SortFunc(literals, func(a, b *ast.BasicLit) int { return int(b.Pos() - a.Pos()) }) // the last first: places before it stay
	body = slices.Clone(body)
	for _, lit := range literals {
		from, to := set.Position(lit.Pos()).Offset, set.Position(lit.End()).Offset
		body = slices.Replace(body, from, to, []byte(`""`)...)
	}
	return body
}
