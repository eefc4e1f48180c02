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

// BesideText is the table of frost days, rain and newer normals, likewise.
//
//go:embed beside.csv
var BesideText string

// Embedded is the table of the host build, read on first use.
var Embedded = sync.OnceValues(func() (*Table, error) {
	table, err := Parse(Text)
	if err == nil {
		err = table.Beside(BesideText)
	}
	return table, err
})
