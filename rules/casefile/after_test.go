package casefile_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
)

// One thing after another is changed, as somebody types: the advice after another
// is, to the byte, the advice of one who asks for the first time.
func TestAdviceAfterAnotherIsTheSame(t *testing.T) {
	long.Daily(t)
	all := packCases(t)
	ids := []string{golden[0], golden[len(golden)/2]}[:long.Of(1, 2)]
	if long.Rest() {
		ids = ids[1:] // the first has just run
	}
	for _, id := range ids {
		c := all[id]
		ground, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		var before *plan.Advice
		asked := 0
		ask := func(name string) {
			if len(field.Check(&c)) > 0 || facts.KeyOf(c) != ground.Key {
				return
			}
			after, err := rules.AdviseAfter(before, ground, c)
			require.NoError(t, err, name)
			fresh, err := rules.AdviseOn(ground, c)
			require.NoError(t, err, name)
			got, err := casefile.EncodeAdvice(&after, nil)
			require.NoError(t, err)
			want, err := casefile.EncodeAdvice(&fresh, nil)
			require.NoError(t, err)
			assert.True(t, string(want) == string(got), "%s: after %s the advice differs", id, name)
			before = &after
			asked++
		}
		ask("nothing")
		for i := range field.Inputs {
			in := &field.Inputs[i]
			old, given := in.Get(&c)
			values := []field.Value{{Number: in.Low}, {Number: in.High}, {Number: 1}}
			for _, o := range in.Options {
				values = append(values, field.Value{Word: o.ID})
			}
			for _, v := range values {
				if in.CheckValue(v) == nil {
					in.Set(&c, v)
					ask(in.Name)
				}
			}
			if in.Clear != nil {
				in.Clear(&c)
				ask(in.Name + " left open")
			}
			if given {
				in.Set(&c, old)
				ask(in.Name + " as it was")
			}
		}
		assert.Greater(t, asked, 150)
	}
}
