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
	// Memory that a page has taken is never given back, so its garbage is collected
	// before it takes more: at half as much again as is in use, not at twice.
	debug.SetGCPercent(100)
	app.Mount()
	framework.RunWhenOnBrowser()
}
