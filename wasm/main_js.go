//go:build js

// Command wasm is Film & Furrow itself: compiled for the browser it is the
// page's program, compiled for the host it builds and serves the site and
// answers on the command line.
package main

import (
	framework "github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/app"
)

func main() {
	app.Mount()
	framework.RunWhenOnBrowser()
}
