//go:build !js

package tongue

import (
	"errors"
	"io/fs"
	"slices"
	"strings"

	"filmfurrow/static"
)

// Names lists the languages there are beside English, by their tags.
func Names() []string {
	folders, err := fs.ReadDir(static.Languages, ".")
	if err != nil {
		return nil
	}
	var names []string
	for _, folder := range folders {
		names = append(names, folder.Name())
	}
	return names
}

// command is the part of a language that the command line alone prints.
const command = "command.txt"

// Page is what the page says in a language, cut into parts that come one after the other.
// The first holds the pairs that the given texts need, so that what most readers see first
// is said at once; the others hold the rest, and none is longer than partMost bytes by
// more than a pair.
func Page(name string, first []string) ([]string, error) {
	all, err := text(name, command)
	if err != nil {
		return nil, err
	}
	c, err := Parse(all)
	if err != nil {
		return nil, err
	}
	c.used = map[string]bool{}
	for _, text := range first {
		c.Say(text)
	}
	var early, late strings.Builder
	var parts []string
	lines := strings.SplitAfter(all, "\n")
	for i := 0; i+1 < len(lines); i += 2 {
		to := &late
		if c.used[strings.TrimSuffix(lines[i], "\n")] {
			to = &early
		}
		to.WriteString(lines[i] + lines[i+1])
		if late.Len() > partMost {
			parts = append(parts, late.String())
			late.Reset()
		}
	}
	if late.Len() > 0 {
		parts = append(parts, late.String())
	}
	return slices.Insert(parts, 0, early.String()), nil
}

// partMost is a length, in bytes, that comes to less than 40 kB when it is compressed.
const partMost = 110_000

// text is a language's catalogue without one of its parts and without what is for its
// writers. A language that is not there gives an error that lists those that are.
func text(name, without string) (string, error) {
	files, err := fs.Glob(static.Languages, name+"/*.txt")
	if err != nil || len(files) == 0 {
		return "", errors.New("language " + name + " is not there. Allowed: en, " + strings.Join(Names(), ", ") + ".")
	}
	var b strings.Builder
	for _, file := range files {
		if file == name+"/"+without {
			continue
		}
		text, err := static.Languages.ReadFile(file)
		if err != nil {
			return "", err
		}
		for line := range strings.Lines(string(text)) {
			if line = strings.TrimRight(line, "\r\n"); line != "" && !strings.HasPrefix(line, "# ") {
				b.WriteString(line + "\n")
			}
		}
	}
	return b.String(), nil
}

// Load reads a language's catalogue.
func Load(name string) (*Catalogue, error) {
	text, err := text(name, "")
	if err != nil {
		return nil, err
	}
	return Parse(text)
}
