package plan

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// SeasonStep is one dated step of the year.
type SeasonStep struct {
	ID    string
	On    unit.Date
	Days  unit.Days // how long it takes or stands open; 1 for a day's work
	Weeks int       // how often it comes, week by week; 0 and 1 are once
	What  unit.Phrase
	Why   unit.Phrase
	Step  judge.Step
}

// dates are steps in the order of their days.
type dates []SeasonStep

// add puts a step behind those of the same day and before. It is called, not
// copied into its caller: copied, it would add kilobytes to the program.
//
//go:noinline
func (d *dates) add(id string, on unit.Date, days unit.Days, step judge.Step, what, why unit.Phrase) {
	*d = append(*d, SeasonStep{})
	at := len(*d) - 1
	for ; at > 0 && (*d)[at-1].On > on; at-- {
		(*d)[at] = (*d)[at-1]
	}
	(*d)[at] = SeasonStep{ID: id, On: on, Days: days, What: what, Why: why, Step: step}
}

// Season works the year's dates out, back and forth from planting. It reads the
// list for the weight of what is hauled away.
func (a *Advice) Season(s *Shopping) []SeasonStep {
	list := a.season(s)
	if a.Refused() {
		return a.bareSeason(list)
	}
	return list
}

// When the work is due, in weeks and days from laying, planting or the last picking:
// common practice, no source.
const (
	soilTestWeeks    = 16
	waterSampleWeeks = 15
	collectorWeeks   = 12
	limeWeeks        = 12
	orderWeeks       = 8
	bucketWeeks      = 6
	groundWeeks      = 3
	baseDays         = 5
	moistureDays     = 3
	probeDays        = 3
	windowDays       = 14 // that the planting window stays open, at least
	secondCropDays   = 90 // that a second crop keeps the film, at least
	dryDays          = 7  // from the last water to lifting
	warmLong         = 28 // that the ground has held its floor, where no probe need say so
)

// Film that reflects more of the sun than paleFrom is never painted; other film may be
// within paintWithin days of planting, before the leaves close.
const (
	paleFrom    = 0.3
	paintWithin = 60
)

// weeks are so many weeks before a day.
func weeks(n int) unit.Days { return unit.Days(-7 * n) }

func (a *Advice) season(s *Shopping) []SeasonStep {
	f, w := a.Facts, &a.WaitPlan
	plant, lay := w.PlantOn, w.LayOn
	var list dates
	list.add("soil-test", lay.Plus(weeks(soilTestWeeks)), 7, judge.StepField, unit.Say("Test the soil."), unit.Say("Lime needs months to work."))
	list.add("water-sample", lay.Plus(weeks(waterSampleWeeks)), 7, judge.StepField, unit.Say("Test the water for salt, iron and pH."), unit.Say("It decides the filter, and which crops the water suits."))
	list.add("collector", lay.Plus(weeks(collectorWeeks)), 7, judge.StepField, unit.Say("Ask the collector or landfill whether it takes used film."), unit.Say("Some take none, some take only clean film."))
	if !a.FilmDown() {
		order := "Order film, tape and fittings; book the layer and {} people."
		if a.Case.Practice.Laying == "hand" {
			order = "Order film, tape and fittings; find {} people."
		}
		list.add("order", lay.Plus(weeks(orderWeeks)), 7, judge.StepOrder, unit.Say(order, a.WorkOf().People), unit.Say("Films other than black often have to be ordered."))
	}
	list.add("bucket-test", lay.Plus(weeks(bucketWeeks)), 1, judge.StepField, unit.Say("Do the bucket test at the field, after half an hour of running."), unit.Say("The flow sets the zones."))
	if !a.FilmDown() {
		list.add("ground", lay.Plus(weeks(groundWeeks)), 14, judge.StepGround, unit.Say("Kill perennial weeds, bury trash, pick stones, and work the ground fine."), unit.Say("Clods and sticks hold film off the soil and tear it."))
		list.add("moisture", lay.Plus(-moistureDays), 2, judge.StepGround, unit.Say("Bring the ground to field capacity, and test a squeezed ball."), unit.Say("Tape hardly wets a bed that was covered dry."))
		list.add("lay", lay, 1, judge.StepLaying, unit.Say("Lay the film."), unit.Say("{} before planting.", w.Days))
	} else {
		if judge.Painted(f) {
			list.add("paint-first", lay, 2, judge.StepLaying, unit.Say("Paint the old film white before you plant."), unit.Say("Dark film in summer sun kills stems that touch it."))
		}
		list.add("mend", lay, 1, judge.StepLaying, unit.Say("The film is down: patch or cover its holes, bury loose edges, clear the old crop."), unit.Say("Weeds come through every hole."))
	}
	a.trayStep(&list, s)
	a.feedingSteps(&list, &s.Base)
	a.coverSteps(&list, s)
	flush := min(lay.Plus(1), plant)
	waitSays := "Wait: do not punch holes yet."
	if a.Case.Practice.FumigatedOn.Given { // nobody enters treated ground to read a gauge
		flush = plant
		waitSays = "Wait: do not punch holes yet. Keep out until the label lets people in."
	}
	list.add("water-test", flush, 1, judge.StepWater, unit.Say("Flush main, header and tapes, then close the ends. Read the pressure at the far end."), unit.Say("Always before planting."))
	if why, _ := a.Wait.Best(); w.Days > 1 && !a.FilmDown() {
		list.add("wait", lay.Plus(1), w.Days-1, judge.StepSeason, unit.Say(waitSays), unit.Say("The reason: {}.", question.Wait.Says(why).Text))
	}
	if !f.Autumn && f.ReachWork[f.ChosenCover()] > -warmLong {
		list.add("probe", max(lay, plant.Plus(-probeDays)), max(1, min(probeDays, w.Days)), judge.StepSeason, a.probeSays(), unit.Say("The computed curve is for a usual year; your probe knows this one."))
	}
	verb := "Set out"
	if f.Seeded {
		verb = "Sow"
	}
	care := unit.Say("Plant in the evening if it is hot; keep stems off the film.")
	if f.Seeded {
		care = unit.Say("Free seedlings that come up under the film.")
	} else if plants := float64(a.plants()); plants > 0 {
		text := "Setting by hand is {} of work for one person."
		if !f.Crop.Pieces {
			text = care.Text + " " + text
		}
		care = unit.Say(text, unit.Between(settingHours(plants/setMost), settingHours(plants/setLeast)))
	}
	list.add("plant", plant, plantingDays, judge.StepPlant, unit.Say(verb+" {}, on this day or within two weeks.", f.Crop.Name), care)
	firstWhy := "Rain does not go through film, and a dry root ball does not take water from the bed."
	if f.Seeded || f.Crop.Pieces {
		firstWhy = "Rain does not go through film."
	}
	list.add("first-water", plant, 1, judge.StepWater, a.firstWater(), unit.Say(firstWhy))
	harvest := plant.Plus(f.CropDays)
	if weeks := int(f.CropDays-1) / 7; weeks > 0 {
		list.add("weekly-check", plant.Plus(7), 1, judge.StepSeason, unit.Say("Check the probe, the planting holes for weeds, the edges, and the pressure at the far end."), unit.Say("Ten minutes a week saves the film."))
		list.weekly("weekly-check", weeks)
	}
	if turn, ok := a.whitening(); ok {
		list.add("paint", turn, 3, judge.StepSeason, unit.Say("If the bed is still open to the sun, paint the film white from here on."), unit.Say("The root zone passes {} under it.", f.Ceiling))
	}
	list.add("harvest", harvest, unit.Days(f.Crop.DaysToHarvest.High-f.Crop.DaysToHarvest.Low)+1, judge.StepSeason, unit.Say("The first harvest of {} may begin.", f.Crop.Name), unit.Say("{} from planting, by published lists.", f.CropDays))
	end, second := a.cropEnds()
	if second {
		why := unit.Say("We found no trial on how much of this film is left after two crops.")
		if left := judge.FilmRow(f).CoverLeft; left.Given() {
			why = unit.Say("In a trial {} of this film's cover was left after two crops.", left.Value)
		}
		list.add("second-crop", end, 7, judge.StepSeason, unit.Say("Second crop on the same film: check how much of the film is whole, test the tape, feed again, and plant something other than the {} family.", f.Crop.Family), why)
		end = end.Plus(secondCropDays)
	}
	dryWhy := "Dry film lifts clean and light."
	if a.LastWater(s) < end {
		dryWhy = "Bulbs that ripen dry keep longer."
	}
	list.add("stop", a.LastWater(s), 1, judge.StepSeason, unit.Say("Stop the water and let the bed dry."), unit.Say(dryWhy))
	switch judge.FilmRow(f).Removal {
	case table.LiftAndHaul:
		weight := unit.Say("Never burn it, never bury it.")
		if e := a.EndOfFilm(s); e.Least > 0 {
			weight = unit.Say("Never burn it, never bury it. It weighs about {}: from half to nine tenths of that is soil and water that cling to it.", e.Hauled())
		}
		hours := unit.Say("Wet film is heavy, and wet soil clings to it.")
		if lifting := a.WorkOf().Lifting; lifting > 0 {
			hours = unit.Say("About {} of work for one person.", lifting)
		}
		lift := "Mow, pull the tape, undercut the edges, and lift the film dry."
		if f.Crop.Dug() {
			lift = "Mow the tops, pull the tape, undercut the edges, and lift the film dry. Then dig: the crop lies under it."
		}
		list.add("lift", end.Plus(dryDays), 2, judge.StepLifting, unit.Say(lift), hours)
		list.add("haul", end.Plus(dryDays+2), 1, judge.StepLifting, unit.Say("Haul the film to the collector."), weight)
	default:
		list.add("till-in", end.Plus(dryDays), 2, judge.StepLifting, unit.Say("Mow and till the film in; pull the tape out first."), unit.Say("Only for film that is made to be tilled in."))
	}
	return list
}

// firstWater is how to water the young plants.
func (a *Advice) firstWater() unit.Phrase {
	first := "Water each plant in."
	if a.Facts.Seeded {
		first = "Run the tape until the ground at the seeds is wet."
	}
	if a.Water.StartRun == 0 {
		return unit.Say(first)
	}
	w := &a.Water
	low, most := RunWords(w.StartEvery, w.StartRun), RunWords(w.MostEvery, w.MostRun)
	if low == most {
		return unit.Say(first+" Then run the tape {}, zone by zone.", low)
	}
	return unit.Say(first+" Young plants: from {} to {}, zone by zone. Guides and trials differ on how little film leaves them to drink. Put your hand into the bed: what you feel decides.", low, most)
}

// plantingDays is how long planting stands open: film that waits longer weathers for
// nothing, and the dates that follow move on.
const plantingDays = 15

// probeSays is the floor that the planting day waits for, as a probe shows it.
func (a *Advice) probeSays() unit.Phrase {
	f := a.Facts
	if cover := f.CoverFloor(); cover < f.WorkFloor {
		return unit.Say("Read the probe at ten in the morning, {} deep. Plant once it shows {} on three days; from {} on, under covers.", unit.Short(f.Depth), f.WorkFloor, cover)
	}
	return unit.Say("Read the probe at ten in the morning, {} deep. Plant once it shows {} on three days.", unit.Short(f.Depth), f.WorkFloor)
}

// How many plants one person sets by hand in an hour, by growers' own counts.
const (
	setLeast = 100
	setMost  = 150
)

// plants are the places on all beds; 0 where those are not known.
func (a *Advice) plants() int {
	if c := &a.Case.Field; c.BedLength.Given && c.Beds.Given {
		return PlantsOn(c.BedLength.Value, a.Facts.InRow, a.Facts.Rows) * int(c.Beds.Value)
	}
	return 0
}

// settingHours rounds up as coarsely as a count of plants an hour allows.
func settingHours(h float64) unit.Hours {
	step := 0.5
	switch {
	case h > 100:
		step = 10
	case h > 20:
		step = 1
	}
	return unit.Hours(math.Ceil(h/step-1e-9) * step)
}

// hardenDays is how long before planting plants begin to go outdoors: one to two weeks, by
// state garden pages, which keep plants in below 45 °F, and vine crops below 50.
const (
	hardenDays  = 10
	hardenIn    = unit.Celsius((45 - 32) / 1.8)
	hardenVines = unit.Celsius((50 - 32) / 1.8)
)

// hardenAbove is the air below which plants that are hardened stay in.
func (a *Advice) hardenAbove() unit.Celsius {
	if a.Facts.Crop.Group == table.Vine {
		return hardenVines
	}
	return hardenIn
}

// trayStep is when transplants are sown or ordered, and when they go outdoors.
func (a *Advice) trayStep(list *dates, s *Shopping) {
	f := a.Facts
	trays := &f.Crop.TrayWeeks
	if f.Seeded {
		return
	}
	plant, line := a.WaitPlan.PlantOn, &s.Lines[field.ItemPlants]
	if !trays.Given() {
		if line.Taken() > 0 {
			list.add("plants", plant.Plus(weeks(orderWeeks)), 7, judge.StepOrder, unit.Say("Order what you set out: {}.", int(line.Taken())), unit.Say("Good plants are soon sold out."))
		}
		return
	}
	what := unit.Say("Sow {} in trays, or order the plants.", f.Crop.Name)
	if line.Taken() > 0 {
		what = unit.Say("Sow {} in trays, or order the plants: {}.", f.Crop.Name, int(line.Taken()))
	}
	first, last := plant.Plus(weeks(int(trays.High))), plant.Plus(weeks(int(trays.Low)))
	list.add("trays", first, last.Minus(first)+1, judge.StepOrder, what,
		unit.Say("They want {} to {} weeks under cover before they are set out.", int(trays.Low), int(trays.High)))
	list.add("harden", plant.Plus(-hardenDays), hardenDays, judge.StepPlant, unit.Say("Harden the plants: outdoors by day, less water, no feed, in while it is colder than {}.", a.hardenAbove()), unit.Say("Plants from a warm house stop growing, or burn, where they are set out at once."))
}

// feedingSteps are what goes into the ground before the film, and through the tape
// after it.
func (a *Advice) feedingSteps(list *dates, b *BaseFertiliser) {
	lay := a.WaitPlan.LayOn
	if b.Lime > 0 && !b.Down {
		list.add("lime", lay.Plus(weeks(limeWeeks)), 7, judge.StepGround, unit.Say("Spread lime and work it in: {} for the field of these beds.", b.Lime), unit.Say("Lime needs months to work, and cannot be mixed in under film."))
	}
	n, p, k := &b.Nutrients[Nitrogen], &b.Nutrients[Phosphate], &b.Nutrients[Potash]
	if n.Under+p.Under+k.Under > 0 && !b.Down {
		var what unit.Phrase
		switch {
		case b.Product > 0:
			what = unit.Say("Spread {} of {} and mix it in, {}.", weighed(b.Product), b.GradeWords(), b.Strip)
		case b.Bed > 0:
			what = unit.Say("Spread the base fertilizer and mix it in, for all beds: nitrogen {}, phosphate {}, potash {}.", weighed(n.UnderMass), weighed(p.UnderMass), weighed(k.UnderMass))
		default:
			what = unit.Say("Spread the base fertilizer and mix it in, for beds {} apart: nitrogen {}, phosphate {}, potash {}.", b.Centres, some(n.Under), some(p.Under), some(k.Under))
		}
		why := unit.Say("It cannot be corrected once the bed is covered. A soil test overrules these rates.")
		if b.Bare {
			why = unit.Say("Young roots find it there. A soil test overrules these rates.")
		}
		list.add("base-fertiliser", lay.Plus(-baseDays), 2, judge.StepGround, what, why)
	}
	if n.Tape > 0 && !b.Bare {
		why := unit.Say("What goes under the film is subtracted already.")
		if b.Down {
			why = unit.Say("Nothing can go under film that is down.")
		}
		what := unit.Say("Feed nitrogen through the tape once a week: {} with beds {} apart.", b.AWeek, b.Centres)
		if b.Bed > 0 {
			what = unit.Say("Feed nitrogen through the tape once a week: {} for all beds.", weighed(b.forBeds(b.AWeek)))
		}
		list.add("feed", b.From, 1, judge.StepWater, what, why)
		list.weekly("feed", b.Weeks)
	}
}

// coverSteps take covers off in time, where they are used.
func (a *Advice) coverSteps(list *dates, s *Shopping) {
	c := soonest(s.Covers)
	if c == nil {
		return
	}
	what, why := unit.Say("Take the covers off within two weeks, or as soon as flowers open."), "Bees must reach the flowers, and heat under covers drops them."
	g := a.Facts.Crop.Group
	fruits := g == table.Vine || g == table.Fruiting || g == table.Berry
	switch {
	case !fruits:
		what, why = unit.Say("If you planted under covers on {}: take them off within two weeks.", c.First), "Under covers it gets hot."
	case !c.Asked:
		what = unit.Say("If you planted under covers on {}: take them off within two weeks, or as soon as flowers open.", c.First)
	}
	list.add("covers-off", c.OffOn, coverMost-coverLeast+1, judge.StepSeason, what, unit.Say(why))
}

// weekly makes a step one that comes week by week.
func (d dates) weekly(id string, weeks int) {
	for i := range d {
		if d[i].ID == id {
			d[i].Weeks = weeks
		}
	}
}

// whitening is the first day, after planting and before the leaves close, on
// which the root zone under the chosen film passes the crop's ceiling.
func (a *Advice) whitening() (unit.Date, bool) {
	f := a.Facts
	if f.Film == table.NoFilm || table.Films[f.Film].SunReflected.Value > paleFrom {
		return 0, false
	}
	for day := range paintWithin {
		if mean, _, _ := f.Warmth.Of(int(f.Film), day); mean > f.Ceiling {
			return f.Plant.Plus(unit.Days(day)), true
		}
	}
	return 0, false
}
