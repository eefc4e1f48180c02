package table

// The sources, each a variable, so that the compiler catches a wrong one. Each has a
// year and an address, or says in one line why it has no address. A page of the web
// without a date is cited by the year in which it was read.
var (
	Practice = Source{ID: "common-practice", Publisher: "the trade", Title: "Common practice of the trade", Year: "2026", Where: "no source",
		NoAddress: "a fact of the trade: nobody in particular said it first", Mark: CommonPractice}
	Memory = Source{ID: "from-memory", Publisher: "this project", Title: "Known from memory, not looked up", Year: "2026", Where: "no source",
		NoAddress: "known, but nobody looked it up yet", Mark: FromMemory}
	NewEngland = Source{ID: "new-england-guide", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, plastic mulch films", Year: "read 2026", Where: "table 14",
		Address: "https://nevegetable.org/book/export/html/45", Mark: Seen}
	PennColours = Source{ID: "penn-colours", Publisher: "University of Massachusetts, quoting Pennsylvania State University", Title: "Text on mulch colors", Year: "read 2026", Where: "as quoted in an almanac answer page",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	PuertoRico1968 = Source{ID: "puerto-rico-1968", Publisher: "Journal of Agriculture of the University of Puerto Rico", Title: "52(1):53–63", Year: "1968", Where: "abstract",
		Address: "https://doi.org/10.46429/jaupr.v52i1.11723", Mark: Seen}
	Virginia1998 = Source{ID: "virginia-1998", Publisher: "Journal of Sustainable Agriculture", Title: "13(1):55–81, tomato on five Virginia farms", Year: "1998", Where: "abstract",
		Address: "https://doi.org/10.1300/J064v13n01_06", Mark: Seen}
	Tomato2010 = Source{ID: "tomato-2010", Publisher: "conference abstract", Title: "Colored plastic mulches on weeds and crop yield, tomato", Year: "2010", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	Georgia2002 = Source{ID: "georgia-2002", Publisher: "Journal of the American Society for Horticultural Science", Title: "127(1):127, tomato root zone, Georgia", Year: "2002", Where: "abstract",
		Address: "https://doi.org/10.21273/JASHS.127.1.127", Mark: Seen}
	TomatoRoots1995 = Source{ID: "tomato-roots-1995", Publisher: "Journal of the American Society for Horticultural Science", Title: "120(5):848–853, black film and vetch under tomato", Year: "1995", Where: "root growth best at 20–30 °C",
		Address: "https://doi.org/10.21273/JASHS.120.5.848", Mark: Seen}
	Films1993 = Source{ID: "films-1993", Publisher: "Journal of the American Society for Horticultural Science", Title: "118(2):188–193, optical properties of eight mulch films", Year: "1993", Where: "abstract",
		Address: "https://doi.org/10.21273/JASHS.118.2.188", Mark: Seen}
	ClearFilm2021 = Source{ID: "clear-film-2021", Publisher: "International Journal of Chemical Studies", Title: "9(1):286–290", Year: "2021", Where: "film transmittance and weed counts",
		Address: "volume 9(1), pages 286–290", Mark: Seen}
	WarmthFalls2015 = Source{ID: "warmth-falls-2015", Publisher: "HortTechnology", Title: "25(2):162, clear, black and white films over four months", Year: "2015", Where: "abstract",
		Address: "https://doi.org/10.21273/HORTTECH.25.2.162", Mark: Seen}
	Contact = Source{ID: "contact-connecticut", Publisher: "University of Connecticut IPM", Title: "The use of different colored mulches for yield and earliness", Year: "read 2026", Where: "ipm.cahnr.uconn.edu",
		Address: "https://ipm.cahnr.uconn.edu", Mark: Seen}
	DryBeds = Source{ID: "dry-beds-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: plastic mulch beds and dry soils", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=10108", Mark: Seen}
	PepperHeat2011 = Source{ID: "pepper-heat-2011", Publisher: "Terra Latinoamericana", Title: "29(4):421–430, bell pepper, Mexico", Year: "2011", Where: "soil above 30 °C at 7.5 cm",
		Address: "volume 29(4), pages 421–430", Mark: Seen}
	BioMeta2020 = Source{ID: "biodegradable-meta-2020", Publisher: "Agronomy", Title: "10:1618, meta-analysis of 66 articles", Year: "2020", Where: "abstract",
		Address: "https://doi.org/10.3390/agronomy10101618", Mark: Seen}
	HotFilm = Source{ID: "hot-film-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: heat and plastic mulch", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=18243", Mark: Seen}
	LateSwitch = Source{ID: "late-switch-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: mulch color by planting date", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=18243", Mark: Seen}
	ColourCompare = Source{ID: "colour-compare-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: mulch color comparisons", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=802", Mark: Seen}
	Weathering = Source{ID: "weathering-double-crop", Publisher: "HortScience", Title: "Film weathering in double cropping, tomato then cucumber", Year: "read 2026", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	Retrieval2019 = Source{ID: "retrieval-2019", Publisher: "University of Florida IFAS Extension", Title: "Film retrieval for recycling, on a North Carolina State trial", Year: "2019", Where: "extension blog",
		NoAddress: "its address was not kept", Mark: Seen}
	ThinFilm = Source{ID: "thin-film-trade", Publisher: "trade magazine", Title: "Article on mulch film thickness", Year: "read 2026", Where: "0.7 mil or less is hard to lift",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	EN13655 = Source{ID: "en-13655-2018", Publisher: "CEN", Title: "EN 13655:2018 thermoplastic mulch films", Year: "2018", Where: "scope",
		Address: "standard EN 13655:2018, clause 1", Mark: Seen}
	EN17033 = Source{ID: "en-17033-2018", Publisher: "CEN", Title: "EN 17033:2018 biodegradable mulch films", Year: "2018", Where: "scope",
		Address: "standard EN 17033:2018, clause 1", Mark: Seen}
	OrganicRule = Source{ID: "organic-rule", Publisher: "US Department of Agriculture", Title: "7 CFR 205.206(c) and 205.601(b), national organic program", Year: "checked 2026", Where: "rule text",
		Address: "https://www.ecfr.gov/current/title-7/section-205.601", Mark: Seen}
	OrganicMemo2015 = Source{ID: "organic-memo-2015", Publisher: "US Department of Agriculture, National Organic Program", Title: "Memo 15-1 on biodegradable biobased mulch film", Year: "2015", Where: "as quoted",
		Address: "Policy Memo 15-1", Mark: Quoted}
	OrganicMemo2023 = Source{ID: "organic-memo-2023", Publisher: "US Department of Agriculture, National Organic Program", Title: "Memo to the standards board on biodegradable biobased mulch film", Year: "2023", Where: "as told in Organic Grower, 27 September 2023",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	StrawberryFilm = Source{ID: "strawberry-film", Publisher: "university strawberry bulletin", Title: "Film for strawberry beds", Year: "read 2026", Where: "1–1.5 mil, 48–60 in",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	FloridaCir805 = Source{ID: "florida-cir805", Publisher: "University of Florida IFAS", Title: "Circular 805 (CV213), polyethylene mulches for vegetables", Year: "read 2026", Where: "figure and text",
		Address: "Circular 805 (CV213), figure and text", Mark: Seen}
	UtahGuide = Source{ID: "utah-guide", Publisher: "Utah State University", Title: "Utah Vegetable Production Guide", Year: "read 2026", Where: "plasticulture pages",
		Address: "http://vegetableguide.usu.edu", Mark: Seen}
	BuriedEdge = Source{ID: "buried-edge", Publisher: "equipment dealer's page", Title: "Buried film edge of walk-behind layers", Year: "read 2026", Where: "4–6 in each side",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	FilmYieldConstant = Source{ID: "film-yield-constant", Publisher: "film maker's user manual", Title: "Area of polyethylene for a pound at 1 mil", Year: "read 2026", Where: "30,000 in²",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	Embossing = Source{ID: "embossing", Publisher: "extension wording, repeated", Title: "Embossed film and heat", Year: "read 2026", Where: "general text",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	KansasWeeds = Source{ID: "kansas-weeds", Publisher: "Kansas State University", Title: "MF-1091, plastic mulches", Year: "read 2026", Where: "weeds",
		Address: "publication MF-1091", Mark: Seen}
	NutsedgeYellow2005 = Source{ID: "nutsedge-yellow-2005", Publisher: "Weed Science", Title: "53(6), yellow nutsedge under film, pots, 16 weeks", Year: "2005", Where: "WS-05-029R",
		Address: "https://doi.org/10.1614/WS-05-029R.1", Mark: Seen}
	NutsedgePurple2005 = Source{ID: "nutsedge-purple-2005", Publisher: "Weed Science", Title: "53(6), purple nutsedge patches, field", Year: "2005", Where: "WS-05-045R",
		Address: "https://doi.org/10.1614/WS-05-045R.1", Mark: Seen}
	NutsedgeTranslucent = Source{ID: "nutsedge-translucent", Publisher: "Weed Technology", Title: "Suppression of purple nutsedge with polyethylene film mulch", Year: "read 2026", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	NutsedgeGeorgia = Source{ID: "nutsedge-georgia", Publisher: "USDA Agricultural Research Service", Title: "Publication 218928, mixed nutsedge under films, Georgia 2006–07", Year: "2008", Where: "abstract",
		Address: "USDA ARS publication 218928", Mark: Seen}
	PaperNutsedge2018 = Source{ID: "paper-nutsedge-2018", Publisher: "HortScience", Title: "53(3):288–294, paper and plastic mulches, pumpkin", Year: "2018", Where: "abstract",
		Address: "https://doi.org/10.21273/HORTSCI12630-17", Mark: Seen}
	SilverSquash1993 = Source{ID: "silver-squash-1993", Publisher: "HortScience", Title: "28(9):895, mosaic in yellow squash, Alabama", Year: "1993", Where: "abstract",
		Address: "https://doi.org/10.21273/HORTSCI.28.9.895", Mark: Seen}
	SilverZucchini1995 = Source{ID: "silver-zucchini-1995", Publisher: "Plant Disease", Title: "79:1126, zucchini, California", Year: "1995", Where: "abstract",
		Address: "https://doi.org/10.1094/PD-79-1126", Mark: Seen}
	SilverPumpkin = Source{ID: "silver-pumpkin", Publisher: "conference abstract", Title: "Reflective and black mulch in pumpkins, four years, US Midwest", Year: "read 2026", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	SilverThrips = Source{ID: "silver-thrips-florida", Publisher: "University of Florida IFAS", Title: "IPM-200, thrips virus of tomato and pepper", Year: "read 2026", Where: "figure 4",
		Address: "publication IPM-200, figure 4", Mark: Seen}
	SilverWhitefly2023 = Source{ID: "silver-whitefly-2023", Publisher: "Insects", Title: "14(11):863", Year: "2023", Where: "abstract",
		Address: "https://doi.org/10.3390/insects14110863", Mark: Seen}
	CanopyLimit = Source{ID: "canopy-limit-california", Publisher: "University of California IPM", Title: "Reflective mulches, floriculture guidelines", Year: "read 2026", Where: "60 % cover",
		NoAddress: "its address was not kept", Mark: Seen}
	Gladiolus1965 = Source{ID: "gladiolus-1965", Publisher: "journal abstract", Title: "Reflective surfaces used to repel dispersing aphids, gladiolus", Year: "1965", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	Guide205 = Source{ID: "new-england-laying", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, laying film", Year: "read 2026", Where: "field capacity; hand laying",
		Address: "https://nevegetable.org/book/export/html/45", Mark: Seen}
	StrawberryBed = Source{ID: "strawberry-bed-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: strawberry beds", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=4752", Mark: Seen}
	StrawberryAir = Source{ID: "strawberry-air-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: strawberries and air temperature", Year: "2023", Where: "day and night temperatures",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=22464", Mark: Seen}
	StrawberryLate = Source{ID: "strawberry-late-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: annual plasticulture strawberry planting", Year: "read 2026", Where: "late plantings",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=496", Mark: Seen}
	StrawberryDates = Source{ID: "strawberry-dates-nc", Publisher: "North Carolina State Extension", Title: "Strawberries: late planting and the use of floating row covers", Year: "2022", Where: "table 1",
		Address: "https://content.ces.ncsu.edu/strawberries-late-planting-and-the-use-of-floating-row-covers", Mark: Seen}
	FlowerBed1998 = Source{ID: "flower-bed-1998", Publisher: "North Carolina State University", Title: "Flower Growers' Bulletin 43(4)", Year: "1998", Where: "bed height",
		Address: "volume 43(4)", Mark: Seen}
	GeorgiaBeds2019 = Source{ID: "georgia-beds-2019", Publisher: "University of Georgia Extension", Title: "Crops per laying and vegetable beds", Year: "2019", Where: "economics blog",
		NoAddress: "its address was not kept", Mark: Seen}
	RaisedBeds = Source{ID: "raised-beds-new-england", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, raised beds", Year: "read 2026", Where: "4 in limit without irrigation",
		Address: "https://nevegetable.org/book/export/html/45", Mark: Seen}
	WhyRaised = Source{ID: "why-raised-nc", Publisher: "North Carolina State University", Title: "AG-489, plasticulture for commercial vegetables", Year: "read 2026", Where: "raised beds",
		Address: "publication AG-489", Mark: Seen}
	UsingFilmDrip = Source{ID: "using-film-drip-nc", Publisher: "North Carolina State University", Title: "Using plastic mulches and drip irrigation for vegetables", Year: "read 2026", Where: "bed firm, no puddles",
		NoAddress: "its address was not kept", Mark: Seen}
	Plasticulture = Source{ID: "plasticulture-michigan", Publisher: "Michigan State University Extension", Title: "Is plasticulture worth it for vegetable production?", Year: "read 2026", Where: "tractor, poor fits",
		Address: "https://www.canr.msu.edu/news/is_plasticulture_worth_it_for_vegetable_production", Mark: Seen}
	TilthMichigan = Source{ID: "tilth-michigan", Publisher: "Michigan State University Extension", Title: "Film contact and tilth", Year: "2016", Where: "in trade press",
		NoAddress: "read only as another page gives it", Mark: Seen}
	GeorgiaFloors = Source{ID: "georgia-floors-2000", Publisher: "University of Georgia", Title: "Minimum soil temperatures by crop, three mornings", Year: "2000", Where: "newswire",
		Address: "https://newswire.caes.uga.edu/story/822/garden-patience.html", Mark: Seen}
	KansasFloors = Source{ID: "kansas-floors", Publisher: "Kansas State University, in a newspaper", Title: "Soil temperature before planting", Year: "read 2026", Where: "2.5 in deep, 4–5 days",
		Address: "https://ruralmessenger.com/kansas-news/horticulture/dont-ignore-soil-temperature-when-planting-vegetables", Mark: Quoted}
	UtahTension = Source{ID: "utah-tension", Publisher: "Utah State University Extension", Title: "Vegetable guide, tomato, pepper and eggplant: irrigation", Year: "read 2026", Where: "table of soil tension by texture for drip",
		Address: "https://extension.usu.edu/vegetableguide/tomato-pepper-eggplant/irrigation", Mark: Seen}
	FeelNRCS = Source{ID: "nrcs-feel", Publisher: "USDA Natural Resources Conservation Service", Title: "Estimating soil moisture by feel and appearance", Year: "read 2026", Where: "clay and clay loam on the Wyoming page; sand to loam in a copy of the same table",
		Address: "https://www.nrcs.usda.gov/wps/portal/nrcs/detail/wy/technical/?cid=nrcs142p2_026828", Mark: Quoted}
	MinnesotaWait = Source{ID: "minnesota-wait", Publisher: "University of Minnesota Extension", Title: "Extending the growing season", Year: "2018", Where: "1–2 weeks before planting",
		Address: "https://extension.umn.edu/planting-and-growing-guides/extending-growing-season", Mark: Seen}
	FumigantManual = Source{ID: "fumigant-manual", Publisher: "old US public-works manual MO-314", Title: "Metam-type fumigants", Year: "read 2026", Where: "14–21 days; not a label",
		Address: "manual MO-314", Mark: Seen}
	FumigantShort = Source{ID: "fumigant-short", Publisher: "Crop Protection", Title: "21:973–982, airing after fumigation", Year: "2002", Where: "abstract",
		Address: "volume 21, pages 973–982", Mark: Seen}
	BarrierFilm2013 = Source{ID: "barrier-film-2013", Publisher: "California Agriculture", Title: "67(4):217, totally impermeable film", Year: "2013", Where: "emissions",
		Address: "volume 67(4), page 217", Mark: Seen}
	HerbicideFilm2009 = Source{ID: "herbicide-film-2009", Publisher: "Weed Technology", Title: "23(3), herbicides washed from film", Year: "2009", Where: "abstract",
		Address: "volume 23(3)", Mark: Seen}
	HerbicideRutgers = Source{ID: "herbicide-rutgers", Publisher: "Rutgers University", Title: "Plant & Pest Advisory on glyphosate and film", Year: "read 2026", Where: "advisory",
		Address: "https://plant-pest-advisory.rutgers.edu", Mark: Seen}
	RaspberryFilm2020 = Source{ID: "raspberry-film-2020", Publisher: "Horticulturae", Title: "Buried biodegradable film after 18 months", Year: "2020", Where: "Washington",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	BioLaying = Source{ID: "bio-laying", Publisher: "University of Tennessee and Washington State University", Title: "Applying biodegradable mulches", Year: "read 2026", Where: "tension, timing",
		NoAddress: "its address was not kept", Mark: Seen}
	MidAtlanticPepper = Source{ID: "mid-atlantic-pepper", Publisher: "Mid-Atlantic land-grant universities", Title: "Commercial Vegetable Production Recommendations, pepper: opaque white in summer and late spring", Year: "read 2026", Where: "as Rutgers University quotes it",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	SaskatchewanFilms = Source{ID: "saskatchewan-films", Publisher: "Agriculture Canada, Saskatchewan Irrigation Diversification Centre", Title: "Plastic mulches for commercial vegetable production", Year: "read 2026", Where: "text",
		Address: "http://www.agr.gc.ca/eng/?id=1190147996765", Mark: Seen}
	SaskatchewanColours = Source{ID: "saskatchewan-colours", Publisher: "University of Saskatchewan", Title: "Vegetable cultivar and cultural trials, evaluation of coloured mulches", Year: "2007", Where: "text",
		Address: "http://businessdocbox.com/Agriculture/97116943-Vegetable-cultivar-and-cultural-trials.html", Mark: Seen}
	AlaskaCorn1991 = Source{ID: "alaska-corn-1991", Publisher: "Alaska Agricultural Experiment Station", Title: "IRT-76 mulch film and growth of sweet corn in Fairbanks", Year: "1991", Where: "abstract",
		Address: "https://scholarworks.alaska.edu/handle/11122/2093", Mark: Seen}
	QuebecMelon1998 = Source{ID: "quebec-melon-1998", Publisher: "HortScience", Title: "33(2):215, muskmelon with mulches, covers and thermal tubes, Quebec", Year: "1998", Where: "abstract",
		Address: "volume 33(2), page 215", Mark: Seen}
	SilverOnion2006 = Source{ID: "silver-onion-2006", Publisher: "Cornell University, in a SARE report", Title: "ONE06-062, reflective mulch to repel thrips in onions", Year: "2006", Where: "results",
		Address: "https://projects.sare.org/project-reports/one06-062/", Mark: Seen}
	MinnesotaBerries = Source{ID: "minnesota-berries-2018", Publisher: "University of Minnesota", Title: "Spring planting of day-neutral strawberries in a low tunnel system", Year: "2018", Where: "text",
		Address: "http://fruit.cfans.umn.edu/tag/drip-tape-installation/", Mark: Seen}
	FloridaDouble2018 = Source{ID: "florida-double-2018", Publisher: "University of Florida IFAS", Title: "Panhandle Ag: double cropping options for a fall vegetable crop", Year: "2018", Where: "text",
		Address: "http://nwdistrict.ifas.ufl.edu/phag/2018/07/27/double-cropping-options-for-a-fall-vegetable-crop/", Mark: Seen}
	PaperSmall = Source{ID: "paper-small-scale", Publisher: "journal abstract", Title: "Weed suppression and labor costs of organic, plastic and paper mulches in small-scale vegetables", Year: "read 2026", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	CompactLayers = Source{ID: "compact-layers-rutgers", Publisher: "Rutgers University", Title: "Farm calls: raised bed mulch layers for high tunnels", Year: "read 2026", Where: "23–25 hp for a bed 4 in high, 30–35 hp for 4-ft film",
		Address: "https://sustainable-farming.rutgers.edu/farm-calls-raised-bed-mulch-layers-for-high-tunnels/", Mark: Seen}
	Runoff = Source{ID: "runoff-usda", Publisher: "USDA Agricultural Research Service", Title: "Three-year runoff study, film and vetch", Year: "read 2026", Where: "as told in a farm newspaper",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	RunoffRye = Source{ID: "runoff-rye-2001", Publisher: "USDA Agricultural Research Service", Title: "Publication 124366, rye in film-bed furrows", Year: "2001", Where: "abstract",
		Address: "USDA ARS publication 124366", Mark: Seen}
	SweetCornClear = Source{ID: "sweet-corn-clear-iowa", Publisher: "Iowa State University", Title: "Clear mulch and row covers in sweet corn, 1996–97", Year: "1997", Where: "abstract and thesis record",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	Broccoli2009 = Source{ID: "broccoli-2009", Publisher: "Scientia Horticulturae", Title: "123:156–163, broccoli root zone", Year: "2009", Where: "trade summary",
		Address: "volume 123, pages 156–163", Mark: Quoted}
	Romaine2020 = Source{ID: "romaine-2020", Publisher: "HortTechnology", Title: "30(4):510, spring romaine on black film", Year: "2020", Where: "abstract",
		Address: "volume 30(4), page 510", Mark: Seen}
	RedNematode1997 = Source{ID: "red-nematode-1997", Publisher: "Journal of Nematology", Title: "29(4):538–546, red, white and black film", Year: "1997", Where: "abstract",
		Address: "volume 29(4), pages 538–546", Mark: Seen}
	Drip1996 = Source{ID: "drip-1996", Publisher: "HortTechnology", Title: "6(3):155, design considerations for vegetable crop drip irrigation", Year: "1996", Where: "abstract",
		Address: "https://doi.org/10.21273/HORTTECH.6.3.155", Mark: Seen}
	PennDrip2013 = Source{ID: "penn-drip-2013", Publisher: "Pennsylvania State University Extension", Title: "Determining how long to run drip irrigation systems for vegetables", Year: "2013", Where: "table, 8 psi, 30 in bed",
		Address: "http://extension.psu.edu/plants/vegetable-fruit/news/2013/determining-how-long-to-run-drip-irrigation-systems-for-vegetables", Mark: Seen}
	NCATDrip = Source{ID: "ncat-drip", Publisher: "NCAT ATTRA", Title: "How do I determine how long and how often", Year: "read 2026", Where: "157 minutes",
		Address: "https://attra.ncat.org/how-do-i-determine-how/", Mark: Seen}
	ClemsonTape = Source{ID: "clemson-tape", Publisher: "Clemson Cooperative Extension", Title: "Landscape irrigation equipment part 4: drip tape", Year: "read 2026", Where: "emitters 8–12 in",
		Address: "https://hgic.clemson.edu", Mark: Seen}
	KansasTape = Source{ID: "kansas-tape", Publisher: "Kansas State University", Title: "Drip irrigation of row crops: state of the art", Year: "read 2026", Where: "table 1",
		Address: "http://www.ksre.k-state.edu/sdi/Abstracts/Drip%20Irrigation%20of%20Row%20Crops.htm", Mark: Seen}
	NewEnglandDrip = Source{ID: "new-england-drip", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, irrigation", Year: "read 2026", Where: "tape and sandy beds",
		Address: "https://nevegetable.org", Mark: Seen}
	Saxton2006 = Source{ID: "saxton-2006", Publisher: "Soil Science Society of America Journal", Title: "70:1569–1578, soil water characteristic estimates", Year: "2006", Where: "abstract",
		Address: "https://doi.org/10.2136/sssaj2005.0117", Mark: Seen}
	WetterNEH = Source{ID: "neh-wetted", Publisher: "USDA NRCS", Title: "National Engineering Handbook 623 chapter 7", Year: "read 2026", Where: "wetted diameter",
		Address: "part 623, chapter 7", Mark: FromMemory}
	ClogFlorida = Source{ID: "clog-florida", Publisher: "University of Florida FAWN", Title: "Micro-irrigation maintenance", Year: "read 2026", Where: "table 1",
		NoAddress: "its address was not kept", Mark: Seen}
	FAO29 = Source{ID: "fao-29", Publisher: "FAO", Title: "Irrigation and Drainage Paper 29 rev. 1, water quality for agriculture", Year: "1985", Where: "as tabled in PMC9128324",
		Address: "https://www.ncbi.nlm.nih.gov/pmc/articles/PMC9128324/", Mark: Quoted}
	FAO56 = Source{ID: "fao-56", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, crop evapotranspiration", Year: "1998", Where: "equations",
		Address: "http://www.fao.org/3/x0490e/x0490e00.htm", Mark: Seen}
	FAO61 = Source{ID: "fao-61", Publisher: "FAO", Title: "Irrigation and Drainage Paper 61, annex 1", Year: "2002", Where: "two-line salt model",
		Address: "Irrigation and Drainage Paper 61, annex 1", Mark: Seen}
	Covers2020 = Source{ID: "covers-2020", Publisher: "Idaho newspaper column", Title: "Row covers give 2–4 °F", Year: "2020", Where: "12 February",
		NoAddress: "its address was not kept", Mark: Trade}
	Normals = Source{ID: "us-normals", Publisher: "US NOAA National Centers for Environmental Information", Title: "1981–2010 US Climate Normals", Year: "2011", Where: "monthly minima and maxima",
		Address: "https://www.ncei.noaa.gov/products/land-based-station/us-climate-normals", Mark: Seen}
	CFR205 = Source{ID: "cfr-205", Publisher: "US Department of Agriculture", Title: "7 CFR 205.206(c)(6)", Year: "checked 2026", Where: "removal of plastic mulch",
		Address: "https://www.ecfr.gov/current/title-7/section-205.206", Mark: Seen}
	Nutrition = Source{ID: "nutsedge-kinds-georgia", Publisher: "University of Georgia", Title: "Purple nutsedge spread under film", Year: "read 2026", Where: "trade press",
		NoAddress: "read only as another page gives it", Mark: Seen}
	LiftingOSHA = Source{ID: "lifting-osha", Publisher: "OSHA", Title: "NIOSH lifting recommendations", Year: "read 2026", Where: "poultry processing pages: 51 lb at the best",
		NoAddress: "its address was not kept", Mark: Seen}
	HandLaying = Source{ID: "hand-laying-farm", Publisher: "farm weblog", Title: "Nine rows of 150 ft laid by hand", Year: "2011", Where: "person-hours",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	TapeOffset = Source{ID: "tape-offset", Publisher: "horticulture magazine", Title: "Tape laid off the plant line", Year: "read 2026", Where: "reader question",
		NoAddress: "its address was not kept", Mark: Trade}
	F56T12 = Source{ID: "fao-56-table-12", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 12 crop coefficients", Year: "1998", Where: "three open copies compared",
		Address: "http://www.fao.org/3/x0490e/x0490e00.htm", Mark: Seen}
	ColdColumn = Source{ID: "cold-tolerance-column", Publisher: "garden column, Georgia", Title: "Cold tolerance of vegetables", Year: "read 2026", Where: "text: some stand short spells below 20 °F, others 26 °F without being killed",
		NoAddress: "the page bears its writer's name", Mark: Trade}
	HuskTomato2014 = Source{ID: "husk-tomato-2014", Publisher: "Journal of Water Resource and Protection", Title: "Water use efficiency in husk tomato with improved irrigation management, Tabasco", Year: "2014", Where: "6(13), abstract: coefficients proposed for drip under plastic",
		Address: "https://doi.org/10.4236/jwarp.2014.613114", Mark: Seen}
	F56T11 = Source{ID: "fao-56-table-11", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 11 stage lengths", Year: "1998", Where: "one open copy",
		Address: "http://www.fao.org/3/x0490e/x0490e00.htm", Mark: Seen}
	F56T22 = Source{ID: "fao-56-table-22", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 22 root depth and depletion", Year: "1998", Where: "one open copy; chapter 8 for crops in general",
		Address: "http://www.fao.org/3/x0490e/x0490e00.htm", Mark: Seen}
	F56T25 = Source{ID: "fao-56-table-25", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 25 coefficients under plastic", Year: "1998", Where: "pages 195–196",
		Address: "http://www.fao.org/3/x0490e/x0490e00.htm", Mark: Seen}
	SaltUSDA1990 = Source{ID: "salt-usda-1990", Publisher: "USDA ARS Salinity Laboratory", Title: "Relative salt tolerance of herbaceous crops", Year: "1990", Where: "list",
		Address: "https://webarchive.library.unt.edu/eot2008/20090508111628/http://www.ussl.ars.usda.gov/pls/caliche/SALTT42C", Mark: Seen}
	GermOregon = Source{ID: "germination-oregon", Publisher: "Oregon State University Extension", Title: "Soil temperature conditions for vegetable seed germination", Year: "2013", Where: "reviewed 2024",
		Address: "https://extension.oregonstate.edu/gardening/soil-compost/soil-temperature-conditions-vegetable-seed-germination", Mark: Seen}
	GermPercent = Source{ID: "germination-percent", Publisher: "hobby site", Title: "Percent of normal seedlings by temperature", Year: "read 2026", Where: "table copy",
		NoAddress: "read only as another page gives it", Mark: Trade}
	GermFloridaCopy = Source{ID: "germination-florida", Publisher: "garden site, after University of Florida IFAS", Title: "Minimum, optimum and maximum germination temperatures", Year: "read 2026", Where: "copy",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	ColoradoCopy = Source{ID: "colorado-copy", Publisher: "garden site, after Colorado State University", Title: "Vegetable planting table", Year: "read 2026", Where: "copy",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	SeedTexas = Source{ID: "seeding-texas", Publisher: "Texas A&M University", Title: "Earth-Kind gardening, soil temperature", Year: "read 2026", Where: "realistic seeding temperatures",
		Address: "http://aggie-horticulture.tamu.edu/archives/parsons/earthkind/ekgarden15.html", Mark: Seen}
	Knott1997 = Source{ID: "handbook-1997", Publisher: "Handbook for Vegetable Growers, reprinted by University of California Santa Cruz", Title: "Monthly temperatures for best growth and quality", Year: "1997", Where: "unit 1.3 appendix 5",
		Address: "https://issuhub.com/view/index/3972?pageIndex=133", Mark: Quoted}
	Colorado720 = Source{ID: "colorado-720", Publisher: "Colorado State University", Title: "GardenNotes 720, vegetable planting guide", Year: "read 2026", Where: "frost classes",
		Address: "GardenNotes 720", Mark: Seen}
	Midwest2022 = Source{ID: "midwest-2022", Publisher: "eight US land-grant universities", Title: "Midwest Vegetable Production Guide", Year: "2022", Where: "crop chapters",
		Address: "http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/101", Mark: Seen}
	UtahTomato = Source{ID: "utah-tomato-pepper", Publisher: "Utah State University", Title: "Utah Vegetable Production Guide: tomato, pepper, eggplant", Year: "read 2026", Where: "planting",
		Address: "http://vegetableguide.usu.edu", Mark: Seen}
	UtahSquash = Source{ID: "utah-cucumber-squash", Publisher: "Utah State University", Title: "Utah Vegetable Production Guide: cucumber, squash", Year: "read 2026", Where: "planting",
		Address: "http://vegetableguide.usu.edu/production/cucumber-pumpkin-squash-production/planting-thinning", Mark: Seen}
	DelawareWarm = Source{ID: "transplants-delaware-936", Publisher: "University of Delaware", Title: "Weekly Crop Update: transplants and weather", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=936", Mark: Seen}
	DelawareEarly = Source{ID: "transplants-delaware-12984", Publisher: "University of Delaware", Title: "Weekly Crop Update: early transplanting", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=12984", Mark: Seen}
	DelawareMelon = Source{ID: "watermelon-delaware-5188", Publisher: "University of Delaware", Title: "Weekly Crop Update: seedless watermelon spacing", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=5188", Mark: Seen}
	DelawareCole = Source{ID: "cole-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: cole crops and heat", Year: "read 2026", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	DelawareVines = Source{ID: "vines-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update 25(16): vine crops and heat", Year: "2017", Where: "text",
		Address: "https://vdocument.in/volume-25-issue-16-july-14-2017-vegetable-crops-volume-25-issue-16-july-14-2017.html", Mark: Seen}
	DelawareSweetPotato = Source{ID: "sweet-potato-delaware", Publisher: "University of Delaware, in trade press", Title: "Sweet potato spacing", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Seen}
	PurdueTransplants = Source{ID: "purdue-transplants", Publisher: "Purdue University", Title: "Vegetable Crops Hotline: transplants in cool weather", Year: "read 2026", Where: "cucurbits",
		Address: "https://vegcropshotline.org", Mark: Seen}
	IowaHeat = Source{ID: "iowa-heat", Publisher: "Iowa State University Extension", Title: "Weather problems of vegetables", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Seen}
	NorthCarolinaHeat = Source{ID: "north-carolina-heat", Publisher: "North Carolina Cooperative Extension", Title: "Column on tomato heat", Year: "2012", Where: "text",
		NoAddress: "its address was not kept", Mark: Seen}
	IllinoisAnnuals = Source{ID: "illinois-annuals", Publisher: "University of Illinois Extension", Title: "Annual flowers, hardiness", Year: "read 2026", Where: "list",
		NoAddress: "read only as another page gives it", Mark: Seen}
	MinnesotaAnnuals = Source{ID: "minnesota-annuals", Publisher: "University of Minnesota Extension", Title: "Half-hardy annuals", Year: "read 2026", Where: "list",
		Address: "http://www.extension.umn.edu/Garden/landscaping/maint/half_hardy_annuals.html", Mark: Seen}
	CarolinaGarden = Source{ID: "carolina-garden", Publisher: "Carolina garden site", Title: "Annual flowers", Year: "read 2026", Where: "list",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	KansasZinnia = Source{ID: "kansas-zinnia", Publisher: "Kansas State University", Title: "MF-1079, zinnia", Year: "read 2026", Where: "text",
		Address: "publication MF-1079", Mark: Seen}
	FloridaSunflower = Source{ID: "florida-sunflower", Publisher: "University of Florida IFAS", Title: "ENHFL04-015, sunflower", Year: "read 2026", Where: "text",
		Address: "publication ENHFL04-015", Mark: Seen}
	UtahDahlia = Source{ID: "utah-dahlia", Publisher: "Utah State University", Title: "Dahlia abstract", Year: "2022", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	NCStrawberry = Source{ID: "nc-strawberry", Publisher: "HortTechnology", Title: "Strawberry plasticulture in North Carolina II", Year: "1993", Where: "text",
		Address: "https://journals.ashs.org/horttech/view/journals/horttech/3/4/article-p383.xml", Mark: Seen}
	TradeSeedList = Source{ID: "trade-seed-list", Publisher: "seed house newsletter and trade lists", Title: "Weeks in the tray, days to harvest", Year: "read 2026", Where: "lists",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	OnionSARE = Source{ID: "sare-onion", Publisher: "SARE", Title: "ONE09-102, onions on film", Year: "2009", Where: "farm report",
		Address: "project ONE09-102", Mark: Seen}
	GingerTrade = Source{ID: "trade-lists", Publisher: "trade and hobby lists", Title: "Ginger, dahlia and flower lists", Year: "read 2026", Where: "lists",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	Zimbabwe2014 = Source{ID: "zimbabwe-2014", Publisher: "Journal of Global Innovations in Agricultural and Social Sciences", Title: "2(4):178–184, cucumber", Year: "2014", Where: "table",
		Address: "volume 2(4), pages 178–184", Mark: Seen}
	KansasRed = Source{ID: "kansas-red", Publisher: "Kansas State University, in trade press", Title: "Red film on tomato", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Seen}
	RAE2020 = Source{ID: "rae-2020", Publisher: "Research in Agricultural Engineering", Title: "Broccoli root zone by film", Year: "2020", Where: "abstract",
		Address: "https://doi.org/10.17221/84/2019-rae", Mark: Seen}
	F56T23 = Source{ID: "fao-56-table-23", Publisher: "FAO", Title: "Irrigation and Drainage Paper 56, table 23 salt tolerance", Year: "1998", Where: "page 178",
		Address: "http://www.fao.org/3/x0490e/x0490e00.htm", Mark: Seen}
	PepperRoots = Source{ID: "pepper-roots", Publisher: "journal article", Title: "Root-zone temperature effects on pepper", Year: "read 2026", Where: "abstract",
		Address: "https://scilit.com/publications/998f251cddc668d469586883afd70f05", Mark: Seen}
	TomatoAirRoots = Source{ID: "tomato-air-roots", Publisher: "journal article", Title: "Interactions between air and root temperatures on greenhouse tomato", Year: "read 2026", Where: "abstract",
		Address: "https://scilit.com/publications/f45c41cce45afc07e5f2f89b64256eae", Mark: Seen}
	MuskmelonRoots1998 = Source{ID: "muskmelon-roots-1998", Publisher: "Journal of Plant Nutrition", Title: "21(2):321–328, root-zone temperature and nutrient uptake of muskmelon", Year: "1998", Where: "abstract",
		Address: "https://doi.org/10.1080/01904169809365406", Mark: Seen}
	CucumberRoots = Source{ID: "cucumber-roots", Publisher: "Plant and Soil", Title: "Influence of root-zone temperature on growth, development and yield of cucumber", Year: "read 2026", Where: "summary",
		Address: "https://doi.org/10.1007/BF02220188", Mark: Seen}
	MaizeRoots = Source{ID: "maize-roots", Publisher: "teaching notes", Title: "Effect of soil temperature on plant growth", Year: "read 2026", Where: "table",
		NoAddress: "read only as another page gives it", Mark: Trade}
	SweetPotatoRoots = Source{ID: "sweet-potato-roots", Publisher: "journal article", Title: "Sweet potato at soil temperatures of 23, 27 and 32 °C", Year: "read 2026", Where: "abstract",
		Address: "https://discovery.researcher.life/topic/sweetpotato-tuberous-roots/18735322?page=6", Mark: Seen}
	SpinachRoots2025 = Source{ID: "spinach-roots-2025", Publisher: "Sustainability", Title: "17(9):3925, root-zone cooling of spinach", Year: "2025", Where: "abstract",
		Address: "https://doi.org/10.3390/su17093925", Mark: Seen}
	SpinachSolution = Source{ID: "spinach-solution", Publisher: "Journal of Society of High Technology in Agriculture", Title: "10(4):225, nutrient-solution temperature and root activity of spinach", Year: "read 2026", Where: "abstract",
		Address: "https://www.jstage.jst.go.jp/article/jshita1991/10/4/10_4_225/_article/-char/en", Mark: Seen}
	CarrotRoots = Source{ID: "carrot-roots", Publisher: "Journal of the American Society for Horticultural Science", Title: "Early root growth of carrots in organic soil", Year: "read 2026", Where: "abstract",
		Address: "https://discovery.researcher.life/article/early-root-growth-of-carrots-in-organic-soil1/7a85712869e730a7a61594e1ff2f3bec", Mark: Seen}
	PeaRoots = Source{ID: "pea-roots", Publisher: "review preprint", Title: "Temperature and root systems, giving a pea study of 1993", Year: "read 2026", Where: "section 3.3",
		Address: "https://flamechallenge.authorea.com/users/349653/articles/474618/download_zip", Mark: Quoted}
	BeanNodules1989 = Source{ID: "bean-nodules-1989", Publisher: "Crop Science", Title: "29(5):1260–1265, highest temperature for nodules of common bean", Year: "1989", Where: "abstract",
		Address: "https://dl.sciencesocieties.org/publications/cs/abstracts/29/5/CS0290051260", Mark: Seen}
	Snapdragon1992 = Source{ID: "snapdragon-1992", Publisher: "HortScience", Title: "27(7):796–798, air and root-zone temperature of snapdragons", Year: "1992", Where: "abstract",
		Address: "https://doi.org/10.3389/fpls.2020.592171", Mark: Seen}
	Lisianthus1992 = Source{ID: "lisianthus-1992", Publisher: "HortScience", Title: "27(8):885–887, rosetting of lisianthus at high temperature", Year: "1992", Where: "abstract",
		Address: "https://doi.org/10.21273/hortsci.27.8.885", Mark: Seen}
	SoillessRoots = Source{ID: "soilless-roots", Publisher: "book chapter, copied", Title: "Best temperature of the nutrient solution, giving a source of 2008", Year: "read 2026", Where: "text",
		Address: "https://www.medicinalplantsarchive.us/nutrient-solution/a-considerations-about-the-optimum-nutrient-solution-temperature.html", Mark: Quoted}
	WisconsinHeat = Source{ID: "wisconsin-heat", Publisher: "University of Wisconsin Extension", Title: "Flowering and fruiting problems of solanaceous and vine crops", Year: "2018", Where: "text",
		Address: "https://gardensnips.wordpress.com/2018/06/21/flowering-and-fruiting-issues-in-solanaceous-and-cucurbit-crops/", Mark: Seen}
	CornellHeat = Source{ID: "cornell-heat", Publisher: "Cornell University", Title: "Heat and garden vegetables", Year: "read 2026", Where: "text",
		Address: "https://blogs.cornell.edu/fruition/tag/cornell", Mark: Seen}
	ClimateHorticulture = Source{ID: "climate-horticulture", Publisher: "book excerpt", Title: "Climate dynamics in horticultural science, section 10.4", Year: "read 2026", Where: "text",
		Address: "http://what-when-how.com/Tutorial/topic-326eiacka/Climate-Dynamics-in-Horticultural-Science-196.html", Mark: Quoted}
	CoolHeat = Source{ID: "cool-heat", Publisher: "garden web magazine", Title: "Soil and air temperatures for growing vegetables", Year: "read 2026", Where: "highest air for cool-weather crops",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	DelawareCorn = Source{ID: "corn-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: corn reproduction and high temperatures", Year: "read 2026", Where: "grain fill",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=12200", Mark: Seen}
	DelawareSeedless = Source{ID: "seedless-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: seedless watermelon transplants", Year: "read 2026", Where: "germination",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=1714", Mark: Seen}
	SeedlessIllinois = Source{ID: "seedless-illinois", Publisher: "garden site, after University of Illinois Extension", Title: "Seedless watermelon", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	MissouriCole2018 = Source{ID: "missouri-cole-2018", Publisher: "University of Missouri", Title: "Cole crops harmed by hot weather", Year: "2018", Where: "text",
		Address: "https://ipm.missouri.edu/MEG/2018/8/coleCrops/", Mark: Seen}
	ColePractices = Source{ID: "cole-practices", Publisher: "growers' paper", Title: "Best practices for cole crops in heat", Year: "read 2026", Where: "text",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	StrawberryHeat = Source{ID: "strawberry-heat", Publisher: "farm weblog, after Horticultura Brasileira 31:93", Title: "High temperatures and strawberries", Year: "read 2026", Where: "flower induction",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	Luset2006 = Source{ID: "luset-2006", Publisher: "International Rice Research Institute", Title: "Land use suitability evaluation tool, crop requirements", Year: "2006", Where: "end of the best classes",
		Address: "https://github.com/alstat/ALUES", Mark: Seen}
	EcoCrop = Source{ID: "ecocrop", Publisher: "FAO", Title: "EcoCrop, best range of mean temperature", Year: "2024", Where: "row of the species",
		Address: "https://github.com/OpenCLIM/ecocrop", Mark: Seen}
	CarolinaCool = Source{ID: "carolina-cool", Publisher: "North Carolina Cooperative Extension, newspaper column", Title: "Cool season crops, soil 4 in deep", Year: "2017", Where: "list at 50 °F",
		Address: "https://www.ourdavie.com/2017/02/23/growing-a-better-garden-cool-season-crops/", Mark: Seen}
	NebraskaCool = Source{ID: "nebraska-cool", Publisher: "University of Nebraska Extension", Title: "Cool season vegetables", Year: "read 2026", Where: "text",
		Address: "https://extension.unl.edu/statewide/knox/cool-season-vegetables/", Mark: Seen}
	NebraskaGroups = Source{ID: "nebraska-groups", Publisher: "Nebraska newspaper column", Title: "Vegetable garden beginner's tips", Year: "read 2026", Where: "seed and plants, by group",
		Address: "https://columbustelegram.com/news/local/vegetable-garden-beginners-tips/article_c97fe258-f703-519b-8d88-96d37693439c.html", Mark: Seen}
	OregonColumn2007 = Source{ID: "oregon-column-2007", Publisher: "Oregon State University Extension, in a newspaper", Title: "Soil temperature and vegetables", Year: "2007", Where: "groups by temperature, for seed",
		Address: "https://www.oregonlive.com/homesandgardens/2007/03/soil_temperature_and_veggies_h.html", Mark: Quoted}
	KansasSowing2007 = Source{ID: "kansas-sowing-2007", Publisher: "Kansas newspaper", Title: "Temperatures guide best times to sow", Year: "2007", Where: "list at 60 °F",
		Address: "http://www2.ljworld.com/news/2007/feb/15/temperatures_guide_best_times_sow_seeds/", Mark: Quoted}
	TexasReprint2022 = Source{ID: "texas-reprint-2022", Publisher: "Texas A&M University, in a newspaper", Title: "Soil temperature when planting vegetables", Year: "2022", Where: "realistic list, for seed",
		Address: "https://www.northwestgeorgianews.com/polk_standard_journal/news/local/soil-temperature-important-when-planting-vegetables/article_21a3c348-a2df-11ec-9cff-87b7e61fe8aa.html", Mark: Quoted}
	GermCaliforniaCopy = Source{ID: "germination-california", Publisher: "garden site, after University of California", Title: "Soil temperature for germination", Year: "read 2026", Where: "copy",
		Address: "https://sundownfarms.com/gardening/germination/soil-temperature/", Mark: Quoted}
	FlowerGermIowa = Source{ID: "flower-germination-iowa", Publisher: "garden site, after Iowa State University", Title: "Flower seed germination", Year: "read 2026", Where: "note below the table",
		Address: "https://sundownfarms.com/gardening/germination/flower-seed-germination/", Mark: Quoted}
	GermAverages = Source{ID: "germination-averages", Publisher: "hobby page", Title: "Soil temperature for germination, mean of several charts", Year: "read 2026", Where: "groups by temperature",
		NoAddress: "read only as another page gives it", Mark: Trade}
	GardenCalendar = Source{ID: "garden-calendar", Publisher: "gardening calendar site", Title: "Soil temperatures for sowing and planting", Year: "read 2026", Where: "lower end of the range",
		NoAddress: "read only as another page gives it", Mark: Trade}
	GreenhouseMagazine = Source{ID: "greenhouse-magazine", Publisher: "growers' magazine", Title: "Temperature of nutrient solutions", Year: "read 2026", Where: "lettuce and strawberry, 60–75 °F",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	GarlicPlanting = Source{ID: "garlic-planting", Publisher: "garden web magazine", Title: "Soil temperature for planting garlic", Year: "read 2026", Where: "2 in deep",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	CaliforniaCelery = Source{ID: "california-celery", Publisher: "University of California Master Gardeners", Title: "Celery", Year: "read 2026", Where: "text",
		Address: "https://mgsantaclara.ucanr.edu/garden-help/vegetables/celery/", Mark: Seen}
	PotatoSoil = Source{ID: "potato-soil", Publisher: "garden center, after University of Maine", Title: "Seed potatoes and soil temperature", Year: "read 2026", Where: "text",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	PotatoWestAustralia = Source{ID: "potato-west-australia", Publisher: "Department of Agriculture, Western Australia", Title: "Managing temperature of potatoes", Year: "read 2026", Where: "soil temperatures",
		Address: "https://www.agric.wa.gov.au/potatoes/managing-temperature-potatoes-improve-quality?page=0%2C0", Mark: Seen}
	GingerVirginia = Source{ID: "ginger-virginia", Publisher: "growers' paper, after Virginia State University", Title: "Ginger on the East Coast", Year: "read 2026", Where: "sprouting",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	SellerPages = Source{ID: "seller-pages", Publisher: "seed and plug sellers", Title: "Growing pages and packet texts", Year: "read 2026", Where: "pages of the crop",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	FloridaTomatillo = Source{ID: "florida-tomatillo", Publisher: "University of Florida IFAS", Title: "Gardening solutions: tomatillos", Year: "read 2026", Where: "page",
		Address: "http://gardeningsolutions.ifas.ufl.edu/plants/edibles/vegetables/tomatillos.html", Mark: Seen}
	MelonSalt = Source{ID: "melon-salt", Publisher: "journal article, Cambridge University Press", Title: "Salt tolerance of five muskmelon cultivars", Year: "read 2026", Where: "abstract; the copy prints the threshold without its point",
		Address: "http://journals.cambridge.org/action/displayAbstract?fromPage=online&aid=4814476&fileId=S0021859600082241", Mark: Seen}
	RocketSalt = Source{ID: "rocket-salt", Publisher: "journal article", Title: "Two wild rockets under salt", Year: "read 2026", Where: "abstract, pots under plastic",
		Address: "https://discovery.researcher.life/article/water-use-and-crop-performance-of-two-wild-rocket-genotypes-under-salinity-conditions/cb26f5d37b593560bdddc5bd3797d116", Mark: Seen}
	GarlicSalt1994 = Source{ID: "garlic-salt-1994", Publisher: "HortScience", Title: "29(11):1314, salt-stressed garlic", Year: "1994", Where: "abstract, two years in the field",
		Address: "https://journals.ashs.org/hortsci/abstract/journals/hortsci/29/11/article-p1314.xml", Mark: Seen}
	LeekSalt2016 = Source{ID: "leek-salt-2016", Publisher: "Scientia Horticulturae", Title: "211–217, salt in water for leek", Year: "2016", Where: "abstract, pots",
		Address: "https://acikerisim.omu.edu.tr/entities/publication/739efa49-8998-4116-9fc8-d9008e1840d3/full", Mark: Seen}
	SunflowerSalt1996 = Source{ID: "sunflower-salt-1996", Publisher: "Agronomy Journal", Title: "88:215–219, four sunflower hybrids", Year: "1996", Where: "abstract, seed yield, field",
		Address: "https://doi.org/10.2134/agronj1996.00021962008800020016x", Mark: Seen}
	RedGinger = Source{ID: "red-ginger-kc", Publisher: "Revista Ciência Agronômica", Title: "Water use of red ginger", Year: "read 2026", Where: "abstract, under screen",
		Address: "article 83897", Mark: Seen}
	GingerUganda = Source{ID: "ginger-uganda", Publisher: "National Agricultural Advisory Services, Uganda", Title: "Ginger plants", Year: "read 2026", Where: "page",
		Address: "https://naads.or.ug/ginger-plants/", Mark: Seen}
	GingerBook = Source{ID: "ginger-book", Publisher: "book text, copied", Title: "Ginger production in India and South Asia", Year: "read 2026", Where: "soil depth needed at least",
		Address: "https://medicinalplants.us/ginger/ginger-production-in-india-and-other-south-asian-countries/", Mark: Quoted}
	BasilDrip2017 = Source{ID: "basil-drip-2017", Publisher: "University of Novi Sad", Title: "54(3):124–129, drip irrigation of sweet basil", Year: "2017", Where: "abstract, field in Serbia",
		Address: "https://scindeks.ceon.rs/article.aspx?query=RELAKW%26and%26evapotranspiracija&page=4&sort=1&stype=0&backurl=%2FRelated.aspx%3Fartak%3Devapotranspiracija%26lang%3Den&lang=en", Mark: Seen}
	MarigoldKc = Source{ID: "marigold-kc", Publisher: "Journal of Applied and Natural Science", Title: "Crop coefficient of marigold", Year: "read 2026", Where: "abstract, greenhouse, drip",
		Address: "http://journals.ansfoundation.org/index.php/jans/article/view/2264", Mark: Seen}
	CutFlowerKc = Source{ID: "cut-flower-kc", Publisher: "Dalat University Journal of Science", Title: "Crop coefficients of two vegetables and three cut flowers", Year: "read 2026", Where: "abstract, lysimeter",
		Address: "https://tckh.dlu.edu.vn/index.php/tckhdhdl/article/view/580", Mark: Seen}
	OpenCropData = Source{ID: "open-crop-data", Publisher: "open crop data", Title: "Kale", Year: "read 2026", Where: "page",
		NoAddress: "an open collection that gives no author", Mark: Quoted}
	PlantDatabase = Source{ID: "plant-database", Publisher: "Kwantlen Polytechnic University", Title: "Plant database", Year: "read 2026", Where: "page of the species",
		Address: "https://plantdatabase.kpu.ca", Mark: Seen}
	FloridaDahlia1999 = Source{ID: "florida-dahlia-1999", Publisher: "University of Florida", Title: "Dahlia", Year: "1999", Where: "general information",
		Address: "Fact Sheet FPS-169", Mark: Seen}
	FloridaGomphrena = Source{ID: "florida-gomphrena", Publisher: "University of Florida IFAS", Title: "Gardening solutions: globe amaranth", Year: "read 2026", Where: "page",
		Address: "https://gardeningsolutions.ifas.ufl.edu/mastergardener/outreach/plant_id/flowers_indoor/globe_amaranth.html", Mark: Seen}
	FloridaMarigold1999 = Source{ID: "florida-marigold-1999", Publisher: "University of Florida", Title: "African marigold", Year: "1999", Where: "general information",
		Address: "Fact Sheet FPS-569", Mark: Seen}
	WaterRule = Source{ID: "water-rule", Publisher: "garden site", Title: "How much water to give", Year: "read 2026", Where: "rule of thumb",
		NoAddress: "a garden site; a rule of thumb for watering", Mark: Trade}
	IllinoisWarm2020 = Source{ID: "illinois-warm-2020", Publisher: "University of Illinois Extension", Title: "Starting a garden: warm season vegetables", Year: "2020", Where: "very tender plants",
		Address: "https://extension.illinois.edu/blogs/good-growing/2020-03-27-starting-garden-warm-season-vegetables", Mark: Seen}
	IllinoisPepper = Source{ID: "illinois-pepper", Publisher: "University of Illinois Extension", Title: "Vegetable garden guide: peppers", Year: "read 2026", Where: "tables",
		Address: "https://web.extension.illinois.edu/vegguide/grow_pepper.cfm", Mark: Seen}
	IllinoisCarrot = Source{ID: "illinois-carrot", Publisher: "University of Illinois Extension", Title: "Vegetable garden guide: carrots", Year: "read 2026", Where: "tables",
		Address: "https://web.extension.illinois.edu/vegguide/grow_carrot.cfm", Mark: Seen}
	IllinoisChard = Source{ID: "illinois-chard", Publisher: "University of Illinois Extension", Title: "Vegetable garden guide: chard", Year: "read 2026", Where: "tables",
		Address: "https://web.extension.illinois.edu/vegguide/grow_chard.cfm", Mark: Seen}
	IllinoisPumpkin = Source{ID: "illinois-pumpkin", Publisher: "University of Illinois Extension", Title: "Vegetable garden guide: pumpkins", Year: "read 2026", Where: "variety table, small sorts",
		Address: "https://web.extension.illinois.edu/vegguide/grow_pumpkin.cfm", Mark: Seen}
	IllinoisSpring = Source{ID: "illinois-spring", Publisher: "University of Illinois Extension", Title: "Spring planting table", Year: "read 2026", Where: "table",
		Address: "http://web.extension.illinois.edu/dmp/eb344/entry_12261/", Mark: Seen}
	IllinoisDates2017 = Source{ID: "illinois-dates-2017", Publisher: "University of Illinois Extension", Title: "Planting vegetables, news release", Year: "2017", Where: "dates for the middle of the state",
		Address: "https://web.extension.illinois.edu/state/newsdetail.cfm?NewsID=35125", Mark: Seen}
	IllinoisSow2019 = Source{ID: "illinois-sow-2019", Publisher: "University of Illinois Extension", Title: "When to sow", Year: "2019", Where: "groups by weeks",
		Address: "https://extension.illinois.edu/blogs/over-garden-fence/2019-03-28-so-when-should-we-sow", Mark: Seen}
	IllinoisDates2022 = Source{ID: "illinois-dates-2022", Publisher: "University of Illinois, in a newspaper", Title: "Dates for planting", Year: "2022", Where: "list",
		Address: "https://mailnewsgroup.com/mclean/article/2022-04-17/dates-to-know-for-gardeners-in-planting-season.html", Mark: Quoted}
	IllinoisKale2021 = Source{ID: "illinois-kale-2021", Publisher: "University of Illinois Extension, in a newspaper", Title: "Greens for cool weather", Year: "2021", Where: "text",
		NoAddress: "a newspaper column; its address is a number only", Mark: Quoted}
	IllinoisSprouts = Source{ID: "illinois-sprouts", Publisher: "web page, after University of Illinois Extension", Title: "Brussels sprouts in Illinois", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	PurdueWhen2021 = Source{ID: "purdue-when-2021", Publisher: "Purdue Extension", Title: "Cool-season and warm-season vegetables: when to plant", Year: "2021", Where: "list",
		Address: "https://extension.purdue.edu/county/marion/anr/index.html", Mark: Seen}
	CarolinaBasil = Source{ID: "carolina-basil", Publisher: "web page, copying North Carolina State Extension", Title: "Basil", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	OkraIllinois = Source{ID: "okra-illinois", Publisher: "web page, after University of Illinois Extension", Title: "Okra", Year: "read 2026", Where: "text",
		NoAddress: "read only as another page gives it", Mark: Quoted}
	MaineSpacing = Source{ID: "maine-spacing", Publisher: "University of Maine Cooperative Extension", Title: "Planting chart for the home vegetable garden", Year: "read 2026", Where: "chart",
		Address: "https://extension.umaine.edu/gardening/manual/planting-chart-home-vegetable-garden", Mark: Seen}
	GeorgiaChart = Source{ID: "georgia-chart", Publisher: "University of Georgia, copied", Title: "Vegetable planting chart", Year: "read 2026", Where: "chart",
		NoAddress: "read only as another page gives it", Mark: Seen}
	CornellBroccoli2017 = Source{ID: "cornell-broccoli-2017", Publisher: "Cornell University", Title: "Broccoli trial in South Carolina on film beds", Year: "2017", Where: "text",
		Address: "https://blogs.cornell.edu/easternbroccoliproject/2017/10/23/broccoli-crowns-forming-in-sc-yield-trial", Mark: Seen}
	PlantingSheet = Source{ID: "planting-sheet", Publisher: "vegetable production course", Title: "Planting table", Year: "read 2026", Where: "table",
		NoAddress: "a course table whose maker is not named", Mark: Quoted}
	ColoradoGarlic2003 = Source{ID: "colorado-garlic-2003", Publisher: "Colorado State University", Title: "Garlic, winter mulch study", Year: "2003", Where: "methods, 30 in beds",
		Address: "https://agsci.colostate.edu/specialtycrops/garlic-winter-mulch-study/", Mark: Seen}
	SAREGinger2023 = Source{ID: "sare-ginger-2023", Publisher: "SARE", Title: "FNE21-980, ginger spacing in high tunnels", Year: "2023", Where: "summary",
		Address: "https://projects.sare.org/project-reports/fne21-980/", Mark: Seen}
	SouthEast2023 = Source{ID: "south-east-2023", Publisher: "universities of the south-eastern US", Title: "Vegetable Crop Handbook", Year: "2023", Where: "page 71",
		Address: "handbook of 2023, page 71", Mark: Seen}
	MontanaLettuce2015 = Source{ID: "montana-lettuce-2015", Publisher: "Montana State University", Title: "Summer lettuce trial on film beds", Year: "2015", Where: "text",
		Address: "https://agresearch.montana.edu/warc/research_current/research_past/vegetableresearch/2015_Lettuce.html", Mark: Seen}
	CarolinaStrawberry = Source{ID: "carolina-strawberry", Publisher: "North Carolina State Extension", Title: "Strawberries: plasticulture", Year: "read 2026", Where: "text",
		Address: "https://strawberries.ces.ncsu.edu/strawberries-plasticulture-considerations-adaptation/", Mark: Seen}
	SquashColours = Source{ID: "squash-colours", Publisher: "American Society for Horticultural Science", Title: "Mulch color, aphids and virus on yellow squash, Alabama", Year: "read 2026", Where: "abstract",
		NoAddress: "an abstract, read in an index that gives no address", Mark: Seen}
	MuskmelonStand1997 = Source{ID: "muskmelon-stand-1997", Publisher: "journal article", Title: "Plant population of muskmelon on black film", Year: "1997", Where: "abstract",
		Address: "https://discovery.researcher.life/article/effect-of-plant-population-on-muskmelon-yield-and-quality/71d7e29d2a733a08be45883c3787ac95", Mark: Seen}
	ConnecticutCorn2002 = Source{ID: "connecticut-corn-2002", Publisher: "University of Connecticut IPM", Title: "Transplanting sweet corn on black film", Year: "2002", Where: "text",
		Address: "https://ipm.cahnr.uconn.edu/transplanting-sweet-corn-at-cold-spring-brook-farm/", Mark: Seen}
	PrinciplesHorticulture = Source{ID: "principles-horticulture", Publisher: "textbook", Title: "Horticulture: principles and practices, watermelon", Year: "read 2026", Where: "page 662",
		Address: "https://www.yumpu.com/en/document/view/59981442/horticulture-principles-and-practices/662", Mark: Seen}
	TennesseeFall2011 = Source{ID: "tennessee-fall-2011", Publisher: "Cooperative Extension, Tennessee", Title: "Fall cool-season vegetable crops", Year: "2011", Where: "table",
		Address: "Fact Sheet ANR-3", Mark: Seen}
	CelosiaGomphrena2010 = Source{ID: "celosia-gomphrena-2010", Publisher: "USDA Agricultural Research Service and HortTechnology", Title: "20(3), field-grown celosia and gomphrena", Year: "2010", Where: "summary, New Mexico",
		Address: "https://ars.usda.gov/research/publications/publication/?seqNo115=247340", Mark: Seen}
	CornellLisianthus = Source{ID: "cornell-lisianthus", Publisher: "Cornell University", Title: "High tunnels: lisianthus", Year: "read 2026", Where: "text",
		Address: "http://blogs.cornell.edu/hightunnels/flowers/cut-flowers/cut-flower-crops/lisianthus/", Mark: Seen}
	PurdueNitrogen = Source{ID: "purdue-nitrogen-2017", Publisher: "Purdue University", Title: "Nutrient management for vegetables: putting together a plan", Year: "2017", Where: "nitrogen of the season by crop",
		NoAddress: "its address was not kept", Mark: Seen}
	FloridaTomato = Source{ID: "florida-tomato-cv236", Publisher: "University of Florida IFAS Extension", Title: "A Summary of N, P, and K Research with Tomato in Florida (CV236)", Year: "read 2026", Where: "target rates 200-150-225 lb/acre",
		Address: "https://edis.ifas.ufl.edu/publication/cv236", Mark: Seen}
	OntarioEggplant = Source{ID: "ontario-eggplant", Publisher: "Ontario vegetable specialists", Title: "Ontario fertility guide for vegetable crops: eggplant", Year: "read 2026", Where: "phosphorus and potassium on mineral soils",
		Address: "https://onvegetables.com/ontario-fertility-guide-for-vegetable-crops/eggplant/", Mark: Seen}
	MidwestCucurbits = Source{ID: "midwest-cucurbits-2022", Publisher: "eight US land-grant universities", Title: "Midwest Vegetable Production Guide, cucurbits", Year: "2022", Where: "page 122: 0 to 150 lb P₂O₅, 0 to 200 lb K₂O by soil test",
		Address: "http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/121", Mark: Seen}
	MidwestFeeding = Source{ID: "midwest-feeding-2022", Publisher: "eight US land-grant universities", Title: "Midwest Vegetable Production Guide, soil fertility", Year: "2022", Where: "pages 16, 18, 28",
		Address: "http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/16", Mark: Seen}
	DelawareColeFeed = Source{ID: "delaware-cole-fertiliser", Publisher: "University of Delaware", Title: "Weekly Crop Update: fertilizer recommendations for broccoli, cabbage and cauliflower", Year: "read 2026", Where: "by soil-test class, after the Mid-Atlantic recommendations",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=23222", Mark: Seen}
	TexasBeans = Source{ID: "texas-pinto-beans", Publisher: "Texas A&M University", Title: "Pinto beans, fertilizer rates by soil level", Year: "read 2026", Where: "table 3",
		Address: "https://aggie-horticulture.tamu.edu/extension/beans/pintobeans/table3.html", Mark: Seen}
	GeorgiaStrawberry = Source{ID: "georgia-strawberry-60", Publisher: "University of Georgia, in a trade magazine", Title: "Strawberries on film in Georgia: fertilizer before the bed is formed", Year: "read 2026", Where: "60-60-60 lb/acre before bed formation",
		Address: "https://specialtycropgrower.com/strawberries-spotlight-georgia", Mark: Trade}
	BedFeet = Source{ID: "linear-bed-feet-2021", Publisher: "Vegetable Growers News", Title: "Linear bed foot method determines fertilizer needs for plastic mulch crops", Year: "2021", Where: "25 April 2021",
		Address: "https://vegetablegrowersnews.com/news/linear-bed-foot-method-determines-fertilizer-needs-for-plastic-mulch-crops/", Mark: Trade}
	TomatoSplit1997 = Source{ID: "tomato-split-1997", Publisher: "HortScience", Title: "32(2):230, tomato, nitrogen and potassium before planting and through the tape", Year: "1997", Where: "abstract",
		Address: "volume 32(2), page 230", Mark: Seen}
	PennFeeding = Source{ID: "penn-fertigation", Publisher: "Penn State Extension", Title: "Understanding and using fertigation with vegetable crops", Year: "read 2026", Where: "30 to 50 % of P, K, Ca and Mg before planting",
		Address: "https://extension.psu.edu", Mark: Seen}
	RhodeIslandFeeding = Source{ID: "rhode-island-fertigation", Publisher: "University of Rhode Island", Title: "Fertigation for fruiting vegetables", Year: "read 2026", Where: "half to three quarters up front on fine soils",
		NoAddress: "its address was not kept", Mark: Seen}
	RowCoversUNH = Source{ID: "row-covers-new-hampshire", Publisher: "University of New Hampshire Extension", Title: "Using row covers in the garden", Year: "read 2026", Where: "2 °F light, 6 to 10 °F heavy",
		Address: "https://extension.unh.edu/blog/using-row-covers-garden", Mark: Seen}
	RowCoversH251 = Source{ID: "row-covers-h251", Publisher: "New Mexico State University", Title: "Row Cover Vegetable Production Techniques, Guide H-251", Year: "read 2026", Where: "2 to 7 °F by material",
		Address: "http://aces.nmsu.edu/pubs/_h/H251/welcome.html", Mark: Seen}
	RowCoversDelaware = Source{ID: "row-covers-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: strawberry row covers", Year: "read 2026", Where: "1.2 oz, about 4 °F",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=3822", Mark: Seen}
	RowCoversHeat = Source{ID: "row-covers-heat-michigan", Publisher: "Michigan State University", Title: "Managing row covers to avoid heat injury and poor pollination", Year: "read 2026", Where: "20 to 30 °F more on a calm sunny day",
		Address: "https://www.canr.msu.edu/news/managing_row_covers_to_avoid_heat_injury_and_poor_pollination", Mark: Seen}
	RowCoversNewEngland = Source{ID: "row-covers-new-england", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, slitted and floating row covers", Year: "read 2026", Where: "3 to 5 weeks; off for pollination",
		Address: "https://nevegetable.org/cultural-practices/slitted-and-floating-row-covers", Mark: Seen}
	RowCoversIowa = Source{ID: "row-covers-iowa-2014", Publisher: "Iowa State University", Title: "Row-cover removal timing in muskmelon, research farm report 2013", Year: "2014", Where: "off when half the plants have female flowers",
		Address: "https://iastatedigitalpress.com/farmreports/article/id/5261", Mark: Seen}
	RowCoversCool = Source{ID: "row-covers-cool-2020", Publisher: "a master gardener in Virginia", Title: "Frost protection for the vegetable garden", Year: "2020", Where: "off above 60 °F by day, for lettuce, broccoli, kale, peas",
		Address: "https://wintergreenthumb.blogspot.com/2020/04/veggie-garden-101-frost-protection.html", Mark: Trade}
	LowTunnelPages = Source{ID: "low-tunnel-pages", Publisher: "film makers' pages", Title: "Clear slit or perforated film on wire hoops", Year: "read 2026", Where: "2 to 4 °F; hoops 4 to 5 ft apart",
		NoAddress: "a trade page; this project names no firms", Mark: Trade}
	LowTunnelText = Source{ID: "low-tunnel-text", Publisher: "a horticulture textbook", Title: "Season extension: low tunnels of film and of fabric", Year: "2018", Where: "fabric 5 to 10 °F cooler than film by day",
		NoAddress: "read only as another page gives it", Mark: Seen}
)

// Sources lists every source in the order of the page's source list.
var Sources = [...]*Source{
	&MidAtlanticPepper, &SaskatchewanFilms, &SaskatchewanColours, &AlaskaCorn1991, &QuebecMelon1998, &SilverOnion2006, &MinnesotaBerries, &FloridaDouble2018, &PaperSmall, &CompactLayers,
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
	&StrawberryAir,
	&StrawberryLate,
	&StrawberryDates,
	&FlowerBed1998,
	&GeorgiaBeds2019,
	&RaisedBeds,
	&WhyRaised,
	&UsingFilmDrip,
	&Plasticulture,
	&TilthMichigan,
	&GeorgiaFloors,
	&KansasFloors,
	&MinnesotaWait, &FeelNRCS, &UtahTension,
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
	&LiftingOSHA,
	&HandLaying,
	&TapeOffset,
	&F56T12,
	&ColdColumn,
	&HuskTomato2014,
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
	&F56T23,
	&PepperRoots,
	&TomatoAirRoots,
	&MuskmelonRoots1998,
	&CucumberRoots,
	&MaizeRoots,
	&SweetPotatoRoots,
	&SpinachRoots2025,
	&SpinachSolution,
	&CarrotRoots,
	&PeaRoots,
	&BeanNodules1989,
	&Snapdragon1992,
	&Lisianthus1992,
	&SoillessRoots,
	&WisconsinHeat,
	&CornellHeat,
	&ClimateHorticulture,
	&CoolHeat,
	&DelawareCorn,
	&DelawareSeedless,
	&SeedlessIllinois,
	&MissouriCole2018,
	&ColePractices,
	&StrawberryHeat,
	&Luset2006,
	&EcoCrop,
	&CarolinaCool,
	&NebraskaCool,
	&NebraskaGroups,
	&OregonColumn2007,
	&KansasSowing2007,
	&TexasReprint2022,
	&GermCaliforniaCopy,
	&FlowerGermIowa,
	&GermAverages,
	&GardenCalendar,
	&GreenhouseMagazine,
	&GarlicPlanting,
	&CaliforniaCelery,
	&PotatoSoil,
	&PotatoWestAustralia,
	&GingerVirginia,
	&SellerPages,
	&FloridaTomatillo,
	&MelonSalt,
	&RocketSalt,
	&GarlicSalt1994,
	&LeekSalt2016,
	&SunflowerSalt1996,
	&RedGinger,
	&GingerUganda,
	&GingerBook,
	&BasilDrip2017,
	&MarigoldKc,
	&CutFlowerKc,
	&OpenCropData,
	&PlantDatabase,
	&FloridaDahlia1999,
	&FloridaGomphrena,
	&FloridaMarigold1999,
	&WaterRule,
	&IllinoisWarm2020,
	&IllinoisPepper,
	&IllinoisCarrot,
	&IllinoisChard,
	&IllinoisPumpkin,
	&IllinoisSpring,
	&IllinoisDates2017,
	&IllinoisSow2019,
	&IllinoisDates2022,
	&IllinoisKale2021,
	&IllinoisSprouts,
	&PurdueWhen2021,
	&CarolinaBasil,
	&OkraIllinois,
	&MaineSpacing,
	&GeorgiaChart,
	&CornellBroccoli2017,
	&PlantingSheet,
	&ColoradoGarlic2003,
	&SAREGinger2023,
	&SouthEast2023,
	&MontanaLettuce2015,
	&CarolinaStrawberry,
	&SquashColours,
	&MuskmelonStand1997,
	&ConnecticutCorn2002,
	&PrinciplesHorticulture,
	&TennesseeFall2011,
	&CelosiaGomphrena2010,
	&CornellLisianthus,
	&PurdueNitrogen,
	&FloridaTomato,
	&OntarioEggplant,
	&MidwestCucurbits,
	&MidwestFeeding,
	&DelawareColeFeed,
	&TexasBeans,
	&GeorgiaStrawberry,
	&BedFeet,
	&TomatoSplit1997,
	&PennFeeding,
	&RhodeIslandFeeding,
	&RowCoversUNH,
	&RowCoversH251,
	&RowCoversDelaware,
	&RowCoversHeat,
	&RowCoversNewEngland,
	&RowCoversIowa,
	&RowCoversCool,
	&LowTunnelPages,
	&LowTunnelText,
}
