// Package plan makes the [Advice] of a case ([Make]) and works out what is to be done
// with it: the answers, dates, cautions, limits and sources; what to buy ([Shopping]) and
// what it costs; laying day ([Sheet]); the base fertiliser; row covers; the season's
// steps; the water plan and its week; and what to do instead where film is refused
// ([Advice.Refused] alone tells that, [Advice.Insteads] what else).
//
// Every date and sum goes by Facts.Plant, the settled planting day. Sums are in SI and
// rounded once, so that what is shown adds up. It judges nothing: the answers come from
// judge, the figures from facts and the tables.
package plan
