//go:build !js

package main

import (
	"bufio"
	"encoding/json"
	"errors"
	"io"
	"runtime"
	"sync"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table/normals"
)

// A line in, a line out: one case a line is read and one advice, or one error,
// a line is written, in the same order, on all cores, in constant memory. So
// any engine that pipes lines through a program can spread a table over
// machines: whole and sharded runs give the same bytes.

// batch is how many lines are in hand for each core, and keptGrounds how many
// grounds, so that memory stays the same however long the table is.
const batch, keptGrounds = 64, 64

// encoding writes one advice on one line.
type encoding func(*plan.Advice) ([]byte, error)

type lineError struct {
	Error string `json:"error"`
}

// adviseLines answers each line. Its error is one of reading or writing only: a
// bad case is a line of its own.
func adviseLines(in io.Reader, out io.Writer, places *normals.Table, encode encoding) error {
	r := bufio.NewReaderSize(in, 1<<16)
	w := bufio.NewWriterSize(out, 1<<16)
	cores := runtime.GOMAXPROCS(0)
	lines := make([][]byte, 0, batch*cores)
	answers := make([][]byte, batch*cores)
	grounds := make([]map[facts.SoilKey]*facts.SoilYear, cores)
	for i := range grounds {
		grounds[i] = map[facts.SoilKey]*facts.SoilYear{}
	}
	for {
		lines = lines[:0]
		end := false
		for len(lines) < cap(lines) {
			line, err := readLine(r)
			if err == io.EOF {
				end = true
				break
			}
			if err != nil {
				return err
			}
			lines = append(lines, line)
		}
		var all sync.WaitGroup
		for core := range cores {
			all.Go(func() {
				for i := core; i < len(lines); i += cores {
					answers[i] = answerLine(lines[i], places, grounds[core], encode)
				}
			})
		}
		all.Wait()
		for i := range lines {
			if _, err := w.Write(answers[i]); err != nil {
				return err
			}
		}
		if end {
			return w.Flush()
		}
	}
}

// readLine reads one line of any length, and keeps no more of it than shows
// that it is too long.
func readLine(r *bufio.Reader) ([]byte, error) {
	var line []byte
	for {
		part, err := r.ReadSlice('\n')
		if room := casefile.MaxBytes + 2 - len(line); room > 0 {
			line = append(line, part[:min(len(part), room)]...)
		}
		switch {
		case err == nil:
			return trimEnd(line), nil
		case errors.Is(err, bufio.ErrBufferFull):
			continue
		case err == io.EOF && len(line) > 0:
			return trimEnd(line), nil
		}
		return nil, err
	}
}

func trimEnd(line []byte) []byte {
	for len(line) > 0 && (line[len(line)-1] == '\n' || line[len(line)-1] == '\r') {
		line = line[:len(line)-1]
	}
	return line
}

func answerLine(line []byte, places *normals.Table, grounds map[facts.SoilKey]*facts.SoilYear, encode encoding) []byte {
	fail := func(err error) []byte {
		text, _ := json.Marshal(lineError{err.Error()}) // a string always marshals
		return append(text, '\n')
	}
	c, err := casefile.Decode(line, places)
	if err != nil {
		return fail(err)
	}
	key := facts.KeyOf(c)
	if grounds[key] == nil {
		if len(grounds) >= keptGrounds {
			clear(grounds)
		}
		if grounds[key], err = facts.NewSoilYear(c); err != nil {
			return fail(err)
		}
	}
	a, err := rules.AdviseOn(grounds[key], c)
	if err != nil {
		return fail(err)
	}
	text, err := encode(&a)
	if err != nil {
		return fail(err)
	}
	return text
}
