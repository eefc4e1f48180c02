//go:build !page

package table

// Trouble is something that goes wrong between laying and lifting: what one sees, what it
// is, what to do. The page that shows these rows is made beforehand and needs no program.
type Trouble struct {
	ID      string // a word for addresses
	Sees    string // what one sees
	Is      string // what it most likely is
	Do      []string
	Care    string // a caution, where doing it can hurt someone; "" where not
	Part    TroublePart
	Sources []*Source
}

// TroublePart is where one looks.
type TroublePart uint8

// The parts, in the order of the page.
const (
	TroubleFilm TroublePart = iota
	TroubleWater
	TroublePlants
	TroubleCovers
	troubleParts
)

// String heads the part.
func (p TroublePart) String() string {
	return [...]string{"The film", "Tape and water", "The plants", "Covers and alleys"}[p]
}

// TroubleParts lists the parts in order.
func TroubleParts() []TroublePart {
	list := make([]TroublePart, troubleParts)
	for i := range list {
		list[i] = TroublePart(i)
	}
	return list
}

// Sources of the rows below; no rule cites them, so the program does not carry them.
var (
	hotHoles = Source{ID: "hot-holes-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: heat necrosis of stems on plastic mulch", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=20605", Mark: Seen}
	hotSurface = Source{ID: "hot-surface-delaware", Publisher: "University of Delaware", Title: "Weekly Crop Update: black plastic mulch in hot weather", Year: "read 2026", Where: "text",
		Address: "https://sites.udel.edu/weeklycropupdate/?p=22290", Mark: Seen}
	heatInjury = Source{ID: "heat-injury-michigan", Publisher: "Michigan State University", Title: "Heat injury with plastic mulches", Year: "read 2026", Where: "text",
		NoAddress: "its address was not kept", Mark: Seen}
	holeSoil = Source{ID: "hole-soil-rutgers", Publisher: "Rutgers University", Title: "Plant and Pest Advisory: soil at the planting hole", Year: "read 2026", Where: "text",
		Address: "https://plant-pest-advisory.rutgers.edu", Mark: Seen}
	blossomEnd = Source{ID: "blossom-end-purdue", Publisher: "Purdue University", Title: "Vegetable Crops Hotline: blossom end rot", Year: "read 2026", Where: "text",
		Address: "https://vegcropshotline.org", Mark: Seen}
	cracking = Source{ID: "cracking-utah", Publisher: "Utah State University", Title: "Vegetable guide: tomato fruit cracking", Year: "read 2026", Where: "text",
		NoAddress: "its address was not kept", Mark: Seen}
	purpleLeaves = Source{ID: "purple-leaves-kansas", Publisher: "Kansas State University", Title: "Starter for transplants in cold soil", Year: "read 2026", Where: "text",
		NoAddress: "its address was not kept", Mark: Seen}
	tunnelHeat = Source{ID: "tunnel-heat-purdue", Publisher: "Purdue University", Title: "Vegetable Crops Hotline: air in an unvented tunnel", Year: "read 2026", Where: "42 to 73 °F from 7 to 9 a.m.",
		Address: "https://vegcropshotline.org", Mark: Seen}
	coversOff = Source{ID: "covers-off-new-england", Publisher: "New England land-grant universities", Title: "New England Vegetable Management Guide, row covers", Year: "read 2026", Where: "when covers come off",
		Address: "https://nevegetable.org/book/export/html/45", Mark: Seen}
	clogging = Source{ID: "clogging-1992", Publisher: "HortTechnology", Title: "2(1):38, care of drip lines in vegetables", Year: "1992", Where: "text",
		Address: "volume 2(1), page 38", Mark: Seen}
	tapeRepair = Source{ID: "tape-repair-trade", Publisher: "trade guides", Title: "Repair of drip tape", Year: "read 2026", Where: "text",
		NoAddress: "trade pages; this project names no firms", Mark: Trade}
	livingAlleys = Source{ID: "living-alleys-2024", Publisher: "Frontiers in Sustainable Food Systems", Title: "Living mulch, straw and cultivation between plastic beds", Year: "2024", Where: "pepper 41 to 54 % less in one year of two",
		Address: "https://doi.org/10.3389/fsufs.2024.1276415", Mark: Seen}
	leachingRain = Source{ID: "leaching-rain-midwest", Publisher: "eight US land-grant universities", Title: "Midwest Vegetable Production Guide, soil fertility", Year: "2022", Where: "pages 16, 18, 28",
		Address: "http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/16", Mark: Seen}
	filmAge = Source{ID: "film-age-louisiana", Publisher: "Journal of Vegetable Crop Production", Title: "Film of 1 and 1.25 mil after 6 to 11 months, Louisiana", Year: "2002", Where: "abstract",
		NoAddress: "read in an index that gives no address", Mark: Seen}
	filmOff = Source{ID: "film-off-louisiana", Publisher: "Louisiana State University", Title: "Removing and collecting plastic mulch", Year: "read 2026", Where: "text",
		NoAddress: "its address was not kept", Mark: Seen}
	overTheTop = Source{ID: "over-the-top-midwest", Publisher: "eight US land-grant universities", Title: "Midwest Vegetable Production Guide, weeds between beds", Year: "2022", Where: "page 28",
		Address: "http://read.uberflip.com/i/1431041-2022-midwest-vegetable-guide/16", Mark: Seen}
)

// Troubles are the rows of the page, those of one part together.
var Troubles = [...]Trouble{
	{"loose-edge", "An edge has come up, and the film flaps.", "Wind got under a shallow or loose edge. Each gust pulls more out.",
		[]string{"Weigh the edge down today: soil bags or a shovel of soil every few steps.", "Bury it again while the soil is moist, and firm it with your foot.", "Flapping film pumps hot air out at the holes and burns stems: see to those plants first."},
		"", TroubleFilm, []*Source{&heatInjury, &Practice}},
	{"blown-off", "Wind has taken film off a bed.", "It got under an edge and rolled the film up, often with the tape.",
		[]string{"Hold the loose end down first, and cut it off where film still lies tight. Bury that end.", "Lay the tape back with its emitters up, run it, and look for cuts before you cover it.", "Without plants lay the bed anew on a calm day. With plants weed the open stretch by hand, and water it more: it dries."},
		"Film in the wind pulls a person over. Where it hangs in a power line stay away, and call the power company.", TroubleFilm, []*Source{&Practice}},
	{"tear", "A tear runs along the bed.", "A tool, a hoof, a stone or a tight shoulder began it. Wind and people lengthen it.",
		[]string{"Cut a round end at each tip of the tear, so that it stops there.", "Lay a piece of film under it, or close it with mulch tape on dry, clean film.", "Put soil on a long tear: light let in grows weeds."},
		"", TroubleFilm, []*Source{&Practice}},
	{"hail", "Many small holes after hail.", "The film still holds most of the weeds and the warmth.",
		[]string{"Take pictures, and call the insurer before you mend or replant.", "Leave small holes. Pull the weeds in them by hand while they are small; close tears.", "Run the tape and walk it: hail cuts tape that lies bare at the bed ends.", "Give the plants a week: what still has a bud grows on. Replant what is cut off at the ground. Bruised plants want no feed and no spray until they stand up again.", "Expect the film to tear when you lift it: plan more hours."},
		"", TroubleFilm, []*Source{&Practice}},
	{"nutsedge", "Sharp shoots pierce the film.", "Nutsedge. Its shoots go through polyethylene; paper stops most.",
		[]string{"Pull them while they are small, with the tuber if you can. Cutting alone brings more.", "Next year choose a field without it, or clear it first: the plan says how."},
		"", TroubleFilm, []*Source{&Practice}},
	{"weeds-under", "The film lifts in humps.", "Weeds grow under clear or light film.",
		[]string{"Step on them on a hot day: most cook against the film.", "Where they lift the film, cut a slit, pull them, and put soil on the slit."},
		"", TroubleFilm, []*Source{&Practice}},
	{"weeds-at-hole", "Weeds or rot at the planting holes.", "Soil from the alley was mounded at the stems.",
		[]string{"Pull the weeds while they are small.", "Mound with washed sand, or with soil of the bed itself."},
		"", TroubleFilm, []*Source{&holeSoil}},
	{"tears-at-lifting", "The film comes up in strips.", "It lay long, or it is thin, or plants hold it. Film of 1 to 1.25 mil tore easily after six months and after eleven.",
		[]string{"Mow or pull the plants first, and lift when the soil is dry.", "Cut or sweep the buried edges free, let the soil fall, then roll.", "Walk the bed afterwards and pick the pieces up."},
		"Never burn film: the smoke is poisonous, and it is unlawful in most places. Nobody stands between tractor and lifter, and no loose sleeve near a turning reel.", TroubleFilm, []*Source{&filmAge, &filmOff}},

	{"dry-stretch", "One stretch is dry, the rest is wet.", "Clogged outlets, or a kink where the tape turned.",
		[]string{"Feel the tape: stiff before the kink, slack behind it. Straighten it.", "Open the end and let it run until it is clear.", "Look at the filter and the gauge. Replace a stretch that stays dry, and flush after every repair."},
		"", TroubleWater, []*Source{&tapeRepair}},
	{"puddle", "A puddle, and the gauge is low.", "The tape is cut: a planter, a hoe, or teeth.",
		[]string{"Shut the zone. Cut the bad piece out with a straight cut.", "Join the ends with a coupling, and open the far end until the water is clear.", "Bring the gauge back to the planned pressure before you leave."},
		"", TroubleWater, []*Source{&tapeRepair}},
	{"chewed", "Rows of small bites in the tape; tunnels under the film.", "Mice, voles or crickets. Film is warm, dark and safe for them.",
		[]string{"Mow the edges and the alleys short: they run under cover only.", "Mend the tape as a cut one. Tape of 8 mil and more, buried 2 to 3 in, is bitten less."},
		"Baits and traps only as their label and your law allow: dogs, birds and children find them.", TroubleWater, []*Source{&Practice}},
	{"slow-loss", "Each week the same zone gives less.", "Minerals, iron or slime grow in the outlets.",
		[]string{"Have the water tested before you treat it.", "Clean the filter, flush the ends each week, and write the flow down: the water meter tells first.", "Treat with acid or chlorine only as the label and the test say."},
		"Never mix acid and chlorine: the gas kills. Add acid to water, never water to acid. Goggles and gloves. A line that injects needs a backflow device; the code has the last word.", TroubleWater, []*Source{&clogging}},
	{"pinholes", "Fine holes in the tape under clear film.", "Drops under the film gather the sun like lenses.",
		[]string{"Bury the tape 1 to 2 in, or lay it under film that lets no light through.", "Keep rolls out of the sun until laying day."},
		"", TroubleWater, []*Source{&tapeRepair}},
	{"wet-alley", "Water stands in the alley, the bed is dry.", "The tape has moved, lies with its outlets down, or runs so long that the water passes the roots.",
		[]string{"Dig a hole by the tape an hour after a run: see where the wet spot ends.", "Shorten the run and run more often. The longest single run in the water view is the limit.", "Look where the tape enters the bed: a loose joint wets the headland."},
		"", TroubleWater, []*Source{&Practice}},

	{"burnt-stem", "The stem is brown and pinched at the hole, and the plant falls over.", "Hot film touched it, or hot air from under loose film did.",
		[]string{"Widen the hole, and set the stem in its middle.", "Water the hole, and replant in the evening with larger, hardened plants.", "Late in spring lay white or silver film instead, or paint a strip white."},
		"", TroublePlants, []*Source{&hotHoles, &hotSurface, &heatInjury}},
	{"whipped", "After wind stems are rubbed and leaves are torn.", "Plants swung in their holes, against film or blown sand.",
		[]string{"Set each stem in the middle of its hole, and firm the soil around it.", "Bury loose edges: film that flaps beats the plants.", "Water lightly, and wait: young plants make new leaves. Next year sow strips of rye across the wind in the fall."},
		"", TroublePlants, []*Source{&Practice}},
	{"no-seedlings", "Seed does not come up through black film.", "The film was hotter than 130 °F at the hole.",
		[]string{"Sow again in a cool spell, or before evening, and water the hole.", "On the rest of the field use lighter film."},
		"", TroublePlants, []*Source{&hotSurface}},
	{"purple", "Leaves turn purple after planting.", "The soil is cold, and roots take up no phosphorus.",
		[]string{"Wait: it passes when the bed warms.", "Next time give a starter high in phosphorus in the planting water, as its label says."},
		"", TroublePlants, []*Source{&purpleLeaves}},
	{"blossom-end", "A sunken, leathery patch at the end of the fruit.", "Water came unevenly, so that calcium did not reach the fruit. Much nitrogen and hurt roots add to it.",
		[]string{"Water less and more often, and never let the bed dry between.", "Go easy on nitrogen. The first fruits are the worst; later ones are sound."},
		"", TroublePlants, []*Source{&blossomEnd}},
	{"cracks", "Fruits crack.", "The bed went from dry to wet while they swelled.",
		[]string{"Water evenly, also in a week of rain: the film sheds it."},
		"", TroublePlants, []*Source{&cracking}},
	{"yellow-after-rain", "Leaves are yellow after heavy rain.", "Nitrogen was washed down: from the alley and the edges of the bed, mostly on sand.",
		[]string{"Give one small extra feed through the tape.", "Do not water to make up for lost time: the bed under the film is wet."},
		"", TroublePlants, []*Source{&leachingRain}},

	{"cooked", "Seedlings wilt under a cover in the morning.", "Air in a closed tunnel rose from 42 to 73 °F between seven and nine o’clock on a sunny morning.",
		[]string{"Open ends or slits by nine on each sunny day.", "Where nobody is there by nine, use a cover with slits or holes."},
		"", TroubleCovers, []*Source{&tunnelHeat}},
	{"no-fruit", "Flowers fall, and no fruit sets under the cover.", "No bee gets in, or it is too hot.",
		[]string{"Take the cover off when the first female flowers open, at the latest when half the plants have one.", "Peppers and tomatoes stand heat worst: vent early."},
		"", TroubleCovers, []*Source{&coversOff}},
	{"pale-by-alley", "Plants beside a green alley are pale and short.", "The living alley drinks and feeds too. In one year of two it cost peppers 41 to 54 % of their yield.",
		[]string{"Mow it short before it heads, or kill it early.", "Feed through the tape."},
		"A spray over film or crop only where its label says so, word for word.", TroubleCovers, []*Source{&livingAlleys, &overTheTop}},
}
