package unit

// Kind says what a [Quantity] measures, and so how it is printed and read.
type Kind uint8

// The kinds of quantity that the page can show.
const (
	KindNumber        Kind = iota // a bare number
	KindCount                     // a whole number of things
	KindTemperature               // °C level
	KindWarming                   // °C difference
	KindShort                     // m, shown in cm or in
	KindLong                      // m, shown in m or ft
	KindThickness                 // µm, shown in µm or mil
	KindFlow                      // L/h, shown in L/h or gpm
	KindTapeFlow                  // L/h per 100 m, shown so or in gpm per 100 ft
	KindPressure                  // kPa or psi
	KindPower                     // kW or hp
	KindMass                      // kg or lb
	KindDepth                     // mm of water, or in
	KindVolume                    // L or gal
	KindSalt                      // dS/m in both
	KindShare                     // percent
	KindDays                      // whole days
	KindHours                     // h
	KindMinutes                   // min
	KindSpeed                     // m/s, shown in km/h or mph
	KindDensity                   // plants per m² or per 100 ft²
	KindConcentration             // mg/L in both
	KindRadiation                 // MJ/m² a day in both
	KindHead                      // m of water lift, shown in m or ft
	KindAngle                     // degrees of latitude or longitude
	KindDate                      // days since 1 January 1970
	KindYearDay                   // the same, said of every year
	KindWord                      // a word or phrase, as it stands
	KindPer100                    // L for 100 m of bed, or gal for 100 ft
	KindPumpPower                 // kW or hp, to the hundredth
	KindWaterSpeed                // m/s or ft/s
	KindSmallFlow                 // L/h or gal/h, to the hundredth
	KindFineShare                 // percent, to the tenth
	KindFineDepth                 // mm to the hundredth, or in to the thousandth
	KindFineMass                  // kg or lb, to the thousandth
	KindFineVolume                // L or gal, to the hundredth
	KindBore                      // m, shown in mm or in to the thousandth
	KindRoll                      // m, shown in m or in: the width of film as it is sold
	KindRate                      // kg/ha or lb/acre
	KindStrength                  // kg/L or lb/gal
	KindPriceLong                 // money for 1 m, or for 1 ft
	KindPriceMass                 // money for 1 t, or for 1 US ton
	KindBedRate                   // m of bed on 1 ha, or ft on 1 acre
	KindPlantRate                 // plants on 1 ha, or on 1 acre
	KindArea                      // m², shown in ha or acres
	KindFabric                    // g/m² of cover, or oz for a square yard
	KindSpread                    // kg on 1 m² of bed, shown in g or in lb for 100 ft²
	KindPer100Mass                // kg for 100 m of bed, or lb for 100 ft
	KindDistance                  // m, shown in km or mi
	KindRough                     // m, shown in tens of m or ft: a length that nobody measures
	KindRoughMass                 // kg or lb, to the one or two figures that are known of it
	KindRoughVolume               // L or gal, likewise
)

// Quantity is one figure inside a [Phrase]: a value in SI and its kind, or a
// word.
type Quantity struct {
	Kind  Kind
	SI    float64
	Word  string
	Range bool    // from SI to To
	To    float64 // read only where it is a range: frost lies below 0
	along bool    // [Along]
}

// GramsPerSquareMetre is the weight of a fabric.
type GramsPerSquareMetre float64

// KilogramsPerSquareMetre is what is spread on a strip of ground.
type KilogramsPerSquareMetre float64

// KilogramsPer100Metres is a mass for 100 m of bed.
type KilogramsPer100Metres float64

// Between is a range of two values of one type, low first. Ends that print alike are
// printed once.
func Between[T ~float64](low, high T) Quantity {
	q := Of(low)
	q.Range, q.To = high > low, float64(high)
	return q
}

// Along marks what goes with 100 ft of bed, and that length itself: metric readers are
// told what goes with 100 m.
func Along(v any) Quantity {
	q := Of(v)
	q.along = true
	return q
}

// Count is a number of things with its word, one or many.
func Count(n int, one, many string) Quantity {
	return Quantity{Kind: KindWord, Word: plural(float64(n), one, many)}
}

// YearDay marks a date that is meant in every year, and so is said without one.
type YearDay Date

// SquareMetres is an area of ground.
type SquareMetres float64

// Short marks a length that is shown in centimetres or inches.
type Short Metres

// PumpPower marks a power of a pump, which is small beside a tractor's.
type PumpPower Kilowatts

// WaterSpeed marks the speed of water in a pipe.
type WaterSpeed MetresPerSecond

// SmallFlow marks a flow of one outlet or injector.
type SmallFlow LitresPerHour

// FineShare marks a percentage whose tenths matter, such as a slope.
type FineShare Percent

// FineDepth marks a depth of water that a reader may reckon on with.
type FineDepth Millimetres

// FineMass marks a mass that may be small, such as a day's feed.
type FineMass Kilograms

// FineVolume marks a volume that may be small, such as a day's stock.
type FineVolume Litres

// Bore marks the inside width of tape or pipe.
type Bore Metres

// Roll marks the width of film as it is sold.
type Roll Metres

// Distance marks a length across country.
type Distance Metres

// Rough marks a length that is told in tens: nobody measures it.
type Rough Metres

// RoughMass marks a mass of which one figure is known, or two where the first is 1.
type RoughMass Kilograms

// RoughVolume marks a volume that is known likewise.
type RoughVolume Litres

// LitresPer100Metres is a volume of water for 100 m of bed.
type LitresPer100Metres float64

// KilogramsPerHectare is a rate for an area of field.
type KilogramsPerHectare float64

// KilogramsPerLitre is the strength of a stock solution.
type KilogramsPerLitre float64

// Minutes is a length of time in minutes.
type Minutes float64

// PlantsPerSquareMetre is a planting density.
type PlantsPerSquareMetre float64

// MilligramsPerLitre is a concentration.
type MilligramsPerLitre float64

// Of wraps a value of a named unit type as a quantity. Types it does not know
// become an empty word, which the phrase test refuses.
func Of(v any) Quantity {
	switch v := v.(type) {
	case Quantity:
		return v
	case Celsius:
		return Quantity{Kind: KindTemperature, SI: float64(v)}
	case CelsiusDegrees:
		return Quantity{Kind: KindWarming, SI: float64(v)}
	case Short:
		return Quantity{Kind: KindShort, SI: float64(v)}
	case PumpPower:
		return Quantity{Kind: KindPumpPower, SI: float64(v)}
	case WaterSpeed:
		return Quantity{Kind: KindWaterSpeed, SI: float64(v)}
	case SmallFlow:
		return Quantity{Kind: KindSmallFlow, SI: float64(v)}
	case FineShare:
		return Quantity{Kind: KindFineShare, SI: float64(v)}
	case FineDepth:
		return Quantity{Kind: KindFineDepth, SI: float64(v)}
	case FineMass:
		return Quantity{Kind: KindFineMass, SI: float64(v)}
	case FineVolume:
		return Quantity{Kind: KindFineVolume, SI: float64(v)}
	case Distance:
		return Quantity{Kind: KindDistance, SI: float64(v)}
	case Rough:
		return Quantity{Kind: KindRough, SI: float64(v)}
	case RoughMass:
		return Quantity{Kind: KindRoughMass, SI: float64(v)}
	case RoughVolume:
		return Quantity{Kind: KindRoughVolume, SI: float64(v)}
	case Roll:
		return Quantity{Kind: KindRoll, SI: float64(v)}
	case Bore:
		return Quantity{Kind: KindBore, SI: float64(v)}
	case LitresPer100Metres:
		return Quantity{Kind: KindPer100, SI: float64(v)}
	case KilogramsPerHectare:
		return Quantity{Kind: KindRate, SI: float64(v)}
	case KilogramsPerLitre:
		return Quantity{Kind: KindStrength, SI: float64(v)}
	case Metres:
		return Quantity{Kind: KindLong, SI: float64(v)}
	case Micrometres:
		return Quantity{Kind: KindThickness, SI: float64(v)}
	case LitresPerHour:
		return Quantity{Kind: KindFlow, SI: float64(v)}
	case LitresPerHourPer100Metres:
		return Quantity{Kind: KindTapeFlow, SI: float64(v)}
	case Kilopascals:
		return Quantity{Kind: KindPressure, SI: float64(v)}
	case Kilowatts:
		return Quantity{Kind: KindPower, SI: float64(v)}
	case Kilograms:
		return Quantity{Kind: KindMass, SI: float64(v)}
	case Millimetres:
		return Quantity{Kind: KindDepth, SI: float64(v)}
	case Litres:
		return Quantity{Kind: KindVolume, SI: float64(v)}
	case DecisiemensPerMetre:
		return Quantity{Kind: KindSalt, SI: float64(v)}
	case Percent:
		return Quantity{Kind: KindShare, SI: float64(v)}
	case Days:
		return Quantity{Kind: KindDays, SI: float64(v)}
	case Hours:
		return Quantity{Kind: KindHours, SI: float64(v)}
	case Minutes:
		return Quantity{Kind: KindMinutes, SI: float64(v)}
	case MetresPerSecond:
		return Quantity{Kind: KindSpeed, SI: float64(v)}
	case PlantsPerSquareMetre:
		return Quantity{Kind: KindDensity, SI: float64(v)}
	case MilligramsPerLitre:
		return Quantity{Kind: KindConcentration, SI: float64(v)}
	case MegajoulesPerSquareMetre:
		return Quantity{Kind: KindRadiation, SI: float64(v)}
	case GramsPerSquareMetre:
		return Quantity{Kind: KindFabric, SI: float64(v)}
	case KilogramsPerSquareMetre:
		return Quantity{Kind: KindSpread, SI: float64(v)}
	case KilogramsPer100Metres:
		return Quantity{Kind: KindPer100Mass, SI: float64(v)}
	case SquareMetres:
		return Quantity{Kind: KindArea, SI: float64(v)}
	case Degrees:
		return Quantity{Kind: KindAngle, SI: float64(v)}
	case YearDay:
		return Quantity{Kind: KindYearDay, SI: float64(v)}
	case Date:
		return Quantity{Kind: KindDate, SI: float64(v)}
	case int:
		return Quantity{Kind: KindCount, SI: float64(v)}
	case float64:
		return Quantity{Kind: KindNumber, SI: v}
	case string:
		return Quantity{Kind: KindWord, Word: v}
	}
	return Quantity{Kind: KindWord}
}
