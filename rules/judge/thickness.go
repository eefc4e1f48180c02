package judge

import (
	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// thick gives the thickness of an option in mil, or 0 for sheets by weight.
func thick(o question.Option) float64 {
	if o == question.ByWeight {
		return 0
	}
	return float64(question.Thicknesses[o]) / unit.MicrometresPerMil
}

// FilmRow is the film that was chosen; black stands in where nothing is laid.
func FilmRow(f *facts.Facts) *table.Film {
	if f.Film == table.NoFilm {
		return &table.Films[table.Black]
	}
	return &table.Films[f.Film]
}

var thicknessRules = [...]*Rule{
	{ID: "thickness-already-down", Speaks: question.Thickness, Weight: Strong, Title: "The film that lies there",
		Because: "Film that is down is as thick as it is.",
		Sources: []*table.Source{&table.Practice}, Fires: "squash-on-worn-film",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			t := f.Case.Practice.ReuseThick
			if !t.Given || !f.Case.Practice.FilmDown() || FilmRow(f).ByWeight {
				return silent()
			}
			if nearest(question.Thicknesses[:], t.Value) != o {
				return rulesOut("The film that is down is {} thick.", t.Value)
			}
			return speaksFor(1, "The film that is down is {} thick.", t.Value)
		}},
	{ID: "thickness-not-sold", Speaks: question.Thickness, Weight: Strong, Title: "Sold in this thickness",
		Because: "What is not made cannot be laid.", Sources: []*table.Source{&table.NewEngland, &table.Memory}, Fires: "pumpkin-biodegradable",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			r := FilmRow(f)
			if f.Case.Practice.ReuseThick.Given && !r.ByWeight {
				return silent() // it lies there, whatever is sold
			}
			if r.ByWeight != (o == question.ByWeight) {
				if r.ByWeight {
					return rulesOut("{} is sold by weight of the sheet.", unit.Capital(r.Name))
				}
				return rulesOut("{} is sold by thickness.", unit.Capital(r.Name))
			}
			if r.ByWeight || (float64(question.Thicknesses[o])+soldSlack >= float64(r.Thicknesses.Low) && float64(question.Thicknesses[o]) <= float64(r.Thicknesses.High)+soldSlack) {
				return silent()
			}
			return rulesOut("{} is usually sold in {}.", unit.Capital(r.Name), unit.Between(r.Thicknesses.Low, r.Thicknesses.High))
		}},
	{ID: "thickness-one-season", Speaks: question.Thickness, Weight: Plain, Title: "One season",
		Because: "It is what most growers lay and lift.", Sources: []*table.Source{&table.Practice, &table.NewEngland}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == question.ByWeight {
				return silent()
			}
			if t := thick(o); t >= 1-milSlack && t <= stoutMil+milSlack {
				return speaksFor(oneSeason, "For one season most growers lay {}.", unit.Between(unit.FromMil(1), unit.FromMil(stoutMil)))
			}
			return silent()
		}},
	{ID: "thickness-second-crop", Speaks: question.Thickness, Weight: Strong, Title: "Two or more crops",
		Because: "Film that carries a second crop is walked on, cut and weathered twice.", Sources: []*table.Source{&table.Weathering, &table.Memory}, Fires: "tomato-two-crops",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			crops := f.Case.Practice.CropsOnFilm.Or(1)
			if crops < 2 || o == question.ByWeight {
				return silent()
			}
			if short := stoutMil - thick(o); short > milSlack {
				return against(saturate(short, secondHalf), "{} crops on one laying need {} or more.", int(crops), unit.FromMil(stoutMil))
			}
			return speaksFor(stoutFit, "Thick enough for {} crops on one laying.", int(crops))
		}},
	{ID: "thickness-nutsedge", Speaks: question.Thickness, Weight: Plain, Title: "Nutsedge",
		Because: "Spears pierce thin film first.", Sources: []*table.Source{&table.NutsedgeYellow2005}, Fires: "pepper-yellow-nutsedge",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			sedge := f.Case.Weeds.Nutsedge
			if sedge == "" || sedge == "none" || o == question.ByWeight {
				return silent()
			}
			if thick(o) >= stoutMil-milSlack {
				if sedge == "yellow" {
					return speaksFor(stoutFit, "The trial that held yellow nutsedge used {}.", unit.FromMil(stoutMil))
				}
				return speaksFor(stoutFit, "Spears pierce thin film first.")
			}
			return against(saturate(stoutMil-thick(o), thinHalf), "Nutsedge spears pierce thin film.")
		}},
	{ID: "thickness-lifting", Speaks: question.Thickness, Weight: Strong, Title: "Comes up in one piece",
		Because: "Torn film stays in the field for years.", Sources: []*table.Source{&table.Retrieval2019, &table.ThinFilm, &table.EN13655}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if FilmRow(f).Removal != table.LiftAndHaul || o == question.ByWeight || thick(o) >= 1-milSlack {
				return silent()
			}
			return against(saturate(1-thick(o), tearHalf), "Below {} film tears when it is lifted.", unit.FromMil(1))
		}},
	{ID: "thickness-stones", Speaks: question.Thickness, Weight: Plain, Title: "Stones",
		Because: "Each stone is a puncture.", Sources: []*table.Source{&table.Memory}, Fires: "pepper-stony-light",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == question.ByWeight || (f.Case.Soil.Stones != "some" && f.Case.Soil.Stones != "many") {
				return silent()
			}
			if thick(o) >= stoutMil-milSlack {
				return speaksFor(stoutFit, "Stony ground needs {} or more.", unit.FromMil(stoutMil))
			}
			return against(saturate(stoutMil-thick(o), stoneHalf), "Stones puncture thin film; stony ground needs {} or more.", unit.FromMil(stoutMil))
		}},
	{ID: "thickness-trash", Speaks: question.Thickness, Weight: Plain, Title: "Trash in the bed",
		Because: "Stalks puncture film from below.", Sources: []*table.Source{&table.TilthMichigan}, Fires: "cabbage-wet-clay",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == question.ByWeight || f.Case.Soil.Tilth != "trashy" {
				return silent()
			}
			return speaksFor(saturate(thick(o)-stalkFrom, stalkHalf), "Stalks puncture film from below; thicker film stands up to more of them.")
		}},
	{ID: "thickness-fumigation", Speaks: question.Thickness, Weight: Plain, Title: "Holds a fumigant",
		Because: "Barrier films are about this thick; the label decides.", Sources: []*table.Source{&table.BarrierFilm2013, &table.Memory}, Fires: "tomato-fumigated",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == question.ByWeight || !f.Case.Practice.FumigatedOn.Given {
				return silent()
			}
			if thick(o) >= stoutMil-milSlack {
				return speaksFor(gasThick, "Films that hold a fumigant are about {}. The label names them.", unit.FromMil(stoutMil))
			}
			return against(saturate(stoutMil-thick(o), thinHalf), "Films that hold a fumigant are about {}.", unit.FromMil(stoutMil))
		}},
	{ID: "thickness-rots-away", Speaks: question.Thickness, Weight: Plain, Title: "Made to break down",
		Because: "Thicker film of this kind lasts longer in the soil as well.", Sources: []*table.Source{&table.EN17033, &table.RaspberryFilm2020}, Fires: "pumpkin-biodegradable",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if FilmRow(f).Removal != table.TillInSlowly || o == question.ByWeight {
				return silent()
			}
			if need := f.Crop.DaysToHarvest.High; need > longCrop && thick(o) > longBioFrom {
				return speaksFor(longBio, "The crop stands for about {}: take the thicker of these films.", unit.DaysOf(need))
			}
			return against(saturate(thick(o)-stalkFrom, handHalf), "Thicker film of this kind is slower to break down in the soil.")
		}},
	{ID: "thickness-by-hand", Speaks: question.Thickness, Weight: Slight, Title: "Handled by people",
		Because: "Thin film clings and tears in the hands.", Sources: []*table.Source{&table.Memory}, Fires: "flowers-by-hand",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.Laying != "hand" || o == question.ByWeight {
				return silent()
			}
			return speaksFor(saturate(thick(o)-handFrom, handHalf), "Laid by hand, thicker film is easier to handle.")
		}},
	{ID: "thickness-wind", Speaks: question.Thickness, Weight: Slight, Title: "Wind",
		Because: "Flapping film tears where it is thin.", Sources: []*table.Source{&table.Memory}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || o == question.ByWeight {
				return silent()
			}
			return speaksFor(saturate(thick(o)-handFrom, handHalf), "Your field is windy, and thicker film stands up to it better.")
		}},
	{ID: "thickness-price", Speaks: question.Thickness, Weight: Plain, Title: "Price and weight",
		Because: "Film is sold by weight: a quarter thicker costs and weighs a quarter more.", Sources: []*table.Source{&table.FilmYieldConstant}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == question.ByWeight || thick(o) <= 1+milSlack {
				return silent()
			}
			return against(saturate(thick(o)-1, weightHalf), "It weighs and costs {} more than {} film.", unit.PercentOf(thick(o)-1), unit.FromMil(1))
		}},
	{ID: "thickness-long-crop", Speaks: question.Thickness, Weight: Plain, Title: "A long season on the film",
		Because: "Sun and wind work on the film for as long as it lies.", Sources: []*table.Source{&table.StrawberryFilm}, Fires: "strawberry-autumn",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o == question.ByWeight || f.Crop.DaysToHarvest.High < winterCrop || !f.Autumn {
				return silent() // a crop set in spring is off the film by autumn
			}
			return speaksFor(saturate(thick(o)-1, longHalf), "The crop is on the film for about {}; guides give {}.", unit.DaysOf(f.Crop.DaysToHarvest.High), unit.Between(unit.FromMil(1), unit.FromMil(1.5)))
		}},
}
