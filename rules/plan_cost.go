package rules

import (
	"math"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// CostLine is one thing that costs money, at the grower's own price.
type CostLine struct {
	Name   string
	How    unit.Phrase
	Amount float64
	Priced bool // false: no price was given, so the total leaves it out
	NoSum  string
}

// Cost is the sum by the grower's own prices. Nothing is priced by us.
type Cost struct {
	Currency  string
	Lines     []CostLine
	Total     float64
	Partial   bool    // a price is missing
	PerMetre  float64 // of bed
	PerFoot   float64
	PerPlant  float64
	BreakEven float64 // units of crop that pay the total; 0 without a price of the crop
	Films     []FilmCost
	Hours     Work
}

// FilmCost sets one film beside another: the film, laying, lifting, hauling.
type FilmCost struct {
	Name                string
	Film, Lifting, Haul float64
	Total               float64
	Partial             bool
	Note                string
	Seasons             float64
}

// Work is the work of laying and lifting, in hours of one person.
type Work struct {
	Laying      unit.Hours // of one person
	LayingClock unit.Hours // by the clock
	Lifting     unit.Hours
	People      int
	How         unit.Phrase
}

// Rates of work. By hand: two people took two hours for a row of 150 ft with
// drip and trench, one farm's own count. By tractor: from memory of the trade.
const (
	handHoursPerMetre = 4.0 / (150 * unit.MetresPerFoot)
	layingSpeed       = 0.9                               // m/s, 2 mph
	turnMinutes       = 5.0                               // at each bed end, for beginners
	liftHoursPerMetre = 9.0 / (7260 * unit.MetresPerFoot) // 8–10 h an acre of 6-ft centres, by hand with a lifter
)

// WorkOf counts the hours.
func (a *Advice) WorkOf() Work {
	f, c := a.Facts, &a.Case
	metres, beds := float64(f.BedMetres), c.Field.Beds.Or(0)
	w := Work{Lifting: halfHours(metres * liftHoursPerMetre)}
	if c.Practice.Laying == "hand" {
		w.People = 2
		w.Laying = halfHours(metres * handHoursPerMetre)
		w.LayingClock = halfHours(metres * handHoursPerMetre / 2)
		w.How = unit.Say("By hand: one farm counted 4 hours of one person for {} of bed, with tape and trench.", unit.Metres(150*unit.MetresPerFoot))
		return w
	}
	w.People = 3
	clock := metres/layingSpeed/3600 + beds*turnMinutes/60
	w.LayingClock = halfHours(clock)
	w.Laying = halfHours(clock * 3)
	w.How = unit.Say("By tractor: about {} along the bed, and {} to turn, cut and bury each end.", unit.MetresPerSecond(layingSpeed), unit.Minutes(turnMinutes))
	return w
}

// halfHours rounds up to the half hour: what the figures can support.
func halfHours(h float64) unit.Hours { return unit.Hours(math.Ceil(h*2-1e-9) / 2) }

// CostOf adds up by the grower's own prices; what has no price is left out and
// the total says that it is partial.
func (a *Advice) CostOf(s *Shopping) Cost {
	p := &a.Case.Prices
	c := Cost{Currency: p.Currency, Hours: a.WorkOf()}
	add := func(name string, quantity float64, price Optional[float64], how unit.Phrase) {
		line := CostLine{Name: name, How: how, Priced: price.Given}
		if price.Given {
			line.Amount = cents(quantity * price.Value)
			c.Total += line.Amount
		} else if quantity > 0 {
			c.Partial = true
			line.NoSum = "no price given"
		}
		c.Lines = append(c.Lines, line)
	}
	film, tape, plants := s.Lines[ItemFilm].Taken(), s.Lines[ItemTape].Taken(), s.Lines[ItemPlants].Taken()
	add("Film", film, p.FilmRoll, unit.Say("{} rolls at your price of a roll.", film))
	add("Drip tape", tape, p.TapeMetre, unit.Say("{} at your price of a metre.", unit.Metres(tape)))
	add("Fittings", a.Case.Field.Beds.Or(0), p.FittingBed, unit.Say("{} beds at your price of the fittings for a bed.", a.Case.Field.Beds.Or(0)))
	add("Plants or seed", plants, p.PlantEach, unit.Say("{} at your price of one.", int(plants)))
	hours := float64(c.Hours.Laying)
	add("Laying", hours, p.WageHour, unit.Say("{} of one person at your wage.", c.Hours.Laying))
	lifting, haul := a.liftAndHaul(s, a.Facts.Film)
	add("Lifting", lifting, p.WageHour, unit.Say("{} of one person at your wage.", unit.Hours(lifting)))
	add("Hauling", haul, p.HaulTonne, unit.Say("{} with the soil on it, at your price of a tonne.", unit.Kilograms(haul*1000)))
	c.Total = cents(c.Total)
	if m := float64(a.Facts.BedMetres); m > 0 {
		c.PerMetre, c.PerFoot = cents(c.Total/m), cents(c.Total*unit.MetresPerFoot/m)
	}
	if plants > 0 {
		c.PerPlant = cents(c.Total / plants)
	}
	if p.CropUnit.Given && p.CropUnit.Value > 0 {
		c.BreakEven = math.Ceil(c.Total / p.CropUnit.Value)
	}
	for _, film := range [...]table.FilmID{a.Facts.Film, table.Black, table.BiodegradableBlack, table.Paper} {
		c.film(a, s, film)
	}
	return c
}

func cents(v float64) float64 { return math.Round(v*100) / 100 }

// liftAndHaul gives the hours to lift a film and the tonnes to haul, soil and
// all: four times the clean film, within the published half to nine tenths of
// soil.
func (a *Advice) liftAndHaul(s *Shopping, film table.FilmID) (hours, tonnes float64) {
	if film == table.NoFilm || table.Films[film].Removal != table.LiftAndHaul {
		return 0, 0
	}
	return float64(a.WorkOf().Lifting), float64(s.FilmMass) * 4 / 1000
}

// film sets one film beside the others once. Its price is the grower's roll of
// the chosen film, scaled by the published price classes.
func (c *Cost) film(a *Advice, s *Shopping, film table.FilmID) {
	if film == table.NoFilm {
		return
	}
	name := film.Name()
	for _, have := range c.Films {
		if have.Name == name {
			return
		}
	}
	p := &a.Case.Prices
	f := FilmCost{Name: name, Seasons: 1, Partial: !p.FilmRoll.Given || !p.WageHour.Given}
	scale := 1.0
	if a.Facts.Film != table.NoFilm {
		scale = table.Films[film].PriceClass.Value / table.Films[a.Facts.Film].PriceClass.Value
	}
	f.Film = cents(s.Lines[ItemFilm].Taken() * p.FilmRoll.Or(0) * scale)
	hours, tonnes := a.liftAndHaul(s, film)
	f.Lifting, f.Haul = cents(hours*p.WageHour.Or(0)), cents(tonnes*p.HaulTonne.Or(0))
	f.Partial = f.Partial || (tonnes > 0 && !p.HaulTonne.Given)
	f.Total = cents(f.Film + f.Lifting + f.Haul)
	switch {
	case film == a.Facts.Film:
		f.Note = "the film of the advice, at your price"
	default:
		f.Note = "priced by its published class beside the film of the advice"
	}
	c.Films = append(c.Films, f)
	if crops := a.Case.Practice.CropsOnFilm.Or(1); film == a.Facts.Film && crops > 1 {
		again := f
		again.Name, again.Seasons = name+", for "+plain(crops)+" crops", crops
		again.Film, again.Lifting, again.Haul = cents(f.Film/crops), cents(f.Lifting/crops), cents(f.Haul/crops)
		again.Total, again.Note = cents(f.Total/crops), "the share of one crop"
		c.Films = append(c.Films, again)
	}
}
