package plan

import (
	"slices"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Refused tells that no film may be laid here. Then nothing is laid, ordered or
// bought for film; what the other answers say holds only for who lays all the same.
func (a *Advice) Refused() bool {
	v, ok := a.Verdict.Best()
	return ok && v == question.DoNotLay
}

// Instead is one thing to do where film is refused, with its reason.
type Instead struct {
	Gate    string // the id of the gate that it answers
	What    unit.Phrase
	Why     unit.Phrase
	Sources []*table.Source
}

// remedies are what the trade does where a gate says no, one row or more for a gate.
var remedies = [...]struct {
	gate    string
	of      func(*Advice) (what, why unit.Phrase)
	sources []*table.Source
}{
	{"dense-seed", bareGround, []*table.Source{&table.Plasticulture}},
	{"drilled", bareGround, []*table.Source{&table.Plasticulture}},
	{"seeded-root", bareGround, []*table.Source{&table.Plasticulture, &table.Practice}},
	{"hilled", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Grow {} on bare ground, and hill two or three times during the season. Spread straw between the rows after the last hilling.", a.Facts.Crop.Name),
			unit.Say("Hilling covers the tubers and buries young weeds.")
	}, []*table.Source{&table.Practice}},
	{"no-water", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Mulch with straw or hay {} deep once the ground is warm, or bring water first: a tank holds what {} of bed need for a day, {}.", unit.Between(strawLeast, strawMost), unit.Metres(100), a.Water.PeakLitres),
			unit.Say("Rain goes through straw. It does not go through film.")
	}, []*table.Source{&table.Practice}},
	{"steep-slope", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Lay on ground of {} or less, along the contour. On this slope keep the soil covered: sod, straw, or a crop set into a killed rye cover.", unit.Percent(judge.MildSlope)),
			unit.Say("Film sheds the rain, and bare alleys on a slope wash out.")
	}, []*table.Source{&table.Runoff, &table.RunoffRye}},
	{"purple-nutsedge", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Clear the nutsedge first: a season of fallow worked every three weeks in dry heat, or a crop that shades it. Mark the patches and clean tools before the next field."),
			unit.Say("Tubers left in the ground go through every plastic film.")
	}, []*table.Source{&table.NutsedgePurple2005, &table.Practice}},
	{"purple-nutsedge", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("This year choose another field, or try paper mulch on a strip."),
			unit.Say("Paper stopped spears that went through film, as long as it lay whole.")
	}, []*table.Source{&table.Nutrition}},
	{"salty-water", func(a *Advice) (what, why unit.Phrase) {
		if list := a.standsSalt(); list != "" {
			return unit.Say("Grow a crop that tolerates this water: {}. Or bring better water.", list),
				unit.Say("With water of {} these lose less than a tenth of their yield.", a.Case.Water.Salt.Value)
		}
		return unit.Say("Bring better water, or blend it: none of our crops tolerates this one."), unit.Say("Its salt is {}.", a.Case.Water.Salt.Value)
	}, []*table.Source{&table.FAO61, &table.FAO29}},
	{"organic-film", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Buy polyethylene to be lifted at the season's end, or paper, or mulch with straw. Ask the certifier before you order."), unit.Say("The certificate is worth more than a roll of film.")
	}, []*table.Source{&table.OrganicRule}},
	{"season-too-short", func(a *Advice) (what, why unit.Phrase) {
		if day, ok := a.nextYear(); ok {
			return unit.Say("Next, set {} out on {}. For this fall choose a crop that stands frost: kale, spinach, garlic.", a.Facts.Crop.Name, day), unit.Say("Too few days are left before frost.")
		}
		return unit.Say("Choose a crop that stands frost: kale, spinach, garlic."), unit.Say("Too few days are left before frost.")
	}, []*table.Source{&table.Normals}},
	{"out-of-season", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Set {} out on {}, and lay film on {}. Until then keep the ground under a cover crop, such as rye or oats.", a.Facts.Crop.Name, a.WaitPlan.PlantOn, a.WaitPlan.LayOn),
			unit.Say("That is the first day on which frost and soil allow it.")
	}, []*table.Source{&table.Normals}},
	{"always-frost", tunnel, []*table.Source{&table.Practice}},
	{"never-warm", tunnel, []*table.Source{&table.Practice}},
	{"light-tractor-on-stones", func(a *Advice) (what, why unit.Phrase) {
		return unit.Say("Pick the stones from the bed lines, or borrow a heavier tractor, then ask again."), unit.Say("Stones lift the layer and tear the film.")
	}, []*table.Source{&table.Practice}},
}

func bareGround(a *Advice) (what, why unit.Phrase) {
	return unit.Say("Grow {} on bare ground: work the bed two to three weeks early, let weeds come up, kill them shallow, then sow.", a.Facts.Crop.Name),
		unit.Say("A stale seedbed holds weeds in close rows as film does in wide ones.")
}

func tunnel(a *Advice) (what, why unit.Phrase) {
	return unit.Say("Grow {} in a tunnel, or choose a hardier crop for the open field.", a.Facts.Crop.Name), unit.Say("Film warms roots. Leaves need warm air.")
}

// Straw mulch is laid so deep: common practice, no source. nextSpring is how long after
// a day that will not do the next spring is looked for; mostNamed, how many other crops
// are named.
const (
	strawLeast, strawMost = unit.Short(0.1), unit.Short(0.15)
	nextSpring            = 120
	mostNamed             = 4
)

// standsSalt names up to four crops that lose less than a tenth to the water's salt.
func (a *Advice) standsSalt() string {
	names, found := "", 0
	for i := range table.Crops {
		crop := &table.Crops[i]
		if found == mostNamed || crop.Sown || crop.Hilled || !crop.SaltThreshold.Given() || !crop.SaltSlope.Given() || crop.ID == a.Case.Crop {
			continue
		}
		if facts.SaltLoss(crop, a.Case.Water.Salt.Value) < judge.SomeLoss {
			if found > 0 {
				names += ", "
			}
			names, found = names+crop.Name, found+1
		}
	}
	return names
}

// nextYear is the first day of the next spring on which the crop may go out.
func (a *Advice) nextYear() (unit.Date, bool) {
	f := a.Facts
	return f.Season.NextOpen(f.ChosenCover(), f.Plant.Plus(nextSpring), facts.UsualSpring)
}

// Insteads lists what to do where film is refused; empty where it is not.
func (a *Advice) Insteads() (list []Instead) {
	if !a.Refused() {
		return nil
	}
	for g := range a.Gates {
		if !a.Gates[g].RulesOut {
			continue
		}
		for i := range remedies {
			if r := &remedies[i]; r.gate == a.Gates[g].Rule.ID {
				what, why := r.of(a)
				if !slices.ContainsFunc(list, func(i Instead) bool { return i.What.Text == what.Text }) {
					list = append(list, Instead{r.gate, what, why, r.sources})
				}
			}
		}
	}
	return list
}

// bareWords are the steps of a year without film that would else speak of film. How to
// grow on bare ground: common practice, no source.
var bareWords = [...]struct{ id, what, why string }{
	{"ground", "", "Roots and seeds take hold in fine, clean ground."},
	{"plant", "", "Plant in the evening if it is hot."},
	{"first-water", "", "Young roots reach no water but what you give them."},
	{"weekly-check", "Check the probe, the rows for weeds, and the pressure at the far end.", "Small weeds are quickly killed."},
	{"stop", "Stop the water and take up the tape.", "Tape that is dry is light and clean."},
}

// bareSeason is the year's dates of a field without film: what is left of them where
// a crop may be grown all the same, or the one day to come back on.
func (a *Advice) bareSeason(whole []SeasonStep) (list []SeasonStep) {
	for i := range a.Gates {
		switch a.Gates[i].Rule.ID {
		case "out-of-season", "season-too-short", "always-frost", "never-warm", "no-water":
			return nil
		case "salty-water": // bare ground is watered with the same
			if a.Gates[i].RulesOut {
				return nil
			}
		}
	}
	for _, s := range whole {
		switch {
		case s.Step == judge.StepLaying, s.Step == judge.StepLifting:
			continue
		case s.ID == "order", s.ID == "collector", s.ID == "moisture", s.ID == "wait", s.ID == "paint":
			continue
		}
		for i := range bareWords {
			if w := &bareWords[i]; w.id == s.ID {
				s.Why = unit.Say(w.why)
				if w.what != "" {
					s.What = unit.Say(w.what)
				}
			}
		}
		list = append(list, s)
	}
	return list
}
