package search_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func turningPoints(t testing.TB, g *facts.SoilYear, c field.Case, dig bool) ([]search.TurningPoint, int) {
	t.Helper()
	turner, ok := search.NewTurningSearch(g, c, dig)
	require.True(t, ok)
	for !turner.Step(1000) {
	}
	return turner.Points(), turner.Asked()
}

func answersOf(t testing.TB, g *facts.SoilYear, c field.Case) (question.Answers, bool) {
	t.Helper()
	a, err := rules.AdviseOn(g, c)
	if err != nil {
		return question.Answers{}, false
	}
	return a.Answers(), true
}

// anyCase draws a case on a few grounds, so that a thousand cases stay quick.
func anyCase(r *rand.Rand, bases []field.Case) (field.Case, int) {
	i := r.IntN(len(bases))
	c := bases[i]
	c.Crop = table.Crops[r.IntN(len(table.Crops))].ID
	c.PlantOn = unit.Known(unit.On(2027, 1, 1).Plus(unit.Days(r.IntN(365))))
	pick := func(words ...string) string { return words[r.IntN(len(words))] }
	c.Weeds = field.WeedCase{Pressure: pick("", "light", "moderate", "heavy"), Nutsedge: pick("", "none", "yellow", "purple"), Insects: pick("", "none", "aphids", "thrips", "whiteflies")}
	c.Field.Exposure = pick("", "sheltered", "windy")
	c.Soil.Drainage = pick("", "quick", "fair", "slow")
	c.Soil.Stones = pick("", "none", "some", "many")
	c.Practice.Laying = pick("", "tractor", "hand")
	if r.IntN(2) == 0 {
		c.Practice.Organic = unit.Known(r.IntN(2) == 0)
	}
	if r.IntN(2) == 0 {
		c.Practice.Tractor = unit.Known(unit.Kilowatts(10 + r.IntN(50)))
	}
	if r.IntN(2) == 0 {
		c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(20+r.IntN(150))), unit.Known(float64(1+r.IntN(20)))
	}
	if r.IntN(2) == 0 {
		c.Water.Flow = unit.Known(unit.LitresPerHour(500 + r.IntN(20000)))
	}
	if r.IntN(4) == 0 {
		c.Place.Wind, c.Place.Humidity = unit.Known(months(r, 1, 5)), unit.Known(months(r, 45, 85))
	}
	switch r.IntN(6) {
	case 0:
		c.Water.Tank = unit.Known(unit.Litres(500 + r.IntN(20000)))
	case 1:
		c.Water.Refill = unit.Known(unit.LitresPerHour(50 + r.IntN(3000)))
	case 2:
		c.Water.Tank, c.Water.Refill = unit.Known(unit.Litres(500+r.IntN(20000))), unit.Known(unit.LitresPerHour(50+r.IntN(3000)))
		c.Water.Source = pick("tank", "well")
	}
	if r.IntN(8) == 0 {
		c.Practice.ReuseFilm = table.Films[r.IntN(table.FilmCount)].ID
	}
	if r.IntN(8) == 0 {
		c.Practice.FumigatedOn, c.Practice.Organic = unit.Known(c.PlantOn.Value-unit.Date(r.IntN(60))), unit.Optional[bool]{}
	}
	if r.IntN(4) == 0 {
		c.Place.Solar = unit.Known(months(r, 6, 24))
	}
	return c, i
}

// months draws twelve figures.
func months(r *rand.Rand, low, high float64) (list [12]float64) {
	for m := range list {
		list[m] = math.Round(10*(low+r.Float64()*(high-low))) / 10
	}
	return list
}

// fewGrounds are a few places with their soil warmth, for a thousand cases.
var fewGrounds = sync.OnceValues(func() ([]field.Case, []*facts.SoilYear) {
	var bases []field.Case
	var list []*facts.SoilYear
	all, err := farms.Read()
	if err != nil {
		panic(err)
	}
	for _, id := range []string{"least-known", "pepper-cool-spring", "tomato-high-summer"} {
		c := all[id]
		c = field.Case{Place: c.Place, Soil: field.SoilCase{Texture: c.Soil.Texture}, Crop: "tomato", PlantOn: c.PlantOn}
		g, err := facts.NewSoilYear(c)
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
				var asker search.Asker
				c, i := anyCase(r, bases)
				for range 3 { // the second and third time on the facts of the first
					if advice, ok := answersOf(t, list[i], c); ok {
						bare, right := asker.On(list[i], c)
						require.True(t, right)
						require.Equal(t, advice, bare, "%+v", c)
					}
					in := anyRow(r)
					if above, below, options, _ := search.Steps(c, in); len(above)+len(below)+len(options) > 0 {
						values := slices.Concat(above, below, options)
						c = in.Turn(c, values[r.IntN(len(values))])
						if facts.KeyOf(c) != list[i].Key {
							break
						}
					}
				}
			}
		})
	}
}

// Why a row is not searched: it cannot change an answer by itself. The first list
// holds in every case, the second where the row's companion is missing.
var (
	neverSearched = map[string]string{
		"place.period":           "picks the years of a station’s normals; the cases here bring their own",
		"soil.series":            "stands in for texture and drainage where those are not given; each is searched itself",
		"past.":                  "what last season taught is told beside the answers",
		"place.station":          "a name only: its figures are searched as latitude, height and shifts of the monthly temperatures",
		"place.lon":              "the models know the sun's height, which hangs on the latitude",
		"practice.roll_length_m": "decides how many rolls to buy",
		"water.lift_m":           "decides the pump, not what reaches the tape",
		"water.sodium_ratio":     "warns in the water plan",
		"water.nitrate_mg_l":     "counts in the feeding plan",
		"prices.":                "cost is counted after the answers",
		"shopping.":              "the grower's own quantity stands beside ours",
		"day.":                   "what laying day finds is checked against the plan",
		"feed.rate_kg_ha_day":    "counts in the feeding plan",
		"feed.grade_percent":     "counts in the feeding plan",
		"feed.stock_kg_l":        "counts in the feeding plan",
		"feed.bleach_percent":    "counts in the chlorine plan",
		"feed.chlorine_mg_l":     "counts in the chlorine plan",
		"soil.ph":                "decides the lime",
		"soil.test_p":            "decides the fertiliser under the film",
		"soil.test_k":            "decides the fertiliser under the film",
		"soil.lime_kg_ha":        "decides the lime",
		"feed.season_n_kg_ha":    "decides the fertiliser under the film",
		"feed.season_p2o5_kg_ha": "decides the fertiliser under the film",
		"feed.season_k2o_kg_ha":  "decides the fertiliser under the film",
		"feed.base_n_percent":    "decides how much of a bag",
		"feed.base_p2o5_percent": "decides how much of a bag",
		"feed.base_k2o_percent":  "decides how much of a bag",
		"feed.base_spread":       "decides how much of a bag",
	}
	notAlone = map[string]string{
		"practice.label_interval_days": "refused without the day of treatment",
		"practice.reuse.cover_percent": "refused without the film that is down",
		"practice.reuse.height_m":      "refused without the film that is down",
		"practice.reuse.thickness_um":  "refused without the film that is down",
		"practice.reuse.laid_on":       "refused without the film that is down, and beside it only told: what counts is how much of it is whole",
		"water.tank_l":                 "counts only beside the flow that fills it",
		"water.refill_l_h":             "counts only beside the tank that it fills",
		"soil.temperature_c":           "refused without its day",
		"soil.measured_on":             "refused without a reading",
		"soil.measured_depth_m":        "no reading was taken there",
		"soil.measured_hour":           "no reading was taken then",
		"soil.measured_under":          "no reading was taken then",
	}
)

func whyNotSearched(name string) string {
	if why := neverSearched[name]; why != "" {
		return why
	}
	head, _, _ := strings.Cut(name, ".")
	return neverSearched[head+"."]
}

// Every row of the inputs, and every monthly list, is searched, or it cannot
// change an answer by itself: set to any value at all it changes none, in two
// hundred cases.
func TestEveryInputIsSearchedOrChangesNoAnswer(t *testing.T) {
	long.Daily(t)
	bases, list := fewGrounds()
	r := rand.New(rand.NewPCG(5, 5))
	searched, tried := map[string]bool{}, map[string]int{}
	has := func(c field.Case, in *field.Input) bool {
		above, below, options, _ := search.Steps(c, in)
		return len(above)+len(below)+len(options) > 0
	}
	for range long.Of(40, 200) {
		var asker search.Asker
		c, i := anyCase(r, bases)
		old, ok := asker.On(list[i], c)
		if !ok {
			continue
		}
		for k := range field.Inputs {
			in := &field.Inputs[k]
			if search.Turns(&c, in) {
				require.True(t, has(c, in), in.Name)
				searched[in.Name] = true
				continue
			}
			require.NotEmpty(t, whyNotSearched(in.Name)+notAlone[in.Name], "%s is not searched, and nobody says why", in.Name)
			at := c
			v := field.Value{Number: in.Low + r.Float64()*(in.High-in.Low), Word: "XYZ"}
			switch in.Form {
			case field.FormWhole:
				v.Number = math.Floor(v.Number)
			case field.FormDate:
				v.Number = float64(c.PlantOn.Value) - float64(r.IntN(300))
			case field.FormChoice:
				v.Word = in.Options[r.IntN(len(in.Options))].ID
			}
			in.Set(&at, v)
			if len(field.Check(&at)) > 0 {
				tried[in.Name] = max(0, tried[in.Name])
				continue
			}
			now, ok := asker.On(list[i], at)
			require.True(t, ok, "%s keeps the ground", in.Name)
			require.Equal(t, old, now, "%s %v", in.Name, v)
			tried[in.Name]++
		}
		for _, in := range search.Turned()[len(field.Inputs):] {
			searched[in.Name] = searched[in.Name] || search.Turns(&c, in) && has(c, in)
		}
	}
	refused := 0
	for k := range field.Inputs {
		name := field.Inputs[k].Name
		_, left := tried[name]
		if notAlone[name] == "" {
			assert.NotEqual(t, searched[name], left, "%s is one or the other", name)
		}
		if left && tried[name] == 0 {
			refused++
			assert.Contains(t, notAlone[name], "refused", name)
		}
	}
	assert.Equal(t, 6, refused)
	for _, s := range field.Climate {
		assert.Equal(t, s.Name != "climate.rain_mm", searched[s.Name], s.Name)
	}
	// Rain is searched where the grower gave it: no case above has it.
	c := bases[0]
	c.Place.Rain = unit.Known([12]float64{90, 80, 90, 90, 100, 100, 110, 100, 90, 80, 90, 90})
	for _, in := range search.Turned()[len(field.Inputs):] {
		if in.Name == "climate.rain_mm" {
			assert.True(t, search.Turns(&c, in) && has(c, in), in.Name)
		}
	}
	// Beside its companion each of the second list is searched.
	c = bases[0]
	c.Practice.FumigatedOn, c.Practice.ReuseFilm = unit.Known(c.PlantOn.Value-30), "black"
	c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(unit.Celsius(12)), unit.Known(c.PlantOn.Value-20)
	c.Water.Tank, c.Water.Refill = unit.Known(unit.Litres(5000)), unit.Known(unit.LitresPerHour(500))
	for name := range notAlone {
		assert.Equal(t, name != "practice.reuse.laid_on", has(c, field.InputByName(name)), name)
	}
	c = bases[0]
	c.Practice.ReuseFilm = "red"
	var asker search.Asker
	old, _ := asker.On(list[0], c)
	for days := range 400 {
		c.Practice.ReuseLaidOn = unit.Known(c.PlantOn.Value - unit.Date(days))
		now, ok := asker.On(list[0], c)
		require.True(t, ok)
		require.Equal(t, old, now)
	}
}

// Three searches that share the inputs find, put together, what one finds alone: the
// same points and open inputs in the same order, and the same left for later.
func TestSharedSearchesFindTheSame(t *testing.T) {
	bases, list := fewGrounds()
	r := rand.New(rand.NewPCG(11, 4))
	points, opens, left := 0, 0, 0
	for n := 0; n < 6; {
		c, i := anyCase(r, bases)
		alone, ok := search.NewTurningSearch(list[i], c, false)
		if !ok {
			continue
		}
		n++
		for !alone.Step(1) {
		}
		together, _ := search.NewTurningSearch(list[i], c, true)
		var taken atomic.Int64
		var wait sync.WaitGroup
		all := []*search.TurningSearch{together, together.Beside(), together.Beside()}
		for _, one := range all {
			wait.Go(func() {
				one.Share(func() int { return int(taken.Add(1)) - 1 })
				for !one.Step(1) {
				}
			})
		}
		wait.Wait()
		together.Gather(all[1:]...)
		told := func(t *search.TurningSearch) (list []string) {
			for _, p := range t.Points() {
				list = append(list, fmt.Sprint("point ", p.Input.Name, p.At, p.Before, p.Above, p.Unknown, p.Absent, p.Old, p.New))
			}
			for _, o := range t.Opens() {
				list = append(list, fmt.Sprint("open ", o.Input.Name, o.Outcomes, o.Weight))
			}
			for _, in := range t.Left() {
				list = append(list, "left "+in.Name)
			}
			return list
		}
		assert.Equal(t, told(alone), told(together))
		assert.Equal(t, alone.Asked(), together.Asked())
		assert.True(t, together.Near())
		points, opens, left = points+len(alone.Points()), opens+len(alone.Opens()), left+len(alone.Left())
	}
	assert.Greater(t, min(points, opens, left), 6)
}

const shards = 4

// The search against a plain one that knows nothing of strides: it asks value by
// value, at the input's own step, outwards from the case until an answer changes;
// an open number from end to end. Each of the thousand cases (every day a hundred) is asked of one
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
				for n := 0; n < long.Of(100, 300)/shards; {
					c, i := anyCase(r, bases)
					turner, ok := search.NewTurningSearch(list[i], c, false)
					if !ok {
						continue // some crops are not started so, and some fields go ill together
					}
					n++
					in := anyTurned(r, c, list[i])
					want, got, times := compared(turner, list[i], c, in, fine)
					asked[shard] += times
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
	t.Logf("%d cases, %d turning points, all the same; the plain search asked %d times", long.Of(100, 300), sum(found), sum(asked))
	assert.Greater(t, sum(found), long.Of(10, 40))
}

// compared gives what the plain search finds of one input, and what the search does.
func compared(turner *search.TurningSearch, g *facts.SoilYear, c field.Case, in *field.Input, fine int) (want, got map[string]question.Answers, asked int) {
	turner.Only(in.Name)
	for !turner.Step(1000) {
	}
	plain := plainSearch{ground: g, c: c, in: in, fine: fine}
	want, got = plain.points(), map[string]question.Answers{}
	for _, p := range turner.Points() {
		got[fmt.Sprint(p.At, p.Before, p.Above)] = p.New
	}
	return want, got, plain.asked
}

// Where pipe, rise and pressure are all known, the tape's answer jumps: pipes come in
// sizes and beds run in whole zones, so an answer may change and change back from one
// value to the next. The plain search asks every step here. FF_LONG=all draws 600
// searches and takes some minutes.
func TestTurningPointsOfKnownPipesAgainstBruteForce(t *testing.T) {
	long.Daily(t)
	bases, list := fewGrounds()
	r := rand.New(rand.NewPCG(7, 7))
	names := []string{"water.pressure_kpa", "water.rise_m", "water.header_m", "water.flow_l_h", "field.beds", "field.bed_length_m", "soil.slope_percent", "water.hours_per_day"}
	points := 0
	searches := map[bool]int{false: long.Of(8, 48), true: 600}[long.All()]
	for n := 0; n < searches; {
		c, i := anyCase(r, bases)
		c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(20+r.IntN(150))), unit.Known(float64(1+r.IntN(20)))
		c.Water.Flow, c.Water.Header = unit.Known(unit.LitresPerHour(500+r.IntN(20000))), unit.Known(unit.Metres(r.IntN(400)))
		c.Water.Rise, c.Water.Pressure = unit.Known(unit.Metres(r.IntN(30)-10)), unit.Known(unit.Kilopascals(r.IntN(300)))
		turner, ok := search.NewTurningSearch(list[i], c, false)
		if !ok {
			continue
		}
		name := names[n%len(names)]
		want, got, _ := compared(turner, list[i], c, field.InputByName(name), 5000)
		n++
		points += len(want)
		assert.Equal(t, want, got, "%s in %+v", name, c)
	}
	t.Logf("%d searches with known pipes, %d points, all the same", searches, points)
	assert.Positive(t, points)
}

func anyRow(r *rand.Rand) *field.Input {
	rows := search.Turned()
	return rows[r.IntN(len(rows))]
}

// anyTurned draws an input that is searched and keeps the ground.
func anyTurned(r *rand.Rand, c field.Case, g *facts.SoilYear) *field.Input {
	for {
		in := anyRow(r)
		above, below, options, _ := search.Steps(c, in)
		values := slices.Concat(above, below, options)
		keeps := len(values) > 0
		for k := 0; k < len(values); k += 1 + len(values)/16 {
			keeps = keeps && facts.KeyOf(in.Turn(c, values[k])) == g.Key
		}
		if keeps {
			return in
		}
	}
}

// plainSearch is the brute force.
type plainSearch struct {
	ground *facts.SoilYear
	dig    func(field.Case) *facts.SoilYear // where an input changes it
	near   int                              // with it, how many steps are asked to each side; 0 for all
	found  []search.TurningPoint            // with it: around these, too
	fine   int                              // see [fine]
	c      field.Case
	in     *field.Input
	asker  search.Asker
	old    question.Answers
	asked  int
}

func (p *plainSearch) ask(v field.Value) question.Answers {
	p.asked++
	at := p.in.Turn(p.c, v)
	if len(field.Check(&at)) > 0 {
		return search.Refused
	}
	ground := p.ground
	if p.dig != nil {
		if ground = p.dig(at); ground == nil {
			return search.Refused
		}
	}
	a, ok := p.asker.On(ground, at)
	if !ok {
		return search.Refused
	}
	return a
}

// stretch is a run of values with the same answers.
type stretch struct {
	from, to field.Value
	answers  question.Answers
}

// fine is the number of values up to which each is asked; of more, every 1.5 % are,
// and every one of a stride in which an answer changes. FF_LONG=all asks every
// value up to five thousand: it takes some ten minutes.
var fine = map[bool]int{false: 250, true: 5000}[long.All()]

// walk asks value after value and gathers the stretches; with first, up to the
// first that differs from the case's own answers.
func (p *plainSearch) walk(values []field.Value, first bool) (list []stretch) {
	take := func(v field.Value, a question.Answers) {
		if n := len(list); n > 0 && list[n-1].answers == a {
			list[n-1].to = v
		} else {
			list = append(list, stretch{v, v, a})
		}
	}
	if p.near > 0 {
		values = p.nearest(values)
	}
	for k := 0; k < len(values); {
		now := p.ask(values[k])
		stride := 1
		if len(values) > p.fine {
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

// nearest keeps of the values those nearest to the case, and those around what the
// search found.
func (p *plainSearch) nearest(values []field.Value) (kept []field.Value) {
	filled := field.Filled(p.c)
	own, known := p.in.Get(&filled)
	for k, v := range values {
		keep := k < p.near
		if len(values) > 1 && known { // an open number is gone through from its lowest on
			keep = math.Abs(v.Number-own.Number) < (float64(p.near)+0.5)*p.in.Step
		}
		for _, f := range p.found {
			keep = keep || math.Abs(v.Number-f.At.Number) < 3.5*p.in.Step
		}
		if keep {
			kept = append(kept, v)
		}
	}
	return kept
}

func (p *plainSearch) points() map[string]question.Answers {
	want := map[string]question.Answers{}
	note := func(at, before field.Value, above bool, a question.Answers) {
		if a != search.Refused {
			want[fmt.Sprint(at, before, above)] = a
		}
	}
	p.old, _ = p.asker.On(p.ground, p.c)
	filled := field.Filled(p.c)
	now, known := p.in.Get(&filled)
	above, below, options, open := search.Steps(p.c, p.in)
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
		values []field.Value
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

// allGrounds digs each ground once.
type allGrounds map[facts.SoilKey]*facts.SoilYear

func (g allGrounds) dig(c field.Case) *facts.SoilYear {
	key := facts.KeyOf(c)
	if g[key] == nil {
		g[key], _ = facts.NewSoilYear(c)
	}
	return g[key]
}

// What changes the ground is searched on grounds of its own: choices one by one,
// numbers outwards. Each draw is held against the plain search. A year of soil
// warmth for each step takes hours, so the plain search of a number asks every one
// of the nearest eight steps to each side, and those around each point that the
// search found; FF_LONG=all asks every step of two hundred draws.
func TestTurningPointsOfTheGroundAgainstBruteForce(t *testing.T) {
	long.Daily(t)
	bases, list := fewGrounds()
	draws, near := 1, 8
	if long.All() {
		draws, near = 12, 0
	}
	names := []string{"soil.texture", "soil.wetness_at_laying", "soil.tilth", "risk", "field.bed_top_m", "field.bed_centres_m", "practice.film_width_m",
		"place.lat", "place.elevation_m", "climate.tmin_c", "climate.tmax_c", "soil.temperature_c", "soil.measured_on", "soil.measured_depth_m", "soil.measured_hour", "soil.measured_under"}
	names = names[:long.Of(3, len(names))]
	var mu sync.Mutex
	found, asked, dug := 0, 0, 0
	t.Run("all", func(t *testing.T) {
		for k, name := range names {
			t.Run(name, func(t *testing.T) {
				t.Parallel()
				r := rand.New(rand.NewPCG(19, uint64(k)))
				seen := allGrounds{}
				for range draws {
					c, i := anyCase(r, bases)
					in := rowByName(name)
					ground := list[i]
					switch {
					case strings.HasPrefix(name, "soil.measured") || name == "soil.temperature_c":
						c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(unit.Celsius(8+r.IntN(12))), unit.Known(c.PlantOn.Value-unit.Date(r.IntN(40)))
						c.Soil.MeasuredDepth, c.Soil.MeasuredHour = unit.Known(unit.Metres(0.1)), unit.Known(9.0)
					case name == "practice.film_width_m":
						c.Practice.FilmWidth = unit.Known(unit.Metres(1.2))
					case name == "field.bed_centres_m":
						c.Field.Centres = unit.Known(unit.Metres(1.5))
					}
					if facts.KeyOf(c) != ground.Key {
						ground = seen.dig(c)
					}
					turner, ok := search.NewTurningSearch(ground, c, true)
					if !ok {
						continue
					}
					turner.Only(name)
					for !turner.Step(1000) {
					}
					got := map[string]question.Answers{}
					for _, p := range turner.Points() {
						got[fmt.Sprint(p.At, p.Before, p.Above)] = p.New
						_, ok := answersOf(t, ground, p.Input.Turn(c, p.At))
						require.True(t, ok)
					}
					plain := plainSearch{ground: ground, c: c, in: in, dig: seen.dig, fine: fine, near: near, found: turner.Points()}
					if want := plain.points(); !assert.ObjectsAreEqual(want, got) {
						t.Errorf("want %v, got %v in %+v", want, got, c)
					}
					mu.Lock()
					found, asked = found+len(got), asked+plain.asked
					mu.Unlock()
				}
				mu.Lock()
				dug += len(seen)
				mu.Unlock()
			})
		}
	})
	t.Logf("%d turning points, all the same; the plain search asked %d times, on %d grounds", found, asked, dug)
	assert.GreaterOrEqual(t, found, long.Of(2, 10))
}

func rowByName(name string) *field.Input {
	for _, in := range search.Turned() {
		if in.Name == name {
			return in
		}
	}
	return nil
}

func BenchmarkTurningPoints(b *testing.B) {
	c := pack(b)["pepper-cool-spring"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(b, err)
	b.ReportAllocs()
	asked := 0
	for b.Loop() {
		_, asked = turningPoints(b, ground, c, false)
	}
	b.ReportMetric(float64(asked), "cases/op")
}

// With all that changes the ground as well: a year of soil warmth for each value.
func BenchmarkTurningPointsOfTheGround(b *testing.B) {
	c := pack(b)["pepper-cool-spring"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(b, err)
	asked := 0
	for b.Loop() {
		_, asked = turningPoints(b, ground, c, true)
	}
	b.ReportMetric(float64(asked), "cases/op")
}

func TestTurningPointsAreSaidInPlainWords(t *testing.T) {
	c := pack(t)["least-known"]
	ground, err := facts.NewSoilYear(c)
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
