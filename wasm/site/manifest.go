//go:build !js

package site

import "encoding/json"

// manifest is the W3C Web Application Manifest, by which a device installs the
// site beside its other programs.
func manifest(base string, pages []Page) ([]byte, error) {
	type icon struct {
		Src     string `json:"src"`
		Sizes   string `json:"sizes"`
		Type    string `json:"type"`
		Purpose string `json:"purpose"`
	}
	description := ""
	for _, p := range pages {
		if p.Path == "/" {
			description = p.Description
		}
	}
	at := func(name string) string { return base + "/icons/" + name }
	return json.MarshalIndent(struct {
		ID          string   `json:"id"`
		Name        string   `json:"name"`
		ShortName   string   `json:"short_name"`
		Description string   `json:"description,omitempty"`
		Lang        string   `json:"lang"`
		Dir         string   `json:"dir"`
		StartURL    string   `json:"start_url"`
		Scope       string   `json:"scope"`
		Display     string   `json:"display"`
		Background  string   `json:"background_color"`
		Theme       string   `json:"theme_color"`
		Categories  []string `json:"categories"`
		Icons       []icon   `json:"icons"`
	}{
		ID: base + "/", Name: siteName, ShortName: shortName, Description: description,
		Lang: siteLang, Dir: "ltr", StartURL: base + "/", Scope: base + "/", Display: "standalone",
		Background: paperColor, Theme: themeColor,
		Categories: []string{"education", "productivity", "utilities"},
		Icons: []icon{
			{at("icon-192.png"), "192x192", "image/png", "any"},
			{at("icon-512.png"), "512x512", "image/png", "any"},
			{at("maskable-512.png"), "512x512", "image/png", "maskable"},
			{at("icon.svg"), "any", "image/svg+xml", "any"},
		},
	}, "", " ")
}
