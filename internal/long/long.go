// Package long is the one switch between the tests of every day and the long ones.
//
// go test ./... runs in minutes. What takes longer (all promises of the page in a
// browser, brute force at full size, long sweeps) runs with
//
//	FF_LONG=1 go test -timeout 40m ./...
//
// FF_LONG=all asks every step of every search, which takes a quarter of an hour more;
// FF_LONG=rest leaves out the browser tests that run every day. wasm/PROMISES.md lists what is held in which tier.
package long

import (
	"hash/fnv"
	"os"
	"testing"
)

// Asked reports whether the long tests are asked for, All whether every step is, and
// Rest whether those of every day have just been run.
func Asked() bool { return os.Getenv("FF_LONG") != "" }
func All() bool   { return os.Getenv("FF_LONG") == "all" }
func Rest() bool  { return os.Getenv("FF_LONG") == "rest" }

// Test skips a test that belongs to the long ones, unless these are asked for.
func Test(t testing.TB) {
	t.Helper()
	if !Asked() {
		t.Skip("a long test: FF_LONG=1 runs it, and so does .ci/run")
	}
}

// Daily skips a test of every day with -short, as while one works on something else.
func Daily(t testing.TB) {
	t.Helper()
	if testing.Short() {
		t.Skip("it takes seconds, and is left out with -short")
	}
}

// Of is how many rounds a test makes: so many every day, so many of the long ones.
func Of(daily, long int) int {
	if Asked() {
		return long
	}
	return daily
}

// Sample picks one in five of a list by name, always the same; and all of it where
// the long tests are asked for.
func Sample(name string) bool {
	sum := fnv.New32a()
	sum.Write([]byte(name))
	return Asked() || sum.Sum32()%5 == 0
}
