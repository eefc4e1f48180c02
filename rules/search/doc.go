// Package search asks the engine again: which change of one input, or of two, would
// change an answer ([TurningSearch], [PairWork]), which film leads on which day
// ([MapWork]), and how much hangs on what nobody knows. All of it works in slices.
//
// Each work is made for one case and one soil year, asks the engine so many times a
// Step, and tells when it is done; nothing in it reads a reason. A search finds the
// change nearest to the case's own value, to the input's own step; tests hold it to a
// search that asks value by value.
package search
