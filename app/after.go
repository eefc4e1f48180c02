package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"
)

const afterTitle = "How to do it: holes, feeding, alleys, covers, the next crop"

// afterPart is how the work goes on once the film lies. Its texts come as a file when it is
// unfolded; the prerendered page leaves it to the program.
type afterPart struct {
	app.Compo
	S    *store
	open bool
}

func (p *afterPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *afterPart) OnDismount()         { p.S.leave(p) }

func (p *afterPart) Render() app.UI {
	text := ""
	if p.open {
		text = p.S.afterHTML()
	}
	return app.Details().ID("after-laying").Class("fold").Open(p.open).Body(summary(afterTitle), app.Raw("<div>"+text+"</div>")).
		On("toggle", func(ctx app.Context, _ app.Event) {
			if open := ctx.JSSrc().Get("open").Bool(); open != p.open {
				p.open = open
				p.Update()
			}
		})
}

// afterHTML is the lines under their heads.
func (s *store) afterHTML() string {
	t := &svg{}
	s.wantTexts()
	for _, line := range s.advice.After(&s.workOut().list) {
		text, from, _ := strings.Cut(s.texts["say:"+line.ID], "\t")
		line.Says.Text = text
		text = escape(line.Says.In(s.system))
		switch {
		case text == "":
			return `<p class="help">These texts are not here yet.</p>`
		case from == "":
			t.raw(`<h2 class="part-head">`, text, `</h2>`)
		default:
			t.raw(`<p>`, text, ` <cite>`, from, `</cite></p>`)
		}
	}
	return t.b.String()
}
