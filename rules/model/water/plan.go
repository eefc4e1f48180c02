package water

import (
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/unit"
)

// LitresPer100Metres is a volume of water for 100 m of bed.
type LitresPer100Metres = unit.LitresPer100Metres

// Verdict says whether the plan works.
type Verdict uint8

// The verdicts.
const (
	Undecided   Verdict = iota // too little is known: see Missing
	Fits                       // flow, pressure and hours are enough
	FitsTightly                // enough, with warnings to read first
	DoesNotFit                 // see Remedies
)

// String names the verdict.
func (v Verdict) String() string {
	return [...]string{"undecided", "fits", "fits tightly", "does not fit"}[v]
}

// Plan is a water plan as plain data. A nil part could not be worked out:
// Missing says why.
type Plan struct {
	Verdict  Verdict
	Because  []unit.Phrase // the reasons of the verdict, the first one first
	Missing  []Missing
	Assumed  []Assumption
	Warnings []Warning // worst first

	Demand   *Demand
	Soil     *Soil
	Tape     Tape
	Supply   *Supply
	Schedule *Schedule
	Remedies []Remedy // three, best first, when the plan does not fit
	Filter   waterquality.Filter
	Quality  Quality
	Feeding  *Feeding
	Chlorine *Chlorine
	Checks   []Check
	Steps    []Step // how it was worked out
	Cautions []feed.Caution
}

// Missing is a field that was not given and what it would settle.
type Missing struct {
	Field   string
	Settles string
}

// Severity ranks a warning.
type Severity uint8

// The severities, from worst.
const (
	Stop Severity = iota
	Care
	Note
)

// String is the word that a reader sees before the warning.
func (s Severity) String() string { return [...]string{"Stop", "Take care", "Note"}[s] }

// Warning is something to read before acting on the plan.
type Warning struct {
	ID       string
	Severity Severity
	Says     unit.Phrase
	Source   string
}

// Demand is the crop's need over the season.
type Demand struct {
	Season   unit.Days
	Stages   [4]unit.Days
	Months   []Month
	First    First
	Peak     Peak
	Leaching unit.Percent       // share of the water that must pass the roots
	Total    LitresPer100Metres // gross, over the season
	InField  unit.Millimetres   // gross, as a depth on the whole field
}

// Month is the need of one month of the season; figures are means a day.
type Month struct {
	Year, Month     int
	Days            unit.Days
	Reference       unit.Millimetres
	Coefficient     float64 // under film
	Use             unit.Millimetres
	UseLow, UseHigh unit.Millimetres
	Ground          unit.Metres // width drawn on
	Net, Gross      LitresPer100Metres
	BedDepth        unit.Millimetres // gross, if spread over the bed top
	AllBeds         unit.Optional[unit.Litres]
	GrossCool       unit.Optional[LitresPer100Metres]
	GrossDry        unit.Optional[LitresPer100Metres]
	Run             unit.Minutes // a day and zone, at the tape's flow
	Runs            int          // a day
	EachRun         unit.Minutes
	Interval        unit.Days                 // days that may pass between runs
	Together        unit.Minutes              // one run for all days of the interval
	HoursADay       unit.Optional[unit.Hours] // all zones
	HoursAWeek      unit.Optional[unit.Hours] // all zones
}

// First is the planting day, when plants are small.
type First struct {
	Use        unit.Millimetres
	Net, Gross LitresPer100Metres
	Run        unit.Minutes // of a zone, a day
	// Every and Together are the same water in runs that are long enough to water a
	// line evenly: one run for so many days.
	Every    unit.Days
	Together unit.Minutes
	// The most that young plants may take: see [demand.Day].
	UseMost      unit.Millimetres
	MostEvery    unit.Days
	MostTogether unit.Minutes
}

// Peak is the hungriest day, which sizes the system.
type Peak struct {
	On         unit.Date
	Use        unit.Millimetres
	Net, Gross LitresPer100Metres
	OnBedOnly  LitresPer100Metres // gross, if the depth counted on the bed top only
	GrossPoor  LitresPer100Metres // gross, if the field is as uneven as old systems: 70 %
	GrossDry   unit.Optional[LitresPer100Metres]
	Run        unit.Minutes
	Runs       int
	EachRun    unit.Minutes
}

// Soil is what the bed can hold.
type Soil struct {
	Water                   soilwater.Water
	GuideLow, GuideHigh     float64 // available water of the field guide, share; 0 is not given
	Depth                   unit.Metres
	Depletion               float64
	Strip                   soilwater.Strip
	Store                   LitresPer100Metres
	Longest                 unit.Minutes // single run
	LongestLow, LongestHigh unit.Minutes // with the narrow and wide wetted width and both ways to available water
}

// Tape is a bed's tape as it will run.
type Tape struct {
	Emitter          drip.Emitter
	Pressure         unit.Kilopascals               // at the inlet
	Lowered          bool                           // below what was asked for, because the source gives no more
	LabelFlow        unit.LitresPerHourPer100Metres // all lines of a bed at 8 psi
	Flow             unit.LitresPerHourPer100Metres // all lines as solved; the label's where the bed's length is unknown
	BedFlow          unit.LitresPerHour             // 0 where the bed's length is unknown
	Profile          *drip.Profile
	Uniformity       unit.Percent // emission uniformity with the maker's variation
	Spread           unit.Percent
	FromMiddle       unit.Percent // spread if fed from the middle of the bed
	Longest          drip.Run     // within the allowed spread
	LongestLargeBore drip.Run
	Fill             unit.Litres // in one bed
	FillMinutes      unit.Minutes
}

// Supply is header, main and pump.
type Supply struct {
	Usable      unit.LitresPerHour
	Trials      []drip.HeaderTrial // bores tried; the last one is chosen if it fits
	Bore        drip.Bore
	BoreFits    bool
	Velocity    unit.MetresPerSecond
	HeaderLoss  unit.Kilopascals
	Head        drip.Head
	Total       unit.Metres
	SourceGives unit.Optional[unit.Kilopascals] // pressure left at the tape's inlet
	Needs       unit.Kilopascals                // at the source's outlet
	PumpNeeded  bool
	HeadKnown   bool // false where the lift is not given: Total then lacks it, and power is not told
	WaterPower  unit.Kilowatts
	ShaftPower  unit.Kilowatts
	Gravity     *drip.GravityFeed
	Tank        *Tank

	zones []Zone // laid out; the schedule takes them over
}

// Tank is what a tank's refill allows.
type Tank struct {
	RunsDry    bool
	UntilEmpty unit.Minutes // at one zone's flow, from full
	Refill     unit.Minutes // from empty
	ADay       unit.Litres  // most that can be drawn in a day
	Enough     bool         // for the peak day
}

// Zone is a group of whole beds that run together.
type Zone struct {
	Number            int
	FirstBed, LastBed int // from 1
	Beds              int
	Flow              unit.LitresPerHour
	FromSource        unit.Metres                // pipe to its first bed
	Loss              unit.Kilopascals           // in that pipe and along its beds
	LitresADay        unit.Optional[unit.Litres] // on the hungriest day
}

// Schedule is the day of the peak.
type Schedule struct {
	Zones      []Zone
	BedsAtOnce int
	RunADay    unit.Optional[unit.Minutes] // each zone
	Runs       int
	EachRun    unit.Minutes
	HoursADay  unit.Optional[unit.Hours] // all zones
	HoursAWeek unit.Optional[unit.Hours]
	HoursGiven unit.Hours
	LitresADay unit.Optional[unit.Litres]
}

// Remedy is one computed change that makes the plan fit, or comes nearest.
type Remedy struct {
	ID        string
	Change    unit.Phrase
	Result    unit.Phrase
	Fits      bool
	Zones     int
	HoursADay unit.Hours
	Effort    float64 // share by which something changes: ranks the ways
}

// Quality is the water test, read.
type Quality struct {
	Clogging       []Finding
	Restriction    waterquality.Hazard // by salt, any crop
	Infiltration   waterquality.Hazard
	Yield          unit.Optional[unit.Percent]
	MostSalt       unit.Optional[unit.DecisiemensPerMetre] // of water, without loss
	HardnessWord   string
	NitrogenCredit unit.Optional[float64] // kg/ha over the season, from nitrate in the water
}

// Finding is one line of the water test.
type Finding struct {
	Clogger waterquality.Clogger
	Value   float64
	Hazard  waterquality.Hazard
}

// Feeding is one day's feeding.
type Feeding struct {
	Nutrient   unit.Kilograms // all beds
	Product    unit.Kilograms
	Stock      unit.Litres
	ZoneStock  unit.Litres  // largest zone
	ZoneInject unit.Minutes // largest zone
	Rinse      unit.Minutes // clean water after it
	Fits       bool         // injecting and rinsing fit into one run
}

// Chlorine is the injection for the largest zone. The label and the code decide
// whether it may be done at all: see the cautions.
type Chlorine struct {
	Inject  unit.LitresPerHour
	Wanted  unit.MilligramsPerLitre
	ForIron unit.MilligramsPerLitre // what iron alone would use up; 0 where iron is not given
}

// Check is a rule of the trade or a published figure beside ours.
type Check struct {
	ID        string
	Says      unit.Phrase
	Ours      unit.Quantity
	Low, High unit.Quantity
	Agrees    bool
	Source    string
}

// Step is one sum of the plan, to follow by hand.
type Step struct {
	ID      string
	Title   string
	Formula string // in words
	Inputs  []Named
	Result  Named
	Source  string
}

// Named is a figure with its name.
type Named struct {
	Name     string
	Quantity unit.Quantity
}
