//go:build !js

package site

import (
	"bytes"
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/tetratelabs/wazero"
	"github.com/tetratelabs/wazero/imports/wasi_snapshot_preview1"
	"github.com/tetratelabs/wazero/sys"
)

// ran is what a program for the WebAssembly System Interface prints, and how it ends.
func ran(t *testing.T, program []byte) (printed string, ended uint32) {
	t.Helper()
	ctx := context.Background()
	machine := wazero.NewRuntime(ctx)
	defer machine.Close(ctx)
	_, err := wasi_snapshot_preview1.Instantiate(ctx, machine)
	require.NoError(t, err)
	var out, complaints bytes.Buffer
	_, err = machine.InstantiateWithConfig(ctx, program, wazero.NewModuleConfig().WithStdout(&out).WithStderr(&complaints))
	var exit *sys.ExitError
	require.ErrorAs(t, err, &exit, "%s%s", out.String(), complaints.String())
	return out.String(), exit.ExitCode()
}

// A program of goroutines, growing stacks, panics and garbage prints the same, squeezed or
// not, on a machine that is not a browser.
func TestASqueezedProgramDoesTheSame(t *testing.T) {
	path := filepath.Join(t.TempDir(), "flow.wasm")
	build := exec.Command("go", "build", "-o", path, "./testdata/flow")
	build.Env = append(os.Environ(), "GOOS=wasip1", "GOARCH=wasm")
	words, err := build.CombinedOutput()
	require.NoError(t, err, "%s", words)
	raw, err := os.ReadFile(path)
	require.NoError(t, err)
	squeezed, err := squeezeWith(raw, squeezeCode)
	require.NoError(t, err)
	was, wasEnded := ran(t, raw)
	is, isEnded := ran(t, squeezed)
	assert.Contains(t, was, "deferred", "it ran to its end")
	assert.Equal(t, was, is)
	assert.Equal(t, wasEnded, isEnded)
}
