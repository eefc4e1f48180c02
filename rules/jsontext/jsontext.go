// Package jsontext reads and writes JSON text (RFC 8259) for the case file, in
// the little that it needs: a tree that keeps the order of names and names given
// twice, so that the case file can refuse them. encoding/json does neither, and in
// the page's program it weighs some 100 kB to download, which this does not.
package jsontext

import (
	"errors"
	"strconv"
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

// Number is a number as it was written.
type Number string

// Object is a JSON object with its names in order.
type Object struct {
	Names  []string
	Values []any
}

// Get is the last value given under a name, or nil.
func (o *Object) Get(name string) any {
	for i := len(o.Names) - 1; i >= 0; i-- {
		if o.Names[i] == name {
			return o.Values[i]
		}
	}
	return nil
}

// Errors of Parse. Broken text comes as a [BrokenError], which says where.
var (
	ErrDepth = errors.New("nested too deep")
	ErrMore  = errors.New("more text behind the value")
)

// BrokenError is the place of the first byte that no JSON text has there.
type BrokenError int

func (e BrokenError) Error() string { return "broken JSON near byte " + strconv.Itoa(int(e)) }

// Parse reads one value and nothing behind it. A value is a string, Number,
// bool, nil, []any or *Object, nested at most depth deep. Half surrogates and
// bytes that are not UTF-8 become U+FFFD.
func Parse(text []byte, depth int) (any, error) {
	p := parser{text: text, depth: depth}
	v, err := p.value()
	if err != nil {
		return nil, err
	}
	if p.space(); p.at < len(text) {
		return nil, ErrMore
	}
	return v, nil
}

type parser struct {
	text  []byte
	at    int
	depth int
}

func (p *parser) broken() error { return BrokenError(p.at) }

func (p *parser) space() {
	for p.at < len(p.text) {
		if c := p.text[p.at]; c != ' ' && c != '\n' && c != '\t' && c != '\r' {
			return
		}
		p.at++
	}
}

// next is the next byte behind any space, or 0 at the end.
func (p *parser) next() byte {
	p.space()
	return p.here()
}

func (p *parser) here() byte {
	if p.at == len(p.text) {
		return 0
	}
	return p.text[p.at]
}

func (p *parser) value() (any, error) {
	switch c := p.next(); c {
	case '{', '[':
		if p.depth == 0 {
			return nil, ErrDepth
		}
		p.depth--
		p.at++
		read := p.object
		if c == '[' {
			read = p.list
		}
		v, err := read()
		p.depth++
		return v, err
	case '"':
		return p.quoted()
	case 't':
		return true, p.word("true")
	case 'f':
		return false, p.word("false")
	case 'n':
		return nil, p.word("null")
	}
	return p.number()
}

func (p *parser) word(word string) error {
	for i := range len(word) {
		if p.here() != word[i] {
			return p.broken()
		}
		p.at++
	}
	return nil
}

// more reads what may stand between members: a comma, or the closing mark.
func (p *parser) more(first bool, closing byte) (bool, error) {
	switch c := p.next(); {
	case c == closing:
		p.at++
		return false, nil
	case first:
		return true, nil
	case c == ',':
		p.at++
		return true, nil
	}
	return false, p.broken()
}

func (p *parser) list() (any, error) {
	var list []any
	for {
		more, err := p.more(len(list) == 0, ']')
		if !more {
			return list, err
		}
		v, err := p.value()
		if err != nil {
			return nil, err
		}
		list = append(list, v)
	}
}

func (p *parser) object() (any, error) {
	o := &Object{}
	for {
		more, err := p.more(len(o.Names) == 0, '}')
		if !more {
			return o, err
		}
		if p.next() != '"' {
			return nil, p.broken()
		}
		name, err := p.quoted()
		if err != nil {
			return nil, err
		}
		if p.next() != ':' {
			return nil, p.broken()
		}
		p.at++
		v, err := p.value()
		if err != nil {
			return nil, err
		}
		o.Names, o.Values = append(o.Names, name), append(o.Values, v)
	}
}

func (p *parser) digits() bool {
	from := p.at
	for c := p.here(); c >= '0' && c <= '9'; c = p.here() {
		p.at++
	}
	return p.at > from
}

func (p *parser) number() (any, error) {
	from := p.at
	if p.here() == '-' {
		p.at++
	}
	if p.here() == '0' {
		p.at++
	} else if !p.digits() {
		return nil, p.broken()
	}
	if p.here() == '.' {
		p.at++
		if !p.digits() {
			return nil, p.broken()
		}
	}
	if c := p.here(); c == 'e' || c == 'E' {
		p.at++
		if c := p.here(); c == '+' || c == '-' {
			p.at++
		}
		if !p.digits() {
			return nil, p.broken()
		}
	}
	return Number(p.text[from:p.at]), nil
}

const plainEscapes = "\"\\/bfnrt"

func (p *parser) quoted() (string, error) {
	p.at++
	var out []byte
	for {
		switch c := p.here(); {
		case c == '"':
			p.at++
			return string(out), nil
		case c < ' ':
			return "", p.broken() // also the end
		case c == '\\':
			p.at++
			c = p.here()
			if c == 'u' {
				r, err := p.escaped()
				if err != nil {
					return "", err
				}
				out = utf8.AppendRune(out, r)
				continue
			}
			i := strings.IndexByte(plainEscapes, c)
			if i < 0 {
				return "", p.broken()
			}
			out = append(out, "\"\\/\b\f\n\r\t"[i])
			p.at++
		case c < utf8.RuneSelf:
			from := p.at
			for c >= ' ' && c < utf8.RuneSelf && c != '"' && c != '\\' {
				p.at++
				c = p.here()
			}
			out = append(out, p.text[from:p.at]...)
		default:
			r, size := utf8.DecodeRune(p.text[p.at:])
			out = utf8.AppendRune(out, r)
			p.at += size
		}
	}
}

// escaped reads a rune from its u and four digits, or from a pair of such.
func (p *parser) escaped() (rune, error) {
	r, err := p.four()
	if err != nil || !utf16.IsSurrogate(r) {
		return r, err
	}
	if p.here() == '\\' && p.at+1 < len(p.text) && p.text[p.at+1] == 'u' {
		before := p.at
		p.at++
		second, err := p.four()
		if err != nil {
			return 0, err
		}
		if both := utf16.DecodeRune(r, second); both != utf8.RuneError {
			return both, nil
		}
		p.at = before
	}
	return utf8.RuneError, nil
}

func (p *parser) four() (rune, error) {
	p.at++
	var r rune
	for range 4 {
		i := strings.IndexByte("0123456789abcdef", p.here()|0x20)
		if i < 0 || p.here() < '0' {
			return 0, p.broken()
		}
		r = r<<4 + rune(i)
		p.at++
	}
	return r, nil
}

// Quote writes a string as JSON. What would end a script or a line in a page is
// escaped, as encoding/json does it.
func Quote(s string) string {
	out := []byte{'"'}
	for at, size := 0, 0; at < len(s); at += size {
		var r rune
		r, size = utf8.DecodeRuneInString(s[at:])
		i := strings.IndexRune("\"\\\b\f\n\r\t", r)
		switch {
		case r == utf8.RuneError && size == 1: // not UTF-8
			out = append(out, "\\ufffd"...)
		case i >= 0:
			out = append(out, '\\', "\"\\bfnrt"[i])
		case r < ' ', r == '<', r == '>', r == '&', r == 0x2028, r == 0x2029:
			const digits = "0123456789abcdef"
			out = append(out, '\\', 'u', digits[r>>12], digits[r>>8&15], digits[r>>4&15], digits[r&15])
		default:
			out = utf8.AppendRune(out, r)
		}
	}
	return string(append(out, '"'))
}
