//go:build !js

package series

import _ "embed"

// Text is the table as the page's file holds it; only the host build carries it.
//
//go:embed series.csv
var Text string
