package app

import (
	"strconv"
	"strings"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The drawing's own space, in units of about a pixel on a tablet. With its labels
// around it, as links, it shows the bed from walkway to walkway; with them inside it
// needs room beside and below.
const bedWide = 560.0

// bedSVG draws the cross-section. One scale serves across and down: the bed, the tape,
// the buried edge along the film's path, the wet strip and the depth of the roots.
// Plants, weeds and the thickness of lines are a sketch.
func bedSVG(a *plan.Advice, system unit.System, around bool) string {
	return bedOn(a, system, around, 0)
}

// bedOn does so with the crop as far grown as that, from 0 at planting to 1 at full leaf.
func bedOn(a *plan.Advice, system unit.System, around bool, grown float64) string {
	b := a.Shape
	f := a.Facts
	scale, bedTall, groundLine := min(390/float64(b.Base+0.9*b.Tuck), 420), 372.0, 186.0
	if around {
		scale = min((bedWide-8)/float64(max(b.Centres, b.Base+1.4*b.Tuck)), 420)
		groundLine = 112 + float64(b.Height+b.Crown)*scale
		bedTall = groundLine + max(float64(rootDepth(f)-b.Height), float64(b.Tuck))*scale + 26
	}
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
	s.raw("The bed cut across, to scale; plants are a sketch")
	s.close("title")
	s.open("desc", "id", "bed-desc")
	s.raw(escape(bedWords(a, system)))
	s.close("desc")
	s.raw(patterns)

	// Soil: the ground, then the bed, hatched so that it reads without color.
	s.el("rect", "x", "0", "y", num(groundLine), "width", num(bedWide), "height", num(bedTall-groundLine), "class", "d-soil")
	bed := "M" + num(footLeft) + " " + num(groundLine) + " L" + num(left) + " " + num(top) +
		" Q" + num(middle) + " " + num(2*crown-top) + " " + num(right) + " " + num(top) +
		" L" + num(footRight) + " " + num(groundLine) + " Z"
	s.el("path", "d", bed, "class", "d-soil")
	s.el("rect", "x", "0", "y", num(groundLine), "width", num(bedWide), "height", num(bedTall-groundLine), "class", "d-hatch")
	s.el("path", "d", bed, "class", "d-hatch")

	// The film's edge runs on down beside the bed and turns out; soil is shoveled on it.
	tuck := px(b.Tuck)
	edge := func(foot, out float64) (down, turn string, at [2]float64) {
		x, y := foot+out*tuck*0.24, groundLine+tuck*0.32 // 0.4 of its length
		return num(x) + " " + num(y), num(x+out*tuck*0.6) + " " + num(y), [2]float64{x + out*tuck*0.3, y}
	}
	downLeft, turnLeft, atLeft := edge(footLeft, -1)
	downRight, turnRight, _ := edge(footRight, +1)
	if film != table.NoFilm {
		for _, side := range [...]struct{ foot, out float64 }{{footLeft, -1}, {footRight, +1}} {
			s.el("path", "d", "M"+num(side.foot-side.out*6)+" "+num(groundLine)+" q"+num(side.out*tuck*0.5)+" -26 "+num(side.out*tuck*1.1+side.out*6)+" 0 Z", "class", "d-mound")
		}
	}

	// Water: one wetted shape for each tape line, down to the roots' depth.
	lines := tapePlaces(a, middle, scale)
	deep := px(rootDepth(f))
	depth := px(a.TapePlan.Depth)
	wide := px(f.Soil.Wetted.Value) / 2
	for _, x := range lines {
		from := depth * 0.4
		s.el("ellipse", "cx", num(x), "cy", num(crown+(from+deep)/2), "rx", num(wide), "ry", num((deep-from)/2), "class", "d-wet")
		s.el("ellipse", "cx", num(x), "cy", num(crown+depth+deep*0.16), "rx", num(wide*0.5), "ry", num(deep*0.24), "class", "d-wetter")
	}
	// Plants with their roots.
	for _, x := range plantPlaces(a, middle, scale) {
		drawPlant(s, f.Crop, x, crown+2, deep-2, film != table.NoFilm, 0.8+0.4*grown)
	}
	for _, x := range lines {
		s.el("ellipse", "cx", num(x), "cy", num(crown+depth), "rx", "7", "ry", "3.5", "class", "d-tape")
		s.el("circle", "cx", num(x), "cy", num(crown+depth-3.5), "r", "1.8", "class", "d-emitter")
	}
	if around { // weeds stand where no film lies
		for _, x := range [...]float64{14, 40, bedWide - 46, bedWide - 18} {
			s.el("path", "d", "M"+num(x)+" "+num(groundLine)+" v-9 M"+num(x)+" "+num(groundLine-9)+" q-8 -7 -10 0 M"+num(x)+" "+num(groundLine-9)+" q8 -7 10 0", "class", "d-weed")
		}
	}
	// Film over the bed and into the ground on both sides.
	if film != table.NoFilm {
		path := "M" + turnLeft + " L" + downLeft + " L" + num(footLeft) + " " + num(groundLine) + " L" + num(left) + " " + num(top-1.5) +
			" Q" + num(middle) + " " + num(2*crown-top-3) + " " + num(right) + " " + num(top-1.5) + " L" + num(footRight) + " " + num(groundLine) +
			" L" + downRight + " L" + turnRight
		s.el("path", "d", path, "class", "d-film-edge")
		s.el("path", "d", path, "class", "d-film d-film-"+film.Key())
	}
	if around {
		line := func(path string) { s.el("path", "d", path, "class", "d-lead") }
		dot := func(x, y float64) { s.el("circle", "cx", num(x), "cy", num(y), "r", "4", "class", "d-end") }
		if film != table.NoFilm {
			x := left + (middle-left)*0.3
			line("M70 0 V16 L" + num(x) + " " + num(top-px(b.Crown)*0.5))
			dot(x, top-px(b.Crown)*0.5)
			line("M70 " + num(bedTall) + " V" + num(bedTall-12) + " L" + num(atLeft[0]) + " " + num(atLeft[1]))
			dot(atLeft[0], atLeft[1])
		}
		if b.Height > 0 {
			x := footRight + 10
			line("M" + num(right) + " " + num(top) + " H" + num(x+5) + " M" + num(x) + " " + num(top) + " V" + num(groundLine) + " M" + num(x-5) + " " + num(groundLine) + " h10 M" + num(x) + " " + num((top+groundLine)/2) + " L490 16 V0")
		}
		if len(lines) > 0 {
			x := lines[len(lines)-1]
			line("M490 " + num(bedTall) + " V" + num(bedTall-12) + " L" + num(x+6) + " " + num(crown+depth+3))
		}
		words := "wet strip " + unit.Of(unit.Short(f.Soil.Wetted.Value)).In(system)
		s.text(middle, bedTall-7, "d-label", "middle", words)
	} else {
		drawMeasures(s, a, system, measures{tall: bedTall, ground: groundLine, middle: middle, left: left, right: right, footLeft: footLeft, footRight: footRight, top: top, crown: crown, depth: depth, deep: deep, lines: lines, edge: atLeft})
	}
	s.close("svg")
	return s.b.String()
}

// patterns are the hatches of soil.
const patterns = `<defs><pattern id="soil-dots" width="14" height="12" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1.2" class="d-dot"/><circle cx="10" cy="9" r="0.9" class="d-dot"/></pattern></defs>`

type measures struct {
	tall, ground, middle, left, right, footLeft, footRight, top, crown, depth, deep float64
	lines                                                                           []float64
	edge                                                                            [2]float64
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
		line("d-measure", "M"+num(x)+" "+num(m.top)+" V"+num(m.ground)+" M"+num(x-6)+" "+num(m.top)+" h12 M"+num(x-6)+" "+num(m.ground)+" h12")
		s.text(bedWide-8, m.top-12, "d-label", "end", short(b.Height)+" high")
	} else {
		s.text(bedWide-8, m.ground-14, "d-label", "end", "flat bed")
	}
	// Film at the left shoulder, its buried edge below.
	low := m.tall - 66
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
		line("d-leader", "M"+num(56)+" "+num(low-22)+" L"+num(m.edge[0])+" "+num(m.edge[1]+4))
	}
	// Tape, below right.
	if len(m.lines) > 0 && a.TapePlan.Tape != nil {
		x := m.lines[len(m.lines)-1]
		line("d-leader", "M"+num(x+7)+" "+num(m.crown+m.depth+4)+" L"+num(bedWide-100)+" "+num(low-22))
		s.text(bedWide-8, low, "d-label", "end", "tape "+short(a.TapePlan.Depth)+" deep")
		s.text(bedWide-8, low+24, "d-label", "end", "emitters "+short(a.TapePlan.Tape.Spacing))
	}
	s.text(m.middle, m.tall-12, "d-label", "middle", "roots and wet zone "+short(rootDepth(a.Facts))+" deep")
}

func rootDepth(f *facts.Facts) unit.Metres { return min(f.Crop.RootDepth.Low, 0.3) }

func filmOf(a *plan.Advice) table.FilmID {
	if o, ok := a.Film.Best(); ok && !a.Refused() {
		return table.FilmID(o)
	}
	return table.NoFilm
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
	n := a.TapePlan.Laterals
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

// drawPlant draws a plant in its hole, so large, and its roots down to a depth: blades,
// a vine on the film, a rosette of leaves, or a bush.
func drawPlant(s *svg, c *table.Crop, x, y, deep float64, hole bool, large float64) {
	at := num(x) + " " + num(y)
	if hole {
		s.el("path", "d", "M"+num(x-9)+" "+num(y)+" h18", "class", "d-hole")
	}
	// Each leaf: where it begins beside the stem and above the ground, and where its tip lies from there.
	leaves, stem := [][4]float64{{0, 14, 30, -3}, {0, 24, -27, -3}, {0, 34, 25, -2}, {0, 44, -22, -2}, {0, 52, 20, -2}, {0, 60, -17, -2}}, " v-66"
	broad := 0.4
	switch c.Family {
	case "Amaryllidaceae", "Poaceae", "Zingiberaceae":
		leaves, stem = [][4]float64{{0, 0, -26, -50}, {0, 0, -10, -66}, {0, 0, 10, -66}, {0, 0, 26, -50}}, ""
		broad = 0.07
	case "Cucurbitaceae", "Convolvulaceae":
		leaves, stem = [][4]float64{{-38, 6, -24, -10}, {-18, 14, -24, -14}, {-4, 18, 24, -14}, {18, 14, 24, -14}, {36, 6, 24, -10}}, " q-20 -28 -46 -4 M0 0q20 -28 46 -4"
	default:
		if c.Height.High <= 0.5 {
			leaves, stem = [][4]float64{{0, 0, -36, -14}, {0, 0, -28, -32}, {0, 0, 0, -40}, {0, 0, 28, -32}, {0, 0, 36, -14}}, ""
			broad = 0.2
		}
	}
	path := ""
	for _, l := range leaves {
		out, up := l[2], l[3]
		along := func(share, side float64) string { return num(out*share-up*side) + " " + num(up*share+out*side) }
		path += "M" + num(l[0]) + " " + num(-l[1]) + "c" + along(0.3, broad) + " " + along(0.9, broad) + " " + along(1, 0) + "c" + along(-0.2, -broad) + " " + along(-0.7, -broad) + " " + along(-1, 0) + "Z"
	}
	s.raw(`<g transform="translate(`, at, `) scale(`, num(large), `)"><path class="d-stem" d="M0 0`, stem, `"/><path class="d-leaf" d="`, path, `"/></g>`)
	root := ""
	for _, side := range [...]float64{-1, 1} {
		for _, r := range [...][2]float64{{0.22, 0.95}, {0.4, 0.72}, {0.5, 0.4}} {
			root += " M" + at + " q" + num(side*deep*r[0]*0.3) + " " + num(deep*r[1]*0.5) + " " + num(side*deep*r[0]) + " " + num(deep*r[1])
		}
	}
	s.el("path", "d", "M"+at+" v"+num(deep)+root, "class", "d-root")
	if shape := stored(c); shape != "" {
		s.raw(`<path class="d-store" transform="translate(`, at, `) scale(`, num(large), `)" d="`, shape, `"/>`)
	}
}

// stored is what a crop keeps below the ground and is dug for: a globe, a taper, bulbs,
// knobs or swollen roots. A sketch; empty for all other crops.
func stored(c *table.Crop) string {
	const potato = "a9 6 0 1 0 .1 0z"
	switch {
	case c.Root && c.Family == "Apiaceae":
		return "M-9 0q9-5 18 0q-1 34-9 62q-8-28-9-62z"
	case c.Root:
		return "M0-6c28 0 22 34 2 38l-2 20-2-20c-20-4-26-38 2-38z"
	case c.Group == table.TubersSlip:
		return "M-4 2q-26 6-34 42q22-6 38-40q-4 30 4 54q12-24-1-54q14 30 36 38q-10-34-32-40z"
	case c.Group == table.Bulb && c.Height.High <= 0.7:
		return "M0-12c3 9 13 10 13 20c0 11-26 11-26 0c0-10 10-11 13-20z"
	case c.Family == "Zingiberaceae":
		return "M-34 10q10-10 22-2q4-14 16-4q14-8 22 4q14 2 6 12q-34 10-64 0q-8-4-2-10z"
	case c.Hilled && c.Group == table.RootCrop:
		return "M-30 24" + potato + "M-10 34" + potato + "M18 22" + potato + "M-4 16" + potato
	}
	return ""
}

// bedWords says the drawing in words.
func bedWords(a *plan.Advice, system unit.System) string {
	b := a.Shape
	short := func(v unit.Metres) string { return unit.Of(unit.Short(v)).In(system) }
	var w strings.Builder
	if a.Refused() {
		w.WriteString("No film is laid. ")
	} else {
		w.WriteString(sentence(filmWords(a, system)) + ", " + question.Surface.Says(a.Facts.Surfacing).In(system) + ". ")
	}
	if b.Height == 0 {
		w.WriteString("A flat bed, " + short(b.Top) + " wide")
	} else {
		w.WriteString("A bed " + short(b.Height) + " high, " + short(b.Top) + " wide on top and " + short(b.Base) + " at the base, with the middle " + short(b.Crown) + " higher than the shoulders")
	}
	w.WriteString(", beds " + unit.Of(b.Centres).In(system) + " from center to center. ")
	if !a.Refused() {
		w.WriteString("A roll " + unit.Of(unit.Roll(b.FilmWidth)).In(system) + " wide leaves " + short(b.Tuck) + " to bury on each side. ")
	}
	if t := a.TapePlan.Tape; t != nil {
		if a.TapePlan.Laterals == 1 {
			w.WriteString("One line of tape, ")
		} else {
			w.WriteString(strconv.Itoa(a.TapePlan.Laterals) + " lines of tape, ")
		}
		w.WriteString(short(a.TapePlan.Depth) + " deep with the emitters up and " + short(t.Spacing) + " apart. ")
	}
	if a.Facts.Rows == 1 {
		w.WriteString("One row of plants")
	} else {
		w.WriteString(strconv.Itoa(a.Facts.Rows) + " rows of plants")
	}
	w.WriteString(", with roots and wet zone " + short(rootDepth(a.Facts)) + " deep, the wet strip " + short(a.Facts.Soil.Wetted.Value) + " wide.")
	return w.String()
}

func sentence(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
