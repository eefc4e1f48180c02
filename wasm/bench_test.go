//go:build !js

package main

import (
	"fmt"
	"maps"
	"path"
	"slices"
	"testing"
	"time"

	"filmfurrow/wasm/browsertest"
	"filmfurrow/wasm/site"
)

// The benchmarks here load the built site in Chromium on a slowed-down machine.
// A shared machine makes single times worthless, so each benchmark compares two
// things turn by turn, in alternating order, and prints every round:
//
//	go test ./wasm -run '^$' -bench Start -benchtime 5x -timeout 30m
//	go test ./wasm -run '^$' -bench Typing -benchtime 3x

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
	reader := browsertest.Open(b)
	reader.PublishFiles(files, "")
	p := reader.Tab(browsertest.Tab{
		Width: 390, Path: "/", BitsPerSecond: 1.6e6, Latency: 150 * time.Millisecond, Slow: 4,
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

// BenchmarkStart compares the first visit with the trimmed client to that with
// the framework linked whole: 1.6 Mbit/s, 150 ms, main thread four times slower.
func BenchmarkStart(b *testing.B) {
	trimmed := packed(b, browsertest.Make(b, nil))
	whole := packed(b, browsertest.Make(b, func(o *site.Options) { o.Program, o.Untrimmed = nil, true }))
	var painted, mounted, ratios []float64
	b.ResetTimer()
	for i := range b.N {
		var t, w startTimes
		if i%2 == 0 {
			t, w = startOnce(b, trimmed), startOnce(b, whole)
		} else {
			w, t = startOnce(b, whole), startOnce(b, trimmed)
		}
		painted, mounted, ratios = append(painted, t.Painted), append(mounted, t.Mounted), append(ratios, t.Mounted/w.Mounted)
		b.Logf("round %d: trimmed painted %.0f, arrived %.0f, mounted %.0f ms; whole %.0f, %.0f, %.0f ms; ratio %.2f",
			i+1, t.Painted, t.Arrived, t.Mounted, w.Painted, w.Arrived, w.Mounted, t.Mounted/w.Mounted)
	}
	b.ReportMetric(median(painted), "ms-painted")
	b.ReportMetric(median(mounted), "ms-mounted")
	b.ReportMetric(median(ratios), "mounted/whole")
	b.ReportMetric(0, "ns/op")
}

// typingField is the field that the typing benchmark types into.
const typingField = `main input[inputmode="decimal"], main input[type="number"]`

// BenchmarkTyping measures from a key to the last paint that it causes, with
// the main thread four times slower, and beside it the time that a plain loop
// of JavaScript takes on the same thread, as a yardstick for the machine.
func BenchmarkTyping(b *testing.B) {
	reader := browsertest.Open(b)
	p := reader.Page(820, "/")
	p.WaitOffline()
	if browsertest.Eval[bool](p, fmt.Sprintf(`document.querySelector(%q) === null`, typingField)) {
		b.Fatalf("the page has no field %s", typingField)
	}
	p.Slow(4)
	var all, loops []float64
	b.ResetTimer()
	for i := range b.N {
		var round []float64
		for key := range 20 {
			p.Do(fmt.Sprintf(`(() => {
				const field = document.querySelector(%q);
				field.focus();
				window.took = new Promise((done) => {
					let last = 0, began = 0;
					const seen = new MutationObserver(() => requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = () => { last = performance.now(); }; c.port2.postMessage(0); }));
					seen.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
					field.addEventListener("input", (e) => { began = e.timeStamp; }, { capture: true, once: true });
					setTimeout(() => { seen.disconnect(); done(last && began ? last - began : -1); }, 900);
				});
			})()`, typingField))
			p.Press(fmt.Sprint(1 + key%9))
			if took := browsertest.Eval[float64](p, `window.took`); took >= 0 {
				round = append(round, took)
			}
			if key%2 == 1 {
				p.Press("Backspace")
				p.Press("Backspace")
			}
		}
		loop := browsertest.Eval[float64](p, `(() => { const t = performance.now(); let x = 0; for (let i = 0; i < 2e6; i++) x = (x * 31 + i) %% 1000003; return performance.now() - t + x * 0; })()`)
		if len(round) == 0 {
			b.Fatal("no key changed the page")
		}
		b.Logf("round %d: %d keys, p50 %.0f ms, p95 %.0f ms, longest %.0f ms; loop %.0f ms", i+1, len(round), median(round), quantile(round, 0.95), slices.Max(round), loop)
		all, loops = append(all, round...), append(loops, loop)
	}
	b.ReportMetric(median(all), "ms-p50")
	b.ReportMetric(quantile(all, 0.95), "ms-p95")
	b.ReportMetric(median(all)/median(loops), "p50/loop")
	b.ReportMetric(0, "ns/op")
}

// BenchmarkMemory changes the case two thousand times and tells how much the
// program's memory has grown.
func BenchmarkMemory(b *testing.B) {
	reader := browsertest.Open(b)
	p := reader.Page(820, "/")
	p.WaitOffline()
	for range b.N {
		grown := browsertest.Eval[[]float64](p, fmt.Sprintf(`(async () => {
			const field = document.querySelector(%q), before = filmfurrow.memory();
			for (let i = 0; i < 2000; i++) {
				field.value = String(50 + i %% 50);
				field.dispatchEvent(new Event("input", { bubbles: true }));
				field.dispatchEvent(new Event("change", { bubbles: true }));
				await new Promise((r) => setTimeout(r, 5));
			}
			await new Promise((r) => setTimeout(r, 500));
			return [before, filmfurrow.memory()];
		})()`, typingField))
		b.Logf("memory before %.0f, after 2,000 changes %.0f bytes", grown[0], grown[1])
		b.ReportMetric(grown[0], "B-before")
		b.ReportMetric(grown[1], "B-after")
	}
	b.ReportMetric(0, "ns/op")
}

func median(values []float64) float64 { return quantile(values, 0.5) }

func quantile(values []float64, q float64) float64 {
	sorted := slices.Sorted(slices.Values(values))
	return sorted[min(len(sorted)-1, int(q*float64(len(sorted))))]
}
