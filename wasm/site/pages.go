//go:build !js

package site

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"sync"

	framework "github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/app"
)

// Pages is the page package's list, registered with the framework.
func Pages() []Page {
	app.Mount()
	var list []Page
	for _, p := range app.Pages() {
		list = append(list, Page{Path: p.Path, Title: p.Title, Description: p.Description})
	}
	return list
}

// place tells the framework where its files are; all are named by this
// package instead, so only the base matters.
type place struct{ base string }

func (p place) Package() string { return p.base }
func (p place) Static() string  { return p.base }
func (p place) AppWASM() string { return p.base + "/assets/app.wasm" }

// The framework keeps routes and environment in the process, so one site is
// rendered at a time.
var rendering sync.Mutex

// prerender asks the framework's own handler for the HTML of each page.
func prerender(pages []Page, base string) (map[string][]byte, error) {
	rendering.Lock()
	defer rendering.Unlock()
	out := map[string][]byte{}
	for _, p := range pages {
		handler := &framework.Handler{
			Name: siteName, ShortName: shortName, Lang: siteLang,
			Title: p.Title, Description: p.Description,
			ThemeColor: themeColor, BackgroundColor: paperColor,
			// Icons and version are replaced later; set here they keep the
			// framework from reaching for its own remote ones and the clock.
			Icon:      framework.Icon{Default: "/icon", Large: "/icon", SVG: "/icon", AppleTouch: "/icon"},
			Version:   "prerender",
			Resources: place{base},
		}
		request := httptest.NewRequest(http.MethodGet, "http://site.invalid"+p.Path, nil)
		answer := httptest.NewRecorder()
		handler.ServeHTTP(answer, request)
		if answer.Code != http.StatusOK {
			return nil, fmt.Errorf("page %s is not registered with the framework: status %d", p.Path, answer.Code)
		}
		out[p.Path] = answer.Body.Bytes()
	}
	return out, nil
}
