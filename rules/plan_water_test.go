package rules_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/model/water"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// A source that pushes too little feeds no tape at all, and less pressure never
// brings one back. The plan still says why and shows ways out.
func TestNoTapeWithoutPressure(t *testing.T) {
	c := pack(t)["pepper-cool-spring"]
	fits, noPush := false, 0
	for kPa := unit.Kilopascals(10); kPa <= 90; kPa += 2.5 {
		c.Water.Pressure = unit.Known(kPa)
		a := advise(t, c)
		p := a.WaterPlan()
		_, ok := a.Tape.Best()
		assert.False(t, fits && !ok, "%v kPa fits no tape, and less fitted one", kPa)
		fits = fits || ok
		assert.Equal(t, ok, p.Chosen, "%v kPa", kPa)
		for _, r := range a.Tape.Ranked {
			if s := &a.Facts.Sketch[r.Option]; s.NoPush {
				noPush++
				assert.Zero(t, s.PeakRun)
				require.NotNil(t, r.RuledOutBy, "%v kPa", kPa)
				assert.Equal(t, "tape-low-pressure", r.RuledOutBy.Rule.ID, "%v kPa", kPa)
			}
		}
		if !ok {
			assert.Equal(t, water.DoesNotFit, p.Verdict, "%v kPa", kPa)
			assert.Len(t, p.Remedies, 3, "%v kPa", kPa)
			assert.Equal(t, "No tape fits this source and these beds, so there is no run time to give.", a.Water.Says.In(unit.Metric))
		}
	}
	assert.True(t, fits, "plenty of pressure")
	assert.Positive(t, noPush)
}

// One truth: the answer card, the tape rules and the gate say what the plan
// says.
func TestWaterPlanAgreesWithTheAnswers(t *testing.T) {
	fits, not := 0, 0
	for id, c := range pack(t) {
		a := advise(t, c)
		p := a.WaterPlan()
		require.Empty(t, p.Problems, id)
		s := &a.Facts.Sketch[a.Facts.Tape]
		assert.Equal(t, p.Demand.Peak.Use, a.Water.Peak, id)
		assert.Equal(t, p.Demand.First.Use, a.Water.Start, id)
		assert.Equal(t, unit.Litres(p.Demand.Peak.Gross), a.Water.PeakLitres, id)
		assert.Equal(t, p.Tape.Spread, s.Spread, id)
		assert.Equal(t, p.Tape.BedFlow, s.BedFlow, id)
		assert.Equal(t, p.Verdict == water.DoesNotFit, len(s.Stops) > 0, id)
		gated := false
		for _, g := range a.Verdict.Ranked {
			for _, f := range g.Factors {
				gated = gated || f.Rule.ID == "flow-short"
			}
		}
		assert.Equal(t, p.Verdict == water.DoesNotFit, gated, "%s: the gate and the plan", id)
		if _, ok := a.Tape.Best(); !ok {
			assert.False(t, p.Chosen, id)
			continue
		}
		assert.Equal(t, p.Demand.Peak.Run, a.Water.PeakMinutes, id)
		assert.Equal(t, p.Demand.Peak.Runs, a.Water.RunsADay, id)
		assert.Equal(t, p.Demand.First.Run, a.Water.StartMinutes, id)
		assert.Equal(t, p.Verdict != water.DoesNotFit, a.Water.Fits, id)
		if p.Soil != nil {
			assert.Equal(t, p.Soil.Longest, a.Water.SingleRun, id)
		}
		if p.Schedule != nil && p.Schedule.HoursADay.Given {
			assert.Equal(t, len(p.Schedule.Zones), a.Water.Zones, id)
			assert.Equal(t, p.Schedule.HoursADay.Value, a.Water.HoursADay, id)
			assert.Equal(t, p.Schedule.HoursGiven, a.Water.HoursHad, id)
		}
		if p.Verdict == water.DoesNotFit {
			not++
			assert.Len(t, p.Remedies, 3, id)
		} else {
			fits++
		}
	}
	assert.Positive(t, fits)
	assert.Positive(t, not, "the pack should hold a plan that does not fit, or this test shows half")
}

// Whatever the form takes, the water model takes.
func TestEveryCaseHasAWaterPlan(t *testing.T) {
	base := pack(t)["pepper-cool-spring"]
	ground, err := facts.NewSoilYear(base)
	require.NoError(t, err)
	rapid.Check(t, func(t *rapid.T) {
		c := base
		for i := range field.Inputs {
			in := &field.Inputs[i]
			group, _, _ := strings.Cut(in.Name, ".")
			if group != "water" && group != "field" && group != "feed" && in.Name != "soil.organic_percent" && in.Name != "soil.slope_percent" && in.Name != "crop" ||
				in.Name == "field.bed_top_m" || !rapid.Bool().Draw(t, "give "+in.Name) {
				continue
			}
			v := field.Value{}
			switch in.Form {
			case field.FormNumber:
				high := in.High
				if in.Name == "field.bed_length_m" && rapid.IntRange(0, 19).Draw(t, "short") > 0 {
					high = 120 // kilometre beds take a tenth of a second each
				}
				v.Number = rapid.OneOf(rapid.Just(in.Low), rapid.Just(high), rapid.Float64Range(in.Low, high)).Draw(t, in.Name)
			case field.FormWhole:
				v.Number = float64(rapid.IntRange(int(in.Low), min(int(in.High), 200)).Draw(t, in.Name))
			case field.FormChoice:
				v.Word = rapid.SampledFrom(in.Options).Draw(t, in.Name).ID
			default:
				continue
			}
			in.Set(&c, v)
		}
		if len(field.Check(&c)) > 0 {
			t.Skip("not a case")
		}
		a, err := rules.AdviseOn(ground, c)
		require.NoError(t, err)
		p := a.WaterPlan()
		require.Empty(t, p.Problems)
		require.NotEmpty(t, p.Because)
		if p.Verdict == water.DoesNotFit {
			assert.Len(t, a.Facts.Sketch[a.Facts.Tape].Stops, len(p.Because))
		}
		for _, w := range p.Warnings {
			assert.True(t, w.Says.Complete(), w.Says.Text)
		}
		for _, s := range p.Steps {
			for _, q := range append(s.Inputs, s.Result) {
				assert.False(t, math.IsNaN(q.Quantity.SI) || math.IsInf(q.Quantity.SI, 0), "%s: %s", s.ID, q.Name)
			}
		}
	})
}

// A field typed in gallons, feet and psi gives the plan of the same field typed
// in litres, metres and kilopascals.
func TestUSAndMetricGiveOnePlan(t *testing.T) {
	typed := func(system unit.System, texts map[string]string) water.Plan {
		c := pack(t)["pepper-cool-spring"]
		for name, text := range texts {
			in := field.InputByName(name)
			v, err := in.Kind.Read(text, system)
			require.NoError(t, err)
			in.Set(&c, field.Value{Number: v})
		}
		a := advise(t, c)
		return a.WaterPlan().Plan
	}
	us := typed(unit.US, map[string]string{"water.flow_l_h": "20", "field.bed_length_m": "250", "water.pressure_kpa": "30", "water.rise_m": "10", "water.header_m": "100",
		"feed.rate_kg_ha_day": "1", "feed.stock_kg_l": "1", "feed.grade_percent": "20", "feed.injector_ratio": "100"})
	metric := typed(unit.Metric, map[string]string{"water.flow_l_h": "4542.4941408", "field.bed_length_m": "76.2", "water.pressure_kpa": "206.84271879505083", "water.rise_m": "3.048", "water.header_m": "30.48",
		"feed.rate_kg_ha_day": "1.1208511561", "feed.stock_kg_l": "0.1198264273", "feed.grade_percent": "20", "feed.injector_ratio": "100"})
	assert.Equal(t, us.Schedule, metric.Schedule)
	assert.Equal(t, us.Demand, metric.Demand)
	assert.Equal(t, us.Supply, metric.Supply)
	assert.Equal(t, us.Tape, metric.Tape)
	assert.Equal(t, us.Feeding, metric.Feeding)
	require.NotNil(t, us.Feeding)
}

// More flow never means more hours, more beds never fewer, a longer bed never a
// more even one, and a longer day never turns a plan that fits into one that
// does not.
func TestWaterPlanIsMonotone(t *testing.T) {
	c := pack(t)["melon-weak-well"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	// The tape is held, since a better source may choose another.
	cut := 0
	sketchOf := func(c field.Case) water.Sketch {
		a, err := rules.AdviseOn(ground, c)
		require.NoError(t, err)
		cut = a.Facts.Stretches
		return a.Facts.Sketch[0]
	}
	last := unit.Hours(math.Inf(1))
	for flow := 600.0; flow < 6000; flow *= 1.1 {
		c.Water.Flow = unit.Known(unit.LitresPerHour(flow))
		if s := sketchOf(c); s.HoursADay.Given {
			assert.LessOrEqual(t, s.HoursADay.Value, last)
			last = s.HoursADay.Value
		}
	}
	assert.False(t, math.IsInf(float64(last), 1))
	last = 0
	for beds := 1.0; beds < 60; beds++ {
		c.Field.Beds = unit.Known(beds)
		s := sketchOf(c)
		assert.GreaterOrEqual(t, s.HoursADay.Value, last)
		last = s.HoursADay.Value
	}
	spread, before := unit.Percent(0), 1
	for length := 10.0; length < 300; length += 10 {
		c.Field.BedLength = unit.Known(unit.Metres(length))
		s := sketchOf(c)
		if cut == before { // a bed that is cut has shorter lines
			assert.GreaterOrEqual(t, s.Spread, spread)
		}
		spread, before = s.Spread, cut
	}
	assert.Equal(t, 2, before)
	c = pack(t)["melon-weak-well"]
	fitted := false
	for hours := 1.0; hours <= 24; hours++ {
		c.Water.Hours = unit.Known(hours)
		fits := len(sketchOf(c).Stops) == 0
		assert.True(t, fits || !fitted)
		fitted = fitted || fits
	}
	assert.True(t, fitted)
}

// With no flow there is a need and a run time, and neither zones nor hours.
func TestNoFlowInventsNothing(t *testing.T) {
	c := pack(t)["pepper-cool-spring"]
	c.Water.Flow = unit.Optional[unit.LitresPerHour]{}
	a := advise(t, c)
	p := a.WaterPlan()
	assert.Equal(t, water.Undecided, p.Verdict)
	assert.Nil(t, p.Schedule)
	assert.Positive(t, p.Demand.Peak.Run)
	fields := []string{}
	for _, m := range p.Missing {
		fields = append(fields, m.Field)
	}
	assert.Contains(t, fields, "flow_l_h")
}

// The engine's soil table draws the wet zone, the water model reckons with it:
// both must hold one width.
func TestSoilTablesAgree(t *testing.T) {
	for i := range table.Soils {
		s := &table.Soils[i]
		class := facts.WaterClass(s)
		assert.Equal(t, s.Wetted.Value, class.Wet, s.ID)
		assert.InDelta(t, s.WaterHeld.Value, 1000*class.Of(soilwater.UsualOrganicMatter).Available, 1.5, s.ID)
	}
}

// Checks on the size of the answer, common practice, no source: in the
// mid-Atlantic summer, tape of 0.5 gal/min for 100 ft runs 2 to 3 h a day for
// maturing vegetables; drip can save up to half the water. Ours is printed
// beside, for the station nearest to 38.6° N, 75.6° W, in July.
//
// Tomato disagrees twice: 1.9 h, and 61 % saved. Film cuts its coefficient by 35 %
// (FAO-56 table 25; an eddy-covariance study of drip under black film found 31 to
// 40 %), more than that of any other crop.
func TestMidAtlanticJuly(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	station, _ := places.Nearest(38.6, -75.6, unit.Optional[unit.Metres]{})
	for _, crop := range []string{"tomato", "bell-pepper", "muskmelon", "cucumber"} {
		c := pack(t)["least-known"]
		c.Crop, c.PlantOn, c.Soil.Texture = crop, unit.Known(unit.On(2027, 5, 5)), "sandy-loam"
		c.Method = ""
		c.Place = field.Place{Latitude: unit.Known(station.Latitude), Longitude: unit.Known(station.Longitude), Elevation: unit.Known(station.Elevation),
			HasNormals: true, TMin: station.Older.Value.Min, TMax: station.Older.Value.Max, Own: true}
		a := advise(t, c)
		p := a.WaterPlan()
		tape := unit.FromGallonsPerMinutePer100Feet(0.5)
		hours := float64(p.Demand.Peak.Gross) / float64(tape)
		t.Logf("%s, %s, hungriest day: use %.1f mm, %.1f h of 0.5 gal/min tape; rule of thumb 2–3 h", station.Name, crop, float64(p.Demand.Peak.Use), hours)
		assert.InDelta(t, 2.5, hours, 0.65, crop)
		assert.Equal(t, crop != "tomato", hours >= 2 && hours <= 3, "tomato alone is outside the rule of thumb")
		assert.Contains(t, limit(a, "water-thumb"), unit.Of(unit.Hours(math.Round(hours*10)/10)).In(unit.US)+" for "+strings.ReplaceAll(crop, "-", " "))
		for _, check := range p.Checks {
			if check.ID == "rule-of-thumb" || check.ID == "half-the-water" {
				t.Logf("  %s (agrees: %v)", check.Says.In(unit.US), check.Agrees)
			}
			if check.ID == "half-the-water" {
				assert.InDelta(t, 50, check.Ours.SI, 12, crop)
				assert.Equal(t, crop != "tomato", check.Agrees, "tomato alone goes past the claim")
				if crop == "tomato" {
					assert.Contains(t, limit(a, "water-half"), check.Ours.In(unit.US))
				}
			}
		}
	}
}

// Coefficients measured under film, beside ours. Melon under plastic in a dry
// climate, by Bowen ratio: 0.26, 0.96 and 0.63 of the reference (Scientia
// Agricola 72(5), 2015). Ours are lower throughout: at first since FAO-56 (chapter 10)
// gives young plants under plastic a tenth, at mid-season since it gives cantaloupe 0.85.
// Purdue's hotline gives tomato and watermelon five weeks after planting 0.72 and 0.57.
// Cucumber on drip with black film used 243 mm against 288 mm on drip alone, 16 % less
// (recomputed from Agricultural Water Management, 2013, Syria): ours saves more, by the
// same low start. The limits say all of it, and are held to what is computed here.
func TestMeasuredUnderFilm(t *testing.T) {
	curve := func(id string) (demand.Crop, demand.FilmCut) {
		c := table.CropByID(id)
		var stages [4]unit.Days
		for i, days := range c.StageDays {
			stages[i] = unit.Days(days)
		}
		return demand.Crop{Initial: c.KcIni.Value, Mid: c.KcMid.Value, End: c.KcEnd.Value, Stages: stages},
			demand.FilmCut{Low: unit.Percent(c.FilmSaving.Low), High: unit.Percent(c.FilmSaving.High)}
	}
	under := func(c demand.Crop, cut demand.FilmCut, day int) float64 {
		_, cover := c.At(day)
		k, _ := c.UnderFilm(cut.At(cover)).At(day)
		return k
	}
	melon, cut := curve("muskmelon")
	season := int(melon.Season())
	a := advise(t, pack(t)["pepper-cool-spring"])
	for _, row := range []struct {
		stage           string
		day             int
		published, ours float64
	}{{"initial", 5, 0.26, 0.12}, {"mid-season", 80, 0.96, 0.81}, {"late", season, 0.63, 0.57}} {
		got := under(melon, cut, row.day)
		t.Logf("melon, %s: published %.2f, ours %.2f", row.stage, row.published, got)
		assert.InDelta(t, row.ours, got, 0.006, row.stage)
		assert.Contains(t, limit(a, "water-melon"), unit.Of(row.ours).In(unit.US), row.stage)
	}
	cucumber, cut := curve("cucumber")
	bare, filmed := 0.0, 0.0
	for day := range int(cucumber.Season()) {
		bare += under(cucumber, demand.FilmCut{}, day)
		filmed += under(cucumber, cut, day)
	}
	saved := 1 - filmed/bare
	t.Logf("cucumber: film saves %.0f %% over the season; published 16 %%", 100*saved)
	assert.Contains(t, limit(a, "water-melon"), unit.Of(unit.PercentOf(saved)).In(unit.US), "what the limit says of cucumber")
	assert.Greater(t, saved, 1-243.0/288)
	assert.Less(t, saved, 0.35, "the most that FAO-56 gives for film")
	for _, row := range []struct {
		crop      string
		published float64
		film      bool
	}{{"tomato", 0.72, false}, {"tomato", 0.72, true}, {"watermelon", 0.57, false}, {"watermelon", 0.57, true}} {
		c, cut := curve(row.crop)
		if !row.film {
			cut = demand.FilmCut{}
		}
		got := math.Round(100*under(c, cut, 35)) / 100
		t.Logf("%s at five weeks, film %v: Purdue %.2f, ours %.2f", row.crop, row.film, row.published, got)
		assert.Contains(t, limit(a, "water-purdue"), unit.Of(got).In(unit.US), row.crop)
	}
}

// Under film the planting day is told as a range, from FAO-56's low coefficient of
// young plants (chapter 10: "often as low as 0.10") to its general saving of 10–30 %.
// Melon's measured 0.26 of the reference lies inside (Scientia Agricola 72(5), 2015);
// watermelon's 14 mm a week (HortScience 35(4):556, 2000) lies above it, stated as a
// miss: FAO-56 gives watermelon 0.40 at first on bare ground and film a quarter off.
func TestYoungPlantsAreToldARange(t *testing.T) {
	for _, row := range []struct {
		crop  string
		daily func(reference float64) float64 // mm
	}{
		{"muskmelon", func(r float64) float64 { return 0.26 * r }},
		{"watermelon", func(float64) float64 { return 14.0 / 7 }},
	} {
		c := pack(t)["melon-weak-well"]
		c.Crop, c.Method = row.crop, ""
		a := advise(t, c)
		p := a.WaterPlan()
		month := p.Demand.Months[0]
		first := p.Demand.First
		measured := row.daily(float64(month.Reference))
		t.Logf("%s: %.2f to %.2f mm a day, measured %.2f", row.crop, float64(first.Use), float64(first.UseMost), measured)
		assert.Less(t, float64(first.Use), measured, row.crop)
		if row.crop == "watermelon" {
			assert.Greater(t, float64(first.UseMost), 0.7*measured, row.crop)
		} else {
			assert.Greater(t, float64(first.UseMost), measured, row.crop)
		}
		if a.Water.Fits {
			assert.Contains(t, a.Water.Says.In(unit.US), "what you feel decides")
		}
	}
}

// limit gives one of the advice's limits in US units.
func limit(a plan.Advice, id string) string {
	for _, l := range a.Limits {
		if l.ID == id {
			return l.Text.In(unit.US)
		}
	}
	return ""
}

func TestBucket(t *testing.T) {
	// 5 gal in 45 s is 400 gal/h (tree-drip slide set, which cuts it to 399).
	assert.InDelta(t, 400*unit.LitresPerGallon, float64(plan.Bucket(5*unit.LitresPerGallon, 45)), 0.1)
	assert.Zero(t, plan.Bucket(10, 0))
	assert.Zero(t, plan.Bucket(-10, 5))
}

func BenchmarkWaterPlan(b *testing.B) {
	a, err := rules.Advise(pack(b)["pepper-cool-spring"])
	require.NoError(b, err)
	b.ReportAllocs()
	for b.Loop() {
		if p := a.WaterPlan(); p.Demand == nil {
			b.Fatal("no demand")
		}
	}
}
