package heat

import "filmfurrow/rules/model/sky"

// nature is every constant of the physics that is neither a textbook's nor the
// user's: estimates, each with what it rests on. A test moves each beyond what it
// may be wrong by and demands that a comparison with measurements notices.
type nature struct {
	// roughness is the roughness length of a field of beds and furrows, m: a tenth
	// of their height is the common rule (no source).
	roughness float64
	// supply is the water that moist open ground can give off between rains, mm a
	// day: its skin dries until it gives no more. FAO Irrigation and Drainage Paper
	// 56 figure 29 gives some 2 mm for rain once a week (from memory).
	supply float64
	// snowShare is the part of the air's cold below 0 °C, as a daily mean, that does
	// not reach the ground: between 0.1 where the wind sweeps the snow away and 0.7
	// under deep snow (freezing n-factors, from memory).
	snowShare float64
	// leastResistance is that of a wet skin to evaporation, mostResistance that of a
	// dry crust, s/m.
	leastResistance, mostResistance float64
	// drynessByRange is what each 6 K of daily range beyond 12 K adds to dryness.
	drynessByRange float64
	turf           turf
	grass          grass
}

// turf is what grows on open ground that nobody tills, as on weather stations.
type turf struct {
	albedo float64
	// thatch insulates, m²·K/W, where all grows: some centimetres of dead grass.
	thatch float64
	// conductivity of the ground below, W/m/K.
	conductivity float64
	// limit is the evaporative demand of the growing season, mm a day, at which half
	// of it grows; sharpness, per mm a day, how fast that falls.
	limit, sharpness float64
	// share of the supply of a moist bed that ground below turf gives off where all
	// grows, and where nothing does.
	share, desertShare float64
}

// grass is what grows on open ground that nobody tills where the rain is known: it
// follows the water of the ground and the warmth of the air through the year.
type grass struct {
	// warm is the daily mean of the air, °C, at which all grows; at 0 °C nothing does.
	warm float64
	// water is the share of the air's demand that the ground must meet for all to grow.
	water float64
	// lag is how many days what stands falls behind what would grow.
	lag float64
	// thatch insulates, m²·K/W, where all grows and the year's mean is 10 °C; decay is
	// how much less is left, in natural logarithms, for 10 K more: dead grass rots
	// faster where it is warm.
	thatch, decay float64
	// shelter is by how much, in natural logarithms, the air at the ground is calmer in
	// a climate that keeps the ground moist all year than in one that leaves it dry:
	// there trees stand about, and a station lies in a clearing.
	shelter float64
	// open and grown are the roughness lengths where nothing grows and where all does, m.
	open, grown float64
}

// usualNature: roughness and supply were calibrated together, by least squares on
// nine published figures: black, clear, white-on-black and infrared-transmitting
// in the New England table, and the long-term averages of bare soil at 4 in over
// Illinois on five days from April to July. The share of snow and turf's thatch,
// conductivity, limit and shares were fitted on 40 stations (VALIDATION.md). The
// albedo is that of the reference grass of FAO Paper 56, the sharpness a judgement:
// growth falls from nine tenths to one tenth over 0.9 mm a day. Where the rain is known
// turf's conductivity and share stay as they are, and grass was fitted on the same
// stations, from 2020's own months and from the normals of 1991–2020 together; all but
// its decay, by which dead grass rots twice as fast for 10 K more (a Q10 of 2, the usual
// figure, from memory), and its lag, a judgement.
var usualNature = nature{
	roughness: 0.02, supply: 3.0, snowShare: 0.58, leastResistance: 60, mostResistance: 5000,
	drynessByRange: 1.39,
	turf:           turf{albedo: sky.ReferenceAlbedo, thatch: 0.41, conductivity: 0.83, limit: 4.4, sharpness: 5, share: 0.42, desertShare: 0.025},
	grass:          grass{warm: 22, water: 0.48, lag: 45, thatch: 1.4, decay: 0.69, shelter: 0.65, open: 0.0067, grown: 0.05},
}
