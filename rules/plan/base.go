package plan

import (
	"math"
	"slices"
	"strconv"

	"filmfurrow/rules/field"
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Nutrient is one of the three that a bag names.
type Nutrient uint8

// The nutrients, as a bag names them: phosphorus as P₂O₅, potassium as K₂O.
const (
	Nitrogen Nutrient = iota
	Phosphate
	Potash
	NutrientCount
)

// NutrientKeys are the nutrients in files, NutrientNames in sentences.
var (
	NutrientKeys  = [NutrientCount]string{"n", "p2o5", "k2o"}
	NutrientNames = [NutrientCount]string{"nitrogen (N)", "phosphate (P₂O₅)", "potash (K₂O)"}
)

// Basis says where a season's need comes from, the surest first.
type Basis uint8

// The bases.
const (
	ByReport Basis = iota // the grower's own soil-test report
	ByClass               // a public table, by the class of the soil test; nitrogen by crop alone
	Untested              // a public table, medium taken for a soil that nobody tested
)

// Key is the basis in the advice file.
func (b Basis) Key() string {
	return [...]string{"soil-test-report", "public-table", "public-table-untested"}[b]
}

// NutrientPlan is one nutrient of the season, in kg for 1 ha of field with beds at
// BaseFertiliser.Centres, and for the whole job. Under, Water and Tape add up to Total,
// but where the water brings more than is left: then Tape is 0.
type NutrientPlan struct {
	Basis Basis
	Total unit.KilogramsPerHectare
	Low   unit.KilogramsPerHectare // Untested: what the table gives a soil of the richest class
	High  unit.KilogramsPerHectare // and of the poorest
	Share unit.Percent             // of Total that goes under the film
	Under unit.KilogramsPerHectare
	Water unit.KilogramsPerHectare // comes with the water by itself
	Tape  unit.KilogramsPerHectare // to be fed through the tape

	UnderMass, TapeMass unit.Kilograms // for the whole job; 0 where the beds are not known
	InProduct           unit.Kilograms // of UnderMass, in the grower's product
	Rest                unit.Kilograms // of UnderMass, from another bag
	Note                string         // of the table
	Sources             []*table.Source
}

// BaseFertiliser is what goes under the film before it is laid, and what is left to
// the tape. It never overrules a soil test.
type BaseFertiliser struct {
	Bare      bool   // film is refused: the same sums for bare ground
	Down      bool   // the film lies already: nothing can go under it
	For       string // whose row of the table stands in; empty where the crop has its own, or no table is used
	Nutrients [NutrientCount]NutrientPlan
	Centres   unit.Metres // of the beds that the rates are meant for
	Bed       unit.Metres // all beds; 0 where not known
	OverField bool        // spread over the whole field, not on the bed strips
	Width     unit.Metres // of what it is spread on: the bed's foot, or from bed to bed

	Grade   [NutrientCount]unit.Percent  // of the grower's product; all 0 where not told
	Product unit.Kilograms               // for the whole job
	Ends    Nutrient                     // the nutrient that ends it
	Per100  unit.KilogramsPer100Metres   // of product
	Strip   unit.KilogramsPerSquareMetre // of product, on what it is spread on
	Lime    unit.Kilograms               // for the field of the beds
	AWeek   unit.KilogramsPerHectare     // of nitrogen through the tape
	Weeks   int                          // of feeding
	Late    unit.KilogramsPerHectare     // of that nitrogen for which the season is too short
	From    unit.Date                    // its first day
	ByOwn   unit.KilogramsPerHectare     // what the grower's own daily feed brings in that time; 0 where none is told

	Says     []unit.Phrase
	Steps    []water.Step // how it was worked out
	Cautions []feed.Caution
	Sources  []*table.Source
}

// Told tells whether the grower named the product's grade.
func (b *BaseFertiliser) Told() bool { return b.Grade != [NutrientCount]unit.Percent{} }

// Feeding begins two weeks after planting, when roots have left the hole, and ends two
// weeks before the crop does: common practice, no source.
const feedingRests = 14

// noTapeCut is what a guide takes off the nitrogen where all of it goes under the film:
// 10 to 15 % ([table.MidwestFeeding]).
const (
	noTapeLow  = 0.10
	noTapeHigh = 0.15
)

// BaseFertiliser works out what goes under the film. It reads the water plan for the
// nitrogen that comes with the water; without one (nil) none is counted.
func (a *Advice) BaseFertiliser(w *WaterPlan) BaseFertiliser {
	f, c := a.Facts, &a.Case
	b := BaseFertiliser{Cautions: baseCautions[:], Bare: a.Refused(), Down: a.FilmDown(), OverField: c.Feed.Spread == "field", Centres: f.Centres, Bed: f.BedMetres}
	b.Width = a.Shape.Base
	if b.OverField || b.Bare {
		b.Width = f.Centres
	}
	need, standsIn := table.NeedOf(f.Crop)
	own := [NutrientCount]unit.Optional[unit.KilogramsPerHectare]{c.Feed.SeasonNitrogen, c.Feed.SeasonPhosphate, c.Feed.SeasonPotash}
	reported := own[Nitrogen].Given || own[Phosphate].Given || own[Potash].Given
	if !reported && !b.OverField && !b.Bare {
		b.Centres = need.Centres // a public rate is meant for beds at a distance of its own
	}
	if standsIn && !(own[Nitrogen].Given && own[Phosphate].Given && own[Potash].Given) {
		b.For = table.CropByID(need.Crop).Name
	}
	b.Nutrients[Nitrogen] = NutrientPlan{Basis: ByClass, Total: need.Nitrogen.Value, Sources: []*table.Source{need.Nitrogen.Source}}
	b.Nutrients[Phosphate] = byTest(&need.Phosphate, c.Soil.Phosphorus)
	b.Nutrients[Potash] = byTest(&need.Potash, c.Soil.Potassium)
	for i := range b.Nutrients {
		n := &b.Nutrients[i]
		if own[i].Given {
			*n = NutrientPlan{Basis: ByReport, Total: own[i].Value}
		} else if reported && !b.OverField && !b.Bare { // beside rates for the grower's own beds
			carried := unit.KilogramsPerHectare(need.Centres / b.Centres)
			n.Total, n.Low, n.High = n.Total*carried, n.Low*carried, n.High*carried
			n.Note += carriedNote
		}
	}
	b.split(a, need, own[Nitrogen].Given)
	b.credit(a, w)
	b.masses(a)
	b.product(c)
	b.feeding(a)
	b.work(a, need)
	b.say(a)
	b.cite(a, need)
	return b
}

const carriedNote = " Carried from the guide's distance of beds to yours."

// byTest reads a row by the class of the soil test.
func byTest(row *table.ByTest, class string) NutrientPlan {
	n := NutrientPlan{Basis: Untested, Total: row.Rates[table.TestMedium], Low: row.Rates[table.TestVeryHigh], High: row.Rates[table.TestLow], Note: row.Note, Sources: []*table.Source{row.Source}}
	if row.Mark == table.StandIn {
		n.Note = "Read for " + row.Note + ", which stand in."
	}
	for i, id := range table.TestClassIDs {
		if id == class {
			n.Basis, n.Total, n.Low, n.High = ByClass, row.Rates[i], 0, 0
		}
	}
	return n
}

// split shares each nutrient out between film and tape.
func (b *BaseFertiliser) split(a *Advice, need *table.Need, ownNitrogen bool) {
	share := table.ShareOn(a.Facts.Soil)
	shares := [NutrientCount]unit.Percent{share.Nitrogen, 100, share.Potash}
	if need.Before.Given() && !ownNitrogen {
		shares[Nitrogen] = unit.Percent(100 * need.Before.Value / need.Nitrogen.Value)
	}
	if b.Down {
		shares = [NutrientCount]unit.Percent{}
	}
	for i := range b.Nutrients {
		n := &b.Nutrients[i]
		n.Share = shares[i]
		n.Total = rate(n.Total)
		n.Low, n.High = rate(n.Low), rate(n.High)
		n.Under = rate(n.Total * unit.KilogramsPerHectare(shares[i]/100))
		n.Tape = rate(n.Total - n.Under)
	}
}

// credit counts the nitrogen that comes with the water against the tape.
func (b *BaseFertiliser) credit(a *Advice, w *WaterPlan) {
	if w == nil || !w.Quality.NitrogenCredit.Given {
		return
	}
	n := &b.Nutrients[Nitrogen]
	n.Water = rate(unit.KilogramsPerHectare(w.Quality.NitrogenCredit.Value * float64(a.Facts.Centres/b.Centres)))
	n.Tape = max(0, rate(n.Tape-n.Water))
}

// forBeds is what all the beds take of a rate; 0 where they are not known.
func (b *BaseFertiliser) forBeds(v unit.KilogramsPerHectare) unit.Kilograms {
	return grams(feed.ForBed(float64(v), b.Centres, b.Bed))
}

// masses turns rates into what all the beds take.
func (b *BaseFertiliser) masses(a *Advice) {
	for i := range b.Nutrients {
		n := &b.Nutrients[i]
		n.UnderMass, n.TapeMass = b.forBeds(n.Under), b.forBeds(n.Tape)
		n.Rest = n.UnderMass
	}
	if lime := a.Case.Soil.Lime; lime.Given {
		b.Lime = grams(feed.ForBed(float64(lime.Value), a.Facts.Centres, b.Bed))
	}
}

// product fills the need with the grower's product, until the first nutrient is full.
func (b *BaseFertiliser) product(c *field.Case) {
	b.Grade = [NutrientCount]unit.Percent{unit.Percent(c.Feed.BaseNitrogen.Value), unit.Percent(c.Feed.BasePhosphate.Value), unit.Percent(c.Feed.BasePotash.Value)}
	if !b.Told() || b.Bed == 0 {
		return
	}
	var needs [NutrientCount]unit.Kilograms
	for i := range b.Nutrients {
		needs[i] = b.Nutrients[i].UnderMass
	}
	product, ends := feed.Fill(needs, b.Grade)
	b.Product, b.Ends = unit.Kilograms(math.Floor(float64(product)*10+1e-6)/10), Nutrient(ends)
	b.Per100 = unit.KilogramsPer100Metres(math.Round(float64(b.Product/unit.Kilograms(b.Bed))*1e5) / 1e3)
	b.Strip = unit.KilogramsPerSquareMetre(math.Round(float64(b.Product)/(float64(b.Bed)*float64(b.Width))*1e4) / 1e4)
	for i := range b.Nutrients {
		n := &b.Nutrients[i]
		n.InProduct = grams(b.Product * unit.Kilograms(b.Grade[i]/100))
		n.Rest = max(0, grams(n.UnderMass-n.InProduct))
	}
}

// mostAWeek is the most nitrogen that goes through the tape in a week: 10 lb an acre, the
// upper end of a guide's 5 to 10 (Mid-Atlantic and Midwest guides).
const mostAWeek = unit.KilogramsPerHectare(10 * unit.KilogramsPerPound / unit.SquareMetresPerAcre * 10000)

// springFeeding are the weeks over which a crop that overwinters is fed, from two
// months before its first picking: 60 lb at the 3 to 5 lb an acre a week of the
// University of Delaware (Weekly Crop Update ?p=3899).
const springFeeding = 15

// springBefore is how long before the first picking that feeding begins: two months.
const springBefore = 60

// Garlic is fed as it grows again in spring, and onions are fed, until the bulbs begin to swell:
// Oregon State University Extension, by way of a newspaper, 2008, feeds garlic once early and
// once in mid-May; a garden page of Texas A&M University tells to stop feeding onions as they
// bulb. The days before lifting are from memory.
const (
	garlicBefore  = 100
	garlicFeeding = 8
)

// overwinters tells of strawberries and garlic set in autumn: they rest in winter.
func overwinters(a *Advice) bool {
	return a.Facts.Crop.DaysToHarvest.High >= winterCrop && a.Facts.Autumn
}

// feeding spreads what is left over the weeks of feeding.
func (b *BaseFertiliser) feeding(a *Advice) {
	b.From = a.WaitPlan.PlantOn.Plus(feedingRests)
	rests := feedingRests
	if a.Facts.Crop.Cured {
		rests = garlicBefore - 7*garlicFeeding
	}
	b.Weeks = max(7, int(a.Facts.SeasonDays())-feedingRests-rests) / 7
	if overwinters(a) {
		before, weeks := unit.Days(springBefore), springFeeding
		if a.Facts.Crop.Cured {
			before, weeks = garlicBefore, garlicFeeding
		}
		b.From, b.Weeks = a.WaitPlan.PlantOn.Plus(a.Facts.CropDays-before), weeks
	}
	b.AWeek = rate(b.Nutrients[Nitrogen].Tape / unit.KilogramsPerHectare(b.Weeks))
	if b.AWeek > mostAWeek {
		b.AWeek = mostAWeek
		b.Late = rate(b.Nutrients[Nitrogen].Tape - mostAWeek*unit.KilogramsPerHectare(b.Weeks))
	}
	if own := a.Case.Feed.Rate; own.Given {
		b.ByOwn = rate(own.Value * unit.KilogramsPerHectare(7*b.Weeks) * unit.KilogramsPerHectare(a.Facts.Centres/b.Centres))
	}
}

// rate and grams round once, so that what is shown adds up.
func rate(v unit.KilogramsPerHectare) unit.KilogramsPerHectare {
	return unit.KilogramsPerHectare(math.Round(float64(v)*1000) / 1000)
}

// fineBelow is the mass below which a sentence tells it finely.
const fineBelow unit.Kilograms = 5

// weighed is a mass for a sentence: fine where it is small.
func weighed(v unit.Kilograms) any {
	switch {
	case v == 0:
		return "nothing"
	case v < fineBelow:
		return unit.FineMass(v)
	}
	return v
}

func grams(v unit.Kilograms) unit.Kilograms {
	return unit.Kilograms(math.Round(float64(v)*1000) / 1000)
}

// GradeWords writes a grade as a bag does: 10-20-20.
func (b *BaseFertiliser) GradeWords() string {
	words := ""
	for i, g := range b.Grade {
		if i > 0 {
			words += "-"
		}
		words += strconv.FormatFloat(float64(g), 'f', -1, 64)
	}
	return words
}

// some is a rate or mass for a sentence; where there is none, "nothing".
func some[T ~float64](v T) any {
	if v == 0 {
		return "nothing"
	}
	return v
}

// richSoil is the organic matter, in percent, above which a guide may leave the later
// nitrogen out ([table.MidwestFeeding], page 16).
const richSoil = 3.0

// lowAcidity and highAcidity bound what most vegetables want ([table.MidwestCucurbits]).
const lowAcidity, highAcidity = 6.0, 6.8

// cite gathers what it rests on, each once.
func (b *BaseFertiliser) cite(a *Advice, need *table.Need) {
	list := []*table.Source{}
	for i := range b.Nutrients {
		list = append(list, b.Nutrients[i].Sources...)
	}
	if before := need.Before; before.Given() && b.Nutrients[Nitrogen].Basis != ByReport {
		list = append(list, before.Source)
	}
	list = append(list, table.ShareOn(a.Facts.Soil).Sources...)
	list = append(list, &table.BedFeet, &table.FAO29)
	for _, s := range list {
		if !slices.Contains(b.Sources, s) {
			b.Sources = append(b.Sources, s)
		}
	}
}
