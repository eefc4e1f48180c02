package table

import "filmfurrow/rules/unit"

// FilmID names a film; its value is its place in [Films].
type FilmID uint8

// The films. NoFilm is the answer where nothing should be laid.
const (
	Black FilmID = iota
	Clear
	WhiteOnBlack
	SilverOnBlack
	InfraredTransmitting
	Red
	Blue
	BiodegradableBlack
	Paper
	NoFilm
	FilmCount = int(NoFilm)
)

// Removal says what must happen to a film after the crop.
type Removal uint8

// The duties.
const (
	LiftAndHaul  Removal = iota // plastic: lift, shake, haul
	TillInSlowly                // breaks down in soil over years; pieces remain for a while
	TillIn                      // rots like other plant matter
)

// Film is one row of the film table.
type Film struct {
	ID   string // as in the case file
	Name string // in a sentence

	// Share of sunlight reflected by the upper side and passed through, and of
	// heat radiation reflected by the upper side and passed through by the dry
	// film. The rest is absorbed. The model of soil warmth reads these very values.
	SunReflected, SunPassed, HeatReflected, HeatPassed Figure[float64]
	// BlackBelow tells that the underside is that of black film; else it reflects
	// as the upper side does.
	BlackBelow bool

	// Change of the daily mean soil temperature against bare moist soil in a
	// sunny cool spring, tight film, at 5 and 10 cm. The sources do not say the
	// hour; we take them for daily means.
	WarmingAt5, WarmingAt10 Figure[unit.CelsiusDegrees]

	Opaque      Figure[float64]      // share of annual weeds held: 1 holds all
	CoverLeft   Figure[unit.Percent] // cover left after a second crop
	Life        Figure[float64]      // field life in days before it breaks up
	PriceClass  Figure[float64]      // 1 is the price of plain black
	Repels      Insect               // virus carriers held off while the film shows
	Draws       Insect               // carriers that the colour draws
	Removal     Removal
	RemovalFrom *Source
	OrganicUse  bool // may lie on a certified organic field
	OrganicFrom *Source
	OrganicNote string
	Thicknesses Figure[unit.Micrometres] // usually sold
	ByWeight    bool                     // sold by weight of the sheet, not by thickness
	Embossable  bool                     // sold embossed as well as smooth
	SeedOnly    bool                     // must be opened by hand after emergence; made for sown crops
	Experiment  bool                     // trials disagree: try a strip first
}

// FilmByID finds a film by its id in a case file.
func FilmByID(id string) (FilmID, bool) {
	for i := range Films {
		if Films[i].ID == id {
			return FilmID(i), true
		}
	}
	return NoFilm, false
}

// Name gives the film's name in a sentence.
func (f FilmID) Name() string {
	if f == NoFilm {
		return "no film"
	}
	return Films[f].Name
}

// Key gives the film's id as in the case file.
func (f FilmID) Key() string {
	if f == NoFilm {
		return "none"
	}
	return Films[f].ID
}

// Differences of °F stand divided by 1.8, thicknesses as multiples of mil: see the
// makers in crop.go.
const mil = unit.MicrometresPerMil

func warming(low, high unit.CelsiusDegrees, s *Source, m Mark) Figure[unit.CelsiusDegrees] {
	return Figure[unit.CelsiusDegrees]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

// warmingAbout is a warming whose likeliest value is not the middle of its range.
func warmingAbout(low, value, high unit.CelsiusDegrees, s *Source, m Mark) Figure[unit.CelsiusDegrees] {
	return Figure[unit.CelsiusDegrees]{Low: low, Value: value, High: high, Source: s, Mark: m}
}

// HeatReflectedBelow is the share of heat radiation that the underside of any
// film turns back: that of plain plastic.
var HeatReflectedBelow = plainHeat

var plainHeat = number(0.05, 0.05, &Memory, FromMemory)

func thick(low, high unit.Micrometres, s *Source, m Mark) Figure[unit.Micrometres] {
	return Figure[unit.Micrometres]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

const mustBeLifted = "7 CFR 205.206, read in 2026: allowed if it is taken off the field at the end of the growing or harvest season."

// Films is the film table, in the order of [FilmID]. A new film is one more
// row here and one more FilmID.
//
// The optical figures are from memory inside the published bounds of
// [Films1993] (0.01–0.84 passed, 0.01–0.48 reflected, heat 0.09–0.87); a test
// holds them to those bounds.
//
// At 10 cm a film keeps 0.6 of its effect at 5 cm: +5 °F at 2 in against +3 °F at
// 4 in ([PennColours]), and the same over 5 to 15 cm (J. Amer. Soc. Hort. Sci.
// 120(5):848, 1995). Red and blue are given black's value: they warm as black does
// (HortTechnology 20(1):224, 2010), with the range of trials.
var Films = [FilmCount]Film{
	Black: {
		ID: "black", Name: "black film",
		SunReflected: number(0.03, 0.05, &Memory, FromMemory), SunPassed: number(0.01, 0.01, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.15, 0.5, &Memory, FromMemory),
		BlackBelow: true,
		WarmingAt5: warming(3/1.8, 5/1.8, &NewEngland, Seen), WarmingAt10: warming(1, 3/1.8, &PennColours, Quoted),
		Opaque: number(1, 1, &KansasWeeds, Seen), CoverLeft: percent(93, 93, &Weathering, Seen), Life: number(240, 400, &Memory, FromMemory),
		PriceClass: number(1, 1, &NewEngland, Seen), Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(0.6*mil, 1.5*mil, &NewEngland, Seen), Embossable: true,
	},
	Clear: {
		ID: "clear", Name: "clear film",
		SunReflected: number(0.11, 0.13, &Memory, FromMemory), SunPassed: number(0.83, 0.84, &ClearFilm2021, Seen), HeatReflected: plainHeat, HeatPassed: number(0.7, 0.87, &Memory, FromMemory),
		WarmingAt5: warming(8/1.8, 14/1.8, &NewEngland, Seen), WarmingAt10: warming(6/1.8, 9/1.8, &PennColours, FromMemory),
		Opaque: number(0, 0, &ClearFilm2021, Seen), CoverLeft: percent(60, 80, &Memory, FromMemory), Life: number(120, 240, &Memory, FromMemory),
		PriceClass: number(1, 1, &NewEngland, Seen), Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(0.75*mil, 1.25*mil, &NewEngland, Seen), Embossable: true, SeedOnly: true,
	},
	WhiteOnBlack: {
		ID: "white-on-black", Name: "white-on-black film",
		SunReflected: number(0.45, 0.48, &Films1993, Seen), SunPassed: number(0.01, 0.01, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.15, 0.5, &Memory, FromMemory),
		BlackBelow: true,
		WarmingAt5: warming(-3/1.8, -1/1.8, &NewEngland, Seen), WarmingAt10: warming(-1.8/1.8, -0.6/1.8, &NewEngland, Recomputed),
		Opaque: number(1, 1, &KansasWeeds, Seen), CoverLeft: percent(91, 91, &Weathering, Seen), Life: number(240, 400, &Memory, FromMemory),
		PriceClass: number(1.5, 2, &NewEngland, Seen), Repels: Aphids, Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(0.75*mil, 1.5*mil, &NewEngland, Seen), Embossable: true,
	},
	SilverOnBlack: {
		ID: "silver-on-black", Name: "silver-on-black film",
		SunReflected: number(0.39, 0.48, &Films1993, Seen), SunPassed: number(0.01, 0.01, &Memory, FromMemory), HeatReflected: number(0.1, 0.5, &Memory, FromMemory), HeatPassed: number(0.09, 0.09, &Films1993, Seen),
		BlackBelow: true,
		WarmingAt5: warmingAbout(-2/1.8, 0, 5.4/1.8, &Tomato2010, Seen), WarmingAt10: warmingAbout(-1.2/1.8, 0, 3.2/1.8, &Tomato2010, Recomputed),
		Opaque: number(1, 1, &KansasWeeds, Seen), CoverLeft: percent(40, 90, &Weathering, Seen), Life: number(240, 400, &Memory, FromMemory),
		PriceClass: number(1.5, 2, &NewEngland, Seen), Repels: Aphids | Thrips | Whiteflies, Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(0.9*mil, 1.5*mil, &Memory, FromMemory), Embossable: true,
	},
	InfraredTransmitting: {
		ID: "infrared-transmitting", Name: "infrared-transmitting (green or brown) film",
		SunReflected: number(0.05, 0.15, &Memory, FromMemory), SunPassed: number(0.3, 0.5, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.5, 0.8, &Memory, FromMemory),
		WarmingAt5: warming(4/1.8, 6/1.8, &NewEngland, Seen), WarmingAt10: warming(2.4/1.8, 3.6/1.8, &NewEngland, Recomputed),
		Opaque: number(0.6, 0.8, &NewEngland, Seen), CoverLeft: percent(61, 75, &Weathering, Seen), Life: number(180, 300, &Memory, FromMemory),
		PriceClass: number(1.5, 2, &NewEngland, Seen), Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(0.75*mil, 1.25*mil, &Memory, FromMemory), Embossable: true,
	},
	Red: {
		ID: "red", Name: "red film",
		SunReflected: number(0.1, 0.2, &Memory, FromMemory), SunPassed: number(0.01, 0.1, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.3, 0.6, &Memory, FromMemory),
		WarmingAt5: warmingAbout(2/1.8, 4/1.8, 5.4/1.8, &Tomato2010, Seen), WarmingAt10: warmingAbout(1.2/1.8, 2.4/1.8, 3.2/1.8, &Tomato2010, Recomputed),
		Opaque: number(0.5, 0.8, &Tomato2010, Seen), CoverLeft: percent(60, 80, &Memory, FromMemory), Life: number(180, 300, &Memory, FromMemory),
		PriceClass: number(2, 3, &Memory, FromMemory), Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(1*mil, 1.25*mil, &Memory, FromMemory), Embossable: true, Experiment: true,
	},
	Blue: {
		ID: "blue", Name: "blue film",
		SunReflected: number(0.1, 0.2, &Memory, FromMemory), SunPassed: number(0.01, 0.1, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.3, 0.6, &Memory, FromMemory),
		WarmingAt5: warmingAbout(2/1.8, 4/1.8, 5.4/1.8, &Tomato2010, Seen), WarmingAt10: warmingAbout(1.2/1.8, 2.4/1.8, 3.2/1.8, &Tomato2010, Recomputed),
		Opaque: number(0.5, 0.8, &Tomato2010, Seen), CoverLeft: percent(60, 80, &Memory, FromMemory), Life: number(180, 300, &Memory, FromMemory),
		PriceClass: number(2, 3, &Memory, FromMemory), Draws: Thrips, Removal: LiftAndHaul, RemovalFrom: &CFR205,
		OrganicUse: true, OrganicFrom: &CFR205, OrganicNote: mustBeLifted,
		Thicknesses: thick(1*mil, 1.25*mil, &Memory, FromMemory), Embossable: true, Experiment: true,
	},
	BiodegradableBlack: {
		ID: "biodegradable-black", Name: "black soil-biodegradable film",
		SunReflected: number(0.03, 0.05, &Memory, FromMemory), SunPassed: number(0.01, 0.02, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.05, 0.1, &Memory, FromMemory),
		BlackBelow: true,
		WarmingAt5: warmingAbout(1.3/1.8, 2.5/1.8, 4/1.8, &BioMeta2020, Recomputed), WarmingAt10: warmingAbout(0.8/1.8, 1.5/1.8, 2.4/1.8, &BioMeta2020, Recomputed),
		Opaque: number(0.9, 1, &BioMeta2020, Seen), CoverLeft: percent(0, 20, &Memory, FromMemory), Life: number(90, 150, &Memory, FromMemory),
		PriceClass: number(2, 3, &Memory, FromMemory), Removal: TillInSlowly, RemovalFrom: &RaspberryFilm2020,
		OrganicUse: false, OrganicFrom: &OrganicMemo2023, OrganicNote: "The US rule (7 CFR 205.601) asks for a fully biobased film. In September 2023 the USDA knew of none on the market that meets it. Ask the certifier.",
		Thicknesses: thick(0.5*mil, 0.8*mil, &Memory, FromMemory), Embossable: false,
	},
	Paper: {
		ID: "paper", Name: "paper mulch",
		SunReflected: number(0.1, 0.4, &Memory, FromMemory), SunPassed: number(0.01, 0.1, &Memory, FromMemory), HeatReflected: plainHeat, HeatPassed: number(0.1, 0.1, &Memory, FromMemory),
		WarmingAt5: warming(-2/1.8, 0, &Virginia1998, Seen), WarmingAt10: warming(-1.2/1.8, 0, &Virginia1998, Recomputed),
		Opaque: number(0.77, 0.95, &BioMeta2020, Seen), CoverLeft: percent(0, 0, &Memory, FromMemory), Life: number(60, 110, &Memory, FromMemory),
		PriceClass: number(2, 3, &Memory, FromMemory), Removal: TillIn, RemovalFrom: &OrganicRule,
		OrganicUse: true, OrganicFrom: &OrganicRule, OrganicNote: "Fully biodegradable materials are allowed as mulch; ask the certifier about coatings and inks.",
		Thicknesses: thick(8*mil, 12*mil, &Memory, FromMemory), ByWeight: true, Embossable: false,
	},
}

// FilmWithSoil is how heavy used film is with its soil, as multiples of the clean
// film: 2 where half is soil (HortScience 53(3):288, 2018), up to 10 where nine
// tenths are (EN 13655:2018 scope); the value is about the middle of the two as
// multiples (√20).
var FilmWithSoil = Figure[float64]{Low: 2, Value: 4, High: 10, Source: &EN13655, Mark: Seen, Note: "low end: HortScience 53(3):288"}
