//go:build js

// Command wasm is Film & Furrow itself: compiled for the browser it is the
// page's program, compiled for the host it builds and serves the site and
// answers on the command line.
package main

import (
	_ "unsafe" // for the linker's name

	framework "github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/app"
)

// setGCPercent is debug.SetGCPercent without its package, which would bring files and
// printing along, and without giving memory back to the system, which a page cannot.
//
//go:linkname setGCPercent runtime/debug.setGCPercent
func setGCPercent(percent int32) int32

// room is what may lie about as garbage before it is collected, in percent of what is in
// use. Half of that are the tables of places, which nobody writes to; with the usual 100
// the program takes a third more memory, and is hardly quicker.
const room = 40

func main() {
	// The tables and rows have been made; what the reader did meanwhile comes before the
	// first drawing.
	begun := make(chan bool)
	framework.Window().Call("setTimeout", framework.FuncOf(func(framework.Value, []framework.Value) any {
		close(begun)
		return nil
	}))
	<-begun
	// Garbage is not collected until the page has been drawn first: it would come in
	// the middle of that, and next to nothing of it is garbage.
	setGCPercent(-1)
	framework.Window().Call("setTimeout", framework.FuncOf(func(framework.Value, []framework.Value) any {
		setGCPercent(room)
		return nil
	}))
	app.Mount()
	framework.RunWhenOnBrowser()
}
