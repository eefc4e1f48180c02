//go:build !js

package site

import (
	"bytes"
	"compress/gzip"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func ask(s *Server, method, address string, headers ...string) *http.Response {
	r := httptest.NewRequest(method, "http://films.test"+address, nil)
	for i := 0; i+1 < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	s.ServeHTTP(w, r)
	return w.Result()
}

// published is the header file of some pages.
func published(t *testing.T, base string, pages []Page, files map[string][]byte) []byte {
	t.Helper()
	file, err := headers(base, pages, files)
	require.NoError(t, err)
	return file
}

func TestServerServesAsAStaticHost(t *testing.T) {
	pages := []Page{{Path: "/"}, {Path: "/card"}}
	files := map[string][]byte{
		"_headers": published(t, "", pages, nil), "index.html": []byte("home"), "card.html": []byte("card"), "404.html": []byte("gone"),
		"assets/a-1.wasm": bytes.Repeat([]byte("wasm "), 100), "assets/a-1.js": []byte("js"), "manifest.webmanifest": []byte("{}"), "icons/i.svg": []byte("<svg/>"),
	}
	packed, err := withCompressed(files)
	require.NoError(t, err)
	s, err := NewServer(packed, "")
	require.NoError(t, err)

	for address, want := range map[string]struct {
		status int
		kind   string
		body   string
	}{
		"/":                     {200, "text/html; charset=utf-8", "home"},
		"/?utm=1":               {200, "text/html; charset=utf-8", "home"},
		"/card":                 {200, "text/html; charset=utf-8", "card"},
		"/card.html":            {200, "text/html; charset=utf-8", "card"},
		"/assets/a-1.js":        {200, "text/javascript; charset=utf-8", "js"},
		"/manifest.webmanifest": {200, "application/manifest+json", "{}"},
		"/icons/i.svg":          {200, "image/svg+xml", "<svg/>"},
		"/nowhere":              {404, "text/html; charset=utf-8", "gone"},
		"/card/":                {404, "text/html; charset=utf-8", "gone"},
		"/_headers":             {404, "text/html; charset=utf-8", "gone"},
		"/assets/a-1.wasm.br":   {404, "text/html; charset=utf-8", "gone"},
		"/assets/../index.html": {404, "text/html; charset=utf-8", "gone"},
	} {
		got := ask(s, "GET", address)
		body, _ := io.ReadAll(got.Body)
		assert.Equal(t, want.status, got.StatusCode, address)
		assert.Equal(t, want.kind, got.Header.Get("Content-Type"), address)
		assert.Equal(t, want.body, string(body), address)
		assert.Equal(t, "nosniff", got.Header.Get("X-Content-Type-Options"), address)
	}

	wasm := ask(s, "GET", "/assets/a-1.wasm", "Accept-Encoding", "gzip, deflate, br")
	assert.Equal(t, "br", wasm.Header.Get("Content-Encoding"))
	assert.Equal(t, "application/wasm", wasm.Header.Get("Content-Type"))
	assert.Equal(t, "public, max-age=31536000, immutable", wasm.Header.Get("Cache-Control"))
	body, err := io.ReadAll(brotli.NewReader(wasm.Body))
	require.NoError(t, err)
	assert.Equal(t, files["assets/a-1.wasm"], body)

	wasm = ask(s, "GET", "/assets/a-1.wasm", "Accept-Encoding", "gzip, br;q=0")
	require.Equal(t, "gzip", wasm.Header.Get("Content-Encoding"))
	unpacked, err := gzip.NewReader(wasm.Body)
	require.NoError(t, err)
	body, err = io.ReadAll(unpacked)
	require.NoError(t, err)
	assert.Equal(t, files["assets/a-1.wasm"], body)

	home := ask(s, "GET", "/")
	assert.Equal(t, "public, max-age=0, must-revalidate", home.Header.Get("Cache-Control"))
	assert.Equal(t, 304, ask(s, "GET", "/", "If-None-Match", home.Header.Get("ETag")).StatusCode)
	assert.Equal(t, 200, ask(s, "GET", "/", "If-None-Match", `"older"`).StatusCode)
	assert.Equal(t, 405, ask(s, "POST", "/").StatusCode)
	head := ask(s, "HEAD", "/")
	body, _ = io.ReadAll(head.Body)
	assert.Equal(t, "4", head.Header.Get("Content-Length"))
	assert.Empty(t, body)
	// A missing fingerprinted file must not be remembered as missing.
	assert.NotContains(t, ask(s, "GET", "/assets/a-2.wasm").Header.Get("Cache-Control"), "immutable")
}

// The policy: nothing inline, nothing evaluated but the compiled program, no
// other origin (W3C Content Security Policy Level 3); frames only around the card.
func TestHeadersArePublished(t *testing.T) {
	pages := []Page{{Path: "/"}, {Path: "/card"}, {Path: "/about"}}
	for _, base := range []string{"", "/sub/path"} {
		s, err := NewServer(map[string][]byte{
			"_headers": published(t, base, pages, nil), "index.html": nil, "card.html": nil, "about.html": nil, "404.html": nil,
		}, base)
		require.NoError(t, err)
		for _, p := range append(pages, Page{Path: "/index.html"}, Page{Path: "/card.html"}, Page{Path: "/about.html"}) {
			h := ask(s, "GET", base+p.Path).Header
			all := strings.Join(h.Values("Content-Security-Policy"), ", ")
			for _, wrong := range []string{"'unsafe-inline'", "'unsafe-eval'", "http:", "https:", "script-src *"} {
				assert.NotContains(t, all, wrong)
			}
			assert.Contains(t, all, "default-src 'none'")
			assert.Contains(t, all, "script-src 'self' 'wasm-unsafe-eval'")
			if strings.HasPrefix(p.Path, "/card") {
				assert.NotContains(t, all, "frame-ancestors 'none'")
			} else {
				assert.Contains(t, all, "frame-ancestors 'none'")
			}
			assert.Equal(t, "nosniff", h.Get("X-Content-Type-Options"))
			assert.Equal(t, "no-referrer", h.Get("Referrer-Policy"))
			assert.Contains(t, h.Get("Permissions-Policy"), "camera=()")
			assert.Contains(t, h.Get("Strict-Transport-Security"), "max-age=")
			assert.Empty(t, h.Get("Set-Cookie"))
		}
	}
	s, err := NewServer(map[string][]byte{"_headers": published(t, "", pages, nil), "404.html": nil, "assets/a.csv": nil}, "")
	require.NoError(t, err)
	for _, path := range []string{"/nowhere", "/card/nowhere", "/assets/a.csv", "/worker.js"} {
		h := ask(s, "GET", path).Header
		assert.Equal(t, "DENY", h.Get("X-Frame-Options"), path)
		assert.NotContains(t, strings.Join(h.Values("Content-Security-Policy"), ", "), "frame-ancestors", path)
	}
	_, err = parseHeaders([]byte("  X-Alone: 1\n"))
	assert.Error(t, err)
	_, err = parseHeaders([]byte("/*\n  no colon here\n"))
	assert.Error(t, err)
}

// What a page's first paint waits for is named in its header, once each; what comes
// later is not, or it would take the line from it (W3C Preload).
func TestHeadersNameWhatThePaintWaitsFor(t *testing.T) {
	pages := []Page{{Path: "/"}, {Path: "/about"}}
	files := map[string][]byte{
		"index.html": []byte(`<!DOCTYPE html><script src="/sub/assets/boot-1.js"></script><link rel="stylesheet" href="/sub/assets/page-1.css"><link rel="icon" href="/sub/icons/icon.svg"><script defer src="/sub/assets/start-1.js"></script>`),
		"about.html": []byte(`<!DOCTYPE html><link rel="stylesheet" href="/sub/assets/page-1.css">`),
		"404.html":   nil, "assets/page-1.css": nil,
	}
	files["_headers"] = published(t, "/sub", pages, files)
	s, err := NewServer(files, "/sub")
	require.NoError(t, err)
	style, script := "</sub/assets/page-1.css>; rel=preload; as=style", "</sub/assets/boot-1.js>; rel=preload; as=script"
	for address, want := range map[string][]string{
		"/sub/": {script, style}, "/sub/index.html": {script, style}, "/sub/about": {style},
		"/sub/nowhere": nil, "/sub/assets/page-1.css": nil,
	} {
		assert.Equal(t, want, ask(s, "GET", address).Header.Values("Link"), address)
	}
}
