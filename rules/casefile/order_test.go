package casefile_test

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
)

// Whether to lay film at all, and the gates that decide it, stand before every
// other answer in the advice file.
func TestGatesComeFirstInTheAdviceFile(t *testing.T) {
	for _, id := range []string{"carrot-drill", "pepper-cool-spring", "tomato-frost-pocket"} {
		a, err := rules.Advise(packCases(t)[id])
		require.NoError(t, err)
		file, err := casefile.EncodeAdvice(&a, nil)
		require.NoError(t, err)
		verdict := bytes.Index(file, []byte("\n \"verdict\": {"))
		require.Positive(t, verdict)
		for _, answer := range []string{"film", "surface", "thickness", "bed", "tape", "wait", "shopping", "season", "laying_day"} {
			assert.Greater(t, bytes.Index(file, []byte("\n \""+answer+"\": ")), verdict, "%s, %s", id, answer)
		}
		if len(a.Gates) > 0 {
			assert.Greater(t, bytes.Index(file, []byte(a.Gates[0].Rule.ID)), verdict)
			assert.Less(t, bytes.Index(file, []byte(a.Gates[0].Rule.ID)), bytes.Index(file, []byte("\n \"film\": ")), id)
		}
	}
}
