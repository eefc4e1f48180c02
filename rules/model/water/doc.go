// Package water is the one door to a whole water plan: [Make] takes what is
// known about crop, climate, soil, beds, tape and source, and gives demand by
// month, the longest run, the pressure along a bed, header, pump, zones, a
// schedule that fits the day or three computed ways out, filter, salt, feeding,
// and every step with its formula, figures and source.
//
// The models stand in their own packages (drip, soilwater, demand,
// waterquality, feed); this one only joins them. What is not known is named in
// [Plan.Missing] together with what it would settle, and that part of the plan
// stays empty: nothing is invented. Where a usual value stands in for a value
// that was not given, [Plan.Assumed] lists it.
//
// Everything is SI. Results are rounded to declared steps (see round.go), so
// that native and WebAssembly builds print the same digits.
package water
