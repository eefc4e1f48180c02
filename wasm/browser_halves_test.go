//go:build !js

package main

import (
	"maps"
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/wasm/browsertest"
)

// onRest answers requests for the second half of the program with f and leaves all
// others to the site.
func onRest(f func(http.ResponseWriter, *http.Request)) func(http.ResponseWriter, *http.Request) bool {
	return func(w http.ResponseWriter, r *http.Request) bool {
		if !strings.Contains(r.URL.Path, "/rest-") {
			return false
		}
		f(w, r)
		return true
	}
}

const started = `window.filmfurrow?.status.start === "ready"`

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

// When both halves have come, memory holds what the whole program's would: each byte of
// its data, the table of functions with it, which the halves count when they come.
func TestTheHalvesMakeTheMemory(t *testing.T) {
	t.Parallel()
	built := browsertest.Make(t, nil)
	b := browsertest.Open(t)
	files := maps.Clone(built.Files)
	files["first.wasm"], files["rest.wasm"], files["whole.wasm"] = built.First, built.Rest, built.Program
	b.PublishFiles(files, "")
	p := b.Tab(browsertest.Tab{Path: "/about", NoWait: true})
	got := browsertest.Eval[struct{ Bytes, Set, Before, After int }](p, `(async () => {
		const make = async (file, more) => {
			const module = await WebAssembly.compile(await (await fetch(file)).arrayBuffer());
			const gojs = {};
			for (const taken of WebAssembly.Module.imports(module)) if (taken.module === "gojs") gojs[taken.name] = () => {};
			return (await WebAssembly.instantiate(module, { gojs, ...more })).exports;
		};
		const whole = new Uint8Array((await make("/whole.wasm")).mem.buffer);
		const first = await make("/first.wasm");
		const memory = new Uint8Array(first.mem.buffer);
		const other = () => whole.reduce((n, byte, i) => n + (byte !== memory[i]), 0);
		const before = other();
		await make("/rest.wasm", { first });
		return { Bytes: memory.length, Set: whole.reduce((n, byte) => n + (byte !== 0), 0), Before: before, After: whole.length === memory.length ? other() : -1 };
	})()`)
	t.Logf("%d bytes of memory, %d of them set at the start; %d come with the second half", got.Bytes, got.Set, got.Before)
	assert.Greater(t, got.Set, 500_000)
	assert.Greater(t, got.Before, 10_000, "what only the second half needs comes with it")
	assert.Zero(t, got.After, "bytes that differ from the whole program's")
}

// The form answers to its half of the program alone: whatever is done before the
// other half has come is kept, and answered when it comes.
func TestTheFirstHalfTakesWhateverIsDone(t *testing.T) {
	t.Parallel()
	rest := browsertest.Make(t, nil).Rest
	release := make(chan struct{})
	b := browsertest.Open(t)
	b.Fault(onRest(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "application/wasm")
		<-release
		w.Write(rest)
	}))
	p := b.Tab(browsertest.Tab{Path: "/", NoWait: true, Before: `HTMLAnchorElement.prototype.click = () => {}; navigator.clipboard.writeText = () => Promise.resolve();`})
	p.Wait("the first half to run", started)
	assert.False(t, browsertest.Eval[bool](p, `filmfurrow.status.rest`))
	for _, answer := range []string{"film", "thickness", "bed", "tape", "wait", "water"} {
		assert.NotEmpty(t, p.Text("#"+answer+" .number"), "the worked example is answered: %s", answer)
	}
	assert.Greater(t, browsertest.Eval[int](p, everything), 100)
	p.Choose("#f-crop", "carrot")
	p.Choose("#f-weeds-pressure", "light")
	p.WaitText(".waiting", "Working out the answers for your field")
	p.Wait("it to be kept", keptField+`.includes("carrot")`)
	assert.Equal(t, "ready", browsertest.Eval[string](p, `filmfurrow.status.start`), "nothing stopped")
	close(release)
	p.WaitWhole()
	p.WaitText("#verdict h2", "Do not lay film here")
	assert.NotContains(t, p.Text("#field"), "Working out the answers for your field")
	p.Wait("the sections", `document.querySelector("#shopping table") !== null && document.querySelector("#map-plot") !== null`)
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
	assert.Less(t, first, 1100)
	assert.Greater(t, all, 2*first)
}

// A line that breaks between the halves leaves the form and the example, says so,
// and tries again.
func TestASecondHalfThatDoesNotArrive(t *testing.T) {
	t.Parallel()
	b := browsertest.OpenKeeping(t)
	b.Fault(onRest(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusBadGateway) }))
	p := b.Tab(browsertest.Tab{Path: "/", NoWait: true, Errors: true})
	p.WaitText("#strip", "Half of the calculator did not arrive")
	p.Wait("the site to be kept", `filmfurrow.status.offline !== "unknown"`)
	p.WaitText("#strip", "Half of the calculator did not arrive")
	p.Choose("#f-crop", "carrot")
	assert.NotEmpty(t, p.Text("#film .number"))
	b.Fault(nil)
	p.Click("#strip button")
	p.WaitWhole()
	p.WaitText("#verdict h2", "Do not lay film here")
	p.Wait("the strip to be done with it", `!document.querySelector("#strip").innerText.includes("did not arrive")`)
}
