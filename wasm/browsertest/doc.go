//go:build !js

// Package browsertest drives the built site in real Chromium.
//
// The site is built once for a test binary and served from memory with the very
// headers that are published. Each test gets a browser of its own: fresh
// storage, fresh caches, no workers. Without Chromium a test skips and says how
// to get it; with CI=true it fails instead.
//
// A test that types a bed length and reads an answer:
//
//	func TestBedLength(t *testing.T) {
//		b := browsertest.Open(t)
//		p := b.Page(390, "/")              // 390 px wide; waits until the program runs
//		p.Type("#bed-length", "120")       // replaces what stands in the field
//		p.Press("Tab")                     // "Shift+Tab", "Enter", "ArrowLeft" …
//		p.WaitText("#answers", "120 m")    // fails after ten seconds
//		n := browsertest.Eval[int](p, `document.querySelectorAll("svg").length`)
//		require.Positive(t, n)
//		p.Screenshot("bed-390")            // only when FF_SHOTS names a folder
//	}
//
// When a test ends, each of its pages is checked: no request to another origin,
// no breach of the content policy, no error on the console. A test that
// provokes errors opens its page with Tab.Errors set.
//
// The program that serves the site can be stopped and started (Stop, Start),
// can publish another version (Publish), and can be made to fail (Fault): to be
// offline, stop it. The browser's own offline switch does not reach the worker.
//
// A package that uses this one should pass its tests through Main, so that the
// browser is closed and its folder removed:
//
//	func TestMain(m *testing.M) { os.Exit(browsertest.Main(m)) }
package browsertest
