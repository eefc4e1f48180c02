//go:build !js

package browsertest

import (
	"context"
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"filmfurrow/wasm/site"
)

// patience is how long one step may take on a slow, busy machine.
const patience = 30 * time.Second

// Browser is one reader's browser, with the site it is looking at.
type Browser struct {
	*Server
	t     testing.TB
	tabs  context.Context // of all tabs
	of    chromedp.ContextOption
	keeps bool // the site for use without a network
}

// keepsNothing makes a browser one that has no workers, and neverIdle one that always
// has something to do, so that the page's long study does not begin.
const (
	keepsNothing = `delete Navigator.prototype.serviceWorker;`
	neverIdle    = `window.requestIdleCallback = () => 0;`
)

// Open serves the site and gives the test a browser of its own. It does not keep
// the site for use without a network, which is a sixth of the work of a visit.
func Open(t testing.TB) *Browser {
	t.Helper()
	return open(t, Make(t, nil), false)
}

// OpenKeeping does so with a browser that keeps the site.
func OpenKeeping(t testing.TB) *Browser {
	t.Helper()
	return open(t, Make(t, nil), true)
}

// OpenSite does that with a site of the test's own.
func OpenSite(t testing.TB, built *site.Site) *Browser {
	t.Helper()
	return open(t, built, true)
}

func open(t testing.TB, built *site.Site, keeps bool) *Browser {
	t.Helper()
	parent := browser(t)
	server := newServer(t, built)
	// The library would open an empty tab for each reader, which costs as much as a
	// quarter of a visit.
	process := chromedp.FromContext(parent).Browser
	made, err := cdp.Call(parent, process, target.CreateBrowserContext, target.CreateBrowserContextParams{})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		_, _ = cdp.Call(parent, process, target.DisposeBrowserContext, target.DisposeBrowserContextParams(made))
	})
	return &Browser{Server: server, t: t, tabs: parent, of: chromedp.WithExistingBrowserContext(made.BrowserContextID), keeps: keeps}
}

// Tab says how a page is opened.
type Tab struct {
	Path     string // below the site's root, with query and fragment
	Width    int    // CSS pixels; 820 when 0
	Height   int    // CSS pixels; 1000 when 0
	Before   string // script to run before any of the page's own
	NoScript bool   // scripts switched off
	NoWait   bool   // return without waiting for the program to take keys
	Studies  bool   // let the page begin its long study, which takes a core for a quarter of a minute
	Whole    bool   // wait until every part of the page is drawn, which costs as much again
	Errors   bool   // errors on the console are expected
	Stops    bool   // the program is expected to stop
	Breaches bool   // breaches of the content policy are expected, and must come
	Agent    string // user agent to give

	BitsPerSecond float64       // speed of the line; as fast as it goes when 0
	Latency       time.Duration // least time from a request to its answer
	Slow          float64       // factor by which the main thread is slowed down
}

// Page is one open tab.
type Page struct {
	b   *Browser
	t   testing.TB
	ctx context.Context
	tab Tab

	mu       sync.Mutex
	errors   []string
	breaches []string
	foreign  []string
}

// Page opens a path at a width and waits until the program takes keys.
func (b *Browser) Page(width int, path string) *Page {
	b.t.Helper()
	return b.Tab(Tab{Width: width, Path: path})
}

// Whole does so and waits until every part of the page is drawn.
func (b *Browser) Whole(width int, path string) *Page {
	b.t.Helper()
	return b.Tab(Tab{Width: width, Path: path, Whole: true})
}

// Tab opens a page in a new tab.
func (b *Browser) Tab(tab Tab) *Page {
	b.t.Helper()
	if tab.Width == 0 {
		tab.Width = 820
	}
	if tab.Height == 0 {
		tab.Height = 1000
	}
	ctx, cancel := chromedp.NewContext(b.tabs, b.of)
	b.t.Cleanup(cancel)
	p := &Page{b: b, t: b.t, ctx: ctx, tab: tab}
	p.do(chromedp.Func(func(context.Context, *chromedp.Target) error { return nil }))
	if err := chromedp.Listen(ctx, p.note); err != nil {
		b.t.Fatal(err)
	}
	call(p, network.Enable, network.EnableParams{})
	call(p, log.Enable, cdp.Empty{})
	p.Resize(tab.Width, tab.Height)
	if tab.Agent != "" {
		call(p, emulation.SetUserAgentOverride, emulation.SetUserAgentOverrideParams{UserAgent: tab.Agent})
	}
	before := tab.Before
	if !b.keeps {
		before = keepsNothing + before
	}
	if _, bench := b.t.(*testing.B); !bench && !tab.Studies {
		before = neverIdle + before
	}
	if before != "" {
		call(p, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: before})
	}
	if tab.NoScript {
		call(p, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	}
	if tab.BitsPerSecond > 0 {
		p.line(tab.BitsPerSecond, tab.Latency)
	}
	if tab.Slow > 0 {
		p.Slow(tab.Slow)
	}
	b.t.Cleanup(p.check)
	p.Go(tab.Path)
	switch {
	case tab.NoWait || tab.NoScript:
	case tab.Whole:
		p.WaitWhole()
	default:
		p.WaitReady()
	}
	return p
}

// Tabs counts the open tabs, those that the page itself opened included.
func (b *Browser) Tabs() int {
	b.t.Helper()
	list, err := chromedp.Targets(b.tabs)
	if err != nil {
		b.t.Fatal(err)
	}
	n := 0
	for _, tab := range list {
		if tab.Type == "page" && strings.HasPrefix(tab.URL, b.URL) {
			n++
		}
	}
	return n
}

// Foreign opens a page of another site, such as one that frames ours. What it
// asks for is its own affair and is not checked.
func (b *Browser) Foreign(address string) *Page {
	b.t.Helper()
	ctx, cancel := chromedp.NewContext(b.tabs, b.of)
	b.t.Cleanup(cancel)
	p := &Page{b: b, t: b.t, ctx: ctx}
	p.do(chromedp.Func(func(context.Context, *chromedp.Target) error { return nil }))
	p.do(chromedp.Navigate(address))
	return p
}

// note keeps what the browser reports. It runs on the goroutine that reads the
// browser's messages, so it only stores.
func (p *Page) note(event any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		if u, err := url.Parse(e.Request.URL); err == nil && (u.Scheme == "http" || u.Scheme == "https" || u.Scheme == "ws" || u.Scheme == "wss") && u.Host != p.b.addr {
			p.foreign = append(p.foreign, e.Request.URL)
		}
	case *log.EventEntryAdded:
		text := fmt.Sprintf("%s: %s %s", e.Entry.Source, e.Entry.Text, e.Entry.URL)
		if strings.Contains(text, "Content Security Policy") {
			p.breaches = append(p.breaches, text)
		} else if e.Entry.Level == log.EntryLevelError {
			p.errors = append(p.errors, text)
		}
	case *runtime.EventConsoleAPICalled:
		var words []string
		for _, arg := range e.Args {
			words = append(words, strings.Trim(string(arg.Value), `"`)+arg.Description)
		}
		line := strings.Join(words, " ")
		// The Go program's own dying words come as plain log lines.
		if e.Type == runtime.ConsoleAPICalledTypeError || e.Type == runtime.ConsoleAPICalledTypeAssert || strings.HasPrefix(line, "panic: ") || strings.HasPrefix(line, "fatal error: ") {
			p.errors = append(p.errors, "console: "+line)
		}
	case *runtime.EventExceptionThrown:
		text := e.ExceptionDetails.Text
		if e.ExceptionDetails.Exception != nil {
			text += " " + e.ExceptionDetails.Exception.Description
		}
		p.errors = append(p.errors, "exception: "+text)
	}
}

func (p *Page) check() {
	p.mu.Lock()
	defer p.mu.Unlock()
	for _, u := range p.foreign {
		p.t.Errorf("the page asked another origin: %s", u)
	}
	if p.tab.Breaches && len(p.breaches) == 0 {
		p.t.Error("the page did not break its content policy, though it was made to")
	}
	for _, b := range p.breaches {
		if p.tab.Breaches {
			break
		}
		p.t.Errorf("the page broke its content policy: %s", b)
	}
	if !p.tab.Errors {
		for _, e := range p.errors {
			p.t.Errorf("error on the console: %s", e)
		}
	}
}

// Errors are the errors that the page has put on the console so far.
func (p *Page) Errors() []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	return append([]string(nil), p.errors...)
}

func (p *Page) do(actions ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	run(p, chromedp.Steps(actions...))
}

// run is one step, held to the test's patience.
func run[T any](p *Page, action chromedp.Action[T]) T {
	p.t.Helper()
	// The first step binds the tab's life to its context, so that one runs
	// without a limit.
	ctx := p.ctx
	if c := chromedp.FromContext(p.ctx); c != nil && c.Target != nil {
		var cancel context.CancelFunc
		ctx, cancel = context.WithTimeout(p.ctx, patience)
		defer cancel()
	}
	value, err := chromedp.Run(ctx, action)
	if err != nil {
		p.t.Fatal(err)
	}
	return value
}

// Go opens a path of the site in this tab.
func (p *Page) Go(path string) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	if err := chromedp.Do(ctx, chromedp.Navigate(p.b.URL+path)); err != nil && !strings.Contains(err.Error(), "net::ERR_") {
		p.t.Fatalf("open %s: %v", path, err)
	}
}

// Reload loads the page again.
func (p *Page) Reload() {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	if err := chromedp.Do(ctx, chromedp.Reload()); err != nil && !strings.Contains(err.Error(), "net::ERR_") {
		p.t.Fatalf("reload: %v", err)
	}
}

// Back goes back in the tab's history.
func (p *Page) Back() { p.t.Helper(); p.do(chromedp.NavigateBack()) }

// Close closes the tab, as a reader would.
func (p *Page) Close() { p.t.Helper(); _ = chromedp.Cancel(p.ctx) }

// Resize sets the window's size in CSS pixels, as on a touch tablet.
func (p *Page) Resize(width, height int) {
	p.t.Helper()
	p.do(chromedp.EmulateViewport(int64(width), int64(height)))
}

// Zoom gives the page the window of a reader who has zoomed in: fewer CSS pixels,
// each as many times larger.
func (p *Page) Zoom(width, height int, factor float64) {
	p.t.Helper()
	call(p, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{
		Width: int64(float64(width) / factor), Height: int64(float64(height) / factor), DeviceScaleFactor: factor})
}

// Media emulates a media type ("print", "" for the screen) and features, as
// "prefers-color-scheme", "dark", "prefers-reduced-motion", "reduce".
func (p *Page) Media(kind string, features ...string) {
	p.t.Helper()
	params := emulation.SetEmulatedMediaParams{Media: kind}
	// A feature that is not named keeps its last value, so each is named.
	for _, name := range []string{"prefers-color-scheme", "prefers-contrast", "prefers-reduced-motion", "forced-colors"} {
		feature := &emulation.MediaFeature{Name: name}
		if i := slices.Index(features, name); i >= 0 {
			feature.Value = features[i+1]
		}
		params.Features = append(params.Features, feature)
	}
	call(p, emulation.SetEmulatedMedia, params)
}

// Slow slows the page's main thread down by a factor; 1 ends it.
func (p *Page) Slow(factor float64) {
	p.t.Helper()
	call(p, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: factor})
}

// Eval runs a JavaScript expression in the page, waits for it if it is a
// promise, and decodes its value.
func Eval[T any](p *Page, expression string) T {
	p.t.Helper()
	return run(p, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
}

// Do runs a JavaScript expression for its effect.
func (p *Page) Do(expression string) {
	p.t.Helper()
	run(p, chromedp.Evaluate[chromedp.Void](expression))
}

// Wait waits until a JavaScript expression holds; what says what is awaited.
func (p *Page) Wait(what, expression string) {
	p.t.Helper()
	deadline := time.Now().Add(patience)
	for {
		ctx, cancel := context.WithTimeout(p.ctx, patience)
		ok, err := chromedp.Run(ctx, chromedp.Evaluate[bool]("Promise.resolve("+expression+").then(Boolean)", chromedp.EvalAwaitPromise))
		cancel()
		if err == nil && ok {
			return
		}
		if !p.tab.Stops {
			if stopped, err := chromedp.Run(p.ctx, chromedp.Evaluate[bool](`window.filmfurrow?.status.start === "stopped"`)); err == nil && stopped {
				p.t.Fatalf("the program stopped while the test waited for: %s (console %q)", what, p.Errors())
			}
		}
		if time.Now().After(deadline) {
			state, _ := chromedp.Run(p.ctx, chromedp.Evaluate[string](`JSON.stringify(window.filmfurrow?.status ?? null) + " " + (document.querySelector("#strip")?.innerText ?? "") + " | " + document.title`))
			p.t.Fatalf("waited %v in vain for: %s (last error %v; page %s; console %q)", patience, what, err, state, p.Errors())
		}
		time.Sleep(25 * time.Millisecond)
	}
}

// WaitWhole waits until the program has taken the page over and drawn it whole.
func (p *Page) WaitWhole() {
	p.t.Helper()
	p.Wait("the program to run", `window.filmfurrow?.status.start === "ready" && window.filmfurrow.status.whole`)
}

// WaitReady waits until the program has taken the page over and takes keys.
func (p *Page) WaitReady() {
	p.t.Helper()
	p.Wait("the program to take keys", `window.filmfurrow?.status.start === "ready"`)
}

// WaitDrawn waits until no part of the page is still to be drawn anew.
func (p *Page) WaitDrawn() {
	p.t.Helper()
	p.Wait("all parts to be drawn", `window.filmfurrow?.drawn?.() ?? true`)
}

// WaitOffline waits until the whole site is kept on the device.
func (p *Page) WaitOffline() {
	p.t.Helper()
	if !p.b.keeps {
		p.t.Fatal("this browser keeps nothing: open it with OpenKeeping")
	}
	p.Wait("the site to be kept for use without a network", `window.filmfurrow?.status.offline === "ready"`)
}

// WaitText waits until the first element that a CSS selector matches shows a text.
func (p *Page) WaitText(selector, text string) {
	p.t.Helper()
	p.Wait(fmt.Sprintf("%s to show %q", selector, text), fmt.Sprintf(`%s.includes(%s)`, shown(selector), quote(text)))
}

// Text is the visible text of the first element that a CSS selector matches,
// or "" when there is none.
func (p *Page) Text(selector string) string {
	p.t.Helper()
	return Eval[string](p, shown(selector))
}

// layOut lays out all sections as if they were near: one out of sight has a guessed
// height and nothing in it.
func (p *Page) layOut() {
	p.t.Helper()
	p.Do(`for (const el of document.querySelectorAll("section")) el.style.contentVisibility = "visible"`)
}

// shown is an expression for the visible text of an element. A section out of sight
// is not laid out and has none, so it is laid out as if it were near.
func shown(selector string) string {
	return fmt.Sprintf(`((el) => {
		for (let s = el; s; s = s.parentElement) if (getComputedStyle(s).contentVisibility === "auto") s.style.contentVisibility = "visible";
		return el?.innerText ?? "";
	})(document.querySelector(%s))`, quote(selector))
}

// Visible reports whether the first match is shown and nothing lies over its centre.
func (p *Page) Visible(selector string) bool {
	p.t.Helper()
	return Eval[bool](p, fmt.Sprintf(`(() => {
		const el = document.querySelector(%s);
		if (!el || !el.checkVisibility()) return false;
		el.scrollIntoView({ block: "center", behavior: "instant" });
		const r = el.getBoundingClientRect();
		const top = document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2);
		return r.width > 0 && r.height > 0 && top !== null && (el.contains(top) || top.contains(el));
	})()`, quote(selector)))
}

// waitVisible waits until the first element that a CSS selector matches can be seen.
func (p *Page) waitVisible(selector string) {
	p.t.Helper()
	p.Wait(selector+" to be seen", fmt.Sprintf(`document.querySelector(%s)?.checkVisibility({ visibilityProperty: true })`, quote(selector)))
}

// Click clicks the middle of the first match, with a real mouse event. On a busy
// machine the page may still move after it stood still: a click that fell beside the
// target is said so, and done once more.
func (p *Page) Click(selector string) {
	p.t.Helper()
	for range 3 {
		if p.click(selector) {
			return
		}
		p.t.Logf("a click on %s fell beside it", selector)
	}
	p.t.Fatalf("three clicks on %s fell beside it", selector)
}

// click tells whether the target got the click. A page that was left by it tells
// nothing, and was clicked.
func (p *Page) click(selector string) bool {
	p.t.Helper()
	// A page that still scrolls, or draws what a key changed, moves between the
	// press and the release, and a line of text that moves loses the click. So the
	// target must stand still for a tenth of a second.
	p.waitVisible(selector)
	p.Wait(selector+" to stand still", fmt.Sprintf(`new Promise((rest) => {
		let last = "", still = 0;
		const look = () => {
			const el = document.querySelector(%s);
			el?.scrollIntoView({ block: "center", behavior: "instant" });
			const box = el?.getBoundingClientRect(), now = el ? box.x + " " + box.y + " " + scrollY : "";
			still = now && now === last ? still + 1 : 0;
			last = now;
			if (still === 5) rest(true); else setTimeout(look, 20); // a tab behind another draws no frames
		};
		look();
	})`, quote(selector)))
	p.Do(fmt.Sprintf(`(() => {
		window.clicked = false;
		addEventListener("click", (e) => { window.clicked = e.target.closest(%s) !== null; }, { capture: true, once: true });
	})()`, quote(selector)))
	// Where it stands is asked anew: a part of the page that is drawn again is another node.
	type point struct{ X, Y float64 }
	at := Eval[*point](p, fmt.Sprintf(`(() => {
		const line = document.querySelector(%s)?.getClientRects()[0];
		return line ? { X: line.x + line.width / 2, Y: line.y + line.height / 2 } : null;
	})()`, quote(selector)))
	if at == nil {
		return false
	}
	p.mouse(input.DispatchMouseEventTypeMouseMoved, at.X, at.Y, 0)
	p.mouse(input.DispatchMouseEventTypeMousePressed, at.X, at.Y, 1)
	p.mouse(input.DispatchMouseEventTypeMouseReleased, at.X, at.Y, 0)
	got, err := chromedp.Run(p.ctx, chromedp.Evaluate[bool](`window.clicked !== false`))
	return got || err != nil
}

// Type replaces what stands in a field, key by key.
func (p *Page) Type(selector, text string) {
	p.t.Helper()
	p.waitVisible(selector)
	p.Do(fmt.Sprintf(`(() => { const el = document.querySelector(%s); el.focus(); el.select?.(); })()`, quote(selector)))
	p.do(chromedp.KeyEvent(text))
}

// Choose picks an option of a select by its value.
func (p *Page) Choose(selector, value string) {
	p.t.Helper()
	p.Do(fmt.Sprintf(`(() => {
		const el = document.querySelector(%s);
		if (![...el.options].some((o) => o.value === %s)) throw new Error("no such option");
		el.focus();
		el.value = %[2]s;
		el.dispatchEvent(new Event("input", { bubbles: true }));
		el.dispatchEvent(new Event("change", { bubbles: true }));
	})()`, quote(selector), quote(value)))
}

var keys = map[string]string{
	"Enter": kb.Enter, "Tab": kb.Tab, "Escape": kb.Escape, "Space": " ", "Backspace": kb.Backspace, "Delete": kb.Delete,
	"ArrowUp": kb.ArrowUp, "ArrowDown": kb.ArrowDown, "ArrowLeft": kb.ArrowLeft, "ArrowRight": kb.ArrowRight,
	"Home": kb.Home, "End": kb.End, "PageUp": kb.PageUp, "PageDown": kb.PageDown,
}

// Press presses one key by its name, after any of "Shift+", "Control+", "Alt+".
func (p *Page) Press(key string) {
	p.t.Helper()
	var modifiers []chromedp.Modifier
	for {
		name, rest, ok := strings.Cut(key, "+")
		if !ok || rest == "" {
			break
		}
		switch name {
		case "Shift":
			modifiers = append(modifiers, chromedp.ModifierShift)
		case "Control":
			modifiers = append(modifiers, chromedp.ModifierCtrl)
		case "Alt":
			modifiers = append(modifiers, chromedp.ModifierAlt)
		default:
			p.t.Fatalf("no such modifier key: %s", name)
		}
		key = rest
	}
	if code, ok := keys[key]; ok {
		key = code
	}
	p.do(chromedp.KeyEvent(key, chromedp.KeyModifiers(modifiers...)))
}

// Screenshot writes the whole page as a PNG picture into the folder that FF_SHOTS names,
// and does nothing when it names none.
func (p *Page) Screenshot(name string) {
	p.t.Helper()
	dir := os.Getenv("FF_SHOTS")
	if dir == "" {
		return
	}
	p.layOut()
	p.write(dir, name+".png", run(p, chromedp.FullScreenshot(100)))
}

// PrintPDF prints the page on A4 paper; it is also kept where FF_SHOTS says.
func (p *Page) PrintPDF(name string) []byte {
	p.t.Helper()
	return p.print(name, chromedp.PDFPaper(chromedp.PaperA4))
}

// PrintLetter prints the page on US letter paper.
func (p *Page) PrintLetter(name string) []byte {
	p.t.Helper()
	return p.print(name, chromedp.PDFPaper(chromedp.PaperLetter))
}

func (p *Page) print(name string, paper chromedp.PDFOption) []byte {
	p.t.Helper()
	p.WaitDrawn()
	pdf := run(p, chromedp.PrintToPDF(paper, chromedp.PDFPreferCSSPageSize()))
	if dir := os.Getenv("FF_SHOTS"); dir != "" {
		p.write(dir, name+".pdf", pdf)
	}
	return pdf
}

func (p *Page) write(dir, name string, body []byte) {
	p.t.Helper()
	if err := os.MkdirAll(dir, 0o755); err != nil {
		p.t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, name), body, 0o644); err != nil {
		p.t.Fatal(err)
	}
}

// Quote writes a Go string as a JavaScript one.
func Quote(s string) string { return quote(s) }

func quote(s string) string {
	b, _ := json.Marshal(s) // a string always has a JSON form
	return string(b)
}
