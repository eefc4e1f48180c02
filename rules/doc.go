// Package rules is the door of the engine of Film & Furrow. [Advise] works out, for
// one crop, field, day and climate, whether to lay plastic mulch, which film, how thick,
// what bed, which drip tape, how long to wait and how long to run the water, and keeps
// every reason.
//
// # The rooms
//
//	field    the case: what the grower knows, in SI; unknown is a legal answer.
//	  ↓      Its inputs, defaults, and Check: all that is wrong, at once
//	facts    what follows: the soil's year, weather, frost, season, layout, water;
//	  ↓      each model runs once, each figure is rounded and named
//	judge    Settle finds the planting day; gates, then weighed answers: each rule
//	  ↓      is a row that reads the facts and speaks to one question's options
//	plan     the advice: answers, dates, cautions, limits, sources; what to buy,
//	         laying day, season, water; what to do instead where film is refused
//	search   asks again: what would change an answer, pairs, maps, doubt
//
// Below them stand unit (SI types, dates, phrases), model (physics on plain numbers),
// table (films, crops, soils, tapes, sources) and question (what is asked, and which
// answers there are). Above stands casefile, the only room with JSON. A room imports
// only rooms below it, and a test holds it.
//
// There is no way back: a rule never reads another rule's outcome. Where one answer
// needs another (film width needs the bed), the questions are answered in turn, and the
// earlier answer is a fact of the later.
//
// # One day
//
// Facts.Wanted is the day that was asked for, Facts.Plant the one that was settled: the
// first on which frost, label and ground let the crop in, under the film that is best on
// that very day. Every date, sum and view goes by Facts.Plant. Whether film may be laid
// is told by Advice.Refused alone, and what to do instead by Advice.Insteads.
//
// # Same input, same advice
//
// All of it is pure: no clock, no files, no globals that change, nothing but the
// standard library. Facts are rounded before rules read them, since the exponential
// function differs in its last bits between machines. Ties keep the options' order.
//
// README.md beside this file tells how it works, VALIDATION.md how well, and
// DEVELOPERS.md in the project's root how to add a row.
package rules
