//go:build !js

package app

import (
	"cmp"
	"html"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/unit"
)

// What is taken home from a workshop or into a newsletter is drawn when the site is built,
// so the page's program carries none of it: cards, handouts, posters.

// Cards are the farms that have a card: those of the workshop, and two more.
var Cards = slices.Concat(pack.Farms[:], pack.MoreCards[:])

// Mine is the address of the sheet that is filled in by hand, among the handouts.
const Mine = "mine"

// workedOut is a farm with its answers, worked out once for all that is drawn of it.
var workedOut = func() func(id string) *store {
	var mu sync.Mutex
	known := map[string]*store{}
	return func(id string) *store {
		mu.Lock()
		defer mu.Unlock()
		if known[id] == nil {
			i := slices.IndexFunc(Cards, func(f pack.Farm) bool { return f.ID == id })
			s := storeOf(Cards[i].Case())
			s.example, s.farm = true, farmName(&Cards[i].Land)
			s.work()
			known[id] = s
		}
		return known[id]
	}
}()

// toFarm is the address of the tool with a farm's field in it.
func toFarm(f *pack.Farm, base string) string {
	return base + "/#" + linkMark + namedLink(workedOut(f.ID))
}

// Card is the card of one farm, with the address of the whole page.
func Card(f *pack.Farm, base string) app.UI {
	s := workedOut(f.ID)
	return cardOf(s, f.Title, "An invented farm, asked for "+wholeDay(s.c.PlantOn.Value, s.system)+".", f.Lesson, toFarm(f, base))
}

// CardOf is the card of a case, as the page's program draws it.
func CardOf(c field.Case) app.UI {
	s := storeOf(c)
	s.work()
	return (&card{s: s}).Render()
}

// CardBed is a farm's bed as a drawing; what it looks like is left to a style sheet.
func CardBed(f *pack.Farm) string {
	s := workedOut(f.ID)
	return bedSVG(s.advice, s.system, false)
}

// CardWords is a farm's card for a letter that shows no frame and no picture: the
// answers, the lesson and the address, in few words.
func CardWords(f *pack.Farm, address string) string {
	s := workedOut(f.ID)
	a := s.advice
	lines := []string{f.Title + ".", "An invented farm, asked for " + wholeDay(s.c.PlantOn.Value, s.system) + ".", "", verdictLine(a)}
	if a.Refused() {
		lines = append(lines, whyNot(a, s.system))
		for i, instead := range a.Insteads() {
			if i == 0 {
				lines = append(lines, "Instead: "+instead.What.In(s.system))
			}
		}
	} else {
		w := &a.WaitPlan
		lines = append(lines, "Lay "+wholeDay(w.LayOn, s.system)+", plant "+wholeDay(w.PlantOn, s.system)+".")
		for _, r := range sixAnswers(a, s.system) {
			lines = append(lines, r[0]+": "+lower(r[1])+".")
		}
	}
	return strings.Join(append(lines, "", f.Lesson, "", "What about your field?", address), "\n") + "\n"
}

// sixAnswers are the answers with their names.
func sixAnswers(a *plan.Advice, system unit.System) (rows [][2]string) {
	for _, q := range []question.Question{question.Film, question.Thickness, question.Bed, question.Tape, question.Wait} {
		lead, _ := answerWords(a, q, system)
		rows = append(rows, [2]string{answerTitles[q], lead})
	}
	return append(rows, [2]string{"Water", waterLead(a, system)})
}

// whyNot is the reason that forbids film.
func whyNot(a *plan.Advice, system unit.System) string {
	for i := range a.Gates {
		if a.Gates[i].RulesOut {
			return a.Gates[i].Reason.In(system)
		}
	}
	return ""
}

// strongest are the reasons on one side, those that count most first.
func strongest(factors []judge.Factor, sign float64) (list []judge.Factor) {
	for _, f := range factors {
		if f.Points()*sign > 0 {
			list = append(list, f)
		}
	}
	slices.SortStableFunc(list, func(a, b judge.Factor) int { return cmp.Compare(math.Abs(b.Points()), math.Abs(a.Points())) })
	return list[:min(3, len(list))]
}

// toTalkAbout are two questions for the room to each farm.
var toTalkAbout = map[string][2]string{
	"otter-bend":   {"In how many of the last ten springs did frost come after the day you would have chosen?", "What do you do with plants that are ready three weeks before the field is?"},
	"heron-flat":   {"On which day of your own season would you change from black film to white?", "What is a week’s earlier harvest worth to you, and what do burned stems cost?"},
	"lark-rise":    {"What grew on your ground last June before you weeded it?", "Who would pull the weeds under clear film, and when?"},
	"gull-meadow":  {"Which insects came to your squash last summer, and in which week?", "Would you pay for silver in a year without aphids?"},
	"slow-acre":    {"Where does water still stand on your field two days after rain?", "What would a high bed cost you in a dry July?"},
	"quarry-piece": {"What has torn film on your ground: stones, wind, deer or feet?", "Would a second crop on the same film pay for the thicker roll?"},
	"dry-corner":   {"How long does a bucket take to fill at your field’s end of the pipe?", "If the well fell short in July, which beds would go without?"},
	"spear-field":  {"How do you tell purple nutsedge from yellow, and who near you could show it?", "What would you grow there while you fight it?"},
}

// carefully are the cautions that a sheet for the field repeats; onBareGround are those of
// a field without film.
var (
	carefully    = []string{"power-shaft", "run-over", "lifting-film"}
	onBareGround = []string{"power-shaft", "buried-lines"}
)

const lastWord = "Labels, local codes and licensed people overrule this page."

// Handout is one farm on one page of paper. Site is the public address, or "".
func Handout(f *pack.Farm, base, site string) string {
	s := workedOut(f.ID)
	a, c := s.advice, &s.c
	t := &svg{}
	show := func(name string) string {
		in := field.InputByName(name)
		v, _ := in.Get(c)
		return unit.Capital(said(in, v, s.system))
	}
	t.raw(`<main class="handout"><header><div><h1>`, escape(f.Title), `</h1><p class="invented">Invented farm, invented weather</p></div><p class="whose"><b translate="no">Film &amp; Furrow</b><br>`, lastWord, `</p></header><dl class="given">`)
	for _, row := range [...][2]string{
		{"Crop", show("crop")}, {"Place", strconv.FormatFloat(float64(c.Place.Latitude.Value), 'f', -1, 64) + "° north; " + show("place.elevation_m") + " above the sea"},
		{"Soil", show("soil.texture")}, {"Weeds", show("weeds.pressure")}, {"Asked for", wholeDay(c.PlantOn.Value, s.system)}} {
		t.raw(`<div><dt>`, row[0], `</dt><dd>`, escape(row[1]), `</dd></div>`)
	}
	verdict, _ := a.Verdict.Best()
	t.raw(`</dl><section class="verdict verdict-`, question.Verdict.Key(verdict), `"><h2>`, escape(verdictLine(a)), `</h2>`, gatesHTML(a, s.system, ""), `</section>`)
	if a.Refused() {
		t.raw(`<section class="instead">`, insteadHTML(a, s.system), `</section>`)
		if c.Weeds.Nutsedge == "purple" {
			t.raw(weedKey)
		}
	} else {
		t.raw(`<section class="made"><figure>`, bedSVG(a, s.system, false), `</figure><dl>`)
		for _, row := range sixAnswers(a, s.system) {
			t.raw(`<div><dt>`, row[0], `</dt><dd>`, escape(row[1]), `</dd></div>`)
		}
		t.raw(`</dl></section><section class="both">`)
		film := a.Film.Ranked[0]
		for _, side := range [...]struct {
			sign float64
			head string
		}{{1, "For this film"}, {-1, "Against it"}} {
			t.raw(`<div><h2>`, side.head, `</h2><ul>`)
			reasons := strongest(film.Factors, side.sign)
			for i := range reasons {
				t.raw(`<li>`, escape(reasons[i].Reason.In(s.system)), `</li>`)
			}
			if len(reasons) == 0 {
				t.raw(`<li>Nothing speaks against it here.</li>`)
			}
			t.raw(`</ul></div>`)
		}
		t.raw(`</section>`)
	}
	in := field.InputByName(f.Turn)
	was, _ := in.Get(c)
	then := f.Asks.Says(f.Then).In(s.system)
	if f.Asks == question.Day {
		then = "plant from about " + then + ", not from about " + f.Asks.Says(f.Answer).In(s.system)
	}
	t.raw(`<section class="both"><div><h2>What would turn it</h2><p>`, escape(f.Lesson), `</p><p class="turn"><b>`, escape(in.Label), `</b>: `, escape(said(in, f.To, s.system)), ` instead of `, escape(said(in, was, s.system)),
		`. <b>Then:</b> `, escape(then), `.</p></div><div><h2>Talk about it</h2><ol>`)
	for _, ask := range toTalkAbout[f.ID] {
		t.raw(`<li>`, escape(ask), `</li>`)
	}
	t.raw(`</ol></div></section>`)
	care := carefully
	if a.Refused() {
		care = onBareGround
	}
	takeCare(t, a.Cautions, care)
	t.raw(`<footer>`, theCode(site, toFarm(f, base), "QR code of the tool with this field"), `<div><p><b>Try it with your own figures.</b> `)
	if site == "" {
		t.raw(`This copy of the site does not know its own address, so no code stands here. Open it, then “In front of a room: the workshop”: this farm is among the eight.`)
	} else {
		t.raw(`The code opens this very field, free, and without a network from then on:</p><code>`, escape(site+base), `/handout/`, f.ID, `</code><p>`)
	}
	t.raw(`</p></div></footer><nav><a href="`, escape(toFarm(f, base)), `">Open this field in the tool</a> <a href="`, base, `/poster/bed-`, f.ID, `.svg">Poster of the bed</a> <a href="`, base, `/poster/year-`, f.ID, `.svg">Poster of the year</a> <a href="`, base, `/handout/`, Mine, `">A sheet for my field at home</a></nav></main>`)
	return t.b.String()
}

// takeCare lists the cautions of a sheet, each with who has the last word.
func takeCare(t *svg, all []judge.Caution, ids []string) {
	t.raw(`<section class="care"><h2>Take care</h2><ul>`)
	for _, id := range ids {
		for i := range all {
			if c := &all[i]; c.ID == id {
				t.raw(`<li>`, escape(c.Text), ` <em>Last word: `, escape(c.Defers), `.</em></li>`)
			}
		}
	}
	t.raw(`</ul></section>`)
}

// theCode is an address of the site as a QR code; nothing where the site knows none.
func theCode(site, address, title string) string {
	if site == "" {
		return ""
	}
	code, _ := qrSVG(site+address, title)
	return code
}

// OwnHandout is a sheet with blanks for the reader's own field.
func OwnHandout(base, site string) string {
	t := &svg{}
	blank := func(label string, choices ...string) {
		t.raw(`<div><dt>`, label, `</dt><dd>`)
		for _, choice := range choices {
			t.raw(`<span class="choice">`, choice, `</span>`)
		}
		if len(choices) == 0 {
			t.raw(`<span class="blank"></span>`)
		}
		t.raw(`</dd></div>`)
	}
	t.raw(`<main class="handout mine"><header><div><h1>My field at home</h1><p>Fill this in on the field. Then type it into the tool: six answers, with every reason.</p></div><p class="whose"><b translate="no">Film &amp; Furrow</b><br>`, lastWord, `</p></header><dl class="blanks">`)
	blank("Crop")
	blank("Day wanted for planting")
	blank("Town or ZIP code")
	blank("How it is set", "set out", "sown")
	blank("Soil, rubbed wet between the fingers", "gritty: sand", "floury: silt", "sticky: clay", "some of each: loam")
	blank("A hole full of water, filled twice, is empty", "within the hour: quick", "within the day: fair", "later: slow")
	blank("Weeds last June", "light", "moderate", "heavy")
	blank("Nutsedge: a stem with three edges", "none", "yellow", "purple", "not sure")
	blank("Length of a bed, and how many")
	blank("Laid by", "hand", "tractor")
	blank("Horsepower of the tractor, people on the day")
	blank("Stones wider than a plum in ten paces")
	t.raw(`</dl><section class="made"><div><h2>Water: the bucket test</h2>`, bucketPicture, `<p>Run the water half an hour, with no other tap open.</p><p>Then time how long it takes to fill a bucket at the field’s end of the pipe.</p>
<dl class="blanks"><div><dt>Bucket holds</dt><dd><span class="blank"></span></dd></div><div><dt>Seconds to fill it</dt><dd><span class="blank"></span></dd></div><div><dt>Hours a day it may run</dt><dd><span class="blank"></span></dd></div></dl></div>
<div><h2>Is the ground ready? Squeeze a handful</h2><ol class="balls">`)
	for _, b := range [...][2]string{{"crumbles", "Dust that will not hold: too dry. Water first."}, {"breaks", "A ball that breaks when poked: moist. Lay."}, {"ribbons", "A ribbon that shines: too wet. Wait."}} {
		t.raw(`<li>`, ball(b[0]), `<p>`, b[1], `</p></li>`)
	}
	t.raw(`</ol></div></section><section><h2>What came out</h2><dl class="blanks out">`)
	for _, label := range [...]string{"Film", "Thickness", "Bed", "Drip tape", "Wait", "Water", "Lay on", "Plant on"} {
		blank(label)
	}
	t.raw(`</dl></section>`)
	takeCare(t, judge.Cautions(), carefully)
	t.raw(`<footer>`, theCode(site, base+"/", "QR code of the tool"), `<div><p><b>Where to type it in.</b> `)
	if site == "" {
		t.raw(`This copy of the site does not know its own address, so no code stands here. Ask whoever gave you this sheet.`)
	} else {
		t.raw(`The code opens the tool, free, and without a network from then on:</p><code>`, escape(site+base), `/</code><p>`)
	}
	t.raw(`</p></div></footer><nav><a href="`, base, `/">Open the tool</a></nav></main>`)
	return t.b.String()
}

// The posters are drawn on A3, in millimetres. From three metres one reads capitals of a
// centimetre, so answers are set in 14 mm where they fit; whose they are, and the days of the
// year's films, in what is left. Rule of thumb, from memory.
const (
	posterWide, posterHigh = 420.0, 297.0
	posterInk              = "#1f1a14"
	posterStop             = "#8a1c12"
)

type poster struct {
	svg
	tongue func(words string) string // says them in another language; nil for English
}

// letter is how wide a letter of a bold line is taken to be, in its height: wider than in
// most system fonts, since nothing here can measure the one that the printer has.
const letter = 0.66

// say has a poster speak a language.
func (p *poster) say(words string) string {
	if p.tongue == nil {
		return words
	}
	return p.tongue(words)
}

// labels has the words of a drawing said.
func (p *poster) labels(drawing string) string {
	return posterText.ReplaceAllStringFunc(drawing, func(found string) string {
		open, words, _ := strings.Cut(strings.TrimSuffix(found, "<"), ">")
		return open + ">" + escape(p.say(html.UnescapeString(words))) + "<"
	})
}

var posterText = regexp.MustCompile(`<(?:text|title|desc)[^>]*>[^<]+<`)

// line writes one line of the poster, smaller where it would not fit. Anchor is start,
// middle or end.
func (p *poster) line(x, y, size float64, weight, fill, anchor, words string) {
	p.said(x, y, size, weight, fill, anchor, p.say(words))
}

// said writes a line that is in the poster's language.
func (p *poster) said(x, y, size float64, weight, fill, anchor, words string) {
	size = min(size, (posterWide-28)/(letter*float64(len([]rune(words)))))
	p.el2("text", words, "x", num(x), "y", num(y), "font-family", "system-ui, sans-serif", "font-size", num(size), "font-weight", weight, "fill", fill, "text-anchor", anchor)
}

func (p *poster) el2(name, words string, attributes ...string) {
	p.open(name, attributes...)
	p.raw(escape(words))
	p.close(name)
}

// begin opens a poster with its title, farm and foot.
func (p *poster) begin(f *pack.Farm, title, words string) {
	p.open("svg", "xmlns", "http://www.w3.org/2000/svg", "width", num(posterWide)+"mm", "height", num(posterHigh)+"mm", "viewBox", "0 0 "+num(posterWide)+" "+num(posterHigh), "role", "img", "aria-labelledby", "poster-title")
	p.el2("title", p.say(f.Title)+": "+p.say(title), "id", "poster-title")
	p.el("rect", "width", num(posterWide), "height", num(posterHigh), "fill", "#fffdf8")
	p.line(14, posterHigh-9, 9, "400", posterInk, "start", f.Title)
	p.line(posterWide-14, posterHigh-9, 9, "400", posterInk, "end", words)
}

func (p *poster) end() string {
	p.close("svg")
	return p.b.String()
}

// inset puts a drawing at a place, in a box.
func (p *poster) inset(x, y, wide, high float64, drawing string) {
	p.raw(strings.Replace(drawing, "<svg ", `<svg x="`+num(x)+`" y="`+num(y)+`" width="`+num(wide)+`" height="`+num(high)+`" `, 1))
}

const inventedFarm = "An invented farm"

// head writes the verdict and both dates.
func (p *poster) head(s *store) {
	a := s.advice
	if a.Refused() {
		p.line(14, 34, 27, "700", posterStop, "start", verdictLine(a))
		p.line(14, 56, 14, "400", posterInk, "start", "Asked for "+wholeDay(s.c.PlantOn.Value, s.system))
		return
	}
	p.line(14, 34, 27, "700", posterInk, "start", verdictLine(a))
	p.line(14, 56, 16, "400", posterInk, "start", "Lay "+wholeDay(a.WaitPlan.LayOn, s.system)+", plant "+wholeDay(a.WaitPlan.PlantOn, s.system))
}

// BedPoster is a farm's bed with its labels as answers. What the bed looks like is left
// to a style sheet.
func BedPoster(f *pack.Farm, tongue func(string) string) string {
	s := workedOut(f.ID)
	a := s.advice
	p := &poster{tongue: tongue}
	p.begin(f, "the bed", inventedFarm)
	p.head(s)
	if a.Refused() {
		texts := []string{whyNot(a, s.system)}
		if list := a.Insteads(); len(list) > 0 {
			texts = append(texts, list[0].What.In(s.system))
		}
		size := p.fitting(14, 392, posterFoot-84-52*float64(len(texts)-1), texts...)
		y := p.paragraph(14, 84, size, 392, texts[0])
		if len(texts) > 1 {
			p.line(14, y+29, 18, "700", posterInk, "start", "Instead")
			p.paragraph(14, y+52, size, 392, texts[1])
		}
		return p.end()
	}
	size := "25" // 14 mm
	if tongue != nil {
		size = "16" // 9 mm: words of other languages are longer
	}
	labels := p.labels(strings.ReplaceAll(bedSVG(a, s.system, false), `class="d-label"`, `class="d-label" font-size="`+size+`"`))
	if tongue != nil {
		labels = p.filmLabel(labels, filmWords(a, s.system), size)
	}
	p.inset(10, 62, 318, 214, labels)
	rows := append(sixAnswers(a, s.system)[4:], [2]string{"Crop", unit.Capital(said(field.InputByName("crop"), field.Value{Word: s.c.Crop}, s.system))})
	var words []string
	for _, row := range rows {
		words = append(words, row[1])
	}
	y, large := 92.0, p.fitting(16, 74, posterFoot-92-18-38*float64(len(rows)-1), words...)
	for _, row := range rows {
		p.line(336, y, 12, "400", posterInk, "start", row[0])
		y = p.paragraph(336, y+18, large, 74, row[1]) + 20
	}
	return p.end()
}

// posterFoot is the lowest line above whose poster it is.
const posterFoot = posterHigh - 24

// ownLabel is the film's label at the bed's left shoulder: the first run of lines there.
var ownLabel = regexp.MustCompile(`(?:<text x="8\.0" y="([\d.]+)"[^>]*>[^<]*</text>)+`)

// filmLabel breaks the film's label anew where another language says it: its lines were
// broken for English, and word by word they are in no order.
func (p *poster) filmLabel(drawing, words, size string) string {
	at := ownLabel.FindStringSubmatchIndex(drawing)
	var lines []string
	for part := range strings.SplitSeq(words, ", ") {
		line := ""
		for word := range strings.FieldsSeq(p.say(part)) {
			if line != "" && len([]rune(line+" "+word)) > labelRoom {
				lines, line = append(lines, line), ""
			}
			line = strings.TrimSpace(line + " " + word)
		}
		lines = append(lines, line)
	}
	low, _ := strconv.ParseFloat(drawing[at[2]:at[3]], 64) // of the last line
	t := &svg{}
	for i, line := range lines {
		t.text(8, low+19*float64(i+1-len(lines)), `d-label" font-size="`+size, "start", line)
	}
	return drawing[:at[0]] + t.b.String() + drawing[at[1]:]
}

// paragraph writes text in lines that fit a width, and gives where the last one stands.
func (p *poster) paragraph(x, y, size, wide float64, words string) float64 {
	size, lines := p.broken(size, wide, words)
	for i, line := range lines {
		p.said(x, y+float64(i)*size*1.2, size, "600", posterInk, "start", line)
	}
	return y + float64(len(lines)-1)*size*1.2
}

// broken is a text in lines of a width, and how large they are.
func (p *poster) broken(size, wide float64, words string) (float64, []string) {
	words = p.say(words)
	for word := range strings.FieldsSeq(words) { // the longest sets the size
		size = min(size, wide/(letter*float64(len([]rune(word)))))
	}
	lines := []string{""}
	for word := range strings.FieldsSeq(words) {
		last := &lines[len(lines)-1]
		if longer := strings.TrimSpace(*last + " " + word); float64(len([]rune(longer)))*size*letter <= wide || *last == "" {
			*last = longer
			continue
		}
		lines = append(lines, word)
	}
	return size, lines
}

// fitting is how large texts are, size at the most, if what stands below their first lines
// is no higher in all than that.
func (p *poster) fitting(size, wide, high float64, texts ...string) float64 {
	for ; size > posterSmallest; size -= 0.5 {
		sum := 0.0
		for _, text := range texts {
			s, lines := p.broken(size, wide, text)
			sum += float64(len(lines)-1) * s * 1.2
		}
		if sum <= high {
			break
		}
	}
	return size
}

// posterSmallest is how small the text beside a bed may become.
const posterSmallest = 10

// YearPoster is what to lay for planting when, as a band of films and in words.
func YearPoster(f *pack.Farm, tongue func(string) string) string {
	s := workedOut(f.ID)
	work := search.NewYear(s.ground, s.c)
	for !work.Step(52) {
	}
	spans := work.Spans()
	p := &poster{tongue: tongue}
	p.begin(f, yearTitle, inventedFarm)
	p.raw(strings.TrimSuffix(strings.TrimPrefix(filmPatterns, filmPatterns[:strings.Index(filmPatterns, "<defs>")]), "</svg>"))
	p.line(14, 32, 25, "700", posterInk, "start", yearTitle)
	crop := unit.Capital(said(field.InputByName("crop"), field.Value{Word: s.c.Crop}, s.system))
	if s.advice.Refused() {
		p.line(14, 53, 14, "400", posterInk, "start", crop+", asked for "+wholeDay(s.c.PlantOn.Value, s.system)+" (the line)")
	} else {
		p.line(14, 53, 14, "400", posterInk, "start", crop+": lay "+dayOfYear(s.advice.WaitPlan.LayOn, s.system)+", plant "+wholeDay(s.advice.Facts.Plant, s.system)+" (the line)")
	}
	first := spans[0].From
	const left, wide, top, high = 14.0, 392.0, 66.0, 52.0
	at := func(d unit.Date) float64 { return left + wide*float64(d.Minus(first))/365 }
	for _, span := range spans {
		p.el("rect", "class", "m-"+spanKey(span), "x", num(at(span.From)), "y", num(top), "width", num(at(span.To.Plus(1))-at(span.From)), "height", num(high), "stroke", posterInk, "stroke-width", "0.7")
	}
	year, _, _ := first.Civil()
	for m := 1; m <= 12; m++ {
		x := at(unit.On(year, m, 1))
		p.el("path", "d", "M"+num(x)+" "+num(top+high)+"v5", "stroke", posterInk, "stroke-width", "0.7")
		p.line(x+wide/24, top+high+15, 12, "400", posterInk, "middle", unit.MonthName(m)[:3])
	}
	x := at(s.advice.Facts.Plant)
	p.el("path", "d", "M"+num(x)+" "+num(top-3)+"v"+num(high+6), "stroke", "#fffdf8", "stroke-width", "5")
	p.el("path", "d", "M"+num(x)+" "+num(top-3)+"v"+num(high+6), "stroke", posterStop, "stroke-width", "2.2")
	// Each answer once, with all its runs of weeks.
	type answer struct{ key, words, when string }
	var answers []answer
	for _, span := range spans {
		when := dayOfYear(span.From, s.system) + " to " + dayOfYear(span.To, s.system)
		i := slices.IndexFunc(answers, func(a answer) bool { return a.key == spanKey(span) })
		if i < 0 {
			answers = append(answers, answer{spanKey(span), sentence(spanWords(span)), when})
			continue
		}
		answers[i].when += "; " + when
	}
	room := (posterHigh - 26 - 142) / float64(len(answers))
	size := min(14, room*0.4)
	for i, a := range answers {
		y := 142 + room*float64(i)
		p.el("rect", "class", "m-"+a.key, "x", "14", "y", num(y), "width", "40", "height", num(min(room*0.8, 30)), "stroke", posterInk, "stroke-width", "0.7")
		p.line(62, y+size, size, "700", posterInk, "start", a.words)
		p.line(62, y+size*2.15, size*0.85, "400", posterInk, "start", a.when)
	}
	return p.end()
}
