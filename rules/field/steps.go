package field

import (
	"math"
	"strconv"

	"filmfurrow/rules/unit"
)

// At is the value of a number or a day, so many steps above the lowest. A date's
// steps are its days.
func (in *Input) At(step int) Value {
	switch in.Form {
	case FormDate:
		return Value{Number: float64(step)}
	case FormDay:
		_, month, day := unit.On(2000, 1, 1).Plus(unit.Days(step)).Civil()
		return Value{Number: float64(100*month + day)}
	}
	return Value{Number: rounded(in.Low + float64(float64(step)*in.Step))}
}

// Place counts the steps up to a value.
func (in *Input) Place(v Value) float64 {
	switch in.Form {
	case FormDate:
		return v.Number
	case FormDay:
		return float64(unit.On(2000, int(v.Number)/100, int(v.Number)%100).Minus(unit.On(2000, 1, 1)))
	}
	return (v.Number - in.Low) / in.Step
}

// rounded takes the dust off a decimal.
func rounded(v float64) float64 { return math.Round(v*1e6) / 1e6 }

// OfMonths tells whether a row stands for a monthly list.
func (in *Input) OfMonths() bool { return in.Form == FormNumber && in.Clear == nil }

// EveryMonth tells of a row that stands for a monthly list what its value does to
// all twelve figures; empty for other rows.
func (in *Input) EveryMonth() string {
	switch {
	case !in.OfMonths():
		return ""
	case in.Moves[0] != "":
		return "moved by"
	}
	return "set to"
}

// Says gives a value of the input in words.
func (in *Input) Says(v Value) (string, []unit.Quantity) {
	if in.Moves[0] != "" {
		way := 0
		if v.Number > 0 {
			way = 1
		}
		return in.Label + " {} " + in.Moves[way], []unit.Quantity{{Kind: in.Kind, SI: math.Abs(v.Number)}}
	}
	switch in.Form {
	case FormChoice, FormText:
		for _, o := range in.Options {
			if o.ID == v.Word {
				return o.Label, nil
			}
		}
		return v.Word, nil
	case FormYesNo:
		return [...]string{"no", "yes"}[int(v.Number)], nil
	case FormDay:
		return strconv.Itoa(int(v.Number)%100) + " " + unit.MonthName(int(v.Number)/100), nil
	case FormDate:
		return "{}", []unit.Quantity{unit.Of(unit.Date(v.Number))}
	}
	return "{}", []unit.Quantity{{Kind: in.Kind, SI: v.Number}}
}
