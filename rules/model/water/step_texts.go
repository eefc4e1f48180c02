//go:build !page

package water

import "strings"

// stepTexts are a step's formula in words and its source, outside the page's program.
var stepTexts = [...]struct{ id, formula, source string }{
	{"crop-use", "reference evapotranspiration × crop coefficient × (1 − what film saves)", fao56 + ", chapters 6 and 10"},
	{"net", "crop use × width of ground that the crop draws on × length of bed (100 m or 100 ft)", "1 mm on 1 m² is 1 L, 1 in on 1 ft² is 0.623 gal; the width grows from the bed top to the bed centers as leaves close (our reasoning, no source)"},
	{"gross", "net need ÷ the share that stays with the roots, or ÷ (1 − leaching) where that is more", "Colorado State Extension 5.623; leaching: FAO Irrigation and Drainage Paper 29 (from memory)"},
	{"salt", "100 − slope × (1.5 × conductivity of the water − threshold)", "FAO Irrigation and Drainage Paper 61, annex 1; 1.5: pairs in PLoS ONE 2018, table 3"},
	{"leaching", "conductivity of the water ÷ (5 × threshold − conductivity of the water)", "FAO Irrigation and Drainage Paper 29, equation 9 (from memory)"},
	{"feed", "rate × bed centers × length of all beds = nutrient; ÷ grade = product; ÷ strength = stock; the largest zone's share of it × injector ratio ÷ flow of the zone = minutes", "Mid-Atlantic recommendations (2021) count an acre as 7,260 bed feet on 6-ft centers; arithmetic"},
	{"chlorine", "flow × strength wanted ÷ (10,000 × percent of the bleach)", "microirrigation management reference book, table 3: gal/h = 0.006 × gal/min × ppm ÷ percent"},
	{"beds-at-once", "tested flow × usable share ÷ flow of one bed, whole beds only", "usable 75–85 % of a tested flow: common practice, no source"},
	{"hours", "gross need ÷ flow of the bed gives the run of one zone; × zones", "arithmetic; Penn State Extension (2013) prints the same hours for 1 in on 30 in"},
	{"store", "available water × root depth in the bed × share that may be used × wetted width", "Saxton and Rawls 2006; FAO-56 table 22; wetted width: common practice, no source"},
	{"longest-run", "store ÷ flow of the bed's tape", "the form of the NCAT/ATTRA and Penn State (2013) table; its own assumptions are not printed, and two editions differ by half"},
	{"header", "smallest nominal bore with speed, flow spread between beds and pressure loss within limits; each bore's pressure solved bed by bed", "5 ft/s: \"Irrigation formulas\" sheet; nominal sizes: common practice, no source"},
	{"head", "lift + rise + header and main + filter + injector + pressure at the tape", "Texas A&M AgriLife B-6011; Florida Extension circular on pump head"},
	{"pump", "flow × head × weight of water ÷ pump efficiency: L/h × m ÷ 367,100, or gal/min × ft ÷ 3,960", "\"Irrigation formulas\" sheet; Utah State University, sprinkle and trickle lecture 11; efficiency 0.75 where unknown"},
	{"outlet", "rated flow × (pressure ÷ rated pressure) to the power of the exponent", "emitter law of irrigation texts; ratings at 8 psi: Penn State Extension (2013)"},
	{"friction", "friction factor × length ÷ bore × speed² ÷ 2g; the factor is 0.3164 ÷ the fourth root of the Reynolds number, or 64 ÷ it below 2,000 (a straight line from there to 3,000); each outlet that is passed takes its flow off", "Darcy-Weisbach with Blasius and laminar factors (from memory); viscosity at 60 °F"},
	{"line", "outlet by outlet from the far end: add its flow, then the friction of the step and the slope, until the inlet pressure is met", "smooth-pipe friction (laminar, Blasius) at 60 °F; the solver agrees with EPANET (US EPA) within 0.1 % of flow under two other laws"},
	{"spread", "(most − least) ÷ most, of all outlets; emission uniformity also counts the maker's variation", "ASAE EP405 form: 100·(1 − 1.27·CV/√n)·qmin/qmean; fields usually show less, because outlets plug (ASAE; CIGR handbook: 65–80 %)"},
	{"bed-flow", "sum of all outlets of a line × lines in the bed", "stepwise solution"},
}

func stepText(id string) (formula, source string) {
	for i := range stepTexts {
		if t := &stepTexts[i]; t.id == id {
			return t.formula, t.source
		}
	}
	panic("no text of step " + id)
}

// StepTexts are those texts, a line each: the id behind "step:", a tab, the formula, a tab, the
// source.
func StepTexts() string {
	var b strings.Builder
	for i := range stepTexts {
		t := &stepTexts[i]
		b.WriteString("step:" + t.id + "\t" + t.formula + "\t" + t.source + "\n")
	}
	return b.String()
}
