//go:build !js

package site

import (
	"fmt"
	"html"
	"strings"

	sources "filmfurrow/rules/table"
)

// trouble is the page that one opens when something looks wrong. It is whole as it is and
// needs no program.
var trouble = Page{
	Path:        "/trouble",
	Title:       "Something looks wrong – " + siteName,
	Description: "Between laying and lifting: what one sees, what it is, what to do.",
}

func troublePage(base, site string, links assets) ([]byte, error) {
	var b strings.Builder
	b.WriteString(`<main class="trouble"><h1>Something looks wrong</h1><p>Find what you see. Beside it stands what it most likely is, and what to do first.</p>`)
	for _, part := range sources.TroubleParts() {
		fmt.Fprintf(&b, `<h2>%s</h2><div class="troubles">`, part)
		for i := range sources.Troubles {
			if row := &sources.Troubles[i]; row.Part == part {
				troubleRow(&b, row)
			}
		}
		b.WriteString(`</div>`)
	}
	b.WriteString(`<p class="trouble-foot"><a href="` + base + `/year">The year of your field</a> <a href="` + base + `/water">This week’s water</a></p></main>`)
	return plainPage(trouble, base, site, b.String(), links, nil)
}

func troubleRow(b *strings.Builder, r *sources.Trouble) {
	fmt.Fprintf(b, `<section id="%s"><svg viewBox="0 0 160 90" aria-hidden="true">%s</svg><div><h3>%s</h3><p>%s</p><ul>`, r.ID, troublePicture(r.ID), html.EscapeString(r.Sees), html.EscapeString(r.Is))
	for _, do := range r.Do {
		fmt.Fprintf(b, `<li>%s</li>`, html.EscapeString(do))
	}
	b.WriteString(`</ul>`)
	if r.Care != "" {
		fmt.Fprintf(b, `<p class="trouble-care"><b>Take care.</b> %s</p>`, html.EscapeString(r.Care))
	}
	b.WriteString(`<p class="trouble-source"><cite>`)
	for i, s := range r.Sources {
		if i > 0 {
			b.WriteString(`; `)
		}
		switch {
		case s.Mark == sources.CommonPractice:
			b.WriteString(s.Mark.String())
		case strings.HasPrefix(s.Address, "https"):
			fmt.Fprintf(b, `<a href="%s">%s, %s</a>`, html.EscapeString(s.Address), html.EscapeString(s.Named()), s.Year)
		default:
			fmt.Fprintf(b, `%s, %s (%s)`, html.EscapeString(s.Named()), s.Year, html.EscapeString(s.Found()))
		}
	}
	b.WriteString(`</cite></p></div></section>`)
}

// Parts of the pictures: the ground, the bed under its film, a plant on it, the tape in it.
const (
	pictureGround = `<path class="d-soil" d="M0 66H160V90H0z"/>`
	pictureBed    = `<path class="d-mound" d="M26 66L40 44Q80 36 120 44L134 66z"/>`
	pictureFilm   = `<path class="d-film" d="M18 72L26 66L40 44Q80 36 120 44L134 66L142 72"/>`
	pictureClear  = `<path class="d-film d-film-clear" d="M18 72L26 66L40 44Q80 36 120 44L134 66L142 72"/>`
	picturePlant  = `<path class="d-stem" d="M80 40V16"/><path class="d-leaf" d="M80 26Q66 24 62 12Q76 12 80 26M80 22Q94 20 98 8Q84 8 80 22"/>`
	pictureTape   = `<path class="d-tape" d="M8 52H152V60H8z"/>`
	pictureCover  = `<path class="d-film d-film-clear" d="M18 72Q20 6 80 6Q140 6 142 72"/>`
	pictureSun    = `<circle cx="140" cy="16" r="9" class="d-flag"/>`
)

// troublePicture draws what one sees. The words beside it say the same.
func troublePicture(id string) string {
	bed := pictureGround + pictureBed + pictureFilm
	switch id {
	case "loose-edge":
		return pictureGround + pictureBed + `<path class="d-film" d="M18 72L26 66L40 44Q80 36 120 44Q136 40 150 22"/><path class="d-lead" d="M112 14h28M120 22h24M116 6h20"/>`
	case "blown-off":
		return pictureGround + pictureBed + `<path class="d-film" d="M18 72L26 66L40 44Q58 40 66 34Q60 14 84 10Q104 12 92 26Q84 30 82 22"/><path class="d-lead" d="M108 14h30M114 24h30M104 34h24"/>`
	case "tear":
		return bed + `<path class="d-crack" d="M58 42l10 4l-6 5l14 1l-4 6l14-3"/>`
	case "hail":
		return bed + `<circle class="d-end" cx="56" cy="42" r="3"/><circle class="d-end" cx="76" cy="39" r="3"/><circle class="d-end" cx="102" cy="41" r="3"/><circle class="k-face" cx="44" cy="16" r="5"/><circle class="k-face" cx="84" cy="10" r="5"/><circle class="k-face" cx="116" cy="20" r="5"/>`
	case "nutsedge":
		return bed + `<path class="d-weed" d="M60 42L56 14M60 42L66 18M104 42L98 16M104 42L110 20"/>`
	case "weeds-under":
		return pictureGround + pictureBed + `<path class="d-film d-film-clear" d="M18 72L26 66L40 44Q54 18 70 38Q96 12 120 44L134 66L142 72"/><path class="d-weed" d="M54 44q-4-10 2-14M58 44q4-8 2-12M98 42q-6-12 0-18M102 42q6-10 3-16"/>`
	case "weeds-at-hole":
		return bed + picturePlant + `<path class="d-weed" d="M72 40q-8-6-8-14M88 40q8-6 9-13M70 40q-2-8 1-12"/>`
	case "tears-at-lifting":
		return pictureGround + pictureBed + `<path class="d-film" d="M134 66L120 44Q100 34 96 12M88 40L84 14M70 40Q66 30 70 16"/>`
	case "dry-stretch":
		return pictureGround + pictureTape + `<path class="d-drop" d="M24 62q-6 10 0 12q6-2 0-12M48 62q-6 10 0 12q6-2 0-12M136 62q-6 10 0 12q6-2 0-12"/><path class="d-crack" d="M72 46l6 8l-6 12M104 46l-6 8l6 12"/>`
	case "puddle":
		return pictureGround + `<path class="d-tape" d="M8 52H70V60H8zM90 52H152V60H90z"/><ellipse class="d-wetter" cx="80" cy="72" rx="52" ry="11"/><path class="d-drop" d="M72 34q-6 10 0 12q6-2 0-12M88 30q-6 10 0 12q6-2 0-12"/>`
	case "chewed":
		return pictureGround + pictureTape + `<path class="d-end" d="M44 52a5 5 0 0 0 10 0M58 52a5 5 0 0 0 10 0M96 60a5 5 0 0 1 10 0"/><path class="d-store" d="M104 44q4-14 20-14q16 0 18 14zM104 44q-6 0-8-4"/><circle class="d-dot" cx="112" cy="38" r="2"/><path class="d-lead" d="M142 44q10 2 14-6"/>`
	case "slow-loss":
		return pictureGround + pictureTape + `<path class="d-drop" d="M40 62q-8 13 0 15q8-2 0-15M80 64q-5 8 0 10q5-2 0-10M120 66q-2 4 0 5q2-1 0-5"/><path class="d-lead" d="M16 14L60 20L104 32L144 44"/>`
	case "pinholes":
		return pictureGround + pictureClear + pictureSun + `<path class="d-tape" d="M44 56H118V62H44z"/><path class="d-lead" d="M136 24L92 44L86 56M132 22L70 42L62 56"/><circle class="d-drop" cx="92" cy="44" r="4"/><circle class="d-drop" cx="70" cy="42" r="4"/>`
	case "wet-alley":
		return bed + `<circle class="d-tape" cx="116" cy="58" r="5"/><ellipse class="d-wetter" cx="142" cy="72" rx="20" ry="9"/>`
	case "burnt-stem":
		return bed + pictureSun + `<path class="d-stem" d="M80 40Q86 30 104 32"/><path class="d-leaf" d="M104 32q10-12 18-2q-8 8-18 2"/><path class="d-crack" d="M76 40h8"/>`
	case "whipped":
		return bed + `<path class="d-stem" d="M80 40Q84 28 104 22"/><path class="d-leaf" d="M104 22q14-10 22 0q-10 8-22 0M92 28q4-14 16-14q-2 12-16 14"/><path class="d-lead" d="M16 14h36M10 24h30M20 34h24"/>`
	case "no-seedlings":
		return bed + pictureSun + `<circle class="d-end" cx="56" cy="43" r="5"/><circle class="d-end" cx="80" cy="40" r="5"/><circle class="d-end" cx="104" cy="43" r="5"/>`
	case "purple":
		return bed + `<path class="d-stem" d="M80 40V16"/><path class="d-flag" d="M80 26Q66 24 62 12Q76 12 80 26M80 22Q94 20 98 8Q84 8 80 22"/><path class="d-lead" d="M130 8v22M126 30h8M126 24h8"/>`
	case "blossom-end":
		return `<circle class="d-flag" cx="80" cy="44" r="34"/><path class="d-stem" d="M80 12V2"/><path class="d-tape" d="M56 68Q80 50 104 68Q80 84 56 68"/>`
	case "cracks":
		return `<circle class="d-flag" cx="80" cy="46" r="34"/><path class="d-stem" d="M80 14V4"/><path class="d-crack" d="M80 18l-4 12l6 8l-5 14M64 22l-6 10l4 10M98 22l5 10l-4 12"/>`
	case "yellow-after-rain":
		return bed + `<path class="d-stem" d="M80 40V20"/><path class="d-flag" d="M80 30Q66 28 62 16Q76 16 80 30M80 26Q94 24 98 12Q84 12 80 26"/><path class="d-lead" d="M24 8l-6 14M44 6l-6 14M124 6l-6 14M144 8l-6 14M34 24l-6 14M136 26l-6 14"/>`
	case "cooked":
		return pictureGround + pictureCover + pictureSun + `<path class="d-stem" d="M56 66q2-12-10-10M80 66q2-14 14-10M106 66q-2-12 8-10"/>`
	case "no-fruit":
		return pictureGround + pictureCover + `<path class="d-stem" d="M80 66V30"/><path class="d-leaf" d="M80 46Q62 46 58 32Q76 32 80 46"/><circle class="d-flag" cx="92" cy="30" r="6"/><circle class="d-flag" cx="62" cy="62" r="5"/><circle class="d-flag" cx="104" cy="63" r="5"/>`
	case "pale-by-alley":
		return bed + `<path class="d-stem" d="M80 40V28"/><path class="d-leaf" d="M80 34q-8 0-10-8q8 0 10 8"/><path class="d-weed" d="M4 66q2-20-2-28M10 66q0-22 4-32M18 66q2-16-1-24M142 66q2-18-1-28M150 66q0-22 4-32M157 66q1-14-1-22"/>`
	}
	return bed
}
