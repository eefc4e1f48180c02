package rules_test

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// window is a published usual planting window of one crop at one place.
type window struct {
	crop, place, season string
	first               unit.Date
	last                unit.Optional[unit.Date]
	asks                field.Case // who wants the first day
}

// windows reads those whose dates were seen in their source, each named there.
func windows(t *testing.T, period string) (list []window) {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	for _, row := range published(t, "planting-dates.csv") {
		if row["mark"] != "seen" {
			continue
		}
		c, err := casefile.Decode([]byte(fmt.Sprintf(`{"version":1,"crop":%q,"method":%q,"plant_on":"2027-%s","place":{"station":%q,"period":%q},"soil":{"texture":"loam"},"weeds":{"pressure":"moderate"}}`,
			row["crop"], row["method"], row["earliest"], row["station"], period)), places)
		require.NoError(t, err)
		w := window{crop: row["crop"], place: row["place"], season: row["season"], first: c.PlantOn.Value, asks: c}
		if last := row["latest"]; last != "" {
			day, err := unit.ParseDate("2027-" + last)
			require.NoError(t, err)
			w.last = unit.Known(day)
		}
		list = append(list, w)
	}
	return list
}

// The planting days that the tool allows are those that growers keep: own earliest day
// against the published first day, and the window kept for a grower who asks for it, in
// a usual, a warm and a cool spring. Sources stand beside each row of the table. Growers
// get the newest climate; the lists were written in the years of the older one, on which
// the rules are held crop by crop.
func TestPublishedPlantingWindows(t *testing.T) {
	for _, period := range []string{field.NewerYears, field.OlderYears} {
		risks := []string{"usual"}
		if period == field.NewerYears && long.Asked() {
			risks = append(risks, "warm", "cool")
		}
		t.Run(period, func(t *testing.T) { windowsIn(t, period, risks) })
	}
}

func meanOf(days []float64) float64 {
	sum := 0.0
	for _, d := range days {
		sum += d
	}
	return sum / float64(len(days))
}

func windowsIn(t *testing.T, period string, risks []string) {
	list := windows(t, period)
	require.Greater(t, len(list), 95)
	var off, fall, sown, bare []float64
	byCrop := map[string][]float64{}
	kept, windowed := map[string]int{}, 0
	far := 0
	for _, w := range list {
		if w.last.Given {
			windowed++
		}
		var earliest unit.Date
		for _, risk := range risks {
			c := w.asks
			c.Risk = risk
			soil, err := facts.NewSoilYear(c)
			require.NoError(t, err)
			f, _ := settled(t, c, soil, nil)
			if w.last.Given && f.Plant <= w.last.Value {
				kept[risk]++
			}
			if risk == "usual" {
				c.PlantOn = unit.Known(w.first.Plus(-42))
				g, _ := settled(t, c, soil, f)
				earliest = g.Plant
				if g.Crop.Warm && g.Seeded {
					open, _ := g.Season.NextOpen(facts.Bare, c.PlantOn.Value, facts.UsualSpring)
					sown, bare = append(sown, float64(earliest.Minus(w.first))), append(bare, float64(open.Minus(w.first)))
				}
			}
		}
		days := float64(earliest.Minus(w.first))
		if w.season != "spring" { // the fall's first day is set by heat
			t.Logf("%-14s %-34s published %s, own earliest %s: %+.0f days", w.crop, w.place, w.first, earliest, days)
			fall = append(fall, math.Abs(days))
			continue
		}
		off = append(off, days)
		byCrop[w.crop] = append(byCrop[w.crop], days)
		if math.Abs(days) > 14 {
			far++
		}
		t.Logf("%-14s %-34s published %s, own earliest %s: %+.0f days", w.crop, w.place, w.first, earliest, days)
	}
	sizes := make([]float64, len(off))
	for i, days := range off {
		sizes[i] = math.Abs(days)
	}
	slices.Sort(sizes)
	mean, median := meanOf(off), sizes[len(sizes)/2]
	t.Logf("%d windows: mean %+.1f days, median size %.0f, more than 14 days out %d (%.0f %%); kept of %d: usual %d, warm %d, cool %d",
		len(off), mean, median, far, 100*float64(far)/float64(len(off)), windowed, kept["usual"], kept["warm"], kept["cool"])
	// Lists name no film for what is sown: their first day lies between ours under film and
	// ours on bare ground.
	underFilm, onBare := meanOf(sown), meanOf(bare)
	t.Logf("%d windows of sown warm crops: mean %+.1f days under film, %+.1f on bare ground", len(sown), underFilm, onBare)
	assert.Less(t, underFilm, 0.0)
	assert.Greater(t, onBare, 0.0)
	slices.Sort(fall)
	t.Logf("%d windows of the fall: median size %.0f, largest %.0f", len(fall), fall[len(fall)/2], fall[len(fall)-1])
	assert.LessOrEqual(t, fall[len(fall)/2], 7.0)
	assert.LessOrEqual(t, fall[len(fall)-1], 14.0)
	page, err := os.ReadFile("VALIDATION.md")
	require.NoError(t, err)
	row := fmt.Sprintf("| %s | %+.1f days | %.0f days | %.0f %%, %d of %d | %d of %d |", strings.Replace(period, "-", "–", 1), mean, median, 100*float64(far)/float64(len(off)), far, len(off), kept["usual"], windowed)
	row = strings.ReplaceAll(row, "-", "−")
	assert.True(t, strings.Contains(string(page), row), "VALIDATION.md must say: %s", row)
	assert.LessOrEqual(t, math.Abs(mean), 3.0)
	// We aim at 5 days and 98 %; 12 % is met by the newest normals. What is out lies mostly in the regional lists of
	// cole crops, whose first days come from the hardiest growers of half a state.
	assert.LessOrEqual(t, median, 6.0)
	assert.LessOrEqual(t, float64(far), 0.145*float64(len(off)))
	for risk, n := range kept {
		assert.GreaterOrEqual(t, float64(n), 0.97*float64(windowed), risk)
	}
	var crops []string
	for crop := range byCrop {
		crops = append(crops, crop)
	}
	slices.Sort(crops)
	for _, crop := range crops {
		mean := meanOf(byCrop[crop])
		t.Logf("  %-14s %+.1f days on %d windows", crop, mean, len(byCrop[crop]))
		if len(byCrop[crop]) > 1 { // one window is no mean: sweet corn's, in Maine, is 11 days later than ours
			assert.LessOrEqual(t, math.Abs(mean), 8.0, crop)
		}
	}
}
