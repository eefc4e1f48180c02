package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

const afterTitle = "How to do it: holes, feeding, alleys, covers, the next crop"

// foldPart is a part whose texts come as a file when it is unfolded; the prerendered page leaves
// them to the program.
type foldPart struct {
	app.Compo
	S         *store
	ID, Title string
	Part      func(open bool) []app.UI
	open      bool
}

func (p *foldPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *foldPart) OnDismount()         { p.S.leave(p) }

func (p *foldPart) Render() app.UI {
	return app.Details().ID(p.ID).Class("fold").Open(p.open).Body(append([]app.UI{summary(p.Title)}, p.Part(p.open)...)...).
		On("toggle", func(ctx app.Context, _ app.Event) {
			if open := ctx.JSSrc().Get("open").Bool(); open != p.open {
				p.open = open
				p.Update()
			}
		})
}

// afterPart is how the work goes on once the film lies.
func (s *store) afterPart(open bool) []app.UI {
	text := ""
	if open {
		text = s.afterHTML()
	}
	return []app.UI{app.Raw("<div>" + text + "</div>")}
}

// fetched is a line in words, and who says so; empty until its text has come.
func (s *store) fetched(line plan.AfterLine) (text, from string) {
	s.wantTexts()
	line.Says.Text, from, _ = strings.Cut(s.texts["say:"+line.ID], "\t")
	return line.Says.In(s.system), from
}

const notHere = "These texts are not here yet."

// machinePart is what the bed in hand asks of tractor and people.
func (s *store) machinePart(open bool) []app.UI {
	a := s.advice
	m := a.MachineOf()
	body := []app.UI{heading("Tractor and layer")}
	for _, line := range m.Says {
		text := ""
		if open {
			text, _ = s.fetched(line)
		}
		if text == "" {
			body = append(body, paragraph(notHere))
			break
		}
		body = append(body, paragraph(text))
	}
	if !m.ByHand {
		rows := make([]app.UI, len(m.Beds))
		for i, b := range m.Beds {
			bed := "Flat"
			if b.Height > 0 {
				bed = unit.Of(unit.Short(b.Height)).In(s.system)
			}
			rows[i] = rowOf(bed, [...]string{"?", "Yes", "No"}[b.Can], unit.Of(b.Least).In(s.system))
		}
		body = append(body, listed("scroll", "Power", rows, "Bed", "Least power", "Yours can"),
			helpText("Common practice for formed beds of 6 to 8 in; the rest from memory of the trade. Heavy soil wants more."))
	}
	return []app.UI{app.Div().ID("tractor").Body(body...), careOf(a, judge.StepOrder, "backflow")}
}

// afterHTML is the lines under their heads.
func (s *store) afterHTML() string {
	t := &svg{}
	for _, line := range s.advice.After(&s.workOut().list) {
		text, from := s.fetched(line)
		text = escape(text)
		switch {
		case text == "":
			return `<p class="help">` + notHere + `</p>`
		case from == "":
			t.raw(`<h2 class="part-head">`, text, `</h2>`)
		default:
			t.raw(`<p>`, text, ` <cite>`, from, `</cite></p>`)
		}
	}
	return t.b.String()
}
