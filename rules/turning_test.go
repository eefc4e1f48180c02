package rules_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"sync"
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

// fewGrounds are a few places with their soil warmth, for a thousand cases.
var fewGrounds = sync.OnceValues(func() ([]rules.Case, []*rules.Ground) {
	var bases []rules.Case
	var list []*rules.Ground
	all, err := readPack()
	if err != nil {
		panic(err)
	}
	for _, id := range []string{"least-known", "pepper-cool-spring", "tomato-high-summer"} {
		c := all[id]
		c = rules.Case{Place: c.Place, Soil: rules.SoilCase{Texture: c.Soil.Texture}, Crop: "tomato", PlantOn: c.PlantOn}
		g, err := rules.Dig(c)
		if err != nil {
			panic(err)
		}
		bases, list = append(bases, c), append(list, g)
	}
	return bases, list
})

// The answers without reasons, on facts that are shared with another case, are
// those of the whole advice: what the search asks is what the page shows.
func TestBareAnswersAreTheAdvices(t *testing.T) {
	bases, list := fewGrounds()
	for shard := range shards {
		t.Run(fmt.Sprint(shard), func(t *testing.T) {
			t.Parallel()
			r := rand.New(rand.NewPCG(3, uint64(shard)))
			for range 1000 / shards {
				var asker rules.Asker
				c, i := anyCase(r, bases)
				for range 3 { // the second and third time on the facts of the first
					if advice, ok := answersOf(t, list[i], c); ok {
						bare, right := asker.On(list[i], c)
						require.True(t, right)
						require.Equal(t, advice, bare, "%+v", c)
					}
					in := &rules.Inputs[r.IntN(len(rules.Inputs))]
					if above, below, options, _ := rules.Steps(c, in); len(above)+len(below)+len(options) > 0 {
						values := slices.Concat(above, below, options)
						in.Set(&c, values[r.IntN(len(values))])
						if rules.KeyOf(c) != list[i].Key {
							break
						}
					}
				}
			}
		})
	}
}

// What is not searched changes nothing: prices, own quantities, feeding and the
// like, set to any value at all.
func TestWhatIsNotSearchedChangesNoAnswer(t *testing.T) {
	bases, list := fewGrounds()
	r := rand.New(rand.NewPCG(5, 5))
	tried := map[string]int{}
	for range 200 {
		var asker rules.Asker
		c, i := anyCase(r, bases)
		old, ok := asker.On(list[i], c)
		if !ok {
			continue
		}
		for k := range rules.Inputs {
			in := &rules.Inputs[k]
			if !rules.Inert(in) || in.Form == rules.FormText {
				continue
			}
			at := c
			v := rules.Value{Number: in.Low + r.Float64()*(in.High-in.Low)}
			if in.Form == rules.FormWhole {
				v.Number = math.Floor(v.Number)
			}
			if in.Form == rules.FormDate {
				v.Number = float64(c.PlantOn.Value) - float64(r.IntN(300))
			}
			in.Set(&at, v)
			if now, ok := asker.On(list[i], at); ok {
				require.Equal(t, old, now, "%s %v", in.Name, v)
				tried[in.Name]++
			}
		}
	}
	assert.Greater(t, len(tried), 20)
	t.Log(tried)
}

const shards = 4

// The search against a plain one that knows nothing of strides: it asks value by
// value, at the input's own step, outwards from the case until an answer changes;
// an open number from end to end. Each of the thousand cases is asked of one
// input, drawn anew. Flows and volumes have up
// to a million steps: there the plain search asks eighty values to each power of
// ten, and every step of the stretch in which it finds a change.
func TestTurningPointsAgainstBruteForce(t *testing.T) {
	bases, list := fewGrounds()
	var found, asked [shards]int
	t.Run("all", func(t *testing.T) {
		for shard := range shards {
			t.Run(fmt.Sprint(shard), func(t *testing.T) {
				t.Parallel()
				r := rand.New(rand.NewPCG(7, uint64(shard)))
				for range 1000 / shards {
					c, i := anyCase(r, bases)
					in := anyTurned(r, c, list[i])
					turner, ok := rules.NewTurner(list[i], c, false)
					if !ok {
						continue
					}
					turner.Only(in.Name)
					for !turner.Step(1000) {
					}
					plain := plainSearch{ground: list[i], c: c, in: in}
					want := plain.points()
					asked[shard] += plain.asked
					got := map[string]rules.Answers{}
					for _, p := range turner.Points() {
						got[fmt.Sprint(p.At, p.Before, p.Above)] = p.New
					}
					if !assert.ObjectsAreEqual(want, got) {
						t.Errorf("%s: want %v, got %v in %+v", in.Name, want, got, c)
					}
					found[shard] += len(want)
				}
			})
		}
	})
	sum := func(list [shards]int) (n int) {
		for _, v := range list {
			n += v
		}
		return n
	}
	t.Logf("1,000 cases, %d turning points, all the same; the plain search asked %d times", sum(found), sum(asked))
	assert.Greater(t, sum(found), 100)
}

// anyTurned draws an input that is searched and keeps the ground.
func anyTurned(r *rand.Rand, c rules.Case, g *rules.Ground) *rules.Input {
	for {
		in := &rules.Inputs[r.IntN(len(rules.Inputs))]
		above, below, options, _ := rules.Steps(c, in)
		values := slices.Concat(above, below, options)
		keeps := len(values) > 0
		for k := 0; k < len(values); k += 1 + len(values)/16 {
			at := c
			in.Set(&at, values[k])
			keeps = keeps && rules.KeyOf(at) == g.Key
		}
		if keeps {
			return in
		}
	}
}

// plainSearch is the brute force.
type plainSearch struct {
	ground *rules.Ground
	c      rules.Case
	in     *rules.Input
	asker  rules.Asker
	old    rules.Answers
	asked  int
}

func (p *plainSearch) ask(v rules.Value) rules.Answers {
	p.asked++
	at := p.c
	p.in.Set(&at, v)
	a, ok := p.asker.On(p.ground, at)
	if !ok {
		return rules.Refused
	}
	return a
}

// stretch is a run of values with the same answers.
type stretch struct {
	from, to rules.Value
	answers  rules.Answers
}

// fine is the number of values up to which each is asked; of more, every 1.5 % are,
// and every one of a stride in which an answer changes. FF_PLAIN=all asks every
// value up to five thousand: it takes some ten minutes.
var fine = map[bool]int{false: 250, true: 5000}[os.Getenv("FF_PLAIN") == "all"]

// walk asks value after value and gathers the stretches; with first, up to the
// first that differs from the case's own answers.
func (p *plainSearch) walk(values []rules.Value, first bool) (list []stretch) {
	take := func(v rules.Value, a rules.Answers) {
		if n := len(list); n > 0 && list[n-1].answers == a {
			list[n-1].to = v
		} else {
			list = append(list, stretch{v, v, a})
		}
	}
	for k := 0; k < len(values); {
		now := p.ask(values[k])
		stride := 1
		if len(values) > fine {
			stride = max(1, int(0.015*math.Abs(values[k].Number)/p.in.Step))
		}
		take(values[k], now)
		if first && now != p.old {
			return list
		}
		if next := min(k+stride, len(values)-1); next > k+1 && p.ask(values[next]) != now {
			stride = 1 // a change lies ahead: every step up to it
		}
		k += stride
		if k-stride < len(values)-1 && k > len(values)-1 {
			k = len(values) - 1
		}
	}
	return list
}

func (p *plainSearch) points() map[string]rules.Answers {
	want := map[string]rules.Answers{}
	note := func(at, before rules.Value, above bool, a rules.Answers) {
		if a != rules.Refused {
			want[fmt.Sprint(at, before, above)] = a
		}
	}
	p.old, _ = p.asker.On(p.ground, p.c)
	filled := rules.Fill(p.c)
	now, known := p.in.Get(&filled)
	above, below, options, open := rules.Steps(p.c, p.in)
	for _, v := range options {
		if a := p.ask(v); a != p.old {
			note(v, now, false, a)
		}
	}
	if open {
		list := p.walk(above, false)
		for i, s := range list {
			if s.answers != p.old || known && (now.Number < s.from.Number || now.Number > s.to.Number) {
				continue
			}
			if i > 0 {
				note(list[i-1].to, s.from, false, list[i-1].answers)
			}
			if i+1 < len(list) {
				note(list[i+1].from, s.to, true, list[i+1].answers)
			}
		}
		return want
	}
	for _, side := range []struct {
		values []rules.Value
		above  bool
	}{{above, true}, {below, false}} {
		list := p.walk(side.values, true)
		switch {
		case len(list) == 1 && list[0].answers != p.old:
			note(list[0].from, now, side.above, list[0].answers)
		case len(list) == 2:
			note(list[1].from, list[0].to, side.above, list[1].answers)
		}
	}
	return want
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
