package rules_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
)

// What the tool advises against published statements that were gathered before it was asked,
// and on which nothing was fitted.
func TestHeldOut(t *testing.T) {
	for _, newest := range []bool{false, true} {
		var all [3]int
		list := recommendations(t, "held-out.csv", newest)
		for i := range list {
			r := &list[i]
			require.Empty(t, field.Check(&r.c), r.id)
			a := farms.Advise(t, r.c)
			verdict, says := scoreOf(t, r, &a)
			all[verdict]++
			t.Logf("%s %-8s %-11s %-13s %s %s: advised %s, not %v; the tool: %s", r.id, verdictWords[verdict], r.dimension, r.crop, r.place, r.c.PlantOn.Value, r.said, r.bad, says)
		}
		t.Logf("newest %v, %d: agree, within, disagree %v", newest, len(list), all)
	}
}
