package app

import (
	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/unit"
)

// openPart lists what was left open and could change an answer: the spread of
// each, the one most worth finding out first, and how to find it out.
type openPart struct {
	app.Compo
	S *store
}

func (p *openPart) OnMount(app.Context) { p.S.follow(p, onStudy|onUnits|onAdvice, p.Update) }
func (p *openPart) OnDismount()         { p.S.leave(p) }

// fewOpen is how many open fields are listed, and fewParts how many stretches of
// a number.
const (
	fewOpen  = 5
	fewParts = 4
)

func (p *openPart) Render() app.UI {
	var rows []app.UI
	if st := p.S.studied; st != nil {
		for i := range st.opens[:min(fewOpen, len(st.opens))] {
			o := &st.opens[i]
			row := []app.UI{strong(o.Input.Label + ". "), plain(o.Input.Help + " "),
				app.Button().Type("button").Class("go").Aria("label", "Fill it in: "+o.Input.Label).Text("Fill it in").OnClick(func(app.Context, app.Event) { toField(fieldID(o.Input.Name)) }, o.Input.Name)}
			row = append(row, spread(o, p.S.system))
			for _, how := range findOut {
				if how[0] != o.Input.Name {
					continue
				}
				row = append(row, app.Details().ID("how-"+fieldID(o.Input.Name)).Body(app.Summary().Text("How to find out"), app.P().Text(how[1]),
					only(o.Input.Name == "weeds.nutsedge", func() app.UI { return app.Raw(weedKey) })))
			}
			rows = append(rows, app.Li().Body(row...))
		}
	}
	return app.Section().ID("worth-knowing").Class("worth").Hidden(len(rows) == 0).Body(
		heading2("Worth finding out first"),
		paragraph("You left these open, and they could change the answers. The first matters most. Each possibility was worked out:"),
		app.Ol().Body(rows...))
}

// spread says for each answer that depends on an open field what each
// possibility would bring.
func spread(o *search.Open, system unit.System) app.UI {
	var rows []app.UI
	for _, q := range [...]question.Question{question.Verdict, question.Film, question.Thickness, question.Bed, question.Surface, question.Tape, question.Wait} {
		if !o.Differs(q) {
			continue
		}
		text, parts := "", 0
		for i := 0; i < len(o.Outcomes); {
			k := i
			for k+1 < len(o.Outcomes) && o.Outcomes[k+1].Answers[q] == o.Outcomes[i].Answers[q] {
				k++
			}
			if parts++; parts > fewParts {
				text += "; and further on others"
				break
			}
			if text != "" {
				text += "; "
			}
			text += said(o.Input, o.Outcomes[i].From, system)
			if o.Input.Form == field.FormChoice {
				for ; i < k; i++ {
					text += ", " + said(o.Input, o.Outcomes[i+1].From, system)
				}
			} else if to := said(o.Input, o.Outcomes[k].To, system); to != said(o.Input, o.Outcomes[i].From, system) {
				text += " to " + to
			}
			text += ": " + optionWords(q, o.Outcomes[k].Answers[q], system)
			i = k + 1
		}
		rows = append(rows, item(text+"."))
	}
	return app.Ul().Class("spread").Body(rows...)
}

// said is a value of an input in the reader's units.
func said(in *field.Input, v field.Value, system unit.System) string {
	text, values := in.Says(v)
	return unit.Phrase{Text: text, Quantities: values}.In(system)
}

// findOut says how to find out what is worth it, with what lies about a farm.
// Common practice, no source, but where a source is named.
var findOut = [...][2]string{
	{"soil.texture", "Jar test: fill a straight jar a third with crumbled soil, add water and a drop of dish soap, and shake for five minutes. Mark the sand after one minute and the silt after two hours; clay settles in a day or more. Each layer ÷ all three is its share. Quicker: rub a wet pinch. Gritty is sand, floury is silt, sticky is clay."},
	{"soil.wetness_at_laying", "Ball test: squeeze a handful from the depth of the bed. Dust that will not hold is dry. A ball that breaks when poked is moist: lay. A ribbon that shines is too wet."},
	{"soil.drainage", "Dig a hole a spade deep, fill it with water, let it drain, and fill it again. Empty within the hour is quick, within the day is fair, longer is slow."},
	{"soil.stones", "Drag a rake over ten paces of the bed line. Note stones wider than a plum."},
	{"soil.slope_percent", "Lay a level on a straight board, one end on the ground, and lift the other until the bubble stands. The gap beneath ÷ the board’s length × 100 is the slope in percent."},
	{"weeds.pressure", "Count seedlings in a square foot (30 cm each way) on last year’s beds, three weeks after rain. Fewer than 5 is light, more than 25 is heavy: our own limits."},
	{"weeds.nutsedge", "Roll a stem between two fingers: a sedge has three edges, a grass is round or flat. Dig one up with its roots, look at the tubers, then at the tip of a leaf. Only a botanist’s key is sure."},
	{"weeds.insect_pressure", "Hang yellow sticky cards at plant height for a week, and look under young leaves of nearby crops: aphids sit in clusters, thrips are slits that run, whiteflies rise in a cloud. Ask who had virus last year."},
	{"water.flow_l_h", "Bucket test: let the water run for half an hour, at the field’s end, with the house not drawing. Time a bucket: gallons ÷ seconds × 60 is gallons a minute; liters ÷ seconds × 3,600 is liters an hour. A bucket of 5 gallons in 20 seconds is 15 gallons a minute."},
	{"water.pressure_kpa", "Screw a gauge on at the field and read it while as much water runs as the tape will draw."},
	{"water.ec_ds_m", "Send a bottle to a water laboratory, or dip a meter in: it shows dS/m or mS/cm, which are the same."},
	{"practice.tractor_kw", "Read the plate or the papers: power at the engine. 1 horsepower is 0.75 kW."},
	{"climate.last_frost", "Ask who grows on the same height as you. Cold air runs downhill: a hollow freezes weeks after the slope above it."},
	{"field.bed_length_m", "Pace it with a tape, or with a wheel. What counts is the longest bed."},
	{"practice.film_width_m", "Read the carton, or unroll a hand and measure."},
}
