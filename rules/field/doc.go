// Package field holds the [Case]: what the grower knows of one field, in SI. Anything but
// the crop, the day and the place may be left out; unknown is a legal answer, and never 0.
//
// [Check] finds all that is wrong at once, each with its field, value, allowed range and
// mend ([Error]); a case that passes it is accepted by every room above. [Fill] puts the
// stated defaults where something is missing, and lists them. Each input is one row of
// [Inputs] that form, file, link and search read alike; the twelve-month lists are
// [Climate]. It works nothing out: that is the next room's, facts.
package field
