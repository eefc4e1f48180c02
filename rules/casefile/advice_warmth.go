// The page writes no advice files, so its program is built without this.

//go:build !page

package casefile

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// warmthPart is soil warmth from 30 days before the wanted planting day on.
// Days are counted from that planting day; null is a day that does not come
// within the 140 days that follow it.
type warmthPart struct {
	Depth      float64      `json:"depth_m"`        // of roots or seed: what floors and ceiling are held against
	CoverFloor float64      `json:"covers_floor_c"` // from which it may be planted under covers
	WorkFloor  float64      `json:"floor_c"`        // that the planting day waits for, as a daily mean
	Ceiling    float64      `json:"ceiling_c"`
	StemBurn   float64      `json:"stem_burn_c"`
	Probe      *probePart   `json:"probe,omitempty"`
	From       string       `json:"from"`
	Films      []filmWarmth `json:"films"`
}

type probePart struct {
	Expected float64 `json:"expected_c"`
	Shift    float64 `json:"shift_k"`
	Doubted  bool    `json:"doubted"`
}

type filmWarmth struct {
	Film        string        `json:"film"`
	CoversDay   *int          `json:"covers_floor_day"`
	WarmDay     *int          `json:"floor_day"`
	WarmSoonest *int          `json:"floor_day_soonest"`
	WarmLatest  *int          `json:"floor_day_latest"`
	AboveDays   int           `json:"days_above_ceiling"`
	AboveHours  float64       `json:"hours_above_ceiling"`
	Surface     float64       `json:"surface_c"`
	Depths      []depthWarmth `json:"depths"`
}

type depthWarmth struct {
	Depth    float64   `json:"depth_m"`
	BandLow  float64   `json:"planting_day_mean_from_c"`
	BandHigh float64   `json:"planting_day_mean_to_c"`
	Mean     []float64 `json:"mean_c"`
	Minimum  []float64 `json:"minimum_c"`
	Maximum  []float64 `json:"maximum_c"`
}

// warmthBefore is how many days before planting the curves begin.
const warmthBefore = 30

func warmth(a *plan.Advice) warmthPart {
	f := a.Facts
	from := f.Plant.Plus(-warmthBefore)
	w := warmthPart{Depth: float64(f.Depth), CoverFloor: float64(f.CoverFloor()), WorkFloor: float64(f.WorkFloor), Ceiling: float64(f.Ceiling),
		StemBurn: float64(facts.StemBurn), From: from.String()}
	if f.Probe.Given {
		w.Probe = &probePart{float64(f.Probe.Expected), float64(f.Probe.Shift), f.Probe.Doubtful}
	}
	for film := range table.FilmCount + 1 {
		line := filmWarmth{Film: "bare"}
		if film < table.FilmCount {
			line.Film = table.Films[film].ID
		}
		w.Films = append(w.Films, line)
	}
	for depth := range facts.Depths {
		s := facts.SoilSeasonOf(f, depth, from, warmthBefore+facts.WarmthAfter)
		for film := range w.Films {
			line, m := &w.Films[film], &s.Marks[film]
			if s.Depth == f.Depth {
				line.CoversDay, line.WarmDay = dayOrNone(m.Covers, f), dayOrNone(m.Warm, f)
				line.WarmSoonest, line.WarmLatest = dayOrNone(m.WarmSoonest, f), dayOrNone(m.WarmLatest, f)
				line.AboveDays, line.AboveHours, line.Surface = m.OverDays, float64(m.OverHours), float64(m.Surface)
			}
			d := depthWarmth{Depth: float64(s.Depth), BandLow: float64(m.Planting.BandLow), BandHigh: float64(m.Planting.BandHigh)}
			for _, day := range s.Days[film] {
				d.Mean = append(d.Mean, float64(day.Mean))
				d.Minimum = append(d.Minimum, float64(day.Low))
				d.Maximum = append(d.Maximum, float64(day.High))
			}
			line.Depths = append(line.Depths, d)
		}
	}
	return w
}

// dayOrNone counts a date from the wanted planting day.
func dayOrNone(d unit.Optional[unit.Date], f *facts.Facts) *int {
	if !d.Given {
		return nil
	}
	n := int(d.Value.Minus(f.Plant))
	return &n
}
