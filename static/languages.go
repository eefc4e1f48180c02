//go:build !js

// Package static holds the site's scripts and styles, and what it says in other
// languages than English: a folder each, for the page and the command line alike.
package static

import "embed"

// Languages are the catalogues, such as es/judge.txt; wasm/tongue tells how they are read.
//
//go:embed es/*.txt
var Languages embed.FS
