//go:build !js

package site

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
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
	".svg": "image/svg+xml", ".png": "image/png", ".txt": "text/plain; charset=utf-8", ".csv": "text/csv; charset=utf-8",
}

// Server serves a built site as a static host does: addresses without
// ".html", its own not-found page, the published headers, compressed copies
// where they exist and are asked for.
type Server struct {
	files map[string][]byte
	tags  map[string]string
	base  string
	rules []headerRule
}

// NewServer serves files, by their paths below the site's root, below base.
func NewServer(files map[string][]byte, base string) (*Server, error) {
	rules, err := parseHeaders(files["_headers"])
	if err != nil {
		return nil, err
	}
	tags := make(map[string]string, len(files))
	for name, body := range files {
		tags[name] = fmt.Sprintf(`"%x"`, sha256.Sum256(body))
	}
	return &Server{files, tags, base, rules}, nil
}

// ReadFolder reads a built site back from disk.
func ReadFolder(dir string) (map[string][]byte, error) {
	files := map[string][]byte{}
	err := fs.WalkDir(os.DirFS(dir), ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		files[name], err = os.ReadFile(filepath.Join(dir, filepath.FromSlash(name)))
		return err
	})
	return files, err
}

func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "This site only serves files.", http.StatusMethodNotAllowed)
		return
	}
	h := w.Header()
	for _, rule := range s.rules {
		if rule.matches(r.URL.Path) {
			for _, header := range rule.headers {
				h.Add(header[0], header[1])
			}
		}
	}
	name, status := s.find(r.URL.Path)
	h.Set("Content-Type", contentTypes[path.Ext(name)])
	h.Set("Vary", "Accept-Encoding")
	if status != http.StatusOK || h.Get("Cache-Control") == "" {
		h.Set("Cache-Control", "public, max-age=0, must-revalidate")
	}
	for _, coding := range [][2]string{{"br", ".br"}, {"gzip", ".gz"}} {
		if _, ok := s.files[name+coding[1]]; ok && accepts(r, coding[0]) {
			h.Set("Content-Encoding", coding[0])
			name += coding[1]
			break
		}
	}
	h.Set("ETag", s.tags[name])
	if status == http.StatusOK && r.Header.Get("If-None-Match") == s.tags[name] {
		w.WriteHeader(http.StatusNotModified)
		return
	}
	h.Set("Content-Length", strconv.Itoa(len(s.files[name])))
	w.WriteHeader(status)
	if r.Method == http.MethodGet {
		w.Write(s.files[name])
	}
}

// find turns an address into the name of a file of the site.
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
	if ext := path.Ext(below); ext != ".br" && ext != ".gz" && below != "_headers" {
		for _, candidate := range []string{below, below + ".html"} {
			if _, ok := s.files[candidate]; ok {
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
