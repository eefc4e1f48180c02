package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// limit is one that holds of every case. The page's program is built without its text, which it
// fetches where it lists them: see [RuleTexts].
func limit(id, limits string, values ...any) Limit { return Limit{id, unit.Say(limits, values...)} }

// farStation is the distance beyond which the nearest station is said to be far, m.
const farStation = 25000

// otherHeight is the height between station and field from which it is told, m.
const otherHeight = 100

// midsummer and midwinter are days of the year, those of the northern half of the earth.
const midsummer, midwinter = 172, 355

// Limit is something that the advice does not know, or where sources disagree.
type Limit struct {
	ID   string
	Text unit.Phrase
}

// Limits lists what the advice of a case does not know, what holds of every case first.
func Limits(f *facts.Facts) []Limit {
	list := []Limit{
		{"normals", unit.Say("Temperatures are long-term monthly means. The soil's mean on planting day may lie from {} to {} under black film; a cold spell is not in the means.", f.Warmth.Low[table.Black][facts.WarmthBefore], f.Warmth.High[table.Black][facts.WarmthBefore])},
		{"floors", floorLimit(f)},
		{"weights", unit.Say("The direction of each reason has a source. Its weight is our judgment.")},
	}
	list = append(list, warmthLimits()...)
	list = append(list, waterLimits()...)
	p := &f.Case.Place
	if !p.Own {
		list = append(list, periodLimit(f))
		if p.StationAway > farStation {
			text := unit.Say("The nearest station is {} away.", unit.Distance(p.StationAway))
			if p.Elevation.Value == p.StationAt {
				text.Text += " Its height stands in for your field's: give yours, or twelve months of your own."
			}
			list = append(list, Limit{"far-station", text})
		}
		if height, where := p.StationFromField(); height >= otherHeight {
			list = append(list, Limit{"station-height", unit.Say("The station lies {} {}. Its temperatures are carried there by {} for each {} of height (FAO Paper 56, standard atmosphere); nights on valley floors do not follow that.", height, where, unit.CelsiusDegrees(1000*weather.LapseRate), unit.Metres(1000))})
		}
		switch abroad := !p.Older.Given; {
		case abroad && p.StationFlag == "P":
			list = append(list, Limit{"doubtful-normals", unit.Say("This station's normals rest on fewer than 24 years.")})
		case abroad && p.StationFlag == "Q":
			list = append(list, Limit{"doubtful-normals", unit.Say("Where this station stands was corrected, or looks odd beside others: compare its height with yours.")})
		case p.StationFlag == "P" || p.StationFlag == "Q":
			list = append(list, Limit{"doubtful-normals", unit.Say("Some of this station's normals are provisional or estimated from neighbors.")})
		}
	}
	if text, ok := airLimit(p); ok {
		list = append(list, Limit{"sun", text})
	}
	if f.FrostKind == weather.FrostUsual && !p.LastFrost.Given {
		text := unit.Say("Days of frost are computed from the months, for thermometer height. Held against the days published of 5,398 stations, our last frost of spring misses by {} and our first of fall by {} (root mean square). Low ground freezes later in spring and earlier in the fall.", facts.FrostMissed.Spring, facts.FrostMissed.Fall)
		if p.StationFrost.Given {
			text = unit.Say("Days of frost are those published of the station for 1981–2010, at thermometer height, moved by what we compute for the height of your field, the years of the normals and the spring you chose. Low ground freezes later in spring and earlier in the fall.")
		}
		list = append(list, Limit{"frost-pocket", text})
	}
	if p := f.Probe; p.Given && p.Doubtful {
		list = append(list, Limit{"probe-doubted", unit.Say("Your probe reading lies {} from what we computed ({}). That is too far to believe, so the curve was not moved. Read again in the shade, and check °C against °F.", p.Shift, p.Expected)})
	} else if p.Given {
		list = append(list, Limit{"probe-used", unit.Say("Your probe reading moved the whole curve by {}; we had computed {} for that hour and depth.", p.Shift, p.Expected)})
	}
	if f.Crop.ByDay && p.Latitude.Given {
		longest := max(sky.DayLength(p.Latitude.Value, midsummer), sky.DayLength(p.Latitude.Value, midwinter))
		list = append(list, Limit{"day-length", unit.Say("Kinds of {} differ more than this page knows. Short-day kinds make bulbs at 10 to 12 h of day, intermediate ones at 12 to 14, long-day ones at 14 or more (Iowa State University). Your longest day has {}: ask for a kind that fits it.", f.Crop.Name, longest)})
	}
	if !f.Case.Water.Flow.Given {
		list = append(list, Limit{"flow", unit.Say("Without the flow of your source we cannot say how many beds it can water at once. Do the bucket test.")})
	}
	switch kc := &f.Crop.KcMid; kc.Mark {
	case table.FromMemory:
		list = append(list, Limit{"no-coefficient", unit.Say("We found no published water use for {}; a value from memory stands in.", f.Crop.Name)})
	case table.StandIn:
		list = append(list, Limit{"stand-in-coefficient", unit.Say("We found no published water use for {}. The figure of another crop stands in: {}.", f.Crop.Name, kc.Note)})
	}
	return list
}

// airLimit says what of sun, wind and humidity is estimated.
func airLimit(p *field.Place) (text unit.Phrase, ok bool) {
	estimated := ""
	for _, part := range [...]struct {
		name string
		own  bool
	}{{"sun", p.Solar.Given || p.StationSun.Given}, {"wind", p.Wind.Given || p.StationWind.Given}, {"humidity", p.Humidity.Given || p.StationVapour.Given}} {
		switch {
		case part.own:
		case estimated == "":
			estimated = part.name
		default:
			estimated += ", " + part.name
		}
	}
	switch estimated {
	case "":
		return unit.Say("Sun, wind and humidity are measured means, for the plan of water; the soil's warmth goes by estimates of them."), !p.Solar.Given
	case "sun, wind, humidity":
		return unit.Say("Sun, wind and humidity are estimated from temperature, as FAO Paper 56 does where they are missing. At 452 stations that measured them the reference use of a day so misses by {} (root mean square).", facts.EstimateLoses), true
	}
	return unit.Say("Of sun, wind and humidity, what is not measured is estimated from temperature, as FAO Paper 56 does: {}.", estimated), true
}

// periodLimit says which years the station's normals are of.
func periodLimit(f *facts.Facts) Limit {
	text := unit.Say("The station's normals are of 1991–2020. Most places have grown warmer since; choose a warm spring to see the effect.")
	switch p := &f.Case.Place; {
	case p.IsOlder():
		text = unit.Say("The station's normals are of 1981–2010. Most places have grown warmer since; those of 1991–2020 are nearer to the years you will meet.")
	case p.Estimated:
		text = unit.Say("The station's normals of 1991–2020 are estimated: those of 1981–2010, moved as the ten nearest stations moved that published both. A month may miss by {} (root mean square); not moved, by {} more.", normals.EstimateMissed, unit.PercentOf(float64(normals.Untouched/normals.EstimateMissed)-1))
	}
	return Limit{"period", text}
}

// floorLimit says which floor the planting day works to, and what lists say.
func floorLimit(f *facts.Facts) unit.Phrase {
	list := unit.Between(min(f.MinSoilTemperature, f.SafeSoilTemperature), max(f.MinSoilTemperature, f.SafeSoilTemperature))
	if f.Mild {
		return unit.Say("The planting day waits for a daily mean of {} under the film, about the least that lists name: frost is long past here before the bed is warmer. Published lists for {} name {}.", f.WorkFloor, f.Crop.Name, list)
	}
	if f.Crop.Warm {
		return unit.Say("The planting day waits for a daily mean of {} under the film. Published lists for {} name {}, read early in the morning or at ten.", f.WorkFloor, f.Crop.Name, list)
	}
	return unit.Say("The planting day waits for a daily mean of {} under the film. Published lists for {} name {}.", f.WorkFloor, f.Crop.Name, list)
}

// warmthLimits are the computed soil warmth's own: what it missed when it was
// held against measured soil and published rows. The figures are those that the
// tests of the heat model print; no constant was moved to make one of them
// smaller.
func warmthLimits() []Limit {
	degrees := func(k float64) unit.CelsiusDegrees { return unit.CelsiusDegrees(k) }
	return []Limit{
		limit("warmth-stations", "Soil warmth: at 20 weather stations that were not used to fit it, the monthly mean computed from their normals of 1991–2020, with rain where that is published, missed that measured in 2020 by {} at {} and {} at {}; a single day missed by {} and {} (root mean square, March to September). On average it was {} too cool: normals are older than the years one meets. The band around a curve held at least eight in ten of those monthly means.", degrees(heat.FromNormals.Months[0]), unit.Short(0.05), degrees(heat.FromNormals.Months[1]), unit.Short(0.1), degrees(heat.FromNormals.Days[0]), degrees(heat.FromNormals.Days[1]), degrees(-heat.FromNormals.Bias[0])),
		limit("warmth-grass", "Soil warmth: those stations lie under what grows there, so the error of a tilled or covered bed is not known; the band takes it to be the same."),
		limit("warmth-simpler", "Soil warmth: at {} a plain wave drawn through the same normals misses the days of the same stations by {}.", unit.Short(0.05), degrees(heat.FromNormals.Wave[0])),
		limit("film-optics", "Soil warmth: no per-film table of optics could be opened; the films' optical figures are from memory inside published bounds. Clear film that lies slack may move the daily mean by {}, more than the band shows.", degrees(4.5)),
		limit("film-warming", "Soil warmth: published warming under black film runs from {} to {}. We carry the middle of the New England table to this place and take it for a daily mean, since the table names no hour.", degrees(0.56), degrees(6)),
		limit("warmth-warm-climate", "Soil warmth: for Puerto Rico we compute {} and {} more warming than two published rows found: in a warm climate we warm too much.", degrees(1.16), degrees(0.37)),
		limit("warmth-silver", "Soil warmth: sources disagree about silver-on-black film, from {} cooler than bare soil to {} warmer; two published rows lie {} and {} from ours.", degrees(1.1), degrees(3), degrees(0.81), degrees(2.51)),
		limit("warmth-black-rows", "Soil warmth: for black film, four rows of three published trials lie outside ours, by {} at most (red and blue film too); at a second New England place white-on-black lies outside by {}.", degrees(0.51), degrees(0.50)),
		limit("warmth-georgia", "Soil warmth: a Georgia trial found the root zone {} to {} above the air under every film. Of 30 figures that we compute for it, 8 lie outside, most under white and silver film.", degrees(1), degrees(5)),
		limit("warmth-clear", "Soil warmth: one study found that clear film warms less on days when bare soil is warmer. In a usual year ours warms more, since it has no weather; in the real weather of 60 stations ours warms less at {}. Another study found soil under clear film hottest when moist; ours is up to {} hotter when dry.", 58.0, degrees(3)),
	}
}

// waterLimits are the water plan's own: where it lies outside a published value
// or a rule of the trade, and what it cannot see. The figures are those that
// the tests print and hold.
func waterLimits() []Limit {
	tape := unit.FromGallonsPerMinutePer100Feet(0.5)
	return []Limit{
		limit("water-film", "Water: how much of the need film saves is from memory of FAO Paper 56, from {} to {} by crop.", unit.Percent(5), unit.Percent(35)),
		limit("water-thumb", "Water: in the mid-Atlantic summer, tape of {} is said to run 2 to 3 h a day (common practice, no source). On the day of peak use there we compute {} for bell pepper, {} for cucumber, {} for muskmelon, and {} for tomato, which is outside.", tape, unit.Hours(2.4), unit.Hours(2.2), unit.Hours(2.1), unit.Hours(1.9)),
		limit("water-half", "Water: drip is said to save up to half the water (common practice, no source). For tomato we compute {}, which is outside.", unit.Percent(60)),
		limit("water-purdue", "Water: Purdue University’s hotline counts no saving by film: five weeks after planting it gives a tomato {} of the reference, a watermelon {}. After FAO Paper 56 we compute {} and {} on bare ground, {} and {} under film. So young plants are told a range: put your hand into the bed, and watch the plants from the third week on.", 0.72, 0.57, 0.68, 0.71, 0.27, 0.47),
		limit("water-melon", "Water: under plastic in a dry climate melon was measured at {}, {} and {} of the reference, early, at full leaf and late (Scientia Agricola, 2015); we compute {}, {} and {}. Cucumber under film was measured to save {}; we compute {}.", 0.26, 0.96, 0.63, 0.12, 0.81, 0.57, unit.Percent(16), unit.Percent(29)),
		limit("water-plugs", "Water: computed evenness cannot see plugged outlets. Fields measure {} to {} (CIGR handbook).", unit.Percent(65), unit.Percent(80)),
	}
}
