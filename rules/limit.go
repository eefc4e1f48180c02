package rules

import (
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Limit is something that the advice does not know, or where sources disagree.
type Limit struct {
	ID   string
	Text unit.Phrase
}

func limitsOf(f *Facts) []Limit {
	list := []Limit{
		{"normals", unit.Say("Temperatures are long-term monthly means. A real spring may run {} cooler or warmer, and a cold spell is not in them.", f.Warmth.High)},
		{"film-optics", unit.Say("No per-film table of optics could be opened: the films' optical figures are from memory inside published bounds.")},
		{"film-warming", unit.Say("Published warming under black film runs from 1 °F (0.6 °C) to 6 °C. We show the middle of the New England table, carried to this place.")},
		{"floors", unit.Say("Published floors for {} run from {} to {}. We work to the middle, {}.", f.Crop.Name, f.EarlyFloor, f.SafeFloor, f.WorkFloor)},
		{"weights", unit.Say("The direction of each reason has a source. Its weight is our judgement.")},
	}
	p := &f.Case.Place
	if !p.Own {
		list = append(list, Limit{"period", unit.Say("The station's normals are of 1981–2010. Most places have grown warmer since; choose a warm spring to see the effect.")})
		if p.StationAway > 25000 {
			list = append(list, Limit{"far-station", unit.Say("The nearest station is {} away.", p.StationAway)})
		}
		if p.StationFlag == "P" || p.StationFlag == "Q" {
			list = append(list, Limit{"doubtful-normals", unit.Say("Some of this station's normals are provisional or estimated from neighbours.")})
		}
	}
	if !p.Solar.Given {
		list = append(list, Limit{"sun", unit.Say("Sun, wind and humidity are estimated from temperature, as FAO Paper 56 does where they are missing.")})
	}
	if f.FrostKind == weather.FrostUsual && !p.LastFrost.Given {
		list = append(list, Limit{"frost-pocket", unit.Say("Frost dates are computed for thermometer height. Low ground freezes later into spring and earlier in autumn.")})
	}
	if !f.Case.Water.Flow.Given {
		list = append(list, Limit{"flow", unit.Say("Without the flow of your source we cannot say how many beds it can water at once. Do the bucket test.")})
	}
	if f.Crop.KcMid.Mark == table.FromMemory {
		list = append(list, Limit{"no-coefficient", unit.Say("No published water use was found for {}; a value from memory stands in.", f.Crop.Name)})
	}
	return list
}
