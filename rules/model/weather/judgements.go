package weather

import "filmfurrow/rules/unit"

// Judgements lists the estimates of how weather departs from a smooth year.
func Judgements() []unit.Judgement {
	const fitted = "fitted on 30 stations of the US Climate Reference Network, 2020, and NOAA's normals of 1981–2010"
	const abroad = "fitted on the days of frost of every other station outside the United States that counted them, normals of 1991–2020"
	return []unit.Judgement{
		{ID: "weather-nights-africa", Means: "how many times as wide cold nights scatter in Africa as in the United States", Value: coldNights[1], Source: abroad},
		{ID: "weather-nights-asia", Means: "the same, in Asia", Value: coldNights[2], Source: abroad},
		{ID: "weather-nights-south-america", Means: "the same, in South America", Value: coldNights[3], Source: abroad},
		{ID: "weather-nights-north-america", Means: "the same, in the rest of North America", Value: coldNights[4], Source: abroad},
		{ID: "weather-nights-pacific", Means: "the same, in the South-West Pacific", Value: coldNights[5], Source: abroad},
		{ID: "weather-nights-europe", Means: "the same, in Europe", Value: coldNights[6], Source: abroad},
		{ID: "weather-day-to-day", Means: "correlation of a day's departure from the smooth year with the day's before", Value: dayToDay, Source: "30 stations of the US Climate Reference Network, 2020"},
		{ID: "weather-lapse", Means: "by which air cools for each meter of height", Value: LapseRate, Unit: "K/m", Source: "standard atmosphere, from memory"},
		{ID: "weather-hard-freeze", Means: "frost that harms hardy leaves", Value: float64(HardFreeze), Unit: "°C", Source: unit.FromMemory},
		{ID: "weather-least-spread", Means: "standard deviation of a day's minimum or maximum, at least", Value: leastSpread, Unit: "K"},
		{ID: "weather-minimum-base", Means: "standard deviation of minima: where the year has no range", Value: spreadOfMinimum.base, Unit: "K", Source: fitted},
		{ID: "weather-minimum-range", Means: "the same, for each K of the year's range", Value: spreadOfMinimum.byRange, Source: fitted},
		{ID: "weather-minimum-cold", Means: "the same, from the warmest day to the coldest", Value: spreadOfMinimum.byCold, Unit: "K", Source: fitted},
		{ID: "weather-nights-mild", Means: "usual coldest night from which cold nights scatter wholly as in their region; where it freezes, as in the United States", Value: mildNight, Unit: "°C"},
		{ID: "weather-maximum-base", Means: "standard deviation of maxima: where the year has no range", Value: spreadOfMaximum.base, Unit: "K", Source: fitted},
		{ID: "weather-maximum-range", Means: "the same, for each K of the year's range", Value: spreadOfMaximum.byRange, Source: fitted},
		{ID: "weather-maximum-cold", Means: "the same, from the warmest day to the coldest", Value: spreadOfMaximum.byCold, Unit: "K", Source: fitted},
	}
}
