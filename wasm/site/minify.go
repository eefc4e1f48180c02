//go:build !js

package site

import (
	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/css"
	"github.com/tdewolff/minify/v2/js"
)

// shorter takes what no browser reads out of a style sheet or a script: comments,
// spaces, long names of locals. It saves a quarter of their download.
func shorter(kind string, body []byte) ([]byte, error) {
	m := minify.New()
	m.AddFunc("text/css", css.Minify)
	m.AddFunc("text/javascript", js.Minify)
	return m.Bytes(kind, body)
}
