//go:build !page

package table

import "filmfurrow/rules/unit"

// The makers of figures with a note: for which crop a stand-in was read, or what else
// must be known of it. "explain" prints notes.

func celsiusNoted(low, high unit.Celsius, s *Source, m Mark, note string) Figure[unit.Celsius] {
	return Figure[unit.Celsius]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m, Note: note}
}

func metresNoted(low, high unit.Metres, s *Source, m Mark, note string) Figure[unit.Metres] {
	return Figure[unit.Metres]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m, Note: note}
}

func numberNoted(low, high float64, s *Source, m Mark, note string) Figure[float64] {
	return Figure[float64]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m, Note: note}
}

func percentNoted(low, high unit.Percent, s *Source, m Mark, note string) Figure[unit.Percent] {
	return Figure[unit.Percent]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m, Note: note}
}

func saltNoted(low, high unit.DecisiemensPerMetre, s *Source, m Mark, note string) Figure[unit.DecisiemensPerMetre] {
	return Figure[unit.DecisiemensPerMetre]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m, Note: note}
}

func classNoted(s *Source, m Mark, note string) Figure[unit.Percent] {
	return Figure[unit.Percent]{Source: s, Mark: m, Note: note}
}

func byTest(low, medium, high, veryHigh unit.KilogramsPerHectare, s *Source, m Mark, note string) ByTest {
	return ByTest{Rates: [TestClassCount]unit.KilogramsPerHectare{low, medium, high, veryHigh}, Source: s, Mark: m, Note: note}
}

// gains are differences of °F, which stand divided by 1.8.
func gains(low, value, high unit.CelsiusDegrees, s *Source, m Mark, note string) Figure[unit.CelsiusDegrees] {
	return Figure[unit.CelsiusDegrees]{Low: low, Value: value, High: high, Source: s, Mark: m, Note: note}
}
