package table

import "filmfurrow/rules/unit"

// TestClass is the class in which a soil test reports phosphorus or potassium.
type TestClass uint8

// The classes, from the hungriest soil.
const (
	TestLow TestClass = iota
	TestMedium
	TestHigh     // optimum
	TestVeryHigh // excessive
	TestClassCount
)

// TestClassIDs are the classes as the case file writes them.
var TestClassIDs = [TestClassCount]string{"low", "medium", "high", "very-high"}

// TestClassNames are the classes in a sentence.
var TestClassNames = [TestClassCount]string{"low", "medium", "high", "very high"}

// ByTest is a nutrient of the season by the class of the soil test, in kg for 1 ha of
// field with beds at the guide's distance; it never rises with the class.
type ByTest struct {
	Rates  [TestClassCount]unit.KilogramsPerHectare
	Source *Source
	Mark   Mark
	Note   string // what was worked out of what was printed
}

// Need is what a public table gives a crop for its season.
type Need struct {
	Crop      string // id
	Nitrogen  Figure[unit.KilogramsPerHectare]
	Before    Figure[unit.KilogramsPerHectare] // nitrogen before planting, where the guide names it
	Phosphate ByTest                           // P₂O₅
	Potash    ByTest                           // K₂O
	Centres   unit.Metres                      // of the beds that the guide's rates are meant for
}

// lb is 1 lb for an acre in kg for a hectare. Rows write 120*lb: see the makers in crop.go.
const lb = unit.KilogramsPerPound / unit.SquareMetresPerAcre * 10000

// Published rates on film are meant for beds 6 ft apart, 7 ft for watermelons: 7,260
// and 6,222 ft of bed on an acre ([BedFeet]).
const (
	usualCentres = 6 * foot
	melonCentres = 7 * foot
)

func rate(low, high unit.KilogramsPerHectare, s *Source, m Mark) Figure[unit.KilogramsPerHectare] {
	return Figure[unit.KilogramsPerHectare]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

// evenSteps are the notes of rows of which a guide prints the two ends.
const (
	evenMidwest = "The guide prints the ends, by soil test; the classes between are even steps."
	evenFlorida = "The guide prints what a poor soil needs, cut by soil test; the classes below are even steps."
	meanOntario = "Means of the rows that the guide counts as high, medium and low response; rare and none are very high."
)

// Needs are the rows that were read for a crop of their own. A crop without one takes
// another's: see [NeedOf].
var Needs = [...]Need{
	{Crop: "tomato", Nitrogen: rate(120*lb, 120*lb, &PurdueNitrogen, Seen), Centres: usualCentres,
		Phosphate: byTest(150*lb, 100*lb, 50*lb, 0, &FloridaTomato, Recomputed, evenFlorida), Potash: byTest(225*lb, 150*lb, 75*lb, 0, &FloridaTomato, Recomputed, evenFlorida)},
	{Crop: "bell-pepper", Nitrogen: rate(100*lb, 100*lb, &PurdueNitrogen, Seen), Centres: usualCentres,
		Phosphate: byTest(150*lb, 100*lb, 50*lb, 0, &FloridaTomato, StandIn, "tomatoes"), Potash: byTest(225*lb, 150*lb, 75*lb, 0, &FloridaTomato, StandIn, "tomatoes")},
	{Crop: "eggplant", Nitrogen: rate(120*lb, 120*lb, &PurdueNitrogen, Seen), Centres: usualCentres,
		Phosphate: ByTest{[TestClassCount]unit.KilogramsPerHectare{230, 110, 50, 0}, &OntarioEggplant, Recomputed, rest(meanOntario)},
		Potash:    ByTest{[TestClassCount]unit.KilogramsPerHectare{208, 77, 0, 0}, &OntarioEggplant, Recomputed, rest(meanOntario)}},
	{Crop: "cucumber", Nitrogen: rate(80*lb, 80*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: vinePhosphate, Potash: vinePotash},
	{Crop: "summer-squash", Nitrogen: rate(80*lb, 80*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: vinePhosphate, Potash: vinePotash},
	{Crop: "winter-squash", Nitrogen: rate(80*lb, 80*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: vinePhosphate, Potash: vinePotash},
	{Crop: "pumpkin", Nitrogen: rate(80*lb, 80*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: vinePhosphate, Potash: vinePotash},
	{Crop: "muskmelon", Nitrogen: rate(100*lb, 100*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: vinePhosphate, Potash: vinePotash},
	{Crop: "watermelon", Nitrogen: rate(100*lb, 100*lb, &PurdueNitrogen, Seen), Centres: melonCentres, Phosphate: vinePhosphate, Potash: vinePotash},
	{Crop: "broccoli", Nitrogen: rate(150*lb, 200*lb, &DelawareColeFeed, Seen), Centres: usualCentres, Phosphate: colePhosphate, Potash: colePotash},
	{Crop: "cabbage", Nitrogen: rate(100*lb, 150*lb, &DelawareColeFeed, Seen), Centres: usualCentres, Phosphate: colePhosphate, Potash: colePotash},
	{Crop: "cauliflower", Nitrogen: rate(100*lb, 150*lb, &DelawareColeFeed, Seen), Centres: usualCentres, Phosphate: colePhosphate, Potash: colePotash},
	{Crop: "lettuce", Nitrogen: rate(100*lb, 100*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: standCole, Potash: standCole},
	{Crop: "carrot", Nitrogen: rate(100*lb, 100*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: standCole, Potash: standCole},
	{Crop: "sweet-potato", Nitrogen: rate(50*lb, 75*lb, &SellerPages, Trade), Centres: usualCentres, Phosphate: standCole, Potash: standCole},
	{Crop: "garlic", Nitrogen: rate(120*lb, 120*lb, &PurdueNitrogen, Seen), Centres: usualCentres, Phosphate: standCole, Potash: standCole},
	{Crop: "sweet-corn", Nitrogen: rate(120*lb, 120*lb, &PurdueNitrogen, Seen), Centres: usualCentres,
		Phosphate: byTest(160*lb, 120*lb, 80*lb, 20*lb, &Memory, FromMemory, ""), Potash: byTest(160*lb, 120*lb, 80*lb, 20*lb, &Memory, FromMemory, "")},
	{Crop: "strawberry", Nitrogen: rate(120*lb, 120*lb, &Memory, FromMemory), Before: rate(60*lb, 60*lb, &GeorgiaStrawberry, Trade), Centres: 5 * foot,
		Phosphate: byTest(60*lb, 60*lb, 60*lb, 0, &GeorgiaStrawberry, Trade, "The article gives 60 even where a test asks for none; at very high we leave it out, since laws do."),
		Potash:    byTest(120*lb, 120*lb, 120*lb, 0, &Memory, FromMemory, "An article gives 60 before the bed is formed; as much again later is from memory.")},
	{Crop: "snap-bean", Nitrogen: rate(50*lb, 50*lb, &TexasBeans, StandIn), Centres: usualCentres,
		Phosphate: byTest(80*lb, 80*lb, 0, 0, &TexasBeans, StandIn, "pinto beans"), Potash: byTest(80*lb, 80*lb, 0, 0, &TexasBeans, StandIn, "pinto beans")},
}

var (
	vinePhosphate = byTest(150*lb, 100*lb, 50*lb, 0, &MidwestCucurbits, Recomputed, evenMidwest)
	vinePotash    = byTest(200*lb, 400.0/3*lb, 200.0/3*lb, 0, &MidwestCucurbits, Recomputed, evenMidwest)
	colePhosphate = byTest(200*lb, 100*lb, 50*lb, 0, &DelawareColeFeed, Seen, "")
	colePotash    = byTest(200*lb, 100*lb, 50*lb, 0, &DelawareColeFeed, Seen, "")
	standCole     = byTest(200*lb, 100*lb, 50*lb, 0, &DelawareColeFeed, StandIn, "cabbage")
)

// needStands names the crop whose row stands in for a group, and for crops that are
// nearer to another than to their group.
var (
	needStands = map[Group]string{Fruiting: "tomato", Vine: "cucumber", Cole: "cabbage", Leafy: "lettuce", Bulb: "garlic", RootCrop: "carrot",
		Legume: "snap-bean", Grain: "sweet-corn", Berry: "strawberry", Herb: "lettuce", CutFlower: "lettuce", TubersSlip: "carrot"}
	needNearer = map[string]string{"hot-pepper": "bell-pepper", "okra": "bell-pepper", "seedless-watermelon": "watermelon"}
)

// NeedOf gives the row of a crop, or of the crop that stands in for it: a nearer one,
// its group's, or for a group without one the table's first.
func NeedOf(c *Crop) (need *Need, standsIn bool) {
	for _, id := range [...]string{c.ID, needNearer[c.ID], needStands[c.Group]} {
		for i := range Needs {
			if Needs[i].Crop == id {
				return &Needs[i], id != c.ID
			}
		}
	}
	return &Needs[0], true
}

// FilmShare is how much of a season's nutrient goes under the film, the rest going
// through the tape; by texture, since coarse soil lets nitrogen and potassium through.
type FilmShare struct {
	Nitrogen, Potash unit.Percent
	Sources          []*Source
	Why              string
}

// The shares. Phosphorus hardly moves in soil: all of it goes under the film.
var (
	CoarseShare = FilmShare{20, 40, []*Source{&MidwestFeeding, &TomatoSplit1997},
		rest("On sand the low end of the published 20 to 50 % of nitrogen, and the 40 % of potash that yielded best in a trial on fine sand")}
	MiddleShare = FilmShare{100.0 / 3, 50, []*Source{&MidwestFeeding, &PennFeeding},
		rest("On loams a third of the nitrogen, inside the published 20 to 50 %, and half of the potash, the top of a published 30 to 50 %")}
	HeavyShare = FilmShare{100.0 / 3, 75, []*Source{&MidwestFeeding, &RhodeIslandFeeding},
		rest("On heavy soil a third of the nitrogen, and three quarters of the potash, the top of a published half to three quarters")}
)

// ShareOn gives the share for a soil.
func ShareOn(s *Soil) *FilmShare {
	switch {
	case s.Sand >= 0.8:
		return &CoarseShare
	case s.Clay >= 0.27: // clay loams and clays, by the texture triangle
		return &HeavyShare
	}
	return &MiddleShare
}
