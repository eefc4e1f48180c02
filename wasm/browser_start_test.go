//go:build !js

package main

import (
	"bytes"
	"fmt"
	"maps"
	"net/http"
	"path"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
)

// onProgram answers requests for the page's program with f and leaves all
// others to the site.
func onProgram(f func(http.ResponseWriter, *http.Request)) func(http.ResponseWriter, *http.Request) bool {
	return func(w http.ResponseWriter, r *http.Request) bool {
		if !strings.Contains(r.URL.Path, "/app-") {
			return false
		}
		f(w, r)
		return true
	}
}

// The whole worked example stands in the HTML: it is read with scripts off.
func TestTextIsReadableWithoutScript(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", NoScript: true})
	assert.NotEmpty(t, p.Text("h1"))
	assert.True(t, p.Visible("h1"))
	assert.Contains(t, p.Text("body"), "switch JavaScript on")
	for _, answer := range []string{"#verdict", "#bed-we-make", "#wait", "#water", "#next"} {
		assert.NotEmpty(t, p.Text(answer), answer)
	}
	assert.False(t, browsertest.Eval[bool](p, `document.querySelector("#strip").checkVisibility()`))
	p.Screenshot("without-script")
	p.Close()
	for _, v := range fieldViews { // each view is whole, with its reasons
		p := b.Tab(browsertest.Tab{Path: v.path, NoScript: true})
		assert.Contains(t, p.Text("h1"), v.shows, v.path)
		if strings.HasPrefix(v.path, "/why/") && v.path != "/why/verdict" && v.path != "/why/water" {
			assert.NotZero(t, browsertest.Eval[int](p, `document.querySelectorAll("#for-against .bars li").length`), v.path)
		}
		p.Close()
	}
}

func TestTextIsReadableWithoutWebAssembly(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Before: `delete globalThis.WebAssembly`, NoWait: true})
	p.WaitText("#strip", "with WebAssembly allowed")
	assert.NotEmpty(t, p.Text("h1"))
	assert.True(t, p.Visible("h1"))
	p.Screenshot("without-webassembly")
}

func TestTextModeAndSearchEngines(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for name, tab := range map[string]browsertest.Tab{
		"asked for":     {Path: "/?wasm=false", NoWait: true},
		"search engine": {Path: "/", Agent: "Mozilla/5.0 (compatible; Somebot/2.1)", NoWait: true},
	} {
		t.Run(name, func(t *testing.T) {
			p := b.Tab(tab)
			p.Wait("text mode", `window.filmfurrow?.status.start === "text"`)
			assert.True(t, p.Visible("h1"))
		})
	}
	for _, asked := range b.Requests() {
		assert.NotEqual(t, ".wasm", path.Ext(asked), "nothing is fetched that will not run")
	}
}

// Whatever is wrong with the program's file, the reader gets the text, a plain
// sentence and a button that works once the fault is gone.
func TestProgramThatDoesNotArrive(t *testing.T) {
	t.Parallel()
	whole := browsertest.Make(t, nil).Program
	for name, c := range map[string]struct {
		fault func(http.ResponseWriter, *http.Request)
		says  string
	}{
		"not there":       {func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNotFound) }, "the site answered 404"},
		"server at fault": {func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusInternalServerError) }, "the site answered 500"},
		"cut off": {func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", "application/wasm")
			w.Header().Set("Content-Length", strconv.Itoa(len(whole)))
			w.Write(whole[:len(whole)/2])
			panic(http.ErrAbortHandler)
		}, "did not arrive whole"},
		"short, and said to be whole": {func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", "application/wasm")
			w.Write(whole[:len(whole)/2])
		}, "damaged"},
		"a page in its place": {func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", "text/html")
			fmt.Fprint(w, "<!DOCTYPE html><title>Sign in to the network</title>")
		}, "damaged"},
		"nothing in it": {func(w http.ResponseWriter, _ *http.Request) { w.Header().Set("Content-Type", "application/wasm") }, "damaged"},
	} {
		t.Run(name, func(t *testing.T) {
			b := browsertest.Open(t)
			b.Fault(onProgram(c.fault))
			p := b.Tab(browsertest.Tab{Path: "/", NoWait: true, Errors: true})
			p.WaitText("#strip", c.says)
			assert.True(t, p.Visible("h1"))
			assert.NotContains(t, p.Text("#strip"), "Error")
			assert.Equal(t, "failed", browsertest.Eval[string](p, `filmfurrow.status.start`))
			b.Fault(nil)
			p.Click("#strip button")
			p.WaitReady()
		})
	}
}

// A host that does not know the file's type sends it as bytes or text; the
// program starts all the same.
func TestProgramUnderAWrongType(t *testing.T) {
	t.Parallel()
	whole := browsertest.Make(t, nil).Program
	for _, kind := range []string{"application/octet-stream", "text/plain"} {
		t.Run(kind, func(t *testing.T) {
			b := browsertest.Open(t)
			b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) {
				w.Header().Set("Content-Type", kind)
				w.Write(whole)
			}))
			p := b.Tab(browsertest.Tab{Path: "/"})
			assert.NotEmpty(t, p.Text("h1"))
		})
	}
}

func TestProgressNeverPassesAHundred(t *testing.T) {
	t.Parallel()
	s := browsertest.Make(t, nil)
	var name string
	for file := range s.Files {
		if strings.HasPrefix(file, "assets/app-") {
			name = file
		}
	}
	packed, err := site.Gzip(s.Program)
	require.NoError(t, err)
	zipped := maps.Clone(s.Files)
	zipped[name+".gz"] = packed

	for _, c := range []struct {
		name  string
		files map[string][]byte
		fault func(http.ResponseWriter, *http.Request) bool
	}{
		{"plain", s.Files, nil},
		{"gzip, its length being that of the packed file", zipped, nil},
		{"no length, in drops", s.Files, onProgram(func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", "application/wasm")
			for part := s.Program; len(part) > 0; {
				n := min(len(part), 400_000)
				w.Write(part[:n])
				w.(http.Flusher).Flush()
				part = part[n:]
				time.Sleep(20 * time.Millisecond)
			}
		})},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := browsertest.Open(t)
			b.PublishFiles(c.files, "")
			b.Fault(c.fault)
			p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `
				window.seen = [];
				new MutationObserver(() => {
					const text = document.querySelector("#strip-percent")?.textContent;
					if (text && text !== window.seen.at(-1)) window.seen.push(text);
				}).observe(document, { childList: true, subtree: true, characterData: true });`})
			seen := browsertest.Eval[[]string](p, `window.seen`)
			require.NotEmpty(t, seen)
			before := -1
			for _, text := range seen {
				number, _, ok := strings.Cut(strings.TrimSpace(text), " %")
				require.True(t, ok, text)
				n, err := strconv.Atoi(number)
				require.NoError(t, err, text)
				assert.GreaterOrEqual(t, n, before)
				assert.LessOrEqual(t, n, 100)
				before = n
			}
			assert.Equal(t, 100, before, "the last word is a hundred")
		})
	}
}

// RFC 3986 §2.1 wants two hexadecimal digits after a percent sign; Go refuses
// an address without them, browsers do not.
func TestBrokenPercentInTheAddress(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, address := range []string{"/#%", "/#p=%%%bad", "/?q=%zz", "/?q=%#%E0%A4%A"} {
		t.Run(address, func(t *testing.T) {
			p := b.Tab(browsertest.Tab{Path: address})
			assert.NotEmpty(t, p.Text("h1"))
			p.Close()
		})
	}
	t.Run("while open", func(t *testing.T) {
		p := b.Page(820, "/")
		for _, hash := range []string{"#%", "#p=%%%bad", "#100%"} {
			p.Do(fmt.Sprintf(`location.hash = %q`, hash))
			p.Wait("the address to be mended", `!/%(?![0-9A-Fa-f]{2})/.test(location.href)`)
		}
		p.Back()
		p.WaitReady()
		p.Close()
	})
}

func TestStorageBlocked(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `
		for (const name of ["localStorage", "sessionStorage"]) {
			Object.defineProperty(window, name, { configurable: true, get() { throw new DOMException("denied", "SecurityError"); } });
		}`})
	assert.NotEmpty(t, p.Text("h1"))
	p.WaitText("#strip", "keep nothing")
	assert.Equal(t, "memory", browsertest.Eval[string](p, `filmfurrow.status.storage`))
	// The stand-in keeps to the Storage interface of the HTML standard.
	assert.Equal(t, []any{nil, "1", 1.0, "a", nil, 0.0}, browsertest.Eval[[]any](p, `(() => {
		localStorage.clear();
		const out = [localStorage.getItem("a")];
		localStorage.setItem("a", 1);
		out.push(localStorage.getItem("a"), localStorage.length, localStorage.key(0), localStorage.key(7));
		localStorage.removeItem("a");
		out.push(localStorage.length);
		return out;
	})()`))
}

// stage is a page with boot.js and nothing of the program: a button mounts a
// copy of the form as the framework does, by replacing the first element.
const stage = `<!DOCTYPE html><html lang="en"><title>Stage</title><link rel="icon" href="data:,"><script src="/%s" data-program="/stage.js"></script><body><main>%s</main>
<script src="/stage.js"></script></body></html>`

const stageForm = `<input id="name" value="was"><input id="untouched" value="same"><textarea id="notes"></textarea>
<select id="crop"><option value="a">A<option value="b">B</select>
<input type="checkbox" id="organic"><input type="radio" name="unit" value="si" checked><input type="radio" name="unit" value="us">
<details id="more"><summary>More</summary>text</details><input name="nameless">`

const stageScript = `window.told = [];
filmfurrow.watchForStart();
window.mount = () => {
	const copy = document.createElement("main");
	copy.innerHTML = document.querySelector("template").innerHTML;
	copy.addEventListener("change", (e) => told.push((e.target.id || e.target.name) + "=" + (e.target.type === "checkbox" ? e.target.checked : e.target.value)));
	document.body.replaceChild(copy, document.body.firstElementChild);
};`

// What is typed while the program is on its way reaches the program's own copy
// of the form, which hears of it as if it were typed then.
func TestTypedBeforeStartSurvives(t *testing.T) {
	t.Parallel()
	s := browsertest.Make(t, nil)
	files := map[string][]byte{"_headers": []byte("/*\n  X-Stage: 1\n"), "404.html": nil, "stage.js": []byte(stageScript)}
	var boot string
	for name, body := range s.Files {
		if strings.HasPrefix(name, "assets/boot-") {
			boot = name
			files[name] = body
		}
	}
	files["index.html"] = []byte(fmt.Sprintf(stage, boot, stageForm) + "<template>" + stageForm + "</template>")
	b := browsertest.Open(t)
	b.PublishFiles(files, "")
	p := b.Tab(browsertest.Tab{Path: "/", NoWait: true})

	p.Type("#name", "ridge")
	p.Type("#notes", "stony at the gate")
	p.Type("[name=nameless]", "x")
	p.Click("#organic")
	p.Click("[name=unit][value=us]")
	p.Click("#more summary")
	p.Type("#name", "ridge field")
	p.Do(`document.querySelector("#name").setSelectionRange(2, 5)`)
	p.Wait("the caret to be known", `new Promise((r) => setTimeout(() => r(true), 50))`)
	p.Do(`mount()`)
	p.Wait("the hand-over", `filmfurrow.status.start === "ready"`)

	assert.Equal(t, []any{"ridge field", "same", "stony at the gate", "a", true, "us", true, "x"}, browsertest.Eval[[]any](p, `[
		document.querySelector("#name").value, document.querySelector("#untouched").value, document.querySelector("#notes").value, document.querySelector("#crop").value,
		document.querySelector("#organic").checked, document.querySelector("[name=unit]:checked").value, document.querySelector("#more").open, document.querySelector("[name=nameless]").value]`))
	assert.ElementsMatch(t, []string{"name=ridge field", "notes=stony at the gate", "organic=true", "unit=us", "nameless=x"}, browsertest.Eval[[]string](p, `told`),
		"the program hears of each change once and of nothing else")
	assert.Equal(t, []any{"name", 2.0, 5.0}, browsertest.Eval[[]any](p, `[document.activeElement.id, document.activeElement.selectionStart, document.activeElement.selectionEnd]`), "focus and caret stay")
}

// A fault in the program ends it; the page must say so and keep what was typed.
// Calling the framework's door without its argument makes a true Go panic.
func TestProgramThatStops(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	p := b.Tab(browsertest.Tab{Path: "/", Errors: true, Stops: true})
	p.WaitOffline()
	p.Do(`localStorage.setItem("film-furrow.test", "kept"); localStorage.setItem("another.app", "theirs")`)
	p.Do(`setTimeout(() => goappNav())`)
	p.WaitText("#strip", "The calculator stopped")
	assert.True(t, p.Visible("h1"))
	assert.Equal(t, []string{"Load again", "Save what I typed", "Start fresh"}, browsertest.Eval[[]string](p, `[...document.querySelectorAll("#strip button")].map((x) => x.textContent)`))
	p.Screenshot("stopped")

	p.Click("#strip button:nth-child(1)")
	p.WaitReady()
	assert.Equal(t, "kept", browsertest.Eval[string](p, `localStorage.getItem("film-furrow.test")`))

	p.Do(`setTimeout(() => goappNav())`)
	p.WaitText("#strip", "The calculator stopped")
	p.Click("#strip button:nth-child(3)")
	p.Wait("a fresh start", `window.filmfurrow?.status.start === "ready" && localStorage.getItem("film-furrow.test") === null`)
	assert.Equal(t, "theirs", browsertest.Eval[string](p, `localStorage.getItem("another.app")`), "what belongs to others stays")
}

// On the page itself: what is chosen and typed while the program is on its way
// is what the program works with, and what the device keeps.
func TestChosenBeforeStartIsAnswered(t *testing.T) {
	t.Parallel()
	program := browsertest.Make(t, nil).Program
	release := make(chan struct{})
	b := browsertest.Open(t)
	b.Fault(onProgram(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "application/wasm")
		<-release
		w.Write(program)
	}))
	p := b.Tab(browsertest.Tab{Path: "/details", NoWait: true})
	p.WaitText("#strip", "waking up")
	p.Do(`document.querySelector("#more-weeds").open = true`)
	p.Type("#f-weeds-pressure", "light")
	p.Do(`for (let el = document.querySelector("#more-field"); el; el = el.parentElement?.closest("details")) el.open = true`)
	p.Wait("the field to be shown", `document.querySelector("#f-field-bed-length-m").checkVisibility()`)
	p.Type("#f-field-bed-length-m", "321")
	state := `[document.querySelector("#f-weeds-pressure").value, document.querySelector("#f-field-bed-length-m").value, document.querySelector("#more-field").open, document.activeElement.id]`
	want := []any{"light", "321", true, "f-field-bed-length-m"}
	assert.Equal(t, want, browsertest.Eval[[]any](p, state))
	close(release)
	p.WaitWhole()
	assert.Equal(t, want, browsertest.Eval[[]any](p, state))
	p.Wait("the program to have taken it", `!document.querySelector("#main").innerText.includes("A worked example")`)
	p.Reload()
	p.WaitWhole()
	p.Wait("the device to have kept it", `document.querySelector("#f-weeds-pressure").value === "light" && document.querySelector("#f-field-bed-length-m").value === "321"`)
}

// everything uses each control of the page once, as one who cannot wait: every
// option of every list, wrong and right figures, every button but those that leave
// the page or ask its owner.
const everything = `(async () => {
	const wait = () => new Promise((r) => setTimeout(r));
	const told = (el) => { for (const kind of ["input", "change"]) el.dispatchEvent(new Event(kind, { bubbles: true })); return wait(); };
	document.querySelectorAll("details").forEach((d) => { d.open = true; });
	let count = 0;
	for (const el of document.querySelectorAll("main input, main select")) {
		if (!el.isConnected || el.type === "file") continue;
		count++;
		if (el.tagName === "SELECT") {
			const was = el.value;
			for (const o of el.options) { el.value = o.value; await told(el); }
			el.value = was;
		} else if (el.type === "checkbox") {
			for (const on of [true, false]) { el.checked = on; await told(el); }
		} else {
			const was = el.value;
			for (const text of el.type === "date" ? ["2027-05-01", ""] : ["-", "3", "", "14853"]) { el.value = text; await told(el); }
			el.value = was;
		}
		await told(el);
	}
	for (const el of document.querySelectorAll("button")) {
		if (!el.isConnected || ["share-print", "place-here"].includes(el.id) || el.closest("#strip")) continue;
		count++;
		el.click();
		await wait();
	}
	document.querySelector("#units-US").click();
	return count;
})()`

// Whatever is done before the first answers have been worked out, and in whatever
// haste, stops nothing, is kept, and is answered.
func TestThePageTakesWhateverIsDone(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/details", Before: `HTMLAnchorElement.prototype.click = () => {}; window.print = () => {}; navigator.clipboard.writeText = () => Promise.resolve();`})
	// On a slow machine all controls of the form take longer than one step may.
	use := func() (used int) {
		p.Do(`window.used = -1; ` + everything + `.then((n) => { window.used = n; })`)
		for range 8 {
			if used = browsertest.Eval[int](p, `new Promise((done) => { const until = Date.now() + 20000; const look = () => window.used >= 0 || Date.now() > until ? done(window.used) : setTimeout(look, 100); look(); })`); used >= 0 {
				return used
			}
		}
		require.Fail(t, "the controls are not done with")
		return 0
	}
	used := use()
	for _, path := range []string{"/fields", "/share", "/buy", "/lay", "/water", "/year", "/why/film", "/"} {
		p.Do(`history.pushState(null, "", ` + quoted(path) + `); dispatchEvent(new PopStateEvent("popstate"))`)
		p.Wait("the view "+path, `document.querySelector("h1, #place-open") !== null`)
		used += use()
	}
	assert.Greater(t, used, 150)
	p.Wait("a sentence to fill", `document.querySelector("#f-crop") !== null`)
	p.Choose("#f-crop", "carrot")
	p.Choose("#f-weeds-pressure", "light")
	p.Wait("it to be kept", keptField+`.includes("carrot")`)
	assert.Equal(t, "ready", browsertest.Eval[string](p, `filmfurrow.status.start`), "nothing stopped")
	p.WaitWhole()
	assert.Equal(t, "ready", browsertest.Eval[string](p, `filmfurrow.status.start`), "nothing stopped")
}

// What is made before the page takes keys is the form; the answers of the worked
// example stay as they were prerendered, and all else is made after.
func TestFewElementsAreMadeAtFirst(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `
		window.made = 0;
		const make = Document.prototype.createElement;
		Document.prototype.createElement = function (...of) { window.made++; return make.apply(this, of); };
		document.addEventListener("filmfurrow", (e) => { if (e.detail.start === "ready") window.first ??= window.made; });`})
	first, all := browsertest.Eval[int](p, `window.first`), browsertest.Eval[int](p, `window.made`)
	t.Logf("%d elements made when the page is ready, %d when it is whole", first, all)
	assert.Less(t, first, 300)
	assert.Less(t, all, 600)
}

// What the program draws is never the largest paint: that is the prerendered text, on a
// slow device and over a line that brings the page in two pieces too.
func TestTheLargestPaintIsTheFirstText(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	text := browsertest.Make(t, nil).Files["index.html"]
	cut := bytes.Index(text, []byte(`id="f-soil-texture"`)) // within the sentence
	require.Positive(t, cut)
	b.Fault(func(w http.ResponseWriter, r *http.Request) bool {
		if r.URL.Path != "/" {
			return false
		}
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		w.Write(text[:cut])
		w.(http.Flusher).Flush()
		time.Sleep(time.Second)
		w.Write(text[cut:])
		return true
	})
	p := b.Tab(browsertest.Tab{Width: 412, Height: 823, Path: "/", NoWait: true, BitsPerSecond: 40e6, Latency: 50 * time.Millisecond, Slow: 4,
		Before: `window.largest = 0; new PerformanceObserver((list) => { for (const e of list.getEntries()) largest = e.startTime; }).observe({ type: "largest-contentful-paint", buffered: true });`})
	p.WaitReady()
	p.Wait("what is drawn to be painted", `new Promise((r) => setTimeout(r, 500, true))`)
	times := browsertest.Eval[[2]float64](p, `[largest, performance.getEntriesByType("resource").find((e) => e.name.endsWith(".wasm")).responseEnd]`)
	t.Logf("largest paint %.0f ms, program there %.0f ms", times[0], times[1])
	assert.Positive(t, times[0])
	assert.Less(t, times[0], times[1], "the page is painted anew, and larger")
}
