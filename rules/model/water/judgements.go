package water

import (
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// Judgements lists the figures that the water plan rests on and that no table gives
// outright, with those of the models below it.
func Judgements() []unit.Judgement {
	return []unit.Judgement{
		{ID: "water-tape-pressure", Means: "pressure in the tape where none is given: 8 to 15 psi at the header hold about 10", Value: float64(usualTapePressure), Unit: "kPa", Source: "supplier guidance"},
		{ID: "water-least-pressure", Means: "least pressure that a plan works tape at", Value: float64(leastTapePressure), Unit: "kPa"},
		{ID: "water-most-pressure", Means: "pressure beyond which tape bursts", Value: float64(mostTapePressure), Unit: "kPa", Source: unit.FromMemory},
		{ID: "water-workable-pressure", Means: "pressure below which even flat tape hardly gives", Value: float64(workablePressure), Unit: "kPa"},
		{ID: "water-thin-wall-pressure", Means: "pressure from which thin tape may burst", Value: float64(thinWallPressure), Unit: "kPa", Source: unit.FromMemory},
		{ID: "water-spread", Means: "of the flow lost along a line, where no limit is given", Value: float64(usualSpread), Unit: "%", Source: unit.CommonPractice},
		{ID: "water-makers-variation", Means: "maker's variation of outlets, where none is given", Value: usualMakersCV, Source: unit.FromMemory},
		{ID: "water-exponent", Means: "exponent of an outlet, where none is given", Value: usualExponent},
		{ID: "water-usable-share", Means: "of the tested flow that is planned on", Value: float64(usualUsableShare), Unit: "%", Source: unit.CommonPractice},
		{ID: "water-hours", Means: "hours a day for watering, where none are given", Value: float64(usualHours), Unit: "h", Source: unit.FromMemory},
		{ID: "water-filter-loss", Means: "pressure that a filter takes", Value: float64(usualFilterLoss), Unit: "kPa", Source: unit.FromMemory},
		{ID: "water-injector-loss", Means: "pressure that a water-driven injector takes", Value: float64(usualInjectorLoss), Unit: "kPa", Source: unit.FromMemory},
		{ID: "water-header-loss", Means: "pressure allowed in header and main where the source's is not known", Value: float64(usualHeaderLoss), Unit: "kPa"},
		{ID: "water-header-share", Means: "of the pressure to spare that a header may take, at least", Value: headerShare},
		{ID: "water-header-least-loss", Means: "that a header may take in any case", Value: float64(leastHeaderLoss), Unit: "kPa"},
		{ID: "water-header-spread", Means: "of the spread allowed that a header may take, at least", Value: headerSpread},
		{ID: "water-header-speed", Means: "speed in a header, at most", Value: float64(drip.MaxVelocity), Unit: "m/s", Source: "irrigation formulas sheet: 5 ft/s"},
		{ID: "water-tank-filter-share", Means: "of a tank's push that its screen may take", Value: tankFilterShare},
		{ID: "water-tank-filter-loss", Means: "that such a screen takes, at least", Value: float64(leastTankFilterLoss), Unit: "kPa"},
		{ID: "water-longest-sought", Means: "length of line up to which the longest is looked for", Value: float64(longestSought), Unit: "m"},
		{ID: "water-poor-uniformity", Means: "evenness of fields as they are measured, for the low end of a plan", Value: float64(poorUniformity), Unit: "%", Source: "CIGR agricultural engineering handbook: 65–80 %"},
		{ID: "water-pump-efficiency", Means: "of a pump that is not known", Value: drip.UsualPumpEfficiency, Source: "irrigation formulas sheet; Utah State University"},
		{ID: "water-suction", Means: "that a pump draws up, at most", Value: float64(mostSuction), Unit: "m", Source: unit.FromMemory},
		{ID: "water-river", Means: "flow beyond which the unit is asked for", Value: float64(riverFlow), Unit: "L/h"},
		{ID: "water-fills-per-run", Means: "fillings of a line below which a run is short", Value: leastFills, Source: unit.CommonPractice},
		{ID: "water-least-run", Means: "that a run lasts at the least", Value: float64(leastMinutes), Unit: "min", Source: unit.CommonPractice},
		{ID: "water-narrow-strip", Means: "of the bed top wetted, below which the strip is narrow", Value: float64(narrowStrip), Unit: "%", Source: unit.CommonPractice},
		{ID: "water-much-yield-left", Means: "of the yield, below which salt is a care of the plan", Value: float64(muchYieldLeft), Unit: "%"},
		{ID: "water-most-leaching", Means: "of the water to wash salt down, beyond which it does not suit the crop", Value: float64(waterquality.MostLeaching), Unit: "%"},
		{ID: "water-soil-from-water", Means: "salt of the soil paste beside that of the water", Value: waterquality.SoilFromWater, Unit: "times", Source: "FAO Irrigation and Drainage Paper 29; PLoS ONE 2018, table 3"},
		{ID: "water-lime-hardness", Means: "hardness above which lime may come out", Value: float64(waterquality.LimeHardness), Unit: "mg/L", Source: "UC ANR, micro-irrigation maintenance"},
		{ID: "water-lime-ph", Means: "pH above which it may", Value: waterquality.LimePH, Source: "UC ANR, micro-irrigation maintenance"},
		{ID: "water-weak-chlorine-ph", Means: "pH above which most chlorine does not work", Value: weakChlorinePH, Source: "UC ANR, micro-irrigation maintenance"},
		{ID: "water-low-flow-outlet", Means: "flow of an outlet below which passages are small", Value: float64(waterquality.LowFlowOutlet), Unit: "L/h"},
		{ID: "water-bed-roots", Means: "depth that roots use in a film bed under tape", Value: float64(soilwater.BedRootDepth), Unit: "m", Source: unit.CommonPractice},
		{ID: "water-overlap", Means: "of a wetted width within which outlets join", Value: soilwater.OverlapShare, Source: unit.FromMemory},
		{ID: "water-organic", Means: "organic matter of a soil that names none", Value: float64(soilwater.UsualOrganicMatter), Unit: "%", Source: "Saxton and Rawls 2006, class table"},
		{ID: "water-most-days", Means: "days between runs, at most", Value: soilwater.MostDays, Unit: "days", Source: "HortTechnology 6(3):155, 1996"},
		{ID: "water-efficiency", Means: "of the water that stays with the roots", Value: float64(demand.UsualEfficiency), Unit: "%", Source: "Colorado State Extension 5.623"},
		{ID: "water-film-initial", Means: "crop coefficient under film until leaves spread", Value: demand.FilmInitial, Source: "FAO Irrigation and Drainage Paper 56, chapter 10"},
		{ID: "water-film-spread", Means: "the same, when a tenth of the ground is under leaves", Value: demand.FilmSpread, Source: "Agricultural Water Management 81:381–399 (2006)"},
		{ID: "water-film-cut-low", Means: "by which film lowers the coefficient where a crop has no range, at least", Value: float64(demand.UsualFilmCut.Low), Unit: "%", Source: unit.FromMemory},
		{ID: "water-film-cut-high", Means: "the same, at most", Value: float64(demand.UsualFilmCut.High), Unit: "%", Source: unit.FromMemory},
		{ID: "feed-rinse", Means: "times that the water of pipe and tape is changed after feeding", Value: feed.RinseTurns, Unit: "times"},
		{ID: "feed-chlorine-for-iron", Means: "chlorine for one part of iron", Value: feed.ChlorineForIron, Unit: "parts", Source: "University of Florida, FAWN maintenance page"},
		{ID: "remedy-other-tape", Means: "effort of buying other tape: none is bought yet", Value: otherTapeEffort},
		{ID: "remedy-larger-bore", Means: "effort of buying a larger bore", Value: largerBoreEffort},
		{ID: "remedy-pressure", Means: "effort of a turn of the regulator", Value: pressureEffort},
		{ID: "remedy-booster", Means: "effort of a booster pump", Value: boosterEffort},
		{ID: "remedy-half-beds", Means: "effort of a header across the middle of the beds", Value: halfBedsEffort},
		{ID: "remedy-tank", Means: "effort of a tank with a pump", Value: storageEffort},
		{ID: "remedy-each-cut", Means: "effort of each cut of a bed", Value: eachCutEffort},
		{ID: "remedy-other-end", Means: "effort of feeding beds from their other end", Value: otherEndEffort},
		{ID: "remedy-contour", Means: "effort of laying beds along the contour", Value: contourEffort},
		{ID: "remedy-one-bed", Means: "effort of running one bed at a time", Value: oneBedEffort},
		{ID: "remedy-little-more", Means: "flow beside what the beds take, so that rounding cannot miss it", Value: aLittleMore, Unit: "times"},
		{ID: "remedy-same-tape", Means: "difference of flow and spacing below which a tape is the same", Value: sameTape},
		{ID: "remedy-kept-back", Means: "of the flow planned on, where beds are shortened to it", Value: keptBack},
		{ID: "remedy-most-pieces", Means: "pieces that a bed is cut into, at most", Value: mostPieces},
		{ID: "remedy-few-outlets", Means: "outlets of a line, at least", Value: fewOutlets},
		{ID: "remedy-most-beds", Means: "beds after cutting, at most", Value: mostBeds},
		{ID: "remedy-gentle-fall", Means: "fall along which beds still count as level", Value: gentleFall, Unit: "%", Source: unit.CommonPractice},
		{ID: "remedy-header-more", Means: "height of a tank to add, beside what is missing: the header loses more at full pressure", Value: headerMore, Unit: "times"},
		{ID: "remedy-one-bed-more", Means: "of a bed's flow in hand, so that one bed runs and not two", Value: oneBedMore, Unit: "times"},
	}
}
