package rules_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// imports lists the imports of every Go file below a folder, tests left out.
func imports(t *testing.T, root string) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && (d.Name() == "internal" || d.Name() == ".build") { // for tests alone, and what a build left
			return filepath.SkipDir
		}
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		found[path] = []string{}
		for _, i := range file.Imports {
			found[path] = append(found[path], strings.Trim(i.Path.Value, `"`))
		}
		return nil
	})
	require.NoError(t, err)
	require.NotEmpty(t, found)
	return found
}

// The engine is pure: nothing but the standard library, and of that nothing
// that reads a clock, a file or the network, and no reflection.
func TestTheEngineIsPure(t *testing.T) {
	forbidden := []string{"os", "io", "net", "time", "log", "fmt", "reflect", "syscall/js", "math/rand", "math/rand/v2", "unsafe", "os/exec", "context", "sync"}
	for path, list := range imports(t, ".") {
		host := strings.HasSuffix(path, "embedded_host.go")
		for _, name := range list {
			ours := strings.HasPrefix(name, "filmfurrow/rules")
			assert.True(t, ours || !strings.Contains(strings.Split(name, "/")[0], "."), "%s imports %s", path, name)
			assert.False(t, strings.HasPrefix(name, "filmfurrow/") && !ours, "%s imports %s", path, name)
			if host {
				continue
			}
			assert.NotContains(t, forbidden, name, path)
		}
	}
}

// floors are the rooms of the house in the order of their imports: a room imports
// only rooms that stand before it. The longest name that begins a room's path counts.
var floors = []string{
	"rules/unit", "rules/jsontext", "rules/sheet", "rules/model", "rules/table", "rules/question", "rules/field", "rules/facts",
	"rules/judge", "rules/plan", "rules/search", "rules", "rules/casefile", "rules/pack", "app", "wasm",
}

// Imports point one way: unit ← model, table ← question ← field ← facts ← judge ←
// plan and search ← rules ← casefile ← app ← wasm.
func TestImportsPointOneWay(t *testing.T) {
	level := func(pkg string) int {
		floor, long := -1, 0
		for i, room := range floors {
			if name := "filmfurrow/" + room; len(name) > long && (pkg == name || strings.HasPrefix(pkg, name+"/")) {
				floor, long = i, len(name)
			}
		}
		return floor
	}
	for path, list := range imports(t, "..") {
		own := "filmfurrow/" + filepath.ToSlash(filepath.Dir(strings.TrimPrefix(path, ".."+string(os.PathSeparator))))
		if level(own) < 0 {
			continue
		}
		for _, name := range list {
			if l := level(name); l >= 0 && name != own {
				assert.LessOrEqual(t, l, level(own), "%s imports %s", path, name)
				assert.False(t, strings.HasPrefix(own, "filmfurrow/rules/model") && strings.HasPrefix(name, "filmfurrow/rules/table"), "%s: a model reads no table", path)
				assert.False(t, strings.HasPrefix(own, "filmfurrow/rules/table") && strings.HasPrefix(name, "filmfurrow/rules/model"), "%s: a table knows no model", path)
			}
		}
	}
}

// The page computes no agronomy: no mathematics but for drawing and rounding.
func TestThePageDoesNoSums(t *testing.T) {
	for path, list := range imports(t, "../app") {
		for _, name := range list {
			assert.False(t, strings.HasPrefix(name, "filmfurrow/rules/model/heat") && !strings.Contains(path, "strip"), "%s imports %s", path, name)
			assert.NotEqual(t, "filmfurrow/rules/model/sky", name, path)
			assert.NotEqual(t, "filmfurrow/rules/model/weather", name, path)
		}
	}
}

// A source that nothing cites is dead weight, and one that is cited under the
// wrong name would not compile.
func TestEverySourceIsCited(t *testing.T) {
	var text strings.Builder
	for path := range imports(t, ".") {
		if strings.HasSuffix(path, "sources.go") {
			continue
		}
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		text.Write(data)
	}
	list, err := os.ReadFile("table/sources.go")
	require.NoError(t, err)
	for _, m := range regexp.MustCompile(`(?m)^\t&(\w+),$`).FindAllStringSubmatch(string(list), -1) {
		cited := regexp.MustCompile(`&(table\.)?` + m[1] + `\b`).MatchString(text.String())
		assert.True(t, cited, "nothing cites %s", m[1])
	}
}

// Every room says what it holds.
func TestEveryRoomSaysWhatItHolds(t *testing.T) {
	said := map[string]string{}
	files := imports(t, ".")
	for _, root := range []string{"../app", "../wasm"} {
		maps.Copy(files, imports(t, root))
	}
	for path := range files {
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.PackageClauseOnly|parser.ParseComments)
		require.NoError(t, err)
		said[filepath.Dir(path)] += file.Doc.Text()
	}
	for room, doc := range said {
		assert.Greater(t, len(doc), 80, "%s has no word on what it holds", room)
		assert.Regexp(t, `^(Package|Command) `, doc, room)
	}
}
