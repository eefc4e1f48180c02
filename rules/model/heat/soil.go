package heat

import "math"

// Texture is one of the twelve classes of the USDA texture triangle.
type Texture uint8

// The twelve classes, coarse to fine.
const (
	Sand Texture = iota
	LoamySand
	SandyLoam
	Loam
	SiltLoam
	Silt
	SandyClayLoam
	ClayLoam
	SiltyClayLoam
	SandyClay
	SiltyClay
	Clay
	textures
)

// Moisture says how wet the bed is when the film goes on.
type Moisture uint8

// Moist is the usual: near field capacity, a ball holds and crumbles.
const (
	Moist Moisture = iota
	Dry
	Wet
	moistures
)

// ground is the standard state of a texture: bulk density in t/m³, sand share,
// and volumetric water when dry, at field capacity and wet. Sand shares are the
// middles of the classes of the USDA triangle (USDA Soil Survey Manual, 2017);
// densities and water contents are typical values, common practice, no source.
type ground struct {
	density, sand, dry, moist, wet float64
}

var grounds = [textures]ground{
	Sand:          {1.60, 0.92, 0.04, 0.10, 0.20},
	LoamySand:     {1.55, 0.82, 0.06, 0.12, 0.22},
	SandyLoam:     {1.50, 0.65, 0.08, 0.18, 0.30},
	Loam:          {1.40, 0.40, 0.12, 0.25, 0.36},
	SiltLoam:      {1.35, 0.20, 0.12, 0.28, 0.38},
	Silt:          {1.35, 0.08, 0.12, 0.29, 0.39},
	SandyClayLoam: {1.45, 0.60, 0.14, 0.26, 0.36},
	ClayLoam:      {1.30, 0.32, 0.18, 0.32, 0.42},
	SiltyClayLoam: {1.30, 0.10, 0.19, 0.34, 0.43},
	SandyClay:     {1.35, 0.52, 0.20, 0.33, 0.41},
	SiltyClay:     {1.25, 0.06, 0.23, 0.37, 0.46},
	Clay:          {1.25, 0.20, 0.24, 0.38, 0.46},
}

func (g ground) water(m Moisture) float64 {
	switch m {
	case Dry:
		return g.dry
	case Wet:
		return g.wet
	}
	return g.moist
}

// particleDensity is that of mineral grains, t/m³.
const particleDensity = 2.65

// Conductivity gives the thermal conductivity in W/m/K of mineral soil with
// bulk density 0.9–1.8 t/m³, volumetric water content 0 to pore space and sand
// share 0–1: Lu, S., Ren, T., Gong, Y. and Horton, R. (2007), An improved model
// for predicting soil thermal conductivity from water content at room
// temperature, Soil Science Society of America Journal 71:8–14. The quartz share
// is taken as the sand share, as they do.
func Conductivity(density, water, sand float64) float64 {
	pores := 1 - density/particleDensity
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
	return 1.92e6*density/particleDensity + 4.18e6*water
}
