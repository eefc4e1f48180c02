// Package rules is the engine of Film & Furrow: it works out, for one crop,
// field, day and climate, whether to lay plastic mulch, which film, how thick,
// what bed, which drip tape, how long to wait and how long to run the water,
// and keeps every reason.
//
// # The way through
//
//	Case   what the grower knows, in SI; unknown is a legal answer
//	  ↓    Check: everything that is wrong, at once
//	Facts  what follows: weather, soil warmth, frost, water need, layout;
//	       each model runs once, each figure is rounded and named
//	  ↓    gates, then weighed answers: each rule is a row that reads the facts
//	       and speaks to the options of one question
//	Advice verdict, answers, every factor, plans, cautions, limits, sources
//
// There is no way back: a rule never reads another rule's outcome. Where one
// answer needs another (film width needs the bed), the questions are answered
// in the order of [Question], and the earlier answer is a fact of the later.
// [Advise] is the one door.
//
// # Same input, same advice
//
// The package and all below it are pure: no clock, no files, no globals that
// change. Facts are rounded before rules read them, since the exponential
// function differs in its last bits between machines. Ties keep the options'
// stated order.
//
// # To add
//
// A crop, film, soil, tape or source is one row in package table. A rule is
// one row in the file of its question; give it a source, a reason in plain
// words that carries this case's numbers, and a case in testdata/cases that
// fires it: a test walks the rows and refuses one without.
package rules
