//go:build !js

package tongue

import (
	"errors"
	"io/fs"
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

// Page is what the page says in a language, as one file.
func Page(name string) (string, error) { return text(name, command) }

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
