//go:build page

package judge

import "filmfurrow/rules/table"

// judged makes the same figure for the page's program, which does not carry what it
// means: "explain" alone prints that.
func judged(_, _ string, value float64, _ string, _ *table.Source) figure {
	return figure{Value: value}
}
