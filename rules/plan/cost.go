package plan

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
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
	Extra     float64 // over bare ground: all but the plants
	BreakEven float64 // units of crop that pay for what film costs over bare ground; 0 without a price of the crop
	Films     []FilmCost
	Hours     Work
}

// FilmCost sets one film beside another: the film, laying, lifting, hauling.
type FilmCost struct {
	Name                        string
	Film, Laying, Lifting, Haul unit.Optional[float64] // not given: the grower named no price for it
	Total                       float64
	Partial                     bool
	Note                        unit.Phrase
	// UpTo is the price of a roll up to which this film costs no more than the
	// film of the advice; not given for that film itself, or where prices miss.
	UpTo unit.Optional[float64]
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
	handHours         = 4.0 // of one person for handMetres of bed
	handMetres        = unit.Metres(150 * unit.MetresPerFoot)
	handHoursPerMetre = handHours / float64(handMetres)
	layingSpeed       = unit.MetresPerSecond(0.9) // 2 mph: from memory, 1.5–3 mph
	turnMinutes       = 5.0                       // at each bed end, for beginners: from memory, 3–6 min
	liftHoursPerAcre  = 9.0                       // 8–10 h an acre of 6-ft centres, by hand with a lifter
	liftHoursPerMetre = liftHoursPerAcre / (7260 * unit.MetresPerFoot)
	layingHands       = 3 // behind a tractor, where nobody said how many: common practice
)

// WorkOf counts the hours: ours, or the grower's own.
func (a *Advice) WorkOf() Work {
	w := a.usualWork()
	if a.FilmDown() {
		w = Work{People: w.People, How: unit.Say("The film is down: nothing is laid.")}
	} else if own := a.Case.Prices.LayHours; own.Given {
		w.Laying, w.LayingClock = unit.Hours(own.Value), halfHours(own.Value/float64(w.People))
	}
	if judge.FilmRow(a.Facts).Removal == table.LiftAndHaul {
		w.Lifting = a.liftHours()
	}
	return w
}

// liftHours is the work of lifting film that must be lifted.
func (a *Advice) liftHours() unit.Hours {
	return unit.Hours(a.Case.Prices.LiftHours.Or(float64(halfHours(float64(a.Facts.BedMetres) * liftHoursPerMetre))))
}

func (a *Advice) usualWork() Work {
	f, c := a.Facts, &a.Case
	metres, beds := float64(f.BedMetres), c.Field.Beds.Or(0)
	var w Work
	if c.Practice.Laying == "hand" {
		w.People = max(leastHands, int(c.Practice.People.Or(leastHands)))
		w.Laying = halfHours(metres * handHoursPerMetre)
		w.LayingClock = halfHours(metres * handHoursPerMetre / float64(w.People))
		w.How = unit.Say("By hand: one farm counted 4 hours of one person for {} of bed, with tape and trench.", handMetres)
		return w
	}
	w.People = max(leastHands, int(c.Practice.People.Or(layingHands)))
	passes := 1.0
	if c.Practice.Tractor.Given && c.Practice.Tractor.Value <= judge.LeastWalk {
		passes = 2 // it forms first and lays after
	}
	clock := passes * (metres/float64(layingSpeed)/3600 + beds*turnMinutes/60)
	w.LayingClock = halfHours(clock)
	w.Laying = halfHours(clock * float64(w.People))
	w.How = unit.Say("By tractor: about {} along the bed, and {} to turn, cut and bury each end.", layingSpeed, unit.Minutes(turnMinutes))
	return w
}

// halfHours rounds up to the half hour: what the figures can support.
func halfHours(h float64) unit.Hours { return unit.Hours(math.Ceil(h*2-1e-9) / 2) }

// CostOf adds up by the grower's own prices; what has no price is left out and
// the total says that it is partial.
func (a *Advice) CostOf(s *Shopping) Cost {
	p := &a.Case.Prices
	c := Cost{Currency: p.Currency, Hours: a.WorkOf()}
	film, tape, plants := s.Lines[field.ItemFilm].Taken(), s.Lines[field.ItemTape].Taken(), s.Lines[field.ItemPlants].Taken()
	c.add("Film", film, p.FilmRoll, unit.KindNumber, unit.Say("Rolls: {}", int(film)))
	c.add("Drip tape", tape, p.TapeMetre, unit.KindPriceLong, unit.Say("{}", unit.Metres(tape)))
	beds := a.Case.Field.Beds.Or(0)
	c.add("Fittings", beds, p.FittingBed, unit.KindNumber, unit.Say("Beds: {}", int(beds)))
	c.add("Plants or seed", plants, p.PlantEach, unit.KindNumber, unit.Say("{}", int(plants)))
	c.add("Header and valves", min(1, beds), p.System, unit.KindNumber, unit.Say("Header, valves, regulators, filter, gauge, backflow device"))
	hours := float64(c.Hours.Laying)
	c.add("Laying", hours, p.WageHour, unit.KindNumber, unit.Say("{} of one person", c.Hours.Laying))
	lifting, haul := a.liftAndHaul(s, a.Facts.Film)
	c.add("Lifting", lifting, p.WageHour, unit.KindNumber, unit.Say("{} of one person", unit.Hours(lifting)))
	c.add("Hauling", haul, p.HaulTonne, unit.KindPriceMass, unit.Say("{} with the soil on it", unit.Kilograms(haul*1000)))
	c.Total = cents(c.Total)
	if m := float64(a.Facts.BedMetres); m > 0 {
		c.PerMetre, c.PerFoot = cents(c.Total/m), cents(c.Total*unit.MetresPerFoot/m)
	}
	if plants > 0 {
		c.PerPlant = cents(c.Total / plants)
	}
	c.Extra = cents(c.Total - c.Lines[plantsLine].Amount)
	if p.CropUnit.Given && p.CropUnit.Value > 0 {
		c.BreakEven = math.Ceil(cents(c.Extra/p.CropUnit.Value) - 1e-9)
	}
	c.films(a, s)
	return c
}

// add puts one line into the sum.
//
//go:noinline
func (c *Cost) add(name string, quantity float64, price unit.Optional[float64], kind unit.Kind, how unit.Phrase) {
	if price.Given {
		how = unit.Phrase{Text: how.Text + ", at {}", Quantities: append(how.Quantities, unit.Quantity{Kind: kind, SI: price.Value})}
	}
	how.Text += "."
	line := CostLine{Name: name, How: how, Priced: price.Given}
	switch {
	case price.Given:
		line.Amount = cents(quantity * price.Value)
		c.Total += line.Amount
	case quantity > 0:
		c.Partial = true
		line.NoSum = "no price given"
	default:
		line.Priced = true // nothing of it is needed
	}
	c.Lines = append(c.Lines, line)
}

// plantsLine is the place of plants or seed in the sum: bare ground needs them too.
const plantsLine = 3

func cents(v float64) float64 { return math.Round(v*100) / 100 }

// liftAndHaul gives the hours to lift a film and the tonnes to haul, soil and
// all: [table.FilmWithSoil].
func (a *Advice) liftAndHaul(s *Shopping, film table.FilmID) (hours, tonnes float64) {
	if film == table.NoFilm || table.Films[film].Removal != table.LiftAndHaul {
		return 0, 0
	}
	return float64(a.liftHours()), float64(s.FilmMass) * table.FilmWithSoil.Value / 1000
}

// films sets the film of the advice beside the same film kept for another crop,
// film that is tilled in, and paper.
func (c *Cost) films(a *Advice, s *Shopping) {
	own := a.Facts.Film
	if own == table.NoFilm {
		return
	}
	p := &a.Case.Prices
	rolls := s.Lines[field.ItemFilm].Taken()
	set := func(film table.FilmID, roll unit.Optional[float64], note unit.Phrase) FilmCost {
		hours, tonnes := a.liftAndHaul(s, film)
		f := FilmCost{Name: film.Name(), Note: note}
		sum := func(quantity float64, price unit.Optional[float64]) unit.Optional[float64] {
			if !price.Given && quantity > 0 {
				f.Partial = true
				return unit.Optional[float64]{}
			}
			amount := cents(quantity * price.Value)
			f.Total += amount
			return unit.Known(amount)
		}
		f.Film, f.Laying = sum(rolls, roll), sum(float64(c.Hours.Laying), p.WageHour)
		f.Lifting, f.Haul = sum(hours, p.WageHour), sum(tonnes, p.HaulTonne)
		f.Total = cents(f.Total)
		return f
	}
	first := set(own, p.FilmRoll, unit.Say("The film of the advice, for one crop."))
	c.Films = append(c.Films, first)
	if r := &table.Films[own]; r.Removal == table.LiftAndHaul {
		crops := max(2, a.Case.Practice.CropsOnFilm.Or(1))
		again := first
		again.Name += ", reused"
		for _, part := range []*unit.Optional[float64]{&again.Film, &again.Laying, &again.Lifting, &again.Haul} {
			part.Value = cents(part.Value / crops)
		}
		again.Total = cents(first.Total / crops)
		again.Note = unit.Say("The share of one of {} crops.", int(crops))
		if left := r.CoverLeft; left.Given() {
			again.Note = unit.Say("The share of one of {} crops; after two, {} of its cover was left in a trial.", int(crops), left.Value)
		}
		c.Films = append(c.Films, again)
	}
	black := FilmCost{}
	if table.Films[own].Removal != table.LiftAndHaul {
		black = set(table.Black, unit.Optional[float64]{}, unit.Say("Plastic that must be lifted and hauled."))
	}
	for _, f := range [...]FilmCost{black,
		set(table.BiodegradableBlack, p.RollTilled, unit.Say("Tilled in: nothing to lift or haul. Film that sticks to fruit may cost you a part of the price.")),
		set(table.Paper, p.RollPaper, unit.Say("Tilled in: nothing to lift or haul. Its edges rot first: bury them deep."))} {
		if f.Name == "" || f.Name == first.Name {
			continue
		}
		if !first.Partial && f.Laying.Given && f.Lifting.Given && f.Haul.Given && rolls > 0 {
			f.UpTo = unit.Known(math.Floor((first.Total-f.Total+f.Film.Value)/rolls*100+1e-6) / 100)
		}
		c.Films = append(c.Films, f)
	}
}
