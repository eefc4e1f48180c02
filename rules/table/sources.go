package table

// The sources, each a variable, so that the compiler catches a wrong one.
// A test refuses a source that no row cites or that this list lacks.
var (
	Practice            = Source{ID: "common-practice", Publisher: "the trade", Title: "Common practice of the trade", Year: "no date", Where: "no source", Mark: CommonPractice}
	Memory              = Source{ID: "from-memory", Publisher: "this project", Title: "Known from memory, not looked up", Year: "no date", Where: "no source", Mark: FromMemory}
	NewEngland          = Source{ID: "new-england-guide", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, plastic mulch films", Year: "no date", Where: "table 14", Mark: Seen}
	PennColours         = Source{ID: "penn-colours", Publisher: "University of Massachusetts, quoting Pennsylvania State University", Title: "Text on mulch colours", Year: "no date", Where: "as quoted in an almanac answer page", Mark: Quoted}
	PuertoRico1968      = Source{ID: "puerto-rico-1968", Publisher: "Journal of Agriculture of the University of Puerto Rico", Title: "52(1):53–63", Year: "1968", Where: "doi 10.46429/jaupr.v52i1.11723", Mark: Seen}
	Virginia1998        = Source{ID: "virginia-1998", Publisher: "Journal of Sustainable Agriculture", Title: "13(1):55–81, tomato on five Virginia farms", Year: "1998", Where: "doi 10.1300/j064v13n01_06", Mark: Seen}
	Tomato2010          = Source{ID: "tomato-2010", Publisher: "conference abstract", Title: "Colored plastic mulches on weeds and crop yield, tomato", Year: "2010", Where: "abstract", Mark: Seen}
	Georgia2002         = Source{ID: "georgia-2002", Publisher: "Journal of the American Society for Horticultural Science", Title: "127(1):127, tomato root zone, Georgia", Year: "2002", Where: "doi 10.21273/JASHS.127.1.127", Mark: Seen}
	TomatoRoots1995     = Source{ID: "tomato-roots-1995", Publisher: "Journal of the American Society for Horticultural Science", Title: "120(5):848–853, black film and vetch under tomato", Year: "1995", Where: "root growth best at 20–30 °C", Mark: Seen}
	Films1993           = Source{ID: "films-1993", Publisher: "Journal of the American Society for Horticultural Science", Title: "118(2):188–193, optical properties of eight mulch films", Year: "1993", Where: "doi 10.21273/JASHS.118.2.188", Mark: Seen}
	ClearFilm2021       = Source{ID: "clear-film-2021", Publisher: "International Journal of Chemical Studies", Title: "9(1):286–290", Year: "2021", Where: "film transmittance and weed counts", Mark: Seen}
	WarmthFalls2015     = Source{ID: "warmth-falls-2015", Publisher: "HortTechnology", Title: "25(2):162, clear, black and white films over four months", Year: "2015", Where: "abstract", Mark: Seen}
	Contact             = Source{ID: "contact-connecticut", Publisher: "University of Connecticut IPM", Title: "The use of different colored mulches for yield and earliness", Year: "no date", Where: "ipm.cahnr.uconn.edu", Mark: Seen}
	DryBeds             = Source{ID: "dry-beds-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: plastic mulch beds and dry soils", Year: "no date", Where: "p=10108", Mark: Seen}
	PepperHeat2011      = Source{ID: "pepper-heat-2011", Publisher: "Terra Latinoamericana", Title: "29(4):421–430, bell pepper, Mexico", Year: "2011", Where: "soil above 30 °C at 7.5 cm", Mark: Seen}
	BioMeta2020         = Source{ID: "biodegradable-meta-2020", Publisher: "Agronomy", Title: "10:1618, meta-analysis of 66 articles", Year: "2020", Where: "doi 10.3390/agronomy10101618", Mark: Seen}
	HotFilm             = Source{ID: "hot-film-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: heat and plastic mulch", Year: "no date", Where: "p=18243 and p=22290", Mark: Seen}
	LateSwitch          = Source{ID: "late-switch-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: mulch colour by planting date", Year: "no date", Where: "p=18243", Mark: Seen}
	ColourCompare       = Source{ID: "colour-compare-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: mulch color comparisons", Year: "no date", Where: "p=802", Mark: Seen}
	Weathering          = Source{ID: "weathering-double-crop", Publisher: "HortScience", Title: "Film weathering in double cropping, tomato then cucumber", Year: "no date", Where: "abstract", Mark: Seen}
	Retrieval2019       = Source{ID: "retrieval-2019", Publisher: "University of Florida IFAS Extension", Title: "Film retrieval for recycling, on a North Carolina State trial", Year: "2019", Where: "extension blog", Mark: Seen}
	ThinFilm            = Source{ID: "thin-film-trade", Publisher: "trade magazine", Title: "Article on mulch film thickness", Year: "no date", Where: "0.7 mil or less is hard to lift", Mark: Trade}
	EN13655             = Source{ID: "en-13655-2018", Publisher: "CEN", Title: "EN 13655:2018 thermoplastic mulch films", Year: "2018", Where: "scope", Mark: Seen}
	EN17033             = Source{ID: "en-17033-2018", Publisher: "CEN", Title: "EN 17033:2018 biodegradable mulch films", Year: "2018", Where: "scope", Mark: Seen}
	OrganicRule         = Source{ID: "organic-rule", Publisher: "US Department of Agriculture", Title: "7 CFR 205.206(c) and 205.601(b), national organic program", Year: "checked 2026", Where: "rule text", Mark: Seen}
	OrganicMemo2015     = Source{ID: "organic-memo-2015", Publisher: "US Department of Agriculture, National Organic Program", Title: "Memo 15-1 on biodegradable biobased mulch film", Year: "2015", Where: "as quoted", Mark: Quoted}
	OrganicMemo2023     = Source{ID: "organic-memo-2023", Publisher: "US Department of Agriculture, National Organic Program", Title: "Memo to the standards board on biodegradable biobased mulch film", Year: "2023", Where: "as told in Organic Grower, 27 September 2023", Mark: Quoted}
	StrawberryFilm      = Source{ID: "strawberry-film", Publisher: "university strawberry bulletin", Title: "Film for strawberry beds", Year: "no date", Where: "1–1.5 mil, 48–60 in", Mark: Quoted}
	FloridaCir805       = Source{ID: "florida-cir805", Publisher: "University of Florida IFAS", Title: "Circular 805 (CV213), polyethylene mulches for vegetables", Year: "no date", Where: "figure and text", Mark: Seen}
	UtahGuide           = Source{ID: "utah-guide", Publisher: "Utah State University", Title: "Utah Vegetable Production Guide", Year: "no date", Where: "plasticulture pages", Mark: Seen}
	BuriedEdge          = Source{ID: "buried-edge", Publisher: "equipment dealer's page", Title: "Buried film edge of walk-behind layers", Year: "no date", Where: "4–6 in each side", Mark: Trade}
	FilmYieldConstant   = Source{ID: "film-yield-constant", Publisher: "film maker's user manual", Title: "Area of polyethylene for a pound at 1 mil", Year: "no date", Where: "30,000 in²", Mark: Trade}
	Embossing           = Source{ID: "embossing", Publisher: "extension wording, repeated", Title: "Embossed film and heat", Year: "no date", Where: "general text", Mark: Quoted}
	KansasWeeds         = Source{ID: "kansas-weeds", Publisher: "Kansas State University", Title: "MF-1091, plastic mulches", Year: "no date", Where: "weeds", Mark: Seen}
	NutsedgeYellow2005  = Source{ID: "nutsedge-yellow-2005", Publisher: "Weed Science", Title: "53(6), yellow nutsedge under film, pots, 16 weeks", Year: "2005", Where: "WS-05-029R", Mark: Seen}
	NutsedgePurple2005  = Source{ID: "nutsedge-purple-2005", Publisher: "Weed Science", Title: "53(6), purple nutsedge patches, field", Year: "2005", Where: "WS-05-045R", Mark: Seen}
	NutsedgeTranslucent = Source{ID: "nutsedge-translucent", Publisher: "Weed Technology", Title: "Suppression of purple nutsedge with polyethylene film mulch", Year: "no date", Where: "abstract", Mark: Seen}
	NutsedgeGeorgia     = Source{ID: "nutsedge-georgia", Publisher: "USDA Agricultural Research Service", Title: "Publication 218928, mixed nutsedge under films, Georgia 2006–07", Year: "2008", Where: "abstract", Mark: Seen}
	PaperNutsedge2018   = Source{ID: "paper-nutsedge-2018", Publisher: "HortScience", Title: "53(3):288–294, paper and plastic mulches, pumpkin", Year: "2018", Where: "abstract", Mark: Seen}
	SilverSquash1993    = Source{ID: "silver-squash-1993", Publisher: "HortScience", Title: "28(9):895, mosaic in yellow squash, Alabama", Year: "1993", Where: "abstract", Mark: Seen}
	SilverZucchini1995  = Source{ID: "silver-zucchini-1995", Publisher: "Plant Disease", Title: "79:1126, zucchini, California", Year: "1995", Where: "abstract", Mark: Seen}
	SilverPumpkin       = Source{ID: "silver-pumpkin", Publisher: "conference abstract", Title: "Reflective and black mulch in pumpkins, four years, US Midwest", Year: "no date", Where: "abstract", Mark: Seen}
	SilverThrips        = Source{ID: "silver-thrips-florida", Publisher: "University of Florida IFAS", Title: "IPM-200, thrips virus of tomato and pepper", Year: "no date", Where: "figure 4", Mark: Seen}
	SilverWhitefly2023  = Source{ID: "silver-whitefly-2023", Publisher: "Insects", Title: "14(11):863", Year: "2023", Where: "doi 10.3390/insects14110863", Mark: Seen}
	CanopyLimit         = Source{ID: "canopy-limit-california", Publisher: "University of California IPM", Title: "Reflective mulches, floriculture guidelines", Year: "no date", Where: "60 % cover", Mark: Seen}
	Gladiolus1965       = Source{ID: "gladiolus-1965", Publisher: "journal abstract", Title: "Reflective surfaces used to repel dispersing aphids, gladiolus", Year: "1965", Where: "abstract", Mark: Seen}
	Guide205            = Source{ID: "new-england-laying", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, laying film", Year: "no date", Where: "field capacity; hand laying", Mark: Seen}
	StrawberryBed       = Source{ID: "strawberry-bed-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: strawberry beds", Year: "no date", Where: "p=4752", Mark: Seen}
	FlowerBed1998       = Source{ID: "flower-bed-1998", Publisher: "North Carolina State University", Title: "Flower Growers' Bulletin 43(4)", Year: "1998", Where: "bed height", Mark: Seen}
	GeorgiaBeds2019     = Source{ID: "georgia-beds-2019", Publisher: "University of Georgia Extension", Title: "Crops per laying and vegetable beds", Year: "2019", Where: "economics blog", Mark: Seen}
	RaisedBeds          = Source{ID: "raised-beds-new-england", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, raised beds", Year: "no date", Where: "4 in limit without irrigation", Mark: Seen}
	WhyRaised           = Source{ID: "why-raised-nc", Publisher: "North Carolina State University", Title: "AG-489, plasticulture for commercial vegetables", Year: "no date", Where: "raised beds", Mark: Seen}
	UsingFilmDrip       = Source{ID: "using-film-drip-nc", Publisher: "North Carolina State University", Title: "Using plastic mulches and drip irrigation for vegetables", Year: "no date", Where: "bed firm, no puddles", Mark: Seen}
	Plasticulture       = Source{ID: "plasticulture-michigan", Publisher: "Michigan State University Extension", Title: "Is plasticulture worth it for vegetable production?", Year: "no date", Where: "tractor, poor fits", Mark: Seen}
	TilthMichigan       = Source{ID: "tilth-michigan", Publisher: "Michigan State University Extension", Title: "Film contact and tilth", Year: "2016", Where: "in trade press", Mark: Seen}
	GeorgiaFloors       = Source{ID: "georgia-floors-2000", Publisher: "University of Georgia", Title: "Minimum soil temperatures by crop, three mornings", Year: "2000", Where: "newswire", Mark: Seen}
	KansasFloors        = Source{ID: "kansas-floors", Publisher: "Kansas newspaper column", Title: "Soil temperature before planting", Year: "no date", Where: "2.5 in deep, 4–5 days", Mark: Trade}
	MinnesotaWait       = Source{ID: "minnesota-wait", Publisher: "University of Minnesota Extension", Title: "Extending the growing season", Year: "no date", Where: "1–2 weeks before planting", Mark: Seen}
	FumigantManual      = Source{ID: "fumigant-manual", Publisher: "old US public-works manual MO-314", Title: "Metam-type fumigants", Year: "no date", Where: "14–21 days; not a label", Mark: Seen}
	FumigantShort       = Source{ID: "fumigant-short", Publisher: "Crop Protection", Title: "21:973–982, airing after fumigation", Year: "2002", Where: "abstract", Mark: Seen}
	BarrierFilm2013     = Source{ID: "barrier-film-2013", Publisher: "California Agriculture", Title: "67(4):217, totally impermeable film", Year: "2013", Where: "emissions", Mark: Seen}
	HerbicideFilm2009   = Source{ID: "herbicide-film-2009", Publisher: "Weed Technology", Title: "23(3), herbicides washed from film", Year: "2009", Where: "abstract", Mark: Seen}
	HerbicideRutgers    = Source{ID: "herbicide-rutgers", Publisher: "Rutgers University", Title: "Plant & Pest Advisory on glyphosate and film", Year: "no date", Where: "advisory", Mark: Seen}
	RaspberryFilm2020   = Source{ID: "raspberry-film-2020", Publisher: "Horticulturae", Title: "Buried biodegradable film after 18 months", Year: "2020", Where: "Washington", Mark: Seen}
	BioLaying           = Source{ID: "bio-laying", Publisher: "University of Tennessee and Washington State University", Title: "Applying biodegradable mulches", Year: "no date", Where: "tension, timing", Mark: Seen}
	Runoff              = Source{ID: "runoff-usda", Publisher: "USDA Agricultural Research Service", Title: "Three-year runoff study, film and vetch", Year: "no date", Where: "as told in a farm newspaper", Mark: Quoted}
	RunoffRye           = Source{ID: "runoff-rye-2001", Publisher: "USDA Agricultural Research Service", Title: "Publication 124366, rye in film-bed furrows", Year: "2001", Where: "abstract", Mark: Seen}
	SweetCornClear      = Source{ID: "sweet-corn-clear-iowa", Publisher: "Iowa State University", Title: "Clear mulch and row covers in sweet corn, 1996–97", Year: "1997", Where: "abstract and thesis record", Mark: Seen}
	Broccoli2009        = Source{ID: "broccoli-2009", Publisher: "Scientia Horticulturae", Title: "123:156–163, broccoli root zone", Year: "2009", Where: "trade summary", Mark: Quoted}
	Romaine2020         = Source{ID: "romaine-2020", Publisher: "HortTechnology", Title: "30(4):510, spring romaine on black film", Year: "2020", Where: "abstract", Mark: Seen}
	RedNematode1997     = Source{ID: "red-nematode-1997", Publisher: "Journal of Nematology", Title: "29(4):538–546, red, white and black film", Year: "1997", Where: "abstract", Mark: Seen}
	Drip1996            = Source{ID: "drip-1996", Publisher: "HortTechnology", Title: "6(3):155, design considerations for vegetable crop drip irrigation", Year: "1996", Where: "abstract", Mark: Seen}
	PennDrip2013        = Source{ID: "penn-drip-2013", Publisher: "Pennsylvania State University Extension", Title: "Determining how long to run drip irrigation systems for vegetables", Year: "2013", Where: "table, 8 psi, 30 in bed", Mark: Seen}
	NCATDrip            = Source{ID: "ncat-drip", Publisher: "NCAT ATTRA", Title: "How do I determine how long and how often", Year: "no date", Where: "157 minutes", Mark: Seen}
	ClemsonTape         = Source{ID: "clemson-tape", Publisher: "Clemson Cooperative Extension", Title: "Landscape irrigation equipment part 4: drip tape", Year: "no date", Where: "emitters 8–12 in", Mark: Seen}
	KansasTape          = Source{ID: "kansas-tape", Publisher: "Kansas State University", Title: "Drip irrigation of row crops: state of the art", Year: "no date", Where: "table 1", Mark: Seen}
	NewEnglandDrip      = Source{ID: "new-england-drip", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, irrigation", Year: "no date", Where: "tape and sandy beds", Mark: Seen}
	Saxton2006          = Source{ID: "saxton-2006", Publisher: "Soil Science Society of America Journal", Title: "70:1569–1578, soil water characteristic estimates", Year: "2006", Where: "doi 10.2136/sssaj2005.0117", Mark: Seen}
	WetterNEH           = Source{ID: "neh-wetted", Publisher: "USDA NRCS", Title: "National Engineering Handbook 623 chapter 7", Year: "no date", Where: "wetted diameter", Mark: FromMemory}
	ClogFlorida         = Source{ID: "clog-florida", Publisher: "University of Florida FAWN", Title: "Micro-irrigation maintenance", Year: "no date", Where: "table 1", Mark: Seen}
	FAO29               = Source{ID: "fao-29", Publisher: "FAO", Title: "Irrigation and Drainage Paper 29 rev. 1, water quality for agriculture", Year: "1985", Where: "as tabled in PMC9128324", Mark: Quoted}
	FAO56               = Source{ID: "fao-56", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, crop evapotranspiration", Year: "1998", Where: "equations", Mark: Seen}
	FAO61               = Source{ID: "fao-61", Publisher: "FAO", Title: "Irrigation and Drainage Paper 61, annex 1", Year: "2002", Where: "two-line salt model", Mark: Seen}
	Covers2020          = Source{ID: "covers-2020", Publisher: "Idaho newspaper column", Title: "Row covers give 2–4 °F", Year: "2020", Where: "12 February", Mark: Trade}
	Normals             = Source{ID: "us-normals", Publisher: "US NOAA National Centers for Environmental Information", Title: "1981–2010 US Climate Normals", Year: "2011", Where: "monthly minima and maxima", Mark: Seen}
	CFR205              = Source{ID: "cfr-205", Publisher: "US Department of Agriculture", Title: "7 CFR 205.206(c)(6)", Year: "checked 2026", Where: "removal of plastic mulch", Mark: Seen}
	Nutrition           = Source{ID: "nutsedge-kinds-georgia", Publisher: "University of Georgia", Title: "Purple nutsedge spread under film", Year: "no date", Where: "trade press", Mark: Seen}
	LiftingOSHA         = Source{ID: "lifting-osha", Publisher: "OSHA", Title: "NIOSH lifting recommendations", Year: "no date", Where: "poultry processing pages: 51 lb at the best", Mark: Seen}
	HandLaying          = Source{ID: "hand-laying-farm", Publisher: "farm weblog", Title: "Nine rows of 150 ft laid by hand", Year: "2011", Where: "person-hours", Mark: Trade}
	TapeOffset          = Source{ID: "tape-offset", Publisher: "horticulture magazine", Title: "Tape laid off the plant line", Year: "no date", Where: "reader question", Mark: Trade}
	F56T12              = Source{ID: "fao-56-table-12", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 12 crop coefficients", Year: "1998", Where: "three open copies compared", Mark: Seen}
	F56T11              = Source{ID: "fao-56-table-11", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 11 stage lengths", Year: "1998", Where: "one open copy", Mark: Seen}
	F56T22              = Source{ID: "fao-56-table-22", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 22 root depth and depletion", Year: "1998", Where: "one open copy", Mark: Seen}
	F56T25              = Source{ID: "fao-56-table-25", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 25 coefficients under plastic", Year: "1998", Where: "not seen", Mark: FromMemory}
	SaltUSDA1990        = Source{ID: "salt-usda-1990", Publisher: "USDA ARS Salinity Laboratory", Title: "Relative salt tolerance of herbaceous crops", Year: "1990", Where: "list", Mark: Seen}
	GermOregon          = Source{ID: "germination-oregon", Publisher: "Oregon State University Extension", Title: "Soil temperature conditions for vegetable seed germination", Year: "2013", Where: "reviewed 2024", Mark: Seen}
	GermPercent         = Source{ID: "germination-percent", Publisher: "hobby site", Title: "Percent of normal seedlings by temperature", Year: "no date", Where: "table copy", Mark: Trade}
	GermFloridaCopy     = Source{ID: "germination-florida", Publisher: "garden site, after University of Florida IFAS", Title: "Minimum, optimum and maximum germination temperatures", Year: "no date", Where: "copy", Mark: Quoted}
	ColoradoCopy        = Source{ID: "colorado-copy", Publisher: "garden site, after Colorado State University", Title: "Vegetable planting table", Year: "no date", Where: "copy", Mark: Quoted}
	SeedTexas           = Source{ID: "seeding-texas", Publisher: "Texas A&M University", Title: "Earth-Kind gardening, soil temperature", Year: "no date", Where: "realistic seeding temperatures", Mark: Seen}
	Knott1997           = Source{ID: "handbook-1997", Publisher: "Handbook for Vegetable Growers, reprinted by University of California Santa Cruz", Title: "Monthly temperatures for best growth and quality", Year: "1997", Where: "unit 1.3 appendix 5", Mark: Quoted}
	Colorado720         = Source{ID: "colorado-720", Publisher: "Colorado State University", Title: "GardenNotes 720, vegetable planting guide", Year: "no date", Where: "frost classes", Mark: Seen}
	Midwest2022         = Source{ID: "midwest-2022", Publisher: "eight US land-grant universities", Title: "Midwest Vegetable Production Guide", Year: "2022", Where: "crop chapters", Mark: Seen}
	UtahTomato          = Source{ID: "utah-tomato-pepper", Publisher: "Utah State University", Title: "Utah Vegetable Production Guide: tomato, pepper, eggplant", Year: "no date", Where: "planting", Mark: Seen}
	UtahSquash          = Source{ID: "utah-cucumber-squash", Publisher: "Utah State University", Title: "Utah Vegetable Production Guide: cucumber, squash", Year: "no date", Where: "planting", Mark: Seen}
	DelawareWarm        = Source{ID: "transplants-delaware-936", Publisher: "University of Delaware", Title: "Weekly Crop Update: transplants and weather", Year: "no date", Where: "p=936", Mark: Seen}
	DelawareEarly       = Source{ID: "transplants-delaware-12984", Publisher: "University of Delaware", Title: "Weekly Crop Update: early transplanting", Year: "no date", Where: "p=12984", Mark: Seen}
	DelawareMelon       = Source{ID: "watermelon-delaware-5188", Publisher: "University of Delaware", Title: "Weekly Crop Update: seedless watermelon spacing", Year: "no date", Where: "p=5188", Mark: Seen}
	DelawareCole        = Source{ID: "cole-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: cole crops and heat", Year: "no date", Where: "abstract", Mark: Seen}
	DelawareVines       = Source{ID: "vines-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update 25(16): vine crops and heat", Year: "2017", Where: "text", Mark: Seen}
	DelawareSweetPotato = Source{ID: "sweet-potato-delaware", Publisher: "University of Delaware, in trade press", Title: "Sweet potato spacing", Year: "no date", Where: "text", Mark: Seen}
	PurdueTransplants   = Source{ID: "purdue-transplants", Publisher: "Purdue University", Title: "Vegetable Crops Hotline: transplants in cool weather", Year: "no date", Where: "cucurbits", Mark: Seen}
	PurdueHeat          = Source{ID: "purdue-heat", Publisher: "Purdue University", Title: "Vegetable Crops Hotline: tomato fruit set and heat", Year: "no date", Where: "text", Mark: Seen}
	IowaHeat            = Source{ID: "iowa-heat", Publisher: "Iowa State University Extension", Title: "Weather problems of vegetables", Year: "no date", Where: "text", Mark: Seen}
	NorthCarolinaHeat   = Source{ID: "north-carolina-heat", Publisher: "North Carolina Cooperative Extension", Title: "Column on tomato heat", Year: "2012", Where: "text", Mark: Seen}
	IllinoisAnnuals     = Source{ID: "illinois-annuals", Publisher: "University of Illinois Extension", Title: "Annual flowers, hardiness", Year: "no date", Where: "list", Mark: Seen}
	MinnesotaAnnuals    = Source{ID: "minnesota-annuals", Publisher: "University of Minnesota Extension", Title: "Half-hardy annuals", Year: "no date", Where: "list", Mark: Seen}
	CarolinaGarden      = Source{ID: "carolina-garden", Publisher: "Carolina garden site", Title: "Annual flowers", Year: "no date", Where: "list", Mark: Trade}
	KansasZinnia        = Source{ID: "kansas-zinnia", Publisher: "Kansas State University", Title: "MF-1079, zinnia", Year: "no date", Where: "text", Mark: Seen}
	FloridaSunflower    = Source{ID: "florida-sunflower", Publisher: "University of Florida IFAS", Title: "ENHFL04-015, sunflower", Year: "no date", Where: "text", Mark: Seen}
	UtahDahlia          = Source{ID: "utah-dahlia", Publisher: "Utah State University", Title: "Dahlia abstract", Year: "2022", Where: "abstract", Mark: Seen}
	NCStrawberry        = Source{ID: "nc-strawberry", Publisher: "HortTechnology", Title: "Strawberry plasticulture in North Carolina II", Year: "no date", Where: "text", Mark: Seen}
	TradeSeedList       = Source{ID: "trade-seed-list", Publisher: "seed house newsletter and trade lists", Title: "Weeks in the tray, days to harvest", Year: "no date", Where: "lists", Mark: Trade}
	OnionSARE           = Source{ID: "sare-onion", Publisher: "SARE", Title: "ONE09-102, onions on film", Year: "2009", Where: "farm report", Mark: Seen}
	GingerTrade         = Source{ID: "trade-lists", Publisher: "trade and hobby lists", Title: "Ginger, dahlia and flower lists", Year: "no date", Where: "lists", Mark: Trade}
	Zimbabwe2014        = Source{ID: "zimbabwe-2014", Publisher: "Journal of Global Innovations in Agricultural and Social Sciences", Title: "2(4):178–184, cucumber", Year: "2014", Where: "table", Mark: Seen}
	KansasRed           = Source{ID: "kansas-red", Publisher: "Kansas State University, in trade press", Title: "Red film on tomato", Year: "no date", Where: "text", Mark: Seen}
	RAE2020             = Source{ID: "rae-2020", Publisher: "Research in Agricultural Engineering", Title: "Broccoli root zone by film", Year: "2020", Where: "doi 10.17221/84/2019-rae", Mark: Seen}
)

// Sources lists every source in the order of the page's source list.
var Sources = [...]*Source{
	&Practice,
	&Memory,
	&NewEngland,
	&PennColours,
	&PuertoRico1968,
	&Virginia1998,
	&Tomato2010,
	&Georgia2002,
	&TomatoRoots1995,
	&Films1993,
	&ClearFilm2021,
	&WarmthFalls2015,
	&Contact,
	&DryBeds,
	&PepperHeat2011,
	&BioMeta2020,
	&HotFilm,
	&LateSwitch,
	&ColourCompare,
	&Weathering,
	&Retrieval2019,
	&ThinFilm,
	&EN13655,
	&EN17033,
	&OrganicRule,
	&OrganicMemo2015,
	&OrganicMemo2023,
	&StrawberryFilm,
	&FloridaCir805,
	&UtahGuide,
	&BuriedEdge,
	&FilmYieldConstant,
	&Embossing,
	&KansasWeeds,
	&NutsedgeYellow2005,
	&NutsedgePurple2005,
	&NutsedgeTranslucent,
	&NutsedgeGeorgia,
	&PaperNutsedge2018,
	&SilverSquash1993,
	&SilverZucchini1995,
	&SilverPumpkin,
	&SilverThrips,
	&SilverWhitefly2023,
	&CanopyLimit,
	&Gladiolus1965,
	&Guide205,
	&StrawberryBed,
	&FlowerBed1998,
	&GeorgiaBeds2019,
	&RaisedBeds,
	&WhyRaised,
	&UsingFilmDrip,
	&Plasticulture,
	&TilthMichigan,
	&GeorgiaFloors,
	&KansasFloors,
	&MinnesotaWait,
	&FumigantManual,
	&FumigantShort,
	&BarrierFilm2013,
	&HerbicideFilm2009,
	&HerbicideRutgers,
	&RaspberryFilm2020,
	&BioLaying,
	&Runoff,
	&RunoffRye,
	&SweetCornClear,
	&Broccoli2009,
	&Romaine2020,
	&RedNematode1997,
	&Drip1996,
	&PennDrip2013,
	&NCATDrip,
	&ClemsonTape,
	&KansasTape,
	&NewEnglandDrip,
	&Saxton2006,
	&WetterNEH,
	&ClogFlorida,
	&FAO29,
	&FAO56,
	&FAO61,
	&Covers2020,
	&Normals,
	&CFR205,
	&Nutrition,
	&HandLaying,
	&LiftingOSHA,
	&TapeOffset,
	&F56T12,
	&F56T11,
	&F56T22,
	&F56T25,
	&SaltUSDA1990,
	&GermOregon,
	&GermPercent,
	&GermFloridaCopy,
	&ColoradoCopy,
	&SeedTexas,
	&Knott1997,
	&Colorado720,
	&Midwest2022,
	&UtahTomato,
	&UtahSquash,
	&DelawareWarm,
	&DelawareEarly,
	&DelawareMelon,
	&DelawareCole,
	&DelawareVines,
	&DelawareSweetPotato,
	&PurdueTransplants,
	&PurdueHeat,
	&IowaHeat,
	&NorthCarolinaHeat,
	&IllinoisAnnuals,
	&MinnesotaAnnuals,
	&CarolinaGarden,
	&KansasZinnia,
	&FloridaSunflower,
	&UtahDahlia,
	&NCStrawberry,
	&TradeSeedList,
	&OnionSARE,
	&GingerTrade,
	&Zimbabwe2014,
	&KansasRed,
	&RAE2020,
}
