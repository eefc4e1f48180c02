//go:build !js

package main

import (
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/table/normals"
	"filmfurrow/wasm/browsertest"
)

// The golden advice, kept byte for byte from the native build, is what the
// engine gives as WebAssembly in a real browser.
func TestGoldenAdviceInTheBrowser(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	engine := filepath.Join(t.TempDir(), "engine.wasm")
	build := exec.Command("go", "build", "-trimpath", "-o", engine, "./goldencheck")
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOFLAGS=")
	said, err := build.CombinedOutput()
	require.NoError(t, err, "%s", said)
	root, err := exec.Command("go", "env", "GOROOT").Output()
	require.NoError(t, err)
	files := maps.Clone(browsertest.Make(t, nil).Files)
	for name, path := range map[string]string{"golden.wasm": engine, "golden.js": filepath.Join(strings.TrimSpace(string(root)), "lib/wasm/wasm_exec.js")} {
		files[name], err = os.ReadFile(path)
		require.NoError(t, err)
	}
	files["golden.csv"], files["golden-beside.csv"] = []byte(normals.Text), []byte(normals.BesideText)
	b.PublishFiles(files, "")
	p := b.Page(820, "/")
	p.Do(`(async () => {
		await new Promise((loaded, failed) => {
			const s = document.createElement("script");
			s.src = "/golden.js"; s.onload = loaded; s.onerror = failed;
			document.head.append(s);
		});
		const go = new Go();
		const { instance } = await WebAssembly.instantiateStreaming(fetch("/golden.wasm"), go.importObject);
		go.run(instance);
		[window.normals, window.beside] = await Promise.all(["/golden.csv", "/golden-beside.csv"].map(async (name) => (await fetch(name)).text()));
	})()`)
	p.Wait("the engine to be ready", `window.normals && typeof adviceOf === "function"`)
	golden, err := filepath.Glob("../testdata/advice/*.json")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(golden), 12)
	for _, file := range golden {
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		asked, err := os.ReadFile(filepath.Join("../testdata/cases", filepath.Base(file)))
		require.NoError(t, err)
		got := browsertest.Eval[string](p, fmt.Sprintf(`adviceOf(%s, normals, beside)`, browsertest.Quote(string(asked))))
		assert.True(t, string(want) == got, "%s: %d bytes natively on %s, %d in the browser, or other bytes", filepath.Base(file), len(want), runtime.GOARCH, len(got))
	}
}
