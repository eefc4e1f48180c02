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

const ounce = unit.GramsPerSquareYardOunce

func ounces(low, high unit.GramsPerSquareMetre) Figure[unit.GramsPerSquareMetre] {
	return Figure[unit.GramsPerSquareMetre]{Low: low, Value: (low + high) / 2, High: high, Source: &RowCoversUNH, Mark: Seen}
}

// Covers are the row covers, from the lightest, and the low tunnel of clear film. The
// low end of a gain decides: makes of one weight differ, and a heavier fabric is not
// always the warmer one. Fabric is 5 to 10 °F cooler by day than film ([LowTunnelText]).
var Covers = [...]Cover{
	{ID: "light-fabric", Name: "light fabric", Weight: ounces(0.45*ounce, 0.6*ounce),
		Night: gains(2/1.8, 2/1.8, 3/1.8, &RowCoversUNH, Seen, ""), Day: gains(10/1.8, 17.5/1.8, 25/1.8, &RowCoversHeat, Recomputed, fabricByDay)},
	{ID: "medium-fabric", Name: "medium fabric", Weight: ounces(0.9*ounce, 1.25*ounce),
		Night: gains(3.7/1.8, 4/1.8, 5.4/1.8, &RowCoversDelaware, Seen, "The ends were measured on one night in North Carolina."), Day: gains(10/1.8, 17.5/1.8, 25/1.8, &RowCoversHeat, Recomputed, fabricByDay)},
	{ID: "heavy-fabric", Name: "heavy fabric", Weight: ounces(1.5*ounce, 2.2*ounce), Hooped: true,
		Night: gains(6/1.8, 6/1.8, 10/1.8, &RowCoversUNH, Seen, "Another guide ends at 7 °F."), Day: gains(10/1.8, 17.5/1.8, 25/1.8, &RowCoversHeat, Recomputed, fabricByDay)},
	{ID: "clear-tunnel", Name: "low tunnel of clear slit film", Hooped: true,
		Night: gains(2/1.8, 3/1.8, 4/1.8, &LowTunnelPages, Trade, ""), Day: gains(20/1.8, 25/1.8, 30/1.8, &RowCoversHeat, Seen, "")},
}

const fabricByDay = "20 to 30 °F under film, less the 5 to 10 °F that fabric stays cooler."

// CoverSources are what the covers rest on besides their figures.
var CoverSources = [...]*Source{&RowCoversH251, &RowCoversNewEngland, &RowCoversIowa, &LowTunnelText}
