// Package url stands in for net/url in the client. The browser has parsed every
// address that the client sees, so it only takes them apart; net/url, with what it
// links, is a good 10 kB of the download.
package url

import "strings"

// URL is an address in its parts. Path and Fragment are without escapes.
type URL struct {
	Scheme, Opaque, Host, Path, RawQuery, Fragment string
	rawPath, rawFragment                           string
}

// Parse takes an address apart. An escape that is none stays as it is, and there
// is no error; the result has the shape of net/url.
func Parse(address string) (*URL, error) {
	u := &URL{}
	rest, fragment, _ := strings.Cut(address, "#")
	u.rawFragment, u.Fragment = fragment, unescape(fragment)
	rest, u.RawQuery, _ = strings.Cut(rest, "?")
	if scheme, after, found := strings.Cut(rest, ":"); found && !strings.ContainsAny(scheme, "/") {
		u.Scheme, rest = strings.ToLower(scheme), after
		if !strings.HasPrefix(rest, "/") {
			u.Opaque = rest
			return u, nil
		}
	}
	if after, found := strings.CutPrefix(rest, "//"); found {
		u.Host, rest = after, ""
		if i := strings.IndexByte(after, '/'); i >= 0 {
			u.Host, rest = after[:i], after[i:]
		}
	}
	u.rawPath, u.Path = rest, unescape(rest)
	return u, nil
}

// String puts the parts together. Path and fragment keep the escapes that they
// came with unless they were changed.
func (u *URL) String() string {
	text := ""
	if u.Scheme != "" {
		text = u.Scheme + ":"
	}
	if u.Opaque != "" {
		text += u.Opaque
	} else {
		if u.Host != "" {
			text += "//" + u.Host
		}
		text += as(u.Path, u.rawPath)
	}
	if u.RawQuery != "" {
		text += "?" + u.RawQuery
	}
	if u.Fragment != "" {
		text += "#" + as(u.Fragment, u.rawFragment)
	}
	return text
}

// as gives a part with the escapes that it came with, if it is still that part.
func as(part, raw string) string {
	if unescape(raw) == part {
		return raw
	}
	return part
}

func unescape(s string) string {
	if strings.IndexByte(s, '%') < 0 {
		return s
	}
	var out []byte
	for i := 0; i < len(s); i++ {
		if s[i] == '%' && i+2 < len(s) {
			high, low := digit(s[i+1]), digit(s[i+2])
			if high >= 0 && low >= 0 {
				out = append(out, byte(high<<4|low))
				i += 2
				continue
			}
		}
		out = append(out, s[i])
	}
	return string(out)
}

func digit(c byte) int {
	if c >= 'A' && c <= 'F' {
		c += 'a' - 'A'
	}
	return strings.IndexByte("0123456789abcdef", c)
}
