package unit

import (
	"strings"
)

// PercentOf turns a share of 0–1 into a percent quantity.
func PercentOf(share float64) Percent { return Percent(share * 100) }

// Capital writes a name at the head of a sentence.
func Capital(name string) string {
	if name == "" {
		return name
	}
	return strings.ToUpper(name[:1]) + name[1:]
}

// DaysOf rounds a number of days for a sentence.
func DaysOf(days float64) Days { return Days(days + 0.5) }

// Lower writes a label inside a sentence.
func Lower(name string) string {
	if name == "" {
		return name
	}
	return strings.ToLower(name[:1]) + name[1:]
}
