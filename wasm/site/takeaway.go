//go:build !js

package site

import (
	"fmt"
	"strings"

	"golang.org/x/net/html"

	"filmfurrow/app"
	"filmfurrow/rules/pack"
	"filmfurrow/wasm/tongue"
)

// What a workshop or a newsletter takes along is made when the site is built: pages and
// files without any program. The worker keeps them as it keeps all else.

// takePath is the address of the list of all that is taken along.
const takePath = "/takeaway"

// speaker is the speaker's own window beside the room's: notes, what comes next, the time.
// It carries no program: the room tells it what is shown (static/speaker.js).
var speaker = Page{Path: "/speaker", Title: "Speaker’s window – " + siteName, Description: "Notes, what comes next and the time, beside the picture that the room sees."}

const speakerHTML = `<main class="speaker"><h1 id="speaker-head">Speaker’s window</h1><p id="speaker-step">Open the workshop in another window of this browser.</p><p id="speaker-clock" translate="no"></p><section><h2>Notes</h2><p id="speaker-notes"></p></section><section><h2>The lesson</h2><p id="speaker-lesson"></p></section><section><h2>Next</h2><p id="speaker-next"></p></section><nav><button type="button" id="speaker-back">Back</button> <button type="button" id="speaker-go">Next</button></nav></main>`

// takeAway makes a farm's handout, its posters, and each card as a picture and in words;
// further a sheet with blanks and the page of all of it. It gives the pages that it made.
func takeAway(files map[string][]byte, base, site string, links assets, css string) ([]Page, error) {
	l, spoken := looks(css), map[string]*tongue.Catalogue{}
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		if err != nil {
			return nil, err
		}
		spoken[name] = c
	}
	var pages []Page
	add := func(p Page, body string) (err error) {
		pages = append(pages, p)
		files[fileOf(p.Path)], err = plainPage(p, base, site, body, links, l.dress)
		return err
	}
	draw := func(name, drawing string) (err error) {
		files[name], err = l.alone(drawing)
		return err
	}
	for i := range pack.Farms {
		f := &pack.Farms[i]
		err := add(Page{Path: "/handout/" + f.ID, Title: f.Title + " – a handout of " + siteName, Description: f.Lesson}, app.Handout(f, base, site))
		if err != nil {
			return nil, err
		}
		says := map[string]func(string) string{"": nil}
		for name, c := range spoken {
			says["."+name] = func(words string) string {
				said, _ := c.Say(words)
				return said
			}
		}
		for name, say := range says {
			if err := draw("poster/bed-"+f.ID+name+".svg", app.BedPoster(f, say)); err != nil {
				return nil, err
			}
			if err := draw("poster/year-"+f.ID+name+".svg", app.YearPoster(f, say)); err != nil {
				return nil, err
			}
		}
	}
	for i := range app.Cards {
		f := &app.Cards[i]
		if err := draw("card/"+f.ID+".svg", app.CardBed(f)); err != nil {
			return nil, err
		}
		words := app.CardWords(f, cardAddress(site, base, f.ID))
		files["card/"+f.ID+".txt"] = []byte(words)
		for name, c := range spoken {
			said := strings.Split(words, "\n")
			for k := range said {
				said[k], _ = c.Say(said[k])
			}
			files["card/"+f.ID+"."+name+".txt"] = []byte(strings.Join(said, "\n"))
		}
	}
	err := add(Page{Path: "/handout/" + app.Mine, Title: "My field at home – " + siteName, Description: "A sheet to fill in on the field, before it is typed into the tool."}, app.OwnHandout(base, site))
	if err != nil {
		return nil, err
	}
	for _, q := range app.Ballots() {
		err := add(Page{Path: "/ballot/" + q.String(), Title: app.BallotTitle(q) + " – " + siteName, Description: "A ballot for a workshop: tap an answer and hold the screen up."}, app.Ballot(q, base))
		if err != nil {
			return nil, err
		}
	}
	if err := add(speaker, speakerHTML); err != nil {
		return nil, err
	}
	if err := add(Page{Path: "/ballots", Title: "Vote with your own phone – " + siteName, Description: "Codes that lead to the ballots of a workshop."}, app.BallotCodes(base, site)); err != nil {
		return nil, err
	}
	return pages, add(Page{Path: takePath, Title: "For teachers and editors – " + siteName, Description: "Handouts, posters and cards of invented farms, ready to print and to put into a newsletter."}, takeAwayHTML(base, site, files))
}

// inItself is how each language says that the words are in it.
var inItself = map[string]string{"es": "Las palabras en español"}

// postersInItself name the posters of the bed and of the year likewise.
var postersInItself = map[string][2]string{"es": {"Cartel de la cama en español", "Cartel del año en español"}}

// ownAddress stands where the site does not know its own.
const ownAddress = "https://ADDRESS-OF-THIS-SITE"

func cardAddress(site, base, id string) string {
	if site == "" {
		site = ownAddress
	}
	return site + base + "/card/" + id
}

// CardFrame is what an editor pastes for a card. Its height is enough for each of ours at
// every width from 320 px (TestEachCardIsWholeInTheFrameThatIsOffered).
func CardFrame(site, base string, f *pack.Farm) string {
	return fmt.Sprintf(`<iframe title="%s" src="%s" width="360" height="%d" loading="lazy"></iframe>`,
		html.EscapeString(f.Title+": an invented farm"), html.EscapeString(cardAddress(site, base, f.ID)), app.CardHeight)
}

// takeAwayHTML is the page that lists all of it.
func takeAwayHTML(base, site string, files map[string][]byte) string {
	var b strings.Builder
	b.WriteString(`<main class="take"><h1>For teachers and editors</h1>
<p>All farms here are invented, and so is their weather. The answers are worked out by the same rules as yours.</p>
<h2>For a room</h2><p>Print the handout on one page of Letter or A4, the posters on A3.</p>
<p>In the workshop the space bar, the arrow keys and a clicker go on and back. The key B writes black on white, W white on black; once more takes it back. The figures of the answers count hands, held down ten; Backspace takes one back. N goes to the next farm, P to the one before, A to another question, L to the lesson. T turns what the lesson turns, + and − move the slider, Q shows the code for phones, S opens the speaker’s window. Escape leaves.</p><ul class="farms">`)
	for i := range pack.Farms {
		f := &pack.Farms[i]
		fmt.Fprintf(&b, `<li><b>%s</b> <a href="%[2]s/handout/%[3]s">Handout</a> <a href="%[2]s/poster/bed-%[3]s.svg">Poster of the bed</a> <a href="%[2]s/poster/year-%[3]s.svg">Poster of the year</a>`, html.EscapeString(f.Title), base, f.ID)
		for _, name := range tongue.Names() {
			fmt.Fprintf(&b, ` <a href="%[1]s/poster/bed-%[2]s.%[3]s.svg" lang="%[3]s">%[4]s</a> <a href="%[1]s/poster/year-%[2]s.%[3]s.svg" lang="%[3]s">%[5]s</a>`, base, f.ID, name, postersInItself[name][0], postersInItself[name][1])
		}
		b.WriteString(`</li>`)
	}
	fmt.Fprintf(&b, `</ul><p><a href="%[1]s/handout/%[2]s">A sheet for my field at home</a> <a href="%[1]s/ballots">Vote with your own phone</a> <a href="%[1]s/workshop">In front of a room: the workshop</a></p>
<h2>For a newsletter</h2><p>Each card is whole at every width from 320 to 640 pixels. Paste the frame into a web page. For a mail that shows no frame, take the picture and the words.</p>`, base, app.Mine)
	if site == "" {
		fmt.Fprintf(&b, `<p>This copy of the site does not know its own address: write it in place of <code>%s</code></p>`, ownAddress)
	}
	for i := range app.Cards {
		f := &app.Cards[i]
		var others strings.Builder
		for _, name := range tongue.Names() {
			fmt.Fprintf(&others, ` <a href="%[1]s/card/%[2]s.%[3]s.txt" lang="%[3]s">%[4]s</a>`, base, f.ID, name, inItself[name])
		}
		fmt.Fprintf(&b, `<section><h3>%s</h3><p>%s</p><p><a href="%[3]s/card/%[4]s">The card</a> <a href="%[3]s/card/%[4]s.svg" download="">The bed as a picture (SVG)</a> <a href="%[3]s/card/%[4]s.svg" data-picture="%[4]s">The bed as a picture (PNG)</a> <a href="%[3]s/card/%[4]s.txt">The words as a file</a>%[7]s</p>
<h4>Frame</h4><pre tabindex="0">%[5]s</pre><h4>Words</h4><pre tabindex="0">%[6]s</pre></section>`,
			html.EscapeString(f.Title), html.EscapeString(f.Lesson), base, f.ID, html.EscapeString(CardFrame(site, base, f)), html.EscapeString(string(files["card/"+f.ID+".txt"])), others.String())
	}
	b.WriteString(`<p><a href="` + base + `/">Go to ` + html.EscapeString(siteName) + `</a></p></main>`)
	return b.String()
}
