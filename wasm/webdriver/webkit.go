//go:build !js

package webdriver

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// browsers are where Debian keeps the small browser that comes with WebKitGTK.
const browsers = "/usr/lib/*/webkit2gtk-4.*/MiniBrowser"

// webkit starts the driver of WebKitGTK on a screen in memory. The window fills the
// screen, since one with a frame is never narrower than 447 px.
func (p *Page) webkit() error {
	program, err := find("WebKitWebDriver")
	if err != nil {
		return err
	}
	found, _ := filepath.Glob(browsers)
	if len(found) == 0 {
		return missing(browsers)
	}
	screen, err := p.screen()
	if err != nil {
		return err
	}
	port, err := freePort()
	if err != nil {
		return err
	}
	settings := filepath.Join(p.folder, "settings")
	moves := "true"
	if p.options.Still {
		moves = "false"
	}
	for name, text := range map[string]string{
		"gtk-3.0/settings.ini": "[Settings]\ngtk-enable-animations=" + moves + "\n",
		"user-dirs.dirs":       fmt.Sprintf("XDG_DOWNLOAD_DIR=%q\n", p.Downloads),
	} {
		file := filepath.Join(settings, name)
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			return err
		}
	}
	command := exec.Command(program, "--port="+strconv.Itoa(port))
	command.Env = append(os.Environ(), "DISPLAY=:"+screen, "GDK_BACKEND=x11", "HOME="+p.folder, "XDG_CONFIG_HOME="+settings,
		"XDG_DATA_HOME="+filepath.Join(p.folder, "data"), "XDG_CACHE_HOME="+filepath.Join(p.folder, "cache"))
	command.Stdout, command.Stderr = p.console, p.console
	if err := p.start(command); err != nil {
		return err
	}
	base := "http://127.0.0.1:" + strconv.Itoa(port)
	if err := p.until(func() bool {
		reply, err := http.Get(base + "/status")
		if err == nil {
			reply.Body.Close()
		}
		return err == nil
	}); err != nil {
		return fmt.Errorf("%s does not answer: %w", program, err)
	}
	client := &http.Client{Timeout: patience}
	session := ""
	p.send = func(o order, parameters map[string]any) (json.RawMessage, error) {
		path := o.path
		for name, value := range parameters {
			if word, ok := value.(string); ok && strings.Contains(path, "{"+name+"}") {
				path = strings.ReplaceAll(path, "{"+name+"}", word)
			}
		}
		var body io.Reader
		if o.method == http.MethodPost {
			if parameters == nil {
				parameters = map[string]any{}
			}
			text, err := json.Marshal(parameters)
			if err != nil {
				return nil, err
			}
			body = bytes.NewReader(text)
		}
		request, err := http.NewRequest(o.method, base+session+path, body)
		if err != nil {
			return nil, err
		}
		request.Header.Set("Content-Type", "application/json")
		reply, err := client.Do(request)
		if err != nil {
			return nil, err
		}
		defer reply.Body.Close()
		var said struct{ Value json.RawMessage }
		if err := json.NewDecoder(reply.Body).Decode(&said); err != nil {
			return nil, err
		}
		if reply.StatusCode != http.StatusOK {
			fault := &Fault{}
			if err := json.Unmarshal(said.Value, fault); err != nil {
				return nil, err
			}
			return nil, fault
		}
		return said.Value, nil
	}
	arguments := []string{"--automation", "--full-screen"}
	if p.options.Dark {
		arguments = append(arguments, "--dark-mode")
	}
	if p.options.NoStorage {
		arguments = append(arguments, "--enable-html5-local-storage=false")
	}
	said, err := p.send(newSession, map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{
		"webkitgtk:browserOptions": map[string]any{"binary": found[0], "args": arguments},
	}}})
	if err != nil {
		return err
	}
	var made struct{ SessionID string }
	if err := json.Unmarshal(said, &made); err != nil {
		return err
	}
	session = "/session/" + made.SessionID
	p.stop = func() { _, _ = p.send(order{method: http.MethodDelete}, nil) }
	return nil
}

// screen starts a screen in memory and returns its number, which it chooses itself.
func (p *Page) screen() (string, error) {
	program, err := find("Xvfb")
	if err != nil {
		return "", err
	}
	read, write, err := os.Pipe()
	if err != nil {
		return "", err
	}
	defer read.Close()
	command := exec.Command(program, "-displayfd", "3", "-screen", "0", "2000x3000x24", "-nolisten", "tcp")
	command.ExtraFiles = []*os.File{write}
	err = p.start(command)
	write.Close()
	if err != nil {
		return "", err
	}
	read.SetReadDeadline(time.Now().Add(patience))
	number, err := bufio.NewReader(read).ReadString('\n')
	if err != nil {
		return "", fmt.Errorf("%s told no screen: %w", program, err)
	}
	return strings.TrimSpace(number), nil
}

// freePort is a port that nobody listens on just now.
func freePort() (int, error) {
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return 0, err
	}
	defer listener.Close()
	return listener.Addr().(*net.TCPAddr).Port, nil
}
