package facts

import (
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/table"
)

// modelled is the heat model's own effect of each film at the reference state, film
// minus bare ground, K at 5 and 10 cm. No case changes it, so it is worked out once:
// TestTheReferenceIsWhatTheModelGives holds it to the model, and prints it anew.
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
