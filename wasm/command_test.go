//go:build !js

package main

import (
	"bytes"
	"net"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func runCommand(args ...string) (code int, out, errs string) {
	var o, e bytes.Buffer
	code = run(args, strings.NewReader(""), &o, &e)
	return code, o.String(), e.String()
}

func TestCommandsAreListed(t *testing.T) {
	code, _, errs := runCommand("help")
	assert.Equal(t, 0, code)
	for _, c := range commands {
		assert.Contains(t, errs, c.usage)
		assert.True(t, strings.HasPrefix(c.usage, c.name), "the usage of %s begins with its name", c.name)
	}
	code, _, errs = runCommand("grow")
	assert.Equal(t, 2, code)
	assert.Contains(t, errs, `no command "grow"`)
}

func TestBuildCommand(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	code, out, errs := runCommand("build", "-out", dir, "-base", "/sub/path", "-compress=false")
	require.Equal(t, 0, code, errs)
	assert.Contains(t, out, "whole site")
	assert.Contains(t, out, "Done in ")
	for _, name := range []string{"index.html", "404.html", "worker.js", "manifest.webmanifest", "_headers", "icons/icon-192.png"} {
		assert.FileExists(t, filepath.Join(dir, name))
	}
	code, _, errs = runCommand("build", "-out", dir, "-base", "/a b")
	assert.Equal(t, 1, code)
	assert.Contains(t, errs, "write it like /sub/path")
	code, _, _ = runCommand("build", "-nonsense")
	assert.Equal(t, 2, code)
}

// A port in use is said at once and with the way out.
func TestServeSaysThatThePortIsTaken(t *testing.T) {
	listener, err := net.Listen("tcp", "localhost:0")
	require.NoError(t, err)
	defer listener.Close()
	for _, args := range [][]string{{"serve", "-addr", listener.Addr().String()}, {"-addr", listener.Addr().String()}} {
		code, _, errs := runCommand(args...)
		assert.Equal(t, 1, code)
		assert.Contains(t, errs, "-addr localhost:8081")
	}
}
