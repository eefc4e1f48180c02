// The page writes no advice files, so its program is built without this.

//go:build !page

package casefile

import (
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// The shapes of the advice file's water plan. Volumes "per 100 m" are for 100 m
// of bed with all its lines.

type waterPart struct {
	Says       string  `json:"says"`
	Start      float64 `json:"start_mm_day"`
	Peak       float64 `json:"peak_mm_day"`
	PeakLitres float64 `json:"peak_l_per_100m_day"`
	StartRun   float64 `json:"start_run_min_day"`
	StartEvery int     `json:"start_every_days"`
	StartLong  float64 `json:"start_run_min"`
	PeakRun    float64 `json:"peak_run_min_day"`
	SingleRun  float64 `json:"longest_single_run_min"`
	RunsADay   int     `json:"runs_a_day"`
	Zones      int     `json:"zones,omitempty"`
	HoursADay  float64 `json:"hours_a_day,omitempty"`
	Fits       bool    `json:"fits"`

	Verdict  string         `json:"verdict"`
	Because  []string       `json:"because"`
	Remedies []wayLine      `json:"ways_out,omitempty"`
	Missing  []missingLine  `json:"missing,omitempty"`
	Assumed  []assumedLine  `json:"assumed"`
	Months   []monthLine    `json:"months"`
	HungryOn string         `json:"hungriest_day,omitempty"`
	Soil     *soilLine      `json:"soil,omitempty"`
	Tape     tapeLine       `json:"tape"`
	Source   *supplyLine    `json:"supply,omitempty"`
	ZoneList []zoneLine     `json:"zone_list,omitempty"`
	Filter   filterLine     `json:"filter"`
	Quality  qualityLine    `json:"quality"`
	Feeding  *feedingLine   `json:"feeding,omitempty"`
	Chlorine *chlorineLine  `json:"chlorine,omitempty"`
	Warnings []warningLine  `json:"warnings,omitempty"`
	Checks   []checkLine    `json:"checks,omitempty"`
	Steps    []stepLine     `json:"steps"`
	Cautions []waterCaution `json:"cautions"`
}

type wayLine struct {
	ID     string `json:"id"`
	Change string `json:"change"`
	Result string `json:"result"`
	Fits   bool   `json:"fits"`
}

type missingLine struct {
	Field   string `json:"field"`
	Settles string `json:"settles"`
}

type assumedLine struct {
	Field  string `json:"field"`
	Used   string `json:"used"`
	Source string `json:"source"`
}

type monthLine struct {
	Month       string  `json:"month"`
	Days        int     `json:"days"`
	Reference   float64 `json:"reference_mm_day"`
	Second      float64 `json:"reference_hargreaves_mm_day"`
	Coefficient float64 `json:"coefficient"`
	Use         float64 `json:"use_mm_day"`
	UseLow      float64 `json:"use_low_mm_day"`
	UseHigh     float64 `json:"use_high_mm_day"`
	Net         float64 `json:"net_l_per_100m_day"`
	Gross       float64 `json:"gross_l_per_100m_day"`
	GrossCool   float64 `json:"gross_cool_l_per_100m_day,omitempty"`
	GrossDry    float64 `json:"gross_dry_l_per_100m_day,omitempty"`
	AllBeds     float64 `json:"all_beds_l_day,omitempty"`
	Run         float64 `json:"run_min_day"`
	Runs        int     `json:"runs_a_day"`
	EachRun     float64 `json:"each_run_min"`
	Interval    int     `json:"days_between"`
	HoursADay   float64 `json:"hours_a_day,omitempty"`
	HoursAWeek  float64 `json:"hours_a_week,omitempty"`
}

type soilLine struct {
	Available   float64 `json:"available_share"`
	GuideLow    float64 `json:"field_guide_low,omitempty"`
	GuideHigh   float64 `json:"field_guide_high,omitempty"`
	Depth       float64 `json:"root_depth_m"`
	Depletion   float64 `json:"depletion"`
	Wetted      float64 `json:"wetted_width_m"`
	Store       float64 `json:"store_l_per_100m"`
	Longest     float64 `json:"longest_run_min"`
	LongestLow  float64 `json:"longest_run_low_min"`
	LongestHigh float64 `json:"longest_run_high_min"`
}

type tapeLine struct {
	Pressure   float64 `json:"pressure_kpa"`
	Lowered    bool    `json:"less_than_wanted,omitempty"`
	Flow       float64 `json:"flow_l_h_per_100m"`
	BedFlow    float64 `json:"bed_flow_l_h,omitempty"`
	Lowest     float64 `json:"lowest_pressure_kpa,omitempty"`
	LowestAt   float64 `json:"lowest_at_m,omitempty"`
	End        float64 `json:"end_pressure_kpa,omitempty"`
	Spread     float64 `json:"flow_spread_percent,omitempty"`
	OtherEnd   float64 `json:"flow_spread_from_upper_end_percent,omitempty"`
	Uniformity float64 `json:"emission_uniformity_percent,omitempty"`
	Longest    float64 `json:"longest_lateral_m,omitempty"`
}

type supplyLine struct {
	Usable     float64  `json:"usable_l_h,omitempty"`
	Bore       float64  `json:"header_bore_m,omitempty"`
	BoreFits   *bool    `json:"header_fits,omitempty"`
	Velocity   float64  `json:"header_m_s,omitempty"`
	Loss       float64  `json:"header_loss_kpa"`
	Needs      float64  `json:"pump_pressure_kpa,omitempty"`
	Head       *float64 `json:"total_head_m,omitempty"`
	PumpNeeded bool     `json:"pump_needed"`
	Power      float64  `json:"pump_power_kw,omitempty"`
	Gives      *float64 `json:"source_gives_kpa,omitempty"`
	GravityRun float64  `json:"gravity_longest_m,omitempty"`
	TankEnough *bool    `json:"tank_enough,omitempty"`
}

type zoneLine struct {
	Zone   int     `json:"zone"`
	First  int     `json:"first_bed"`
	Last   int     `json:"last_bed"`
	Flow   float64 `json:"flow_l_h"`
	Litres float64 `json:"l_day,omitempty"`
}

type filterLine struct {
	Mesh       int     `json:"mesh"`
	Opening    float64 `json:"opening_um"`
	MediaFirst bool    `json:"media_or_disc_first"`
	SandFirst  bool    `json:"sand_separator_first"`
}

type qualityLine struct {
	Clogging    []cloggingLine `json:"clogging,omitempty"`
	Restriction string         `json:"salt,omitempty"`
	Intake      string         `json:"infiltration,omitempty"`
	Yield       *float64       `json:"yield_percent,omitempty"`
	Leaching    float64        `json:"leaching_percent,omitempty"`
	Hardness    string         `json:"hardness,omitempty"`
	Nitrogen    *float64       `json:"nitrogen_kg_ha,omitempty"` // of the field with its own beds; the base fertilizer counts it with the beds of its rates
}

type cloggingLine struct {
	ID    string  `json:"id"`
	Value float64 `json:"value"`
	Risk  string  `json:"risk"`
}

type feedingLine struct {
	Nutrient float64 `json:"nutrient_kg_day"`
	Product  float64 `json:"product_kg_day"`
	Stock    float64 `json:"stock_l_day"`
	Inject   float64 `json:"inject_min_largest_zone"`
	Rinse    float64 `json:"rinse_min"`
	Fits     bool    `json:"fits"`
}

type chlorineLine struct {
	Inject  float64 `json:"inject_l_h"`
	Wanted  float64 `json:"wanted_mg_l"`
	ForIron float64 `json:"for_iron_mg_l,omitempty"`
}

type warningLine struct {
	ID     string `json:"id"`
	Says   string `json:"says"`
	Source string `json:"source"`
}

type checkLine struct {
	ID     string `json:"id"`
	Says   string `json:"says"`
	Agrees bool   `json:"agrees"`
	Source string `json:"source"`
}

type stepLine struct {
	ID      string   `json:"id"`
	Title   string   `json:"title"`
	Formula string   `json:"formula"`
	Inputs  []string `json:"inputs"`
	Result  string   `json:"result"`
	Source  string   `json:"source"`
}

type waterCaution struct {
	ID       string `json:"id"`
	Text     string `json:"text"`
	LastWord string `json:"last_word"`
}

func waterOf(a *plan.Advice, p *plan.WaterPlan) waterPart {
	w := &a.Water
	part := waterPart{Says: w.Says.In(unit.Metric), Start: float64(w.Start), Peak: float64(w.Peak), PeakLitres: float64(w.PeakLitres),
		StartRun: float64(w.StartMinutes), StartEvery: int(w.StartEvery), StartLong: float64(w.StartRun), PeakRun: float64(w.PeakMinutes), SingleRun: float64(w.SingleRun),
		RunsADay: w.RunsADay, Zones: w.Zones, HoursADay: float64(w.HoursADay), Fits: w.Fits,
		Verdict: p.Verdict.String(), Because: phrases(p.Because), Months: months(p), Assumed: []assumedLine{}, Cautions: []waterCaution{},
		Filter:  filterLine{p.Filter.Mesh.Count, p.Filter.Mesh.Opening, p.Filter.MediaFirst, p.Filter.SandFirst},
		Quality: quality(p), Soil: soil(p.Soil), Tape: tapeRun(p), Source: supply(p.Supply)}
	for _, way := range p.Remedies {
		part.Remedies = append(part.Remedies, wayLine{way.ID, way.Change.In(unit.Metric), way.Result.In(unit.Metric), way.Fits})
	}
	for _, m := range p.Missing {
		part.Missing = append(part.Missing, missingLine(m))
	}
	for _, x := range p.Assumed {
		part.Assumed = append(part.Assumed, assumedLine{x.Field, x.Value.In(unit.Metric), x.Source})
	}
	if d := p.Demand; d != nil {
		part.HungryOn = d.Peak.On.String()
	}
	if s := p.Schedule; s != nil {
		for _, z := range s.Zones {
			part.ZoneList = append(part.ZoneList, zoneLine{z.Number, z.FirstBed, z.LastBed, float64(z.Flow), float64(z.LitresADay.Value)})
		}
	}
	if f := p.Feeding; f != nil {
		part.Feeding = &feedingLine{float64(f.Nutrient), float64(f.Product), float64(f.Stock), float64(f.ZoneInject), float64(f.Rinse), f.Fits}
	}
	if c := p.Chlorine; c != nil {
		part.Chlorine = &chlorineLine{float64(c.Inject), float64(c.Wanted), float64(c.ForIron)}
	}
	for _, x := range p.Warnings {
		part.Warnings = append(part.Warnings, warningLine{x.ID, x.Says.In(unit.Metric), x.Source})
	}
	for _, c := range p.Checks {
		part.Checks = append(part.Checks, checkLine{c.ID, c.Says.In(unit.Metric), c.Agrees, c.Source})
	}
	part.Steps = steps(p.Steps)
	for _, c := range p.Cautions {
		part.Cautions = append(part.Cautions, waterCaution{c.ID, c.Text, c.LastWord})
	}
	return part
}

// steps writes sums down, as they are followed by hand.
func steps(list []water.Step) []stepLine {
	lines := make([]stepLine, len(list))
	for i := range list {
		s := &list[i]
		lines[i] = stepLine{ID: s.ID, Title: s.Title, Formula: s.Formula, Result: s.Result.Name + ": " + s.Result.Quantity.In(unit.Metric), Source: s.Source}
		for _, in := range s.Inputs {
			lines[i].Inputs = append(lines[i].Inputs, in.Name+": "+in.Quantity.In(unit.Metric))
		}
	}
	return lines
}

func phrases(list []unit.Phrase) []string {
	lines := make([]string, len(list))
	for i := range list {
		lines[i] = list[i].In(unit.Metric)
	}
	return lines
}

func months(p *plan.WaterPlan) []monthLine {
	lines := []monthLine{}
	if p.Demand == nil {
		return lines
	}
	for i := range p.Demand.Months {
		m := &p.Demand.Months[i]
		lines = append(lines, monthLine{
			Month: unit.On(m.Year, m.Month, 1).String()[:7], Days: int(m.Days),
			Reference: float64(m.Reference), Second: float64(p.Hargreaves[m.Month-1]), Coefficient: m.Coefficient,
			Use: float64(m.Use), UseLow: float64(m.UseLow), UseHigh: float64(m.UseHigh),
			Net: float64(m.Net), Gross: float64(m.Gross), GrossCool: float64(m.GrossCool.Value), GrossDry: float64(m.GrossDry.Value), AllBeds: float64(m.AllBeds.Value),
			Run: float64(m.Run), Runs: m.Runs, EachRun: float64(m.EachRun), Interval: int(m.Interval),
			HoursADay: float64(m.HoursADay.Value), HoursAWeek: float64(m.HoursAWeek.Value)})
	}
	return lines
}

func soil(s *water.Soil) *soilLine {
	if s == nil {
		return nil
	}
	return &soilLine{s.Water.Available, four(s.GuideLow), four(s.GuideHigh), float64(s.Depth), s.Depletion, four(float64(s.Strip.Width)),
		float64(s.Store), float64(s.Longest), float64(s.LongestLow), float64(s.LongestHigh)}
}

func tapeRun(p *plan.WaterPlan) tapeLine {
	t := &p.Tape
	line := tapeLine{Pressure: float64(t.Pressure), Lowered: t.Lowered, Flow: four(float64(t.Flow)), BedFlow: float64(t.BedFlow),
		Spread: float64(t.Spread), OtherEnd: float64(p.OtherEnd.Value), Uniformity: float64(t.Uniformity), Longest: float64(t.Longest.Length)}
	if r := t.Profile; r != nil {
		line.Lowest, line.LowestAt, line.End = float64(r.Lowest), float64(r.LowestAt), float64(r.End)
	}
	return line
}

func supply(s *water.Supply) *supplyLine {
	if s == nil {
		return nil
	}
	line := &supplyLine{Usable: float64(s.Usable), Bore: four(float64(s.Bore.Inside)), Velocity: float64(s.Velocity), Loss: float64(s.HeaderLoss),
		Needs: float64(s.Needs), PumpNeeded: s.PumpNeeded, Power: float64(s.ShaftPower)}
	if s.Bore.Inside > 0 {
		line.BoreFits = &s.BoreFits
	}
	if s.HeadKnown {
		total := float64(s.Total)
		line.Head = &total
	}
	if s.SourceGives.Given {
		gives := float64(s.SourceGives.Value)
		line.Gives = &gives
	}
	if s.Gravity != nil {
		line.GravityRun = float64(s.Gravity.Longest.Length)
	}
	if s.Tank != nil {
		line.TankEnough = &s.Tank.Enough
	}
	return line
}

func quality(p *plan.WaterPlan) qualityLine {
	q := &p.Quality
	line := qualityLine{Hardness: q.HardnessWord}
	for _, f := range q.Clogging {
		line.Clogging = append(line.Clogging, cloggingLine{f.Clogger.ID, f.Value, f.Hazard.String()})
	}
	if q.Restriction != waterquality.Unknown {
		line.Restriction, line.Intake = q.Restriction.String(), q.Infiltration.String()
	}
	if q.Yield.Given {
		yield := float64(q.Yield.Value)
		line.Yield = &yield
	}
	if p.Demand != nil {
		line.Leaching = float64(p.Demand.Leaching)
	}
	if q.NitrogenCredit.Given {
		line.Nitrogen = &q.NitrogenCredit.Value
	}
	return line
}
