//go:build !js

package site

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The Go team's vulnerability checker, pinned in go.mod, reads the code that is
// run and asks a database which of the functions that it reaches are known to be
// vulnerable. FF_VULNERABILITIES says which: "published" is the one that
// the checker asks by itself, a folder is a copy of it, one file for each entry.
// .ci/run sets it.
//
// In the page's program nothing may be found. In the commands that build and
// serve the site, a finding in a module fails; one in Go's own library is told
// and does not fail, since only a newer Go mends it and these commands talk to
// nobody but this machine and a reader who tries the site on it.
func TestNoKnownVulnerabilities(t *testing.T) {
	database := os.Getenv("FF_VULNERABILITIES")
	if database == "" {
		t.Skip(`set FF_VULNERABILITIES to "published" or to a folder with a copy of the database, or run .ci/run`)
	}
	var from []string
	if database != "published" {
		from = []string{"-db", "file://" + database}
	}
	root, err := moduleRoot()
	require.NoError(t, err)
	checker := filepath.Join(t.TempDir(), "govulncheck")
	out, err := goCommand(root, nil, "build", "-o", checker, "golang.org/x/vuln/cmd/govulncheck").CombinedOutput()
	require.NoError(t, err, string(out))
	check := func(env []string, args ...string) string {
		cmd := exec.Command(checker, append(from, args...)...)
		cmd.Dir = root
		cmd.Env = append(append(os.Environ(), "GOWORK=off"), env...)
		out, err := cmd.CombinedOutput()
		if exit, ok := err.(*exec.ExitError); !ok || exit.ExitCode() != 3 { // 3 says that something was found
			require.NoError(t, err, string(out))
		}
		return string(out)
	}

	work, flags, err := clientWork(root, false)
	require.NoError(t, err)
	defer os.RemoveAll(work)
	// The checker asks the go command some things outside the module, where
	// -modfile is refused; an overlay says the same.
	modfile := strings.TrimPrefix(flags[0], "-modfile=")
	overlay, err := json.Marshal(map[string]any{"Replace": map[string]string{filepath.Join(root, "go.mod"): modfile}})
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(work, "overlay.json"), overlay, 0o600))
	program := check(append([]string{"GOFLAGS=-overlay=" + filepath.Join(work, "overlay.json")}, clientEnv...), "-tags", strings.TrimPrefix(pageTag, "-tags="), "./wasm")
	assert.Contains(t, program, "No vulnerabilities found", "the page's program")
	assert.Empty(t, findings(program))

	host := check([]string{"GOFLAGS="}, "-test", "./...")
	for _, f := range findings(host) {
		if f[1] != "" {
			t.Errorf("%s in module %s: go get a mended version", f[0], f[1])
			continue
		}
		t.Logf("%s in Go's own library, in the commands of this machine only; mended in %s", f[0], f[2])
	}
}

var finding = regexp.MustCompile(`(?s)Vulnerability #\d+: (\S+)\n.*?(?:Standard library|Module: (\S+))\n.*?Fixed in: (\S+)`)

// findings are the identifier, the module ("" for Go's own library) and the
// mending version of each vulnerability that the checker prints.
func findings(printed string) (list [][3]string) {
	for _, m := range finding.FindAllStringSubmatch(printed, -1) {
		list = append(list, [3]string{m[1], m[2], m[3]})
	}
	return list
}

// The reading of the checker's words must itself be able to find.
func TestFindingsAreRead(t *testing.T) {
	printed := `=== Symbol Results ===

Vulnerability #1: GO-2026-6809
    Distrust compromised intermediate certificates in crypto/x509
  More info: https://pkg.go.dev/vuln/GO-2026-6809
  Standard library
    Found in: crypto/x509@go1.26.8
    Fixed in: crypto/x509@go1.26.10
    Example traces found:
      #1: wasm/serve.go:49:28: main.serve calls http.Server.Serve

Vulnerability #2: GO-2021-0113
    Out-of-bounds read in golang.org/x/text/language
  More info: https://pkg.go.dev/vuln/GO-2021-0113
  Module: golang.org/x/text
    Found in: golang.org/x/text@v0.3.5
    Fixed in: golang.org/x/text@v0.3.7
`
	assert.Equal(t, [][3]string{
		{"GO-2026-6809", "", "crypto/x509@go1.26.10"},
		{"GO-2021-0113", "golang.org/x/text", "golang.org/x/text@v0.3.7"},
	}, findings(printed))
}
