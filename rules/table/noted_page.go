//go:build page

package table

import "filmfurrow/rules/unit"

// The same makers for the page's program, which shows no notes and does not carry them.

func celsiusNoted(low, high unit.Celsius, s *Source, m Mark, _ string) Figure[unit.Celsius] {
	return Figure[unit.Celsius]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func metresNoted(low, high unit.Metres, s *Source, m Mark, _ string) Figure[unit.Metres] {
	return Figure[unit.Metres]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func numberNoted(low, high float64, s *Source, m Mark, _ string) Figure[float64] {
	return Figure[float64]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func percentNoted(low, high unit.Percent, s *Source, m Mark, _ string) Figure[unit.Percent] {
	return Figure[unit.Percent]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func saltNoted(low, high unit.DecisiemensPerMetre, s *Source, m Mark, _ string) Figure[unit.DecisiemensPerMetre] {
	return Figure[unit.DecisiemensPerMetre]{Low: low, Value: (low + high) / 2, High: high, Source: s, Mark: m}
}

func classNoted(s *Source, m Mark, _ string) Figure[unit.Percent] {
	return Figure[unit.Percent]{Source: s, Mark: m}
}

func byTest(low, medium, high, veryHigh unit.KilogramsPerHectare, s *Source, m Mark, _ string) ByTest {
	return ByTest{Rates: [TestClassCount]unit.KilogramsPerHectare{low, medium, high, veryHigh}, Source: s, Mark: m}
}

func gains(low, value, high unit.CelsiusDegrees, s *Source, m Mark, _ string) Figure[unit.CelsiusDegrees] {
	return Figure[unit.CelsiusDegrees]{Low: low, Value: value, High: high, Source: s, Mark: m}
}
