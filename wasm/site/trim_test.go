//go:build !js

package site

import (
	"bytes"
	"go/parser"
	"go/token"
	"html"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func frameworkSource(t *testing.T) string {
	t.Helper()
	root, err := moduleRoot()
	require.NoError(t, err)
	out, err := goCommand(root, nil, "list", "-m", "-f", "{{.Dir}}", frameworkModule).Output()
	require.NoError(t, err)
	return strings.TrimSpace(string(out))
}

func TestTrimmedFilesAreWholeAndOurs(t *testing.T) {
	files, err := trimmedFiles(frameworkSource(t))
	require.NoError(t, err)
	for _, name := range leftOut {
		if name != "route.go" {
			assert.NotContains(t, files, "go-app/pkg/app/"+name)
		}
	}
	for name, body := range files {
		if strings.HasSuffix(name, ".go") {
			_, err := parser.ParseFile(token.NewFileSet(), name, body, parser.ImportsOnly)
			assert.NoError(t, err, name)
			for _, gone := range []string{`"net/http"`, `"text/template"`, `"regexp"`, `"html"`, `"crypto/aes"`, `"fmt"`, `"os"`} {
				assert.NotContains(t, string(body), "\t"+gone, name)
			}
		}
	}
	assert.Contains(t, files, "go-app/LICENSE", "the framework's licence goes with its files")
}

// Every method of every element is still there, under the same name.
func TestOneElementKeepsEveryName(t *testing.T) {
	source, err := os.ReadFile(filepath.Join(frameworkSource(t), "pkg", "app", "html_gen.go"))
	require.NoError(t, err)
	got, err := oneElement(source)
	require.NoError(t, err)
	for _, want := range []string{
		"func Div() HTMLDiv {", "type HTMLDiv = HTMLAny", "type htmlBody = htmlAny", "func (e *htmlAny) OnClick(h EventHandler, scope ...any) HTMLAny {",
		"func (e *htmlAny) XMLNS(", "func ElemSelfClosing(", "type HTMLTextarea = HTMLAny",
	} {
		assert.Contains(t, string(got), want)
	}
	for _, changed := range [][2]string{
		{"func (e *htmlA) Href(format string, v ...any) HTMLA {\n", "func (e *htmlA) Href(format string, v ...any) HTMLA {\n\tprintln(1)\n"},
		{"	Href(format string, v ...any) HTMLA\n", "	Href(v string) HTMLA\n"},
	} {
		altered := bytes.Replace(source, []byte(changed[0]), []byte(changed[1]), 1)
		require.NotEqual(t, source, altered, changed[0])
		_, err := oneElement(altered)
		assert.Error(t, err, "a framework whose elements differ is refused")
	}
}

// The stand-in for html.EscapeString does what the standard one does.
func FuzzEscape(f *testing.F) {
	replacer := strings.NewReplacer("&", "&amp;", "'", "&#39;", "<", "&lt;", ">", "&gt;", `"`, "&#34;")
	body, err := standIns.ReadFile("trim/escape.go.txt")
	if err != nil {
		f.Fatal(err)
	}
	// The pairs tried here are those of the stand-in itself.
	const pairs = "strings.NewReplacer(\"&\", \"&amp;\", \"'\", \"&#39;\", \"<\", \"&lt;\", \">\", \"&gt;\", `\"`, \"&#34;\")"
	if !bytes.Contains(body, []byte(pairs)) {
		f.Fatal("the stand-in has changed; change this test with it")
	}
	f.Add("")
	f.Add(`<a href="x" title='y'>&amp;</a>`)
	f.Fuzz(func(t *testing.T, s string) {
		if got, want := replacer.Replace(s), html.EscapeString(s); got != want {
			t.Fatalf("%q: %q, the standard library says %q", s, got, want)
		}
	})
}

// What prints a time of the standard library, and what makes a function of a method, is
// empty in the page's program; so nothing that is linked may ask for it by name.
func TestThePagePrintsNoTimes(t *testing.T) {
	files, err := clientList(moduleFolder(t), false, "-f", `{{if not .Standard}}{{$d := .Dir}}{{range .GoFiles}}{{$d}}/{{.}} {{end}}{{end}}`)
	require.NoError(t, err)
	require.Greater(t, len(files), 100)
	asked := regexp.MustCompile(`\.(AppendFormat|MethodByName|MakeFunc|Method\([0-9a-z]+\))|\btime\.(Parse|Local|UTC|Date|LoadLocation)\b|\.Format\(`)
	for _, file := range files {
		body, err := os.ReadFile(file)
		require.NoError(t, err)
		if bytes.Contains(body, []byte("\t\"time\"\n")) || bytes.Contains(body, []byte("\t\"reflect\"\n")) {
			assert.NotRegexp(t, asked, string(body), file)
		}
	}
	assert.Regexp(t, asked, "time.Now().Format(layout)")
}

func moduleFolder(t *testing.T) string {
	t.Helper()
	root, err := moduleRoot()
	require.NoError(t, err)
	return root
}

// The stand-in for printing says the framework's errors in words.
func TestTheStandInPrints(t *testing.T) {
	body, err := standIns.ReadFile("trim/fmt.go.txt")
	require.NoError(t, err)
	dir := t.TempDir()
	require.NoError(t, write(filepath.Join(dir, "go.mod"), []byte("module stand\n\ngo 1.26\n")))
	require.NoError(t, write(filepath.Join(dir, "fmt", "fmt.go"), body))
	require.NoError(t, write(filepath.Join(dir, "main.go"), []byte(`package main

import (
	"errors"
	"os"
	"reflect"

	"stand/fmt"
)

type part struct {
	Line string
	Tags map[string]any
	Of   error
}

func main() {
	os.Stdout.WriteString(fmt.Sprintf("%s:%v 100%% %+v", "a.go", 7, part{"b", map[string]any{"type": reflect.TypeOf(1)}, errors.New("broken")}))
	os.Stdout.WriteString(fmt.Sprint(nil, true, 2.5, uint8(3)) + string(fmt.Appendf([]byte("x"), "%v")) + fmt.Errorf("no %d", -1).Error())
}
`)))
	run := exec.Command("go", "run", ".")
	run.Dir = dir
	run.Env = append(os.Environ(), "GOFLAGS=", "GOWORK=off")
	out, err := run.CombinedOutput()
	require.NoError(t, err, string(out))
	assert.Equal(t, "a.go:7 100% Line: b; Tags: type = int, ; Of: broken; <nil>true2.53xno -1", string(out))
}
