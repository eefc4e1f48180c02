//go:build !page

package casefile

import (
	"math"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
)

// briefLine is the advice without its reasons, in the names of the advice file: what a
// map or a table of many fields asks. SI, each name with its unit.
type briefLine struct {
	Version  int        `json:"version"`
	Crop     string     `json:"crop"`
	Asked    string     `json:"plant_on_asked"`
	Verdict  string     `json:"verdict"`
	Gates    []string   `json:"gates,omitempty"`
	Instead  []string   `json:"instead,omitempty"` // gates that say what to do here
	Film     briefPart  `json:"film"`
	Surface  briefPart  `json:"surface"`
	Thick    float64    `json:"thickness_um,omitempty"`
	Bed      briefBed   `json:"bed"`
	Tape     briefTape  `json:"tape"`
	Wait     briefWait  `json:"wait"`
	Water    briefWater `json:"water_plan"`
	Defaults []string   `json:"defaults_used"` // inputs
}

type briefPart struct {
	Choice     string  `json:"choice"`
	Lead       float64 `json:"lead"`
	Confidence string  `json:"confidence"`
}

type briefBed struct {
	Height    float64 `json:"height_m"`
	Top       float64 `json:"top_m"`
	FilmWidth float64 `json:"film_width_m"`
}

type briefTape struct {
	Choice string `json:"choice"`
	tapeSold
	Lines int `json:"lines"`
}

// tapeSold is the tape that was chosen, as it is sold; nothing where none fits.
type tapeSold struct {
	Spacing float64 `json:"spacing_m,omitempty"`
	Flow    float64 `json:"flow_l_h_per_100m,omitempty"`
}

type briefWait struct {
	Days    int    `json:"days"`
	LayOn   string `json:"lay_on"` // empty where film is refused
	PlantOn string `json:"plant_on"`
}

type briefWater struct {
	StartEvery int     `json:"start_every_days"`
	StartLong  float64 `json:"start_run_min"`
	PeakRun    float64 `json:"peak_run_min_day"`
	RunsADay   int     `json:"runs_a_day"`
	Fits       bool    `json:"fits"`
}

// EncodeBrief writes the answers alone on one line, at most 2 kB: the same figures as
// [EncodeAdviceLine], under the same names. Where film is refused it is none and no day
// of laying is given; the rest then holds for who lays all the same.
func EncodeBrief(a *plan.Advice) ([]byte, error) {
	f := briefLine{
		Version: Version, Crop: a.Case.Crop, Asked: a.Facts.Wanted.String(),
		Verdict: a.Verdict.Question.Key(bestOf(&a.Verdict)),
		Film:    brief(&a.Film), Surface: brief(&a.Surface),
		Bed:  briefBed{Height: float64(a.Shape.Height), Top: float64(a.Shape.Top), FilmWidth: four(float64(a.Shape.FilmWidth))},
		Tape: briefTape{Choice: brief(&a.Tape).Choice, tapeSold: soldTape(a), Lines: a.TapePlan.Laterals},
		Wait: briefWaitOf(a),
		Water: briefWater{StartEvery: int(a.Water.StartEvery), StartLong: float64(a.Water.StartRun), PeakRun: float64(a.Water.PeakMinutes),
			RunsADay: a.Water.RunsADay, Fits: a.Water.Fits},
	}
	for i := range a.Gates {
		f.Gates = append(f.Gates, a.Gates[i].Rule.ID)
	}
	for _, i := range a.Insteads() {
		f.Instead = append(f.Instead, i.Gate)
	}
	for _, d := range a.Defaults {
		f.Defaults = append(f.Defaults, d.Field)
	}
	if u, ok := a.ThicknessChosen(); ok {
		f.Thick = four(float64(u))
	}
	if a.Refused() {
		f.Film.Choice = table.NoFilm.Key()
	}
	return encodeLine(f)
}

func soldTape(a *plan.Advice) (p tapeSold) {
	if t := a.TapePlan.Tape; t != nil {
		p = tapeSold{four(float64(t.Spacing)), math.Round(float64(t.Flow)*10) / 10}
	}
	return p
}

func briefWaitOf(a *plan.Advice) briefWait {
	w := &a.WaitPlan
	p := briefWait{Days: int(w.Days), LayOn: w.LayOn.String(), PlantOn: w.PlantOn.String()}
	if a.Refused() { // nothing is laid
		p.LayOn = ""
	}
	return p
}

func brief(c *judge.Choice) briefPart {
	p := briefPart{Choice: "none", Lead: c.Lead, Confidence: c.Confidence.String()}
	if o, ok := c.Best(); ok {
		p.Choice = c.Question.Key(o)
	}
	return p
}
