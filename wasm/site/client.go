//go:build !js

package site

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// clientEnv makes a go command speak about the browser's build.
var clientEnv = []string{"GOOS=js", "GOARCH=wasm"}

// pageTag leaves out of the engine what only the command line needs.
const pageTag = "-tags=page"

// workName begins the name of the folder that a client is built in; it must
// not be found in what is shipped.
const workName = "film-furrow-client-"

// moduleRoot is the folder of the go.mod that the working folder belongs to.
func moduleRoot() (string, error) {
	out, err := goCommand("", nil, "env", "GOMOD").Output()
	if err != nil {
		return "", fmt.Errorf("find go.mod: %w", withStderr(err))
	}
	file := strings.TrimSpace(string(out))
	if file == "" || file == os.DevNull {
		return "", fmt.Errorf("no go.mod here: run this inside the project")
	}
	return filepath.Dir(file), nil
}

// cold are the packages whose functions are not copied into their callers: the
// page's parts, the rules and the plan of water, which run once for each key, the
// framework, and of the standard library what prints and parses. The runtime and the
// models, whose loops run a million times, are not among them; the tables would grow.
var cold = []string{
	"filmfurrow/app", "filmfurrow/rules", "filmfurrow/rules/casefile", "filmfurrow/rules/jsontext", "filmfurrow/rules/pack",
	"filmfurrow/rules/facts", "filmfurrow/rules/field", "filmfurrow/rules/judge", "filmfurrow/rules/plan", "filmfurrow/rules/question", "filmfurrow/rules/search",
	"filmfurrow/rules/model/balance", "filmfurrow/rules/model/water", "filmfurrow/rules/sheet", "filmfurrow/rules/trial", "filmfurrow/rules/unit", frameworkModule + "/...",
	"context", "internal/bisect", "internal/godebug", "internal/strconv",
	"reflect", "slices", "sort", "strconv", "strings", "syscall", "syscall/js", "time",
}

// coldFlags leave functions whole, and leave out the code that tries the stack before a
// slice of no fixed length is allocated, 3 kB.
const coldFlags = "-l -d=variablemakethreshold=0,freeappend=0"

// modfileFlags are the flags that make a go command build the trimmed client;
// work is a folder for the module file.
func modfileFlags(root, work string, untrimmed bool) ([]string, error) {
	if untrimmed {
		return []string{pageTag}, nil
	}
	modfile, err := makeTrimmed(root)
	if err != nil {
		return nil, err
	}
	sums, err := os.ReadFile(filepath.Join(root, "go.sum"))
	if err != nil {
		return nil, err
	}
	client := filepath.Join(work, "client.mod")
	if err := write(client, modfile); err != nil {
		return nil, err
	}
	over, err := overlay(root, work)
	if err != nil {
		return nil, err
	}
	flags := []string{"-modfile=" + client, "-overlay=" + over, pageTag}
	for _, name := range cold {
		flags = append(flags, "-gcflags="+name+"="+coldFlags)
	}
	return flags, write(filepath.Join(work, "client.sum"), sums)
}

// clientWork makes the folder in which the client is built, and the flags that
// build it; the caller removes the folder.
func clientWork(root string, untrimmed bool) (work string, flags []string, err error) {
	if work, err = os.MkdirTemp("", workName); err != nil {
		return "", nil, err
	}
	if flags, err = modfileFlags(root, work, untrimmed); err != nil {
		os.RemoveAll(work)
		return "", nil, err
	}
	return work, flags, nil
}

// compileClient builds the page's program. -trimpath, -buildvcs=false and an
// empty build id keep the machine and the moment out of the file.
func compileClient(root string, untrimmed bool, say func(string)) ([]byte, error) {
	program, err := link(root, untrimmed)
	if err != nil || untrimmed {
		return program, err
	}
	version, err := goCommand(root, nil, "env", "GOVERSION").Output()
	if err != nil {
		return nil, withStderr(err)
	}
	goroot, err := toolchain(root)
	if err != nil {
		return nil, err
	}
	texts, err := runtimeTexts(goroot)
	if err != nil {
		return nil, err
	}
	return shrink(unsaid(program, texts), strings.TrimSpace(string(version)), say)
}

// link has the page's program compiled and linked, and leaves it as Go wrote it.
func link(root string, untrimmed bool) ([]byte, error) {
	work, flags, err := clientWork(root, untrimmed)
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(work)
	// One build at a time: the Go command would compile everything in each of two, such as
	// those of the tests of two packages, and the second takes what the first has left.
	if err := os.MkdirAll(filepath.Join(root, ".build"), 0o755); err != nil {
		return nil, err
	}
	lock, err := os.Create(filepath.Join(root, ".build", "lock"))
	if err != nil {
		return nil, err
	}
	defer lock.Close()
	if err := hold(lock); err != nil {
		return nil, err
	}
	target := filepath.Join(work, "app.wasm")
	args := append([]string{"build"}, flags...)
	args = append(args, "-trimpath", "-buildvcs=false", "-ldflags=-s -w -buildid=", "-o", target, "./wasm")
	if out, err := goCommand(root, clientEnv, args...).CombinedOutput(); err != nil {
		return nil, fmt.Errorf("compile the page's program: %w\n%s", err, out)
	}
	return os.ReadFile(target)
}

// ClientPackages lists every package linked into the page's program.
func ClientPackages(untrimmed bool) ([]string, error) {
	root, err := moduleRoot()
	if err != nil {
		return nil, err
	}
	return clientList(root, untrimmed)
}

// clientList asks go list about the packages linked into the page's program.
func clientList(root string, untrimmed bool, flags ...string) ([]string, error) {
	work, build, err := clientWork(root, untrimmed)
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(work)
	args := append(append([]string{"list", "-deps"}, build...), flags...)
	out, err := goCommand(root, clientEnv, append(args, "./wasm")...).Output()
	if err != nil {
		return nil, withStderr(err)
	}
	return strings.Fields(string(out)), nil
}

// loaderGlue is the toolchain's own script between the browser and a Go
// program; it must come from the toolchain that compiled the program.
func loaderGlue(root string) ([]byte, error) {
	goroot, err := toolchain(root)
	if err != nil {
		return nil, err
	}
	return os.ReadFile(filepath.Join(goroot, "lib", "wasm", "wasm_exec.js"))
}

// toolchain is the folder of the Go that builds a checkout.
func toolchain(root string) (string, error) {
	out, err := goCommand(root, nil, "env", "GOROOT").Output()
	if err != nil {
		return "", withStderr(err)
	}
	return strings.TrimSpace(string(out)), nil
}
