package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// Lie says how the film lies on the bed.
type Lie uint8

// Smooth film drawn tight is the usual; it slackens in heat.
const (
	Smooth   Lie = iota
	Embossed     // gives with the heat and stays down
	Slack        // laid loose, or on a bed without a crown
	lies
)

// Tilth says how fine the bed's surface is.
type Tilth uint8

// Fine is the usual bed; Cloddy holds the film off the ground.
const (
	Fine Tilth = iota
	Medium
	Cloddy
	tilths
)

// Bounds of a season and of a list of covers.
const (
	MaxDays   = 200
	MaxCovers = 100
)

// Input is all that the soil's warmth is computed from. It is comparable, so a
// caller can keep the last Season by its Input. Make it with sensible values
// from [Usual].
type Input struct {
	Normals   weather.Normals            // of the field; see weather.Normals.AtHeight
	Season    weather.Season             // usual, cool or warm year
	Rain      unit.Optional[[12]float64] // mm a month, 0–3,000, January first; where not known the range of temperature stands in
	SunFactor float64                    // kRs of FAO-56 equation 50: 0.16 inland, 0.19 coast; 0.10–0.25
	Wind      unit.MetresPerSecond       // mean at 2 m, 0.3–10

	Start unit.Date // first day of the season shown
	Days  unit.Days // 1 to MaxDays
	Laid  unit.Date // the film goes on; before it the bed lies bare

	Soil      Soil
	Sod       bool // turf grows on the open ground, as on weather stations; else it lies tilled
	Moisture  Moisture
	Tilth     Tilth
	Lie       Lie
	BedHeight unit.Metres // 0–0.5
	BedTop    unit.Metres // width of the film's flat top, 0.3–2

	Canopy Canopy
	Probe  Probe
}

// Canopy is the crop's shade: from planting it grows to the most after so many
// days. The zero value shades nothing.
type Canopy struct {
	Planted    unit.Date
	DaysToFull unit.Days // 1–365
	Most       float64   // share of the bed under leaves when grown, 0–1
}

// Probe is one reading of the soil in the field. The zero value is none.
type Probe struct {
	Given   bool
	Reading unit.Celsius // −15 to 70
	On      unit.Date    // a day of the season
	Hour    unit.Hours   // of solar time, 0–24
	Depth   unit.Metres  // 0.02–0.30
	Cover   int          // where it was read: Bare, or Bare + 1 + the cover's place
}

// Usual is an input with everything but the place, the soil and the dates: moist
// ground, fine tilth, smooth film, a bed 0.15 m high with a top of 0.76 m (30 in).
func Usual(normals weather.Normals, soil Soil, start unit.Date, days unit.Days) Input {
	return Input{
		Normals: normals, SunFactor: sky.InlandCoefficient, Wind: sky.DefaultWind,
		Start: start, Days: days, Laid: start, Soil: soil,
		BedHeight: 0.15, BedTop: 0.76,
	}
}

// Check returns nil or a [*weather.InputError].
func (in *Input) Check() error {
	if err := in.Normals.Check(); err != nil {
		return err
	}
	if err := in.Soil.Check(); err != nil {
		return err
	}
	if in.Rain.Given {
		for _, mm := range in.Rain.Value {
			if err := within("rain of a month", mm, 0, 3000, "mm", "give the whole month's rain"); err != nil {
				return err
			}
		}
	}
	for _, r := range [...]struct {
		field     string
		value     float64
		low, high float64
		unit      string
		mend      string
	}{
		{"kind of year", float64(in.Season), 0, 2, "", "choose usual, cool or warm"},
		{"sun factor", in.SunFactor, 0.10, 0.25, "", "use 0.16 inland and 0.19 on a coast"},
		{"wind", float64(in.Wind), 0.3, 10, "m/s", "use 2 m/s where the wind is not known"},
		{"days", float64(in.Days), 1, MaxDays, "days", "show a shorter stretch"},
		{"laying date", float64(in.Laid - in.Start), 0, float64(max(in.Days, 1) - 1), "days after the first day", "choose a laying date within the season shown"},
		{"moisture", float64(in.Moisture), 0, float64(moistures - 1), "", "choose dry, moist or wet"},
		{"tilth", float64(in.Tilth), 0, float64(tilths - 1), "", "choose fine, medium or cloddy"},
		{"lie of the film", float64(in.Lie), 0, float64(lies - 1), "", "choose smooth, embossed or slack"},
		{"bed height", float64(in.BedHeight), 0, 0.5, "m", "measure from furrow to bed top"},
		{"bed top width", float64(in.BedTop), 0.3, 2, "m", "measure the flat top under the film"},
		{"leaf cover", in.Canopy.Most, 0, 1, "", "give the share of the bed under leaves"},
	} {
		if err := within(r.field, r.value, r.low, r.high, r.unit, r.mend); err != nil {
			return err
		}
	}
	if in.Canopy.Most > 0 {
		if err := within("days to full cover", float64(in.Canopy.DaysToFull), 1, 365, "days", "count from planting until the leaves stop spreading"); err != nil {
			return err
		}
	}
	return in.checkProbe()
}

func (in *Input) checkProbe() error {
	p := &in.Probe
	if !p.Given {
		return nil
	}
	if err := within("probe reading", float64(p.Reading), -15, 70, "°C", "read again with the probe shaded, and check °C against °F"); err != nil {
		return err
	}
	if err := within("probe date", float64(p.On-in.Start), 0, float64(in.Days-1), "days after the first day", "give a date within the season shown"); err != nil {
		return err
	}
	if err := within("probe hour", float64(p.Hour), 0, 24, "h", "give the hour of the reading"); err != nil {
		return err
	}
	if err := within("probe depth", float64(p.Depth), 0.02, 0.30, "m", "read between 2 and 30 cm deep"); err != nil {
		return err
	}
	return within("probe cover", float64(p.Cover), Bare, MaxCovers, "", "say which cover the probe was under")
}

func within(field string, v, low, high float64, unitName, mend string) error {
	if v >= low && v <= high { // false for NaN
		return nil
	}
	return &weather.InputError{Field: field, Value: v, Low: low, High: high, Unit: unitName, Mend: mend}
}

// gap is the thickness of still air under the film in m. Values are ours: a
// tight film on a fine bed leaves 2–3 mm, clods and slack several times that
// (contact decides the warming under opaque film: University of Connecticut IPM,
// The use of different colored mulches; University of Delaware, Weekly Crop
// Update). A smooth film slackens by about 1 mm for each 5 K of air above 25 °C.
func (in *Input) gap(hottest float64) float64 {
	mm := [lies]float64{Smooth: 3, Embossed: 2, Slack: 8}[in.Lie]
	mm *= [tilths]float64{Fine: 1, Medium: 1.5, Cloddy: 2.5}[in.Tilth]
	if in.Moisture == Dry {
		mm *= 1.5 // a dry bed crumbles away from the film
	}
	if in.Lie == Smooth {
		mm += math.Max(0, hottest-25) / 5
	}
	return math.Min(mm, 15) / 1000
}

// layers gives the bed and the ground below. A raised bed drains and is looser:
// up to 0.3 m it loses water in proportion, at most 30 % of it, and a twentieth
// of its density. No measured difference between raised and flat beds was found
// to check this against, so it is kept modest.
func (in *Input) layers() (bed, below layer) {
	s := &in.Soil
	water := s.water(in.Moisture)
	raised := math.Min(1, float64(in.BedHeight)/0.3)
	return newLayer(s.Density*(1-0.05*raised), water*(1-0.3*raised), s.Sand), newLayer(s.Density, water, s.Sand)
}

func newLayer(density, water, sand float64) layer {
	return layer{Conductivity(density, water, sand), HeatCapacity(density, water), water}
}

// shade gives the share of the bed under leaves on a date: a smooth rise from
// planting to full cover.
func (c *Canopy) shade(on unit.Date) float64 {
	if c.Most <= 0 || on <= c.Planted {
		return 0
	}
	x := math.Min(1, float64(on-c.Planted)/float64(c.DaysToFull))
	return c.Most * x * x * (3 - 2*x)
}
