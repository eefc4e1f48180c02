package plan

import (
	"math"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Line is one line of the shopping list.
type Line struct {
	Item     field.Item
	Name     string
	Quantity float64                // what we work out; 0 where it cannot be
	Kind     unit.Kind              // how the quantity is shown
	Spec     unit.Phrase            // what to ask the seller for; empty where the name says it
	Own      unit.Optional[float64] // what the grower wrote over it
	How      unit.Phrase            // how it was worked out
	Missing  string                 // what must be known first; empty where nothing
	Sources  []*table.Source
}

// Taken is the quantity that counts: the grower's own, or ours.
func (l *Line) Taken() float64 { return l.Own.Or(l.Quantity) }

// Short tells that the grower's own quantity is less than what is needed.
func (l *Line) Short() bool { return l.Own.Given && l.Own.Value < l.Quantity }

// Shopping is the list with what it says of the film.
type Shopping struct {
	Refused   bool // film is not to be laid: there is nothing to buy for it
	Lines     [field.ItemCount]Line
	RollMass  unit.Kilograms // of one roll
	Lifters   int            // people for one roll; more than three is a loader's work, 0 is not known
	FilmMass  unit.Kilograms // on the field, clean
	RowsARoll int
	Remnant   unit.Metres // left of the last roll
	Layout    unit.Phrase // bed and plants on an area, to set beside a guide's table
	Base      BaseFertiliser
	Covers    []CoverChoice
}

// Shares and allowances of the list.
const (
	tapeWaste   = 0.03 // splices and repairs, 2–5 %: from memory
	plantSpare  = 0.05 // to fill gaps: common practice
	rollDefault = 2400 * unit.MetresPerFoot
	rollMetric  = unit.Metres(1000)
	gaugeTop    = unit.Kilopascals(30 * unit.KilopascalsPerPSI) // fine enough to read 8–12 psi: from memory
)

// FilmMass is the mass, in kg, of polyethylene film of one width, length and thickness, of
// the density [judge.FilmDensity].
func FilmMass(width, length unit.Metres, thickness unit.Micrometres) unit.Kilograms {
	return unit.Kilograms(float64(width) * float64(length) * float64(thickness) / 1e6 * judge.FilmDensity)
}

// RowsPerRoll is how many whole beds one roll covers, with an allowance at each
// end.
func RowsPerRoll(roll, bed unit.Metres, end unit.Metres) int {
	return int(math.Floor(float64(roll)/float64(bed+2*end) + 1e-9))
}

// Rolls rounds up once, for the whole job.
func Rolls(beds, rowsPerRoll int) int {
	if rowsPerRoll <= 0 {
		return 0
	}
	return (beds + rowsPerRoll - 1) / rowsPerRoll
}

// RollsByLength is the plain quotient, for film that is spliced.
func RollsByLength(total, roll unit.Metres) int {
	return int(math.Ceil(float64(total)/float64(roll) - 1e-9))
}

// Shopping works out the list. It reads the water plan for pipe and zones.
func (a *Advice) Shopping(w *WaterPlan) Shopping {
	var s Shopping
	f, c := a.Facts, &a.Case
	set := func(i field.Item, q float64, kind unit.Kind, how unit.Phrase, sources ...*table.Source) {
		s.Lines[i] = Line{Item: i, Name: field.ItemNames[i], Quantity: q, Kind: kind, How: how, Own: c.Shopping[i], Sources: sources}
	}
	missing := func(i field.Item, kind unit.Kind, what string) {
		s.Lines[i] = Line{Item: i, Name: field.ItemNames[i], Kind: kind, Own: c.Shopping[i], Missing: what, How: unit.Say("Not worked out yet.")}
	}
	s.Layout = unit.Phrase{Text: "Beds {} from center to center make {} and {}.", Quantities: []unit.Quantity{unit.Of(a.Shape.Centres),
		{Kind: unit.KindBedRate, SI: BedOn(a.Shape.Centres)}, {Kind: unit.KindPlantRate, SI: PlantsPerHectare(a.Shape.Centres, f.InRow, f.Rows)}}}
	s.Base, s.Covers = a.BaseFertiliser(w), a.Covers()
	if a.Refused() {
		s.Refused = true
		for i := range field.Item(field.ItemCount) {
			s.Lines[i] = Line{Item: i, Name: field.ItemNames[i], Kind: field.KindOfItem(i), Own: c.Shopping[i], How: unit.Say("Nothing: film is not to be laid here.")}
		}
		return s
	}
	if !c.Field.BedLength.Given || !c.Field.Beds.Given {
		for i := range field.Item(field.ItemCount) {
			missing(i, field.KindOfItem(i), "the length of a bed and the number of beds")
		}
		return s
	}
	bed, beds := c.Field.BedLength.Value, int(c.Field.Beds.Value)
	s.film(a, set, missing, bed, beds)
	run := bed + profile.EndAllowance
	set(field.ItemTape, math.Ceil(float64(beds*f.Laterals)*float64(run)*(1+tapeWaste)), unit.KindLong,
		unit.Say("Beds: {}. Lines of tape on a bed: {}. Each {} long, with {} to join and end, and {} spare for repairs.", beds, f.Laterals, bed, unit.Metres(profile.EndAllowance), unit.PercentOf(tapeWaste)), &table.Practice)
	s.Lines[field.ItemTape].Spec = a.tapeSpec()
	if a.FilmDown() {
		set(field.ItemTape, 0, unit.KindLong, unit.Say("None: the tape under the film is used again. Flush it and test it before you plant."), &table.Practice)
	}
	set(field.ItemTakeOffs, float64(beds*f.Laterals*f.Stretches), unit.KindCount, unit.Say("One for each line of tape."), &table.Practice)
	set(field.ItemEnds, float64(beds*f.Laterals*f.Stretches), unit.KindCount, unit.Say("One for each line of tape."), &table.Practice)
	set(field.ItemFilter, 1, unit.KindCount, unit.Say("One, ahead of the regulator; the mesh follows from the source."), &table.ClogFlorida)
	s.pipes(a, w, set, missing, beds)
	s.Lines[field.ItemTakeOffs].Spec = unit.Say("for tape of {}", unit.Bore(table.Tapes[f.Tape].Bore))
	s.Lines[field.ItemEnds].Spec = s.Lines[field.ItemTakeOffs].Spec
	set(field.ItemGauge, 1, unit.KindCount, unit.Say("One, behind the filter, and one more to carry to the far ends."), &table.Practice)
	s.Lines[field.ItemGauge].Spec = unit.Say("up to {}", gaugeTop)
	set(field.ItemBackflow, 1, unit.KindCount, unit.Say("One approved device at the source. The plumbing code says which kind; a pressure regulator is not one."), &table.Practice)
	if c.Feed.Rate.Given || c.Feed.Injector.Given {
		set(field.ItemInjector, 1, unit.KindCount, unit.Say("One, since you feed through the tape. Feeding makes the line a high hazard to drinking water."), &table.Practice)
	} else {
		set(field.ItemInjector, 0, unit.KindCount, unit.Say("None: you have not asked to feed through the tape."), &table.Practice)
	}
	pins := beds * 2
	if a.FilmDown() {
		pins = 0
	}
	set(field.ItemPins, float64(pins), unit.KindCount, unit.Say("Two for each bed, to hold the ends while they are buried. Pins alone do not hold film."), &table.HandLaying)
	plants := float64(PlantsOn(bed, f.InRow, f.Rows) * beds)
	name := field.ItemNames[field.ItemPlants]
	if f.Seeded {
		name = "sowing places (seeds, one to three each)"
	}
	set(field.ItemPlants, math.Ceil(plants*(1+plantSpare)), unit.KindCount,
		unit.Say("Beds: {}. Rows on a bed: {}. Whole places in {} at {} in the row, and {} spare.", beds, f.Rows, bed, unit.Short(f.InRow), unit.PercentOf(plantSpare)), f.Crop.InRow.Source)
	s.Lines[field.ItemPlants].Name = name
	s.Lines[field.ItemPlants].Spec = unit.Say(f.Crop.Name)
	s.fertiliser(set, missing)
	s.covers(a, set)
	s.stakes(a, set, bed, beds)
	return s
}

// fertiliser is the product for under the film.
func (s *Shopping) fertiliser(set setLine, missing missLine) {
	b := &s.Base
	switch {
	case b.Down:
		set(field.ItemFertiliser, 0, unit.KindMass, unit.Say("None: the film is down already."), b.Sources...)
	case !b.Told():
		missing(field.ItemFertiliser, unit.KindMass, "the grade of your product")
	case b.Product == 0:
		set(field.ItemFertiliser, 0, unit.KindMass, unit.Say("None of this one: it holds {}, and none of that is needed here.", NutrientNames[b.Ends]), b.Sources...)
	default:
		set(field.ItemFertiliser, float64(b.Product), unit.KindMass, unit.Say("{} for {} of bed. More would be too much {}.", b.Per100, b.Bed, NutrientNames[b.Ends]), b.Sources...)
		s.Lines[field.ItemFertiliser].Spec = unit.Say("grade {}", b.GradeWords())
	}
}

// covers are bought where planting needs them; where they only win days, the line says
// what they would take.
func (s *Shopping) covers(a *Advice, set setLine) {
	c := soonest(s.Covers)
	switch {
	case c == nil:
		set(field.ItemCover, 0, unit.KindLong, unit.Say("None: covers gain no days here."))
		set(field.ItemHoops, 0, unit.KindCount, unit.Say("None: covers gain no days here."))
		return
	case !c.Asked:
		set(field.ItemCover, 0, unit.KindLong, unit.Say("None is needed. To plant {} sooner, buy {}, at least {} wide.", c.Won, c.Length, unit.Short(c.Width)), c.Sources...)
		hoops := unit.Say("None are needed. That cover lies on the crop.")
		if c.Hoops > 0 {
			hoops = unit.Say("None are needed. For that cover: {}.", unit.Count(c.Hoops, "hoop", "hoops"))
		}
		set(field.ItemHoops, 0, unit.KindCount, hoops, c.Sources...)
		return
	}
	set(field.ItemCover, float64(c.Length), unit.KindLong, unit.Say("Planting here needs covers: one for each bed, {} longer at each end.", unit.Metres(profile.EndAllowance)), c.Sources...)
	s.Lines[field.ItemCover].Spec = unit.Say(c.Cover.Name+", at least {} wide", unit.Short(c.Width))
	set(field.ItemHoops, float64(c.Hoops), unit.KindCount, unit.Say("{} apart along each bed.", unit.Metres(hoopSpacing)), c.Sources...)
}

// Peppers are staked on mulched beds where wind or a heavy crop lays them: a stake for every two or
// three plants, half as long as a tomato's, and twine from stake to stake (University of Florida
// library, a study of farm plastics); twice round is from memory. Eggplants: common practice, no
// source. Cucumbers on netting bear two to three times as much (North Carolina State University,
// leaflet 8014-B); posts 6 to 8 ft apart, by garden pages.
const (
	mayTie      = 2
	postSpacing = unit.Metres(7 * unit.MetresPerFoot)
)

// stakesFor counts the stakes of so many rows: one for so many plants, and one at the end.
func stakesFor(rows int, bed, inRow unit.Metres, plants int) int {
	return rows * ((PlantsOn(bed, inRow, 1)+plants-1)/plants + 1)
}

// mayStake tells what stakes or a trellis would take where they are a choice. Nothing is needed.
func (s *Shopping) mayStake(a *Advice, set setLine, bed unit.Metres, rows int) {
	crop, long := a.Facts.Crop, unit.Metres(rows)*bed
	if crop.Climbs {
		posts := rows * (int(math.Ceil(float64(bed/postSpacing))) + 1)
		set(field.ItemStakes, 0, unit.KindCount, unit.Say("None are needed. On a trellis cucumbers bore two to three times as much in North Carolina. For one: {} posts, {} apart.", posts, postSpacing))
		set(field.ItemString, 0, unit.KindLong, unit.Say("None is needed. For a trellis: {} of netting.", long))
		return
	}
	stakes := stakesFor(rows, bed, a.Facts.InRow, crop.MayStake)
	set(field.ItemStakes, 0, unit.KindCount, unit.Say("None are needed. If you stake: {}, one for {} plants and one at the end of each row.", stakes, crop.MayStake))
	set(field.ItemString, 0, unit.KindLong, unit.Say("None is needed. If you stake: {}, both sides of each row {} times.", long*2*mayTie, mayTie))
}

// Stakes stand between every other plant, with one at each end; string runs along both sides of
// the row, tied again as the plants grow, four to six times ([table.WeaveKansas]).
const (
	plantsAStake = 2
	ties         = 5
)

func (s *Shopping) stakes(a *Advice, set setLine, bed unit.Metres, beds int) {
	f := a.Facts
	rows := beds * f.Rows
	if f.Crop.MayStake > 0 || f.Crop.Climbs {
		s.mayStake(a, set, bed, rows)
		return
	}
	if !f.Crop.Staked {
		none := unit.Say("None: we have no count of stakes for {}.", f.Crop.Name)
		set(field.ItemStakes, 0, unit.KindCount, none)
		set(field.ItemString, 0, unit.KindLong, none)
		return
	}
	set(field.ItemStakes, float64(stakesFor(rows, bed, f.InRow, plantsAStake)), unit.KindCount,
		unit.Say("Rows: {}. One between every other plant, and one at each end.", rows), &table.WeaveKansas)
	set(field.ItemString, math.Ceil(float64(rows)*float64(bed)*2*ties-1e-9), unit.KindLong,
		unit.Say("Rows: {}. Both sides of {}, {} times as the plants grow; guides say four to six.", rows, bed, ties), &table.WeaveKansas)
}

type setLine func(field.Item, float64, unit.Kind, unit.Phrase, ...*table.Source)
type missLine func(field.Item, unit.Kind, string)

func (s *Shopping) film(a *Advice, set setLine, missing missLine, bed unit.Metres, beds int) {
	width := a.Shape.FilmWidth
	if a.FilmDown() {
		set(field.ItemFilm, 0, unit.KindCount, unit.Say("None: the film is down already."), &table.Practice)
		return
	}
	if _, ok := a.Film.Best(); !ok || width == 0 {
		missing(field.ItemFilm, unit.KindCount, "a film that fits the bed")
		return
	}
	roll := unit.Metres(rollDefault)
	if a.SoldMetric {
		roll = rollMetric
	}
	roll = a.Case.Practice.RollLength.Or(roll)
	s.RowsARoll = RowsPerRoll(roll, bed, profile.EndAllowance)
	if s.RowsARoll == 0 {
		missing(field.ItemFilm, unit.KindCount, "a roll longer than one bed: we plan no splices")
		return
	}
	rolls := Rolls(beds, s.RowsARoll)
	per := bed + 2*profile.EndAllowance
	left := beds - (rolls-1)*s.RowsARoll
	s.Remnant = unit.TenthMillimetre(float64(roll) - float64(left)*float64(per))
	if t, ok := a.ThicknessChosen(); ok {
		s.Lifters = Lifters(FilmMass(width, roll, t))
		s.RollMass = unit.Kilograms(math.Round(float64(FilmMass(width, roll, t))*10) / 10)
		s.FilmMass = unit.Kilograms(math.Round(float64(FilmMass(width, unit.Metres(float64(per)*float64(beds)), t))*10) / 10)
	}
	how := unit.Say("Whole beds of {}, with {} at each end, from one roll: {}. Beds in all: {}. Rounded up once, for the whole job.", bed, unit.Metres(profile.EndAllowance), s.RowsARoll, beds)
	set(field.ItemFilm, float64(rolls), unit.KindCount, how, &table.FilmYieldConstant, &table.NewEngland, &table.LiftingOSHA)
	s.Lines[field.ItemFilm].Spec = a.filmSpec(width, roll)
}

// filmSpec is what the seller must know of the film.
func (a *Advice) filmSpec(width, roll unit.Metres) unit.Phrase {
	film, _ := a.Film.Best()
	name := table.FilmID(film).Name()
	t, ok := a.ThicknessChosen()
	if !ok {
		return unit.Say("{}, {} wide, rolls of {}", name, unit.Roll(width), roll)
	}
	surface, _ := a.Surface.Best()
	return unit.Say("{}, {}, {} thick, {} wide, rolls of {}", name, question.Surface.Key(surface), t, unit.Roll(width), roll)
}

// Walls of tape, from memory of the trade: 8 mil for one season, 10 mil and more
// among stones or for a second crop.
const (
	tapeWall  = unit.Micrometres(8 * unit.MicrometresPerMil)
	toughTape = unit.Micrometres(10 * unit.MicrometresPerMil)
)

// tapeSpec is what the seller must know of the tape.
func (a *Advice) tapeSpec() unit.Phrase {
	tape := &table.Tapes[a.Facts.Tape]
	wall := tapeWall
	if a.Case.Soil.Stones == "many" || a.Case.Practice.CropsOnFilm.Or(1) > 1 {
		wall = toughTape
	}
	return unit.Say("emitters {} apart, {} at {}, wall {} or thicker", unit.Short(tape.Spacing), tape.Flow, table.TapePressure, wall)
}

// PlantsOn is how many plants stand on one bed: whole places in each row.
func PlantsOn(bed, inRow unit.Metres, rows int) int {
	return int(math.Floor(float64(bed)/float64(inRow)+1e-9)) * rows
}

// BedOn is how much bed a field of an area holds, in m for 1 ha.
func BedOn(centres unit.Metres) float64 { return 10000 / float64(centres) }

// PlantsPerHectare is how many plants a field holds, rows to the end.
func PlantsPerHectare(centres, inRow unit.Metres, rows int) float64 {
	return BedOn(centres) * float64(rows) / float64(inRow)
}

func (s *Shopping) pipes(a *Advice, w *WaterPlan, set setLine, missing missLine, beds int) {
	span := unit.Metres(float64(beds-1) * float64(a.Shape.Centres))
	if span < 0 {
		span = 0
	}
	header := span + a.Case.Water.Header.Or(0)
	how := unit.Say("Along the bed heads, {} from bed to bed.", a.Shape.Centres)
	if n := a.Facts.Stretches; n > 1 { // a header across the beds at the middle of each stretch, joined along the field
		length := a.Case.Field.BedLength.Value
		header = unit.Metres(n/2)*span + a.Case.Water.Header.Or(0) + length - length/unit.Metres(n)
		how = unit.Say("Headers across the beds: {}, each at the middle of a stretch of {}, joined along the field.", n/2, 2*length/unit.Metres(n))
		set(field.ItemHeader, math.Ceil(float64(header)), unit.KindLong, how, &table.Practice)
	} else {
		if a.Case.Water.Header.Given {
			how = unit.Say("Along the bed heads, {} from bed to bed, and {} from the source.", a.Shape.Centres, a.Case.Water.Header.Value)
		}
		set(field.ItemHeader, math.Ceil(float64(header)), unit.KindLong, how, &table.Practice)
	}
	zones := zonesOf(w)
	if zones > 0 {
		if w.Supply.BoreFits {
			s.Lines[field.ItemHeader].Spec = unit.Say("{} inside", unit.Bore(w.Supply.Bore.Inside))
		}
		set(field.ItemFilter, 1, unit.KindCount, unit.Say("One, ahead of the regulator."), &table.ClogFlorida)
		s.Lines[field.ItemFilter].Spec = unit.Say("{} mesh", w.Filter.Mesh.Count)
	}
	if zones == 0 {
		missing(field.ItemValves, unit.KindCount, "the flow of the source")
		missing(field.ItemRegulators, unit.KindCount, "the flow of the source")
		return
	}
	set(field.ItemValves, float64(zones), unit.KindCount, unit.Say("One for each zone."), &table.Practice)
	set(field.ItemRegulators, float64(zones), unit.KindCount, unit.Say("One for each zone, behind its valve."), &table.Practice)
	s.Lines[field.ItemValves].Spec = s.Lines[field.ItemHeader].Spec
	s.Lines[field.ItemRegulators].Spec = unit.Say("{} at the tape", w.Tape.Pressure)
}

func zonesOf(w *WaterPlan) int {
	if w == nil || w.Schedule == nil {
		return 0
	}
	return len(w.Schedule.Zones)
}
