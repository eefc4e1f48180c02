package table

import "filmfurrow/rules/unit"

// Group is the kind of crop, as a seed list orders it.
type Group string

// The groups.
const (
	Fruiting   Group = "fruiting vegetables"
	Vine       Group = "vine crops"
	Cole       Group = "cole crops"
	Leafy      Group = "leafy vegetables"
	Bulb       Group = "bulb vegetables"
	RootCrop   Group = "root vegetables"
	Legume     Group = "legumes"
	Grain      Group = "sweet corn"
	Berry      Group = "strawberry"
	Herb       Group = "herbs"
	CutFlower  Group = "cut flowers"
	TubersSlip Group = "roots from slips"
)

// Start is how a crop gets into the bed.
type Start string

// The two ways. Sets, cloves, slips and plugs count as transplants, since each
// goes into its own hole.
const (
	Transplant Start = "transplant"
	Seed       Start = "seed"
)

// Hardiness is the frost class of the leaves. Film warms roots, never leaves.
type Hardiness uint8

// The classes, from the one that stands most frost.
const (
	Hardy Hardiness = iota
	HalfHardy
	Tender
	VeryTender
)

var hardinessWords = [...]string{"hardy", "half-hardy", "tender", "very tender"}

// String gives the class in words.
func (h Hardiness) String() string { return hardinessWords[h] }

// Insect is a carrier of virus that shiny film can hold off.
type Insect uint8

// The carriers, as bits of a set.
const (
	Aphids Insect = 1 << iota
	Thrips
	Whiteflies
)

// Trial is a published yield or earliness figure of one film on one crop,
// against black film unless the note says otherwise.
type Trial struct {
	Film   FilmID
	Gain   Figure[unit.Percent] // of marketable yield
	Agrees bool                 // false: other trials found the contrary, or nothing
}

// Crop is one row of the crop table. All temperatures of soil are at the
// depth where the crop's roots or seed start: 10 cm for a transplant, 5 cm
// for seed.
type Crop struct {
	ID     string // lower-case words joined by hyphens
	Name   string // as a grower says it, in the plural where that is usual
	Family string // botanical family, for succession
	Group  Group
	Warm   bool  // a warm-season crop
	Start  Start // the usual way
	Both   bool  // the other way is usual too
	Sown   bool  // goes in as a dense drill of seed: no room for film
	Hilled bool  // soil must be drawn up to it while it grows
	ByDay  bool  // its kinds make bulbs by the length of the day
	Root   bool  // the harvest is a root that grew from seed where it stands
	Staked bool  // its plants are held by stakes and strings
	// MayStake is for how many plants one stake stands where growers choose to stake; 0 where
	// they do not, or where the crop climbs or is Staked.
	MayStake int
	Climbs   bool // on netting between posts, where growers choose to
	Pieces   bool // goes in as cloves or pieces, without a tray or a root ball
	Cured    bool // lifted all at once when it ripens, and dried

	Hardiness     Hardiness
	HardinessFrom Figure[unit.Percent] // carries only the source of the class
	Stands        Figure[unit.Celsius] // air, the coldest that hardened plants stand; not given where it is their class's
	WeeksToFrost  Figure[float64]      // set out, weeks from the mean last spring frost; minus is before
	TrayWeeks     Figure[float64]      // from seed to a plant that is set out, under cover; not given where nobody was read
	SetBelow      Figure[unit.Celsius] // air, daily mean from which on it is set out in the fall: where winter freezes hard (low), where it does not (high)

	MinSoilTemperature, SafeSoilTemperature         Figure[unit.Celsius] // soil, for transplants: risky and safe
	SeedMinSoilTemperature, SeedSafeSoilTemperature Figure[unit.Celsius] // soil, for seed
	RootBest                                        Figure[unit.Celsius] // soil, best growth
	RootCeiling                                     Figure[unit.Celsius] // soil, daily mean that hurts

	HeatDay, HeatNight Figure[unit.Celsius] // air, where harm begins
	MonthBest          Figure[unit.Celsius] // monthly mean air, range for growth and quality
	MonthLeast         Figure[unit.Celsius] // monthly mean air below which a warm crop grows badly; not given where nobody was read

	InRow      Figure[unit.Metres]
	RowsPerBed Figure[float64]
	Centres    Figure[unit.Metres]

	RootDepth           Figure[unit.Metres]
	Depletion           Figure[float64] // share of available water, at 5 mm a day
	KcIni, KcMid, KcEnd Figure[float64]
	Height              Figure[unit.Metres]
	StageDays           [4]int // initial, development, mid, late; scaled to the harvest days
	StageSource         *Source
	StageNote           string               // for which crop a stand-in was read
	FilmSaving          Figure[unit.Percent] // cut of the coefficient under film
	KcUnderFilm         bool                 // the coefficients were measured under film: its saving is in them

	DaysToHarvest Figure[float64] // from setting out, or from sowing for seed

	SaltThreshold Figure[unit.DecisiemensPerMetre] // soil paste
	SaltSlope     Figure[unit.Percent]             // yield lost for each dS/m above it

	Virus     Insect // carriers that matter to this crop
	BedHeight Figure[unit.Metres]
	Trials    [3]Trial // films tried on this crop; a zero gain source ends the list
}

// CropByID finds a row, or nil.
func CropByID(id string) *Crop {
	for i := range Crops {
		if Crops[i].ID == id {
			return &Crops[i]
		}
	}
	return nil
}

// The makers below keep each figure as its source prints it, so that a reader can
// check a row against the page it came from: 12*inch, 5*foot, f60. All of them are
// constants, so that the table lies in the program in SI as it is written. They
// are short enough for the compiler to work out; longer ones it would leave to
// the start of the program, which took up more of it than all the figures.
//
// A note says for which crop a stand-in was read, or what else was read.

const (
	inch = unit.MetresPerInch
	foot = unit.MetresPerFoot
)

func celsius(low, high unit.Celsius, s *Source, m Mark) Figure[unit.Celsius] {
	return Figure[unit.Celsius]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func metres(low, high unit.Metres, s *Source, m Mark) Figure[unit.Metres] {
	return Figure[unit.Metres]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func number(low, high float64, s *Source, m Mark) Figure[float64] {
	return Figure[float64]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func percent(low, high unit.Percent, s *Source, m Mark) Figure[unit.Percent] {
	return Figure[unit.Percent]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func salt(low, high unit.DecisiemensPerMetre, s *Source, m Mark) Figure[unit.DecisiemensPerMetre] {
	return Figure[unit.DecisiemensPerMetre]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func class(s *Source, m Mark) Figure[unit.Percent] { return Figure[unit.Percent]{Source: s, Mark: m} }

// Dug tells that the harvest lies in the ground, so that film comes up before it can be dug.
func (c *Crop) Dug() bool { return c.Group == RootCrop || c.Group == TubersSlip }
