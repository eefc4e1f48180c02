// The page shows none of these sentences, so its program is built without them.

//go:build !page

package plan

import (
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// sayCover tells a cover: gain, days, venting, taking off, what it takes.
func (a *Advice) sayCover(c *CoverChoice, hooped bool) {
	f, cover := a.Facts, c.Cover
	say := (*sayings)(&c.Says).say
	gain := unit.Between(cover.Night.Low, cover.Night.High)
	if cover.Weight.Given() {
		say(unit.Capital(cover.Name)+", {}: {} warmer at night.", unit.Between(cover.Weight.Low, cover.Weight.High), gain)
	} else {
		say(unit.Capital(cover.Name)+": {} warmer at night, {} in the sun.", gain, unit.Between(cover.Day.Low, cover.Day.High))
	}
	switch {
	case c.Asked:
		say("Without covers the bed is never warm enough here. Under this one you can plant on {}.", c.First)
	case c.Bare.Given:
		say("{} sooner: you can plant on {} rather than {}. That counts the low end of the published gain. In half of the years a harder frost still comes later: watch the forecast.", c.Won, c.First, c.Bare.Value)
	default:
		say("Without covers no day of the year will do. Under this one you can plant on {}.", c.First)
	}
	say("Open it on sunny days once the air outside passes {}: closed, it is {} hotter inside, and above {} heat harms the crop. Close it before sunset.", c.Vent, unit.Between(cover.Day.Low, cover.Day.High), f.Crop.HeatDay.Value)
	a.sayOff(say)
	a.sayTakes(c, hooped, say)
}

func (a *Advice) sayOff(say func(string, ...any)) {
	crop := a.Facts.Crop
	switch {
	case crop.Group == table.Vine:
		say("Take it off when half of the plants show female flowers: bees must reach them. That is {} to {} after planting.", coverLeast/7, unit.Count(coverMost/7, "week", "weeks"))
	case crop.Group == table.Berry:
		say("Take it off when the first flowers open: bees must reach them.")
	case crop.Group == table.Fruiting:
		say("Take it off {} to {} after planting, before it gets hot inside: flowers drop in heat.", coverLeast/7, unit.Count(coverMost/7, "week", "weeks"))
	case crop.Group == table.Grain:
		say("Take it off before the tassels show.")
	default:
		say("Take it off {} to {} after planting, or when leaves press against it.", coverLeast/7, unit.Count(coverMost/7, "week", "weeks"))
	}
}

// sayTakes counts hoops and cover.
func (a *Advice) sayTakes(c *CoverChoice, hooped bool, say func(string, ...any)) {
	field := &a.Case.Field
	if !field.BedLength.Given || !field.Beds.Given {
		say("It takes cover at least {} wide. Enter the beds to see how much.", unit.Short(c.Width))
		return
	}
	if !hooped {
		say("It takes {} of cover, at least {} wide, laid loosely over the crop, with its edges under soil.", c.Length, unit.Short(c.Width))
		return
	}
	say("It takes {} of cover, at least {} wide, and {}, {} apart. Bury the edges.", c.Length, unit.Short(c.Width), unit.Count(c.Hoops, "hoop", "hoops"), unit.Metres(hoopSpacing))
}

// CanBeDone says what a grower may do whose planting day must wait for the ground or
// for frost: covers, a probe, a later day. It is empty where nothing waits, and where a
// label leads the wait.
func (a *Advice) CanBeDone() (list []unit.Phrase) {
	f, w := a.Facts, &a.WaitPlan
	if w.Moved <= 0 || judge.Waits(f)[question.WaitCooling] > 0 || a.Case.Practice.FumigatedOn.Given {
		return nil
	}
	if c := soonest(a.Covers()); c != nil && c.Bare.Given {
		list = append(list, unit.Say("Covers: under "+c.Cover.Name+" you can plant on {}, {} sooner.", c.First, c.Won))
	}
	list = append(list, unit.Say("A probe: it overrules our curve. Read it at ten in the morning, {} deep, when soil is near its daily mean. Three days at {} will do, if no frost is forecast.", unit.Short(f.Depth), f.WorkFloor))
	if w.Latest.Given && w.Latest.Value > w.PlantOn {
		list = append(list, unit.Say("A later day: by {} even a cool spring, one in ten, is warm enough.", w.Latest.Value))
	}
	return list
}
