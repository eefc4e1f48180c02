package app

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/unit"
)

// FuzzReadSaved: whatever stands in the browser's storage, reading it does not
// panic, and what was read is written and read back the same.
func FuzzReadSaved(f *testing.F) {
	for _, name := range []string{"schema-1", "schema-2"} {
		text, err := os.ReadFile("../testdata/kept/" + name + ".json")
		require.NoError(f, err)
		f.Add(string(text))
	}
	for _, text := range []string{"", "null", "[]", `{"case":7}`, `{"typed":{"crop":1}}`, `{"ticks":{"a":"b"}}`, "{broken"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		kept := readSaved(text)
		if kept == nil {
			return
		}
		casefile.Salvage([]byte(kept.Case), nil)
		if again := readSaved(kept.text()); again != nil {
			assert.Equal(t, kept, again)
		} else {
			assert.Greater(t, len(kept.text()), keptMost, "only for its length may it be refused")
		}
	})
}

// The length is looked at before anything is parsed.
func TestATextThatIsTooLongIsNotRead(t *testing.T) {
	long := `{"case":"` + strings.Repeat("x", keptMost) + `"}`
	assert.Nil(t, readSaved(long))
	assert.NotNil(t, readSaved(long[:20]+long[len(long)-100:]))
}

// The limits stand beside a field rounded; typed as they stand there, they count.
func TestAShownLimitMayBeTyped(t *testing.T) {
	for _, system := range []unit.System{unit.Metric, unit.US} {
		s := newStore(nil)
		s.system = system
		for i := range field.Inputs {
			in := &field.Inputs[i]
			if in.Form != field.FormNumber && in.Form != field.FormWhole {
				continue
			}
			for _, limit := range []float64{in.Low, in.High} {
				_, err := s.read(in, in.Kind.Figure(limit, system))
				assert.Nil(t, err, "%s, %v: %v", in.Name, system, err)
			}
		}
	}
}
