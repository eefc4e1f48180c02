//go:build !js

// Package webdriver drives Firefox and WebKit over the standard WebDriver protocol (W3C
// WebDriver, https://www.w3.org/TR/webdriver2/), so that what is held in Chromium is
// tried in the other two engines as well.
//
// WebKit is driven through its own WebKitWebDriver, which speaks the protocol over HTTP;
// its window stands on a screen in memory (Xvfb). Firefox speaks the same commands
// without a program between, over its own remote protocol (Marionette: a connection on
// which each message has its length before it). So nothing is needed beside the two
// browsers, and this package knows the dozen commands that the tests use.
//
//	p := webdriver.Open(t, webdriver.WebKit, webdriver.Options{})
//	p.Size(390, 844)
//	p.Go(server.URL + "/")
//	p.Wait("the program", `window.filmfurrow?.status.start === "ready"`)
//	p.Click("#share-code")
//	heading := webdriver.Eval[string](p, `document.querySelector("h1").textContent`)
//
// A browser is started for each Open, with a profile of its own that is removed after the
// test. Where the browser is missing the test skips and says how to get it; with CI=true it
// fails instead.
package webdriver
