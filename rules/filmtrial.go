package rules

import (
	"hash/fnv"
	"math"
	"strconv"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/trial"
	"filmfurrow/rules/unit"
)

// FilmTrial is a strip trial of films on the beds of a field.
type FilmTrial struct {
	Layout    trial.Layout
	Films     []table.FilmID // the ways, in the order that the layout counts them in
	Least     unit.Percent   // true difference in yield that it shows four times in five
	Variation unit.Percent   // by which plots of one block are taken to differ
	Source    string         // who measured that
}

// Ways are the films that a trial on this field may compare, best first: those that no rule
// rules out. There are none where film is refused or lies already.
func Ways(a *plan.Advice) (films []table.FilmID) {
	if a.Refused() || a.FilmDown() {
		return nil
	}
	for i := range a.Film.Ranked {
		if r := &a.Film.Ranked[i]; r.RuledOutBy == nil && table.FilmID(r.Option) != table.NoFilm {
			films = append(films, table.FilmID(r.Option))
		}
	}
	return films
}

// TryFilms plans a trial of films out of [Ways], on the beds of the field; the same field and
// films give the same plan. The error is a sentence for its grower.
func TryFilms(a *plan.Advice, films []table.FilmID) (FilmTrial, error) {
	f := &a.Case.Field
	switch {
	case a.FilmDown():
		return FilmTrial{}, trial.Refusal("The film is down already, so there is no trial of films.")
	case a.Refused():
		return FilmTrial{}, trial.Refusal("Film may not be laid here, so there is no trial of films.")
	case !f.Beds.Given || !f.BedLength.Given:
		return FilmTrial{}, trial.Refusal("A trial needs the number of beds and their length: give both.")
	}
	h := fnv.New64a()
	seed := a.Case.Crop
	for _, v := range [...]float64{float64(a.Case.Place.Latitude.Value), float64(a.Case.Place.Longitude.Value), float64(a.WaitPlan.PlantOn), f.Beds.Value, float64(f.BedLength.Value)} {
		seed += " " + strconv.FormatFloat(v, 'g', -1, 64)
	}
	for _, film := range films {
		seed += " " + table.Films[film].ID
	}
	h.Write([]byte(seed))
	l, err := trial.Plan(h.Sum64(), len(films), int(f.Beds.Value), float64(f.BedLength.Value))
	if err != nil {
		return FilmTrial{}, err
	}
	t := FilmTrial{Layout: l, Films: films}
	share, source := trial.Variation(a.Case.Crop, l.Ways, l.Length)
	least, _ := trial.CanShow(l.Blocks, l.Ways, share)
	t.Least, t.Variation, t.Source = unit.Percent(math.Round(100*least)), unit.Percent(math.Round(100*share)), source
	return t, nil
}

// Says tells what the trial can show, and on what that rests.
func (t *FilmTrial) Says() (says []unit.Phrase) {
	l := &t.Layout
	says = append(says, unit.Say("{} of {} of bed each. It shows a true difference of {} in yield four times in five; a smaller one is easily missed.", unit.Count(len(l.Plots), "plot", "plots"), unit.Metres(l.Length), t.Least),
		unit.Say("That rests on plots of one block that differ by {} ({}).", t.Variation, t.Source))
	if l.Blocks < l.Wanted {
		says = append(says, unit.Say("A good trial of so many films has {} blocks at least: more beds would show more.", l.Wanted))
	}
	if l.Reaches > 1 {
		says = append(says, unit.Say("Beds are in {} parts: where a part ends cut the film, change the roll and bury both ends.", l.Reaches))
	}
	guards := ""
	for i, bed := range l.Guards {
		if i > 0 {
			guards += ", "
		}
		guards += strconv.Itoa(bed)
	}
	return append(says, unit.Say("Guard beds, laid and grown like the others and not tallied: {}.", guards),
		unit.Say("Keep it fair: one variety, one planting day, the same water and feed for all. Pick all plots of a block on one day, and weigh what is fit to sell."))
}
