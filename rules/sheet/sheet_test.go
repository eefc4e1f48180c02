package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Each line is read, none twice, and figures come from the engine alone.
func TestEverySentenceIsRead(t *testing.T) {
	lines := 0
	for line := range strings.Lines(sentences) {
		if strings.TrimSpace(line) != "" {
			lines++
		}
	}
	assert.Len(t, Sentences, lines)
	assert.Greater(t, lines, 90)
	for k, s := range Sentences {
		assert.NotEmpty(t, s, k)
		assert.False(t, strings.ContainsAny(s, "0123456789"), "%s: %s", k, s)
	}
}
