//go:build !js

package normals

import (
	_ "embed"
	"sync"

	"filmfurrow/rules/table/series"
)

// Text is the table as the page's file holds it. Only the host build carries
// it: in the browser it would make the program half as large again.
//
//go:embed normals.csv
var Text string

// BesideText is the table of frost days, rain and newer normals, likewise.
//
//go:embed beside.csv
var BesideText string

// WorldText and WorldBesideText are the tables of other countries, PlacesText those of
// towns and zips, likewise.
var (
	//go:embed world.csv
	WorldText string
	//go:embed world-beside.csv
	WorldBesideText string
	//go:embed places.csv
	PlacesText string
)

// Embedded is the table of the host build, read on first use: all countries.
var Embedded = sync.OnceValues(func() (*Table, error) {
	us, err := read(Text, BesideText)
	if err != nil {
		return nil, err
	}
	world, err := read(WorldText, WorldBesideText)
	if err != nil {
		return nil, err
	}
	us.Soils = series.Table(series.Text)
	return us.Join(world), nil
})

func read(text, beside string) (*Table, error) {
	table, err := Parse(text)
	if err == nil {
		err = table.Beside(beside)
	}
	return table, err
}
