package casefile_test

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
)

var update = flag.Bool("update", false, "write the golden advice anew; read the difference before you commit it")

// golden names the cases whose whole advice is kept, byte for byte. The same
// bytes are asked of js/wasm by TestGoldenAdviceInTheBrowser in package wasm.
var golden = []string{"pepper-cool-spring", "tomato-high-summer", "corn-short-season", "broccoli-late-summer", "melon-weak-well",
	"flowers-by-hand", "tomato-frost-pocket", "strawberry-autumn", "carrot-drill", "squash-virus", "tomato-southern-spring", "eggplant-tropics"}

func TestGoldenAdvice(t *testing.T) {
	for _, id := range golden {
		t.Run(id, func(t *testing.T) {
			data, err := os.ReadFile(filepath.Join("../../testdata/cases", id+".json"))
			require.NoError(t, err)
			c, err := casefile.Decode(data, places(t))
			require.NoError(t, err)
			a, err := rules.Advise(c)
			require.NoError(t, err)
			got, err := casefile.EncodeAdvice(&a, nil)
			require.NoError(t, err)
			file := filepath.Join("../../testdata/advice", id+".json")
			if *update {
				require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
				require.NoError(t, os.WriteFile(file, got, 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err)
			if string(want) != string(got) {
				at := 0
				for at < len(want) && at < len(got) && want[at] == got[at] {
					at++
				}
				from := max(0, at-120)
				assert.Equal(t, string(want[from:min(len(want), at+120)]), string(got[from:min(len(got), at+120)]), "the advice has changed; if it should, run with -update and read the difference")
			}
		})
	}
}
