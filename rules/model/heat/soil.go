package heat

import "math"

// Moisture says how wet the bed is when the film goes on.
type Moisture uint8

// Moist is the usual: near field capacity, a ball holds and crumbles.
const (
	Moist Moisture = iota
	Dry
	Wet
	moistures
)

// Soil is a soil in its standard state, as plain numbers: bulk density in t/m³
// (0.9–1.8), the share of sand in the mineral soil (0–1), and its water as a share
// of the volume when dry, at field capacity and wet.
type Soil struct {
	Density, Sand, Dry, Moist, Wet float64
}

// Check returns nil or a [*weather.InputError].
func (s *Soil) Check() error {
	pores := 1 - s.Density/ParticleDensity
	for _, r := range [...]struct {
		field     string
		value     float64
		low, high float64
		unit      string
		mend      string
	}{
		{"bulk density", s.Density, 0.9, 1.8, "t/m³", "take the mass of oven-dry soil for its volume in the field"},
		{"share of sand", s.Sand, 0, 1, "", "give a share of the mineral soil"},
		{"water when dry", s.Dry, 0.01, s.Moist, "", "dry, moist and wet must rise"},
		{"water when moist", s.Moist, s.Dry, s.Wet, "", "dry, moist and wet must rise"},
		{"water when wet", s.Wet, s.Moist, pores, "", "water cannot fill more than the pores"},
	} {
		if err := within(r.field, r.value, r.low, r.high, r.unit, r.mend); err != nil {
			return err
		}
	}
	return nil
}

func (s *Soil) water(m Moisture) float64 {
	switch m {
	case Dry:
		return s.Dry
	case Wet:
		return s.Wet
	}
	return s.Moist
}

// ParticleDensity is that of mineral grains, t/m³.
const ParticleDensity = 2.65

// Conductivity gives the thermal conductivity in W/m/K of mineral soil with
// bulk density 0.9–1.8 t/m³, volumetric water content 0 to pore space and sand
// share 0–1: Lu, S., Ren, T., Gong, Y. and Horton, R. (2007), An improved model
// for predicting soil thermal conductivity from water content at room
// temperature, Soil Science Society of America Journal 71:8–14. The quartz share
// is taken as the sand share, as they do.
func Conductivity(density, water, sand float64) float64 {
	pores := 1 - density/ParticleDensity
	dry := 0.51 - 0.56*pores
	other := 2.0
	if sand <= 0.2 {
		other = 3.0
	}
	solid := math.Pow(7.7, sand) * math.Pow(other, 1-sand)
	saturated := math.Pow(solid, 1-pores) * math.Pow(0.594, pores)
	wetness := math.Min(1, water/pores)
	if wetness <= 0 {
		return dry
	}
	alpha := 0.27
	if sand > 0.4 {
		alpha = 0.96
	}
	return dry + (saturated-dry)*math.Exp(alpha*(1-math.Pow(wetness, alpha-1.33)))
}

// HeatCapacity gives the volumetric heat capacity in J/m³/K of mineral soil: de
// Vries, D. A. (1963), Thermal properties of soils, in Physics of Plant
// Environment, North-Holland. Density in t/m³, water as a share of volume.
func HeatCapacity(density, water float64) float64 {
	return 1.92e6*density/ParticleDensity + 4.18e6*water
}
