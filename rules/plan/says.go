package plan

import "filmfurrow/rules/unit"

// sayings are sentences, one after the other.
type sayings []unit.Phrase

// say adds one. It is called, not copied into its callers: copied, it would add kilobytes to the
// program.
//
//go:noinline
func (s *sayings) say(text string, values ...any) { *s = append(*s, unit.Say(text, values...)) }
