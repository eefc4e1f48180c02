//go:build !js

package browsertest

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"strings"
)

// axe is axe-core 4.14.1 as published on npm, unchanged (Mozilla Public License
// 2.0, text beside it). It is for tests only and no part of the site.
//
//go:embed axe/axe.min.js
var axe string

// Axe has axe-core look at the page as it stands, by every rule of WCAG 2.2 at
// levels A, AA and, for contrast, AAA, and by its best practices. It returns one
// line for each finding; none is what a page should have. Rules that do not apply
// to the state the page is in are named in without.
func (p *Page) Axe(without ...string) []string {
	p.t.Helper()
	if !Eval[bool](p, `"axe" in window`) {
		p.Do(axe + "\n;void 0")
	}
	p.layOut()
	p.Wait("movement on the page to end", `document.getAnimations().every((a) => a.playState !== "running")`)
	rules := map[string]map[string]bool{"color-contrast-enhanced": {"enabled": true}}
	for _, name := range without {
		rules[name] = map[string]bool{"enabled": false}
	}
	set, _ := json.Marshal(rules) // a map of strings always has a JSON form
	findings := Eval[[]string](p, `axe.run(document, {
		runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
		rules: `+string(set)+`,
		resultTypes: ["violations"],
	}).then((result) => result.violations.flatMap((v) => v.nodes.map((n) => v.id + " (" + v.impact + "): " + n.target.join(" ") + ": " + n.failureSummary.replace(/\s+/g, " "))))`)
	for i, finding := range findings {
		findings[i] = strings.TrimSpace(fmt.Sprintf("%.400s", finding))
	}
	return findings
}
