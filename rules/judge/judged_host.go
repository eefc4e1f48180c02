//go:build !page

package judge

import "filmfurrow/rules/table"

// judged makes the row of a figure.
func judged(id, means string, value float64, measured string, source *table.Source) figure {
	return figure{Value: value, id: id, means: means, measured: measured, source: source}
}
