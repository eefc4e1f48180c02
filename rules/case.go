package rules

import "filmfurrow/rules/unit"

// Case is what the grower knows about one field: all in SI, comparable, free
// to copy. A zero field is unknown. Ids are those of the case file.
type Case struct {
	Crop    string
	PlantOn Optional[unit.Date]
	Method  string

	Place    Place
	Soil     SoilCase
	Weeds    WeedCase
	Field    FieldCase
	Practice PracticeCase
	Water    WaterCase
	Feed     FeedCase
	Prices   PriceCase
	Shopping [ItemCount]Optional[float64] // the grower's own quantities, in the item's unit
	Day      DayCase
	Risk     string
}

// Place says where the field is, and carries the twelve monthly normals that
// the advice rests on: a station's, looked up before [Advise] is called, or
// the grower's own.
type Place struct {
	Station     string // id of the station whose normals stand below
	StationName string
	StationFlag string // weakest completeness flag of the normals
	StationAway unit.Metres
	StationAt   unit.Metres // height of the station
	StationRow  string      // its row of the table, for a device to keep
	Latitude    Optional[unit.Degrees]
	Longitude   Optional[unit.Degrees]
	Elevation   Optional[unit.Metres] // height of the field
	Own         bool                  // the normals were typed by the grower
	HasNormals  bool
	TMin, TMax  [12]unit.Celsius
	Solar       Optional[[12]float64] // MJ/m² a day
	Rain        Optional[[12]float64] // mm
	Wind        Optional[[12]float64] // m/s at 2 m
	Humidity    Optional[[12]float64] // %
	LastFrost   Optional[MonthDay]
	FirstFrost  Optional[MonthDay]
}

// MonthDay is a day of any year, month × 100 + day.
type MonthDay int

// SoilCase is the ground.
type SoilCase struct {
	Texture       string
	Drainage      string
	Organic       Optional[float64] // percent
	Slope         Optional[float64] // percent
	Wetness       string
	Tilth         string
	Stones        string
	Temperature   Optional[unit.Celsius] // measured
	MeasuredOn    Optional[unit.Date]
	MeasuredDepth Optional[unit.Metres]
	MeasuredHour  Optional[float64]
}

// WeedCase is what grows and flies there unasked.
type WeedCase struct {
	Pressure string
	Nutsedge string
	Insects  string
}

// FieldCase is the layout.
type FieldCase struct {
	Exposure   string
	BedLength  Optional[unit.Metres]
	Beds       Optional[float64]
	Centres    Optional[unit.Metres]
	BedTop     Optional[unit.Metres]
	RowsPerBed Optional[float64]
	InRow      Optional[unit.Metres]
}

// PracticeCase is how the grower works.
type PracticeCase struct {
	Organic       Optional[bool]
	CropsOnFilm   Optional[float64]
	Laying        string
	Tractor       Optional[unit.Kilowatts]
	FumigatedOn   Optional[unit.Date]
	LabelInterval Optional[float64] // days between treatment and planting, from the label
	People        Optional[float64]
	FilmOptions   Films
	FilmWidth     Optional[unit.Metres] // of the roll at hand
	RollLength    Optional[unit.Metres] // of a roll
	ReuseFilm     string
	ReuseLaidOn   Optional[unit.Date]
	ReuseCover    Optional[float64] // percent still whole
}

// Films is a set of films, a bit for each; zero is "any".
type Films uint16

// WaterCase is the water source.
type WaterCase struct {
	Source   string
	Flow     Optional[unit.LitresPerHour]
	Pressure Optional[unit.Kilopascals]
	Lift     Optional[unit.Metres]
	Rise     Optional[unit.Metres]
	Header   Optional[unit.Metres]
	Hours    Optional[float64]
	Salt     Optional[unit.DecisiemensPerMetre]
	Acidity  Optional[float64] // pH
	Iron     Optional[unit.MilligramsPerLitre]
	Hardness Optional[unit.MilligramsPerLitre]
	Sodium   Optional[float64] // sodium adsorption ratio
	Nitrate  Optional[unit.MilligramsPerLitre]
	Tank     Optional[unit.Litres]
	Refill   Optional[unit.LitresPerHour]
}

// FeedCase is the grower's own feeding and chlorine: rates from a soil test, a
// guide or a label, never ours.
type FeedCase struct {
	Rate     Optional[unit.KilogramsPerHectare] // of nutrient, for a day and an area of field
	Grade    Optional[float64]                  // of the product, percent
	Stock    Optional[unit.KilogramsPerLitre]   // of product in the stock
	Injector Optional[float64]                  // 100 for 1:100
	Bleach   Optional[float64]                  // percent of available chlorine
	Chlorine Optional[unit.MilligramsPerLitre]
}

// DayCase is what was found on laying day, before anyone starts.
type DayCase struct {
	Ball   string // a squeezed ball of soil, poked
	Hand   string // the hand after squeezing
	Wind   Optional[unit.MetresPerSecond]
	People Optional[float64] // here, not planned
	Rolls  Optional[float64] // of film, on the headland
}

// PriceCase holds the grower's own prices, in one currency.
type PriceCase struct {
	Currency   string
	FilmRoll   Optional[float64]
	RollTilled Optional[float64] // of biodegradable film, as long and wide as the roll of the list
	RollPaper  Optional[float64] // of paper, likewise
	TapeMetre  Optional[float64]
	PlantEach  Optional[float64]
	WageHour   Optional[float64]
	HaulTonne  Optional[float64]
	FittingBed Optional[float64]
	CropUnit   Optional[float64]
	System     Optional[float64] // header, valves, regulators, filter, gauge, backflow device, injector
	LayHours   Optional[float64] // of one person, the grower's own count
	LiftHours  Optional[float64]
}
