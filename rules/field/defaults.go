package field

import (
	"filmfurrow/rules/model/profile"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// Default is a field that was left out, and what stood in for it.
type Default struct {
	Field  string
	Used   unit.Phrase
	Reason string
}

// Fill puts stated defaults where the grower left a field out, and lists them.
// The case must have a known crop.
func Fill(c Case) (Case, []Default) {
	var used []Default
	fillIn(&c, func(field, says string, value any, reason string) {
		used = append(used, Default{field, unit.Say(says, value), reason})
	})
	return c, used
}

// filled is [Fill] without the list.
func Filled(c Case) Case {
	fillIn(&c, nil)
	return c
}

// fillIn is [Fill] in place; note, if there is one, hears of each default.
func fillIn(c *Case, note func(field, says string, value any, reason string)) {
	crop := table.CropByID(c.Crop)
	word := func(field string, at *string, value, reason string) {
		if *at != "" {
			return
		}
		*at = value
		if note != nil {
			note(field, "{}", value, reason)
		}
	}
	word("method", &c.Method, string(crop.Start), "the usual way for this crop")
	texture, whose := "loam", "the middle of the textures"
	drainage, whence := "fair", "the middle"
	if s := &c.Soil; s.Series != "" {
		none := "; not known of a soil series " + s.Series
		whose, whence = whose+none, whence+none
		if s.OfSeries.Texture != "" {
			texture, whose = s.OfSeries.Texture, "of the soil series "+s.Series
		}
		if s.OfSeries.Drainage != "" {
			drainage, whence = s.OfSeries.Drainage, "of the soil series "+s.Series
		}
	}
	word("soil.texture", &c.Soil.Texture, texture, whose)
	word("soil.drainage", &c.Soil.Drainage, drainage, whence)
	word("soil.wetness_at_laying", &c.Soil.Wetness, "moist", "what laying needs")
	word("soil.tilth", &c.Soil.Tilth, "fine", "what laying needs")
	word("soil.stones", &c.Soil.Stones, "none", "what laying needs")
	word("weeds.pressure", &c.Weeds.Pressure, "moderate", "the middle")
	word("weeds.nutsedge", &c.Weeds.Nutsedge, "none", "look before you order: no film color holds purple nutsedge")
	word("field.exposure", &c.Field.Exposure, "open", "the middle")
	word("practice.laying", &c.Practice.Laying, "tractor", "a borrowed layer")
	word("risk", &c.Risk, "usual", "the middle of the years")
	if c.Place.Older.Given && c.Place.Newer.Given && !c.Place.Own {
		word("place.period", &c.Place.Period, NewerYears, "nearest to the years you will meet")
	}

	length := func(field string, at *unit.Optional[unit.Metres], value unit.Metres, reason string, short bool) {
		if at.Given {
			return
		}
		*at = unit.Known(value)
		switch {
		case note == nil:
		case short:
			note(field, "{}", unit.Short(value), reason)
		default:
			note(field, "{}", value, reason)
		}
	}
	number := func(field string, at *unit.Optional[float64], value float64, says, reason string) {
		if at.Given {
			return
		}
		*at = unit.Known(value)
		if note != nil {
			note(field, says, value, reason)
		}
	}
	length("field.bed_centres_m", &c.Field.Centres, unit.TenthMillimetre(float64(max(crop.Centres.Value, topOf(c, crop)+0.3))), "usual for this crop", false)
	length("field.bed_top_m", &c.Field.BedTop, topOf(c, crop), "the commonest bed top", true)
	slope, reason := sideSlope(crop)
	number("field.side_slope", &c.Field.SideSlope, slope, "{}", reason)
	number("field.rows_per_bed", &c.Field.RowsPerBed, max(1, float64(int(crop.RowsPerBed.Value+0.5))), "{}", "usual for this crop")
	length("field.in_row_m", &c.Field.InRow, unit.TenthMillimetre(float64(crop.InRow.Value)), "usual for this crop", true)
	number("practice.crops_on_film", &c.Practice.CropsOnFilm, 1, "{}", "one crop a laying")
	percent := func(field string, at *unit.Optional[float64], value unit.Percent, reason string) {
		if at.Given {
			return
		}
		*at = unit.Known(float64(value))
		if note != nil {
			note(field, "{}", unit.FineShare(value), reason)
		}
	}
	percent("soil.organic_percent", &c.Soil.Organic, 2.5, "usual for farmed mineral soil")
	percent("soil.slope_percent", &c.Soil.Slope, 0, "level, for want of a figure")
	if !c.Practice.Organic.Given {
		c.Practice.Organic = unit.Known(false)
		if note != nil {
			note("practice.organic", "{}", "no", "no certificate named")
		}
	}
	if !c.Place.Elevation.Given {
		height, reason := c.Place.StationAt, "the height of the station"
		if c.Place.Own {
			reason = "near the sea, for want of a height"
		}
		c.Place.Elevation = unit.Known(height)
		if note != nil {
			note("place.elevation_m", "{}", height, reason)
		}
	}
}

// sideSlope is the usual lean of a bed's sides; high berry beds stand steep.
func sideSlope(crop *table.Crop) (slope float64, reason string) {
	if crop.Group == table.Berry {
		return 0.1, "a published strawberry bed: 32 in at the base, 30 in at the top, 10 in high"
	}
	return unit.Thousandth(profile.UsualSideSlope), "2 in out on a bed 6 in high"
}

// topOf is the usual bed top: 30 in, or what the roll at hand leaves.
func topOf(c *Case, crop *table.Crop) unit.Metres {
	top := unit.FromInches(30)
	if c.Practice.FilmWidth.Given {
		top = min(top, c.Practice.FilmWidth.Value-2*profile.LeastTuck)
	}
	if c.Field.Centres.Given {
		top = min(top, c.Field.Centres.Value-0.3)
	}
	return max(0.2, unit.TenthMillimetre(float64(top)))
}
