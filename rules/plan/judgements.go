package plan

import (
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Judgements lists the figures that buying, laying and the season rest on and that no
// table gives outright.
func Judgements() []unit.Judgement {
	list := []unit.Judgement{
		{ID: "work-by-hand", Means: "of one person to lay a length of bed by hand, with tape and trench: one farm's own count", Value: handHours, Unit: "h", Source: table.HandLaying.Named()},
		{ID: "work-by-hand-bed", Means: "the length of bed that those hours were counted on", Value: float64(handMetres), Unit: "m", Source: table.HandLaying.Named()},
		{ID: "work-speed", Means: "of a tractor that lays film", Value: float64(layingSpeed), Unit: "m/s", Source: unit.FromMemory},
		{ID: "work-turn", Means: "to turn, cut and bury at each bed end, for beginners", Value: turnMinutes, Unit: "min", Source: unit.FromMemory},
		{ID: "work-lifting", Means: "of one person to lift the film of an acre, on centers of 6 ft, by hand with a lifter", Value: liftHoursPerAcre, Unit: "h"},
		{ID: "work-people", Means: "people behind a tractor, where nobody said how many", Value: layingHands, Source: unit.CommonPractice},
		{ID: "work-least-people", Means: "people at least: a driver and one at the row start, or two by hand", Value: leastHands, Source: unit.CommonPractice},
		{ID: "work-one-lifts", Means: "that one person may lift at the very best", Value: float64(oneLifts), Unit: "kg", Source: table.LiftingOSHA.Named()},
		{ID: "work-least-lifters", Means: "people for a roll, at least: it is long and has no handles", Value: leastLifters},
		{ID: "work-most-lifters", Means: "people beyond whom a roll asks for a machine", Value: mostLifters},
		{ID: "laying-wind", Means: "wind that stops the work", Value: float64(windLimit), Unit: "m/s", Source: unit.FromMemory},
		{ID: "laying-bury-start", Means: "of film buried by hand before the tractor goes on", Value: float64(buryStart), Unit: "m", Source: unit.FromMemory},
		{ID: "laying-walk-behind", Means: "that a person walks behind the layer", Value: float64(WalkBehind), Unit: "m", Source: unit.FromMemory},
		{ID: "laying-tape-tail", Means: "of tape left at each end of a bed", Value: float64(tapeTail), Unit: "m", Source: unit.FromMemory},
		{ID: "laying-check-every", Means: "of bed after which the work is looked at", Value: float64(checkEvery), Unit: "m"},
		{ID: "laying-ribboning", Means: "of clay from which soil still ribbons at field capacity", Value: ribboning},
		{ID: "laying-walk-film", Means: "width of film that the layer of a walk-behind tractor takes, at most", Value: float64(walkFilm), Unit: "m", Source: table.BuriedEdge.Publisher},
		{ID: "tape-depth", Means: "of tape under the bed's top", Value: float64(tapeDepth), Unit: "m", Source: unit.CommonPractice},
		{ID: "tape-offset", Means: "of tape from a lone row, so that no hole is punched over it", Value: float64(tapeOffset), Unit: "m", Source: table.TapeOffset.Named()},
		{ID: "buying-tape-waste", Means: "of tape beyond the beds, for splices and repairs", Value: tapeWaste, Source: unit.FromMemory},
		{ID: "buying-plant-spare", Means: "of plants beyond the places, for filling gaps after planting", Value: plantSpare, Source: unit.CommonPractice},
		{ID: "buying-roll", Means: "of film on a roll that nobody named", Value: rollDefault, Unit: "m", Source: unit.CommonPractice},
		{ID: "buying-roll-metric", Means: "the same where film is sold in round meters", Value: float64(rollMetric), Unit: "m", Source: unit.CommonPractice},
		{ID: "buying-gauge", Means: "top of a gauge that is fine enough to read the tape's pressure", Value: float64(gaugeTop), Unit: "kPa", Source: unit.FromMemory},
		{ID: "buying-tape-wall", Means: "wall of tape for one season", Value: float64(tapeWall), Unit: "µm", Source: unit.FromMemory},
		{ID: "buying-tough-tape", Means: "wall of tape among stones or for a second crop", Value: float64(toughTape), Unit: "µm", Source: unit.FromMemory},
		{ID: "hauling-soil-share", Means: "mass of lifted film with its soil, beside clean film: published from 2 to 10", Value: table.FilmWithSoil.Value, Unit: "times", Source: table.FilmWithSoil.Source.Named() + " (10); " + table.PaperNutsedge2018.Named() + " (2)"},
		{ID: "season-set-least", Means: "plants that one person sets by hand in an hour, at least", Value: setLeast, Source: "a market growers' list of 2002, trade text"},
		{ID: "season-set-most", Means: "the same, at most", Value: setMost, Source: "a market growers' list of 2002, trade text"},
		{ID: "season-harden", Means: "before planting from which plants are hardened off", Value: hardenDays, Unit: "days", Source: "state garden pages: one to two weeks"},
		{ID: "season-harden-in", Means: "air below which plants that are hardened stay in", Value: float64(hardenIn), Unit: "°C", Source: "state garden pages: 45 °F"},
		{ID: "season-harden-vines", Means: "the same of vine crops", Value: float64(hardenVines), Unit: "°C", Source: "state garden pages: 50 °F"},
		{ID: "feeding-rests", Means: "after planting and before the crop's end without feeding", Value: feedingRests, Unit: "days", Source: unit.CommonPractice},
		{ID: "feeding-no-tape-low", Means: "of the nitrogen taken off where all of it goes under the film, at least", Value: noTapeLow, Source: table.MidwestFeeding.Named()},
		{ID: "feeding-no-tape-high", Means: "the same, at most", Value: noTapeHigh, Source: table.MidwestFeeding.Named()},
		{ID: "feeding-spring-weeks", Means: "of feeding for a crop that overwinters", Value: springFeeding, Unit: "weeks", Source: "University of Delaware: 60 lb at 3 to 5 lb an acre a week"},
		{ID: "feeding-spring-before", Means: "from the start of that feeding to the first picking", Value: springBefore, Unit: "days"},
		{ID: "feeding-rich-soil", Means: "of organic matter above which later nitrogen may be left out", Value: richSoil, Unit: "%", Source: table.MidwestFeeding.Named()},
		{ID: "feeding-low-ph", Means: "pH below which most vegetables want lime", Value: lowAcidity, Source: table.MidwestCucurbits.Named()},
		{ID: "feeding-high-ph", Means: "pH above which most vegetables do worse", Value: highAcidity, Source: table.MidwestCucurbits.Named()},
		{ID: "feeding-fine-below", Means: "mass below which a sentence tells it finely", Value: float64(fineBelow), Unit: "kg"},
		{ID: "covers-hoops", Means: "between hoops", Value: hoopSpacing, Unit: "m", Source: "makers' pages: 4 to 5 ft"},
		{ID: "covers-buried", Means: "of a cover's edge in the ground, on each side", Value: coverBuried, Unit: "m", Source: unit.CommonPractice},
		{ID: "covers-slack", Means: "across a floating cover, for the plants to grow into", Value: coverSlack, Unit: "m", Source: unit.CommonPractice},
		{ID: "covers-least", Means: "after planting that a cover comes off, at the soonest", Value: coverLeast, Unit: "days", Source: table.RowCoversNewEngland.Named()},
		{ID: "covers-most", Means: "the same, at the latest", Value: coverMost, Unit: "days", Source: table.RowCoversNewEngland.Named()},
		{ID: "covers-wins", Means: "that a cover is counted to win, at most", Value: float64(coverWins), Unit: "days", Source: table.RowCoversH251.Named()},
		{ID: "reading-depth", Means: "deep, beside the tape, where a handful is taken to be felt", Value: float64(ReadingDepth), Unit: "m", Source: unit.CommonPractice},
		{ID: "week-first-opening", Means: "of the morning when the first valve is opened, where a clock is told", Value: float64(firstOpening), Unit: "min", Source: unit.CommonPractice},
		{ID: "week-rain-share", Means: "of rain that counts for the roots, through holes and under the edge: an assumption; a plot in Japan took in 39 % of what bare ground did", Value: rainShare},
		{ID: "week-light-rain", Means: "of a day's reference evapotranspiration below which rain is lost the same day", Value: lightRain, Source: table.FAO56.Named()},
		{ID: "week-meter-apart", Means: "by which the meter and the minutes may differ before it is said", Value: meterApart},
		{ID: "week-reading-apart", Means: "of the water for roots by which a reading and the running account may differ before it is said", Value: readingApart},
		{ID: "week-season-margin", Means: "before planting and after the last water for which days may be written down", Value: seasonMargin, Unit: "days", Source: unit.CommonPractice},
		{ID: "tension-at-trigger", Means: "of the water for roots gone where the published tension to start drip begins; at its end a quarter is", Value: startUsed, Source: table.UtahTension.Named()},
		{ID: "tension-at-end", Means: "of the water for roots gone where that range ends", Value: endUsed, Source: table.UtahTension.Named()},
		{ID: "tension-dry", Means: "tension at which nothing is left for roots, to which what is left beyond the range falls with the logarithm of tension", Value: wiltingTension, Unit: "kPa", Source: table.FAO56.Named()},
		{ID: "tension-works-to", Means: "tension up to which a water-filled gauge works", Value: gaugeWorks, Unit: "kPa", Source: "North Carolina State University AG-452-2"},
		{ID: "covers-cool-vent", Means: "air by day above which covers come off cool crops", Value: float64(coolVent), Unit: "°C", Source: table.RowCoversCool.Named()},
		{ID: "instead-straw-least", Means: "of straw mulch, at least", Value: float64(strawLeast), Unit: "m", Source: unit.CommonPractice},
		{ID: "instead-straw-most", Means: "of straw mulch, at most", Value: float64(strawMost), Unit: "m", Source: unit.CommonPractice},
		{ID: "instead-next-spring", Means: "after a day that will not do, from which the next spring is looked for", Value: nextSpring, Unit: "days"},
		{ID: "instead-most-named", Means: "other crops named, at most", Value: mostNamed},
		{ID: "season-pale-from", Means: "of the sun reflected, above which film is never painted", Value: paleFrom},
		{ID: "season-paint-within", Means: "after planting within which film may have to be painted", Value: paintWithin, Unit: "days"},
		{ID: "season-most-turns", Means: "openings of valves in a day that a person follows from a list", Value: mostTurns},
	}
	for _, due := range [...]struct {
		id, means, unit string
		value           float64
	}{
		{"soil-test", "before laying for the soil test", "weeks", soilTestWeeks},
		{"water-sample", "before laying for the water test", "weeks", waterSampleWeeks},
		{"collector", "before laying for asking the collector", "weeks", collectorWeeks},
		{"lime", "before laying for lime", "weeks", limeWeeks},
		{"order", "before laying for the order", "weeks", orderWeeks},
		{"bucket-test", "before laying for the bucket test", "weeks", bucketWeeks},
		{"ground", "before laying for working the ground", "weeks", groundWeeks},
		{"base-fertiliser", "before laying for what goes under the film", "days", baseDays},
		{"moisture", "before laying for bringing the ground to field capacity", "days", moistureDays},
		{"probe", "before planting for reading the probe", "days", probeDays},
		{"window", "that the planting window stays open, at least", "days", windowDays},
		{"second-crop", "that a second crop keeps the film, at least", "days", secondCropDays},
		{"dry", "from the last water to lifting the film", "days", dryDays},
	} {
		list = append(list, unit.Judgement{ID: "due-" + due.id, Means: due.means, Value: due.value, Unit: due.unit, Source: unit.CommonPractice})
	}
	return list
}
