//go:build !page

package plan

import "strings"

// afterTexts are what [Advice.After] and [Machine] say, and who says so, outside the page's
// program. A head has nobody, nor has a machine.
var afterTexts = [...]struct{ id, text, from string }{
	{"holes", "Holes and planting", ""},
	{"holes-count", "Punch {} holes: rows on a bed {}, and {} apart in the row.", "common practice, no source"},
	{"holes-there", "Use the holes that are there where they fit: each new hole lets weeds through, and heat out.", "common practice, no source"},
	{"holes-crosswise", "Set the rows crosswise: each plant stands across from the gap in the other row.", "common practice, no source"},
	{"holes-tape", "Punch beside the tape, never over it: it lies {} under the film.", "common practice, no source"},
	{"holes-size", "Holes of {} across hold the most weeds back. In heat cut them wider, so that no stem touches film.", "common practice, no source; University of Delaware, Weekly Crop Update, read 2026"},
	{"holes-small", "Plants stand close here: holes of {} across will do, and leave film between them.", "from memory"},
	{"pieces", "Push each piece through the film by hand, with its growing end up, and cover it with soil. Leave out what is soft or moldy.", "common practice, no source"},
	{"seeds", "Drop {} to {} seeds in each hole, {} to {} in all, about as deep as two or three seeds are thick. Thin to one plant: cut, do not pull.", "a maker’s page on punch planters, trade text; common practice, no source"},
	{"seeds-each", "Drop {} to {} seeds in each hole, about as deep as two or three seeds are thick. Thin to one plant: cut, do not pull.", "a maker’s page on punch planters, trade text; common practice, no source"},
	{"clear-open", "Or sow first and lay the clear film over the seed the same day: it comes up beneath it. Slit the film when plants are {} tall, or sooner where leaves touch hot film. Do it in the evening.", "a grower’s page, trade text; New England Vegetable Management Guide, read 2026"},
	{"set-hand", "Setting by hand is {} of work for one person, at {} to {} plants an hour.", "a market growers’ list of 2002, trade text"},
	{"set-setter", "A water-wheel setter behind your tractor, with a driver and one person to set, takes {} by the clock.", "a market growers’ list of 2002, trade text"},
	{"cup", "Pour a cup of water into each hole, {} in all: the roots must be wet through.", "Midwest Vegetable Production Guide, 2022, page 18"},
	{"starter", "Starter: {} of soluble fertilizer high in phosphate in {} of water serves {} plants. Tanks of it for these plants: {}. Skip it where the plants were fed just before. Its label has the last word: a stronger mix burns roots.", "Midwest Vegetable Production Guide, 2022, pages 18 and 122"},
	{"age-vines", "Lists disagree on their age: Kentucky says two to three weeks, Utah four to five in a cooler house. Set them with two or three leaves, and never break the root ball.", "University of Kentucky, 2020; Utah State University, vegetable guide; New England Vegetable Management Guide"},
	{"may-stake", "Stakes are your choice. Peppers on mulched beds are often staked, every two or three plants, with stakes half as long as a tomato’s; most eggplants stand without. How many it takes stands in the buying list, under how each quantity was worked out.", "University of Florida libraries, a study of farm plastics; a New Jersey grower’s letter of 2002, trade text"},
	{"may-trellis", "A trellis is your choice. Cucumbers on one bore two to three times as much in North Carolina, cleaner and straighter; posts, netting and hours cost more. How much it takes stands in the buying list, under how each quantity was worked out.", "North Carolina State University, leaflet 8014-B, 2001"},
	{"feeding", "Feeding by weeks", ""},
	{"feed-weekly", "Feed nitrogen through the tape once a week, {} with beds {} apart, from {} on, {} times. On sand weekly feeds cost tomatoes 7% against daily ones, feeds every two weeks 20%.", "Midwest Vegetable Production Guide, 2022, page 18; Australian Journal of Basic and Applied Sciences 1(3), 2007"},
	{"feed-weekly-beds", "Feed nitrogen through the tape once a week: {} for all beds, which is {} with beds {} apart. Begin on {}, {} times in all. On sand weekly feeds cost tomatoes 7% against daily ones, feeds every two weeks 20%.", "Midwest Vegetable Production Guide, 2022, page 18; Australian Journal of Basic and Applied Sciences 1(3), 2007"},
	{"feed-potash", "Begin potash before the flowers, and give more as fruit fills: where it is short, shoulders stay hard and yellow.", "University of Delaware, Weekly Crop Update, read 2026"},
	{"feed-care", "Fertilizer is salt, and burns young roots: stay within the rate, and flush the tape with clear water after each feed. Gloves and goggles; keep bags dry, and from children. The product’s label has the last word.", "University of Delaware, Weekly Crop Update, read 2026; common practice, no source"},
	{"feed-law", "A line that feeds needs a backflow device. Laws may forbid phosphorus without a soil test, and fertilizer near wells and streams. The plumbing code and the state’s nutrient law have the last word.", "from memory"},
	{"alleys", "The alleys: choose one", ""},
	{"alleys-are", "There are {} of alley here, {} wide.", "reckoned"},
	{"alley-bare", "Bare and worked: 86% fewer weeds in a Michigan trial, and no water or nitrogen taken from the crop. It costs your hours: go shallow, while weeds are small. On a slope rain washes it out.", "Frontiers in Sustainable Food Systems, Michigan, 2024; common practice, no source"},
	{"alley-straw", "Straw or old hay: as few weeds as where it is worked, and fewer next year. Unroll two layers, not one. It keeps rain in the ground and the alley cool; what rots takes a little nitrogen. Ask what was sprayed on it.", "Frontiers in Sustainable Food Systems, Michigan, 2024; University of Kentucky, HortTechnology, 2013; common practice, no source"},
	{"alley-straw-need", "Straw for these alleys: {}, that is {} to {} bales of {}. A thin layer lets weeds through.", "a calculator’s page, trade text; from memory"},
	{"alley-straw-nitrogen", "Worked into the ground, so much straw would take up to {} of nitrogen from it as it rots. On top of the ground it takes far less in a season; how much, we found no figure for.", "USDA Natural Resources Conservation Service, Carbon to Nitrogen Ratios in Cropping Systems, as quoted; from memory"},
	{"alley-straw-heat", "Heat: for alleys we found no figure. Under the plants of five Virginia farms hay cooled the ground in the afternoon, and black film warmed it by {}.", "Effects of Mulches on Soil Properties and Tomato Production, part I, Virginia, abstract, read 2026"},
	{"alley-rye", "Rye, {}, so {} here: it holds the soil and crowds weeds, but drinks, and takes nitrogen. Peppers beside rye that was sown as the film was laid bore half of those beside bare ground, mown or not. In other trials weeds were 74 to 99% of what grew where rye or ryegrass was sown.", "The Use of Rye as a Living Mulch to Control Weeds in Bell Pepper Production, abstract, read 2026; Frontiers in Sustainable Food Systems, Michigan, 2024; seed catalogues, trade text"},
	{"alley-rye-rate", "Rye, {}: it holds the soil and crowds weeds, but drinks, and takes nitrogen. Peppers beside rye that was sown as the film was laid bore half of those beside bare ground, mown or not.", "The Use of Rye as a Living Mulch to Control Weeds in Bell Pepper Production, abstract, read 2026; seed catalogues, trade text"},
	{"alley-sward", "A mown sward, ryegrass at {}, so {} here: firm under foot, with only 18% fewer weeds. In Michigan each of nine green alleys lowered the water and the nitrogen in the beds beside it; how much nitrogen it takes, we found no figure for. Mow low, and feed the crop through the tape.", "Frontiers in Sustainable Food Systems, Michigan, 2024; Cover Crop Performance between Plastic-mulched Beds, Michigan, abstract, read 2026; seed catalogues, trade text"},
	{"alley-sward-rate", "A mown sward, ryegrass at {}: firm under foot, with only 18% fewer weeds. In Michigan each of nine green alleys lowered the water and the nitrogen in the beds beside it. Mow low, and feed the crop through the tape.", "Frontiers in Sustainable Food Systems, Michigan, 2024; Cover Crop Performance between Plastic-mulched Beds, Michigan, abstract, read 2026; seed catalogues, trade text"},
	{"alley-water", "Green and well watered, such a sward drinks {} of water each week in {}: about {} on these alleys. What rain does not bring, it takes from the ground, and from the edge of your beds.", "FAO Irrigation and Drainage Paper 56, table 12, from memory; the field’s own months"},
	{"alley-rain", "In a usual {} it rains {} each week here.", "the field’s own months"},
	{"alley-for-fruiting", "For {}: bare and worked is the safe one. Peppers lost 41 to 54% in one year of two in every other alley, straw too.", "Frontiers in Sustainable Food Systems, Michigan, 2024"},
	{"alley-for-vines", "For {}: any will do. Squash lost nothing in a trial, straw took the least time, and fewer cucumber beetles came over a living alley.", "Frontiers in Sustainable Food Systems, Michigan, 2024, and Wisconsin, 2022"},
	{"alley-for-berries", "For strawberries: perennial ryegrass, killed or mown in time, sheltered the flowers from wind and yielded best in the windy year.", "Journal of the American Society for Horticultural Science 114(6)"},
	{"alley-edge", "At the film’s edge and in the holes pull weeds by hand while they are small. Hold the film down with your foot, and keep hoes a hand away from it.", "common practice, no source"},
	{"alley-spray", "Never spray over film unless the label says so word for word: rain washes it into the holes. Between beds only what the label allows there.", "Midwest Vegetable Production Guide, 2022, page 28"},
	{"bloom", "Frost on the blossoms", ""},
	{"bloom-frost", "Flowers open from about {} on. Open ones die at {}, tight buds at {}. Have row covers or sprinklers ready on clear nights until frost is over, and open covers by day for the bees.", "University of Maine, frost protection tips for strawberries, 2023; University of Delaware, Weekly Crop Update, read 2026"},
	{"covers", "Covers, on and off by degrees", ""},
	{"covers-on", "On from {}: the film must lie a week before. Lay covers right after planting, on a still day, and bury both edges.", "common practice, no source"},
	{"covers-vent", "Open the ends by nine on sunny days once it is to pass {} outside, and close them before sunset.", "Purdue University, Vegetable Crops Hotline, read 2026; reckoned from the crop’s own limit"},
	{"covers-off-by-degrees", "From {} take a week over it: first open by day, then in mild nights too, then off for good on {}, on a dull and still evening. Leaves from under a cover burn where it goes at once.", "common practice, no source; New England Vegetable Management Guide, read 2026"},
	{"second", "A second crop on this film", ""},
	{"second-when", "The first crop ends about {}. Pull it and clear the bed within a week: it can be planted from {}.", "common practice, no source"},
	{"second-early", "Nothing of our list comes in after a first crop that is picked to its end, {}. Cleared by {} there is room:", "reckoned from frost dates and days to harvest"},
	{"second-film", "By then the film has lain {}. In a trial, film of 1 and 1.25 mil was strong enough to grow on for nine months, but after six it tore when it was lifted. Walk it: patch what is torn, close what is loose.", "Journal of Vegetable Crop Production, Louisiana, 2002"},
	{"second-film-old", "By then the film has lain {}: longer than the nine months for which film of 1 and 1.25 mil was found to keep its strength. Pull at an edge: where it breaks, lift it and plant no second crop on it.", "Journal of Vegetable Crop Production, Louisiana, 2002"},
	{"second-holes", "Plant into the holes that are there, {} apart: each new hole lets weeds through, and heat out.", "common practice, no source"},
	{"second-crop", "{}: plant from {} to {}; the first is picked about {}.", "Virginia Tech, by way of a garden page of 2011: two weeks more for shorter days; University of Florida, 2018"},
	{"second-crop-now", "{}: plant on {}, not later; the first is picked about {}.", "Virginia Tech, by way of a garden page of 2011: two weeks more for shorter days; University of Florida, 2018"},
	{"second-none", "No crop of our list comes in on this film before frost, even where the bed is clear on {}.", "reckoned from frost dates and days to harvest"},
	{"second-family", "Nothing of the {} family again. On one tomato field early blight took 3, 30, 74 and 70% of the leaves in its first to fourth year.", "University of Florida, 2018; Cornell University, data of Pennsylvania State University"},
	{"second-wilt", "No tomatoes, peppers or eggplants either: they share a wilt of the soil, Verticillium, with strawberries.", "University of Connecticut, vegetable rotations, read 2026; Ohio State University, by way of a garden page"},
	{"second-feed", "Count nothing left of the first crop’s feed. Test the soil again, and give all of it through the tape, where nothing can be mixed in.", "University of Florida, 2018"},
	{"second-tape", "Keep watering the bed between the two. Flush the tape, and read the pressure at the far end before you plant.", "University of Florida, 2018; common practice, no source"},
	{"second-paint", "Where the ground is too hot for what you plant, paint the film white. One part of white indoor latex to one to four of water, up to {} of the mix for the whole field; yields were mostly those of white film. Keep it off leaves, and out of a sprayer that held weed killer.", "Journal of Vegetable Crop Production, Louisiana, 2002"},
	{"again", "The same crop again and again", ""},
	{"again-every", "To pick {} all season set some every {} to {} days. Lists disagree; here we take {}. Settings that come in: {}.", "a Virginia farm writer and two garden lists, trade text"},
	{"again-each", "To pick {} all season set some every {}. Settings that come in: {}.", "a Virginia farm writer and two garden lists, trade text"},
	{"again-set", "Setting {}: lay by {}, plant on {}, pick from {}.", "reckoned from the season of this field"},
	{"again-beds", "That is about {} of bed each time.", "reckoned"},
	{"again-laid", "One laying machine lays all at once, or comes back each time. All at once, the film of the last setting lies {} in the sun before it is planted: punch its holes only then.", "common practice, no source"},
	{"machine-covered", "The bed is formed and covered: no layer is needed.", ""},
	{"machine-none", "Laid by hand, no tractor is needed.", ""},
	{"machine-job-by-hand", "The job takes about {} of work: {} by the clock with {} people. One farm counted 4 hours of work for {}, with tape and trench.", ""},
	{"machine-walks", "Yours has {}, a walk-behind tractor. It lays narrow film on flat ground.", ""},
	{"machine-enough", "This bed needs at least {} and weight on the front; yours has {}. Four-wheel drive slips less.", ""},
	{"machine-weak", "This bed needs at least {} and weight on the front; yours has only {}.", ""},
	{"machine-needs", "This bed needs at least {} and weight on the front. Four-wheel drive slips less.", ""},
	{"machine-job", "At about {} and {} to turn, cut and bury each bed, the job takes {} by the clock: {} of work in all, with {} people.", ""},
	{"machine-hand-hours", "By hand it would take about {} of work: for small plots only.", ""},
	{"machine-two-passes", "A walk-behind tractor can pull a narrow layer over flat ground, or over a low bed that is formed already. It cannot form a bed and bury both edges in one pass: the time counts two passes.", ""},
	{"machine-walk-behind", "A walk-behind tractor (up to about {}) forms a low bed in one pass and lays in another. It cannot do both at once, and it cannot form a high bed.", ""},
}

func afterText(id string) (text, from string) {
	for i := range afterTexts {
		if t := &afterTexts[i]; t.id == id {
			return t.text, t.from
		}
	}
	panic("no text " + id)
}

// AfterTexts are those texts, a line each: the id behind "say:", a tab, the text, a tab, who
// says so. Names stay as they are in every language.
func AfterTexts() string {
	var b strings.Builder
	for i := range afterTexts {
		t := &afterTexts[i]
		b.WriteString("say:" + t.id + "\t" + t.text + "\t")
		for k, from := range strings.Split(t.from, "; ") {
			if k > 0 {
				b.WriteString("; ")
			}
			switch name := from != "" && (from[0] < 'a' || from[0] > 'z'); {
			case name:
				from = `<span translate="no">` + from + `</span>`
			case from != "": // our own words
				from = `<span>` + from + `</span>`
			}
			b.WriteString(from)
		}
		b.WriteString("\n")
	}
	return b.String()
}
