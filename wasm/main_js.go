//go:build js

// Command wasm is Film & Furrow itself: compiled for the browser it is the
// page's program, compiled for the host it builds and serves the site and
// answers on the command line.
package main

import (
	"runtime/debug"

	framework "github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/app"
)

func main() {
	// Garbage is not collected until the page has been drawn first: it would come in
	// the middle of that, and next to nothing of it is garbage.
	usual := debug.SetGCPercent(-1)
	framework.Window().Call("setTimeout", framework.FuncOf(func(framework.Value, []framework.Value) any {
		debug.SetGCPercent(usual)
		return nil
	}))
	app.Mount()
	framework.RunWhenOnBrowser()
}
