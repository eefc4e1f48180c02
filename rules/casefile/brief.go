// The page writes no advice files, so its program is built without this.

//go:build !page

package casefile

import (
	"bytes"
	"encoding/json"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
)

// briefLine is the advice without its reasons, for tables of many cases: the keys of
// the advice file, in SI.
type briefLine struct {
	Version   int      `json:"version"`
	Crop      string   `json:"crop"`
	Wanted    string   `json:"wanted_on"`
	Verdict   string   `json:"verdict"`
	Gates     []string `json:"gates"` // rules that forced the verdict
	Film      string   `json:"film"`  // "none" where it may not be laid
	Surface   string   `json:"surface"`
	Thickness string   `json:"thickness"`
	Bed       string   `json:"bed"`
	FilmWidth float64  `json:"film_width_m"`
	Tape      string   `json:"tape"`
	Lines     int      `json:"lines"`
	Wait      string   `json:"wait"`
	LayOn     string   `json:"lay_on,omitempty"` // not where film is refused
	PlantOn   string   `json:"plant_on"`
	Start     float64  `json:"start_minutes"` // each time, see start_every_days
	Every     int      `json:"start_every_days"`
	Peak      float64  `json:"peak_minutes_a_day"`
	Fits      bool     `json:"water_fits"`
}

// EncodeBrief writes the answers alone on one line of less than 2 kB.
func EncodeBrief(a *plan.Advice) ([]byte, error) {
	w, water := &a.WaitPlan, &a.Water
	line := briefLine{
		Version: Version, Crop: a.Case.Crop, Wanted: a.Case.PlantOn.Value.String(),
		Verdict: a.Verdict.Question.Key(bestOf(&a.Verdict)), Gates: []string{},
		Film: chosen(&a.Film), Surface: chosen(&a.Surface), Thickness: chosen(&a.Thickness),
		Bed: chosen(&a.Bed), FilmWidth: four(float64(a.Shape.FilmWidth)),
		Tape: chosen(&a.Tape), Lines: a.TapePlan.Laterals,
		Wait: chosen(&a.Wait), LayOn: w.LayOn.String(), PlantOn: w.PlantOn.String(),
		Start: float64(water.StartRun), Every: int(water.StartEvery), Peak: float64(water.PeakMinutes), Fits: water.Fits,
	}
	if a.Refused() {
		line.Film, line.LayOn = table.NoFilm.Key(), ""
	}
	for i := range a.Gates {
		line.Gates = append(line.Gates, a.Gates[i].Rule.ID)
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(&line)
	return b.Bytes(), err
}
