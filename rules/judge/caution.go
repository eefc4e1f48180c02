package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/table"
)

// Step is the part of the work a caution belongs to.
type Step string

// The steps, in the order of the season.
const (
	StepField   Step = "choosing the field"
	StepOrder   Step = "ordering"
	StepGround  Step = "preparing the ground"
	StepLaying  Step = "laying day"
	StepWater   Step = "water and feeding"
	StepPlant   Step = "planting"
	StepSeason  Step = "the season"
	StepLifting Step = "lifting the film"
)

// Caution warns where the work can hurt someone. It never has the last word.
type Caution struct {
	ID      string
	Step    Step
	Text    string
	Defers  string // who has the last word
	Sources []*table.Source
	when    func(*facts.Facts) bool
}

func always(*facts.Facts) bool      { return true }
func filmLies(f *facts.Facts) bool  { return !f.Bare }
func byTractor(f *facts.Facts) bool { return f.Case.Practice.Laying != "hand" }
func byLayer(f *facts.Facts) bool   { return byTractor(f) && filmLies(f) }
func treated(f *facts.Facts) bool   { return f.Case.Practice.FumigatedOn.Given }

// Heat harms whoever works in it, with film or without.
const heatWork, heatWorkDefers = "Water, shade and a partner within reach. Confusion or hot dry skin is an emergency: call for help.", "local law and medical advice"

var cautions = [...]Caution{
	{"overturn", StepField, "Stay off steep and uneven ground with a mounted layer. Roll bar up, belt on, slow on the headland.", "the tractor's manual and a safety trainer", []*table.Source{&table.Memory}, byLayer},
	{"buried-lines", StepField, "Have buried cables and pipes marked before you plow or trench.", "the utility's marking service", []*table.Source{&table.Memory}, always},
	{"lifting-rolls", StepOrder, "A roll of film is heavy, often 50 to 100 lb (20 to 45 kg). Lift it with two people or a loader.", "the people who lift", []*table.Source{&table.Memory}, filmLies},
	{"power-shaft", StepGround, "Keep the shields on the power take-off. Stop it, lower the implement and take out the key before you leave the seat.", "the machine's manual", []*table.Source{&table.Memory}, byTractor},
	{"run-over", StepLaying, "Nobody rides on the layer or stands between tractor and layer. Agree on one stop signal. The driver sees everyone before moving.", "the tractor's manual", []*table.Source{&table.Memory}, byLayer},
	{"knives", StepLaying, "Cut film away from your body. Keep hands off discs and press wheels.", "the machine's manual", []*table.Source{&table.Memory}, filmLies},
	{"heat-work", StepLaying, heatWork, heatWorkDefers, []*table.Source{&table.Memory}, filmLies},
	{"treated-ground", StepPlant, "The ground was treated. Only licensed people apply fumigants. The label sets the interval, the re-entry time and the film.", "the label, the state and the licensed applicator", []*table.Source{&table.FumigantManual, &table.HerbicideRutgers}, treated},
	{"herbicide-on-film", StepPlant, "Weed killer on film washes into the holes. Do not spray over film unless the label says how.", "the label", []*table.Source{&table.HerbicideFilm2009, &table.HerbicideRutgers}, filmLies},
	{"hot-film", StepPlant, "On a clear hot day dark film burns stems and hands. Plant in the evening, cut wide holes, keep stems off the film.", "your own thermometer", []*table.Source{&table.HotFilm, &table.Films1993}, func(f *facts.Facts) bool { return f.HotStart >= 1 && filmLies(f) }},
	{"heat-work-bare", StepPlant, heatWork, heatWorkDefers, []*table.Source{&table.Memory}, func(f *facts.Facts) bool { return f.Bare }},
	{"flame", StepPlant, "A torch that burns holes can set film and dry grass alight. Keep water and an extinguisher at hand.", "fire rules and burn bans", []*table.Source{&table.Memory}, filmLies},
	{"backflow", StepWater, "Fit an approved backflow device before any tape is joined to drinking water. A pressure regulator is not one.", "the plumbing code and the water company", []*table.Source{&table.Memory}, always},
	{"electricity", StepWater, "Wet hands and pumps kill. Ground-fault protection, rated outdoor gear, breaker off before you touch it.", "a licensed electrician", []*table.Source{&table.Memory}, always},
	{"chlorine-acid", StepWater, "Never mix chlorine with acid or with ammonium feeds: poison gas. Inject them at different places and times.", "the label and the supplier", []*table.Source{&table.ClogFlorida}, always},
	{"surface-water", StepWater, "Pond and stream water can carry disease. Test it and keep it off what is eaten.", "the produce-safety rule and the health department", []*table.Source{&table.Memory}, func(f *facts.Facts) bool {
		return f.Case.Water.Source == "pond" || f.Case.Water.Source == "stream"
	}},
	{"engine-pump", StepWater, "Never run an engine pump indoors or in a pit: carbon monoxide.", "the machine's manual", []*table.Source{&table.Memory}, always},
	{"no-burning", StepLifting, "Never burn or bury plastic film. Ask the landfill or collector before you lay it.", "local rules", []*table.Source{&table.CFR205, &table.Memory}, func(f *facts.Facts) bool {
		return FilmRow(f).Removal == table.LiftAndHaul && filmLies(f)
	}},
	{"lifting-film", StepLifting, "Film and tape wind around shafts. Stop the machine before you clear it. Gloves on: snakes and broken glass lie under old film.", "the machine's manual", []*table.Source{&table.Memory}, byLayer},
}

// CautionsFor lists those that a case calls for, in the order of the work.
func CautionsFor(f *facts.Facts) (list []Caution) {
	for i := range cautions {
		if cautions[i].when(f) {
			list = append(list, cautions[i])
		}
	}
	return list
}

// Cautions lists every caution, for the page's own list and for "explain".
func Cautions() []Caution { return cautions[:] }
