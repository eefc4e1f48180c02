//go:build !js

// Package site builds the published site: it compiles the page's program,
// prerenders each page with the framework, rewrites the HTML, and lays out
// every other file a static host needs. The same input gives the same bytes.
package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"text/template"

	"filmfurrow/app"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/plan"
	sources "filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/table/series"
	"filmfurrow/wasm/tongue"
)

// Page is one address of the site that is prerendered.
type Page struct {
	Path        string // address below the site's root, such as "/" or "/card"
	Title       string // title bar, shared links
	Description string // one sentence for search and sharing
}

// Options say what to build and where to.
type Options struct {
	Pages     []Page
	Out       string       // folder to write to; emptied first. With "" nothing is written.
	Base      string       // path the site is published below: "" or "/sub/path"
	Site      string       // public origin, "https://example.org", or "" when unknown
	Compress  bool         // also write .br and .gz copies
	Untrimmed bool         // link the framework whole, for comparison
	Say       func(string) // told each step in words; nil keeps silent

	// Program is used in place of compiling one; tests share it.
	Program []byte
}

// Site is a built site in memory.
type Site struct {
	Files   map[string][]byte // by path below the site's root, with forward slashes
	Program []byte            // the WebAssembly file of the page
	Version string            // hash of everything that is shipped
	Base    string
}

// Names and colours by which the site introduces itself to a device.
const (
	siteName   = "Film & Furrow"
	shortName  = "Film & Furrow"
	themeColor = "#3d2b1f"
	paperColor = "#fbf8f1"
	siteLang   = "en"
)

// Build makes the site and writes it to options.Out.
func Build(options Options) (Report, error) {
	say := options.Say
	if say == nil {
		say = func(string) {}
	}
	built, err := Make(options)
	if err != nil {
		return Report{}, err
	}
	dir, err := filepath.Abs(options.Out)
	if err != nil {
		return Report{}, err
	}
	files := built.Files
	if options.Compress {
		say("Compressing, which takes the longest …")
		if files, err = withCompressed(files); err != nil {
			return Report{}, err
		}
	}
	if err := writeAll(dir, files); err != nil {
		return Report{}, err
	}
	return newReport(dir, built, files), nil
}

// Make builds the site in memory.
func Make(options Options) (*Site, error) {
	say := options.Say
	if say == nil {
		say = func(string) {}
	}
	base, err := cleanBase(options.Base)
	if err != nil {
		return nil, err
	}
	root, err := moduleRoot()
	if err != nil {
		return nil, err
	}
	static := func(name string) ([]byte, error) { return os.ReadFile(filepath.Join(root, "static", name)) }

	program := options.Program
	if program == nil {
		say("Compiling the page's program for the browser; the first time takes a minute or two …")
		if program, err = compileClient(root, options.Untrimmed, say); err != nil {
			return nil, err
		}
	}

	say("Writing the pages …")
	files := map[string][]byte{}
	add := func(stem, ext string, body []byte) string {
		name := fmt.Sprintf("assets/%s-%s%s", stem, shortHash(body), ext)
		files[name] = body
		return base + "/" + name
	}
	addText := func(stem, ext, kind string, body []byte) (string, error) {
		body, err := shorter(kind, body)
		return add(stem, ext, body), err
	}
	const script, style = "text/javascript", "text/css"
	var links assets
	links.program = add("app", ".wasm", program)

	glue, err := loaderGlue(root)
	if err != nil {
		return nil, err
	}
	if links.glue, err = addText("wasm_exec", ".js", script, glue); err != nil {
		return nil, err
	}

	boot, err := static("boot.js")
	if err != nil {
		return nil, err
	}
	if links.boot, err = addText("boot", ".js", script, boot); err != nil {
		return nil, err
	}

	env := map[string]string{
		"GOAPP_ROOT_PREFIX":          base,
		"GOAPP_STATIC_RESOURCES_URL": base,
		"GOAPP_INTERNAL_URLS":        "[]",
	}
	for name, body := range data() {
		ext := path.Ext(name)
		env["file:"+name] = add(strings.TrimSuffix(name, ext), ext, body)
	}
	var addresses []string
	for _, p := range options.Pages {
		if p.Path != room { // which has a script and a style of its own: it is loaded, never slipped in
			addresses = append(addresses, base+p.Path)
		}
	}
	start, err := static("start.js")
	if err != nil {
		return nil, err
	}
	start, err = fill("start.js", start, map[string]any{"Site": map[string]any{
		"base":      base,
		"wasm":      links.program,
		"wasmBytes": len(program),
		"worker":    base + "/worker.js",
		"pages":     addresses,
		"env":       env,
	}})
	if err != nil {
		return nil, err
	}
	if links.start, err = addText("start", ".js", script, start); err != nil {
		return nil, err
	}

	old, err := static("old.js")
	if err != nil {
		return nil, err
	}
	if links.old, err = addText("old", ".js", script, old); err != nil {
		return nil, err
	}

	cardScript, err := static("card.js")
	if err != nil {
		return nil, err
	}
	if links.card, err = addText("card", ".js", script, cardScript); err != nil {
		return nil, err
	}

	roomPack, err := app.RoomPack()
	if err != nil {
		return nil, err
	}
	desk, slides, line, place := "", "", "", ""
	for _, one := range []struct {
		stem, ext, kind string
		to              *string
	}{{"pack", ".js", script, &desk}, {"slides", ".js", script, &slides}, {"line", ".js", script, &line}, {"place", ".js", script, &place}, {"room", ".js", script, &links.room}, {"room", ".css", style, &links.roomStyle}, {"speaker", ".js", script, &links.speaker}, {"picture", ".js", script, &links.picture}} {
		text, err := static(one.stem + one.ext)
		if err != nil {
			return nil, err
		}
		if one.to == &links.room {
			if text, err = fill("room.js", text, map[string]any{"Pack": add("pack", ".json", []byte(roomPack)), "Questions": app.RoomQuestions(), "Base": base, "Desk": desk, "Slides": slides, "Line": line, "Place": place}); err != nil {
				return nil, err
			}
		}
		if *one.to, err = addText(one.stem, one.ext, one.kind, text); err != nil {
			return nil, err
		}
	}

	rendered, err := prerender(options.Pages, base)
	if err != nil {
		return nil, err
	}
	early, err := firstTexts(rendered)
	if err != nil {
		return nil, err
	}
	if links.language, err = languages(early, add, addText, static); err != nil {
		return nil, err
	}

	var css []byte
	for _, name := range []string{"shell.css", "page.css"} {
		part, err := static(name)
		if err != nil {
			return nil, err
		}
		css = append(css, part...)
	}
	if links.style, err = addText("page", ".css", style, css); err != nil {
		return nil, err
	}
	paper, err := static("paper.css")
	if err != nil {
		return nil, err
	}
	onPaper := links
	if onPaper.style, err = addText("paper", ".css", style, paper); err != nil {
		return nil, err
	}

	for name, body := range icons() {
		files["icons/"+name] = body
	}
	if files["manifest.webmanifest"], err = manifest(base, options.Pages); err != nil {
		return nil, err
	}

	for _, p := range options.Pages {
		page, err := rewrite(rendered[p.Path], p, base, strings.TrimSuffix(options.Site, "/"), links)
		if err != nil {
			return nil, fmt.Errorf("page %s: %w", p.Path, err)
		}
		files[fileOf(p.Path)] = page
	}
	cards := cardPages()
	for i, p := range cards {
		if files[fileOf(p.Path)], err = cardHTML(&app.Cards[i], p, base, strings.TrimSuffix(options.Site, "/"), links); err != nil {
			return nil, fmt.Errorf("page %s: %w", p.Path, err)
		}
	}
	if files["404.html"], err = notFound(base, links); err != nil {
		return nil, err
	}
	if files[fileOf(about.Path)], err = aboutPage(root, base, strings.TrimSuffix(options.Site, "/"), links); err != nil {
		return nil, err
	}
	if files[fileOf(trouble.Path)], err = troublePage(base, strings.TrimSuffix(options.Site, "/"), links); err != nil {
		return nil, err
	}
	wall, err := static("room.css") // what a ballot looks like
	if err != nil {
		return nil, err
	}
	taken, err := takeAway(files, base, strings.TrimSuffix(options.Site, "/"), onPaper, string(css)+string(wall))
	if err != nil {
		return nil, fmt.Errorf("what is taken along: %w", err)
	}
	listed := append(slices.Concat(options.Pages, cards, taken), about, trouble)
	if files["_headers"], err = headers(base, listed, files); err != nil {
		return nil, err
	}

	version := versionOf(files)
	worker, err := static("worker.js")
	if err != nil {
		return nil, err
	}
	if worker, err = fillWorker(worker, base, version, files, listed); err != nil {
		return nil, err
	}
	if files["worker.js"], err = shorter(script, worker); err != nil {
		return nil, err
	}
	if err := clean(files, root); err != nil {
		return nil, err
	}
	return &Site{Files: files, Program: program, Version: version, Base: base}, nil
}

// languages writes the catalogues, the script that says the page by one, and the script
// that chooses; the last one's address is given. What the early texts need comes first.
func languages(early []string, add func(stem, ext string, body []byte) string, addText func(stem, ext, kind string, body []byte) (string, error), static func(string) ([]byte, error)) (string, error) {
	catalogues := map[string][]string{}
	for _, name := range tongue.Names() {
		parts, err := tongue.Page(name, early)
		if err != nil {
			return "", err
		}
		for _, part := range parts {
			catalogues[name] = append(catalogues[name], add(name, ".txt", []byte(part)))
		}
	}
	words, err := static("words.js")
	if err != nil {
		return "", err
	}
	address, err := addText("words", ".js", "text/javascript", words)
	if err != nil {
		return "", err
	}
	chooser, err := static("language.js")
	if err != nil {
		return "", err
	}
	if chooser, err = fill("language.js", chooser, map[string]any{"Catalogues": catalogues, "Words": address}); err != nil {
		return "", err
	}
	return addText("language", ".js", "text/javascript", chooser)
}

// data are the tables that the program fetches when it needs them rather than
// carry them. It learns the address of one from the framework's environment:
//
//	app.Getenv("file:normals.csv") // "/assets/normals-0123456789ab.csv"
func data() map[string][]byte {
	return map[string][]byte{"normals.csv": []byte(normals.Text), "beside.csv": []byte(normals.BesideText), "world.csv": []byte(normals.WorldText), "world-beside.csv": []byte(normals.WorldBesideText), "places.csv": []byte(normals.PlacesText), "series.csv": []byte(series.Text), "sources.tsv": []byte(sources.SourceTexts() + judge.RuleTexts() + plan.AfterTexts() + water.StepTexts())}
}

// assets are the addresses of the files that every page loads.
type assets struct {
	boot, start, old, glue, style, card, language, program string
	room, roomStyle, speaker, picture                      string // of one page each
}

// room is the address of the page on a projector.
const room = "/workshop"

func cleanBase(base string) (string, error) {
	trimmed := strings.Trim(base, "/")
	if trimmed == "" {
		return "", nil
	}
	for _, r := range trimmed {
		if !(r == '/' || r == '-' || r == '_' || r == '.' || r == '~' || '0' <= r && r <= '9' || 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z') {
			return "", fmt.Errorf("base %q: only letters, digits and - _ . ~ between slashes; write it like /sub/path", base)
		}
	}
	if path.Clean("/"+trimmed) != "/"+trimmed {
		return "", fmt.Errorf("base %q: empty or dotted parts; write it like /sub/path", base)
	}
	return "/" + trimmed, nil
}

// fileOf is the file that a host serves for a page's address.
func fileOf(address string) string {
	if address == "/" {
		return "index.html"
	}
	return strings.Trim(address, "/") + ".html"
}

func shortHash(body []byte) string {
	sum := sha256.Sum256(body)
	return hex.EncodeToString(sum[:6])
}

// versionOf hashes every shipped file with its name.
func versionOf(files map[string][]byte) string {
	h := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		sum := sha256.Sum256(files[name])
		fmt.Fprintf(h, "%s %x\n", name, sum)
	}
	return hex.EncodeToString(h.Sum(nil)[:8])
}

// fillWorker writes the worker that keeps the site on the device. Its list is
// every file of the site by the address it is asked for, with its hash.
func fillWorker(worker []byte, base, version string, files map[string][]byte, pages []Page) ([]byte, error) {
	addresses := map[string]string{}
	for name := range files {
		if name != "_headers" && name != "404.html" {
			addresses[name] = base + "/" + name
		}
	}
	addresses["404.html"] = base + "/404.html"
	for _, p := range pages {
		addresses[fileOf(p.Path)] = base + p.Path
	}
	list := map[string]string{}
	for name, address := range addresses {
		sum := sha256.Sum256(files[name])
		list[address] = "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
	}
	return fill("worker.js", worker, map[string]any{
		"Version":  version,
		"Base":     base,
		"Files":    list, // encoding/json sorts the keys
		"NotFound": base + "/404.html",
	})
}

// fill puts values into a script, each as a JSON literal.
func fill(name string, script []byte, values map[string]any) ([]byte, error) {
	literals := map[string]string{}
	for key, value := range values {
		b, err := json.Marshal(value)
		if err != nil {
			return nil, err
		}
		literals[key] = string(b)
	}
	t, err := template.New(name).Option("missingkey=error").Parse(string(script))
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	if err := t.Execute(&out, literals); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}

// clean refuses a site that tells of the machine it was built on.
func clean(files map[string][]byte, root string) error {
	home, _ := os.UserHomeDir()
	tell := []string{"127.0.0.1", "localhost:", root, workName}
	if len(home) > 1 {
		tell = append(tell, home+string(filepath.Separator))
	}
	for _, name := range slices.Sorted(maps.Keys(files)) {
		for _, word := range tell {
			if at := bytes.Index(files[name], []byte(word)); at >= 0 {
				context := files[name][max(0, at-40):min(len(files[name]), at+60)]
				return fmt.Errorf("%s tells of this machine at byte %d: %q", name, at, context)
			}
		}
	}
	return nil
}

// writeAll puts the files into an emptied folder. A folder that holds anything
// but an earlier site is left alone.
func writeAll(dir string, files map[string][]byte) error {
	entries, err := os.ReadDir(dir)
	if err != nil && !os.IsNotExist(err) {
		return err
	}
	if len(entries) > 0 {
		if _, err := os.Stat(filepath.Join(dir, "worker.js")); err != nil {
			return fmt.Errorf("%s holds files that are not an earlier site; empty it or choose another folder with -out", dir)
		}
		for _, entry := range entries {
			if err := os.RemoveAll(filepath.Join(dir, entry.Name())); err != nil {
				return err
			}
		}
	}
	for name, body := range files {
		if err := write(filepath.Join(dir, filepath.FromSlash(name)), body); err != nil {
			return err
		}
	}
	return nil
}
