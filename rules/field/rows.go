package field

import (
	"filmfurrow/rules/model/drip"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func number[T ~float64](name, label, help string, kind unit.Kind, low, high, step float64, at func(*Case) *unit.Optional[T]) *Input {
	return &Input{Name: name, Label: label, Help: help, Form: FormNumber, Kind: kind, Low: low, High: high, Step: step,
		Get:   func(c *Case) (Value, bool) { o := at(c); return Value{Number: float64(o.Value)}, o.Given },
		Set:   func(c *Case, v Value) { *at(c) = unit.Known(T(v.Number)) },
		Clear: func(c *Case) { *at(c) = unit.Optional[T]{} }}
}

func whole(name, label, help string, low, high float64, at func(*Case) *unit.Optional[float64]) *Input {
	in := number(name, label, help, unit.KindCount, low, high, 1, at)
	in.Form = FormWhole
	return in
}

func date(name, label, help string, at func(*Case) *unit.Optional[unit.Date]) *Input {
	return &Input{Name: name, Label: label, Help: help, Form: FormDate, Kind: unit.KindDate,
		Low: float64(unit.DateLow), High: float64(unit.DateHigh), Step: 1,
		Get:   func(c *Case) (Value, bool) { o := at(c); return Value{Number: float64(o.Value)}, o.Given },
		Set:   func(c *Case, v Value) { *at(c) = unit.Known(unit.Date(v.Number)) },
		Clear: func(c *Case) { *at(c) = unit.Optional[unit.Date]{} }}
}

func monthDay(name, label, help string, at func(*Case) *unit.Optional[MonthDay]) *Input {
	return &Input{Name: name, Label: label, Help: help, Form: FormDay, Kind: unit.KindWord, Low: 101, High: 1231, Step: 1,
		Get:   func(c *Case) (Value, bool) { o := at(c); return Value{Number: float64(o.Value)}, o.Given },
		Set:   func(c *Case, v Value) { *at(c) = unit.Known(MonthDay(v.Number)) },
		Clear: func(c *Case) { *at(c) = unit.Optional[MonthDay]{} }}
}

func choice(name, label, help string, at func(*Case) *string, options ...Choosable) *Input {
	return &Input{Name: name, Label: label, Help: help, Form: FormChoice, Kind: unit.KindWord, Options: options,
		Get:   func(c *Case) (Value, bool) { w := *at(c); return Value{Word: w}, w != "" },
		Set:   func(c *Case, v Value) { *at(c) = v.Word },
		Clear: func(c *Case) { *at(c) = "" }}
}

func text(name, label, help string, at func(*Case) *string) *Input {
	in := choice(name, label, help, at)
	in.Form = FormText
	return in
}

func yesNo(name, label, help string, at func(*Case) *unit.Optional[bool]) *Input {
	return &Input{Name: name, Label: label, Help: help, Form: FormYesNo, Kind: unit.KindWord, High: 1, Step: 1,
		Get: func(c *Case) (Value, bool) {
			o := at(c)
			if o.Value {
				return Value{Number: 1}, o.Given
			}
			return Value{}, o.Given
		},
		Set:   func(c *Case, v Value) { *at(c) = unit.Known(v.Number == 1) },
		Clear: func(c *Case) { *at(c) = unit.Optional[bool]{} }}
}

func cropOptions() []Choosable {
	list := make([]Choosable, len(table.Crops))
	for i := range table.Crops {
		list[i] = Choosable{table.Crops[i].ID, table.Crops[i].Name}
	}
	return list
}

func soilOptions() []Choosable {
	list := make([]Choosable, len(table.Soils))
	for i := range table.Soils {
		list[i] = Choosable{table.Soils[i].ID, table.Soils[i].Name}
	}
	return list
}

func filmOptions() []Choosable {
	list := make([]Choosable, len(table.Films))
	for i := range table.Films {
		list[i] = Choosable{table.Films[i].ID, table.Films[i].Name}
	}
	return list
}

// rowsOf sets the rows one behind the other. To build each in its place would take
// up as much of the program as the rows themselves.
func rowsOf(list []*Input) []Input {
	rows := make([]Input, len(list))
	for i, in := range list {
		rows[i] = *in
	}
	return rows
}

// mended gives an input its own advice for figures out of range.
func mended(in *Input, mend string) *Input {
	in.Mend = mend
	return in
}

// own is the row of a quantity that the grower writes over ours.
func own(item Item) *Input {
	in := number("shopping."+ItemKeys[item], unit.Capital(ItemNames[item])+", your own figure", "Written over ours; both are kept.", KindOfItem(item), 0, 1000000, 1,
		func(c *Case) *unit.Optional[float64] { return &c.Shopping[item] })
	if in.Kind == unit.KindCount {
		in.Form = FormWhole
	}
	return inert(mended(in, "A quantity is 0 or more. Leave it out to take ours."))
}

// testClasses are the classes of a soil test, from the hungriest.
var testClasses = []Choosable{{"low", "low"}, {"medium", "medium"}, {"high", "high"}, {"very-high", "very high"}}

// reported is a rate that the grower's soil test recommends for the whole season.
func reported(name, label string, at func(*Case) *unit.Optional[unit.KilogramsPerHectare]) *Input {
	return inert(mended(number(name, label, "It stands on the report, and goes before every table of ours.", unit.KindRate, 0, 600, 1, at),
		"Give the nutrient of the whole season, not the product: 100 lb of 10-10-10 hold 10 lb. P is P₂O₅ ÷ 2.29, K is K₂O ÷ 1.2."))
}

// onTheBag is one figure of the grade of a product; 10-20-30 stands as the example.
func onTheBag(name, label, example string, at func(*Case) *unit.Optional[float64]) *Input {
	return inert(mended(number(name, label, "Printed on the bag: "+example+" in 10-20-30.", unit.KindNumber, 0, 100, 1, at),
		"The grade is printed on the bag: "+example+" in 10-20-30."))
}

func price(name, label string, kind unit.Kind, at func(*Case) *unit.Optional[float64]) *Input {
	return inert(mended(number(name, label, "", kind, 0, 1000000, 0.01, at),
		"A price is 0 or more. Leave it out where you have none."))
}

func ownHours(name, label string, at func(*Case) *unit.Optional[float64]) *Input {
	return inert(mended(number(name, label, "Of one person, for the whole job. Left out, ours stand.", unit.KindHours, 0, 100000, 0.5, at),
		"Hours are 0 or more. Leave them out to take ours."))
}

// What the search for turning points must know of a row, each in words of its own.

// inert marks a row that plans, costs and sheets read, but no answer does. A station
// is only a name: its figures are searched as latitude, height and shifts of months.
func inert(in *Input) *Input { in.Inert = true; return in }

// series forgets what was looked up of another name.
func series(in *Input) *Input {
	set, clear := in.Set, in.Clear
	in.Set = func(c *Case, v Value) { set(c, v); c.Soil.OfSeries = SeriesSoil{} }
	in.Clear = func(c *Case) { clear(c); c.Soil.OfSeries = SeriesSoil{} }
	return in
}

// years makes a choice move the station's normals; a climate of the grower's own has none.
func years(in *Input) *Input {
	set := in.Set
	in.Set = func(c *Case, v Value) { set(c, v); c.Place.Take() }
	in.Beside = func(c *Case) bool { return c.Place.Older.Given && c.Place.Newer.Given && !c.Place.Own }
	return in
}

// told marks a row whose absence says something, so that nobody must find it out.
func told(in *Input) *Input { in.Told = true; return in }

// period marks the day of a treatment.
func period(in *Input) *Input { in.Period = true; return in }

// within bounds the search: 1,500 m of height and 10 degrees of latitude, as far as
// the same weather may be thought of.
func within(steps int, in *Input) *Input { in.Reach = steps; return in }

// sameFarm bounds the search to a tenth and ten times of what was given: beyond that
// it is another farm, and no answer to its grower.
func sameFarm(in *Input) *Input { in.Times = 10; return in }

// sameTools bounds the search to a third and three times of what was given: tractors,
// pans and setters are not changed for others beyond that (our judgement).
func sameTools(in *Input) *Input { in.Times = 3; return in }

// apart bounds the search to so far from what was given, where nothing may be given
// too: another pump, another corner of the farm (our judgement).
func apart(far float64, in *Input) *Input { in.Apart = far; return in }

// beside marks a row that counts only where something else holds.
func beside(when func(*Case) bool, in *Input) *Input { in.Beside = when; return in }

// first says what else changes when a search sets the row.
func first(do func(*Case), in *Input) *Input { in.Before = do; return in }

// closely gives a range to ask step by step where the source's push is known: among
// known pipes the header's bore and whole zones let an answer change and change back
// from one step to the next.
func closely(span func(*Case) (low, high float64), in *Input) *Input {
	in.Close = func(c *Case) (low, high float64, ok bool) {
		if !c.Water.Flow.Given || !c.Field.Beds.Given || !c.Water.Pressure.Given {
			return 0, 0, false
		}
		low, high = span(c)
		return max(low, in.Low), high, true
	}
	return in
}

// nearly gives so many steps to each side of what was given to ask one by one: a tape or a
// part of a bed is fed from a flow of its own on, and an answer may change and change back.
func nearly(steps float64, in *Input) *Input {
	in.Close = func(c *Case) (low, high float64, ok bool) {
		now, ok := in.Get(c)
		return now.Number - steps*in.Step, now.Number + steps*in.Step, ok
	}
	return in
}

func measured(c *Case) bool { return c.Soil.Temperature.Given }
func filmDown(c *Case) bool { return c.Practice.FilmDown() }

// mostPush is more than tape, filter and header take together: beyond it nothing
// changes with what the source pushes.
const mostPush unit.Kilopascals = 800

// mostPipe and mostBeds end the steps that are asked one by one.
const (
	mostPipe = 1000 // m
	mostBeds = 500
)

// closePressure and closeRise span what pushes some water to the beds and no more
// than mostPush.
func closePressure(c *Case) (low, high float64) {
	low = float64(drip.PressureOf(c.Water.Rise.Value))
	return low, low + float64(mostPush)
}

func closeRise(c *Case) (low, high float64) {
	high = float64(drip.HeadOf(c.Water.Pressure.Value))
	return high - float64(drip.HeadOf(mostPush)), high
}

func closePipe(*Case) (low, high float64) { return 0, mostPipe }

func closeBeds(c *Case) (low, high float64) { return 1, min(mostBeds, 10*c.Field.Beds.Value) }
