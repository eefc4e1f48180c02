//go:build !js

package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/app"
	"filmfurrow/wasm/browsertest"
)

// The page is the site's own once its heading is there.
const headingShown = `(document.querySelector("h1")?.innerText ?? "") !== ""`

func TestFirstVisitMountsAndIsKept(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Whole(820, "/")
	require.NotEmpty(t, p.Text("h1"))
	p.WaitOffline()
	assert.True(t, browsertest.Eval[bool](p, `navigator.serviceWorker.controller !== null`), "the worker looks after the page on the first visit")
	p.WaitText("#strip", "opens without a network")
	p.Screenshot("first-visit")
}

func TestOpensWithoutNetwork(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Whole(820, "/")
	heading := p.Text("h1")
	p.WaitOffline()
	p.Close()
	b.Stop()

	for _, listed := range app.Pages() {
		t.Run("first sight of "+listed.Path, func(t *testing.T) {
			p := b.Tab(browsertest.Tab{Path: listed.Path, Errors: true})
			assert.NotEmpty(t, p.Text("h1"))
			p.Close()
		})
	}
	for _, path := range []string{"/", "/?utm=1", "/#x=1", "/?utm=1#x=1", "/index.html"} {
		t.Run(path, func(t *testing.T) {
			p := b.Tab(browsertest.Tab{Path: path, Errors: true})
			assert.Equal(t, heading, p.Text("h1"))
			p.Reload()
			p.WaitReady()
			assert.Equal(t, heading, p.Text("h1"))
			p.Close()
		})
	}
	t.Run("unknown path", func(t *testing.T) {
		p := b.Tab(browsertest.Tab{Path: "/nowhere", Errors: true, NoWait: true})
		p.Wait("a heading", headingShown)
		assert.Equal(t, "Page not found", p.Text("h1"))
		p.Click("main a")
		p.WaitWhole()
		assert.Equal(t, heading, p.Text("h1"))
		p.Close()
	})
}
