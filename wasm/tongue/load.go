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

// Text is a language's catalogue as one file, without what is for its writers. A language
// that is not there gives an error that lists those that are.
func Text(name string) (string, error) {
	files, err := fs.Glob(static.Languages, name+"/*.txt")
	if err != nil || len(files) == 0 {
		return "", errors.New("language " + name + " is not there. Allowed: en, " + strings.Join(Names(), ", ") + ".")
	}
	var b strings.Builder
	for _, file := range files {
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
	text, err := Text(name)
	if err != nil {
		return nil, err
	}
	return Parse(text)
}
