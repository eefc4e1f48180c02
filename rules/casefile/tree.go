// Package casefile reads and writes the case file, the advice file and the
// share link: the only place of the engine that knows JSON. Everything that
// comes in is hostile until checked.
package casefile

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strconv"
	"strings"

	"filmfurrow/rules"
)

// Limits of what is read before it is parsed.
const (
	MaxBytes = 64 << 10
	maxDepth = 6
)

// object is a JSON object with its fields in order. A value is a string,
// json.Number, bool, nil, []any or *object.
type object struct {
	names  []string
	values []any
}

var errDepth = errors.New("too deep")

// parse reads one JSON object and nothing behind it. It refuses doubled names,
// which encoding/json would take silently.
func parse(data []byte) (*object, rules.FieldErrors) {
	if len(data) > MaxBytes {
		return nil, one("file", strconv.Itoa(len(data))+" bytes", "at most "+strconv.Itoa(MaxBytes)+" bytes", "This is not a case file of ours.")
	}
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	v, errs, err := value(d, "", 0)
	if err == nil {
		if _, more := d.Token(); more != io.EOF {
			return nil, one("file", "more text behind the case", "one JSON object", "Remove what follows the last brace.")
		}
	}
	switch {
	case errors.Is(err, errDepth):
		return nil, one("file", "nested deeper than "+strconv.Itoa(maxDepth), "the layout of a case file", "This is not a case file of ours.")
	case err != nil:
		return nil, one("file", "broken JSON near byte "+strconv.FormatInt(d.InputOffset(), 10), "one JSON object", "Check quotes, commas and braces there.")
	}
	o, ok := v.(*object)
	if !ok {
		return nil, one("file", kindOf(v), "one JSON object", "Begin with a brace.")
	}
	return o, errs
}

func one(field, value, allowed, mend string) rules.FieldErrors {
	return rules.FieldErrors{{Field: field, Value: value, Allowed: allowed, Mend: mend}}
}

func value(d *json.Decoder, path string, depth int) (any, rules.FieldErrors, error) {
	if depth > maxDepth {
		return nil, nil, errDepth
	}
	t, err := d.Token()
	if err != nil {
		return nil, nil, err
	}
	switch t {
	case json.Delim('{'):
		return members(d, path, depth)
	case json.Delim('['):
		var list []any
		var errs rules.FieldErrors
		for d.More() {
			v, e, err := value(d, path, depth+1)
			if err != nil {
				return nil, nil, err
			}
			list, errs = append(list, v), append(errs, e...)
		}
		_, err = d.Token()
		return list, errs, err
	}
	return t, nil, nil
}

func members(d *json.Decoder, path string, depth int) (any, rules.FieldErrors, error) {
	o := &object{}
	var errs rules.FieldErrors
	for d.More() {
		t, err := d.Token()
		if err != nil {
			return nil, nil, err
		}
		name, _ := t.(string)
		at := join(path, name)
		for _, seen := range o.names {
			if seen == name {
				errs = append(errs, rules.FieldError{Field: at, Value: "given twice", Allowed: "once", Mend: "Remove one of the two."})
			}
		}
		v, e, err := value(d, at, depth+1)
		if err != nil {
			return nil, nil, err
		}
		o.names, o.values = append(o.names, name), append(o.values, v)
		errs = append(errs, e...)
	}
	_, err := d.Token()
	return o, errs, err
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
	case json.Number:
		if len(v) > 40 {
			return "a number of " + strconv.Itoa(len(v)) + " digits"
		}
		return v.String()
	case bool:
		return strconv.FormatBool(v)
	case nil:
		return "null"
	case []any:
		return "a list of " + strconv.Itoa(len(v))
	}
	return "an object"
}
