//go:build !js

package webdriver

import (
	"bytes"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

// patience is how long one step may take on a slow, busy machine.
const patience = 60 * time.Second

// Engine is one of the two browser engines that are driven here.
type Engine string

// The engines, by the names that readers know.
const (
	Firefox Engine = "Firefox"
	WebKit  Engine = "WebKit"
)

// Engines are both.
var Engines = []Engine{Firefox, WebKit}

// packages name what Debian and Ubuntu call them.
var packages = map[Engine]string{Firefox: "firefox-esr", WebKit: "webkit2gtk-driver xvfb"}

// Options say what the reader has set.
type Options struct {
	Still     bool // reduced motion
	Dark      bool // a dark screen
	NoStorage bool // a browser that lets pages keep nothing
}

// Fault is an error that a browser answers with (W3C WebDriver, § 6.6).
type Fault struct {
	Kind    string `json:"error"`
	Message string
}

func (f *Fault) Error() string { return f.Kind + ": " + f.Message }

// missing is a program that is not installed.
type missing string

func (m missing) Error() string { return "no " + string(m) }

// order is a command of the protocol, by its name in Firefox, and by its method and its
// address below the session's, with names in braces for those parameters that stand there.
type order struct{ marionette, method, path string }

var (
	newSession   = order{"WebDriver:NewSession", http.MethodPost, "/session"}
	navigate     = order{"WebDriver:Navigate", http.MethodPost, "/url"}
	goBack       = order{"WebDriver:Back", http.MethodPost, "/back"}
	runScript    = order{"WebDriver:ExecuteAsyncScript", http.MethodPost, "/execute/async"}
	findElement  = order{"WebDriver:FindElement", http.MethodPost, "/element"}
	clickElement = order{"WebDriver:ElementClick", http.MethodPost, "/element/{id}/click"}
	sendKeys     = order{"WebDriver:ElementSendKeys", http.MethodPost, "/element/{id}/value"}
	setRect      = order{"WebDriver:SetWindowRect", http.MethodPost, "/window/rect"}
	handles      = order{"WebDriver:GetWindowHandles", http.MethodGet, "/window/handles"}
	switchTo     = order{"WebDriver:SwitchToWindow", http.MethodPost, "/window"}
	doActions    = order{"WebDriver:PerformActions", http.MethodPost, "/actions"}
	newWindow    = order{"WebDriver:NewWindow", http.MethodPost, "/window/new"}
	setTimeouts  = order{"WebDriver:SetTimeouts", http.MethodPost, "/timeouts"}
	picture      = order{"WebDriver:TakeScreenshot", http.MethodGet, "/screenshot"}
)

// Page is a browser with the page that it shows.
type Page struct {
	Engine    Engine
	Downloads string // the folder that files are saved in

	t       testing.TB
	options Options
	folder  string
	console *console
	send    func(order, map[string]any) (json.RawMessage, error)
	stop    func()
}

// console keeps what a browser writes while several of its processes write at once.
type console struct {
	sync.Mutex
	text bytes.Buffer
}

func (c *console) Write(b []byte) (int, error) {
	c.Lock()
	defer c.Unlock()
	return c.text.Write(b)
}

// Open starts a browser for the test.
func Open(t testing.TB, engine Engine, options Options) *Page {
	t.Helper()
	if testing.Short() {
		t.Skip("browser tests are left out with -short")
	}
	p := &Page{Engine: engine, t: t, options: options, folder: t.TempDir(), console: &console{}}
	p.Downloads = filepath.Join(p.folder, "downloads")
	if err := os.MkdirAll(p.Downloads, 0o755); err != nil {
		t.Fatal(err)
	}
	begin := map[Engine]func() error{Firefox: p.firefox, WebKit: p.webkit}[engine]
	if err := begin(); err != nil {
		var none missing
		if !errors.As(err, &none) {
			t.Fatalf("%s does not start: %v\n%s", engine, err, p.Console())
		}
		words := fmt.Sprintf("%s cannot be tried: %v; install it (Debian, Ubuntu: apt-get install %s) and run the tests again", engine, err, packages[engine])
		if os.Getenv("CI") == "true" {
			t.Fatal(words)
		}
		t.Skip(words)
	}
	p.order(setTimeouts, map[string]any{"script": patience.Milliseconds(), "pageLoad": patience.Milliseconds()})
	return p
}

// find names the first of the programs that is installed.
func find(names ...string) (string, error) {
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path, nil
		}
	}
	return "", missing(names[0])
}

// start starts a program that ends with the test.
func (p *Page) start(command *exec.Cmd) error {
	command.WaitDelay = 5 * time.Second
	if err := command.Start(); err != nil {
		return err
	}
	p.t.Cleanup(func() {
		if p.stop != nil { // the browser first, as long as its driver is there
			p.stop()
			p.stop = nil
		}
		_ = command.Process.Kill()
		_ = command.Wait()
	})
	return nil
}

func (p *Page) until(done func() bool) error {
	for deadline := time.Now().Add(patience); !done(); {
		if time.Now().After(deadline) {
			return fmt.Errorf("waited %v in vain", patience)
		}
		time.Sleep(25 * time.Millisecond)
	}
	return nil
}

// Console is what the browser has written so far.
func (p *Page) Console() string {
	p.console.Lock()
	defer p.console.Unlock()
	return p.console.text.String()
}

func (p *Page) order(o order, parameters map[string]any) json.RawMessage {
	p.t.Helper()
	value, err := p.send(o, parameters)
	if err != nil {
		p.t.Fatalf("%s: %s %v: %v", p.Engine, o.path, parameters, err)
	}
	return value
}

// Go opens an address and waits until it is loaded, or until the browser says that it
// cannot be.
func (p *Page) Go(address string) {
	p.t.Helper()
	_, err := p.send(navigate, map[string]any{"url": address})
	var fault *Fault
	if errors.As(err, &fault) {
		p.t.Logf("%s: %s: %v", p.Engine, address, err)
	} else if err != nil {
		p.t.Fatalf("%s: %s: %v", p.Engine, address, err)
	}
}

// Reload loads the page again, as the browser's button does. The protocol's own order
// passes the page's worker by in Firefox, as a reader does who holds Shift.
func (p *Page) Reload() {
	p.t.Helper()
	p.Do(`window.left = true, setTimeout(() => location.reload())`)
	p.Wait("the page to be loaded again", `window.left !== true && document.readyState === "complete"`)
}

// Back goes back in the tab's history.
func (p *Page) Back() { p.t.Helper(); p.order(goBack, nil) }

// Size sets the window's inside in CSS pixels. Firefox makes no window with bars narrower
// than 500 px, so there the page moves into one without.
func (p *Page) Size(width, height int) {
	p.t.Helper()
	if p.Engine == Firefox && width < 500 {
		p.Popup()
	}
	want := [2]int{width, height}
	for range 3 { // what the frame takes is known afterwards
		p.order(setRect, map[string]any{"width": want[0], "height": want[1]})
		var now [2]int
		_ = p.until(func() bool {
			now = Eval[[2]int](p, `new Promise((r) => setTimeout(() => r([innerWidth, innerHeight]), 50))`)
			return now[0] == width
		})
		if now == [2]int{width, height} {
			return
		}
		want[0] += width - now[0]
		want[1] += height - now[1]
	}
	if now := Eval[int](p, `innerWidth`); now != width {
		p.t.Fatalf("%s: the window is %d px wide, not %d", p.Engine, now, width)
	}
}

// Popup opens a window without bars and goes on there.
func (p *Page) Popup() {
	p.t.Helper()
	before := p.Tabs()
	_, _ = p.send(runScript, map[string]any{"script": `window.open("about:blank", "_blank", "popup,width=400,height=800"); arguments[0]()`, "args": []any{}})
	p.goOn(before)
}

// Tab opens another window and goes on there, since a tab that lies behind another is slow.
// Tabs and Switch lead back.
func (p *Page) Tab() {
	p.t.Helper()
	before := p.Tabs()
	p.order(newWindow, map[string]any{"type": "window"})
	p.goOn(before)
}

func (p *Page) goOn(before []string) {
	p.t.Helper()
	if err := p.until(func() bool { return len(p.Tabs()) > len(before) }); err != nil {
		p.t.Fatalf("%s: no new window: %v", p.Engine, err)
	}
	for _, name := range p.Tabs() {
		if !slices.Contains(before, name) {
			p.Switch(name)
		}
	}
}

// Tabs names the open tabs and windows.
func (p *Page) Tabs() (names []string) {
	p.t.Helper()
	if err := json.Unmarshal(p.order(handles, nil), &names); err != nil {
		p.t.Fatal(err)
	}
	return names
}

// Switch goes on in the tab of a name.
func (p *Page) Switch(name string) { p.t.Helper(); p.order(switchTo, map[string]any{"handle": name}) }

// try runs a JavaScript expression and waits for it if it is a promise.
func (p *Page) try(expression string, into any) error {
	said, err := p.send(runScript, map[string]any{"args": []any{}, "script": `const told = arguments[arguments.length - 1];
		(async () => (` + expression + `))().then((v) => told({ is: JSON.stringify(v ?? null) }), (e) => told({ fault: String(e) }));`})
	if err != nil {
		return err
	}
	var answer struct{ Is, Fault string }
	if err := json.Unmarshal(said, &answer); err != nil {
		return fmt.Errorf("%w in %s", err, said)
	}
	if answer.Fault != "" {
		return errors.New(answer.Fault)
	}
	return json.Unmarshal([]byte(answer.Is), into)
}

// Eval runs a JavaScript expression in the page, waits for it if it is a promise, and
// decodes its value.
func Eval[T any](p *Page, expression string) (value T) {
	p.t.Helper()
	if err := p.try(expression, &value); err != nil {
		p.t.Fatalf("%s: %v in %s", p.Engine, err, expression)
	}
	return value
}

// Do runs a JavaScript expression for its effect.
func (p *Page) Do(expression string) {
	p.t.Helper()
	Eval[any](p, `(`+expression+`, null)`)
}

// Wait waits until a JavaScript expression holds; what says what is awaited.
func (p *Page) Wait(what, expression string) {
	p.t.Helper()
	var last error
	if err := p.until(func() bool {
		held := false
		last = p.try(`Promise.resolve(`+expression+`).then(Boolean)`, &held)
		return held
	}); err != nil {
		page := ""
		_ = p.try(`location.href + " | " + JSON.stringify(window.filmfurrow?.status ?? null) + " | " + (document.body?.innerText ?? "").slice(0, 400)`, &page)
		p.t.Fatalf("%s: %v for %s (last error %v; page %s; console %.2000s)", p.Engine, err, what, last, page, p.Console())
	}
}

// element finds the first element that a CSS selector matches.
func (p *Page) element(selector string) string {
	p.t.Helper()
	p.Wait(selector, fmt.Sprintf(`document.querySelector(%s) !== null`, quote(selector)))
	var found map[string]string
	if err := json.Unmarshal(p.order(findElement, map[string]any{"using": "css selector", "value": selector}), &found); err != nil {
		p.t.Fatal(err)
	}
	for _, id := range found { // under the one name that the standard gives it
		return id
	}
	p.t.Fatalf("%s: no %s", p.Engine, selector)
	return ""
}

// Click clicks the middle of the first match with the browser's own pointer. The page may
// draw itself anew meanwhile: then it is tried again.
func (p *Page) Click(selector string) {
	p.t.Helper()
	p.act(selector, clickElement, nil)
}

// Keys types into the first match, key by key.
func (p *Page) Keys(selector, text string) {
	p.t.Helper()
	p.act(selector, sendKeys, map[string]any{"text": text})
}

// Type presses keys one by one, wherever the focus is.
func (p *Page) Type(text string) {
	p.t.Helper()
	var keys []map[string]any
	for _, key := range text {
		for _, kind := range []string{"keyDown", "keyUp"} {
			keys = append(keys, map[string]any{"type": kind, "value": string(key)})
		}
		keys = append(keys, map[string]any{"type": "pause", "duration": 30})
	}
	p.order(doActions, map[string]any{"actions": []any{map[string]any{"type": "key", "id": "keyboard", "actions": keys}}})
}

func (p *Page) act(selector string, o order, parameters map[string]any) {
	p.t.Helper()
	var last error
	for range 5 {
		with := map[string]any{"id": p.element(selector)}
		for name, value := range parameters {
			with[name] = value
		}
		if _, last = p.send(o, with); last == nil {
			return
		}
		time.Sleep(200 * time.Millisecond)
	}
	p.t.Fatalf("%s: %s on %s: %v", p.Engine, o.path, selector, last)
}

// Choose picks an option of a list by its value, as a reader's choice reports itself.
func (p *Page) Choose(selector, value string) {
	p.t.Helper()
	p.Do(fmt.Sprintf(`(() => {
		const el = document.querySelector(%s);
		if (![...el.options].some((o) => o.value === %s)) throw new Error("no such option");
		el.value = %[2]s;
		el.dispatchEvent(new Event("input", { bubbles: true }));
		el.dispatchEvent(new Event("change", { bubbles: true }));
	})()`, quote(selector), quote(value)))
}

// Saved waits for a file of a name in the folder for downloads, and reads it.
func (p *Page) Saved(name string) []byte {
	p.t.Helper()
	var body []byte
	if err := p.until(func() bool {
		list, _ := os.ReadDir(p.Downloads)
		for _, file := range list {
			if file.Name() == name {
				body, _ = os.ReadFile(filepath.Join(p.Downloads, name))
			} else if strings.HasPrefix(file.Name(), name) { // still coming, under another name
				return false
			}
		}
		return len(body) > 0
	}); err != nil {
		p.t.Fatalf("%s: %v for the file %s", p.Engine, err, name)
	}
	return body
}

// Screenshot writes what the window shows as a PNG picture into the folder that FF_SHOTS
// names, and does nothing when it names none.
func (p *Page) Screenshot(name string) {
	p.t.Helper()
	dir := os.Getenv("FF_SHOTS")
	if dir == "" {
		return
	}
	var text string
	if err := json.Unmarshal(p.order(picture, map[string]any{"full": true}), &text); err != nil {
		p.t.Fatal(err)
	}
	body, err := base64.StdEncoding.DecodeString(text)
	if err == nil {
		err = os.MkdirAll(dir, 0o755)
	}
	if err == nil {
		err = os.WriteFile(filepath.Join(dir, strings.ToLower(string(p.Engine))+"-"+name+".png"), body, 0o644)
	}
	if err != nil {
		p.t.Fatal(err)
	}
}

func quote(s string) string {
	b, _ := json.Marshal(s) // a string always has a JSON form
	return string(b)
}
