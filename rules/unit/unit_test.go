package unit_test

import (
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/unit"
)

// The factors follow from the definitions of the inch (2.54 cm), the pound
// (0.45359237 kg), the US gallon (231 cubic inches) and standard gravity
// (9.80665 m/s²): NIST Special Publication 811 (2008), appendix B.
func TestFactorsFollowFromDefinitions(t *testing.T) {
	const gravity = 9.80665
	inch := 0.0254
	assert.InEpsilon(t, 12*inch, unit.MetresPerFoot, 1e-15)
	assert.InEpsilon(t, 231*math.Pow(10*inch, 3), unit.LitresPerGallon, 1e-14)
	assert.InEpsilon(t, unit.KilogramsPerPound*gravity/(inch*inch)/1000, unit.KilopascalsPerPSI, 1e-14)
	assert.InEpsilon(t, 550*unit.MetresPerFoot*unit.KilogramsPerPound*gravity/1000, unit.KilowattsPerHP, 1e-14)
	assert.InEpsilon(t, 43560*unit.MetresPerFoot*unit.MetresPerFoot, unit.SquareMetresPerAcre, 1e-14)
	assert.InEpsilon(t, 1/gravity, unit.MetresOfWaterPerKPa, 1e-14)
	assert.InEpsilon(t, 1000*inch, unit.MicrometresPerMil, 1e-14)
	assert.InDelta(t, 100, float64(unit.FromFahrenheit(212)), 1e-12)
	assert.InDelta(t, -40, float64(unit.FromFahrenheit(-40)), 1e-12)
	assert.InDelta(t, 10, float64(unit.FromFahrenheitDegrees(18)), 1e-12)
	assert.InEpsilon(t, 60.0, float64(unit.FromHorsepower(60))/unit.KilowattsPerHP, 1e-14)
	assert.InEpsilon(t, 38.1, float64(unit.FromMil(1.5)), 1e-12)
}

// What is printed, in both systems.
func TestQuantitiesInBothSystems(t *testing.T) {
	for _, row := range []struct {
		value      any
		metric, us string
	}{
		{unit.Celsius(20), "20 °C", "68 °F"},
		{unit.Celsius(0), "0 °C", "32 °F"},
		{unit.Celsius(-17.8), "−18 °C", "0 °F"},
		{unit.Between(unit.Celsius(-10), unit.Celsius(0)), "−10 to 0 °C", "14 to 32 °F"},
		{unit.Between(unit.Celsius(-10), unit.Celsius(-10)), "−10 °C", "14 °F"},
		{unit.CelsiusDegrees(10), "10 °C", "18 °F"},
		{unit.CelsiusDegrees(0.01), "less than 0.1 °C", "less than 1 °F"},
		{unit.Short(0.3048), "30 cm", "12 in"},
		{unit.Metres(60.96), "61 m", "200 ft"},
		{unit.Micrometres(25.4), "25 µm", "1 mil"},
		{unit.LitresPerHour(4542.4941408), "4,542 L/h", "20 gpm"},
		{unit.FromGallonsPerMinutePer100Feet(0.45), "335 L/h per 100 m", "0.45 gpm per 100 ft"},
		{unit.FromPSI(10), "70 kPa", "10 psi"},
		{unit.FromHorsepower(55), "41 kW", "55 hp"},
		{unit.PumpPower(unit.FromHorsepower(0.73)), "0.54 kW", "0.73 hp"},
		{unit.Kilograms(0.45359237), "0.5 kg", "1 lb"},
		{unit.FineMass(0.45359237), "0.45 kg", "1 lb"},
		{unit.Millimetres(25.4), "25.4 mm", "1 in"},
		{unit.FineDepth(4.57), "4.57 mm", "0.18 in"},
		{unit.Litres(3785.411784), "3,785 L", "1,000 gal"},
		{unit.FineVolume(3.785411784), "3.79 L", "1 gal"},
		{unit.Between(unit.RoughMass(199.1), unit.RoughMass(996)), "200 to 1,000 kg", "450 to 2,000 lb"},
		{unit.RoughMass(560), "550 kg", "1,200 lb"},
		{unit.RoughMass(7.4), "7 kg", "16 lb"},
		{unit.RoughVolume(9698), "9,500 L", "2,500 gal"},
		{unit.LitresPer100Metres(1000), "1,000 L per 100 m", "80.5 gal per 100 ft"},
		{unit.DecisiemensPerMetre(1.2), "1.2 dS/m", "1.2 dS/m"},
		{unit.Percent(10), "10%", "10%"},
		{unit.FineShare(6.31), "6.3%", "6.3%"},
		{unit.Days(1), "1 day", "1 day"},
		{unit.Days(1200), "1,200 days", "1,200 days"},
		{unit.Hours(2.25), "2.2 h", "2.2 h"},
		{unit.Minutes(157), "157 min", "157 min"},
		{unit.Minutes(240), "240 min", "240 min"},
		{unit.Minutes(372), "6.2 h", "6.2 h"},
		{unit.Distance(237634), "238 km", "148 mi"},
		{unit.Distance(512), "1 km", "less than 1 mi"},
		{unit.Along(unit.Metres(30.48)), "100 m", "100 ft"},
		{unit.Along(unit.Hours(1.5)), "4.9 h", "1.5 h"},
		{unit.Along(unit.Between(unit.Kilograms(3), unit.Kilograms(6))), "9.8 to 19.7 kg", "7 to 13 lb"},
		{unit.Between(unit.Minutes(180), unit.Minutes(372)), "3 to 6.2 h", "3 to 6.2 h"},
		{unit.MetresPerSecond(10), "36 km/h", "22 mph"},
		{unit.WaterSpeed(1.524), "1.52 m/s", "5 ft/s"},
		{unit.SmallFlow(1), "1 L/h", "0.264 gal/h"},
		{unit.PlantsPerSquareMetre(5), "5 plants per m²", "46 plants per 100 ft²"},
		{unit.MilligramsPerLitre(0.5), "0.5 mg/L", "0.5 mg/L"},
		{unit.KilogramsPerHectare(1.1208511561), "1.1 kg/ha", "1 lb/acre"},
		{unit.KilogramsPerLitre(0.1198264273), "0.12 kg/L", "1 lb/gal"},
		{unit.Bore(0.015875), "16 mm", "0.625 in"},
		{unit.MegajoulesPerSquareMetre(22.3), "22.3 MJ/m² a day", "22.3 MJ/m² a day"},
		{unit.Degrees(-23.5), "−23.5°", "−23.5°"},
		{unit.On(2027, 5, 20), "20 May 2027", "May 20, 2027"},
		{unit.YearDay(unit.On(2027, 5, 20)), "20 May", "May 20"},
		{unit.Short(0.1), "10 cm", "4 in"},
		{unit.Short(1.7), "170 cm", "67 in"},
		{unit.KilogramsPerHectare(37.36), "37 kg/ha", "33 lb/acre"},
		{12345, "12,345", "12,345"},
		{0.6, "0.6", "0.6"},
		{"black film", "black film", "black film"},
	} {
		assert.Equal(t, row.metric, unit.Of(row.value).In(unit.Metric), "%T %v", row.value, row.value)
		assert.Equal(t, row.us, unit.Of(row.value).In(unit.US), "%T %v", row.value, row.value)
	}
	assert.Equal(t, "0 L", unit.Of(unit.Litres(math.Copysign(0, -1))).In(unit.Metric))
	assert.Equal(t, unit.Quantity{Kind: unit.KindWord}, unit.Of(struct{}{}), "a type it does not know")
}

// Numbers as people type them.
func TestRead(t *testing.T) {
	for text, want := range map[string]float64{"200": 200, " 1,250 ": 1250, "1,250.5": 1250.5, "2,5": 2.5, "1,5": 1.5, "−3": -3, "-3": -3, "0.25": 0.25, "1,000,000": 1e6, ".5": 0.5, "1.250,5": 1250.5, "1.234.567,8": 1234567.8, "0,125": 0.125, "-0,250": -0.25, "12,5": 12.5, "1,2345": 1.2345} {
		v, err := unit.KindNumber.Read(text, unit.Metric)
		require.NoError(t, err, text)
		assert.Equal(t, want, v, text)
	}
	for _, text := range []string{"", " ", "NaN", "Inf", "1e9", "ten", "1.2.3", "--1", "5 ft", "+-2", "0x10", "1_000", "1.5,2", "1,25,3", "1,2,3", "12,34.5", "1.2.3,4", "1,234,5", strings.Repeat("9", 400)} {
		_, err := unit.KindNumber.Read(text, unit.Metric)
		assert.ErrorIs(t, err, unit.ErrNumber, text)
	}
	celsius, err := unit.KindTemperature.Read("68", unit.US)
	require.NoError(t, err)
	assert.InDelta(t, 20, celsius, 1e-12)
}

// Whatever is shown can be typed again, in either system, to within half of the
// step that is shown.
func TestShownAndReadAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := unit.Kind(rapid.IntRange(0, int(unit.KindPlantRate)).Draw(t, "kind"))
		if kind == unit.KindWord || kind == unit.KindDate || kind == unit.KindYearDay {
			return
		}
		system := rapid.SampledFrom([]unit.System{unit.Metric, unit.US}).Draw(t, "system")
		si := rapid.Float64Range(-5000, 5000).Draw(t, "SI")
		again, err := kind.Read(kind.Figure(si, system), system)
		if err != nil {
			t.Fatalf("%q is not read: %v", kind.Figure(si, system), err)
		}
		if math.Abs(again-si) > kind.Step(system)*0.5000001 {
			t.Fatalf("%v shows as %q and reads as %v", si, kind.Figure(si, system), again)
		}
	})
}

// The calendar agrees with Go's own over three centuries and across leap rules.
func TestCalendarAgreesWithGo(t *testing.T) {
	start := time.Date(1895, 1, 1, 0, 0, 0, 0, time.UTC)
	for n := range 115000 {
		day := start.AddDate(0, 0, n)
		date := unit.On(day.Year(), int(day.Month()), day.Day())
		require.Equal(t, day.Unix()/86400, int64(date))
		year, month, dayOfMonth := date.Civil()
		require.Equal(t, [3]int{day.Year(), int(day.Month()), day.Day()}, [3]int{year, month, dayOfMonth})
		require.Equal(t, day.YearDay(), date.DayOfYear())
		require.Equal(t, day.Format(time.DateOnly), date.String())
		again, err := unit.ParseDate(date.String())
		require.NoError(t, err)
		require.Equal(t, date, again)
	}
	assert.Equal(t, "0033-04-03", unit.On(33, 4, 3).String())
	assert.Equal(t, time.Date(-5, 3, 1, 0, 0, 0, 0, time.UTC).Unix()/86400, int64(unit.On(-5, 3, 1)), "before year nought")
	assert.Equal(t, unit.Days(31), unit.On(2027, 6, 1).Minus(unit.On(2027, 5, 1)))
	assert.Equal(t, unit.On(2028, 2, 29), unit.On(2028, 2, 28).Plus(1))
	assert.Equal(t, []int{31, 29, 28, 31}, []int{unit.DaysIn(2027, 12), unit.DaysIn(2028, 2), unit.DaysIn(2100, 2), unit.DaysIn(2027, 1)})
	for _, text := range []string{"2027-02-29", "2027-13-01", "2027-00-10", "2027-5-20", "20270520", "2027/05/20", "2027-05-2a", "202a-05-20", "2027-05-00", ""} {
		_, err := unit.ParseDate(text)
		assert.ErrorIs(t, err, unit.ErrDate, text)
	}
	for text, want := range map[string]int{"05-14": 514, "02-29": 229, "12-31": 1231} {
		got, err := unit.ParseMonthDay(text)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
	for _, text := range []string{"02-30", "5-14", "0514", "14-05"} {
		_, err := unit.ParseMonthDay(text)
		assert.ErrorIs(t, err, unit.ErrDate, text)
	}
}

func TestPhrases(t *testing.T) {
	p := unit.Say("Plant on {}, {} deep.", unit.On(2027, 5, 20), unit.Short(0.0508))
	assert.Equal(t, "Plant on May 20, 2027, 2 in deep.", p.In(unit.US))
	assert.Equal(t, "Plant on 20 May 2027, 5 cm deep.", p.In(unit.Metric))
	assert.True(t, p.Complete())
	assert.Equal(t, "no quantity", unit.Say("no quantity").In(unit.US))
	assert.False(t, unit.Say("one {} too few").Complete())
	more := unit.Say("one too many", 1)
	assert.False(t, more.Complete())
	assert.Equal(t, "one too many", more.In(unit.US))
	assert.False(t, unit.Say("of no known {}", struct{}{}).Complete())
}

// A measure that was typed comes back the same, and is the one that its figure names:
// 24 in are 0.6096 m, however they came in.
func TestTypedMeasuresAreExact(t *testing.T) {
	for inches := 1; inches <= 120; inches++ {
		read, err := unit.KindShort.Read(strconv.Itoa(inches), unit.US)
		require.NoError(t, err)
		assert.Equal(t, float64(inches)*254/10000, read, "%d in", inches)
		assert.Equal(t, unit.Metres(read), unit.FromInches(float64(inches)))
	}
}

// Metric goods are metric goods: film is sold by 25 and 30 µm and by the decimetre, gauges
// by round pressures.
func TestMetricGoods(t *testing.T) {
	for mil, want := range map[float64]string{0.6: "15 µm", 0.75: "20 µm", 1: "25 µm", 1.25: "30 µm", 1.5: "40 µm", 8: "200 µm"} {
		assert.Equal(t, want, unit.Of(unit.FromMil(mil)).In(unit.Metric), "%v mil", mil)
	}
	for inches, want := range map[float64]string{36: "0.9 m", 48: "1.2 m", 60: "1.5 m"} {
		assert.Equal(t, want, unit.Of(unit.Roll(unit.FromInches(inches))).In(unit.Metric), "%v in", inches)
	}
	for psi, want := range map[float64]string{8: "55 kPa", 10: "70 kPa", 30: "200 kPa", 31: "214 kPa"} {
		assert.Equal(t, want, unit.Of(unit.FromPSI(psi)).In(unit.Metric), "%v psi", psi)
	}
	assert.Equal(t, "69 kPa", unit.Of(unit.Kilopascals(69)).In(unit.Metric), "what a metric reader typed stays")
	assert.Equal(t, "60 in", unit.Of(unit.Roll(unit.FromInches(60))).In(unit.US))
	assert.Equal(t, "16 mm", unit.Of(unit.Bore(unit.FromInches(0.625))).In(unit.Metric))
	assert.Equal(t, "22 mm", unit.Of(unit.Bore(unit.FromInches(0.875))).In(unit.Metric))
}
