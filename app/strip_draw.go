package app

import (
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The strip's own space in pixels, downwards. Across, it takes what room there
// is: places are percentages, so that type and lines keep their size at any
// width. Names stand in the margin to the right.
const (
	stripTop    = 64.0 // the planting and laying days stand above
	stripTall   = 380.0
	stripFoot   = 36.0 // the months
	labelGap    = 21.0 // least distance between two names
	labelLeader = 22.0
)

// percent writes a place across.
func percent(share float64) string { return strconv.FormatFloat(100*share, 'f', 2, 64) + "%" }

// strips turns days and temperatures into places.
type strips struct {
	from      unit.Date
	days      int
	low, high unit.Celsius
}

func (g *strips) x(day unit.Date) float64 { return float64(day.Minus(g.from)) / float64(g.days-1) }

func (g *strips) y(t unit.Celsius) float64 {
	return stripTop + stripTall*(1-float64(t-g.low)/float64(g.high-g.low))
}

// steps are the temperatures that get a line and a figure, in the reader's
// degrees.
func (g *strips) steps(system unit.System) (list []unit.Celsius) {
	step := unit.FromFahrenheit(10 + 32)
	first := unit.FromFahrenheit(0)
	if system == unit.Metric {
		step, first = 5, 0
	}
	for t := first + step*unit.Celsius(math.Ceil(float64((g.low-first)/step))); t <= g.high+0.001; t += step {
		list = append(list, t)
	}
	return list
}

func gridOf(f *facts.Facts, s *facts.SoilSeason) *strips {
	g := &strips{from: s.From, days: len(s.Days[facts.Bare]), low: f.CoverFloor() - 2, high: f.Ceiling + 2}
	for cover := range s.Days {
		for i := range s.Days[cover] {
			d := &s.Days[cover][i]
			g.low, g.high = min(g.low, d.Mean), max(g.high, d.Mean)
			if cover == f.ChosenCover() {
				g.low, g.high = min(g.low, d.BandLow), max(g.high, d.BandHigh)
			}
		}
	}
	g.low, g.high = unit.Celsius(math.Floor(float64(g.low))-1), unit.Celsius(math.Ceil(float64(g.high))+1)
	return g
}

// curve writes a path through every third day, across a box 1000 wide.
func (g *strips) curve(days []facts.SoilDay, read func(*facts.SoilDay) unit.Celsius) string {
	var b strings.Builder
	for i := 0; i < len(days); i++ {
		if i%3 != 0 && i != len(days)-1 {
			continue
		}
		if i == 0 {
			b.WriteByte('M')
		} else {
			b.WriteByte('L')
		}
		b.WriteString(num(1000 * float64(i) / float64(g.days-1)))
		b.WriteByte(' ')
		b.WriteString(num(g.y(read(&days[i])) - stripTop))
	}
	return b.String()
}

func mean(d *facts.SoilDay) unit.Celsius { return d.Mean }

// stripSVG draws the strip.
func stripSVG(a *plan.Advice, s *facts.SoilSeason, system unit.System, words []string) string {
	f := a.Facts
	g := gridOf(f, s)
	w := &svg{}
	w.open("svg", "class", "strip-svg", "role", "img", "aria-labelledby", "strip-title strip-desc", "xmlns", "http://www.w3.org/2000/svg")
	w.raw(`<title id="strip-title">Soil warmth under each film, day by day</title><desc id="strip-desc">`, escape(strings.Join(words, " ")), `</desc>`)
	g.drawGrid(w, system)
	g.drawCurves(w, f, s)
	wants := g.drawWants(w, f, s, system)
	g.drawNames(w, f, s)
	g.drawDays(w, a, s, system)
	w.raw(wants)
	w.close("svg")
	return w.b.String()
}

func (g *strips) drawGrid(w *svg, system unit.System) {
	bottom := num(stripTop + stripTall)
	w.raw(`<rect class="s-ground" x="0" y="`, num(stripTop), `" width="100%" height="`, num(stripTall), `"/>`)
	for _, t := range g.steps(system) {
		y := num(g.y(t))
		w.raw(`<line class="s-grid" x1="0" x2="100%" y1="`, y, `" y2="`, y, `"/>`)
		w.raw(`<text class="s-figure" x="0" dx="-8" dy="5" y="`, y, `" text-anchor="end">`, unit.KindTemperature.Figure(float64(t), system), `</text>`)
	}
	w.raw(`<text class="s-figure" x="0" dx="-8" y="`, num(stripTop-40), `" text-anchor="end">`, unit.KindTemperature.Symbol(system), `</text>`)
	for day, n := g.from, 0; day < g.from.Plus(unit.Days(g.days)); n++ {
		year, month, _ := day.Civil()
		next := day.Plus(unit.Days(unit.DaysIn(year, month)))
		if n > 0 {
			at := percent(g.x(day))
			w.raw(`<line class="s-grid" x1="`, at, `" x2="`, at, `" y1="`, num(stripTop), `" y2="`, bottom, `"/>`)
		}
		class := "s-month"
		if n%2 == 1 {
			class += " s-other"
		}
		w.raw(`<text class="`, class, `" text-anchor="middle" x="`, percent((g.x(day)+g.x(next.Plus(-1)))/2), `" y="`, num(stripTop+stripTall+24), `">`, unit.MonthName(month)[:3], `</text>`)
		day = next
	}
}

// drawCurves draws the band of the chosen film, the other covers, and the
// chosen one on top.
func (g *strips) drawCurves(w *svg, f *facts.Facts, s *facts.SoilSeason) {
	chosen := f.ChosenCover()
	w.raw(`<svg x="0" y="`, num(stripTop), `" width="100%" height="`, num(stripTall), `" viewBox="0 0 1000 `, num(stripTall), `" preserveAspectRatio="none">`)
	upper := g.curve(s.Days[chosen], func(d *facts.SoilDay) unit.Celsius { return d.BandHigh })
	lower := g.curve(s.Days[chosen], func(d *facts.SoilDay) unit.Celsius { return d.BandLow })
	points := strings.Split(lower[1:], "L")
	slices.Reverse(points)
	w.raw(`<path class="s-band" d="`, upper, "L", strings.Join(points, "L"), `Z"/>`)
	w.raw(`<path class="s-edge" d="`, upper, `"/><path class="s-edge" d="`, lower, `"/>`)
	for cover := range s.Days {
		if cover != chosen {
			w.raw(`<path class="s-line s-`, coverKey(cover), `" d="`, g.curve(s.Days[cover], mean), `"/>`)
		}
	}
	line := g.curve(s.Days[chosen], mean)
	w.raw(`<path class="s-case" d="`, line, `"/><path class="s-line s-chosen s-`, coverKey(chosen), `" d="`, line, `"/></svg>`)
}

func coverKey(cover int) string {
	if cover == facts.Bare {
		return "bare"
	}
	return table.Films[cover].ID
}

// drawWants draws what the crop wants, and gives the names, which go over all else. Each
// stands where the curves are farther away: at either end above its line, and the floor
// under covers below it too, or alone where the next line is near.
func (g *strips) drawWants(w *svg, f *facts.Facts, s *facts.SoilSeason, system unit.System) string {
	names := &svg{}
	for _, want := range []struct {
		name string
		at   unit.Celsius
		down float64
	}{{"too hot from", f.Ceiling, -7}, {"plant<tspan class=\"s-word\"> from</tspan>", f.WorkFloor, -7}, {"<tspan class=\"s-with\">with </tspan>covers<tspan class=\"s-word\"> from</tspan>", f.CoverFloor(), 19}} {
		if want.down > 0 && want.at == f.WorkFloor { // covers help only crops that want warm ground
			continue
		}
		y := num(g.y(want.at))
		w.raw(`<line class="s-want" x1="0" x2="100%" y1="`, y, `" y2="`, y, `"/>`)
		place, most := "", -1.0
		for _, down := range [...]float64{-7, want.down} {
			if down != want.down && g.y(want.at)-g.y(f.WorkFloor) < labelGap+7 {
				continue
			}
			for end, words := range [...]string{`" x="0" dx="6"`, ` s-left" x="100%"`} {
				if far := g.clear(f, s, g.y(want.at)+down-5, end*(g.days-g.days/3)); far > most {
					place, most = words+` dy="`+num(down), far
				}
			}
		}
		names.raw(`<text class="s-label`, place, `" y="`, y, `">`, want.name, " ", temperature(want.at, system), `</text>`)
	}
	return names.b.String()
}

// clear is how far a name at this height stays from the two curves that always show, over
// a third of the days.
func (g *strips) clear(f *facts.Facts, s *facts.SoilSeason, at float64, from int) float64 {
	least := stripTall
	for _, cover := range [...]int{f.ChosenCover(), facts.Bare} {
		for i := from; i < from+g.days/3; i++ {
			least = min(least, math.Abs(g.y(s.Days[cover][i].Mean)-at))
		}
	}
	return least
}

// drawNames names each line at its end. Names that would meet are moved apart
// and led back to their line.
func (g *strips) drawNames(w *svg, f *facts.Facts, s *facts.SoilSeason) {
	ends := make([]float64, len(s.Days))
	for cover := range s.Days {
		ends[cover] = g.y(s.Days[cover][g.days-1].Mean)
	}
	places := apart(ends, labelGap, stripTop+6, stripTop+stripTall-2)
	w.raw(`<svg x="100%" y="0" width="1" height="`, num(stripTop+stripTall), `" overflow="visible">`)
	for cover := range s.Days {
		class := "s-name"
		if cover == f.ChosenCover() {
			class += " s-name-chosen"
		}
		if cover == facts.Bare {
			class += " s-name-bare"
		}
		w.raw(`<path class="s-line s-leader s-`, coverKey(cover), `" d="M0 `, num(ends[cover]), ` L`, num(labelLeader-8), ` `, num(places[cover]), ` h6"/>`)
		w.raw(`<text class="`, class, `" x="`, num(labelLeader+2), `" y="`, num(places[cover]+5), `">`, coverLabel(cover), `</text>`)
	}
	w.raw(`</svg>`)
}

// apart moves places along a line until no two are nearer than a gap, none
// leaves the bounds, and all keep their order: clusters are spread about their
// own middle.
func apart(wanted []float64, gap, low, high float64) []float64 {
	order := make([]int, len(wanted))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return wanted[order[a]] < wanted[order[b]] })
	type cluster struct {
		middle float64
		n      int
	}
	var clusters []cluster
	start := func(c cluster) float64 {
		half := gap * float64(c.n-1) / 2
		return min(max(c.middle, low+half), high-half) - half
	}
	for _, i := range order {
		clusters = append(clusters, cluster{wanted[i], 1})
		for len(clusters) > 1 {
			a, b := clusters[len(clusters)-2], clusters[len(clusters)-1]
			if start(a)+gap*float64(a.n) <= start(b) {
				break
			}
			n := a.n + b.n
			clusters = append(clusters[:len(clusters)-2], cluster{(a.middle*float64(a.n) + b.middle*float64(b.n)) / float64(n), n})
		}
	}
	places := make([]float64, len(wanted))
	k := 0
	for _, c := range clusters {
		for j := range c.n {
			places[order[k]] = start(c) + gap*float64(j)
			k++
		}
	}
	return places
}

// drawDays marks the day of planting, the day of laying, and the days on which
// the chosen film holds the two floors.
func (g *strips) drawDays(w *svg, a *plan.Advice, s *facts.SoilSeason, system unit.System) {
	f := a.Facts
	chosen := f.ChosenCover()
	for _, mark := range []struct {
		on   unit.Optional[unit.Date]
		name string
	}{{s.Marks[chosen].Covers, "warm enough with covers"}, {s.Marks[chosen].Warm, "warm enough to plant"}} {
		i := int(mark.on.Value.Minus(g.from))
		if !mark.on.Given || i < 0 || i >= g.days {
			continue
		}
		w.raw(`<circle class="s-mark" cx="`, percent(g.x(mark.on.Value)), `" cy="`, num(g.y(s.Days[chosen][i].Mean)), `" r="6"><title>`, mark.name, ` from `, dayOfYear(mark.on.Value, system), `</title></circle>`)
	}
	bottom, name := num(stripTop+stripTall), ""
	if lay := a.WaitPlan.LayOn; !a.FilmDown() && lay >= g.from && lay < g.from.Plus(unit.Days(g.days)) {
		at := percent(g.x(lay))
		w.raw(`<line class="s-lay" x1="`, at, `" x2="`, at, `" y1="42" y2="`, bottom, `"/>`)
		side := "s-left"
		if lay > f.Plant {
			side = sideClass(lay, g.from, g.days)
		} else if g.x(lay) < 0.25 {
			side += " s-near" // on a wide screen it would lie over the figures
		}
		name = `<text class="s-label ` + side + `" x="` + at + `" y="50">lay<tspan class="s-date"> ` + dayOfYear(lay, system) + `</tspan></text>`
	}
	away := ""
	if f.Plant < g.from || f.Plant >= g.from.Plus(unit.Days(g.days)) {
		away = ` display="none"` // another season's day
	}
	at := percent(g.x(f.Plant))
	w.raw(`<line id="strip-now"`, away, ` class="s-now" x1="`, at, `" x2="`, at, `" y1="12" y2="`, num(stripTop+stripTall+stripFoot), `"/>`)
	w.raw(`<text id="strip-now-label"`, away, ` class="`, nowClass(f.Plant, g.from, g.days), `" x="`, at, `" y="24">plant `, dayOfYear(f.Plant, system), `</text>`, name)
}

// nowClass sets the planting day's name to the side where there is room.
func nowClass(day, from unit.Date, days int) string {
	return "s-label s-now-label " + sideClass(day, from, days)
}

func sideClass(day, from unit.Date, days int) string {
	if 2*int(day.Minus(from)) > days {
		return "s-left"
	}
	return "s-right"
}
