//go:build !js

package browsertest

import (
	"net"
	"net/http"
	"slices"
	"sync"
	"testing"
	"time"

	"filmfurrow/wasm/site"
)

// plain is the site as it is, built once for a test binary.
var plain = sync.OnceValues(func() (*site.Site, error) {
	return site.Make(site.Options{Pages: site.Pages()})
})

// Make builds the site. A change to the options makes another version of it,
// with the same program unless that is changed too.
func Make(t testing.TB, change func(*site.Options)) *site.Site {
	t.Helper()
	Gate(t)
	first, err := plain()
	if err != nil {
		t.Fatalf("the site does not build: %v", err)
	}
	if change == nil {
		return first
	}
	options := site.Options{Pages: site.Pages(), Program: first.Program}
	change(&options)
	built, err := site.Make(options)
	if err != nil {
		t.Fatalf("the site does not build: %v", err)
	}
	return built
}

// NextVersion is the site after a change to its first page's description and,
// with newProgram, to the program's bytes too: a custom section is added, which
// the WebAssembly core specification (§5.5.3) has every engine ignore.
func NextVersion(t testing.TB, newProgram bool) *site.Site {
	return Make(t, func(o *site.Options) {
		o.Pages = slices.Clone(o.Pages)
		o.Pages[0].Description += " Next version."
		o.Pages[0].Title += " (next version)"
		if newProgram {
			o.Program = append(slices.Clone(o.Program), 0, 5, 4, 'n', 'e', 'x', 't')
		}
	})
}

// Server serves a site on a port of this machine and can be stopped, started
// on the same port, given another site, and made to fail.
type Server struct {
	URL string // origin and base, without a slash at the end

	t        testing.TB
	addr     string
	mu       sync.Mutex
	http     *http.Server
	handler  http.Handler
	fault    func(http.ResponseWriter, *http.Request) bool
	requests []string
}

// Serve serves a site for browsers that are not driven here.
func Serve(t testing.TB, built *site.Site) *Server {
	t.Helper()
	return newServer(t, built)
}

func newServer(t testing.TB, built *site.Site) *Server {
	s := &Server{t: t, addr: "127.0.0.1:0"}
	s.Publish(built)
	s.Start()
	s.URL = "http://" + s.addr + built.Base
	t.Cleanup(s.Stop)
	return s
}

// Publish puts another version of the site in place.
func (s *Server) Publish(built *site.Site) {
	s.PublishFiles(built.Files, built.Base)
}

// PublishFiles puts any set of files in place, below base.
func (s *Server) PublishFiles(files map[string][]byte, base string) {
	s.t.Helper()
	handler, err := site.NewServer(files, base)
	if err != nil {
		s.t.Fatal(err)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.handler = handler
}

// Fault has each request shown to f first; where f returns true it has
// answered, well or badly, and the site is not asked. nil ends it.
func (s *Server) Fault(f func(http.ResponseWriter, *http.Request) bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.fault = f
}

// Requests lists the paths asked for since the last call.
func (s *Server) Requests() []string {
	s.mu.Lock()
	defer s.mu.Unlock()
	list := s.requests
	s.requests = nil
	return list
}

func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	s.mu.Lock()
	fault, handler := s.fault, s.handler
	s.requests = append(s.requests, r.URL.Path)
	s.mu.Unlock()
	if fault != nil && fault(w, r) {
		return
	}
	handler.ServeHTTP(w, r)
}

// Stop takes the site off the network: open connections break, new ones are
// refused.
func (s *Server) Stop() {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.http != nil {
		s.http.Close()
		s.http = nil
	}
}

// Start puts the site back on the network, on the same port.
func (s *Server) Start() {
	s.t.Helper()
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.http != nil {
		return
	}
	listener, err := net.Listen("tcp", s.addr)
	if err != nil {
		s.t.Fatal(err)
	}
	s.addr = listener.Addr().String()
	s.http = &http.Server{Handler: s, ReadHeaderTimeout: 10 * time.Second}
	go s.http.Serve(listener)
}
