package plan

import (
	"math"
	"slices"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// AfterLine is one thing to know between laying and lifting. A line without From heads those
// that follow. The page's program carries neither texts nor sources: it fetches [AfterTexts].
type AfterLine struct {
	ID   string
	Says unit.Phrase
	From string // who says so
}

// after gathers lines.
type after []AfterLine

//go:noinline
func (l *after) say(id string, values ...any) {
	text, from := afterText(id)
	*l = append(*l, AfterLine{id, unit.Say(text, values...), from})
}

// After is how the work goes on once the film lies: holes and planting, feeding, alleys, covers,
// another crop on the same film, the same crop again. It is empty where film is refused.
func (a *Advice) After(s *Shopping) []AfterLine {
	var l after
	if a.Refused() {
		return nil
	}
	a.holes(&l)
	if b := &s.Base; b.Nutrients[Nitrogen].Tape > 0 {
		l.say("feeding")
		if b.Bed > 0 {
			l.say("feed-weekly-beds", weighed(b.forBeds(b.AWeek)), b.AWeek, b.Centres, b.From, b.Weeks)
		} else {
			l.say("feed-weekly", b.AWeek, b.Centres, b.From, b.Weeks)
		}
		if a.Facts.Crop.Group == table.Fruiting {
			l.say("feed-potash")
		}
		l.say("feed-care")
		l.say("feed-law")
	}
	a.alleys(&l)
	if overwinters(a) && a.Facts.Crop.Group == table.Berry {
		l.say("bloom")
		l.say("bloom-frost", a.WaitPlan.PlantOn.Plus(a.Facts.CropDays-bloomBefore), openFlower, tightBud)
	}
	if c := soonest(s.Covers); c != nil {
		l.say("covers")
		l.say("covers-on", c.First)
		l.say("covers-vent", c.Vent)
		l.say("covers-off-by-degrees", c.OffOn.Plus(-weekDays), c.OffOn)
	}
	a.secondCrop(&l)
	a.again(&l)
	return l
}

// Strawberries open their flowers about five weeks before the first picking (from memory). Open
// flowers and tight buds die at these temperatures (University of Maine, 2023).
const (
	bloomBefore = 35
	openFlower  = unit.Celsius((30 - 32) / 1.8)
	tightBud    = unit.Celsius((25 - 32) / 1.8)
)

// How planting goes: a setter behind a tractor, with a driver and one who sets, by a market
// growers' list; a cup of water a plant, and starter to 50 gallons ([table.MidwestFeeding]);
// holes, common practice.
const (
	setterLeast, setterMost = 600.0, 800.0 // plants an hour
	setterFrom              = 2000         // plants, for which hitching and filling it pays: our judgement
	holeLeast, holeMost     = unit.Metres(2 * unit.MetresPerInch), unit.Metres(3 * unit.MetresPerInch)
	closeRow                = unit.Metres(8 * unit.MetresPerInch) // nearer plants would leave no film between such holes
	smallLeast, smallMost   = unit.Metres(unit.MetresPerInch), unit.Metres(1.5 * unit.MetresPerInch)
	cup                     = unit.Litres(unit.LitresPerGallon / 16)
	starterMass             = unit.FineMass(3 * unit.KilogramsPerPound)
	starterWater            = 50 * unit.LitresPerGallon
	starterPlants           = 800
	slitLeast, slitMost     = unit.Metres(6 * unit.MetresPerInch), unit.Metres(8 * unit.MetresPerInch)
)

// holes are the pattern, planting or sowing, and the water in the hole.
func (a *Advice) holes(l *after) {
	f := a.Facts
	l.say("holes")
	plants := a.plants()
	if plants > 0 {
		l.say("holes-count", plants, f.Rows, unit.Short(f.InRow))
	}
	if a.FilmDown() {
		l.say("holes-there")
	}
	if f.Rows > 1 {
		l.say("holes-crosswise")
	}
	if a.TapePlan.Tape != nil {
		l.say("holes-tape", unit.Short(a.TapePlan.Depth))
	}
	if f.InRow < closeRow {
		l.say("holes-small", unit.Between(unit.Short(smallLeast), unit.Short(smallMost)))
	} else {
		l.say("holes-size", unit.Between(unit.Short(holeLeast), unit.Short(holeMost)))
	}
	switch {
	case f.Seeded:
		if few, many := seedsAHole(f.Crop); plants > 0 {
			l.say("seeds", few, many, few*plants, many*plants)
		} else {
			l.say("seeds-each", few, many)
		}
		if f.Film == table.Clear {
			l.say("clear-open", unit.Between(unit.Short(slitLeast), unit.Short(slitMost)))
		}
		return
	case f.Crop.Pieces:
		l.say("pieces")
		return
	case plants > 0:
		n := float64(plants)
		l.say("set-hand", unit.Between(settingHours(n/setMost), settingHours(n/setLeast)), setLeast, setMost)
		if p := &a.Case.Practice; p.Laying != "hand" && p.Tractor.Or(judge.LeastWalk+1) > judge.LeastWalk && plants >= setterFrom {
			l.say("set-setter", unit.Between(settingHours(n/setterMost), settingHours(n/setterLeast)))
		}
		l.say("cup", unit.Litres(n)*cup)
		l.say("starter", starterMass, unit.Litres(starterWater), starterPlants, (plants+starterPlants-1)/starterPlants)
	}
	if f.Crop.Group == table.Vine {
		l.say("age-vines")
	}
	if f.Crop.MayStake > 0 {
		l.say("may-stake")
	}
	if f.Crop.Climbs {
		l.say("may-trellis")
	}
}

// seedsAHole is how many seeds go into a hole: vine crops two or three, by a maker's page;
// others one or two, common practice.
func seedsAHole(crop *table.Crop) (few, many int) {
	if crop.Group == table.Vine {
		return 2, 3
	}
	return 1, 2
}

// What seed an alley takes where it is sown whole, by seed catalogues: rye 100 lb an acre,
// annual ryegrass 25 to 35.
const (
	poundsAnAcre                      = unit.KilogramsPerPound / unit.SquareMetresPerAcre // kg/m²
	ryeSeed                           = 100 * poundsAnAcre
	grassLeast, grassMost             = 25 * poundsAnAcre, 35 * poundsAnAcre
	hectare                           = 10000
	alleyLeast            unit.Metres = 0.1 // narrower is none
)

// Straw for an alley: a bale of 50 lb on 150 square feet, by a calculator's page, to one of 40 lb on
// 80, from memory. Its carbon, four tenths of it (from memory), stands at 80 to one of nitrogen,
// and what rots it wants 24 to one (USDA Natural Resources Conservation Service, carbon to
// nitrogen ratios in cropping systems): so much more nitrogen it takes, were all of it to rot.
const (
	squareFeet      = unit.MetresPerFoot * unit.MetresPerFoot
	alleyStrawLeast = 50 * unit.KilogramsPerPound / (150 * squareFeet) // kg/m²
	alleyStrawMost  = 40 * unit.KilogramsPerPound / (80 * squareFeet)
	bale            = 20.0 // kg, 45 lb: the middle of the two
	strawCarbon     = 0.4
	strawTakes      = strawCarbon/24 - strawCarbon/80
)

// swardLeast and swardMost are the crop coefficients of a cool-season sward that is mown (FAO-56,
// table 12, from memory).
const swardLeast, swardMost = 0.90, 0.95

// alleyWater is what a green alley drinks in the season's thirstiest month, beside the rain that
// it has for it: the tape wets the bed alone.
func (a *Advice) alleyWater(l *after, area float64) {
	in := a.Facts.WaterInput()
	if !in.Usual.Given {
		return
	}
	month, most := 0, unit.Millimetres(0)
	for day := unit.Days(0); day < a.Facts.SeasonDays(); day += weekDays {
		_, m, _ := in.PlantOn.Plus(day).Civil()
		if use := in.Usual.Value[m-1]; use > most {
			month, most = m, use
		}
	}
	litres := func(coefficient float64) unit.RoughVolume {
		return unit.RoughVolume(float64(most) * weekDays * coefficient * area)
	}
	name := unit.MonthName(month)
	l.say("alley-water", unit.Between(most*weekDays*swardLeast, most*weekDays*swardMost), name, unit.Between(litres(swardLeast), litres(swardMost)))
	if rain := a.Case.Place.RainNormals(); rain.Given {
		l.say("alley-rain", name, unit.Millimetres(rain.Value[month-1]/monthDays*weekDays))
	}
}

// monthDays is a month.
const monthDays = 30.4

// alleys sets bare ground, straw, rye and a mown sward beside each other.
func (a *Advice) alleys(l *after) {
	f := a.Facts
	wide := unit.TenthMillimetre(float64(f.Centres - a.Shape.Base))
	if wide < alleyLeast {
		return
	}
	l.say("alleys")
	if f.BedMetres > 0 {
		area := float64(f.BedMetres) * float64(wide)
		l.say("alleys-are", f.BedMetres, unit.Short(wide))
		l.say("alley-bare")
		l.say("alley-straw")
		low, high := area*alleyStrawLeast, area*alleyStrawMost
		l.say("alley-straw-need", unit.Between(unit.RoughMass(low), unit.RoughMass(high)), int(math.Ceil(low/bale)), int(math.Ceil(high/bale)), unit.RoughMass(bale))
		l.say("alley-straw-nitrogen", unit.RoughMass(high*strawTakes))
		l.say("alley-straw-heat", unit.Between(unit.CelsiusDegrees(1), unit.CelsiusDegrees(2)))
		l.say("alley-rye", unit.KilogramsPerHectare(ryeSeed*hectare), weighed(unit.Kilograms(area*ryeSeed)))
		l.say("alley-sward", unit.Between(unit.KilogramsPerHectare(grassLeast*hectare), unit.KilogramsPerHectare(grassMost*hectare)), unit.Between(unit.FineMass(area*grassLeast), unit.FineMass(area*grassMost)))
		a.alleyWater(l, area)
	} else {
		l.say("alley-bare")
		l.say("alley-straw")
		l.say("alley-rye-rate", unit.KilogramsPerHectare(ryeSeed*hectare))
		l.say("alley-sward-rate", unit.Between(unit.KilogramsPerHectare(grassLeast*hectare), unit.KilogramsPerHectare(grassMost*hectare)))
	}
	switch f.Crop.Group {
	case table.Fruiting:
		l.say("alley-for-fruiting", f.Crop.Name)
	case table.Vine:
		l.say("alley-for-vines", f.Crop.Name)
	case table.Berry:
		l.say("alley-for-berries")
	}
	l.say("alley-edge")
	l.say("alley-spray")
}

// A second crop: the bed is cleared in a week, and days grow shorter for what is picked in the
// fall: two weeks more, by a horticulturist of Virginia Tech. Crops are named that go in within
// six weeks, mostSeconds at most. Film is long down after longDown ([table.FilmAge], nine
// months).
const (
	clearDays   = 7
	fallDays    = 14
	waitsMost   = 42
	mostSeconds = 4
	pickedFor   = 21 // that a first crop is picked at least, where it makes room
	longDown    = 274
	thinMost    = 1.5 // times the holes' distance, beyond which a crop stands too thin in them
)

// afterFamily names the crops that a guide sets after a family, in its order
// ([table.FloridaDouble2018]).
var afterFamily = [...]struct {
	family string
	crops  [3]string
}{
	{"Solanaceae", [3]string{"summer-squash", "broccoli", "cabbage"}},
	{"Cucurbitaceae", [3]string{"bell-pepper", "tomato", "broccoli"}},
}

// second is a crop that may follow on the film.
type second struct {
	crop        *table.Crop
	from, until unit.Date // to plant; until is from where no frost sets an end
	pick        unit.Date
	hot         bool // the ground is hotter than its roots bear
}

// secondCrop is what stands on the film's second crop: film, holes, feed, paint, crops and days.
func (a *Advice) secondCrop(l *after) {
	f := a.Facts
	if judge.FilmRow(f).Removal != table.LiftAndHaul || f.Crop.Dug() {
		return
	}
	end, _ := a.cropEnds()
	turn := end.Plus(clearDays)
	lain := turn.Minus(a.WaitPlan.LayOn)
	l.say("second")
	l.say("second-when", end, turn)
	if on := a.Case.Practice.ReuseLaidOn; on.Given {
		lain = turn.Minus(on.Value)
	}
	if lain > longDown {
		l.say("second-film-old", lain)
	} else {
		l.say("second-film", lain)
	}
	l.say("second-holes", unit.Short(f.InRow))
	list := a.seconds(turn)
	if early := a.WaitPlan.PlantOn.Plus(f.CropDays + pickedFor + clearDays); len(list) == 0 && early < turn {
		if list = a.seconds(early); len(list) > 0 {
			l.say("second-early", end, early)
		}
	}
	hot := false
	for _, c := range list {
		hot = hot || c.hot
		if c.until > c.from {
			l.say("second-crop", unit.Capital(c.crop.Name), c.from, c.until, c.pick)
		} else {
			l.say("second-crop-now", unit.Capital(c.crop.Name), c.from, c.pick)
		}
	}
	if len(list) == 0 {
		l.say("second-none", turn)
		return
	}
	l.say("second-family", f.Crop.Family)
	if f.Crop.Group == table.Berry {
		l.say("second-wilt")
	}
	l.say("second-feed")
	l.say("second-tape")
	if area := float64(f.BedMetres) * float64(f.Centres); hot && area > 0 && table.Films[f.Film].SunReflected.Value <= paleFrom {
		l.say("second-paint", unit.Litres(math.Ceil(area*paintMost/unit.LitresPerGallon)*unit.LitresPerGallon))
	}
}

// paintMost is paint and water on dark film, at most 96 gallons an acre, in L/m²
// ([table.FilmAge]'s trial, 24 to 96).
const paintMost = 96 * unit.LitresPerGallon / unit.SquareMetresPerAcre

// seconds are the crops that may follow: the guide's own first, then those of the table.
func (a *Advice) seconds(turn unit.Date) (list []second) {
	var crops []*table.Crop
	for i := range afterFamily {
		if afterFamily[i].family == a.Facts.Crop.Family {
			for _, id := range afterFamily[i].crops {
				crops = append(crops, table.CropByID(id))
			}
		}
	}
	for i := range table.Crops {
		if crop := &table.Crops[i]; !slices.Contains(crops, crop) {
			crops = append(crops, crop)
		}
	}
	for _, crop := range crops {
		if c, ok := a.secondOf(crop, turn); ok && len(list) < mostSeconds {
			list = append(list, c)
		}
	}
	return list
}

// secondOf tells when a crop may follow: the ground and the fall let it in, the air is not hotter
// than it bears, and it is picked before frost ends it.
func (a *Advice) secondOf(crop *table.Crop, turn unit.Date) (c second, ok bool) {
	f := a.Facts
	if crop.Family == f.Crop.Family || f.Crop.Group == table.Berry && crop.Family == "Solanaceae" || crop.Sown || crop.Hilled || crop.Root || crop.Group == table.CutFlower || crop.DaysToHarvest.High >= winterCrop ||
		float64(crop.InRow.High) < float64(f.InRow)/thinMost || float64(crop.InRow.Low) > float64(f.InRow)*thinMost {
		return c, false
	}
	days := unit.Days(crop.DaysToHarvest.Value) + fallDays
	least := growsCool
	if crop.Warm {
		least = growsWarm
	}
	if own := &crop.MonthLeast; own.Given() {
		least = own.Value
	}
	season := f.SeasonOf(crop)
	for on := turn; on <= turn.Plus(waitsMost); on = on.Plus(1) {
		_, high := f.UsualAir(on)
		free := min(season.FreeFrom(on), f.FreeOf(crop, on))
		coolest, warmest := f.UsualAir(on.Plus(days))
		if !season.Open(f.ChosenCover(), on) || high > crop.HeatDay.Value || free < days || (coolest+warmest)/2 < least {
			if c.crop != nil {
				break
			}
			continue
		}
		if c.crop == nil {
			c = second{crop: crop, from: on, pick: on.Plus(days), hot: season.MeanOn(f.ChosenCover(), on) > crop.RootCeiling.Value}
		}
		c.until = on
	}
	return c, c.crop != nil
}

// Means of a day by which a crop still grows as it ripens, cool crops and warm ones of which no
// least monthly mean was read: from memory.
const (
	growsCool = unit.Celsius((45 - 32) / 1.8)
	growsWarm = unit.Celsius((60 - 32) / 1.8)
)

// winterCrop is the days to harvest of a crop that is set in the fall for the next year.
const winterCrop = 150

// everyDays are how many days lie between two settings of a crop that is to be picked all
// summer, by lists for gardens and small farms, which disagree.
var everyDays = [...]struct {
	crop      string
	low, high unit.Days
}{
	{"sweet-corn", 14, 14}, {"snap-bean", 14, 30}, {"cucumber", 21, 28}, {"summer-squash", 21, 42}, {"muskmelon", 28, 28},
	{"lettuce", 7, 14}, {"spinach", 7, 14}, {"salad-greens", 7, 14}, {"beet", 14, 14}, {"kale", 21, 28}, {"carrot", 21, 28},
}

// mostSets is how many settings are told.
const mostSets = 6

// comesIn is how many days a setting of the field's crop takes to its first harvest: two weeks
// more where the air a month on is cooler.
func (a *Advice) comesIn(on unit.Date) unit.Days {
	low, high := a.Facts.UsualAir(on)
	lower, higher := a.Facts.UsualAir(on.Plus(monthOn))
	if lower+higher < low+high {
		return a.Facts.CropDays + fallDays
	}
	return a.Facts.CropDays
}

const monthOn = 30

// again is the same crop every so many days, laid by one machine.
func (a *Advice) again(l *after) {
	f := a.Facts
	if a.FilmDown() {
		return
	}
	for i := range everyDays {
		every := &everyDays[i]
		if every.crop != f.Crop.ID {
			continue
		}
		var sets []unit.Date
		step := (every.low + every.high) / 2
		for on := a.WaitPlan.PlantOn; on < a.WaitPlan.PlantOn.Plus(unit.Days(facts.WarmthAfter)) && len(sets) < mostSets; on = on.Plus(step) {
			if _, high := f.UsualAir(on); f.Season.Open(f.ChosenCover(), on) && f.FreeOf(f.Crop, on) >= a.comesIn(on)+judge.PickingPays && high <= f.Crop.HeatDay.Value {
				sets = append(sets, on)
			} else if len(sets) == 0 {
				return // the field's own day is the last that pays
			}
		}
		if len(sets) < 2 {
			return
		}
		l.say("again")
		if every.low == every.high {
			l.say("again-each", f.Crop.Name, step, len(sets))
		} else {
			l.say("again-every", f.Crop.Name, int(every.low), int(every.high), step, len(sets))
		}
		for k, on := range sets {
			l.say("again-set", k+1, on.Plus(-a.WaitPlan.Days), on, on.Plus(a.comesIn(on)))
		}
		if f.BedMetres > 0 {
			l.say("again-beds", f.BedMetres/unit.Metres(len(sets)))
		}
		l.say("again-laid", sets[len(sets)-1].Minus(sets[0]))
		return
	}
}
