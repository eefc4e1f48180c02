package heat

import (
	"bufio"
	"compress/gzip"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// plot is a station of the US Climate Reference Network: one year of air and of
// soil under grass.
type plot struct {
	name                string
	latitude, longitude float64
	height              float64 // m
	minimum, maximum    [366]float64
	soil                [Depths][366]float64 // NaN where missing
	mean30              [366]float64         // trailing 30-day mean of the air
	annual              float64              // mean of the air
	demand              float64              // evaporative demand of the growing season, mm a day
}

// The plots in order of station number are dealt in turn into two halves. All
// constants of the sward were fitted on the first half, and its form was chosen
// there among some fifty by leaving out one station at a time: the form before
// this one, with ten constants, then missed the station left out by 2.46 and
// 2.39 °C (means of root mean squares at 5 and 10 cm), this one with four by 1.89
// and 1.75 °C. The second half was asked once, after that. It is unseen by the
// fit and the choice, not by us: its scores had been seen under some eight earlier
// forms.
var fittedOn = []string{"03048", "03063", "04127", "04138", "13301", "23907", "53132", "53139",
	"53926", "54933", "63849", "63858", "94078", "94085", "94644"}

// plotHeights are those of the plots in order, m above the sea (NOAA, 1981–2010
// U.S. Climate Normals, list of stations).
var plotHeights = [30]float64{1477.4, 2656.6, 1336.9, 608.7, 1204.0, 1396.9, 1509.1, 1981.2, 253.9, 1065.0, 414.8, 290.2, 1466.4, 2016.9, 25.6,
	641.0, 271.3, 26.8, 596.5, 585.2, 240.8, 225.9, 58.8, 19.2, 1759.6, 1847.7, 647.4, 1765.4, 38.7, 362.4}

func plots(t testing.TB) (all []*plot) {
	t.Helper()
	file, err := os.Open("testdata/soil-2020.csv.gz")
	require.NoError(t, err)
	defer file.Close()
	unzipped, err := gzip.NewReader(file)
	require.NoError(t, err)
	reader := bufio.NewScanner(unzipped)
	var p *plot
	day := 0
	for reader.Scan() {
		line := reader.Text()
		if strings.HasPrefix(line, "#") {
			continue
		}
		fields := strings.Split(line, ",")
		v := make([]float64, len(fields))
		for i, f := range fields {
			v[i] = math.NaN()
			if f != "" {
				v[i], err = strconv.ParseFloat(f, 64)
				require.NoError(t, err)
			}
		}
		if len(v) == 3 {
			p = &plot{name: fields[0], latitude: v[1], longitude: v[2], height: plotHeights[len(all)]}
			all = append(all, p)
			day = 0
			continue
		}
		p.maximum[day], p.minimum[day] = v[0]/10, v[1]/10
		p.soil[0][day], p.soil[1][day] = v[2]/10, v[3]/10
		day++
	}
	require.Len(t, all, 30)
	for _, p := range all {
		bridge(&p.minimum)
		bridge(&p.maximum)
		p.prepare()
	}
	return all
}

// bridge fills missing days by straight lines.
func bridge(v *[366]float64) {
	last := -1
	for i := range v {
		if math.IsNaN(v[i]) {
			continue
		}
		for j := last + 1; j < i; j++ {
			if last < 0 {
				v[j] = v[i]
			} else {
				v[j] = v[last] + (v[i]-v[last])*float64(j-last)/float64(i-last)
			}
		}
		last = i
	}
	for j := last + 1; j < 366; j++ {
		v[j] = v[last]
	}
}

func (p *plot) prepare() {
	days := 0.0
	for d := range 366 {
		low, high := p.minimum[d], p.maximum[d]
		middle := (low + high) / 2
		p.annual += middle / 366
		if middle >= 5 {
			days++
			p.demand += float64(sky.Hargreaves(unit.Celsius(low), unit.Celsius(high), unit.Celsius(middle), sky.Extraterrestrial(unit.Degrees(p.latitude), d+1)))
		}
		for k := d - 30; k <= d; k++ {
			i := (k + 366) % 366
			p.mean30[d] += (p.minimum[i] + p.maximum[i]) / 62
		}
	}
	p.demand /= max(days, 1)
}

// sward is grassed ground over the same physics as the bed. How much grows, and
// how moist the ground below is, follow the climate's dryness: the evaporative
// demand of the growing season, from temperatures alone. Thatch insulates. Leaves
// shade the ground and stand at the temperature of the air, since they evaporate;
// below the thatch nothing does.
type sward struct {
	leaf   float64 // share of the ground under leaves where all grows
	wet    float64 // W/m/K, of the moistest ground
	thatch float64 // m²·K/W, of the thickest thatch
	limit  float64 // mm a day, the demand at which half of it grows
}

// fittedSward is the least-squares fit on the fifteen plots of fittedOn, March
// to September, both depths.
var fittedSward = sward{0.533, 1.318, 0.407, 4.466}

// What is not fitted: the albedo of the reference grass and the wind of FAO-56
// where none was measured; dry and moist loam after Lu and de Vries (rounded);
// thatch that lets no vapour through. The fit would like the growth to end at
// the limit as at an edge; it is held to fall from nine tenths to one tenth
// over 0.9 mm a day.
const (
	swardWind                  = 2.0 // m/s
	swardSharpness             = 5.0 // per mm a day
	dryConductivity            = 0.3 // W/m/K
	driestWater, moistestWater = 0.08, 0.32
	thatchResistance           = 1e4 // s/m
)

func clip(v, low, high float64) float64 { return math.Max(low, math.Min(high, v)) }

func (s *sward) run(p *plot, out *[Depths][366]float64) {
	const steps = 24
	growth := 1 / (1 + math.Exp(swardSharpness*(p.demand-s.limit)))
	water := driestWater + (moistestWater-driestWater)*growth
	ground := layer{dryConductivity + (s.wet-dryConductivity)*growth, HeatCapacity(1.4, water), water}
	skin := ground
	first := nodeDepths[1]
	skin.conductivity = first / (first/ground.conductivity + s.thatch*growth)
	g := newGrid(nodeDepths[:], skin, ground, first, 86400.0/steps, implicitness)
	place := site{unit.Degrees(p.latitude), unit.Metres(p.height), sky.InlandCoefficient, swardWind, 0.02}
	b := bare{albedo: sky.ReferenceAlbedo, resistance: thatchResistance}
	var c column
	for i := range g.nodes {
		c.temperature[i] = p.annual + 1
	}
	var hours [steps]hour
	for pass := range 2 {
		for d := range 366 {
			if pass == 0 && d < 200 {
				continue // half a year of running in
			}
			green := clip((p.mean30[d]-5)/15, 0, 1) * growth
			a := airDay{p.minimum[d], p.maximum[d], p.maximum[(d+365)%366], p.minimum[(d+1)%366], d + 1, 0, clip(s.leaf*green, 0, 1)}
			place.day(&a, hours[:])
			out[0][d], out[1][d] = 0, 0
			for k := range hours {
				c.advance(&g, func(coefficient, rest float64) (t, flux float64) {
					return b.balance(&hours[k], coefficient, rest, g.theta, c.temperature[0])
				})
				out[0][d] += c.temperature[g.five] / steps
				out[1][d] += c.temperature[g.ten] / steps
			}
		}
	}
}

// dampedSinusoid is the fallback of the figures: an annual wave about the air's
// mean plus 2 K, damped with depth, no weather.
func (p *plot) dampedSinusoid(out *[Depths][366]float64) {
	january, july := 0.0, 0.0
	for d := range 31 {
		january += (p.minimum[d] + p.maximum[d]) / 62
		july += (p.minimum[182+d] + p.maximum[182+d]) / 62
	}
	damping := math.Sqrt(2 * 0.5e-6 * 365 * 86400 / (2 * math.Pi))
	for d := range 366 {
		for i, z := range [Depths]float64{0.05, 0.10} {
			out[i][d] = p.annual + 2 + (july-january)/2*math.Exp(-z/damping)*math.Sin(2*math.Pi*float64(d+1-110)/365-z/damping)
		}
	}
}

// airOfTheWeek takes the soil for the air's mean of the last seven days.
func (p *plot) airOfTheWeek(out *[Depths][366]float64) {
	for d := range 366 {
		for i := range Depths {
			out[i][d] = 0
			for k := range 7 {
				j := (d - k + 366) % 366
				out[i][d] += (p.minimum[j] + p.maximum[j]) / 14
			}
		}
	}
}

type errorTally struct{ n, bias, square, absolute float64 }

func (e *errorTally) add(miss float64) {
	e.n++
	e.bias += miss
	e.square += miss * miss
	e.absolute += math.Abs(miss)
}

const marchFirst, octoberFirst = 60, 274 // indices in 2020

// score gives bias, root mean square and mean absolute error at one plot.
func (p *plot) score(depth int, model *[366]float64) (bias, rmse, mae float64) {
	var e errorTally
	for d := marchFirst; d < octoberFirst; d++ {
		if observed := p.soil[depth][d]; !math.IsNaN(observed) {
			e.add(model[d] - observed)
		}
	}
	return e.bias / e.n, math.Sqrt(e.square / e.n), e.absolute / e.n
}

// Soil under grass at 30 stations in 2020, from minimum and maximum temperature
// alone: NOAA, U.S. Climate Reference Network, daily product. Our aim is 2.0 °C
// at 5 cm and 1.8 °C at 10 cm on the half not used for fitting; the first
// prototype scored 2.9 °C on its unseen stations and 2.3 °C east of 97° W. The
// figures below are means over stations.
func TestSoilAtStations(t *testing.T) {
	type row struct {
		n               float64
		bias, rmse, mae [Depths]float64
	}
	groups := map[string]*row{}
	add := func(name string, p *plot, model *[Depths][366]float64) {
		r := groups[name]
		if r == nil {
			r = &row{}
			groups[name] = r
		}
		r.n++
		for d := range Depths {
			b, s, a := p.score(d, &model[d])
			r.bias[d] += b
			r.rmse[d] += s
			r.mae[d] += a
		}
	}
	var siteSquare, daySquare, lagged, lagBase, n float64
	for i, p := range plots(t) {
		half := "unseen 15"
		if i%2 == 0 {
			half = "fitted 15"
			require.Contains(t, fittedOn, p.name)
		}
		var ours, wave, week [Depths][366]float64
		fittedSward.run(p, &ours)
		p.dampedSinusoid(&wave)
		p.airOfTheWeek(&week)
		add(half+": this model", p, &ours)
		add(half+": damped sinusoid", p, &wave)
		add(half+": air of the last week", p, &week)
		if half == "unseen 15" && p.longitude > -97 {
			add("unseen east of 97° W: this model", p, &ours)
		}
		if half == "unseen 15" && p.longitude <= -97 {
			add("unseen west of 97° W: this model", p, &ours)
		}
		for d := range Depths {
			b, s, a := p.score(d, &ours[d])
			t.Logf("%s %-9s %5.1f° N %6.1f° E, %2d cm: bias %+.2f, RMSE %.2f, MAE %.2f °C", p.name, half, p.latitude, p.longitude, 5+5*d, b, s, a)
		}
		if half == "fitted 15" {
			b, s, _ := p.score(0, &ours[0])
			siteSquare += b * b
			daySquare += s*s - b*b
			n++
			for d := marchFirst; d < octoberFirst-7; d++ {
				x, y := ours[0][d]-p.soil[0][d]-b, ours[0][d+7]-p.soil[0][d+7]-b
				if !math.IsNaN(x + y) {
					lagged += x * y
					lagBase += x * x
				}
			}
		}
	}
	for _, name := range []string{"fitted 15: this model", "unseen 15: this model", "unseen east of 97° W: this model", "unseen west of 97° W: this model",
		"unseen 15: damped sinusoid", "unseen 15: air of the last week"} {
		r := groups[name]
		t.Logf("%-34s (%2.0f stations) 5 cm: bias %+.2f, RMSE %.2f, MAE %.2f; 10 cm: bias %+.2f, RMSE %.2f, MAE %.2f °C", name, r.n,
			r.bias[0]/r.n, r.rmse[0]/r.n, r.mae[0]/r.n, r.bias[1]/r.n, r.rmse[1]/r.n, r.mae[1]/r.n)
	}
	lasting, week := siteSquare/(siteSquare+daySquare), lagged/lagBase
	t.Logf("errors at the fitted stations, 5 cm: lasting %.2f K, daily %.2f K (the lasting part is %.2f of the variance); a daily error's correlation after a week %.2f",
		math.Sqrt(siteSquare/n), math.Sqrt(daySquare/n), lasting, week)
	assert.InDelta(t, placeShare, lasting, 0.02)
	assert.InDelta(t, week, math.Exp(-7/fadeDays), 0.02)
	unseen := groups["unseen 15: this model"]
	for d := range Depths {
		mine := unseen.rmse[d] / unseen.n
		for _, rival := range []string{"unseen 15: damped sinusoid", "unseen 15: air of the last week"} {
			assert.Less(t, mine, groups[rival].rmse[d]/groups[rival].n, "%s", rival)
		}
		assert.Less(t, mine, [Depths]float64{2.0, 1.8}[d], "the aim")
	}
	t.Logf("aim on unseen stations 2.0 and 1.8 °C: reached %.2f and %.2f °C", unseen.rmse[0]/unseen.n, unseen.rmse[1]/unseen.n)
	assert.InDelta(t, modelError, unseen.rmse[0]/unseen.n, 0.05, "the band's share for the model's own error is this measurement")
}

// The grassed ground from monthly normals alone, against the same office's
// long-term averages under sod at 4 in (notices of 2024, 2017, 2016 and 2018):
// 14 April 53 °F, 15 May 62.5, 15 June 67.1, first half of July 77. Not used for
// fitting.
func TestSodInIllinois(t *testing.T) {
	y, err := weather.NewYear(places["Illinois"])
	require.NoError(t, err)
	p := &plot{latitude: 40.0839, height: 219.8}
	for d := range 366 {
		i := min(d, 364)
		p.minimum[d], p.maximum[d] = float64(y.Minimum[i]), float64(y.Maximum[i])
	}
	p.prepare()
	var model [Depths][366]float64
	fittedSward.run(p, &model)
	square := 0.0
	rows := []struct {
		day    int
		theirs float64
	}{{104, 53}, {135, 62.5}, {166, 67.1}, {189, 77}}
	for _, row := range rows {
		ours, theirs := model[1][row.day], float64(unit.FromFahrenheit(row.theirs))
		square += (ours - theirs) * (ours - theirs)
		t.Logf("sod, 10 cm, Illinois, day %d: theirs %.1f, ours %.1f °C (%+.1f)", row.day, theirs, ours, ours-theirs)
	}
	rmse := math.Sqrt(square / float64(len(rows)))
	t.Logf("sod, Illinois, from normals: RMSE %.2f °C", rmse)
	assert.Less(t, rmse, 2.5)
}

// The constants are the fit they say they are: moving any one of them by a tenth
// does not lower the error on the fitted half by more than a hundredth.
func TestSwardIsAtItsBest(t *testing.T) {
	if testing.Short() {
		t.Skip("a few seconds")
	}
	var half []*plot
	for i, p := range plots(t) {
		if i%2 == 0 {
			half = append(half, p)
		}
	}
	cost := func(s sward) (sum float64) {
		for _, p := range half {
			var model [Depths][366]float64
			s.run(p, &model)
			for d := range Depths {
				_, rmse, _ := p.score(d, &model[d])
				sum += rmse * rmse
			}
		}
		return sum
	}
	best := cost(fittedSward)
	fields := func(s *sward) []*float64 {
		return []*float64{&s.leaf, &s.wet, &s.thatch, &s.limit}
	}
	for i := range fields(&fittedSward) {
		for _, factor := range []float64{0.9, 1.1} {
			moved := fittedSward
			*fields(&moved)[i] *= factor
			assert.Greater(t, cost(moved), best*0.99, "constant %d times %v", i, factor)
		}
	}
}
