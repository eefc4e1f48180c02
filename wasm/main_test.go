//go:build !js

package main

import (
	_ "embed"
	"os"
	"regexp"
	"strings"
	"testing"

	"filmfurrow/internal/long"
	"filmfurrow/wasm/browsertest"
)

func TestMain(m *testing.M) {
	browsertest.Gate = gate
	os.Exit(browsertest.Main(m))
}

//go:embed PROMISES.md
var promises string

// tier tells when a test runs; with both, a part of it runs every day.
type tier struct{ daily, long bool }

// rows are the promises, each with its text and what holds it in either tier.
var rows = regexp.MustCompile(`(?m)^\| ([^|]+) \|([^|]*)\|([^|]*)\|$`).FindAllStringSubmatch(promises, -1)[1:]

var (
	testName = regexp.MustCompile("`((?:Test|Fuzz|Benchmark)\\w+)`")
	tiers    = func() map[string]tier {
		list := map[string]tier{}
		for _, row := range rows {
			for column, names := range row[2:] {
				for _, m := range testName.FindAllStringSubmatch(names, -1) {
					held := list[m[1]]
					held.daily, held.long = held.daily || column == 0, held.long || column == 1
					list[m[1]] = held
				}
			}
		}
		return list
	}()
)

// gate lets a browser test pass when PROMISES.md says so.
func gate(t testing.TB) {
	t.Helper()
	if _, bench := t.(*testing.B); bench {
		return
	}
	name, _, _ := strings.Cut(t.Name(), "/")
	held, listed := tiers[name]
	if !listed {
		t.Fatalf("%s is not in wasm/PROMISES.md: name it there, beside what it holds and in its tier", name)
	}
	switch {
	case !held.daily:
		long.Test(t)
	case !held.long && long.Rest():
		t.Skip("it runs every day, and FF_LONG=rest leaves those out")
	}
}
