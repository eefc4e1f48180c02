//go:build !js

package webdriver

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// preferences of a Firefox that is driven: it keeps quiet, takes any free port, and saves
// files without asking. What the page puts on the console goes to the standard output.
const preferences = `user_pref("marionette.port", 0);
user_pref("app.update.disabledForTesting", true);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("browser.startup.page", 0);
user_pref("browser.startup.homepage_override.mstone", "ignore");
user_pref("browser.newtabpage.enabled", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("toolkit.telemetry.server", "");
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("services.settings.server", "data:,");
user_pref("extensions.systemAddon.update.enabled", false);
user_pref("browser.safebrowsing.update.enabled", false);
user_pref("dom.disable_open_during_load", false);
user_pref("devtools.console.stdout.content", true);
user_pref("browser.download.folderList", 2);
user_pref("browser.download.useDownloadDir", true);
user_pref("browser.download.alwaysOpenPanel", false);
user_pref("browser.helperApps.neverAsk.saveToDisk", "application/json,text/csv,text/calendar,image/svg+xml");
`

// firefox starts Firefox and speaks Marionette with it, protocol 3: a command is
// [0, number, name, parameters], its answer [1, number, error, result].
func (p *Page) firefox() error {
	text := preferences + fmt.Sprintf("user_pref(%q, %q);\n", "browser.download.dir", p.Downloads)
	if p.options.Still {
		text += "user_pref(\"ui.prefersReducedMotion\", 1);\n"
	}
	if p.options.NoStorage {
		text += "user_pref(\"dom.storage.enabled\", false);\nuser_pref(\"network.cookie.cookieBehavior\", 2);\n"
	}
	if p.options.Dark {
		text += "user_pref(\"layout.css.prefers-color-scheme.content-override\", 0);\n"
	}
	profile := filepath.Join(p.folder, "profile")
	if err := os.MkdirAll(profile, 0o755); err != nil {
		return err
	}
	if err := os.WriteFile(filepath.Join(profile, "user.js"), []byte(text), 0o644); err != nil {
		return err
	}
	program, err := find("firefox-esr", "firefox")
	if err != nil {
		return err
	}
	command := exec.Command(program, "--headless", "--no-remote", "--marionette", "--profile", profile, "about:blank")
	command.Stdout = p.console
	if err := p.start(command); err != nil {
		return err
	}
	var port int
	if err := p.until(func() bool {
		said, _ := os.ReadFile(filepath.Join(profile, "MarionetteActivePort"))
		port, _ = strconv.Atoi(strings.TrimSpace(string(said)))
		return port > 0
	}); err != nil {
		return fmt.Errorf("%s told no port: %w", program, err)
	}
	line, err := net.Dial("tcp", net.JoinHostPort("127.0.0.1", strconv.Itoa(port)))
	if err != nil {
		return err
	}
	in := bufio.NewReader(line)
	read := func() (json.RawMessage, error) {
		head, err := in.ReadString(':')
		if err != nil {
			return nil, err
		}
		size, err := strconv.Atoi(strings.TrimSuffix(head, ":"))
		if err != nil {
			return nil, err
		}
		body := make([]byte, size)
		_, err = io.ReadFull(in, body)
		return body, err
	}
	if _, err := read(); err != nil { // it greets first
		return err
	}
	number := 0
	p.send = func(o order, parameters map[string]any) (json.RawMessage, error) {
		number++
		if parameters == nil {
			parameters = map[string]any{}
		}
		body, err := json.Marshal([]any{0, number, o.marionette, parameters})
		if err != nil {
			return nil, err
		}
		line.SetDeadline(time.Now().Add(patience))
		if _, err := fmt.Fprintf(line, "%d:%s", len(body), body); err != nil {
			return nil, err
		}
		said, err := read()
		if err != nil {
			return nil, err
		}
		var kind, which int
		var fault *Fault
		var result json.RawMessage
		if err := json.Unmarshal(said, &[]any{&kind, &which, &fault, &result}); err != nil {
			return nil, err
		}
		if fault != nil {
			return nil, fault
		}
		// What the protocol calls a value stands in an object where it is not one.
		var wrapped struct{ Value json.RawMessage }
		if json.Unmarshal(result, &wrapped) == nil && wrapped.Value != nil {
			return wrapped.Value, nil
		}
		return result, nil
	}
	if _, err := p.send(newSession, map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{}}}); err != nil {
		return err
	}
	p.stop = func() {
		_, _ = p.send(order{marionette: "Marionette:Quit"}, map[string]any{"flags": []string{"eForceQuit"}})
		line.Close()
	}
	return nil
}
