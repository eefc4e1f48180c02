package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Leaves that close over the bed take the film's effect away and halve the
// day's swing.
func TestLeavesCalmTheBed(t *testing.T) {
	a := advise(t, climate(42.5, 8, 14, 11))
	from, _ := facts.SeasonWindow(a.Facts.Plant)
	s := facts.SoilSeasonOf(a.Facts, facts.AtFive, from, 240)
	day := int(a.Facts.Plant.Minus(from))
	early, late := s.Days[table.Black][day], s.Days[table.Black][day+100]
	bareEarly, bareLate := s.Days[facts.Bare][day], s.Days[facts.Bare][day+100]
	assert.Greater(t, early.Mean-bareEarly.Mean, 2*(late.Mean-bareLate.Mean))
	assert.Greater(t, early.High-early.Low, late.High-late.Low)
}

func TestASoilSeasonAgreesWithTheFacts(t *testing.T) {
	for id, c := range pack(t) {
		f := advise(t, c).Facts
		depth := facts.AtTen
		if f.Depth == 0.05 {
			depth = facts.AtFive
		}
		s := facts.SoilSeasonOf(f, depth, f.Plant.Plus(-10), 40)
		for film := range table.FilmCount + 1 {
			mean, low, high := f.Warmth.Of(film, 20)
			d := s.Days[film][30]
			assert.Equal(t, []unit.Celsius{mean, low, high}, []unit.Celsius{d.Mean, d.Low, d.High}, id)
			m := s.Marks[film]
			assert.Equal(t, f.CeilingDays[film], m.OverDays, id)
			if f.ReachWork[film] == facts.Never {
				assert.False(t, m.Warm.Given, id)
			} else {
				assert.Equal(t, f.Plant.Plus(f.ReachWork[film]), m.Warm.Value, id)
			}
			// A warm spring never comes later than the usual one, nor a cool one sooner.
			if m.Warm.Given {
				require.True(t, m.WarmSoonest.Given, id)
				assert.LessOrEqual(t, m.WarmSoonest.Value, m.Warm.Value, id)
				if m.WarmLatest.Given {
					assert.GreaterOrEqual(t, m.WarmLatest.Value, m.Warm.Value, id)
				}
			}
			// The floor for planting under covers never comes after that for planting without.
			if m.Warm.Given {
				assert.True(t, m.Covers.Given, id)
				assert.LessOrEqual(t, m.Covers.Value, m.Warm.Value, id)
			}
			assert.Greater(t, m.Planting.BandHigh, m.Planting.Mean, id)
			assert.Less(t, m.Planting.BandLow, m.Planting.Mean, id)
			if film < table.FilmCount {
				assert.Equal(t, f.Surface[film], m.Surface, id)
			}
		}
	}
}

// Five centimetres swing more than ten, day for day.
func TestTheSwingFallsWithDepth(t *testing.T) {
	f := advise(t, climate(42.5, 8, 14, 11)).Facts
	five, ten := facts.SoilSeasonOf(f, facts.AtFive, f.Plant, 120), facts.SoilSeasonOf(f, facts.AtTen, f.Plant, 120)
	for film := range five.Days {
		for i := range five.Days[film] {
			a, b := five.Days[film][i], ten.Days[film][i]
			assert.Greater(t, a.High-a.Low, b.High-b.Low)
		}
	}
}

func TestTheWindowHoldsWholeMonths(t *testing.T) {
	for _, c := range []struct{ plant, from, to unit.Date }{
		{unit.On(2027, 5, 20), unit.On(2027, 4, 1), unit.On(2027, 10, 1)},
		{unit.On(2027, 1, 31), unit.On(2026, 12, 1), unit.On(2027, 6, 1)},
		{unit.On(2027, 2, 1), unit.On(2027, 1, 1), unit.On(2027, 7, 1)},
		{unit.On(2027, 12, 31), unit.On(2027, 11, 1), unit.On(2028, 5, 1)},
		{unit.On(2027, 7, 4), unit.On(2027, 6, 1), unit.On(2027, 12, 1)},
	} {
		from, days := facts.SeasonWindow(c.plant)
		assert.Equal(t, c.from.String(), from.String())
		assert.Equal(t, c.to.String(), from.Plus(unit.Days(days)).String())
	}
}
