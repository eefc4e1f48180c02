package facts

import (
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Judgements lists the figures that the facts rest on and that no table gives outright.
func Judgements() []unit.Judgement {
	return []unit.Judgement{
		{ID: "planting-warm-floor", Means: "least daily mean under the film, roots deep, that a warm crop's planting day works to: published first planting days fall on it", Value: float64(warmFloor), Unit: "°C"},
		{ID: "planting-cover-floor", Means: "the same under row covers", Value: float64(coverFloor), Unit: "°C"},
		{ID: "planting-mild-after", Means: "after the day past which frost comes in one spring of ten, from which a tender crop's bed need hold no more than the least that lists name", Value: MildAfter, Unit: "days"},
		{ID: "planting-run", Means: "days in a row that the bed must hold its floor", Value: soilRun, Unit: "days", Source: table.GeorgiaFloors.Named()},
		{ID: "planting-warm-up", Means: "from laying to planting where the bed has to warm", Value: WarmUp, Unit: "days", Source: table.MinnesotaWait.Named()},
		{ID: "planting-settling", Means: "from laying to planting where the soil is warm already", Value: Settling, Unit: "days", Source: unit.CommonPractice},
		{ID: "planting-spring-warming", Means: "bare ground that held the floor so long before planting has no warmth to wait for", Value: springWarming, Unit: "days"},
		{ID: "frost-hardened-before", Means: "before the usual last frost hardened plants of hardy and half-hardy crops go out", Value: hardenedBefore, Unit: "days", Source: table.Colorado720.Named()},
		{ID: "frost-hardy-stands", Means: "frost that hardened plants of hardy crops stand", Value: float64(hardyStands), Unit: "°C", Source: unit.FromMemory},
		{ID: "frost-half-hardy-stands", Means: "the same of half-hardy crops", Value: float64(halfHardyStands), Unit: "°C", Source: table.ColdColumn.Named()},
		{ID: "frost-hardiest-stands", Means: "the same of crops whose row says that they are the hardiest", Value: float64(hardiestStands), Unit: "°C", Source: table.ColdColumn.Named()},
		{ID: "frost-emergence", Means: "from sowing until frost can reach the seedling", Value: emergence, Unit: "days"},
		{ID: "frost-rooting", Means: "that hardy plants need in autumn before the frosts that kill them", Value: rooting, Unit: "days"},
		{ID: "season-overwinters", Means: "to harvest of a crop that is set in the fall and picked the next year, at least", Value: overwinters, Unit: "days"},
		{ID: "frost-usual-step", Means: "from a usual spring to a warm or a cool one, where the rare years' frost dates are not known", Value: usualStep, Unit: "days"},
		{ID: "season-picking", Means: "after the latest published harvest day", Value: pickingDays, Unit: "days", Source: unit.CommonPractice},
		{ID: "season-shortest", Means: "that the stages of a crop are never pressed into less than", Value: shortestSeason, Unit: "days"},
		{ID: "season-heat-outlook", Means: "from planting on, at most, for which hot days are counted", Value: heatOutlook, Unit: "days"},
		{ID: "season-first-month", Means: "taken for the first month: its mean soil warmth and the air's turn", Value: firstMonth, Unit: "days"},
		{ID: "heat-hot-day", Means: "air of a day on which dark film may burn stems", Value: float64(HotDay), Unit: "°C", Source: table.HotFilm.Named()},
		{ID: "heat-stem-burn", Means: "film temperature from which stems that touch it die", Value: float64(StemBurn), Unit: "°C", Source: table.HotFilm.Named()},
		{ID: "heat-burn-ramp", Means: "the computed surface above that for a hot day to count whole", Value: burnRamp, Unit: "K"},
		{ID: "heat-burn-margin", Means: "below that from which the surface is said to burn", Value: float64(burnMargin), Unit: "K"},
		{ID: "heat-soft-days", Means: "after planting for which a stem is soft enough to be girdled", Value: softDays, Unit: "days"},
		{ID: "heat-hot-window", Means: "after planting for which the film's hottest hour is looked for", Value: hotWindow, Unit: "days"},
		{ID: "heat-hot-hours", Means: "part of a day lost where the root zone passes its ceiling only in the afternoon", Value: hotHours},
		{ID: "heat-ceiling-days", Means: "after planting for which a root zone that is too warm counts", Value: ceilingDays, Unit: "days"},
		{ID: "growth-longest-wait", Means: "that bare ground is taken to keep a crop waiting, at most", Value: longestWait, Unit: "days"},
		{ID: "growth-least-span", Means: "from the crop's floor to its best root warmth, at least", Value: leastSpan, Unit: "K"},
		{ID: "leaves-shelter", Means: "part of the film's effect that closed leaves take away", Value: leafShelter},
		{ID: "leaves-cooling", Means: "by which closed leaves cool the bed", Value: leafCooling, Unit: "K"},
		{ID: "leaves-calm", Means: "part of a day's swing that closed leaves take away", Value: leafCalm},
		{ID: "leaves-cover", Means: "of the bed that closed leaves cover", Value: fullCanopy},
		{ID: "leaves-close", Means: "thirds of the days to harvest after which leaves have closed", Value: closesThirds},
		{ID: "ground-bed", Means: "height of bed that soil warmth is worked out for, before the height is answered", Value: float64(groundBed), Unit: "m"},
		{ID: "probe-hour", Means: "hour of a probe reading that names none", Value: usualHour, Unit: "h"},
		{ID: "probe-depth", Means: "depth of a probe reading that names none", Value: float64(usualDepth), Unit: "m"},
		{ID: "tape-design-spread", Means: "of the flow lost along a line, that is designed for", Value: float64(DesignSpread), Unit: "%", Source: unit.CommonPractice},
		{ID: "tape-worst-spread", Means: "of the flow lost along a line, beyond which it is seen in the crop", Value: float64(WorstSpread), Unit: "%", Source: unit.CommonPractice},
		{ID: "tape-rows-per-line", Means: "rows of plants that one line of tape may serve", Value: rowsPerLine},
		{ID: "tape-most-lines", Means: "lines of tape on a bed, at most", Value: mostLines},
		{ID: "water-driest", Means: "by which the dew point of a dry year lies below the night's minimum", Value: float64(driest), Unit: "K", Source: table.FAO56.Named()},
		{ID: "water-least-usual", Means: "of usual reference evapotranspiration a day that a day of known warmth is set against, at least", Value: float64(leastUsual), Unit: "mm"},
		{ID: "water-most-demand", Means: "of reference evapotranspiration a day, at most", Value: mostDemand, Unit: "mm"},
		{ID: "clogging-open-water", Means: "risk that pond or stream water brings", Value: openWaterClogs},
		{ID: "clogging-iron-from", Means: "iron from which a risk is counted", Value: ironFrom, Unit: "mg/L", Source: table.ClogFlorida.Named()},
		{ID: "clogging-iron-whole", Means: "iron that would count as the whole risk", Value: ironWhole, Unit: "mg/L"},
		{ID: "clogging-iron-most", Means: "risk that iron brings, at most", Value: ironMost},
		{ID: "clogging-lime", Means: "risk that hard water of a high pH brings", Value: limeClogs},
	}
}
