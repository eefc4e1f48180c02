package rules

import (
	"strings"

	"filmfurrow/rules/unit"
)

// percentOf turns a share of 0–1 into a percent quantity.
func percentOf(share float64) unit.Percent { return unit.Percent(share * 100) }

// capital writes a name at the head of a sentence.
func capital(name string) string {
	if name == "" {
		return name
	}
	return strings.ToUpper(name[:1]) + name[1:]
}

// daysOf rounds a number of days for a sentence.
func daysOf(days float64) unit.Days { return unit.Days(days + 0.5) }

// lower writes a label inside a sentence.
func lower(name string) string {
	if name == "" {
		return name
	}
	return strings.ToLower(name[:1]) + name[1:]
}
