package table

import "filmfurrow/rules/unit"

// Cover is a row cover or low tunnel over the plants. It guards leaves; film warms
// roots.
type Cover struct {
	ID     string
	Name   string
	Weight Figure[unit.GramsPerSquareMetre] // not given for film
	Night  Figure[unit.CelsiusDegrees]      // warmer under it on a cold clear night
	Day    Figure[unit.CelsiusDegrees]      // warmer under it, closed, on a calm sunny day
	Hooped bool                             // it never lies on the plants
}

// fahrenheits makes a difference of °F.
func fahrenheits(low, value, high unit.CelsiusDegrees, s *Source, m Mark, note string) Figure[unit.CelsiusDegrees] {
	return Figure[unit.CelsiusDegrees]{Low: low / 1.8, Value: value / 1.8, High: high / 1.8, Source: s, Mark: m, Note: note}
}

func ounces(low, high unit.GramsPerSquareMetre) Figure[unit.GramsPerSquareMetre] {
	const ounce = unit.GramsPerSquareYardOunce
	return Figure[unit.GramsPerSquareMetre]{Low: low * ounce, Value: (low + high) / 2 * ounce, High: high * ounce, Source: &RowCoversUNH, Mark: Seen}
}

// Covers are the row covers, from the lightest, and the low tunnel of clear film. The
// low end of a gain decides: makes of one weight differ, and a heavier fabric is not
// always the warmer one. Fabric is 5 to 10 °F cooler by day than film ([LowTunnelText]).
var Covers = [...]Cover{
	{ID: "light-fabric", Name: "light fabric", Weight: ounces(0.45, 0.6),
		Night: fahrenheits(2, 2, 3, &RowCoversUNH, Seen, ""), Day: fahrenheits(10, 17.5, 25, &RowCoversHeat, Recomputed, fabricByDay)},
	{ID: "medium-fabric", Name: "medium fabric", Weight: ounces(0.9, 1.25),
		Night: fahrenheits(3.7, 4, 5.4, &RowCoversDelaware, Seen, "The ends were measured on one night in North Carolina."), Day: fahrenheits(10, 17.5, 25, &RowCoversHeat, Recomputed, fabricByDay)},
	{ID: "heavy-fabric", Name: "heavy fabric", Weight: ounces(1.5, 2.2), Hooped: true,
		Night: fahrenheits(6, 6, 10, &RowCoversUNH, Seen, "Another guide ends at 7 °F."), Day: fahrenheits(10, 17.5, 25, &RowCoversHeat, Recomputed, fabricByDay)},
	{ID: "clear-tunnel", Name: "low tunnel of clear slit film", Hooped: true,
		Night: fahrenheits(2, 3, 4, &LowTunnelPages, Trade, ""), Day: fahrenheits(20, 25, 30, &RowCoversHeat, Seen, "")},
}

const fabricByDay = "20 to 30 °F under film, less the 5 to 10 °F that fabric stays cooler."

// CoverSources are what the covers rest on besides their figures.
var CoverSources = [...]*Source{&RowCoversH251, &RowCoversNewEngland, &RowCoversIowa, &LowTunnelText}
