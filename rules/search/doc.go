// Package search asks the engine again: which change of one input, or of two, would
// change an answer ([TurningSearch], [PairWork]), which film leads on which day
// ([MapWork]), and how much hangs on what nobody knows. All of it works in slices.
package search
