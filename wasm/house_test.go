//go:build !js

package main

import (
	"os"
	"path"
	"path/filepath"
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

// What the guide says is held by a test is held by one that there is.
func TestEveryPromiseHasItsTests(t *testing.T) {
	_, promises, found := strings.Cut(readText(t, "DEVELOPERS.md"), "\n## What the page is held to\n")
	require.True(t, found)
	promises, _, _ = strings.Cut(promises, "\n## ")
	there := map[string]bool{}
	require.NoError(t, filepath.WalkDir("..", func(file string, _ os.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(file, "_test.go") {
			for _, m := range regexp.MustCompile(`(?m)^func ((?:Test|Fuzz|Benchmark)\w+)\(`).FindAllStringSubmatch(readText(t, strings.TrimPrefix(file, "../")), -1) {
				there[m[1]] = true
			}
		}
		return err
	}))
	rows := regexp.MustCompile(`(?m)^\| .* \|$`).FindAllString(promises, -1)[1:] // the first is the heading
	require.Greater(t, len(rows), 25)
	for _, row := range rows {
		names := regexp.MustCompile("`((?:Test|Fuzz|Benchmark)\\w+)`").FindAllStringSubmatch(row, -1)
		assert.NotEmpty(t, names, row)
		for _, m := range names {
			assert.True(t, there[m[1]], "no test is called %s", m[1])
		}
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
