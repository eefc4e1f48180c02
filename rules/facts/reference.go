package facts

import (
	"slices"

	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/table"
)

// modelled is the heat model's own effect of each film at the reference state, film
// minus bare ground, K at 5 and 10 cm. No case changes it, so it is kept, to spare each
// start its working out: TestTheReferenceIsWhatTheModelGives holds it to the model, and
// prints it. A film that is new in the table has nothing here yet; see [heatCovers].
var modelled = [table.FilmCount][heat.Depths]float64{
	{2.023858752172818, 1.9780352083833228},     // black
	{6.618484432570795, 6.459307514738662},      // clear
	{-1.3786231317001767, -1.328211226873096},   // white-on-black
	{0.01562786401487687, 0.030247619809323376}, // silver-on-black
	{5.198441013219331, 5.069109685678301},      // infrared-transmitting
	{1.5956258466970716, 1.5616464372133243},    // red
	{1.5956258466970716, 1.5616464372133243},    // blue
	{2.4221957321394196, 2.366087667545281},     // biodegradable-black
	{1.243389197904383, 1.2207328574981813},     // paper
}

// heatCovers are the films of the table as the heat model takes them, each with its
// effect at the reference state. Where the effect of one is not kept, all are worked out.
func heatCovers() *heat.Covers { return coversOf(coverList(), modelled[:]) }

func coversOf(list []heat.Cover, kept [][heat.Depths]float64) *heat.Covers {
	if len(kept) == len(list) && !slices.Contains(kept, [heat.Depths]float64{}) {
		return heat.CoversOf(list, int(table.Black), kept)
	}
	r, err := heat.NewReference(list, int(table.Black), HeatSoil(table.SoilByID(usualLoam)))
	if err != nil {
		panic(err) // a row of the table that TestOpticsStayWithinWhatWasMeasured refuses
	}
	for !r.Step(1000) {
	}
	return r.Covers()
}
