//go:build !js

package main

import (
	"bytes"
	"errors"
	"io"
	"slices"
	"strings"

	"filmfurrow/wasm/tongue"
)

// languageOf takes "-lang es", or "-lang es-AR", out of a command's words; "" is English
// with figures as the program writes them. A file is the same in every language, so a
// command that writes one has none.
func languageOf(args []string) (rest []string, name string, err error) {
	for i, arg := range args {
		word, name, found := strings.Cut(strings.TrimLeft(arg, "-"), "=")
		if word != "lang" || arg[0] != '-' {
			continue
		}
		rest = slices.Delete(slices.Clone(args), i, i+1)
		if !found {
			if i == len(rest) {
				return nil, "", errors.New("-lang names no language. Allowed: en, " + strings.Join(tongue.Names(), ", ") + ".")
			}
			name = rest[i]
			rest = slices.Delete(rest, i, i+1)
		}
		written := func(flag string) bool {
			return slices.Contains(rest, flag) || slices.Contains(rest, "-"+flag)
		}
		switch {
		case name == "en":
			return rest, "", nil
		case written("-lines"), written("-file"), written("-sheet"), rest[0] == "advise" && !written("-text"):
			return nil, "", errors.New("-lang goes with what is read, such as advise -text: a file is the same in every language")
		}
		return rest, name, nil
	}
	return args, "", nil
}

// sayerOf is what says a text in the language of a tag, with the figures of its country.
func sayerOf(tag string) (func(string) string, error) {
	name, figures, err := tongue.Split(tag)
	if err != nil || name == "en" {
		return figures, err
	}
	c, err := tongue.Load(name)
	return func(text string) string {
		said, _ := c.Say(text)
		return figures(said)
	}, err
}

// speaker passes on what is written to it, line by line, in another language.
type speaker struct {
	to   io.Writer
	say  func(string) string
	line []byte
}

func (s *speaker) Write(text []byte) (int, error) {
	for part := range bytes.Lines(text) {
		s.line = append(s.line, part...)
		if part[len(part)-1] == '\n' {
			if err := s.flush(); err != nil {
				return 0, err
			}
		}
	}
	return len(text), nil
}

// flush says the line that was begun. What a source calls itself stays, and so do ids of
// sources in brackets at the end.
func (s *speaker) flush() error {
	line, ids := string(s.line), ""
	s.line = s.line[:0]
	if strings.HasPrefix(strings.TrimLeft(line, " "), "[") {
		_, err := io.WriteString(s.to, line)
		return err
	}
	if at := strings.LastIndex(line, " ["); at >= 0 && strings.HasSuffix(line, "]\n") {
		line, ids = line[:at], line[at:]
	}
	_, err := io.WriteString(s.to, s.say(line)+ids)
	return err
}
