package weather

import "filmfurrow/rules/unit"

// Judgements lists the estimates of how weather departs from a smooth year.
func Judgements() []unit.Judgement {
	const fitted = "fitted on 30 stations of the US Climate Reference Network, 2020, and NOAA's normals of 1981–2010"
	return []unit.Judgement{
		{ID: "weather-day-to-day", Means: "correlation of a day's departure from the smooth year with the day's before", Value: dayToDay, Source: "30 stations of the US Climate Reference Network, 2020"},
		{ID: "weather-lapse", Means: "by which air cools for each meter of height", Value: LapseRate, Unit: "K/m", Source: "standard atmosphere, from memory"},
		{ID: "weather-hard-freeze", Means: "frost that harms hardy leaves", Value: float64(HardFreeze), Unit: "°C", Source: unit.FromMemory},
		{ID: "weather-least-spread", Means: "standard deviation of a day's minimum or maximum, at least", Value: leastSpread, Unit: "K"},
		{ID: "weather-minimum-base", Means: "standard deviation of minima: where the year has no range", Value: spreadOfMinimum.base, Unit: "K", Source: fitted},
		{ID: "weather-minimum-range", Means: "the same, for each K of the year's range", Value: spreadOfMinimum.byRange, Source: fitted},
		{ID: "weather-minimum-cold", Means: "the same, from the warmest day to the coldest", Value: spreadOfMinimum.byCold, Unit: "K", Source: fitted},
		{ID: "weather-maximum-base", Means: "standard deviation of maxima: where the year has no range", Value: spreadOfMaximum.base, Unit: "K", Source: fitted},
		{ID: "weather-maximum-range", Means: "the same, for each K of the year's range", Value: spreadOfMaximum.byRange, Source: fitted},
		{ID: "weather-maximum-cold", Means: "the same, from the warmest day to the coldest", Value: spreadOfMaximum.byCold, Unit: "K", Source: fitted},
	}
}
