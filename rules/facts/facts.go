package facts

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Never stands for a day that does not come within the season.
const Never unit.Days = 9999

// Facts is everything that follows from a case before any rule speaks. The
// models run once; every figure is rounded, so that rules decide alike in
// every build.
type Facts struct {
	Case    field.Case // with defaults filled
	Crop    *table.Crop
	Soil    *table.Soil
	Seeded  bool
	Wanted  unit.Date // the planting day that was asked for
	Plant   unit.Date // the planting day that everything below is worked out for
	index   int       // of Plant
	Season  Season    // when the crop may go into the bed
	Opening Opening   // how Plant was found
	Bare    bool      // no film is laid: water is worked out for bare ground
	year    *weather.Year
	ground  *SoilYear

	// Air.
	AirMean, AirMin, AirMax unit.Celsius // usual on the planting day
	AirSetting              unit.Celsius // usual when the crop goes in; where it turns cooler, of the month that follows
	HotStart                float64      // days at 32 °C (90 °F) or more in the first 21 days
	HotYoung                float64      // the same in the first 14, while stems are soft
	HotSeason               float64      // days at the crop's heat limit or more until harvest begins
	MeanSeason              unit.Celsius // mean air from planting to first harvest
	MonthWarmest            unit.Celsius // mean air of the warmest month from planting to two weeks of harvest; of crops with a MonthLeast
	Autumn                  bool         // planted after the warmest time of the year
	AirNext                 unit.Celsius // mean a month after planting

	// Frost.
	FrostKind    weather.FrostKind
	FrostLimit   unit.Celsius // that harms this crop
	FrostRisk    float64      // share of years with such a frost after planting, 0–1
	WantedRisk   float64      // the same after the day that was asked for
	FreeDays     unit.Days    // days from planting to the usual first autumn frost; Never where none comes
	FrostDays    float64      // a year, of such frost
	StandDays    unit.Days    // to the usual first frost that kills it: FreeDays of tender crops
	CropDays     unit.Days    // from planting to first harvest
	frosts       *frostYear   // of the year; shared with cases before
	SpringFrost  unit.Date    // date after which one year in two has no more frost
	HasFrostDate bool

	// Soil warmth at the depth of roots or seed.
	Warmth              *Warmth
	spare               *Warmth // of a search, written over from case to case
	Depth               unit.Metres
	MinSoilTemperature  unit.Celsius // of the soil, below which planting fails: risky from here on
	SafeSoilTemperature unit.Celsius // of the soil, from which the crop thrives
	WorkFloor           unit.Celsius // what the planting day works to: see Season
	Mild                bool         // frost is long past before the ground is warm: WorkFloor is the least that lists name
	Ceiling             unit.Celsius
	Under               [table.FilmCount + 1]unit.Celsius // morning of the planting day
	MeanUnder           [table.FilmCount + 1]unit.Celsius // daily mean of the first 30 days
	ReachWork           [table.FilmCount + 1]unit.Days    // first of three days whose mean holds the working floor, from planting
	Gained              [table.FilmCount]unit.Days        // days won against bare soil at the working floor
	WarmingPays         bool                              // bare soil reaches the working floor late or never
	Ahead               [table.FilmCount]unit.Days        // how much earlier than on bare ground the crop comes: see [Facts.ahead]
	Stalled             [table.FilmCount + 1]int          // days of the first 60 that the roots lose to heat
	Burning             [table.FilmCount]int              // days of the first 14 on which the film burns stems
	Lead                unit.Days                         // from laying to the wanted planting day
	CeilingDays         [table.FilmCount + 1]int          // days with a mean above the ceiling in the first 60
	Surface             [table.FilmCount]unit.Celsius
	Rough               bool // clods, trash or dry soil hold the film off the bed
	Probe               heat.ProbeFinding

	// Layout.
	Top, Centres, InRow unit.Metres
	SideSlope           float64 // see [profile.Across]
	Rows                int
	Density             unit.PlantsPerSquareMetre // of bed top
	BedMetres           unit.Metres               // 0 where unknown

	// Water.
	Peak, Start    unit.Millimetres // crop water use a day, at full leaf and at planting
	PeakLitres     unit.Litres      // for 100 m of bed a day, gross
	Usable         unit.LitresPerHour
	Laterals       int // lines of tape on a bed, side by side
	Stretches      int // lines of tape that one bed is cut into, end to end: 1 is fed from its end, 2 from the middle
	askedStretches int
	years          [3]unit.Optional[water.Year] // usual, cool, dry; the same for every case of one place and risk
	lines          *drip.Known                  // tape lines solved for cases before; nil keeps none
	days           *dayFacts                    // of a search: facts of other planting days of the first case
	asked          water.Input
	Sketch         [len(table.Tapes)]water.Sketch // what each tape would make of the water plan
	YieldLost      unit.Percent                   // to salt in the water
	SoilSalt       unit.DecisiemensPerMetre
	ClogRisk       float64 // 0–1 from source and water test

	// Answers that later questions read.
	Film         table.FilmID
	Height       unit.Metres
	HeightOption question.Option
	Bed          profile.Bed
	Surfacing    question.Option
	Thickness    question.Option
	Tape         table.TapeID
}

// HotDay is 90 °F: above it, with a clear sky, black film passes 60 °C.
const HotDay = unit.Celsius((90 - 32) / 1.8)

// StemBurn is the film temperature from which touching stems die.
const StemBurn = heat.StemBurn

// Of works the facts of a case out for one planting day, on the soil year of its
// place. The case must have passed [field.Check] and have its defaults filled. Facts
// of a case that was asked before (or nil) lend what cannot differ: the result is the
// same.
func (f *Facts) Of(c field.Case, plant unit.Date, g *SoilYear, before *Facts) error {
	err := f.Dry(c, plant, g, before)
	if err == nil {
		f.Irrigate()
	}
	return err
}

// Dry leaves out what the tape and the gates alone read of the water; Irrigate adds
// it. The facts must not be those of before.
func (f *Facts) Dry(c field.Case, plant unit.Date, g *SoilYear, before *Facts) error {
	if before := before.on(plant, g, &c); before != nil {
		*f = *before
		f.Case, f.Wanted = c, c.PlantOn.Value
		f.salt()
		if c.Place != before.Case.Place {
			if !sameAir(&before.Case, &c) {
				f.years = [3]unit.Optional[water.Year]{}
			}
			f.frost()
			floor := f.WorkFloor
			f.floors()
			f.mild(g)
			f.Season = f.season(g)
			if f.WorkFloor != floor {
				f.spare = nil // it is the sheet of the facts before
				f.Warm(g)
			}
		} else if f.Wanted != before.Wanted {
			f.wantedRisk()
		}
		if c.Field != before.Case.Field || c.Soil != before.Case.Soil {
			f.Soil = table.SoilByID(c.Soil.Texture)
			f.layout()
			f.rough()
		}
		return nil
	}
	*f = Facts{Case: c, Crop: table.CropByID(c.Crop), Soil: table.SoilByID(c.Soil.Texture), Wanted: c.PlantOn.Value, Plant: plant, ground: g}
	if before != nil {
		f.spare = before.spare
	}
	f.Seeded = c.Method == string(table.Seed)
	f.index = weather.Index(f.Plant)
	if before != nil && sameYear(&before.Case, &c) {
		f.year, f.frosts, f.lines = before.year, before.frosts, before.lines
		if sameAir(&before.Case, &c) {
			f.years = before.years
		}
	} else {
		if err := f.yearOf(&c); err != nil {
			return err
		}
	}
	f.CropDays = unit.Days(f.Crop.DaysToHarvest.Low)
	f.air()
	f.frost()
	f.layout()
	f.Warm(g)
	f.salt()
	before.keep(f)
	return nil
}

// dayFacts are the facts of a search's first case on days that planting did not move to:
// a search looks at the same days again for each other value.
type dayFacts struct{ list []*Facts }

// mostDays is how many are kept.
const mostDays = 6

// on gives the facts of a case before for a planting day, where soil and air are the same.
func (f *Facts) on(plant unit.Date, g *SoilYear, c *field.Case) *Facts {
	if f == nil || f.ground != g || !sameWeather(&f.Case, c) {
		return nil
	}
	if f.Plant == plant {
		return f
	}
	if f.days != nil {
		for _, other := range f.days.list {
			if other.Plant == plant {
				return other
			}
		}
	}
	return nil
}

// keep takes in the facts of another day of the same case.
func (f *Facts) keep(other *Facts) {
	if f == nil || f.days == nil || len(f.days.list) == mostDays || other.Wanted != f.Wanted || other.ground != f.ground || !sameWeather(&f.Case, &other.Case) {
		return
	}
	kept, warmth := *other, *other.Warmth
	kept.Warmth = &warmth // the next case writes over the sheet of this one
	f.days.list = append(f.days.list, &kept)
}

// yearOf works out the temperatures and frosts of a case's place, in its spring.
func (f *Facts) yearOf(c *field.Case) error {
	year, err := weather.NewYear(c.Place.Normals())
	if err != nil {
		return err
	}
	switch c.Risk {
	case "cool":
		year = year.In(weather.Cool)
	case "warm":
		year = year.In(weather.Warm)
	}
	f.year, f.frosts = &year, &frostYear{}
	if s := &c.Place.StationFrost; s.Given {
		f.frosts.miss, err = missOf(s.Value)
	}
	return err
}

// Lending is a copy that keeps what cannot differ from case to case, the lines of
// tape among it, for the facts of the next one.
func (f *Facts) Lending() *Facts {
	kept := *f
	if kept.lines == nil {
		kept.lines = &drip.Known{}
	}
	return &kept
}

// ForSearch is lending for a search, which asks thousands of times and reads no
// reasons: soil warmth is written over from case to case, without its band.
func (f *Facts) ForSearch() *Facts {
	kept := *f
	kept.lines, kept.days = &drip.Known{}, &dayFacts{}
	kept.ForgetReasons()
	return &kept
}

// ForgetReasons lets the facts of later cases be written over one sheet of soil
// warmth, without its band.
func (f *Facts) ForgetReasons() { f.spare = &Warmth{bare: true} }

// sameWeather tells whether air and soil warmth must be the same.
func sameWeather(a, b *field.Case) bool {
	return a.Crop == b.Crop && a.Method == b.Method && sameYear(a, b)
}

// sameYear tells whether the temperatures of the year must be the same, whatever
// was said of the usual frosts and of sun, rain, wind and humidity.
func sameYear(a, b *field.Case) bool {
	p, q := &a.Place, &b.Place
	return a.Risk == b.Risk && p.Own == q.Own && p.TMin == q.TMin && p.TMax == q.TMax && p.StationAt == q.StationAt && p.Latitude == q.Latitude && p.Elevation == q.Elevation &&
		p.StationFrost == q.StationFrost
}

// sameAir tells whether what else drives the need for water was said alike.
func sameAir(a, b *field.Case) bool {
	p, q := &a.Place, &b.Place
	return p.Solar == q.Solar && p.Wind == q.Wind && p.Humidity == q.Humidity &&
		p.StationSun == q.StationSun && p.StationWind == q.StationWind && p.StationVapour == q.StationVapour
}

// rough tells whether something holds the film off the bed.
func (f *Facts) rough() {
	s := &f.Case.Soil
	f.Rough = s.Tilth == "cloddy" || s.Tilth == "trashy" || s.Wetness == "dry"
}

func (f *Facts) air() {
	f.AirMin, f.AirMax = f.year.On(f.Plant)
	f.AirMin, f.AirMax = unit.Hundredth(float64(f.AirMin)), unit.Hundredth(float64(f.AirMax))
	f.AirMean = unit.Hundredth(float64(f.AirMin+f.AirMax) / 2)
	f.HotStart = f.year.HotDays(HotDay, f.index, hotWindow)
	f.HotYoung = f.year.HotDays(HotDay, f.index, softDays)
	days := min(int(f.CropDays), heatOutlook)
	f.HotSeason = f.year.HotDays(f.Crop.HeatDay.Value, f.index, days)
	var sum float64
	for k := range days {
		low, high := f.year.On(f.Plant.Plus(unit.Days(k)))
		sum += float64(low + high)
	}
	f.MeanSeason = unit.Hundredth(sum / float64(2*days))
	if f.Crop.MonthLeast.Given() { // nobody asks it of the others
		f.MonthWarmest = f.monthWarmest()
	}
	low, high := f.year.On(f.Plant.Plus(firstMonth))
	f.AirNext = unit.Hundredth(float64(low+high) / 2)
	f.AirSetting = min(f.AirMean, unit.Hundredth(float64(low+high+f.AirMin+f.AirMax)/4))
	f.Autumn = after(f.year.Warmest, f.index) < after(f.year.Coldest, f.index)
}

// monthWarmest looks at a month of six days, five apart, from one week to the next.
func (f *Facts) monthWarmest() unit.Celsius {
	const month, step, picking = 30, 5, 14
	warmest := math.Inf(-1)
	for from := 0; from == 0 || from+month <= int(f.CropDays)+picking; from += step {
		sum := 0.0
		for k := range month / step {
			low, high := f.year.On(f.Plant.Plus(unit.Days(from + k*step + step/2)))
			sum += float64(low + high)
		}
		warmest = max(warmest, sum/(2*month/step))
	}
	return unit.Hundredth(warmest)
}

// Cooling tells whether the air a month after planting is cooler than on the day.
func (f *Facts) Cooling() bool { return f.AirNext < f.AirMean }

// Risen is by how much the planting day is warmer than the coldest of the year.
func (f *Facts) Risen() unit.CelsiusDegrees {
	return f.AirMean.Minus((f.year.Minimum[f.year.Coldest] + f.year.Maximum[f.year.Coldest]) / 2)
}

// after counts days from one index of the year forward to another.
func after(from, to int) int { return (to - from + weather.YearDays) % weather.YearDays }

// frost finds the frost that harms the crop, how often it comes after planting, and
// how many days are left until autumn brings it.
func (f *Facts) frost() {
	f.FrostRisk, f.SpringFrost, f.HasFrostDate = 0, 0, false
	f.FrostLimit = frostLimit(f.Crop)
	frost := f.frosts.of(f.year, f.FrostLimit)
	f.FrostKind, f.FrostDays = frost.Kind, frost.Days
	f.FreeDays = f.FreeOf(f.Crop, f.Plant)
	f.StandDays = f.FreeDays
	if f.Crop.Hardiness < table.Tender {
		f.StandDays = Never
		if kills := f.frosts.of(f.year, f.stands()); kills.Autumn.Fifty >= 0 {
			f.StandDays = unit.Days(after(f.index, kills.Autumn.Fifty))
		}
	}
	if frost.Spring.Fifty >= 0 {
		f.SpringFrost, f.HasFrostDate = near(f.Plant, frost.Spring.Fifty), true
	}
	if day, ok := dayIndex(f.Case.Place.LastFrost); ok {
		f.SpringFrost, f.HasFrostDate = near(f.Plant, day), true
	}
	if !f.Autumn {
		f.FrostRisk = f.frosts.after(f.year, f.FrostLimit, f.comesUp(f.index))
	}
	f.wantedRisk()
}

// frostLimit is the frost that harms a crop.
func frostLimit(crop *table.Crop) unit.Celsius {
	if crop.Hardiness == table.Hardy {
		return weather.HardFreeze
	}
	return weather.Freezing
}

// FreeOf is how many days lie between a day and the usual first autumn frost that harms a crop;
// Never where none comes.
func (f *Facts) FreeOf(crop *table.Crop, on unit.Date) unit.Days {
	day, own := dayIndex(f.Case.Place.FirstFrost)
	if !own {
		day = f.frosts.of(f.year, frostLimit(crop)).Autumn.Fifty
	}
	if day < 0 {
		return Never
	}
	return unit.Days(after(weather.Index(on), day))
}

// comesUp is the day of the year from which frost can harm: seed must come up first.
func (f *Facts) comesUp(index int) int {
	if f.Seeded {
		index += min(emergence, after(index, f.year.Warmest)) // what comes up later meets no frost of spring
	}
	return index % weather.YearDays
}

// wantedRisk is the share of years with a harmful frost after the day that was asked
// for and before the next warmest time of the year.
func (f *Facts) wantedRisk() {
	f.WantedRisk = f.FrostRisk
	if f.Wanted != f.Plant {
		f.WantedRisk = f.frosts.after(f.year, f.FrostLimit, f.comesUp(weather.Index(f.Wanted)))
	}
}

func dayIndex(o unit.Optional[field.MonthDay]) (int, bool) {
	if !o.Given {
		return 0, false
	}
	return weather.Index(unit.On(2001, int(o.Value)/100, int(o.Value)%100)), true
}

// near gives the date of a day of the year that lies nearest to another date.
func near(to unit.Date, index int) unit.Date {
	year, _, _ := to.Civil()
	best := weather.DateOf(year, index)
	for _, y := range [2]int{year - 1, year + 1} {
		if d := weather.DateOf(y, index); d.Minus(to).Abs() < best.Minus(to).Abs() {
			best = d
		}
	}
	return best
}

func (f *Facts) layout() {
	c := &f.Case.Field
	f.Top = c.BedTop.Value
	f.SideSlope = c.SideSlope.Value
	f.Centres = c.Centres.Value
	f.InRow = c.InRow.Value
	f.Rows = int(c.RowsPerBed.Value)
	f.Density = unit.PlantsPerSquareMetre(unit.Thousandth(float64(f.Rows) / (float64(f.InRow) * float64(f.Top))))
	f.BedMetres = unit.Metres(float64(c.BedLength.Or(0)) * c.Beds.Or(0))
}

// Warm reads a soil year around the planting day, at the depth of roots or seed: floors,
// days won and lost, heat. Air, frost and layout must stand already.
func (f *Facts) Warm(g *SoilYear) {
	f.floors()
	f.mild(g)
	f.Season = f.season(g)
	f.Ceiling = unit.Hundredth(float64(f.Crop.RootCeiling.Value))
	f.rough()
	f.Probe = g.Probe
	if f.spare == nil {
		f.Warmth = warmthFrom(g, f.Plant, depthOf(f.Seeded), leavesClose(f.CropDays))
	} else {
		f.Warmth = f.spare
		f.Warmth.from(g, f.Plant, depthOf(f.Seeded), leavesClose(f.CropDays))
	}
	for film := range table.FilmCount + 1 {
		_, f.Under[film], _ = f.Warmth.Of(film, 0)
		sum := 0.0
		for day := range firstMonth {
			mean, _, _ := f.Warmth.Of(film, day)
			sum += float64(mean)
		}
		f.MeanUnder[film] = unit.Hundredth(sum / firstMonth)
		f.ReachWork[film] = f.reach(depthOf(f.Seeded), film, f.WorkFloor, UsualSpring)
		for day := range ceilingDays {
			if mean, _, _ := f.Warmth.Of(film, day); mean > f.Ceiling {
				f.CeilingDays[film]++
			}
		}
	}
	for film := range table.FilmCount {
		f.Gained[film] = min(f.ReachWork[Bare], WarmthAfter) - min(f.ReachWork[film], WarmthAfter)
		f.Surface[film] = f.hottestSurface(g, film)
	}
	f.WarmingPays = f.ReachWork[Bare] > -springWarming && !f.Autumn
	f.consequences()
	f.Lead = Settling
	if f.WarmingPays {
		f.Lead = WarmUp
	}
}

// floors are what the crop asks of the ground, at the depth of its roots or seed.
func (f *Facts) floors() {
	f.Depth = Depths[AtTen]
	f.MinSoilTemperature, f.SafeSoilTemperature = f.Crop.MinSoilTemperature.Value, f.Crop.SafeSoilTemperature.Value
	if f.Seeded {
		f.Depth = Depths[AtFive]
		f.MinSoilTemperature, f.SafeSoilTemperature = f.Crop.SeedMinSoilTemperature.Value, f.Crop.SeedSafeSoilTemperature.Value
	}
	f.MinSoilTemperature, f.SafeSoilTemperature = unit.Hundredth(float64(f.MinSoilTemperature)), unit.Hundredth(float64(f.SafeSoilTemperature))
	f.WorkFloor = workFloor(f.Crop.Warm, f.MinSoilTemperature, f.SafeSoilTemperature)
}

// The two waits of the trade, in days from laying: 7–10 days to warm and
// settle in spring (common practice, no source; a university says one to two
// weeks), 1–3 days to settle and wet where the soil is warm already.
const (
	WarmUp   = 7
	Settling = 3
	// Bare soil that held the working floor four weeks before planting is summer
	// soil: there is no warmth to wait for.
	springWarming = 28
)

// ChosenCover is the place of the chosen film in a [Warmth]: bare soil where
// nothing is laid.
func (f *Facts) ChosenCover() int {
	if f.Film == table.NoFilm {
		return Bare
	}
	return int(f.Film)
}

// hotWindow is how long after planting a hot day may burn a young plant, in days;
// heatOutlook, how far ahead heat is looked for; firstMonth, the days that a first
// month is taken for.
const (
	hotWindow   = 21
	heatOutlook = 150
	firstMonth  = 30
)

// hottestSurface is the film's own temperature in the hottest hour of a clear
// hot day, one day in ten, within three weeks of planting.
func (f *Facts) hottestSurface(g *SoilYear, film int) unit.Celsius {
	hottest := math.Inf(-1)
	for day := range hotWindow {
		hottest = math.Max(hottest, float64(g.Surface[film][(f.index+day)%weather.YearDays]))
	}
	return unit.Hundredth(hottest)
}
