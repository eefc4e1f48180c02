//go:build !js

package main

import (
	"flag"
	"fmt"
	"io"
	"strings"

	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// mostListed is how many towns, and how many stations, are listed.
const mostListed = 8

// place lists what a case may name as its place: towns, zips and coordinates with the
// station nearest to each, and stations by their names.
func place(args []string, _ io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("place", flag.ContinueOnError)
	flags.SetOutput(errs)
	us := flags.Bool("us", false, "US units")
	if flags.Parse(args) != nil {
		return 2
	}
	typed := strings.Join(flags.Args(), " ")
	stations, err := normals.Embedded()
	if err != nil {
		fmt.Fprintln(errs, err)
		return 1
	}
	known := normals.NewPlaces(normals.PlacesText)
	spots := known.Find(typed, mostListed)
	if spot, ok := normals.Coordinates(typed); ok {
		spots = []normals.Spot{spot}
	}
	tell := func(s *normals.Station) string {
		doubt := ""
		if s.Flag == 'P' || s.Flag == 'Q' {
			doubt = ", doubtful"
		}
		return fmt.Sprintf("%s (%s), %s high%s", s.ID, s.Label(), unit.Quantity{Kind: unit.KindHead, SI: float64(s.Elevation)}.In(unitsOf(*us)), doubt)
	}
	for _, spot := range spots {
		nearest, away := stations.Nearest(spot.Latitude, spot.Longitude, unit.Optional[unit.Metres]{})
		fmt.Fprintf(out, "%s: \"lat\": %v, \"lon\": %v; nearest station %s away: %s\n", spot.Name, spot.Latitude, spot.Longitude, unit.Of(unit.Distance(away)).In(unitsOf(*us)), tell(nearest))
	}
	found := stations.Find(typed, mostListed)
	for _, s := range found {
		fmt.Fprintf(out, "station %s\n", tell(s))
	}
	if len(spots)+len(found) == 0 {
		fmt.Fprintf(errs, "Nothing is known by %q. Give a town, a US zip, a station, or latitude and longitude, such as 42.45, -76.46; before a minus that comes first write --.\n", typed)
		return 2
	}
	return 0
}
