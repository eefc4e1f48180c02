//go:build !js

package browsertest

import (
	"context"
	"os"
	"os/exec"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
)

// chromium is the one browser process of a test binary; tests are kept apart
// by browser contexts, each with its own storage, caches and workers.
var chromium struct {
	sync.Mutex
	ctx   context.Context
	close []context.CancelFunc
}

// Gate is asked before each test, and skips or fails those that are not to run. A
// package sets it before its tests run.
var Gate = func(testing.TB) {}

// Main runs a package's tests and closes the browser after them.
func Main(m *testing.M) int {
	defer func() {
		chromium.Lock()
		defer chromium.Unlock()
		for i := len(chromium.close) - 1; i >= 0; i-- {
			chromium.close[i]()
		}
	}()
	return m.Run()
}

// find names the browser's program, or "".
func find() string {
	for _, name := range []string{"chromium-headless-shell", "chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	for _, path := range []string{
		"/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
		"/Applications/Chromium.app/Contents/MacOS/Chromium",
		`C:\Program Files\Google\Chrome\Application\chrome.exe`,
	} {
		if _, err := os.Stat(path); err == nil {
			return path
		}
	}
	return ""
}

const noChromium = "no Chromium found, so the page cannot be tried in a browser; install it (Debian, Ubuntu: apt-get install chromium; macOS: brew install --cask chromium) and run the tests again"

// browser starts Chromium once and returns its context.
func browser(t testing.TB) context.Context {
	t.Helper()
	Gate(t)
	path := find()
	if path == "" {
		if os.Getenv("CI") == "true" {
			t.Fatal(noChromium)
		}
		t.Skip(noChromium)
	}
	if testing.Short() {
		t.Skip("browser tests are left out with -short")
	}
	chromium.Lock()
	defer chromium.Unlock()
	if chromium.ctx != nil {
		return chromium.ctx
	}
	// The library puts a fresh profile in a temporary folder and removes it.
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(path),
		chromedp.NoSandbox,
		chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("hide-scrollbars", true),
		chromedp.Flag("enable-features", "NetworkService,NetworkServiceInProcess,SplitCacheByNetworkIsolationKey"),
		// The first two are the library's own. The others are pages of the browser itself, for
		// its address bar, loaded anew with each window: a third of the work of a visit.
		chromedp.Flag("disable-features", "Translate,BlinkGenPropertyTrees,PreloadTopChromeWebUI,WebUIOmniboxPopup,WebUIOmniboxAimPopup"),
	)
	allocator, closeAllocator := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, closeBrowser := chromedp.NewContext(allocator)
	if err := chromedp.Do(ctx); err != nil {
		closeBrowser()
		closeAllocator()
		t.Fatalf("Chromium at %s does not start: %v", path, err)
	}
	chromium.ctx = ctx
	chromium.close = []context.CancelFunc{closeAllocator, closeBrowser}
	return ctx
}
