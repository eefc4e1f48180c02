package water

import (
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// Values that stand in for what is not given. Each one used is listed in
// [Plan.Assumed].
const (
	usualTapePressure unit.Kilopascals = 10 * unit.KilopascalsPerPSI // supplier guidance: 8–15 psi at the header holds about 10 in the tape
	usualSpread       unit.Percent     = 10
	usualMakersCV                      = 0.05 // from memory; line sources below 0.10 count as good (ASAE EP405)
	usualExponent                      = 0.5
	usualUsableShare  unit.Percent     = 80                         // 75–85 % in practice (common practice, no source)
	usualHours        unit.Hours       = 18                         // designs keep to 18–20 h at the peak (from memory)
	usualFilterLoss   unit.Kilopascals = 5 * unit.KilopascalsPerPSI // from memory
	usualInjectorLoss unit.Kilopascals = 5 * unit.KilopascalsPerPSI // from memory: a water-driven injector; a dosing pump takes none
	usualHeaderLoss   unit.Kilopascals = 5 * unit.KilopascalsPerPSI // allowed in header and main where the source's pressure is not known
	leastTapePressure unit.Kilopascals = 4 * unit.KilopascalsPerPSI
	mostTapePressure  unit.Kilopascals = 15 * unit.KilopascalsPerPSI
	// A tank pushes little: its screen is chosen large enough to take a tenth of
	// that (our reasoning, no source).
	tankFilterShare                      = 0.1
	leastTankFilterLoss unit.Kilopascals = 2
	longestSought       unit.Metres      = 1000
	// A header may lose what the tape leaves of the source's pressure and evenness, and
	// at least these shares of them (our judgement).
	headerShare                      = 0.2
	headerSpread                     = 0.25
	leastHeaderLoss unit.Kilopascals = 0.5
)

// From where a warning is due.
const (
	thinWallPressure unit.Kilopascals   = 12 * unit.KilopascalsPerPSI // from memory: 8-mil tape stands 10–15 psi
	mostSuction      unit.Metres        = 7                           // from memory: pumps draw up to about 7 m at sea level
	riverFlow        unit.LitresPerHour = 5e5                         // check the unit
	narrowStrip      unit.Percent       = 60                          // of the bed top wetted: common practice
	muchYieldLeft    unit.Percent       = 75                          // below it salt is a care of the plan
	weakChlorinePH                      = 7.5                         // UC ANR: at pH 8 a quarter of the chlorine works
)

// Assumption is a usual value that stood in for one not given.
type Assumption struct {
	Field  string
	Value  unit.Quantity
	Source string
}

// filled is the input with every usual value in place.
type filled struct {
	Input
	tapeBore             unit.Metres
	exponent, makersCV   float64
	pressure, filterLoss unit.Kilopascals
	injectorLoss         unit.Kilopascals
	spread, usable       unit.Percent
	efficiency           unit.Percent
	hours                unit.Hours
	filmCut              Range
	bedFlow              unit.LitresPerHourPer100Metres // label flow of all lines of a bed
	ground               demand.Ground
}

func fill(in Input) filled {
	f := filled{
		Input:        in,
		tapeBore:     in.TapeBore.Or(in.Sold.CommonBore),
		exponent:     in.Exponent.Or(usualExponent),
		makersCV:     in.MakersCV.Or(usualMakersCV),
		pressure:     in.TapePressure.Or(usualTapePressure),
		filterLoss:   in.FilterLoss.Or(usualFilterLoss),
		injectorLoss: in.InjectorLoss.Or(0),
		spread:       in.FlowSpread.Or(usualSpread),
		usable:       in.UsableShare.Or(usualUsableShare),
		efficiency:   in.Efficiency.Or(demand.UsualEfficiency),
		hours:        in.Hours.Or(usualHours),
		filmCut:      in.FilmCut.Or(Range{demand.UsualFilmCut.Low, demand.UsualFilmCut.High}),
		bedFlow:      in.TapeFlow * unit.LitresPerHourPer100Metres(in.Laterals),
	}
	if f.drivesInjector() {
		f.injectorLoss = in.InjectorLoss.Or(usualInjectorLoss)
	}
	if loss, own := f.tankFilter(); own {
		f.filterLoss = in.FilterLoss.Or(loss)
	}
	full := in.Canopy.Or(in.BedCentres.Value)
	f.ground = demand.Ground{BedTop: in.BedTop.Value, Full: max(full, in.BedTop.Value)}
	return f
}

// push is the pressure that the source has at the height of the beds, if
// known: its gauge less the rise, or the height of a tank.
func (f *filled) push() (unit.Kilopascals, bool) {
	switch {
	case f.Pressure.Given:
		return f.Pressure.Value - drip.PressureOf(f.Rise.Value), true
	case f.Supply == waterquality.Tank && f.Rise.Given:
		return drip.PressureOf(-f.Rise.Value), true
	}
	return 0, false
}

// tankFilter is the usual loss of a tank's screen, where its push is known.
func (f *filled) tankFilter() (loss unit.Kilopascals, own bool) {
	push, known := f.push()
	return min(max(push*tankFilterShare, leastTankFilterLoss), usualFilterLoss), known && f.Supply == waterquality.Tank
}

// drivesInjector tells whether the water drives an injector; height alone drives none.
func (f *filled) drivesInjector() bool {
	return f.Injector.Given && (f.Supply != waterquality.Tank || f.Pressure.Given)
}

// assumed lists the usual values that stand in for what was not given.
func (f *filled) assumed() (a []Assumption) {
	in := &f.Input
	driven := f.drivesInjector()
	note := func(given bool, field string, value any, source string) {
		if !given {
			a = append(a, Assumption{field, unit.Of(value), source})
		}
	}
	note(in.TapeBore.Given, "tape_bore_m", unit.Bore(f.tapeBore), "the commonest tape (common practice, no source)")
	note(in.Exponent.Given, "exponent", f.exponent, "turbulent outlets; tapes lie between 0.4 and 0.6 (from memory)")
	note(in.MakersCV.Given, "makers_cv", f.makersCV, "from memory; below 0.10 is good for tape (ASAE EP405)")
	note(in.TapePressure.Given, "tape_pressure_kpa", f.pressure, "an irrigation supplier's guidance: 8–15 psi at the header holds about 10 psi in the tape")
	note(in.FlowSpread.Given, "flow_spread_percent", f.spread, "common practice, no source")
	note(in.UsableShare.Given, "usable_percent", f.usable, "75–85 % of a tested flow (common practice, no source)")
	note(in.Efficiency.Given, "efficiency_percent", f.efficiency, "Colorado State Extension 5.623: about 90 %, 85–95 %")
	note(in.Hours.Given, "hours_per_day", f.hours, "from memory: designs keep to 18–20 h at the peak")
	filter := "from memory"
	if _, own := f.tankFilter(); own {
		filter = "a tenth of what the tank pushes, 2 kPa at least (our reasoning, no source)"
	}
	note(in.FilterLoss.Given, "filter_loss_kpa", f.filterLoss, filter)
	note(in.InjectorLoss.Given || !driven, "injector_loss_kpa", f.injectorLoss, "from memory: an injector that the water drives; a dosing pump takes none")
	note(in.FilmCut.Given, "film_cut_percent", "10–30 %", "FAO-56 chapter 10, on average (from memory)")
	note(in.Canopy.Given || !in.BedCentres.Given, "canopy_m", f.ground.Full, "full-grown plants draw on the ground between the beds too (our reasoning, no source)")
	if in.Flow.Given {
		note(in.Rise.Given, "rise_m", unit.Metres(0), "taken as level with the source")
		note(in.Header.Given, "header_m", unit.Metres(0), "taken as beside the first bed: pipe to the source is not counted")
	}
	if in.Soil.Given {
		note(in.OrganicMatter.Given, "organic_percent", unit.Percent(2.5), "Saxton and Rawls 2006, class table")
	}
	return a
}
