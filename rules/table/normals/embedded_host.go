//go:build !js

package normals

import (
	_ "embed"
	"sync"
)

// Text is the table as the page's file holds it. Only the host build carries
// it: in the browser it would make the program half as large again.
//
//go:embed normals.csv
var Text string

// FrostRain is the table of frost days and rain, likewise.
//
//go:embed frost-rain.csv
var FrostRain string

// Embedded is the table of the host build, read on first use.
var Embedded = sync.OnceValues(func() (*Table, error) {
	table, err := Parse(Text)
	if err == nil {
		err = table.Beside(FrostRain)
	}
	return table, err
})
