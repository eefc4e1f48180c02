//go:build !js

package main

import (
	"os"
	"path"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func readText(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile("../" + name)
	require.NoError(t, err)
	return string(text)
}

// Each direct dependency has a line in DEVELOPERS.md that says what it saves.
func TestEachDependencyIsExplained(t *testing.T) {
	direct, _, _ := strings.Cut(readText(t, "go.mod"), ")")
	table := readText(t, "DEVELOPERS.md")
	found := regexp.MustCompile(`(?m)^\t(\S+) v`).FindAllStringSubmatch(direct, -1)
	require.Greater(t, len(found), 4)
	for _, m := range found {
		name := path.Base(m[1])
		if regexp.MustCompile(`^v\d+$`).MatchString(name) {
			name = path.Base(path.Dir(m[1]))
		}
		assert.Regexp(t, `(?m)^\| [^|]*`+regexp.QuoteMeta(name)+`[^|]*\| [^|]{20,}\|$`, table, m[1])
	}
}

// The README states the job first, then shows the page and two commands; the
// check that judges a change runs the very command for tests.
func TestReadme(t *testing.T) {
	text := readText(t, "README.md")
	job, picture, serve, test := strings.Index(text, "one bed layer to borrow"), strings.Index(text, "](testdata/page.png)"), strings.Index(text, "\n    go run ./wasm\n"), strings.Index(text, "\n    go test ./...\n")
	assert.True(t, 0 < job && job < picture && picture < serve && serve < test, "job %d, picture %d, serve %d, test %d", job, picture, serve, test)
	assert.Contains(t, readText(t, ".ci/run"), "go test ./...\n")
	assert.FileExists(t, "../testdata/page.png")
	assert.Contains(t, readText(t, "LICENSE"), "Apache License")
	assert.Contains(t, readText(t, "netlify.toml"), "go run ./wasm build")
}
