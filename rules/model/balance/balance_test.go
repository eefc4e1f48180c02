package balance

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"filmfurrow/rules/unit"
)

// FAO Irrigation and Drainage Paper 56 (1998), example 36, page 166: total and readily
// available water for three soils and three crops, mm.
func TestAvailableWaterOfExample36(t *testing.T) {
	soils := [...]struct{ capacity, wilting float64 }{{0.15, 0.06}, {0.32, 0.15}, {0.35, 0.23}} // loamy sand, silt, silty clay
	for _, crop := range [...]struct {
		name            string
		depth, fraction float64
		holds, ready    [3]float64
	}{
		{"onion", 0.4, 0.30, [3]float64{36, 68, 48}, [3]float64{11, 20, 14}},
		{"tomato", 0.8, 0.40, [3]float64{72, 136, 96}, [3]float64{29, 54, 38}},
		{"maize", 1.2, 0.55, [3]float64{108, 204, 144}, [3]float64{59, 112, 79}},
	} {
		for i, soil := range soils {
			z := Zone{Holds: unit.Millimetres(1000 * (soil.capacity - soil.wilting) * crop.depth), Fraction: crop.fraction}
			assert.InDelta(t, crop.holds[i], float64(z.Holds), 1e-9, crop.name)
			assert.InDelta(t, crop.ready[i], float64(z.Ready(5)), 0.51, crop.name)
		}
	}
}

// FAO-56, example 37, page 168: tomato on silt, ten days without water. The printed table
// gives depletion to 0.1 mm, the stress coefficient to 0.01 and use to 0.1 mm.
func TestTenDaysWithoutWaterOfExample37(t *testing.T) {
	z := Zone{Holds: 160, Fraction: 0.40, Fixed: true}
	depletion := unit.Millimetres(55)
	end := [...]float64{61.0, 67.0, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5}
	kept := [...]float64{1, 1, .97, .91, .85, .80, .75, .70, .66, .62}
	used := [...]float64{6.0, 6.0, 5.8, 5.4, 5.1, 4.8, 4.5, 4.2, 3.9, 3.7}
	for i := range end {
		s := z.On(depletion, Day{Use: 6, Need: 6, Early: true})
		assert.InDelta(t, end[i], float64(s.End), 0.1, "day %d", i+1)
		assert.InDelta(t, kept[i], s.Kept, 0.0051, "day %d", i+1)
		assert.InDelta(t, used[i], float64(s.Used), 0.0501, "day %d", i+1)
		depletion = s.End
	}
	// The same in words: 9 mm are left until stress, a day and a half.
	lasts, short := z.Lasts(55, []Day{{Use: 6, Need: 6}, {Use: 6, Need: 6}, {Use: 6, Need: 6}})
	assert.True(t, short)
	assert.InDelta(t, 1.5, lasts, 1e-9)
}

// North Dakota State University Extension, AE792 "Irrigation Scheduling by the Checkbook
// Method" (revised 2019), example sheet of corn: 4.1 in held, half of it allowed. Water use,
// rain or irrigation, and the deficit printed for the evening, inches.
func TestTheCheckbookOfNorthDakota(t *testing.T) {
	z := Zone{Holds: 4.1, Fraction: 0.5, Fixed: true}
	for _, run := range [...]struct {
		begin float64
		days  [][3]float64
	}{
		{0, [][3]float64{{.12, 0, .12}, {.12, 0, .24}, {.15, 0, .39}, {.15, 0, .54}, {.12, .19, .47}, {.14, 0, .61}, {.14, 0, .75},
			{.14, 0, .89}, {.14, 0, 1.03}, {.19, 0, 1.22}, {.19, .20, 1.20}, {.14, 0, 1.35}}},
		{1.18, [][3]float64{{.24, 0, 1.42}, {.24, .52, 1.14}, {.19, 0, 1.33}, {.19, 0, 1.52}, {.23, 0, 1.75}, {.18, 0, 1.93}, {.23, 1.0, 1.16},
			{.18, 0, 1.34}, {.18, 0, 1.52}, {.18, 0, 1.70}, {.18, 0, 1.88}, {.17, 1.0, 1.05}, {.22, 0, 1.27}, {.22, 0, 1.49}, {.13, 0, 1.62},
			{.22, 0, 1.84}, {.22, 2.3, 0}}},
	} {
		depletion := unit.Millimetres(run.begin)
		for i, day := range run.days {
			s := z.On(depletion, Day{Use: unit.Millimetres(day[0]), Need: unit.Millimetres(day[0]), Water: unit.Millimetres(day[1])})
			assert.InDelta(t, day[2], float64(s.End), 0.011, "day %d", i+1)
			depletion = s.End
		}
	}
}

// What comes early and passes field capacity is lost before the crop drinks; what comes
// over the day is drunk first (FAO-56 chapter 8 on the order of a day).
func TestWaterComesEarlyOrOverTheDay(t *testing.T) {
	z := Zone{Holds: 40, Fraction: 0.4}
	early := z.On(2, Day{Use: 5, Need: 6, Water: 10, Early: true})
	assert.Equal(t, Step{Begin: 2, Used: 6, Drained: 8, End: 6, Kept: 1}, early)
	over := z.On(2, Day{Use: 5, Need: 6, Water: 10})
	assert.Equal(t, Step{Begin: 2, Used: 6, Drained: 2, End: 0, Kept: 1}, over)
}

// No water is made or lost over any season, and no more is missing than the zone holds.
func TestNoWaterIsMadeOrLost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		z := Zone{Holds: unit.Millimetres(rapid.Float64Range(1, 300).Draw(t, "holds")), Fraction: rapid.Float64Range(0.1, 0.8).Draw(t, "fraction"), Fixed: rapid.Bool().Draw(t, "fixed")}
		depth := rapid.Float64Range(0, 40)
		first := unit.Millimetres(rapid.Float64Range(0, 1).Draw(t, "begin")) * z.Holds
		depletion := first
		var in, out unit.Millimetres
		for range rapid.IntRange(1, 366).Draw(t, "days") {
			use := unit.Millimetres(depth.Draw(t, "use"))
			d := Day{Use: use / 4, Need: use, Water: unit.Millimetres(depth.Draw(t, "water")), Rain: unit.Millimetres(depth.Draw(t, "rain")), Early: rapid.Bool().Draw(t, "early")}
			s := z.On(depletion, d)
			assert.Equal(t, depletion, s.Begin)
			for _, v := range []unit.Millimetres{s.End, s.Used, s.Drained} {
				assert.GreaterOrEqual(t, float64(v), 0.0)
			}
			assert.LessOrEqual(t, float64(s.End), float64(z.Holds)+1e-9)
			assert.LessOrEqual(t, float64(s.Used), float64(d.Need)+1e-9)
			assert.True(t, s.Kept >= 0 && s.Kept <= 1)
			assert.InDelta(t, float64(s.Begin+s.Used+s.Drained), float64(s.End+d.Water+d.Rain), 1e-9)
			in += d.Water + d.Rain
			out += s.Used + s.Drained
			depletion = s.End
		}
		assert.InDelta(t, float64(first+out), float64(depletion+in), 1e-6*math.Max(1, float64(in+out)))
	})
}

// More water never leaves the soil drier, and a drier morning never a wetter evening.
func TestMoreWaterIsNeverDrier(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		z := Zone{Holds: unit.Millimetres(rapid.Float64Range(5, 200).Draw(t, "holds")), Fraction: 0.4}
		need := unit.Millimetres(rapid.Float64Range(0, 20).Draw(t, "need"))
		a, b := rapid.Float64Range(0, 1).Draw(t, "a"), rapid.Float64Range(0, 1).Draw(t, "b")
		lower, higher := z.Holds*unit.Millimetres(min(a, b)), z.Holds*unit.Millimetres(max(a, b))
		d := Day{Use: need / 3, Need: need, Water: unit.Millimetres(rapid.Float64Range(0, 30).Draw(t, "water"))}
		if left := z.Holds - z.Ready(d.Use); need <= left { // a step of a day: beyond it the curve of stress is crossed in one stride
			assert.LessOrEqual(t, float64(z.On(lower, d).End), float64(z.On(higher, d).End)+1e-9)
		}
	})
}
