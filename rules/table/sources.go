package table

// The sources, each a variable, so that the compiler catches a wrong one. Each has a
// year and an address, or says in one line why it has no address. A page of the web
// without a date is cited by the year in which it was read.
var (
	Practice = Source{ID: "common-practice", Publisher: "the trade", Title: rest("Common practice of the trade"), Year: "2026", Where: rest("no source"),
		NoAddress: rest("a fact of the trade: nobody in particular said it first"), Mark: CommonPractice}
	Memory = Source{ID: "from-memory", Publisher: "this project", Title: rest("Known from memory, not looked up"), Year: "2026", Where: rest("no source"),
		NoAddress: rest("known, but nobody looked it up yet"), Mark: FromMemory}
	NewEngland = Source{ID: "new-england-guide", Publisher: "New England land-grant universities", Title: rest("New England Vegetable Management Guide, plastic mulch films"), Year: "read 2026", Where: rest("table 14"),
		Address: rest("https://nevegetable.org/book/export/html/45"), Mark: Seen}
	PennColours = Source{ID: "penn-colours", Publisher: "University of Massachusetts, quoting Pennsylvania State University", Title: rest("Text on mulch colors"), Year: "read 2026", Where: rest("as quoted in an almanac answer page"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	PuertoRico1968 = Source{ID: "puerto-rico-1968", Publisher: "Journal of Agriculture of the University of Puerto Rico", Title: rest("52(1):53–63"), Year: "1968", Where: rest("abstract"),
		Address: rest("https://doi.org/10.46429/jaupr.v52i1.11723"), Mark: Seen}
	Virginia1998 = Source{ID: "virginia-1998", Publisher: "Journal of Sustainable Agriculture", Title: rest("13(1):55–81, tomato on five Virginia farms"), Year: "1998", Where: rest("abstract"),
		Address: rest("https://doi.org/10.1300/J064v13n01_06"), Mark: Seen}
	Tomato2010 = Source{ID: "tomato-2010", Publisher: "conference abstract", Title: rest("Colored plastic mulches on weeds and crop yield, tomato"), Year: "2010", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	Georgia2002 = Source{ID: "georgia-2002", Publisher: "Journal of the American Society for Horticultural Science", Title: rest("127(1):127, tomato root zone, Georgia"), Year: "2002", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/JASHS.127.1.127"), Mark: Seen}
	TomatoRoots1995 = Source{ID: "tomato-roots-1995", Publisher: "Journal of the American Society for Horticultural Science", Title: rest("120(5):848–853, black film and vetch under tomato"), Year: "1995", Where: rest("root growth best at 20–30 °C"),
		Address: rest("https://doi.org/10.21273/JASHS.120.5.848"), Mark: Seen}
	Films1993 = Source{ID: "films-1993", Publisher: "Journal of the American Society for Horticultural Science", Title: rest("118(2):188–193, optical properties of eight mulch films"), Year: "1993", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/JASHS.118.2.188"), Mark: Seen}
	ClearFilm2021 = Source{ID: "clear-film-2021", Publisher: "International Journal of Chemical Studies", Title: rest("9(1):286–290"), Year: "2021", Where: rest("film transmittance and weed counts"),
		Address: rest("volume 9(1), pages 286–290"), Mark: Seen}
	WarmthFalls2015 = Source{ID: "warmth-falls-2015", Publisher: "HortTechnology", Title: rest("25(2):162, clear, black and white films over four months"), Year: "2015", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/HORTTECH.25.2.162"), Mark: Seen}
	Contact = Source{ID: "contact-connecticut", Publisher: "University of Connecticut IPM", Title: rest("The use of different colored mulches for yield and earliness"), Year: "read 2026", Where: rest("ipm.cahnr.uconn.edu"),
		Address: rest("https://ipm.cahnr.uconn.edu"), Mark: Seen}
	KentuckyTrays = Source{ID: "kentucky-trays-2020", Publisher: "University of Kentucky, in a newspaper", Title: rest("Weeks from seed to transplant by crop"), Year: "2020", Where: rest("agent's column"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	PennTrays = Source{ID: "penn-trays", Publisher: "Pennsylvania State University, in a newspaper", Title: rest("Cole crops from seed, 5 to 6 weeks"), Year: "read 2026", Where: rest("list of temperatures and weeks"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	DryBeds = Source{ID: "dry-beds-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: plastic mulch beds and dry soils"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=10108"), Mark: Seen}
	PepperHeat2011 = Source{ID: "pepper-heat-2011", Publisher: "Terra Latinoamericana", Title: rest("29(4):421–430, bell pepper, Mexico"), Year: "2011", Where: rest("soil above 30 °C at 7.5 cm"),
		Address: rest("volume 29(4), pages 421–430"), Mark: Seen}
	BioMeta2020 = Source{ID: "biodegradable-meta-2020", Publisher: "Agronomy", Title: rest("10:1618, meta-analysis of 66 articles"), Year: "2020", Where: rest("abstract"),
		Address: rest("https://doi.org/10.3390/agronomy10101618"), Mark: Seen}
	HotFilm = Source{ID: "hot-film-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: heat and plastic mulch"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=18243"), Mark: Seen}
	LateSwitch = Source{ID: "late-switch-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: mulch color by planting date"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=18243"), Mark: Seen}
	ColourCompare = Source{ID: "colour-compare-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: mulch color comparisons"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=802"), Mark: Seen}
	Weathering = Source{ID: "weathering-double-crop", Publisher: "HortScience", Title: rest("Film weathering in double cropping, tomato then cucumber"), Year: "read 2026", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	Retrieval2019 = Source{ID: "retrieval-2019", Publisher: "University of Florida IFAS Extension", Title: rest("Film retrieval for recycling, on a North Carolina State trial"), Year: "2019", Where: rest("extension blog"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	ThinFilm = Source{ID: "thin-film-trade", Publisher: "trade magazine", Title: rest("Article on mulch film thickness"), Year: "read 2026", Where: rest("0.7 mil or less is hard to lift"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	EN13655 = Source{ID: "en-13655-2018", Publisher: "CEN", Title: rest("EN 13655:2018 thermoplastic mulch films"), Year: "2018", Where: rest("scope"),
		Address: rest("standard EN 13655:2018, clause 1"), Mark: Seen}
	EN17033 = Source{ID: "en-17033-2018", Publisher: "CEN", Title: rest("EN 17033:2018 biodegradable mulch films"), Year: "2018", Where: rest("scope"),
		Address: rest("standard EN 17033:2018, clause 1"), Mark: Seen}
	OrganicRule = Source{ID: "organic-rule", Publisher: "US Department of Agriculture", Title: rest("7 CFR 205.206(c) and 205.601(b), national organic program"), Year: "checked 2026", Where: rest("rule text"),
		Address: rest("https://www.ecfr.gov/current/title-7/section-205.601"), Mark: Seen}
	OrganicMemo2015 = Source{ID: "organic-memo-2015", Publisher: "US Department of Agriculture, National Organic Program", Title: rest("Memo 15-1 on biodegradable biobased mulch film"), Year: "2015", Where: rest("as quoted"),
		Address: rest("Policy Memo 15-1"), Mark: Quoted}
	OrganicMemo2023 = Source{ID: "organic-memo-2023", Publisher: "US Department of Agriculture, National Organic Program", Title: rest("Memo to the standards board on biodegradable biobased mulch film"), Year: "2023", Where: rest("as told in Organic Grower, 27 September 2023"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	StrawberryFilm = Source{ID: "strawberry-film", Publisher: "university strawberry bulletin", Title: rest("Film for strawberry beds"), Year: "read 2026", Where: rest("1–1.5 mil, 48–60 in"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	FloridaCir805 = Source{ID: "florida-cir805", Publisher: "University of Florida IFAS", Title: rest("Circular 805 (CV213), polyethylene mulches for vegetables"), Year: "read 2026", Where: rest("figure and text"),
		Address: rest("Circular 805 (CV213), figure and text"), Mark: Seen}
	UtahGuide = Source{ID: "utah-guide", Publisher: "Utah State University", Title: rest("Utah Vegetable Production Guide"), Year: "read 2026", Where: rest("plasticulture pages"),
		Address: rest("http://vegetableguide.usu.edu"), Mark: Seen}
	BuriedEdge = Source{ID: "buried-edge", Publisher: "equipment dealer's page", Title: rest("Buried film edge of walk-behind layers"), Year: "read 2026", Where: rest("4–6 in each side"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	FilmYieldConstant = Source{ID: "film-yield-constant", Publisher: "film maker's user manual", Title: rest("Area of polyethylene for a pound at 1 mil"), Year: "read 2026", Where: rest("30,000 in²"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	Embossing = Source{ID: "embossing", Publisher: "extension wording, repeated", Title: rest("Embossed film and heat"), Year: "read 2026", Where: rest("general text"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	KansasWeeds = Source{ID: "kansas-weeds", Publisher: "Kansas State University", Title: rest("MF-1091, plastic mulches"), Year: "read 2026", Where: rest("weeds"),
		Address: rest("publication MF-1091"), Mark: Seen}
	NutsedgeYellow2005 = Source{ID: "nutsedge-yellow-2005", Publisher: "Weed Science", Title: rest("53(6), yellow nutsedge under film, pots, 16 weeks"), Year: "2005", Where: rest("WS-05-029R"),
		Address: rest("https://doi.org/10.1614/WS-05-029R.1"), Mark: Seen}
	NutsedgePurple2005 = Source{ID: "nutsedge-purple-2005", Publisher: "Weed Science", Title: rest("53(6), purple nutsedge patches, field"), Year: "2005", Where: rest("WS-05-045R"),
		Address: rest("https://doi.org/10.1614/WS-05-045R.1"), Mark: Seen}
	NutsedgeTranslucent = Source{ID: "nutsedge-translucent", Publisher: "Weed Technology", Title: rest("Suppression of purple nutsedge with polyethylene film mulch"), Year: "read 2026", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	NutsedgeGeorgia = Source{ID: "nutsedge-georgia", Publisher: "USDA Agricultural Research Service", Title: rest("Publication 218928, mixed nutsedge under films, Georgia 2006–07"), Year: "2008", Where: rest("abstract"),
		Address: rest("USDA ARS publication 218928"), Mark: Seen}
	PaperNutsedge2018 = Source{ID: "paper-nutsedge-2018", Publisher: "HortScience", Title: rest("53(3):288–294, paper and plastic mulches, pumpkin"), Year: "2018", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/HORTSCI12630-17"), Mark: Seen}
	SilverSquash1993 = Source{ID: "silver-squash-1993", Publisher: "HortScience", Title: rest("28(9):895, mosaic in yellow squash, Alabama"), Year: "1993", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/HORTSCI.28.9.895"), Mark: Seen}
	SilverZucchini1995 = Source{ID: "silver-zucchini-1995", Publisher: "Plant Disease", Title: rest("79:1126, zucchini, California"), Year: "1995", Where: rest("abstract"),
		Address: rest("https://doi.org/10.1094/PD-79-1126"), Mark: Seen}
	SilverPumpkin = Source{ID: "silver-pumpkin", Publisher: "conference abstract", Title: rest("Reflective and black mulch in pumpkins, four years, US Midwest"), Year: "read 2026", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	SilverThrips = Source{ID: "silver-thrips-florida", Publisher: "University of Florida IFAS", Title: rest("IPM-200, thrips virus of tomato and pepper"), Year: "read 2026", Where: rest("figure 4"),
		Address: rest("publication IPM-200, figure 4"), Mark: Seen}
	SilverWhitefly2023 = Source{ID: "silver-whitefly-2023", Publisher: "Insects", Title: rest("14(11):863"), Year: "2023", Where: rest("abstract"),
		Address: rest("https://doi.org/10.3390/insects14110863"), Mark: Seen}
	CanopyLimit = Source{ID: "canopy-limit-california", Publisher: "University of California IPM", Title: rest("Reflective mulches, floriculture guidelines"), Year: "read 2026", Where: rest("60 % cover"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	Gladiolus1965 = Source{ID: "gladiolus-1965", Publisher: "journal abstract", Title: rest("Reflective surfaces used to repel dispersing aphids, gladiolus"), Year: "1965", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	Guide205 = Source{ID: "new-england-laying", Publisher: "New England land-grant universities", Title: rest("New England Vegetable Management Guide, laying film"), Year: "read 2026", Where: rest("field capacity; hand laying"),
		Address: rest("https://nevegetable.org/book/export/html/45"), Mark: Seen}
	StrawberryBed = Source{ID: "strawberry-bed-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: strawberry beds"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=4752"), Mark: Seen}
	StrawberryAir = Source{ID: "strawberry-air-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: strawberries and air temperature"), Year: "2023", Where: rest("day and night temperatures"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=22464"), Mark: Seen}
	StrawberryDates = Source{ID: "strawberry-dates-nc", Publisher: "North Carolina State Extension", Title: rest("Strawberries: late planting and the use of floating row covers"), Year: "2022", Where: rest("table 1"),
		Address: rest("https://content.ces.ncsu.edu/strawberries-late-planting-and-the-use-of-floating-row-covers"), Mark: Seen}
	CaliforniaPeppers = Source{ID: "california-peppers", Publisher: "University of California Cooperative Extension", Title: rest("Bell pepper production in California"), Year: "read 2026", Where: rest("production areas and seasons"),
		Address: rest("https://docslib.org/doc/5189970/bell-pepper-production-in-california"), Mark: Seen}
	CaliforniaTomatoes = Source{ID: "california-tomatoes-8017", Publisher: "University of California Cooperative Extension", Title: rest("Fresh-market tomato production in California, publication 8017"), Year: "read 2026", Where: rest("production areas and seasons"),
		Address: rest("https://online.documentine.com/fresh-market-plants/1/fresh-market-tomato-production-in-california.html"), Mark: Seen}
	VirginiaFall = Source{ID: "virginia-fall", Publisher: "Virginia Cooperative Extension", Title: rest("Fall vegetable gardening, publication 426-334"), Year: "read 2026", Where: rest("days to count back from the first frost"),
		Address: rest("http://pubs.ext.vt.edu/426/426-334/426-334.html"), Mark: Seen}
	FlowerBed1998 = Source{ID: "flower-bed-1998", Publisher: "North Carolina State University", Title: rest("Flower Growers' Bulletin 43(4)"), Year: "1998", Where: rest("bed height"),
		Address: rest("volume 43(4)"), Mark: Seen}
	GeorgiaBeds2019 = Source{ID: "georgia-beds-2019", Publisher: "University of Georgia Extension", Title: rest("Crops per laying and vegetable beds"), Year: "2019", Where: rest("economics blog"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	RaisedBeds = Source{ID: "raised-beds-new-england", Publisher: "New England land-grant universities", Title: rest("New England Vegetable Management Guide, raised beds"), Year: "read 2026", Where: rest("4 in limit without irrigation"),
		Address: rest("https://nevegetable.org/book/export/html/45"), Mark: Seen}
	WhyRaised = Source{ID: "why-raised-nc", Publisher: "North Carolina State University", Title: rest("AG-489, plasticulture for commercial vegetables"), Year: "read 2026", Where: rest("raised beds"),
		Address: rest("publication AG-489"), Mark: Seen}
	UsingFilmDrip = Source{ID: "using-film-drip-nc", Publisher: "North Carolina State University", Title: rest("Using plastic mulches and drip irrigation for vegetables"), Year: "read 2026", Where: rest("bed firm, no puddles"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	Plasticulture = Source{ID: "plasticulture-michigan", Publisher: "Michigan State University Extension", Title: rest("Is plasticulture worth it for vegetable production?"), Year: "read 2026", Where: rest("tractor, poor fits"),
		Address: rest("https://www.canr.msu.edu/news/is_plasticulture_worth_it_for_vegetable_production"), Mark: Seen}
	TilthMichigan = Source{ID: "tilth-michigan", Publisher: "Michigan State University Extension", Title: rest("Film contact and tilth"), Year: "2016", Where: rest("in trade press"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	GeorgiaFloors = Source{ID: "georgia-floors-2000", Publisher: "University of Georgia", Title: rest("Minimum soil temperatures by crop, three mornings"), Year: "2000", Where: rest("newswire"),
		Address: rest("https://newswire.caes.uga.edu/story/822/garden-patience.html"), Mark: Seen}
	KansasFloors = Source{ID: "kansas-floors", Publisher: "Kansas State University, in a newspaper", Title: rest("Soil temperature before planting"), Year: "read 2026", Where: rest("2.5 in deep, 4–5 days"),
		Address: rest("https://ruralmessenger.com/kansas-news/horticulture/dont-ignore-soil-temperature-when-planting-vegetables"), Mark: Quoted}
	UtahTension = Source{ID: "utah-tension", Publisher: "Utah State University Extension", Title: rest("Vegetable guide, tomato, pepper and eggplant: irrigation"), Year: "read 2026", Where: rest("table of soil tension by texture for drip"),
		Address: rest("https://extension.usu.edu/vegetableguide/tomato-pepper-eggplant/irrigation"), Mark: Seen}
	FeelNRCS = Source{ID: "nrcs-feel", Publisher: "USDA Natural Resources Conservation Service", Title: rest("Estimating soil moisture by feel and appearance"), Year: "read 2026", Where: rest("clay and clay loam on the Wyoming page; sand to loam in a copy of the same table"),
		Address: rest("https://www.nrcs.usda.gov/wps/portal/nrcs/detail/wy/technical/?cid=nrcs142p2_026828"), Mark: Quoted}
	MinnesotaWait = Source{ID: "minnesota-wait", Publisher: "University of Minnesota Extension", Title: rest("Extending the growing season"), Year: "2018", Where: rest("1–2 weeks before planting"),
		Address: rest("https://extension.umn.edu/planting-and-growing-guides/extending-growing-season"), Mark: Seen}
	FumigantManual = Source{ID: "fumigant-manual", Publisher: "old US public-works manual MO-314", Title: rest("Metam-type fumigants"), Year: "read 2026", Where: rest("14–21 days; not a label"),
		Address: rest("manual MO-314"), Mark: Seen}
	FumigantShort = Source{ID: "fumigant-short", Publisher: "Crop Protection", Title: rest("21:973–982, airing after fumigation"), Year: "2002", Where: rest("abstract"),
		Address: rest("volume 21, pages 973–982"), Mark: Seen}
	BarrierFilm2013 = Source{ID: "barrier-film-2013", Publisher: "California Agriculture", Title: rest("67(4):217, totally impermeable film"), Year: "2013", Where: rest("emissions"),
		Address: rest("volume 67(4), page 217"), Mark: Seen}
	HerbicideFilm2009 = Source{ID: "herbicide-film-2009", Publisher: "Weed Technology", Title: rest("23(3), herbicides washed from film"), Year: "2009", Where: rest("abstract"),
		Address: rest("volume 23(3)"), Mark: Seen}
	HerbicideRutgers = Source{ID: "herbicide-rutgers", Publisher: "Rutgers University", Title: rest("Plant & Pest Advisory on glyphosate and film"), Year: "read 2026", Where: rest("advisory"),
		Address: rest("https://plant-pest-advisory.rutgers.edu"), Mark: Seen}
	RaspberryFilm2020 = Source{ID: "raspberry-film-2020", Publisher: "Horticulturae", Title: rest("Buried biodegradable film after 18 months"), Year: "2020", Where: rest("Washington"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	BioLaying = Source{ID: "bio-laying", Publisher: "University of Tennessee and Washington State University", Title: rest("Applying biodegradable mulches"), Year: "read 2026", Where: rest("tension, timing"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	MidAtlanticPepper = Source{ID: "mid-atlantic-pepper", Publisher: "Mid-Atlantic land-grant universities", Title: rest("Commercial Vegetable Production Recommendations, pepper: opaque white in summer and late spring"), Year: "read 2026", Where: rest("as Rutgers University quotes it"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	SaskatchewanFilms = Source{ID: "saskatchewan-films", Publisher: "Agriculture Canada, Saskatchewan Irrigation Diversification Centre", Title: rest("Plastic mulches for commercial vegetable production"), Year: "read 2026", Where: rest("text"),
		Address: rest("http://www.agr.gc.ca/eng/?id=1190147996765"), Mark: Seen}
	SaskatchewanColours = Source{ID: "saskatchewan-colours", Publisher: "University of Saskatchewan", Title: rest("Vegetable cultivar and cultural trials, evaluation of coloured mulches"), Year: "2007", Where: rest("text"),
		Address: rest("http://businessdocbox.com/Agriculture/97116943-Vegetable-cultivar-and-cultural-trials.html"), Mark: Seen}
	AlaskaCorn1991 = Source{ID: "alaska-corn-1991", Publisher: "Alaska Agricultural Experiment Station", Title: rest("IRT-76 mulch film and growth of sweet corn in Fairbanks"), Year: "1991", Where: rest("abstract"),
		Address: rest("https://scholarworks.alaska.edu/handle/11122/2093"), Mark: Seen}
	QuebecMelon1998 = Source{ID: "quebec-melon-1998", Publisher: "HortScience", Title: rest("33(2):215, muskmelon with mulches, covers and thermal tubes, Quebec"), Year: "1998", Where: rest("abstract"),
		Address: rest("volume 33(2), page 215"), Mark: Seen}
	SilverOnion2006 = Source{ID: "silver-onion-2006", Publisher: "Cornell University, in a SARE report", Title: rest("ONE06-062, reflective mulch to repel thrips in onions"), Year: "2006", Where: rest("results"),
		Address: rest("https://projects.sare.org/project-reports/one06-062/"), Mark: Seen}
	MinnesotaBerries = Source{ID: "minnesota-berries-2018", Publisher: "University of Minnesota", Title: rest("Spring planting of day-neutral strawberries in a low tunnel system"), Year: "2018", Where: rest("text"),
		Address: rest("http://fruit.cfans.umn.edu/tag/drip-tape-installation/"), Mark: Seen}
	FloridaDouble2018 = Source{ID: "florida-double-2018", Publisher: "University of Florida IFAS", Title: rest("Panhandle Ag: double cropping options for a fall vegetable crop"), Year: "2018", Where: rest("text"),
		Address: rest("http://nwdistrict.ifas.ufl.edu/phag/2018/07/27/double-cropping-options-for-a-fall-vegetable-crop/"), Mark: Seen}
	WeaveKansas = Source{ID: "weave-kansas", Publisher: "Kansas State University", Title: rest("Stake and weave tomatoes"), Year: "read 2026", Where: rest("text: a stake between every other plant, four to six rows of ties"),
		Address: rest("https://kansashealthyyards.org/all-videos/video/stake-and-weave-tomatoes"), Mark: Seen}
	PaperSmall = Source{ID: "paper-small-scale", Publisher: "journal abstract", Title: rest("Weed suppression and labor costs of organic, plastic and paper mulches in small-scale vegetables"), Year: "read 2026", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	CompactLayers = Source{ID: "compact-layers-rutgers", Publisher: "Rutgers University", Title: rest("Farm calls: raised bed mulch layers for high tunnels"), Year: "read 2026", Where: rest("23–25 hp for a bed 4 in high, 30–35 hp for 4-ft film"),
		Address: rest("https://sustainable-farming.rutgers.edu/farm-calls-raised-bed-mulch-layers-for-high-tunnels/"), Mark: Seen}
	Runoff = Source{ID: "runoff-usda", Publisher: "USDA Agricultural Research Service", Title: rest("Three-year runoff study, film and vetch"), Year: "read 2026", Where: rest("as told in a farm newspaper"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	RunoffRye = Source{ID: "runoff-rye-2001", Publisher: "USDA Agricultural Research Service", Title: rest("Publication 124366, rye in film-bed furrows"), Year: "2001", Where: rest("abstract"),
		Address: rest("USDA ARS publication 124366"), Mark: Seen}
	SweetCornClear = Source{ID: "sweet-corn-clear-iowa", Publisher: "Iowa State University", Title: rest("Clear mulch and row covers in sweet corn, 1996–97"), Year: "1997", Where: rest("abstract and thesis record"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	Broccoli2009 = Source{ID: "broccoli-2009", Publisher: "Scientia Horticulturae", Title: rest("123:156–163, broccoli root zone"), Year: "2009", Where: rest("trade summary"),
		Address: rest("volume 123, pages 156–163"), Mark: Quoted}
	Romaine2020 = Source{ID: "romaine-2020", Publisher: "HortTechnology", Title: rest("30(4):510, spring romaine on black film"), Year: "2020", Where: rest("abstract"),
		Address: rest("volume 30(4), page 510"), Mark: Seen}
	RedNematode1997 = Source{ID: "red-nematode-1997", Publisher: "Journal of Nematology", Title: rest("29(4):538–546, red, white and black film"), Year: "1997", Where: rest("abstract"),
		Address: rest("volume 29(4), pages 538–546"), Mark: Seen}
	Drip1996 = Source{ID: "drip-1996", Publisher: "HortTechnology", Title: rest("6(3):155, design considerations for vegetable crop drip irrigation"), Year: "1996", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/HORTTECH.6.3.155"), Mark: Seen}
	PennDrip2013 = Source{ID: "penn-drip-2013", Publisher: "Pennsylvania State University Extension", Title: rest("Determining how long to run drip irrigation systems for vegetables"), Year: "2013", Where: rest("table, 8 psi, 30 in bed"),
		Address: rest("http://extension.psu.edu/plants/vegetable-fruit/news/2013/determining-how-long-to-run-drip-irrigation-systems-for-vegetables"), Mark: Seen}
	NCATDrip = Source{ID: "ncat-drip", Publisher: "NCAT ATTRA", Title: rest("How do I determine how long and how often"), Year: "read 2026", Where: rest("157 minutes"),
		Address: rest("https://attra.ncat.org/how-do-i-determine-how/"), Mark: Seen}
	ClemsonTape = Source{ID: "clemson-tape", Publisher: "Clemson Cooperative Extension", Title: rest("Landscape irrigation equipment part 4: drip tape"), Year: "read 2026", Where: rest("emitters 8–12 in"),
		Address: rest("https://hgic.clemson.edu"), Mark: Seen}
	KansasTape = Source{ID: "kansas-tape", Publisher: "Kansas State University", Title: rest("Drip irrigation of row crops: state of the art"), Year: "read 2026", Where: rest("table 1"),
		Address: rest("http://www.ksre.k-state.edu/sdi/Abstracts/Drip%20Irrigation%20of%20Row%20Crops.htm"), Mark: Seen}
	NewEnglandDrip = Source{ID: "new-england-drip", Publisher: "New England land-grant universities", Title: rest("New England Vegetable Management Guide, irrigation"), Year: "read 2026", Where: rest("tape and sandy beds"),
		Address: rest("https://nevegetable.org"), Mark: Seen}
	Saxton2006 = Source{ID: "saxton-2006", Publisher: "Soil Science Society of America Journal", Title: rest("70:1569–1578, soil water characteristic estimates"), Year: "2006", Where: rest("abstract"),
		Address: rest("https://doi.org/10.2136/sssaj2005.0117"), Mark: Seen}
	WetterNEH = Source{ID: "neh-wetted", Publisher: "USDA NRCS", Title: rest("National Engineering Handbook 623 chapter 7"), Year: "read 2026", Where: rest("wetted diameter"),
		Address: rest("part 623, chapter 7"), Mark: FromMemory}
	ClogFlorida = Source{ID: "clog-florida", Publisher: "University of Florida FAWN", Title: rest("Micro-irrigation maintenance"), Year: "read 2026", Where: rest("table 1"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	FAO29 = Source{ID: "fao-29", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 29 rev. 1, water quality for agriculture"), Year: "1985", Where: rest("as tabled in PMC9128324"),
		Address: rest("https://www.ncbi.nlm.nih.gov/pmc/articles/PMC9128324/"), Mark: Quoted}
	FAO56 = Source{ID: "fao-56", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 56, crop evapotranspiration"), Year: "1998", Where: rest("equations"),
		Address: rest("http://www.fao.org/3/x0490e/x0490e00.htm"), Mark: Seen}
	FAO61 = Source{ID: "fao-61", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 61, annex 1"), Year: "2002", Where: rest("two-line salt model"),
		Address: rest("Irrigation and Drainage Paper 61, annex 1"), Mark: Seen}
	Covers2020 = Source{ID: "covers-2020", Publisher: "Idaho newspaper column", Title: rest("Row covers give 2–4 °F"), Year: "2020", Where: rest("12 February"),
		NoAddress: rest("its address was not kept"), Mark: Trade}
	Normals = Source{ID: "us-normals", Publisher: "US NOAA National Centers for Environmental Information", Title: rest("1981–2010 US Climate Normals"), Year: "2011", Where: rest("monthly minima and maxima, days of frost"),
		Address: rest("https://www.ncei.noaa.gov/products/land-based-station/us-climate-normals"), Mark: Seen}
	NewerNormals = Source{ID: "wmo-normals", Publisher: "World Meteorological Organization", Title: rest("Climatological Standard Normals 1991–2020"), Year: "2023", Where: rest("NCEI accession 0253808: monthly minima and maxima, and their change"),
		Address: rest("https://doi.org/10.25921/800j-vn07"), Mark: Seen}
	CFR205 = Source{ID: "cfr-205", Publisher: "US Department of Agriculture", Title: rest("7 CFR 205.206(c)(6)"), Year: "checked 2026", Where: rest("removal of plastic mulch"),
		Address: rest("https://www.ecfr.gov/current/title-7/section-205.206"), Mark: Seen}
	Nutrition = Source{ID: "nutsedge-kinds-georgia", Publisher: "University of Georgia", Title: rest("Purple nutsedge spread under film"), Year: "read 2026", Where: rest("trade press"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	LiftingOSHA = Source{ID: "lifting-osha", Publisher: "OSHA", Title: rest("NIOSH lifting recommendations"), Year: "read 2026", Where: rest("poultry processing pages: 51 lb at the best"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	HandLaying = Source{ID: "hand-laying-farm", Publisher: "farm weblog", Title: rest("Nine rows of 150 ft laid by hand"), Year: "2011", Where: rest("person-hours"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	TapeOffset = Source{ID: "tape-offset", Publisher: "horticulture magazine", Title: rest("Tape laid off the plant line"), Year: "read 2026", Where: rest("reader question"),
		NoAddress: rest("its address was not kept"), Mark: Trade}
	F56T12 = Source{ID: "fao-56-table-12", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 56, table 12 crop coefficients"), Year: "1998", Where: rest("three open copies compared"),
		Address: rest("http://www.fao.org/3/x0490e/x0490e00.htm"), Mark: Seen}
	ColdColumn = Source{ID: "cold-tolerance-column", Publisher: "garden column, Georgia", Title: rest("Cold tolerance of vegetables"), Year: "read 2026", Where: rest("text: some stand short spells below 20 °F, others 26 °F without being killed"),
		NoAddress: rest("the page bears its writer's name"), Mark: Trade}
	HuskTomato2014 = Source{ID: "husk-tomato-2014", Publisher: "Journal of Water Resource and Protection", Title: rest("Water use efficiency in husk tomato with improved irrigation management, Tabasco"), Year: "2014", Where: rest("6(13), abstract: coefficients proposed for drip under plastic"),
		Address: rest("https://doi.org/10.4236/jwarp.2014.613114"), Mark: Seen}
	F56T11 = Source{ID: "fao-56-table-11", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 56, table 11 stage lengths"), Year: "1998", Where: rest("one open copy"),
		Address: rest("http://www.fao.org/3/x0490e/x0490e00.htm"), Mark: Seen}
	F56T22 = Source{ID: "fao-56-table-22", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 56, table 22 root depth and depletion"), Year: "1998", Where: rest("one open copy; chapter 8 for crops in general"),
		Address: rest("http://www.fao.org/3/x0490e/x0490e00.htm"), Mark: Seen}
	F56T25 = Source{ID: "fao-56-table-25", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 56, table 25 coefficients under plastic"), Year: "1998", Where: rest("pages 195–196"),
		Address: rest("http://www.fao.org/3/x0490e/x0490e00.htm"), Mark: Seen}
	SaltUSDA1990 = Source{ID: "salt-usda-1990", Publisher: "USDA ARS Salinity Laboratory", Title: rest("Relative salt tolerance of herbaceous crops"), Year: "1990", Where: rest("list"),
		Address: rest("https://webarchive.library.unt.edu/eot2008/20090508111628/http://www.ussl.ars.usda.gov/pls/caliche/SALTT42C"), Mark: Seen}
	GermOregon = Source{ID: "germination-oregon", Publisher: "Oregon State University Extension", Title: rest("Soil temperature conditions for vegetable seed germination"), Year: "2013", Where: rest("reviewed 2024"),
		Address: rest("https://extension.oregonstate.edu/gardening/soil-compost/soil-temperature-conditions-vegetable-seed-germination"), Mark: Seen}
	GermPercent = Source{ID: "germination-percent", Publisher: "hobby site", Title: rest("Percent of normal seedlings by temperature"), Year: "read 2026", Where: rest("table copy"),
		NoAddress: rest("read only as another page gives it"), Mark: Trade}
	GermFloridaCopy = Source{ID: "germination-florida", Publisher: "garden site, after University of Florida IFAS", Title: rest("Minimum, optimum and maximum germination temperatures"), Year: "read 2026", Where: rest("copy"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	ColoradoCopy = Source{ID: "colorado-copy", Publisher: "garden site, after Colorado State University", Title: rest("Vegetable planting table"), Year: "read 2026", Where: rest("copy"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	SeedTexas = Source{ID: "seeding-texas", Publisher: "Texas A&M University", Title: rest("Earth-Kind gardening, soil temperature"), Year: "read 2026", Where: rest("realistic seeding temperatures"),
		Address: rest("http://aggie-horticulture.tamu.edu/archives/parsons/earthkind/ekgarden15.html"), Mark: Seen}
	Knott1997 = Source{ID: "handbook-1997", Publisher: "Handbook for Vegetable Growers, reprinted by University of California Santa Cruz", Title: rest("Monthly temperatures for best growth and quality"), Year: "1997", Where: rest("unit 1.3 appendix 5"),
		Address: rest("https://issuhub.com/view/index/3972?pageIndex=133"), Mark: Quoted}
	Colorado720 = Source{ID: "colorado-720", Publisher: "Colorado State University", Title: rest("GardenNotes 720, vegetable planting guide"), Year: "read 2026", Where: rest("frost classes"),
		Address: rest("GardenNotes 720"), Mark: Seen}
	Midwest2022 = Source{ID: "midwest-2022", Publisher: "eight US land-grant universities", Title: rest("Midwest Vegetable Production Guide"), Year: "2022", Where: rest("crop chapters"),
		Address: rest("http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/101"), Mark: Seen}
	UtahTomato = Source{ID: "utah-tomato-pepper", Publisher: "Utah State University", Title: rest("Utah Vegetable Production Guide: tomato, pepper, eggplant"), Year: "read 2026", Where: rest("planting"),
		Address: rest("http://vegetableguide.usu.edu"), Mark: Seen}
	UtahSquash = Source{ID: "utah-cucumber-squash", Publisher: "Utah State University", Title: rest("Utah Vegetable Production Guide: cucumber, squash"), Year: "read 2026", Where: rest("planting"),
		Address: rest("http://vegetableguide.usu.edu/production/cucumber-pumpkin-squash-production/planting-thinning"), Mark: Seen}
	DelawareWarm = Source{ID: "transplants-delaware-936", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: transplants and weather"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=936"), Mark: Seen}
	DelawareEarly = Source{ID: "transplants-delaware-12984", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: early transplanting"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=12984"), Mark: Seen}
	DelawareCold = Source{ID: "cold-soil-delaware-9312", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: low soil temperatures and transplant establishment"), Year: "2016", Where: rest("tips, and a table of daily means"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=9312"), Mark: Seen}
	DelawareMelon = Source{ID: "watermelon-delaware-5188", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: seedless watermelon spacing"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=5188"), Mark: Seen}
	GeorgiaMelons = Source{ID: "watermelon-rows-georgia", Publisher: "University of Georgia", Title: rest("Effects of between row spacing on watermelon yield and size when grown with plastic mulch and drip irrigation"), Year: "read 2026", Where: rest("introduction"),
		Address: rest("https://studylib.net/doc/10912065/effects-of-between-row-spacing-on-watermelon-yield-and-size"), Mark: Seen}
	DelawareMelonSize = Source{ID: "watermelon-delaware-9988", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: thoughts on watermelon management"), Year: "read 2026", Where: rest("spacing and fruit size"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=9988"), Mark: Seen}
	DelawareCole = Source{ID: "cole-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: cole crops and heat"), Year: "read 2026", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	DelawareVines = Source{ID: "vines-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update 25(16): vine crops and heat"), Year: "2017", Where: rest("text"),
		Address: rest("https://vdocument.in/volume-25-issue-16-july-14-2017-vegetable-crops-volume-25-issue-16-july-14-2017.html"), Mark: Seen}
	DelawareSweetPotato = Source{ID: "sweet-potato-delaware", Publisher: "University of Delaware, in trade press", Title: rest("Sweet potato spacing"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	PurdueTransplants = Source{ID: "purdue-transplants", Publisher: "Purdue University", Title: rest("Vegetable Crops Hotline: transplants in cool weather"), Year: "read 2026", Where: rest("cucurbits"),
		Address: rest("https://vegcropshotline.org"), Mark: Seen}
	IowaHeat = Source{ID: "iowa-heat", Publisher: "Iowa State University Extension", Title: rest("Weather problems of vegetables"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	NorthCarolinaHeat = Source{ID: "north-carolina-heat", Publisher: "North Carolina Cooperative Extension", Title: rest("Column on tomato heat"), Year: "2012", Where: rest("text"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	IllinoisAnnuals = Source{ID: "illinois-annuals", Publisher: "University of Illinois Extension", Title: rest("Annual flowers, hardiness"), Year: "read 2026", Where: rest("list"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	MinnesotaAnnuals = Source{ID: "minnesota-annuals", Publisher: "University of Minnesota Extension", Title: rest("Half-hardy annuals"), Year: "read 2026", Where: rest("list"),
		Address: rest("http://www.extension.umn.edu/Garden/landscaping/maint/half_hardy_annuals.html"), Mark: Seen}
	CarolinaGarden = Source{ID: "carolina-garden", Publisher: "Carolina garden site", Title: rest("Annual flowers"), Year: "read 2026", Where: rest("list"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	KansasZinnia = Source{ID: "kansas-zinnia", Publisher: "Kansas State University", Title: rest("MF-1079, zinnia"), Year: "read 2026", Where: rest("text"),
		Address: rest("publication MF-1079"), Mark: Seen}
	FloridaSunflower = Source{ID: "florida-sunflower", Publisher: "University of Florida IFAS", Title: rest("ENHFL04-015, sunflower"), Year: "read 2026", Where: rest("text"),
		Address: rest("publication ENHFL04-015"), Mark: Seen}
	UtahDahlia = Source{ID: "utah-dahlia", Publisher: "Utah State University", Title: rest("Dahlia abstract"), Year: "2022", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	NCStrawberry = Source{ID: "nc-strawberry", Publisher: "HortTechnology", Title: rest("Strawberry plasticulture in North Carolina II"), Year: "1993", Where: rest("text"),
		Address: rest("https://journals.ashs.org/horttech/view/journals/horttech/3/4/article-p383.xml"), Mark: Seen}
	TradeSeedList = Source{ID: "trade-seed-list", Publisher: "seed house newsletter and trade lists", Title: rest("Weeks in the tray, days to harvest"), Year: "read 2026", Where: rest("lists"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	OnionSARE = Source{ID: "sare-onion", Publisher: "SARE", Title: rest("ONE09-102, onions on film"), Year: "2009", Where: rest("farm report"),
		Address: rest("project ONE09-102"), Mark: Seen}
	GingerTrade = Source{ID: "trade-lists", Publisher: "trade and hobby lists", Title: rest("Ginger, dahlia and flower lists"), Year: "read 2026", Where: rest("lists"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	Zimbabwe2014 = Source{ID: "zimbabwe-2014", Publisher: "Journal of Global Innovations in Agricultural and Social Sciences", Title: rest("2(4):178–184, cucumber"), Year: "2014", Where: rest("table"),
		Address: rest("volume 2(4), pages 178–184"), Mark: Seen}
	KansasRed = Source{ID: "kansas-red", Publisher: "Kansas State University, in trade press", Title: rest("Red film on tomato"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	RAE2020 = Source{ID: "rae-2020", Publisher: "Research in Agricultural Engineering", Title: rest("Broccoli root zone by film"), Year: "2020", Where: rest("abstract"),
		Address: rest("https://doi.org/10.17221/84/2019-rae"), Mark: Seen}
	F56T23 = Source{ID: "fao-56-table-23", Publisher: "FAO", Title: rest("Irrigation and Drainage Paper 56, table 23 salt tolerance"), Year: "1998", Where: rest("page 178"),
		Address: rest("http://www.fao.org/3/x0490e/x0490e00.htm"), Mark: Seen}
	PepperRoots = Source{ID: "pepper-roots", Publisher: "journal article", Title: rest("Root-zone temperature effects on pepper"), Year: "read 2026", Where: rest("abstract"),
		Address: rest("https://scilit.com/publications/998f251cddc668d469586883afd70f05"), Mark: Seen}
	TomatoAirRoots = Source{ID: "tomato-air-roots", Publisher: "journal article", Title: rest("Interactions between air and root temperatures on greenhouse tomato"), Year: "read 2026", Where: rest("abstract"),
		Address: rest("https://scilit.com/publications/f45c41cce45afc07e5f2f89b64256eae"), Mark: Seen}
	MuskmelonRoots1998 = Source{ID: "muskmelon-roots-1998", Publisher: "Journal of Plant Nutrition", Title: rest("21(2):321–328, root-zone temperature and nutrient uptake of muskmelon"), Year: "1998", Where: rest("abstract"),
		Address: rest("https://doi.org/10.1080/01904169809365406"), Mark: Seen}
	CucumberRoots = Source{ID: "cucumber-roots", Publisher: "Plant and Soil", Title: rest("Influence of root-zone temperature on growth, development and yield of cucumber"), Year: "read 2026", Where: rest("summary"),
		Address: rest("https://doi.org/10.1007/BF02220188"), Mark: Seen}
	MaizeRoots = Source{ID: "maize-roots", Publisher: "teaching notes", Title: rest("Effect of soil temperature on plant growth"), Year: "read 2026", Where: rest("table"),
		NoAddress: rest("read only as another page gives it"), Mark: Trade}
	SweetPotatoRoots = Source{ID: "sweet-potato-roots", Publisher: "journal article", Title: rest("Sweet potato at soil temperatures of 23, 27 and 32 °C"), Year: "read 2026", Where: rest("abstract"),
		Address: rest("https://discovery.researcher.life/topic/sweetpotato-tuberous-roots/18735322?page=6"), Mark: Seen}
	SpinachRoots2025 = Source{ID: "spinach-roots-2025", Publisher: "Sustainability", Title: rest("17(9):3925, root-zone cooling of spinach"), Year: "2025", Where: rest("abstract"),
		Address: rest("https://doi.org/10.3390/su17093925"), Mark: Seen}
	SpinachSolution = Source{ID: "spinach-solution", Publisher: "Journal of Society of High Technology in Agriculture", Title: rest("10(4):225, nutrient-solution temperature and root activity of spinach"), Year: "read 2026", Where: rest("abstract"),
		Address: rest("https://www.jstage.jst.go.jp/article/jshita1991/10/4/10_4_225/_article/-char/en"), Mark: Seen}
	CarrotRoots = Source{ID: "carrot-roots", Publisher: "Journal of the American Society for Horticultural Science", Title: rest("Early root growth of carrots in organic soil"), Year: "read 2026", Where: rest("abstract"),
		Address: rest("https://discovery.researcher.life/article/early-root-growth-of-carrots-in-organic-soil1/7a85712869e730a7a61594e1ff2f3bec"), Mark: Seen}
	PeaRoots = Source{ID: "pea-roots", Publisher: "review preprint", Title: rest("Temperature and root systems, giving a pea study of 1993"), Year: "read 2026", Where: rest("section 3.3"),
		Address: rest("https://flamechallenge.authorea.com/users/349653/articles/474618/download_zip"), Mark: Quoted}
	BeanNodules1989 = Source{ID: "bean-nodules-1989", Publisher: "Crop Science", Title: rest("29(5):1260–1265, highest temperature for nodules of common bean"), Year: "1989", Where: rest("abstract"),
		Address: rest("https://dl.sciencesocieties.org/publications/cs/abstracts/29/5/CS0290051260"), Mark: Seen}
	Snapdragon1992 = Source{ID: "snapdragon-1992", Publisher: "HortScience", Title: rest("27(7):796–798, air and root-zone temperature of snapdragons"), Year: "1992", Where: rest("abstract"),
		Address: rest("https://doi.org/10.3389/fpls.2020.592171"), Mark: Seen}
	Lisianthus1992 = Source{ID: "lisianthus-1992", Publisher: "HortScience", Title: rest("27(8):885–887, rosetting of lisianthus at high temperature"), Year: "1992", Where: rest("abstract"),
		Address: rest("https://doi.org/10.21273/hortsci.27.8.885"), Mark: Seen}
	SoillessRoots = Source{ID: "soilless-roots", Publisher: "book chapter, copied", Title: rest("Best temperature of the nutrient solution, giving a source of 2008"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://www.medicinalplantsarchive.us/nutrient-solution/a-considerations-about-the-optimum-nutrient-solution-temperature.html"), Mark: Quoted}
	WisconsinHeat = Source{ID: "wisconsin-heat", Publisher: "University of Wisconsin Extension", Title: rest("Flowering and fruiting problems of solanaceous and vine crops"), Year: "2018", Where: rest("text"),
		Address: rest("https://gardensnips.wordpress.com/2018/06/21/flowering-and-fruiting-issues-in-solanaceous-and-cucurbit-crops/"), Mark: Seen}
	CornellHeat = Source{ID: "cornell-heat", Publisher: "Cornell University", Title: rest("Heat and garden vegetables"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://blogs.cornell.edu/fruition/tag/cornell"), Mark: Seen}
	ClimateHorticulture = Source{ID: "climate-horticulture", Publisher: "book excerpt", Title: rest("Climate dynamics in horticultural science, section 10.4"), Year: "read 2026", Where: rest("text"),
		Address: rest("http://what-when-how.com/Tutorial/topic-326eiacka/Climate-Dynamics-in-Horticultural-Science-196.html"), Mark: Quoted}
	CoolHeat = Source{ID: "cool-heat", Publisher: "garden web magazine", Title: rest("Soil and air temperatures for growing vegetables"), Year: "read 2026", Where: rest("highest air for cool-weather crops"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	DelawareCorn = Source{ID: "corn-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: corn reproduction and high temperatures"), Year: "read 2026", Where: rest("grain fill"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=12200"), Mark: Seen}
	DelawareSeedless = Source{ID: "seedless-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: seedless watermelon transplants"), Year: "read 2026", Where: rest("germination"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=1714"), Mark: Seen}
	SeedlessIllinois = Source{ID: "seedless-illinois", Publisher: "garden site, after University of Illinois Extension", Title: rest("Seedless watermelon"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	MissouriCole2018 = Source{ID: "missouri-cole-2018", Publisher: "University of Missouri", Title: rest("Cole crops harmed by hot weather"), Year: "2018", Where: rest("text"),
		Address: rest("https://ipm.missouri.edu/MEG/2018/8/coleCrops/"), Mark: Seen}
	ColePractices = Source{ID: "cole-practices", Publisher: "growers' paper", Title: rest("Best practices for cole crops in heat"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	StrawberryHeat = Source{ID: "strawberry-heat", Publisher: "farm weblog, after Horticultura Brasileira 31:93", Title: rest("High temperatures and strawberries"), Year: "read 2026", Where: rest("flower induction"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	Luset2006 = Source{ID: "luset-2006", Publisher: "International Rice Research Institute", Title: rest("Land use suitability evaluation tool, crop requirements"), Year: "2006", Where: rest("end of the best classes"),
		Address: rest("https://github.com/alstat/ALUES"), Mark: Seen}
	EcoCrop = Source{ID: "ecocrop", Publisher: "FAO", Title: rest("EcoCrop, best range of mean temperature"), Year: "2024", Where: rest("row of the species"),
		Address: rest("https://github.com/OpenCLIM/ecocrop"), Mark: Seen}
	CarolinaCool = Source{ID: "carolina-cool", Publisher: "North Carolina Cooperative Extension, newspaper column", Title: rest("Cool season crops, soil 4 in deep"), Year: "2017", Where: rest("list at 50 °F"),
		Address: rest("https://www.ourdavie.com/2017/02/23/growing-a-better-garden-cool-season-crops/"), Mark: Seen}
	NebraskaCool = Source{ID: "nebraska-cool", Publisher: "University of Nebraska Extension", Title: rest("Cool season vegetables"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://extension.unl.edu/statewide/knox/cool-season-vegetables/"), Mark: Seen}
	NebraskaGroups = Source{ID: "nebraska-groups", Publisher: "Nebraska newspaper column", Title: rest("Vegetable garden beginner's tips"), Year: "read 2026", Where: rest("seed and plants, by group"),
		Address: rest("https://columbustelegram.com/news/local/vegetable-garden-beginners-tips/article_c97fe258-f703-519b-8d88-96d37693439c.html"), Mark: Seen}
	OregonColumn2007 = Source{ID: "oregon-column-2007", Publisher: "Oregon State University Extension, in a newspaper", Title: rest("Soil temperature and vegetables"), Year: "2007", Where: rest("groups by temperature, for seed"),
		Address: rest("https://www.oregonlive.com/homesandgardens/2007/03/soil_temperature_and_veggies_h.html"), Mark: Quoted}
	KansasSowing2007 = Source{ID: "kansas-sowing-2007", Publisher: "Kansas newspaper", Title: rest("Temperatures guide best times to sow"), Year: "2007", Where: rest("list at 60 °F"),
		Address: rest("http://www2.ljworld.com/news/2007/feb/15/temperatures_guide_best_times_sow_seeds/"), Mark: Quoted}
	TexasReprint2022 = Source{ID: "texas-reprint-2022", Publisher: "Texas A&M University, in a newspaper", Title: rest("Soil temperature when planting vegetables"), Year: "2022", Where: rest("realistic list, for seed"),
		Address: rest("https://www.northwestgeorgianews.com/polk_standard_journal/news/local/soil-temperature-important-when-planting-vegetables/article_21a3c348-a2df-11ec-9cff-87b7e61fe8aa.html"), Mark: Quoted}
	GermCaliforniaCopy = Source{ID: "germination-california", Publisher: "garden site, after University of California", Title: rest("Soil temperature for germination"), Year: "read 2026", Where: rest("copy"),
		Address: rest("https://sundownfarms.com/gardening/germination/soil-temperature/"), Mark: Quoted}
	FlowerGermIowa = Source{ID: "flower-germination-iowa", Publisher: "garden site, after Iowa State University", Title: rest("Flower seed germination"), Year: "read 2026", Where: rest("note below the table"),
		Address: rest("https://sundownfarms.com/gardening/germination/flower-seed-germination/"), Mark: Quoted}
	GermAverages = Source{ID: "germination-averages", Publisher: "hobby page", Title: rest("Soil temperature for germination, mean of several charts"), Year: "read 2026", Where: rest("groups by temperature"),
		NoAddress: rest("read only as another page gives it"), Mark: Trade}
	GardenCalendar = Source{ID: "garden-calendar", Publisher: "gardening calendar site", Title: rest("Soil temperatures for sowing and planting"), Year: "read 2026", Where: rest("lower end of the range"),
		NoAddress: rest("read only as another page gives it"), Mark: Trade}
	GreenhouseMagazine = Source{ID: "greenhouse-magazine", Publisher: "growers' magazine", Title: rest("Temperature of nutrient solutions"), Year: "read 2026", Where: rest("lettuce and strawberry, 60–75 °F"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	GarlicPlanting = Source{ID: "garlic-planting", Publisher: "garden web magazine", Title: rest("Soil temperature for planting garlic"), Year: "read 2026", Where: rest("2 in deep"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	CaliforniaCelery = Source{ID: "california-celery", Publisher: "University of California Master Gardeners", Title: rest("Celery"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://mgsantaclara.ucanr.edu/garden-help/vegetables/celery/"), Mark: Seen}
	PotatoSoil = Source{ID: "potato-soil", Publisher: "garden center, after University of Maine", Title: rest("Seed potatoes and soil temperature"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	PotatoWestAustralia = Source{ID: "potato-west-australia", Publisher: "Department of Agriculture, Western Australia", Title: rest("Managing temperature of potatoes"), Year: "read 2026", Where: rest("soil temperatures"),
		Address: rest("https://www.agric.wa.gov.au/potatoes/managing-temperature-potatoes-improve-quality?page=0%2C0"), Mark: Seen}
	GingerVirginia = Source{ID: "ginger-virginia", Publisher: "growers' paper, after Virginia State University", Title: rest("Ginger on the East Coast"), Year: "read 2026", Where: rest("sprouting"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	SellerPages = Source{ID: "seller-pages", Publisher: "seed and plug sellers", Title: rest("Growing pages and packet texts"), Year: "read 2026", Where: rest("pages of the crop"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	FloridaTomatillo = Source{ID: "florida-tomatillo", Publisher: "University of Florida IFAS", Title: rest("Gardening solutions: tomatillos"), Year: "read 2026", Where: rest("page"),
		Address: rest("http://gardeningsolutions.ifas.ufl.edu/plants/edibles/vegetables/tomatillos.html"), Mark: Seen}
	MelonSalt = Source{ID: "melon-salt", Publisher: "journal article, Cambridge University Press", Title: rest("Salt tolerance of five muskmelon cultivars"), Year: "read 2026", Where: rest("abstract; the copy prints the threshold without its point"),
		Address: rest("http://journals.cambridge.org/action/displayAbstract?fromPage=online&aid=4814476&fileId=S0021859600082241"), Mark: Seen}
	RocketSalt = Source{ID: "rocket-salt", Publisher: "journal article", Title: rest("Two wild rockets under salt"), Year: "read 2026", Where: rest("abstract, pots under plastic"),
		Address: rest("https://discovery.researcher.life/article/water-use-and-crop-performance-of-two-wild-rocket-genotypes-under-salinity-conditions/cb26f5d37b593560bdddc5bd3797d116"), Mark: Seen}
	GarlicSalt1994 = Source{ID: "garlic-salt-1994", Publisher: "HortScience", Title: rest("29(11):1314, salt-stressed garlic"), Year: "1994", Where: rest("abstract, two years in the field"),
		Address: rest("https://journals.ashs.org/hortsci/abstract/journals/hortsci/29/11/article-p1314.xml"), Mark: Seen}
	LeekSalt2016 = Source{ID: "leek-salt-2016", Publisher: "Scientia Horticulturae", Title: rest("211–217, salt in water for leek"), Year: "2016", Where: rest("abstract, pots"),
		Address: rest("https://acikerisim.omu.edu.tr/entities/publication/739efa49-8998-4116-9fc8-d9008e1840d3/full"), Mark: Seen}
	SunflowerSalt1996 = Source{ID: "sunflower-salt-1996", Publisher: "Agronomy Journal", Title: rest("88:215–219, four sunflower hybrids"), Year: "1996", Where: rest("abstract, seed yield, field"),
		Address: rest("https://doi.org/10.2134/agronj1996.00021962008800020016x"), Mark: Seen}
	RedGinger = Source{ID: "red-ginger-kc", Publisher: "Revista Ciência Agronômica", Title: rest("Water use of red ginger"), Year: "read 2026", Where: rest("abstract, under screen"),
		Address: rest("article 83897"), Mark: Seen}
	GingerUganda = Source{ID: "ginger-uganda", Publisher: "National Agricultural Advisory Services, Uganda", Title: rest("Ginger plants"), Year: "read 2026", Where: rest("page"),
		Address: rest("https://naads.or.ug/ginger-plants/"), Mark: Seen}
	GingerBook = Source{ID: "ginger-book", Publisher: "book text, copied", Title: rest("Ginger production in India and South Asia"), Year: "read 2026", Where: rest("soil depth needed at least"),
		Address: rest("https://medicinalplants.us/ginger/ginger-production-in-india-and-other-south-asian-countries/"), Mark: Quoted}
	BasilDrip2017 = Source{ID: "basil-drip-2017", Publisher: "University of Novi Sad", Title: rest("54(3):124–129, drip irrigation of sweet basil"), Year: "2017", Where: rest("abstract, field in Serbia"),
		Address: rest("https://scindeks.ceon.rs/article.aspx?query=RELAKW%26and%26evapotranspiracija&page=4&sort=1&stype=0&backurl=%2FRelated.aspx%3Fartak%3Devapotranspiracija%26lang%3Den&lang=en"), Mark: Seen}
	MarigoldKc = Source{ID: "marigold-kc", Publisher: "Journal of Applied and Natural Science", Title: rest("Crop coefficient of marigold"), Year: "read 2026", Where: rest("abstract, greenhouse, drip"),
		Address: rest("http://journals.ansfoundation.org/index.php/jans/article/view/2264"), Mark: Seen}
	CutFlowerKc = Source{ID: "cut-flower-kc", Publisher: "Dalat University Journal of Science", Title: rest("Crop coefficients of two vegetables and three cut flowers"), Year: "read 2026", Where: rest("abstract, lysimeter"),
		Address: rest("https://tckh.dlu.edu.vn/index.php/tckhdhdl/article/view/580"), Mark: Seen}
	OpenCropData = Source{ID: "open-crop-data", Publisher: "open crop data", Title: rest("Kale"), Year: "read 2026", Where: rest("page"),
		NoAddress: rest("an open collection that gives no author"), Mark: Quoted}
	PlantDatabase = Source{ID: "plant-database", Publisher: "Kwantlen Polytechnic University", Title: rest("Plant database"), Year: "read 2026", Where: rest("page of the species"),
		Address: rest("https://plantdatabase.kpu.ca"), Mark: Seen}
	FloridaDahlia1999 = Source{ID: "florida-dahlia-1999", Publisher: "University of Florida", Title: rest("Dahlia"), Year: "1999", Where: rest("general information"),
		Address: rest("Fact Sheet FPS-169"), Mark: Seen}
	FloridaGomphrena = Source{ID: "florida-gomphrena", Publisher: "University of Florida IFAS", Title: rest("Gardening solutions: globe amaranth"), Year: "read 2026", Where: rest("page"),
		Address: rest("https://gardeningsolutions.ifas.ufl.edu/mastergardener/outreach/plant_id/flowers_indoor/globe_amaranth.html"), Mark: Seen}
	FloridaMarigold1999 = Source{ID: "florida-marigold-1999", Publisher: "University of Florida", Title: rest("African marigold"), Year: "1999", Where: rest("general information"),
		Address: rest("Fact Sheet FPS-569"), Mark: Seen}
	WaterRule = Source{ID: "water-rule", Publisher: "garden site", Title: rest("How much water to give"), Year: "read 2026", Where: rest("rule of thumb"),
		NoAddress: rest("a garden site; a rule of thumb for watering"), Mark: Trade}
	IllinoisWarm2020 = Source{ID: "illinois-warm-2020", Publisher: "University of Illinois Extension", Title: rest("Starting a garden: warm season vegetables"), Year: "2020", Where: rest("very tender plants"),
		Address: rest("https://extension.illinois.edu/blogs/good-growing/2020-03-27-starting-garden-warm-season-vegetables"), Mark: Seen}
	IllinoisPepper = Source{ID: "illinois-pepper", Publisher: "University of Illinois Extension", Title: rest("Vegetable garden guide: peppers"), Year: "read 2026", Where: rest("tables"),
		Address: rest("https://web.extension.illinois.edu/vegguide/grow_pepper.cfm"), Mark: Seen}
	IllinoisCarrot = Source{ID: "illinois-carrot", Publisher: "University of Illinois Extension", Title: rest("Vegetable garden guide: carrots"), Year: "read 2026", Where: rest("tables"),
		Address: rest("https://web.extension.illinois.edu/vegguide/grow_carrot.cfm"), Mark: Seen}
	IllinoisChard = Source{ID: "illinois-chard", Publisher: "University of Illinois Extension", Title: rest("Vegetable garden guide: chard"), Year: "read 2026", Where: rest("tables"),
		Address: rest("https://web.extension.illinois.edu/vegguide/grow_chard.cfm"), Mark: Seen}
	IllinoisPumpkin = Source{ID: "illinois-pumpkin", Publisher: "University of Illinois Extension", Title: rest("Vegetable garden guide: pumpkins"), Year: "read 2026", Where: rest("variety table, small sorts"),
		Address: rest("https://web.extension.illinois.edu/vegguide/grow_pumpkin.cfm"), Mark: Seen}
	IllinoisSpring = Source{ID: "illinois-spring", Publisher: "University of Illinois Extension", Title: rest("Spring planting table"), Year: "read 2026", Where: rest("table"),
		Address: rest("http://web.extension.illinois.edu/dmp/eb344/entry_12261/"), Mark: Seen}
	IllinoisDates2017 = Source{ID: "illinois-dates-2017", Publisher: "University of Illinois Extension", Title: rest("Planting vegetables, news release"), Year: "2017", Where: rest("dates for the middle of the state"),
		Address: rest("https://web.extension.illinois.edu/state/newsdetail.cfm?NewsID=35125"), Mark: Seen}
	IllinoisSow2019 = Source{ID: "illinois-sow-2019", Publisher: "University of Illinois Extension", Title: rest("When to sow"), Year: "2019", Where: rest("groups by weeks"),
		Address: rest("https://extension.illinois.edu/blogs/over-garden-fence/2019-03-28-so-when-should-we-sow"), Mark: Seen}
	IllinoisDates2022 = Source{ID: "illinois-dates-2022", Publisher: "University of Illinois, in a newspaper", Title: rest("Dates for planting"), Year: "2022", Where: rest("list"),
		Address: rest("https://mailnewsgroup.com/mclean/article/2022-04-17/dates-to-know-for-gardeners-in-planting-season.html"), Mark: Quoted}
	IllinoisKale2021 = Source{ID: "illinois-kale-2021", Publisher: "University of Illinois Extension, in a newspaper", Title: rest("Greens for cool weather"), Year: "2021", Where: rest("text"),
		NoAddress: rest("a newspaper column; its address is a number only"), Mark: Quoted}
	IllinoisSprouts = Source{ID: "illinois-sprouts", Publisher: "web page, after University of Illinois Extension", Title: rest("Brussels sprouts in Illinois"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	PurdueWhen2021 = Source{ID: "purdue-when-2021", Publisher: "Purdue Extension", Title: rest("Cool-season and warm-season vegetables: when to plant"), Year: "2021", Where: rest("list"),
		Address: rest("https://extension.purdue.edu/county/marion/anr/index.html"), Mark: Seen}
	CarolinaBasil = Source{ID: "carolina-basil", Publisher: "web page, copying North Carolina State Extension", Title: rest("Basil"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	OkraIllinois = Source{ID: "okra-illinois", Publisher: "web page, after University of Illinois Extension", Title: rest("Okra"), Year: "read 2026", Where: rest("text"),
		NoAddress: rest("read only as another page gives it"), Mark: Quoted}
	MaineSpacing = Source{ID: "maine-spacing", Publisher: "University of Maine Cooperative Extension", Title: rest("Planting chart for the home vegetable garden"), Year: "read 2026", Where: rest("chart"),
		Address: rest("https://extension.umaine.edu/gardening/manual/planting-chart-home-vegetable-garden"), Mark: Seen}
	GeorgiaChart = Source{ID: "georgia-chart", Publisher: "University of Georgia, copied", Title: rest("Vegetable planting chart"), Year: "read 2026", Where: rest("chart"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
	CornellBroccoli2017 = Source{ID: "cornell-broccoli-2017", Publisher: "Cornell University", Title: rest("Broccoli trial in South Carolina on film beds"), Year: "2017", Where: rest("text"),
		Address: rest("https://blogs.cornell.edu/easternbroccoliproject/2017/10/23/broccoli-crowns-forming-in-sc-yield-trial"), Mark: Seen}
	PlantingSheet = Source{ID: "planting-sheet", Publisher: "vegetable production course", Title: rest("Planting table"), Year: "read 2026", Where: rest("table"),
		NoAddress: rest("a course table whose maker is not named"), Mark: Quoted}
	ColoradoGarlic2003 = Source{ID: "colorado-garlic-2003", Publisher: "Colorado State University", Title: rest("Garlic, winter mulch study"), Year: "2003", Where: rest("methods, 30 in beds"),
		Address: rest("https://agsci.colostate.edu/specialtycrops/garlic-winter-mulch-study/"), Mark: Seen}
	SAREGinger2023 = Source{ID: "sare-ginger-2023", Publisher: "SARE", Title: rest("FNE21-980, ginger spacing in high tunnels"), Year: "2023", Where: rest("summary"),
		Address: rest("https://projects.sare.org/project-reports/fne21-980/"), Mark: Seen}
	SouthEast2023 = Source{ID: "south-east-2023", Publisher: "universities of the south-eastern US", Title: rest("Vegetable Crop Handbook"), Year: "2023", Where: rest("page 71"),
		Address: rest("handbook of 2023, page 71"), Mark: Seen}
	MontanaLettuce2015 = Source{ID: "montana-lettuce-2015", Publisher: "Montana State University", Title: rest("Summer lettuce trial on film beds"), Year: "2015", Where: rest("text"),
		Address: rest("https://agresearch.montana.edu/warc/research_current/research_past/vegetableresearch/2015_Lettuce.html"), Mark: Seen}
	CarolinaStrawberry = Source{ID: "carolina-strawberry", Publisher: "North Carolina State Extension", Title: rest("Strawberries: plasticulture"), Year: "read 2026", Where: rest("text"),
		Address: rest("https://strawberries.ces.ncsu.edu/strawberries-plasticulture-considerations-adaptation/"), Mark: Seen}
	SquashColours = Source{ID: "squash-colours", Publisher: "American Society for Horticultural Science", Title: rest("Mulch color, aphids and virus on yellow squash, Alabama"), Year: "read 2026", Where: rest("abstract"),
		NoAddress: rest("an abstract, read in an index that gives no address"), Mark: Seen}
	MuskmelonStand1997 = Source{ID: "muskmelon-stand-1997", Publisher: "journal article", Title: rest("Plant population of muskmelon on black film"), Year: "1997", Where: rest("abstract"),
		Address: rest("https://discovery.researcher.life/article/effect-of-plant-population-on-muskmelon-yield-and-quality/71d7e29d2a733a08be45883c3787ac95"), Mark: Seen}
	ConnecticutCorn2002 = Source{ID: "connecticut-corn-2002", Publisher: "University of Connecticut IPM", Title: rest("Transplanting sweet corn on black film"), Year: "2002", Where: rest("text"),
		Address: rest("https://ipm.cahnr.uconn.edu/transplanting-sweet-corn-at-cold-spring-brook-farm/"), Mark: Seen}
	PrinciplesHorticulture = Source{ID: "principles-horticulture", Publisher: "textbook", Title: rest("Horticulture: principles and practices, watermelon"), Year: "read 2026", Where: rest("page 662"),
		Address: rest("https://www.yumpu.com/en/document/view/59981442/horticulture-principles-and-practices/662"), Mark: Seen}
	TennesseeFall2011 = Source{ID: "tennessee-fall-2011", Publisher: "Cooperative Extension, Tennessee", Title: rest("Fall cool-season vegetable crops"), Year: "2011", Where: rest("table"),
		Address: rest("Fact Sheet ANR-3"), Mark: Seen}
	CelosiaGomphrena2010 = Source{ID: "celosia-gomphrena-2010", Publisher: "USDA Agricultural Research Service and HortTechnology", Title: rest("20(3), field-grown celosia and gomphrena"), Year: "2010", Where: rest("summary, New Mexico"),
		Address: rest("https://ars.usda.gov/research/publications/publication/?seqNo115=247340"), Mark: Seen}
	CornellLisianthus = Source{ID: "cornell-lisianthus", Publisher: "Cornell University", Title: rest("High tunnels: lisianthus"), Year: "read 2026", Where: rest("text"),
		Address: rest("http://blogs.cornell.edu/hightunnels/flowers/cut-flowers/cut-flower-crops/lisianthus/"), Mark: Seen}
	PurdueNitrogen = Source{ID: "purdue-nitrogen-2017", Publisher: "Purdue University", Title: rest("Nutrient management for vegetables: putting together a plan"), Year: "2017", Where: rest("nitrogen of the season by crop"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	FloridaTomato = Source{ID: "florida-tomato-cv236", Publisher: "University of Florida IFAS Extension", Title: rest("A Summary of N, P, and K Research with Tomato in Florida (CV236)"), Year: "read 2026", Where: rest("target rates 200-150-225 lb/acre"),
		Address: rest("https://edis.ifas.ufl.edu/publication/cv236"), Mark: Seen}
	OntarioEggplant = Source{ID: "ontario-eggplant", Publisher: "Ontario vegetable specialists", Title: rest("Ontario fertility guide for vegetable crops: eggplant"), Year: "read 2026", Where: rest("phosphorus and potassium on mineral soils"),
		Address: rest("https://onvegetables.com/ontario-fertility-guide-for-vegetable-crops/eggplant/"), Mark: Seen}
	MidwestCucurbits = Source{ID: "midwest-cucurbits-2022", Publisher: "eight US land-grant universities", Title: rest("Midwest Vegetable Production Guide, cucurbits"), Year: "2022", Where: rest("page 122: 0 to 150 lb P₂O₅, 0 to 200 lb K₂O by soil test"),
		Address: rest("http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/121"), Mark: Seen}
	MidwestFeeding = Source{ID: "midwest-feeding-2022", Publisher: "eight US land-grant universities", Title: rest("Midwest Vegetable Production Guide, soil fertility"), Year: "2022", Where: rest("pages 16, 18, 28"),
		Address: rest("http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/16"), Mark: Seen}
	DelawareColeFeed = Source{ID: "delaware-cole-fertiliser", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: fertilizer recommendations for broccoli, cabbage and cauliflower"), Year: "read 2026", Where: rest("by soil-test class, after the Mid-Atlantic recommendations"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=23222"), Mark: Seen}
	TexasBeans = Source{ID: "texas-pinto-beans", Publisher: "Texas A&M University", Title: rest("Pinto beans, fertilizer rates by soil level"), Year: "read 2026", Where: rest("table 3"),
		Address: rest("https://aggie-horticulture.tamu.edu/extension/beans/pintobeans/table3.html"), Mark: Seen}
	GeorgiaStrawberry = Source{ID: "georgia-strawberry-60", Publisher: "University of Georgia, in a trade magazine", Title: rest("Strawberries on film in Georgia: fertilizer before the bed is formed"), Year: "read 2026", Where: rest("60-60-60 lb/acre before bed formation"),
		Address: rest("https://specialtycropgrower.com/strawberries-spotlight-georgia"), Mark: Trade}
	BedFeet = Source{ID: "linear-bed-feet-2021", Publisher: "Vegetable Growers News", Title: rest("Linear bed foot method determines fertilizer needs for plastic mulch crops"), Year: "2021", Where: rest("25 April 2021"),
		Address: rest("https://vegetablegrowersnews.com/news/linear-bed-foot-method-determines-fertilizer-needs-for-plastic-mulch-crops/"), Mark: Trade}
	TomatoSplit1997 = Source{ID: "tomato-split-1997", Publisher: "HortScience", Title: rest("32(2):230, tomato, nitrogen and potassium before planting and through the tape"), Year: "1997", Where: rest("abstract"),
		Address: rest("volume 32(2), page 230"), Mark: Seen}
	PennFeeding = Source{ID: "penn-fertigation", Publisher: "Penn State Extension", Title: rest("Understanding and using fertigation with vegetable crops"), Year: "read 2026", Where: rest("30 to 50 % of P, K, Ca and Mg before planting"),
		Address: rest("https://extension.psu.edu"), Mark: Seen}
	RhodeIslandFeeding = Source{ID: "rhode-island-fertigation", Publisher: "University of Rhode Island", Title: rest("Fertigation for fruiting vegetables"), Year: "read 2026", Where: rest("half to three quarters up front on fine soils"),
		NoAddress: rest("its address was not kept"), Mark: Seen}
	RowCoversUNH = Source{ID: "row-covers-new-hampshire", Publisher: "University of New Hampshire Extension", Title: rest("Using row covers in the garden"), Year: "read 2026", Where: rest("2 °F light, 6 to 10 °F heavy"),
		Address: rest("https://extension.unh.edu/blog/using-row-covers-garden"), Mark: Seen}
	RowCoversH251 = Source{ID: "row-covers-h251", Publisher: "New Mexico State University", Title: rest("Row Cover Vegetable Production Techniques, Guide H-251"), Year: "read 2026", Where: rest("2 to 7 °F by material"),
		Address: rest("http://aces.nmsu.edu/pubs/_h/H251/welcome.html"), Mark: Seen}
	RowCoversDelaware = Source{ID: "row-covers-delaware", Publisher: "University of Delaware", Title: rest("Weekly Crop Update: strawberry row covers"), Year: "read 2026", Where: rest("1.2 oz, about 4 °F"),
		Address: rest("https://sites.udel.edu/weeklycropupdate/?p=3822"), Mark: Seen}
	RowCoversHeat = Source{ID: "row-covers-heat-michigan", Publisher: "Michigan State University", Title: rest("Managing row covers to avoid heat injury and poor pollination"), Year: "read 2026", Where: rest("20 to 30 °F more on a calm sunny day"),
		Address: rest("https://www.canr.msu.edu/news/managing_row_covers_to_avoid_heat_injury_and_poor_pollination"), Mark: Seen}
	RowCoversNewEngland = Source{ID: "row-covers-new-england", Publisher: "New England land-grant universities", Title: rest("New England Vegetable Management Guide, slitted and floating row covers"), Year: "read 2026", Where: rest("3 to 5 weeks; off for pollination"),
		Address: rest("https://nevegetable.org/cultural-practices/slitted-and-floating-row-covers"), Mark: Seen}
	RowCoversIowa = Source{ID: "row-covers-iowa-2014", Publisher: "Iowa State University", Title: rest("Row-cover removal timing in muskmelon, research farm report 2013"), Year: "2014", Where: rest("off when half the plants have female flowers"),
		Address: rest("https://iastatedigitalpress.com/farmreports/article/id/5261"), Mark: Seen}
	RowCoversCool = Source{ID: "row-covers-cool-2020", Publisher: "a master gardener in Virginia", Title: rest("Frost protection for the vegetable garden"), Year: "2020", Where: rest("off above 60 °F by day, for lettuce, broccoli, kale, peas"),
		Address: rest("https://wintergreenthumb.blogspot.com/2020/04/veggie-garden-101-frost-protection.html"), Mark: Trade}
	LowTunnelPages = Source{ID: "low-tunnel-pages", Publisher: "film makers' pages", Title: rest("Clear slit or perforated film on wire hoops"), Year: "read 2026", Where: rest("2 to 4 °F; hoops 4 to 5 ft apart"),
		NoAddress: rest("a trade page; this project names no firms"), Mark: Trade}
	LowTunnelText = Source{ID: "low-tunnel-text", Publisher: "a horticulture textbook", Title: rest("Season extension: low tunnels of film and of fabric"), Year: "2018", Where: rest("fabric 5 to 10 °F cooler than film by day"),
		NoAddress: rest("read only as another page gives it"), Mark: Seen}
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
	&KentuckyTrays,
	&PennTrays,
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
	&StrawberryDates,
	&VirginiaFall,
	&CaliforniaPeppers,
	&CaliforniaTomatoes,
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
	&WeaveKansas,
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
	&NewerNormals,
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
	&DelawareCold,
	&DelawareMelon,
	&GeorgiaMelons,
	&DelawareMelonSize,
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
