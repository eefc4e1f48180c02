//go:build !js

package main

import (
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"filmfurrow/app"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
)

// The benchmarks here load the built site in Chromium on a slowed-down machine.
// A shared machine makes single times worthless, so each benchmark compares two
// things turn by turn, in alternating order, and prints every round:
//
//	go test ./wasm -run '^$' -bench 'Start|Typing|Moved|Inputs|Gaps|Turning|Memory' -benchtime 5x -timeout 60m

// packed is a site with a brotli copy of every text and of the program, as a
// public host sends them.
func packed(b *testing.B, built *site.Site) map[string][]byte {
	b.Helper()
	files := maps.Clone(built.Files)
	for name, body := range built.Files {
		if ext := path.Ext(name); ext == ".png" || name == "_headers" {
			continue
		}
		br, err := site.Brotli(body)
		if err != nil {
			b.Fatal(err)
		}
		files[name+".br"] = br
	}
	return files
}

// startTimes are milliseconds after the navigation began.
type startTimes struct{ Painted, Arrived, Mounted float64 }

func startOnce(b *testing.B, files map[string][]byte) startTimes {
	b.Helper()
	reader := browsertest.OpenKeeping(b)
	reader.PublishFiles(files, "")
	p := reader.Tab(browsertest.Tab{
		Width: 390, Path: "/", Whole: true, BitsPerSecond: 1.6e6, Latency: 150 * time.Millisecond, Slow: 4,
		Before: `document.addEventListener("filmfurrow", (e) => { if (e.detail.start === "ready") window.mounted ??= performance.now(); });`,
	})
	times := browsertest.Eval[startTimes](p, `({
		Painted: performance.getEntriesByName("first-contentful-paint")[0].startTime,
		Arrived: performance.getEntriesByType("resource").find((e) => e.name.endsWith(".wasm")).responseEnd,
		Mounted: window.mounted,
	})`)
	p.Close()
	return times
}

// hello is the untouched framework's smallest program: it shows one word. It is
// served with the very pages, scripts and styles of ours, so that only the program
// differs.
const hello = `package main

import "github.com/maxence-charriere/go-app/v9/pkg/app"

type hello struct{ app.Compo }

func (h *hello) Render() app.UI { return app.Div().Text("Hello") }

func main() {
	for _, path := range []string{%s} {
		app.Route(path, &hello{})
	}
	app.RunWhenOnBrowser()
}
`

// helloProgram compiles it as ours is compiled, but with the framework whole.
func helloProgram(b *testing.B) []byte {
	b.Helper()
	var paths []string
	for _, p := range app.Pages() {
		paths = append(paths, fmt.Sprintf("%q", p.Path))
	}
	// Below the module's folder, so that it finds the framework of go.mod.
	if err := os.MkdirAll("../.build", 0o755); err != nil {
		b.Fatal(err)
	}
	dir, err := os.MkdirTemp("../.build", "hello-")
	if err != nil {
		b.Fatal(err)
	}
	defer os.RemoveAll(dir)
	if err := os.WriteFile(filepath.Join(dir, "main.go"), fmt.Appendf(nil, hello, strings.Join(paths, ", ")), 0o600); err != nil {
		b.Fatal(err)
	}
	cmd := exec.Command("go", "build", "-trimpath", "-buildvcs=false", "-ldflags=-s -w -buildid=", "-o", "hello.wasm", ".")
	cmd.Dir, cmd.Env = dir, append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOFLAGS=")
	if out, err := cmd.CombinedOutput(); err != nil {
		b.Fatalf("%v: %s", err, out)
	}
	program, err := os.ReadFile(filepath.Join(dir, "hello.wasm"))
	if err != nil {
		b.Fatal(err)
	}
	return program
}

// BenchmarkStart compares the first visit to the whole product with that to the
// untouched framework's hello in the same pages: 1.6 Mbit/s, 150 ms, main thread
// four times slower.
func BenchmarkStart(b *testing.B) {
	ours := packed(b, browsertest.Make(b, nil))
	theirs := helloProgram(b)
	bare := packed(b, browsertest.Make(b, func(o *site.Options) { o.Program = theirs }))
	var painted, mounted, ratios []float64
	b.ResetTimer()
	for i := range b.N {
		var t, w startTimes
		if i%2 == 0 {
			t, w = startOnce(b, ours), startOnce(b, bare)
		} else {
			w, t = startOnce(b, bare), startOnce(b, ours)
		}
		painted, mounted, ratios = append(painted, t.Painted), append(mounted, t.Mounted), append(ratios, t.Mounted/w.Mounted)
		b.Logf("round %d: ours painted %.0f, arrived %.0f, mounted %.0f ms; the framework's hello %.0f, %.0f, %.0f ms; ratio %.2f",
			i+1, t.Painted, t.Arrived, t.Mounted, w.Painted, w.Arrived, w.Mounted, t.Mounted/w.Mounted)
	}
	b.ReportMetric(median(painted), "ms-painted")
	b.ReportMetric(median(mounted), "ms-mounted")
	b.ReportMetric(median(ratios), "mounted/hello")
	b.ReportMetric(0, "ns/op")
}

// BenchmarkGaps measures what a reader would feel while the page works out what takes
// longest: the soil's warmth of another place, and the decision's turning points after
// it; main thread four times slower. The longest time between two frames is the
// machine's doing too, so beside it stands that of the same page at rest in the same
// round; the longest task is the page's own (W3C Long Tasks: one of 50 ms or more).
func BenchmarkGaps(b *testing.B) {
	type felt struct{ Gap, Task float64 }
	reader := browsertest.OpenKeeping(b)
	p := reader.Whole(820, "/details")
	p.WaitOffline()
	p.Slow(4)
	feel := func(act, until string) felt {
		return browsertest.Eval[felt](p, fmt.Sprintf(`new Promise((done) => {
			let last = performance.now(), longest = 0, task = 0, began = last;
			const tasks = new PerformanceObserver((list) => list.getEntries().forEach((e) => { if (e.startTime >= began) task = Math.max(task, e.duration); }));
			tasks.observe({ type: "longtask" });
			const frame = (now) => {
				longest = Math.max(longest, now - last);
				last = now;
				if (!((%s) && now - began > 3000 || now - began > 25000)) return requestAnimationFrame(frame);
				tasks.disconnect();
				done({ Gap: longest, Task: task });
			};
			requestAnimationFrame((now) => { last = began = now; %s; requestAnimationFrame(frame); });
		})`, until, act))
	}
	var worked, rests, tasks []float64
	b.ResetTimer()
	for i := range b.N {
		rest := feel("", "true")
		// The event itself is one key's work, measured by BenchmarkTyping; the slices follow it.
		place := []string{"clay", "sand"}[i%2]
		soil := feel(fmt.Sprintf(`setTimeout(() => { const el = document.querySelector("#f-soil-texture"); el.value = %q; el.dispatchEvent(new Event("change", { bubbles: true })); })`, place), `!document.querySelector("#verdict .waiting")`)
		b.Logf("round %d: longest gap %.0f ms while the soil is worked out, %.0f ms at rest; longest task %.0f and %.0f ms, 0 where none took 50",
			i+1, soil.Gap, rest.Gap, soil.Task, rest.Task)
		worked, rests, tasks = append(worked, soil.Gap), append(rests, rest.Gap), append(tasks, soil.Task)
	}
	b.ReportMetric(median(worked), "ms-gap")
	b.ReportMetric(median(rests), "ms-rest")
	b.ReportMetric(median(tasks), "ms-task")
	b.ReportMetric(0, "ns/op")
}

// typingField is the field that the benchmarks type into: one on which all the
// answers depend, the tape's hydraulics with them.
const typingField = "#f-field-bed-length-m"

// painted is a promise of how long it takes from the next input of a field to the
// paint of the last of the answers that it changes, and of all that it causes.
func painted(field string) string {
	return fmt.Sprintf(`(() => {
		const field = document.querySelector(%q);
		field.focus({ preventScroll: true });
		window.took = new Promise((done) => {
			let answers = 0, all = 0, began = 0;
			const watch = (el, painted, but) => {
				const seen = new MutationObserver((list) => list.every((r) => (r.target.closest ? r.target : r.target.parentElement)?.closest(but)) || requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = () => painted(performance.now()); c.port2.postMessage(0); }));
				seen.observe(el, { subtree: true, childList: true, characterData: true, attributes: true });
				return seen;
			};
			const seen = [watch(document.querySelector("#moved"), (t) => { answers = t; }, ".change, details"), watch(document.body, (t) => { all = t; }, "nothing")];
			for (const kind of ["input", "change"]) field.addEventListener(kind, (e) => { began ||= e.timeStamp; }, { capture: true, once: true });
			setTimeout(() => { for (const s of seen) s.disconnect(); done({ Answers: answers && began ? answers - began : -1, All: all && began ? all - began : -1 }); }, 1500);
		});
	})()`, field)
}

// paintedKey is what such a promise brings, in milliseconds; -1 where nothing changed.
type paintedKey struct{ Answers, All float64 }

// loopTime is the time that a plain loop of JavaScript takes on the page's thread: a
// yardstick for the machine.
const loopTime = `(() => { const t = performance.now(); let x = 0; for (let i = 0; i < 2e6; i++) x = (x * 31 + i) % 1000003; return performance.now() - t + x * 0; })()`

// BenchmarkTyping types lengths of beds, 150 to 600 ft, digit by digit. It measures
// from a key to the paint of the last of the answers that it changes (verdict, figures,
// reasons and how firm they are), and to the last paint of all that it causes, such as
// the balances, what would change an answer, and the sections further down, which
// wait until the typing rests; with the main thread four times slower.
func BenchmarkTyping(b *testing.B) {
	reader := browsertest.OpenKeeping(b)
	p := reader.Whole(820, "/details")
	p.WaitOffline()
	p.Do(`for (let el = document.querySelector("` + typingField + `"); el; el = el.parentElement) if (el.tagName === "DETAILS") el.open = true`)
	p.Slow(4)
	var answers, all, loops []float64
	b.ResetTimer()
	for i := range b.N {
		var round, whole []float64
		for n := range 8 {
			p.Do(fmt.Sprintf(`document.querySelector(%q).select()`, typingField))
			for _, key := range fmt.Sprint(150 + 50*n + 7*i%50) {
				p.Do(painted(typingField))
				p.Press(string(key))
				took := browsertest.Eval[paintedKey](p, `window.took`)
				if took.Answers >= 0 {
					round = append(round, took.Answers)
				}
				if took.All >= 0 {
					whole = append(whole, took.All)
				}
			}
		}
		loop := browsertest.Eval[float64](p, loopTime)
		if len(round) == 0 {
			b.Fatal("no key changed the answers")
		}
		b.Logf("round %d: answers after %d keys of 24, p50 %.0f ms, p95 %.0f ms, longest %.0f ms; all below p50 %.0f ms; loop %.0f ms",
			i+1, len(round), median(round), quantile(round, 0.95), slices.Max(round), median(whole), loop)
		answers, all, loops = append(answers, round...), append(all, whole...), append(loops, loop)
	}
	b.ReportMetric(median(answers), "ms-p50")
	b.ReportMetric(quantile(answers, 0.95), "ms-p95")
	b.ReportMetric(median(all), "ms-all-p50")
	b.ReportMetric(median(answers)/median(loops), "p50/loop")
	b.ReportMetric(0, "ns/op")
}

// BenchmarkMoved changes the weeds and the planting day on the first view, main thread
// four times slower, and measures until what moved is painted and the page's longest
// task (wanted: at most 1 s and 200 ms); and, on a first visit, from the choice of a
// place by its zip code until its answers stand (wanted: at most 5 s).
func BenchmarkMoved(b *testing.B) {
	var moved, tasks, own []float64
	for range b.N {
		reader := browsertest.Open(b)
		p := reader.Tab(browsertest.Tab{Path: "/", Whole: true, Before: `window.tasks = []; new PerformanceObserver((list) => { for (const t of list.getEntries()) tasks.push(t.duration); }).observe({ type: "longtask" });`})
		p.Wait("the stations", ready)
		p.Slow(4)
		p.Click("#place-open")
		p.Type("#f-place", "14850")
		p.Wait("a station", `document.querySelector(".results .result") !== null`)
		p.Do(`window.from = performance.now(); document.querySelector(".results .result").click()`)
		p.Wait("its answers", `!document.querySelector("#verdict .waiting") && /place/.test(document.querySelector("#moved").innerText) && (window.own ||= performance.now() - from)`)
		own = append(own, browsertest.Eval[float64](p, `window.own`))
		p.WaitDrawn()
		p.Do(`window.tasks.length = 0`)
		for _, change := range []struct{ field, value, says string }{{"#f-weeds-pressure", "light", "weeds"}, {"#f-plant-on", "2027-06-20", "planting day"}, {"#f-weeds-pressure", "heavy", "weeds"}} {
			p.Do(fmt.Sprintf(`window.took = new Promise((done) => {
				const el = document.querySelector(%q), from = performance.now();
				new MutationObserver((_, seen) => { if (document.querySelector("#moved").innerText.includes(%q)) { seen.disconnect(); requestAnimationFrame(() => setTimeout(() => done(performance.now() - from))); } }).observe(document.querySelector("#moved"), { subtree: true, childList: true, characterData: true, attributes: true });
				el.value = %q; el.dispatchEvent(new Event("change", { bubbles: true }));
			})`, change.field, change.says, change.value))
			moved = append(moved, browsertest.Eval[float64](p, `window.took`))
			p.WaitDrawn()
		}
		tasks = append(tasks, browsertest.Eval[float64](p, `Math.max(0, ...window.tasks)`))
		p.Close()
	}
	b.ReportMetric(quantile(moved, 0.95), "ms-moved-p95")
	b.ReportMetric(slices.Max(tasks), "ms-task")
	b.ReportMetric(median(own), "ms-own-answers")
	b.ReportMetric(0, "ns/op")
}

// BenchmarkInputs changes every control of the form once and measures from the change
// to the paint of the first of the answers that follows it or, where the soil's warmth
// must be worked out anew, of the words that say so; main thread four times slower.
func BenchmarkInputs(b *testing.B) {
	reader := browsertest.OpenKeeping(b)
	p := reader.Whole(820, "/details")
	p.WaitOffline()
	p.Do(unfold)
	p.Wait("what was unfolded to be laid out", `new Promise((r) => setTimeout(() => r(true), 2000))`)
	p.Slow(4)
	ids := browsertest.Eval[[]string](p, `[...document.querySelectorAll(".more-all input, .more-all select")].filter((el) => el.id.startsWith("f-") && el.type !== "search").map((el) => "#" + el.id)`)
	var all []float64
	b.ResetTimer()
	for i := range b.N {
		var took []float64
		slow := ""
		for _, id := range ids {
			p.WaitDrawn() // where the soil is worked out already, the words that say so stand
			ms := browsertest.Eval[float64](p, fmt.Sprintf(`new Promise((done) => {
				const el = document.querySelector(%q);
				const was = el.value;
				let began = 0;
				const seen = new MutationObserver((list) => {
					const later = (n) => (n.closest ? n : n.parentElement)?.closest(".change, details"); // of the case before
					if (list.every((r) => later(r.target) || r.type === "childList" && [...r.addedNodes, ...r.removedNodes].every((n) => n.matches?.(".change, details")))) return;
					seen.disconnect();
					requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = () => done(performance.now() - began); c.port2.postMessage(0); });
				});
				setTimeout(() => { seen.disconnect(); done(-1); }, 900);
				seen.observe(document.querySelector("#moved"), { subtree: true, childList: true, characterData: true, attributes: true });
				if (el.type === "checkbox") el.checked = !el.checked;
				else if (el.tagName === "SELECT") el.selectedIndex = (el.selectedIndex + 1) %% el.options.length;
				else if (el.type === "date") el.value = "2027-06-0" + (1 + %d %% 9);
				else el.value = was && !isNaN(was) ? String(Number(was) + 1) : "5";
				began = performance.now();
				for (const kind of ["input", "change"]) el.dispatchEvent(new Event(kind, { bubbles: true }));
			}).then((ms) => new Promise((r) => setTimeout(() => r(ms), 300)))`, id, i))
			if ms < 0 {
				continue // it changes no answer
			}
			if took = append(took, ms); ms > 100 {
				slow += fmt.Sprintf(" %s %.0f", id, ms)
			}
		}
		all = append(all, took...)
		b.Logf("round %d: %d of %d controls changed the answers: p50 %.0f ms, p95 %.0f ms; above 100 ms:%s; loop %.0f ms",
			i+1, len(took), len(ids), median(took), quantile(took, 0.95), slow, browsertest.Eval[float64](p, loopTime))
	}
	b.ReportMetric(median(all), "ms-p50")
	b.ReportMetric(quantile(all, 0.95), "ms-p95")
	b.ReportMetric(0, "ns/op")
}

// BenchmarkAllTurningPoints measures on a quiet page, not slowed down, from the example's
// answers until the first of what would change them stand, and until all do: each input
// that changes the ground needs a year of the soil's warmth for every value tried.
func BenchmarkAllTurningPoints(b *testing.B) {
	var first, all []float64
	for range b.N {
		reader := browsertest.Open(b)
		p := reader.Tab(browsertest.Tab{Path: "/why/film", Whole: true, Studies: true, Before: `document.addEventListener("filmfurrow", (e) => { if (e.detail.start === "ready") window.began ??= performance.now(); });`})
		p.Do(`window.took = [0, 0]; setInterval(() => {
			const text = document.querySelector("main").textContent;
			if (!text.includes("Looking for what would change it")) took[0] ||= performance.now() - began;
			if (took[0] && !text.includes("Still trying other")) took[1] ||= performance.now() - began;
		}, 50)`)
		var took [2]float64
		for took[1] == 0 {
			time.Sleep(time.Second)
			took = browsertest.Eval[[2]float64](p, `window.took`)
		}
		first, all = append(first, took[0]), append(all, took[1])
		p.Close()
	}
	b.ReportMetric(median(first), "ms-first")
	b.ReportMetric(median(all), "ms-all")
	b.ReportMetric(0, "ns/op")
}

// BenchmarkMemory changes the case two thousand times and tells how much the
// program's memory has grown since all that follows the start was done.
func BenchmarkMemory(b *testing.B) {
	reader := browsertest.OpenKeeping(b)
	p := reader.Whole(820, "/details")
	p.WaitOffline()
	for range b.N {
		mounted := browsertest.Eval[float64](p, `filmfurrow.memory()`)
		p.Wait("the study to end", `!document.body.textContent.includes("Still trying other")`)
		rest := browsertest.Eval[float64](p, `filmfurrow.memory()`)
		// The first changes fill what is kept for good, such as the parts' texts.
		var after []float64
		for part := range 80 {
			now := browsertest.Eval[float64](p, fmt.Sprintf(`(async () => {
				const field = document.querySelector(%q);
				for (let i = 0; i < 25; i++) {
					field.value = String(100 + (%d + i) %% 50);
					field.dispatchEvent(new Event("input", { bubbles: true }));
					field.dispatchEvent(new Event("change", { bubbles: true }));
					await new Promise((r) => setTimeout(r, 30));
				}
				return filmfurrow.memory();
			})()`, typingField, part*25))
			after = append(after, now)
		}
		b.Logf("memory: mounted %.0f, when all is studied %.0f, after 500 changes %.0f, after 2,000 changes %.0f bytes", mounted, rest, after[19], after[79])
		b.ReportMetric(mounted, "B-mounted")
		b.ReportMetric(rest, "B-studied")
		b.ReportMetric(after[19], "B-500")
		b.ReportMetric(after[79], "B-2000")
	}
	b.ReportMetric(0, "ns/op")
}

func median(values []float64) float64 { return quantile(values, 0.5) }

func quantile(values []float64, q float64) float64 {
	sorted := slices.Sorted(slices.Values(values))
	return sorted[min(len(sorted)-1, int(q*float64(len(sorted))))]
}

// How long the page takes into another language and back on a slow device: the first time,
// with the catalogue to fetch and to read, and then again.
func BenchmarkLanguage(b *testing.B) {
	var first, again, back []float64
	for range b.N {
		reader := browsertest.Open(b)
		for _, path := range []string{"/", "/lay", "/water", "/why/film"} {
			p := reader.Tab(browsertest.Tab{Path: path, Whole: true, Before: `localStorage.setItem("film-furrow/language", "en")`})
			p.WaitDrawn()
			p.Slow(4)
			turn := func(to string) float64 {
				return browsertest.Eval[float64](p, fmt.Sprintf(`new Promise((done) => {
					const from = performance.now();
					document.addEventListener("filmfurrow-language", () => requestAnimationFrame(() => setTimeout(() => done(performance.now() - from))), { once: true });
					document.querySelector('[data-language=%q]').click();
				})`, to))
			}
			first = append(first, turn("es"))
			back = append(back, turn("en"))
			again = append(again, turn("es"))
			p.Close()
		}
	}
	b.ReportMetric(slices.Max(first), "ms-first")
	b.ReportMetric(slices.Max(again), "ms-again")
	b.ReportMetric(slices.Max(back), "ms-back")
	b.ReportMetric(0, "ns/op")
	b.Logf("first %.0f, again %.0f, back %.0f", first, again, back)
}

// BenchmarkYear opens a file with a year of daily entries, 365 rows of low, high, rain and minutes,
// beside the same field without them, turn by turn, main thread four times slower. It measures from
// the choice of the file to the paint of what it said, then from the press that opens the field to
// the page's rest, and from there into the view of water, with the account of all its days; and a plain loop as a yardstick.
// Wanted: a year costs at most 100 ms more than none. A link holds no year: it is too long.
func BenchmarkYear(b *testing.B) {
	places, err := normals.Embedded()
	if err != nil {
		b.Fatal(err)
	}
	data, err := os.ReadFile("../testdata/cases/strawberry-autumn.json")
	if err != nil {
		b.Fatal(err)
	}
	c, err := casefile.Decode(data, places)
	if err != nil {
		b.Fatal(err)
	}
	a, err := rules.Advise(c)
	if err != nil {
		b.Fatal(err)
	}
	rows := make([]field.DayRow, 365)
	for i := range rows {
		row := &rows[i]
		row.On = a.WaitPlan.PlantOn.Plus(unit.Days(i - 20))
		row.Values[field.DayLow], row.Values[field.DayHigh] = unit.Known(float64(5+i%7)), unit.Known(float64(15+i%11))
		row.Values[field.DayRain], row.Values[field.DayRun] = unit.Known(float64(i%5)), unit.Known(float64(20+i%30))
	}
	full := c.WithDays(c.Days.With(rows), a.WaitPlan.LayOn, a.Facts.Film.Key())
	files := map[string]string{
		"Year": string(casefile.EncodeFields([]casefile.Field{{Name: "Year", Case: full}})),
		"None": string(casefile.EncodeFields([]casefile.Field{{Name: "None", Case: c}})),
	}
	today := a.WaitPlan.PlantOn.Plus(200).String()
	p := browsertest.Open(b).Tab(browsertest.Tab{Path: "/fields", Whole: true, Before: `localStorage.setItem("test/day", "` + today + `");` + settableClock})
	p.WaitDrawn()
	p.Slow(4)
	// took is from what is done until nothing has changed for a second, and the long tasks in it.
	type took struct{ Time, Tasks, Longest float64 }
	once := func(do string) took {
		p.Do(fmt.Sprintf(`window.took = new Promise((done) => {
			const from = performance.now(), tasks = [0];
			let last = from;
			const timing = new PerformanceObserver((list) => { for (const t of list.getEntries()) tasks.push(t.duration); });
			timing.observe({ type: "longtask" });
			const seen = new MutationObserver(() => requestAnimationFrame(() => setTimeout(() => { last = performance.now(); })));
			seen.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
			const rest = setInterval(() => {
				if (performance.now() - last < 1000) return;
				clearInterval(rest); seen.disconnect(); timing.disconnect();
				done({ Time: last - from, Tasks: tasks.reduce((a, b) => a + b), Longest: Math.max(...tasks) });
			}, 100);
			%s
		})`, do))
		return browsertest.Eval[took](p, `window.took`)
	}
	goTo := func(path string) string {
		return fmt.Sprintf(`const a = document.createElement("a"); a.href = %q; document.body.append(a); a.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true })); a.remove();`, path)
	}
	steps := []string{"read", "open", "water"}
	var times = map[string][]float64{}
	var loops []float64
	b.ResetTimer()
	for i := range b.N {
		for _, name := range []string{"None", "Year"} {
			for k, do := range []string{
				fmt.Sprintf(`const d = new DataTransfer(); d.items.add(new File([%q], "a.json")); const i = document.querySelector("#fields-file"); i.files = d.files; i.dispatchEvent(new Event("change", {bubbles: true}));`, files[name]),
				fmt.Sprintf("document.querySelector(`#fields [aria-label=\"Open it: %s\"]`).click();", name),
				goTo("/water"),
			} {
				t := once(do)
				times[name+steps[k]] = append(times[name+steps[k]], t.Time)
				b.Logf("round %d: %s: %s %.0f ms, long tasks %.0f ms, the longest %.0f ms", i+1, name, steps[k], t.Time, t.Tasks, t.Longest)
			}
			once(goTo("/fields"))
		}
		loops = append(loops, browsertest.Eval[float64](p, loopTime))
	}
	for _, step := range steps {
		b.ReportMetric(median(times["Year"+step]), "ms-year-"+step)
		b.ReportMetric(median(times["None"+step]), "ms-none-"+step)
	}
	b.ReportMetric(median(loops), "ms-loop")
	b.ReportMetric(0, "ns/op")
}
