package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// bedDrawing is the bed cut across, to scale: the answer as a picture. The
// words under it say the same for those who cannot see it.
type bedDrawing struct {
	app.Compo
	S *store
}

func (d *bedDrawing) OnMount(app.Context) { d.S.follow(d, onAnswer|onUnits|onStart, d.Update) }
func (d *bedDrawing) OnDismount()         { d.S.leave(d) }

func (d *bedDrawing) Render() app.UI {
	if d.S.advice == nil {
		return app.Raw(d.S.before["bed-drawing"])
	}
	return app.Figure().Class("bed").ID("bed-drawing").Body(
		app.Raw(bedSVG(d.S.advice, d.S.system)),
		app.FigCaption().Body(plain(bedWords(d.S.advice, d.S.system))),
	)
}

// The drawing's own space, in units of about a pixel on a tablet.
const (
	bedWide, bedTall = 560.0, 372.0
	groundLine       = 186.0
)

// bedSVG draws the cross-section. One scale serves across and down.
func bedSVG(a *plan.Advice, system unit.System) string {
	b := a.Shape
	f := a.Facts
	scale := min(390/float64(b.Base+0.9*b.Tuck), 420)
	px := func(m unit.Metres) float64 { return float64(m) * scale }
	middle := bedWide / 2
	top := groundLine - px(b.Height)
	crown := top - px(b.Crown)
	left, right := middle-px(b.Top)/2, middle+px(b.Top)/2
	footLeft, footRight := middle-px(b.Base)/2, middle+px(b.Base)/2
	film := filmOf(a)

	s := &svg{}
	s.open("svg", "viewBox", "0 0 "+num(bedWide)+" "+num(bedTall), "role", "img", "aria-labelledby", "bed-title bed-desc", "class", "bed-svg", "xmlns", "http://www.w3.org/2000/svg")
	s.open("title", "id", "bed-title")
	s.raw("The bed cut across, to scale")
	s.close("title")
	s.open("desc", "id", "bed-desc")
	s.raw(escape(bedWords(a, system)))
	s.close("desc")
	s.raw(patterns)

	// Soil: the ground, then the bed, hatched so that it reads without colour.
	s.el("rect", "x", "0", "y", num(groundLine), "width", num(bedWide), "height", num(bedTall-groundLine), "class", "d-soil")
	bed := "M" + num(footLeft) + " " + num(groundLine) + " L" + num(left) + " " + num(top) +
		" Q" + num(middle) + " " + num(2*crown-top) + " " + num(right) + " " + num(top) +
		" L" + num(footRight) + " " + num(groundLine) + " Z"
	s.el("path", "d", bed, "class", "d-soil")
	s.el("rect", "x", "0", "y", num(groundLine), "width", num(bedWide), "height", num(bedTall-groundLine), "class", "d-hatch")
	s.el("path", "d", bed, "class", "d-hatch")

	// Water: one wetted shape for each tape line.
	lines := tapePlaces(a, middle, scale)
	deep := px(rootDepth(f))
	depth := px(a.TapePlan.Depth)
	wide := px(f.Soil.Wetted.Value) / 2
	for _, x := range lines {
		s.el("ellipse", "cx", num(x), "cy", num(crown+depth+deep*0.42), "rx", num(wide), "ry", num(deep*0.5), "class", "d-wet")
	}
	// Plants with their roots.
	for _, x := range plantPlaces(a, middle, scale) {
		drawPlant(s, x, crown+2, deep)
	}
	for _, x := range lines {
		s.el("ellipse", "cx", num(x), "cy", num(crown+depth), "rx", "7", "ry", "3.5", "class", "d-tape")
		s.el("circle", "cx", num(x), "cy", num(crown+depth-3.5), "r", "1.8", "class", "d-emitter")
	}
	// Film over the bed and into the ground on both sides.
	if film != table.NoFilm {
		tuck := px(b.Tuck)
		path := "M" + num(footLeft-tuck*0.45) + " " + num(groundLine+tuck*0.75) + " L" + num(footLeft) + " " + num(groundLine) + " L" + num(left) + " " + num(top-1.5) +
			" Q" + num(middle) + " " + num(2*crown-top-3) + " " + num(right) + " " + num(top-1.5) + " L" + num(footRight) + " " + num(groundLine) +
			" L" + num(footRight+tuck*0.45) + " " + num(groundLine+tuck*0.75)
		s.el("path", "d", path, "class", "d-film-edge")
		s.el("path", "d", path, "class", "d-film d-film-"+film.Key())
	}
	drawMeasures(s, a, system, measures{middle: middle, left: left, right: right, footLeft: footLeft, footRight: footRight, top: top, crown: crown, depth: depth, deep: deep, lines: lines, tuck: px(b.Tuck)})
	s.close("svg")
	return s.b.String()
}

// patterns are the hatches of soil.
const patterns = `<defs><pattern id="soil-dots" width="14" height="12" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1.2" class="d-dot"/><circle cx="10" cy="9" r="0.9" class="d-dot"/></pattern></defs>`

type measures struct {
	middle, left, right, footLeft, footRight, top, crown, depth, deep, tuck float64
	lines                                                                   []float64
}

// labelRoom is how many letters of a label fit beside the plants.
const labelRoom = 15

// wrapped breaks a label behind spaces and hyphens.
func wrapped(label string) (lines []string) {
	line := ""
	for label != "" {
		i := strings.IndexAny(label, " -") + 1
		if i == 0 {
			i = len(label)
		}
		if line != "" && len(line)+len(strings.TrimSpace(label[:i])) > labelRoom {
			lines, line = append(lines, strings.TrimSpace(line)), ""
		}
		line, label = line+label[:i], label[i:]
	}
	return append(lines, strings.TrimSpace(line))
}

func drawMeasures(s *svg, a *plan.Advice, system unit.System, m measures) {
	b := a.Shape
	short := func(v unit.Metres) string { return unit.Of(unit.Short(v)).In(system) }
	line := func(class, path string) { s.el("path", "d", path, "class", class) }
	// Bed top, above the plants.
	y := 40.0
	line("d-measure", "M"+num(m.left)+" "+num(y)+" H"+num(m.right)+" M"+num(m.left)+" "+num(y-6)+" v12 M"+num(m.right)+" "+num(y-6)+" v12")
	s.text(m.middle, y-12, "d-label", "middle", "bed top "+short(b.Top))
	// Height, at the right shoulder.
	if b.Height > 0 {
		x := min(m.footRight+16, bedWide-92)
		line("d-measure", "M"+num(x)+" "+num(m.top)+" V"+num(groundLine)+" M"+num(x-6)+" "+num(m.top)+" h12 M"+num(x-6)+" "+num(groundLine)+" h12")
		s.text(bedWide-8, m.top-12, "d-label", "end", short(b.Height)+" high")
	} else {
		s.text(bedWide-8, groundLine-14, "d-label", "end", "flat bed")
	}
	// Film at the left shoulder, its buried edge below.
	low := bedTall - 66
	if filmOf(a) != table.NoFilm {
		var words []string
		for _, w := range strings.Split(filmWords(a, system), ", ") {
			words = append(words, wrapped(w)...)
		}
		for i, w := range words {
			s.text(8, m.top-12+float64(i-len(words)+1)*24, "d-label", "start", w)
		}
		line("d-leader", "M"+num(70)+" "+num(m.top-4)+" L"+num(m.left+6)+" "+num(m.top-1))
		s.text(8, low, "d-label", "start", short(b.Tuck)+" buried")
		s.text(8, low+24, "d-label", "start", "each side")
		line("d-leader", "M"+num(56)+" "+num(low-22)+" L"+num(m.footLeft-m.tuck*0.4)+" "+num(groundLine+m.tuck*0.7+4))
	}
	// Tape, below right.
	if len(m.lines) > 0 && a.TapePlan.Tape != nil {
		x := m.lines[len(m.lines)-1]
		line("d-leader", "M"+num(x+7)+" "+num(m.crown+m.depth+4)+" L"+num(bedWide-100)+" "+num(low-22))
		s.text(bedWide-8, low, "d-label", "end", "tape "+short(a.TapePlan.Depth)+" deep")
		s.text(bedWide-8, low+24, "d-label", "end", "emitters "+short(a.TapePlan.Tape.Spacing))
	}
	s.text(m.middle, bedTall-12, "d-label", "middle", "roots and wet zone "+short(rootDepth(a.Facts))+" deep")
}

func rootDepth(f *facts.Facts) unit.Metres { return min(f.Crop.RootDepth.Low, 0.3) }

func filmOf(a *plan.Advice) table.FilmID {
	if o, ok := a.Film.Best(); ok && !refused(a) {
		return table.FilmID(o)
	}
	return table.NoFilm
}

// refused tells whether the verdict is not to lay film.
func refused(a *plan.Advice) bool {
	o, ok := a.Verdict.Best()
	return ok && o == question.DoNotLay
}

func filmWords(a *plan.Advice, system unit.System) string {
	words := filmOf(a).Name()
	if i := strings.Index(words, " ("); i > 0 {
		words = words[:i]
	}
	if t, ok := a.ThicknessChosen(); ok {
		words += ", " + unit.Of(t).In(system)
	}
	return words
}

// tapePlaces sets the lines evenly under the bed, a single one beside the
// plant row.
func tapePlaces(a *plan.Advice, middle, scale float64) []float64 {
	n := a.TapePlan.Lines
	if a.TapePlan.Tape == nil {
		return nil
	}
	if n == 1 {
		return []float64{middle + float64(a.TapePlan.Offset)*scale}
	}
	return spreadOver(n, middle, float64(a.Shape.Top)*scale*0.8)
}

func plantPlaces(a *plan.Advice, middle, scale float64) []float64 {
	return spreadOver(min(a.Facts.Rows, 8), middle, float64(a.Shape.Top)*scale*0.9)
}

func spreadOver(n int, middle, width float64) []float64 {
	places := make([]float64, n)
	for i := range places {
		places[i] = middle + width*((float64(i)+0.5)/float64(n)-0.5)
	}
	return places
}

// drawPlant draws two leaves and three roots.
func drawPlant(s *svg, x, y, deep float64) {
	s.el("path", "d", "M"+num(x)+" "+num(y)+" v-34", "class", "d-stem")
	s.el("path", "d", "M"+num(x)+" "+num(y-18)+" c-10 -14 -26 -12 -30 -6 c8 10 20 12 30 6 Z M"+num(x)+" "+num(y-24)+" c10 -14 26 -12 30 -6 c-8 10 -20 12 -30 6 Z", "class", "d-leaf")
	s.el("path", "d", "M"+num(x)+" "+num(y)+" v"+num(deep*0.8)+" M"+num(x)+" "+num(y+deep*0.15)+" q-"+num(deep*0.25)+" "+num(deep*0.2)+" -"+num(deep*0.35)+" "+num(deep*0.5)+
		" M"+num(x)+" "+num(y+deep*0.15)+" q"+num(deep*0.25)+" "+num(deep*0.2)+" "+num(deep*0.35)+" "+num(deep*0.5), "class", "d-root")
}

// bedWords says the drawing in words.
func bedWords(a *plan.Advice, system unit.System) string {
	b := a.Shape
	short := func(v unit.Metres) string { return unit.Of(unit.Short(v)).In(system) }
	var w strings.Builder
	if refused(a) {
		w.WriteString("No film is laid. ")
	} else {
		w.WriteString(sentence(filmWords(a, system)) + ", " + question.Surface.Says(a.Facts.Surfacing).In(system) + ". ")
	}
	if b.Height == 0 {
		w.WriteString("A flat bed, " + short(b.Top) + " wide")
	} else {
		w.WriteString("A bed " + short(b.Height) + " high, " + short(b.Top) + " wide on top and " + short(b.Base) + " at the base, with the middle " + short(b.Crown) + " higher than the shoulders")
	}
	w.WriteString(", beds " + unit.Of(b.Centres).In(system) + " from centre to centre. ")
	if !refused(a) {
		w.WriteString("A roll " + short(b.FilmWidth) + " wide leaves " + short(b.Tuck) + " to bury on each side. ")
	}
	if t := a.TapePlan.Tape; t != nil {
		if a.TapePlan.Lines == 1 {
			w.WriteString("One line of tape, ")
		} else {
			w.WriteString(strconv.Itoa(a.TapePlan.Lines) + " lines of tape, ")
		}
		w.WriteString(short(a.TapePlan.Depth) + " deep with the emitters up and " + short(t.Spacing) + " apart. ")
	}
	if a.Facts.Rows == 1 {
		w.WriteString("One row of plants")
	} else {
		w.WriteString(strconv.Itoa(a.Facts.Rows) + " rows of plants")
	}
	w.WriteString(", with roots and wet zone " + short(rootDepth(a.Facts)) + " deep.")
	return w.String()
}

func sentence(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
