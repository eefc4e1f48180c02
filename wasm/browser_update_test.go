//go:build !js

package main

import (
	"fmt"
	"maps"
	"net/http"
	"path"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
)

// next is in the description of the version that follows.
const next = "Next version."

const description = `document.querySelector("meta[name=description]").content`

// look asks the browser to look for a new version now, as it does by itself
// when a tab is shown again.
const look = `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => true, () => false)`

const offered = `window.filmfurrow?.status.update === true`

const ownCaches = `caches.keys().then((names) => names.filter((n) => n.startsWith("film-furrow")).length)`

func isNext(t *testing.T, p *browsertest.Page) bool {
	t.Helper()
	return strings.Contains(browsertest.Eval[string](p, description), next)
}

// A new version comes while the page is open: it is offered, nothing changes
// until the reader says so, and then everything changes at once.
func TestNewVersionWhileOpen(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	p.Do(`localStorage.setItem("film-furrow.test", "kept")`)
	b.Publish(browsertest.NextVersion(t, true))
	browsertest.Eval[bool](p, look)
	p.Wait("the new version to be offered", offered)
	p.WaitText("#strip", "A new version is here")
	p.Screenshot("new-version")

	p.Reload()
	p.WaitWhole()
	assert.False(t, isNext(t, p), "a reload alone does not swap versions")
	p.Wait("the offer to be repeated, though the version was waiting before the page loaded", offered)

	second := b.Page(820, "/")
	second.Wait("the offer in a second tab", offered)

	p.Click("#strip button")
	p.Wait("the new version", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
	assert.Equal(t, "kept", browsertest.Eval[string](p, `localStorage.getItem("film-furrow.test")`))
	p.Wait("the old version's files to go", ownCaches+`.then((n) => n === 1)`)
	second.WaitText("#strip", "renewed in another tab")
	second.Close()
	p.WaitOffline()

	b.Stop()
	p.Reload()
	p.WaitWhole()
	assert.True(t, isNext(t, p))
}

// The reader comes back after a new version was published: the kept version
// opens at once, the new one is offered, and "Later" is heeded.
func TestNewVersionBetweenVisits(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	p.Close()
	b.Publish(browsertest.NextVersion(t, false))
	p = b.Page(820, "/")
	assert.False(t, isNext(t, p))
	p.Wait("the new version to be offered", offered)
	p.Click("#strip button:nth-child(2)")
	p.Wait("the offer to go", `!window.filmfurrow.status.update`)
	assert.False(t, isNext(t, p))
}

// A host that lets browsers keep a page for an hour must not make the worker
// take the old page into the new version.
func TestNewVersionPastTheBrowsersCache(t *testing.T) {
	t.Parallel()
	lasting := func(s *site.Site) map[string][]byte {
		files := map[string][]byte{}
		for name, body := range s.Files {
			files[name] = body
		}
		files["_headers"] = append([]byte("/\n  Cache-Control: public, max-age=3600\n/manifest.webmanifest\n  Cache-Control: public, max-age=3600\n"), files["_headers"]...)
		return files
	}
	b := browsertest.OpenKeeping(t)
	b.PublishFiles(lasting(browsertest.Make(t, nil)), "")
	p := b.Page(820, "/")
	p.WaitOffline()
	b.PublishFiles(lasting(browsertest.NextVersion(t, false)), "")
	browsertest.Eval[bool](p, look)
	p.Wait("the new version to be offered", offered)
	p.Click("#strip button")
	p.Wait("the new page", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
}

// The download of the new version goes wrong in every way that networks have.
// The old version goes on, with and without a network; no half version stays;
// the next look completes the update.
func TestNewVersionThatDoesNotArrive(t *testing.T) {
	t.Parallel()
	newer := browsertest.NextVersion(t, true)
	on := func(match func(string) bool, f func(http.ResponseWriter, *http.Request)) func(http.ResponseWriter, *http.Request) bool {
		return func(w http.ResponseWriter, r *http.Request) bool {
			if !match(r.URL.Path) || r.Header.Get("Sec-Fetch-Dest") == "document" {
				return false
			}
			f(w, r)
			return true
		}
	}
	isProgram := func(p string) bool { return strings.Contains(p, "/app-") }
	isIcon := func(p string) bool { return p == "/icons/icon-192.png" }
	isHome := func(p string) bool { return p == "/" }
	type fault struct {
		name string
		f    func(http.ResponseWriter, *http.Request) bool
	}
	var faults []fault
	for _, percent := range []int{0, 50, 99} {
		faults = append(faults, fault{fmt.Sprintf("the program cut off at %d %%", percent), on(isProgram, func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", "application/wasm")
			w.Header().Set("Content-Length", strconv.Itoa(len(newer.Program)))
			w.Write(newer.Program[:len(newer.Program)*percent/100])
			panic(http.ErrAbortHandler)
		})})
	}
	page := func(w http.ResponseWriter, _ *http.Request) { fmt.Fprint(w, "<!DOCTYPE html><title>Sign in</title>") }
	// The program's faults come first: with another file at fault the program
	// arrives, and the browser's cache holds it for the next try.
	faults = append(faults,
		fault{"an HTML page for the program", on(isProgram, page)},
		fault{"500 for an icon", on(isIcon, func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(500) })},
		fault{"404 for an icon", on(isIcon, func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(404) })},
		fault{"an HTML page for an icon", on(isIcon, page)},
		fault{"another page for the home page", on(isHome, page)},
	)
	b := browsertest.OpenKeeping(t)
	p := b.Tab(browsertest.Tab{Path: "/", Errors: true})
	p.WaitOffline()
	b.Publish(newer)
	for _, fault := range faults {
		t.Run(fault.name, func(t *testing.T) {
			b.Fault(fault.f)
			browsertest.Eval[bool](p, look)
			p.Wait("the worker to give the version up", `navigator.serviceWorker.getRegistration().then((r) => !r.installing && !r.waiting)`)
			assert.Equal(t, 1, browsertest.Eval[int](p, ownCaches), "no half version stays")
			assert.False(t, browsertest.Eval[bool](p, offered))
			p.Reload()
			p.WaitReady()
			assert.False(t, isNext(t, p))
		})
	}
	// What is kept is whole still, after all of them.
	b.Stop()
	p.Reload()
	p.WaitWhole()
	assert.False(t, isNext(t, p))
	b.Start()
	t.Run("killed half way, then whole", func(t *testing.T) {
		reached := make(chan struct{}, 10)
		p.ForgetHTTP()
		b.Fault(on(isProgram, func(w http.ResponseWriter, r *http.Request) {
			w.Header().Set("Content-Type", "application/wasm")
			w.Header().Set("Content-Length", strconv.Itoa(len(newer.Program)))
			w.Write(newer.Program[:len(newer.Program)/2])
			w.(http.Flusher).Flush()
			reached <- struct{}{}
			<-r.Context().Done()
		}))
		p.Do(look)
		<-reached
		p.Close()
		b.Stop()
		offline := b.Tab(browsertest.Tab{Path: "/", Whole: true, Errors: true})
		assert.False(t, isNext(t, offline))
		b.Fault(nil)
		b.Start()
		browsertest.Eval[bool](offline, look)
		offline.Wait("the update to complete", offered)
		offline.Click("#strip button")
		offline.Wait("the new version", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
	})
}

func TestOnlyOwnCachesAreDeleted(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Page(820, "/")
	p.WaitOffline()
	browsertest.Eval[bool](p, `Promise.all(["other-app", "film-furrow /elsewhere/ 1", "film-furrow / stale"].map((n) => caches.open(n))).then(() => true)`)
	b.Publish(browsertest.NextVersion(t, false))
	browsertest.Eval[bool](p, look)
	p.Wait("the new version to be offered", offered)
	p.Click("#strip button")
	p.Wait("the new version", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
	names := browsertest.Eval[[]string](p, `caches.keys()`)
	assert.Contains(t, names, "other-app")
	assert.Contains(t, names, "film-furrow /elsewhere/ 1", "a copy of the site in another folder is a neighbour too")
	assert.NotContains(t, names, "film-furrow / stale")
	assert.Len(t, names, 3)
}

// The line "ready for the field" is true only while every file is there; a gap
// is mended as soon as there is a network.
func TestReadyLineIsChecked(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Tab(browsertest.Tab{Path: "/", Errors: true})
	p.WaitOffline()
	lose := func(name string) {
		t.Helper()
		require.True(t, browsertest.Eval[bool](p, fmt.Sprintf(`caches.keys().then(async (names) => {
			const cache = await caches.open(names[0]);
			for (const key of await cache.keys()) if (key.url.includes(%q)) return cache.delete(key);
			return false;
		})`, name)))
	}
	lose("/icons/icon-192.png")
	assert.Equal(t, "ready", browsertest.Eval[string](p, `filmfurrow.check()`), "mended while there is a network")
	lose("/icons/icon-192.png")
	lose("/app-")
	p.ForgetHTTP()
	b.Stop()
	assert.Equal(t, "partly", browsertest.Eval[string](p, `filmfurrow.check()`))
	p.WaitText("#strip", "Not ready for the field")
	p.Reload()
	p.WaitText("#strip", "could not be fetched")
	assert.True(t, p.Visible("h1"), "the text stays readable")

	b.Start()
	p.Reload()
	p.WaitWhole()
	p.WaitOffline()

	// The whole cache lost: the site is taken in again.
	browsertest.Eval[bool](p, `caches.keys().then((names) => Promise.all(names.map((n) => caches.delete(n)))).then(() => true)`)
	assert.Equal(t, "ready", browsertest.Eval[string](p, `filmfurrow.check()`))
	b.Stop()
	p.Reload()
	p.WaitWhole()
}

// Where the device has no room, or a file of the first visit does not come, the
// page works and says that it is not kept; the next visit tries again.
func TestSiteThatCannotBeKept(t *testing.T) {
	t.Parallel()
	t.Run("no room", func(t *testing.T) {
		b := browsertest.OpenKeeping(t)
		p := b.Tab(browsertest.Tab{Path: "/?wasm=false", NoWait: true, Errors: true})
		p.Room(100_000)
		p.Go("/")
		p.WaitWhole()
		p.WaitText("#strip", "could not keep the site")
		assert.Equal(t, 0, browsertest.Eval[int](p, ownCaches))
	})
	t.Run("a file missing", func(t *testing.T) {
		b := browsertest.OpenKeeping(t)
		b.Fault(func(w http.ResponseWriter, r *http.Request) bool {
			if r.URL.Path != "/icons/maskable-512.png" {
				return false
			}
			w.WriteHeader(http.StatusNotFound)
			return true
		})
		p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Errors: true})
		p.WaitText("#strip", "could not keep the site")
		b.Fault(nil)
		p.Reload()
		p.WaitOffline()
	})
}

// The program is downloaded once, not once for the page and once more for the worker.
func TestProgramIsDownloadedOnce(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	// Compressed, as hosts send it: the browser's cache in a test takes no
	// single file above some megabytes.
	built := browsertest.Make(t, nil)
	files := maps.Clone(built.Files)
	for name, body := range built.Files {
		if path.Ext(name) == ".wasm" {
			packed, err := site.Gzip(body)
			require.NoError(t, err)
			files[name+".gz"] = packed
		}
	}
	b.PublishFiles(files, "")
	p := b.Page(820, "/")
	p.WaitOffline()
	p.Reload()
	p.WaitWhole()
	times := map[string]int{}
	for _, asked := range b.Requests() {
		if path.Ext(asked) == ".wasm" {
			times[asked]++
		}
	}
	assert.Len(t, times, 1)
	for asked, n := range times {
		assert.Equal(t, 1, n, asked)
	}
}
