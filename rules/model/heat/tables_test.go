package heat

import (
	"testing"

	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The films of the table as places in the results. What `rules` hands to this
// package is read here in the same way; a test of package rules holds that to the
// table too.
const (
	Black                = Bare + 1 + int(table.Black)
	Clear                = Bare + 1 + int(table.Clear)
	WhiteOnBlack         = Bare + 1 + int(table.WhiteOnBlack)
	SilverOnBlack        = Bare + 1 + int(table.SilverOnBlack)
	InfraredTransmitting = Bare + 1 + int(table.InfraredTransmitting)
	Red                  = Bare + 1 + int(table.Red)
	Blue                 = Bare + 1 + int(table.Blue)
	BiodegradableBlack   = Bare + 1 + int(table.BiodegradableBlack)
	Paper                = Bare + 1 + int(table.Paper)
	Films                = table.FilmCount + 1
)

// NameOf is the id of a place in the results.
func NameOf(f int) string {
	if f == Bare {
		return "bare"
	}
	return table.Films[f-1].ID
}

// TableCovers are the rows of the film table.
func TableCovers() (list []Cover) {
	for _, f := range table.Films {
		under := f.SunReflected.Value
		if f.BlackBelow {
			under = table.Films[table.Black].SunReflected.Value
		}
		list = append(list, Cover{
			Optics: Optics{f.SunReflected.Value, under, f.SunPassed.Value, f.HeatReflected.Value, table.HeatReflectedBelow.Value, f.HeatPassed.Value},
			Effect: [Depths]Effect{{f.WarmingAt5.Low, f.WarmingAt5.Value, f.WarmingAt5.High}, {f.WarmingAt10.Low, f.WarmingAt10.Value, f.WarmingAt10.High}},
		})
	}
	return list
}

// SoilOf is a row of the soil table.
func SoilOf(id string) Soil {
	row := table.SoilByID(id)
	w := soilwater.Of(row.Sand, row.Clay, soilwater.UsualOrganicMatter)
	return Soil{2.65 * (1 - w.Saturation), row.Sand, w.WiltingPoint, w.FieldCapacity, (w.FieldCapacity + w.Saturation) / 2}
}

// AnySoil is the soil of a number.
func AnySoil(i int) Soil { return SoilOf(table.Soils[i].ID) }

var referenced = func() *Covers {
	r, err := NewReference(TableCovers(), int(table.Black), SoilOf("loam"))
	if err != nil {
		panic(err)
	}
	for !r.Step(1000) {
	}
	return r.Covers()
}()

// Referenced are the covers of the table with their reference worked out.
func Referenced() *Covers { return referenced }

// UsualLoam is the usual input on loam.
func UsualLoam(n weather.Normals, start unit.Date, days unit.Days) Input {
	return Usual(n, SoilOf("loam"), start, days)
}

func newEnglandSpring() Input { return ReferenceInput(SoilOf("loam")) }

func fahrenheit(v ...float64) (out [12]unit.Celsius) {
	for m, f := range v {
		out[m] = unit.FromFahrenheit(f)
	}
	return out
}

func run(t testing.TB, in Input) *Runner {
	t.Helper()
	r, err := NewRunner(in, referenced)
	require.NoError(t, err)
	for !r.Step(50) {
	}
	return r
}
