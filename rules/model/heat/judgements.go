package heat

import "filmfurrow/rules/unit"

// Judgements lists the estimates that soil warmth rests on; VALIDATION.md tells which
// stations and rows they were fitted on.
func Judgements() []unit.Judgement {
	const (
		rows     = "fitted on nine published rows"
		stations = "fitted on 40 weather stations"
		unfitted = "20 weather stations that were not fitted"
	)
	n, t, g := usualNature, usualNature.turf, usualNature.grass
	return []unit.Judgement{
		{ID: "warmth-roughness", Means: "roughness length of a field of beds", Value: n.roughness, Unit: "m", Source: rows},
		{ID: "warmth-supply", Means: "water that moist open ground gives off between rains, a day", Value: n.supply, Unit: "mm", Source: rows},
		{ID: "warmth-snow", Means: "of the air's cold below 0 °C that snow keeps from the ground", Value: n.snowShare, Source: stations},
		{ID: "warmth-least-resistance", Means: "of a wet skin to evaporation", Value: n.leastResistance, Unit: "s/m", Source: unit.FromMemory},
		{ID: "warmth-most-resistance", Means: "of a dry crust to evaporation", Value: n.mostResistance, Unit: "s/m", Source: unit.FromMemory},
		{ID: "warmth-dryness", Means: "added to dryness by each 6 K of daily range beyond 12 K", Value: n.drynessByRange, Source: stations},
		{ID: "warmth-turf-thatch", Means: "by which thatch insulates where all grows", Value: t.thatch, Unit: "m²·K/W", Source: stations},
		{ID: "warmth-turf-conductivity", Means: "of the ground below turf", Value: t.conductivity, Unit: "W/m/K", Source: stations},
		{ID: "warmth-turf-limit", Means: "evaporative demand a day at which half of the turf grows", Value: t.limit, Unit: "mm", Source: stations},
		{ID: "warmth-turf-sharpness", Means: "how fast growth falls beyond it, for each mm a day", Value: t.sharpness},
		{ID: "warmth-turf-share", Means: "of a moist bed's supply below turf that grows", Value: t.share, Source: stations},
		{ID: "warmth-desert-share", Means: "of a moist bed's supply where nothing grows", Value: t.desertShare, Source: stations},
		{ID: "warmth-ground-holds", Means: "water that roots find in the ground, for the account of rain", Value: holds, Unit: "mm"},
		{ID: "warmth-ground-ready", Means: "of it that is drawn without stress", Value: ready, Source: "FAO Irrigation and Drainage Paper 56, table 22, pasture"},
		{ID: "warmth-grass-warm", Means: "daily mean of the air at which all grows, at weather stations whose rain is known", Value: g.warm, Unit: "°C", Source: stations},
		{ID: "warmth-grass-water", Means: "of the air's demand that the ground must meet for all to grow", Value: g.water, Source: stations},
		{ID: "warmth-grass-lag", Means: "that what stands falls behind what would grow", Value: g.lag, Unit: "days"},
		{ID: "warmth-grass-thatch", Means: "by which thatch insulates where all grows all year at 10 °C", Value: g.thatch, Unit: "m²·K/W", Source: stations},
		{ID: "warmth-grass-decay", Means: "less thatch for 10 K more, in natural logarithms: a Q10 of 2", Value: g.decay, Source: unit.FromMemory},
		{ID: "warmth-grass-shelter", Means: "calmer air in a moist climate, where trees stand about, in natural logarithms", Value: g.shelter, Source: stations},
		{ID: "warmth-grass-open", Means: "roughness length where nothing grows", Value: g.open, Unit: "m", Source: stations},
		{ID: "warmth-grass-grown", Means: "roughness length where all has grown", Value: g.grown, Unit: "m", Source: stations},
		{ID: "warmth-freezable", Means: "of the soil's water that freezes", Value: freezable, Source: unit.FromMemory},
		{ID: "warmth-error-5-cm", Means: "that the model misses a month's mean by, 5 cm deep", Value: ModelError[FiveCentimetres], Unit: "K", Source: unfitted},
		{ID: "warmth-error-10-cm", Means: "the same, 10 cm deep", Value: ModelError[TenCentimetres], Unit: "K", Source: unfitted},
		{ID: "warmth-error-5-cm-no-rain", Means: "that it misses a month's mean by where the rain is not known, 5 cm deep", Value: ErrorWithoutRain[FiveCentimetres], Unit: "K", Source: unfitted},
		{ID: "warmth-error-10-cm-no-rain", Means: "the same, 10 cm deep", Value: ErrorWithoutRain[TenCentimetres], Unit: "K", Source: unfitted},
		{ID: "warmth-spread-5-cm", Means: "of the spread of the air's days that is left in the soil's, 5 cm deep", Value: SpreadShare[FiveCentimetres], Source: stations},
		{ID: "warmth-spread-10-cm", Means: "the same, 10 cm deep", Value: SpreadShare[TenCentimetres], Source: stations},
		{ID: "warmth-spell", Means: "spreads that the mean lies below a floor when the first three days hold it: in the warm edge of a range of dates", Value: Spell, Source: "counted in days that remember 0.81 of the day before, as at those stations"},
		{ID: "warmth-band", Means: "errors that the printed band reaches", Value: bandReach, Unit: "times"},
		{ID: "warmth-probe-place", Means: "of a probe's difference that belongs to the place and lasts", Value: PlaceShare, Source: stations},
		{ID: "warmth-probe-fade", Means: "in which the rest fades", Value: FadeDays, Unit: "days", Source: stations},
		{ID: "warmth-probe-doubt", Means: "of a probe's difference beyond which it is not believed", Value: doubtBeyond, Unit: "K"},
	}
}
