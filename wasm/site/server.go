//go:build !js

package site

import (
	"crypto/sha256"
	"fmt"
	"net/http"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
)

// contentTypes are set by name: a browser starts the program only when the
// type of its file is right, and the system's own table may be missing.
var contentTypes = map[string]string{
	".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
	".wasm": "application/wasm", ".webmanifest": "application/manifest+json", ".json": "application/json",
	".svg": "image/svg+xml", ".png": "image/png", ".txt": "text/plain; charset=utf-8",
}

// Server serves a built folder as a static host does: addresses without
// ".html", its own not-found page, the published headers, compressed copies
// where they exist and are asked for.
type Server struct {
	dir   string
	base  string
	rules []headerRule
}

// NewServer reads the folder's header file and serves it below base.
func NewServer(dir, base string) (*Server, error) {
	file, err := os.ReadFile(filepath.Join(dir, "_headers"))
	if err != nil {
		return nil, err
	}
	rules, err := parseHeaders(file)
	if err != nil {
		return nil, err
	}
	return &Server{dir: dir, base: base, rules: rules}, nil
}

func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "This site only serves files.", http.StatusMethodNotAllowed)
		return
	}
	for _, rule := range s.rules {
		if rule.matches(r.URL.Path) {
			for _, h := range rule.headers {
				w.Header().Add(h[0], h[1])
			}
		}
	}
	name, status := s.find(r.URL.Path)
	body, err := os.ReadFile(filepath.Join(s.dir, filepath.FromSlash(name)))
	if err != nil {
		http.Error(w, "Page not found.", http.StatusNotFound)
		return
	}
	h := w.Header()
	h.Set("Content-Type", contentTypes[path.Ext(name)])
	h.Set("Vary", "Accept-Encoding")
	if status != http.StatusOK {
		h.Del("Cache-Control")
	}
	if h.Get("Cache-Control") == "" {
		h.Set("Cache-Control", "public, max-age=0, must-revalidate")
	}
	etag := fmt.Sprintf(`"%x"`, sha256.Sum256(body))
	for _, coding := range [][2]string{{"br", ".br"}, {"gzip", ".gz"}} {
		if !accepts(r, coding[0]) {
			continue
		}
		if packed, err := os.ReadFile(filepath.Join(s.dir, filepath.FromSlash(name+coding[1]))); err == nil {
			h.Set("Content-Encoding", coding[0])
			etag = strings.TrimSuffix(etag, `"`) + "-" + coding[0] + `"`
			body = packed
			break
		}
	}
	h.Set("ETag", etag)
	if status == http.StatusOK && r.Header.Get("If-None-Match") == etag {
		w.WriteHeader(http.StatusNotModified)
		return
	}
	h.Set("Content-Length", strconv.Itoa(len(body)))
	w.WriteHeader(status)
	if r.Method == http.MethodGet {
		w.Write(body)
	}
}

// find turns an address into the name of a file of the folder.
func (s *Server) find(address string) (name string, status int) {
	below, ok := strings.CutPrefix(address, s.base)
	if !ok || !strings.HasPrefix(below, "/") || below != path.Clean(below) && below != "/" {
		return "404.html", http.StatusNotFound
	}
	below = strings.TrimPrefix(below, "/")
	if below == "" {
		return "index.html", http.StatusOK
	}
	// The compressed copies and the header file are for the host, not for readers.
	if ext := path.Ext(below); ext != ".br" && ext != ".gz" && below != "_headers" && filepath.IsLocal(filepath.FromSlash(below)) {
		for _, candidate := range []string{below, below + ".html"} {
			if info, err := os.Stat(filepath.Join(s.dir, filepath.FromSlash(candidate))); err == nil && info.Mode().IsRegular() {
				return candidate, http.StatusOK
			}
		}
	}
	return "404.html", http.StatusNotFound
}

func accepts(r *http.Request, coding string) bool {
	for part := range strings.SplitSeq(r.Header.Get("Accept-Encoding"), ",") {
		name, quality, _ := strings.Cut(strings.TrimSpace(part), ";")
		if strings.EqualFold(strings.TrimSpace(name), coding) && strings.ReplaceAll(quality, " ", "") != "q=0" {
			return true
		}
	}
	return false
}
