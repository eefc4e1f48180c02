//go:build !js

package main

import (
	"bytes"
	"fmt"
	"maps"
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/jsontext"
	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/webdriver"
)

// Chromium is driven for every promise; Firefox and WebKit for the main job and for
// what engines differ in.

// tab is a page in any of the three.
type tab interface {
	Click(selector string)
	Choose(selector, value string)
	Do(expression string)
	Wait(what, expression string)
}

// reader is one of the three, with what its driver asks in its own way.
type reader struct {
	tab
	name string
	open func(path string)
	text func(expression string) string
	size func(width, height int)
}

func chromium(p *browsertest.Page) *reader {
	return &reader{p, "Chromium", p.Go, func(e string) string { return browsertest.Eval[string](p, e) }, p.Resize}
}

func driven(p *webdriver.Page, s *browsertest.Server) *reader {
	return &reader{p, string(p.Engine), func(path string) { p.Go(s.URL + path) }, func(e string) string { return webdriver.Eval[string](p, e) }, p.Size}
}

// drawn is when nothing of the page is still to be drawn anew, and no part of a view that
// was just gone to waits for its turn.
const drawn = `window.filmfurrow?.status.start === "ready" && filmfurrow.status.whole && (filmfurrow.drawn?.() ?? true) && document.querySelector(".later") === null`

func (r *reader) whole() { r.Wait("the program to have drawn the page", drawn) }

// to goes to a view by the bar.
func (r *reader) to(path string) {
	r.Click(`.bar a[href="` + path + `"]`)
	r.Wait("the view "+path, fmt.Sprintf(`location.pathname === %q && document.querySelector("#view") !== null && `, path)+drawn)
}

// menu goes to a page that is not in the bar.
func (r *reader) menu(path string) {
	r.Click("#menu > summary")
	r.Click(`.menu-list a[href="` + path + `"]`)
	r.Wait("the page "+path, fmt.Sprintf(`location.pathname === %q && document.querySelector("main h1") !== null && `, path)+drawn)
}

// bar are the views in it.
var bar = []string{"/buy", "/lay", "/water", "/year", "/"}

// answers are all words of the five views. What is studied while the page rests comes
// later in one browser than in another, and is left out.
func (r *reader) answers() map[string]string {
	list := map[string]string{}
	for _, path := range bar {
		r.to(path)
		list[path] = r.text(`((copy) => {
			copy.querySelectorAll("#year-films, .moved, .notes").forEach((e) => e.remove());
			copy.querySelectorAll("p.help").forEach((e) => { if (e.textContent.startsWith("Worth finding out")) e.remove(); }); // the study says so, later
			return copy.textContent;
		})(document.querySelector("main").cloneNode(true))`)
	}
	return list
}

// moved is what the page says that a change moved.
func (r *reader) moved() string {
	r.Wait("what moved", `document.querySelector("#moved li") !== null && !document.querySelector("#moved").hidden`)
	return r.text(`document.querySelector("#moved").textContent`)
}

const qrCode = `document.querySelector("#share-qr svg")?.outerHTML ?? ""`

// qr is the QR code of the field in hand.
func (r *reader) qr() string {
	r.menu("/share")
	r.Click("#share-code")
	r.Wait("the QR code", qrCode+` !== ""`)
	return r.text(qrCode)
}

// beside tells whether a group's name stands on the line of its first button.
const beside = `((group) => {
	const words = document.createRange();
	words.selectNodeContents(group.querySelector("legend"));
	const name = words.getBoundingClientRect(), button = group.querySelector("button").getBoundingClientRect();
	return name.top > button.top && name.bottom < button.bottom && name.right <= button.left;
})`

// Every day: each engine starts the program, draws what was prerendered with one look,
// answers a change, takes a date that is typed by keys, and keeps both.
func TestEveryEngineStartsAndAnswers(t *testing.T) {
	built := browsertest.Make(t, nil)
	for _, engine := range webdriver.Engines {
		t.Run(string(engine), func(t *testing.T) {
			s := browsertest.Serve(t, built)
			p := webdriver.Open(t, engine, webdriver.Options{})
			p.Size(820, 1180)
			r := driven(p, s)
			r.open("/about")
			assert.GreaterOrEqual(t, webdriver.Eval[float64](p, `document.querySelector("main a[href='/']").getBoundingClientRect().height`), 48.0)
			r.open("/")
			r.Wait("the program", `window.filmfurrow?.status.start === "ready"`)
			verdict := r.text(`document.querySelector("#verdict h1").outerHTML`)
			assert.Contains(t, string(built.Files["index.html"]), verdict, "what the program draws was prerendered")
			for _, id := range []string{"f-crop", "f-soil-texture", "f-weeds-pressure", "f-plant-on"} {
				assert.Equal(t, r.text(`getComputedStyle(document.querySelector("#place-open")).backgroundColor`), r.text(`getComputedStyle(document.getElementById("`+id+`")).backgroundColor`), id)
			}
			r.Wait("the list to be as wide as “bell peppers”", `document.querySelector("#f-crop").offsetWidth < 200`)
			if engine == webdriver.WebKit { // the others draw their own
				assert.Contains(t, r.text(`getComputedStyle(document.querySelector("#f-plant-on")).backgroundImage`), "svg", "the sign of a calendar")
			}
			p.Do(`document.querySelector("#menu").open = true`)
			assert.True(t, webdriver.Eval[bool](p, beside+`(document.querySelector("#menu .units"))`), "“Units” stands beside its buttons")
			p.Do(`document.querySelector("#menu").open = false`)
			r.whole()
			r.Choose("#f-crop", "carrot")
			assert.Contains(t, r.moved(), "do not lay film here")
			r.Wait("it to be kept", keptField+`.includes("carrot")`)

			p.Do(`document.querySelector("#f-plant-on").focus()`)
			p.Type("6/10/2027\uE004") // and Tab: WebKit reports a date when its box is left
			r.Wait("the date that was typed", `document.querySelector("#f-plant-on").value === "2027-06-10"`)
			r.Wait("it in words", `document.querySelector("#f-plant-on ~ .in-words").textContent === "June 10"`)
			r.Wait("it to be kept", keptField+`.includes("2027-06-10")`)
		})
	}
}

// The main job in the other two engines: the first visit and the answers on a tablet and on
// a phone, a change and what it moved, back, kept, without a network, a new version, print,
// save, QR code. Every word, the QR code and the file are Chromium's, byte for byte.
func TestTheMainJobInEveryEngine(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	s := b.Server
	c := b.Page(820, "/")
	first := chromium(c)
	first.whole()
	example := first.answers()
	require.Contains(t, example["/"], "Lay black film")
	first.Choose("#f-crop", "summer-squash")
	moved := first.moved()
	changed := first.answers()
	require.NotEqual(t, example["/"], changed["/"])
	code := first.qr()
	first.menu("/fields")
	c.Do(`URL.createObjectURL = (blob) => { blob.text().then((text) => { window.saved = text; }); return "data:,"; }`)
	c.Click("#fields-save")
	c.Wait("the file", `window.saved !== undefined`)
	file := browsertest.Eval[string](c, `window.saved`)
	_, err := jsontext.Parse([]byte(file), 8)
	require.NoError(t, err)
	c.Close()

	for _, engine := range webdriver.Engines {
		t.Run(string(engine), func(t *testing.T) {
			begun := time.Now()
			s.Publish(browsertest.Make(t, nil))
			defer s.Start() // for the next one, wherever this one ends
			p := webdriver.Open(t, engine, webdriver.Options{})
			r := driven(p, s)
			for _, width := range []int{820, 390} { // the rest on the phone
				p.Size(width, 1000)
				r.open("/")
				r.whole()
				assert.Equal(t, example, r.answers(), "the example's answers at %d", width)
				assert.LessOrEqual(t, webdriver.Eval[int](p, `document.documentElement.scrollWidth - document.documentElement.clientWidth`), 0, "at %d", width)
			}
			r.Wait("the site to be kept", `filmfurrow.status.offline === "ready"`)
			assert.Contains(t, r.text(`document.querySelector("#strip").innerText`), "Ready for the field")
			if engine == webdriver.WebKit {
				assert.Contains(t, r.text(`document.querySelector("#strip").innerText`), "deletes it after seven days of use without a visit: put the page on the home screen, or save your fields as a file under “Your fields”.")
			}

			r.Choose("#f-crop", "summer-squash")
			assert.Equal(t, moved, r.moved(), "what the change moved")
			assert.Equal(t, changed, r.answers(), "the answers after the change")

			r.Click(`.labels a[href^="/why/film"]`)
			r.Wait("the reasons for the film", `location.pathname === "/why/film" && document.querySelector("#film-balance") !== null && `+drawn)
			p.Back()
			r.Wait("the plan again", `location.pathname === "/" && document.querySelector("#verdict h1") !== null`)

			r.to("/buy")
			p.Do(`window.printed = 0, window.print = () => { window.printed++; }`)
			r.Click("#shopping-print")
			r.Wait("the print", `window.printed === 1`)

			assert.Equal(t, code, r.qr(), "the QR code")
			r.menu("/fields")
			r.Click("#fields-save")
			assert.Equal(t, file, string(p.Saved("film-and-furrow-fields.json")), "the file")

			s.Stop()
			r.open("/")
			r.whole()
			p.Reload()
			r.whole()
			assert.Equal(t, "summer-squash", r.text(`document.querySelector("#f-crop").value`), "kept, without a network")
			assert.Equal(t, changed["/"], r.answers()["/"])
			if engine == webdriver.WebKit {
				r.Wait("the day of the last file", `document.querySelector("#strip").innerText.includes("last saved today")`)
			}
			s.Start()

			s.Publish(browsertest.NextVersion(t, false))
			assert.True(t, webdriver.Eval[bool](p, look))
			r.Wait("the new version to be offered", offered)
			r.Click("#strip button")
			r.Wait("the new version", `window.filmfurrow?.status.start === "ready" && `+description+`.includes("`+next+`")`)
			assert.Equal(t, "summer-squash", r.text(`document.querySelector("#f-crop").value`), "kept over the new version")
			t.Logf("%.0f s", time.Since(begun).Seconds())
		})
	}
}

// landed is how far a target is from where a link puts it, at the window's upper edge or in
// its middle; 0 where the page ends and the target is in sight.
const landed = `((el) => {
	if (!el?.checkVisibility()) return -1;
	const box = el.getBoundingClientRect(), page = document.documentElement;
	const end = scrollY < 2 || scrollY + innerHeight > page.scrollHeight - 2;
	if (end && box.top >= 0 && box.bottom <= innerHeight) return 0;
	return Math.round(Math.min(Math.abs(box.top - parseFloat(getComputedStyle(page).scrollPaddingTop)), Math.abs((box.top + box.bottom) / 2 - innerHeight / 2)));
})(document.getElementById(decodeURIComponent(location.hash.slice(1))))`

// A click on a link to a source, a field or a section, and an address that names one, put
// it within 200 px, three seconds later, in every engine, whether or not motion is wanted.
func TestLinksLandWhereTheyLead(t *testing.T) {
	t.Parallel()
	s := browsertest.Serve(t, browsertest.Make(t, nil))
	try := func(t *testing.T, r *reader, still bool) {
		for _, width := range []int{390, 1280} {
			r.size(width, 900)
			for i, link := range []struct{ from, selector string }{
				{"/why/film", "#film-balance .factors li:last-child cite a"},
				{"/details#f-soil-texture", ""},
				{"/buy", `a.act[href*="#f-"]`},
				{"/why/water", ".why > p cite a"},
			} {
				if i > 1 && (still || width == 1280) {
					break // the first two say all that differs
				}
				r.open("/404") // the last page's place is not this one's
				r.open(link.from)
				r.whole()
				if link.selector != "" {
					// What the target stands in is left folded.
					r.Do(fmt.Sprintf(`(() => { for (let d = document.querySelector(%q).closest("details"); d; d = d.parentElement.closest("details")) d.open = true; })()`, link.selector))
					r.Click(link.selector)
					r.Wait("the address", `location.hash.length > 1`)
				}
				time.Sleep(3 * time.Second)
				far := r.text(landed + ` + ""`)
				var px int
				fmt.Sscan(far, &px)
				t.Logf("%s, %d px wide, still %t, %s %s: %s px", r.name, width, still, link.from, link.selector, far)
				assert.True(t, 0 <= px && px <= 200, "%s at %d: %s %s lands %s px away (%s)", r.name, width, link.from, link.selector, far, r.text(`location.hash`))
			}
		}
	}
	for _, still := range []bool{false, true} {
		t.Run(fmt.Sprintf("Chromium, still %t", still), func(t *testing.T) {
			t.Parallel()
			p := browsertest.Open(t).Page(1280, "/")
			motion := "no-preference"
			if still {
				motion = "reduce"
			}
			p.Media("", "prefers-reduced-motion", motion)
			try(t, chromium(p), still)
		})
		for _, engine := range webdriver.Engines {
			t.Run(fmt.Sprintf("%s, still %t", engine, still), func(t *testing.T) {
				t.Parallel()
				p := webdriver.Open(t, engine, webdriver.Options{Still: still})
				p.Size(1280, 900)
				p.Go(s.URL + "/404")
				assert.Equal(t, still, webdriver.Eval[bool](p, `matchMedia("(prefers-reduced-motion: reduce)").matches`))
				try(t, driven(p, s), still)
			})
		}
	}
}

// Whoever scrolls up in steps of 250 px moves by 250 px: nothing above grows meanwhile.
func TestNothingJumpsOnTheWayUp(t *testing.T) {
	t.Parallel()
	s := browsertest.Serve(t, browsertest.Make(t, nil))
	for _, engine := range webdriver.Engines {
		t.Run(string(engine), func(t *testing.T) {
			p := webdriver.Open(t, engine, webdriver.Options{})
			p.Size(820, 1000)
			r := driven(p, s)
			for _, path := range []string{"/details", "/why/film"} {
				r.open(path)
				r.whole()
				p.Do(unfold)
				r.Wait("the map that was unfolded", `document.querySelector("details[open] .map") === null || document.querySelector("#map-plot") !== null`)
				most := webdriver.Eval[float64](p, `new Promise(async (done) => {
					const turn = () => new Promise((r) => setTimeout(r, 60));
					scrollTo({ top: document.documentElement.scrollHeight, behavior: "instant" });
					await turn();
					let most = 0, steps = 0;
					while (scrollY > 250) {
						const marks = [...document.querySelectorAll("main *")].filter((e) => { const y = e.getBoundingClientRect().top; return y > 0 && y < innerHeight - 300; });
						const mark = marks[0], before = mark.getBoundingClientRect().top;
						scrollBy({ top: -250, behavior: "instant" });
						await turn();
						if (mark.isConnected) most = Math.max(most, Math.abs(mark.getBoundingClientRect().top - before - 250));
						if (++steps > 300) break;
					}
					done(steps > 3 ? most : -1);
				})`)
				t.Logf("%s %s: %.1f px", engine, path, most)
				assert.True(t, 0 <= most && most < 20, "%s: %.1f px", path, most)
			}
		})
	}
}

// changedFiles gives the site's files with something put in place of something in each text.
func changedFiles(t *testing.T, files map[string][]byte, old, new string, names ...string) map[string][]byte {
	files = maps.Clone(files)
	n := 0
	for name, body := range files {
		for _, end := range names {
			if strings.HasSuffix(name, end) && bytes.Contains(body, []byte(old)) {
				files[name] = bytes.ReplaceAll(body, []byte(old), []byte(new))
				n++
			}
		}
	}
	require.Positive(t, n)
	return files
}

// A browser that is too old is told so, downloads no program, and shows the worked example
// and the cards: one that lets no WebAssembly run under our policy, as all did before those
// that are named, and one that cannot read our scripts. Where only a script did not come,
// that is said.
func TestABrowserThatIsTooOldIsTold(t *testing.T) {
	t.Parallel()
	const old = "This browser is too old; it needs Safari 16, Chrome 97 or Firefox 102 or later"
	unread := func(w http.ResponseWriter, r *http.Request) bool {
		if !strings.Contains(r.URL.Path, "/boot-") && !strings.Contains(r.URL.Path, "/start-") {
			return false
		}
		w.Header().Set("Content-Type", "text/javascript")
		fmt.Fprint(w, "let of the = future;")
		return true
	}
	try := func(t *testing.T, s *browsertest.Server, r *reader, says string) {
		s.Requests()
		for _, path := range []string{"/", "/buy", "/card"} {
			r.open(path)
			r.Wait("the words "+says, fmt.Sprintf(`document.querySelector("#strip").innerText.includes(%q)`, says))
			assert.NotEmpty(t, r.text(`document.querySelector("h1").innerText`), path)
			assert.Equal(t, "0", r.text(`document.querySelectorAll("#strip button").length + ""`), "nothing to try again")
		}
		r.open("/card/otter-bend")
		r.Wait("the card", `document.querySelector(".card svg .d-soil") !== null`)
		for _, path := range s.Requests() {
			assert.NotContains(t, path, ".wasm")
		}
	}
	// Nobody can do without these who reads the scripts, and older ones lack them.
	const before = `delete Array.prototype.at`
	built := browsertest.Make(t, nil).Files
	refused := changedFiles(t, changedFiles(t, built, " 'wasm-unsafe-eval'", "", "_headers"), " &#39;wasm-unsafe-eval&#39;", "", ".html")
	t.Run("Chromium", func(t *testing.T) {
		b := browsertest.Open(t)
		b.PublishFiles(refused, "")
		try(t, b.Server, chromium(b.Tab(browsertest.Tab{Path: "/404", NoWait: true, Errors: true})), old)
		for says, before := range map[string]string{old: before, "did not arrive": ""} {
			b = browsertest.Open(t) // another address: scripts are kept for a year
			b.Fault(unread)
			try(t, b.Server, chromium(b.Tab(browsertest.Tab{Path: "/404", NoWait: true, Errors: true, Before: before})), says)
		}
	})
	for _, engine := range webdriver.Engines {
		t.Run(string(engine), func(t *testing.T) {
			p := webdriver.Open(t, engine, webdriver.Options{})
			p.Size(820, 1000)
			s := browsertest.Serve(t, browsertest.Make(t, nil))
			s.PublishFiles(refused, "")
			try(t, s, driven(p, s), old)
			s = browsertest.Serve(t, browsertest.Make(t, nil))
			s.PublishFiles(changedFiles(t, built, "[].at", "[].never", ".js"), "")
			s.Fault(unread)
			try(t, s, driven(p, s), old)
		})
	}
}

// What a browser may delete is said, with two remedies, once there is something to lose;
// not where it promised to keep it.
func TestWhatTheBrowserMayDeleteIsSaid(t *testing.T) {
	t.Parallel()
	for _, lasting := range []bool{false, true} {
		b := browsertest.OpenKeeping(t)
		p := b.Tab(browsertest.Tab{Path: "/", Before: fmt.Sprintf(`for (const name of ["persist", "persisted"]) StorageManager.prototype[name] = async () => %t`, lasting)})
		p.WaitOffline()
		const words = "may delete it when the device runs full: put the page on the home screen, or save your fields as a file"
		assert.NotContains(t, p.Text("#strip"), words, "the example is no loss")
		p.Choose("#f-crop", "okra")
		p.Wait("it to be kept", keptField+`?.includes("okra")`)
		p.Do(`localStorage.setItem("film-furrow/saved", Date.now() - 3 * 86400000)`)
		p.Reload()
		p.WaitOffline()
		p.WaitText("#strip", "Ready for the field")
		p.Wait("the answer about storage", fmt.Sprintf(`filmfurrow.status.lasting === %q`, map[bool]string{true: "yes", false: "no"}[lasting]))
		if lasting {
			assert.NotContains(t, p.Text("#strip"), "may delete")
		} else {
			p.WaitText("#strip", words+" under “Your fields”, last saved 3 days ago.")
		}
	}
}

// Blocked storage, damaged links and two tabs in the other engines.
func TestNothingIsLostInEveryEngine(t *testing.T) {
	t.Parallel()
	good := linkOf(t, "broccoli-late-summer")
	built := browsertest.Make(t, nil)
	for _, engine := range webdriver.Engines {
		t.Run(string(engine)+", two tabs and links", func(t *testing.T) {
			s := browsertest.Serve(t, built)
			p := webdriver.Open(t, engine, webdriver.Options{})
			p.Size(820, 1000)
			r := driven(p, s)
			r.open("/")
			r.whole()
			r.Wait("the stations", ready)
			one := p.Tabs()
			p.Tab()
			r.open("/")
			r.whole()
			r.Choose("#f-crop", "okra")
			r.Wait("it to be kept", keptField+`.includes("okra")`)
			p.Switch(one[len(one)-1])
			r.Wait("the other tab's crop", `document.querySelector("#f-crop").value === "okra"`)

			kept := r.text(keptField)
			for i := range 3 {
				at := 1 + i*(len(good)-2)/3
				for _, bad := range []string{good[:at], good[:at] + "0" + good[at:], good[:at] + good[at+1:], good[:at] + "%" + good[at:], strings.Repeat(good, i+2)} {
					p.Do(`location.hash = ` + browsertest.Quote("f="+bad))
					r.Wait("it to be refused", `new Promise((r) => setTimeout(r, 40)).then(() => document.querySelector("#note").textContent.includes("Nothing was loaded"))`)
				}
			}
			assert.Equal(t, "okra", r.text(`document.querySelector("#f-crop").value`))
			assert.Equal(t, kept, r.text(keptField), "what the device keeps")
			r.open("/#f=" + good)
			r.Wait("the link's field", `document.querySelector("#f-crop")?.value === "broccoli" && document.querySelector("#note").textContent.includes("came with a link")`)
			assert.Equal(t, kept, r.text(keptField), "what the device keeps")
		})
		t.Run(string(engine)+", storage blocked", func(t *testing.T) {
			s := browsertest.Serve(t, built)
			p := webdriver.Open(t, engine, webdriver.Options{NoStorage: true})
			p.Size(820, 1000)
			r := driven(p, s)
			r.open("/")
			r.whole()
			r.Wait("the words", `document.querySelector("#strip").innerText.includes("keep nothing")`)
			r.Choose("#f-crop", "carrot")
			assert.Contains(t, r.moved(), "do not lay film here")
		})
	}
}

// What goes wrong around the page, in the other engines too: a download that is cut off, a
// wrong clock, storage that is really full, files too large and too deep, and a new version
// of which half arrives. Each is said, and the field in hand stays.
func TestFaultsInEveryEngine(t *testing.T) {
	t.Parallel()
	built, newer := browsertest.Make(t, nil), browsertest.NextVersion(t, true)
	cut := func(program []byte) func(http.ResponseWriter, *http.Request) bool {
		return func(w http.ResponseWriter, r *http.Request) bool {
			if !strings.Contains(r.URL.Path, "/app-") {
				return false
			}
			w.Header().Set("Content-Type", "application/wasm")
			w.Header().Set("Content-Length", fmt.Sprint(len(program)))
			w.Write(program[:len(program)/2])
			panic(http.ErrAbortHandler)
		}
	}
	for _, engine := range webdriver.Engines {
		t.Run(string(engine), func(t *testing.T) {
			begun := time.Now()
			s := browsertest.Serve(t, built)
			p := webdriver.Open(t, engine, webdriver.Options{})
			p.Size(820, 1000)
			r := driven(p, s)
			crop := func(id string) {
				t.Helper()
				r.Choose("#f-crop", id)
				r.Wait("it to be kept", keptField+`?.includes("`+id+`")`)
			}

			s.Fault(cut(built.Program))
			r.open("/")
			r.Wait("the words", `document.querySelector("#strip").innerText.includes("can be read meanwhile")`)
			assert.Contains(t, r.text(`document.querySelector("#strip").innerText`), "connection")
			s.Fault(nil)
			r.Click("#strip button")
			r.whole()

			for _, year := range []int{1970, 2099} {
				p.Do(fmt.Sprintf(`(() => { const right = window.right ??= Date, off = right.UTC(%d, 0, 1) - right.now();
					window.Date = class extends right { constructor(...a) { if (a.length) super(...a); else super(right.now() + off); } static now() { return right.now() + off; } }; })()`, year))
				crop(map[int]string{1970: "okra", 2099: "eggplant"}[year])
				assert.NotEmpty(t, r.moved())
			}
			p.Do(`window.Date = window.right`)

			r.Wait("the site to be kept", `filmfurrow.status.offline === "ready"`)
			const fill = `(() => { for (let n = 1 << 22; n >= 1; n >>= 1) try { for (;;) localStorage.setItem("fill" + (window.filled = (window.filled ?? 0) + 1), "x".repeat(n)); } catch { } })()`
			p.Do(fill)
			crop("summer-squash") // what can be taken back gives way to it
			p.Do(fill)
			kept := r.text(keptField)
			r.Choose("#f-weeds-pressure", "light")
			r.Wait("that it cannot be kept", `document.body.innerText.includes("does not keep what you type")`)
			assert.Equal(t, "light", r.text(`document.querySelector("#f-weeds-pressure").value`))
			assert.Equal(t, kept, r.text(keptField), "what was kept before stays whole")
			p.Do(`Object.keys(localStorage).forEach((key) => { if (key.startsWith("fill")) localStorage.removeItem(key); })`)
			crop("cucumber")
			r.Wait("the words to go", `!document.body.innerText.includes("does not keep what you type")`)

			r.Wait("the stations", ready)
			r.menu("/fields")
			kept = r.text(keptField)
			for name, file := range map[string]string{
				"too large": `"[".repeat(2 << 20)`,
				"too deep":  `"[".repeat(40000)`,
				"not right": `JSON.stringify({ fields: [{ name: "\u202e".repeat(99), case: {} }] })`,
			} {
				p.Do(`(() => {
					const input = document.querySelector("#fields-file"), list = new DataTransfer();
					list.items.add(new File([` + file + `], "a.json", { type: "application/json" }));
					input.files = list.files;
					input.dispatchEvent(new Event("change", { bubbles: true }));
				})()`)
				says := "is not right"
				if name == "too large" {
					says = "too large to be one of ours"
				}
				r.Wait("a file that is "+name+" to be refused", `document.querySelector("#fields-told").textContent.includes("`+says+`")`)
			}
			assert.Equal(t, kept, r.text(keptField))

			s.Publish(newer)
			s.Fault(cut(newer.Program))
			assert.NotEqual(t, "", r.text(look+`.then(String)`))
			r.Wait("the version to be given up", `navigator.serviceWorker.getRegistration().then((r) => !r.installing && !r.waiting)`)
			assert.Equal(t, "false", r.text(`String(`+offered+`)`), "half a version is not offered")
			r.open("/")
			r.whole()
			assert.Equal(t, "cucumber", r.text(`document.querySelector("#f-crop").value`))
			assert.NotContains(t, r.text(description), next, "nor used")
			t.Logf("%.0f s", time.Since(begun).Seconds())
		})
	}
}
