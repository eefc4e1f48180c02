// Package sayings hands random usual fields, and all that an advice says, to the tests
// that read each sentence and to those that want its twin in each language.
package sayings

import (
	"math/rand/v2"

	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// AnyField is a random usual field at one of the farms' places: some things told, some
// not, as growers fill a form in.
func AnyField(r *rand.Rand, base field.Case) field.Case {
	c := field.Case{Place: base.Place, Soil: base.Soil, Crop: table.Crops[r.IntN(len(table.Crops))].ID}
	c.PlantOn = unit.Known(unit.On(2027, 1, 1).Plus(unit.Days(r.IntN(365))))
	word := func(at *string, words ...string) {
		if r.IntN(2) == 0 {
			*at = words[r.IntN(len(words))]
		}
	}
	word(&c.Weeds.Pressure, "light", "moderate", "heavy")
	word(&c.Weeds.Nutsedge, "none", "yellow", "purple")
	word(&c.Weeds.Insects, "none", "aphids", "thrips", "whiteflies")
	word(&c.Field.Exposure, "sheltered", "open", "windy")
	word(&c.Practice.Laying, "tractor", "hand")
	word(&c.Water.Source, "well", "pond", "stream", "municipal", "tank")
	if r.IntN(2) == 0 {
		c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(15+r.IntN(185))), unit.Known(float64(1+r.IntN(30)))
	}
	if r.IntN(2) == 0 {
		c.Water.Flow, c.Water.Hours = unit.Known(unit.LitresPerHour(300+r.IntN(12000))), unit.Known(float64(2+r.IntN(14)))
	}
	if r.IntN(4) == 0 {
		c.Water.Salt = unit.Known(unit.DecisiemensPerMetre(float64(r.IntN(50)) / 10))
	}
	if r.IntN(3) == 0 {
		c.Soil.Slope = unit.Known(float64(r.IntN(14)))
	}
	if r.IntN(3) == 0 {
		c.Practice.Tractor = unit.Known(unit.FromHorsepower(float64(15 + r.IntN(80))))
	}
	if r.IntN(5) == 0 {
		c.Practice.Organic = unit.Known(true)
	}
	return c
}

// FullField is a farm's own field with another crop, day and grower: what AnyField leaves
// out is told.
func FullField(r *rand.Rand, base field.Case) field.Case {
	some := AnyField(r, base)
	c := base
	c.Crop, c.Method, c.PlantOn, c.Weeds, c.Practice = some.Crop, "", some.PlantOn, some.Weeds, some.Practice
	c.Field.Exposure, c.Soil.Slope = some.Field.Exposure, some.Soil.Slope
	c.Soil.Drainage = []string{"fair", "quick", "slow"}[r.IntN(3)]
	if r.IntN(4) == 0 {
		c.Practice.CropsOnFilm = unit.Known(2.0)
	}
	if r.IntN(6) == 0 {
		c.Practice.ReuseFilm = []string{"black", "white-on-black"}[r.IntN(2)]
		c.Practice.ReuseCover = unit.Known(float64(50 + 5*r.IntN(10)))
	}
	return c
}

// Of gives all sentences of an advice, in a reader's units, each under its name.
func Of(a *plan.Advice, system unit.System) map[string]string {
	said := map[string]string{}
	note := func(name string, p unit.Phrase) { said[name] = p.In(system) }
	for _, choice := range a.Choices() {
		for place, ranked := range choice.Ranked {
			for i := range ranked.Factors {
				note("rule "+ranked.Factors[i].Rule.ID+" on "+choice.Question.Key(ranked.Option), ranked.Factors[i].Reason)
			}
			if why, rule := choice.WhyNot(place); place > 0 && rule != nil {
				note("why not "+choice.Question.String()+": "+choice.Question.Key(ranked.Option), why)
			}
		}
	}
	for i, s := range a.Insteads() {
		note("instead "+string(rune('a'+i)), s.What)
		note("instead why "+string(rune('a'+i)), s.Why)
	}
	for _, l := range a.Limits {
		note("limit "+l.ID, l.Text)
	}
	for _, d := range a.Defaults {
		if d.Field != "soil.slope_percent" { // level ground is a figure, not a share
			note("default "+d.Field, d.Used)
		}
	}
	water := a.WaterPlan()
	list := a.Shopping(&water)
	for i := range list.Lines {
		note("shopping how "+field.ItemKeys[i], list.Lines[i].How)
		note("shopping spec "+field.ItemKeys[i], list.Lines[i].Spec)
	}
	for _, s := range a.Season(&list) {
		note("season "+s.ID, s.What)
		note("season why "+s.ID, s.Why)
	}
	for _, line := range a.After(&list) {
		note("after "+line.ID, line.Says)
	}
	for i, s := range list.Base.Says {
		note("base "+string(rune('a'+i)), s)
	}
	for i, s := range a.CanBeDone() {
		note("can be done "+string(rune('a'+i)), s)
	}
	for i := range list.Covers {
		for k, s := range list.Covers[i].Says {
			note("cover "+list.Covers[i].Cover.ID+" "+string(rune('a'+k)), s)
		}
	}
	note("water", a.Water.Says)
	for i := range a.Disputes {
		for k := range a.Disputes[i].Sides {
			note("dispute "+a.Disputes[i].ID+" "+string(rune('a'+k)), a.Disputes[i].Sides[k].Says)
		}
	}
	for _, line := range a.MachineOf().Says {
		note(line.ID, line.Says)
	}
	end := a.EndOfFilm(&list)
	note("end", end.Duty)
	note("end organic", end.Organic)
	for i, s := range water.Because {
		note("water because "+string(rune('a'+i)), s)
	}
	for i := range water.Warnings {
		note("water warning "+water.Warnings[i].ID, water.Warnings[i].Says)
	}
	for i := range water.Checks {
		note("water check "+water.Checks[i].ID, water.Checks[i].Says)
	}
	for i := range water.Remedies {
		note("water way "+water.Remedies[i].ID+" change", water.Remedies[i].Change)
		note("water way "+water.Remedies[i].ID+" result", water.Remedies[i].Result)
	}
	said["verdict"], said["dates"] = a.VerdictWords(), a.DatesWords().In(system)
	day := a.Sheet(&list)
	for _, lines := range [][]plan.SheetLine{day.Boxes, day.Settings, day.People, day.Checks, day.Faults, day.Care} {
		for i := range lines {
			said["sheet "+string(lines[i].Key)] = lines[i].In(system)
		}
	}
	for i := range day.Go {
		said["sheet "+string(day.Go[i].Key)] = day.Go[i].In(system)
	}
	for _, c := range a.Cautions {
		said["caution "+c.ID] = c.Text
	}
	return said
}
