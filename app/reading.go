package app

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

const probeBox = "water-probe"

// feelPictures are the handful in its classes, driest first.
var feelPictures = [plan.Feels]string{"crumbles", "rough", "breaks", "damp", "soft"}

// reading asks what the soil beside the tape says, squeezed or by a probe, and answers
// with what to do.
func (s *store) reading() app.UI {
	water := &s.workOut().plan
	says, wrong := "", false
	if text := s.typed[probeBox]; text != "" {
		v, err := unit.KindNumber.Read(text, s.system)
		r, ok := s.advice.ReadProbe(water, v/100)
		says = r.Says.In(s.system)
		if wrong = err != nil || !ok; wrong {
			says = "Write the probe’s percentage of water by volume, from 0 to 100."
		}
	}
	taps := make([]app.UI, plan.Feels)
	for i, words := range s.advice.FeelWords() {
		key := "feel-" + strconv.Itoa(i)
		on := s.ticks[key]
		if r, ok := s.advice.ReadFeel(water, i); ok && on && says == "" {
			says = r.Says.In(s.system)
		}
		taps[i] = tap(key, words, ball(feelPictures[i]), on, func() {
			for k := range plan.Feels {
				delete(s.ticks, "feel-"+strconv.Itoa(k))
			}
			delete(s.typed, probeBox)
			s.tick(key, !on)
			s.tell(onForm)
		})
	}
	class := "reading-says"
	if wrong {
		class += " error"
	}
	return app.Section().Class("tile squeeze").ID("reading").Body(
		heading2("What does your soil say?"),
		helpText(unit.Say("Squeeze some from {} down, beside the tape, and tap what it does.", unit.Short(plan.ReadingDepth)).In(s.system)),
		box("taps", taps...),
		asked("taps", app.Div().Class("field").Body(app.Label().For(probeBox).Text("or a probe’s reading, % water by volume"),
			&textBox{S: s, ID: probeBox, Type: "text", Describe: "reading-says", Wrong: wrong})),
		app.P().Class(class).ID("reading-says").Role("status").Text(says),
		app.P().Class("help").Body(plain("Classes by "), app.A().Href(plan.FeelSource.Address).Text(plan.FeelSource.Publisher), plain(".")),
	)
}
