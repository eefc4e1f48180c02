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
		{"normals", unit.Say("Temperatures are long-term monthly means. The soil's mean on planting day may lie from {} to {} under black film; a cold spell is not in the means.", f.Warmth.Low[table.Black][warmthBefore], f.Warmth.High[table.Black][warmthBefore])},
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
	if p := f.Probe; p.Given && p.Doubtful {
		list = append(list, Limit{"probe-doubted", unit.Say("Your probe reading lies {} from what we computed ({}). That is too far to believe, so the curve was not moved. Read again in the shade, and check °C against °F.", p.Shift, p.Expected)})
	} else if p.Given {
		list = append(list, Limit{"probe-used", unit.Say("Your probe reading moved the whole curve by {}; we had computed {} for that hour and depth.", p.Shift, p.Expected)})
	}
	if !f.Case.Water.Flow.Given {
		list = append(list, Limit{"flow", unit.Say("Without the flow of your source we cannot say how many beds it can water at once. Do the bucket test.")})
	}
	if f.Crop.KcMid.Mark == table.FromMemory {
		list = append(list, Limit{"no-coefficient", unit.Say("No published water use was found for {}; a value from memory stands in.", f.Crop.Name)})
	}
	return list
}
