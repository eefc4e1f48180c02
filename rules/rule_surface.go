package rules

import "filmfurrow/rules/table"

var surfaceRules = [...]*Rule{
	{ID: "surface-not-made", Speaks: SurfaceQuestion, Weight: Strong, Title: "Sold smooth only",
		Because: "It cannot be bought embossed.", Sources: []*table.Source{&table.Memory}, Fires: "pumpkin-biodegradable",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if o != Embossed || f.Film == table.NoFilm || table.Films[f.Film].Embossable {
				return silent()
			}
			return rulesOut("{} is sold smooth.", capital(f.Film.Name()))
		}},
	{ID: "surface-raised", Speaks: SurfaceQuestion, Weight: Strong, Title: "Hugs a raised bed",
		Because: "The dimples stretch and spring back over the shoulder.", Sources: []*table.Source{&table.Practice, &table.Embossing}, Fires: "pepper-cool-spring",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if f.Height == 0 || o != Embossed {
				return silent()
			}
			return speaksFor(0.8, "On a raised bed embossed film stretches over the shoulders and stays tight.")
		}},
	{ID: "surface-flat", Speaks: SurfaceQuestion, Weight: Plain, Title: "Lies well on the flat",
		Because: "On flat ground there is no shoulder to hug.", Sources: []*table.Source{&table.Practice}, Fires: "corn-short-season",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if f.Height > 0 || o != Smooth {
				return silent()
			}
			return speaksFor(0.8, "On a flat bed smooth film lies well.")
		}},
	{ID: "surface-summer-heat", Speaks: SurfaceQuestion, Weight: Plain, Title: "Summer heat",
		Because: "Smooth film goes slack in heat and tears at the shoulder when it shrinks.", Sources: []*table.Source{&table.Practice, &table.Embossing}, Fires: "tomato-high-summer",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if o != Smooth || f.Height == 0 || f.HotSeason < 1 {
				return silent()
			}
			return against(soft(f.HotSeason, 20), "About {} hot days come before harvest: smooth film stretches and tears on a raised bed in heat.", int(f.HotSeason+0.5))
		}},
	{ID: "surface-contact", Speaks: SurfaceQuestion, Weight: Plain, Title: "Contact with cold soil",
		Because: "Opaque film warms only what it touches.", Sources: []*table.Source{&table.Contact, &table.Embossing}, Fires: "pepper-cool-spring",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			short := f.SafeFloor.Minus(f.Under[Bare])
			if o != Embossed || short <= 0 {
				return silent()
			}
			return speaksFor(soft(float64(short), 8), "The bare bed is {} short of the safe floor on planting day: tight contact counts.", short)
		}},
	{ID: "surface-price", Speaks: SurfaceQuestion, Weight: Slight, Title: "Price",
		Because: "A small saving for each roll.", Sources: []*table.Source{&table.Practice}, Fires: "corn-short-season",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if o != Smooth {
				return silent()
			}
			return speaksFor(0.5, "Smooth film is cheaper.")
		}},
	{ID: "surface-by-hand", Speaks: SurfaceQuestion, Weight: Slight, Title: "Laid by hand",
		Because: "Hands cannot pull film as tight as a layer; smooth slides more easily.", Sources: []*table.Source{&table.Memory}, Fires: "flowers-by-hand",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if f.Case.Practice.Laying != "hand" || o != Smooth {
				return silent()
			}
			return speaksFor(0.5, "Laid by hand, smooth film is easier to pull straight.")
		}},
	{ID: "surface-wind", Speaks: SurfaceQuestion, Weight: Slight, Title: "Wind",
		Because: "Film that stays tight does not flap.", Sources: []*table.Source{&table.Embossing}, Fires: "pepper-cool-spring",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || o != Embossed {
				return silent()
			}
			return speaksFor(0.6, "Your field is windy: embossed film stays tight and does not flap.")
		}},
}
