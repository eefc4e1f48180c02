package rules_test

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// check is one published figure or finding: what is claimed, who says so, and what a
// grower gets from us in its place. A miss says what is wrong with ours and what would
// make it right; it must stay one, or be taken out.
//
// Nothing here reads a cell of a table: each check asks for advice, facts or a plan, and
// compares what comes out. What other tests hold stands there: film, bed and plants for
// an acre in TestWorkedExamplesOfFilmAndBed, soil water in TestTwelveClassesSaxtonRawls
// and TestSoilTablesAgree, warming by film and depth in TestPublishedWarming, planting
// days in TestPublishedPlantingWindows.
type check struct {
	says   string
	source *table.Source
	ours   func(t *testing.T) (string, bool)
	miss   string
}

// Stations of the NOAA 1981–2010 normals, near to where the sources were written.
const (
	dover        = "USC00072730" // Delaware: what the University of Delaware and its neighbours say
	keene        = "USC00274399" // New Hampshire, for the New England guide
	tifton       = "USC00098703" // Georgia, for trials of the coastal plain
	phoenix      = "USC00028112" // Arizona: hot ground
	raleigh      = "USC00317079" // North Carolina State University
	lafayette    = "USC00129430" // Indiana: Purdue
	santaCruz    = "USC00047916" // California
	stateCollege = "USC00368449" // State College, Pennsylvania
	bradenton    = "USC00080945" // Florida
)

// Sources that the product does not cite.
var (
	ncStateBeds = &table.Source{ID: "nc-state-beds", Publisher: "North Carolina State University Extension", Title: "Using plastic mulches and drip irrigation for vegetables", Year: "read 2026", Where: "beds that fall away from the row, so that no puddle stands",
		Address: "https://content.ces.ncsu.edu/using-plastic-mulches-and-drip-irrigation-for-vegetables", Mark: table.Seen}
	ncStateTape = &table.Source{ID: "ag-489", Publisher: "North Carolina State University Extension", Title: "AG-489, Plasticulture for commercial vegetables", Year: "read 2026", Where: "the sandier the soil, the closer the holes",
		Address: "http://content.ces.ncsu.edu/plasticulture-for-commercial-vegetables", Mark: table.Seen}
	floridaBeds = &table.Source{ID: "florida-bedding-1990", Publisher: "University of Florida", Title: "Florida vegetable crop systems report, pepper and tomato bedding systems", Year: "about 1990", Where: "depth of the tape, page 72",
		Address: "https://ufdcimages.uflib.ufl.edu/UF/00/02/76/12/00001/00072.txt", Mark: table.Seen}
	purdueWater = &table.Source{ID: "purdue-hotline", Publisher: "Purdue University", Title: "Vegetable Crops Hotline, water use of 25 June to 11 July", Year: "read 2026", Where: "reference 2.79 in, tomato 2.01 in",
		NoAddress: "a number of the hotline; its address was not kept", Mark: table.Seen}
	santaCruzManual = &table.Source{ID: "santa-cruz-manual", Publisher: "University of California Santa Cruz", Title: "Farm training manual, unit 1.5, irrigation", Year: "read 2026", Where: "exercise 3: 0.15 in a day in summer",
		NoAddress: "a manual that is passed on as a file", Mark: table.Seen}
	coloradoDrip = &table.Source{ID: "colorado-5-623", Publisher: "Colorado State University Extension", Title: "Fact sheet 5.623, drip irrigation", Year: "read 2026", Where: "efficiency about 90 %, 85 to 95 %",
		Address: "fact sheet 5.623", Mark: table.Seen}
)

func at(t *testing.T, station, crop string, month, day int) field.Case {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	require.NotNil(t, places.ByID(station), station)
	c := field.Case{Crop: crop, PlantOn: unit.Known(unit.On(2027, month, day))}
	c.Place.Station = station
	c.Soil.Texture = "sandy-loam"
	casefile.Locate(&c, places)
	return c
}

// with changes one thing of a case.
func with(c field.Case, change func(*field.Case)) field.Case {
	change(&c)
	return c
}

// number holds a figure of ours to a published range.
func number(low, high float64, symbol string, ours func(t *testing.T) float64) func(*testing.T) (string, bool) {
	return func(t *testing.T) (string, bool) {
		x := ours(t)
		return fmt.Sprintf("%.4g %s, published %.4g to %.4g", x, symbol, low, high), x >= low && x <= high
	}
}

// agreed holds a finding.
func agreed(ours func(t *testing.T) bool) func(*testing.T) (string, bool) {
	return func(t *testing.T) (string, bool) {
		ok := ours(t)
		return map[bool]string{true: "so does ours", false: "not so ours"}[ok], ok
	}
}

// leads tells the film that the advice puts first, and whether it is one of some.
func leads(station, crop string, month, day int, change func(*field.Case), films ...table.FilmID) func(*testing.T) (string, bool) {
	return func(t *testing.T) (string, bool) {
		film := bestFilm(t, with(at(t, station, crop, month, day), change))
		return film.Name(), slices.Contains(films, film)
	}
}

// whiteBeforeBlack holds the order of the two films of the source; paper is not in it.
func whiteBeforeBlack(crop string) func(*testing.T) (string, bool) {
	return number(0.01, 100, "points of white ahead of black", func(t *testing.T) float64 {
		a := advise(t, at(t, dover, crop, 7, 20))
		return ranked(t, a.Film, question.Option(table.WhiteOnBlack)).Score - ranked(t, a.Film, question.Option(table.Black)).Score
	})
}

// verdict tells whether film may be laid, and whether that is one of some answers.
func verdict(c func(t *testing.T) field.Case, answers ...question.Option) func(*testing.T) (string, bool) {
	return func(t *testing.T) (string, bool) {
		a := advise(t, c(t))
		o, _ := a.Verdict.Best()
		return question.Verdict.Key(o), slices.Contains(answers, o)
	}
}

func asIs(*field.Case) {}

func bestFilm(t *testing.T, c field.Case) table.FilmID {
	t.Helper()
	a := advise(t, c)
	o, ok := a.Film.Best()
	require.True(t, ok)
	return table.FilmID(o)
}

func ranked(t *testing.T, c judge.Choice, option question.Option) judge.Ranked {
	t.Helper()
	i := slices.IndexFunc(c.Ranked, func(r judge.Ranked) bool { return r.Option == option })
	require.GreaterOrEqual(t, i, 0)
	return c.Ranked[i]
}

// points gives what one rule adds to a film, 0 where it is silent.
func points(t *testing.T, a plan.Advice, film table.FilmID, rule string) float64 {
	t.Helper()
	r := ranked(t, a.Film, question.Option(film))
	for i := range r.Factors {
		if r.Factors[i].Rule.ID == rule {
			return r.Factors[i].Points()
		}
	}
	return 0
}

func inches(m unit.Metres) float64 { return float64(m) / unit.MetresPerInch }

// warmer is how much warmer a film keeps the ground at 2 in than bare ground, °F, mean
// of the days of a New England spring, before any leaf covers it.
func warmer(film table.FilmID) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		f := advise(t, at(t, keene, "tomato", 6, 5)).Facts
		shallow, sum, days := f.Warmth.At(0), 0.0, 0
		for on := unit.On(2027, 4, 15); on < unit.On(2027, 6, 1); on++ {
			under, _, _ := shallow.Of(int(film), int(on.Minus(f.Plant)))
			bare, _, _ := shallow.Of(facts.Bare, int(on.Minus(f.Plant)))
			sum, days = sum+float64(under-bare)*1.8, days+1
		}
		return sum / float64(days)
	}
}

// overAir is how much warmer the root zone under a film is than the air, K, mean from
// planting to the first harvest.
func overAir(film table.FilmID) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		f := advise(t, at(t, tifton, "tomato", 3, 25)).Facts
		sum := 0.0
		for day := range int(f.CropDays) {
			under, _, _ := f.Warmth.Of(int(film), day)
			sum += float64(under)
		}
		return sum/float64(f.CropDays) - float64(f.MeanSeason)
	}
}

// thrives says why a list of mornings comes later than planting days.
const thrives = "plants thrive there; growers’ published planting days come sooner"

// mornings holds our planting day to a published list of mornings: the first of three
// in a row that are not colder, at the depth of roots or seed, beneath the film that is
// chosen, comes within three weeks of it. Its floors are where plants thrive: growers'
// own planting days, which we follow, come sooner.
func mornings(crop string, fahrenheit float64) func(*testing.T) (string, bool) {
	return number(-facts.WarmthBefore, 21, "days from our planting day to such mornings", func(t *testing.T) float64 {
		f := advise(t, at(t, dover, crop, 4, 1)).Facts
		film, floor := f.ChosenCover(), (fahrenheit-32)/1.8-0.005
		for day := -facts.WarmthBefore; day < facts.WarmthAfter-3; day++ {
			held := 0
			for k := range 3 {
				if _, morning, _ := f.Warmth.Of(film, day+k); float64(morning) >= floor {
					held++
				}
			}
			if held == 3 {
				return float64(day)
			}
		}
		return facts.WarmthAfter
	})
}

// hotDays holds the days that count as too hot for the roots to a published ceiling.
func hotDays(station, crop string, month, day int, celsius float64) func(*testing.T) (string, bool) {
	return func(t *testing.T) (string, bool) {
		f := advise(t, at(t, station, crop, month, day)).Facts
		days := 0
		for k := range 60 {
			if mean, _, _ := f.Warmth.Of(int(table.Black), k); float64(mean) > celsius {
				days++
			}
		}
		require.True(t, days > 0 && days < 60, "%d of 60 days: such a check tells nothing", days)
		return fmt.Sprintf("%d days, by the source %d", f.CeilingDays[table.Black], days), f.CeilingDays[table.Black] == days
	}
}

// weeksBefore is how long before the usual last frost the crop may first stand outside.
func weeksBefore(crop string) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		f := advise(t, with(at(t, dover, crop, 4, 1), func(c *field.Case) { c.Method = "transplant" })).Facts
		free, ok := f.Season.NextFree(unit.On(2027, 1, 15))
		require.True(t, ok)
		tender := advise(t, at(t, dover, "tomato", 4, 1)).Facts
		return float64(tender.SpringFrost.Minus(free)) / 7
	}
}

// whiteFrom finds the first planting day from which a pale film leads for good
// until the middle of August.
func whiteFrom(t *testing.T, crop string) unit.Date {
	t.Helper()
	last := unit.On(2027, 4, 15)
	for day := unit.On(2027, 4, 15); day <= unit.On(2027, 8, 15); day += 2 {
		c := at(t, dover, crop, 4, 15)
		c.PlantOn = unit.Known(day)
		if film := bestFilm(t, c); film != table.WhiteOnBlack && film != table.SilverOnBlack && film != table.Paper {
			last = day + 2
		}
	}
	return last
}

// hoursForAnInch is what a tape of the list takes for 1 in on a strip of 30 in.
func hoursForAnInch(id string) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		i := slices.IndexFunc(table.Tapes[:], func(x table.Tape) bool { return x.ID == id })
		require.GreaterOrEqual(t, i, 0, id)
		return float64(demand.HoursFor(25.4, unit.FromInches(30), table.Tapes[i].Flow))
	}
}

func salty(crop string, month, day int, extract float64) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		c := at(t, dover, crop, month, day)
		c.Water.Salt = unit.Known(unit.DecisiemensPerMetre(extract / 1.5))
		return 100 - float64(advise(t, c).Facts.YieldLost)
	}
}

// monthOf is one month of the water plan.
func monthOf(t *testing.T, c field.Case, month int) water.Month {
	t.Helper()
	a := advise(t, c)
	p := a.WaterPlan()
	require.NotNil(t, p.Demand)
	i := slices.IndexFunc(p.Demand.Months, func(m water.Month) bool { return m.Month == month })
	require.GreaterOrEqual(t, i, 0)
	return p.Demand.Months[i]
}

var checks = []check{
	// Warmth.
	{"black warms the ground by 3–5 °F in a New England spring", &table.NewEngland, number(3, 5, "°F", warmer(table.Black)), ""},
	{"clear by 8–14 °F", &table.NewEngland, number(8, 14, "°F", warmer(table.Clear)), ""},
	{"infrared-transmitting by 4–6 °F", &table.NewEngland, number(4, 6, "°F", warmer(table.InfraredTransmitting)), ""},
	{"white-on-black cools it by 2 °F (printed without a range: half a degree each way)", &table.NewEngland, number(-2.5, -1.5, "°F", warmer(table.WhiteOnBlack)), "Keene is a valley whose nights are cold and days warm, which we take for dry air. Right with the rain or the humidity of the place"},
	{"silver cools it by 2 °F (likewise)", &table.NewEngland, number(-2.5, -1.5, "°F", warmer(table.SilverOnBlack)), "sources disagree on silver: two found it warm; we show the middle and the whole range. Right with the optics of the very film"},
	{"from warmest to coolest: clear, selective, black, bare, white", &table.NewEngland, agreed(func(t *testing.T) bool {
		f := advise(t, at(t, dover, "bell-pepper", 5, 1)).Facts
		return f.MeanUnder[table.Clear] > f.MeanUnder[table.InfraredTransmitting] && f.MeanUnder[table.InfraredTransmitting] >= f.MeanUnder[table.Black] &&
			f.MeanUnder[table.Black] > f.MeanUnder[facts.Bare] && f.MeanUnder[facts.Bare] > f.MeanUnder[table.WhiteOnBlack]
	}), ""},
	{"the root zone under black is 1–5 °C warmer than the air, in the mean of a spring season in Georgia", &table.Georgia2002, number(1, 5, "K", overAir(table.Black)), ""},
	{"and under white", &table.Georgia2002, number(1, 5, "K", overAir(table.WhiteOnBlack)), "leaves close over the bed in our season and cool it. Right with the canopy of that trial"},
	{"and under silver", &table.Georgia2002, number(1, 5, "K", overAir(table.SilverOnBlack)), ""},
	{"air of 90 °F and a clear sky: black film over 140 °F", &table.HotFilm, number(140, 212, "°F", func(t *testing.T) float64 {
		return float64(advise(t, at(t, dover, "tomato", 7, 1)).Facts.Surface[table.Black])*1.8 + 32
	}), ""},
	{"at midday the most absorbing films reach 70–80 °C", &table.Films1993, number(70, 80, "°C", func(t *testing.T) float64 {
		return float64(advise(t, at(t, dover, "tomato", 7, 1)).Facts.Surface[table.Black])
	}), "the place of the measurements is not told; Phoenix would give more than Dover. Right with its sun and wind"},
	{"tomato: three mornings at 60 °F", &table.GeorgiaFloors, mornings("tomato", 60), ""},
	{"cucumber: 60 °F", &table.GeorgiaFloors, mornings("cucumber", 60), ""},
	{"snap bean: 60 °F", &table.GeorgiaFloors, mornings("snap-bean", 60), ""},
	{"sweet corn: 65 °F", &table.GeorgiaFloors, mornings("sweet-corn", 65), thrives},
	{"pepper: 70 °F", &table.GeorgiaFloors, mornings("bell-pepper", 70), thrives},
	{"watermelon: 70 °F", &table.GeorgiaFloors, mornings("watermelon", 70), thrives},
	{"squash: 70 °F", &table.GeorgiaFloors, mornings("summer-squash", 70), thrives},
	{"okra: 75 °F", &table.GeorgiaFloors, mornings("okra", 75), thrives},
	{"muskmelon: 75 °F", &table.GeorgiaFloors, mornings("muskmelon", 75), thrives},
	{"sweet potato: 75 °F", &table.GeorgiaFloors, mornings("sweet-potato", 75), thrives},
	{"roots of pepper suffer above 30 °C", &table.PepperHeat2011, hotDays(phoenix, "bell-pepper", 4, 10, 30), ""},
	{"hardy crops (kale) go out 2–4 weeks before the usual last frost", &table.Colorado720, number(2, 4, "weeks", weeksBefore("kale")), "published first days of kale at nine places lie earlier than its class says, and the day is held to those (TestPublishedPlantingWindows). Right with a list of the place"},
	{"and cabbage", &table.Colorado720, number(2, 4, "weeks", weeksBefore("cabbage")), ""},
	{"half-hardy crops (lettuce) 0–2 weeks before it", &table.Colorado720, number(0, 2, "weeks", weeksBefore("lettuce")), "likewise: published first days of lettuce and cauliflower lie earlier than the class"},
	{"tender crops (tomato) not before it", &table.Colorado720, number(-2, 0, "weeks", weeksBefore("tomato")), ""},
	{"film is laid one to two weeks before planting in spring", &table.MinnesotaWait, number(7, 14, "days", func(t *testing.T) float64 {
		return float64(advise(t, at(t, dover, "tomato", 5, 15)).WaitPlan.Days)
	}), ""},
	{"14–21 days from a fumigant to planting, while the label is not at hand", &table.FumigantManual, number(14, 21, "days", func(t *testing.T) float64 {
		c := at(t, dover, "tomato", 5, 15)
		c.Practice.FumigatedOn = unit.Known(unit.On(2027, 5, 10))
		return float64(advise(t, c).WaitPlan.PlantOn.Minus(unit.On(2027, 5, 10)))
	}), ""},

	// Which film.
	{"warm crops of spring in the mid-Atlantic go on black up to mid-May: tomato", &table.HotFilm, leads(dover, "tomato", 5, 10, asIs, table.Black), ""},
	{"bell pepper", &table.HotFilm, leads(dover, "bell-pepper", 5, 10, asIs, table.Black), ""},
	{"muskmelon", &table.HotFilm, leads(dover, "muskmelon", 5, 10, asIs, table.Black), ""},
	{"cucumber", &table.HotFilm, leads(dover, "cucumber", 5, 10, asIs, table.Black), ""},
	{"white rather than black for plantings of July and early August: broccoli", &table.LateSwitch, whiteBeforeBlack("broccoli"), ""},
	{"cauliflower", &table.LateSwitch, whiteBeforeBlack("cauliflower"), ""},
	{"lettuce", &table.LateSwitch, whiteBeforeBlack("lettuce"), ""},
	{"the switch from black to white falls about the middle of June (a rule of thumb, so three weeks are allowed)", &table.LateSwitch, number(-21, 21, "days from 15 June", func(t *testing.T) float64 {
		return float64(whiteFrom(t, "bell-pepper").Minus(unit.On(2027, 6, 15)))
	}), ""},
	{"spring romaine on black did as well or better", &table.Romaine2020, leads(dover, "lettuce", 4, 1, asIs, table.Black), ""},
	{"silver held mosaic off yellow squash", &table.SilverSquash1993, leads(dover, "summer-squash", 7, 15, func(c *field.Case) { c.Weeds.Insects = "aphids" }, table.SilverOnBlack), ""},
	{"and off zucchini in spring", &table.SilverZucchini1995, leads(dover, "summer-squash", 5, 15, func(c *field.Case) { c.Weeds.Insects = "aphids" }, table.SilverOnBlack), ""},
	{"black holds yellow nutsedge back by 96 %: it leads among the plastics", &table.NutsedgeYellow2005, func(t *testing.T) (string, bool) {
		a := advise(t, with(at(t, dover, "bell-pepper", 5, 15), func(c *field.Case) { c.Weeds.Nutsedge, c.Weeds.Pressure = "yellow", "heavy" }))
		for _, r := range a.Film.Ranked {
			if film := table.FilmID(r.Option); film != table.Paper {
				return film.Name(), film == table.Black
			}
		}
		return "none", false
	}, ""},
	{"purple nutsedge grows under black film as on bare ground: do not lay film on heavy stands", &table.NutsedgePurple2005, verdict(func(t *testing.T) field.Case {
		return with(at(t, dover, "bell-pepper", 5, 15), func(c *field.Case) { c.Weeds.Nutsedge, c.Weeds.Pressure = "purple", "heavy" })
	}, question.DoNotLay), ""},
	{"opaque film stops annual weeds: no film holds them better than black", &table.KansasWeeds, agreed(func(t *testing.T) bool {
		a := advise(t, with(at(t, dover, "tomato", 5, 15), func(c *field.Case) { c.Weeds.Pressure = "heavy" }))
		for film := range table.FilmCount {
			if points(t, a, table.FilmID(film), "film-weeds") > points(t, a, table.Black, "film-weeds") {
				return false
			}
		}
		return points(t, a, table.Black, "film-weeds") >= 0
	}), ""},
	{"under clear grew 152 weeds a square metre, under black none: heavy weeds rule clear out", &table.ClearFilm2021, agreed(func(t *testing.T) bool {
		a := advise(t, with(at(t, dover, "sweet-corn", 4, 10), func(c *field.Case) { c.Weeds.Pressure = "heavy" }))
		return ranked(t, a.Film, question.Option(table.Clear)).RuledOutBy != nil && ranked(t, a.Film, question.Option(table.Black)).RuledOutBy == nil
	}), ""},
	{"selective film lies between black and clear in warmth and in weeds", &table.NewEngland, agreed(func(t *testing.T) bool {
		a := advise(t, at(t, dover, "bell-pepper", 5, 1))
		f, weeds := a.Facts, func(film table.FilmID) float64 { return points(t, a, film, "film-weeds") }
		return f.MeanUnder[table.Black] < f.MeanUnder[table.InfraredTransmitting] && f.MeanUnder[table.InfraredTransmitting] < f.MeanUnder[table.Clear] &&
			weeds(table.Clear) < weeds(table.InfraredTransmitting) && weeds(table.InfraredTransmitting) <= weeds(table.Black)
	}), ""},
	{"clear for sweet corn of the north, where weeds are few", &table.NewEngland, leads(keene, "sweet-corn", 5, 1, func(c *field.Case) { c.Weeds.Pressure = "light" }, table.Clear), ""},
	{"results of red are not consistent: it is weighed as an experiment and does not lead", &table.NewEngland, agreed(func(t *testing.T) bool {
		a := advise(t, at(t, dover, "tomato", 5, 15))
		return points(t, a, table.Red, "film-mixed-evidence") < 0 && bestFilm(t, at(t, dover, "tomato", 5, 15)) != table.Red
	}), ""},
	{"black and clear cost one step, white, silver and selective two", &table.NewEngland, agreed(func(t *testing.T) bool {
		a := advise(t, at(t, dover, "tomato", 5, 15))
		price := func(film table.FilmID) float64 { return points(t, a, film, "film-price") }
		return price(table.Black) == price(table.Clear) && price(table.Black) > price(table.WhiteOnBlack) &&
			price(table.Clear) > price(table.SilverOnBlack) && price(table.Black) > price(table.InfraredTransmitting)
	}), ""},
	{"after two crops black kept 93 % of its cover, white-on-black 91, selective 61–75", &table.Weathering, agreed(func(t *testing.T) bool {
		a := advise(t, with(at(t, dover, "tomato", 5, 15), func(c *field.Case) { c.Practice.CropsOnFilm = unit.Known(2.0) }))
		left := func(film table.FilmID) float64 { return points(t, a, film, "film-next-crops") }
		return left(table.Black) > left(table.WhiteOnBlack) && left(table.WhiteOnBlack) > left(table.InfraredTransmitting) &&
			ranked(t, a.Film, question.Option(table.InfraredTransmitting)).RuledOutBy == nil
	}), ""},
	{"on a certified organic field polyethylene must leave at the end of the season", &table.CFR205, agreed(func(t *testing.T) bool {
		a := advise(t, with(at(t, dover, "tomato", 5, 15), func(c *field.Case) { c.Practice.Organic = unit.Known(true) }))
		w := a.WaterPlan()
		s := a.Shopping(&w)
		year, _, _ := a.WaitPlan.PlantOn.Civil()
		for _, step := range a.Season(&s) {
			if step.ID == "lift" {
				lifted, _, _ := step.On.Civil()
				return lifted == year && ranked(t, a.Film, question.Option(table.Black)).RuledOutBy == nil
			}
		}
		return false
	}), ""},
	{"and biodegradable film that is not wholly biobased may not be laid there", &table.OrganicRule, agreed(func(t *testing.T) bool {
		a := advise(t, with(at(t, dover, "tomato", 5, 15), func(c *field.Case) { c.Practice.Organic = unit.Known(true) }))
		by := ranked(t, a.Film, question.Option(table.BiodegradableBlack)).RuledOutBy
		return by != nil && by.Rule.ID == "film-organic"
	}), ""},
	{"field film is 0.75–1.25 mil thick", &table.NewEngland, number(0.75, 1.25, "mil", thickness(dover, "bell-pepper", 5, 15)), ""},
	{"1 mil or more lifts without tearing", &table.Retrieval2019, number(1, 2, "mil", thickness(dover, "tomato", 5, 15)), ""},
	{"by European standard film under 25 µm soils most and is costly to lift", &table.EN13655, number(25/25.4, 4, "mil", thickness(dover, "muskmelon", 5, 15)), ""},

	// Bed and rows.
	{"strawberry beds are 10 in high", &table.StrawberryBed, number(9.9, 10.1, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, dover, "strawberry", 9, 5)).Shape.Height)
	}), ""},
	{"30 in wide at the top", &table.StrawberryBed, number(29.9, 30.1, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, dover, "strawberry", 9, 5)).Facts.Top)
	}), ""},
	{"on centres of 60 in", &table.StrawberryBed, number(59.9, 60.1, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, dover, "strawberry", 9, 5)).Facts.Centres)
	}), ""},
	{"beds of fruiting vegetables are 4–6 in high", &table.Midwest2022, number(3.9, 6.1, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, lafayette, "bell-pepper", 5, 15)).Shape.Height)
	}), ""},
	{"bell peppers stand 12–18 in apart", &table.Midwest2022, number(12, 18, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, lafayette, "bell-pepper", 5, 15)).Facts.InRow)
	}), ""},
	{"in one or two rows", &table.Midwest2022, number(1, 2, "rows", func(t *testing.T) float64 {
		return float64(advise(t, at(t, lafayette, "bell-pepper", 5, 15)).Facts.Rows)
	}), ""},
	{"on beds 5–6 ft apart", &table.Midwest2022, number(59.9, 72.1, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, lafayette, "bell-pepper", 5, 15)).Facts.Centres)
	}), ""},
	{"beds of cut flowers are 4–8 in high", &table.FlowerBed1998, number(3.9, 8.1, "in", func(t *testing.T) float64 {
		return inches(advise(t, at(t, raleigh, "zinnia", 5, 10)).Shape.Height)
	}), ""},
	{"beds fall away from the row, so that no puddle stands", ncStateBeds, number(0.1, 4, "in of crown", func(t *testing.T) float64 {
		return inches(advise(t, at(t, raleigh, "tomato", 5, 1)).Shape.Crown)
	}), ""},
	{"4-ft film over a 2-ft top, 6 in high: 6 in are buried on each side (our sides slope out, so a little less is left)", &table.FloridaCir805, number(5.6, 6.4, "in", func(t *testing.T) float64 {
		a := advise(t, with(at(t, dover, "bell-pepper", 5, 15), func(c *field.Case) {
			c.Field.BedTop, c.Practice.FilmWidth = unit.Known(unit.FromInches(24)), unit.Known(unit.FromInches(48))
		}))
		require.True(t, a.Shape.Covers())
		require.InDelta(t, 6, inches(a.Shape.Height), 0.1)
		return inches(a.Shape.Tuck)
	}), ""},
	{"flat beds: 3- or 4-ft film leaves 2 or 3 ft covered", &table.UtahGuide, agreed(func(t *testing.T) bool {
		for _, feet := range []float64{3, 4} {
			a := advise(t, with(at(t, dover, "bell-pepper", 5, 15), func(c *field.Case) {
				c.Field.BedTop, c.Practice.FilmWidth = unit.Known(unit.FromFeet(feet-1)), unit.Known(unit.FromFeet(feet))
			}))
			for _, r := range a.Bed.Ranked {
				if question.Bed.Key(r.Option) == "flat" && r.RuledOutBy != nil {
					return false
				}
			}
		}
		return true
	}), ""},

	// The ground on laying day.
	{"a bed laid dry is hardly wetted again, least of all in sand: lay with care", &table.DryBeds, verdict(func(t *testing.T) field.Case {
		return with(at(t, dover, "bell-pepper", 5, 15), func(c *field.Case) { c.Soil.Wetness, c.Soil.Texture = "dry", "loamy-sand" })
	}, question.LayWithCare), ""},
	{"no sod clumps or trash near the surface", &table.TilthMichigan, verdict(func(t *testing.T) field.Case {
		return with(at(t, dover, "tomato", 5, 15), func(c *field.Case) { c.Soil.Tilth = "trashy" })
	}, question.LayWithCare), ""},
	{"more than half an acre by hand is slow and hard", &table.Guide205, verdict(func(t *testing.T) field.Case { return byHand(t, 0.6) }, question.LayWithCare, question.DoNotLay), ""},
	{"less is not", &table.Guide205, verdict(func(t *testing.T) field.Case { return byHand(t, 0.4) }, question.Lay), ""},

	// Water.
	{"no rain passes film: all water comes through the tape, whatever the rain", &table.PennDrip2013, agreed(func(t *testing.T) bool {
		var dry, wet [12]float64
		for m := range wet {
			wet[m] = 200
		}
		need := func(rain [12]float64) float64 {
			a := advise(t, with(at(t, stateCollege, "tomato", 5, 25), func(c *field.Case) { c.Place.Rain = unit.Known(rain) }))
			return float64(a.WaterPlan().Demand.Total)
		}
		return need(dry) == need(wet) && need(dry) > 0
	}), ""},
	{"1–1.5 in a week for maturing crops, counted on the bed", &table.PennDrip2013, number(1, 1.5, "in", func(t *testing.T) float64 {
		a := advise(t, at(t, stateCollege, "bell-pepper", 5, 25))
		return 7 * float64(a.WaterPlan().Demand.Peak.Use) / 25.4
	}), ""},
	{"an inch on a strip of 30 in takes 11.8 h of low-flow tape, 12 in", &table.PennDrip2013, number(11.75, 11.85, "h", hoursForAnInch("12-in-low")), ""},
	{"low-flow, 8 in: 7.6 h", &table.PennDrip2013, number(7.55, 7.65, "h", hoursForAnInch("8-in-low")), ""},
	{"medium flow, 12 in: 7.6 h", &table.PennDrip2013, number(7.55, 7.65, "h", hoursForAnInch("12-in-medium")), ""},
	{"medium flow, 8 in: 5.1 h", &table.PennDrip2013, number(5.05, 5.15, "h", hoursForAnInch("8-in-medium")), ""},
	{"high flow, 12 in: 5.8 h", &table.PennDrip2013, number(5.75, 5.85, "h", hoursForAnInch("12-in-high")), ""},
	{"high flow, 8 in: 3.9 h", &table.PennDrip2013, number(3.85, 3.95, "h", hoursForAnInch("8-in-high")), ""},
	{"high flow, 4 in: 1.9 h", &table.PennDrip2013, number(1.85, 1.95, "h", hoursForAnInch("4-in-high")), ""},
	{"reference evapotranspiration of 25 June to 11 July at Purdue: 2.79 in (one year; 15 % each way)", purdueWater, number(2.79*0.85, 2.79*1.15, "in", func(t *testing.T) float64 {
		c := at(t, lafayette, "tomato", 5, 20)
		return (6*float64(monthOf(t, c, 6).Reference) + 11*float64(monthOf(t, c, 7).Reference)) / 25.4
	}), "that is one fortnight of one year, ours is the usual one from temperatures alone. Right with the sun of those weeks"},
	{"0.15 in a day in the summer of Santa Cruz (two figures: 10 % each way)", santaCruzManual, number(0.135, 0.165, "in", func(t *testing.T) float64 {
		return float64(monthOf(t, at(t, santaCruz, "lettuce", 6, 10), 7).Reference) / 25.4
	}), "fog keeps the sun off that coast, and monthly minima and maxima do not tell of it. Right with the sun or the humidity of the place"},
	{"85–95 % of the water of drip is used", coloradoDrip, number(85, 95, "%", func(t *testing.T) float64 {
		m := monthOf(t, at(t, dover, "tomato", 5, 15), 7)
		return 100 * float64(m.Net) / float64(m.Gross)
	}), ""},
	{"on sand up to three runs a day", &table.Drip1996, number(2, 3, "runs", func(t *testing.T) float64 {
		c := with(at(t, bradenton, "tomato", 2, 20), func(c *field.Case) { c.Soil.Texture = "sand" })
		return float64(monthOf(t, c, 5).Runs)
	}), "a bed 30 in wide with one line of tape holds little in sand, and we never run past the roots; the paper's plants, bed and tape are not told"},
	{"on heavy ground one every three days at the least", &table.Drip1996, number(1, 3, "days", func(t *testing.T) float64 {
		c := with(at(t, dover, "tomato", 5, 15), func(c *field.Case) { c.Soil.Texture = "clay" })
		return float64(monthOf(t, c, 5).Interval)
	}), ""},
	{"tape under peppers lies 2–3 in deep", floridaBeds, number(2, 3, "in", tapeDepth("bell-pepper")), ""},
	{"under tomatoes 4–5 in", floridaBeds, number(4, 5, "in", tapeDepth("tomato")), "we bury it 2.5 in under every crop. Right with a depth for each crop, if a second source bears the first out"},
	{"emitters stand 8–12 in apart: tomato", &table.ClemsonTape, number(7.9, 12.1, "in", spacing("tomato", "sandy-loam")), ""},
	{"cucumber", &table.ClemsonTape, number(7.9, 12.1, "in", spacing("cucumber", "sandy-loam")), ""},
	{"cabbage", &table.ClemsonTape, number(7.9, 12.1, "in", spacing("cabbage", "sandy-loam")), ""},
	{"the sandier the soil, the closer the holes", ncStateTape, agreed(func(t *testing.T) bool {
		return spacing("tomato", "sand")(t) < spacing("tomato", "clay-loam")(t)
	}), ""},
	{"tomato at 5 dS/m in the soil yields 75.3 % (2.5 and 9.9 in the list)", &table.SaltUSDA1990, number(75.2, 75.4, "%", salty("tomato", 5, 15, 5)), ""},
	{"strawberry at 2 dS/m 67 % (1.0 and 33)", &table.SaltUSDA1990, number(66.9, 67.1, "%", salty("strawberry", 9, 10, 2)), ""},
}

func thickness(station, crop string, month, day int) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		u, ok := advicePointer(advise(t, at(t, station, crop, month, day))).ThicknessChosen()
		require.True(t, ok)
		return math.Round(float64(u)/25.4*1000) / 1000
	}
}

func tapeDepth(crop string) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		return inches(advise(t, with(at(t, bradenton, crop, 9, 15), func(c *field.Case) { c.Soil.Texture = "sand" })).TapePlan.Depth)
	}
}

func spacing(crop, texture string) func(*testing.T) float64 {
	return func(t *testing.T) float64 {
		a := advise(t, with(at(t, dover, crop, 5, 15), func(c *field.Case) { c.Soil.Texture = texture }))
		require.NotNil(t, a.TapePlan.Tape)
		return inches(a.TapePlan.Tape.Spacing)
	}
}

// byHand is a field of flowers that is laid by hand, so many acres.
func byHand(t *testing.T, acres float64) field.Case {
	c := at(t, dover, "zinnia", 5, 20)
	c.Practice.Laying, c.Practice.People = "hand", unit.Known(4.0)
	c.Field.Centres, c.Field.BedLength = unit.Known(unit.FromFeet(6)), unit.Known(unit.FromFeet(72.6))
	c.Field.Beds = unit.Known(math.Round(acres * 100)) // 100 beds of 72.6 ft at 6-ft centres are an acre
	return c
}

func advicePointer(a plan.Advice) *plan.Advice { return &a }

// Every check stands, or is a miss that is stated, with what would make it right.
func TestAgainstTheWorldOutside(t *testing.T) {
	passed := 0
	var missed []string
	for _, c := range checks {
		t.Run(c.says, func(t *testing.T) {
			require.NotNil(t, c.source)
			require.Contains(t, []table.Mark{table.Seen, table.Recomputed}, c.source.Mark, "what was not read in its source decides nothing")
			for _, part := range []string{c.source.Publisher, c.source.Title, c.source.Year, c.source.Where, c.source.Found()} {
				require.NotEmpty(t, part)
			}
			ours, ok := c.ours(t)
			t.Logf("ours: %s. Source: %s, %s, %s, %s (%s)", ours, c.source.Publisher, c.source.Title, c.source.Where, c.source.Year, c.source.Found())
			if c.miss == "" {
				assert.True(t, ok, "ours: %s", ours)
			} else {
				assert.False(t, ok, "no longer a miss: take the note away")
			}
			if ok {
				passed++
			} else {
				missed = append(missed, c.says+": "+ours+": "+c.miss)
			}
		})
	}
	t.Logf("%d checks, each with a source that was read; %d pass; stated misses:\n  %s", len(checks), passed, strings.Join(missed, "\n  "))
	page, err := os.ReadFile("VALIDATION.md")
	require.NoError(t, err)
	told := strings.Join(strings.Fields(string(page)), " ")
	for _, words := range []string{fmt.Sprintf("%d checks", len(checks)), fmt.Sprintf("%d pass, %d are stated misses", passed, len(missed))} {
		assert.True(t, strings.Contains(told, words), "VALIDATION.md must say: %s", words)
	}
}
