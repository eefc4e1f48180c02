package demand

import (
	"math"

	"filmfurrow/rules/unit"
)

// Crop holds crop coefficients (FAO-56 table 12) and stage lengths (table 11).
type Crop struct {
	Initial, Mid, End float64      // 0.1–1.5
	Stages            [4]unit.Days // initial, development, mid-season, late
	Spread            float64      // at the end of the initial stage, where it rises until then; 0 is Initial
}

// Season is the sum of the stages.
func (c Crop) Season() unit.Days {
	return c.Stages[0] + c.Stages[1] + c.Stages[2] + c.Stages[3]
}

// Scaled stretches or shrinks the stages in proportion to a season of another
// length. Stage tables were made in other climates, often for autumn or desert
// plantings: the proportions carry over, the calendar does not.
func (c Crop) Scaled(season unit.Days) Crop {
	total := c.Season()
	if total <= 0 || season <= 0 {
		return c
	}
	so, before := 0, 0
	for i, stage := range c.Stages {
		so += int(stage)
		end := int(math.Round(float64(so) * float64(season) / float64(total)))
		c.Stages[i] = unit.Days(end - before)
		before = end
	}
	return c
}

// At gives the crop coefficient on a day after planting (0 is the planting
// day), and how far the leaves have closed, 0–1: none in the initial stage, all
// from mid-season on.
func (c Crop) At(day int) (coefficient, cover float64) {
	t := float64(day) + 0.5
	for i, stage := range c.Stages {
		length := float64(stage)
		if t > length {
			t -= length
			continue
		}
		spread := max(c.Spread, c.Initial)
		switch i {
		case 0:
			return c.Initial + (spread-c.Initial)*t/length, 0
		case 1:
			share := t / length
			return spread + (c.Mid-spread)*share, share
		case 2:
			return c.Mid, 1
		case 3:
			return c.Mid + (c.End-c.Mid)*t/length, 1
		}
	}
	return c.End, 1
}

// FilmInitial is the crop coefficient under film until leaves spread, where water
// reaches the plants through small holes alone: "often as low as 0.10" (FAO-56,
// chapter 10, effects of surface mulching: plastic; its cucumber example takes 0.10).
const FilmInitial = 0.10

// FilmSpread is the coefficient at the end of the initial stage, when a tenth of the
// ground is under leaves (FAO-56): so much was measured at a cover of 10 % on drip
// (Agricultural Water Management 81:381–399, 2006, tomato in the San Joaquin Valley).
const FilmSpread = 0.19

// UnderFilm gives the coefficients under film that lowers those of full leaf and of
// the end by a share. No share is no film.
func (c Crop) UnderFilm(cut unit.Percent) Crop {
	if cut == 0 {
		return c
	}
	kept := 1 - float64(cut)/100
	c.Spread = math.Min(c.Initial, FilmSpread)
	c.Initial, c.Mid, c.End = math.Min(c.Initial, FilmInitial), c.Mid*kept, c.End*kept
	return c
}

// FilmCut is how much film lowers the crop coefficient, in percent. FAO-56
// chapter 10 gives 10–30 % on average and a range for some crops (from memory;
// tomato's 35 % is confirmed by eddy covariance on drip under black film in
// the Jordan Valley: −31 % in mid-season, −40 % at the end).
type FilmCut struct{ Low, High unit.Percent }

// UsualFilmCut is FAO-56's average range (from memory), where a crop has none
// of its own.
var UsualFilmCut = FilmCut{10, 30}

// At gives the cut at full leaf for a cover of leaves. Film saves most while the crop
// is small and less as leaves close (Irrigation Science 42:525–539, 2024, a review of
// 58 studies), so the cut slides from the high end to the low end. That also keeps the
// peak, which sizes the system, on the safe side.
func (f FilmCut) At(cover float64) unit.Percent {
	return f.High + (f.Low-f.High)*unit.Percent(cover)
}

// Ground is the width of ground that one bed's crop draws on.
type Ground struct {
	BedTop, Full unit.Metres // small plants, closed leaves
}

// At gives the width for a cover of leaves. Between the two published ways of
// counting, the bed alone and the whole field, ours goes from one to the other
// as the leaves close (our reasoning, no source).
func (g Ground) At(cover float64) unit.Metres {
	return g.BedTop + (g.Full-g.BedTop)*unit.Metres(cover)
}
