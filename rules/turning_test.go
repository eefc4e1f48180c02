package rules_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func turningPoints(t testing.TB, g *rules.Ground, c rules.Case, dig bool) ([]rules.TurningPoint, int) {
	t.Helper()
	turner, ok := rules.NewTurner(g, c, dig)
	require.True(t, ok)
	for !turner.Step(1000) {
	}
	return turner.Points(), turner.Asked()
}

func answersOf(t testing.TB, g *rules.Ground, c rules.Case) (rules.Answers, bool) {
	t.Helper()
	a, err := rules.AdviseOn(g, c)
	if err != nil {
		return rules.Answers{}, false
	}
	return a.Answers(), true
}

// anyCase draws a case on a few grounds, so that a thousand cases stay quick.
func anyCase(r *rand.Rand, bases []rules.Case) (rules.Case, int) {
	i := r.IntN(len(bases))
	c := bases[i]
	c.Crop = table.Crops[r.IntN(len(table.Crops))].ID
	c.PlantOn = rules.Known(unit.On(2027, 1, 1).Plus(unit.Days(r.IntN(365))))
	pick := func(words ...string) string { return words[r.IntN(len(words))] }
	c.Weeds = rules.WeedCase{Pressure: pick("", "light", "moderate", "heavy"), Nutsedge: pick("", "none", "yellow", "purple"), Insects: pick("", "none", "aphids", "thrips", "whiteflies")}
	c.Field.Exposure = pick("", "sheltered", "windy")
	c.Soil.Drainage = pick("", "quick", "fair", "slow")
	c.Soil.Stones = pick("", "none", "some", "many")
	c.Practice.Laying = pick("", "tractor", "hand")
	if r.IntN(2) == 0 {
		c.Practice.Organic = rules.Known(r.IntN(2) == 0)
	}
	if r.IntN(2) == 0 {
		c.Practice.Tractor = rules.Known(unit.Kilowatts(10 + r.IntN(50)))
	}
	if r.IntN(2) == 0 {
		c.Field.BedLength, c.Field.Beds = rules.Known(unit.Metres(20+r.IntN(150))), rules.Known(float64(1+r.IntN(20)))
	}
	if r.IntN(2) == 0 {
		c.Water.Flow = rules.Known(unit.LitresPerHour(500 + r.IntN(20000)))
	}
	return c, i
}

// The search against a plain one that knows nothing of walks: it asks every
// value of every input and keeps the nearest on each side that differs.
func TestTurningPointsAgainstBruteForce(t *testing.T) {
	all := pack(t)
	bases := []rules.Case{all["least-known"], all["pepper-cool-spring"], all["tomato-high-summer"]}
	var grounds []*rules.Ground
	for i := range bases {
		bases[i] = rules.Case{Place: bases[i].Place, Soil: rules.SoilCase{Texture: bases[i].Soil.Texture}, Crop: "tomato", PlantOn: bases[i].PlantOn}
		g, err := rules.Dig(bases[i])
		require.NoError(t, err)
		grounds = append(grounds, g)
	}
	// A case costs about two thousand asks; the thousand of the long run are
	// asked of a part of the inputs each, so that all inputs have their share.
	cases := 1000
	r := rand.New(rand.NewPCG(7, 11))
	found := 0
	for n := range cases {
		c, i := anyCase(r, bases)
		old, ok := answersOf(t, grounds[i], c)
		if !ok {
			continue
		}
		in := &rules.Inputs[n%len(rules.Inputs)]
		turner, ok := rules.NewTurner(grounds[i], c, false)
		require.True(t, ok)
		turner.Only(in.Name)
		for !turner.Step(1000) {
		}
		got := map[string]rules.Answers{}
		for _, p := range turner.Points() {
			got[fmt.Sprint(p.At, p.Above)] = p.New
			assert.Equal(t, old, p.Old)
			// Just before the point stands the old answer, at the point the new one.
			at := c
			in.Set(&at, p.At)
			now, ok := answersOf(t, grounds[i], at)
			require.True(t, ok)
			assert.Equal(t, p.New, now, "%s at the point", in.Name)
			before := c
			in.Set(&before, p.Before)
			if was, ok := answersOf(t, grounds[i], before); ok && !p.Unknown {
				assert.Equal(t, old, was, "%s just before the point", in.Name)
			}
		}
		want := map[string]rules.Answers{}
		for _, side := range rules.BruteSides(c, in) {
			for _, v := range side.Values {
				at := c
				in.Set(&at, v)
				if rules.KeyOf(at) != grounds[i].Key {
					continue // another ground: the search with dig covers it below
				}
				now, ok := answersOf(t, grounds[i], at)
				if !ok || now == old {
					continue
				}
				want[fmt.Sprint(v, side.Above)] = now
				if !side.All {
					break
				}
			}
		}
		if !assert.Equal(t, want, got, in.Name) {
			t.Logf("%+v", c)
			return
		}
		found += len(want)
	}
	t.Logf("%d cases, %d turning points, all the same", cases, found)
	assert.Greater(t, found, 100)
}

// What changes the ground is searched on a ground of its own.
func TestTurningPointsOfTheSoil(t *testing.T) {
	c := pack(t)["melon-weak-well"]
	ground, err := rules.Dig(c)
	require.NoError(t, err)
	old, _ := answersOf(t, ground, c)
	turner, ok := rules.NewTurner(ground, c, true)
	require.True(t, ok)
	turner.Only("soil.texture")
	for !turner.Step(100) {
	}
	require.NotEmpty(t, turner.Points())
	for _, p := range turner.Points() {
		at := c
		p.Input.Set(&at, p.At)
		a, err := rules.Advise(at)
		require.NoError(t, err)
		assert.Equal(t, p.New, a.Answers())
		assert.NotEqual(t, old, p.New)
	}
}

func BenchmarkTurningPoints(b *testing.B) {
	c := pack(b)["pepper-cool-spring"]
	ground, err := rules.Dig(c)
	require.NoError(b, err)
	b.ReportAllocs()
	asked := 0
	for b.Loop() {
		_, asked = turningPoints(b, ground, c, false)
	}
	b.ReportMetric(float64(asked), "cases/op")
}

func TestTurningPointsAreSaidInPlainWords(t *testing.T) {
	c := pack(t)["least-known"]
	ground, err := rules.Dig(c)
	require.NoError(t, err)
	points, asked := turningPoints(t, ground, c, false)
	t.Logf("%d points, %d cases asked", len(points), asked)
	var said []string
	for i := range points {
		for _, q := range points[i].Changes() {
			phrase := points[i].Says(q)
			assert.True(t, phrase.Complete(), phrase.Text)
			said = append(said, phrase.In(unit.US))
		}
	}
	for _, s := range said {
		t.Log("   ", s)
	}
	assert.Contains(t, said, "Water source “none”: do not lay film here.")
	assert.Contains(t, said, "Stones “some”: 1.25 mil.")
}
