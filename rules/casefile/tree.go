// Package casefile reads and writes the case file, the advice file and the
// share link: the only place of the engine that knows JSON. Everything that
// comes in is hostile until checked.
package casefile

import (
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
)

// Limits of what is read before it is parsed.
const (
	MaxBytes = 64 << 10
	maxDepth = 6
)

// parse reads one JSON object and nothing behind it. It refuses doubled names,
// which most readers of JSON take silently.
func parse(data []byte) (*jsontext.Object, field.Errors) {
	return parseWithin(data, MaxBytes, maxDepth)
}

// parseWithin does so within a size in bytes and a depth.
func parseWithin(data []byte, size, depth int) (*jsontext.Object, field.Errors) {
	if len(data) > size {
		return nil, one("file", strconv.Itoa(len(data))+" bytes", "at most "+strconv.Itoa(size)+" bytes", "This is not a case file of ours.")
	}
	v, err := jsontext.Parse(data, depth)
	switch err {
	case nil:
	case jsontext.ErrMore:
		return nil, one("file", "more text behind the case", "one JSON object", "Remove what follows the last brace.")
	case jsontext.ErrDepth:
		return nil, one("file", "nested deeper than "+strconv.Itoa(depth), "the layout of a case file", "This is not a case file of ours.")
	default:
		return nil, one("file", err.Error(), "one JSON object", "Check quotes, commas and braces there.")
	}
	o, ok := v.(*jsontext.Object)
	if !ok {
		return nil, one("file", kindOf(v), "one JSON object", "Begin with a brace.")
	}
	return o, doubled(o, "")
}

// doubled finds names that are given twice, at any depth.
func doubled(v any, path string) (errs field.Errors) {
	switch v := v.(type) {
	case []any:
		for _, item := range v {
			errs = append(errs, doubled(item, path)...)
		}
	case *jsontext.Object:
		for i, name := range v.Names {
			at := join(path, name)
			if slices.Contains(v.Names[:i], name) {
				errs = append(errs, field.Error{Field: at, Value: "given twice", Allowed: "once", Mend: "Remove one of the two."})
			}
			errs = append(errs, doubled(v.Values[i], at)...)
		}
	}
	return errs
}

func one(name, value, allowed, mend string) field.Errors {
	return field.Errors{{Field: name, Value: value, Allowed: allowed, Mend: mend}}
}

func join(path, name string) string {
	name = strings.ToValidUTF8(name, "?")
	if r := []rune(name); len(r) > 40 {
		name = string(r[:40]) + "…"
	}
	if path == "" {
		return name
	}
	return path + "." + name
}

// kindOf names the JSON type of a value for an error.
func kindOf(v any) string {
	switch v := v.(type) {
	case string:
		if r := []rune(v); len(r) > 40 {
			v = string(r[:40]) + "…"
		}
		return strconv.Quote(v)
	case jsontext.Number:
		if len(v) > 40 {
			return "a number of " + strconv.Itoa(len(v)) + " digits"
		}
		return string(v)
	case bool:
		return strconv.FormatBool(v)
	case nil:
		return "null"
	case []any:
		return "a list of " + strconv.Itoa(len(v))
	}
	return "an object"
}
