//go:build !js

package site

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"golang.org/x/net/html"
)

// about is the page that says what the site is, whose work is in it and under
// which licences. It needs no program and so costs the other pages nothing.
var about = Page{
	Path:        "/about",
	Title:       "About – " + siteName,
	Description: "What Film & Furrow is, what it keeps, whose work is in it and under which licenses.",
}

// licence is one work that is shipped to readers, and the terms it comes under.
type licence struct {
	Module string // module path; "" for our own work and for Go itself
	Name   string // as readers see it
	Terms  string // SPDX identifier
	Why    string // what of it is in the site
	file   func(root string) (string, error)
}

// licences are all works that the page's program and its scripts are made of. A
// test holds the modules to those that are linked.
var licences = []licence{
	{"", siteName, "Apache-2.0", "the site itself", func(root string) (string, error) { return filepath.Join(root, "LICENSE"), nil }},
	{"", "Go", "BSD-3-Clause", "the language's library within the program, and the script that starts it", func(root string) (string, error) {
		goroot, err := toolchain(root)
		return filepath.Join(goroot, "LICENSE"), err
	}},
	{frameworkModule, "go-app " + frameworkVersion, "MIT", "the parts of the page, in a trimmed copy", moduleLicence(frameworkModule)},
	{uuidModule, "google/uuid v1.3.0", "BSD-3-Clause", "the interface of it that go-app asks for", moduleLicence(uuidModule)},
	{"", "weather-util-data 2.4.4", "ISC", "the middles of US zip areas as one table", func(root string) (string, error) {
		return filepath.Join(root, "rules", "table", "normals", "zips.LICENSE"), nil
	}},
	{"rsc.io/qr", "rsc.io/qr v0.2.0", "BSD-3-Clause", "the QR code of a link to a field", moduleLicence("rsc.io/qr")},
}

func moduleLicence(module string) func(string) (string, error) {
	return func(root string) (string, error) {
		out, err := goCommand(root, nil, "list", "-m", "-f", "{{.Dir}}", module).Output()
		if err != nil {
			return "", withStderr(err)
		}
		return filepath.Join(strings.TrimSpace(string(out)), "LICENSE"), nil
	}
}

// aboutPage writes the page, with the text of each licence whole: the terms ask
// that the notices go along with the work.
func aboutPage(root, base, site string, links assets) ([]byte, error) {
	var b strings.Builder
	b.WriteString(`<main class="not-found"><h1>About ` + html.EscapeString(siteName) + `</h1>
<p>It works out plastic mulch, bed and drip for one crop, field and date, with every reason and its source. The sources stand on the page itself, under the answers.</p>
<h2>What it keeps</h2><p>What you type stays on your device. There are no accounts, no cookies and no counting of visitors. A link that you share carries the field behind the “#”, which browsers do not send to any server.</p>
<h2>Whose figures</h2><ul>
<li><b>Climate normals of 1981–2010, days of frost and rain</b>: US National Oceanic and Atmospheric Administration, National Centers for Environmental Information, public domain.</li>
<li><b>What changed by 1991–2020</b>: after World Meteorological Organization, Climatological Standard Normals 1991–2020 (NCEI accession 0253808, doi 10.25921/800j-vn07); for most US stations it is estimated from others around them, and the page says so.</li>
<li><b>Stations of other countries</b>: the same normals of the World Meteorological Organization.</li>
<li><b>Towns</b>: contains data from GeoNames, <a href="https://creativecommons.org/licenses/by/4.0/">CC BY 4.0</a>; names were also written in plain letters, and places kept to two decimals.</li>
<li><b>Middles of US zip areas</b>: US Census Bureau, 2022 ZCTA Gazetteer, public domain.</li>
<li><b>Soil series</b>: Soil Survey Staff, US Natural Resources Conservation Service, Official Soil Series Descriptions, public domain.</li></ul>
<h2>Whose word counts</h2><p>It is advice, not a permit. Labels, local codes and licensed people overrule it.</p>
<h2 id="licences">Licenses</h2><ul>`)
	for _, l := range licences {
		fmt.Fprintf(&b, `<li><b>%s</b>: %s (%s)</li>`, html.EscapeString(l.Name), l.Terms, l.Why)
	}
	b.WriteString(`</ul>`)
	for _, l := range licences {
		file, err := l.file(root)
		if err != nil {
			return nil, fmt.Errorf("find the licence of %s: %w", l.Name, err)
		}
		text, err := os.ReadFile(file)
		if err != nil {
			return nil, fmt.Errorf("read the licence of %s: %w", l.Name, err)
		}
		fmt.Fprintf(&b, `<details><summary>Terms of %s</summary><pre>%s</pre></details>`, html.EscapeString(l.Name), html.EscapeString(strings.TrimSpace(string(text))))
	}
	b.WriteString(`<p><a href="` + base + `/takeaway">For teachers and editors: handouts, posters, cards</a> <a href="` + base + `/">Go to ` + html.EscapeString(siteName) + `</a></p></main>`)
	return plainPage(about, base, site, b.String(), links, nil)
}
