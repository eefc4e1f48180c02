package heat

// Film is a kind of cover. The zero value is bare ground.
type Film uint8

// The covers, bare ground first.
const (
	Bare Film = iota
	Black
	Clear
	WhiteOnBlack
	SilverOnBlack
	InfraredTransmitting
	Red
	Blue
	BiodegradableBlack
	Paper
	Films // how many covers there are, bare included
)

var filmNames = [Films]string{"bare", "black", "clear", "white-on-black", "silver-on-black",
	"infrared-transmitting", "red", "blue", "biodegradable-black", "paper"}

// String gives the stable id of the film.
func (f Film) String() string {
	if f >= Films {
		return "unknown"
	}
	return filmNames[f]
}

// Optics are a film's shares of radiation: short-wave (sun) reflected by the
// top, by the underside, and let through; long-wave likewise, with drops on the
// underside and without. Each share lies in 0–1 and on each side they sum to at
// most 1.
type Optics struct {
	ReflectTop, ReflectUnder, Transmit             float64
	LongReflectTop, LongReflectUnder, LongTransmit float64
	LongTransmitDry                                float64
}

// optics lie inside the bounds of eight US films: short-wave transmittance
// 0.01–0.84, reflectance 0.01–0.48, long-wave transmittance 0.09–0.87 (Journal
// of the American Society for Horticultural Science 118(2):188–193, 1993). The
// paper's table by film could not be read, so each row is from memory.
//
// Polyethylene without pigment lets long-wave through like a window; the water
// that condenses under it over moist ground is what closes it. So soil under
// clear film grows warmer the moister it is (measured and modelled: Soil Sci.
// Soc. Am. J. 48(2):362, 1984).
var optics = [Films]Optics{
	Black:                {0.04, 0.04, 0.01, 0.05, 0.05, 0.15, 0.15},
	Clear:                {0.11, 0.11, 0.80, 0.05, 0.05, 0.20, 0.78},
	WhiteOnBlack:         {0.48, 0.04, 0.01, 0.05, 0.05, 0.15, 0.15},
	SilverOnBlack:        {0.35, 0.04, 0.01, 0.30, 0.05, 0.12, 0.12},
	InfraredTransmitting: {0.08, 0.08, 0.16, 0.05, 0.05, 0.20, 0.65},
	Red:                  {0.20, 0.12, 0.25, 0.05, 0.05, 0.20, 0.65},
	Blue:                 {0.14, 0.12, 0.25, 0.05, 0.05, 0.20, 0.65},
	BiodegradableBlack:   {0.05, 0.05, 0.02, 0.05, 0.05, 0.10, 0.10},
	Paper:                {0.30, 0.30, 0.05, 0.05, 0.05, 0.02, 0.02},
}
