// The page writes no advice files, so its program is built without this.

//go:build !page

package casefile

import (
	"filmfurrow/rules/plan"
)

// basePart is what goes under the film before it is laid, in kg/ha of field with beds
// at bed_centres_m, and for the whole job.
type basePart struct {
	Bare      bool                    `json:"bare_ground,omitempty"`     // film is refused: before planting, not under film
	Down      bool                    `json:"film_is_down,omitempty"`    // nothing can go under it
	For       string                  `json:"table_stands_in,omitempty"` // the crop whose row it is
	Centres   float64                 `json:"bed_centres_m"`
	Bed       float64                 `json:"bed_m,omitempty"`
	Spread    string                  `json:"spread"`
	Width     float64                 `json:"strip_width_m"`
	Nutrients map[string]nutrientPart `json:"nutrients"`
	Grade     map[string]float64      `json:"product_grade_percent,omitempty"`
	Product   *float64                `json:"product_kg,omitempty"`
	Ends      string                  `json:"product_is_full_of,omitempty"`
	Per100    float64                 `json:"product_kg_per_100m,omitempty"`
	Strip     float64                 `json:"product_kg_per_m2_of_strip,omitempty"`
	Lime      float64                 `json:"lime_kg,omitempty"`
	AWeek     float64                 `json:"tape_n_kg_ha_week"`
	Weeks     int                     `json:"tape_weeks"`
	From      string                  `json:"tape_from"`
	Says      []string                `json:"says"`
	Steps     []stepLine              `json:"steps"`
	Cautions  []waterCaution          `json:"cautions"`
	Sources   []sourceLine            `json:"sources"`
}

type nutrientPart struct {
	Basis     string   `json:"basis"`
	Total     float64  `json:"season_kg_ha"`
	Low       *float64 `json:"table_from_kg_ha,omitempty"` // untested: what the richest soil is given
	High      float64  `json:"table_to_kg_ha,omitempty"`
	Share     float64  `json:"share_under_film_percent"`
	Under     float64  `json:"under_film_kg_ha"`
	Water     float64  `json:"with_water_kg_ha"`
	Tape      float64  `json:"through_tape_kg_ha"`
	UnderMass float64  `json:"under_film_kg,omitempty"`
	TapeMass  float64  `json:"through_tape_kg,omitempty"`
	InProduct float64  `json:"in_product_kg,omitempty"`
	Rest      float64  `json:"from_another_bag_kg,omitempty"`
	Note      string   `json:"note,omitempty"`
}

func base(b *plan.BaseFertiliser) *basePart {
	p := &basePart{Bare: b.Bare, Down: b.Down, For: b.For, Centres: four(float64(b.Centres)), Bed: four(float64(b.Bed)), Spread: "beds", Width: four(float64(b.Width)),
		Nutrients: map[string]nutrientPart{}, Per100: float64(b.Per100), Strip: float64(b.Strip), Lime: float64(b.Lime), AWeek: float64(b.AWeek), Weeks: b.Weeks, From: b.From.String(),
		Says: phrases(b.Says), Steps: steps(b.Steps), Sources: sourceLines(b.Sources)}
	if b.OverField || b.Bare {
		p.Spread = "field"
	}
	for i := range b.Nutrients {
		n := &b.Nutrients[i]
		line := nutrientPart{Basis: n.Basis.Key(), Total: float64(n.Total), High: float64(n.High), Share: four(float64(n.Share)), Under: float64(n.Under), Water: float64(n.Water), Tape: float64(n.Tape),
			UnderMass: float64(n.UnderMass), TapeMass: float64(n.TapeMass), InProduct: float64(n.InProduct), Note: n.Note}
		if n.Basis == plan.Untested {
			low := float64(n.Low)
			line.Low = &low
		}
		if b.Told() && b.Bed > 0 {
			line.Rest = float64(n.Rest)
		}
		p.Nutrients[plan.NutrientKeys[i]] = line
	}
	if b.Told() {
		p.Grade = map[string]float64{}
		for i, g := range b.Grade {
			p.Grade[plan.NutrientKeys[i]] = float64(g)
		}
		if b.Bed > 0 {
			mass := float64(b.Product)
			p.Product, p.Ends = &mass, plan.NutrientKeys[b.Ends]
		}
	}
	for _, c := range b.Cautions {
		p.Cautions = append(p.Cautions, waterCaution{c.ID, c.Text, c.LastWord})
	}
	return p
}

// coverLine is one row cover or low tunnel that wins days.
type coverLine struct {
	ID      string       `json:"cover"`
	Asked   bool         `json:"needed"` // without covers there is no day
	First   string       `json:"first_day"`
	Bare    string       `json:"first_day_without,omitempty"`
	Won     int          `json:"days_won"`
	Night   [2]float64   `json:"night_gain_k"`
	Day     [2]float64   `json:"day_gain_k"`
	Vent    float64      `json:"vent_above_c"` // outside, in the sun
	OffOn   string       `json:"take_off_from"`
	Hoops   int          `json:"hoops,omitempty"`
	Length  float64      `json:"cover_m,omitempty"`
	Width   float64      `json:"cover_width_m"`
	Says    []string     `json:"says"`
	Sources []sourceLine `json:"sources"`
}

func coverLines(list []plan.CoverChoice) []coverLine {
	lines := make([]coverLine, len(list))
	for i := range list {
		c := &list[i]
		lines[i] = coverLine{ID: c.Cover.ID, Asked: c.Asked, First: c.First.String(), Won: int(c.Won),
			Night: [2]float64{four(float64(c.Cover.Night.Low)), four(float64(c.Cover.Night.High))}, Day: [2]float64{four(float64(c.Cover.Day.Low)), four(float64(c.Cover.Day.High))},
			Vent: float64(c.Vent), OffOn: c.OffOn.String(), Hoops: c.Hoops, Length: four(float64(c.Length)), Width: four(float64(c.Width)), Says: phrases(c.Says), Sources: sourceLines(c.Sources)}
		if c.Bare.Given {
			lines[i].Bare = c.Bare.Value.String()
		}
	}
	return lines
}
