package rules_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// symbol is a unit right behind a figure or a hole: such a sentence would say the same
// to a reader of other units.
var symbol = regexp.MustCompile(`(\{\} ?(ft|°F|°C|gpm|L/h|mm|cm|acres?|lb|psi|hp|kPa|mil|µm|mph|km/h|gal|kW)|\d ?(in|ft|°F|°C|gpm|L/h|mm|cm|acres?|lb|psi|hp|kPa|mil|µm|mph|km/h|gal|kW))\b[^-a-z]`)

// No sentence of a rule, gate, caution, plan or search holds a unit's symbol: quantities
// are quantities, printed in the reader's units. What a published table or rule is
// called by stays as it is called.
func TestNoSentenceHoldsAUnitsSymbol(t *testing.T) {
	sayers := map[string]bool{"Say": true, "rulesOut": true, "against": true, "speaksFor": true, "waited": true}
	for _, room := range []string{"judge", "plan", "search", "facts", "question"} {
		err := filepath.WalkDir(room, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			fset := token.NewFileSet()
			file, err := parser.ParseFile(fset, path, nil, 0)
			require.NoError(t, err)
			ast.Inspect(file, func(n ast.Node) bool {
				call, ok := n.(*ast.CallExpr)
				if !ok {
					return true
				}
				name := ""
				switch f := call.Fun.(type) {
				case *ast.Ident:
					name = f.Name
				case *ast.SelectorExpr:
					name = f.Sel.Name
				}
				for i, arg := range call.Args {
					lit, ok := arg.(*ast.BasicLit)
					if !ok || lit.Kind != token.STRING || !sayers[name] || i > 1 {
						continue
					}
					text, err := strconv.Unquote(lit.Value)
					require.NoError(t, err)
					if m := symbol.FindString(text + " "); m != "" && !strings.Contains(text, "Soil warmth:") && !strings.Contains(text, "in the row") {
						assert.Fail(t, fset.Position(lit.Pos()).String(), "%q in %q", m, text)
					}
				}
				return true
			})
			return nil
		})
		require.NoError(t, err)
	}
}
