package rules_test

import (
	"fmt"
	"os"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// coolFarm reads an invented farm with a made-up climate.
func coolFarm() field.Case {
	data, err := os.ReadFile("../testdata/cases/pepper-cool-spring.json")
	if err != nil {
		panic(err)
	}
	c, err := casefile.Decode(data, nil)
	if err != nil {
		panic(err)
	}
	return c
}

// One case in, one advice out: the answers in the order of the questions, and the day.
func ExampleAdvise() {
	a, err := rules.Advise(coolFarm())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, choice := range a.Choices() {
		if best, ok := choice.Best(); ok {
			fmt.Printf("%v: %s\n", choice.Question, choice.Question.Says(best).In(unit.US))
		}
	}
	fmt.Printf("asked for %s, plant on %s, lay on %s\n", a.Facts.Wanted, a.WaitPlan.PlantOn, a.WaitPlan.LayOn)
	fmt.Printf("refused: %v\n", a.Refused())
	// Output:
	// verdict: Lay film, with care
	// film: black film
	// surface: embossed
	// thickness: 1 mil
	// bed: a bed 4 in high
	// tape: emitters 12 in apart, 0.45 gpm per 100 ft
	// wait: warming the bed
	// asked for 2027-05-20, plant on 2027-06-03, lay on 2027-05-27
	// refused: false
}

// Each answer keeps every factor that spoke, with its points, its reason in this case's
// numbers and its sources.
func ExampleAdvise_reasons() {
	a, err := rules.Advise(coolFarm())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, factor := range a.Film.Ranked[0].Factors[:1] {
		fmt.Printf("%+.1f %s: %s (%s)\n", factor.Points(), factor.Rule.Title, factor.Reason.In(unit.US), factor.Rule.Sources[0].Publisher)
	}
	// Output:
	// +1.0 Hours of weeding: It holds the annual weeds: about 1.5 h less weeding on 100 ft of bed. (Kansas State University)
}

// What is wrong comes all at once, each beside its field.
func ExampleAdvise_errors() {
	c := coolFarm()
	c.Crop, c.Water.Flow = "peper", unit.Known(unit.LitresPerHour(-5))
	_, err := rules.Advise(c)
	fmt.Println(err)
	// Output:
	// crop: "peper" is not allowed. Allowed: one of 50 ids, see explain. Choose one of the allowed ids, or leave the field out.
	// water.flow_l_h: -5 is not allowed. Allowed: 1 to 2000000 L/h. Without water there is no plan: choose “none” as the source, or do the bucket test.
}

// Whoever asks often keeps the soil's year, which takes most of the time: it belongs to
// place, soil and bed, not to the crop or the day.
func ExampleAdviseOn() {
	c := coolFarm()
	soil, err := facts.NewSoilYear(c)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, month := range []int{5, 6, 7} {
		c.PlantOn = unit.Known(unit.On(2027, month, 1))
		a, err := rules.AdviseOn(soil, c)
		if err != nil {
			fmt.Println(err)
			return
		}
		best, _ := a.Film.Best()
		fmt.Println(c.PlantOn.Value, table.FilmID(best).Name(), a.WaitPlan.PlantOn)
	}
	// Output:
	// 2027-05-01 black film 2027-06-03
	// 2027-06-01 black film 2027-06-03
	// 2027-07-01 black film 2027-07-01
}

// While one thing changes at a time, what cannot differ is taken over from the advice
// before. The advice is the same, byte for byte.
func ExampleAdviseAfter() {
	c := coolFarm()
	soil, err := facts.NewSoilYear(c)
	if err != nil {
		fmt.Println(err)
		return
	}
	before, err := rules.AdviseAfter(nil, soil, c)
	if err != nil {
		fmt.Println(err)
		return
	}
	c.Weeds.Nutsedge, c.Weeds.Pressure = "purple", "heavy"
	after, err := rules.AdviseAfter(&before, soil, c)
	if err != nil {
		fmt.Println(err)
		return
	}
	verdict, _ := after.Verdict.Best()
	fmt.Println(question.Verdict.Says(verdict).In(unit.US), after.Refused())
	for _, instead := range after.Insteads() {
		fmt.Println(instead.Gate)
	}
	// Output:
	// Do not lay film here true
	// purple-nutsedge
	// purple-nutsedge
}
