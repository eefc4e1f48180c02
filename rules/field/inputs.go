package field

import (
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Form says how an input is written in the case file and asked on the page.
type Form uint8

// The forms.
const (
	FormNumber Form = iota // a number in SI
	FormWhole              // a whole number
	FormChoice             // one id of a list
	FormDate               // YYYY-MM-DD
	FormDay                // MM-DD
	FormYesNo
	FormFilms // a list of film ids
	FormText  // a short id or code
)

// Input is one row for each field that a grower may fill: it feeds the form,
// the decoder, the error text, the share link and the search for what would
// change the answer.
type Input struct {
	Name      string // as in the case file, with its object: "soil.texture"
	Label     string // as the page asks
	Help      string // why it matters, or how to find out
	Mend      string // what to do about a figure out of range, where more can be said than "check it"
	Form      Form
	Kind      unit.Kind
	Low, High float64 // SI, for numbers and dates
	Step      float64 // the finest step that is worth asking
	Options   []Choosable
	Moves     [2]string // of a shift of twelve months: how less and more are said

	// What the search for turning points must know of the row.
	Inert  bool                                     // plans, costs and sheets read it, but no answer does
	Told   bool                                     // leaving it out says something: that there is no such thing, or that an estimate stands
	Reach  int                                      // steps to either side of the case's own that are looked at; 0 is the whole range
	Times  float64                                  // how many times less or more than a given one is looked at; 0 is the whole range
	Apart  float64                                  // how far from a given one is looked at, SI; 0 is the whole range
	Beside func(*Case) bool                         // it counts only where this holds
	Close  func(*Case) (low, high float64, ok bool) // a range to ask step by step, since pipes come in sizes
	Before func(*Case)                              // what else changes when a search sets it
	Period bool                                     // the day of a treatment: any day will do until the label's days are known

	Get   func(*Case) (Value, bool)
	Set   func(*Case, Value)
	Clear func(*Case)
}

// Value is what one input holds: a number (dates as days, yes as 1, films as
// bits) or a word.
type Value struct {
	Number float64
	Word   string
}

// Choosable is one option of a choice.
type Choosable struct{ ID, Label string }

// Inputs lists every input in the order of the case file. It is set once and
// never changed.
var Inputs = rowsOf([]*Input{
	first(func(c *Case) { c.Method = "" }, choice("crop", "Crop", "What will grow in the bed.", func(c *Case) *string { return &c.Crop }, cropOptions()...)),
	date("plant_on", "Planting day", "The day you want to set out or sow.", func(c *Case) *unit.Optional[unit.Date] { return &c.PlantOn }),
	choice("method", "Set out or sow", "Transplants, sets, cloves and slips go in by hand; seed is sown through the film.", func(c *Case) *string { return &c.Method },
		Choosable{"transplant", "set out"}, Choosable{"seed", "sow"}),

	inert(text("place.station", "Weather station", "The station whose normals are used.", func(c *Case) *string { return &c.Place.Station })),
	first(ownClimate, within(100, number("place.lat", "Latitude", "Degrees north; south is minus.", unit.KindAngle, -66, 72, 0.1, func(c *Case) *unit.Optional[unit.Degrees] { return &c.Place.Latitude }))),
	inert(number("place.lon", "Longitude", "Degrees east; west is minus.", unit.KindAngle, -180, 180, 0.1, func(c *Case) *unit.Optional[unit.Degrees] { return &c.Place.Longitude })),
	years(choice("place.period", "Years of the station’s normals", "The newest are nearest to the years you will meet.", func(c *Case) *string { return &c.Place.Period },
		Choosable{NewerYears, "1991–2020"}, Choosable{OlderYears, "1981–2010"})),
	within(150, told(number("place.elevation_m", "Height of the field", "Above the sea. Higher ground is cooler.", unit.KindHead, -430, 5000, 10, func(c *Case) *unit.Optional[unit.Metres] { return &c.Place.Elevation }))),
	monthDay("climate.last_frost", "Usual last spring frost", "From a neighbor or a local table.", func(c *Case) *unit.Optional[MonthDay] { return &c.Place.LastFrost }),
	monthDay("climate.first_frost", "Usual first autumn frost", "From a neighbor or a local table.", func(c *Case) *unit.Optional[MonthDay] { return &c.Place.FirstFrost }),

	series(inert(text("soil.series", "Soil series", "Its name on the US soil survey’s map, such as Norfolk. Texture and drainage that you give yourself win.", func(c *Case) *string { return &c.Soil.Series }))),
	choice("soil.texture", "Soil texture", "Rub a wet pinch: gritty is sand, floury is silt, sticky is clay.", func(c *Case) *string { return &c.Soil.Texture }, soilOptions()...),
	choice("soil.drainage", "Drainage", "How fast a filled spade hole empties: within an hour, a day, or longer.", func(c *Case) *string { return &c.Soil.Drainage },
		Choosable{"quick", "quick"}, Choosable{"fair", "fair"}, Choosable{"slow", "slow"}),
	number("soil.organic_percent", "Organic matter", "From a soil test.", unit.KindFineShare, 0, 20, 0.5, func(c *Case) *unit.Optional[float64] { return &c.Soil.Organic }),
	mended(number("soil.slope_percent", "Slope of the field", "Rise ÷ run × 100. The water plan lets beds climb it; along the contour they water more evenly.", unit.KindFineShare, 0, 45, 0.5, func(c *Case) *unit.Optional[float64] { return &c.Soil.Slope }),
		"Slope is rise ÷ run × 100: 45 % is as steep as a stair. A tenth of the figure may be meant."),
	choice("soil.wetness_at_laying", "Soil at laying", "Squeeze a ball: dusty is dry, holds and breaks is moist, ribbons and shines is wet.", func(c *Case) *string { return &c.Soil.Wetness },
		Choosable{"dry", "dry"}, Choosable{"moist", "moist"}, Choosable{"wet", "wet"}),
	choice("soil.tilth", "Tilth", "The state of the worked soil.", func(c *Case) *string { return &c.Soil.Tilth },
		Choosable{"fine", "fine and even"}, Choosable{"cloddy", "cloddy"}, Choosable{"trashy", "full of trash"}),
	choice("soil.stones", "Stones", "Stones wider than a plum in the top hand's depth.", func(c *Case) *string { return &c.Soil.Stones },
		Choosable{"none", "none"}, Choosable{"some", "some"}, Choosable{"many", "many"}),
	beside(measured, mended(number("soil.temperature_c", "Soil probe reading", "A reading of your own corrects the computed curve.", unit.KindTemperature, -20, 60, 0.5, func(c *Case) *unit.Optional[unit.Celsius] { return &c.Soil.Temperature }),
		"No soil is that hot or cold: check whether the probe shows °F.")),
	beside(measured, date("soil.measured_on", "Day of the reading", "", func(c *Case) *unit.Optional[unit.Date] { return &c.Soil.MeasuredOn })),
	beside(measured, number("soil.measured_depth_m", "Depth of the reading", "5 or 10 cm is best.", unit.KindShort, 0.01, 0.5, 0.01, func(c *Case) *unit.Optional[unit.Metres] { return &c.Soil.MeasuredDepth })),
	beside(measured, number("soil.measured_hour", "Hour of the reading", "Sun time, 0–24.", unit.KindHours, 0, 24, 0.5, func(c *Case) *unit.Optional[float64] { return &c.Soil.MeasuredHour })),
	beside(measured, choice("soil.measured_under", "The reading was under", "Left open, it was under open ground, or under film that is down already.", func(c *Case) *string { return &c.Soil.MeasuredUnder }, filmOptions()...)),
	inert(mended(number("soil.ph", "pH of the soil", "From a soil test. Most vegetables want 6.0 to 6.8.", unit.KindNumber, 3, 10, 0.1, func(c *Case) *unit.Optional[float64] { return &c.Soil.PH }),
		"The pH stands on the soil test, between 3 and 10. The buffer pH is another figure.")),
	inert(choice("soil.test_p", "Phosphorus, by the soil test", "The class that the report prints. “Optimum” is high, “excessive” is very high.", func(c *Case) *string { return &c.Soil.Phosphorus }, testClasses...)),
	inert(choice("soil.test_k", "Potassium, by the soil test", "The class that the report prints. “Optimum” is high, “excessive” is very high.", func(c *Case) *string { return &c.Soil.Potassium }, testClasses...)),
	inert(mended(number("soil.lime_kg_ha", "Lime that the soil test asks for", "From the report. The laboratory works it out from the buffer pH, we do not.", unit.KindRate, 0, 25000, 50, func(c *Case) *unit.Optional[unit.KilogramsPerHectare] { return &c.Soil.Lime }),
		"Check the unit: 1 t/ha is 1,000 kg/ha, and 1 US ton an acre is 2,240 kg/ha.")),

	choice("weeds.pressure", "Weeds", "What last year's beds looked like.", func(c *Case) *string { return &c.Weeds.Pressure },
		Choosable{"light", "light"}, Choosable{"moderate", "moderate"}, Choosable{"heavy", "heavy"}),
	choice("weeds.nutsedge", "Nutsedge", "A sedge with a three-sided stem. Yellow has single tubers at root tips; purple has chains of tubers.", func(c *Case) *string { return &c.Weeds.Nutsedge },
		Choosable{"none", "none"}, Choosable{"yellow", "yellow"}, Choosable{"purple", "purple"}),
	choice("weeds.insect_pressure", "Virus-carrying insects", "Those that brought trouble in other years.", func(c *Case) *string { return &c.Weeds.Insects },
		Choosable{"none", "none"}, Choosable{"aphids", "aphids"}, Choosable{"thrips", "thrips"}, Choosable{"whiteflies", "whiteflies"}),

	choice("field.exposure", "Wind", "", func(c *Case) *string { return &c.Field.Exposure },
		Choosable{"sheltered", "sheltered"}, Choosable{"open", "open"}, Choosable{"windy", "windy"}),
	sameFarm(mended(number("field.bed_length_m", "Bed length", "", unit.KindLong, 1, 1000, 1, func(c *Case) *unit.Optional[unit.Metres] { return &c.Field.BedLength }),
		"One bed runs from 1 to 1,000 m; give the length of one bed, not of all.")),
	sameFarm(closely(closeBeds, whole("field.beds", "Number of beds", "", 1, 2000, func(c *Case) *unit.Optional[float64] { return &c.Field.Beds }))),
	sameTools(number("field.bed_centres_m", "Bed center to bed center", "", unit.KindLong, 0.6, 6, 0.05, func(c *Case) *unit.Optional[unit.Metres] { return &c.Field.Centres })),
	sameTools(number("field.bed_top_m", "Bed top", "The flat top, from shoulder to shoulder.", unit.KindShort, 0.2, 1.8, 0.01, func(c *Case) *unit.Optional[unit.Metres] { return &c.Field.BedTop })),
	number("field.side_slope", "Sides lean out", "How far a side leans out for each inch of height: a pan that makes 2 in of lean on a bed of 6 in gives 0.33.", unit.KindNumber, 0, 1.5, 0.05, func(c *Case) *unit.Optional[float64] { return &c.Field.SideSlope }),
	whole("field.rows_per_bed", "Rows on a bed", "", 1, 12, func(c *Case) *unit.Optional[float64] { return &c.Field.RowsPerBed }),
	sameTools(number("field.in_row_m", "Plants apart in the row", "", unit.KindShort, 0.01, 3, 0.01, func(c *Case) *unit.Optional[unit.Metres] { return &c.Field.InRow })),

	yesNo("practice.organic", "Certified organic", "", func(c *Case) *unit.Optional[bool] { return &c.Practice.Organic }),
	whole("practice.crops_on_film", "Crops on one laying", "", 1, 4, func(c *Case) *unit.Optional[float64] { return &c.Practice.CropsOnFilm }),
	choice("practice.laying", "Laid by", "", func(c *Case) *string { return &c.Practice.Laying },
		Choosable{"tractor", "tractor and layer"}, Choosable{"hand", "hand"}),
	sameTools(number("practice.tractor_kw", "Tractor power", "", unit.KindPower, 3, 300, 1, func(c *Case) *unit.Optional[unit.Kilowatts] { return &c.Practice.Tractor })),
	period(told(date("practice.fumigated_on", "Treated on", "Day of a fumigant or a herbicide under the film.", func(c *Case) *unit.Optional[unit.Date] { return &c.Practice.FumigatedOn }))),
	beside(func(c *Case) bool { return c.Practice.FumigatedOn.Given }, whole("practice.label_interval_days", "Days from the label", "The label's days between treatment and planting. We never supply them.", 0, 365, func(c *Case) *unit.Optional[float64] { return &c.Practice.LabelInterval })),
	whole("practice.people", "People on laying day", "", 1, 50, func(c *Case) *unit.Optional[float64] { return &c.Practice.People }),
	&Input{Name: "practice.film_options", Label: "Films you can buy", Help: "Leave out to compare all.", Form: FormFilms, Kind: unit.KindWord, Told: true, Low: 1, High: 1<<table.FilmCount - 1, Options: filmOptions(),
		Get: func(c *Case) (Value, bool) {
			return Value{Number: float64(c.Practice.FilmOptions)}, c.Practice.FilmOptions != 0
		},
		Set:   func(c *Case, v Value) { c.Practice.FilmOptions = Films(v.Number) },
		Clear: func(c *Case) { c.Practice.FilmOptions = 0 }},
	number("practice.film_width_m", "Width of the roll at hand", "Leave out to be told what to buy.", unit.KindShort, 0.3, 4, 0.01, func(c *Case) *unit.Optional[unit.Metres] { return &c.Practice.FilmWidth }),
	inert(number("practice.roll_length_m", "Length of a roll", "Rolls of 2,000 to 4,000 ft or of 1,000 to 2,000 m are common; 2,400 ft or 1,000 m stand in.", unit.KindLong, 30, 3000, 10, func(c *Case) *unit.Optional[unit.Metres] { return &c.Practice.RollLength })),
	told(choice("practice.reuse.film", "Film already down", "", func(c *Case) *string { return &c.Practice.ReuseFilm }, filmOptions()...)),
	inert(date("practice.reuse.laid_on", "Laid on", "", func(c *Case) *unit.Optional[unit.Date] { return &c.Practice.ReuseLaidOn })),
	beside(filmDown, number("practice.reuse.cover_percent", "Cover still whole", "", unit.KindShare, 0, 100, 5, func(c *Case) *unit.Optional[float64] { return &c.Practice.ReuseCover })),
	beside(filmDown, number("practice.reuse.height_m", "Height of that bed", "", unit.KindShort, 0, 0.4, 0.01, func(c *Case) *unit.Optional[unit.Metres] { return &c.Practice.ReuseHeight })),
	beside(filmDown, number("practice.reuse.thickness_um", "Thickness of that film", "", unit.KindThickness, 10, 80, 1, func(c *Case) *unit.Optional[unit.Micrometres] { return &c.Practice.ReuseThick })),

	choice("water.source", "Water source", "", func(c *Case) *string { return &c.Water.Source },
		Choosable{"well", "well"}, Choosable{"pond", "pond"}, Choosable{"stream", "stream"}, Choosable{"municipal", "town water"}, Choosable{"tank", "tank"}, Choosable{"none", "none"}),
	nearly(40, sameFarm(mended(number("water.flow_l_h", "Flow at the field", "Bucket test: liters ÷ seconds × 3,600, after half an hour of running.", unit.KindFlow, 1, 2000000, 10, func(c *Case) *unit.Optional[unit.LitresPerHour] { return &c.Water.Flow }),
		"Without water there is no plan: choose “none” as the source, or do the bucket test."))),
	apart(400, closely(closePressure, mended(number("water.pressure_kpa", "Pressure at the field", "By a gauge, with water running.", unit.KindPressure, 0, 1400, 1, func(c *Case) *unit.Optional[unit.Kilopascals] { return &c.Water.Pressure }),
		"Check the unit: 1 psi is 6.9 kPa, 1 bar is 100 kPa."))),
	inert(number("water.lift_m", "Lift", "From the water's surface, drawn down by pumping, up to the pump's outlet.", unit.KindHead, 0, 300, 0.1, func(c *Case) *unit.Optional[unit.Metres] { return &c.Water.Lift })),
	apart(30, closely(closeRise, number("water.rise_m", "Rise from source to beds", "From the source's outlet up to the beds. Minus where the beds lie lower, as under a tank.", unit.KindHead, -100, 300, 0.1, func(c *Case) *unit.Optional[unit.Metres] { return &c.Water.Rise }))),
	apart(300, closely(closePipe, number("water.header_m", "Pipe to the first bed", "From the source to the head of the nearest bed.", unit.KindLong, 0, 3000, 1, func(c *Case) *unit.Optional[unit.Metres] { return &c.Water.Header }))),
	mended(number("water.hours_per_day", "Hours a day for watering", "", unit.KindHours, 0.5, 24, 0.5, func(c *Case) *unit.Optional[float64] { return &c.Water.Hours }),
		"A day has 24 hours."),
	mended(number("water.ec_ds_m", "Salt in the water (EC)", "From a water test.", unit.KindSalt, 0.02, 15, 0.1, func(c *Case) *unit.Optional[unit.DecisiemensPerMetre] { return &c.Water.Salt }),
		"45 dS/m is near sea water: check whether the sheet says µS/cm (divide by 1,000) or mg/L (divide by 640)."),
	number("water.ph", "pH of the water", "From a water test.", unit.KindNumber, 3, 11, 0.1, func(c *Case) *unit.Optional[float64] { return &c.Water.PH }),
	number("water.iron_mg_l", "Iron", "From a water test.", unit.KindConcentration, 0, 50, 0.1, func(c *Case) *unit.Optional[unit.MilligramsPerLitre] { return &c.Water.Iron }),
	number("water.hardness_mg_l", "Hardness as lime", "From a water test.", unit.KindConcentration, 0, 2000, 5, func(c *Case) *unit.Optional[unit.MilligramsPerLitre] { return &c.Water.Hardness }),
	inert(mended(number("water.sodium_ratio", "Sodium ratio (SAR)", "From a water test.", unit.KindNumber, 0, 40, 0.5, func(c *Case) *unit.Optional[float64] { return &c.Water.Sodium }),
		"The sodium adsorption ratio stands on the water test.")),
	inert(mended(number("water.nitrate_mg_l", "Nitrate, as nitrogen", "From a water test. Nitrogen that comes with the water need not be bought.", unit.KindConcentration, 0, 200, 1, func(c *Case) *unit.Optional[unit.MilligramsPerLitre] { return &c.Water.Nitrate }),
		"Give nitrate as nitrogen: nitrate ÷ 4.4.")),
	beside(func(c *Case) bool { return c.Water.Refill.Given }, mended(number("water.tank_l", "Tank holds", "Leave out where there is no tank.", unit.KindVolume, 50, 1e7, 10, func(c *Case) *unit.Optional[unit.Litres] { return &c.Water.Tank }),
		"Give what the tank holds when full.")),
	beside(func(c *Case) bool { return c.Water.Tank.Given }, mended(number("water.refill_l_h", "Flow that fills the tank", "Time a bucket under the pipe that fills it.", unit.KindFlow, 1, 2e6, 10, func(c *Case) *unit.Optional[unit.LitresPerHour] { return &c.Water.Refill }),
		"Time a bucket under the pipe that fills the tank.")),

	inert(mended(number("feed.rate_kg_ha_day", "Feed, of one nutrient a day", "From your soil test or guide, for an acre or hectare of field. We recommend no rate.", unit.KindRate, 0, 20, 0.05, func(c *Case) *unit.Optional[unit.KilogramsPerHectare] { return &c.Feed.Rate }),
		"Give the nutrient of one day: a guide's figure for a week must be divided by 7.")),
	inert(mended(number("feed.grade_percent", "Share of it in the product (%)", "Printed on the bag: 20 for nitrogen in 20-20-20.", unit.KindNumber, 1, 100, 1, func(c *Case) *unit.Optional[float64] { return &c.Feed.Grade }),
		"The grade is printed on the bag: 20 for nitrogen in 20-20-20.")),
	inert(mended(number("feed.stock_kg_l", "Product in the stock tank", "How much dissolves stands on the label.", unit.KindStrength, 0.005, 2, 0.01, func(c *Case) *unit.Optional[unit.KilogramsPerLitre] { return &c.Feed.Stock }),
		"The label says how much dissolves: 1 lb in a gallon is 0.12 kg in a liter.")),
	told(mended(number("feed.injector_ratio", "Injector, 1 to", "Give 100 for an injector of 1:100.", unit.KindNumber, 10, 1000, 1, func(c *Case) *unit.Optional[float64] { return &c.Feed.Injector }),
		"Give 100 for an injector of 1:100.")),
	inert(mended(number("feed.bleach_percent", "Chlorine in the bleach (%)", "Printed on the bottle, where its label allows use in drip lines.", unit.KindNumber, 0.5, 20, 0.25, func(c *Case) *unit.Optional[float64] { return &c.Feed.Bleach }),
		"The strength is printed on the bottle; household bleach has about 5 %.")),
	inert(mended(number("feed.chlorine_mg_l", "Chlorine wanted in the water", "The label decides. 1 mg/L at the line ends is the published level against slime.", unit.KindConcentration, 0.1, 500, 0.5, func(c *Case) *unit.Optional[unit.MilligramsPerLitre] { return &c.Feed.Chlorine }),
		"Published levels run from 1 mg/L in use to 500 mg/L between crops; the label decides.")),
	reported("feed.season_n_kg_ha", "Nitrogen for the season, by your report", func(c *Case) *unit.Optional[unit.KilogramsPerHectare] { return &c.Feed.SeasonNitrogen }),
	reported("feed.season_p2o5_kg_ha", "Phosphate (P₂O₅) for the season, by your report", func(c *Case) *unit.Optional[unit.KilogramsPerHectare] { return &c.Feed.SeasonPhosphate }),
	reported("feed.season_k2o_kg_ha", "Potash (K₂O) for the season, by your report", func(c *Case) *unit.Optional[unit.KilogramsPerHectare] { return &c.Feed.SeasonPotash }),
	onTheBag("feed.base_n_percent", "Nitrogen in the product for under the film (%)", "10", func(c *Case) *unit.Optional[float64] { return &c.Feed.BaseNitrogen }),
	onTheBag("feed.base_p2o5_percent", "Phosphate (P₂O₅) in that product (%)", "20", func(c *Case) *unit.Optional[float64] { return &c.Feed.BasePhosphate }),
	onTheBag("feed.base_k2o_percent", "Potash (K₂O) in that product (%)", "30", func(c *Case) *unit.Optional[float64] { return &c.Feed.BasePotash }),
	inert(choice("feed.base_spread", "Where that product is spread", "On the bed strip before the bed is formed, or over the whole field. Left out, it goes on the beds.", func(c *Case) *string { return &c.Feed.Spread },
		Choosable{"beds", "on the beds"}, Choosable{"field", "over the whole field"})),

	inert(text("prices.currency", "Currency", "Three letters, such as USD or EUR.", func(c *Case) *string { return &c.Prices.Currency })),
	price("prices.film_roll", "Price of a roll of film", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.FilmRoll }),
	price("prices.tape_m", "Price of drip tape", unit.KindPriceLong, func(c *Case) *unit.Optional[float64] { return &c.Prices.TapeMetre }),
	price("prices.plant", "Price of a plant", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.PlantEach }),
	price("prices.wage_hour", "An hour of work", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.WageHour }),
	price("prices.haul_tonne", "Hauling used film away", unit.KindPriceMass, func(c *Case) *unit.Optional[float64] { return &c.Prices.HaulTonne }),
	price("prices.fittings_bed", "Fittings for one bed", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.FittingBed }),
	price("prices.crop_unit", "One unit of crop, after picking and packing", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.CropUnit }),
	price("prices.system", "Header, valves, filter and the rest, together", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.System }),
	ownHours("prices.laying_hours", "Your own hours to lay", func(c *Case) *unit.Optional[float64] { return &c.Prices.LayHours }),
	ownHours("prices.lifting_hours", "Your own hours to lift", func(c *Case) *unit.Optional[float64] { return &c.Prices.LiftHours }),
	price("prices.roll_biodegradable", "A roll of biodegradable film, as long and wide", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.RollTilled }),
	price("prices.roll_paper", "A roll of paper mulch, as long and wide", unit.KindNumber, func(c *Case) *unit.Optional[float64] { return &c.Prices.RollPaper }),

	own(ItemFilm), own(ItemTape), own(ItemHeader), own(ItemTakeOffs), own(ItemEnds), own(ItemValves), own(ItemRegulators),
	own(ItemFilter), own(ItemGauge), own(ItemBackflow), own(ItemInjector), own(ItemPins), own(ItemPlants),
	own(ItemFertiliser), own(ItemCover), own(ItemHoops), own(ItemStakes), own(ItemString),

	inert(choice("day.ball", "A ball of soil, squeezed and poked", "Take it from as deep as the bed will be.", func(c *Case) *string { return &c.Day.Ball },
		Choosable{"crumbles", "crumbles to dust"}, Choosable{"breaks", "holds, then breaks"}, Choosable{"ribbons", "ribbons and shines"})),
	inert(choice("day.hand", "The hand that squeezed it", "At field capacity the ball leaves its wet outline, and no water runs. On clay the ball decides: at field capacity clay still ribbons.", func(c *Case) *string { return &c.Day.Hand },
		Choosable{"dry", "is dry"}, Choosable{"outline", "shows a wet outline"}, Choosable{"water", "drips"})),
	inert(mended(number("day.wind_m_s", "Wind now", "By a gauge, or from the nearest station.", unit.KindSpeed, 0, 60, 0.5, func(c *Case) *unit.Optional[unit.MetresPerSecond] { return &c.Day.Wind }),
		"Check the unit: 1 m/s is 3.6 km/h or 2.2 mph.")),
	inert(mended(whole("day.people", "People here today", "Those who work, the driver too.", 0, 50, func(c *Case) *unit.Optional[float64] { return &c.Day.People }),
		"Count those who are here, from 0 to 50.")),
	inert(mended(whole("day.rolls", "Rolls of film on the headland", "", 0, 100000, func(c *Case) *unit.Optional[float64] { return &c.Day.Rolls }),
		"Count whole rolls; a part of a roll is none.")),

	choice("risk", "Which spring to plan for", "A cool spring comes about one year in ten, and so does a warm one.", func(c *Case) *string { return &c.Risk },
		Choosable{"cool", "a cool spring"}, Choosable{"usual", "a usual spring"}, Choosable{"warm", "a warm spring"}),

	inert(monthDay("past.warm_on", "The bed was warm enough from", "The first of three readings in a row.", func(c *Case) *unit.Optional[MonthDay] { return &c.Past.WarmOn })),
	inert(number("past.water_percent", "Water that you ran, of the plan’s", "", unit.KindShare, 0, 400, 5, func(c *Case) *unit.Optional[float64] { return &c.Past.Water })),
	inert(number("past.whole_percent", "Film that came up whole", "", unit.KindShare, 0, 100, 5, func(c *Case) *unit.Optional[float64] { return &c.Past.Whole })),
})

// InputByName finds a row, or nil.
func InputByName(name string) *Input {
	for i := range Inputs {
		if Inputs[i].Name == name {
			return &Inputs[i]
		}
	}
	return nil
}
