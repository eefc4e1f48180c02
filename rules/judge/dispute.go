package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Dispute is a point on which published trials or lists disagree, with what each
// side found. Both are shown; what we make of them stands in the rules.
type Dispute struct {
	ID       string
	Question question.Question
	About    string
	Sides    []Side
}

// Side is what one side says, and who that is.
type Side struct {
	Says   unit.Phrase // the page's program fetches the text: see [RuleTexts]
	Source *table.Source
	Row    int
}

// disputes are what sources disagree on, in the order of the answers.
var disputes = [...]Dispute{
	{ID: "coloured-films", Question: question.Film, About: "Do red and blue films yield more than black?"},
	{ID: "silver-warmth", Question: question.Film, About: "Does silver film warm or cool the soil?"},
	{ID: "black-warmth", Question: question.Film, About: "How much does black film warm the soil?"},
	{ID: "purple-nutsedge", Question: question.Film, About: "Does film that passes light hold purple nutsedge?"},
	{ID: "yellow-nutsedge", Question: question.Film, About: "Does it matter which plastic lies over yellow nutsedge?"},
	{ID: "bed-height", Question: question.Bed, About: "How high should a bed be?"},
	{ID: "floors", Question: question.Wait, About: "How warm must the soil be?"},
}

// The places of those that do not concern every case.
const (
	purpleDispute = 3 + iota
	yellowDispute
	bedDispute
	floorDispute
)

// sideRow is a side: its figures are all of one kind, or of its crop's own row.
type sideRow struct {
	dispute int
	source  *table.Source
	text    string
	kind    unit.Kind
	values  []float64
}

// Their texts are [sideText].
var sideRows = [...]sideRow{
	{0, &table.ColourCompare, "", unit.KindShare, []float64{12, 20, 35}},
	{0, &table.UtahGuide, "", unit.KindShare, []float64{20}},
	{0, &table.Zimbabwe2014, "", unit.KindNumber, []float64{15.3, 37.9}},
	{0, &table.PepperHeat2011, "", unit.KindShare, []float64{60}},
	{0, &table.NewEngland, "", 0, nil},

	{1, &table.NewEngland, "", unit.KindWarming, []float64{2 / 1.8}},
	{1, &table.Tomato2010, "", unit.KindWarming, []float64{3, 6}},

	{2, &table.PuertoRico1968, "", unit.KindWarming, []float64{1 / 1.8}},
	{2, &table.Virginia1998, "", unit.KindWarming, []float64{1, 2}},
	{2, &table.NewEngland, "", unit.KindWarming, []float64{3 / 1.8, 5 / 1.8}},

	{purpleDispute, &table.NutsedgeTranslucent, "", unit.KindShare, []float64{70, 88}},
	{purpleDispute, &table.PaperNutsedge2018, "", 0, nil},

	{yellowDispute, &table.NutsedgeYellow2005, "", unit.KindShare, []float64{96}},
	{yellowDispute, &table.NutsedgeGeorgia, "", 0, nil},

	{bedDispute, &table.GeorgiaBeds2019, "", unit.KindShort, []float64{12 * unit.MetresPerInch}},
	{bedDispute, &table.NewEngland, "", 0, nil},
}

// Disputes lists what sources disagree on that bears on a case.
func Disputes(f *facts.Facts) (list []Dispute) {
	own := sideRows[:len(sideRows):len(sideRows)]
	if h := f.Crop.BedHeight; h.Given() {
		says, values := "{} to {}, for this crop.", []float64{float64(h.Low), float64(h.High)}
		if h.Low == h.High {
			says, values = "{}, for this crop.", values[:1]
		}
		own = append(own, sideRow{bedDispute, h.Source, says, unit.KindShort, values})
	}
	early, safe := f.Crop.MinSoilTemperature.Source, f.Crop.SafeSoilTemperature.Source
	if f.Seeded {
		early, safe = f.Crop.SeedMinSoilTemperature.Source, f.Crop.SeedSafeSoilTemperature.Source
	}
	if f.MinSoilTemperature != f.SafeSoilTemperature && early != safe { // one list may give a range, which is no dispute
		own = append(own, sideRow{floorDispute, early, "At least {}.", unit.KindTemperature, []float64{float64(f.MinSoilTemperature)}},
			sideRow{floorDispute, safe, "At least {}, on three mornings.", unit.KindTemperature, []float64{float64(f.SafeSoilTemperature)}})
	}
	for i := range own {
		r, nutsedge := &own[i], f.Case.Weeds.Nutsedge
		if r.dispute == purpleDispute && nutsedge != "purple" || r.dispute == yellowDispute && nutsedge != "yellow" {
			continue
		}
		if n := len(list); n == 0 || list[n-1].ID != disputes[r.dispute].ID {
			list = append(list, disputes[r.dispute])
		}
		d, says := &list[len(list)-1], unit.Phrase{Text: r.text}
		if r.text == "" {
			says.Text = sideText(i)
		}
		for _, v := range r.values {
			says.Quantities = append(says.Quantities, unit.Quantity{Kind: r.kind, SI: v})
		}
		d.Sides = append(d.Sides, Side{says, r.source, i})
	}
	return list
}
