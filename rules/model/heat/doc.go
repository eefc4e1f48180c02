// Package heat computes the warmth of the soil in a bed, day by day, bare and
// under films.
//
// Films and soils come as plain numbers ([Cover], [Soil]); whoever calls keeps the
// tables. The way through: [NewReference] makes [Covers] of a list of films; [Input]
// and covers → [Compute] (or [NewRunner] and [Runner.Step], in slices) → [Season],
// which holds curves at 5 and 10 cm and answers questions of them.
//
// How it is built, and where each part is checked:
//   - The smooth year of package weather and the sun of package sky drive the
//     hours of each day (forcing.go).
//   - Heat flows down through a bed and the ground below by an implicit scheme
//     on two dozen uneven nodes with steps of forty minutes, with freezing and
//     thawing (soil.go, grid.go, column.go, freeze.go; numerics_test.go sets it
//     against exact solutions).
//   - At the top the energy balance of bare ground, or of ground, still air and
//     film together, is solved by Newton at each step (surface.go, film.go).
//   - Bare ground is the physics. A film's effect is the published one at its
//     reference state, carried to this place by the model's own ratio (effect.go,
//     finish.go; published_test.go sets ours beside theirs, pure and carried).
//   - All constants of nature stand in nature.go; validation_test.go holds each.
//   - Turf on the open ground (turf.go) is how measured soil of weather stations is
//     met: VALIDATION.md says how well.
//   - How the effect changes with depth, leaves, slack film, moisture and warmth is
//     held in random climates, and its sign in the real weather of 60 stations
//     (property_test.go, heat_test.go, published_test.go).
//
// What it leaves out: rain and snow as weather (a month's rain is in the account of the
// ground's water that open ground evaporates from, account.go), irrigation's heat, wind
// flapping the film, slope and row direction, one water content of a bed all season. The
// band of [Season.Band] is there for that.
//
// All is deterministic. Results are rounded to 0.01 K, film surfaces to 0.1 K, so
// that native and WebAssembly builds agree although their exponentials differ in
// the last bit.
package heat
