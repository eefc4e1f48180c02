//go:build !js

package site

import (
	"bytes"
	"compress/gzip"
	"maps"
	"path"

	"github.com/andybalholm/brotli"
)

// Brotli packs at the strongest level with the widest window a browser takes.
func Brotli(body []byte) ([]byte, error) {
	var out bytes.Buffer
	w := brotli.NewWriterOptions(&out, brotli.WriterOptions{Quality: 11, LGWin: 24})
	if _, err := w.Write(body); err != nil {
		return nil, err
	}
	err := w.Close()
	return out.Bytes(), err
}

// Gzip packs at level 9, without name or time.
func Gzip(body []byte) ([]byte, error) {
	var out bytes.Buffer
	w, err := gzip.NewWriterLevel(&out, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(body); err != nil {
		return nil, err
	}
	err = w.Close()
	return out.Bytes(), err
}

// withCompressed adds a .br and a .gz copy of each file that gets smaller.
func withCompressed(files map[string][]byte) (map[string][]byte, error) {
	all := maps.Clone(files)
	for name, body := range files {
		if path.Ext(name) == ".png" || name == "_headers" {
			continue
		}
		br, err := Brotli(body)
		if err != nil {
			return nil, err
		}
		gz, err := Gzip(body)
		if err != nil {
			return nil, err
		}
		if len(br) < len(body) {
			all[name+".br"] = br
		}
		if len(gz) < len(body) {
			all[name+".gz"] = gz
		}
	}
	return all, nil
}
