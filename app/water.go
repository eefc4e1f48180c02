package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// waterLead is the sixth answer's figure.
func waterLead(a *plan.Advice, system unit.System) string {
	if a.TapePlan.Tape == nil {
		return "No tape fits"
	}
	return unit.Of(a.Water.PeakMinutes).In(system) + " a day at full leaf"
}

func runs(n int) string {
	if n == 1 {
		return "one run"
	}
	return strconv.Itoa(n) + " runs"
}

// waterView draws the parts of one plan in one system of units.
type waterView struct {
	plan   *plan.WaterPlan
	system unit.System
	s      *store // that fetches texts
}

func (v waterView) show(x any) string {
	if q, ok := x.(unit.Quantity); ok {
		return q.In(v.system)
	}
	return unit.Of(x).In(v.system)
}

// lead says whether it works.
func (v waterView) lead() string {
	switch p := v.plan; p.Verdict {
	case water.Fits:
		return "It fits."
	case water.FitsTightly:
		return "It fits, with care."
	case water.DoesNotFit:
		return "It does not fit: " + lower(p.Because[0].In(v.system))
	}
	return "Not settled yet: too little is known of your water."
}

// words say first whether it works.
func (v waterView) words() app.UI {
	p := v.plan
	var because []app.UI
	for i := range p.Because {
		if i == 0 && p.Verdict == water.DoesNotFit || p.Verdict == water.Undecided {
			continue
		}
		because = append(because, paragraph(p.Because[i].In(v.system)))
	}
	parts := []app.UI{para("number", v.lead())}
	parts = append(parts, because...)
	if !p.Chosen {
		parts = append(parts, paragraph("No tape fits this source and these beds. The plan below is for the tape of least flow: "+p.Row.Name+"."))
	}
	if len(p.Remedies) > 0 {
		ways := make([]app.UI, len(p.Remedies))
		for i := range p.Remedies {
			w := &p.Remedies[i]
			ways[i] = app.Li().Body(strong(w.Change.In(v.system)), plain(" "+w.Result.In(v.system)))
		}
		parts = append(parts, heading3("Ways out, each one planned through"), app.Ol().Class("ways").Body(ways...))
	}
	if len(p.Warnings) > 0 {
		list := make([]app.UI, len(p.Warnings))
		for i := range p.Warnings {
			w := &p.Warnings[i]
			list[i] = app.Li().Body(strong(w.Severity.String()+": "), plain(w.Says.In(v.system)+" "), app.Cite().Text("("+w.Source+")"))
		}
		parts = append(parts, app.Ul().Class("water-warnings").Body(list...))
	}
	if len(p.Missing) > 0 {
		list := make([]app.UI, len(p.Missing))
		for i, m := range p.Missing {
			list[i] = app.Li().Body(fieldLink(m.Field), plain(": it would settle "+m.Settles+"."))
		}
		parts = append(parts, app.Details().ID("water-missing").Class("water-missing").Open(p.Verdict == water.Undecided).Body(
			summary("What is missing"), app.Ul().Body(list...)))
	}
	return box("water-words", parts...)
}

// lower starts a sentence small, to stand behind a colon.
func lower(s string) string {
	if len(s) > 1 && s[0] >= 'A' && s[0] <= 'Z' && (s[1] >= 'a' && s[1] <= 'z' || s[1] == ' ') {
		return string(s[0]+'a'-'A') + s[1:]
	}
	return s
}

// waterFields names the model's inputs on the page: those of the form by their
// row, the rest in words.
var waterFields = map[string]string{
	"flow_l_h": "water.flow_l_h", "pressure_kpa": "water.pressure_kpa", "lift_m": "water.lift_m", "rise_m": "water.rise_m",
	"header_m": "water.header_m", "hours_per_day": "water.hours_per_day", "source": "water.source", "ec_ds_m": "water.ec_ds_m",
	"bed_length_m": "field.bed_length_m", "beds": "field.beds", "bed_centres_m": "field.bed_centres_m", "bed_top_m": "field.bed_top_m",
	"texture": "soil.texture", "organic_percent": "soil.organic_percent",
}

var waterWords = map[string]string{
	"tape_bore_m": "Inside of the tape", "exponent": "Exponent of the outlets", "makers_cv": "Maker’s variation (share)",
	"tape_pressure_kpa": "Pressure wanted at the tape", "flow_spread_percent": "Spread of flow allowed along a bed",
	"usable_percent": "Share of the tested flow to plan on", "efficiency_percent": "Share of the water that stays with the roots",
	"filter_loss_kpa": "Loss in a dirty filter", "injector_loss_kpa": "Loss in the injector", "film_cut_percent": "What film saves", "canopy_m": "Width of ground that full-grown plants draw on",
	"climate": "Climate",
}

func fieldLink(name string) app.UI {
	if row, ok := waterFields[name]; ok {
		return app.A().Href(rooted("/details") + "#" + fieldID(row)).Text(field.InputByName(row).Label)
	}
	return plain(fieldWords(name))
}

// toField opens the groups that a field stands in and goes there, where it is on the
// page.
func toField(id string) bool {
	el := app.Window().GetElementByID(id)
	if !el.Truthy() {
		return false
	}
	for group := el.Call("closest", "details"); group.Truthy(); group = group.Get("parentElement").Call("closest", "details") {
		group.Set("open", true)
	}
	el.Call("scrollIntoView", map[string]any{"block": "center"})
	el.Call("focus")
	return true
}

func fieldWords(name string) string {
	if row, ok := waterFields[name]; ok {
		return field.InputByName(row).Label
	}
	if words, ok := waterWords[name]; ok {
		return words
	}
	return sentence(name)
}

// bucketPicture is a sketch of the test: the pipe's end, the bucket, the watch.
const bucketPicture = `<svg class="pic" viewBox="0 0 300 84" aria-hidden="true"><path class="d-end" d="M10 8h60v6h16v14h-26v-6h-50z"/><path class="w-pipe-thin" d="M73 28v26"/><path class="w-zone-0" d="M46 54h58l-6 26h-46z"/><path class="d-lead" d="M40 38h70l-10 44h-50z"/><circle class="k-face" cx="210" cy="46" r="30"/><path class="k-fill" d="M210 46V16A30 30 0 0 1 240 46z"/><path class="t-lay" d="M204 10h12"/></svg>`

// bucketPart turns a bucket test into the flow at the field.
type bucketPart struct {
	app.Compo
	S     *store
	says  string
	wrong bool
}

func (b *bucketPart) OnMount(app.Context) { b.S.follow(b, onUnits, func() { b.says = ""; b.Update() }) }
func (b *bucketPart) OnDismount()         { b.S.leave(b) }

func (b *bucketPart) Render() app.UI {
	class := "help"
	if b.wrong {
		class = "error"
	}
	return app.FieldSet().Class("bucket").ID("bucket-test").Body(
		app.Legend().Text("Bucket test"),
		app.Raw(bucketPicture),
		helpText("Run the water half an hour, with no other tap open. Then time how long it takes to fill a bucket at the field’s end of the pipe."),
		asked("fields",
			box("field",
				app.Label().For("bucket-volume").Text("Bucket holds ("+unit.KindVolume.Symbol(b.S.system)+")"),
				&textBox{S: b.S, ID: "bucket-volume", Type: "text", Describe: "bucket-says"}),
			box("field",
				app.Label().For("bucket-seconds").Text("Seconds to fill it"),
				&textBox{S: b.S, ID: "bucket-seconds", Type: "text", Describe: "bucket-says"}),
		),
		button("bucket-use", "Use this flow").OnClick(b.use),
		app.P().Class(class).ID("bucket-says").Role("status").Text(b.says),
	)
}

func (b *bucketPart) use(app.Context, app.Event) {
	litres, err := unit.KindVolume.Read(b.S.typed["bucket-volume"], b.S.system)
	seconds, errSeconds := unit.KindNumber.Read(b.S.typed["bucket-seconds"], b.S.system)
	in := field.InputByName("water.flow_l_h")
	flow := field.Value{Number: float64(plan.Bucket(unit.Litres(litres), seconds))}
	b.wrong = true
	switch {
	case err != nil || errSeconds != nil || litres <= 0 || seconds <= 0:
		b.says = "Give the bucket’s volume and the seconds as plain numbers above 0."
	case in.CheckValue(flow) != nil:
		b.says = "That would be " + unit.Of(unit.LitresPerHour(flow.Number)).In(b.S.system) + ". Check both figures."
	default:
		b.wrong = false
		b.says = "Your source gives " + unit.Of(unit.LitresPerHour(flow.Number)).In(b.S.system) + ". It now stands under “" + in.Label + "”."
		b.S.put(in, flow)
	}
}

// put sets one input to a value that was not typed into its own field.
func (s *store) put(in *field.Input, v field.Value) {
	s.touch(lower(in.Label), borrowedAs(in.Name))
	delete(s.typed, in.Name)
	delete(s.wrong, in.Name)
	in.Set(&s.c, v)
	s.changed()
	s.tell(onForm)
}
