// Package long is the one switch between the tests of every day and the long ones.
//
// go test ./... runs in minutes. What takes longer (all promises of the page in a
// browser, brute force at full size, long sweeps) runs with
//
//	FF_LONG=1 go test -timeout 40m ./...
//
// wasm/PROMISES.md lists each promise of the page and its tier.
package long

import (
	"os"
	"testing"
)

// Asked reports whether the long tests are asked for.
func Asked() bool { return os.Getenv("FF_LONG") != "" }

// Test skips a test that belongs to the long ones, unless these are asked for.
func Test(t testing.TB) {
	t.Helper()
	if !Asked() {
		t.Skip("a long test: FF_LONG=1 runs it, and .ci/run does")
	}
}
