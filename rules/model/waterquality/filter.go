package waterquality

import "filmfurrow/rules/unit"

// Supply is where the water comes from.
type Supply string

// The supplies.
const (
	Well      Supply = "well"
	Pond      Supply = "pond"
	Stream    Supply = "stream"
	Municipal Supply = "municipal"
	Tank      Supply = "tank"
)

// Surface tells whether the water stands or runs in the open, and so carries
// algae and fine dirt.
func (s Supply) Surface() bool { return s == Pond || s == Stream }

// Mesh is a screen size by its count and its opening in µm.
type Mesh struct {
	Count   int
	Opening float64
}

// Meshes are the usual screens. 120 and 200 mesh are 130 and 74 µm as printed
// (Agriculture Victoria, "Filtration for drip irrigation"; Florida
// screen-filter circular); the others are from memory.
var Meshes = [...]Mesh{{80, 177}, {100, 149}, {120, 130}, {140, 105}, {155, 100}, {200, 74}}

// Filter is what to put in front of the tape.
type Filter struct {
	Mesh       Mesh
	MediaFirst bool // media or disc ahead of the screen
	ScreenOnly bool // a screen alone will do
	SandFirst  bool // a well that lifts sand wants a separator ahead
}

// LowFlowOutlet is the emitter flow at 8 psi below which passages are small:
// between the low class (0.13 gal/h) and the medium one (0.20).
const LowFlowOutlet unit.LitresPerHour = 0.16 * unit.LitresPerGallon

// FilterFor chooses by the outlet and the supply. The base is 120 mesh or finer
// (Agriculture Victoria); low-flow outlets get 200 mesh, the typical screen of
// a Florida circular. Surface water needs media or disc filters first, because
// algae blind a screen (University of Florida WI009). For an unknown supply
// ("") only the mesh is told. The tape's label has the last word.
func FilterFor(outlet unit.LitresPerHour, supply Supply) Filter {
	f := Filter{Mesh: Meshes[2]}
	if outlet < LowFlowOutlet {
		f.Mesh = Meshes[5]
	}
	f.MediaFirst = supply.Surface()
	f.ScreenOnly = !f.MediaFirst && supply != ""
	f.SandFirst = supply == Well
	return f
}
