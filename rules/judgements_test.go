package rules_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"math"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"filmfurrow/rules"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// room parses the files of one folder, tests left out.
func room(t *testing.T, folder string) (*token.FileSet, []*ast.File) {
	t.Helper()
	set := token.NewFileSet()
	paths, err := filepath.Glob(filepath.Join(folder, "*.go"))
	require.NoError(t, err)
	var files []*ast.File
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(set, path, nil, parser.SkipObjectResolution)
		require.NoError(t, err)
		files = append(files, file)
	}
	return set, files
}

// bare finds the numbers in an expression, 0 and 1 left out: those say all, nothing
// and whole; so are the places in a list.
func bare(e ast.Node) (found []*ast.BasicLit) {
	ast.Inspect(e, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.IndexExpr:
			return false
		case *ast.BasicLit:
			if (n.Kind == token.INT || n.Kind == token.FLOAT) && n.Value != "0" && n.Value != "1" {
				found = append(found, n)
			}
		}
		return true
	})
	return found
}

func called(c *ast.CallExpr) string {
	switch f := c.Fun.(type) {
	case *ast.Ident:
		return f.Name
	case *ast.SelectorExpr:
		return f.Sel.Name
	}
	return ""
}

// A fit, the half-point of a slope and a threshold of a rule are rows with a meaning:
// none is a number in the midst of a rule. Counts up to 2 are words for one and two.
func TestEveryFitHasAName(t *testing.T) {
	set, files := room(t, "judge")
	fits, halves, limits := 0, 0, 0
	names := func(e ast.Node, what string) {
		for _, n := range bare(e) {
			t.Errorf("%s: %s is the bare number %s", set.Position(n.Pos()), what, n.Value)
		}
	}
	for _, file := range files {
		ast.Inspect(file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				switch called(n) {
				case "against", "speaksFor":
					fits++
					names(n.Args[0], "a fit")
				case "saturate":
					halves++
					names(n.Args[1], "a half-point")
				case "Or":
					names(n.Args[0], "what stands in")
				}
			case *ast.KeyValueExpr:
				if key, ok := n.Key.(*ast.Ident); ok && key.Name == "Fit" {
					fits++
					names(n.Value, "a fit")
				}
			case *ast.BinaryExpr:
				switch n.Op {
				case token.LSS, token.LEQ, token.GTR, token.GEQ:
					limits++
					for _, number := range bare(n) {
						assert.Equal(t, "2", number.Value, "%s: a threshold is a bare number", set.Position(number.Pos()))
					}
				}
			}
			return true
		})
	}
	t.Logf("%d fits, %d slopes, %d thresholds", fits, halves, limits)
	assert.Greater(t, fits, 90, "the test reads the rules")
	assert.Greater(t, halves, 40)
}

// Each figure says what it means, once.
func TestEveryJudgementIsTold(t *testing.T) {
	seen, ours := map[string]bool{}, 0
	id := regexp.MustCompile(`^[a-z]+(-[a-z0-9]+)+$`)
	for _, j := range rules.Judgements() {
		assert.Regexp(t, id, j.ID)
		assert.False(t, seen[j.ID], "%s stands twice", j.ID)
		seen[j.ID] = true
		assert.NotEmpty(t, j.Means, j.ID)
		assert.False(t, math.IsNaN(j.Value) || math.IsInf(j.Value, 0), j.ID)
		if j.Source == "" {
			ours++
		}
	}
	t.Logf("%d figures, %d of them our judgment alone", len(seen), ours)
	assert.Greater(t, len(seen), 250)
}

// Each figure is read: it stands in a row, and some code decides with it.
func TestEveryJudgementIsRead(t *testing.T) {
	folders := []string{filepath.Join("..", "app")} // the page shows some
	require.NoError(t, filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && d.Name() == "internal" {
			return filepath.SkipDir
		}
		if err == nil && d.IsDir() {
			folders = append(folders, path)
		}
		return err
	}))
	type name struct{ folder, word string }
	rows, reads := map[name]bool{}, map[name]int{}
	kept := map[name]bool{} // beside the rows that tell them
	for _, folder := range folders {
		set, files := room(t, folder)
		for _, file := range files {
			imported := map[string]string{} // the word for a room, and its folder
			for _, i := range file.Imports {
				if path, ok := strings.CutPrefix(strings.Trim(i.Path.Value, `"`), "filmfurrow/rules/"); ok {
					imported[filepath.Base(path)] = filepath.FromSlash(path)
				}
			}
			words := func(n ast.Node, visit func(name)) {
				ast.Inspect(n, func(n ast.Node) bool {
					switch n := n.(type) {
					case *ast.SelectorExpr:
						if pkg, ok := n.X.(*ast.Ident); ok && imported[pkg.Name] != "" {
							visit(name{imported[pkg.Name], n.Sel.Name})
							return false
						}
						visit(name{folder, n.Sel.Name})
					case *ast.Ident:
						visit(name{folder, n.Name})
					}
					return true
				})
			}
			read := func(n ast.Node) { words(n, func(w name) { reads[w]++ }) }
			for _, decl := range file.Decls {
				if f, ok := decl.(*ast.FuncDecl); ok && f.Recv == nil && f.Name.Name == "Judgements" {
					ast.Inspect(f.Body, func(n ast.Node) bool {
						if kv, ok := n.(*ast.KeyValueExpr); ok {
							if key, ok := kv.Key.(*ast.Ident); ok && key.Name == "Value" {
								words(kv.Value, func(w name) { rows[w] = true })
							}
						}
						return true
					})
					continue
				}
				values, ok := decl.(*ast.GenDecl)
				if !ok {
					read(decl)
					continue
				}
				for _, spec := range values.Specs {
					v, ok := spec.(*ast.ValueSpec)
					if !ok {
						read(spec)
						continue
					}
					for i, value := range v.Values {
						if filepath.Base(set.Position(v.Pos()).Filename) == "judgements.go" {
							kept[name{folder, v.Names[i].Name}] = true
						}
						read(value)
					}
				}
			}
		}
	}
	for _, local := range []string{"float64", "n", "t", "due", "value", "weight", "power", "Value"} {
		for _, folder := range folders {
			delete(rows, name{folder, local})
		}
	}
	for w := range kept {
		assert.True(t, rows[w], "no row tells %s of rules/%s", w.word, filepath.ToSlash(w.folder))
	}
	assert.Greater(t, len(rows), 250)
	for w := range rows {
		assert.Positive(t, reads[w], "nothing reads %s of rules/%s", w.word, filepath.ToSlash(w.folder))
	}
}
