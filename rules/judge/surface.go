package judge

import (
	"math"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// bareShort is how far bare ground lies below the floor of planting on planting day.
func bareShort(f *facts.Facts) unit.CelsiusDegrees {
	mean, _, _ := f.Warmth.Of(facts.Bare, 0)
	return f.WorkFloor.Minus(mean)
}

var surfaceRules = [...]*Rule{
	{ID: "surface-not-made", Speaks: question.Surface, Weight: Strong, Title: "Sold smooth only",
		Because: "It cannot be bought embossed.", Sources: []*table.Source{&table.Memory}, Fires: "pumpkin-biodegradable",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o != question.Embossed || f.Film == table.NoFilm || table.Films[f.Film].Embossable {
				return silent()
			}
			return rulesOut("{} is sold smooth.", unit.Capital(f.Film.Name()))
		}},
	{ID: "surface-raised", Speaks: question.Surface, Weight: Strong, Title: "Hugs a raised bed",
		Because: "The dimples stretch and spring back over the shoulder.", Sources: []*table.Source{&table.Practice, &table.Embossing}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Height == 0 || o != question.Embossed {
				return silent()
			}
			return speaksFor(hugsFit, "On a raised bed embossed film stretches over the shoulders and stays tight.")
		}},
	{ID: "surface-flat", Speaks: question.Surface, Weight: Plain, Title: "Lies well on the flat",
		Because: "On flat ground there is no shoulder to hug.", Sources: []*table.Source{&table.Practice}, Fires: "pepper-narrow-roll",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Height > 0 || o != question.Smooth {
				return silent()
			}
			return speaksFor(flatFit, "On a flat bed smooth film lies well.")
		}},
	{ID: "surface-summer-heat", Speaks: question.Surface, Weight: Plain, Title: "Summer heat",
		Because: "Smooth film goes slack in heat and tears at the shoulder when it shrinks.", Sources: []*table.Source{&table.Practice, &table.Embossing}, Fires: "tomato-high-summer",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o != question.Smooth || f.Height == 0 || f.HotSeason < 1 {
				return silent()
			}
			return against(saturate(f.HotSeason, slackHalf), "About {} before harvest: on a raised bed smooth film stretches and tears in heat.", unit.Count(int(math.Round(f.HotSeason)), "hot day", "hot days"))
		}},
	{ID: "surface-contact", Speaks: question.Surface, Weight: Plain, Title: "Contact with cold soil",
		Because: "Opaque film warms only what it touches.", Sources: []*table.Source{&table.Contact, &table.Embossing}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			short := bareShort(f)
			if o != question.Embossed || float64(short) < tellable {
				return silent()
			}
			return speaksFor(saturate(float64(short), contactHalf), "On planting day bare ground is {} cooler than the {} that planting waits for: film that touches the soil warms it best.", short, f.WorkFloor)
		}},
	{ID: "surface-price", Speaks: question.Surface, Weight: Slight, Title: "Price",
		Because: "A small saving for each roll.", Sources: []*table.Source{&table.Practice}, Fires: "corn-short-season",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if o != question.Smooth {
				return silent()
			}
			return speaksFor(cheapFit, "Smooth film is cheaper.")
		}},
	{ID: "surface-by-hand", Speaks: question.Surface, Weight: Slight, Title: "Laid by hand",
		Because: "Hands cannot pull film as tight as a layer; smooth film slides more easily.", Sources: []*table.Source{&table.Memory}, Fires: "flowers-by-hand",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Practice.Laying != "hand" || o != question.Smooth {
				return silent()
			}
			return speaksFor(slidesFit, "Laid by hand, smooth film is easier to pull straight.")
		}},
	{ID: "surface-wind", Speaks: question.Surface, Weight: Slight, Title: "Wind",
		Because: "Film that stays tight does not flap.", Sources: []*table.Source{&table.Embossing}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if f.Case.Field.Exposure != "windy" || o != question.Embossed {
				return silent()
			}
			return speaksFor(tightFit, "Your field is windy: embossed film stays tight and does not flap.")
		}},
}
