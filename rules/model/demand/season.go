package demand

import "filmfurrow/rules/unit"

// Season is what a plan of demand needs.
type Season struct {
	Crop      Crop
	Cut       FilmCut // zero without film
	Ground    Ground
	PlantOn   unit.Date
	Dry       unit.Days            // the last days, on which the crop is not watered
	Reference [12]unit.Millimetres // reference evapotranspiration, mm a day, January first
}

// Day is the need of one day.
type Day struct {
	Date            unit.Date
	Coefficient     float64 // without film
	UnderFilm       float64
	Use             unit.Millimetres // a day, on the ground drawn on
	UseLow, UseHigh unit.Millimetres // with the high and the low cut all season
	Ground          unit.Metres
	PerMetre        float64 // litres for a metre of bed, net
	PerMetreBed     float64 // counted on the bed top only
	PerMetreField   float64 // counted on the full ground
	// Most is what the day takes where film saves young plants no more than it saves at
	// full leaf (FAO-56, chapter 10: 10–30 % on average); the low coefficient of
	// [FilmInitial] is said there to hold "often", and coefficients of 0.26 were measured.
	Most         unit.Millimetres
	PerMetreMost float64
}

// On gives the need of a day after planting.
func (s Season) On(day int) Day {
	date := s.PlantOn.Plus(unit.Days(day))
	_, month, _ := date.Civil()
	reference := s.Reference[month-1]
	coefficient, cover := s.Crop.At(day)
	kept := func(cut unit.Percent) float64 {
		under, _ := s.Crop.UnderFilm(cut).At(day)
		return under
	}
	d := Day{
		Date:        date,
		Coefficient: coefficient,
		UnderFilm:   kept(s.Cut.At(cover)),
		Ground:      s.Ground.At(cover),
	}
	d.Use = unit.Millimetres(d.UnderFilm) * reference
	d.UseLow = unit.Millimetres(kept(s.Cut.High)) * reference
	d.UseHigh = unit.Millimetres(kept(s.Cut.Low)) * reference
	d.Most = max(d.Use, unit.Millimetres(coefficient*(1-float64(s.Cut.Low)/100))*reference)
	d.PerMetreMost = float64(d.Most) * float64(d.Ground)
	d.PerMetre = float64(d.Use) * float64(d.Ground)
	d.PerMetreBed = float64(d.Use) * float64(s.Ground.BedTop)
	d.PerMetreField = float64(d.Use) * float64(s.Ground.Full)
	return d
}

// Month is the need of one calendar month of the season, as means over its
// days in the season.
type Month struct {
	Year, Month     int
	Days            unit.Days
	Reference       unit.Millimetres // a day
	Coefficient     float64          // under film
	Use             unit.Millimetres // a day
	UseLow, UseHigh unit.Millimetres
	Ground          unit.Metres
	PerMetre        float64 // litres a day for a metre of bed, net
	PeakPerMetre    float64 // of the hungriest day
	PeakUse         unit.Millimetres
	PerMetreBed     float64
	PerMetreField   float64
}

// Months gives the months of a season in order, as far as the crop is watered, and the season's
// hungriest day.
func (s Season) Months() (months []Month, peak Day) {
	for day := range int(max(1, s.Crop.Season()-s.Dry)) {
		d := s.On(day)
		year, month, _ := d.Date.Civil()
		if n := len(months); n == 0 || months[n-1].Month != month {
			months = append(months, Month{Year: year, Month: month, Reference: s.Reference[month-1]})
		}
		m := &months[len(months)-1]
		m.Days++
		m.Coefficient += d.UnderFilm
		m.Use += d.Use
		m.UseLow += d.UseLow
		m.UseHigh += d.UseHigh
		m.Ground += d.Ground
		m.PerMetre += d.PerMetre
		m.PerMetreBed += d.PerMetreBed
		m.PerMetreField += d.PerMetreField
		m.PeakUse = max(m.PeakUse, d.Use)
		m.PeakPerMetre = max(m.PeakPerMetre, d.PerMetre)
		if d.PerMetre > peak.PerMetre {
			peak = d
		}
	}
	for i := range months {
		m := &months[i]
		n := float64(m.Days)
		m.Coefficient /= n
		m.Use /= unit.Millimetres(n)
		m.UseLow /= unit.Millimetres(n)
		m.UseHigh /= unit.Millimetres(n)
		m.Ground /= unit.Metres(n)
		m.PerMetre /= n
		m.PerMetreBed /= n
		m.PerMetreField /= n
	}
	return months, peak
}
