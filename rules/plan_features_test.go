package rules_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The features of list, laying day and season, by their numbers in our own table
// of features, each by the check that a grower can do by hand. Common practice, no
// source, where no other is named.
func TestFeaturesByTheirOwnCheck(t *testing.T) {
	base := planCase(t)
	a, s := list(t, base)
	row := func(name string, check func(*testing.T)) { t.Run(name, check) }
	row("F2 do not lay: read the gate's sentence", func(t *testing.T) {
		no := advise(t, pack(t)["carrot-drill"])
		assert.Contains(t, no.Gates[0].Reason.In(unit.US), "the film would be mostly holes")
	})
	row("F8 roll fit: top, two sides, two tucks, by a ruler", func(t *testing.T) {
		h, out := 6.0, 2.0
		by := 30 + 2*math.Hypot(h, out) + 2*5
		assert.InDelta(t, by, float64(a.Shape.Needed)/inch, 0.01)
		assert.InDelta(t, 60, float64(a.Shape.FilmWidth)/inch, 0.01)
	})
	row("F9 list with waste: count the rows on paper", func(t *testing.T) {
		assert.InDelta(t, 25*float64(a.Facts.Laterals)*103*foot*1.03, s.Lines[field.ItemTape].Quantity, 1)
		assert.EqualValues(t, 25*a.Facts.Laterals, s.Lines[field.ItemTakeOffs].Quantity)
	})
	row("F12 unknown is a legal answer", func(t *testing.T) {
		open, nothing := list(t, pack(t)["least-known"])
		sh := open.Sheet(&nothing)
		ready, no, unknown := sh.Ready(all)
		assert.False(t, ready)
		assert.Zero(t, no)
		assert.Positive(t, unknown)
		assert.NotEmpty(t, open.Season(&nothing))
		assert.True(t, open.CostOf(&nothing).Hours.Laying == 0)
	})
	row("F19 laying-day sheet: add the times", func(t *testing.T) {
		// 2,500 ft at 2 mph (88 ft a minute each mph) and 25 beds at 5 min.
		minutes := 2500.0/(2.0133*88) + 25*5
		assert.InDelta(t, math.Ceil(minutes/30)/2, float64(a.WorkOf().LayingClock), 0.5)
	})
	row("F20 calendar: count the days", func(t *testing.T) {
		seen := byID(a.Season(&s))
		assert.EqualValues(t, 56, seen["lay"].On.Minus(seen["order"].On), "8 weeks")
		assert.Equal(t, a.WaitPlan.Days, seen["plant"].On.Minus(seen["lay"].On))
	})
	row("F21 cost: one line by hand", func(t *testing.T) {
		c := base
		c.Prices.FilmRoll = unit.Known(185.0)
		b, priced := list(t, c)
		assert.InDelta(t, 2*185, b.CostOf(&priced).Lines[0].Amount, 0.001)
	})
	row("F22 second crop: cover, tape, family", func(t *testing.T) {
		c := pack(t)["tomato-two-crops"]
		_, steps := seasonOf(t, c)
		assert.Contains(t, byID(steps)["second-crop"].What.In(unit.US), table.CropByID(c.Crop).Family)
	})
	row("F25 disposal: one multiplication", func(t *testing.T) {
		assert.InDelta(t, float64(s.FilmMass)*2, float64(a.EndOfFilm(&s).Least), 0.06)
		by := 25 * 106 * foot * float64(a.Shape.FilmWidth) // m² of film
		thick, ok := a.ThicknessChosen()
		require.True(t, ok)
		assert.InDelta(t, by*float64(thick)/1e6*920, float64(s.FilmMass), 0.06, "0.92 g/cm³")
	})
	row("F28 the sheet has the answers' figures", func(t *testing.T) {
		sh := a.Sheet(&s)
		for _, l := range sh.Settings {
			for _, q := range l.Quantities {
				assert.Contains(t, l.In(unit.US), q.In(unit.US))
			}
		}
	})
	row("F29 go or no-go: all yes, or it says which one stops you", func(t *testing.T) {
		c := layable(t)
		c.Day.Wind.Value = 35 * 0.44704
		sh := sheetOf(t, c)
		stops := 0
		for i := range sh.Go {
			if sh.Go[i].Reply == plan.No {
				stops++
				assert.Contains(t, sh.Go[i].In(unit.US), "Wind 35 mph")
			}
		}
		assert.Equal(t, 1, stops)
	})
	row("3.1 hours to the half hour, film to whole rolls", func(t *testing.T) {
		w := a.WorkOf()
		for _, h := range []unit.Hours{w.Laying, w.LayingClock, w.Lifting} {
			assert.Equal(t, math.Trunc(float64(h)*2), float64(h)*2)
		}
		assert.Equal(t, math.Trunc(s.Lines[field.ItemFilm].Quantity), s.Lines[field.ItemFilm].Quantity)
	})
}
