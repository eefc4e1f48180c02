// The page writes no advice files, so its program is built without this.

//go:build !page

package casefile

import (
	"bytes"
	"encoding/json"
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The shapes below are the advice file: SI, each name with its unit, sentences
// in metric.

type adviceFile struct {
	Version  int             `json:"version"`
	Case     json.RawMessage `json:"case"`
	Defaults []defaultLine   `json:"defaults_used"`
	Verdict  verdictPart     `json:"verdict"`
	Instead  []insteadLine   `json:"instead,omitempty"`
	Film     answerPart      `json:"film"`
	Surface  answerPart      `json:"surface"`
	Thick    thickPart       `json:"thickness"`
	Bed      bedPart         `json:"bed"`
	Tape     tapePart        `json:"tape"`
	Wait     waitPart        `json:"wait"`
	Warmth   warmthPart      `json:"soil_warmth"`
	Turning  []turnLine      `json:"turning_points,omitempty"`
	Left     []string        `json:"turning_points_not_searched,omitempty"` // inputs
	Water    waterPart       `json:"water_plan"`
	Base     *basePart       `json:"base_fertiliser"`
	Covers   []coverLine     `json:"covers"` // none where they win no days
	Shopping []shoppingLine  `json:"shopping"`
	Season   []seasonLine    `json:"season"`
	Laying   *layingPart     `json:"laying_day"` // null where film is refused
	Cautions []cautionLine   `json:"cautions"`
	Limits   []string        `json:"limits"`
	Disputes []disputeLine   `json:"disagreements"`
	Sources  []sourceLine    `json:"sources"`
}

type defaultLine struct {
	Field  string `json:"field"`
	Used   string `json:"used"`
	Reason string `json:"reason"`
}

type verdictPart struct {
	Choice string       `json:"choice"`
	Gates  []factorLine `json:"gates"`
}

type answerPart struct {
	briefPart
	Tied   bool         `json:"tied,omitempty"`
	IfLaid string       `json:"if_laid,omitempty"` // film is refused: what would be chosen by who lays all the same
	Ranked []rankedLine `json:"ranked"`
}

type thickPart struct {
	answerPart
	Thickness float64 `json:"thickness_um,omitempty"`
}

type bedPart struct {
	answerPart
	Height    float64 `json:"height_m"`
	Top       float64 `json:"top_m"`
	Base      float64 `json:"base_m"`
	Crown     float64 `json:"crown_m"`
	Centres   float64 `json:"centres_m"`
	Needed    float64 `json:"film_needed_m"`
	FilmWidth float64 `json:"film_width_m"`
	Tuck      float64 `json:"tuck_m"`
}

type tapePart struct {
	answerPart
	tapeSold
	Lines  int     `json:"lines"`
	Depth  float64 `json:"depth_m"`
	Offset float64 `json:"off_plant_line_m"`
}

type waitPart struct {
	answerPart
	briefWait
	CoversOn string   `json:"covers_floor_on,omitempty"`
	WarmOn   string   `json:"floor_on,omitempty"`
	Costs    string   `json:"waiting_longer_costs,omitempty"`
	Ways     []string `json:"what_can_be_done,omitempty"`
}

type rankedLine struct {
	Option     string       `json:"option"`
	Score      float64      `json:"score"`
	RuledOutBy string       `json:"ruled_out_by,omitempty"`
	Factors    []factorLine `json:"factors"`
}

type factorLine struct {
	Rule   string   `json:"rule"`
	Weight string   `json:"weight"`
	Fit    float64  `json:"fit"`
	Fact   []string `json:"fact,omitempty"` // the case's own figures, in the order of the reason
	Reason string   `json:"reason"`
	Source []string `json:"source"`
}

type cautionLine struct {
	ID       string `json:"id"`
	Step     string `json:"step"`
	Text     string `json:"text"`
	LastWord string `json:"last_word"`
}

// insteadLine is what to do where film is refused.
type insteadLine struct {
	Gate string `json:"gate"`
	What string `json:"what"`
	Why  string `json:"why"`
}

// disputeLine is a point on which sources disagree.
type disputeLine struct {
	Question string     `json:"question"`
	About    string     `json:"about"`
	Sides    []sideLine `json:"sides"`
}

type sideLine struct {
	Says   string `json:"says"`
	Source string `json:"source"`
}

type sourceLine struct {
	ID        string `json:"id"`
	Publisher string `json:"publisher"`
	Title     string `json:"title"`
	Year      string `json:"year"`
	Where     string `json:"where"`
	Address   string `json:"address"` // or why there is none
	Mark      string `json:"mark"`
}

// EncodeAdvice writes the advice file: the same bytes for the same advice, on
// every machine. The turning points are found apart, since that takes far longer
// than the advice; without any the file does not speak of them. The inputs that were
// left out of the search are named.
func EncodeAdvice(a *plan.Advice, points []search.TurningPoint, left ...*field.Input) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	file := fileOf(a, points)
	for _, in := range left {
		file.Left = append(file.Left, in.Name)
	}
	err := e.Encode(file)
	return b.Bytes(), err
}

// EncodeAdviceLine writes the advice on one line, for tables of many cases.
func EncodeAdviceLine(a *plan.Advice) ([]byte, error) {
	return encodeLine(fileOf(a, nil))
}

// encodeLine writes a shape on one line.
func encodeLine(file any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(file)
	return b.Bytes(), err
}

func fileOf(a *plan.Advice, points []search.TurningPoint) *adviceFile {
	plan := a.WaterPlan()
	list := a.Shopping(&plan)
	f := &adviceFile{Version: Version, Case: Encode(&a.Case),
		Verdict: verdictPart{Choice: a.Verdict.Question.Key(bestOf(&a.Verdict)), Gates: factors(a.Gates)},
		Film:    answer(&a.Film), Surface: answer(&a.Surface),
		Thick: thickPart{answerPart: answer(&a.Thickness)},
		Bed: bedPart{answerPart: answer(&a.Bed), Height: float64(a.Shape.Height), Top: float64(a.Shape.Top), Base: four(float64(a.Shape.Base)),
			Crown: float64(a.Shape.Crown), Centres: four(float64(a.Shape.Centres)), Needed: float64(a.Shape.Needed), FilmWidth: four(float64(a.Shape.FilmWidth)), Tuck: float64(a.Shape.Tuck)},
		Tape:    tapePart{answerPart: answer(&a.Tape), tapeSold: soldTape(a), Lines: a.TapePlan.Laterals, Depth: four(float64(a.TapePlan.Depth)), Offset: four(float64(a.TapePlan.Offset))},
		Wait:    wait(a),
		Warmth:  warmth(a),
		Turning: turning(points), Water: waterOf(a, &plan),
		Shopping: shopping(&list), Season: season(a.Season(&list)),
	}
	if u, ok := a.ThicknessChosen(); ok {
		f.Thick.Thickness = four(float64(u))
	}
	if a.Refused() {
		f.Shopping = []shoppingLine{}
		f.Film.IfLaid, f.Film.Choice = f.Film.Choice, table.NoFilm.Key()
	} else {
		day := laying(a.Sheet(&list))
		f.Laying = &day
	}
	for _, i := range a.Insteads() {
		f.Instead = append(f.Instead, insteadLine{i.Gate, i.What.In(unit.Metric), i.Why.In(unit.Metric)})
	}
	for _, d := range a.Defaults {
		f.Defaults = append(f.Defaults, defaultLine{d.Field, d.Used.In(unit.Metric), d.Reason})
	}
	for i := range a.Cautions {
		c := &a.Cautions[i]
		f.Cautions = append(f.Cautions, cautionLine{c.ID, string(c.Step), c.Text, c.Defers})
	}
	for _, l := range a.Limits {
		f.Limits = append(f.Limits, l.Text.In(unit.Metric))
	}
	for i := range a.Disputes {
		d := &a.Disputes[i]
		line := disputeLine{Question: d.Question.String(), About: d.About}
		for _, s := range d.Sides {
			line.Sides = append(line.Sides, sideLine{s.Says.In(unit.Metric), s.Source.ID})
		}
		f.Disputes = append(f.Disputes, line)
	}
	f.Base, f.Covers = base(&list.Base), coverLines(list.Covers)
	f.Sources = sourceLines(a.Sources)
	return f
}

func sourceLines(sources []*table.Source) (lines []sourceLine) {
	for _, s := range sources {
		lines = append(lines, sourceLine{s.ID, s.Publisher, s.Title, s.Year, s.Where, s.Found(), s.Mark.String()})
	}
	return lines
}

func four(v float64) float64 { return math.Round(v*1e4) / 1e4 }

func bestOf(c *judge.Choice) question.Option { return c.Ranked[0].Option }

func answer(c *judge.Choice) answerPart {
	p := answerPart{briefPart: brief(c), Tied: c.Tied, Ranked: make([]rankedLine, 0, len(c.Ranked))}
	for i := range c.Ranked {
		r := &c.Ranked[i]
		line := rankedLine{Option: c.Question.Key(r.Option), Score: r.Score, Factors: factors(r.Factors)}
		if r.RuledOutBy != nil {
			line.RuledOutBy = r.RuledOutBy.Rule.ID
		}
		p.Ranked = append(p.Ranked, line)
	}
	return p
}

func factors(list []judge.Factor) []factorLine {
	lines := make([]factorLine, 0, len(list))
	for i := range list {
		f := &list[i]
		line := factorLine{Rule: f.Rule.ID, Weight: f.Rule.Weight.String(), Fit: f.Fit, Reason: f.Reason.In(unit.Metric)}
		for _, q := range f.Reason.Quantities {
			line.Fact = append(line.Fact, q.In(unit.Metric))
		}
		for _, s := range f.Rule.Sources {
			line.Source = append(line.Source, s.ID)
		}
		lines = append(lines, line)
	}
	return lines
}

func wait(a *plan.Advice) waitPart {
	w := &a.WaitPlan
	p := waitPart{answerPart: answer(&a.Wait), briefWait: briefWaitOf(a), Costs: w.WaitCosts.In(unit.Metric), Ways: phrases(a.CanBeDone())}
	if w.CoversOn.Given {
		p.CoversOn = w.CoversOn.Value.String()
	}
	if w.WarmOn.Given {
		p.WarmOn = w.WarmOn.Value.String()
	}
	return p
}
