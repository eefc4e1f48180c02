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

// What PROMISES.md names is a test, each row has one, and none is missing: every test
// that opens a browser is named, and every other one that has a long form.
func TestEveryPromiseHasItsTests(t *testing.T) {
	there := map[string]string{} // what stands in each
	require.NoError(t, filepath.WalkDir("..", func(file string, _ os.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(file, "_test.go") && !strings.HasSuffix(file, "long_test.go") {
			for _, function := range strings.Split(readText(t, strings.TrimPrefix(file, "../")), "\nfunc ")[1:] {
				if m := regexp.MustCompile(`^((?:Test|Fuzz|Benchmark)\w+)\(`).FindStringSubmatch(function); m != nil {
					there[m[1]], _, _ = strings.Cut(function, "\n}\n")
				}
			}
		}
		return err
	}))
	require.Greater(t, len(rows), 50)
	for _, row := range rows {
		assert.Regexp(t, testName, row[0])
	}
	browser := regexp.MustCompile(`\bbrowsertest\.(Open|Make|NextVersion)`)
	longer := regexp.MustCompile(`\blong\.(Test|Of|Sample|Asked)\(`)
	opened := 0
	for name, body := range there {
		held, listed := tiers[name]
		if strings.HasPrefix(name, "Test") && browser.MatchString(body) {
			opened++
			assert.True(t, listed, "%s opens a browser and is not in PROMISES.md", name)
		}
		if longer.MatchString(body) {
			assert.True(t, held.long, "%s has a long form and is not in PROMISES.md under long", name)
			assert.Equal(t, !strings.Contains(body, "long."+"Test(t)"), held.daily, "%s: every day or not", name)
		}
		if held.long && strings.HasPrefix(name, "Test") {
			assert.True(t, browser.MatchString(body) || longer.MatchString(body), "%s is under long, and runs every day", name)
			assert.True(t, !held.daily || longer.MatchString(body), "%s has one form for both tiers", name)
		}
	}
	assert.Greater(t, opened, 100)
	for name := range tiers {
		assert.Contains(t, there, name, "no test is called so")
	}
}

// The README states the job first, then shows the page and two commands; the
// check that judges a change runs the very command for tests.
func TestReadme(t *testing.T) {
	text := readText(t, "README.md")
	job, picture, serve, test := strings.Index(text, "one bed layer to borrow"), strings.Index(text, "](testdata/page.png)"), strings.Index(text, "\n    go run ./wasm\n"), strings.Index(text, "\n    go test ./...\n")
	assert.True(t, 0 < job && job < picture && picture < serve && serve < test, "job %d, picture %d, serve %d, test %d", job, picture, serve, test)
	assert.Contains(t, readText(t, ".ci/run"), "\ngo test ./...\n")
	for _, page := range []string{"README.md", "DEVELOPERS.md", ".ci/run"} {
		assert.Contains(t, readText(t, page), "FF_LONG=1", "%s names the switch to the long tests", page)
	}
	assert.FileExists(t, "../testdata/page.png")
	assert.Contains(t, readText(t, "LICENSE"), "Apache License")
	assert.Contains(t, readText(t, "netlify.toml"), "go run ./wasm build")
}
