//go:build !js

package tongue

import (
	"fmt"
	"regexp"
	"strings"

	"golang.org/x/text/language"
	"golang.org/x/text/message"
	cldr "golang.org/x/text/number"
)

// Split takes a tag such as es-AR apart: the language, and how its readers write figures,
// by the Unicode Common Locale Data Repository. A tag without a region writes them as the
// program does, 1,234.5: that is the custom of the United States, Mexico and Central
// America. An error says what is wrong with the tag.
func Split(tag string) (name string, figures func(string) string, err error) {
	name, region, found := strings.Cut(tag, "-")
	if !found {
		return name, func(text string) string { return text }, nil
	}
	parsed, err := language.Parse(tag)
	if err != nil {
		return "", nil, fmt.Errorf("language %q: region %q is not known; write the language alone, or with a country of two letters such as es-AR", tag, region)
	}
	p := message.NewPrinter(parsed)
	group, decimal := marks(p.Sprint(cldr.Decimal(1234567.5)))
	// The library does not carry the repository's least grouping: European Spanish, whose
	// tags have no parent but Spanish itself, writes 1234 and 12.345.
	atFour := parsed.Parent() != language.Spanish
	return name, func(text string) string { return rewrite(text, group, decimal, atFour) }, nil
}

// marks finds what stands between the figures of 1,234,567.5.
func marks(shown string) (group, decimal string) {
	parts := regexp.MustCompile(`[^0-9]+`).FindAllString(shown, -1)
	if len(parts) < 2 {
		return "", "."
	}
	return parts[0], parts[len(parts)-1]
}

// figure is one number as the program writes it, with what stands before it. What is part
// of something longer, such as a version or an address, is none: see alone.
var figure = regexp.MustCompile(`(^|[^\d.,\pL])(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d+))?`)

// rewrite puts other marks into the numbers of a text. static/words.js does the same.
func rewrite(text, group, decimal string, atFour bool) string {
	if group == "," && decimal == "." {
		return text
	}
	var b strings.Builder
	for text != "" {
		at := figure.FindStringSubmatchIndex(text)
		if at == nil {
			break
		}
		whole := text[at[4]:at[5]]
		b.WriteString(text[:at[3]])
		switch {
		case !alone(text[at[1]:]):
			b.WriteString(text[at[3]:at[1]])
		default:
			if len(whole) == len("1,234") && !atFour {
				whole = strings.ReplaceAll(whole, ",", "")
			}
			b.WriteString(strings.ReplaceAll(whole, ",", group))
			if at[6] >= 0 {
				b.WriteString(decimal + text[at[6]:at[7]])
			}
		}
		text = text[at[1]:]
		// The rest of something longer is no number either.
		if cut := rest.FindString(text); cut != "" {
			b.WriteString(cut)
			text = text[len(cut):]
		}
	}
	b.WriteString(text)
	return b.String()
}

var (
	goesOn = regexp.MustCompile(`^(?:\d|[.,]\d|/)`)
	rest   = regexp.MustCompile(`^(?:[.,/]?\d)+`)
)

// alone tells whether a number ends where the given text begins.
func alone(after string) bool { return !goesOn.MatchString(after) }
