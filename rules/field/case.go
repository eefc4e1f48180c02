package field

import (
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// Case is what the grower knows about one field: all in SI, comparable, free
// to copy. A zero field is unknown. Ids are those of the case file.
type Case struct {
	Crop    string
	PlantOn unit.Optional[unit.Date]
	Method  string

	Place    Place
	Soil     SoilCase
	Weeds    WeedCase
	Field    FieldCase
	Practice PracticeCase
	Water    WaterCase
	Feed     FeedCase
	Prices   PriceCase
	Shopping [ItemCount]unit.Optional[float64] // the grower's own quantities, in the item's unit
	Day      DayCase
	Days     Days // of the season, as they were written down
	Past     PastCase
	Risk     string
}

// Place says where the field is, and carries the twelve monthly normals that
// the advice rests on: a station's, looked up before [plan.Advise] is called, or
// the grower's own.
type Place struct {
	Station     string // id of the station whose normals stand below
	StationName string
	StationFlag string // weakest completeness flag of the normals
	StationAway unit.Metres
	StationAt   unit.Metres // height of the station
	StationRow  string      // its row of the table, for a device to keep
	Latitude    unit.Optional[unit.Degrees]
	Longitude   unit.Optional[unit.Degrees]
	Elevation   unit.Optional[unit.Metres] // height of the field
	Own         bool                       // the normals were typed by the grower
	HasNormals  bool
	TMin, TMax  [12]unit.Celsius
	Solar       unit.Optional[[12]float64] // MJ/m² a day
	Rain        unit.Optional[[12]float64] // mm
	Wind        unit.Optional[[12]float64] // m/s at 2 m
	Humidity    unit.Optional[[12]float64] // %
	LastFrost   unit.Optional[MonthDay]
	FirstFrost  unit.Optional[MonthDay]

	Period       string // whose years the station's normals are of: an id, or the newest
	Older, Newer unit.Optional[normals.Extremes]
	Estimated    bool // the newer ones

	// What else was published of the station. A climate of the grower's own has none of it.
	StationFrost unit.Optional[StationFrost]
	StationRain  unit.Optional[[12]float64] // mm
	// Measured means of stations outside the United States: kPa; m/s at 2 m; hours a month.
	StationVapour, StationWind, StationSun unit.Optional[[12]float64]
}

// StationFromField is how far above or below the field its station lies.
func (p *Place) StationFromField() (height unit.Metres, where string) {
	if height = p.StationAt - p.Elevation.Or(p.StationAt); height < 0 {
		return -height, "below your field"
	}
	return height, "above your field"
}

// StationFrost are a station's published days of frost of 32 °F at the thermometer's
// height, as indices of the year. The days of one year in ten are not published: they
// mirror those of nine.
type StationFrost struct {
	Spring, Autumn weather.FrostDates
	Normals        weather.Normals // of the station and the same years, to see by how many days ours miss
}

// OlderYears and NewerYears are the ids of a station's periods.
const OlderYears, NewerYears = "1981-2010", "1991-2020"

// Take puts the station's normals of the period that was asked for into the case, or of
// the one that there is.
func (p *Place) Take() {
	of := p.Newer
	if p.IsOlder() {
		of = p.Older
	}
	if of.Given && !p.Own {
		p.HasNormals, p.TMin, p.TMax = true, of.Value.Min, of.Value.Max
	}
}

// IsOlder tells whether the station's normals that count are those of 1981–2010.
func (p *Place) IsOlder() bool {
	return p.Older.Given && (p.Period == OlderYears || !p.Newer.Given)
}

// RainNormals is the rain that counts, in mm a month: the grower's own before the
// station's.
func (p *Place) RainNormals() unit.Optional[[12]float64] {
	if p.Rain.Given {
		return p.Rain
	}
	return p.StationRain
}

// Normals are the monthly means of the field: a station's, carried to the height of
// the field, or the grower's own.
func (p *Place) Normals() weather.Normals {
	n := weather.Normals{Minimum: p.TMin, Maximum: p.TMax, Latitude: p.Latitude.Value, Height: p.Elevation.Value, Nights: weather.ColdNights(p.StationRow)}
	if !p.Own {
		n.Height = p.StationAt
		n = n.AtHeight(p.Elevation.Value)
	}
	return n
}

// MonthDay is a day of any year, month × 100 + day.
type MonthDay int

// SoilCase is the ground.
type SoilCase struct {
	Series        string // by its name in the US soil survey
	OfSeries      SeriesSoil
	Texture       string
	Drainage      string
	Organic       unit.Optional[float64] // percent
	Slope         unit.Optional[float64] // percent
	Wetness       string
	Tilth         string
	Stones        string
	Temperature   unit.Optional[unit.Celsius] // measured
	MeasuredOn    unit.Optional[unit.Date]
	MeasuredDepth unit.Optional[unit.Metres]
	MeasuredHour  unit.Optional[float64]
	MeasuredUnder string                                  // a film; empty is open ground, or film that is down already
	PH            unit.Optional[float64]                  // pH, of a soil test
	Phosphorus    string                                  // the test's class
	Potassium     string                                  // the test's class
	Lime          unit.Optional[unit.KilogramsPerHectare] // that the test asks for
}

// SeriesSoil is what a soil series is known to be: ids, looked up before [plan.Advise] is
// called, empty where not known. What the grower gives wins.
type SeriesSoil struct{ Texture, Drainage string }

// WeedCase is what grows and flies there unasked.
type WeedCase struct {
	Pressure string
	Nutsedge string
	Insects  string
}

// FieldCase is the layout.
type FieldCase struct {
	Exposure   string
	BedLength  unit.Optional[unit.Metres]
	Beds       unit.Optional[float64]
	Centres    unit.Optional[unit.Metres]
	BedTop     unit.Optional[unit.Metres]
	SideSlope  unit.Optional[float64] // how far a side leans out for each measure of height
	RowsPerBed unit.Optional[float64]
	InRow      unit.Optional[unit.Metres]
}

// PracticeCase is how the grower works.
type PracticeCase struct {
	Organic       unit.Optional[bool]
	CropsOnFilm   unit.Optional[float64]
	Laying        string
	Tractor       unit.Optional[unit.Kilowatts]
	FumigatedOn   unit.Optional[unit.Date]
	LabelInterval unit.Optional[float64] // days between treatment and planting, from the label
	People        unit.Optional[float64]
	FilmOptions   Films
	FilmWidth     unit.Optional[unit.Metres] // of the roll at hand
	RollLength    unit.Optional[unit.Metres] // of a roll
	ReuseFilm     string
	ReuseLaidOn   unit.Optional[unit.Date]
	ReuseCover    unit.Optional[float64]          // percent still whole
	ReuseHeight   unit.Optional[unit.Metres]      // of the bed that stands under it
	ReuseThick    unit.Optional[unit.Micrometres] // of that film
}

// FilmDown tells that film lies on the bed already: none is laid or bought for it.
func (p *PracticeCase) FilmDown() bool { return p.ReuseFilm != "" }

// Films is a set of films, a bit for each; zero is "any".
type Films uint16

// WaterCase is the water source.
type WaterCase struct {
	Source   string
	Flow     unit.Optional[unit.LitresPerHour]
	Pressure unit.Optional[unit.Kilopascals]
	Lift     unit.Optional[unit.Metres]
	Rise     unit.Optional[unit.Metres]
	Header   unit.Optional[unit.Metres]
	Hours    unit.Optional[float64]
	Salt     unit.Optional[unit.DecisiemensPerMetre]
	PH       unit.Optional[float64] // pH
	Iron     unit.Optional[unit.MilligramsPerLitre]
	Hardness unit.Optional[unit.MilligramsPerLitre]
	Sodium   unit.Optional[float64] // sodium adsorption ratio
	Nitrate  unit.Optional[unit.MilligramsPerLitre]
	Tank     unit.Optional[unit.Litres]
	Refill   unit.Optional[unit.LitresPerHour]
}

// FeedCase is the grower's own feeding and chlorine: rates from a soil test, a
// guide or a label, never ours.
type FeedCase struct {
	Rate     unit.Optional[unit.KilogramsPerHectare] // of nutrient, for a day and an area of field
	Grade    unit.Optional[float64]                  // of the product, percent
	Stock    unit.Optional[unit.KilogramsPerLitre]   // of product in the stock
	Injector unit.Optional[float64]                  // 100 for 1:100
	Bleach   unit.Optional[float64]                  // percent of available chlorine
	Chlorine unit.Optional[unit.MilligramsPerLitre]

	// What the soil test's report recommends for the whole season.
	SeasonNitrogen, SeasonPhosphate, SeasonPotash unit.Optional[unit.KilogramsPerHectare]
	// The grade of the product at hand that goes under the film, percent.
	BaseNitrogen, BasePhosphate, BasePotash unit.Optional[float64]
	Spread                                  string // on the beds or over the field
}

// PastCase is what the field's last season told: the grower's own log, or memory.
type PastCase struct {
	WarmOn unit.Optional[MonthDay] // the bed held the floor from then on
	Water  unit.Optional[float64]  // that was run, percent of the plan's
	Whole  unit.Optional[float64]  // of the film that came up whole, percent
}

// DayCase is what was found on laying day, before anyone starts.
type DayCase struct {
	Ball   string // a squeezed ball of soil, poked
	Hand   string // the hand after squeezing
	Wind   unit.Optional[unit.MetresPerSecond]
	People unit.Optional[float64] // here, not planned
	Rolls  unit.Optional[float64] // of film, on the headland
}

// PriceCase holds the grower's own prices, in one currency.
type PriceCase struct {
	Currency   string
	FilmRoll   unit.Optional[float64]
	RollTilled unit.Optional[float64] // of biodegradable film, as long and wide as the roll of the list
	RollPaper  unit.Optional[float64] // of paper, likewise
	TapeMetre  unit.Optional[float64]
	PlantEach  unit.Optional[float64]
	WageHour   unit.Optional[float64]
	HaulTonne  unit.Optional[float64]
	FittingBed unit.Optional[float64]
	CropUnit   unit.Optional[float64]
	System     unit.Optional[float64] // header, valves, regulators, filter, gauge, backflow device, injector
	LayHours   unit.Optional[float64] // of one person, the grower's own count
	LiftHours  unit.Optional[float64]
}
