package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// RFC 4180 quotes; and a cell that a spreadsheet would run stays a text.
func TestCellsAreTextsOnly(t *testing.T) {
	assert.Equal(t, "\"a\",\"b \"\"c\"\"\",\"\"\r\n", csvRow("a", `b "c"`, ""))
	for _, cell := range []string{"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"} {
		assert.Equal(t, "\"'"+cell+"\"\r\n", csvRow(cell))
	}
}
