// Package profile cuts a bed across: from height, top, centres and the lean of its sides
// to base, crown and the film that covers it, in metres. Film, sheet, list and drawing
// read the same section.
package profile

import (
	"math"

	"filmfurrow/rules/unit"
)

// Bed is the bed cut across, and the film that covers it.
type Bed struct {
	Height, Top, Base, Crown unit.Metres
	Centres                  unit.Metres
	Side                     unit.Metres // along one sloping side
	Tuck                     unit.Metres // film that this roll leaves to bury on each side
	Needed                   unit.Metres // top, both sides and the least tuck
	FilmWidth                unit.Metres // the roll to buy or at hand; 0 where none is wide enough
}

// LeastTuck is the film to bury on each side: at least 5 in (common practice,
// no source); published pages give 4–6 in.
const LeastTuck = unit.Metres(5 * unit.MetresPerInch)

// EndAllowance is film and tape at each end, to bury, cut and join: a farm's
// published rows, 3 ft.
const EndAllowance = unit.Metres(3 * unit.MetresPerFoot)

// UsualSideSlope is how far the side of a bed leans out for each measure of height: 2 in
// on a bed of 6 in (common practice, no source). Pans differ: a strawberry bed of 32 in
// at the base, 30 in at the top and 10 in high stands at 1 in 10.
const UsualSideSlope = 1.0 / 3

// nominal is how far a roll may fall short of what the bed needs: rolls and beds are
// true to about an eighth of an inch.
const nominal = unit.Metres(unit.MetresPerInch / 8)

// RollWidths are the widths that are sold (New England guide: 4–6 ft; 3-ft
// rolls for flat and narrow beds).
var RollWidths = [...]unit.Metres{unit.FromInches(36), unit.FromInches(48), unit.FromInches(60), unit.FromInches(72)}

// Across gives the cross-section of a bed of one height, its sides leaning out by
// sideSlope for each measure of height (0–1.5). A roll at hand is taken as it is;
// without one the narrowest roll that covers the bed is chosen.
func Across(height, top, centres unit.Metres, sideSlope float64, roll unit.Optional[unit.Metres]) Bed {
	out := float64(height) * sideSlope
	side := math.Hypot(float64(height), out)
	b := Bed{Height: height, Top: top, Base: top + unit.Metres(2*out), Centres: centres,
		Crown: crownOf(height, top), Side: unit.TenthMillimetre(side)}
	b.Needed = unit.TenthMillimetre(float64(top) + 2*side + 2*float64(LeastTuck))
	switch {
	case roll.Given:
		b.FilmWidth = roll.Value
	default:
		for _, w := range RollWidths {
			if w+nominal >= b.Needed {
				b.FilmWidth = w
				break
			}
		}
	}
	b.Tuck = unit.TenthMillimetre((float64(b.FilmWidth) - float64(top) - 2*side) / 2)
	return b
}

// crownRise is by how much, for each measure of the top: 1¼ in over 30 in (from memory).
const crownRise = 1.25 / 30

// crownOf is how much higher the middle stands, so that no water puddles:
// none on flat ground.
func crownOf(height, top unit.Metres) unit.Metres {
	if height == 0 {
		return 0
	}
	return unit.TenthMillimetre(float64(top) * crownRise)
}

// Covers tells whether the roll leaves enough to bury.
func (b *Bed) Covers() bool { return b.FilmWidth+nominal >= b.Needed }
