package plan

import (
	"math"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// CoverChoice is one row cover or low tunnel, with what it is worth here.
type CoverChoice struct {
	Cover  *table.Cover
	Asked  bool                     // the bed never holds the working floor: without covers there is no day
	First  unit.Date                // on which the crop may go out under it
	Bare   unit.Optional[unit.Date] // and without; not given where there is no such day
	Won    unit.Days                // 0 where there is no day without
	Vent   unit.Celsius             // outside air on a sunny day, above which it is opened
	OffOn  unit.Date                // from when it comes off, at the latest two weeks on
	Hoops  int                      // for all beds; 0 where it lies on the crop, or beds are not known
	Length unit.Metres              // for all beds; 0 where they are not known
	Width  unit.Metres              // least
	Says   []unit.Phrase            // gain, days, venting, taking off, what it takes; each one sentence or two

	Sources []*table.Source
}

// Sizes of covers: common practice, no source, but for the hoops.
const (
	hoopSpacing = 4 * unit.MetresPerFoot // makers' pages: 4 to 5 ft
	coverBuried = 0.15                   // of an edge, on each side
	coverSlack  = 0.30                   // for the plants to grow into, across a floating cover
)

// Covers come off three to five weeks after planting ([table.RowCoversNewEngland]).
const (
	coverLeast = 21
	coverMost  = 35
)

// coverWins is the most that a cover is counted to win, one to three weeks
// ([table.RowCoversH251]): a mild autumn of the year before is not an early spring.
const coverWins unit.Days = 21

// leastWon is the least that a cover must win to be told: a day or two is what one spring
// differs from the next (our judgment).
const leastWon unit.Days = 3

// winterGates are the reasons against film that a cover may mend.
var winterGates = [...]string{"out-of-season", "always-frost", "never-warm"}

// Covers lists the row covers and low tunnels that win days here, from the lightest:
// the crop may go out sooner under them than without, or only under them. It is empty
// where none does, and where film is refused for another reason than the cold.
func (a *Advice) Covers() (list []CoverChoice) {
	f := a.Facts
	if a.Refused() && !a.onlyCold() {
		return nil
	}
	asked := f.Opening == facts.OpenUnderCovers
	from := f.Wanted
	if end, ok := judge.LabelEnds(&a.Case.Practice); ok {
		from = max(from, end)
	}
	for i := range table.Covers {
		cover := &table.Covers[i]
		season := f.SeasonUnder(cover.Night.Low)
		opens := from
		if f.Opening == facts.OpenWarm {
			opens = max(from, f.Plant.Plus(-coverWins))
		}
		first, ok := season.NextOpen(f.ChosenCover(), opens, facts.UsualSpring)
		if !ok || f.Crop.Hardiness >= table.Tender && season.FreeFrom(first) < f.CropDays {
			continue // frost comes before the harvest, under the cover too
		}
		c := CoverChoice{Cover: cover, Asked: asked, First: first}
		if f.Opening == facts.OpenWarm {
			c.Bare, c.Won = unit.Known(f.Plant), f.Plant.Minus(first)
			if c.Won < leastWon {
				continue
			}
		} else if f.Opening == facts.NeverOpen && f.Season.Open(f.ChosenCover(), from) {
			continue
		}
		if n := len(list); n > 0 && cover.Weight.Given() && first >= list[n-1].First {
			continue // heavier cloth takes light from the leaves, and wins nothing more here
		}
		a.describe(&c)
		list = append(list, c)
	}
	return list
}

func (a *Advice) onlyCold() bool {
	for g := range a.Gates {
		cold := false
		for _, id := range winterGates {
			cold = cold || a.Gates[g].Rule.ID == id
		}
		if a.Gates[g].RulesOut && !cold {
			return false
		}
	}
	return true
}

// describe works out venting, taking off and what the cover takes, and says it all in the advice
// file.
func (a *Advice) describe(c *CoverChoice) {
	f, cover := a.Facts, c.Cover
	c.Vent = VentAbove(f.Crop, cover)
	c.OffOn = c.First.Plus(coverLeast)
	hooped := cover.Hooped || f.Crop.Group == table.Fruiting // tips that rub against fabric break
	c.Width = unit.Metres(math.Ceil((float64(a.Shape.Base)+2*coverBuried+coverSlack)*20) / 20)
	if hooped { // half a circle over the bed
		c.Width = unit.Metres(math.Ceil((float64(a.Shape.Base)*math.Pi/2+2*coverBuried)*20) / 20)
	}
	if field := &a.Case.Field; field.BedLength.Given && field.Beds.Given {
		bed, beds := field.BedLength.Value, int(field.Beds.Value)
		c.Length = unit.Metres(math.Ceil(float64(bed+2*profile.EndAllowance) * float64(beds)))
		if hooped {
			c.Hoops = (int(math.Ceil(float64(bed)/hoopSpacing-1e-9)) + 1) * beds
		}
	}
	a.sayCover(c, hooped)
	c.Sources = append([]*table.Source{cover.Night.Source, cover.Day.Source}, table.CoverSources[:]...)
	if !f.Crop.Warm {
		c.Sources = append(c.Sources, &table.RowCoversCool)
	}
}

// coolVent is 60 °F: above it by day covers come off cool crops ([table.RowCoversCool]).
const coolVent = unit.Celsius((60 - 32) / 1.8)

// VentAbove is the outside air on a sunny day above which a cover is opened: the crop's
// heat limit, less what the closed cover adds; of cool crops no more than 60 °F.
func VentAbove(crop *table.Crop, cover *table.Cover) unit.Celsius {
	vent := crop.HeatDay.Value - unit.Celsius(cover.Day.Value)
	if !crop.Warm {
		vent = min(vent, coolVent)
	}
	return unit.Celsius(math.Round(float64(vent)*10) / 10)
}

// soonest is the cover that lets the crop out first, the lightest of those; nil of none.
func soonest(list []CoverChoice) *CoverChoice {
	var best *CoverChoice
	for i := range list {
		if best == nil || list[i].First < best.First {
			best = &list[i]
		}
	}
	return best
}
