//go:build js

// Command goldencheck is the engine alone, as WebAssembly: it gives a page one
// function that turns a case file and the tables of stations into the advice
// file. A browser test compares that with the golden advice, byte for byte;
// nothing of it is published.
package main

import (
	"syscall/js"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table/normals"
)

func main() {
	js.Global().Set("adviceOf", js.FuncOf(func(_ js.Value, args []js.Value) any {
		places, err := normals.Parse(args[1].String())
		if err != nil {
			return err.Error()
		}
		if err := places.Beside(args[2].String()); err != nil {
			return err.Error()
		}
		c, err := casefile.Decode([]byte(args[0].String()), places)
		if err != nil {
			return err.Error()
		}
		a, err := rules.Advise(c)
		if err != nil {
			return err.Error()
		}
		file, err := casefile.EncodeAdvice(&a, nil)
		if err != nil {
			return err.Error()
		}
		return string(file)
	}))
	select {}
}
